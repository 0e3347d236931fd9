# SPDX-License-Identifier: GPL-3.0-or-later
"""A round by a fed trace in a real window: the feed set up by keys, two keys a reading, lost and found again.

Usage: fed_round.py FOLDER_OF_PROGRAMS [FOLDER_FOR_PICTURES]
"""
import math
import os
import random
import shutil
import sys
import threading
import time

from screen import Screen, Window, ask, scratch, wait_for

PROGRAMS = sys.argv[1]
PICTURES = sys.argv[2] if len(sys.argv) > 2 else None
POINTS = 5
LEAKS = [0.0, 3e-6, 0.0, 4e-8, 0.0]  # mbar l/s as the display shows them


class Detector:
    """Twenty lines a second into a named pipe, first-order response; helium is on while `leak` is not 0."""

    def __init__(self, pipe):
        self.pipe, self.leak, self.talks = pipe, 0.0, True
        os.mkfifo(pipe, 0o600)
        threading.Thread(target=self._run, daemon=True).start()

    def _run(self):
        signal, last = 0.0, time.monotonic()
        while True:
            try:
                with open(self.pipe, "w", buffering=1, encoding="ascii") as line:
                    while self.talks:
                        time.sleep(0.05)
                        now = time.monotonic()
                        signal = self.leak + (signal - self.leak) * math.exp(-(now - last) / 0.6)
                        last = now
                        line.write(f"LR {1.5e-9 * random.gauss(1.0, 0.03) + signal:.3E} mbar*l/s\r\n")
            except BrokenPipeError:
                pass
            while not self.talks:
                time.sleep(0.1)


def look(window, name):
    if PICTURES:
        os.makedirs(PICTURES, exist_ok=True)
        window.picture(os.path.join(PICTURES, name + ".png"))


def readings(history):
    return ask(PROGRAMS, history, "show", "164")["job"]["readings"]


def set_up(window, pipe):
    window.keys("ctrl+d")
    window.find("Detector feed", "dialog")
    time.sleep(0.8)
    window.type("bench detector")
    window.keys("alt+s", "Down", "Down", "alt+p")
    window.type(pipe)
    window.keys("alt+v", "Down", "alt+r")
    window.type("LR # mbar*")
    window.keys("alt+l")
    time.sleep(1.5)
    look(window, "fed-1-set-up")
    window.keys("alt+u")
    time.sleep(1.0)


def state(window, word):
    wait_for(word, lambda: any(node.name.startswith(word) or word in (node.description or "")
                               for node in window.everything()))


def spray(window, detector, history, leak):
    """Space, and Enter or N when the feed has an answer."""
    before = len(readings(history))
    window.keys("space")
    detector.leak = leak
    state(window, "READ")
    time.sleep(0.5)
    look(window, f"fed-2-read-{before}")
    window.keys("Return" if leak else "n")
    wait_for("the reading", lambda: len(readings(history)) == before + 1)
    detector.leak = 0.0
    reading = readings(history)[-1]
    assert reading["entry"] == "feed", reading
    assert reading["trace"], reading
    assert abs(reading["background_pa_m3_per_s"] - 1.5e-10) < 1e-11, reading
    if leak:
        assert reading["outcome"] == "value", reading
        assert abs(reading["peak_pa_m3_per_s"] / (leak * 0.1) - 1.0) < 0.1, reading
        assert 0.0 < reading["delay_s"] < 3.0, reading
    else:
        assert reading["outcome"] == "no response", reading
    state(window, "GO")


def fed_round(folder):
    history = os.path.join(folder, "fed.sealwalk")
    ask(PROGRAMS, history, "demo", "-o", history)
    detector = Detector(os.path.join(folder, "detector"))
    window = Window(PROGRAMS, history)
    time.sleep(1.5)
    window.keys("Tab", "Tab", "Home", "Return")  # the newest job is the open one
    wait_for("the job", lambda: window.has("Spray"))
    set_up(window, detector.pipe)
    window.keys("alt+3")
    time.sleep(6.0)  # a background to look back on
    for number, leak in enumerate(LEAKS[:2]):
        window.keys("j")
        window.type(str(1 + number))
        window.keys("Return")
        spray(window, detector, history, leak)

    detector.talks = False
    state(window, "HOLD")
    look(window, "fed-3-lost")
    before = len(readings(history))
    window.keys("space")  # the round goes on without it
    window.type("2-9")
    window.keys("Return")
    wait_for("the typed reading", lambda: len(readings(history)) == before + 1)
    assert readings(history)[-1]["entry"] == "typed"
    detector.talks = True
    time.sleep(1.5)  # it comes back by itself
    state(window, "GO")

    for number, leak in enumerate(LEAKS[2:]):
        window.keys("j")
        window.type(str(10 + number))
        window.keys("Return")
        spray(window, detector, history, leak)
    look(window, "fed-4-done")
    window.quit()


def main():
    folder = scratch()
    try:
        with Screen(os.environ.get("SEALWALK_WINDOW_SIZE", "1366x768")):
            fed_round(folder)
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main()
