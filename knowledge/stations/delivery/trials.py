"""What is tried at filter, cooler and galleries, and which causes it cures."""

from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import (
    causes,
    causes_crank_feed,
    causes_galleries,
    findings_filter_cut,
)
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.topend import causes as topend_causes

NEW_FILTER = trial(
    id="new_filter",
    station=Station.DELIVERY,
    says="a new oil filter was fitted",
    asks="New oil filter fitted? If so, what did it do?",
    cures={
        causes.FILTER_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        causes.FILTER_WRONG: (OFTEN, COMMON_PRACTICE),
        causes.FILTER_DRAINBACK: (SOMETIMES, JUDGEMENT),
        leaks_causes.FILTER_SEAL_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes.FILTER_BYPASS_STUCK: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    cured=findings_filter_cut.NEW_FILTER_CURED_IT,
    also=("changed the oil filter", "changed the filter no change"),
)
OTHER_FILTER = trial(
    id="other_filter",
    station=Station.DELIVERY,
    says="an oil filter of another make or type was fitted",
    asks="Oil filter of another make fitted? If so, what did it do?",
    cures={
        causes.FILTER_WRONG: (MOSTLY, COMMON_PRACTICE),
        causes.FILTER_DRAINBACK: (MOSTLY, COMMON_PRACTICE),
        causes.FILTER_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        causes.FILTER_BYPASS_STUCK: (SOMETIMES, JUDGEMENT),
        leaks_causes.FILTER_SEAL_LEAK: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("different brand of filter", "original filter fitted", "better filter"),
)
BYPASS_FREED = trial(
    id="bypass_freed",
    station=Station.DELIVERY,
    says="the filter's or cooler's bypass valve was freed or renewed",
    asks="Bypass valve freed or renewed? If so, what did it do?",
    cures={
        causes.FILTER_BYPASS_STUCK: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new filter bypass valve", "cleaned the filter head valve"),
)
COOLER_BYPASSED = trial(
    id="cooler_bypassed",
    station=Station.DELIVERY,
    says="the oil cooler was bypassed by a short loop",
    asks="Oil cooler bypassed? If so, what did it do?",
    cures={
        causes.OIL_COOLER_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        leaks_causes.OIL_LINE_LEAK: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    cured=findings_filter_cut.COOLER_BYPASSED_CURES,
    also=("oil cooler left off", "looped the cooler lines", "bypassed the cooler"),
)
COOLER_CLEANED = trial(
    id="cooler_cleaned",
    station=Station.DELIVERY,
    says="the oil cooler or its lines were cleaned or renewed",
    asks="Oil cooler or its lines cleaned or renewed? If so, what did it do?",
    cures={
        causes.OIL_COOLER_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        leaks_causes.OIL_LINE_LEAK: (OFTEN, COMMON_PRACTICE),
        oil_causes_condition.OIL_OVERHEATED: (OFTEN, COMMON_PRACTICE),
        oil_causes_contamination.COOLANT_IN_OIL: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new oil cooler", "flushed the oil cooler"),
)
GALLERY_PLUGS_FITTED = trial(
    id="gallery_plugs_fitted",
    station=Station.DELIVERY,
    says="gallery plugs were fitted, renewed or reset",
    asks="Gallery plugs fitted, renewed or reset? If so, what did it do?",
    cures={
        causes_galleries.GALLERY_PLUG_MISSING: (MOSTLY, COMMON_PRACTICE),
        causes_galleries.GALLERY_PLUG_TOO_DEEP: (MOSTLY, COMMON_PRACTICE),
        leaks_causes_openings.PLUG_EXPELLED_OUTSIDE: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new gallery plug", "all plugs checked"),
)
GALLERIES_CLEANED = trial(
    id="galleries_cleaned",
    station=Station.DELIVERY,
    says="the oil galleries were rodded, brushed and washed",
    asks="Oil galleries cleaned? If so, what did it do?",
    cures={
        causes_galleries.GALLERY_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        assembly_causes.DIRT_IN_ASSEMBLY: (OFTEN, COMMON_PRACTICE),
        assembly_causes.SEALANT_DEBRIS: (OFTEN, COMMON_PRACTICE),
        assembly_causes.ASSEMBLY_LUBE_CLOG: (SOMETIMES, JUDGEMENT),
        causes_galleries.GALLERY_PLUG_TOO_DEEP: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("cleaned the oil passages", "brushed the galleries"),
)
GALLERY_SEALS_RENEWED = trial(
    id="gallery_seals_renewed",
    station=Station.DELIVERY,
    says="O-rings, feed tubes or cover gaskets of the gallery were renewed",
    asks="Oil gallery seals renewed? If so, what did it do?",
    cures={
        causes_galleries.GALLERY_SEAL_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes_crank_feed.CRANK_FEED_SEAL_LEAK: (MOSTLY, COMMON_PRACTICE),
        topend_causes.TENSIONER_SEAL_LEAK: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new feed tube o-rings", "front cover gasket renewed"),
)
BLOCK_REPLACED = trial(
    id="block_replaced",
    station=Station.DELIVERY,
    says="the block or head was repaired or exchanged for another",
    asks="Block or head repaired or exchanged? If so, what did it do?",
    cures={
        causes_galleries.GALLERY_CRACK: (MOSTLY, COMMON_PRACTICE),
        causes_galleries.GALLERY_BLOCKED: (SOMETIMES, JUDGEMENT),
        causes_galleries.GALLERY_PLUG_MISSING: (SOMETIMES, JUDGEMENT),
        causes_galleries.GALLERY_PLUG_TOO_DEEP: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("another block", "another cylinder head", "welded the block"),
)
