"""What follows from what the last hand inside left behind."""

from knowledge.causes.assembly import (
    ASSEMBLY_LUBE_CLOG,
    BEARING_OIL_HOLE_MISALIGNED,
    CAP_SWAPPED,
    DIRT_IN_ASSEMBLY,
    FASTENER_LOOSE_INSIDE,
    SEALANT_DEBRIS,
    TIMING_GEAR_SHEDDING,
)
from knowledge.causes.bearings import BEARING_WRONG_SIZE
from knowledge.causes.delivery import GALLERY_BLOCKED
from knowledge.causes.pump import PUMP_WRONG_PART
from knowledge.causes.relief import RELIEF_SPRING_WRONG
from knowledge.conditions import (
    AIR_IN_SUCTION,
    BEARINGS_DAMAGED,
    BRANCH_DRY,
    CLEARANCES_WIDE,
    DIRT_IN_OIL,
    FLOW_RESTRICTED,
    JOURNAL_DRY,
    OPEN_LEAK_INSIDE,
    PRESSURE_GONE,
    RELIEF_BLEEDS,
    SUCTION_THROTTLED,
)
from knowledge.engines.features import CHAIN_TENSIONERS, PLASTIC_TIMING_GEAR
from knowledge.findings.assembly import (
    CAP_BOLTS_SLACK,
    CAPS_MIXED,
    FASTENER_FOUND_LOOSE,
    FOREIGN_PART_FITTED,
    LEFTOVER_FOUND,
    PIECE_FOUND_INSIDE,
)
from knowledge.findings.bearings import (
    BEARINGS_FAILED_AGAIN,
    HARD_TO_TURN,
    MAIN_BEARING_SHIFTED,
    ONE_BEARING_WIPED,
    SHELL_BACKS_SHINY,
    SHELL_HOLE_MISMATCH,
    SHELLS_EMBEDDED_DIRT,
    SHELLS_WIPED,
    WEAR_AT_PARTING_LINES,
    WRONG_SHELLS_FITTED,
)
from knowledge.findings.bearings_bench import MAIN_CLEARANCE_TOO_WIDE
from knowledge.findings.behaviour import LOW_FIRST_MINUTES_THEN_GOOD, NOTHING_WARNED
from knowledge.findings.debris import HARD_CHIPS
from knowledge.findings.history import EARLIER_BREAKAGE
from knowledge.findings.pressure import FALLS_AS_REVS_RISE, FELL_SUDDENLY, LOW_HOT_IDLE_GOOD_SPEED
from knowledge.findings.suction_debris import (
    PLASTIC_ON_SCREEN,
    SEALER_IN_SUMP,
    SEALER_ON_SCREEN,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Known,
    cannot_be,
    case_of,
    is_present,
    leads_to,
    more_common,
    rules_of,
)
from knowledge.sources import CEB2, JIO, LTK, PE17, RUS, RV8, THK
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    Severity,
    Shift,
    Station,
)

rule = rules_of(Station.ASSEMBLY)


@rule(
    source=CEB2,
    catches=[case_of(HARD_CHIPS), case_of(SHELLS_EMBEDDED_DIRT, HARD_CHIPS)],
    spares=[case_of(SHELLS_WIPED, lacks=[HARD_CHIPS, SHELLS_EMBEDDED_DIRT])],
)
def grit_from_the_build_goes_round(known: Known) -> Conclusions:
    """Grit or pieces left in at the build go round with the oil and show in bearings within hours."""
    yield leads_to(DIRT_IN_ASSEMBLY, DIRT_IN_OIL, ALWAYS)
    yield leads_to(DIRT_IN_ASSEMBLY, HARD_CHIPS, OFTEN)
    yield leads_to(DIRT_IN_ASSEMBLY, LEFTOVER_FOUND, SOMETIMES)
    yield leads_to(DIRT_IN_ASSEMBLY, PIECE_FOUND_INSIDE, SELDOM)
    yield leads_to(DIRT_IN_ASSEMBLY, BEARINGS_FAILED_AGAIN, SOMETIMES)


@rule(
    source=LTK,
    catches=[case_of(SHELL_HOLE_MISMATCH), case_of(NOTHING_WARNED, ONE_BEARING_WIPED)],
    spares=[case_of(ONE_BEARING_WIPED, lacks=[SHELL_HOLE_MISMATCH])],
)
def hole_that_meets_no_oilway(known: Known) -> Conclusions:
    """A bearing whose hole meets no oilway runs dry behind a good gauge."""
    yield leads_to(BEARING_OIL_HOLE_MISALIGNED, JOURNAL_DRY, ALWAYS)
    yield leads_to(BEARING_OIL_HOLE_MISALIGNED, SHELL_HOLE_MISMATCH, ALWAYS)
    yield leads_to(BEARING_OIL_HOLE_MISALIGNED, ONE_BEARING_WIPED, OFTEN)
    yield leads_to(BEARING_OIL_HOLE_MISALIGNED, BEARINGS_FAILED_AGAIN, SOMETIMES)


@rule(
    source=RUS,
    catches=[case_of(CAPS_MIXED), case_of(WEAR_AT_PARTING_LINES)],
    spares=[case_of(SHELLS_WIPED, lacks=[CAPS_MIXED, WEAR_AT_PARTING_LINES])],
)
def worn_beside_the_parting_lines(known: Known) -> Conclusions:
    """Wear beside the parting lines on opposite sides: a cap sits where it does not belong."""
    yield leads_to(CAP_SWAPPED, BEARINGS_DAMAGED, OFTEN)
    yield leads_to(CAP_SWAPPED, CLEARANCES_WIDE, SOMETIMES)
    yield leads_to(CAP_SWAPPED, CAPS_MIXED, MOSTLY)
    yield leads_to(CAP_SWAPPED, WEAR_AT_PARTING_LINES, MOSTLY)
    yield leads_to(CAP_SWAPPED, SHELL_BACKS_SHINY, SOMETIMES)
    yield leads_to(CAP_SWAPPED, HARD_TO_TURN, OFTEN)
    yield leads_to(CAP_SWAPPED, CAP_BOLTS_SLACK, SOMETIMES)
    yield leads_to(CAP_SWAPPED, ONE_BEARING_WIPED, SOMETIMES)
    yield leads_to(CAP_SWAPPED, MAIN_CLEARANCE_TOO_WIDE, SOMETIMES)


@rule(
    source=RV8,
    catches=[
        case_of(FALLS_AS_REVS_RISE, SEALER_ON_SCREEN),
        case_of(FALLS_AS_REVS_RISE, SEALER_IN_SUMP),
    ],
    spares=[case_of(FALLS_AS_REVS_RISE, lacks=[SEALER_ON_SCREEN, SEALER_IN_SUMP])],
)
def sealer_goes_where_the_oil_goes(known: Known) -> Conclusions:
    """Loose sealer goes where the oil goes: mesh first, then relief seat, filter or an oilway."""
    yield leads_to(SEALANT_DEBRIS, SUCTION_THROTTLED, MOSTLY)
    yield leads_to(SEALANT_DEBRIS, RELIEF_BLEEDS, SOMETIMES)
    yield leads_to(SEALANT_DEBRIS, FLOW_RESTRICTED, SELDOM)
    yield leads_to(SEALANT_DEBRIS, BRANCH_DRY, SOMETIMES)
    yield leads_to(SEALANT_DEBRIS, JOURNAL_DRY, SOMETIMES)


@rule(
    source=THK,
    catches=[case_of(LOW_FIRST_MINUTES_THEN_GOOD)],
    spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED, lacks=[LOW_FIRST_MINUTES_THEN_GOOD])],
)
def low_until_the_grease_is_gone(known: Known) -> Conclusions:
    """Slow and low for a new engine's first minutes, then good for good: build grease washing out."""
    yield leads_to(ASSEMBLY_LUBE_CLOG, SUCTION_THROTTLED, OFTEN)
    yield leads_to(ASSEMBLY_LUBE_CLOG, FLOW_RESTRICTED, SOMETIMES)
    yield leads_to(ASSEMBLY_LUBE_CLOG, LOW_FIRST_MINUTES_THEN_GOOD, MOSTLY)


@rule(
    source=JIO,
    catches=[
        case_of(FALLS_AS_REVS_RISE, PLASTIC_ON_SCREEN),
        case_of(PLASTIC_ON_SCREEN, EARLIER_BREAKAGE),
    ],
    spares=[case_of(FALLS_AS_REVS_RISE, lacks=[PLASTIC_ON_SCREEN])],
)
def crumbs_left_from_an_old_repair(known: Known) -> Conclusions:
    """Crumbs of teeth or guides cover the screen, even years after the gear was renewed."""
    yield leads_to(TIMING_GEAR_SHEDDING, SUCTION_THROTTLED, MOSTLY)
    yield leads_to(TIMING_GEAR_SHEDDING, RELIEF_BLEEDS, SELDOM)


@rule(
    source=JIO,
    catches=[case_of(lacks=[PLASTIC_TIMING_GEAR, CHAIN_TENSIONERS])],
    spares=[case_of(lacks=[PLASTIC_TIMING_GEAR]), case_of(PLASTIC_TIMING_GEAR)],
)
def no_plastic_to_shed(known: Known) -> Conclusions:
    """An engine with neither plastic timing teeth nor chain guides cannot shed them."""
    if known.lacks(PLASTIC_TIMING_GEAR) and known.lacks(CHAIN_TENSIONERS):
        yield cannot_be(TIMING_GEAR_SHEDDING)


@rule(
    source=JIO,
    catches=[case_of(PLASTIC_TIMING_GEAR)],
    spares=[case_of(lacks=[PLASTIC_TIMING_GEAR])],
)
def family_known_for_plastic_teeth(known: Known) -> Conclusions:
    """In a family known for plastic or fibre timing teeth, shed teeth are much more common."""
    if known.has(PLASTIC_TIMING_GEAR):
        yield more_common(TIMING_GEAR_SHEDDING, Shift.STRONG_UP)


@rule(
    source=PE17,
    catches=[case_of(FASTENER_FOUND_LOOSE), case_of(FELL_SUDDENLY, CAP_BOLTS_SLACK)],
    spares=[case_of(FELL_SUDDENLY, lacks=[FASTENER_FOUND_LOOSE, CAP_BOLTS_SLACK])],
)
def bolt_that_was_never_tight(known: Known) -> Conclusions:
    """A bolt never tight or never locked: a joint leaks, a bearing shifts, or the part drops off."""
    yield leads_to(FASTENER_LOOSE_INSIDE, OPEN_LEAK_INSIDE, OFTEN)
    yield leads_to(FASTENER_LOOSE_INSIDE, AIR_IN_SUCTION, SOMETIMES)
    yield leads_to(FASTENER_LOOSE_INSIDE, CLEARANCES_WIDE, SOMETIMES)
    yield leads_to(FASTENER_LOOSE_INSIDE, BEARINGS_DAMAGED, SOMETIMES)
    yield leads_to(FASTENER_LOOSE_INSIDE, PRESSURE_GONE, SELDOM)
    yield leads_to(FASTENER_LOOSE_INSIDE, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(FASTENER_LOOSE_INSIDE, FASTENER_FOUND_LOOSE, MOSTLY)
    yield leads_to(FASTENER_LOOSE_INSIDE, CAP_BOLTS_SLACK, OFTEN)
    yield leads_to(FASTENER_LOOSE_INSIDE, PIECE_FOUND_INSIDE, OFTEN)
    yield leads_to(FASTENER_LOOSE_INSIDE, MAIN_BEARING_SHIFTED, SOMETIMES)
    yield leads_to(FASTENER_LOOSE_INSIDE, SHELL_BACKS_SHINY, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(FOREIGN_PART_FITTED)],
    spares=[case_of(lacks=[FOREIGN_PART_FITTED])],
)
def part_that_does_not_belong(known: Known) -> Conclusions:
    """A part that does not belong: ask what it stops, lets out or lets slip."""
    yield leads_to(BEARING_WRONG_SIZE, FOREIGN_PART_FITTED, OFTEN)
    yield leads_to(PUMP_WRONG_PART, FOREIGN_PART_FITTED, OFTEN)
    yield leads_to(RELIEF_SPRING_WRONG, FOREIGN_PART_FITTED, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(LEFTOVER_FOUND)],
    spares=[case_of(lacks=[LEFTOVER_FOUND])],
)
def plug_left_where_oil_should_go(known: Known) -> Conclusions:
    """A plug or cap left where oil should go shuts off what lies behind it."""
    yield leads_to(GALLERY_BLOCKED, LEFTOVER_FOUND, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(CAP_BOLTS_SLACK), case_of(WRONG_SHELLS_FITTED)],
    spares=[case_of(FASTENER_FOUND_LOOSE)],
)
def slack_cap_is_a_loose_fastener(known: Known) -> Conclusions:
    """Slack cap bolts are loose fasteners; shells that do not suit are wrong parts."""
    if known.has(CAP_BOLTS_SLACK):
        yield is_present(FASTENER_FOUND_LOOSE, sure=0.9)
    if known.has(WRONG_SHELLS_FITTED):
        yield is_present(FOREIGN_PART_FITTED, sure=0.8)


@rule(
    source=JIO,
    catches=[case_of(EARLIER_BREAKAGE)],
    spares=[case_of(lacks=[EARLIER_BREAKAGE])],
)
def pieces_left_from_a_breakage(known: Known) -> Conclusions:
    """After an earlier breakage, pieces left inside are more common."""
    if known.has(EARLIER_BREAKAGE):
        yield more_common(DIRT_IN_ASSEMBLY)
        yield more_common(TIMING_GEAR_SHEDDING)


@rule(
    source=PE17,
    catches=[case_of(CAP_BOLTS_SLACK)],
    spares=[case_of(lacks=[CAP_BOLTS_SLACK])],
)
def caps_not_clamped(known: Known) -> Conclusions:
    """Caps that are not clamped must not be run another turn."""
    if known.has(CAP_BOLTS_SLACK):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Bearing cap or through bolts below torque; the maker's figure is the limit: do not "
            "run or just re-tighten, look at shells and seats first.",
        )
