"""Faults of the outside leaks: what proves each, what it costs, where it can come from."""

from knowledge.circuit import conditions
from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.leaks import causes, causes_openings, findings, findings_places

OIL_LEAVES_THE_ENGINE = Fault(
    id="oil_leaves_the_engine",
    station=Station.LEAKS,
    says="oil leaves the engine",
    proofs=(
        findings_places.FILTER_FOUND_LOOSE,
        findings_places.OIL_LINE_FOUND_BROKEN,
        findings_places.DRAIN_PLUG_FOUND_LOOSE,
        findings.SUMP_FOUND_HOLED,
        findings.CUP_PLUG_FOUND_OUT,
        findings.SEAL_FOUND_PUSHED_OUT,
    ),
    origins=(
        causes.FILTER_SEAL_LEAK,
        causes.OIL_LINE_LEAK,
        causes.DRAIN_PLUG_OUT,
        causes_openings.SUMP_HOLED,
        causes_openings.PLUG_EXPELLED_OUTSIDE,
        causes.SHAFT_SEAL_LEAK,
        causes.EXTERNAL_LEAK_MAJOR,
        causes_openings.BREATHER_BLOCKED,
    ),
    source=COMMON_PRACTICE,
    states=(conditions.OIL_ESCAPING,),
)
