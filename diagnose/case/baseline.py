"""Pressures an engine showed when it was sound, of a case and of its engine's card."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from diagnose.case.file_faults import Faults
from diagnose.case.gauge_looks import USUAL_SPEEDS, as_given, look
from diagnose.case.schema import BaselineEntry, Checked, checked
from diagnose.errors import plain
from knowledge.model import Gauge, Reading
from knowledge.pressure.gauge import of_one_state
from knowledge.reports.when import Speeds

MOST_ON_CARD = 100
_OF_A_CASE = ("replaces", "state")  #: fields that only numbered entries have
_FIGURES = ("rpm", "oil", "coolant", "pressure", "error")


@dataclass(frozen=True, slots=True)
class BaselineReading:
    """A pressure of the engine without fault that stands, SI."""

    entry: BaselineEntry
    reading: Reading

    @property
    def typed(self) -> str:
        """The reading as a person types it: "700 rpm 90 C 32 psi"."""
        tap = "" if self.entry.tap == "gallery" else self.entry.tap
        error = f"+-{self.entry.error}" if self.entry.error else ""
        return " ".join(filter(None, (as_given(self.entry), tap, error)))


def healthy_reading(
    each: Checked[BaselineEntry], faults: Faults, of: Speeds = USUAL_SPEEDS
) -> Iterator[BaselineReading]:
    """A pressure of the sound engine in SI, or nothing and faults."""
    reading = look(each, faults, of)
    if reading is not None:
        yield BaselineReading(each.table, replace(reading, gauge=Gauge.DIRECT))


def on_card(raw: object, of: Speeds, faults: Faults) -> Iterator[BaselineReading]:
    """The readings of a card's [[baseline]] tables in the order of its file, or faults."""
    if not isinstance(raw, list):
        faults.add("baseline: must be a list of tables, each written [[baseline]]")
        return
    if len(raw) > MOST_ON_CARD:
        faults.add(f"baseline: {len(raw):,} entries; at most {MOST_ON_CARD}")
        return
    for number, one in enumerate(raw, 1):
        where = f"baseline[{number}]"
        if not isinstance(one, dict):
            faults.add(f"{where}: must be a table, written [[baseline]]")
            continue
        wrong = [key for key in _OF_A_CASE if key in one]
        blank = [key for key in _FIGURES if "_" in str(one.get(key, ""))]
        for key in wrong:
            faults.add(f"{where}.{plain(key)}: no such field on a card; change the figures instead")
        for key in blank:
            faults.add(f"{where}.{key}: still to be filled in; write a figure for each _")
        if not wrong and not blank:
            each = checked({**one, "no": number}, where, BaselineEntry)
            for fault in each.faults:
                faults.add(fault)
            if not each.faults:
                yield from healthy_reading(each, faults, of)


def with_those_on_card(
    own: Sequence[BaselineReading], card: Sequence[BaselineReading]
) -> tuple[BaselineReading, ...]:
    """A case's own readings, and the last on its card of each state that the case has none of."""
    kept: list[BaselineReading] = []
    for each in reversed(card):
        if not any(of_one_state(each.reading, o.reading) for o in (*own, *kept)):
            kept.append(each)
    return (*own, *reversed(kept))


def place_of(reading: Reading, card: Sequence[BaselineReading]) -> int:
    """The place of a card's reading of the same state, else the place behind the last."""
    alike = (i for i, b in enumerate(card) if of_one_state(b.reading, reading))
    return max(alike, default=len(card))
