"""Values as people write and read them on a sheet: rounded limits, n/a, figures measured before."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.entry.recording import Input, record
from diagnose.entry.sheets import parse_toml
from diagnose.output.documents.signoff_items import signoff_item
from diagnose.planning.choosing import SURE
from diagnose.signoff.judging import NOTHING_KNOWN, Verdict, judged
from diagnose.signoff.sheet import Item, Signoff
from knowledge.book import the_book

BOOK = the_book()
ENGINE = 'schema = 1\n[engine]\nlayout = "skew_gear_four"\n'
BEGUN = '[[work]]\nno = 5\nwhat = "caps_torqued"\nstate = "done"\n'


def items(text: str) -> dict[str, Item]:
    """The tasks of a whole engine, by id."""
    sheet = Signoff(Diagnosis(BOOK, from_text(text, None, BOOK)), SURE, whole=True)
    return {i.task.id: i for i in sheet.items}


@pytest.mark.parametrize(
    ("value", "right"),
    [
        ("0.05 mm", "within the measuring error"),
        ("0.049 mm", "just outside"),
        ("0.002 in", "within the measuring error"),
        ("0.0019 in", "just outside"),
        ("0.10 mm", "fits"),
    ],
)
def test_a_limit_in_inches_is_read_in_mm_as_a_mechanic_reads_it(value: str, right: str) -> None:
    """0.002 in is 0.05 mm to whoever measures in mm, not 0.0508."""
    entry = f'[[work]]\nno = 1\nwhat = "gear_end_clearance_fitted"\nvalue = "{value}"\n'
    case = from_text('schema = 1\n[engine]\nlayout = "skew_gear_four"\n' + entry, None, BOOK)
    found = judged(BOOK.tasks["gear_end_clearance_fitted"], case.task_records[0], NOTHING_KNOWN)
    assert right in found.because


def test_a_roughness_and_a_difference_say_what_is_wanted() -> None:
    case = from_text(ENGINE, None, BOOK)
    sheet = Signoff(Diagnosis(BOOK, case), SURE, whole=True)
    found = {i.task.id: signoff_item(i, sheet) for i in sheet.items}
    assert "µm" in found["journals_smooth"].example
    assert "a difference" in found["panel_gauge_agrees"].blank


@pytest.mark.parametrize("pump", ["gear_pump", "rotor_pump"])
def test_the_lines_of_the_other_kind_of_pump_are_left_out(pump: str) -> None:
    found = items(f'{ENGINE}[[finding]]\nno = 1\nwhat = "{pump}"\nstate = "present"\n')
    gears = {"gear_side_clearance_fitted", "pump_backlash_fitted"}
    rotors = {"rotor_body_clearance_fitted", "rotor_tip_clearance_fitted"}
    mine, others = (gears, rotors) if pump == "gear_pump" else (rotors, gears)
    assert mine <= found.keys()
    assert not others & found.keys()


def test_not_applicable_is_left_out_with_its_reason(tmp_path: Path) -> None:
    path = tmp_path / "tern.toml"
    path.write_text(ENGINE, "utf-8")
    blanks = parse_toml('tray_clears_crank = "n/a"\nfloat_swings_freely = "N/A"\n')
    record(path, BOOK, Input(blanks=blanks))
    worked = load(path, BOOK).task_records
    assert [(w.entry.state, w.entry.note) for w in worked] == 2 * [
        ("skipped", "not on this engine")
    ]


@pytest.mark.parametrize(("no", "verdict"), [(6, Verdict.PASSED), (4, Verdict.OPEN)])
def test_a_figure_measured_once_the_repair_began_fills_its_line(no: int, verdict: Verdict) -> None:
    """One from before is of the worn parts."""
    one = f'[[finding]]\nno = {no}\nwhat = "crank_end_float"\nvalue = "0.12 mm"\n'
    found = items(ENGINE + BEGUN + one)["crank_end_float_set"]
    assert found.judged.verdict is verdict
