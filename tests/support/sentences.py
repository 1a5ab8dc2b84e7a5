"""The lists of typed and of dangerous sentences, and how a reader does on them."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cache
from pathlib import Path
from typing import Any

from diagnose.case.pressures import pressure_of
from tests.support.agreement import LEAST_ROUNDING, Outcome, outcome
from tests.support.readers import Reader
from tests.support.stated_facts import (
    Fact,
    Kind,
    Seen,
    follow,
    from_states,
    in_tables,
)

DATA = Path(__file__).parents[1] / "data"
ANY = "any"
#: what a table of ``never`` names, and the kind of fact it forbids
_FORBIDS = {
    "shows": Kind.BEHAVIOUR,
    "pressure": Kind.READING,
    "reading": Kind.READING,
    "trial": Kind.TRIAL,
    "earlier": Kind.EARLIER,
    "measured": Kind.MEASURED,
}
_MARKS = re.compile(r"[.,;:!?()–—]+(?=\s|$)|(?<=\s)[(–—-]+(?=\s|\w)")


def without_marks(text: str) -> str:
    """The text in small letters and without punctuation, as typed on a phone.

    >>> without_marks("Old V8: 5.5 psi at hot idle, 60 cold. New sender?")
    'old v8 5.5 psi at hot idle 60 cold new sender'
    """
    return " ".join(_MARKS.sub(" ", text.lower()).split())


@dataclass(frozen=True)
class Sentence:
    """A text, the facts it states, and what may be read besides."""

    text: str
    states: tuple[Fact, ...]
    may: frozenset[str] = frozenset()
    kept_back: bool = False

    @property
    def unmarked(self) -> Sentence:
        """The same without punctuation."""
        return replace(self, text=without_marks(self.text))

    def read_by(self, reader: Reader) -> Outcome:
        """Compare what a reader makes of the text with what it states."""
        return outcome(in_tables(reader(self.text)), self.states, self.may)


@dataclass(frozen=True)
class Dangerous:
    """A text, what must never be read in it, and what must be read all the same."""

    text: str
    never: tuple[Mapping[str, Any], ...]
    must: tuple[Fact, ...] = ()

    def misread_by(self, reader: Reader) -> list[str]:
        """What a reader makes of the text that it must not."""
        read = in_tables(reader(self.text))
        follows = follow(read)
        return [str(table) for table in self.never if _stands(table, read, follows)]

    def missed_by(self, reader: Reader) -> list[Fact]:
        """What a reader must find in the text and does not."""
        return outcome(in_tables(reader(self.text)), self.must).missed


@cache
def typed() -> tuple[Sentence, ...]:
    """The list of typed sentences."""
    return _sentences("typed_sentences.toml")


@cache
def by_station() -> tuple[Sentence, ...]:
    """The list of sentences for each station; the second half is kept back."""
    return _sentences("station_sentences.toml")


@cache
def reports() -> tuple[Sentence, ...]:
    """The list of short reports; every third is kept back."""
    return _sentences("report_texts.toml")


@cache
def owner_stories() -> tuple[Sentence, ...]:
    """The stories of owners in every ``story_texts_*.toml``; all are kept back."""
    files = sorted(DATA.glob("story_texts_*.toml"))
    return tuple(sentence for file in files for sentence in _sentences(file.name))


def _sentences(name: str) -> tuple[Sentence, ...]:
    return tuple(
        Sentence(
            each["text"],
            tuple(from_states(each["states"])),
            frozenset(each.get("may", ())),
            each.get("kept_back", False),
        )
        for each in _list(name)
    )


@cache
def dangerous() -> tuple[Dangerous, ...]:
    """The list of dangerous sentences."""
    return tuple(
        Dangerous(each["text"], tuple(each["never"]), tuple(from_states(each.get("must", ()))))
        for each in _list("dangerous_sentences.toml")
    )


def _list(name: str) -> Iterator[dict[str, Any]]:
    yield from tomllib.loads((DATA / name).read_text("utf-8"))["sentence"]


def _stands(table: Mapping[str, Any], read: list[Fact], follows: frozenset[Seen]) -> bool:
    """Whether what a table forbids was read, or follows from what was read."""
    key, about = next(iter(table.items()))
    if key in ("present", "absent"):
        return Seen(about, key) in follows
    these = [f for f in read if f.kind is _FORBIDS[key]]
    if about == ANY:
        return bool(these)
    if key == "pressure":
        wanted = pressure_of(about).value
        return any(abs(pressure_of(f.about).value - wanted) < LEAST_ROUNDING for f in these)
    return any(f.about == about for f in these)
