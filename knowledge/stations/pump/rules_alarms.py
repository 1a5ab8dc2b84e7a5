"""Alarms at the pump: when to stop, or not to run."""

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.model import Severity, Station
from knowledge.pressure import direct_gauge
from knowledge.reports.shapes import TrialMade
from knowledge.reports.words import Result
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.pump import (
    findings,
    findings_bench,
    findings_drive,
    findings_priming,
    findings_sights,
    trials,
)

rule = rules_of(Station.PUMP)


@rule(
    source=sources.NAVY_14075_CASUALTY,
    matches=[
        example(findings_drive.DRIVE_SHAFT_BROKEN),
        example(findings_drive.PUMP_SEEN_STANDING),
        example(findings_drive.PUMP_CHAIN_BROKEN),
        example(findings_sights.GEAR_SLIPS_ON_SHAFT),
        example(findings_bench.IDLER_PIN_OUT),
    ],
    non_matches=[
        example(lacks=[findings_drive.DRIVE_SHAFT_BROKEN, findings_drive.PUMP_SEEN_STANDING])
    ],
)
def pump_not_driven(known: Known) -> Conclusions:
    """A pump that is not driven leaves the engine without any oil."""
    broken = (
        findings_drive.DRIVE_SHAFT_BROKEN,
        findings_drive.DRIVE_COUPLING_SHEARED,
        findings_drive.DRIVE_GEAR_STRIPPED,
        findings_drive.PUMP_CHAIN_BROKEN,
        findings_sights.GEAR_SLIPS_ON_SHAFT,
    )
    if known.has(findings_bench.IDLER_PIN_OUT):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "The pump's idler pin is loose or walking out, it must sit fast: do not start; it can "
            "jam the gears and break the drive.",
        )
    if known.has(findings_drive.PUMP_SEEN_STANDING) or any(known.has(part) for part in broken):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pump drive broken or pump standing still, no oil flows: do not start or crank it; renew "
            "the drive and find what broke it.",
        )


@rule(
    source=idea_from(sources.NAVY_ENGINEMAN),
    matches=[example(findings.DRIVE_PARTNER_STOPPED), example(findings.ROTOR_STILL_WHEN_CRANKED)],
    non_matches=[
        example(lacks=[findings.DRIVE_PARTNER_STOPPED, findings.ROTOR_STILL_WHEN_CRANKED])
    ],
)
def shared_drive_stopped(known: Known) -> Conclusions:
    """Something on the pump's drive has stopped: the pump has most likely stopped too."""
    if known.has(findings.DRIVE_PARTNER_STOPPED) or known.has(findings.ROTOR_STILL_WHEN_CRANKED):
        yield Alarm(
            Severity.STOP,
            "A part on the pump's drive stands still, the pump must turn with the engine: stop at "
            "once, do not restart until you have inspected the drive.",
        )


@rule(
    source=JUDGEMENT,
    matches=[
        example(findings_priming.DRILL_GIVES_NONE),
        example(findings_priming.NO_OIL_WHEN_CRANKED),
        example(trials=[TrialMade(trials.PUMP_PRIMED, Result.NO_DIFFERENCE)]),
    ],
    non_matches=[
        example(findings_priming.DRILL_GIVES_GOOD),
        example(lacks=[findings_priming.DRILL_GIVES_NONE]),
    ],
)
def pump_that_gives_nothing(known: Known) -> Conclusions:
    """A pump that gives no oil with a drill, cranked or primed gives none when it runs."""
    tries = (findings_priming.DRILL_GIVES_NONE, findings_priming.NO_OIL_WHEN_CRANKED)
    primed_in_vain = TrialMade(trials.PUMP_PRIMED, Result.NO_DIFFERENCE)
    if primed_in_vain in known.trials() or any(known.has(tried) for tried in tries):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "No oil from the pump, limit two minutes of drilling or 30 s of cranking: "
            "do not start, find the cause first.",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_bench.PIECE_IN_PUMP), example(findings_bench.STEEL_SLIVERS_IN_PUMP)],
    non_matches=[
        example(findings_drive.PUMP_JAMMED),
        example(lacks=[findings_bench.PIECE_IN_PUMP, findings_bench.STEEL_SLIVERS_IN_PUMP]),
    ],
)
def hard_matter_went_through_the_pump(known: Known) -> Conclusions:
    """Hard pieces in the pump came from somewhere, and more may follow."""
    if known.has(findings_bench.PIECE_IN_PUMP) or known.has(findings_bench.STEEL_SLIVERS_IN_PUMP):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Metal or a hard piece in the pump, none is allowed: do not run until you have found "
            "where it came from and inspected the bearings.",
        )


@rule(
    source=sources.OIL_AERATION_ARTICLE,
    matches=[example(findings.TANK_EMPTIES_RUNNING), example(findings.PUMP_BELT_OFF)],
    non_matches=[example(lacks=[findings.TANK_EMPTIES_RUNNING, findings.PUMP_BELT_OFF])],
)
def oil_tank_running_dry(known: Known) -> Conclusions:
    """If the tank runs dry, the pressure pump gets only air."""
    if known.has(findings.TANK_EMPTIES_RUNNING) or known.has(findings.PUMP_BELT_OFF):
        yield Alarm(
            Severity.STOP,
            "Oil does not come back to the tank, its level must hold: stop at once, put the scavenge "
            "stage and its belt right.",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.NO_RETURN_TO_TANK)],
    non_matches=[example(lacks=[findings.NO_RETURN_TO_TANK])],
)
def nothing_comes_back_to_the_tank(known: Known) -> Conclusions:
    """If nothing comes back to the tank, either the feed or the scavenge pump moves no oil."""
    if known.has(findings.NO_RETURN_TO_TANK):
        yield Alarm(
            Severity.STOP,
            "No oil comes back to the tank, it must within a minute: stop at once, find out whether "
            "feed or scavenge pump is dry, and prime both before another start.",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings_drive.PUMP_SEEN_STANDING, lacks=[direct_gauge.DIRECT_GAUGE_ZERO])],
    non_matches=[
        example(findings_drive.PUMP_SEEN_STANDING),
        example(findings_drive.PUMP_SEEN_STANDING, direct_gauge.DIRECT_GAUGE_ZERO),
    ],
)
def pressure_from_a_standing_pump(known: Known) -> Conclusions:
    """A pump that stands still cannot make the pressure a trusted gauge shows."""
    if known.has(findings_drive.PUMP_SEEN_STANDING) and known.lacks(direct_gauge.DIRECT_GAUGE_ZERO):
        yield Contradiction(
            (findings_drive.PUMP_SEEN_STANDING, direct_gauge.DIRECT_GAUGE_ZERO),
            "The pump is recorded as standing still, yet a trusted gauge shows pressure: watch the "
            "pump again while you turn the engine.",
            findings_drive.PUMP_SEEN_STANDING,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_drive.GONE_AT_THE_NEXT_START)],
    non_matches=[
        example(lacks=[findings_drive.GONE_AT_THE_NEXT_START]),
        example(findings_drive.BEGAN_AFTER_REVVING_HARD),
    ],
)
def gone_at_the_next_start(known: Known) -> Conclusions:
    """An engine that had pressure and starts without it runs dry, or its gauge has failed."""
    if known.has(findings_drive.GONE_AT_THE_NEXT_START):
        yield Alarm(
            Severity.STOP,
            "no pressure at the next start, limit 10 s: shut down, start it again only with a "
            "trusted gauge on and watched",
            until=direct_gauge.PRESSURE_SHOWN_SINCE,
            gauge_next=True,
            low=False,
        )
