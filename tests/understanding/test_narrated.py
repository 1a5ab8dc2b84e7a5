"""What a narrator says of causes, trials and work: read as it is said, a named cause never as a sight."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

BOOK = the_book()
#: a cause that is only named, work that is only coming, a state of another thing
NOTHING: tuple[str, ...] = (
    "it turned out to be the pump gears worn out",
    "the cause was a broken pump drive shaft",
    "culprit: o-ring on the pickup split",
    "root cause was a missing gallery plug",
    "diagnosed as worn main bearings",
    "my guess: cracked pickup tube",
    "I bet a gallery plug fell out",
    "new sender is on the way",
    "checked the mains",
    "took the relief valve out, worn timing chain",
    "put a straightedge across the pump cover",
    "checked with a second gauge",
)
READ: dict[str, list[str]] = {
    "the problem is low oil pressure at idle": ["behaviour low idle"],
    "pulled it and it turned out the relief valve was stuck open": [
        "finding relief_valve_stayed_open present",
    ],
    "no change with the filter, new pump made it 3 psi better": [
        "trial new_filter no difference",
        "trial new_pump helped",
    ],
    "Put thicker oil in, replaced the pump. The thicker oil helped, the rest did nothing.": [
        "trial new_pump no difference",
        "trial thicker_oil helped",
    ],
    "the sender was weeping oil so I put a new one in. gauge works again": [
        "finding sender_leaks_oil present",
        "trial new_sender cured",
    ],
    "gauge goes from 50 cold to zero when hot": ["behaviour none hot", "reading 50 psi cold"],
    "new pump fitted 500 miles ago": ["earlier oil_pump renewed 2 weeks"],
    "the lamp fails to light with the ignition on": ["finding lamp_dead_with_key_on present"],
    "forgot one of the gallery plugs": ["finding gallery_plug_found_missing present"],
    "pickup can be rocked by hand": ["finding pickup_tube_rocks present"],
    "screen full of what looks like blue silicone": [
        "finding screen_blocked present",
        "finding sealer_on_screen present",
    ],
}


@pytest.mark.parametrize("text", NOTHING)
def test_what_is_only_named_or_coming_is_not_read(text: str) -> None:
    """Causes that nobody saw, parts on order, tools, and states of other things."""
    assert [f.short for f in read(text, BOOK).facts] == []


@pytest.mark.parametrize("text", READ)
def test_what_is_said_of_work_and_sights_is_read(text: str) -> None:
    """Everything that is stated, and nothing else."""
    assert sorted(f.short for f in read(text, BOOK).facts) == READ[text]
