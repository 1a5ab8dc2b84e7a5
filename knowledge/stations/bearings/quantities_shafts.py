"""Quantities of balance shafts, auxiliary shafts and idler gears, with their limits."""

from knowledge import sources
from knowledge.figures import BORE_GAUGE, GAUGE_STRIP
from knowledge.limits import Limit, Printed, Side
from knowledge.model import Quantity
from knowledge.sources import JUDGEMENT
from knowledge.units import INCH, MM

WORN = (0.0, 2 * MM)  #: up to a bush that is worn right through

BALANCE_SHAFT_CLEARANCE = Quantity(
    id="balance_shaft_clearance",
    says="balance shaft bearing clearance, on the diameter",
    short="balance shaft clearance",
    dimension="length",
    plausible=WORN,
    spread=GAUGE_STRIP,
    source=JUDGEMENT,
)
AUXILIARY_SHAFT_CLEARANCE = Quantity(
    id="auxiliary_shaft_clearance",
    says="auxiliary (jack) shaft bearing clearance, on the diameter",
    short="auxiliary shaft clearance",
    dimension="length",
    plausible=WORN,
    spread=BORE_GAUGE,
    source=JUDGEMENT,
)
IDLER_BUSH_CLEARANCE = Quantity(
    id="idler_bush_clearance",
    says="clearance of an idler gear's bush on its hub, on the diameter",
    short="idler bush clearance",
    dimension="length",
    plausible=WORN,
    spread=BORE_GAUGE,
    source=JUDGEMENT,
)
MOST_BALANCE_SHAFT_CLEARANCE = Limit(
    id="balance_shaft_clearance_limit",
    says="greatest balance shaft bearing clearance, on the diameter",
    quantities=(BALANCE_SHAFT_CLEARANCE,),
    side=Side.MOST,
    typical=0.111 * MM,
    source=sources.BALANCE_SHAFT_FOUR_2002,
    of="petrol four of 2002, shafts in a housing of their own, new",
    others=(
        Printed(
            value=0.049 * MM,
            of="petrol four of 2009, shafts under the crank",
            source=sources.BALANCE_SHAFT_FOUR_2009,
        ),
        Printed(
            value=0.008 * INCH,
            of="two-stroke diesel, worn",
            source=sources.ARMY_TM_347_CAMSHAFT,
        ),
    ),
)
MOST_AUXILIARY_SHAFT_CLEARANCE = Limit(
    id="auxiliary_shaft_clearance_limit",
    says="greatest auxiliary shaft bearing clearance, on the diameter",
    quantities=(AUXILIARY_SHAFT_CLEARANCE,),
    side=Side.MOST,
    typical=0.0026 * INCH,
    source=sources.AUXILIARY_SHAFT_FOUR_1991,
    of="petrol four of 1991, as fitted",
)
MOST_IDLER_BUSH_CLEARANCE = Limit(
    id="idler_bush_clearance_limit",
    says="greatest clearance of an idler gear's bush, on the diameter",
    quantities=(IDLER_BUSH_CLEARANCE,),
    side=Side.MOST,
    typical=0.175 * MM,
    source=sources.MARINE_IDLER_BUSH,
    of="small marine diesel, hub of 45 mm",
    others=(
        Printed(
            value=0.15 * MM,
            of="marine diesel, hub of 46 mm",
            source=sources.MARINE_IDLER_BUSH_46,
        ),
        Printed(
            value=0.20 * MM,
            of="pickup diesel of 2021, hubs of 25 and 45 mm",
            source=sources.PICKUP_IDLER_BUSH_2021,
        ),
    ),
)
