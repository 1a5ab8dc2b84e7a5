"""A pressure that the book gives becomes a limit of the job, and readings are compared with it."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.loading import load
from knowledge.book import the_book
from knowledge.pressure.quantities import HOT_IDLE_PRESSURE, HOT_RUNNING_PRESSURE
from knowledge.units import PSI
from tests.support.command_line import call


def test_the_books_figure_is_a_limit_of_the_job(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    out = call("tell", path, "-y", "12 psi hot idle, the manual calls for 25 psi at idle").out
    assert "by the book, lowest pressure" in out
    case = load(path, the_book())
    assert round(case.limit(HOT_IDLE_PRESSURE) / PSI) == 25
    assert [round(r.reading.pressure / PSI) for r in case.readings] == [12]
    assert "Within limits" not in out


def test_without_a_speed_it_is_the_figure_of_the_running_engine(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    call("tell", path, "-y", "my gauge says 30 at idle, book says 45 to 60. is that ok")
    case = load(path, the_book())
    assert round(case.limit(HOT_RUNNING_PRESSURE) / PSI) == 45
    assert HOT_IDLE_PRESSURE not in case.limits
    assert "V8" in call("tell", path, "-y", "it is a V8 with a distributor-driven pump").out
    assert load(path, the_book()).limits == case.limits


def test_a_job_that_is_there_points_to_the_card(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    call("tell", path, "-y", "12 psi at hot idle")
    done = call("record", path, "book says 45 to 60 psi")
    assert done.code == 2
    assert "diagnose card" in done.err
    assert not load(path, the_book()).limits
