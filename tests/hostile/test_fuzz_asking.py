"""Any answers at every prompt, and corrupted sheets."""

from __future__ import annotations

import random
from functools import cache
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.entry.sheets import read_sheet
from diagnose.errors import UserError
from knowledge.book import the_book
from tests.support.command_line import call
from tests.support.complaints import JOBS, teardown
from tests.support.fuzzing import TOKENS, chooser, ended_well, one, too_late
from tests.support.sheets import ANSWERS, READINGS

BOOK = the_book()
RIGHT = ["y", "n", "d", "yes", "no", "probably", "probably not", "", "why", "back", "?"]
ODD = ["1 2 3", "99999", "٣", "-1", "stop", "y" * 10_001, "\0", "\x1b[A", "é", "70 %", "1,2", "²"]
COMPLAINTS = ["low at idle", "needle dances", "knocks when hot, smells of fuel", "zero pressure"]


# ------------------------------------------------------------------------------ prompts


def said(dice: random.Random) -> str:
    """Lines a person types: mostly answers, then anything."""
    lines = ["Launch", dice.choice(COMPLAINTS)] if dice.random() < 0.7 else []
    for _ in range(dice.randrange(30)):
        roll = dice.random()
        if roll < 0.75:
            lines.append(dice.choice(RIGHT))
        elif roll < 0.9:
            lines.append(str(dice.randrange(30)))
        else:
            lines.append(dice.choice((dice.choice(ODD), dice.choice(TOKENS))))
    return dice.choice(("\n", "\n", "\n", "\r\n")).join(lines) + dice.choice(("", "\n"))


def asked(case: Path, dice: random.Random) -> None:
    """One conversation: it ends well, and what was said before it still stands after it."""
    before = case.read_bytes() if case.exists() else b""
    entries = load(case, BOOK).last_number if before else 0
    answers = said(dice)
    with one("conversations", answers, 30.0):
        done = call("ask", case, "--questions", str(dice.randrange(12)), answers=answers)
    ended_well(done, answers)
    if case.exists():
        assert case.read_bytes().startswith(before)
        assert load(case, BOOK).last_number >= entries


def conversations(folder: Path, first: int, many: int) -> int:
    """The entries that all of them left behind."""
    kept = 0
    for number in range(first, first + many):
        dice = chooser("ask", number)
        case = folder / f"{number}.toml"
        if dice.random() < 0.3:
            case.write_text(JOBS[dice.choice(list(JOBS))], "utf-8")
        for _ in range(dice.choice((1, 1, 2))):
            asked(case, dice)
        if case.exists():
            kept += load(case, BOOK).last_number
            case.unlink()
    return kept


def test_prompts_bear_anything(tmp_path: Path) -> None:
    assert conversations(tmp_path, 0, 4) > 8


@pytest.mark.long
def test_prompts_at_length(tmp_path: Path) -> None:
    assert conversations(tmp_path, 4, 700) > 2_000


# ------------------------------------------------------------------------------- sheets


@cache
def sheets() -> dict[str, list[str]]:
    """Real sheets of each form, with answers in some of their blanks."""
    found: dict[str, list[str]] = {".md": [], ".toml": []}
    dice = chooser("sheet", -1)
    for name in ("heron", "skua", "winch_begun", "petrel_whole"):
        for form, ending in (("--markdown", ".md"), ("--blanks", ".toml")):
            lines = teardown(name, form).out.split("\n")
            for i, line in enumerate(lines):
                answer = dice.choice([*ANSWERS, *READINGS, "0.003 in", "done"])
                if dice.random() < 0.05:
                    lines[i] = line.replace("______", answer).replace('""', f'"{answer}"')
            found[ending].append("\n".join(lines))
    return found


def recorded(folder: Path, number: int) -> bool:
    """Return whether a corrupted sheet was taken; where it was not, nothing has changed."""
    dice = chooser("sheet", number)
    ending = dice.choice((".md", ".toml"))
    real = sheets()[ending]
    lines = dice.choice(real).split("\n")
    at = dice.randrange(len(lines))
    part = "\n".join(lines[at : at + dice.randrange(2, 60)])
    data = too_late(part, dice, real)
    sheet, case = folder / f"sheet{ending}", folder / "x.toml"
    sheet.write_bytes(data)
    with one("corrupted sheets", data):
        try:
            answers = read_sheet(sheet)
        except UserError as bad:
            answers = []
            assert str(bad).strip()  # noqa: PT017
    if not answers and dice.random() < 0.9:
        return False
    before = JOBS["heron"]
    case.write_text(before, "utf-8")
    with one("corrupted sheets", data, 10.0, new=False):
        done = call("record", case, "--sheet", sheet)
    ended_well(done, data)
    after = case.read_text("utf-8")
    assert after.startswith(before)
    assert done.code == 65 or (after == before) == (done.code != 0), (data, done)
    if after != before:
        assert load(case, BOOK).last_number > 1
    return after != before


def test_corrupted_sheets(tmp_path: Path) -> None:
    """Some are taken and some are not, or nothing is tried."""
    taken = sum(recorded(tmp_path, n) for n in range(200))
    assert 5 < taken < 195


@pytest.mark.long
def test_corrupted_sheets_at_length(tmp_path: Path) -> None:
    for number in range(200, 25_000):
        recorded(tmp_path, number)
