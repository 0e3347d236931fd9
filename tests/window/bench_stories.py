# SPDX-License-Identifier: GPL-3.0-or-later
"""Two stories of the bench in a real window: the demo's sketch drawn from nothing by gestures, timed, and a round of
forty points by keys alone, with a correction, a skip, a flexed second reading, a void and a jump.

Usage: bench_stories.py FOLDER_OF_PROGRAMS [FOLDER_FOR_PICTURES]
"""
import os
import shutil
import sys
import time

from screen import Screen, ask, first_job, scratch, wait_for

PROGRAMS = sys.argv[1]
PICTURES = sys.argv[2] if len(sys.argv) > 2 else None
THREE_MINUTES = 180.0


def look(window, name):
    if PICTURES:
        os.makedirs(PICTURES, exist_ok=True)
        time.sleep(0.5)
        window.picture(os.path.join(PICTURES, name + ".png"))


def job(history):
    return ask(PROGRAMS, history, "show", "1")["job"]


def start(history, name):
    """An object with a limit and its first job, by keys."""
    window = first_job(PROGRAMS, history, name, "480 l", "1e-6")
    window.keys("alt+2")
    window.click("New sheet")
    time.sleep(0.5)
    return window


def lay(window, points):
    if points > 1:
        window.click("Number of points")
        window.keys("ctrl+a")
        window.type(str(points))
        window.keys("Return")


def box(window, start_at, end_at, points, body=False):
    window.keys("Escape", "Escape", "b")
    if body:
        window.keys("f")
    window.drag(start_at, end_at)
    if body:
        window.keys("f")
    lay(window, points)


def ring(window, start_at, end_at, points):
    window.keys("Escape", "Escape", "r")
    window.drag(start_at, end_at)
    lay(window, points)


def spot(window, place):
    window.keys("Escape", "Escape", "s")
    window.click_at(*place)


def path(window, key, places, points):
    window.keys("Escape", "Escape", key)
    for place in places:
        window.click_at(*place)
    window.keys("Return")
    lay(window, points)


def sketch_from_nothing(history):
    """Door with seal, viewport and gland; six ports of the rear wall; floor weld, clamp and hose: 62 points."""
    window = start(history, "Box coater 2")
    begin = time.monotonic()
    box(window, (300, 230), (600, 600), 24, body=True)
    ring(window, (450, 330), (500, 330), 4)
    spot(window, (240, 640))
    window.click("New sheet")
    time.sleep(0.3)
    for x, y in ((280, 250), (480, 250), (680, 250), (280, 480), (480, 480), (680, 480)):
        ring(window, (x, y), (x + 50, y), 4)
    window.click("New sheet")
    time.sleep(0.3)
    path(window, "w", ((200, 300), (800, 300)), 5)
    spot(window, (260, 450))
    path(window, "h", ((300, 450), (480, 470), (700, 560)), 3)
    drawn = wait_for("62 points", lambda: len(job(history)["sketch"]["points"]) == 62)
    seconds = time.monotonic() - begin
    assert drawn
    look(window, "bench-sketch")
    print(f"the demo's sketch, 62 points on three sheets, drawn from nothing in {seconds:.0f} s")
    window.quit()
    return seconds


class Keys:
    """Counts what is pressed."""

    def __init__(self, window):
        self.window = window
        self.count = 0

    def keys(self, *names):
        self.count += len(names)
        self.window.keys(*names)

    def type(self, text):
        self.count += len(text)
        self.window.type(text)


def round_of_forty(history):
    window = start(history, "Vessel 4")
    box(window, (300, 230), (600, 600), 24)
    ring(window, (760, 400), (840, 400), 16)
    wait_for("40 points", lambda: len(job(history)["sketch"]["points"]) == 40)
    window.keys("alt+3")
    window.click("Begin the walk")
    time.sleep(0.5)
    hand = Keys(window)

    def stored(count):
        wait_for(f"reading {count}", lambda: len(job(history)["readings"]) == count)

    hand.keys("space", "space")  # helium on and off; the value; on before the wait is over
    hand.type("3.2-9")
    hand.keys("Return", "i")
    stored(1)
    for number in range(2, 8):
        hand.type("2.1-9")
        hand.keys("Return")
        stored(number)
    hand.keys("c")  # 7 was misread
    hand.type("4.1-9")
    hand.keys("Return")
    stored(8)
    hand.keys("s")  # 8 comes later
    hand.type("4")
    hand.type("2.2-9")  # 9
    hand.keys("Return")
    stored(9)
    hand.keys("v")  # the background had moved under 9
    hand.type("1")
    hand.type("2.3-9")
    hand.keys("Return")
    stored(10)
    hand.type("2.0-9")  # 10, at rest, then once more flexed
    hand.keys("Return", "Up", "f")
    hand.type("8.0-9")
    hand.keys("Return")
    stored(12)
    hand.keys("j")  # 40 first, then on from 11
    hand.type("40")
    hand.keys("Return", "n")
    stored(13)
    hand.keys("j")
    hand.type("11")
    hand.keys("Return")
    before = hand.count
    for number in range(11, 40):
        hand.keys("n")
    stored(42)
    assert hand.count - before == 29, "no response is one key"
    hand.type("2.4-9")  # the one that was skipped
    hand.keys("Return")
    stored(43)
    look(window, "bench-round")
    record = job(history)
    readings = record["readings"]
    answered = {r["point"] for r in readings}
    assert len(answered) == 40, len(answered)
    assert sum(1 for r in readings if r.get("corrects")) == 1
    assert len(record["voids"]) == 1
    assert [r["condition"] for r in readings].count("flexed") == 1
    print(f"40 points by keys alone: {len(readings)} readings, {hand.count} key presses")
    window.quit()


def main():
    for story in (sketch_from_nothing, round_of_forty):
        folder = scratch()
        history = os.path.join(folder, "data", "sealwalk", "history.sealwalk")
        try:
            with Screen(os.environ.get("SEALWALK_WINDOW_SIZE", "1366x768")):
                seconds = story(history)
                assert seconds is None or seconds < THREE_MINUTES, f"{seconds:.0f} s are more than three minutes"
        finally:
            shutil.rmtree(folder, ignore_errors=True)
    print("2 passed, 0 failed")


if __name__ == "__main__":
    main()
