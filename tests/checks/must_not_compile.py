#!/usr/bin/python3
"""Code without a meaning must not compile: each snippet in must_not_compile/ is refused when WRONG is defined, at the
line marked so, and accepted when it is not (so that the refusal has the cause it says).

    must_not_compile.py COMPILER [OPTION...]
"""

import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from sources import ROOT, finish


def compile_snippet(path, *options):
    command = [*sys.argv[1:], "-std=c++20", "-fsyntax-only", f"-I{ROOT}", *options, str(path)]
    return subprocess.run(command, capture_output=True, text=True)


def complaints_about(path):
    complaints = []
    right = compile_snippet(path)
    if right.returncode != 0:
        complaints.append(f"{path.name}: the right half does not compile:\n{right.stderr}")
    wrong = compile_snippet(path, "-DWRONG")
    marked = [n for n, line in enumerate(path.read_text().splitlines(), start=1) if "// refused" in line]
    if wrong.returncode == 0:
        complaints.append(f"{path.name}: the wrong half compiles")
    elif not any(f"{path.name}:{n}:" in wrong.stderr for n in marked):
        complaints.append(f"{path.name}: refused, but not at the line marked '// refused':\n{wrong.stderr}")
    return complaints


snippets = sorted((Path(__file__).parent / "must_not_compile").glob("*.cpp"))
if not snippets:
    finish(["must_not_compile/ holds no snippets"])
with ThreadPoolExecutor() as pool:
    finish([c for found in pool.map(complaints_about, snippets) for c in found])
