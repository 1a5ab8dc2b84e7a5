"""What a mechanic would call wrong at a glance: contradictory advice, mixed units, repetition."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from diagnose.case.loading import from_text, load
from diagnose.circuit.deviations import deviations
from diagnose.diagnosis import Diagnosis
from diagnose.hydraulics.circuit import solve
from diagnose.output.documents.first_start import first_start_document
from diagnose.output.documents.loose_ends import pressure_in_words
from diagnose.output.documents.start_table import cold_in_words
from diagnose.output.text.first_start import first_start_text
from diagnose.signoff.sheet import Signoff
from diagnose.signoff.start import first_start
from diagnose.teardown.loose_ends import loose_ends
from knowledge.book import the_book
from tests.support.command_line import call
from tests.support.complaints import CASES
from tests.support.reviews import next_step

np = pytest.importorskip("numpy")
BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "skew_gear_four"\n'


def reading(no: int, rpm: int, celsius: int, psi: float, more: str = "") -> str:
    return (
        f'\n[[reading]]\nno = {no}\nrpm = "{rpm} rpm"\noil = "{celsius} C"\n'
        f'pressure = "{psi} psi"\ngauge = "direct"\n{more}'
    )


def finding(no: int, what: str, value: str, where: str = "") -> str:
    place = f'where = "{where}"\n' if where else ""
    return f'\n[[finding]]\nno = {no}\nwhat = "{what}"\n{value}\n{place}'


WORN = "".join(
    reading(no, *figures)
    for no, figures in enumerate(
        [(600, 20, 44), (1500, 20, 52), (600, 80, 5), (1000, 82, 13), (1500, 82, 21)], 1
    )
)
SOUND = "".join(
    reading(no, *figures)
    for no, figures in enumerate(
        [(700, 20, 50), (1500, 20, 55), (700, 85, 25), (1500, 85, 45), (2500, 85, 52)], 1
    )
)


@pytest.mark.parametrize(("readings", "stopped"), [(WORN, True), (SOUND, False)])
def test_a_survey_asks_for_no_running_under_a_stop(
    tmp_path: Path, readings: str, stopped: bool
) -> None:
    path = tmp_path / "hen.toml"
    path.write_text(HEAD + readings, "utf-8")
    said = call("survey", path).out
    assert ("STOP applies" in said) == stopped
    assert Diagnosis(BOOK, from_text(HEAD + readings, None, BOOK)).may_run != stopped


def test_a_trusted_gauge_below_the_limit_is_not_sent_to_a_trusted_gauge() -> None:
    trusted = HEAD + reading(1, 650, 85, 4)
    panel = trusted.replace('"direct"', '"panel"')
    for text, asked in ((trusted, False), (panel, True)):
        (stop,) = Diagnosis(BOOK, from_text(text, None, BOOK)).alarms
        assert ("check with a trusted gauge" in stop.says) == asked


def test_clearances_typed_in_mixed_units_are_shown_in_the_commonest() -> None:
    typed = ("5.0 thou", "0.0052 in", "0.0055 in", "0.14 mm")
    text = HEAD + "".join(
        finding(no, "main_clearance", f'value = "{value}"', f"main {no}")
        for no, value in enumerate(typed, 1)
    )
    (found,) = deviations(from_text(text, None, BOOK), 20, np.random.default_rng(1))
    assert " in " in found.found
    assert "mm" not in found.found


def test_more_pressure_than_predicted_starts_no_search_for_a_loss() -> None:
    cold = 'at = "start"\n'
    far_above = from_text(HEAD + reading(1, 700, 90, 75, cold), None, BOOK)
    start = first_start(far_above, BOOK)
    assert start.deviates
    assert start.reopened is None
    sheet = Signoff(Diagnosis(BOOK, far_above), 0.9)
    said = " ".join(first_start_text(first_start_document(start, sheet, "hen.toml")).split())
    assert "More than predicted, and nowhere less" in said
    assert "the diagnosis is open again" not in said


def test_a_wrong_gauge_leaves_no_pressure_to_explain() -> None:
    seen = ("gauge_reads_zero", "sender_wire_broken", "needle_ignores_lead_test")
    text = 'schema = 1\n[engine]\nlayout = "small_diesel"\n' + "".join(
        finding(no, what, 'state = "present"')
        for no, what in enumerate((*seen, "wire_open_or_shorted", "engine_runs_normally"), 1)
    )
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    ends = loose_ends(answer, 0.9)
    assert ends.confirmed
    assert [c.id for c in ends.causes] == ["wiring_ground_fault"]
    assert "only makes the gauge wrong" in pressure_in_words(answer, ends)


def test_a_measured_figure_is_never_broken_over_two_lines(tmp_path: Path) -> None:
    """0.005 above 2 in is read as five thou."""
    path, page = tmp_path / "hen.toml", tmp_path / "hen.html"
    path.write_text(HEAD + finding(1, "main_clearance", 'value = "0.0052 in"', "main 2"), "utf-8")
    assert call("report", path, "--out", page).code == 0
    text = page.read_text("utf-8")
    assert '<td class="number"><bdi>0.0052 in</bdi></td>' in text
    assert "td.number { white-space: nowrap; }" in text


def test_the_next_check_is_not_its_own_alternative() -> None:
    states = {"gauge_reads_low": "present", "foam_on_stick": "absent"}
    text = 'schema = 1\n[engine]\nlayout = "marine_petrol_v8"\n' + "".join(
        finding(no, what, f'state = "{state}"')
        for no, (what, state) in enumerate(states.items(), 1)
    )
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    choice = answer.next_check
    assert choice is not None
    first = choice.option.inspection
    other, planner = replace(answer), replace(answer.planner)
    vars(planner)["choice"] = replace(choice, runners_up=(choice.option, *choice.runners_up))
    vars(other)["planner"] = planner
    said = " ".join(" ".join(next_step(other, "curlew.toml")).split())
    assert said.count(f"{first.says} (") == 1


ZERO = HEAD + finding(1, "gauge_reads_zero", 'state = "present"')


def grave(text: str) -> set[str]:
    return {a.severity.name for a in Diagnosis(BOOK, from_text(text, None, BOOK)).alarms}


def panel(text: str) -> str:
    """The same reading on the panel gauge."""
    return text.replace('"direct"', '"panel"')


def test_a_stop_is_taken_back_by_a_trusted_gauge_that_came_later() -> None:
    shown = finding(3, "pressure_shown_since", 'state = "present"')
    assert "STOP" in grave(ZERO)
    assert "STOP" in grave(ZERO + panel(reading(2, 1500, 85, 52))), "a panel gauge proves nothing"
    assert grave(ZERO + panel(reading(2, 1500, 85, 52)) + shown) == {"CARE"}
    assert "STOP" in grave(ZERO + shown + finding(4, "direct_gauge_low", 'state = "present"'))
    assert "STOP" in grave(ZERO + shown + reading(5, 700, 85, 3)), "a later low reading stops it"
    assert "STOP" in grave(ZERO + finding(3, "pressure_shown_since", 'state = "absent"'))


def test_a_reading_of_a_trusted_gauge_after_the_fall_takes_the_stop_back() -> None:
    fell = HEAD + finding(1, "fell_suddenly", 'state = "present"')
    for reported in (ZERO, fell):
        assert grave(reported + reading(2, 2000, 85, 45)) == {"CARE"}
        assert grave(reported + reading(2, 800, 85, 21) + reading(3, 2500, 85, 59)) == {"CARE"}
    good = reading(2, 2000, 85, 45)
    dated = ZERO.replace("no = 1", "no = 1\nwhen = 2025-05-02")
    for reported in (
        HEAD + reading(1, 2000, 85, 45) + finding(2, "gauge_reads_zero", 'state = "present"'),
        ZERO + reading(2, 2000, 20, 45),
        ZERO + reading(2, 2000, 85, 21),
        ZERO + good + reading(3, 700, 85, 3),
        ZERO + good + finding(3, "pressure_shown_since", 'state = "absent"'),
        ZERO + good + '\n[[behaviour]]\nno = 3\nshows = "lost"\n',
        dated + reading(2, 2000, 85, 45, "when = 2025-05-01\n"),
    ):
        assert "STOP" in grave(reported), reported
    assert grave(dated + reading(2, 2000, 85, 45, "when = 2025-05-02\n")) == {"CARE"}


def test_less_pressure_cold_than_warm_is_explained() -> None:
    """Where it is predicted; a sound engine of the book shows more cold than warm."""
    start = first_start(load(CASES / "gannet.toml", BOOK), BOOK)
    assert cold_in_words(start) == ""
    coldest = min(e.temperature for e in start.expected)
    less = tuple(
        replace(e, pressure=replace(e.pressure, mean=0.2 * e.pressure.mean))
        if e.temperature == coldest
        else e
        for e in start.expected
    )
    other = replace(start)
    vars(other)["expected"] = less
    assert "filter and oilways" in cold_in_words(other)
    cold, warm = (solve(start.engine, 700.0, kelvin) for kelvin in (293.15, 318.15))
    assert np.mean(cold.gallery_pressure) > np.mean(warm.gallery_pressure)
    assert np.mean(cold.pump_pressure) > np.mean(warm.pump_pressure)
