"""Published clearances, settings and pressures that no formula gives, against the book's figures.

Source: the entries of ``data/published_checks.toml`` without a formula; titles stand there.
"""

from __future__ import annotations

import re
from itertools import chain
from pathlib import Path

import pytest

from diagnose.hydraulics.viscosity_index import reference_oils
from knowledge.book import the_book
from knowledge.engines.profiles import Profile
from knowledge.pressure.gauge import PSI_PER_1000
from knowledge.units import INCH, PSI
from tests.support.published import check, checks

BOOK = the_book()
MM, KPA = 1e-3, 1e3
PROFILES = list(BOOK.profiles.values())
by_profile = pytest.mark.parametrize("profile", PROFILES, ids=lambda p: p.id)


def figure(profile: Profile, name: str) -> float:
    return float(profile.numbers[name][0])


def ends(id_: str, key: str, unit: float) -> tuple[float, float]:
    """Least and most printed, SI; a single figure is both."""
    value = check(id_).expected[key]
    low, high = value if isinstance(value, list) else (value, value)
    return low * unit, high * unit


@pytest.mark.parametrize(("id_", "kv100", "which"), [
    ("d2270-LH-exA-L", 8.86e-6, 0), ("d2270-LH-exA-H", 8.86e-6, 1), ("d2270-LH-exB-H", 5.05e-6, 1),
])  # fmt: skip
def test_reference_oils_of_the_viscosity_index(id_: str, kv100: float, which: int) -> None:
    """ASTM D2270 prints L and H interpolated in its own table; ours come from its formulas."""
    assert reference_oils(kv100)[which] == pytest.approx(check(id_).expected, rel=2e-3)


# ------------------------------------------------------------------------ pumps

#: (entry, key, unit): clearance between the end of gear or rotor and its cover
ENDS = [
    ("lim-tm-3930-664-gerotor", "rotor_end_max_in", INCH),
    ("lim-mack-e7-side", "side_clearance_in", INCH),
    ("lim-tm-3930-638-gear", "gear_to_cover_max_in", INCH),
    ("lim-hemi-6p4-rotor", "end_max_mm", MM),
    ("lim-mdx-2004-rotor", "axial_limit_mm", MM),
    ("lim-tm-4310-354-end-derived", "max_in", INCH),
]
#: between gear or rotor and body
SIDES = [
    ("lim-tm-6115-400-radial", "gear_to_body_radial_in", INCH),
    ("lim-tm-3930-638-gear", "gear_to_body_radial_max_in", INCH),
    ("lim-tm-4310-354-gear", "clearance_in_bore_max_in", INCH),
    ("lim-tm-3930-664-gerotor", "tip_max_in", INCH),
    ("lim-tm-1940-322-gerotor", "tip_in", INCH),
    ("lim-hemi-6p4-rotor", "tip_max_mm", MM),
]


@pytest.mark.parametrize(
    ("limit", "printed"), [("pump_end_clearance", ENDS), ("pump_side_clearance", SIDES)]
)
def test_pump_limits_are_of_the_printed_size(
    limit: str, printed: list[tuple[str, str, float]]
) -> None:
    """The book's limit stands among the printed service limits, and the field lets all be typed."""
    highest = [ends(*row)[1] for row in printed]
    assert min(highest) <= BOOK.limits[limit].typical <= 1.1 * max(highest)
    low, high = BOOK.measures[limit].plausible
    assert all(low < value < high for value in highest)


@by_profile
def test_a_sound_pump_is_within_the_printed_limits(profile: Profile) -> None:
    for name, printed in (("pump_end_clearance", ENDS), ("pump_side_clearance", SIDES)):
        if name in profile.numbers:
            assert figure(profile, name) <= max(ends(*row)[1] for row in printed)


@by_profile
def test_a_pump_turns_at_half_or_full_speed(profile: Profile) -> None:
    """A distributor's shaft turns at half the crank's speed, a pump on the nose at its own."""
    ratio, printed = figure(profile, "pump_drive_ratio"), check("prac-pump-drive-ratio").expected
    assert printed["distributor_driven"] <= ratio <= printed["crank_driven"]
    if "distributor" in profile.id:
        assert ratio == printed["distributor_driven"]
    if "crank_nose" in profile.id:
        assert ratio == printed["crank_driven"]


# ------------------------------------------------------------------------ bearings and bores

MAINS = [
    ("clr-tm-3930-653-main", "diametral_in", INCH),
    ("clr-tm-2815-260-main", "diametral_in", INCH),
]
RODS = [
    ("clr-tm-2815-254-rod", "diametral_in", INCH),
    ("clr-tm-3930-638-rod", "diametral_in", INCH),
]
CAMS = [("prac-cam-bearing-clearance", "diametral_in", INCH)]
LIFTERS = [("prac-lifter-bore-clearance", "diametral_in", INCH)]


@by_profile
@pytest.mark.parametrize(
    ("name", "printed"),
    [
        ("main_clearance", MAINS),
        ("rod_clearance", RODS),
        ("cam_bearing_clearance", CAMS),
        ("lifter_clearance", LIFTERS),
    ],
)
def test_a_sound_engine_has_printed_clearances(
    profile: Profile, name: str, printed: list[tuple[str, str, float]]
) -> None:
    if not profile.numbers.get(name) or not figure(profile, name):
        assert name in ("cam_bearing_clearance", "lifter_clearance"), "every engine has the others"
        return
    low, high = min(ends(*r)[0] for r in printed), max(ends(*r)[1] for r in printed)
    assert low <= figure(profile, name) <= high


@pytest.mark.parametrize(
    ("limit", "id_", "key"),
    [
        ("main_clearance", "clr-tm-3930-653-main", "service_limit_in"),
        ("rod_clearance", "clr-tm-2815-254-rod", "limit_in"),
    ],
)
def test_bearing_limits_are_not_wider_than_printed_ones(limit: str, id_: str, key: str) -> None:
    printed = ends(id_, key, INCH)[1]
    assert 0.7 * printed <= BOOK.limits[limit].typical <= printed


@by_profile
def test_a_thou_for_each_inch_of_journal(profile: Profile) -> None:
    """The trade's rule: 0.00075 to 0.001 in an inch, on rods half a thou more, within a factor of
    two for diesels and large engines."""
    low, high = ends("clr-rule-0p00075-0p001-per-in", "diametral_in_per_in", 1.0)
    extra = ends("clr-rule-0p001-per-in", "rod_extra_in", INCH)[0]
    assert high == check("clr-rule-0p001-per-in").expected["diametral_in_per_in"]
    for part, more in (("main", 0.0), ("rod", extra)):
        clearance, journal = (
            figure(profile, f"{part}_clearance"),
            figure(profile, f"{part}_diameter"),
        )
        assert 0.9 * low * journal <= clearance <= 2.0 * high * journal + more


def test_plastic_thread_measures_what_may_be_typed() -> None:
    """From 0.001 to 0.009 in: the field takes all of it."""
    spans = [ends("clr-plastigage-ranges", k, INCH) for k in ("PG1_green_in", "PB1_blue_in")]
    for name in ("main_clearance", "rod_clearance"):
        low, high = BOOK.measures[name].plausible
        assert low <= spans[0][0] < spans[1][1] <= high


# ------------------------------------------------------------------------ settings and pressures

RELIEFS = [
    ("tm-3895-382-relief", "no_jets_kPa", KPA),
    ("tm-3895-382-relief", "with_jets_kPa", KPA),
    ("tm-3805-260-bypass", "max_kPa", KPA),
    ("subaru-ej-relief", "kPa", KPA),
    ("subaru-fb-relief-2step", "main_kPa", KPA),
]


@by_profile
def test_a_relief_valve_is_set_as_printed_ones_are(profile: Profile) -> None:
    every = list(chain.from_iterable(ends(*row) for row in RELIEFS))
    setting = figure(profile, "relief_setting")
    assert 0.85 * min(every) <= setting <= max(every)


@by_profile
def test_a_filter_opens_its_bypass_within_the_printed_range(profile: Profile) -> None:
    low, high = ends("filter-bypass-range", "open_psi", PSI)
    assert low <= figure(profile, "filter_bypass") <= high


def test_ten_psi_a_thousand_revolutions() -> None:
    low, high = ends("prac-seven-to-ten-psi-per-1000", "psi_per_1000rpm", PSI)
    assert low <= PSI_PER_1000 <= high * (1 + 1e-9)
    assert pytest.approx(PSI_PER_1000) == ends("prac-ten-psi-per-1000", "psi_per_1000rpm", PSI)[0]


def test_the_stop_limits_are_below_any_makers_least() -> None:
    """An engine that shows its maker's least hot pressure is never stopped."""
    idle = [
        ends("prac-honda-civic-820", "rpm_820_min_kPa", KPA)[0],
        ends("prac-honda-fit", "idle_min_kPa", KPA)[0],
        ends("prac-honda-s2000", "idle_min_kPa", KPA)[0],
        ends("prac-hmmwv-normal-idle", "idle_may_drop_to_psi", PSI)[0],
    ]
    fast = [
        ends("prac-honda-civic-820", "rpm_3000_min_kPa", KPA)[0],
        ends("prac-honda-fit", "rpm_3000_min_kPa", KPA)[0],
        ends("prac-honda-s2000", "rpm_3000_min_kPa", KPA)[0],
        ends("prac-tm-3825-225-normal", "max_speed_hot_psi", PSI)[0],
    ]
    assert BOOK.limits["stop_idle_pressure"].typical < min(idle)
    assert BOOK.limits["stop_running_pressure"].typical < min(fast)
    switch = ends("prac-subaru-warning-switch", "kPa", KPA)[0]
    assert switch < BOOK.limits["stop_idle_pressure"].typical, (
        "a lamp comes on too late to wait for"
    )


@by_profile
def test_a_pickup_has_its_usual_gap_to_the_floor(profile: Profile) -> None:
    low, high = ends("prac-pickup-to-pan", "gap_in", INCH)
    assert 0.6 * low <= figure(profile, "pickup_gap") <= 1.6 * high
    (first, *_) = BOOK.tasks["pickup_gap_fitted"].bands
    assert (first.low or 0) <= low < high <= (first.high or 1)


# ------------------------------------------------------------------------ what nothing asserts

#: entries that no test names, and why
NOT_ASSERTED = {
    "rb-LD1.0-eps0.97": "so near to contact that the finite-difference bearing is not trusted",
    "rb-LD0.5-eps0.97": "the same",
    "rb-LD0.25-eps0.97": "the same",
    "rb-LDinf-eps0.1": "endless bearings: no engine has one, the tables used are of finite length",
    "rb-LDinf-eps0.2": "the same",
    "rb-LDinf-eps0.4": "the same",
    "rb-LDinf-eps0.6": "the same",
    "rb-LDinf-eps0.8": "the same",
    "rb-LDinf-eps0.9": "the same",
}


def named_somewhere(id_: str) -> bool:
    """Whether a test names the entry, by itself or by a pattern such as ``j300-*``."""
    return any(id_ == n or ("*" in n and re.fullmatch(n.replace("*", ".*"), id_)) for n in NAMED)


TEXTS = {p.name: p.read_text("utf-8") for p in Path(__file__).parents[1].rglob("test_*.py")}
TEXTS[Path(__file__).name] = TEXTS[Path(__file__).name].partition("NOT_ASSERTED = {")[0]
NAMED = {n for t in TEXTS.values() for n in re.findall(r'"([A-Za-z0-9_.*-]{4,})"', t)}
NAMED -= {"rb-LD*-eps*", "rb-LD*"}  # narrowed by their tests to the rows with a formula
GROUPS = {g for t in TEXTS.values() for g in re.findall(r'in_group\("([^"]+)"\)', t)}


def test_every_published_entry_is_asserted_or_says_why_not() -> None:
    unnamed = {
        c.id
        for c in checks()
        if not c.formula and c.group not in GROUPS and not named_somewhere(c.id)
    }
    assert unnamed == set(NOT_ASSERTED)
