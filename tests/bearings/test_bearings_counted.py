"""How many bearings an engine has, and clearances given as one figure for all of a kind."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose import load_case, parse_case
from diagnose.bearings.table import Bearings, bearings_of
from diagnose.case.bearing_counts import count_of
from diagnose.case.bearing_values import along
from diagnose.case.case import Case
from diagnose.circuit.engine_model import numbers
from diagnose.entry.telling import understand, write
from diagnose.fits.bearing import Kind, Place
from diagnose.output.documents.bearing_words import units_of
from knowledge.book import the_book
from tests.support.command_line import call

TRACTOR = 'schema = 1\n[job]\n[engine]\nlayout = "tractor_diesel"\n'
ONE_FIGURE = """
[[finding]]
no = 1
what = "rod_clearance"
value = "4 thou"
where = "{where}"
"""
ROD_2 = """
[[finding]]
no = 2
what = "rod_clearance"
value = "5 thou"
where = "rod 2"
"""


def table(text: str) -> Bearings:
    return bearings_of(parse_case(text), with_pressure=False)


def counts(case: Case) -> tuple[int | None, int | None]:
    return count_of(case, Kind.MAIN), count_of(case, Kind.ROD)


@pytest.mark.parametrize("where", ["", "rods", "big ends"])
def test_a_clearance_of_no_one_bearing_is_of_all_of_its_kind(where: str) -> None:
    found = table(TRACTOR + ONE_FIGURE.format(where=where))
    assert [j.place for j in found.found] == [Place(Kind.ROD, 0)]
    assert {p.kind for p in found.missing} == {Kind.MAIN}, "no rod is left to measure"


def test_a_clearance_of_another_place_is_of_no_bearing() -> None:
    assert not table(TRACTOR + ONE_FIGURE.format(where="lower shell")).found


def test_a_bearing_measured_by_itself_goes_before_the_figure_for_all() -> None:
    found = table(TRACTOR + ONE_FIGURE.format(where="") + ROD_2).found
    values = {j.place.says: round(j.clearance.value / 25.4e-6, 1) for j in found if j.clearance}
    assert values == {"rods": 4.0, "rod 2": 5.0}


def test_the_figure_for_all_goes_where_each_was_measured() -> None:
    each = "".join(
        ROD_2.replace("no = 2", f"no = {n + 1}").replace("rod 2", f"rod {n}") for n in range(1, 5)
    )
    found = table(TRACTOR + ONE_FIGURE.format(where="") + each).found
    assert [j.place.number for j in found] == [1, 2, 3, 4]


def test_the_screen_says_that_it_is_one_figure(tmp_path: Path) -> None:
    path = tmp_path / "tractor.toml"
    path.write_text(TRACTOR + ONE_FIGURE.format(where=""), "utf-8")
    out = call("bearings", path).out
    assert out.splitlines()[0].endswith("0 of 5 mains and all rods as one figure measured")
    assert "  rods  " in out
    assert "Next: measure mains 1-5" in out


@pytest.mark.parametrize(
    ("said", "right"),
    [
        ("Three cylinder diesel tractor, 8 psi hot idle", (4, 3)),
        ("four pot diesel generator, pressure is low", (5, 4)),
        ("diesel tractor, 8 psi hot idle", (5, 4)),
        ("small block v8, low pressure at idle", (5, 8)),
        ("six cylinder diesel tractor, low pressure at idle", (7, 6)),
    ],
)
def test_the_cylinders_a_person_says_reach_the_bearings(
    said: str, right: tuple[int, int], tmp_path: Path
) -> None:
    book = the_book()
    path = tmp_path / "job.toml"
    write(understand(path, said, book), book)
    case = load_case(path)
    assert counts(case) == right
    dimensions = numbers(case)
    assert (dimensions["main_count"], dimensions["rod_count"]) == right


def test_cylinders_said_later_reach_them_too(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(TRACTOR, "utf-8")
    done = call("record", path, "it is a three cylinder")
    assert "rods: 3 in this engine" in done.out, done.err
    assert counts(load_case(path)) == (4, 3)


def test_rods_alone_say_nothing_of_mains_where_several_numbers_are_usual() -> None:
    two = '[[bearing]]\nno = 1\nwhat = "rods"\ncount = "2"\n'
    head = 'schema = 1\n[engine]\nlayout = "dry_sump_motorcycle"\n'
    assert counts(parse_case(head + two)) == (None, 2)
    assert counts(parse_case(TRACTOR + two)) == (3, 2)


@pytest.mark.parametrize("count", ["none", "0", "99", "4.5"])
def test_a_count_that_cannot_be_is_refused(count: str, tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(TRACTOR, "utf-8")
    assert "is no number from 1 to 40" in call("bearings", path, f"rods count {count}").err
    assert path.read_text("utf-8") == TRACTOR


def test_a_bearing_the_engine_does_not_have_is_refused_in_one_line(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(TRACTOR, "utf-8")
    refused = call("bearings", path, "main", "6", ".002")
    assert refused.code == 2
    assert len(refused.err.splitlines()) == 1
    assert "main 6: this engine has 5 mains" in refused.err
    assert '"mains count 6"' in refused.err
    assert path.read_text("utf-8") == TRACTOR
    assert call("bearings", path, "main 6 .002", "--mains", "6").code == 0
    assert call("bearings", path, "rods count 6", "rod 6 .002").code == 0


@pytest.mark.parametrize(
    ("where", "number"),
    [("front main", 1), ("centre main", 3), ("rear main", 5), ("main 2", 2), ("Rear", 5)],
)
def test_a_clearance_recorded_by_its_place_is_that_main(where: str, number: int) -> None:
    """A strip put in by "front main" counts as the first of them."""
    text = (
        'schema = 1\n[engine]\nlayout = "skew_gear_four"\n'
        '[[bearing]]\nno = 1\nwhat = "mains"\ncount = "5"\n'
        f'[[finding]]\nno = 2\nwhat = "main_clearance"\nvalue = "5 thou"\nwhere = "{where}"\n'
    )
    found = parse_case(text).bearings.found
    assert [place for place in found if place.number] == [Place(Kind.MAIN, number)]


def test_a_place_is_no_bearing_where_it_may_be_several() -> None:
    """The middle of four, and the rear of nobody knows how many."""
    assert along("centre main", Kind.MAIN, 4) is None
    assert along("rear main", Kind.MAIN, None) is None
    assert along("rear seal", Kind.MAIN, 5) is None


def test_a_table_has_one_unit_of_inches() -> None:
    """Of inches and thousandths the one most were typed in; a bearing in millimetres keeps its own."""
    typed = ((1, ".003 in"), (2, "11 thou"), (3, ".0035 in"), (4, "0.06 mm"))
    text = TRACTOR + "".join(
        f'[[bearing]]\nno = {no}\nwhat = "main {no}"\nstrip = "{value}"\n' for no, value in typed
    )
    found = table(text)
    units = [units_of(one, found)[1] for one in sorted(found.found, key=lambda j: j.place.number)]
    assert units == ["in", "in", "in", "mm"]
