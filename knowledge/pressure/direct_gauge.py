"""What a direct gauge, a second port and other checks of the pressure show."""

from knowledge import sources
from knowledge.model import OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from

DIRECT_GAUGE_LOW = Finding(
    id="direct_gauge_low",
    station=Station.INSTRUMENT,
    says="a trusted direct gauge on the engine also reads low",
    asks="Trusted gauge screwed straight into the engine: low there too?",
    source=idea_from(sources.GAUGE_MAKER_SENDERS),
    denies="a trusted direct gauge reads right",
    stage=Stage.OUTSIDE,
    normal="agrees within about 5 psi at mid-scale",
    background=VERY_RARE,
    also=(
        "mechanical gauge confirms low",
        "test gauge low",
        "shop gauge",
    ),
)
DIRECT_GAUGE_HIGH = Finding(
    id="direct_gauge_high",
    station=Station.INSTRUMENT,
    says="a trusted direct gauge on the engine also reads too high",
    asks="Trusted gauge screwed straight into the engine: too high there too?",
    source=COMMON_PRACTICE,
    denies="a trusted direct gauge does not read too high",
    stage=Stage.OUTSIDE,
    normal="no more than a little above the relief setting",
    background=VERY_RARE,
    also=(
        "mechanical gauge confirms high",
        "test gauge high too",
    ),
)
DIRECT_GAUGE_ZERO = Finding(
    id="direct_gauge_zero",
    station=Station.INSTRUMENT,
    says="a trusted direct gauge on the engine reads zero",
    asks="Trusted gauge screwed straight into the engine: no pressure at all?",
    source=sources.NAVY_14075_CASUALTY,
    denies="a trusted direct gauge shows pressure",
    stage=Stage.OUTSIDE,
    normal="pressure within seconds",
    background=VERY_RARE,
    also=(
        "mechanical gauge confirms zero",
        "no oil at the gauge union",
    ),
)
PRESSURE_SHOWN_SINCE = Finding(
    id="pressure_shown_since",
    station=Station.INSTRUMENT,
    says="a trusted gauge has shown enough pressure since the fall",
    asks="Since the gauge read zero or fell: has a trusted gauge shown enough, cold and hot?",
    source=JUDGEMENT,
    denies="no trusted gauge has shown pressure since",
    stage=Stage.OUTSIDE,
    normal="above the stop limits at idle and at speed",
    background=VERY_RARE,
    also=(
        "test gauge shows good pressure since then",
        "direct gauge proved the pressure after the panel gauge dropped",
    ),
)
DIRECT_GAUGE_UNSTEADY = Finding(
    id="direct_gauge_unsteady",
    station=Station.INSTRUMENT,
    says="a trusted direct gauge is unsteady too",
    asks="Trusted direct gauge unsteady too, 5 to 15 psi either way at fixed revs?",
    source=COMMON_PRACTICE,
    denies="a trusted direct gauge is steady",
    stage=Stage.OUTSIDE,
    normal="steady within 2 or 3 psi",
    background=VERY_RARE,
    also=(
        "test gauge bounces too",
        "mechanical gauge wavers",
    ),
)
PORTS_DIFFER = Finding(
    id="ports_differ",
    station=Station.INSTRUMENT,
    says="two direct gauges at two ports differ by more than 5 psi",
    asks="Two direct gauges at two ports: more than 5 psi apart at low flow?",
    source=sources.TWO_GAUGE_METHOD,
    denies="both ports agree",
    stage=Stage.OUTSIDE,
    normal="the same below about 55 psi",
    background=RARE,
    also=(
        "two test gauges differ",
        "different pressure at two places",
    ),
)
PUMP_PORT_LOW = Finding(
    id="pump_port_low",
    station=Station.INSTRUMENT,
    says="pressure is low at the pump outlet as well",
    asks="Pressure low at the pump outlet (filter head) as well?",
    source=sources.ARMY_TM_272_TABLE,
    denies="pressure is right at the pump outlet",
    stage=Stage.OUTSIDE,
    normal="low at the pump points to the pump side, right there to the engine side",
    background=OCCASIONAL,
    also=(
        "low straight from the pump",
        "low at the pump outlet",
    ),
)
GOOD_AT_PUMP_LOW_IN_GALLERY = Finding(
    id="good_at_pump_low_in_gallery",
    station=Station.INSTRUMENT,
    says="good at the pump outlet, low in the gallery",
    asks="Good at the pump outlet and low in the gallery?",
    source=sources.ARMY_TM_272_TABLE,
    denies="no loss between pump and gallery",
    stage=Stage.OUTSIDE,
    normal="a few psi of loss",
    background=RARE,
    also=(
        "good before the filter low after it",
        "good at the pump but not at the back",
    ),
)
IDLE_BELOW_SPEC = Finding(
    id="idle_below_spec",
    station=Station.INSTRUMENT,
    says="idle speed is below the maker's figure",
    asks="Idle speed below the maker's figure, by a trusted counter?",
    source=sources.PRESSURE_TEST_MANUAL_2005,
    denies="idle speed is right",
    stage=Stage.OUTSIDE,
    normal="the maker's figure, often 600 to 850 rpm",
    background=OCCASIONAL,
    also=(
        "idling too slow",
        "low idle speed",
    ),
)
NOTHING_WARNED = Finding(
    id="nothing_warned",
    station=Station.INSTRUMENT,
    says="damage came although lamp or gauge never warned",
    asks="Damage or trouble although the lamp or gauge never warned?",
    source=COMMON_PRACTICE,
    denies="a warning came",
    stage=Stage.KNOWN,
    normal="a warning comes first",
    background=RARE,
    also=(
        "no warning",
        "light never came on",
    ),
)
TOP_UP_CURES_FOR_A_WHILE = Finding(
    id="top_up_cures_for_a_while",
    station=Station.INSTRUMENT,
    says="topping up brought it back for a while",
    asks="Did topping up bring the pressure back, for a while?",
    source=COMMON_PRACTICE,
    denies="topping up made no difference",
    stage=Stage.KNOWN,
    normal="no change within the marks",
    background=VERY_RARE,
    also=("fine after adding oil",),
)
