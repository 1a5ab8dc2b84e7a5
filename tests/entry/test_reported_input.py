"""Reported behaviour as typed, as saved and as shown again."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.loading import from_text, load
from diagnose.case.writing import start
from diagnose.diagnosis import Diagnosis
from diagnose.entry.behaviours import BehaviourInput, parse_behaviour
from diagnose.entry.case_builder import CaseBuilder
from diagnose.entry.details import Details
from diagnose.entry.recording import Input, record
from diagnose.errors import UsageError
from diagnose.output.as_json import as_json
from diagnose.output.documents.record import record_document
from diagnose.output.documents.reported import behaviour_sentence, reported_sentences
from diagnose.output.documents.review import review_document
from diagnose.output.text.review import review_text
from knowledge.book import the_book
from knowledge.model import Gauge
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import Circumstance, Course, Onset, Shows, Since

BOOK = the_book()
C = Circumstance
LISTED = st.lists(st.sampled_from(Circumstance), max_size=3, unique=True)
INPUTS = st.builds(
    BehaviourInput,
    shows=st.sampled_from(Shows),
    during=LISTED.map(tuple),
    never=LISTED.map(tuple),
    only=st.booleans(),
    onset=st.none() | st.sampled_from(Onset),
    course=st.lists(st.sampled_from(Course), max_size=2, unique=True).map(tuple),
    since=st.none() | st.sampled_from(Since),
    lasts=st.sampled_from([None, "10 s", "2.5 min", "3 h"]),
    with_pressure=st.booleans(),
    gauge=st.sampled_from([None, "panel", "direct", "lamp"]),
)


@given(INPUTS)
def test_what_is_typed_is_read_back(given_input: BehaviourInput) -> None:
    """Every behaviour has a line that says it; reading it gives the same behaviour."""
    assert parse_behaviour(given_input.typed()) == given_input


@given(st.text(max_size=60))
def test_any_text_is_read_or_refused_with_a_reason(text: str) -> None:
    """No line ends in anything but a behaviour or a fault that says how to write it."""
    said = ""
    try:
        said = f"{parse_behaviour(text).typed()}, write it like that"
    except UsageError as fault:
        said = str(fault)
    assert "write it like" in said


@pytest.mark.parametrize(
    ("typed", "behaviour"),
    [
        ("low when hot and idle only", (Shows.LOW, {C.HOT, C.IDLE}, set(), True)),
        ("gradually low during idle never at speed", (Shows.LOW, {C.IDLE}, {C.SPEED}, False)),
        ("LOST, during bends", (Shows.LOST, {C.BENDS}, set(), False)),
        ("low during low oil level", (Shows.LOW, {C.LOW_LEVEL}, set(), False)),
        ("lost power", (Shows.LOST_POWER, set(), set(), False)),
    ],
)
def test_words_in_any_order(
    typed: str, behaviour: tuple[Shows, set[Circumstance], set[Circumstance], bool]
) -> None:
    got = parse_behaviour(typed)
    assert (got.shows, set(got.during), set(got.never), got.only) == behaviour


@pytest.mark.parametrize(
    ("typed", "fault"),
    [
        ("during hot", "say what shows"),
        ("low during hog", "Did you mean 'hot'?"),
        ("low low", "'low' is not understood"),
        ("low since", "name what it began with"),
        ("low lasts long", "a time with its unit"),
        ("low gauge oil", "panel, direct or lamp"),
        ("low sudden gradual", "onset is given twice"),
        ("low purple", "'purple' is not understood"),
    ],
)
def test_faults_say_what_is_wrong(typed: str, fault: str) -> None:
    with pytest.raises(UsageError) as caught:
        parse_behaviour(typed)
    assert fault in str(caught.value)


def test_record_saves_shows_and_counts_it(tmp_path: Path) -> None:
    """One command: the entry, its sentence, and what follows from it."""
    path = tmp_path / "petrel.toml"
    start(path, BOOK, {"title": "Petrel"})
    saved = record(path, BOOK, Input(behaviours=["low during hot, idle only gradual"]))
    assert record_document(saved, BOOK, path).entries == {
        1: "behaviour: pressure low hot, at idle only; came gradually"
    }
    case = load(path, BOOK)
    assert case.behaviours[0].behaviour == Behaviour(
        Shows.LOW, frozenset({C.HOT, C.IDLE}), only=True, onset=Onset.GRADUAL
    )
    evidence = Diagnosis(BOOK, case).inference.evidence
    assert {"low_hot_idle_good_speed", "declined_over_months"} <= set(evidence)


def test_a_behaviour_is_corrected_and_withdrawn(tmp_path: Path) -> None:
    """As any other entry, by its number, and only by one of its kind."""
    path = tmp_path / "petrel.toml"
    start(path, BOOK, {"title": "Petrel"})
    record(path, BOOK, Input(behaviours=["low"]))
    record(path, BOOK, Input(behaviours=["lost sudden"], details=Details(replaces=1)))
    assert list(reported_sentences(load(path, BOOK)).values()) == ["pressure lost; came suddenly"]
    with pytest.raises(UsageError, match="only another behaviour corrects it"):
        record(path, BOOK, Input(facts=["fuel_smell=yes"], details=Details(replaces=2)))
    with pytest.raises(UsageError, match="no place on the engine"):
        record(path, BOOK, Input(behaviours=["low"], details=Details(where="rod 3")))
    record(path, BOOK, Input(withdraw=[2]))
    assert not load(path, BOOK).behaviours


def test_the_library_takes_the_same_line() -> None:
    builder = CaseBuilder(title="Petrel")
    assert builder.behaviour("lamp during bends only") == 1
    assert builder.build().behaviours[0].behaviour.shows is Shows.LAMP
    assert from_text(builder.toml(), None, BOOK).behaviours == builder.build().behaviours


def test_review_lists_what_was_reported() -> None:
    """Behaviour, trials and earlier work stand in the order of their entries, also in JSON."""
    trial = next(iter(BOOK.trials.values()))
    case = from_text(
        "schema = 1\n"
        '[[behaviour]]\nno = 1\nshows = "lost"\nduring = ["bends"]\n'
        f'[[trial]]\nno = 2\nwhat = "{trial.id}"\nresult = "no difference"\n'
        '[[earlier]]\nno = 3\nwhat = "oil_pump"\ndone = "renewed"\nbefore = "3 weeks"\n'
        'hands = "workshop"\n',
        None,
        BOOK,
    )
    document = review_document(Diagnosis(BOOK, case), "a.toml")
    assert document.reported == (
        "pressure lost in bends",
        f"{trial.says}, and that made no difference",
        f"{BOOK.areas['oil_pump'].says} (renewed), 3 weeks before, by a workshop",
    )
    text = review_text(document)
    assert "Reported\n  - pressure lost in bends\n" in text
    assert json.loads(json.dumps(as_json(document)))["reported"] == list(document.reported)


@given(INPUTS)
def test_every_behaviour_has_a_sentence_of_its_own_words(given_input: BehaviourInput) -> None:
    """One line of plain words, whatever was reported."""
    report = Behaviour(
        given_input.shows,
        frozenset(given_input.during),
        frozenset(given_input.never),
        given_input.only,
        given_input.onset,
        frozenset(given_input.course),
        given_input.since,
        None,
        given_input.with_pressure,
        Gauge(given_input.gauge or Gauge.PANEL),
    )
    sentence = behaviour_sentence(report)
    assert sentence
    assert "\n" not in sentence
    assert ("only" in sentence) >= given_input.only
    assert sentence.count("; ") >= (given_input.onset is not None) + len(given_input.course) - 1
