"""What throttles the pump's suction, and what lets air into it."""

from knowledge.causes.suction import (
    FOREIGN_BODY_IN_SUMP,
    ICE_IN_PICKUP,
    PAN_DENTED,
    PICKUP_CLEARANCE_TIGHT,
    PICKUP_SCREEN_BLOCKED,
    PICKUP_SCREEN_BYPASS_OPEN,
    PICKUP_TUBE_CRACKED,
    PICKUP_TUBE_LOOSE,
    SUCTION_HOSE_COLLAPSED,
    SUCTION_JOINT_AIR_LEAK,
)
from knowledge.conditions import (
    AIR_IN_SUCTION,
    DIRT_IN_OIL,
    PRESSURE_GONE,
    SUCTION_THROTTLED,
)
from knowledge.findings.assembly import LEFTOVER_FOUND
from knowledge.findings.behaviour import (
    CHANGED_AFTER_KNOCK,
    CHANGED_AFTER_OTHER_WORK,
    CHANGED_WITH_NEW_PUMP,
    FADES_AT_SPEED_BACK_AFTER_REST,
    LOW_FROM_FIRST_START,
    NO_BETTER_WITH_NEW_PUMP,
    TEN_SECONDS_OR_MORE,
)
from knowledge.findings.debris import METAL_IN_SCREEN
from knowledge.findings.oil import ADDITIVE_OR_FLUSH_IN_OIL
from knowledge.findings.oil_look import WATER_AT_THE_DRAIN
from knowledge.findings.pressure import (
    DECLINED_OVER_MONTHS,
    FALLS_AS_REVS_RISE,
    FELL_SUDDENLY,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    NEEDLE_FLICKERS,
)
from knowledge.findings.suction import (
    BUBBLES_IN_JOINT_TEST,
    OVERFILL_STEADIES_IT,
    PICKUP_FELL_OFF,
    PICKUP_FIXING_LOOSE,
    PICKUP_GAP_TOO_SMALL,
    PICKUP_TUBE_CRACK_SEEN,
    PICKUP_TUBE_ROCKS,
    PICKUP_WITNESS_MARK,
    PRESSURE_BACK_AFTER_THAW,
    SCREEN_BYPASS_OPEN,
    SCREEN_TORN,
    SOMETHING_MISSED_AFTER_WORK,
    SUCTION_HOSE_FLATTENS,
    SUCTION_SEAL_CUT_OR_MISSING,
    SUCTION_UNION_LOOSE,
    SUMP_DENTED,
    TANK_STILL_FULL,
)
from knowledge.findings.suction_debris import (
    CLOTH_ON_SCREEN,
    FOREIGN_MATERIAL_ON_SCREEN,
    GASKET_ON_SCREEN,
    ICE_AT_SCREEN,
    PLASTIC_ON_SCREEN,
    SCREEN_BLOCKED,
    SEALER_ON_SCREEN,
    SLUDGE_ON_SCREEN,
    VARNISH_ON_SCREEN,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import AZN, CAV, ELP, GMC, HB01, HB05, HB17, TWO_CP
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    Station,
)

rule = rules_of(Station.SUCTION)

# ------------------------------------------------------------------------- throttled


@rule(
    source=TWO_CP,
    catches=[case_of(FADES_AT_SPEED_BACK_AFTER_REST), case_of(GAUGE_READS_LOW, SCREEN_BLOCKED)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SCREEN_BLOCKED])],
)
def good_at_first_then_the_screen_fills(known: Known) -> Conclusions:
    """Good at first, falling after minutes at speed, back after a rest: the screen is covered.

    Flow carries the debris onto the mesh; after a stop it drops away again. Misleads when the
    tube is taken off first: what lay on the mesh falls into the tray.
    """
    yield leads_to(PICKUP_SCREEN_BLOCKED, SUCTION_THROTTLED, ALWAYS)
    yield leads_to(PICKUP_SCREEN_BLOCKED, FADES_AT_SPEED_BACK_AFTER_REST, OFTEN)
    yield leads_to(PICKUP_SCREEN_BLOCKED, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(PICKUP_SCREEN_BLOCKED, DECLINED_OVER_MONTHS, SOMETIMES)
    yield leads_to(PICKUP_SCREEN_BLOCKED, ADDITIVE_OR_FLUSH_IN_OIL, SELDOM)
    yield leads_to(PICKUP_SCREEN_BLOCKED, NO_BETTER_WITH_NEW_PUMP, SELDOM)


@rule(
    source=TWO_CP,
    catches=[case_of(SCREEN_BLOCKED), case_of(SLUDGE_ON_SCREEN)],
    spares=[case_of(lacks=[SCREEN_BLOCKED])],
)
def what_lies_on_a_blocked_screen(known: Known) -> Conclusions:
    """A blocked screen carries sludge most often, then sealer, gasket, plastic or metal."""
    yield leads_to(PICKUP_SCREEN_BLOCKED, SCREEN_BLOCKED, ALWAYS)
    yield leads_to(PICKUP_SCREEN_BLOCKED, FOREIGN_MATERIAL_ON_SCREEN, OFTEN)
    yield leads_to(PICKUP_SCREEN_BLOCKED, SLUDGE_ON_SCREEN, OFTEN)
    yield leads_to(PICKUP_SCREEN_BLOCKED, VARNISH_ON_SCREEN, SOMETIMES)
    yield leads_to(PICKUP_SCREEN_BLOCKED, SEALER_ON_SCREEN, SOMETIMES)
    yield leads_to(PICKUP_SCREEN_BLOCKED, PLASTIC_ON_SCREEN, SELDOM)
    yield leads_to(PICKUP_SCREEN_BLOCKED, GASKET_ON_SCREEN, SOMETIMES)
    yield leads_to(PICKUP_SCREEN_BLOCKED, METAL_IN_SCREEN, SELDOM)


@rule(
    source=CP,
    catches=[case_of(CLOTH_ON_SCREEN), case_of(FELL_SUDDENLY, SOMETHING_MISSED_AFTER_WORK)],
    spares=[case_of(lacks=[CLOTH_ON_SCREEN, LEFTOVER_FOUND, FOREIGN_MATERIAL_ON_SCREEN])],
)
def left_behind_and_drawn_to_the_inlet(known: Known) -> Conclusions:
    """A rag or cap left inside is drawn to the inlet: sudden, or come and go, after some work.

    It can drift off the screen when the pump stops, so the next start may look normal.
    """
    yield leads_to(FOREIGN_BODY_IN_SUMP, SUCTION_THROTTLED, ALWAYS)
    yield leads_to(FOREIGN_BODY_IN_SUMP, PRESSURE_GONE, SOMETIMES)
    yield leads_to(FOREIGN_BODY_IN_SUMP, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(FOREIGN_BODY_IN_SUMP, FADES_AT_SPEED_BACK_AFTER_REST, SOMETIMES)
    yield leads_to(FOREIGN_BODY_IN_SUMP, CHANGED_AFTER_OTHER_WORK, OFTEN)
    yield leads_to(FOREIGN_BODY_IN_SUMP, SOMETHING_MISSED_AFTER_WORK, SOMETIMES)
    yield leads_to(FOREIGN_BODY_IN_SUMP, SCREEN_BLOCKED, MOSTLY)
    yield leads_to(FOREIGN_BODY_IN_SUMP, FOREIGN_MATERIAL_ON_SCREEN, MOSTLY)
    yield leads_to(FOREIGN_BODY_IN_SUMP, CLOTH_ON_SCREEN, OFTEN)
    yield leads_to(FOREIGN_BODY_IN_SUMP, LEFTOVER_FOUND, MOSTLY)


@rule(
    source=CP,
    catches=[case_of(PRESSURE_BACK_AFTER_THAW), case_of(GAUGE_READS_ZERO, ICE_AT_SCREEN)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[PRESSURE_BACK_AFTER_THAW, WATER_AT_THE_DRAIN])],
)
def nothing_until_it_thaws(known: Known) -> Conclusions:
    """Water under the oil freezes across the screen: no pressure in frost, right once thawed."""
    yield leads_to(ICE_IN_PICKUP, SUCTION_THROTTLED, MOSTLY)
    yield leads_to(ICE_IN_PICKUP, PRESSURE_GONE, OFTEN)
    yield leads_to(ICE_IN_PICKUP, TEN_SECONDS_OR_MORE, SOMETIMES)
    yield leads_to(ICE_IN_PICKUP, PRESSURE_BACK_AFTER_THAW, OFTEN)
    yield leads_to(ICE_IN_PICKUP, ICE_AT_SCREEN, OFTEN)
    yield leads_to(ICE_IN_PICKUP, WATER_AT_THE_DRAIN, MOSTLY)


@rule(
    source=ELP,
    catches=[case_of(PICKUP_GAP_TOO_SMALL), case_of(FALLS_AS_REVS_RISE, PICKUP_WITNESS_MARK)],
    spares=[case_of(FALLS_AS_REVS_RISE, lacks=[PICKUP_GAP_TOO_SMALL, PICKUP_WITNESS_MARK])],
)
def pickup_sits_on_the_floor(known: Known) -> Conclusions:
    """A tiny gap, or none, between pickup and sump floor throttles the suction like a blocked mesh.

    It comes with a changed pump, pickup, sump or gasket, and was there from that start on.
    """
    yield leads_to(PICKUP_CLEARANCE_TIGHT, SUCTION_THROTTLED, ALWAYS)
    yield leads_to(PICKUP_CLEARANCE_TIGHT, PICKUP_GAP_TOO_SMALL, ALWAYS)
    yield leads_to(PICKUP_CLEARANCE_TIGHT, PICKUP_WITNESS_MARK, OFTEN)
    yield leads_to(PICKUP_CLEARANCE_TIGHT, CHANGED_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(PICKUP_CLEARANCE_TIGHT, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(PICKUP_CLEARANCE_TIGHT, LOW_FROM_FIRST_START, SOMETIMES)


@rule(
    source=HB17,
    catches=[case_of(CHANGED_AFTER_KNOCK, SUMP_DENTED), case_of(CHANGED_AFTER_KNOCK)],
    spares=[case_of(SUMP_DENTED, lacks=[CHANGED_AFTER_KNOCK])],
)
def floor_pushed_up_by_a_knock(known: Known) -> Conclusions:
    """A jack, kerb or rock pushes the sump floor against the pickup, and the fault is there at once.

    Misleads when the dent is old: many sumps carry one that touches nothing.
    """
    yield leads_to(PAN_DENTED, SUCTION_THROTTLED, MOSTLY)
    yield leads_to(PAN_DENTED, AIR_IN_SUCTION, SELDOM)
    yield leads_to(PAN_DENTED, CHANGED_AFTER_KNOCK, MOSTLY)
    yield leads_to(PAN_DENTED, SUMP_DENTED, ALWAYS)
    yield leads_to(PAN_DENTED, PICKUP_GAP_TOO_SMALL, MOSTLY)
    yield leads_to(PAN_DENTED, PICKUP_WITNESS_MARK, OFTEN)


@rule(
    source=CAV,
    catches=[case_of(SUCTION_HOSE_FLATTENS)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SUCTION_HOSE_FLATTENS])],
)
def hose_sucked_flat(known: Known) -> Conclusions:
    """A soft, kinked or narrow hose from the tank flattens as the flow grows."""
    yield leads_to(SUCTION_HOSE_COLLAPSED, SUCTION_THROTTLED, ALWAYS)
    yield leads_to(SUCTION_HOSE_COLLAPSED, SUCTION_HOSE_FLATTENS, MOSTLY)
    yield leads_to(SUCTION_HOSE_COLLAPSED, TANK_STILL_FULL, OFTEN)


# ------------------------------------------------------------------------------ air


@rule(
    source=GMC,
    catches=[case_of(NEEDLE_FLICKERS, PICKUP_TUBE_ROCKS), case_of(FELL_SUDDENLY, PICKUP_FELL_OFF)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[PICKUP_TUBE_ROCKS, PICKUP_FELL_OFF])],
)
def tube_that_moves(known: Known) -> Conclusions:
    """A tube loose in the pump draws air and wavers at all speeds; if it drops off, all is gone."""
    yield leads_to(PICKUP_TUBE_LOOSE, AIR_IN_SUCTION, ALWAYS)
    yield leads_to(PICKUP_TUBE_LOOSE, PRESSURE_GONE, SOMETIMES)
    yield leads_to(PICKUP_TUBE_LOOSE, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(PICKUP_TUBE_LOOSE, CHANGED_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(PICKUP_TUBE_LOOSE, CHANGED_AFTER_KNOCK, SELDOM)
    yield leads_to(PICKUP_TUBE_LOOSE, OVERFILL_STEADIES_IT, SOMETIMES)
    yield leads_to(PICKUP_TUBE_LOOSE, PICKUP_TUBE_ROCKS, MOSTLY)
    yield leads_to(PICKUP_TUBE_LOOSE, PICKUP_FIXING_LOOSE, OFTEN)
    yield leads_to(PICKUP_TUBE_LOOSE, PICKUP_FELL_OFF, SOMETIMES)
    yield leads_to(PICKUP_TUBE_LOOSE, BUBBLES_IN_JOINT_TEST, OFTEN)


@rule(
    source=HB05,
    catches=[case_of(PICKUP_TUBE_CRACK_SEEN), case_of(NEEDLE_FLICKERS, BUBBLES_IN_JOINT_TEST)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[PICKUP_TUBE_CRACK_SEEN, BUBBLES_IN_JOINT_TEST])],
)
def tube_that_leaks(known: Known) -> Conclusions:
    """A cracked tube draws air whenever the oil stands below the crack, so more oil steadies it."""
    yield leads_to(PICKUP_TUBE_CRACKED, AIR_IN_SUCTION, ALWAYS)
    yield leads_to(PICKUP_TUBE_CRACKED, OVERFILL_STEADIES_IT, OFTEN)
    yield leads_to(PICKUP_TUBE_CRACKED, NO_BETTER_WITH_NEW_PUMP, SELDOM)
    yield leads_to(PICKUP_TUBE_CRACKED, PICKUP_TUBE_CRACK_SEEN, MOSTLY)
    yield leads_to(PICKUP_TUBE_CRACKED, BUBBLES_IN_JOINT_TEST, MOSTLY)
    yield leads_to(PICKUP_TUBE_CRACKED, PICKUP_FELL_OFF, SELDOM)


@rule(
    source=HB01,
    catches=[
        case_of(NEEDLE_FLICKERS, OVERFILL_STEADIES_IT),
        case_of(SUCTION_SEAL_CUT_OR_MISSING),
        case_of(SUCTION_UNION_LOOSE),
    ],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[SUCTION_SEAL_CUT_OR_MISSING, BUBBLES_IN_JOINT_TEST])],
)
def air_in_and_no_oil_out(known: Known) -> Conclusions:
    """A bad suction seal takes in air and lets no oil out: late, foamy, unsteady, nothing to see.

    Covering the joint with oil shuts the air out for a while.
    """
    yield leads_to(SUCTION_JOINT_AIR_LEAK, AIR_IN_SUCTION, ALWAYS)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, CHANGED_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, LOW_FROM_FIRST_START, SOMETIMES)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, NO_BETTER_WITH_NEW_PUMP, SELDOM)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, OVERFILL_STEADIES_IT, OFTEN)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, SUCTION_SEAL_CUT_OR_MISSING, MOSTLY)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, BUBBLES_IN_JOINT_TEST, MOSTLY)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, SUCTION_UNION_LOOSE, SOMETIMES)


# ------------------------------------------------------------------------ mesh open


@rule(
    source=AZN,
    catches=[case_of(SCREEN_TORN), case_of(SCREEN_BYPASS_OPEN)],
    spares=[case_of(lacks=[SCREEN_TORN, SCREEN_BYPASS_OPEN])],
)
def mesh_that_stops_nothing(known: Known) -> Conclusions:
    """A torn mesh or open bypass costs no pressure itself: it lets debris reach pump and relief."""
    yield leads_to(PICKUP_SCREEN_BYPASS_OPEN, DIRT_IN_OIL, MOSTLY)
    yield leads_to(PICKUP_SCREEN_BYPASS_OPEN, SCREEN_TORN, OFTEN)
    yield leads_to(PICKUP_SCREEN_BYPASS_OPEN, SCREEN_BYPASS_OPEN, OFTEN)
