"""Rules on the measured pump, against its limits."""

from knowledge import sources
from knowledge.engines import features
from knowledge.judging import beyond_limit
from knowledge.model import Station
from knowledge.rule_api import Conclusions, Known, example, is_absent, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.pump import (
    findings_bench,
    findings_drive,
    findings_mount,
    findings_priming,
    findings_wear,
    quantities,
)
from knowledge.units import INCH

rule = rules_of(Station.PUMP)


@rule(
    source=sources.STRAIGHT_SIX_MANUAL,
    matches=[
        example(measures={findings_bench.PUMP_END_CLEARANCE: 0.010 * INCH}),
        example(measures={findings_bench.PUMP_END_CLEARANCE: 0.003 * INCH}),
    ],
    non_matches=[example(measures={findings_bench.PUMP_SIDE_CLEARANCE: 0.003 * INCH})],
)
def end_clearance_against_its_limit(known: Known) -> Conclusions:
    """End clearance over its limit lets oil slip past the gear ends; within it, no.

    Misleads when the groove in the cover was not added to the feeler's figure.
    """
    yield from beyond_limit(
        known,
        findings_bench.END_CLEARANCE_WIDE,
        findings_bench.PUMP_END_CLEARANCE,
        quantities.MOST_END_CLEARANCE,
    )


@rule(
    source=sources.PUMP_INSTALLATION_1983,
    matches=[
        example(measures={findings_bench.PUMP_SIDE_CLEARANCE: 0.009 * INCH}),
        example(measures={findings_bench.PUMP_SIDE_CLEARANCE: 0.003 * INCH}),
    ],
    non_matches=[example(measures={findings_bench.PUMP_END_CLEARANCE: 0.003 * INCH})],
)
def side_clearance_against_its_limit(known: Known) -> Conclusions:
    """Clearance between gear and body is over its limit, or within it.

    Misleads when a rotor pump is judged by a gear pump's figure: rotors are allowed more.
    """
    yield from beyond_limit(
        known,
        findings_bench.SIDE_CLEARANCE_WIDE,
        findings_bench.PUMP_SIDE_CLEARANCE,
        quantities.MOST_SIDE_CLEARANCE,
    )


@rule(
    source=sources.ROTOR_PUMP_LIMITS_2023,
    matches=[
        example(measures={findings_bench.ROTOR_TIP_CLEARANCE: 0.25e-3}),
        example(measures={findings_bench.ROTOR_TIP_CLEARANCE: 0.08e-3}),
    ],
    non_matches=[example(measures={findings_bench.PUMP_SIDE_CLEARANCE: 0.08e-3})],
)
def rotor_tips_against_their_limit(known: Known) -> Conclusions:
    """Clearance at the rotor tips is over its limit, or within it."""
    yield from beyond_limit(
        known,
        findings_bench.ROTOR_TIP_WIDE,
        findings_bench.ROTOR_TIP_CLEARANCE,
        quantities.MOST_ROTOR_TIP_CLEARANCE,
    )


@rule(
    source=sources.DIESEL_PUMP_BENCH,
    matches=[
        example(features.DIESEL, measures={findings_wear.PUMP_BACKLASH: 0.040 * INCH}),
        example(features.DIESEL, measures={findings_wear.PUMP_BACKLASH: 0.015 * INCH}),
    ],
    non_matches=[
        example(features.DIESEL, measures={findings_wear.PUMP_BUSH_CLEARANCE: 0.004 * INCH}),
        example(measures={findings_wear.PUMP_BACKLASH: 0.040 * INCH}),
    ],
)
def backlash_against_its_limit(known: Known) -> Conclusions:
    """Backlash of the pump's gears is over its limit, or within it."""
    yield from beyond_limit(
        known,
        findings_wear.GEAR_BACKLASH_WIDE,
        findings_wear.PUMP_BACKLASH,
        quantities.MOST_BACKLASH,
    )


@rule(
    source=sources.DIESEL_V8_PUMP_LIMITS,
    matches=[
        example(features.DIESEL, measures={findings_wear.PUMP_BUSH_CLEARANCE: 0.009 * INCH}),
        example(features.DIESEL, measures={findings_wear.PUMP_BUSH_CLEARANCE: 0.002 * INCH}),
    ],
    non_matches=[
        example(features.DIESEL, measures={findings_wear.PUMP_BACKLASH: 0.015 * INCH}),
        example(measures={findings_wear.PUMP_BUSH_CLEARANCE: 0.009 * INCH}),
    ],
)
def bush_clearance_against_its_limit(known: Known) -> Conclusions:
    """The pump's shaft has too much clearance in its bush, or is within the limit."""
    yield from beyond_limit(
        known,
        findings_wear.PUMP_SHAFT_PLAY,
        findings_wear.PUMP_BUSH_CLEARANCE,
        quantities.MOST_BUSH_CLEARANCE,
    )


@rule(
    source=sources.PUMP_INSTALLATION_1983,
    matches=[
        example(measures={findings_bench.PUMP_COVER_HOLLOW: 0.004 * INCH}),
        example(measures={findings_bench.PUMP_COVER_HOLLOW: 0.0}),
    ],
    non_matches=[example(measures={findings_bench.PUMP_END_CLEARANCE: 0.004 * INCH})],
)
def hollow_cover_against_its_limit(known: Known) -> Conclusions:
    """The groove worn in the cover takes a 0.001 in feeler, or it does not."""
    yield from beyond_limit(
        known,
        findings_bench.COVER_GROOVED,
        findings_bench.PUMP_COVER_HOLLOW,
        quantities.MOST_COVER_HOLLOW,
    )


@rule(
    source=sources.V6_PUMP_CATALOGUE,
    matches=[example(findings_bench.PUMP_FOUND_SOUND)],
    non_matches=[
        example(lacks=[findings_bench.PUMP_FOUND_SOUND]),
        example(findings_bench.END_CLEARANCE_WIDE),
    ],
)
def measured_pump_within_limits(known: Known) -> Conclusions:
    """A pump opened, measured and within its limits is not worn, grooved, jammed or broken.

    Misleads when only the gears were looked at and neither cover nor relief valve.
    """
    if known.has(findings_bench.PUMP_FOUND_SOUND):
        yield is_absent(findings_wear.GEARS_WORN_OUT, sure=0.95)
        yield is_absent(findings_bench.END_CLEARANCE_WIDE, sure=0.9)
        yield is_absent(findings_bench.SIDE_CLEARANCE_WIDE, sure=0.9)
        yield is_absent(findings_bench.ROTOR_TIP_WIDE, sure=0.9)
        yield is_absent(findings_bench.COVER_GROOVED, sure=0.9)
        yield is_absent(findings_wear.PUMP_SHAFT_PLAY, sure=0.8)
        yield is_absent(findings_drive.PUMP_JAMMED, sure=0.97)
        yield is_absent(findings_wear.PUMP_GEAR_BROKEN, sure=0.97)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[findings_mount.PUMP_TURNS_ROUGHLY])],
    non_matches=[example(findings_mount.PUMP_TURNS_ROUGHLY), example()],
)
def pump_that_turns_smoothly(known: Known) -> Conclusions:
    """A pump that turns smoothly by hand is not jammed."""
    if known.lacks(findings_mount.PUMP_TURNS_ROUGHLY):
        yield is_absent(findings_drive.PUMP_JAMMED, sure=0.97)


@rule(
    source=idea_from(sources.PRE_OILING_ARTICLE),
    matches=[example(findings_priming.DRILL_GIVES_GOOD)],
    non_matches=[
        example(findings_priming.DRILL_GIVES_LITTLE),
        example(lacks=[findings_priming.DRILL_GIVES_GOOD]),
    ],
)
def good_pressure_by_drill(known: Known) -> Conclusions:
    """Good pressure with the drill clears pump, suction and oilways; look at the drive.

    Misleads when cold thick oil and a strong drill hide what hot thin oil will show.
    """
    if known.has(findings_priming.DRILL_GIVES_GOOD):
        yield is_absent(findings_priming.DRILL_GIVES_NONE, sure=0.97)
        yield is_absent(findings_priming.DRILL_GIVES_LITTLE, sure=0.9)
        yield is_absent(findings_mount.DRAWS_NOTHING_IN_BATH, sure=0.9)
        yield is_absent(findings_drive.PUMP_JAMMED, sure=0.95)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[findings_priming.NO_OIL_WHEN_CRANKED])],
    non_matches=[example(findings_priming.NO_OIL_WHEN_CRANKED), example()],
)
def strong_stream_when_cranked(known: Known) -> Conclusions:
    """A strong stream of oil when cranked: the pump turns, draws and delivers."""
    if known.lacks(findings_priming.NO_OIL_WHEN_CRANKED):
        yield is_absent(findings_drive.PUMP_SEEN_STANDING, sure=0.97)
        yield is_absent(findings_drive.PUMP_JAMMED, sure=0.97)
