"""Readings in words judged: patterns, spreads, alarms, with less certainty than figures."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.entry.readings import parse_reading
from diagnose.inference.chaining import Facts, InferenceResult, infer
from knowledge.book import the_book
from knowledge.limits import Limit
from knowledge.model import Finding, Reading, Severity, State
from knowledge.pressure import gauge
from knowledge.pressure import patterns as p
from knowledge.pressure import patterns_speed as ps
from knowledge.pressure.quantities import STOP_IDLE_PRESSURE
from knowledge.stations.oil.findings_heat import OIL_TEMPERATURE_HIGH
from knowledge.units import PSI

BOOK = the_book()


# ------------------------------------------------------------------------------ patterns


def result_of(*texts: str, limits: dict[Limit, float] | None = None) -> InferenceResult:
    readings = tuple(parse_reading(t).in_si() for t in texts)
    return infer(BOOK.statements, Facts(readings=readings, limits=limits or {}))


def found(*texts: str) -> dict[Finding, float]:
    """The findings that follow: how sure each is present (minus: absent)."""
    out = {}
    for d in result_of(*texts).derived:
        out[d.finding] = d.sure if d.state is State.PRESENT else -d.sure
    return out


PATTERNS: list[tuple[tuple[str, ...], Finding, bool]] = [
    (("4 psi hot idle",), p.GAUGE_READS_LOW, True),
    (("25 psi hot idle",), p.GAUGE_READS_LOW, False),
    (("0 hot idle",), p.GAUGE_READS_ZERO, True),
    (("30 psi hot idle",), p.GAUGE_READS_ZERO, False),
    (("0 hot idle", "40 psi 2000 rpm hot"), p.GAUGE_READS_ZERO, False),
    (("0 hot idle", "40 psi 2000 rpm hot"), p.GAUGE_READS_LOW, True),
    (("0 cruise hot", "60 psi cruise hot"), p.GAUGE_READS_ZERO, True),
    (("60 psi cold", "5 psi hot idle"), ps.GOOD_COLD_LOW_HOT, True),
    (("60 psi cold", "5 psi hot idle", "40 psi cruise"), ps.LOW_HOT_IDLE_GOOD_SPEED, True),
    (("60 psi cold", "5 psi hot idle", "40 psi cruise"), ps.LOW_AT_ALL_SPEEDS, False),
    (("5 psi hot idle", "45 psi cruise hot"), ps.LOW_HOT_IDLE_GOOD_SPEED, True),
    (("5 psi hot idle", "25 psi off idle hot"), ps.RISES_JUST_OFF_IDLE, True),
    (("8 psi cold",), ps.LOW_EVEN_COLD, True),
    (("60 psi cold",), ps.LOW_EVEN_COLD, False),
    (("never above 25 psi any speed",), ps.CAPPED_LOW, True),
    (("25 psi any speed hot",), ps.CAPPED_LOW, True),
    (("60 psi full speed hot",), ps.CAPPED_LOW, False),
    (("50 psi cruise hot", "15 psi full speed hot"), ps.FALLS_AS_REVS_RISE, True),
    (("20 psi hot idle", "50 psi cruise hot"), ps.FALLS_AS_REVS_RISE, False),
    (("40 psi cruise usually 80 psi",), p.GAUGE_READS_LOW, True),
    (("95 psi cruise usually 50 psi",), p.GAUGE_READS_HIGH, True),
    (("off the top cold",), p.GAUGE_READS_HIGH, True),
    (("under 4 psi any speed hot or cold",), ps.LOW_AT_ALL_SPEEDS, True),
]


@pytest.mark.parametrize(("texts", "finding", "there"), PATTERNS, ids=lambda v: str(v)[:40])
def test_patterns_follow_from_words(texts: tuple[str, ...], finding: Finding, there: bool) -> None:
    sure = found(*texts).get(finding)
    assert sure is not None
    assert (sure > 0) is there
    assert 0.6 <= abs(sure) <= 0.99


SILENT: list[tuple[tuple[str, ...], Finding]] = [
    (("60 psi", "5 psi idle"), ps.GOOD_COLD_LOW_HOT),  # neither heat is known
    (("5 psi idle", "45 psi cruise"), ps.LOW_HOT_IDLE_GOOD_SPEED),
    (("never above 4 psi any speed",), ps.CAPPED_LOW),  # too low for a ceiling
    (("under 25 psi hot idle",), p.GAUGE_READS_LOW),  # may be 24 or 4
    (("over 5 psi hot idle",), p.GAUGE_READS_LOW),
    (("15 psi",), ps.LOW_EVEN_COLD),
    (("50 psi any speed", "under 40 psi full speed hot"), ps.RISES_JUST_OFF_IDLE),
    (("5 psi very hot idle",), OIL_TEMPERATURE_HIGH),  # a word is no measurement
]


@pytest.mark.parametrize(("texts", "finding"), SILENT, ids=lambda v: str(v)[:40])
def test_what_words_leave_open_gives_no_finding(texts: tuple[str, ...], finding: Finding) -> None:
    assert finding not in found(*texts)


def test_words_are_less_sure_than_figures_and_say_the_same() -> None:
    pairs = [
        (("60 psi cold", "8 psi hot idle"), ("1150 rpm 20 C 60 psi", "700 rpm 92 C 8 psi")),
        (("8 psi hot idle", "40 psi cruise"), ("700 rpm 92 C 8 psi", "2475 rpm 88 C 40 psi")),
    ]
    for vague, exact in pairs:
        less, more = found(*vague), found(*exact)
        for finding in (ps.GOOD_COLD_LOW_HOT, ps.LOW_HOT_IDLE_GOOD_SPEED, p.GAUGE_READS_LOW):
            if finding in less:
                assert less[finding] * more[finding] > 0
                assert abs(less[finding]) <= abs(more[finding]) + 1e-9


# ------------------------------------------------------------------------------ spreads

PSIS = st.floats(0, 100).map(lambda x: x * PSI)
WIDTHS = st.floats(0, 30)


@given(PSIS, PSIS, WIDTHS, WIDTHS)
def test_more_spread_of_the_pressure_is_less_sure(
    pressure: float, wanted: float, one: float, other: float
) -> None:
    narrow, wide = (
        Reading(700, 365, pressure, pressure_spread=s * PSI) for s in sorted((one, other))
    )
    for sure in (gauge.sure_below, gauge.sure_above):
        assert abs(sure(wide, wanted) - 0.5) <= abs(sure(narrow, wanted) - 0.5) + 1e-12


@given(st.floats(0.01, 0.99), st.floats(0, 1), st.floats(0, 1))
def test_a_less_likely_moment_is_less_sure(sure: float, one: float, other: float) -> None:
    less, more = sorted((one, other))
    near, far = gauge.counted(sure, less), gauge.counted(sure, more)
    assert abs(near - 0.5) <= abs(far - 0.5) + 1e-12
    assert (near - 0.5) * (sure - 0.5) >= 0


@given(
    psi=st.floats(0, 90),
    rpm=st.floats(1600, 4000),
    one=st.floats(0, 400),
    other=st.floats(0, 400),
)
def test_more_spread_of_the_speed_is_less_sure(
    psi: float, rpm: float, one: float, other: float
) -> None:
    """Between idle figure and relief setting the pressure wanted is straight over speed."""
    narrow, wide = (Reading(rpm, 365, psi * PSI, rpm_spread=s) for s in sorted((one, other)))

    def sure(reading: Reading) -> float:
        return gauge.sure_low(reading, lambda r: 10 * PSI * r.rpm / 1000)

    assert abs(sure(wide) - 0.5) <= abs(sure(narrow) - 0.5) + 1e-6


@given(PSIS, st.floats(400, 6000), st.none() | st.floats(270, 400))
def test_a_reading_in_figures_is_its_only_possibility(
    pressure: float, rpm: float, heat: float | None
) -> None:
    exact = Reading(rpm, heat, pressure)
    assert gauge.possible(exact) == [exact]
    assert gauge.moments(exact, 700) == [exact]
    assert gauge.sure_low(exact, lambda _: 20 * PSI) == gauge.sure_below(exact, 20 * PSI)
    shares = [gauge.hot_share(exact), gauge.cold_share(exact), gauge.idle_share(exact, 700)]
    assert set(shares) <= {0.0, 1.0}


@given(PSIS, PSIS)
def test_a_bound_never_says_the_other_side(bound: float, wanted: float) -> None:
    most = Reading(700, 365, bound, at_most=True)
    least = Reading(700, 365, bound, at_least=True)
    assert gauge.sure_below(most, wanted) >= 0.5 >= gauge.sure_above(most, wanted)
    assert gauge.sure_above(least, wanted) >= 0.5 >= gauge.sure_below(least, wanted)


@given(PSIS, st.floats(1, 100).map(lambda x: x * PSI))
def test_a_comparison_is_fallen_or_risen_and_never_both(now: float, usual: float) -> None:
    one = Reading(2500, 365, now, usual=usual)
    assert min(gauge.sure_fallen(one), gauge.sure_risen(one)) < 0.5
    assert gauge.sure_fallen(replace(one, usual=None)) == 0.0


# ------------------------------------------------------------------------------ alarms


def stops(*texts: str, limit: float | None = None) -> bool:
    limits: dict[Limit, float] = {} if limit is None else {STOP_IDLE_PRESSURE: limit * PSI}
    alarms = result_of(*texts, limits=limits).alarms
    return any(a.severity is Severity.STOP and "limit" in a.says for a in alarms)


@pytest.mark.parametrize(
    ("texts", "limit", "stopped"),
    [
        (("5 psi hot idle",), 10, True),
        (("5 psi hot idle",), None, True),
        (("12 psi hot idle",), 10, False),
        (("12 psi cruise",), None, True),  # below 20 psi from 2000 rpm
        (("12 psi",), None, False),  # mostly below 2000 rpm, as far as is known
        (("15 psi any speed",), None, True),
        (("under 25 psi any speed",), None, False),
        (("under 7 psi hot idle",), None, True),
        (("over 5 psi hot idle",), None, False),
        (("6 to 8 psi hot idle",), None, True),
        (("9 to 12 psi hot idle",), None, False),
        (("a third of the dial hot idle",), None, False),
        (("5 psi hot idle", "20 psi hot idle direct"), None, False),  # belied
    ],
)
def test_stop_alarms_on_words(texts: tuple[str, ...], limit: float | None, stopped: bool) -> None:
    assert stops(*texts, limit=limit) is stopped


def test_an_alarm_shows_the_reading_as_it_was_given() -> None:
    says = [a.says for a in result_of("5 psi hot idle").alarms]
    assert any(s.startswith("5 psi at hot idle, limit 7 psi") for s in says)


def test_three_vague_readings_move_the_ranking_to_wear() -> None:
    """Of "60 cold, 5 at hot idle, 40 driving": likelier wear than a screen."""
    text = """
schema = 1
[[reading]]
no = 1
pressure = "60 psi"
oil = "cold"
[[reading]]
no = 2
pressure = "5 psi"
rpm = "idle"
oil = "hot"
[[reading]]
no = 3
pressure = "40 psi"
rpm = "cruise"
"""
    case = from_text(text, None, BOOK)
    ranks = {r.cause.id: r.probability for r in Diagnosis(BOOK, case).ranking}
    assert ranks["bearing_wear_mains"] > ranks["pickup_screen_blocked"]


def test_the_usual_pressure_shows_the_setting_where_it_is_higher() -> None:
    """57 psi reaches the usual setting; where the gauge used to show 85 it does not."""
    assert found("57 psi full speed hot")[ps.CAPPED_LOW] < 0
    assert ps.CAPPED_LOW not in found("57 psi full speed hot usually 85 psi")
    assert found("85 psi cruise cold")[p.GAUGE_READS_HIGH] > 0
    assert found("85 psi cruise cold usually 85 psi")[p.GAUGE_READS_HIGH] < 0
