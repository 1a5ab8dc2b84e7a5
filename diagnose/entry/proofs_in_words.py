"""What words say of the repaired engine where they name no pressure: tasks of its sign-off."""

from __future__ import annotations

import re

from diagnose.case.case import Case
from diagnose.entry.after_repair import is_of_the_repaired
from diagnose.entry.repair_work import as_done, tasks_on_sheet
from diagnose.understanding.words.facts import Fact, Understanding
from knowledge.book import Book
from knowledge.reassembly.proof_words import PROOFS, UNPROVED


def proofs_in_words(understanding: Understanding, case: Case, book: Book) -> tuple[Fact, ...]:
    """The tasks of the sign-off that words prove done; none where they give a pressure or a doubt.

    >>> from diagnose.entry.proofs_in_words import said
    >>> said("light went out straight away, no leaks"), said("it still leaks")
    (('lamp_out_timed', 'no_leak_running'), ())
    """
    if any(is_of_the_repaired(f) for f in understanding.facts):
        return ()
    ids = said(understanding.text)
    sheet = tasks_on_sheet(case, book) if ids else frozenset()
    return tuple(
        as_done(task, understanding.text) for task in map(book.tasks.get, ids) if task in sheet
    )


def said(text: str) -> tuple[str, ...]:
    """The ids of the tasks that a text says are done and right."""
    lower = text.lower().replace("\u2019", "'")
    if re.search(UNPROVED, lower):
        return ()
    return tuple(task.id for task, patterns in PROOFS if all(re.search(p, lower) for p in patterns))
