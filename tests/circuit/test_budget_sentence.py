"""What was found and what is still missing, in whole sentences."""

from __future__ import annotations

import re

import pytest

from diagnose.case.loading import from_text
from diagnose.circuit.budget import budget
from diagnose.output.documents.budget import budget_document, still_missing
from diagnose.output.text.budget_brief import budget_brief
from knowledge.book import the_book

FOUND = """schema = 1
[engine]
layout = "distributor_v8"
[[reading]]
no = 1
rpm = "idle"
oil = "hot"
pressure = "6 psi"
gauge = "direct"
[[finding]]
no = 2
what = "debris_on_relief_seat"
state = "present"
[[finding]]
no = 3
what = "main_clearance"
value = "2.5 thou"
"""


def test_the_largest_part_is_a_sentence_of_its_own() -> None:
    case = from_text(FOUND, None, the_book())
    said = still_missing(budget(case), case)
    assert re.fullmatch(
        r"What was found explains \d+ of \d+ psi missing at hot idle; .* still missing: [^.]*\. "
        r"The largest part: there is debris on the relief seat [^(]*\(not measured, assumed .*\)\.",
        said,
    ), said


BY_COOLANT = """schema = 1
[engine]
layout = "small_diesel"
[[reading]]
no = 1
rpm = "850 rpm"
coolant = "{coolant}"
pressure = "0.6 bar"
gauge = "direct"
[[finding]]
no = 2
what = "main_clearance"
value = "0.09 mm"
"""


@pytest.mark.parametrize(("coolant", "used"), [("80 C", False), ("92 C", True)])
def test_a_reading_of_oil_not_hot_yet_is_named_and_not_denied(coolant: str, used: bool) -> None:
    """Oil lags behind the coolant: at 80 °C of it the oil is at about 68 °C."""
    case = from_text(BY_COOLANT.format(coolant=coolant), None, the_book())
    text = " ".join(budget_brief(budget_document(budget(case), case)).split())
    assert ("the gauge reads 0.6" in text) is used
    why = "The 0.6 bar at 850 rpm was read with oil at about 68 C; hot idle is 75 C or more"
    assert (why in text) is not used
