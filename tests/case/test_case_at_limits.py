"""Reading and writing a case at its limits: sizes, numbers, words."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from diagnose.case import writing
from diagnose.case.case import Case
from diagnose.case.loading import LARGEST, from_tables, from_text, load
from diagnose.case.schema import Engine, Job, quoted, seen
from diagnose.case.writing import Appended, NewEntry, append, start, table_text
from diagnose.errors import BadCaseError, CannotWriteError
from knowledge.book import the_book
from knowledge.engines.layouts import UNKNOWN
from knowledge.model import State
from knowledge.units import PSI

BOOK = the_book()
FLICKERS = {"what": "needle_flickers", "state": "present"}


def tables(**more: Any) -> dict[str, Any]:
    return {"schema": 1, **more}


def read(**more: Any) -> Case:
    return from_tables(tables(**more), None, BOOK)


def faults(**more: Any) -> list[str]:
    with pytest.raises(BadCaseError) as bad:
        from_tables(tables(**more), None, BOOK)
    return list(bad.value.faults)


def finding(no: Any = 1, **fields: Any) -> dict[str, Any]:
    return {"no": no, **(fields or FLICKERS)}


# ------------------------------------------------------------------------ an empty case


def test_an_empty_case_holds_nothing() -> None:
    bare = Case(path=None, job=Job(), engine=Engine(), layout=UNKNOWN)
    for case in (bare, read()):
        assert (case.last_number, case.has_engine, case.closed, case.expect) == (
            0,
            False,
            None,
            None,
        )
        assert not case.facts().readings
        assert case.answered() == frozenset(case.features)
    assert read(engine={}).has_engine


def test_what_was_answered_is_what_has_an_entry_or_is_built_so() -> None:
    """A feature that is both stays answered; an answer not known is one as well."""
    diesel = BOOK.findings["diesel"]
    case = read(
        engine={"has": ["diesel"]},
        finding=[
            finding(1, what="diesel", state="present"),
            finding(2, what="oil_milky", state="unknown"),
        ],
    )
    assert {diesel, BOOK.findings["oil_milky"]} <= case.answered()
    assert BOOK.findings["needle_flickers"] not in case.answered()


# ------------------------------------------------------------------------ sizes and numbers


@pytest.mark.parametrize(("no", "right"), [(1, True), (1_000_000, True), (0, False),
                                           (1_000_001, False), (-1, False)])  # fmt: skip
def test_an_entrys_number(no: int, right: bool) -> None:
    if right:
        assert read(finding=[finding(no)]).last_number == no
    else:
        (fault,) = faults(finding=[finding(no)])
        assert fault == f"finding no = {no}.no: '{no}' must be a whole number from 1 to 1,000,000"


@pytest.mark.parametrize(
    ("no", "name"),
    [(10**9 - 1, "finding no = 999999999"), (10**9, "finding[1]"), (-(10**9), "finding[1]"),
     (True, "finding[1]"), (1.5, "finding[1]")],
)  # fmt: skip
def test_an_entry_goes_by_its_number_or_by_its_place(no: Any, name: str) -> None:
    (fault,) = faults(finding=[finding(no)])
    assert fault.startswith(f"{name}.no: ")


@pytest.mark.parametrize("version", [0, 2, -1, True, "1", 1.0])
def test_another_version_is_unknown(version: Any) -> None:
    with pytest.raises(BadCaseError, match="is unknown here; this is 1"):
        from_tables({"schema": version}, None, BOOK)


@pytest.mark.parametrize(("many", "right"), [(2_000, True), (2_001, False)])
def test_so_many_entries_of_a_kind(many: int, right: bool) -> None:
    entries = [finding(i, what="needle_flickers", state="unknown") for i in range(1, many + 1)]
    if right:
        assert read(finding=entries).last_number == many
    else:
        assert faults(finding=entries) == ["finding: 2,001 entries; at most 2,000"]


@pytest.mark.parametrize(("many", "right"), [(1_000, True), (1_001, False)])
def test_so_many_words_of_a_list(many: int, right: bool) -> None:
    engine = {"has": ["diesel"] * many}
    if right:
        assert read(engine=engine).features[BOOK.findings["diesel"]] is State.PRESENT
    else:
        assert faults(engine=engine) == ["engine.has: 1,001 entries; at most 1,000"]


@pytest.mark.parametrize(("many", "right"), [(10_000, True), (10_001, False)])
def test_so_long_a_text(many: int, right: bool) -> None:
    job = {"note": "x" * many}
    if right:
        assert read(job=job).job.note == "x" * many
    else:
        assert faults(job=job) == ["job.note: 10,001 characters; at most 10,000"]


def test_a_word_is_trimmed_and_of_at_most_200_characters() -> None:
    assert read(engine={"layout": " distributor_v8 "}).layout.id == "distributor_v8"
    (fault,) = faults(engine={"layout": "x" * 201})
    assert fault == "engine.layout: 201 characters; at most 200"
    (fault,) = faults(engine={"layout": "x" * 200})
    assert "no such layout" in fault
    (fault,) = faults(engine={"layout": " "})
    assert "must not be empty" in fault


@pytest.mark.parametrize("broken", [1, "", "  ", "x" * 201])
def test_a_word_that_is_none_hides_no_other(broken: Any) -> None:
    """The words beside it are still held against the book, and their table is still read."""
    found = faults(engine={"has": ["dieselx", broken], "layout": "distributor_v9"})
    assert len(found) == 3
    text = "\n".join(found)
    for part in ("engine.has[2]: ", "no such feature 'dieselx'", "no such layout"):
        assert part in text
    limits = {"idle_sped": "600 rpm", "hot_idle_pressure": broken if broken == 1 else 2}
    found = faults(engine={"limits": limits, "layout": "distributor_v9"})
    assert len(found) == 3


def test_a_word_of_the_longest_kind_is_kept_beside_a_broken_one() -> None:
    found = faults(engine={"has": ["x" * 200, 1]})
    assert len(found) == 2
    assert any("no such feature 'xxx" in fault for fault in found)


@pytest.mark.parametrize(
    ("value", "words"),
    [({}, "a table"), ([], "a list"), (True, "true"), (10**18, "a number of many digits"),
     (-(10**18), "a number of many digits"), (10**18 - 1, f"'{10**18 - 1}'"), ("x" * 40, f"'{'x' * 40}'")],
)  # fmt: skip
def test_a_value_in_few_words(value: object, words: str) -> None:
    assert seen(value) == words
    assert len(seen("y" * 5_000)) <= 44


def test_the_words_between_quotes() -> None:
    assert quoted("'one', 'two' or 'three'") == ["one", "two", "three"]


def test_a_table_once_read_cannot_be_changed() -> None:
    with pytest.raises(ValueError, match="frozen"):
        Job(title="x").title = "y"


@pytest.mark.parametrize("many", [39, 40, 41, 42, 99])
def test_forty_faults_are_shown_and_the_rest_counted(many: int) -> None:
    found = faults(**{f"zzz{i}": 1 for i in range(many)})
    assert found[:many][:40] == [f for f in found if "no such table" in f]
    assert found[40:] == ([f"and {many - 40} more"] if many > 40 else [])


def test_reading_stops_at_a_hundred_faults() -> None:
    found = faults(**{f"zzz{i}": 1 for i in range(100)})
    assert found[40:] == ["and at least 60 more"]


@pytest.mark.parametrize(("more", "right"), [(-1, True), (0, True), (1, False)])
def test_a_file_of_the_greatest_size_is_read(tmp_path: Path, more: int, right: bool) -> None:
    path, head = tmp_path / "x.toml", "schema = 1\n"
    path.write_text(head + "#" * (LARGEST - len(head) + more), "utf-8")
    if right:
        assert load(path, BOOK).last_number == 0
    else:
        with pytest.raises(BadCaseError, match=f"{LARGEST + 1:,} bytes; a case is at most"):
            load(path, BOOK)


@pytest.mark.parametrize(("more", "right"), [(0, True), (-1, False)])
def test_a_file_is_not_written_past_its_greatest_size(
    tmp_path: Path, more: int, right: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    path, entry = tmp_path / "x.toml", [("finding", FLICKERS)]
    start(path, BOOK, {"title": "Skua"})
    text = path.read_text("utf-8")
    after = f"{text}\n{table_text('[[finding]]', {'no': 1, **FLICKERS})}"
    monkeypatch.setattr(writing, "LARGEST", len(after.encode()) + more)
    if right:
        append(path, BOOK, entry)
        assert path.read_text("utf-8") == after
    else:
        with pytest.raises(CannotWriteError, match="it would be larger than"):
            append(path, BOOK, entry)
        assert path.read_text("utf-8") == text


# ------------------------------------------------------------------------ entries to write


def test_a_new_entry_goes_by_its_line_and_name() -> None:
    assert NewEntry("finding", {"what": "oil_milky"}, "line 12").label == "line 12: oil_milky"
    assert NewEntry("finding", {"what": "oil_milky"}).label == "oil_milky"
    assert NewEntry("reading", {"rpm": "700 rpm"}, "line 3").label == "line 3: reading"
    before = read(finding=[finding(6)])
    assert Appended(before, before, ()).first_number == 7


def test_a_table_in_a_table_is_written_under_its_own_head() -> None:
    fields = {"layout": "distributor_v8", "name": None, "limits": {"idle_speed": "600 rpm"}}
    text = table_text("[engine]", fields)
    assert text == (
        '[engine]\nlayout = "distributor_v8"\n\n[engine.limits]\nidle_speed = "600 rpm"\n'
    )


def test_what_is_appended_is_numbered_on_from_the_last(tmp_path: Path) -> None:
    """Also where entries were withdrawn: a number is never given twice."""
    path = tmp_path / "x.toml"
    start(path, BOOK, {"title": "Skua"})
    append(path, BOOK, [("finding", FLICKERS), ("finding", {**FLICKERS, "what": "oil_milky"})])
    append(path, BOOK, [("finding", {**FLICKERS, "replaces": 2, "state": "withdrawn"})])
    case = append(path, BOOK, [("finding", {**FLICKERS, "what": "bearing_knock"})])
    assert [r.entry.no for r in case.finding_records] == [1, 4]


def test_the_engines_own_limit_is_kept() -> None:
    case = from_text('schema = 1\n[engine.limits]\nhot_idle_pressure = "12 psi"\n', None, BOOK)
    assert case.limits == {BOOK.limits["hot_idle_pressure"]: pytest.approx(12 * PSI)}
