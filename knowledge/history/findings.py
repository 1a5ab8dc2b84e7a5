"""Findings about the history of the engine."""

from knowledge import sources
from knowledge.model import Finding, Kind, Source, Stage, Station
from knowledge.sources import COMMON_PRACTICE


def history(id_: str, says: str, asks: str, source: Source, also: tuple[str, ...] = ()) -> Finding:
    """A circumstance asked at the start."""
    return Finding(
        id=id_,
        station=Station.ASSEMBLY,
        says=says,
        asks=asks,
        source=source,
        kind=Kind.HISTORY,
        stage=Stage.KNOWN,
        also=also,
    )


HIGH_MILEAGE = history(
    "high_mileage",
    "high mileage or hours",
    "Has it done high mileage or hours since it was last rebuilt?",
    sources.CARLEY_2000,
    ("worn out", "old engine", "lots of miles", "high hours"),
)
FRESHLY_REBUILT = history(
    "freshly_rebuilt",
    "within the first twenty hours after a rebuild",
    "Was the engine rebuilt within the last twenty running hours?",
    COMMON_PRACTICE,
    ("just rebuilt", "fresh engine", "first start after rebuild", "new engine"),
)
OIL_JUST_CHANGED = history(
    "oil_just_changed",
    "oil or filter changed just before",
    "Was the oil or the filter changed just before it began?",
    sources.FILTER_MAKER_PRIME,
    ("after oil change", "new filter", "just serviced"),
)
STOOD_LONG = history(
    "stood_long",
    "stood for a year or more",
    "Had the engine stood for a year or more?",
    COMMON_PRACTICE,
    ("barn find", "stored", "laid up", "over winter", "not run for years"),
)
RACED_OR_HEELED = history(
    "raced_or_heeled",
    "raced, cornered hard, heeled, or worked on side slopes",
    "Is it raced, cornered hard, heeled, or worked on side slopes?",
    sources.SUMP_TILT_TEST,
    ("track day", "autocross", "drag race", "heeling", "side slope"),
)
SUMP_OR_PUMP_SWAPPED = history(
    "sump_or_pump_swapped",
    "a different sump, pickup or pump was fitted",
    "Was a different sump, pickup or pump fitted before it began?",
    COMMON_PRACTICE,
    ("deep pan", "high volume pump fitted", "engine swap", "different oil pan"),
)
JUST_WORKED_ON = history(
    "just_worked_on",
    "other work was done on the engine just before",
    "Was any other work done on or near the engine just before it began?",
    COMMON_PRACTICE,
    ("after maintenance", "just been in the shop", "part replaced the day before"),
)
STOOD_IN_FROST = history(
    "stood_in_frost",
    "stood or ran in frost just before",
    "Had it stood, or was it running, well below freezing?",
    COMMON_PRACTICE,
    ("cold soaked", "freezing", "winter", "snow"),
)
HOT_AND_THIN = history(
    "hot_and_thin",
    "hot climate or hard hot running on a thin grade",
    "Was it very hot, or was a thin grade in use?",
    sources.MARINE_SERVICE_MANUAL_1999,
    ("heat wave", "0W-20", "thin oil in summer"),
)
IDLES_LONG = history(
    "idles_long",
    "idles for long or makes only short cold trips",
    "Does it idle for hours, or make only short cold trips?",
    sources.PRESSURE_TEST_MANUAL_2005,
    ("short trips", "long idling"),
)
SERVICE_NEGLECTED = history(
    "service_neglected",
    "oil changes or level checks were neglected",
    "Have oil changes or level checks been neglected?",
    sources.CLUB_BLOCKED_SCREENS,
    ("overdue oil", "never checks the oil", "poor maintenance", "no service history"),
)
WORKED_HARD = history(
    "worked_hard",
    "worked at full load or high speed for long",
    "Was it at full load or high speed for a long time?",
    sources.ARMY_TM_280_LIMITS,
    ("motorway run", "wide open", "full throttle", "towing"),
)
EARLIER_BREAKAGE = history(
    "earlier_breakage",
    "some part broke or shed pieces earlier",
    "Did anything break or shed pieces inside this engine earlier?",
    COMMON_PRACTICE,
    ("broken rocker", "broken pushrod", "previous failure", "dropped a part"),
)
HISTORY_UNKNOWN = history(
    "history_unknown",
    "newly bought or of unknown history",
    "Is it newly bought, or is its history unknown?",
    COMMON_PRACTICE,
    ("just bought it", "unknown mileage", "used engine", "don't know its history"),
)
