#!/usr/bin/python3
"""What is wrong with a command line is said in one plain sentence, in the reader's language, with exit status 2; and
--help has no English word left in German.

Environment: DYESTEAD_BOOKS, the program.
"""

import os
import subprocess
import unittest

BOOKS = os.environ["DYESTEAD_BOOKS"]
ENGLISH = {"LC_ALL": "C.UTF-8", "LANGUAGE": ""}
GERMAN = {"LC_ALL": "C.UTF-8", "LANGUAGE": "de"}

# What is typed, and what has to stand in the answer: in English, in German.
WRONG = [
    (["report"], "needs NAME", "braucht NAME"),
    (["report", "verdict"], "needs SHOP", "braucht SHOP"),
    (["import", "records"], "dyestead-books import needs SHOP", "dyestead-books import braucht SHOP"),
    (["--sideways"], "has no option --sideways", "kennt die Option --sideways nicht"),
    (["report", "verdict", "a.dyestead", "--sideways"], "dyestead-books report has no option --sideways",
     "dyestead-books report kennt die Option --sideways nicht"),
    (["sing"], 'There is no command "sing"', "Einen Befehl „sing“ gibt es nicht"),
    (["check", "a.dyestead", "b.dyestead"], 'what to do with "b.dyestead"', "mit „b.dyestead“ nichts anzufangen"),
    (["report", "can-make", "a.dyestead", "--loaves", "many"], '--loaves takes a whole number from 1 to 10000, and not "many"',
     "--loaves nimmt eine ganze Zahl von 1 bis 10000, und nicht „many“"),
    (["report", "can-make", "a.dyestead", "--loaves", "0"], 'and not "0"', "und nicht „0“"),
    (["report", "earns-best", "a.dyestead", "--months", "1.5"], 'from 1 to 60, and not "1.5"', "und nicht „1.5“"),
    (["report", "earns-best", "a.dyestead", "--hours", "7,5"], 'like 7.5, and not "7,5"', "und nicht „7,5“"),
    (["report", "earns-best", "a.dyestead", "--hours", "nan"], 'and not "nan"', "und nicht „nan“"),
    (["report", "verdict", "a.dyestead", "--format"], "--format needs a value", "--format braucht einen Wert"),
    (["report", "verdict", "a.dyestead", "--format", "text", "--format", "json"], "--format is given more than once",
     "--format steht mehr als einmal da"),
    (["import", "a", "b", "--replace=perhaps"], "--replace stands alone", "--replace steht allein"),
    ([], "Say what to do", "Sag, was zu tun ist"),
]

# Words of the library that makes the help, and would stand there untranslated.
LIBRARY = ["Usage", "Options", "OPTIONS", "Positionals", "Subcommand", "SUBCOMMAND", "REQUIRED", " INT", "FLOAT", " in ["]


def run(language, *arguments):
    return subprocess.run([BOOKS, *arguments], capture_output=True, text=True, env={**os.environ, **language}, timeout=60, check=False)


class Arguments(unittest.TestCase):
    def sentence(self, language, arguments):
        answer = run(language, *arguments)
        self.assertEqual(answer.returncode, 2, arguments)
        self.assertEqual(answer.stdout, "")
        self.assertRegex(answer.stderr, r"\A[^\n]+\.\n\Z", arguments)
        self.assertNotRegex(answer.stderr, "[{}]")
        return answer.stderr

    def test_each_mistake_in_both_languages(self):
        for arguments, english, german in WRONG:
            self.assertIn(english, self.sentence(ENGLISH, arguments), arguments)
            self.assertIn(german, self.sentence(GERMAN, arguments), arguments)

    def test_help_is_german_too(self):
        for command in ([], ["import"], ["export"], ["check"], ["report"], ["ask"]):
            answer = run(GERMAN, *command, "--help")
            self.assertEqual((answer.returncode, answer.stderr), (0, ""))
            self.assertIn("Aufruf: dyestead-books", answer.stdout)
            for word in LIBRARY:
                self.assertNotIn(word, answer.stdout, command)

    def test_help_in_english(self):
        said = run(ENGLISH, "report", "--help").stdout
        for words in ("Usage: dyestead-books report [OPTIONS] NAME SHOP", "NAME TEXT (needed)", "--loaves NUMBER"):
            self.assertIn(words, said)


if __name__ == "__main__":
    unittest.main()
