"""Parts of gauge, sender, wire and gauge line."""

from knowledge.causes.instrument import (
    GAUGE_FAULTY,
    GAUGE_LINE_BLOCKED,
    GAUGE_LINE_LEAK,
    GAUGE_TAP_MOVED,
    SENDER_FAULTY,
    SENDER_MISMATCH,
    SENDER_NOT_FITTED,
    WIRING_GROUND_FAULT,
)
from knowledge.causes.leaks import SENDER_LEAK
from knowledge.engines.features import LAMP_ONLY
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import TEL
from knowledge.vocabulary import Access

PANEL_GAUGE = Part(
    "panel_gauge",
    "panel oil gauge",
    "1",
    CP,
    measure_first="scale, voltage, the sender resistance it is made for, hole in the panel; for a "
    "direct gauge the union's thread and the tube diameter",
    for_causes=(GAUGE_FAULTY,),
    not_with=(LAMP_ONLY,),
    also=("oil pressure gauge",),
)
WARNING_LAMP_BULB = Part(
    "warning_lamp_bulb",
    "warning lamp bulb",
    "1",
    CP,
    measure_first="voltage, power and cap of the old bulb",
    for_causes=(GAUGE_FAULTY,),
    only_with=(LAMP_ONLY,),
)
PRESSURE_SENDER = Part(
    "pressure_sender",
    "oil pressure sender or switch of the right range",
    "1",
    TEL,
    measure_first="thread, taper or parallel; resistance at zero and full scale, or the switch's "
    "pressure; one terminal or two",
    for_causes=(SENDER_FAULTY, SENDER_MISMATCH, SENDER_NOT_FITTED, SENDER_LEAK),
    also=(
        "sending unit",
        "pressure switch",
    ),
)
MATCHING_GAUGE = Part(
    "matching_gauge",
    "gauge that belongs to the sender, where the sender is to stay",
    "1 for each gauge that does not match",
    TEL,
    measure_first="the sender's resistance at zero and full scale; one gauge or two on it",
    for_causes=(SENDER_MISMATCH,),
)
SENDER_WASHER = Part(
    "sender_washer",
    "new sealing washer or the maker's thread sealer",
    "1",
    CP,
    measure_first="sender thread: a taper seals by itself; no tape where the sender grounds there",
    for_causes=(
        SENDER_FAULTY,
        SENDER_MISMATCH,
        SENDER_NOT_FITTED,
        SENDER_LEAK,
        GAUGE_TAP_MOVED,
        WIRING_GROUND_FAULT,
    ),
    for_places=(Access.GAUGE_PORT,),
)
SENDER_HOSE = Part(
    "sender_hose",
    "rated oil hose, adapters and bracket to carry a heavy sender",
    "1 set",
    CP,
    measure_first="both threads; hose rated for hot oil and cold-start pressure; how far to a "
    "firm place, and a ground wire for the sender there",
    for_causes=(SENDER_LEAK,),
)
SENDER_WIRE = Part(
    "sender_wire",
    "wire, terminals, fuse and ground strap for the gauge's circuit",
    "what the repair takes",
    CP,
    measure_first="wire size, terminal size, fuse rating",
    for_causes=(WIRING_GROUND_FAULT, SENDER_NOT_FITTED),
)
GAUGE_LINE = Part(
    "gauge_line",
    "line to gauge or sender with unions, sealing rings, clips and grommets, where it has one",
    "1 set",
    CP,
    measure_first="tube diameter outside, length, both union threads",
    for_causes=(GAUGE_LINE_LEAK, GAUGE_LINE_BLOCKED),
)
SENDER_SCREEN = Part(
    "sender_screen",
    "restrictor or screen under the sender or in the gauge union",
    "1",
    CP,
    measure_first="hole size, thread or diameter; some engines have none",
    for_causes=(GAUGE_LINE_BLOCKED,),
)
TAP_ADAPTER = Part(
    "tap_adapter",
    "adapter for the maker's gauge port, and a plug for the port left over",
    "1 of each",
    CP,
    measure_first="thread of both ports, taper or parallel",
    for_causes=(GAUGE_TAP_MOVED,),
)
