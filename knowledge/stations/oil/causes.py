"""Root causes at the oil, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.oil import (
    findings,
    findings_analysis,
    findings_drained,
    findings_heat,
    findings_record,
)

OIL_LEVEL_LOW = Cause(
    id="oil_level_low",
    station=Station.OIL,
    says="too little oil in the sump: burnt off, under-filled or not topped up",
    mechanism=(
        "the pickup comes out of the oil in bends and at speed, and the pump draws air: flicker "
        "first, then steadily low"
    ),
    rate=Rate.VERY_COMMON,
    shifts=Shifts(high_mileage=UP, oil_just_changed=UP, stood_long=UP, raced_or_heeled=UP),
    remedy="photograph the stick, take a sample, fill to the mark, then find where the oil went",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="oil full of air, lifter noise, wiped rod bearings",
    also=("low on oil", "ran out of oil", "burns oil", "forgot to fill it", "underfilled"),
)
BURNT_OFF_OR_NEVER_FILLED = LinkGroup(
    id="burnt_off_or_never_filled",
    station=Station.OIL,
    says="Oil burnt off, never refilled or never checked: the stick shows it before anything else.",
    note="Misleads when the level was read on a slope, or the oil has gone through a leak instead.",
    parent=OIL_LEVEL_LOW,
    effects={
        conditions.OIL_SHORT: (ALWAYS, sources.ARMY_TM_347_CHART_1973),
        findings.DIPSTICK_LOW: (ALWAYS, COMMON_PRACTICE),
        findings_record.OIL_USED_FAST: (OFTEN, COMMON_PRACTICE),
        findings_record.OIL_NOT_CHECKED_LONG: (OFTEN, COMMON_PRACTICE),
        findings_record.NOT_REFILLED: (SOMETIMES, COMMON_PRACTICE),
        findings_heat.BLUE_SMOKE: (OFTEN, COMMON_PRACTICE),
        findings_heat.BLOW_BY_HIGH: (SOMETIMES, COMMON_PRACTICE),
        findings_heat.OIL_IN_TURBO_OUTLETS: (SELDOM, JUDGEMENT),
        behaviour.CHANGED_WITH_OIL_CHANGE: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings.DIPSTICK_LOW),
        example(
            patterns.NEEDLE_FLICKERS, findings.DIPSTICK_LOW, findings_record.OIL_NOT_CHECKED_LONG
        ),
        example(findings_record.OIL_USED_FAST, findings_heat.BLUE_SMOKE),
    ],
    non_matches=[
        example(patterns.GAUGE_READS_LOW, lacks=[findings.DIPSTICK_LOW]),
        example(
            patterns.NEEDLE_FLICKERS, lacks=[findings.DIPSTICK_LOW, findings_record.OIL_USED_FAST]
        ),
    ],
)
CHROMIUM_IS_RING_WEAR = LinkGroup(
    id="chromium_is_ring_wear",
    station=Station.OIL,
    says="Chromium is ring wear: it shows where oil is burnt, not where pressure is lost.",
    parent=OIL_LEVEL_LOW,
    effects={
        findings_analysis.CHROMIUM_HIGH: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings_analysis.CHROMIUM_HIGH)],
    non_matches=[example(findings_analysis.METALS_NORMAL, lacks=[findings_analysis.CHROMIUM_HIGH])],
)

OIL_LEVEL_HIGH = Cause(
    id="oil_level_high",
    station=Station.OIL,
    says="the engine was overfilled with oil",
    mechanism=(
        "the crankshaft whips the oil and the pump draws foam: the needle wavers and falls at "
        "high revs"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP, oil_just_changed=STRONG_UP, raced_or_heeled=UP),
    remedy="drain to the mark and find the reason: wrong quantity, fuel, water or wrong stick",
    source=sources.MARINE_OWNERS_MANUAL_2008,
    follows="leaking seals, foam, lifters and bearings short of oil",
    also=("overfilled", "too much oil", "poured in too much", "over the full mark"),
)
CRANK_BEATS_THE_OIL_TO_FOAM = LinkGroup(
    id="crank_beats_the_oil_to_foam",
    station=Station.OIL,
    says="With oil well over the mark, the crankshaft beats it to foam at high revs.",
    note="Misleads when it stands only a little over the mark: few engines mind that.",
    parent=OIL_LEVEL_HIGH,
    effects={
        conditions.OIL_AERATED: (MOSTLY, sources.MARINE_OWNERS_MANUAL_2008),
        findings.LEVEL_HIGH: (MOSTLY, COMMON_PRACTICE),
        findings_drained.DRAINED_VOLUME_HIGH: (ALWAYS, COMMON_PRACTICE),
        findings_record.TOO_MUCH_POURED_IN: (SOMETIMES, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (OFTEN, COMMON_PRACTICE),
        findings_heat.BLUE_SMOKE: (SOMETIMES, COMMON_PRACTICE),
        findings_heat.BLOW_BY_HIGH: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(findings.LEVEL_HIGH),
        example(
            patterns.NEEDLE_FLICKERS,
            findings_heat.FOAM_ON_STICK,
            findings_record.TOO_MUCH_POURED_IN,
        ),
    ],
    non_matches=[example(patterns.NEEDLE_FLICKERS, lacks=[findings.LEVEL_HIGH])],
)

DIPSTICK_WRONG = Cause(
    id="dipstick_wrong",
    station=Station.OIL,
    says="wrong dipstick reading: wrong stick, tube or sump, or read the wrong way",
    mechanism=(
        "the true level is not where the mark says, so the engine is low on oil or overfilled"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, oil_just_changed=UP, raced_or_heeled=UP),
    remedy="fill a measured quantity, mark the stick again, read it level and rested",
    source=sources.NEWSPAPER_BRAKING_2005,
    follows="low oil or foam again and again, although the stick reads right",
    also=("wrong dipstick", "dipstick out of calibration", "bad dipstick marks", "false oil level"),
)
STICK_THAT_LIES = LinkGroup(
    id="stick_that_lies",
    station=Station.OIL,
    says="A wrong stick, or one read on a slope, leaves an engine low or overfilled at its mark.",
    note=(
        "The stick reads right all the time, so the shortage shows in bends, or when you drain "
        "into a jug."
    ),
    parent=DIPSTICK_WRONG,
    effects={
        conditions.PICKUP_UNCOVERED: (OFTEN, sources.NEWSPAPER_BRAKING_2005),
        conditions.OIL_AERATED: (SOMETIMES, COMMON_PRACTICE),
        conditions.OIL_SHORT: (SOMETIMES, sources.NEWSPAPER_BRAKING_2005),
        findings.LEVEL_HIGH: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(findings_drained.STICK_MARKS_WRONG),
        example(findings_record.DIPSTICK_NOT_ITS_OWN, patterns.NEEDLE_FLICKERS),
    ],
    non_matches=[
        example(
            patterns.NEEDLE_FLICKERS,
            lacks=[findings_drained.STICK_MARKS_WRONG, findings_record.DIPSTICK_NOT_ITS_OWN],
        )
    ],
)
MEASURED_FILL_GIVES_THE_STICK_AWAY = LinkGroup(
    id="measured_fill_gives_the_stick_away",
    station=Station.OIL,
    says="A measured fill, or the quantity drained, shows that a stick is wrong.",
    parent=DIPSTICK_WRONG,
    effects={
        findings_drained.STICK_MARKS_WRONG: (MOSTLY, sources.STICK_VERIFICATION_2002),
        findings_record.DIPSTICK_NOT_ITS_OWN: (OFTEN, COMMON_PRACTICE),
        findings.LEVEL_READ_WRONGLY: (OFTEN, sources.MARINE_SERVICE_MANUAL_1999),
        findings_drained.DRAINED_VOLUME_LOW: (OFTEN, COMMON_PRACTICE),
        findings_drained.DRAINED_VOLUME_HIGH: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings_drained.DRAINED_VOLUME_LOW, findings_drained.STICK_MARKS_WRONG),
        example(findings_drained.STICK_MARKS_WRONG),
    ],
    non_matches=[
        example(
            findings_drained.DRAINED_VOLUME_LOW,
            lacks=[findings_drained.STICK_MARKS_WRONG, findings_record.DIPSTICK_NOT_ITS_OWN],
        )
    ],
)

VISCOSITY_TOO_LOW = Cause(
    id="viscosity_too_low",
    station=Station.OIL,
    says="oil of too thin a grade, or a multigrade sheared thin",
    mechanism="thin oil leaks through every clearance: near normal cold, low hot at all speeds",
    rate=Rate.COMMON,
    shifts=Shifts(
        high_mileage=UP, freshly_rebuilt=UP, oil_just_changed=STRONG_UP, raced_or_heeled=UP
    ),
    remedy="change to the grade the maker gives for this climate",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="thin oil films and faster wear",
    also=(
        "wrong oil",
        "oil too thin",
        "wrong oil grade",
        "0W-20 instead of 10W-40",
        "wrong viscosity",
    ),
)
THIN_WITHOUT_FUEL_IS_THE_WRONG_OIL = LinkGroup(
    id="thin_without_fuel_is_the_wrong_oil",
    station=Station.OIL,
    says="Thin without fuel in it: the wrong grade, or a multigrade sheared down.",
    parent=VISCOSITY_TOO_LOW,
    effects={
        findings_analysis.LAB_VISCOSITY_LOW: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[example(findings_analysis.LAB_VISCOSITY_LOW)],
    non_matches=[
        example(findings_analysis.LAB_FUEL_HIGH, lacks=[findings_analysis.LAB_VISCOSITY_LOW])
    ],
)
THINNER_THAN_THE_MANUAL_SAYS = LinkGroup(
    id="thinner_than_the_manual_says",
    station=Station.OIL,
    says="Oil thinner than the manual says is low hot and near normal cold, since the oil change.",
    parent=VISCOSITY_TOO_LOW,
    effects={
        conditions.OIL_THIN: (ALWAYS, sources.ARMY_TM_347_CHART_1973),
        findings_record.OIL_GRADE_TOO_THIN: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_GRADE: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (OFTEN, COMMON_PRACTICE),
        findings_record.ADDITIVE_OR_FLUSH_IN_OIL: (SELDOM, JUDGEMENT),
        findings_heat.OIL_TEMPERATURE_HIGH: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(findings_record.OIL_GRADE_TOO_THIN),
        example(
            patterns_speed.GOOD_COLD_LOW_HOT,
            behaviour.CHANGED_WITH_GRADE,
            findings.OIL_THIN_ON_STICK,
        ),
    ],
    non_matches=[
        example(
            patterns_speed.GOOD_COLD_LOW_HOT,
            lacks=[findings_record.OIL_GRADE_TOO_THIN, behaviour.CHANGED_WITH_GRADE],
        )
    ],
)

VISCOSITY_TOO_HIGH = Cause(
    id="viscosity_too_high",
    station=Station.OIL,
    says="oil of too thick a grade, or thickened by soot, age or cold",
    mechanism=(
        "pressure reads high and much oil goes over the relief valve; a small pickup may starve "
        "when cold, and oil reaches far bearings late"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, oil_just_changed=UP, stood_long=UP),
    remedy="change to the right grade; change overdue oil",
    source=sources.DIESEL_TESTING_MANUAL,
    follows="oil bypassing the filter, a dry top end, heavy load on the pump drive",
    also=("oil too thick", "straight 50 in winter", "heavy oil", "oil like treacle"),
)
THICKER_THAN_THE_MANUAL_SAYS = LinkGroup(
    id="thicker_than_the_manual_says",
    station=Station.OIL,
    says=(
        "Oil thicker than the manual says reads high, mostly when cold, and reaches far parts late."
    ),
    parent=VISCOSITY_TOO_HIGH,
    effects={
        conditions.OIL_THICK: (ALWAYS, sources.DIESEL_WORKSHOP_2015),
        findings_record.OIL_GRADE_TOO_HEAVY: (MOSTLY, COMMON_PRACTICE),
        findings_heat.OIL_VERY_COLD: (SOMETIMES, JUDGEMENT),
        behaviour.CHANGED_WITH_GRADE: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_HIGH, findings_record.OIL_GRADE_TOO_HEAVY),
        example(findings.OIL_THICK_ON_STICK, findings_heat.OIL_VERY_COLD),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings_record.OIL_GRADE_TOO_HEAVY, findings.OIL_THICK_ON_STICK],
        )
    ],
)
