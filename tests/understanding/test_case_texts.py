"""The confirmed cases as texts: what the study of reading reads, and how it ranks from it."""

from __future__ import annotations

import tomllib

from knowledge.book import the_book
from knowledge.model import Stage
from knowledge.reports.words import Circumstance, Course, Onset, Shows, Since
from tests.confirmed.scoring import FIRST, FURTHER, case_files, score
from tests.support.case_texts import CaseText, case_texts, sentences
from tests.support.stated_facts import Kind, Tables, follow

TEXTS = case_texts(checks=True)
ONE = next(t for t in TEXTS if not t.doubtful and not t.further)


def tables_of(text: CaseText) -> Tables:
    """The tables of the case's own file."""
    folder = FURTHER if text.further else FIRST
    return tomllib.loads((folder / f"{text.name}.toml").read_text("utf-8"))


def test_every_case_is_a_text_and_facts() -> None:
    """The facts make a case; what was found inside is not among them."""
    assert len(TEXTS) == len(case_files(FIRST)) + len(case_files(FURTHER))
    for each in TEXTS:
        assert each.text, each.name
        follow(each.facts)
        findings = tables_of(each).get("finding", [])
        inside = {e["what"] for e in findings if e.get("learned") == "opened"}
        outside = {e["what"] for e in findings if e.get("learned") != "opened"}
        assert not (inside - outside) & {f.about for f in each.facts if f.kind is Kind.FINDING}


def test_checks_add_facts() -> None:
    """The complaint alone has fewer facts, and they are among the others."""
    for few, many in zip(case_texts(checks=False), TEXTS, strict=True):
        assert set(few.facts) <= set(many.facts)
    assert sum(len(t.facts) for t in case_texts(checks=False)) < sum(len(t.facts) for t in TEXTS)


def test_pieces_become_sentences_once() -> None:
    """A note that repeats the complaint is not written again."""
    said = ["lamp on; pressure zero", "lamp on", "", "no noise."]
    assert sentences(said) == "lamp on; pressure zero. no noise."


def test_a_reader_that_knows_the_file_ranks_as_the_file() -> None:
    """And it reads all facts, all of them right."""
    tables = tables_of(ONE)
    coded = score(FIRST / f"{ONE.name}.toml", Stage.OPENED)
    assert coded is not None
    assert ONE.ranked_by(lambda text: tables).rank == coded.rank
    outside = {
        name: [e for e in rows if e.get("learned") != "opened"]
        for name, rows in tables.items()
        if isinstance(rows, list)
    }
    found = ONE.read_by(lambda text: outside).all
    assert (found.precision, found.recall) == (1.0, 1.0)


def test_a_reader_of_nothing_finds_nothing() -> None:
    """Recall is 0, and the cause stands where it stands without evidence."""
    assert ONE.read_by(lambda text: {}).all.recall == 0.0
    assert ONE.ranked_by(lambda text: {}).rank > 5


def test_a_cause_that_was_ruled_out_stands_last() -> None:
    """A failed sender cannot be the cause where none was read to be fitted."""
    sender = next(t for t in TEXTS if t.name == "G2-016")
    wrong = {"finding": [{"what": "no_sender_fitted", "state": "present"}]}
    ranked = sender.ranked_by(lambda text: wrong)
    assert "sender_faulty" in ranked.accepted
    assert "sender_faulty" not in ranked.marginal
    assert ranked.rank == len(ranked.marginal) + 1


def test_what_the_words_say_is_of_these_cases() -> None:
    """Each list names facts of its case, or ids and words of the book."""
    book = the_book()
    kinds = (Shows, Circumstance, Onset, Course, Since)
    words = {w.value for kind in kinds for w in kind} | {"reading"}
    ids = book.findings.keys() | book.measures.keys() | book.trials.keys() | book.areas.keys()
    for each in TEXTS:
        assert each.may <= ids | words, each.name
        assert each.unsaid <= {str(f) for f in each.facts}, each.name
    assert sum(bool(t.may) for t in TEXTS) > 50
    assert sum(bool(t.unsaid) for t in TEXTS) > 50


def test_what_the_words_do_not_say_is_not_missed() -> None:
    """It counts neither as stated nor, if it is read, as right."""
    text = next(t for t in TEXTS if t.unsaid)
    nothing = text.judged_by(lambda _: {}).missed
    assert {str(f) for f in nothing} == {str(f) for f in set(text.facts)} - text.unsaid
