"""The pump's drive, and the checks that show it."""

from knowledge import sources
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, RARE, Finding, Kind, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

ORIGINAL_DRIVE_SHAFT = Finding(
    id="original_drive_shaft",
    station=Station.PUMP,
    says="the pump still has its original drive shaft, decades old",
    asks="Pump drive shaft: still the original, decades old?",
    source=COMMON_PRACTICE,
    kind=Kind.HISTORY,
    also=("50 year old stock drive shaft", "never changed the oil pump shaft", "stock shaft"),
)
GONE_AT_THE_NEXT_START = Finding(
    id="gone_at_the_next_start",
    station=Station.PUMP,
    says="pressure was there when it was stopped and gone at the next start",
    asks="Pressure there when stopped, gone at the next start?",
    source=COMMON_PRACTICE,
    denies="it was not lost between two runs",
    stage=Stage.KNOWN,
    normal="comes back at each start",
    background=RARE,
    also=(
        "fine last night none this morning",
        "no pressure next day",
        "lost it overnight",
    ),
)
BEGAN_AFTER_REVVING_HARD = Finding(
    id="began_after_revving_hard",
    station=Station.PUMP,
    says="it began straight after revving to the limit",
    asks="Did it begin straight after hard revving?",
    source=COMMON_PRACTICE,
    denies="no link with hard revving",
    stage=Stage.KNOWN,
    normal="no link",
    background=RARE,
    also=(
        "redlined it",
        "over-revved",
        "missed a gear",
    ),
)
STEPPED_DOWN_AND_STAYED = Finding(
    id="stepped_down_and_stayed",
    station=Station.PUMP,
    says="it stepped down once and stayed at the lower value",
    asks="Did it step down once, perhaps with a wiggle, and stay there?",
    source=idea_from(sources.TRUCK_DRIVER_MANUAL),
    denies="no step down that stayed",
    stage=Stage.KNOWN,
    normal="no steps",
    background=RARE,
    also=(
        "dropped 20 psi and stayed there",
        "needle wiggled then lower",
    ),
)
PUMP_JAMMED = Finding(
    id="pump_jammed",
    station=Station.PUMP,
    says="the pump is jammed or seized",
    asks="Pump jammed or seized, so that you cannot turn it by hand?",
    source=sources.JOBBER_OIL_PUMPS,
    denies="the pump can be turned by hand",
    stage=Stage.OPENED,
    normal="turns by the fingers",
    background=HARDLY_EVER,
    also=("oil pump seized", "pump locked solid", "pump won't turn"),
)
DRIVE_SHAFT_BROKEN = Finding(
    id="drive_shaft_broken",
    station=Station.PUMP,
    says="the pump's drive shaft is broken or twisted off",
    asks="Pump drive shaft broken, sheared or twisted off?",
    source=sources.NAVY_ENGINEMAN,
    denies="the pump's drive shaft is whole",
    stage=Stage.OPENED,
    normal="whole and straight",
    why="without its shaft the pump stops; look next for what stopped the pump",
    background=HARDLY_EVER,
    also=(
        "oil pump shaft snapped",
        "twisted oil pump driveshaft",
        "intermediate shaft in two pieces",
        "oil pump drive rod broke",
    ),
)
DRIVE_SHAFT_ROUNDED = Finding(
    id="drive_shaft_rounded",
    station=Station.PUMP,
    says="the pump's drive shaft or its slot is rounded, worn or starting to twist",
    asks="Pump drive shaft: hex, slot or tang rounded, worn or starting to twist?",
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    denies="hex, slot and tang of the pump's drive are sharp",
    stage=Stage.OPENED,
    normal="sharp edges, snug fit, straight",
    background=EXCEPTIONAL,
    also=("rounded hex shaft", "worn tang", "stripped hex", "slot wallowed out"),
)
DRIVE_NOT_ENGAGED = Finding(
    id="drive_not_engaged",
    station=Station.PUMP,
    says="the pump's drive shaft is missing, too short or does not engage",
    asks="Pump drive shaft missing, too short or not fully engaged?",
    source=COMMON_PRACTICE,
    denies="the pump's drive engages fully at both ends",
    stage=Stage.OPENED,
    normal="fully engaged at both ends",
    background=HARDLY_EVER,
    also=("shaft left out", "forgot the oil pump shaft", "shaft too short", "shaft dropped down"),
)
DRIVE_GEAR_STRIPPED = Finding(
    id="drive_gear_stripped",
    station=Station.PUMP,
    says="the gear or pinion that drives the pump is stripped or has broken teeth",
    asks="Gear or pinion that drives the pump: stripped or a tooth broken?",
    source=sources.WORN_GEAR_THREAD,
    denies="the gears that drive the pump have all their teeth",
    stage=Stage.OPENED,
    normal="every tooth whole",
    background=HARDLY_EVER,
    also=(
        "stripped distributor gear",
        "pinion teeth gone",
        "oil pump drive gear chewed up",
        "bronze gear worn to nothing",
    ),
)
DRIVE_COUPLING_SHEARED = Finding(
    id="drive_coupling_sheared",
    station=Station.PUMP,
    says="a coupling, tang, key or pin of the pump's drive is sheared or lost",
    asks="Pump drive: a coupling, tang, key or roll pin sheared or lost?",
    source=sources.NAVY_ENGINEMAN,
    denies="coupling, tang, key and pin of the pump's drive are whole",
    stage=Stage.OPENED,
    normal="whole",
    background=HARDLY_EVER,
    also=("sheared roll pin", "tang snapped off", "woodruff key sheared", "plastic sleeve gone"),
)
DRIVE_FOUND_FAILED = Finding(
    id="drive_found_failed",
    station=Station.PUMP,
    says="the pump's drive was found broken, stripped or come apart (part not named)",
    asks="Pump drive found broken, stripped or come apart?",
    source=sources.NAVY_ENGINEMAN,
    denies="the pump's drive is whole",
    stage=Stage.OPENED,
    normal="whole",
    background=HARDLY_EVER,
    also=(
        "oil pump drive failed",
        "pump drive broke",
    ),
)
LOOK_DOWN_THE_DRIVE = Inspection(
    id="look_down_the_drive",
    station=Station.PUMP,
    says="look down the drive: gear, pin, shaft end",
    steps=(
        "mark rotor and housing before pulling the distributor or drive gear",
        "light down the hole: is the shaft there, whole, straight, engaged?",
        (
            "look at every tooth and at the pin; turn the shaft with a screwdriver: it must resist a "
            "little"
        ),
    ),
    minutes=10,
    access=Access.DISTRIBUTOR_OUT,
    reveals=(
        DRIVE_FOUND_FAILED,
        DRIVE_SHAFT_BROKEN,
        DRIVE_GEAR_STRIPPED,
        DRIVE_COUPLING_SHEARED,
        DRIVE_NOT_ENGAGED,
        DRIVE_SHAFT_ROUNDED,
        PUMP_JAMMED,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "long screwdriver", "magnet"),
    cautions=(Caution.BATTERY,),
    keep="photograph gear and shaft end as they come out",
    also=("check oil pump drive", "distributor gear"),
)

DRIVE_GEAR_WORN = Finding(
    id="drive_gear_worn",
    station=Station.PUMP,
    says="the gear that drives the pump is worn on one flank",
    asks="Distributor or skew gear that drives the pump: worn on one flank?",
    source=sources.WORN_GEAR_THREAD,
    denies="the gear that drives the pump is evenly polished",
    stage=Stage.OPENED,
    normal="an even, central pattern",
    why="a pump that is hard to turn, or a gear of the wrong metal, wears this flank first",
    background=RARE,
    also=("distributor gear worn", "sharp teeth on dizzy gear", "skew gear worn"),
)
NO_DRIVE_END_FLOAT = Finding(
    id="no_drive_end_float",
    station=Station.PUMP,
    says="the pump's drive has no end float, or binds once the pump is bolted up",
    asks="Pump bolted up: drive without end float, or binding when turned?",
    source=sources.DISTRIBUTOR_FLOAT_EXTRACT,
    denies="the pump's drive has end float and turns freely",
    stage=Stage.OPENED,
    normal="0.003 to 0.007 in on a skew gear, 0.024 to 0.035 in on some distributors",
    background=HARDLY_EVER,
    also=("shaft binds when tightened", "no end play", "pump tight when bolted down"),
)
TOO_MUCH_DRIVE_FLOAT = Finding(
    id="too_much_drive_float",
    station=Station.PUMP,
    says="the pump's drive has too much end float",
    asks="Pump drive or distributor shaft: far too much end float?",
    source=idea_from(sources.DISTRIBUTOR_GEAR_THREAD),
    denies="the pump's drive has no excess of end float",
    stage=Stage.OPENED,
    normal="0.003 to 0.007 in on a skew gear, 0.024 to 0.035 in on some distributors",
    background=RARE,
    also=("too much end play in distributor", "shaft moves up and down a lot"),
)
MEASURE_GEAR_AND_FLOAT = Inspection(
    id="measure_gear_and_float",
    station=Station.PUMP,
    says="tooth pattern and end float of the drive gear",
    steps=(
        "look at the wear on both flanks of every tooth",
        "feeler or dial gauge for the end float, pump bolted up",
        "turn it by hand all round: no tight spot",
    ),
    minutes=15,
    access=Access.DISTRIBUTOR_OUT,
    reveals=(DRIVE_GEAR_WORN, NO_DRIVE_END_FLOAT, TOO_MUCH_DRIVE_FLOAT, DRIVE_GEAR_STRIPPED),
    source=idea_from(sources.DISTRIBUTOR_FLOAT_EXTRACT),
    tools=("feeler", "dial gauge"),
    cautions=(Caution.HAND_TURN,),
    keep="mark the timing first",
    also=(
        "distributor gear wear",
        "end play of the drive",
    ),
)

PUMP_HOUSING_BURST = Finding(
    id="pump_housing_burst",
    station=Station.PUMP,
    says="the pump's housing is broken or burst",
    asks="Pump housing broken or burst?",
    source=COMMON_PRACTICE,
    denies="the pump's housing is whole",
    stage=Stage.OPENED,
    normal="whole",
    background=HARDLY_EVER,
    also=("oil pump housing broken", "pump snapped off", "pump casting broke", "burst pump"),
)
PUMP_BOLTS_LOOSE = Finding(
    id="pump_bolts_loose",
    station=Station.PUMP,
    says="the pump's mounting bolts are loose, missing or bottomed",
    asks="Pump mounting bolts loose, missing or bottomed in their holes?",
    source=COMMON_PRACTICE,
    denies="the pump's mounting bolts are tight",
    stage=Stage.OPENED,
    normal="tight to the maker's torque and locked",
    background=HARDLY_EVER,
    also=("oil pump bolts backed out", "pump hanging loose", "pump bolt in the pan"),
)
PUMP_SEEN_STANDING = Finding(
    id="pump_seen_standing",
    station=Station.PUMP,
    says="the pump or its shaft stood still while the engine was turned",
    asks="Turn or crank the engine: does the pump or its shaft stand still?",
    source=COMMON_PRACTICE,
    denies="the pump turns with the engine",
    stage=Stage.OPENED,
    normal="turns with the engine, usually at half its speed",
    why="a pump that stands still moves no oil, even if all else is right",
    background=HARDLY_EVER,
    also=("oil pump not spinning", "pump shaft doesn't turn", "pump not being driven"),
)
PUMP_CHAIN_BROKEN = Finding(
    id="pump_chain_broken",
    station=Station.PUMP,
    says="the pump's chain is broken or off, or its sprocket broken or loose",
    asks="Pump chain broken or off, or its sprocket broken or loose?",
    source=sources.MOTORCYCLE_MANUAL,
    denies="the pump's chain and sprockets are whole and tight",
    stage=Stage.OPENED,
    normal="chain whole, sprocket nut tight",
    background=HARDLY_EVER,
    also=("oil pump chain snapped", "sprocket nut came off", "pump sprocket bolt backed out"),
)
TURN_ENGINE_WATCH_PUMP = Inspection(
    id="turn_engine_watch_pump",
    station=Station.PUMP,
    says="turn the engine by hand and watch the pump, its chain and its bolts",
    steps=(
        "light on the pump before you touch anything: housing, bolts, wash marks",
        "turn the engine slowly by hand and see the pump or its shaft turn with it",
        "look at chain, sprocket and sprocket nut, if fitted",
    ),
    minutes=10,
    access=Access.SUMP_OFF,
    reveals=(PUMP_SEEN_STANDING, PUMP_CHAIN_BROKEN, PUMP_HOUSING_BURST, PUMP_BOLTS_LOOSE),
    source=COMMON_PRACTICE,
    tools=("lamp", "turning bar"),
    cautions=(Caution.LIFTING, Caution.HAND_TURN, Caution.USED_OIL),
    keep="photograph the pump in place with its bolts",
    also=("does the oil pump turn",),
)

DRIVE_SHAFT_TOO_LONG = Finding(
    id="drive_shaft_too_long",
    station=Station.PUMP,
    says="the pump's drive shaft is longer than the one listed",
    asks="Pump drive shaft longer than the one listed for this engine?",
    source=sources.BLOG_SHAFT_BOUND_2009,
    denies="the pump's drive shaft has the right length",
    stage=Stage.OPENED,
    normal="the listed length",
    background=HARDLY_EVER,
    also=("oil pump rod too long", "wrong length drive shaft"),
)
COMPARE_THE_DRIVE_SHAFT = Inspection(
    id="compare_the_drive_shaft",
    station=Station.PUMP,
    says="drive shaft, slot, pin and coupling against new ones",
    steps=(
        "measure length and the fit of hex, slot or tang",
        "look along it for twist, and at collar and pin for cracks",
        "see how far it engages at both ends",
    ),
    minutes=10,
    access=Access.PUMP_OFF,
    reveals=(
        DRIVE_SHAFT_BROKEN,
        DRIVE_SHAFT_ROUNDED,
        DRIVE_SHAFT_TOO_LONG,
        DRIVE_NOT_ENGAGED,
        DRIVE_COUPLING_SHEARED,
    ),
    source=idea_from(sources.PUMP_MAKER_SHAFTS_SCREENS),
    tools=("micrometer", "lamp", "new shaft to compare"),
    also=(
        "rounded drive shaft",
        "pump drive rod",
    ),
)
