"""A filled-in worksheet records what the same facts typed would record; bad lines are named."""

from __future__ import annotations

import re
import time
from pathlib import Path

import pytest
import tomli_w

from diagnose.case.loading import load
from tests.support.command_line import call
from tests.support.complaints import JOBS, teardown
from tests.support.examples import one_in
from tests.support.sheets import (
    BOOK,
    EMPTY,
    READINGS,
    answers_for,
    begun,
    blanks,
    fill,
    keys,
    record,
    refused,
    sheet_of,
)


@pytest.fixture
def case(tmp_path: Path) -> Path:
    return begun(tmp_path / "heron.toml", "heron")


# ------------------------------------------------------------------------- untouched and filled


@pytest.mark.parametrize("form", ["--markdown", "--blanks"])
@pytest.mark.parametrize("name", one_in(4, list(JOBS)))
def test_an_untouched_sheet_is_refused(tmp_path: Path, name: str, form: str) -> None:
    case = begun(tmp_path / "x.toml", name)
    ending = ".md" if form == "--markdown" else ".toml"
    sheet = sheet_of(case, teardown(name, form).out, ending)
    refused(case, sheet, "sheet", "nothing is filled in; write")


@pytest.mark.parametrize("name", one_in(4, list(JOBS)))
def test_both_forms_have_the_same_blanks(name: str) -> None:
    """But for the tasks that debris calls for, which only the Markdown sheet lists."""
    assert {b for b in blanks(name) if b not in BOOK.tasks} == set(keys(name))
    assert set(blanks(name)) <= {*BOOK.findings, *BOOK.measures, *BOOK.tasks}


@pytest.mark.parametrize("name", one_in(4, list(JOBS)))
def test_a_whole_sheet_records_the_same_as_typing_it(tmp_path: Path, name: str) -> None:
    """Every blank filled, as Markdown, as TOML and typed: the same entries in the same order."""
    markdown, toml, typed = (begun(tmp_path / f"{n}.toml", name) for n in "abc")
    answers = answers_for(blanks(name))
    whole = fill(teardown(name, "--markdown").out, answers)
    readings = [f"- `reading`: {r}\n" for r in READINGS]
    written = record(markdown, "--sheet", str(sheet_of(markdown, whole + "".join(readings))))
    by_toml = sheet_of(toml, tomli_w.dumps({**answers, "reading": READINGS}), ".toml")
    facts = [f"{k}={v}" for k, v in answers.items()]
    by_hand = record(typed, *facts, *(w for r in READINGS for w in ("--reading", r)))
    assert len(written) == len(answers) + len(READINGS)
    assert sorted(map(str, written)) == sorted(map(str, by_hand))
    assert record(toml, "--sheet", str(by_toml)) == by_hand


def test_places_are_shown_beside_the_id(case: Path, tmp_path: Path) -> None:
    sheet = sheet_of(
        case,
        "- `main_clearance @ main 3`: 0.0031 in\n- `main_clearance @ main 4`: 0.0033 in\n"
        "- `shells_wiped@rod 2, lower`: yes\n",
    )
    written = record(case, "--sheet", str(sheet))
    typed = begun(tmp_path / "typed.toml", "heron")
    by_hand = record(typed, "main_clearance=0.0031 in", "--where", "main 3")
    by_hand += record(typed, "main_clearance=0.0033 in", "--where", "main 4")
    by_hand += record(typed, "shells_wiped=yes", "--where", "rod 2, lower")
    assert written == by_hand


def test_a_later_sheet_corrects_an_earlier_one(case: Path) -> None:
    for answer in ("yes", "no"):
        record(case, "--sheet", str(sheet_of(case, f"- `fuel_smell`: {answer}\n")))
    standing = {s.finding.id: s.entry.state for s in load(case, BOOK).finding_records}
    assert standing["fuel_smell"] == "absent"


def test_a_sheet_goes_with_facts_and_details(case: Path) -> None:
    sheet = str(sheet_of(case, "- `fuel_smell`: no\n- `reading`: 700 rpm 8 psi\n"))
    words = ["--by", "Maud", "--note", "cold", "--when", "2026-05-01", "--learned", "outside"]
    entries = record(case, "needle_flickers=yes", "--sheet", sheet, *words)
    assert [e.get("what") for e in entries] == ["needle_flickers", "fuel_smell", None]
    assert {(e["by"], e["note"], str(e["when"]), e["learned"]) for e in entries} == {
        ("Maud", "cold", "2026-05-01", "outside")
    }
    assert (
        "replaces: not with a sheet"
        in call("record", case, "--sheet", sheet, "--replaces", "1").err
    )


@pytest.mark.parametrize("blank", ["", "_", "___", "\\_\\_\\_", "__ __", "\t", "____________"])
def test_blanks_that_an_editor_changed_are_still_empty(case: Path, blank: str) -> None:
    text = teardown("heron", "--markdown").out.replace("______", blank)
    refused(case, sheet_of(case, text), "nothing is filled in")
    filled = fill(text, {"fuel_smell": "yes"}, blank)
    assert len(record(case, "--sheet", str(sheet_of(case, filled)))) == 1


def test_windows_line_ends_and_byte_order_marks(case: Path, tmp_path: Path) -> None:
    answers = {"fuel_smell": "yes", "dipstick_low": "no"}
    untouched = case.read_bytes()
    for name, text in (
        ("a.md", fill(teardown("heron", "--markdown").out, answers)),
        ("b.toml", tomli_w.dumps(answers)),
    ):
        case.write_bytes(untouched)
        path = tmp_path / name
        path.write_bytes(b"\xef\xbb\xbf" + text.replace("\n", "\r\n").encode())
        entries = record(case, "--sheet", str(path))
        assert {e["what"]: e["state"] for e in entries} == {
            "fuel_smell": "present",
            "dipstick_low": "absent",
        }


def test_tasks_that_debris_calls_for_are_ticked_off_by_sheet(tmp_path: Path) -> None:
    case = begun(tmp_path / "x.toml", "heron")
    record(case, "metal_in_filter=yes")
    text = call("teardown", case, "--markdown").out
    tasks = [b for b in EMPTY.findall(text) if b in BOOK.tasks]
    assert len(tasks) > 5
    answers = {tasks[0]: "done", tasks[1]: "failed", tasks[2]: "yes", tasks[3]: "no"}
    typed = begun(tmp_path / "typed.toml", "heron")
    record(typed, "metal_in_filter=yes")
    by_hand = record(typed, *(f"{k}={v}" for k, v in answers.items()))
    assert record(case, "--sheet", str(sheet_of(case, fill(text, answers)))) == by_hand
    assert [w.entry.state for w in load(case, BOOK).task_records] == [
        "done",
        "failed",
        "done",
        "failed",
    ]
    refused(case, sheet_of(case, f"- `{tasks[4]}`: skipped\n"), "line 1", "reason with --note")


# ------------------------------------------------------------------------- wrong blanks

#: one wrong blank, and what must be said of it beside its line
WRONG = [
    ("- `needle_flikers`: yes", "no finding 'needle_flikers'. Did you mean 'needle_flickers'?"),
    ("- `main_clearence`: 0.003 in", "Did you mean 'main_clearance'?"),
    ("- `@ main 3`: yes", "write it like needle_flickers=yes"),
    ("- `main_clearance`: 4 psi", "'4 psi' is no length here; write it like 0.0045 in"),
    ("- `main_clearance`: 0.05", "'0.05' is no length here"),
    ("- `main_clearance`: 0,0,8 mm", "'0,0,8 mm' is no length here"),
    ("- `main_clearance`: 9 mm", "'9 mm' cannot be a main bearing clearance"),
    ("- `main_clearance`: -1 mm", "expected 0 mm to 2 mm"),
    ("- `main_clearance`: yes", "'yes' is no length here"),
    ("- `needle_flickers`: perhaps", "'perhaps' is no answer; write yes, no, unknown"),
    ("- `needle_flickers`: 170 %", "'170 %' is no answer"),
    ("- `needle_flickers`: 3 mm", "'3 mm' is no answer"),
    ("- `needle_flickers`: yes· it does", "is no answer"),
    ("- `reading`: 700 95 8", "'700' is not understood"),
    ("- `reading`: 700 rpm 900 psi", "'900 psi' cannot be right"),
    ("- `reading @ pump`: 700 rpm 9 psi", "a reading has no place on the engine"),
    ("- `sump_washed`: perhaps", "write done, failed or skipped"),
    ("- `main_clearance_fitted`: 3 psi", "'3 psi' is no length here"),
    ("- `sump_wahsed`: done", "Did you mean 'sump_washed'?"),
    ("- `needle_flickers`: \x1b[31m", "'\\x1b[31m' is no answer"),
]


@pytest.mark.parametrize(("line", "message"), WRONG, ids=lambda v: v[:40])
def test_one_wrong_blank_is_named_and_the_others_are_saved(
    case: Path, line: str, message: str
) -> None:
    good = "- `fuel_smell`: yes\n\n- `dipstick_low`: no\n"
    sheet = sheet_of(case, f"# x\n{good}{line}\n- `pump_noise`: no\n")
    done = call("record", case, "--sheet", sheet)
    assert done.code == 65
    assert "1 line is wrong and not saved" in done.out
    assert re.fullmatch(r"(not saved: )?line 5: .*\n", done.err)
    assert message in done.err
    kept = [r.entry.what for r in load(case, BOOK).finding_records]
    assert kept[-3:] == ["fuel_smell", "dipstick_low", "pump_noise"]
    corrected = sheet_of(case, f"# x\n{good}- `needle_flickers`: yes\n- `pump_noise`: no\n")
    done = call("record", case, "--sheet", corrected)
    assert (done.code, done.err) == (0, "")
    assert "3 more lines of the sheet were in the case already" in done.out
    assert [r.entry.what for r in load(case, BOOK).finding_records] == [*kept, "needle_flickers"]


def test_a_sheet_that_says_nothing_new_is_refused(case: Path) -> None:
    sheet = sheet_of(case, "- `fuel_smell`: yes\n- `reading`: 700 rpm 195 F 9 psi\n")
    assert call("record", case, "--sheet", sheet).code == 0
    refused(case, sheet, "every line is in the case already")


def test_every_wrong_blank_is_reported_at_once(case: Path) -> None:
    lines = [w for w, message in WRONG if "cannot be" not in message and "expected" not in message]
    done = refused(case, sheet_of(case, "\n".join(lines)), faults=len(lines))
    assert [f.split(":")[0] for f in done.err.splitlines()] == [
        f"line {n}" for n in range(1, len(lines) + 1)
    ]


def test_one_blank_filled_twice(case: Path) -> None:
    sheet = "- `fuel_smell`: yes\n- `dipstick_low`: no\n- `fuel_smell`: no\n"
    done = call("record", case, "--sheet", sheet_of(case, sheet))
    twice = "line 1, line 3: fuel_smell: given 2 times; for several places write `id @ place`\n"
    assert (done.code, done.err) == (65, twice)
    assert [r.entry.what for r in load(case, BOOK).finding_records][-1] == "dipstick_low"
    assert not any(r.entry.what == "fuel_smell" for r in load(case, BOOK).finding_records)


def test_very_many_wrong_blanks_are_cut_short(case: Path) -> None:
    began = time.process_time()
    text = "".join(f"- `zzz{n}`: yes\n" for n in range(20_000))
    refused(case, sheet_of(case, text), "and perhaps more", faults=42)
    assert time.process_time() - began < 10


# ------------------------------------------------------------------------- TOML


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("main_clearance = 0.003", "line 1: main_clearance: write what you found in quotes"),
        ('needle_flikers = "yes"', "line 1: no finding 'needle_flikers'. Did you mean"),
        ('x = "y', "not a TOML file"),
    ],
)
def test_a_toml_sheet_with_a_fault(case: Path, text: str, message: str) -> None:
    """Every sort of fault is tried in test_entry_recording."""
    refused(case, sheet_of(case, text, ".toml"), message)


def test_every_unquoted_number_is_reported_at_once(case: Path) -> None:
    text = 'main_clearance = 0.003\nfuel_smell = "perhaps"\nrod_clearance = 0.002\n'
    done = refused(case, sheet_of(case, text, ".TOML"), faults=3)
    assert [f[:6] for f in done.err.splitlines()] == ["line 1", "line 2", "line 3"]


def test_a_toml_sheet_as_a_person_writes_it(case: Path) -> None:
    text = """
fuel_smell = true
dipstick_low = false   # full
"main_clearance @ main 3" = "0.0031 in"
'main_clearance @ main 4' = " 0.0033 in "
oil_smells_burnt = "______"
reading = [
  "700 rpm 95 C 8 psi",
  "",
  "2500 rpm 60 C 3.1 bar direct",
]
"""
    entries = record(case, "--sheet", str(sheet_of(case, text, ".toml")))
    assert [e.get("state") or e.get("value") or e.get("pressure") for e in entries] == [
        *("present", "absent", "0.0031 in", "0.0033 in", "8 psi", "3.1 bar")
    ]
