"""Alarms at bearings and crank: what was seen forbids running."""

from knowledge.alarm import Alarm
from knowledge.judging import sure_beyond
from knowledge.model import Finding, Severity, Station
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.bearings import (
    findings,
    findings_measured,
    findings_shell_map,
    findings_shells,
    findings_sights,
    quantities,
)

rule = rules_of(Station.BEARINGS)
DAMAGED = (
    findings_shells.SHELLS_WIPED,
    findings_shells.SHELL_SPUN,
    findings_shells.SHELLS_FLAKING,
    findings_shells.SHELLS_FOUND_RUINED,
    findings_shells.BEARING_FOUND_SEIZED,
    findings_shell_map.ALL_BEARINGS_WIPED,
    findings_shell_map.ONE_BEARING_WIPED,
    findings_shell_map.THRUST_FACE_PLOUGHED,
    findings_shell_map.MAIN_BEARING_SHIFTED,
)
BROKEN = (
    findings.ROD_THROUGH_BLOCK,
    findings_sights.CRANK_BROKEN,
    findings_sights.ROD_BROKEN,
    findings_sights.BLOCK_CRACKED,
)
FAR_OVER = 1.5  #: times the limit: no oil film carries the load any more (judgement)
LIKELY = 0.5
#: what says that clearances are over their limit, and how it is measured and limited
WIDE = {
    findings_measured.MAIN_CLEARANCE_TOO_WIDE: (
        findings_measured.MEASURED_MAIN_CLEARANCE,
        quantities.MOST_MAIN_CLEARANCE,
    ),
    findings_measured.ROD_CLEARANCE_TOO_WIDE: (
        findings_measured.MEASURED_ROD_CLEARANCE,
        quantities.MOST_ROD_CLEARANCE,
    ),
}


@rule(
    source=COMMON_PRACTICE,
    matches=[example(one) for one in DAMAGED],
    non_matches=[
        example(findings_shells.SHELLS_LOOK_NORMAL),
        example(findings_shells.SHELLS_WORN_EVENLY),
        example(lacks=[findings_shells.SHELLS_WIPED]),
    ],
)
def damaged_bearing_seen(known: Known) -> Conclusions:
    """Damaged bearings: strip the engine, clean every oilway, find where it began."""
    if any(known.has(one) for one in DAMAGED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Damaged bearings seen, none is within limits: do not run. Strip it, measure the crank, "
            "clean every oilway, cooler and line; the filter did not catch all the metal.",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(one) for one in BROKEN],
    non_matches=[example(lacks=[findings.ROD_THROUGH_BLOCK])],
)
def crank_rod_or_block_broken(known: Known) -> Conclusions:
    """A broken crank, rod or block: do not turn the engine again as it is."""
    if any(known.has(one) for one in BROKEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Crank, rod or block broken, no crack is within limits: do not turn or start it.",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_measured.CRANK_END_FLOAT_OVER)],
    non_matches=[example(lacks=[findings_measured.CRANK_END_FLOAT_OVER]), example()],
)
def crank_moves_end_to_end(known: Known) -> Conclusions:
    """A crank that moves too far grinds its webs and the block: the thrust washers are gone."""
    if known.has(findings_measured.CRANK_END_FLOAT_OVER):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Crank end float over its limit: do not start or work the clutch until you have "
            "inspected the thrust washers and their faces.",
        )


@rule(
    source=JUDGEMENT,
    matches=[
        example(findings_measured.MAIN_CLEARANCE_TOO_WIDE),
        example(findings_measured.ROD_CLEARANCE_TOO_WIDE),
        example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.3e-3}),
    ],
    non_matches=[
        example(lacks=[findings_measured.MAIN_CLEARANCE_TOO_WIDE]),
        example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.05e-3}),
        example(findings_measured.CRANK_END_FLOAT_OVER),
    ],
)
def bearing_clearance_over_its_limit(known: Known) -> Conclusions:
    """A bearing clearance over its limit: light load only; far over it, no running at all."""
    far = [f for f in WIDE if _far_over(known, f)]
    for finding in far:
        yield Alarm(
            Severity.DO_NOT_RUN,
            f"{finding.says}, by half as much again or more: do not run until new shells are in.",
        )
    for finding in WIDE:
        if known.has(finding) and finding not in far:
            yield Alarm(
                Severity.CARE,
                f"{finding.says}: light load and low speed only, with a trusted gauge watched, "
                "until new shells are in",
                lets_run=True,
            )


def _far_over(known: Known, finding: Finding) -> bool:
    """Whether a clearance was measured, and it is most likely far over its limit."""
    measure, limit = WIDE[finding]
    widest, figures = known.measured(measure), known.limit_figures(limit)
    if widest is None or not figures:
        return False
    sure = [sure_beyond(widest, FAR_OVER * figure, measure.spread) for figure in figures]
    return sum(sure) > LIKELY * len(sure)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.RAN_ON_WITHOUT_PRESSURE)],
    non_matches=[
        example(lacks=[findings.RAN_ON_WITHOUT_PRESSURE]),
        example(findings.RATTLE_OF_UNKNOWN_PLACE),
    ],
)
def ran_on_without_oil(known: Known) -> Conclusions:
    """Minutes without oil ruin bearings: look for metal before it runs again."""
    if known.has(findings.RAN_ON_WITHOUT_PRESSURE):
        yield Alarm(
            Severity.CARE,
            "it was run on without pressure, seconds are the limit: before it runs again cut the "
            "filter open and turn it over by hand; with metal in it or a tight spot, look at a "
            "bearing first",
            standing=True,
            lets_run=True,
        )
