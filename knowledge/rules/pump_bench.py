"""From a measured pump to what is found: within the limit, or over it."""

from knowledge.findings.pump import (
    DRAWS_NOTHING_IN_BATH,
    DRILL_GIVES_GOOD,
    DRILL_GIVES_LITTLE,
    DRILL_GIVES_NONE,
    FORCED_OIL_BROUGHT_PRESSURE,
    NO_OIL_WHEN_CRANKED,
    PACKED_STILL_NONE,
    PUMP_FOUND_SOUND,
)
from knowledge.findings.pump_bench import (
    COVER_GROOVED,
    END_CLEARANCE_WIDE,
    GEAR_BACKLASH_WIDE,
    GEARS_WORN_OUT,
    PUMP_BACKLASH,
    PUMP_BUSH_CLEARANCE,
    PUMP_COVER_HOLLOW,
    PUMP_END_CLEARANCE,
    PUMP_GEAR_BROKEN,
    PUMP_JAMMED,
    PUMP_SHAFT_PLAY,
    PUMP_SIDE_CLEARANCE,
    PUMP_TURNS_ROUGHLY,
    ROTOR_TIP_CLEARANCE,
    ROTOR_TIP_LIMIT,
    ROTOR_TIP_WIDE,
    SIDE_CLEARANCE_WIDE,
)
from knowledge.findings.pump_drive import PUMP_SEEN_STANDING
from knowledge.reference import limits
from knowledge.reference.judging import sure_beyond
from knowledge.rulebook import (
    Conclusions,
    Known,
    case_of,
    is_absent,
    is_present,
    rules_of,
)
from knowledge.sources import AMC, CDX, DMX, GMI, MKP, OL2, OLD, POI, ROT
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.units import INCH
from knowledge.vocabulary import Finding, Limit, Measure, Station

rule = rules_of(Station.PUMP)


def judged(known: Known, measure: Measure, limit: Limit, over: Finding) -> Conclusions:
    """Over the limit or within it, as surely as the measuring error allows; unmeasured, nothing."""
    value = known.measured(measure)
    if value is not None:
        beyond = sure_beyond(value, known.limit(limit), measure.spread)
        yield is_present(over, beyond) if beyond > 0.5 else is_absent(over, 1.0 - beyond)


# -------------------------------------------------------------------------- measured


@rule(
    source=AMC,
    catches=[
        case_of(measures={PUMP_END_CLEARANCE: 0.010 * INCH}),
        case_of(measures={PUMP_END_CLEARANCE: 0.003 * INCH}),
    ],
    spares=[case_of(measures={PUMP_SIDE_CLEARANCE: 0.003 * INCH})],
)
def end_clearance_against_its_limit(known: Known) -> Conclusions:
    """End clearance over its limit lets oil slip past the gear ends; within it, it does not.

    Misleads when the groove in the cover was not added to the feeler's figure.
    """
    yield from judged(known, PUMP_END_CLEARANCE, limits.PUMP_END_CLEARANCE, END_CLEARANCE_WIDE)


@rule(
    source=OLD,
    catches=[
        case_of(measures={PUMP_SIDE_CLEARANCE: 0.009 * INCH}),
        case_of(measures={PUMP_SIDE_CLEARANCE: 0.003 * INCH}),
    ],
    spares=[case_of(measures={PUMP_END_CLEARANCE: 0.003 * INCH})],
)
def side_clearance_against_its_limit(known: Known) -> Conclusions:
    """Clearance between gear and body is over its limit, or within it.

    Misleads when a rotor pump is judged by a gear pump's figure: rotors are allowed more.
    """
    yield from judged(known, PUMP_SIDE_CLEARANCE, limits.PUMP_SIDE_CLEARANCE, SIDE_CLEARANCE_WIDE)


@rule(
    source=ROT,
    catches=[
        case_of(measures={ROTOR_TIP_CLEARANCE: 0.25e-3}),
        case_of(measures={ROTOR_TIP_CLEARANCE: 0.08e-3}),
    ],
    spares=[case_of(measures={PUMP_SIDE_CLEARANCE: 0.08e-3})],
)
def rotor_tips_against_their_limit(known: Known) -> Conclusions:
    """Clearance at the rotor tips is over its limit, or within it."""
    yield from judged(known, ROTOR_TIP_CLEARANCE, ROTOR_TIP_LIMIT, ROTOR_TIP_WIDE)


@rule(
    source=MKP,
    catches=[
        case_of(measures={PUMP_BACKLASH: 0.040 * INCH}),
        case_of(measures={PUMP_BACKLASH: 0.015 * INCH}),
    ],
    spares=[case_of(measures={PUMP_BUSH_CLEARANCE: 0.004 * INCH})],
)
def backlash_against_its_limit(known: Known) -> Conclusions:
    """Backlash of the pump's gears is over its limit, or within it."""
    yield from judged(known, PUMP_BACKLASH, limits.PUMP_BACKLASH, GEAR_BACKLASH_WIDE)


@rule(
    source=DMX,
    catches=[
        case_of(measures={PUMP_BUSH_CLEARANCE: 0.009 * INCH}),
        case_of(measures={PUMP_BUSH_CLEARANCE: 0.002 * INCH}),
    ],
    spares=[case_of(measures={PUMP_BACKLASH: 0.015 * INCH})],
)
def bush_clearance_against_its_limit(known: Known) -> Conclusions:
    """The pump's shaft has too much clearance in its bush, or is within the limit."""
    yield from judged(known, PUMP_BUSH_CLEARANCE, limits.PUMP_BUSH_CLEARANCE, PUMP_SHAFT_PLAY)


@rule(
    source=GMI,
    catches=[
        case_of(measures={PUMP_COVER_HOLLOW: 0.004 * INCH}),
        case_of(measures={PUMP_COVER_HOLLOW: 0.0}),
    ],
    spares=[case_of(measures={PUMP_END_CLEARANCE: 0.004 * INCH})],
)
def hollow_cover_against_its_limit(known: Known) -> Conclusions:
    """The hollow worn in the cover is deeper than a 0.001 in feeler, or it is not."""
    yield from judged(known, PUMP_COVER_HOLLOW, limits.COVER_FLATNESS, COVER_GROOVED)


@rule(
    source=OL2,
    catches=[case_of(PUMP_FOUND_SOUND)],
    spares=[case_of(lacks=[PUMP_FOUND_SOUND]), case_of(END_CLEARANCE_WIDE)],
)
def measured_pump_within_limits(known: Known) -> Conclusions:
    """A pump opened, measured and within its limits is not worn, grooved, jammed or broken.

    Misleads when only the gears were looked at and neither cover nor relief valve.
    """
    if known.has(PUMP_FOUND_SOUND):
        yield is_absent(GEARS_WORN_OUT, sure=0.95)
        yield is_absent(END_CLEARANCE_WIDE, sure=0.9)
        yield is_absent(SIDE_CLEARANCE_WIDE, sure=0.9)
        yield is_absent(ROTOR_TIP_WIDE, sure=0.9)
        yield is_absent(COVER_GROOVED, sure=0.9)
        yield is_absent(PUMP_SHAFT_PLAY, sure=0.8)
        yield is_absent(PUMP_JAMMED, sure=0.97)
        yield is_absent(PUMP_GEAR_BROKEN, sure=0.97)


# ----------------------------------------------------------------------- what excludes what


@rule(
    source=CDX,
    catches=[case_of(lacks=[PUMP_TURNS_ROUGHLY])],
    spares=[case_of(PUMP_TURNS_ROUGHLY), case_of()],
)
def pump_that_turns_smoothly(known: Known) -> Conclusions:
    """A pump that turns smoothly by hand is not jammed."""
    if known.lacks(PUMP_TURNS_ROUGHLY):
        yield is_absent(PUMP_JAMMED, sure=0.97)


@rule(
    source=POI,
    catches=[case_of(DRILL_GIVES_GOOD)],
    spares=[case_of(DRILL_GIVES_LITTLE), case_of(lacks=[DRILL_GIVES_GOOD])],
)
def good_pressure_by_drill(known: Known) -> Conclusions:
    """Good pressure by drill: pump, suction and oilways pass this test; look at the drive.

    Misleads when cold thick oil and a strong drill hide what hot thin oil will show.
    """
    if known.has(DRILL_GIVES_GOOD):
        yield is_absent(DRILL_GIVES_NONE, sure=0.97)
        yield is_absent(DRILL_GIVES_LITTLE, sure=0.9)
        yield is_absent(DRAWS_NOTHING_IN_BATH, sure=0.9)
        yield is_absent(PUMP_JAMMED, sure=0.95)


@rule(
    source=CP,
    catches=[case_of(PACKED_STILL_NONE)],
    spares=[case_of(lacks=[PACKED_STILL_NONE]), case_of(FORCED_OIL_BROUGHT_PRESSURE)],
)
def packed_pump_that_gives_nothing(known: Known) -> Conclusions:
    """A pump packed or primed that still gives nothing was not merely dry."""
    if known.has(PACKED_STILL_NONE):
        yield is_absent(FORCED_OIL_BROUGHT_PRESSURE, sure=0.95)


@rule(
    source=CP,
    catches=[case_of(lacks=[NO_OIL_WHEN_CRANKED])],
    spares=[case_of(NO_OIL_WHEN_CRANKED), case_of()],
)
def strong_stream_when_cranked(known: Known) -> Conclusions:
    """Oil in a strong stream when cranked: the pump turns, draws and delivers."""
    if known.lacks(NO_OIL_WHEN_CRANKED):
        yield is_absent(PUMP_SEEN_STANDING, sure=0.97)
        yield is_absent(PUMP_JAMMED, sure=0.97)
