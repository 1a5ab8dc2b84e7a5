"""Root causes at the oil station."""

from knowledge.sources import HB01, HB02, HB03, HB04, HB08, HB09, HPA, LCF, SJR
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: HB-01, 03–05, 07–15; INL
OIL_LEVEL_LOW = Cause(
    "oil_level_low",
    Station.OIL,
    "too little oil in the sump (consumption, leak, under-fill)",
    "pickup uncovers at speed, on corners, braking or heel; pump draws air; flicker first, then steady low",
    Rate.VERY_COMMON,
    "+ 0 + + +",
    "fill to mark, find the loss",
    HB01,
    follows="aerated oil, lifter noise, rod bearing wipe",
)
# tier C, layouts A M, source column: HB-08 r2, HB-09 r3
OIL_LEVEL_HIGH = Cause(
    "oil_level_high",
    Station.OIL,
    "over-filled (wrong quantity, fuel or coolant gain, wrong stick)",
    "crank whips the oil; foam reaches the pump; fluctuation, lifter noise and power loss at high rpm",
    Rate.OCCASIONAL,
    "0 + ++ 0 +",
    "drain to mark, explain the gain",
    HB08,
    follows="seal leaks, foam starvation",
)
# tier C, layouts A M, source column: SJR, HB-09 r2, HPP (stick depth can only be verified with the pan off)
DIPSTICK_WRONG = Cause(
    "dipstick_wrong",
    Station.OIL,
    "wrong stick, tube or pan combination, or level read on a slope / straight after shut-down",
    "true level differs from the mark; acts as low or high level",
    Rate.OCCASIONAL,
    "0 ++ + 0 +",
    "calibrate the stick with a measured fill",
    SJR,
    follows="repeated starvation",
)
# tier C, layouts A, source column: HB-01 r2, HB-04 r5, HB-22
VISCOSITY_TOO_LOW = Cause(
    "viscosity_too_low",
    Station.OIL,
    "grade too thin for the clearances or climate, or sheared multigrade",
    "less resistance in every leak path: low hot, near normal cold, at all speeds",
    Rate.COMMON,
    "+ + ++ 0 +",
    "correct grade",
    HB01,
    follows="film thinning, faster wear",
)
# tier C, layouts A, source column: HB-03, HB-04, HB-10, HB-14
VISCOSITY_TOO_HIGH = Cause(
    "viscosity_too_high",
    Station.OIL,
    "grade too thick, soot- or oxidation-thickened, or cold",
    "high pressure, relief open; suction of a small pickup may cavitate cold; slow build-up at far bearings",
    Rate.OCCASIONAL,
    "+ 0 + + 0",
    "correct grade, change overdue oil",
    HB03,
    follows="filter bypassing, starvation at top end, drive loads",
)
# tier C, layouts A (esp. carburetted with mechanical lift pump; small diesels), source column: LCF (5 % turns a 30 into a 20), COL, HB-02, HB-08
FUEL_DILUTION = Cause(
    "fuel_dilution",
    Station.OIL,
    "petrol or diesel in the oil (leaking lift-pump diaphragm, flooding carburettor, injector leak, long idling)",
    "viscosity falls: low hot pressure, level may rise, smell",
    Rate.COMMON,
    "+ + 0 + 0",
    "find the leak, change oil and filter",
    LCF,
    follows="bore and bearing wear, fire/explosion risk",
)
# tier C, layouts A M, source column: HB-02, HB-14, LCW
COOLANT_IN_OIL = Cause(
    "coolant_in_oil",
    Station.OIL,
    "water or glycol via head gasket, crack, cooler, or sea-water entry",
    "milky emulsion, loss of film; glycol sludge can block filter/screen; may raise or lower pressure",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "stop use; find leak, flush, change oil twice",
    HB02,
    follows="bearing corrosion, blocked filter",
)
# tier C, layouts A, source column: HB-04 r4, HB-22, HB-09 r7
OIL_OVERHEATED = Cause(
    "oil_overheated",
    Station.OIL,
    "oil much hotter than normal (load, cooler, low level, detonation, blow-by)",
    "viscosity falls with temperature: slow sag over minutes, recovers when cooled",
    Rate.COMMON,
    "+ + 0 0 ++",
    "restore cooling, right grade",
    HB04,
    follows="oxidation, bearing fatigue",
)
# tier C, layouts A, source column: HB-04 r9 & r16, HB-21 r6, JIO
OIL_DEGRADED = Cause(
    "oil_degraded",
    Station.OIL,
    "overdue, oxidised, sludged, acid",
    "blocks screens and galleries; thickens or thins; corrosion of overlay",
    Rate.COMMON,
    "++ - -- + 0",
    "change at short intervals; clean sump",
    HB04,
    follows="blocked screen, bearing corrosion",
)
# tier X, layouts A, source column: HPA, ADT
OIL_FOAM_PRONE = Cause(
    "oil_foam_prone",
    Station.OIL,
    "foam inhibitor lost or wrong additive, flush residue, water in oil",
    "air released slowly; spongy pressure that worsens with rpm",
    Rate.RARE,
    "0 0 + 0 +",
    "change to correct oil",
    HPA,
    follows="pump erosion, flicker",
)
# tier N, layouts A, source column: HB-09 r5–7, 10R
OIL_HOT_NORMAL = Cause(
    "oil_hot_normal",
    Station.OIL,
    "expected fall as engine warms; steady low idle with silent lifters and within limits",
    "pressure low at hot idle only, normal for rpm (≈10 psi per 1000 rpm)",
    Rate.VERY_COMMON,
    "+ 0 0 0 +",
    "record baseline",
    HB09,
    follows="nothing",
    no_fault=True,
)
# tier N, layouts A, source column: HB-04 high r6
OIL_COLD_NORMAL = Cause(
    "oil_cold_normal",
    Station.OIL,
    "expected high reading cold",
    "high only until warm",
    Rate.COMMON,
    "0 0 0 0 0",
    "no action, avoid revs cold",
    HB04,
    follows="nothing",
    no_fault=True,
)
