"""Findings about the history of the engine."""

from knowledge import sources
from knowledge.model import COMMON, Finding, Kind, Source, Stage, Station
from knowledge.sources import COMMON_PRACTICE


def history(
    *, id: str, says: str, asks: str, source: Source, also: tuple[str, ...] = ()
) -> Finding:
    """Build a circumstance that is asked at the start."""
    return Finding(
        id=id,
        station=Station.ASSEMBLY,
        says=says,
        asks=asks,
        source=source,
        kind=Kind.HISTORY,
        stage=Stage.KNOWN,
        also=also,
    )


HIGH_MILEAGE = history(
    id="high_mileage",
    says="high mileage or hours",
    asks="High mileage or hours since the last rebuild?",
    source=sources.CARLEY_2000,
    also=("worn out", "old engine", "lots of miles", "high hours"),
)
FRESHLY_REBUILT = history(
    id="freshly_rebuilt",
    says="within the first twenty hours after a rebuild",
    asks="Rebuilt within the last twenty running hours?",
    source=COMMON_PRACTICE,
    also=("just rebuilt", "fresh engine", "first start after rebuild", "new engine"),
)
OIL_JUST_CHANGED = history(
    id="oil_just_changed",
    says="oil or filter changed just before",
    asks="Oil or filter changed just before it began?",
    source=sources.FILTER_MAKER_PRIME,
    also=("after oil change", "new filter", "just serviced"),
)
STOOD_LONG = history(
    id="stood_long",
    says="stood unused for months or years",
    asks="Had the engine stood unused for months or years?",
    source=COMMON_PRACTICE,
    also=("barn find", "stored", "laid up", "over winter", "not run for years"),
)
RACED_OR_HEELED = history(
    id="raced_or_heeled",
    says="raced, cornered hard, heeled, or worked on side slopes",
    asks="Raced, cornered hard, heeled, or worked on side slopes?",
    source=sources.SUMP_TILT_TEST,
    also=("track day", "autocross", "drag race", "heeling", "side slope"),
)
SUMP_OR_PUMP_SWAPPED = history(
    id="sump_or_pump_swapped",
    says="a different sump, pickup or pump was fitted",
    asks="Different sump, pickup or pump fitted before it began?",
    source=COMMON_PRACTICE,
    also=("deep pan", "high volume pump fitted", "engine swap", "different oil pan"),
)
JUST_WORKED_ON = history(
    id="just_worked_on",
    says="other work was done on the engine just before",
    asks="Any other work done on or near the engine just before it began?",
    source=COMMON_PRACTICE,
    also=("after maintenance", "just been in the shop", "part replaced the day before"),
)
FLOODED = history(
    id="flooded",
    says="the engine was flooded or stood under water",
    asks="Was the engine flooded, or did it stand under water?",
    source=COMMON_PRACTICE,
    also=("under water", "submerged", "flooded in the storm", "sank", "shed flooded"),
)
STOOD_IN_FROST = history(
    id="stood_in_frost",
    says="stood or ran in frost just before",
    asks="Standing or running well below freezing just before?",
    source=COMMON_PRACTICE,
    also=("cold soaked", "freezing", "winter", "snow"),
)
HOT_AND_THIN = history(
    id="hot_and_thin",
    says="hot climate or hard hot running on a thin grade",
    asks="Very hot weather, or a thin grade in use?",
    source=COMMON_PRACTICE,
    also=("heat wave", "0W-20", "thin oil in summer"),
)
IDLES_LONG = history(
    id="idles_long",
    says="idles for long or makes only short cold trips",
    asks="Idles for hours, or makes only short cold trips?",
    source=sources.MARINE_OWNERS_MANUAL_2008,
    also=("short trips", "long idling"),
)
SERVICE_NEGLECTED = history(
    id="service_neglected",
    says="oil changes or level checks were neglected",
    asks="Oil changes or level checks neglected?",
    source=COMMON_PRACTICE,
    also=("overdue oil", "never checks the oil", "poor maintenance", "no service history"),
)
WORKED_HARD = history(
    id="worked_hard",
    says="worked at full load or high speed for long",
    asks="At full load or high speed for a long time?",
    source=COMMON_PRACTICE,
    also=("motorway run", "wide open", "full throttle", "towing"),
)
EARLIER_BREAKAGE = history(
    id="earlier_breakage",
    says="some part broke or shed pieces earlier",
    asks="Did anything break or shed pieces inside this engine earlier?",
    source=COMMON_PRACTICE,
    also=("broken rocker", "broken pushrod", "previous failure", "dropped a part"),
)
HISTORY_UNKNOWN = history(
    id="history_unknown",
    says="newly bought or of unknown history",
    asks="Newly bought, or history unknown?",
    source=COMMON_PRACTICE,
    also=("just bought it", "unknown mileage", "used engine", "don't know its history"),
)
STARTED_UNPRIMED = Finding(
    id="started_unprimed",
    station=Station.PUMP,
    says="the oil system was not primed before the first start",
    asks="Started for the first time without priming?",
    source=COMMON_PRACTICE,
    denies="the oil system was primed before the first start",
    stage=Stage.KNOWN,
    normal="primed until a gauge moves or oil comes at the rockers",
    why="a pump that was never wetted may not draw at all",
    background=COMMON,
    also=("not primed", "started dry", "no pre-oiling", "never primed the pump"),
)
SEALANT_USED_FREELY = history(
    id="sealant_used_freely",
    says="a lot of liquid sealant was used on its joints",
    asks="Was a lot of liquid sealant used on its joints?",
    source=COMMON_PRACTICE,
    also=("lots of silicone", "sealer everywhere", "silicone on every joint"),
)
CLEARANCES_NEVER_MEASURED = history(
    id="clearances_never_measured",
    says="bearing clearances were not measured at the rebuild",
    asks="Were any main or rod clearances left unmeasured at the rebuild?",
    source=COMMON_PRACTICE,
    also=("did not check the clearances", "no plastigage", "mains never checked"),
)
UNBRANDED_PUMP = history(
    id="unbranded_pump",
    says="the pump is a reproduction or of no known make",
    asks="Is the pump a reproduction, or of no known make?",
    source=COMMON_PRACTICE,
    also=("reproduction pump", "pattern pump", "cheap pump", "aftermarket pump"),
)
