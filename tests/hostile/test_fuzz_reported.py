"""What people report, in a case file and as typed: right, nearly right and hostile."""

from __future__ import annotations

import random
from collections.abc import Callable
from functools import partial
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.case.pressures import pressure_of
from diagnose.case.writing import table_text
from diagnose.entry.behaviours import BehaviourInput, parse_behaviour
from diagnose.entry.earlier import EarlierInput, parse_earlier
from diagnose.entry.readings import parse_reading
from diagnose.entry.trials import trial_input
from diagnose.errors import UsageError
from knowledge.book import the_book
from knowledge.reports.words import Circumstance, Course, Done, Hands, Onset, Result, Shows, Since
from knowledge.units import UnitError
from tests.hostile.test_fuzz_cases import SAVED, read, worked
from tests.support.command_line import call
from tests.support.fuzzing import TOKENS, chooser, ended_well, one
from tests.support.reported import HOSTILE, REPORTED, spoilt

BOOK = the_book()
ENTRIES = st.lists(REPORTED | spoilt(), min_size=1, max_size=6)


def case_of(entries: list[tuple[str, dict[str, object]]]) -> bytes:
    """The entries as a case of an engine whose circuit is known."""
    text = "schema = 1\n" + table_text("[engine]", {"layout": "distributor_v8"})
    for number, (kind, fields) in enumerate(entries, 1):
        text += table_text(f"[[{kind}]]", {"no": number, **fields})  # type: ignore[dict-item]
    return text.encode("utf-8", "surrogatepass")


def test_reported_entries_are_read_or_refused() -> None:
    """Some cases can be read and some cannot, or nothing is tried."""
    sound = []

    @settings(SAVED, max_examples=80, derandomize=True)
    @given(entries=ENTRIES)
    def build(entries: list[tuple[str, dict[str, object]]]) -> None:
        with one("reported entries", entries):
            sound.append(read(case_of(entries)))

    build()
    assert 5 < sum(sound) < len(sound) - 5


@pytest.mark.parametrize("field", ["pressure", "usual", "lasts", "before", "rpm", "oil", "coolant"])
def test_every_hostile_value_in_one_field(field: str) -> None:
    kind, whole = {
        "lasts": ("behaviour", {"shows": "low"}),
        "before": ("earlier", {"what": "sump"}),
    }.get(field, ("reading", {"pressure": "5 psi"}))
    for value in HOSTILE:
        with one("hostile values", (field, value)):
            read(case_of([(kind, {**whole, field: value})]))


@pytest.mark.long
@settings(SAVED, max_examples=10_000)
@given(entries=ENTRIES, seed=st.integers(0, 2**32))
def test_reported_entries_at_length(
    tmp_path: Path, entries: list[tuple[str, dict[str, object]]], seed: int
) -> None:
    dice, data = random.Random(seed), case_of(entries)
    with one("reported entries", data):
        readable = read(data)
    if readable and dice.random() < 0.1:
        worked(tmp_path / "x.toml", data, dice)


# ------------------------------------------------------------------------------- as typed


def typed(dice: random.Random) -> str:
    """Words of the lists in any order, with something odd now and then."""
    words = [
        *(*Shows, *Circumstance, *Course, *Onset, *Since, *Done, *Hands, *Result, *BOOK.areas),
        *("during", "never", "since", "lasts", "only", "gauge", "by", "before", "and", ",", "10 s"),
        *(
            "2 weeks",
            "5 psi",
            "under",
            "about",
            "~",
            "usually",
            "a third of the dial",
            "0/0",
            "1/0",
        ),
    ]
    parts = [dice.choice(words) for _ in range(dice.randrange(1, 9))]
    if dice.random() < 0.3:
        odd = dice.choice((dice.choice(TOKENS), *(h for h in HOSTILE if isinstance(h, str))))
        parts.insert(dice.randrange(len(parts) + 1), odd)
    return dice.choice((" ", " ", ", ", "  ")).join(parts)


def tried(number: int) -> int:
    """How many of the ways to read a line understood this one."""
    text = typed(chooser("reported", number))
    ways: list[Callable[[], object]] = [
        *(partial(parse_behaviour, text), partial(parse_earlier, text, BOOK)),
        *(partial(parse_reading, text), partial(pressure_of, text)),
        partial(trial_input, next(iter(BOOK.trials.values())), text),
    ]
    understood = 0
    for way in ways:
        with one("reports as typed", text):
            try:
                way()
            except (UsageError, UnitError) as bad:
                message = str(bad)
            else:
                understood += 1
                continue
        assert 0 < len(message) < 1000, text
        assert "\n" not in message, text
    return understood


def test_lines_are_understood_or_refused() -> None:
    assert 20 < sum(tried(n) for n in range(400)) < 1_000


@pytest.mark.long
def test_lines_at_length() -> None:
    for number in range(400, 20_000):
        tried(number)


def one_of(kind: type) -> st.SearchStrategy[object]:
    return st.sampled_from(list(kind))  # type: ignore[call-overload]


@settings(SAVED, max_examples=150)
@given(
    given_behaviour=st.builds(
        BehaviourInput,
        shows=one_of(Shows),
        during=st.lists(one_of(Circumstance), max_size=3, unique=True).map(tuple),
        never=st.lists(one_of(Circumstance), max_size=3, unique=True).map(tuple),
        only=st.booleans(),
        onset=st.none() | one_of(Onset),
        course=st.lists(one_of(Course), max_size=3, unique=True).map(tuple),
        since=st.none() | one_of(Since),
        lasts=st.none() | st.just("10 s"),
        with_pressure=st.booleans(),
        gauge=st.sampled_from([None, "panel", "direct", "lamp"]),
    ),
    work=st.builds(
        EarlierInput,
        area=st.sampled_from(list(BOOK.areas.values())),
        done=st.none() | one_of(Done),
        before=st.sampled_from([None, "2 weeks", "straight before"]),
        hands=st.none() | one_of(Hands),
    ),
)
def test_what_is_typed_is_read_back(given_behaviour: BehaviourInput, work: EarlierInput) -> None:
    assert parse_behaviour(given_behaviour.typed()) == given_behaviour
    assert parse_earlier(work.typed(), BOOK) == work


@pytest.mark.parametrize(
    ("option", "text"),
    [
        ("--behaviour", "low during hot" + " " * 10_000 + "never cold"),
        ("--earlier", "oil pump renewed" + " " * 10_000 + "by owner"),
        ("--reading", "700 rpm 95 C 8 psi" + " " * 600 + "direct"),
        ("--behaviour", "low lasts 10 s²"),
    ],
)
def test_nothing_typed_is_dropped(tmp_path: Path, option: str, text: str) -> None:
    """A line too long to read, or understood in part, is refused and not cut."""
    case = tmp_path / "x.toml"
    case.write_text("schema = 1\n", "utf-8")
    done = call("record", case, option, text)
    ended_well(done, (option, text))
    assert done.code == 2
    assert case.read_text("utf-8") == "schema = 1\n"
