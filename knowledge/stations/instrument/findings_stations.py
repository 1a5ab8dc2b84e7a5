"""Gauges at two stations of one engine, such as flybridge and wheelhouse, and the check of both."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.engines import features
from knowledge.model import RARE, VERY_RARE, Finding, Stage, Station
from knowledge.pressure import patterns
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import findings_sender
from knowledge.work import Access, Caution, Inspection

ONE_STATION_ALONE_WRONG = Finding(
    id="one_station_alone_wrong",
    station=Station.INSTRUMENT,
    says="at one of two stations all gauges read wrong, at the other they are right",
    asks="At one station alone: do oil, temperature and other gauges all read wrong?",
    source=COMMON_PRACTICE,
    denies="the gauges of both stations read alike",
    stage=Stage.OUTSIDE,
    normal="both stations read alike",
    why="the sender is common to both stations; ground and feed of a panel are its own",
    background=VERY_RARE,
    also=(
        "flybridge gauges all read low",
        "second helm gauge wrong",
        "temperature gauge wrong up top as well",
        "two stations disagree",
    ),
)
STATION_GROUND_POOR = Finding(
    id="station_ground_poor",
    station=Station.INSTRUMENT,
    says="the ground or feed wire of one station's panel is corroded, loose or broken",
    asks="Behind the panel of one station: ground or feed wire corroded, loose or broken?",
    source=COMMON_PRACTICE,
    denies="ground and feed of both panels are sound",
    stage=Stage.OUTSIDE,
    normal="bright terminals; less than 0.2 V from the gauge's ground terminal to battery negative",
    background=RARE,
    also=(
        "flybridge gauge ground corroded",
        "second helm earth bad",
        "upper gauge ground green",
        "bad ground at upper panel",
    ),
)
COMPARE_TWO_STATIONS = Inspection(
    id="compare_two_stations",
    station=Station.INSTRUMENT,
    says="compare the gauges of both stations, and look behind the one that differs",
    steps=(
        "engine stopped, key on: note where every needle rests at each station",
        "engine running: read both oil gauges at the same moment; note station and reading",
        "at the station that differs, see whether its temperature and volt gauges are wrong too",
        "measure from that gauge's ground terminal to battery negative, key on: near 0 V",
        "look at the number of the sender: two gauges need one made for two, of half the ohms",
    ),
    minutes=25,
    access=Access.OUTSIDE,
    reveals=(
        ONE_STATION_ALONE_WRONG,
        STATION_GROUND_POOR,
        findings_sender.SENDER_NOT_FOR_GAUGE,
        patterns.SECOND_INSTRUMENT_DISAGREES,
    ),
    source=sources.GAUGE_MAKER_SENDERS,
    tools=("multimeter",),
    needs_running=True,
    cautions=(*RUNNING, Caution.BATTERY),
    only_with=(features.GAUGES_AT_TWO_STATIONS, features.ONE_SENDER_FOR_TWO_GAUGES),
    also=("two stations", "dual station sender", "second helm", "flybridge gauge"),
)
