#!/usr/bin/python3
"""Who may include whom. Linking alone does not stop a wrong include: this table does.

First proves on planted files that it catches what it must, then looks at the checkout.
"""

import re
import tempfile

from sources import ROOT, code_lines, finish, plant, sources

# Longest folder first wins. Own folders a file may include from, then libraries beside the standard one and fmt.
ARROWS = {
    "domain/values": (["domain/values"], []),
    "domain/text": (["domain/values", "domain/text"], []),
    "domain/facts": (["domain/values", "domain/text", "domain/facts"], []),
    "domain/ledger": (["domain/values", "domain/text", "domain/facts", "domain/ledger"], []),
    "domain/decisions": (["domain"], ["boost/math", "boost/random", "glpk.h"]),
    "db": (["domain", "db"], ["SQLiteCpp", "sqlite3.h", "xxhash.h"]),
    "reports/console": (["domain", "db", "reports"], ["CLI", "libintl.h"]),
    "reports": (["domain", "reports"], ["cairo", "pango", "nlohmann", "xlsxwriter", "libical", "fontconfig"]),
    "gui/models": (["domain", "reports", "gui/models"], []),
    "gui": (["domain", "db", "reports", "gui"], ["wx", "gtk", "gdk", "atk", "glib", "cairo", "pango"]),
    "tests/domain": (["domain", "tests/domain", "tests/support"], ["doctest", "rapidcheck", "boost/math"]),
}
NEVER = {"reports": ["reports/console"], "gui": ["reports/console"]}  # a program's main is nobody's library

# The rules ask nobody for the time and open nothing.
IMPURE_HEADERS = {"fstream", "filesystem", "iostream", "cstdio", "stdio.h", "ctime", "time.h", "thread", "random"}
IMPURE_CALLS = re.compile(r"\b(system_clock::now|steady_clock::now|current_zone|getenv|fopen)\b")

INCLUDE = re.compile(r'^\s*#\s*include\s*(?:"(?P<own>[^"]+)"|<(?P<library>[^>]+)>)')
STANDARD = re.compile(r"^[a-z_0-9]+$|^c?(std|float|limits|time|string|errno|assert|locale|signal|math)[a-z]*\.h$")
SYSTEM = re.compile(r"^(fcntl|unistd|dlfcn|langinfo|malloc|pwd)\.h$|^sys/")


def under(name, folders):
    return any(name == f or name.startswith((f + "/", f + "-", f + ".")) for f in folders)


def wrong_includes(root):
    complaints = []
    for path in sources(root, "domain", "db", "reports", "gui", "tests/domain"):
        name = str(path.relative_to(root))
        part = max((p for p in ARROWS if name.startswith(p + "/")), key=len, default=None)
        if part is None:
            complaints.append(f"{name}: stands in no folder that the table of arrows knows")
            continue
        own, libraries = ARROWS[part]
        pure = part.startswith("domain/") or part == "gui/models"
        for number, line in code_lines(path, keep_texts=True):
            where = f"{name}:{number}"
            if pure and IMPURE_CALLS.search(line):
                complaints.append(f"{where}: {IMPURE_CALLS.search(line).group(0)}: {part} asks nobody; pass it in")
            match = INCLUDE.match(line)
            if not match:
                continue
            header = match.group("own") or match.group("library")
            if match.group("own"):
                generated = header == "db/schema_sql.h"
                if not generated and not (root / header).is_file():
                    complaints.append(f"{where}: {header} is not a path from the top of the checkout")
                elif not under(header, own) or (part != "reports/console" and under(header, NEVER.get(part, []))):
                    complaints.append(f"{where}: {part} may not include {header}")
            elif STANDARD.match(header) or header.startswith("fmt/"):
                if pure and header in IMPURE_HEADERS:
                    complaints.append(f"{where}: {part} is pure and may not include <{header}>")
            elif not under(header, libraries) and (pure or not SYSTEM.match(header)):
                complaints.append(f"{where}: {part} may not include <{header}>")
    return complaints


def prove():
    """Each planted file breaks one rule; the control breaks none."""
    right = {
        "domain/values/a.h": "#include <compare>\n#include <fmt/format.h>\n// #include <wx/wx.h>\n",
        "domain/facts/b.h": '#include "domain/values/a.h"\n',
        "domain/ledger/c.h": '#include "domain/facts/b.h"\n',
        "domain/decisions/d.cpp": '#include "domain/ledger/c.h"\n',
        "db/e.h": '#include <SQLiteCpp/SQLiteCpp.h>\n#include <sys/file.h>\n#include "domain/ledger/c.h"\n',
        "reports/f.h": '#include <cairo-pdf.h>\n#include <fstream>\n#include "domain/ledger/c.h"\n',
        "reports/console/main.cpp": '#include <CLI/CLI.hpp>\n#include "db/e.h"\n#include "reports/f.h"\n',
        "gui/models/g.h": '#include "reports/f.h"\n',
        "gui/h.cpp": '#include <wx/wx.h>\n#include "db/e.h"\n#include "gui/models/g.h"\n',
    }
    wrong = {
        "domain/values/w.h": '#include "domain/facts/b.h"\n',
        "domain/text/w.h": '#include "domain/facts/b.h"\n',
        "domain/facts/w.h": '#include "domain/ledger/c.h"\n',
        "domain/ledger/w.cpp": '#include "domain/decisions/d.h"\n',
        "domain/ledger/clock.cpp": "auto today = std::chrono::system_clock::now();\n",
        "domain/decisions/w.cpp": "#include <fstream>\n",
        "domain/decisions/wx.cpp": "#include <wx/string.h>\n",
        "domain/decisions/sql.cpp": "#include <sqlite3.h>\n",
        "domain/decisions/db.cpp": '#include "db/e.h"\n',
        "db/w.cpp": '#include "reports/f.h"\n',
        "reports/w.cpp": '#include "db/e.h"\n',
        "reports/gui.cpp": '#include "gui/models/g.h"\n',
        "gui/models/w.cpp": "#include <wx/wx.h>\n",
        "gui/models/db.cpp": '#include "db/e.h"\n',
        "gui/sql.cpp": "#include <SQLiteCpp/SQLiteCpp.h>\n",
        "gui/near.cpp": '#include "h.h"\n',
    }
    targets = {"domain/decisions/d.h": ""}
    complaints = []
    with tempfile.TemporaryDirectory() as folder:
        complaints += [f"proof: caught though right: {c}" for c in wrong_includes(plant(folder, right))]
    with tempfile.TemporaryDirectory() as folder:
        caught = "\n".join(wrong_includes(plant(folder, {**right, **targets, **wrong})))
        complaints += [f"proof: not caught: {name}" for name in wrong if name + ":" not in caught]
    return complaints


finish(prove() or wrong_includes(ROOT))
