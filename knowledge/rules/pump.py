"""What follows from a worn or leaking pump."""

from knowledge.causes.pump import (
    PUMP_BODY_CRACKED,
    PUMP_COVER_LOOSE,
    PUMP_COVER_SCORED,
    PUMP_GASKET_WRONG,
    PUMP_GEAR_WEAR,
    PUMP_IDLER_PIN_MIGRATED,
    PUMP_MOUNT_LEAK,
)
from knowledge.conditions import (
    AIR_IN_SUCTION,
    DELIVERY_REDUCED,
    OPEN_LEAK_INSIDE,
    PRESSURE_GONE,
    PUMP_DRIVE_ERRATIC,
    PUMP_NOT_TURNING,
    PUMP_SLIP,
    SUCTION_THROTTLED,
)
from knowledge.findings.behaviour import (
    CHANGED_WITH_NEW_PUMP,
    LOW_FROM_FIRST_START,
    NONE_FROM_FIRST_START,
)
from knowledge.findings.pressure import (
    CAPPED_LOW,
    DECLINED_OVER_MONTHS,
    FELL_SUDDENLY,
    GAUGE_READS_LOW,
    LOW_HOT_IDLE_GOOD_SPEED,
    NEVER_REACHES_SETTING_COLD,
)
from knowledge.findings.pump import (
    DRAWS_NOTHING_IN_BATH,
    EXTRA_PUMP_GASKET,
    GASKET_MASKS_PORT,
    MOUNT_FACE_NOT_FLAT,
    MOUNT_GASKET_BLOWN,
    MOUNT_GASKET_MISSING,
    PUMP_BOLTS_LOOSE,
    PUMP_CASTING_CRACKED,
    PUMP_HOUSING_BURST,
    PUMP_NOISE,
)
from knowledge.findings.pump_bench import (
    AIR_AT_PUMP_COVER,
    COVER_GROOVED,
    COVER_SCREWS_LOOSE,
    COVER_WARPED,
    END_CLEARANCE_WIDE,
    GEAR_BACKLASH_WIDE,
    GEARS_WORN_OUT,
    IDLER_PIN_OUT,
    PUMP_SCORED_SEEN,
    PUMP_SHAFT_PLAY,
    PUMP_TURNS_ROUGHLY,
    ROTOR_TIP_WIDE,
    SIDE_CLEARANCE_WIDE,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import EB09, GMI, HB01, HB07
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.PUMP)

# -------------------------------------------------------------------------------- wear


@rule(
    source=EB09,
    catches=[
        case_of(LOW_HOT_IDLE_GOOD_SPEED, END_CLEARANCE_WIDE),
        case_of(DECLINED_OVER_MONTHS, GEARS_WORN_OUT),
        case_of(GAUGE_READS_LOW, SIDE_CLEARANCE_WIDE, PUMP_SHAFT_PLAY),
    ],
    spares=[
        case_of(LOW_HOT_IDLE_GOOD_SPEED, lacks=[END_CLEARANCE_WIDE, GEARS_WORN_OUT]),
        case_of(GAUGE_READS_LOW, lacks=[SIDE_CLEARANCE_WIDE, GEARS_WORN_OUT]),
    ],
)
def wide_clearances_all_through_the_pump(known: Known) -> Conclusions:
    """A pump worn all through slips oil back inside: low at hot idle, nearly right with revs.

    It came over months or years, and such a pump is slow to draw after standing. Misleads
    when the bearings are just as worn: a new pump then helps little.
    """
    yield leads_to(PUMP_GEAR_WEAR, PUMP_SLIP, ALWAYS)
    yield leads_to(PUMP_GEAR_WEAR, DECLINED_OVER_MONTHS, OFTEN)
    yield leads_to(PUMP_GEAR_WEAR, GEARS_WORN_OUT, MOSTLY)
    yield leads_to(PUMP_GEAR_WEAR, END_CLEARANCE_WIDE, MOSTLY)
    yield leads_to(PUMP_GEAR_WEAR, SIDE_CLEARANCE_WIDE, OFTEN)
    yield leads_to(PUMP_GEAR_WEAR, ROTOR_TIP_WIDE, OFTEN)
    yield leads_to(PUMP_GEAR_WEAR, GEAR_BACKLASH_WIDE, SOMETIMES)
    yield leads_to(PUMP_GEAR_WEAR, PUMP_SHAFT_PLAY, OFTEN)
    yield leads_to(PUMP_GEAR_WEAR, COVER_GROOVED, SOMETIMES)
    yield leads_to(PUMP_GEAR_WEAR, PUMP_NOISE, SELDOM)
    yield leads_to(PUMP_GEAR_WEAR, DRAWS_NOTHING_IN_BATH, SOMETIMES)


@rule(
    source=GMI,
    catches=[case_of(LOW_HOT_IDLE_GOOD_SPEED, COVER_GROOVED), case_of(COVER_GROOVED)],
    spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED, lacks=[COVER_GROOVED])],
)
def groove_in_the_end_plate(known: Known) -> Conclusions:
    """A groove worn into the cover adds to the end clearance: the same picture as a worn pump."""
    yield leads_to(PUMP_COVER_SCORED, PUMP_SLIP, MOSTLY)
    yield leads_to(PUMP_COVER_SCORED, COVER_GROOVED, ALWAYS)
    yield leads_to(PUMP_COVER_SCORED, END_CLEARANCE_WIDE, OFTEN)
    yield leads_to(PUMP_COVER_SCORED, DECLINED_OVER_MONTHS, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(COVER_WARPED), case_of(NEVER_REACHES_SETTING_COLD, COVER_SCREWS_LOOSE)],
    spares=[case_of(NEVER_REACHES_SETTING_COLD, lacks=[COVER_WARPED, COVER_SCREWS_LOOSE])],
)
def cover_that_gapes_under_pressure(known: Known) -> Conclusions:
    """A thin, warped or slack cover opens as pressure rises: the relief setting is never reached.

    The same gap may draw air on the inlet side. A thin or flexing cover with gaps at its
    joint is reason enough to renew it.
    """
    yield leads_to(PUMP_COVER_LOOSE, PUMP_SLIP, OFTEN)
    yield leads_to(PUMP_COVER_LOOSE, DELIVERY_REDUCED, SOMETIMES)
    yield leads_to(PUMP_COVER_LOOSE, AIR_IN_SUCTION, SOMETIMES)
    yield leads_to(PUMP_COVER_LOOSE, NEVER_REACHES_SETTING_COLD, OFTEN)
    yield leads_to(PUMP_COVER_LOOSE, CAPPED_LOW, SOMETIMES)
    yield leads_to(PUMP_COVER_LOOSE, FELL_SUDDENLY, SELDOM)
    yield leads_to(PUMP_COVER_LOOSE, COVER_WARPED, MOSTLY)
    yield leads_to(PUMP_COVER_LOOSE, COVER_SCREWS_LOOSE, OFTEN)
    yield leads_to(PUMP_COVER_LOOSE, AIR_AT_PUMP_COVER, OFTEN)
    yield leads_to(PUMP_COVER_LOOSE, DRAWS_NOTHING_IN_BATH, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(IDLER_PIN_OUT), case_of(FELL_SUDDENLY, IDLER_PIN_OUT)],
    spares=[case_of(FELL_SUDDENLY, lacks=[IDLER_PIN_OUT])],
)
def pin_out_of_its_bore(known: Known) -> Conclusions:
    """An idler pin that walks out lets its gear tilt and score, slip oil, or jam the pump."""
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, PUMP_SLIP, OFTEN)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, PUMP_NOT_TURNING, SOMETIMES)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, PUMP_DRIVE_ERRATIC, SOMETIMES)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, OPEN_LEAK_INSIDE, SOMETIMES)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, IDLER_PIN_OUT, ALWAYS)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, PUMP_SCORED_SEEN, OFTEN)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, PUMP_TURNS_ROUGHLY, OFTEN)
    yield leads_to(PUMP_IDLER_PIN_MIGRATED, COVER_GROOVED, SOMETIMES)


# ---------------------------------------------------------------------- joint and casting


@rule(
    source=HB01,
    catches=[
        case_of(GAUGE_READS_LOW, MOUNT_GASKET_BLOWN),
        case_of(MOUNT_GASKET_MISSING),
        case_of(LOW_FROM_FIRST_START, MOUNT_FACE_NOT_FLAT),
    ],
    spares=[
        case_of(
            LOW_FROM_FIRST_START,
            lacks=[MOUNT_GASKET_BLOWN, MOUNT_GASKET_MISSING, MOUNT_FACE_NOT_FLAT],
        )
    ],
)
def oil_escapes_between_pump_and_block(known: Known) -> Conclusions:
    """A leak between pump and block pours oil back into the sump, and nothing shows outside."""
    yield leads_to(PUMP_MOUNT_LEAK, OPEN_LEAK_INSIDE, ALWAYS)
    yield leads_to(PUMP_MOUNT_LEAK, AIR_IN_SUCTION, SELDOM)
    yield leads_to(PUMP_MOUNT_LEAK, LOW_FROM_FIRST_START, OFTEN)
    yield leads_to(PUMP_MOUNT_LEAK, CHANGED_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(PUMP_MOUNT_LEAK, FELL_SUDDENLY, SELDOM)
    yield leads_to(PUMP_MOUNT_LEAK, MOUNT_GASKET_BLOWN, OFTEN)
    yield leads_to(PUMP_MOUNT_LEAK, MOUNT_GASKET_MISSING, SOMETIMES)
    yield leads_to(PUMP_MOUNT_LEAK, MOUNT_FACE_NOT_FLAT, SOMETIMES)
    yield leads_to(PUMP_MOUNT_LEAK, PUMP_BOLTS_LOOSE, SOMETIMES)


@rule(
    source=HB07,
    catches=[
        case_of(NONE_FROM_FIRST_START, GASKET_MASKS_PORT),
        case_of(CHANGED_WITH_NEW_PUMP, EXTRA_PUMP_GASKET),
    ],
    spares=[case_of(CHANGED_WITH_NEW_PUMP, lacks=[GASKET_MASKS_PORT, EXTRA_PUMP_GASKET])],
)
def port_covered_or_gears_lifted(known: Known) -> Conclusions:
    """A gasket that masks a port, or one too many under the cover: low or none since it went in."""
    yield leads_to(PUMP_GASKET_WRONG, DELIVERY_REDUCED, MOSTLY)
    yield leads_to(PUMP_GASKET_WRONG, PUMP_SLIP, SOMETIMES)
    yield leads_to(PUMP_GASKET_WRONG, SUCTION_THROTTLED, SOMETIMES)
    yield leads_to(PUMP_GASKET_WRONG, PRESSURE_GONE, SOMETIMES)
    yield leads_to(PUMP_GASKET_WRONG, LOW_FROM_FIRST_START, OFTEN)
    yield leads_to(PUMP_GASKET_WRONG, NONE_FROM_FIRST_START, SOMETIMES)
    yield leads_to(PUMP_GASKET_WRONG, CHANGED_WITH_NEW_PUMP, OFTEN)
    yield leads_to(PUMP_GASKET_WRONG, GASKET_MASKS_PORT, OFTEN)
    yield leads_to(PUMP_GASKET_WRONG, EXTRA_PUMP_GASKET, SOMETIMES)
    yield leads_to(PUMP_GASKET_WRONG, END_CLEARANCE_WIDE, SOMETIMES)
    yield leads_to(PUMP_GASKET_WRONG, MOUNT_GASKET_BLOWN, SELDOM)


@rule(
    source=GMI,
    catches=[case_of(FELL_SUDDENLY, PUMP_HOUSING_BURST), case_of(PUMP_CASTING_CRACKED)],
    spares=[case_of(FELL_SUDDENLY, lacks=[PUMP_HOUSING_BURST, PUMP_CASTING_CRACKED])],
)
def casting_gives_way(known: Known) -> Conclusions:
    """A cracked or burst pump casting lets its pressure straight into the sump."""
    yield leads_to(PUMP_BODY_CRACKED, OPEN_LEAK_INSIDE, MOSTLY)
    yield leads_to(PUMP_BODY_CRACKED, AIR_IN_SUCTION, SOMETIMES)
    yield leads_to(PUMP_BODY_CRACKED, PRESSURE_GONE, SOMETIMES)
    yield leads_to(PUMP_BODY_CRACKED, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(PUMP_BODY_CRACKED, PUMP_CASTING_CRACKED, MOSTLY)
    yield leads_to(PUMP_BODY_CRACKED, PUMP_HOUSING_BURST, OFTEN)
    yield leads_to(PUMP_BODY_CRACKED, DRAWS_NOTHING_IN_BATH, SOMETIMES)
