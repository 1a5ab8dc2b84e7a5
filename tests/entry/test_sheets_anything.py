"""Any file as a sheet: its good lines are recorded, and each line left out has its reason."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest
import tomli_w
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from diagnose.case.loading import LARGEST, load
from tests.support.command_line import call
from tests.support.complaints import teardown
from tests.support.sheets import (
    ANSWERS,
    BOOK,
    READINGS,
    begun,
    blanks,
    fill,
    record,
    refused,
    sheet_of,
)

SAVED = settings(
    deadline=None,
    max_examples=60,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)


@pytest.fixture
def case(tmp_path: Path) -> Path:
    return begun(tmp_path / "heron.toml", "heron")


# ------------------------------------------------------------------------- whole files


def test_sheets_that_cannot_be_read(case: Path, tmp_path: Path) -> None:
    (tmp_path / "latin.md").write_bytes("- `fuel_smell`: yes · mü".encode("latin-1"))
    (tmp_path / "folder.md").mkdir()
    (tmp_path / "gone.md").symlink_to(tmp_path / "nowhere")
    with (tmp_path / "large.md").open("wb") as file:
        file.truncate(LARGEST + 1)
    for name, code, message in (
        ("latin.md", 65, "is not UTF-8 text; save the file as UTF-8"),
        ("large.md", 65, f"a sheet is at most {LARGEST:,}"),
        ("folder.md", 66, "is a folder; name a sheet file in it"),
        ("gone.md", 66, "is a link to a file that is not there"),
        ("latim.md", 66, "no such sheet; did you mean"),
        ("qqqqqq.txt", 66, "no such sheet; 'diagnose teardown CASE --markdown' makes one"),
        ("no/x.md", 66, "there is no folder"),
    ):
        assert "case file" not in refused(case, tmp_path / name, message, code=code).err
    refused(case, Path("/dev/zero"), "is no ordinary file, and so no sheet", code=66)


def test_a_bad_case_is_refused_before_its_sheet_is_written(tmp_path: Path) -> None:
    sheet = sheet_of(tmp_path / "x.toml", "- `fuel_smell`: yes\n")
    bad = tmp_path / "bad.toml"
    bad.write_text("schema = 2\n")
    refused(bad, sheet, "this is 1", code=65)


# ------------------------------------------------------------------------- anything


@cache
def ids() -> list[str]:
    return blanks("heron")[:30]


ODD = ["reading", "sump_washed", "needle_flikers", "main_clearance @ main 3"]
ID = st.deferred(lambda: st.sampled_from([*ids(), *ODD]))
TEXT = st.text(st.characters(exclude_categories=["Cs"]), max_size=40)
ANSWER = st.sampled_from([*ANSWERS, *READINGS, "0.003 in", "4 psi", "9 mm", "done", "skipped"])
LINE = TEXT | st.builds("- `{}`: {} · {}".format, ID | TEXT, ANSWER | TEXT, TEXT)
SHEET = st.lists(LINE, max_size=8).map("\n".join)
KEYED = st.dictionaries(ID | TEXT, ANSWER | TEXT | st.lists(ANSWER, max_size=3), max_size=5)


def accepted_or_untouched(case: Path, sheet: Path) -> bool:
    before = case.read_bytes()
    done = call("record", case, "--sheet", sheet)
    assert done.code in (0, 2, 65), done
    assert "Traceback" not in done.err
    assert "a fault of diagnose" not in done.err
    after = case.read_bytes()
    if done.code == 65:  # some lines are wrong; the others are saved
        assert done.err.strip()
    elif done.code:
        assert (after, done.out) == (before, "")
        return False
    assert after.startswith(before)
    assert load(case, BOOK).last_number > 1
    return True


@SAVED
@given(text=SHEET | TEXT | KEYED.map(tomli_w.dumps), ending=st.sampled_from([".md", ".toml"]))
def test_any_text_is_a_sheet_or_changes_nothing(tmp_path: Path, text: str, ending: str) -> None:
    case = begun(tmp_path / "x.toml", "heron")
    accepted_or_untouched(case, sheet_of(case, text, ending))


@SAVED
@given(data=st.binary(max_size=200))
def test_any_bytes_change_nothing_or_are_a_sheet(tmp_path: Path, data: bytes) -> None:
    case = begun(tmp_path / "x.toml", "heron")
    sheet = tmp_path / "sheet.md"
    sheet.write_bytes(data)
    before = case.read_bytes()
    assert call("record", case, "--sheet", sheet).code in (2, 65)
    assert case.read_bytes() == before


@SAVED
@given(
    answers=st.dictionaries(
        st.deferred(lambda: st.sampled_from([i for i in ids() if i in BOOK.findings])),
        st.sampled_from(ANSWERS),
        min_size=1,
        max_size=8,
    )
)
def test_markdown_and_toml_of_the_same_answers_agree(
    tmp_path: Path, answers: dict[str, str]
) -> None:
    one, other = (begun(tmp_path / f"{n}.toml", "heron") for n in "ab")
    in_order = {id_: answers[id_] for id_ in ids() if id_ in answers}
    markdown = fill(teardown("heron", "--markdown").out, in_order)
    written = record(one, "--sheet", str(sheet_of(one, markdown)))
    toml = sheet_of(other, tomli_w.dumps(in_order), ".toml")
    assert written == record(other, "--sheet", str(toml))
    assert one.read_text() == other.read_text()
