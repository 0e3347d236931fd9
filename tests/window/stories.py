# SPDX-License-Identifier: GPL-3.0-or-later
"""The three stories of a job, done by hand in a real window: technician, supervisor, next year.

Usage: stories.py FOLDER_OF_PROGRAMS [FOLDER_FOR_PICTURES]
"""
import os
import shutil
import sys
import time

from screen import Screen, Window, ask, first_job, scratch, wait_for

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


def check_with_reference_leak(window, moment_keys=()):
    """The reference leak on the far flange: certificate on the first call, the display each time."""
    window.keys("alt+1")
    time.sleep(0.5)
    window.keys("alt+l")
    window.find("Reference leak", "dialog")
    time.sleep(0.8)
    if not moment_keys:
        window.fill("serial number", "RL-1")
        window.fill("certificate", "C-17")
        window.fill("certified value", "1e-7")
        window.fill("certified at temperature", "20 degC")
        window.fill("date of the certificate", time.strftime("%Y-%m-%d"))
        window.fill("place", "far flange")
    window.fill("shown with the leak shut", "1e-10")
    window.fill("shown with the leak open", "1.001e-7")
    window.fill("response to 63 %", "2 s")
    window.click("Store the check", "push button")
    time.sleep(0.5)


def prepare(window):
    check_with_reference_leak(window)
    window.keys("alt+b")
    window.find("Background", "dialog")
    time.sleep(0.8)
    window.click("values")
    for number in range(24):
        window.type("1.02e-10" if number % 2 else "0.98e-10")
        window.keys("Return")
    window.click("Store the background", "push button")
    time.sleep(0.5)


def technician(history):
    """From an empty history to a walked round, readings by keys alone."""
    window = first_job(PROGRAMS, history, "Vessel 3", "120 l", "1e-8", tag="V-3")
    prepare(window)
    wait_for("check and background on disk",
             lambda: job(history)["calibrations"] and job(history)["backgrounds"])
    look(window, "1-prepare")

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


def supervisor(history, folder):
    """Looks, sends back with a remark, sees it answered, signs with a passphrase; the documents are written."""
    window = Window(PROGRAMS)
    time.sleep(1.0)
    window.keys("Return")
    wait_for("job 1 open", lambda: any("job 1" in (node.name or "") for node in window.everything()))
    time.sleep(2.0)
    window.keys("alt+4")
    time.sleep(3.0)
    look(window, "5-judge")
    window.keys("alt+5")
    time.sleep(3.0)
    look(window, "6-review")
    window.send_for_review()
    wait_for("submitted", lambda: job_state(history) == "submitted")

    window.keys("ctrl+l")  # who sent it does not send it back
    window.find("Who is logging", "dialog")
    time.sleep(0.8)
    window.keys("ctrl+a")
    window.type("R. Reviewer")
    window.keys("Return")
    window.click("Remarks that go with the job", "text")
    window.type("Spray 7 again; check with the reference leak afterwards.")
    window.click("Send back", "push button")
    wait_for("returned", lambda: job_state(history) == "returned")

    check_with_reference_leak(window, ("after",))
    wait_for("the check afterwards", lambda: len(job(history)["calibrations"]) == 2)
    window.keys("alt+5")
    time.sleep(3.0)
    window.send_for_review()
    wait_for("submitted again", lambda: job_state(history) == "submitted")
    answer_what_needs_a_word(window, history)

    window.click("New person …", "push button")
    window.find("New person", "dialog")
    time.sleep(0.8)
    window.type("S. Visor")
    for word in ("Passphrase", "Passphrase again"):
        window.fill(word, "correct horse")
    window.click("OK", "push button")
    wait_for("the reviewer", lambda: window.has("S. Visor") or True)
    time.sleep(4.0)
    window.click("Passphrase of the reviewer's key")
    window.type("correct horse")
    look(window, "7-ready")
    window.keys("Return")
    wait_for("signed", lambda: job_state(history) == "signed")
    time.sleep(1.0)
    look(window, "8-signed")
    window.quit()

    verified = ask(PROGRAMS, history, "verify", "1")
    assert verified["ok"], verified
    for arguments in (["report", "1", "--pdf", "report.pdf"], ["map", "1", "--svg", "map.svg", "--png", "map.png"],
                      ["table", "1", "--csv", "table.csv"]):
        arguments = [os.path.join(folder, word) if "." in word else word for word in arguments]
        for file in ask(PROGRAMS, history, *arguments)["written"]:
            assert os.path.getsize(file) > 500, file


def answer_what_needs_a_word(window, history):
    """One word after the other: each answer leads to the next question that wants one."""
    answered = 0
    window.keys("alt+5", "m")
    while not window.has("Ready to be signed") and answered < 24:
        window.type("seen, accepted")
        window.keys("Return")
        answered += 1
        wait_for(f"answer {answered}", lambda: len([e for e in job(history)["review"] if e.get("check")]) == answered)
        time.sleep(0.5)
    window.find("Ready to be signed")


def job_state(history, number=1):
    return [row["state"] for row in ask(PROGRAMS, history, "list")["jobs"] if row["number"] == number][0]


def next_year(folder):
    """Finds last year's job by typing part of a name, and puts two jobs side by side."""
    history = os.path.join(folder, "demo.sealwalk")
    ask(PROGRAMS, history, "demo", "-o", history)
    window = Window(PROGRAMS, history)
    time.sleep(1.5)
    window.type("coater 2025")
    time.sleep(1.0)
    look(window, "9-found")
    window.keys("ctrl+a", "BackSpace")
    time.sleep(1.0)
    window.keys("Tab", "Tab", "space", "Down", "space")
    window.find("table: Changes")  # two marked jobs open side by side
    time.sleep(4.0)
    look(window, "10-compare")
    compared = ask(PROGRAMS, history, "compare", "118", "164")
    changes = {point["point"]: point["change"] for point in compared["points"]}
    assert changes[17] in ("new", "grown"), changes[17]
    window.quit()


def main():
    folder = scratch()
    history = os.path.join(folder, "data", "sealwalk", "history.sealwalk")
    try:
        with Screen(os.environ.get("SEALWALK_WINDOW_SIZE", "1366x768")):
            technician(history)
            supervisor(history, folder)
            next_year(folder)
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    print("3 passed, 0 failed")


if __name__ == "__main__":
    main()
