"""Read the pressures that manual or maker print: limits of this engine, no reading of its gauge."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.engine.features import BOOK_SAYS, BOOKS, LEAST, OF_ONES_OWN
from knowledge.reports.words import Speed

#: ids of limits
_AT_IDLE, _RUNNING = "hot_idle_pressure", "hot_running_pressure"
_FAST_RPM = 2600.0  #: above it a figure says too little of 2000 rpm
#: may follow a bare figure that is a pressure
_AFTER = frozenset(["", "at", "hot", "warm", "when", "running", "on", "and", "is", "as", "normal"])
_GAUGE = frozenset(["gauge", "guage", "pressure", "psi", "bar", "needle", "lbs", "pounds"])
_HOT = frozenset(["hot", "warm"])
#: what else is hot or has a figure in a book
_OF_OTHER_FIGURES = frozenset(
    [
        "thermostat",
        "coolant",
        "water",
        "temp",
        "temperature",
        "deg",
        "degrees",
        "valve",
        "valves",
        "tappet",
        "tappets",
        "lash",
        "gap",
        "gaps",
        "clearance",
        "clearances",
        "thou",
        "torque",
        "compression",
        "plug",
        "plugs",
        "volts",
        "ohms",
        "amps",
    ]
)
_OTHER_KINDS = frozenset(["length", "volume"])
_IDLE_RPM = 1100.0  #: up to this speed a figure is one for idle
_NOT_LOW = frozenset(
    ["cold", "relief", "opens", "blows", "bypass", "most", "maximum", "max", "torque"]
)
_LEAST_PSI = 3  #: a bare figure below it is no pressure that a book prints


@reader(
    {
        "my gauge says 30 at idle, book says 45 to 60": ["limit hot_running_pressure 45 psi"],
        "the book wants 40-60 hot at 2000, i get 38": ["limit hot_running_pressure 40 psi"],
        "it has 15 hot but the book says 35-50": ["limit hot_running_pressure 35 psi"],
        "gauge shows 8 psi at 30 mph, book says 5 to 10 is normal": [
            "limit hot_running_pressure 5 psi"
        ],
        "valves set hot, the book says 12-14": [],
        "thermostat opens at 82 so 90 hot is fine, book says 85-95": [],
        "the manual calls for 10 psi at idle": ["limit hot_idle_pressure 10 psi"],
        "12 psi hot idle, book says 14 min idle": ["limit hot_idle_pressure 14 psi"],
        "12 psi hot idle, book says 14 minimum at idle": ["limit hot_idle_pressure 14 psi"],
        "12 psi hot, book says warm it 14 min": [],
        "the makers spec is 3 to 4 bar at speed": ["limit hot_running_pressure 3 bar"],
        "the manual says the relief opens at 60 psi": [],
        "minimum oil pressure is 10 psi at idle": ["limit hot_idle_pressure 10 psi"],
        "the minimum I have seen is 10 psi at idle": [],
        "the book says 60 psi cold": [],
        "the manual says 10w40": [],
        "the book says 4 litres": [],
        "my brother says 45 to 60": [],
        "does the book say 45 psi?": [],
        "the pressure is low, the manual says 20 to 25 Nm": [],
        "the manual says 50 psi at 3000 rpm": [],
        "Gauge low. The gap measures 20 mm and the book wants 6 to 8": [],
        "the manual says 45 psi at 2000 rpm": ["limit hot_running_pressure 45 psi"],
    }
)
def printed_pressures(paragraph: Paragraph) -> Iterator[Fact]:
    """The least pressure the book gives at idle and running; without a speed, running."""
    found: dict[str, Fact] = {}
    for line in paragraph.lines:
        for k in range(len(line.tokens)):
            text = _pressure(line, k, paragraph.speaks_of_pressure)
            if text and _by_the_book(line, k) and not _fast(line, k):
                what = _AT_IDLE if _at_idle(line, k) else _RUNNING
                clause = line.clause(k)
                span = line.span([Mark(True, clause.first, clause.last)])
                found.setdefault(what, Fact("limit", {"what": what, "value": text}, span))
    yield from found.values()


def _pressure(line: Line, place: int, spoken_of: bool) -> str:
    """The lower end of a pressure with its unit; psi where it has none; else empty."""
    token = line.tokens[place]
    if "minutes" in token.kinds and token.value.endswith(" min") and _at_idle(line, place):
        return f"{token.value.removesuffix(' min')} psi"  # "14 min idle"
    low, _, rest = token.value.partition(" ")
    if "pressure" in token.kinds:
        return f"{low} {rest.rpartition(' ')[2]}" if _is_number(low) else ""
    ends = line.word(place + 1) in _AFTER or line.tokens[place + 1].is_mark
    bare = _is_number(low) and float(low) >= _LEAST_PSI
    if bare and line.word(place + 1) in LEAST and _at_idle(line, place):
        return f"{low} psi"  # "14 minimum at idle"
    ranged = bare and "range" in token.kinds
    of_it = (spoken_of and _of_a_gauge(line)) or _of_hot_oil(line)
    return f"{low} psi" if ranged and ends and of_it else ""


def _of_a_gauge(line: Line) -> bool:
    """Whether a sentence speaks of pressure and gives no figure of anything else that is set."""
    return bool(_GAUGE & {t.word for t in line.tokens}) and not any(
        t.kinds & _OTHER_KINDS for t in line.tokens
    )


def _of_hot_oil(line: Line) -> bool:
    """Whether a figure stands right before "hot", as one says a pressure: "15 hot", "40-60 hot"."""
    said = any(
        t.kinds & {"number", "range"} and line.word(k + 1) in _HOT
        for k, t in enumerate(line.tokens)
    )
    other = any(t.kinds & _OTHER_KINDS or t.word in _OF_OTHER_FIGURES for t in line.tokens)
    return said and not other


def _is_number(text: str) -> bool:
    return text.replace(".", "", 1).isdigit()


def _by_the_book(line: Line, place: int) -> bool:
    """Whether the clause says that a book or maker gives a figure, of the least hot pressure."""
    clause = line.clause(place)
    lead = line.words(clause.first, place)
    said = line.words(clause.first, clause.last)
    least = bool(lead & LEAST) and not lead & OF_ONES_OWN
    gives = bool(lead & BOOK_SAYS) and (bool(lead & BOOKS) or least)
    return gives and not said & _NOT_LOW and not line.sentence.asks


def _fast(line: Line, place: int) -> bool:
    """Whether the figure is of a speed well above that of the limit."""
    clause = line.clause(place)
    rpm = [t.value for t in line.tokens[clause.first : clause.last] if "rpm" in t.kinds]
    return any(float(r.split()[0]) > _FAST_RPM for r in rpm)


def _at_idle(line: Line, place: int) -> bool:
    """Whether the clause of a figure speaks of idle."""
    clause = line.clause(place)
    inside = range(clause.first, clause.last)
    slow = any(m.value is Speed.IDLE and m.first in inside for m in line.find(line.lexicon.speed))
    rpm = [line.tokens[k].value for k in inside if "rpm" in line.tokens[k].kinds]
    return slow or any(float(r.split()[0]) <= _IDLE_RPM for r in rpm)
