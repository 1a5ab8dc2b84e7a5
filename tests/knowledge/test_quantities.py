"""One quantity, one definition: what refers to a quantity repeats none of its figures."""

from __future__ import annotations

import ast
from dataclasses import fields, replace
from pathlib import Path
from statistics import NormalDist, fmean

import numpy as np
import pytest

from diagnose.circuit.engine_model import engine_of
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS, NAMES, CircuitParameter
from diagnose.circuit.settings import setting
from diagnose.errors import BadCaseError, UsageError
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import SET_B
from diagnose.hydraulics.oil import Oil
from diagnose.inference.chaining import Facts, Observation, WorkingMemory, infer
from knowledge import contents
from knowledge.book import the_book
from knowledge.engines import features, features_build, features_kinds
from knowledge.engines.dimensions import CIRCUIT
from knowledge.judging import LEAST_SURE
from knowledge.limits import Limit, Printed, Side
from knowledge.model import Finding, Measure, Quantity, State, all_in
from knowledge.sources import JUDGEMENT
from knowledge.units import DIMENSIONS, show, unit_named
from knowledge.work import Task
from tests.support.circuits import a_case

BOOK = the_book()
ROOT = Path(__file__).parents[2]
QUANTITIES = tuple(BOOK.quantities.values())
MEASURED_TASKS = [t for t in BOOK.tasks.values() if t.measures is not None]


def ids(word: Quantity | Measure | Limit | Task | CircuitParameter) -> str:
    return word.id


# ----------------------------------------------------------------------- one definition for all


def test_everything_refers_to_the_quantity_of_the_book() -> None:
    """A measure, limit, dimension, parameter or task has the very object, no copy of it."""
    referred = [
        *(m.quantity for m in BOOK.measures.values()),
        *(q for limit in BOOK.limits.values() for q in limit.quantities),
        *BOOK.dimensions.values(),
        *(p.quantity for p in CIRCUIT_PARAMETERS.values()),
        *(t.measures for t in MEASURED_TASKS if t.measures is not None),
    ]
    assert len(referred) > 120
    for quantity in referred:
        assert BOOK.quantities[quantity.id] is quantity


def test_a_shared_id_means_the_same_quantity() -> None:
    """Ids of measures, dimensions and parameters that are alike are of one object."""
    tables: list[dict[str, Quantity]] = [
        {m.id: m.quantity for m in BOOK.measures.values()},
        dict(BOOK.dimensions),
        {p.id: p.quantity for p in CIRCUIT_PARAMETERS.values()},
    ]
    shared = [(a, b, id_) for a in tables for b in tables if a is not b for id_ in a.keys() & b]
    assert len({id_ for _, _, id_ in shared}) >= 10
    for one, other, id_ in shared:
        assert one[id_] is other[id_]


@pytest.mark.parametrize("kind", [Measure, CircuitParameter], ids=lambda k: k.__name__)
def test_what_refers_has_no_figure_of_its_own(kind: type) -> None:
    """No field for a range, an error, a unit or a dimension stands beside the quantity."""
    names = {f.name for f in fields(kind)}
    assert "quantity" in names
    assert not names & {"dimension", "unit", "plausible", "spread", "typical"}


def test_a_limit_has_figures_only() -> None:
    """Dimension and range are those of its quantities; each printed figure has its source."""
    assert {f.name for f in fields(Limit)} == {
        "id",
        "says",
        "quantities",
        "side",
        "typical",
        "source",
        "typical_on",
        "typical_only_with",
        "by_size",
        "on_layouts",
        "of",
        "others",
    }
    for limit in BOOK.limits.values():
        assert {q.dimension for q in limit.quantities} == {limit.dimension}
        for quantity in limit.quantities:
            low, high = quantity.plausible
            for value in (
                limit.typical,
                *(p.value for p in limit.others),
                *(f.value for f in limit.on_layouts.values()),
            ):
                assert low < value < high, limit.id
        assert {*limit.typical_on, *limit.on_layouts} <= set(BOOK.layouts), limit.id


@pytest.mark.parametrize("limit", BOOK.limits.values(), ids=ids)
def test_a_limit_says_what_it_was_printed_for(limit: Limit) -> None:
    """A published figure names its kind of engine; where there are several, all of them do."""
    marks = {"practice", "judgement", "memory"}
    for of, source in ((limit.of, limit.source), *((p.of, p.source) for p in limit.others)):
        assert of or (source.trust in marks and not limit.others), limit.id
        assert source.trust
    for printed in limit.others:
        known = {
            f
            for m in (features, features_build, features_kinds)
            for f in all_in(m.__name__, Finding)
        }
        assert known >= {*printed.only_with, *printed.not_with}
        assert not set(printed.only_with) & set(printed.not_with)


def test_the_kind_of_engine_chooses_its_figures() -> None:
    """Those for its kind where there are any; else those for no kind in particular."""
    general = Printed(value=2.0, of="another", source=JUDGEMENT)
    diesel = Printed(value=3.0, of="diesel", source=JUDGEMENT, only_with=(features.DIESEL,))
    boat = replace(diesel, value=4.0, not_with=(features.IN_A_BOAT,))
    limit = Limit(
        id="some",
        says="some",
        quantities=(BOOK.quantities["pump_backlash"],),
        side=Side.MOST,
        typical=1.0,
        source=JUDGEMENT,
        others=(general, diesel, boat),
    )

    def values(*has: Finding) -> list[float]:
        return [p.value for p in limit.printed(lambda f: f in has)]

    assert values() == [1.0, 2.0]
    assert values(features.DIESEL) == [3.0, 4.0]
    assert values(features.DIESEL, features.IN_A_BOAT) == [3.0]
    facts = Facts(observations={features.DIESEL: Observation(State.PRESENT)})
    assert list(WorkingMemory(facts).limit_figures(limit)) == [3.0, 4.0]
    assert WorkingMemory(facts).limit(limit) == 3.0
    own = replace(facts, limits={limit: 9.0})
    assert list(WorkingMemory(own).limit_figures(limit)) == [9.0]


def test_a_task_may_not_repeat_its_quantity() -> None:
    """A dimension or an error beside the quantity is refused."""
    task = BOOK.tasks["main_clearance_fitted"]
    assert task.measures is BOOK.quantities["main_clearance"]
    assert (task.dimension, task.spread) == (task.measures.dimension, task.measures.spread)
    for twice in ({"dimension": "length"}, {"spread": 1e-6}):
        with pytest.raises(ValueError, match="those of its quantity"):
            Task(
                id="again",
                phase=task.phase,
                says=task.says,
                how=task.how,
                source=task.source,
                measures=task.measures,
                **twice,
            )


@pytest.mark.parametrize("task", MEASURED_TASKS, ids=ids)
def test_a_task_is_held_to_limits_of_its_quantity(task: Task) -> None:
    assert all(limit is None or task.measures in limit.quantities for limit in task.limits)


def test_quantities_are_defined_only_in_their_files() -> None:
    """Files of that name in each station, and one for what belongs to no station."""
    for path in (ROOT / "knowledge").rglob("*.py"):
        made = {
            node.func.id
            for node in ast.walk(ast.parse(path.read_text("utf-8")))
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name)
        }
        assert not made & {"Quantity", "Limit"} or path.stem.startswith("quantities"), path
    found = [q for module in contents.MODULES for q in all_in(module.__name__, Quantity)]
    assert len(found) == len(set(found)) == len(QUANTITIES)


# --------------------------------------------------------------------------- what a quantity is


@pytest.mark.parametrize("quantity", QUANTITIES, ids=ids)
def test_a_quantity_is_whole(quantity: Quantity) -> None:
    dimension = DIMENSIONS[quantity.dimension]
    low, high = quantity.plausible
    assert low < high
    assert 0 <= quantity.spread < (high - low) / 4
    assert quantity.source.trust
    assert not quantity.unit or unit_named(quantity.unit, dimension)
    assert quantity.says[-1] != "."
    assert not quantity.short or len(quantity.short) < len(quantity.says)


@pytest.mark.parametrize("measure", BOOK.measures.values(), ids=ids)
def test_a_measured_quantity_has_an_error_and_clear_limits(measure: Measure) -> None:
    """What is measured is uncertain, and is held to one least and one most."""
    assert measure.spread > 0
    sides = [x.side for x in BOOK.limits.values() if measure.quantity in x.quantities]
    assert len(sides) == len(set(sides))
    least, most = BOOK.limits_of(measure.quantity)
    assert (Side.LEAST in sides, Side.MOST in sides) == (least is not None, most is not None)
    if least and most:
        assert least.typical < most.typical


@pytest.mark.parametrize(
    ("quantity", "least", "most"),
    [
        ("main_clearance", "least_bearing_clearance", "main_clearance"),
        ("rod_clearance", "least_bearing_clearance", "rod_clearance"),
        ("cam_bearing_clearance", None, "cam_clearance"),
        ("crank_end_float", None, "crank_end_float"),
        ("pump_cover_hollow", None, "cover_flatness"),
        ("pickup_gap", "least_pickup_gap", "most_pickup_gap"),
        ("oil_heat", None, "oil_temperature"),
        ("switch_pressure", None, "switch_opens_at"),
        ("fuel_share", None, "fuel_share_limit"),
        ("sender_resistance_at_rest", None, None),
        ("idle_speed_counted", None, None),
        ("relief_spring_length", None, None),
    ],
)
def test_limits_of_a_quantity(quantity: str, least: str | None, most: str | None) -> None:
    """As a person would look them up; a nominal figure is neither the least nor the most."""
    found = BOOK.limits_of(BOOK.quantities[quantity])
    assert [x.id if x else None for x in found] == [least, most]


# ------------------------------------------------------------------------ values beyond a limit

#: every measured quantity with each of its limits
LIMITED = [
    (measure, limit)
    for measure in BOOK.measures.values()
    for limit in BOOK.limits_of(measure.quantity)
    if limit is not None
]
HELD = [pytest.param(m, limit, id=f"{m.id}-{limit.side.value}") for m, limit in LIMITED]


def concluded(
    measure: Measure, *values: float, kind: tuple[Finding, ...] = ()
) -> dict[Finding, float]:
    """Findings concluded from values and the kind of engine, each with its probability."""
    known = dict.fromkeys(kind, Observation(State.PRESENT))
    found = infer(BOOK.statements, Facts(known, measures={measure: values})).derived
    return {c.finding: c.sure if c.state is State.PRESENT else 1 - c.sure for c in found}


@pytest.mark.parametrize(("measure", "limit"), HELD)
def test_a_value_is_judged_by_limit_and_error(measure: Measure, limit: Limit) -> None:
    """Two errors beyond the only figure is 97.7 % beyond it; of several values the worst counts.

    Where sources print different figures for one kind of engine, the mean over them.
    """
    kind = limit.typical_only_with
    figures = [p.value for p in limit.printed(lambda f: f in kind)]
    outward = -1.0 if limit.side is Side.LEAST else 1.0
    step = min(2 * measure.spread, min(figures))
    beyond = (max if outward > 0 else min)(figures) + outward * step
    within = (min if outward > 0 else max)(figures) - outward * step

    def sure(value: float) -> float:
        each = [NormalDist().cdf(outward * (value - f) / measure.spread) for f in figures]
        return fmean(min(max(p, LEAST_SURE), 1 - LEAST_SURE) for p in each)

    there, gone = (concluded(measure, x, kind=kind) for x in (beyond, within))
    judged = {
        f
        for f in there.keys() & gone.keys()
        if there[f] == pytest.approx(sure(beyond), abs=1e-6)
        and gone[f] == pytest.approx(sure(within), abs=1e-6)
    }
    assert judged
    for values in ((beyond, within), (within, beyond)):
        assert {f: concluded(measure, *values, kind=kind)[f] for f in judged} == {
            f: pytest.approx(sure(beyond), abs=1e-6) for f in judged
        }


def test_no_figure_of_another_kind_of_engine_judges_a_value() -> None:
    """A diesel's figure says nothing of an engine that is not known to be one."""
    held = [(m, limit) for m, limit in LIMITED if limit.typical_only_with]
    assert held
    for measure, limit in held:
        assert limit.printed(lambda _: False) == ()
        assert concluded(measure, 3 * limit.typical) == {}


def test_a_value_on_the_limit_counts_as_beyond_it() -> None:
    """Even odds are written as there, for every quantity alike."""
    for measure in ("pump_end_clearance", "main_clearance", "pickup_gap"):
        word = BOOK.measures[measure]
        most = BOOK.limits_of(word.quantity)[1]
        assert most is not None
        found = infer(BOOK.statements, Facts(measures={word: [most.typical]})).derived
        even = [c for c in found if c.sure == 0.5]
        assert even
        assert all(c.state is State.PRESENT for c in even)


# -------------------------------------------------------------- names in case files and commands


@pytest.mark.parametrize("quantity", CIRCUIT.values(), ids=ids)
def test_the_ends_of_a_range_can_be_written(quantity: Quantity) -> None:
    """A case takes plausible values and refuses others."""
    dimension = DIMENSIONS[quantity.dimension]
    low, high = quantity.plausible
    unit = quantity.unit or None
    for value, fits in ((low + 0.1 * (high - low), True), (1.1 * high, False)):
        written = show(value, dimension, unit, 9)
        stated = f'[engine.dimensions]\n{quantity.id} = "{written}"'
        if fits:
            case = a_case(baseline=(), engine=stated)
            assert case.dimensions[quantity] == pytest.approx(value)
        else:
            with pytest.raises(BadCaseError, match=f"engine.dimensions.{quantity.id}"):
                a_case(baseline=(), engine=stated)


@pytest.mark.parametrize("parameter", CIRCUIT_PARAMETERS.values(), ids=ids)
def test_a_repair_takes_the_range_of_the_quantity(parameter: CircuitParameter) -> None:
    """``--set`` takes plausible values under every name and refuses others."""
    low, high = parameter.quantity.plausible
    inside = show(low + 0.5 * (high - low), parameter.dimension, parameter.quantity.unit or None, 9)
    beyond = show(2 * high, parameter.dimension, parameter.quantity.unit or None, 9)
    for name in (parameter.id, *parameter.also):
        assert NAMES[name] is parameter
        assert setting(f"{name}={inside}").parameter is parameter
        with pytest.raises(UsageError, match="cannot be"):
            setting(f"{name}={beyond}")


NOTHING = ("main_clearance", "rod_clearance", "pump_end_clearance", "pump_side_clearance")


@pytest.mark.parametrize("name", [*NOTHING, "cam_bearing_clearance", "pickup_gap"])
def test_a_gap_measured_as_nothing_can_be_computed(name: str) -> None:
    """A gap of nothing is a real finding; the formulas take the least gap they can solve."""
    parameter = CIRCUIT_PARAMETERS[name]
    assert parameter.plausible[0] == 0.0
    closed = parameter.apply(SET_B, 0.0)
    assert 0.0 < float(np.asarray(parameter.read(closed))) < 1e-4
    profile = BOOK.profiles["distributor_v8"]
    numbers = {k: v for k, (v, _) in profile.numbers.items()} | {name: 0.0}
    for engine in (closed, engine_of(numbers, Oil.of_grade("30"))):
        assert np.isfinite(solve(engine, 2000.0, 363.15).gallery_pressure)
