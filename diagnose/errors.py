"""What can go wrong for the person, with the exit code it ends in; imported by every room."""

from __future__ import annotations

from collections.abc import Iterable


class UserError(Exception):
    """One clear line a person can act on; ``code`` is the command's exit code."""

    code = 70


class UsageError(UserError):
    """The command's words are off."""

    code = 2


class BadCaseError(UserError):
    """The case file cannot be read as a case; holds every error found, one a line."""

    code = 65

    def __init__(self, where: str, faults: Iterable[str]) -> None:
        self.faults = tuple(faults)
        super().__init__("\n".join(f"{where}: {f}" for f in self.faults))


class NoCaseError(UserError):
    """There is no such case."""

    code = 66


class CannotWriteError(UserError):
    """The case could not be saved; what was saved before still stands."""

    code = 73
