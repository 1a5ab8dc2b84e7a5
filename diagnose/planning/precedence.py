"""The evidence that an opening or a check would destroy, to be looked at before.

Knows the book's precedences; no probabilities.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass

from diagnose.planning.options import Option
from knowledge.access.precedence import BEFORE, FIRST_OF, Before, FirstOf
from knowledge.model import Finding
from knowledge.work import Access, Inspection

_BEFORE: dict[Access, tuple[Before, ...]] = {
    place: tuple(b for b in BEFORE if b.opening is place) for place in Access
}
_SPOILT_BY: dict[Inspection, tuple[Before, ...]] = {
    check: tuple(b for b in BEFORE if b.check is check and b.spoilt)
    for check in {b.check for b in BEFORE}
}
_FIRST_OF: dict[Inspection, tuple[FirstOf, ...]] = {
    later: tuple(f for f in FIRST_OF if later in f.then)
    for later in {i for f in FIRST_OF for i in f.then}
}


def over(made: Collection[Inspection]) -> frozenset[Inspection]:
    """First looks that are past, as a check was made that spoils what they read."""
    return frozenset(line.check for line in FIRST_OF if set(line.then).intersection(made))


@dataclass(frozen=True)
class Precedence:
    """The precedences that apply to an engine with these features."""

    features: frozenset[Finding]

    def before(
        self, option: Option, answered: Collection[Finding] = ()
    ) -> Iterator[tuple[Inspection, str]]:
        """Checks that come before this one with its openings, and why; outermost first."""
        for opening in option.way:
            for line in _BEFORE[opening.access]:
                if self._binds(line) and _is_open(line, answered):
                    yield line.check, line.why
        for first in _FIRST_OF.get(option.inspection, ()):
            if _is_open(first, answered):
                yield first.check, first.why

    def too_late(self, inspection: Inspection, opened: frozenset[Access]) -> bool:
        """Whether something is open that has destroyed what the check reads."""
        lines = _SPOILT_BY.get(inspection, ())
        return any(line.opening in opened and self._binds(line) for line in lines)

    def _binds(self, line: Before) -> bool:
        return not self.features & set(line.not_with)


def _is_open(line: Before | FirstOf, answered: Collection[Finding]) -> bool:
    """Whether what must be known before is not known yet."""
    return not any(f in answered for f in line.only_for)
