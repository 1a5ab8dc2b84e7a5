"""What a damaged part calls for besides a new one: neighbours measured, machine shop asked."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_geometry as bearings_causes_geometry
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.bearings import findings_measured as bearings_measured
from knowledge.stations.bearings import findings_shell_map as bearings_shell_map
from knowledge.stations.bearings import findings_shells as bearings_shells
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import findings_bench as pump_bench
from knowledge.stations.pump import findings_drive as pump_drive
from knowledge.stations.pump import findings_wear as pump_wear
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.stations.topend import findings as topend_findings
from knowledge.stations.topend import findings_cam as topend_cam
from knowledge.stations.topend import findings_feeds as topend_feeds
from knowledge.work import Caution, Phase, Task

WIPED = (
    bearings_shells.SHELLS_WIPED,
    bearings_shell_map.ONE_BEARING_WIPED,
    bearings_shell_map.ALL_BEARINGS_WIPED,
    bearings_shells.SHELLS_FOUND_RUINED,
    bearings_shells.BEARING_FOUND_SEIZED,
    bearings_shells.SEVERAL_JOURNALS_DRY,
    bearings_shells.SIGNS_OF_STARVATION,
)
TURNED_IN_SEAT = (
    bearings_shells.SHELL_SPUN,
    bearings_shells.SHELL_BACKS_SHINY,
    bearings_shell_map.MAIN_BEARING_SHIFTED,
)
STARVATION_EXPLAINED = Task(
    id="starvation_explained",
    phase=Phase.CLEANING,
    says="reason for that bearing failure: known and cured before you order new shells",
    how=(
        "trace the oil back from it: hole, groove, drilling, gallery, pump, screen, level",
        "look at the next bearing on the same feed and the farthest from the pump",
        "decide from the shells: dirt, lack of oil, wrong clearance, misalignment or overload",
    ),
    source=idea_from(sources.BEARING_POSTER),
    remedy="keep looking: shells alone repair nothing",
    guards=(bearings_causes.BEARING_WIPED, bearings_causes.BEARING_SPUN),
    after=(
        *WIPED,
        bearings_shells.SHELL_SPUN,
        bearings_shells.SHELLS_FLAKING,
        bearings_findings.ROD_THROUGH_BLOCK,
    ),
    also=("why did the bearing fail", "root cause of the bearing"),
)
JOURNALS_MEASURED_AFTER_WIPE = Task(
    id="journals_measured_after_wipe",
    phase=Phase.CLEANING,
    says="journal of each wiped, scored or etched bearing measured, and its neighbours",
    how=(
        "pick off smeared lining, wash; six readings: two ends and middle, two ways across",
        (
            "taper, roundness and finish compared with the maker's limits; a fingernail across each "
            "score"
        ),
        "measure every other journal too: they all had the same oil",
    ),
    source=idea_from(sources.BEARING_GUIDE_CEB1),
    remedy="polish or regrind at a machine shop, and fit shells to suit",
    guards=(
        bearings_causes_geometry.JOURNAL_FINISH,
        bearings_causes.BEARING_WEAR_MAINS,
        bearings_causes.BEARING_WEAR_RODS,
    ),
    after=(
        *WIPED,
        bearings_shells.SHELL_SPUN,
        bearings_shells.CRANK_SCORED,
        bearings_shells.SHELLS_SCRATCHED,
        bearings_shells.SHELLS_ETCHED,
        bearings_measured.JOURNAL_NOT_TRUE,
    ),
    cautions=(Caution.HAND_TURN, Caution.SOLVENT),
    also=("mic the crank", "measure the journal"),
)
HOUSING_CHECKED = Task(
    id="housing_checked",
    phase=Phase.CLEANING,
    says="seat of each wiped or spun shell measured round, caps at torque",
    how=(
        "shells out, seat and cap joint clean, bolts at their torque",
        "bore gauge in three directions; polished backs show that the shell lost its crush (grip)",
        "tang slot, dowel and oil hole whole",
    ),
    source=COMMON_PRACTICE,
    remedy="have the rod resized or renewed, the main line bored or honed, at a machine shop",
    guards=(bearings_causes.BEARING_SPUN, bearings_causes_geometry.LINE_BORE_MISALIGNED),
    after=(*WIPED, *TURNED_IN_SEAT),
    cautions=(Caution.HAND_TURN,),
    also=("rod big end bore", "main housing bore", "resize the rod"),
)
BURNT_CRANK_TO_MACHINE_SHOP = Task(
    id="burnt_crank_to_machine_shop",
    phase=Phase.CLEANING,
    says="crank with a blued or burnt journal at the machine shop: cracks, hardness, straightness",
    how=(
        "magnetic crack test, fillets and oil holes first",
        "hardness of the blued journal; straightness between centres",
        "ask before grinding: a hardened journal that went blue has lost its hardness",
    ),
    source=sources.ARMY_TM_255_CRANKSHAFT,
    remedy="fit another crank if it is cracked or no longer hard",
    guards=(bearings_causes.BEARING_WIPED, bearings_causes_geometry.BENT_ROD_OR_CRANK),
    after=(
        bearings_shells.CRANK_SCORED,
        bearings_shells.BEARING_FOUND_SEIZED,
        bearings_shells.SEVERAL_JOURNALS_DRY,
        bearings_shells.SHELL_SPUN,
        bearings_findings.ROD_THROUGH_BLOCK,
    ),
    cautions=(Caution.HEAVY,),
    also=("blue crank", "magnaflux", "crank grinding"),
)
HOT_ROD_RENEWED = Task(
    id="hot_rod_renewed",
    phase=Phase.CLEANING,
    says="rod with heat colours at its big end renewed, with its bolts",
    how=(
        "wash it and look for straw, brown or blue at big end and cap",
        "a rod without colour: check bore, bend and twist; new bolts",
    ),
    source=sources.ROD_MAKER_SPUN_BEARING,
    remedy="fit a matched rod of the same weight; the shop needs to know for the balance",
    guards=(bearings_causes.BEARING_SPUN, bearings_causes_geometry.BENT_ROD_OR_CRANK),
    after=(
        bearings_shells.SHELL_SPUN,
        bearings_shells.BEARING_FOUND_SEIZED,
        bearings_shell_map.ALL_BEARINGS_WIPED,
        bearings_shell_map.ONE_BEARING_WIPED,
    ),
    cautions=(
        Caution.SOLVENT,
        Caution.EYES,
    ),
    also=("discoloured rod", "blue rod"),
)
BENT_PARTS_STRAIGHT = Task(
    id="bent_parts_straight",
    phase=Phase.CLEANING,
    says="rods and crank checked for straightness",
    how=(
        "each rod on a fixture: bend and twist; look at piston skirts for slanting marks",
        "crank between centres, dial gauge on the middle main",
    ),
    source=idea_from(sources.BEARING_WEAR_ANALYSIS),
    remedy="renew the rod; have the crank straightened or renewed by a machine shop",
    guards=(bearings_causes_geometry.BENT_ROD_OR_CRANK,),
    after=(
        bearings_measured.ROD_OR_CRANK_BENT,
        bearings_shell_map.SHELL_EDGES_WORN,
        bearings_findings.ROD_THROUGH_BLOCK,
    ),
    cautions=(Caution.HEAVY,),
    also=("bent rod", "bent crank"),
)
MAIN_LINE_PROVED = Task(
    id="main_line_proved",
    phase=Phase.CLEANING,
    says="main bores checked for line after uneven, shifted or seized mains",
    how=(
        "caps on their numbers, at torque, shells out; straight bar and feeler along the bores",
        "note any caps that were swapped, filed or dropped",
    ),
    source=idea_from(sources.BEARING_GUIDE_CEB1),
    remedy="line bore or hone at a machine shop",
    guards=(bearings_causes_geometry.LINE_BORE_MISALIGNED,),
    after=(
        bearings_measured.MAIN_BORES_OUT_OF_LINE,
        bearings_shell_map.MAINS_WORN_UNEVENLY,
        bearings_shell_map.MAIN_BEARING_SHIFTED,
        bearings_shell_map.WEAR_AT_PARTING_LINES,
        bearings_shells.BEARING_FOUND_SEIZED,
    ),
    cautions=(Caution.HEAVY,),
    also=("line bore", "main alignment"),
)
END_LOAD_FOUND = Task(
    id="end_load_found",
    phase=Phase.CLEANING,
    says="cause of the end load on the crank found; thrust faces of crank and block measured",
    how=(
        "clutch free play, release bearing, converter or coupling pressing forward",
        "thrust face of the crank smooth and flat; width between faces measured",
        "oil groove and feed open",
    ),
    source=COMMON_PRACTICE,
    remedy="dress or grind the face, fit the matching thrust size; remove the end load",
    guards=(bearings_causes.THRUST_BEARING_WEAR,),
    after=(bearings_shell_map.THRUST_FACE_PLOUGHED, bearings_measured.CRANK_END_FLOAT_OVER),
    also=("thrust bearing failure", "crank end load"),
)
SCORED_PUMP_MEASURED = Task(
    id="scored_pump_measured",
    phase=Phase.CLEANING,
    says="scored pump: cover, gears and body measured, or a new pump",
    how=(
        "depth of the groove in the cover added to the end clearance of the gears",
        "side clearance round the bore; straightedge over cover and body",
        "shaft bush, idler pin and relief bore",
    ),
    source=sources.PUMP_INSPECTION_2006,
    remedy="renew the pump if one limit is exceeded; lap a cover only if the maker does",
    guards=(pump_causes.PUMP_COVER_SCORED, pump_causes.PUMP_GEAR_WEAR),
    after=(
        pump_bench.COVER_GROOVED,
        pump_bench.COVER_WARPED,
        pump_wear.PUMP_SCORED_SEEN,
        pump_bench.STEEL_SLIVERS_IN_PUMP,
        pump_wear.CAVITATION_MARKS,
        pump_wear.PIECE_THROUGH_PUMP_COVER,
        pump_wear.PUMP_GEAR_BROKEN,
        pump_wear.PUMP_FOUND_FAILED,
        pump_bench.PIECE_IN_PUMP,
    ),
    also=("scored oil pump", "groove in the pump cover"),
)
PUMP_BODY_RENEWED = Task(
    id="pump_body_renewed",
    phase=Phase.CLEANING,
    says="cracked or burst pump renewed; what burst it found",
    how=(
        "decide: a relief valve that cannot open, thick cold oil at speed, or a hard piece",
        "inspect filter, its seal and cooler: they had the same pressure",
    ),
    source=COMMON_PRACTICE,
    remedy="do not weld the casting; fit a new pump",
    guards=(pump_causes.PUMP_DEBRIS_LOCK,),
    after=(pump_wear.PUMP_CASTING_CRACKED, pump_drive.PUMP_HOUSING_BURST),
    also=("cracked oil pump",),
)
DRIVE_FOLLOWED_AFTER_JAM = Task(
    id="drive_followed_after_jam",
    phase=Phase.CLEANING,
    says="after a jam or a lost drive: the whole pump drive inspected",
    how=(
        "shaft, slot, tang, pin and collar: a new shaft with a new pump",
        "skew or distributor gear and the cam's gear: both, tooth by tooth, or chain and sprockets",
        "turn the pump by hand first: whatever jammed it must be out",
    ),
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    remedy="renew shaft and gears together; look for the hard piece that stopped the pump",
    why="the shaft broke because the pump stopped: a new shaft alone breaks again",
    guards=(
        pump_causes_drive.PUMP_DRIVE_BROKEN,
        pump_causes_drive.PUMP_DRIVE_SLIP,
        pump_causes.PUMP_DEBRIS_LOCK,
    ),
    after=(
        pump_bench.PIECE_IN_PUMP,
        pump_drive.PUMP_JAMMED,
        pump_wear.PUMP_GEAR_BROKEN,
        pump_drive.DRIVE_SHAFT_BROKEN,
        pump_drive.DRIVE_SHAFT_ROUNDED,
        pump_drive.DRIVE_COUPLING_SHEARED,
        pump_drive.DRIVE_GEAR_STRIPPED,
        pump_drive.DRIVE_GEAR_WORN,
        pump_drive.DRIVE_FOUND_FAILED,
        pump_drive.PUMP_CHAIN_BROKEN,
    ),
    also=("oil pump drive shaft", "distributor gear", "twisted shaft"),
)
JAMMING_PIECE_FOUND = Task(
    id="jamming_piece_found",
    phase=Phase.CLEANING,
    says="piece that jammed the pump found, and how it got through or past the screen",
    how=(
        "look in pump, its passage and the relief bore; match it to the part it came from",
        "decide: screen torn, bypass open, or a piece left on the clean side",
    ),
    source=sources.JOBBER_OIL_PUMPS,
    remedy="open relief valve, filter and galleries to find the rest of it",
    guards=(pump_causes.PUMP_DEBRIS_LOCK,),
    after=(pump_bench.PIECE_IN_PUMP, pump_drive.PUMP_JAMMED, pump_wear.PIECE_THROUGH_PUMP_COVER),
    cautions=(Caution.SPRING,),
    also=("what jammed the pump",),
)
CAM_AND_LIFTERS_TOGETHER = Task(
    id="cam_and_lifters_together",
    phase=Phase.CLEANING,
    says="camshaft with wiped lobes and its lifters renewed together, bores checked",
    how=(
        "new cam, all lifters new, pushrods and springs inspected",
        "each lifter turns and falls in its bore by its own weight",
        "measure cam journals and bearings while the cam is out",
    ),
    source=COMMON_PRACTICE,
    remedy="no new lifter on an old lobe, no old lifter on a new one",
    guards=(topend_causes.LIFTER_BORE_LEAK, topend_causes.CAM_BEARING_WEAR),
    only_with=(features.PUSHROD_ENGINE,),
    after=(topend_cam.CAM_LOBES_WIPED, topend_findings.CAMSHAFT_BROKEN),
    cautions=(Caution.HEAVY,),
    also=("flat cam", "wiped cam"),
)
CAM_BORES_CHECKED = Task(
    id="cam_bores_checked",
    phase=Phase.CLEANING,
    says="cam bearings, their seats and oil holes, and the cam's journals measured",
    how=(
        "journals by micrometer, bearings by bore gauge, in every place",
        "turned bush: measure its seat, hole over its feed; overhead cam in its bare head: caps on",
    ),
    source=COMMON_PRACTICE,
    remedy="have new bushes fitted and bored in line by a machine shop, or fit another head",
    guards=(topend_causes.CAM_BEARING_WEAR,),
    after=(
        topend_cam.CAM_BEARING_FOUND_BAD,
        topend_cam.CAM_JOURNALS_WORN,
        topend_cam.CAM_LOBES_WIPED,
        topend_findings.CAMSHAFT_BROKEN,
    ),
    cautions=(Caution.HEAVY,),
    also=("cam bearings", "cam bushes"),
)
TURBO_REBUILT = Task(
    id="turbo_rebuilt",
    phase=Phase.CLEANING,
    says="turbo with a stiff, blued or loose shaft rebuilt or renewed, the air side washed",
    how=(
        "to a turbo shop, or a new one; open its oil inlet only when you fit it",
        "boost pipes and intercooler emptied of oil and chips, or the intercooler renewed",
        "pour oil into the new one and turn the shaft before you connect the feed",
    ),
    source=sources.TURBO_REBUILDER_CONTAMINATION,
    remedy="check that feed, drain and engine oil are clean before the new one goes on",
    guards=(topend_causes_feeds.TURBO_FEED_LEAK,),
    only_with=(features.TURBOCHARGED,),
    after=(topend_feeds.TURBO_SHAFT_STIFF_OR_BLUED, topend_feeds.TURBO_SHAFT_LOOSE),
    cautions=(
        Caution.HOT,
        Caution.SHARP,
        Caution.SOLVENT,
        Caution.EYES,
    ),
    also=("turbo failure", "intercooler oil"),
)
