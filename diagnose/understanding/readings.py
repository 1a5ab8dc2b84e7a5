"""Read pressures: "5 psi at hot idle, 60 cold, used to show 50"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from diagnose.understanding.facts import Fact, Span, Value, reader
from diagnose.understanding.figures import WORDS
from diagnose.understanding.paragraph import Line, Paragraph
from diagnose.understanding.phrases import Mark
from diagnose.understanding.stance import Stance
from diagnose.understanding.text import Token
from knowledge.lexicon.circumstances import HEAT
from knowledge.lexicon.numbers import (
    ABOUT,
    BY,
    COUNTS,
    MORE,
    MOST,
    MOVES,
    NAMES,
    NEVER,
    OVER,
    UNDER,
)
from knowledge.reports.words import Circumstance, Heat, Shows, Speed

MOST_PSI = 150.0  #: a larger number without a unit is no pressure
_FARTHEST = 9  #: words between a pressure and what it was read at


@dataclass(slots=True)
class _Pressure:
    mark: Mark[str]
    line: Line
    usual: bool
    near: list[Mark[object]] = field(default_factory=list)


@reader(
    {
        "5 psi at hot idle, 60 cold": ["reading 5 psi hot, idle", "reading 60 psi cold"],
        "when hot it drops to 10 psi at idle": ["reading 10 psi hot, idle"],
        "never goes above 25 psi": ["reading never above 25 psi"],
        "my last engine had 40 psi at idle": [],
        "would 20 psi at idle be ok?": [],
        "it has a 350 with 120,000 miles from 1978": [],
        "gauge used to show 60, now it shows 20 psi": ["reading 20 psi"],
        "I was afraid it would go to 0 psi": [],
        "ran 20W-50 in it": [],
    }
)
def readings(paragraph: Paragraph) -> Iterator[Fact]:
    """Each pressure, with the speed and heat said nearest to it."""
    waiting: _Pressure | None = None
    unit = _unit_of(paragraph)
    last: _Pressure | None = None
    for line in paragraph.lines:
        found = _pressures(line, unit, paragraph.speaks_of_pressure)
        _share_out(line, found)
        now = [p for p in found if not p.usual]
        then = [p for p in found if p.usual]
        for each in now:
            usual = _partner(each, then) or waiting
            waiting = None
            if usual in then:
                then.remove(usual)
            yield _fact(each, usual)
            last = each
        if then and not now and last is None:
            waiting = then[0]


def _partner(now: _Pressure, then: list[_Pressure]) -> _Pressure | None:
    return min(then, key=lambda p: abs(p.mark.first - now.mark.first), default=None)


def _unit_of(paragraph: Paragraph) -> str:
    """The unit of the pressures that have one; psi where none has."""
    for line in paragraph.lines:
        for token in line.tokens:
            if "pressure" in token.kinds and "share" not in token.kinds:
                return token.value.rpartition(" ")[2]
    return "psi"


def _pressures(line: Line, unit: str, spoken_of: bool) -> list[_Pressure]:
    found = []
    taken = [m for m in line.find(line.lexicon.shows) if m.value is Shows.NONE]
    for i in range(len(line.tokens)):
        mark = Mark("", i, i + 1)
        if any(mark.overlaps(t) for t in taken):
            continue
        value = _value(line, i, unit, spoken_of)
        stance = line.stances.at(mark)
        if value is None or stance & (Stance.SUPPOSED | Stance.ELSEWHERE):
            continue
        first, bounded = _bounded(line, i, value)
        if stance & Stance.DENIED and bounded == value:
            continue
        usual = bool(stance & Stance.USUAL)
        found.append(_Pressure(Mark(bounded, first, i + 1), line, usual))
    return found


def _value(line: Line, i: int, unit: str, spoken_of: bool) -> str | None:
    """The pressure a token is, with its unit; None where it is none."""
    token = line.tokens[i]
    if _is_difference(line, i) or _with_a_drill(line, i):
        return None
    if "pressure" in token.kinds:
        return None if token.value.startswith("0 ") and token.word.startswith("z") else token.value
    if not token.kinds & {"number", "range"}:
        return None
    if not _may_be_pressure(line, i, token, spoken_of):
        return None
    return f"{token.value} {unit}" if token.value != "0" else "0"


def _may_be_pressure(line: Line, i: int, token: Token, spoken_of: bool) -> bool:
    """Whether a number without a unit stands where a pressure does: beside speed or heat."""
    if token.word in WORDS or token.word == "zero":
        return False
    most = 10.0 if _unit_is_bar(line) else MOST_PSI
    parts = [float(p) for p in token.value.split(" to ")]
    if parts[-1] > most or parts[0] > parts[-1]:
        return False
    if line.word(i + 1) in COUNTS or line.word(i - 1) in NAMES or _between_two(line, i):
        return False
    mark = Mark(token.value, i, i + 1)
    beside = [*line.find(line.lexicon.speed), *line.find(line.lexicon.during)]
    near = any(
        line.distance(mark, m) <= 2 and not any(line.tokens[k].is_figure for k in _between(mark, m))
        for m in beside
        if m.value in (Circumstance.COLD, Circumstance.HOT, Circumstance.IDLE, *Speed)
    )
    others = (t for t in line.tokens if "pressure" in t.kinds)
    if line.usual(mark) and any(others):
        return True
    read = line.find(line.lexicon.instrument)
    bound = any(line.word(k) in NEVER for k in range(i - 4, i)) and line.word(i - 1) in OVER | UNDER
    if bound and spoken_of:
        return True
    if line.word(i - 1) in ("to", "at", "be") and line.word(i - 2) in MOVES and spoken_of:
        return True
    return near or any(0 <= i - m.last <= 4 and line.distance(m, mark) <= 4 for m in read)


def _with_a_drill(line: Line, i: int) -> bool:
    """Whether it was read while a drill turned the pump, not with the engine running."""
    clause = line.clause(i)
    words = {line.word(k) for k in range(max(0, clause.first - 8), clause.last)}
    return bool(words & {"drill", "priming"})


def _is_difference(line: Line, i: int) -> bool:
    """Whether a number says by how much: "5 psi more", "a drop of 10 psi"."""
    words = {line.word(k) for k in range(i - 3, i)}
    clause = line.clause(i)
    said = {line.word(k) for k in range(clause.first, clause.last)}
    if said & {"setting", "opens", "rated", "range"}:
        return True
    return line.word(i + 1) in MORE or bool(words & BY) or line.word(i - 1) in ("by", "within")


def _between_two(line: Line, i: int) -> bool:
    """Whether a number is an end of "between 20 and 40", or where it came from."""
    words = [line.word(k) for k in range(i - 3, i)]
    return "between" in words or words[-1] == "from"


def _between(a: Mark[str], b: Mark[object]) -> range:
    return range(a.last, b.first) if a.first < b.first else range(b.last, a.first)


def _unit_is_bar(line: Line) -> bool:
    return any("pressure" in t.kinds and t.value.endswith("bar") for t in line.tokens)


def _bounded(line: Line, i: int, value: str) -> tuple[int, str]:
    """The first token of a pressure with its bound, and the pressure as a case file writes it."""
    if "of the dial" in value:
        return i, value
    words = [line.word(k) for k in range(max(0, i - 4), i)]
    start = i - len(words)
    for back, word in enumerate(reversed(words), 1):
        at = i - back
        if line.tokens[at].is_figure or line.tokens[at].is_mark:
            break
        never = next((k for k in range(start, at) if line.word(k) in NEVER), None)
        if word in OVER and back <= 2:
            return (never, f"never above {value}") if never is not None else (at, f"over {value}")
        if word in UNDER and back <= 2:
            return (never, f"never below {value}") if never is not None else (at, f"under {value}")
        if word in MOST and back <= 3:
            return at, f"at most {value}"
        if word in ABOUT and back == 1 and " to " not in value and value != "0":
            return at, f"about {value}"
    after = (line.word(i + 1), line.word(i + 2))
    if after[0] in ("max", "maximum", "tops") or after == ("at", "most"):
        return i, f"at most {value}"
    return i, value


def _share_out(line: Line, found: list[_Pressure]) -> None:
    """Give each circumstance, speed and temperature to the nearest pressure."""
    if not found:
        return
    lexicon = line.lexicon
    figures: list[Mark[object]] = [
        Mark(t, i, i + 1) for i, t in enumerate(line.tokens) if t.kinds & {"rpm", "temperature"}
    ]
    marks: list[Mark[object]] = [*line.find(lexicon.speed), *line.find(lexicon.during)]
    marks += [*line.find(lexicon.any_heat), *line.find(lexicon.direct), *figures]
    heads: list[Mark[object]] = [p.mark for p in found]
    order = -1 if any(_is_heat(m) and m.first < heads[0].first for m in marks) else 1
    for mark in marks:
        if line.stances.at(mark) & (Stance.SUPPOSED | Stance.ELSEWHERE):
            continue
        best = min(range(len(heads)), key=lambda k: (line.distance(heads[k], mark), k * order))
        if line.distance(heads[best], mark) <= _FARTHEST:
            found[best].near.append(mark)
    first = found[0]
    lead = [m for m in first.near if m.last <= first.mark.first and _is_heat(m)]
    for other in found[1:]:
        if not any(_is_heat(m) for m in other.near):
            other.near += lead
        other.near += [m for m in first.near if m in line.find(lexicon.direct)]


def _is_heat(mark: Mark[object]) -> bool:
    return isinstance(mark.value, Circumstance) and mark.value in HEAT


def _fact(pressure: _Pressure, usual: _Pressure | None) -> Fact:
    line, fields = pressure.line, dict[str, Value]()
    used: list[Mark[object]] = [pressure.mark]
    near = sorted(pressure.near, key=lambda m: line.distance(pressure.mark, m))
    during: list[str] = []
    for mark in near:
        key, word = _field(mark, line)
        if key == "during" and word not in during:
            during.append(word)
        elif key != "during" and key not in fields and key:
            fields[key] = word
        elif key != "during":
            continue
        used.append(mark)
    if fields.get("rpm") == Speed.IDLE.value and Circumstance.IDLE.value in during:
        during.remove(Circumstance.IDLE.value)
    spare = {Circumstance.IDLE.value} if "rpm" in fields else set()
    spare |= {Circumstance.SPEED.value} if "rpm" in fields else set()
    during = [d for d in during if d not in spare]
    if Circumstance.IDLE.value in during:
        during.remove(Circumstance.IDLE.value)
        fields["rpm"] = Speed.IDLE.value
    if Circumstance.SPEED.value in during:
        during.remove(Circumstance.SPEED.value)
        fields["rpm"] = Speed.CRUISE.value
    fields = {"pressure": pressure.mark.value, **fields}
    if during:
        fields["during"] = during
    spans: tuple[Span, ...] = line.span(used)
    if usual is not None:
        fields["usual"] = usual.mark.value
        spans += usual.line.span([usual.mark])
    return Fact("reading", fields, tuple(sorted(spans)), line.stances.surety(pressure.mark))


def _field(mark: Mark[object], line: Line) -> tuple[str, str]:
    """The field of a reading that a mark fills, and its word; empty where it fills none."""
    value = mark.value
    match value:
        case Speed():
            return "rpm", value.value
        case Circumstance():
            return ("oil", HEAT[value].value) if value in HEAT else ("during", value.value)
        case Token():
            if "rpm" in value.kinds:
                return "rpm", value.value
            words = [line.word(k) for k in range(mark.first - 5, mark.first)]
            return ("oil" if "oil" in words else "coolant"), value.value
        case True:
            is_direct = mark in line.find(line.lexicon.direct)
            return ("gauge", "direct") if is_direct else ("oil", Heat.ANY.value)
    return "", ""
