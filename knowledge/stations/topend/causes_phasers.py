"""Root causes at oil-fed cam phasers, and what each leads to."""

from knowledge.circuit import conditions
from knowledge.model import (
    MOSTLY,
    OFTEN,
    SOMETIMES,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import findings_filter
from knowledge.stations.topend import findings, findings_phasers

CAM_PHASER_LEAK = Cause(
    id="cam_phaser_leak",
    station=Station.TOPEND,
    says="a cam phaser or its oil valve leaks inside",
    mechanism="worn phaser seals or a stuck valve leak gallery oil: low hot idle, rattle at start",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP),
    remedy="renew the phaser or valve, and check what wears with it: chains, guides, tensioners",
    source=COMMON_PRACTICE,
    follows="rattling chains, cam timing faults",
    also=("bad cam phasers", "vct leaking", "vvt solenoid leaking", "phaser seals worn"),
)
PHASER_LETS_THE_OIL_OUT = LinkGroup(
    id="phaser_lets_the_oil_out",
    station=Station.TOPEND,
    says="A worn phaser leaks gallery oil: low at hot idle, and it rattles until pressure is up.",
    parent=CAM_PHASER_LEAK,
    effects={
        conditions.OPEN_LEAK_INSIDE: (OFTEN, COMMON_PRACTICE),
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED: (OFTEN, COMMON_PRACTICE),
        patterns.DECLINED_OVER_MONTHS: (SOMETIMES, JUDGEMENT),
        findings.TIMING_COVER_RATTLES: (OFTEN, COMMON_PRACTICE),
        findings_filter.OIL_FED_DEVICE_FAILED_FIRST: (OFTEN, COMMON_PRACTICE),
        findings_phasers.PHASER_LEAKS: (MOSTLY, COMMON_PRACTICE),
        patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE: (SOMETIMES, JUDGEMENT),
        findings.LIFTERS_CLATTER: (
            SOMETIMES,
            COMMON_PRACTICE,
        ),  # a loose phaser knocks like a diesel
        patterns_speed.GOOD_COLD_LOW_HOT: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, findings_phasers.PHASER_LEAKS),
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, findings_filter.OIL_FED_DEVICE_FAILED_FIRST
        ),
    ],
    non_matches=[
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
            lacks=[findings_phasers.PHASER_LEAKS, findings_filter.OIL_FED_DEVICE_FAILED_FIRST],
        )
    ],
)
