"""What the state of oil, suction, relief and engine shows at the pump, and damage that follows."""

from knowledge.conditions import (
    AIR_IN_SUCTION,
    DELIVERY_REDUCED,
    DIRT_IN_OIL,
    ENGINE_FAILED,
    METAL_SHED,
    OIL_SHORT,
    OIL_THICK,
    OPEN_LEAK_INSIDE,
    PRESSURE_HIGH,
    PUMP_DRY,
    PUMP_SCORED,
    PUMP_SLIP,
    RELIEF_BLEEDS,
    SUCTION_THROTTLED,
)
from knowledge.findings.pressure import CLIMBS_PAST_SETTING, GAUGE_READS_LOW, NEEDLE_FLICKERS
from knowledge.findings.pump import (
    DRILL_GIVES_LITTLE,
    DRILL_GIVES_NONE,
    MOUNT_GASKET_BLOWN,
    NO_OIL_WHEN_CRANKED,
    PACKED_STILL_NONE,
    PUMP_DRY_INSIDE,
    PUMP_HOUSING_BURST,
    PUMP_NOISE,
)
from knowledge.findings.pump_bench import (
    COVER_GROOVED,
    GEARS_WORN_OUT,
    PIECE_IN_PUMP,
    PUMP_GEAR_BROKEN,
    PUMP_JAMMED,
    PUMP_SCORED_SEEN,
    PUMP_TURNS_ROUGHLY,
    STEEL_SLIVERS_IN_PUMP,
)
from knowledge.findings.pump_drive import (
    DRIVE_GEAR_STRIPPED,
    DRIVE_GEAR_WORN,
    DRIVE_SHAFT_BROKEN,
    PUMP_CHAIN_BROKEN,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import AZN, CAV, EB09, MON, PRM, THK
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, RARELY, SELDOM, SOMETIMES, Station

rule = rules_of(Station.PUMP)

# ----------------------------------------------------------------------- by drill, cranked


@rule(
    source=MON,
    catches=[case_of(DRILL_GIVES_LITTLE), case_of(GAUGE_READS_LOW, DRILL_GIVES_LITTLE)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[DRILL_GIVES_LITTLE])],
)
def little_pressure_by_drill(known: Known) -> Conclusions:
    """Little pressure by drill: oil runs away inside, past the valve, or back through the pump.

    The drive is cleared by this test; worn bearings alone pass it with cold oil.
    """
    yield leads_to(OPEN_LEAK_INSIDE, DRILL_GIVES_LITTLE, MOSTLY)
    yield leads_to(RELIEF_BLEEDS, DRILL_GIVES_LITTLE, OFTEN)
    yield leads_to(DELIVERY_REDUCED, DRILL_GIVES_LITTLE, OFTEN)
    yield leads_to(PUMP_SLIP, DRILL_GIVES_LITTLE, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, DRILL_GIVES_LITTLE, SOMETIMES)


@rule(
    source=PRM,
    catches=[case_of(DRILL_GIVES_NONE), case_of(DRILL_GIVES_NONE, PACKED_STILL_NONE)],
    spares=[case_of(lacks=[DRILL_GIVES_NONE])],
)
def no_pressure_by_drill(known: Known) -> Conclusions:
    """No pressure by drill: the pump is dry, draws air, or its oil leaves by an open way."""
    yield leads_to(PUMP_DRY, DRILL_GIVES_NONE, OFTEN)
    yield leads_to(AIR_IN_SUCTION, DRILL_GIVES_NONE, SOMETIMES)
    yield leads_to(OPEN_LEAK_INSIDE, DRILL_GIVES_NONE, SOMETIMES)
    yield leads_to(RELIEF_BLEEDS, DRILL_GIVES_NONE, SELDOM)
    yield leads_to(OPEN_LEAK_INSIDE, PACKED_STILL_NONE, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, PACKED_STILL_NONE, SOMETIMES)


@rule(
    source=PRM,
    catches=[case_of(NO_OIL_WHEN_CRANKED), case_of(PUMP_DRY_INSIDE, NO_OIL_WHEN_CRANKED)],
    spares=[case_of(PUMP_DRY_INSIDE, lacks=[NO_OIL_WHEN_CRANKED])],
)
def nothing_comes_when_cranked(known: Known) -> Conclusions:
    """No oil when cranked, though the pump turns: it has none to draw, or cannot draw it."""
    yield leads_to(SUCTION_THROTTLED, NO_OIL_WHEN_CRANKED, SELDOM)
    yield leads_to(OIL_SHORT, NO_OIL_WHEN_CRANKED, SOMETIMES)


@rule(
    source=CAV,
    catches=[case_of(PUMP_NOISE), case_of(NEEDLE_FLICKERS, PUMP_NOISE)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[PUMP_NOISE])],
)
def whine_from_the_pump(known: Known) -> Conclusions:
    """A pump that whines is short of oil at its inlet: throttled, drawing air, or fed thick oil."""
    yield leads_to(SUCTION_THROTTLED, PUMP_NOISE, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, PUMP_NOISE, SOMETIMES)
    yield leads_to(OIL_THICK, PUMP_NOISE, SELDOM)


# ------------------------------------------------------------------------ following damage


@rule(
    source=THK,
    catches=[case_of(PUMP_SCORED_SEEN), case_of(PUMP_SCORED_SEEN, PUMP_TURNS_ROUGHLY)],
    spares=[case_of(lacks=[PUMP_SCORED_SEEN])],
)
def scores_where_debris_went_through(known: Known) -> Conclusions:
    """A scored or jammed pump may be following damage: something else shed what went through it.

    Misleads when the pump is blamed and renewed and the shedder stays in the engine.
    """
    yield leads_to(PUMP_SCORED, PUMP_SCORED_SEEN, ALWAYS)
    yield leads_to(PUMP_SCORED, COVER_GROOVED, OFTEN)
    yield leads_to(PUMP_SCORED, PUMP_TURNS_ROUGHLY, OFTEN)
    yield leads_to(PUMP_SCORED, GEARS_WORN_OUT, SELDOM)
    yield leads_to(PUMP_SCORED, PUMP_JAMMED, SOMETIMES)
    yield leads_to(PUMP_SCORED, PUMP_GEAR_BROKEN, SELDOM)
    yield leads_to(PUMP_SCORED, DRIVE_SHAFT_BROKEN, SELDOM)
    yield leads_to(PUMP_SCORED, PUMP_NOISE, SELDOM)


@rule(
    source=AZN,
    catches=[case_of(PIECE_IN_PUMP), case_of(STEEL_SLIVERS_IN_PUMP)],
    spares=[case_of(lacks=[PIECE_IN_PUMP, STEEL_SLIVERS_IN_PUMP])],
)
def foreign_matter_in_the_pump(known: Known) -> Conclusions:
    """Pieces and slivers in the pump came from elsewhere: a dirty build or a part that sheds."""
    yield leads_to(DIRT_IN_OIL, PIECE_IN_PUMP, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, PUMP_JAMMED, SELDOM)
    yield leads_to(DIRT_IN_OIL, DRIVE_SHAFT_BROKEN, RARELY)
    yield leads_to(METAL_SHED, STEEL_SLIVERS_IN_PUMP, SOMETIMES)
    yield leads_to(METAL_SHED, PIECE_IN_PUMP, SELDOM)


@rule(
    source=EB09,
    catches=[case_of(CLIMBS_PAST_SETTING, PUMP_HOUSING_BURST), case_of(DRIVE_GEAR_WORN)],
    spares=[case_of(lacks=[PUMP_HOUSING_BURST, DRIVE_GEAR_WORN])],
)
def pump_overloaded_by_pressure(known: Known) -> Conclusions:
    """Pressure far too high, or oil far too thick, wears drive gears, twists shafts, bursts pumps."""
    yield leads_to(PRESSURE_HIGH, DRIVE_GEAR_WORN, SOMETIMES)
    yield leads_to(PRESSURE_HIGH, DRIVE_SHAFT_BROKEN, SELDOM)
    yield leads_to(PRESSURE_HIGH, PUMP_HOUSING_BURST, RARELY)
    yield leads_to(PRESSURE_HIGH, MOUNT_GASKET_BLOWN, SELDOM)
    yield leads_to(OIL_THICK, DRIVE_SHAFT_BROKEN, RARELY)


@rule(
    source=CP,
    catches=[case_of(PUMP_HOUSING_BURST), case_of(PUMP_CHAIN_BROKEN)],
    spares=[case_of(lacks=[PUMP_HOUSING_BURST, PUMP_CHAIN_BROKEN])],
)
def pump_broken_in_a_wreck(known: Known) -> Conclusions:
    """In an engine that threw a part, pump, chain or drive may have been broken last, not first."""
    yield leads_to(ENGINE_FAILED, PUMP_HOUSING_BURST, RARELY)
    yield leads_to(ENGINE_FAILED, PUMP_CHAIN_BROKEN, RARELY)
    yield leads_to(ENGINE_FAILED, DRIVE_GEAR_STRIPPED, RARELY)
