"""What follows at the galleries, their plugs and their seals."""

from knowledge.causes.assembly import BEARING_OIL_HOLE_MISALIGNED, DIRT_IN_ASSEMBLY, SEALANT_DEBRIS
from knowledge.causes.delivery import (
    GALLERY_BLOCKED,
    GALLERY_CRACK,
    GALLERY_PLUG_MISSING,
    GALLERY_PLUG_TOO_DEEP,
    GALLERY_SEAL_LEAK,
)
from knowledge.conditions import (
    BRANCH_DRY,
    DIRT_IN_OIL,
    FLOW_RESTRICTED,
    JOURNAL_DRY,
    OIL_SLUDGED,
    OPEN_LEAK_INSIDE,
    PRESSURE_GONE,
)
from knowledge.engines.features import OVERHEAD_CAM, PUMP_ON_CRANK_NOSE, PUMP_OUTSIDE
from knowledge.findings.behaviour import (
    CHANGED_AFTER_OTHER_WORK,
    LOW_FROM_FIRST_START,
    NONE_FROM_FIRST_START,
)
from knowledge.findings.delivery import MILKY_FILM_IN_FILTER
from knowledge.findings.delivery_galleries import (
    ALL_PLUGS_ACCOUNTED_FOR,
    GALLERY_FOUND_BLOCKED,
    GALLERY_PLUG_FOUND_MISSING,
    GALLERY_PLUG_FOUND_TOO_DEEP,
    GALLERY_PLUG_IN_WRONG_PASSAGE,
    GALLERY_PLUG_LIES_IN_SUMP,
    GALLERY_SEAL_FOUND_BAD,
    GALLERY_WALL_WEEPS,
    OIL_STREAMS_FROM_OPEN_HOLE,
    OIL_WASH_AT_GALLERY_SEAL,
    ONE_BEARING_GETS_NO_OIL,
)
from knowledge.findings.pressure import FELL_SUDDENLY, GAUGE_READS_LOW, LOW_AT_ALL_SPEEDS
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Contradiction,
    Known,
    case_of,
    is_absent,
    leads_to,
    less_common,
    rules_of,
)
from knowledge.sources import AHS, HB04, HB05, MON, PBB, PSP
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SOMETIMES,
    Severity,
    Shift,
    Station,
)

rule = rules_of(Station.DELIVERY)


@rule(
    source=MON,
    catches=[
        case_of(LOW_FROM_FIRST_START, OIL_STREAMS_FROM_OPEN_HOLE),
        case_of(LOW_AT_ALL_SPEEDS, GALLERY_PLUG_FOUND_MISSING),
        case_of(GALLERY_PLUG_LIES_IN_SUMP),
    ],
    spares=[
        case_of(LOW_AT_ALL_SPEEDS, lacks=[OIL_STREAMS_FROM_OPEN_HOLE, GALLERY_PLUG_FOUND_MISSING])
    ],
)
def hole_in_the_main_line_inside(known: Known) -> Conclusions:
    """An open plug hole lets the main line out inside: low at all speeds, and nothing drips.

    One builder left 10 psi at idle that way and suspected the pump. Misleads when the hole is a
    bleed drilled on purpose.
    """
    yield leads_to(GALLERY_PLUG_MISSING, OPEN_LEAK_INSIDE, ALWAYS)
    yield leads_to(GALLERY_PLUG_MISSING, PRESSURE_GONE, SOMETIMES)
    yield leads_to(GALLERY_PLUG_MISSING, LOW_FROM_FIRST_START, OFTEN)
    yield leads_to(GALLERY_PLUG_MISSING, NONE_FROM_FIRST_START, SOMETIMES)
    yield leads_to(GALLERY_PLUG_MISSING, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(GALLERY_PLUG_MISSING, OIL_STREAMS_FROM_OPEN_HOLE, MOSTLY)
    yield leads_to(GALLERY_PLUG_MISSING, GALLERY_PLUG_FOUND_MISSING, ALWAYS)
    yield leads_to(GALLERY_PLUG_MISSING, GALLERY_PLUG_LIES_IN_SUMP, SOMETIMES)


@rule(
    source=PBB,
    catches=[
        case_of(GALLERY_PLUG_FOUND_TOO_DEEP),
        case_of(GALLERY_PLUG_IN_WRONG_PASSAGE, ONE_BEARING_GETS_NO_OIL),
    ],
    spares=[case_of(lacks=[GALLERY_PLUG_FOUND_TOO_DEEP, GALLERY_PLUG_IN_WRONG_PASSAGE])],
)
def plug_stands_in_the_way_of_a_feed(known: Known) -> Conclusions:
    """A plug too deep, turned, or in the wrong hole masks a feed: one branch runs short.

    The gauge before it looks good or even high; behind it parts fail early after the rebuild.
    """
    yield leads_to(GALLERY_PLUG_TOO_DEEP, FLOW_RESTRICTED, OFTEN)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, BRANCH_DRY, SOMETIMES)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, JOURNAL_DRY, OFTEN)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, LOW_FROM_FIRST_START, SOMETIMES)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, NONE_FROM_FIRST_START, SOMETIMES)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, GALLERY_PLUG_FOUND_TOO_DEEP, MOSTLY)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, GALLERY_PLUG_IN_WRONG_PASSAGE, OFTEN)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, GALLERY_FOUND_BLOCKED, SOMETIMES)
    yield leads_to(GALLERY_PLUG_TOO_DEEP, ONE_BEARING_GETS_NO_OIL, OFTEN)


@rule(
    source=AHS,
    catches=[
        case_of(GAUGE_READS_LOW, OIL_WASH_AT_GALLERY_SEAL),
        case_of(GAUGE_READS_LOW, GALLERY_SEAL_FOUND_BAD),
    ],
    spares=[case_of(GAUGE_READS_LOW, lacks=[OIL_WASH_AT_GALLERY_SEAL, GALLERY_SEAL_FOUND_BAD])],
)
def seal_between_two_castings_lets_by(known: Known) -> Conclusions:
    """A cut or forgotten ring between two castings leaks the gallery into the crankcase."""
    yield leads_to(GALLERY_SEAL_LEAK, OPEN_LEAK_INSIDE, MOSTLY)
    yield leads_to(GALLERY_SEAL_LEAK, LOW_FROM_FIRST_START, SOMETIMES)
    yield leads_to(GALLERY_SEAL_LEAK, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(GALLERY_SEAL_LEAK, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(GALLERY_SEAL_LEAK, OIL_WASH_AT_GALLERY_SEAL, MOSTLY)
    yield leads_to(GALLERY_SEAL_LEAK, GALLERY_SEAL_FOUND_BAD, MOSTLY)


@rule(
    source=HB05,
    catches=[case_of(GAUGE_READS_LOW, GALLERY_WALL_WEEPS)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[GALLERY_WALL_WEEPS])],
)
def wall_of_the_gallery_gives(known: Known) -> Conclusions:
    """A cracked or porous gallery wall leaks more the higher the pressure and the hotter it is."""
    yield leads_to(GALLERY_CRACK, OPEN_LEAK_INSIDE, MOSTLY)
    yield leads_to(GALLERY_CRACK, GALLERY_WALL_WEEPS, MOSTLY)
    yield leads_to(GALLERY_CRACK, MILKY_FILM_IN_FILTER, SOMETIMES)


@rule(
    source=HB04,
    catches=[
        case_of(ONE_BEARING_GETS_NO_OIL, GALLERY_FOUND_BLOCKED),
        case_of(GALLERY_FOUND_BLOCKED),
    ],
    spares=[case_of(GAUGE_READS_LOW, lacks=[ONE_BEARING_GETS_NO_OIL, GALLERY_FOUND_BLOCKED])],
)
def good_before_and_dry_behind(known: Known) -> Conclusions:
    """A blocked gallery is good before and dry behind; the gauge may sit on the good side."""
    yield leads_to(GALLERY_BLOCKED, FLOW_RESTRICTED, MOSTLY)
    yield leads_to(GALLERY_BLOCKED, BRANCH_DRY, SOMETIMES)
    yield leads_to(GALLERY_BLOCKED, JOURNAL_DRY, OFTEN)
    yield leads_to(GALLERY_BLOCKED, GALLERY_FOUND_BLOCKED, ALWAYS)
    yield leads_to(GALLERY_BLOCKED, ONE_BEARING_GETS_NO_OIL, OFTEN)
    yield leads_to(GALLERY_BLOCKED, NONE_FROM_FIRST_START, SOMETIMES)


@rule(
    source=HB04,
    catches=[case_of(ONE_BEARING_GETS_NO_OIL)],
    spares=[case_of(lacks=[ONE_BEARING_GETS_NO_OIL])],
)
def one_dry_while_the_others_flow(known: Known) -> Conclusions:
    """One bearing dry while the others flow: its own hole or branch is shut."""
    yield leads_to(JOURNAL_DRY, ONE_BEARING_GETS_NO_OIL, OFTEN)
    yield leads_to(BEARING_OIL_HOLE_MISALIGNED, ONE_BEARING_GETS_NO_OIL, MOSTLY)


@rule(
    source=CP,
    catches=[case_of(GALLERY_FOUND_BLOCKED)],
    spares=[case_of(lacks=[GALLERY_FOUND_BLOCKED])],
)
def what_blocks_a_gallery(known: Known) -> Conclusions:
    """Sealer, building dirt and sludge are what galleries are found blocked with."""
    yield leads_to(SEALANT_DEBRIS, GALLERY_FOUND_BLOCKED, SOMETIMES)
    yield leads_to(DIRT_IN_ASSEMBLY, GALLERY_FOUND_BLOCKED, SOMETIMES)
    yield leads_to(OIL_SLUDGED, GALLERY_FOUND_BLOCKED, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, GALLERY_FOUND_BLOCKED, SOMETIMES)


# ---------------------------------------------------------------------- what follows for sure


@rule(
    source=PSP,
    catches=[case_of(ALL_PLUGS_ACCOUNTED_FOR)],
    spares=[case_of(), case_of(lacks=[ALL_PLUGS_ACCOUNTED_FOR])],
)
def plugs_counted_and_good(known: Known) -> Conclusions:
    """Plugs all counted, sealed and at depth: none is missing, too deep or in a wrong place.

    Misleads when one plug hides behind the distributor or in the valley and was not counted.
    """
    if known.has(ALL_PLUGS_ACCOUNTED_FOR):
        yield is_absent(GALLERY_PLUG_FOUND_MISSING, sure=0.95)
        yield is_absent(GALLERY_PLUG_FOUND_TOO_DEEP, sure=0.9)
        yield is_absent(GALLERY_PLUG_IN_WRONG_PASSAGE, sure=0.9)


@rule(
    source=HB04,
    catches=[case_of(lacks=[PUMP_ON_CRANK_NOSE, OVERHEAD_CAM, PUMP_OUTSIDE])],
    spares=[
        case_of(PUMP_ON_CRANK_NOSE, lacks=[OVERHEAD_CAM, PUMP_OUTSIDE]),
        case_of(lacks=[OVERHEAD_CAM]),
    ],
)
def few_joints_in_the_pressure_line(known: Known) -> Conclusions:
    """With the pump in the sump and the cam in the block, few sealed joints carry pressure."""
    if known.lacks(PUMP_ON_CRANK_NOSE) and known.lacks(OVERHEAD_CAM) and known.lacks(PUMP_OUTSIDE):
        yield less_common(GALLERY_SEAL_LEAK, Shift.STRONG_DOWN)


# -------------------------------------------------------------------- alarms, clashing reports


@rule(
    source=MON,
    catches=[
        case_of(GALLERY_PLUG_FOUND_MISSING),
        case_of(OIL_STREAMS_FROM_OPEN_HOLE),
        case_of(GALLERY_PLUG_LIES_IN_SUMP),
    ],
    spares=[case_of(lacks=[GALLERY_PLUG_FOUND_MISSING, OIL_STREAMS_FROM_OPEN_HOLE])],
)
def open_hole_in_the_pressure_line(known: Known) -> Conclusions:
    """With a gallery open the bearings get what is left over."""
    if known.has(GALLERY_PLUG_FOUND_MISSING) or known.has(OIL_STREAMS_FROM_OPEN_HOLE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "A gallery stands open inside, every plug must be in: do not run until it is fitted "
            "and the circuit was primed and watched.",
        )
    if known.has(GALLERY_PLUG_LIES_IN_SUMP):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "A loose plug lies in the engine, none may: do not run until its place is found.",
        )


@rule(
    source=HB04,
    catches=[case_of(ONE_BEARING_GETS_NO_OIL)],
    spares=[case_of(lacks=[ONE_BEARING_GETS_NO_OIL])],
)
def bearing_without_oil(known: Known) -> Conclusions:
    """A bearing that gets no oil while priming gets none running, whatever the gauge says."""
    if known.has(ONE_BEARING_GETS_NO_OIL):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "One bearing gets no oil, each must show some at a crank angle: do not run, clear its "
            "feed.",
        )


@rule(
    source=PSP,
    catches=[
        case_of(ALL_PLUGS_ACCOUNTED_FOR, OIL_STREAMS_FROM_OPEN_HOLE),
        case_of(ALL_PLUGS_ACCOUNTED_FOR, GALLERY_PLUG_LIES_IN_SUMP),
    ],
    spares=[case_of(ALL_PLUGS_ACCOUNTED_FOR), case_of(OIL_STREAMS_FROM_OPEN_HOLE)],
)
def plug_count_does_not_add_up(known: Known) -> Conclusions:
    """A full count does not go with a stream from an open hole or a plug in the sump."""
    if known.has(ALL_PLUGS_ACCOUNTED_FOR):
        for sight in (OIL_STREAMS_FROM_OPEN_HOLE, GALLERY_PLUG_LIES_IN_SUMP):
            if known.has(sight):
                yield Contradiction(
                    (ALL_PLUGS_ACCOUNTED_FOR, sight),
                    "All plugs are said to be in, yet one seems to be out: count again with the "
                    "drawing, hidden ones too.",
                    ALL_PLUGS_ACCOUNTED_FOR,
                )
