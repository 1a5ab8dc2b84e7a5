"""Facts, readings, sheets and corrections as entries of a case, without the command line."""

from __future__ import annotations

import time
from pathlib import Path

import pytest
import tomli_w
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.case import Case
from diagnose.case.loading import from_text, load
from diagnose.case.schema import MOST_NUMBERED
from diagnose.case.writing import NewEntry, start
from diagnose.entry.details import Details
from diagnose.entry.more_readings import load_with_readings, with_readings
from diagnose.entry.recording import Input, new_entries, record
from diagnose.entry.sheets import FilledBlank, parse_markdown, parse_toml, read_sheet
from diagnose.errors import UsageError
from knowledge.book import the_book
from knowledge.units import PSI

BOOK = the_book()
TEXT = """
schema = 1
[[finding]]
no = 1
what = "bearing_knock"
state = "present"
where = "rod 3"
[[finding]]
no = 2
what = "main_clearance"
value = "0.003 in"
[[reading]]
no = 3
rpm = "700 rpm"
pressure = "8 psi"
[[work]]
no = 4
what = "sump_washed"
state = "done"
[[baseline]]
no = 5
rpm = "700 rpm"
oil = "90 C"
pressure = "20 psi"
"""
CASE = from_text(TEXT, None, BOOK)


def entries(given: Input, case: Case = CASE) -> list[NewEntry]:
    return list(new_entries(given, case, BOOK))


def faults(given: Input, case: Case = CASE) -> list[str]:
    with pytest.raises(UsageError) as error:
        new_entries(given, case, BOOK)
    return str(error.value).splitlines()


# ------------------------------------------------------------------------- entries


@pytest.mark.parametrize(
    ("fact", "where", "replaces"),
    [
        ("bearing_knock=no", "rod 3", 1),
        ("bearing_knock=no", "rod 4", None),
        ("bearing_knock=no", "", None),
        ("main_clearance=0.1 mm", "", 2),
        ("main_clearance=0.1 mm", "main 1", None),
        ("sump_washed=failed", "", 4),
        ("needle_flickers=yes", "", None),
    ],
)
def test_the_same_thing_at_the_same_place_is_corrected(
    fact: str, where: str, replaces: int | None
) -> None:
    [entry] = entries(Input(facts=[fact], details=Details(where=where)))
    assert entry.fields["replaces"] == replaces


def test_kinds_of_entries_and_their_fields() -> None:
    details = Details(note="n", by="Ann", when="2026-05-01", learned="opened")
    given = Input(
        facts=["needle_flickers=70%", "rod_clearance=0.1 mm", "sump_washed=skipped"],
        readings=["700 rpm 8 psi direct start"],
        withdraw=[1, 3, 1],
        details=details,
    )
    made = entries(given)
    assert [e.kind for e in made] == ["finding", "finding", "work", "reading", "finding", "reading"]
    for entry in made:
        assert (entry.fields["note"], entry.fields["by"]) == ("n", "Ann")
        assert (str(entry.fields["when"]), entry.fields["learned"]) == ("2026-05-01", "opened")
    assert (made[0].fields["state"], made[0].fields["sure"]) == ("present", 0.7)
    assert made[1].fields["value"] == "0.1 mm"
    assert (made[3].fields["gauge"], made[3].fields["at"]) == ("direct", "start")
    assert list(made[3].fields)[:4] == ["rpm", "oil", "pressure", "error"]
    assert [(e.fields["state"], e.fields["replaces"]) for e in made[4:]] == [
        ("withdrawn", 1),
        ("withdrawn", 3),
    ]


REFUSED = [
    (Input(facts=["bearing_knock=yes", "bearing-knock=no"]), "bearing_knock: given 2 times"),
    (Input(facts=["sump_washed=skipped"]), "sump_washed: skipped; give the reason with --note"),
    (
        Input(readings=["700 rpm 9 psi"], details=Details(where="x")),
        "where: a reading has no place on the engine",
    ),
    (Input(withdraw=[7]), "no entry 7 stands"),
    (Input(facts=["a=b"], details=Details(when="5")), "when: '5' is no date"),
    (Input(facts=["fuel_smell=yes"], details=Details(learned="x")), "is not said, outside or"),
    (Input(facts=["fuel_smell=yes"], details=Details(replaces=9)), "no entry 9 stands"),
    (Input(facts=["fuel_smell=yes"], details=Details(replaces=3)), "entry 3 is a reading"),
    (Input(readings=["9 psi 700 rpm"], details=Details(replaces=1)), "entry 1 is a finding"),
    (Input(readings=["9 psi 700 rpm"], details=Details(replaces=5)), "entry 5 is a baseline"),
    (
        Input(facts=["fuel_smell=yes", "needle_flickers=no"], details=Details(replaces=1)),
        "corrects one entry",
    ),
    (
        Input(blanks=[FilledBlank("fuel_smell", "yes", "", "line 1")], details=Details(replaces=1)),
        "not with a sheet",
    ),
]


@pytest.mark.parametrize(("given", "part"), REFUSED, ids=lambda v: v if isinstance(v, str) else "")
def test_wrong_input(given: Input, part: str) -> None:
    assert any(part in fault for fault in faults(given))


def test_all_that_is_wrong_is_found_at_once() -> None:
    given = Input(
        facts=["a=b"], readings=["z"], withdraw=[7], details=Details(when="5", replaces=1)
    )
    assert len(faults(given)) == 5


def test_very_many_faults_are_cut_short() -> None:
    found = faults(Input(facts=[f"zzz{n}=yes" for n in range(20_000)]))
    assert (len(found), found[-1]) == (42, "and perhaps more")


def test_record_appends_all_or_nothing(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    start(path, BOOK, {"title": "x"})
    saved = record(path, BOOK, Input(facts=["fuel_smell=yes", "needle_flickers=no"]))
    assert (saved.first_number, saved.before.last_number, saved.after.last_number) == (1, 0, 2)
    assert [e.fields["what"] for e in saved.entries] == ["fuel_smell", "needle_flickers"]
    assert load(path, BOOK).last_number == 2
    before = path.read_bytes()
    for wrong in (
        Input(),
        Input(facts=["fuel_smell=no", "zzz=yes"]),
        Input(facts=["main_clearance=9 mm", "fuel_smell=no"]),
    ):
        with pytest.raises(UsageError):
            record(path, BOOK, wrong)
        assert path.read_bytes() == before


# ------------------------------------------------------------------------- readings to try


def test_readings_to_try_leave_the_file_alone(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    path.write_text(TEXT, "utf-8")
    case = load_with_readings(path, BOOK, ["2500 rpm 60 C 3.1 bar direct", "700 rpm 9 psi start"])
    assert path.read_text("utf-8") == TEXT
    assert [r.entry.no for r in case.readings] == [3, 6]
    assert [r.entry.no for r in case.start_readings] == [7]
    assert case.last_number == 7
    assert case.readings[1].reading.pressure == pytest.approx(3.1e5)
    assert case.start_readings[0].reading.pressure == pytest.approx(9 * PSI)
    assert set(case.standing) == {1, 2, 3, 4, 5, 6, 7}


def test_wrong_readings_to_try() -> None:
    for text, part in (
        ("700 rpm 900 psi", "'900 psi' cannot be right; expected 0 psi to 300 psi"),
        ("700 rpm", "needs a pressure"),
    ):
        with pytest.raises(UsageError, match=part.split(";")[0]):
            with_readings(CASE, [text])
    with pytest.raises(UsageError, match="at most 2,000"):
        with_readings(CASE, ["700 rpm 8 psi"] * MOST_NUMBERED)


def test_a_case_with_readings_to_try_is_the_case_with_them_written(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    path.write_text(TEXT, "utf-8")
    readings = ["2500 rpm 60 C 3.1 bar direct +-0.1 bar pump", "700 rpm 9 psi"]
    tried = load_with_readings(path, BOOK, readings)
    assert record(path, BOOK, Input(readings=readings)).after == tried


# ------------------------------------------------------------------------- sheets

BLANKS = [
    "- `fuel_smell`: yes",
    "  - `fuel_smell`: yes · the oil smells of petrol or diesel fuel",
    "* `fuel_smell`: YES",
    "`fuel_smell` : y",
    "• `Fuel-Smell`: yes ·",
    "- `fuel_smell`: __yes__ · the oil smells",
    "- `fuel_smell`: \\_\\_yes\\_\\_\\_ · the oil smells",
    "- `fuel_smell`:yes______ · the oil smells",
    '- `fuel_smell`: "yes" · the oil smells',
    "- `fuel_smell`: **yes**",
    "- ` fuel_smell `: yes\t· the oil smells",
    "\ufeff- `fuel_smell`: yes",
]


@pytest.mark.parametrize("line", BLANKS)
def test_a_blank_as_people_and_editors_leave_it(line: str) -> None:
    [blank] = parse_markdown(line)
    assert (blank.where, blank.place, blank.fault) == ("", "line 1", "")
    [entry] = entries(Input(blanks=[blank]))
    assert (entry.fields["what"], entry.fields["state"]) == ("fuel_smell", "present")
    assert entry.label == "line 1: fuel_smell"


@pytest.mark.parametrize("blank", ["", "_", "___", "\\_\\_\\_", "__ __", "\t", "** **", '""', "·"])
def test_an_empty_blank_is_no_answer(blank: str) -> None:
    assert parse_markdown(f"- `fuel_smell`: {blank} · the oil smells") == []


def test_places_and_lines_of_a_sheet() -> None:
    text = "# title\n\n- `main_clearance @ main 3`: 0.0031 in\r\n- `reading`: 700 rpm 8 psi\n"
    assert parse_markdown(text) == [
        FilledBlank("main_clearance", "0.0031 in", "main 3", "line 3"),
        FilledBlank("reading", "700 rpm 8 psi", "", "line 4"),
    ]
    text = 'a = true\n"b @ rod 2" = "no"\nc = ""\nd = ["x", "", "y"]\ne = 1\n'
    found = parse_toml(text)
    assert [(b.id, b.value, b.where, b.place) for b in found] == [
        ("a", "yes", "", "line 1"),
        ("b", "no", "rod 2", "line 2"),
        ("d", "x", "", "line 4"),
        ("d", "y", "", "line 4"),
        ("e", "", "", "line 5"),
    ]
    assert [b.fault for b in found if b.fault] == ["e: write what you found in quotes"]


WRONG_BLANKS = [
    ("main_clearance = 0.003", "line 1: main_clearance: write what you found in quotes"),
    ("needle_flickers = 1", "needle_flickers: write what you found in quotes"),
    ("fuel_smell = 2026-05-01", "fuel_smell: write what you found in quotes"),
    ("[fuel_smell]\na = 1", "line 1: fuel_smell: write what you found in quotes"),
    ("reading = [700, 8]", "reading: write what you found in quotes"),
    ("reading = [['700 rpm 8 psi']]", "reading: write what you found in quotes"),
    ('reading = ["700 rpm 8 psi", "700 rpm"]', "line 1: reading '700 rpm': needs a pressure"),
    ("main_clearance = true", "'yes' is no length here"),
    ("schema = 1", "schema: write what you found in quotes"),
    ('needle_flikers = "yes"', "line 1: no finding 'needle_flikers'. Did you mean"),
]


@pytest.mark.parametrize(("text", "part"), WRONG_BLANKS, ids=lambda v: v[:30])
def test_a_toml_sheet_with_a_wrong_blank(text: str, part: str) -> None:
    [fault] = faults(Input(blanks=parse_toml(text)))
    assert part in fault


NO_TOML = [
    ('x = "y', "not a TOML file"),
    ("yes", "not a TOML file"),
    ('fuel_smell = "yes"\nfuel_smell = "no"', "not a TOML file"),
    ("a." * 200_000 + "b = 1", "nested too deep for a sheet"),
    ("a = " + "[" * 10_000, "nested too deep"),
    (f"a = {'1' * 10_000}", "a number too long"),
]


@pytest.mark.parametrize(("text", "part"), NO_TOML, ids=lambda v: v[:20])
def test_a_sheet_that_is_no_toml(tmp_path: Path, text: str, part: str) -> None:
    began = time.process_time()
    with pytest.raises(UsageError, match=part):
        parse_toml(text)
    assert time.process_time() - began < 5
    sheet = tmp_path / "sheet.TOML"
    sheet.write_text(text, "utf-8")
    with pytest.raises(UsageError) as error:
        read_sheet(sheet)
    assert str(error.value).startswith(f"{sheet}: ")


ID = st.sampled_from(["fuel_smell", "main_clearance @ main 3", "reading"])
VALUE = st.text(st.characters(categories=["L", "N"]), min_size=1, max_size=20)


@given(st.dictionaries(ID, VALUE))
def test_both_forms_of_a_sheet_say_the_same(answers: dict[str, str]) -> None:
    markdown = parse_markdown("".join(f"- `{k}`: {v} · note\n" for k, v in answers.items()))
    toml = parse_toml(tomli_w.dumps(answers))
    assert [(b.id, b.value, b.where) for b in markdown] == [(b.id, b.value, b.where) for b in toml]
    assert {f"{b.id} @ {b.where}" if b.where else b.id: b.value for b in toml} == answers


@given(st.text(st.characters(exclude_categories=["Cs"]), max_size=200))
def test_any_text_is_a_sheet_or_refused_in_one_line(text: str) -> None:
    for blank in parse_markdown(text):
        assert blank.value.strip()
    try:
        parse_toml(text)
    except UsageError as error:
        fault = str(error)
    else:
        return
    assert fault.isprintable()
