"""Faults of filter, cooler and galleries: what proves each, what it costs, where it can come from."""

from knowledge.circuit import conditions
from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.pressure import behaviour, patterns
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import (
    causes,
    causes_crank_feed,
    causes_galleries,
    findings_crank_feed,
    findings_filter,
    findings_filter_cut,
    findings_galleries,
    quantities,
)
from knowledge.stations.leaks import causes as leaks_causes

GALLERY_PLUG_OUT = Fault(
    id="gallery_plug_out",
    station=Station.DELIVERY,
    says="a gallery plug inside the engine is out or loose",
    proofs=(
        findings_galleries.GALLERY_PLUG_FOUND_MISSING,
        findings_galleries.GALLERY_PLUG_LIES_IN_SUMP,
        findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE,
    ),
    origins=(causes_galleries.GALLERY_PLUG_MISSING,),
    source=COMMON_PRACTICE,
    states=(conditions.OPEN_LEAK_INSIDE,),
    costs=(quantities.OPEN_HOLE,),
)
GALLERY_SEAL_BAD = Fault(
    id="gallery_seal_bad",
    station=Station.DELIVERY,
    says="a seal of the galleries leaks",
    proofs=(
        findings_galleries.GALLERY_SEAL_FOUND_BAD,
        findings_galleries.OIL_WASH_AT_GALLERY_SEAL,
    ),
    explained={
        findings_galleries.OIL_WASH_AT_GALLERY_SEAL: (
            findings_galleries.GALLERY_PLUG_FOUND_MISSING,
            findings_galleries.OIL_STREAMS_FROM_OPEN_HOLE,
        )
    },
    origins=(causes_galleries.GALLERY_SEAL_LEAK,),
    source=COMMON_PRACTICE,
    states=(conditions.OPEN_LEAK_INSIDE,),
)
CRANK_FEED_SEAL_LEAKS = Fault(
    id="crank_feed_seal_leaks",
    station=Station.DELIVERY,
    says="the seal that feeds the crank's end leaks",
    proofs=(findings_crank_feed.CRANK_FEED_SEAL_BAD,),
    origins=(causes_crank_feed.CRANK_FEED_SEAL_LEAK,),
    source=COMMON_PRACTICE,
    states=(conditions.OPEN_LEAK_INSIDE,),
)
GALLERY_SHUT = Fault(
    id="gallery_shut",
    station=Station.DELIVERY,
    says="a gallery or oil hole is blocked",
    proofs=(
        findings_galleries.GALLERY_FOUND_BLOCKED,
        findings_galleries.GALLERY_PLUG_FOUND_TOO_DEEP,
        findings_galleries.GALLERY_PLUG_IN_WRONG_PASSAGE,
    ),
    origins=(
        causes_galleries.GALLERY_BLOCKED,
        causes_galleries.GALLERY_PLUG_TOO_DEEP,
        assembly_causes.DIRT_IN_ASSEMBLY,
    ),
    source=COMMON_PRACTICE,
)
FILTER_CHOKED = Fault(
    id="filter_choked",
    station=Station.DELIVERY,
    says="the filter restricts the oil",
    proofs=(
        findings_filter_cut.FILTER_PACKED,
        findings_filter_cut.FILTER_COLLAPSED,
        findings_filter.FILTER_DROP_HIGH,
    ),
    origins=(
        causes.FILTER_BLOCKED,
        causes.FILTER_WRONG,
        assembly_causes.DIRT_IN_ASSEMBLY,
        conditions.METAL_SHED,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.FLOW_RESTRICTED,),
    costs=(quantities.FILTER_BLOCKED,),
)
FILTER_BYPASS_BAD = Fault(
    id="filter_bypass_bad",
    station=Station.DELIVERY,
    says="the filter's bypass valve is stuck or fitted wrongly",
    proofs=(
        findings_filter_cut.FILTER_BYPASS_STUCK_OPEN,
        findings_filter_cut.FILTER_BYPASS_STUCK_SHUT,
        findings_filter_cut.BYPASS_VALVE_MISFITTED,
    ),
    origins=(
        causes.FILTER_BYPASS_STUCK,
        causes.FILTER_WRONG,
    ),
    source=COMMON_PRACTICE,
)
COOLER_SHUT = Fault(
    id="cooler_shut",
    station=Station.DELIVERY,
    says="the oil cooler or its line is blocked",
    proofs=(findings_filter_cut.COOLER_FOUND_BLOCKED,),
    origins=(causes.OIL_COOLER_BLOCKED,),
    source=COMMON_PRACTICE,
    states=(conditions.FLOW_RESTRICTED,),
    costs=(quantities.COOLER_OPEN_SHARE,),
)
FILTER_DRAINS_BACK = Fault(
    id="filter_drains_back",
    station=Station.DELIVERY,
    says="the filter drains while the engine stands",
    proofs=(
        findings_filter.FILTER_EMPTY_AFTER_STANDING,
        findings_filter.ANTI_DRAINBACK_HARD,
    ),
    origins=(
        causes.FILTER_DRAINBACK,
        causes.FILTER_WRONG,
    ),
    source=COMMON_PRACTICE,
    # oil that never reached the filter leaves it as empty
    explained={
        findings_filter.FILTER_EMPTY_AFTER_STANDING: (
            behaviour.NONE_FROM_FIRST_START,
            patterns.GAUGE_READS_ZERO,
        )
    },
    alike=(causes.FILTER_DRAINBACK, causes.FILTER_WRONG),
    states=(conditions.DRAINS_BACK,),
)
FILTER_FITTED_WRONG = Fault(
    id="filter_fitted_wrong",
    station=Station.DELIVERY,
    says="the oil filter or its seal is the wrong one or is fitted wrongly",
    proofs=(
        findings_filter.FILTER_MISFITTED,
        findings_filter.ADAPTER_GASKET_DISPLACED,
    ),
    origins=(
        causes.FILTER_WRONG,
        leaks_causes.FILTER_SEAL_LEAK,
        causes.FILTER_BYPASS_STUCK,
    ),
    alike=(causes.FILTER_WRONG, leaks_causes.FILTER_SEAL_LEAK),
    source=COMMON_PRACTICE,
)
