"""Root causes at the delivery station."""

from knowledge.sources import FLV, HB01, HB04, HB05, HB11, MON, PRM
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: HB-11 r0, HB-07 r4, HB-12 r3
FILTER_BLOCKED = Cause(
    "filter_blocked",
    Station.DELIVERY,
    "loaded element (sludge, metal, break-in debris, emulsion)",
    "tap after the filter falls until bypass opens, about 10-15 psi lost on one small diesel; tap before reads normal/high",
    Rate.OCCASIONAL,
    "+ + - + 0",
    "change filter, cut open the old one",
    HB11,
    follows="unfiltered oil via bypass",
)
# tier X, layouts A, source column: HB-01 r4, TML, TMR
FILTER_BYPASS_STUCK = Cause(
    "filter_bypass_stuck",
    Station.DELIVERY,
    "bypass or cooler bypass valve stuck open (dirty oil, no restriction) or shut",
    "open: no pressure change, bearings scratched; shut: starved when filter loads",
    Rate.RARE,
    "+ 0 0 0 0",
    "repair valve",
    HB01,
    follows="bearing scratches",
)
# tier C, layouts A, source column: PRM, CP (remote hoses)
FILTER_WRONG = Cause(
    "filter_wrong",
    Station.DELIVERY,
    "wrong filter, double gasket, wrong adapter or stem, missing O-ring, hoses crossed on remote filter",
    "external gush, or no flow through (blocked); low or none right after change",
    Rate.OCCASIONAL,
    "0 + ++ 0 0",
    "correct part, one gasket",
    PRM,
    follows="sudden oil loss",
)
# tier X, layouts A (side- or top-mounted filter), source column: FLV, THK
FILTER_DRAINBACK = Cause(
    "filter_drainback",
    Station.DELIVERY,
    "anti-drain-back valve missing or hardened",
    "delayed build for 1-3 s after standing; normal once built",
    Rate.OCCASIONAL,
    "+ 0 + + 0",
    "correct filter",
    FLV,
    follows="start-up wear",
)
# tier X, layouts X R, source column: HB-01 r3, HB-22
OIL_COOLER_BLOCKED = Cause(
    "oil_cooler_blocked",
    Station.DELIVERY,
    "cooler core or lines blocked, or congealed cold oil",
    "low after cooler with high oil temperature; sudden recovery when it clears",
    Rate.OCCASIONAL,
    "+ 0 0 + 0",
    "clean, thermostat",
    HB01,
    follows="overheated oil",
)
# tier C, layouts A, source column: MON, PSP, CLV, HB-01 r7, HB-05 r10
GALLERY_PLUG_MISSING = Cause(
    "gallery_plug_missing",
    Station.DELIVERY,
    "main, front, rear or lifter-gallery plug omitted, fell out, or loose",
    "large internal leak: low at all rpm, idle near zero (about 10 psi in one documented case); no external oil",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "fit plug; do a pressure pre-lube with covers off",
    MON,
    follows='bearing failure, "bad pump" misdiagnosed',
)
# tier C, layouts F O X, source column: HB-04 r12, AHS
GALLERY_SEAL_LEAK = Cause(
    "gallery_seal_leak",
    Station.DELIVERY,
    "gallery O-ring, feed tube, cover gasket or cross-passage seal leaking or left out",
    "as above, smaller",
    Rate.OCCASIONAL,
    "+ ++ 0 0 0",
    "renew seals",
    HB04,
    follows="low, chain rattle",
)
# tier X, layouts A, source column: HB-05 r9, HB-18 r5, NE1
GALLERY_CRACK = Cause(
    "gallery_crack",
    Station.DELIVERY,
    "crack or porosity in gallery wall",
    "as above, changes with heat",
    Rate.RARE,
    "+ 0 0 + +",
    "repair or replace block",
    HB05,
    follows="oil in coolant, water in oil",
)
# tier C, layouts A, source column: HB-04 high r5 & r9, HB-10 high, PBB (rotated rear plug: feed one-third open)
GALLERY_BLOCKED = Cause(
    "gallery_blocked",
    Station.DELIVERY,
    "debris, sealant, misplaced plug or sludge obstructs a gallery",
    "tap upstream high, downstream starved; one bank/rod fails though the gauge looks good",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "rod out, clean, verify with flow",
    HB04,
    follows="local bearing failure",
)
