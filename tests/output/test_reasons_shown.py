"""What an answer says of itself: what counts as seen, what a check's outcomes mean, why it is first."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from pathlib import Path

import pytest

from diagnose.case.case import FindingRecord
from diagnose.case.loading import from_text, load
from diagnose.case.schema import FindingEntry
from diagnose.diagnosis import Diagnosis
from diagnose.inference.chaining import Observation
from diagnose.output.documents.next_checks import next_checks
from diagnose.output.documents.review import review_document
from diagnose.output.text.review_brief import review_brief
from knowledge.book import the_book
from knowledge.model import Finding, Stage, State
from tests.support.command_line import ROOT
from tests.support.complaints import OPEN, flat, path_of, plan, teardown
from tests.support.examples import one_in
from tests.support.reviews import next_step, review, review_data

BOOK = the_book()


# ------------------------------------------------------------------------ the layout is no observation


@pytest.mark.parametrize("layout", one_in(3, sorted(BOOK.layouts)))
def test_what_follows_from_the_layout_alone_is_no_observation(layout: str) -> None:
    """A part that is not there was not looked at: nothing has been seen yet."""
    answer = Diagnosis(BOOK, from_text(f'schema = 1\n[engine]\nlayout = "{layout}"\n', None, BOOK))
    assert answer.inference.evidence == {}
    assert "Nothing has been seen" in review(answer, "case.toml")
    for ranked in answer.ranking:
        assert ranked.probability == pytest.approx(ranked.prior, rel=1e-9)


def test_some_layouts_do_conclude_something() -> None:
    """Otherwise the test above would hold of any code."""
    derived = [
        name
        for name in BOOK.layouts
        if Diagnosis(
            BOOK, from_text(f'schema = 1\n[engine]\nlayout = "{name}"\n', None, BOOK)
        ).inference.result.derived
    ]
    assert len(derived) >= 3


# ------------------------------------------------------------------------ outcomes


def supposing(answer: Diagnosis, reports: dict[Finding, State]) -> dict[str, float]:
    """The probability of each cause, with these findings written into the case as well."""
    more = tuple(
        FindingRecord(
            FindingEntry(no=900_000 + i, what=f.id, state=s.value),
            f,
            Observation(s),
            Stage.KNOWN,
        )
        for i, (f, s) in enumerate(reports.items())
    )
    case = replace(answer.case, finding_records=(*answer.case.finding_records, *more))
    network, evidence = answer.inference.network, answer.inference.evidence
    then = Diagnosis(BOOK, case)
    assert then.inference.network == network, "the answer to a check changes no link here"
    assert set(evidence) <= set(then.inference.evidence)
    return {r.cause.id: r.probability for r in then.ranking}


@pytest.mark.parametrize("name", ["heron", "plover", "knot", "dunlin_begun"])
def test_each_outcome_names_the_likeliest_cause(name: str) -> None:
    """As if the outcome had been written into the case and the case reviewed again."""
    answer = Diagnosis(BOOK, load(path_of(name), BOOK))
    assert answer.next_check is not None
    step = answer.next_check.option
    found = answer.planner.outcomes(step)
    assert len(found) >= 2
    for outcome in found:
        reports = (
            {outcome.finding: State.PRESENT}
            if outcome.finding
            else dict.fromkeys(step.findings, State.ABSENT)
        )
        after = supposing(answer, reports)
        best = max(after.values())
        assert outcome.leads_with == pytest.approx(best, abs=0.02)
        assert after[outcome.leads.id] == pytest.approx(best, abs=0.02)
        assert outcome.leads_with > min(after.values()) + 0.01
    text = flat("\n".join(next_step(answer, "case.toml")))
    for outcome in found:
        assert f"then {outcome.leads.says} leads, " in text


def test_the_probabilities_of_one_questions_answers_add_up() -> None:
    answer = Diagnosis(BOOK, load(path_of("heron"), BOOK))
    assert answer.next_check is not None
    for finding in answer.next_check.option.findings[:3]:
        both = answer.planner.either_way(finding)
        assert sum(o.probability for o in both.values()) == pytest.approx(1.0, abs=1e-6)
        yes = supposing(answer, {finding: State.PRESENT})
        assert yes[both["yes"].leads.id] == pytest.approx(max(yes.values()), abs=0.02)


# ------------------------------------------------------------------------ why a look comes first


def test_why_a_check_comes_first_is_in_the_review() -> None:
    answer = Diagnosis(BOOK, load(path_of("heron"), BOOK))
    assert answer.next_check is not None
    why = "the drain carries it away"
    other, planner = replace(answer), replace(answer.planner)
    vars(planner)["choice"] = replace(answer.next_check, evidence=why)
    vars(other)["planner"] = planner
    assert f"first, because {why}" in flat("\n".join(next_step(other, "case.toml")))
    assert review_data(other)["next"][0]["evidence"] == why
    vars(planner)["choice"] = replace(answer.next_check, evidence="")
    assert "first, because" not in "\n".join(next_step(other, "case.toml"))


@pytest.mark.parametrize(
    ("names", "least"), [(list(OPEN)[::3], 3), pytest.param(list(OPEN), 10, marks=pytest.mark.long)]
)
def test_why_a_check_comes_first_is_in_the_plan(names: list[str], least: int) -> None:
    """A reason of the book, on the screen and in the data, at the check it belongs to."""
    from knowledge.access.precedence import BEFORE, FIRST_OF
    from knowledge.access.together import TOGETHER

    reasons = {b.why for b in BEFORE} | {f.why for f in FIRST_OF} | {t.why for t in TOGETHER}
    looks = 0
    for name in names:
        text = flat(teardown(name, "--until", "confident=0.99").out)
        for stage in plan(name, "--until", "confident=0.99")["stages"]:
            for check in stage["checks"]:
                if why := check["evidence"]:
                    looks += 1
                    assert why.partition("; then ")[0] in reasons  # then what it is on the way to
                    said = rf"\[{check['inspection']}\] first, because {re.escape(flat(why))}"
                    assert re.search(said, text), f"{name}: {check['inspection']}"
    assert looks >= least


# ------------------------------------------------------------------------ the answer as data and as text


@pytest.mark.parametrize("name", ["petrel", "turnstone", "winch"])
def test_text_and_data_of_a_review_agree(name: str) -> None:
    """The same causes in the same order, the same alarms, the same next check."""
    answer = Diagnosis(BOOK, load(Path(ROOT / "cases" / f"{name}.toml"), BOOK))
    data, text = json.loads(json.dumps(review_data(answer))), review(answer, "case.toml")
    shown = re.findall(r" \d+\. [<>]? ?\d+ % likely .*?\[(\w+)\]", flat(text))
    ids = [c["id"] for c in data["causes"]]
    assert len(shown) == 5
    assert shown == ids[: len(shown)]
    for alarm in data["alarms"]:
        assert f"{alarm['severity'].upper()}: {alarm['says']}" in flat(text)
    for said in data["contradictions"]:
        assert said["says"] in flat(text)
    if data["next"]:
        assert f"[{data['next'][0]['inspection']}]" in flat(text)


# ------------------------------------------------------------------------ a fault that an outcome proves

REBUILT_TRACTOR = """schema = 1
[engine]
layout = "tractor_diesel"

[[finding]]
no = 1
what = "freshly_rebuilt"
state = "present"

[[finding]]
no = 8
what = "relief_cap_loose_or_leaking"
state = "absent"

[[behaviour]]
no = 2
shows = "low"
since = "first start"

[[earlier]]
no = 5
what = "whole_engine"
done = "rebuilt"
before = "straight before"

[[earlier]]
no = 6
what = "oil_pump"
done = "renewed"

[[reading]]
no = 3
pressure = "5 psi"
rpm = "idle"

[[reading]]
no = 4
pressure = "15 psi"
oil = "cold"

[[reading]]
no = 7
pressure = "12 psi"
rpm = "full speed"
oil = "hot"
"""


def test_a_low_level_is_named_before_a_leak_that_does_not_make_it() -> None:
    """A joint that leaks into the sump leads before and after a look at the stick."""
    answer = Diagnosis(BOOK, from_text(REBUILT_TRACTOR, None, BOOK))
    assert answer.ranking[0].cause.id == "pump_mount_leak"
    outcomes = {o.finding: o for o in next_checks(answer)[0].outcomes or ()}
    low = outcomes["dipstick_low"]
    assert low.leads == "pump_mount_leak"
    assert low.found_says == "there is too little oil in the engine; then "
    assert low.leads_with < 0.4, "oil in the sump does not make this leak much likelier"
    said = review_brief(review_document(answer, "case.toml"))
    assert "if the oil is below the add mark: there is too little oil in the engine; then" in said


def test_a_fault_is_not_named_before_the_cause_that_made_it() -> None:
    answer = Diagnosis(BOOK, load(path_of("plover"), BOOK))
    found = [o for o in next_checks(answer)[0].outcomes or () if o.finding]
    proved = [
        f for f in BOOK.faults.values() for o in found if o.finding in {p.id for p in f.proofs}
    ]
    assert proved, "one of its outcomes proves a fault"
    assert not any(o.found_says for o in found)
