"""Whether oil arrives where no gauge shows it: dippers, troughs, drips, oil injection."""

from knowledge import sources
from knowledge.engines import features_kinds
from knowledge.model import OCCASIONAL, RARE, Finding, Stage, Station
from knowledge.sources import idea_from
from knowledge.work import Access, Caution, Inspection

FEED_NOT_SEEN = Finding(
    id="feed_not_seen",
    station=Station.OIL,
    says="no oil is seen to arrive: no drops, no splash, no flow, or air in the line",
    asks="Is no oil seen to arrive: no drops, splash or flow, or air in its line?",
    source=idea_from(sources.GAS_ENGINE_HANDBOOK),
    denies="oil is seen to arrive",
    stage=Stage.OUTSIDE,
    background=RARE,
    also=("no drops", "oiler not dripping", "no oil in the sight glass", "air in the oil line"),
)
BEARING_TOO_HOT = Finding(
    id="bearing_too_hot",
    station=Station.OIL,
    says="a bearing is too hot for a hand after a stop",
    asks="After a stop, is a bearing too hot to keep a hand on?",
    source=sources.GAS_ENGINE_HANDBOOK,
    denies="every bearing can be touched after a stop",
    stage=Stage.OUTSIDE,
    background=OCCASIONAL,
    also=("hot bearing", "hot box", "main runs hot"),
)
WATCH_ITS_FEED = Inspection(
    id="watch_its_feed",
    station=Station.OIL,
    says="see that oil arrives: drops, splash, trough, sight glass or injection line",
    steps=(
        "drips: count them in a minute; cups and greasers: full, holes open",
        "splash: filler or hand-hole cover off at slow speed: oil is thrown about; stand clear",
        "trough pump: oil runs at trough, valve chamber or sight glass; the needle moves with speed",
        "two-stroke: feed line full of oil throughout; mark the oil tank and see it fall with the fuel",
        "stopped, nothing turning: feel each bearing; note the one that is hotter than the rest",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(FEED_NOT_SEEN, BEARING_TOO_HOT),
    only_with=(*features_kinds.UNPRESSURED, features_kinds.TROUGH_FED),
    source=idea_from(sources.GAS_ENGINE_HANDBOOK),
    tools=("lamp", "infrared thermometer", "marker"),
    cautions=(Caution.ROTATING, Caution.EXHAUST, Caution.HOT, Caution.EYES),
    also=("does oil arrive", "check the drips", "check the splash", "oil feed check"),
)
