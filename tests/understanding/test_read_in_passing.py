"""Figures and gauges named in passing: a thermometer without its unit, tools lent, an idle set right."""

from __future__ import annotations

import pytest

from diagnose.output.documents.facts import fact_sentence
from diagnose.understanding.reader import read
from knowledge.book import the_book

BOOK = the_book()
#: what is typed, and all that is read from it
READ = {
    "gauge 30 psi but my mate's ir gun says oil is 130C": ["reading 30 psi 130 C"],
    "pressure is 4.2 kg, thermometer says 95": ["reading 4.2 kg/cm2 95 C"],
    "40 psi, oil temp is 210": ["reading 40 psi 210 F"],
    "40 psi, temp gauge says 95": ["reading 40 psi 95 C"],
    "my mate's gauge says 20 psi at idle": [],
    "tried it with my mates gauge and it shows 12 psi": ["reading 12 psi"],
    "my mate's engine has 40 psi": [],
    "we had 0 pressure now 35": ["reading 35 psi"],
    "viscosity is 11.2": ["finding viscosity_at_100c 11.2 cSt"],
    "viscosity index 140": [],
    "the needle flicks to 80 and falls to 0 when i turn the key": [],
    "cant rev it past 2000 or the light comes on": ["behaviour lamp"],
    "cant rev over 2000 the alarm goes off": ["behaviour lamp"],
    "both gauges read the same": ["finding second_instrument_disagrees absent"],
    "lamp comes on and off when i drive over bumps and speed humps": [
        "behaviour lamp bumps comes and goes"
    ],
    "the light flickers on a 20 degree bank": ["behaviour unsteady slopes"],
    "swapped the filter, cranked for a minute, nothing on the gauge": [
        "earlier filter_change renewed",
        "behaviour none",
        "reading 0 cranking",
    ],
    "only 12 at 600 tickover": ["behaviour low", "reading 12 psi 600 rpm"],
    "crank was sent out for a regrind": ["earlier bearings rebuilt"],
    "in frame o/h 3 weeks ago": ["earlier whole_engine rebuilt 3 weeks"],
    "they swapped the pump. now 0.6 bar hot tickover, used to be 2 bar": [
        "earlier oil_pump renewed",
        "reading 0.6 bar hot, idle",
    ],
    "changed the filter, dint help": ["trial new_filter no difference"],
    "rods 0.045": ["finding rod_clearance 0.045 mm"],
    "straight 6, gauge zero": ["bearing rods 6", "layout skew_gear_six", "behaviour none"],
    "new pump, now zero": ["earlier oil_pump renewed straight before", "behaviour none work"],
    "rods .0025": ["finding rod_clearance 0.0025 in"],
    "wrong sender, 10 bar one with a 5 bar gauge": ["finding sender_not_for_gauge present"],
    "block is cracked at the main gallery": ["finding gallery_wall_weeps present"],
    "pressure drops when the clutch goes in": ["behaviour low clutch pressed"],
    "it had 40 psi yesterday and today it has none": ["finding gone_at_the_next_start present"],
    "was fine in the autumn 3.5 bar. now 0": ["reading 0", "behaviour none"],
    "ran it yesterday, 20 psi at hot idle, and took the sump off today": [
        "reading 20 psi hot, idle"
    ],
    "used to be 60 and 30 hot, now 40 and 10": ["reading 40 psi", "reading 10 psi hot"],
    "mains 3, 4 and 5 are 3.5 thou": [
        "finding main_clearance 3.5 thou main 3",
        "finding main_clearance 3.5 thou main 4",
        "finding main_clearance 3.5 thou main 5",
    ],
    "mains 2 and 3 thou": ["finding main_clearance 3 thou"],
    "screw on filter, light stays on": [
        "finding spin_on_filter present",
        "behaviour lamp constant",
    ],
    "lamp comes on over bumps, i moved the wires 3 weeks ago": [
        "behaviour lamp bumps",
        "earlier instrument 3 weeks",
    ],
    "straight 6, moved the sender, gauge zero": [
        "bearing rods 6",
        "layout skew_gear_six",
        "earlier instrument",
        "finding gauge_port_moved present",
        "behaviour none",
    ],
    "needle jumps when i move the wires": ["finding wiggle_moves_needle present"],
    "oil overdue, burnt oil never changed": [
        "finding oil_overdue present",
        "finding service_neglected present",
    ],
    "the oil light stayed on for 3 miles before she stopped": [
        "behaviour lamp constant",
        "finding ran_on_without_pressure present",
    ],
    "put a new rear seal, light out in 2 s, 3.2 bar hot idle": [
        "earlier clutch_or_gearbox renewed",
        "finding lamp_comes_on absent",
        "reading 3.2 bar hot, idle",
    ],
    "straight 6, 7 main bearings, 6 psi hot idle": [
        "bearing rods 6",
        "layout skew_gear_six",
        "bearing mains 7",
        "reading 6 psi hot, idle",
    ],
    "its a 1.3 push rod four": ["finding pushrod_engine present", "layout skew_gear_four"],
    "a 1.4 petrol, oil light on": ["finding diesel absent", "behaviour lamp"],
    "it is a 2.2 four, oil light on": ["bearing rods 4", "behaviour lamp"],
    "late turbo straight six, 30 psi": [
        "finding turbocharged present",
        "bearing rods 6",
        "reading 30 psi",
    ],
    "theres oil all over the plug on the little switch by the filter": [
        "finding sender_leaks_oil present"
    ],
    "the rod let go its shell, it spun in the rod": ["finding shell_spun present"],
    "put a quart of flush in, now 8 psi hot, used to be 25": [
        "finding additive_or_flush_in_oil present",
        "trial engine_flushed worse",
        "reading 8 psi hot",
    ],
    "the tensioner has a hole, oil squirts out of it": [],
    "turbo return pipe is coked": ["finding turbocharged present"],
    "the vvt solenoid screen was full of silicone": ["finding cam_phasers present"],
    "tank glass goes down nearly empty": ["finding tank_empties_running present"],
    "scavenge suction pipe cracked at the flange": ["finding scavenge_side_takes_air present"],
    "oil goes back to tank, after 20 min the pressure drops": [
        "behaviour low after minutes of running"
    ],
    "sump plug clean": ["finding magnetic_metal absent", "finding metal_in_pan absent"],
    "pump cover gasket blown out": ["finding seal_found_pushed_out present"],
    "gearbox oil in the engine by mistake": ["finding additive_or_flush_in_oil present"],
    "15 yrs in barn": ["finding stood_long present"],
    "relief cap lost": ["finding relief_cap_loose_or_leaking present"],
    "copper all through the sump": ["finding copper_flakes present"],
    "oil cooler flows freely": ["finding cooler_found_blocked absent"],
    "bypass valve closes properly": [
        "finding filter_bypass_stuck_open absent",
        "finding filter_bypass_stuck_shut absent",
    ],
    "relief plunger falls under its own weight": [
        "finding relief_found_stuck absent",
        "finding relief_plunger_sticks absent",
    ],
    "plastigage 0.05 rod 1 and 0.055 rod 2": [
        "finding rod_clearance 0.05 mm rod 1",
        "finding rod_clearance 0.055 mm rod 2",
    ],
    "rod 1 .002 rod 2 .003": [
        "finding rod_clearance 0.002 in rod 1",
        "finding rod_clearance 0.003 in rod 2",
    ],
    "mains fitted with 0.25 shells": ["earlier bearings renewed"],
    "mains 0,06 0,06 0,07": ["finding main_clearance 0.07 mm"],
    "main 4 0.09": ["finding main_clearance 0.09 mm main 4"],
    "crank ground 0.25 mm undersize, rods got standard shells": [
        "earlier bearings",
        "finding wrong_shells_fitted present",
    ],
    "oil pressure 0.25": [],
    "relief spring 41mm long 12 lbs": ["finding relief_spring_length 41 mm"],
    "relief spring 12 lbs at 1.4 in": [],  # its load at a height, no free length
    "relief spring 41 mm, 20 lb at idle": [
        "finding relief_spring_length 41 mm",
        "reading 20 psi idle",
    ],
    "the oil band came out of the bore at full lift and dumped the gallery": [],
    "it was stuck solid in its hole": [],
    "if you swapped caps you're in for a line hone": [],
    "fuel gauge reads half when the tank is full": [],
    "the plastic oil pump sprocket has lost all its teeth": ["finding pump_chain_broken present"],
    "returns oil to the tank": ["finding no_return_to_tank absent"],
    "roller big end, 5 psi hot": ["finding roller_big_ends present", "reading 5 psi hot"],
    "rod 3 big end shell turned in the rod, tang gone": ["finding shell_spun present"],
    "the gasket between filter head and block is split": [
        "finding adapter_gasket_displaced present"
    ],
    "no psi for 30 secs after filter change": [
        "behaviour none oil change",
        "earlier filter_change renewed straight before",
    ],
    "coupling between distributor and pump sheared": ["finding drive_coupling_sheared present"],
    "oil on the stick full, glittery like gold paint": [
        "finding level_correct present",
        "finding glitter_in_oil present",
    ],
    "filter full of copper flakes": [
        "finding copper_flakes present",
        "finding metal_in_filter present",
    ],
    "wrong stick from another sump": [
        "finding dipstick_not_its_own present",
        "earlier sump renewed",
    ],
    "stays on 85 hot even at idle": ["reading 85 psi hot, idle"],
    "180F oil: 6 psi at 500 rpm, 22 psi at 2000 rpm on a new master gauge": [
        "reading 6 psi 180 F, 500 rpm",
        "reading 22 psi 180 F, 2000 rpm",
    ],
    "reads 5, 45 on a test gauge": ["reading 5 psi", "reading 45 psi"],
    "dash shows 5 at idle, 45 at idle on a test gauge": [
        "reading 5 psi idle",
        "finding panel_reads_too_low present",
        "reading 45 psi idle",
    ],
    "60 psi at 40C, 20 psi at 90C at idle": ["reading 60 psi 40 C", "reading 20 psi idle, 90 C"],
    "whatever was on the shelf, 10w40, says 5w30 in the book": [
        "finding oil_grade_too_heavy present",
        "oil 10W-40",
    ],
    "OK borrowed a mechanical gauge. Cold 52 psi": ["reading 52 psi cold"],
    "new pump. 52 psi hot": ["trial new_pump cured", "reading 52 psi hot"],
    "pump seal ring wrong way": [],
    "pickup tube loose in the pump, moves by hand": ["finding pickup_tube_rocks present"],
    "idler gear on the pump loose on its pin": [
        "finding idler_gear_bush_worn present",
        "finding idler_pin_out present",
    ],
}


@pytest.mark.parametrize("text", READ)
def test_what_is_said_in_passing(text: str) -> None:
    assert [f.short for f in read(text, BOOK).facts] == READ[text]


@pytest.mark.parametrize(
    ("text", "gauges"),
    [
        ("6 psi at 500 rpm, 22 psi at 2000 rpm on a new master gauge", ["direct", "direct"]),
        ("dash shows 5 at idle, 45 at idle on a test gauge", [None, "direct"]),
        ("reads 5, 45 on a test gauge", [None, "direct"]),
    ],
)
def test_a_test_gauge_behind_a_list_is_of_all_with_a_speed(text: str, gauges: list[object]) -> None:
    """Not of what the panel shows, nor of figures without a speed."""
    found = [f for f in read(text, BOOK).facts if f.table == "reading"]
    assert [f.fields.get("gauge") for f in found] == gauges


def test_mains_are_shown_as_mains() -> None:
    """Not as cylinders, which have the rods."""
    facts = read("straight six, 7 main bearings", BOOK).facts
    shown = [fact_sentence(f, BOOK) for f in facts if f.table == "bearing"]
    assert shown == ["6 cylinders: 6 rod bearings", "7 main bearings"]


def test_what_came_after_none_is_read() -> None:
    """A figure behind "then" is the pressure; behind a longer stretch of words it is not taken."""
    facts = [f.short for f in read("no pressure for 10 seconds then 40", BOOK).facts]
    assert "reading 40 psi" in facts
    assert not [
        f for f in read("no knock for 10 miles then 40", BOOK).facts if f.table == "reading"
    ]
