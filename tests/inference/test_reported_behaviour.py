"""What follows from reported behaviour: findings from any combination of facets."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.inference.chaining import Facts, InferenceResult, infer
from knowledge.book import the_book
from knowledge.model import Gauge, Reading, Severity, State
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import Circumstance, Course, Onset, Shows, Since
from knowledge.units import PSI

BOOK = the_book()
C = Circumstance
BEHAVIOURS = st.builds(
    Behaviour,
    st.sampled_from(Shows),
    st.frozensets(st.sampled_from(Circumstance), max_size=4),
    st.frozensets(st.sampled_from(Circumstance), max_size=2),
    st.booleans(),
    st.none() | st.sampled_from(Onset),
    st.frozensets(st.sampled_from(Course), max_size=2),
    st.none() | st.sampled_from(Since),
    st.none() | st.floats(0.0, 1e4),
    st.booleans(),
    st.sampled_from(["panel", "direct", "lamp"]),
)


def concluded(*behaviours: Behaviour) -> InferenceResult:
    """All that follows from these reports."""
    return infer(BOOK.statements, Facts(behaviours=behaviours))


def follows(*behaviours: Behaviour) -> dict[str, bool]:
    """The findings that follow by id: whether present."""
    return {c.finding.id: c.state is State.PRESENT for c in concluded(*behaviours).derived}


def report(shows: Shows, *during: Circumstance, **other: object) -> Behaviour:
    """A report."""
    return Behaviour(shows, frozenset(during), **other)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("said", "finding"),
    [
        (report(Shows.LOW, C.HOT, C.IDLE, only=True), "low_hot_idle_good_speed"),
        (report(Shows.LOW, C.HOT, C.IDLE, only=True), "good_cold_low_hot"),
        (report(Shows.LAMP, C.HOT, C.IDLE, only=True), "low_hot_idle_good_speed"),
        (report(Shows.UNSTEADY, C.HOT, C.IDLE, only=True), "flickers_only_at_hot_idle"),
        (report(Shows.UNSTEADY, C.SPEED, only=True), "flickers_only_at_speed"),
        (report(Shows.LOST, C.SEAWAY), "falls_in_a_manoeuvre"),
        (report(Shows.LAMP, C.BRAKING, only=True), "falls_in_a_manoeuvre"),
        (report(Shows.LOW, onset=Onset.GRADUAL), "declined_over_months"),
        (report(Shows.FALLING, onset=Onset.GRADUAL), "sank_while_running"),
        (report(Shows.LOST, onset=Onset.SUDDEN), "fell_suddenly"),
        (report(Shows.NONE, since=Since.FIRST_START), "none_from_first_start"),
        (report(Shows.LOW, since=Since.FIRST_START), "low_from_first_start"),
        (report(Shows.LAMP, C.STANDING, lasts=15.0), "ten_seconds_or_more"),
        (report(Shows.LOW, C.HOT, C.LATE), "sags_as_oil_heats"),
        (report(Shows.LOW, C.MINUTES), "goes_after_minutes"),
        (
            report(Shows.FALLING, C.SPEED, never=frozenset({C.AFTER_REST})),
            "fades_at_speed_back_after_rest",
        ),
        (report(Shows.LOW, since=Since.ALWAYS), "long_unchanged"),
        (report(Shows.LOST, course=frozenset({Course.RECOVERED})), "loss_is_passing"),
        (report(Shows.GRINDING, with_pressure=True), "noise_with_pressure_loss"),
        (report(Shows.UNSTEADY, C.ELECTRICAL), "needle_follows_loads"),
        (report(Shows.NONE, gauge=Gauge.DIRECT), "direct_gauge_zero"),
        (report(Shows.TRIPS), "protection_tripped"),
    ],
)
def test_a_report_says_the_finding_of_the_links(said: Behaviour, finding: str) -> None:
    """Facets together give the finding that links speak of."""
    assert follows(said)[finding]


def test_lost_without_a_word_of_how_fast_is_not_suddenly() -> None:
    """'Lost' has its own finding and leaves 'suddenly' open."""
    said = follows(report(Shows.LOST))
    assert said["pressure_lost"]
    assert "fell_suddenly" not in said
    assert "pressure_lost" not in follows(report(Shows.LOST, onset=Onset.SUDDEN))


def test_unsteady_in_bends_says_nothing_of_steady_running() -> None:
    """A needle that falls in bends only is no steady needle, and no wavering one."""
    for shows in (Shows.UNSTEADY, Shows.LAMP, Shows.LOST):
        said = follows(report(shows, C.BENDS, only=True))
        assert said["falls_in_a_manoeuvre"]
        assert not {"needle_flickers", "gauge_reads_zero", "pressure_lost"} & set(said)


def test_normal_at_speed_completes_low_at_idle() -> None:
    """Two reports say together what neither says alone."""
    low, normal = report(Shows.LOW, C.IDLE, C.HOT), report(Shows.NORMAL, C.SPEED, C.COLD)
    sure = {c.finding.id: c.sure for c in concluded(low, normal).derived}
    alone = {c.finding.id: c.sure for c in concluded(low).derived}
    assert sure["low_hot_idle_good_speed"] > alone["low_hot_idle_good_speed"]
    assert "good_cold_low_hot" in sure
    assert "good_cold_low_hot" not in alone


def test_work_named_as_such_is_not_counted_twice() -> None:
    """'Since work' alone says that something was done; the work itself says more."""
    assert follows(report(Shows.LOW, since=Since.WORK))["changed_after_other_work"]
    assert not follows(report(Shows.LOW, since=Since.DATE))["changed_after_other_work"]


@given(st.lists(BEHAVIOURS, max_size=4))
def test_any_reports_give_findings_of_the_book(behaviours: list[Behaviour]) -> None:
    """No combination fails; every certainty is above one half; a normal report is no trouble."""
    for derived in concluded(*behaviours).derived:
        assert BOOK.findings[derived.finding.id] is derived.finding
        assert 0.5 < derived.sure <= 1.0


@given(st.frozensets(st.sampled_from(Circumstance), max_size=4))
def test_a_normal_report_alone_is_no_trouble(during: frozenset[Circumstance]) -> None:
    """Normal pressure by itself gives no finding as present."""
    assert not any(follows(Behaviour(Shows.NORMAL, during)).values())


GOOD_AT_SPEED = Reading(2000.0, 360.0, 40 * PSI)
FEEBLE_AT_SPEED = Reading(2000.0, 360.0, 4 * PSI)


@pytest.mark.parametrize("gone", [Shows.NONE, Shows.LOST])
@pytest.mark.parametrize(
    ("beside", "readings"),
    [
        ((report(Shows.NORMAL, C.SPEED),), ()),
        ((), (GOOD_AT_SPEED,)),
    ],
)
def test_nothing_at_idle_with_pressure_at_speed_is_low(
    gone: Shows, beside: tuple[Behaviour, ...], readings: tuple[Reading, ...]
) -> None:
    """A pump that gives 40 psi at speed turns: no dead gauge, yet the engine stops."""
    facts = Facts(behaviours=(report(gone, C.IDLE, C.HOT), *beside), readings=readings)
    result = infer(BOOK.statements, facts)
    present = {d.finding.id for d in result.derived if d.state is State.PRESENT}
    assert {"gauge_reads_low", "low_hot_idle_good_speed"} <= present
    assert "gauge_reads_zero" not in present
    assert any(a.severity is Severity.STOP for a in result.alarms)


@pytest.mark.parametrize("readings", [(), (FEEBLE_AT_SPEED,)])
def test_nothing_at_idle_stays_nothing_without_pressure_at_speed(
    readings: tuple[Reading, ...],
) -> None:
    """What was not seen at speed, or shows next to nothing there, is no pressure."""
    facts = Facts(behaviours=(report(Shows.NONE, C.IDLE),), readings=readings)
    result = infer(BOOK.statements, facts)
    assert "gauge_reads_zero" in {d.finding.id for d in result.derived if d.state is State.PRESENT}


def test_good_at_the_start_and_low_with_hot_oil_is_good_cold() -> None:
    """A start that is set against hot oil is a cold one."""
    said = (report(Shows.NORMAL, C.START), report(Shows.NONE, C.HOT))
    assert follows(*said).get("good_cold_low_hot")
    assert "good_cold_low_hot" not in follows(report(Shows.NORMAL, C.SPEED), said[1])
