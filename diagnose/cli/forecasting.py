"""``forecast``: the pressure after a planned repair."""

from __future__ import annotations

import re
from collections.abc import Sequence
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.circuit.forecast import Target, forecast
from diagnose.circuit.settings import setting
from diagnose.cli import printing
from diagnose.errors import UsageError
from diagnose.output.as_json import as_json
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.text.forecast import forecast_text
from knowledge.book import the_book
from knowledge.engines.limits import IDLE_SPEED
from knowledge.units import PRESSURE, SPEED, UnitError, parse

_TARGET = re.compile(r"^\s*(?:(\S+\s*(?:rpm|rev/min|r/min|revs))\s+)?(.+?)\s*$", re.I)


def show_forecast(path: Path, sets: Sequence[str], target: str, json: bool) -> None:
    """Print pressures before and after the changes asked for."""
    settings = [setting(s) for s in sets]
    twice = {s.id for s in settings if sum(s.id == o.id for o in settings) > 1}
    if twice:
        raise UsageError(f"--set: {sorted(twice)[0]} is set more than once")
    book = the_book()
    case = load(path, book)
    wanted = _target(target, case) if target else None
    document = forecast_document(forecast(case, book, settings, wanted))
    if json:
        printing.data(as_json(document))
    else:
        printing.answer(forecast_text(document))


def _target(typed: str, case: Case) -> Target:
    """``"25 psi"`` at hot idle, or ``"2500 rpm 40 psi"``. Raises UsageError."""
    found = _TARGET.match(typed)
    speed, pressure = found.groups() if found else (None, typed)
    try:
        rpm = parse(speed, SPEED) if speed else case.limits.get(IDLE_SPEED, IDLE_SPEED.typical)
        wanted = parse(pressure, PRESSURE)
    except UnitError as error:
        raise UsageError(f"--target: {error}") from None
    if not (100 <= rpm <= 15_000 and 0 < wanted <= 2e6):
        raise UsageError("--target: write it like '25 psi' or '2500 rpm 40 psi'")
    return Target(rpm, wanted, "wanted")
