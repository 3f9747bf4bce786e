#!/usr/bin/env python3
"""A student's first sheet in the real window on a real display (Xvfb), by mouse and keyboard (xdotool), in a real process; what is
saved is read back by the command line. Needs xvfb and xdotool. Arguments: peelpack, peelpack-app."""

import os
import pathlib
import subprocess
import sys
import tempfile
import time

PEELPACK, APP = sys.argv[1], sys.argv[2]
PASSPHRASE = "four odd words here"  # of the vaults that one_case.sh makes
ROOT = pathlib.Path(__file__).resolve().parents[2]


def listed(env, vault):
    """What the command line lists of a vault."""
    done = subprocess.run([PEELPACK, "sheet", "list", "--vault", str(vault), "--secrets-fd", "0"], env=env,
                          input=PASSPHRASE + "\n", capture_output=True, text=True)
    assert done.returncode == 0, (done.stdout, done.stderr)
    return done.stdout


def xdotool(env, *arguments):
    return subprocess.run(["xdotool", *arguments], env=env, check=True, capture_output=True, text=True).stdout


def display():
    """A display of its own; the process and its name."""
    read, write = os.pipe()
    server = subprocess.Popen(["Xvfb", "-displayfd", str(write), "-screen", "0", "800x900x24"], pass_fds=[write],
                              stderr=subprocess.DEVNULL)
    os.close(write)
    with os.fdopen(read) as answer:
        return server, ":" + answer.readline().strip()


def main():
    folder = pathlib.Path(tempfile.mkdtemp(prefix="peelpack-window-"))
    server, name = display()
    env = {**os.environ, "DISPLAY": name, "QT_QPA_PLATFORM": "xcb", "QT_QUICK_BACKEND": "software", "HOME": str(folder),
           "XDG_DATA_HOME": str(folder / "data"), "XDG_CONFIG_HOME": str(folder / "config"),
           "XDG_STATE_HOME": str(folder / "case/marks"), "XDG_RUNTIME_DIR": str(folder), "LC_ALL": "C.UTF-8"}
    vault = folder / "data/peelpack/journal.peelvault"
    vault.parent.mkdir(parents=True)
    (folder / "Documents").mkdir()
    app = None
    try:
        subprocess.run(["bash", str(ROOT / "platform/one_case.sh"), str(folder / "case"), PEELPACK], check=True,
                       stdout=subprocess.DEVNULL)
        os.rename(folder / "case/student.peelvault", vault)
        before = listed(env, vault).count("cholecystectomy")
        app = subprocess.Popen([APP], env=env, stderr=subprocess.PIPE, text=True)
        window = xdotool(env, "search", "--sync", "--onlyvisible", "--name", "Peelpack").split()[0]
        time.sleep(1.5)

        def click(x, y):
            xdotool(env, "mousemove", "--window", window, str(x), str(y), "click", "1")
            time.sleep(0.4)

        def keys(text):
            xdotool(env, "type", "--window", window, "--delay", "15", text)
            time.sleep(0.4)

        xdotool(env, "windowfocus", window)
        keys(PASSPHRASE)
        xdotool(env, "key", "--window", window, "Return")
        time.sleep(4)
        click(195, 744)  # New case sheet, above the four places
        time.sleep(0.6)
        keys("lap chole")
        xdotool(env, "key", "--window", window, "Return")  # takes the first that fits
        time.sleep(0.6)
        click(195, 812)  # Save for later, the lowest of the two
        time.sleep(1)
        click(45, 28)  # Back
        click(340, 815)  # Me
        click(195, 140)  # Send and take in
        click(195, 745)  # Send to my instructor
        time.sleep(2)
        click(208, 595)  # Save here, in the file dialog
        time.sleep(1)
        parcels = list((folder / "Documents").glob("*.peelparcel"))
        app.terminate()
        warnings = app.communicate(timeout=20)[1]
        assert "qrc:" not in warnings, warnings
        assert len(parcels) == 1 and parcels[0].stat().st_size > 1000, parcels
        after = listed(env, vault)
        assert after.count("cholecystectomy") == before + 1, after
        print("A sheet written in the window is in the journal, and a parcel was saved.")
    finally:
        if app is not None and app.poll() is None:
            app.kill()
        server.terminate()
        server.wait()


main()
