"""Sump, screen and what lies in them, and the checks that show it."""

from knowledge import sources
from knowledge.debris import findings as debris_findings
from knowledge.model import (
    EXCEPTIONAL,
    HARDLY_EVER,
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Stage,
    Station,
)
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import findings as assembly_findings
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.oil import findings as oil_findings
from knowledge.stations.oil import findings_drained as oil_drained
from knowledge.stations.suction import findings, findings_sights
from knowledge.work import Access, Caution, Inspection

DEBRIS_SEEN_BEFORE = Finding(
    id="debris_seen_before",
    station=Station.SUCTION,
    says="something foreign was found in screen or filter at an earlier service",
    asks="At an earlier service: anything foreign in screen or filter?",
    source=COMMON_PRACTICE,
    denies="screen and filter were clean at earlier services",
    stage=Stage.KNOWN,
    normal="clean",
    background=RARE,
    also=(
        "found fibres last oil change",
        "found bits before",
    ),
)
PICKUP_FELL_OFF = Finding(
    id="pickup_fell_off",
    station=Station.SUCTION,
    says="the pickup has come off into the sump",
    asks="Pickup come off, or lying in the sump?",
    source=idea_from(sources.TRUCK_SERVICE_1994),
    denies="the pickup is in its place",
    stage=Stage.OPENED,
    normal="tight in the pump or block",
    why="the pump draws nothing but air",
    background=HARDLY_EVER,
    also=(
        "pickup in the bottom of the pan",
        "pickup tube fell out",
        "oil pickup dropped off",
        "strainer came off the pump",
        "pick up tube laying in pan",
    ),
)
SCREEN_BLOCKED = Finding(
    id="screen_blocked",
    station=Station.SUCTION,
    says="a third or more of the pickup screen is covered",
    asks="A third or more of the pickup screen covered or blocked?",
    source=idea_from(sources.TECHNICIAN_ANSWER),
    denies="the pickup screen is clear",
    stage=Stage.OPENED,
    normal="clear",
    why="the pump cannot draw at speed through a covered mesh",
    background=HARDLY_EVER,
    also=(
        "plugged pickup screen",
        "clogged strainer",
        "oil screen blocked",
        "pick up screen full of junk",
        "choked gauze",
    ),
)
CLOTH_ON_SCREEN = Finding(
    id="cloth_on_screen",
    station=Station.SUCTION,
    says="rag, paper or cloth covers the screen or the inlet",
    asks="Rag, paper towel or cloth over the screen or at the inlet?",
    source=COMMON_PRACTICE,
    denies="no rag, paper or cloth at the screen",
    stage=Stage.OPENED,
    normal="none",
    background=EXCEPTIONAL,
    also=(
        "rag in the oil pan",
        "shop towel on the pickup",
        "paper towel in strainer",
        "lint on screen",
    ),
)
ICE_AT_SCREEN = Finding(
    id="ice_at_screen",
    station=Station.SUCTION,
    says="ice or frozen slush closes the pickup screen",
    asks="Ice or frozen slush at the pickup screen or in the sump?",
    source=COMMON_PRACTICE,
    denies="no ice at the pickup",
    stage=Stage.OPENED,
    normal="none",
    background=HARDLY_EVER,
    also=(
        "frozen water in the sump",
        "ice on the oil pickup",
        "slush in the pan",
        "pickup froze up",
    ),
)
FOREIGN_MATERIAL_ON_SCREEN = Finding(
    id="foreign_material_on_screen",
    station=Station.SUCTION,
    says="foreign material is on the pickup screen",
    asks="Anything on the pickup screen that does not belong in the engine?",
    source=COMMON_PRACTICE,
    denies="nothing foreign on the pickup screen",
    stage=Stage.OPENED,
    normal="nothing",
    why="it shows where it came from: bag it before washing",
    background=EXCEPTIONAL,
    also=(
        "debris in the pickup",
        "junk on the oil screen",
        "trash in strainer",
        "leaves in the screen",
        "something stuck in the pickup",
    ),
)
LOOK_THROUGH_THE_DRAIN = Inspection(
    id="look_through_the_drain",
    station=Station.SUCTION,
    says="look at pickup and sump floor through the drain hole",
    steps=(
        "oil drained through a clean cloth or strainer; let it drip off",
        "small camera through drain or level hole: pickup in place, screen clear, floor clean?",
        "do not poke: debris on the screen shows where it came from",
    ),
    minutes=15,
    access=Access.DRAINED,
    reveals=(
        PICKUP_FELL_OFF,
        SCREEN_BLOCKED,
        FOREIGN_MATERIAL_ON_SCREEN,
        CLOTH_ON_SCREEN,
        assembly_findings.LEFTOVER_FOUND,
        oil_findings.SLUDGE_SEEN,
        ICE_AT_SCREEN,
        oil_drained.WATER_AT_THE_DRAIN,
    ),
    source=COMMON_PRACTICE,
    tools=("inspection camera", "lamp", "clean tray"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    keep="take pictures; note how the light falls",
    also=("borescope", "endoscope in the oil pan", "camera in the drain plug"),
)

PLASTIC_ON_SCREEN = Finding(
    id="plastic_on_screen",
    station=Station.SUCTION,
    says="pieces of plastic or fibre gear teeth are on the screen or in the sump",
    asks="Pieces of plastic or fibre, like gear teeth, on the screen or in the sump?",
    source=sources.CLUB_BLOCKED_SCREENS,
    denies="no plastic or fibre pieces on screen or in sump",
    stage=Stage.OPENED,
    normal="none",
    background=HARDLY_EVER,
    also=(
        "timing gear teeth in the pan",
        "nylon teeth in pickup",
        "chain guide pieces in the sump",
        "plastic bits in strainer",
    ),
)
SEALER_IN_SUMP = Finding(
    id="sealer_in_sump",
    station=Station.SUCTION,
    says="crumbs or ragged beads of sealer hang inside the sump",
    asks="Crumbs or ragged beads of sealer inside the sump?",
    source=sources.CLUB_SEALANT_STRAINER,
    denies="no loose sealer inside the sump",
    stage=Stage.OPENED,
    normal="none",
    background=EXCEPTIONAL,
    also=("silicone worms in pan", "rtv strings in the sump", "sealer hanging inside"),
)
CATCH_SUMP_CONTENTS = Inspection(
    id="catch_sump_contents",
    station=Station.SUCTION,
    says="see what is in the sump before you wipe anything",
    steps=(
        "photograph sump and pickup as you take them apart, with a scale",
        (
            "magnet and white tray; bag and label the debris from each corner and from under the "
            "pickup"
        ),
        "do not hose, wipe or blow",
    ),
    minutes=15,
    access=Access.SUMP_OFF,
    reveals=(
        debris_findings.METAL_IN_PAN,
        bearings_findings.PISTON_OR_PIN_BROKEN,
        assembly_findings.SMALL_PART_LEFT_OUT,
        assembly_findings.PIECE_FOUND_INSIDE,
        assembly_findings.LEFTOVER_FOUND,
        oil_findings.SLUDGE_SEEN,
        SEALER_IN_SUMP,
        PLASTIC_ON_SCREEN,
        PICKUP_FELL_OFF,
        oil_drained.WATER_AT_THE_DRAIN,
        findings_sights.WATER_IN_SUMP,
    ),
    source=COMMON_PRACTICE,
    tools=("camera", "magnet", "white tray", "bags"),
    cautions=(
        Caution.LIFTING,
        Caution.HOT,
        Caution.BATTERY,
        Caution.ASBESTOS,
        Caution.USED_OIL,
        Caution.SHARP,
        Caution.WASTE,
    ),
    destroys="how the debris lay",
    keep="photographs, and a labelled bag from each place",
    also=("check the oil pan", "what is in the sump", "drop the pan"),
)

PICKUP_WITNESS_MARK = Finding(
    id="pickup_witness_mark",
    station=Station.SUCTION,
    says="pickup and sump floor have touched: a mark on one or both",
    asks="Pickup touched the sump: a mark on the floor, or a shiny spot on the pickup?",
    source=sources.LOWER_ENGINE_NOISE_2006,
    denies="no mark of the pickup on the floor",
    stage=Stage.OPENED,
    normal="no contact",
    background=VERY_RARE,
    also=("pickup rubbed the pan", "shiny ring in the pan", "pickup print on the floor"),
)
LOOK_AT_SUMP_FLOOR = Inspection(
    id="look_at_sump_floor",
    station=Station.SUCTION,
    says="sump floor: dent, or print of the pickup",
    steps=(
        "straightedge across the floor",
        "look for a print on the floor and a bright rim on the screen",
    ),
    minutes=5,
    access=Access.SUMP_OFF,
    reveals=(findings.SUMP_DENTED, PICKUP_WITNESS_MARK),
    source=idea_from(sources.LOWER_ENGINE_NOISE_2006),
    tools=("straightedge", "lamp"),
    cautions=(Caution.SHARP,),
)

SCREEN_TORN = Finding(
    id="screen_torn",
    station=Station.SUCTION,
    says="the pickup screen is torn, holed or off its frame",
    asks="Pickup screen torn, holed or off its frame?",
    source=idea_from(sources.PUMP_SCREEN_NOTES),
    denies="the pickup screen is whole",
    stage=Stage.OPENED,
    normal="whole mesh, tight in its frame",
    background=EXCEPTIONAL,
    also=("hole in the strainer", "mesh broken", "pickup screen missing", "ripped gauze"),
)
SCREEN_BYPASS_OPEN = Finding(
    id="screen_bypass_open",
    station=Station.SUCTION,
    says="the bypass of the pickup screen is stuck open",
    asks="Bypass flap or valve of the pickup screen: standing open?",
    source=sources.PUMP_SCREEN_NOTES,
    denies="the screen's bypass is shut on its seat",
    stage=Stage.OPENED,
    normal="seated against its strap",
    background=EXCEPTIONAL,
    also=("screen flap stuck open", "grommet off its seat", "strainer bypass not closing"),
)
SLUDGE_ON_SCREEN = Finding(
    id="sludge_on_screen",
    station=Station.SUCTION,
    says="sludge or carbon sits on the pickup screen",
    asks="Black sludge or carbon on the pickup screen?",
    source=sources.CLUB_BLOCKED_SCREENS,
    denies="no sludge on the pickup screen",
    stage=Stage.OPENED,
    normal="clean wire",
    background=EXCEPTIONAL,
    also=("sludged pickup", "black goo on strainer", "carbon in the screen", "tar on the pickup"),
)
VARNISH_ON_SCREEN = Finding(
    id="varnish_on_screen",
    station=Station.SUCTION,
    says="brown varnish narrows the mesh of the pickup screen",
    asks="Wire of the pickup screen coated with brown varnish?",
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    denies="the wire of the screen is bright",
    stage=Stage.OPENED,
    normal="bright wire after washing",
    why="0.005 inch of varnish on 0.040 inch mesh takes away 44 % of the area",
    background=OCCASIONAL,
    also=("brown coating on mesh", "lacquer on the screen", "screen won't wash clean"),
)
SEALER_ON_SCREEN = Finding(
    id="sealer_on_screen",
    station=Station.SUCTION,
    says="strings or crumbs of sealer or rubber are on the screen",
    asks="Rubbery strings or crumbs of sealer on the pickup screen?",
    source=sources.CLUB_SEALANT_STRAINER,
    denies="no sealer or rubber on the screen",
    stage=Stage.OPENED,
    normal="none",
    background=HARDLY_EVER,
    also=(
        "silicone in the pickup",
        "rtv in the oil screen",
        "rubber bits in strainer",
        "gasket sealer plugged the pickup",
    ),
)
GASKET_ON_SCREEN = Finding(
    id="gasket_on_screen",
    station=Station.SUCTION,
    says="shreds of gasket or fibre are on the screen",
    asks="Shreds of gasket, cork or fibre on the pickup screen?",
    source=COMMON_PRACTICE,
    denies="no gasket or fibre on the screen",
    stage=Stage.OPENED,
    normal="none",
    background=EXCEPTIONAL,
    also=("cork gasket in pickup", "gasket pieces in the oil screen", "paper gasket shreds"),
)
PASTE_ON_SCREEN = Finding(
    id="paste_on_screen",
    station=Station.SUCTION,
    says="grease, jelly or assembly paste plugs the screen",
    asks="Grease, jelly or assembly paste plugging the pickup screen?",
    source=sources.JOBBER_OIL_PUMPS,
    denies="no grease or paste on the screen",
    stage=Stage.OPENED,
    normal="a trace of assembly lube at most",
    background=HARDLY_EVER,
    also=("assembly lube on pickup", "petroleum jelly in screen", "grease plugged the strainer"),
)
METAL_PAST_THE_SCREEN = Finding(
    id="metal_past_the_screen",
    station=Station.SUCTION,
    says="metal lay on the pump's side of the screen",
    asks="Pieces on the pump's side of the screen, past the mesh?",
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    denies="nothing lay behind the screen",
    stage=Stage.OPENED,
    normal="nothing",
    background=VERY_RARE,
    also=(
        "piece fell from clean side of screen",
        "metal behind the mesh",
    ),
)
LOOK_AT_THE_SCREEN = Inspection(
    id="look_at_the_screen",
    station=Station.SUCTION,
    says="look at the pickup screen, its mesh and its bypass",
    steps=(
        "photograph before you touch it; estimate how much of the mesh is covered",
        "take off and bag what is on it: sludge, sealer, gasket, plastic, cloth or metal",
        "light through the mesh: holes, tears, varnish; bypass flap shut on its seat",
        "only then wash it, outdoors, no flame",
    ),
    minutes=10,
    access=Access.SUMP_OFF,
    reveals=(
        SCREEN_BLOCKED,
        FOREIGN_MATERIAL_ON_SCREEN,
        SLUDGE_ON_SCREEN,
        VARNISH_ON_SCREEN,
        SEALER_ON_SCREEN,
        PLASTIC_ON_SCREEN,
        GASKET_ON_SCREEN,
        CLOTH_ON_SCREEN,
        debris_findings.METAL_IN_SCREEN,
        ICE_AT_SCREEN,
        PASTE_ON_SCREEN,
        METAL_PAST_THE_SCREEN,
        SCREEN_TORN,
        SCREEN_BYPASS_OPEN,
        findings_sights.SCREEN_CRUSHED,
        findings_sights.GASKET_COATING_SHED,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "camera", "tweezers", "bags"),
    cautions=(Caution.SOLVENT, Caution.EYES, Caution.SHARP),
    destroys="the debris as it lay on the mesh",
    keep="photograph and bag the debris before any solvent",
    also=("check pickup screen", "oil strainer", "pickup gauze"),
)
