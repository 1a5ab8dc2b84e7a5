"""The report begins with a page an owner understands; later looks are part of the job."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest

from diagnose.case.loading import from_text, load
from diagnose.case.mended import works_again
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.job_end import ended_of
from diagnose.output.documents.owners_page import OwnersPage, owners_page
from diagnose.output.documents.owners_stop import when_to_stop
from diagnose.output.documents.ranking import ranked_causes
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.figures import HOUR
from knowledge.reassembly.by_lamp import OF_A_LAMP
from knowledge.work import Hold, Phase
from tests.support.command_line import call

BOOK = the_book()
CASES = Path(__file__).parents[2] / "cases"
LATER = [t for t in BOOK.tasks.values() if t.phase is Phase.LATER]


def page_of(path: Path) -> OwnersPage:
    diagnosis = Diagnosis(BOOK, load(path, BOOK))
    return owners_page(diagnosis, Signoff(diagnosis, SURE), ranked_causes(diagnosis))


@pytest.fixture
def gannet(tmp_path: Path) -> Path:
    return Path(shutil.copy(CASES / "gannet.toml", tmp_path / "gannet.toml"))


def test_a_closed_job_says_what_was_wrong_done_and_shown(gannet: Path) -> None:
    page = page_of(gannet)
    assert page.standing == "Repaired, 36 psi at hot idle; closed on 2026-06-20."
    assert "The pickup is loose or has come off" in page.wrong
    assert page.wrong[-1].startswith("It began with: oil pickup tube or its bolts loose")
    assert page.done[0].startswith("New tube")
    idle, speed = page.pressures
    assert (idle.before, idle.after, idle.least) == ("14 psi", "36 psi", "10 psi")
    assert (speed.before, speed.after) == ("38 psi", "52 psi")
    assert [w.hours for w in page.watch] == ["1 h", "10 h", "50 h"]
    assert page.watch[0].least == "hot idle not below 29 psi"  # four fifths of 36


def test_an_open_job_says_not_to_run_and_promises_nothing() -> None:
    page = page_of(CASES / "petrel.toml")
    assert page.standing == "Not repaired yet: do not run the engine."
    assert page.wrong[0].startswith("The relief valve was held open")
    assert all(row.after == "not measured yet" for row in page.pressures)
    assert not page.watch


def test_the_page_comes_first_and_the_technical_part_after_it(gannet: Path, tmp_path: Path) -> None:
    out = tmp_path / "r.html"
    assert call("report", gannet, "--out", out).code == 0
    text = out.read_text("utf-8")
    assert (
        text.index("What was wrong") < text.index("The technical part") < text.index("The answer")
    )


def test_later_looks_never_hold_up_the_job(gannet: Path) -> None:
    """They are due after closing: none blocks, each says when, none is on the sign-off."""
    assert {t.due for t in LATER} == {HOUR, 10 * HOUR, 50 * HOUR}
    assert all(t.hold is Hold.NOTE for t in LATER)
    assert all(not t.due for t in BOOK.tasks.values() if t.phase is not Phase.LATER)
    sheet = Signoff(Diagnosis(BOOK, load(gannet, BOOK)), SURE)
    assert not [i for i in sheet.items if i.task in LATER]
    assert [i.task.due for i in sheet.later] == sorted(t.due for t in LATER if t not in OF_A_LAMP)


@pytest.mark.parametrize(
    ("after", "hours"), [("30 min", []), ("1 h", [1]), ("10h", [1, 10]), ("all", [1, 10, 50])]
)
def test_what_is_due_after(gannet: Path, after: str, hours: list[int]) -> None:
    done = call("signoff", gannet, "--after", after, "--json")
    assert [look["hours"] for look in json.loads(done.out)["looks"]] == hours


def test_a_pressure_that_falls_is_said(gannet: Path) -> None:
    assert call("record", gannet, "hot_idle_after_1_h=34 psi").code == 0
    assert call("record", gannet, "hot_idle_after_10_h=25 psi").code == 0
    done = call("signoff", gannet, "--after", "10 h")
    assert "34 psi against 36 psi at the first start: holds" in done.out
    assert "25 psi against 36 psi at the first start: 31 % lower" in " ".join(done.out.split())
    assert len(done.out.splitlines()) <= 30


@pytest.mark.parametrize("after", ["soon", "-1 h", "10", "ten hours", ""])
def test_a_wrong_time_is_one_clear_line(gannet: Path, after: str) -> None:
    done = call("signoff", gannet, "--after", after)
    assert done.code == 2
    assert done.err.count("\n") == 1
    assert "write it like '10 h', or 'all'" in done.err


def test_a_closed_job_below_a_limit_is_not_called_repaired(gannet: Path) -> None:
    """The first page says what ``review`` and ``signoff`` say of the mended engine."""
    low = 'at = "start"\nrpm = "700 rpm"\noil = "90 C"\npressure = "4 psi"\n'
    number = load(gannet, BOOK).last_number + 1
    gannet.write_text(gannet.read_text("utf-8") + f"\n[[reading]]\nno = {number}\n{low}", "utf-8")
    assert page_of(gannet).standing.startswith("Not in order: ")


@pytest.mark.parametrize(
    ("remedy", "says"),
    [((), "Tube brazed, now 3.8 bar at 1500 hot"), (("--remedy", "tube renewed"), "Tube renewed")],
)
def test_what_was_done_is_in_the_persons_words(
    remedy: tuple[str, ...], says: str, tmp_path: Path
) -> None:
    """Said at the end, or with the readings after the repair, which stand under "after"."""
    path = tmp_path / "heron.toml"
    call("tell", path, "standby generator, four cylinder diesel, 1.2 bar at 1500 rpm hot")
    call("record", path, "pickup_tube_crack_seen=yes")
    call("record", path, "tube brazed, now 3.8 bar at 1500 hot")
    done = call(
        "close", path, "--how", "seen", "--cause", "pickup_tube_cracked", *remedy, "--reason", "x"
    )
    assert done.code == 0, done.err
    page = page_of(path)
    assert page.done[0] == says
    speed = next(row for row in page.pressures if row.when == "hot, at speed")
    assert (speed.before, speed.after) == ("1.2 bar", "3.8 bar")


def test_a_note_on_a_reading_is_no_repair(tmp_path: Path) -> None:
    """Then the book's remedy stands, as nobody said what was done."""
    path = tmp_path / "heron.toml"
    call("tell", path, "standby generator, four cylinder diesel, 1.2 bar at 1500 rpm hot")
    call("record", path, "--reading", "1500 rpm hot 3.8 bar", "--after-repair", "--note", "steady")
    call("close", path, "--how", "seen", "--cause", "pickup_tube_cracked", "--reason", "x")
    assert page_of(path).done[0].startswith("Not written down; called for: replace the tube")


def test_a_job_closed_with_its_assembly_unchecked_is_called_not_finished(tmp_path: Path) -> None:
    """The owner took it away: nobody may take the paper for leave to start it."""
    path = tmp_path / "heron.toml"
    call("tell", path, "standby generator, four cylinder diesel, 1.2 bar at 1500 rpm hot")
    call("record", path, "pickup_tube_crack_seen=yes")
    ways = "--cause", "pickup_tube_cracked", "--reason", "owner took it"
    call("close", path, "--how", "seen", *ways)
    standing = page_of(path).standing
    assert standing.startswith("Not finished; closed on ")
    assert "Do not start the engine" in standing
    assert "Do not start the engine" in call("review", path).out.replace("\n  ", " ")
    call("record", path, "--reading", "1500 rpm hot 3.8 bar", "--after-repair")
    assert page_of(path).standing.startswith("Repaired, 3.8 bar at 1500 rpm; closed on ")


def test_before_the_work_names_the_gauge_that_was_complained_of_too(tmp_path: Path) -> None:
    """Low on the engine's own gauge, good on a test gauge: the owner knows the first."""
    path = tmp_path / "job.toml"
    head = 'schema = 1\n[job]\n[engine]\nlayout = "marine_diesel"\n'
    own = '[[reading]]\nno = 1\npressure = "{}"\noil = "hot"\n'
    tested = '[[reading]]\nno = 2\nrpm = "700 rpm"\noil = "85 C"\npressure = "47 psi"\n'
    direct = 'gauge = "direct"\n'
    for shown, gauge, says in (
        ("10 psi", direct, "10 psi on the engine's gauge, 47 psi on a test gauge"),
        ("46 psi", direct, "47 psi"),
        ("10 psi", "", "47 psi"),
    ):
        path.write_text(head + own.format(shown) + tested + gauge, "utf-8")
        assert page_of(path).pressures[0].before == says


def test_an_order_of_the_book_is_no_word_of_what_was_done(tmp_path: Path) -> None:
    path = tmp_path / "heron.toml"
    call("tell", path, "standby generator, four cylinder diesel, 1.2 bar at 1500 rpm hot")
    call("record", path, "pickup_tube_crack_seen=yes")
    call("close", path, "--how", "seen", "--cause", "pickup_tube_cracked", "--reason", "x")
    remedy = BOOK.causes["pickup_tube_cracked"].remedy
    assert page_of(path).done[0] == f"Not written down; called for: {remedy}"


READ = (
    'schema = 1\n[engine]\nlayout = "{layout}"\n[[reading]]\nno = 1\nrpm = "900 rpm"\n'
    'pressure = "{pressure}"\n{usual}\n'
)


def stop_of(layout: str, pressure: str, usual: str = "") -> str:
    """What the page of such a job says of stopping."""
    text = READ.format(layout=layout, pressure=pressure, usual=usual)
    return when_to_stop(Diagnosis(BOOK, from_text(text, None, BOOK)))


def test_the_owner_stops_at_the_pressure_of_the_trouble_not_at_half_of_it() -> None:
    usual = 'usual = "3.5 kg/cm2"'
    says = stop_of("marine_diesel", "1.0 kg/cm2", usual)
    assert "falls to the 1.0 kg/cm2 of this trouble" in says
    assert "far below the 3.5 kg/cm2 it usually shows" in says
    assert "falls to" not in stop_of("marine_diesel", "3.4 kg/cm2", usual)
    assert "falls below 0.5 kg/cm2." in stop_of("marine_diesel", "1.0 kg/cm2")


@pytest.mark.parametrize(("pressure", "most"), [("105 psi", True), ("40 psi", False)])
def test_too_much_pressure_has_a_limit_for_the_owner_too(pressure: str, most: bool) -> None:
    says = stop_of("tractor_diesel", pressure, 'oil = "20 C"')
    assert ("goes above 90 psi, cold or hot" in says) is most


def test_a_set_read_at_its_one_speed_is_shown_there_before_and_after(tmp_path: Path) -> None:
    """0.4 bar at 1000 rpm before, 2.4 after: neither idle nor high speed, and read all the same."""
    path = tmp_path / "set.toml"
    path.write_text(
        'schema = 1\n[engine]\nlayout = "generator_diesel"\n'
        + "".join(
            f'[[reading]]\nno = {no}\npressure = "{bar} bar"\nrpm = "1000 rpm"\noil = "85 C"\n'
            f'gauge = "direct"\nat = "{at}"\n'
            for no, bar, at in ((1, 0.4, "before"), (2, 2.4, "start"))
        ).replace('at = "before"\n', "")
        + '[[closed]]\nno = 3\ncauses = ["bearing_wear_mains"]\nhow = "seen"\nwhen = 2026-06-20\n'
    )
    page = page_of(path)
    assert page.standing.startswith("Repaired, 2.4 bar at 1000 rpm; closed on 2026-06-20.")
    (row,) = page.pressures
    assert (row.when, row.before, row.after) == ("hot, at the speed read", "0.4 bar", "2.4 bar")


@pytest.mark.parametrize(("after", "works"), [(2.4, True), (1.4, False)])
def test_a_set_that_shows_its_usual_pressure_again_no_longer_has_to_stop(
    after: float, works: bool
) -> None:
    text = READ.format(layout="generator_diesel", pressure="0.4 bar", usual='usual = "2.5 bar"')
    text += f'[[reading]]\nno = 2\nrpm = "900 rpm"\npressure = "{after} bar"\nat = "start"\n'
    diagnosis = Diagnosis(BOOK, from_text(text, None, BOOK))
    assert works_again(diagnosis.case) is works
    assert ("2.4 bar at 900 rpm" in ended_of(diagnosis)) is works
