"""Quantities of the cam bearings, lifters and jets, with their limits."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import BORE_GAUGE
from knowledge.limits import Limit, Printed, Side
from knowledge.model import Quantity
from knowledge.sources import FROM_MEMORY, JUDGEMENT
from knowledge.units import INCH, MM, PSI, THOU

SIZE = (1 * MM, 300 * MM)
COUNT = (0.0, 40.0)

# Cam bearings wear further than mains before anyone looks, so 3 mm can be. The circuit's
# parameter took 0.25 thou for the error; a bore gauge and a micrometer each add theirs.
CAM_BEARING_CLEARANCE = Quantity(
    id="cam_bearing_clearance",
    says="cam bearing clearance, on the diameter",
    short="cam bearing clearance",
    dimension="length",
    plausible=(0.0, 3 * MM),
    spread=BORE_GAUGE,
    source=JUDGEMENT,
)
# A dimension was allowed 0.03 in, a parameter 1 mm: a worn-out bore can have the wider.
LIFTER_CLEARANCE = Quantity(
    id="lifter_clearance",
    says="lifter clearance in its bore, on the diameter",
    short="lifter bore clearance",
    dimension="length",
    plausible=(0.0, 1 * MM),
    spread=0.25 * THOU,
    source=JUDGEMENT,
)
OPEN_JET = Quantity(
    id="open_jet",
    says="bore that a piston jet leaves open",
    dimension="length",
    plausible=(0.0, 30 * MM),
    unit="mm",
    source=JUDGEMENT,
)
MOST_CAM_CLEARANCE = Limit(
    id="cam_clearance",
    says="greatest cam bearing clearance, on the diameter",
    quantities=(CAM_BEARING_CLEARANCE,),
    side=Side.MOST,
    typical=0.006 * INCH,
    source=FROM_MEMORY,
    of="petrol vee engines, camshaft in the block",
    others=(
        Printed(
            value=0.151 * MM,
            of="petrol V6 of 2003, overhead cams",
            source=sources.TWIN_CAM_V6_2003,
            only_with=(features.OVERHEAD_CAM,),
        ),
        Printed(
            value=0.100 * MM,
            of="small petrol four, overhead cam",
            source=sources.FOUR_CAM_CLEARANCE,
            only_with=(features.OVERHEAD_CAM,),
        ),
        Printed(
            value=0.009 * INCH,
            of="army diesel, intermediate bearings",
            source=sources.ARMY_TM_202_CAMSHAFTS,
            only_with=(features.DIESEL,),
            not_with=(features.OVERHEAD_CAM,),
        ),
        Printed(
            value=0.225 * MM,
            of="small marine diesel, middle bearing",
            source=sources.SMALL_DIESEL_CAMSHAFT,
            only_with=(features.DIESEL,),
            not_with=(features.OVERHEAD_CAM,),
        ),
        Printed(
            value=0.008 * INCH,
            of="two-stroke diesel",
            source=sources.ARMY_TM_347_CAMSHAFT,
            only_with=(features.DIESEL,),
            not_with=(features.OVERHEAD_CAM,),
        ),
    ),
)

# dimensions of the circuit
CAM_COUNT = Quantity(
    id="cam_count", says="cam bearings", dimension="count", plausible=COUNT, source=JUDGEMENT
)
CAM_DIAMETER = Quantity(
    id="cam_diameter",
    says="cam journal diameter",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
CAM_LENGTH = Quantity(
    id="cam_length",
    says="cam bearing length",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
CAM_HOLE = Quantity(
    id="cam_hole",
    says="oil hole of a cam bearing, diameter",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
LIFTER_COUNT = Quantity(
    id="lifter_count",
    says="lifters fed with oil",
    dimension="count",
    plausible=COUNT,
    source=JUDGEMENT,
)
LIFTER_DIAMETER = Quantity(
    id="lifter_diameter",
    says="lifter diameter",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
LIFTER_LAND = Quantity(
    id="lifter_land",
    says="length of one sealing land of a lifter",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
JET_COUNT = Quantity(
    id="jet_count",
    says="metering or jet holes",
    dimension="count",
    plausible=COUNT,
    source=JUDGEMENT,
)
JET_DIAMETER = Quantity(
    id="jet_diameter",
    says="metering or jet hole diameter",
    dimension="length",
    plausible=(0.1 * MM, 60 * MM),
    source=JUDGEMENT,
)
JET_OPENS = Quantity(
    id="jet_opens",
    says="piston jets open at",
    dimension="pressure",
    plausible=(0.0, 60 * PSI),
    source=JUDGEMENT,
)
