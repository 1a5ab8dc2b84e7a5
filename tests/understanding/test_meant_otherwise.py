"""Words that mean a finding otherwise take nothing away from one that is plainly said."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.lexicon.foreign_parts import OF_ALL, OF_HISTORY, OF_TURNING
from knowledge.lexicon.meant_idioms import IDIOMS
from knowledge.lexicon.meant_otherwise import ALSO_ELSEWHERE, OTHERWISE, PUT_RIGHT

BOOK = the_book()
#: plainly said, with words near those that mean it otherwise
PLAIN = {
    "woodruff key sheared": "drive_coupling_sheared",
    "feed line to the turbo is leaking": "turbo_line_leaks",
    "gauge line leaks at the union, primed it": "gauge_line_leaking",
    "hard black flakes on the strainer": "carbon_flakes",
    "engine seized after the alternator belt broke": "engine_seized",
    "cooler hose kinked": "cooler_found_blocked",
    "lifters pump up at high revs": "clatters_only_at_high_revs",
    "dealer says it is normal": "maker_calls_it_normal",
    "raced it last year": "raced_or_heeled",
    "drain plug came out": "drain_plug_found_loose",
    "shells worn evenly to the copper": "shells_worn_evenly",
    "gauge reads 10 psi less than the mechanical gauge everywhere": "panel_off_by_constant",
    "pressure goes off when i rev it": "falls_as_revs_rise",
    "spun a bearing": "shell_spun",
    "pump shaft snapped": "drive_shaft_broken",
    "the oil pump drive key sheared": "drive_coupling_sheared",
    "coolant got in and the bearings are wiped": "shells_wiped",
    "timing cover gasket blown": "seal_found_pushed_out",
    "filter full of metal": "metal_in_filter",
}


def test_every_finding_is_in_the_book() -> None:
    named = {name.removeprefix("-") for name in (*OTHERWISE, *IDIOMS)} | PUT_RIGHT | ALSO_ELSEWHERE
    named |= OF_ALL | OF_HISTORY | OF_TURNING
    assert not named - set(BOOK.findings)


@pytest.mark.parametrize(("text", "finding"), PLAIN.items())
def test_what_is_plainly_said_is_read(text: str, finding: str) -> None:
    assert finding in {f.name for f in read(text, BOOK).facts if f.state == "present"}


def test_a_past_year_is_past_only_for_what_is_put_right() -> None:
    """A bearing that spun last year was renewed; a plug left out last year is still out."""
    spun = read("had a spun bearing last year", BOOK)
    left = read("gallery plug left out last year", BOOK)
    assert "shell_spun" not in {f.name for f in spun.facts}
    assert "gallery_plug_found_missing" in {f.name for f in left.facts}
