"""Findings as owners type them with little care, and sentences near them that state none of them."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

BOOK = the_book()
#: by finding: sentences that state it, and near ones that do not
SAID: dict[str, tuple[tuple[str, ...], tuple[str, ...]]] = {
    "gauge_supply_wrong": (
        ("earth wire of the instrument panel loose and green", "panel earth is corroded"),
        ("engine earth strap is loose", "the dash gauge is broken", "gauge lead is off"),
    ),
    "lamp_lit_with_key_off": (
        ("lamp is on with key off", "oil light stays lit when the ignition is off"),
        (
            "lamp is on with the key on",
            "lamp on, key on, engine off",
            "lamp is off with the key on",
        ),
    ),
    "rises_with_clutch": (
        ("pressure rises when the clutch goes in", "the needle goes up when i press the clutch"),
        ("pressure drops when the clutch goes in", "pressure rises when i let the clutch out"),
    ),
    "gallery_seal_found_bad": (
        ("there is a tube inside the gallery with an o ring, it was perished",),
        ("the filter has an o ring, it was perished",),
    ),
    "tilts": (
        ("engine tilted 15 degrees in the hull", "the engine sits at a 10 degree angle"),
        ("the mirror is tilted 15 degrees", "timing at 15 degrees"),
    ),
    "freshly_rebuilt": (
        ("new engine, 0 psi cranking", "brand new engine, never run"),
        ("new engine oil, 20 psi", "new engine mounts"),
    ),
    "oil_grade_too_thin": (
        ("oil was changed to 0w20 by mistake", "put 0w20 in by mistake"),
        ("oil was changed to 20w50 by mistake", "oil was changed to 0w20"),
    ),
    "right_idle_cured_it": (
        ("idles at 400 rpm, lamp flickers, set to 600 and its out",),
        ("idles at 600 rpm, lamp flickers",),
    ),
    "gallery_wall_weeps": (
        (
            "hairline crack found in the block gallery behind the injection pump",
            "the block is cracked at the main gallery",
        ),
        (
            "crack in the block",
            "crack in the exhaust gallery flange",
            "gallery plug near the crank",
        ),
    ),
    "balance_shafts": (
        ("2.2 four with balancer shafts", "it has balance shafts"),
        ("no balance shafts", "prop shaft out of balance"),
    ),
    "flooded": (
        (
            "engine was flooded in the boatyard storm",
            "shed flooded in the storm in spring",
            "shed was flooded water over the engine",
            "it went under water",
        ),
        (
            "flooded it with petrol",
            "the carb flooded",
            "water under the boat",
            "oil over the engine",
        ),
    ),
    "fuel_at_the_drain": (
        (
            "a litre of petrol came out of the sump",
            "sump was full of diesel",
            "sump full of diesel from the lift pump",
            "drained 2 quarts of gas from the oil pan",
            "there was 2 litres of fuel in the sump",
        ),
        ("drained 20 litres of diesel out of the tank", "drained 5 litres of oil from the diesel"),
    ),
    "water_at_the_drain": (
        (
            "a pint of green coolant came out of the sump first",
            "drained a litre of water off the bottom",
        ),
        ("drained 3 litres of water from the radiator", "drained 2 litres of coolant"),
    ),
    "water_in_sump": (
        ("the sump had 2 litres of water in it", "a lot of water in the oil pan"),
        ("a lot of water in the bilge",),
    ),
    "dipstick_not_its_own": (
        ("dipstick is 20 mm too short", "dipstick is 30 mm shorter than the right one"),
        ("dipstick is 20 mm above the full mark",),
    ),
    "relief_spring_short_or_broken": (
        ("relief spring came out in 3 pieces", "relief valve spring was in half"),
        ("relief spring came out easily", "valve spring was in two bits"),
    ),
    "filter_bypass_stuck_open": (
        ("oil cooler bypass left open", "the filter bypass jammed open"),
        ("the heater bypass left open",),
    ),
    "steel_slivers_in_pump": (
        ("swarf in the oil pump", "a curl of swarf jammed in the pump gears"),
        ("swarf in the water pump", "swarf on the bench"),
    ),
    "oil_from_bellhousing": (
        ("plug behind the flywheel weeping", "rear cam plug leaks"),
        ("bolts behind the flywheel", "spark plug leaks"),
    ),
    "seal_or_gasket_wet": (
        ("drain plug washer dripping", "sump plug gasket weeps"),
        ("new drain plug washer fitted",),
    ),
    "sealer_in_sump": (
        ("bits of silicone in the drain oil", "lumps of blue rtv in the pan"),
        ("put silicone on the sump",),
    ),
    "anti_drainback_hard": (
        (
            "used a filter without a non-return valve",
            "old filter had a rubber flap this new one hasnt got one",
        ),
        ("the filter has a non-return valve",),
    ),
    "wrong_shells_fitted": (
        ("crank 10 under, used 20 under shells", "crank ground to .020 under, fitted std shells"),
        ("crank ground and shells to suit fitted",),
    ),
    "needle_follows_loads": (
        ("with the headlights off the needle goes back up",),
        ("engine off, the needle goes back",),
    ),
    "relief_parts_not_standard": (
        ("relief valve adjusted with 3 washers", "two shims behind the relief spring"),
        ("drain plug with two washers", "new copper washer on the relief plug"),
    ),
    "level_high": (
        ("oil is up to the neck",),
        ("oil is up to the add mark",),
    ),
    "protection_tripped": (
        ("oil pressure switch keeps shutting the engine down",),
        ("oil pressure switch keeps leaking",),
    ),
}
STATED = [(text, finding) for finding, (said, _) in SAID.items() for text in said]
NEAR = [(text, finding) for finding, (_, near) in SAID.items() for text in near]


def _present(text: str) -> set[str]:
    return {f.name for f in read(text, BOOK).facts if f.state == "present"}


@pytest.mark.parametrize(("text", "finding"), STATED)
def test_what_is_typed_is_read(text: str, finding: str) -> None:
    assert finding in _present(text)


@pytest.mark.parametrize(("text", "finding"), NEAR)
def test_what_is_near_it_is_not(text: str, finding: str) -> None:
    assert finding not in _present(text)
