"""Entries of a case: values at their bounds, and which fault hides which."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from diagnose.case.writing import append_engine, start
from diagnose.errors import OutOfScopeError, UsageError
from knowledge.model import Finding, Kind, Stage, State
from knowledge.units import DIMENSIONS, PSI
from tests.case.test_case_at_limits import BOOK, faults, finding, read

# ------------------------------------------------------------------------ values at their bounds


@pytest.mark.parametrize(
    ("value", "right"),
    [("0 mm", True), ("2 mm", True), ("2.001 mm", False), ("-0.001 mm", False)],
)
def test_a_measured_value_within_its_bounds(value: str, right: bool) -> None:
    entry = finding(1, what="main_clearance", value=value)
    if right:
        (measured,) = read(finding=[entry]).measurements
        assert measured.value == pytest.approx(float(value.split()[0]) * 1e-3)
        assert measured.stage is Stage.OPENED
    else:
        (fault,) = faults(finding=[entry])
        assert fault.endswith("expected 0 mm to 2 mm")


READING = {"no": 1, "rpm": "700 rpm", "pressure": "20 psi"}


@pytest.mark.parametrize(
    ("field", "value", "right"),
    [("rpm", "50 rpm", True), ("rpm", "49.9 rpm", False), ("rpm", "20000 rpm", True),
     ("rpm", "20001 rpm", False), ("pressure", "0 psi", True), ("pressure", "-0.001 psi", False),
     ("error", "0 psi", True), ("error", "-0.0001 psi", False), ("error", "30 psi", True),
     ("error", "30.5 psi", False)],
)  # fmt: skip
def test_a_reading_within_its_bounds(field: str, value: str, right: bool) -> None:
    entry = {**READING, field: value}
    if right:
        assert len(read(reading=[entry]).readings) == 1
    else:
        (fault,) = faults(reading=[entry])
        assert f"{field} '{value}' cannot be right; expected " in fault


@pytest.mark.parametrize("oil", [None, "90 C"])
@pytest.mark.parametrize("error", [None, "2 psi"])
def test_a_reading_is_kept_with_what_is_known_of_it(oil: str | None, error: str | None) -> None:
    known = {k: v for k, v in (("oil", oil), ("error", error)) if v}
    (found,) = read(reading=[{**READING, **known}]).readings
    assert found.reading.oil_temperature == (pytest.approx(363.15) if oil else None)
    assert found.reading.error == (pytest.approx(2 * PSI) if error else None)


def test_a_reading_needs_its_pressure_alone() -> None:
    """A field of a wrong type is wrong, and not missing as well."""
    plain = {"no": 1, "pressure": "20 psi"}
    assert len(read(reading=[plain], baseline=[{**plain, "no": 2}]).readings) == 1
    for kind in ("reading", "baseline"):
        without = {"no": 1, "rpm": "700 rpm"}
        assert faults(**{kind: [without]}) == [f"{kind} no = 1: pressure is missing"]
        assert len(faults(**{kind: [{**without, "pressure": 7}]})) == 1
        assert len(faults(**{kind: [{**plain, "rpm": 7}]})) == 1


@pytest.mark.parametrize("error", [None, "2 psi"])
def test_a_pressure_of_the_sound_engine(error: str | None) -> None:
    known = {**READING, "oil": "90 C", **({"error": error} if error else {})}
    (found,) = read(baseline=[known]).baseline
    assert found.reading.gauge == "direct"
    assert found.reading.oil_temperature == pytest.approx(363.15)
    assert found.reading.error == (pytest.approx(2 * PSI) if error else None)


@pytest.mark.parametrize(("value", "right"), [("0.001 rpm", True), ("0 rpm", False)])
def test_a_limit_is_above_zero(value: str, right: bool) -> None:
    engine = {"limits": {"idle_speed": value}}
    if right:
        assert list(read(engine=engine).limits.values()) == [pytest.approx(0.001, rel=1e-6)]
    else:
        assert "must be above zero" in faults(engine=engine)[0]


@pytest.mark.parametrize(("value", "right"), [("0 in", True), ("-0.001 in", False)])
def test_what_was_measured_for_a_task_is_not_below_zero(value: str, right: bool) -> None:
    entry = {"no": 1, "what": "pickup_gap_fitted", "value": value}
    if right:
        assert read(work=[entry]).task_records[0].value == 0.0
    else:
        (fault,) = faults(work=[entry])
        assert fault == f"work no = 1: '{value}' cannot be below zero"


# ------------------------------------------------------------------------ what hides what


def test_an_entry_without_a_word_hides_none_after_it() -> None:
    """Its own fault is the only one of it."""
    found = faults(
        finding=[{"no": 1, "state": "present"}, finding(2, what="oil_milkyy", state="present")],
        work=[{"no": 3, "state": "done"}, {"no": 4, "what": "no_such_task", "state": "done"}],
    )
    assert len(found) == 4
    assert found[0] == "finding no = 1.what: missing"
    assert "oil_milky" in found[2] + found[3]


def test_a_word_misspelt_in_its_name_is_asked_for_once() -> None:
    found = faults(finding=[{"no": 1, "wat": "oil_milky", "state": "present"}])
    assert sorted(found) == [
        "finding no = 1.wat: no such field. Did you mean 'what'?",
        "finding no = 1.what: missing",
    ]


def test_entries_whose_order_is_not_known_are_not_held_against_each_other() -> None:
    """What replaces what could not be read: the clash may be none."""
    entries = [
        finding(1),
        {**finding(2, what="needle_flickers", state="absent"), "replaces": "one"},
    ]
    (fault,) = faults(finding=entries)
    assert fault.startswith("finding no = 2.replaces: ")


def test_the_same_seen_at_two_places_is_no_clash() -> None:
    entries = [
        finding(1, what="needle_flickers", state="present", where="1"),
        finding(2, what="needle_flickers", state="absent", where="2"),
    ]
    assert len(read(finding=entries).finding_records) == 2
    entries[1]["where"] = "1"
    assert len(faults(finding=entries)) == 1


def test_a_closing_needs_a_cause_that_can_be_read() -> None:
    assert faults(closed=[{"no": 1}]) == [
        "closed no = 1: no cause; name one of the book, or not_in_the_book"
    ]
    assert len(faults(closed=[{"no": 1, "causes": 7}])) == 1, "wrong is not missing as well"
    closed = read(
        closed=[{"no": 1, "causes": ["relief_debris"], "minutes": "2 h", "planned": "90 s"}]
    ).closed
    assert closed is not None
    assert [closed.minutes, closed.planned] == pytest.approx([120.0, 1.5])


@pytest.mark.parametrize(
    ("entry", "says"),
    [({"state": "done", "value": "3"}, "is not measured"),
     ({}, "has no answer; write state"), ({"state": "skipped", "note": " "}, "write the reason"),
     ({"state": 3}, "'3' is not 'done'"), ({"value": 3}, "value: '3' must be text")],
)  # fmt: skip
def test_a_task_has_one_fault(entry: dict[str, Any], says: str) -> None:
    (fault,) = faults(work=[{"no": 1, "what": "pump_cover_screws_locked", **entry}])
    assert says in fault


def test_a_circuit_named_goes_before_the_layouts_own() -> None:
    layout = "distributor_v8"
    usual = read(engine={"layout": layout}).profile
    assert usual is not None
    name, other = next((n, p) for n, p in BOOK.profiles.items() if p is not usual)
    assert read(engine={"layout": layout, "profile": name.upper()}).profile is other
    assert "no such profile" in faults(engine={"layout": layout, "profile": "nothing"})[0]


def test_what_must_come_out_is_held_against_the_book() -> None:
    for key in ("first", "among_three", "among_five"):
        (fault,) = faults(expect={key: ["relief_debris", "relief_debri"]})
        assert fault.startswith(f"expect.{key}: no such cause 'relief_debri'")
    expect = read(expect={"first": ["relief_debris"], "alarm": True}).expect
    assert expect is not None
    assert (expect.first, expect.alarm, expect.contradiction) == (["relief_debris"], True, None)


@pytest.mark.parametrize("aircraft", [True, False, None])
@pytest.mark.parametrize("words", ["helicopter engine", "boat engine"])
def test_an_aircraft_is_one_where_it_is_said_or_suggested(
    aircraft: bool | None, words: str
) -> None:
    engine = {"name": words, **({} if aircraft is None else {"aircraft": aircraft})}
    refused = "helicopter" in words if aircraft is None else aircraft
    if refused:
        with pytest.raises(OutOfScopeError):
            read(engine=engine)
    else:
        assert read(engine=engine).engine.name == words


def test_every_feature_can_be_had_or_lacked() -> None:
    features: list[Finding] = [f for f in BOOK.findings.values() if f.kind is Kind.LAYOUT]
    for key, state in (("has", State.PRESENT), ("lacks", State.ABSENT)):
        case = read(engine={key: [f.id for f in features]})
        assert {f: case.features[f] for f in features} == dict.fromkeys(features, state)


def plain_unit(dimension: str) -> str | None:
    """A unit of the dimension in which a figure is what it is in SI, where it has one."""
    units = [u for u in DIMENSIONS[dimension].units if u.factor == 1.0 and u.offset == 0.0]
    return units[0].names[0] if units else None


@pytest.mark.parametrize(
    "name", sorted(n for n, what in BOOK.dimensions.items() if plain_unit(what.dimension))
)
def test_a_dimension_within_its_bounds(name: str) -> None:
    """Both bounds can be; what lies a thousandth of the range outside them cannot."""
    what = BOOK.dimensions[name]
    unit, (low, high) = plain_unit(what.dimension), what.plausible
    for value in (low, high):
        found = read(engine={"dimensions": {name: f"{value!r} {unit}"}}).dimensions
        assert found == {what: value}
    for value in (low - (high - low) / 1000, high + (high - low) / 1000):
        (fault,) = faults(engine={"dimensions": {name: f"{value!r} {unit}"}})
        assert f"cannot be the {what.says}; expected " in fault


@pytest.mark.parametrize("field", ["value", "state"])
def test_a_measured_value_of_a_wrong_type_has_one_fault(field: str) -> None:
    (fault,) = faults(finding=[{"no": 1, "what": "main_clearance", field: 7}])
    assert fault.startswith(f"finding no = 1.{field}: '7' ")


def test_the_engine_is_written_into_a_case_once(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    start(path, BOOK, {"title": "Skua"})
    before = path.read_text("utf-8")
    case = append_engine(path, BOOK, {"layout": "distributor_v8"})
    assert case.layout.id == "distributor_v8"
    after = path.read_text("utf-8")
    assert after == f'{before}\n[engine]\nlayout = "distributor_v8"\n'
    with pytest.raises(UsageError, match="has its \\[engine\\] already"):
        append_engine(path, BOOK, {"layout": "unknown"})
    assert path.read_text("utf-8") == after
