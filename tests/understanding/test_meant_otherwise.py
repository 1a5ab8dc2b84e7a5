"""Words that mean a finding otherwise take nothing away from one that is plainly said."""

from __future__ import annotations

import ast
import inspect
from importlib import import_module
from pkgutil import iter_modules

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.lexicon import meant
from knowledge.lexicon.meant.foreign_parts import OF_ALL, OF_HISTORY, OF_TURNING
from knowledge.lexicon.meant.otherwise import ALSO_ELSEWHERE, PUT_RIGHT
from knowledge.lexicon.meant.tables import OTHERWISE
from knowledge.reports.words import Shows

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
    "the fuel pump leaks petrol": "fuel_gets_in",
    "the fuel pump leaks oil at its joint": "accessory_pad_wet",
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
    "the oil filler cap was left off": "filler_cap_found_off",
    "dipstick was off when I got there": "filler_cap_found_off",
    "half the pickup screen was covered with black bits": "screen_blocked",
    "the gallery plug behind the cam gear was missing": "gallery_plug_found_missing",
    "sump plug dripping because it is loose": "drain_plug_found_loose",
    "turbo shrieks": "turbo_shrieks",
    "timing belt snapped last year": "earlier_breakage",
    "level is on the full mark, on level ground": "level_correct",
    "dirt under the relief seat, two bits of it": "debris_on_relief_seat",
    "bought it 5 weeks ago": "history_unknown",
    "just been rebuilt": "freshly_rebuilt",
    "oil is black and thick": "oil_black_and_gritty",
    "cam chain tensioner is slack": "tensioner_slack",
    "bits of white metal bearing in the pump": "bearing_pieces_in_pump",
    "the oil pump drive coupling sheared": "drive_coupling_sheared",
    "filter gasket doubled": "filter_misfitted",
    "dash reads twice what the mechanical gauge reads": "panel_half_or_double",
    "sludge on the pickup screen": "sludge_on_screen",
    "plastic bits on the pickup screen": "plastic_on_screen",
    "gauge is dead on a known resistor": "gauge_dead_on_known_signal",
    "filter bypass valve stuck open": "filter_bypass_stuck_open",
    "bearings dry and blue": "signs_of_starvation",
    "metal flakes in the pan": "metal_in_pan",
    "pickup tube is bent": "pickup_bent",
    "oil hoses are old and hard": "oil_hoses_aged",
    "oil is the right grade": "oil_grade_as_manual",
    "pump gasket blown": "mount_gasket_blown",
    "level is right": "level_correct",
    "copper showing on the shells": "shells_worn_evenly",
    "main shell turned, oil hole half covered": "shell_hole_mismatch",
    "oil gallery blocked with sludge": "gallery_found_blocked",
    "moving the wires about makes the needle jump": "wiggle_moves_needle",
    "gauge still reads 20 with the engine off": "needle_off_zero_at_rest",
    "hot day, 90 deg out there": "hot_and_thin",
    "idles too slow at 400": "idle_below_spec",
    "it sat for over a year": "stood_long",
    "all the oil ran out in a minute": "oil_loss_fast",
    "oil runs down the outside of the block": "oil_seen_outside",
    "teeth of the pump drive gear stripped": "drive_gear_stripped",
}
#: the same words of another part, another fluid or a milder state
OTHER: dict[str, str] = {
    "filter housing cap o ring missing": "filler_cap_found_off",
    "dipstick is off a different tractor": "filler_cap_found_off",
    "RTV hanging out inside the oil filler": "filler_cap_found_off",
    "the screen in the phaser solenoid was full of black bits": "screen_blocked",
    "gallery plug seeping at the back": "gallery_plug_found_missing",
    "drain plug washer weeping": "drain_plug_found_loose",
    "turbo whistles": "turbo_shrieks",
    "alternator belt snapped": "earlier_breakage",
    "side slope, then it comes level and its ok": "level_correct",
    "relief spring was in two bits": "debris_on_relief_seat",
    "picking this up again after 5 weeks": "history_unknown",
    "it has been rebuilt twice already": "freshly_rebuilt",
    "oil is thick": "oil_black_and_gritty",
    "drained 5 litres of water": "drained_volume",
    "drained 5 litres of water from the sump": "oil_loss_fast",
    "the oil pump chain is slack": "tensioner_slack",
    "swarf in the pump": "bearing_pieces_in_pump",
    "checked the dipstick from the other side": "dipstick_not_its_own",
    "the coupling sleeve of the balance shaft sheared": "drive_coupling_sheared",
    "screw on filter hanging upside down": "filter_misfitted",
    "old filter had a rubber flap in it": "filter_misfitted",
    "bare copper showing on the wire": "shells_worn_evenly",
    "i moved the wires to the oil light about": "wiggle_moves_needle",
    "dropped to 20 psi, then knock knock, switched off": "needle_off_zero_at_rest",
    "cam bearing rotated, its oil hole 90 deg out": "hot_and_thin",
    "but only 12 at 600 tickover": "idle_below_spec",
    "it sat a month": "stood_long",
    "filter was empty when i took it off, oil ran out of it": "oil_loss_fast",
    "took the filter off and oil ran out of it": "oil_seen_outside",
    "changed oil twice, still 0 on a mechanical gauge": "panel_half_or_double",
    "bought the cheap filter": "history_unknown",
    "rod shells even grey wear, no copper": "shells_worn_evenly",
    "the turbo's feed pipe gauze filter was full of black coke": "sludge_on_screen",
    "VVT solenoid screen clogged with plastic bits": "plastic_on_screen",
    "the screen in the phaser solenoid had bits of foreign dirt": "foreign_material_on_screen",
    "balance shaft bush turned in the block": "ran_on_without_pressure",
    "balance shaft bush has .3mm play": "pump_bush_clearance",
    "buzzer on, gauge dead 0": "gauge_dead_on_known_signal",
    "rear main seal dry as a bone": "signs_of_starvation",
    "plastic bits in the pan": "metal_in_pan",
    "no oil at the rockers, pipe bent flat": "pickup_bent",
    "no oil at the rockers, the pipe is bent": "oil_hoses_aged",
    "oil is right up past full": "oil_grade_as_manual",
    "new filter dry, didnt prefill": "filter_seat_leaks",
    "dipstick right one for the engine": "level_correct",
    "rear cam bearing turned, the oil hole half covered": "shell_hole_mismatch",
    "the cam bearing turned and covers half the oil hole": "gallery_found_blocked",
    "pump sprocket with half its teeth missing": "drive_gear_worn",
}


def test_every_finding_is_in_the_book() -> None:
    keys = set(OTHERWISE)
    shown = {key.removeprefix("=") for key in keys if key.startswith("=")}
    assert shown <= {s.value for s in Shows}
    named = {key.removeprefix("-") for key in keys if not key.startswith("=")}
    named |= PUT_RIGHT | ALSO_ELSEWHERE | OF_ALL | OF_HISTORY | OF_TURNING
    assert not named - {*BOOK.findings, *BOOK.measures}


@pytest.mark.parametrize(("text", "finding"), PLAIN.items())
def test_what_is_plainly_said_is_read(text: str, finding: str) -> None:
    assert finding in {f.name for f in read(text, BOOK).facts if f.state == "present"}


@pytest.mark.parametrize(("text", "finding"), OTHER.items())
def test_the_same_words_of_another_thing_are_not(text: str, finding: str) -> None:
    assert finding not in {f.name for f in read(text, BOOK).facts}


def test_a_volume_drained_is_of_oil() -> None:
    """Five litres of water are no oil."""
    read_of = {
        text: [f.name for f in read(text, BOOK).facts if f.value]
        for text in ("drained 5 litres of oil", "drained 5 litres of water", "got 5 litres out")
    }
    assert list(read_of.values()) == [["drained_volume"], [], ["drained_volume"]]


def test_a_past_year_is_past_only_for_what_is_put_right() -> None:
    """A bearing that spun last year was renewed; a plug left out last year is still out."""
    spun = read("had a spun bearing last year", BOOK)
    left = read("gallery plug left out last year", BOOK)
    assert "shell_spun" not in {f.name for f in spun.facts}
    assert "gallery_plug_found_missing" in {f.name for f in left.facts}


def test_no_finding_stands_twice() -> None:
    """The second entry of a finding would take the place of the first without a word."""
    modules = [
        import_module(f"{meant.__name__}.{module.name}")
        for module in iter_modules(meant.__path__)
        if module.name.startswith("of_")
    ]
    keys = [
        str(key.value)
        for module in modules
        for node in ast.walk(ast.parse(inspect.getsource(module)))
        if isinstance(node, ast.Dict)
        for key in node.keys
        if isinstance(key, ast.Constant)
    ]
    assert sorted(keys) == sorted(OTHERWISE)
