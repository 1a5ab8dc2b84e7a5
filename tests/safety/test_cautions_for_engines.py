"""Which engines a caution concerns follows from their features, never from a name."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.cautions import cautions
from knowledge.book import the_book
from knowledge.cautions import CAUTIONS, Wording
from knowledge.engines.features import PLACES
from knowledge.work import Caution
from tests.support.command_line import call

BOOK = the_book()
CASES = Path(__file__).parents[2] / "cases"
MOORED, VAPOUR = (w.says for w in CAUTIONS[Caution.BOAT])
SHORT_OF_VAPOUR = CAUTIONS[Caution.BOAT][1].short
JACK, STANDS, SPLIT = (w.says for w in CAUTIONS[Caution.LIFTING])
(TAKE_OFF,) = (w.says for w in CAUTIONS[Caution.TRACTOR])
PLACED = {MOORED, VAPOUR, STANDS, SPLIT, TAKE_OFF}  #: what depends on where the engine works
LAUNCH = """
schema = 1
[job]
title = "Skua, harbour launch, petrol four"
[engine]
layout = "skew_gear_four"
[[finding]]
no = 1
what = "needle_flickers"
state = "present"
"""


def case(layout: str, has: str = "", lacks: str = "", finding: str = "") -> Case:
    """A case of an engine with these features; ``finding`` is 'id=state'."""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n'
    text += f"has = {json.dumps(has.split())}\nlacks = {json.dumps(lacks.split())}\n"
    if finding:
        what, _, state = finding.partition("=")
        text += f'[[finding]]\nno = 1\nwhat = "{what}"\nstate = "{state}"\n'
    return from_text(text, None, BOOK)


def shown(of: Case) -> set[str]:
    """The sentences about the place of work, of every caution there is."""
    return set(cautions(Caution, Diagnosis(BOOK, of))) & PLACED


@pytest.mark.parametrize(
    ("engine", "wanted"),
    [
        (("unknown",), PLACED),
        (("unknown", "", "diesel"), PLACED),
        (("unknown", "diesel"), PLACED - {VAPOUR}),
        (("unknown", "in_a_boat"), {MOORED, VAPOUR}),
        (("unknown", "in_a_boat diesel"), {MOORED}),
        (("unknown", "in_a_tractor"), {STANDS, SPLIT, TAKE_OFF}),
        (("unknown", "in_a_vehicle"), {STANDS}),
        (("unknown", "stationary"), set()),
        (("unknown", "", "in_a_boat in_a_tractor"), {STANDS}),
        (("unknown", "", "", "in_a_boat=present"), {MOORED, VAPOUR}),
        (("unknown", "", "", "in_a_boat=absent"), PLACED - {MOORED, VAPOUR}),
        (("unknown", "", "", "in_a_boat=unknown"), PLACED),
        (("skew_gear_four",), PLACED),
        (("skew_gear_four", "in_a_boat"), {MOORED, VAPOUR}),
        (("skew_gear_four", "in_a_boat diesel"), {MOORED}),
        (("small_diesel", "in_a_tractor"), {STANDS, SPLIT, TAKE_OFF}),
        (("marine_petrol_v8",), {MOORED, VAPOUR}),
        (("marine_diesel",), {MOORED}),
        (("marine_diesel", "in_a_vehicle", "in_a_boat"), {STANDS}),
        (("tractor_diesel",), {STANDS, SPLIT, TAKE_OFF}),
        (("generator_diesel",), set()),
        (("distributor_v8",), {STANDS}),
        (("distributor_v8", "in_a_boat"), {MOORED, VAPOUR}),
    ],
    ids=lambda v: "-".join(v).replace(" ", "+") if isinstance(v, tuple) else "",
)
def test_cautions_follow_from_where_the_engine_works_and_what_it_burns(
    engine: tuple[str, ...], wanted: set[str]
) -> None:
    assert shown(case(*engine)) == wanted


@pytest.mark.parametrize("layout", BOOK.layouts.values(), ids=lambda one: one.id)
def test_the_name_of_a_layout_decides_nothing(layout: object) -> None:
    of = case(layout.id)  # type: ignore[attr-defined]
    for name in ("marine_something", "tractor_something", "unknown", "nothing"):
        renamed = replace(of, layout=replace(of.layout, id=name))
        assert shown(renamed) == shown(of)


def test_every_other_caution_concerns_every_engine() -> None:
    """Only those for a boat, a tractor, a vehicle or a diesel are left out anywhere."""
    bound = {c for c, says in CAUTIONS.items() if any(w.only_with or w.not_with for w in says)}
    assert bound == {
        Caution.BOAT,
        Caution.TRACTOR,
        Caution.INJECTION,
        Caution.IGNITION,
        Caution.LIFTING,
    }
    free = {w.says for says in CAUTIONS.values() for w in says if not (w.only_with or w.not_with)}
    assert JACK in free
    for layout in BOOK.layouts:
        assert free <= set(cautions(Caution, Diagnosis(BOOK, case(layout))))


def test_no_sentence_belongs_to_two_cautions() -> None:
    every: list[Wording] = [w for says in CAUTIONS.values() for w in says]
    assert len({w.says for w in every}) == len(every)


def test_an_engine_that_is_said_to_work_in_two_places_gets_the_cautions_of_both() -> None:
    known = case("unknown", "in_a_boat in_a_vehicle").known_features
    assert [known[place].value for place in PLACES] == ["present", "absent", "present", "absent"]


@pytest.mark.parametrize(
    "words",
    [
        ("review",),
        ("teardown",),
        ("teardown", "--json"),
        ("teardown", "--markdown"),
        ("signoff", "--whole-engine", "--all"),
        ("signoff", "--whole-engine", "--json"),
        ("signoff", "--whole-engine", "--markdown"),
        ("signoff", "--whole-engine", "--start"),
    ],
    ids=" ".join,
)
def test_a_petrol_launch_on_a_layout_of_cars_is_warned_of_vapour(
    words: tuple[str, ...], tmp_path: Path
) -> None:
    command, *options = words
    path = tmp_path / "skua.toml"
    text = LAUNCH
    if command == "review":  # whose next check is then made with the ignition on
        text = LAUNCH.replace("needle_flickers", "gauge_reads_high")
    path.write_text(text, "utf-8")
    flat = " ".join(call(command, path, *options).out.replace(">", " ").split())
    on_one_screen = not options or options[-1] == "--start"
    assert (SHORT_OF_VAPOUR if on_one_screen else VAPOUR) in flat


@pytest.mark.parametrize("name", ["petrel", "whimbrel", "turnstone"])
def test_the_worked_petrol_boats_are_warned_of_vapour(name: str) -> None:
    flat = " ".join(call("signoff", CASES / f"{name}.toml", "--start").out.split())
    assert SHORT_OF_VAPOUR in flat
    assert "rated stands" not in flat
    whole = " ".join(call("signoff", CASES / f"{name}.toml", "--start", "--all").out.split())
    assert VAPOUR in whole
    assert STANDS not in whole


def test_no_worked_car_or_winch_is_warned_of_a_boat() -> None:
    for name in ("crane_truck", "winch", "slip_tractor", "generator"):
        words = ("signoff", CASES / f"{name}.toml", "--whole-engine")
        out = " ".join((call(*words).out + call(*words, "--all").out).split())
        assert "moored" not in out
        assert MOORED not in out
        assert VAPOUR not in out
        assert SHORT_OF_VAPOUR not in out


RAIL = CAUTIONS[Caution.INJECTION][1].says
COIL = CAUTIONS[Caution.IGNITION][1].says
CUT_OUT = BOOK.inspections["cut_out_one_cylinder"]


@pytest.mark.parametrize(
    ("engine", "rail", "coil"),
    [
        (("small_diesel",), True, False),
        (("small_diesel", "", "common_rail"), False, False),
        (("unknown", "diesel common_rail"), True, False),
        (("crank_nose_gerotor_ohc", "", "diesel"), False, True),
        (("crank_nose_gerotor_ohc", "", "diesel coil_on_plug"), False, False),
        (("turbo_ohc_four", "coil_on_plug"), False, True),
        (("distributor_v8",), False, False),
        (("unknown",), True, True),
    ],
    ids=lambda v: "-".join(v) if isinstance(v, tuple) else "",
)
def test_cutting_a_cylinder_out_warns_of_common_rail_and_of_coils(
    engine: tuple[str, ...], rail: bool, coil: bool
) -> None:
    """Never ease a union of a common rail, never pull a coil from its plug (common practice)."""
    said = cautions(CUT_OUT.cautions, Diagnosis(BOOK, case(*engine)))
    assert ((RAIL in said), (COIL in said)) == (rail, coil)
