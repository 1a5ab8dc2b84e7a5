"""Related questions that are asked as one when they are worth asking (common practice)."""

from knowledge.questions.shapes import Choice, Menu

NONE = Choice("none of these")
COURSE = Menu(
    id="course",
    asks="How did it start?",
    why="A part that broke shows at once; wear takes months.",
    choices=(
        Choice("suddenly", ("fell_suddenly",)),
        Choice("bit by bit in one run", ("sank_while_running",)),
        Choice("slowly over months", ("declined_over_months",)),
        Choice("it has always been like this", ("long_unchanged",)),
        NONE,
    ),
)
SPEED = Menu(
    id="speed",
    asks="When is the pressure low?",
    why="Worn clearances show at hot idle, a stuck relief valve everywhere, starved suction at speed.",
    choices=(
        Choice("at hot idle, good at speed", ("low_hot_idle_good_speed",)),
        Choice("at all speeds, hot and cold", ("low_at_all_speeds",)),
        Choice("at high revs: it falls again as they rise", ("falls_as_revs_rise",)),
        Choice("always: it never rises above a low ceiling", ("capped_low",)),
        NONE,
    ),
)
HEAT = Menu(
    id="heat",
    asks="How does the pressure change as the engine gets hot?",
    why="Thin oil and worn clearances need heat to show.",
    choices=(
        Choice("good cold, low hot", ("good_cold_low_hot",)),
        Choice("low even cold", ("low_even_cold",)),
        Choice("sags over 5 to 60 minutes, back once cool", ("sags_as_oil_heats",)),
        NONE,
    ),
)
OCCASION = Menu(
    id="occasion",
    asks="What brings the trouble on?",
    why="What brings it on points to the place.",
    choices=(
        Choice("in bends, braking, on slopes", ("falls_in_a_manoeuvre",)),
        Choice("after some minutes of each run", ("goes_after_minutes",)),
        Choice(
            "fades at speed, back after a rest",
            ("fades_at_speed_back_after_rest",),
        ),
        Choice("only with the oil level down", ("low_only_when_level_low",)),
        Choice("in the wet", ("worse_in_the_wet",)),
        Choice("at random", ("no_pattern_to_it",)),
        NONE,
    ),
    many=True,
)
START = Menu(
    id="start",
    asks="How fast does the pressure come up after a start?",
    why="The time it takes shows whether oil stays in the pump and the filter.",
    choices=(
        Choice("3 s or more after a night, then right", ("slow_after_standing",)),
        Choice("10 s or more, or revs needed", ("ten_seconds_or_more",)),
        Choice("gone at the next start", ("gone_at_the_next_start",)),
        Choice("there at once"),
    ),
)
FLICKER = Menu(
    id="flicker",
    asks="When is the needle or lamp unsteady?",
    why="At hot idle it is near its limit; at high revs the pump draws air.",
    choices=(
        Choice("only at hot idle", ("flickers_only_at_hot_idle",)),
        Choice("only at high revs", ("flickers_only_at_speed",)),
        Choice("at all revs, worse as they rise", ("unsteadier_with_revs",)),
        NONE,
    ),
)
NEEDLE = Menu(
    id="needle",
    asks="How does the needle itself behave?",
    why="Oil pressure cannot jump at once or follow the lamps; bad wiring can.",
    choices=(
        Choice("jumps at once between values", ("needle_steps_at_once",)),
        Choice("moves with lamps, wipers, bumps", ("needle_follows_loads",)),
        Choice("stands at one value", ("needle_stuck_at_one_value",)),
        Choice("off zero with the engine stopped", ("needle_off_zero_at_rest",)),
        Choice("other gauges wrong too", ("other_gauges_also_wrong",)),
        NONE,
    ),
    many=True,
)
LEAKS = Menu(
    id="leaks",
    asks="Is there fresh oil on the outside of the engine?",
    why="You can see oil that is lost outside.",
    choices=(
        Choice("running down the engine", ("oil_seen_outside",)),
        Choice("a puddle below", ("oil_on_the_ground",)),
        Choice("in the bilge", ("oil_in_the_bilge",)),
        Choice("on bodywork or tyres", ("oil_on_bodywork",)),
        Choice("sprayed while running", ("oil_sprayed",)),
        Choice("no fresh oil outside"),
    ),
    many=True,
)
OIL_USE = Menu(
    id="oil_use",
    asks="Does it use oil, or has the oil level changed?",
    why="A level that rises is fuel or water; one that falls is burnt or lost oil.",
    choices=(
        Choice("uses much oil", ("oil_used_fast",)),
        Choice("loses it within hours", ("oil_loss_fast",), beyond=("oil_used_fast",)),
        Choice("level has risen by itself", ("level_risen",)),
        Choice("not checked for long", ("oil_not_checked_long",)),
        Choice("long past its change", ("oil_overdue",)),
        NONE,
    ),
    many=True,
)
STICK = Menu(
    id="stick",
    asks="If you looked: what is the oil on the dipstick like?",
    why="Fuel, water and metal in the oil show on the stick.",
    choices=(
        Choice("clean", ("oil_looks_clean",), ("oil_milky", "glitter_in_oil")),
        Choice("milky", ("oil_milky",)),
        Choice("thin as water", ("oil_thin_on_stick",)),
        Choice("thick as treacle (molasses)", ("oil_thick_on_stick",)),
        Choice("black and gritty", ("oil_black_and_gritty",)),
        Choice("metal glitter", ("glitter_in_oil",)),
        Choice("smells of fuel", ("fuel_smell",)),
        NONE,
    ),
    many=True,
)
SMOKE = Menu(
    id="smoke",
    asks="Is there smoke, or does it lose coolant?",
    why="Oil burnt or coolant in the oil shows at the exhaust and the header tank.",
    choices=(
        Choice("blue exhaust smoke", ("blue_smoke",)),
        Choice("smell or smoke of burning oil", ("burning_oil_smoke",)),
        Choice("white steam when warm", ("white_plume",)),
        Choice("coolant keeps falling", ("coolant_level_falling",)),
        Choice("engine ran hot", ("engine_ran_hot",)),
        NONE,
    ),
    many=True,
)
REPEATS = Menu(
    id="repeats",
    asks="How has it gone on since it began?",
    why="If it comes back the same way, you can try it on purpose.",
    choices=(
        Choice("comes back by itself in between", ("loss_is_passing",)),
        Choice("returns under the same condition", ("returns_the_same_way",)),
        Choice("grows worse from run to run", ("grows_worse",)),
        Choice("stepped down once and stayed", ("stepped_down_and_stayed",)),
        NONE,
    ),
    many=True,
)
GROUPS = (
    COURSE, SPEED, HEAT, OCCASION, START, FLICKER, NEEDLE, LEAKS, OIL_USE, STICK, SMOKE, REPEATS,
)  # fmt: skip
