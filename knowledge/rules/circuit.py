"""How one state of the oil circuit, or of the engine, brings about the next."""

from knowledge.conditions import (
    AIR_IN_SUCTION,
    BEARINGS_DAMAGED,
    BEARINGS_STARVED,
    BRANCH_DRY,
    CLEARANCES_WIDE,
    DELIVERY_REDUCED,
    DIRT_IN_OIL,
    ENGINE_FAILED,
    FLOW_RESTRICTED,
    JOURNAL_DRY,
    METAL_SHED,
    OIL_AERATED,
    OIL_ESCAPING,
    OIL_SHORT,
    OIL_SLUDGED,
    OIL_THICK,
    OIL_THIN,
    OPEN_LEAK_INSIDE,
    PICKUP_UNCOVERED,
    PRESSURE_GONE,
    PRESSURE_HIGH,
    PRESSURE_LOW,
    PRESSURE_UNSTEADY,
    PUMP_CAVITATES,
    PUMP_DRIVE_ERRATIC,
    PUMP_DRY,
    PUMP_NOT_TURNING,
    PUMP_SCORED,
    PUMP_SLIP,
    RELIEF_BLEEDS,
    RELIEF_CAPS_LOW,
    RELIEF_HOLDS_HIGH,
    SUCTION_THROTTLED,
    VALVE_GEAR_DRY,
)
from knowledge.findings.behaviour import (
    DIRECT_GAUGE_LOW,
    DIRECT_GAUGE_UNSTEADY,
    DIRECT_GAUGE_ZERO,
    FADES_AT_SPEED_BACK_AFTER_REST,
    FALLS_IN_A_MANOEUVRE,
    LOW_FROM_FIRST_START,
    NONE_FROM_FIRST_START,
    NOTHING_WARNED,
    PORTS_DIFFER,
    PUMP_PORT_LOW,
    SAGS_AS_OIL_HEATS,
    SLOW_AFTER_STANDING,
    TOP_UP_CURES_FOR_A_WHILE,
)
from knowledge.findings.pressure import (
    CAPPED_LOW,
    CLIMBS_PAST_SETTING,
    DECLINED_OVER_MONTHS,
    ENGINE_RUNS_NORMALLY,
    FALLS_AS_REVS_RISE,
    FELL_SUDDENLY,
    FLICKERS_ONLY_AT_HOT_IDLE,
    FLICKERS_ONLY_AT_SPEED,
    GAUGE_READS_HIGH,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    GOOD_COLD_LOW_HOT,
    LOW_AT_ALL_SPEEDS,
    LOW_EVEN_COLD,
    LOW_HOT_IDLE_GOOD_SPEED,
    NEEDLE_FLICKERS,
    RISES_JUST_OFF_IDLE,
)
from knowledge.findings.relief import DEBRIS_ON_RELIEF_SEAT
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import (
    AA97,
    CAV,
    CEB2,
    COMMON_PRACTICE,
    GMI,
    HB03,
    HB11,
    HB14,
    HB17,
    HB19,
    INL,
    MON,
    NE1,
    NE3,
    PBB,
    PF,
    PHYSICS,
    PRM,
    RUS,
    SLO,
    THK,
    V8F,
)
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.DELIVERY)


@rule(
    source=COMMON_PRACTICE,
    catches=[case_of(TOP_UP_CURES_FOR_A_WHILE, FELL_SUDDENLY)],
    spares=[case_of(FALLS_AS_REVS_RISE)],
)
def oil_that_leaves_is_missed_below(known: Known) -> Conclusions:
    """Oil that leaves the engine is missed at the pickup: pressure holds, wavers, then goes."""
    yield leads_to(OIL_ESCAPING, OIL_SHORT, MOSTLY)


@rule(
    source=INL,
    catches=[case_of(TOP_UP_CURES_FOR_A_WHILE, GAUGE_READS_LOW)],
    spares=[case_of(GAUGE_READS_LOW, ENGINE_RUNS_NORMALLY)],
)
def pump_that_swallows_air(known: Known) -> Conclusions:
    """Too little oil over the pickup: the pump swallows air, now and then at first, at last always."""
    yield leads_to(OIL_SHORT, PRESSURE_LOW, OFTEN)
    yield leads_to(OIL_SHORT, PRESSURE_GONE, OFTEN)
    yield leads_to(OIL_SHORT, PRESSURE_UNSTEADY, OFTEN)


@rule(source=SLO, catches=[case_of(FALLS_IN_A_MANOEUVRE)], spares=[case_of(GAUGE_READS_LOW)])
def oil_thrown_off_the_pickup(known: Known) -> Conclusions:
    """Oil thrown off the pickup lets pressure fall for as long as the manoeuvre lasts."""
    yield leads_to(PICKUP_UNCOVERED, PRESSURE_UNSTEADY, OFTEN)
    yield leads_to(PICKUP_UNCOVERED, PRESSURE_LOW, SOMETIMES)
    yield leads_to(PICKUP_UNCOVERED, PRESSURE_GONE, SELDOM)


@rule(source=INL, catches=[case_of(FADES_AT_SPEED_BACK_AFTER_REST)], spares=[case_of(CAPPED_LOW)])
def sludge_settles_where_oil_is_slow(known: Known) -> Conclusions:
    """Sludge settles on the mesh first, then in filter and oilways, and sticks valves."""
    yield leads_to(OIL_SLUDGED, SUCTION_THROTTLED, OFTEN)
    yield leads_to(OIL_SLUDGED, FLOW_RESTRICTED, SOMETIMES)
    yield leads_to(OIL_SLUDGED, RELIEF_BLEEDS, SELDOM)
    yield leads_to(OIL_SLUDGED, BRANCH_DRY, SELDOM)
    yield leads_to(OIL_SLUDGED, JOURNAL_DRY, SELDOM)


@rule(
    source=PHYSICS,
    catches=[case_of(GOOD_COLD_LOW_HOT, SAGS_AS_OIL_HEATS)],
    spares=[case_of(LOW_EVEN_COLD)],
)
def thin_oil_leaks_everywhere(known: Known) -> Conclusions:
    """Thin oil leaks from every clearance alike, so pressure sinks while nothing is broken."""
    yield leads_to(OIL_THIN, PRESSURE_LOW, MOSTLY)
    yield leads_to(OIL_THIN, PRESSURE_GONE, SELDOM)


@rule(source=HB03, catches=[case_of(GAUGE_READS_HIGH)], spares=[case_of(GOOD_COLD_LOW_HOT)])
def thick_oil_shows_high(known: Known) -> Conclusions:
    """Thick oil shows a high gauge while far bearings and a small suction go short."""
    yield leads_to(OIL_THICK, PRESSURE_HIGH, OFTEN)
    yield leads_to(OIL_THICK, PUMP_CAVITATES, SELDOM)
    yield leads_to(OIL_THICK, VALVE_GEAR_DRY, SELDOM)


@rule(
    source=CAV,
    catches=[case_of(FLICKERS_ONLY_AT_SPEED)],
    spares=[case_of(FLICKERS_ONLY_AT_HOT_IDLE)],
)
def foam_cannot_hold_pressure(known: Known) -> Conclusions:
    """Oil whipped full of air cannot hold pressure: the pump cavitates, lifters collapse, bearings starve."""
    yield leads_to(OIL_AERATED, PRESSURE_UNSTEADY, MOSTLY)
    yield leads_to(OIL_AERATED, PRESSURE_LOW, OFTEN)
    yield leads_to(OIL_AERATED, PUMP_CAVITATES, SOMETIMES)
    yield leads_to(OIL_AERATED, VALVE_GEAR_DRY, OFTEN)
    yield leads_to(OIL_AERATED, BEARINGS_STARVED, SOMETIMES)


@rule(source=CEB2, catches=[case_of(DEBRIS_ON_RELIEF_SEAT)], spares=[case_of(CAPPED_LOW)])
def dirt_goes_where_oil_goes(known: Known) -> Conclusions:
    """Dirt goes where the oil goes: mesh, pump, relief valve, oilways, bearings."""
    yield leads_to(DIRT_IN_OIL, SUCTION_THROTTLED, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, RELIEF_BLEEDS, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, PUMP_SCORED, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, BRANCH_DRY, SELDOM)
    yield leads_to(DIRT_IN_OIL, JOURNAL_DRY, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, FLOW_RESTRICTED, SELDOM)
    yield leads_to(DIRT_IN_OIL, BEARINGS_DAMAGED, OFTEN)


@rule(
    source=HB17,
    catches=[case_of(DIRECT_GAUGE_UNSTEADY, SLOW_AFTER_STANDING)],
    spares=[case_of(CAPPED_LOW)],
)
def air_sucked_in_comes_through_in_slugs(known: Known) -> Conclusions:
    """Air sucked in at a joint comes through in slugs: the needle wavers, and no oil shows outside."""
    yield leads_to(AIR_IN_SUCTION, PRESSURE_UNSTEADY, MOSTLY)
    yield leads_to(AIR_IN_SUCTION, PRESSURE_LOW, OFTEN)
    yield leads_to(AIR_IN_SUCTION, PRESSURE_GONE, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, PUMP_DRY, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, OIL_AERATED, SOMETIMES)


@rule(
    source=PHYSICS, catches=[case_of(FALLS_AS_REVS_RISE)], spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED)]
)
def pump_that_cannot_drink(known: Known) -> Conclusions:
    """A throttled suction feeds idle but not speed; the pump cavitates and pressure falls as revs rise."""
    yield leads_to(SUCTION_THROTTLED, PRESSURE_LOW, MOSTLY)
    yield leads_to(SUCTION_THROTTLED, PUMP_CAVITATES, OFTEN)
    yield leads_to(SUCTION_THROTTLED, PRESSURE_UNSTEADY, SOMETIMES)
    yield leads_to(SUCTION_THROTTLED, PRESSURE_GONE, SOMETIMES)


@rule(source=PHYSICS, catches=[case_of(RISES_JUST_OFF_IDLE)], spares=[case_of(FALLS_AS_REVS_RISE)])
def oil_slips_back_inside_the_pump(known: Known) -> Conclusions:
    """Oil that slips back inside a worn pump is missed most when the pump turns slowly and the oil is thin."""
    yield leads_to(PUMP_SLIP, PRESSURE_LOW, MOSTLY)
    yield leads_to(PUMP_SLIP, PRESSURE_GONE, SELDOM)


@rule(
    source=NE1,
    catches=[case_of(FELL_SUDDENLY, DIRECT_GAUGE_ZERO)],
    spares=[case_of(GOOD_COLD_LOW_HOT)],
)
def pump_that_stands_still(known: Known) -> Conclusions:
    """A pump that stands still gives nothing at all, at once."""
    yield leads_to(PUMP_NOT_TURNING, PRESSURE_GONE, ALWAYS)


@rule(
    source=V8F,
    catches=[case_of(NEEDLE_FLICKERS, DIRECT_GAUGE_UNSTEADY)],
    spares=[case_of(CAPPED_LOW)],
)
def drive_that_slips_or_binds(known: Known) -> Conclusions:
    """A drive that slips or binds gives pressure that comes and goes, sheds filings and at last lets go."""
    yield leads_to(PUMP_DRIVE_ERRATIC, PRESSURE_UNSTEADY, OFTEN)
    yield leads_to(PUMP_DRIVE_ERRATIC, PRESSURE_LOW, SOMETIMES)
    yield leads_to(PUMP_DRIVE_ERRATIC, PUMP_NOT_TURNING, SOMETIMES)
    yield leads_to(PUMP_DRIVE_ERRATIC, METAL_SHED, SOMETIMES)


@rule(source=PRM, catches=[case_of(NONE_FROM_FIRST_START)], spares=[case_of(GOOD_COLD_LOW_HOT)])
def dry_pump_does_not_draw(known: Known) -> Conclusions:
    """A dry pump does not draw: no pressure until its clearances are wetted."""
    yield leads_to(PUMP_DRY, PRESSURE_GONE, ALWAYS)


@rule(source=CAV, catches=[case_of(FALLS_AS_REVS_RISE)], spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED)])
def pump_that_rattles_at_speed(known: Known) -> Conclusions:
    """A cavitating pump loses delivery as it is turned faster."""
    yield leads_to(PUMP_CAVITATES, PRESSURE_LOW, OFTEN)
    yield leads_to(PUMP_CAVITATES, PRESSURE_UNSTEADY, OFTEN)


@rule(source=HB19, catches=[case_of(LOW_FROM_FIRST_START)], spares=[case_of(DECLINED_OVER_MONTHS)])
def wrong_pump_is_short_from_new(known: Known) -> Conclusions:
    """A wrong, reversed or masked pump is short of delivery from its first turn."""
    yield leads_to(DELIVERY_REDUCED, PRESSURE_LOW, ALWAYS)
    yield leads_to(DELIVERY_REDUCED, PRESSURE_GONE, SOMETIMES)


@rule(
    source=PF,
    catches=[case_of(LOW_HOT_IDLE_GOOD_SPEED, PUMP_PORT_LOW)],
    spares=[case_of(FALLS_AS_REVS_RISE)],
)
def valve_that_never_quite_shuts(known: Known) -> Conclusions:
    """A relief valve that never quite shuts robs the engine all the time, most at idle."""
    yield leads_to(RELIEF_BLEEDS, PRESSURE_LOW, ALWAYS)
    yield leads_to(RELIEF_BLEEDS, PRESSURE_UNSTEADY, SOMETIMES)
    yield leads_to(RELIEF_BLEEDS, PRESSURE_GONE, SELDOM)


@rule(source=PF, catches=[case_of(CAPPED_LOW)], spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED)])
def valve_that_opens_early(known: Known) -> Conclusions:
    """A relief valve that opens early sets a low ceiling and leaves idle alone."""
    yield leads_to(RELIEF_CAPS_LOW, PRESSURE_LOW, MOSTLY)


@rule(source=HB14, catches=[case_of(CLIMBS_PAST_SETTING)], spares=[case_of(GAUGE_READS_LOW)])
def valve_that_does_not_relieve(known: Known) -> Conclusions:
    """A relief valve that does not relieve lets cold pressure climb with the revs."""
    yield leads_to(RELIEF_HOLDS_HIGH, PRESSURE_HIGH, ALWAYS)


@rule(
    source=MON,
    catches=[case_of(LOW_AT_ALL_SPEEDS, LOW_EVEN_COLD)],
    spares=[case_of(FALLS_AS_REVS_RISE)],
)
def opening_inside_the_engine(known: Known) -> Conclusions:
    """An opening inside the engine takes oil like a hole: low at all speeds, hot or cold."""
    yield leads_to(OPEN_LEAK_INSIDE, PRESSURE_LOW, MOSTLY)
    yield leads_to(OPEN_LEAK_INSIDE, PRESSURE_GONE, SOMETIMES)


@rule(source=PF, catches=[case_of(GOOD_COLD_LOW_HOT)], spares=[case_of(LOW_EVEN_COLD)])
def wide_clearances_drain_the_gallery(known: Known) -> Conclusions:
    """Wide running clearances drain the gallery as soon as the oil is hot."""
    yield leads_to(CLEARANCES_WIDE, PRESSURE_LOW, ALWAYS)
    yield leads_to(CLEARANCES_WIDE, PRESSURE_GONE, SOMETIMES)


@rule(source=HB11, catches=[case_of(PORTS_DIFFER)], spares=[case_of(RISES_JUST_OFF_IDLE)])
def flow_held_back(known: Known) -> Conclusions:
    """A choked filter, cooler or oilway leaves what lies behind it short."""
    yield leads_to(FLOW_RESTRICTED, PRESSURE_LOW, OFTEN)
    yield leads_to(FLOW_RESTRICTED, BRANCH_DRY, SOMETIMES)
    yield leads_to(FLOW_RESTRICTED, JOURNAL_DRY, SOMETIMES)
    yield leads_to(FLOW_RESTRICTED, PRESSURE_GONE, SELDOM)


@rule(source=PBB, catches=[case_of(NOTHING_WARNED)], spares=[case_of(GAUGE_READS_LOW)])
def dry_branch_behind_a_good_gauge(known: Known) -> Conclusions:
    """A dry branch wears and fails while the gauge looks good."""
    yield leads_to(JOURNAL_DRY, BEARINGS_DAMAGED, MOSTLY)
    yield leads_to(BRANCH_DRY, VALVE_GEAR_DRY, OFTEN)


@rule(
    source=AA97,
    catches=[case_of(GAUGE_READS_LOW, DIRECT_GAUGE_LOW)],
    spares=[case_of(GAUGE_READS_LOW, ENGINE_RUNS_NORMALLY)],
)
def low_pressure_starves(known: Known) -> Conclusions:
    """Low pressure starves lifters first and bearings next."""
    yield leads_to(PRESSURE_LOW, VALVE_GEAR_DRY, OFTEN)
    yield leads_to(PRESSURE_LOW, BEARINGS_STARVED, SOMETIMES)


@rule(
    source=NE3,
    catches=[case_of(GAUGE_READS_ZERO, DIRECT_GAUGE_ZERO)],
    spares=[case_of(GAUGE_READS_ZERO, ENGINE_RUNS_NORMALLY)],
)
def no_pressure_starves_in_seconds(known: Known) -> Conclusions:
    """With no pressure the bearings run dry within seconds to minutes."""
    yield leads_to(PRESSURE_GONE, VALVE_GEAR_DRY, OFTEN)
    yield leads_to(PRESSURE_GONE, BEARINGS_STARVED, OFTEN)


@rule(source=SLO, catches=[case_of(DIRECT_GAUGE_UNSTEADY)], spares=[case_of(GAUGE_READS_LOW)])
def slugs_of_air_starve(known: Known) -> Conclusions:
    """Each slug of air starves a rod bearing a little, one event at a time."""
    yield leads_to(PRESSURE_UNSTEADY, BEARINGS_STARVED, SOMETIMES)
    yield leads_to(PRESSURE_UNSTEADY, VALVE_GEAR_DRY, SOMETIMES)


@rule(source=RUS, catches=[case_of(GAUGE_READS_ZERO)], spares=[case_of(ENGINE_RUNS_NORMALLY)])
def starved_bearing_wipes(known: Known) -> Conclusions:
    """A starved bearing wipes: that damage follows, it did not come first."""
    yield leads_to(BEARINGS_STARVED, BEARINGS_DAMAGED, OFTEN)


@rule(source=AA97, catches=[case_of(GAUGE_READS_ZERO)], spares=[case_of(ENGINE_RUNS_NORMALLY)])
def damaged_bearing_sheds_and_seizes(known: Known) -> Conclusions:
    """A damaged bearing sheds metal, knocks, and at last seizes or lets a rod go."""
    yield leads_to(BEARINGS_DAMAGED, METAL_SHED, MOSTLY)
    yield leads_to(BEARINGS_DAMAGED, ENGINE_FAILED, SOMETIMES)


@rule(source=GMI, catches=[case_of(DEBRIS_ON_RELIEF_SEAT)], spares=[case_of(ENGINE_RUNS_NORMALLY)])
def shed_metal_comes_round_again(known: Known) -> Conclusions:
    """Metal that was shed comes round again: it scores the pump and lies under the relief valve."""
    yield leads_to(METAL_SHED, PUMP_SCORED, SOMETIMES)
    yield leads_to(METAL_SHED, DEBRIS_ON_RELIEF_SEAT, SELDOM)


@rule(source=THK, catches=[case_of(DEBRIS_ON_RELIEF_SEAT)], spares=[case_of(CAPPED_LOW)])
def loose_dirt_lies_under_the_valve(known: Known) -> Conclusions:
    """Loose dirt that travels with the oil lies down under the relief valve."""
    yield leads_to(DIRT_IN_OIL, DEBRIS_ON_RELIEF_SEAT, SOMETIMES)
