"""What is measured of rings, rods and crank as they go together, beside the bearing clearances."""

from knowledge.sources import FROM_MEMORY
from knowledge.stations.bearings import causes, causes_geometry, quantities_build
from knowledge.units import THOU
from knowledge.work import Access, Band, Caution, Hold, Phase, Task

RING_GAPS_FITTED = Task(
    id="ring_gaps_fitted",
    phase=Phase.BEARINGS,
    says="gap of each piston ring, pushed square into its own bore",
    how=(
        "push the ring down with a piston, to where the bore is least worn",
        "feeler in the gap; write down each ring and bore",
        "the ring maker's figure for this bore comes first",
    ),
    source=FROM_MEMORY,
    hold=Hold.NOTE,
    holds_if_failed=True,
    measures=quantities_build.RING_GAP,
    bands=(
        Band(
            low=8 * THOU,
            high=35 * THOU,
            source=FROM_MEMORY,
            says="bores of 3 to 4 in, from new to worn; about 0.004 in for each inch of bore",
        ),
    ),
    remedy="too small: file the ends square; too large: another ring, or another bore",
    why="ends that meet when hot seize; a wide gap blows gas into the sump and thins the oil",
    opened=(Access.CRANK_OUT,),
    also=("ring gaps", "ring end gap", "piston ring gap"),
)
ROD_SIDE_CLEARANCE_FITTED = Task(
    id="rod_side_clearance_fitted",
    phase=Phase.BEARINGS,
    says="side clearance of each rod, or pair of rods, on its crankpin",
    how=("caps torqued; feeler between rod and crank cheek, or between the two rods",),
    source=FROM_MEMORY,
    hold=Hold.NOTE,
    holds_if_failed=True,
    measures=quantities_build.ROD_SIDE_CLEARANCE,
    bands=(Band(low=4 * THOU, high=20 * THOU, source=FROM_MEMORY, says="cars and light trucks"),),
    remedy="too small: find what binds; too large: renew the rod or the crank",
    guards=(causes_geometry.BENT_ROD_OR_CRANK,),
    opened=(Access.CRANK_OUT,),
    also=("rod side clearance", "rod side play", "conrod side clearance"),
)
CRANK_TURNING_TORQUE_MEASURED = Task(
    id="crank_turning_torque_measured",
    phase=Phase.BEARINGS,
    says="torque that turns the crank, rods and pistons in, plugs out",
    how=(
        "beam wrench on the crank bolt; read it as the crank turns, not as it breaks away",
        "also after each cap: a sudden rise belongs to the last one",
    ),
    source=FROM_MEMORY,
    hold=Hold.NOTE,
    holds_if_failed=True,
    measures=quantities_build.CRANK_TURNING_TORQUE,
    bands=(
        Band(
            low=None,
            high=45.0,
            source=FROM_MEMORY,
            says="car engines up to a V8 with new rings; a small four far less",
        ),
    ),
    remedy="slacken cap by cap to find the tight one, and measure it",
    guards=(causes.BEARING_WRONG_SIZE, causes_geometry.LINE_BORE_MISALIGNED),
    opened=(Access.CRANK_OUT,),
    cautions=(Caution.HAND_TURN,),
    also=("turning torque", "breakaway torque", "torque to turn the crank"),
)
