"""What follows with certainty from a look or a listen at the bearings, and what must stop."""

from knowledge.findings.bearings import (
    ALL_BEARINGS_WIPED,
    BEARING_KNOCK,
    BEARINGS_FAILED_AGAIN,
    DEEP_KNOCK_UNDER_LOAD,
    ENGINE_SEIZED,
    HARD_TO_TURN,
    NO_BETTER_WITH_NEW_BEARINGS,
    ONE_BEARING_WIPED,
    RAP_DULLED_BY_CUT_OUT,
    ROD_THROUGH_BLOCK,
    SHELL_SPUN,
    SHELLS_ETCHED,
    SHELLS_FLAKING,
    SHELLS_LOOK_NORMAL,
    SHELLS_SCRATCHED,
    SHELLS_WIPED,
    SHELLS_WORN_EVENLY,
    WORST_FAR_FROM_PUMP,
)
from knowledge.findings.bearings_bench import MAIN_CLEARANCE_TOO_WIDE, ROD_CLEARANCE_TOO_WIDE
from knowledge.findings.behaviour import DIRECT_GAUGE_LOW, DIRECT_GAUGE_ZERO
from knowledge.findings.pressure import (
    ENGINE_RUNS_NORMALLY,
    FELL_SUDDENLY,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    LAMP_COMES_ON,
    NEEDLE_FLICKERS,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Contradiction,
    Known,
    case_of,
    is_absent,
    is_present,
    rules_of,
)
from knowledge.sources import AA97, CEB2, NE2, RUS
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Severity, Station

rule = rules_of(Station.BEARINGS)

KNOCKS = (BEARING_KNOCK, DEEP_KNOCK_UNDER_LOAD, RAP_DULLED_BY_CUT_OUT)
LOW_OR_WANDERING = (
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    LAMP_COMES_ON,
    NEEDLE_FLICKERS,
    FELL_SUDDENLY,
    DIRECT_GAUGE_LOW,
    DIRECT_GAUGE_ZERO,
)


@rule(
    source=RUS,
    catches=[case_of(ALL_BEARINGS_WIPED), case_of(ONE_BEARING_WIPED)],
    spares=[case_of(SHELLS_WIPED)],
)
def all_or_one_is_wiped(known: Known) -> Conclusions:
    """All wiped or one wiped: wiped either way, and the one pattern shuts out the other."""
    if known.has(ALL_BEARINGS_WIPED):
        yield is_present(SHELLS_WIPED)
        yield is_absent(ONE_BEARING_WIPED, sure=0.95)
    if known.has(ONE_BEARING_WIPED):
        yield is_present(SHELLS_WIPED)
        yield is_absent(ALL_BEARINGS_WIPED, sure=0.95)
        yield is_absent(WORST_FAR_FROM_PUMP, sure=0.8)


@rule(
    source=RUS,
    catches=[case_of(lacks=[SHELLS_WIPED])],
    spares=[case_of(SHELLS_WIPED)],
)
def nothing_wiped_has_no_wiped_pattern(known: Known) -> Conclusions:
    """Where no shell is wiped, neither all nor one is, and none has spun."""
    if known.lacks(SHELLS_WIPED):
        yield is_absent(ALL_BEARINGS_WIPED)
        yield is_absent(ONE_BEARING_WIPED)
        yield is_absent(SHELL_SPUN, sure=0.8)


@rule(
    source=RUS,
    catches=[case_of(SHELLS_LOOK_NORMAL)],
    spares=[case_of(lacks=[SHELLS_LOOK_NORMAL])],
)
def even_polish_is_sound(known: Known) -> Conclusions:
    """An even polish with faint lines is a sound bearing.

    Misleads when only the easiest cap was taken off.
    """
    if known.has(SHELLS_LOOK_NORMAL):
        yield is_absent(SHELLS_WIPED, sure=0.9)
        yield is_absent(SHELLS_WORN_EVENLY, sure=0.9)
        yield is_absent(SHELLS_SCRATCHED, sure=0.9)
        yield is_absent(SHELLS_ETCHED, sure=0.9)
        yield is_absent(SHELLS_FLAKING, sure=0.9)


@rule(
    source=CP,
    catches=[case_of(ENGINE_RUNS_NORMALLY), case_of(lacks=[BEARING_KNOCK])],
    spares=[case_of(lacks=[ENGINE_RUNS_NORMALLY]), case_of(BEARING_KNOCK)],
)
def quiet_engine_has_no_knock(known: Known) -> Conclusions:
    """An engine that sounds and runs as always has neither knock nor rap, and has not seized."""
    if known.has(ENGINE_RUNS_NORMALLY):
        yield is_absent(BEARING_KNOCK, sure=0.9)
        yield is_absent(ENGINE_SEIZED)
        yield is_absent(ROD_THROUGH_BLOCK)
    if known.lacks(BEARING_KNOCK):
        yield is_absent(DEEP_KNOCK_UNDER_LOAD, sure=0.9)
        yield is_absent(RAP_DULLED_BY_CUT_OUT, sure=0.9)


@rule(
    source=CP,
    catches=[case_of(ENGINE_SEIZED)],
    spares=[case_of(HARD_TO_TURN)],
)
def seized_means_it_does_not_turn(known: Known) -> Conclusions:
    """A seized engine does not turn."""
    if known.has(ENGINE_SEIZED):
        yield is_present(HARD_TO_TURN)
        yield is_absent(ENGINE_RUNS_NORMALLY)


@rule(
    source=CP,
    catches=[case_of(NO_BETTER_WITH_NEW_BEARINGS)],
    spares=[case_of(BEARINGS_FAILED_AGAIN)],
)
def new_shells_took_the_wear_away(known: Known) -> Conclusions:
    """New shells that changed nothing took worn clearances out of the question.

    Misleads when they were fitted without measuring.
    """
    if known.has(NO_BETTER_WITH_NEW_BEARINGS):
        yield is_absent(MAIN_CLEARANCE_TOO_WIDE, sure=0.75)
        yield is_absent(ROD_CLEARANCE_TOO_WIDE, sure=0.75)
        yield is_absent(SHELLS_WORN_EVENLY, sure=0.8)


# ------------------------------------------------------------- contradictions and alarms


@rule(
    source=CP,
    catches=[case_of(ALL_BEARINGS_WIPED, ONE_BEARING_WIPED)],
    spares=[case_of(ALL_BEARINGS_WIPED, lacks=[ONE_BEARING_WIPED])],
)
def all_and_one_do_not_fit(known: Known) -> Conclusions:
    """All wiped and only one wiped cannot both be right."""
    if known.has(ALL_BEARINGS_WIPED) and known.has(ONE_BEARING_WIPED):
        yield Contradiction(
            (ALL_BEARINGS_WIPED, ONE_BEARING_WIPED),
            "either all bearings are wiped or one alone: lay the shells out in order and look again",
            ONE_BEARING_WIPED,
        )


@rule(
    source=CP,
    catches=[case_of(ENGINE_RUNS_NORMALLY, BEARING_KNOCK)],
    spares=[case_of(ENGINE_RUNS_NORMALLY, lacks=[BEARING_KNOCK])],
)
def knocking_is_not_as_always(known: Known) -> Conclusions:
    """An engine that knocks does not sound as always."""
    if known.has(ENGINE_RUNS_NORMALLY) and known.has(BEARING_KNOCK):
        yield Contradiction(
            (ENGINE_RUNS_NORMALLY, BEARING_KNOCK),
            "it cannot knock and sound as always: listen again, low on the block",
            BEARING_KNOCK,
        )


@rule(
    source=NE2,
    catches=[
        case_of(GAUGE_READS_LOW, BEARING_KNOCK),
        case_of(NEEDLE_FLICKERS, RAP_DULLED_BY_CUT_OUT),
    ],
    spares=[case_of(GAUGE_READS_LOW), case_of(BEARING_KNOCK)],
)
def knock_with_low_or_wandering_pressure(known: Known) -> Conclusions:
    """A knock with low or wandering pressure: shut down at once."""
    knocks = any(known.has(one) for one in KNOCKS)
    low = any(known.has(one) for one in LOW_OR_WANDERING)
    if knocks and low:
        yield Alarm(
            Severity.STOP,
            "Knock with low or wandering oil pressure; no knock is within limits: shut down at "
            "once, do not restart until the cause is found.",
        )


@rule(
    source=AA97,
    catches=[case_of(BEARING_KNOCK)],
    spares=[case_of(lacks=[BEARING_KNOCK])],
)
def knock_from_the_bottom_end(known: Known) -> Conclusions:
    """A knock from the bottom end: do not run it further, whatever the gauge says."""
    if any(known.has(one) for one in KNOCKS):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Bottom end knocks; no knock is within limits, a good gauge does not excuse it: do "
            "not run until a cap has been off.",
        )


@rule(
    source=CEB2,
    catches=[case_of(HARD_TO_TURN), case_of(ENGINE_SEIZED)],
    spares=[case_of(lacks=[HARD_TO_TURN, ENGINE_SEIZED])],
)
def turns_hard_or_not_at_all(known: Known) -> Conclusions:
    """An engine that turns hard, or not at all, must not be forced round."""
    if known.has(HARD_TO_TURN) or known.has(ENGINE_SEIZED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Engine turns hard or not at all; it should turn evenly by hand: do not force it "
            "round or start it, find the tight spot first.",
        )
