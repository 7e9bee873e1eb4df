#!/usr/bin/python3
"""Only the agreed names stand at the top of the checkout (what git does not see, such as build/, aside)."""

import subprocess

from sources import ROOT, finish

AGREED = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "domain", "db", "reports", "gui", "tests", "sample-shop"}

listed = subprocess.run(
    ["git", "-C", str(ROOT), "ls-files", "--cached", "--others", "--exclude-standard"],
    capture_output=True, text=True, check=True,
).stdout
names = {line.split("/")[0] for line in listed.splitlines()}
finish([f"{name} stands at the top but is not agreed: move it into the folder it serves"
        for name in sorted(names - AGREED) if not name.startswith(".")])
