"""Root causes at the topend station."""

from knowledge.sources import AHS, COMMON_PRACTICE, HB12, HB18, MON, MRG, PF, TUR
from knowledge.vocabulary import Cause, Rate, Station

# tier X, layouts D H, source column: PF, PGN (lifter thrown out of its bore)
LIFTER_BORE_LEAK = Cause(
    "lifter_bore_leak",
    Station.TOPEND,
    "worn lifter bores or a lifter out of its bore, wrong lifter",
    "leak in the lifter gallery: low, noisy; a lifter out = sudden near-zero at hot idle",
    Rate.OCCASIONAL,
    "++ + 0 0 +",
    "bush bores, correct lifters",
    PF,
    follows="cam damage",
)
# tier C, layouts A, source column: MRG (middle bearing 0.020 in, about ten times normal), TMC (0.0045–0.006 new, 0.008 max, more = low pressure), HB-15 r8
CAM_BEARING_WEAR = Cause(
    "cam_bearing_wear",
    Station.TOPEND,
    "camshaft bearings loose or spun, or journals worn",
    "same leak area as a main but often unsuspected: low hot idle",
    Rate.COMMON,
    "++ + 0 0 0",
    "renew cam bearings, line up holes",
    MRG,
    follows="low, valve gear dry",
)
# tier X, layouts O S X, source column: HB-12 r8
ROCKER_SHAFT_LEAK = Cause(
    "rocker_shaft_leak",
    Station.TOPEND,
    "rocker shaft or bush wear, end plug missing, loose stand gasket",
    "leak upstairs: lower hot idle; visible oil in covers",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "new shaft, plugs",
    HB12,
    follows="dry far end",
)
# tier X, layouts O, source column: AHS, HB-16 r6
TENSIONER_SEAL_LEAK = Cause(
    "tensioner_seal_leak",
    Station.TOPEND,
    "tensioner gasket or bolt, or chain oil jet",
    "as gallery-seal-leak; idle near zero in one case (0 psi idle, 40 psi at 2000 rpm)",
    Rate.OCCASIONAL,
    "+ ++ 0 0 0",
    "new seal, torque",
    AHS,
    follows="chain rattle",
)
# tier X, layouts T X, source column: HB-18 r5
PISTON_JET_OPEN = Cause(
    "piston_jet_open",
    Station.TOPEND,
    "jet missing, broken or stuck open at idle",
    "low at idle, less higher",
    Rate.RARE,
    "+ + 0 0 0",
    "renew jets",
    HB18,
    follows="hot piston",
)
# tier X, layouts A, source column: MON (0.030 in hole is the deliberate version), CP
RESTRICTOR_MISSING = Cause(
    "restrictor_missing",
    Station.TOPEND,
    "metered orifice to head, chain or turbo left out or drilled too big",
    "extra leak, top end flooded, main pressure down",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "fit the correct orifice",
    MON,
    follows="drain-back trouble",
)
# tier X, layouts D, source column: CP
DIST_HOUSING_LEAK = Cause(
    "dist_housing_leak",
    Station.TOPEND,
    "distributor body or shaft seal crossing a gallery (O-ring, wrong depth) leaks",
    "internal leak at gallery: low",
    Rate.RARE,
    "+ + 0 0 0",
    "new O-ring",
    COMMON_PRACTICE,
    follows="low, timing gear dry",
)
# tier X, layouts T, source column: TUR, CP
TURBO_FEED_LEAK = Cause(
    "turbo_feed_leak",
    Station.TOPEND,
    "turbo bearing worn or feed line open",
    "small loss of main pressure, smoke; burst line = sudden loss of oil",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "repair feed, turbo",
    TUR,
    follows="fire, seizure",
)
# tier X, layouts T, source column: TUR
TURBO_FEED_RESTRICTED = Cause(
    "turbo_feed_restricted",
    Station.TOPEND,
    "feed kinked, coked, wrong gasket, sealer in it",
    "engine gauge normal; turbo starves (5 s dry as bad as 5 min for the engine)",
    Rate.OCCASIONAL,
    "+ + 0 + 0",
    "new pipe, prime turbo",
    TUR,
    follows="turbo failure, debris to engine",
)
