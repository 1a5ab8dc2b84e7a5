"""A remark on the terminal while nothing has been printed for a second, gone with the first line."""

from __future__ import annotations

import contextlib
import sys
import threading

AFTER = 1.0  #: s
REMARK = "working it out ..."


class Waiting:
    """At most one remark, never where standard error is no terminal."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._timer: threading.Timer | None = None
        self._shown = False

    def begin(self, after: float = AFTER) -> None:
        """Count from here."""
        with contextlib.suppress(OSError, ValueError, AttributeError):
            if sys.stderr.isatty():
                self._timer = threading.Timer(after, self._show)
                self._timer.daemon = True
                self._timer.start()

    def over(self) -> None:
        """Something is to be printed, or the command ends: take the remark away."""
        with self._lock:
            timer, self._timer = self._timer, None
            if timer is not None:
                timer.cancel()
            if self._shown:
                self._shown = False
                self._write("\r" + " " * len(REMARK) + "\r")

    def _show(self) -> None:
        with self._lock:
            if self._timer is not None:
                self._shown = True
                self._write(REMARK)

    @staticmethod
    def _write(text: str) -> None:
        with contextlib.suppress(OSError, ValueError):
            sys.stderr.write(text)
            sys.stderr.flush()


waiting = Waiting()
