"""Root causes at the suction station."""

from knowledge.sources import AER, AZN, CAV, ELP, GMC, HB01, HB05, HB17, OST, SLO, TWO_CP
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: 2CP, JIO (sludge cleaned: +20 psi), HB-01 r12, HB-12 r2; ISS (0.005 in varnish on 0.040 mesh cuts flow area 44 %)
PICKUP_SCREEN_BLOCKED = Cause(
    "pickup_screen_blocked",
    Station.SUCTION,
    "mesh covered by sludge, sealant, gasket, plastic gear teeth or metal",
    "pump starves at flow: good cold/idle pressure then sudden or progressive fall with rpm and time; often recovers after a stop as debris drops away",
    Rate.VERY_COMMON,
    "++ + + + +",
    "renew screen; find what shed the debris",
    TWO_CP,
    follows="cavitation, noisy pump, bearing wipe",
)
# tier C, layouts D S, source column: AZN, ISS
PICKUP_SCREEN_BYPASS_OPEN = Cause(
    "pickup_screen_bypass_open",
    Station.SUCTION,
    "cold-oil bypass in the screen stuck open, or mesh torn/loose",
    "debris passes straight into pump; pressure effect indirect (debris in relief, scored pump)",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "renew pickup",
    AZN,
    follows="relief-debris, pump-debris-lock",
)
# tier C, layouts D S, source column: GMC (renew the screen if removed because press fit is lost), HB-05 r6, HB-17
PICKUP_TUBE_LOOSE = Cause(
    "pickup_tube_loose",
    Station.SUCTION,
    "press-fit tube has worked loose, bolts slack, bracket broken",
    "air drawn above oil level: flicker at all rpm, worse with rpm; slow prime; may drop off entirely (sudden zero)",
    Rate.COMMON,
    "0 ++ 0 0 ++",
    "new tube, bolt-on or tack-weld with pump stripped",
    GMC,
    follows="total loss of pressure",
)
# tier C, layouts A, source column: HB-05 r7, HB-04 r14, SJR, CLV
PICKUP_TUBE_CRACKED = Cause(
    "pickup_tube_cracked",
    Station.SUCTION,
    "fatigue crack or pinhole in tube or braze",
    "as above; flicker depends on oil level above the crack",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "replace",
    HB05,
    follows="total loss",
)
# tier C, layouts A (esp. F, X, R), source column: HB-01 r14, HB-17 r3, HB-18 r6, CLV
SUCTION_JOINT_AIR_LEAK = Cause(
    "suction_joint_air_leak",
    Station.SUCTION,
    "O-ring, gasket or flange on the suction side leaking or left out; wrong sealer",
    "air in: delayed build after standing, foamy pressure, flicker; no oil leaks out, so nothing shows outside",
    Rate.COMMON,
    "+ ++ 0 + +",
    "new seal, lubricate, torque evenly",
    HB01,
    follows="loss of prime, aeration",
)
# tier C, layouts D S F, source column: ELP, HB-17 r2, CP
PICKUP_CLEARANCE_TIGHT = Cause(
    "pickup_clearance_tight",
    Station.SUCTION,
    "pickup too near the pan floor (wrong pickup/pan pair, gasket change, pan pushed up)",
    "inlet throttled: fall at high rpm and cold; like a part-blocked screen",
    Rate.OCCASIONAL,
    "0 ++ 0 0 ++",
    "set gap (see reassembly.md)",
    ELP,
    follows="cavitation",
)
# tier C, layouts D S, source column: OST, CP
PICKUP_CLEARANCE_WIDE = Cause(
    "pickup_clearance_wide",
    Station.SUCTION,
    "pickup too high for the pan (deep pan with stock pickup)",
    "uncovers on braking, cornering, climbing, or when level is at the add mark",
    Rate.OCCASIONAL,
    "0 ++ 0 0 ++",
    "correct pickup",
    OST,
    follows="starvation on manoeuvres",
)
# tier C, layouts A, source column: HB-17 r2
PAN_DENTED = Cause(
    "pan_dented",
    Station.SUCTION,
    "sump pushed up against the screen by a jack, kerb, grounding",
    "closes the inlet; appears suddenly after a knock",
    Rate.OCCASIONAL,
    "0 0 0 0 +",
    "repair pan, replace pickup",
    HB17,
    follows="starvation",
)
# tier C, layouts A M (tractors on side slopes, sterndrives, race cars), source column: SLO (about 10 psi at 4000 rpm near 1 g), HB-01 r1
ATTITUDE_UNCOVERS_PICKUP = Cause(
    "attitude_uncovers_pickup",
    Station.SUCTION,
    "sustained g, slope, heel or installation angle moves oil off the pickup",
    "drops to near zero in the manoeuvre, returns at once; repeatable in the same direction",
    Rate.COMMON,
    "0 0 0 0 ++",
    "baffle, swinging pickup, larger or correct pan, level",
    SLO,
    follows="rod bearing wipe one event at a time",
)
# tier C, layouts A, source column: SLO, CP
BAFFLE_MISSING = Cause(
    "baffle_missing",
    Station.SUCTION,
    "baffle, trapdoor or anti-surge plate left out, bent or wrong way",
    "as above at lower g",
    Rate.OCCASIONAL,
    "0 ++ 0 0 ++",
    "refit or fabricate",
    SLO,
    follows="as above",
)
# tier C, layouts D S F, source column: AER (tray removed: less than 30 % more air at the pump inlet), HPA, WTS
WINDAGE_AERATION = Cause(
    "windage_aeration",
    Station.SUCTION,
    "crank and rods whip the oil: tray missing, tray too near, stroker, level high",
    "entrained air makes pressure fall and flutter at high rpm and settle on closing the throttle; foam on stick after a hard run",
    Rate.OCCASIONAL,
    "0 + 0 0 ++",
    "tray/scraper with clearance, correct level",
    AER,
    follows="lifter collapse, pump erosion",
)
# tier X, layouts D H, source column: OST
DRAINBACK_POOR = Cause(
    "drainback_poor",
    Station.SUCTION,
    "oil held in heads or valley (blocked returns, long high-rpm run)",
    "sump level falls while running; sag after 10-60 s at high rpm; returns after idling",
    Rate.OCCASIONAL,
    "+ + 0 0 ++",
    "clear and smooth returns, larger sump, restrict top-end flow",
    OST,
    follows="starvation",
)
# tier X, layouts R, source column: CAV, HB-17 dry-sump row
SUCTION_HOSE_COLLAPSED = Cause(
    "suction_hose_collapsed",
    Station.SUCTION,
    "remote or dry-sump feed hose soft, kinked or too small",
    "fall at high rpm; cold worse",
    Rate.RARE,
    "+ + 0 0 ++",
    "correct bore and reinforced hose",
    CAV,
    follows="cavitation",
)
