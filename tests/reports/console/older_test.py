#!/usr/bin/python3
"""A file of an earlier version: every command brings it up and says so in one line on stderr, once; one that is too old,
or newer, is refused with how to go on.

Environment: DYESTEAD_BOOKS, the program.
"""

import os
import sqlite3
import subprocess
import tempfile
import unittest
from pathlib import Path

BOOKS = os.environ["DYESTEAD_BOOKS"]
OLDER = Path(__file__).resolve().parents[2] / "db" / "older"


class Older(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory(prefix="the books ä ")
        self.addCleanup(self.folder.cleanup)
        self.here = Path(self.folder.name)

    def books(self, *arguments):
        environment = {**os.environ, "XDG_DATA_HOME": str(self.here / "data"), "LC_ALL": "C.UTF-8", "LANGUAGE": ""}
        return subprocess.run(
            [BOOKS, *map(str, arguments)], capture_output=True, text=True, env=environment, timeout=120, check=False
        )

    def shop(self, version=2):
        path = self.here / "shop.dyestead"
        path.unlink(missing_ok=True)
        with sqlite3.connect(path) as file:
            file.executescript((OLDER / "version_2.sql").read_text(encoding="utf-8"))
            file.execute(f"PRAGMA user_version = {version}")
        return path

    def test_every_command_brings_it_up_and_says_so_once(self):
        records = self.here / "records"
        for command in (["check"], ["report", "stock-value"], ["export"], ["import"]):
            shop = self.shop()
            first, second = (
                ["import", records, shop, "--replace"] if command == ["import"] else
                [*command, shop, *([records] if command == ["export"] else [])]
                for _ in range(2)
            )
            answer = self.books(*first)
            self.assertEqual(answer.returncode, 0, answer.stderr)
            self.assertRegex(answer.stderr, r"\A[^\n]*earlier version[^\n]*backups[^\n]*\.dyestead\.\n\Z", command)
            backup = Path(answer.stderr.rstrip(".\n").split(" lies in ")[1])
            with sqlite3.connect(backup) as file:
                self.assertEqual(file.execute("PRAGMA user_version").fetchone(), (2,))
            if command == ["export"]:
                kept = {file.name: file.read_bytes() for file in records.iterdir()}
            answer = self.books(*second)
            self.assertEqual((answer.returncode, answer.stderr), (0, ""), command)
        self.assertEqual(kept, {file.name: file.read_bytes() for file in records.iterdir()})

    def test_without_a_place_for_its_backup_it_is_left_as_it_was(self):
        shop = self.shop()
        before = shop.read_bytes()
        (self.here / "data").write_text("no folder", encoding="utf-8")
        answer = self.books("check", shop)
        self.assertEqual(answer.returncode, 2)
        self.assertRegex(answer.stderr, r"\A[^\n]*no backup could be put into [^\n]*backups[^\n]*\.\n\Z")
        self.assertEqual(shop.read_bytes(), before)

    def test_too_old_or_newer_is_refused_with_how_to_go_on(self):
        for version, words in ((1, "import the folder with this one"), (99, "newer version")):
            shop = self.shop(version)
            before = shop.read_bytes()
            answer = self.books("report", "stock-value", shop)
            self.assertEqual(answer.returncode, 2)
            self.assertIn(words, answer.stderr)
            self.assertEqual(shop.read_bytes(), before)


if __name__ == "__main__":
    unittest.main()
