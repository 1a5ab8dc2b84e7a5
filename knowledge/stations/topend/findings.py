"""Top end as heard and seen under its covers, and the checks that show it."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import COMMON, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

TENSIONER_FLOODS = Finding(
    id="tensioner_floods",
    station=Station.TOPEND,
    says="while priming, oil pours out at a chain tensioner",
    asks="Priming, front cover off: does oil pour out around a chain tensioner?",
    source=idea_from(sources.TENSIONER_GASKET_LEFT_OUT),
    denies="the tensioners do not pour oil",
    stage=Stage.OPENED,
    normal="its jet only",
    background=VERY_RARE,
    also=("oil pouring from tensioner", "oil gushing at timing chain", "tensioner leaks oil"),
)
LIFTER_BORE_POURS = Finding(
    id="lifter_bore_pours",
    station=Station.TOPEND,
    says="while priming, a sheet of oil comes from a lifter bore",
    asks="Priming, valley open: does a sheet of oil come from a lifter bore?",
    source=COMMON_PRACTICE,
    denies="the lifter bores only seep",
    stage=Stage.OPENED,
    normal="a seep",
    background=VERY_RARE,
    also=("oil gushing past lifter", "oil pours around the lifter", "lifter bore leak"),
)
CAM_BEARING_POURS = Finding(
    id="cam_bearing_pours",
    station=Station.TOPEND,
    says="while priming, oil floods from a cam bearing",
    asks="Priming with covers off: does oil flood from a cam bearing, the middle ones above all?",
    source=idea_from(sources.CLUB_CAM_BEARING_NOTE),
    denies="the cam bearings only drip",
    stage=Stage.OPENED,
    normal="a drip",
    background=VERY_RARE,
    also=("oil pouring from cam bearing", "oil flooding off the cam", "cam bearing leak"),
)
LIFTERS_CLATTER = Finding(
    id="lifters_clatter",
    station=Station.TOPEND,
    says="lifters or valve gear clatter at hot idle",
    asks="Do the lifters or valve gear clatter at hot idle?",
    source=sources.CARLEY_1997,
    denies="the valve gear does not clatter",
    normal="quiet once warm",
    why="hydraulic lifters are pressure gauges of their own: starved, they go slack and clatter",
    background=OCCASIONAL,
    also=(
        "lifter tick",
        "noisy lifters",
        "tappet noise",
        "valve train noise",
        "clacking from the top",
        "top end rattle",
    ),
)
LIFTERS_QUIET = Finding(
    id="lifters_quiet",
    station=Station.TOPEND,
    says="the hydraulic lifters stay quiet at hot idle though the reading is low",
    asks="With the reading low at hot idle, do the hydraulic lifters stay quiet?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="the lifters are not quiet",
    normal="quiet lifters have oil enough",
    why="with enough oil to keep the lifters quiet, doubt the gauge first",
    background=COMMON,
    also=("no lifter noise", "lifters are quiet", "valve train silent", "no ticking"),
)
CLATTERS_ONLY_AT_HIGH_REVS = Finding(
    id="clatters_only_at_high_revs",
    station=Station.TOPEND,
    says="the lifters clatter only at high revs or after a hard run",
    asks="Do the lifters clatter only at high revs or after a hard run, and not at idle?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="no clatter that comes with revs",
    normal="quiet at all speeds",
    why="foam collapses lifters at speed: look at the level before the parts",
    background=RARE,
    also=("lifters noisy at high rpm", "valve clatter at speed", "lifters pump up"),
)
TIMING_COVER_RATTLES = Finding(
    id="timing_cover_rattles",
    station=Station.TOPEND,
    says="the timing cover rattles at start",
    asks="Does the timing cover rattle for seconds at start, or go on rattling at idle?",
    source=sources.TENSIONER_GASKET_LEFT_OUT,
    denies="the timing cover is quiet at start",
    normal="quiet as soon as pressure is there",
    background=OCCASIONAL,
    also=("chain rattle", "timing chain noise", "rattle on cold start", "slapping chain"),
)
TURBO_SHRIEKS = Finding(
    id="turbo_shrieks",
    station=Station.TOPEND,
    says="the turbo shrieks, howls or grinds",
    asks="Does the turbo shriek, howl or grind?",
    source=idea_from(sources.TURBO_MAKER_STARVATION),
    denies="the turbo sounds as always",
    normal="a faint even whistle",
    why="a turbo is the first bearing to die of a starved feed, with the engine's gauge normal",
    background=RARE,
    also=("turbo whine", "turbo screaming", "noisy turbo", "siren noise from turbo"),
)
LISTEN_AT_THE_COVERS = Inspection(
    id="listen_at_the_covers",
    station=Station.TOPEND,
    says="listen at valve and timing covers",
    steps=(
        "only while pressure shows; stop at any knock",
        "stethoscope on valve covers and timing cover from the start, at hot idle, at 1500",
        "turbo: listen at a distance, hands and sleeves away from the inlet",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(
        LIFTERS_CLATTER,
        LIFTERS_QUIET,
        CLATTERS_ONLY_AT_HIGH_REVS,
        TIMING_COVER_RATTLES,
        TURBO_SHRIEKS,
    ),
    source=COMMON_PRACTICE,
    tools=("stethoscope",),
    cautions=RUNNING,
    needs_running=True,
    also=("listen for lifter noise", "listen to the chain"),
)

NO_OIL_AT_ROCKERS = Finding(
    id="no_oil_at_rockers",
    station=Station.TOPEND,
    says="little or no oil comes to the rockers",
    asks="Valve cover off, at idle or while priming: is there little or no oil at the rockers?",
    source=sources.CAM_BEARING_HOLES_BLOG,
    denies="oil comes steadily to all rockers",
    stage=Stage.OPENED,
    normal="a steady small flow at each; some engines feed in pulses",
    why="it separates a dry branch from a false gauge at the price of one cover",
    background=RARE,
    also=("no oil to the top end", "dry rockers", "no oil on the rocker shaft", "head gets no oil"),
)
ROCKERS_FLOODED = Finding(
    id="rockers_flooded",
    station=Station.TOPEND,
    says="oil sprays or floods under the valve cover",
    asks="Does oil spray from a rocker shaft or stand, or flood the valve cover?",
    source=COMMON_PRACTICE,
    denies="no flood under the valve cover",
    stage=Stage.OPENED,
    normal="steady small flow",
    background=RARE,
    also=("too much oil in valve covers", "valve cover fills up", "oil shooting from rocker shaft"),
)
WATCH_OIL_AT_THE_ROCKERS = Inspection(
    id="watch_oil_at_the_rockers",
    station=Station.TOPEND,
    says="valve cover off: watch the oil come to each rocker",
    steps=(
        "fit a splash guard; idle for a minute at most, or prime with the engine still",
        "look at each rocker in turn; note which stay dry and which spray",
        "keep rags and oil off the exhaust",
    ),
    minutes=10,
    access=Access.VALVE_COVER_OFF,
    reveals=(NO_OIL_AT_ROCKERS, ROCKERS_FLOODED),
    source=COMMON_PRACTICE,
    tools=("splash guard", "lamp"),
    cautions=(*RUNNING, Caution.FIRE, Caution.EYES),
    needs_running=True,
    also=("oil to the rockers", "check top end oiling"),
)

ROCKER_SHAFT_FOUND_WORN = Finding(
    id="rocker_shaft_found_worn",
    station=Station.TOPEND,
    says="the rocker shaft is grooved, its bushes loose, or an end plug missing",
    asks="Is the rocker shaft grooved, are its bushes loose, or is an end plug or stand gasket gone?",
    source=sources.TRACTOR_DIESEL_MANUAL_2003,
    denies="rocker shaft, bushes and end plugs are sound",
    stage=Stage.OPENED,
    normal="no ridge, no rock, both ends plugged",
    background=RARE,
    also=(
        "worn rocker shaft",
        "sloppy rockers",
        "rocker shaft plug fell out",
        "loose rocker stand",
    ),
)
VALVE_GEAR_FOUND_DRY = Finding(
    id="valve_gear_found_dry",
    station=Station.TOPEND,
    says="rockers, tips or cam followers are dry, blued or scored",
    asks="Are rockers, valve tips or followers dry, blued or scored?",
    source=idea_from(sources.CARLEY_1997),
    denies="the valve gear is wet and bright",
    stage=Stage.OPENED,
    normal="wet with oil, bright faces",
    background=RARE,
    also=("burnt rockers", "scored rocker arms", "blue valve tips", "dry top end"),
)
PUSHROD_OFF_OR_BENT = Finding(
    id="pushrod_off_or_bent",
    station=Station.TOPEND,
    says="a pushrod is bent, loose or off its rocker",
    asks="Is a pushrod bent, loose or off its rocker?",
    source=COMMON_PRACTICE,
    denies="all pushrods are straight and in place",
    stage=Stage.OPENED,
    normal="straight, in cup and lifter",
    background=RARE,
    also=("bent pushrod", "pushrod popped out", "pushrod fell down", "rocker came off"),
)
CAMSHAFT_BROKEN = Finding(
    id="camshaft_broken",
    station=Station.TOPEND,
    says="the camshaft is broken or seized in its bearings",
    asks="Is the camshaft broken, or seized in its bearings?",
    source=COMMON_PRACTICE,
    denies="the camshaft is whole and turns",
    stage=Stage.OPENED,
    normal="whole; every valve moves",
    background=VERY_RARE,
    also=("cam snapped", "camshaft snapped in two", "cam seized", "some valves don't move"),
)
RESTRICTOR_ABSENT = Finding(
    id="restrictor_absent",
    station=Station.TOPEND,
    says="a metering restrictor is missing or drilled out",
    asks="Is a metering restrictor in the feed to head, chain or turbo missing or drilled out?",
    source=idea_from(sources.GALLERY_PLUG_LEFT_OUT),
    denies="the restrictors are there and to size",
    stage=Stage.OPENED,
    normal="there, hole to the maker's size",
    background=VERY_RARE,
    also=("oil restrictor missing", "orifice left out", "wrong head gasket hole"),
)
LOOK_UNDER_THE_VALVE_COVER = Inspection(
    id="look_under_the_valve_cover",
    station=Station.TOPEND,
    says="look at rockers, shaft and pushrods, engine still",
    steps=(
        "rock each rocker on its shaft; look at end plugs and stand gaskets",
        "look for blued tips, bent or loose pushrods",
        "turn two revolutions by hand: every valve must move",
        "take out the restrictor where one sits in the feed, and measure its hole",
    ),
    minutes=15,
    access=Access.VALVE_COVER_OFF,
    reveals=(
        ROCKER_SHAFT_FOUND_WORN,
        VALVE_GEAR_FOUND_DRY,
        PUSHROD_OFF_OR_BENT,
        CAMSHAFT_BROKEN,
        RESTRICTOR_ABSENT,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "bar", "drill shanks for the hole"),
    cautions=(Caution.HOT, Caution.HAND_TURN),
    keep="keep rockers and pushrods in order",
    also=("pull the valve cover", "check rocker shaft"),
)
