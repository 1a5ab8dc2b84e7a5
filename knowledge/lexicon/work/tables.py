"""What was done and what came of it: the words of every subject, put together."""

from __future__ import annotations

from knowledge.lexicon.work import (
    parts_beside,
    parts_engine,
    parts_filter_and_lines,
    parts_instrument,
    parts_pump,
    results_cured,
    results_in_part,
    results_no_difference,
    trials_engine,
    trials_instrument,
    trials_oil,
    trials_pump,
)
from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Result

#: the parts that are worked on; the longer name is taken where several fit
PARTS: tuple[PartWorked, ...] = (
    *parts_instrument.PARTS,
    *parts_filter_and_lines.PARTS,
    *parts_pump.PARTS,
    *parts_engine.PARTS,
    *parts_beside.PARTS,
)
#: the trial, by what is said of it
TRIALS: dict[str, tuple[str, ...]] = {
    **trials_oil.TRIALS,
    **trials_pump.TRIALS,
    **trials_instrument.TRIALS,
    **trials_engine.TRIALS,
}
#: what came of it, by what is said
RESULTS: dict[Result, tuple[str, ...]] = {
    **results_no_difference.RESULTS,
    **results_cured.RESULTS,
    **results_in_part.RESULTS,
}
