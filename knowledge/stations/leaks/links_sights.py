"""What further sights at filter, drain, covers and breather speak for."""

from knowledge.model import OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.leaks import causes, causes_openings, findings_sights
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump

HOLED_CAN = LinkGroup(
    id="holed_can",
    station=Station.LEAKS,
    says="A holed filter empties the sump like a burst seal.",
    child=findings_sights.FILTER_CAN_HOLED,
    origins={
        causes.FILTER_SEAL_LEAK: (OFTEN, COMMON_PRACTICE),
        delivery_causes.FILTER_WRONG: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.FILTER_CAN_HOLED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.FILTER_CAN_HOLED])],
)
WRONG_DRAIN = LinkGroup(
    id="wrong_drain",
    station=Station.LEAKS,
    says="A wrong drain plug or valve leaks, drops out, or blocks the pickup.",
    child=findings_sights.DRAIN_VALVE_WRONG,
    origins={
        causes.DRAIN_PLUG_OUT: (OFTEN, COMMON_PRACTICE),
        suction_causes_sump.PICKUP_CLEARANCE_TIGHT: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.DRAIN_VALVE_WRONG)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.DRAIN_VALVE_WRONG])],
)
LOOSE_COVER = LinkGroup(
    id="loose_cover",
    station=Station.LEAKS,
    says="A loose rocker cover leaks oil over the engine.",
    child=findings_sights.ROCKER_COVER_LOOSE,
    origins={
        causes.SHAFT_SEAL_LEAK: (OFTEN, COMMON_PRACTICE),
        causes.EXTERNAL_LEAK_MAJOR: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.ROCKER_COVER_LOOSE)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.ROCKER_COVER_LOOSE])],
)
BREATHER_LED_WRONGLY = LinkGroup(
    id="breather_led_wrongly",
    station=Station.LEAKS,
    says=(
        "A breather routed to the wrong place blows the seals out, or sucks the oil out of the "
        "engine."
    ),
    child=findings_sights.BREATHER_MISROUTED,
    origins={
        causes_openings.BREATHER_BLOCKED: (OFTEN, COMMON_PRACTICE),
        oil_causes.OIL_LEVEL_LOW: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings_sights.BREATHER_MISROUTED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.BREATHER_MISROUTED])],
)
AGED_HOSES = LinkGroup(
    id="aged_hoses",
    station=Station.LEAKS,
    says="An oil hose that is old and hard is the next to burst.",
    child=findings_sights.OIL_HOSES_AGED,
    origins={
        causes.OIL_LINE_LEAK: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings_sights.OIL_HOSES_AGED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.OIL_HOSES_AGED])],
)
