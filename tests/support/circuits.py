"""Invented cases with figures of the circuit, for the tests of budget and forecast."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.circuit.engine_model import engine_of
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from knowledge.book import the_book
from knowledge.engines.profiles import Profile

BOOK = the_book()
KNOWN_GOOD = ("700 rpm, 95 C, 32 psi", "2500 rpm, 95 C, 52 psi")
WORN = {"main_clearance": "0.0032 in", "rod_clearance": "0.0030 in"}


def text(
    measured: dict[str, str] | None = None,
    readings: tuple[str, ...] = (),
    baseline: tuple[str, ...] = KNOWN_GOOD,
    more: str = "",
    engine: str = "",
) -> str:
    """A case file: measured values by name, readings and baseline as 'rpm, oil, pressure'."""
    lines = ["schema = 1", "[engine]", 'layout = "distributor_v8"', 'oil = "10W-40"', engine]
    number = 0
    for table, rows in (("baseline", baseline), ("reading", readings)):
        for row in rows:
            number += 1
            rpm, oil, pressure = (part.strip() for part in row.split(","))
            lines += [f"[[{table}]]", f"no = {number}", f'rpm = "{rpm}"', f'oil = "{oil}"']
            lines += [f'pressure = "{pressure}"']
            if table == "reading":
                lines.append('gauge = "direct"')
    for what, value in (measured or {}).items():
        number += 1
        lines += ["[[finding]]", f"no = {number}", f'what = "{what}"', f'value = "{value}"']
    if more:
        lines += ["[[finding]]", f"no = {number + 1}", f'what = "{more}"', 'state = "present"']
    return "\n".join(lines) + "\n"


def a_case(
    measured: dict[str, str] | None = None,
    readings: tuple[str, ...] = (),
    baseline: tuple[str, ...] = KNOWN_GOOD,
    more: str = "",
    engine: str = "",
) -> Case:
    """The case itself."""
    return from_text(text(measured, readings, baseline, more, engine), None, BOOK)


def saved(folder: Path, content: str) -> Path:
    """The case in a file."""
    path = folder / "wagtail.toml"
    path.write_text(content, "utf-8")
    return path


def engine_like(profile: Profile) -> Engine:
    """The sound engine of a profile, with its oil."""
    numbers = {name: value for name, (value, _) in profile.numbers.items()}
    return engine_of(numbers, Oil.of_grade(profile.oil_grade))
