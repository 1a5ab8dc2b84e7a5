"""What follows when the crank's bearings are where it began."""

from knowledge.causes.bearings import (
    BEARING_SPUN,
    BEARING_WEAR_MAINS,
    BEARING_WEAR_RODS,
    BEARING_WIPED,
    BEARING_WRONG_SIZE,
    BENT_ROD_OR_CRANK,
    JOURNAL_FINISH,
    LINE_BORE_MISALIGNED,
    OVERLOAD_LUGGING,
    THRUST_BEARING_WEAR,
)
from knowledge.conditions import BEARINGS_DAMAGED, CLEARANCES_WIDE, ENGINE_FAILED, METAL_SHED
from knowledge.findings.bearings import (
    BEARING_KNOCK,
    BEARINGS_FAILED_AGAIN,
    CRANK_MOVES_ENDWISE,
    DEEP_KNOCK_UNDER_LOAD,
    HARD_TO_TURN,
    MAIN_BEARING_SHIFTED,
    MAINS_WORN_UNEVENLY,
    ONE_BEARING_WIPED,
    RAP_DULLED_BY_CUT_OUT,
    ROD_OR_CRANK_BENT,
    SHELL_BACKS_SHINY,
    SHELL_EDGES_WORN,
    SHELL_SPUN,
    SHELLS_FLAKING,
    SHELLS_WIPED,
    SHELLS_WORN_EVENLY,
    THRUST_FACE_PLOUGHED,
    WRONG_SHELLS_FITTED,
)
from knowledge.findings.bearings_bench import (
    BEARING_CLEARANCE_TOO_TIGHT,
    CRANK_END_FLOAT_OVER,
    JOURNAL_NOT_TRUE,
    MAIN_BORES_OUT_OF_LINE,
    MAIN_CLEARANCE_TOO_WIDE,
    ROD_CLEARANCE_TOO_WIDE,
)
from knowledge.findings.behaviour import LOW_FROM_FIRST_START
from knowledge.findings.debris import BRIGHT_SOFT_METAL, COPPER_FLAKES, GREY_SOFT_FLAKES
from knowledge.findings.history import WORKED_HARD
from knowledge.findings.pressure import (
    DECLINED_OVER_MONTHS,
    FALLS_AS_REVS_RISE,
    FELL_SUDDENLY,
    GOOD_COLD_LOW_HOT,
    SANK_WHILE_RUNNING,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, more_common, rules_of
from knowledge.sources import BFP, BTG, CEB1, CEB2, HB01, HB04, HB16, MPH, PF
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.BEARINGS)


@rule(
    source=HB01,
    catches=[
        case_of(GOOD_COLD_LOW_HOT, DECLINED_OVER_MONTHS),
        case_of(GOOD_COLD_LOW_HOT, MAIN_CLEARANCE_TOO_WIDE),
    ],
    spares=[case_of(GOOD_COLD_LOW_HOT, lacks=[MAIN_CLEARANCE_TOO_WIDE])],
)
def sinking_over_the_years(known: Known) -> Conclusions:
    """Worn mains let pressure sink over the years: good cold, low hot, even wear without heat.

    Misleads when another leak of the same kind, as a loose cam bearing, was never measured.
    """
    yield leads_to(BEARING_WEAR_MAINS, CLEARANCES_WIDE, ALWAYS)
    yield leads_to(BEARING_WEAR_MAINS, DECLINED_OVER_MONTHS, OFTEN)
    yield leads_to(BEARING_WEAR_MAINS, MAIN_CLEARANCE_TOO_WIDE, ALWAYS)
    yield leads_to(BEARING_WEAR_MAINS, SHELLS_WORN_EVENLY, MOSTLY)
    yield leads_to(BEARING_WEAR_MAINS, JOURNAL_NOT_TRUE, SOMETIMES)
    yield leads_to(BEARING_WEAR_MAINS, DEEP_KNOCK_UNDER_LOAD, SOMETIMES)
    yield leads_to(BEARING_WEAR_MAINS, GREY_SOFT_FLAKES, SELDOM)


@rule(
    source=PF,
    catches=[
        case_of(GOOD_COLD_LOW_HOT, RAP_DULLED_BY_CUT_OUT),
        case_of(GOOD_COLD_LOW_HOT, ROD_CLEARANCE_TOO_WIDE),
    ],
    spares=[
        case_of(GOOD_COLD_LOW_HOT, lacks=[ROD_CLEARANCE_TOO_WIDE, RAP_DULLED_BY_CUT_OUT]),
    ],
)
def rods_fling_more_as_revs_rise(known: Known) -> Conclusions:
    """Worn rods fling out more oil the faster they turn: low at idle, disappointing with revs, at last a rap."""
    yield leads_to(BEARING_WEAR_RODS, CLEARANCES_WIDE, ALWAYS)
    yield leads_to(BEARING_WEAR_RODS, FALLS_AS_REVS_RISE, SOMETIMES)
    yield leads_to(BEARING_WEAR_RODS, DECLINED_OVER_MONTHS, OFTEN)
    yield leads_to(BEARING_WEAR_RODS, ROD_CLEARANCE_TOO_WIDE, ALWAYS)
    yield leads_to(BEARING_WEAR_RODS, SHELLS_WORN_EVENLY, MOSTLY)
    yield leads_to(BEARING_WEAR_RODS, JOURNAL_NOT_TRUE, SOMETIMES)
    yield leads_to(BEARING_WEAR_RODS, RAP_DULLED_BY_CUT_OUT, SOMETIMES)
    yield leads_to(BEARING_WEAR_RODS, COPPER_FLAKES, SOMETIMES)


@rule(
    source=BFP,
    catches=[case_of(FELL_SUDDENLY, SHELLS_WIPED)],
    spares=[case_of(FELL_SUDDENLY, lacks=[SHELLS_WIPED, BEARING_KNOCK])],
)
def fell_and_stayed_down_with_a_knock(known: Known) -> Conclusions:
    """A bearing that wipes lets pressure fall at once and stay down, and then it knocks.

    Misleads more often than not: most wiped bearings were starved first, and the wiping is
    what came of it. Rule that out before naming the bearing.
    """
    yield leads_to(BEARING_WIPED, CLEARANCES_WIDE, MOSTLY)
    yield leads_to(BEARING_WIPED, BEARINGS_DAMAGED, ALWAYS)
    yield leads_to(BEARING_WIPED, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(BEARING_WIPED, SANK_WHILE_RUNNING, SOMETIMES)
    yield leads_to(BEARING_WIPED, ONE_BEARING_WIPED, SOMETIMES)


@rule(
    source=BTG,
    catches=[case_of(BEARING_KNOCK, SHELL_SPUN), case_of(SHELL_SPUN, SHELL_BACKS_SHINY)],
    spares=[case_of(BEARING_KNOCK, lacks=[SHELL_SPUN])],
)
def shell_turned_in_its_seat(known: Known) -> Conclusions:
    """A turned shell shuts its own oil hole: that journal knocks while the gauge hardly stirs.

    Misleads when the shell turned because it had seized for lack of oil.
    """
    yield leads_to(BEARING_SPUN, BEARINGS_DAMAGED, ALWAYS)
    yield leads_to(BEARING_SPUN, CLEARANCES_WIDE, SOMETIMES)
    yield leads_to(BEARING_SPUN, ENGINE_FAILED, SOMETIMES)
    yield leads_to(BEARING_SPUN, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(BEARING_SPUN, BEARING_KNOCK, OFTEN)
    yield leads_to(BEARING_SPUN, SHELL_SPUN, ALWAYS)
    yield leads_to(BEARING_SPUN, SHELL_BACKS_SHINY, OFTEN)
    yield leads_to(BEARING_SPUN, MAIN_BEARING_SHIFTED, SOMETIMES)
    yield leads_to(BEARING_SPUN, ONE_BEARING_WIPED, SOMETIMES)


@rule(
    source=HB16,
    catches=[case_of(CRANK_MOVES_ENDWISE), case_of(CRANK_END_FLOAT_OVER)],
    spares=[case_of(GOOD_COLD_LOW_HOT, lacks=[CRANK_END_FLOAT_OVER])],
)
def crank_that_floats_endways(known: Known) -> Conclusions:
    """A crank that floats endways has lost its thrust faces, and some oil leaves there."""
    yield leads_to(THRUST_BEARING_WEAR, CLEARANCES_WIDE, SOMETIMES)
    yield leads_to(THRUST_BEARING_WEAR, METAL_SHED, SOMETIMES)
    yield leads_to(THRUST_BEARING_WEAR, CRANK_END_FLOAT_OVER, ALWAYS)
    yield leads_to(THRUST_BEARING_WEAR, CRANK_MOVES_ENDWISE, OFTEN)
    yield leads_to(THRUST_BEARING_WEAR, THRUST_FACE_PLOUGHED, MOSTLY)
    yield leads_to(THRUST_BEARING_WEAR, BRIGHT_SOFT_METAL, SOMETIMES)
    yield leads_to(THRUST_BEARING_WEAR, COPPER_FLAKES, SOMETIMES)


@rule(
    source=HB04,
    catches=[
        case_of(LOW_FROM_FIRST_START, WRONG_SHELLS_FITTED),
        case_of(LOW_FROM_FIRST_START, ROD_CLEARANCE_TOO_WIDE, MAIN_CLEARANCE_TOO_WIDE),
    ],
    spares=[
        case_of(
            LOW_FROM_FIRST_START,
            lacks=[WRONG_SHELLS_FITTED, MAIN_CLEARANCE_TOO_WIDE, ROD_CLEARANCE_TOO_WIDE],
        ),
    ],
)
def shells_that_do_not_suit_the_crank(known: Known) -> Conclusions:
    """Shells that do not suit the crank: too loose is low from the first start, too tight soon wipes."""
    yield leads_to(BEARING_WRONG_SIZE, CLEARANCES_WIDE, OFTEN)
    yield leads_to(BEARING_WRONG_SIZE, BEARINGS_DAMAGED, SOMETIMES)
    yield leads_to(BEARING_WRONG_SIZE, LOW_FROM_FIRST_START, OFTEN)
    yield leads_to(BEARING_WRONG_SIZE, WRONG_SHELLS_FITTED, MOSTLY)
    yield leads_to(BEARING_WRONG_SIZE, MAIN_CLEARANCE_TOO_WIDE, OFTEN)
    yield leads_to(BEARING_WRONG_SIZE, ROD_CLEARANCE_TOO_WIDE, OFTEN)
    yield leads_to(BEARING_WRONG_SIZE, BEARING_CLEARANCE_TOO_TIGHT, SOMETIMES)
    yield leads_to(BEARING_WRONG_SIZE, HARD_TO_TURN, SOMETIMES)
    yield leads_to(BEARING_WRONG_SIZE, ONE_BEARING_WIPED, SOMETIMES)
    yield leads_to(BEARING_WRONG_SIZE, BEARINGS_FAILED_AGAIN, SOMETIMES)


@rule(
    source=CEB1,
    catches=[case_of(MAINS_WORN_UNEVENLY), case_of(MAIN_BORES_OUT_OF_LINE)],
    spares=[case_of(SHELLS_WORN_EVENLY, lacks=[MAINS_WORN_UNEVENLY])],
)
def mains_that_differ_along_the_crank(known: Known) -> Conclusions:
    """Mains that differ along the crank sit in bores out of line; new shells alone fail again."""
    yield leads_to(LINE_BORE_MISALIGNED, CLEARANCES_WIDE, OFTEN)
    yield leads_to(LINE_BORE_MISALIGNED, BEARINGS_DAMAGED, SOMETIMES)
    yield leads_to(LINE_BORE_MISALIGNED, MAIN_BORES_OUT_OF_LINE, ALWAYS)
    yield leads_to(LINE_BORE_MISALIGNED, MAINS_WORN_UNEVENLY, MOSTLY)
    yield leads_to(LINE_BORE_MISALIGNED, SHELL_EDGES_WORN, SOMETIMES)
    yield leads_to(LINE_BORE_MISALIGNED, MAIN_CLEARANCE_TOO_WIDE, SOMETIMES)
    yield leads_to(LINE_BORE_MISALIGNED, HARD_TO_TURN, SOMETIMES)
    yield leads_to(LINE_BORE_MISALIGNED, BEARINGS_FAILED_AGAIN, SOMETIMES)


@rule(
    source=CEB2,
    catches=[case_of(JOURNAL_NOT_TRUE), case_of(BEARINGS_FAILED_AGAIN, SHELLS_WORN_EVENLY)],
    spares=[case_of(SHELLS_WORN_EVENLY, lacks=[JOURNAL_NOT_TRUE])],
)
def lining_worn_off_without_heat(known: Known) -> Conclusions:
    """A rough or oval journal files the lining away without heat, within hours of new shells."""
    yield leads_to(JOURNAL_FINISH, CLEARANCES_WIDE, MOSTLY)
    yield leads_to(JOURNAL_FINISH, JOURNAL_NOT_TRUE, ALWAYS)
    yield leads_to(JOURNAL_FINISH, SHELLS_WORN_EVENLY, OFTEN)
    yield leads_to(JOURNAL_FINISH, SHELL_EDGES_WORN, SOMETIMES)
    yield leads_to(JOURNAL_FINISH, ROD_CLEARANCE_TOO_WIDE, OFTEN)
    yield leads_to(JOURNAL_FINISH, MAIN_CLEARANCE_TOO_WIDE, OFTEN)
    yield leads_to(JOURNAL_FINISH, BEARINGS_FAILED_AGAIN, SOMETIMES)


@rule(
    source=BTG,
    catches=[case_of(SHELL_EDGES_WORN, ROD_OR_CRANK_BENT)],
    spares=[case_of(SHELL_EDGES_WORN, lacks=[ROD_OR_CRANK_BENT])],
)
def worn_along_opposite_edges(known: Known) -> Conclusions:
    """Shells worn along opposite edges carried a bent rod or crank."""
    yield leads_to(BENT_ROD_OR_CRANK, CLEARANCES_WIDE, SOMETIMES)
    yield leads_to(BENT_ROD_OR_CRANK, BEARINGS_DAMAGED, SOMETIMES)
    yield leads_to(BENT_ROD_OR_CRANK, SHELL_EDGES_WORN, MOSTLY)
    yield leads_to(BENT_ROD_OR_CRANK, ROD_OR_CRANK_BENT, ALWAYS)
    yield leads_to(BENT_ROD_OR_CRANK, BEARINGS_FAILED_AGAIN, SOMETIMES)
    yield leads_to(BENT_ROD_OR_CRANK, ONE_BEARING_WIPED, SELDOM)


@rule(
    source=MPH,
    catches=[case_of(SHELLS_FLAKING), case_of(SHELLS_FLAKING, BEARING_KNOCK)],
    spares=[case_of(BEARING_KNOCK, lacks=[SHELLS_FLAKING])],
)
def loaded_half_cracks_and_flakes(known: Known) -> Conclusions:
    """A lining that cracks and flakes on its loaded half was hammered; the pressure falls late."""
    yield leads_to(OVERLOAD_LUGGING, CLEARANCES_WIDE, SOMETIMES)
    yield leads_to(OVERLOAD_LUGGING, BEARINGS_DAMAGED, OFTEN)
    yield leads_to(OVERLOAD_LUGGING, METAL_SHED, OFTEN)
    yield leads_to(OVERLOAD_LUGGING, SHELLS_FLAKING, MOSTLY)


@rule(
    source=MPH,
    catches=[case_of(WORKED_HARD)],
    spares=[case_of(lacks=[WORKED_HARD])],
)
def hard_work_tells_on_the_shells(known: Known) -> Conclusions:
    """Long work at full load or speed makes hammered bearings more common."""
    if known.has(WORKED_HARD):
        yield more_common(OVERLOAD_LUGGING)
