"""What is asked at the end of a sentence, compared, or said of the others, and what came of work."""

from __future__ import annotations

import pytest

from diagnose.library import read_words

#: words, and what is read of them: findings with their state, values, trials, earlier work
SAID = {
    # a question behind a colon states nothing
    "rocker covers off: oil floods no1 cam brg end? cant see": [],
    # an answer to the question at the end of a sentence
    "gauge bounces, oil low? no it is full": ["unsteady", "dipstick_low absent"],
    "needle drops when hot, metal in the filter? yes": ["low", "metal_in_filter present"],
    # the others, with or without a comma
    "rear main .007 others .003": ["main_clearance 0.007 in", "main_clearance 0.003 in"],
    "no 1 rod .004 and the others all .002": ["rod_clearance 0.004 in", "rod_clearance 0.002 in"],
    # a difference is no length, the first reading no first bearing
    "relief valve spring longer than old one by 6mm": ["relief_parts_not_standard present"],
    "mains .0020, the first was misread": ["main_clearance 0.0020 in"],
    # a hose on the suction side is none of the cooler
    "feed hose from tank kinked": ["suction_hose_flattens present"],
    # oil that comes as it is cranked is no leak
    "oil comes out filter mount when priming": ["no_oil_when_cranked absent"],
    "no oil filter on this engine": ["no_oil_filter present"],
    "no external filter just gauze": ["no_oil_filter present"],
    # a low figure after work is the complaint, a good one what came of it
    "changed oil and filter, now 5 psi at hot idle": [
        "filter_change renewed",
        "oil_change renewed",
        "reading 5 psi",
    ],
    "changed oil and filter, now 34 psi at hot idle": [
        "new_filter helped",
        "right_oil helped",
        "reading 34 psi",
    ],
    # a needle that bounces is in no seaway
    "gauge bounces about 10-20 lb": ["unsteady", "reading 10 to 20 psi"],
    # a joint that weeps is no burst line
    "oil weeps at cooler": ["only_small_seeps present", "oil_line_fitting_wet present"],
    "5 psi at idle. new pump, now 9 psi": ["reading 5 psi", "new_pump helped", "reading 9 psi"],
}


@pytest.mark.parametrize("words", SAID)
def test_what_is_read(words: str) -> None:
    found = [" ".join(filter(None, (f.name, f.state, f.value))) for f in read_words(words).facts]
    assert sorted(found) == sorted(SAID[words])


@pytest.mark.parametrize(
    ("words", "where"),
    [
        ("mains .0020, the first was misread", []),
        ("rear main .007 others .003", ["rear main"]),
        ("first main .003", ["main 1"]),
    ],
)
def test_where_it_was_measured(words: str, where: list[str]) -> None:
    assert [str(f.fields["where"]) for f in read_words(words).facts if "where" in f.fields] == where


@pytest.mark.parametrize(
    ("complaint", "shows"),
    [("pressure too high", "direct_gauge_high"), ("pressure too low", "direct_gauge_low")],
)
def test_a_gauge_that_agrees_agrees_with_the_complaint(complaint: str, shows: str) -> None:
    names = {f.name for f in read_words(f"{complaint}. mechanical gauge agrees").facts}
    assert names & {"direct_gauge_high", "direct_gauge_low"} == {shows}


@pytest.mark.parametrize(
    ("words", "tables"),
    [
        ("normal oil pressure is 10 psi hot", [("baseline", "10 psi", "")]),
        ("it has normal oil pressure 40 psi at cruise", [("reading", "40 psi", "")]),
        (
            "8 psi hot idle, 50 cold, used to be 25",
            [("reading", "8 psi", "25 psi"), ("reading", "50 psi", "")],
        ),
        (
            "hot idle 8 psi, cold 50. used to be 25",
            [("reading", "8 psi", "25 psi"), ("reading", "50 psi", "")],
        ),
    ],
)
def test_what_was_usual(words: str, tables: list[tuple[str, str, str]]) -> None:
    found = [
        (f.table, f.value, str(f.fields.get("usual", "")))
        for f in read_words(words).facts
        if f.table in ("reading", "baseline")
    ]
    assert found == tables


@pytest.mark.parametrize(
    ("words", "gauge"),
    [
        ("test gauge 12 psi at 700 rpm hot, needle jumps", "direct"),
        ("test gauge 12 psi, dash needle jumps", ""),
        ("needle jumps. test gauge 12 psi", ""),
    ],
)
def test_whose_needle_wavers(words: str, gauge: str) -> None:
    found = [f for f in read_words(words).facts if f.name == "unsteady"]
    assert [str(f.fields.get("gauge", "")) for f in found] == [gauge]
