"""Pump, relief spring and oil chosen with figures: against worked examples, scipy, and directions."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.constants import inch, lbf, psi
from scipy.optimize import brentq

from diagnose.case.loading import load
from diagnose.circuit.forecast import Target as Wish
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.circuit.pump_supply import FILLS, MARGIN, cavitates_from, least_pump, supply
from diagnose.circuit.relief_spring import (
    ReliefSpring,
    SpringTest,
    parse_spring_test,
    parse_spring_tests,
)
from diagnose.circuit.settings import setting
from diagnose.circuit.sizing import Sizing, Wanted, sizing
from diagnose.errors import UsageError
from diagnose.hydraulics import spring
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine, set_b
from diagnose.output.documents.sizing import sizing_document
from diagnose.output.text.sizing import sizing_text
from knowledge.book import the_book
from knowledge.engines.profiles import DISTRIBUTOR_V8
from tests.support.circuits import a_case
from tests.support.command_line import ROOT, call
from tests.support.published import check

BOOK = the_book()
HOT = 373.15
FEW = 8  #: plausible engines: enough for directions
TERN = ROOT / "cases" / "tern.toml"


@cache
def of_v8(**wanted: Any) -> Sizing:
    """A sound V8, compared in some way."""
    return sizing(a_case(baseline=()), wanted=Wanted(**wanted), engines=FEW)


def one(clearance: float = 0.0025 * inch) -> Engine:
    """The sample V8 as a single row."""
    engine = set_b(clearance)
    return CIRCUIT_PARAMETERS["pump_displacement"].apply(engine, np.array([[20.8e-6]]))


# ----------------------------------------------------------------------------- the spring


@pytest.mark.parametrize(("id_", "key"), [("esposito-8-1-crack", 0.0), ("esposito-8-1-full", 0.1)])
def test_opening_pressure_of_the_worked_example(id_: str, key: float) -> None:
    """Esposito, Example 8-1: 2500 lbf/in pressed in 0.2 in on 0.75 in2 opens at 667 psi."""
    entry = check(id_)
    plunger = float(np.sqrt(4 * 0.75 / np.pi)) * inch
    force = spring.force_at(1.0 * inch, (1.2 + key) * inch, 2500 * lbf / inch)
    found = float(spring.opening_pressure(force, plunger))
    assert found == pytest.approx(float(entry.expected), rel=1e-3)


def test_the_armys_spring() -> None:
    """TM 10-3930-638: free 2.125 in, 18 to 19 lbf at 1.44 in, 27 lbf/in."""
    force = spring.force_at(1.44 * inch, 2.125 * inch, 27 * lbf / inch)
    assert 18.0 <= float(force) / lbf <= 19.0


FORCES = st.floats(5.0, 500.0)
PLUNGERS = st.floats(6e-3, 30e-3)
RATES = st.floats(500.0, 50e3)


@given(FORCES, PLUNGERS, RATES, st.floats(0.03, 0.2))
def test_force_pressure_and_length_agree(
    force: float, plunger: float, rate: float, free: float
) -> None:
    """What opens at a pressure has that force at its fitted length; scipy finds the same length."""
    pressure = float(spring.opening_pressure(force, plunger))
    assert float(spring.force_to_open(pressure, plunger)) == pytest.approx(force)
    fitted = float(spring.fitted_length(pressure, plunger, free, rate))
    if 0.0 < fitted < free:
        assert float(spring.force_at(fitted, free, rate)) == pytest.approx(force, rel=1e-6)
        root = brentq(lambda x: rate * (free - x) - force, 0.0, free)
        assert fitted == pytest.approx(root, abs=1e-9)


@given(PLUNGERS, RATES, st.floats(1e-4, 5e-3), st.floats(1e-4, 5e-3))
def test_shims_add_up(plunger: float, rate: float, first: float, second: float) -> None:
    valve = ReliefSpring(
        setting=4e5, least=3.8e5, most=4.2e5, plunger=plunger, rate=rate, assumed=()
    )
    assert valve.gain(first) + valve.gain(second) == pytest.approx(valve.gain(first + second))
    assert valve.shim_to(valve.setting + valve.gain(first)) == pytest.approx(first)


VALVE = ReliefSpring(
    setting=60 * psi, least=58 * psi, most=62 * psi, plunger=0.5 * inch,
    rate=12 * lbf / (0.65 * inch), assumed=(), free_length=2.40 * inch,
    printed=SpringTest(12 * lbf, 1.75 * inch),
)  # fmt: skip


@pytest.mark.parametrize(
    ("force", "length", "opens", "passes"),
    [
        (12.0, 1.75, 60.0, True),  # 12 lbf at 1.75 in is 11.78 at the fitted length
        (11.2, 1.75, 56.0, False),
        (12.6, 1.75, 63.1, False),
        (11.8, 1.7618, 60.1, True),  # taken at the fitted length itself
    ],
)
def test_a_spring_on_the_bench_passes_or_fails(
    force: float, length: float, opens: float, passes: bool
) -> None:
    found = replace(VALVE, tests=(SpringTest(force * lbf, length * inch),)).opens_found
    assert found is not None
    assert found / psi == pytest.approx(opens, abs=0.15)
    assert VALVE.passes(found) is passes


def test_two_loads_give_the_rate_of_a_spring() -> None:
    """16 lbf at 1.5 in and 8 lbf at 2.0 in: 16 lbf/in, 11.81 lbf at the fitted 1.762 in."""
    tests = parse_spring_tests(("8 lbf at 2.0 in", "16 lbf at 1.5 in"))
    found = replace(VALVE, tests=tests)
    assert found.measured_rate == pytest.approx(16 * lbf / inch)
    assert found.force_found == pytest.approx((16 - 16 * (1.7618 - 1.5)) * lbf, rel=1e-3)
    assert found.opens_found is not None
    mended = found.opens_found + float(
        spring.opening_pressure(16 * lbf / inch * (found.shim_found or 0.0), found.plunger)
    )
    assert mended == pytest.approx(VALVE.setting)
    with pytest.raises(UsageError, match="the shorter length has the greater load"):
        parse_spring_tests(("8 lbf at 1.5 in", "16 lbf at 2.0 in"))


def test_a_printed_load_opens_its_plunger() -> None:
    """12 lbf on half an inch: 12/0.19635 psi."""
    assert VALVE.printed_opens_at == pytest.approx(12 / 0.19635 * psi, rel=1e-4)
    assert VALVE.fitted_length == pytest.approx(
        (2.40 - 60 * 0.19635 / (12 / 0.65)) * inch, rel=1e-4
    )


@pytest.mark.parametrize("text", ["12 lbf", "12 lbf at", "twelve at 1 in", "12 at 1 in", ""])
def test_what_is_no_spring_test_is_refused(text: str) -> None:
    with pytest.raises(UsageError, match=r"^--spring: .*write it like"):
        parse_spring_test(text)


# ------------------------------------------------------------------------------ the pump


def test_at_the_pressure_it_makes_a_pump_delivers_what_is_taken() -> None:
    """At the solved pressure, below the relief, delivery and demand are one."""
    engine = one()
    pressure = float(np.ravel(solve(engine, 600.0, HOT).gallery_pressure)[0])
    found = supply(engine, Wish(600.0, pressure, ""), HOT)
    assert found.spare.mean == pytest.approx(0.0, abs=1e-6)
    lower = supply(engine, Wish(600.0, 0.7 * pressure, ""), HOT)
    assert lower.enough is True
    assert supply(engine, Wish(600.0, 1.3 * pressure, ""), HOT).enough is False
    assert sum(lower.by_branch.values()) == pytest.approx(1.0)


def test_the_least_pump_is_the_one_that_just_makes_the_pressure() -> None:
    """As ``scipy.optimize.brentq`` finds it on the whole circuit."""
    engine = one()
    resize = CIRCUIT_PARAMETERS["pump_displacement"].apply
    wanted = 20 * psi

    def over(volume: float) -> float:
        state = solve(resize(engine, np.array([[volume]])), 700.0, HOT)
        return float(np.ravel(state.gallery_pressure)[0] - wanted)

    found = float(np.ravel(least_pump(engine, Wish(700.0, wanted, ""), HOT, margin=0.0))[0])
    assert found == pytest.approx(brentq(over, 5e-6, 60e-6, xtol=1e-12), rel=1e-4)
    more = float(np.ravel(least_pump(engine, Wish(700.0, wanted, ""), HOT))[0])
    assert more > found


def test_the_speed_from_which_a_pump_cavitates() -> None:
    """As ``brentq`` finds it on the share the pump fills."""
    engine = one()

    def filled(rpm: float) -> float:
        return float(np.ravel(solve(engine, rpm, HOT).fill_share)[0]) - FILLS

    found = cavitates_from(engine, HOT)
    assert found is not None
    assert found.mean == pytest.approx(brentq(filled, 1000.0, 10_000.0), rel=0.002)


def test_power_and_torque_are_those_of_the_worked_formula() -> None:
    """Power is torque times speed, and torque V dp over 2 pi (Esposito, Example 5-8)."""
    found = of_v8()
    (choice,) = [c for c in found.choices if c.id == "as_it_is"]
    engine = found.forecast.after.engine
    state = solve(engine, found.speed, found.hot)
    torque = np.asarray(engine.pump_displacement) * np.asarray(state.pump_pressure) / (2 * np.pi)
    turns = 2 * np.pi * found.speed / 60 * 0.5
    assert choice.power.mean == pytest.approx(float(np.mean(torque * turns)) / 0.85, rel=0.01)
    assert choice.relief_heat.mean < choice.power.mean


def test_what_a_relief_setting_buys_and_costs() -> None:
    """Nothing at idle where the valve is shut; pressure, power, load and cavitation at speed."""
    found = {c.id: c for c in of_v8(relief=75 * psi).choices}
    base, high = found["as_it_is"], found["relief"]
    assert high.relief_setting == pytest.approx(75 * psi)
    assert high.idle.mean == pytest.approx(base.idle.mean, rel=0.01)
    assert high.speed.mean > base.speed.mean + 10 * psi
    assert high.power.mean > base.power.mean
    assert high.torque.mean > base.torque.mean
    assert base.fills_to is not None
    assert high.fills_to is not None
    assert high.fills_to.mean < base.fills_to.mean


def test_what_a_larger_pump_buys_and_costs() -> None:
    found = {c.id: c for c in of_v8().choices}
    base, large = found["as_it_is"], found["pump"]
    assert large.larger == pytest.approx(1.25)
    assert large.idle.mean > base.idle.mean + 2 * psi
    assert large.speed.mean < base.speed.mean + 5 * psi, "the relief takes the rest"
    assert large.relief_heat.mean > base.relief_heat.mean
    assert large.power.mean > 1.2 * base.power.mean
    assert base.fills_to is not None
    assert large.fills_to is not None
    assert large.fills_to.mean < base.fills_to.mean


def test_wider_clearances_need_a_larger_pump() -> None:
    """Half a thou more on mains and rods, and the same pump has less to spare."""
    wish = Wish(700.0, 15 * psi, "")
    spare = [supply(one(c * inch), wish, HOT).spare.mean for c in (0.002, 0.0025, 0.003, 0.004)]
    assert spare == sorted(spare, reverse=True)


# ------------------------------------------------------------------------------- the oil


def test_thicker_oil_gives_more_at_hot_idle() -> None:
    found = of_v8()
    idle = {o.grade: o.idle.mean for o in found.oils}
    assert idle["5W-30"] < idle["10W-40"] < idle["20W-50"]
    assert [o.grade for o in found.oils if o.in_it] == ["10W-40"]
    assert all(o.cold.mean >= 0.9 * o.speed.mean for o in found.oils if o.pump_fills_cold)


def test_the_right_grade_stands_beside_the_wrong_one_in_it() -> None:
    """And the sentence under it says who calls it wrong."""
    case = a_case(readings=("700 rpm, 95 C, 20 psi",), baseline=(), more="oil_grade_too_thin")
    thin = replace(case, engine=case.engine.model_copy(update={"oil": "0W-20"}))
    out = sizing_text(sizing_document(sizing(thin, engines=12)))
    assert "0W-20 (in it)" in out
    assert "10W-40 (right)" in out
    assert "0W-20 in it: reported wrong; 10W-40 is usual for its kind." in " ".join(out.split())


def test_enough_is_not_beside_a_least_pump_that_is_larger() -> None:
    """What nearly all engines of its kind need may be more than what this one needs."""
    case = a_case(readings=("700 rpm, 95 C, 20 psi",), baseline=())
    says = sizing_document(sizing(case, target=Wish(700.0, 12 * psi, ""), engines=12)).pump.says
    if "Least pump" in says:
        least, own = (float(x) for x in re.findall(r"([\d.]+)(?: cm3|\.$)", says)[-2:])
        assert own >= least or not says.startswith("enough")
    else:
        assert "the worst engines of its kind" in says


def test_a_typical_spring_is_that_of_the_book_whatever_was_read() -> None:
    """4 N/mm: no chance of a draw moves how far it is pressed in."""
    for readings in ((), ("700 rpm, 95 C, 20 psi",)):
        valve = sizing(a_case(readings=readings), engines=FEW).spring
        assert valve.rate == pytest.approx(DISTRIBUTOR_V8.numbers["relief_rate"][0])
        assert valve.preload == pytest.approx(valve.force / valve.rate)


def test_the_oil_in_it_gives_what_the_engine_shows_as_it_is() -> None:
    """One state, one figure: the oil's row and the engine's row."""
    found = sizing(load(TERN, BOOK), engines=FEW)
    [own] = [o for o in found.oils if o.in_it]
    [engine] = [c for c in found.choices if c.id == "put_right"]
    assert (own.idle, own.speed) == (engine.idle, engine.speed)


@pytest.mark.parametrize("wanted", [8.0, 12.0, 16.0, 20.0])
def test_the_least_pump_is_beyond_this_one_where_its_flow_to_spare_is_too_little(
    wanted: float,
) -> None:
    """Both are said of the same engines: the worst in twenty."""
    case = a_case(readings=("700 rpm, 95 C, 20 psi",), baseline=())
    each = sizing(case, target=Wish(700.0, wanted * psi, ""), engines=24).supply
    short = each.spare.low < MARGIN
    assert (each.least_pump.high > each.this_pump) is short


def test_the_grade_follows_clearance_and_heat() -> None:
    """Wider or hotter never wants thinner oil."""
    order = [*(o.grade for o in of_v8().oils), None]
    needs = {(n.wider, n.temperature): order.index(n.grade) for n in of_v8().needs}
    for (wider, heat), rank in needs.items():
        for (wider2, heat2), rank2 in needs.items():
            if wider2 >= wider and heat2 >= heat:
                assert rank2 >= rank


# -------------------------------------------------------------------- as a person asks


def test_the_card_gives_spring_plunger_and_tolerance() -> None:
    asked = Wanted(relief=70 * psi, springs=(SpringTest(11.2 * lbf, 1.75 * inch),))
    found = sizing(load(TERN, BOOK), engines=FEW, wanted=asked)
    valve = found.spring
    assert (valve.least, valve.most) == pytest.approx((58 * psi, 62 * psi))
    assert valve.plunger == pytest.approx(0.5 * inch)
    assert valve.rate == pytest.approx(12 * lbf / (0.65 * inch))
    assert valve.assumed == ()
    bad = sizing_document(found)
    lines = {b.id: b for b in bad.spring.bench}
    assert lines["opens_at"].verdict == "failed"
    assert lines["opens_at"].accepts == "58 to 62 psi"
    assert bad.spring.shim_to_wanted == pytest.approx(0.1063 * inch, rel=0.01)
    for full in (False, True):
        text = sizing_text(bad, full=full).splitlines()
        assert all(len(line) <= 80 for line in text)
        assert full or len(text) <= 34
    assert "failed" in sizing_text(bad)


def test_a_leak_is_no_reason_for_a_larger_pump() -> None:
    """A low gauge that nothing explains: the row as it leaks stands beside the leak put right."""
    case = a_case(baseline=(), readings=("700 rpm, 95 C, 7 psi",))
    found = sizing(case, engines=FEW)
    rows = {c.id: c for c in found.choices}
    assert rows["now"].idle.mean < 10 * psi
    assert rows["put_right"].idle.mean > rows["now"].idle.mean + 5 * psi
    assert found.now is not None
    assert found.now.spare.mean < found.supply.spare.mean


def test_the_command(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text('schema = 1\n[engine]\nlayout = "skew_gear_four"\n', "utf-8")
    done = call("sizing", path, "--json", "--target", "12 psi", "--oil", "20W-50")
    assert (done.code, done.err) == (0, "")
    data = json.loads(done.out)
    assert data["target_pressure"] == pytest.approx(12 * psi)
    assert {o["grade"] for o in data["oils"]} == {"20W-50"}
    assert data["pump"]["enough"] in (True, False, None)
    assert {c["id"] for c in data["choices"]} == {"as_it_is", "relief", "pump"}


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("--relief", "+5 psi"), "--relief: write the setting itself, like '70 psi'"),
        (("--relief", "70"), "--relief: '70' is no pressure here"),
        (("--pump", "bigger"), "--pump: 'bigger' is no volume here"),
        (("--oil", "10W-45"), "--oil: '10W-45' is no SAE J300 grade"),
        (("--hot", "300 C"), "--hot: oil from -30 to 160"),
        (("--spring", "12"), "--spring: '12'; write it like"),
        (("--plunger", "12"), "--plunger: '12' is no length"),
        (("--plunger", "12 in"), "--plunger: a diameter from 3 to 60 mm"),
        (("--target", "much"), "--target: 'much' is no pressure"),
        (("--set", "plunger=3"), "--set: no such thing to change"),
    ],
)
def test_bad_words_are_one_line(words: tuple[str, ...], says: str) -> None:
    done = call("sizing", TERN, *words)
    assert done.code == 2
    assert done.err.startswith(says), done.err
    assert done.err.count("\n") == 1


def test_a_planned_change_counts() -> None:
    planned = [setting("main_clearance=0.0015 in")]
    tight = sizing(a_case(baseline=()), planned, engines=FEW)
    assert tight.supply.spare.mean > of_v8().supply.spare.mean


def test_where_a_pump_would_do_it_is_called_a_symptom_and_not_impossible() -> None:
    """As ``forecast`` has it, which lists such a pump among the repairs that are enough."""
    leaking = sizing_document(sizing(a_case(readings=("700 rpm, 95 C, 6 psi",)), engines=24))
    assert "treats a symptom" in leaking.leak_first
    assert "no pump makes up" not in leaking.leak_first
