"""Pressures at two ports at one moment: "62 psi before the cooler and 20 after it"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from diagnose.understanding.pressures.pressures import value_at
from diagnose.understanding.pressures.unitless import psi_of, with_unit
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.ports import FILTERS, OTHER_PARTS

_DROP = 10.0  #: psi lost between two ports that tells a fault there (judgement)
_NO_DROP = 3.0  #: psi that two ports may differ by when nothing is wrong (judgement)
_PRESENT, _ABSENT = "present", "absent"
_LOST = "good_at_pump_low_in_gallery"
_FILTER = "filter_drop_high"
_FINDINGS = frozenset([_LOST, _FILTER])


class _Ports(NamedTuple):
    """The marks of the two ports and the tokens of their figures, with the psi lost between."""

    line: Line
    marks: tuple[Mark[bool], Mark[bool]]
    at: tuple[int, int]
    lost: float


@reader(
    {
        "62 psi before the cooler and 20 after it": [
            "finding good_at_pump_low_in_gallery present",
            "reading 20 psi",
        ],
        "before the filter 60 psi, after the filter 25": [
            "finding filter_drop_high present",
            "reading 25 psi",
        ],
        "pressure ahead of the cooler is 60, behind it 20": [
            "finding good_at_pump_low_in_gallery present",
            "reading 20 psi",
        ],
        "pressure at the pump 70, at the gallery 68": [
            "finding good_at_pump_low_in_gallery absent",
            "reading 68 psi",
        ],
        "60 psi before the cooler": [],
        "pressure was 60 before the rebuild and 20 after it": [],
        "should be 60 before the cooler and 20 after it": [],
        "4.2 before the cooler and 1.4 after it": [
            "finding good_at_pump_low_in_gallery present",
            "reading 1.4 bar",
        ],
        "48 psi before the filter and 44 after it": ["reading 44 psi"],
    }
)
def two_ports(paragraph: Paragraph) -> Iterator[Fact]:
    """Whether the pressure is lost between two ports."""
    for ports in _found(paragraph):
        said = {t.word for t in ports.line.tokens}
        what = _FILTER if said & FILTERS and not said & OTHER_PARTS else _LOST
        lost = ports.lost >= _DROP
        if lost or ports.lost <= _NO_DROP:
            marks = [*ports.marks, *(Mark(True, k, k + 1) for k in ports.at)]
            state = _PRESENT if lost else _ABSENT
            yield Fact("finding", {"what": what, "state": state}, ports.line.span(marks))
        low = ports.at[1]
        if value_at(ports.line, low, "psi", spoken_of=True) is None:  # read by nothing else
            value = with_unit(ports.line, low)
            yield Fact("reading", {"pressure": value}, ports.line.span([Mark(True, low, low + 1)]))


def without_upstream(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts without a reading upstream of what takes the pressure away, which clears nothing.

    Nor is the drop said of another part in the same sentence.
    """
    kept = list(facts)
    own = {f.name for f in two_ports.read(paragraph)} & _FINDINGS
    for ports in _found(paragraph):
        tokens = ports.line.tokens
        figure = tokens[ports.at[0]].start
        first, last = tokens[0].start, tokens[-1].end
        kept = [
            f
            for f in kept
            if not (f.table == "reading" and any(a <= figure < b for a, b in f.spans))
            and not (f.name in _FINDINGS and first <= f.spans[0][0] < last and f.name not in own)
        ]
    return kept


def _found(paragraph: Paragraph) -> Iterator[_Ports]:
    """Each sentence with a figure at a port and another farther along the oil's way."""
    for line in paragraph.lines:
        up = _stated(line, line.find(line.lexicon.upstream))
        down = _stated(line, line.find(line.lexicon.downstream))
        if not up or not down:
            continue
        figures = [
            k
            for k, token in enumerate(line.tokens)
            if token.kinds & {"pressure", "number"}
            and len(psi_of(line, k)) == 1
            and not line.stances.of[k] & (UNTRUE | Stance.DENIED)
        ]
        leads = min(up[0].first, down[0].first) < min(figures, default=0)
        high = _figure_of(up[0], figures, leads)
        low = _figure_of(down[-1], figures, leads)
        if high is None or low is None or high == low:
            continue
        lost = psi_of(line, high)[0] - psi_of(line, low)[0]
        yield _Ports(line, (up[0], down[-1]), (high, low), lost)


def _stated(line: Line, marks: list[Mark[bool]]) -> list[Mark[bool]]:
    return [m for m in marks if not line.stances.at(m) & (UNTRUE | Stance.DENIED)]


def _figure_of(port: Mark[bool], figures: list[int], leads: bool) -> int | None:
    """The figure of a port: the next behind it where ports stand first, else the last before it."""
    if leads:
        return next((k for k in figures if k >= port.last), None)
    return next((k for k in reversed(figures) if k < port.first), None)
