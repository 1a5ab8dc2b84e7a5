"""The screen of the engine's card: name one, fill it in, change it; two people at once."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from diagnose.case.card import load_card
from diagnose.case.card_naming import name_card
from diagnose.case.loading import load
from diagnose.case.toml_lines import with_entry, without_entry
from diagnose.errors import UsageError
from diagnose.serve.cards import cards_in, new_card
from knowledge.book import the_book
from knowledge.card import Section
from knowledge.units import INCH, THOU
from tests.support.web import Browser, Page, browser, jobs_in

BOOK = the_book()
CARD = "/job/turnstone.toml/card"
WORKBOAT = "cards/workboat_v8.toml"
SHORT = 'schema = 1\n[job]\ntitle = "Trial"\n[engine]  # as stated\nlayout = "distributor_v8"\nname = "Pilot V8"\n'


@pytest.fixture
def tab(tmp_path: Path) -> Browser:
    jobs_in(tmp_path, "turnstone")
    (tmp_path / "trial.toml").write_text(SHORT, "utf-8")
    return browser(tmp_path)


def workboat(tab: Browser) -> Path:
    root: Path = tab.app.site.folder.root
    return root / WORKBOAT


def fields(**given: str) -> dict[str, str]:
    """Fields by their names, "_" for the first ":"."""
    return {name.replace("_", ":", 1): value for name, value in given.items()}


def sent(tab: Browser, page: Page, action: str, **given: str) -> Page:
    form = page.form(action)
    return tab.post(form.action, {**form.fields, **fields(**given)})


def test_a_new_card_takes_over_what_the_job_says(tab: Browser, tmp_path: Path) -> None:
    """It is begun with a tap, and the job names it; all else in the job's file stays."""
    page = tab.get("/job/trial.toml/card")
    assert page.form("card").buttons[0] == ("choose", WORKBOAT)
    form = page.text.partition("A new card")[2]
    assert 'value="Pilot V8"' in form
    page = sent(tab, page, "card", start="1", name="Pilot V8", choose="")
    assert page.status == 200
    assert "of 7" in page.words
    path = tmp_path / "cards" / "pilot-v8.toml"
    card = load_card(path, BOOK)
    assert (card.engine.name, card.engine.layout) == ("Pilot V8", "distributor_v8")
    wanted = SHORT + 'card = "cards/pilot-v8.toml"\n'
    assert (tmp_path / "trial.toml").read_text("utf-8") == wanted
    case = load(tmp_path / "trial.toml", BOOK)
    assert case.card is not None
    assert case.card.path == path


def test_a_job_goes_by_a_card_that_is_there(tab: Browser, tmp_path: Path) -> None:
    """Its limits are those of the card at once."""
    page = sent(tab, tab.get("/job/trial.toml/card"), "card", choose=WORKBOAT)
    assert "workboat petrol V8" in page.words
    case = load(tmp_path / "trial.toml", BOOK)
    limit = BOOK.card_figures["main_clearance"].most
    assert limit is not None
    assert case.limit(limit) == pytest.approx(0.0035 * INCH)


def test_figures_are_written_as_a_manual_prints_them(tab: Browser) -> None:
    """From, to, wear limit and unit; one bound; a nominal value; a comma as decimal point."""
    page = sent(
        tab, tab.get(f"{CARD}/clearances"), "clearances",
        lo_rotor_tip_clearance="0,002", hi_rotor_tip_clearance="0.006", wo_rotor_tip_clearance="0.010",
        hi_cam_bearing_clearance="5", un_cam_bearing_clearance="thou",
    )  # fmt: skip
    assert page.status == 200
    assert "0.002 to 0.006 in, limit 0.010 in" in page.words.partition("Saved")[2]
    page = sent(tab, tab.get(f"{CARD}/torques"), "torques", lo_sump_bolts="12", hi_sump_bolts="14")
    values = load_card(workboat(tab), BOOK).values
    assert values["rotor_tip_clearance"].worn == pytest.approx(0.010 * INCH)
    assert values["cam_bearing_clearance"].low is None
    assert values["cam_bearing_clearance"].high == pytest.approx(5 * THOU)
    assert values["sump_bolts"].text == "12 to 14 lb·ft"


def test_a_figure_is_changed_and_taken_out(tab: Browser) -> None:
    """The lines of the others stay as they are; what is taken out stays as a comment."""
    before = workboat(tab).read_text("utf-8")
    page = sent(
        tab, tab.get(f"{CARD}/clearances"), "clearances",
        g_main_clearance="0.0015 to 0.0025 in, limit 0.003 in", g_pickup_gap="",
    )  # fmt: skip
    assert "Gap from pickup to sump floor: taken out" in page.words
    old = '\nmain_clearance = "0.0020 to 0.0030 in, limit 0.0035 in"'
    new = '\nmain_clearance = "0.0015 to 0.0025 in, limit 0.003 in"'
    wanted = before.replace(old, new).replace("\npickup_gap", "\n# pickup_gap")
    assert workboat(tab).read_text("utf-8") == wanted
    assert sent(tab, tab.get(f"{CARD}/clearances"), "clearances").status == 400, "nothing changed"


def test_what_cannot_be_is_not_saved_and_stays_in_the_form(tab: Browser) -> None:
    """One clear line for each; none of the others is saved either."""
    before = workboat(tab).read_bytes()
    page = sent(
        tab, tab.get(f"{CARD}/clearances"), "clearances",
        g_main_clearance="a lot", lo_rotor_tip_clearance="0.002", hi_rotor_tip_clearance="0.004",
    )  # fmt: skip
    assert page.status == 400
    assert "Main bearing clearance, on the diameter: 'a lot' is no length" in page.words
    assert 'value="a lot"' in page.text
    assert workboat(tab).read_bytes() == before


def test_the_engine_itself_is_on_the_first_screen(tab: Browser) -> None:
    page = sent(
        tab, tab.get(CARD), "card", g_grade="15W-40", g_manual="the yard's sheet, 2nd edition"
    )
    card = load_card(workboat(tab), BOOK)
    assert card.oil_grade == "15W-40"
    assert card.engine.manual == "the yard's sheet, 2nd edition"
    assert "Oil: 15W-40" in page.words


def test_the_missing_are_asked_the_most_useful_first(tab: Browser) -> None:
    """As the command lists them, each with where a manual prints it."""
    missing = load_card(workboat(tab), BOOK).missing(BOOK)
    words = tab.get(CARD).words.lower()
    places = [words.find(f"{f.says} in the manual: {f.manual}".lower()) for f in missing[:5]]
    assert places == sorted(places)
    assert places[0] > 0
    for section in Section:
        assert tab.get(f"{CARD}/{section.value}").status == 200
    assert tab.get(f"{CARD}/nothing").status == 404


def test_the_later_of_two_sees_what_the_other_wrote(tab: Browser) -> None:
    """Nothing is lost; saved again, the later one counts; other figures never meet."""
    page = tab.get(f"{CARD}/clearances")
    other = Browser(tab.app)
    changed = "0.004 to 0.009 in"
    sent(other, other.get(f"{CARD}/clearances"), "clearances", g_crank_end_float=changed)
    late = sent(tab, page, "clearances", g_crank_end_float="0.003 to 0.007 in")
    assert late.status == 409
    assert changed in late.words
    assert 'value="0.003 to 0.007 in"' in late.text
    assert load_card(workboat(tab), BOOK).values["crank_end_float"].text == changed
    assert sent(tab, late, "clearances").status == 200
    assert load_card(workboat(tab), BOOK).values["crank_end_float"].text == "0.003 to 0.007 in"
    assert sent(tab, page, "clearances", g_rod_clearance="0.001 to 0.002 in").status == 200


def test_a_card_named_meanwhile_is_not_overwritten(tab: Browser, tmp_path: Path) -> None:
    page = tab.get("/job/trial.toml/card")
    name_card(tmp_path / "trial.toml", BOOK, WORKBOAT)
    before = (tmp_path / "trial.toml").read_bytes()
    late = sent(tab, page, "card", start="1", name="another", choose="")
    assert late.status == 400
    assert "since" in late.words
    assert (tmp_path / "trial.toml").read_bytes() == before


@pytest.mark.parametrize("card", ["../outside.toml", "cards/linked.toml"])
def test_a_card_outside_the_folder_is_neither_shown_nor_written(tmp_path: Path, card: str) -> None:
    """By dots or by a link; the job goes by it as before."""
    jobs = jobs_in(tmp_path / "jobs", "petrel")
    outside = tmp_path / "outside.toml"
    shutil.copy(jobs / WORKBOAT, outside)
    outside.write_text(outside.read_text("utf-8").replace("workboat petrol V8", "SECRET"), "utf-8")
    (jobs / "cards" / "linked.toml").symlink_to(outside)
    tab = browser(jobs)
    assert "linked" not in {c.name for c in cards_in(jobs, BOOK)}
    refused = sent(tab, tab.get("/job/petrel.toml/card"), "card", choose=card)
    assert refused.status == 400
    name_card(jobs / "petrel.toml", BOOK, card)
    before = outside.read_bytes()
    page = tab.get("/job/petrel.toml/card")
    assert "outside this folder" in page.words
    assert "SECRET" not in page.text.replace('value="SECRET"', "")
    for section in ("", "/clearances"):
        form = page.form("card")
        given = {"token": form.fields["token"], "g:main_clearance": "0.001 to 0.002 in"}
        assert tab.post(f"/job/petrel.toml/card{section}", given).status == 409
    assert outside.read_bytes() == before


def test_a_folder_of_cards_that_leads_out_gets_no_card(tmp_path: Path) -> None:
    (tmp_path / "jobs").mkdir()
    (tmp_path / "elsewhere").mkdir()
    (tmp_path / "jobs" / "cards").symlink_to(tmp_path / "elsewhere")
    with pytest.raises(UsageError):
        new_card(tmp_path / "jobs", "boat")
    with pytest.raises(UsageError, match="letters or figures"):
        new_card(tmp_path / "jobs", "../..")


def test_the_name_stands_in_the_case_and_nothing_else_changes(tmp_path: Path) -> None:
    """Under its [engine] whatever follows, in a new one where it has none."""
    jobs = jobs_in(tmp_path, "petrel", "gannet")
    for name in ("petrel", "gannet"):
        path = jobs / f"{name}.toml"
        old = path.read_text("utf-8").splitlines()
        name_card(path, BOOK, WORKBOAT)
        new = path.read_text("utf-8").splitlines()
        added = f'card = "{WORKBOAT}"'
        assert added in new
        new.remove(added)
        assert new == old
        with pytest.raises(UsageError, match="since"):
            name_card(path, BOOK, "cards/other.toml")
        with pytest.raises(UsageError, match="no such card"):
            name_card(path, BOOK, "cards/none.toml", WORKBOAT)
    bare = tmp_path / "bare.toml"
    bare.write_text('schema = 1\n[job]\nnote = """\n[engine]\n"""\n', "utf-8")
    with pytest.raises(UsageError, match="yourself"):
        name_card(bare, BOOK, WORKBOAT)


def test_an_entry_goes_in_and_out_of_a_table() -> None:
    text = '[oil]\ngrade = "SAE 30"\n\n[sizes]\n# mains = "_"\n'
    assert with_entry(text, "sizes", "mains", "5") == text.replace('# mains = "_"', 'mains = "5"')
    assert with_entry(text, "oil", "volume", "4 l").splitlines()[2] == 'volume = "4 l"'
    assert with_entry(text, "units", "length", "in").endswith('\n[units]\nlength = "in"\n')
    assert without_entry(text, "oil", "grade") == text.replace("grade", "# grade")
    assert without_entry(text, "sizes", "grade") == text
    assert without_entry(text, "units", "grade") == text
