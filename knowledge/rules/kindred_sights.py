"""One sight comes of more than one cause: links across stations."""

from knowledge.causes.assembly import SEALANT_DEBRIS
from knowledge.causes.bearings import OVERLOAD_LUGGING
from knowledge.causes.delivery import FILTER_BLOCKED, FILTER_DRAINBACK, GALLERY_CRACK
from knowledge.causes.instrument import GAUGE_FAULTY, SENDER_FAULTY
from knowledge.causes.pump import PUMP_DEBRIS_LOCK, PUMP_GEAR_WEAR
from knowledge.causes.relief import (
    RELIEF_BORE_SCORED,
    RELIEF_DEBRIS,
    RELIEF_PART_MISSING,
    RELIEF_SPRING_WRONG,
)
from knowledge.causes.suction import DRAINBACK_POOR, PICKUP_SCREEN_BLOCKED
from knowledge.conditions import PUMP_CAVITATES, PUMP_SLIP
from knowledge.findings.bearings import BEARINGS_FAILED_AGAIN, SHELLS_PITTED_UNLOADED
from knowledge.findings.behaviour import (
    CHANGED_WITH_NEW_PUMP,
    CHANGED_WITH_OIL_CHANGE,
    DIRECT_GAUGE_LOW,
    LOW_FROM_FIRST_START,
    SLOW_AFTER_STANDING,
)
from knowledge.findings.debris import CARBON_FLAKES, HARD_CHIPS
from knowledge.findings.oil import OIL_OVERDUE
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
from knowledge.findings.relief import RELIEF_PLUNGER_STICKS
from knowledge.findings.topend import ROCKERS_FLOODED
from knowledge.rulebook import Conclusions, Known, Rule, case_of, leads_to, rules_of
from knowledge.sources import CEB2, ELM, GMI, HB02, HB07, HB08, HB10, HB22, JIO, OST, PRM
from knowledge.vocabulary import OFTEN, SELDOM, SOMETIMES, Station, all_in

oil = rules_of(Station.OIL)
relief = rules_of(Station.RELIEF)
instrument = rules_of(Station.INSTRUMENT)
delivery = rules_of(Station.DELIVERY)
assembly = rules_of(Station.ASSEMBLY)
topend = rules_of(Station.TOPEND)
pump = rules_of(Station.PUMP)
bearings = rules_of(Station.BEARINGS)


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


RULES = all_in(__name__, Rule)
