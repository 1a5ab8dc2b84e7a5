"""What the fuzzing shares: a clock on every input, a count of them, and corrupted real files.

``FUZZ_SEED`` in the environment gives another run; the number of the failing input is printed.
"""

from __future__ import annotations

import os
import random
import signal
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from types import FrameType

from tests.support.command_line import Done
from tests.support.complaints import JOBS
from tests.support.situations import CASES

SEED = os.environ.get("FUZZ_SEED", "1")
CODES = {0, 1, 2, 65, 66, 73}  #: how a command may end, whatever it is given
COUNT: Counter[str] = Counter()  #: inputs tried in this run, by kind
REAL = [*JOBS.values(), *(p.read_text("utf-8") for p in CASES.values())]

#: what is thrown into a file: lines that are nearly right, and broken and odd pieces
_LINES = r"""
[job] | [engine] | [expect] | [[finding]] | [[reading]] | [[baseline]] | [[work]] | [[closed]]
[engine.limits] | [engine.dimensions] | schema = 1 | schema = 2 | no = 1 | no = -1 | no = 1000001
replaces = 1 | replaces = 2 | sure = 0.5 | sure = 1e400 | sure = nan | sure = -inf | no = 7
when = 2026-02-30 | when = 0001-01-01 | when = 9999-12-31T23:59:59Z | opened = 24:00:00
state = "present" | state = "absent" | state = "withdrawn" | state = "unknown" | state = "done"
what = "bearing_knock" | what = "main_clearance" | value = "0.003 in" | value = "1/0 in"
value = "1e308 mm" | value = "-0 mm" | value = "nan mm" | value = "" | what = "pickup_gap"
rpm = "700 rpm" | rpm = "0 rpm" | oil = "95 C" | oil = "-273 C" | oil = "200 C" | oil = "15W-40"
pressure = "0 psi" | pressure = "300 psi" | gauge = "direct" | tap = "pump" | error = "0 psi"
at = "start" | learned = "told" | layout = "unknown" | layout = "dry_sump_race" | planned = "1 s"
layout = "distributor_v8" | profile = "v8" | has = ["diesel"] | lacks = ["diesel"] | has = []
aircraft = true | aircraft = false | causes = ["oil_level_low"] | minutes = "90 min" | how = "seen"
[[behaviour]] | [[trial]] | [[earlier]] | shows = "low" | shows = "lamp" | shows = "lost power"
during = ["hot", "idle"] | never = ["idle"] | during = [] | during = ["idl"] | only = true
course = ["worsening", "once"] | onset = "sudden" | since = "work" | since = "always" | usual = "50 psi"
lasts = "10" | lasts = "10 s" | before = "-1 day" | before = "1e400 years" | before = "straight before"
with_pressure = true | gauge = "lamp" | rpm = "idle" | rpm = "hot idle" | oil = "hot or cold"
pressure = "a third of the dial" | pressure = "0/0 of the dial" | pressure = "1/0 of the dial"
pressure = "under 25 psi" | pressure = "40 to 50 psi" | pressure = "off the top" | coolant = "165 F"
result = "cured" | result = "not tried" | result = "worse" | done = "renewed" | hands = "owner"
what = "oil_pump" | what = "nothing" | what = "whole_engine" | usual = "nan psi" | lasts = "nan s"
"1e999" | 0x | 1_ | 07 | 2026-13-01 | true | [ | ] | [[ | ]] | { | } | = | , | . | # | " | ' | \
''' | \u0000 | \ud800 | \U0010ffff | = "" | = [] | = {} | = [[]] | = {a = {}} | = 1979-05-27
"""
_ODD = [
    '"""',
    "\0",
    "\x1b",
    "\x7f",
    "\ufeff",
    "\u202e",
    "\u200c",
    "é",
    "漢",
    "\U0001f6e2",
    "\r",
    "\r\n",
    "\t",
]
TOKENS = [*_ODD, *(p.strip() for line in _LINES.strip().split("\n") for p in line.split(" | "))]


class HangError(BaseException):
    """An input came to no end; no ``except Exception`` on the way can swallow it."""


def _ring(_signal: int, _frame: FrameType | None) -> None:
    raise HangError


@contextmanager
def one(kind: str, what: object, seconds: float = 5.0, new: bool = True) -> Iterator[None]:
    """Fail where an input takes more processor time, or ten times that to wait; count a ``new`` one."""
    if new:
        COUNT[kind] += 1
    old = [signal.signal(s, _ring) for s in (signal.SIGPROF, signal.SIGALRM)]
    signal.setitimer(signal.ITIMER_PROF, seconds)
    signal.setitimer(signal.ITIMER_REAL, 10 * seconds)
    try:
        yield
    except HangError:
        raise AssertionError(f"{kind}: no end of {what!r:.2000}") from None
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
        signal.setitimer(signal.ITIMER_REAL, 0)
        for number, handler in zip((signal.SIGPROF, signal.SIGALRM), old, strict=True):
            signal.signal(number, handler)


def chooser(kind: str, number: int) -> random.Random:
    """The dice of one input: the same in every run of the same seed."""
    return random.Random(f"{SEED} {kind} {number}")


def is_shown(text: str) -> bool:
    """Whether a terminal shows every character and obeys none of them."""
    return all(c.isprintable() or c in "\n\t\u200c\u200d" for c in text)


def ended_well(done: Done, what: object) -> None:
    """One of the promised exit codes, and no word of a fault of ours."""
    assert done.code in CODES, (what, done)
    assert "Traceback" not in done.out + done.err, (what, done)
    assert is_shown(done.out), (what, done)
    assert is_shown(done.err), (what, done)
    assert "a fault of diagnose" not in done.err, (what, done)
    if done.code not in (0, 1):
        assert done.err.strip(), (what, done)


# --------------------------------------------------------------------------- spoiling a file


def too_late(text: str, dice: random.Random, others: list[str] = REAL) -> bytes:
    """A real file with a few things wrong in it; sometimes nothing is."""
    for _ in range(dice.choice((0, 1, 1, 1, 2, 3, 6))):
        text = dice.choice(_WAYS)(text, dice, others)
    data = text.encode("utf-8", "surrogatepass")
    if dice.random() < 0.1 and data:
        at = dice.randrange(len(data))
        data = data[:at] + bytes([dice.randrange(256)]) + data[at + dice.randrange(2) :]
    return data


Way = Callable[[str, random.Random, list[str]], str]


def _put(text: str, dice: random.Random, _: list[str]) -> str:
    at = dice.randrange(len(text) + 1)
    return text[:at] + dice.choice(TOKENS) + text[at:]


def _line_put(text: str, dice: random.Random, _: list[str]) -> str:
    lines = text.split("\n")
    lines.insert(dice.randrange(len(lines) + 1), dice.choice(TOKENS))
    return "\n".join(lines)


def _line_replaced(text: str, dice: random.Random, _: list[str]) -> str:
    lines = text.split("\n")
    lines[dice.randrange(len(lines))] = dice.choice(TOKENS)
    return "\n".join(lines)


def _line_from_another(text: str, dice: random.Random, others: list[str]) -> str:
    lines = text.split("\n")
    lines.insert(dice.randrange(len(lines) + 1), dice.choice(dice.choice(others).split("\n")))
    return "\n".join(lines)


def _line_gone(text: str, dice: random.Random, _: list[str]) -> str:
    lines = text.split("\n")
    del lines[dice.randrange(len(lines))]
    return "\n".join(lines)


def _lines_swapped(text: str, dice: random.Random, _: list[str]) -> str:
    lines = text.split("\n")
    a, b = dice.randrange(len(lines)), dice.randrange(len(lines))
    lines[a], lines[b] = lines[b], lines[a]
    return "\n".join(lines)


def _value_changed(text: str, dice: random.Random, _: list[str]) -> str:
    lines = text.split("\n")
    at = dice.randrange(len(lines))
    key, equals, _value = lines[at].partition(" = ")
    if equals:
        lines[at] = key + equals + dice.choice(TOKENS).rpartition(" = ")[2]
    return "\n".join(lines)


def _cut(text: str, dice: random.Random, _: list[str]) -> str:
    a, b = sorted(dice.randrange(len(text) + 1) for _ in "ab")
    return text[:a] + text[min(b, a + 60) :]


def _ended(text: str, dice: random.Random, _: list[str]) -> str:
    return text[: dice.randrange(len(text) + 1)]


def _said_again(text: str, dice: random.Random, _: list[str]) -> str:
    a = dice.randrange(len(text) + 1)
    b = a + dice.randrange(200)
    return text[:b] + text[a:b] * dice.choice((1, 1, 2, 20)) + text[b:]


def _spliced(text: str, dice: random.Random, others: list[str]) -> str:
    other = dice.choice(others)
    return text[: dice.randrange(len(text) + 1)] + other[dice.randrange(len(other) + 1) :]


def _digit_changed(text: str, dice: random.Random, _: list[str]) -> str:
    digits = [i for i, c in enumerate(text) if c.isdigit()]
    if not digits:
        return text
    at = dice.choice(digits)
    return text[:at] + dice.choice(("0", "9", "-", "", "99999", ".", "e9", "٣")) + text[at + 1 :]


_WAYS: list[Way] = [
    _put,
    _line_put,
    _line_replaced,
    _line_from_another,
    _line_gone,
    _lines_swapped,
    _value_changed,
    _value_changed,
    _cut,
    _ended,
    _said_again,
    _spliced,
    _digit_changed,
    _digit_changed,
]
