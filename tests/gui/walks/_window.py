"""Drives the window from outside, over the accessibility tree and with real keys: what this cannot find, a blind person
cannot find either. Every walk starts its own program and ends it by its own id."""

import os
import subprocess
import tempfile
import time
from pathlib import Path

import pyatspi

SOURCE = Path(__file__).resolve().parents[3]
PROGRAM = os.environ["DYESTEAD_WINDOW_PROGRAM"]
BOOKS = os.environ["DYESTEAD_BOOKS"]
PLACES = ["Today", "Garden", "Vat", "Bench", "Cupboard", "Stall", "Verdict", "Books"]


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


class Window:
    def __init__(self, *arguments):
        self.process = subprocess.Popen([PROGRAM, *map(str, arguments)])

    def __enter__(self):
        self.frame = wait_until(self._frame, "the window")
        return self

    def __exit__(self, *_):
        self.process.terminate()
        try:
            self.process.wait(10)
        except subprocess.TimeoutExpired:
            self.process.kill()
            self.process.wait()

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
        return wait_until(lambda: next((t for t in self.labels() if question(t)), None), what)

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

    def headline(self):
        """On the Verdict: the sentence above the lines."""
        return self.label(lambda t: t.startswith(("Buy ", "Grow ", "Too ", "Leave ", "Each extra", "Growing", "The ", "If "))
                          and not t.startswith(("The books", "The shop")), "the headline")


def shows(control):
    state = control.getState()
    return state.contains(pyatspi.STATE_SHOWING) or control.getRole() in (pyatspi.ROLE_MENU, pyatspi.ROLE_MENU_ITEM)


def text_of(control):
    try:
        return control.queryText().getText(0, -1)
    except NotImplementedError:
        return control.name


def name_of(control):
    if control.name:
        return control.name
    for relation in control.getRelationSet():
        if relation.getRelationType() == pyatspi.RELATION_LABELLED_BY:
            return relation.getTarget(0).name
    return ""


def cells(table, row):
    face = table.queryTable()
    return [text_of(face.getAccessibleAt(row, column)) for column in range(face.nColumns)]


def press(button):
    button.queryAction().doAction(0)


def work_folder():
    return tempfile.TemporaryDirectory(prefix="dyestead walk ")
