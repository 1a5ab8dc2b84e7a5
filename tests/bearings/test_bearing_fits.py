"""Arithmetic of bearings against published worked examples, tables of shells and limits.

Each published figure names its source by the key the book cites it with.
"""

from __future__ import annotations

from itertools import permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.case.bearing_values import FIELDS, FieldError, grid_of, place_of, unit_of
from diagnose.case.bearings import shown
from diagnose.fits.bearing import (
    Grid,
    Kind,
    Place,
    Readings,
    Way,
    clearances,
    form_of,
    mean_leak,
)
from diagnose.fits.shells import (
    Pair,
    best_pair,
    clearance_with,
    ground_to,
    ground_undersize,
    pairs,
)
from knowledge import sources
from knowledge.stations.bearings import quantities, sizes
from knowledge.stations.bearings.sizes import GUIDES, Use
from knowledge.units import INCH, MM
from tests.support.examples import examples

TEN_THOUSANDTH = 0.0001 * INCH
HALF_A_DIGIT = 0.0000501  #: inches: tables are rounded to 0.0001 in


def inches(*values: float) -> tuple[float, ...]:
    return tuple(v * INCH for v in values)


# ------------------------------------------------------------------------ published: clearance


@pytest.mark.parametrize(
    ("key", "use", "diameter", "low", "high"),
    [
        ("BCN", Use.ROAD, 2.000, 0.0015, 0.0020),
        ("LNB", Use.ROAD, 2.000, 0.0015, 0.0020),
        ("LNB", Use.ROAD, 2.500, 0.0019, 0.0025),
        ("LNB", Use.ROAD, 3.000, 0.0023, 0.0030),
        ("BCN", Use.HARD, 2.000, None, 0.0025),
        ("LNB", Use.HARD, 2.000, None, 0.0025),
    ],
)
def test_clearance_by_diameter_is_as_printed(
    key: str, use: Use, diameter: float, low: float | None, high: float
) -> None:
    """The tables of BEARING_MAKER_PER_INCH and CLEARANCE_GUIDE_TABLE."""
    assert key in {sources.BEARING_MAKER_PER_INCH.key, sources.CLEARANCE_GUIDE_TABLE.key}
    guide = next(g for g in GUIDES if g.use is use)
    least, most = guide.band(diameter * INCH)
    assert most / INCH == pytest.approx(high, abs=HALF_A_DIGIT)
    if low is not None:
        assert least / INCH == pytest.approx(low, abs=HALF_A_DIGIT)


@pytest.mark.parametrize(
    ("source", "diameter", "end", "printed"),
    [
        (sources.MAGAZINE_BEARINGS_2008, 2.375, 0, 0.0024),
        (sources.RACE_CLEARANCES, 2.5, 0, 0.0020),
        (sources.RACE_CLEARANCES, 2.5, 1, 0.0030),
        (sources.STRIP_MAKER_LEAFLET, 2.0, 0, 0.0010),
    ],
    ids=lambda v: getattr(v, "key", str(v)),
)
def test_other_sources_are_as_printed(
    source: object, diameter: float, end: int, printed: float
) -> None:
    guide = next(g for g in GUIDES if g.source is source)
    assert guide.band(diameter * INCH)[end] / INCH == pytest.approx(printed, abs=HALF_A_DIGIT)


def test_flat_four_clearance_follows_from_its_sizes() -> None:
    """A shell 0.25 mm undersize on a journal 0.25 mm undersize leaves the clearance (FFS).

    Crankpins and shells of FLAT_FOUR_CRANK_2000: journals 59.992 to 60.008, shells 1.998 to 2.011;
    0.25 mm undersize 59.742 to 59.758 and 2.127 to 2.130.
    """
    standard, under = (59.992 * MM, 60.008 * MM), (59.742 * MM, 59.758 * MM)
    assert ground_to(standard, 0.25 * MM) == pytest.approx(under)
    for size, wall in ((0.03, (2.017, 2.020)), (0.05, (2.027, 2.030)), (0.25, (2.127, 2.130))):
        thick = 2.0035 * MM + size * MM / 2  # the middle that all three undersizes agree on
        assert wall[0] * MM <= thick <= wall[1] * MM
    bore = 60.0 * MM + 2 * 2.0035 * MM + 0.02 * MM
    new = Readings(bore=((bore,),), shell=(2.0035 * MM,), journal=((60.0 * MM,),))
    ground = Readings(bore=((bore,),), shell=(2.1285 * MM,), journal=((59.75 * MM,),))
    assert clearances(new)[0].value == pytest.approx(0.020 * MM)
    assert clearances(ground)[0].value == pytest.approx(clearances(new)[0].value)


@pytest.mark.parametrize(
    ("undersize", "low", "high"),
    [
        (0.002, 0.1558, 0.1563),
        (0.010, 0.1598, 0.1603),
        (0.020, 0.1648, 0.1653),
        (0.030, 0.1698, 0.1703),
    ],
)
def test_a_shell_is_half_its_undersize_thicker(undersize: float, low: float, high: float) -> None:
    """Table of ARMY_TM_300_SHELLS: standard shells are 0.1548 to 0.1553 in."""
    assert 0.1548 + undersize / 2 == pytest.approx(low)
    assert 0.1553 + undersize / 2 == pytest.approx(high)
    listed = [u.size / INCH for u in (*sizes.FINE_INCH, *sizes.GROUND_INCH)]
    assert any(u == pytest.approx(undersize) for u in listed)
    hole, journal = inches(3.2520, 2.9400)
    standard = Readings(bore=((hole,),), shell=inches(0.1550), journal=((journal,),))
    thicker = Readings(bore=((hole,),), shell=inches(0.1550 + undersize / 2), journal=((journal,),))
    change = clearances(standard)[0].value - clearances(thicker)[0].value
    assert change / INCH == pytest.approx(undersize)


def test_undersize_shells_take_up_a_wide_clearance() -> None:
    """ROD_SHELL_NOTE: 0.003 in with shells 0.001 in undersize becomes 0.002 in."""
    under = 0.001 * INCH
    pair = Pair(under, under)
    assert clearance_with(0.003 * INCH, 0.0, pair) / INCH == pytest.approx(0.002)
    chosen = best_pair(0.003 * INCH, 0.0, (0.0018 * INCH, 0.0023 * INCH), pairs([0.0, under]))
    assert chosen == pair


def test_halves_split_the_difference_as_far_as_the_source_allows() -> None:
    """MAGAZINE_BEARINGS_2008: walls of one bore differ by 0.0005 in at most."""
    listed = [0.0, 0.001 * INCH, 0.002 * INCH, 0.010 * INCH]
    mixed = [p for p in pairs(listed) if p.mixed]
    walls = [(p.thick - p.thin) / 2 for p in mixed]
    assert max(walls) <= sizes.MOST_MIXED + 1e-9
    assert [round(p.undersize / INCH, 4) for p in mixed] == [0.0005, 0.0015]
    chosen = best_pair(0.0026 * INCH, 0.0, (0.0019 * INCH, 0.0023 * INCH), pairs(listed))
    assert chosen is not None
    assert chosen.mixed
    assert clearance_with(0.0026 * INCH, 0.0, chosen) / INCH == pytest.approx(0.0021)


# ------------------------------------------------------------------------- published: grinding


@pytest.mark.parametrize(
    ("least", "undersize", "low", "high"),
    [
        (2.7460, 0.010, 2.738, 2.739),
        (2.7375, 0.020, 2.728, 2.729),
        (2.7270, 0.030, 2.718, 2.719),
    ],
)
def test_crankpins_are_ground_as_printed(
    least: float, undersize: float, low: float, high: float
) -> None:
    """ARMY_TM_262_CRANKPINS: new 2.748 to 2.749 in, ground in steps of 0.010 in."""
    new = (2.748 * INCH, 2.749 * INCH)
    offered = [u.size for u in sizes.GROUND_INCH]
    found = ground_undersize(least * INCH, new, offered)
    assert found is not None
    assert found / INCH == pytest.approx(undersize)
    assert [d / INCH for d in ground_to(new, found)] == pytest.approx([low, high])


def test_a_journal_below_the_last_undersize_cannot_be_ground() -> None:
    new = (2.748 * INCH, 2.749 * INCH)
    offered = [u.size for u in sizes.GROUND_INCH]
    assert ground_undersize(2.7180 * INCH, new, offered) is None
    assert ground_undersize(2.7190 * INCH, new, offered) == pytest.approx(0.030 * INCH)


def test_a_standard_crank_ground_025_is_as_printed() -> None:
    """A 1.8 four of 1998: journals 57.982 to 58.000 mm, ground 57.732 to 57.750 mm (1999 manual)."""
    assert ground_to((57.982 * MM, 58.000 * MM), 0.25 * MM) == pytest.approx(
        (57.732 * MM, 57.750 * MM)
    )


@pytest.mark.parametrize(
    ("limit", "inch"),
    [
        (quantities.MOST_JOURNAL_OVAL, 0.0005),  # CEB1, TMB, TMJ
        (quantities.MOST_JOURNAL_TAPER, 0.0005),  # VTJ, TMB
        (quantities.MOST_BORE_OVAL, 0.0004),  # FRB
        (quantities.MOST_BORE_TAPER, 0.0004),  # FRB
    ],
    ids=lambda v: getattr(v, "id", ""),
)
def test_limits_of_form_are_as_printed(limit: object, inch: float) -> None:
    typical = getattr(limit, "typical", 0.0)
    assert typical / INCH == pytest.approx(inch, abs=0.00001)


def test_crush_and_spread_hold_what_manuals_print() -> None:
    """ARMY_TM_255_BEARING_FIT: a rod shell springs out about 0.025 in."""
    assert sizes.SPREAD[0] < 0.025 * INCH < sizes.SPREAD[1]
    assert 0.0 < sizes.CRUSH[0] < sizes.CRUSH[1]


# ------------------------------------------------------------------------------- properties

DIAMETER = st.integers(20_000, 29_999).map(lambda n: n * TEN_THOUSANDTH)
STEP = st.integers(-20, 20).map(lambda n: n * TEN_THOUSANDTH)


@st.composite
def measured(draw: st.DrawFn) -> Readings:
    """A bearing with four readings of bore and journal, near one size."""
    size = draw(DIAMETER)
    wall = draw(st.integers(500, 1000)) * TEN_THOUSANDTH
    gap = draw(st.integers(10, 40)) * TEN_THOUSANDTH

    def grid(middle: float) -> tuple[tuple[float, ...], ...]:
        return tuple(tuple(middle + draw(STEP) for _ in range(2)) for _ in range(2))

    return Readings(
        bore=grid(size + 2 * wall + gap),
        shell=(wall, wall + draw(STEP) / 20),
        journal=grid(size),
        inside=grid(size + gap),
        strip=(gap,),
    )


@settings(max_examples=examples(100), deadline=None)
@given(r=measured())
def test_front_and_rear_may_change_places(r: Readings) -> None:
    """The clearance, the taper and the out of round of a part turned about are the same."""
    turned = Readings(
        bore=r.bore[::-1],
        inside=r.inside[::-1],
        journal=r.journal[::-1],
        shell=r.shell[::-1],
        strip=r.strip[::-1],
    )
    for one, other in zip(clearances(r), clearances(turned), strict=True):
        assert one.way is other.way
        assert one.value == pytest.approx(other.value)
        assert (one.least, one.most) == pytest.approx((other.least, other.most))
    for grid, back in ((r.journal, turned.journal), (r.bore, turned.bore)):
        form, same = form_of(grid), form_of(back)
        assert form is not None
        assert same is not None
        assert (form.oval, form.taper, form.mean) == pytest.approx(
            (same.oval, same.taper, same.mean)
        )


@settings(max_examples=examples(100), deadline=None)
@given(r=measured(), by=st.integers(-30, 30))
def test_the_clearance_follows_every_part(r: Readings, by: int) -> None:
    """A bore larger by so much is a clearance larger by so much; a journal, smaller; a shell, by
    as much as its wall."""
    move = by * TEN_THOUSANDTH

    def moved(grid: tuple[tuple[float, ...], ...]) -> tuple[tuple[float, ...], ...]:
        return tuple(tuple(v + move for v in place) for place in grid)

    def parts(bore=r.bore, shell=r.shell, journal=r.journal) -> float:  # type: ignore[no-untyped-def]
        return clearances(Readings(bore=bore, shell=shell, journal=journal))[0].value

    start = parts()
    assert parts(bore=moved(r.bore)) - start == pytest.approx(move, abs=1e-12)
    assert parts(journal=moved(r.journal)) - start == pytest.approx(-move, abs=1e-12)
    shells = (r.shell[0] + move, r.shell[1])
    assert parts(shell=shells) - start == pytest.approx(-move, abs=1e-12)


@settings(max_examples=examples(100), deadline=None)
@given(r=measured())
def test_the_most_exact_way_comes_first_and_none_is_exact(r: Readings) -> None:
    found = clearances(r)
    assert [c.error for c in found] == sorted(c.error for c in found)
    assert {c.way for c in found} == set(Way)
    assert all(c.error > 0 for c in found)
    assert all(c.least <= c.value + 1e-12 and c.value <= c.most + 1e-12 for c in found)


@settings(max_examples=examples(100), deadline=None)
@given(
    gap=st.integers(5, 60),
    low=st.integers(10, 30),
    wide=st.integers(3, 12),
    fitted=st.sampled_from([0.0, 0.010]),
)
def test_the_pair_chosen_reaches_the_band_or_none_does(
    gap: int, low: int, wide: int, fitted: float
) -> None:
    choice = pairs([fitted * INCH + u.size for u in sizes.FINE_INCH] + [fitted * INCH])
    band = (low * TEN_THOUSANDTH, (low + wide) * TEN_THOUSANDTH)
    args = (gap * TEN_THOUSANDTH, fitted * INCH)
    chosen = best_pair(*args, band, choice)
    reached = [p for p in choice if band[0] - 1e-9 <= clearance_with(*args, p) <= band[1] + 1e-9]
    assert (chosen is None) == (not reached)
    if chosen is not None:
        assert chosen in reached
        assert not chosen.mixed or all(p.mixed for p in reached)


@settings(max_examples=examples(60), deadline=None)
@given(least=st.integers(27_100, 27_500), more=st.integers(0, 50))
def test_a_smaller_journal_never_needs_less_undersize(least: int, more: int) -> None:
    new = (2.748 * INCH, 2.749 * INCH)
    offered = [u.size for u in sizes.GROUND_INCH]
    worn = ground_undersize(least * TEN_THOUSANDTH, new, offered)
    better = ground_undersize((least + more) * TEN_THOUSANDTH, new, offered)
    assert worn is None or (better is not None and better <= worn)


@settings(max_examples=examples(100), deadline=None)
@given(
    values=st.lists(st.integers(20_000, 30_000), min_size=1, max_size=1)
    | st.lists(st.integers(20_000, 30_000), min_size=4, max_size=4),
    unit=st.sampled_from(["in", "thou", "mm"]),
)
def test_what_is_typed_comes_back(values: list[int], unit: str) -> None:
    """A reading parsed and shown again in its unit is the one that was typed."""
    factor, decimals = {"in": (1e4, 4), "thou": (1e1, 1), "mm": (1e4 / 25.4, 3)}[unit]
    texts = [f"{v / factor:.{decimals}f}" for v in values]
    grid = grid_of("journal", f"{' '.join(texts)} {unit}")
    flat = [v for place in grid for v in place]
    assert [shown(v, unit) for v in flat] == [f"{t} {unit}" for t in texts]
    assert unit_of(f"{' '.join(texts)} {unit}") == unit


@settings(max_examples=examples(60), deadline=None)
@given(values=st.lists(st.floats(1e-5, 1e-4), min_size=1, max_size=6))
def test_the_clearance_of_equal_flow_lies_between(values: list[float]) -> None:
    """Whatever the order; above the mean, because a wide bearing leaks for many."""
    mean = mean_leak(values)
    assert min(values) - 1e-12 <= mean <= max(values) + 1e-12
    assert mean >= sum(values) / len(values) - 1e-12
    for other in list(permutations(values))[:4]:
        assert mean_leak(other) == pytest.approx(mean)


@settings(max_examples=examples(200), deadline=None)
@given(text=st.text(max_size=40) | st.from_regex(r"[0-9./ -]{1,20} ?(in|mm|thou)?", fullmatch=True))
def test_any_text_is_read_or_refused_in_one_line(text: str) -> None:
    for name in ("journal", "strip", "undersize"):
        said, grid = read_or_refused(name, text)
        low, high = FIELDS[name].plausible
        assert all(low <= v <= high for place in grid for v in place)
        assert bool(grid) != bool(said.strip())
        assert "\n" not in said


def read_or_refused(name: str, text: str) -> tuple[str, Grid]:
    """What is said against a text, and what was read from it."""
    try:
        return "", grid_of(name, text)
    except FieldError as fault:
        return str(fault), ()


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("main 3", Place(Kind.MAIN, 3)),
        ("no 3 main", Place(Kind.MAIN, 3)),
        ("Main bearing #3", Place(Kind.MAIN, 3)),
        ("big end 2", Place(Kind.ROD, 2)),
        ("rods", Kind.ROD),
        ("main 0", None),
        ("2 main 3", None),
        ("thrust", None),
    ],
)
def test_a_bearing_is_named_as_people_write_it(text: str, place: Place | Kind | None) -> None:
    assert place_of(text) == place
