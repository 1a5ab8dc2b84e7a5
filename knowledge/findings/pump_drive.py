"""What can be seen along the pump's drive: shaft, coupling, gears, chain, end float."""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FFC, HB14, ISS, MSK, NE1, OCM, TR4, V8F
from knowledge.vocabulary import RARE, VERY_RARE, Finding, Kind, Stage, Station

ORIGINAL_DRIVE_SHAFT = Finding(
    "original_drive_shaft",
    Station.PUMP,
    "the pump still has its first drive shaft, decades old",
    "Is the shaft that drives the pump still the first one, decades old?",
    CP,
    kind=Kind.HISTORY,
    also=("50 year old stock drive shaft", "never changed the oil pump shaft", "stock shaft"),
)
PUMP_SEEN_STANDING = Finding(
    "pump_seen_standing",
    Station.PUMP,
    "the pump or its shaft was seen standing still while the engine was turned",
    "With the engine turned or cranked: does the pump, or its shaft, stand still?",
    NE1,
    denies="the pump turns with the engine",
    stage=Stage.OPENED,
    normal="turns with the engine, usually at half its speed",
    why="a pump that stands still moves no oil, whatever else is right",
    background=VERY_RARE,
    also=("oil pump not spinning", "pump shaft doesn't turn", "pump not being driven"),
)
DRIVE_SHAFT_BROKEN = Finding(
    "drive_shaft_broken",
    Station.PUMP,
    "the pump's drive shaft is broken or twisted off",
    "Is the pump's drive shaft broken, sheared or twisted off?",
    NE1,
    denies="the pump's drive shaft is whole",
    stage=Stage.OPENED,
    normal="whole and straight",
    why="no shaft, no pump, no pressure; look next for what stopped the pump",
    background=VERY_RARE,
    also=(
        "oil pump shaft snapped",
        "twisted oil pump driveshaft",
        "intermediate shaft in two pieces",
        "oil pump drive rod broke",
    ),
)
DRIVE_SHAFT_ROUNDED = Finding(
    "drive_shaft_rounded",
    Station.PUMP,
    "the pump's drive shaft or its slot is rounded, worn or starting to twist",
    "Are hex, slot or tang of the pump's drive shaft rounded, worn or starting to twist?",
    ISS,
    denies="hex, slot and tang of the pump's drive are sharp",
    stage=Stage.OPENED,
    normal="sharp edges, snug fit, straight",
    background=RARE,
    also=("rounded hex shaft", "worn tang", "stripped hex", "slot wallowed out"),
)
DRIVE_NOT_ENGAGED = Finding(
    "drive_not_engaged",
    Station.PUMP,
    "the pump's drive shaft is missing, too short or does not engage",
    "Is the pump's drive shaft missing, too short, or not fully engaged?",
    CP,
    denies="the pump's drive engages fully at both ends",
    stage=Stage.OPENED,
    normal="fully engaged at both ends",
    background=VERY_RARE,
    also=("shaft left out", "forgot the oil pump shaft", "shaft too short", "shaft dropped down"),
)
DRIVE_SHAFT_TOO_LONG = Finding(
    "drive_shaft_too_long",
    Station.PUMP,
    "the pump's drive shaft is longer than the one listed",
    "Is the pump's drive shaft longer than the one listed for this engine?",
    MSK,
    denies="the pump's drive shaft has the right length",
    stage=Stage.OPENED,
    normal="the listed length",
    background=VERY_RARE,
    also=("oil pump rod too long", "wrong length drive shaft"),
)
DRIVE_GEAR_STRIPPED = Finding(
    "drive_gear_stripped",
    Station.PUMP,
    "the gear or pinion that drives the pump is stripped or has broken teeth",
    "Is the gear or pinion that drives the pump stripped, or a tooth of it broken?",
    V8F,
    denies="the gears that drive the pump have all their teeth",
    stage=Stage.OPENED,
    normal="every tooth whole",
    background=VERY_RARE,
    also=(
        "stripped distributor gear",
        "pinion teeth gone",
        "oil pump drive gear chewed up",
        "bronze gear worn to nothing",
    ),
)
DRIVE_COUPLING_SHEARED = Finding(
    "drive_coupling_sheared",
    Station.PUMP,
    "a coupling, tang, key or pin of the pump's drive is sheared or lost",
    "Is a coupling, tang, key or roll pin in the pump's drive sheared or lost?",
    NE1,
    denies="coupling, tang, key and pin of the pump's drive are whole",
    stage=Stage.OPENED,
    normal="whole",
    background=VERY_RARE,
    also=("sheared roll pin", "tang snapped off", "woodruff key sheared", "plastic sleeve gone"),
)
PUMP_CHAIN_BROKEN = Finding(
    "pump_chain_broken",
    Station.PUMP,
    "the pump's chain is broken or off, or its sprocket broken or loose",
    "Is the pump's chain broken or off, or its sprocket broken or loose?",
    HB14,
    denies="the pump's chain and sprockets are whole and tight",
    stage=Stage.OPENED,
    normal="chain whole, sprocket nut tight",
    background=VERY_RARE,
    also=("oil pump chain snapped", "sprocket nut came off", "pump sprocket bolt backed out"),
)
DRIVE_GEAR_WORN = Finding(
    "drive_gear_worn",
    Station.PUMP,
    "the gear that drives the pump is worn on one flank",
    "Is the distributor or skew gear that drives the pump worn on one flank?",
    V8F,
    denies="the gear that drives the pump is evenly polished",
    stage=Stage.OPENED,
    normal="an even, central pattern",
    why="a pump that is hard to turn, or a gear of the wrong metal, eats this flank first",
    background=RARE,
    also=("distributor gear worn", "sharp teeth on dizzy gear", "skew gear worn"),
)
NO_DRIVE_END_FLOAT = Finding(
    "no_drive_end_float",
    Station.PUMP,
    "the pump's drive has no end float, or binds once the pump is bolted up",
    "With the pump bolted up: does the drive lack end float, or bind when turned?",
    TR4,
    denies="the pump's drive has end float and turns freely",
    stage=Stage.OPENED,
    normal="0.003 to 0.007 in on a skew gear, 0.024 to 0.035 in on some distributors",
    background=VERY_RARE,
    also=("shaft binds when tightened", "no end play", "pump tight when bolted down"),
)
TOO_MUCH_DRIVE_FLOAT = Finding(
    "too_much_drive_float",
    Station.PUMP,
    "the pump's drive has too much end float",
    "Has the pump's drive, or the distributor shaft, far more end float than the figure?",
    FFC,
    denies="the pump's drive has no excess of end float",
    stage=Stage.OPENED,
    normal="0.003 to 0.007 in on a skew gear, 0.024 to 0.035 in on some distributors",
    background=RARE,
    also=("too much end play in distributor", "shaft moves up and down a lot"),
)
DISTRIBUTOR_WILL_NOT_SEAT = Finding(
    "distributor_will_not_seat",
    Station.PUMP,
    "the distributor did not seat fully by hand and was pulled down by its clamp",
    "Did the distributor refuse to seat fully by hand, or was it pulled down by its clamp?",
    OCM,
    denies="the distributor seats fully by hand",
    stage=Stage.OUTSIDE,
    normal="seats under hand force, no gap at the flange",
    background=VERY_RARE,
    also=("distributor won't drop all the way", "gap under distributor", "distributor sits high"),
)
