"""What a damaged part calls for beside a new one: its neighbours measured, the machine shop asked."""

from knowledge.causes.bearings import (
    BEARING_SPUN,
    BEARING_WEAR_MAINS,
    BEARING_WEAR_RODS,
    BEARING_WIPED,
    BENT_ROD_OR_CRANK,
    JOURNAL_FINISH,
    LINE_BORE_MISALIGNED,
    THRUST_BEARING_WEAR,
)
from knowledge.causes.pump import (
    PUMP_COVER_SCORED,
    PUMP_DEBRIS_LOCK,
    PUMP_DRIVE_BROKEN,
    PUMP_DRIVE_SLIP,
    PUMP_GEAR_WEAR,
)
from knowledge.causes.topend import CAM_BEARING_WEAR, LIFTER_BORE_LEAK, TURBO_FEED_LEAK
from knowledge.engines.features import PUSHROD_ENGINE, TURBOCHARGED
from knowledge.findings.bearings import (
    ALL_BEARINGS_WIPED,
    CRANK_SCORED,
    MAIN_BEARING_SHIFTED,
    MAINS_WORN_UNEVENLY,
    ONE_BEARING_WIPED,
    ROD_OR_CRANK_BENT,
    ROD_THROUGH_BLOCK,
    SHELL_BACKS_SHINY,
    SHELL_EDGES_WORN,
    SHELL_SPUN,
    SHELLS_ETCHED,
    SHELLS_FLAKING,
    SHELLS_SCRATCHED,
    SHELLS_WIPED,
    THRUST_FACE_PLOUGHED,
    WEAR_AT_PARTING_LINES,
)
from knowledge.findings.bearings_bench import (
    BEARING_FOUND_SEIZED,
    CRANK_END_FLOAT_OVER,
    JOURNAL_NOT_TRUE,
    MAIN_BORES_OUT_OF_LINE,
    SEVERAL_JOURNALS_DRY,
    SHELLS_FOUND_RUINED,
    SIGNS_OF_STARVATION,
)
from knowledge.findings.pump import PUMP_CASTING_CRACKED, PUMP_HOUSING_BURST
from knowledge.findings.pump_bench import (
    CAVITATION_MARKS,
    COVER_GROOVED,
    COVER_WARPED,
    PIECE_IN_PUMP,
    PUMP_GEAR_BROKEN,
    PUMP_JAMMED,
    PUMP_SCORED_SEEN,
    STEEL_SLIVERS_IN_PUMP,
)
from knowledge.findings.pump_drive import (
    DRIVE_COUPLING_SHEARED,
    DRIVE_FOUND_FAILED,
    DRIVE_GEAR_STRIPPED,
    DRIVE_GEAR_WORN,
    DRIVE_SHAFT_BROKEN,
    DRIVE_SHAFT_ROUNDED,
    PIECE_THROUGH_PUMP_COVER,
    PUMP_CHAIN_BROKEN,
    PUMP_FOUND_FAILED,
)
from knowledge.findings.topend import (
    CAM_BEARING_FOUND_BAD,
    CAM_JOURNALS_WORN,
    CAM_LOBES_WIPED,
    CAMSHAFT_BROKEN,
)
from knowledge.findings.topend_feeds import TURBO_SHAFT_LOOSE, TURBO_SHAFT_STIFF_OR_BLUED
from knowledge.sources import BFP, BTG, CEB1, CEB2, ERD, GMI, ISS, THK, TM255, TME
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Caution, Phase, Task

WIPED = (
    SHELLS_WIPED,
    ONE_BEARING_WIPED,
    ALL_BEARINGS_WIPED,
    SHELLS_FOUND_RUINED,
    BEARING_FOUND_SEIZED,
    SEVERAL_JOURNALS_DRY,
    SIGNS_OF_STARVATION,
)
TURNED_IN_SEAT = (SHELL_SPUN, SHELL_BACKS_SHINY, MAIN_BEARING_SHIFTED)

STARVATION_EXPLAINED = Task(
    "starvation_explained",
    Phase.CLEANING,
    "why that bearing failed: told, and cured, before new shells are ordered",
    (
        "follow the oil back from it: hole, groove, drilling, gallery, pump, screen, level",
        "look at the next bearing on the same feed and the farthest from the pump",
        "dirt, no oil, wrong clearance, out of line, overload: say which, by the shells",
    ),
    BFP,
    remedy="look on: shells alone repair nothing",
    guards=(BEARING_WIPED, BEARING_SPUN),
    after=(*WIPED, SHELL_SPUN, SHELLS_FLAKING, ROD_THROUGH_BLOCK),
    also=("why did the bearing fail", "root cause of the bearing"),
)
JOURNALS_MEASURED_AFTER_WIPE = Task(
    "journals_measured_after_wipe",
    Phase.CLEANING,
    "journal of each wiped, scored or etched bearing measured, and its neighbours",
    (
        "pick off smeared lining, wash; six readings: two ends and middle, two ways across",
        "taper, roundness and finish against the maker's limits; nail across each score",
        "every other journal as well: the oil was the same for all",
    ),
    CEB1,
    remedy="polish or regrind at a machine shop, shells to the size it gives",
    guards=(JOURNAL_FINISH, BEARING_WEAR_MAINS, BEARING_WEAR_RODS),
    after=(*WIPED, SHELL_SPUN, CRANK_SCORED, SHELLS_SCRATCHED, SHELLS_ETCHED, JOURNAL_NOT_TRUE),
    cautions=(Caution.HAND_TURN, Caution.SOLVENT),
    also=("mic the crank", "measure the journal"),
)
HOUSING_CHECKED = Task(
    "housing_checked",
    Phase.CLEANING,
    "seat of each wiped or turned shell measured round, caps at torque",
    (
        "shells out, seat and cap joint clean, bolts at their torque",
        "bore gauge three ways across; polished backs tell of lost grip",
        "tang slot, dowel and oil hole whole",
    ),
    CEB2,
    remedy="rod resized or renewed, main line bored or honed: a machine shop",
    guards=(BEARING_SPUN, LINE_BORE_MISALIGNED),
    after=(*WIPED, *TURNED_IN_SEAT),
    cautions=(Caution.HAND_TURN,),
    also=("rod big end bore", "main housing bore", "resize the rod"),
)
BURNT_CRANK_TO_MACHINE_SHOP = Task(
    "burnt_crank_to_machine_shop",
    Phase.CLEANING,
    "crank with a blued or burnt journal sent to the machine shop: cracks, hardness, truth",
    (
        "magnetic crack test, fillets and oil holes first",
        "hardness of the blued journal; straightness between centres",
        "ask before grinding: a hardened journal that was blue has lost its hardness",
    ),
    TM255,
    remedy="another crank where there is a crack or the hardness is gone",
    guards=(BEARING_WIPED, BENT_ROD_OR_CRANK),
    after=(CRANK_SCORED, BEARING_FOUND_SEIZED, SEVERAL_JOURNALS_DRY, SHELL_SPUN, ROD_THROUGH_BLOCK),
    cautions=(Caution.HEAVY,),
    also=("blue crank", "magnaflux", "crank grinding"),
)
HOT_ROD_RENEWED = Task(
    "hot_rod_renewed",
    Phase.CLEANING,
    "rod that shows heat colours at its big end renewed, with its bolts",
    (
        "wash it and look for straw, brown or blue at eye and cap",
        "a rod with no colour: bore, bend and twist checked, new bolts",
    ),
    ERD,
    remedy="fit a matched rod of the same weight; balance tells the shop",
    guards=(BEARING_SPUN, BENT_ROD_OR_CRANK),
    after=(SHELL_SPUN, BEARING_FOUND_SEIZED, ALL_BEARINGS_WIPED, ONE_BEARING_WIPED),
    cautions=(
        Caution.SOLVENT,
        Caution.EYES,
    ),
    also=("discoloured rod", "blue rod"),
)
BENT_PARTS_STRAIGHT = Task(
    "bent_parts_straight",
    Phase.CLEANING,
    "rods and crank proved straight",
    (
        "each rod on a fixture: bend and twist; look at piston skirts for slanting marks",
        "crank between centres, dial gauge on the middle main",
    ),
    BTG,
    remedy="renew the rod; a crank is straightened or renewed by a machine shop",
    guards=(BENT_ROD_OR_CRANK,),
    after=(ROD_OR_CRANK_BENT, SHELL_EDGES_WORN, ROD_THROUGH_BLOCK),
    cautions=(Caution.HEAVY,),
    also=("bent rod", "bent crank"),
)
MAIN_LINE_PROVED = Task(
    "main_line_proved",
    Phase.CLEANING,
    "main bores proved in line after uneven, shifted or seized mains",
    (
        "caps on their numbers, at torque, shells out; straight bar and feeler along the bores",
        "caps that were swapped, filed or dropped named",
    ),
    CEB1,
    remedy="line bore or hone at a machine shop",
    guards=(LINE_BORE_MISALIGNED,),
    after=(
        MAIN_BORES_OUT_OF_LINE,
        MAINS_WORN_UNEVENLY,
        MAIN_BEARING_SHIFTED,
        WEAR_AT_PARTING_LINES,
        BEARING_FOUND_SEIZED,
    ),
    cautions=(Caution.HEAVY,),
    also=("line bore", "main alignment"),
)
END_LOAD_FOUND = Task(
    "end_load_found",
    Phase.CLEANING,
    "what pushed the crank endways: found; thrust faces of crank and block measured",
    (
        "clutch free travel, release bearing, converter or coupling pressing forward",
        "thrust face of the crank smooth and flat; width between faces measured",
        "its oil groove and feed open",
    ),
    CEB2,
    remedy="dress or grind the face, fit the thrust size it gives; take the end load away",
    guards=(THRUST_BEARING_WEAR,),
    after=(THRUST_FACE_PLOUGHED, CRANK_END_FLOAT_OVER),
    also=("thrust bearing failure", "crank end load"),
)
SCORED_PUMP_MEASURED = Task(
    "scored_pump_measured",
    Phase.CLEANING,
    "scored pump: cover, gears and body measured, or a new pump",
    (
        "depth of the groove in the cover added to the end clearance of the gears",
        "side clearance round the bore; straightedge over cover and body",
        "shaft bush, idler pin and relief bore",
    ),
    GMI,
    remedy="renew the pump where one limit does not hold; lap a cover only where the maker does",
    guards=(PUMP_COVER_SCORED, PUMP_GEAR_WEAR),
    after=(
        COVER_GROOVED,
        COVER_WARPED,
        PUMP_SCORED_SEEN,
        STEEL_SLIVERS_IN_PUMP,
        CAVITATION_MARKS,
        PIECE_THROUGH_PUMP_COVER,
        PUMP_GEAR_BROKEN,
        PUMP_FOUND_FAILED,
        PIECE_IN_PUMP,
    ),
    also=("scored oil pump", "groove in the pump cover"),
)
PUMP_BODY_RENEWED = Task(
    "pump_body_renewed",
    Phase.CLEANING,
    "cracked or burst pump renewed; what burst it found",
    (
        "relief valve that cannot open, thick cold oil at speed, a hard piece: say which",
        "filter, its seal and cooler looked at: they had the same pressure",
    ),
    CP,
    remedy="no welding of the casting; a new pump",
    guards=(PUMP_DEBRIS_LOCK,),
    after=(PUMP_CASTING_CRACKED, PUMP_HOUSING_BURST),
    also=("cracked oil pump",),
)
DRIVE_FOLLOWED_AFTER_JAM = Task(
    "drive_followed_after_jam",
    Phase.CLEANING,
    "whole drive of a pump that jammed or lost its drive looked over",
    (
        "shaft, slot, tang, pin and collar: a new shaft with a new pump",
        "skew or distributor gear and the cam's gear: both, tooth by tooth, or chain and sprockets",
        "pump turned by hand first: what jammed it must be out",
    ),
    ISS,
    remedy="renew shaft and gears together; look for the hard piece that stopped the pump",
    why="a shaft breaks because the pump stopped: a new shaft alone breaks again",
    guards=(PUMP_DRIVE_BROKEN, PUMP_DRIVE_SLIP, PUMP_DEBRIS_LOCK),
    after=(
        PIECE_IN_PUMP,
        PUMP_JAMMED,
        PUMP_GEAR_BROKEN,
        DRIVE_SHAFT_BROKEN,
        DRIVE_SHAFT_ROUNDED,
        DRIVE_COUPLING_SHEARED,
        DRIVE_GEAR_STRIPPED,
        DRIVE_GEAR_WORN,
        DRIVE_FOUND_FAILED,
        PUMP_CHAIN_BROKEN,
    ),
    also=("oil pump drive shaft", "distributor gear", "twisted shaft"),
)
JAMMING_PIECE_FOUND = Task(
    "jamming_piece_found",
    Phase.CLEANING,
    "piece that jammed the pump found, and the way it came through or past the screen",
    (
        "look in pump, its passage and the relief bore; match it to the part it came from",
        "screen torn, bypass open, or a piece left on the clean side: say which",
    ),
    THK,
    remedy="open relief valve, filter and galleries for the rest of it",
    guards=(PUMP_DEBRIS_LOCK,),
    after=(PIECE_IN_PUMP, PUMP_JAMMED, PIECE_THROUGH_PUMP_COVER),
    cautions=(Caution.SPRING,),
    also=("what jammed the pump",),
)
CAM_AND_LIFTERS_TOGETHER = Task(
    "cam_and_lifters_together",
    Phase.CLEANING,
    "camshaft with wiped lobes and its lifters renewed together, bores felt",
    (
        "new cam, all lifters new, pushrods and springs looked at",
        "each lifter turns and falls in its bore by its own weight",
        "cam journals and bearings measured while it is out",
    ),
    CP,
    remedy="no new lifter on an old lobe, no old lifter on a new one",
    guards=(LIFTER_BORE_LEAK, CAM_BEARING_WEAR),
    only_with=(PUSHROD_ENGINE,),
    after=(CAM_LOBES_WIPED, CAMSHAFT_BROKEN),
    cautions=(Caution.HEAVY,),
    also=("flat cam", "wiped cam"),
)
CAM_BORES_CHECKED = Task(
    "cam_bores_checked",
    Phase.CLEANING,
    "cam bearings, their seats and oil holes, and the cam's journals measured",
    (
        "journals by micrometer, bearings by bore gauge, in every place",
        "turned bush: seat measured, hole over its feed; an overhead cam in its bare head: caps on",
    ),
    CP,
    remedy="new bushes fitted and bored in line by a machine shop, or another head",
    guards=(CAM_BEARING_WEAR,),
    after=(CAM_BEARING_FOUND_BAD, CAM_JOURNALS_WORN, CAM_LOBES_WIPED, CAMSHAFT_BROKEN),
    cautions=(Caution.HEAVY,),
    also=("cam bearings", "cam bushes"),
)
TURBO_REBUILT = Task(
    "turbo_rebuilt",
    Phase.CLEANING,
    "turbo with a stiff, blued or loose shaft rebuilt or renewed, the air side washed",
    (
        "to a turbo shop, or a new one; its oil inlet only opened when it is fitted",
        "boost pipes and intercooler emptied of oil and chips, or the intercooler renewed",
        "oil poured into the new one, shaft turned, before the feed is joined",
    ),
    TME,
    remedy="feed, drain and engine oil proved clean before the new one goes on",
    guards=(TURBO_FEED_LEAK,),
    only_with=(TURBOCHARGED,),
    after=(TURBO_SHAFT_STIFF_OR_BLUED, TURBO_SHAFT_LOOSE),
    cautions=(
        Caution.HOT,
        Caution.SHARP,
        Caution.SOLVENT,
        Caution.EYES,
    ),
    also=("turbo failure", "intercooler oil"),
)
