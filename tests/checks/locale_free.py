#!/usr/bin/python3
"""Refuses functions whose result hangs on the machine's language: 12.5 must not become 12 on a German desktop."""

import tempfile

from sources import ROOT, finish, forbidden_words, plant

READ = "reads numbers by the machine's language; use domain/text or std::from_chars"
WRITE = "writes numbers by the machine's language; use fmt"
LETTERS = "knows letters by the machine's language; compare the ASCII characters meant"
DATES = "writes dates by the machine's language; use domain/text"

WORDS = [
    (r"(?<![\w.>])(std::)?(strto(d|f|ld)|sto(d|f|ld)|ato[fil]|s?scanf|fscanf)\s*\(", READ),
    (r"\b(wxAtof|ToDouble|wxNumberFormatter|wxFloatingPointValidator|wxIntegerValidator|MakeFloatingPointValidator)\b", READ),
    (r"\bstd::to_string\b", WRITE),
    (r"(?<![\w.>])(std::)?(f|s|sn|vsn|v|vf)?printf\s*\(", WRITE),
    (r"\bwx(String::)?Printf\s*\(|\bwxString::Format\s*\(", WRITE),
    (r"(?<![\w.>])(std::)?(tolower|toupper|isalpha|isalnum|isdigit|isspace|isupper|islower|ispunct)\s*\(", LETTERS),
    (r"\b(strftime|put_time|asctime|ctime|put_money|get_money|localeconv)\s*\(", DATES),
    (r"\bsetlocale\s*\(|\bstd::locale::global\b|\bwxLocale\b", "changes every number of the process; pass what is needed"),
]
FOLDERS = ["domain", "db", "reports", "gui"]


def prove():
    wrong = ["strtod(a, b)", "std::stod(a)", "std::to_string(1.5)", "snprintf(a, 3, b)", "std::tolower(a)",
             "a.ToDouble(&b)", "std::strftime(a, 1, b, c)", "wxString::Format(a, 1.5)", "setlocale(LC_ALL, a)",
             "std::put_time(a, b)", "isspace(c)", "atof(a)"]
    right = ["fmt::to_string(1)", "text.ToCDouble(&b)", "my_printf(a)", "// strtod(a, b)", 'say("printf(")',
             "std::from_chars(a, b, c)", "fmt::format(a, 1.5)", "is_digit(c)"]
    complaints = []
    for lines, should in ((wrong, True), (right, False)):
        for line in lines:
            with tempfile.TemporaryDirectory() as folder:
                caught = bool(forbidden_words(plant(folder, {"domain/a.cpp": line + ";\n"}), FOLDERS, WORDS))
            if caught != should:
                complaints.append(f"proof: {'not caught' if should else 'caught though right'}: {line}")
    return complaints


finish(prove() or forbidden_words(ROOT, FOLDERS, WORDS))
