"""The command ``card``: starts an engine's card, writes figures into it, shows what is missing."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path

import pytest

from diagnose import UsageError, engine_card
from diagnose.case.card_text import card_value
from diagnose.case.card_writing import start_card, write_figures
from diagnose.case.file_faults import Faults
from diagnose.errors import CannotWriteError
from diagnose.output.documents.card import card_document
from knowledge.book import the_book
from knowledge.units import INCH, LBF
from tests.support.command_line import ROOT, call

BOOK = the_book()
WORKBOAT = ROOT / "cases" / "cards" / "workboat_v8.toml"


def test_the_command_starts_fills_and_shows_a_card(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    made = call("card", "petrol_v8", "--layout", "distributor_v8")
    assert (made.code, made.err) == (0, "")
    text = Path("petrol_v8.toml").read_text("utf-8")
    assert tomllib.loads(text)["card"] == 1
    open_ = {f.id for f in engine_card("petrol_v8.toml").missing(BOOK)}
    for name in open_:
        assert f"\n# {name} = " in text, "every entry waits as a comment"
    assert "skew_gear_end_float" not in text, "this layout has none"
    filled = call(
        "card", "petrol_v8", "main_clearance=0.0010 to 0.0025 in, limit 0.0035 in", "oil=20W-50"
    )
    assert filled.code == 0
    after = Path("petrol_v8.toml").read_text("utf-8")
    assert len(after.splitlines()) == len(text.splitlines()), "over their comments"
    data = json.loads(call("card", "petrol_v8", "--json").out)
    assert (data["filled"], data["oil_grade"]) == (2, "20W-50")
    assert data["missing"][0]["id"] == "hot_idle_pressure"
    assert data["there"][0]["limit"] == pytest.approx(0.0035 * INCH)


def test_a_card_takes_over_what_a_job_states(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    done = call("card", "tug", "--from", ROOT / "cases" / "bullfinch.toml", "idle_speed=620 rpm")
    assert (done.code, done.err) == (0, "")
    card = engine_card("tug.toml")
    assert (card.name, card.engine.layout, card.oil_grade) == (
        "tug main engine",
        "marine_diesel",
        "SAE 30",
    )
    assert card.values["main_clearance"].text == "at most 0.13 mm"
    assert card.values["hot_idle_pressure"].text == "at least 0.8 bar"
    assert card.values["relief_setting"].text == "4.2 bar"
    assert card.values["idle_speed"].text == "620 rpm"


def test_a_wrong_figure_writes_nothing(tmp_path: Path) -> None:
    path = tmp_path / "own.toml"
    start_card(path, BOOK)
    before = path.read_bytes()
    for name, value, says in (
        ("main_clearence", "at most 3 thou", "Did you mean 'main_clearance'"),
        ("main_clearance", "3 thou", "may be a fit or a limit"),
        ("relief_setting", '50 psi"\nx = "1', "is no pressure"),
    ):
        with pytest.raises(UsageError, match=says):
            write_figures(path, BOOK, {"idle_speed": "700 rpm", name: value})
        assert path.read_bytes() == before
    with pytest.raises(CannotWriteError, match="exists already"):
        start_card(path, BOOK)
    with pytest.raises(UsageError, match="no such layout"):
        start_card(tmp_path / "other.toml", BOOK, {"layout": "v9"})
    assert not (tmp_path / "other.toml").exists()


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ((".",), "is a folder; name a card file in it"),
        (("job.toml",), "card: missing; this is a case"),
        (("nowhere/x",), "there is no such folder"),
        (("x", "relief"), "write name=figure"),
        (("x", "relief_setting=60"), "has no unit; write it like 8 psi"),
        (("x", "relief_seting=60 psi"), "Did you mean 'relief_setting'?"),
        (("x", "--layout", "wrong"), "'diagnose lookup --kind layout' lists them"),
    ],
)
def test_bad_words_are_one_line(
    words: tuple[str, ...], says: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    Path("job.toml").write_text("schema = 1\n", "utf-8")
    done = call("card", *words)
    assert done.code in (2, 65, 66, 73)
    assert says in done.err
    assert done.err.count("\n") == 1
    assert [p.name for p in tmp_path.iterdir()] == ["job.toml"]


def test_a_name_with_a_point_in_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    assert call("card", "petrol_5.7").code == 0
    assert Path("petrol_5.7.toml").exists()


def test_figures_are_written_where_no_comment_waits(tmp_path: Path) -> None:
    path = tmp_path / "own.toml"
    path.write_text('card = 1\n[pressures]  # mine\nrelief_setting = "50 psi"\n', "utf-8")
    card = write_figures(
        path,
        BOOK,
        {"relief_setting": "3.5 bar", "hot_idle_pressure": "1 bar", "main_caps": "60 lb-ft"},
    )
    assert set(card.values) == {"relief_setting", "hot_idle_pressure", "main_caps"}
    assert card.values["relief_setting"].text == "3.5 bar"
    assert "# mine" in path.read_text("utf-8")


def test_the_demonstration_card_fits_one_screen() -> None:
    shown = call("card", WORKBOAT).out
    assert len(shown.splitlines()) <= 36
    assert all(len(line) <= 80 for line in shown.splitlines() if "diagnose card" not in line)
    document = card_document(engine_card(WORKBOAT), BOOK)
    ranks = [BOOK.card_figures[g.id].rank for g in document.missing if g.id in BOOK.card_figures]
    assert ranks == sorted(ranks)
    assert document.filled + len(document.missing) == document.possible


def test_the_spring_gives_its_rate() -> None:
    assert engine_card(WORKBOAT).spring_rate == pytest.approx(12 * LBF / (0.65 * INCH))


@pytest.mark.parametrize(
    ("figure", "typed", "unit", "written"),
    [
        ("main_clearance", "at most 0.0035", "in", "at most 0.0035 in"),
        (
            "main_clearance",
            "0.0010 to 0.0025, limit 0.0035",
            "in",
            "0.0010 to 0.0025, limit 0.0035 in",
        ),
        ("main_clearance", "at most 0.09 mm", "in", "at most 0.09 mm"),
        ("main_clearance", "0.02 to 0.06, limit 0.09 mm", "in", "0.02 to 0.06, limit 0.09 mm"),
        ("main_caps", "60 + 90 deg", "lb-ft", "60 lb-ft + 90 deg"),
        ("sump_bolts", "9 to 11", "lb-ft", "9 to 11 lb-ft"),
    ],
)
def test_a_figure_without_a_unit_is_shown_with_the_cards(
    figure: str, typed: str, unit: str, written: str
) -> None:
    value = card_value(typed, BOOK.card_figures[figure], unit, "here", Faults())
    assert value is not None
    assert value.written == written


@pytest.mark.parametrize(
    ("words", "right"),
    [
        ("relief opens 3.8 bar", 'relief_setting="3.8 bar"'),
        ("rod clearance 0.03 to 0.06 mm", 'rod_clearance="0.03 to 0.06 mm"'),
        ("oil capacity 4.5 litres", 'oil_capacity="4.5 litres"'),
        ("whatever 4.5 litres", "write name=figure"),
        ("relief opens 20 mm", "write name=figure"),
    ],
)
def test_words_are_offered_their_name_and_the_good_figures_are_written(
    words: str, right: str, tmp_path: Path
) -> None:
    card = tmp_path / "four.toml"
    for _ in range(2):  # a new card, and one that is there
        done = call("card", card, words, "main_clearance=0.02 to 0.05 mm")
        assert done.code == 65
        assert right in done.err
        assert 'main_clearance = "0.02 to 0.05 mm"' in card.read_text("utf-8")
        assert words not in card.read_text("utf-8")


def test_a_speed_needs_no_unit(tmp_path: Path) -> None:
    """A workshop writes it in revolutions a minute and in nothing else."""
    card = tmp_path / "petrol_v8.toml"
    assert call("card", card, "--layout", "distributor_v8", "idle_speed=700").code == 0
    [figure] = json.loads(call("card", card, "--json").out)["there"]
    assert figure["id"] == "idle_speed"
    assert "settings     idle_speed 700 rpm" in call("card", card).out
    assert call("card", card, "relief_setting=45").code != 0, "psi or bar is to be said"
