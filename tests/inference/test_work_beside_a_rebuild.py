"""Work beside a rebuild is of its age, and what it renewed may still have been fitted badly."""

from __future__ import annotations

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()
CASE = 'schema = 1\n[engine]\nlayout = "{layout}"\n'
REBUILT = '[[earlier]]\nno = 1\nwhat = "whole_engine"\ndone = "rebuilt"\nbefore = "0 s"\n'
CAM = '[[earlier]]\nno = 2\nwhat = "cam_bearings"\ndone = "renewed"\n'
LOW = '[[reading]]\nno = 3\npressure = "5 psi"\nrpm = "{rpm} rpm"\noil = "hot"\n'
TURNED = '[[finding]]\nno = 4\nwhat = "cam_bearing_found_bad"\nstate = "present"\n'


def rebuilt(*more: str, layout: str = "skew_gear_six", rpm: int = 700) -> Diagnosis:
    text = (CASE + REBUILT + "".join(more)).format(layout=layout, rpm=rpm)
    return Diagnosis(BOOK, from_text(text, None, BOOK))


def chance(answer: Diagnosis, cause: str) -> float:
    return next(r.probability for r in answer.ranking if r.cause.id == cause)


def test_cam_bearings_that_others_renewed_at_the_rebuild_come_up() -> None:
    """New ones may turn or be pressed in wrongly: nobody has measured them."""
    plain, renewed = rebuilt(LOW), rebuilt(LOW, CAM)
    assert chance(renewed, "cam_bearing_wear") > 1.5 * chance(plain, "cam_bearing_wear")
    place = [r.cause.id for r in renewed.ranking].index("cam_bearing_wear")
    assert place < 4


def test_a_cam_bearing_found_turned_after_a_rebuild_leads() -> None:
    assert rebuilt(LOW, CAM, TURNED).ranking[0].cause.id == "cam_bearing_wear"
