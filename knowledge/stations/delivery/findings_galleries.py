"""Galleries, plugs and seals, and the checks that show them."""

from knowledge import sources
from knowledge.model import COMMON, EXCEPTIONAL, HARDLY_EVER, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.delivery import findings_filter_cut
from knowledge.stations.topend import findings as topend_findings
from knowledge.stations.topend import findings_feeds as topend_feeds
from knowledge.work import Access, Caution, Inspection

PRIMING = (Caution.PRIMING, Caution.ROTATING, Caution.EYES, Caution.BATTERY)
GALLERY_PLUG_FOUND_MISSING = Finding(
    id="gallery_plug_found_missing",
    station=Station.DELIVERY,
    says="a gallery plug inside the engine was found missing, out or loose",
    asks="Gallery plug inside the engine missing, fallen out or loose?",
    source=sources.CALVER_2003,
    denies="no gallery plug is missing",
    stage=Stage.OPENED,
    normal="every plug of the maker's drawing in place",
    background=EXCEPTIONAL,
    also=(
        "galley plug missing",
        "forgot the oil plug",
        "cup plug fell out",
        "plug backed out",
        "pipe plug left out",
    ),
)
GALLERY_PLUG_FOUND_TOO_DEEP = Finding(
    id="gallery_plug_found_too_deep",
    station=Station.DELIVERY,
    says="a gallery plug sits so deep that it masks a feed",
    asks="Gallery plug so deep, or turned so, that it covers a cross-drilling?",
    source=sources.ROTATED_GALLERY_PLUG,
    denies="no plug masks a feed",
    stage=Stage.OPENED,
    normal="flush or at the depth the drawing gives",
    background=HARDLY_EVER,
    also=("plug driven in too far", "plug covers oil hole", "plug blocking main feed"),
)
GALLERY_PLUG_IN_WRONG_PASSAGE = Finding(
    id="gallery_plug_in_wrong_passage",
    station=Station.DELIVERY,
    says="a plug was found in a passage that should be open",
    asks="Plug found in a passage that should be open?",
    source=COMMON_PRACTICE,
    denies="no plug sits in a wrong passage",
    stage=Stage.OPENED,
    normal="plugs only where the drawing shows them",
    background=HARDLY_EVER,
    also=("plug in the wrong hole", "plugged the oil feed", "blocked off passage by mistake"),
)
PLUG_FINDINGS = (
    GALLERY_PLUG_FOUND_MISSING,
    GALLERY_PLUG_FOUND_TOO_DEEP,
    GALLERY_PLUG_IN_WRONG_PASSAGE,
)
GALLERY_SEAL_FOUND_BAD = Finding(
    id="gallery_seal_found_bad",
    station=Station.DELIVERY,
    says="a gallery O-ring, feed tube seal or gasket is cut, hard, or left out",
    asks="Gallery O-ring, tube seal or cover gasket cut, hard, blown through, or left out?",
    source=sources.DIESEL_WORKSHOP_2015,
    denies="gallery seals are whole and seated",
    stage=Stage.OPENED,
    normal="whole, soft, in its groove",
    background=EXCEPTIONAL,
    also=("o-ring missing in front cover", "o-ring pinched", "gasket blown between ports"),
)
COUNT_PLUGS_AT_THE_FRONT = Inspection(
    id="count_plugs_at_the_front",
    station=Station.DELIVERY,
    says="count the gallery plugs at the front, look at the seals",
    steps=(
        "compare each place with the maker's drawing, also behind the timing gear",
        "measure the depth of each plug; check the cross-drilling behind it with a wire",
        "look at every ring, tube and gasket that seals a passage",
    ),
    minutes=20,
    access=Access.FRONT_COVER_OFF,
    reveals=(*PLUG_FINDINGS, GALLERY_SEAL_FOUND_BAD),
    source=COMMON_PRACTICE,
    tools=("plug drawing", "lamp", "wire", "depth gauge"),
    keep="photograph before you touch any plug",
    also=("check front galley plugs", "plugs behind timing chain"),
)

COUNT_PLUGS_IN_THE_VALLEY = Inspection(
    id="count_plugs_in_the_valley",
    station=Station.DELIVERY,
    says="count the gallery plugs in the valley",
    steps=(
        "compare with the drawing; one may hide under the distributor or behind a lifter",
        "mirror and lamp; depth and seal of each",
    ),
    minutes=20,
    access=Access.VALLEY_OPEN,
    reveals=PLUG_FINDINGS,
    source=sources.REAR_GALLERY_PLUG_ARTICLE,
    tools=("plug drawing", "mirror", "lamp"),
    keep="photograph before you touch any plug",
    also=("lifter valley plug", "plug under the intake"),
)

ALL_PLUGS_ACCOUNTED_FOR = Finding(
    id="all_plugs_accounted_for",
    station=Station.DELIVERY,
    says="all gallery plugs were counted and are sealed at the right depth",
    asks="All plugs counted against the drawing, front, valley and rear, and all good?",
    source=sources.REAR_GALLERY_PLUG_ARTICLE,
    denies="the plugs are not all accounted for",
    stage=Stage.OPENED,
    normal="all present; one often hides behind the distributor or in the valley",
    background=COMMON,
    also=("checked all the plugs", "plugs all in", "galley plugs are good"),
)
COUNT_PLUGS_AT_THE_REAR = Inspection(
    id="count_plugs_at_the_rear",
    station=Station.DELIVERY,
    says="count the gallery plugs at the rear, and complete the count",
    steps=(
        "compare with the drawing, the inner plug of a double one as well",
        "check that no plug is turned or driven over the rear main's feed",
        "call the count good only when you have seen front, valley and rear",
    ),
    minutes=20,
    access=Access.FLYWHEEL_OFF,
    reveals=(*PLUG_FINDINGS, ALL_PLUGS_ACCOUNTED_FOR),
    source=sources.REAR_GALLERY_PLUG_ARTICLE,
    tools=("plug drawing", "lamp", "wire"),
    cautions=(Caution.LIFTING, Caution.HEAVY),
    keep="photograph before you touch any plug",
    also=("rear galley plug", "plugs behind the flywheel"),
)

GALLERY_PLUG_LIES_IN_SUMP = Finding(
    id="gallery_plug_lies_in_sump",
    station=Station.DELIVERY,
    says="there is a gallery plug or cup in the sump or timing case",
    asks="Small plug or cup found loose in the sump or timing case?",
    source=COMMON_PRACTICE,
    denies="there is no plug in the sump",
    stage=Stage.OPENED,
    normal="nothing there",
    background=HARDLY_EVER,
    also=("plug in the oil pan", "found a freeze plug in the pan", "brass cup in sump"),
)
LOOK_FOR_A_PLUG_IN_THE_SUMP = Inspection(
    id="look_for_a_plug_in_the_sump",
    station=Station.DELIVERY,
    says="sump off: look for a fallen plug and gasket shreds",
    steps=("look before wiping", "bag what you find by zone"),
    minutes=5,
    access=Access.SUMP_OFF,
    reveals=(GALLERY_PLUG_LIES_IN_SUMP, findings_filter_cut.GASKET_SHREDS_FOUND),
    source=COMMON_PRACTICE,
    tools=("lamp", "bags"),
    cautions=(Caution.USED_OIL, Caution.LIFTING),
    keep="photograph the sump as removed",
    also=("plug in the pan",),
)

OIL_STREAMS_FROM_OPEN_HOLE = Finding(
    id="oil_streams_from_open_hole",
    station=Station.DELIVERY,
    says="while priming, oil streams from an empty hole in the block",
    asks="Priming, covers off: does oil stream from an empty hole at front, valley or rear?",
    source=sources.GALLERY_PLUG_LEFT_OUT,
    denies="while priming, no hole in the block pours oil",
    stage=Stage.OPENED,
    normal="small bleeds only; some builders drill one of 0.030 in on purpose",
    why="it shows the leak itself, whatever the gauge reads",
    background=EXCEPTIONAL,
    also=(
        "oil pouring from behind timing gear",
        "oil gushing in the valley",
        "oil stream from back of block",
        "open oil galley",
    ),
)
OIL_WASH_AT_GALLERY_SEAL = Finding(
    id="oil_wash_at_gallery_seal",
    station=Station.DELIVERY,
    says="oil runs out inside at a gallery O-ring, cover gasket or feed tube",
    asks="Priming, cover off: does oil run or spray at a gallery O-ring, gasket or feed tube?",
    source=idea_from(sources.TENSIONER_GASKET_LEFT_OUT),
    denies="gallery seals and tubes are dry while priming",
    stage=Stage.OPENED,
    normal="dry",
    background=HARDLY_EVER,
    also=("oil spraying behind front cover", "feed tube leaking", "leak between cover and block"),
)
PRIME_AND_WATCH_THE_FRONT = Inspection(
    id="prime_and_watch_the_front",
    station=Station.DELIVERY,
    says="put the circuit under oil pressure, front cover off, and watch",
    steps=(
        "turn the pump, or feed warm oil from a regulated tank at 30 to 40 psi, tray underneath",
        "a pump that sits in the cover cannot be used: blank its outlet and feed from the tank",
        "watch plug holes, seals, tensioners and cam front; small bleeds may be by design",
        "stop after two minutes without pressure",
    ),
    minutes=45,
    access=Access.FRONT_COVER_OFF,
    reveals=(
        OIL_STREAMS_FROM_OPEN_HOLE,
        OIL_WASH_AT_GALLERY_SEAL,
        topend_findings.TENSIONER_FLOODS,
        topend_findings.CAM_BEARING_POURS,
    ),
    source=sources.GALLERY_PLUG_LEFT_OUT,
    tools=("priming drill or pressure tank", "tray", "lamp"),
    cautions=(*PRIMING, Caution.PRESSURE),
    also=("prime with covers off", "pressure test oil system"),
)

PRIME_AND_WATCH_THE_VALLEY = Inspection(
    id="prime_and_watch_the_valley",
    station=Station.DELIVERY,
    says="put the circuit under oil pressure, valley open, and watch",
    steps=(
        "turn the pump with its drill the way the distributor turns, or use a pressure tank",
        (
            "with a drill: fit a sleeve or old body if the distributor closes a gallery, or it "
            "reads low"
        ),
        "look for streams at plugs, lifter bores, cam bearings and the distributor bore",
    ),
    minutes=45,
    access=Access.VALLEY_OPEN,
    reveals=(
        OIL_STREAMS_FROM_OPEN_HOLE,
        topend_findings.LIFTER_BORE_POURS,
        topend_findings.CAM_BEARING_POURS,
        topend_feeds.DISTRIBUTOR_BORE_POURS,
    ),
    source=sources.GALLERY_PLUG_LEFT_OUT,
    tools=("priming drill or pressure tank", "lamp"),
    cautions=(*PRIMING, Caution.PRESSURE),
    also=("prime with intake off", "watch the lifter valley"),
)

ONE_BEARING_GETS_NO_OIL = Finding(
    id="one_bearing_gets_no_oil",
    station=Station.DELIVERY,
    says="while priming, one main or rod gets no oil and the others do",
    asks="Priming, crank turned by quarter turns: one main or rod dry while the others flow?",
    source=idea_from(sources.PRE_OILING_ARTICLE),
    denies="while priming, every main and rod gets oil",
    stage=Stage.OPENED,
    normal="oil shows at every one at some crank angle",
    background=VERY_RARE,
    also=("no oil at one main", "one rod dry", "no oil to number one bearing"),
)
PRIME_AND_WATCH_FROM_BELOW = Inspection(
    id="prime_and_watch_from_below",
    station=Station.DELIVERY,
    says="put the circuit under oil pressure, sump off, and watch from below",
    steps=(
        "feed warm oil from a regulated tank, drip tray underneath",
        "turn the crank a quarter turn at a time by hand; note what each bearing shows",
        "look at cam bearings from below, at piston jets and the rear wall",
    ),
    minutes=45,
    access=Access.SUMP_OFF,
    reveals=(
        ONE_BEARING_GETS_NO_OIL,
        OIL_STREAMS_FROM_OPEN_HOLE,
        topend_findings.CAM_BEARING_POURS,
        topend_feeds.JETS_RUN_AT_LOW_PRESSURE,
    ),
    source=idea_from(sources.PRE_OILING_ARTICLE),
    tools=("pressure tank with regulator and relief", "tray", "face shield", "bar"),
    cautions=(Caution.PRESSURE, Caution.EYES, Caution.LIFTING, Caution.HAND_TURN),
    also=("pressurise the galleries", "watch oil from the bearings"),
)

GALLERY_FOUND_BLOCKED = Finding(
    id="gallery_found_blocked",
    station=Station.DELIVERY,
    says="a gallery or oil hole was found blocked by debris, sealer or sludge",
    asks="Gallery or oil hole found blocked by debris, sealer, rag or sludge?",
    source=sources.DIESEL_WORKSHOP_2015,
    denies="the galleries are clear",
    stage=Stage.OPENED,
    normal="brush and light pass right through",
    background=HARDLY_EVER,
    also=(
        "silicone in oil passage",
        "plugged oil gallery",
        "rag in the oil hole",
        "sludge in galley",
        "blocked oil hole",
    ),
)
ROD_THE_GALLERIES = Inspection(
    id="rod_the_galleries",
    station=Station.DELIVERY,
    says="brush and light through every gallery, plugs out",
    steps=(
        "look behind each plug before you clean; keep what comes out",
        "nylon brush, then low air; light or wire must pass to each bearing",
    ),
    minutes=60,
    access=Access.PLUGS_OUT,
    reveals=(
        GALLERY_FOUND_BLOCKED,
        GALLERY_PLUG_IN_WRONG_PASSAGE,
        GALLERY_PLUG_FOUND_TOO_DEEP,
    ),
    source=COMMON_PRACTICE,
    tools=("nylon gallery brushes", "lamp", "wire", "low-pressure air"),
    cautions=(Caution.PRESSURE, Caution.EYES, Caution.SOLVENT),
    destroys="sealer and debris behind the plugs",
    keep="photograph and bag what was behind each plug",
    also=(
        "clean out the oil galleries",
        "rifle brush",
    ),
)

GALLERY_WALL_WEEPS = Finding(
    id="gallery_wall_weeps",
    station=Station.DELIVERY,
    says="a gallery wall is cracked or porous: oil, air or dye comes through",
    asks="Under low air and soap, or dye: does a line or spot in a gallery wall weep?",
    source=sources.NAVY_ENGINEMAN,
    denies="the gallery walls are tight",
    stage=Stage.OPENED,
    normal="tight",
    background=HARDLY_EVER,
    also=("crack in oil passage", "porous block", "bubbles from the casting"),
)
SOAP_THE_GALLERY_WALLS = Inspection(
    id="soap_the_gallery_walls",
    station=Station.DELIVERY,
    says="low air in the galleries, soap or dye outside",
    steps=(
        "blank the bearings and ports, bare block",
        "low regulated air, soapy water on the walls; or dye and light",
    ),
    minutes=60,
    access=Access.CRANK_OUT,
    reveals=(GALLERY_WALL_WEEPS,),
    source=COMMON_PRACTICE,
    tools=("blanks", "regulated air", "soapy water", "dye and lamp"),
    cautions=(Caution.PRESSURE, Caution.EYES, Caution.HEAVY),
    also=(
        "pressure test the block",
        "porous block",
    ),
)
