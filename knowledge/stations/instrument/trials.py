"""What is tried at gauge, sender and wiring, and which causes it cures."""

from knowledge import sources
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.instrument import (
    causes,
    causes_line,
    findings,
    findings_electrical,
    findings_panel,
    findings_sender,
)
from knowledge.stations.leaks import causes_openings as leaks_causes_openings

NEW_SENDER = trial(
    id="new_sender",
    station=Station.INSTRUMENT,
    says="a new oil pressure sender or switch was fitted",
    asks="New oil pressure sender or switch fitted? If so, what did it do?",
    cures={
        causes.SENDER_FAULTY: (MOSTLY, COMMON_PRACTICE),
        causes.SENDER_MISMATCH: (OFTEN, COMMON_PRACTICE),
        causes.SENDER_NOT_FITTED: (OFTEN, COMMON_PRACTICE),
        leaks_causes_openings.SENDER_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes_line.GAUGE_LINE_BLOCKED: (SOMETIMES, JUDGEMENT),
        causes.WIRING_GROUND_FAULT: (SELDOM, JUDGEMENT),
    },
    source=sources.TECHNICIAN_ANSWER,
    cured=findings.NEW_SENDER_CURED_IT,
    worse=findings.NEW_SENDER_MADE_IT_WORSE,
    retired=("new_sender_no_difference",),
    also=(
        "replaced the oil pressure switch",
        "new sending unit",
        "changed the sensor",
        "new sending unit same reading",
        "replaced the sensor no change",
        "already changed the oil pressure switch",
    ),
)
OTHER_GAUGE = trial(
    id="other_gauge",
    station=Station.INSTRUMENT,
    says="another panel gauge was tried in place of the first",
    asks="Another panel gauge tried in place of the first? If so, what did it do?",
    cures={
        causes.GAUGE_FAULTY: (MOSTLY, COMMON_PRACTICE),
        causes.SENDER_MISMATCH: (SOMETIMES, JUDGEMENT),
        causes.WIRING_GROUND_FAULT: (SELDOM, JUDGEMENT),
    },
    source=sources.MARINE_DIESEL_MANUAL,
    cured=findings_electrical.OTHER_GAUGE_READS_RIGHT,
    also=(
        "swapped the gauge",
        "tried a second gauge",
        "new gauge in the dash",
        "several gauges tried",
    ),
)
WIRING_REPAIRED = trial(
    id="wiring_repaired",
    station=Station.INSTRUMENT,
    says="the wire, terminal or earth (ground) of the sender was repaired",
    asks="Sender's wire, terminal or earth (ground) repaired? If so, what did it do?",
    cures={
        causes.WIRING_GROUND_FAULT: (MOSTLY, COMMON_PRACTICE),
        causes.SENDER_NOT_FITTED: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    retired=("wire_repair_no_difference",),
    also=(
        "repaired the wire",
        "new terminal",
        "new terminal no change",
        "soldered wire still dead",
        "cleaned the ground",
    ),
)
FUSE_RENEWED = trial(
    id="fuse_renewed",
    station=Station.INSTRUMENT,
    says="a fuse or relay of the gauges was renewed",
    asks="Fuse or relay of the gauges renewed? If so, what did it do?",
    cures={
        causes.WIRING_GROUND_FAULT: (SOMETIMES, COMMON_PRACTICE),
        causes.GAUGE_FAULTY: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new fuse", "changed the ignition relay", "new fuse no change"),
)
CONNECTOR_REFITTED = trial(
    id="connector_refitted",
    station=Station.INSTRUMENT,
    says="the sender's connector was unplugged, cleaned or refitted",
    asks="Sender's connector unplugged and refitted? If so, what did it do?",
    cures={
        causes.WIRING_GROUND_FAULT: (OFTEN, COMMON_PRACTICE),
        causes.SENDER_FAULTY: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    cured=findings_sender.RESEATING_CURED_IT,
    also=("cleaned the plug", "pushed the connector back on"),
)
GROUND_WIRE_ADDED = trial(
    id="ground_wire_added",
    station=Station.INSTRUMENT,
    says="a ground wire was run from the sender's body",
    asks="Ground wire run from the sender's body? If so, what did it do?",
    cures={
        causes.WIRING_GROUND_FAULT: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    cured=findings_electrical.JUMPER_GROUND_CURES,
    also=("extra earth wire", "earth lead to the sender"),
)
GAUGE_LINE_RENEWED = trial(
    id="gauge_line_renewed",
    station=Station.INSTRUMENT,
    says="the gauge line, or the screen under the sender, was cleared or renewed",
    asks="Gauge line or screen under the sender cleared or renewed? If so, what did it do?",
    cures={
        causes_line.GAUGE_LINE_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        causes_line.GAUGE_LINE_LEAK: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=(
        "blew out the gauge line",
        "new oil line to the gauge",
        "cleaned the oil pressure port",
        "new screen under the sender",
    ),
)
IDLE_RAISED = trial(
    id="idle_raised",
    station=Station.INSTRUMENT,
    says="the idle was set to the maker's speed, or raised",
    asks="Idle set to the maker's speed, or raised? If so, what did it do?",
    cures={
        causes_line.IDLE_TOO_SLOW: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    cured=findings_panel.RIGHT_IDLE_CURED_IT,
    also=("raised the idle speed", "turned the idle up"),
)
GAUGE_PORT_CHANGED = trial(
    id="gauge_port_changed",
    station=Station.INSTRUMENT,
    says="the gauge was moved to another port",
    asks="Gauge moved to another port? If so, what did it do?",
    cures={
        causes_line.GAUGE_TAP_MOVED: (MOSTLY, COMMON_PRACTICE),
        causes_line.GAUGE_LINE_BLOCKED: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("moved the sender to another tapping", "read at the filter head instead"),
)
