"""What can be heard, seen and measured at cam, lifters, rockers and timing drive.

Jets, restrictors, distributor body and turbo are in ``topend_feeds.py``.
"""

from knowledge.sources import AA97, AHS, HB09, HB12, LTK, MRG, PF, PGN, TMC
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import (
    COMMON,
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)

# ------------------------------------------------------------------------------- by ear

LIFTERS_CLATTER = Finding(
    "lifters_clatter",
    Station.TOPEND,
    "lifters or valve gear clatter at hot idle",
    "Do the lifters or valve gear clatter at hot idle?",
    AA97,
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
    "lifters_quiet",
    Station.TOPEND,
    "the hydraulic lifters stay quiet at hot idle though the reading is low",
    "With the reading low at hot idle, do the hydraulic lifters stay quiet?",
    HB09,
    denies="the lifters are not quiet",
    normal="quiet lifters have oil enough",
    why="with enough oil to keep the lifters quiet, doubt the gauge first",
    background=COMMON,
    also=("no lifter noise", "lifters are quiet", "valve train silent", "no ticking"),
)
CLATTERS_ONLY_AT_HIGH_REVS = Finding(
    "clatters_only_at_high_revs",
    Station.TOPEND,
    "the lifters clatter only at high revs or after a hard run",
    "Do the lifters clatter only at high revs or after a hard run, and not at idle?",
    HB09,
    denies="no clatter that comes with revs",
    normal="quiet at all speeds",
    why="foam collapses lifters at speed: look at the level before the parts",
    background=RARE,
    also=("lifters noisy at high rpm", "valve clatter at speed", "lifters pump up"),
)
TIMING_COVER_RATTLES = Finding(
    "timing_cover_rattles",
    Station.TOPEND,
    "the timing cover rattles at start",
    "Does the timing cover rattle for seconds at start, or go on rattling at idle?",
    AHS,
    denies="the timing cover is quiet at start",
    normal="quiet as soon as pressure is there",
    background=OCCASIONAL,
    also=("chain rattle", "timing chain noise", "rattle on cold start", "slapping chain"),
)

# ---------------------------------------------------------------- under the valve cover

NO_OIL_AT_ROCKERS = Finding(
    "no_oil_at_rockers",
    Station.TOPEND,
    "little or no oil comes to the rockers",
    "Valve cover off, at idle or while priming: is there little or no oil at the rockers?",
    LTK,
    denies="oil comes steadily to all rockers",
    stage=Stage.OPENED,
    normal="a steady small flow at each; some engines feed in pulses",
    why="it separates a dry branch from a false gauge at the price of one cover",
    background=RARE,
    also=("no oil to the top end", "dry rockers", "no oil on the rocker shaft", "head gets no oil"),
)
ROCKERS_FLOODED = Finding(
    "rockers_flooded",
    Station.TOPEND,
    "oil sprays or floods under the valve cover",
    "Does oil spray from a rocker shaft or stand, or flood the valve cover?",
    HB12,
    denies="no flood under the valve cover",
    stage=Stage.OPENED,
    normal="steady small flow",
    background=RARE,
    also=("too much oil in valve covers", "valve cover fills up", "oil shooting from rocker shaft"),
)
ROCKER_SHAFT_FOUND_WORN = Finding(
    "rocker_shaft_found_worn",
    Station.TOPEND,
    "the rocker shaft is grooved, its bushes loose, or an end plug missing",
    "Is the rocker shaft grooved, are its bushes loose, or is an end plug or stand gasket gone?",
    HB12,
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
    "valve_gear_found_dry",
    Station.TOPEND,
    "rockers, tips or cam followers are dry, blued or scored",
    "Are rockers, valve tips or followers dry, blued or scored?",
    AA97,
    denies="the valve gear is wet and bright",
    stage=Stage.OPENED,
    normal="wet with oil, bright faces",
    background=RARE,
    also=("burnt rockers", "scored rocker arms", "blue valve tips", "dry top end"),
)
PUSHROD_OFF_OR_BENT = Finding(
    "pushrod_off_or_bent",
    Station.TOPEND,
    "a pushrod is bent, loose or off its rocker",
    "Is a pushrod bent, loose or off its rocker?",
    PGN,
    denies="all pushrods are straight and in place",
    stage=Stage.OPENED,
    normal="straight, in cup and lifter",
    background=RARE,
    also=("bent pushrod", "pushrod popped out", "pushrod fell down", "rocker came off"),
)

# ------------------------------------------------------------------------ the timing drive

TENSIONER_FLOODS = Finding(
    "tensioner_floods",
    Station.TOPEND,
    "while priming, oil pours out at a chain tensioner",
    "Priming, front cover off: does oil pour out around a chain tensioner?",
    AHS,
    denies="the tensioners do not pour oil",
    stage=Stage.OPENED,
    normal="its jet only",
    background=VERY_RARE,
    also=("oil pouring from tensioner", "oil gushing at timing chain", "tensioner leaks oil"),
)
TENSIONER_SEAL_ABSENT = Finding(
    "tensioner_seal_absent",
    Station.TOPEND,
    "a tensioner's gasket or seal is missing, cut, or its bolt loose",
    "Is a tensioner's gasket or seal missing or cut, its bolt loose, or the chain jet gone?",
    AHS,
    denies="tensioner seals are there and tight",
    stage=Stage.OPENED,
    normal="new seal, bolts to torque",
    background=VERY_RARE,
    also=("tensioner gasket left out", "tensioner o-ring missing", "chain oiler missing"),
)
TENSIONER_SLACK = Finding(
    "tensioner_slack",
    Station.TOPEND,
    "the tensioner is soft or run out, the chain slack",
    "Is a tensioner soft or run out, or the timing chain slack?",
    AHS,
    denies="the tensioners hold the chains tight",
    stage=Stage.OPENED,
    normal="firm, chain tight on its guide",
    background=RARE,
    also=("loose timing chain", "collapsed tensioner", "stretched chain", "worn chain guide"),
)

# ---------------------------------------------------------------------------- the lifters

LIFTER_OUT_OF_BORE = Finding(
    "lifter_out_of_bore",
    Station.TOPEND,
    "a lifter is out of its bore, or its bore open",
    "Is a lifter out of its bore, or so high or low that its oil hole is open?",
    PGN,
    denies="every lifter is in its bore",
    stage=Stage.OPENED,
    normal="all in their bores, feed hole covered",
    why="one open bore lets out more oil than a worn bearing",
    background=VERY_RARE,
    also=("lifter popped out", "lifter came out", "lifter in the valley", "tappet jumped out"),
)
LIFTER_BORE_POURS = Finding(
    "lifter_bore_pours",
    Station.TOPEND,
    "while priming, a sheet of oil comes from a lifter bore",
    "Priming, valley open: does a sheet of oil come from a lifter bore?",
    PF,
    denies="the lifter bores only seep",
    stage=Stage.OPENED,
    normal="a seep",
    background=VERY_RARE,
    also=("oil gushing past lifter", "oil pours around the lifter", "lifter bore leak"),
)
LIFTERS_LOOSE_IN_BORES = Finding(
    "lifters_loose_in_bores",
    Station.TOPEND,
    "lifters rock in their bores",
    "Do lifters rock in their bores, or are they the wrong ones?",
    PF,
    denies="the lifters fit their bores",
    stage=Stage.OPENED,
    normal="slide freely, no rock felt",
    background=VERY_RARE,
    also=("worn lifter bores", "sloppy lifters", "wrong lifters", "lifter bore worn oval"),
)

# ------------------------------------------------------------------------------- the cam

CAM_BEARING_POURS = Finding(
    "cam_bearing_pours",
    Station.TOPEND,
    "while priming, oil floods from a cam bearing",
    "Priming with covers off: does oil flood from a cam bearing, the middle ones above all?",
    MRG,
    denies="the cam bearings only drip",
    stage=Stage.OPENED,
    normal="a drip",
    background=VERY_RARE,
    also=("oil pouring from cam bearing", "oil flooding off the cam", "cam bearing leak"),
)
CAM_BEARING_FOUND_BAD = Finding(
    "cam_bearing_found_bad",
    Station.TOPEND,
    "a cam bearing is worn through, loose or turned",
    "Is a cam bearing worn through, scored, loose or turned in its bore?",
    MRG,
    denies="the cam bearings are sound and in place",
    stage=Stage.OPENED,
    normal="even grey, holes in line, tight in the bore",
    background=VERY_RARE,
    also=("spun cam bearing", "cam bearing walked out", "worn out cam bearings", "cam bush gone"),
)
CAM_CLEARANCE_WIDE = Finding(
    "cam_clearance_wide",
    Station.TOPEND,
    "cam bearing clearance is above its limit",
    "Is any cam bearing's clearance above its limit?",
    TMC,
    denies="cam bearing clearance is within its limit",
    stage=Stage.OPENED,
    normal="0.0045 to 0.006 in new, 0.008 in at most on one diesel",
    background=VERY_RARE,
    also=("cam bearing clearance too big", "camshaft loose in bearings", "sloppy cam bearings"),
)
CAM_JOURNALS_WORN = Finding(
    "cam_journals_worn",
    Station.TOPEND,
    "the camshaft journals are worn or scored",
    "Are the camshaft journals worn, scored or undersize?",
    TMC,
    denies="the camshaft journals are sound",
    stage=Stage.OPENED,
    normal="bright, round, to size",
    background=VERY_RARE,
    also=("worn cam journals", "scored camshaft", "grooves in cam journal"),
)
CAM_LOBES_WIPED = Finding(
    "cam_lobes_wiped",
    Station.TOPEND,
    "cam lobes or lifter faces are wiped or pitted",
    "Are cam lobes or lifter faces worn down, wiped or pitted?",
    CP,
    denies="lobes and lifter faces are sound",
    stage=Stage.OPENED,
    normal="smooth, full lift",
    background=OCCASIONAL,
    also=("flat cam", "wiped lobe", "cam lobe gone", "lifter face dished"),
)
CAMSHAFT_BROKEN = Finding(
    "camshaft_broken",
    Station.TOPEND,
    "the camshaft is broken or seized in its bearings",
    "Is the camshaft broken, or seized in its bearings?",
    CP,
    denies="the camshaft is whole and turns",
    stage=Stage.OPENED,
    normal="whole; every valve moves",
    background=VERY_RARE,
    also=("cam snapped", "camshaft snapped in two", "cam seized", "some valves don't move"),
)

CAM_BEARING_CLEARANCE = Measure(
    "cam_bearing_clearance",
    Station.TOPEND,
    "cam bearing clearance, on the diameter",
    "How much is the cam bearing clearance, on the diameter?",
    "length",
    (0.0, 0.003),
    TMC,
    spread=0.0000127,
    also=("cam clearance", "camshaft bearing clearance", "cam bearing gap"),
)
