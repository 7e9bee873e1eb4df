"""What the checks share: finding our sources, leaving out comments and texts, saying what is wrong."""

import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

_COMMENT_OR_TEXT = re.compile(
    r"""//[^\n]*|/\*.*?\*/|R"(?P<mark>[^("\s]*)\(.*?\)(?P=mark)"|"(?:\\.|[^"\\\n])*"|(?<![0-9a-fA-F])'(?:\\.|[^'\\\n])+'""",
    re.DOTALL,
)


def sources(root, *folders, endings=(".h", ".cpp")):
    """Our files with those endings, in a steady order."""
    found = []
    for folder in folders:
        found += [p for p in sorted((root / folder).rglob("*")) if p.suffix in endings and p.is_file()]
    return found


def code_lines(path, keep_texts=False):
    """(number, line) of a source without its comments and, unless they are kept, without what stands in quotes."""

    def blank(match):
        text = match.group(0)
        if keep_texts and not text.startswith("/"):
            return text
        return "\n" * text.count("\n") or " "

    code = _COMMENT_OR_TEXT.sub(blank, path.read_text(encoding="utf-8"))
    return list(enumerate(code.split("\n"), start=1))


def forbidden_words(root, folders, words, allowed_lines=None):
    """Complaints about every word found in the code; words is a list of (regular expression, what to do instead)."""
    complaints = []
    for path in sources(root, *folders):
        for number, line in code_lines(path):
            if allowed_lines and allowed_lines.search(line):
                continue
            for pattern, instead in words:
                match = re.search(pattern, line)
                if match:
                    complaints.append(f"{path.relative_to(root)}:{number}: {match.group(0).strip()}: {instead}")
    return complaints


def plant(folder, files):
    """Writes the files (path -> text) into a folder that stands for a checkout."""
    for name, text in files.items():
        path = Path(folder) / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    return Path(folder)


def finish(complaints):
    """Prints the complaints and ends with 1 where there are any."""
    for complaint in complaints:
        print(complaint)
    sys.exit(1 if complaints else 0)
