"""What a case's entries give: places, certainty, stages, days, closings, open places."""

from __future__ import annotations

from itertools import permutations
from pathlib import Path

import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.history.shop import read_shop
from diagnose.inference.chaining import Facts, Observation, WorkingMemory, infer
from diagnose.planning.access_tree import AccessTree
from diagnose.teardown.plan import PlanRequest
from knowledge.book import the_book
from knowledge.model import Kind, Stage, State
from knowledge.work import Access
from tests.support.command_line import ROOT, call

BOOK = the_book()
FLICKERS = BOOK.findings["needle_flickers"]


def case_of(*entries: str, engine: str = "") -> Case:
    """A case of entries without their numbers: 'finding: what = ..., state = ...'."""
    text = f"schema = 1\n[engine]\n{engine}\n"
    for i, entry in enumerate(entries, 1):
        kind, _, fields = entry.partition(": ")
        lines = fields.replace(", ", "\n")
        text += f"\n[[{kind}]]\nno = {i}\n{lines}\n"
    return from_text(text, None, BOOK)


def seen(state: str, more: str = "", what: str = "needle_flickers") -> str:
    return f'finding: what = "{what}", state = "{state}"{more}'


# ------------------------------------------------------------------------ several places

#: what was said of one finding at several places (state, how sure), and what it comes to
PLACES = [
    ([("absent", 1.0), ("present", 1.0)], ("present", 1.0)),
    ([("absent", 1.0), ("absent", 1.0), ("present", 0.8)], ("present", 0.8)),
    ([("present", 0.7), ("absent", 1.0)], ("present", 0.7)),
    ([("absent", 0.6), ("absent", 0.9)], ("absent", 0.9)),
    ([("present", 0.6), ("present", 0.9)], ("present", 0.9)),
    ([("absent", 1.0), ("absent", 1.0)], ("absent", 1.0)),
    ([("unknown", 1.0), ("absent", 0.8)], ("absent", 0.8)),
    ([("unknown", 1.0), ("present", 0.8)], ("present", 0.8)),
]


@pytest.mark.parametrize(("places", "right"), PLACES)
def test_there_in_one_place_is_there(
    places: list[tuple[str, float]], right: tuple[str, float]
) -> None:
    """Whatever order the places were looked at in."""
    for order in permutations(places):
        entries = [
            seen(state, f', sure = {sure}, where = "{i}"') for i, (state, sure) in enumerate(order)
        ]
        found = case_of(*entries).facts().observations[FLICKERS]
        assert (found.state.value, found.sure) == right


def test_a_feature_said_later_overrules_the_layout() -> None:
    feature = next(f for f in BOOK.layouts["distributor_v8"].has if f.kind is Kind.LAYOUT)
    case = case_of(seen("absent", what=feature.id), engine='layout = "distributor_v8"')
    assert case.facts().observations[feature].state is State.ABSENT


# ------------------------------------------------------------------------ how sure a person is


@pytest.mark.parametrize(
    ("more", "sure"),
    [("", 1.0), (", sure = 0.5", 0.5), (", sure = 0.7", 0.7), (", sure = 1.0", 1.0)],
)
@pytest.mark.parametrize("state", ["present", "absent"])
def test_how_sure_a_person_is_reaches_the_evidence(state: str, more: str, sure: float) -> None:
    """A likelihood ratio of sure : (1 - sure), against the finding where it is denied."""
    case = case_of(seen(state, more))
    assert case.facts().observations[FLICKERS] == Observation(State(state), sure)
    found = Diagnosis(BOOK, case).inference.evidence[FLICKERS.id]
    total = found.if_present + found.if_absent
    right = sure if state == "present" else 1.0 - sure
    assert found.if_present / total == pytest.approx(right, abs=1e-3)


def test_doubt_moves_the_ranking_less() -> None:
    """The less sure the person, the nearer each cause stays to what it was without the entry."""

    def moved(more: str) -> float:
        answer = Diagnosis(BOOK, case_of(seen("present", more)))
        return sum(abs(r.probability - r.prior) for r in answer.ranking)

    assert moved("") > moved(", sure = 0.9") > moved(", sure = 0.7") > moved(", sure = 0.55")


def test_a_typed_probability_is_kept(tmp_path: Path) -> None:
    case = tmp_path / "case.toml"
    case.write_text("schema = 1\n", "utf-8")
    assert call("record", case, "needle_flickers=70 %", "oil_milky=20 %").code == 0
    facts = load(case, BOOK).facts().observations
    assert facts[FLICKERS] == Observation(State.PRESENT, 0.7)
    assert facts[BOOK.findings["oil_milky"]] == Observation(State.ABSENT, 0.8)


# ------------------------------------------------------------------------ stages

VALUES = [
    ('learned = "told"', Stage.KNOWN),
    ('learned = "outside"', Stage.OUTSIDE),
    ('learned = "opened"', Stage.OPENED),
    ("", Stage.OPENED),  # a measured value comes from inside unless it says otherwise
]


@pytest.mark.parametrize(("learned", "stage"), VALUES)
def test_a_measured_value_counts_from_the_stage_it_was_learnt_at(
    learned: str, stage: Stage
) -> None:
    more = f", {learned}" if learned else ""
    case = case_of(f'finding: what = "main_clearance", value = "0.006 in"{more}')
    measure = BOOK.measures["main_clearance"]
    order = list(Stage)
    for up_to in Stage:
        known = order.index(stage) <= order.index(up_to)
        assert (measure in case.facts(up_to).measures) is known


@pytest.mark.parametrize("up_to", Stage)
def test_findings_and_readings_are_cut_in_the_same_way(up_to: Stage) -> None:
    learned = dict(zip(("told", "outside", "opened"), Stage, strict=True))
    words = ("needle_flickers", "oil_milky", "bearing_knock")
    entries = [
        seen("present", f', learned = "{w}"', what) for w, what in zip(learned, words, strict=True)
    ]
    entries += [
        f'reading: rpm = "{rpm} rpm", pressure = "20 psi", learned = "{w}"'
        for w, rpm in zip(learned, (700, 800, 900), strict=True)
    ]
    facts = case_of(*entries).facts(up_to)
    kept = list(Stage).index(up_to) + 1
    assert {f.id for f in facts.observations if f.kind is not Kind.LAYOUT} == set(words[:kept])
    assert [r.rpm for r in facts.readings] == [700, 800, 900][:kept]


def test_a_trusted_gauge_is_read_outside_and_a_panel_gauge_reported() -> None:
    read = 'reading: rpm = "700 rpm", pressure = "20 psi", gauge = "{}"'
    case = case_of(read.format("panel"), read.format("direct"))
    assert [r.stage for r in case.readings] == [Stage.KNOWN, Stage.OUTSIDE]


# ------------------------------------------------------------------------ several values, several days


def test_of_several_clearances_the_widest_is_asked_for() -> None:
    measure = BOOK.measures["main_clearance"]
    for values in permutations((4e-5, 9e-5, 6e-5)):
        memory = WorkingMemory(Facts(measures={measure: list(values)}))
        assert memory.measured(measure) == 9e-5
        assert memory.smallest(measure) == 4e-5


@pytest.mark.parametrize(
    ("thous", "state"),
    [((2.0, 6.5), State.PRESENT), ((6.5, 2.0), State.PRESENT), ((2.0, 2.1), State.ABSENT)],
)
def test_one_wide_bearing_among_good_ones_is_worn(thous: tuple[float, ...], state: State) -> None:
    """0.0065 in is past any published service limit of a main bearing of a car (0.0035 in)."""
    measure = BOOK.measures["main_clearance"]
    found = infer(BOOK.statements, Facts(measures={measure: [t * 2.54e-5 for t in thous]}))
    derived = {c.state for c in found.derived if c.finding.id == "main_clearance_too_wide"}
    assert derived == {state}


READ = 'reading: rpm = "700 rpm", oil = "90 C", pressure = "{} psi", gauge = "{}"{}'


@pytest.mark.parametrize(
    ("days", "together"),
    [
        (("", ""), True),
        ((", when = 2026-05-01", ", when = 2026-05-01"), True),
        ((", when = 2026-05-01", ", when = 2026-05-02"), False),
        ((", when = 2026-05-01T08:00:00", ", when = 2026-05-01T19:00:00"), True),
        ((", when = 2026-05-01T23:59:00", ", when = 2026-05-02T00:01:00"), False),
        ((", when = 2026-05-01", ""), True),  # the day of one is not known
    ],
)
def test_gauges_read_on_different_days_are_not_compared(
    days: tuple[str, str], together: bool
) -> None:
    """5 psi on the panel beside 30 on a trusted gauge: the panel gauge is wrong, if it was the same day."""
    case = case_of(READ.format(5, "panel", days[0]), READ.format(30, "direct", days[1]))
    answer = Diagnosis(BOOK, case)
    assert answer.may_run is together
    rules = {
        t.rule.id
        for c, t in answer.inference.result.derived.items()
        if c.finding.id == "second_instrument_disagrees" and c.state is State.PRESENT
    }
    assert ("panel_and_direct_gauge_side_by_side" in rules) is together


# ------------------------------------------------------------------------ closings


def test_a_job_closed_again_counts_as_closed_the_last_time(tmp_path: Path) -> None:
    path = tmp_path / "petrel.toml"
    path.write_text((ROOT / "cases" / "petrel.toml").read_text("utf-8"), "utf-8")
    words = ("close", path, "--how", "seen", "--reason", "laid up")
    assert call(*words, "--cause", "relief_debris", "--minutes", "95 min").code == 0
    first = load(path, BOOK).closed
    assert first is not None
    again = call(*words, "--cause", "pickup_tube_loose", "--minutes", "20 min")
    assert again.code == 0, again.err
    closed = load(path, BOOK).closed
    assert closed is not None
    assert closed.entry.no > first.entry.no
    assert [c.id for c in closed.causes] == ["pickup_tube_loose"]
    assert closed.minutes == pytest.approx(20.0)
    (job,) = read_shop(tmp_path, BOOK).jobs
    assert [c.id for c in job.causes] == ["pickup_tube_loose"], "and so the shop's history"
    assert job.minutes_spent == pytest.approx(20.0)


def test_a_withdrawn_closing_leaves_the_one_before() -> None:
    closed = 'closed: causes = ["{}"], how = "seen"'
    both = case_of(closed.format("relief_debris"), closed.format("pickup_tube_loose"))
    assert both.closed is not None
    assert both.closed.causes[0].id == "pickup_tube_loose"
    back = case_of(
        closed.format("relief_debris"),
        closed.format("pickup_tube_loose"),
        'closed: replaces = 2, state = "withdrawn"',
    )
    assert back.closed is not None
    assert back.closed.causes[0].id == "relief_debris"


# ------------------------------------------------------------------------ what must be open


def needed(tree: AccessTree, place: Access) -> set[Access]:
    """The place and what it needs, straight from the openings."""
    return {place}.union(*(needed(tree, n) for n in tree.openings[place].needs))


def test_a_sight_from_one_place_alone_means_that_place_is_open() -> None:
    """What several places can show leaves open which of them was opened."""
    plain = case_of(engine='layout = "distributor_v8"')
    tree = Diagnosis(BOOK, plain).planner.tree
    ways: dict[str, set[Access]] = {}
    for check in BOOK.inspections.values():
        for finding in check.reveals:
            ways.setdefault(finding.id, set()).add(check.access)
    inside = {f: w for f, w in ways.items() if BOOK.findings[f].stage is Stage.OPENED}
    several = {f: w for f, w in inside.items() if len(w) > 1}
    alone = {f: w for f, w in inside.items() if len(w) == 1}
    assert len(several) >= 10
    assert len(alone) >= 10
    for what in several:
        case = case_of(seen("present", what=what), engine='layout = "distributor_v8"')
        assert Diagnosis(BOOK, case).planner.opened == set(), what
    for what, (place,) in ((f, tuple(w)) for f, w in list(alone.items())[::5]):
        case = case_of(seen("absent", what=what), engine='layout = "distributor_v8"')
        expected = needed(tree, place) if place in tree.openings else set()
        assert Diagnosis(BOOK, case).planner.opened == expected, what


def test_reported_and_unknown_entries_open_nothing() -> None:
    what = next(
        f.id for f in BOOK.findings.values() if f.stage is Stage.OPENED and f.kind is Kind.SEEN
    )
    for entry in (seen("present", ', learned = "told"', what), seen("unknown", "", what)):
        case = case_of(entry, engine='layout = "distributor_v8"')
        assert Diagnosis(BOOK, case).planner.opened == set()


def test_an_engine_that_ran_has_been_closed_up() -> None:
    """Oil is back in and a filter on: both must be opened again, the rest stays as it was."""
    tree = Diagnosis(BOOK, case_of(engine='layout = "distributor_v8"')).planner.tree
    ran = next(i for i in BOOK.inspections.values() if i.needs_running)
    still = next(i for i in BOOK.inspections.values() if not i.needs_running)
    opened = frozenset({Access.OUTSIDE, Access.DRAINED, Access.FILTER_OFF, Access.VALVE_COVER_OFF})
    after = tree.after(ran, opened)
    assert not after & {Access.DRAINED, Access.FILTER_OFF}
    assert Access.VALVE_COVER_OFF in after
    assert opened <= tree.after(still, opened)


def test_closing_up_takes_four_fifths_of_opening() -> None:
    """Judgement of the project: bolts, gaskets and oil take nearly as long the other way round."""
    tree = Diagnosis(BOOK, case_of(engine='layout = "distributor_v8"')).planner.tree
    closed = AccessTree(tree.openings, PlanRequest(closed_up=True).pace)
    way = tree.way(Access.SUMP_OFF) or ()
    plain = sum(o.minutes_in_place for o in way)
    assert tree.opening_minutes(way) == pytest.approx(plain)
    assert closed.opening_minutes(way) == pytest.approx(1.8 * plain)
    cover = closed.covers(frozenset())[Access.SUMP_OFF].minutes
    assert cover == pytest.approx(1.8 * tree.covers(frozenset())[Access.SUMP_OFF].minutes)
