"""Root causes at the bearings station."""

from knowledge.sources import BFP, BTG, CEB2, HB01, HB04, HB16, PF
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: HB-01 r6, PF ("anything but rods": uniformly low over the rpm range)
BEARING_WEAR_MAINS = Cause(
    "bearing_wear_mains",
    Station.BEARINGS,
    "main clearance grown by wear or grind",
    "leakage at every speed, worst hot idle; deep knock under load in late stage",
    Rate.COMMON,
    "++ - 0 0 0",
    "measure, regrind, shells",
    HB01,
    follows="rods starved, crank damage",
)
# tier C, layouts A, source column: PF, EB10, AA97
BEARING_WEAR_RODS = Cause(
    "bearing_wear_rods",
    Station.BEARINGS,
    "rod clearance grown",
    "low at idle and falls further relative to expectation as rpm rises (oil flung outwards)",
    Rate.COMMON,
    "++ - 0 0 +",
    "measure, regrind, shells",
    PF,
    follows="knock, rod failure",
)
# tier C, layouts A, source column: BFP, RUS, CEB2
BEARING_WIPED = Cause(
    "bearing_wiped",
    Station.BEARINGS,
    "overlay melted or smeared by starvation or overheating",
    "sudden fall that stays; knock; copper or white metal in filter",
    Rate.OCCASIONAL,
    "+ ++ 0 + ++",
    "stop; find the starvation cause, crank repair",
    BFP,
    follows="spun bearing, seized",
)
# tier C, layouts A, source column: BTG (shiny back), CP
BEARING_SPUN = Cause(
    "bearing_spun",
    Station.BEARINGS,
    "shell turned in its housing, oil hole closed",
    "fall then local starvation; heavy knock; low or normal gauge",
    Rate.RARE,
    "+ + 0 0 +",
    "stop; housing repair",
    BTG,
    follows="rod through the block",
)
# tier X, layouts A, source column: HB-16 r1, CEB1 limits
THRUST_BEARING_WEAR = Cause(
    "thrust_bearing_wear",
    Station.BEARINGS,
    "crank float excessive",
    "end leak, some loss; clutch or converter load linked",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "find end load; bearings",
    HB16,
    follows="crank destroyed",
)
# tier C, layouts A, source column: HB-04 r18 & high r10, CEB2 mis-assembly 12.8 %
BEARING_WRONG_SIZE = Cause(
    "bearing_wrong_size",
    Station.BEARINGS,
    "wrong undersize or mixed shells, clearance too big or too tight",
    "too big: low from first start; too tight: high, then wiped",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "measure every journal",
    HB04,
    follows="wiped",
)
# tier X, layouts A, source column: CEB2 misalignment 12.6 %, CEB1 0.002 in total / 0.001 in adjacent
LINE_BORE_MISALIGNED = Cause(
    "line_bore_misaligned",
    Station.BEARINGS,
    "main bore distorted, caps swapped or machined, crankcase sprung",
    "patchy wear, local wipe, pressure falls as it progresses",
    Rate.OCCASIONAL,
    "+ ++ 0 0 0",
    "align bore",
    CEB2,
    follows="fatigue",
)
# tier X, layouts A, source column: CEB2 3.2 %, CEB1 (15 µin Ra, 0.0005 in out-of-round)
JOURNAL_FINISH = Cause(
    "journal_finish",
    Station.BEARINGS,
    "rough, tapered, out-of-round journals",
    "accelerated overlay wear without heat, clearance grows",
    Rate.OCCASIONAL,
    "+ ++ 0 0 0",
    "regrind, polish in running direction",
    CEB2,
    follows="low after a few hours",
)
# tier X, layouts A, source column: BTG, MPH, CEB2
BENT_ROD_OR_CRANK = Cause(
    "bent_rod_or_crank",
    Station.BEARINGS,
    "bent rod or crank: edge wear of opposite shells",
    "local wear",
    Rate.RARE,
    "0 + 0 0 +",
    "straighten or replace",
    BTG,
    follows="fatigue",
)
# tier X, layouts A, source column: CEB2 8.1 %, MPH
OVERLOAD_LUGGING = Cause(
    "overload_lugging",
    Station.BEARINGS,
    "detonation, lugging, over-rev",
    "fatigue of the loaded shell; pressure late",
    Rate.OCCASIONAL,
    "+ 0 0 0 ++",
    "cure cause",
    CEB2,
    follows="debris, loss",
)
