"""Jets, distributor body, restrictors and turbo, and the checks that show them."""

from knowledge import sources
from knowledge.engines import features
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.stations.topend import findings
from knowledge.work import Access, Caution, Inspection

JETS_RUN_AT_LOW_PRESSURE = Finding(
    id="jets_run_at_low_pressure",
    station=Station.TOPEND,
    says="piston jets run at a pressure at which they should be shut",
    asks="Priming, sump off: do piston jets run below their opening pressure?",
    source=sources.AIRCRAFT_FAULT_ISOLATION,
    denies="the piston jets stay shut at low pressure",
    stage=Stage.OPENED,
    normal="shut at idle pressure; some makers fit jets without valves",
    background=HARDLY_EVER,
    also=("squirters running at idle", "oil jets dribbling", "piston coolers open"),
)
DISTRIBUTOR_BORE_POURS = Finding(
    id="distributor_bore_pours",
    station=Station.TOPEND,
    says="while priming, a sheet of oil comes from the distributor bore or housing",
    asks="Priming, distributor body fitted: a sheet of oil from its bore?",
    source=COMMON_PRACTICE,
    denies="the distributor bore only seeps",
    stage=Stage.OPENED,
    normal="a seep, or a drive-gear bleed by design",
    background=HARDLY_EVER,
    also=(
        "oil pouring down by distributor",
        "distributor housing leaks inside",
        "oil gushing from distributor hole",
    ),
)
TURBO_FAILED = Finding(
    id="turbo_failed",
    station=Station.TOPEND,
    says="a turbo has failed, now or recently",
    asks="Has a turbo failed, now or recently?",
    source=sources.TURBO_MAKER_STARVATION,
    denies="no turbo has failed",
    normal="lasts as long as the engine",
    background=RARE,
    also=("blown turbo", "turbo gone", "second turbo failed", "turbo replaced"),
)
PISTON_JET_FOUND_BROKEN = Finding(
    id="piston_jet_found_broken",
    station=Station.TOPEND,
    says="a piston cooling jet is missing, broken or loose",
    asks="Piston cooling jet missing, broken or loose?",
    source=idea_from(sources.AIRCRAFT_FAULT_ISOLATION),
    denies="all piston jets are fitted and whole",
    stage=Stage.OPENED,
    normal="all fitted, tight, aimed",
    background=HARDLY_EVER,
    also=("squirter broken off", "oil squirter missing", "jet fell out"),
)
LOOK_AT_THE_PISTON_JETS = Inspection(
    id="look_at_the_piston_jets",
    station=Station.TOPEND,
    says="sump off: look at the piston jets",
    steps=("count them", "try each for looseness", "check aim, cracks and ball"),
    minutes=10,
    access=Access.SUMP_OFF,
    reveals=(PISTON_JET_FOUND_BROKEN,),
    source=COMMON_PRACTICE,
    tools=("lamp", "mirror"),
    cautions=(Caution.LIFTING, Caution.USED_OIL),
    also=("check oil squirters",),
)

DISTRIBUTOR_SEAL_BAD = Finding(
    id="distributor_seal_bad",
    station=Station.TOPEND,
    says="the distributor body is the wrong one, worn, or its ring cut or missing",
    asks="Distributor body wrong or worn, or its ring cut, hard or missing?",
    source=COMMON_PRACTICE,
    denies="distributor body and ring are right",
    stage=Stage.OPENED,
    normal="right body, whole ring, snug in the block",
    background=EXCEPTIONAL,
    also=("distributor o-ring bad", "no o-ring on distributor", "wrong distributor fitted"),
)
LOOK_AT_THE_DISTRIBUTOR_BODY = Inspection(
    id="look_at_the_distributor_body",
    station=Station.TOPEND,
    says="distributor out: body, ring and depth",
    steps=(
        "mark rotor and body before you lift it out",
        "look at the ring, at wear bands, and how deep the body reaches",
        "compare with the listed part",
    ),
    minutes=10,
    access=Access.DISTRIBUTOR_OUT,
    reveals=(DISTRIBUTOR_SEAL_BAD,),
    source=COMMON_PRACTICE,
    tools=("lamp", "caliper"),
    cautions=(Caution.BATTERY,),
    destroys="ignition timing, unless marked",
    keep="mark rotor and housing",
    also=("distributor o-ring",),
)

MEASURE_THE_RESTRICTORS = Inspection(
    id="measure_the_restrictors",
    station=Station.TOPEND,
    says="find every restrictor and measure its hole",
    steps=(
        "list from the drawing which feeds have restrictors: head, rocker, chain, turbo",
        "check each hole with drill shanks; a missing one leaves a full-bore thread or bore",
    ),
    minutes=20,
    access=Access.VALLEY_OPEN,
    reveals=(findings.RESTRICTOR_ABSENT,),
    source=COMMON_PRACTICE,
    tools=("drawing", "drill shanks", "lamp"),
)

TURBO_SHAFT_STIFF_OR_BLUED = Finding(
    id="turbo_shaft_stiff_or_blued",
    station=Station.TOPEND,
    says="the turbo shaft is stiff, scored or blued",
    asks="Cold, inlet hose off: turbo shaft stiff to turn, scored or blued?",
    source=idea_from(sources.TURBO_MAKER_STARVATION),
    denies="the turbo shaft turns freely and is bright",
    stage=Stage.OPENED,
    normal="spins freely",
    background=VERY_RARE,
    also=("turbo won't spin", "turbo seized", "blue turbo shaft", "tight turbo"),
)
TURBO_SHAFT_LOOSE = Finding(
    id="turbo_shaft_loose",
    station=Station.TOPEND,
    says="the turbo shaft has too much play",
    asks="Turbo shaft rocking far, or a wheel touching its housing?",
    source=idea_from(sources.TURBO_MAKER_STARVATION),
    denies="the turbo shaft has no excess play",
    stage=Stage.OPENED,
    normal="slight play sideways, wheels clear",
    background=RARE,
    also=("turbo shaft play", "wheel rubs housing", "worn turbo bearings"),
)
TURN_THE_TURBO_BY_HAND = Inspection(
    id="turn_the_turbo_by_hand",
    station=Station.TOPEND,
    says="turbo cold, inlet hose off: turn and rock the shaft",
    steps=(
        "engine off and cold",
        "spin the wheel, push it sideways and along; look for blueing and rub marks",
        "refit the hose before any start: an open inlet sucks in fingers and rags",
    ),
    minutes=15,
    access=Access.OUTSIDE,
    reveals=(TURBO_SHAFT_STIFF_OR_BLUED, TURBO_SHAFT_LOOSE, oil_heat.OIL_IN_TURBO_OUTLETS),
    only_with=(features.TURBOCHARGED,),
    source=COMMON_PRACTICE,
    tools=("screwdriver", "lamp"),
    cautions=(Caution.HOT, Caution.ROTATING, Caution.SHARP),
    also=("turbo shaft play", "spin the turbo"),
)

TURBO_LINE_LEAKS = Finding(
    id="turbo_line_leaks",
    station=Station.TOPEND,
    says="the turbo oil feed line leaks, is cracked or came off",
    asks="Turbo oil feed line leaking, cracked or off?",
    source=sources.TURBO_MAKER_STARVATION,
    denies="the turbo lines are dry",
    stage=Stage.OUTSIDE,
    normal="dry and clipped",
    why="oil under pressure, beside the hottest part of the engine",
    background=EXCEPTIONAL,
    also=("turbo oil line burst", "oil on the turbo", "turbo feed pipe leaking"),
)
FOLLOW_THE_TURBO_LINES = Inspection(
    id="follow_the_turbo_lines",
    station=Station.TOPEND,
    says="follow the turbo's oil lines with a light",
    steps=(
        "cold: look at unions, clips and bends, feed and drain",
        "feel for oil on the shield and under the turbo",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(TURBO_LINE_LEAKS, oil_heat.OIL_IN_TURBO_OUTLETS),
    only_with=(features.TURBOCHARGED,),
    source=COMMON_PRACTICE,
    tools=("lamp", "mirror"),
    cautions=(Caution.HOT, Caution.FIRE),
)

TURBO_FEED_FOUND_BLOCKED = Finding(
    id="turbo_feed_found_blocked",
    station=Station.TOPEND,
    says="the turbo feed was found kinked, coked, or masked by gasket or sealer",
    asks="Turbo feed kinked, coked, or masked by a gasket or sealer?",
    source=sources.TURBO_MAKER_STARVATION,
    denies="the turbo feed is clear",
    stage=Stage.OPENED,
    normal="a full stream into the can",
    background=EXCEPTIONAL,
    also=("coked oil line", "carbon in turbo feed", "wrong turbo gasket", "banjo screen blocked"),
)
FLOW_TEST_THE_TURBO_FEED = Inspection(
    id="flow_test_the_turbo_feed",
    station=Station.TOPEND,
    says="turbo feed off at the turbo: crank into a can",
    steps=(
        "engine cold, fuel or ignition off so that it cannot start",
        "hold the line's end deep in a can; crank ten seconds: a full stream must come",
        "look into pipe, banjo, screen and gasket hole; prime the turbo before refitting",
    ),
    minutes=30,
    access=Access.OUTSIDE,
    in_place=True,
    reveals=(TURBO_FEED_FOUND_BLOCKED, findings.RESTRICTOR_ABSENT),
    only_with=(features.TURBOCHARGED,),
    source=COMMON_PRACTICE,
    tools=("can", "spanners", "wire"),
    cautions=(
        Caution.HOT,
        Caution.FIRE,
        Caution.ROTATING,
        Caution.USED_OIL,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    keep="keep gasket and banjo screen",
    also=("turbo oil flow", "check turbo feed line"),
)
