"""Sheets filled in and recorded."""

from __future__ import annotations

import itertools
import re
import tomllib
from collections.abc import Mapping
from pathlib import Path

from diagnose.case.loading import load
from knowledge.book import the_book
from knowledge.units import DIMENSIONS, show
from tests.support.command_line import Done, call
from tests.support.complaints import JOBS, teardown

BOOK = the_book()
EMPTY = re.compile(r"^- `([^`]+)`: ______ ·", re.MULTILINE)
ANSWERS = ["yes", "no", "unknown", "probably", "70 %", "Probably not", "don't know", "20%", "Y"]
READINGS = ["700 rpm 95 C 8 psi", "2500 rev/min 60 C 3.1 bar direct"]


def begun(path: Path, name: str) -> Path:
    path.write_text(JOBS[name], "utf-8")
    return path


def blanks(name: str) -> list[str]:
    """The ids of a sheet's blanks, each once, without the gauge readings."""
    found = EMPTY.findall(teardown(name, "--markdown").out)
    return [b for b in dict.fromkeys(found) if b != "reading"]


def keys(name: str) -> list[str]:
    """The same of the TOML form."""
    return [k for k in tomllib.loads(teardown(name, "--blanks").out) if k != "reading"]


def fill(sheet: str, answers: Mapping[str, str], blank: str = "______") -> str:
    """The sheet with the first blank of each id filled in."""
    for id_, answer in answers.items():
        assert f"- `{id_}`: {blank}" in sheet, id_
        sheet = sheet.replace(f"- `{id_}`: {blank}", f"- `{id_}`: {answer}", 1)
    return sheet


def answers_for(ids: list[str]) -> dict[str, str]:
    """Something right to say to each blank."""
    answers = itertools.cycle(ANSWERS)
    found = {}
    for id_ in ids:
        if measure := BOOK.measures.get(id_):
            low, high = measure.plausible
            found[id_] = show(low + (high - low) / 3, DIMENSIONS[measure.dimension])
        elif id_ in BOOK.tasks:
            dimension = BOOK.tasks[id_].dimension
            found[id_] = DIMENSIONS[dimension].spellings[0] if dimension else "done"
        else:
            found[id_] = next(answers)
    return found


def record(case: Path, *words: str) -> list[dict[str, object]]:
    """What a command adds to a case, in order, without the numbers."""
    before = load(case, BOOK).last_number
    done = call("record", case, *words)
    assert (done.code, done.err) == (0, ""), done
    raw = tomllib.loads(case.read_text("utf-8"))
    entries = [
        {"kind": kind, **entry}
        for kind in ("finding", "reading", "behaviour", "trial", "earlier", "work")
        for entry in raw.get(kind, [])
        if entry["no"] > before
    ]
    assert len(entries) == load(case, BOOK).last_number - before
    entries.sort(key=lambda e: int(str(e["no"])))
    return [{k: v for k, v in entry.items() if k != "no"} for entry in entries]


def refused(case: Path, sheet: Path, *parts: str, code: int = 2, faults: int = 1) -> Done:
    """As many lines as there are faults, which say these things, and the case as it was."""
    before = case.read_bytes()
    done = call("record", case, "--sheet", sheet)
    assert (done.code, done.out) == (code, ""), done
    assert len(done.err.splitlines()) == faults, done.err
    assert all(len(line) < 400 for line in done.err.splitlines())
    assert "Traceback" not in done.err
    for part in parts:
        assert part in done.err
    assert case.read_bytes() == before
    return done


def sheet_of(case: Path, text: str, ending: str = ".md") -> Path:
    path = case.with_name(f"sheet{ending}")
    path.write_text(text, "utf-8")
    return path
