"""Oil drained, measured and refilled, and the checks that show it."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, VERY_RARE, Finding, Measure, Stage, Station
from knowledge.pressure import behaviour, patterns_speed
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.oil import findings, quantities
from knowledge.work import Access, Caution, Inspection

WATER_AT_THE_DRAIN = Finding(
    id="water_at_the_drain",
    station=Station.OIL,
    says="water or coolant ran out ahead of the oil at the drain",
    asks="Engine rested: did water run out before the oil at the drain plug?",
    source=COMMON_PRACTICE,
    denies="only oil came out of the drain",
    stage=Stage.OPENED,
    normal="oil only",
    background=HARDLY_EVER,
    also=("water in the sump", "coolant in oil pan", "water came out first"),
)
FUEL_AT_THE_DRAIN = Finding(
    id="fuel_at_the_drain",
    station=Station.OIL,
    says="fuel ran out of the sump, or stood in it",
    asks="Did petrol or diesel fuel run out of the sump, by itself or with the oil?",
    source=COMMON_PRACTICE,
    denies="no fuel came out of the drain",
    stage=Stage.OPENED,
    normal="oil only",
    background=EXCEPTIONAL,
    also=("fuel in the sump", "diesel in oil pan", "petrol came out of the drain"),
)
DRAIN_THROUGH_A_CLOTH = Inspection(
    id="drain_through_a_cloth",
    station=Station.OIL,
    says="drain through a cloth or strainer and look before mixing",
    steps=(
        "rested engine: open the plug slowly and see whether water comes first",
        (
            "catch it all in a clean tray through a cloth; shine a light on the oil for glitter "
            "and milk"
        ),
        "keep the first and the last half litre (pint); bag and label what the cloth holds",
    ),
    minutes=20,
    access=Access.DRAINED,
    reveals=(
        WATER_AT_THE_DRAIN,
        FUEL_AT_THE_DRAIN,
        findings.OIL_MILKY,
        findings.GLITTER_IN_OIL,
        findings.SLUDGE_SEEN,
        findings.DIPSTICK_DRY,
    ),
    source=COMMON_PRACTICE,
    tools=("clean tray", "cloth or strainer", "magnet", "bags", "lamp"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE, Caution.LIFTING),
    destroys="the level and the look of the oil in the engine",
    keep="photograph the stick and take a sample first",
    also=("drain the oil", "magnet plug", "drop the oil"),
)

DRAINED_VOLUME_LOW = Finding(
    id="drained_volume_low",
    station=Station.OIL,
    says="much less oil came out than the engine holds",
    asks="Drained into a jug: much less oil than the engine holds?",
    source=COMMON_PRACTICE,
    denies="as much oil came out as went in",
    stage=Stage.OPENED,
    normal="the quantity in the manual, less what clings inside",
    why="the quantity drained does not depend on the stick",
    background=EXCEPTIONAL,
    also=("only two quarts came out", "hardly any oil drained", "sump nearly empty"),
)
DRAINED_VOLUME_HIGH = Finding(
    id="drained_volume_high",
    station=Station.OIL,
    says="more oil came out than the engine should hold",
    asks="Drained into a jug: more oil than the engine should hold?",
    source=COMMON_PRACTICE,
    denies="no more oil came out than it should hold",
    stage=Stage.OPENED,
    normal="the quantity in the manual",
    background=EXCEPTIONAL,
    also=("more oil than it holds", "too much oil drained", "two quarts over came out"),
)
DRAINED_VOLUME = Measure(
    quantity=quantities.DRAINED_VOLUME,
    station=Station.OIL,
    asks="How much oil came out?",
    source=sources.STICK_VERIFICATION_2002,
    also=("quarts drained", "litres drained"),
)
MEASURE_WHAT_COMES_OUT = Inspection(
    id="measure_what_comes_out",
    station=Station.OIL,
    says="measure what comes out",
    steps=("let it drip ten minutes", "pour the oil into a jug; add what the filter held; compare"),
    minutes=5,
    access=Access.DRAINED,
    reveals=(DRAINED_VOLUME_LOW, DRAINED_VOLUME_HIGH),
    source=COMMON_PRACTICE,
    measures=(DRAINED_VOLUME,),
    tools=("measuring jug",),
    cautions=(Caution.HOT, Caution.USED_OIL),
    waits_minutes=10,
    also=("drained quantity", "how many quarts came out"),
)

STICK_MARKS_WRONG = Finding(
    id="stick_marks_wrong",
    station=Station.OIL,
    says="a measured fill does not reach the mark it should",
    asks="After a measured fill: oil not at the mark where it should be?",
    source=sources.STICK_VERIFICATION_2002,
    denies="a measured fill reaches its mark",
    stage=Stage.OPENED,
    normal="the maker's quantity stands at the full mark",
    why="only a measured fill proves a dipstick right or wrong",
    background=EXCEPTIONAL,
    also=("dipstick reads wrong", "stick not calibrated", "five quarts shows low"),
)
FILL_BY_MEASURE = Inspection(
    id="fill_by_measure",
    station=Station.OIL,
    says="fill a measured quantity and see where the stick reads",
    steps=(
        "sump empty, engine level: pour in the maker's quantity with a measuring jug",
        "wait ten minutes, read the stick, file or scribe the true mark",
    ),
    minutes=20,
    access=Access.DRAINED,
    in_place=True,
    reveals=(STICK_MARKS_WRONG,),
    source=sources.STICK_VERIFICATION_2002,
    tools=("measuring jug", "the right oil"),
    cautions=(Caution.USED_OIL,),
    waits_minutes=10,
    also=("calibrate dipstick", "check dipstick marks"),
)

RIGHT_GRADE_CURES = Finding(
    id="right_grade_cures",
    station=Station.OIL,
    says="fresh oil of the right grade brings the reading right",
    asks="Fresh oil of the right grade: is the reading right again?",
    source=COMMON_PRACTICE,
    denies="fresh oil of the right grade changes nothing",
    stage=Stage.OPENED,
    normal="no change, if the oil was not at fault",
    why="if fresh oil cures it, you need open nothing but the drain plug",
    background=VERY_RARE,
    also=("oil change fixed it", "fine with new oil", "correct oil cured it"),
)
TRY_THE_RIGHT_GRADE = Inspection(
    id="try_the_right_grade",
    station=Station.OIL,
    says="fill with fresh oil of the right grade and read again",
    steps=(
        "baseline first: hot idle and 2000 rpm, oil temperature, and a sample",
        "drain, new filter, the right grade to the mark",
        "warm to the same temperature and read again on the same gauge",
    ),
    minutes=45,
    access=Access.DRAINED,
    reveals=(RIGHT_GRADE_CURES, behaviour.CHANGED_WITH_GRADE, patterns_speed.GOOD_COLD_LOW_HOT),
    source=COMMON_PRACTICE,
    tools=("the right oil", "filter", "trusted gauge", "thermometer"),
    cautions=(*RUNNING, Caution.USED_OIL, Caution.WASTE),
    destroys="the old oil: its level, its look and how much fuel is in it",
    keep="take a baseline reading and a sample before you change the grade",
    needs_running=True,
    also=("oil change", "change oil grade", "try thicker oil"),
)
