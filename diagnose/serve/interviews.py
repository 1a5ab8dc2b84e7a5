"""Interviews under way, one for each case file; after a restart one goes on from its file."""

from __future__ import annotations

import hashlib
import threading
from collections import OrderedDict
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from diagnose.entry.interview import Interview
from diagnose.entry.questions import (
    CheckQuestion,
    ChoiceQuestion,
    EngineQuestion,
    NumbersQuestion,
    Question,
    TriedQuestion,
    uncounted,
)
from knowledge.book import the_book

MOST_KEPT = 12


class Interviews:
    """Every interview that was begun in this run, as far as they are kept."""

    def __init__(self) -> None:
        """Keep nothing yet."""
        self._kept: OrderedDict[Path, tuple[Interview, threading.RLock]] = OrderedDict()
        self._lock = threading.Lock()

    @contextmanager
    def of(self, path: Path) -> Iterator[Interview]:
        """The interview over a case file, for one thread at a time.

        Raises CannotWriteError, NoCaseError, BadCaseError.
        """
        with self._lock:
            kept = self._kept.get(path)
            if kept is None:
                kept = Interview.begin(path, the_book()), threading.RLock()
                self._kept[path] = kept
            self._kept.move_to_end(path)
            while len(self._kept) > MOST_KEPT:
                self._kept.popitem(last=False)
        interview, lock = kept
        with lock:
            yield interview

    def forget(self, path: Path) -> None:
        """Begin again with what is on disk when it is asked for next."""
        with self._lock:
            self._kept.pop(path, None)


def key_of(question: Question) -> str:
    """What tells a question from every other, the same in every run."""
    plain = uncounted(question)
    choices: tuple[str, ...] = ()
    match plain:
        case ChoiceQuestion() | EngineQuestion() | TriedQuestion() | CheckQuestion():
            choices = plain.says
        case NumbersQuestion():
            choices = tuple(slot.id for slot in plain.slots)
    text = "\n".join((type(plain).__name__, plain.asks, *choices))
    return hashlib.sha256(text.encode()).hexdigest()[:16]
