"""Root causes at the relief station."""

from knowledge.sources import COMMON_PRACTICE, HB03, HB07, HB10, HB22, PF, TEB
from knowledge.vocabulary import Cause, Rate, Station

RELIEF_DEBRIS = Cause(
    "relief_debris",
    Station.RELIEF,
    "debris under the relief valve: a chip, sealer or carbon",
    "it holds the valve off its seat: oil bleeds past at all speeds, most felt at idle; may come and go",
    Rate.COMMON,
    "0 ++ + 0 0",
    "clean valve and seat; find where the debris came from before the engine runs",
    HB22,
    follows="starved idle, hurt seat, wiped bearings",
    also=("metal under the relief ball", "dirt in the relief valve", "swarf in pressure relief"),
)
RELIEF_STUCK_OPEN = Cause(
    "relief_stuck_open",
    Station.RELIEF,
    "relief plunger stuck open, part of the way or all of it",
    "oil bleeds past as through a hole; near normal high up, or nothing at all if fully open",
    Rate.OCCASIONAL,
    "+ + 0 + 0",
    "free it, stone burrs lightly, never hone an aluminium bore; renew if it sticks again",
    PF,
    follows="starved bearings",
    also=("relief valve stuck open", "plunger seized", "pressure relief jammed"),
)
RELIEF_BORE_SCORED = Cause(
    "relief_bore_scored",
    Station.RELIEF,
    "relief bore or seat worn or scored",
    "it leaks while shut: low at idle, and debris sticks there again",
    Rate.OCCASIONAL,
    "++ + 0 0 0",
    "renew seat, body or pump; an oversize ball where the maker allows it",
    HB03,
    follows="low idle pressure, debris that sticks again",
    also=("worn relief seat", "pitted relief ball", "scored relief bore"),
)
RELIEF_SPRING_WEAK_BROKEN = Cause(
    "relief_spring_weak_broken",
    Station.RELIEF,
    "relief spring weak, collapsed or broken",
    "the valve opens early: a steady low ceiling; broken, very low everywhere",
    Rate.OCCASIONAL,
    "++ 0 0 0 +",
    "new spring of the maker's rate; never stretch the old one",
    TEB,
    follows="low pressure at speed",
    also=("weak relief spring", "broken oil pressure spring", "tired spring"),
)
RELIEF_SPRING_WRONG = Cause(
    "relief_spring_wrong",
    Station.RELIEF,
    "wrong relief spring, shims added or left out, parts reversed",
    "the ceiling is too low (soft) or too high (stiff, shimmed) though all else is sound",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "the right spring and parts; set the opening pressure on the bench",
    HB03,
    follows="drive-gear wear and burst filters where it is too high",
    also=("wrong spring", "shimmed relief", "adjuster turned", "stretched spring"),
)
RELIEF_CAP_LOOSE = Cause(
    "relief_cap_loose",
    Station.RELIEF,
    "relief cap or plug backed out, unpinned or lost",
    "the spring loses its load, then oil leaves: low, or sudden zero",
    Rate.OCCASIONAL,
    "0 + 0 0 +",
    "tighten, lock and seal it with a new washer",
    HB07,
    follows="total loss of pressure, oil lost",
    also=("relief plug fell out", "cap not wired", "pressure relief plug loose"),
)
RELIEF_PART_MISSING = Cause(
    "relief_part_missing",
    Station.RELIEF,
    "relief ball, plunger or spring left out at assembly",
    "as good as nothing from the first start",
    Rate.RARE,
    "-- ++ 0 0 0",
    "strip the valve and fit what is missing",
    HB10,
    follows="dry start, wiped bearings",
    also=("no ball in relief valve", "forgot the relief spring"),
)
RELIEF_STUCK_CLOSED = Cause(
    "relief_stuck_closed",
    Station.RELIEF,
    "relief valve stuck shut, or its plunger fitted backwards",
    "cold pressure keeps rising with revs, far above the setting; filter bulges, seals weep",
    Rate.OCCASIONAL,
    "+ + + + 0",
    "free or renew it before the engine is revved",
    HB03,
    follows="burst filter, broken pump drive",
    also=("relief valve stuck closed", "oil filter keeps bursting", "pressure too high cold"),
)
RELIEF_HUNTING = Cause(
    "relief_hunting",
    Station.RELIEF,
    "relief plunger loose in its bore, hunting",
    "quick flutter near the setting at high revs, steady below it",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "new valve; cure any air in the oil first",
    COMMON_PRACTICE,
    follows="wear of valve and drive",
    also=("relief valve flutter", "pressure buzzes at high rpm"),
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
    also=("relief dump passage blocked",),
)
