"""What is asked of everybody, as far as it is not known yet (common practice)."""

from knowledge.questions.shapes import Choice, Menu

ZERO, KNOCK = "gauge_reads_zero", "bearing_knock"
SAFETY = Menu(
    id="safety",
    asks="Safety first: when it runs, does the gauge read zero, or does it knock?",
    why="With no pressure or a knock, every further minute of running ruins bearings.",
    choices=(
        Choice("zero", (ZERO,)),
        Choice("a knock", (KNOCK,)),
        Choice("both", (ZERO, KNOCK)),
        Choice("neither"),
    ),
)
LEVEL = Menu(
    id="level",
    asks="Oil on the dipstick, on level ground?",
    why="Too little or too much oil is the commonest fault and the cheapest to rule out.",
    choices=(
        Choice(
            "between the marks",
            ("level_correct",),
            ("dipstick_low", "dipstick_dry", "level_high"),
        ),
        Choice("below the add mark", ("dipstick_low",), ("level_correct", "level_high")),
        Choice("none on the stick", ("dipstick_dry",), ("level_correct", "level_high")),
        Choice(
            "well over the full mark",
            ("level_high",),
            ("level_correct", "dipstick_low", "dipstick_dry"),
        ),
    ),
)
GRADE = Menu(
    id="grade",
    asks="Oil grade in it?",
    why="Oil one grade too thin lowers the hot pressure; too heavy oil raises the cold one.",
    choices=(
        Choice(
            "as the manual says",
            ("oil_grade_as_manual",),
            ("oil_grade_too_thin", "oil_grade_too_heavy"),
        ),
        Choice("thinner", ("oil_grade_too_thin",), ("oil_grade_as_manual", "oil_grade_too_heavy")),
        Choice("heavier", ("oil_grade_too_heavy",), ("oil_grade_as_manual", "oil_grade_too_thin")),
    ),
)
GAUGE = Menu(
    id="gauge",
    asks="What shows the pressure?",
    why="A sender or wire can be wrong while the pressure is right; a direct gauge seldom is.",
    choices=(
        Choice("electric gauge", ("electric_gauge",), ("direct_gauge", "lamp_only")),
        Choice("gauge with an oil line", ("direct_gauge",), ("electric_gauge", "lamp_only")),
        Choice("lamp or buzzer only", ("lamp_only",), ("electric_gauge", "direct_gauge")),
    ),
)
SINCE = Menu(
    id="since",
    asks="Since when, or after what?",
    why="Suspect first what was done just before it began.",
    choices=(
        Choice("a rebuild", ("freshly_rebuilt",)),
        Choice("an oil or filter change", ("oil_just_changed", "changed_with_oil_change")),
        Choice("work on gauge or sender", ("instrument_just_changed",)),
        Choice("work on the oil pump", ("changed_with_new_pump",)),
        Choice("other work on the engine", ("just_worked_on", "changed_after_other_work")),
        Choice("a year or more of standing", ("stood_long",)),
        Choice("a blow under the sump", ("changed_after_knock",)),
        Choice("none of these"),
    ),
)
NOISE = Menu(
    id="noise",
    asks="Noise?",
    why="A dry top end ticks, a failing bearing knocks, a pump short of oil whines.",
    choices=(
        Choice("none"),
        Choice("ticking up top", ("lifters_clatter",)),
        Choice("knock low down", (KNOCK,)),
        Choice("whine at the pump", ("pump_noise",)),
        Choice("rattle at the timing cover", ("timing_cover_rattles",)),
        Choice("grinding", ("grinding_noise",)),
    ),
    many=True,
)
#: besides the safety question and the readings, in this order
ESSENTIALS = (LEVEL, GAUGE, SINCE, NOISE, GRADE)
