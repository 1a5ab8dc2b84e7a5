"""Wear, scores and cracks in the opened pump, and the checks that show them."""

from knowledge import sources
from knowledge.model import (
    EXCEPTIONAL,
    HARDLY_EVER,
    RARE,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.pump import (
    findings_bench,
    findings_drive,
    findings_mount,
    findings_sights,
    quantities,
)
from knowledge.work import Access, Caution, Inspection

GEAR_BACKLASH_WIDE = Finding(
    id="gear_backlash_wide",
    station=Station.PUMP,
    says="backlash between the pump's gears is over the limit",
    asks="Feeler between the meshing pump teeth: backlash over the limit?",
    source=sources.DIESEL_PUMP_BENCH,
    denies="backlash of the pump's gears is within the limit",
    stage=Stage.OPENED,
    normal="0.013 to 0.028 in on a heavy diesel; less on small pumps",
    background=RARE,
    also=("pump gears sloppy", "play between pump gears"),
)
PUMP_SHAFT_PLAY = Finding(
    id="pump_shaft_play",
    station=Station.PUMP,
    says="the pump's shaft has play in its bush",
    asks="Rock the pump shaft sideways: play in its bush?",
    source=sources.DIESEL_V8_PUMP_LIMITS,
    denies="the pump's shaft has no play in its bush",
    stage=Stage.OPENED,
    normal="none felt; limit on one diesel 0.0055 in (0.14 mm)",
    background=EXCEPTIONAL,
    also=("pump shaft wobbles", "worn pump bushing", "side play in pump shaft"),
)
GEARS_WORN_OUT = Finding(
    id="gears_worn_out",
    station=Station.PUMP,
    says="the pump's gears or rotors are plainly worn out",
    asks="Pump gears or rotors plainly worn out?",
    source=sources.ENGINE_BUILDERS_2020,
    denies="the pump's gears or rotors look little worn",
    stage=Stage.OPENED,
    normal="smooth flanks, no step",
    background=HARDLY_EVER,
    also=("pump completely shot", "pump gears worn", "worn rotors", "pump worn inside"),
)
PUMP_SCORED_SEEN = Finding(
    id="pump_scored_seen",
    station=Station.PUMP,
    says="gears, bores or cover of the pump are scored by hard particles",
    asks="Pump gears, bores or cover scored by grit or metal?",
    source=sources.JOBBER_OIL_PUMPS,
    denies="gears, bores and cover of the pump are smooth",
    stage=Stage.OPENED,
    normal="smooth and bright",
    why="all that passes the screen goes through here before it reaches the filter",
    background=RARE,
    also=("scored oil pump", "scratches in pump housing", "grit went through the pump"),
)
PUMP_GEAR_BROKEN = Finding(
    id="pump_gear_broken",
    station=Station.PUMP,
    says="a gear or rotor of the pump is chipped, cracked or broken",
    asks="Pump gear or rotor chipped, cracked or broken?",
    source=idea_from(sources.PUMP_INSPECTION_2006),
    denies="the pump's gears or rotors are whole",
    stage=Stage.OPENED,
    normal="whole",
    background=EXCEPTIONAL,
    also=("oil pump gear shattered", "broken rotor", "tooth broken in oil pump"),
)
CAVITATION_MARKS = Finding(
    id="cavitation_marks",
    station=Station.PUMP,
    says="the backs of the pump's teeth are eroded or pitted",
    asks="Backs of the pump teeth, or the body at the inlet, eroded or pitted?",
    source=idea_from(sources.PUMP_CAVITATION_ANSWER),
    denies="no pits on the backs of the pump's teeth",
    stage=Stage.OPENED,
    normal="smooth",
    background=VERY_RARE,
    also=("pitted pump gears", "erosion in pump", "pump gears look sandblasted"),
)
ROTOR_WRONG_WAY_ROUND = Finding(
    id="rotor_wrong_way_round",
    station=Station.PUMP,
    says="the outer rotor's chamfer or the index marks are on the wrong side",
    asks="Compared with the drawing: outer rotor's chamfer or an index mark on the wrong side?",
    source=sources.DIESEL_CASE_NOTE,
    denies="rotor chamfer and marks are as the drawing shows",
    stage=Stage.OPENED,
    normal="as in the drawing; reversed costs 40 to 60 % of the flow",
    background=HARDLY_EVER,
    also=("rotor in backwards", "dots don't line up", "outer rotor flipped"),
)
PUMP_BACKLASH = Measure(
    quantity=quantities.PUMP_BACKLASH,
    station=Station.PUMP,
    asks="Backlash between the pump gears?",
    source=sources.DIESEL_PUMP_BENCH,
    also=("play between the pump gears",),
)
PUMP_BUSH_CLEARANCE = Measure(
    quantity=quantities.PUMP_BUSH_CLEARANCE,
    station=Station.PUMP,
    asks="Clearance of the pump shaft in its bush?",
    source=sources.DIESEL_V8_PUMP_LIMITS,
    also=("pump bushing clearance",),
)
PUMP_FOUND_FAILED = Finding(
    id="pump_found_failed",
    station=Station.PUMP,
    says="the oil pump was found failed (how is not known)",
    asks="Oil pump found failed?",
    source=sources.ARMY_TM_347_CHART_1973,
    denies="the oil pump was found good",
    stage=Stage.OPENED,
    normal="sound and within its limits",
    background=EXCEPTIONAL,
    also=(
        "pump packed up",
        "oil pump failed",
        "bad oil pump",
    ),
)
PIECE_THROUGH_PUMP_COVER = Finding(
    id="piece_through_pump_cover",
    station=Station.PUMP,
    says="a piece broke through the cover or body of the pump",
    asks="Pump cover or body: did a pin, gear piece or shaft break through?",
    source=COMMON_PRACTICE,
    denies="nothing broke out of the pump",
    stage=Stage.OPENED,
    normal="whole",
    background=HARDLY_EVER,
    also=(
        "pin came through the cover",
        "pump cover punched through",
    ),
)
LOOK_OVER_GEARS_AND_BUSHES = Inspection(
    id="look_over_gears_and_bushes",
    station=Station.PUMP,
    says="gears, rotors, bushes and casting of the pump",
    steps=(
        "turn by hand before you take it apart: smooth or rough?",
        "rock the shaft in its bush, feel the backlash",
        "look at flanks and backs of all teeth, at bores, pin and casting",
        "compare chamfer and marks with the drawing",
    ),
    minutes=10,
    access=Access.PUMP_COVER_OFF,
    reveals=(
        GEARS_WORN_OUT,
        PUMP_SCORED_SEEN,
        PIECE_THROUGH_PUMP_COVER,
        PUMP_FOUND_FAILED,
        PUMP_GEAR_BROKEN,
        GEAR_BACKLASH_WIDE,
        PUMP_SHAFT_PLAY,
        findings_mount.PUMP_TURNS_ROUGHLY,
        CAVITATION_MARKS,
        findings_bench.IDLER_PIN_OUT,
        ROTOR_WRONG_WAY_ROUND,
        findings_drive.PUMP_HOUSING_BURST,
        findings_bench.PUMP_FOUND_SOUND,
        findings_sights.GEAR_SLIPS_ON_SHAFT,
        findings_sights.DRIVE_FLATS_WORN,
    ),
    source=sources.PUMP_INSPECTION_2006,
    measures=(PUMP_BACKLASH, PUMP_BUSH_CLEARANCE),
    tools=("lamp", "magnifier", "feeler", "dial gauge"),
    cautions=(Caution.SHARP,),
)

PUMP_CASTING_CRACKED = Finding(
    id="pump_casting_cracked",
    station=Station.PUMP,
    says="the pump's casting is cracked",
    asks="Dye, or solvent seeping through: a crack in the pump casting?",
    source=sources.PUMP_INSPECTION_2006,
    denies="no crack in the pump's casting",
    stage=Stage.OPENED,
    normal="no crack; a casting line is not a crack",
    background=HARDLY_EVER,
    also=("hairline crack in pump", "cracked pump body", "split pump outlet"),
)
FIND_CRACKS_IN_THE_PUMP = Inspection(
    id="find_cracks_in_the_pump",
    station=Station.PUMP,
    says="crack test of the pump's casting",
    steps=(
        "clean and dry",
        "dye, or solvent inside and chalk outside",
        "look at outlet, bolt bosses and relief bore",
    ),
    minutes=15,
    access=Access.PUMP_COVER_OFF,
    reveals=(PUMP_CASTING_CRACKED, findings_drive.PUMP_HOUSING_BURST),
    source=COMMON_PRACTICE,
    tools=("crack dye or solvent and chalk", "lamp"),
    cautions=(Caution.SOLVENT, Caution.FIRE),
    destroys="it washes debris away: bag that first",
)

AIR_AT_PUMP_COVER = Finding(
    id="air_at_pump_cover",
    station=Station.PUMP,
    says="the joint between pump cover and body lets air in",
    asks="Joint between pump cover and body: does it let air in (bubbles, soap or solvent test)?",
    source=sources.MARINE_DIESEL_MANUAL,
    denies="the joint between pump cover and body is tight",
    stage=Stage.OPENED,
    normal="tight",
    background=HARDLY_EVER,
    also=("air leak at the pump cover", "pump sucking air at the cover"),
)
TRY_THE_COVER_JOINT_FOR_AIR = Inspection(
    id="try_the_cover_joint_for_air",
    station=Station.PUMP,
    says="test the joint of pump cover and body for air",
    steps=(
        "cover bolted up, all ports closed but one",
        "low air pressure (3 psi is enough), soapy water at the joint",
    ),
    minutes=10,
    access=Access.PUMP_OFF,
    reveals=(AIR_AT_PUMP_COVER, findings_bench.COVER_WARPED),
    source=idea_from(sources.MARINE_DIESEL_MANUAL),
    tools=("regulated air", "soap water", "plugs"),
    cautions=(Caution.PRESSURE, Caution.EYES),
)

COMPARE_ROTOR_WITH_DRAWING = Inspection(
    id="compare_rotor_with_drawing",
    station=Station.PUMP,
    says="rotor chamfer and marks against the drawing",
    steps=("find chamfer and index marks", "compare with the drawing or an untouched pump"),
    minutes=5,
    access=Access.PUMP_COVER_OFF,
    reveals=(ROTOR_WRONG_WAY_ROUND,),
    source=sources.DIESEL_CASE_NOTE,
    tools=("drawing", "lamp"),
    keep="photograph the rotor before you lift it",
)
