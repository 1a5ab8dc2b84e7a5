"""What must be right about the cam bearings before the camshaft goes in."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import FROM_MEMORY
from knowledge.stations.topend import causes, quantities
from knowledge.units import MM, THOU
from knowledge.work import Band, Hold, Phase, Task

OHC = (features.OVERHEAD_CAM,)
CAM_CLEARANCE_FITTED = Task(
    id="cam_clearance_fitted",
    phase=Phase.BEARINGS,
    says="clearance of the cam bearings",
    how=(
        "bore gauge in each fitted bush, micrometer on each cam journal; middle ones too",
        "the cam turns with two fingers and does not rock",
    ),
    source=sources.ARMY_TM_347_CAMSHAFT,
    hold=Hold.NOTE,
    measures=quantities.CAM_BEARING_CLEARANCE,
    bands=(
        Band(
            low=None,
            high=8.0 * THOU,
            source=sources.ARMY_TM_347_CAMSHAFT,
            says="a two-stroke diesel, cam in the block: wear limit",
            only_with=(features.DIESEL,),
            not_with=OHC,
        ),
        Band(
            low=None,
            high=9.0 * THOU,
            source=sources.ARMY_TM_202_CAMSHAFTS,
            says="an army diesel: intermediate bearings, worn; 0.006 in for the end ones",
            only_with=(features.DIESEL,),
            not_with=OHC,
        ),
        Band(
            low=None,
            high=0.225 * MM,
            source=sources.SMALL_DIESEL_CAMSHAFT,
            says="a small marine diesel: middle bearing; 0.195 to 0.245 mm by bearing",
            only_with=(features.DIESEL,),
            not_with=OHC,
        ),
        Band(
            low=None,
            high=6.0 * THOU,
            source=FROM_MEMORY,
            says="petrol vee engines, cam in the block: the wear limit many print",
            not_with=(*OHC, features.DIESEL),
        ),
        Band(
            low=None,
            high=0.100 * MM,
            source=sources.FOUR_CAM_CLEARANCE,
            says="a small overhead-cam four: the limit; new 0.045 to 0.084 mm",
            only_with=OHC,
        ),
        Band(
            low=None,
            high=0.151 * MM,
            source=sources.TWIN_CAM_V6_2003,
            says="a twin-cam V6: the limit; new 0.025 to 0.076 mm",
            only_with=OHC,
        ),
        Band(
            low=4.5 * THOU,
            high=6.0 * THOU,
            source=sources.ARMY_TM_347_CAMSHAFT,
            says="the same diesel, new",
            only_with=(features.DIESEL,),
            not_with=OHC,
        ),
        Band(
            low=1.0 * THOU,
            high=3.0 * THOU,
            source=sources.CLUB_CAM_BEARING_NOTE,
            not_with=OHC,
            says=(
                "small pushrod four: about 0.002 in is normal; half of that either way is judgement"
            ),
            of_one=True,
        ),
    ),
    limits=(None, quantities.MOST_CAM_CLEARANCE),
    remedy="fit new bushes, oil holes lined up, reamed if not made to size",
    why="a middle bush at ten times its clearance cost one engine its hot pressure",
    guards=(causes.CAM_BEARING_WEAR,),
    also=("cam bearings", "cam bushes", "cam journal clearance"),
)
