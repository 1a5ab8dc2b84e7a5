"""Remarks on a terminal while a command works: that it does, or how many cases are done."""

from __future__ import annotations

import contextlib
import sys
import threading
import time
from collections.abc import Callable, Iterator

WORKING_AFTER = 1.0  #: s without output before the remark is shown
WORKING = "working it out ..."
COUNT_AFTER, COUNT_EVERY = 1.0, 0.5  #: s before the count is shown, and between two counts


class WorkingRemark:
    """At most one remark on standard error, if that is a terminal; gone before any output."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._timer: threading.Timer | None = None
        self._shown = False

    def begin(self, after: float = WORKING_AFTER) -> None:
        """Show the remark in so many seconds [s], unless ``end`` is called before."""
        with contextlib.suppress(OSError, ValueError, AttributeError):
            if sys.stderr.isatty():
                self._timer = threading.Timer(after, self._show)
                self._timer.daemon = True
                self._timer.start()

    def end(self) -> None:
        """Take the remark away: something is to be printed, or the command ends."""
        with self._lock:
            timer, self._timer = self._timer, None
            if timer is not None:
                timer.cancel()
            if self._shown:
                self._shown = False
                _write("\r" + " " * len(WORKING) + "\r")

    def _show(self) -> None:
        with self._lock:
            if self._timer is not None:
                self._shown = True
                _write(WORKING)


working = WorkingRemark()


@contextlib.contextmanager
def counting(many: int) -> Iterator[Callable[[], None]]:
    """Give a function to call for each case done; it shows how many of ``many`` are.

    Only on a terminal that does not show the answer itself.
    """
    width = done = 0
    shown_at = time.monotonic() + COUNT_AFTER - COUNT_EVERY
    wanted = sys.stderr.isatty() and not sys.stdout.isatty()

    def one_more() -> None:
        nonlocal width, done, shown_at
        done += 1
        if wanted and time.monotonic() - shown_at >= COUNT_EVERY:
            shown_at = time.monotonic()
            text = f"{done:,} of {many:,} cases"
            working.end()
            _write("\r" + text.ljust(width))
            width = len(text)

    try:
        yield one_more
    finally:
        if width:
            working.end()
            _write("\r" + " " * width + "\r")


def _write(text: str) -> None:
    with contextlib.suppress(OSError, ValueError):
        sys.stderr.write(text)
        sys.stderr.flush()
