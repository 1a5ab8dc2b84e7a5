"""The pump opened and measured, and the checks that show it."""

from knowledge import sources
from knowledge.model import (
    COMMON,
    EXCEPTIONAL,
    HARDLY_EVER,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.pump import findings_drive, quantities
from knowledge.work import Access, Caution, Inspection

PUMP_DRY_INSIDE = Finding(
    id="pump_dry_inside",
    station=Station.PUMP,
    says="the pump was found dry inside",
    asks="Pump just opened: dry inside?",
    source=idea_from(sources.FILTER_MAKER_PRIME),
    denies="the pump was wet with oil inside",
    stage=Stage.OPENED,
    normal="wet with oil, even after standing",
    background=VERY_RARE,
    also=("oil pump bone dry", "no oil in the pump", "dry pump"),
)
EXTRA_PUMP_GASKET = Finding(
    id="extra_pump_gasket",
    station=Station.PUMP,
    says="an extra or too thick a gasket is under the pump cover",
    asks="Pump cover: an extra gasket, or too thick a one, underneath?",
    source=sources.DIESEL_CASE_NOTE,
    denies="gasket under the pump cover as built",
    stage=Stage.OPENED,
    normal="metal to metal, or the maker's thin gasket",
    background=HARDLY_EVER,
    also=("paper gasket under pump cover", "home made pump gasket", "thick pump cover gasket"),
)
COVER_SCREWS_LOOSE = Finding(
    id="cover_screws_loose",
    station=Station.PUMP,
    says="pump cover screws are loose or missing, with oil wash at the edge",
    asks="Pump cover or back plate: screws loose or missing, or oil wash at the edge?",
    source=COMMON_PRACTICE,
    denies="the pump cover screws are tight",
    stage=Stage.OPENED,
    normal="tight to torque and locked",
    background=HARDLY_EVER,
    also=("oil pump back plate screws loose", "pump cover bolts backed out"),
)
PIECE_IN_PUMP = Finding(
    id="piece_in_pump",
    station=Station.PUMP,
    says="a hard piece lay between the pump's gears",
    asks="Between the pump gears: a hard piece (chip, tooth, pin, bolt end, bead)?",
    source=sources.JOBBER_OIL_PUMPS,
    denies="no piece lay in the pump",
    stage=Stage.OPENED,
    normal="nothing but oil",
    why="it stopped the pump or broke its drive; find out where it came from",
    background=EXCEPTIONAL,
    also=("chunk of metal in oil pump", "bolt in the pump", "valve seal in pump gears"),
)
IDLER_PIN_OUT = Finding(
    id="idler_pin_out",
    station=Station.PUMP,
    says="the pump's idler pin has walked out or is loose in its bore",
    asks="Pump idler pin walked out or loose in its bore?",
    source=COMMON_PRACTICE,
    denies="the pump's idler pin sits fast",
    stage=Stage.OPENED,
    normal="pressed fast, below the face",
    background=HARDLY_EVER,
    also=("idler shaft moved", "pin backed out of pump", "idler gear shaft loose"),
)
STEEL_SLIVERS_IN_PUMP = Finding(
    id="steel_slivers_in_pump",
    station=Station.PUMP,
    says="there are slivers in the pump that a magnet picks up",
    asks="Slivers in the pump that a magnet picks up?",
    source=COMMON_PRACTICE,
    denies="a magnet picks up nothing in the pump",
    stage=Stage.OPENED,
    normal="none",
    why="steel comes from gears, chain, rings or valve gear, not from bearing metal",
    background=VERY_RARE,
    also=("magnetic slivers", "metal splinters in pump", "steel shavings in oil pump"),
)
LOOK_INTO_THE_OPENED_PUMP = Inspection(
    id="look_into_the_opened_pump",
    station=Station.PUMP,
    says="look into the pump as you open it, before wiping",
    steps=(
        "feel whether the cover screws were tight as you undo them",
        "see whether it is wet or dry inside",
        "photograph the gears in place, then index the teeth with a marker",
        "catch pieces and slivers on a magnet and a white tray, bag and label them",
    ),
    minutes=10,
    access=Access.PUMP_COVER_OFF,
    reveals=(
        PUMP_DRY_INSIDE,
        PIECE_IN_PUMP,
        findings_drive.PUMP_JAMMED,
        STEEL_SLIVERS_IN_PUMP,
        IDLER_PIN_OUT,
        COVER_SCREWS_LOOSE,
        EXTRA_PUMP_GASKET,
    ),
    source=COMMON_PRACTICE,
    tools=("camera", "magnet", "white tray", "marker", "bags"),
    cautions=(Caution.SPRING, Caution.USED_OIL, Caution.EYES),
    destroys="the oil film and the position of gears and debris",
    keep="photograph the inside with the gears where they stood",
    also=("open the oil pump", "take the pump apart"),
)

PUMP_FOUND_SOUND = Finding(
    id="pump_found_sound",
    station=Station.PUMP,
    says="the pump was opened and measured and is within its limits",
    asks="Pump opened and measured: all within limits?",
    source=sources.V6_PUMP_CATALOGUE,
    denies="the pump was measured and is not within its limits",
    stage=Stage.OPENED,
    normal="all clearances within the maker's figures",
    why="if the pump measures well, look at suction, relief valve and engine",
    background=COMMON,
    also=("pump checked out fine", "oil pump looked good", "nothing wrong with the pump"),
)
END_CLEARANCE_WIDE = Finding(
    id="end_clearance_wide",
    station=Station.PUMP,
    says="end clearance of the pump's gears or rotors is over the limit",
    asks="Straightedge and feeler across the gears: end clearance over the limit?",
    source=sources.STRAIGHT_SIX_MANUAL,
    denies="end clearance of the pump is within the limit",
    stage=Stage.OPENED,
    normal="0.002 to 0.006 in (0.05 to 0.15 mm) on some gear pumps, rotors up to 0.004 in (0.1 mm)",
    why="this clearance costs more pressure at hot idle than any other in the pump",
    background=EXCEPTIONAL,
    also=("too much end play in pump gears", "gears sit too low in the pump", "pump end float"),
)
PUMP_END_CLEARANCE = Measure(
    quantity=quantities.PUMP_END_CLEARANCE,
    station=Station.PUMP,
    asks="End clearance of the pump, straightedge across the body?",
    source=sources.STRAIGHT_SIX_MANUAL,
    also=("pump end play", "gear end float"),
)
MEASURE_GEAR_END_CLEARANCE = Inspection(
    id="measure_gear_end_clearance",
    station=Station.PUMP,
    says="end clearance over each gear or rotor",
    steps=(
        "clean and dry the parts",
        "straightedge across the body, feeler over each gear, in two directions",
        "or a soft gauge strip under the bolted cover, with its own gasket",
        "add the depth of the groove in the cover to the figure",
    ),
    minutes=10,
    access=Access.PUMP_COVER_OFF,
    reveals=(END_CLEARANCE_WIDE, PUMP_FOUND_SOUND),
    source=sources.STRAIGHT_SIX_MANUAL,
    measures=(PUMP_END_CLEARANCE,),
    tools=("straightedge", "feeler", "soft gauge strip"),
    cautions=(Caution.SOLVENT,),
)

SIDE_CLEARANCE_WIDE = Finding(
    id="side_clearance_wide",
    station=Station.PUMP,
    says="clearance between pump gear or outer rotor and body is over the limit",
    asks="Feeler between tooth (or outer rotor) and body: clearance over the limit?",
    source=sources.PUMP_INSTALLATION_1983,
    denies="clearance between gear and body is within the limit",
    stage=Stage.OPENED,
    normal="0.002 to 0.005 in (0.05 to 0.13 mm); rotors up to 0.235 mm",
    background=HARDLY_EVER,
    also=("gear to housing clearance too big", "pump body worn", "rotor to body clearance"),
)
ROTOR_TIP_WIDE = Finding(
    id="rotor_tip_wide",
    station=Station.PUMP,
    says="clearance at the rotor tips is over the limit",
    asks="Rotor pump: gap between inner and outer rotor tips over the limit?",
    source=sources.ROTOR_PUMP_LIMITS_2023,
    denies="rotor tip clearance is within the limit",
    stage=Stage.OPENED,
    normal="0.15 to 0.20 mm (0.006 to 0.008 in) at most, by make",
    background=HARDLY_EVER,
    also=("gerotor tip clearance", "rotor tips worn", "inner to outer rotor gap"),
)
PUMP_SIDE_CLEARANCE = Measure(
    quantity=quantities.PUMP_SIDE_CLEARANCE,
    station=Station.PUMP,
    asks="Gap between tooth (or outer rotor) and body?",
    source=sources.PUMP_INSTALLATION_1983,
    also=("gear to body clearance", "radial clearance of the pump"),
)
ROTOR_TIP_CLEARANCE = Measure(
    quantity=quantities.ROTOR_TIP_CLEARANCE,
    station=Station.PUMP,
    asks="Gap between inner and outer rotor tips?",
    source=sources.ROTOR_PUMP_LIMITS_2023,
    also=("gerotor tip gap",),
)
MEASURE_GEAR_SIDE_CLEARANCE = Inspection(
    id="measure_gear_side_clearance",
    station=Station.PUMP,
    says="clearance gear to body, or rotor to body and tip to tip",
    steps=(
        "feeler between tooth and bore opposite the mesh, all teeth",
        "rotor pump: outer rotor to body, then tip to tip in several positions",
    ),
    minutes=10,
    access=Access.PUMP_COVER_OFF,
    reveals=(SIDE_CLEARANCE_WIDE, ROTOR_TIP_WIDE, PUMP_FOUND_SOUND),
    source=sources.ROTOR_PUMP_LIMITS_2023,
    measures=(PUMP_SIDE_CLEARANCE, ROTOR_TIP_CLEARANCE),
    tools=("feeler",),
    cautions=(Caution.SOLVENT,),
)

COVER_GROOVED = Finding(
    id="cover_grooved",
    station=Station.PUMP,
    says="a groove or hollow is worn in the pump cover or end plate",
    asks="Straightedge on the pump cover: does a 0.001 in feeler pass, or can you feel a groove?",
    source=sources.PUMP_INSTALLATION_1983,
    denies="the pump cover is flat, without a groove",
    stage=Stage.OPENED,
    normal="flat within 0.001 in (0.025 mm) on a gear pump, 0.0015 to 0.003 in on rotor pumps",
    why="the depth of the groove adds to the end clearance",
    background=EXCEPTIONAL,
    also=("grooved pump cover", "ridge in the end plate", "pump cover dished", "cover worn"),
)
COVER_WARPED = Finding(
    id="cover_warped",
    station=Station.PUMP,
    says="the pump cover is warped, thin or bent, or gapes at its joint",
    asks="Pump cover warped, thin or bent, or gaps at its joint?",
    source=COMMON_PRACTICE,
    denies="the pump cover is stiff and closes all round",
    stage=Stage.OPENED,
    normal="stiff, flat, closing all round",
    why="a thin cover bows under pressure and lets oil past",
    background=HARDLY_EVER,
    also=("pump cover bent", "gaps at pump cover", "cover flexes", "stamped cover bowed"),
)
PUMP_COVER_HOLLOW = Measure(
    quantity=quantities.PUMP_COVER_HOLLOW,
    station=Station.PUMP,
    asks="Depth of the groove or hollow in the pump cover?",
    source=sources.PUMP_INSPECTION_2006,
    also=("groove depth in pump cover", "cover wear"),
)
LAY_STRAIGHTEDGE_ON_COVER = Inspection(
    id="lay_straightedge_on_cover",
    station=Station.PUMP,
    says="straightedge on the pump cover",
    steps=(
        "lay a straightedge across the worn area and corner to corner",
        "a 0.001 in (0.025 mm) feeler must not pass",
        "judge how deep the wear is and whether the cover closes all round",
    ),
    minutes=5,
    access=Access.PUMP_COVER_OFF,
    reveals=(COVER_GROOVED, COVER_WARPED),
    source=sources.PUMP_INSTALLATION_1983,
    measures=(PUMP_COVER_HOLLOW,),
    tools=("straightedge", "feeler"),
)
