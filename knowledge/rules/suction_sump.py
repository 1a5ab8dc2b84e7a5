"""What takes the oil away from the pickup, and what the sump tells of the rest of the engine."""

from knowledge.causes.assembly import (
    ASSEMBLY_LUBE_CLOG,
    FASTENER_LOOSE_INSIDE,
    SEALANT_DEBRIS,
    TIMING_GEAR_SHEDDING,
)
from knowledge.causes.oil import OIL_LEVEL_HIGH
from knowledge.causes.suction import (
    ATTITUDE_UNCOVERS_PICKUP,
    BAFFLE_MISSING,
    DRAINBACK_POOR,
    PICKUP_CLEARANCE_WIDE,
    SUCTION_JOINT_AIR_LEAK,
    WINDAGE_AERATION,
)
from knowledge.conditions import (
    DIRT_IN_OIL,
    ENGINE_FAILED,
    METAL_SHED,
    OIL_AERATED,
    OIL_ESCAPING,
    OIL_SHORT,
    OIL_SLUDGED,
    OIL_THICK,
    PICKUP_UNCOVERED,
    PUMP_CAVITATES,
)
from knowledge.engines.features import DRY_SUMP
from knowledge.findings.behaviour import (
    FADES_AT_SPEED_BACK_AFTER_REST,
    FALLS_IN_A_MANOEUVRE,
    NOTHING_WARNED,
    TOP_UP_CURES_FOR_A_WHILE,
)
from knowledge.findings.debris import METAL_IN_SCREEN
from knowledge.findings.pressure import FALLS_AS_REVS_RISE, FLICKERS_ONLY_AT_SPEED
from knowledge.findings.suction import (
    BAFFLE_MISSING_OR_LOOSE,
    OIL_LINE_AT_CRANK,
    OIL_SLOW_TO_RETURN,
    OIL_TRAPPED_IN_SUMP,
    OVERFILL_STEADIES_IT,
    PICKUP_FELL_OFF,
    PICKUP_FIXING_LOOSE,
    PICKUP_GAP_TOO_LARGE,
    PRESSURE_BACK_AFTER_THAW,
    RETURNS_BLOCKED,
    SUCTION_UNION_LOOSE,
    TANK_STILL_FULL,
    TRAY_BROKEN_OR_MISSING,
    TRAY_RUBBED,
)
from knowledge.findings.suction_debris import (
    FOREIGN_MATERIAL_ON_SCREEN,
    GASKET_ON_SCREEN,
    PASTE_ON_SCREEN,
    PLASTIC_ON_SCREEN,
    SCREEN_BLOCKED,
    SEALER_IN_SUMP,
    SEALER_ON_SCREEN,
    SEALER_SQUEEZED_OUT,
    SLUDGE_ON_SCREEN,
    VARNISH_ON_SCREEN,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import AER, JIO, OST, RV8, SLO, THK
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.SUCTION)

# ------------------------------------------------------------ oil away from the pickup


@rule(
    source=SLO,
    catches=[case_of(BAFFLE_MISSING_OR_LOOSE), case_of(OIL_TRAPPED_IN_SUMP)],
    spares=[case_of(lacks=[BAFFLE_MISSING_OR_LOOSE, OIL_TRAPPED_IN_SUMP])],
)
def oil_runs_off_in_the_bend(known: Known) -> Conclusions:
    """Side force, slope or a missing baffle piles the oil up away from the pickup, time and again.

    Each event is short: the lamp may not show it, yet a rod bearing feels it.
    """
    yield leads_to(ATTITUDE_UNCOVERS_PICKUP, PICKUP_UNCOVERED, ALWAYS)
    yield leads_to(ATTITUDE_UNCOVERS_PICKUP, NOTHING_WARNED, SELDOM)
    yield leads_to(ATTITUDE_UNCOVERS_PICKUP, OIL_TRAPPED_IN_SUMP, SOMETIMES)
    yield leads_to(BAFFLE_MISSING, PICKUP_UNCOVERED, MOSTLY)
    yield leads_to(BAFFLE_MISSING, BAFFLE_MISSING_OR_LOOSE, ALWAYS)
    yield leads_to(BAFFLE_MISSING, OIL_TRAPPED_IN_SUMP, SOMETIMES)


@rule(
    source=OST,
    catches=[case_of(PICKUP_GAP_TOO_LARGE), case_of(FALLS_IN_A_MANOEUVRE, PICKUP_GAP_TOO_LARGE)],
    spares=[case_of(FALLS_IN_A_MANOEUVRE, lacks=[PICKUP_GAP_TOO_LARGE])],
)
def pickup_hangs_high_in_the_pan(known: Known) -> Conclusions:
    """A pickup too high for its pan uncovers in bends and near the add mark; more oil helps."""
    yield leads_to(PICKUP_CLEARANCE_WIDE, PICKUP_UNCOVERED, MOSTLY)
    yield leads_to(PICKUP_CLEARANCE_WIDE, PICKUP_GAP_TOO_LARGE, ALWAYS)
    yield leads_to(PICKUP_CLEARANCE_WIDE, TOP_UP_CURES_FOR_A_WHILE, SOMETIMES)
    yield leads_to(PICKUP_CLEARANCE_WIDE, OVERFILL_STEADIES_IT, OFTEN)


@rule(
    source=AER,
    catches=[case_of(TRAY_RUBBED), case_of(FLICKERS_ONLY_AT_SPEED, TRAY_BROKEN_OR_MISSING)],
    spares=[case_of(lacks=[TRAY_RUBBED, TRAY_BROKEN_OR_MISSING])],
)
def crank_whips_the_oil(known: Known) -> Conclusions:
    """A crank that whips its oil fills it with air; the pump cavitates and the bearings starve."""
    yield leads_to(WINDAGE_AERATION, OIL_AERATED, ALWAYS)
    yield leads_to(WINDAGE_AERATION, PUMP_CAVITATES, SOMETIMES)
    yield leads_to(WINDAGE_AERATION, TRAY_RUBBED, OFTEN)
    yield leads_to(WINDAGE_AERATION, TRAY_BROKEN_OR_MISSING, OFTEN)
    yield leads_to(WINDAGE_AERATION, OIL_LINE_AT_CRANK, SOMETIMES)


@rule(
    source=OST,
    catches=[case_of(RETURNS_BLOCKED), case_of(FADES_AT_SPEED_BACK_AFTER_REST, OIL_SLOW_TO_RETURN)],
    spares=[case_of(FADES_AT_SPEED_BACK_AFTER_REST, lacks=[RETURNS_BLOCKED, OIL_SLOW_TO_RETURN])],
)
def sump_pumped_empty_at_speed(known: Known) -> Conclusions:
    """Oil held up in heads or valley empties the sump at speed; idling lets it come back."""
    yield leads_to(DRAINBACK_POOR, OIL_SHORT, SOMETIMES)
    yield leads_to(DRAINBACK_POOR, PICKUP_UNCOVERED, OFTEN)
    yield leads_to(DRAINBACK_POOR, FADES_AT_SPEED_BACK_AFTER_REST, OFTEN)
    yield leads_to(DRAINBACK_POOR, FALLS_AS_REVS_RISE, SOMETIMES)
    yield leads_to(DRAINBACK_POOR, OIL_SLOW_TO_RETURN, MOSTLY)
    yield leads_to(DRAINBACK_POOR, RETURNS_BLOCKED, OFTEN)


@rule(
    source=CP,
    catches=[case_of(OVERFILL_STEADIES_IT)],
    spares=[case_of(lacks=[OVERFILL_STEADIES_IT])],
)
def more_oil_covers_the_pickup(known: Known) -> Conclusions:
    """If oil above the mark brings it right, the pickup or a joint was drawing air before."""
    yield leads_to(OIL_SHORT, OVERFILL_STEADIES_IT, OFTEN)
    yield leads_to(PICKUP_UNCOVERED, OVERFILL_STEADIES_IT, SOMETIMES)


# ------------------------------------------------------------------------------- tanks


@rule(
    source=CP,
    catches=[case_of(DRY_SUMP, TANK_STILL_FULL)],
    spares=[case_of(DRY_SUMP, lacks=[TANK_STILL_FULL, SUCTION_UNION_LOOSE])],
)
def full_tank_and_no_pressure(known: Known) -> Conclusions:
    """A full tank and no pressure: hose, union or joint between tank and pump takes air instead."""
    if known.has(DRY_SUMP):
        yield leads_to(SUCTION_JOINT_AIR_LEAK, TANK_STILL_FULL, SOMETIMES)
        yield leads_to(SUCTION_JOINT_AIR_LEAK, OIL_ESCAPING, SELDOM)


# ------------------------------------------------- what the sump tells of other stations


@rule(
    source=JIO,
    catches=[case_of(SLUDGE_ON_SCREEN), case_of(SLUDGE_ON_SCREEN, VARNISH_ON_SCREEN)],
    spares=[case_of(lacks=[VARNISH_ON_SCREEN, SLUDGE_ON_SCREEN])],
)
def sludge_settles_on_the_mesh(known: Known) -> Conclusions:
    """Oil that has laid down sludge leaves it on the pickup screen and in the returns."""
    yield leads_to(OIL_SLUDGED, SLUDGE_ON_SCREEN, MOSTLY)
    yield leads_to(OIL_SLUDGED, VARNISH_ON_SCREEN, OFTEN)
    yield leads_to(OIL_SLUDGED, SCREEN_BLOCKED, OFTEN)
    yield leads_to(OIL_SLUDGED, RETURNS_BLOCKED, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(METAL_IN_SCREEN), case_of(METAL_IN_SCREEN, SCREEN_BLOCKED)],
    spares=[case_of(SCREEN_BLOCKED, lacks=[METAL_IN_SCREEN])],
)
def metal_settles_on_the_mesh(known: Known) -> Conclusions:
    """Metal from damaged parts settles on the pickup screen: trace it, do not just clean it off.

    Misleads when the metal is taken for the root: most of it is following damage.
    """
    yield leads_to(METAL_SHED, METAL_IN_SCREEN, OFTEN)
    yield leads_to(METAL_SHED, SCREEN_BLOCKED, SELDOM)


@rule(
    source=CP,
    catches=[case_of(TRAY_BROKEN_OR_MISSING)],
    spares=[case_of(lacks=[TRAY_BROKEN_OR_MISSING])],
)
def broken_engine_strikes_the_tray(known: Known) -> Conclusions:
    """An engine that broke strikes its tray: there the torn tray follows and is no cause."""
    yield leads_to(ENGINE_FAILED, TRAY_BROKEN_OR_MISSING, SELDOM)


@rule(
    source=CP,
    catches=[case_of(FOREIGN_MATERIAL_ON_SCREEN), case_of(GASKET_ON_SCREEN)],
    spares=[case_of(lacks=[FOREIGN_MATERIAL_ON_SCREEN, GASKET_ON_SCREEN])],
)
def screen_catches_what_travels(known: Known) -> Conclusions:
    """What travels with the oil ends on the screen, if the screen is whole."""
    yield leads_to(DIRT_IN_OIL, FOREIGN_MATERIAL_ON_SCREEN, OFTEN)
    yield leads_to(DIRT_IN_OIL, GASKET_ON_SCREEN, SELDOM)
    yield leads_to(DIRT_IN_OIL, SCREEN_BLOCKED, SOMETIMES)


@rule(
    source=RV8,
    catches=[case_of(SEALER_ON_SCREEN), case_of(SEALER_IN_SUMP, SEALER_SQUEEZED_OUT)],
    spares=[case_of(lacks=[SEALER_ON_SCREEN, SEALER_IN_SUMP])],
)
def sealer_breaks_off_inside(known: Known) -> Conclusions:
    """Sealer squeezed out inside breaks off and is drawn to the screen in strings and crumbs."""
    yield leads_to(SEALANT_DEBRIS, SEALER_ON_SCREEN, MOSTLY)
    yield leads_to(SEALANT_DEBRIS, SCREEN_BLOCKED, OFTEN)
    yield leads_to(SEALANT_DEBRIS, FOREIGN_MATERIAL_ON_SCREEN, OFTEN)
    yield leads_to(SEALANT_DEBRIS, SEALER_IN_SUMP, MOSTLY)
    yield leads_to(SEALANT_DEBRIS, SEALER_SQUEEZED_OUT, MOSTLY)


@rule(
    source=JIO,
    catches=[case_of(PLASTIC_ON_SCREEN)],
    spares=[case_of(lacks=[PLASTIC_ON_SCREEN])],
)
def gear_teeth_in_the_screen(known: Known) -> Conclusions:
    """Plastic gear teeth in the screen come from a timing gear, even one renewed years ago."""
    yield leads_to(TIMING_GEAR_SHEDDING, PLASTIC_ON_SCREEN, ALWAYS)
    yield leads_to(TIMING_GEAR_SHEDDING, SCREEN_BLOCKED, OFTEN)
    yield leads_to(TIMING_GEAR_SHEDDING, FOREIGN_MATERIAL_ON_SCREEN, OFTEN)


@rule(
    source=THK,
    catches=[case_of(PASTE_ON_SCREEN)],
    spares=[case_of(lacks=[PASTE_ON_SCREEN])],
)
def paste_from_assembly(known: Known) -> Conclusions:
    """Grease or jelly used at assembly can plug the screen until warm oil carries it away."""
    yield leads_to(ASSEMBLY_LUBE_CLOG, PASTE_ON_SCREEN, MOSTLY)
    yield leads_to(ASSEMBLY_LUBE_CLOG, SCREEN_BLOCKED, OFTEN)


@rule(
    source=CP,
    catches=[case_of(PICKUP_FELL_OFF), case_of(PICKUP_FIXING_LOOSE)],
    spares=[case_of(lacks=[PICKUP_FIXING_LOOSE, PICKUP_FELL_OFF])],
)
def bolt_that_came_undone(known: Known) -> Conclusions:
    """A bolt never locked lets pickup or tray go: look for the bolt, and for its place."""
    yield leads_to(FASTENER_LOOSE_INSIDE, PICKUP_FIXING_LOOSE, OFTEN)
    yield leads_to(FASTENER_LOOSE_INSIDE, PICKUP_FELL_OFF, SOMETIMES)
    yield leads_to(FASTENER_LOOSE_INSIDE, TRAY_BROKEN_OR_MISSING, SOMETIMES)
    yield leads_to(FASTENER_LOOSE_INSIDE, TRAY_RUBBED, SELDOM)


@rule(
    source=CP,
    catches=[case_of(OIL_LINE_AT_CRANK)],
    spares=[case_of(lacks=[OIL_LINE_AT_CRANK])],
)
def oil_ring_at_the_crank(known: Known) -> Conclusions:
    """Too much oil leaves its ring where crank and rods pass."""
    yield leads_to(OIL_LEVEL_HIGH, OIL_LINE_AT_CRANK, OFTEN)


@rule(
    source=CP,
    catches=[case_of(OIL_SLOW_TO_RETURN), case_of(PRESSURE_BACK_AFTER_THAW)],
    spares=[case_of(lacks=[OIL_SLOW_TO_RETURN, PRESSURE_BACK_AFTER_THAW])],
)
def stiff_oil_comes_back_with_warmth(known: Known) -> Conclusions:
    """Stiff oil also returns slowly and comes right with warmth: do not take it for ice at once."""
    yield leads_to(OIL_THICK, OIL_SLOW_TO_RETURN, SOMETIMES)
    yield leads_to(OIL_THICK, PRESSURE_BACK_AFTER_THAW, SELDOM)
