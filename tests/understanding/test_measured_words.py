"""Measured values in words: what is read as which quantity, and what is none."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.lexicon.values import quantities as values
from knowledge.units import DIMENSIONS, parse

BOOK = the_book()

#: what a mechanic writes, and every value in it
VALUES = {
    "mains 4.5 thou": ["main_clearance 4.5 thou"],
    "Mains .0045": ["main_clearance 0.0045 in"],
    "no 3 main 0.006 in": ["main_clearance 0.006 in main 3"],
    "no. 3 main 0.006 in": ["main_clearance 0.006 in main 3"],
    "#2 rod 3 thou, #3 rod 5 thou": [
        "rod_clearance 3 thou rod 2",
        "rod_clearance 5 thou rod 3",
    ],
    "mains 3 and 4 are 0.09 mm": [
        "main_clearance 0.09 mm main 3",
        "main_clearance 0.09 mm main 4",
    ],
    "no 1 main 3 thou, no 2 3.5 thou, no 3 5 thou": [
        "main_clearance 3 thou main 1",
        "main_clearance 3.5 thou main 2",
        "main_clearance 5 thou main 3",
    ],
    'rear main .0045"': ["main_clearance 0.0045 in rear main"],
    "third main 4 thou": ["main_clearance 4 thou main 3"],
    "rods 3 thou": ["rod_clearance 3 thou"],
    "main 4 clearance is 0.08 mm not 0.25": ["main_clearance 0.08 mm main 4"],
    "mains and rods 3 thou": ["main_clearance 3 thou", "rod_clearance 3 thou"],
    "mains 4 thou and rods 3 thou": ["main_clearance 4 thou", "rod_clearance 3 thou"],
    "big ends 0.08 mm": ["rod_clearance 0.08 mm"],
    "4.5 thou on the mains": ["main_clearance 4.5 thou"],
    "two thou on the rods": ["rod_clearance 2 thou"],
    "main bearing clearance is four thou": ["main_clearance 4 thou"],
    "plastigauged the mains at 4 thou and rods at 3.5 thou": [
        "main_clearance 4 thou",
        "rod_clearance 3.5 thou",
    ],
    "mains 2.5 to 3 thou": ["main_clearance 3 thou"],
    "mains 3, 3.5 and 4.5 thou": ["main_clearance 4.5 thou"],
    "mains are 80 microns": ["main_clearance 80 microns"],
    "spec is 1.5 to 3 thou but my mains are 4.5 thou": ["main_clearance 4.5 thou"],
    "mains 4.5 thou, limit 3 thou": ["main_clearance 4.5 thou"],
    "main brg clearance .0035": ["main_clearance 0.0035 in"],
    "mains: 1 .002, 2 .003, 3 .004": [
        "main_clearance 0.002 in main 1",
        "main_clearance 0.003 in main 2",
        "main_clearance 0.004 in main 3",
    ],
    "plastigage showed 3 thou on number 4 rod": ["rod_clearance 3 thou rod 4"],
    "end float 8 thou": ["crank_end_float 8 thou"],
    "crank end play 12 thou": ["crank_end_float 12 thou"],
    "crankshaft endplay .015": ["crank_end_float 0.015 in"],
    "thrust clearance 0.3 mm": ["crank_end_float 0.3 mm"],
    "pump cover clearance .004": ["pump_end_clearance 0.004 in"],
    "pump apart: end play 8 thou": ["pump_end_clearance 8 thou"],
    "oil pump gears have 4 thou end clearance": ["pump_end_clearance 4 thou"],
    "pump to body .006, end clearance .005, backlash .012": [
        "pump_side_clearance 0.006 in",
        "pump_end_clearance 0.005 in",
        "pump_backlash 0.012 in",
    ],
    "gear to body 5 thou": ["pump_side_clearance 5 thou"],
    "tip clearance 8 thou": ["rotor_tip_clearance 8 thou"],
    "cover worn 3 thou": ["pump_cover_hollow 3 thou"],
    "cover has 2 thou wear": ["pump_cover_hollow 2 thou"],
    "play in the pump shaft 6 thou": ["pump_bush_clearance 6 thou"],
    "relief spring 52 mm long": ["relief_spring_length 52 mm"],
    "relief spring free length 2 1/16 in": ["relief_spring_length 2 1/16 in"],
    "pickup is 1/4 in off the pan": ["pickup_gap 1/4 in"],
    "pickup to pan gap 6 mm": ["pickup_gap 6 mm"],
    "3/8 inch between pickup and sump floor": ["pickup_gap 3/8 inch"],
    "cam bearings 6 thou": ["cam_bearing_clearance 6 thou"],
    "drained 4 quarts": ["drained_volume 4 quarts"],
    "only half a quart came out": ["drained_volume 0.5 quart"],
    "got 6 litres out of it": ["drained_volume 6 litres"],
    "oil report says 4% fuel": ["fuel_share 4 %"],
    "fuel dilution 6 %": ["fuel_share 6 %"],
    "8 percent fuel in the oil": ["fuel_share 8 percent"],
    "viscosity 8.9 cSt at 100": ["viscosity_at_100c 8.9 cSt"],
    "sender reads 240 ohms": ["sender_resistance_at_rest 240 ohms"],
    "sender ground 0.2 ohm": ["sender_ground_resistance 0.2 ohm"],
    "oil temp 239 F": ["oil_heat 239 F"],
    "idle speed 650 rpm": ["idle_speed_counted 650 rpm"],
    "took 12 seconds to build pressure": ["build_up_time 12 seconds"],
    "it takes 6 seconds for the gauge to move": ["build_up_time 6 seconds"],
    "switch opens at 7 psi": ["switch_pressure 7 psi"],
    "relief opens at 45 psi on the bench": ["relief_setting 45 psi"],
    "filter bypass opens at 12 psi": ["filter_bypass 12 psi"],
}
#: figures that are no measured value of anything the book knows
NONE = [
    "mains ground 10 thou under",
    "mains 20 thou undersize shells",
    "max main clearance is 3 thou",
    "main clearance should be 3 thou",
    "mains not over 3 thou",
    "mains under 3 thou",
    "mains 1 thou tight",
    "the book says 3 thou for the mains",
    "is 4 thou too much for the mains?",
    "if the mains are 4 thou is that ok?",
    "my brother's mains were 6 thou",
    "distributor side clearance 15 thou",
    "torqued the mains to 80 ft lbs",
    "the main oil gallery is 10 mm",
    "the main thing is it dropped 10 thou",
    "cylinder taper 6 thou",
    "valve lash 10 thou",
    "spark plug gap .035",
    "changed 5 quarts of oil, no change",
    "drop in 5 quarts of 20w50",
    "coolant at 180 F, oil temp fine",
    "oil is at 110 C and pressure 20 psi",
    "mains 3",
    "mains 900 mm",
]


def _values(text: str) -> list[str]:
    facts = [f for f in read(text, BOOK).facts if "value" in f.fields]
    return [" ".join(p for p in (f.name, f.value, f.when) if p) for f in facts]


@pytest.mark.parametrize("text", VALUES)
def test_what_is_measured(text: str) -> None:
    """The quantity, the value in the unit that was typed, and the place."""
    assert _values(text) == VALUES[text]


@pytest.mark.parametrize("text", NONE)
def test_what_is_no_measurement(text: str) -> None:
    """A limit, a bound, a size bought, a question, another part."""
    assert _values(text) == []


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("oil is at 110 C and pressure 20 psi", "reading 20 psi 110 C"),
        ("mains 4.5 thou, 5 psi at hot idle", "reading 5 psi hot, idle"),
    ],
)
def test_readings_stay_readings(text: str, reading: str) -> None:
    """A value beside a pressure takes nothing from it."""
    assert reading in [f.short for f in read(text, BOOK).facts]


def test_every_quantity_has_a_name_or_is_measured_by_nobody() -> None:
    """A new quantity needs what people call it; names are of quantities there are."""
    named = values.VALUES.keys() | set(values.NOT_NAMED)
    assert named == BOOK.quantities.keys()
    assert not values.VALUES.keys() & set(values.NOT_NAMED)
    assert values.VALUES.keys() >= BOOK.measures.keys()
    meant = {m for _, meanings in values.VAGUE.values() for m in meanings.values()}
    assert meant | values.BARE.keys() <= values.VALUES.keys()
    assert set(values.TASK_OF.values()) <= BOOK.tasks.keys()


def test_units_that_are_shown_are_read_again() -> None:
    """What is written into a case is a value of the quantity's dimension."""
    for text in VALUES:
        for fact in read(text, BOOK).facts:
            if "value" in fact.fields and fact.table == "finding":
                measure = BOOK.measures[fact.name]
                value = parse(fact.value, DIMENSIONS[measure.dimension])
                low, high = measure.plausible
                assert low <= value <= high
