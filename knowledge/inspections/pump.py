"""How to look at the pump without opening it, and at its drive and joint."""

from knowledge.cautions import RUNNING
from knowledge.findings.pressure import FALLS_AS_REVS_RISE, FLICKERS_ONLY_AT_SPEED
from knowledge.findings.pump import (
    DRAWS_NOTHING_IN_BATH,
    DRILL_GIVES_GOOD,
    DRILL_GIVES_LITTLE,
    DRILL_GIVES_NONE,
    FORCED_OIL_BROUGHT_PRESSURE,
    GASKET_MASKS_PORT,
    IGNITION_SCATTERS,
    MOUNT_FACE_NOT_FLAT,
    MOUNT_GASKET_BLOWN,
    MOUNT_GASKET_MISSING,
    NO_OIL_WHEN_CRANKED,
    PACKED_STILL_NONE,
    PUMP_BELT_OFF,
    PUMP_BOLTS_LOOSE,
    PUMP_HOUSING_BURST,
    PUMP_NOISE,
    ROTOR_STILL_WHEN_CRANKED,
    TANK_EMPTIES_RUNNING,
    WRONG_PUMP_FITTED,
)
from knowledge.findings.pump_bench import PUMP_JAMMED, PUMP_TURNS_ROUGHLY
from knowledge.findings.pump_drive import (
    DISTRIBUTOR_WILL_NOT_SEAT,
    DRIVE_COUPLING_SHEARED,
    DRIVE_FOUND_FAILED,
    DRIVE_GEAR_STRIPPED,
    DRIVE_GEAR_WORN,
    DRIVE_NOT_ENGAGED,
    DRIVE_SHAFT_BROKEN,
    DRIVE_SHAFT_ROUNDED,
    DRIVE_SHAFT_TOO_LONG,
    NO_DRIVE_END_FLOAT,
    OIL_POURED_IN_NO_HELP,
    PUMP_CHAIN_BROKEN,
    PUMP_SEEN_STANDING,
    TOO_MUCH_DRIVE_FLOAT,
)
from knowledge.sources import CAV, CTD, HB07, HPA, ISS, OLD, POI, PRM, TR4
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access, Caution, Inspection, Station

# ------------------------------------------------------------------------ from outside

LISTEN_AT_THE_PUMP = Inspection(
    "listen_at_the_pump",
    Station.PUMP,
    "listen at the pump while the revs are raised",
    (
        "stethoscope or a rod on sump or front cover, nearest the pump",
        "raise the revs slowly and watch the gauge at the same time",
        "only while the pressure is within its limits; stop at any knock",
    ),
    5,
    Access.OUTSIDE,
    (PUMP_NOISE, FALLS_AS_REVS_RISE, FLICKERS_ONLY_AT_SPEED),
    CAV,
    tools=("stethoscope",),
    cautions=RUNNING,
    needs_running=True,
    also=("oil pump noise", "whining pump"),
)
WATCH_THE_ROTOR_CRANKED = Inspection(
    "watch_the_rotor_cranked",
    Station.PUMP,
    "watch the distributor rotor while cranking",
    ("ignition off, coil lead earthed", "cap off, crank a few turns and watch the rotor"),
    5,
    Access.OUTSIDE,
    (ROTOR_STILL_WHEN_CRANKED, IGNITION_SCATTERS),
    CP,
    tools=("screwdriver",),
    cautions=(
        Caution.ROTATING,
        Caution.BATTERY,
        Caution.FIRE,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    keep="note where the rotor points before anything is pulled",
    also=("is the distributor turning",),
)
STROBE_THE_TIMING = Inspection(
    "strobe_the_timing",
    Station.PUMP,
    "strobe the timing marks for scatter",
    (
        "only while the pressure is within its limits",
        "hold steady revs and watch whether the mark stands or dances",
    ),
    10,
    Access.OUTSIDE,
    (IGNITION_SCATTERS,),
    CP,
    tools=("strobe",),
    cautions=RUNNING,
    needs_running=True,
    also=(
        "timing light",
        "timing jumps about",
    ),
)
SEE_THE_DISTRIBUTOR_SEAT = Inspection(
    "see_the_distributor_seat",
    Station.PUMP,
    "see whether the distributor sits down by hand",
    ("mark its position, slacken the clamp", "press by hand: no gap may stay at the flange"),
    5,
    Access.OUTSIDE,
    (DISTRIBUTOR_WILL_NOT_SEAT,),
    CTD,
    tools=("spanner", "marker"),
    cautions=(Caution.HOT,),
    keep="mark housing and rotor first",
    also=("distributor down all the way",),
)
WATCH_THE_OIL_TANK = Inspection(
    "watch_the_oil_tank",
    Station.PUMP,
    "dry sump: watch tank, return and pump belt",
    (
        "engine stopped: look at belt and pulleys",
        "engine running: look for a steady return and a steady level in the tank",
        "stop as soon as the level sinks or the needle wavers",
    ),
    5,
    Access.OUTSIDE,
    (TANK_EMPTIES_RUNNING, PUMP_BELT_OFF),
    HPA,
    tools=("lamp",),
    cautions=RUNNING,
    needs_running=True,
    also=(
        "oil returning to the tank",
        "scavenge return",
    ),
)
CRANK_WITH_FILTER_OFF = Inspection(
    "crank_with_filter_off",
    Station.PUMP,
    "crank with the filter or outlet open and see whether oil comes",
    (
        "ignition or fuel off so that it cannot start",
        "rag and tray under the opening",
        "crank not longer than 30 seconds and watch for a strong stream",
    ),
    10,
    Access.FILTER_OFF,
    (NO_OIL_WHEN_CRANKED,),
    PRM,
    tools=("tray", "rags"),
    cautions=(
        Caution.ROTATING,
        Caution.EYES,
        Caution.USED_OIL,
        Caution.WASTE,
        Caution.FIRE,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    also=("does the pump move oil", "crank with filter removed"),
)
FORCE_OIL_INTO_THE_PUMP = Inspection(
    "force_oil_into_the_pump",
    Station.PUMP,
    "wet the pump: force clean oil into it, then crank",
    (
        "ignition or fuel off so that it cannot start",
        "push clean oil backwards into the pump through filter stud, gauge port or outlet",
        "pack a cover-mounted gear pump with petroleum jelly only if its maker says so",
        "close, crank not longer than 30 seconds, watch the gauge",
    ),
    30,
    Access.FILTER_OFF,
    (OIL_POURED_IN_NO_HELP, FORCED_OIL_BROUGHT_PRESSURE, PACKED_STILL_NONE),
    OLD,
    tools=("oil can or syringe", "clean oil", "trusted gauge"),
    cautions=(
        Caution.PRIMING,
        Caution.ROTATING,
        Caution.PRESSURE,
        Caution.WASTE,
        Caution.FIRE,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    destroys="the proof that the pump was dry",
    keep="note first whether any oil came when cranked",
    also=("prime the oil pump", "packing the pump with vaseline"),
)

# ---------------------------------------------------------------------------- the drive

SPIN_THE_PUMP_BY_DRILL = Inspection(
    "spin_the_pump_by_drill",
    Station.PUMP,
    "turn the pump by a drill with the engine still, and watch the gauge",
    (
        "ignition off and key out; engine full of oil",
        "turn the same way as the distributor turned; the wrong way gives nothing",
        "feel whether the drill takes load, read the gauge, look where oil comes out",
        "no pressure after two minutes: stop and find the cause",
        "not possible on a pump turned by the crank itself",
    ),
    25,
    Access.DISTRIBUTOR_OUT,
    (DRILL_GIVES_NONE, DRILL_GIVES_LITTLE, DRILL_GIVES_GOOD),
    POI,
    tools=("strong drill", "priming shaft", "trusted gauge", "trays"),
    cautions=(Caution.PRIMING, Caution.ROTATING, Caution.EYES),
    destroys="the proof that the pump was dry",
    keep="mark the distributor's position; note whether the pump was wet",
    also=("prime with a drill", "priming tool"),
)
LOOK_DOWN_THE_DRIVE = Inspection(
    "look_down_the_drive",
    Station.PUMP,
    "look down the drive: gear, pin, shaft end",
    (
        "mark rotor and housing before pulling the distributor or drive gear",
        "lamp down the hole: is the shaft there, whole, straight, engaged",
        "look at every tooth and at the pin; turn the shaft by a screwdriver: it must resist a little",
    ),
    10,
    Access.DISTRIBUTOR_OUT,
    (
        DRIVE_FOUND_FAILED,
        DRIVE_SHAFT_BROKEN,
        DRIVE_GEAR_STRIPPED,
        DRIVE_COUPLING_SHEARED,
        DRIVE_NOT_ENGAGED,
        DRIVE_SHAFT_ROUNDED,
        PUMP_JAMMED,
    ),
    ISS,
    tools=("lamp", "long screwdriver", "magnet"),
    cautions=(Caution.BATTERY,),
    keep="photograph gear and shaft end as they come out",
    also=("check oil pump drive", "distributor gear"),
)
MEASURE_GEAR_AND_FLOAT = Inspection(
    "measure_gear_and_float",
    Station.PUMP,
    "tooth pattern and end float of the drive gear",
    (
        "look at the wear on both flanks of every tooth",
        "feeler or dial gauge for the end float, pump bolted up",
        "turn it by hand all round: no tight spot",
    ),
    15,
    Access.DISTRIBUTOR_OUT,
    (DRIVE_GEAR_WORN, NO_DRIVE_END_FLOAT, TOO_MUCH_DRIVE_FLOAT, DRIVE_GEAR_STRIPPED),
    TR4,
    tools=("feeler", "dial gauge"),
    cautions=(Caution.HAND_TURN,),
    keep="mark the timing first",
    also=(
        "distributor gear wear",
        "end play of the drive",
    ),
)
TURN_ENGINE_WATCH_PUMP = Inspection(
    "turn_engine_watch_pump",
    Station.PUMP,
    "turn the engine by hand and watch the pump, its chain and its bolts",
    (
        "lamp on the pump before anything is touched: housing, bolts, wash marks",
        "turn the engine slowly by hand and see the pump or its shaft turn with it",
        "look at chain, sprocket and sprocket nut where there are any",
    ),
    10,
    Access.SUMP_OFF,
    (PUMP_SEEN_STANDING, PUMP_CHAIN_BROKEN, PUMP_HOUSING_BURST, PUMP_BOLTS_LOOSE),
    CP,
    tools=("lamp", "turning bar"),
    cautions=(Caution.LIFTING, Caution.HAND_TURN, Caution.USED_OIL),
    keep="photograph the pump in place with its bolts",
    also=("does the oil pump turn",),
)
COMPARE_THE_DRIVE_SHAFT = Inspection(
    "compare_the_drive_shaft",
    Station.PUMP,
    "drive shaft, slot, pin and coupling against new ones",
    (
        "measure length and the fit of hex, slot or tang",
        "look along it for twist, at collar and pin for cracks",
        "see how far it engages at both ends",
    ),
    10,
    Access.PUMP_OFF,
    (
        DRIVE_SHAFT_BROKEN,
        DRIVE_SHAFT_ROUNDED,
        DRIVE_SHAFT_TOO_LONG,
        DRIVE_NOT_ENGAGED,
        DRIVE_COUPLING_SHEARED,
    ),
    ISS,
    tools=("micrometer", "lamp", "new shaft to compare"),
    also=(
        "rounded drive shaft",
        "pump drive rod",
    ),
)

# ----------------------------------------------------------- the pump as it comes off

LOOK_AT_THE_PUMP_JOINT = Inspection(
    "look_at_the_pump_joint",
    Station.PUMP,
    "gasket, faces and bolts between pump and block",
    (
        "note the torque at which each bolt lets go",
        "photograph the gasket's imprint and any wash marks before scraping",
        "lay the gasket on both faces and mark the ports",
        "straightedge over both faces",
    ),
    10,
    Access.PUMP_OFF,
    (
        MOUNT_GASKET_BLOWN,
        MOUNT_GASKET_MISSING,
        MOUNT_FACE_NOT_FLAT,
        GASKET_MASKS_PORT,
        PUMP_BOLTS_LOOSE,
    ),
    HB07,
    tools=("straightedge", "feeler", "camera"),
    cautions=(Caution.ASBESTOS, Caution.USED_OIL),
    destroys="the gasket's imprint, once scraped",
    keep="photograph imprint and wash marks, keep the gasket",
    also=(
        "pump gasket",
        "pump mounting bolts",
    ),
)
TURN_PUMP_IN_OIL_BATH = Inspection(
    "turn_pump_in_oil_bath",
    Station.PUMP,
    "turn the pump by hand in a bath of clean oil",
    (
        "feel it turn dry of load first: free, smooth, no tight spot",
        "inlet under clean oil, turn the way it runs",
        "it must draw within a few turns and push against a thumb on the outlet",
    ),
    10,
    Access.PUMP_OFF,
    (DRAWS_NOTHING_IN_BATH, PUMP_TURNS_ROUGHLY, PUMP_JAMMED),
    CP,
    tools=("tray", "clean oil", "screwdriver"),
    destroys="debris in the pump moves on; look inside first if it turns roughly",
    keep="do not force a pump that binds",
    also=("bench test the oil pump", "spin pump in a bucket of oil"),
)
READ_THE_PUMP_NUMBER = Inspection(
    "read_the_pump_number",
    Station.PUMP,
    "is it the right pump: number, rotation, height, ratio",
    ("compare part number, gear height and drive ratio with the list", "compare with the old pump"),
    10,
    Access.PUMP_OFF,
    (WRONG_PUMP_FITTED,),
    HB07,
    tools=("parts list", "caliper"),
)
