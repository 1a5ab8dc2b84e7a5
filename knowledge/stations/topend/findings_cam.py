"""Tensioners, lifters and cam bearings, and the checks that show them."""

from knowledge import sources
from knowledge.model import (
    EXCEPTIONAL,
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.topend import findings, quantities
from knowledge.work import Access, Caution, Inspection

TENSIONER_SEAL_ABSENT = Finding(
    id="tensioner_seal_absent",
    station=Station.TOPEND,
    says="a tensioner's gasket or seal is missing, cut, or its bolt loose",
    asks="Tensioner gasket or seal missing or cut, its bolt loose, or the chain jet gone?",
    source=sources.TENSIONER_GASKET_LEFT_OUT,
    denies="tensioner seals are in place and tight",
    stage=Stage.OPENED,
    normal="new seal, bolts to torque",
    background=EXCEPTIONAL,
    also=("tensioner gasket left out", "tensioner o-ring missing", "chain oiler missing"),
)
TENSIONER_SLACK = Finding(
    id="tensioner_slack",
    station=Station.TOPEND,
    says="the tensioner is soft or at the end of its travel, the chain slack",
    asks="Tensioner soft or at the end of its travel, or timing chain slack?",
    source=COMMON_PRACTICE,
    denies="the tensioners hold the chains tight",
    stage=Stage.OPENED,
    normal="firm, chain tight on its guide",
    background=RARE,
    also=("loose timing chain", "collapsed tensioner", "stretched chain", "worn chain guide"),
)
LOOK_AT_THE_TENSIONERS = Inspection(
    id="look_at_the_tensioners",
    station=Station.TOPEND,
    says="front cover off: tensioners, their seals, chain and jet",
    steps=(
        "note how far each tensioner stands out before you touch it",
        "pin the plunger back before you loosen it: it is sprung",
        "look at the gasket behind it, the torque of its bolts, the jet for the chain",
    ),
    minutes=15,
    access=Access.FRONT_COVER_OFF,
    reveals=(TENSIONER_SEAL_ABSENT, TENSIONER_SLACK, findings.RESTRICTOR_ABSENT),
    source=COMMON_PRACTICE,
    tools=("lamp", "torque wrench", "tensioner pin"),
    cautions=(Caution.SPRING, Caution.EYES),
    destroys="tensioner position",
    keep="mark the timing, photograph the tensioners",
    also=("check timing chain tensioner", "tensioner gasket"),
)

LIFTER_OUT_OF_BORE = Finding(
    id="lifter_out_of_bore",
    station=Station.TOPEND,
    says="a lifter is out of its bore, or its bore open",
    asks="A lifter out of its bore, or so high or low that its oil hole is open?",
    source=sources.PUMP_GASKET_THREAD,
    denies="every lifter is in its bore",
    stage=Stage.OPENED,
    normal="all in their bores, feed hole covered",
    why="one open bore leaks more oil than a worn bearing",
    background=EXCEPTIONAL,
    also=("lifter popped out", "lifter came out", "lifter in the valley", "tappet jumped out"),
)
LIFTERS_LOOSE_IN_BORES = Finding(
    id="lifters_loose_in_bores",
    station=Station.TOPEND,
    says="lifters rock in their bores",
    asks="Do lifters rock in their bores, or are they the wrong ones?",
    source=COMMON_PRACTICE,
    denies="the lifters fit their bores",
    stage=Stage.OPENED,
    normal="slide freely, no rock felt",
    background=EXCEPTIONAL,
    also=("worn lifter bores", "sloppy lifters", "wrong lifters", "lifter bore worn oval"),
)
CAM_LOBES_WIPED = Finding(
    id="cam_lobes_wiped",
    station=Station.TOPEND,
    says="cam lobes or lifter faces are wiped or pitted",
    asks="Cam lobes or lifter faces worn down, wiped or pitted?",
    source=COMMON_PRACTICE,
    denies="lobes and lifter faces are sound",
    stage=Stage.OPENED,
    normal="smooth, full lift",
    background=OCCASIONAL,
    also=("flat cam", "wiped lobe", "cam lobe gone", "lifter face dished"),
)
FEEL_THE_LIFTERS = Inspection(
    id="feel_the_lifters",
    station=Station.TOPEND,
    says="feel every lifter in its bore",
    steps=(
        "first check that every lifter is at its height and covers its feed hole",
        "lift and rock each; compare the loose one with the others",
        "look at the faces and at the lobes you can see",
    ),
    minutes=20,
    access=Access.VALLEY_OPEN,
    reveals=(
        LIFTER_OUT_OF_BORE,
        LIFTERS_LOOSE_IN_BORES,
        CAM_LOBES_WIPED,
        findings.PUSHROD_OFF_OR_BENT,
    ),
    source=COMMON_PRACTICE,
    tools=("magnet", "lamp", "small-bore gauge"),
    keep="tag each lifter to its bore",
    also=("check lifter bores", "inspect lifters"),
)

CAM_BEARING_FOUND_BAD = Finding(
    id="cam_bearing_found_bad",
    station=Station.TOPEND,
    says="a cam bearing is worn through, loose or turned",
    asks="Cam bearing worn through, scored, loose or turned in its bore?",
    source=sources.CLUB_CAM_BEARING_NOTE,
    denies="the cam bearings are sound and in place",
    stage=Stage.OPENED,
    normal="even grey, holes in line, tight in the bore",
    background=VERY_RARE,
    also=("spun cam bearing", "cam bearing walked out", "worn out cam bearings", "cam bush gone"),
)
CAM_CLEARANCE_WIDE = Finding(
    id="cam_clearance_wide",
    station=Station.TOPEND,
    says="cam bearing clearance is above its limit",
    asks="Any cam bearing clearance over its limit?",
    source=sources.ARMY_TM_347_CAMSHAFT,
    denies="cam bearing clearance is within its limit",
    stage=Stage.OPENED,
    normal=(
        "at most 0.008 to 0.009 in on some diesels, 0.004 to 0.006 in on some single overhead cams"
    ),
    background=EXCEPTIONAL,
    also=("cam bearing clearance too big", "camshaft loose in bearings", "sloppy cam bearings"),
)
CAM_JOURNALS_WORN = Finding(
    id="cam_journals_worn",
    station=Station.TOPEND,
    says="the camshaft journals are worn or scored",
    asks="Camshaft journals worn, scored or undersize?",
    source=idea_from(sources.ARMY_TM_347_CAMSHAFT),
    denies="the camshaft journals are sound",
    stage=Stage.OPENED,
    normal="bright, round, to size",
    background=VERY_RARE,
    also=("worn cam journals", "scored camshaft", "grooves in cam journal"),
)
CAM_BEARING_CLEARANCE = Measure(
    quantity=quantities.CAM_BEARING_CLEARANCE,
    station=Station.TOPEND,
    asks="Cam bearing clearance, on the diameter?",
    source=sources.ARMY_TM_347_CAMSHAFT,
    also=("cam clearance", "camshaft bearing clearance", "cam bearing gap"),
)
MEASURE_THE_CAM_BEARINGS = Inspection(
    id="measure_the_cam_bearings",
    station=Station.TOPEND,
    says="measure cam bearings and journals",
    steps=(
        "mark the clock position of each bearing before you drive any out",
        "bore gauge in each bearing, micrometer on each journal, at two right angles",
        "look for turned bearings, scored journals and wiped lobes",
    ),
    minutes=60,
    access=Access.CAM_OUT,
    reveals=(
        CAM_CLEARANCE_WIDE,
        CAM_BEARING_FOUND_BAD,
        CAM_JOURNALS_WORN,
        CAM_LOBES_WIPED,
        findings.CAMSHAFT_BROKEN,
    ),
    source=COMMON_PRACTICE,
    measures=(CAM_BEARING_CLEARANCE,),
    tools=("bore gauge", "micrometer", "lamp"),
    cautions=(Caution.HEAVY,),
    destroys="bearing clock position, if you drive them out",
    keep="mark the clock positions; tag lifters to lobes",
    also=("cam bearing clearance", "check camshaft bearings"),
)
