"""What is written down on the page: what was not understood, work before, and the kind of engine."""

from __future__ import annotations

from pathlib import Path

from diagnose.bearings.table import bearings_of
from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.entry.bearings import BearingsInput, parse_words, record_bearings
from diagnose.output.documents.bearings import bearings_document
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


def test_the_short_sheet_has_a_line_for_each_task_and_the_shells_to_order(tmp_path: Path) -> None:
    """Until bearings are measured as fitted; the full sheet names the shells too."""
    path = _case(tmp_path)
    book = the_book()
    lines = ["mains new_journal 2.4479 2.4488 in", "mains new_shell 0.0955 in"]
    lines += ["mains new_bore 2.6406 2.6416 in"]
    lines += [f"main {n} journal 2.4464 2.4463 in" for n in (1, 2, 3)]
    lines += [f"main {n} strip 4.6 thou" for n in (1, 2, 3)]
    record_bearings(path, book, BearingsInput(parse_words(lines)))
    tab = browser(tmp_path)
    sheet = bearings_document(bearings_of(_loaded(path)), "job.toml")
    assert sheet.orders
    short = tab.get("/job/job.toml/signoff/short?whole=1")
    full = tab.get("/job/job.toml/signoff/sheet?whole=1")
    for page in (short, full, tab.get("/job/job.toml/signoff?whole=1")):
        assert page.status == 200
        assert sheet.orders[0].brief in " ".join(page.words.split())
    assert len(short.words) < len(full.words) / 3
    fitted = parse_words(["main 1 strip 2 thou"])
    record_bearings(path, book, BearingsInput(fitted, True))
    assert "To order" in tab.get("/job/job.toml/signoff/short?whole=1").words
    assert sheet.orders[0].brief not in tab.get("/job/job.toml/signoff/short?whole=1").words
