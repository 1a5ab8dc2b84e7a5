"""What follows at reading, sender and wire."""

from knowledge.causes.instrument import (
    SENDER_FAULTY,
    SENDER_MISMATCH,
    SENDER_NOT_FITTED,
    WIRING_GROUND_FAULT,
)
from knowledge.conditions import READING_ERRATIC, READING_FALSE
from knowledge.findings.behaviour import (
    CHANGED_AFTER_OTHER_WORK,
    LOW_FROM_FIRST_START,
    NO_BETTER_WITH_NEW_PUMP,
    NONE_FROM_FIRST_START,
    SLOW_NEEDLE,
)
from knowledge.findings.instrument import (
    GROUND_STRAP_BAD,
    INSTRUMENT_JUST_CHANGED,
    NEEDLE_OFF_ZERO_AT_REST,
    NEEDLE_STUCK_AT_ONE_VALUE,
    NEW_SENDER_CURED_IT,
    NO_SENDER_FITTED,
    SENDER_CONNECTOR_LOOSE,
    SENDER_DAMAGED,
    SENDER_LEAKS_OIL,
    SENDER_WIRE_BROKEN,
    SENDER_WIRE_OFF,
    TAPE_ON_SENDER_THREAD,
    WIRE_ON_WRONG_SENDER,
)
from knowledge.findings.instrument_bench import (
    FUSE_BLOWN,
    GAUGE_SUPPLY_WRONG,
    JUMPER_GROUND_CURES,
    LAMP_ON_WITH_WIRE_OFF,
    NEEDLE_IGNORES_LEAD_TEST,
    PANEL_HALF_OR_DOUBLE,
    PANEL_READS_TOO_HIGH,
    SENDER_GROUND_POOR,
    SENDER_NOT_FOR_GAUGE,
    SENDER_OHMS_HIGH,
    SENDER_OHMS_LOW,
    SENDER_WRONG_ON_AIR,
    SWITCH_OPENS_WRONG,
    WIGGLE_MOVES_NEEDLE,
    WIRE_OPEN_OR_SHORTED,
)
from knowledge.findings.pressure import (
    GAUGE_READS_HIGH,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    NEEDLE_FOLLOWS_LOADS,
    NEEDLE_STEPS_AT_ONCE,
    OTHER_GAUGES_ALSO_WRONG,
    SECOND_INSTRUMENT_DISAGREES,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FJE, NE2, TEL, TWO_CP
from knowledge.vocabulary import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.INSTRUMENT)

# ----------------------------------------------------------------------- how a wrong reading shows


@rule(
    source=NE2,
    catches=[
        case_of(GAUGE_READS_LOW, SECOND_INSTRUMENT_DISAGREES),
        case_of(SECOND_INSTRUMENT_DISAGREES),
    ],
    spares=[
        case_of(GAUGE_READS_LOW, lacks=[SECOND_INSTRUMENT_DISAGREES]),
    ],
)
def instruments_at_odds(known: Known) -> Conclusions:
    """Two instruments that disagree, or a new pump that changed nothing: ask the gauge first.

    Misleads when the second instrument is a lamp: its switch opens at a few psi.
    """
    yield leads_to(READING_FALSE, SECOND_INSTRUMENT_DISAGREES, OFTEN)
    yield leads_to(READING_FALSE, NO_BETTER_WITH_NEW_PUMP, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(NEEDLE_STEPS_AT_ONCE), case_of(NEEDLE_FOLLOWS_LOADS)],
    spares=[case_of(lacks=[NEEDLE_STEPS_AT_ONCE, NEEDLE_FOLLOWS_LOADS])],
)
def needle_that_steps_at_once(known: Known) -> Conclusions:
    """A needle that steps with no lag, or follows bumps and switches, follows a contact.

    Misleads when a direct gauge hangs on a very short rigid line: it shows the pump's pulses.
    """
    yield leads_to(READING_ERRATIC, NEEDLE_STEPS_AT_ONCE, MOSTLY)
    yield leads_to(READING_ERRATIC, NEEDLE_FOLLOWS_LOADS, SOMETIMES)
    yield leads_to(READING_ERRATIC, WIGGLE_MOVES_NEEDLE, SOMETIMES)
    yield leads_to(READING_ERRATIC, SECOND_INSTRUMENT_DISAGREES, SOMETIMES)


# ---------------------------------------------------------------------------- the electric circuit


@rule(
    source=TWO_CP,
    catches=[
        case_of(GAUGE_READS_LOW, SENDER_WRONG_ON_AIR),
        case_of(NEEDLE_STEPS_AT_ONCE, SENDER_LEAKS_OIL),
        case_of(NEW_SENDER_CURED_IT),
        case_of(SWITCH_OPENS_WRONG),
    ],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SENDER_WRONG_ON_AIR, NEW_SENDER_CURED_IT])],
)
def sender_proved_by_itself(known: Known) -> Conclusions:
    """A sender that is wrong on known pressure, leaks into its plug or measures open has had it.

    On many cars it gives more low readings than the engine does.
    """
    yield leads_to(SENDER_FAULTY, READING_FALSE, MOSTLY)
    yield leads_to(SENDER_FAULTY, READING_ERRATIC, OFTEN)
    yield leads_to(SENDER_FAULTY, SENDER_WRONG_ON_AIR, MOSTLY)
    yield leads_to(SENDER_FAULTY, SWITCH_OPENS_WRONG, OFTEN)
    yield leads_to(SENDER_FAULTY, SENDER_OHMS_HIGH, SOMETIMES)
    yield leads_to(SENDER_FAULTY, SENDER_OHMS_LOW, SOMETIMES)
    yield leads_to(SENDER_FAULTY, SENDER_DAMAGED, SOMETIMES)
    yield leads_to(SENDER_FAULTY, SENDER_LEAKS_OIL, SOMETIMES)
    yield leads_to(SENDER_FAULTY, NEW_SENDER_CURED_IT, MOSTLY)


@rule(
    source=CP,
    catches=[case_of(NEEDLE_STUCK_AT_ONE_VALUE), case_of(GAUGE_READS_HIGH)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[GAUGE_READS_HIGH, NEEDLE_STUCK_AT_ONE_VALUE])],
)
def needle_frozen_or_at_full_scale(known: Known) -> Conclusions:
    """A dying sender freezes the needle, throws it to full scale, or shows pressure at rest."""
    yield leads_to(SENDER_FAULTY, NEEDLE_STUCK_AT_ONE_VALUE, SOMETIMES)
    yield leads_to(SENDER_FAULTY, NEEDLE_OFF_ZERO_AT_REST, SOMETIMES)
    yield leads_to(SENDER_FAULTY, GAUGE_READS_HIGH, SOMETIMES)
    yield leads_to(SENDER_FAULTY, SLOW_NEEDLE, SELDOM)
    yield leads_to(SENDER_FAULTY, INSTRUMENT_JUST_CHANGED, SELDOM)


@rule(
    source=FJE,
    catches=[
        case_of(NEEDLE_FOLLOWS_LOADS, WIGGLE_MOVES_NEEDLE),
        case_of(OTHER_GAUGES_ALSO_WRONG),
        case_of(GAUGE_READS_ZERO, CHANGED_AFTER_OTHER_WORK, SENDER_WIRE_BROKEN),
    ],
    spares=[case_of(lacks=[NEEDLE_FOLLOWS_LOADS, WIGGLE_MOVES_NEEDLE, OTHER_GAUGES_ALSO_WRONG])],
)
def needle_follows_wire_and_switches(known: Known) -> Conclusions:
    """A needle that answers bumps, switches or a hand on the wire has a bad contact behind it.

    Misleads when bumps make oil slosh: repeat it standing still.
    """
    yield leads_to(WIRING_GROUND_FAULT, READING_ERRATIC, MOSTLY)
    yield leads_to(WIRING_GROUND_FAULT, READING_FALSE, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, NEEDLE_FOLLOWS_LOADS, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, WIGGLE_MOVES_NEEDLE, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, OTHER_GAUGES_ALSO_WRONG, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(WIRING_GROUND_FAULT, GAUGE_READS_HIGH, SELDOM)


@rule(
    source=TEL,
    catches=[
        case_of(GAUGE_READS_ZERO, SENDER_WIRE_BROKEN, WIRE_OPEN_OR_SHORTED),
        case_of(LAMP_ON_WITH_WIRE_OFF),
        case_of(FUSE_BLOWN),
        case_of(GAUGE_SUPPLY_WRONG),
    ],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[WIRE_OPEN_OR_SHORTED, SENDER_CONNECTOR_LOOSE])],
)
def plug_wire_or_fuse_at_fault(known: Known) -> Conclusions:
    """A loose plug, broken wire or blown fuse is found by looking and by meter, not by spanner."""
    yield leads_to(WIRING_GROUND_FAULT, SENDER_CONNECTOR_LOOSE, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, SENDER_WIRE_BROKEN, SOMETIMES)
    yield leads_to(WIRING_GROUND_FAULT, SENDER_WIRE_OFF, SOMETIMES)
    yield leads_to(WIRING_GROUND_FAULT, WIRE_ON_WRONG_SENDER, SELDOM)
    yield leads_to(WIRING_GROUND_FAULT, WIRE_OPEN_OR_SHORTED, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, NEEDLE_IGNORES_LEAD_TEST, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, LAMP_ON_WITH_WIRE_OFF, SOMETIMES)
    yield leads_to(WIRING_GROUND_FAULT, GAUGE_SUPPLY_WRONG, SOMETIMES)
    yield leads_to(WIRING_GROUND_FAULT, FUSE_BLOWN, SELDOM)
    yield leads_to(WIRING_GROUND_FAULT, NEW_SENDER_CURED_IT, SELDOM)


@rule(
    source=FJE,
    catches=[
        case_of(GAUGE_READS_LOW, SENDER_GROUND_POOR),
        case_of(JUMPER_GROUND_CURES),
        case_of(TAPE_ON_SENDER_THREAD, SENDER_GROUND_POOR),
    ],
    spares=[case_of(TAPE_ON_SENDER_THREAD, lacks=[SENDER_GROUND_POOR, JUMPER_GROUND_CURES])],
)
def ground_lost_at_strap_or_thread(known: Known) -> Conclusions:
    """Tape on the thread or a bad strap adds ohms to the sender's own and shifts the reading.

    Misleads when the sender has its own ground wire: tape does it no harm.
    """
    yield leads_to(WIRING_GROUND_FAULT, SENDER_GROUND_POOR, OFTEN)
    yield leads_to(WIRING_GROUND_FAULT, JUMPER_GROUND_CURES, SOMETIMES)
    yield leads_to(WIRING_GROUND_FAULT, GROUND_STRAP_BAD, SOMETIMES)
    yield leads_to(WIRING_GROUND_FAULT, TAPE_ON_SENDER_THREAD, SOMETIMES)


@rule(
    source=TEL,
    catches=[
        case_of(PANEL_HALF_OR_DOUBLE),
        case_of(GAUGE_READS_LOW, INSTRUMENT_JUST_CHANGED, SENDER_NOT_FOR_GAUGE),
    ],
    spares=[case_of(GAUGE_READS_LOW, lacks=[PANEL_HALF_OR_DOUBLE, SENDER_NOT_FOR_GAUGE])],
)
def scale_off_by_half_or_double(known: Known) -> Conclusions:
    """A reading that is a fixed share of the true one comes from a sender of the wrong range."""
    yield leads_to(SENDER_MISMATCH, READING_FALSE, OFTEN)
    yield leads_to(SENDER_MISMATCH, GAUGE_READS_HIGH, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, PANEL_READS_TOO_HIGH, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, PANEL_HALF_OR_DOUBLE, MOSTLY)
    yield leads_to(SENDER_MISMATCH, SENDER_NOT_FOR_GAUGE, MOSTLY)
    yield leads_to(SENDER_MISMATCH, INSTRUMENT_JUST_CHANGED, OFTEN)
    yield leads_to(SENDER_MISMATCH, SENDER_OHMS_LOW, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, SENDER_OHMS_HIGH, SELDOM)
    yield leads_to(SENDER_MISMATCH, SWITCH_OPENS_WRONG, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, LOW_FROM_FIRST_START, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, NEW_SENDER_CURED_IT, OFTEN)


@rule(
    source=CP,
    catches=[
        case_of(GAUGE_READS_ZERO, NO_SENDER_FITTED),
        case_of(NONE_FROM_FIRST_START, SENDER_WIRE_OFF),
    ],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[NO_SENDER_FITTED, SENDER_WIRE_OFF])],
)
def instrument_connected_to_nothing(known: Known) -> Conclusions:
    """A plugged port or a wire that goes nowhere shows no pressure, or never warns of none."""
    yield leads_to(SENDER_NOT_FITTED, READING_FALSE, MOSTLY)
    yield leads_to(SENDER_NOT_FITTED, NO_SENDER_FITTED, OFTEN)
    yield leads_to(SENDER_NOT_FITTED, SENDER_WIRE_OFF, OFTEN)
    yield leads_to(SENDER_NOT_FITTED, WIRE_ON_WRONG_SENDER, SELDOM)
    yield leads_to(SENDER_NOT_FITTED, NONE_FROM_FIRST_START, OFTEN)
    yield leads_to(SENDER_NOT_FITTED, NEEDLE_STUCK_AT_ONE_VALUE, OFTEN)
    yield leads_to(SENDER_NOT_FITTED, CHANGED_AFTER_OTHER_WORK, OFTEN)
    yield leads_to(SENDER_NOT_FITTED, INSTRUMENT_JUST_CHANGED, SOMETIMES)
