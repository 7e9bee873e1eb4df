#!/usr/bin/python3
"""Every language is whole: each sentence of the sources is translated, none is in doubt, the placeholders are those of
the English, and nothing is left of sentences that are gone."""

import re
import subprocess
import sys
import tempfile
from pathlib import Path

from sources import ROOT, finish

LANGUAGES = ROOT / "reports" / "words" / "languages"
EXTRACT = LANGUAGES / "extract"
HOW = "reports/words/languages/extract adds what is missing, blank; write the translations into the .po file"
MARKS = re.compile(r"&(\S)")


def run(*command):
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True, check=False)
    return done.returncode, done.stdout, done.stderr


def entries(po):
    """(English, translations) of every sentence, as one line each."""
    _, text, _ = run("msgcat", "--no-wrap", po)
    found = []
    for block in text.split("\n\n"):
        lines = [line for line in block.split("\n") if line.startswith(("msgid", "msgstr"))]
        english = [re.sub(r'^msgid(_plural)? "|"$', "", line) for line in lines if line.startswith("msgid")]
        others = [re.sub(r'^msgstr(\[\d\])? "|"$', "", line) for line in lines if line.startswith("msgstr")]
        if english and english[0]:
            found.append((english, others))
    return found


def complaints_about(po, template):
    name = po.name
    status, _, errors = run("msgfmt", "--check", "--output-file=/dev/null", po)
    found = [f"{name}: {line}" for line in errors.splitlines() if line] if status or "warning" in errors else []
    _, doubtful, _ = run("msgattrib", "--only-fuzzy", "--no-obsolete", po)
    if doubtful.strip():
        found.append(f"{name}: some translations are marked fuzzy; look at them and take the mark away")
    known = {tuple(english): others for english, others in entries(po)}
    wanted = {tuple(english) for english, _ in entries(template)}
    for english in sorted(wanted):
        if english not in known or not all(known[english]):
            found.append(f'{name}: no translation of "{english[0]}" ({HOW})')
    for english in sorted(set(known) - wanted):
        found.append(f'{name}: "{english[0]}" stands in no source any more ({HOW})')
    for english, others in known.items():
        keyed = bool(MARKS.search(english[0]))
        if any(bool(MARKS.search(other)) != keyed for other in others if other):
            found.append(f'{name}: "{english[0]}" and its translation differ in having a letter for Alt (&)')
    return found


def prove(template):
    """A gap, a wrong name and a lost letter are caught."""
    with tempfile.TemporaryDirectory() as folder:
        wrong = Path(folder) / "xx.po"
        head = 'msgid ""\nmsgstr "Language: de\\nContent-Type: text/plain; charset=UTF-8\\n"\n\n'
        wrong.write_text(head + '#, python-brace-format\nmsgid "Lot {lot}."\nmsgstr "Los {los}."\n\n'
                         'msgid "&Keep"\nmsgstr "Behalten"\n', encoding="utf-8")
        said = "\n".join(complaints_about(wrong, template))
    return [f"proof: not caught: {what}" for what in ("'los'", 'no translation of "Harvest"', "letter for Alt", "stands in no source")
            if what not in said]


with tempfile.TemporaryDirectory() as folder:
    template = Path(folder) / "dyestead.pot"
    status, sentences, errors = run("sh", EXTRACT, "--pot")
    if status:
        sys.exit(f"the sentences could not be taken from the sources: {errors}")
    template.write_text(sentences, encoding="utf-8")
    complaints = prove(template)
    for po in sorted(LANGUAGES.glob("*.po")):
        complaints += complaints_about(po, template)
finish(complaints)
