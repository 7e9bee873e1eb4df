#!/usr/bin/python3
"""No control without a name, no letter with Alt twice on one screen, no key for two commands, in every language."""

from collections import Counter, namedtuple

import pyatspi
from _window import GERMAN, PLACES, PLACES_IN_GERMAN, Window, name_of, sample, wait_until, work_folder

Control = namedtuple("Control", "role name key")

NAMED = {
    pyatspi.ROLE_PUSH_BUTTON, pyatspi.ROLE_TEXT, pyatspi.ROLE_SLIDER, pyatspi.ROLE_TABLE, pyatspi.ROLE_TREE_TABLE,
    pyatspi.ROLE_COMBO_BOX, pyatspi.ROLE_CHECK_BOX, pyatspi.ROLE_RADIO_BUTTON, pyatspi.ROLE_LIST, pyatspi.ROLE_PAGE_TAB,
    pyatspi.ROLE_MENU, pyatspi.ROLE_MENU_ITEM, pyatspi.ROLE_SPIN_BUTTON, pyatspi.ROLE_TOGGLE_BUTTON,
}


def complaints(controls):
    found = [f"a {c.role} without a name" for c in controls if c.role in NAMED and not c.name.strip()]
    keys = Counter(c.key for c in controls if c.key)
    return found + [f"{key} is there {count} times" for key, count in keys.items() if count > 1]


def prove():
    right = [Control(pyatspi.ROLE_TEXT, "Find", "<Alt>i"), Control(pyatspi.ROLE_LABEL, "", ""),
             Control(pyatspi.ROLE_SLIDER, "Leaf", "")]
    assert complaints(right) == [], complaints(right)
    assert complaints(right + [Control(pyatspi.ROLE_TABLE, "", "")])
    assert complaints(right + [Control(pyatspi.ROLE_PUSH_BUTTON, "Again", "<Alt>i")])


def key_of(control):
    """Alt and a letter, or the key of a command; a letter inside an open menu only counts there."""
    try:
        binding = control.queryAction().getKeyBinding(0)
    except (NotImplementedError, IndexError):
        return ""
    mnemonic, _, rest = binding.partition(";")
    accelerator = rest.rpartition(";")[2]
    if control.getRole() == pyatspi.ROLE_MENU_ITEM:
        return accelerator
    return mnemonic or accelerator


def controls_of(window):
    found = []
    for control in window.controls():
        role = control.getRole()
        name = name_of(control)
        # A combo box on this desktop holds a menu of its own; its items are values, not commands.
        if role in (pyatspi.ROLE_MENU, pyatspi.ROLE_MENU_ITEM) and in_combo_box(control):
            continue
        if role == pyatspi.ROLE_COMBO_BOX and not name:
            name = labelled_near(control)
        found.append(Control(role, name, key_of(control)))
    return found


def in_combo_box(control):
    while control is not None:
        if control.getRole() == pyatspi.ROLE_COMBO_BOX:
            return True
        control = control.parent
    return False


def labelled_near(control):
    return name_of(control.getChildAtIndex(0)) if control.childCount else ""


def menu_letters(window):
    """Within one open menu no letter stands twice."""
    found = []
    for menu in [c for c in window.controls() if c.getRole() == pyatspi.ROLE_MENU and not in_combo_box(c)]:
        letters = Counter()
        for i in range(menu.childCount):
            try:
                letters[menu.getChildAtIndex(i).queryAction().getKeyBinding(0).partition(";")[0]] += 1
            except (NotImplementedError, IndexError):
                continue
        found += [f"menu {menu.name}: {key} {count} times" for key, count in letters.items() if key and count > 1]
    return found


prove()
with work_folder() as folder:
    shop = sample(folder)
    for environment, places in (({}, PLACES), (GERMAN, PLACES_IN_GERMAN)):
        with Window(shop, "--place", "verdict", environment=environment) as window:
            window.label(lambda text: text == places[6], f"the heading {places[6]}")
            wrong = menu_letters(window)
            for number, place in enumerate(places, start=1):
                window.keys(f"ctrl+{number}")
                wait_until(lambda: place in window.labels(), f"the heading {place}")
                seen = controls_of(window)
                assert len(seen) > 10
                wrong += [f"{place}: {each}" for each in complaints(seen)]
            assert not wrong, "\n".join(wrong)
