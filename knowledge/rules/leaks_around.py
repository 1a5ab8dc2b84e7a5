"""What build, too much pressure and the reports of a leak say about each other."""

from knowledge.causes.leaks import OIL_LINE_LEAK, SENDER_LEAK
from knowledge.conditions import PRESSURE_HIGH
from knowledge.engines.features import (
    DIRECT_GAUGE,
    DRY_SUMP,
    ELECTRIC_GAUGE,
    LAMP_ONLY,
    OIL_COOLER,
    REMOTE_FILTER,
)
from knowledge.findings.delivery import FILTER_SEAT_LEAKS
from knowledge.findings.leaks import (
    BREATHER_FOUND_BLOCKED,
    CUP_PLUG_FOUND_OUT,
    DRAIN_PLUG_FOUND_LOOSE,
    DROPS_FALL_WHILE_WATCHED,
    FILTER_FOUND_LOOSE,
    LEAKS_ONLY_RUNNING,
    OIL_LINE_FOUND_BROKEN,
    OIL_LOSS_FAST,
    OIL_ON_THE_GROUND,
    OIL_OVERBOARD,
    OIL_SEEN_OUTSIDE,
    OIL_SPRAYED,
    SEVERAL_SEALS_AT_ONCE,
    SUMP_FOUND_HOLED,
)
from knowledge.findings.oil_heat import BLOW_BY_HIGH
from knowledge.findings.pressure import CLIMBS_PAST_SETTING
from knowledge.rulebook import (
    Conclusions,
    Contradiction,
    Known,
    cannot_be,
    case_of,
    is_absent,
    is_present,
    leads_to,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB03
from knowledge.vocabulary import SELDOM, SOMETIMES, Shift, Station

rule = rules_of(Station.LEAKS)

# ------------------------------------------------------------------------- how it is built


@rule(
    source=CP,
    catches=[case_of(DIRECT_GAUGE, lacks=[ELECTRIC_GAUGE, LAMP_ONLY])],
    spares=[case_of(DIRECT_GAUGE), case_of(lacks=[ELECTRIC_GAUGE])],
)
def no_sender_no_leak_there(known: Known) -> Conclusions:
    """A direct gauge on a line, with no electric gauge or lamp, has no sender to leak."""
    if known.has(DIRECT_GAUGE) and known.lacks(ELECTRIC_GAUGE) and known.lacks(LAMP_ONLY):
        yield cannot_be(SENDER_LEAK)


@rule(
    source=CP,
    catches=[case_of(OIL_COOLER), case_of(REMOTE_FILTER), case_of(DRY_SUMP)],
    spares=[case_of(lacks=[OIL_COOLER, REMOTE_FILTER])],
)
def more_hoses_more_leaks(known: Known) -> Conclusions:
    """A cooler, a remote filter or a dry sump brings hoses, and every hose can burst."""
    for hoses in (OIL_COOLER, REMOTE_FILTER, DRY_SUMP):
        if known.has(hoses):
            yield more_common(OIL_LINE_LEAK)


@rule(
    source=CP,
    catches=[case_of(lacks=[OIL_COOLER, REMOTE_FILTER, DRY_SUMP])],
    spares=[case_of(lacks=[OIL_COOLER, REMOTE_FILTER]), case_of(OIL_COOLER)],
)
def few_lines_outside(known: Known) -> Conclusions:
    """With no cooler, no remote filter and a wet sump there is hardly a line to burst."""
    if known.lacks(OIL_COOLER) and known.lacks(REMOTE_FILTER) and known.lacks(DRY_SUMP):
        yield less_common(OIL_LINE_LEAK, Shift.STRONG_DOWN)


# ---------------------------------------------------------------- what else opens a joint


@rule(
    source=HB03,
    catches=[
        case_of(CLIMBS_PAST_SETTING, FILTER_SEAT_LEAKS),
        case_of(OIL_SPRAYED, FILTER_SEAT_LEAKS),
    ],
    spares=[case_of(lacks=[FILTER_SEAT_LEAKS, OIL_SPRAYED, CLIMBS_PAST_SETTING])],
)
def too_much_pressure_opens_the_weakest_joint(known: Known) -> Conclusions:
    """Too much pressure opens the weakest joint: filter seal first, then lines and plugs.

    A filter that leaks again after renewal asks for a look at the relief valve.
    """
    yield leads_to(PRESSURE_HIGH, FILTER_SEAT_LEAKS, SOMETIMES)
    yield leads_to(PRESSURE_HIGH, OIL_SPRAYED, SELDOM)
    yield leads_to(PRESSURE_HIGH, OIL_LINE_FOUND_BROKEN, SELDOM)
    yield leads_to(PRESSURE_HIGH, CUP_PLUG_FOUND_OUT, SELDOM)


# --------------------------------------------------------------- one report from another


@rule(
    source=CP,
    catches=[case_of(lacks=[OIL_SEEN_OUTSIDE, OIL_ON_THE_GROUND])],
    spares=[case_of(lacks=[OIL_SEEN_OUTSIDE]), case_of(OIL_SEEN_OUTSIDE, OIL_ON_THE_GROUND)],
)
def dry_outside_and_dry_below(known: Known) -> Conclusions:
    """Dry outside and no oil below: nothing sprays or drips there.

    Misleads when the oil leaves with the cooling water or burns in a turbocharger.
    """
    if known.lacks(OIL_SEEN_OUTSIDE) and known.lacks(OIL_ON_THE_GROUND):
        yield is_absent(OIL_SPRAYED, sure=0.9)
        yield is_absent(DROPS_FALL_WHILE_WATCHED, sure=0.9)


@rule(
    source=CP,
    catches=[case_of(OIL_SPRAYED), case_of(DROPS_FALL_WHILE_WATCHED)],
    spares=[case_of(OIL_LOSS_FAST), case_of(lacks=[OIL_SPRAYED])],
)
def spray_or_drops_wet_the_engine(known: Known) -> Conclusions:
    """Oil that sprays, or falls in drops, is oil outside the engine."""
    if known.has(OIL_SPRAYED):
        yield is_present(OIL_SEEN_OUTSIDE, sure=0.95)
    if known.has(DROPS_FALL_WHILE_WATCHED):
        yield is_present(OIL_SEEN_OUTSIDE, sure=0.95)


@rule(
    source=CP,
    catches=[case_of(lacks=[FILTER_SEAT_LEAKS])],
    spares=[case_of(FILTER_SEAT_LEAKS)],
)
def filter_dry_all_round_sits_tight(known: Known) -> Conclusions:
    """A filter that is dry all round has neither come loose nor lost its seal."""
    if known.lacks(FILTER_SEAT_LEAKS):
        yield is_absent(FILTER_FOUND_LOOSE, sure=0.9)


# ------------------------------------------------------------------ reports that clash


@rule(
    source=CP,
    catches=[
        case_of(LEAKS_ONLY_RUNNING, DRAIN_PLUG_FOUND_LOOSE),
        case_of(LEAKS_ONLY_RUNNING, SUMP_FOUND_HOLED),
    ],
    spares=[
        case_of(DRAIN_PLUG_FOUND_LOOSE, lacks=[LEAKS_ONLY_RUNNING]),
        case_of(SUMP_FOUND_HOLED),
        case_of(LEAKS_ONLY_RUNNING),
    ],
)
def hole_that_leaks_only_running(known: Known) -> Conclusions:
    """A loose drain plug or a holed sump leaks with the engine stopped too."""
    for hole in (DRAIN_PLUG_FOUND_LOOSE, SUMP_FOUND_HOLED):
        if known.has(LEAKS_ONLY_RUNNING) and known.has(hole):
            yield Contradiction(
                (LEAKS_ONLY_RUNNING, hole),
                f"{hole.says}, yet it is said to leak only while running: is there a second leak?",
                LEAKS_ONLY_RUNNING,
            )


@rule(
    source=CP,
    catches=[case_of(OIL_SPRAYED, lacks=[OIL_SEEN_OUTSIDE])],
    spares=[case_of(OIL_SPRAYED, OIL_SEEN_OUTSIDE), case_of(OIL_SPRAYED)],
)
def spray_that_wets_nothing(known: Known) -> Conclusions:
    """Oil cannot spray out and leave the engine dry."""
    if known.has(OIL_SPRAYED) and known.lacks(OIL_SEEN_OUTSIDE):
        yield Contradiction(
            (OIL_SPRAYED, OIL_SEEN_OUTSIDE),
            "oil is said to spray out, yet the outside is said to be dry",
            OIL_SEEN_OUTSIDE,
        )


@rule(
    source=CP,
    catches=[case_of(OIL_LOSS_FAST, lacks=[OIL_SEEN_OUTSIDE, OIL_ON_THE_GROUND, OIL_OVERBOARD])],
    spares=[case_of(OIL_LOSS_FAST, lacks=[OIL_SEEN_OUTSIDE]), case_of(OIL_LOSS_FAST)],
)
def oil_lost_without_a_trace(known: Known) -> Conclusions:
    """A sump of oil cannot go in hours without a trace: outside, below, or in the water.

    Misleads when the engine burns it in clouds of smoke.
    """
    if (
        known.has(OIL_LOSS_FAST)
        and known.lacks(OIL_SEEN_OUTSIDE)
        and known.lacks(OIL_ON_THE_GROUND)
        and known.lacks(OIL_OVERBOARD)
    ):
        yield Contradiction(
            (OIL_LOSS_FAST, OIL_SEEN_OUTSIDE, OIL_ON_THE_GROUND, OIL_OVERBOARD),
            "oil is lost fast, yet none is seen outside, below or in the water: look for blue "
            "smoke, and read the stick again on level ground",
            OIL_LOSS_FAST,
        )


@rule(
    source=CP,
    catches=[case_of(BREATHER_FOUND_BLOCKED, lacks=[BLOW_BY_HIGH, SEVERAL_SEALS_AT_ONCE])],
    spares=[case_of(BREATHER_FOUND_BLOCKED, BLOW_BY_HIGH), case_of(BREATHER_FOUND_BLOCKED)],
)
def blocked_breather_without_pressure(known: Known) -> Conclusions:
    """A blocked breather and no crankcase pressure do not go together, unless something else vents."""
    if (
        known.has(BREATHER_FOUND_BLOCKED)
        and known.lacks(BLOW_BY_HIGH)
        and known.lacks(SEVERAL_SEALS_AT_ONCE)
    ):
        yield Contradiction(
            (BREATHER_FOUND_BLOCKED, BLOW_BY_HIGH),
            "the breather is blocked, yet nothing blows at the filler: was it tried at idle?",
            BLOW_BY_HIGH,
        )
