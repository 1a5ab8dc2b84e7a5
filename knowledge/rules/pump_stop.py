"""What at the pump means stop or do not run, and what cannot both be right."""

from knowledge.findings.behaviour import DIRECT_GAUGE_ZERO
from knowledge.findings.pump import (
    DRILL_GIVES_GOOD,
    DRILL_GIVES_NONE,
    DRIVE_PARTNER_STOPPED,
    NO_OIL_WHEN_CRANKED,
    PACKED_STILL_NONE,
    PUMP_BELT_OFF,
    ROTOR_STILL_WHEN_CRANKED,
    TANK_EMPTIES_RUNNING,
)
from knowledge.findings.pump_bench import (
    PIECE_IN_PUMP,
    PUMP_JAMMED,
    STEEL_SLIVERS_IN_PUMP,
)
from knowledge.findings.pump_drive import (
    DRIVE_COUPLING_SHEARED,
    DRIVE_GEAR_STRIPPED,
    DRIVE_SHAFT_BROKEN,
    PUMP_CHAIN_BROKEN,
    PUMP_SEEN_STANDING,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Contradiction,
    Known,
    case_of,
    rules_of,
)
from knowledge.sources import DTN, HPA, MIF, NE3, POI
from knowledge.vocabulary import Severity, Station

rule = rules_of(Station.PUMP)

# ------------------------------------------------------------------------------- alarms


@rule(
    source=NE3,
    catches=[case_of(DRIVE_SHAFT_BROKEN), case_of(PUMP_SEEN_STANDING), case_of(PUMP_CHAIN_BROKEN)],
    spares=[case_of(lacks=[DRIVE_SHAFT_BROKEN, PUMP_SEEN_STANDING])],
)
def pump_not_driven(known: Known) -> Conclusions:
    """A pump that is not driven leaves the engine without any oil."""
    broken = (DRIVE_SHAFT_BROKEN, DRIVE_COUPLING_SHEARED, DRIVE_GEAR_STRIPPED, PUMP_CHAIN_BROKEN)
    if known.has(PUMP_SEEN_STANDING) or any(known.has(part) for part in broken):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Pump drive broken or pump standing still, no oil flows: do not start or crank on; "
            "renew the drive and find what broke it.",
        )


@rule(
    source=DTN,
    catches=[case_of(DRIVE_PARTNER_STOPPED), case_of(ROTOR_STILL_WHEN_CRANKED)],
    spares=[case_of(lacks=[DRIVE_PARTNER_STOPPED, ROTOR_STILL_WHEN_CRANKED])],
)
def shared_drive_stopped(known: Known) -> Conclusions:
    """What shares the pump's drive has stopped: the pump has most likely stopped too."""
    if known.has(DRIVE_PARTNER_STOPPED) or known.has(ROTOR_STILL_WHEN_CRANKED):
        yield Alarm(
            Severity.STOP,
            "A part on the pump's drive stands still, the pump must turn with the engine: "
            "stop at once, do not restart until the drive has been seen.",
        )


@rule(
    source=POI,
    catches=[case_of(DRILL_GIVES_NONE), case_of(NO_OIL_WHEN_CRANKED), case_of(PACKED_STILL_NONE)],
    spares=[case_of(DRILL_GIVES_GOOD), case_of(lacks=[DRILL_GIVES_NONE])],
)
def pump_that_gives_nothing(known: Known) -> Conclusions:
    """A pump that gives nothing by drill, by cranking or when primed will give nothing running."""
    tries = (DRILL_GIVES_NONE, NO_OIL_WHEN_CRANKED, PACKED_STILL_NONE)
    if any(known.has(tried) for tried in tries):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "No oil from the pump, limit two minutes of drilling or 30 s of cranking: "
            "do not start, find the cause first.",
        )


@rule(
    source=MIF,
    catches=[case_of(PIECE_IN_PUMP), case_of(STEEL_SLIVERS_IN_PUMP)],
    spares=[case_of(PUMP_JAMMED), case_of(lacks=[PIECE_IN_PUMP, STEEL_SLIVERS_IN_PUMP])],
)
def hard_matter_went_through_the_pump(known: Known) -> Conclusions:
    """Hard pieces in the pump have a home they broke from, and more may be on the way."""
    if known.has(PIECE_IN_PUMP) or known.has(STEEL_SLIVERS_IN_PUMP):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Metal or a hard piece in the pump, none is allowed: do not run until its origin "
            "is found and the bearings have been seen.",
        )


@rule(
    source=HPA,
    catches=[case_of(TANK_EMPTIES_RUNNING), case_of(PUMP_BELT_OFF)],
    spares=[case_of(lacks=[TANK_EMPTIES_RUNNING, PUMP_BELT_OFF])],
)
def oil_tank_running_dry(known: Known) -> Conclusions:
    """A tank that runs dry leaves the pressure pump nothing but air."""
    if known.has(TANK_EMPTIES_RUNNING) or known.has(PUMP_BELT_OFF):
        yield Alarm(
            Severity.STOP,
            "Oil does not come back to the tank, its level must hold: stop at once, restore "
            "the scavenge stage and its belt.",
        )


# ----------------------------------------------------------------------- contradictions


@rule(
    source=NE3,
    catches=[case_of(PUMP_SEEN_STANDING, lacks=[DIRECT_GAUGE_ZERO])],
    spares=[case_of(PUMP_SEEN_STANDING), case_of(PUMP_SEEN_STANDING, DIRECT_GAUGE_ZERO)],
)
def pressure_from_a_standing_pump(known: Known) -> Conclusions:
    """A pump that stands still cannot make the pressure a trusted gauge shows."""
    if known.has(PUMP_SEEN_STANDING) and known.lacks(DIRECT_GAUGE_ZERO):
        yield Contradiction(
            (PUMP_SEEN_STANDING, DIRECT_GAUGE_ZERO),
            "The pump is said to stand still, yet a trusted gauge shows pressure: watch the "
            "pump again while the engine is turned.",
            PUMP_SEEN_STANDING,
        )
