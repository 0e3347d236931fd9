# SPDX-License-Identifier: GPL-3.0-or-later
"""The record that stands, by hand in a real window: judge, a permanent repair with a photo and a temporary one with
its owner, the re-test rounds the program opens, the pressure rise that proves them, submission, return with a remark
on a point, correction with its reason, the 24 questions, signature, report and tables; then last year's job beside
this one and laid over it.

Usage: record_story.py FOLDER_OF_PROGRAMS [FOLDER_FOR_PICTURES]
"""
import os
import shutil
import subprocess
import sys
import time

import pyatspi

from screen import Screen, Window, ask, scratch, wait_for

PROGRAMS = sys.argv[1]
PICTURES = sys.argv[2] if len(sys.argv) > 2 else None
THEME = os.environ.get("SEALWALK_WINDOW_THEME", "paper")
DESIGNED = "1366x768"
NUMBER = 164
TESTER, REVIEWER = "Tester A", "Reviewer B"


def look(window, name):
    if PICTURES:
        os.makedirs(PICTURES, exist_ok=True)
        time.sleep(0.5)
        window.picture(os.path.join(PICTURES, "record-" + name + ".png"))


def job(history):
    return ask(PROGRAMS, history, "show", str(NUMBER))["job"]


def state(history):
    return next(row["state"] for row in ask(PROGRAMS, history, "list")["jobs"] if row["number"] == NUMBER)


def stage(window, key):
    window.keys("alt+" + key)
    time.sleep(2.5)


def open_job(window):
    """This year's job is the first of the list."""
    window.keys("Tab", "Tab", "Return")
    wait_for("the job open", lambda: any(f"job {NUMBER}" in (node.name or "") for node in window.everything()))
    time.sleep(2.0)


def name_who_logs(window, name):
    window.keys("ctrl+l")
    window.find("Who is logging", "dialog")
    time.sleep(0.8)
    window.keys("ctrl+a")
    window.type(name)
    window.keys("Return")
    time.sleep(0.3)


def find_in_table(window, words):
    """Filters the findings and goes to the first row left."""
    window.keys("ctrl+f", "ctrl+a")
    window.type(words)
    time.sleep(0.5)
    box = window.find("Findings", "table").queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
    window.click_at(box.x + 70, box.y + 38)


def repair(window, defect, action, material, photo=None, owner=None):
    window.keys("g")
    window.find("What was done")
    time.sleep(0.8)
    window.type(defect)
    window.keys("Tab")
    window.type(action)
    window.keys("Tab")
    window.type(material)
    if owner:
        window.click("temporary", "radio button")
        window.fill("Owner", owner)
    if photo:
        window.click("Add photos …", "push button")
        window.find("Photos", "dialog")
        time.sleep(0.8)
        window.type(photo)
        window.keys("Return")
        wait_for("the photo in the strip", lambda: window.has("photo 1"))
    look(window, "repair-" + ("temporary" if owner else "permanent"))
    window.click("Store and open round", "push button")


def spray_all(window, history, first=None):
    """Answers every call of the round that was opened: the first with a value, the rest with no response."""
    opened = job(history)["rounds"][-1]
    time.sleep(1.0)
    window.keys("b")
    window.type("1.1-9")
    window.keys("Return")

    def open_calls():
        return len([r for r in job(history)["readings"] if r["round"] == opened["id"]])

    calls = len(opened["points"])
    for number in range(calls):
        if number == 0 and first:
            window.keys("space")
            wait_for("the end of the dwell", lambda: window.has("READ"))
            time.sleep(1.0)
            window.type(first)
            window.keys("Return", "i")  # helium lingers: gone on with, and noted
        else:
            window.keys("n")
        wait_for(f"reading {number + 1} of {calls}", lambda: open_calls() == number + 1)
    window.find("DONE")
    return opened


def judge_and_repair(window, history, photo):
    stage(window, "4")
    look(window, "judge")
    find_in_table(window, "17")
    window.keys("space")
    repair(window, "nick", "groove polished along the seal", "FKM cord 5.3 mm", photo=photo)
    first = wait_for("the round of the repair", lambda: len(job(history)["rounds"]) == 2 and job(history))
    done = first["repairs"][0]
    assert (done["defect"], done["action"], done["material"]) == (
        "nick", "groove polished along the seal", "FKM cord 5.3 mm"), done
    assert len(done["pictures"]) == 1, done
    numbers = {p["id"]: p["number"] for p in first["sketch"]["points"]}
    called = [numbers[point] for point in first["rounds"][-1]["points"]]
    assert called[0] == 17 and {16, 18, 29} <= set(called), called  # neighbours, and what only 17 hid
    look(window, "re-test")
    opened = spray_all(window, history, "3.2-9")
    assert opened["repair"] == done["id"], opened

    stage(window, "4")
    find_in_table(window, "Port B")
    window.keys("space", "Down", "space")
    repair(window, "dirt", "vacuum grease, sparingly", "grease", owner="W. Elder")
    wait_for("the second round", lambda: len(job(history)["rounds"]) == 3)
    spray_all(window, history)
    second = job(history)["repairs"][1]
    assert not second["permanent"] and second["owner"] == "W. Elder" and second["due"], second
    look(window, "round-done")
    see_repairs(window, "open: sprayed again, no pressure rise since", "awaits-total")


def see_repairs(window, wanted, name):
    """Both repairs stand like that in the panel."""
    stage(window, "4")
    window.keys("ctrl+f", "ctrl+a", "BackSpace")
    box = window.find("Findings", "table").queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
    window.click_at(box.x + 70, box.y + 38)
    window.keys("r")
    panel = window.find("Repairs", "table")

    def cells():
        return [node.name for node in window.everything()
                if node.getRoleName() == "table cell" and node.parent == panel]

    wait_for(f"two repairs \"{wanted}\"", lambda: cells().count(wanted) == 2)
    look(window, "repairs-" + name)
    window.keys("Escape")


def pressure_rise_after(window, history, file):
    """What the leaks that are left let in, read from a gauge's file; the total is what closes the repairs.

    Short, for it ends now and has to have begun after the last spray."""
    seconds = 10
    time.sleep(seconds + 2.0)
    with open(file, "w", encoding="ascii") as record:
        record.write("time_s,pressure_mbar\n")
        for half in range(0, 2 * seconds + 1):
            record.write(f"{half / 2},{1.4e-6 + 9.0e-8 * half / 120.0:.7e}\n")
    before = len(job(history)["rise_tests"])
    stage(window, "1")
    window.keys("alt+r")
    window.find("Pressure rise", "dialog")
    time.sleep(0.8)
    window.keys("alt+f")
    window.find("A pressure-rise record", "dialog")
    time.sleep(0.8)
    window.type(file)
    window.keys("Return")
    time.sleep(0.8)
    window.fill("pressure before valving off", "1.4e-6 mbar")
    window.fill("gauge", "IG-2")
    look(window, "rise-dialog")
    window.click("Store the record", "push button")
    wait_for("the pressure rise", lambda: len(job(history)["rise_tests"]) == before + 1)
    assert job(history)["rise_tests"][-1]["moment"] == "as left", job(history)["rise_tests"][-1]["moment"]
    time.sleep(2.0)
    look(window, "rise")


def check_afterwards(window, history):
    """The reference leak once more; its old certificate may have run out, so the new one is entered."""
    stage(window, "1")
    window.keys("alt+l")
    window.find("Reference leak", "dialog")
    time.sleep(0.8)
    window.fill("certificate", "RL-11/2")
    window.fill("date of the certificate", time.strftime("%Y-%m-%d"))
    window.fill("due again", f"{int(time.strftime('%Y')) + 1}-{time.strftime('%m')}-28")
    window.fill("shown with the leak shut", "1.1e-9")
    window.fill("shown with the leak open", "3.2e-8")
    look(window, "check-dialog")
    before = len(job(history)["calibrations"])
    window.click("Store the check", "push button")
    wait_for("the check afterwards", lambda: len(job(history)["calibrations"]) == before + 1)


def choose_question(window, words):
    """Steps down the list of questions to the one that begins like that."""
    def chosen():
        return [node.name for node in window.everything() if node.getRoleName() == "list item"
                and node.getState().contains(pyatspi.STATE_SELECTED) and words in node.name]

    window.keys("Home")
    for _ in range(30):
        time.sleep(0.2)
        if chosen():
            return
        window.keys("Down")
    raise AssertionError(f"no question \"{words}\"")


def answer_what_needs_a_word(window, history):
    def answers():
        return len([entry for entry in job(history)["review"] if entry.get("check")])

    window.keys("m")
    for _ in range(24):
        if window.has("Ready to be signed"):
            break
        before = answers()
        window.type("seen, accepted")
        window.keys("Return")
        wait_for("one more answer", lambda: answers() == before + 1)
        time.sleep(0.5)
    window.find("Ready to be signed")


def send_and_return(window, history):
    stage(window, "5")
    look(window, "review")
    window.send_for_review()
    wait_for("submitted", lambda: state(history) == "submitted")

    name_who_logs(window, REVIEWER)
    window.click("Questions before a signature", "list")
    choose_question(window, "a thousand times")
    window.keys("m")
    window.type("Point 60: look at the notes, the exponent seems misread.")
    window.keys("Return")
    remark = wait_for("the remark", lambda: [e for e in job(history)["review"] if e["step"] == "remark"])[0]
    numbers = {p["id"]: p["number"] for p in job(history)["sketch"]["points"]}
    assert (remark["by"], numbers[remark["point"]]) == (REVIEWER, 60), remark
    window.click("Remarks that go with the job", "text")
    window.type("Points 43, 58, 61 and 62 are missing, and the check afterwards.")
    look(window, "remark")
    window.keys("ctrl+b")
    wait_for("returned", lambda: state(history) == "returned")
    assert job(history)["review"][-1]["by"] == REVIEWER


def what_the_remarks_ask(window, history):
    """60 was misread; 43 is void, 58 was never sprayed, 61 and 62 not while flexed; the reference leak once more."""
    name_who_logs(window, TESTER)
    stage(window, "5")
    wait_for("what it was sent back with", lambda: any(
        node.name.startswith(f"Sent back by {REVIEWER}") and "58, 61 and 62" in node.name
        for node in window.everything()))
    choose_question(window, "a thousand times")
    wait_for("the remark on 60", lambda: any(
        node.name.startswith(f"Said by {REVIEWER}") and "misread" in node.name for node in window.everything()))
    look(window, "returned")

    stage(window, "3")
    before = job(history)["readings"]
    window.keys("Escape", "j")
    window.type("60")
    window.keys("Return", "f", "c", "m")
    window.find("Remark", "dialog")
    time.sleep(0.5)
    window.type("the display showed 1.4e-7")
    window.keys("Return")
    time.sleep(0.5)
    window.type("1.4-7")
    look(window, "correction")
    window.keys("Return")
    corrected = wait_for("the correction", lambda: job(history)["readings"][len(before):])[0]
    old = next(r for r in before if r["id"] == corrected["corrects"])
    assert corrected["reason"].startswith("the display showed 1.4e-7 ("), corrected
    assert (old["point"], old["condition"]) == (corrected["point"], "flexed"), old
    assert old in job(history)["readings"], "the old entry stays in the record"
    for point, condition in ((43, None), (58, None), (61, "f"), (62, "f")):
        count = len(job(history)["readings"])
        window.keys("Escape", "j")
        window.type(str(point))
        window.keys("Return")
        if condition:
            window.keys(condition)
        window.keys("n")
        wait_for(f"a reading at {point}", lambda: len(job(history)["readings"]) == count + 1)
    look(window, "missing-points")
    check_afterwards(window, history)


def sign(window, history):
    stage(window, "5")
    window.click("Remarks that go with the job", "text")
    window.type("60 corrected, the missing points sprayed, checked afterwards.")
    window.send_for_review()
    wait_for("submitted again", lambda: state(history) == "submitted")
    name_who_logs(window, REVIEWER)
    stopping = [node.name for node in window.everything() if node.name.startswith("Stops a sign-off:")]
    assert not stopping, stopping
    window.click("Questions before a signature", "list")
    choose_question(window, "Needs a word:")
    look(window, "submitted-again")
    answer_what_needs_a_word(window, history)
    window.click("Passphrase of the reviewer's key")
    window.type("wrong passphrase")
    window.keys("Return")
    time.sleep(4.0)
    assert state(history) == "submitted"
    look(window, "wrong-passphrase")
    window.type("demo passphrase")
    look(window, "ready")
    window.keys("Return")
    wait_for("signed", lambda: state(history) == "signed")
    time.sleep(1.0)
    look(window, "signed")
    steps = [entry["step"] for entry in job(history)["review"] if not entry.get("check")]
    assert steps == ["submitted", "returned", "submitted", "approved"], steps


def write_documents(window, folder):
    """From the window: the report, the table in both forms, the map."""
    for key, name, caption in (("ctrl+p", "window.pdf", "Report as PDF"),
                               ("ctrl+e", "window.csv", "Export a table or a map"),
                               ("ctrl+e", "window.xlsx", "Export a table or a map"),
                               ("ctrl+e", "window.svg", "Export a table or a map")):
        file = os.path.join(folder, name)
        window.keys(key)
        window.find(caption, "dialog")
        time.sleep(1.0)
        window.keys("ctrl+a")
        window.type(file)
        if name == "window.pdf":
            look(window, "report-dialog")
        window.keys("Return")
        wait_for(name, lambda: os.path.exists(file) and os.path.getsize(file) > 500)
        time.sleep(1.5)
    look(window, "written")


def amend(window, history):
    window.keys("alt+j")
    time.sleep(0.5)
    window.keys("a")
    window.find(f"Amendment to job {NUMBER}", "dialog")
    time.sleep(0.8)
    window.type("The seal was changed again in the week after.")
    window.fill("Passphrase", "demo passphrase")
    look(window, "amendment")
    window.click("Sign and add", "push button")
    wait_for("the amendment", lambda: job(history)["review"][-1]["step"] == "amendment")
    time.sleep(2.0)
    look(window, "amended")


def words_of(pdf):
    """All of it in one line: cells of a table are broken as they fit."""
    said = subprocess.run(["pdftotext", pdf, "-"], capture_output=True, text=True, check=True).stdout
    return " ".join(said.split())


def report(history, folder):
    """Verified, and the command line writes what the window wrote."""
    verified = ask(PROGRAMS, history, "verify", str(NUMBER))
    assert verified["ok"], verified
    checked = ask(PROGRAMS, history, "check")
    assert checked["ok"], checked
    file = os.path.join(folder, "cli.pdf")
    ask(PROGRAMS, history, "report", str(NUMBER), "--pdf", file)
    ask(PROGRAMS, history, "table", str(NUMBER), "--csv", os.path.join(folder, "cli.csv"),
        "--xlsx", os.path.join(folder, "cli.xlsx"))
    for pdf in (file, os.path.join(folder, "window.pdf")):
        if PICTURES:
            shutil.copy(pdf, PICTURES)
        words = words_of(pdf)
        for said in ("nick", "FKM cord 5.3 mm", "W. Elder", "returned", "Points 43, 58, 61", "misread",
                     "the display showed 1.4e-7", "signed"):
            assert said in words, (pdf, said)
        pictures = subprocess.run(["pdfimages", "-list", pdf], capture_output=True, text=True, check=True).stdout
        assert len(pictures.splitlines()) > 2, "the photo is in the report"
    with open(os.path.join(folder, "cli.csv"), "rb") as one, open(os.path.join(folder, "window.csv"), "rb") as other:
        assert one.read() == other.read(), "the same table from the window and from the command line"
    assert os.path.getsize(os.path.join(folder, "cli.xlsx")) > 2000


def compare_with_last_year(window):
    stage(window, "6")
    window.keys("ctrl+f", "ctrl+a", "BackSpace", "Tab", "Tab", "space", "Down", "space")
    window.find("table: Changes")
    time.sleep(4.0)
    look(window, "side-by-side")
    window.keys("o")
    window.find("Jobs 164 and 118, as found")
    look(window, "laid-over")
    window.keys("f")
    window.find("Jobs 164 and 118, as left")
    window.keys("o")
    window.find("Job 164, as left")
    subprocess.run(["xdotool", "keydown", "b"], check=True)
    wait_for("both maps of last year", lambda: not window.has("Job 164, as left"))
    look(window, "blink")
    subprocess.run(["xdotool", "keyup", "b"], check=True)
    window.find("Job 164, as left")
    window.keys("Escape")


def main():
    folder = scratch()
    history = os.path.join(folder, "demo.sealwalk")
    photo = os.path.join(folder, "photo.png")
    subprocess.run(["convert", "-size", "1200x900", "gradient:#8a8a86-#3c4246", "-stroke", "#1a1a1a",
                    "-strokewidth", "9", "-draw", "line 560,470 660,560", photo], check=True)
    try:
        ask(PROGRAMS, history, "demo", "-o", history)
        with Screen(os.environ.get("SEALWALK_WINDOW_SIZE", DESIGNED)) as screen:
            window = Window(PROGRAMS, history, "--theme", THEME)
            time.sleep(1.5)
            if screen.size != DESIGNED:
                window.keys("F11")  # all of the larger screen
                time.sleep(1.0)
            open_job(window)
            name_who_logs(window, TESTER)
            judge_and_repair(window, history, photo)
            pressure_rise_after(window, history, os.path.join(folder, "rise.csv"))
            see_repairs(window, "proven: sprayed again, total measured", "proven")
            send_and_return(window, history)
            what_the_remarks_ask(window, history)
            sign(window, history)
            write_documents(window, folder)
            amend(window, history)
            compare_with_last_year(window)
            window.quit()
            report(history, folder)
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main()
