"""Kinds of engine that restorers have: read as such, judged by their own pressures, not by others'.

Expected pressures are those that makers, handbooks and clubs print; each row names where.
"""

from __future__ import annotations

from functools import cache

import pytest

from diagnose.bearings.table import bearings_of
from diagnose.case.bearing_counts import count_of
from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.entry.agenda import Agenda, key_of
from diagnose.entry.questions import ChoiceQuestion, NumbersQuestion
from diagnose.fits.bearing import Kind
from diagnose.output.documents.bearing_steps import next_lines
from diagnose.signoff.sheet import Signoff
from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.model import Severity
from knowledge.pressure.quantities import HOT_IDLE_PRESSURE, STOP_RUNNING_PRESSURE
from knowledge.questions.essentials import GAUGE, LEVEL
from knowledge.units import PSI

BOOK = the_book()
READING = '[[reading]]\nno = {no}\nrpm = "{rpm} rpm"\noil = "90 C"\npressure = "{psi} psi"\n'
PRESSURE_FED = {"pump", "relief", "delivery", "topend"}


@cache
def engine(layout: str, has: str = "", entries: str = "") -> Diagnosis:
    stated = f"has = [{has}]\n" if has else ""
    return Diagnosis(
        BOOK, from_text(f'schema = 1\n[engine]\nlayout = "{layout}"\n{stated}{entries}', None, BOOK)
    )


def stops(found: Diagnosis) -> bool:
    return any(a.severity is Severity.STOP for a in found.alarms)


@pytest.mark.parametrize(
    ("text", "layout"),
    [
        ("1946 flathead V8, babbitt mains", "side_valve_v8"),
        ("side valve V8 in a pickup", "side_valve_v8"),
        ("flathead six", "side_valve"),
        ("hit and miss engine with drip oilers", "open_crank"),
        ("hit-and-miss engine, 6 hp", "open_crank"),
        ("old four with splash lubrication", "splash_engine"),
        ("1929 six, dippers and troughs, 2 psi", "trough_engine"),
        ("two-stroke outboard with oil injection", "burnt_oil_two_stroke"),
        ("2-stroke bike with autolube", "burnt_oil_two_stroke"),
        ("rotary engine out of a coupe", "rotary_engine"),
        ("twin rotor Wankel car", "rotary_engine"),
        ("big slow speed ship diesel with a prelube pump", "slow_diesel"),
        ("air-cooled flat four", "air_cooled_flat_four"),
        ("British single motorcycle, dry sump, roller big end", "roller_motorcycle"),
        ("British twin, dry sump, wet sumps overnight", "dry_sump_motorcycle"),
    ],
)
def test_a_kind_is_read_from_the_words_people_use(text: str, layout: str) -> None:
    assert f"layout {layout}" in [f.short for f in read(text, BOOK).facts]


@pytest.mark.parametrize(
    ("text", "wanted", "never"),
    [
        ("hit and miss engine, rod knocks", "layout open_crank", "comes and goes"),
        ("drip oiler on the cylinder", "finding drip_oiled present", "oil_seen_outside"),
        ("a low-pressure pump fills the troughs", "finding trough_fed present", "behaviour"),
        ("ship's diesel with electric prelube pump", "finding prelube_pump", "high_volume"),
        ("full floating rod bearings", "finding floating_rod_bearings present", "worn"),
        ("two-stage oil pump with a solenoid", "finding variable_pump present", "high_volume"),
        ("ball bearing mains", "finding roller_crankshaft present", "roller_big_ends"),
        ("needle roller big end", "finding roller_big_ends present", "worn"),
        ("it hits the dash lamp hit and miss", "", "drip_oiled"),
        ("took a two litre jug and a feed pump", "", "oil_burnt_with_fuel"),
    ],
)
def test_words_of_a_kind_are_no_trouble(text: str, wanted: str, never: str) -> None:
    facts = [f.short for f in read(text, BOOK).facts]
    assert not wanted or any(f.startswith(wanted) for f in facts), facts
    assert not any(never in f for f in facts), facts


EIGHT = '[engine.dimensions]\nrod_count = "8"\n'
#: layout, features, rpm, psi that print as normal there
SOUND = [
    # club's table from the maker's manuals: 3 to 7 psi at idle, 4 to 15 riding
    ("roller_motorcycle", "", 900, 4),
    ("dry_sump_motorcycle", '"roller_big_ends"', 2500, 8),
    ("roller_motorcycle", "", 3500, 12),
    # magazine on a side-valve V8: 30 psi at 30 mph; handbook of 1936: next to none at a hot idle
    ("side_valve_v8", "", 500, 6),
    ("side_valve_v8", "", 2000, 30),
    # vehicle maker's two-stage pump: 80 to 160 kPa at idle, 110 to 200 kPa from 1000 to 2650 rpm
    ("overhead_cam_four", '"variable_pump"', 750, 14),
    ("overhead_cam_four", '"variable_pump"', 2000, 18),
    ("overhead_cam_four", '"variable_pump"', 2600, 24),
    # service highlights 2004: 350 kPa at 3000 rpm
    ("rotary_engine", "", 3000, 51),
    # from memory: a pump that fills troughs makes a few psi
    ("trough_engine", "", 600, 2),
    ("trough_engine", "", 2000, 8),
]


@pytest.mark.parametrize(("layout", "has", "rpm", "psi"), SOUND)
def test_what_prints_as_normal_is_no_low_pressure(
    layout: str, has: str, rpm: int, psi: int
) -> None:
    found = engine(layout, has, READING.format(no=1, rpm=rpm, psi=psi))
    derived = {d.finding.id: d.state.value for d in found.inference.result.derived}
    assert not stops(found)
    assert derived.get("gauge_reads_low") != "present"
    assert derived.get("gauge_reads_zero") != "present"


@pytest.mark.parametrize(
    ("layout", "has", "rpm", "psi"),
    [
        ("dry_sump_motorcycle", '"roller_big_ends"', 900, 0),
        ("dry_sump_motorcycle", '"roller_big_ends"', 2500, 2),
        ("dry_sump_motorcycle", "", 2500, 8),  # plain big ends: 75 psi is printed at 3000 rpm
        ("dry_sump_motorcycle", '"roller_crankshaft"', 2500, 8),  # rollers in the mains only
        ("radial", "", 2000, 8),
        ("side_valve_v8", "", 500, 2),
        ("side_valve_v8", "", 2500, 6),
        ("overhead_cam_four", '"variable_pump"', 2000, 12),
        ("rotary_engine", "", 3000, 15),
        ("trough_engine", "", 2000, 0),
    ],
)
def test_too_little_still_stops_it(layout: str, has: str, rpm: int, psi: int) -> None:
    assert stops(engine(layout, has, READING.format(no=1, rpm=rpm, psi=psi)))


def test_features_say_more_than_the_layout() -> None:
    """A side-valve four with a trough pump goes by its pump; the engine's own figure by itself."""
    plain = engine("side_valve").case
    trough = engine("side_valve", '"trough_fed"').case
    own = engine(
        "side_valve", '"trough_fed"', '[engine.limits]\nhot_idle_pressure = "6 psi"\n'
    ).case
    assert plain.limit(HOT_IDLE_PRESSURE) == pytest.approx(5 * PSI)
    assert trough.limit(HOT_IDLE_PRESSURE) == pytest.approx(1 * PSI)
    assert own.limit(HOT_IDLE_PRESSURE) == pytest.approx(6 * PSI)
    assert plain.limit(STOP_RUNNING_PRESSURE) == pytest.approx(10 * PSI)


@pytest.mark.parametrize("layout", ["open_crank", "splash_engine", "burnt_oil_two_stroke"])
def test_without_pressure_no_gauge_and_no_lamp_switch_is_spoken_of(layout: str) -> None:
    lamp = '[[finding]]\nno = 1\nwhat = "lamp_comes_on"\nstate = "present"\n'
    only = '[[finding]]\nno = 2\nwhat = "lamp_only"\nstate = "present"\n'
    found = engine(layout, "", lamp + only)
    assert found.alarms
    for alarm in found.alarms:
        assert "psi" not in alarm.says
        assert "trusted gauge" not in alarm.says
    assert any("no oil pressure" in a.says or "pressure to lose" in a.says for a in found.alarms)


@pytest.mark.parametrize("layout", ["open_crank", "splash_engine"])
def test_without_a_pump_no_cause_of_a_pump(layout: str) -> None:
    assert not {r.cause.station.value for r in engine(layout).ranking} & PRESSURE_FED


def test_a_rotary_has_no_rods_and_no_tappets() -> None:
    causes = {r.cause.id for r in engine("rotary_engine").ranking}
    assert not causes & {
        "lifter_bore_leak",
        "rocker_shaft_leak",
        "cam_bearing_wear",
        "bent_rod_or_crank",
        "cam_phaser_leak",
    }


def test_rollers_have_no_shells_to_wear() -> None:
    causes = {r.cause.id for r in engine("dry_sump_motorcycle", '"roller_big_ends"').ranking}
    assert not causes & {"bearing_wear_rods", "bearing_spun", "bearing_wrong_size"}
    plain = {r.cause.id for r in engine("dry_sump_motorcycle").ranking}
    assert "bearing_wear_rods" in plain


# ------------------------------------------------------------------ putting it together


def tasks(layout: str, has: str = "") -> set[str]:
    sheet = Signoff(engine(layout, has), 0.8, whole=True)
    return {i.task.id for i in (*sheet.items, *sheet.later)}


@pytest.mark.parametrize(
    ("layout", "has", "wanted", "never"),
    [
        (
            "open_crank",
            "",
            "cups_and_drips_feed bearings_felt_by_hand",
            "pump relief oil_in filter",
        ),
        ("splash_engine", "", "dippers_set level_for_splash oil_in", "pump relief pressure filter"),
        (
            "burnt_oil_two_stroke",
            "",
            "injection_oil_bled oil_use_measured",
            "pump relief pressure filter rod_clearance caps_torqued sump",
        ),
        (
            "trough_engine",
            "",
            "troughs_set dippers_set oil_seen_at_troughs",
            "priming_pressure_reached",
        ),
        ("rotary_engine", "", "front_cover_ring_backed two_reliefs_in_place", "rod_caps ring_gaps"),
        (
            "dry_sump_motorcycle",
            '"roller_big_ends"',
            "return_seen_at_tank tank_holds_overnight",
            "rod_clearance_fitted main_clearance_fitted shells",
        ),
        ("dry_sump_motorcycle", "", "return_seen_at_tank rod_clearance_fitted", "dippers"),
        ("slow_diesel", "", "prelubed_by_its_pump pressure_at_hot_idle", "dippers"),
        ("side_valve_v8", '"floating_rod_bearings"', "floating_shells_measured", "dippers"),
        ("heavy_diesel", "", "jet_valves_shut piston_jets_aimed", "dippers"),
        (
            "distributor_v8",
            "",
            "pressure_at_hot_idle",
            "dippers cups injection prelubed front_cover",
        ),
    ],
)
def test_sign_off_asks_for_what_the_kind_has(
    layout: str, has: str, wanted: str, never: str
) -> None:
    called = tasks(layout, has)
    assert set(wanted.split()) <= called
    assert not [t for t in called for word in never.split() if t.startswith(word)]


@pytest.mark.parametrize("layout", [x for x in BOOK.layouts if x not in ("unknown",)])
def test_nobody_is_asked_for_the_parts_of_a_rare_kind(layout: str) -> None:
    """No owner of a V8 is asked whether it has drip oilers."""
    asked = {f.id for f in Signoff(engine(layout), 0.8, whole=True).asks}
    assert not asked & {"drip_oiled", "trough_fed", "oil_burnt_with_fuel", "rotary_piston"}


def test_a_side_valve_v8_has_its_own_mains() -> None:
    """Three mains (from memory), where other V8s have five."""
    assert [
        count_of(engine(x, "", EIGHT).case, Kind.MAIN) for x in ("side_valve_v8", "vee_diesel")
    ] == [
        3,
        5,
    ]


def test_no_limit_is_borrowed_for_a_bearing() -> None:
    """Where no clearance is known for the kind, nobody is told that a bearing is in limits."""
    every = ("main 1", "main 2", "rod 1")
    row = '[[bearing]]\nno = {}\nwhat = "{}"\nstrip = "0.0018 in"\n'
    counted = '[engine.dimensions]\nmain_count = "2"\nrod_count = "1"\n'
    measured = counted + "".join(row.format(n, b) for n, b in enumerate(every, 1))
    for layout, known in (("open_crank", False), ("distributor_v8", True)):
        found = bearings_of(engine(layout, "", measured).case, with_pressure=False)
        assert ("in limits" in next_lines(found, "x.toml")[0]) is known


def test_a_missing_piston_jet_is_no_restrictor() -> None:
    facts = [
        f.short for f in read("turbo diesel six, one piston cooling jet was missing", BOOK).facts
    ]
    assert "finding piston_jet_found_broken present" in facts
    assert not any("restrictor_absent" in f for f in facts)


@pytest.mark.parametrize("layout", ["open_crank", "burnt_oil_two_stroke"])
def test_no_gauge_and_no_level_is_asked_for_without_pressure(layout: str) -> None:
    """Neither what shows the pressure, nor figures of a gauge, nor a dipstick that is not there."""
    asked, agenda = [], Agenda()
    for _ in range(8):
        question = agenda.essentials(engine(layout))
        if question is None:
            break
        agenda.asked.add(key_of(question))
        asked.append(question)
    assert not any(isinstance(q, NumbersQuestion) for q in asked)
    assert not any(isinstance(q, ChoiceQuestion) and q.menu in (GAUGE, LEVEL) for q in asked)
