"""The diagnosis of each case as it is on disk; made once for each state of its file."""

from __future__ import annotations

import hashlib
import threading
from collections import OrderedDict
from collections.abc import Hashable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from diagnose.case.case import Case
from diagnose.case.loading import from_text, read_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

MOST_KEPT = 8  #: cases whose diagnosis is kept


@dataclass(frozen=True, slots=True)
class Version:
    """The state of a case file that a form was made from."""

    last: int  #: number of the last entry
    digest: str

    def __str__(self) -> str:
        return f"{self.last}-{self.digest}"

    @classmethod
    def parse(cls, text: str) -> Version:
        """The version a form carries; of nothing at all where it is none.

        >>> Version.parse("3-ab12"), Version.parse("wrong").last
        (Version(last=3, digest='ab12'), 0)
        """
        last, _, digest = text.partition("-")
        return cls(int(last) if last.isdecimal() and len(last) < 8 else 0, digest[:64])


@dataclass(frozen=True)
class Known:
    """A case with its diagnosis; ``made`` keeps documents that were built from it."""

    path: Path
    case: Case
    answer: Diagnosis
    version: Version
    lock: threading.RLock
    card: tuple[int, int]  #: the state of the engine's card it was read with
    made: dict[Hashable, Any] = field(default_factory=dict)


class Diagnoses:
    """Diagnoses of the cases in use; one thread at a time works on each."""

    def __init__(self) -> None:
        """Keep nothing yet."""
        self._kept: OrderedDict[Path, Known] = OrderedDict()
        self._lock = threading.Lock()

    @contextmanager
    def of(self, path: Path) -> Iterator[Known]:
        """The case as it is on disk now. Raises NoCaseError, BadCaseError, OutOfScopeError."""
        known = self._known(path)
        with known.lock:
            yield known

    def _known(self, path: Path) -> Known:
        text = read_text(path)
        digest = hashlib.sha256(text.encode()).hexdigest()[:16]
        with self._lock:
            known = self._kept.get(path)
            if known and known.version.digest == digest and known.card == _card_state(known.case):
                self._kept.move_to_end(path)
                return known
        case = from_text(text, path, the_book())
        version = Version(case.last_number, digest)
        answer, lock = Diagnosis(the_book(), case), threading.RLock()
        known = Known(path, case, answer, version, lock, _card_state(case))
        with self._lock:
            self._kept[path] = known
            self._kept.move_to_end(path)
            while len(self._kept) > MOST_KEPT:
                self._kept.popitem(last=False)
        return known


def _card_state(case: Case) -> tuple[int, int]:
    """When the card a case names was changed, and its size; nothing where it names none."""
    path = case.card.path if case.card else None
    if path is None:
        return 0, 0
    try:
        state = path.stat()
    except OSError:
        return -1, -1
    return state.st_mtime_ns, state.st_size
