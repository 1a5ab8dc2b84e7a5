"""The root cause of engines whose bearings have feeds of their own: one of these stopped."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.engines import features_kinds
from knowledge.model import (
    ALWAYS,
    OFTEN,
    SOMETIMES,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.oil import findings_feed

OWN_FEED_STOPPED = Cause(
    id="own_feed_stopped",
    station=Station.OIL,
    says=(
        "a feed of its own stopped: tank, drip or cup empty or clogged, dipper bent, trough low, or "
        "air in the injection line"
    ),
    mechanism="no pressure could show it: the bearing runs hot, then knocks or seizes",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP),
    remedy="clear, fill or bleed the feed and see oil arrive; look at the bearing before it runs again",
    source=idea_from(sources.GAS_ENGINE_HANDBOOK),
    follows="the bearing wiped, the piston seized",
    also=("drip oiler clogged", "grease cup empty", "oil injection failed", "dipper broken"),
)
FEED_THAT_STOPS = LinkGroup(
    id="feed_that_stops",
    station=Station.OIL,
    says="A bearing whose own feed stops runs hot, then knocks; no gauge shows it.",
    parent=OWN_FEED_STOPPED,
    effects={
        findings_feed.FEED_NOT_SEEN: (ALWAYS, COMMON_PRACTICE),
        findings_feed.BEARING_TOO_HOT: (OFTEN, sources.GAS_ENGINE_HANDBOOK),
        conditions.BEARINGS_STARVED: (OFTEN, COMMON_PRACTICE),
        conditions.ENGINE_FAILED: (SOMETIMES, COMMON_PRACTICE),
        patterns.LAMP_COMES_ON: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(features_kinds.DRIP_OILED, findings_feed.FEED_NOT_SEEN),
        example(features_kinds.OIL_BURNT_WITH_FUEL, findings_feed.FEED_NOT_SEEN),
    ],
    non_matches=[
        example(features_kinds.DRIP_OILED, lacks=[findings_feed.FEED_NOT_SEEN]),
        example(findings_feed.FEED_NOT_SEEN),
    ],
)
