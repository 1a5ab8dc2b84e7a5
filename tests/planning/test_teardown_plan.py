"""Teardown plans as a whole: in order on any layout, reproducible, safe and quick."""

from __future__ import annotations

import random
from collections.abc import Mapping
from functools import cache

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.errors import OutOfScopeError
from diagnose.output.documents.teardown import teardown_document
from diagnose.output.text.teardown import teardown_text
from diagnose.planning.access_tree import AccessTree
from diagnose.planning.sequence import PlannedCheck
from diagnose.planning.simulation import simulate
from diagnose.teardown.loose_ends import follow_up, loose_ends
from diagnose.teardown.plan import Plan, PlanRequest
from knowledge.access import Opening, openings_for
from knowledge.access.always_recorded import KEPT
from knowledge.access.precedence import BEFORE, FIRST_OF
from knowledge.book import the_book
from knowledge.model import Finding, Kind, Stage, State
from knowledge.stations.instrument.findings_direct_gauge import FIT_A_DIRECT_GAUGE
from knowledge.work import Access, Inspection, Phase
from tests.confirmed.scoring import case_files
from tests.studies import plan_study
from tests.studies.plan_confirmed import complaint_of, planned
from tests.support.examples import examples, one_in

BOOK = the_book()
LAYOUTS = sorted(BOOK.layouts)
COMPLAINTS = sorted(
    f.id for f in BOOK.findings.values() if f.kind is Kind.SEEN and f.stage is not Stage.OPENED
)


def answer_to(layout: str, present: list[str], absent: list[str] = []) -> Diagnosis:  # noqa: B006
    entries = [(p, "present") for p in present] + [
        (a, "absent") for a in absent if a not in present
    ]
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n' + "".join(
        f'[[finding]]\nno = {i}\nwhat = "{what}"\nstate = "{state}"\n'
        for i, (what, state) in enumerate(entries, 1)
    )
    return Diagnosis(BOOK, from_text(text, None, BOOK))


def in_words(plan: Plan) -> str:
    ends = loose_ends(plan.answer, 0.9)
    return teardown_text(teardown_document(plan, ends, "x.toml"))


WISHES = st.builds(
    PlanRequest,
    until=st.sampled_from([0.7, 0.9, 0.97]),
    minutes=st.sampled_from([None, 30.0, 120.0, 400.0]),
    on_stand=st.booleans(),
    closed_up=st.booleans(),
    first_time=st.booleans(),
)


@settings(max_examples=examples(40), deadline=None)
@given(
    st.sampled_from(LAYOUTS),
    st.lists(st.sampled_from(COMPLAINTS), max_size=4, unique=True),
    WISHES,
)
def test_nothing_is_ever_out_of_order(layout: str, present: list[str], asked: PlanRequest) -> None:
    """Access, evidence that would be lost, running before opening: in any plan, on any layout."""
    plan = Plan(answer_to(layout, present), asked)
    assert_in_order(plan)


@pytest.mark.parametrize("layout", one_in(4, LAYOUTS))
def test_nothing_is_out_of_order_on_each_layout(layout: str) -> None:
    assert_in_order(Plan(answer_to(layout, ["gauge_reads_low"])))


#: places that may stand open while the engine runs; of the others these are closed to run it
RUNS_OPEN = {"outside", "gauge_port", "oil_sample", "valve_cover_off"}
CLOSED_TO_RUN = {"drained", "filter_off"}  #: oil goes back in, a filter goes on


def needed(openings: Mapping[Access, Opening], place: Access) -> set[Access]:
    """The place and everything that must be open for it, straight from the book's openings."""
    return {place}.union(*(needed(openings, n) for n in openings[place].needs))


def assert_in_order(plan: Plan) -> None:
    """Go through the plan as a mechanic would, with the book's openings and precedences alone.

    Nothing of the planner is asked: what is open, and what may be done then, is worked out here.
    """
    features = {f for f, s in plan.answer.case.features.items() if s is State.PRESENT}
    openings = openings_for(lambda f: f in features)
    derived = {d.finding for d in plan.answer.inference.result.derived}
    known = plan.answer.case.answered() | derived  # then what shows it need not come first for it
    opened: set[Access] = set()
    for sighting in plan.answer.case.finding_records:
        ways = {i.access for i in BOOK.inspections.values() if sighting.finding in i.reveals}
        if sighting.stage is Stage.OPENED and sighting.observation and len(ways) == 1:
            opened |= needed(openings, *ways)
    done: list[Inspection] = []
    minutes = 0.0
    for link in plan.line:
        check, way = link.choice.option.inspection, link.choice.option.way
        wanted = needed(openings, check.access)
        assert {o.access for o in way} == wanted - opened, "just what is not open yet"
        for opening in way:
            assert set(openings[opening.access].needs) <= opened, f"{opening.access} too early"
            opened.add(opening.access)
        for line in BEFORE:
            binds = not features & set(line.not_with) and not known & set(line.only_for)
            if line.check is check and line.spoilt and binds:
                assert line.opening not in opened, f"{check.id} after {line.opening}"
        assert check not in done, "nothing is done twice"
        if check.needs_running:
            with_gauge = check is FIT_A_DIRECT_GAUGE and plan.answer.gauge_next
            assert plan.answer.may_run or with_gauge, check.id
            assert not plan.request.on_stand
            assert {a for a in opened if a.value not in RUNS_OPEN} <= wanted
            opened = {a for a in opened if a.value not in CLOSED_TO_RUN}
        done.append(check)
        minutes += link.choice.option.minutes
    if plan.request.minutes is not None:
        assert minutes <= plan.request.minutes + 1e-9
    place = {check: i for i, check in enumerate(done)}
    for rule in FIRST_OF:
        if rule.check in KEPT and rule.check in place and not known & set(rule.only_for):
            later = [t for t in rule.then if t in place]
            assert all(place[t] > place[rule.check] for t in later), f"{rule.check.id} comes first"


@pytest.mark.parametrize("name", one_in(2, ["distributor_v8", "tractor_diesel", "unknown"]))
def test_the_same_case_gives_the_same_plan(name: str) -> None:
    """The order in which findings are entered does not change the plan."""

    def text(*present: str) -> str:
        plan = Plan(answer_to(name, list(present)))
        return in_words(plan)

    told_so = text("gauge_reads_low", "bearing_knock")
    assert told_so == text("gauge_reads_low", "bearing_knock")
    again = text("bearing_knock", "gauge_reads_low")
    assert [line for line in told_so.splitlines() if "Stage" in line] == [
        line for line in again.splitlines() if "Stage" in line
    ]


def test_looks_that_are_lost_come_before_the_opening_that_loses_them() -> None:
    """Before the sump comes off its contents are caught; before a drain the dipstick is read."""
    plan = Plan(answer_to("distributor_v8", ["gauge_reads_low", "bearing_knock"]))
    done = [link.choice.option.inspection.id for link in plan.line]
    at_sump = [i for i, link in enumerate(plan.line) if link.choice.option.way and any(
        o.access is Access.SUMP_OFF for o in link.choice.option.way)]  # fmt: skip
    assert at_sump, "this complaint leads into the sump"
    assert done[at_sump[0]] == "catch_sump_contents"
    assert "read_the_stick" in done[: at_sump[0]]


# ---------------------------------------------------------------------------------- the figures


def test_a_simulation_of_a_decisive_check() -> None:
    """One check, two causes, a sign that only one of them shows: by hand."""
    answer = answer_to("distributor_v8", ["gauge_reads_low"])
    plan = Plan(answer)
    first: PlannedCheck = plan.line[0]
    table = answer.planner.single_cause_model
    sure = np.zeros_like(table.weight)
    sure[0] = 1.0
    settled = simulate(plan.line[:1], table, sure, 0.9)
    assert settled.found == 1.0
    assert settled.found_by == (1.0,)
    assert settled.right == 1.0
    assert settled.expected == pytest.approx(first.choice.option.minutes)
    nothing = simulate((), table, table.weight, 0.9)
    assert (nothing.found, nothing.expected) == (0.0, 0.0)


@pytest.mark.parametrize("seed", one_in(3, range(3)))
def test_a_simulation_is_calibrated(seed: int) -> None:
    """Who stops at nine in ten is right about nine times in ten, in the model it was drawn from."""
    rng = random.Random(seed)
    right, found = 0.0, 0.0
    for _ in range(8):
        layout = rng.choice([name for name in LAYOUTS if name != "unknown"])
        plan = Plan(answer_to(layout, ["gauge_reads_low", *rng.sample(COMPLAINTS, 1)]))
        if plan.line:
            right += plan.estimate.right * plan.estimate.found
            found += plan.estimate.found
    assert right / found >= 0.87


def test_wishes_bite() -> None:
    answer = answer_to("distributor_v8", ["gauge_reads_low"])
    plain, stand = Plan(answer), Plan(answer, PlanRequest(on_stand=True))
    slow, closing = (
        Plan(answer, PlanRequest(first_time=True)),
        Plan(answer, PlanRequest(closed_up=True)),
    )
    assert stand.chooser.tree.minutes(Access.SUMP_OFF) < plain.chooser.tree.minutes(Access.SUMP_OFF)
    assert slow.chooser.tree.minutes(Access.SUMP_OFF) == pytest.approx(
        1.5 * plain.chooser.tree.minutes(Access.SUMP_OFF)
    )
    way = plain.chooser.tree.way(Access.CAP_OFF) or ()
    assert closing.chooser.tree.opening_minutes(way) > plain.chooser.tree.opening_minutes(way)
    assert Plan(answer, PlanRequest(until=0.7)).estimate.found >= plain.estimate.found


@cache
def small_study(factor: float) -> plan_study.Result:
    return plan_study.study(45, factor, workers=1, says=False)


@pytest.mark.long
@pytest.mark.parametrize("factor", [1.0, 2.0], ids=["from the book", "every number off by two"])
def test_beside_the_printed_tables(factor: float) -> None:
    """Few jobs, so beside the middling printed table; ``python -m tests.studies.plan_study`` for the best."""
    result = small_study(factor)
    tables = [
        result.mean(name) for name in result.minutes if name in map(str, plan_study.low_tables())
    ]
    assert result.mean(plan_study.PLAN) <= 0.6 * float(np.median(tables))
    assert result.mean(plan_study.PLAN) <= 0.6 * result.mean(plan_study.CHEAPEST)
    assert result.mean(plan_study.PLAN) <= 0.6 * result.mean(plan_study.STRIP)


@pytest.mark.long
@pytest.mark.parametrize("factor", [1.0, 2.0], ids=["from the book", "every number off by two"])
def test_beside_the_printed_tables_at_length(factor: float) -> None:
    result = plan_study.study(2000, factor, says=False)
    assert result.mean(plan_study.PLAN) <= 0.6 * result.mean(result.best_table())
    ninety = {n: float(np.percentile(m, 90)) for n, m in result.minutes.items()}
    assert ninety[plan_study.PLAN] <= 0.8 * ninety[result.best_table()]


def test_real_cases_are_looked_at_early() -> None:
    """From the complaint alone two in five of the confirmed causes are shown by one of five checks."""
    cases = [t for t in map(complaint_of, case_files()[::3]) if t is not None]
    first = [bool(t.right & set(planned(t, 5))) for t in cases]
    assert np.mean(first) >= 0.4


# ------------------------------------------------------------------------------- before closing


def test_debris_must_be_followed_and_can_be_ticked_off() -> None:
    path = next(p for p in CASES if p.stem == "winch")
    answer = Diagnosis(BOOK, load(path, BOOK))
    due = follow_up(answer)
    assert due
    assert all(d.task.phase is Phase.CLEANING and d.open for d in due)
    found = {s.finding for s in answer.case.finding_records if s.observation}
    assert all(set(d.because) <= found | {*answer.case.facts().observations} for d in due)
    text = path.read_text("utf-8")
    number = answer.case.last_number + 1
    done = f'\n[[work]]\nno = {number}\nwhat = "{due[0].task.id}"\nstate = "done"\n'
    after = Diagnosis(BOOK, from_text(text + done, None, BOOK))
    assert [d.task for d in follow_up(after) if d.open] == [d.task for d in due[1:]]
    failed = done.replace('"done"', '"failed"')
    still = Diagnosis(BOOK, from_text(text + failed, None, BOOK))
    assert len([d for d in follow_up(still) if d.open]) == len(due)


CASES = sorted((case_files()[0].parents[3] / "cases").glob("*.toml"))


def test_a_case_without_debris_has_nothing_to_follow() -> None:
    assert follow_up(answer_to("distributor_v8", ["gauge_reads_low"])) == ()


def test_likely_is_not_seen() -> None:
    """A reported finding is not a seen one: the plan names the check that would show it."""
    entry = '[[finding]]\nno = {}\nwhat = "{}"\nstate = "present"\nlearned = "{}"\n'
    signs = ("rotor_still_when_cranked", "gauge_reads_zero", "fell_suddenly")

    def plan(learned: str) -> Plan:
        text = 'schema = 1\n[engine]\nlayout = "distributor_v8_solid"\n'
        text += "".join(entry.format(i, sign, learned) for i, sign in enumerate(signs, 1))
        return Plan(Diagnosis(BOOK, from_text(text, None, BOOK)))

    known, seen = plan("told"), plan("outside")
    assert known.settled
    assert seen.settled
    assert not known.confirmed
    first = known.line[0].choice.option.inspection.id
    assert first == "look_down_the_drive", "the look that shows the part itself"
    assert seen.confirmed
    assert not seen.line
    assert "not seen yet" in in_words(known)
    assert "You may stop here" in in_words(seen)


@pytest.mark.parametrize(
    "words",
    ['[job]\ntitle = "Light aircraft, pressure low"', "[engine]\naircraft = true",
     '[engine]\nname = "aero-engine of a helicopter"'],
)  # fmt: skip
def test_an_aircraft_engine_is_refused(words: str) -> None:
    with pytest.raises(OutOfScopeError, match="licensed"):
        from_text(f"schema = 1\n{words}\n", None, BOOK)


def test_a_boat_that_serves_aircraft_is_not() -> None:
    text = 'schema = 1\n[job]\ntitle = "Seaplane and aircraft tender"\n[engine]\naircraft = false\n'
    assert from_text(text, None, BOOK).engine.aircraft is False


def test_findings_do_not_change_features() -> None:
    """The access tree of a case follows the features entered, not what has been seen."""
    answer = answer_to("distributor_v8", ["gauge_reads_low"])
    told_features: set[Finding] = {f for f, s in answer.case.features.items() if s is State.PRESENT}
    assert answer.planner.chooser().precedence.features == told_features
    assert isinstance(answer.planner.tree, AccessTree)
