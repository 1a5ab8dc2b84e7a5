"""What came of work, by the pressure read at the same speed and heat before it and behind it.

"8 psi at hot idle. New pump. Ran it an hour. 25 at hot idle" says so with no word for a result.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from diagnose.case.gauge_looks import SPEEDS
from diagnose.case.pressures import pressure_of
from diagnose.understanding.pressures.changes import pressures_at, result_between
from diagnose.understanding.pressures.readings import readings
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, Value
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.came_to import OF_INSTRUMENTS
from diagnose.understanding.work.jobs import Job
from knowledge.lexicon.work.beside_results import AT_LAST, ENOUGH
from knowledge.reports.words import Bound, Result, Speed
from knowledge.units import DIMENSIONS, PSI, UnitError, parse

_WITHIN = 3  #: sentences between work and the pressure that came of it
_NEAR = 0.15  #: share by which two speeds differ that are one (judgement)
_SLOWEST = 1000.0  #: rpm: below, an engine idles (judgement)
_PER_MINUTE = 60.0
_LONE = 4  #: most words of a sentence that is no more than a pressure: "Oil pressure 28"


@dataclass(frozen=True, slots=True)
class Read:
    """A pressure that was read: psi, where it stands in the text, and when it was read."""

    value: float
    at: int
    speed: str | float  #: rpm, or a word; empty: unsaid
    heat: str
    direct: bool


def read_in(paragraph: Paragraph) -> list[Read]:
    """The pressures of a text that are no bounds and not the usual ones, in their order."""
    facts = (f for f in readings.read(paragraph) if f.table == "reading")
    return sorted((r for f in facts for r in _read(f)), key=lambda r: r.at)


def _read(fact: Fact) -> Iterator[Read]:
    given = pressure_of(fact.value)
    figure = fact.value[:1] in "0123456789."
    if figure and given.bound is Bound.EXACT and not fact.fields.get("during"):
        direct = fact.fields.get("gauge") == "direct"
        speed, heat = _speed(fact.fields), _heat(fact.fields)
        yield Read(given.value / PSI, fact.spans[-1][1], speed, heat, direct)


def _speed(fields: Mapping[str, Value]) -> str | float:
    said = str(fields.get("rpm") or "")
    if not said or said in SPEEDS or not said[:1].isdigit():
        said = str(SPEEDS.get(said, said))
        return Speed.IDLE.value if "idle" in said and "off" not in said else said
    try:
        rpm = parse(said, DIMENSIONS["speed"]) * _PER_MINUTE
    except UnitError:
        return said
    return Speed.IDLE.value if rpm < _SLOWEST else rpm


def _heat(fields: Mapping[str, Value]) -> str:
    said = str(fields.get("oil") or "")
    return "" if said[:1].isdigit() else said.removeprefix("very ")


def by_readings(
    paragraph: Paragraph, pending: Sequence[Job], found: Sequence[Read], worked: Iterable[Job]
) -> Iterator[tuple[Job, Mark[Result], Line]]:
    """What came of each piece of work that no words say it of.

    ``found``: pressures as ``read_in`` has them; ``worked``: all work of the text.
    """
    starts = sorted(_start(j) for j in worked)
    for job in pending:
        if job.begins_it or job.area == "whole_engine" or job.before()[0] not in ("", "2 days"):
            continue
        first, last = _start(job), _end(paragraph, job, starts)
        before = [r for r in found if r.at <= first]
        behind = [r for r in found if job.line.tokens[job.last - 1].end < r.at <= last]
        came = _came(paragraph, job, before, behind)
        if came is not None:
            yield job, *came


def _start(job: Job) -> int:
    return job.line.tokens[job.first].start


def _end(paragraph: Paragraph, job: Job, starts: Sequence[int]) -> int:
    """Up to where in the text what is read may have come of work: not past other work behind it."""
    number = min(job.line.number + _WITHIN, len(paragraph.lines) - 1)
    end = paragraph.lines[number].tokens[-1].end
    own = job.line.tokens[-1].end
    return min([end, *(s for s in starts if s > own)])


def _came(
    paragraph: Paragraph, job: Job, before: Sequence[Read], behind: Sequence[Read]
) -> tuple[Mark[Result], Line] | None:
    """The result of the pair that was lowest before, and where the pressure behind it stands."""
    pairs = [
        (was, now)
        for now in behind
        for was in before
        if _comparable(was, now) and was.direct == now.direct
    ]
    pairs = [p for p in pairs if p[0].heat != "cold" or p[0].value < ENOUGH]
    if pairs:
        was, now = min(pairs, key=lambda p: (p[0].value, -p[0].at))
        value = result_between(was.value, now.value)
    elif behind and before and (bare := _bare_at_last(paragraph, behind[0])):
        lowest = min((r for r in before if r.heat != "cold"), key=lambda r: r.value, default=None)
        if lowest is None:
            return None
        now, value = bare, result_between(lowest.value, bare.value)
    else:
        return None
    if value is Result.WORSE:
        return None
    if job.trial in OF_INSTRUMENTS and value is Result.HELPED:
        value = Result.NO_DIFFERENCE
    line, place = _place(paragraph, now.at)
    figures = [k for k in range(place + 1) if pressures_at(line, k)]
    place = figures[-1] if figures else place
    return Mark(value, place, place + 1), line


def _comparable(one: Read, other: Read) -> bool:
    """Whether two were read at one speed and one heat, of which at least the speed is said."""
    if not one.speed or not other.speed or not _same_speed(one.speed, other.speed):
        return False
    return one.heat == other.heat or (
        (not one.heat or not other.heat)
        and "cold"
        not in (
            one.heat,
            other.heat,
        )
    )


def _same_speed(one: str | float, other: str | float) -> bool:
    if isinstance(one, str) or isinstance(other, str):
        return one == other
    return abs(one - other) <= _NEAR * max(one, other)


def _bare_at_last(paragraph: Paragraph, read: Read) -> Read | None:
    """A pressure of no speed and heat where its sentence says it is so now or since: "holds 45 now"."""
    line, _ = _place(paragraph, read.at)
    said = {t.word for t in line.tokens}
    plain = not read.speed and not read.heat
    return read if plain and (said & AT_LAST or len(line.tokens) <= _LONE) else None


def _place(paragraph: Paragraph, at: int) -> tuple[Line, int]:
    """The sentence and the token that end at a place of the text."""
    for line in paragraph.lines:
        for k, token in enumerate(line.tokens):
            if token.start < at <= token.end:
                return line, k
    raise ValueError(f"nothing stands at {at}")
