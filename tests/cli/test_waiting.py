"""The notice while a command works: on a terminal only, after a second, gone before the answer."""

from __future__ import annotations

import os
import pty
import select
import subprocess
import sys
import time
from pathlib import Path

from diagnose.cli.progress import WORKING
from tests.support.command_line import environment

ROOT = Path(__file__).parents[2]
CODE = """
import sys, time
from diagnose.cli.printing import answer
from diagnose.cli.progress import working
working.begin(0.05)
time.sleep(float(sys.argv[1]))
answer("the answer")
working.end()
"""


def on_a_terminal(seconds: float) -> str:
    """What a terminal gets to see of a command that takes so long."""
    ours, theirs = pty.openpty()
    with subprocess.Popen(
        [sys.executable, "-c", CODE, str(seconds)], stdout=theirs, stderr=theirs, cwd=ROOT,
        env=environment(),
    ) as process:  # fmt: skip
        os.close(theirs)
        seen, end = b"", time.monotonic() + 60
        while time.monotonic() < end:
            ready, _, _ = select.select([ours], [], [], 0.1)
            if not ready:
                if process.poll() is not None:
                    break
                continue
            try:
                piece = os.read(ours, 4096)
            except OSError:
                break
            if not piece:
                break
            seen += piece
    os.close(ours)
    return seen.decode()


def test_a_long_command_shows_a_notice_and_clears_it() -> None:
    seen = on_a_terminal(1.0)
    before, _, after = seen.partition(WORKING)
    assert before == ""
    assert after == "\r" + " " * len(WORKING) + "\rthe answer\r\n"


def test_a_quick_command_shows_no_notice() -> None:
    assert on_a_terminal(0.0) == "the answer\r\n"


def test_nothing_when_piped() -> None:
    done = subprocess.run(
        [sys.executable, "-c", CODE, "0.3"], capture_output=True, text=True, cwd=ROOT, check=True,
        env=environment(),
    )  # fmt: skip
    assert (done.stdout, done.stderr) == ("the answer\n", "")
