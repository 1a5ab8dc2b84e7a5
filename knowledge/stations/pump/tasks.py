"""What must be right about the pump on the bench: the right one, clean, its fits."""

from knowledge import sources
from knowledge.engines import features, features_build
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.pump import causes, causes_fitted, quantities
from knowledge.units import MM, THOU
from knowledge.work import Band, Caution, Hold, Phase, Task

ROTORS = (features_build.ROTOR_PUMP,)
DIESEL = (features.DIESEL,)
END_CLEARANCE = (
    Band(
        low=2 * THOU,
        high=6 * THOU,
        source=sources.STRAIGHT_SIX_MANUAL,
        says="petrol straight six, gear pump; aim for the tight end",
        not_with=ROTORS,
    ),
    Band(
        low=2 * THOU,
        high=6 * THOU,
        source=sources.PUMP_INSTALLATION_1983,
        says="one V6, gear pump in the timing cover",
        not_with=ROTORS,
    ),
    Band(
        low=None,
        high=0.10 * MM,
        source=sources.GEAR_PUMP_LIMITS,
        says="diesel four, gear pump: the limit",
        only_with=DIESEL,
        not_with=ROTORS,
    ),
    Band(
        low=2.5 * THOU,
        high=4.3 * THOU,
        source=sources.DIESEL_V8_PUMP_LIMITS,
        says="diesel V8, gear pump",
        only_with=DIESEL,
        not_with=ROTORS,
    ),
    Band(
        low=None,
        high=0.17 * MM,
        source=sources.GEAR_TRAIN_PUMP_TEXT,
        says="gear pump on a diesel's gear train: the limit",
        only_with=DIESEL,
        not_with=ROTORS,
    ),
    Band(
        low=1 * THOU,
        high=7 * THOU,
        source=sources.DIESEL_PUMP_BENCH,
        says="heavy diesel, gear pump",
        only_with=DIESEL,
        not_with=ROTORS,
    ),
    Band(
        low=None,
        high=0.095 * MM,
        source=sources.ROTOR_PUMP_LIMITS_2023,
        says="rotor pump of a petrol V8: renew beyond this",
        only_with=ROTORS,
    ),
    Band(
        low=None,
        high=4 * THOU,
        source=sources.V8_ROTOR_PUMP_1997,
        says="rotor pumps of petrol V6 and V8 of 1997: the limit",
        only_with=ROTORS,
    ),
    Band(
        low=None,
        high=3 * THOU,
        source=sources.V10_ROTOR_PUMP_1995,
        says="rotor pump of a petrol V10: the limit",
        only_with=ROTORS,
    ),
    Band(
        low=None,
        high=0.12 * MM,
        source=sources.V6_ROTOR_PUMP_2004,
        says="rotor pump of a petrol V6 of 2004: the limit",
        only_with=ROTORS,
    ),
)
RIGHT_PUMP = Task(
    id="right_pump",
    phase=Phase.PUMP,
    says="right pump for this engine and sump",
    how=(
        "part number, capacity, rotation, height, drive ratio against the build sheet",
        "beside the old pump: mount, ports, shaft, overall length",
        "fit more volume or a stiffer spring only for a reason; the suction must keep up",
    ),
    source=sources.OVERHAUL_MANUAL_5_101,
    remedy="fit the right pump",
    guards=(causes_fitted.PUMP_WRONG_PART, causes_fitted.PUMP_OVERSIZED),
    also=("pump part number", "high volume pump", "is it the right oil pump"),
)
NEW_PUMP_OPENED = Task(
    id="new_pump_opened",
    phase=Phase.PUMP,
    says="pump opened, cleaned and inspected, even a new one",
    how=(
        "mark meshing teeth and which way the rotor faces, then take it apart",
        "look for casting grit, burrs at ports and teeth, cracks, a proud idler pin",
        "wash, blow dry, oil; measure the clearances when clean",
    ),
    source=sources.ENGINE_BUILDERS_2020,
    hold=Hold.NOTE,
    remedy="stone the burr and wash again; send back a pump that is cracked or rough",
    guards=(
        assembly_causes.DIRT_IN_ASSEMBLY,
        causes.PUMP_DEBRIS_LOCK,
        causes_fitted.PUMP_BODY_CRACKED,
        causes_fitted.PUMP_IDLER_PIN_MIGRATED,
    ),
    cautions=(
        Caution.SOLVENT,
        Caution.EYES,
        Caution.SPRING,
        Caution.PRESSURE,
    ),
    also=("blueprint the pump", "strip a new pump", "deburr the oil pump"),
)
GEAR_END_CLEARANCE_FITTED = Task(
    id="gear_end_clearance_fitted",
    phase=Phase.PUMP,
    says="end clearance over each pump gear or rotor",
    how=(
        "clean, dry, with only the gasket the pump runs with",
        "straightedge across the body, feeler over each gear, in two directions",
        "below 0.002 in: measure gears and pocket, find the wrong part",
        "write down the widest",
    ),
    source=sources.STRAIGHT_SIX_MANUAL,
    measures=quantities.PUMP_END_CLEARANCE,
    bands=END_CLEARANCE,
    limits=(None, quantities.MOST_END_CLEARANCE),
    remedy=(
        "fit another gear set or pump; have the body lapped by a machine shop only if the maker "
        "allows it"
    ),
    why="end clearance leaks straight from outlet to inlet, worst at hot idle",
    guards=(causes.PUMP_GEAR_WEAR,),
    also=("gear end play", "pump end clearance", "pump clearance", "straightedge over the gears"),
)
END_CLEARANCE_WITH_GROOVE = Task(
    id="end_clearance_with_groove",
    phase=Phase.PUMP,
    says="end clearance plus the depth of the groove in the cover",
    how=(
        "depth of the worn pattern in the cover: straightedge across it, feeler under",
        "add it to the end clearance; the sum must stay within the same figures",
        "a new or lapped cover adds nothing",
    ),
    source=sources.PUMP_INSPECTION_2006,
    measures=quantities.PUMP_END_CLEARANCE,
    bands=END_CLEARANCE,
    limits=(None, quantities.MOST_END_CLEARANCE),
    remedy="lap or renew the cover",
    guards=(causes.PUMP_COVER_SCORED, causes.PUMP_GEAR_WEAR),
    also=("cover wear", "grooved cover"),
)
GEAR_SIDE_CLEARANCE_FITTED = Task(
    id="gear_side_clearance_fitted",
    phase=Phase.PUMP,
    says="clearance gear to body, at every tooth",
    how=(
        "feeler between tooth and bore, away from the mesh; both gears, every tooth",
        "write down the widest and the tightest",
    ),
    source=sources.STRAIGHT_SIX_MANUAL,
    measures=quantities.PUMP_SIDE_CLEARANCE,
    bands=(
        Band(low=2 * THOU, high=4 * THOU, source=sources.STRAIGHT_SIX_MANUAL, says="petrol six"),
        Band(low=2 * THOU, high=5 * THOU, source=sources.PUMP_INSTALLATION_1983, says="one V6"),
        Band(
            low=2 * THOU,
            high=6 * THOU,
            source=sources.DIESEL_PUMP_BENCH,
            says="heavy diesel",
            only_with=DIESEL,
        ),
        Band(
            low=None,
            high=8.7 * THOU,
            source=sources.DIESEL_V8_PUMP_LIMITS,
            says="diesel V8: the limit",
            only_with=DIESEL,
        ),
        Band(
            low=None,
            high=7 * THOU,
            source=sources.ARMY_TM_354_GEAR_PUMP,
            says="army compressor's engine: the limit",
            of_one=True,
        ),
        Band(
            low=None,
            high=8 * THOU,
            source=sources.ARMY_TM_638_GEAR_PUMP,
            says="army fork lift's engine: the limit",
            of_one=True,
        ),
    ),
    limits=(None, quantities.MOST_SIDE_CLEARANCE),
    remedy="fit another gear set or pump",
    not_with=ROTORS,
    guards=(causes.PUMP_GEAR_WEAR,),
    also=("gear to body clearance", "body clearance", "pump side clearance"),
)
ROTOR_BODY_CLEARANCE_FITTED = Task(
    id="rotor_body_clearance_fitted",
    phase=Phase.PUMP,
    says="rotor pump: clearance outer rotor to body",
    how=("push the rotor to one side, feeler on the other", "no rotors in it: does not apply"),
    source=sources.ROTOR_PUMP_LIMITS_2023,
    measures=quantities.PUMP_SIDE_CLEARANCE,
    bands=(
        Band(
            low=None,
            high=0.235 * MM,
            source=sources.ROTOR_PUMP_LIMITS_2023,
            says="petrol V8 of 2023: renew beyond this",
        ),
        Band(
            low=None,
            high=0.20 * MM,
            source=sources.V6_ROTOR_PUMP_2004,
            says="petrol V6 of 2004: the limit",
        ),
        Band(
            low=None,
            high=15 * THOU,
            source=sources.V6_ROTOR_PUMP_1997,
            says="petrol V6 of 1997, big rotors: the limit",
        ),
    ),
    remedy="renew the pump",
    guards=(causes.PUMP_GEAR_WEAR,),
    not_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features_build.GEAR_PUMP),
    also=("gerotor clearance", "outer rotor clearance"),
)
ROTOR_TIP_CLEARANCE_FITTED = Task(
    id="rotor_tip_clearance_fitted",
    phase=Phase.PUMP,
    says="rotor pump: clearance tip to tip",
    how=("feeler between the tips, in several positions", "no rotors in it: does not apply"),
    source=sources.ROTOR_PUMP_LIMITS_2023,
    measures=quantities.ROTOR_TIP_CLEARANCE,
    bands=(
        Band(
            low=None,
            high=0.150 * MM,
            source=sources.ROTOR_PUMP_LIMITS_2023,
            says="petrol V8 of 2023: renew beyond this",
        ),
        Band(
            low=None,
            high=7 * THOU,
            source=sources.ARMY_TM_664_GEROTOR,
            says="army plant engines: the limit",
        ),
        Band(
            low=None,
            high=8 * THOU,
            source=sources.VAN_ROTOR_PUMP_1997,
            says="petrol V6 of 1997 and 2004: the limit",
        ),
    ),
    remedy="renew the pump",
    guards=(causes.PUMP_GEAR_WEAR,),
    not_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features_build.GEAR_PUMP),
    also=("gerotor tip clearance",),
)
ROTOR_MARKS_MATCHED = Task(
    id="rotor_marks_matched",
    phase=Phase.PUMP,
    says="gears or rotors fitted as they came: chamfer side, marks together",
    how=(
        "outer rotor: chamfer to the side it lay on; marks of both rotors on one side",
        "refit worn gears in the mesh you marked",
    ),
    source=sources.DIESEL_CASE_NOTE,
    remedy="turn it round before the cover goes on",
    why="a reversed outer rotor costs 40 to 60 % of the pump's flow",
    guards=(causes_fitted.PUMP_ROTOR_REVERSED,),
    also=("rotor wrong way round", "index marks"),
)
PUMP_BACKLASH_FITTED = Task(
    id="pump_backlash_fitted",
    phase=Phase.PUMP,
    says="backlash of the pump gears",
    how=("feeler between the teeth where they mesh, in several places",),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    measures=quantities.PUMP_BACKLASH,
    bands=(
        Band(
            low=3 * THOU,
            high=18 * THOU,
            source=sources.ARMY_TM_229_GEAR_PUMP,
            says="army plant engine, gear pump",
            of_one=True,
        ),
        Band(
            low=13 * THOU,
            high=28 * THOU,
            source=sources.DIESEL_PUMP_BENCH,
            says="heavy diesel",
            only_with=DIESEL,
        ),
        Band(
            low=None,
            high=0.25 * MM,
            source=sources.GEAR_TRAIN_PUMP_TEXT,
            says="gear pump on a diesel's gear train: the limit",
            only_with=DIESEL,
        ),
    ),
    limits=(None, quantities.MOST_BACKLASH),
    remedy="fit another gear set or pump",
    not_with=ROTORS,
    guards=(causes.PUMP_GEAR_WEAR,),
    also=("gear backlash",),
)
PUMP_BUSH_FITTED = Task(
    id="pump_bush_fitted",
    phase=Phase.PUMP,
    says="clearance of the pump shaft in its bush",
    how=("dial gauge on the shaft, rock it across; or measure shaft and bore",),
    source=sources.DIESEL_V8_PUMP_LIMITS,
    hold=Hold.NOTE,
    measures=quantities.PUMP_BUSH_CLEARANCE,
    bands=(
        Band(
            low=None,
            high=5.5 * THOU,
            source=sources.DIESEL_V8_PUMP_LIMITS,
            says="diesel V8",
            only_with=DIESEL,
        ),
        Band(
            low=None,
            high=6 * THOU,
            source=sources.ARMY_TM_354_GEAR_PUMP,
            says="army compressor's engine",
            of_one=True,
        ),
    ),
    limits=(None, quantities.MOST_BUSH_CLEARANCE),
    remedy="fit a new bush or pump",
    guards=(causes.PUMP_GEAR_WEAR,),
    also=("pump shaft play",),
)
