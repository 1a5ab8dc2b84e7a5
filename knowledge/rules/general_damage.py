"""What is found without being told how: damage, leaks and shed metal in general."""

from knowledge.causes.assembly import (
    DIRT_IN_ASSEMBLY,
    FASTENER_LOOSE_INSIDE,
    PART_SHEDDING_INSIDE,
    SEALANT_DEBRIS,
)
from knowledge.causes.bearings import BEARING_WEAR_MAINS, BEARING_WEAR_RODS, LINE_BORE_MISALIGNED
from knowledge.causes.delivery import FILTER_BYPASS_STUCK, FILTER_WRONG
from knowledge.causes.leaks import (
    BREATHER_BLOCKED,
    EXTERNAL_LEAK_MAJOR,
    FILTER_SEAL_LEAK,
    OIL_LINE_LEAK,
    SENDER_LEAK,
    SHAFT_SEAL_LEAK,
)
from knowledge.causes.oil import OIL_LEVEL_LOW, OIL_OVERHEATED
from knowledge.causes.pump import PUMP_BODY_CRACKED, PUMP_DEBRIS_LOCK, PUMP_NOT_PRIMED
from knowledge.causes.suction import PICKUP_SCREEN_BYPASS_OPEN, SUCTION_JOINT_AIR_LEAK
from knowledge.conditions import (
    BEARINGS_DAMAGED,
    BEARINGS_STARVED,
    DIRT_IN_OIL,
    ENGINE_FAILED,
    JOURNAL_DRY,
    OIL_ESCAPING,
    OPEN_LEAK_INSIDE,
    PRESSURE_HIGH,
    VALVE_GEAR_DRY,
)
from knowledge.findings.assembly import FOREIGN_PART_FITTED, PIECE_FOUND_INSIDE
from knowledge.findings.bearings import BEARINGS_FAILED_AGAIN, ENGINE_SEIZED, SHELLS_WIPED
from knowledge.findings.bearings_bench import (
    ENGINE_BANGED_OR_SHOOK,
    LOCKED_THEN_FREED,
    PISTON_OR_PIN_BROKEN,
    RATTLE_OF_UNKNOWN_PLACE,
    SEVERAL_JOURNALS_DRY,
    SHELLS_FOUND_RUINED,
    SHELLS_SMOOTH_LIGHT_WEAR,
)
from knowledge.findings.behaviour import CHANGED_AFTER_OTHER_WORK
from knowledge.findings.debris import METAL_THROUGHOUT
from knowledge.findings.delivery import (
    ADAPTER_GASKET_DISPLACED,
    BYPASS_VALVE_MISFITTED,
    FILTER_COLLAPSED,
)
from knowledge.findings.leaks import (
    OIL_LINE_WAS_DISTURBED,
    OIL_LOSS_FAST,
    OIL_LOST_ONLY_IN_FROST,
    OIL_SEEN_OUTSIDE,
    ONLY_SMALL_SEEPS,
    SEAL_FOUND_PUSHED_OUT,
)
from knowledge.findings.oil import DIPSTICK_DRY
from knowledge.findings.pressure import (
    ENGINE_RUNS_NORMALLY,
    GAUGE_READS_LOW,
    OTHER_GAUGES_ALSO_WRONG,
)
from knowledge.findings.suction_debris import METAL_PAST_THE_SCREEN
from knowledge.findings.topend import CAM_LOBES_WIPED
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import AA97, CEB2, ISS, NE2, RUS, TMK
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

delivery = rules_of(Station.DELIVERY)
leaks = rules_of(Station.LEAKS)
bearings = rules_of(Station.BEARINGS)
assembly = rules_of(Station.ASSEMBLY)
suction = rules_of(Station.SUCTION)


@delivery(
    source=CP,
    catches=[case_of(ADAPTER_GASKET_DISPLACED)],
    spares=[case_of(OIL_LOSS_FAST, lacks=[ADAPTER_GASKET_DISPLACED])],
)
def gasket_out_of_its_seat(known: Known) -> Conclusions:
    """A gasket blown out of the filter's adapter had too much pressure on it, or was never seated."""
    yield leads_to(FILTER_BYPASS_STUCK, ADAPTER_GASKET_DISPLACED, SOMETIMES)
    yield leads_to(FILTER_WRONG, ADAPTER_GASKET_DISPLACED, OFTEN)
    yield leads_to(FILTER_SEAL_LEAK, ADAPTER_GASKET_DISPLACED, OFTEN)
    yield leads_to(PRESSURE_HIGH, ADAPTER_GASKET_DISPLACED, SELDOM)


@delivery(
    source=CP,
    catches=[case_of(BYPASS_VALVE_MISFITTED)],
    spares=[case_of(FILTER_COLLAPSED, lacks=[BYPASS_VALVE_MISFITTED])],
)
def bypass_put_in_wrong(known: Known) -> Conclusions:
    """A bypass valve put in wrong lets cold oil crush the element, or dirty oil through."""
    yield leads_to(FILTER_BYPASS_STUCK, BYPASS_VALVE_MISFITTED, OFTEN)
    yield leads_to(FILTER_WRONG, BYPASS_VALVE_MISFITTED, SELDOM)
    yield leads_to(FILTER_BYPASS_STUCK, OIL_ESCAPING, SELDOM)


@leaks(
    source=CP,
    catches=[case_of(SEAL_FOUND_PUSHED_OUT)],
    spares=[case_of(OIL_SEEN_OUTSIDE, lacks=[SEAL_FOUND_PUSHED_OUT])],
)
def pushed_out_from_inside(known: Known) -> Conclusions:
    """A seal pushed out of its seat was pushed by the crankcase: look at the breather."""
    yield leads_to(BREATHER_BLOCKED, SEAL_FOUND_PUSHED_OUT, OFTEN)
    yield leads_to(SHAFT_SEAL_LEAK, SEAL_FOUND_PUSHED_OUT, SOMETIMES)


@leaks(
    source=CP,
    catches=[case_of(OIL_LOST_ONLY_IN_FROST)],
    spares=[case_of(OIL_SEEN_OUTSIDE, lacks=[OIL_LOST_ONLY_IN_FROST])],
)
def lost_in_the_frost_only(known: Known) -> Conclusions:
    """Oil lost only in frost, none at rest: ice closes the breather and the case blows its oil out."""
    yield leads_to(BREATHER_BLOCKED, OIL_LOST_ONLY_IN_FROST, SOMETIMES)


@leaks(
    source=TMK,
    catches=[case_of(DIPSTICK_DRY, ONLY_SMALL_SEEPS)],
    spares=[case_of(DIPSTICK_DRY, lacks=[ONLY_SMALL_SEEPS])],
)
def seeps_and_nobody_topped_up(known: Known) -> Conclusions:
    """Small seeps empty a sump only where nobody looks at the stick."""
    yield leads_to(OIL_LEVEL_LOW, ONLY_SMALL_SEEPS, SOMETIMES)


@leaks(
    source=CP,
    catches=[case_of(OIL_LINE_WAS_DISTURBED)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[OIL_LINE_WAS_DISTURBED])],
)
def line_touched_in_the_work(known: Known) -> Conclusions:
    """An oil line undone in the work just before is the first joint to look at."""
    yield leads_to(OIL_LINE_LEAK, OIL_LINE_WAS_DISTURBED, OFTEN)
    yield leads_to(SUCTION_JOINT_AIR_LEAK, OIL_LINE_WAS_DISTURBED, SOMETIMES)
    yield leads_to(PUMP_NOT_PRIMED, OIL_LINE_WAS_DISTURBED, SOMETIMES)


@bearings(
    source=AA97,
    catches=[case_of(SHELLS_FOUND_RUINED)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SHELLS_FOUND_RUINED])],
)
def shells_past_use(known: Known) -> Conclusions:
    """Ruined shells tell that the film broke, not why."""
    yield leads_to(BEARINGS_DAMAGED, SHELLS_FOUND_RUINED, MOSTLY)
    yield leads_to(BEARING_WEAR_RODS, SHELLS_FOUND_RUINED, OFTEN)
    yield leads_to(BEARING_WEAR_MAINS, SHELLS_FOUND_RUINED, OFTEN)


@bearings(
    source=RUS,
    catches=[case_of(SEVERAL_JOURNALS_DRY)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SEVERAL_JOURNALS_DRY])],
)
def some_journals_dry(known: Known) -> Conclusions:
    """Some journals dry and others not: the oil ran out on the way, at a leak or a closed feed."""
    yield leads_to(BEARINGS_STARVED, SEVERAL_JOURNALS_DRY, SOMETIMES)
    yield leads_to(JOURNAL_DRY, SEVERAL_JOURNALS_DRY, SOMETIMES)
    yield leads_to(OPEN_LEAK_INSIDE, SEVERAL_JOURNALS_DRY, SELDOM)


@bearings(source=RUS, catches=[case_of(SHELLS_SMOOTH_LIGHT_WEAR)], spares=[case_of(SHELLS_WIPED)])
def light_wear_without_heat(known: Known) -> Conclusions:
    """Light wear without heat: the bearings were not starved; at most they leak by clearance."""
    yield leads_to(BEARING_WEAR_MAINS, SHELLS_SMOOTH_LIGHT_WEAR, OFTEN)
    yield leads_to(BEARING_WEAR_RODS, SHELLS_SMOOTH_LIGHT_WEAR, OFTEN)
    yield leads_to(LINE_BORE_MISALIGNED, SHELLS_SMOOTH_LIGHT_WEAR, SOMETIMES)


@bearings(
    source=NE2, catches=[case_of(ENGINE_BANGED_OR_SHOOK)], spares=[case_of(ENGINE_RUNS_NORMALLY)]
)
def bang_and_shaking(known: Known) -> Conclusions:
    """A bang or shaking is the engine breaking, not the root."""
    yield leads_to(ENGINE_FAILED, ENGINE_BANGED_OR_SHOOK, OFTEN)
    yield leads_to(BEARINGS_DAMAGED, ENGINE_BANGED_OR_SHOOK, SOMETIMES)


@bearings(
    source=AA97, catches=[case_of(RATTLE_OF_UNKNOWN_PLACE)], spares=[case_of(ENGINE_RUNS_NORMALLY)]
)
def rattle_somewhere(known: Known) -> Conclusions:
    """A rattle nobody can place is often valve gear or bearings running dry."""
    yield leads_to(VALVE_GEAR_DRY, RATTLE_OF_UNKNOWN_PLACE, SOMETIMES)
    yield leads_to(BEARINGS_DAMAGED, RATTLE_OF_UNKNOWN_PLACE, SOMETIMES)


@bearings(source=NE2, catches=[case_of(LOCKED_THEN_FREED)], spares=[case_of(ENGINE_RUNS_NORMALLY)])
def locked_hot_free_cold(known: Known) -> Conclusions:
    """Locked hot and free when cold: bearings or pistons picked up and let go."""
    yield leads_to(BEARINGS_DAMAGED, LOCKED_THEN_FREED, SOMETIMES)
    yield leads_to(OIL_OVERHEATED, LOCKED_THEN_FREED, SELDOM)


@assembly(
    source=CEB2,
    catches=[case_of(PISTON_OR_PIN_BROKEN, METAL_THROUGHOUT)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[METAL_THROUGHOUT])],
)
def part_that_grinds_itself_away(known: Known) -> Conclusions:
    """A part that grinds itself away sends its metal round with the oil: screen, valve, oilways, bearings."""
    yield leads_to(PART_SHEDDING_INSIDE, DIRT_IN_OIL, ALWAYS)
    yield leads_to(PART_SHEDDING_INSIDE, PISTON_OR_PIN_BROKEN, SOMETIMES)
    yield leads_to(PART_SHEDDING_INSIDE, PIECE_FOUND_INSIDE, OFTEN)
    yield leads_to(PART_SHEDDING_INSIDE, METAL_THROUGHOUT, OFTEN)
    yield leads_to(PART_SHEDDING_INSIDE, CAM_LOBES_WIPED, SOMETIMES)
    yield leads_to(ENGINE_FAILED, PISTON_OR_PIN_BROKEN, SELDOM)
    yield leads_to(PART_SHEDDING_INSIDE, FOREIGN_PART_FITTED, SOMETIMES)


@leaks(
    source=CP,
    catches=[case_of(OIL_SEEN_OUTSIDE, CHANGED_AFTER_OTHER_WORK)],
    spares=[case_of(OIL_SEEN_OUTSIDE, lacks=[CHANGED_AFTER_OTHER_WORK])],
)
def cap_left_on_the_breather(known: Known) -> Conclusions:
    """Oil thrown out straight after other work: look for a breather capped, kinked or joined up wrong."""
    yield leads_to(BREATHER_BLOCKED, CHANGED_AFTER_OTHER_WORK, SOMETIMES)


@bearings(
    source=CEB2,
    catches=[case_of(GAUGE_READS_LOW, BEARINGS_FAILED_AGAIN)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[BEARINGS_FAILED_AGAIN])],
)
def bearings_gone_a_second_time(known: Known) -> Conclusions:
    """Bearings gone a second time: the first repair cured the damage and left the cause."""
    yield leads_to(BEARINGS_STARVED, BEARINGS_FAILED_AGAIN, SELDOM)


@bearings(
    source=CP,
    catches=[case_of(ENGINE_SEIZED, OTHER_GAUGES_ALSO_WRONG)],
    spares=[case_of(OTHER_GAUGES_ALSO_WRONG, ENGINE_RUNS_NORMALLY)],
)
def dead_engine_dims_the_rest(known: Known) -> Conclusions:
    """An engine that dies takes its charging with it: the other gauges dim for that reason too."""
    yield leads_to(ENGINE_FAILED, OTHER_GAUGES_ALSO_WRONG, SELDOM)


@leaks(
    source=CP,
    catches=[case_of(CHANGED_AFTER_OTHER_WORK)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[CHANGED_AFTER_OTHER_WORK])],
)
def whatever_was_undone_leaks_first(known: Known) -> Conclusions:
    """What was undone in the work leaks first: unions, seals, senders, bolts, sealer."""
    yield leads_to(EXTERNAL_LEAK_MAJOR, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(SHAFT_SEAL_LEAK, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(SENDER_LEAK, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(SEALANT_DEBRIS, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(FASTENER_LOOSE_INSIDE, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(DIRT_IN_ASSEMBLY, CHANGED_AFTER_OTHER_WORK, SOMETIMES)


@suction(
    source=ISS,
    catches=[case_of(METAL_PAST_THE_SCREEN)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[METAL_PAST_THE_SCREEN])],
)
def pieces_past_the_mesh(known: Known) -> Conclusions:
    """Pieces past the mesh went through the pump, or came from it."""
    yield leads_to(PICKUP_SCREEN_BYPASS_OPEN, METAL_PAST_THE_SCREEN, OFTEN)
    yield leads_to(PUMP_BODY_CRACKED, METAL_PAST_THE_SCREEN, SOMETIMES)
    yield leads_to(PUMP_DEBRIS_LOCK, METAL_PAST_THE_SCREEN, SOMETIMES)
