"""What was found and what is still missing, in whole sentences."""

from __future__ import annotations

import re

from diagnose.case.loading import from_text
from diagnose.circuit.budget import budget
from diagnose.output.documents.budget import still_missing
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
