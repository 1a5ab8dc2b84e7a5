"""Read what a trusted gauge shows beside panel or lamp: "put a mechanical gauge on it, all good"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from diagnose.understanding.pressures.bare_numbers import MOST_BAR, MOST_PSI
from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.pressures.gauges import direct_named
from diagnose.understanding.pressures.unitless import with_unit
from diagnose.understanding.sentences.paragraph import LAMPS, Line, Paragraph, places_of
from diagnose.understanding.words.facts import Fact, Value
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.instruments_named import PANEL_WORDS
from knowledge.lexicon.shows.test_gauge_says import (
    LEADS,
    NOT_FOR_A_TEST,
    SHOWN_ON,
    SMALL,
    Verdict,
)
from knowledge.lexicon.work.beside_results import ENOUGH, PLENTY
from knowledge.model import Gauge
from knowledge.reports.words import Circumstance, Course, Heat, Result, Shows, Speed
from knowledge.units import PRESSURE, PSI, unit_named

_DIRECT = Gauge.DIRECT.value
_LOW, _ZERO, _APART = "direct_gauge_low", "direct_gauge_zero", "second_instrument_disagrees"
#: what shows of a pressure that is too low, and the finding where a trusted gauge shows it too
_ALIKE = {
    Shows.NONE: _ZERO,
    Shows.LOST: _ZERO,
    Shows.LOW: _LOW,
    Shows.LAMP: _LOW,
    Shows.FALLING: _LOW,
}
#: findings that the words of a gauge that shows enough are not meant for
_NOT_ENOUGH = (_LOW, _ZERO, "maker_calls_it_normal", "test_gauge_doubtful")
_LOST = (Shows.NONE, Shows.LOST, Shows.FALLING)
_STEADY = {Shows.HIGH: "direct_gauge_high", Shows.UNSTEADY: "direct_gauge_unsteady"}
_AT_HOT_IDLE = {Circumstance.HOT.value, Circumstance.IDLE.value}
_BACK = 3  #: words between what it shows and "on", and between "on" and the gauge


@dataclass(frozen=True, slots=True)
class _Shown:
    """What a trusted gauge shows: in words, or in figures (the least of them, psi)."""

    line: Line
    gauge: Mark[object]
    where: Line
    words: Mark[Verdict] | None
    figure: float | None
    at: range  #: of ``where``: the words it is said in

    @property
    def enough(self) -> bool:
        """Whether it shows enough for an engine that idles hot."""
        if self.words is not None:
            return self.words.value is Verdict.ENOUGH
        return self.figure is not None and self.figure >= ENOUGH

    @property
    def alike(self) -> bool:
        """Whether it shows what panel or lamp do."""
        return self.words is not None and self.words.value is Verdict.ALIKE

    @property
    def low(self) -> bool:
        """Whether it shows so little that the panel cannot be far below it."""
        return self.figure < ENOUGH / 2 if self.figure is not None else not self.enough


def by_a_second_gauge(facts: list[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with what each trusted gauge shows, and without what says otherwise of it."""
    complaint = _complaint(paragraph, facts)
    for shown in _every(paragraph):
        facts = _without_other(facts, shown)
        facts = [*facts, *_facts(shown, complaint, facts)]
    return facts


def _every(paragraph: Paragraph) -> Iterator[_Shown]:
    lines = paragraph.lines
    for n, line in enumerate(lines):
        for gauge in sorted(direct_named(line), key=lambda m: m.last)[-1:]:
            if not _for_a_test(line, gauge):
                continue
            said = _said(line, gauge.last, gauge, line)
            if said is None:
                said = _before(line, gauge)
            if said is None and n + 1 < len(lines) and not _named_after(line, gauge):
                said = _said(line, 0, gauge, lines[n + 1])
            if said is not None:
                yield said


def _for_a_test(line: Line, gauge: Mark[object]) -> bool:
    words = {t.word for t in line.tokens} - PANEL_WORDS
    return line.is_stated(gauge) and not line.denied(gauge) and not words & NOT_FOR_A_TEST


def _named_after(line: Line, gauge: Mark[object]) -> bool:
    """Whether lamp or panel are named behind the gauge: what follows is theirs."""
    return _end(line, gauge.last) < len(line.tokens)


def _end(line: Line, start: int) -> int:
    """The first place from which another instrument is spoken of."""
    panel = [m.first for m in line.find(line.lexicon.panel) if m.first >= start]
    lamps = [k for k in range(start, len(line.tokens)) if line.word(k) in LAMPS]
    return min([*panel, *lamps, len(line.tokens)])


def _said(line: Line, start: int, gauge: Mark[object], where: Line) -> _Shown | None:
    """The first that is said of it from a place on: words or figures."""
    end = _end(where, start)
    figures = [
        k
        for k in range(start, end)
        if "pressure" in where.tokens[k].kinds
        or (where.tokens[k].kinds & {"number", "range"} and pressures_at(where, k))
    ]
    words = _verdict(where, range(start, end))
    if words is not None and (not figures or words.first <= figures[0]):
        of_figure = bool(figures) and figures[0] - words.last <= 1  # "only just 12"
        if not (words.value is Verdict.LITTLE and of_figure):
            return _Shown(line, gauge, where, words, None, range(words.first, words.last))
    if not figures:
        return None
    least = min(v for k in figures for v in pressures_at(where, k) or [ENOUGH])
    return _Shown(line, gauge, where, None, least, range(figures[0], figures[-1] + 1))


def _verdict(line: Line, at: range) -> Mark[Verdict] | None:
    marks = [m for m in line.find(line.lexicon.verdicts) if at.start <= m.first < at.stop]
    marks = [m for m in marks if m.value is Verdict.ALIKE or line.is_stated(m)]  # "same story"
    for mark in sorted(marks, key=lambda m: (m.first, -m.last)):
        if not line.denied(mark) or mark.value in (Verdict.ALIKE, Verdict.NOTHING):
            return mark
        if mark.value is Verdict.LITTLE:
            return Mark(Verdict.ENOUGH, mark.first, mark.last)
        return Mark(Verdict.LITTLE, mark.first, mark.last)
    return None


def _before(line: Line, gauge: Mark[object]) -> _Shown | None:
    """What stands before "on a test gauge"."""
    on = gauge.first
    while on >= 0 and line.word(on) in SMALL | {"mechanical", "test", "gauge", "master"}:
        on -= 1
    if line.word(on) not in SHOWN_ON:
        on -= 1
    if line.word(on) not in SHOWN_ON:
        return None
    marks = [m for m in line.stated(line.lexicon.verdicts) if on - _BACK <= m.last <= on]
    if not marks or any(t.is_mark for t in line.tokens[marks[-1].last : on]):
        return None
    last = marks[-1]
    words = _verdict(line, range(last.first, last.last))
    if words is None:
        return None
    return _Shown(line, gauge, line, words, None, range(words.first, words.last))


def _complaint(paragraph: Paragraph, facts: Sequence[Fact]) -> Shows | None:
    """What panel or lamp were said to do first; by its figure where nothing else says so."""
    wanted = (*_ALIKE, *_STEADY)
    for line in paragraph.lines:
        for mark in line.stated(line.lexicon.shows):
            if mark.value in wanted and not line.denied(mark) and not line.usual(mark):
                return mark.value
    read = [f for f in facts if f.table == "reading" and "gauge" not in f.fields]
    figures = [least for f in read if (least := _least(f.value)) is not None]
    if 0.0 in figures:
        return Shows.NONE
    return Shows.LOW if min(figures, default=ENOUGH) < ENOUGH else None


def _least(text: str) -> float | None:
    """The least pressure [psi] that a reading's text names."""
    number = re.search(r"\d+(?:\.\d+)?", text)
    if number is None:
        return None
    unit = unit_named(text.rpartition(" ")[2], PRESSURE)
    return float(number.group()) * (unit.factor / PSI if unit else 1.0)


def _without_other(facts: Sequence[Fact], shown: _Shown) -> list[Fact]:
    """Without what was read of the same words and does not agree; its figures are this gauge's."""
    kept: list[Fact] = []
    for fact in facts:
        here = set(places_of(fact, shown.line)) & set(range(shown.gauge.first, shown.gauge.last))
        said = set(places_of(fact, shown.where)) & set(shown.at)
        if (here or said) and _is_against(fact, shown, of_figure=bool(said)):
            continue
        if said and fact.table == "reading" and "gauge" not in fact.fields:
            fact = replace(fact, fields={**fact.fields, "gauge": _DIRECT})
        if said and fact.fields.get("course") == [Course.NOT_REPRODUCED.value]:
            fields = {k: v for k, v in fact.fields.items() if k != "course"}
            fact = replace(fact, fields=fields)  # "nothing wrong with it"
        kept.append(fact)
    return kept


def _is_against(fact: Fact, shown: _Shown, *, of_figure: bool) -> bool:
    """Whether a fact of the gauge's words, or of what it shows, is not what it shows."""
    if fact.name == "instrument" and fact.table == "earlier":
        return not of_figure  # it was put on for the test
    if shown.enough:
        again = of_figure and fact.name == Shows.NORMAL.value  # it is said again, of this gauge
        useless = fact.name == "other_gauge" and fact.state == Result.NO_DIFFERENCE.value
        worse = fact.name in _NOT_ENOUGH and fact.is_present
        gone = fact.fields.get("gauge") == _DIRECT and fact.name in set(_ALIKE)
        return again or useless or worse or gone
    if shown.alike and of_figure and fact.name in set(_ALIKE):
        return True
    apart = fact.name in (_APART, "panel_reads_too_low", "panel_off_by_constant")
    return shown.low and apart and fact.is_present


def _facts(shown: _Shown, complaint: Shows | None, facts: Sequence[Fact]) -> Iterator[Fact]:
    said: Mark[object] = shown.words or Mark(True, shown.at.start, shown.at.stop)
    spans = {*shown.line.span([shown.gauge]), *shown.where.span([said])}
    enough = shown.enough and _may_be_of_then(shown, facts)
    if enough and complaint in _LOST:
        yield from _new(
            "finding", {"what": "pressure_shown_since", "state": "present"}, spans, facts
        )
    plenty = shown.figure is None or shown.figure >= PLENTY
    if enough and plenty and complaint in _ALIKE:
        yield from _new("finding", {"what": _APART, "state": "present"}, spans, facts)
    if shown.words is None:
        yield from _lone_figure(shown, facts)
        return
    fields: dict[str, Value] | None = None
    match shown.words.value:
        case Verdict.ENOUGH:
            fields = {"shows": Shows.NORMAL.value, "gauge": _DIRECT}
            if when := _when(shown.where, shown.words):
                fields["during"] = when
        case Verdict.ALIKE if complaint is not None:
            fields = {"what": (_ALIKE | _STEADY)[complaint], "state": "present"}
        case Verdict.LITTLE:
            fields = {"what": _LOW, "state": "present"}
        case Verdict.NOTHING:
            fields = {"what": _ZERO, "state": "present"}
    if fields:
        yield from _new("behaviour" if "shows" in fields else "finding", fields, spans, facts)


def _may_be_of_then(shown: _Shown, facts: Sequence[Fact]) -> bool:
    """Whether it may be of when the panel showed nothing: not "at 3000 rpm", not cold."""
    if shown.words is not None:
        return not set(_when(shown.where, shown.words)) - _AT_HOT_IDLE
    at = set(shown.at)
    read = [f for f in facts if f.table == "reading" and at & set(places_of(f, shown.where))]
    return all(_is_of_idle(f) for f in read)


def _when(line: Line, words: Mark[Verdict]) -> list[str]:
    """When it shows so, by the words beside it: "fine above 2000"."""
    clause = line.clause(words.first)
    near = [m for m in line.circumstances if clause.first <= m.first < clause.last]
    said = [m.value.value for m in near]
    fast = any("rpm" in t.kinds for t in line.tokens[clause.first : clause.last])
    said += [Circumstance.SPEED.value] if fast else []
    return list(dict.fromkeys(said))


def _is_of_idle(fact: Fact) -> bool:
    """Whether nothing says that a reading was cold, or not at idle."""
    speed, oil = fact.fields.get("rpm", Speed.IDLE.value), fact.fields.get("oil", Heat.HOT.value)
    return speed == Speed.IDLE.value and oil == Heat.HOT.value and "during" not in fact.fields


def _lone_figure(shown: _Shown, facts: Sequence[Fact]) -> Iterator[Fact]:
    """A reading, where nothing but a number without a unit is said: "screwed in a test gauge. 45"."""
    line, at = shown.where, shown.at.start
    read = {k for f in facts if f.table in ("reading", "baseline") for k in places_of(f, line)}
    start = shown.gauge.last if line is shown.line else 0
    lead = line.words(start, at) - SMALL - LEADS
    if at in read or len(shown.at) > 1 or any(len(word) > 1 for word in lead):
        return
    if line.tokens[at].kinds == {"number"} and MOST_BAR < float(line.tokens[at].value) <= MOST_PSI:
        pressure = with_unit(line, at)
        spans = {*shown.line.span([shown.gauge]), *line.span([Mark(True, at, at + 1)])}
        yield from _new("reading", {"pressure": pressure, "gauge": _DIRECT}, spans, facts)


def _new(
    table: str, fields: Mapping[str, Value], spans: set[tuple[int, int]], facts: Sequence[Fact]
) -> Iterator[Fact]:
    """The fact, unless it was read already."""
    fact = Fact(table, fields, tuple(sorted(spans)))
    if not any(f.table == table and f.fields == fact.fields for f in facts):
        yield fact
