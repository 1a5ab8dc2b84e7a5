"""What an engine's past makes more or less common; no evidence by itself."""

from collections.abc import Iterator

from knowledge import causes
from knowledge.findings.history import (
    FRESHLY_REBUILT,
    HIGH_MILEAGE,
    OIL_JUST_CHANGED,
    RACED_OR_HEELED,
    STOOD_LONG,
    WORKED_HARD,
)
from knowledge.rulebook import (
    Conclusions,
    Known,
    Shifted,
    case_of,
    less_common,
    rules_of,
)
from knowledge.sources import JUDGEMENT, SLO
from knowledge.vocabulary import MARKS, Cause, Finding, Station, all_in

rule = rules_of(Station.ASSEMBLY)

CAUSES: tuple[Cause, ...] = tuple(c for m in causes.MODULES for c in all_in(m.__name__, Cause))

#: the five marks of ``Cause.shifts``, in the order they are written
MARKED = (HIGH_MILEAGE, FRESHLY_REBUILT, OIL_JUST_CHANGED, STOOD_LONG, RACED_OR_HEELED)


def marked_for(fact: Finding) -> Iterator[Shifted]:
    """What every cause's own mark says of this fact; ``0`` says nothing."""
    column = MARKED.index(fact)
    for cause in CAUSES:
        mark = cause.shifts.split()[column]
        if mark in MARKS:
            yield Shifted(cause, MARKS[mark])


def wants(fact: Finding) -> Iterator[Cause]:
    """Causes that are strongly more common with this fact."""
    column = MARKED.index(fact)
    return (c for c in CAUSES if c.shifts.split()[column] == "++")


# --------------------------------------------------------- the five facts marked by cause


@rule(source=JUDGEMENT, catches=[case_of(HIGH_MILEAGE)], spares=[case_of(lacks=[HIGH_MILEAGE])])
def many_hours_never_opened(known: Known) -> Conclusions:
    """Many hours and never opened: wear and sludge come before mistakes of assembly."""
    if known.has(HIGH_MILEAGE):
        yield from marked_for(HIGH_MILEAGE)


@rule(source=JUDGEMENT, catches=[case_of(FRESHLY_REBUILT)], spares=[case_of(HIGH_MILEAGE)])
def first_hours_after_a_rebuild(known: Known) -> Conclusions:
    """In the first hours after a rebuild look for what was left out, left in or put in wrong."""
    if known.has(FRESHLY_REBUILT):
        yield from marked_for(FRESHLY_REBUILT)


@rule(source=JUDGEMENT, catches=[case_of(OIL_JUST_CHANGED)], spares=[case_of(STOOD_LONG)])
def straight_after_an_oil_change(known: Known) -> Conclusions:
    """Straight after an oil change look at what was just touched: oil, filter, plug, prime."""
    if known.has(OIL_JUST_CHANGED):
        yield from marked_for(OIL_JUST_CHANGED)


@rule(source=JUDGEMENT, catches=[case_of(STOOD_LONG)], spares=[case_of(lacks=[STOOD_LONG])])
def stood_for_a_year(known: Known) -> Conclusions:
    """After standing a year things have drained, dried, stuck and settled."""
    if known.has(STOOD_LONG):
        yield from marked_for(STOOD_LONG)


@rule(source=SLO, catches=[case_of(RACED_OR_HEELED)], spares=[case_of(WORKED_HARD)])
def raced_cornered_or_heeled(known: Known) -> Conclusions:
    """Raced, cornered or heeled: oil moves off the pickup, foams and gets hot."""
    if known.has(RACED_OR_HEELED):
        yield from marked_for(RACED_OR_HEELED)


@rule(
    source=JUDGEMENT,
    catches=[case_of(lacks=[OIL_JUST_CHANGED])],
    spares=[case_of(OIL_JUST_CHANGED), case_of(FRESHLY_REBUILT)],
)
def no_oil_change_lately(known: Known) -> Conclusions:
    """With no oil change lately, the slips of an oil change are less common."""
    if known.lacks(OIL_JUST_CHANGED):
        for cause in wants(OIL_JUST_CHANGED):
            yield less_common(cause)


@rule(
    source=JUDGEMENT,
    catches=[case_of(lacks=[RACED_OR_HEELED])],
    spares=[case_of(RACED_OR_HEELED), case_of(WORKED_HARD)],
)
def on_level_ground_at_a_steady_pace(known: Known) -> Conclusions:
    """Neither raced nor cornered nor heeled: what needs a moving sump is less common."""
    if known.lacks(RACED_OR_HEELED):
        for cause in wants(RACED_OR_HEELED):
            yield less_common(cause)


@rule(
    source=JUDGEMENT,
    catches=[case_of(HIGH_MILEAGE, lacks=[FRESHLY_REBUILT])],
    spares=[case_of(lacks=[FRESHLY_REBUILT]), case_of(HIGH_MILEAGE)],
)
def long_run_and_not_rebuilt(known: Known) -> Conclusions:
    """An engine that ran long and was not rebuilt hides few mistakes of a rebuild."""
    if known.has(HIGH_MILEAGE) and known.lacks(FRESHLY_REBUILT):
        for cause in wants(FRESHLY_REBUILT):
            yield less_common(cause)
