"""What is asked of everybody, as far as it is not known yet (common practice)."""

from dataclasses import replace

from knowledge.questions.shapes import Choice, Menu

ZERO, KNOCK = "gauge_reads_zero", "bearing_knock"
SAFETY = Menu(
    id="safety",
    asks="Safety first: when it runs, does the gauge read zero, or does it knock?",
    why=(
        "With no pressure or a knock, every further minute of running ruins bearings. A knock is a "
        "dull, heavy beat low in the engine, like a hammer on wood, faster as the engine is revved."
    ),
    choices=(
        Choice("zero", (ZERO,), also=("no pressure", "nothing on the gauge")),
        Choice("a knock", (KNOCK,)),
        Choice("both", (ZERO, KNOCK)),
        Choice("neither", also=("no to both", "not either")),
    ),
)
#: as far as the story has not answered the other part
SAFETY_ZERO = Menu(
    id="safety",
    asks="Safety first: when it runs, does the gauge read zero?",
    why=SAFETY.why,
    choices=(Choice("it reads zero", (ZERO,)), Choice("it shows pressure")),
)
SAFETY_KNOCK = Menu(
    id="safety",
    asks="Safety first: when it runs, does it knock?",
    why=SAFETY.why,
    choices=(Choice("it knocks", (KNOCK,)), Choice("no knock")),
)
#: said of a level between the marks and of one below them
_BELOW_FULL = ("below full", "below the full line", "under full", "under the full line")
LEVEL = Menu(
    id="level",
    asks="How high does the oil stand on the dipstick?",
    why="Too little or too much oil is the commonest fault and the cheapest to rule out.",
    choices=(
        Choice(
            "between the marks",
            ("level_correct",),
            ("dipstick_low", "dipstick_dry", "level_high"),
            (
                "full",
                "on the full line",
                "at the mark",
                "at the max",
                "bang on",
                "spot on",
                "fine",
                "ok",
                "good",
                "right",
                "correct",
                "as it should be",
                "normal",
                "halfway",
                "half way",
                *_BELOW_FULL,
            ),
        ),
        Choice(
            "below the add mark",
            ("dipstick_low",),
            ("level_correct", "level_high"),
            (
                "low",
                "below the low mark",
                "below the minimum",
                "under the mark",
                "under the line",
                *_BELOW_FULL,
            ),
        ),
        Choice(
            "none on the stick",
            ("dipstick_dry",),
            ("level_correct", "level_high"),
            ("dry", "empty", "nothing on it", "no oil", "none"),
            beyond=("dipstick_low",),
        ),
        Choice(
            "well over the full mark",
            ("level_high",),
            ("level_correct", "dipstick_low", "dipstick_dry"),
            (
                "over full",
                "over the full line",
                "overfull",
                "above the full line",
                "above full",
                "too high",
                "too much",
                "high",
            ),
        ),
    ),
)
#: the same of an engine that keeps its oil in a tank
LEVEL_IN_TANK = Menu(
    id="level",
    asks="How high does the oil stand in the tank, straight after a run?",
    why="A dry sump is read hot, at once: cold it may have drained down into the crankcase.",
    choices=(
        replace(LEVEL.choices[0], says="at its mark"),
        replace(LEVEL.choices[1], says="below its mark"),
        replace(LEVEL.choices[2], says="none to be seen in the tank"),
        replace(LEVEL.choices[3], says="well over its mark"),
    ),
)
GRADE = Menu(
    id="grade",
    asks="Is the oil in it of the grade the manual asks for?",
    why="Oil one grade too thin lowers the hot pressure; too heavy oil raises the cold one.",
    choices=(
        Choice(
            "as the manual says",
            ("oil_grade_as_manual",),
            ("oil_grade_too_thin", "oil_grade_too_heavy"),
            (
                "the book says",
                "as in the handbook",
                "as specified",
                "the right grade",
                "correct",
                "what it should be",
                "as it should be",
                "the recommended grade",
                "standard",
            ),
            plain="yes",
        ),
        Choice(
            "thinner",
            ("oil_grade_too_thin",),
            ("oil_grade_as_manual", "oil_grade_too_heavy"),
            ("too thin", "lighter", "thinner than the book says", "thinner than the manual says"),
        ),
        Choice(
            "heavier",
            ("oil_grade_too_heavy",),
            ("oil_grade_as_manual", "oil_grade_too_thin"),
            ("thicker", "too thick", "thicker than the book says", "heavier than the book says"),
        ),
    ),
)
GAUGE = Menu(
    id="gauge",
    asks="What shows the pressure?",
    why="A sender or wire can be wrong while the pressure is right; a direct gauge seldom is.",
    choices=(
        Choice(
            "electric gauge",
            ("electric_gauge",),
            ("direct_gauge", "lamp_only"),
            ("electric", "electrical", "gauge with a sender", "by wire"),
        ),
        Choice(
            "gauge with an oil line",
            ("direct_gauge",),
            ("electric_gauge", "lamp_only"),
            ("mechanical", "capillary", "oil line", "direct", "oil pipe", "copper pipe"),
        ),
        Choice(
            "lamp or buzzer only",
            ("lamp_only",),
            ("electric_gauge", "direct_gauge"),
            ("light", "just a light", "buzzer", "no gauge", "no gauge only a light"),
        ),
    ),
)
SINCE = Menu(
    id="since",
    asks="What happened just before it began?",
    why="Suspect first what was done just before it began.",
    choices=(
        Choice("a rebuild", ("freshly_rebuilt",), also=("rebuilt", "overhaul", "overhauled")),
        Choice(
            "an oil or filter change",
            ("oil_just_changed", "changed_with_oil_change"),
            also=("oil change", "oil changed", "filter change", "changed the filter", "a service"),
        ),
        Choice("work on gauge or sender", ("instrument_just_changed",)),
        Choice("work on the oil pump", ("changed_with_new_pump",)),
        Choice(
            "sump, strainer or pickup taken off",
            ("sump_was_off",),
            also=("sump off", "pan off", "strainer cleaned"),
        ),
        Choice("other work on the engine", ("just_worked_on", "changed_after_other_work")),
        Choice("months or years of standing", ("stood_long",), also=("laid up", "stood for years")),
        Choice("a blow under the sump", ("changed_after_knock",), also=("hit the sump",)),
        Choice(
            "none of these",
            also=("nothing", "no work", "not after anything", "gradually", "slowly", "bit by bit"),
        ),
    ),
)
NOISE = Menu(
    id="noise",
    asks="Does it make a noise?",
    why="A dry top end ticks, a failing bearing knocks, a pump short of oil whines.",
    choices=(
        Choice("ticking up top", ("lifters_clatter",), also=("ticking", "tapping", "clatter")),
        Choice("knock low down", (KNOCK,), also=("knock", "rumble", "thud")),
        Choice("whine at the pump", ("pump_noise",), also=("whine", "pump")),
        Choice("rattle at the timing cover", ("timing_cover_rattles",), also=("timing rattle",)),
        Choice("grinding", ("grinding_noise",)),
        Choice(
            "no noise", also=("none", "quiet", "silent", "sounds fine", "sounds sweet", "smooth")
        ),
    ),
    many=True,
)
#: asked where two instruments of one engine disagree, or two stations were named
STATIONS = Menu(
    id="stations",
    asks="If two stations have an oil gauge, do both hang on one sender?",
    why="Two gauges on one sender need a sender of half the ohms; else both read wrong.",
    choices=(
        Choice(
            "both on one sender",
            ("one_sender_for_two_gauges",),
            also=("one sender", "the same sender", "shared sender"),
            plain="yes",
        ),
        Choice(
            "two stations, each with its own sender",
            ("gauges_at_two_stations",),
            ("one_sender_for_two_gauges",),
            ("own sender", "two senders", "each its own"),
            plain="no",
        ),
        Choice("there is only one oil gauge", also=("one gauge", "only one")),
    ),
    changes=False,
)
#: what only work of a certain kind can have left out: asked where it was done
PLUGS = Menu(
    id="plugs",
    asks="After the rebuild, did every gallery and crank plug go back in?",
    why="The oil runs out at a plug left out, and pressure is low from the first start.",
    choices=(
        Choice(
            "all counted back in",
            ("plugs_counted_in",),
            ("plugs_not_counted", "plugs_fitted_by_others"),
            ("all of them", "every one", "counted them", "yes all"),
            plain="yes",
        ),
        Choice(
            "nobody counted them",
            ("plugs_not_counted",),
            ("plugs_counted_in",),
            ("not counted", "not checked"),
        ),
        Choice(
            "somebody else was to fit them, nobody checked",
            ("plugs_fitted_by_others",),
            ("plugs_counted_in",),
            ("the machine shop", "the shop did", "somebody else"),
        ),
        Choice("they were never taken out", also=("never out", "left in")),
    ),
    changes=False,
)
SEALS = Menu(
    id="seals",
    asks="Were the seals new when the sump, strainer or pickup went back?",
    why="An old seal on the suction side lets the pump draw air, most of all with hot oil.",
    choices=(
        Choice(
            "an old seal or gasket went back in",
            ("old_seals_reused",),
            also=("reused", "old ones", "the same ones"),
            plain="no",
        ),
        Choice("all new", also=("new ones", "new seals"), plain="yes"),
    ),
)
#: of diesels and turbocharged engines, where work inside may have left one out
JETS = Menu(
    id="jets",
    asks="Has the engine piston cooling jets (oil squirters under the pistons)?",
    why="One left out or stuck open after work takes the oil that the bearings need at idle.",
    choices=(
        Choice("yes", ("piston_jets",), also=("it has", "oil squirters", "cooling jets")),
        Choice("no", also=("none", "it has none", "no jets")),
    ),
    changes=False,
)
#: noises said in other words: the question is answered then
HEARD = (
    *("deep_knock_under_load", "rattle_of_unknown_place", "squeaking_noise", "turbo_shrieks"),
    *("clatters_only_at_high_revs", "noise_with_pressure_loss"),
)
#: besides the safety question and the readings, in this order
ESSENTIALS = (LEVEL, GAUGE, STATIONS, SINCE, PLUGS, SEALS, JETS, NOISE, GRADE)
