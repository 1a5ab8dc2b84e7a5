"""Rules at the crank bearings: what follows from what is known."""

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.history import findings as history
from knowledge.model import Severity, Station
from knowledge.pressure import direct_gauge, patterns
from knowledge.rule_api import (
    Conclusions,
    Known,
    example,
    is_absent,
    is_present,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.bearings import (
    causes_geometry,
    findings,
    findings_shell_map,
    findings_shells,
)

rule = rules_of(Station.BEARINGS)


@rule(
    source=sources.BEARING_FAILURE_TYPES,
    matches=[example(history.WORKED_HARD)],
    non_matches=[example(lacks=[history.WORKED_HARD])],
)
def hard_work_tells_on_the_shells(known: Known) -> Conclusions:
    """Long work at full load or speed makes hammered bearings more common."""
    if known.has(history.WORKED_HARD):
        yield more_common(causes_geometry.OVERLOAD_LUGGING)


LOW_OR_WANDERING = (
    patterns.GAUGE_READS_LOW,
    patterns.GAUGE_READS_ZERO,
    patterns.LAMP_COMES_ON,
    patterns.NEEDLE_FLICKERS,
    patterns.FELL_SUDDENLY,
    direct_gauge.DIRECT_GAUGE_LOW,
    direct_gauge.DIRECT_GAUGE_ZERO,
)


@rule(
    source=JUDGEMENT,
    matches=[
        example(findings_shell_map.ALL_BEARINGS_WIPED),
        example(findings_shell_map.ONE_BEARING_WIPED),
    ],
    non_matches=[example(findings_shells.SHELLS_WIPED)],
)
def all_or_one_is_wiped(known: Known) -> Conclusions:
    """All wiped or one wiped: wiped in both cases, and one pattern excludes the other."""
    if known.has(findings_shell_map.ALL_BEARINGS_WIPED):
        yield is_present(findings_shells.SHELLS_WIPED)
        yield is_absent(findings_shell_map.ONE_BEARING_WIPED, sure=0.95)
    if known.has(findings_shell_map.ONE_BEARING_WIPED):
        yield is_present(findings_shells.SHELLS_WIPED)
        yield is_absent(findings_shell_map.ALL_BEARINGS_WIPED, sure=0.95)
        yield is_absent(findings_shell_map.WORST_FAR_FROM_PUMP, sure=0.8)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[findings_shells.SHELLS_WIPED])],
    non_matches=[example(findings_shells.SHELLS_WIPED)],
)
def nothing_wiped_has_no_wiped_pattern(known: Known) -> Conclusions:
    """If no shell is wiped, then neither all nor one is, and none has spun."""
    if known.lacks(findings_shells.SHELLS_WIPED):
        yield is_absent(findings_shell_map.ALL_BEARINGS_WIPED)
        yield is_absent(findings_shell_map.ONE_BEARING_WIPED)
        yield is_absent(findings_shells.SHELL_SPUN, sure=0.8)


@rule(
    source=sources.RECONDITIONER_BEARINGS,
    matches=[example(findings_shells.SHELLS_LOOK_NORMAL)],
    non_matches=[example(lacks=[findings_shells.SHELLS_LOOK_NORMAL])],
)
def even_polish_is_sound(known: Known) -> Conclusions:
    """An even polish with faint lines is a sound bearing.

    Misleads when only the easiest cap was taken off.
    """
    if known.has(findings_shells.SHELLS_LOOK_NORMAL):
        yield is_absent(findings_shells.SHELLS_WIPED, sure=0.9)
        yield is_absent(findings_shells.SHELLS_WORN_EVENLY, sure=0.9)
        yield is_absent(findings_shells.SHELLS_SCRATCHED, sure=0.9)
        yield is_absent(findings_shells.SHELLS_ETCHED, sure=0.9)
        yield is_absent(findings_shells.SHELLS_FLAKING, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(patterns.ENGINE_RUNS_NORMALLY), example(lacks=[findings.BEARING_KNOCK])],
    non_matches=[example(lacks=[patterns.ENGINE_RUNS_NORMALLY]), example(findings.BEARING_KNOCK)],
)
def quiet_engine_has_no_knock(known: Known) -> Conclusions:
    """An engine that sounds and runs as always has no knock or rap and has not seized."""
    if known.has(patterns.ENGINE_RUNS_NORMALLY):
        yield is_absent(findings.BEARING_KNOCK, sure=0.9)
        yield is_absent(findings.ENGINE_SEIZED)
        yield is_absent(findings.ROD_THROUGH_BLOCK)
    if known.lacks(findings.BEARING_KNOCK):
        yield is_absent(findings.DEEP_KNOCK_UNDER_LOAD, sure=0.9)
        yield is_absent(findings.RAP_DULLED_BY_CUT_OUT, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.ENGINE_SEIZED)],
    non_matches=[example(findings.HARD_TO_TURN)],
)
def seized_means_it_does_not_turn(known: Known) -> Conclusions:
    """A seized engine does not turn."""
    if known.has(findings.ENGINE_SEIZED):
        yield is_present(findings.HARD_TO_TURN)
        yield is_absent(patterns.ENGINE_RUNS_NORMALLY)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_shell_map.ALL_BEARINGS_WIPED, findings_shell_map.ONE_BEARING_WIPED)],
    non_matches=[
        example(findings_shell_map.ALL_BEARINGS_WIPED, lacks=[findings_shell_map.ONE_BEARING_WIPED])
    ],
)
def all_and_one_do_not_fit(known: Known) -> Conclusions:
    """All wiped and only one wiped cannot both be right."""
    if known.has(findings_shell_map.ALL_BEARINGS_WIPED) and known.has(
        findings_shell_map.ONE_BEARING_WIPED
    ):
        yield Contradiction(
            (findings_shell_map.ALL_BEARINGS_WIPED, findings_shell_map.ONE_BEARING_WIPED),
            "either all bearings are wiped or one alone: lay the shells out in order and look again",
            findings_shell_map.ONE_BEARING_WIPED,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(patterns.ENGINE_RUNS_NORMALLY, findings.BEARING_KNOCK)],
    non_matches=[example(patterns.ENGINE_RUNS_NORMALLY, lacks=[findings.BEARING_KNOCK])],
)
def knocking_is_not_as_always(known: Known) -> Conclusions:
    """An engine that knocks does not sound as usual."""
    if known.has(patterns.ENGINE_RUNS_NORMALLY) and known.has(findings.BEARING_KNOCK):
        yield Contradiction(
            (patterns.ENGINE_RUNS_NORMALLY, findings.BEARING_KNOCK),
            "it cannot both knock and sound as usual: listen again, low on the block",
            findings.BEARING_KNOCK,
        )


@rule(
    source=sources.NAVY_14075_INSTRUMENTS,
    matches=[
        example(patterns.GAUGE_READS_LOW, findings.BEARING_KNOCK),
        example(patterns.NEEDLE_FLICKERS, findings.RAP_DULLED_BY_CUT_OUT),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW), example(findings.BEARING_KNOCK)],
)
def knock_with_low_or_wandering_pressure(known: Known) -> Conclusions:
    """A knock with low or wandering pressure: shut down at once."""
    knocks = any(known.has(one) for one in findings.KNOCKS)
    low = any(known.has(one) for one in LOW_OR_WANDERING)
    if knocks and low:
        yield Alarm(
            Severity.STOP,
            "Knock with low or wandering oil pressure; no knock is within limits: shut down at "
            "once, do not restart until the cause is found.",
        )


@rule(
    source=sources.CARLEY_1997,
    matches=[example(findings.BEARING_KNOCK)],
    non_matches=[example(lacks=[findings.BEARING_KNOCK])],
)
def knock_from_the_bottom_end(known: Known) -> Conclusions:
    """A knock from the bottom end: do not run it further, whatever the gauge says."""
    if any(known.has(one) for one in findings.KNOCKS):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Bottom end knocks; no knock is within limits, a good gauge does not excuse it: do not "
            "run until you have had a cap off.",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.HARD_TO_TURN), example(findings.ENGINE_SEIZED)],
    non_matches=[example(lacks=[findings.HARD_TO_TURN, findings.ENGINE_SEIZED])],
)
def turns_hard_or_not_at_all(known: Known) -> Conclusions:
    """Do not force an engine that turns hard, or not at all."""
    if known.has(findings.HARD_TO_TURN) or known.has(findings.ENGINE_SEIZED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Engine turns hard or not at all; it should turn evenly by hand: do not force it "
            "round or start it, find the tight spot first.",
        )
