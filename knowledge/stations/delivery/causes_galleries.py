"""Root causes at galleries, plugs and seals, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SOMETIMES,
    STRONG_DOWN,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.delivery import findings_filter_cut, findings_galleries
from knowledge.stations.oil import findings as oil_findings
from knowledge.stations.oil import findings_contamination as oil_contamination

GALLERY_PLUG_MISSING = Cause(
    id="gallery_plug_missing",
    station=Station.DELIVERY,
    says="an oil gallery plug missing, fallen out or loose inside",
    mechanism=(
        "a hole in the main gallery inside the engine: low at all speeds, next to no pressure at "
        "idle, and no oil outside"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="fit the plug, count all plugs against the drawing, prime with the covers off and watch",
    source=sources.GALLERY_PLUG_LEFT_OUT,
    follows="wiped bearings; often a new pump is fitted first, without effect",
    also=(
        "galley plug missing",
        "oil plug left out",
        "plug behind the timing gear",
        "lifter gallery plug fell out",
        "rear oil plug forgotten",
    ),
)
HOLE_IN_THE_MAIN_LINE_INSIDE = LinkGroup(
    id="hole_in_the_main_line_inside",
    station=Station.DELIVERY,
    says="An open plug hole drains the main gallery inside: low at all speeds, and nothing drips.",
    note=(
        "One builder had 10 psi at idle that way and suspected the pump. Misleads when the hole "
        "is a bleed drilled on purpose."
    ),
    parent=GALLERY_PLUG_MISSING,
    effects={
        conditions.OPEN_LEAK_INSIDE: (ALWAYS, sources.GALLERY_PLUG_LEFT_OUT),
        conditions.PRESSURE_GONE: (SOMETIMES, sources.CROSSOVER_V6_MANUAL_2007),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, sources.GALLERY_PLUG_LEFT_OUT),
        behaviour.NONE_FROM_FIRST_START: (SOMETIMES, idea_from(sources.CROSSOVER_V6_MANUAL_2007)),
        patterns.FELL_SUDDENLY: (SOMETIMES, JUDGEMENT),
        findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE: (MOSTLY, sources.GALLERY_PLUG_LEFT_OUT),
        findings_galleries.OIL_WASH_AT_GALLERY_SEAL: (SOMETIMES, COMMON_PRACTICE),
        findings_galleries.GALLERY_PLUG_FOUND_MISSING: (ALWAYS, sources.GALLERY_PLUG_LEFT_OUT),
        findings_galleries.GALLERY_PLUG_LIES_IN_SUMP: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.LOW_FROM_FIRST_START, findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE),
        example(patterns_speed.LOW_AT_ALL_SPEEDS, findings_galleries.GALLERY_PLUG_FOUND_MISSING),
        example(findings_galleries.GALLERY_PLUG_LIES_IN_SUMP),
    ],
    non_matches=[
        example(
            patterns_speed.LOW_AT_ALL_SPEEDS,
            lacks=[
                findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE,
                findings_galleries.GALLERY_PLUG_FOUND_MISSING,
            ],
        )
    ],
)

GALLERY_PLUG_TOO_DEEP = Cause(
    id="gallery_plug_too_deep",
    station=Station.DELIVERY,
    says="a gallery plug sits too deep or in the wrong passage, masking a feed",
    mechanism=(
        "the plug covers a cross-drilling: the gallery ahead of it holds pressure, the branch "
        "behind it runs short"
    ),
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy=(
        "pull the plug, fit the right one to the right depth, check the feed with a rod or with oil"
    ),
    source=sources.ROTATED_GALLERY_PLUG,
    follows="the bearing or rocker shaft behind it runs dry",
    also=(
        "plug driven in too far",
        "plug covering oil hole",
        "plug in wrong hole",
        "freeze plug too deep",
    ),
)
PLUG_STANDS_IN_THE_WAY_OF_A_FEED = LinkGroup(
    id="plug_stands_in_the_way_of_a_feed",
    station=Station.DELIVERY,
    says=(
        "A plug too deep, turned, or in the wrong hole blocks a feed: one branch runs short of oil."
    ),
    note=(
        "A gauge ahead of it reads good or even high; parts behind it fail soon after the rebuild."
    ),
    parent=GALLERY_PLUG_TOO_DEEP,
    effects={
        conditions.FLOW_RESTRICTED: (OFTEN, sources.ROTATED_GALLERY_PLUG),
        conditions.BRANCH_DRY: (SOMETIMES, JUDGEMENT),
        conditions.JOURNAL_DRY: (OFTEN, sources.ROTATED_GALLERY_PLUG),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, JUDGEMENT),
        behaviour.NONE_FROM_FIRST_START: (SOMETIMES, JUDGEMENT),
        findings_galleries.GALLERY_PLUG_FOUND_TOO_DEEP: (MOSTLY, COMMON_PRACTICE),
        findings_galleries.GALLERY_PLUG_IN_WRONG_PASSAGE: (OFTEN, COMMON_PRACTICE),
        findings_galleries.GALLERY_FOUND_BLOCKED: (SOMETIMES, JUDGEMENT),
        findings_galleries.ONE_BEARING_GETS_NO_OIL: (OFTEN, JUDGEMENT),
        direct_gauge.DIRECT_GAUGE_ZERO: (SOMETIMES, JUDGEMENT),  # the plug masks its port
    },
    matches=[
        example(findings_galleries.GALLERY_PLUG_FOUND_TOO_DEEP),
        example(
            findings_galleries.GALLERY_PLUG_IN_WRONG_PASSAGE,
            findings_galleries.ONE_BEARING_GETS_NO_OIL,
        ),
    ],
    non_matches=[
        example(
            lacks=[
                findings_galleries.GALLERY_PLUG_FOUND_TOO_DEEP,
                findings_galleries.GALLERY_PLUG_IN_WRONG_PASSAGE,
            ]
        )
    ],
)

GALLERY_SEAL_LEAK = Cause(
    id="gallery_seal_leak",
    station=Station.DELIVERY,
    says="an O-ring, feed tube or cover gasket in the oil gallery leaks inside",
    mechanism="oil escapes inside from the pressure side: like an open plug, only smaller",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=STRONG_UP),
    remedy="renew the seals, check tubes and gasket faces",
    source=sources.DIESEL_WORKSHOP_2015,
    follows="low pressure for years, chain rattle, worn bearings",
    also=(
        "gallery o-ring",
        "front cover gasket oil leak inside",
        "feed tube seal",
        "oil tube loose",
    ),
)
SEAL_BETWEEN_TWO_CASTINGS_LETS_BY = LinkGroup(
    id="seal_between_two_castings_lets_by",
    station=Station.DELIVERY,
    says="A damaged or forgotten O-ring between two castings lets gallery oil into the crankcase.",
    parent=GALLERY_SEAL_LEAK,
    effects={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, sources.DIESEL_WORKSHOP_2015),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, sources.TENSIONER_GASKET_LEFT_OUT),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, sources.TENSIONER_GASKET_LEFT_OUT),
        patterns.FELL_SUDDENLY: (SOMETIMES, JUDGEMENT),
        findings_galleries.OIL_WASH_AT_GALLERY_SEAL: (MOSTLY, COMMON_PRACTICE),
        findings_galleries.GALLERY_SEAL_FOUND_BAD: (MOSTLY, COMMON_PRACTICE),
        behaviour.TEN_SECONDS_OR_MORE: (SOMETIMES, JUDGEMENT),  # it drains back through the seal
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings_galleries.OIL_WASH_AT_GALLERY_SEAL),
        example(patterns.GAUGE_READS_LOW, findings_galleries.GALLERY_SEAL_FOUND_BAD),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[
                findings_galleries.OIL_WASH_AT_GALLERY_SEAL,
                findings_galleries.GALLERY_SEAL_FOUND_BAD,
            ],
        )
    ],
)

GALLERY_CRACK = Cause(
    id="gallery_crack",
    station=Station.DELIVERY,
    says="a crack or porous spot in the wall of an oil gallery",
    mechanism=(
        "oil escapes through the wall, more when hot and at high pressure, into crankcase or water"
    ),
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, stood_long=UP, raced_or_heeled=UP),
    remedy="have the block or head tested; repair or replace it",
    source=sources.CROSSOVER_V6_MANUAL_2007,
    follows="oil in the coolant, water in the oil",
    also=("cracked block", "porous casting", "cracked oil passage", "frost crack"),
)
WALL_OF_THE_GALLERY_GIVES = LinkGroup(
    id="wall_of_the_gallery_gives",
    station=Station.DELIVERY,
    says="A cracked or porous gallery wall leaks more with higher pressure and hotter oil.",
    parent=GALLERY_CRACK,
    effects={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, sources.CROSSOVER_V6_MANUAL_2007),
        findings_galleries.GALLERY_WALL_WEEPS: (MOSTLY, COMMON_PRACTICE),
        findings_filter_cut.MILKY_FILM_IN_FILTER: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(patterns.GAUGE_READS_LOW, findings_galleries.GALLERY_WALL_WEEPS)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_galleries.GALLERY_WALL_WEEPS])],
)
OIL_CROSSES_INTO_THE_COOLANT = LinkGroup(
    id="oil_crosses_into_the_coolant",
    station=Station.DELIVERY,
    says="Oil in the coolant got there through a gasket, a cooler or a crack in the gallery wall.",
    parent=GALLERY_CRACK,
    effects={
        oil_contamination.OIL_FILM_IN_COOLANT: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(oil_contamination.OIL_FILM_IN_COOLANT)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[oil_contamination.OIL_FILM_IN_COOLANT])],
)

GALLERY_BLOCKED = Cause(
    id="gallery_blocked",
    station=Station.DELIVERY,
    says="an oil gallery is blocked by debris, sealer or sludge",
    mechanism=(
        "ahead of the blockage the pressure is good or high, behind it parts run dry; the gauge "
        "may be on the good side"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),
    remedy="plugs out, rod and brush the galleries, check the flow at every hole",
    source=sources.DIESEL_WORKSHOP_2015,
    follows="one bank, one rod or one shaft fails though the gauge looked good",
    also=("blocked oil passage", "plugged oil galley", "sealer in oil hole", "oilway blocked"),
)
GOOD_BEFORE_AND_DRY_BEHIND = LinkGroup(
    id="good_before_and_dry_behind",
    station=Station.DELIVERY,
    says=(
        "A blocked gallery has good pressure ahead and none behind; the gauge may be on the good "
        "side."
    ),
    parent=GALLERY_BLOCKED,
    effects={
        conditions.FLOW_RESTRICTED: (MOSTLY, sources.DIESEL_WORKSHOP_2015),
        conditions.BRANCH_DRY: (OFTEN, COMMON_PRACTICE),
        conditions.JOURNAL_DRY: (OFTEN, COMMON_PRACTICE),
        findings_galleries.GALLERY_FOUND_BLOCKED: (ALWAYS, COMMON_PRACTICE),
        findings_galleries.ONE_BEARING_GETS_NO_OIL: (OFTEN, COMMON_PRACTICE),
        behaviour.NONE_FROM_FIRST_START: (SOMETIMES, idea_from(sources.CROSSOVER_V6_MANUAL_2007)),
        oil_findings.SLUDGE_SEEN: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(
            findings_galleries.ONE_BEARING_GETS_NO_OIL, findings_galleries.GALLERY_FOUND_BLOCKED
        ),
        example(findings_galleries.GALLERY_FOUND_BLOCKED),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[
                findings_galleries.ONE_BEARING_GETS_NO_OIL,
                findings_galleries.GALLERY_FOUND_BLOCKED,
            ],
        )
    ],
)
