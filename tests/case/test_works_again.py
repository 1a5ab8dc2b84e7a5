"""Once the mended engine ran well, only trouble seen after that brings a stop back."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from diagnose.case.loading import from_text
from diagnose.case.mended import works_again
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import Severity
from tests.support.command_line import call

BOOK = the_book()
RUNS = """schema = 1
[engine]
layout = "distributor_v8"
[[behaviour]]
no = 1
shows = "knock"
[[reading]]
no = 2
rpm = "idle"
oil = "hot"
pressure = "8 psi"
[[reading]]
no = 3
rpm = "idle"
oil = "hot"
pressure = "25 psi"
at = "start"
"""
LATER = '[[finding]]\nno = 4\nwhat = "{}"\nstate = "{}"\n'


@pytest.mark.parametrize(
    ("what", "state", "again"),
    [
        ("shells_worn_evenly", "present", True),
        ("oil_milky", "absent", True),
        ("pushrod_engine", "present", True),
        ("oil_milky", "present", False),
        ("metal_in_filter", "present", False),
    ],
)
def test_old_parts_written_down_late_are_no_new_trouble(what: str, state: str, again: bool) -> None:
    case = from_text(RUNS + LATER.format(what, state), None, BOOK)
    assert works_again(case) is again
    stops = [a for a in Diagnosis(BOOK, case).alarms if a.severity is not Severity.CARE]
    assert (not stops) is again


def test_a_knock_after_the_first_start_stops_it_again() -> None:
    case = from_text(RUNS + '[[behaviour]]\nno = 4\nshows = "knock"\n', None, BOOK)
    assert not works_again(case)


def test_the_sheet_of_the_whole_engine_counts_its_own_tasks_alone(tmp_path: Path) -> None:
    """What the first lines and the count say of tasks before the first start is one number."""
    path = tmp_path / "tern.toml"
    path.write_text(RUNS, "utf-8")
    shown = " ".join(call("signoff", path, "--whole-engine").out.split())
    found = re.findall(r"(\d+) (?:tasks left|come) before the first start", shown)
    assert len(found) == 2
    assert len(set(found)) == 1
