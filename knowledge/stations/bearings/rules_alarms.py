"""Alarms at bearings and crank: what was seen forbids running."""

from knowledge.model import Severity, Station
from knowledge.rule_api import Alarm, Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.bearings import (
    findings,
    findings_shell_map,
    findings_shells,
    findings_sights,
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
