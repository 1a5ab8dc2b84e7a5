"""Which numbers of a sentence are pressures of the running engine, and how they are bounded."""

from __future__ import annotations

from diagnose.understanding.pressures.bare_numbers import may_be_pressure
from diagnose.understanding.pressures.differences import is_difference
from diagnose.understanding.pressures.no_pressures import (
    is_gain,
    is_negative,
    is_of_the_clock,
    of_a_spring,
    of_another_gauge,
)
from diagnose.understanding.pressures.scales import is_of_the_scale
from diagnose.understanding.pressures.the_gauge import not_running
from diagnose.understanding.pressures.then_now import risen_to
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.text import Token
from knowledge.lexicon.values.beside_numbers import (
    ABOUT,
    ENDS_A_NAME,
    LIGHTS,
    SHARE_AFTER,
    STICK,
    SWINGS,
    UNDER,
)

_DIAL, _WIDE = 20.0, 2.5  #: psi: least width of a dial; times its lower end, too wide for a reading
_DIAL_BAR = 1.4  #: the same, bar or kg/cm2


def value_at(line: Line, i: int, unit: str, spoken_of: bool) -> str | None:
    """The pressure a token is, with its unit; None where it is none."""
    token = line.tokens[i]
    if token.kinds == {"share"}:
        clause = line.clause(i)
        if STICK & line.words(clause.first, i) or of_another_gauge(line, i):
            return None  # "the dipstick shows about two thirds", "fuel gauge reads half"
        said = line.find(line.lexicon.instrument) and line.word(i - 1) in SHARE_AFTER
        return token.value if said and not is_difference(line, i) else None
    if not token.kinds & {"pressure", "number", "range"} or line.word(i - 1) == "nr":
        return None  # "the pressure on No. 2"
    if is_negative(line, i) or _sets_it_off(line, i):
        return None
    if "pressure" not in token.kinds and (of_another_gauge(line, i) or is_of_the_clock(line, i)):
        return None
    if (
        (_swings(line, i) and " to " not in token.value)
        or is_difference(line, i)
        or not_running(line, i)
        or _is_scale(token, unit)
        or is_of_the_scale(line, i)
        or is_gain(line, i)
        or of_a_spring(line, i)
    ):
        return None
    if line.word(i + 1) == "one" and line.word(i + 2) in ENDS_A_NAME:
        return None  # "wrong sender, a 10 bar one with a 5 bar gauge"
    value = risen_to(line, i)
    if "pressure" in token.kinds:
        return value
    if not may_be_pressure(line, i, token, unit, spoken_of):
        return None
    return f"{value} {unit}" if value != "0" else "0"


def _sets_it_off(line: Line, i: int) -> bool:
    """Whether a lamp is said to light below it: "the light comes on below 7 psi"."""
    at = i - 2 if line.word(i - 1) in ABOUT else i - 1
    lit = line.word(at) in UNDER and line.word(at - 1) in ("on", "off", "up")
    clause = line.clause(i)
    return lit and any(line.word(k) in LIGHTS for k in range(clause.first, at))


def _swings(line: Line, i: int) -> bool:
    """Whether it is an end of what a needle swings over: "swings from 0 to 50"."""
    before = line.words(i - 6, i)
    return bool(before & SWINGS) and bool(before & {"from", "between"})


def _is_scale(token: Token, unit: str) -> bool:
    """Whether a range is that of a dial, or so wide that the needle must swing over it."""
    if " to " not in token.value:
        return False
    low, high = (float(p) for p in token.value.split(" ")[0:3:2])
    own = token.value if "pressure" in token.kinds else unit
    dial = _DIAL_BAR if own.endswith(("bar", "cm2")) else _DIAL
    return (low == 0 and high >= dial) or (high >= _WIDE * low and high - low >= dial)
