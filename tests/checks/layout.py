#!/usr/bin/python3
"""Refuses sources that are not laid out as .clang-format says. Mend them with: clang-format -i FILE"""

import shutil
import subprocess
import tempfile

from sources import ROOT, finish, plant, sources


def badly_laid_out(root, *folders):
    """The complaints of clang-format about the sources of the folders, one line each."""
    files = [str(path.relative_to(root)) for path in sources(root, *folders)]
    said = subprocess.run(["clang-format", "--dry-run", "-Werror", *files], cwd=root, capture_output=True, text=True, check=False)
    complaints = [line for line in said.stderr.splitlines() if "error:" in line]
    return complaints or ([] if said.returncode == 0 else [said.stderr.strip()])


def prove():
    with tempfile.TemporaryDirectory() as folder:
        root = plant(folder, {"domain/good.cpp": "int good() {\n    return 1;\n}\n", "domain/bad.cpp": "int  bad( ) {return 1;}\n"})
        shutil.copy(ROOT / ".clang-format", root)
        found = badly_laid_out(root, "domain")
    if not found or any("bad.cpp" not in line for line in found):
        return [f"proof: a badly laid out file must be found, and only that: {found}"]
    return []


finish(prove() or badly_laid_out(ROOT, "domain", "db", "reports", "gui", "tests"))
