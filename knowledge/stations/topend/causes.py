"""Root causes at the top end, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
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
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.topend import findings, findings_cam

LIFTER_BORE_LEAK = Cause(
    id="lifter_bore_leak",
    station=Station.TOPEND,
    says="worn lifter bores, a wrong lifter, or one out of its bore",
    mechanism=(
        "the lifter gallery leaks: low and noisy; with a lifter right out, next to no pressure "
        "at hot idle"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="bush the bores, fit the right lifters, find out why one came out",
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    follows="cam and lifter damage",
    also=(
        "lifter popped out",
        "lifter jumped out of bore",
        "sloppy lifter bores",
        "tappet bores worn",
        "wrong lifters",
    ),
)
SHEET_OF_OIL_FROM_A_LIFTER_BORE = LinkGroup(
    id="sheet_of_oil_from_a_lifter_bore",
    station=Station.TOPEND,
    says=(
        "Worn lifter bores leak from the lifter gallery; a lifter right out empties it at hot idle."
    ),
    parent=LIFTER_BORE_LEAK,
    effects={
        conditions.CLEARANCES_WIDE: (MOSTLY, PHYSICS),
        conditions.OPEN_LEAK_INSIDE: (SOMETIMES, idea_from(sources.PUMP_GASKET_THREAD)),
        conditions.PRESSURE_GONE: (SOMETIMES, sources.PUMP_GASKET_THREAD),
        patterns.FELL_SUDDENLY: (SOMETIMES, sources.PUMP_GASKET_THREAD),
        findings.LIFTERS_CLATTER: (OFTEN, COMMON_PRACTICE),
        findings.LIFTER_BORE_POURS: (MOSTLY, COMMON_PRACTICE),
        findings_cam.LIFTERS_LOOSE_IN_BORES: (OFTEN, COMMON_PRACTICE),
        findings_cam.LIFTER_OUT_OF_BORE: (OFTEN, sources.PUMP_GASKET_THREAD),
        findings.PUSHROD_OFF_OR_BENT: (SOMETIMES, JUDGEMENT),
        findings_cam.CAM_LOBES_WIPED: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, findings_cam.LIFTERS_LOOSE_IN_BORES),
        example(patterns.GAUGE_READS_LOW, findings.LIFTER_BORE_POURS),
        example(patterns.FELL_SUDDENLY, findings_cam.LIFTER_OUT_OF_BORE),
    ],
    non_matches=[
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
            lacks=[
                findings_cam.LIFTERS_LOOSE_IN_BORES,
                findings.LIFTER_BORE_POURS,
                findings_cam.LIFTER_OUT_OF_BORE,
            ],
        )
    ],
)

CAM_BEARING_WEAR = Cause(
    id="cam_bearing_wear",
    station=Station.TOPEND,
    says="cam bearings worn, loose or turned, or cam journals worn",
    mechanism="it leaks as much as a main bearing and is often not suspected: low at hot idle",
    rate=Rate.COMMON,
    shifts=Shifts(freshly_rebuilt=UP),
    remedy="renew the cam bearings with their holes in line, check the journals",
    source=sources.CLUB_CAM_BEARING_NOTE,
    follows="low pressure, dry valve gear",
    also=(
        "worn cam bearings",
        "spun cam bearing",
        "camshaft bearing gone",
        "cam bushings worn",
        "worn cam journals",
    ),
)
LEAK_NOBODY_SUSPECTS_AT_THE_CAM = LinkGroup(
    id="leak_nobody_suspects_at_the_cam",
    station=Station.TOPEND,
    says="A worn cam bearing leaks as much as a main and is usually checked last: low at hot idle.",
    note=(
        "One engine's middle cam bearing had ten times its clearance, found only after new "
        "bearings and pump."
    ),
    parent=CAM_BEARING_WEAR,
    effects={
        conditions.CLEARANCES_WIDE: (ALWAYS, sources.CLUB_CAM_BEARING_NOTE),
        conditions.VALVE_GEAR_DRY: (SOMETIMES, COMMON_PRACTICE),
        conditions.METAL_SHED: (SOMETIMES, COMMON_PRACTICE),
        patterns.DECLINED_OVER_MONTHS: (OFTEN, JUDGEMENT),
        findings.NO_OIL_AT_ROCKERS: (SOMETIMES, COMMON_PRACTICE),
        findings.CAM_BEARING_POURS: (MOSTLY, COMMON_PRACTICE),
        findings_cam.CAM_CLEARANCE_WIDE: (MOSTLY, sources.ARMY_TM_347_CAMSHAFT),
        findings_cam.CAM_BEARING_FOUND_BAD: (MOSTLY, sources.CLUB_CAM_BEARING_NOTE),
        findings_cam.CAM_JOURNALS_WORN: (SOMETIMES, COMMON_PRACTICE),
        findings.CAMSHAFT_BROKEN: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(patterns_speed.GOOD_COLD_LOW_HOT, findings.CAM_BEARING_POURS),
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, findings_cam.CAM_CLEARANCE_WIDE),
        example(findings_cam.CAM_BEARING_FOUND_BAD, findings_cam.CAM_JOURNALS_WORN),
    ],
    non_matches=[
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
            lacks=[findings_cam.CAM_CLEARANCE_WIDE, findings_cam.CAM_BEARING_FOUND_BAD],
        ),
        example(patterns_speed.GOOD_COLD_LOW_HOT, lacks=[findings.CAM_BEARING_POURS]),
    ],
)

ROCKER_SHAFT_LEAK = Cause(
    id="rocker_shaft_leak",
    station=Station.TOPEND,
    says="rocker shaft or bushes worn, or the shaft's end plug missing",
    mechanism="oil runs out at the top: a lower hot idle, flooded covers and a dry far end",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP),
    remedy="fit a new shaft or bushes, fit the end plugs, tighten the stands",
    source=sources.TRACTOR_DIESEL_MANUAL_2003,
    follows="the far end of the shaft runs dry",
    also=(
        "worn rocker shaft",
        "rocker shaft plug missing",
        "rocker bushings worn",
        "rocker pedestal",
        "oil runs out upstairs",
    ),
)
ROCKER_SHAFT_LETS_THE_OIL_OUT = LinkGroup(
    id="rocker_shaft_lets_the_oil_out",
    station=Station.TOPEND,
    says="A worn rocker shaft or a lost end plug floods the cover and leaves the far end dry.",
    parent=ROCKER_SHAFT_LEAK,
    effects={
        conditions.CLEARANCES_WIDE: (MOSTLY, sources.TRACTOR_DIESEL_MANUAL_2003),
        conditions.OPEN_LEAK_INSIDE: (SOMETIMES, COMMON_PRACTICE),
        findings.ROCKERS_FLOODED: (MOSTLY, COMMON_PRACTICE),
        findings.ROCKER_SHAFT_FOUND_WORN: (MOSTLY, COMMON_PRACTICE),
        findings.LIFTERS_CLATTER: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(
            patterns.GAUGE_READS_LOW, findings.ROCKERS_FLOODED, findings.ROCKER_SHAFT_FOUND_WORN
        ),
        example(findings.ROCKER_SHAFT_FOUND_WORN),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings.ROCKERS_FLOODED, findings.ROCKER_SHAFT_FOUND_WORN],
        )
    ],
)

TENSIONER_SEAL_LEAK = Cause(
    id="tensioner_seal_leak",
    station=Station.TOPEND,
    says="chain tensioner gasket, seal or oil jet leaks or was left out",
    mechanism="pressure oil escapes into the timing case: idle near zero, fair pressure at speed",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=STRONG_UP),
    remedy="new tensioner seal, right bolts, right torque",
    source=sources.TENSIONER_GASKET_LEFT_OUT,
    follows="chain rattle, stretched or jumped chain",
    also=(
        "timing chain tensioner gasket",
        "tensioner o-ring missing",
        "chain oil jet missing",
        "chain rattle after timing job",
    ),
)
TIMING_CASE_TAKES_THE_OIL = LinkGroup(
    id="timing_case_takes_the_oil",
    station=Station.TOPEND,
    says=(
        "A tensioner without its gasket empties the gallery into the timing case; the chain may "
        "rattle."
    ),
    note=(
        "One engine read zero at idle and 40 psi at 2000 rpm straight after a chain kit, and did "
        "not rattle."
    ),
    parent=TENSIONER_SEAL_LEAK,
    effects={
        conditions.DRAINS_BACK: (SOMETIMES, JUDGEMENT),
        conditions.OPEN_LEAK_INSIDE: (ALWAYS, sources.TENSIONER_GASKET_LEFT_OUT),
        patterns_speed.RISES_JUST_OFF_IDLE: (OFTEN, JUDGEMENT),
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED: (OFTEN, sources.TENSIONER_GASKET_LEFT_OUT),
        behaviour.CHANGED_AFTER_OTHER_WORK: (OFTEN, sources.TENSIONER_GASKET_LEFT_OUT),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, sources.TENSIONER_GASKET_LEFT_OUT),
        findings.TIMING_COVER_RATTLES: (OFTEN, JUDGEMENT),
        findings.TENSIONER_FLOODS: (MOSTLY, COMMON_PRACTICE),
        findings_cam.TENSIONER_SEAL_ABSENT: (MOSTLY, sources.TENSIONER_GASKET_LEFT_OUT),
        findings_cam.TENSIONER_SLACK: (OFTEN, JUDGEMENT),
        patterns_speed.GOOD_COLD_LOW_HOT: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(
            behaviour.CHANGED_AFTER_OTHER_WORK,
            findings.TIMING_COVER_RATTLES,
            findings_cam.TENSIONER_SEAL_ABSENT,
        ),
        example(patterns_speed.RISES_JUST_OFF_IDLE, findings.TENSIONER_FLOODS),
    ],
    non_matches=[
        example(
            behaviour.CHANGED_AFTER_OTHER_WORK,
            lacks=[
                findings.TIMING_COVER_RATTLES,
                findings_cam.TENSIONER_SEAL_ABSENT,
                findings.TENSIONER_FLOODS,
            ],
        )
    ],
)
