"""The book as a whole: required counts; every word can be asked, reached and has a source."""

from __future__ import annotations

import inspect
import re
from collections.abc import Callable, Iterable
from dataclasses import fields
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages

import pytest

import knowledge
from diagnose.bookcheck.access import access
from diagnose.bookcheck.distinguishability import reached
from diagnose.bookcheck.duplicates import strengths
from diagnose.bookcheck.names import names
from diagnose.bookcheck.shapes import Result, Whole
from diagnose.bookcheck.sources import sources
from diagnose.inference.chaining import Facts, Observation, infer
from knowledge import contents, contents_work
from knowledge.book import the_book
from knowledge.engines import features
from knowledge.engines.profiles import Profile
from knowledge.history.findings_apart import ENGINE_APART
from knowledge.limits import Limit
from knowledge.model import Cause, Condition, Finding, Kind, Measure, Shift, Shifts, Stage, State
from knowledge.rule_api import InhibitorGroup, LinkGroup, Rule
from knowledge.units import DIMENSIONS
from knowledge.work import Inspection, Layout, Part, Task
from tests.support.every import every

BOOK = the_book()

#: root causes every such book must hold: the core list of the trade survey, and outside leaks
CORE = [
    "gauge_faulty",
    "sender_faulty",
    "wiring_ground_fault",
    "gauge_line_blocked",
    "idle_too_slow",
    "oil_level_low",
    "oil_level_high",
    "dipstick_wrong",
    "viscosity_too_low",
    "viscosity_too_high",
    "fuel_dilution",
    "coolant_in_oil",
    "oil_overheated",
    "oil_degraded",
    "oil_hot_normal",
    "oil_cold_normal",
    "pickup_screen_blocked",
    "pickup_screen_bypass_open",
    "pickup_tube_loose",
    "pickup_tube_cracked",
    "suction_joint_air_leak",
    "pickup_clearance_tight",
    "pickup_clearance_wide",
    "pan_dented",
    "attitude_uncovers_pickup",
    "baffle_missing",
    "windage_aeration",
    "pump_gear_wear",
    "pump_cover_scored",
    "pump_debris_lock",
    "pump_mount_leak",
    "pump_gasket_wrong",
    "pump_drive_broken",
    "pump_drive_slip",
    "pump_drive_bind",
    "pump_not_primed",
    "pump_wrong_part",
    "pump_rotor_reversed",
    "pump_cavitation",
    "relief_debris",
    "relief_stuck_open",
    "relief_bore_scored",
    "relief_spring_weak_broken",
    "relief_spring_wrong",
    "relief_cap_loose",
    "relief_part_missing",
    "relief_stuck_closed",
    "filter_blocked",
    "filter_wrong",
    "gallery_plug_missing",
    "gallery_seal_leak",
    "gallery_blocked",
    "cam_bearing_wear",
    "bearing_wear_mains",
    "bearing_wear_rods",
    "bearing_wiped",
    "bearing_spun",
    "bearing_wrong_size",
    "dirt_in_assembly",
    "bearing_oil_hole_misaligned",
    "cap_swapped",
    "sealant_debris",
    "assembly_lube_clog",
    "timing_gear_shedding",
    "fastener_loose_inside",
    "external_leak_major",
    "filter_seal_leak",
    "oil_line_leak",
    "drain_plug_out",
    "shaft_seal_leak",
    "breather_blocked",
    "sender_leak",
    "sump_holed",
]


def defined_in(name: str) -> Iterable[object]:
    """Yield what a file itself defines, without what it imports."""
    text = Path(str(import_module(name).__file__)).read_text("utf-8")
    for key, value in vars(import_module(name)).items():
        if re.search(rf"(?m)^({key} = |def {key}\()", text):
            yield value


FILES = [m.name for m in walk_packages(knowledge.__path__, "knowledge.") if not m.ispkg]


@pytest.mark.parametrize(
    ("listed", "kinds"),
    [
        (
            "MODULES",
            (
                Cause,
                Condition,
                Finding,
                Inspection,
                Layout,
                Limit,
                InhibitorGroup,
                LinkGroup,
                Measure,
                Profile,
                Rule,
            ),
        ),
        ("WORK", (Task,)),
        ("PARTS", (Part,)),
    ],
)
def test_every_file_is_in_the_contents(listed: str, kinds: tuple[type, ...]) -> None:
    """A file that neither list of contents names is no part of the book."""
    files = {f for f in FILES if any(isinstance(v, kinds) for v in defined_in(f))}
    assert len(files) > 10
    home = contents if hasattr(contents, listed) else contents_work
    missing = files - {m.__name__ for m in getattr(home, listed)}
    assert not missing, f"add {sorted(missing)} to {listed} in {home.__name__}"


def test_every_core_cause_is_there() -> None:
    """The trade's list, whole."""
    assert not set(CORE) - BOOK.causes.keys()


@pytest.mark.parametrize(
    ("kind", "least"),
    [
        ("causes", 90),
        ("conditions", 20),
        ("findings", 150),
        ("inspections", 60),
        ("rules", 100),
        ("links", 250),
        ("layouts", 10),
        ("measures", 10),
    ],
)
def test_book_is_full_enough(kind: str, least: int) -> None:
    """What the tool was asked to know."""
    assert len(getattr(BOOK, kind)) >= least


@every([names, sources, strengths, access, reached], lambda c: c.__name__)
def test_book_holds(check: Callable[[Whole], Result]) -> None:
    """What ``diagnose check`` looks at; the examples have a test file of their own."""
    result = check(Whole(BOOK))
    assert not result.faults
    assert all(result.counts.values()), "nothing was looked at"


@every(BOOK.findings.values(), lambda f: f.id)
def test_finding_can_be_asked(finding: Finding) -> None:
    """A question that yes, no or don't know answers, and a statement."""
    assert finding.asks.endswith("?")
    assert finding.says
    assert not finding.says.endswith(".")


def test_every_finding_can_be_looked_for() -> None:
    """Some inspection shows each finding that the owner cannot simply report."""
    shown = {f for i in BOOK.inspections.values() for f in i.reveals}
    lost = [
        f.id
        for f in BOOK.findings.values()
        if f.kind is Kind.SEEN and f.stage is not Stage.KNOWN and f not in shown
    ]
    assert not lost, f"in the reveals of no inspection: {lost}"


def test_every_measure_is_taken_somewhere() -> None:
    """A blank that no check fills would never be filled."""
    taken = {m for i in BOOK.inspections.values() for m in i.measures}
    assert {m.id for m in BOOK.measures.values()} == {m.id for m in taken}
    for measure in BOOK.measures.values():
        assert measure.dimension in DIMENSIONS
        assert measure.plausible[0] < measure.plausible[1]


def test_no_rule_negates_what_is_known() -> None:
    """'not known.has' would turn "not looked at" into "not there"."""
    for rule in BOOK.rules.values():
        text = inspect.getsource(rule.does)
        assert "not known." not in text, rule.id


def test_features_are_layout_facts() -> None:
    """Nothing that gates a cause passes for evidence."""
    words = [v for v in vars(features).values() if isinstance(v, Finding)]
    assert words
    assert all(w.kind is Kind.LAYOUT for w in words)


def test_every_circumstance_asked_for_is_used() -> None:
    """Nobody is asked for a fact of the past that no rule reads.

    That the engine is apart now is no past: it says which checks can be made.
    """
    facts = [f for f in BOOK.findings.values() if f.kind is Kind.HISTORY and f is not ENGINE_APART]
    situations = [Facts(), *(Facts({f: Observation(State.PRESENT)}) for f in facts)]
    read = {f for t in situations for q in infer(BOOK.statements, t).asked.values() for f in q}
    assert not [f.id for f in facts if f not in read]


def test_shifts_name_the_five_facts_of_history() -> None:
    """A misspelt fact is refused, and each field is the id of a finding of history."""
    with pytest.raises(TypeError):
        Shifts(freshly_rebuild=Shift.UP)  # type: ignore[call-arg]
    for each in fields(Shifts):
        assert BOOK.findings[each.name].kind is Kind.HISTORY
    shifts = Shifts(stood_long=Shift.DOWN, high_mileage=Shift.UP)
    assert dict(shifts.items()) == {"high_mileage": Shift.UP, "stood_long": Shift.DOWN}
    with pytest.raises(AttributeError):
        shifts.get("oil_milky")
