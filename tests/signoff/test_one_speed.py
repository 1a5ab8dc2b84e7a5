"""A generator at its one speed is signed off by what it reads there; nobody is asked for its idle."""

from __future__ import annotations

import pytest

from diagnose.case.case import Case
from diagnose.library import diagnose, parse_case
from diagnose.signoff.judging import Verdict
from diagnose.signoff.one_speed import has_one_speed
from diagnose.signoff.sheet import Signoff

MENDED = """schema = 1
[engine]
layout = "{layout}"
[[reading]]
no = 1
pressure = "8 psi"
rpm = "{rpm} rpm"
oil = "85 C"
[[finding]]
no = 2
what = "relief_valve_stayed_open"
state = "present"
[[reading]]
no = 3
pressure = "48 psi"
rpm = "{rpm} rpm"
oil = "85 C"
gauge = "direct"
at = "start"
"""
IDLE, AT_SPEED = "pressure_at_hot_idle", "pressure_hot_at_2000"


def _case(layout: str, rpm: int) -> Case:
    return parse_case(MENDED.format(layout=layout, rpm=rpm))


@pytest.mark.parametrize(
    ("layout", "rpm", "one"),
    [
        ("generator_diesel", 1500, True),
        ("generator_petrol", 3000, True),
        ("generator_diesel", 700, False),
        ("tractor_diesel", 1500, False),
    ],
)
def test_which_engine_runs_at_one_speed(layout: str, rpm: int, one: bool) -> None:
    assert has_one_speed(_case(layout, rpm)) is one


def test_what_it_reads_there_is_signed_off() -> None:
    """Its one speed counts as speed, and no idle is called for; another engine owes both."""
    found = {i.task.id: i for i in Signoff(diagnose(_case("generator_diesel", 1500)), 0.9).items}
    assert IDLE not in found
    assert found[AT_SPEED].judged.verdict is Verdict.PASSED
    other = {i.task.id: i for i in Signoff(diagnose(_case("tractor_diesel", 1500)), 0.9).items}
    assert other[IDLE].judged.verdict is Verdict.OPEN
    assert other[AT_SPEED].judged.verdict is Verdict.OPEN
