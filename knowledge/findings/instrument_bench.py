"""What meter, jumper wire, air line and a second gauge show at the instrument."""

from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import CTG, HB01, HB06, HB10, HB11, NE3, TEL
from knowledge.vocabulary import (
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)

# -------------------------------------------------------------------- the electric circuit

NEEDLE_IGNORES_LEAD_TEST = Finding(
    "needle_ignores_lead_test",
    Station.INSTRUMENT,
    "the needle does not swing with the sender's lead off and then grounded",
    "Sender lead off, then touched to ground: does the needle fail to swing end to end?",
    CTG,
    denies="the needle swings end to end with the lead off and grounded",
    stage=Stage.OUTSIDE,
    normal="one end with the lead off, the other with it grounded; some makes reversed",
    why="a needle that swings clears gauge and wire and leaves the sender",
    background=VERY_RARE,
    also=("grounded the wire nothing happens", "needle does not move grounded", "no sweep"),
)
GAUGE_DEAD_ON_KNOWN_SIGNAL = Finding(
    "gauge_dead_on_known_signal",
    Station.INSTRUMENT,
    "the gauge is dead or wrong on a known signal at its own terminals",
    "With a known resistance or pressure put on the gauge itself, is it dead or wrong?",
    TEL,
    denies="the gauge answers a known signal rightly",
    stage=Stage.OUTSIDE,
    normal="the right reading for the known signal",
    background=VERY_RARE,
    also=("gauge tested bad", "needle dead", "gauge fails bench test", "dead weight test"),
)
OTHER_GAUGE_READS_RIGHT = Finding(
    "other_gauge_reads_right",
    Station.INSTRUMENT,
    "another gauge put in the panel gauge's place reads right",
    "Does another gauge, put in the place of the panel gauge, read right?",
    HB11,
    denies="another gauge in its place reads the same",
    stage=Stage.OUTSIDE,
    normal="both gauges read the same",
    background=VERY_RARE,
    also=("swapped gauge reads fine", "new gauge fixed it", "borrowed gauge shows good"),
)
LAMP_ON_WITH_WIRE_OFF = Finding(
    "lamp_on_with_wire_off",
    Station.INSTRUMENT,
    "the oil lamp stays lit with the wire pulled off its switch",
    "Wire pulled off the switch, key on: does the lamp stay lit?",
    CP,
    denies="the lamp goes out with the wire off its switch",
    stage=Stage.OUTSIDE,
    normal="out with the wire off; some closed circuits reversed",
    background=VERY_RARE,
    also=("light stays on with sensor unplugged", "wire shorted to ground", "lamp always on"),
)
GAUGE_SUPPLY_WRONG = Finding(
    "gauge_supply_wrong",
    Station.INSTRUMENT,
    "the gauge's own supply is missing, unsteady or outside its range",
    "Is the voltage at the gauge missing, unsteady or outside 10 to 16 V (12 V system)?",
    TEL,
    denies="the gauge's supply is right and steady",
    stage=Stage.OUTSIDE,
    normal="10 to 16 V on a 12 V system; less behind a stabiliser, but steady",
    background=RARE,
    also=("no power at gauge", "voltage stabiliser faulty", "low voltage at gauge"),
)
FUSE_BLOWN = Finding(
    "fuse_blown",
    Station.INSTRUMENT,
    "the fuse of the gauge circuit is blown",
    "Is the fuse of the gauge circuit blown, or not making contact?",
    CP,
    denies="the fuse is whole",
    stage=Stage.OUTSIDE,
    normal="whole and tight in its holder",
    background=VERY_RARE,
    also=("blown gauge fuse", "fuse popped", "gauges fuse"),
)
WIRE_OPEN_OR_SHORTED = Finding(
    "wire_open_or_shorted",
    Station.INSTRUMENT,
    "the sender's wire measures open or shorted from end to end",
    "By meter, is the wire from sender to gauge open, or shorted to ground?",
    TEL,
    denies="the wire measures good from end to end",
    stage=Stage.OUTSIDE,
    normal="under 1 ohm end to end, no path to ground",
    background=VERY_RARE,
    also=("no continuity", "wire shorted to ground", "open circuit", "wiring tested bad"),
)
SENDER_GROUND_POOR = Finding(
    "sender_ground_poor",
    Station.INSTRUMENT,
    "the sender's body has a poor ground to the battery",
    "By meter, is the path from the sender's body to battery negative poor (over 1 ohm)?",
    TEL,
    denies="the sender is well grounded",
    stage=Stage.OUTSIDE,
    normal="well under 1 ohm",
    why="resistance in the ground adds to the sender's own and shifts every reading",
    background=VERY_RARE,
    also=("bad sender ground", "no earth at sender", "high resistance ground"),
)
JUMPER_GROUND_CURES = Finding(
    "jumper_ground_cures",
    Station.INSTRUMENT,
    "a temporary ground wire to the sender's body puts the reading right",
    "Does a temporary ground wire from the sender's body put the reading right?",
    CP,
    denies="a ground wire makes no difference",
    stage=Stage.OUTSIDE,
    normal="no change",
    background=VERY_RARE,
    also=("added a ground and it works", "extra earth wire fixed it", "jumper lead fixed gauge"),
)
WIGGLE_MOVES_NEEDLE = Finding(
    "wiggle_moves_needle",
    Station.INSTRUMENT,
    "moving plug, wire or sender by hand moves the needle",
    "Does the needle or lamp change when plug, wire or sender is moved by hand?",
    CP,
    denies="moving the wire changes nothing",
    stage=Stage.OUTSIDE,
    normal="no change",
    background=VERY_RARE,
    also=("wiggle the wire", "gauge cuts out when wire is touched", "wire moved light flickers"),
)

# --------------------------------------------------------------------- sender on the bench

SENDER_WRONG_ON_AIR = Finding(
    "sender_wrong_on_air",
    Station.INSTRUMENT,
    "on known air or hand-pump pressure the sender is dead or wrong",
    "With a known air or hand-pump pressure on it, is the sender dead or wrong?",
    CP,
    denies="on known pressure the sender is right",
    stage=Stage.OPENED,
    normal="its resistance follows the pressure smoothly",
    why="it judges the sender alone, without engine, wire or gauge",
    background=VERY_RARE,
    also=("sender failed bench test", "sending unit tested bad", "sensor dead on air pressure"),
)
SWITCH_OPENS_WRONG = Finding(
    "switch_opens_wrong",
    Station.INSTRUMENT,
    "on known pressure the switch changes over at the wrong value or never",
    "With a known pressure on it, does the switch change over at the wrong value or never?",
    HB10,
    denies="the switch changes over at its marked pressure",
    stage=Stage.OPENED,
    normal="at its marked pressure; about 4.5 to 7 psi on small engines",
    background=VERY_RARE,
    also=("oil switch tested bad", "switch stuck", "pressure switch never opens"),
)
SENDER_OHMS_HIGH = Finding(
    "sender_ohms_high",
    Station.INSTRUMENT,
    "the sender measures open, or far more ohms than it should",
    "Lead off, engine stopped: does the sender measure open or far too many ohms?",
    TEL,
    denies="the sender's resistance is not too high",
    stage=Stage.OUTSIDE,
    normal="a common type: 240 ohm at no pressure, 103 mid-scale, 33 full; others differ",
    background=VERY_RARE,
    also=("sender open circuit", "infinite resistance", "no ohms at sender"),
)
SENDER_OHMS_LOW = Finding(
    "sender_ohms_low",
    Station.INSTRUMENT,
    "the sender measures shorted, or far fewer ohms than it should",
    "Lead off, engine stopped: does the sender measure shorted or far too few ohms?",
    TEL,
    denies="the sender's resistance is not too low",
    stage=Stage.OUTSIDE,
    normal="a common type: 240 ohm at no pressure; half that if made for two gauges",
    background=VERY_RARE,
    also=("sender shorted", "zero ohms", "half the ohms", "sender reads 120 ohm"),
)
SENDER_NOT_FOR_GAUGE = Finding(
    "sender_not_for_gauge",
    Station.INSTRUMENT,
    "the sender's range or number does not belong to this gauge or engine",
    "By number or range, is the sender or switch one that does not belong to this gauge?",
    TEL,
    denies="sender and gauge belong together",
    stage=Stage.OUTSIDE,
    normal="a matched pair; for two gauges a sender made for two",
    background=RARE,
    also=("wrong sender part number", "metric sender", "two gauges on one sender", "80 psi sender"),
)

# ---------------------------------------------------------------- against a trusted gauge

PANEL_OFF_BY_CONSTANT = Finding(
    "panel_off_by_constant",
    Station.INSTRUMENT,
    "the panel is off a trusted gauge by the same amount everywhere",
    "Is the panel off a trusted gauge by the same amount at all speeds?",
    TEL,
    denies="no constant difference from a trusted gauge",
    stage=Stage.OUTSIDE,
    normal="within about 5 psi at mid-scale",
    background=RARE,
    also=("always 10 psi out", "constant offset", "reads 15 low all the time"),
)
PANEL_HALF_OR_DOUBLE = Finding(
    "panel_half_or_double",
    Station.INSTRUMENT,
    "the panel reads a fixed share, about half or double, of a trusted gauge",
    "Does the panel read a fixed share, about half or double, of a trusted gauge?",
    TEL,
    denies="the panel's scale agrees with a trusted gauge",
    stage=Stage.OUTSIDE,
    normal="within about 5 psi at mid-scale",
    background=VERY_RARE,
    also=("reads half", "reads double", "half the real pressure"),
)
PANEL_READS_TOO_HIGH = Finding(
    "panel_reads_too_high",
    Station.INSTRUMENT,
    "the panel reads well above a trusted gauge",
    "Does the panel read well above a trusted gauge at the engine?",
    TEL,
    denies="the panel does not flatter",
    stage=Stage.OUTSIDE,
    normal="within about 5 psi at mid-scale",
    why="a flattering panel hides a real fall",
    background=RARE,
    also=("dash says more than real gauge", "panel optimistic", "gauge lies high"),
)
TEST_GAUGE_DOUBTFUL = Finding(
    "test_gauge_doubtful",
    Station.INSTRUMENT,
    "the test gauge itself disagrees with a second one",
    "On the same port, does the test gauge disagree with a second good gauge?",
    CP,
    denies="two test gauges agree",
    stage=Stage.OUTSIDE,
    normal="within 2 or 3 psi",
    background=RARE,
    also=("test gauge is off", "cheap gauge", "two test gauges differ"),
)

# ------------------------------------------------------------------------ port and oil line

NO_OIL_AT_OPEN_PORT = Finding(
    "no_oil_at_open_port",
    Station.INSTRUMENT,
    "cranked with the sender out, no oil comes from the port",
    "Cranked without starting, sender or union out: does no oil come from the port?",
    NE3,
    denies="oil comes strongly from the open port",
    stage=Stage.OPENED,
    normal="oil within a few seconds of cranking",
    why="it asks the engine itself and needs no gauge",
    background=VERY_RARE,
    also=("no oil at sender hole", "cranked with sensor out, nothing", "union dry"),
)
SENDER_PORT_CLOGGED = Finding(
    "sender_port_clogged",
    Station.INSTRUMENT,
    "port, restrictor or screen under the sender is clogged",
    "Is the port under the sender, its restrictor or small screen clogged?",
    HB01,
    denies="port and screen under the sender are clear",
    stage=Stage.OPENED,
    normal="clear",
    background=VERY_RARE,
    also=("screen under oil pressure sensor", "sludge in sender hole", "clogged sensor filter"),
)
GAUGE_LINE_SLUDGED = Finding(
    "gauge_line_sludged",
    Station.INSTRUMENT,
    "the gauge line or its restrictor is sludged up",
    "Taken off, is the gauge line or its restrictor blocked with sludge?",
    HB01,
    denies="the gauge line blows through freely",
    stage=Stage.OPENED,
    normal="air blows through freely",
    background=VERY_RARE,
    also=("gauge pipe blocked", "clogged capillary", "restrictor full of sludge"),
)
NO_OIL_AT_LINE_END = Finding(
    "no_oil_at_line_end",
    Station.INSTRUMENT,
    "no oil reaches the gauge end of the line, though the port gives oil",
    "Line slackened at the gauge: does no oil arrive although the port gives oil?",
    HB01,
    denies="oil arrives at the gauge end of the line",
    stage=Stage.OPENED,
    normal="oil arrives within seconds",
    background=VERY_RARE,
    also=("no oil at the gauge", "line dry at the gauge", "cracked the union, nothing came"),
)
TACHOMETER_WRONG = Finding(
    "tachometer_wrong",
    Station.INSTRUMENT,
    "the tachometer reads higher than the engine turns",
    "Against a trusted counter, does the tachometer read higher than the engine turns?",
    HB06,
    denies="the tachometer agrees with a trusted counter",
    stage=Stage.OUTSIDE,
    normal="within about 50 rpm at idle",
    background=OCCASIONAL,
    also=("tach off", "rev counter wrong", "rpm reading wrong"),
)

# ------------------------------------------------------------------------------- measures

SENDER_RESISTANCE_AT_REST = Measure(
    "sender_resistance_at_rest",
    Station.INSTRUMENT,
    "resistance of the sender at no pressure",
    "Lead off, engine stopped: how many ohms from the sender's terminal to its body?",
    "resistance",
    (0.0, 1e6),
    TEL,
    spread=2.0,
    also=("sender ohms", "sending unit resistance"),
)
SENDER_GROUND_RESISTANCE = Measure(
    "sender_ground_resistance",
    Station.INSTRUMENT,
    "resistance from the sender's body to battery negative",
    "How many ohms from the sender's body to battery negative?",
    "resistance",
    (0.0, 1e6),
    TEL,
    spread=0.2,
    also=("ground resistance", "earth resistance"),
)
SWITCH_PRESSURE = Measure(
    "switch_pressure",
    Station.INSTRUMENT,
    "pressure at which the switch changes over",
    "At what pressure does the switch change over?",
    "pressure",
    (0.0, 1e6),
    HB10,
    spread=5e3,
    also=("switch set point", "lamp goes out at"),
)
IDLE_SPEED_COUNTED = Measure(
    "idle_speed_counted",
    Station.INSTRUMENT,
    "idle speed by a trusted counter",
    "How fast does it idle, hot, by a trusted counter?",
    "speed",
    (150.0, 2500.0),
    HB06,
    spread=20.0,
    also=("idle rpm", "tick-over speed"),
)
BUILD_UP_TIME = Measure(
    "build_up_time",
    Station.INSTRUMENT,
    "time from start until pressure shows",
    "How long after the start until pressure shows?",
    "time",
    (0.0, 600.0),
    CP,
    spread=0.5,
    also=("seconds to build pressure", "delay at start"),
)
DECAY_TIME = Measure(
    "decay_time",
    Station.INSTRUMENT,
    "time the needle takes to fall to zero after stopping",
    "How long does the needle take to fall to zero after stopping?",
    "time",
    (0.0, 3600.0),
    CP,
    spread=0.5,
    also=("seconds to drop to zero", "shutdown decay"),
)
