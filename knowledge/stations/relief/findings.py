"""Findings at the relief valve, and the checks that show them."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import (
    EXCEPTIONAL,
    HARDLY_EVER,
    OCCASIONAL,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.relief import findings_sights, quantities
from knowledge.work import Access, Caution, Inspection

HIGH_FROM_FIRST_START = Finding(
    id="high_from_first_start",
    station=Station.RELIEF,
    says="too high ever since the first start after a rebuild",
    asks="Too high ever since the first start after the rebuild?",
    source=COMMON_PRACTICE,
    denies="it was not high after the rebuild",
    stage=Stage.KNOWN,
    normal="right from the first start",
    background=VERY_RARE,
    also=(
        "extremely high oil pressure after rebuild",
        "pegged since rebuild",
    ),
)
DEBRIS_ON_RELIEF_SEAT = Finding(
    id="debris_on_relief_seat",
    station=Station.RELIEF,
    says="there is debris on the relief seat or under the ball or plunger",
    asks="Relief valve out: a chip, sliver, sealer or carbon on the seat or under the ball?",
    source=COMMON_PRACTICE,
    denies="the relief seat was clean",
    stage=Stage.OPENED,
    normal="clean seat, bright ring",
    why="one sliver holds the valve off its seat and bleeds pressure at idle",
    background=HARDLY_EVER,
    also=(
        "metal under relief ball",
        "chip in relief valve",
        "dirt in pressure relief valve",
        "grit under the relief plunger",
    ),
)
RELIEF_VALVE_STAYED_OPEN = Finding(
    id="relief_valve_stayed_open",
    station=Station.RELIEF,
    says="with the plug out the relief plunger stayed back, off its seat",
    asks="Plug out: did the plunger stay open in its bore although the spring came out?",
    source=sources.PRESSURIZED_BLACK_GOLD,
    denies="the plunger followed its spring",
    stage=Stage.OPENED,
    normal="the plunger follows the spring",
    background=HARDLY_EVER,
    also=("relief valve stuck open", "plunger stuck off its seat"),
)
RELIEF_VALVE_STAYED_SHUT = Finding(
    id="relief_valve_stayed_shut",
    station=Station.RELIEF,
    says="the relief plunger was found seized shut",
    asks="Relief plunger seized shut?",
    source=idea_from(sources.PRESSURIZED_BLACK_GOLD),
    denies="the plunger was not seized shut",
    stage=Stage.OPENED,
    normal="the plunger moves against its spring",
    background=EXCEPTIONAL,
    also=("relief valve stuck closed", "relief piston jammed shut"),
)
RELIEF_PARTS_NOT_STANDARD = Finding(
    id="relief_parts_not_standard",
    station=Station.RELIEF,
    says="shims, a foreign spring, a moved adjuster or reversed parts sit in the relief valve",
    asks="Relief valve: shims, a wrong or stretched spring, a moved adjuster or reversed parts?",
    source=sources.RELIEF_VALVE_EXPLANATION,
    denies="the relief valve's parts are as the maker built them",
    stage=Stage.OPENED,
    normal="as built",
    background=EXCEPTIONAL,
    also=("shimmed relief valve", "stretched spring", "wrong relief spring", "washer under spring"),
)
RELIEF_PART_ABSENT = Finding(
    id="relief_part_absent",
    station=Station.RELIEF,
    says="the ball, plunger or spring of the relief valve is missing",
    asks="Relief valve: ball, plunger or spring missing?",
    source=COMMON_PRACTICE,
    denies="all parts of the relief valve are there",
    stage=Stage.OPENED,
    normal="all there",
    background=HARDLY_EVER,
    also=("no ball in relief valve", "relief plunger left out"),
)
RELIEF_FOUND_STUCK = Finding(
    id="relief_found_stuck",
    station=Station.RELIEF,
    says=(
        "the relief valve was found stuck, or gripped by a warped cover (where it stood is "
        "not known)"
    ),
    asks="Relief valve stuck or gripped in its bore, in any position?",
    source=idea_from(sources.PRESSURIZED_BLACK_GOLD),
    denies="the relief valve was not stuck",
    stage=Stage.OPENED,
    normal="slides by its own weight",
    background=HARDLY_EVER,
    also=(
        "relief valve jammed",
        "pump cover grips the valve",
        "plunger seized in bore",
    ),
)
RELIEF_FOUND_BAD = Finding(
    id="relief_found_bad",
    station=Station.RELIEF,
    says="the relief valve was found bad (how is not known)",
    asks="Relief valve found bad, by whom or how is not known?",
    source=COMMON_PRACTICE,
    denies="nothing is wrong with the relief valve",
    stage=Stage.OPENED,
    normal="free, clean, spring of the right length",
    why="stuck, dirty, worn or weak: each gives another picture on the gauge",
    background=HARDLY_EVER,
    also=("faulty relief valve", "bad oil pressure regulator", "relief valve unserviceable"),
)
PULL_THE_RELIEF_VALVE = Inspection(
    id="pull_the_relief_valve",
    station=Station.RELIEF,
    says="take the relief valve out and look before wiping",
    steps=(
        "wear eye protection, cover the cap with a cloth, hold it with a deep socket and let the "
        "spring out slowly",
        "note whether the plunger follows its spring",
        "photograph seat, ball or plunger and order of parts before anything is moved",
        "catch debris on a magnet and a white tray, bag and label it",
    ),
    minutes=15,
    access=Access.RELIEF_CAP_OFF,
    reveals=(
        DEBRIS_ON_RELIEF_SEAT,
        RELIEF_FOUND_STUCK,
        RELIEF_FOUND_BAD,
        RELIEF_VALVE_STAYED_OPEN,
        RELIEF_VALVE_STAYED_SHUT,
        RELIEF_PART_ABSENT,
        RELIEF_PARTS_NOT_STANDARD,
    ),
    source=sources.PRESSURIZED_BLACK_GOLD,
    tools=("deep socket", "magnet", "camera", "white tray", "bags"),
    cautions=(Caution.SPRING, Caution.EYES, Caution.HOT),
    destroys="the position of plunger and debris: the first removal loses it",
    keep="photograph the valve in place; note which way it moved",
    also=("check relief valve", "pressure relief", "bypass spring"),
)

RELIEF_PLUNGER_STICKS = Finding(
    id="relief_plunger_sticks",
    station=Station.RELIEF,
    says="the relief plunger does not slide by its own weight when oiled",
    asks="Relief plunger oiled: does it fail to drop through its bore by its own weight?",
    source=sources.RELIEF_FREE_FALL,
    denies="the relief plunger slides freely",
    stage=Stage.OPENED,
    normal="drops smoothly the whole way",
    why="a stuck valve can neither hold pressure nor relieve it",
    background=EXCEPTIONAL,
    also=("relief valve stuck", "relief piston seized", "plunger tight in its bore"),
)
DROP_TEST_THE_PLUNGER = Inspection(
    id="drop_test_the_plunger",
    station=Station.RELIEF,
    says="drop test of the relief plunger",
    steps=("oil the plunger", "let it fall through its bore; it must slide the whole way"),
    minutes=5,
    access=Access.RELIEF_CAP_OFF,
    reveals=(
        RELIEF_PLUNGER_STICKS,
        findings_sights.RELIEF_PISTON_LOOSE,
    ),
    source=sources.RELIEF_FREE_FALL,
    tools=("clean oil",),
)

RELIEF_SEAT_SCORED = Finding(
    id="relief_seat_scored",
    station=Station.RELIEF,
    says="the relief valve's bore, seat or plunger is scored, worn or burred",
    asks="Relief bore, seat or plunger scored, burred or worn oval?",
    source=sources.PUMP_INSPECTION_2006,
    denies="relief bore, seat and plunger are bright and smooth",
    stage=Stage.OPENED,
    normal="bright and smooth",
    background=EXCEPTIONAL,
    also=("worn relief valve seat", "pitted ball", "scored relief bore"),
)
RELIEF_RETURN_BLOCKED = Finding(
    id="relief_return_blocked",
    station=Station.RELIEF,
    says="the relief valve's return passage is plugged",
    asks="Relief return passage plugged or masked?",
    source=COMMON_PRACTICE,
    denies="the relief return is clear",
    stage=Stage.OPENED,
    normal="open",
    background=HARDLY_EVER,
    also=("return gallery plugged", "bypass passage blocked"),
)
LOOK_AT_RELIEF_SEAT = Inspection(
    id="look_at_relief_seat",
    station=Station.RELIEF,
    says="look at relief bore, seat and return",
    steps=(
        "inspect bore and seat with a light and magnifier",
        "feel for burrs; never hone an aluminium bore",
        "blow through the return passage",
    ),
    minutes=5,
    access=Access.RELIEF_CAP_OFF,
    reveals=(RELIEF_SEAT_SCORED, RELIEF_RETURN_BLOCKED),
    source=COMMON_PRACTICE,
    tools=("lamp", "magnifier"),
    cautions=(
        Caution.EYES,
        Caution.PRESSURE,
    ),
)

RELIEF_SPRING_SHORT_OR_BROKEN = Finding(
    id="relief_spring_short_or_broken",
    station=Station.RELIEF,
    says="the relief spring is broken, short, bent or weak",
    asks="Relief spring broken, shorter than a new one, bent or weak?",
    source=COMMON_PRACTICE,
    denies="the relief spring measures like new",
    stage=Stage.OPENED,
    normal="free length and load as in the manual",
    background=EXCEPTIONAL,
    also=("weak spring", "broken relief spring", "collapsed spring"),
)
RELIEF_SPRING_LENGTH = Measure(
    quantity=quantities.RELIEF_SPRING_LENGTH,
    station=Station.RELIEF,
    asks="Free length of the relief spring?",
    source=COMMON_PRACTICE,
    also=("relief spring free length",),
)
MEASURE_RELIEF_SPRING = Inspection(
    id="measure_relief_spring",
    station=Station.RELIEF,
    says="free length and load of the relief spring",
    steps=(
        "measure the free length",
        "compare length and load with the manual; never stretch a spring",
    ),
    minutes=10,
    access=Access.RELIEF_CAP_OFF,
    reveals=(RELIEF_SPRING_SHORT_OR_BROKEN, RELIEF_PARTS_NOT_STANDARD),
    source=COMMON_PRACTICE,
    measures=(RELIEF_SPRING_LENGTH,),
    tools=("caliper", "spring scale"),
    cautions=(
        Caution.SPRING,
        Caution.EYES,
    ),
)

RELIEF_CAP_LOOSE_OR_LEAKING = Finding(
    id="relief_cap_loose_or_leaking",
    station=Station.RELIEF,
    says="the relief cap or plug is loose, unpinned, unwired, lost or leaks",
    asks="Relief cap or plug loose, unlocked, lost or wet?",
    source=idea_from(sources.PUMP_INSTALLATION_1983),
    denies="the relief cap is tight and dry",
    stage=Stage.OUTSIDE,
    normal="tight, locked and dry",
    background=EXCEPTIONAL,
    also=("relief plug backed out", "relief valve plug fell out", "pressure relief cap missing"),
)
FEEL_THE_RELIEF_CAP = Inspection(
    id="feel_the_relief_cap",
    station=Station.RELIEF,
    says="relief cap: tight, locked, dry",
    steps=(
        "engine stopped and cool",
        "look for oil at cap, pin and washer",
        "check that it has not slackened",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(RELIEF_CAP_LOOSE_OR_LEAKING,),
    source=COMMON_PRACTICE,
    tools=("lamp", "socket"),
    cautions=(Caution.HOT, Caution.SPRING),
)

RELIEF_ADJUSTER_NO_EFFECT = Finding(
    id="relief_adjuster_no_effect",
    station=Station.RELIEF,
    says="turning the relief adjuster changes nothing",
    asks="Does turning the relief adjuster make no difference?",
    source=COMMON_PRACTICE,
    denies="the relief adjuster changes the pressure",
    stage=Stage.OUTSIDE,
    normal="pressure follows the adjuster at speed",
    background=OCCASIONAL,
    also=("backing off the spring made no difference", "adjusting relief does nothing"),
)
TURN_THE_RELIEF_ADJUSTER = Inspection(
    id="turn_the_relief_adjuster",
    station=Station.RELIEF,
    says="turn the relief adjuster a little and watch the gauge",
    steps=("count the turns and note where it stood", "stop the engine to turn it", "set it back"),
    minutes=15,
    access=Access.GAUGE_PORT,
    reveals=(RELIEF_ADJUSTER_NO_EFFECT,),
    source=COMMON_PRACTICE,
    tools=("spanner", "trusted gauge"),
    cautions=(*RUNNING, Caution.SPRING),
    keep="write down where the adjuster stood",
    needs_running=True,
)

RELIEF_BENCH_OPENS_LOW = Finding(
    id="relief_bench_opens_low",
    station=Station.RELIEF,
    says="on the bench the valve opens below its setting",
    asks="On the bench, does the valve open more than 5 psi below its setting?",
    source=idea_from(sources.DIESEL_CASE_NOTE),
    denies="on the bench the valve opens at its setting",
    stage=Stage.OPENED,
    normal="within 5 psi of the setting",
    background=HARDLY_EVER,
    also=(
        "opens too early on the bench",
        "pops off early",
    ),
)
RELIEF_BENCH_OPENS_HIGH = Finding(
    id="relief_bench_opens_high",
    station=Station.RELIEF,
    says="on the bench the valve opens above its setting",
    asks="On the bench, does the valve open more than 5 psi above its setting?",
    source=idea_from(sources.DIESEL_CASE_NOTE),
    denies="on the bench the valve does not open late",
    stage=Stage.OPENED,
    normal="within 5 psi of the setting",
    background=HARDLY_EVER,
    also=(
        "opens too late on the bench",
        "pops off late",
    ),
)
RELIEF_SETTING = Measure(
    quantity=quantities.RELIEF_SETTING,
    station=Station.RELIEF,
    asks="At what pressure does the relief valve open on the bench?",
    source=idea_from(sources.DIESEL_CASE_NOTE),
    also=("relief opening pressure", "relief valve lifts at", "relief cracks open at"),
)
BENCH_TEST_RELIEF = Inspection(
    id="bench_test_relief",
    station=Station.RELIEF,
    says="opening pressure of the valve on the bench",
    steps=(
        "hand pump and gauge on the pump outlet",
        ("raise the pressure slowly until it lifts; note which oil"),
    ),
    minutes=20,
    access=Access.PUMP_RELIEF_OUT,
    reveals=(RELIEF_BENCH_OPENS_LOW, RELIEF_BENCH_OPENS_HIGH),
    measures=(RELIEF_SETTING,),
    source=sources.DIESEL_CASE_NOTE,
    tools=("hand pump", "gauge", "adapter"),
    cautions=(Caution.PRESSURE, Caution.EYES),
)
