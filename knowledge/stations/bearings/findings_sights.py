"""Further sights at crank, bearings, liners and block."""

from knowledge.model import EXCEPTIONAL, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE

CRANK_BROKEN = Finding(
    id="crank_broken",
    station=Station.BEARINGS,
    says="the crank is cracked or broken",
    asks="Crank cracked or broken?",
    source=COMMON_PRACTICE,
    denies="the crank is whole",
    stage=Stage.OPENED,
    normal="whole",
    background=VERY_RARE,
    also=(
        "crankshaft broken",
        "fractured crank",
        "crank snapped",
        "cracked crankshaft",
    ),
)
LINER_BROKEN = Finding(
    id="liner_broken",
    station=Station.BEARINGS,
    says="a cylinder or its liner is cracked, broken or holed",
    asks="Cylinder or liner cracked, broken or holed?",
    source=COMMON_PRACTICE,
    denies="cylinders and liners are whole",
    stage=Stage.OPENED,
    normal="whole",
    background=VERY_RARE,
    also=(
        "cracked liner",
        "fractured cylinder liner",
        "broken sleeve",
        "holed bore",
    ),
)
BLOCK_CRACKED = Finding(
    id="block_cracked",
    station=Station.BEARINGS,
    says="the block or crankcase is cracked",
    asks="Block or crankcase cracked?",
    source=COMMON_PRACTICE,
    denies="block and crankcase are whole",
    stage=Stage.OPENED,
    normal="whole",
    background=EXCEPTIONAL,
    also=(
        "cracked block",
        "fractured crankcase",
        "block split",
        "crack in the bulkhead",
    ),
)
ROD_BROKEN = Finding(
    id="rod_broken",
    station=Station.BEARINGS,
    says="a connecting rod is broken or has come off the crank",
    asks="Connecting rod broken, or off the crank?",
    source=COMMON_PRACTICE,
    denies="every rod is whole and on the crank",
    stage=Stage.OPENED,
    normal="whole, caps on",
    background=VERY_RARE,
    also=(
        "broken conrod",
        "rod let go",
        "rod came off the crank",
        "rod bolt failed",
    ),
)
BORES_OR_PISTONS_SCORED = Finding(
    id="bores_or_pistons_scored",
    station=Station.BEARINGS,
    says="a piston or its bore is scored",
    asks="Piston or bore scored?",
    source=COMMON_PRACTICE,
    denies="pistons and bores are smooth",
    stage=Stage.OPENED,
    normal="honing marks still there, skirts even",
    background=OCCASIONAL,
    also=(
        "scored cylinder",
        "scuffed piston",
        "piston picked up",
        "scratched bores",
    ),
)
WITNESS_MARKS = Finding(
    id="witness_marks",
    station=Station.BEARINGS,
    says="fresh rub or hammer marks show where parts hit each other inside",
    asks="Fresh rub or hammer marks where parts hit each other inside?",
    source=COMMON_PRACTICE,
    denies="no fresh marks inside",
    stage=Stage.OPENED,
    normal="none",
    background=RARE,
    also=(
        "witness marks",
        "rub marks",
        "hammer marks",
        "something has been hitting",
        "polished spot",
    ),
)
CLEARANCES_AT_LIMIT = Finding(
    id="clearances_at_limit",
    station=Station.BEARINGS,
    says="bearing clearances are wide, near the limit but within it",
    asks="Bearing clearances near the limit but not over it?",
    source=COMMON_PRACTICE,
    denies="bearing clearances are well within limits",
    stage=Stage.OPENED,
    normal="the middle of the range",
    background=OCCASIONAL,
    also=(
        "clearance on the loose side",
        "at the top of the range",
        "near the wear limit",
        "wide but within limits",
    ),
)
