"""What ``ask`` asks: nothing twice, nothing known, nothing presumed; and three stories typed in."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from diagnose.entry.agenda import IN_VAIN, key_of
from diagnose.entry.interview import Interview
from diagnose.entry.known import Known
from diagnose.entry.questions import (
    CheckQuestion,
    ChoiceQuestion,
    ConfirmQuestion,
    EngineQuestion,
    FindingQuestion,
    Question,
    TextQuestion,
)
from diagnose.output.documents.interview import BestGuess
from diagnose.output.text.interview import guess_lines
from knowledge.book import the_book
from knowledge.model import Kind, Stage, State
from knowledge.questions.engines import ENGINE_KINDS
from knowledge.questions.essentials import ESSENTIALS, SAFETY
from knowledge.questions.first_steps import ASKED_BY_WORD, FIRST_STEPS
from knowledge.questions.groups import GROUPS
from knowledge.questions.premises import PREMISES
from tests.confirmed.scoring import FIRST, case_files
from tests.studies.interview import BEFORE, cases, figures, talks
from tests.support.command_line import Done, call, in_eighty_columns
from tests.support.examples import one_in
from tests.support.owner import Owner, presumes

BOOK = the_book()
MENUS = (SAFETY, *ESSENTIALS, *GROUPS)


def asked_of(question: Question) -> list[str]:
    """The findings a question asks for, by id."""
    match question:
        case FindingQuestion():
            return [question.finding.id]
        case ChoiceQuestion():
            return [f for c in question.choices for f in c.there]
        case CheckQuestion():
            return [f.id for f in question.findings]
    return []


def watched(interview: Interview, most: int = 40) -> Iterator[Question]:
    """The questions of an interview while it is answered; each is checked as it comes."""
    seen: set[object] = set()
    for _ in range(most):
        question = interview.next_question()
        if question is None:
            return
        if not isinstance(question, ConfirmQuestion | TextQuestion | EngineQuestion):
            key = key_of(question)
            assert key not in seen, f"asked twice: {question}"
            seen.add(key)
        assert not presumes(question, interview), question
        asked = asked_of(question)
        assert not [f for f in asked if BOOK.findings[f].stage is Stage.OPENED], question
        if isinstance(question, FindingQuestion):
            assert question.finding.kind is Kind.SEEN
        if interview.saved:
            known = Known.of(interview.diagnosis())
            assert not [f for f in asked if f in known.states], question
        yield question


# ------------------------------------------------------------------------- the knowledge


def test_every_name_is_one_of_the_book() -> None:
    named = {f for m in MENUS for f in m.findings}
    named |= PREMISES.keys() | {f for p in PREMISES.values() for g in p.needs for f in g}
    named |= {f for p in PREMISES.values() for f in p.unless}
    named |= {f for s in FIRST_STEPS for f in (*s.when, *s.unless)}
    named |= {f for kind in ENGINE_KINDS for f in kind.has}
    assert named <= BOOK.findings.keys()
    assert {id_ for kind in ENGINE_KINDS for id_, _ in kind.layouts} == BOOK.layouts.keys() - {
        "unknown"
    }
    assert BOOK.inspections.keys() >= ASKED_BY_WORD


def test_no_choice_is_inside_the_engine_or_a_trial() -> None:
    for menu in MENUS:
        findings = [BOOK.findings[f] for f in menu.findings]
        assert not [f for f in findings if f.stage is Stage.OPENED or f in BOOK.shown_by_trial]
        assert len(menu.choices) <= 9, "one digit each"
        assert sum(not c.there for c in menu.choices) <= 1, "one choice says that none is true"


def test_no_finding_is_in_two_menus_but_the_knock() -> None:
    listed = [f for m in MENUS for f in {f for c in m.choices for f in c.there}]
    assert {f for f in listed if listed.count(f) > 1} == {"bearing_knock"}


def test_a_question_that_presumes_waits_for_its_premise() -> None:
    asks = Known({}, frozenset()).open
    assert not asks("low_from_first_start")
    assert not asks("turbo_shrieks")
    present = {"freshly_rebuilt": State.PRESENT, "gauge_reads_low": State.PRESENT}
    assert Known(present, frozenset()).open("low_from_first_start")
    zero = {**present, "gauge_reads_zero": State.PRESENT}
    assert Known(present, frozenset()).open("good_cold_low_hot")
    assert not Known(zero, frozenset()).open("good_cold_low_hot")


# ------------------------------------------------------------------------- the owner


@pytest.mark.parametrize("tells", [True, False], ids=["story", "no story"])
@pytest.mark.parametrize("path", one_in(3, case_files(FIRST)[::9]), ids=lambda p: p.stem)
def test_an_owner_is_asked_nothing_in_vain(tmp_path: Path, path: Path, tells: bool) -> None:
    interview = Interview.begin(tmp_path / "x.toml", BOOK, most=20)
    owner = Owner(path, tells)
    asked = 0
    for question in watched(interview):
        assert interview.reply(owner.answer(question)) is None
        asked += 1
    assert asked > 5


@pytest.mark.parametrize("name", ["A09", "B02", "B36"])
def test_the_questions_of_a_case_are_open_and_need_no_spanner(tmp_path: Path, name: str) -> None:
    """Whatever the file holds, what was seen inside included; "don't know" to everything."""
    path = tmp_path / "x.toml"
    [coded] = [p for p in case_files(FIRST) if p.stem == name]
    path.write_bytes(coded.read_bytes())
    interview = Interview.begin(path, BOOK, most=15)
    for _ in watched(interview):
        assert interview.reply("d") is None


@pytest.mark.parametrize("story", ["V8 knocks, 5 psi hot idle", "zero pressure since rebuild"])
def test_no_more_is_asked_where_nothing_changes(tmp_path: Path, story: str) -> None:
    """After some answers in a row that change neither the likeliest cause nor the next check."""
    interview = Interview.begin(tmp_path / "x.toml", BOOK, most=20)
    by_value = []
    for question in watched(interview):
        first = {TextQuestion: story, ConfirmQuestion: ""}.get(type(question), "d")
        assert interview.reply(first) is None
        if getattr(question, "left", None) is not None:
            by_value.append(question)
    assert interview.ended.startswith("More questions would not change")
    assert len(by_value) <= IN_VAIN


@pytest.mark.long
def test_the_study_prints_what_it_measured() -> None:
    """A few cases: hits do not fall with more prompts, nothing presumes, facts are obtained."""
    within = figures(talks(cases("developed")[::40], tells=True))
    assert list(within[:4]) == sorted(within[:4])
    assert within[5] > 0.3
    assert within[6] == 0
    assert len(within) == len(BEFORE["developed", True])


WORDS = st.sampled_from(["d", "1", "2", "3", "y", "n", "1 2", "5 40 60", "", "s"])
STORIES = st.sampled_from(
    [
        "",
        "V8 knocks, 5 psi hot idle",
        "yacht diesel, lamp on in bends",
        "zero pressure since rebuild",
    ]
)


@settings(
    deadline=None,
    max_examples=8,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(
    story=STORIES, safety=st.sampled_from("1234"), words=st.lists(WORDS, min_size=8, max_size=18)
)
def test_whatever_is_answered_the_next_question_makes_sense(
    tmp_path: Path, story: str, safety: str, words: list[str]
) -> None:
    path = tmp_path / "x.toml"
    path.unlink(missing_ok=True)
    interview = Interview.begin(path, BOOK, most=6)
    lines = iter(words)
    for question in watched(interview):
        first = {TextQuestion: story, ConfirmQuestion: ""}.get(type(question))
        if isinstance(question, ChoiceQuestion) and question.menu is SAFETY:
            first = safety
        line = next(lines, "stop") if first is None else first
        if line == "stop":
            return
        if interview.reply(line) is not None:
            assert interview.reply("d") is None


# ------------------------------------------------------------------------- three stories

A = "V8, gauge wavers at hot idle. Metal under the relief ball, pump cover scored, bearings wiped"
B = "oil lamp comes on in bends only, on the straight it is fine. petrol four in a small car"
C = "fresh rebuild of a V8, 18 psi at hot idle, low from the first start, pump and bearings new"


def asked(path: Path, *lines: str) -> Done:
    done = call("ask", path, answers="\n".join([*lines, ""]))
    assert done.code == 0, done
    in_eighty_columns(done.err)
    in_eighty_columns(done.out)
    return done


def test_story_of_metal_under_the_relief_ball(tmp_path: Path) -> None:
    """The guess goes by what was found; nobody asks whether a stiffer spring helped."""
    done = asked(tmp_path / "a.toml", "4", A, "", *["d"] * 12)
    guess = done.err[done.err.index("Best guess so far") :]
    assert "debris under the relief valve" in guess[:80]
    assert "stiffer spring" not in done.err.partition("Which of these have been tried")[0]


def test_story_of_the_lamp_in_bends(tmp_path: Path) -> None:
    """Three prompts in, it says to fill to the full mark and repeat the bend."""
    done = asked(tmp_path / "b.toml", "4", B, "")
    said = " ".join(done.err.split())
    assert "First: fill to the full mark on level ground, then repeat the bend" in said
    assert said.count("Best guess so far") == 1
    for never in ("steady revs", "needle", "key on"):
        assert never not in said


def test_story_of_a_fresh_rebuild(tmp_path: Path) -> None:
    """Level and readings are asked for, pieces in the pump are not."""
    done = asked(tmp_path / "c.toml", "4", C, "", "1", "1", "40 60", "1", "1", *["d"] * 12)
    said = " ".join(done.err.split())
    assert "How high does the oil stand on the dipstick?" in said
    assert "What did the gauge show at 2000 rpm hot and a cold start?" in said
    assert "hot idle, 2000 rpm" not in said
    assert "What happened just before" not in said
    assert "did every gallery and crank plug go back in?" in said
    for never in ("pieces of bearing", "in the oil pump?", "What kind of engine is it?"):
        assert never not in said


def test_an_answer_that_moves_no_guess_says_what_it_did() -> None:
    """The cause whose per cent moved most is named, up or down; hardly any is none."""
    before = BestGuess(says="a", probability=0.3, first="look", shares={"a": 0.3, "b": 0.12})
    less = replace(before, shares={"a": 0.31, "b": 0.05})
    assert guess_lines(less, before) == [
        "Best guess and first step as before (30 %). Less likely now: b (12 %, now 5 %)."
    ]
    more = replace(before, shares={"a": 0.3, "b": 0.2})
    assert "Likelier now: b (12 %, now 20 %)." in " ".join(guess_lines(more, before))
    same = replace(before, shares={"a": 0.31, "b": 0.115})
    assert guess_lines(same, before) == ["Best guess and first step as before (30 %)."]
