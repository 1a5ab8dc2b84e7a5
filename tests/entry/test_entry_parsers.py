"""What a person types, read by the library: tables of right and wrong, and any text whatever."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from functools import partial

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.loading import from_text
from diagnose.entry.answers import Answer, parse_answer, parse_task_state
from diagnose.entry.details import Details, parse_date
from diagnose.entry.facts import (
    FindingInput,
    MeasureInput,
    TaskInput,
    find_word,
    parse_fact,
    parse_value,
)
from diagnose.entry.readings import ReadingInput, parse_reading
from diagnose.entry.requests import each_id, parse_certainty, parse_target
from diagnose.entry.words import parse_kind, words_of_id
from diagnose.errors import UsageError
from diagnose.ids import normal_id
from knowledge.book import the_book
from knowledge.model import Finding, Measure
from knowledge.pressure.quantities import USUAL_IDLE_SPEED
from knowledge.units import DIMENSIONS, PSI, show
from knowledge.work import Task
from tests.support.every import every

BOOK = the_book()
EMPTY = from_text("schema = 1\n", None, BOOK)
TEXT = st.text(st.characters(exclude_categories=["Cs"]), max_size=60)
EVERY_WORD: list[Finding | Measure | Task] = [
    *BOOK.findings.values(),
    *BOOK.measures.values(),
    *BOOK.tasks.values(),
]


def refused(parse: Callable[[], object], *parts: str) -> None:
    """One line for a person, which says these things."""
    with pytest.raises(UsageError) as error:
        parse()
    text = str(error.value)
    assert "\n" not in text
    assert len(text) < 400
    for part in parts:
        assert part in text


def fault_of(parse: Callable[[], object]) -> str:
    """What is wrong; empty where nothing is."""
    try:
        parse()
    except UsageError as error:
        return str(error)
    return ""


# ------------------------------------------------------------------------- answers

ANSWERS = [
    ("yes", "present", None),
    ("N", "absent", None),
    (" true ", "present", None),
    ("0", "absent", None),
    ("don't know", "unknown", None),
    ("don’t know", "unknown", None),
    ("?", "unknown", None),
    ("probably", "present", 0.8),
    ("Probably not", "absent", 0.8),
    ("maybe", "present", 0.65),
    ("70%", "present", 0.7),
    ("50 %", "present", 0.5),
    ("49%", "absent", 0.51),
    ("20%", "absent", 0.8),
    ("0 %", "absent", 1.0),
    ("100%", "present", 1.0),
]


@pytest.mark.parametrize(("text", "state", "sure"), ANSWERS)
def test_answers(text: str, state: str, sure: float | None) -> None:
    answer = parse_answer(text)
    assert answer.state == state
    assert answer.sure == pytest.approx(sure)


@pytest.mark.parametrize("text", ["", "perhaps", "101%", "170 %", "-1%", "3 mm", "yes.", "7 0%"])
def test_wrong_answers(text: str) -> None:
    refused(partial(parse_answer, text), "is no answer; write yes, no, unknown, probably or 70%")


@given(st.integers(0, 100), st.sampled_from(["%", " %", "  %"]))
def test_percent_is_the_probability_of_the_finding(percent: int, sign: str) -> None:
    answer = parse_answer(f"{percent}{sign}")
    assert answer.sure is not None
    assert answer.sure >= 0.5
    present = answer.sure if answer.state == "present" else 1 - answer.sure
    assert present == pytest.approx(percent / 100)


@pytest.mark.parametrize(
    ("text", "state"),
    [("done", "done"), ("OK", "done"), ("y", "done"), ("No", "failed"), (" skipped", "skipped")],
)
def test_task_states(text: str, state: str) -> None:
    assert parse_task_state(text) == state


def test_wrong_task_state() -> None:
    refused(partial(parse_task_state, "perhaps"), "'perhaps'", "write done, failed or skipped")


# ------------------------------------------------------------------------- facts and values

VALUES = [
    ("main_clearance", "0.1 mm", 1e-4),
    ("main_clearance", "0.1mm", 1e-4),
    ("main_clearance", "3/1000 in", 0.003 * 0.0254),
    ("main_clearance", "4.5 THOU", 4.5e-3 * 0.0254),
    ("main_clearance", "100 µm", 1e-4),
    ("main_clearance", "1e-4 m", 1e-4),
]


@pytest.mark.parametrize(("id_", "text", "si"), VALUES)
def test_values_in_si(id_: str, text: str, si: float) -> None:
    fact = parse_fact(f"{id_}={text}", BOOK)
    assert isinstance(fact, MeasureInput)
    assert (fact.word, fact.text) == (BOOK.measures[id_], text)
    assert fact.value == pytest.approx(si)
    assert fact.value == parse_value(text, BOOK.measures[id_])


@every(BOOK.measures.values(), lambda m: m.id)
def test_every_measure_reads_what_it_shows(measure: Measure) -> None:
    """A plausible value printed in each of the dimension's units and read again."""
    word = BOOK.measures[measure.id]
    dimension = DIMENSIONS[word.dimension]
    middle = sum(word.plausible) / 2
    for unit in dimension.units:
        text = show(middle, dimension, unit.names[0], digits=12)
        assert parse_value(text, word) == pytest.approx(middle, rel=1e-9), text
    for spelling in dimension.spellings:
        assert parse_value(spelling, word) != 0


@every(EVERY_WORD, lambda w: w.id)
def test_every_id_is_found_however_it_is_written(word: Finding | Measure | Task) -> None:
    id_ = word.id
    for written in (id_, id_.upper(), id_.replace("_", "-"), f" {id_.replace('_', ' ')} "):
        assert find_word(written, BOOK) is word


def test_facts_of_each_sort() -> None:
    assert parse_fact("Needle-Flickers=probably", BOOK) == FindingInput(
        BOOK.findings["needle_flickers"], Answer("present", 0.8)
    )
    task = BOOK.tasks["main_clearance_fitted"]
    value = parse_value("0.05 mm", task)
    assert value == pytest.approx(5e-5)
    fitted = TaskInput(task, text="0.05 mm", value=value)
    assert parse_fact("main_clearance_fitted=0.05 mm", BOOK) == fitted
    assert parse_fact("main_clearance_fitted=failed", BOOK) == TaskInput(task, "failed")
    assert parse_fact("sump_washed=ok", BOOK) == TaskInput(BOOK.tasks["sump_washed"], "done")


WRONG_FACTS = [
    ("bearing_knock", "write it like bearing_knock=yes"),
    ("=yes", "write it like needle_flickers=yes"),
    ("  = yes", "write it like needle_flickers=yes"),
    ("=", "needle_flickers=yes, without blanks round the '='"),
    ("yes", "needle_flickers=yes, without blanks round the '='"),
    ("bearing_nock=yes", "Did you mean 'bearing_knock'?"),
    ("bearing_knock=perhaps", "bearing_knock: 'perhaps' is no answer"),
    ("relief_debris=yes", "is a cause, no finding: record what was seen of it"),
    (
        "main_clearance=0,1,2 mm",
        "main_clearance: '0,1,2 mm' is no length here; write it like 0.0045 in",
    ),
    ("main_clearance=0.05", "'0.05' is no length here"),
    ("main_clearance=4 psi", "'4 psi' is no length here"),
    ("main_clearance=yes", "'yes' is no length here"),
    ("sump_washed=3 mm", "sump_washed: '3 mm' is no answer; write done, failed or skipped"),
    ("main_clearance_fitted=3 psi", "main_clearance_fitted: '3 psi' is no length here"),
    ("the needle dances=yes", "Try: diagnose lookup the needle dances"),
    ("\x1b[31m=yes", "no finding '\\x1b[31m'"),
]


@pytest.mark.parametrize(("text", "part"), WRONG_FACTS, ids=lambda v: v[:30])
def test_wrong_facts(text: str, part: str) -> None:
    refused(partial(parse_fact, text, BOOK), part)


# ------------------------------------------------------------------------- readings

READINGS = [
    ("700 rpm 95 C 8 psi", ("700 rpm", "95 C", "8 psi", None, None, None, None)),
    ("8psi,700rpm", ("700 rpm", None, "8 psi", None, None, None, None)),
    (
        "2500 rev/min; 60 C; 3.1 BAR direct",
        ("2500 rev/min", "60 C", "3.1 BAR", None, "direct", None, None),
    ),
    (
        "700 rpm 95 C 18 psi direct pump start",
        ("700 rpm", "95 C", "18 psi", None, "direct", "pump", "start"),
    ),
    ("700 rpm 8 psi +-1 psi PANEL", ("700 rpm", None, "8 psi", "1 psi", "panel", None, None)),
    ("700 rpm 8 psi ±.5 psi", ("700 rpm", None, "8 psi", ".5 psi", None, None, None)),
    ("+/- 1 psi 700 rpm 8 psi", ("700 rpm", None, "8 psi", "1 psi", None, None, None)),
]


@pytest.mark.parametrize(("text", "parts"), READINGS, ids=lambda v: str(v)[:30])
def test_readings(text: str, parts: tuple[str | None, ...]) -> None:
    r = parse_reading(text)
    assert (r.rpm, r.oil, r.pressure, r.error, r.gauge, r.tap, r.at) == parts


def test_a_reading_in_si() -> None:
    reading = parse_reading("700 rpm 95 C 8 psi +-1 psi direct").in_si()
    assert reading.rpm == 700
    assert reading.oil_temperature == pytest.approx(368.15)
    assert reading.pressure == pytest.approx(8 * PSI)
    assert (reading.gauge, reading.tap) == ("direct", "gallery")
    assert parse_reading("700 rpm 8 psi").in_si().gauge == "panel"


WRONG_READINGS = [
    ("", "needs a pressure"),
    ("700 95 8", "'700' is not understood"),
    ("700 rpm 4,2,1 bar", "'4,2,1' is not understood"),
    ("700 rpm 95 C", "needs a pressure"),
    ("hot idle", "needs a pressure"),
    ("5 at hot idle", "'5' is not understood"),
    ("5 psi hot iddle", "did you mean 'idle'?"),
    ("5 psi hot cold", "'cold' is not understood"),
    ("700 rpm 8 psi 9 psi", "'9' is not understood"),
    ("700 rpm 8 psi direct panel", "'panel' is not understood"),
    ("700 rpm 8 psi \x1b[31m", "'\\x1b[31m' is not understood"),
]


@pytest.mark.parametrize(("text", "part"), WRONG_READINGS, ids=lambda v: v[:30])
def test_wrong_readings(text: str, part: str) -> None:
    refused(partial(parse_reading, text), part)


def test_figures_no_gauge_shows_are_refused_in_the_unit_typed() -> None:
    for text, part in (
        ("700 rpm 900 psi", "'900 psi' cannot be right; expected 0 psi to 300 psi"),
        ("700 rpm 90 bar", "expected 0 bar to 20.7 bar"),
        ("1 rpm 9 psi", "'1 rpm' cannot be right"),
        ("700 rpm 300 C 9 psi", "'300 C' cannot be right"),
        ("700 rpm -9 psi", "'-9 psi' cannot be right"),
    ):
        refused(parse_reading(text).in_si, part)


FIGURE = st.decimals("0.1", 200, places=1).map(str)


@given(
    rpm=st.integers(100, 9000),
    pressure=FIGURE,
    oil=st.none() | st.integers(-20, 150),
    gauge=st.sampled_from([None, "direct", "panel"]),
    tap=st.sampled_from([None, "gallery", "pump"]),
    at=st.sampled_from([None, "start"]),
    order=st.permutations(range(6)),
    comma=st.sampled_from([" ", ", ", "; "]),
)
def test_a_reading_in_any_order_is_the_same(
    rpm: int,
    pressure: str,
    oil: int | None,
    gauge: str | None,
    tap: str | None,
    at: str | None,
    order: list[int],
    comma: str,
) -> None:
    parts = [
        f"{rpm} rpm",
        f"{pressure} psi",
        f"{oil} C" if oil is not None else None,
        gauge,
        tap,
        at,
    ]
    typed = [part for part in (parts[i] for i in order) if part is not None]
    reading = parse_reading(comma.join(typed))
    assert reading == ReadingInput(
        rpm=f"{rpm} rpm",
        pressure=f"{pressure} psi",
        oil=f"{oil} C" if oil is not None else None,
        gauge=gauge,  # type: ignore[arg-type]
        tap=tap,  # type: ignore[arg-type]
        at=at,  # type: ignore[arg-type]
    )
    si = reading.in_si()
    assert si.rpm == rpm
    assert si.pressure == pytest.approx(float(pressure) * PSI)


# ------------------------------------------------------------------------- the rest


def test_dates_and_details() -> None:
    assert parse_date("") == date.today()
    assert parse_date(" 2026-05-01") == date(2026, 5, 1)
    for wrong in ("yesterday", "5", "2026-02-30", "01.05.2026", "2026-5-1"):
        refused(partial(parse_date, wrong), "is no date; write it like 20")
    assert Details(note="n", when="2026-05-01").fields() == {
        "when": date(2026, 5, 1),
        "by": None,
        "note": "n",
        "where": None,
        "learned": None,
        "replaces": None,
    }
    assert Details(learned="opened").faults() == []
    assert Details(learned="said").faults() == []
    assert Details(learned="said").fields()["learned"] == "told"  # the word of a case file
    when, learned = Details(when="5", learned="outsid").faults()
    assert when.startswith("when: '5' is no date")
    assert learned.endswith("Did you mean 'outside'?")


@pytest.mark.parametrize(
    ("text", "value"),
    [("confident=0.9", 0.9), ("0.5", 0.5), (" 95 % ", 0.95), ("confident = .99", 0.99)],
)
def test_certainty(text: str, value: float) -> None:
    assert parse_certainty(text) == pytest.approx(value)


@pytest.mark.parametrize("text", ["", "1", "0.49", "1.2.3", "sure", "90", "-0.9", "nan", "0.9 mm"])
def test_wrong_certainty(text: str) -> None:
    refused(partial(parse_certainty, text), "write confident=0.9, from 0.5 to 0.99")


def test_target() -> None:
    wanted = parse_target("25 psi", EMPTY)
    assert wanted.rpm == USUAL_IDLE_SPEED.typical
    assert wanted.pressure == pytest.approx(25 * PSI)
    wanted = parse_target("2500 RPM 2 bar", EMPTY)
    assert (wanted.rpm, wanted.pressure) == (2500, 2e5)
    for text in ("25", "2500 rpm", "50 rpm 25 psi", "0 psi", "900 bar", "x"):
        refused(partial(parse_target, text, EMPTY), "--target: ")


def test_ids_typed_with_commas() -> None:
    assert list(each_id(["Sump-off, cap_off", "x"])) == ["sump_off", "cap_off", "x"]


def test_kinds_and_words_of_the_book() -> None:
    assert parse_kind(" CAUSES ") == parse_kind("cause") == "cause"
    refused(partial(parse_kind, "caus"), "Did you mean 'cause'?")
    assert words_of_id("Needle-flickers", BOOK) == [BOOK.findings["needle_flickers"]]
    refused(partial(words_of_id, "bearing_nock", BOOK), "Did you mean 'bearing_knock'?")
    refused(partial(words_of_id, " ", BOOK), "which word?")


@given(TEXT)
def test_any_text_is_read_or_refused_in_one_line(text: str) -> None:
    parsers: tuple[Callable[[str], object], ...] = (
        parse_answer,
        parse_task_state,
        parse_date,
        parse_certainty,
        parse_kind,
        parse_reading,
        partial(parse_fact, book=BOOK),
        partial(parse_target, case=EMPTY),
        partial(words_of_id, book=BOOK),
        *(partial(parse_value, word=m) for m in list(BOOK.measures.values())[:3]),
    )
    for parse in parsers:
        fault = fault_of(partial(parse, text))
        assert "\n" not in fault
        assert fault.isprintable()


@given(TEXT)
def test_normal_ids_stay_normal(text: str) -> None:
    assert normal_id(normal_id(text)) == normal_id(text)
