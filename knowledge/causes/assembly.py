"""Root causes at the assembly station."""

from knowledge.sources import CEB2, JIO, LTK, PE17, RUS, RV8, THK
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: CEB2 (dirt 45.4 % of premature bearing failures), THK (bristles, valve-seal scraps)
DIRT_IN_ASSEMBLY = Cause(
    "dirt_in_assembly",
    Station.ASSEMBLY,
    "grit, shot, brush bristle, swarf or lint left in oilways",
    "scratched bearings, jams the relief or pump; low that appears within hours",
    Rate.OCCASIONAL,
    "-- ++ 0 0 +",
    "strip, rodding, brush, flush",
    CEB2,
    follows="relief-debris, pump-debris-lock, bearing-wiped",
)
# tier C, layouts A, source column: LTK, HB-04 high r10, CLV
BEARING_OIL_HOLE_MISALIGNED = Cause(
    "bearing_oil_hole_misaligned",
    Station.ASSEMBLY,
    "shell or cam bearing hole not over the oilway",
    "one bearing or rocker shaft dry while gauge reads good or high",
    Rate.RARE,
    "-- ++ 0 0 0",
    "refit, check with a rod",
    LTK,
    follows="local failure",
)
# tier C, layouts A, source column: RUS (cap shift), CEB2
CAP_SWAPPED = Cause(
    "cap_swapped",
    Station.ASSEMBLY,
    "caps mixed or reversed, or torque on wrong lubricant",
    "bore off round: tight spots then wiped",
    Rate.RARE,
    "-- ++ 0 0 0",
    "match numbers, re-torque",
    RUS,
    follows="wiped",
)
# tier C, layouts A, source column: RV8 (screen jammed solid), TBR, TUR (silicone on turbo gaskets)
SEALANT_DEBRIS = Cause(
    "sealant_debris",
    Station.ASSEMBLY,
    "silicone or other sealer extruded inside, breaks off",
    "blocks screen/relief/jets; low after minutes to hours; rubbery crumbs in pan",
    Rate.OCCASIONAL,
    "0 ++ 0 0 0",
    "clean all; gasket with grease film or thin bead",
    RV8,
    follows="blocked screen",
)
# tier X, layouts A, source column: THK against, OLD for (pack gear pocket)
ASSEMBLY_LUBE_CLOG = Cause(
    "assembly_lube_clog",
    Station.ASSEMBLY,
    "grease, jelly or paste on screen or filter",
    "slow build, first minutes low; some builders forbid jelly, others require it",
    Rate.RARE,
    "-- ++ 0 0 0",
    "use oil or the specified method only",
    THK,
    follows="dry start",
)
# tier C, layouts D S with plastic-toothed gear, source column: JIO, THK
TIMING_GEAR_SHEDDING = Cause(
    "timing_gear_shedding",
    Station.ASSEMBLY,
    "plastic or fibre timing-gear teeth break off (even at an earlier repair)",
    "plastic crumbs block the screen",
    Rate.OCCASIONAL,
    "++ 0 0 + 0",
    "clean sump, renew gears; never leave the crumbs",
    JIO,
    follows="blocked screen",
)
# tier C, layouts A, source column: PE17, GMC
FASTENER_LOOSE_INSIDE = Cause(
    "fastener_loose_inside",
    Station.ASSEMBLY,
    "pump, pickup, tray or cap bolt unlocked or over-tight",
    "intermittent; part dropped in pan; sudden zero if pickup drops",
    Rate.RARE,
    "0 ++ 0 0 +",
    "torque, lock, witness mark",
    PE17,
    follows="debris, loss",
)
