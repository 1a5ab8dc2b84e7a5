"""Root causes at the instrument station."""

from knowledge.sources import COMMON_PRACTICE, FJE, HB01, HB04, HB18, TEL, TWO_CP
from knowledge.vocabulary import Cause, Rate, Station

# tier C, layouts A, source column: HB-01 r8, HB-05 r3, HB-11 r3, NE2
GAUGE_FAULTY = Cause(
    "gauge_faulty",
    Station.INSTRUMENT,
    "panel gauge sticks, reads off-scale or has lost calibration",
    "real pressure unchanged; reading wrong at all speeds or sticks",
    Rate.COMMON,
    "+ 0 0 + 0",
    "compare with a trusted gauge at the engine, replace",
    HB01,
    follows="needless teardown, or a real fall missed",
)
# tier C, layouts E W, source column: 2CP, CTG, HB-05 r2, TEL; "more false low readings than engine faults on many cars"
SENDER_FAULTY = Cause(
    "sender_faulty",
    Station.INSTRUMENT,
    "variable-resistance sender or pressure switch worn, leaking or open/short",
    "reading jumps, sits at zero or full scale; real pressure steady",
    Rate.VERY_COMMON,
    "+ 0 0 + 0",
    "replace, verify with direct gauge",
    TWO_CP,
    follows="same; a leaking sender loses oil",
)
# tier C, layouts E W, source column: FJE, TEL item 5, SJR
WIRING_GROUND_FAULT = Cause(
    "wiring_ground_fault",
    Station.INSTRUMENT,
    "loose terminal, chafed wire, poor engine ground, tape or sealant on the sender thread insulating its case",
    "needle flickers with vibration, bumps, other electrical load; reads low when ground resistance is added",
    Rate.COMMON,
    "+ + 0 + 0",
    "clean ground, remove tape from thread, repair wire",
    FJE,
    follows="misdiagnosis",
)
# tier X, layouts E, source column: TEL items 2 and 9
SENDER_MISMATCH = Cause(
    "sender_mismatch",
    Station.INSTRUMENT,
    "sender range does not fit the gauge, or two gauges fed by a single-station sender",
    "steady scaling error (often about half or double)",
    Rate.OCCASIONAL,
    "0 + 0 0 0",
    "fit matching pair",
    TEL,
    follows="misjudged limits",
)
# tier C, layouts B X, source column: HB-01 r9, r10
GAUGE_LINE_BLOCKED = Cause(
    "gauge_line_blocked",
    Station.INSTRUMENT,
    "capillary line or restrictor to a direct gauge is sludged",
    "slow, damped or dead reading; real pressure normal",
    Rate.OCCASIONAL,
    "+ 0 0 + 0",
    "clear or replace line and orifice",
    HB01,
    follows="missed real fall",
)
# tier X, layouts B, source column: CP
GAUGE_LINE_LEAK = Cause(
    "gauge_line_leak",
    Station.INSTRUMENT,
    "direct-gauge line chafed, cracked or loose",
    "reading low and oil leaking into cabin or onto hot parts",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "replace line, support it",
    COMMON_PRACTICE,
    follows="fire/burn risk, oil loss",
)
# tier X, layouts A, source column: HB-18 r7
GAUGE_TAP_MOVED = Cause(
    "gauge_tap_moved",
    Station.INSTRUMENT,
    "pressure take-off now at a different point of the circuit (near pump, after filter, far end)",
    "steady offset; nearer the pump reads higher",
    Rate.RARE,
    "0 + 0 0 0",
    "return to the specified port or re-baseline",
    HB18,
    follows="wrong limits used",
)
# tier C, layouts A, source column: HB-04 r3, HB-06 step 2, HB-10 r1
IDLE_TOO_SLOW = Cause(
    "idle_too_slow",
    Station.INSTRUMENT,
    "idle speed below specification (or tachometer wrong)",
    "pump too slow: low only at idle, normal above about 1000 rpm",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "set idle, re-test",
    HB04,
    follows="lifter and chain noise at idle",
)
