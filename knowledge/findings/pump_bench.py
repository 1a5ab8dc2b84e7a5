"""What an opened pump shows on the bench: clearances, wear, damage."""

from knowledge.sources import (
    AMC,
    CAV,
    CDX,
    DMX,
    GMI,
    HB11,
    HB19,
    MKP,
    OLD,
    PE17,
    ROT,
    TEB,
    THK,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import (
    RARE,
    VERY_RARE,
    Finding,
    Limit,
    Measure,
    Stage,
    Station,
)

MM = 1e-3

# ------------------------------------------------------------------------- clearances

END_CLEARANCE_WIDE = Finding(
    "end_clearance_wide",
    Station.PUMP,
    "end clearance of the pump's gears or rotors is over the limit",
    "Straightedge and feeler across the gears: is the end clearance over the limit?",
    AMC,
    denies="end clearance of the pump is within the limit",
    stage=Stage.OPENED,
    normal="0.002 to 0.006 in (0.05 to 0.15 mm), the less the better",
    why="of all clearances in a pump this one costs the most pressure at hot idle",
    background=VERY_RARE,
    also=("too much end play in pump gears", "gears sit too low in the pump", "pump end float"),
)
SIDE_CLEARANCE_WIDE = Finding(
    "side_clearance_wide",
    Station.PUMP,
    "clearance between pump gear or outer rotor and body is over the limit",
    "Feeler between tooth (or outer rotor) and body: is the clearance over the limit?",
    OLD,
    denies="clearance between gear and body is within the limit",
    stage=Stage.OPENED,
    normal="0.002 to 0.005 in (0.05 to 0.13 mm); rotors up to 0.235 mm",
    background=VERY_RARE,
    also=("gear to housing clearance too big", "pump body worn", "rotor to body clearance"),
)
ROTOR_TIP_WIDE = Finding(
    "rotor_tip_wide",
    Station.PUMP,
    "clearance at the rotor tips is over the limit",
    "Rotor pump: is the gap between inner and outer rotor tips over the limit?",
    ROT,
    denies="rotor tip clearance is within the limit",
    stage=Stage.OPENED,
    normal="0.15 mm (0.006 in) at most",
    background=VERY_RARE,
    also=("gerotor tip clearance", "rotor tips worn", "inner to outer rotor gap"),
)
GEAR_BACKLASH_WIDE = Finding(
    "gear_backlash_wide",
    Station.PUMP,
    "backlash between the pump's gears is over the limit",
    "Feeler between the meshing teeth: is the backlash over the limit?",
    MKP,
    denies="backlash of the pump's gears is within the limit",
    stage=Stage.OPENED,
    normal="0.013 to 0.028 in on a heavy diesel; less on small pumps",
    background=RARE,
    also=("pump gears sloppy", "play between pump gears"),
)
PUMP_SHAFT_PLAY = Finding(
    "pump_shaft_play",
    Station.PUMP,
    "the pump's shaft has play in its bush",
    "Rocked sideways: has the pump's shaft play in its bush?",
    DMX,
    denies="the pump's shaft has no play in its bush",
    stage=Stage.OPENED,
    normal="none felt; limit on one diesel 0.0055 in (0.14 mm)",
    background=RARE,
    also=("pump shaft wobbles", "worn pump bushing", "side play in pump shaft"),
)
COVER_GROOVED = Finding(
    "cover_grooved",
    Station.PUMP,
    "a groove or hollow is worn in the pump's cover or end plate",
    "Straightedge on the cover: does a 0.001 in feeler pass, or is a groove to be felt?",
    OLD,
    denies="the pump's cover is flat, without a groove",
    stage=Stage.OPENED,
    normal="flat within 0.001 in (0.025 mm)",
    why="the depth of the groove adds to the end clearance",
    background=RARE,
    also=("grooved pump cover", "ridge in the end plate", "pump cover dished", "cover worn"),
)
COVER_WARPED = Finding(
    "cover_warped",
    Station.PUMP,
    "the pump's cover is warped, thin or bent, or gapes at its joint",
    "Is the pump's cover warped, thin or bent, or are there gaps at its joint?",
    CP,
    denies="the pump's cover is stiff and closes all round",
    stage=Stage.OPENED,
    normal="stiff, flat, closing all round",
    why="a thin cover bows under pressure and lets it past",
    background=VERY_RARE,
    also=("pump cover bent", "gaps at pump cover", "cover flexes", "stamped cover bowed"),
)
COVER_SCREWS_LOOSE = Finding(
    "cover_screws_loose",
    Station.PUMP,
    "screws of the pump's cover are loose or missing, with oil wash at the edge",
    "Are screws of the pump's cover or back plate loose or missing, or its edge oil-washed?",
    PE17,
    denies="the screws of the pump's cover are tight",
    stage=Stage.OPENED,
    normal="tight to torque and locked",
    background=VERY_RARE,
    also=("oil pump back plate screws loose", "pump cover bolts backed out"),
)

# ------------------------------------------------------------------- wear and damage

GEARS_WORN_OUT = Finding(
    "gears_worn_out",
    Station.PUMP,
    "the pump's gears or rotors are plainly worn out",
    "Are the pump's gears or rotors plainly worn out?",
    TEB,
    denies="the pump's gears or rotors look little worn",
    stage=Stage.OPENED,
    normal="smooth flanks, no step",
    background=VERY_RARE,
    also=("pump completely shot", "pump gears worn", "worn rotors", "pump worn inside"),
)
PUMP_SCORED_SEEN = Finding(
    "pump_scored_seen",
    Station.PUMP,
    "gears, bores or cover of the pump are scored by hard particles",
    "Are the pump's gears, bores or cover scored, as by grit or metal?",
    THK,
    denies="gears, bores and cover of the pump are smooth",
    stage=Stage.OPENED,
    normal="smooth and bright",
    why="everything that passes the screen passes here before the filter",
    background=RARE,
    also=("scored oil pump", "scratches in pump housing", "grit went through the pump"),
)
PUMP_GEAR_BROKEN = Finding(
    "pump_gear_broken",
    Station.PUMP,
    "a gear or rotor of the pump is chipped, cracked or broken",
    "Is a gear or rotor of the pump chipped, cracked or broken?",
    CDX,
    denies="the pump's gears or rotors are whole",
    stage=Stage.OPENED,
    normal="whole",
    background=VERY_RARE,
    also=("oil pump gear shattered", "broken rotor", "tooth broken in oil pump"),
)
PIECE_IN_PUMP = Finding(
    "piece_in_pump",
    Station.PUMP,
    "a hard piece lay between the pump's gears",
    "Was a hard piece (chip, tooth, pin, bolt end, bead) found between the pump's gears?",
    THK,
    denies="no piece lay in the pump",
    stage=Stage.OPENED,
    normal="nothing but oil",
    why="it stopped the pump or broke its drive, and it came from somewhere",
    background=VERY_RARE,
    also=("chunk of metal in oil pump", "bolt in the pump", "valve seal in pump gears"),
)
PUMP_JAMMED = Finding(
    "pump_jammed",
    Station.PUMP,
    "the pump is jammed or seized",
    "Is the pump jammed or seized, so that it cannot be turned by hand?",
    THK,
    denies="the pump can be turned by hand",
    stage=Stage.OPENED,
    normal="turns by the fingers",
    background=VERY_RARE,
    also=("oil pump seized", "pump locked solid", "pump won't turn"),
)
PUMP_TURNS_ROUGHLY = Finding(
    "pump_turns_roughly",
    Station.PUMP,
    "the pump turns roughly or binds once in a turn",
    "Turned by hand: is the pump rough, or does it bind once in a turn?",
    CP,
    denies="the pump turns smoothly by hand",
    stage=Stage.OPENED,
    normal="smooth over the whole turn",
    background=RARE,
    also=("tight spot in the pump", "pump feels notchy", "pump binds"),
)
IDLER_PIN_OUT = Finding(
    "idler_pin_out",
    Station.PUMP,
    "the pump's idler pin has walked out or is loose in its bore",
    "Has the pin of the pump's idler gear walked out, or is it loose in its bore?",
    CP,
    denies="the pump's idler pin sits fast",
    stage=Stage.OPENED,
    normal="pressed fast, below the face",
    background=VERY_RARE,
    also=("idler shaft moved", "pin backed out of pump", "idler gear shaft loose"),
)
CAVITATION_MARKS = Finding(
    "cavitation_marks",
    Station.PUMP,
    "the backs of the pump's teeth are eroded or pitted",
    "Are the backs of the pump's teeth, or the body at the inlet, eroded or pitted?",
    CAV,
    denies="no pits on the backs of the pump's teeth",
    stage=Stage.OPENED,
    normal="smooth",
    background=VERY_RARE,
    also=("pitted pump gears", "erosion in pump", "pump gears look sandblasted"),
)
STEEL_SLIVERS_IN_PUMP = Finding(
    "steel_slivers_in_pump",
    Station.PUMP,
    "slivers that a magnet picks up lie in the pump",
    "Do slivers that a magnet picks up lie in the pump?",
    CP,
    denies="a magnet picks up nothing in the pump",
    stage=Stage.OPENED,
    normal="none",
    why="steel comes from gears, chain, rings or valve gear, not from bearing metal",
    background=VERY_RARE,
    also=("magnetic slivers", "metal splinters in pump", "steel shavings in oil pump"),
)
ROTOR_WRONG_WAY_ROUND = Finding(
    "rotor_wrong_way_round",
    Station.PUMP,
    "the outer rotor's chamfer or the index marks are on the wrong side",
    "Against the drawing: is the outer rotor's chamfer, or an index mark, on the wrong side?",
    HB19,
    denies="rotor chamfer and marks are as the drawing shows",
    stage=Stage.OPENED,
    normal="as the drawing; reversed costs 40 to 60 % of the flow",
    background=VERY_RARE,
    also=("rotor in backwards", "dots don't line up", "outer rotor flipped"),
)
AIR_AT_PUMP_COVER = Finding(
    "air_at_pump_cover",
    Station.PUMP,
    "the joint between pump cover and body lets air in",
    "Does the joint between pump cover and body let air in (bubbles, soap or solvent test)?",
    HB11,
    denies="the joint between pump cover and body is tight",
    stage=Stage.OPENED,
    normal="tight",
    background=VERY_RARE,
    also=("air leak at the pump cover", "pump sucking air at the cover"),
)

# ----------------------------------------------------------------- measured quantities

PUMP_END_CLEARANCE = Measure(
    "pump_end_clearance",
    Station.PUMP,
    "end clearance of the pump's gears or rotors",
    "How wide is the end clearance, straightedge across the body?",
    "length",
    (0.0, 3 * MM),
    AMC,
    spread=0.013 * MM,
    also=("pump end play", "gear end float"),
)
PUMP_SIDE_CLEARANCE = Measure(
    "pump_side_clearance",
    Station.PUMP,
    "clearance between pump gear or outer rotor and body",
    "How wide is the gap between tooth (or outer rotor) and body?",
    "length",
    (0.0, 3 * MM),
    OLD,
    spread=0.013 * MM,
    also=("gear to body clearance", "radial clearance of the pump"),
)
ROTOR_TIP_CLEARANCE = Measure(
    "rotor_tip_clearance",
    Station.PUMP,
    "clearance between the rotor tips",
    "How wide is the gap between inner and outer rotor tips?",
    "length",
    (0.0, 3 * MM),
    ROT,
    spread=0.013 * MM,
    also=("gerotor tip gap",),
)
PUMP_BACKLASH = Measure(
    "pump_backlash",
    Station.PUMP,
    "backlash between the pump's gears",
    "How much backlash is there between the pump's gears?",
    "length",
    (0.0, 5 * MM),
    MKP,
    spread=0.025 * MM,
    also=("play between the pump gears",),
)
PUMP_BUSH_CLEARANCE = Measure(
    "pump_bush_clearance",
    Station.PUMP,
    "clearance of the pump's shaft in its bush",
    "How much clearance has the pump's shaft in its bush?",
    "length",
    (0.0, 3 * MM),
    DMX,
    spread=0.013 * MM,
    also=("pump bushing clearance",),
)
PUMP_COVER_HOLLOW = Measure(
    "pump_cover_hollow",
    Station.PUMP,
    "depth of wear in the pump's cover",
    "How deep is the groove or hollow in the pump's cover?",
    "length",
    (0.0, 3 * MM),
    GMI,
    spread=0.008 * MM,
    also=("groove depth in pump cover", "cover wear"),
)

ROTOR_TIP_LIMIT = Limit(
    "rotor_tip_clearance", "most clearance between the rotor tips", "length", 0.15 * MM, ROT
)
