"""Repairs in trade words: what ``--fix`` understands, what it does, and the smallest that do."""

from __future__ import annotations

import json
import re
from pathlib import Path

import numpy as np
import pytest

from diagnose.case.loading import from_text, load
from diagnose.circuit.budget import budget
from diagnose.circuit.fixes import UnknownFixError, planned
from diagnose.circuit.forecast import Forecast, Target, forecast
from diagnose.circuit.minimum_change import ENOUGH, minimum_change
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError
from diagnose.output.documents.budget import budget_document
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.text.forecast_brief import forecast_brief
from diagnose.signoff.fix_work import fix_work
from diagnose.teardown.plan import CLOSING
from knowledge.circuit import fixes
from knowledge.circuit.fixes import ALL, FIX_NAMES, FIXES
from knowledge.units import INCH, MM, PSI
from tests.support.circuits import BOOK, WORN, a_case, saved, text
from tests.support.command_line import call
from tests.support.complaints import CASES

LOW = ("700 rpm, 95 C, 8 psi", "2500 rpm, 95 C, 33 psi")


def idle(each: Forecast, *, after: bool = True) -> float:
    """Mean pressure at hot idle [psi]."""
    side = each.after if after else each.before
    return float(np.mean(each.hot_pressure(side, 700))) / PSI


def repaired(*plans: str, measured: dict[str, str] | None = None, more: str = "") -> Forecast:
    case = a_case(measured, LOW, more=more)
    return forecast(case, [], engines=12, plans=[planned(p) for p in plans])


# --------------------------------------------------------------------------------- what is typed


@pytest.mark.parametrize(
    ("typed", "units", "value"),
    [
        ("mains=0.002", {}, 0.002 * INCH),
        ("mains=0.002", {"length": "mm"}, 0.002 * INCH),
        ("mains=0.05", {}, 0.05 * MM),
        ("mains=0.05", {"length": "in"}, 0.05 * MM),
        ("rods=0.0018", {"length": "mm"}, 0.0018 * INCH),
        ("rods=2.5", {}, 2.5e-3 * INCH),
        ("rods=0.055 mm", {"length": "in"}, 0.055 * MM),
        ("relief=60", {}, 60 * PSI),
        ("relief=4", {"pressure": "psi"}, 4e5),
        ("spring=4.5", {"pressure": "bar"}, 4.5e5),
        ("gap=10", {"length": "in"}, 10 * MM),
        ("pickup gap=0.375", {}, 0.375 * INCH),
        ("cover=0.003", {}, 0.003 * INCH),
        ("shim=1", {}, 1 * MM),
    ],
)
def test_a_value_without_a_unit_is_in_the_one_a_workshop_would_use(
    typed: str, units: dict[str, str], value: float
) -> None:
    plan = planned(typed.replace("pickup gap", "gap"), units)
    assert plan.setting is not None
    assert plan.setting.value == pytest.approx(value)


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ("mains=3 apples", "no length"),
        ("mains=40", "from 0.0005 in to 0.008 in"),
        ("mains=.0025mm", "Did you mean .0025 in"),
        ("mains=", "missing"),
        ("filter=3", "takes no value"),
        ("shim", "how thick"),
        ("oil=11W-40", "SAE J300"),
    ],
)
def test_a_value_that_cannot_be_is_refused_in_one_line(typed: str, says: str) -> None:
    with pytest.raises(UsageError, match=says):
        planned(typed)


@pytest.mark.parametrize(
    ("typed", "near"), [("releif", "relief"), ("main bearing", "mains"), ("zzz", "zzz")]
)
def test_an_unknown_name_brings_the_nearest(typed: str, near: str) -> None:
    with pytest.raises(UnknownFixError, match=near):
        planned(typed)


def test_every_word_means_one_repair_and_every_quantity_one_place() -> None:
    words = [w for f in ALL for w in (f.id, *f.also)]
    assert len(words) == len(set(words)) == len(FIX_NAMES)
    for word, fix in FIX_NAMES.items():
        if fix is not fixes.SHIM:
            assert planned(word).fix is fix
    for fix in ALL:
        assert fix.least < fix.most or fix.sets is None
        if fix.sets is not None:
            low, high = CIRCUIT_PARAMETERS[fix.sets.id].plausible
            assert low <= fix.least
            assert fix.most <= high
        assert bool(fix.places) == bool(fix.minutes)


# ----------------------------------------------------------------------------- what a repair does


def test_putting_right_what_was_found_goes_back_to_the_sound_value() -> None:
    each = repaired("mains", measured=WORN)
    sound, after = (
        np.median(np.asarray(CIRCUIT_PARAMETERS["main_clearance"].read(e)))
        for e in (each.sound, each.after.engine)
    )
    assert after == pytest.approx(sound)
    assert idle(each) > idle(each, after=False) + 1
    worn = np.median(np.asarray(CIRCUIT_PARAMETERS["rod_clearance"].read(each.after.engine)))
    assert worn > 0.0027 * INCH, "the rods stay as they were found"


def test_a_value_sets_what_was_found() -> None:
    each = repaired("mains=0.002", "rods=0.0018", measured=WORN)
    for name, value in (("main_clearance", 0.002), ("rod_clearance", 0.0018)):
        read = np.asarray(CIRCUIT_PARAMETERS[name].read(each.after.engine))
        assert np.allclose(read, value * INCH)


def test_a_measured_value_is_shown_as_measured_on_the_same_screen() -> None:
    """Not as the readings make it: found and planned say one figure."""
    each = repaired("mains", measured={"main_clearance": "0.0042 in"})
    document = forecast_document(each)
    assert "0.0042 in" in document.found[0].says
    assert document.settings[0].says.startswith("mains: main bearing clearance 0.0042 in -> ")
    remedies = [r for t in document.targets for r in (*t.enough, *t.not_enough)]
    mains = [r for r in remedies if r.fixes == ("mains",)]
    assert mains
    assert {r.start for r in mains} == {"0.0042 in"}


def test_a_new_pump_is_no_worse_than_a_tight_old_one() -> None:
    """What was measured better than usual is not undone."""
    each = repaired("cover", measured={"pump_end_clearance": "0.0015 in"})
    before, after = (
        np.asarray(CIRCUIT_PARAMETERS["pump_end_clearance"].read(e.engine))
        for e in (each.before, each.after)
    )
    assert np.array_equal(before, after)
    assert "nothing was found wrong there" in forecast_document(each).settings[0].says


def test_debris_under_the_relief_valve_is_cleared_in_trade_words() -> None:
    each = repaired("relief", more="debris_on_relief_seat")
    assert np.all(np.asarray(CIRCUIT_PARAMETERS["relief_seat_gap"].read(each.after.engine)) == 0)
    assert idle(each) > idle(each, after=False) + 3


def test_a_screen_seen_covered_is_open_after_its_repair() -> None:
    """How far it was covered was not measured: the loss that the readings ask for is taken for it."""
    low = ("700 rpm, 95 C, 20 psi", "2500 rpm, 95 C, 18 psi")
    case = a_case(readings=low, more="screen_blocked")
    each = forecast(case, [], engines=12, plans=[planned("pickup")])
    shares = [np.median(np.asarray(e.engine.screen_open_share)) for e in (each.before, each.after)]
    assert shares[0] < 0.5
    assert shares[1] == 1.0
    (line,) = forecast_document(each).settings
    assert "computed, not measured" in line.says


def test_a_repair_is_not_called_needless_while_stop_applies() -> None:
    """The pressure at idle may be right, and something else stop the engine."""
    each = forecast(a_case(readings=("700 rpm, 95 C, 30 psi",)), [], engines=12)
    runs, stopped = (
        " ".join(forecast_brief(forecast_document(each, may_run=m)).split()) for m in (True, False)
    )
    assert "No repair is needed for" in runs
    assert "STOP applies" in stopped
    assert "No repair is needed" not in stopped
    assert "Find it first" in stopped


def test_another_target_is_in_the_unit_of_the_job() -> None:
    each = forecast(a_case(readings=("700 rpm, 95 C, 2.4 bar",)), [], engines=12)
    assert re.search(r'--target "[\d.]+ bar"', forecast_brief(forecast_document(each)))


def test_a_cooler_found_blocked_is_charged_and_cleared() -> None:
    """It narrows the way of all oil, so that its repair raises the pressure, most at speed."""
    low = ("700 rpm, 95 C, 22 psi", "2500 rpm, 95 C, 25 psi")
    case = a_case(readings=low, more="cooler_found_blocked")
    drawn = budget(case, engines=12)
    assert [d.id for d in drawn.findings] == ["cooler_open_share"]
    idle, cruise = (a.shares[0].mean for a in drawn.accounts)
    assert cruise > idle > 0
    each = forecast(case, [], engines=12, plans=[planned("cooler hose")])
    assert np.mean(each.hot_pressure(each.after, 2500)) > (
        np.mean(each.hot_pressure(each.before, 2500)) + 5 * PSI
    )
    (line,) = forecast_document(each).settings
    assert line.says.startswith("cooler: open share of the oil cooler and its lines ")


def test_a_piston_jet_found_missing_is_charged_and_put_right() -> None:
    """It takes pressure like an open plug, beside one, and is a repair of its own."""
    missing = repaired("jets", more="piston_jet_found_broken")
    assert [d.id for d in missing.found] == ["open_jet"]
    assert idle(missing, after=False) < idle(missing) - 3
    case = a_case(more="piston_jet_found_broken")
    [share] = budget(case).accounts[0].shares
    assert share.low > 0.0
    plug = '[[finding]]\nno = 90\nwhat = "gallery_plug_found_missing"\nstate = "present"\n'
    both = from_text(text(more="piston_jet_found_broken") + plug, None, BOOK)
    each = {f.finding: f.share.mean for f in budget_document(budget(both), both).accounts[0].shares}
    assert set(each) == {"open_jet", "open_hole"}
    assert min(each.values()) > 2 * PSI


def test_a_repair_where_nothing_was_found_may_close_what_nobody_has_found() -> None:
    """And says so; where it was measured and is sound, it brings nothing."""
    guessed = repaired("mains")
    assert idle(guessed) > idle(guessed, after=False) + 1
    (line,) = forecast_document(guessed).settings
    assert "nothing was found there" in line.says
    tight = repaired("mains", measured={"main_clearance": "0.0020 in"})
    assert idle(tight) < idle(tight, after=False) + 1
    every = repaired("leak")
    assert idle(every) > idle(guessed)


def test_oil_and_pump_in_trade_words() -> None:
    thick = repaired("oil=20W-50", measured=WORN)
    assert idle(thick) > idle(thick, after=False) + 1
    same, more = (repaired(p, measured=WORN) for p in ("pump", "pump=25 %"))
    grown = np.asarray(more.after.engine.pump_displacement) / same.after.engine.pump_displacement
    assert np.allclose(grown, 1.25)
    fresh = repaired("oil", measured={"fuel_share": "8 %"})
    assert idle(fresh) > idle(fresh, after=False) + 1


# -------------------------------------------------------------------------- the smallest that do


def test_the_smallest_repairs_are_ranked_with_parts_and_minutes() -> None:
    """Those that treat no symptom first, then by hands-on minutes."""
    each = forecast(load(CASES / "petrel.toml", BOOK), [])
    (first, *_), target = forecast_document(each).targets[0].enough, each.targets[0]
    assert first.fixes == ("relief",)
    assert first.met >= ENOUGH
    assert first.after.mean > target.pressure
    assert any("relief cap" in p for p in first.parts)
    ranked = forecast_document(each).targets[0].enough
    keys = [(r.symptom, r.assumed, 1e9 if r.minutes is None else r.minutes, r.way) for r in ranked]
    assert keys == sorted(keys)


def test_several_repairs_where_no_single_one_is_enough() -> None:
    """Each named set meets the target, and no part of it does."""
    wide = {"main_clearance": "0.0045 in", "rod_clearance": "0.0040 in"}
    each = forecast(a_case(wide), [], engines=16)
    now = float(np.mean(each.hot_pressure(each.before, 700)))
    target = Target(700.0, now + 14 * PSI, "wanted")
    change = minimum_change(each, target)
    singles = [r for r in change.remedies if not r.symptom]
    assert not singles
    assert change.together
    for r in change.together:
        assert len(r.fixes) == 2
        assert r.met >= ENOUGH
        again = forecast(each.case, [], target, 16, plans=[planned(f.id) for f in r.fixes])
        assert again.chance(target, again.after) == pytest.approx(r.met)


def test_minutes_are_the_planners_and_the_work_is_counted_once() -> None:
    planner = Diagnosis(BOOK, a_case()).planner
    tree = planner.tree
    relief = fix_work([fixes.RELIEF], (), planner, BOOK)
    way = tree.way(fixes.RELIEF.places[0], planner.opened)
    if way is None:
        way = tree.way(fixes.RELIEF.places[1], planner.opened)
    assert way is not None
    opening = sum(tree.minutes(o.access) for o in way)
    assert relief.minutes == pytest.approx(opening * (1 + CLOSING) + fixes.RELIEF.minutes)
    mains, rods, both = (
        fix_work(f, (), planner, BOOK).minutes
        for f in ([fixes.MAINS], [fixes.RODS], [fixes.MAINS, fixes.RODS])
    )
    assert mains is not None
    assert rods is not None
    assert both is not None
    assert both == pytest.approx(mains + fixes.RODS.minutes), "the caps are opened once"
    assert fix_work([fixes.LEAK], (), planner, BOOK).minutes is None


def test_the_usual_limit_comes_with_its_source_and_the_engines_own_goes_first() -> None:
    (usual, _), (own, _) = (
        forecast_document(forecast(a_case(WORN, engine=e), [], engines=8)).targets
        for e in ("", '[engine.limits]\nhot_idle_pressure = "17 psi"')
    )
    assert usual.source
    assert "usual" in usual.says
    assert own.pressure == pytest.approx(17 * PSI)
    assert own.source == ""


# -------------------------------------------------------------------------------- the command


def test_fix_alone_lists_what_can_be_put_right_on_one_screen(tmp_path: Path) -> None:
    path = saved(tmp_path, text(WORN, LOW))
    done = call("forecast", path, "--fix")
    assert done.code == 0, done.err
    lines = done.out.splitlines()
    assert len(lines) <= 30
    assert max(map(len, lines[:-1])) <= 80, "but for the command with its path"
    for name in FIXES:
        assert any(line.split()[:1] == [name] for line in lines), name
    assert any(line.startswith("mains   *") and "0.0005 to 0.008 in" in line for line in lines)
    data = json.loads(call("forecast", path, "--fix", "--json").out)
    rows = {r["name"]: r for r in data["can_fix"]}
    assert rows["mains"]["found"] == ["main bearing clearance 0.0032 in"]
    assert rows["relief"]["today"].endswith("psi")


def test_an_unknown_name_lists_them_too(tmp_path: Path) -> None:
    done = call("forecast", saved(tmp_path, text(WORN, LOW)), "--fix", "releif")
    assert done.code == 2
    assert "relief valve put right" in done.out
    assert done.err.strip() == "--fix: no repair is called 'releif'. Did you mean 'relief'?"
    other = call("forecast", saved(tmp_path, text(WORN, LOW)), "--fix", "gasket")
    assert other.err.strip() == "--fix: no repair is called 'gasket'."


def test_command_in_trade_words(tmp_path: Path) -> None:
    path = saved(tmp_path, text(WORN, LOW))
    words = ("--fix", "mains=0.002", "--fix", "rods=0.0018")
    done = call("forecast", path, *words, "--json")
    assert done.code == 0, done.err
    planned_ones = json.loads(done.out)["set"]
    assert [s["name"] for s in planned_ones] == ["mains", "rods"]
    assert [s["to"] for s in planned_ones] == ["0.002 in", "0.0018 in"]
    assert call("forecast", path, "--fix", "mains", "--fix", "main shells").code == 2
    assert call("forecast", path, "--fix", "mains", "--at", "idle hot").code == 2
