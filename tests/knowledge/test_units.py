"""Units as entered: every unit against its definition, and what must be refused."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from knowledge.units import (
    COUNT,
    DIMENSIONS,
    LENGTH,
    PRESSURE,
    SPEED,
    TEMPERATURE,
    TORQUE,
    Dimension,
    Unit,
    UnitError,
    parse,
    show,
    unit_in,
    unit_named,
)

# NIST Special Publication 811 (2008), appendix B: exact definitions; B.6 and B.8 give them as
# conversion factors. inch 0.0254 m, pound 0.453 592 37 kg, standard gravity 9.806 65 m/s2,
# US gallon 231 in3, imperial gallon 4.546 09 L, degree Fahrenheit (t + 459.67)/1.8 K.
INCH = Fraction("0.0254")
FOOT = 12 * INCH
LBF = Fraction("0.45359237") * Fraction("9.80665")
KGF = Fraction("9.80665")
LBF_IN = float(LBF * INCH)
US_GALLON = 231 * INCH**3
UK_GALLON = Fraction("0.00454609")

#: every unit's first name, its factor to SI and its offset, both exact
EXACT: dict[str, dict[str, tuple[Fraction, Fraction]]] = {
    "pressure": {
        "psi": (LBF / INCH**2, Fraction(0)),
        "bar": (Fraction(10**5), Fraction(0)),
        "kpa": (Fraction(1000), Fraction(0)),
        "mpa": (Fraction(10**6), Fraction(0)),
        "pa": (Fraction(1), Fraction(0)),
        "kg/cm2": (KGF / Fraction("0.01") ** 2, Fraction(0)),
    },
    "temperature": {
        "c": (Fraction(1), Fraction("273.15")),
        "f": (Fraction(5, 9), Fraction("459.67") * Fraction(5, 9)),
        "k": (Fraction(1), Fraction(0)),
    },
    "length": {
        "in": (INCH, Fraction(0)),
        "mm": (Fraction(1, 1000), Fraction(0)),
        "thou": (INCH / 1000, Fraction(0)),
        "um": (Fraction(1, 10**6), Fraction(0)),
        "m": (Fraction(1), Fraction(0)),
        "cm": (Fraction(1, 100), Fraction(0)),
    },
    "speed": {"rpm": (Fraction(1), Fraction(0))},
    "torque": {
        "n·m": (Fraction(1), Fraction(0)),
        "lb·ft": (LBF * FOOT, Fraction(0)),
        "in·lb": (LBF * INCH, Fraction(0)),
        "kgf·m": (KGF, Fraction(0)),
    },
    "volume": {
        "l": (Fraction(1, 1000), Fraction(0)),
        "ml": (Fraction(1, 10**6), Fraction(0)),
        "qt": (US_GALLON / 4, Fraction(0)),
        "imp qt": (UK_GALLON / 4, Fraction(0)),
        "imp pt": (UK_GALLON / 8, Fraction(0)),
        "imp gal": (UK_GALLON, Fraction(0)),
        "pt": (US_GALLON / 8, Fraction(0)),
        "gal": (US_GALLON, Fraction(0)),
    },
    "time": {
        "s": (Fraction(1), Fraction(0)),
        "min": (Fraction(60), Fraction(0)),
        "h": (Fraction(3600), Fraction(0)),
        "day": (Fraction(86_400), Fraction(0)),
        "week": (Fraction(7 * 86_400), Fraction(0)),
        # the Gregorian calendar repeats after 146,097 days, which are 400 years
        "month": (Fraction(146_097 * 86_400, 4_800), Fraction(0)),
        "year": (Fraction(146_097 * 86_400, 400), Fraction(0)),
    },
    "fraction": {"%": (Fraction(1, 100), Fraction(0)), "ppm": (Fraction(1, 10**6), Fraction(0))},
    "viscosity": {"cst": (Fraction(1, 10**6), Fraction(0)), "m2/s": (Fraction(1), Fraction(0))},
    "resistance": {"ohm": (Fraction(1), Fraction(0)), "kohm": (Fraction(1000), Fraction(0))},
    "force": {
        "n": (Fraction(1), Fraction(0)),
        "lbf": (LBF, Fraction(0)),
        "kgf": (KGF, Fraction(0)),
    },
    "angle": {"deg": (Fraction(1), Fraction(0))},
    "count": {"": (Fraction(1), Fraction(0))},
}
#: NIST SP 811, appendix B.8, as printed there, seven digits
PRINTED = [
    ("1 psi", PRESSURE, 6.894757e3),
    ("1 kgf/cm2", PRESSURE, 9.80665e4),
    ("1 lbf·ft", TORQUE, 1.355818),
    ("1 lbf·in", TORQUE, 1.129848e-1),
    ("1 mil", LENGTH, 2.54e-5),
    ("1 us gal", DIMENSIONS["volume"], 3.785412e-3),
    ("1 us qt", DIMENSIONS["volume"], 9.463529e-4),
    ("1 pint", DIMENSIONS["volume"], 4.731765e-4),
    ("1 cSt", DIMENSIONS["viscosity"], 1e-6),
    ("1 lbf", DIMENSIONS["force"], 4.448222),
]
UNITS = [(d, u) for d in DIMENSIONS.values() for u in d.units]
NAMES = [(d, u, n) for d, u in UNITS for n in u.names]
SIZES = st.floats(min_value=1e-9, max_value=1e8) | st.floats(min_value=-1e8, max_value=-1e-9)


def test_every_unit_has_its_exact_definition_here() -> None:
    for dimension, unit in UNITS:
        factor, offset = EXACT[dimension.id][unit.names[0]]
        assert math.isclose(unit.factor, factor, rel_tol=4e-16), unit
        assert math.isclose(unit.offset, offset, rel_tol=4e-16, abs_tol=0.0), unit
    assert sum(len(units) for units in EXACT.values()) == len(UNITS)


@pytest.mark.parametrize(("text", "dimension", "si"), PRINTED, ids=lambda v: str(v)[:10])
def test_factors_as_printed_by_nist(text: str, dimension: Dimension, si: float) -> None:
    assert float(f"{parse(text, dimension):.6e}") == pytest.approx(si, rel=1e-9)


@pytest.mark.parametrize(
    ("typed", "kelvin"),
    [("95 C", "368.15"), ("203 F", "368.15"), ("32 °F", "273.15"), ("-40 F", "233.15")],
)
def test_95_c_is_a_temperature(typed: str, kelvin: str) -> None:
    assert parse(typed, TEMPERATURE) == pytest.approx(float(kelvin), abs=1e-9)


@settings(max_examples=20, deadline=None)
@given(value=SIZES)
def test_shown_values_can_be_read_back(value: float) -> None:
    """In every unit, by every name of it."""
    for dimension, unit, name in NAMES:
        si = value * unit.factor + unit.offset
        read = parse(show(si, dimension, name, digits=17), dimension)
        assert math.isclose(read, si, rel_tol=1e-12, abs_tol=1e-12 * max(1.0, abs(unit.offset))), (
            dimension.id,
            name,
        )


@settings(deadline=None)
@given(value=SIZES, which=st.sampled_from(UNITS))
def test_the_first_unit_is_the_one_shown(value: float, which: tuple[Dimension, Unit]) -> None:
    dimension, _ = which
    text = show(value, dimension, digits=17)
    assert unit_named(unit_in(text, dimension) or "", dimension) is dimension.units[0]


@settings(deadline=None)
@given(which=st.sampled_from(NAMES), value=st.integers(1, 10**6), blanks=st.integers(0, 3))
def test_blind_to_case_and_blanks(
    which: tuple[Dimension, Unit, str], value: int, blanks: int
) -> None:
    dimension, unit, name = which
    expected = value * unit.factor + unit.offset
    for spelling in (name, name.upper(), name.title(), name.replace(" ", "   ")):
        text = f"{' ' * blanks}{value}{' ' * blanks}{spelling}{' ' * blanks}"
        assert parse(text, dimension) == pytest.approx(expected, rel=1e-14), text


@settings(deadline=None)
@given(
    whole=st.integers(0, 9999),
    part=st.from_regex(r"\A[0-9]{1,5}\Z").filter(lambda p: len(p) != 3),
    which=st.sampled_from(NAMES),
    sign=st.sampled_from(["", "-", "+"]),
)
def test_a_decimal_comma_is_a_decimal_point(
    whole: int, part: str, which: tuple[Dimension, Unit, str], sign: str
) -> None:
    dimension, _, name = which
    if dimension is SPEED:
        return  # where it parts thousands
    assert parse(f"{sign}{whole},{part} {name}", dimension) == parse(
        f"{sign}{whole}.{part} {name}", dimension
    )


def test_4_2_bar_is_never_42_bar() -> None:
    assert parse("4,2 bar", PRESSURE) == parse("4.2 bar", PRESSURE)


@pytest.mark.parametrize("dimension", DIMENSIONS.values(), ids=lambda d: d.id)
def test_a_comma_before_three_digits_is_clear_or_refused(dimension: Dimension) -> None:
    """It parts thousands of revolutions, is decimal in a length and below one, else either."""
    name = dimension.units[0].names[0]
    if dimension is SPEED:
        assert parse(f"1,500 {name}", dimension) == 1500
    elif dimension is LENGTH:
        assert parse(f"2,448 {name}", dimension) == parse(f"2.448 {name}", dimension)
    else:
        assert parse(f"0,448 {name}", dimension) == parse(f"0.448 {name}", dimension)
        with pytest.raises(UnitError) as refused:
            parse(f"1,500 {name}", dimension)
        assert all(spelling in str(refused.value) for spelling in dimension.spellings)
        assert str(refused.value).endswith("without a comma")
    with pytest.raises(UnitError):
        parse(f"1,2,3 {name}", dimension)


@pytest.mark.parametrize("dimension", DIMENSIONS.values(), ids=lambda d: d.id)
def test_the_three_spellings_are_right_and_of_one_size_of_thing(dimension: Dimension) -> None:
    assert len(set(dimension.spellings)) == 3
    for text in dimension.spellings:
        parse(text, dimension)


@settings(deadline=None)
@given(value=st.floats(min_value=1e-3, max_value=1e6))
def test_foot_pounds_and_inch_pounds_are_apart_by_twelve(value: float) -> None:
    feet = [parse(f"{value!r} {n}", TORQUE) for n in ("lb-ft", "ft-lb", "lb ft", "lbf·ft", "FTLB")]
    inches = [parse(f"{value!r} {n}", TORQUE) for n in ("in-lb", "lb-in", "in lb", "lbf·in")]
    assert len(set(feet)) == len(set(inches)) == 1
    assert feet[0] / inches[0] == pytest.approx(12, rel=1e-15)


INCH_POUNDS = [
    "in-lb",
    "in·lb",
    "in lb",
    "lbf·in",
    "lbf in",
    "lb-in",
    "IN-LBS",
    "in.lb",
    "inch pounds",
]
FOOT_POUNDS = ["ft-lb", "lb-ft", "lb·ft", "lbf ft", "lbf·ft", "ft lbs", "FT-LBS", "foot-pounds"]


@pytest.mark.parametrize("name", INCH_POUNDS)
def test_15_inch_pounds(name: str) -> None:
    """NIST SP 811, appendix B.8: 1 lbf·in = 1.129 848 E-01 N·m."""
    assert parse(f"15 {name}", TORQUE) == pytest.approx(1.695, abs=5e-4)
    assert parse(f"15 {name}", TORQUE) == pytest.approx(15 * 1.129848e-1, rel=5e-7)
    assert parse(show(15 * LBF_IN, TORQUE, name), TORQUE) == pytest.approx(15 * LBF_IN, rel=1e-9)


@pytest.mark.parametrize("name", FOOT_POUNDS)
def test_15_foot_pounds(name: str) -> None:
    """NIST SP 811, appendix B.8: 1 lbf·ft = 1.355 818 E+00 N·m."""
    assert parse(f"15 {name}", TORQUE) == pytest.approx(20.337, abs=5e-4)
    assert parse(f"15 {name}", TORQUE) == pytest.approx(15 * 1.355818, rel=5e-7)


@pytest.mark.parametrize("name", ["N·m", "Nm", "N.m", "N m", "N-m", "newton metres"])
def test_newton_metres_are_themselves(name: str) -> None:
    assert parse(f"20 {name}", TORQUE) == 20.0
    assert show(20.0, TORQUE, name) == f"20 {name}"


def test_a_torque_is_shown_in_the_unit_asked_for() -> None:
    assert show(float(15 * LBF * INCH), TORQUE, "in-lb") == "15 in-lb"
    assert show(float(15 * LBF * FOOT), TORQUE, "lb-ft") == "15 lb-ft"
    assert show(float(15 * LBF * FOOT), TORQUE, "in-lb") == "180 in-lb"


@settings(deadline=None)
@given(top=st.integers(0, 999), bottom=st.integers(1, 999))
def test_fractions(top: int, bottom: int) -> None:
    assert parse(f"{top}/{bottom} in", LENGTH) == pytest.approx(float(Fraction(top, bottom) * INCH))
    assert parse(f'{top}/{bottom}"', LENGTH) == parse(f"{top}/{bottom}in", LENGTH)


@pytest.mark.parametrize(
    "text",
    ["3/0 in", "3/8e2 in", "3/8.5 in", "1 3/2 in", "/8 in", "3/ in", "--3 in", "3 in in", "in"],
)
def test_odd_numbers_are_refused(text: str) -> None:
    with pytest.raises(UnitError):
        parse(text, LENGTH)


@pytest.mark.parametrize(
    ("text", "dimension", "same"),
    [
        ("5 kg/cm²", PRESSURE, "5 kg/cm2"),
        ("5 \u03bcm", LENGTH, "5 um"),  # Greek mu
        ("5 \u00b5m", LENGTH, "5 um"),  # micro sign
        ("5 \u03a9", DIMENSIONS["resistance"], "5 ohm"),  # Greek omega
        ("5 \u2126", DIMENSIONS["resistance"], "5 ohm"),  # ohm sign
        ("20 N⋅m", TORQUE, "20 Nm"),
        ("95 ℃", TEMPERATURE, "95 C"),
        ("95\u00a0°C", TEMPERATURE, "95 C"),
        ("8e1 psi", PRESSURE, "80 psi"),
    ],
)
def test_kinds_of_sign(text: str, dimension: Dimension, same: str) -> None:
    assert parse(text, dimension) == parse(same, dimension)


@pytest.mark.parametrize("dimension", DIMENSIONS.values(), ids=lambda d: d.id)
def test_a_bare_number_is_refused_but_for_counts(dimension: Dimension) -> None:
    if dimension is COUNT:
        assert parse("7", dimension) == 7
    else:
        with pytest.raises(UnitError):
            parse("7", dimension)


@settings(deadline=None)
@given(text=st.text() | st.from_regex(r"[-+]?[0-9.,/e]{0,12}\s?[a-zA-Z\"°%/·]{0,8}"))
def test_any_text_is_a_finite_number_or_a_refusal_in_one_line(text: str) -> None:
    for dimension in DIMENSIONS.values():
        message = refusal(text, dimension)
        assert message.isprintable()
        assert len(message) < 160


def refusal(text: str, dimension: Dimension) -> str:
    """Why the text is no such quantity; empty where it is one."""
    try:
        assert math.isfinite(parse(text, dimension))
    except UnitError as error:
        return str(error)
    return ""


@settings(deadline=None)
@given(value=st.floats(min_value=1e-5, max_value=1e7), which=st.sampled_from(UNITS))
def test_no_exponent_is_shown(value: float, which: tuple[Dimension, Unit]) -> None:
    dimension, unit = which
    number = show(value * unit.factor + unit.offset, dimension, unit.names[0]).split(" ")[0]
    assert "e" not in number


def test_shown_as_written_by_hand() -> None:
    assert show(2500, SPEED) == "2500 rpm"
    assert show(368.15, TEMPERATURE) == "95 C"
    assert show(20.0, TORQUE) == "20 N·m"
    assert show(1e5, PRESSURE, "bar") == "1 bar"


def test_every_name_belongs_to_one_unit_of_its_dimension() -> None:
    for dimension in DIMENSIONS.values():
        names = [n for u in dimension.units for n in u.names]
        assert len(names) == len(set(names))
        assert all(unit_named(n, dimension) is u for u in dimension.units for n in u.names)


@pytest.mark.parametrize(("text", "inches"), [("1 1/4 in", 1.25), ("-1 1/2 in", -1.5)])
def test_whole_inches_and_a_fraction_are_read_together(text: str, inches: float) -> None:
    assert parse(text, LENGTH) == pytest.approx(inches * float(INCH))


@pytest.mark.parametrize("text", ["1 2 in", "1 1/0 in", "1.5 1/4 in", "1 1 1/4 in"])
def test_two_figures_that_make_no_fraction_are_refused(text: str) -> None:
    with pytest.raises(UnitError, match="is no length here"):
        parse(text, LENGTH)
