#!/usr/bin/python3
"""Every place at 1280x800 and at 1024x700, light and dark: no button, field or sentence reaches out of the window. The
pictures are kept in the folder DYESTEAD_SCREENS, to be looked at."""

import os
import subprocess
from pathlib import Path

import pyatspi
from _window import PLACES, Window, sample, wait_until, work_folder

SIZES = [(1280, 800), (1024, 700)]  # of the window with what the window manager puts around it
BORDER = 20
WHOLE = {pyatspi.ROLE_PUSH_BUTTON, pyatspi.ROLE_TEXT, pyatspi.ROLE_COMBO_BOX, pyatspi.ROLE_LABEL, pyatspi.ROLE_PAGE_TAB_LIST}


def extents(control):
    return control.queryComponent().getExtents(pyatspi.DESKTOP_COORDS)


def resize(window, width, height):
    (wid,) = subprocess.run(["xdotool", "search", "--onlyvisible", "--pid", str(window.process.pid)],
                            capture_output=True, text=True, check=True).stdout.split()[-1:]
    around = subprocess.run(["xprop", "-id", wid, "_NET_FRAME_EXTENTS"], capture_output=True, text=True, check=True).stdout
    left, right, top, bottom = (int(each) for each in around.split("=")[1].split(","))
    inside = [str(width - left - right), str(height - top - bottom)]
    subprocess.run(["xdotool", "windowmove", wid, "0", "0", "windowsize", wid, *inside], check=True)
    wait_until(lambda: abs(extents(window.frame).width - width) < BORDER, f"a window {width} wide")


def scrolls(control):
    above = control.parent
    while above is not None and above.getRole() not in (pyatspi.ROLE_SCROLL_PANE, pyatspi.ROLE_VIEWPORT, pyatspi.ROLE_FRAME):
        above = above.parent
    return above is not None and above.getRole() != pyatspi.ROLE_FRAME


def reaching_out(window):
    """What stands partly outside of the window; what scrolls has its own bars."""
    frame = extents(window.frame)
    out = []
    for control in window.controls():
        if control.getRole() not in WHOLE or scrolls(control):
            continue
        box = extents(control)
        if box.width <= 0 or box.height <= 0:
            continue
        if box.x + box.width > frame.x + frame.width + 1 or box.y + box.height > frame.y + frame.height + 1:
            out.append((control.getRoleName(), control.name, (box.x, box.y, box.width, box.height)))
    return out


def headings(window, name):
    face = window.table(name).queryTable()
    return [" ".join(face.getColumnDescription(column).split()) for column in range(face.nColumns)]


def what_matters_is_seen(window, height):
    """In the small window: the rows of the side by side without scrolling, and of a list beside a form what a row is and
    what it comes to."""
    window.keys("ctrl+7")
    side_by_side = window.table("Side by side")
    wait_until(lambda: extents(side_by_side).y + 300 < height, "twelve rows of the side by side above the edge")
    window.keys("ctrl+2")
    window.table("Plantings")
    window.keys("ctrl+n")
    window.label(lambda text: text == "A sowing", "the form")
    wait_until(lambda: {"plant", "bed", "cut so far"} <= set(headings(window, "Plantings")), "the first columns and the last")
    assert "our hours" not in headings(window, "Plantings"), headings(window, "Plantings")
    window.keys("Escape")


def keep_picture(picture, width, height):
    """Once the window stands still: what is told of a control is ahead of what is painted."""
    before = None

    def still():
        nonlocal before
        subprocess.run(["import", "-window", "root", "-crop", f"{width}x{height}+0+0", "+repage", str(picture)], check=True)
        pixels = subprocess.run(["convert", str(picture), "rgb:-"], capture_output=True, check=True).stdout
        stood, before = pixels == before, pixels
        return stood

    wait_until(still, f"a window that stands still for {picture.name}")


with work_folder() as folder:
    shop = sample(folder)
    screens = Path(os.environ.get("DYESTEAD_SCREENS", folder))
    screens.mkdir(parents=True, exist_ok=True)
    for theme in ["Adwaita", "Adwaita:dark"]:
        os.environ["GTK_THEME"] = theme
        with Window(shop, "--place", "today") as window:
            window.table("To see to")
            for width, height in SIZES:
                resize(window, width, height)
                for number, place in enumerate(PLACES, start=1):
                    window.keys(f"ctrl+{number}")
                    window.label(lambda text, place=place: text == place, f"the place {place}")
                    try:
                        wait_until(lambda: not reaching_out(window), "everything inside the window", 5)
                    except AssertionError:
                        raise AssertionError(f"{place} at {width}x{height}: {reaching_out(window)}") from None
                    colour = "dark" if "dark" in theme else "light"
                    picture = screens / f"{place.lower()}-{width}x{height}-{colour}.png"
                    keep_picture(picture, width, height)
                    assert picture.stat().st_size > 5000, picture
            what_matters_is_seen(window, SIZES[-1][1])
