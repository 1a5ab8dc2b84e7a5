"""The interview as a library: which question comes next, and what each answer does to the case."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from diagnose.case.loading import load
from diagnose.case.schema import LONGEST
from diagnose.case.writing import append, start
from diagnose.entry.answers import Answer
from diagnose.entry.confirming import Correct, Strike
from diagnose.entry.interview import Interview, new_case_path
from diagnose.entry.numbers import SLOTS, Readings
from diagnose.entry.picking import Picked, Reply
from diagnose.entry.questions import (
    STORY,
    ChoiceQuestion,
    ConfirmQuestion,
    EngineQuestion,
    FindingQuestion,
    Kept,
    NumbersQuestion,
    Question,
    TrialQuestion,
    TriedQuestion,
    read_line,
)
from diagnose.entry.telling import Account
from diagnose.errors import CannotWriteError, UsageError
from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.pressure.patterns import GAUGE_READS_ZERO
from knowledge.questions.engines import ENGINE_KINDS
from knowledge.questions.essentials import GAUGE, GRADE, KNOCK, LEVEL, NOISE, SAFETY, SINCE, ZERO
from knowledge.units import PSI
from tests.support.engine_lines import only_its_engine

BOOK = the_book()
NUMBERS = NumbersQuestion(SLOTS)
ONE = ChoiceQuestion(LEVEL, LEVEL.choices)
MANY = ChoiceQuestion(NOISE, NOISE.choices)
V8 = "small block V8 truck, direct gauge shows 8 psi at hot idle, 40 at 2000 rpm"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "petrel.toml"


def answered(interview: Interview, *lines: str) -> Interview:
    """The interview after these lines, each of which answers its question."""
    for line in lines:
        assert interview.reply(line) is None, line
    return interview


def states(path: Path) -> dict[str, str | None]:
    return {s.finding.id: s.entry.state for s in load(path, BOOK).finding_records}


def account(text: str) -> Account:
    return Account(Path("x.toml"), text, read(text, BOOK), is_new=True)


# ------------------------------------------------------------------------- one line


@pytest.mark.parametrize(
    ("line", "meant"),
    [
        ("y", Answer("present")),
        ("Probably not", Answer("absent", 0.8)),
        ("", Answer("unknown")),
        ("d", Answer("unknown")),
        ("don’t know", Answer("unknown")),
        ("WHY", Reply.WHY),
        ("w", Reply.WHY),
        ("b", Reply.BACK),
        ("Stop here", Reply.STOP),
        ("quit", Reply.STOP),
        ("70 %", Reply.UNCLEAR),
        ("perhaps", Reply.UNCLEAR),
        ("y" * (LONGEST + 1), Reply.TOO_LONG),
    ],
    ids=lambda v: str(v)[:20],
)
def test_a_line_in_answer_to_a_finding(line: str, meant: Answer | Reply) -> None:
    assert read_line(FindingQuestion(GAUGE_READS_ZERO), line) == meant


@pytest.mark.parametrize(
    ("question", "line", "meant"),
    [
        (ONE, "1", Picked((0,))),
        (ONE, "1 2", Reply.UNCLEAR),
        (ONE, "d", Picked(None)),
        (ONE, "", Picked(None)),
        (ONE, "n", Reply.UNCLEAR),
        (ONE, "0", Reply.UNCLEAR),
        (ONE, "5", Reply.UNCLEAR),
        (ONE, "-1", Reply.UNCLEAR),
        (ONE, "00001", Reply.UNCLEAR),
        (ONE, "²", Reply.UNCLEAR),
        (ONE, "y", Reply.UNCLEAR),
        (ONE, "why", Reply.WHY),
        (ONE, "back", Reply.BACK),
        (MANY, "3, 2", Picked((2, 1))),
        (MANY, "2 2", Picked((1,))),
        (MANY, "none", Picked((5,))),
        (MANY, "1 6", Reply.UNCLEAR),  # another and none
        (EngineQuestion("?", ENGINE_KINDS), "n", Picked(None)),
        (EngineQuestion("?", ENGINE_KINDS), "2", Picked((1,))),
    ],
)
def test_a_line_in_answer_to_numbered_choices(
    question: Question, line: str, meant: Picked | Reply
) -> None:
    assert read_line(question, line) == meant


@pytest.mark.parametrize(
    ("line", "pressures"),
    [
        ("5 40 60", ["5 psi", "40 psi", "60 psi"]),
        ("5/40/60", ["5 psi", "40 psi", "60 psi"]),
        ("5psi, 40psi, 60psi", ["5 psi", "40 psi", "60 psi"]),
        ("0.4 2.8 4 bar", ["0.4 bar", "2.8 bar", "4 bar"]),
        ("- 40 -", ["40 psi"]),
        ("5 at idle", ["5 psi"]),
        ("5 psi hot idle, 60 cold", ["5 psi", "60 psi"]),
        ("d", []),
        ("", []),
        ("- - -", []),
        ("1", None),  # of three
        ("5 40 6000", None),  # no gauge shows it
        ("low", None),
    ],
)
def test_a_line_of_pressures(line: str, pressures: list[str] | None) -> None:
    meant = read_line(NUMBERS, line)
    if pressures is None:
        assert meant is Reply.UNCLEAR
    else:
        assert isinstance(meant, Readings)
        assert [r.pressure for r in meant.given] == pressures


def test_a_line_about_what_was_understood() -> None:
    told = account(V8)
    question = ConfirmQuestion(told)
    assert read_line(question, "") == Kept(told)
    assert read_line(question, "n") == Kept(None)
    assert read_line(question, "1 2") == Strike(frozenset({1, 2}))
    assert read_line(question, "2 = 9 psi") == Correct(2, "9 psi")
    assert read_line(question, "99") is Reply.UNCLEAR
    assert read_line(question, "back") is Reply.FIRST


@given(st.text(max_size=40))
def test_any_line_means_something(line: str) -> None:
    questions = (STORY, ONE, MANY, NUMBERS, ConfirmQuestion(account(V8)))
    for question in (*questions, FindingQuestion(GAUGE_READS_ZERO)):
        assert read_line(question, line) is not None


# ------------------------------------------------------------------------- the order


def test_the_order_of_the_questions(path: Path) -> None:
    """Safety, story, what is missing of the essentials, and then the questions by value."""
    interview = Interview.begin(path, BOOK, "Ann", most=2)
    assert not interview.resumed
    assert interview.next_question() == ChoiceQuestion(SAFETY, SAFETY.choices)
    answered(interview, "4")
    assert states(path) == {ZERO: "absent", KNOCK: "absent"}
    assert interview.next_question() is STORY
    answered(interview, "needle dances at idle")
    job = load(path, BOOK).job
    assert (job.complaint, job.by) == ("needle dances at idle", "Ann")
    assert isinstance(interview.next_question(), ConfirmQuestion)
    answered(interview, "")
    assert load(path, BOOK).behaviours
    asked = []
    for line in ("1", "1", "1", "1", "8", "10 40 60", "n", "1"):
        question = interview.next_question()
        asked.append(question.menu if isinstance(question, ChoiceQuestion) else type(question))
        answered(interview, line)
    engine = [EngineQuestion, EngineQuestion]
    assert asked == [*engine, LEVEL, GAUGE, SINCE, NumbersQuestion, NOISE, GRADE]
    case = load(path, BOOK)
    assert case.layout.id == "distributor_v8"
    assert [round(r.reading.pressure / PSI) for r in case.readings] == [10, 40, 60]
    for left in (2, 1):
        question = interview.next_question()
        assert getattr(question, "left", None) == left
        answered(interview, "d")
    assert interview.next_question() is None
    assert interview.reply("y") is Reply.STOP


def test_what_the_story_says_is_not_asked(path: Path) -> None:
    """Engine, gauge and two of the three readings are known from it."""
    interview = answered(Interview.begin(path, BOOK), "4", f"{V8}, oil level is fine", "")
    asked: list[Question] = []
    while (question := interview.next_question()) is not None and len(asked) < 5:
        asked.append(question)
        answered(interview, "d")
    assert not [q for q in asked if isinstance(q, EngineQuestion)]
    menus = [q.menu for q in asked if isinstance(q, ChoiceQuestion)]
    assert LEVEL not in menus
    assert GAUGE not in menus
    [numbers] = [q for q in asked if isinstance(q, NumbersQuestion)]
    assert [slot.id for slot in numbers.slots] == ["cold"]


def test_facts_can_be_struck_out_and_corrected(path: Path) -> None:
    interview = answered(Interview.begin(path, BOOK), "4", "V8, 8 psi at hot idle, oil is milky")
    assert interview.reply("2") is Reply.CHANGED
    assert interview.reply("1 = 12 psi") is Reply.CHANGED
    assert interview.reply("99") is Reply.UNCLEAR
    answered(interview, "")
    assert "oil_milky" not in states(path)
    assert [r.entry.pressure for r in load(path, BOOK).readings] == ["12 psi"]


def test_nothing_is_asked_of_the_pressure_where_there_never_is_any(path: Path) -> None:
    """No readings, no "good cold", no "low hot": the gauge always reads zero."""
    interview = answered(Interview.begin(path, BOOK, most=30), "1", "")
    refused = {"good_cold_low_hot", "low_hot_idle_good_speed", "capped_low", "falls_as_revs_rise"}
    while (question := interview.next_question()) is not None:
        assert not isinstance(question, NumbersQuestion)
        if isinstance(question, ChoiceQuestion):
            assert not refused.intersection(f for c in question.choices for f in c.there)
        if isinstance(question, FindingQuestion):
            assert question.finding.id not in refused
        answered(interview, "d")


def test_a_trial_is_asked_for_before_its_result(path: Path) -> None:
    interview = answered(Interview.begin(path, BOOK, most=40), "4", V8, "")
    while not isinstance(question := interview.next_question(), TriedQuestion):
        assert question is not None
        assert not isinstance(question, TrialQuestion)
        answered(interview, "d")
    first, second = question.trials[:2]
    answered(interview, "2 1")
    assert interview.next_question() == TrialQuestion(second, made=True)
    answered(interview, "s", "helped")
    made = {t.trial: t.result for t in load(path, BOOK).trials}
    assert (made[second], made[first]) == ("no difference", "helped")
    assert {made[t] for t in question.trials[2:]} <= {None}


def test_a_question_stays_until_it_is_answered(path: Path) -> None:
    interview = answered(Interview.begin(path, BOOK), "4", "")
    before = path.read_bytes()
    question = interview.next_question()
    for line, reply in (("why", Reply.WHY), ("perhaps", Reply.UNCLEAR), ("99", Reply.UNCLEAR)):
        assert interview.reply(line) is reply
        assert interview.next_question() == question
    assert path.read_bytes() == before


def test_back_asks_each_earlier_question_again(path: Path) -> None:
    interview = Interview.begin(path, BOOK)
    assert interview.reply("back") is Reply.FIRST
    answered(interview, "3", "", "d", "1")
    assert states(path)["level_correct"] == "present"
    assert interview.reply("back") is interview.reply("b") is Reply.BACK
    assert isinstance(interview.next_question(), EngineQuestion)
    assert interview.reply("back") is Reply.BACK
    assert interview.next_question() == ChoiceQuestion(SAFETY, SAFETY.choices)
    answered(interview, "1", "d")
    assert interview.next_question() == ChoiceQuestion(LEVEL, LEVEL.choices)
    answered(interview, "2")
    assert interview.next_question() == ChoiceQuestion(GAUGE, GAUGE.choices)
    now = states(path)
    assert (now[ZERO], now["dipstick_low"], now["level_correct"]) == (
        "present",
        "present",
        "absent",
    )
    assert KNOCK not in now, "what the first answer said is withdrawn"


def test_what_is_answered_in_the_case_is_not_asked(path: Path) -> None:
    start(path, BOOK, {"title": "x"}, {"layout": "distributor_v8"})
    known = ("level_correct", "electric_gauge", "oil_grade_as_manual", "freshly_rebuilt")
    append(path, BOOK, [("finding", {"what": f, "state": "present"}) for f in known])
    append(path, BOOK, [("finding", {"what": f, "state": "absent"}) for f in (ZERO, KNOCK)])
    interview = Interview.begin(path, BOOK, most=1)
    assert interview.resumed
    assert isinstance(interview.next_question(), NumbersQuestion)
    answered(interview, "d")
    answered(interview, "d")  # the plugs of the rebuild
    question = interview.next_question()
    assert isinstance(question, ChoiceQuestion)
    assert question.menu is NOISE
    assert KNOCK not in [f for c in question.choices for f in c.there]
    assert {interview.reply("back") for _ in range(3)} == {Reply.BACK}
    assert interview.next_question() == FindingQuestion(BOOK.findings[KNOCK])


# ------------------------------------------------------------------------- the edges


@pytest.mark.parametrize("lines", [[], ["4"], ["4", "low"], ["4", "low at hot idle", ""]])
def test_stopping_keeps_what_was_answered(path: Path, lines: list[str]) -> None:
    interview = answered(Interview.begin(path, BOOK), *lines)
    assert interview.reply("stop") is Reply.STOP
    assert interview.saved == path.exists() == bool(lines)
    if lines:
        assert states(path)[ZERO] == "absent"
    if len(lines) > 1:
        assert load(path, BOOK).job.complaint == lines[1]


def test_the_end_of_the_input_keeps_what_was_shown(path: Path) -> None:
    interview = answered(Interview.begin(path, BOOK), "4", "V8, 8 psi at hot idle")
    interview.finish()
    assert len(load(path, BOOK).readings) == 1


def test_an_interrupted_interview_goes_on(path: Path) -> None:
    """After the safety question alone the story is still asked for; after it, no more."""
    answered(Interview.begin(path, BOOK), "4")
    interview = Interview.begin(path, BOOK)
    assert interview.next_question() is STORY
    answered(interview, "")
    assert Interview.begin(path, BOOK).next_question() is not STORY


def test_alarms_come_once(path: Path) -> None:
    interview = answered(Interview.begin(path, BOOK), "1")
    assert interview.new_alarms()
    assert interview.new_alarms() == ()


def test_what_is_not_known_can_still_be_checked(path: Path) -> None:
    """ "Don't know" to the dipstick leaves the look at the dipstick to be done."""
    interview = answered(Interview.begin(path, BOOK), "4", "low oil pressure at hot idle", "", "d")
    assert interview.next_question() == ChoiceQuestion(LEVEL, LEVEL.choices)
    answered(interview, "d")
    level = BOOK.findings["level_correct"]
    diagnosis = interview.diagnosis()
    assert level in diagnosis.case.answered()
    assert level not in diagnosis.planner.answered


def test_an_interview_that_cannot_begin(tmp_path: Path) -> None:
    with pytest.raises(UsageError, match="is no name; at most 10,000"):
        Interview.begin(tmp_path / "x.toml", BOOK, by="x" * 10_001)
    with pytest.raises(UsageError, match="is no name"):
        Interview.begin(tmp_path / "x.toml", BOOK, by="\udcff")
    with pytest.raises(CannotWriteError, match="no such folder"):
        Interview.begin(tmp_path / "no" / "x.toml", BOOK)


def test_new_case_names(tmp_path: Path) -> None:
    first = new_case_path(tmp_path)
    first.touch()
    second = new_case_path(tmp_path)
    assert (first.name[-7:], second.name[-7:]) == ("-1.toml", "-2.toml")


LINES = st.lists(
    st.sampled_from(
        ["y", "n", "d", "", "why", "back", "1", "2", "3", "2 3", "5 40 60", "probably", "perhaps"]
    ),
    max_size=14,
)
STORIES = st.sampled_from(["", V8, "lamp in bends", "oil milky, knock", "3 psi hot idle new pump"])


@settings(
    deadline=None,
    max_examples=25,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(story=STORIES, lines=LINES)
def test_any_lines_leave_a_sound_case(tmp_path: Path, story: str, lines: list[str]) -> None:
    """What stood in the file stays its beginning, and an answer that says something is in it."""
    path = tmp_path / "x.toml"
    path.unlink(missing_ok=True)
    interview = answered(Interview.begin(path, BOOK, most=3), "4", story)
    before = path.read_bytes()
    for line in lines:
        question = interview.next_question()
        reply = interview.reply(line)
        after = path.read_bytes()
        assert after.startswith(before) or only_its_engine(before, after)
        unsaid = isinstance(question, NumbersQuestion | TriedQuestion) and line in ("d", "", "n")
        halfway = isinstance(question, ConfirmQuestion | EngineQuestion)
        assert reply is not None or unsaid or halfway or len(after) > len(before), (question, line)
        before = after
    load(path, BOOK)
