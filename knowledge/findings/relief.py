"""What can be seen and measured at the relief valve."""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FBE, GMI, HB19, JHV, OLD, PF, RVF
from knowledge.vocabulary import OCCASIONAL, RARE, VERY_RARE, Finding, Measure, Stage, Station

DEBRIS_ON_RELIEF_SEAT = Finding(
    "debris_on_relief_seat",
    Station.RELIEF,
    "debris lies on the relief seat or under the ball or plunger",
    "With the relief valve out: was a chip, sliver, sealer or carbon on the seat or under the ball?",
    CP,
    denies="the relief seat was clean",
    stage=Stage.OPENED,
    normal="clean seat, bright ring",
    why="one sliver holds the valve off its seat and bleeds pressure at idle",
    background=VERY_RARE,
    also=("metal under relief ball", "chip in relief valve", "dirt in pressure relief valve"),
)
RELIEF_PLUNGER_STICKS = Finding(
    "relief_plunger_sticks",
    Station.RELIEF,
    "the relief plunger does not slide by its own weight when oiled",
    "Oiled, does the relief plunger fail to fall through its bore by its own weight?",
    RVF,
    denies="the relief plunger slides freely",
    stage=Stage.OPENED,
    normal="drops smoothly the whole way",
    why="a valve that cannot move can neither hold nor relieve",
    background=VERY_RARE,
    also=("relief valve stuck", "relief piston seized", "plunger tight in its bore"),
)
RELIEF_VALVE_STAYED_OPEN = Finding(
    "relief_valve_stayed_open",
    Station.RELIEF,
    "with the plug out the relief plunger stayed back, off its seat",
    "When the plug came out, did the spring push it while the plunger stayed open in its bore?",
    FBE,
    denies="the plunger followed its spring",
    stage=Stage.OPENED,
    normal="the plunger follows the spring",
    background=VERY_RARE,
    also=("relief valve stuck open", "plunger stuck off its seat"),
)
RELIEF_VALVE_STAYED_SHUT = Finding(
    "relief_valve_stayed_shut",
    Station.RELIEF,
    "the relief plunger was found seized shut",
    "Was the relief plunger found seized in the shut position?",
    FBE,
    denies="the plunger was not seized shut",
    stage=Stage.OPENED,
    normal="the plunger moves against its spring",
    background=VERY_RARE,
    also=("relief valve stuck closed", "relief piston jammed shut"),
)
RELIEF_SEAT_SCORED = Finding(
    "relief_seat_scored",
    Station.RELIEF,
    "the relief bore or seat is scored, worn or burred",
    "Is the relief bore or seat scored, worn oval or burred?",
    GMI,
    denies="relief bore and seat are bright and smooth",
    stage=Stage.OPENED,
    normal="bright and smooth",
    background=VERY_RARE,
    also=("worn relief valve seat", "pitted ball", "scored relief bore"),
)
RELIEF_SPRING_SHORT_OR_BROKEN = Finding(
    "relief_spring_short_or_broken",
    Station.RELIEF,
    "the relief spring is broken, short, bent or weak",
    "Is the relief spring broken, shorter than a new one, bent or weak?",
    PF,
    denies="the relief spring measures like new",
    stage=Stage.OPENED,
    normal="free length and load as the manual",
    background=VERY_RARE,
    also=("weak spring", "broken relief spring", "collapsed spring"),
)
RELIEF_PARTS_NOT_STANDARD = Finding(
    "relief_parts_not_standard",
    Station.RELIEF,
    "shims, a foreign spring, a moved adjuster or reversed parts sit in the relief valve",
    "Are there shims, a foreign or stretched spring, a moved adjuster or reversed parts in it?",
    JHV,
    denies="the relief valve's parts are as the maker built them",
    stage=Stage.OPENED,
    normal="as built",
    background=OCCASIONAL,
    also=("shimmed relief valve", "stretched spring", "wrong relief spring", "washer under spring"),
)
RELIEF_PART_ABSENT = Finding(
    "relief_part_absent",
    Station.RELIEF,
    "ball, plunger or spring of the relief valve is not there",
    "Is the ball, plunger or spring missing altogether?",
    CP,
    denies="all parts of the relief valve are there",
    stage=Stage.OPENED,
    normal="all there",
    background=VERY_RARE,
    also=("no ball in relief valve", "relief plunger left out"),
)
RELIEF_CAP_LOOSE_OR_LEAKING = Finding(
    "relief_cap_loose_or_leaking",
    Station.RELIEF,
    "the relief cap or plug is loose, unpinned, unwired, lost or leaks",
    "Is the relief cap or plug loose, unlocked, lost or wet?",
    OLD,
    denies="the relief cap is tight and dry",
    stage=Stage.OUTSIDE,
    normal="tight, locked and dry",
    background=VERY_RARE,
    also=("relief plug backed out", "relief valve plug fell out", "pressure relief cap missing"),
)
RELIEF_BENCH_OPENS_LOW = Finding(
    "relief_bench_opens_low",
    Station.RELIEF,
    "on the bench the valve opens below its setting",
    "On the bench, does the valve open more than 5 psi below its setting?",
    HB19,
    denies="on the bench the valve opens at its setting",
    stage=Stage.OPENED,
    normal="within 5 psi of the setting",
    background=VERY_RARE,
    also=(
        "opens too early on the bench",
        "pops off early",
    ),
)
RELIEF_BENCH_OPENS_HIGH = Finding(
    "relief_bench_opens_high",
    Station.RELIEF,
    "on the bench the valve opens above its setting",
    "On the bench, does the valve open more than 5 psi above its setting?",
    HB19,
    denies="on the bench the valve does not open late",
    stage=Stage.OPENED,
    normal="within 5 psi of the setting",
    background=VERY_RARE,
    also=(
        "opens too late on the bench",
        "pops off late",
    ),
)
RELIEF_ADJUSTER_NO_EFFECT = Finding(
    "relief_adjuster_no_effect",
    Station.RELIEF,
    "turning the relief adjuster changes nothing",
    "Does turning the relief adjuster make no difference?",
    CP,
    denies="the relief adjuster changes the pressure",
    stage=Stage.OUTSIDE,
    normal="pressure follows the adjuster at speed",
    background=OCCASIONAL,
    also=("backing off the spring made no difference", "adjusting relief does nothing"),
)
RELIEF_RETURN_BLOCKED = Finding(
    "relief_return_blocked",
    Station.RELIEF,
    "the relief valve's return passage is plugged",
    "Is the passage that carries the relieved oil away plugged or masked?",
    CP,
    denies="the relief return is clear",
    stage=Stage.OPENED,
    normal="open",
    background=VERY_RARE,
    also=("return gallery plugged", "bypass passage blocked"),
)

RELIEF_SPRING_LENGTH = Measure(
    "relief_spring_length",
    Station.RELIEF,
    "relief spring free length",
    "How long is the relief spring, free?",
    "length",
    (0.005, 0.3),
    CP,
    spread=0.0002,
    also=("relief spring free length",),
)
STIFFER_SPRING_NO_BETTER = Finding(
    "stiffer_spring_no_better",
    Station.RELIEF,
    "a stiffer, stretched or shimmed relief spring made no difference",
    "Was a stiffer, stretched or shimmed relief spring tried, without any difference?",
    PF,
    denies="a stiffer relief spring brought it up",
    stage=Stage.TOLD,
    normal="below the setting the spring has no say",
    background=RARE,
    also=(
        "shimmed the relief no change",
        "stretched the spring",
        "new relief spring didn't help",
    ),
)
RELIEF_FOUND_STUCK = Finding(
    "relief_found_stuck",
    Station.RELIEF,
    "the relief valve was found stuck, or gripped by a warped cover (where it stood is not told)",
    "Was the relief valve found stuck or gripped in its bore, wherever it stood?",
    FBE,
    denies="the relief valve was not stuck",
    stage=Stage.OPENED,
    normal="slides by its own weight",
    background=VERY_RARE,
    also=(
        "relief valve jammed",
        "pump cover grips the valve",
        "plunger seized in bore",
    ),
)
HIGH_FROM_FIRST_START = Finding(
    "high_from_first_start",
    Station.RELIEF,
    "too high ever since the first start after a rebuild",
    "Has it been too high ever since the first start after the rebuild?",
    CP,
    denies="it was not high after the rebuild",
    stage=Stage.TOLD,
    normal="right from the first start",
    background=VERY_RARE,
    also=(
        "extremely high oil pressure after rebuild",
        "pegged since rebuild",
    ),
)
