"""Readings as people give them: parsed, resolved to distributions, judged with less certainty."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.case import Case
from diagnose.case.gauge_looks import as_given, said
from diagnose.case.loading import from_text
from diagnose.case.pressures import pressure_of
from diagnose.case.schema import ReadingEntry
from diagnose.entry.readings import ReadingInput, parse_reading
from knowledge.book import the_book
from knowledge.engines.features import DIESEL
from knowledge.model import Gauge, Reading, State
from knowledge.pressure import gauge
from knowledge.reports import when
from knowledge.reports.words import Circumstance, Heat, Speed
from knowledge.units import PSI, UnitError

BOOK = the_book()
C = 273.15


def read(text: str) -> Reading:
    return parse_reading(text).in_si()


# ------------------------------------------------------------------------------ as typed

TYPED: list[tuple[str, dict[str, Any]]] = [
    ("5 psi hot idle", {"pressure": "5 psi", "rpm": "idle", "oil": "hot"}),
    ("5 psi at hot idle", {"pressure": "5 psi", "rpm": "idle", "oil": "hot"}),
    ("idle, hot, 5 psi", {"pressure": "5 psi", "rpm": "idle", "oil": "hot"}),
    ("60 psi cold", {"pressure": "60 psi", "oil": "cold"}),
    (
        "38 psi 1000 rpm coolant 165 F",
        {"pressure": "38 psi", "rpm": "1000 rpm", "coolant": "165 F"},
    ),
    (
        "38 psi at 1000 rpm once the water is at 165 F",
        {"pressure": "38 psi", "rpm": "1000 rpm", "coolant": "165 F"},
    ),
    ("15 psi half throttle", {"pressure": "15 psi", "rpm": "half throttle"}),
    ("third of the dial hot idle", {"pressure": "third of the dial", "rpm": "idle", "oil": "hot"}),
    ("1/3 of a 100 psi dial", {"pressure": "1/3 of a 100 psi dial"}),
    ("usually 80 psi now 40 psi", {"pressure": "40 psi", "usual": "80 psi"}),
    ("usually 80 now 40 psi", {"pressure": "40 psi", "usual": "80 psi"}),
    ("normally 50 to 55 psi, 20 psi driving", {"pressure": "20 psi", "usual": "50 to 55 psi"}),
    ("2 bar, used to show 4", {"pressure": "2 bar", "usual": "4 bar"}),
    ("under 25 psi any speed", {"pressure": "under 25 psi", "rpm": "any speed"}),
    ("never above 25 psi however fast", {"pressure": "never above 25 psi", "rpm": "any speed"}),
    ("40 to 50 psi cruise", {"pressure": "40 to 50 psi", "rpm": "cruise"}),
    ("3-4 BAR driving", {"pressure": "3-4 BAR", "rpm": "cruise"}),
    ("off the top cold", {"pressure": "off the top", "oil": "cold"}),
    ("0 hot idle", {"pressure": "0", "rpm": "idle", "oil": "hot"}),
    ("nothing at idle direct", {"pressure": "0", "rpm": "idle", "gauge": "direct"}),
    ("about 8 psi idle", {"pressure": "about 8 psi", "rpm": "idle"}),
    ("12 psi in bends", {"pressure": "12 psi", "during": ("bends",)}),
    ("30 psi at start", {"pressure": "30 psi", "during": ("at start",)}),
    ("30 psi start", {"pressure": "30 psi", "at": "start"}),
    ("8 psi after minutes of running", {"pressure": "8 psi"}),
]


@pytest.mark.parametrize(("text", "parts"), TYPED, ids=[t[0][:30] for t in TYPED])
def test_typed_readings(text: str, parts: dict[str, Any]) -> None:
    got = parse_reading(text)
    assert {k: getattr(got, k) for k in parts} == parts


FIGURE = st.integers(1, 120).map(lambda n: f"{n} psi")
PRESSURES = st.one_of(
    FIGURE,
    st.sampled_from(["0", "a third of the dial", "3/4 of the dial", "off the top", "12 psi"]),
    st.tuples(st.sampled_from(["under", "over", "never above", "about"]), FIGURE).map(" ".join),
    st.tuples(st.integers(1, 50), st.integers(51, 99)).map(lambda t: f"{t[0]} to {t[1]} psi"),
)
PLAIN_CIRCUMSTANCES = [
    c.value for c in Circumstance if c.value not in {*Speed, *Heat, "off idle", "low oil level"}
]


@given(
    pressure=PRESSURES,
    rpm=st.none() | st.sampled_from(list(Speed)) | st.just("1100 rpm"),
    oil=st.none() | st.sampled_from(list(Heat)) | st.just("62 C"),
    coolant=st.none() | st.just("165 F"),
    usual=st.none() | FIGURE,
    during=st.lists(st.sampled_from(PLAIN_CIRCUMSTANCES), unique=True, max_size=2),
    direct=st.sampled_from([None, "direct"]),
    order=st.permutations(range(7)),
)
def test_parts_in_any_order_make_the_same_reading(
    pressure: str,
    rpm: str | None,
    oil: str | None,
    coolant: str | None,
    usual: str | None,
    during: list[str],
    direct: Any,
    order: list[int],
) -> None:
    """Words whose phrases would join across parts ("hot or cold" ...) are kept apart by commas."""
    parts = [
        pressure,
        rpm,
        oil,
        f"coolant {coolant}" if coolant else None,
        f"usually {usual}" if usual else None,
        " and ".join(during) or None,
        direct,
    ]
    text = " and ".join(part for part in (parts[i] for i in order) if part)
    assert parse_reading(text) == ReadingInput(
        pressure=pressure,
        rpm=rpm and str(rpm),
        oil=oil and str(oil),
        coolant=coolant,
        usual=usual,
        during=tuple(during),
        gauge=direct,
    )


@given(
    pressure=PRESSURES,
    rpm=st.none() | st.sampled_from(list(Speed)) | st.just("1100 rpm"),
    oil=st.none() | st.sampled_from(list(Heat)) | st.just("62 C"),
    usual=st.none() | FIGURE,
)
def test_what_is_shown_of_a_reading_reads_back(
    pressure: str, rpm: str | None, oil: str | None, usual: str | None
) -> None:
    given_ = ReadingInput(pressure=pressure, rpm=rpm, oil=oil, usual=usual)
    again = parse_reading(as_given(given_.numbered(1).entry))
    assert again == given_


# ------------------------------------------------------------------------------ pressures

WRITTEN = [
    ("8 psi", 8, 0, ""),
    ("0", 0, 0, ""),
    ("0 psi", 0, 0, ""),
    ("40 to 50 psi", 45, 2.89, ""),
    ("40-50 psi", 45, 2.89, ""),
    ("under 25 psi", 25, 0, "most"),
    ("no more than 25 psi", 25, 0, "most"),
    ("over 80 psi", 80, 0, "least"),
    ("off the top", 80, 12, "least"),
    ("off the top of a 60 psi dial", 60, 0, "least"),
    ("a third of the dial", 26.67, 5.66, ""),
    ("1/3 of the dial", 26.67, 5.66, ""),
    ("three quarters of the dial", 60, 9.85, ""),
    ("50 % of a 100 psi dial", 50, 5, ""),
    ("under half the dial", 40, 7.21, "most"),
    ("about 40 psi", 40, 4, ""),
    ("about 4 psi", 4, 1, ""),
]


@pytest.mark.parametrize(("text", "psi", "spread", "bound"), WRITTEN, ids=[w[0] for w in WRITTEN])
def test_pressures_as_written(text: str, psi: float, spread: float, bound: str) -> None:
    got = pressure_of(text)
    assert (got.value / PSI, got.spread / PSI) == pytest.approx((psi, spread), abs=0.01)
    assert got.bound.value == (f"at {bound}" if bound else "exact")


@pytest.mark.parametrize("text", ["", "low", "50 to 40 psi", "3/2 of the dial", "1/0 of the dial"])
def test_no_pressures(text: str) -> None:
    with pytest.raises(UnitError):
        pressure_of(text)


# ------------------------------------------------------------------------------ distributions


def test_words_become_distributions_about_the_engines_own_figures() -> None:
    """By "hot idle" is meant idle within 100 rpm and 80 to 105 °C, nine times in ten."""
    look = read("5 psi hot idle")
    assert look.rpm == 700.0
    assert look.rpm_spread == pytest.approx(100 / 1.645, abs=1)
    assert look.oil_temperature == pytest.approx(92 + C)
    assert look.oil_spread == pytest.approx(12.5 / 1.645, abs=0.2)
    slow = parse_reading("5 psi hot idle").numbered(1, of=when.speeds_of(520.0, True)).reading
    assert slow.rpm == 520.0
    diesel = parse_reading("40 psi cruise").numbered(1, of=when.speeds_of(None, True)).reading
    assert 1400 < diesel.rpm < 2000 < read("40 psi cruise").rpm < 3000


def test_speed_words_are_in_order() -> None:
    for diesel in (False, True):
        of = when.speeds_of(None, diesel)
        order = [Speed.CRANKING, Speed.IDLE, Speed.OFF_IDLE, Speed.CRUISE, Speed.FULL]
        means = [when.speed(word, of).mean for word in order]
        assert means == sorted(means)
        assert all(when.speed(word, of).sd > 0 for word in Speed)
    heats = [when.heat(h).mean for h in (Heat.COLD, Heat.WARMING, Heat.HOT, Heat.VERY_HOT)]
    assert heats == sorted(heats)


@given(st.floats(-30, 130), st.floats(-30, 130))
def test_oil_follows_the_coolant_and_lags_behind_it(one: float, other: float) -> None:
    a, b = (when.oil_from_coolant(c + C).mean for c in sorted((one, other)))
    assert a <= b
    assert a <= max(min(one, other), -30) + C + 1e-6


def test_what_is_missing_is_unknown_and_never_hot() -> None:
    bare = read("20 psi")
    assert bare.oil_temperature is None
    assert bare.rpm_spread > 500
    for text in (
        "5 psi",
        "5 psi idle",
        "40 psi half throttle",
        "8 psi 700 rpm",
        "6 psi hot or cold",
    ):
        assert not gauge.is_hot(read(text)), text
        assert not gauge.is_cold(read(text)), text
    assert not gauge.idles(bare, 700)
    assert not gauge.at_speed(bare)
    assert gauge.is_hot(read("5 psi hot"))
    assert gauge.is_cold(read("60 psi cold"))
    assert gauge.is_hot(read("40 psi cruise"))  # an engine that is driven is mostly warm


HEAD = """
schema = 1
[engine]
layout = "distributor_v8"
"""


def case_of(*readings: str, head: str = HEAD) -> Case:
    text = head
    for no, reading in enumerate(readings, 1):
        lines = reading.replace("; ", "\n")
        text += f"[[reading]]\nno = {no}\n{lines}\n"
    return from_text(text, None, BOOK)


def test_a_case_file_takes_words_and_figures() -> None:
    case = case_of(
        'pressure = "5 psi"; rpm = "idle"; oil = "hot"',
        'pressure = "a third of the dial"; during = ["bends"]',
        'pressure = "38 psi"; rpm = "1000 rpm"; coolant = "165 F"',
        'pressure = "0"; rpm = "hot idle"',
        'pressure = "40 psi"; usual = "80 psi"',
        'rpm = "700 rpm"; oil = "95 C"; pressure = "8 psi"',
    )
    looks = [r.reading for r in case.readings]
    assert [r.said for r in looks] == [
        "5 psi at hot idle",
        "a third of the dial, bends",
        "38 psi at 1000 rpm, coolant 165 F",
        "0 on the gauge at hot idle",
        "40 psi, usually 80 psi",
        "",
    ]
    assert looks[3].pressure == 0.0
    assert gauge.is_hot(looks[3])
    assert looks[4].usual == pytest.approx(80 * PSI)
    assert looks[5] == Reading(700.0, 95 + C, looks[5].pressure, Gauge.PANEL, "gallery")


def test_the_engines_idle_figure_and_fuel_set_what_words_mean() -> None:
    head = HEAD.replace("distributor_v8", "unknown") + '[engine.limits]\nidle_speed = "550 rpm"\n'
    head = head.replace('layout = "unknown"', 'layout = "unknown"\nhas = ["diesel"]')
    case = case_of(
        'pressure = "5 psi"; rpm = "idle"', 'pressure = "5 psi"; rpm = "cruise"', head=head
    )
    assert case.features[DIESEL] is State.PRESENT
    idle, cruise = (r.reading.rpm for r in case.readings)
    assert idle == 550
    assert cruise == when.speeds_of(550, True).cruise.mean


def test_a_baseline_takes_words() -> None:
    text = HEAD + '[[baseline]]\nno = 1\nrpm = "idle"\noil = "hot"\npressure = "20 to 25 psi"\n'
    [known] = from_text(text, None, BOOK).baseline
    assert known.reading.rpm_spread > 0
    assert known.reading.pressure == pytest.approx(22.5 * PSI)


@pytest.mark.parametrize(
    ("text", "ever"),
    [
        ("never above 25 psi", True),
        ("never over 25 psi cold", True),
        ("never above 25 psi at idle", False),
        ("under 25 psi", False),
    ],
)
def test_never_holds_at_every_speed(text: str, ever: bool) -> None:
    """Without a speed, "never above" is said of all of them: a ceiling."""
    assert read(text).at_all_speeds is ever


@pytest.mark.parametrize(
    ("text", "psi"),
    [
        ("1/4 of the 80 psi scale", 20.0),
        ("3/4 of the 80 psi scale", 60.0),
        ("50% of the 80 psi scale", 40.0),
    ],
)
def test_a_share_of_a_known_scale(text: str, psi: float) -> None:
    assert pressure_of(text).value / PSI == pytest.approx(psi)


def test_nothing_is_shared_among_none() -> None:
    with pytest.raises(UnitError, match="no share of a dial"):
        pressure_of("1/0 of the dial")


@pytest.mark.parametrize(
    ("usual", "words"),
    [(None, "10 psi at hot idle"), ("40 psi", "10 psi, usually 40 psi, at hot idle")],
)
def test_a_reading_is_said_with_its_usual_pressure(usual: str | None, words: str) -> None:
    entry = ReadingEntry.model_validate(
        {"no": 1, "rpm": "idle", "oil": "hot", "pressure": "10 psi", "usual": usual}
    )
    assert said(entry) == words


@pytest.mark.parametrize(
    "text", ["1,5 bar at idle", "1,500 rpm 95 C 2,5 bar", "2,5 - 3,5 bar idle"]
)
def test_a_reading_with_a_decimal_comma(text: str) -> None:
    """It is the reading with a point; "1,500 rpm" has thousands."""
    pointed = text.replace("1,500", "1500").replace(",", ".")
    assert parse_reading(text).in_si() == parse_reading(pointed).in_si()
