"""What the story, figures or reports say is not asked; what work leaves open is."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.writing import NewEntry, append_by, start
from diagnose.diagnosis import Diagnosis
from diagnose.entry.agenda import Agenda
from diagnose.entry.answered_by_story import is_said, safety_left
from diagnose.entry.known import Known
from diagnose.entry.picking import Picked, Reply
from diagnose.entry.questions import ChoiceQuestion
from knowledge.book import the_book
from knowledge.questions.essentials import (
    ESSENTIALS,
    PLUGS,
    SAFETY,
    SAFETY_KNOCK,
    SAFETY_ZERO,
    SEALS,
    SINCE,
)
from knowledge.questions.groups import (
    COURSE,
    FLICKER,
    GROUPS,
    HEAT,
    OCCASION,
    SPEED,
    START,
    STICK,
)
from knowledge.questions.shapes import Menu
from tests.support.command_line import call

BOOK = the_book()


def case_of(path: Path, *entries: NewEntry) -> Diagnosis:
    start(path, BOOK, {"title": "x"}, {"layout": "distributor_v8"})
    append_by(path, BOOK, lambda _: list(entries))
    return Diagnosis(BOOK, load(path, BOOK))


def reading(pressure: str, rpm: str, oil: str = "hot") -> NewEntry:
    return NewEntry("reading", {"pressure": pressure, "rpm": rpm, "oil": oil})


def behaviour(shows: str, *during: str, **more: str) -> NewEntry:
    return NewEntry("behaviour", {"shows": shows, "during": list(during) or None, **more})


LOW = NewEntry("finding", {"what": "gauge_reads_low", "state": "present"})
REBUILT = NewEntry("finding", {"what": "freshly_rebuilt", "state": "present"})
IDLE, FAST, COLD = (
    reading("8 psi", "idle"),
    reading("20 psi", "3000 rpm"),
    reading("25 psi", "fast idle", "cold"),
)


@pytest.mark.parametrize(
    ("menu", "said", "open_"),
    [
        (SPEED, (IDLE, FAST), (IDLE, COLD)),
        (HEAT, (IDLE, COLD), (IDLE, FAST)),
        (HEAT, (behaviour("low", "hot"), behaviour("normal", "cold")), (behaviour("low", "hot"),)),
        (
            SPEED,
            (behaviour("low", "idle"), behaviour("normal", "at speed")),
            (behaviour("low", "idle"),),
        ),
        (OCCASION, (behaviour("low", "bends"),), (behaviour("low", "idle"),)),
        (FLICKER, (behaviour("unsteady", "at speed"),), (behaviour("unsteady"),)),
        (START, (behaviour("slow to build"),), (behaviour("low"),)),
        (COURSE, (behaviour("low", onset="sudden"),), (behaviour("low"),)),
        (
            COURSE,
            (LOW, NewEntry("earlier", {"what": "sump", "before": "straight before"})),
            (LOW, NewEntry("earlier", {"what": "sump", "before": "1 year"})),
        ),
    ],
)
def test_a_group_is_not_asked_where_it_was_said(
    menu: Menu, said: tuple[NewEntry, ...], open_: tuple[NewEntry, ...], tmp_path: Path
) -> None:
    before = case_of(tmp_path / "a.toml", *said)
    assert is_said(menu, before)
    assert not list(Agenda()._group(menu, before, Known.of(before), 9))
    assert not is_said(menu, case_of(tmp_path / "b.toml", *open_))


@pytest.mark.parametrize(
    ("entries", "left"),
    [
        ((), SAFETY),
        ((IDLE,), SAFETY_KNOCK),
        ((NewEntry("finding", {"what": "bearing_knock", "state": "absent"}),), SAFETY_ZERO),
        ((IDLE, NewEntry("finding", {"what": "bearing_knock", "state": "absent"})), None),
        ((reading("0 psi", "idle"), IDLE), None),
    ],
)
def test_of_safety_only_what_is_open_is_asked(
    entries: tuple[NewEntry, ...], left: Menu | None, tmp_path: Path
) -> None:
    assert safety_left(case_of(tmp_path / "a.toml", *entries)) is left


def test_yes_answers_a_question_with_one_real_choice() -> None:
    question = ChoiceQuestion(SAFETY_KNOCK, SAFETY_KNOCK.choices)
    assert question.read("y") == Picked((0,))
    assert question.read("n") == Picked((1,))
    assert ChoiceQuestion(SAFETY, SAFETY.choices).read("y") is Reply.UNCLEAR


def open_menus(answer: Diagnosis) -> set[str]:
    known = Known.of(answer)
    return {menu.id for menu in (PLUGS, SEALS) if known.choices(menu)}


@pytest.mark.parametrize(
    ("entries", "asked"),
    [
        ((LOW,), set()),
        ((LOW, REBUILT), {"plugs"}),
        ((LOW, NewEntry("earlier", {"what": "whole_engine", "done": "rebuilt"})), {"plugs"}),
        ((LOW, NewEntry("earlier", {"what": "pickup", "done": "cleaned"})), {"seals"}),
        ((LOW, NewEntry("finding", {"what": "sump_was_off", "state": "present"})), {"seals"}),
        ((LOW, NewEntry("earlier", {"what": "ignition_or_electrics"})), set()),
    ],
)
def test_work_asks_what_it_may_have_left_out(
    entries: tuple[NewEntry, ...], asked: set[str], tmp_path: Path
) -> None:
    assert open_menus(case_of(tmp_path / "a.toml", *entries)) == asked


def _rank(answer: Diagnosis, cause: str) -> float:
    return next(r.probability for r in answer.ranking if r.cause.id == cause)


@pytest.mark.parametrize(
    ("finding", "cause", "up"),
    [
        ("plugs_not_counted", "gallery_plug_missing", True),
        ("plugs_fitted_by_others", "crank_plug_missing", True),
        ("plugs_counted_in", "gallery_plug_missing", False),
        ("old_seals_reused", "suction_joint_air_leak", True),
        ("sump_was_off", "suction_joint_air_leak", True),
    ],
)
def test_the_answers_move_their_causes(finding: str, cause: str, up: bool, tmp_path: Path) -> None:
    before = case_of(tmp_path / "a.toml", LOW, REBUILT)
    said = NewEntry("finding", {"what": finding, "state": "present"})
    after = case_of(tmp_path / "b.toml", LOW, REBUILT, said)
    assert (_rank(after, cause) > _rank(before, cause)) is up


def test_questions_are_sentences_and_lists_have_a_way_out() -> None:
    """None is a pair of words; where several may be true, "none" is one of the choices."""
    for menu in (*ESSENTIALS, *GROUPS, SAFETY):
        assert menu.asks.endswith("?")
        assert len(menu.asks.split()) >= 4, menu.asks
        if menu.many:
            assert any(not c.there for c in menu.choices), menu.asks
    question = ChoiceQuestion(STICK, STICK.choices)
    assert question.read("n") == Picked((len(STICK.choices) - 1,))


def test_letters_are_explained_where_they_are_asked_for(tmp_path: Path) -> None:
    path = tmp_path / "x.toml"
    call("tell", path, "petrol V8, 5 psi at hot idle, 30 psi at 2000 rpm hot, 55 cold")
    done = call("ask", path, answers="2\n" + "d\n" * 25)
    said = " ".join((done.err + done.out).split())
    assert "y / n / d" not in said
    assert SINCE.asks in said
