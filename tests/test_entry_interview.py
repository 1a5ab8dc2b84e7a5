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
from diagnose.entry.interview import URGENT, Interview, new_case_path
from diagnose.entry.questions import (
    COMPLAINT,
    TITLE,
    FindingQuestion,
    MenuQuestion,
    Reply,
    read_line,
)
from diagnose.errors import CannotWriteError, UsageError
from knowledge.book import the_book
from knowledge.model import Kind
from knowledge.pressure.patterns import GAUGE_READS_ZERO

BOOK = the_book()
KNOCK = URGENT[1]
MENU = MenuQuestion(
    about="history",
    title="Which?",
    asks="Numbers: ",
    why="Because.",
    ids=("a", "b", "c"),
    choices=("first", "second", "third"),
    most=2,
)


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
    ("line", "meant"),
    [
        ("1", ("a",)),
        ("3, 1", ("c", "a")),
        ("2 2", ("b",)),
        ("none", ()),
        ("n", ()),
        ("", ()),
        ("why", Reply.WHY),
        ("back", Reply.BACK),
        ("0", Reply.UNCLEAR),
        ("4", Reply.UNCLEAR),
        ("-1", Reply.UNCLEAR),
        ("1 2 3", Reply.UNCLEAR),
        ("1,2", ("a", "b")),
        ("1.5", Reply.UNCLEAR),
        ("00001", Reply.UNCLEAR),
        ("²", Reply.UNCLEAR),
        ("y", Reply.UNCLEAR),
    ],
)
def test_a_line_in_answer_to_a_menu(line: str, meant: tuple[str, ...] | Reply) -> None:
    assert read_line(MENU, line) == meant


@pytest.mark.parametrize(
    ("line", "meant"),
    [
        ("Petrel", "Petrel"),
        ("b", "b"),
        ("w", "w"),
        ("d", ""),
        ("back", Reply.BACK),
        ("why", Reply.WHY),
        ("exit", Reply.STOP),
    ],
)
def test_a_line_in_own_words(line: str, meant: str | Reply) -> None:
    assert read_line(TITLE, line) == meant


@given(st.text(max_size=40))
def test_any_line_means_something(line: str) -> None:
    for question in (TITLE, MENU, FindingQuestion(GAUGE_READS_ZERO)):
        meant = read_line(question, line)
        assert isinstance(meant, str | tuple | Answer | Reply)
        assert meant is not Reply.FIRST


# ------------------------------------------------------------------------- the order


def test_the_order_of_the_questions(path: Path) -> None:
    interview = Interview.begin(path, BOOK, "Ann", most=2)
    assert not interview.resumed
    assert interview.next_question() == TITLE
    answered(interview, "Petrel")
    assert interview.next_question() == COMPLAINT
    assert not interview.saved
    answered(interview, "needle dances at idle")
    job = load(path, BOOK).job
    assert (job.title, job.complaint, job.by) == ("Petrel", "needle dances at idle", "Ann")
    for finding in URGENT:
        assert interview.next_question() == FindingQuestion(finding)
        answered(interview, "n")
    question = interview.next_question()
    assert isinstance(question, FindingQuestion)
    assert question.finding.id == "needle_flickers"
    answered(interview, "y")
    while isinstance(interview.next_question(), FindingQuestion):
        answered(interview, "d")
    layout = interview.next_question()
    assert isinstance(layout, MenuQuestion)
    assert (layout.about, layout.ids) == ("layout", tuple(BOOK.layouts))
    answered(interview, "2")
    assert load(path, BOOK).layout.id == layout.ids[1]
    history = interview.next_question()
    assert isinstance(history, MenuQuestion)
    assert history.about == "history"
    answered(interview, "1 2")
    assert {states(path)[id_] for id_ in history.ids[:2]} == {"present"}
    for left in (2, 1):
        question = interview.next_question()
        assert isinstance(question, FindingQuestion)
        assert question.left == left
        assert question.finding not in load(path, BOOK).answered()
        answered(interview, "d")
    assert interview.next_question() is None
    assert not interview.no_useful_question
    assert interview.reply("y") is Reply.STOP


def test_a_question_stays_until_it_is_answered(path: Path) -> None:
    interview = answered(Interview.begin(path, BOOK), "x", "")
    before = path.read_bytes()
    for line, reply in (("why", Reply.WHY), ("perhaps", Reply.UNCLEAR), ("back", Reply.FIRST)):
        assert interview.reply(line) is reply
        assert interview.next_question() == FindingQuestion(URGENT[0])
    assert path.read_bytes() == before


def test_back_asks_each_earlier_question_again(path: Path) -> None:
    interview = Interview.begin(path, BOOK)
    assert interview.reply("back") is Reply.FIRST
    answered(interview, "Petrel")
    assert interview.reply("back") is Reply.BACK
    assert interview.next_question() == TITLE
    answered(interview, "Petrel II", "x", "n", "n")
    assert interview.reply("back") is interview.reply("b") is Reply.BACK
    assert interview.next_question() == FindingQuestion(URGENT[0])
    answered(interview, "y", "y")
    assert interview.next_question() == FindingQuestion(URGENT[2])
    assert states(path) == {GAUGE_READS_ZERO.id: "present", KNOCK.id: "present"}
    assert load(path, BOOK).job.title == "Petrel II"


def test_what_is_answered_in_the_case_is_not_asked(path: Path) -> None:
    start(path, BOOK, {"title": "x"}, {"layout": "distributor_v8"})
    history = next(f for f in BOOK.findings.values() if f.kind is Kind.HISTORY)
    append(path, BOOK, [("finding", {"what": f.id, "state": "absent"}) for f in (*URGENT, history)])
    interview = Interview.begin(path, BOOK, most=1)
    assert interview.resumed
    question = interview.next_question()
    assert isinstance(question, FindingQuestion)
    assert question.left == 1
    assert interview.reply("back") is Reply.BACK
    assert interview.next_question() == FindingQuestion(history)


# ------------------------------------------------------------------------- the edges


@pytest.mark.parametrize("lines", [[], ["Petrel"], ["Petrel", "low"], ["Petrel", "low", "y"]])
def test_stopping_keeps_what_was_answered(path: Path, lines: list[str]) -> None:
    interview = answered(Interview.begin(path, BOOK), *lines)
    assert interview.reply("stop") is Reply.STOP
    assert interview.saved == path.exists() == bool(lines)
    if lines:
        assert load(path, BOOK).job.title == "Petrel"
        assert load(path, BOOK).last_number == max(0, len(lines) - 2)


def test_alarms_come_once(path: Path) -> None:
    interview = answered(Interview.begin(path, BOOK), "x", "", "y")
    first = interview.new_alarms()
    assert first
    assert interview.new_alarms() == ()
    answered(interview, "y")
    assert not {a.says for a in first} & {a.says for a in interview.new_alarms()}


def test_outcomes_of_a_question(path: Path) -> None:
    interview = answered(Interview.begin(path, BOOK), "x", "", "n")
    outcomes = interview.outcomes(KNOCK)
    assert set(outcomes) == {"yes", "no"}
    assert all(0 < o.leads_with <= 1 for o in outcomes.values())


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
    st.sampled_from(["y", "n", "d", "", "why", "back", "1", "2 3", "probably", "perhaps"]),
    max_size=12,
)


@settings(
    deadline=None,
    max_examples=25,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(lines=LINES)
def test_any_lines_leave_a_sound_case(tmp_path: Path, lines: list[str]) -> None:
    path = tmp_path / "x.toml"
    path.unlink(missing_ok=True)
    interview = answered(Interview.begin(path, BOOK, most=3), "x", "low at idle")
    before = path.read_bytes()
    for line in lines:
        interview.reply(line)
        after = path.read_bytes()
        assert after.startswith(before)
        before = after
    load(path, BOOK)
