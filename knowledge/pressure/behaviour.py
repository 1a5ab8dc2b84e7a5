"""Behaviour of the pressure: with heat, manoeuvres, starts, and since which work."""

from knowledge import sources
from knowledge.model import OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from

SAGS_AS_OIL_HEATS = Finding(
    id="sags_as_oil_heats",
    station=Station.INSTRUMENT,
    says="it sags over many minutes as the oil heats and comes back after cooling",
    asks="Does it sag over 5 to 60 minutes of hot running and come back after cooling?",
    source=sources.RESTORER_HOT_FALL_2014,
    denies="no sag with heat",
    stage=Stage.KNOWN,
    normal="steady once warm",
    background=OCCASIONAL,
    also=(
        "drops after an hour",
        "low after a long run",
    ),
)
FADES_AT_SPEED_BACK_AFTER_REST = Finding(
    id="fades_at_speed_back_after_rest",
    station=Station.INSTRUMENT,
    says="it fades after minutes at speed and comes back after a rest",
    asks="Good at first, fading after minutes at speed, back after standing a while?",
    source=sources.TECHNICIAN_ANSWER,
    denies="it does not fade and come back after a rest",
    stage=Stage.KNOWN,
    normal="steady at speed",
    background=RARE,
    also=(
        "comes back after stopping",
        "fine after it sits",
    ),
)
FALLS_IN_A_MANOEUVRE = Finding(
    id="falls_in_a_manoeuvre",
    station=Station.INSTRUMENT,
    says="it falls in bends, under braking, on a slope or when heeling",
    asks="Does it fall in bends, under braking, on slopes or when heeling?",
    source=sources.SUMP_TILT_TEST,
    denies="steady in every manoeuvre",
    stage=Stage.KNOWN,
    normal="steady",
    background=RARE,
    also=(
        "flickers in turns",
        "lamp flickers when braking",
        "drops in corners",
        "under braking",
        "on hills",
        "when heeled over",
        "in a seaway",
        "in heavy seas",
        "under hard braking",
        "lamp on in a turn",
        "loses pressure on a slope",
        "pressure drops in corners",
    ),
)
SLOW_NEEDLE = Finding(
    id="slow_needle",
    station=Station.INSTRUMENT,
    says="the needle is slow to move, or stays up after stopping",
    asks="Needle slow to move, or staying up after stopping?",
    source=COMMON_PRACTICE,
    denies="the needle follows at once",
    stage=Stage.KNOWN,
    normal="falls in a few seconds",
    background=RARE,
    also=(
        "sluggish gauge",
        "gauge sticks",
        "needle stuck",
    ),
)
SLOW_AFTER_STANDING = Finding(
    id="slow_after_standing",
    station=Station.INSTRUMENT,
    says="it takes three seconds or more to build after standing, then is normal",
    asks="After a night's standing: three seconds or more to build, then normal?",
    source=sources.FILTER_MAKER_VALVES,
    denies="it builds at once after standing",
    stage=Stage.KNOWN,
    normal="1 to 3 s to refill a drained filter",
    background=OCCASIONAL,
    also=(
        "slow to build",
        "lamp slow to go out",
        "rattles at start up",
    ),
)
TEN_SECONDS_OR_MORE = Finding(
    id="ten_seconds_or_more",
    station=Station.INSTRUMENT,
    says="it takes ten seconds or more to build, or needs revs",
    asks="Ten seconds or more, or high revs, before any pressure shows?",
    source=sources.OIL_CHANGE_LAMP_TEXT,
    denies="builds within ten seconds",
    stage=Stage.KNOWN,
    normal="stop at 10 s",
    background=RARE,
    also=(
        "takes ages to build pressure",
        "long delay",
    ),
)
NONE_FROM_FIRST_START = Finding(
    id="none_from_first_start",
    station=Station.INSTRUMENT,
    says="no pressure since the first start after work or storage",
    asks="No pressure at all since the first start after the work or storage?",
    source=idea_from(sources.FILTER_MAKER_PRIME),
    denies="there was pressure since then",
    stage=Stage.KNOWN,
    normal="moving within a few seconds",
    background=RARE,
    also=(
        "no oil pressure after rebuild",
        "no pressure on first start",
        "won't build pressure",
    ),
)
LOW_FROM_FIRST_START = Finding(
    id="low_from_first_start",
    station=Station.INSTRUMENT,
    says="low ever since the first start after a rebuild",
    asks="Low ever since the first start after the rebuild?",
    source=sources.GALLERY_PLUG_LEFT_OUT,
    denies="it was right after the rebuild",
    stage=Stage.KNOWN,
    normal="right from the first start",
    background=RARE,
    also=(
        "low since rebuild",
        "never been right",
    ),
)
LOW_FIRST_MINUTES_THEN_GOOD = Finding(
    id="low_first_minutes_then_good",
    station=Station.INSTRUMENT,
    says="low for the first minutes of a new build, then good",
    asks="New build: slow and low for the first minutes, then good?",
    source=idea_from(sources.JOBBER_OIL_PUMPS),
    denies="it was not low for the first minutes",
    stage=Stage.KNOWN,
    normal="good from the start",
    background=VERY_RARE,
    also=(
        "low at first then fine",
        "came up after a few minutes",
    ),
)
CHANGED_WITH_OIL_CHANGE = Finding(
    id="changed_with_oil_change",
    station=Station.INSTRUMENT,
    says="it began straight after an oil or filter change",
    asks="Did it begin straight after an oil or filter change?",
    source=sources.FILTER_MAKER_PRIME,
    denies="no link with an oil change",
    stage=Stage.KNOWN,
    normal="no change",
    background=RARE,
    also=(
        "since the oil change",
        "after new filter",
    ),
)
CHANGED_WITH_GRADE = Finding(
    id="changed_with_grade",
    station=Station.INSTRUMENT,
    says="it changed only when the oil grade changed",
    asks="Did it change when the oil grade changed, and nothing else?",
    source=idea_from(sources.MARINE_OWNERS_MANUAL_2008),
    denies="no link with the grade",
    stage=Stage.KNOWN,
    normal="little change",
    background=VERY_RARE,
    also=(
        "since changing to 5w-30",
        "different oil",
    ),
)
CHANGED_AFTER_KNOCK = Finding(
    id="changed_after_knock",
    station=Station.INSTRUMENT,
    says="it began after a knock or jack under the sump",
    asks="Did it begin after a knock, a jack or a grounding under the sump?",
    source=sources.LOWER_ENGINE_NOISE_2006,
    denies="no knock on the sump",
    stage=Stage.KNOWN,
    normal="no knock",
    background=VERY_RARE,
    also=(
        "hit a rock",
        "grounded",
        "jacked on the oil pan",
    ),
)
CHANGED_WITH_NEW_PUMP = Finding(
    id="changed_with_new_pump",
    station=Station.INSTRUMENT,
    says="it began when the pump was renewed or opened",
    asks="Did it begin when the pump was renewed, opened or taken off?",
    source=idea_from(sources.GALLERY_PLUG_LEFT_OUT),
    denies="no link with pump work",
    stage=Stage.KNOWN,
    normal="better after a new pump",
    background=VERY_RARE,
    also=(
        "since new oil pump",
        "after fitting pump",
    ),
)
CHANGED_AFTER_OTHER_WORK = Finding(
    id="changed_after_other_work",
    station=Station.INSTRUMENT,
    says="it began straight after some other work on the engine",
    asks="Did it begin straight after other work on or near the engine?",
    source=COMMON_PRACTICE,
    denies="no link with other work",
    stage=Stage.KNOWN,
    normal="no link",
    background=RARE,
    also=(
        "after maintenance",
        "since the repair",
        "day after work was done",
    ),
)
