"""Questions of ``ask`` that make no sense any more, and one that knows what was said."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.writing import NewEntry, append_by, start
from diagnose.diagnosis import Diagnosis
from diagnose.entry.agenda import Agenda, as_known
from diagnose.entry.known import Known
from diagnose.entry.questions import ChoiceQuestion, Question, TriedQuestion
from knowledge.book import the_book
from knowledge.questions.essentials import GRADE, NOISE
from knowledge.questions.premises import DONE_WITH, PART_OF_A_REBUILD
from tests.support.command_line import call

BOOK = the_book()


def case_of(path: Path, layout: str, *present: str) -> Diagnosis:
    """An engine of that layout with these findings."""
    start(path, BOOK, {"title": "x"}, {"layout": layout})
    entries = [NewEntry("finding", {"what": f, "state": "present"}) for f in present]
    append_by(path, BOOK, lambda _: entries)
    return Diagnosis(BOOK, load(path, BOOK))


@pytest.mark.parametrize(
    "finding",
    ["long_unchanged", "loss_is_passing", "grows_worse", "stepped_down_and_stayed"],
)
def test_low_since_it_was_built_leaves_no_question_how_it_came(
    finding: str, tmp_path: Path
) -> None:
    """It is asked of an engine that was good once."""
    once = case_of(tmp_path / "a.toml", "distributor_v8", "gauge_reads_low")
    assert Known.of(once).open(finding)
    built = ("gauge_reads_low", "freshly_rebuilt", "low_from_first_start")
    assert not Known.of(case_of(tmp_path / "b.toml", "distributor_v8", *built)).open(finding)


def test_an_engine_that_stands_is_not_asked_for_slopes(tmp_path: Path) -> None:
    standing = case_of(tmp_path / "a.toml", "generator_diesel", "gauge_reads_low")
    tractor = case_of(tmp_path / "b.toml", "tractor_diesel", "gauge_reads_low")
    for finding in ("level_read_wrongly", "raced_or_heeled", "falls_in_a_manoeuvre"):
        assert not Known.of(standing).open(finding)
        assert Known.of(tractor).open(finding)


def tried(answer: Diagnosis) -> set[str]:
    """The trials that are asked for."""
    questions: list[Question] = [c.question for c in Agenda()._tried(answer, 9)]
    return {t.id for q in questions if isinstance(q, TriedQuestion) for t in q.trials}


def test_what_a_rebuild_has_made_is_no_trial_on_it(tmp_path: Path) -> None:
    worn = case_of(tmp_path / "a.toml", "distributor_v8", "gauge_reads_low", "high_mileage")
    new = case_of(tmp_path / "b.toml", "distributor_v8", "gauge_reads_low", "freshly_rebuilt")
    assert tried(worn) & PART_OF_A_REBUILD
    assert tried(new)
    assert not tried(new) & PART_OF_A_REBUILD
    assert BOOK.trials.keys() >= PART_OF_A_REBUILD


def essentials(answer: Diagnosis) -> list[str]:
    """The essential menus still asked, by id."""
    agenda, found = Agenda(), []
    while (question := agenda.essentials(answer)) is not None:
        agenda.note(question)
        found += [question.menu.id] if isinstance(question, ChoiceQuestion) else []
    return found


def test_a_noise_in_other_words_is_not_asked_again(tmp_path: Path) -> None:
    quiet = case_of(tmp_path / "a.toml", "tractor_diesel", "gauge_reads_low")
    assert NOISE.id in essentials(quiet)
    deep = case_of(tmp_path / "b.toml", "tractor_diesel", "deep_knock_under_load")
    assert NOISE.id not in essentials(deep)


def test_a_grade_that_was_said_is_only_compared(tmp_path: Path) -> None:
    """The question names the oil; where nobody said it, it is asked for."""
    path = tmp_path / "a.toml"
    before = case_of(path, "tractor_diesel", "gauge_reads_low")
    assert as_known(GRADE, before) is GRADE
    assert call("tell", path, "there is 15w40 in it").code == 0
    asked = as_known(GRADE, Diagnosis(BOOK, load(path, BOOK)))
    assert asked.asks.startswith("Is 15W-40 the grade")
    assert asked.choices == GRADE.choices


@pytest.mark.parametrize(
    ("area", "trial"),
    [("oil_pump", "new_pump"), ("machine_shop", "crank_reground"), ("oil_change", "right_oil")],
)
def test_work_before_the_trouble_is_no_trial_on_it(area: str, trial: str, tmp_path: Path) -> None:
    path, low = tmp_path / "a.toml", ("gauge_reads_low", "direct_gauge_low", "good_cold_low_hot")
    assert trial in tried(case_of(path, "distributor_v8", *low))
    done = NewEntry("earlier", {"what": area, "done": "renewed"})
    append_by(path, BOOK, lambda _: [done])
    assert trial not in tried(Diagnosis(BOOK, load(path, BOOK)))


def test_work_that_is_no_trial_names_what_the_book_holds() -> None:
    areas = {w.id for w in BOOK.areas.values()}
    assert areas >= DONE_WITH.keys()
    assert BOOK.trials.keys() >= {t for trials in DONE_WITH.values() for t in trials}
