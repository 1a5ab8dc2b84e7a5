"""What the valve gear tells of the oil: noise, dryness, damage that follows, alarms."""

from knowledge.causes.assembly import BEARING_OIL_HOLE_MISALIGNED
from knowledge.causes.oil import OIL_HOT_NORMAL, OIL_LEVEL_HIGH
from knowledge.conditions import (
    BEARINGS_STARVED,
    BRANCH_DRY,
    DIRT_IN_OIL,
    DRAINS_BACK,
    ENGINE_FAILED,
    METAL_SHED,
    OIL_AERATED,
    PRESSURE_LOW,
    READING_FALSE,
    VALVE_GEAR_DRY,
)
from knowledge.engines.features import CHAIN_TENSIONERS, HYDRAULIC_LIFTERS
from knowledge.findings.behaviour import DIRECT_GAUGE_ZERO, SLOW_AFTER_STANDING
from knowledge.findings.pressure import FELL_SUDDENLY, GAUGE_READS_LOW, GAUGE_READS_ZERO
from knowledge.findings.topend import (
    CAM_BEARING_FOUND_BAD,
    CAM_JOURNALS_WORN,
    CAM_LOBES_WIPED,
    CAMSHAFT_BROKEN,
    CLATTERS_ONLY_AT_HIGH_REVS,
    LIFTER_OUT_OF_BORE,
    LIFTERS_CLATTER,
    LIFTERS_QUIET,
    NO_OIL_AT_ROCKERS,
    PUSHROD_OFF_OR_BENT,
    ROCKERS_FLOODED,
    TENSIONER_SLACK,
    TIMING_COVER_RATTLES,
    VALVE_GEAR_FOUND_DRY,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Contradiction,
    Known,
    case_of,
    is_absent,
    leads_to,
    rules_of,
)
from knowledge.sources import AA97, AHS, FLV, HB09, LTK, NE2
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import (
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    Severity,
    Station,
)

rule = rules_of(Station.TOPEND)


@rule(
    source=AA97,
    catches=[case_of(GAUGE_READS_LOW, LIFTERS_CLATTER), case_of(LIFTERS_CLATTER)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[LIFTERS_CLATTER])],
)
def valve_gear_cries_first(known: Known) -> Conclusions:
    """The valve gear is the far end of the circuit: short of oil, it clatters first.

    Misleads with an exhaust leak that ticks, and with solid lifters that want adjusting.
    """
    yield leads_to(VALVE_GEAR_DRY, LIFTERS_CLATTER, MOSTLY)
    yield leads_to(VALVE_GEAR_DRY, NO_OIL_AT_ROCKERS, OFTEN)
    yield leads_to(VALVE_GEAR_DRY, VALVE_GEAR_FOUND_DRY, OFTEN)
    yield leads_to(VALVE_GEAR_DRY, TIMING_COVER_RATTLES, SOMETIMES)


@rule(
    source=AA97,
    catches=[case_of(VALVE_GEAR_FOUND_DRY, CAM_LOBES_WIPED)],
    spares=[case_of(lacks=[VALVE_GEAR_FOUND_DRY, CAM_LOBES_WIPED])],
)
def what_a_dry_top_end_leaves_behind(known: Known) -> Conclusions:
    """A top end run dry wipes lobes, scores journals and bends what then seizes."""
    yield leads_to(VALVE_GEAR_DRY, CAM_LOBES_WIPED, SOMETIMES)
    yield leads_to(VALVE_GEAR_DRY, CAM_JOURNALS_WORN, SOMETIMES)
    yield leads_to(VALVE_GEAR_DRY, CAM_BEARING_FOUND_BAD, SELDOM)
    yield leads_to(VALVE_GEAR_DRY, CAMSHAFT_BROKEN, SELDOM)
    yield leads_to(VALVE_GEAR_DRY, PUSHROD_OFF_OR_BENT, SELDOM)


@rule(
    source=CP,
    catches=[case_of(CAM_BEARING_FOUND_BAD, CAM_JOURNALS_WORN)],
    spares=[case_of(lacks=[CAM_BEARING_FOUND_BAD, CAM_JOURNALS_WORN])],
)
def cam_damage_that_followed(known: Known) -> Conclusions:
    """Starvation and dirt spoil cam bearings along with the others: they need not be the root."""
    yield leads_to(BEARINGS_STARVED, CAM_BEARING_FOUND_BAD, SOMETIMES)
    yield leads_to(BEARINGS_STARVED, CAM_JOURNALS_WORN, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, CAM_JOURNALS_WORN, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, CAM_BEARING_FOUND_BAD, SOMETIMES)
    yield leads_to(METAL_SHED, CAM_JOURNALS_WORN, SELDOM)
    yield leads_to(ENGINE_FAILED, CAMSHAFT_BROKEN, SELDOM)
    yield leads_to(ENGINE_FAILED, PUSHROD_OFF_OR_BENT, SOMETIMES)


@rule(
    source=HB09,
    catches=[
        case_of(HYDRAULIC_LIFTERS, GAUGE_READS_LOW, LIFTERS_QUIET),
        case_of(HYDRAULIC_LIFTERS, LIFTERS_QUIET),
    ],
    spares=[case_of(HYDRAULIC_LIFTERS, GAUGE_READS_LOW, lacks=[LIFTERS_QUIET])],
)
def quiet_lifters_have_oil(known: Known) -> Conclusions:
    """Hydraulic lifters that stay quiet have oil enough: doubt the gauge, or call it normal.

    Misleads with solid lifters, which say nothing either way.
    """
    if known.has(HYDRAULIC_LIFTERS):
        yield leads_to(READING_FALSE, LIFTERS_QUIET, OFTEN)
        yield leads_to(OIL_HOT_NORMAL, LIFTERS_QUIET, MOSTLY)


@rule(
    source=HB09,
    catches=[case_of(CLATTERS_ONLY_AT_HIGH_REVS)],
    spares=[case_of(lacks=[CLATTERS_ONLY_AT_HIGH_REVS])],
)
def lifters_full_of_foam(known: Known) -> Conclusions:
    """Whipped oil collapses the lifters at high revs; with too much oil in the sump above all."""
    yield leads_to(OIL_AERATED, CLATTERS_ONLY_AT_HIGH_REVS, OFTEN)
    yield leads_to(OIL_LEVEL_HIGH, CLATTERS_ONLY_AT_HIGH_REVS, OFTEN)


@rule(
    source=FLV,
    catches=[case_of(SLOW_AFTER_STANDING, TIMING_COVER_RATTLES)],
    spares=[case_of(SLOW_AFTER_STANDING, lacks=[TIMING_COVER_RATTLES, LIFTERS_CLATTER])],
)
def rattle_until_the_line_is_full(known: Known) -> Conclusions:
    """A line that ran empty rattles chain and lifters at the start until it is full again."""
    yield leads_to(DRAINS_BACK, TIMING_COVER_RATTLES, OFTEN)
    yield leads_to(DRAINS_BACK, LIFTERS_CLATTER, SOMETIMES)


@rule(
    source=AHS,
    catches=[
        case_of(CHAIN_TENSIONERS, GAUGE_READS_LOW, TIMING_COVER_RATTLES),
        case_of(CHAIN_TENSIONERS, TENSIONER_SLACK),
    ],
    spares=[case_of(CHAIN_TENSIONERS, lacks=[TIMING_COVER_RATTLES, TENSIONER_SLACK])],
)
def tensioner_lives_on_oil_pressure(known: Known) -> Conclusions:
    """An oil-fed tensioner is only as firm as the pressure behind it."""
    if known.has(CHAIN_TENSIONERS):
        yield leads_to(PRESSURE_LOW, TIMING_COVER_RATTLES, SOMETIMES)
        yield leads_to(PRESSURE_LOW, TENSIONER_SLACK, SELDOM)


@rule(
    source=LTK,
    catches=[case_of(NO_OIL_AT_ROCKERS)],
    spares=[case_of(lacks=[NO_OIL_AT_ROCKERS])],
)
def top_end_dry_though_the_gallery_is_full(known: Known) -> Conclusions:
    """Dry rockers under a good gauge: the branch to the head is shut, often at a cam bearing."""
    yield leads_to(BRANCH_DRY, NO_OIL_AT_ROCKERS, SOMETIMES)
    yield leads_to(BEARING_OIL_HOLE_MISALIGNED, NO_OIL_AT_ROCKERS, OFTEN)


# ---------------------------------------------------------------------- what follows for sure


@rule(
    source=HB09,
    catches=[case_of(LIFTERS_QUIET)],
    spares=[case_of(lacks=[LIFTERS_QUIET]), case_of(LIFTERS_CLATTER)],
)
def quiet_is_not_clatter(known: Known) -> Conclusions:
    """Lifters that are quiet at hot idle do not clatter there."""
    if known.has(LIFTERS_QUIET):
        yield is_absent(LIFTERS_CLATTER, sure=0.95)


@rule(
    source=LTK,
    catches=[case_of(ROCKERS_FLOODED)],
    spares=[case_of(NO_OIL_AT_ROCKERS), case_of(lacks=[ROCKERS_FLOODED])],
)
def flood_is_not_drought(known: Known) -> Conclusions:
    """Where oil floods the cover, oil comes to the rockers, though the far end may be dry."""
    if known.has(ROCKERS_FLOODED):
        yield is_absent(NO_OIL_AT_ROCKERS, sure=0.85)


# ------------------------------------------------------------------ alarms, clashing reports


@rule(
    source=NE2,
    catches=[
        case_of(LIFTERS_CLATTER, GAUGE_READS_LOW),
        case_of(LIFTERS_CLATTER, GAUGE_READS_ZERO),
    ],
    spares=[case_of(LIFTERS_CLATTER), case_of(GAUGE_READS_LOW, lacks=[LIFTERS_CLATTER])],
)
def clatter_and_a_low_gauge(known: Known) -> Conclusions:
    """Clatter with a low or dead gauge: two witnesses say the oil is not there."""
    if known.has(LIFTERS_CLATTER) and known.has(GAUGE_READS_ZERO):
        yield Alarm(
            Severity.STOP,
            "Gauge at zero and the valve gear clatters, no running without pressure: shut down, do "
            "not restart until the cause is found.",
        )
    if known.has(LIFTERS_CLATTER) and known.has(GAUGE_READS_LOW):
        yield Alarm(
            Severity.STOP,
            "Gauge low and the valve gear clatters, both below limit: shut down, read a direct "
            "gauge before any more running.",
        )


@rule(
    source=CP,
    catches=[
        case_of(CAMSHAFT_BROKEN),
        case_of(LIFTER_OUT_OF_BORE),
        case_of(NO_OIL_AT_ROCKERS),
    ],
    spares=[case_of(lacks=[CAMSHAFT_BROKEN, LIFTER_OUT_OF_BORE, NO_OIL_AT_ROCKERS])],
)
def top_end_not_fit_to_run(known: Known) -> Conclusions:
    """A broken cam, a lifter out of its bore or dry rockers make every further turn dear."""
    if known.has(CAMSHAFT_BROKEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Camshaft broken or seized, it must be whole and turn: do not crank or run.",
        )
    if known.has(LIFTER_OUT_OF_BORE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "A lifter is out of its bore, all must be in: do not run, the gallery stands open.",
        )
    if known.has(NO_OIL_AT_ROCKERS):
        yield Alarm(
            Severity.CARE,
            "No oil at the rockers, each needs a steady flow: no running beyond the minute it takes "
            "to look.",
        )


@rule(
    source=HB09,
    catches=[case_of(HYDRAULIC_LIFTERS, LIFTERS_QUIET, DIRECT_GAUGE_ZERO)],
    spares=[
        case_of(LIFTERS_QUIET, DIRECT_GAUGE_ZERO),
        case_of(HYDRAULIC_LIFTERS, LIFTERS_QUIET),
    ],
)
def quiet_lifters_without_pressure(known: Known) -> Conclusions:
    """Hydraulic lifters cannot stay quiet at hot idle with no pressure at all."""
    if known.has(HYDRAULIC_LIFTERS) and known.has(LIFTERS_QUIET) and known.has(DIRECT_GAUGE_ZERO):
        yield Contradiction(
            (LIFTERS_QUIET, DIRECT_GAUGE_ZERO),
            "Quiet hydraulic lifters and a trusted gauge at zero do not agree: try a second gauge "
            "at another port before a restart is thought of.",
            DIRECT_GAUGE_ZERO,
        )


@rule(
    source=HB09,
    catches=[case_of(LIFTERS_QUIET, LIFTERS_CLATTER), case_of(ROCKERS_FLOODED, NO_OIL_AT_ROCKERS)],
    spares=[case_of(LIFTERS_QUIET), case_of(ROCKERS_FLOODED), case_of(FELL_SUDDENLY)],
)
def top_end_reports_that_clash(known: Known) -> Conclusions:
    """Quiet and clattering, flooded and dry: one of the two was seen at another place or heat."""
    if known.has(LIFTERS_QUIET) and known.has(LIFTERS_CLATTER):
        yield Contradiction(
            (LIFTERS_QUIET, LIFTERS_CLATTER),
            "The lifters are said to be quiet and to clatter: listen again at hot idle.",
            LIFTERS_CLATTER,
        )
    if known.has(ROCKERS_FLOODED) and known.has(NO_OIL_AT_ROCKERS):
        yield Contradiction(
            (ROCKERS_FLOODED, NO_OIL_AT_ROCKERS),
            "The rockers are said to be flooded and dry: say which end of which shaft, and look "
            "for a lost end plug.",
            NO_OIL_AT_ROCKERS,
        )
