"""What is still worth a look once a cause is found: where it came from, what it has damaged."""

from knowledge.questions.shapes import StillToLook

#: in this order (common practice)
AFTERWARDS = (
    StillToLook(
        cause="fuel_dilution",
        check="look_for_the_fuel",
        why="until the way in is found, the new oil thins again",
    ),
    StillToLook(
        cause="fuel_dilution",
        check="cut_the_filter_open",
        why="it ran on thinned oil: bearing metal shows in the filter",
    ),
    StillToLook(
        cause="fuel_dilution",
        check="look_into_the_turbo",
        why="it ran on thinned oil: the turbo's bearings suffer first",
    ),
    StillToLook(
        cause="coolant_in_oil",
        check="look_for_the_water",
        why="until the way in is found, the new oil turns milky again",
    ),
    StillToLook(
        cause="coolant_in_oil",
        check="cut_the_filter_open",
        why="it ran on thinned oil: bearing metal shows in the filter",
    ),
)
