"""Root causes at the suction side, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
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
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.oil import findings_record as oil_record
from knowledge.stations.suction import findings, findings_pickup, findings_sump

PICKUP_SCREEN_BLOCKED = Cause(
    id="pickup_screen_blocked",
    station=Station.SUCTION,
    says="oil pickup screen blocked by sludge, sealer, gasket, plastic or metal",
    mechanism=(
        "the pump starves as flow grows: good cold and at idle, falling with revs and time; "
        "often back after a stop, when the debris drops away"
    ),
    rate=Rate.VERY_COMMON,
    shifts=Shifts(high_mileage=STRONG_UP, freshly_rebuilt=DOWN, stood_long=UP),
    remedy="fit a new screen, clean the sump, and find what shed the debris",
    source=sources.TECHNICIAN_ANSWER,
    follows="pump cavitates and rattles, bearings wiped",
    also=(
        "plugged pickup screen",
        "clogged oil strainer",
        "blocked sump strainer",
        "pickup gauze choked",
        "oil screen full of crud",
    ),
)
GOOD_AT_FIRST_THEN_THE_SCREEN_FILLS = LinkGroup(
    id="good_at_first_then_the_screen_fills",
    station=Station.SUCTION,
    says="Good at first, falling after minutes at speed, back after a rest: the screen is covered.",
    note=(
        "Flow carries the debris onto the mesh; after a stop it drops away again. Misleads when "
        "the tube is taken off first: debris on the mesh falls into the tray."
    ),
    parent=PICKUP_SCREEN_BLOCKED,
    effects={
        conditions.SUCTION_THROTTLED: (ALWAYS, sources.DIESEL_TESTING_MANUAL),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (OFTEN, sources.TECHNICIAN_ANSWER),
        patterns.FELL_SUDDENLY: (SOMETIMES, sources.TECHNICIAN_ANSWER),
        patterns.DECLINED_OVER_MONTHS: (SOMETIMES, COMMON_PRACTICE),
        oil_record.ADDITIVE_OR_FLUSH_IN_OIL: (SELDOM, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.FADES_AT_SPEED_BACK_AFTER_REST),
        example(patterns.GAUGE_READS_LOW, findings_sump.SCREEN_BLOCKED),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sump.SCREEN_BLOCKED])],
)
WHAT_LIES_ON_A_BLOCKED_SCREEN = LinkGroup(
    id="what_lies_on_a_blocked_screen",
    station=Station.SUCTION,
    says="A blocked screen holds sludge most often, then sealer, gasket, plastic or metal.",
    parent=PICKUP_SCREEN_BLOCKED,
    effects={
        findings_sump.SCREEN_BLOCKED: (ALWAYS, COMMON_PRACTICE),
        findings_sump.FOREIGN_MATERIAL_ON_SCREEN: (OFTEN, COMMON_PRACTICE),
        findings_sump.SLUDGE_ON_SCREEN: (OFTEN, sources.CLUB_BLOCKED_SCREENS),
        findings_sump.VARNISH_ON_SCREEN: (SOMETIMES, sources.PUMP_MAKER_SHAFTS_SCREENS),
        findings_sump.SEALER_ON_SCREEN: (SOMETIMES, sources.CLUB_SEALANT_STRAINER),
        findings_sump.PLASTIC_ON_SCREEN: (SELDOM, sources.CLUB_BLOCKED_SCREENS),
        findings_sump.GASKET_ON_SCREEN: (SOMETIMES, COMMON_PRACTICE),
        debris_findings.METAL_IN_SCREEN: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(findings_sump.SCREEN_BLOCKED), example(findings_sump.SLUDGE_ON_SCREEN)],
    non_matches=[example(lacks=[findings_sump.SCREEN_BLOCKED])],
)

PICKUP_SCREEN_BYPASS_OPEN = Cause(
    id="pickup_screen_bypass_open",
    station=Station.SUCTION,
    says="pickup screen torn, loose, or its cold-oil bypass stuck open",
    mechanism=(
        "debris passes straight into the pump; pressure falls only when the debris does damage"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),
    remedy="fit a new pickup; clean debris out of pump and relief valve",
    source=sources.PUMP_SCREEN_NOTES,
    follows="chips under the relief valve, scored or jammed pump",
    also=("hole in the pickup screen", "torn strainer", "screen bypass flap open", "mesh came off"),
)
MESH_THAT_STOPS_NOTHING = LinkGroup(
    id="mesh_that_stops_nothing",
    station=Station.SUCTION,
    says=(
        "A torn mesh or open bypass costs no pressure itself: it lets debris into pump and "
        "relief valve."
    ),
    parent=PICKUP_SCREEN_BYPASS_OPEN,
    effects={
        conditions.DIRT_IN_OIL: (MOSTLY, sources.PUMP_SCREEN_NOTES),
        findings_sump.SCREEN_TORN: (OFTEN, COMMON_PRACTICE),
        findings_sump.SCREEN_BYPASS_OPEN: (OFTEN, sources.PUMP_SCREEN_NOTES),
    },
    matches=[example(findings_sump.SCREEN_TORN), example(findings_sump.SCREEN_BYPASS_OPEN)],
    non_matches=[example(lacks=[findings_sump.SCREEN_TORN, findings_sump.SCREEN_BYPASS_OPEN])],
)

PICKUP_TUBE_LOOSE = Cause(
    id="pickup_tube_loose",
    station=Station.SUCTION,
    says="oil pickup tube or its bolts loose, or bracket broken",
    mechanism=(
        "air is drawn in above the oil: unsteady at all speeds, worse with revs, slow to build; "
        "if the tube drops off, all pressure is gone at once"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, raced_or_heeled=STRONG_UP),
    remedy="fit a new tube and secure it: bolt and bracket, or a tack weld with the pump stripped",
    source=sources.TRUCK_SERVICE_1994,
    follows="the pickup drops into the sump, all pressure lost",
    also=(
        "pickup fell off",
        "pickup tube came loose",
        "loose oil pickup",
        "strainer dropped off",
        "pickup bolt missing",
    ),
)
TUBE_THAT_MOVES = LinkGroup(
    id="tube_that_moves",
    station=Station.SUCTION,
    says=(
        "A tube loose in the pump draws air and the needle wavers at all speeds; if it drops "
        "off, all pressure is gone."
    ),
    parent=PICKUP_TUBE_LOOSE,
    effects={
        conditions.AIR_IN_SUCTION: (ALWAYS, idea_from(sources.TRUCK_SERVICE_1994)),
        conditions.PRESSURE_GONE: (SOMETIMES, idea_from(sources.TRUCK_SERVICE_1994)),
        patterns.FELL_SUDDENLY: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_NEW_PUMP: (OFTEN, sources.TRUCK_SERVICE_1994),
        behaviour.CHANGED_AFTER_KNOCK: (SELDOM, JUDGEMENT),
        findings_pickup.PICKUP_TUBE_ROCKS: (MOSTLY, COMMON_PRACTICE),
        findings_pickup.PICKUP_FIXING_LOOSE: (OFTEN, sources.PICKUP_BRACKET_THREAD),
        findings_sump.PICKUP_FELL_OFF: (SOMETIMES, COMMON_PRACTICE),
        findings_pickup.BUBBLES_IN_JOINT_TEST: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.NEEDLE_FLICKERS, findings_pickup.PICKUP_TUBE_ROCKS),
        example(patterns.FELL_SUDDENLY, findings_sump.PICKUP_FELL_OFF),
    ],
    non_matches=[
        example(
            patterns.NEEDLE_FLICKERS,
            lacks=[findings_pickup.PICKUP_TUBE_ROCKS, findings_sump.PICKUP_FELL_OFF],
        )
    ],
)

PICKUP_TUBE_CRACKED = Cause(
    id="pickup_tube_cracked",
    station=Station.SUCTION,
    says="crack or pinhole in the oil pickup tube or its brazing",
    mechanism=(
        "air is drawn in through the crack whenever the oil level is below it: unsteady, slow to "
        "build"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="replace the tube; find the vibration or strain that cracked it",
    source=sources.CROSSOVER_V6_MANUAL_2007,
    follows="the tube breaks through, all pressure lost",
    also=("cracked pickup", "split pickup tube", "pinhole in suction pipe", "broken pickup tube"),
)
TUBE_THAT_LEAKS = LinkGroup(
    id="tube_that_leaks",
    station=Station.SUCTION,
    says=(
        "A cracked tube draws air whenever the oil level is below the crack, so more oil "
        "steadies it."
    ),
    parent=PICKUP_TUBE_CRACKED,
    effects={
        conditions.AIR_IN_SUCTION: (ALWAYS, sources.CROSSOVER_V6_MANUAL_2007),
        findings_pickup.PICKUP_TUBE_CRACK_SEEN: (MOSTLY, COMMON_PRACTICE),
        findings_pickup.BUBBLES_IN_JOINT_TEST: (MOSTLY, COMMON_PRACTICE),
        findings_sump.PICKUP_FELL_OFF: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(findings_pickup.PICKUP_TUBE_CRACK_SEEN),
        example(patterns.NEEDLE_FLICKERS, findings_pickup.BUBBLES_IN_JOINT_TEST),
    ],
    non_matches=[
        example(
            patterns.NEEDLE_FLICKERS,
            lacks=[findings_pickup.PICKUP_TUBE_CRACK_SEEN, findings_pickup.BUBBLES_IN_JOINT_TEST],
        )
    ],
)

SUCTION_JOINT_AIR_LEAK = Cause(
    id="suction_joint_air_leak",
    station=Station.SUCTION,
    says="suction O-ring, gasket, flange or union leaks air or was left out",
    mechanism=(
        "air gets in but no oil comes out: slow to build after standing, foamy and unsteady "
        "pressure, nothing to see outside"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=STRONG_UP, stood_long=UP, raced_or_heeled=UP),
    remedy="fit a new seal, oiled; push the tube fully home by hand and tighten evenly",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="prime lost, oil full of air, bearings short of oil",
    also=(
        "pickup o-ring",
        "o ring left out",
        "sucking air",
        "pump draws air",
        "pinched oil pickup seal",
        "suction gasket leaking",
    ),
)
AIR_IN_AND_NO_OIL_OUT = LinkGroup(
    id="air_in_and_no_oil_out",
    station=Station.SUCTION,
    says=(
        "A bad suction seal lets air in but no oil out: late, foamy, unsteady pressure, nothing "
        "to see."
    ),
    note="Oil over the joint keeps the air out for a while.",
    parent=SUCTION_JOINT_AIR_LEAK,
    effects={
        conditions.AIR_IN_SUCTION: (ALWAYS, sources.ARMY_TM_347_CHART_1973),
        behaviour.CHANGED_WITH_NEW_PUMP: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, COMMON_PRACTICE),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, JUDGEMENT),
        findings_pickup.SUCTION_SEAL_CUT_OR_MISSING: (MOSTLY, sources.LOWER_ENGINE_NOISE_2006),
        findings_pickup.BUBBLES_IN_JOINT_TEST: (MOSTLY, COMMON_PRACTICE),
        findings.SUCTION_UNION_LOOSE: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.NEEDLE_FLICKERS, findings.OVERFILL_STEADIES_IT),
        example(findings_pickup.SUCTION_SEAL_CUT_OR_MISSING),
        example(findings.SUCTION_UNION_LOOSE),
    ],
    non_matches=[
        example(
            patterns.NEEDLE_FLICKERS,
            lacks=[
                findings_pickup.SUCTION_SEAL_CUT_OR_MISSING,
                findings_pickup.BUBBLES_IN_JOINT_TEST,
            ],
        )
    ],
)
