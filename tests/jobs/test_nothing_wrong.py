"""An engine with nothing wrong: said first, and the job ends so."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.entry.time_spent import minutes_spent
from diagnose.errors import UsageError
from diagnose.signoff.closing import open_points
from diagnose.signoff.nothing_wrong import nothing_wrong
from knowledge.book import the_book
from tests.support.command_line import call

BOOK = the_book()
HEALTHY = """schema = 1
[job]
title = "A saloon its new owner worries about"
[[finding]]
no = 1
what = "bearing_knock"
state = "absent"
[[finding]]
no = 2
what = "level_correct"
state = "present"
[[reading]]
no = 3
pressure = "16 psi"
oil = "hot"
rpm = "idle"
gauge = "direct"
[[reading]]
no = 4
pressure = "45 psi"
rpm = "2000 rpm"
oil = "hot"
"""
KNOCKS = HEALTHY.replace('"absent"', '"present"')
LOW = HEALTHY.replace("16 psi", "4 psi")
NOT_READ = HEALTHY.replace('oil = "hot"\nrpm = "idle"', 'oil = "cold"\nrpm = "idle"')
NO_SPEED = HEALTHY.replace('rpm = "2000 rpm"\noil = "hot"', 'rpm = "idle"\noil = "cold"')
FLAT = HEALTHY.replace("16 psi", "22 psi").replace("45 psi", "23 psi") + 'gauge = "direct"\n'
FLAT_AT_THE_VALVE = HEALTHY.replace("16 psi", "50 psi").replace("45 psi", "52 psi")
SET = HEALTHY.replace("[[finding]]", '[engine]\nlayout = "generator_diesel"\n[[finding]]', 1)
SET = SET.replace('oil = "hot"\nrpm = "idle"', 'oil = "cold"\nrpm = "1500 rpm"')
SET = SET.replace('"16 psi"', '"58 psi"').replace('"2000 rpm"', '"1500 rpm"')
FALLEN = HEALTHY.replace('pressure = "45 psi"', 'pressure = "45 psi"\nusual = "80 psi"')

ALWAYS_SO = (
    HEALTHY + '[[finding]]\nno = 5\nwhat = "long_unchanged"\nstate = "present"\nlearned = "told"\n'
)


def answer(text: str) -> Diagnosis:
    """The diagnosis of a case."""
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize(
    ("text", "nothing"),
    [
        (HEALTHY, True),
        (ALWAYS_SO, True),
        (ALWAYS_SO.replace("16 psi", "4 psi"), False),
        (KNOCKS, False),
        (LOW, False),
        (NOT_READ, False),
        (NO_SPEED, False),
        (FALLEN, False),
        (SET, True),
        (SET.replace("45 psi", "14 psi"), False),
        (FLAT, False),
        (FLAT_AT_THE_VALVE, True),
    ],
)
def test_nothing_is_wrong_only_where_hot_idle_was_read_and_all_is_good(
    text: str, nothing: bool
) -> None:
    """A knock, a low or fallen reading, or no hot idle: then that is not said."""
    assert nothing_wrong(answer(text)) is nothing


def test_review_says_so_first_and_the_plan_promises_no_fault(tmp_path: Path) -> None:
    """The causes come after it, and the chance of the plan holds if there is a fault."""
    job = tmp_path / "job.toml"
    job.write_text(HEALTHY, encoding="utf-8")
    shown = " ".join(call("review", job).out.split())
    assert shown.index("Nothing wrong found") < shown.index("If something is wrong all the same")
    assert "Most likely" not in shown
    plan = " ".join(call("teardown", job).out.split())
    assert "no reason to take it apart" in plan
    assert "If there is a fault, this plan confirms it" in plan


def test_the_job_ends_with_nothing_wrong(tmp_path: Path) -> None:
    """In plain words, without a reason, and reported as such."""
    job = tmp_path / "job.toml"
    job.write_text(HEALTHY, encoding="utf-8")
    done = call("close", job, "--cause", "No fault found", "--how", "test gauge", "--minutes", "45")
    assert done.code == 0, done.err
    closed = load(job, BOOK).closed
    assert closed is not None
    assert [c.id for c in closed.causes] == ["oil_hot_normal"]
    assert closed.entry.reason == ""
    assert closed.minutes == pytest.approx(45.0)
    assert "no fault found: nothing wrong" in " ".join(call("review", job).out.split())
    page = tmp_path / "report.html"
    assert call("report", job, "--out", page).code == 0
    text = page.read_text("utf-8")
    assert "No fault found; closed" in text
    assert "It began with" not in text


@pytest.mark.parametrize("text", [KNOCKS, LOW, NOT_READ])
def test_a_fault_cannot_be_closed_so_quietly(text: str) -> None:
    """What is against it is named."""
    none = BOOK.causes["oil_hot_normal"]
    assert open_points(answer(text), 0.9, [none])
    assert not open_points(answer(HEALTHY), 0.9, [none])


@pytest.mark.parametrize("text", ["soon", "3 psi", "", "two and", "h"])
def test_no_time(text: str) -> None:
    """What is no time is refused, with how to write it."""
    with pytest.raises(UsageError, match=r"like 45, or 2\.5 h"):
        minutes_spent(text)
