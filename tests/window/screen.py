# SPDX-License-Identifier: GPL-3.0-or-later
"""A real window on a screen of its own: started, driven by keys and mouse, looked at through the accessibility tree.

Everything a test needs of the outside is here; the stories read like a technician's notes.
"""
import json
import os
import signal
import subprocess
import tempfile
import time

import pyatspi

PATIENCE = float(os.environ.get("SEALWALK_WINDOW_PATIENCE", "40"))  # seconds; a loaded machine is slow


class Screen:
    """Xvfb with a window manager; gone with the `with` block."""

    def __init__(self, size="1366x768"):
        self.size = size
        self.processes = []

    def __enter__(self):
        reader, writer = os.pipe()
        self.processes.append(
            subprocess.Popen(
                ["Xvfb", "-displayfd", str(writer), "-screen", "0", self.size + "x24", "-nolisten", "tcp"],
                pass_fds=[writer], stderr=subprocess.DEVNULL))
        os.close(writer)
        with os.fdopen(reader) as number:  # read to its end: the server writes digits and line feed apart
            self.display = ":" + number.readline().strip()
        os.environ["DISPLAY"] = self.display
        self.processes.append(subprocess.Popen(["openbox", "--sm-disable"], stderr=subprocess.DEVNULL))
        return self

    def __exit__(self, kind, *_):
        if kind is not None:  # what stood there when it went wrong
            subprocess.run(["import", "-window", "root", "/tmp/sealwalk-window-failed.png"], check=False)
        for process in reversed(self.processes):
            process.terminate()
            process.wait()


def wait_for(what, condition, patience=PATIENCE):
    """The first true answer of `condition`; AssertionError naming `what` when there is none in time."""
    end = time.monotonic() + patience
    while time.monotonic() < end:
        try:
            answer = condition()
        except Exception:  # the tree changes under our hands while pages are built
            answer = None
        if answer:
            return answer
        time.sleep(0.1)
    raise AssertionError(f"waited {patience:.0f} s in vain for {what}")


class Window:
    """The program under test."""

    def __init__(self, binaries, *arguments, environment=None):
        self.cli = os.path.join(binaries, "sealwalk-cli")
        self.process = subprocess.Popen(
            [os.path.join(binaries, "sealwalk"), *arguments],
            env={**os.environ, "QT_QPA_PLATFORM": "xcb", "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1",
                 **(environment or {})})
        self.window = wait_for("the window", self._visible)
        wait_for("the accessibility tree", self.application)
        subprocess.run(["xdotool", "windowactivate", "--sync", self.window], check=False)

    def _visible(self):
        found = subprocess.run(["xdotool", "search", "--onlyvisible", "--pid", str(self.process.pid), "--name", "."],
                               capture_output=True, text=True).stdout.split()
        return found[-1] if found else None

    def application(self):
        for application in pyatspi.Registry.getDesktop(0):
            if application is not None and application.get_process_id() == self.process.pid:
                return application
        return None

    # What is on it

    def everything(self):
        """Every showing accessible object, parents first."""
        waiting = [self.application()]
        while waiting:
            node = waiting.pop(0)
            if node is None:
                continue
            yield node
            try:
                waiting.extend(node.getChildAtIndex(i) for i in range(node.childCount))
            except Exception:
                continue

    def find(self, name, role=None):
        """The showing object of that name; a label only when nothing else bears it."""
        def look():
            label = None
            for node in self.everything():
                if node.name != name or not node.getState().contains(pyatspi.STATE_SHOWING):
                    continue
                if role is None and node.getRoleName() == "label":
                    label = label or node
                elif role is None or node.getRoleName() == role:
                    return node
            return label
        return wait_for(f"\"{name}\"", look)

    def has(self, name):
        return any(node.name == name and node.getState().contains(pyatspi.STATE_SHOWING) for node in self.everything())

    # Hands

    def keys(self, *names):
        for name in names:
            subprocess.run(["xdotool", "key", "--delay", "30", name], check=True)
            time.sleep(0.08)

    def type(self, text):
        subprocess.run(["xdotool", "type", "--delay", "35", text], check=True)
        time.sleep(0.1)

    def move(self, x, y):
        subprocess.run(["xdotool", "mousemove", str(int(x)), str(int(y))], check=True)
        time.sleep(0.05)

    def click(self, name, role=None):
        box = self.find(name, role).queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
        self.move(box.x + box.width / 2, box.y + box.height / 2)
        subprocess.run(["xdotool", "click", "1"], check=True)
        time.sleep(0.3)

    def send_for_review(self, why="the rest is to be looked at"):
        """Sends the job, and says why when something stops a sign-off."""
        self.click("Send for review", "push button")
        time.sleep(0.8)
        if self.has("Send all the same"):
            self.type(why)
            self.keys("Return")

    def fill(self, name, text):
        """Replaces what stands in a field, and leaves it."""
        self.click(name)
        self.keys("ctrl+a")
        self.type(text)
        self.keys("Tab")

    def click_at(self, x, y):
        self.move(x, y)
        subprocess.run(["xdotool", "click", "1"], check=True)
        time.sleep(0.2)

    def drag(self, start, end):
        self.move(*start)
        subprocess.run(["xdotool", "mousedown", "1"], check=True)
        for part in (0.3, 0.6, 1.0):
            self.move(start[0] + part * (end[0] - start[0]), start[1] + part * (end[1] - start[1]))
        subprocess.run(["xdotool", "mouseup", "1"], check=True)
        time.sleep(0.3)

    def picture(self, file):
        subprocess.run(["import", "-window", "root", file], check=True)

    # Its end

    def quit(self):
        self.keys("ctrl+q")
        status = self.process.wait(timeout=PATIENCE)
        assert status == 0, f"the window ended with {status}"

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()


def ask(binaries, history, *arguments):
    """What the command line says of the history, as JSON; not for answers of "no"."""
    result = subprocess.run([os.path.join(binaries, "sealwalk-cli"), *arguments, "--history", history, "--json"],
                            capture_output=True, text=True)
    assert result.returncode in (0, 1), result.stderr
    return json.loads(result.stdout)


def first_job(binaries, history, name, volume, limit, tag=""):
    """The program on an empty history, with an object of that volume and limit and its first job, by keys."""
    window = Window(binaries)
    time.sleep(1.0)
    window.keys("n")
    window.find("New test object", "dialog")
    time.sleep(1.0)
    window.type(name)
    window.keys("Tab")
    if tag:
        window.type(tag)
    window.keys("Tab", "Tab")
    window.type(volume)
    window.keys("Tab")
    window.type(limit)
    window.keys("Tab", "Return")
    window.find("New job", "dialog")
    time.sleep(1.0)
    window.keys("Tab")
    window.type("T. Tester")
    window.keys("Return")
    wait_for("the job on disk", lambda: ask(binaries, history, "list")["jobs"])
    return window


def scratch():
    """A folder with a home, a data folder and a runtime folder of its own."""
    folder = tempfile.mkdtemp(prefix="sealwalk-window-")
    for name in ("home", "data", "run"):
        os.mkdir(os.path.join(folder, name))
    os.chmod(os.path.join(folder, "run"), 0o700)
    os.environ.update(HOME=os.path.join(folder, "home"), XDG_DATA_HOME=os.path.join(folder, "data"),
                      XDG_CONFIG_HOME=os.path.join(folder, "home"))
    return folder
