"""Root causes at the instrument station."""

from knowledge.sources import COMMON_PRACTICE, FJE, HB01, HB04, HB18, TEL, TWO_CP
from knowledge.vocabulary import Cause, Rate, Station

GAUGE_FAULTY = Cause(
    "gauge_faulty",
    Station.INSTRUMENT,
    "the panel gauge sticks, reads wrong or is dead",
    "the oil pressure is what it always was; the needle shows something else at every speed",
    Rate.COMMON,
    "+ 0 0 + 0",
    "compare with a trusted gauge screwed into the engine, then renew the panel gauge",
    HB01,
    follows="a needless strip-down, or a real fall that nobody sees",
    also=(
        "bad oil gauge",
        "faulty gauge",
        "gauge out of calibration",
        "cluster fault",
        "dash gauge",
    ),
)
SENDER_FAULTY = Cause(
    "sender_faulty",
    Station.INSTRUMENT,
    "the oil pressure sender or switch is worn, open or shorted",
    "the reading jumps, or sits at zero or full scale, over a steady oil pressure",
    Rate.VERY_COMMON,
    "+ 0 0 + 0",
    "renew the sender and prove the new reading with a direct gauge",
    TWO_CP,
    follows="a needless strip-down, or a real fall that nobody sees",
    also=(
        "bad sending unit",
        "oil pressure sensor",
        "faulty oil pressure switch",
        "transmitter",
        "oil sender gone",
    ),
)
WIRING_GROUND_FAULT = Cause(
    "wiring_ground_fault",
    Station.INSTRUMENT,
    "a loose terminal, chafed wire, blown fuse or poor ground",
    "added or changing resistance in the gauge's circuit moves the needle, not the oil",
    Rate.COMMON,
    "+ + 0 + 0",
    "clean terminals and ground, take tape off the sender's thread, repair the wire",
    FJE,
    follows="good senders, gauges and pumps renewed for nothing",
    also=("bad ground", "earth fault", "broken wire", "loose connector", "corroded plug", "wiring"),
)
SENDER_MISMATCH = Cause(
    "sender_mismatch",
    Station.INSTRUMENT,
    "sender or switch of the wrong range, or one sender for two gauges",
    "the scale is wrong by a steady factor, often about half or double",
    Rate.OCCASIONAL,
    "0 + 0 0 0",
    "fit a sender and gauge that belong together; for two gauges, a sender made for two",
    TEL,
    follows="every limit is judged wrongly",
    also=(
        "wrong sender",
        "wrong sending unit",
        "aftermarket gauge with stock sender",
        "wrong switch",
    ),
)
SENDER_NOT_FITTED = Cause(
    "sender_not_fitted",
    Station.INSTRUMENT,
    "no sender in the port, the port plugged, or the wire never connected",
    "nothing tells the gauge or lamp about the pressure, so it shows none or never warns",
    Rate.RARE,
    "-- ++ 0 0 0",
    "fit the right sender at the specified port and connect its wire",
    COMMON_PRACTICE,
    follows="a needless strip-down, or a real fall that nobody sees",
    also=(
        "no sender fitted",
        "wire not hooked up",
        "sender left out after engine swap",
        "sensor unplugged",
    ),
)
GAUGE_LINE_BLOCKED = Cause(
    "gauge_line_blocked",
    Station.INSTRUMENT,
    "gauge line, restrictor or the screen under the sender is clogged",
    "sludge between oilway and instrument makes the reading slow, damped or dead",
    Rate.OCCASIONAL,
    "+ 0 0 + 0",
    "clear or renew line, restrictor and screen, and refill the line",
    HB01,
    follows="a real fall that nobody sees",
    also=(
        "clogged gauge line",
        "sender screen clogged",
        "blocked capillary",
        "sludge in sender port",
        "kinked gauge pipe",
    ),
)
GAUGE_LINE_LEAK = Cause(
    "gauge_line_leak",
    Station.INSTRUMENT,
    "the oil line to the gauge is chafed, cracked, burst or loose",
    "oil leaves under full pressure before it reaches the gauge, and the sump empties",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "renew the line and clip it clear of heat and edges",
    COMMON_PRACTICE,
    follows="burns, fire, and an empty sump",
    also=("burst gauge pipe", "capillary leaking", "oil line to gauge broke", "oil in the cabin"),
)
GAUGE_TAP_MOVED = Cause(
    "gauge_tap_moved",
    Station.INSTRUMENT,
    "the pressure is now read at a different port than before",
    "each port has its own pressure: nearer the pump reads higher, far ends read lower",
    Rate.RARE,
    "0 + 0 0 0",
    "go back to the maker's port, or note new usual values for this one",
    HB18,
    follows="the maker's limits are used at the wrong place",
    also=("sender relocated", "gauge at another port", "T fitting at the filter", "remote sender"),
)
IDLE_TOO_SLOW = Cause(
    "idle_too_slow",
    Station.INSTRUMENT,
    "the engine idles below the maker's speed, or the tachometer is wrong",
    "the pump turns too slowly to fill the leaks at idle; off idle all is right",
    Rate.OCCASIONAL,
    "+ + 0 0 0",
    "set the idle by a trusted counter and read again, hot",
    HB04,
    follows="lifter and chain noise at idle",
    also=("idle set too low", "low idle", "idle speed wrong", "tach reads wrong"),
)
