"""Figures in a row without "at", differences from before, and what a word says of another thing."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

#: the words, and all that is read of them
SAID: tuple[tuple[str, set[str]], ...] = (
    (
        "at startup 70 psi, after warm 15 psi idle 40 psi 3000",
        {"reading 70 psi at start", "reading 15 psi hot, idle", "reading 40 psi hot, 3000 rpm"},
    ),
    ("15 psi idle 40 psi 3000", {"reading 15 psi idle", "reading 40 psi 3000 rpm"}),
    (
        "70 cold 15 hot idle 40 hot 3000",
        {"reading 70 psi cold", "reading 15 psi hot, idle", "reading 40 psi hot, 3000 rpm"},
    ),
    ("gauge goes up as normal", {"behaviour normal"}),
    ("after an hour the pressure goes", {"behaviour lost late in a run"}),
    ("oil is due, 14000 miles on it", {"finding oil_overdue present"}),
    ("engine has 14000 miles on it", {"finding high_mileage absent"}),
    ("now 20 psi less at cruise than before", {"behaviour low at speed"}),
    ("10 pounds down on normal", {"behaviour low"}),
    (
        "gauge was at 50 then just died to zero on the motorway",
        {"reading 50 psi", "behaviour lost at speed sudden"},
    ),
    ("lump of steel came out with the oil", {"finding metal_in_pan present"}),
    ("the oil on the stick is clean", {"finding oil_looks_clean present"}),
    ("shut down on low oil pressure three times in a week", {"behaviour trips"}),
    ("pushed the filter seal out", {"finding filter_burst present"}),
    (
        "sight glass drip oiler stopped dripping",
        {"finding drip_oiled present", "finding feed_not_seen present"},
    ),
    ("no pressure at all for half a minute then it came up", {"behaviour slow to build"}),
    (
        "every morning takes 5 secs",
        {"behaviour slow to build cold returns under the same condition"},
    ),
    ("priming with drill, gauge goes to 60", {"finding drill_gives_good present"}),
    (
        "oil light goes off as it cranks. gauge reads 0",
        {
            "finding second_instrument_disagrees present",
            "behaviour normal at start",
            "behaviour none",
        },
    ),
    (
        "oil smells of diesel and is too high on the stick",
        {"finding fuel_smell present", "finding level_high present"},
    ),
    ("swapped the gauges, still port", {"trial other_gauge no difference"}),
    (
        "oil tank is empty after standing all winter, sump is full of oil",
        {
            "finding wet_sumps present",
            "finding stood_long present",
            "earlier storage straight before",
        },
    ),
)


@pytest.mark.parametrize(("words", "wanted"), SAID, ids=[c[0] for c in SAID])
def test_short_rows(words: str, wanted: set[str]) -> None:
    """That is read, and nothing else."""
    assert {fact.short for fact in read(words, the_book()).facts} == wanted
