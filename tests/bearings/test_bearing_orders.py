"""What is ordered and ground rests on what was measured; words for what is near its least."""

from __future__ import annotations

import pytest

from diagnose.bearings.judging import Flag
from diagnose.bearings.table import Bearings, Step, bearings_of
from diagnose.case.loading import from_text
from diagnose.fits.bearing import Kind
from diagnose.output.documents.bearings import bearings_document
from diagnose.output.text.bearings import bearings_text
from knowledge.book import the_book
from knowledge.units import INCH

HEAD = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
NEW = "mains; new_journal = 2.4484 2.4493 in; wanted = 0.0008 0.0025 in"
TAPERED = "main 1; bore = 2.6411 in; shell = 0.0955 in; journal = 2.4482 2.4472 in"
SHELLS = "mains; new_shell = 0.0955 in"


def found(*every: str, more: str = "") -> Bearings:
    """The bearings of a V8 from lines such as "main 1; strip = 2.2 thou"; ``more``: TOML."""
    text = HEAD + more
    for no, line in enumerate(every, start=1):
        what, *fields = line.split("; ")
        text += f'[[bearing]]\nno = {no}\nwhat = "{what}"\n'
        text += "".join(f'{k} = "{v}"\n' for k, v in (f.split(" = ") for f in fields))
    return bearings_of(from_text(text, None, the_book()), with_pressure=False)


def said(bearings: Bearings, *, full: bool = False) -> str:
    """What the command prints, on one line."""
    return " ".join(bearings_text(bearings_document(bearings, "b.toml"), full=full).split())


def test_without_the_walls_of_new_shells_a_journal_is_ground_to_the_makers_sizes() -> None:
    """At the most of that size the tightest bore still has room; half the band more and it has none."""
    bearings = found(NEW, TAPERED)
    order = bearings.orders[Kind.MAIN]
    assert order.grind is not None
    assert [round(v / INCH, 4) for v in order.grind] == [2.4384, 2.4393]
    text = said(bearings, full=True)
    assert "Main 1: ground to the maker's sizes." in text
    assert "before the grinding: mains new_shell." in text


def test_with_them_the_size_follows_from_the_bore() -> None:
    """2.6411 - 2 x 0.0955 - 0.010 = 2.4401 in: 0.0025 to 0.0008 in less."""
    bearings = found(NEW, SHELLS, TAPERED)
    order = bearings.orders[Kind.MAIN]
    assert order.grind is not None
    assert [round(v / INCH, 4) for v in order.grind] == [2.4376, 2.4393]
    assert "maker's sizes. What is left" not in said(bearings, full=True)


def test_bores_are_resized_before_the_crank_is_ground() -> None:
    oval = "main 2; bore = 2.6415 2.6405 2.6415 2.6405 in; journal = 2.4482 in; shell = 0.0955 in"
    resize = "Have the bore of main 2 resized, and measure it again, before the crank is ground"
    assert resize in said(found(NEW, SHELLS, TAPERED, oval), full=True)
    assert resize not in said(found(NEW, SHELLS, TAPERED), full=True)


@pytest.mark.parametrize(
    ("strip", "words", "wrong"),
    [("0.9", "under the least 1.0", "tight"), ("1.1", "over the least 1.0", "tight")],
)
def test_a_clearance_near_the_least_is_no_clearance_near_the_limit(
    strip: str, words: str, wrong: str
) -> None:
    bearings = found("rods; wanted = 1.8 2.4 thou", f"rod 1; strip = {strip} thou")
    assert f"{words}, by no more than the measuring error" in said(bearings)
    assert f"{words.replace('least', 'least of')} thou: too {wrong} (" in said(bearings, full=True)


@pytest.mark.parametrize(
    ("crush", "words"), [("0.0005", "at least 0.0010"), ("0.008", "at most 0.0040")]
)
def test_crush_out_of_its_range_says_which_end(crush: str, words: str) -> None:
    text = said(found(f"rod 1; strip = 0.0022 in; crush = {crush} in"), full=True)
    assert f"in, should be {words} in" in text


def test_a_kind_measured_one_by_one_is_not_asked_for_again() -> None:
    """A figure for all of them, written down before, is of none that is left."""
    each = [f"main {n}; strip = 2.3 thou" for n in range(1, 6)]
    rods = [f"rod {n}; strip = 2.0 thou" for n in range(1, 9)]
    once = '[[finding]]\nno = 90\nwhat = "main_clearance"\nvalue = "2.4 thou"\n'
    assert "Next: measure rod 8 diagnose" in said(found(*each, *rods[:-1], more=once))
    assert found(*each, *rods, more=once).next_step is Step.SOUND


def test_no_mixed_halves_for_what_the_micrometers_cannot_tell() -> None:
    """Worked out from sizes: 0.0017 in where 0.0018 in is wanted stays; 0.0030 in does not."""
    group = "rods; new_journal = 2.0990 2.1000 in; new_shell = 0.0620 in; wanted = 0.0018 0.0024 in"
    near = "rod 1; bore = 2.2252 in; journal = 2.0995 in"
    wide = "rod 2; bore = 2.2252 in; journal = 2.0982 in"
    order = found(group, near, wide).orders[Kind.ROD]
    sizes = [(round(c.pair.thin / INCH, 4), c.pair.mixed) for c in order.choices]
    assert sizes == [(0.0, False), (0.001, False)]


def test_an_example_of_a_journal_is_of_this_engines_size() -> None:
    text = said(
        found(
            "rods; new_journal = 2.0990 2.1000 in",
            *(f"main {n}; strip = 2.3 thou" for n in range(1, 6)),
            *(f"rod {n}; strip = {3.9 if n == 4 else 2.0} thou" for n in range(1, 9)),
        )
    )
    assert "rod 4 journal 2.0990 2.0989 2.0990 2.0989 in" in text


def test_a_sum_as_printed_adds_up() -> None:
    """Means between two marks of the micrometer are shown one digit finer."""
    text = said(found("main 4; inside = 55.040 55.041 mm; journal = 54.978 54.979 mm"), full=True)
    assert "inside the shells 55.0405 - journal 54.9785 = 0.062" in text


@pytest.mark.parametrize(("most", "flagged"), [("0.0010", False), ("0.0006", True)])
def test_a_bores_own_figure_goes_before_another_engines(most: str, flagged: bool) -> None:
    """Its maker prints how far a bore may be out of round, and nothing of its taper."""
    limits = f'[engine.limits]\nbore_oval = "{most} in"\n'
    bearings = found("main 3; bore = 2.6411 2.6403 in; journal = 2.4480 in", more=limits)
    [main] = bearings.found
    assert main.has(Flag.BORE_TAPER) is flagged
