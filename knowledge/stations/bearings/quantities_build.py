"""Quantities that are measured as a crank with its rods and pistons goes together."""

from knowledge.figures import FEELER, wrench
from knowledge.model import Quantity
from knowledge.sources import FROM_MEMORY
from knowledge.units import MM

RING_GAP = Quantity(
    id="ring_gap",
    says="gap of a piston ring in its bore",
    short="ring gap",
    dimension="length",
    plausible=(0.0, 5 * MM),
    spread=FEELER,
    source=FROM_MEMORY,
)
ROD_SIDE_CLEARANCE = Quantity(
    id="rod_side_clearance",
    says="side clearance of a rod, or of a pair of rods, on its crankpin",
    short="rod side clearance",
    dimension="length",
    plausible=(0.0, 5 * MM),
    spread=FEELER,
    source=FROM_MEMORY,
)
CRANK_TURNING_TORQUE = Quantity(
    id="crank_turning_torque",
    says="torque that turns the crank",
    dimension="torque",
    plausible=(0.0, 500.0),
    spread=wrench(20.0),
    source=FROM_MEMORY,
)
