"""Quantities of the oil pump, with their limits."""

from knowledge import sources
from knowledge.engines import features, features_build
from knowledge.figures import DIAL_GAUGE, FEELER, LB_FT, wrench
from knowledge.limits import Limit, Printed, Side
from knowledge.model import Quantity
from knowledge.sources import JUDGEMENT
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
    says="depth of wear in the pump cover",
    dimension="length",
    plausible=GAP,
    spread=0.008 * MM,  # a straightedge and the thinnest blades
    source=JUDGEMENT,
)
PUMP_COVER_SCREW = Quantity(
    id="pump_cover_screw",
    says="thread of the pump cover screws, outside diameter",
    dimension="length",
    plausible=(3 * MM, 16 * MM),
    source=JUDGEMENT,
)
PUMP_COVER_TORQUE = Quantity(
    id="pump_cover_torque",
    says="torque of the pump cover screws",
    dimension="torque",
    plausible=(0.5, 100.0),  # N·m
    spread=wrench(15 * LB_FT),
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

ROTORS = (features_build.ROTOR_PUMP,)
DIESEL = (features.DIESEL,)

# Each of these figures was printed for single engines; another's own figure goes before it.
MOST_END_CLEARANCE = Limit(
    id="pump_end_clearance",
    says="greatest end clearance of the pump's gears or rotors",
    quantities=(PUMP_END_CLEARANCE,),
    side=Side.MOST,
    typical=0.006 * INCH,
    source=sources.STRAIGHT_SIX_MANUAL,
    of="petrol straight six, gear pump; a V6 prints the same",
    others=(
        Printed(
            value=0.10 * MM,
            of="diesel four, gear pump",
            source=sources.GEAR_PUMP_LIMITS,
            only_with=DIESEL,
            not_with=ROTORS,
        ),
        Printed(
            value=0.0043 * INCH,
            of="diesel V8, gear pump",
            source=sources.DIESEL_V8_PUMP_LIMITS,
            only_with=DIESEL,
            not_with=ROTORS,
        ),
        Printed(
            value=0.007 * INCH,
            of="heavy diesel, gear pump",
            source=sources.DIESEL_PUMP_BENCH,
            only_with=DIESEL,
            not_with=ROTORS,
        ),
        Printed(
            value=0.095 * MM,
            of="petrol V8 of 2023, rotors",
            source=sources.ROTOR_PUMP_LIMITS_2023,
            only_with=ROTORS,
        ),
        Printed(
            value=0.004 * INCH,
            of="petrol V6 of 1997, rotors",
            source=sources.V6_ROTOR_PUMP_1997,
            only_with=ROTORS,
        ),
        Printed(
            value=0.12 * MM,
            of="petrol V6 of 2004, rotors",
            source=sources.V6_ROTOR_PUMP_2004,
            only_with=ROTORS,
        ),
    ),
)
MOST_SIDE_CLEARANCE = Limit(
    id="pump_side_clearance",
    says="greatest clearance of gear or outer rotor to body",
    quantities=(PUMP_SIDE_CLEARANCE,),
    side=Side.MOST,
    typical=0.005 * INCH,
    source=sources.PUMP_INSTALLATION_1983,
    of="petrol V6, gear pump",
    others=(
        Printed(
            value=0.006 * INCH,
            of="heavy diesel, gear pump",
            source=sources.DIESEL_PUMP_BENCH,
            only_with=DIESEL,
            not_with=ROTORS,
        ),
        Printed(
            value=0.0087 * INCH,
            of="diesel V8, gear pump",
            source=sources.DIESEL_V8_PUMP_LIMITS,
            only_with=DIESEL,
            not_with=ROTORS,
        ),
        Printed(
            value=0.235 * MM,
            of="petrol V8 of 2023, rotors",
            source=sources.ROTOR_PUMP_LIMITS_2023,
            only_with=ROTORS,
        ),
        Printed(
            value=0.20 * MM,
            of="petrol V6 of 2004, rotors",
            source=sources.V6_ROTOR_PUMP_2004,
            only_with=ROTORS,
        ),
        Printed(
            value=0.015 * INCH,
            of="army plant engines, rotors",
            source=sources.ARMY_TM_664_GEROTOR,
            only_with=ROTORS,
        ),
    ),
)
MOST_ROTOR_TIP_CLEARANCE = Limit(
    id="rotor_tip_clearance",
    says="greatest clearance between the rotor tips",
    quantities=(ROTOR_TIP_CLEARANCE,),
    side=Side.MOST,
    typical=0.15 * MM,
    source=sources.ROTOR_PUMP_LIMITS_2023,
    of="petrol V8 of 2023",
    others=(
        Printed(value=0.007 * INCH, of="army plant engines", source=sources.ARMY_TM_664_GEROTOR),
        Printed(value=0.20 * MM, of="petrol V6 of 2004", source=sources.V6_ROTOR_PUMP_2004),
        Printed(value=0.008 * INCH, of="petrol V6 of 1997", source=sources.VAN_ROTOR_PUMP_1997),
    ),
)
USUAL_COVER_TORQUE = Limit(
    id="pump_cover_torque",
    says="torque of the pump cover screws",
    quantities=(PUMP_COVER_TORQUE,),
    side=Side.NOMINAL,
    typical=8 * LB_FT,
    source=JUDGEMENT,
    of="screws of 1/4 in or M6",
)
MOST_COVER_HOLLOW = Limit(
    id="cover_flatness",
    says="deepest hollow or groove in the pump cover",
    quantities=(PUMP_COVER_HOLLOW,),
    side=Side.MOST,
    typical=0.001 * INCH,
    source=sources.PUMP_INSTALLATION_1983,
    of="petrol V6, gear pump in the timing cover",
    others=(
        Printed(
            value=0.0015 * INCH,
            of="petrol V6 and V8 of 1997, rotors",
            source=sources.VAN_ROTOR_PUMP_1997,
            only_with=ROTORS,
        ),
        Printed(
            value=0.003 * INCH,
            of="petrol V6 of 1997 and V10 of 1995, rotors",
            source=sources.V6_ROTOR_PUMP_1997,
            only_with=ROTORS,
        ),
    ),
)
MOST_BACKLASH = Limit(
    id="pump_backlash",
    says="greatest backlash of the pump gears",
    quantities=(PUMP_BACKLASH,),
    side=Side.MOST,
    typical=0.028 * INCH,
    source=sources.DIESEL_PUMP_BENCH,
    of="heavy diesel",
    typical_only_with=DIESEL,
    others=(
        Printed(
            value=0.015 * INCH,
            of="army plant engine, drive of a rotor pump",
            source=sources.ARMY_TM_322_GEROTOR,
            only_with=ROTORS,
        ),
        Printed(
            value=0.028 * INCH,
            of="heavy diesel",
            source=sources.DIESEL_PUMP_BENCH,
            only_with=DIESEL,
        ),
        Printed(
            value=0.018 * INCH,
            of="army plant engine, gear pump",
            source=sources.ARMY_TM_229_GEAR_PUMP,
            only_with=DIESEL,
        ),
    ),
)
MOST_BUSH_CLEARANCE = Limit(
    id="pump_bush_clearance",
    says="greatest clearance of the pump shaft in its bush",
    quantities=(PUMP_BUSH_CLEARANCE,),
    side=Side.MOST,
    typical=0.0055 * INCH,
    source=sources.DIESEL_V8_PUMP_LIMITS,
    of="diesel V8",
    typical_only_with=DIESEL,
)

# dimensions of the circuit
# A dimension was allowed 0.5 to 500 cm3, a parameter 1 to 300: the wider takes in single-cylinder
# engines and large diesels.
PUMP_DISPLACEMENT = Quantity(
    id="pump_displacement",
    says="pump displacement per turn of the pump",
    short="pump displacement",
    dimension="volume",
    plausible=(0.5 * CC, 500 * CC),
    unit="cm3",
    source=JUDGEMENT,
)
PUMP_DRIVE_RATIO = Quantity(
    id="pump_drive_ratio",
    says="pump turns per crankshaft turn",
    dimension="count",
    plausible=(0.01, 1.5),
    source=JUDGEMENT,
)
PUMP_GEAR_DIAMETER = Quantity(
    id="pump_gear_diameter",
    says="pump gear outside diameter",
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
