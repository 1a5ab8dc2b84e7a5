"""Work before the trouble began, as typed: "oil pump renewed 2 weeks before by workshop"."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from typing import NoReturn, TypeVar

from diagnose.case.reports import AT_ONCE
from diagnose.case.writing import Value
from diagnose.errors import UsageError, nearest, plain
from diagnose.understanding.reader import read
from knowledge.book import Book
from knowledge.reports.shapes import WorkArea
from knowledge.reports.words import Done, Hands
from knowledge.units import DIMENSIONS, UnitError, parse

AnyWord = TypeVar("AnyWord", bound=StrEnum)
LONGEST = 500  #: characters of one line
LIKE = 'write it like "oil pump renewed 2 weeks before by workshop" or "nothing"'
_TIME = re.compile(
    r"(?:about\s+)?(?P<time>(?:\d+(?:\.\d*)?|\.\d+)\s*[a-z]+)(?:\s+(?:before|ago))?\b"
)
_BY = re.compile(r"by\s+(?:the\s+)?")


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierInput:
    """One piece of earlier work."""

    area: WorkArea
    done: Done | None = None
    before: str | None = None  #: a time with its unit, or the first of ``AT_ONCE``
    hands: Hands | None = None

    def fields(self) -> dict[str, Value | None]:
        """As fields of an ``[[earlier]]``."""
        return {
            "what": self.area.id,
            "done": self.done.value if self.done else None,
            "before": self.before,
            "hands": self.hands.value if self.hands else None,
        }

    def typed(self) -> str:
        """The work as a line that ``parse_earlier`` reads back."""
        parts = [self.area.id.replace("_", " ")]
        if self.done:
            parts.append(self.done.value)
        if self.before:
            parts.append(self.before if self.before in AT_ONCE else f"{self.before} before")
        if self.hands:
            parts.append(f"by {self.hands.value}")
        return " ".join(parts)


def parse_earlier(text: str, book: Book) -> EarlierInput:
    """Read a place of ``book.areas``, then in any order what was done, how long before, by whom.

    Raises UsageError.
    """
    if len(text) > LONGEST:
        _refuse(text, f"{len(text):,} characters; at most {LONGEST:,}.")
    rest = " ".join(text.lower().replace("_", " ").replace(",", " ").split())
    names = {id_.replace("_", " "): area for id_, area in book.areas.items()}
    place = _longest(rest, names)
    if place is None and (said := _in_words(text, book)) is not None:
        return said
    if place is None:
        words = rest.split()
        begins = (" ".join(words[:n]) for n in range(min(len(words), 4), 0, -1))
        near = next(filter(None, (nearest(b, names) for b in begins)), "")
        listed = "" if near else f" Places: {', '.join(sorted(names))}."
        _refuse(text, f"no such place of work.{near}{listed}")
    rest = rest[len(place) :].strip()
    done: Done | None = None
    hands: Hands | None = None
    before: str | None = None
    while rest:
        by = _BY.match(rest)
        if by and (who := _word(rest[by.end() :], Hands)) and hands is None:
            hands, rest = who, rest[by.end() + len(who.value) :].strip()
        elif (what := _word(rest, Done)) and done is None:
            done, rest = what, rest[len(what.value) :].strip()
        elif (once := _longest(rest, AT_ONCE)) and before is None:
            before, rest = AT_ONCE[0], rest[len(once) :].strip()
        elif (time := _TIME.match(rest)) and before is None:
            before, rest = _time(time["time"], text), rest[time.end() :].strip()
        else:
            known = [w.value for w in (*Done, *(Hands if by else ()))]
            word = rest[by.end() :] if by else rest
            fault = f"'{plain(word, 20)}' is not understood, or given twice"
            _refuse(text, f"{fault}.{nearest(word, known)}")
    return EarlierInput(area=names[place], done=done, before=before, hands=hands)


def _in_words(text: str, book: Book) -> EarlierInput | None:
    """The one piece of work that free words name; None where they name none or several."""
    found = [f.fields for f in read(text, book).facts if f.table == "earlier"]
    if len(found) != 1:
        return None
    fields = {name: str(value) for name, value in found[0].items()}
    done, hands = fields.get("done"), fields.get("hands")
    return EarlierInput(
        area=book.areas[fields["what"]],
        done=Done(done) if done else None,
        before=fields.get("before"),
        hands=Hands(hands) if hands else None,
    )


def _time(text: str, whole: str) -> str:
    try:
        parse(text, DIMENSIONS["time"])
    except UnitError as fault:
        _refuse(whole, str(fault))
    return text


def _longest(text: str, phrases: Iterable[str]) -> str | None:
    """The longest of the phrases that the text begins with."""
    found = [p for p in phrases if text == p or text.startswith(p + " ")]
    return max(found, key=len, default=None)


def _word(text: str, kind: type[AnyWord]) -> AnyWord | None:
    found = _longest(text, [w.value for w in kind])
    return kind(found) if found else None


def _refuse(text: str, fault: str) -> NoReturn:
    raise UsageError(f"earlier work '{plain(text)}': {fault} {LIKE}")
