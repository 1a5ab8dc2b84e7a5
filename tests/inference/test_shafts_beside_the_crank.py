"""Balance shafts, auxiliary shafts and idler gears wear only where an engine has them."""

from __future__ import annotations

from functools import cache

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.stations.bearings.rules_shafts import SHAFT_OF

BOOK = the_book()
FOUND = """
[[finding]]
no = {no}
when = 2026-01-01
what = "{what}"
{value}
"""
LOW_HOT = FOUND.format(no=1, what="good_cold_low_hot", value='state = "present"')


@cache
def diagnosed(layout: str, has: str, entries: str) -> Diagnosis:
    has = f'has = ["{has}"]\n' if has else ""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{has}' + entries
    return Diagnosis(BOOK, from_text(text, None, BOOK))


def chance(cause: str, layout: str = "unknown", has: str = "", entries: str = LOW_HOT) -> float:
    return diagnosed(layout, has, entries).inference.posterior.marginal.get(cause, 0.0)


@pytest.mark.parametrize("row", SHAFT_OF, ids=lambda row: row[0].id)
def test_likelier_where_the_engine_has_it(row: tuple[object, ...]) -> None:
    feature, cause = row[0].id, row[1].id  # type: ignore[attr-defined]
    assert chance(cause, has=feature) > 2 * chance(cause) > 0.0


def test_impossible_where_the_layout_has_none() -> None:
    for cause in ("balance_shaft_wear", "auxiliary_shaft_wear", "idler_bush_wear"):
        assert chance(cause, layout="skew_gear_four") == 0.0


@pytest.mark.parametrize("row", SHAFT_OF, ids=lambda row: row[0].id)
def test_found_worn_with_sound_mains_it_leads(row: tuple[object, ...]) -> None:
    """Low hot, mains and rods measured sound, and this shaft found worn."""
    worn, cause = row[2].id, row[1].id  # type: ignore[attr-defined]
    entries = (
        LOW_HOT
        + FOUND.format(no=2, what="main_clearance", value='value = "0.0015 in"')
        + FOUND.format(no=3, what="rod_clearance", value='value = "0.0015 in"')
        + FOUND.format(no=4, what=worn, value='state = "present"')
    )
    assert diagnosed("overhead_cam_four", "", entries).ranking[0].cause.id == cause


def test_a_measured_bush_is_judged() -> None:
    wide = FOUND.format(no=2, what="idler_bush_clearance", value='value = "0.35 mm"')
    sound = FOUND.format(no=2, what="idler_bush_clearance", value='value = "0.06 mm"')
    none = chance("idler_bush_wear", layout="tractor_diesel")
    assert chance("idler_bush_wear", "tractor_diesel", entries=LOW_HOT + wide) > 3 * none
    assert chance("idler_bush_wear", "tractor_diesel", entries=LOW_HOT + sound) < none
