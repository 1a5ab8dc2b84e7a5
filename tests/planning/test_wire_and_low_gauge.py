"""A bad wire that was found ends no search while a trusted gauge is low."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.reasoning.seen_on_engine import is_found, is_sure
from diagnose.teardown.loose_ends import loose_ends
from knowledge.book import the_book

BOOK = the_book()
JOB = """schema = 1
[engine]
layout = "skew_gear_six"
[[reading]]
no = 1
rpm = "650 rpm"
pressure = "{trusted}"
oil = "95 C"
gauge = "direct"
[[reading]]
no = 2
rpm = "650 rpm"
pressure = "4 psi"
oil = "95 C"
[[finding]]
no = 3
what = "gauge_supply_wrong"
state = "present"
[[finding]]
no = 4
what = "wire_open_or_shorted"
state = "present"
"""


@pytest.mark.parametrize(("trusted", "ends"), [("9 psi", False), ("30 psi", True)])
def test_a_bad_wire_explains_no_low_trusted_gauge(trusted: str, ends: bool) -> None:
    answer = Diagnosis(BOOK, from_text(JOB.format(trusted=trusted), None, BOOK))
    assert answer.ranking[0].cause.id == "wiring_ground_fault"
    assert is_sure(answer.inference, 0.9)
    assert is_found(answer.inference) is ends
    assert loose_ends(answer, 0.9).may_stop is ends
