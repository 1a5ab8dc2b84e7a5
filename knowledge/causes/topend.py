"""Root causes at the top end: cam, lifters, rockers, tensioners, jets and turbo feed."""

from knowledge.sources import AHS, COMMON_PRACTICE, HB12, HB18, MON, MRG, PF, TUR
from knowledge.vocabulary import Cause, Rate, Station

LIFTER_BORE_LEAK = Cause(
    "lifter_bore_leak",
    Station.TOPEND,
    "worn lifter bores, a wrong lifter, or one out of its bore",
    "the lifter gallery leaks: low and noisy; with a lifter right out, next to nothing at hot idle",
    Rate.OCCASIONAL,
    "++ + 0 0 +",
    "bush the bores, fit the right lifters, find why one came out",
    PF,
    follows="cam and lifter damage",
    also=(
        "lifter popped out",
        "lifter jumped out of bore",
        "sloppy lifter bores",
        "tappet bores worn",
        "wrong lifters",
    ),
)
CAM_BEARING_WEAR = Cause(
    "cam_bearing_wear",
    Station.TOPEND,
    "cam bearings worn, loose or turned, or cam journals worn",
    "as much leak as a main bearing, and often not suspected: low at hot idle",
    Rate.COMMON,
    "++ + 0 0 0",
    "renew the cam bearings with their holes in line, check the journals",
    MRG,
    follows="low pressure, dry valve gear",
    also=(
        "worn cam bearings",
        "spun cam bearing",
        "camshaft bearing gone",
        "cam bushings worn",
        "worn cam journals",
    ),
)
ROCKER_SHAFT_LEAK = Cause(
    "rocker_shaft_leak",
    Station.TOPEND,
    "rocker shaft or bushes worn, or the shaft's end plug missing",
    "oil runs out upstairs: a lower hot idle, flooded covers and a dry far end",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "new shaft or bushes, fit the end plugs, tighten the stands",
    HB12,
    follows="the far end of the shaft runs dry",
    also=(
        "worn rocker shaft",
        "rocker shaft plug missing",
        "rocker bushings worn",
        "rocker pedestal",
    ),
)
TENSIONER_SEAL_LEAK = Cause(
    "tensioner_seal_leak",
    Station.TOPEND,
    "chain tensioner gasket, seal or oil jet leaks or was left out",
    "pressure oil runs into the timing case: idle near zero, fair pressure at speed",
    Rate.OCCASIONAL,
    "+ ++ 0 0 0",
    "new tensioner seal, right bolts, right torque",
    AHS,
    follows="chain rattle, stretched or jumped chain",
    also=(
        "timing chain tensioner gasket",
        "tensioner o-ring missing",
        "chain oil jet missing",
        "chain rattle after timing job",
    ),
)
PISTON_JET_OPEN = Cause(
    "piston_jet_open",
    Station.TOPEND,
    "a piston cooling jet is missing, broken or stuck open",
    "it spends oil that should be held back at idle: low at idle, less felt at speed",
    Rate.RARE,
    "+ + 0 0 0",
    "renew the jets, check their valves and seats",
    HB18,
    follows="hot piston, low idle pressure",
    also=("piston squirter broken", "oil squirter missing", "oil jet stuck open", "piston cooler"),
)
RESTRICTOR_MISSING = Cause(
    "restrictor_missing",
    Station.TOPEND,
    "a metering restrictor was left out or drilled too big",
    "too much oil runs to head, chain or turbo: the top is flooded and main pressure is down",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "fit the right restrictor or gasket orifice",
    MON,
    follows="flooded covers, oil that is slow to drain back",
    also=(
        "oil restrictor left out",
        "head gasket orifice",
        "metering jet missing",
        "cam feed orifice",
    ),
)
DIST_HOUSING_LEAK = Cause(
    "dist_housing_leak",
    Station.TOPEND,
    "distributor body or its seal leaks where it crosses an oil gallery",
    "the body is the stopper of a pressure line: worn, short or without its ring, oil slips past it",
    Rate.RARE,
    "+ + 0 0 0",
    "new ring, right body at the right depth",
    COMMON_PRACTICE,
    follows="low pressure, timing gear short of oil",
    also=(
        "distributor o-ring",
        "distributor body clearance",
        "wrong distributor",
        "oil past distributor",
    ),
)
TURBO_FEED_LEAK = Cause(
    "turbo_feed_leak",
    Station.TOPEND,
    "turbo bearings worn out, or the turbo oil feed line open or cracked",
    "a small steady loss of main pressure; a burst line throws the oil out",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "repair the line, repair or replace the turbo",
    TUR,
    follows="fire on the hot housing, empty sump, seizure",
    also=(
        "turbo oil line burst",
        "turbo leaking oil",
        "turbo feed pipe cracked",
        "worn turbo bearings",
    ),
)
TURBO_FEED_RESTRICTED = Cause(
    "turbo_feed_restricted",
    Station.TOPEND,
    "the turbo oil feed is kinked, coked, or masked by gasket or sealer",
    "the engine's gauge is normal while the turbo starves; seconds without oil ruin its bearings",
    Rate.OCCASIONAL,
    "+ + 0 + 0",
    "new feed pipe and gasket, no sealer, prime the turbo before starting",
    TUR,
    follows="turbo failure, its debris in the engine",
    also=("coked turbo line", "turbo starved of oil", "turbo feed kinked", "blocked banjo bolt"),
)
