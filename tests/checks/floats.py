#!/usr/bin/python3
"""No floating point in values, facts and ledger: what is recorded and what it cost are whole numbers."""

import re
import tempfile

from sources import ROOT, finish, forbidden_words, plant

FOLDERS = ["domain/values", "domain/facts", "domain/ledger"]
WORDS = [(r"\b(double|float)\b", "whole numbers only here (Money, Quantity, Ratio)")]
REFUSALS = re.compile(r"static_assert\(!|= delete;")  # lines that keep floating point out may name it


def prove():
    complaints = []
    for line, should in (("double a = 1", True), ("float b(long c)", True), ("// a double", False),
                         ("static_assert(!std::is_constructible_v<Money, double>)", False), ("int doubles", False)):
        with tempfile.TemporaryDirectory() as folder:
            planted = plant(folder, {"domain/ledger/a.h": line + ";\n"})
            if bool(forbidden_words(planted, FOLDERS, WORDS, REFUSALS)) != should:
                complaints.append(f"proof: {'not caught' if should else 'caught though right'}: {line}")
    return complaints


finish(prove() or forbidden_words(ROOT, FOLDERS, WORDS, REFUSALS))
