"""One sight comes of more than one cause: links across stations."""

from knowledge.causes.assembly import DIRT_IN_ASSEMBLY, SEALANT_DEBRIS, TIMING_GEAR_SHEDDING
from knowledge.causes.bearings import OVERLOAD_LUGGING
from knowledge.causes.delivery import (
    FILTER_BLOCKED,
    FILTER_DRAINBACK,
    GALLERY_CRACK,
    GALLERY_PLUG_TOO_DEEP,
    GALLERY_SEAL_LEAK,
)
from knowledge.causes.instrument import (
    GAUGE_FAULTY,
    SENDER_FAULTY,
    SENDER_MISMATCH,
    WIRING_GROUND_FAULT,
)
from knowledge.causes.oil import OIL_LEVEL_HIGH
from knowledge.causes.pump import PUMP_DEBRIS_LOCK, PUMP_GEAR_WEAR, SCAVENGE_FAILURE
from knowledge.causes.relief import (
    RELIEF_BORE_SCORED,
    RELIEF_DEBRIS,
    RELIEF_PART_MISSING,
    RELIEF_SPRING_WRONG,
)
from knowledge.causes.suction import (
    BAFFLE_MISSING,
    DRAINBACK_POOR,
    FOREIGN_BODY_IN_SUMP,
    PICKUP_SCREEN_BLOCKED,
)
from knowledge.causes.topend import RESTRICTOR_MISSING
from knowledge.conditions import (
    AIR_IN_SUCTION,
    BEARINGS_DAMAGED,
    BEARINGS_STARVED,
    CLEARANCES_WIDE,
    DIRT_IN_OIL,
    DRAINS_BACK,
    JOURNAL_DRY,
    METAL_SHED,
    OIL_AERATED,
    PRESSURE_GONE,
    PRESSURE_LOW,
    PUMP_CAVITATES,
    PUMP_DRY,
    PUMP_NOT_TURNING,
    PUMP_SLIP,
    READING_ERRATIC,
    RELIEF_BLEEDS,
    SUCTION_THROTTLED,
)
from knowledge.findings.assembly import SMALL_PART_LEFT_OUT
from knowledge.findings.bearings import BEARINGS_FAILED_AGAIN, SHELLS_PITTED_UNLOADED
from knowledge.findings.bearings_bench import (
    BEARING_FOUND_SEIZED,
    DAMAGED_BY_DEBRIS_ONLY,
    SIGNS_OF_STARVATION,
)
from knowledge.findings.behaviour import (
    CHANGED_WITH_NEW_PUMP,
    CHANGED_WITH_OIL_CHANGE,
    DIRECT_GAUGE_LOW,
    LOW_FROM_FIRST_START,
    SLOW_AFTER_STANDING,
)
from knowledge.findings.debris import CARBON_FLAKES, HARD_CHIPS
from knowledge.findings.delivery import OIL_FED_DEVICE_FAILED_FIRST
from knowledge.findings.instrument import (
    LAMP_SLOW_TO_GO_OUT,
    NEW_SENDER_MADE_IT_WORSE,
    UNSTEADIER_WITH_REVS,
    WIRE_REPAIR_NO_DIFFERENCE,
)
from knowledge.findings.oil import OIL_OVERDUE, WET_SUMPS
from knowledge.findings.oil_analysis import SILICON_HIGH
from knowledge.findings.oil_look import OIL_BLACK_AND_GRITTY, OIL_FILM_IN_COOLANT, SLUDGE_SEEN
from knowledge.findings.pressure import (
    ENGINE_RUNS_NORMALLY,
    FLICKERS_ONLY_AT_HOT_IDLE,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    LOW_AT_ALL_SPEEDS,
)
from knowledge.findings.pump import DRILL_GIVES_NONE
from knowledge.findings.pump_bench import PUMP_TURNS_ROUGHLY
from knowledge.findings.pump_drive import OIL_POURED_IN_NO_HELP
from knowledge.findings.relief import RELIEF_PLUNGER_STICKS
from knowledge.findings.suction_debris import DEBRIS_SEEN_BEFORE
from knowledge.findings.topend import ROCKERS_FLOODED
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import (
    CEB2,
    ELM,
    GMI,
    HB02,
    HB07,
    HB08,
    HB10,
    HB22,
    HPA,
    JIO,
    LAM,
    NE2,
    OST,
    PRM,
    RUS,
    TEL,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import MOSTLY, OFTEN, RARELY, SELDOM, SOMETIMES, Station

instrument = rules_of(Station.INSTRUMENT)
pump = rules_of(Station.PUMP)
delivery = rules_of(Station.DELIVERY)
bearings = rules_of(Station.BEARINGS)
assembly = rules_of(Station.ASSEMBLY)
oil = rules_of(Station.OIL)
suction = rules_of(Station.SUCTION)
relief = rules_of(Station.RELIEF)
topend = rules_of(Station.TOPEND)


@instrument(
    source=LAM,
    catches=[case_of(LAMP_SLOW_TO_GO_OUT, GAUGE_READS_LOW)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[LAMP_SLOW_TO_GO_OUT])],
)
def slower_at_every_start(known: Known) -> Conclusions:
    """Slower at every start than it used to be: pump, suction or drain-back are going."""
    yield leads_to(PUMP_SLIP, LAMP_SLOW_TO_GO_OUT, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, LAMP_SLOW_TO_GO_OUT, SOMETIMES)
    yield leads_to(RELIEF_BLEEDS, LAMP_SLOW_TO_GO_OUT, SOMETIMES)
    yield leads_to(DRAINS_BACK, LAMP_SLOW_TO_GO_OUT, OFTEN)
    yield leads_to(CLEARANCES_WIDE, LAMP_SLOW_TO_GO_OUT, SELDOM)
    yield leads_to(SUCTION_THROTTLED, LAMP_SLOW_TO_GO_OUT, SELDOM)


@instrument(
    source=TEL,
    catches=[case_of(WIRE_REPAIR_NO_DIFFERENCE, GAUGE_READS_ZERO)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[WIRE_REPAIR_NO_DIFFERENCE])],
)
def mended_and_still_wrong(known: Known) -> Conclusions:
    """A reading still wrong with its wire mended, or wrong another way with a new sender, is lost further along."""
    yield leads_to(SENDER_FAULTY, WIRE_REPAIR_NO_DIFFERENCE, SOMETIMES)
    yield leads_to(GAUGE_FAULTY, WIRE_REPAIR_NO_DIFFERENCE, SOMETIMES)
    yield leads_to(WIRING_GROUND_FAULT, NEW_SENDER_MADE_IT_WORSE, SOMETIMES)
    yield leads_to(SENDER_MISMATCH, NEW_SENDER_MADE_IT_WORSE, SOMETIMES)
    yield leads_to(READING_ERRATIC, UNSTEADIER_WITH_REVS, SOMETIMES)
    yield leads_to(OIL_AERATED, UNSTEADIER_WITH_REVS, OFTEN)
    yield leads_to(AIR_IN_SUCTION, UNSTEADIER_WITH_REVS, OFTEN)


@pump(
    source=PRM,
    catches=[case_of(OIL_POURED_IN_NO_HELP, GAUGE_READS_ZERO)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[OIL_POURED_IN_NO_HELP])],
)
def poured_oil_is_not_drawn(known: Known) -> Conclusions:
    """Oil merely poured in does not always wet a pump: force it, and look at suction and drive if that fails."""
    yield leads_to(PUMP_DRY, OIL_POURED_IN_NO_HELP, SOMETIMES)
    yield leads_to(PUMP_NOT_TURNING, OIL_POURED_IN_NO_HELP, OFTEN)
    yield leads_to(AIR_IN_SUCTION, OIL_POURED_IN_NO_HELP, SOMETIMES)


@delivery(
    source=NE2,
    catches=[case_of(GAUGE_READS_ZERO, OIL_FED_DEVICE_FAILED_FIRST)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[OIL_FED_DEVICE_FAILED_FIRST])],
)
def oil_worked_device_goes_with_it(known: Known) -> Conclusions:
    """What is worked by engine oil goes wrong with the pressure, and so proves the loss real."""
    yield leads_to(PRESSURE_GONE, OIL_FED_DEVICE_FAILED_FIRST, SELDOM)
    yield leads_to(PRESSURE_LOW, OIL_FED_DEVICE_FAILED_FIRST, SELDOM)


@bearings(
    source=RUS,
    catches=[case_of(SIGNS_OF_STARVATION, GAUGE_READS_ZERO)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[SIGNS_OF_STARVATION])],
)
def want_of_oil_written_on_the_metal(known: Known) -> Conclusions:
    """Heat colours and a seized shell tell of want of oil; marks of debris without heat do not."""
    yield leads_to(BEARINGS_DAMAGED, BEARING_FOUND_SEIZED, SOMETIMES)
    yield leads_to(BEARINGS_STARVED, SIGNS_OF_STARVATION, MOSTLY)
    yield leads_to(JOURNAL_DRY, SIGNS_OF_STARVATION, OFTEN)
    yield leads_to(DIRT_IN_OIL, DAMAGED_BY_DEBRIS_ONLY, SOMETIMES)
    yield leads_to(METAL_SHED, DAMAGED_BY_DEBRIS_ONLY, SELDOM)


@assembly(
    source=CP,
    catches=[case_of(SMALL_PART_LEFT_OUT)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SMALL_PART_LEFT_OUT])],
)
def something_small_left_out(known: Known) -> Conclusions:
    """Where one small part was left out, look what else was."""
    yield leads_to(BAFFLE_MISSING, SMALL_PART_LEFT_OUT, SOMETIMES)
    yield leads_to(RESTRICTOR_MISSING, SMALL_PART_LEFT_OUT, SOMETIMES)
    yield leads_to(GALLERY_SEAL_LEAK, SMALL_PART_LEFT_OUT, SELDOM)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, SMALL_PART_LEFT_OUT, RARELY)


@oil(source=HPA, catches=[case_of(WET_SUMPS)], spares=[case_of(GAUGE_READS_LOW, lacks=[WET_SUMPS])])
def tank_that_empties_at_rest(known: Known) -> Conclusions:
    """A tank that empties at rest starts short of oil, and is overfilled by whoever reads it then."""
    yield leads_to(PUMP_GEAR_WEAR, WET_SUMPS, SELDOM)
    yield leads_to(OIL_LEVEL_HIGH, WET_SUMPS, SELDOM)
    yield leads_to(SCAVENGE_FAILURE, WET_SUMPS, SOMETIMES)


@suction(
    source=CP,
    catches=[case_of(DEBRIS_SEEN_BEFORE, GAUGE_READS_LOW)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[DEBRIS_SEEN_BEFORE])],
)
def seen_before_and_come_back(known: Known) -> Conclusions:
    """What was found once in the screen has often more of its kind behind it."""
    yield leads_to(FOREIGN_BODY_IN_SUMP, DEBRIS_SEEN_BEFORE, SOMETIMES)
    yield leads_to(DIRT_IN_ASSEMBLY, DEBRIS_SEEN_BEFORE, SOMETIMES)
    yield leads_to(PICKUP_SCREEN_BLOCKED, DEBRIS_SEEN_BEFORE, SELDOM)
    yield leads_to(SEALANT_DEBRIS, DEBRIS_SEEN_BEFORE, SOMETIMES)
    yield leads_to(TIMING_GEAR_SHEDDING, DEBRIS_SEEN_BEFORE, SOMETIMES)


@oil(
    source=JIO,
    catches=[case_of(SLUDGE_SEEN, GAUGE_READS_LOW)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SLUDGE_SEEN])],
)
def sludge_stands_for_what_it_blocks(known: Known) -> Conclusions:
    """Sludge seen anywhere stands for what it blocks: the screen first, then the filter."""
    yield leads_to(PICKUP_SCREEN_BLOCKED, SLUDGE_SEEN, OFTEN)
    yield leads_to(FILTER_BLOCKED, SLUDGE_SEEN, SOMETIMES)
    yield leads_to(PICKUP_SCREEN_BLOCKED, OIL_BLACK_AND_GRITTY, SOMETIMES)
    yield leads_to(FILTER_BLOCKED, OIL_BLACK_AND_GRITTY, SOMETIMES)
    yield leads_to(PICKUP_SCREEN_BLOCKED, OIL_OVERDUE, SOMETIMES)
    yield leads_to(FILTER_BLOCKED, OIL_OVERDUE, SOMETIMES)


@relief(
    source=HB22,
    catches=[case_of(GAUGE_READS_LOW, HARD_CHIPS)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[HARD_CHIPS])],
)
def chips_reach_valve_and_pump(known: Known) -> Conclusions:
    """Hard chips and carbon in the sump have brothers under the relief valve and between the pump's gears."""
    yield leads_to(RELIEF_DEBRIS, HARD_CHIPS, SOMETIMES)
    yield leads_to(PUMP_DEBRIS_LOCK, HARD_CHIPS, SOMETIMES)
    yield leads_to(RELIEF_DEBRIS, CARBON_FLAKES, SELDOM)


@relief(
    source=HB10,
    catches=[case_of(GAUGE_READS_ZERO, DRILL_GIVES_NONE)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[DRILL_GIVES_NONE])],
)
def drill_and_drop_at_the_valve(known: Known) -> Conclusions:
    """By drill no pressure, or a plunger that does not drop: the valve is incomplete or its bore is hurt."""
    yield leads_to(RELIEF_PART_MISSING, DRILL_GIVES_NONE, OFTEN)
    yield leads_to(RELIEF_BORE_SCORED, RELIEF_PLUNGER_STICKS, OFTEN)


@relief(
    source=HB07,
    catches=[case_of(GAUGE_READS_LOW, CHANGED_WITH_NEW_PUMP)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[CHANGED_WITH_NEW_PUMP])],
)
def low_since_new_pump_or_rebuild(known: Known) -> Conclusions:
    """Low since a new pump or a rebuild: a new pump brings its own relief spring."""
    yield leads_to(RELIEF_SPRING_WRONG, CHANGED_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(RELIEF_SPRING_WRONG, LOW_FROM_FIRST_START, SOMETIMES)


@instrument(
    source=HB08,
    catches=[case_of(LOW_AT_ALL_SPEEDS, ENGINE_RUNS_NORMALLY)],
    spares=[case_of(LOW_AT_ALL_SPEEDS, DIRECT_GAUGE_LOW)],
)
def steady_error_and_idle_flicker(known: Known) -> Conclusions:
    """A gauge with a scale error reads low at every speed; a tired switch flickers at hot idle first."""
    yield leads_to(GAUGE_FAULTY, LOW_AT_ALL_SPEEDS, SOMETIMES)
    yield leads_to(SENDER_FAULTY, FLICKERS_ONLY_AT_HOT_IDLE, SOMETIMES)
    yield leads_to(PUMP_SLIP, FLICKERS_ONLY_AT_HOT_IDLE, SOMETIMES)


@delivery(
    source=PRM,
    catches=[case_of(CHANGED_WITH_OIL_CHANGE, SLOW_AFTER_STANDING)],
    spares=[case_of(CHANGED_WITH_OIL_CHANGE, lacks=[SLOW_AFTER_STANDING])],
)
def new_filter_that_drains_back(known: Known) -> Conclusions:
    """Late at every start since an oil change: the new filter lets its oil run back."""
    yield leads_to(FILTER_DRAINBACK, CHANGED_WITH_OIL_CHANGE, SOMETIMES)


@delivery(
    source=HB02,
    catches=[case_of(OIL_FILM_IN_COOLANT)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[OIL_FILM_IN_COOLANT])],
)
def oil_crosses_into_the_coolant(known: Known) -> Conclusions:
    """Oil in the coolant crossed through a gasket, a cooler or a crack in the gallery wall."""
    yield leads_to(GALLERY_CRACK, OIL_FILM_IN_COOLANT, SOMETIMES)


@assembly(
    source=ELM,
    catches=[case_of(SILICON_HIGH)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SILICON_HIGH])],
)
def sealer_shows_in_the_sample(known: Known) -> Conclusions:
    """Silicon in a sample of a fresh engine is as often sealer as dirt."""
    yield leads_to(SEALANT_DEBRIS, SILICON_HIGH, SOMETIMES)


@topend(
    source=OST,
    catches=[case_of(ROCKERS_FLOODED)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[ROCKERS_FLOODED])],
)
def flooded_above_empty_below(known: Known) -> Conclusions:
    """Rockers that stand in oil keep it from the sump."""
    yield leads_to(DRAINBACK_POOR, ROCKERS_FLOODED, OFTEN)


@pump(
    source=GMI,
    catches=[case_of(PUMP_TURNS_ROUGHLY)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[PUMP_TURNS_ROUGHLY])],
)
def feel_of_a_worn_pump(known: Known) -> Conclusions:
    """A worn pump may turn roughly; a cavitating one pits what its foam reaches."""
    yield leads_to(PUMP_GEAR_WEAR, PUMP_TURNS_ROUGHLY, SELDOM)
    yield leads_to(PUMP_CAVITATES, SHELLS_PITTED_UNLOADED, SOMETIMES)


@bearings(
    source=CEB2,
    catches=[case_of(BEARINGS_FAILED_AGAIN)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[BEARINGS_FAILED_AGAIN])],
)
def overload_breaks_them_again(known: Known) -> Conclusions:
    """Bearings that fail again under the same load were overloaded both times."""
    yield leads_to(OVERLOAD_LUGGING, BEARINGS_FAILED_AGAIN, SOMETIMES)
