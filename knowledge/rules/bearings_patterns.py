"""Damage at the bearings, read for what came first: all or one, worn or wiped, dirt or dryness."""

from knowledge.causes.delivery import GALLERY_BLOCKED
from knowledge.causes.oil import COOLANT_IN_OIL, OIL_DEGRADED
from knowledge.conditions import (
    AIR_IN_SUCTION,
    BEARINGS_DAMAGED,
    BEARINGS_STARVED,
    DIRT_IN_OIL,
    ENGINE_FAILED,
    JOURNAL_DRY,
    METAL_SHED,
    OIL_AERATED,
    OPEN_LEAK_INSIDE,
    PUMP_SLIP,
    RELIEF_BLEEDS,
    SUCTION_THROTTLED,
)
from knowledge.findings.assembly import PIECE_FOUND_INSIDE
from knowledge.findings.bearings import (
    ALL_BEARINGS_WIPED,
    BEARING_KNOCK,
    BEARINGS_FAILED_AGAIN,
    CRANK_SCORED,
    DEEP_KNOCK_UNDER_LOAD,
    ENGINE_SEIZED,
    HARD_TO_TURN,
    LOWER_HALVES_EMBEDDED,
    MAIN_BEARING_SHIFTED,
    NO_BETTER_WITH_NEW_BEARINGS,
    ONE_BEARING_WIPED,
    RAP_DULLED_BY_CUT_OUT,
    ROD_THROUGH_BLOCK,
    SHELL_SPUN,
    SHELLS_EMBEDDED_DIRT,
    SHELLS_ETCHED,
    SHELLS_PITTED_UNLOADED,
    SHELLS_SCRATCHED,
    SHELLS_WIPED,
    STOPPED_WITH_LOSS_OF_POWER,
    WORST_FAR_FROM_PUMP,
)
from knowledge.findings.bearings_bench import MAIN_CLEARANCE_TOO_WIDE, ROD_CLEARANCE_TOO_WIDE
from knowledge.findings.debris import COPPER_FLAKES, GREY_SOFT_FLAKES, LINING_STRIP, METAL_IN_FILTER
from knowledge.findings.pressure import (
    GAUGE_READS_LOW,
)
from knowledge.rulebook import (
    Conclusions,
    Known,
    case_of,
    leads_to,
    rules_of,
)
from knowledge.sources import AA97, BFP, BTG, ISO, LTK, RUS
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.BEARINGS)


# ------------------------------------------------------------ which came first: the pattern


@rule(
    source=RUS,
    catches=[case_of(ALL_BEARINGS_WIPED), case_of(SHELLS_WIPED, WORST_FAR_FROM_PUMP)],
    spares=[case_of(ONE_BEARING_WIPED, lacks=[ALL_BEARINGS_WIPED, WORST_FAR_FROM_PUMP])],
)
def all_alike_or_worst_far_from_the_pump(known: Known) -> Conclusions:
    """All wiped alike, or worst far from the pump: the oil failed first, the bearings after."""
    yield leads_to(BEARINGS_STARVED, SHELLS_WIPED, MOSTLY)
    yield leads_to(BEARINGS_STARVED, ALL_BEARINGS_WIPED, OFTEN)
    yield leads_to(BEARINGS_STARVED, WORST_FAR_FROM_PUMP, OFTEN)


@rule(
    source=LTK,
    catches=[case_of(ONE_BEARING_WIPED), case_of(SHELLS_WIPED, ONE_BEARING_WIPED)],
    spares=[case_of(ALL_BEARINGS_WIPED, lacks=[ONE_BEARING_WIPED])],
)
def one_alone_and_the_others_sound(known: Known) -> Conclusions:
    """One wiped and the others sound: look at that one's oil hole, size and rod, not at the pump."""
    yield leads_to(JOURNAL_DRY, ONE_BEARING_WIPED, SOMETIMES)
    yield leads_to(JOURNAL_DRY, BEARINGS_FAILED_AGAIN, SELDOM)
    yield leads_to(GALLERY_BLOCKED, ONE_BEARING_WIPED, SOMETIMES)
    yield leads_to(GALLERY_BLOCKED, BEARINGS_FAILED_AGAIN, SOMETIMES)


@rule(
    source=BFP,
    catches=[case_of(LOWER_HALVES_EMBEDDED), case_of(SHELLS_SCRATCHED, SHELLS_EMBEDDED_DIRT)],
    spares=[case_of(SHELLS_WIPED, lacks=[SHELLS_EMBEDDED_DIRT, LOWER_HALVES_EMBEDDED])],
)
def dirt_pressed_into_the_shells(known: Known) -> Conclusions:
    """Dirt pressed into the loaded halves and lines scored round: dirt came first, not dryness."""
    yield leads_to(DIRT_IN_OIL, SHELLS_EMBEDDED_DIRT, MOSTLY)
    yield leads_to(DIRT_IN_OIL, LOWER_HALVES_EMBEDDED, OFTEN)
    yield leads_to(DIRT_IN_OIL, SHELLS_SCRATCHED, MOSTLY)


@rule(
    source=BFP,
    catches=[case_of(SHELLS_SCRATCHED, METAL_IN_FILTER)],
    spares=[case_of(SHELLS_SCRATCHED, lacks=[METAL_IN_FILTER])],
)
def shed_metal_scores_the_rest(known: Known) -> Conclusions:
    """Metal shed by one part scores the shells of the others: lines round them may be following damage."""
    yield leads_to(METAL_SHED, SHELLS_EMBEDDED_DIRT, SOMETIMES)
    yield leads_to(METAL_SHED, SHELLS_SCRATCHED, SOMETIMES)


@rule(source=ISO, catches=[case_of(SHELLS_ETCHED)], spares=[case_of(lacks=[SHELLS_ETCHED])])
def dark_and_etched_shells(known: Known) -> Conclusions:
    """Dark, spongy, etched shells were eaten by sour or watered oil."""
    yield leads_to(OIL_DEGRADED, SHELLS_ETCHED, SOMETIMES)
    yield leads_to(COOLANT_IN_OIL, SHELLS_ETCHED, SOMETIMES)


@rule(
    source=BTG,
    catches=[case_of(SHELLS_PITTED_UNLOADED)],
    spares=[case_of(lacks=[SHELLS_PITTED_UNLOADED])],
)
def pits_on_the_unloaded_half(known: Known) -> Conclusions:
    """Pits on the unloaded half were dug by air in the oil."""
    yield leads_to(OIL_AERATED, SHELLS_PITTED_UNLOADED, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(NO_BETTER_WITH_NEW_BEARINGS)],
    spares=[case_of(lacks=[NO_BETTER_WITH_NEW_BEARINGS])],
)
def no_better_for_new_shells(known: Known) -> Conclusions:
    """No better for new shells: the loss is somewhere else."""
    yield leads_to(OPEN_LEAK_INSIDE, NO_BETTER_WITH_NEW_BEARINGS, SOMETIMES)
    yield leads_to(RELIEF_BLEEDS, NO_BETTER_WITH_NEW_BEARINGS, SELDOM)
    yield leads_to(PUMP_SLIP, NO_BETTER_WITH_NEW_BEARINGS, SELDOM)
    yield leads_to(SUCTION_THROTTLED, NO_BETTER_WITH_NEW_BEARINGS, SELDOM)
    yield leads_to(AIR_IN_SUCTION, NO_BETTER_WITH_NEW_BEARINGS, SELDOM)


# ---------------------------------------------------------------------- the damage itself


@rule(
    source=AA97,
    catches=[case_of(BEARING_KNOCK), case_of(COPPER_FLAKES), case_of(LINING_STRIP)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[BEARING_KNOCK, COPPER_FLAKES, GREY_SOFT_FLAKES])],
)
def damaged_bearing_knocks_and_sheds(known: Known) -> Conclusions:
    """A damaged bearing knocks and sheds copper and white metal, whatever damaged it."""
    yield leads_to(BEARINGS_DAMAGED, BEARING_KNOCK, OFTEN)
    yield leads_to(BEARINGS_DAMAGED, DEEP_KNOCK_UNDER_LOAD, SOMETIMES)
    yield leads_to(BEARINGS_DAMAGED, RAP_DULLED_BY_CUT_OUT, SOMETIMES)
    yield leads_to(BEARINGS_DAMAGED, HARD_TO_TURN, SOMETIMES)
    yield leads_to(BEARINGS_DAMAGED, COPPER_FLAKES, OFTEN)
    yield leads_to(BEARINGS_DAMAGED, GREY_SOFT_FLAKES, OFTEN)
    yield leads_to(BEARINGS_DAMAGED, LINING_STRIP, SOMETIMES)


@rule(
    source=RUS,
    catches=[case_of(SHELLS_WIPED), case_of(CRANK_SCORED)],
    spares=[case_of(lacks=[SHELLS_WIPED, CRANK_SCORED])],
)
def wiped_shells_and_scored_crank(known: Known) -> Conclusions:
    """Wiped shells, a scored crank, wide clearances: damage, not yet its cause."""
    yield leads_to(BEARINGS_DAMAGED, SHELLS_WIPED, OFTEN)
    yield leads_to(BEARINGS_DAMAGED, CRANK_SCORED, OFTEN)
    yield leads_to(BEARINGS_DAMAGED, SHELL_SPUN, SOMETIMES)
    yield leads_to(BEARINGS_DAMAGED, MAIN_BEARING_SHIFTED, SELDOM)
    yield leads_to(BEARINGS_DAMAGED, MAIN_CLEARANCE_TOO_WIDE, SOMETIMES)
    yield leads_to(BEARINGS_DAMAGED, ROD_CLEARANCE_TOO_WIDE, SOMETIMES)


@rule(
    source=AA97,
    catches=[case_of(ENGINE_SEIZED), case_of(ROD_THROUGH_BLOCK)],
    spares=[case_of(STOPPED_WITH_LOSS_OF_POWER, lacks=[ENGINE_SEIZED, ROD_THROUGH_BLOCK])],
)
def end_of_the_chain(known: Known) -> Conclusions:
    """Seized, stopped, or a rod through the block: the end of a chain, never its beginning."""
    yield leads_to(ENGINE_FAILED, ENGINE_SEIZED, OFTEN)
    yield leads_to(ENGINE_FAILED, ROD_THROUGH_BLOCK, SOMETIMES)
    yield leads_to(ENGINE_FAILED, STOPPED_WITH_LOSS_OF_POWER, OFTEN)
    yield leads_to(ENGINE_FAILED, HARD_TO_TURN, SOMETIMES)
    yield leads_to(ENGINE_FAILED, PIECE_FOUND_INSIDE, SOMETIMES)
