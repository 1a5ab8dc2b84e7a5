"""What a case's entries do to its oil circuit: fuel, gauges, several clearances, fitted values."""

from __future__ import annotations

import math

import numpy as np
import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.circuit.deviations import deviations, together
from diagnose.circuit.forecast import ENGINES
from diagnose.circuit.operating_points import points_of
from diagnose.hydraulics.engine import Engine
from diagnose.signoff.start import FITTED, first_start
from knowledge.book import the_book
from knowledge.units import INCH, PSI

BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'


def case_of(entries: str, engine: str = "") -> Case:
    return from_text(f"{HEAD}{engine}\n{entries}", None, BOOK)


# ------------------------------------------------------------------------ fuel in the oil

FUEL = '[[finding]]\nno = 1\nwhat = "fuel_share"\nvalue = "{} %"\n'


def thinned(engine: str, percent: float) -> tuple[float, float]:
    """Share of the viscosity left at 40 and at 100 °C, mean over the plausible engines [1]."""
    case = case_of(FUEL.format(percent), engine)
    sound = first_start(case_of("", engine), BOOK).engine
    (found,) = [
        d for d in deviations(case, ENGINES, np.random.default_rng(1)) if d.id == "fuel_share"
    ]
    worn = found.apply(sound)
    return (
        float(np.mean(worn.oil.kv40 / sound.oil.kv40)),
        float(np.mean(worn.oil.kv100 / sound.oil.kv100)),
    )


def left_by_hand(kv: float, fuel: float, share: float) -> float:
    """Share of the viscosity left, by the ASTM blending line: loglog(v + 0.7) is linear in share."""
    w = [math.log10(math.log10(v + 0.7)) for v in (kv, fuel)]
    return (10**10 ** ((1 - share) * w[0] + share * w[1]) - 0.7) / kv


@pytest.mark.parametrize(
    ("engine", "fuel"),
    [
        ('has = ["diesel"]', 3.0),  # EN 590: 2.0 to 4.5 mm2/s at 40 °C
        ('lacks = ["diesel"]', 0.55),  # petrol, well below 1 mm2/s
        ("", 0.55),  # a distributor is a petrol engine's
    ],
)
def test_a_diesel_is_thinned_by_diesel_and_a_petrol_engine_by_petrol(
    engine: str, fuel: float
) -> None:
    at_40, _ = thinned(engine, 5.0)
    kv = float(np.mean(first_start(case_of("", engine), BOOK).engine.oil.kv40)) * 1e6
    assert at_40 == pytest.approx(left_by_hand(kv, fuel, 0.05), abs=0.03)


def test_petrol_thins_the_oil_more_than_diesel_fuel_does() -> None:
    diesel, petrol = thinned('has = ["diesel"]', 5.0), thinned('lacks = ["diesel"]', 5.0)
    assert petrol[0] < diesel[0] - 0.05
    assert petrol[1] < diesel[1] - 0.05
    assert diesel[1] < 0.95


# ------------------------------------------------------------------------ which gauge is taken

READ = '[[reading]]\nno = {}\nrpm = "{} rpm"\noil = "{} C"\npressure = "{} psi"\ngauge = "{}"\n'

#: readings in order: rpm, °C, psi, gauge; psi of hot idle, psi of cruise
GAUGES: list[tuple[list[tuple[int, int, int, str]], int | None, int | None]] = [
    ([(700, 90, 9, "direct"), (700, 90, 4, "panel")], 9, None),
    ([(700, 90, 4, "panel"), (700, 90, 9, "direct")], 9, None),
    ([(700, 90, 4, "panel"), (700, 90, 5, "panel")], 5, None),
    ([(700, 90, 9, "direct"), (700, 90, 8, "direct"), (700, 90, 4, "panel")], 8, None),
    ([(2500, 90, 40, "direct"), (3000, 90, 20, "panel")], None, 40),
    ([(2500, 90, 20, "panel"), (700, 90, 9, "direct")], 9, 20),
    (
        [(700, 20, 50, "direct"), (700, 90, 9, "panel")],
        9,
        None,
    ),  # cold oil shows nothing of a hot idle
    ([(1200, 90, 30, "direct")], None, 30),  # read between idle and cruise alone: judged there
    ([(700, 90, 9, "direct"), (1200, 90, 30, "direct")], 9, None),  # neither idle nor cruise
]


@pytest.mark.parametrize(("readings", "idle", "cruise"), GAUGES)
def test_the_trusted_gauge_goes_before_the_panel_gauge(
    readings: list[tuple[int, int, int, str]], idle: int | None, cruise: int | None
) -> None:
    case = case_of("".join(READ.format(i, *r) for i, r in enumerate(readings, 1)))
    found = [p.read.reading.pressure / PSI if p.read else None for p in points_of(case)]
    assert found == pytest.approx([idle, cruise])


# ------------------------------------------------------------------------ several clearances

VALUE = '[[finding]]\nno = {}\nwhat = "{}"\nvalue = "{} in"\nwhere = "{}"\n'


def one_value(what: str, *values: tuple[float, str], leaks: bool = True) -> float:
    """What several values of one clearance come to, in inches."""
    text = "".join(VALUE.format(i, what, v, place) for i, (v, place) in enumerate(values, 1))
    return together(list(case_of(text).measurements), leaks) / INCH


def test_several_clearances_leak_as_much_as_the_one_they_come_to() -> None:
    """Flow through a slot goes by the cube of its height (Reynolds): 2 and 4 thou leak like 3.30."""
    found = one_value("main_clearance", (0.002, "1"), (0.004, "2"))
    assert found == pytest.approx(((0.002**3 + 0.004**3) / 2) ** (1 / 3), rel=1e-6)
    assert found == pytest.approx(0.003302, abs=2e-6)
    assert one_value("main_clearance", *[(0.003, str(i)) for i in range(5)]) == pytest.approx(0.003)


def test_a_place_measured_again_counts_once_with_its_last_value() -> None:
    found = one_value("main_clearance", (0.006, "1"), (0.002, "2"), (0.002, " 1 "))
    assert found == pytest.approx(0.002)
    both = one_value("main_clearance", (0.002, ""), (0.004, ""))
    assert both == pytest.approx(0.003302, abs=2e-6), "two nameless places are two places"


def test_of_what_does_not_leak_the_last_value_counts() -> None:
    assert one_value("pickup_gap", (0.3, "1"), (0.2, "2"), leaks=False) == pytest.approx(0.2)


def test_the_mean_reaches_the_circuit() -> None:
    text = "".join(VALUE.format(i, "main_clearance", v, i) for i, v in ((1, 0.002), (2, 0.006)))
    case = case_of(text)
    sound = first_start(case_of(""), BOOK).engine
    (found,) = deviations(case, ENGINES, np.random.default_rng(1))
    clearance = np.mean(found.apply(sound).mains[0].clearance_diametral) / INCH
    assert clearance == pytest.approx(((0.002**3 + 0.006**3) / 2) ** (1 / 3), abs=5e-5)
    assert "of 2" in found.found


# ------------------------------------------------------------------------ values really fitted


def clearances(engine: Engine) -> dict[str, float]:
    """Each clearance of the circuit, mean over the plausible engines [in]."""
    values = {
        "main_clearance": engine.mains[0].clearance_diametral,
        "rod_clearance": engine.rods[0].clearance_diametral,
        "cam_bearing_clearance": engine.cams[0].clearance_diametral,
        "pump_end_clearance": engine.pump_end_clearance,
        "pump_side_clearance": engine.pump_tip_clearance,
    }
    return {name: float(np.mean(v)) / INCH for name, v in values.items()}


def place_of(task: str) -> str:
    """The dimension of the circuit that a task measures."""
    quantity = BOOK.tasks[task].measures
    assert quantity is not None
    return quantity.id


@pytest.mark.parametrize("task", sorted(FITTED))
def test_a_fitted_clearance_changes_its_own_place_and_no_other(task: str) -> None:
    work = f'[[work]]\nno = 1\nwhat = "{task}"\nvalue = "0.0055 in"\n'
    before = clearances(first_start(case_of(""), BOOK).engine)
    start = first_start(case_of(work), BOOK)
    after = clearances(start.engine)
    changed = {name for name in before if after[name] != pytest.approx(before[name])}
    assert changed == {place_of(task)}
    assert after[place_of(task)] == pytest.approx(0.0055, abs=1e-4)
    assert len(start.fitted) == 1


def test_the_fitted_places_are_those_of_the_tasks() -> None:
    places = {
        "main_clearance_fitted": "main_clearance",
        "rod_clearance_fitted": "rod_clearance",
        "cam_clearance_fitted": "cam_bearing_clearance",
        "gear_end_clearance_fitted": "pump_end_clearance",
        "gear_side_clearance_fitted": "pump_side_clearance",
    }
    assert places == {task: place_of(task) for task in FITTED}


# ------------------------------------------------------------------------ the limits of a first start

OWN = '[engine.limits]\nstop_idle_pressure = "12 psi"\nstop_running_pressure = "30 psi"\n'
SLOW = '[engine.limits]\nidle_speed = "500 rpm"\n'
#: engine, rpm, psi, whether the engine must be stopped
STOPS = [
    ("", 700, 6.9, True),
    ("", 700, 7.0, False),
    ("", 910, 6.9, True),  # up to 1.3 times the idle speed
    ("", 911, 6.9, False),
    ("", 1999, 6.9, False),
    ("", 2000, 19.9, True),
    ("", 2000, 20.0, False),
    ("", 3500, 19.9, True),
    (OWN, 700, 11.9, True),
    (OWN, 700, 12.0, False),
    (OWN, 2000, 29.9, True),
    (OWN, 2000, 30.0, False),
    (SLOW, 650, 6.9, True),
    (SLOW, 651, 6.9, False),
]


@pytest.mark.parametrize(("engine", "rpm", "psi", "stops"), STOPS)
def test_a_first_start_is_stopped_below_its_limit(
    engine: str, rpm: int, psi: float, stops: bool
) -> None:
    """The engine's own figures go before the usual 7 psi at idle and 20 psi from 2000 rpm."""
    text = READ.format(1, rpm, 90, psi, "direct") + 'at = "start"\n'
    (found,) = first_start(case_of(text, engine), BOOK).compared
    assert bool(found.stop) is stops
    if stops:
        limit = "stop_running_pressure" if rpm >= 2000 else "stop_idle_pressure"
        assert found.stop == BOOK.limits[limit].says
