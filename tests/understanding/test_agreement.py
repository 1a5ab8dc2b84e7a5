"""How facts read are compared with facts stated: each kind agrees, half agrees, contradicts."""

from __future__ import annotations

import tomllib

import pytest

from tests.support.agreement import agreement, outcome
from tests.support.stated_facts import Fact, Kind, Seen, follow_alone, from_states, in_tables

CASES = """
{ present = "oil_milky" }                             | { present = "oil_milky" }             | 1
{ present = "oil_milky" }                             | { absent = "oil_milky" }              | 0
{ measured = "main_clearance", value = "4 thou" }     | { measured = "main_clearance", value = "0.1 mm" } | 1
{ measured = "main_clearance", value = "4 thou" }     | { measured = "main_clearance", value = "5 thou" } | 0
{ measured = "main_clearance", value = "4 thou" }     | { measured = "rod_clearance", value = "4 thou" }  | 0
{ pressure = "1 bar", rpm = "idle" }                  | { pressure = "14.5 psi", rpm = "idle" }           | 1
{ pressure = "10 psi", rpm = "idle", oil = "hot" }    | { pressure = "10 psi", rpm = "idle" } | 0.5
{ pressure = "10 psi", rpm = "hot idle" }             | { pressure = "10 psi", rpm = "idle", oil = "hot" } | 1
{ pressure = "10 psi", during = ["idle"] }            | { pressure = "10 psi", rpm = "idle" } | 1
{ pressure = "10 psi", rpm = "idle" }                 | { pressure = "10 psi", rpm = "cruise" } | 0
{ pressure = "10 psi", rpm = "700 rpm" }              | { pressure = "10 psi", rpm = "idle" } | 0.5
{ pressure = "10 psi", oil = "110 C" }                | { pressure = "10 psi", oil = "230 F" } | 1
{ pressure = "10 psi", oil = "cold" }                 | { pressure = "10 psi", oil = "hot" }  | 0
{ pressure = "10 psi" }                               | { pressure = "12 psi" }               | 0
{ pressure = "30 psi" }                               | { pressure = "under 30 psi" }         | 0.5
{ pressure = "30 psi", gauge = "direct" }             | { pressure = "30 psi" }               | 0.5
{ shows = "low", during = ["hot"] }                   | { shows = "low", during = ["hot"] }   | 1
{ shows = "low", during = ["hot"] }                   | { shows = "none", during = ["hot"] }  | 0
{ shows = "low", during = ["hot"] }                   | { shows = "low", never = ["hot"] }    | 0
{ shows = "low", onset = "sudden" }                   | { shows = "low", onset = "gradual" }  | 0
{ shows = "low", onset = "sudden" }                   | { shows = "low" }                     | 0.5
{ shows = "low", since = "work" }                     | { shows = "low", since = "first start" } | 1
{ shows = "low", since = "work" }                     | { shows = "low", since = "frost" }    | 0
{ shows = "slow to build", lasts = "10 s" }           | { shows = "slow to build", lasts = "60 s" } | 0
{ trial = "new_pump", result = "cured" }              | { trial = "new_pump", result = "cured" } | 1
{ trial = "new_pump", result = "cured" }              | { trial = "new_pump", result = "no difference" } | 0
{ earlier = "oil_pump", done = "renewed" }            | { earlier = "oil_pump" }              | 1
{ earlier = "oil_pump" }                              | { earlier = "sump" }                  | 0
{ has = "diesel" }                                    | { lacks = "diesel" }                  | 0
"""


def facts(*lines: str) -> list[Fact]:
    """The facts of tables as a list of sentences writes them."""
    return from_states(tomllib.loads(f"a = {line.strip()}")["a"] for line in lines)


@pytest.mark.parametrize("line", [line for line in CASES.splitlines() if line])
def test_two_facts_agree(line: str) -> None:
    """In either order."""
    one, other, wanted = line.split("|")
    (a,), (b,) = facts(one), facts(other)
    assert agreement(a, b) == agreement(b, a) == float(wanted)


def test_what_may_be_read_counts_neither_way() -> None:
    """A fact besides, and a circumstance besides."""
    stated = facts('{ shows = "low", during = ["hot"] }')
    read = facts('{ shows = "low", during = ["hot", "bends"] }', '{ present = "oil_milky" }')
    strict = outcome(read, stated).all
    assert (strict.read, strict.right, strict.found) == (2, 0.5, 0.5)
    lenient = outcome(read, stated, {"oil_milky", "bends"}).all
    assert (lenient.read, lenient.right, lenient.found) == (1, 1.0, 1.0)


def test_the_same_can_be_said_as_a_finding_or_as_a_behaviour() -> None:
    """What the rules derive from the one is the other."""
    behaviour, finding = facts('{ shows = "lamp" }'), facts('{ present = "lamp_comes_on" }')
    assert Seen("lamp_comes_on", "present") in follow_alone(behaviour[0])
    for read, stated in ((behaviour, finding), (finding, behaviour)):
        found = outcome(read, stated).all
        assert (found.precision, found.recall) == (1.0, 1.0)


def test_a_reading_of_nothing_is_a_gauge_at_zero() -> None:
    """As a finding or a behaviour, of the same gauge; a figure above nothing is not."""
    zero, low = facts('{ pressure = "0 psi" }'), facts('{ pressure = "5 psi" }')
    for other in facts('{ present = "gauge_reads_zero" }', '{ shows = "none" }'):
        for read, stated in ((zero, [other]), ([other], zero)):
            found = outcome(read, stated).all
            assert (found.precision, found.recall) == (1.0, 1.0)
    assert outcome(zero, facts('{ present = "direct_gauge_zero" }')).all.recall == 0.0
    assert outcome(low, facts('{ present = "gauge_reads_zero" }')).all.recall == 0.0


def test_a_layout_counts_where_a_feature_is_stated() -> None:
    """Right where it contradicts none."""
    layout = in_tables({"engine": {"layout": "marine_petrol_v8"}})
    assert outcome(layout, facts('{ present = "oil_milky" }')).by_kind[Kind.LAYOUT].read == 0
    fits = outcome(layout, facts('{ has = "in_a_boat" }'))
    assert (fits.by_kind[Kind.LAYOUT].right, fits.all.recall) == (1.0, 1.0)
    assert outcome(layout, facts('{ has = "diesel" }')).by_kind[Kind.LAYOUT].right == 0.0


def test_a_behaviour_of_which_a_part_was_read_counts_half() -> None:
    """Low, suddenly: only the first of it was read."""
    found = outcome(
        facts('{ present = "gauge_reads_low" }'), facts('{ shows = "low", onset = "sudden" }')
    )
    assert found.all.recall == 0.5


def test_one_fact_read_stands_for_one_fact_stated() -> None:
    """Two readings of one pressure are two facts."""
    stated = facts(
        '{ pressure = "25 psi", rpm = "idle" }', '{ pressure = "25 psi", rpm = "cruise" }'
    )
    found = outcome(facts('{ pressure = "25 psi" }'), stated)
    assert (found.all.found, found.all.stated) == (0.5, 2)
    assert len(found.missed) == 1


def test_entries_of_a_case_file_are_facts() -> None:
    """Each kind; what is withdrawn, unknown or not tried is none."""
    tables = {
        "engine": {"has": ["diesel"], "lacks": ["vee_engine"]},
        "finding": [
            {"no": 1, "what": "oil_milky", "state": "absent", "note": "clean"},
            {"no": 2, "what": "main_clearance", "value": "4 thou"},
            {"no": 3, "what": "fuel_smell", "state": "unknown"},
        ],
        "reading": [{"no": 4, "pressure": "5 psi", "rpm": "idle", "usual": "40 psi"}],
        "trial": [
            {"no": 5, "what": "new_pump", "result": "cured"},
            {"no": 6, "what": "topped_up", "result": "not tried"},
        ],
        "behaviour": [{"no": 7, "shows": "low", "state": "withdrawn"}],
    }
    assert {(f.kind, f.about) for f in in_tables(tables)} == {
        (Kind.FEATURE, "diesel"),
        (Kind.FEATURE, "vee_engine"),
        (Kind.FINDING, "oil_milky"),
        (Kind.MEASURED, "main_clearance"),
        (Kind.READING, "5 psi"),
        (Kind.USUAL, "40 psi"),
        (Kind.TRIAL, "new_pump"),
    }
