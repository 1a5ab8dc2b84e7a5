"""Parts for a repair of the instrument."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import causes, causes_line
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.work import Access, Part

PANEL_GAUGE = Part(
    id="panel_gauge",
    says="panel oil gauge",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="scale, voltage, the sender resistance it is made for, hole in the panel; for a "
    "direct gauge the union's thread and the tube diameter",
    for_causes=(causes.GAUGE_FAULTY,),
    not_with=(features.LAMP_ONLY,),
    also=("oil pressure gauge",),
)
WARNING_LAMP_BULB = Part(
    id="warning_lamp_bulb",
    says="warning lamp bulb",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="voltage, power and base of the old bulb",
    for_causes=(causes.GAUGE_FAULTY,),
    only_with=(features.LAMP_ONLY,),
)
PRESSURE_SENDER = Part(
    id="pressure_sender",
    says="oil pressure sender or switch of the right range",
    quantity="1",
    source=sources.GAUGE_MAKER_SENDERS,
    measure_first="thread, taper or parallel; resistance at zero and full scale, or the switch's "
    "pressure; one terminal or two",
    for_causes=(
        causes.SENDER_FAULTY,
        causes.SENDER_MISMATCH,
        causes.SENDER_NOT_FITTED,
        leaks_causes_openings.SENDER_LEAK,
    ),
    also=(
        "sending unit",
        "pressure switch",
    ),
)
MATCHING_GAUGE = Part(
    id="matching_gauge",
    says="gauge that belongs to the sender, if the sender is to stay",
    quantity="1 for each gauge that does not match",
    source=sources.GAUGE_MAKER_SENDERS,
    measure_first="the sender's resistance at zero and full scale; one gauge or two on it",
    for_causes=(causes.SENDER_MISMATCH,),
)
SENDER_WASHER = Part(
    id="sender_washer",
    says="new sealing washer or the maker's thread sealer",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="sender thread: a taper seals by itself; no tape if the sender grounds there",
    for_causes=(
        causes.SENDER_FAULTY,
        causes.SENDER_MISMATCH,
        causes.SENDER_NOT_FITTED,
        leaks_causes_openings.SENDER_LEAK,
        causes_line.GAUGE_TAP_MOVED,
        causes.WIRING_GROUND_FAULT,
    ),
    for_places=(Access.GAUGE_PORT,),
)
SENDER_HOSE = Part(
    id="sender_hose",
    says="rated oil hose, adapters and bracket to carry a heavy sender",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first=(
        "both threads; hose rated for hot oil and cold-start pressure; distance to a firm "
        "mounting, and a ground wire for the sender there"
    ),
    for_causes=(leaks_causes_openings.SENDER_LEAK,),
)
SENDER_WIRE = Part(
    id="sender_wire",
    says="wire, terminals, fuse and ground strap for the gauge circuit",
    quantity="as the repair needs",
    source=COMMON_PRACTICE,
    measure_first="wire size, terminal size, fuse rating",
    for_causes=(causes.WIRING_GROUND_FAULT, causes.SENDER_NOT_FITTED),
)
GAUGE_LINE = Part(
    id="gauge_line",
    says="line to gauge or sender with unions, sealing rings, clips and grommets, if it has one",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="outside diameter of the tube, length, both union threads",
    for_causes=(causes_line.GAUGE_LINE_LEAK, causes_line.GAUGE_LINE_BLOCKED),
)
SENDER_SCREEN = Part(
    id="sender_screen",
    says="restrictor or screen under the sender or in the gauge union",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="hole size, thread or diameter; some engines have none",
    for_causes=(causes_line.GAUGE_LINE_BLOCKED,),
)
TAP_ADAPTER = Part(
    id="tap_adapter",
    says="adapter for the maker's gauge port, and a plug for the other port",
    quantity="1 of each",
    source=COMMON_PRACTICE,
    measure_first="thread of both ports, taper or parallel",
    for_causes=(causes_line.GAUGE_TAP_MOVED,),
)
