"""What a trusted gauge settles, and the stop that calls for one."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.entry.known import next_check
from diagnose.output.documents.tell import minute_document
from diagnose.reasoning.check_planner import A_DAY
from diagnose.reasoning.trusted_gauge import needless
from knowledge.book import the_book

BOOK = the_book()
GAUGE = "fit_a_direct_gauge"
LEAD = "swing_the_gauge_by_its_lead"
HEAD = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'


def finding(no: int, what: str, state: str = "present") -> str:
    return f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "{state}"\n'


def reading(no: int, rpm: int, psi: int, gauge: str) -> str:
    return (
        f'[[reading]]\nno = {no}\nrpm = "{rpm} rpm"\noil = "90 C"\npressure = "{psi} psi"\n'
        f'gauge = "{gauge}"\n'
    )


def answer(more: str) -> Diagnosis:
    return Diagnosis(BOOK, from_text(HEAD + more, None, BOOK))


def offered(diagnosis: Diagnosis) -> list[set[str]]:
    """The checks that review and tell name."""
    both = (diagnosis.next_check, next_check(diagnosis))
    return [{c.inspection.id, *(o.inspection.id for o in c.runners_up)} for c in both if c]


@pytest.mark.parametrize(
    "more",
    [
        finding(1, "gauge_reads_zero"),
        finding(1, "lamp_comes_on"),
        finding(1, "protection_tripped"),
        reading(1, 700, 4, "panel"),
        finding(1, "gauge_reads_low") + finding(2, "lifters_clatter"),
    ],
)
def test_a_stop_that_calls_for_a_trusted_gauge_offers_it(more: str) -> None:
    stopped = answer(more)
    assert not stopped.may_run
    assert stopped.gauge_next
    assert all(GAUGE in checks for checks in offered(stopped))


@pytest.mark.parametrize(
    "more",
    [
        finding(1, "gauge_reads_zero") + finding(2, "bearing_knock"),
        finding(1, "none_from_first_start"),
        finding(1, "sank_while_running"),
        reading(1, 700, 4, "direct"),
    ],
)
def test_it_is_not_offered_where_the_engine_must_not_be_started(more: str) -> None:
    stopped = answer(more)
    assert not stopped.may_run
    assert not stopped.gauge_next
    runs = {i.id for i in BOOK.inspections.values() if i.needs_running}
    assert not any(checks & runs for checks in offered(stopped))


def test_the_lead_need_not_be_tried_where_a_trusted_gauge_read_the_same() -> None:
    low = reading(1, 1500, 6, "panel")
    assert LEAD not in {i.id for i in needless(answer(low).inference)}
    agree = answer(low + reading(2, 1500, 6, "direct"))
    found = {i.id for i in needless(agree.inference)}
    assert LEAD in found
    assert "measure_the_sender_resistance" in found
    assert not {"read_the_stick", GAUGE, "look_at_the_screen"} & found
    assert LEAD not in {
        o.inspection.id for o in agree.planner.chooser().options(agree.planner.plan_state)
    }
    differ = answer(low + reading(2, 1500, 30, "direct"))
    assert not needless(differ.inference)


def test_the_laboratory_need_not_name_the_viscosity_of_a_known_grade() -> None:
    thin = finding(1, "gauge_reads_low")
    lab = {"lab_viscosity_low", "lab_viscosity_high"}
    for more, asked in ((thin, True), ('[oil]\ngrade = "10W-30"\n' + thin, False)):
        planner = answer(more).planner
        sample = next(
            o
            for o in planner.chooser().options(planner.plan_state)
            if o.inspection.id == "send_an_oil_sample"
        )
        assert bool(lab & {f.id for f in sample.findings}) is asked


def test_no_check_that_takes_days_is_one_to_do_first() -> None:
    """A laboratory answers in days; the first checks are what can be done now."""
    assert BOOK.inspections["send_an_oil_sample"].waits_minutes >= A_DAY
    answered = minute_document(
        answer(finding(1, "freshly_rebuilt") + reading(2, 700, 8, "panel")), ""
    )
    assert answered.checks
    assert all(BOOK.inspections[c.inspection].waits_minutes < A_DAY for c in answered.checks)


SWITCH_FAMILY = {"sender_faulty", "wiring_ground_fault", "sender_mismatch", "sender_not_fitted"}
TRIPS = (
    'schema = 1\n[engine]\nlayout = "generator_diesel"\n'
    '[[behaviour]]\nno = 1\nshows = "trips"\nduring = ["hot", "after minutes of running"]\n'
)
SHOWS_ENOUGH = reading(2, 1500, 41, "direct")


def of_the_switch(more: str) -> float:
    chances = Diagnosis(BOOK, from_text(TRIPS + more, None, BOOK)).inference.posterior.marginal
    return sum(chances[c] for c in SWITCH_FAMILY)


def test_a_trip_with_enough_on_a_trusted_gauge_is_of_the_switch() -> None:
    """A diesel's limits depend on how it is built, yet what its gauge showed was observed."""
    with_gauge = Diagnosis(BOOK, from_text(TRIPS + SHOWS_ENOUGH, None, BOOK))
    assert {r.cause.id for r in with_gauge.ranking[:4]} == SWITCH_FAMILY
    assert of_the_switch(SHOWS_ENOUGH) > 1.5 * of_the_switch("")


def test_a_trip_and_a_trusted_gauge_that_disagree_are_said_to() -> None:
    """A panel gauge that agrees with the trusted one does not make the switch right."""
    agrees = SHOWS_ENOUGH + reading(3, 1500, 41, "panel")
    derived = Diagnosis(BOOK, from_text(TRIPS + agrees, None, BOOK)).inference.result.derived
    states = {c.state.name for c in derived if c.finding.id == "second_instrument_disagrees"}
    assert "PRESENT" in states
