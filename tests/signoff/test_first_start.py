"""The first start: what is predicted, what is compared, and what reopens the diagnosis."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

import numpy as np
import pytest

from diagnose.case.loading import from_text
from diagnose.circuit.forecast import speeds_of
from diagnose.circuit.operating_points import COLD_START
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.errors import UsageError
from diagnose.signoff import start as module
from diagnose.signoff.start import FirstStart, first_start
from knowledge.book import the_book
from knowledge.pressure.gauge import USUAL_HOT

BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
N = 400


def start(entries: str = "") -> FirstStart:
    """The first start of a case, with an engine of which nothing is solved."""
    engine: Any = SimpleNamespace()
    return FirstStart(from_text(HEAD + entries, None, BOOK), BOOK, engine, (), ())


def read(psi: str = "20 psi", rpm: int = 1200, more: str = "") -> str:
    return (
        f'[[reading]]\nno = 1\nrpm = "{rpm} rpm"\npressure = "{psi}"\ngauge = "direct"\n'
        f'at = "start"\n{more}'
    )


@pytest.fixture
def asked(monkeypatch: pytest.MonkeyPatch) -> list[tuple[float, float]]:
    """Every engine shows one bar; the speeds [rpm] and temperatures [K] that were asked for."""
    seen: list[tuple[float, float]] = []

    def solve(_: object, rpm: float, temperature: float) -> Any:
        seen.append((rpm, temperature))
        return SimpleNamespace(gallery_pressure=np.full((N, 1), 1e5))

    monkeypatch.setattr(module, "solve", solve)
    return seen


def test_what_the_gauge_should_show_cold_warming_and_hot(asked: list[tuple[float, float]]) -> None:
    """At the first speeds of the forecast, idle among them, with oil at 45 °C on the way."""
    one = start()
    speeds = [float(s) for s in speeds_of(one.case)[:4]]
    wanted = [(rpm, heat) for heat in (COLD_START, 318.15, USUAL_HOT) for rpm in speeds]
    assert [(e.rpm, e.temperature) for e in one.expected] == wanted
    assert asked == wanted
    assert all(e.pressure.low == e.pressure.high == 1e5 for e in one.expected)


@pytest.mark.parametrize(("oil", "heat"), [("", USUAL_HOT), ('oil = "20 C"\n', 293.15)])
def test_a_reading_without_a_temperature_is_taken_as_hot(
    oil: str, heat: float, asked: list[tuple[float, float]]
) -> None:
    assert len(start(read(more=oil)).compared) == 1
    ((rpm, temperature),) = asked
    assert (rpm, temperature) == pytest.approx((1200.0, heat))


@pytest.mark.parametrize("error", [1000.0, 20_000.0])
def test_the_error_of_the_gauge_widens_what_was_predicted(
    error: float, asked: list[tuple[float, float]]
) -> None:
    """Nine in ten of a normal error lie within 1.645 of it."""
    (found,) = start(read(more=f'error = "{error} Pa"\n')).compared
    assert asked
    assert found.predicted.mean == pytest.approx(1e5, rel=1e-6)
    assert found.predicted.low == pytest.approx(1e5 - 1.645 * error, rel=1e-2)
    assert found.predicted.high == pytest.approx(1e5 + 1.645 * error, rel=1e-2)


def test_no_pressure_below_none_is_predicted(monkeypatch: pytest.MonkeyPatch) -> None:
    nothing = SimpleNamespace(gallery_pressure=np.zeros((N, 1)))
    monkeypatch.setattr(module, "solve", lambda *_: nothing)
    (found,) = start(read()).compared
    assert found.predicted.low == 0.0


@pytest.mark.parametrize(
    ("pascals", "below", "above"),
    [(99_000, True, False), (99_999.9, True, False), (100_000, False, False),
     (100_000.1, False, True), (110_000, False, True)],
)  # fmt: skip
def test_a_reading_at_the_end_of_what_was_predicted_is_within_it(
    pascals: float, below: bool, above: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    flat = SimpleNamespace(gallery_pressure=np.full((N, 1), 1e5))
    monkeypatch.setattr(module, "solve", lambda *_: flat)
    monkeypatch.setattr(module, "spread_of", lambda _: 0.0)
    (found,) = start(read(f"{pascals} Pa")).compared
    assert (found.below, found.above) == (below, above)


@pytest.mark.parametrize("below", [False, True])
@pytest.mark.parametrize("above", [False, True])
@pytest.mark.parametrize("stop", ["", "too low"])
def test_what_deviates_and_what_reopens(below: bool, above: bool, stop: str) -> None:
    """Too much pressure deviates, and reopens nothing: causes of too little explain no more."""
    one = start(read("2 psi", 700))
    vars(one)["compared"] = (SimpleNamespace(below=below, above=above, stop=stop),)
    assert one.deviates is bool(below or above or stop)
    again = one.reopened
    assert (again is not None) is bool(below or stop)
    if again is not None:
        assert again.case.readings == one.case.start_readings
        (built,) = again.case.finding_records
        assert built.finding.id == "freshly_rebuilt"


def work(*entries: tuple[str, str]) -> str:
    return "".join(
        f'[[work]]\nno = {i}\nwhat = "{what}"\n{said}\n'
        for i, (what, said) in enumerate(entries, 1)
    )


def test_only_what_was_measured_of_a_fitted_part_goes_into_the_engine() -> None:
    """Not what was only ticked off, nor a value of another task."""
    entries = work(
        ("main_clearance_fitted", 'state = "done"'),
        ("pickup_gap_fitted", 'value = "3/8 in"'),
        ("rod_clearance_fitted", 'value = "0.002 in"'),
        ("rod_clearance_fitted", 'value = "0.0021 in"\nwhere = "2"'),
    )
    found = first_start(from_text(HEAD + entries, None, BOOK), BOOK)
    assert found.fitted == ("rod_clearance",)


def test_a_fitted_value_is_spread_by_the_error_of_its_measuring() -> None:
    def clearances(entries: str) -> Any:
        engine = first_start(from_text(HEAD + entries, None, BOOK), BOOK).engine
        return np.asarray(engine.mains[0].clearance_diametral).reshape(-1)

    spread = CIRCUIT_PARAMETERS["main_clearance"].spread
    value = 0.004 * 0.0254
    drawn = clearances(work(("main_clearance_fitted", 'value = "0.004 in"')))
    assert np.mean(drawn) == pytest.approx(value, rel=1e-3)
    assert np.std(drawn) == pytest.approx(spread, rel=0.05)


def test_what_is_left_must_be_of_the_case() -> None:
    case = from_text(HEAD, None, BOOK)
    with pytest.raises(UsageError, match="no finding 'main_clearance' of this case"):
        first_start(case, BOOK, left=("main_clearance",))
    worn = '[[finding]]\nno = 1\nwhat = "main_clearance"\nvalue = "0.006 in"\n'
    case = from_text(HEAD + worn, None, BOOK)
    left = first_start(case, BOOK, left=("main_clearance",))
    assert left.left == ("main_clearance",)
    plain = first_start(case, BOOK)
    clearance = [float(np.mean(f.engine.mains[0].clearance_diametral)) for f in (left, plain)]
    assert clearance[0] == pytest.approx(0.006 * 0.0254, rel=0.02)
    assert clearance[1] < 0.8 * clearance[0]


def test_what_the_gauge_usually_showed_is_a_pressure_of_the_sound_engine() -> None:
    before = '[[reading]]\nno = 9\nrpm = "idle"\noil = "hot"\npressure = "8 psi"\n'
    assert start(before + 'usual = "30 psi"\n').sound_known
    assert not start(before).sound_known
