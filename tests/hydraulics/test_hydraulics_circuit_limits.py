"""What must hold for every engine, speed and temperature, and what each fault looks like."""

from __future__ import annotations

from dataclasses import fields, replace
from typing import Any, TypeVar, cast

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from diagnose.hydraulics.circuit import State, solve
from diagnose.hydraulics.engine import SET_A, SET_B, Engine, reclearanced, set_b
from diagnose.hydraulics.oil import Oil
from knowledge.units import INCH, PSI
from tests.support.examples import examples

HOT = 373.15
T = TypeVar("T")
SLACK = 1 + 1e-6  #: rounding of the solver


def spread(low: float, high: float) -> st.SearchStrategy[float]:
    """Evenly over the decades."""
    return st.floats(np.log(low), np.log(high)).map(lambda x: float(np.exp(x)))


clearance = spread(0.0005 * INCH, 0.012 * INCH)
rpm = spread(100, 9000)
kelvin = st.floats(250.0, 430.0)
maybe = st.one_of(st.just(0.0), st.just(0.0), st.floats(0.0, 1.0))


@st.composite
def engines(draw: st.DrawFn) -> Engine:
    """Any wear and any faults at once."""
    engine = reclearanced(
        draw(st.sampled_from([SET_A, SET_B])),
        mains=draw(clearance),
        rods=draw(clearance),
        cams=draw(clearance),
        lifters=draw(clearance),
    )
    least = draw(st.sampled_from([None, 0.0, 0.02]))
    return replace(
        engine,
        rods=tuple(replace(g, least_radius=least) for g in engine.rods),
        pump_tip_clearance=draw(clearance),
        pump_end_clearance=draw(clearance),
        pump_displacement=draw(spread(5e-6, 60e-6)),
        relief_stuck_lift=6e-3 * draw(maybe),
        relief_seat_leak=1e-5 * draw(maybe),
        relief_travel=draw(st.sampled_from([9e-3, 9e-3, 0.0])),
        relief_return_share=draw(st.sampled_from([0.0, 1.0])),
        pickup_gap=draw(spread(0.2e-3, 30e-3)),
        screen_open_share=draw(spread(0.01, 1.0)),
        suction_leak_area=1e-5 * draw(maybe),
        air_fraction=0.4 * draw(maybe),
        filter_blocked=draw(spread(0.1, 100.0)),
        other_conductance=1e-12 * draw(maybe),
        open_orifice_area=1e-4 * draw(maybe),
    )


def everything(state: State) -> dict[str, np.ndarray]:
    out = {f.name: getattr(state, f.name) for f in fields(state) if f.name != "flows"}
    out |= {f.name: getattr(state.flows, f.name) for f in fields(state.flows)}
    return {name: np.asarray(value) for name, value in out.items()}


@settings(max_examples=examples(200), deadline=None)
@given(engines(), rpm, kelvin)
def test_always_an_answer_never_below_zero(engine: Engine, n: float, t: float) -> None:
    """Finite everywhere, no negative pressure or flow, and what goes in comes out."""
    state = solve(engine, n, t)
    for name, value in everything(state).items():
        assert np.all(np.isfinite(value)), name
        assert np.all(value >= 0) or name == "imbalance", name
    assert abs(float(state.imbalance)) < 1e-4 * float(
        state.flows.theoretical
    )  # 250 K: filling has no slope
    assert state.pump_pressure >= state.gallery_pressure
    assert state.flows.engine + state.flows.relief <= state.flows.theoretical * SLACK
    assert not state.starved or state.gallery_pressure == 0


def test_always_an_answer_for_many_at_once() -> None:
    """The same over ten thousand engines in one call, and to the same figures as one by one."""
    rng, n = np.random.default_rng(7), 10_000

    def any_of(low: float, high: float) -> np.ndarray:
        return np.exp(rng.uniform(np.log(low), np.log(high), n))

    mains, rods, gap = (any_of(*r) for r in ((1e-5, 3e-4), (1e-5, 3e-4), (2e-4, 3e-2)))
    stuck = rng.choice([0.0, 1e-3, 5e-3], n)
    engine = replace(
        reclearanced(SET_B, mains=mains, rods=rods), pickup_gap=gap, relief_stuck_lift=stuck
    )
    speed, t = any_of(100, 9000), rng.uniform(250, 430, n)
    many = everything(solve(engine, speed, t))
    assert all(np.all(np.isfinite(x)) for x in many.values())
    for i in range(0, n, 500):
        one = reclearanced(SET_B, mains=float(mains[i]), rods=float(rods[i]))
        one = replace(one, pickup_gap=float(gap[i]), relief_stuck_lift=float(stuck[i]))
        alone = solve(one, float(speed[i]), float(t[i]))
        got = many["gallery_pressure"][i]
        assert got == pytest.approx(alone.gallery_pressure, rel=1e-8, abs=1e-6)


def test_engines_speeds_and_temperatures_broadcast() -> None:
    """Shapes (5, 1, 1), (4, 1) and (2,) make (5, 4, 2); numbers make a number."""
    engine = set_b(np.linspace(0.001, 0.005, 5)[:, None, None] * INCH)
    state = solve(engine, np.array([700, 1500, 3000, 6000])[:, None], np.array([333.15, HOT]))
    assert {np.shape(x) for x in everything(state).values()} == {(5, 4, 2)}
    assert np.shape(solve(SET_B, 700, HOT).gallery_pressure) == ()


def with_field(thing: T, name: str, value: object) -> T:
    """Return the dataclass with one field changed, whatever its type."""
    return cast(T, replace(cast(Any, thing), **{name: value}))


def test_every_field_may_be_an_array() -> None:
    """Of the engine and of each group of bearings; the figures stay what they were."""
    speeds, three = np.array([700.0, 3000.0]), np.ones((3, 1))
    wanted = np.broadcast_to(solve(SET_B, speeds, HOT).gallery_pressure, (3, 2))
    varied = [
        (f.name, with_field(SET_B, f.name, np.full((3, 1), getattr(SET_B, f.name))))
        for f in fields(SET_B)
        if isinstance(getattr(SET_B, f.name), float)
    ]
    for kind in ("mains", "rods", "cams", "lifters", "jets"):
        (group,) = getattr(SET_B, kind)
        numbers = {f.name: getattr(group, f.name) for f in fields(group)}
        varied += [
            (f"{kind} {name}", with_field(SET_B, kind, (with_field(group, name, x * three),)))
            for name, x in numbers.items()
            if x is not None
        ]
    for name, engine in varied:
        assert solve(engine, speeds, HOT).gallery_pressure == pytest.approx(wanted), name


def test_kinds_may_be_missing_or_differ_among_themselves() -> None:
    """No lifters or jets at all; one main bearing of five far worse than the rest."""
    bare = replace(SET_B, cams=(), lifters=(), jets=())
    assert solve(bare, 700, HOT).gallery_pressure > solve(SET_B, 700, HOT).gallery_pressure
    (mains,) = SET_B.mains
    sound = replace(mains, count=4)
    bad = replace(mains, count=1, clearance_diametral=0.006 * INCH)
    split = replace(SET_B, mains=(sound, replace(mains, count=1)))
    assert curve(split) == pytest.approx(curve(SET_B))
    assert curve(replace(SET_B, mains=(sound, bad)))[0] < 0.6 * curve(SET_B)[0]


WEARS = ["mains", "rods", "cams", "lifters", "tip", "end"]


def widened(engine: Engine, what: str, factor: float) -> Engine:
    if what in ("tip", "end"):
        name = f"pump_{what}_clearance"
        return replace(engine, **{name: getattr(engine, name) * factor})
    now = getattr(engine, what)[0].clearance_diametral
    return reclearanced(engine, **{what: now * factor})


@settings(max_examples=examples(200), deadline=None)
@given(engines(), rpm, kelvin, st.sampled_from(WEARS), st.floats(1.0, 3.0))
def test_wider_clearance_never_raises_pressure(
    engine: Engine, n: float, t: float, what: str, factor: float
) -> None:
    """Nor above the relief setting, for the valve only shares out what is left."""
    tight, wide = (solve(e, n, t) for e in (engine, widened(engine, what, factor)))
    assert wide.gallery_pressure <= tight.gallery_pressure * SLACK + 1e-3


@settings(max_examples=examples(200), deadline=None)
@given(engines(), rpm, kelvin, st.floats(1.0, 3.0))
def test_larger_displacement_never_lowers_pressure(
    engine: Engine, n: float, t: float, factor: float
) -> None:
    """At the same gear diameter, so that it fills as well."""
    larger = replace(engine, pump_displacement=engine.pump_displacement * factor)
    small, large = (solve(e, n, t).gallery_pressure for e in (engine, larger))
    assert large >= small / SLACK - 1e-3


@settings(max_examples=examples(200), deadline=None)
@given(engines(), spread(400, 1200), st.floats(340.0, 410.0), st.floats(1.0, 3.0))
@example(SET_B, 700.0, HOT, 2.0)
def test_thicker_oil_never_lowers_hot_idle(
    engine: Engine, n: float, t: float, factor: float
) -> None:
    """Without air and unless suction limits it or the relief valve lets go.

    With either, a filter's larger drop can cost a little: it opens the valve, or squeezes the air.
    """
    engine = replace(engine, suction_leak_area=0.0, air_fraction=0.0)
    oil = engine.oil
    thick = replace(engine, oil=Oil(oil.kv40 * factor, oil.kv100 * factor, oil.rho15))
    before, after = solve(engine, n, t), solve(thick, n, t)
    if not after.cavitating and after.flows.relief == 0:
        assert after.gallery_pressure >= before.gallery_pressure / SLACK - 1e-3


def curve(engine: Engine, temperature: float = HOT) -> np.ndarray:
    """Gallery psi at 700, 3000 and 6000 rpm."""
    found = solve(engine, np.array([700.0, 3000.0, 6000.0]), temperature)
    return np.asarray(found.gallery_pressure) / PSI


def test_loose_rods_show_with_speed_and_loose_mains_at_idle() -> None:
    """Off the relief valve, the rods' part of the loss grows with speed: centrifugal feed."""
    free = replace(SET_B, relief_travel=0.0, oil=Oil(40e-6, 8e-6))
    base = curve(free)
    mains, rods = (
        1 - curve(reclearanced(free, **{kind: 0.0035 * INCH})) / base for kind in ("mains", "rods")
    )
    share = rods / mains
    assert share[0] < share[1] < share[2]


def test_starved_pickup_is_well_at_idle_and_falls_with_speed() -> None:
    """Normal hot idle, collapse at speed; and cold is worse."""
    near = replace(SET_B, pickup_gap=0.25e-3)
    hot, cold = curve(near), curve(near, 273.15)
    assert hot[0] == pytest.approx(curve(SET_B)[0], rel=0.03)
    assert hot[2] < 0.8 * curve(SET_B)[2]
    assert solve(near, 6000, HOT).cavitating
    assert cold[0] < 0.5 * curve(SET_B, 273.15)[0]


def test_starvation_is_reported_and_no_negative_pressure() -> None:
    """A pump far too small cannot fill what the bearings throw out."""
    state = solve(replace(set_b(0.012 * INCH), pump_displacement=3e-6), 5000, HOT)
    assert state.starved
    assert state.gallery_pressure == 0
    assert state.flows.engine + state.flows.slip == pytest.approx(state.flows.theoretical)


def test_blocked_filter_reads_by_where_the_gauge_is() -> None:
    """Before the filter the gauge hides what it shows after it."""
    blocked = replace(SET_B, filter_blocked=50.0, filter_bypass=np.inf)
    before, after = (
        solve(replace(blocked, gauge_tap=tap), 700, HOT).gauge_pressure
        for tap in ("pump", "gallery")
    )
    new = solve(SET_B, 700, HOT).gauge_pressure
    assert after < 0.8 * new < new < before


def test_dirt_under_the_relief_valve_shows_at_idle_only() -> None:
    """A sound spring still regulates; a plunger hung open is low at all speeds."""
    dirt = curve(replace(SET_B, relief_seat_leak=9e-6)) / curve(SET_B)
    hung = curve(replace(SET_B, relief_stuck_lift=1e-3)) / curve(SET_B)
    assert dirt[0] < 0.3
    assert dirt[2] > 0.9
    assert np.all(hung < 0.4)


def test_hole_and_leak_differ_by_temperature() -> None:
    """Matched hot, the missing plug still shows cold; the wide clearance hides."""
    wide = reclearanced(SET_B, mains=0.0035 * INCH)
    hole = replace(SET_B, open_orifice_area=3.6e-6)
    assert curve(hole)[0] == pytest.approx(curve(wide)[0], rel=0.03)
    free_wide, free_hole, free = (
        curve(replace(e, relief_travel=0.0), 313.15)[0] for e in (wide, hole, SET_B)
    )
    assert free_hole < 0.75 * free_wide < 0.75 * free


def test_relief_stuck_shut_shows_cold() -> None:
    """Cold over-pressure past anything a sound valve allows, yet idle hot as it was."""
    shut = replace(SET_B, relief_travel=0.0)
    assert curve(shut, 293.15)[1] > 3 * curve(SET_B, 293.15)[1]
    assert curve(shut)[0] == pytest.approx(curve(SET_B)[0])


@pytest.mark.parametrize(
    ("engine", "n"),
    [
        (SET_B, 0.0),
        (replace(SET_B, pickup_gap=0.0), 700.0),
        (replace(SET_B, air_fraction=-0.1), 700.0),
        (replace(SET_B, screen_open_share=0.0), 700.0),
        (replace(SET_B, mains=(replace(SET_B.mains[0], eccentricity=1.2),)), 700.0),
    ],
)
def test_what_cannot_be_is_refused(engine: Engine, n: float) -> None:
    """By a ValueError that names the range."""
    with pytest.raises(ValueError, match="must lie in"):
        solve(engine, n, HOT)
