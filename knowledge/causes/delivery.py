"""Root causes at the delivery station: filter, cooler, galleries and their plugs."""

from knowledge.sources import FLV, HB01, HB04, HB05, HB11, MON, PBB, PRM
from knowledge.vocabulary import Cause, Rate, Station

FILTER_BLOCKED = Cause(
    "filter_blocked",
    Station.DELIVERY,
    "the oil filter is loaded with sludge, metal or emulsion",
    "the gallery behind the filter loses 10 to 15 psi until the bypass opens; the pump side reads "
    "normal or high",
    Rate.OCCASIONAL,
    "+ + - + 0",
    "change filter and oil, cut the old filter open, find what loaded it",
    HB11,
    follows="unfiltered oil through the bypass, scratched bearings",
    also=("clogged oil filter", "plugged filter", "filter full of sludge", "blocked element"),
)
FILTER_BYPASS_STUCK = Cause(
    "filter_bypass_stuck",
    Station.DELIVERY,
    "the filter or cooler bypass valve is stuck",
    "stuck open it passes dirty oil with no loss of pressure; stuck shut it starves the engine once "
    "the filter loads up",
    Rate.RARE,
    "+ 0 0 0 0",
    "free or renew the valve, change filter and oil",
    HB01,
    follows="scratched bearings, or starvation with a loaded filter",
    also=("bypass valve stuck", "filter bypass jammed", "cooler bypass stuck open"),
)
FILTER_WRONG = Cause(
    "filter_wrong",
    Station.DELIVERY,
    "wrong filter, two gaskets, wrong stem, or remote hoses crossed",
    "oil gushes out past the seat, or hardly any gets through; it shows at once after the change",
    Rate.OCCASIONAL,
    "0 + ++ 0 0",
    "fit the right filter and stem with one gasket; put the hoses the right way round",
    PRM,
    follows="sudden loss of oil, dry bearings",
    also=(
        "double gasket",
        "old gasket stuck on block",
        "wrong oil filter",
        "filter o-ring missing",
        "hoses swapped on remote filter",
    ),
)
FILTER_DRAINBACK = Cause(
    "filter_drainback",
    Station.DELIVERY,
    "the filter's anti-drain-back valve is missing or hard",
    "the filter empties while the engine stands and takes 1 to 3 seconds to refill; then all is "
    "normal",
    Rate.OCCASIONAL,
    "+ 0 + + 0",
    "fit a filter with a good anti-drain-back valve",
    FLV,
    follows="start-up wear, rattle at every cold start",
    also=("filter drains back", "anti drain back valve", "cheap filter", "start up rattle"),
)
OIL_COOLER_BLOCKED = Cause(
    "oil_cooler_blocked",
    Station.DELIVERY,
    "oil cooler or its lines blocked, or full of congealed cold oil",
    "little oil gets through the cooler: low behind it with hot oil, and sudden recovery when a "
    "plug of cold oil lets go",
    Rate.OCCASIONAL,
    "+ 0 0 + 0",
    "clean or renew cooler and lines, check the cooler thermostat",
    HB01,
    follows="overheated oil, thin oil, worn bearings",
    also=("clogged oil cooler", "kinked cooler line", "cooler hose collapsed", "metal in cooler"),
)
GALLERY_PLUG_MISSING = Cause(
    "gallery_plug_missing",
    Station.DELIVERY,
    "an oil gallery plug was left out, fell out or sits loose inside",
    "a hole in the main line inside the engine: low at all speeds, next to nothing at idle, and no "
    "oil outside",
    Rate.OCCASIONAL,
    "-- ++ 0 0 0",
    "fit the plug, count all against the drawing, prime with the covers off and watch",
    MON,
    follows="wiped bearings; often a new pump is fitted in vain first",
    also=(
        "galley plug missing",
        "oil plug left out",
        "plug behind the timing gear",
        "lifter gallery plug fell out",
        "rear oil plug forgotten",
    ),
)
GALLERY_PLUG_TOO_DEEP = Cause(
    "gallery_plug_too_deep",
    Station.DELIVERY,
    "a gallery plug sits too deep or in the wrong passage, masking a feed",
    "the plug covers a cross-drilling: the line before it holds pressure, the branch behind it runs "
    "short",
    Rate.RARE,
    "-- ++ 0 0 0",
    "pull the plug, fit the right one to the right depth, prove the feed with a rod or with oil",
    PBB,
    follows="the bearing or rocker shaft behind it runs dry",
    also=(
        "plug driven in too far",
        "plug covering oil hole",
        "plug in wrong hole",
        "freeze plug too deep",
    ),
)
GALLERY_SEAL_LEAK = Cause(
    "gallery_seal_leak",
    Station.DELIVERY,
    "an O-ring, feed tube or cover gasket in the oil gallery leaks inside",
    "oil escapes inside from the pressure line: like an open plug, only smaller",
    Rate.OCCASIONAL,
    "+ ++ 0 0 0",
    "renew the seals, check tubes and gasket faces",
    HB04,
    follows="low pressure for years, chain rattle, worn bearings",
    also=(
        "gallery o-ring",
        "front cover gasket oil leak inside",
        "feed tube seal",
        "oil tube loose",
    ),
)
GALLERY_CRACK = Cause(
    "gallery_crack",
    Station.DELIVERY,
    "a crack or porous spot in the wall of an oil gallery",
    "oil leaves through the wall, more when hot and at high pressure, into crankcase or water",
    Rate.RARE,
    "+ 0 0 + +",
    "have the block or head tested; repair or replace it",
    HB05,
    follows="oil in the coolant, water in the oil",
    also=("cracked block", "porous casting", "cracked oil passage", "frost crack"),
)
GALLERY_BLOCKED = Cause(
    "gallery_blocked",
    Station.DELIVERY,
    "an oil gallery is blocked by debris, sealer or sludge",
    "before the blockage the pressure is good or high, behind it parts run dry; the gauge may sit on "
    "the good side",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "plugs out, rod and brush the galleries, prove the flow at every hole",
    HB04,
    follows="one bank, one rod or one shaft fails though the gauge looked good",
    also=("blocked oil passage", "plugged oil galley", "sealer in oil hole", "oilway blocked"),
)
