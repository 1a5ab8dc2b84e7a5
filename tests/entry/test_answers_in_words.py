"""Answers of ``ask`` in a person's own words, and a story where safety is asked."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.entry.answers import Answer
from diagnose.entry.in_words import answer_in_words, heard, taken_as
from diagnose.entry.interview import Interview
from diagnose.entry.numbers import HOT_IDLE, Readings
from diagnose.entry.picking import Picked, Reply
from diagnose.entry.questions import (
    CheckQuestion,
    ChoiceQuestion,
    ConfirmQuestion,
    EngineQuestion,
    FindingQuestion,
    NumbersQuestion,
    TextQuestion,
    TrialQuestion,
    TriedQuestion,
)
from diagnose.entry.trials import TrialInput
from knowledge.book import the_book
from knowledge.pressure.patterns import GAUGE_READS_ZERO
from knowledge.questions.engines import ENGINE_KINDS
from knowledge.questions.essentials import (
    ESSENTIALS,
    GAUGE,
    GRADE,
    KNOCK,
    LEVEL,
    NOISE,
    SAFETY,
    SAFETY_KNOCK,
    SEALS,
    SINCE,
    ZERO,
)
from knowledge.questions.groups import GROUPS
from knowledge.questions.shapes import Menu
from tests.support.command_line import call

BOOK = the_book()
STORY = "petrol hatchback with an overhead cam four, low at hot idle and it knocks"
NEW_PUMP = BOOK.trials["new_pump"]
CHECK = next(i for i in BOOK.inspections.values() if i.reveals)


@pytest.mark.parametrize(
    "line",
    [
        "dunno",
        "no idea",
        "pass",
        "Not sure.",
        "I don’t know",
        "i dont know",
        "can't say",
        "idk",
        "?",
    ],
)
def test_not_knowing_in_other_words(line: str) -> None:
    """Of every kind of question."""
    assert ChoiceQuestion(LEVEL, LEVEL.choices).read(line) == Picked(None)
    assert CheckQuestion(CHECK, CHECK.reveals).read(line) == Picked(None)
    assert FindingQuestion(GAUGE_READS_ZERO).read(line) == Answer("unknown")
    assert TrialQuestion(NEW_PUMP).read(line) == TrialInput(NEW_PUMP, None)
    assert NumbersQuestion((HOT_IDLE,), "psi").read(line) == Readings(())
    assert TextQuestion("words", "why").read(line) == ""


@pytest.mark.parametrize(
    ("menu", "line", "says"),
    [
        (LEVEL, "right on the full line", "between the marks"),
        (LEVEL, "over the full line", "well over the full mark"),
        (LEVEL, "it's a bit low", "below the add mark"),
        (LEVEL, "bone dry", "none on the stick"),
        (LEVEL, "2 i think", "below the add mark"),
        (GRADE, "10w30 like the book says", "as the manual says"),
        (GRADE, "thinner than the book says", "thinner"),
        (GAUGE, "just a light", "lamp or buzzer only"),
        (GAUGE, "mechanical", "gauge with an oil line"),
        (SINCE, "nothing, just got worse over two years", "none of these"),
        (SINCE, "after an oil change", "an oil or filter change"),
        (NOISE, "sounds sweet", "no noise"),
        (NOISE, "ticking up top and a whine at the pump", "ticking up top and whine at the pump"),
        (SAFETY, "it knocks", "a knock"),
    ],
)
def test_words_choose_what_they_mean(menu: Menu, line: str, says: str) -> None:
    """And the screen says what they were taken for."""
    question = ChoiceQuestion(menu, menu.choices)
    said = answer_in_words(question, line)
    assert said is not None
    assert taken_as(question, said) == says


@pytest.mark.parametrize(
    ("menu", "line"),
    [
        (LEVEL, "a bit below full"),
        (LEVEL, "wibble"),
        (LEVEL, "not full"),
        (GAUGE, "a light and a mechanical one"),
        (SAFETY, "no knock"),
        (NOISE, "none and a whine"),
    ],
)
def test_words_that_may_mean_two_things_choose_nothing(menu: Menu, line: str) -> None:
    assert answer_in_words(ChoiceQuestion(menu, menu.choices), line) is None


def test_other_questions_take_words_too() -> None:
    """Yes and no with more words, what was not done, a figure that is rough, an engine's name."""
    finding = FindingQuestion(GAUGE_READS_ZERO)
    assert answer_in_words(finding, "yes it does") == Answer("present")
    assert answer_in_words(finding, "nope, never") == Answer("absent")
    assert answer_in_words(finding, "no idea") == Answer("unknown")
    assert answer_in_words(finding, "when it rains") is None
    assert answer_in_words(CheckQuestion(CHECK, CHECK.reveals), "not done") == Picked(None)
    assert answer_in_words(TriedQuestion((NEW_PUMP,)), "not tried any") == Picked(())
    assert answer_in_words(TrialQuestion(NEW_PUMP), "never did that") == TrialInput(NEW_PUMP, None)
    rough = answer_in_words(NumbersQuestion((HOT_IDLE,)), "about 4")
    assert isinstance(rough, Readings)
    assert [r.pressure for r in rough.given] == ["4 psi"]
    diesel = answer_in_words(EngineQuestion("?", ENGINE_KINDS), "it's a diesel")
    assert taken_as(EngineQuestion("?", ENGINE_KINDS), diesel or "") == "diesel"


def test_a_sentence_where_safety_is_asked_is_the_story(tmp_path: Path) -> None:
    """It is kept as the complaint and read; a knock in it answers the safety question."""
    path = tmp_path / "car.toml"
    interview = Interview.begin(path, BOOK)
    assert interview.reply(STORY) is None
    assert isinstance(interview.next_question(), ConfirmQuestion)
    assert interview.reply("") is None
    case = load(path, BOOK)
    assert case.job.complaint == STORY
    assert case.layout.id == "overhead_cam_four"
    question = interview.next_question()
    assert not (isinstance(question, ChoiceQuestion) and question.menu is SAFETY)


def test_safety_is_asked_where_the_story_does_not_say_it(tmp_path: Path) -> None:
    """Once, as far as the story leaves it open; a second sentence there adds to the case."""
    path = tmp_path / "car.toml"
    interview = Interview.begin(path, BOOK)
    for line in ("small block V8 truck, 8 psi at hot idle", ""):
        assert interview.reply(line) is None
    asked = ChoiceQuestion(SAFETY_KNOCK, SAFETY_KNOCK.choices)
    assert interview.next_question() == asked, "8 psi is not zero"
    for line in ("the oil level is fine and it was rebuilt last week", ""):
        assert interview.reply(line) is None
    assert "level_correct" in {r.finding.id for r in load(path, BOOK).finding_records}
    assert interview.next_question() == asked
    assert interview.reply("2") is None
    known = {r.finding.id: r.entry.state for r in load(path, BOOK).finding_records}
    assert known[KNOCK] == "absent"
    assert ZERO not in known
    question = interview.next_question()
    assert not (isinstance(question, ChoiceQuestion) and question.menu is SAFETY)
    assert interview.reply("stop") is Reply.STOP


def test_the_screen_says_what_words_were_taken_for(tmp_path: Path) -> None:
    path = tmp_path / "car.toml"
    done = call("ask", path, answers=f"{STORY}\n\nright on the full line\nstop\n")
    assert done.code == 0
    assert "Taken as: between the marks." in done.out + done.err


def test_a_letter_at_numbered_choices_says_what_it_was_taken_for(tmp_path: Path) -> None:
    """An "n" takes the choice that says no, and is shown; "y" asks which."""
    question = ChoiceQuestion(NOISE, NOISE.choices)
    assert question.read("n") == Picked((5,))
    assert question.read("y") is Reply.UNCLEAR
    assert "n for 'no noise'" in question.hint
    shown = " ".join(call("ask", tmp_path / "a.toml", answers="n\n\nd\ny\n").err.split())
    assert "Taken as: neither." in shown
    assert "Yes to which of them? A number from 1 to 4" in shown


LAMP = "lamp flickers at tickover when hot and goes out if i rev it a bit, no guage only lamp"


@pytest.mark.parametrize(
    "line", [LAMP, "no gauge on it only the lamp", "it is no trouble when cold"]
)
def test_one_word_of_a_sentence_answers_nothing(line: str) -> None:
    """A "no" of another clause does not say that the stick is dry, nor that the finding is not there."""
    for question in (ChoiceQuestion(LEVEL, LEVEL.choices), FindingQuestion(GAUGE_READS_ZERO)):
        words = heard(question, line)
        assert words.answer is None
        assert words.rest == line


def test_what_a_sentence_says_besides_its_answer_is_left_to_be_read() -> None:
    since = heard(ChoiceQuestion(SINCE, SINCE.choices), "nothing, it got worse over two years")
    assert taken_as(ChoiceQuestion(SINCE, SINCE.choices), since.answer or "") == "none of these"
    assert since.rest == "it got worse over two years"
    level = ChoiceQuestion(LEVEL, LEVEL.choices)
    assert heard(level, "i think it is well over the full mark").rest == ""
    assert answer_in_words(level, "no") is None
    assert answer_in_words(level, "no oil") == Picked((2,))


def test_a_sentence_at_a_question_is_shown_and_kept_as_story(tmp_path: Path) -> None:
    """The facts wait for a yes; what they answer is not asked again, what they leave open is."""
    path = tmp_path / "car.toml"
    interview = Interview.begin(path, BOOK)
    for line in ("4", "four cylinder petrol launch", "", "d"):
        assert interview.reply(line) is None
    asked = interview.next_question()
    assert asked == ChoiceQuestion(LEVEL, LEVEL.choices)
    assert interview.reply(LAMP) is None
    assert isinstance(interview.next_question(), ConfirmQuestion)
    assert not {"dipstick_dry", "lamp_only"} & {
        r.finding.id for r in load(path, BOOK).finding_records
    }
    assert interview.reply("") is None
    assert "lamp_only" in {r.finding.id for r in load(path, BOOK).finding_records}
    assert LAMP in path.read_text("utf-8"), "the words are kept"
    assert interview.next_question() == asked
    assert interview.reply("the level is between the marks, 5w30 from the dealer") is None
    assert interview.reply("") is None
    assert load(path, BOOK).engine.oil == "5W-30"
    question = interview.next_question()
    assert not (isinstance(question, ChoiceQuestion) and question.menu in (LEVEL, GAUGE))


def test_yes_and_no_answer_a_question_that_is_asked_so() -> None:
    """ "Is it of the right grade?": yes is the first choice; no is two, so it is asked which."""
    grade, seals = ChoiceQuestion(GRADE, GRADE.choices), ChoiceQuestion(SEALS, SEALS.choices)
    assert grade.read("yes") == Picked((0,))
    assert grade.read("n") is Reply.UNCLEAR
    assert (seals.read("no"), seals.read("y")) == (Picked((0,)), Picked((1,)))


def test_answers_that_nobody_knows_lead_to_a_look(tmp_path: Path) -> None:
    """Once; the guess that stays as it was is not said again, and no safety answer means no start."""
    shown = call(
        "ask", tmp_path / "a.toml", answers="d\ndiesel, gauge low\n\nd\nd\nd\nd\nd\nstop\n"
    )
    words = " ".join(shown.err.split())
    assert "Then do not run it until you know" in words
    assert words.count("4 in a row not known; looking tells more now: read, rub and smell") == 1
    assert words.count("Best guess") == 1
    known = call(
        "ask", tmp_path / "b.toml", answers="4\ndiesel, gauge low\n\n1\n2\n9\nd\n1\nstop\n"
    )
    assert "in a row not known" not in known.err
    assert "do not run it until you know" not in known.err


def test_that_nothing_of_it_is_true_is_always_the_last_choice() -> None:
    """A slip of one number then never says the contrary."""
    for menu in (*ESSENTIALS, *GROUPS, SAFETY):
        empty = [i for i, choice in enumerate(menu.choices) if not choice.there]
        assert empty in ([], [len(menu.choices) - 1]), menu.id


def test_a_question_back_is_no_answer(tmp_path: Path) -> None:
    """It is answered by why it is asked; "a knock" alone is an answer."""
    path = tmp_path / "a.toml"
    shown = call("ask", path, answers="whats a knock\nstop\n")
    assert "A knock is a dull, heavy beat" in " ".join(shown.err.split())
    assert not path.exists() or KNOCK not in path.read_text("utf-8")
    call("ask", path, answers="a knock\nstop\n")
    assert KNOCK in path.read_text("utf-8")
