"""Top end as heard and seen under its covers, and the checks that show it."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import (
    COMMON,
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
    background=EXCEPTIONAL,
    also=("oil pouring from tensioner", "oil gushing at timing chain", "tensioner leaks oil"),
)
LIFTER_BORE_POURS = Finding(
    id="lifter_bore_pours",
    station=Station.TOPEND,
    says="while priming, a sheet of oil comes from a lifter bore",
    asks="Priming, valley open: a sheet of oil from a lifter bore?",
    source=COMMON_PRACTICE,
    denies="the lifter bores only seep",
    stage=Stage.OPENED,
    normal="a seep",
    background=EXCEPTIONAL,
    also=("oil gushing past lifter", "oil pours around the lifter", "lifter bore leak"),
)
CAM_BEARING_POURS = Finding(
    id="cam_bearing_pours",
    station=Station.TOPEND,
    says="while priming, oil floods from a cam bearing",
    asks="Priming, covers off: does oil flood from a cam bearing, especially a middle one?",
    source=idea_from(sources.CLUB_CAM_BEARING_NOTE),
    denies="the cam bearings only drip",
    stage=Stage.OPENED,
    normal="a drip",
    background=EXCEPTIONAL,
    also=("oil pouring from cam bearing", "oil flooding off the cam", "cam bearing leak"),
)
LIFTERS_CLATTER = Finding(
    id="lifters_clatter",
    station=Station.TOPEND,
    says="lifters or valve gear clatter at hot idle",
    asks="Lifters or valve gear clattering at hot idle?",
    source=sources.CARLEY_1997,
    denies="the valve gear does not clatter",
    normal="quiet once warm",
    why="hydraulic lifters act as pressure gauges: short of oil, they go slack and clatter",
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
    says="the hydraulic lifters stay quiet at hot idle although the reading is low",
    asks="Reading low at hot idle: do the hydraulic lifters stay quiet?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="the lifters are not quiet",
    normal="quiet lifters have enough oil",
    why="if there is enough oil to keep the lifters quiet, doubt the gauge first",
    background=COMMON,
    also=("no lifter noise", "lifters are quiet", "valve train silent", "no ticking"),
)
CLATTERS_ONLY_AT_HIGH_REVS = Finding(
    id="clatters_only_at_high_revs",
    station=Station.TOPEND,
    says="the lifters clatter only at high revs or after a hard run",
    asks="Lifters clatter only at high revs or after a hard run, not at idle?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="no clatter that comes with revs",
    normal="quiet at all speeds",
    why="foam collapses lifters at speed: check the level before the parts",
    background=RARE,
    also=("lifters noisy at high rpm", "valve clatter at speed", "lifters pump up"),
)
TIMING_COVER_RATTLES = Finding(
    id="timing_cover_rattles",
    station=Station.TOPEND,
    says="the timing cover rattles at start",
    asks="Timing cover rattling for seconds at start, or still at idle?",
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
    asks="Turbo shrieking, howling or grinding?",
    source=idea_from(sources.TURBO_MAKER_STARVATION),
    denies="the turbo sounds as usual",
    normal="a faint even whistle",
    why=(
        "a turbo whose feed is blocked is the first bearing to fail, while the engine's gauge "
        "reads normal"
    ),
    background=RARE,
    also=("turbo whine", "turbo screaming", "noisy turbo", "siren noise from turbo"),
)
LISTEN_AT_THE_COVERS = Inspection(
    id="listen_at_the_covers",
    station=Station.TOPEND,
    says="listen at valve and timing covers",
    steps=(
        "only while pressure shows; stop at any knock",
        "stethoscope on valve covers and timing cover from the start, at hot idle, at 1500 rpm",
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
    says="little or no oil reaches the rockers",
    asks="Valve cover off, at idle or priming: little or no oil at the rockers?",
    source=sources.CAM_BEARING_HOLES_BLOG,
    denies="oil reaches all rockers steadily",
    stage=Stage.OPENED,
    normal="a steady small flow at each; some engines feed in pulses",
    why="it tells a dry branch from a false gauge, with only one cover off",
    background=VERY_RARE,
    also=("no oil to the top end", "dry rockers", "no oil on the rocker shaft", "head gets no oil"),
)
ROCKERS_FLOODED = Finding(
    id="rockers_flooded",
    station=Station.TOPEND,
    says="oil sprays or floods under the valve cover",
    asks="Oil spraying from a rocker shaft or stand, or flooding the valve cover?",
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
    asks="Rocker shaft grooved, bushes loose, or an end plug or stand gasket gone?",
    source=sources.TRACTOR_DIESEL_MANUAL_2003,
    denies="rocker shaft, bushes and end plugs are sound",
    stage=Stage.OPENED,
    normal="no ridge, no rock, both ends plugged",
    background=EXCEPTIONAL,
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
    asks="Rockers, valve tips or followers dry, blued or scored?",
    source=idea_from(sources.CARLEY_1997),
    denies="the valve gear is wet and bright",
    stage=Stage.OPENED,
    normal="wet with oil, bright faces",
    background=RARE,
    also=("burnt rockers", "scored rocker arms", "blue valve tips", "dry top end"),
)
LIFTERS_FOUND_DRAINED = Finding(
    id="lifters_found_drained",
    station=Station.TOPEND,
    says="hydraulic lifters were found drained, not pumped up",
    asks="Hydraulic lifters soft under the thumb, drained instead of pumped up?",
    source=COMMON_PRACTICE,
    denies="the lifters are firm and full",
    stage=Stage.OPENED,
    normal="firm soon after running",
    why="lifters also drain over months of standing",
    background=OCCASIONAL,
    also=("collapsed lifters", "lifters bled down", "tappets not pumped up", "soft lifters"),
)
PUSHROD_OFF_OR_BENT = Finding(
    id="pushrod_off_or_bent",
    station=Station.TOPEND,
    says="a pushrod is bent, loose or off its rocker",
    asks="A pushrod bent, loose or off its rocker?",
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
    asks="Camshaft broken, or seized in its bearings?",
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
    asks="Metering restrictor in the feed to head, chain or turbo missing or drilled out?",
    source=idea_from(sources.GALLERY_PLUG_LEFT_OUT),
    denies="the restrictors are there and to size",
    stage=Stage.OPENED,
    normal="fitted, hole to the maker's size",
    background=HARDLY_EVER,
    also=("oil restrictor missing", "orifice left out", "wrong head gasket hole"),
)
LOOK_UNDER_THE_VALVE_COVER = Inspection(
    id="look_under_the_valve_cover",
    station=Station.TOPEND,
    says="look at rockers, shaft and pushrods, engine still",
    steps=(
        "rock each rocker on its shaft; look at end plugs and stand gaskets",
        "look for blued tips, bent or loose pushrods; press each hydraulic lifter",
        "turn two revolutions by hand: every valve must move",
        "if there is a restrictor in the feed, take it out and measure its hole",
    ),
    minutes=15,
    access=Access.VALVE_COVER_OFF,
    reveals=(
        ROCKER_SHAFT_FOUND_WORN,
        VALVE_GEAR_FOUND_DRY,
        LIFTERS_FOUND_DRAINED,
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
