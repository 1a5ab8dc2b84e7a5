"""Faults of the instrument: what proves each, what it costs, where it can come from."""

from knowledge.faults import Fault
from knowledge.model import Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import (
    causes,
    causes_line,
    findings_electrical,
    findings_panel,
    findings_port,
    findings_sender,
)
from knowledge.stations.leaks import causes_openings as leaks_causes_openings

SENDER_BAD = Fault(
    id="sender_bad",
    station=Station.INSTRUMENT,
    says="the sender is dead or wrong",
    proofs=(
        findings_port.SENDER_WRONG_ON_AIR,
        findings_electrical.SENDER_OHMS_HIGH,
        findings_electrical.SENDER_OHMS_LOW,
        findings_sender.SENDER_DAMAGED,
        findings_port.SWITCH_OPENS_WRONG,
        findings_sender.SENDER_LEAKS_OIL,
    ),
    origins=(
        causes.SENDER_FAULTY,
        leaks_causes_openings.SENDER_LEAK,
        causes.SENDER_MISMATCH,
    ),
    source=COMMON_PRACTICE,
)
WIRING_BAD = Fault(
    id="wiring_bad",
    station=Station.INSTRUMENT,
    says="the gauge's wiring or earth (ground) is bad",
    proofs=(
        findings_sender.SENDER_WIRE_OFF,
        findings_sender.SENDER_WIRE_BROKEN,
        findings_electrical.WIRE_OPEN_OR_SHORTED,
        findings_electrical.SENDER_GROUND_POOR,
        findings_sender.GROUND_STRAP_BAD,
        findings_electrical.GAUGE_SUPPLY_WRONG,
        findings_electrical.FUSE_BLOWN,
    ),
    origins=(
        causes.WIRING_GROUND_FAULT,
        causes.SENDER_NOT_FITTED,
    ),
    source=COMMON_PRACTICE,
)
GAUGE_BAD = Fault(
    id="gauge_bad",
    station=Station.INSTRUMENT,
    says="the gauge is dead or wrong",
    proofs=(
        findings_electrical.GAUGE_DEAD_ON_KNOWN_SIGNAL,
        findings_electrical.NEEDLE_IGNORES_LEAD_TEST,
    ),
    origins=(
        causes.GAUGE_FAULTY,
        causes.WIRING_GROUND_FAULT,
    ),
    source=COMMON_PRACTICE,
)
GAUGE_LINE_BAD = Fault(
    id="gauge_line_bad",
    station=Station.INSTRUMENT,
    says="the gauge's line or port is blocked, kinked or leaks",
    proofs=(
        findings_port.SENDER_PORT_CLOGGED,
        findings_port.GAUGE_LINE_SLUDGED,
        findings_panel.GAUGE_LINE_KINKED,
        findings_panel.GAUGE_LINE_LEAKING,
    ),
    origins=(
        causes_line.GAUGE_LINE_BLOCKED,
        causes_line.GAUGE_LINE_LEAK,
    ),
    source=COMMON_PRACTICE,
)
