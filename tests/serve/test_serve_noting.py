"""What is written down on the page: what was not understood, work before, and the kind of engine."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import load
from knowledge.book import the_book
from tests.support.web import browser


def _case(folder: Path, complaint: str = "5 psi at hot idle") -> Path:
    path = folder / "job.toml"
    path.write_text(f'schema = 1\n\n[job]\ncomplaint = "{complaint}"\n', "utf-8")
    return path


def _loaded(path: Path) -> Case:
    return load(path, the_book())


def test_what_is_not_understood_is_shown_beside_what_is_saved(tmp_path: Path) -> None:
    path = _case(tmp_path)
    tab = browser(tmp_path)
    page = tab.send(tab.get("/job/job.toml/note"), "note", words="wibble wobble. oil level ok")
    assert {r.finding.id for r in _loaded(path).finding_records} == {"level_correct"}
    assert "wibble wobble" in page.words.partition("Not understood")[2].partition("counts for")[0]
    page = tab.send(tab.get("/job/job.toml/note"), "note", words="oil looks clean")
    assert "Not understood" not in page.words


def test_only_words_of_the_job_are_shown_as_not_understood(tmp_path: Path) -> None:
    """An address somebody made up puts nothing on the page."""
    _case(tmp_path)
    tab = browser(tmp_path)
    tab.send(tab.get("/job/job.toml/note"), "note", words="oil level ok")
    page = tab.get("/job/job.toml/note?saved=1&unread=pay+the+stranger")
    assert "stranger" not in page.words


def test_the_kind_of_engine_is_chosen_after_it_was_not_known(tmp_path: Path) -> None:
    path = _case(tmp_path)
    tab = browser(tmp_path)
    assert "Choose the kind of engine" in tab.get("/job/job.toml/note").words
    page = tab.send(tab.get("/job/job.toml/engine"), "engine", layout="wet_sump_v_twin")
    says = the_book().layouts["wet_sump_v_twin"].says
    assert f"The engine is now: {says}" in " ".join(page.words.split())
    assert _loaded(path).layout.id == "wet_sump_v_twin"
    page = tab.get("/job/job.toml/engine")
    assert page.form("engine").fields["layout"] == ["wet_sump_v_twin"]
    assert tab.send(page, "engine", layout="no such").status == 400


def test_words_put_another_kind_of_engine_in_place(tmp_path: Path) -> None:
    path = _case(tmp_path)
    tab = browser(tmp_path)
    page = tab.send(tab.get("/job/job.toml/note"), "note", words="it is a road V8")
    assert "The engine is now:" in page.words
    assert "vee_engine" in {f.id for f in _loaded(path).layout.has}


def test_work_before_the_trouble_is_chosen(tmp_path: Path) -> None:
    path = _case(tmp_path)
    tab = browser(tmp_path)
    page = tab.get("/job/job.toml/note")
    page = tab.send(page, "note", area="pickup", done="opened", ago="straight before")
    (work,) = _loaded(path).earlier
    assert work.entry.what == "pickup"
    assert (work.entry.done, work.entry.before) == ("opened", "straight before")
    assert "Saved" in page.words
