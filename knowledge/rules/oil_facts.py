"""What one fact about the oil settles about another, and what cannot both be right."""

from knowledge.engines.features import (
    OIL_COOLER,
    TURBOCHARGED,
    WATER_COOLED,
)
from knowledge.findings.oil import (
    DIPSTICK_DRY,
    DIPSTICK_LOW,
    DRAINED_VOLUME_HIGH,
    DRAINED_VOLUME_LOW,
    LEVEL_CORRECT,
    LEVEL_HIGH,
    LEVEL_RISEN,
    LEVEL_SLIGHTLY_HIGH,
    OIL_GRADE_AS_MANUAL,
    OIL_GRADE_TOO_HEAVY,
    OIL_GRADE_TOO_THIN,
    STICK_MARKS_WRONG,
)
from knowledge.findings.oil_heat import (
    COOLER_FACE_BLOCKED,
    OIL_IN_TURBO_OUTLETS,
)
from knowledge.findings.oil_look import (
    GLITTER_IN_OIL,
    OIL_BLACK_AND_GRITTY,
    OIL_LOOKS_CLEAN,
    OIL_MILKY,
    SLUDGE_SEEN,
)
from knowledge.rulebook import (
    Conclusions,
    Contradiction,
    Known,
    case_of,
    is_absent,
    is_present,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB01, HB09, HPP
from knowledge.vocabulary import Station

rule = rules_of(Station.OIL)


@rule(
    source=HB09,
    catches=[case_of(LEVEL_CORRECT)],
    spares=[case_of(lacks=[LEVEL_CORRECT]), case_of(LEVEL_SLIGHTLY_HIGH)],
)
def between_the_marks_is_neither_low_nor_high(known: Known) -> Conclusions:
    """A level read rightly between the marks is neither low nor high.

    Misleads when the stick is not its own, or was read on a slope.
    """
    if known.has(LEVEL_CORRECT):
        yield is_absent(DIPSTICK_LOW, sure=0.95)
        yield is_absent(DIPSTICK_DRY, sure=0.97)
        yield is_absent(LEVEL_HIGH, sure=0.95)


@rule(
    source=HB09,
    catches=[case_of(LEVEL_HIGH), case_of(LEVEL_SLIGHTLY_HIGH)],
    spares=[case_of(lacks=[LEVEL_HIGH]), case_of(LEVEL_CORRECT)],
)
def above_the_mark_is_not_low(known: Known) -> Conclusions:
    """A level above the full mark is not a low one."""
    if known.has(LEVEL_HIGH) or known.has(LEVEL_SLIGHTLY_HIGH):
        yield is_absent(DIPSTICK_LOW, sure=0.95)
        yield is_absent(DIPSTICK_DRY, sure=0.97)


@rule(
    source=HB01,
    catches=[case_of(DIPSTICK_LOW), case_of(DIPSTICK_DRY)],
    spares=[case_of(lacks=[DIPSTICK_LOW]), case_of(LEVEL_CORRECT)],
)
def below_the_mark_is_not_high(known: Known) -> Conclusions:
    """A level below the add mark is not a high one, and it has not risen."""
    if known.has(DIPSTICK_LOW) or known.has(DIPSTICK_DRY):
        yield is_absent(LEVEL_HIGH, sure=0.97)
        yield is_absent(LEVEL_SLIGHTLY_HIGH, sure=0.97)
        yield is_absent(LEVEL_RISEN, sure=0.95)


@rule(
    source=CP,
    catches=[case_of(DIPSTICK_DRY)],
    spares=[case_of(DIPSTICK_LOW), case_of(lacks=[DIPSTICK_DRY])],
)
def dry_is_below_the_mark(known: Known) -> Conclusions:
    """A dry dipstick is below the add mark."""
    if known.has(DIPSTICK_DRY):
        yield is_present(DIPSTICK_LOW)


@rule(
    source=CP,
    catches=[case_of(lacks=[DIPSTICK_LOW])],
    spares=[case_of(DIPSTICK_LOW), case_of(DIPSTICK_DRY)],
)
def not_low_is_not_dry(known: Known) -> Conclusions:
    """A level that is not low is not dry either."""
    if known.lacks(DIPSTICK_LOW):
        yield is_absent(DIPSTICK_DRY, sure=0.97)


@rule(
    source=CP,
    catches=[case_of(OIL_LOOKS_CLEAN)],
    spares=[case_of(lacks=[OIL_LOOKS_CLEAN]), case_of(LEVEL_CORRECT)],
)
def clean_oil_holds_no_milk_or_metal(known: Known) -> Conclusions:
    """Oil that is clean to eye and finger is neither milky nor gritty, and does not glitter.

    Misleads straight after an oil change.
    """
    if known.has(OIL_LOOKS_CLEAN):
        yield is_absent(OIL_MILKY, sure=0.95)
        yield is_absent(OIL_BLACK_AND_GRITTY, sure=0.95)
        yield is_absent(GLITTER_IN_OIL, sure=0.8)
        yield is_absent(SLUDGE_SEEN, sure=0.7)


@rule(
    source=CP,
    catches=[case_of(OIL_GRADE_AS_MANUAL)],
    spares=[case_of(lacks=[OIL_GRADE_AS_MANUAL]), case_of(OIL_GRADE_TOO_THIN)],
)
def right_grade_is_neither_thin_nor_heavy(known: Known) -> Conclusions:
    """Oil of the manual's grade is neither too thin nor too heavy a grade."""
    if known.has(OIL_GRADE_AS_MANUAL):
        yield is_absent(OIL_GRADE_TOO_THIN, sure=0.9)
        yield is_absent(OIL_GRADE_TOO_HEAVY, sure=0.9)


@rule(
    source=CP,
    catches=[case_of(lacks=[TURBOCHARGED]), case_of(lacks=[OIL_COOLER, WATER_COOLED])],
    spares=[case_of(TURBOCHARGED), case_of(OIL_COOLER, lacks=[WATER_COOLED])],
)
def parts_that_are_not_there(known: Known) -> Conclusions:
    """What the engine has not got cannot be found dirty on it."""
    if known.lacks(TURBOCHARGED):
        yield is_absent(OIL_IN_TURBO_OUTLETS)
    if known.lacks(OIL_COOLER) and known.lacks(WATER_COOLED):
        yield is_absent(COOLER_FACE_BLOCKED)


# ------------------------------------------------------------------------ cannot both be right


@rule(
    source=HPP,
    catches=[
        case_of(LEVEL_CORRECT, DRAINED_VOLUME_LOW),
        case_of(LEVEL_CORRECT, DRAINED_VOLUME_HIGH),
    ],
    spares=[
        case_of(DIPSTICK_LOW, DRAINED_VOLUME_LOW),
        case_of(LEVEL_CORRECT, lacks=[DRAINED_VOLUME_LOW, DRAINED_VOLUME_HIGH]),
    ],
)
def jug_against_stick(known: Known) -> Conclusions:
    """The stick says right and the jug says otherwise: believe the jug and prove the stick."""
    for jug in (DRAINED_VOLUME_LOW, DRAINED_VOLUME_HIGH):
        if known.has(LEVEL_CORRECT) and known.has(jug):
            yield Contradiction(
                (LEVEL_CORRECT, jug),
                "the stick says right and the jug says otherwise: fill a measured quantity and see "
                "where the stick stands",
                STICK_MARKS_WRONG,
            )


@rule(
    source=CP,
    catches=[case_of(OIL_GRADE_TOO_THIN, OIL_GRADE_TOO_HEAVY)],
    spares=[case_of(OIL_GRADE_TOO_THIN), case_of(OIL_GRADE_AS_MANUAL)],
)
def two_grades_in_one_sump(known: Known) -> Conclusions:
    """One fill cannot be too thin and too heavy a grade: look at the tin."""
    if known.has(OIL_GRADE_TOO_THIN) and known.has(OIL_GRADE_TOO_HEAVY):
        yield Contradiction(
            (OIL_GRADE_TOO_THIN, OIL_GRADE_TOO_HEAVY),
            "one fill cannot be too thin and too heavy a grade: find the tin or the bill",
            OIL_GRADE_AS_MANUAL,
        )
