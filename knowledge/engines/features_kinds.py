"""What sets a kind of engine apart: no pressure to read, very little, or parts of another sort."""

from knowledge import sources
from knowledge.engines.features import feature
from knowledge.engines.features_build import ROLLER_CRANKSHAFT, SPLASH_LUBRICATED
from knowledge.model import Finding
from knowledge.rule_api import Known
from knowledge.sources import COMMON_PRACTICE, idea_from

TROUGH_FED = feature(
    id="trough_fed",
    says="a low-pressure pump that fills troughs for dippers on the rods",
    asks="Does a low-pressure pump fill troughs that dippers on the rods sweep through?",
    source=sources.TROUGH_FED_SIX_1942,
)
DRIP_OILED = feature(
    id="drip_oiled",
    says="drip oilers, oil cups or grease cups instead of an oil pump",
    asks="Do drip oilers, oil cups or grease cups oil it, instead of an oil pump?",
    source=sources.GAS_ENGINE_HANDBOOK,
)
OIL_BURNT_WITH_FUEL = feature(
    id="oil_burnt_with_fuel",
    says="a two-stroke that burns its oil: mixed into the fuel, or metered by an injection pump",
    asks="Is it a two-stroke that burns its oil, mixed into the fuel or by an injection pump?",
    source=sources.TWO_STROKE_OIL_TESTS,
)
ROTARY_PISTON = feature(
    id="rotary_piston",
    says="a rotary (Wankel) engine with an eccentric shaft",
    asks="Is it a rotary (Wankel) engine, without pistons?",
    source=sources.ROTARY_2004,
)
ROLLER_BIG_ENDS = feature(
    id="roller_big_ends",
    says="rod big ends on rollers or needles",
    asks="Do the rod big ends run on rollers or needles, not on shells?",
    source=idea_from(sources.ROLLER_V_TWIN_PRESSURES),
)
PRELUBE_PUMP = feature(
    id="prelube_pump",
    says="a separate pump that fills the oilways before the start",
    asks="Does a separate electric or hand pump fill the oilways before the start?",
    source=idea_from(sources.PRELUBE_PUMP_GUIDE),
)
FLOATING_ROD_BEARINGS = feature(
    id="floating_rod_bearings",
    says="rod bearings that float: one shell pair, free in rod and on journal, for two rods",
    asks="Do the rod bearing shells float, free in the rods as well as on the journal?",
    source=COMMON_PRACTICE,
)
#: an engine with the first has the second as well
IMPLIES = (
    (ROLLER_BIG_ENDS, ROLLER_CRANKSHAFT),
    (OIL_BURNT_WITH_FUEL, ROLLER_BIG_ENDS),
    (OIL_BURNT_WITH_FUEL, ROLLER_CRANKSHAFT),
)
#: no engine has them unless somebody says so, and nobody is asked
UNLESS_SAID = (
    TROUGH_FED,
    DRIP_OILED,
    OIL_BURNT_WITH_FUEL,
    ROTARY_PISTON,
    PRELUBE_PUMP,
    FLOATING_ROD_BEARINGS,
)
#: features of a kind that go without saying, there or not
KINDS = frozenset({*UNLESS_SAID, ROLLER_BIG_ENDS, ROLLER_CRANKSHAFT, SPLASH_LUBRICATED})
#: engines without oil pressure: nothing of a gauge or a pressure lamp holds of them
UNPRESSURED: tuple[Finding, ...] = (SPLASH_LUBRICATED, DRIP_OILED, OIL_BURNT_WITH_FUEL)


def has_no_pressure(known: Known) -> bool:
    """Whether nothing in this engine is oiled under pressure; a trough pump gives a little."""
    return any(known.has(kind) for kind in UNPRESSURED) and known.lacks(TROUGH_FED)
