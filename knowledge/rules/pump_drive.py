"""What follows along the pump's drive, and from a pump that jams it."""

from knowledge.causes.pump import (
    PUMP_DEBRIS_LOCK,
    PUMP_DRIVE_BIND,
    PUMP_DRIVE_BROKEN,
    PUMP_DRIVE_SLIP,
)
from knowledge.conditions import (
    PUMP_DRIVE_ERRATIC,
    PUMP_NOT_TURNING,
    PUMP_SLIP,
)
from knowledge.engines.features import DIESEL
from knowledge.findings.behaviour import CHANGED_WITH_NEW_PUMP
from knowledge.findings.pressure import FELL_SUDDENLY, NEEDLE_FLICKERS
from knowledge.findings.pump import (
    DRIVE_PARTNER_STOPPED,
    IGNITION_SCATTERS,
    NO_OIL_WHEN_CRANKED,
    PACKED_STILL_NONE,
    PUMP_NOISE,
    ROTOR_STILL_WHEN_CRANKED,
)
from knowledge.findings.pump_bench import (
    COVER_GROOVED,
    PIECE_IN_PUMP,
    PUMP_GEAR_BROKEN,
    PUMP_JAMMED,
    PUMP_SCORED_SEEN,
    PUMP_TURNS_ROUGHLY,
    STEEL_SLIVERS_IN_PUMP,
)
from knowledge.findings.pump_drive import (
    DISTRIBUTOR_WILL_NOT_SEAT,
    DRIVE_COUPLING_SHEARED,
    DRIVE_GEAR_STRIPPED,
    DRIVE_GEAR_WORN,
    DRIVE_NOT_ENGAGED,
    DRIVE_SHAFT_BROKEN,
    DRIVE_SHAFT_ROUNDED,
    DRIVE_SHAFT_TOO_LONG,
    NO_DRIVE_END_FLOAT,
    PUMP_CHAIN_BROKEN,
    PUMP_SEEN_STANDING,
    TOO_MUCH_DRIVE_FLOAT,
)
from knowledge.rulebook import Conclusions, Known, case_of, is_absent, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import ISS, MSK, NE1, THK
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.PUMP)


@rule(
    source=CP,
    catches=[case_of(DIESEL)],
    spares=[case_of(), case_of(lacks=[DIESEL])],
)
def diesel_has_no_rotor_to_watch(known: Known) -> Conclusions:
    """A diesel has no ignition: no rotor to watch while it is cranked, no spark to scatter."""
    if known.has(DIESEL):
        yield is_absent(ROTOR_STILL_WHEN_CRANKED)
        yield is_absent(IGNITION_SCATTERS)


@rule(
    source=NE1,
    catches=[
        case_of(FELL_SUDDENLY, DRIVE_SHAFT_BROKEN),
        case_of(FELL_SUDDENLY, DRIVE_PARTNER_STOPPED),
        case_of(DRIVE_COUPLING_SHEARED),
        case_of(FELL_SUDDENLY, ROTOR_STILL_WHEN_CRANKED),
    ],
    spares=[
        case_of(FELL_SUDDENLY, lacks=[PUMP_SEEN_STANDING]),
        case_of(FELL_SUDDENLY, lacks=[DRIVE_SHAFT_BROKEN, DRIVE_GEAR_STRIPPED]),
    ],
)
def pump_stops_at_once(known: Known) -> Conclusions:
    """A drive that breaks stops the pump at once: from good pressure to nothing in seconds.

    What shares the drive (ignition, tachometer) may stop with it. A drive seldom breaks for
    nothing: look for what jammed the pump.
    """
    yield leads_to(PUMP_DRIVE_BROKEN, PUMP_NOT_TURNING, ALWAYS)
    yield leads_to(PUMP_DRIVE_BROKEN, FELL_SUDDENLY, OFTEN)
    yield leads_to(PUMP_DRIVE_BROKEN, DRIVE_PARTNER_STOPPED, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BROKEN, ROTOR_STILL_WHEN_CRANKED, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BROKEN, DRIVE_SHAFT_BROKEN, OFTEN)
    yield leads_to(PUMP_DRIVE_BROKEN, DRIVE_GEAR_STRIPPED, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BROKEN, DRIVE_COUPLING_SHEARED, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BROKEN, PUMP_CHAIN_BROKEN, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BROKEN, DRIVE_NOT_ENGAGED, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BROKEN, STEEL_SLIVERS_IN_PUMP, SELDOM)


@rule(
    source=NE1,
    catches=[case_of(PUMP_SEEN_STANDING), case_of(NO_OIL_WHEN_CRANKED, PACKED_STILL_NONE)],
    spares=[case_of(lacks=[PUMP_SEEN_STANDING, NO_OIL_WHEN_CRANKED])],
)
def pump_stands_while_engine_turns(known: Known) -> Conclusions:
    """A pump that is not turned moves no oil when cranked, and priming it does not help."""
    yield leads_to(PUMP_NOT_TURNING, PUMP_SEEN_STANDING, MOSTLY)
    yield leads_to(PUMP_NOT_TURNING, NO_OIL_WHEN_CRANKED, ALWAYS)
    yield leads_to(PUMP_NOT_TURNING, PACKED_STILL_NONE, OFTEN)


@rule(
    source=ISS,
    catches=[
        case_of(NEEDLE_FLICKERS, IGNITION_SCATTERS),
        case_of(DRIVE_SHAFT_ROUNDED),
        case_of(DRIVE_GEAR_WORN, TOO_MUCH_DRIVE_FLOAT),
    ],
    spares=[
        case_of(NEEDLE_FLICKERS, lacks=[IGNITION_SCATTERS, DRIVE_SHAFT_ROUNDED, DRIVE_GEAR_WORN])
    ],
)
def drive_that_slips_or_lags(known: Known) -> Conclusions:
    """A rounded shaft or worn drive gear slips: pressure comes and goes, the spark scatters.

    Misleads when the distributor alone is worn and turns no pump.
    """
    yield leads_to(PUMP_DRIVE_SLIP, PUMP_DRIVE_ERRATIC, ALWAYS)
    yield leads_to(PUMP_DRIVE_SLIP, IGNITION_SCATTERS, OFTEN)
    yield leads_to(PUMP_DRIVE_SLIP, DRIVE_SHAFT_ROUNDED, OFTEN)
    yield leads_to(PUMP_DRIVE_SLIP, DRIVE_GEAR_WORN, OFTEN)
    yield leads_to(PUMP_DRIVE_SLIP, DRIVE_COUPLING_SHEARED, SELDOM)
    yield leads_to(PUMP_DRIVE_SLIP, DRIVE_NOT_ENGAGED, SELDOM)
    yield leads_to(PUMP_DRIVE_SLIP, TOO_MUCH_DRIVE_FLOAT, SOMETIMES)
    yield leads_to(PUMP_DRIVE_SLIP, STEEL_SLIVERS_IN_PUMP, SOMETIMES)


@rule(
    source=MSK,
    catches=[
        case_of(CHANGED_WITH_NEW_PUMP, NO_DRIVE_END_FLOAT),
        case_of(DISTRIBUTOR_WILL_NOT_SEAT),
        case_of(DRIVE_SHAFT_TOO_LONG),
    ],
    spares=[
        case_of(CHANGED_WITH_NEW_PUMP, lacks=[NO_DRIVE_END_FLOAT, DISTRIBUTOR_WILL_NOT_SEAT]),
    ],
)
def drive_without_end_float(known: Known) -> Conclusions:
    """A drive without end float binds: it eats its gear and pushes the pump into its cover.

    A shaft too long or a distributor that will not seat by hand shows it.
    """
    yield leads_to(PUMP_DRIVE_BIND, PUMP_DRIVE_ERRATIC, MOSTLY)
    yield leads_to(PUMP_DRIVE_BIND, PUMP_SLIP, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BIND, CHANGED_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BIND, NO_DRIVE_END_FLOAT, MOSTLY)
    yield leads_to(PUMP_DRIVE_BIND, DISTRIBUTOR_WILL_NOT_SEAT, OFTEN)
    yield leads_to(PUMP_DRIVE_BIND, DRIVE_SHAFT_TOO_LONG, OFTEN)
    yield leads_to(PUMP_DRIVE_BIND, DRIVE_GEAR_WORN, OFTEN)
    yield leads_to(PUMP_DRIVE_BIND, IGNITION_SCATTERS, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BIND, COVER_GROOVED, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BIND, PUMP_TURNS_ROUGHLY, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BIND, PUMP_NOISE, SELDOM)


@rule(
    source=THK,
    catches=[
        case_of(FELL_SUDDENLY, PUMP_JAMMED),
        case_of(PIECE_IN_PUMP),
        case_of(DRIVE_SHAFT_BROKEN, PUMP_GEAR_BROKEN),
    ],
    spares=[
        case_of(FELL_SUDDENLY, lacks=[PUMP_JAMMED, PIECE_IN_PUMP]),
        case_of(DRIVE_SHAFT_BROKEN, lacks=[PUMP_JAMMED, PIECE_IN_PUMP, PUMP_GEAR_BROKEN]),
    ],
)
def piece_between_the_gears(known: Known) -> Conclusions:
    """A hard piece between the gears jams the pump and, as a rule, shears its drive.

    Misleads when the piece came from a wreck already under way: then it followed, not led.
    """
    yield leads_to(PUMP_DEBRIS_LOCK, PUMP_NOT_TURNING, MOSTLY)
    yield leads_to(PUMP_DEBRIS_LOCK, PUMP_DRIVE_ERRATIC, SOMETIMES)
    yield leads_to(PUMP_DEBRIS_LOCK, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(PUMP_DEBRIS_LOCK, PIECE_IN_PUMP, MOSTLY)
    yield leads_to(PUMP_DEBRIS_LOCK, PUMP_JAMMED, MOSTLY)
    yield leads_to(PUMP_DEBRIS_LOCK, PUMP_GEAR_BROKEN, OFTEN)
    yield leads_to(PUMP_DEBRIS_LOCK, PUMP_SCORED_SEEN, OFTEN)
    yield leads_to(PUMP_DEBRIS_LOCK, PUMP_TURNS_ROUGHLY, OFTEN)
    yield leads_to(PUMP_DEBRIS_LOCK, STEEL_SLIVERS_IN_PUMP, SOMETIMES)
    yield leads_to(PUMP_DEBRIS_LOCK, PUMP_NOISE, SELDOM)
    yield leads_to(PUMP_DEBRIS_LOCK, DRIVE_SHAFT_BROKEN, OFTEN)
    yield leads_to(PUMP_DEBRIS_LOCK, DRIVE_COUPLING_SHEARED, SOMETIMES)
    yield leads_to(PUMP_DEBRIS_LOCK, DRIVE_GEAR_STRIPPED, SOMETIMES)
    yield leads_to(PUMP_DEBRIS_LOCK, DRIVE_PARTNER_STOPPED, SELDOM)
