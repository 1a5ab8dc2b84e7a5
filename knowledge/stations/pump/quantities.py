"""Quantities of the oil pump, with their limits."""

from knowledge import sources
from knowledge.figures import DIAL_GAUGE, FEELER
from knowledge.model import Limit, Quantity, Side
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.units import CC, INCH, MM

GAP = (0.0, 3 * MM)  #: from a gear that rubs to one that has eaten its body
SIZE = (1 * MM, 300 * MM)

PUMP_END_CLEARANCE = Quantity(
    id="pump_end_clearance",
    says="end clearance of the pump's gears or rotors",
    short="end clearance of the pump",
    dimension="length",
    plausible=GAP,
    spread=FEELER,
    source=JUDGEMENT,
)
PUMP_SIDE_CLEARANCE = Quantity(
    id="pump_side_clearance",
    says="clearance between pump gear or outer rotor and body",
    short="clearance between pump gear or rotor and body",
    dimension="length",
    plausible=GAP,
    spread=FEELER,
    source=JUDGEMENT,
)
ROTOR_TIP_CLEARANCE = Quantity(
    id="rotor_tip_clearance",
    says="clearance between the rotor tips",
    dimension="length",
    plausible=GAP,
    spread=FEELER,
    source=JUDGEMENT,
)
PUMP_COVER_HOLLOW = Quantity(
    id="pump_cover_hollow",
    says="depth of wear in the pump's cover",
    dimension="length",
    plausible=GAP,
    spread=0.008 * MM,  # a straightedge and the thinnest blades
    source=JUDGEMENT,
)
PUMP_BACKLASH = Quantity(
    id="pump_backlash",
    says="backlash between the pump's gears",
    dimension="length",
    plausible=(0.0, 5 * MM),
    spread=0.025 * MM,  # it differs from tooth to tooth
    source=JUDGEMENT,
)
PUMP_BUSH_CLEARANCE = Quantity(
    id="pump_bush_clearance",
    says="clearance of the pump's shaft in its bush",
    dimension="length",
    plausible=GAP,
    spread=DIAL_GAUGE,
    source=JUDGEMENT,
)

# Each of these figures was printed for one engine; another's own figure goes before it.
MOST_END_CLEARANCE = Limit(
    id="pump_end_clearance",
    says="most end clearance of the pump gears",
    quantities=(PUMP_END_CLEARANCE,),
    side=Side.MOST,
    typical=0.006 * INCH,
    source=sources.STRAIGHT_SIX_MANUAL,
)
MOST_SIDE_CLEARANCE = Limit(
    id="pump_side_clearance",
    says="most clearance gear to body",
    quantities=(PUMP_SIDE_CLEARANCE,),
    side=Side.MOST,
    typical=0.005 * INCH,
    source=sources.PUMP_INSTALLATION_1983,
)
MOST_ROTOR_TIP_CLEARANCE = Limit(
    id="rotor_tip_clearance",
    says="most clearance between the rotor tips",
    quantities=(ROTOR_TIP_CLEARANCE,),
    side=Side.MOST,
    typical=0.15 * MM,
    source=sources.ROTOR_PUMP_LIMITS_2023,
)
MOST_COVER_HOLLOW = Limit(
    id="cover_flatness",
    says="most hollow or groove in the pump cover",
    quantities=(PUMP_COVER_HOLLOW,),
    side=Side.MOST,
    typical=0.001 * INCH,
    source=sources.PUMP_INSTALLATION_1983,
)
MOST_BACKLASH = Limit(
    id="pump_backlash",
    says="most backlash of the pump gears",
    quantities=(PUMP_BACKLASH,),
    side=Side.MOST,
    typical=0.028 * INCH,
    source=COMMON_PRACTICE,
)
MOST_BUSH_CLEARANCE = Limit(
    id="pump_bush_clearance",
    says="most clearance of the pump shaft in its bush",
    quantities=(PUMP_BUSH_CLEARANCE,),
    side=Side.MOST,
    typical=0.0055 * INCH,
    source=sources.DIESEL_V8_PUMP_LIMITS,
)

# dimensions of the circuit
# A dimension was allowed 0.5 to 500 cm3, a parameter 1 to 300: the wider takes in single-cylinder
# engines and large diesels.
PUMP_DISPLACEMENT = Quantity(
    id="pump_displacement",
    says="pump displacement a turn of the pump",
    dimension="volume",
    plausible=(0.5 * CC, 500 * CC),
    unit="cm3",
    source=JUDGEMENT,
)
PUMP_DRIVE_RATIO = Quantity(
    id="pump_drive_ratio",
    says="pump turns for each crank turn",
    dimension="count",
    plausible=(0.01, 1.5),
    source=JUDGEMENT,
)
PUMP_GEAR_DIAMETER = Quantity(
    id="pump_gear_diameter",
    says="pump gear diameter over the teeth",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
PUMP_GEAR_LENGTH = Quantity(
    id="pump_gear_length",
    says="pump gear length",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
PUMP_TIP_LAND = Quantity(
    id="pump_tip_land",
    says="all sealing tips of the pump in series",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
