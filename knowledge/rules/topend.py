"""What follows at cam, lifters, rockers and timing drive."""

from knowledge.causes.topend import (
    CAM_BEARING_WEAR,
    LIFTER_BORE_LEAK,
    ROCKER_SHAFT_LEAK,
    TENSIONER_SEAL_LEAK,
)
from knowledge.conditions import (
    CLEARANCES_WIDE,
    METAL_SHED,
    OPEN_LEAK_INSIDE,
    PRESSURE_GONE,
    VALVE_GEAR_DRY,
)
from knowledge.engines.features import (
    CHAIN_TENSIONERS,
    HYDRAULIC_LIFTERS,
    OVERHEAD_CAM,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    PUMP_OUTSIDE,
)
from knowledge.findings.behaviour import CHANGED_AFTER_OTHER_WORK, LOW_FROM_FIRST_START
from knowledge.findings.pressure import (
    DECLINED_OVER_MONTHS,
    FELL_SUDDENLY,
    GAUGE_READS_LOW,
    GOOD_COLD_LOW_HOT,
    LOW_HOT_IDLE_GOOD_SPEED,
    RISES_JUST_OFF_IDLE,
)
from knowledge.findings.topend import (
    CAM_BEARING_CLEARANCE,
    CAM_BEARING_FOUND_BAD,
    CAM_BEARING_POURS,
    CAM_CLEARANCE_WIDE,
    CAM_JOURNALS_WORN,
    CAM_LOBES_WIPED,
    CAMSHAFT_BROKEN,
    LIFTER_BORE_POURS,
    LIFTER_OUT_OF_BORE,
    LIFTERS_CLATTER,
    LIFTERS_LOOSE_IN_BORES,
    NO_OIL_AT_ROCKERS,
    PUSHROD_OFF_OR_BENT,
    ROCKER_SHAFT_FOUND_WORN,
    ROCKERS_FLOODED,
    TENSIONER_FLOODS,
    TENSIONER_SEAL_ABSENT,
    TENSIONER_SLACK,
    TIMING_COVER_RATTLES,
)
from knowledge.reference.judging import sure_beyond
from knowledge.reference.limits import CAM_CLEARANCE
from knowledge.rulebook import (
    Conclusions,
    Known,
    cannot_be,
    case_of,
    is_absent,
    is_present,
    leads_to,
    less_common,
    rules_of,
)
from knowledge.sources import AHS, HB12, MRG, PF, PGN, TMC
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.TOPEND)


@rule(
    source=MRG,
    catches=[
        case_of(GOOD_COLD_LOW_HOT, CAM_BEARING_POURS),
        case_of(LOW_HOT_IDLE_GOOD_SPEED, CAM_CLEARANCE_WIDE),
        case_of(CAM_BEARING_FOUND_BAD, CAM_JOURNALS_WORN),
    ],
    spares=[
        case_of(LOW_HOT_IDLE_GOOD_SPEED, lacks=[CAM_CLEARANCE_WIDE, CAM_BEARING_FOUND_BAD]),
        case_of(GOOD_COLD_LOW_HOT, lacks=[CAM_BEARING_POURS]),
    ],
)
def leak_nobody_suspects_at_the_cam(known: Known) -> Conclusions:
    """A worn cam bearing leaks as much as a main and is looked at last: low at hot idle.

    One club found the middle bearing at ten times its clearance after bearings and pump were new.
    """
    yield leads_to(CAM_BEARING_WEAR, CLEARANCES_WIDE, ALWAYS)
    yield leads_to(CAM_BEARING_WEAR, VALVE_GEAR_DRY, SOMETIMES)
    yield leads_to(CAM_BEARING_WEAR, METAL_SHED, SOMETIMES)
    yield leads_to(CAM_BEARING_WEAR, DECLINED_OVER_MONTHS, SOMETIMES)
    yield leads_to(CAM_BEARING_WEAR, NO_OIL_AT_ROCKERS, SOMETIMES)
    yield leads_to(CAM_BEARING_WEAR, CAM_BEARING_POURS, MOSTLY)
    yield leads_to(CAM_BEARING_WEAR, CAM_CLEARANCE_WIDE, MOSTLY)
    yield leads_to(CAM_BEARING_WEAR, CAM_BEARING_FOUND_BAD, MOSTLY)
    yield leads_to(CAM_BEARING_WEAR, CAM_JOURNALS_WORN, SOMETIMES)
    yield leads_to(CAM_BEARING_WEAR, CAMSHAFT_BROKEN, SELDOM)


@rule(
    source=PF,
    catches=[
        case_of(LOW_HOT_IDLE_GOOD_SPEED, LIFTERS_LOOSE_IN_BORES),
        case_of(GAUGE_READS_LOW, LIFTER_BORE_POURS),
        case_of(FELL_SUDDENLY, LIFTER_OUT_OF_BORE),
    ],
    spares=[
        case_of(
            LOW_HOT_IDLE_GOOD_SPEED,
            lacks=[LIFTERS_LOOSE_IN_BORES, LIFTER_BORE_POURS, LIFTER_OUT_OF_BORE],
        )
    ],
)
def sheet_of_oil_from_a_lifter_bore(known: Known) -> Conclusions:
    """Worn lifter bores let the lifter gallery out; a lifter right out empties it at hot idle."""
    yield leads_to(LIFTER_BORE_LEAK, CLEARANCES_WIDE, MOSTLY)
    yield leads_to(LIFTER_BORE_LEAK, OPEN_LEAK_INSIDE, SOMETIMES)
    yield leads_to(LIFTER_BORE_LEAK, PRESSURE_GONE, SOMETIMES)
    yield leads_to(LIFTER_BORE_LEAK, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(LIFTER_BORE_LEAK, LIFTERS_CLATTER, OFTEN)
    yield leads_to(LIFTER_BORE_LEAK, LIFTER_BORE_POURS, MOSTLY)
    yield leads_to(LIFTER_BORE_LEAK, LIFTERS_LOOSE_IN_BORES, OFTEN)
    yield leads_to(LIFTER_BORE_LEAK, LIFTER_OUT_OF_BORE, OFTEN)
    yield leads_to(LIFTER_BORE_LEAK, PUSHROD_OFF_OR_BENT, SOMETIMES)
    yield leads_to(LIFTER_BORE_LEAK, CAM_LOBES_WIPED, SOMETIMES)


@rule(
    source=HB12,
    catches=[
        case_of(GAUGE_READS_LOW, ROCKERS_FLOODED, ROCKER_SHAFT_FOUND_WORN),
        case_of(ROCKER_SHAFT_FOUND_WORN),
    ],
    spares=[case_of(GAUGE_READS_LOW, lacks=[ROCKERS_FLOODED, ROCKER_SHAFT_FOUND_WORN])],
)
def rocker_shaft_lets_the_oil_out(known: Known) -> Conclusions:
    """A worn rocker shaft or a lost end plug floods the cover and leaves the far end dry."""
    yield leads_to(ROCKER_SHAFT_LEAK, CLEARANCES_WIDE, MOSTLY)
    yield leads_to(ROCKER_SHAFT_LEAK, OPEN_LEAK_INSIDE, SOMETIMES)
    yield leads_to(ROCKER_SHAFT_LEAK, ROCKERS_FLOODED, MOSTLY)
    yield leads_to(ROCKER_SHAFT_LEAK, ROCKER_SHAFT_FOUND_WORN, MOSTLY)
    yield leads_to(ROCKER_SHAFT_LEAK, LIFTERS_CLATTER, SOMETIMES)


@rule(
    source=AHS,
    catches=[
        case_of(CHANGED_AFTER_OTHER_WORK, TIMING_COVER_RATTLES, TENSIONER_SEAL_ABSENT),
        case_of(RISES_JUST_OFF_IDLE, TENSIONER_FLOODS),
    ],
    spares=[
        case_of(
            CHANGED_AFTER_OTHER_WORK,
            lacks=[TIMING_COVER_RATTLES, TENSIONER_SEAL_ABSENT, TENSIONER_FLOODS],
        )
    ],
)
def timing_case_takes_the_oil(known: Known) -> Conclusions:
    """A tensioner without its gasket pours the gallery into the timing case, and the chain rattles.

    One engine read nothing at idle and 40 psi at 2000 rpm, straight after a chain kit.
    """
    yield leads_to(TENSIONER_SEAL_LEAK, OPEN_LEAK_INSIDE, ALWAYS)
    yield leads_to(TENSIONER_SEAL_LEAK, RISES_JUST_OFF_IDLE, OFTEN)
    yield leads_to(TENSIONER_SEAL_LEAK, LOW_HOT_IDLE_GOOD_SPEED, OFTEN)
    yield leads_to(TENSIONER_SEAL_LEAK, CHANGED_AFTER_OTHER_WORK, OFTEN)
    yield leads_to(TENSIONER_SEAL_LEAK, LOW_FROM_FIRST_START, SOMETIMES)
    yield leads_to(TENSIONER_SEAL_LEAK, TIMING_COVER_RATTLES, MOSTLY)
    yield leads_to(TENSIONER_SEAL_LEAK, TENSIONER_FLOODS, MOSTLY)
    yield leads_to(TENSIONER_SEAL_LEAK, TENSIONER_SEAL_ABSENT, MOSTLY)
    yield leads_to(TENSIONER_SEAL_LEAK, TENSIONER_SLACK, OFTEN)


# ------------------------------------------------------------------------------ measured


@rule(
    source=TMC,
    catches=[
        case_of(measures={CAM_BEARING_CLEARANCE: 0.00025}),
        case_of(measures={CAM_BEARING_CLEARANCE: 0.00012}),
    ],
    spares=[case_of(), case_of(GOOD_COLD_LOW_HOT)],
)
def cam_clearance_against_its_limit(known: Known) -> Conclusions:
    """The largest cam bearing clearance measured, held against the limit."""
    clearance = known.measured(CAM_BEARING_CLEARANCE)
    if clearance is not None:
        sure = sure_beyond(clearance, known.limit(CAM_CLEARANCE), CAM_BEARING_CLEARANCE.spread)
        if sure >= 0.5:
            yield is_present(CAM_CLEARANCE_WIDE, sure)
        else:
            yield is_absent(CAM_CLEARANCE_WIDE, 1.0 - sure)


# -------------------------------------------------------------------------------- layout


@rule(
    source=PGN,
    catches=[case_of(lacks=[HYDRAULIC_LIFTERS, PUMP_ON_DISTRIBUTOR_SHAFT])],
    spares=[
        case_of(HYDRAULIC_LIFTERS, lacks=[PUMP_ON_DISTRIBUTOR_SHAFT]),
        case_of(lacks=[HYDRAULIC_LIFTERS]),
    ],
)
def no_lifter_gallery_to_leak(known: Known) -> Conclusions:
    """Solid lifters that no pressure gallery feeds have no gallery to let out."""
    if known.lacks(HYDRAULIC_LIFTERS) and known.lacks(PUMP_ON_DISTRIBUTOR_SHAFT):
        yield cannot_be(LIFTER_BORE_LEAK)


@rule(
    source=AHS,
    catches=[case_of(lacks=[CHAIN_TENSIONERS])],
    spares=[case_of(CHAIN_TENSIONERS), case_of()],
)
def no_oil_fed_tensioner(known: Known) -> Conclusions:
    """Without an oil-fed tensioner there is no tensioner seal to leak."""
    if known.lacks(CHAIN_TENSIONERS):
        yield cannot_be(TENSIONER_SEAL_LEAK)
        yield is_absent(TENSIONER_FLOODS)
        yield is_absent(TENSIONER_SEAL_ABSENT)


@rule(
    source=CP,
    catches=[case_of(lacks=[OVERHEAD_CAM, PUMP_ON_SKEW_GEAR, PUMP_OUTSIDE])],
    spares=[
        case_of(PUMP_ON_SKEW_GEAR, lacks=[OVERHEAD_CAM, PUMP_OUTSIDE]),
        case_of(lacks=[OVERHEAD_CAM]),
    ],
)
def rockers_oiled_through_pushrods(known: Known) -> Conclusions:
    """Where the oil comes up through pushrods, there is seldom a rocker shaft to leak.

    Misleads on the few vee engines that carry rocker shafts all the same.
    """
    if known.lacks(OVERHEAD_CAM) and known.lacks(PUMP_ON_SKEW_GEAR) and known.lacks(PUMP_OUTSIDE):
        yield less_common(ROCKER_SHAFT_LEAK)
