"""Rules on facts about the oil: what follows, what cannot both be right."""

from knowledge.alarm import Contradiction
from knowledge.engines import features
from knowledge.model import Station
from knowledge.rule_api import Conclusions, Known, example, is_absent, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.oil import (
    findings,
    findings_analysis,
    findings_drained,
    findings_heat,
    findings_record,
)

rule = rules_of(Station.OIL)


@rule(
    source=JUDGEMENT,
    matches=[example(findings_analysis.METALS_NORMAL)],
    non_matches=[
        example(findings_analysis.IRON_HIGH),
        example(lacks=[findings_analysis.METALS_NORMAL]),
    ],
)
def clean_sheet_clears_the_metals(known: Known) -> Conclusions:
    """A clean laboratory sheet clears every wear metal; it does not clear the filter.

    Misleads when the oil is fresh, or the flakes are too big to be counted.
    """
    if known.has(findings_analysis.METALS_NORMAL):
        for metal in (
            findings_analysis.IRON_HIGH,
            findings_analysis.COPPER_HIGH_ALONE,
            findings_analysis.COPPER_AND_LEAD_HIGH,
            findings_analysis.LEAD_HIGH_ALONE,
            findings_analysis.TIN_HIGH,
            findings_analysis.ALUMINIUM_HIGH,
            findings_analysis.CHROMIUM_HIGH,
        ):
            yield is_absent(metal, sure=0.85)


@rule(
    source=JUDGEMENT,
    matches=[
        example(findings_analysis.METALS_NORMAL, findings_analysis.COPPER_AND_LEAD_HIGH),
        example(findings_analysis.LAB_VISCOSITY_LOW, findings_analysis.LAB_VISCOSITY_HIGH),
    ],
    non_matches=[
        example(findings_analysis.METALS_NORMAL, lacks=[findings_analysis.COPPER_AND_LEAD_HIGH]),
        example(findings_analysis.LAB_VISCOSITY_LOW, lacks=[findings_analysis.LAB_VISCOSITY_HIGH]),
    ],
)
def sheet_that_contradicts_itself(known: Known) -> Conclusions:
    """A sheet cannot show metals normal and high, or oil both too thin and too thick."""
    if known.has(findings_analysis.METALS_NORMAL) and known.has(
        findings_analysis.COPPER_AND_LEAD_HIGH
    ):
        yield Contradiction(
            (findings_analysis.METALS_NORMAL, findings_analysis.COPPER_AND_LEAD_HIGH),
            "the metals cannot be normal while copper and lead are high: read the sheet again",
            findings_analysis.METALS_NORMAL,
        )
    if known.has(findings_analysis.LAB_VISCOSITY_LOW) and known.has(
        findings_analysis.LAB_VISCOSITY_HIGH
    ):
        yield Contradiction(
            (findings_analysis.LAB_VISCOSITY_LOW, findings_analysis.LAB_VISCOSITY_HIGH),
            "one sample cannot be too thin and too thick: ask which new oil it was compared with",
            findings_analysis.LAB_VISCOSITY_LOW,
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings.LEVEL_CORRECT)],
    non_matches=[example(lacks=[findings.LEVEL_CORRECT]), example(findings.LEVEL_SLIGHTLY_HIGH)],
)
def between_the_marks_is_neither_low_nor_high(known: Known) -> Conclusions:
    """A level between the marks, read properly, is neither low nor high.

    Misleads when the stick is not its own, or was read on a slope.
    """
    if known.has(findings.LEVEL_CORRECT):
        yield is_absent(findings.DIPSTICK_LOW, sure=0.95)
        yield is_absent(findings.DIPSTICK_DRY, sure=0.97)
        yield is_absent(findings.LEVEL_HIGH, sure=0.95)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.LEVEL_HIGH), example(findings.LEVEL_SLIGHTLY_HIGH)],
    non_matches=[example(lacks=[findings.LEVEL_HIGH]), example(findings.LEVEL_CORRECT)],
)
def above_the_mark_is_not_low(known: Known) -> Conclusions:
    """A level above the full mark is not low."""
    if known.has(findings.LEVEL_HIGH) or known.has(findings.LEVEL_SLIGHTLY_HIGH):
        yield is_absent(findings.DIPSTICK_LOW, sure=0.95)
        yield is_absent(findings.DIPSTICK_DRY, sure=0.97)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.DIPSTICK_LOW), example(findings.DIPSTICK_DRY)],
    non_matches=[example(lacks=[findings.DIPSTICK_LOW]), example(findings.LEVEL_CORRECT)],
)
def below_the_mark_is_not_high(known: Known) -> Conclusions:
    """A level below the add mark is not high, and it has not risen."""
    if known.has(findings.DIPSTICK_LOW) or known.has(findings.DIPSTICK_DRY):
        yield is_absent(findings.LEVEL_HIGH, sure=0.97)
        yield is_absent(findings.LEVEL_SLIGHTLY_HIGH, sure=0.97)
        yield is_absent(findings.LEVEL_RISEN, sure=0.95)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.DIPSTICK_DRY)],
    non_matches=[example(findings.DIPSTICK_LOW), example(lacks=[findings.DIPSTICK_DRY])],
)
def dry_is_below_the_mark(known: Known) -> Conclusions:
    """A dry dipstick means a level below the add mark."""
    if known.has(findings.DIPSTICK_DRY):
        yield is_present(findings.DIPSTICK_LOW)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[findings.DIPSTICK_LOW])],
    non_matches=[example(findings.DIPSTICK_LOW), example(findings.DIPSTICK_DRY)],
)
def not_low_is_not_dry(known: Known) -> Conclusions:
    """A level that is not low is not a dry stick either."""
    if known.lacks(findings.DIPSTICK_LOW):
        yield is_absent(findings.DIPSTICK_DRY, sure=0.97)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.OIL_LOOKS_CLEAN)],
    non_matches=[example(lacks=[findings.OIL_LOOKS_CLEAN]), example(findings.LEVEL_CORRECT)],
)
def clean_oil_holds_no_milk_or_metal(known: Known) -> Conclusions:
    """Oil that is clean to eye and finger is neither milky nor gritty, and does not glitter.

    Misleads straight after an oil change.
    """
    if known.has(findings.OIL_LOOKS_CLEAN):
        yield is_absent(findings.OIL_MILKY, sure=0.95)
        yield is_absent(findings.OIL_BLACK_AND_GRITTY, sure=0.95)
        yield is_absent(findings.GLITTER_IN_OIL, sure=0.8)
        yield is_absent(findings.SLUDGE_SEEN, sure=0.7)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_record.OIL_GRADE_AS_MANUAL)],
    non_matches=[
        example(lacks=[findings_record.OIL_GRADE_AS_MANUAL]),
        example(findings_record.OIL_GRADE_TOO_THIN),
    ],
)
def right_grade_is_neither_thin_nor_heavy(known: Known) -> Conclusions:
    """Oil of the manual's grade is neither too thin nor too thick."""
    if known.has(findings_record.OIL_GRADE_AS_MANUAL):
        yield is_absent(findings_record.OIL_GRADE_TOO_THIN, sure=0.9)
        yield is_absent(findings_record.OIL_GRADE_TOO_HEAVY, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(lacks=[features.TURBOCHARGED]),
        example(lacks=[features.OIL_COOLER, features.WATER_COOLED]),
    ],
    non_matches=[
        example(features.TURBOCHARGED),
        example(features.OIL_COOLER, lacks=[features.WATER_COOLED]),
    ],
)
def parts_that_are_not_there(known: Known) -> Conclusions:
    """A part the engine does not have cannot be dirty."""
    if known.lacks(features.TURBOCHARGED):
        yield is_absent(findings_heat.OIL_IN_TURBO_OUTLETS)
    if known.lacks(features.OIL_COOLER) and known.lacks(features.WATER_COOLED):
        yield is_absent(findings_heat.COOLER_FACE_BLOCKED)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings.LEVEL_CORRECT, findings_drained.DRAINED_VOLUME_LOW),
        example(findings.LEVEL_CORRECT, findings_drained.DRAINED_VOLUME_HIGH),
    ],
    non_matches=[
        example(findings.DIPSTICK_LOW, findings_drained.DRAINED_VOLUME_LOW),
        example(
            findings.LEVEL_CORRECT,
            lacks=[findings_drained.DRAINED_VOLUME_LOW, findings_drained.DRAINED_VOLUME_HIGH],
        ),
    ],
)
def jug_against_stick(known: Known) -> Conclusions:
    """If stick and drained quantity disagree, believe the jug and check the stick."""
    for jug in (findings_drained.DRAINED_VOLUME_LOW, findings_drained.DRAINED_VOLUME_HIGH):
        if known.has(findings.LEVEL_CORRECT) and known.has(jug):
            yield Contradiction(
                (findings.LEVEL_CORRECT, jug),
                "the stick reads right but the quantity drained does not: fill a measured quantity and "
                "see where the stick reads",
                findings_drained.STICK_MARKS_WRONG,
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_record.OIL_GRADE_TOO_THIN, findings_record.OIL_GRADE_TOO_HEAVY)],
    non_matches=[
        example(findings_record.OIL_GRADE_TOO_THIN),
        example(findings_record.OIL_GRADE_AS_MANUAL),
    ],
)
def two_grades_in_one_sump(known: Known) -> Conclusions:
    """One fill cannot be both too thin and too thick a grade: look at the can."""
    if known.has(findings_record.OIL_GRADE_TOO_THIN) and known.has(
        findings_record.OIL_GRADE_TOO_HEAVY
    ):
        yield Contradiction(
            (findings_record.OIL_GRADE_TOO_THIN, findings_record.OIL_GRADE_TOO_HEAVY),
            "one fill cannot be both too thin and too thick a grade: find the can or the bill",
            findings_record.OIL_GRADE_AS_MANUAL,
        )
