"""What nobody looked at or measured: no cause stands on it, and the next step is to look."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.entry.interview import Interview
from diagnose.entry.telling import understand, write
from diagnose.output.documents.interview import best_guess
from diagnose.output.documents.next_checks import next_checks
from diagnose.output.documents.review import review_document
from diagnose.output.text.review_brief import review_brief
from diagnose.reasoning.seen_on_engine import is_found, seen_for
from knowledge.book import the_book

BOOK = the_book()
REBUILT = "freshly rebuilt straight six, 300 miles. 6 psi hot idle, 50 cold, 30 at 2500. no knock. "
PUT_RIGHT = "put it right"


def said(tmp_path: Path, words: str) -> Diagnosis:
    """The diagnosis of what was understood of a story."""
    return Diagnosis(BOOK, write(understand(tmp_path / "job.toml", words, BOOK), BOOK))


def reported(*findings: str, opened: bool = False) -> Diagnosis:
    """A low engine with these findings, as said by a person or seen with something off."""
    text = 'schema = 1\n[engine]\nlayout = "skew_gear_six"\n'
    how = "opened" if opened else "told"
    for no, what in enumerate(findings, 1):
        text += f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\nlearned = "{how}"\n'
    text += '[[reading]]\nno = 99\npressure = "6 psi"\noil = "hot"\nrpm = "idle"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize(
    "words",
    ["I did not check the mains.", "never checked clearance on mains", "mains not plastigaged"],
)
def test_not_measured_is_no_sign_of_wide(words: str, tmp_path: Path) -> None:
    """It raises the rate of what may be wrong there, and no more."""
    answer = said(tmp_path, REBUILT + words)
    chance = {r.cause.id: r.probability for r in answer.ranking}
    there = {s.finding.id for s in answer.case.finding_records}
    assert "clearances_never_measured" in there
    assert "clearances_built_wide" not in there
    assert chance["clearance_set_wide"] < 0.6
    assert answer.found_faults == ()
    assert next_checks(answer)


def test_it_is_asked_for(tmp_path: Path) -> None:
    """Not measured makes wide clearances likelier than they are without it."""
    wide = []
    for name, words in (("a", REBUILT), ("b", REBUILT + "mains not measured")):
        (tmp_path / name).mkdir()
        ranking = said(tmp_path / name, words).ranking
        wide += [r.probability for r in ranking if r.cause.id == "clearance_set_wide"]
    assert wide[1] > 1.2 * wide[0]


@pytest.mark.parametrize(
    "words",
    [
        "mate resealed the sump with plenty of silicone",
        "used RTV on the pan",
        "lots of rtv on the sump rail",
        "sealed the sump with silicone",
    ],
)
def test_sealer_that_was_used_hangs_nowhere(words: str, tmp_path: Path) -> None:
    """What a joint was put together with was not seen inside."""
    read = understand(tmp_path / "job.toml", words + ". lamp on at 4000 rpm", BOOK).understanding
    facts = {f.name for f in read.facts}
    assert not facts & {"sealer_in_sump", "sump_or_pump_swapped"}


@pytest.mark.parametrize(
    "words", ["silicone in the sump", "beads of silicone hanging inside", "bits of rtv in the pan"]
)
def test_sealer_that_was_seen_does(words: str, tmp_path: Path) -> None:
    """What lies or hangs there was seen."""
    read = understand(tmp_path / "job.toml", "dropped the sump, " + words, BOOK).understanding
    assert "sealer_in_sump" in {f.name for f in read.facts}


@pytest.mark.parametrize(
    "words", ["new std shells on a polished crank", "std bearings on a standard crank"]
)
def test_standard_shells_on_a_polished_crank_are_right(words: str, tmp_path: Path) -> None:
    """Polishing is no grinding."""
    read = understand(tmp_path / "job.toml", words, BOOK).understanding
    assert "wrong_shells_fitted" not in {f.name for f in read.facts}
    ground = "std shells were fitted on a crank ground ten under"
    read = understand(tmp_path / "job.toml", ground, BOOK).understanding
    assert "wrong_shells_fitted" in {f.name for f in read.facts}


def test_a_cause_that_was_only_said_is_looked_for() -> None:
    """Nearly certain by what was said: the next step is what shows it, not the repair."""
    answer = reported("freshly_rebuilt", "low_from_first_start", "clearances_built_wide")
    first = answer.ranking[0]
    assert first.cause.id == "clearance_set_wide"
    assert first.probability > 0.9
    assert not seen_for(answer.inference, first.cause)
    document = review_document(answer, "job.toml")
    assert document.next
    checks = [BOOK.inspections[c.inspection] for c in document.next]
    assert any("clearance" in m.id for c in checks for m in c.measures)
    assert len({c.id for c in checks}) == len(checks)
    assert PUT_RIGHT not in " ".join(review_brief(document).split())


def test_a_cause_that_was_seen_is_put_right() -> None:
    """Seen with the engine open, nothing is left to check, nor to ask."""
    answer = reported(
        "freshly_rebuilt", "clearances_built_wide", "main_clearance_too_wide", opened=True
    )
    assert is_found(answer.inference)
    document = review_document(answer, "job.toml")
    assert PUT_RIGHT in " ".join(review_brief(document).split())


def test_a_pattern_of_the_gauge_shows_no_part() -> None:
    """What follows from readings is no sight of a bearing."""
    answer = reported("freshly_rebuilt", "low_from_first_start", "good_cold_low_hot")
    wide = next(r.cause for r in answer.ranking if r.cause.id == "clearance_set_wide")
    assert not seen_for(answer.inference, wide)


def test_the_first_step_is_never_empty() -> None:
    """With the engine stopped and nothing left to check, only the engine is off."""
    answer = reported(
        "freshly_rebuilt", "clearances_built_wide", "main_clearance_too_wide", opened=True
    )
    assert not answer.may_run
    guess = best_guess(answer)
    assert guess.first
    assert not guess.first.endswith("then ")


FOUND = """schema = 1
[engine]
layout = "skew_gear_six"
[job]
title = "straight six"
opened = 2026-05-01
[[finding]]
no = 1
what = "clearances_built_wide"
state = "present"
[[finding]]
no = 2
what = "main_clearance_too_wide"
state = "present"
learned = "opened"
[[finding]]
no = 3
what = "freshly_rebuilt"
state = "present"
"""
CLOSED = """[[closed]]
no = 4
when = 2026-05-02
causes = ["oil_degraded"]
how = "tried"
remedy = "oil"
"""


@pytest.mark.parametrize(
    ("text", "ended"),
    [
        (FOUND, "The cause was found on the engine: nothing is left to ask."),
        (FOUND + CLOSED, "This job is closed: nothing is left to ask."),
    ],
)
def test_nothing_is_asked_once_it_is_known(text: str, ended: str, tmp_path: Path) -> None:
    """Of a job whose cause was seen, or that is closed."""
    path = tmp_path / "job.toml"
    path.write_text(text, encoding="utf-8")
    interview = Interview.begin(path, BOOK)
    assert interview.next_question() is None
    assert interview.ended == ended
