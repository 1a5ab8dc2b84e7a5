"""What is likelier than the cause named first, or points elsewhere, stands beside it on the screen."""

from __future__ import annotations

from diagnose.library import diagnose, parse_case
from diagnose.output.documents.by_readings import survey_differs
from diagnose.output.documents.review import review_document
from diagnose.output.text.review_brief import review_brief

OVERFILLED = """
schema = 1
[engine]
layout = "skew_gear_six"
[[finding]]
no = 1
what = "foam_on_stick"
state = "present"
[[finding]]
no = 2
what = "drained_volume"
value = "12 litres"
[[finding]]
no = 3
what = "drained_volume_high"
state = "present"
[[finding]]
no = 4
what = "dipstick_not_its_own"
state = "present"
"""
FLAT = """
schema = 1
[engine]
layout = "heavy_diesel"
[[earlier]]
no = 5
what = "whole_engine"
done = "rebuilt"
before = "straight before"
[[reading]]
no = 6
pressure = "27 psi"
rpm = "2000 rpm"
oil = "90 C"
gauge = "direct"
[[reading]]
no = 7
pressure = "28 psi"
rpm = "2000 rpm"
oil = "20 C"
gauge = "direct"
[[reading]]
no = 8
pressure = "14 psi"
rpm = "700 rpm"
oil = "90 C"
gauge = "direct"
"""


def test_a_likelier_cause_stands_beside_one_that_was_found() -> None:
    """Named first because it was found, with the likelier one straight behind it."""
    document = review_document(diagnose(parse_case(OVERFILLED)), "a.toml")
    first, *others = document.causes
    likelier = max(others, key=lambda c: c.probability)
    assert first.as_found
    assert likelier.probability > first.probability
    assert f"[{likelier.id}]" in review_brief(document)


def test_a_survey_that_points_elsewhere_is_named() -> None:
    """The flat pressure fits the relief valve; with what was done before, a suction joint leads."""
    says = survey_differs(diagnose(parse_case(FLAT)))
    assert "the relief valve opens too early" in says
    proved = (
        FLAT + '[[finding]]\nno = 9\nwhat = "relief_spring_short_or_broken"\nstate = "present"\n'
    )
    assert not survey_differs(diagnose(parse_case(proved)))
    assert not survey_differs(diagnose(parse_case(FLAT.partition("[[reading]]")[0])))
