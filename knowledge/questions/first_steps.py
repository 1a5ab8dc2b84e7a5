"""What the trade does before any other check, in this order (common practice)."""

from knowledge.questions.shapes import FirstStep

#: checks that are nothing but questions, by id: an interview asks them itself
HISTORY, OIL_RECORD = "ask_its_history", "ask_for_the_oil_record"
ASKED_BY_WORD = frozenset({HISTORY, OIL_RECORD})
#: what is left of a check once one of these is known, by its id
LEFT_OF = {
    "read_the_stick": FirstStep(
        "rub and smell the oil on the dipstick",
        when=("level_correct", "dipstick_low", "dipstick_dry", "level_high"),
    ),
}
#: oil that leaves as fast: filling and running it only throws out more
POURS_OUT = ("oil_loss_fast", "drops_fall_while_watched", "oil_sprayed", "filter_seat_leaks")
FIRST_STEPS = (
    FirstStep(
        "engine off, let it cool; find where the oil runs out and stop that before you fill it",
        when=POURS_OUT,
    ),
    FirstStep(
        "find where the oil went; fill to the full mark and prime it before it turns again",
        when=("dipstick_dry",),
        unless=POURS_OUT,
    ),
    FirstStep(
        "fill to the full mark, then run it and read the pressure again",
        when=("dipstick_low",),
        unless=(
            *("dipstick_dry", "top_up_cures_for_a_while", "falls_in_a_manoeuvre", "bearing_knock"),
            *POURS_OUT,
        ),
    ),
    FirstStep(
        "prime it before you take anything apart: fill pump or filter, turn the pump or crank without "
        "ignition until the gauge rises",
        when=("none_from_first_start",),
        unless=(
            *("drill_gives_none", "drill_gives_good", "drill_gives_little", "no_oil_when_cranked"),
            *("forced_oil_brought_pressure", "dipstick_low", "bearing_knock", *POURS_OUT),
            *("pressure_shown_since", "direct_gauge_zero"),
        ),
    ),
    FirstStep(
        "fill to the full mark on level ground, then repeat the bend, braking or slope",
        when=("falls_in_a_manoeuvre",),
        unless=("level_correct", "level_high", "overfill_steadies_it", "bearing_knock"),
    ),
)
