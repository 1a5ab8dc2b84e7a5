"""What a person can report without naming the part: links from the usual causes."""

from knowledge.causes.bearings import BEARING_WIPED, BEARING_WRONG_SIZE, OVERLOAD_LUGGING
from knowledge.causes.delivery import GALLERY_BLOCKED, GALLERY_PLUG_MISSING, GALLERY_PLUG_TOO_DEEP
from knowledge.causes.instrument import (
    GAUGE_FAULTY,
    SENDER_FAULTY,
    SENDER_MISMATCH,
    WIRING_GROUND_FAULT,
)
from knowledge.causes.pump import (
    PUMP_BODY_CRACKED,
    PUMP_COVER_SCORED,
    PUMP_DEBRIS_LOCK,
    PUMP_DRIVE_BROKEN,
    PUMP_DRIVE_SLIP,
    PUMP_GEAR_WEAR,
    PUMP_IDLER_PIN_MIGRATED,
    PUMP_NOT_PRIMED,
    PUMP_OVERSIZED,
)
from knowledge.causes.relief import (
    RELIEF_BORE_SCORED,
    RELIEF_DEBRIS,
    RELIEF_RETURN_PLUGGED,
    RELIEF_SPRING_WRONG,
    RELIEF_STUCK_CLOSED,
    RELIEF_STUCK_OPEN,
)
from knowledge.causes.suction import PICKUP_TUBE_LOOSE
from knowledge.causes.topend import LIFTER_BORE_LEAK
from knowledge.conditions import (
    AIR_IN_SUCTION,
    CLEARANCES_WIDE,
    ENGINE_FAILED,
    OIL_THIN,
    OPEN_LEAK_INSIDE,
    PUMP_DRIVE_ERRATIC,
    PUMP_DRY,
    PUMP_NOT_TURNING,
    PUMP_SCORED,
    PUMP_SLIP,
    READING_ERRATIC,
    READING_FALSE,
    RELIEF_BLEEDS,
    SUCTION_THROTTLED,
)
from knowledge.findings.behaviour import (
    CHANGED_WITH_NEW_PUMP,
    NO_BETTER_WITH_NEW_PUMP,
    NONE_FROM_FIRST_START,
)
from knowledge.findings.instrument import (
    PANEL_READS_TOO_LOW,
    RAN_LONG_WITHOUT_DISTRESS,
    RESEATING_CURED_IT,
)
from knowledge.findings.pressure import (
    GAUGE_READS_HIGH,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    GOOD_COLD_LOW_HOT,
    LAMP_COMES_ON,
)
from knowledge.findings.pump_drive import (
    BEGAN_AFTER_REVVING_HARD,
    DRIVE_FOUND_FAILED,
    GONE_AT_THE_NEXT_START,
    PIECE_THROUGH_PUMP_COVER,
    PUMP_FOUND_FAILED,
    STEPPED_DOWN_AND_STAYED,
)
from knowledge.findings.relief import (
    HIGH_FROM_FIRST_START,
    RELIEF_FOUND_STUCK,
    STIFFER_SPRING_NO_BETTER,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import DTN, FBE, HB01, MON, NE1, NE2, OLD, PF, TEL, V8F
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, RARELY, SELDOM, SOMETIMES, Station

instrument = rules_of(Station.INSTRUMENT)
pump = rules_of(Station.PUMP)
relief = rules_of(Station.RELIEF)


@instrument(
    source=TEL,
    catches=[case_of(PANEL_READS_TOO_LOW)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[PANEL_READS_TOO_LOW])],
)
def panel_below_the_trusted_gauge(known: Known) -> Conclusions:
    """A panel that reads well below a trusted gauge lies: look at sender, wire and gauge."""
    yield leads_to(READING_FALSE, PANEL_READS_TOO_LOW, MOSTLY)
    yield leads_to(GAUGE_FAULTY, PANEL_READS_TOO_LOW, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, PANEL_READS_TOO_LOW, OFTEN)


@instrument(
    source=CP,
    catches=[case_of(RESEATING_CURED_IT)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[RESEATING_CURED_IT])],
)
def back_when_reseated(known: Known) -> Conclusions:
    """A reading that comes back when the connector is refitted was lost in the connector."""
    yield leads_to(WIRING_GROUND_FAULT, RESEATING_CURED_IT, OFTEN)
    yield leads_to(SENDER_FAULTY, RESEATING_CURED_IT, SELDOM)


@instrument(
    source=NE2,
    catches=[case_of(LAMP_COMES_ON, RAN_LONG_WITHOUT_DISTRESS)],
    spares=[case_of(LAMP_COMES_ON, lacks=[RAN_LONG_WITHOUT_DISTRESS])],
)
def runs_on_with_the_warning(known: Known) -> Conclusions:
    """An engine that runs long under a warning without harm has its pressure; the warning lies."""
    yield leads_to(READING_FALSE, RAN_LONG_WITHOUT_DISTRESS, OFTEN)
    yield leads_to(READING_ERRATIC, RAN_LONG_WITHOUT_DISTRESS, OFTEN)


@pump(
    source=NE1,
    catches=[case_of(DRIVE_FOUND_FAILED)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[DRIVE_FOUND_FAILED])],
)
def drive_in_pieces(known: Known) -> Conclusions:
    """A drive found in pieces stopped the pump; ask what jammed it."""
    yield leads_to(PUMP_DRIVE_BROKEN, DRIVE_FOUND_FAILED, MOSTLY)
    yield leads_to(PUMP_DEBRIS_LOCK, DRIVE_FOUND_FAILED, OFTEN)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, DRIVE_FOUND_FAILED, OFTEN)
    yield leads_to(PUMP_DRIVE_SLIP, DRIVE_FOUND_FAILED, SOMETIMES)
    yield leads_to(PUMP_OVERSIZED, DRIVE_FOUND_FAILED, SELDOM)
    yield leads_to(ENGINE_FAILED, DRIVE_FOUND_FAILED, RARELY)


@pump(
    source=HB01,
    catches=[case_of(PUMP_FOUND_FAILED)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[PUMP_FOUND_FAILED])],
)
def pump_past_use(known: Known) -> Conclusions:
    """A pump found failed is a root cause only if nothing else ground it up."""
    yield leads_to(PUMP_GEAR_WEAR, PUMP_FOUND_FAILED, OFTEN)
    yield leads_to(PUMP_BODY_CRACKED, PUMP_FOUND_FAILED, MOSTLY)
    yield leads_to(PUMP_DEBRIS_LOCK, PUMP_FOUND_FAILED, OFTEN)
    yield leads_to(PUMP_COVER_SCORED, PUMP_FOUND_FAILED, OFTEN)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, PUMP_FOUND_FAILED, OFTEN)
    yield leads_to(PUMP_DRIVE_BROKEN, PUMP_FOUND_FAILED, SOMETIMES)
    yield leads_to(PUMP_SCORED, PUMP_FOUND_FAILED, SOMETIMES)


@pump(
    source=CP,
    catches=[case_of(PIECE_THROUGH_PUMP_COVER)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[PIECE_THROUGH_PUMP_COVER])],
)
def broken_out_of_the_pump(known: Known) -> Conclusions:
    """What breaks out through the pump's cover came loose inside it: a pin, a gear, a jammed piece."""
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, PIECE_THROUGH_PUMP_COVER, OFTEN)
    yield leads_to(PUMP_DEBRIS_LOCK, PIECE_THROUGH_PUMP_COVER, SOMETIMES)
    yield leads_to(PUMP_BODY_CRACKED, PIECE_THROUGH_PUMP_COVER, SOMETIMES)


@pump(
    source=CP,
    catches=[case_of(GONE_AT_THE_NEXT_START, GAUGE_READS_ZERO)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[GONE_AT_THE_NEXT_START])],
)
def there_when_stopped_gone_when_started(known: Known) -> Conclusions:
    """There when stopped, gone at the next start: drive, prime or a valve that stayed open."""
    yield leads_to(PUMP_NOT_TURNING, GONE_AT_THE_NEXT_START, SOMETIMES)
    yield leads_to(PUMP_DRY, GONE_AT_THE_NEXT_START, SOMETIMES)
    yield leads_to(RELIEF_STUCK_OPEN, GONE_AT_THE_NEXT_START, SOMETIMES)
    yield leads_to(READING_FALSE, GONE_AT_THE_NEXT_START, SELDOM)
    yield leads_to(AIR_IN_SUCTION, GONE_AT_THE_NEXT_START, SELDOM)


@pump(
    source=CP,
    catches=[case_of(BEGAN_AFTER_REVVING_HARD)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[BEGAN_AFTER_REVVING_HARD])],
)
def after_revving_to_the_limit(known: Known) -> Conclusions:
    """Trouble straight after revving to the limit: castings, drives and bearings give way there."""
    yield leads_to(PUMP_BODY_CRACKED, BEGAN_AFTER_REVVING_HARD, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BROKEN, BEGAN_AFTER_REVVING_HARD, SELDOM)
    yield leads_to(OVERLOAD_LUGGING, BEGAN_AFTER_REVVING_HARD, SOMETIMES)
    yield leads_to(PICKUP_TUBE_LOOSE, BEGAN_AFTER_REVVING_HARD, SELDOM)
    yield leads_to(LIFTER_BORE_LEAK, BEGAN_AFTER_REVVING_HARD, SELDOM)


@pump(
    source=DTN,
    catches=[case_of(STEPPED_DOWN_AND_STAYED)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[STEPPED_DOWN_AND_STAYED])],
)
def one_step_down(known: Known) -> Conclusions:
    """One step down that stays: something let go, lodged or broke contact at that moment."""
    yield leads_to(RELIEF_DEBRIS, STEPPED_DOWN_AND_STAYED, SOMETIMES)
    yield leads_to(PUMP_DRIVE_ERRATIC, STEPPED_DOWN_AND_STAYED, SOMETIMES)
    yield leads_to(PUMP_DRIVE_BROKEN, STEPPED_DOWN_AND_STAYED, SELDOM)
    yield leads_to(READING_FALSE, STEPPED_DOWN_AND_STAYED, SOMETIMES)
    yield leads_to(BEARING_WIPED, STEPPED_DOWN_AND_STAYED, SOMETIMES)
    yield leads_to(GALLERY_PLUG_MISSING, STEPPED_DOWN_AND_STAYED, SELDOM)


@pump(
    source=MON,
    catches=[case_of(GAUGE_READS_LOW, NO_BETTER_WITH_NEW_PUMP)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[NO_BETTER_WITH_NEW_PUMP])],
)
def new_pump_changed_nothing(known: Known) -> Conclusions:
    """A new pump that changed nothing clears the pump: look at what leaks or starves beside it."""
    yield leads_to(CLEARANCES_WIDE, NO_BETTER_WITH_NEW_PUMP, OFTEN)
    yield leads_to(OPEN_LEAK_INSIDE, NO_BETTER_WITH_NEW_PUMP, OFTEN)
    yield leads_to(OIL_THIN, NO_BETTER_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, NO_BETTER_WITH_NEW_PUMP, SELDOM)
    yield leads_to(SUCTION_THROTTLED, NO_BETTER_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(RELIEF_BLEEDS, NO_BETTER_WITH_NEW_PUMP, SELDOM)


@relief(
    source=PF,
    catches=[case_of(GAUGE_READS_LOW, STIFFER_SPRING_NO_BETTER)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[STIFFER_SPRING_NO_BETTER])],
)
def spring_has_no_say(known: Known) -> Conclusions:
    """Below its setting the relief valve has no say: a stiffer spring that helps nothing clears it."""
    yield leads_to(CLEARANCES_WIDE, STIFFER_SPRING_NO_BETTER, OFTEN)
    yield leads_to(PUMP_SLIP, STIFFER_SPRING_NO_BETTER, OFTEN)
    yield leads_to(OPEN_LEAK_INSIDE, STIFFER_SPRING_NO_BETTER, OFTEN)
    yield leads_to(OIL_THIN, STIFFER_SPRING_NO_BETTER, SOMETIMES)
    yield leads_to(SUCTION_THROTTLED, STIFFER_SPRING_NO_BETTER, SOMETIMES)
    yield leads_to(READING_FALSE, STIFFER_SPRING_NO_BETTER, SOMETIMES)
    yield leads_to(RELIEF_BLEEDS, STIFFER_SPRING_NO_BETTER, SELDOM)


@relief(
    source=FBE,
    catches=[case_of(GAUGE_READS_LOW, RELIEF_FOUND_STUCK)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[RELIEF_FOUND_STUCK])],
)
def valve_gripped_where_it_stood(known: Known) -> Conclusions:
    """A relief valve found gripped in its bore was stuck open where pressure was low, shut where it was high."""
    yield leads_to(RELIEF_STUCK_OPEN, RELIEF_FOUND_STUCK, ALWAYS)
    yield leads_to(RELIEF_STUCK_CLOSED, RELIEF_FOUND_STUCK, ALWAYS)
    yield leads_to(RELIEF_BORE_SCORED, RELIEF_FOUND_STUCK, SOMETIMES)
    yield leads_to(RELIEF_DEBRIS, RELIEF_FOUND_STUCK, SOMETIMES)


@relief(
    source=CP,
    catches=[case_of(HIGH_FROM_FIRST_START)],
    spares=[case_of(GAUGE_READS_HIGH, lacks=[HIGH_FROM_FIRST_START])],
)
def too_high_since_the_rebuild(known: Known) -> Conclusions:
    """Too high ever since a rebuild: a spring, a plug or a passage was put in wrong."""
    yield leads_to(RELIEF_RETURN_PLUGGED, HIGH_FROM_FIRST_START, MOSTLY)
    yield leads_to(RELIEF_SPRING_WRONG, HIGH_FROM_FIRST_START, OFTEN)
    yield leads_to(RELIEF_STUCK_CLOSED, HIGH_FROM_FIRST_START, SOMETIMES)
    yield leads_to(BEARING_WRONG_SIZE, HIGH_FROM_FIRST_START, SELDOM)
    yield leads_to(GALLERY_BLOCKED, HIGH_FROM_FIRST_START, SOMETIMES)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, HIGH_FROM_FIRST_START, SOMETIMES)


@pump(
    source=OLD,
    catches=[case_of(CHANGED_WITH_NEW_PUMP, NONE_FROM_FIRST_START)],
    spares=[case_of(NONE_FROM_FIRST_START, lacks=[CHANGED_WITH_NEW_PUMP])],
)
def opening_a_pump_loses_its_prime(known: Known) -> Conclusions:
    """A pump that was renewed or opened has lost its prime, and with it sometimes everything."""
    yield leads_to(PUMP_NOT_PRIMED, CHANGED_WITH_NEW_PUMP, OFTEN)


@pump(
    source=V8F,
    catches=[case_of(GAUGE_READS_ZERO, STEPPED_DOWN_AND_STAYED)],
    spares=[case_of(GAUGE_READS_LOW, GOOD_COLD_LOW_HOT)],
)
def drive_that_skips_before_it_lets_go(known: Known) -> Conclusions:
    """A drive often skips and sheds filings before it lets go."""
    yield leads_to(PUMP_DRIVE_BROKEN, PUMP_DRIVE_ERRATIC, SOMETIMES)
