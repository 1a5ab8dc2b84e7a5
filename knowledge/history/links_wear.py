"""What hours of running wear together: one root that feeds the causes that are wear."""

from knowledge import sources
from knowledge.circuit.conditions import WORN_BY_HOURS
from knowledge.model import MOSTLY, OFTEN, RARELY, SOMETIMES, Station
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_shafts as bearings_causes_shafts
from knowledge.stations.bearings import findings_measured
from knowledge.stations.oil import findings_heat, findings_record
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import findings_bench
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import findings_cam

HOURS_WEAR_EVERYTHING_TOGETHER = LinkGroup(
    id="hours_wear_everything_together",
    station=Station.BEARINGS,
    says=(
        "Hours of running wear mains, rods, cam bearings and pump together: if one measures "
        "wide, the others are likelier."
    ),
    note=(
        "The rate of each of these causes is that of an ordinary engine, hours included; wear at "
        "one place alone has its own reasons: dirt, a poor fit, a poor part."
    ),
    parent=WORN_BY_HOURS,
    effects={
        bearings_causes.BEARING_WEAR_MAINS: (MOSTLY, sources.CARLEY_2000),
        bearings_causes.BEARING_WEAR_RODS: (MOSTLY, sources.CARLEY_2000),
        topend_causes.CAM_BEARING_WEAR: (OFTEN, JUDGEMENT),
        topend_causes.LIFTER_BORE_LEAK: (SOMETIMES, JUDGEMENT),
        bearings_causes_shafts.BALANCE_SHAFT_WEAR: (RARELY, JUDGEMENT),
        bearings_causes_shafts.AUXILIARY_SHAFT_WEAR: (RARELY, JUDGEMENT),
        bearings_causes_shafts.IDLER_BUSH_WEAR: (RARELY, JUDGEMENT),
        topend_causes.ROCKER_SHAFT_LEAK: (SOMETIMES, JUDGEMENT),
        pump_causes.PUMP_GEAR_WEAR: (SOMETIMES, idea_from(sources.ENGINE_BUILDER_2009)),
        pump_causes.PUMP_COVER_SCORED: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_BORE_SCORED: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_measured.MAIN_CLEARANCE_TOO_WIDE),
        example(findings_measured.ROD_CLEARANCE_TOO_WIDE, findings_bench.END_CLEARANCE_WIDE),
        example(findings_cam.CAM_CLEARANCE_WIDE),
    ],
    non_matches=[
        example(
            lacks=[
                findings_measured.MAIN_CLEARANCE_TOO_WIDE,
                findings_measured.ROD_CLEARANCE_TOO_WIDE,
            ]
        )
    ],
)
HOURS_WEAR_THE_RINGS_TOO = LinkGroup(
    id="hours_wear_the_rings_too",
    station=Station.BEARINGS,
    says="An engine that smokes blue, uses oil and blows by is worn; its bearings may be as well.",
    note="Misleads after a rebuild: rings that have not bedded in, valve seals, an overfilled sump.",
    parent=WORN_BY_HOURS,
    effects={
        findings_record.OIL_USED_FAST: (SOMETIMES, COMMON_PRACTICE),
        findings_heat.BLUE_SMOKE: (SOMETIMES, COMMON_PRACTICE),
        findings_heat.BLOW_BY_HIGH: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(findings_heat.BLUE_SMOKE, findings_record.OIL_USED_FAST),
        example(findings_heat.BLOW_BY_HIGH),
    ],
    non_matches=[
        example(lacks=[findings_heat.BLUE_SMOKE, findings_record.OIL_USED_FAST]),
    ],
)
