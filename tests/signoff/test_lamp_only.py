"""An engine with a lamp only: what proves the repair, in the sign-off, in words, in the report."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.entry.proofs_in_words import said
from knowledge.book import the_book
from knowledge.reassembly.by_lamp import INSTEAD
from knowledge.reassembly.proof_words import PROOFS
from tests.support.command_line import call

HEAD = 'schema = 1\n[engine]\nlayout = "unknown"\nhas = ["lamp_only"]\n'
GAUGE = HEAD.replace("has", "lacks")
DRAINED = HEAD + (
    '[[finding]]\nno = 1\nwhat = "filter_empty_after_standing"\nstate = "present"\n'
    '[[finding]]\nno = 2\nwhat = "anti_drainback_hard"\nstate = "present"\n'
    '[[finding]]\nno = 3\nwhat = "slow_after_standing"\nstate = "present"\n'
    '[[finding]]\nno = 4\nwhat = "gauge_reads_zero"\nstate = "absent"\n'
)
WIRE = HEAD + (
    '[[finding]]\nno = 1\nwhat = "sender_wire_broken"\nstate = "present"\n'
    '[[finding]]\nno = 2\nwhat = "wiggle_moves_needle"\nstate = "present"\n'
)
SOUND = (
    '[[reading]]\nno = 3\npressure = "20 psi"\nrpm = "idle"\noil = "hot"\ngauge = "direct"\n'
    '[[reading]]\nno = 4\npressure = "45 psi"\nrpm = "2000 rpm"\noil = "hot"\ngauge = "direct"\n'
)
CLOSED = '[[closed]]\nno = 9\ncauses = ["{}"]\nhow = "seen"\nremedy = "{}"\n'


def tasks(path: Path, text: str) -> str:
    path.write_text(text, "utf-8")
    return call("signoff", path, "--all").out


def test_the_lamp_stands_in_for_the_gauge(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    by_lamp, by_gauge = (tasks(path, t) for t in (DRAINED, DRAINED.replace(HEAD, GAUGE)))
    for gauge, lamp in INSTEAD.items():
        if gauge.due:
            continue
        assert f"[{lamp.id}]" in by_lamp
        assert f"[{gauge.id}]" not in by_lamp
        assert f"[{lamp.id}]" not in by_gauge
        assert f"[{gauge.id}]" in by_gauge
    for text in (by_lamp, by_gauge):
        assert "[flap_in_new_filter]" in text
        assert "[started_after_a_night]" in text


def test_an_engine_that_was_open_is_started_on_a_gauge(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_text(DRAINED, "utf-8")
    found = call("signoff", path, "--all", "--opened", "sump_off").out
    assert "[first_pressure_timed]" in found
    assert "[lamp_out_timed]" not in found


def test_a_lamps_wire_is_proved_by_lamp_and_wire(tmp_path: Path) -> None:
    found = tasks(tmp_path / "a.toml", WIRE + SOUND)
    proofs = ("wire_laid_clear", "lamp_lit_with_key", "lamp_out_timed", "steady_when_wire_moves")
    assert all(f"[{task}]" in found for task in proofs)
    assert "panel_gauge_agrees" not in found
    with_gauge = tasks(tmp_path / "b.toml", (WIRE + SOUND).replace(HEAD, GAUGE))
    assert "[panel_gauge_agrees]" in with_gauge
    assert "[lamp_lit_with_key]" not in with_gauge


def test_words_prove_it_where_there_is_no_pressure(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    path.write_text(DRAINED, "utf-8")
    words = ("light went out straight away after a night, no rattle", "no leaks")
    done = call("record", path, "--after-repair", *words)
    assert done.code == 0, done.err
    text = path.read_text("utf-8")
    for task in ("lamp_out_timed", "started_after_a_night", "no_leak_running"):
        assert f'what = "{task}"\nstate = "done"' in text
    assert "rattle_of_unknown_place" not in text, "no evidence of the fault"
    assert "Do not start yet" not in call("signoff", path).out, "it has run"


@pytest.mark.parametrize(
    ("words", "tasks"),
    [
        ("lamp goes out at once", "lamp_out_timed"),
        ("it stays off at hot idle", "lamp_stays_out_hot"),
        ("drove over the speed humps, the light stayed off", "lamp_stays_out_hot"),
        ("lights up with the key on", "lamp_lit_with_key"),
        ("wiggled the wire, nothing happens", "steady_when_wire_moves"),
        ("the wire is sleeved and clipped away from the bracket", "wire_laid_clear"),
        ("the new filter has a rubber flap", "flap_in_new_filter"),
        ("all dry, no knock", "no_leak_running no_knock_heard"),
        ("level is right", "level_and_leaks_after_first_stop"),
        ("the light still stays on for 5 seconds after a night", ""),
        ("no rattle but the light did not go out at once", ""),
        ("the lamp stays on", ""),
        ("it is dark in here", ""),
    ],
)
def test_each_proof_in_words(words: str, tasks: str) -> None:
    assert sorted(said(words)) == sorted(tasks.split())


def test_each_proof_has_a_task_of_the_book() -> None:
    assert all(the_book().tasks[task.id] is task for task, _ in PROOFS)


def test_the_start_and_the_report_speak_of_the_lamp(tmp_path: Path) -> None:
    path, page = tmp_path / "a.toml", tmp_path / "a.html"
    path.write_text(DRAINED + CLOSED.format("filter_drainback", ""), "utf-8")
    start = call("signoff", path, "--start").out
    assert "A test gauge would show" in start
    assert "The gauge should show" not in start
    assert call("report", path, "--out", page).code == 0
    owner = page.read_text("utf-8").partition("The technical part")[0]
    assert "The lamp is its only instrument" in owner
    assert "gauge falls below" not in owner
    assert "The gauge moves" not in owner
    assert "hot idle not below" not in owner
    assert "oil lamp out at hot idle" in owner


def test_a_report_denies_no_pressure_that_was_read(tmp_path: Path) -> None:
    """A test gauge was on: the owner is shown by how far it may fall."""
    path, page = tmp_path / "a.toml", tmp_path / "a.html"
    after = (
        '[[reading]]\nno = 8\npressure = "2.4 bar"\nrpm = "1000 rpm"\noil = "hot"\ngauge = "direct"\n'
        'at = "start"\n'
    )
    path.write_text(DRAINED + after + CLOSED.format("filter_drainback", ""), "utf-8")
    assert call("report", path, "--out", page).code == 0
    owner = page.read_text("utf-8").partition("The technical part")[0]
    assert "no pressure was read" not in owner
    path.write_text((DRAINED + after).replace(HEAD, GAUGE), "utf-8")
    assert call("report", path, "--out", page).code == 0
    owner = page.read_text("utf-8").partition("The technical part")[0]
    assert "far below the 2.4 bar it shows" in " ".join(owner.split())


def test_the_owner_of_a_sound_engine_hears_it_in_one_sentence(tmp_path: Path) -> None:
    path, page = tmp_path / "a.toml", tmp_path / "a.html"
    for text, sound in ((WIRE + SOUND, True), (WIRE + SOUND.replace("20 psi", "5 psi"), False)):
        path.write_text(text + CLOSED.format("wiring_ground_fault", "new wire"), "utf-8")
        assert call("report", path, "--out", page).code == 0
        owner = page.read_text("utf-8").partition("The technical part")[0]
        assert ("The oil pressure is sound, 20 psi and 45 psi on a test gauge" in owner) is sound
        assert ("the same: no work on the engine" in owner) is sound


def test_what_nobody_wrote_down_is_called_for_everywhere(tmp_path: Path) -> None:
    path, page = tmp_path / "a.toml", tmp_path / "a.html"
    of_the_book = the_book().causes["filter_drainback"].remedy
    for remedy, head in ((of_the_book, "Called for"), ("new listed filter", "Done")):
        path.write_text(DRAINED + CLOSED.format("filter_drainback", remedy), "utf-8")
        assert f"{head}: {remedy}." in " ".join(call("review", path).out.split())
        assert call("report", path, "--out", page).code == 0
        assert f"<dt>{head}</dt>" in page.read_text("utf-8")


def test_once_it_has_run_nobody_is_kept_from_starting_it(tmp_path: Path) -> None:
    """All of them in one command; nobody is sent to close first."""
    path = tmp_path / "a.toml"
    text = 'schema = 1\n[engine]\nlayout = "skew_gear_six"\n[[finding]]\nno = 1\n'
    text += 'what = "pickup_tube_crack_seen"\nstate = "present"\n'
    path.write_text(text, "utf-8")
    asked = call("signoff", path).out
    assert "say first which parts it has" in asked or "must be done before the first start" in asked
    read = '[[reading]]\nno = 2\npressure = "19 psi"\nrpm = "600 rpm"\noil = "hot"\nat = "start"\n'
    path.write_text(text + read, "utf-8")
    asked = call("signoff", path).out
    assert "Do not start yet" not in asked
    assert "Do not run it on" in asked
    command = next(line for line in asked.splitlines() if "=no" in line)
    assert command.count("=no") > 1, "one command for all of them"


def test_a_second_fault_that_was_found_is_put_right_too(tmp_path: Path) -> None:
    path = tmp_path / "a.toml"
    text = 'schema = 1\n[engine]\nlayout = "skew_gear_four"\n'
    for no, what in enumerate(("oil_milky", "water_at_the_drain", "relief_valve_stayed_open"), 1):
        text += f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\n'
    path.write_text(text, "utf-8")
    head = call("signoff", path).out.partition("\n\n")[0]
    assert "water or coolant in the oil and relief plunger stuck" in " ".join(head.split())


def test_an_engine_that_reads_as_when_it_was_sound_misses_nothing(tmp_path: Path) -> None:
    """What the budget of the broken engine could not explain keeps no mended one open."""
    text = (
        'schema = 1\n[engine]\nlayout = "skew_gear_six"\n[[finding]]\nno = 1\n'
        'what = "main_clearance"\nvalue = "0.0022 in"\n'
        '[[reading]]\nno = 2\npressure = "6 psi"\nrpm = "500 rpm"\noil = "180 F"\n'
        'usual = "20 psi"\ngauge = "direct"\n'
    )
    after = '[[reading]]\nno = 3\npressure = "{}"\nrpm = "500 rpm"\noil = "180 F"\nat = "start"\n'
    for later, missing in (
        ("", True),
        (after.format("19 psi"), False),
        (after.format("12 psi"), True),
    ):
        path = tmp_path / "a.toml"
        path.write_text(text + later, "utf-8")
        refused = call("close", path, "--cause", "cam_bearing_wear", "--how", "seen").err
        assert ("some of the missing pressure is not explained" in refused) is missing, later


@pytest.mark.parametrize(
    ("text", "stops"),
    [
        (WIRE + SOUND, False),
        (WIRE + SOUND.replace("20 psi", "5 psi"), True),
        (WIRE + SOUND.partition("[[reading]]\nno = 4")[0].replace("hot", "cold"), True),
        (HEAD + SOUND.replace('oil = "hot"\n', ""), False),
        (HEAD + SOUND.replace('oil = "hot"\n', "").replace("20 psi", "15 psi"), True),
        (WIRE, True),
    ],
)
def test_a_lamp_found_wrong_stops_no_sound_engine(tmp_path: Path, text: str, stops: bool) -> None:
    """Its wire was found bad, and a trusted gauge showed enough at idle and at speed."""
    path = tmp_path / "a.toml"
    lit = '[[finding]]\nno = 8\nwhat = "lamp_comes_on"\nstate = "present"\n'
    unsaid = text.replace('rpm = "idle"\noil = "hot"', 'rpm = "idle"')
    for each in (text, unsaid):
        path.write_text(each + lit, "utf-8")
        assert ("STOP THE ENGINE" in call("review", path).out) is stops, each
