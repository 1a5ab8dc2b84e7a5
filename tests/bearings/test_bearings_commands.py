"""The command ``bearings``: readings typed or from a sheet, one screen, a whole job."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose import load_case
from diagnose.bearings.table import Step
from diagnose.entry.bearings import parse_words, read_blanks
from diagnose.entry.sheets import FilledBlank
from diagnose.errors import UsageError
from diagnose.fits.bearing import Kind, Place
from diagnose.output.lines import columns
from knowledge.units import INCH
from tests.support.command_line import Done, call
from tests.support.examples import examples
from tests.support.page import Page

ENGINE = (
    'schema = 1\n[job]\ntitle = "Test V8"\n[engine]\nlayout = "distributor_v8"\noil = "SAE 30"\n'
)


@pytest.fixture
def typed(tmp_path: Path) -> Callable[..., Done]:
    """Run ``bearings`` on one case of a V8."""
    path = tmp_path / "v8.toml"
    path.write_text(ENGINE, "utf-8")

    def run(*words: str | Path) -> Done:
        return call("bearings", path, *words)

    return run


def test_typed_readings_are_kept_as_typed_and_answered(typed: Callable[..., Done]) -> None:
    done = typed("main", "3", "strip", "4.6 thou", "rod 2 strip 0.055 mm", "main 1 2.1 thou")
    assert done.code == 0, done.err
    rows = [line.split()[:3] for line in done.out.splitlines() if line[2:6] in ("main", "rod ")]
    assert rows == [["!", "main", "3"], ["main", "1", "2.1"], ["rod", "2", "0.055"]], done.out
    assert "over 3.5" in done.out
    assert done.out.rstrip().splitlines()[-1].startswith("  diagnose bearings ")


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ("mian 3 strip 2 thou", "no bearing named"),
        ("main 3 jurnal 2.44 in", "Did you mean 'journal'?"),
        ("main 3 strip 2.5 in", "Did you mean 2.5 thou?"),
        ("main 3 journal 2.4 2.5 2.6 2.7 2.8 in", "5 figures"),
        ("main 3 strip 2,5,1 thou", "write it like"),
        ("main 3", "nothing of main 3"),
        ("mains journal 62 mm", "write main 1 journal"),
        ("rod 1 use hard", "use is of all rods"),
        ("mains use gentle", "is not road or hard"),
        ("mains wanted 2 thou", "write the least and the most"),
        ("main 3 strip 2.2 furlongs", "furlongs"),
        ("main 3 .0045mm", "0.0045 mm cannot be the clearance by gauge strip"),
        ("main 3 .0045mm", "Did you mean 0.0045 in?"),
        ("main 3 40 thou", "expected 0.197 thou to 15.7 thou"),
    ],
)
def test_bad_words_are_one_clear_line_and_nothing_is_saved(
    typed: Callable[..., Done], tmp_path: Path, words: str, says: str
) -> None:
    done = typed(words, "rod 1 strip 2.2 thou")
    assert done.code == 2
    assert says in done.err
    assert len(done.err.splitlines()) == 1
    assert (tmp_path / "v8.toml").read_text("utf-8") == ENGINE


def filled(sheet: str, answers: dict[str, str]) -> str:
    for blank, text in answers.items():
        assert f"`{blank}`: ______" in sheet, blank
        sheet = sheet.replace(f"`{blank}`: ______", f"`{blank}`: {text}")
    return sheet


def test_a_sheet_keeps_its_good_lines_and_names_the_bad(
    typed: Callable[..., Done], tmp_path: Path
) -> None:
    sheet = tmp_path / "sheet.md"
    printed = typed("--markdown").out
    assert printed.count("`journal @ ") == 5 + 8
    answers = {
        "unit": "in",
        "new_shell @ mains": "0.0955",
        "bore @ main 1": "2.6412 2.6413 2.6412 2.6413",
        "journal @ main 1": "2.4484 2.4483 2.4484 2.4483",
        "strip @ main 2": "2.2",
        "strip @ rod 1": "2.2 thou",
        "journal @ rod 2": "about two",
    }
    sheet.write_text(filled(printed, answers), "utf-8")
    done = typed("--from", sheet)
    assert done.code == 65
    bad = done.err.splitlines()
    assert len(bad) == 2
    assert "strip @ main 2" in bad[0]
    assert "Did you mean 2.2 thou?" in bad[0]
    assert "journal @ rod 2" in bad[1]
    case = load_case(tmp_path / "v8.toml")
    assert [p.says for p in case.bearings.found] == ["main 1", "rod 1"]
    assert "entered: 2.4484 2.4483 2.4484 2.4483 in" in typed("--markdown").out


def test_the_blanks_as_toml_are_read_back(typed: Callable[..., Done], tmp_path: Path) -> None:
    sheet = tmp_path / "sheet.toml"
    blanks = typed("--blanks").out
    text = blanks.replace('"strip @ rod 3" = ""', '"strip @ rod 3" = "2.4"', 1)
    sheet.write_text(text.replace('unit = ""', 'unit = "thou"', 1), "utf-8")
    assert typed("--from", sheet).code == 0
    case = load_case(tmp_path / "v8.toml")
    assert [m.value for m in case.measurements] == [pytest.approx(2.4e-3 * INCH)]


def test_the_page_has_every_bearing_and_what_was_entered(
    typed: Callable[..., Done], tmp_path: Path
) -> None:
    """Each figure in its own cell; two figures are front and rear, joined by '/' two ways across."""
    typed("main 2 journal 2.4484 2.4481 in", "main 3 journal 2.4484/2.4482 in", "rod 1 2.2 thou")
    page = tmp_path / "sheet.html"
    assert typed("--html", page).code == 0
    text = page.read_text("utf-8")
    rows = [r.split('<td class="tall">')[1:] for r in text.split('<tr><th scope="row">')]
    cells = [tuple(c.split("<")[0] for c in row) for row in rows if row]
    assert len(cells) == 2 * (5 + 8)
    assert ("2.4484", "", "2.4481", "", "", "") in cells
    assert ("2.4484", "2.4482", "", "", "", "") in cells
    assert ("", "", "", "", "2.2 thou", "") in cells
    tags = Page(text).tags
    assert tags.count("table") == tags.count("caption") == 5
    assert not {"script", "link", "img"} & {*tags}


def test_a_whole_v8_fits_one_screen(typed: Callable[..., Done]) -> None:
    """Thirteen bearings, each with its line, the order and the next step."""
    words = [f"main {n} strip {2.0 + n / 10:.1f} thou" for n in range(1, 6)]
    words += [f"rod {n} strip {1.8 + n / 20:.2f} thou" for n in range(1, 8)]
    done = typed(*words, "rod 8 strip 4.6 thou")
    lines = done.out.rstrip().splitlines()
    assert len(lines) <= 30, done.out
    assert all(columns(line) <= 80 for line in lines if "v8.toml" not in line)
    assert sum(line[2:6] in ("main", "rod ") for line in lines) == 13
    assert lines[1].startswith("13 readings saved in")
    assert any(line.startswith("! rod 8") for line in lines[3:5])
    assert lines[-2].startswith("Next: ")


def test_json_and_full_say_the_same(typed: Callable[..., Done]) -> None:
    typed(
        "mains new_shell 0.0955 in",
        "main 1 bore 2.6412 2.6413 2.6412 2.6413 in shell 0.0954 0.0955 in",
    )
    done = typed("main 1 journal 2.4484 2.4482 2.4484 2.4482 in", "--json")
    row = json.loads(done.out)["bearings"][0]
    assert row["clearance_mm"] == pytest.approx(0.0020 * 25.4, abs=1e-4)
    assert row["journal_oval_mm"] == pytest.approx(0.0002 * 25.4, abs=1e-5)
    full = typed("--full").out
    assert (
        "housing bore 2.6412 - upper shell 0.0954 - lower shell 0.0955 - journal 2.4483"
        in " ".join(full.split())
    )
    assert "[BCN]" in full
    assert "[CLR]" in full


def test_a_whole_job_from_the_sheet_to_the_sign_off(
    typed: Callable[..., Done], tmp_path: Path
) -> None:
    """Measured, reground, fitted: each answer names the next step, the last one the sign-off."""
    steps: list[Step | str] = []

    def answer(*words: str) -> dict[str, object]:
        done = typed(*words, "--mains", "2", "--rods", "1", "--json")
        assert done.code == 0, done.err
        found: dict[str, object] = json.loads(done.out)
        steps.append(str(found["next_step"]))
        return found

    answer()
    answer("main 1 strip 2.2 thou", "main 2 strip 4.8 thou")
    answer("rod 1 strip 2.0 thou")
    answer("main 2 journal 2.4475 2.4462 in")
    order = answer("mains new_journal 2.4479 2.4488 in")["orders"]
    answer("--fitted", "main 1 strip 2.1 thou", "main 2 strip 2.2 thou")
    answer("--fitted", "rod 1 strip 2.0 thou")
    assert steps == [
        Step.MEASURE.value,
        Step.MISSING.value,
        Step.JOURNAL.value,
        Step.STANDARD.value,
        Step.GRIND.value,
        Step.FITTED.value,
        Step.SIGN_OFF.value,
    ]
    assert isinstance(order, list)
    assert order[0]["undersizes_mm"] == [0.254, 0.254]
    case = tmp_path / "v8.toml"
    assert "main_clearance_fitted" in call("signoff", case, "--whole-engine", "--json").out
    assert call("review", case).code == 0


def test_a_sheet_needs_the_number_of_bearings(tmp_path: Path) -> None:
    """An engine of which nothing says how many it has."""
    path = tmp_path / "six.toml"
    path.write_text("schema = 1\n", "utf-8")
    refused = call("bearings", path, "--markdown")
    assert refused.code == 2
    assert '"mains count 3" "rods count 2"' in refused.err
    assert '"mains count 3" "rods count 2"' in call("bearings", path).out
    assert call("bearings", path, "mains count 3", "rods count 2").code == 0
    assert call("bearings", path, "--markdown").code == 0
    sheet = call("bearings", path, "--markdown", "--mains", "7", "--rods", "6").out
    assert sheet.count("`journal @ ") == 7 + 6


def test_an_entry_is_withdrawn_like_any_other(typed: Callable[..., Done], tmp_path: Path) -> None:
    typed("main 1 strip 2.2 thou", "main 2 strip 4.4 thou")
    path = tmp_path / "v8.toml"
    assert call("record", path, "--withdraw", "2").code == 0
    assert [p.says for p in load_case(path).bearings.found] == ["main 1"]


WORDS = st.lists(
    st.sampled_from(
        ["main", "rods", "3", "journal", "strip", "2.2", "thou", "in", "use", "hard", "=", "/"]
    )
    | st.text(max_size=6),
    max_size=8,
)


@settings(max_examples=examples(200), deadline=None)
@given(words=WORDS)
def test_any_words_are_read_or_refused(words: list[str]) -> None:
    """What is read can be kept; what is not is refused with a line for each phrase."""
    try:
        given_ = parse_words(words)
    except UsageError as fault:
        said = str(fault)
    else:
        said = ""
        assert all(one.text.strip() for one in given_)
    assert said.count("\n") <= len(" ".join(words).split())


@settings(max_examples=examples(100), deadline=None)
@given(id_=st.text(max_size=12), value=st.text(min_size=1, max_size=12), where=st.text(max_size=8))
def test_any_blank_is_read_or_named(id_: str, value: str, where: str) -> None:
    read = read_blanks([FilledBlank(id_, value, where, "line 1")])
    assert len(read.given) + len(read.bad) == (id_.lower() != "unit" or bool(read.bad))
    assert all("\n" not in line for line in read.bad)


def test_two_readings_in_one_phrase(typed: Callable[..., Done], tmp_path: Path) -> None:
    typed("main 3 inside 2.4503 in journal: 2.4482 2.4481 in undersize std")
    case = load_case(tmp_path / "v8.toml")
    assert case.measurements[0].value == pytest.approx((2.4503 - 2.44815) * INCH)


@pytest.mark.parametrize(
    "words",
    [
        "m3 strip 2.2 thou",
        "#3 main 2.2 thou",
        "no 3 main bearing strip 2.2 thou",
        "no. 3 main 2.2 thou",
    ],
)
def test_a_bearing_is_named_as_in_the_shop(words: str) -> None:
    assert [(i.place, i.name) for i in parse_words([words])] == [(Place(Kind.MAIN, 3), "strip")]


def test_numbers_before_and_behind_the_name_do_not_mix() -> None:
    read = parse_words(
        [
            "main",
            "1",
            "strip",
            "2",
            "thou",
            "main",
            "2",
            "strip",
            "3",
            "thou",
            "no",
            "3",
            "main",
            "2.5",
            "thou",
            "r1",
            "2",
            "thou",
        ]
    )
    assert [(i.place.says, i.text) for i in read if isinstance(i.place, Place)] == [
        ("main 1", "2 thou"),
        ("main 2", "3 thou"),
        ("main 3", "2.5 thou"),
        ("rod 1", "2 thou"),
    ]
    assert parse_words(["all mains undersize 0.010 in"])[0].place is Kind.MAIN
    assert parse_words(["no 2 big end strip 1.5 to 3 thou"])[0].text == "1.5 to 3 thou"
