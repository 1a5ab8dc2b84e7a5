"""Engines that are being taken apart: parts named again, some sound and some bad, several trials in a row."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book


def _short(text: str) -> set[str]:
    return {fact.short for fact in read(text, the_book()).facts}


@pytest.mark.parametrize(
    ("text", "there", "not_there"),
    [
        (
            "Pulled the main caps. One and two look lovely. Four is wiped.",
            {"finding shells_wiped present"},
            {"finding shells_look_normal present", "finding shells_wiped absent"},
        ),
        (
            "Pulled the main caps. The shells look good.",
            {"finding shells_look_normal present"},
            {"finding shells_wiped present"},
        ),
        (
            "Bearings ok.",  # one sight, one finding: what it rules out follows by rule
            {"finding shells_look_normal present"},
            {"finding shells_wiped absent", "finding shells_found_ruined absent"},
        ),
        (
            "Looked at the gallery plugs. The rear one was gone.",
            {"finding gallery_plug_found_missing present"},
            set(),
        ),
        (
            "Looked at the gallery plugs. The rear seal was gone.",
            set(),
            {"finding gallery_plug_found_missing present"},
        ),
        (
            "Cut the filter open. Lots of shiny flakes.",
            {"finding metal_in_filter present"},
            set(),
        ),
        (
            "Painted the filter red. Lots of shiny flakes.",
            set(),
            {"finding metal_in_filter present"},
        ),
        (
            "squirted oil in through the filter hole",
            set(),
            {"finding filter_can_holed present", "finding oil_sprayed present"},
        ),
        ("the filter has a hole in it", {"finding filter_can_holed present"}, set()),
        (
            "cam bearings worn through to the copper",
            {"finding cam_bearing_found_bad present"},
            {"finding shells_worn_evenly present"},
        ),
        (
            "dash reads 80. Mechanical gauge reads 42 at idle and 60 at 2000.",
            {"finding panel_reads_too_high present"},
            {"finding panel_reads_too_low present"},
        ),
        (
            "dash reads 50 at 3000. Mechanical gauge reads 20 at idle.",
            set(),
            {"finding panel_reads_too_high present", "finding panel_reads_too_low present"},
        ),
        (
            "12 psi hot. New pump, primed it with a can. Started her. Same as before.",
            {"trial new_pump no difference"},
            {"trial pump_primed no difference"},
        ),
    ],
)
def test_what_is_found_and_what_is_not(text: str, there: set[str], not_there: set[str]) -> None:
    """The facts stated are read, and none that the words only seem to say."""
    found = _short(text)
    assert there <= found
    assert not not_there & found
