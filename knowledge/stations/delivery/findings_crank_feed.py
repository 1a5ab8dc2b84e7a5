"""The seal through which a crank that is fed at its end gets its oil, and the check that shows it."""

from knowledge.engines import features
from knowledge.model import HARDLY_EVER, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.work import Access, Caution, Inspection

CRANK_FEED_SEAL_BAD = Finding(
    id="crank_feed_seal_bad",
    station=Station.DELIVERY,
    says="the seal in the timing cover that feeds the crank's end is worn, hard, folded or missing",
    asks="Timing cover off: crank feed seal worn, hard, folded, back to front or missing?",
    source=COMMON_PRACTICE,
    denies="the crank's feed seal is soft, whole and the right way round",
    stage=Stage.OPENED,
    normal="soft lip that grips the crank's end all round, held by its clip",
    background=HARDLY_EVER,
    also=(
        "crank end feed seal",
        "crank oil feed seal",
        "timing cover oil seal leaks",
        "quill seal",
        "end feed seal",
    ),
)
CRANK_FEED_SEAL_REUSED = Finding(
    id="crank_feed_seal_reused",
    station=Station.DELIVERY,
    says="the seal that feeds the crank's end was used again",
    asks="Crank fed at its end: did its old oil seal in the timing cover go back in?",
    source=COMMON_PRACTICE,
    denies="the crank's feed seal was renewed",
    why="a used lip has set to its old track and lets oil by into the timing case",
    background=VERY_RARE,
    also=("reused the crank feed seal", "old oil seal in the timing cover"),
)
LOOK_AT_THE_CRANK_FEED_SEAL = Inspection(
    id="look_at_the_crank_feed_seal",
    station=Station.DELIVERY,
    says="timing cover off: the oil seal that feeds the crank's end",
    steps=(
        "look at lip and clip, and which way round it sits",
        "push it on the crank's end: the lip must grip all round",
        "feel the crank's end for a groove that the lip has worn",
    ),
    minutes=10,
    access=Access.FRONT_COVER_OFF,
    reveals=(CRANK_FEED_SEAL_BAD,),
    only_with=(features.DRY_SUMP,),
    source=COMMON_PRACTICE,
    tools=("lamp", "mirror"),
    cautions=(Caution.USED_OIL,),
    keep="which way round the seal sat",
    also=("crank end seal", "timing cover oil seal"),
)
