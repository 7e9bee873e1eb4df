"""Drives the window from outside, over the accessibility tree and with real keys: what this cannot find, a blind person
cannot find either. Every walk starts its own program and ends it by its own id."""

import csv
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import gi
import pyatspi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi  # noqa: E402

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "support"))
from sentences import GERMAN, English  # noqa: E402, F401

# What a call may take, and what one may in the first seconds of a program: a machine that builds beside is slow.
Atspi.set_timeout(10_000, 15_000)

SOURCE = Path(__file__).resolve().parents[3]
PROGRAM = os.environ["DYESTEAD_WINDOW_PROGRAM"]
BOOKS = os.environ["DYESTEAD_BOOKS"]
PLACES = ["Today", "Garden", "Vat", "Bench", "Cupboard", "Stall", "Verdict", "Books"]
PLACES_IN_GERMAN = ["Heute", "Garten", "Küpe", "Werkbank", "Schrank", "Marktstand", "Urteil", "Bücher"]


def wait_until(question, what, limit=30.0):
    """The first answer that is not empty; fails with `what` when none comes in time."""
    end = time.monotonic() + limit
    while time.monotonic() < end:
        try:
            answer = question()
            if answer:
                return answer
        except Exception:  # a control that has just gone
            pass
        time.sleep(0.1)
    raise AssertionError(f"waited {limit:.0f} s in vain for {what}")


def books(*arguments):
    """What the console program prints."""
    run = subprocess.run([BOOKS, *map(str, arguments)], capture_output=True, text=True, check=False)
    assert run.returncode == 0, f"dyestead-books {arguments}: {run.stderr}"
    return run.stdout


def sample(folder):
    """The sample shop as a new file in the folder."""
    shop = Path(folder) / "sample.dyestead"
    books("import", SOURCE / "sample-shop" / "shop", shop)
    return shop


def one_line(text):
    return " ".join(text.split())


# What the desktop writes where the program has misused it. Three such lines come from below us: wxWidgets shows a frame
# with a menu bar a pixel wide at first; GTK reckons below nought where tabs need arrows and, on a busy machine, where a
# scroll bar appears; and it is asked by a screen reader
# for tabs that are gone.
FROM_BELOW = ("gtk_distribute_natural_allocation", "gtk_box_gadget_distribute: .* in Gtk(Notebook|Scrollbar)", "gtk_notebook_get_tab_label")
COMPLAINTS = re.compile(rf"-CRITICAL \*\*(?!.*({'|'.join(FROM_BELOW)}))|\*\*\* BUG \*\*\*")


class Window:
    def __init__(self, *arguments, environment=None):
        self.terminal = tempfile.TemporaryFile("w+", encoding="utf-8", errors="replace")
        self.process = subprocess.Popen([PROGRAM, *map(str, arguments)], env={**os.environ, **(environment or {})},
                                        stderr=self.terminal)

    def __enter__(self):
        self.frame = wait_until(self._frame, "the window")
        return self

    def __exit__(self, failure, *_):
        self.process.terminate()
        try:
            self.process.wait(10)
        except subprocess.TimeoutExpired:
            self.process.kill()
            self.process.wait()
        self.terminal.seek(0)
        written = self.terminal.read()
        self.terminal.close()
        sys.stderr.write(written)
        assert failure or not COMPLAINTS.search(written), f"the desktop complains of the program:\n{written}"

    def _frame(self):
        assert self.process.poll() is None, f"the program ended with {self.process.returncode}"
        for program in pyatspi.Registry.getDesktop(0):
            if program is not None and program.get_process_id() == self.process.pid and program.childCount:
                return program.getChildAtIndex(0)
        return None

    def runs(self):
        return self.process.poll() is None

    def controls(self, within=None):
        """Everything that can be seen, from the top; cells of tables are left out."""
        todo = [within or self.frame]
        while todo:
            control = todo.pop()
            if control is None:
                continue
            yield control
            if control.getRole() in (pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE_TABLE):
                continue
            children = [control.getChildAtIndex(i) for i in range(control.childCount)]
            todo += [c for c in reversed(children) if c is not None and shows(c)]

    def labels(self):
        return [one_line(text_of(c)) for c in self.controls() if c.getRole() == pyatspi.ROLE_LABEL and text_of(c)]

    def label(self, question, what):
        """The first label whose text answers yes."""
        try:
            return wait_until(lambda: next((t for t in self.labels() if question(t)), None), what)
        except AssertionError as vain:
            raise AssertionError(f"{vain}; there stands: {self.labels()}") from None

    def named(self, role, name):
        """The control of that role with that name, given or by the label before it."""

        def look():
            return next((c for c in self.controls() if c.getRole() == role and name_of(c) == name), None)

        return wait_until(look, f"a {role} called {name}")

    def keys(self, *keys):
        """Real keys, once the window manager has given one of the program's windows the keyboard."""
        wait_until(lambda: any(w.getState().contains(pyatspi.STATE_ACTIVE) for w in self.frame.parent), "an active window")
        subprocess.run(["xdotool", "key", "--clearmodifiers", *keys], check=True)

    def focused(self):
        return next((c for c in self.controls() if c.getState().contains(pyatspi.STATE_FOCUSED)), None)

    def put(self, name, text):
        """Types into the field of that name, in place of what stood there."""
        self.named(pyatspi.ROLE_TEXT, name).queryEditableText().setTextContents(text)

    def text(self, name):
        return text_of(self.named(pyatspi.ROLE_TEXT, name))

    def choose(self, name, option):
        """In a list to choose from: the first entry in which the words stand."""

        def look():
            return next((c for c in self.controls() if c.getRole() == pyatspi.ROLE_COMBO_BOX and labelled_by(c) == name), None)

        combo = wait_until(look, f"something to choose called {name}")
        entries = [entry.name for entry in combo.getChildAtIndex(0)]
        at = next((i for i, entry in enumerate(entries) if option in entry), None)
        assert at is not None, f"{name} has no entry with {option!r}, only {entries}"
        combo.querySelection().selectChild(at)

    def tab(self, name):
        """Shows the list of that name."""
        tab = self.named(pyatspi.ROLE_PAGE_TAB, name)
        tab.parent.querySelection().selectChild(tab.getIndexInParent())
        return self.table(name)

    def table(self, name):
        def look():
            return next((c for c in self.controls()
                         if c.getRole() in (pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE_TABLE) and c.name == name), None)

        return wait_until(look, f"a table called {name}")

    def rows(self, name):
        table = self.table(name)
        return [cells(table, row) for row in range(table.queryTable().nRows)]

    def select(self, name, words):
        """By keys, the first line of a list in which the words stand in one cell."""

        def look():
            return next((i for i, row in enumerate(self.rows(name)) if any(words in cell for cell in row)), None)

        at = wait_until(lambda: (look() is not None) and [look()], f"a line with {words!r} in {name}")[0]
        self.table(name).queryComponent().grabFocus()
        self.keys("Home", *["Down"] * at)
        wait_until(lambda: self.table(name).queryTable().isRowSelected(at), f"line {at} of {name} selected")

    def press(self, name):
        press(self.named(pyatspi.ROLE_PUSH_BUTTON, name))

    def keep(self, said):
        """Keeps the form with its key, and waits for what the entry means."""
        self.keys("ctrl+Return")
        return self.label(lambda text: said in text, f"word of what was kept: {said}")

    def headline(self):
        """On the Verdict: the sentence above the lines."""
        return self.label(lambda t: t.startswith(("Buy ", "Grow ", "Too ", "Leave ", "Each extra", "Growing", "The ", "If "))
                          and not t.startswith(("The books", "The shop")), "the headline")


def save_as(window, path, begin=None):
    """The page that is shown as a file, by Ctrl+S, or by what `begin` does."""
    (begin or (lambda: window.keys("ctrl+s")))()
    wait_until(lambda: dialog_of(window), "the desktop's own file dialog")
    window.keys("ctrl+a")
    subprocess.run(["xdotool", "type", "--delay", "30", str(path)], check=True)
    window.keys("Return")
    window.label(lambda text: text.startswith("The page is in"), "word where the page is")
    wait_until(path.exists, f"the file {path}")


def dialog_of(window):
    roles = (pyatspi.ROLE_FILE_CHOOSER, pyatspi.ROLE_DIALOG)
    program = window.frame.parent
    return next((c for c in program if c is not None and c.getRole() in roles
                 and c.getState().contains(pyatspi.STATE_ACTIVE)), None)


def shows(control):
    state = control.getState()
    return state.contains(pyatspi.STATE_SHOWING) or control.getRole() in (pyatspi.ROLE_MENU, pyatspi.ROLE_MENU_ITEM)


def text_of(control):
    try:
        return control.queryText().getText(0, -1)
    except NotImplementedError:
        return control.name


def name_of(control):
    return control.name or labelled_by(control)


def labelled_by(control):
    """What the label before it says; a combo box itself goes by the name of what is chosen in it."""
    return next((relation.getTarget(0).name for relation in control.getRelationSet()
                 if relation.getRelationType() == pyatspi.RELATION_LABELLED_BY), "")


def exported(shop, folder):
    """The shop as it goes out: its records by kind, each by the headings of its file."""
    shutil.rmtree(folder, ignore_errors=True)
    books("export", shop, folder)
    kinds = {}
    for file in sorted(Path(folder).glob("*.csv")):
        with file.open(encoding="utf-8", newline="") as lines:
            kinds[file.stem] = list(csv.DictReader(lines))
    return kinds


def added(before, after, kind):
    """The records of a kind that were not there before."""
    known = {record["code"] for record in before.get(kind, [])}
    return [record for record in after[kind] if record["code"] not in known]


def figures(shop, report, *more):
    return json.loads(books("report", report, shop, "--format", "json", *more))["figures"]


def cells(table, row):
    face = table.queryTable()
    return [text_of(face.getAccessibleAt(row, column)) for column in range(face.nColumns)]


def press(button):
    button.queryAction().doAction(0)


def work_folder():
    return tempfile.TemporaryDirectory(prefix="dyestead walk ")
