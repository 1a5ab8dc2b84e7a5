"""Work done before the trouble began: likelier causes where it was, fading with time."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.inference.causegraph import weights
from diagnose.inference.chaining import Facts, InferenceResult, Observation, infer
from knowledge.book import the_book
from knowledge.history import areas, areas_inside, findings
from knowledge.history.rules_work import AGES, DAY, YEAR, multiple
from knowledge.model import Finding, Kind, State
from knowledge.pressure import behaviour
from knowledge.reports.shapes import Behaviour, EarlierWork, WorkArea
from knowledge.reports.words import Done, Shows, Since
from tests.support.examples import examples

BOOK = the_book()
AREAS = tuple(a for a in BOOK.areas.values() if a is not areas.NOTHING)


def concluded(
    *earlier: EarlierWork, present: tuple[Finding, ...] = (), since: Since | None = None
) -> InferenceResult:
    seen = {f: Observation(State.PRESENT) for f in present}
    named = bool(earlier)
    behaviours = [Behaviour(Shows.LOW, since=since, work_named=named)] if since else []
    return infer(BOOK.statements, Facts(seen, earlier=earlier, behaviours=behaviours))


def rates(
    *earlier: EarlierWork, present: tuple[Finding, ...] = (), since: Since | None = None
) -> dict[str, float]:
    """The relative frequency of each cause."""
    return weights(BOOK.causes, concluded(*earlier, present=present, since=since))


PLAIN = rates()


def factor(
    cause: str,
    *earlier: EarlierWork,
    present: tuple[Finding, ...] = (),
    since: Since | None = None,
) -> float:
    """How many times commoner the cause is than with nothing known."""
    return rates(*earlier, present=present, since=since)[cause] / PLAIN[cause]


def test_the_multiples_are_those_of_the_book() -> None:
    """8 with the work, 4 within days, 2 within months, 1 after years; never less."""
    assert [multiple(age) for age, _ in AGES] == pytest.approx([m for _, m in AGES])
    assert multiple(0.0) == 8.0
    assert multiple(30 * YEAR) == 1.0
    assert 1.0 < multiple(None) < 4.0


@settings(max_examples=examples(200), deadline=None)
@given(st.floats(0.0, 1e10), st.floats(0.0, 1e10))
def test_the_longer_ago_the_less(one: float, other: float) -> None:
    early, late = sorted((one, other))
    assert 8.0 >= multiple(early) >= multiple(late) >= 1.0


@pytest.mark.parametrize("area", AREAS, ids=lambda a: a.id)
def test_work_raises_its_own_causes_and_no_other(area: WorkArea) -> None:
    """Monotone in time for each of its causes; gone after some years."""
    ages = (0.0, DAY, 20 * DAY, 200 * DAY, 2 * YEAR, 9 * YEAR)
    found = [rates(EarlierWork(area, before=age)) for age in ages]
    for cause in area.causes:
        course = [rate[cause.id] / PLAIN[cause.id] for rate in found]
        assert course == sorted(course, reverse=True), cause
        assert course[0] > 1.0
        assert course[-1] == pytest.approx(1.0)
    late = found[3]
    own = {c.id for c in area.causes}
    assert {c for c in late if late[c] != PLAIN[c]} <= own  # by now it is no longer "just before"


@pytest.mark.parametrize("area", AREAS, ids=lambda a: a.id)
def test_nothing_counts_twice(area: WorkArea) -> None:
    """However many facts of history say the same, no cause rises above what the work says."""
    facts = area.implies
    entry = EarlierWork(area, before=0.0)
    by_entry = rates(entry)
    assert by_entry == rates(entry, entry)
    both = rates(entry, present=facts)
    alone = rates(present=facts)
    for cause, share in area.causes.items():
        most = max(multiple(0.0) ** share * PLAIN[cause.id], alone[cause.id])
        assert both[cause.id] <= most * 1.0001, cause


def test_a_rebuild_yesterday_and_a_year_ago() -> None:
    yesterday = EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT, DAY)
    year = EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT, YEAR)
    for cause in ("gallery_plug_missing", "bearing_wrong_size", "suction_joint_air_leak"):
        assert factor(cause, yesterday) > 3.5
        assert 1.0 < factor(cause, year) < 1.7
    assert factor("bearing_wear_mains", yesterday) < 0.6
    assert factor("bearing_wear_mains", yesterday) < factor("bearing_wear_mains", year) < 1.0
    fresh = {c.finding for c in concluded(yesterday).derived}
    assert findings.FRESHLY_REBUILT in fresh
    assert findings.FRESHLY_REBUILT not in {c.finding for c in concluded(year).derived}


def test_half_a_mile_after_the_workshop() -> None:
    """An oil change minutes before: what an oil change can spoil comes first."""
    text = """schema = 1
[[finding]]
no = 1
what = "oil_seen_outside"
state = "present"
[[earlier]]
no = 2
what = "oil_change"
before = "2 min"
hands = "workshop"
"""
    ranking = Diagnosis(BOOK, from_text(text, None, BOOK)).ranking
    slips = {"filter_seal_leak", "drain_plug_out", "filler_cap_off", "external_leak_major"}
    assert ranking[0].cause.id in slips
    plain = Diagnosis(BOOK, from_text(text.split("[[earlier]]")[0], None, BOOK))
    before = {r.cause.id: r.probability for r in plain.ranking}
    after = {r.cause.id: r.probability for r in ranking}
    assert all(after[c] > before[c] for c in ("filter_seal_leak", "drain_plug_out"))


def test_it_began_with_the_work_though_no_time_was_given() -> None:
    work = EarlierWork(areas_inside.TIMING)
    assert factor("tensioner_seal_leak", work, since=Since.WORK) == pytest.approx(8.0)
    assert 2.0 < factor("tensioner_seal_leak", work) < 4.0


def test_what_a_finding_says_of_the_beginning_is_not_counted_in_the_rate_too() -> None:
    work = EarlierWork(areas.RELIEF_VALVE, before=0.0)
    said = (behaviour.CHANGED_AFTER_OTHER_WORK,)
    assert factor("relief_spring_wrong", work) == pytest.approx(8.0)
    assert factor("relief_spring_wrong", work, present=said) == pytest.approx(4.0)


def test_a_part_renewed_lately_is_not_yet_worn() -> None:
    new, cleaned = (
        EarlierWork(areas.OIL_PUMP, done, 20 * DAY) for done in (Done.RENEWED, Done.CLEANED)
    )
    assert factor("pump_gear_wear", new) < 0.7
    assert factor("pump_gear_wear", cleaned) == pytest.approx(1.0)
    old = EarlierWork(areas.OIL_PUMP, Done.RENEWED, 9 * YEAR)
    assert factor("pump_gear_wear", old) == pytest.approx(1.0)


def test_nobody_had_touched_it() -> None:
    """Mistakes of assembly and of an oil change are rarer, once; wear is not."""
    nothing = EarlierWork(areas.NOTHING)
    for cause in areas.NOTHING.causes:
        assert factor(cause.id, nothing) == pytest.approx(0.5), cause
    assert factor("bearing_wear_mains", nothing) == pytest.approx(1.0)


def test_work_never_done_is_asked_of_nobody() -> None:
    """Without an entry nothing is lowered, and no area is a finding that can be denied."""
    assert not concluded().shifts
    assert not BOOK.areas.keys() & BOOK.findings.keys()


def test_two_places_give_each_cause_its_likelier_one() -> None:
    sump = EarlierWork(areas_inside.SUMP, before=0.0)
    pump = EarlierWork(areas.OIL_PUMP, before=90 * DAY)
    both = rates(sump, pump)
    for cause in areas_inside.SUMP.causes:
        assert both[cause.id] == pytest.approx(max(rates(sump)[cause.id], rates(pump)[cause.id]))


def test_every_area_is_whole() -> None:
    for area in BOOK.areas.values():
        assert area.source.title
        assert area.causes
        assert all(0.0 < share <= 1.0 for share in area.causes.values()), area
        assert all(f.kind is Kind.HISTORY for f in area.implies)
