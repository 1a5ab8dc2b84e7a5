"""Root causes at the relief station."""

from knowledge.sources import COMMON_PRACTICE, HB03, HB07, HB10, HB22, PF, TEB
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: HB-22, HB-12 r4, HB-18 r2, THK, 2CP (more noticeable at low rpm)
RELIEF_DEBRIS = Cause(
    "relief_debris",
    Station.RELIEF,
    "chip, swarf, sealant or carbon holds ball or plunger off its seat",
    "bleeds at all speeds; low at idle, may rise with rpm toward setting; can appear and vanish; most common internal leak named",
    Rate.COMMON,
    "0 ++ + 0 0",
    "remove, clean, find the debris",
    HB22,
    follows="starvation at idle, seat damage",
)
# tier C, layouts A, source column: PF, FBE (spring pushes plug out: valve stuck), HB-14
RELIEF_STUCK_OPEN = Cause(
    "relief_stuck_open",
    Station.RELIEF,
    "plunger seized part-way by varnish, burr, tilt or swarf",
    "low at idle, near normal high up (builds to the point where the valve would open) - or none if fully open",
    Rate.OCCASIONAL,
    "+ + 0 + 0",
    "free, hone lightly, renew",
    PF,
    follows="wipe",
)
# tier C, layouts A, source column: HB-03 (worn valve leaks), HB-05 r11
RELIEF_BORE_SCORED = Cause(
    "relief_bore_scored",
    Station.RELIEF,
    "bore or seat worn or scored so the valve leaks when closed",
    "low at idle, cannot hold; repeat debris sticking",
    Rate.OCCASIONAL,
    "++ + 0 0 0",
    "renew pump or seat; oversize ball",
    HB03,
    follows="as above",
)
# tier C, layouts A, source column: TEB, HB-01 r5, HB-10 r4
RELIEF_SPRING_WEAK_BROKEN = Cause(
    "relief_spring_weak_broken",
    Station.RELIEF,
    "spring fatigued, broken or collapsed",
    "pressure capped below specification at all higher rpm; broken: very low everywhere",
    Rate.OCCASIONAL,
    "++ 0 0 0 +",
    "new spring of the right rate",
    TEB,
    follows="low maximum pressure",
)
# tier C, layouts A, source column: HB-03 high r1, HB-18 r1, JHV, INL
RELIEF_SPRING_WRONG = Cause(
    "relief_spring_wrong",
    Station.RELIEF,
    "wrong spring, shims added or left out, adjuster moved, parts reversed",
    "maximum pressure too low (soft) or too high (stiff, shimmed) though the rest is sound",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "correct spring; set on bench",
    HB03,
    follows="drive-gear wear, filter burst (high)",
)
# tier C, layouts D S X, source column: HB-07 r6 (check cap), CP
RELIEF_CAP_LOOSE = Cause(
    "relief_cap_loose",
    Station.RELIEF,
    "cap or plug backed off, retaining pin out, gasket missing",
    "oil escapes past cap; if cap falls out, sudden zero; spring loosens: low",
    Rate.OCCASIONAL,
    "0 + 0 0 +",
    "torque and lock; new copper washer",
    HB07,
    follows="total loss",
)
# tier C, layouts A, source column: HB-10 r5
RELIEF_PART_MISSING = Cause(
    "relief_part_missing",
    Station.RELIEF,
    "ball, plunger or spring left out at assembly",
    "near zero from first start",
    Rate.RARE,
    "-- ++ 0 0 0",
    "strip and fit",
    HB10,
    follows="dry start",
)
# tier C, layouts A, source column: HB-03, HB-04, HB-10, HB-14, JHV
RELIEF_STUCK_CLOSED = Cause(
    "relief_stuck_closed",
    Station.RELIEF,
    "valve seized shut, or plunger fitted backwards",
    "pressure keeps rising with rpm when cold, well above setting; filter bulges, seal weeps",
    Rate.OCCASIONAL,
    "+ + + + 0",
    "free/replace before revving",
    HB03,
    follows="burst filter, pump drive failure",
)
# tier X, layouts A, source column: CP
RELIEF_HUNTING = Cause(
    "relief_hunting",
    Station.RELIEF,
    "loose-fitting plunger or aerated oil makes the valve hunt",
    "quick flutter only near the setting, at high rpm; steady below it",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "new valve, cure air",
    COMMON_PRACTICE,
    follows="wear",
)
# added: a real case showed it, no table lists it
RELIEF_RETURN_PLUGGED = Cause(
    "relief_return_plugged",
    Station.RELIEF,
    "the passage that returns relieved oil to the sump is plugged",
    "the valve opens but the oil cannot leave: pressure climbs as if it were stuck shut",
    Rate.RARE,
    "-- ++ 0 0 0",
    "open the passage; check plug positions against the maker's drawing",
    COMMON_PRACTICE,
    follows="filters burst or blow off, seals leak",
)
