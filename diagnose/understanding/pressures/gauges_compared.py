"""A pressure as it was read, on which gauge, and what two gauges show beside each other."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import permutations

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.pressures.gauges import direct_named, gauges_named
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.facts import Fact
from diagnose.understanding.words.phrases import Mark
from knowledge.reports.words import Circumstance, Speed
from knowledge.units import PSI

PANEL = "panel"  #: the gauge of a reading that names none
#: speeds that a usual pressure was read at
RUN = (*Speed, Circumstance.IDLE, Circumstance.SPEED, Circumstance.OFF_IDLE)
_PANEL_LIMIT = "panel_error"  #: the limit of a panel's difference from a trusted gauge
_FAR_OFF = 0.25  #: share of the true pressure by which a panel is far off (judgement)
_AT_IDLE = frozenset([Circumstance.IDLE, Speed.IDLE])


@dataclass(slots=True)
class Pressure:
    """A pressure as a sentence gives it, and where it stands."""

    mark: Mark[str]
    line: Line
    usual: bool
    left: bool = False  #: where it came from: "from 60 to 20"
    direct: bool = False  #: shown by a gauge of its own, which was named before
    near: list[Mark[object]] = field(default_factory=list)


def apart_by(read: list[Pressure]) -> Iterator[Fact]:
    """What a panel shows beside a gauge of its own in the same sentence, where it is far off it."""
    for one, other in permutations(read, 2):
        line = one.line
        if other.line is not line or not (by_panel(one) and by_direct(other)):
            continue
        shown, true = (pressures_at(line, p.mark.last - 1) for p in (one, other))
        if not shown or not true:
            continue  # a share of the dial is no figure
        most = line.lexicon.book.limits[_PANEL_LIMIT].typical / PSI
        panel, real = sum(shown) / len(shown), sum(true) / len(true)
        if abs(panel - real) >= max(most, _FAR_OFF * real):
            what = "panel_reads_too_low" if panel < real else "panel_reads_too_high"
            spans = line.span([one.mark, other.mark])
            yield Fact("finding", {"what": what, "state": "present"}, spans)


def apart_later(read: Sequence[Pressure]) -> Iterator[Fact]:
    """What a panel shows beside a gauge of its own that the sentence before or after names."""
    for panel in (p for p in read if by_panel(p) and not p.usual):
        beside = [
            p
            for p in read
            if abs(p.line.number - panel.line.number) == 1 and (by_direct(p) or p.direct)
        ]
        shown = pressures_at(panel.line, panel.mark.last - 1)
        true = [(v, p) for p in beside for v in pressures_at(p.line, p.mark.last - 1)]
        speed = [m for m in panel.near if m.value in RUN]
        bare = [m for m in panel.near if m not in gauges_named(panel.line) and m not in speed]
        idling = any(m.value in _AT_IDLE for m in speed)  # then the other may be of more revs
        if len(shown) != 1 or not true or bare or idling:
            continue
        book = panel.line.lexicon.book
        most = book.limits[_PANEL_LIMIT].typical / PSI
        low, at = min(true, key=lambda t: t[0])
        high = max(v for v, _ in true)
        slow = all(m.value not in RUN for m in at.near) or any(m.value in _AT_IDLE for m in at.near)
        if speed and any(m.value in RUN for m in at.near):
            continue  # each at its own speed: the rules compare them
        if slow and low - shown[0] >= max(most, _FAR_OFF * low):
            what = "panel_reads_too_low"
        elif not speed and shown[0] - high >= max(most, _FAR_OFF * high):
            what = "panel_reads_too_high"
        else:
            continue
        spans = panel.line.span([panel.mark]) + at.line.span([at.mark])
        yield Fact("finding", {"what": what, "state": "present"}, tuple(sorted(spans)))


def by_panel(pressure: Pressure) -> bool:
    """Whether it is said of the panel gauge."""
    return any(m.value == PANEL for m in pressure.near)


def by_direct(pressure: Pressure) -> bool:
    """Whether it is said of a test gauge."""
    return any(m in direct_named(pressure.line) for m in pressure.near)
