"""What follows when oil leaves the engine."""

from knowledge.causes.leaks import (
    BREATHER_BLOCKED,
    DRAIN_PLUG_OUT,
    EXTERNAL_LEAK_MAJOR,
    FILLER_CAP_OFF,
    FILTER_SEAL_LEAK,
    OIL_LINE_LEAK,
    PLUG_EXPELLED_OUTSIDE,
    SENDER_LEAK,
    SHAFT_SEAL_LEAK,
    SUMP_HOLED,
    WRONG_GASKET_ON_ACCESSORY,
)
from knowledge.conditions import (
    OIL_ESCAPING,
    OPEN_LEAK_INSIDE,
    PRESSURE_GONE,
    READING_FALSE,
)
from knowledge.findings.behaviour import (
    CHANGED_AFTER_KNOCK,
    CHANGED_AFTER_OTHER_WORK,
    CHANGED_WITH_OIL_CHANGE,
)
from knowledge.findings.delivery import FILTER_BURST, FILTER_MISFITTED, FILTER_SEAT_LEAKS
from knowledge.findings.instrument import SENDER_LEAKS_OIL
from knowledge.findings.leaks import (
    ACCESSORY_PAD_WET,
    ACCESSORY_PORT_UNCOVERED,
    BREATHER_FOUND_BLOCKED,
    CUP_PLUG_FOUND_OUT,
    DIPSTICK_PUSHED_OUT,
    DRAIN_PLUG_FOUND_LOOSE,
    DROPS_FALL_WHILE_WATCHED,
    FILLER_CAP_FOUND_OFF,
    FILTER_FOUND_LOOSE,
    LEAKS_ONLY_RUNNING,
    OIL_CAUGHT_FIRE,
    OIL_FROM_BELLHOUSING,
    OIL_IN_THE_BILGE,
    OIL_LINE_FITTING_WET,
    OIL_LINE_FOUND_BROKEN,
    OIL_LOSS_FAST,
    OIL_ON_BODYWORK,
    OIL_ON_THE_GROUND,
    OIL_OVERBOARD,
    OIL_SEEN_OUTSIDE,
    OIL_SPRAYED,
    OIL_TRAIL_BEHIND,
    SEAL_OR_GASKET_WET,
    SEVERAL_SEALS_AT_ONCE,
    SUMP_FOUND_HOLED,
)
from knowledge.findings.oil import LEVEL_FALLS_STANDING
from knowledge.findings.oil_heat import BLOW_BY_HIGH, BURNING_OIL_SMOKE
from knowledge.findings.pressure import FELL_SUDDENLY, GAUGE_READS_ZERO
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB03, HB07
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.LEAKS)


@rule(
    source=HB07,
    catches=[
        case_of(OIL_LOSS_FAST, OIL_ON_THE_GROUND),
        case_of(OIL_SPRAYED),
        case_of(OIL_TRAIL_BEHIND, FELL_SUDDENLY),
    ],
    spares=[case_of(FELL_SUDDENLY, lacks=[OIL_SEEN_OUTSIDE, OIL_ON_THE_GROUND])],
)
def oil_that_leaves_is_seen_somewhere(known: Known) -> Conclusions:
    """Oil that leaves an engine is seen: on it, under it, behind it, or smoking on hot parts.

    Misleads when it is old oil: wash down and look again.
    """
    yield leads_to(OIL_ESCAPING, OIL_SEEN_OUTSIDE, MOSTLY)
    yield leads_to(OIL_ESCAPING, OIL_ON_THE_GROUND, OFTEN)
    yield leads_to(OIL_ESCAPING, OIL_LOSS_FAST, OFTEN)
    yield leads_to(OIL_ESCAPING, DROPS_FALL_WHILE_WATCHED, OFTEN)
    yield leads_to(OIL_ESCAPING, BURNING_OIL_SMOKE, SOMETIMES)
    yield leads_to(OIL_ESCAPING, OIL_SPRAYED, SOMETIMES)
    yield leads_to(OIL_ESCAPING, OIL_TRAIL_BEHIND, SOMETIMES)
    yield leads_to(OIL_ESCAPING, OIL_ON_BODYWORK, SELDOM)
    yield leads_to(OIL_ESCAPING, OIL_IN_THE_BILGE, SELDOM)
    yield leads_to(OIL_ESCAPING, OIL_CAUGHT_FIRE, SELDOM)


@rule(
    source=HB07,
    catches=[case_of(OIL_LOSS_FAST, FELL_SUDDENLY), case_of(OIL_SPRAYED, GAUGE_READS_ZERO)],
    spares=[case_of(FELL_SUDDENLY, lacks=[OIL_SEEN_OUTSIDE, OIL_ON_THE_GROUND, OIL_LOSS_FAST])],
)
def big_leak_of_unknown_place(known: Known) -> Conclusions:
    """A big outside leak empties the sump; a gusher takes the pressure with it."""
    yield leads_to(EXTERNAL_LEAK_MAJOR, OIL_ESCAPING, ALWAYS)
    yield leads_to(EXTERNAL_LEAK_MAJOR, PRESSURE_GONE, SOMETIMES)
    yield leads_to(EXTERNAL_LEAK_MAJOR, LEAKS_ONLY_RUNNING, OFTEN)
    yield leads_to(EXTERNAL_LEAK_MAJOR, CHANGED_WITH_OIL_CHANGE, SELDOM)


@rule(
    source=CP,
    catches=[
        case_of(CHANGED_WITH_OIL_CHANGE, FILTER_SEAT_LEAKS),
        case_of(FILTER_MISFITTED),
        case_of(FILTER_FOUND_LOOSE),
    ],
    spares=[
        case_of(
            CHANGED_WITH_OIL_CHANGE,
            lacks=[FILTER_SEAT_LEAKS, FILTER_FOUND_LOOSE, FILTER_MISFITTED],
        )
    ],
)
def oil_out_from_under_the_filter(known: Known) -> Conclusions:
    """A loose filter, or one on top of the old seal, lets full pump pressure out past it.

    It may hold at idle and let go at the first cold start or hard pull.
    """
    yield leads_to(FILTER_SEAL_LEAK, OIL_ESCAPING, ALWAYS)
    yield leads_to(FILTER_SEAL_LEAK, PRESSURE_GONE, SOMETIMES)
    yield leads_to(FILTER_SEAL_LEAK, FILTER_SEAT_LEAKS, ALWAYS)
    yield leads_to(FILTER_SEAL_LEAK, FILTER_FOUND_LOOSE, OFTEN)
    yield leads_to(FILTER_SEAL_LEAK, FILTER_MISFITTED, SOMETIMES)
    yield leads_to(FILTER_SEAL_LEAK, FILTER_BURST, SOMETIMES)
    yield leads_to(FILTER_SEAL_LEAK, CHANGED_WITH_OIL_CHANGE, OFTEN)
    yield leads_to(FILTER_SEAL_LEAK, LEAKS_ONLY_RUNNING, MOSTLY)


@rule(
    source=HB03,
    catches=[case_of(OIL_LINE_FOUND_BROKEN), case_of(OIL_SPRAYED, OIL_LINE_FITTING_WET)],
    spares=[case_of(OIL_SPRAYED, lacks=[OIL_LINE_FOUND_BROKEN, OIL_LINE_FITTING_WET])],
)
def line_or_cooler_lets_go(known: Known) -> Conclusions:
    """A burst line or cooler throws the sump overboard at pump pressure; a cooler may do it unseen.

    A water-cooled cooler loses oil into its water, and the engine stays dry outside.
    """
    yield leads_to(OIL_LINE_LEAK, OIL_ESCAPING, ALWAYS)
    yield leads_to(OIL_LINE_LEAK, PRESSURE_GONE, OFTEN)
    yield leads_to(OIL_LINE_LEAK, OIL_LINE_FOUND_BROKEN, MOSTLY)
    yield leads_to(OIL_LINE_LEAK, OIL_LINE_FITTING_WET, OFTEN)
    yield leads_to(OIL_LINE_LEAK, OIL_OVERBOARD, SELDOM)
    yield leads_to(OIL_LINE_LEAK, LEAKS_ONLY_RUNNING, MOSTLY)
    yield leads_to(OIL_LINE_LEAK, CHANGED_AFTER_OTHER_WORK, SOMETIMES)


@rule(
    source=CP,
    catches=[
        case_of(DRAIN_PLUG_FOUND_LOOSE),
        case_of(DRAIN_PLUG_FOUND_LOOSE, lacks=[LEAKS_ONLY_RUNNING]),
    ],
    spares=[case_of(OIL_ON_THE_GROUND, lacks=[DRAIN_PLUG_FOUND_LOOSE])],
)
def sump_runs_empty_by_itself(known: Known) -> Conclusions:
    """A lost drain plug empties the sump, running or not; the gauge is right to the last pint."""
    yield leads_to(DRAIN_PLUG_OUT, OIL_ESCAPING, ALWAYS)
    yield leads_to(DRAIN_PLUG_OUT, PRESSURE_GONE, OFTEN)
    yield leads_to(DRAIN_PLUG_OUT, DRAIN_PLUG_FOUND_LOOSE, ALWAYS)
    yield leads_to(DRAIN_PLUG_OUT, LEVEL_FALLS_STANDING, MOSTLY)
    yield leads_to(DRAIN_PLUG_OUT, CHANGED_WITH_OIL_CHANGE, OFTEN)


@rule(
    source=CP,
    catches=[case_of(SEAL_OR_GASKET_WET, OIL_LOSS_FAST), case_of(OIL_FROM_BELLHOUSING)],
    spares=[case_of(OIL_LOSS_FAST, lacks=[SEAL_OR_GASKET_WET, OIL_FROM_BELLHOUSING])],
)
def seal_or_cover_lets_oil_by(known: Known) -> Conclusions:
    """A bad seal or cover loses oil over hours; the pressure goes only when the level has gone.

    Misleads when the breather is blocked: then the seals are the victims.
    """
    yield leads_to(SHAFT_SEAL_LEAK, OIL_ESCAPING, MOSTLY)
    yield leads_to(SHAFT_SEAL_LEAK, SEAL_OR_GASKET_WET, ALWAYS)
    yield leads_to(SHAFT_SEAL_LEAK, OIL_FROM_BELLHOUSING, SOMETIMES)
    yield leads_to(SHAFT_SEAL_LEAK, LEAKS_ONLY_RUNNING, SOMETIMES)


@rule(
    source=CP,
    catches=[
        case_of(BREATHER_FOUND_BLOCKED),
        case_of(SEVERAL_SEALS_AT_ONCE, DIPSTICK_PUSHED_OUT),
    ],
    spares=[case_of(SEAL_OR_GASKET_WET, lacks=[BREATHER_FOUND_BLOCKED, BLOW_BY_HIGH])],
)
def crankcase_that_cannot_breathe(known: Known) -> Conclusions:
    """A blocked breather drives oil out wherever it can: several seals at once, stick pushed up.

    Misleads when the rings let by so much that even a clear breather cannot cope.
    """
    yield leads_to(BREATHER_BLOCKED, OIL_ESCAPING, MOSTLY)
    yield leads_to(BREATHER_BLOCKED, BREATHER_FOUND_BLOCKED, ALWAYS)
    yield leads_to(BREATHER_BLOCKED, BLOW_BY_HIGH, MOSTLY)
    yield leads_to(BREATHER_BLOCKED, SEVERAL_SEALS_AT_ONCE, OFTEN)
    yield leads_to(BREATHER_BLOCKED, SEAL_OR_GASKET_WET, MOSTLY)
    yield leads_to(BREATHER_BLOCKED, DIPSTICK_PUSHED_OUT, OFTEN)
    yield leads_to(BREATHER_BLOCKED, LEAKS_ONLY_RUNNING, OFTEN)


@rule(
    source=CP,
    catches=[case_of(SENDER_LEAKS_OIL), case_of(SENDER_LEAKS_OIL, OIL_SEEN_OUTSIDE)],
    spares=[case_of(OIL_SEEN_OUTSIDE, lacks=[SENDER_LEAKS_OIL])],
)
def sender_that_leaks_lies_too(known: Known) -> Conclusions:
    """A leaking sender loses gallery oil through a small hole, and often reads false as well."""
    yield leads_to(SENDER_LEAK, OIL_ESCAPING, MOSTLY)
    yield leads_to(SENDER_LEAK, READING_FALSE, OFTEN)
    yield leads_to(SENDER_LEAK, PRESSURE_GONE, SELDOM)
    yield leads_to(SENDER_LEAK, SENDER_LEAKS_OIL, ALWAYS)
    yield leads_to(SENDER_LEAK, LEAKS_ONLY_RUNNING, MOSTLY)


@rule(
    source=CP,
    catches=[case_of(CUP_PLUG_FOUND_OUT, FELL_SUDDENLY), case_of(CUP_PLUG_FOUND_OUT)],
    spares=[case_of(FELL_SUDDENLY, lacks=[CUP_PLUG_FOUND_OUT])],
)
def plug_shot_out_of_the_block(known: Known) -> Conclusions:
    """A plug shot out of the block opens the gallery to the air: pressure and oil go at once."""
    yield leads_to(PLUG_EXPELLED_OUTSIDE, OIL_ESCAPING, ALWAYS)
    yield leads_to(PLUG_EXPELLED_OUTSIDE, PRESSURE_GONE, MOSTLY)
    yield leads_to(PLUG_EXPELLED_OUTSIDE, FELL_SUDDENLY, MOSTLY)
    yield leads_to(PLUG_EXPELLED_OUTSIDE, CUP_PLUG_FOUND_OUT, ALWAYS)
    yield leads_to(PLUG_EXPELLED_OUTSIDE, OIL_FROM_BELLHOUSING, SOMETIMES)
    yield leads_to(PLUG_EXPELLED_OUTSIDE, LEAKS_ONLY_RUNNING, MOSTLY)


@rule(
    source=CP,
    catches=[case_of(CHANGED_AFTER_KNOCK, SUMP_FOUND_HOLED), case_of(SUMP_FOUND_HOLED)],
    spares=[case_of(CHANGED_AFTER_KNOCK, lacks=[SUMP_FOUND_HOLED])],
)
def hole_in_the_sump(known: Known) -> Conclusions:
    """A holed sump holds the pressure until the pickup is bare, then none is left."""
    yield leads_to(SUMP_HOLED, OIL_ESCAPING, ALWAYS)
    yield leads_to(SUMP_HOLED, SUMP_FOUND_HOLED, ALWAYS)
    yield leads_to(SUMP_HOLED, LEVEL_FALLS_STANDING, MOSTLY)
    yield leads_to(SUMP_HOLED, CHANGED_AFTER_KNOCK, OFTEN)


@rule(
    source=CP,
    catches=[case_of(FILLER_CAP_FOUND_OFF, CHANGED_WITH_OIL_CHANGE)],
    spares=[case_of(CHANGED_WITH_OIL_CHANGE, lacks=[FILLER_CAP_FOUND_OFF])],
)
def cap_left_off(known: Known) -> Conclusions:
    """With the filler cap or stick off, oil blows out over the engine as long as it runs."""
    yield leads_to(FILLER_CAP_OFF, OIL_ESCAPING, OFTEN)
    yield leads_to(FILLER_CAP_OFF, FILLER_CAP_FOUND_OFF, ALWAYS)
    yield leads_to(FILLER_CAP_OFF, CHANGED_WITH_OIL_CHANGE, OFTEN)
    yield leads_to(FILLER_CAP_OFF, LEAKS_ONLY_RUNNING, MOSTLY)


@rule(
    source=CP,
    catches=[
        case_of(ACCESSORY_PORT_UNCOVERED),
        case_of(CHANGED_AFTER_OTHER_WORK, ACCESSORY_PAD_WET),
    ],
    spares=[case_of(CHANGED_AFTER_OTHER_WORK, lacks=[ACCESSORY_PORT_UNCOVERED, ACCESSORY_PAD_WET])],
)
def port_left_open_under_an_accessory(known: Known) -> Conclusions:
    """A wrong gasket under an accessory leaves an oil port open, mostly into the engine, unseen."""
    yield leads_to(WRONG_GASKET_ON_ACCESSORY, OPEN_LEAK_INSIDE, MOSTLY)
    yield leads_to(WRONG_GASKET_ON_ACCESSORY, OIL_ESCAPING, SOMETIMES)
    yield leads_to(WRONG_GASKET_ON_ACCESSORY, ACCESSORY_PORT_UNCOVERED, ALWAYS)
    yield leads_to(WRONG_GASKET_ON_ACCESSORY, ACCESSORY_PAD_WET, SOMETIMES)
    yield leads_to(WRONG_GASKET_ON_ACCESSORY, CHANGED_AFTER_OTHER_WORK, MOSTLY)
