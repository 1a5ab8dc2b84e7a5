"""Cases written and read again lose nothing; a random file is a case or gives faults."""

from __future__ import annotations

import random
import re
from pathlib import Path

import pytest
import tomli_w
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from diagnose.case.loading import load
from diagnose.case.writing import Fields, append, append_engine, start
from diagnose.errors import BadCaseError, UsageError
from knowledge.book import the_book
from knowledge.model import Kind, State

BOOK = the_book()
HEAD = "schema = 1\n"
SAVED = settings(
    deadline=None,
    max_examples=40,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
#: any text a person can type or paste: no lone surrogates, which no UTF-8 file can hold
TEXT = st.text(st.characters(exclude_categories=["Cs"]), max_size=80)


# ------------------------------------------------------------------- corrections, nothing lost


@SAVED
@given(seed=st.integers(0, 2**32))
def test_corrections_and_withdrawals_only_add(tmp_path: Path, seed: int) -> None:
    """Whatever is recorded, corrected or taken back, the old text begins the new one."""
    choose = random.Random(seed)
    path = tmp_path / f"{seed}.toml"
    path.unlink(missing_ok=True)
    start(path, BOOK, {"title": "x"})
    stands: dict[int, str] = {}  # entry number: state, of what stands
    for _ in range(choose.randrange(1, 8)):
        before, number = path.read_text(), load(path, BOOK).last_number + 1
        old = choose.choice(list(stands)) if stands else None
        state = choose.choice(["present", "absent", "unknown", "withdrawn"]) if old else "present"
        fields: Fields = {"what": "bearing_knock", "state": state, "replaces": old}
        case = append(path, BOOK, [("finding", fields)])
        if old:
            del stands[old]
        if state != "withdrawn":
            stands[number] = state
        assert path.read_text().startswith(before)
        assert {s.entry.no: s.entry.state for s in case.finding_records} == stands
        known = case.facts().observations
        states = {State(s) for s in stands.values() if s in ("present", "absent")}
        assert {r.state for f, r in known.items() if f.kind is not Kind.LAYOUT} == states


def test_the_engine_is_entered_once_and_only_added_to(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    start(path, BOOK, {"title": 'layout = "unknown"'})
    before = path.read_text()
    assert append_engine(path, BOOK, {"layout": "distributor_v8"}).layout.id == "distributor_v8"
    assert path.read_text().startswith(before)
    with pytest.raises(UsageError, match="has its \\[engine\\] already"):
        append_engine(path, BOOK, {"layout": "unknown"})


@SAVED
@given(title=TEXT, complaint=TEXT, note=TEXT, where=TEXT, by=TEXT)
def test_any_text_survives_record_and_load(
    tmp_path: Path, title: str, complaint: str, note: str, where: str, by: str
) -> None:
    path = tmp_path / "x.toml"
    path.unlink(missing_ok=True)
    start(path, BOOK, {"title": title, "complaint": complaint, "by": by})
    fields: Fields = {"what": "bearing_knock", "state": "present", "note": note}
    append(path, BOOK, [("finding", {**fields, "where": where, "by": by})])
    case = load(path, BOOK)
    assert (case.job.title, case.job.complaint, case.job.by) == (title, complaint, by)
    [sighting] = case.finding_records
    assert (sighting.entry.note, sighting.entry.where, sighting.entry.by) == (note, where, by)


# ------------------------------------------------------------------------------- anything

VALUE = st.recursive(
    st.booleans()
    | st.integers(-(2**70), 2**70)
    | st.floats()
    | st.dates()
    | st.times()
    | st.datetimes()
    | TEXT
    | st.sampled_from(["present", "bearing_knock", "main_clearance", "3 mm", "700 rpm"])
    | st.sampled_from(["low", "idle", "a third of the dial", "0/0 of the dial", "10 s", "cured"]),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(TEXT, inner, max_size=3),
    max_leaves=6,
)
WORDS = """no what state value sure where when by note learned replaces rpm oil pressure
gauge tap error title opened layout profile has lacks limits dimensions name first alarm
shows during never only onset course since lasts with_pressure result done before hands usual coolant"""
KEYS = st.sampled_from(WORDS.split())
TABLE = st.dictionaries(KEYS | TEXT, VALUE, max_size=8)
NAME = st.sampled_from(
    ["schema", "job", "engine", "expect", "finding", "reading", "baseline"]
) | st.sampled_from(["behaviour", "trial", "earlier"])
FILE = st.dictionaries(NAME | TEXT, VALUE | TABLE | st.lists(TABLE, max_size=4), max_size=6)


def only_faults(data: bytes, path: Path) -> None:
    path.write_bytes(data)
    try:
        load(path, BOOK)
    except BadCaseError as bad:
        joined = re.compile("(?<=[^\\W\\d_a-zA-Z])[\u200c\u200d]")  # as ``plain`` leaves them
        assert all(joined.sub("", f).isprintable() for f in bad.faults)  # noqa: PT017


def test_a_joiner_alone_is_shown(tmp_path: Path) -> None:
    """An invisible key is escaped."""
    path = tmp_path / "x.toml"
    path.write_text('schema = 1\n"\u200c" = 1\n', "utf-8")
    with pytest.raises(BadCaseError, match="u200c"):
        load(path, BOOK)


@SAVED
@given(data=st.binary(max_size=300) | TEXT.map(str.encode))
def test_random_bytes_are_only_ever_a_bad_case(tmp_path: Path, data: bytes) -> None:
    only_faults(data, tmp_path / "x.toml")
    only_faults(HEAD.encode() + data, tmp_path / "x.toml")


@settings(SAVED, max_examples=80)
@given(raw=FILE)
def test_random_toml_is_only_ever_a_bad_case(tmp_path: Path, raw: dict[str, object]) -> None:
    only_faults(tomli_w.dumps({"schema": 1, **raw}).encode(), tmp_path / "x.toml")


@pytest.mark.long
@settings(SAVED, max_examples=5_000)
@given(raw=FILE)
def test_random_toml_at_length(tmp_path: Path, raw: dict[str, object]) -> None:
    only_faults(tomli_w.dumps({"schema": 1, **raw}).encode(), tmp_path / "x.toml")
