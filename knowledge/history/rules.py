"""Rules on history: what makes a cause more or less common."""

from collections.abc import Iterator

from knowledge import sources
from knowledge.circuit.conditions import WORN_BY_HOURS
from knowledge.history import findings
from knowledge.model import Cause, Condition, Finding, Station
from knowledge.rule_api import Conclusions, Known, Shifted, example, less_common, rules_of
from knowledge.sources import JUDGEMENT
from knowledge.stations.causes import CAUSES, strongly_raised_by

rule = rules_of(Station.ASSEMBLY)


def marked_for(fact: Finding) -> Iterator[Shifted]:
    """Yield what the own shift of each cause and root for this fact does to its rate."""
    words: tuple[Cause | Condition, ...] = (*CAUSES, WORN_BY_HOURS)
    for word in words:
        shift = word.shifts.get(fact.id) if word.shifts else None
        if shift is not None:
            yield Shifted(word, shift)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.HIGH_MILEAGE)],
    non_matches=[example(lacks=[findings.HIGH_MILEAGE])],
)
def many_hours_never_opened(known: Known) -> Conclusions:
    """Many hours and never opened: wear and sludge are likelier than mistakes at assembly."""
    if known.has(findings.HIGH_MILEAGE):
        yield from marked_for(findings.HIGH_MILEAGE)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.FRESHLY_REBUILT)],
    non_matches=[example(findings.HIGH_MILEAGE)],
)
def first_hours_after_a_rebuild(known: Known) -> Conclusions:
    """In the first hours after a rebuild look for parts left out, left in or fitted wrong."""
    if known.has(findings.FRESHLY_REBUILT):
        yield from marked_for(findings.FRESHLY_REBUILT)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.OIL_JUST_CHANGED)],
    non_matches=[example(findings.STOOD_LONG)],
)
def straight_after_an_oil_change(known: Known) -> Conclusions:
    """Straight after an oil change check what was just touched: oil, filter, plug, prime."""
    if known.has(findings.OIL_JUST_CHANGED):
        yield from marked_for(findings.OIL_JUST_CHANGED)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.STOOD_LONG)],
    non_matches=[example(lacks=[findings.STOOD_LONG])],
)
def stood_for_a_year(known: Known) -> Conclusions:
    """After standing for a year, parts have drained, dried, stuck and settled."""
    if known.has(findings.STOOD_LONG):
        yield from marked_for(findings.STOOD_LONG)


@rule(
    source=sources.SUMP_TILT_TEST,
    matches=[example(findings.RACED_OR_HEELED)],
    non_matches=[example(findings.WORKED_HARD)],
)
def raced_cornered_or_heeled(known: Known) -> Conclusions:
    """Raced, cornered or heeled: oil moves away from the pickup, foams and gets hot."""
    if known.has(findings.RACED_OR_HEELED):
        yield from marked_for(findings.RACED_OR_HEELED)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[findings.OIL_JUST_CHANGED])],
    non_matches=[example(findings.OIL_JUST_CHANGED), example(findings.FRESHLY_REBUILT)],
)
def no_oil_change_lately(known: Known) -> Conclusions:
    """Without a recent oil change, mistakes from an oil change are less common."""
    if known.lacks(findings.OIL_JUST_CHANGED):
        for cause in strongly_raised_by(findings.OIL_JUST_CHANGED):
            yield less_common(cause)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[findings.RACED_OR_HEELED])],
    non_matches=[example(findings.RACED_OR_HEELED), example(findings.WORKED_HARD)],
)
def on_level_ground_at_a_steady_pace(known: Known) -> Conclusions:
    """Neither raced nor cornered nor heeled: faults that need moving oil are less common."""
    if known.lacks(findings.RACED_OR_HEELED):
        for cause in strongly_raised_by(findings.RACED_OR_HEELED):
            yield less_common(cause)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.SERVICE_NEGLECTED)],
    non_matches=[example(lacks=[findings.SERVICE_NEGLECTED]), example(findings.FRESHLY_REBUILT)],
)
def neglected_for_long_is_not_freshly_built(known: Known) -> Conclusions:
    """An engine long neglected is past the mistakes of its last rebuild."""
    if known.has(findings.SERVICE_NEGLECTED):
        for cause in strongly_raised_by(findings.FRESHLY_REBUILT):
            yield less_common(cause)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.HIGH_MILEAGE, lacks=[findings.FRESHLY_REBUILT])],
    non_matches=[example(lacks=[findings.FRESHLY_REBUILT]), example(findings.HIGH_MILEAGE)],
)
def long_run_and_not_rebuilt(known: Known) -> Conclusions:
    """An engine that ran long without a rebuild hides few mistakes from a rebuild."""
    if known.has(findings.HIGH_MILEAGE) and known.lacks(findings.FRESHLY_REBUILT):
        for cause in strongly_raised_by(findings.FRESHLY_REBUILT):
            yield less_common(cause)
