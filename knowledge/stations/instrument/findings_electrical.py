"""Electrical tests of gauge and sender, and the checks that show them."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import RARE, VERY_RARE, Finding, Measure, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.instrument import findings_sender, quantities
from knowledge.work import Access, Caution, Inspection

NEEDLE_IGNORES_LEAD_TEST = Finding(
    id="needle_ignores_lead_test",
    station=Station.INSTRUMENT,
    says="the needle does not swing with the sender's lead off and then grounded",
    asks="Sender lead off, then touched to ground: does the needle fail to swing end to end?",
    source=sources.NEWSPAPER_JUMPY_GAUGE_2013,
    denies="the needle swings end to end with the lead off and grounded",
    stage=Stage.OUTSIDE,
    normal="one end with the lead off, the other with it grounded; some makes reversed",
    why="a needle that swings clears gauge and wire: suspect the sender",
    background=VERY_RARE,
    also=("grounded the wire nothing happens", "needle does not move grounded", "no sweep"),
)
LAMP_ON_WITH_WIRE_OFF = Finding(
    id="lamp_on_with_wire_off",
    station=Station.INSTRUMENT,
    says="the oil lamp stays lit with the wire pulled off its switch",
    asks="Wire pulled off the switch, key on: does the lamp stay lit?",
    source=COMMON_PRACTICE,
    denies="the lamp goes out with the wire off its switch",
    stage=Stage.OUTSIDE,
    normal="out with the wire off; some closed circuits reversed",
    background=VERY_RARE,
    also=("light stays on with sensor unplugged", "wire shorted to ground", "lamp always on"),
)
SWING_THE_GAUGE_BY_ITS_LEAD = Inspection(
    id="swing_the_gauge_by_its_lead",
    station=Station.INSTRUMENT,
    says="take the sender's lead off, then ground it, and watch gauge and lamp",
    steps=(
        "engine stopped, key on",
        "lead off the sender: the needle goes to one end, most lamps go out",
        "touch the lead to clean metal for a moment: the needle goes to the other end",
        "some circuits work the other way round, and an electronic sender must not be "
        "grounded: read the wiring diagram first",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    in_place=True,
    reveals=(
        NEEDLE_IGNORES_LEAD_TEST,
        LAMP_ON_WITH_WIRE_OFF,
        findings_sender.SENDER_CONNECTOR_LOOSE,
        findings_sender.SENDER_WIRE_OFF,
    ),
    source=sources.NEWSPAPER_JUMPY_GAUGE_2013,
    tools=("jumper wire", "wiring diagram"),
    cautions=(Caution.BATTERY, Caution.HOT, Caution.BOAT),
    keep="photograph the plug before you pull it",
    also=("ground the sender wire", "jumper test", "full sweep test"),
)

GAUGE_SUPPLY_WRONG = Finding(
    id="gauge_supply_wrong",
    station=Station.INSTRUMENT,
    says="the gauge's own supply is missing, unsteady or outside its range",
    asks="Voltage at the gauge missing, unsteady or outside 10 to 16 V (12 V system)?",
    source=sources.GAUGE_MAKER_SENDERS,
    denies="the gauge's supply is right and steady",
    stage=Stage.OUTSIDE,
    normal="10 to 16 V on a 12 V system; less behind a voltage stabiliser, but steady",
    background=RARE,
    also=("no power at gauge", "voltage stabiliser faulty", "low voltage at gauge"),
)
FUSE_BLOWN = Finding(
    id="fuse_blown",
    station=Station.INSTRUMENT,
    says="the fuse of the gauge circuit is blown",
    asks="Gauge fuse blown or not making contact?",
    source=COMMON_PRACTICE,
    denies="the fuse is whole",
    stage=Stage.OUTSIDE,
    normal="whole and tight in its holder",
    background=VERY_RARE,
    also=("blown gauge fuse", "fuse popped", "gauges fuse"),
)
WIRE_OPEN_OR_SHORTED = Finding(
    id="wire_open_or_shorted",
    station=Station.INSTRUMENT,
    says="the sender's wire measures open or shorted from end to end",
    asks="By meter: wire from sender to gauge open, or shorted to ground?",
    source=idea_from(sources.GAUGE_MAKER_SENDERS),
    denies="the wire measures good from end to end",
    stage=Stage.OUTSIDE,
    normal="under 1 ohm end to end, no path to ground",
    background=VERY_RARE,
    also=("no continuity", "wire shorted to ground", "open circuit", "wiring tested bad"),
)
MEASURE_THE_GAUGE_CIRCUIT = Inspection(
    id="measure_the_gauge_circuit",
    station=Station.INSTRUMENT,
    says="fuse, supply and wire of the gauge, by meter",
    steps=(
        "look at the fuse and measure on both sides of it",
        "key on: measure the supply at the gauge, then switch loads and watch it",
        "battery off: measure the sender's wire from end to end, and to ground",
    ),
    minutes=15,
    access=Access.OUTSIDE,
    in_place=True,
    reveals=(FUSE_BLOWN, GAUGE_SUPPLY_WRONG, WIRE_OPEN_OR_SHORTED),
    source=sources.GAUGE_MAKER_SENDERS,
    tools=("multimeter", "wiring diagram"),
    cautions=(Caution.BATTERY, Caution.BOAT),
    also=("check the fuse", "check voltage", "continuity test"),
)

SENDER_GROUND_POOR = Finding(
    id="sender_ground_poor",
    station=Station.INSTRUMENT,
    says="the sender's body has a poor earth (ground) to the battery",
    asks="By meter: poor path (over 1 ohm) from sender body to battery negative?",
    source=sources.GAUGE_MAKER_SENDERS,
    denies="the sender is well grounded",
    stage=Stage.OUTSIDE,
    normal="well under 1 ohm",
    why="resistance in the ground path adds to the sender's own and shifts every reading",
    background=VERY_RARE,
    also=("bad sender ground", "no earth at sender", "high resistance ground"),
)
JUMPER_GROUND_CURES = Finding(
    id="jumper_ground_cures",
    station=Station.INSTRUMENT,
    says="a temporary ground wire to the sender's body puts the reading right",
    asks="Temporary ground wire to the sender body: does the reading come right?",
    source=COMMON_PRACTICE,
    denies="a ground wire makes no difference",
    stage=Stage.OUTSIDE,
    normal="no change",
    background=VERY_RARE,
    also=("added a ground and it works", "extra earth wire fixed it", "jumper lead fixed gauge"),
)
SENDER_GROUND_RESISTANCE = Measure(
    quantity=quantities.SENDER_GROUND_RESISTANCE,
    station=Station.INSTRUMENT,
    asks="Ohms from the sender body to battery negative?",
    source=sources.GAUGE_MAKER_SENDERS,
    also=("ground resistance", "earth resistance"),
)
MEASURE_THE_SENDER_GROUND = Inspection(
    id="measure_the_sender_ground",
    station=Station.INSTRUMENT,
    says="earth (ground) of sender and engine, by meter and jumper",
    steps=(
        "measure from the sender's body to battery negative",
        "look at both ends of the ground strap",
        "connect body to battery negative with a jumper and see whether the reading comes right",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(
        SENDER_GROUND_POOR,
        findings_sender.GROUND_STRAP_BAD,
        JUMPER_GROUND_CURES,
        findings_sender.TAPE_ON_SENDER_THREAD,
    ),
    source=sources.GAUGE_MAKER_SENDERS,
    measures=(SENDER_GROUND_RESISTANCE,),
    tools=("multimeter", "jumper wire"),
    cautions=(*RUNNING, Caution.BATTERY),
    needs_running=True,
    also=("check ground", "earth check", "voltage drop test"),
)

SENDER_OHMS_HIGH = Finding(
    id="sender_ohms_high",
    station=Station.INSTRUMENT,
    says="the sender measures open, or far more ohms than it should",
    asks="Lead off, engine stopped: sender open, or far too many ohms?",
    source=sources.GAUGE_MAKER_SENDERS,
    denies="the sender's resistance is not too high",
    stage=Stage.OUTSIDE,
    normal="a common type: 240 ohm at no pressure, 103 at mid-scale, 33 at full; others differ",
    background=VERY_RARE,
    also=("sender open circuit", "infinite resistance", "no ohms at sender"),
)
SENDER_OHMS_LOW = Finding(
    id="sender_ohms_low",
    station=Station.INSTRUMENT,
    says="the sender measures shorted, or far fewer ohms than it should",
    asks="Lead off, engine stopped: sender shorted, or far too few ohms?",
    source=sources.GAUGE_MAKER_SENDERS,
    denies="the sender's resistance is not too low",
    stage=Stage.OUTSIDE,
    normal="a common type: 240 ohm at no pressure; half that if made for two gauges",
    background=VERY_RARE,
    also=("sender shorted", "zero ohms", "half the ohms", "sender reads 120 ohm"),
)
SENDER_RESISTANCE_AT_REST = Measure(
    quantity=quantities.SENDER_RESISTANCE_AT_REST,
    station=Station.INSTRUMENT,
    asks="Lead off, engine stopped: ohms from the sender's terminal to its body?",
    source=sources.GAUGE_MAKER_SENDERS,
    also=("sender ohms", "sending unit resistance"),
)
MEASURE_THE_SENDER_RESISTANCE = Inspection(
    id="measure_the_sender_resistance",
    station=Station.INSTRUMENT,
    says="ohms of the sender at rest",
    steps=(
        "engine stopped, lead off",
        "measure from the terminal to the sender's body, not to the bracket",
        "compare with the gauge maker's figures; half of them means a sender made for two gauges",
        "ask whether it is of another type: many rest near 10 ohm and rise with pressure",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(SENDER_OHMS_HIGH, SENDER_OHMS_LOW, findings_sender.SENDER_NOT_FOR_GAUGE),
    source=sources.GAUGE_MAKER_SENDERS,
    measures=(SENDER_RESISTANCE_AT_REST,),
    tools=("multimeter", "gauge maker's figures"),
    cautions=(Caution.HOT, Caution.BATTERY),
    also=("check sender ohms", "resistance test"),
)

GAUGE_DEAD_ON_KNOWN_SIGNAL = Finding(
    id="gauge_dead_on_known_signal",
    station=Station.INSTRUMENT,
    says="the gauge is dead or wrong on a known signal at its own terminals",
    asks="Known resistance or pressure on the gauge itself: dead or wrong?",
    source=sources.GAUGE_MAKER_SENDERS,
    denies="the gauge answers a known signal correctly",
    stage=Stage.OUTSIDE,
    normal="the right reading for the known signal",
    background=VERY_RARE,
    also=("gauge tested bad", "needle dead", "gauge fails bench test", "dead weight test"),
)
OTHER_GAUGE_READS_RIGHT = Finding(
    id="other_gauge_reads_right",
    station=Station.INSTRUMENT,
    says="another gauge in the panel gauge's place reads right",
    asks="Another gauge in the panel gauge's place: does it read right?",
    source=sources.MARINE_DIESEL_MANUAL,
    denies="another gauge in its place reads the same",
    stage=Stage.OUTSIDE,
    normal="both gauges read the same",
    background=VERY_RARE,
    also=("swapped gauge reads fine", "new gauge fixed it", "borrowed gauge shows good"),
)
PUT_ANOTHER_GAUGE_IN_ITS_PLACE = Inspection(
    id="put_another_gauge_in_its_place",
    station=Station.INSTRUMENT,
    says="put a good gauge or a known signal in the panel gauge's place",
    steps=(
        "battery off before you move wires behind the panel; catch oil if it is a direct gauge",
        "connect a good gauge of the same type to the same sender or line",
        "or put a known resistance or pressure on the panel gauge itself",
    ),
    minutes=30,
    access=Access.OUTSIDE,
    reveals=(OTHER_GAUGE_READS_RIGHT, GAUGE_DEAD_ON_KNOWN_SIGNAL),
    source=sources.MARINE_DIESEL_MANUAL,
    tools=("good gauge", "resistors or hand pump"),
    cautions=(*RUNNING, Caution.BATTERY, Caution.PRESSURE),
    needs_running=True,
    also=("swap the gauge", "substitution", "bench test gauge"),
)
