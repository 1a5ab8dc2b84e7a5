"""Reported behaviour as typed: "low during hot, idle only gradual"."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum
from typing import Literal, NoReturn, TypeVar, get_args

from diagnose.case.writing import Value
from diagnose.errors import UsageError, nearest, plain
from knowledge.reports.words import Circumstance, Course, Onset, Shows, Since

AnyWord = TypeVar("AnyWord", bound=StrEnum)
Gauge = Literal["panel", "direct", "lamp"]
LONGEST = 1_000  #: characters of one line
LIKE = (
    'write it like "low during hot, idle only gradual" or '
    '"lost during bends never idle sudden comes and goes since oil change"'
)
_WORD = re.compile(r"[^\s,;]+")
_LASTS = re.compile(r"(?:\d+(?:\.\d*)?|\.\d+)\s*[a-z]+(?!\S)")
#: words that say what comes next
_INTRODUCE = {
    "during": "during",
    "when": "during",
    "while": "during",
    "never": "never",
    "since": "since",
    "lasts": "lasts",
    "for": "lasts",
    "gauge": "gauge",
}
_ONLY = ("only",)
_WITH_PRESSURE = ("with pressure", "with the pressure")
_ONSETS = {**{o.value: o for o in Onset}, **{o.value + "ly": o for o in Onset}}


@dataclass(frozen=True, slots=True, kw_only=True)
class BehaviourInput:
    """One reported behaviour; the words are those of the closed lists of the book."""

    shows: Shows
    during: tuple[Circumstance, ...] = ()
    never: tuple[Circumstance, ...] = ()
    only: bool = False
    onset: Onset | None = None
    course: tuple[Course, ...] = ()
    since: Since | None = None
    lasts: str | None = None  #: a time with its unit
    with_pressure: bool = False
    gauge: Gauge | None = None  #: None: not given, taken as 'panel'

    def fields(self) -> dict[str, Value | None]:
        """As fields of a ``[[behaviour]]``."""
        return {
            "shows": self.shows.value,
            "during": _values(self.during),
            "never": _values(self.never),
            "only": self.only or None,
            "onset": self.onset.value if self.onset else None,
            "course": _values(self.course),
            "since": self.since.value if self.since else None,
            "lasts": self.lasts,
            "with_pressure": self.with_pressure or None,
            "gauge": self.gauge,
        }

    def typed(self) -> str:
        """The behaviour as a line that ``parse_behaviour`` reads back.

        >>> parse_behaviour("gradual low when idle and hot only").typed()
        'low during idle, hot only gradual'
        """
        parts = [self.shows.value]
        for word, listed in (("during", self.during), ("never", self.never)):
            if listed:
                parts.append(f"{word} {', '.join(c.value for c in listed)}")
        if self.only:
            parts.append(_ONLY[0])
        parts += [w.value for w in (self.onset, *self.course) if w]
        if self.since:
            parts.append(f"since {self.since.value}")
        if self.lasts:
            parts.append(f"lasts {self.lasts}")
        if self.with_pressure:
            parts.append(_WITH_PRESSURE[0])
        if self.gauge:
            parts.append(f"gauge {self.gauge}")
        return " ".join(parts)


def parse_behaviour(text: str) -> BehaviourInput:
    """Read what shows, and in any order when, how it came and how it went on.

    Circumstances follow ``during`` or ``never``; ``only``: at no other time. ``since`` names what
    it began with, ``lasts`` a time, ``gauge`` the instrument. Raises UsageError.

    >>> parse_behaviour("lamp during hot idle only comes and goes").only
    True
    """
    return _Reader(text).read()


class _Reader:
    """Reads a line from left to right, the longest known phrase first."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.words = _WORD.findall(text.lower())
        self.at = 0
        self.lists: dict[str, list[Circumstance]] = {"during": [], "never": []}
        self.course: list[Course] = []
        self.single: dict[str, object] = {}

    def read(self) -> BehaviourInput:
        """The whole line."""
        if len(self.text) > LONGEST:
            self._refuse(f"{len(self.text):,} characters; at most {LONGEST:,}")
        listed = "during"
        while self.at < len(self.words):
            word = self.words[self.at]
            named = _INTRODUCE.get(word)
            if named in self.lists:
                listed = named
                self.at += 1
                if self._take(Circumstance) is None:
                    self._refuse(f"name what follows '{word}'", Circumstance)
            elif named:
                self.at += 1
                self._named(named)
            elif self._taken(listed):
                pass
            elif word == "and":
                self.at += 1
            else:
                self._refuse(
                    f"'{plain(word, 20)}' is not understood", Shows, Circumstance, Course, Onset
                )
        if "shows" not in self.single:
            self._refuse("say what shows", Shows)
        return BehaviourInput(
            during=tuple(dict.fromkeys(self.lists["during"])),
            never=tuple(dict.fromkeys(self.lists["never"])),
            course=tuple(dict.fromkeys(self.course)),
            **self.single,  # type: ignore[arg-type]  # each key is set with its own type
        )

    def _named(self, name: str) -> None:
        """Read what 'since', 'lasts' or 'gauge' introduces."""
        if name == "since":
            since = self._match(Since)
            if since is None:
                self._refuse("name what it began with", Since)
            self._set("since", since)
        elif name == "gauge":
            word = self._next_word()
            if word not in get_args(Gauge):
                self._refuse("gauge: panel, direct or lamp")
            self._set("gauge", word)
        else:
            rest = " ".join(self.words[self.at : self.at + 2])
            time = _LASTS.match(rest)
            if time is None:
                self._refuse("lasts: a time with its unit, as 10 s")
            self.at += len(time[0].split())
            self._set("lasts", time[0])

    def _taken(self, listed: str) -> bool:
        """Whether the next words are a known phrase, which is then kept."""
        longest = max((self._length(kind) for kind in (Shows, Circumstance, Course)), default=0)
        for phrase in _WITH_PRESSURE:
            if self._starts(phrase):
                self.at += len(phrase.split())
                self._set("with_pressure", True)
                return True
        word = self.words[self.at]
        if word in _ONLY:
            self.at += 1
            self.single["only"] = True
        elif word in _ONSETS and longest < 2:
            self.at += 1
            self._set("onset", _ONSETS[word])
        elif "shows" not in self.single and longest and self._length(Shows) == longest:
            self._set("shows", self._match(Shows))
        elif longest and self._length(Course) == longest:
            course = self._match(Course)
            assert course is not None
            self.course.append(course)
        elif longest and self._length(Circumstance) == longest:
            self._take(Circumstance, listed)
        else:
            return False
        return True

    def _take(self, kind: type[Circumstance], listed: str = "") -> Circumstance | None:
        """Keep the circumstance that comes next; with no list only look at it."""
        if not listed:
            return next(self._fitting(kind), None)
        found = self._match(kind)
        if found is not None:
            self.lists[listed].append(found)
        return found

    def _fitting(self, kind: type[AnyWord]) -> Iterator[AnyWord]:
        """Words of the list that come next, the longest first."""
        for word in sorted(kind, key=lambda w: -len(w.value)):
            if self._starts(word.value):
                yield word

    def _match(self, kind: type[AnyWord]) -> AnyWord | None:
        found = next(self._fitting(kind), None)
        if found is not None:
            self.at += len(found.value.split())
        return found

    def _length(self, kind: type[StrEnum]) -> int:
        """How many words the longest phrase of the list takes here."""
        return next((len(w.value.split()) for w in self._fitting(kind)), 0)

    def _starts(self, phrase: str) -> bool:
        words = phrase.replace(",", "").split()
        return self.words[self.at : self.at + len(words)] == words

    def _next_word(self) -> str:
        word = self.words[self.at] if self.at < len(self.words) else ""
        self.at += 1
        return word

    def _set(self, name: str, value: object) -> None:
        if name in self.single:
            self._refuse(f"{name.replace('_', ' ')} is given twice")
        self.single[name] = value

    def _refuse(self, fault: str, *lists: type[StrEnum]) -> NoReturn:
        word = self.words[self.at] if self.at < len(self.words) else ""
        near = nearest(word, [w.value for kind in lists for w in kind]) if word else ""
        raise UsageError(f"behaviour '{plain(self.text)}': {fault}.{near} {LIKE}")


def _values(words: Iterable[StrEnum]) -> list[str] | None:
    return [w.value for w in words] or None
