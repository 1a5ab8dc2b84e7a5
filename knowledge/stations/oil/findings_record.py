"""Oil grade, age and record, and the checks that show them."""

from knowledge import sources
from knowledge.model import COMMON, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.pressure import behaviour, direct_gauge
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.oil import findings
from knowledge.work import Access, Caution, Inspection

OIL_USED_FAST = Finding(
    id="oil_used_fast",
    station=Station.OIL,
    says="it uses much more oil than it used to (quarts per hour or per tank)",
    asks="Does it use much more oil than before, or than the maker allows?",
    source=COMMON_PRACTICE,
    denies="it uses little oil",
    stage=Stage.KNOWN,
    normal="the maker's figure; the same use from fill to fill",
    why="a level that was right at the start of a run may be too low by the end",
    background=COMMON,
    also=(
        "burning oil",
        "a quart an hour",
        "high oil consumption",
        "drinks oil",
        "always topping up",
        "oil consumtion",
    ),
)
OIL_NOT_CHECKED_LONG = Finding(
    id="oil_not_checked_long",
    station=Station.OIL,
    says="nobody had checked the oil level for a long time",
    asks="Long time since anybody checked the oil level?",
    source=COMMON_PRACTICE,
    denies="the level was checked lately",
    stage=Stage.KNOWN,
    normal="before each day's work",
    background=COMMON,
    also=("never checks the oil", "did not check oil", "no preflight of oil", "forgot to check"),
)
NOT_REFILLED = Finding(
    id="not_refilled",
    station=Station.OIL,
    says="the oil was not put in, or not all of it",
    asks="Oil not put in after draining or a rebuild, or not all of it (count filter and cooler)?",
    source=COMMON_PRACTICE,
    denies="it was refilled with the full quantity",
    stage=Stage.KNOWN,
    normal="the full quantity with filter, then run and read again",
    background=VERY_RARE,
    also=("forgot to fill oil", "started without oil", "underfilled", "short filled"),
)
TOO_MUCH_POURED_IN = Finding(
    id="too_much_poured_in",
    station=Station.OIL,
    says="more oil was poured in than the engine holds",
    asks="More oil poured in than the engine holds?",
    source=sources.MARINE_OWNERS_MANUAL_2008,
    denies="the right quantity was poured in",
    stage=Stage.KNOWN,
    normal="the quantity in the manual",
    background=VERY_RARE,
    also=("filled twice", "one quart too many", "overfilled at oil change"),
)
OIL_OVERDUE = Finding(
    id="oil_overdue",
    station=Station.OIL,
    says="the oil is long overdue for a change, or nobody knows its age",
    asks="Oil long overdue for a change, or its age unknown?",
    source=COMMON_PRACTICE,
    denies="the oil is not overdue for a change",
    stage=Stage.KNOWN,
    normal="changed by hours, distance or yearly",
    background=COMMON,
    also=("overdue oil change", "oil is years old", "unknown oil", "never changed the oil"),
)
OIL_GRADE_AS_MANUAL = Finding(
    id="oil_grade_as_manual",
    station=Station.OIL,
    says="the oil in it is the grade the manual gives",
    asks="Is it the grade the manual gives for this climate?",
    source=idea_from(sources.MARINE_DIESEL_MANUAL),
    denies="the oil is not the grade the manual gives, or nobody knows",
    stage=Stage.KNOWN,
    normal="the manual's grade",
    background=COMMON,
    also=("right oil grade", "correct oil", "specified oil", "using the recommended oil"),
)
OIL_GRADE_TOO_HEAVY = Finding(
    id="oil_grade_too_heavy",
    station=Station.OIL,
    says="the oil in it is a heavier grade than the manual gives",
    asks="Oil grade heavier than the manual gives for this climate?",
    source=COMMON_PRACTICE,
    denies="the oil is no heavier than the manual gives",
    stage=Stage.KNOWN,
    normal="the manual's grade",
    background=OCCASIONAL,
    also=("20W-50 in it", "thicker oil than spec", "straight 40", "heavy oil in winter"),
)
OIL_GRADE_TOO_THIN = Finding(
    id="oil_grade_too_thin",
    station=Station.OIL,
    says="the oil in it is a thinner grade than the manual gives",
    asks="Oil grade thinner than the manual gives for this climate?",
    source=sources.ARMY_TM_347_CHART_1973,
    denies="the oil is no thinner than the manual gives",
    stage=Stage.KNOWN,
    normal="the manual's grade",
    background=RARE,
    also=("wrong oil 5W-20", "0W-20 in an old engine", "lighter oil than spec", "thin oil"),
)
ADDITIVE_OR_FLUSH_IN_OIL = Finding(
    id="additive_or_flush_in_oil",
    station=Station.OIL,
    says="a flush, an additive or some other fluid went into the oil",
    asks="Flush, additive or other fluid put in the oil?",
    source=idea_from(sources.OIL_AERATION_ARTICLE),
    denies="nothing but engine oil went in",
    stage=Stage.KNOWN,
    normal="engine oil only",
    background=OCCASIONAL,
    also=("engine flush", "oil treatment", "stop leak in oil", "diesel as flush", "ATF in oil"),
)
THICKER_OIL_HELPED = Finding(
    id="thicker_oil_helped",
    station=Station.OIL,
    says="thicker oil or a thickener brought the pressure up",
    asks="Did thicker oil, or a thickener, bring the hot pressure up?",
    source=COMMON_PRACTICE,
    denies="thicker oil made no difference",
    stage=Stage.KNOWN,
    normal="a sound engine does not need it",
    why="it shows that oil escapes through clearances; it does not cure them",
    background=RARE,
    also=("20W-50 helped", "oil thickener worked", "better with heavier oil"),
)
ASK_FOR_THE_OIL_RECORD = Inspection(
    id="ask_for_the_oil_record",
    station=Station.OIL,
    says="ask which oil went in, how much, when, and who checked it last",
    steps=(
        "ask for cans, bills or log book; write the answers down in the person's own words",
        "grade, quantity, new filter or not; date and hours; additives or flush",
        "quantity added between changes, and when the level was last checked",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(
        OIL_GRADE_AS_MANUAL,
        OIL_GRADE_TOO_HEAVY,
        OIL_GRADE_TOO_THIN,
        OIL_OVERDUE,
        OIL_NOT_CHECKED_LONG,
        OIL_USED_FAST,
        NOT_REFILLED,
        TOO_MUCH_POURED_IN,
        findings.LEVEL_RISEN,
        ADDITIVE_OR_FLUSH_IN_OIL,
        THICKER_OIL_HELPED,
        behaviour.CHANGED_WITH_GRADE,
        direct_gauge.TOP_UP_CURES_FOR_A_WHILE,
    ),
    source=COMMON_PRACTICE,
    tools=("log book",),
    also=("oil history", "which oil", "oil log", "oil consumption record"),
)

LEVEL_FALLS_STANDING = Finding(
    id="level_falls_standing",
    station=Station.OIL,
    says="the level falls fast while the engine stands or between two short runs",
    asks="Does the level fall quickly, standing or between two short runs?",
    source=sources.ARMY_TM_304_LEAKAGE,
    denies="the level holds while standing",
    stage=Stage.KNOWN,
    normal="no change",
    background=RARE,
    also=("oil drops overnight", "loses oil standing", "level keeps dropping", "losing oil fast"),
)
WATCH_THE_LEVEL_STANDING = Inspection(
    id="watch_the_level_standing",
    station=Station.OIL,
    says="check whether the level holds while the engine stands",
    steps=("read the stick, slide a card under the engine", "wait an hour and read it again"),
    minutes=5,
    access=Access.OUTSIDE,
    in_place=True,
    reveals=(LEVEL_FALLS_STANDING,),
    source=COMMON_PRACTICE,
    tools=("clean card", "stick"),
    cautions=(Caution.HOT, Caution.WASTE),
    waits_minutes=60,
    also=("does the level drop overnight",),
)

DIPSTICK_NOT_ITS_OWN = Finding(
    id="dipstick_not_its_own",
    station=Station.OIL,
    says="dipstick, tube or sump belong to another engine, or the stick does not seat",
    asks="Dipstick, tube and sump from different engines, or stick not seating fully?",
    source=sources.NEWSPAPER_BRAKING_2005,
    denies="dipstick, tube and sump belong together",
    stage=Stage.OUTSIDE,
    normal="the parts listed for this engine, seated to the stop",
    background=OCCASIONAL,
    also=("aftermarket dipstick", "wrong dipstick tube", "dipstick from another car", "dip stick"),
)
COMPARE_STICK_AND_TUBE = Inspection(
    id="compare_stick_and_tube",
    station=Station.OIL,
    says="check that dipstick, tube and sump belong together",
    steps=(
        "look for part numbers, a bent tube, a stick that stops short or goes too deep",
        "ask whether sump, tube or stick was ever changed",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(DIPSTICK_NOT_ITS_OWN, findings.LEVEL_READ_WRONGLY),
    source=idea_from(sources.NEWSPAPER_BRAKING_2005),
    tools=("parts list", "rule"),
    cautions=(Caution.HOT,),
    also=("check dipstick", "right dipstick"),
)
