"""Whether crank and shells go back in."""

from knowledge.model import Station
from knowledge.reuse import Fate, FateRule, UsedPart
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.bearings import (
    findings_measured,
    findings_shell_map,
    findings_shells,
    findings_sights,
)

CRANK = UsedPart(
    id="used_crank",
    station=Station.BEARINGS,
    says="crankshaft",
    rules=(
        FateRule(
            fate=Fate.RENEW,
            when=(findings_sights.CRANK_BROKEN,),
            how="renew it; find what broke it",
            source=COMMON_PRACTICE,
        ),
        FateRule(
            fate=Fate.REWORK,
            when=(
                findings_shells.CRANK_SCORED,
                findings_shells.BEARING_FOUND_SEIZED,
                findings_measured.JOURNAL_NOT_TRUE,
                findings_measured.ROD_OR_CRANK_BENT,
            ),
            how=(
                "machine shop: crack test, straighten, grind to the next undersize and polish; plugs out "
                "and oilways brushed after grinding"
            ),
            source=COMMON_PRACTICE,
        ),
    ),
    look="micrometer on each journal at two places and in two directions; a fingernail along it",
    reuse="polish in the running direction, brush the oilways, reseal the plugs",
    source=COMMON_PRACTICE,
)
SHELLS = UsedPart(
    id="used_shells",
    station=Station.BEARINGS,
    says="bearing shells",
    rules=(
        FateRule(
            fate=Fate.RENEW,
            when=(
                findings_shells.SHELLS_WIPED,
                findings_shells.SHELL_SPUN,
                findings_shells.SHELL_BACKS_SHINY,
                findings_shells.SHELLS_WORN_EVENLY,
                findings_shells.SHELLS_EMBEDDED_DIRT,
                findings_shells.SHELLS_SCRATCHED,
                findings_shells.SHELLS_ETCHED,
                findings_shells.SHELLS_FLAKING,
                findings_shells.SHELLS_FOUND_RUINED,
                findings_shells.BEARING_FOUND_SEIZED,
                findings_shells.SIGNS_OF_STARVATION,
                findings_shells.DAMAGED_BY_DEBRIS_ONLY,
                findings_shell_map.WRONG_SHELLS_FITTED,
                findings_measured.MAIN_CLEARANCE_TOO_WIDE,
                findings_measured.ROD_CLEARANCE_TOO_WIDE,
                findings_measured.BEARING_CLEARANCE_TOO_TIGHT,
            ),
            how="measure the journals, then renew the whole set of that kind",
            source=COMMON_PRACTICE,
        ),
    ),
    look="every shell, front and back, in its own place; the clearance of each",
    reuse="refit in the same place and the same way round; most people renew them while it is open",
    source=COMMON_PRACTICE,
    sound=(findings_shells.SHELLS_LOOK_NORMAL, findings_shells.SHELLS_SMOOTH_LIGHT_WEAR),
)
