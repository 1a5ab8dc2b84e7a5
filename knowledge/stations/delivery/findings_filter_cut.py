"""Filter cut open, bypass and cooler, and the checks that show them."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.debris import findings as debris_findings
from knowledge.engines import features
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

FILTER_COLLAPSED = Finding(
    id="filter_collapsed",
    station=Station.DELIVERY,
    says="the filter element is crushed, torn or its core collapsed",
    asks="Filter cut open: element crushed or torn, or centre tube collapsed?",
    source=COMMON_PRACTICE,
    denies="the element is in shape",
    stage=Stage.OPENED,
    normal="even pleats, round core",
    why="a crushed element stops the oil or sends pieces down the gallery",
    background=EXCEPTIONAL,
    also=("element caved in", "filter imploded", "crushed filter", "torn filter paper"),
)
FILTER_PACKED = Finding(
    id="filter_packed",
    station=Station.DELIVERY,
    says="the filter element is packed with sludge, metal or dirt",
    asks="Filter cut open: element packed with sludge, metal or dirt?",
    source=sources.MARINE_DIESEL_MANUAL,
    denies="the element is only stained",
    stage=Stage.OPENED,
    normal="stained, little on the pleats",
    background=EXCEPTIONAL,
    also=("filter loaded up", "filter full of sludge", "clogged element", "pleats plugged"),
)
FILTER_BYPASS_WITNESS = Finding(
    id="filter_bypass_witness",
    station=Station.DELIVERY,
    says="there is dirt on the filter's clean side: the bypass has been open",
    asks="Dirt on the filter's clean side, or a mark that the bypass opened?",
    source=COMMON_PRACTICE,
    denies="the filter's clean side is clean",
    stage=Stage.OPENED,
    normal="clean inside",
    background=RARE,
    also=("dirty inside of element", "bypass has been open", "dirt in center tube"),
)
MILKY_FILM_IN_FILTER = Finding(
    id="milky_film_in_filter",
    station=Station.DELIVERY,
    says="a grey milky film or white paste coats the filter element",
    asks="Filter cut open: grey milky film or white paste on the element?",
    source=idea_from(sources.LABORATORY_COOLANT),
    denies="no milky film in the filter",
    stage=Stage.OPENED,
    normal="none",
    background=EXCEPTIONAL,
    also=("white goo in filter", "mayonnaise in oil filter", "emulsion in filter", "milky filter"),
)
GASKET_SHREDS_FOUND = Finding(
    id="gasket_shreds_found",
    station=Station.DELIVERY,
    says="there are shreds of gasket or fibre in filter or sump",
    asks="Shreds of gasket or fibre in the filter or sump?",
    source=COMMON_PRACTICE,
    denies="no gasket shreds",
    stage=Stage.OPENED,
    normal="none",
    background=RARE,
    also=("bits of gasket in pan", "fiber in the filter", "paper gasket pieces", "gasket material"),
)
SEALER_IN_FILTER = Finding(
    id="sealer_in_filter",
    station=Station.DELIVERY,
    says="strings or crumbs of sealer lie in the filter",
    asks="Filter cut open: strings or crumbs of sealer?",
    source=sources.CLUB_SEALANT_STRAINER,
    denies="no sealer in the filter",
    stage=Stage.OPENED,
    normal="none",
    background=EXCEPTIONAL,
    also=("silicone in the filter", "bits of sealant in oil filter", "rtv worms in the filter"),
)
CUT_THE_FILTER_OPEN = Inspection(
    id="cut_the_filter_open",
    station=Station.DELIVERY,
    says="cut the filter open and spread the element",
    steps=(
        "let it drain, overnight if there is time",
        "cut with a filter cutter, never a saw: its chips look like engine metal",
        "look at core, clean side and bypass mark, then unfold the pleats in a white tray",
        "go over it with a magnet; bag what you find",
    ),
    minutes=15,
    access=Access.FILTER_CUT,
    reveals=(
        FILTER_COLLAPSED,
        FILTER_PACKED,
        FILTER_BYPASS_WITNESS,
        MILKY_FILM_IN_FILTER,
        GASKET_SHREDS_FOUND,
        SEALER_IN_FILTER,
        debris_findings.METAL_IN_FILTER,
        debris_findings.FINE_DUST_ONLY,
    ),
    source=sources.CUT_FILTER_ANALYSIS_2026,
    tools=("filter cutter", "white tray", "magnet", "gloves"),
    cautions=(Caution.SHARP, Caution.USED_OIL, Caution.WASTE),
    destroys="the filter",
    keep="photograph the pleats with a scale, bag debris",
    waits_minutes=60,
    also=("cut open oil filter", "dissect the filter", "inspect filter"),
)

SORT_WHAT_THE_FILTER_HELD = Inspection(
    id="sort_what_the_filter_held",
    station=Station.DELIVERY,
    says="sort the debris by magnet, magnifier and bending",
    steps=(
        "rinse in a little solvent, dry on white paper",
        "sort it: magnetic, bright and soft, copper, grey flakes, fibre, black and hard",
        "photograph each pile with a scale and label it with where it came from",
    ),
    minutes=10,
    access=Access.FILTER_CUT,
    reveals=(
        debris_findings.MAGNETIC_METAL,
        debris_findings.BRIGHT_SOFT_METAL,
        debris_findings.COPPER_FLAKES,
        debris_findings.GREY_SOFT_FLAKES,
        debris_findings.LINING_STRIP,
        debris_findings.CARBON_FLAKES,
        debris_findings.HARD_CHIPS,
        GASKET_SHREDS_FOUND,
    ),
    source=COMMON_PRACTICE,
    tools=("magnet", "magnifier", "solvent", "white paper"),
    cautions=(Caution.SOLVENT, Caution.SHARP, Caution.WASTE),
    keep="keep the piles bagged until sign-off",
    also=(
        "what is the metal in the filter",
        "magnet through the filter debris",
    ),
)

FILTER_BYPASS_STUCK_OPEN = Finding(
    id="filter_bypass_stuck_open",
    station=Station.DELIVERY,
    says="the filter or cooler bypass valve is open",
    asks="Bypass valve stuck open, seat dirty, or spring broken?",
    source=sources.ARMY_TM_347_CHART_1973,
    denies="the bypass valve sits on its seat",
    stage=Stage.OPENED,
    normal="shut on its seat, moves under a finger",
    background=HARDLY_EVER,
    also=("bypass jammed open", "broken bypass spring", "filter bypass not sealing"),
)
FILTER_BYPASS_STUCK_SHUT = Finding(
    id="filter_bypass_stuck_shut",
    station=Station.DELIVERY,
    says="the filter bypass valve is stuck shut",
    asks="Bypass valve: does it refuse to open when pushed?",
    source=idea_from(sources.ARMY_TM_347_CHART_1973),
    denies="the bypass valve opens when pushed",
    stage=Stage.OPENED,
    normal="lifts when pushed, springs back",
    background=HARDLY_EVER,
    also=("bypass seized", "filter bypass blocked off", "bypass plugged"),
)
BYPASS_VALVE_MISFITTED = Finding(
    id="bypass_valve_misfitted",
    station=Station.DELIVERY,
    says="the filter's bypass valve was fitted wrongly",
    asks="Filter bypass valve fitted wrongly, or the wrong one fitted?",
    source=COMMON_PRACTICE,
    denies="the bypass valve is fitted right",
    stage=Stage.OPENED,
    normal="as the maker's drawing",
    background=EXCEPTIONAL,
    also=(
        "bypass valve wrong way round",
        "wrong bypass valve",
    ),
)
CHECK_THE_BYPASS_IN_THE_HEAD = Inspection(
    id="check_the_bypass_in_the_head",
    station=Station.DELIVERY,
    says="filter head: does the bypass valve seat and move?",
    steps=(
        "light on seat and spring",
        "push the valve gently with a blunt pick: it must lift and come back",
    ),
    minutes=10,
    access=Access.FILTER_OFF,
    reveals=(BYPASS_VALVE_MISFITTED, FILTER_BYPASS_STUCK_OPEN, FILTER_BYPASS_STUCK_SHUT),
    source=sources.ARMY_TM_347_CHART_1973,
    tools=("lamp", "blunt pick"),
    cautions=(Caution.HOT, Caution.EYES),
    also=(
        "filter bypass valve",
        "check the bypass",
    ),
)

NEW_FILTER_CURED_IT = Finding(
    id="new_filter_cured_it",
    station=Station.DELIVERY,
    says="a new filter alone brought the pressure back",
    asks="Did a new filter, and nothing else, bring the pressure back?",
    source=sources.MARINE_DIESEL_MANUAL,
    denies="a new filter made no difference",
    normal="a filter change hardly moves the gauge",
    background=VERY_RARE,
    also=("changed filter and it's fine", "fixed by new filter", "filter change cured it"),
)
CHANGE_THE_FILTER_AND_READ_AGAIN = Inspection(
    id="change_the_filter_and_read_again",
    station=Station.DELIVERY,
    says="fit a new listed filter, nothing else, and read again",
    steps=(
        "note warm readings first; change only the filter and top up to the mark",
        "watch the gauge from the first second; stop if nothing shows within ten",
        "compare at the same oil temperature",
    ),
    minutes=20,
    access=Access.FILTER_OFF,
    reveals=(NEW_FILTER_CURED_IT,),
    source=COMMON_PRACTICE,
    tools=("listed filter", "trusted gauge"),
    cautions=(*RUNNING, Caution.WASTE),
    destroys="the baseline, if it was not written down",
    keep="keep the old filter for cutting",
    needs_running=True,
    also=(
        "try another filter",
        "swap the filter",
    ),
)

COOLER_BYPASSED_CURES = Finding(
    id="cooler_bypassed_cures",
    station=Station.DELIVERY,
    says="with the cooler bypassed the pressure came right",
    asks="Cooler and lines bypassed by a short loop: did the pressure come right?",
    source=COMMON_PRACTICE,
    denies="bypassing the cooler changed nothing",
    stage=Stage.OPENED,
    normal="no change beyond a few psi",
    background=VERY_RARE,
    also=("looped the cooler lines", "pressure back without the cooler", "removed oil cooler"),
)
COOLER_FOUND_BLOCKED = Finding(
    id="cooler_found_blocked",
    station=Station.DELIVERY,
    says="the oil cooler, its line or hose was found blocked, kinked or flattened",
    asks="Cooler, its line or hose blocked, kinked or collapsed inside?",
    source=sources.ARMY_TM_347_CHART_1973,
    denies="cooler and lines are clear",
    stage=Stage.OPENED,
    normal="oil or air passes freely",
    background=EXCEPTIONAL,
    also=("cooler plugged up", "hose liner collapsed", "kinked oil line", "cooler full of metal"),
)
LOOP_THE_COOLER_OUT = Inspection(
    id="loop_the_cooler_out",
    station=Station.DELIVERY,
    says="bypass the cooler and look into its lines",
    steps=(
        "cold engine: join feed and return with rated hose, or fit the maker's blank",
        "blow gently through cooler and each line; look for loose liner and kinks",
        "read the pressure again, briefly, while you watch the oil temperature",
    ),
    minutes=45,
    access=Access.DRAINED,
    reveals=(COOLER_BYPASSED_CURES, COOLER_FOUND_BLOCKED),
    source=COMMON_PRACTICE,
    tools=("rated hose and fittings", "low-pressure air", "trusted gauge"),
    cautions=(*RUNNING, Caution.PRESSURE, Caution.EYES),
    needs_running=True,
    also=("bypass oil cooler", "check cooler lines"),
)
LOOK_THROUGH_THE_COOLER_LINES = Inspection(
    id="look_through_the_cooler_lines",
    station=Station.DELIVERY,
    says="cooler lines off, engine stopped: look and blow through",
    steps=(
        "cold engine, a tray below: take both lines off the cooler; mark which is which",
        "look through each hose with a light: a loose liner, a fold, a kink, debris",
        "blow gently through cooler and each line, then the other way; some flaps close one way",
        "watch what comes out; refit with new seals and look for leaks when it runs",
    ),
    minutes=30,
    access=Access.OUTSIDE,
    reveals=(COOLER_FOUND_BLOCKED,),
    source=COMMON_PRACTICE,
    tools=("line wrenches", "light", "low-pressure air", "tray"),
    cautions=(Caution.HOT, Caution.PRESSURE, Caution.EYES, Caution.WASTE),
    only_with=(features.OIL_COOLER,),
    also=("look into the cooler", "cooler hoses off"),
)
