"""Quantities of pickup, screen and suction tube, with their limits."""

from knowledge.figures import CLAY
from knowledge.limits import Limit, Side
from knowledge.model import Quantity
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.units import INCH, MM

# A dimension was allowed 0.1 to 60 mm, a parameter 0.05 to 100: a pickup can lie on the floor or
# hang high above it. The error was 0.5 mm as measured, 0.3 mm as set, 1/32 in for the task; clay
# is squeezed, torn and read with a rule, so the widest stands for all.
PICKUP_GAP = Quantity(
    id="pickup_gap",
    says="gap from pickup to sump floor",
    dimension="length",
    plausible=(0.0, 100 * MM),
    spread=CLAY,
    unit="mm",
    source=JUDGEMENT,
)
LEAST_PICKUP_GAP = Limit(
    id="least_pickup_gap",
    says="least gap from pickup to sump floor",
    quantities=(PICKUP_GAP,),
    side=Side.LEAST,
    typical=0.1875 * INCH,
    source=COMMON_PRACTICE,
)
MOST_PICKUP_GAP = Limit(
    id="most_pickup_gap",
    says="greatest gap from pickup to sump floor",
    quantities=(PICKUP_GAP,),
    side=Side.MOST,
    typical=0.5 * INCH,
    source=COMMON_PRACTICE,
)
SCREEN_OPEN_SHARE = Quantity(
    id="screen_open_share",
    says="open share of the pickup screen",
    dimension="fraction",
    plausible=(0.01, 1.0),
    spread=0.05,
    unit="%",
    source=JUDGEMENT,
)
PICKUP_TUBE = Quantity(
    id="pickup_tube",
    says="bore of the pickup tube",
    dimension="length",
    plausible=(1 * MM, 300 * MM),
    unit="mm",
    source=JUDGEMENT,
)

# dimensions of the circuit
PICKUP_RIM = Quantity(
    id="pickup_rim",
    says="pickup rim diameter",
    dimension="length",
    plausible=(1 * MM, 300 * MM),
    source=JUDGEMENT,
)
PICKUP_TUBE_LENGTH = Quantity(
    id="pickup_tube_length",
    says="length of the pickup tube",
    dimension="length",
    plausible=(20 * MM, 2.0),
    source=JUDGEMENT,
)
