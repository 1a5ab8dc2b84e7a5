"""Root causes in pickup gap, sump, baffles and returns, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    DOWN,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import findings as assembly_findings
from knowledge.stations.oil import findings_drained as oil_drained
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.stations.oil import findings_record as oil_record
from knowledge.stations.suction import findings, findings_pickup, findings_sump

PICKUP_CLEARANCE_TIGHT = Cause(
    id="pickup_clearance_tight",
    station=Station.SUCTION,
    says="pickup too close to the sump floor: parts that do not match, or the wrong gasket",
    mechanism="it acts like a partly blocked screen: pressure falls at high revs and with cold oil",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, raced_or_heeled=STRONG_UP),
    remedy="set the gap with the real gasket fitted, usually 1/4 to 3/8 inch (6 to 10 mm)",
    source=sources.OIL_PAN_TIPS,
    follows="pump cavitates, bearings short of oil at speed",
    also=(
        "pickup touching the pan",
        "pickup too low",
        "no clearance to oil pan",
        "pickup on the bottom",
        "pickup height misset",
    ),
)
PICKUP_SITS_ON_THE_FLOOR = LinkGroup(
    id="pickup_sits_on_the_floor",
    station=Station.SUCTION,
    says=("Too small a gap between pickup and sump floor acts like a blocked screen."),
    note=("It comes with a changed pump, pickup, sump or gasket, from the first start on."),
    parent=PICKUP_CLEARANCE_TIGHT,
    effects={
        conditions.SUCTION_THROTTLED: (ALWAYS, sources.OIL_PAN_TIPS),
        findings_pickup.PICKUP_GAP_TOO_SMALL: (ALWAYS, COMMON_PRACTICE),
        findings_sump.PICKUP_WITNESS_MARK: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_NEW_PUMP: (SOMETIMES, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, COMMON_PRACTICE),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_pickup.PICKUP_GAP_TOO_SMALL),
        example(patterns_speed.FALLS_AS_REVS_RISE, findings_sump.PICKUP_WITNESS_MARK),
    ],
    non_matches=[
        example(
            patterns_speed.FALLS_AS_REVS_RISE,
            lacks=[findings_pickup.PICKUP_GAP_TOO_SMALL, findings_sump.PICKUP_WITNESS_MARK],
        )
    ],
)

PICKUP_CLEARANCE_WIDE = Cause(
    id="pickup_clearance_wide",
    station=Station.SUCTION,
    says="pickup too far above the sump floor, such as a stock one in a deep sump (pan)",
    mechanism=("it comes out of the oil under braking, in bends, on hills, or at the add mark"),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, raced_or_heeled=STRONG_UP),
    remedy="fit the pickup that belongs to this sump",
    source=sources.OIL_STARVATION_ARTICLE,
    follows="bearings short of oil in every hard manoeuvre",
    also=("pickup too high", "deep pan with stock pickup", "pickup too short for the pan"),
)
PICKUP_HANGS_HIGH_IN_THE_PAN = LinkGroup(
    id="pickup_hangs_high_in_the_pan",
    station=Station.SUCTION,
    says=("A pickup too high for its sump comes out of the oil in bends; more oil helps."),
    parent=PICKUP_CLEARANCE_WIDE,
    effects={
        conditions.PICKUP_UNCOVERED: (MOSTLY, sources.OIL_STARVATION_ARTICLE),
        findings_pickup.PICKUP_GAP_TOO_LARGE: (ALWAYS, COMMON_PRACTICE),
    },
    matches=[
        example(findings_pickup.PICKUP_GAP_TOO_LARGE),
        example(behaviour.FALLS_IN_A_MANOEUVRE, findings_pickup.PICKUP_GAP_TOO_LARGE),
    ],
    non_matches=[
        example(behaviour.FALLS_IN_A_MANOEUVRE, lacks=[findings_pickup.PICKUP_GAP_TOO_LARGE])
    ],
)
DEEP_PAN_UNDER_THE_OLD_PICKUP = LinkGroup(
    id="deep_pan_under_the_old_pickup",
    station=Station.SUCTION,
    says=("A deep sump from another engine leaves the old pickup too high."),
    parent=PICKUP_CLEARANCE_WIDE,
    effects={
        oil_drained.DRAINED_VOLUME_HIGH: (SOMETIMES, COMMON_PRACTICE),
        oil_record.DIPSTICK_NOT_ITS_OWN: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.FALLS_IN_A_MANOEUVRE, oil_drained.DRAINED_VOLUME_HIGH),
        example(behaviour.FALLS_IN_A_MANOEUVRE, oil_record.DIPSTICK_NOT_ITS_OWN),
    ],
    non_matches=[
        example(
            behaviour.FALLS_IN_A_MANOEUVRE,
            lacks=[oil_drained.DRAINED_VOLUME_HIGH, oil_record.DIPSTICK_NOT_ITS_OWN],
        ),
        example(lacks=[oil_drained.DRAINED_VOLUME_HIGH]),
    ],
)

PAN_DENTED = Cause(
    id="pan_dented",
    station=Station.SUCTION,
    says="sump pushed up against the pickup by a jack, kerb or grounding",
    mechanism="the floor closes the inlet, at once after the knock",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(raced_or_heeled=UP),
    remedy="repair or renew the sump, check and renew the pickup",
    source=sources.LOWER_ENGINE_NOISE_2006,
    follows="pump starves, pickup or tube cracks",
    also=("dented oil pan", "jacked up on the sump", "hit a kerb", "bottomed out", "caved in pan"),
)
FLOOR_PUSHED_UP_BY_A_KNOCK = LinkGroup(
    id="floor_pushed_up_by_a_knock",
    station=Station.SUCTION,
    says=("A jack, kerb or rock pushes the sump floor against the pickup: trouble at once."),
    note="Misleads when the dent is old: many sumps have one that touches nothing.",
    parent=PAN_DENTED,
    effects={
        conditions.SUCTION_THROTTLED: (MOSTLY, sources.LOWER_ENGINE_NOISE_2006),
        conditions.AIR_IN_SUCTION: (SELDOM, JUDGEMENT),
        behaviour.CHANGED_AFTER_KNOCK: (MOSTLY, COMMON_PRACTICE),
        findings.SUMP_DENTED: (ALWAYS, COMMON_PRACTICE),
        findings_pickup.PICKUP_GAP_TOO_SMALL: (MOSTLY, sources.LOWER_ENGINE_NOISE_2006),
        findings_sump.PICKUP_WITNESS_MARK: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.CHANGED_AFTER_KNOCK, findings.SUMP_DENTED),
        example(behaviour.CHANGED_AFTER_KNOCK),
    ],
    non_matches=[example(findings.SUMP_DENTED, lacks=[behaviour.CHANGED_AFTER_KNOCK])],
)

ATTITUDE_UNCOVERS_PICKUP = Cause(
    id="attitude_uncovers_pickup",
    station=Station.SUCTION,
    says="slope, heel, cornering or mounting angle moves oil away from the pickup",
    mechanism="it drops to near zero in the manoeuvre and returns at once, the same every time",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(raced_or_heeled=STRONG_UP),
    remedy=("fit a baffled or larger sump or a swinging pickup; right level, angle within limits"),
    source=sources.SUMP_TILT_TEST,
    follows="rod bearings wiped, a little each time",
    also=(
        "oil surge",
        "oil slosh in corners",
        "pickup uncovers in turns",
        "engine mounted too steep",
        "boat heeling too far",
    ),
)

BAFFLE_MISSING = Cause(
    id="baffle_missing",
    station=Station.SUCTION,
    says="sump baffle or trap door missing, bent, loose or wrong way round",
    mechanism=("nothing keeps the oil at the pickup in bends and under braking"),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, raced_or_heeled=STRONG_UP),
    remedy="refit or make the baffle; the trap door must swing toward the pickup",
    source=sources.SUMP_TILT_TEST,
    follows="rod bearings wiped, a little each time",
    also=("no baffle in the pan", "trap door stuck", "windage baffle left out", "anti surge plate"),
)

WINDAGE_AERATION = Cause(
    id="windage_aeration",
    station=Station.SUCTION,
    says="crank whips air into the oil: windage tray missing, failed or too close",
    mechanism=(
        "the pump cavitates on oil full of air: pressure falls and flutters at high revs and "
        "settles when you close the throttle"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=STRONG_UP),
    remedy="fit a sound tray or scraper clear of the rods; correct the oil level",
    source=sources.ASME_AERATION_2006,
    follows="pump cavitates, lifters collapse, bearings short of oil",
    also=(
        "windage",
        "crank whipping the oil",
        "frothed up oil",
        "no windage tray",
        "windage tray broke",
    ),
)
CRANK_WHIPS_THE_OIL = LinkGroup(
    id="crank_whips_the_oil",
    station=Station.SUCTION,
    says=("A crank that whips air into the oil: the pump cavitates, bearings run short of oil."),
    parent=WINDAGE_AERATION,
    effects={
        conditions.OIL_AERATED: (ALWAYS, sources.ASME_AERATION_2006),
        conditions.PUMP_CAVITATES: (SOMETIMES, COMMON_PRACTICE),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (SOMETIMES, JUDGEMENT),
        findings_pickup.TRAY_RUBBED: (OFTEN, COMMON_PRACTICE),
        findings_pickup.TRAY_BROKEN_OR_MISSING: (OFTEN, COMMON_PRACTICE),
        findings_pickup.OIL_LINE_AT_CRANK: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_pickup.TRAY_RUBBED),
        example(patterns_speed.FLICKERS_ONLY_AT_SPEED, findings_pickup.TRAY_BROKEN_OR_MISSING),
    ],
    non_matches=[
        example(lacks=[findings_pickup.TRAY_RUBBED, findings_pickup.TRAY_BROKEN_OR_MISSING])
    ],
)

DRAINBACK_POOR = Cause(
    id="drainback_poor",
    station=Station.SUCTION,
    says="oil held up in heads or valley by blocked or small returns",
    mechanism=(
        "the sump empties at speed: pressure sags after 10 to 60 seconds at high revs and "
        "returns after idling"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="clear and smooth the returns; fit a larger sump or send less oil to the top end",
    source=sources.OIL_STARVATION_ARTICLE,
    follows="pickup comes out of the oil, bearings short of oil on long runs at speed",
    also=(
        "oil stays in the heads",
        "drain back holes plugged",
        "valve covers fill up with oil",
        "sump pumped dry",
    ),
)
SUMP_PUMPED_EMPTY_AT_SPEED = LinkGroup(
    id="sump_pumped_empty_at_speed",
    station=Station.SUCTION,
    says="Oil held up in heads or valley empties the sump at speed; at idle it runs back.",
    parent=DRAINBACK_POOR,
    effects={
        conditions.OIL_SHORT: (SOMETIMES, idea_from(sources.OIL_STARVATION_ARTICLE)),
        conditions.PICKUP_UNCOVERED: (OFTEN, sources.OIL_STARVATION_ARTICLE),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (OFTEN, sources.OIL_STARVATION_ARTICLE),
        patterns_speed.FALLS_AS_REVS_RISE: (OFTEN, JUDGEMENT),
        oil_heat.BLUE_SMOKE: (SOMETIMES, COMMON_PRACTICE),  # through guides and breather
        findings.OIL_SLOW_TO_RETURN: (MOSTLY, COMMON_PRACTICE),
        findings_pickup.RETURNS_BLOCKED: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(findings_pickup.RETURNS_BLOCKED),
        example(behaviour.FADES_AT_SPEED_BACK_AFTER_REST, findings.OIL_SLOW_TO_RETURN),
    ],
    non_matches=[
        example(
            behaviour.FADES_AT_SPEED_BACK_AFTER_REST,
            lacks=[findings_pickup.RETURNS_BLOCKED, findings.OIL_SLOW_TO_RETURN],
        )
    ],
)

SUCTION_HOSE_COLLAPSED = Cause(
    id="suction_hose_collapsed",
    station=Station.SUCTION,
    says="suction hose from the oil tank soft, kinked or too small",
    mechanism=("the hose flattens as flow grows: pressure falls at high revs and with cold oil"),
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=STRONG_UP),
    remedy="fit a reinforced suction hose of the right bore, without kinks",
    source=sources.PUMP_CAVITATION_ANSWER,
    follows="pump cavitates, bearings short of oil",
    also=("hose sucked flat", "kinked oil line from tank", "suction line too small", "soft hose"),
)
HOSE_SUCKED_FLAT = LinkGroup(
    id="hose_sucked_flat",
    station=Station.SUCTION,
    says="A soft, kinked or narrow hose from the tank flattens as the flow grows.",
    parent=SUCTION_HOSE_COLLAPSED,
    effects={
        conditions.SUCTION_THROTTLED: (ALWAYS, sources.LOWER_ENGINE_NOISE_2006),
        findings.SUCTION_HOSE_FLATTENS: (MOSTLY, COMMON_PRACTICE),
        findings.TANK_STILL_FULL: (OFTEN, JUDGEMENT),
    },
    matches=[example(findings.SUCTION_HOSE_FLATTENS)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.SUCTION_HOSE_FLATTENS])],
)

ICE_IN_PICKUP = Cause(
    id="ice_in_pickup",
    station=Station.SUCTION,
    says="water in the sump frozen across the pickup screen",
    mechanism="ice blocks the screen or the tube: little or no oil comes until the sump thaws",
    rate=Rate.VERY_RARE,
    shifts=Shifts(stood_long=UP),
    remedy=("thaw gently, drain, find where the water came from, inspect the bearings"),
    source=COMMON_PRACTICE,
    follows="dry start, bearings wiped",
    also=(
        "frozen pickup",
        "ice in the oil pan",
        "oil screen iced up",
        "condensation froze",
        "no oil pressure on a freezing morning",
    ),
)
NOTHING_UNTIL_IT_THAWS = LinkGroup(
    id="nothing_until_it_thaws",
    station=Station.SUCTION,
    says="Water under the oil freezes across the screen: no pressure in frost, normal once thawed.",
    parent=ICE_IN_PICKUP,
    effects={
        conditions.SUCTION_THROTTLED: (MOSTLY, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (OFTEN, COMMON_PRACTICE),
        behaviour.TEN_SECONDS_OR_MORE: (SOMETIMES, JUDGEMENT),
        findings.PRESSURE_BACK_AFTER_THAW: (OFTEN, COMMON_PRACTICE),
        findings_sump.ICE_AT_SCREEN: (OFTEN, COMMON_PRACTICE),
        oil_drained.WATER_AT_THE_DRAIN: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(findings.PRESSURE_BACK_AFTER_THAW),
        example(patterns.GAUGE_READS_ZERO, findings_sump.ICE_AT_SCREEN),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_ZERO,
            lacks=[findings.PRESSURE_BACK_AFTER_THAW, oil_drained.WATER_AT_THE_DRAIN],
        )
    ],
)

FOREIGN_BODY_IN_SUMP = Cause(
    id="foreign_body_in_sump",
    station=Station.SUCTION,
    says="rag, paper, cap, plug or other object left in the sump or suction",
    mechanism=(
        "it drifts onto the screen or sits in the pipe: pressure falls suddenly, comes and goes, "
        "or never came after the work"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=DOWN, freshly_rebuilt=STRONG_UP, oil_just_changed=UP),
    remedy="remove it whole, clean sump and pickup, count rags and caps at every job",
    source=COMMON_PRACTICE,
    follows="pump starves, bearings wiped",
    also=(
        "left a rag in the engine",
        "shop towel in the pan",
        "paper towel sucked into pickup",
        "dropped something in the engine",
        "plug left in the oil pump inlet",
    ),
)
LEFT_BEHIND_AND_DRAWN_TO_THE_INLET = LinkGroup(
    id="left_behind_and_drawn_to_the_inlet",
    station=Station.SUCTION,
    says=("A rag or cap left inside at some work: sudden loss, or it comes and goes."),
    note="It can drift off the screen when the pump stops, so the next start may look normal.",
    parent=FOREIGN_BODY_IN_SUMP,
    effects={
        conditions.SUCTION_THROTTLED: (ALWAYS, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SOMETIMES, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (SOMETIMES, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (OFTEN, COMMON_PRACTICE),
        findings.SOMETHING_MISSED_AFTER_WORK: (SOMETIMES, COMMON_PRACTICE),
        findings_sump.SCREEN_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        findings_sump.FOREIGN_MATERIAL_ON_SCREEN: (MOSTLY, COMMON_PRACTICE),
        findings_sump.CLOTH_ON_SCREEN: (OFTEN, COMMON_PRACTICE),
        assembly_findings.LEFTOVER_FOUND: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(findings_sump.CLOTH_ON_SCREEN),
        example(patterns.FELL_SUDDENLY, findings.SOMETHING_MISSED_AFTER_WORK),
    ],
    non_matches=[
        example(
            lacks=[
                findings_sump.CLOTH_ON_SCREEN,
                assembly_findings.LEFTOVER_FOUND,
                findings_sump.FOREIGN_MATERIAL_ON_SCREEN,
            ]
        )
    ],
)
