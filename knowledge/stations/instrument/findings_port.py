"""The sender port opened, and the checks that show it."""

from knowledge import sources
from knowledge.model import HARDLY_EVER, VERY_RARE, Finding, Measure, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import findings_sender, quantities
from knowledge.work import Access, Caution, Inspection

SENDER_PORT_CLOGGED = Finding(
    id="sender_port_clogged",
    station=Station.INSTRUMENT,
    says="port, restrictor or screen under the sender is clogged",
    asks="Port under the sender, its restrictor or small screen clogged?",
    source=sources.ARMY_TM_347_CHART_1973,
    denies="port and screen under the sender are clear",
    stage=Stage.OPENED,
    normal="clear",
    background=HARDLY_EVER,
    also=("screen under oil pressure sensor", "sludge in sender hole", "clogged sensor filter"),
)
LOOK_INTO_THE_SENDER_PORT = Inspection(
    id="look_into_the_sender_port",
    station=Station.INSTRUMENT,
    says="look into the port with the sender out",
    steps=(
        "engine stopped and cool; take the sender out and look at thread and port",
        "look for sludge, a clogged restrictor or a small screen under the sender",
        "clear it outward, never push dirt into the oilway",
    ),
    minutes=10,
    access=Access.GAUGE_PORT,
    reveals=(SENDER_PORT_CLOGGED, findings_sender.TAPE_ON_SENDER_THREAD),
    source=COMMON_PRACTICE,
    tools=("lamp", "soft wire"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.BATTERY),
    destroys="sludge in the port is disturbed",
    keep="photograph port and thread before you clear them",
    also=("sender hole", "sensor screen", "clean the port"),
)

NO_OIL_AT_OPEN_PORT = Finding(
    id="no_oil_at_open_port",
    station=Station.INSTRUMENT,
    says="cranked with the sender out, no oil comes from the port",
    asks="Sender or union out, cranked without starting: does no oil come from the port?",
    source=COMMON_PRACTICE,
    denies="oil comes strongly from the open port",
    stage=Stage.OPENED,
    normal="oil within a few seconds of cranking",
    why="it tests the engine itself and needs no gauge",
    background=VERY_RARE,
    also=("no oil at sender hole", "cranked with sensor out, nothing", "union dry"),
)
CRANK_WITH_THE_PORT_OPEN = Inspection(
    id="crank_with_the_port_open",
    station=Station.INSTRUMENT,
    says="crank with the port open and see whether oil comes",
    steps=(
        "ignition or fuel cut so that it cannot start; a rag and a jar at the port",
        "crank in short bursts and watch for oil",
        "refit the sender and look for leaks at the next start",
    ),
    minutes=10,
    access=Access.GAUGE_PORT,
    reveals=(NO_OIL_AT_OPEN_PORT,),
    source=COMMON_PRACTICE,
    tools=("jar", "rag", "a helper"),
    cautions=(
        Caution.HOT,
        Caution.ROTATING,
        Caution.EYES,
        Caution.USED_OIL,
        Caution.FIRE,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    also=("does oil squirt out", "crank test", "oil at the sender hole"),
)

GAUGE_LINE_SLUDGED = Finding(
    id="gauge_line_sludged",
    station=Station.INSTRUMENT,
    says="the gauge line or its restrictor is sludged up",
    asks="Gauge line off: line or restrictor blocked with sludge?",
    source=sources.ARMY_TM_347_CHART_1973,
    denies="the gauge line blows through freely",
    stage=Stage.OPENED,
    normal="air blows through freely",
    background=HARDLY_EVER,
    also=("gauge pipe blocked", "clogged capillary", "restrictor full of sludge"),
)
NO_OIL_AT_LINE_END = Finding(
    id="no_oil_at_line_end",
    station=Station.INSTRUMENT,
    says="no oil reaches the gauge end of the line, though the port gives oil",
    asks="Line slackened at the gauge: does no oil arrive, although the port gives oil?",
    source=COMMON_PRACTICE,
    denies="oil arrives at the gauge end of the line",
    stage=Stage.OPENED,
    normal="oil arrives within seconds",
    background=HARDLY_EVER,
    also=("no oil at the gauge", "line dry at the gauge", "cracked the union, nothing came"),
)
BLOW_THROUGH_THE_GAUGE_LINE = Inspection(
    id="blow_through_the_gauge_line",
    station=Station.INSTRUMENT,
    says="open the gauge line at the gauge, then blow it through",
    steps=(
        "engine stopped; slacken the union at the gauge over a jar, crank without starting",
        "if no oil comes, take the line off and blow it through into a rag at low pressure",
        "look into the restrictor; refill the line and tighten both unions",
    ),
    minutes=20,
    access=Access.GAUGE_PORT,
    reveals=(NO_OIL_AT_LINE_END, GAUGE_LINE_SLUDGED),
    source=COMMON_PRACTICE,
    tools=("spanners", "jar", "low-pressure air"),
    cautions=(
        Caution.HOT,
        Caution.EYES,
        Caution.PRESSURE,
        Caution.ROTATING,
        Caution.FIRE,
        Caution.USED_OIL,
        Caution.BOAT,
        Caution.TRACTOR,
    ),
    destroys="you blow out whatever blocked the line",
    keep="catch what comes out in a clean jar",
    also=("clear the capillary", "bleed the gauge line"),
)

SENDER_WRONG_ON_AIR = Finding(
    id="sender_wrong_on_air",
    station=Station.INSTRUMENT,
    says="on known air or hand-pump pressure the sender is dead or wrong",
    asks="Known air or hand-pump pressure on the sender: dead or wrong?",
    source=COMMON_PRACTICE,
    denies="on known pressure the sender is right",
    stage=Stage.OPENED,
    normal="its resistance follows the pressure smoothly",
    why="it tests the sender alone, without engine, wire or gauge",
    background=VERY_RARE,
    also=("sender failed bench test", "sending unit tested bad", "sensor dead on air pressure"),
)
SWITCH_OPENS_WRONG = Finding(
    id="switch_opens_wrong",
    station=Station.INSTRUMENT,
    says="on known pressure the switch changes over at the wrong value or never",
    asks="Known pressure on the switch: does it change over at the wrong value or never?",
    source=sources.SMALL_ENGINE_MANUAL,
    denies="the switch changes over at its marked pressure",
    stage=Stage.OPENED,
    normal="at its marked pressure; about 4.5 to 7 psi (0.3 to 0.5 bar) on small engines",
    background=HARDLY_EVER,
    also=("oil switch tested bad", "switch stuck", "pressure switch never opens"),
)
SWITCH_PRESSURE = Measure(
    quantity=quantities.SWITCH_PRESSURE,
    station=Station.INSTRUMENT,
    asks="Pressure at which the switch changes over?",
    source=sources.SMALL_ENGINE_MANUAL,
    also=("switch set point", "lamp goes out at"),
)
TRY_THE_SENDER_ON_AIR = Inspection(
    id="try_the_sender_on_air",
    station=Station.INSTRUMENT,
    says="put a known pressure on the sender or switch on the bench",
    steps=(
        "screw the sender into a tee with a good gauge and a hand pump or regulated air",
        "raise the pressure slowly and note ohms, or where the switch changes over",
        "let it down again and look for sticking",
    ),
    minutes=15,
    access=Access.GAUGE_PORT,
    reveals=(SENDER_WRONG_ON_AIR, SWITCH_OPENS_WRONG),
    source=COMMON_PRACTICE,
    measures=(SWITCH_PRESSURE,),
    tools=("tee", "good gauge", "hand pump", "multimeter"),
    cautions=(Caution.PRESSURE, Caution.EYES),
    also=("bench test sender", "air test", "test the switch"),
)
