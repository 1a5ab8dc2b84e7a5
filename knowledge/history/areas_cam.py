"""Cam bearings of the block that may have been worked on before the trouble began."""

from knowledge.history import findings
from knowledge.model import Station
from knowledge.reports.shapes import WorkArea
from knowledge.sources import JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds

CAM_BEARINGS = WorkArea(
    id="cam_bearings",
    station=Station.TOPEND,
    says="work on the cam bearings",
    asks="Cam bearings renewed before it began?",
    causes={
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED: 1.0,
        topend_causes.CAM_BEARING_WEAR: 1.0,
        delivery_causes_galleries.GALLERY_PLUG_MISSING: 1.0,
        topend_causes.LIFTER_BORE_LEAK: 0.5,
        topend_causes.ROCKER_SHAFT_LEAK: 0.25,
        topend_causes_feeds.RESTRICTOR_MISSING: 0.5,
        topend_causes_feeds.DIST_HOUSING_LEAK: 0.5,
        assembly_causes.DIRT_IN_ASSEMBLY: 0.75,
        assembly_causes.SEALANT_DEBRIS: 0.5,
        delivery_causes_galleries.GALLERY_BLOCKED: 0.5,
        pump_causes_fitted.PUMP_NOT_PRIMED: 0.5,
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("cam bearings renewed", "new camshaft bearings pressed in"),
)
