"""What was seen on sticks and glasses, and when things were opened: every fact, and nothing else."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from tests.support.readers import by_tell
from tests.support.stated_facts import in_tables

#: texts with all that is read in each
FOUND: dict[str, list[str]] = {
    "plunger does not drop freely through its bore": [
        "finding: relief_plunger_sticks (state present)",
    ],
    "relief piston out, it sticks and wont drop by itself": [
        "finding: relief_plunger_sticks (state present)",
    ],
    "the relief plunger is reluctant to slide": [
        "finding: relief_plunger_sticks (state present)",
    ],
    "relief piston out, it does not stick": [],
    "dipstick half way": [
        "finding: level_correct (state present)",
    ],
    "oil half way up the sight glass": [
        "finding: level_correct (state present)",
    ],
    "cut the filter, only the usual bit of fuzz": [
        "finding: metal_in_filter (state absent)",
    ],
    "nothing at the rockers": [
        "finding: no_oil_at_rockers (state present)",
    ],
    "no oil up top": [
        "finding: no_oil_at_rockers (state present)",
    ],
    "plunger was stuck solid at the bottom, shut": [
        "finding: relief_valve_stayed_shut (state present)",
    ],
    "what came out was like black water and stank of diesel": [
        "finding: fuel_smell (state present)",
        "finding: oil_thin_on_stick (state present)",
    ],
    "line off at the gauge end, hardly a dribble, off at the block it squirts": [
        "finding: gauge_line_sludged (state present)",
        "finding: no_oil_at_line_end (state present)",
    ],
    "mains look grey and eaten away, tiny pits, no scoring": [
        "finding: shells_etched (state present)",
    ],
    "the whole tube swings about": [
        "finding: pickup_tube_rocks (state present)",
    ],
    "the pump chain was never hooked back on the sprocket": [
        "finding: pump_chain_broken (state present)",
    ],
    "ran dry when the drain plug fell out": [
        "finding: dipstick_dry (state present)",
        "finding: drain_plug_found_loose (state present)",
    ],
    "loosened the gallery bolt and cranked, nothing comes": [
        "finding: no_oil_when_cranked (state present)",
    ],
    "rod 2 shows copper with heat marks, others mint": [
        "finding: one_bearing_wiped (state present)",
    ],
    "rest of the pump looks ok": [],
    "relief valve is in the pump so the sump had to come off": [
        "feature: relief_in_pump (state present)",
    ],
    "had the mechanic look at the sender wiring, all fine he says": [
        "finding: sender_wire_broken (state absent)",
        "finding: wire_open_or_shorted (state absent)",
    ],
    "mains .0025 to .003, within spec says the manual": [
        "measured value: main_clearance (value 0.003 in)",
    ],
    "main was within .003": [
        "measured value: main_clearance (value 0.003 in)",
    ],
    "oil pump opened: side play .006": [
        "measured value: pump_side_clearance (value 0.006 in)",
    ],
    "took the relief out, the ball is missing": [
        "finding: relief_part_absent (state present)",
    ],
    "clean as a whistle inside": [
        "finding: oil_looks_clean (state present)",
        "finding: sludge_seen (state absent)",
    ],
    "found a freeze plug out": [
        "finding: cup_plug_found_out (state present)",
    ],
    "blown head gasket": [
        "finding: coolant_gets_in (state present)",
    ],
    "oil sample: copper 12, lead 9, iron 30": [],
    "oil level was bang on the line": [
        "finding: level_correct (state present)",
    ],
    "cruiser v twin, low oil pressure": [
        "behaviour: low",
        "feature: in_a_vehicle (state present)",
        "feature: vee_engine (state present)",
    ],
    "there is no drip on the ground it does blow blue smoke when i start it": [
        "finding: blue_smoke (state present)",
        "finding: oil_on_the_ground (state absent)",
        "finding: oil_seen_outside (state absent)",
    ],
    "oil light comes on in hard lefts": [
        "behaviour: lamp (during ['bends'])",
    ],
    "oil light comes on when I chop the throttle": [
        "behaviour: lamp (during ['slowing to idle'])",
    ],
    "the filter was in backwards": [
        "finding: filter_misfitted (state present)",
    ],
    "number 4 rod bearing is in strips": [
        "finding: shells_found_ruined (state present)",
    ],
    "the overlay is flaking off the top shells": [
        "finding: shells_flaking (state present)",
    ],
    "bearing faces look smoky grey": [],
    "antifreeze level keeps dropping": [
        "finding: coolant_level_falling (state present)",
    ],
    "relief valve spring was short and there were two washers behind it": [
        "finding: relief_parts_not_standard (state present)",
        "finding: relief_spring_short_or_broken (state present)",
    ],
    "pickup bracket cracked through": [
        "finding: pickup_fixing_loose (state present)",
    ],
    "oil pressure 20 psi and the alarm goes at idle": [
        "behaviour: lamp (during ['idle'])",
        "reading: 20 psi",
    ],
    "the relief spring is broken in two pieces and the ball is pitted": [
        "finding: relief_seat_scored (state present)",
        "finding: relief_spring_short_or_broken (state present)",
    ],
    "shells were pitted all over, no scratches": [
        "finding: shells_etched (state present)",
    ],
    "the gauge reads max with sender unplugged": [],
    "found the sender unplugged": [
        "finding: sender_wire_off (state present)",
    ],
}


@pytest.mark.parametrize("text", FOUND)
def test_all_of_it_is_read(text: str) -> None:
    """Everything a text states, and nothing else."""
    assert sorted(str(fact) for fact in in_tables(by_tell(text))) == sorted(FOUND[text])


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("pulled the relief valve and found metal under the ball", ()),
        ("took the sump off and found metal in it", ()),
        ("pulled the relief valve and found", ("pulled the relief valve and found",)),
    ],
)
def test_words_that_lead_to_what_was_seen_are_used(text: str, left: tuple[str, ...]) -> None:
    """They are left over where nothing was read behind them."""
    assert read(text, the_book()).not_understood == left
