# SPDX-License-Identifier: GPL-3.0-or-later
"""Every stage and dialog of the demo history, read through the accessibility tree of a real window: nothing that takes
the focus or can be operated is without a name. Lists what is, with its role and where it sits.

Usage: accessible_story.py FOLDER_OF_PROGRAMS [FOLDER_FOR_PICTURES]
"""
import os
import shutil
import sys
import time

import pyatspi

from screen import Screen, Window, ask, scratch, wait_for

PROGRAMS = sys.argv[1]
PICTURES = sys.argv[2] if len(sys.argv) > 2 else None
OPERATED = {"push button", "toggle button", "check box", "radio button", "combo box", "text", "entry", "password text",
            "spin button", "slider", "list", "table", "tree", "tree table", "page tab", "menu", "menu item",
            "check menu item", "radio menu item", "link", "dialog", "list item", "table column header"}
# A cell without words is an empty cell; but one that can be ticked says what is ticked.
CELLS = {"table cell", "tree item"}


class Reader:
    """Reads what shows, place by place."""

    def __init__(self, window):
        self.window = window
        self.read = 0
        self.offenders = {}

    def place(self, name):
        """Reads all that shows now; what has no name is kept under its path, with the first place it was met."""
        if PICTURES:
            os.makedirs(PICTURES, exist_ok=True)
            self.window.picture(os.path.join(PICTURES, "accessible-" + name.replace(" ", "-") + ".png"))
        before = self.read
        self._read(self.window.application(), [], name)
        assert self.read - before > 20, f"{name}: hardly anything to read, the window is not as expected"

    def _read(self, node, path, place):
        for index in range(node.childCount):
            try:
                child = node.getChildAtIndex(index)
                if child is None:
                    continue
                states, role = child.getState(), child.getRoleName()
                if not states.contains(pyatspi.STATE_SHOWING):
                    continue
                self.read += 1
                own = path + [f"{role} \"{child.name}\""]
                if self._is_nameless(child, role, states):
                    self.offenders.setdefault(" > ".join(own), place)
                self._read(child, own, place)
            except LookupError:  # gone while it was read
                continue

    def _is_nameless(self, node, role, states):
        if role == "combo box":  # named by the value it shows: a label or a description says what of
            return not node.description.strip() and not any(
                relation.getRelationType() == pyatspi.RELATION_LABELLED_BY for relation in node.getRelationSet())
        return not node.name.strip() and self._wants_name(role, states)

    @staticmethod
    def _wants_name(role, states):
        if role in CELLS:
            return states.contains(pyatspi.STATE_CHECKABLE)
        return role in OPERATED or states.contains(pyatspi.STATE_FOCUSABLE)

    def dialog(self, keys, caption, place, typed=None):
        """Opens a dialog by its keys, reads it, leaves it. The caption is its beginning."""
        self.window.keys(*keys)
        wait_for(f"\"{caption}\"", lambda: self._is_open(caption))
        time.sleep(0.8)
        if typed:
            self.window.type(typed)
            time.sleep(0.5)
        self.place(place)
        self._leave(caption)

    def pressed(self, button, caption, place):
        """As dialog(), by a button."""
        self.window.click(button, "push button")
        self.dialog((), caption, place)

    def _leave(self, caption):
        self.window.keys("Escape")
        wait_for(f"the end of \"{caption}\"", lambda: not self._is_open(caption))
        time.sleep(0.3)

    def _is_open(self, caption):
        return any(node.name.startswith(caption) and node.getRoleName() == "dialog"
                   and node.getState().contains(pyatspi.STATE_SHOWING)
                   for node in self.window.application())


def stage(window, key):
    window.keys("alt+" + key)
    time.sleep(2.0)


def open_job(window, number, *steps):
    """Of the list, newest first."""
    window.keys("ctrl+f", "ctrl+a", "BackSpace", "Tab", "Tab", "ctrl+Home", *steps, "Return")
    wait_for(f"job {number}", lambda: any(f"– job {number} –" in node.name for node in window.application()))
    time.sleep(2.0)


def menus(reader):
    """Every menu, opened."""
    window = reader.window
    for key, name in (("f", "file"), ("e", "edit"), ("v", "view"), ("j", "job"), ("t", "tools"), ("h", "help")):
        window.keys("alt+" + key)
        time.sleep(0.5)
        reader.place(f"menu {name}")
        window.keys("Escape", "Escape")
        time.sleep(0.2)


def everywhere(reader):
    """What opens in every stage."""
    reader.dialog(("ctrl+l",), "Who is logging", "who is logging")
    reader.dialog(("ctrl+k",), "Go to", "go to", typed="17")
    reader.dialog(("ctrl+d",), "Detector feed", "detector feed")
    reader.window.keys("F1")
    time.sleep(0.5)
    reader.place("key card")
    reader.window.keys("F1")
    time.sleep(0.3)
    reader.window.keys("F2")
    time.sleep(0.5)
    reader.place("last notes")
    reader.window.keys("Escape")
    reader.dialog(("alt+t", "p"), "Presenter", "presenter")


def history(reader):
    window = reader.window
    reader.place("history")
    reader.dialog(("ctrl+shift+n",), "New test object", "new object")
    window.keys("ctrl+f", "Tab")
    reader.dialog(("ctrl+n",), "New job", "new job")
    window.keys("ctrl+f", "ctrl+a", "BackSpace", "Tab", "Tab", "space", "Down", "space")
    window.find("table: Changes")
    time.sleep(4.0)
    reader.place("compare side by side")
    window.keys("o")
    time.sleep(1.0)
    reader.place("compare laid over")
    window.keys("o", "Escape")
    time.sleep(0.5)


def prepare(reader):
    reader.place("prepare")
    reader.dialog(("alt+b",), "Background", "background")
    reader.dialog(("alt+l",), "Reference leak", "reference leak")
    reader.dialog(("alt+r",), "Pressure rise", "pressure rise")
    reader.pressed("By kind …", "Limits by kind of joint", "limits by kind")


def sketch(reader):
    window = reader.window
    reader.place("sketch")
    for tool in ("r", "b", "w", "h", "p"):
        window.keys("Escape", "Escape", tool)
        time.sleep(0.3)
        reader.place("sketch tool " + tool)
    window.keys("Escape", "Escape")


def spray(reader):
    window = reader.window
    reader.place("spray")
    for keys, name in ((("j",), "jump"), (("v",), "void"), (("a",), "not accessible"), (("o",), "condition"),
                       (("b",), "background typed")):
        window.keys(*keys)
        time.sleep(0.3)
        reader.place("spray " + name)
        window.keys("Escape")
    reader.dialog(("m",), "Remark", "spray remark")
    reader.dialog(("p",), "Order of the walk", "spray order")
    window.keys("z")
    time.sleep(0.8)
    reader.place("distance view")
    window.keys("z")
    time.sleep(0.3)


def judge(reader):
    window = reader.window
    reader.place("judge")
    window.find("Findings", "table").queryComponent().grabFocus()
    window.keys("Home")
    reader.dialog(("j",), "Verdict on point", "verdict")
    window.keys("Return")
    time.sleep(0.8)
    reader.place("because")
    window.keys("Escape", "r")
    window.find("Repairs", "table")
    reader.place("repairs")
    window.keys("Escape")
    reader.dialog(("g",), "Repair at", "repair")
    reader.dialog(("v",), "Void together", "void a run")


def sign_off(reader):
    window = reader.window
    reader.place("sign off")
    window.click("Send for review", "push button")
    time.sleep(0.8)
    reader.place("what stops a sign-off")
    window.type("the rest is to be looked at")
    window.keys("Return")
    wait_for("the reviewer's fields", lambda: window.has("Passphrase of the reviewer's key"))
    reader.place("sign off submitted")
    reader.pressed("People …", "People who sign", "people")


def signed(reader):
    """Last year's job: the certificate, and the amendment to it."""
    window = reader.window
    stage(window, "6")
    open_job(window, 118, "Down")
    stage(window, "5")
    reader.place("certificate")
    reader.dialog(("alt+j", "a"), "Amendment to job 118", "amendment")


def first_start():
    window = Window(PROGRAMS)
    time.sleep(1.5)
    reader = Reader(window)
    reader.place("first start")
    window.quit()
    return reader


def main():
    folder = scratch()
    file = os.path.join(folder, "demo.sealwalk")
    try:
        ask(PROGRAMS, file, "demo", "-o", file)
        with Screen(os.environ.get("SEALWALK_WINDOW_SIZE", "1366x768")):
            offenders = first_start().offenders
            window = Window(PROGRAMS, file)
            time.sleep(1.5)
            reader = Reader(window)
            reader.offenders = offenders
            history(reader)
            open_job(window, 164)
            window.keys("ctrl+l")
            window.find("Who is logging", "dialog")
            time.sleep(0.8)
            window.type("Tester A")
            window.keys("Return")
            try:
                for key, read in (("1", prepare), ("2", sketch), ("3", spray), ("4", judge), ("5", sign_off)):
                    stage(window, key)
                    read(reader)
                menus(reader)
                everywhere(reader)
                signed(reader)
                window.quit()
            finally:
                for path, place in reader.offenders.items():
                    print(f"{place}: {path}")
                print(f"{reader.read} objects read")
            assert not reader.offenders, f"{len(reader.offenders)} without a name"
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main()
