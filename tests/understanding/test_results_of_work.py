"""What came of work, as people type it: each result is that of the work it was said of."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

Case = tuple[str, tuple[str, ...], tuple[str, ...]]

TRIED: tuple[Case, ...] = (
    (
        "no pressure. cleaned the pickup tube, no change, fitted new one, still the same",
        ("trial pickup_cleaned no difference", "trial new_pickup no difference"),
        (),
    ),
    (
        "low pressure. left the strainer in a bath of solvent, no difference",
        ("trial pickup_cleaned no difference",),
        (),
    ),
    ("wont build pressure unless I prime it", ("trial pump_primed cured",), ()),
    ("won't get better unless I prime it", (), ("trial pump_primed cured",)),
    (
        "gauge was reading zero. cleaned the connector and it came back to life",
        ("trial connector_refitted cured",),
        (),
    ),
    ("gauge came back to life when I wiggled the lead", (), ("trial connector_refitted cured",)),
    (
        "low pressure, slow to build. New pump fixed the slow build but not the low idle",
        ("trial new_pump helped",),
        (),
    ),
    ("low pressure. New pump fixed the slow build", ("trial new_pump cured",), ()),
    (
        "12 psi hot. New relief spring, now down to 9",
        (),
        ("trial stiffer_spring no difference",),
    ),
    (
        "low pressure. relief valve was stuck, freed it up, good now",
        ("finding relief_plunger_sticks present",),
        ("finding relief_seat_scored absent",),
    ),
    (
        "low at speed. shimmed the relief spring, it's 10 up at speed",
        (),
        ("reading 10 psi cruise",),
    ),
)
TRIED_TOO: tuple[Case, ...] = (
    (
        "Light came on at idle so I bumped the idle up and it stays off",
        ("behaviour lamp idle", "trial idle_raised cured"),
        (),
    ),
    (
        "Gauge at 5. Put a manual gauge on, reads 38. New sender fitted, it reads 40 now",
        ("reading 40 psi", "trial new_sender cured"),
        (),
    ),
    (
        "low pressure. straight 40 bought me 4 psi at idle and nothing at speed",
        (),
        ("behaviour none at speed", "reading 4 psi idle"),
    ),
    (
        "low pressure. New filter cured the morning rattle but not the low pressure",
        ("trial new_filter helped",),
        (),
    ),
    (
        "cleaning the earth on the block made the gauge stop jumping about",
        (),
        ("behaviour unsteady", "finding ground_strap_bad absent"),
    ),
    ("cleaned and the gauge still jumps about", ("behaviour unsteady",), ()),
    (
        "Blocked off the oil cooler, no change",
        ("trial cooler_bypassed no difference",),
        ("finding cooler_found_blocked present",),
    ),
    (
        "Shop put in a new pump, 300 miles later it is back to 5 psi",
        ("trial new_pump cured for a while",),
        ("trial new_pump helped",),
    ),
    (
        "fitted new rings and bearings, oil pressure went from 20 to 60",
        ("trial new_bearings cured",),
        ("trial connector_refitted cured",),
    ),
    (
        "resealed the sump. No leaks now but gauge still drops",
        ("trial seals_renewed no difference",),
        ("trial seals_renewed cured",),
    ),
    (
        "fitted another pump. Light stayed off for ten miles",
        ("trial new_pump cured for a while",),
        (),
    ),
)
CAME_OF_IT: tuple[Case, ...] = (
    (
        "no joy from new sender or pump, cleaning the relief did it",
        (
            "trial new_sender no difference",
            "trial new_pump no difference",
            "trial relief_cleaned cured",
        ),
        (),
    ),
    (
        "low pressure. no joy, new sender fixed it",
        ("trial new_sender cured",),
        ("trial new_sender no difference",),
    ),
    (
        "light on. topped it up, light off, came back on after 20 miles",
        ("trial topped_up cured for a while",),
        ("trial topped_up cured",),
    ),
    (
        "low at idle. changed the sender, ran new wire. same reading every time",
        ("behaviour low idle", "trial new_sender no difference"),
        ("finding engine_runs_normally present",),
    ),
)


@pytest.mark.parametrize(
    ("text", "stated", "not_stated"),
    [*TRIED, *TRIED_TOO, *CAME_OF_IT],
    ids=lambda x: str(x)[:40],
)
def test_a_result_is_of_its_own_work(
    text: str, stated: tuple[str, ...], not_stated: tuple[str, ...]
) -> None:
    """Each stated fact is among those read; none of the others is."""
    found = [f.short for f in read(text, the_book()).facts]
    assert set(stated) <= set(found)
    assert not set(not_stated) & set(found)
