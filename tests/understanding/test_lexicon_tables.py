"""Tables of the lexicon, and short words and helping verbs inside its phrases."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.lexicon import sights

SAID = {
    "oil pressure does not come up": "behaviour none",
    "the pressure would not come up": "behaviour none",
    "oil pressure did not come up": "behaviour none",
    "the oil light will not go off": "behaviour lamp",
    "oil pressure does not settle": "behaviour unsteady",
    "oil pressure doesn't settle": "behaviour unsteady",
    "oil pressure does not rise with the revs": "finding capped_low present",
    "pressure hardly goes up when I rev it": "finding capped_low present",
    "pressure came back as soon as I eased off": "finding back_when_slowed present",
    "the needle jumps every time the fan cuts in": "finding needle_follows_loads present",
    "tapping the dash makes the needle jump": "finding tap_frees_needle present",
    "front gallery plug was left out": "finding gallery_plug_found_missing present",
    "the capillary is pinched": "finding gauge_line_kinked present",
}
#: what is said, and what it does not say
NOT_SAID = {
    "the light does not flicker": "behaviour unsteady",
    "oil pressure does not drop": "behaviour low",
    "cooler line kinked behind the bulkhead": "finding gauge_line_kinked present",
    "driving home the oil light came on": "finding ran_on_without_pressure present",
    "the gauge showed nothing on a drive home": "finding oil_on_the_ground absent",
}


def test_each_finding_stands_in_one_table_of_sights() -> None:
    """Phrases of one finding in two files would hide each other."""
    ids = {finding for table in sights.TABLES for finding in table}
    assert sum(len(table) for table in sights.TABLES) == len(ids)
    assert sights.SIGHTS.keys() == ids | {f for table in sights.BESIDE for f in table}
    assert all(
        set(table[k]) <= set(sights.SIGHTS[k])
        for table in (*sights.TABLES, *sights.BESIDE)
        for k in table
    )
    absent = {finding for table in sights.ABSENT_TABLES for finding in table}
    assert sum(len(table) for table in sights.ABSENT_TABLES) == len(absent)
    assert sights.SIGHTS_ABSENT.keys() == absent | {f for t in sights.BESIDE_ABSENT for f in t}


@pytest.mark.parametrize("text", SAID)
def test_short_words_are_read(text: str) -> None:
    """The fact is among those read."""
    assert SAID[text] in [f.short for f in read(text, the_book()).facts]


@pytest.mark.parametrize("text", NOT_SAID)
def test_near_misses_are_not(text: str) -> None:
    """The fact is not among those read."""
    assert NOT_SAID[text] not in [f.short for f in read(text, the_book()).facts]
