"""Root cause at a crank that is fed at its end: its seal in the timing cover lets the oil by."""

from knowledge.circuit import conditions
from knowledge.model import ALWAYS, MOSTLY, OFTEN, STRONG_UP, UP, Cause, Rate, Shifts, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import findings_crank_feed

CRANK_FEED_SEAL_LEAK = Cause(
    id="crank_feed_seal_leak",
    station=Station.DELIVERY,
    says="the oil seal in the timing cover that feeds the crank's end leaks or was used again",
    mechanism="oil for the rods escapes past the lip into the timing case, most of it when hot",
    rate=Rate.VERY_RARE,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, high_mileage=UP),
    remedy="fit a new seal the right way round; polish or sleeve a grooved crank end",
    source=COMMON_PRACTICE,
    follows="rod bearings run short of oil",
    also=("crank end feed seal", "end-fed crank seal", "quill seal", "timing cover feed seal"),
)
OIL_PAST_THE_CRANKS_FEED_SEAL = LinkGroup(
    id="oil_past_the_cranks_feed_seal",
    station=Station.DELIVERY,
    says="A worn lip at the crank's end lets the rods' oil out before it gets into the crank.",
    parent=CRANK_FEED_SEAL_LEAK,
    effects={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, COMMON_PRACTICE),
        findings_crank_feed.CRANK_FEED_SEAL_BAD: (ALWAYS, COMMON_PRACTICE),
        findings_crank_feed.CRANK_FEED_SEAL_REUSED: (OFTEN, JUDGEMENT),
    },
    matches=[
        example(findings_crank_feed.CRANK_FEED_SEAL_BAD),
        example(patterns.GAUGE_READS_LOW, findings_crank_feed.CRANK_FEED_SEAL_REUSED),
    ],
    non_matches=[
        example(patterns.GAUGE_READS_LOW, lacks=[findings_crank_feed.CRANK_FEED_SEAL_BAD]),
        example(patterns.GAUGE_READS_LOW, lacks=[findings_crank_feed.CRANK_FEED_SEAL_REUSED]),
    ],
)
