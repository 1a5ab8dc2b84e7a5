"""Links computed from the circuit model: the stored table is what the script gives, and is used.

The reduced sample has the same seed rule as the table, but fewer engines; each share must agree
within the binomial errors of the two together (own calculation against itself: a guard that model,
thresholds and table belong together, no check against the world).
"""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest

from diagnose.circuit.condition_effects import FAULTS
from diagnose.inference import causegraph
from diagnose.inference.chaining import Facts, infer
from knowledge.book import the_book
from knowledge.circuit.conditions import CLEARANCES_WIDE, OIL_THIN
from knowledge.engines.profiles import DISTRIBUTOR_V8
from knowledge.pressure import pattern_strengths as stored
from knowledge.pressure.computed import computed_effects
from knowledge.pressure.patterns import FELL_SUDDENLY
from knowledge.pressure.patterns_speed import GOOD_COLD_LOW_HOT
from knowledge.rule_api import Computed, Link
from knowledge.sources import CIRCUIT_MODEL
from knowledge.units import PSI
from tests.studies import pattern_strengths as script
from tests.support.pattern_reports import POINTS, Looks, complaint, observations

ENGINES = 350
WIDE = 4.0  #: standard errors allowed: some 180 shares are compared at once
SLACK = 0.01  #: engines are drawn in agreement with usual pressures, a little differently by number
BOOK = the_book()


@pytest.fixture(scope="module")
def again() -> script.Shares:
    return script.shares(ENGINES, stored.SEED)


def links() -> list[Link]:
    return list(infer(BOOK.statements, Facts()).links)


def test_table_is_of_this_script() -> None:
    """A change of the model's version needs a new table."""
    assert (stored.MODEL_VERSION, stored.REPORTED, stored.LEAST) == (
        script.MODEL, script.REPORTED, script.LEAST,
    )  # fmt: skip
    assert stored.__doc__ is not None
    assert f"--engines {stored.ENGINES} --seed {stored.SEED}" in stored.__doc__


def test_every_fault_and_pattern_is_there(again: script.Shares) -> None:
    assert set(again) == set(stored.SHOWN)
    assert {c for c, _ in stored.SHOWN} == set(FAULTS) <= set(BOOK.conditions)
    assert {f for _, f in stored.SHOWN} <= set(BOOK.findings)


def test_a_smaller_sample_agrees(again: script.Shares) -> None:
    """Shares of a sixth of the engines, within both binomial errors."""
    off = {}
    for pair, few in again.items():
        share = stored.SHOWN[pair] / stored.REPORTED
        if few.of < 10:
            continue
        many = script.Share(round(share * few.of * stored.ENGINES / ENGINES), few.of * 6)
        floor = stored.LEAST / stored.REPORTED
        allowed = WIDE * sqrt(few.error**2 + many.error**2) + SLACK
        if abs(max(few.share, floor) - share) > allowed:
            off[pair] = (few.share, share, allowed)
    assert not off


def test_same_seed_same_figures() -> None:
    once, twice, other = (
        script.looked_at(DISTRIBUTOR_V8, 5, np.random.default_rng(seed))[CLEARANCES_WIDE.id]
        for seed in (3, 3, 4)
    )
    assert np.array_equal(once.panel["hot_idle"], twice.panel["hot_idle"])
    assert not np.array_equal(once.panel["hot_idle"], other.panel["hot_idle"])


def test_written_table_reads_back(again: script.Shares) -> None:
    """What ``--write`` writes is Python and holds every pair."""
    found: dict[str, dict[tuple[str, str], float]] = {}
    exec(script.table(again, ENGINES, 7), found)
    assert found["SHOWN"] == {pair: share.strength for pair, share in again.items()}


def test_strength_of_a_share() -> None:
    """Own arithmetic: 85 in 100 report what they can see, and nothing is below the floor."""
    assert script.Share(50, 100).strength == pytest.approx(0.425)
    assert script.Share(0, 100).strength == script.LEAST
    assert script.Share(50, 100).error == pytest.approx(0.05, rel=1e-3)
    assert script.Share(0, 0).share == 0.0


def looks(sound: dict[str, float], faulty: dict[str, float]) -> Looks:
    """One engine, 10 psi wanted hot at idle, relief at 50 psi; gauges without error [psi]."""
    rpm = dict(zip(POINTS, (700, 1200, 2700, 4500, 700, 2500), strict=True))
    as_pa = [{p: np.array([v[p] * PSI]) for p in POINTS} for v in (faulty, sound)]
    return Looks(
        {p: np.array([float(n)]) for p, n in rpm.items()},
        np.array([10 * PSI]), np.array([50 * PSI]), *as_pa, *as_pa, *as_pa,
    )  # fmt: skip


SOUND = dict(zip(POINTS, (28.0, 40, 51, 54, 50, 55), strict=True))


@pytest.mark.parametrize(
    ("psi", "shows"),
    [
        ((28, 40, 51, 54, 50, 55), set()),
        ((8, 22, 40, 44, 45, 52), {"gauge_reads_low", "low_hot_idle_good_speed",
            "rises_just_off_idle", "good_cold_low_hot", "pump_port_low"}),
        ((26, 29, 30, 32, 29, 31), {"gauge_reads_low", "capped_low", "low_even_cold",
            "never_reaches_setting_cold"}),
        ((28, 38, 22, 9, 30, 20), {"gauge_reads_low", "falls_as_revs_rise", "low_even_cold",
            "never_reaches_setting_cold", "pump_port_low"}),
        ((28, 40, 60, 75, 70, 95), {"gauge_reads_high", "climbs_past_setting"}),
    ],
    ids=["sound", "worn", "weak spring", "choked pickup", "stuck shut"],
)  # fmt: skip
def test_what_a_person_would_report(psi: tuple[float, ...], shows: set[str]) -> None:
    """Own examples, by the thresholds stated."""
    seen = looks(SOUND, dict(zip(POINTS, psi, strict=True)))
    reported = {f.id for f, flags in observations(seen).items() if flags[0]}
    assert reported == shows
    assert bool(complaint(seen)[0]) is bool(shows)


def test_book_takes_its_strengths_from_the_table() -> None:
    computed = [k for k in links() if isinstance(k.strength, Computed)]
    assert len(computed) > 40
    for link in computed:
        assert link.strength.value == stored.SHOWN[link.parent.id, link.child.id]
        assert isinstance(link.strength, Computed)
        assert link.source is CIRCUIT_MODEL


def test_graph_names_the_model_as_source() -> None:
    graph = causegraph.build(BOOK.causes, infer(BOOK.statements, Facts()))
    edge = graph.edges[CLEARANCES_WIDE.id, GOOD_COLD_LOW_HOT.id]
    assert edge["strength"] == stored.SHOWN[CLEARANCES_WIDE.id, GOOD_COLD_LOW_HOT.id]
    assert edge["source"] == CIRCUIT_MODEL.key


def test_model_is_not_asked_what_it_cannot_say() -> None:
    with pytest.raises(KeyError):
        next(computed_effects(OIL_THIN, FELL_SUDDENLY))


@pytest.mark.parametrize("value", [0.0, 1.0, -0.1, 1.5])
def test_a_strength_is_a_probability(value: float) -> None:
    with pytest.raises(ValueError, match="probability"):
        Computed(value)


def test_computed_strength_has_a_name() -> None:
    assert Computed(0.43).name == "computed 0.43"
