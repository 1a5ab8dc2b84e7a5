"""One line at a time from the person; imported by the interview."""

from __future__ import annotations

import sys

from diagnose.case.schema import LONGEST
from diagnose.cli.printing import say, tell

HELP = "y yes, n no, d don't know, why, back, stop here"
STOP = ("stop", "stop here", "quit", "exit")
BACK = ("back", "b")
WHY = ("why", "why do you ask", "w")
DONT_KNOW = ("", "d", "?", "dont know", "don't know", "don’t know", "unknown", "u")
PATIENCE = 20  #: answers in a row that lead nowhere, before a pipe is taken to be none


class StopHereError(Exception):
    """The person wants to stop; everything is saved."""


class GoBackError(Exception):
    """The person wants the question before this one again."""


class Prompter:
    """Listens; notices when nobody sensible is at the other end of a pipe."""

    def __init__(self) -> None:
        self._missed = 0

    def hear(self, prompt: str) -> str:
        """One line from the person. Raises EOFError, StopHereError."""
        while True:
            say(prompt, end="")
            line = _line()
            if line is None or not sys.stdin.isatty():
                say("")
            if line is None:
                raise EOFError
            if line.lower() in STOP:
                raise StopHereError
            if len(line) <= LONGEST:
                return line
            self.missed(f"That is too long: at most {LONGEST:,} characters.")

    def words(self, prompt: str, why: str) -> str:
        """A free text, empty where the person has none. Raises GoBackError besides."""
        while True:
            line = self.hear(prompt)
            if line.lower() == WHY[0]:
                self.missed(why)
            elif line.lower() == BACK[0]:
                raise GoBackError
            else:
                self.got()
                return "" if line.lower() in DONT_KNOW else line

    def got(self) -> None:
        """An answer was understood."""
        self._missed = 0

    def missed(self, *remarks: str) -> None:
        """Say why the question comes again. Raises StopHereError when it has too often."""
        for remark in remarks:
            tell(remark, 2)
        self._missed += 1
        if self._missed >= PATIENCE and not sys.stdin.isatty():
            tell(f"{PATIENCE} lines in a row answered no question.")
            raise StopHereError


def _line() -> str | None:
    """The next line, however long, without keeping more of it than is needed; None at the end."""
    kept = ""
    while True:
        try:
            part = sys.stdin.readline(LONGEST)
        except OSError:
            part = ""
        if not part and not kept:
            return None
        if len(kept) <= 2 * LONGEST:
            kept += part
        if not part or part.endswith("\n"):
            return kept.strip()
