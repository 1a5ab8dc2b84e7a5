"""A task of the sign-off for tests that need any of a phase."""

from __future__ import annotations

from knowledge.book import the_book
from knowledge.reassembly.by_lamp import OF_A_LAMP, OF_ITS_CAUSE
from knowledge.work import Phase, Task


def of_phase(phase: Phase) -> Task:
    """A task of a phase that applies to every engine and every repair."""
    tasks = [t for t in the_book().tasks.values() if t not in OF_ITS_CAUSE | OF_A_LAMP]
    return next(t for t in tasks if t.phase is phase and not (t.only_with or t.not_with))
