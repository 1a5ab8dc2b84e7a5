"""What alarms on readings say, and figures of the gauge exactly at their limits. Psi, rpm, °C."""

from __future__ import annotations

import pytest

from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import Reading
from knowledge.pressure import alarms, gauge
from knowledge.pressure.gauge import PANEL_SPREAD, moments, sure_above, sure_below
from knowledge.units import PSI
from tests.safety.test_alarms import DIESEL, STOP, case_of, standing
from tests.safety.test_gauge_limits import look

BOOK = the_book()


def said(reading: str, engine: str = "") -> set[tuple[str, str]]:
    """Rule and text of each alarm that a reading sounds."""
    answer = Diagnosis(BOOK, case_of(readings=(reading,), engine=engine))
    return {(answer.inference.result.alarms[a].rule.id, a.says) for a in answer.alarms}


@pytest.mark.parametrize(
    ("reading", "engine", "rule", "says"),
    [
        ("700 rpm, 90 C, 5 psi", "", "reading_below_the_stop_limit",
         "5 psi (0.3 bar) at 700 rpm, limit 7 psi (0.5 bar): shut down, check with a trusted gauge "
         "before it runs again"),
        ("2600 rpm, 90 C, 15 psi, direct", "", "reading_below_the_stop_limit",
         "15 psi (1.0 bar) at 2600 rpm, limit 20 psi (1.4 bar): the trusted gauge confirms it: "
         "shut down, do not run until you find the cause"),
        ("1800 rpm, 90 C, 25 psi", DIESEL, "farm_diesel_below_two_bar",
         "25 psi (1.7 bar) at 1800 rpm on a diesel, limit 29 psi (2.0 bar) at working speed: stop"),
        ("2000 rpm, 20 C, 120 psi", "", "far_too_much_when_cold",
         "120 psi (8.3 bar) cold, limit 90 psi (6.2 bar): back to idle, then stop; the relief valve "
         "does not relieve"),
    ],
)  # fmt: skip
def test_an_alarm_states_what_was_read_its_limit_and_what_to_do(
    reading: str, engine: str, rule: str, says: str
) -> None:
    assert (rule, says) in said(reading, engine)


@pytest.mark.parametrize(
    ("pressure", "stops"),
    [("1.99 bar", True), ("28.9 psi", True), ("29 psi", False), ("2.0 bar", False)],
)
def test_two_bar_is_two_bar(pressure: str, stops: bool) -> None:
    """Of a diesel at working speed: 2 bar, which a gauge in psi shows as 29."""
    found = standing(case_of(readings=(f"1800 rpm, 90 C, {pressure}",), engine=DIESEL))
    assert (("farm_diesel_below_two_bar", STOP) in found) is stops


def test_the_readings_of_the_examples_are_what_they_say() -> None:
    assert alarms.seen(10, 700, 20) == Reading(700, 293.15, 10 * PSI)
    assert alarms.seen(10, 700) == Reading(700, 363.15, 10 * PSI)


@pytest.mark.parametrize("error", [0.5, 1.0, 5000.0])
def test_an_error_that_is_stated_is_taken(error: float) -> None:
    assert gauge.spread_of(Reading(700, 363.0, 1e5, error=error)) == error
    assert gauge.spread_of(Reading(700, 363.0, 1e5, error=-error)) == PANEL_SPREAD


@pytest.mark.parametrize(("celsius", "hot", "cold"), [(75, True, False), (45, False, True)])
def test_the_limits_of_hot_and_cold_belong_to_them(celsius: float, hot: bool, cold: bool) -> None:
    one = look(celsius=celsius)
    assert one.oil_temperature in (gauge.HOT, gauge.COLD)
    assert (gauge.is_hot(one), gauge.is_cold(one)) == (hot, cold)


@pytest.mark.parametrize(("sure", "state"), [(0.6, "present"), (0.4, "absent")])
def test_six_in_ten_is_enough_to_conclude(sure: float, state: str) -> None:
    (found,) = gauge.if_clear(BOOK.findings["gauge_reads_low"], sure)
    assert found.state.value == state
    assert found.sure == pytest.approx(0.6)


def derived(finding: str, *readings: str) -> float | None:
    """How sure the readings make that a finding is there; None where they conclude nothing."""
    answer = Diagnosis(BOOK, case_of(readings=readings))
    found = [d for d in answer.inference.result.derived if d.finding.id == finding]
    return max((d.sure if d.state.value == "present" else 1 - d.sure for d in found), default=None)


@pytest.mark.parametrize("psi", [0, 1, 6, 8])
def test_three_psi_cannot_be_distinguished_from_none(psi: float) -> None:
    read = derived("gauge_reads_zero", f"800 rpm, 90 C, {psi} psi")
    assert read == pytest.approx(sure_below(look(800, psi=psi), 3 * PSI), abs=1e-6)


@pytest.mark.parametrize("psi", [55, 60, 80, 90])
def test_cold_oil_past_the_setting_is_past_1_3_times_the_setting(psi: float) -> None:
    setting = BOOK.limits["relief_setting"].typical
    read = derived("climbs_past_setting", f"2500 rpm, 20 C, {psi} psi")
    assert read == pytest.approx(sure_above(look(2500, 20, psi), 1.3 * setting), abs=1e-6)


@pytest.mark.parametrize("psi", [40, 50, 60, 65])
def test_cold_oil_reaches_the_setting(psi: float) -> None:
    setting = BOOK.limits["relief_setting"].typical
    read = derived("never_reaches_setting_cold", f"2500 rpm, 20 C, {psi} psi")
    assert read == pytest.approx(sure_below(look(2500, 20, psi), setting), abs=1e-6)


def test_a_standing_pump_contradicts_a_gauge_that_shows_pressure() -> None:
    """One alone, or the gauge at zero as well, contradicts nothing."""

    def contradicted(*present: str, absent: tuple[str, ...] = ()) -> bool:
        answer = Diagnosis(BOOK, case_of(*present, absent=absent))
        rules = {t.rule.id for t in answer.inference.result.contradictions.values()}
        return "pressure_from_a_standing_pump" in rules

    assert contradicted("pump_seen_standing", absent=("direct_gauge_zero",))
    assert not contradicted("pump_seen_standing")
    assert not contradicted("pump_seen_standing", "direct_gauge_zero")
    assert not contradicted(absent=("direct_gauge_zero",))


def test_any_speed_stands_for_idle_and_both_sides_of_the_middle() -> None:
    """Four fifths of the spread either way: with it negative the outer two would change places."""
    vague = Reading(1500.0, 363.0, 20 * PSI, rpm_spread=500.0, at_all_speeds=True)
    assert [r.rpm for r in moments(vague, 700.0)] == pytest.approx([700.0, 1100.0, 1900.0])
    assert all(r.rpm_spread == 0.0 for r in moments(vague, 700.0))


def test_what_is_remembered_of_the_usual_pressure_is_a_tenth_off() -> None:
    """One standard deviation below the bound: half a panel gauge's 3 psi and a tenth of 80 psi."""
    off = (1.5**2 + 8.0**2) ** 0.5
    low = (gauge.FALLEN * 80 - off) * PSI
    reading = Reading(2500.0, 363.0, low, usual=80 * PSI)
    assert gauge.sure_fallen(reading) == pytest.approx(0.8413, abs=1e-3)


def test_a_vague_reading_is_low_as_far_as_what_it_may_have_been() -> None:
    """The mean over the speeds and temperatures it may have been taken at."""
    vague = Reading(1500.0, 363.0, 16 * PSI, rpm_spread=400.0, oil_spread=5.0)
    each = [sure_below(r, r.rpm / 100 * PSI) for r in gauge.possible(vague)]
    assert min(each) < 0.5 < max(each)
    found = gauge.sure_low(vague, lambda r: r.rpm / 100 * PSI)
    assert found == pytest.approx(sum(each) / 25)
