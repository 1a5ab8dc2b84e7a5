"""Patterns of pressure against speed and oil temperature."""

from knowledge import sources
from knowledge.model import OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from

FLICKERS_ONLY_AT_SPEED = Finding(
    id="flickers_only_at_speed",
    station=Station.INSTRUMENT,
    says="it flickers only above about 3000 rpm and settles below",
    asks="Does it flicker only at high revs (above about 3000 rpm) and settle below?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="no flicker that comes with revs",
    stage=Stage.KNOWN,
    normal="steady at all speeds",
    background=RARE,
    also=(
        "flutters at high rpm",
        "unsteady when revved",
    ),
)
FLICKERS_ONLY_AT_HOT_IDLE = Finding(
    id="flickers_only_at_hot_idle",
    station=Station.INSTRUMENT,
    says="it flickers only at hot idle and is steady off idle",
    asks="Does it flicker only at hot idle and steady itself off idle?",
    source=sources.NEWSPAPER_GAUGE_2010,
    denies="no flicker at hot idle",
    stage=Stage.KNOWN,
    normal="10 to 20 psi at hot idle",
    background=RARE,
    also=(
        "lamp flickers at idle",
        "light flickers at traffic lights",
    ),
)
LOW_HOT_IDLE_GOOD_SPEED = Finding(
    id="low_hot_idle_good_speed",
    station=Station.INSTRUMENT,
    says="low at hot idle, good at speed",
    asks="Low at hot idle but good at speed?",
    source=sources.TRACTOR_WORKSHOP_MANUAL,
    denies="hot idle is no worse than speed",
    stage=Stage.KNOWN,
    normal="hot-idle limits of makers run from 6 to 15 psi",
    background=OCCASIONAL,
    also=(
        "low at idle when hot",
        "fine when driving",
        "low idle pressure",
    ),
)
RISES_JUST_OFF_IDLE = Finding(
    id="rises_just_off_idle",
    station=Station.INSTRUMENT,
    says="low at idle, quickly right just off idle",
    asks="Right as soon as the idle is raised a little (800 to 1200 rpm)?",
    source=idea_from(sources.DIESEL_WORKSHOP_2015),
    denies="no quick recovery off idle",
    stage=Stage.KNOWN,
    normal="rises with revs",
    background=RARE,
    also=(
        "fine off idle",
        "comes up with a touch of throttle",
    ),
)
GOOD_COLD_LOW_HOT = Finding(
    id="good_cold_low_hot",
    station=Station.INSTRUMENT,
    says="good when cold, low when hot",
    asks="Good when cold and low when hot?",
    source=sources.MARINE_SERVICE_MANUAL_1999,
    denies="no fall from cold to hot beyond the usual",
    stage=Stage.KNOWN,
    normal="falls somewhat as the oil warms",
    background=OCCASIONAL,
    also=(
        "sinks as it warms up",
        "gauge drops as it gets hot",
        "drops when warm",
        "ok cold",
        "falls as it heats up",
    ),
)
LOW_AT_ALL_SPEEDS = Finding(
    id="low_at_all_speeds",
    station=Station.INSTRUMENT,
    says="low at all speeds, hot and cold",
    asks="Low at all speeds, hot and cold?",
    source=sources.DIESEL_TESTING_MANUAL,
    denies="not low at all speeds",
    stage=Stage.KNOWN,
    normal="makers' minimum at rated speed is 36 to 45 psi",
    background=RARE,
    also=(
        "always low",
        "low everywhere",
        "low cold and hot",
    ),
)
LOW_EVEN_COLD = Finding(
    id="low_even_cold",
    station=Station.INSTRUMENT,
    says="low even when cold",
    asks="Low even with cold oil?",
    source=COMMON_PRACTICE,
    denies="good when cold",
    stage=Stage.KNOWN,
    normal="cold oil reaches the relief setting",
    background=RARE,
    also=(
        "low from cold",
        "low on cold start",
    ),
)
FALLS_AS_REVS_RISE = Finding(
    id="falls_as_revs_rise",
    station=Station.INSTRUMENT,
    says="it rises with revs at first, then falls as revs rise further",
    asks="Does it fall again as the revs keep rising?",
    source=idea_from(sources.PUMP_MAKER_PRESSURE_FLOW),
    denies="does not fall as revs rise",
    stage=Stage.KNOWN,
    normal="rises to the relief setting and stays",
    background=RARE,
    also=(
        "drops when revved",
        "loses pressure at high rpm",
        "falls on acceleration",
    ),
)
CAPPED_LOW = Finding(
    id="capped_low",
    station=Station.INSTRUMENT,
    says="it stops rising at a low ceiling and stays steady there",
    asks="Does it stop at a low ceiling and stay there at any higher speed?",
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    denies="reaches the relief setting",
    stage=Stage.KNOWN,
    normal="the relief setting, usually 40 to 60 psi",
    background=RARE,
    also=(
        "never gets above 30",
        "maxes out low",
        "tops out",
        "will not go above a certain pressure",
        "does not rise with revs",
        "stops rising however hard it is revved",
    ),
)
NEVER_REACHES_SETTING_COLD = Finding(
    id="never_reaches_setting_cold",
    station=Station.INSTRUMENT,
    says="even cold at speed it never reaches the relief setting",
    asks="Cold at 2500 rpm: does it fail to reach the relief setting?",
    source=idea_from(sources.PUMP_MAKER_PRESSURE_FLOW),
    denies="reaches the relief setting when cold",
    stage=Stage.OUTSIDE,
    normal="reaches the setting when cold",
    background=VERY_RARE,
    also=(
        "never comes up to full pressure",
        "does not reach relief pressure cold",
    ),
)
CLIMBS_PAST_SETTING = Finding(
    id="climbs_past_setting",
    station=Station.INSTRUMENT,
    says="cold pressure climbs past the relief setting with revs",
    asks="Cold: does the pressure keep climbing with revs past the relief setting?",
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    denies="cold pressure stops at the setting",
    stage=Stage.KNOWN,
    normal="stops at the setting",
    background=RARE,
    also=(
        "100 psi cold",
        "pressure keeps climbing",
    ),
)
