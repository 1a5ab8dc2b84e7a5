"""The further reading that budget and forecast name: how much it narrows, and what it never is."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

import numpy as np
import pytest

from diagnose.case.loading import from_text
from diagnose.circuit.band import Band
from diagnose.circuit.forecast import Forecast, Target, forecast
from diagnose.circuit.operating_points import COLD_SPEED, COLD_START, latest_readings
from diagnose.circuit.worth_reading import (
    WARM,
    Further,
    WorthReading,
    engines_as_read,
    further_for_missing,
    within_reach,
)
from diagnose.output.documents.forecast import forecast_document
from knowledge.pressure.gauge import state_of, states_agree
from knowledge.units import PSI
from tests.support.circuits import BOOK, KNOWN_GOOD, WORN, a_case, saved, text
from tests.support.command_line import call
from tests.support.examples import one_in

FAST = "2500 rpm, 95 C, 40 psi"
IDLE = Target(700.0, 10 * PSI, "wanted")


@cache
def fast_only() -> Forecast:
    """The forecast of a case of which only one fast reading is known."""
    return forecast(a_case(readings=(FAST,)), [], IDLE)


def half(each: Forecast) -> float:
    """Half of the range of nine engines in ten at hot idle [Pa]."""
    band = Band.of(each.hot_pressure(each.before, 700))
    return 0.5 * (band.high - band.low)


def test_the_reading_narrows_the_figure_by_about_as_much_as_it_says() -> None:
    """It is taken, with what most engines show there, and the range is worked out again."""
    before = fast_only()
    found = before.further.now
    assert found is not None
    assert (found.sound, found.asked) == (False, 0)
    assert found.half == pytest.approx(half(before))
    mean = float(np.mean(before.hot_pressure(before.before, 700))) / PSI
    named = f"{found.rpm:.0f} rpm, {found.temperature - 273.15:.0f} C, {mean:.0f} psi"
    after = forecast(a_case(readings=(FAST, named)), [], IDLE)
    assert found.rpm == pytest.approx(700, rel=0.15)
    assert half(after) < 0.6 * half(before)
    assert found.narrowed(half(before)) == pytest.approx(half(after), abs=2 * PSI)


@pytest.mark.parametrize(
    "readings",
    one_in(4, [(FAST, "700 rpm, 60 C, 20 psi"), (FAST,), ("700 rpm, 95 C, 12 psi",), ()]),
)
def test_no_state_is_proposed_that_was_read(readings: tuple[str, ...]) -> None:
    case = a_case(readings=readings)
    state = engines_as_read(case)
    read = [state_of(r.reading) for r in latest_readings(case)]
    for found in (
        forecast(case, [], IDLE, engines=24).further.now,
        further_for_missing(case, state).now,
    ):
        if found is not None:
            assert not any(states_agree((found.rpm, found.temperature), one) for one in read)
            assert found.temperature > COLD_START or found.rpm <= COLD_SPEED


def test_what_it_says_follows_what_is_asked() -> None:
    """A pressure that differs with one state only is narrowed by reading that state."""
    case = a_case()
    state = engines_as_read(case)
    each = forecast(case, [])
    for rpm in (700.0, 2500.0):
        asked = each.hot_pressure(each.before, rpm).reshape(-1, 1)
        found = each.reach.further(asked).now
        assert found is not None
        assert found.rpm == pytest.approx(rpm, rel=0.15)
    certain = np.full((len(each.hot_pressure(each.before, 700)), 1), 20 * PSI)
    assert within_reach(case, state).further(certain) == Further(now=None, sound=None)


def test_a_remembered_pressure_settles_what_is_missing() -> None:
    """Hot idle and cruise were read: what is left to learn is what it showed when it was sound."""
    readings = ("700 rpm, 95 C, 9 psi", FAST)

    def asked(*baseline: str) -> WorthReading | None:
        case = a_case(readings=readings, baseline=baseline)
        return further_for_missing(case, engines_as_read(case)).best(may_run=False)

    found = asked()
    assert found is not None
    assert found.sound
    assert found.temperature > WARM
    known = asked(*KNOWN_GOOD)  # nothing that is in the baseline already
    assert known is None or known.temperature <= WARM or 850 < known.rpm < 2100 or known.rpm > 3000


def test_an_engine_that_must_not_run_is_not_read() -> None:
    each = fast_only()
    barred, free = (forecast_document(each, may_run=may) for may in (False, True))
    assert barred.further is None or barred.further.sound
    assert barred.read_next.startswith("Ask what ") == (barred.further is not None)
    assert free.further is not None
    assert not free.further.sound


@pytest.mark.parametrize("command", one_in(2, ["forecast", "budget"]))
def test_commands_name_it_in_a_line_and_in_json(command: str, tmp_path: Path) -> None:
    path = saved(tmp_path, text(WORN, (FAST,), KNOWN_GOOD))
    further = json.loads(call(command, path, "--json").out)["further"]
    out = call(command, path).out.splitlines()
    assert further["half_then"] < further["half_now"]
    lines = [line for line in out if line.startswith(("Read next: ", "Ask what "))]
    assert len(lines) == 1
    assert f"{further['rpm']:.0f} rpm" in lines[0]
    assert len(out) <= 30


def test_what_it_usually_showed_is_not_asked_for_again() -> None:
    """ "8 psi, usually 20, at 900 rpm, hot" says what a sound engine shows there."""
    job = (
        'schema = 1\n[engine]\nlayout = "air_cooled_flat_four"\n[[reading]]\nno = 1\n'
        'rpm = "900 rpm"\npressure = "8 psi"\noil = "92 C"\n{usual}\n'
    )
    asked = []
    for usual in ("", 'usual = "20 psi"'):
        case = from_text(job.format(usual=usual), None, BOOK)
        reach = within_reach(case, engines_as_read(case))
        asked.append(any(abs(p.rpm - 900) < 50 and p.temperature > 353 for p in reach.sound))
    assert asked == [True, False]
