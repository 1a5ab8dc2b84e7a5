"""The development cases as texts: the complaint and the notes of what was known from outside."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from itertools import count
from pathlib import Path
from typing import Any

from diagnose.case.loading import from_tables
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from tests.confirmed.scoring import (
    FIRST,
    FURTHER,
    LATER,
    Score,
    case_files,
    gold,
    kept_aside,
    score_of,
)
from tests.support.agreement import Outcome, outcome
from tests.support.readers import Reader
from tests.support.stated_facts import Fact, Kind, Tables, in_tables

DATA = Path(__file__).parents[1] / "data"
KNOWN = "told"
OUTSIDE = "outside"
_TABLES = ("finding", "behaviour", "reading", "baseline", "trial", "earlier")


@dataclass(frozen=True)
class CaseText:
    """What was said of a job in words, and the same as the entries of its file."""

    name: str
    engine: str  #: the title: what engine it is
    text: str
    facts: tuple[Fact, ...]
    further: bool
    doubtful: bool
    may: frozenset[str] = frozenset()  #: said in the words too, or a fair reading of them
    unsaid: frozenset[str] = frozenset()  #: facts of the file that the words do not say
    to_rank: str = ""  #: the text without checks that state the cause; empty where it is the same

    @property
    def kept_aside(self) -> bool:
        """Whether it is of the half that nothing is developed on."""
        return self.further and kept_aside(self.name)

    def read_by(self, reader: Reader) -> Outcome:
        """Compare what a reader makes of the text with the entries of the file, features apart."""
        read = [f for f in in_tables(reader(self.text)) if f.kind is not Kind.FEATURE]
        return outcome(read, self.facts)

    def judged_by(self, reader: Reader) -> Outcome:
        """The same, with what the words themselves state, as a person judged it."""
        read = [f for f in in_tables(reader(self.text)) if f.kind is not Kind.FEATURE]
        return outcome(read, [f for f in self.facts if str(f) not in self.unsaid], self.may)

    def ranked_by(self, reader: Reader) -> Score:
        """Where the confirmed cause stands when nothing but the text is known, title first.

        Checks that state the cause count as findings inside, as in ``scoring``: left out.
        """
        text = self.to_rank or self.text
        case = from_tables(as_case(reader(f"{self.engine}. {text}")), None, the_book())
        return score_of(self.name, Diagnosis(the_book(), case))


def as_case(tables: Tables) -> dict[str, Any]:
    """A case file's tables with a head, and a number for each entry that has none.

    >>> as_case({"trial": [{"what": "new_pump", "result": "cured"}]})["trial"][0]["no"]
    1
    """
    engine = {"layout": "unknown", "aircraft": False, **tables.get("engine", {})}
    case: dict[str, Any] = {"schema": 1, "job": {"title": "text"}, "engine": engine}
    case |= {"oil": tables["oil"]} if "oil" in tables else {}
    numbers = count(1)
    for name in _TABLES:
        if rows := tables.get(name):
            case[name] = [{**row, "no": next(numbers)} for row in rows]
    return case


@cache
def case_texts(checks: bool) -> tuple[CaseText, ...]:
    """Every development case; ``checks``: with what was looked at from outside."""
    learned = (KNOWN, OUTSIDE) if checks else (KNOWN,)
    return tuple(
        _case_text(path, learned, folder == FURTHER)
        for folder in (FIRST, FURTHER)
        for path in case_files(folder)
    )


@cache
def stories() -> tuple[CaseText, ...]:
    """What the owners of the later cases typed, before the cause was known; no facts beside it."""
    return tuple(_story(path) for path in case_files(LATER))


def _story(path: Path) -> CaseText:
    job = tomllib.loads(path.read_text("utf-8"))["job"]
    return CaseText(path.stem, job["title"], job["complaint"], (), True, False)


def _case_text(path: Path, learned: tuple[str, ...], further: bool) -> CaseText:
    tables = tomllib.loads(path.read_text("utf-8"))
    chosen = _entries(tables, learned)
    facts = [f for f in in_tables(chosen) if f.kind is not Kind.FEATURE]
    label = gold()[path.stem]
    gives_away = OUTSIDE in learned and label.get("checks_state_the_cause")
    return CaseText(
        path.stem,
        tables["job"].get("title", ""),
        _text(tables, chosen),
        tuple(facts),
        further,
        bool(label.get("doubtful")),
        frozenset(_words("may").get(path.stem, ())),
        frozenset(_words("unsaid").get(path.stem, ())),
        _text(tables, _entries(tables, (KNOWN,))) if gives_away else "",
    )


def _entries(tables: Tables, learned: tuple[str, ...]) -> dict[str, Any]:
    """The entries learned in these ways, by table."""
    return {
        name: [e for e in tables.get(name, ()) if e.get("learned", KNOWN) in learned]
        for name in _TABLES
    }


def _text(tables: Tables, chosen: dict[str, Any]) -> str:
    """The complaint, and the notes of the chosen entries."""
    entries = sorted((e for rows in chosen.values() for e in rows), key=lambda e: int(e["no"]))
    notes = dict.fromkeys(e.get("note", "").strip() for e in entries)
    return sentences([tables["job"].get("complaint", ""), *notes])


@cache
def _words(which: str) -> dict[str, list[str]]:
    """By case, what its words say beside its entries, or what of these they do not say."""
    return tomllib.loads((DATA / f"case_words_{which}.toml").read_text("utf-8"))


def sentences(pieces: list[str]) -> str:
    """Pieces of text as sentences, those that repeat an earlier one left out.

    >>> sentences(["lamp on; zero", "lamp on", "no noise"])
    'lamp on; zero. no noise.'
    """
    text = ""
    for piece in pieces:
        if piece and piece.lower() not in text.lower():
            text += f"{piece.rstrip('.')}. "
    return text.strip()
