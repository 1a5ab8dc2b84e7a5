"""Whether it may run, where a reading, a needle or a lamp says less than it seems to."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.alarms import alarm_notices, few_alarm_notices, run_verdict
from diagnose.output.documents.contradictions import contradiction_notices
from knowledge.book import the_book
from knowledge.model import Severity

BOOK = the_book()
MAY_RUN = "It may run on while you look: nothing known is against it."
HOT = 'no = 1\npressure = "{psi} psi"\nduring = ["late in a run"]\n'
FAST = '[[reading]]\nno = 1\nrpm = "4500 rpm"\noil = "90 C"\npressure = "{psi} psi"\n'
STUCK = '[[finding]]\nno = 2\nwhat = "needle_stuck_at_one_value"\nstate = "present"\n'


def diagnosis(text: str) -> Diagnosis:
    return Diagnosis(BOOK, from_text(f"schema = 1\n{text}", Path("tern.toml"), BOOK))


@pytest.mark.parametrize(
    ("text", "begins"),
    [
        ("[[reading]]\n" + HOT.format(psi=12), "12 psi at a speed nobody gave"),
        ("[[reading]]\n" + HOT.format(psi=30), MAY_RUN),
        ('[[reading]]\nno = 1\nrpm = "700 rpm"\noil = "90 C"\npressure = "16 psi"\n', MAY_RUN),
        ('[[reading]]\nno = 1\npressure = "80 psi"\n', MAY_RUN),
        ('[[reading]]\nno = 1\npressure = "80 psi"\n' + STUCK, "Pressure unknown"),
        ('[[reading]]\nno = 1\npressure = "22 psi"\nusual = "50 psi"\n', "22 psi where 50 psi is"),
        ('[[reading]]\nno = 1\npressure = "40 psi"\nusual = "50 psi"\n', MAY_RUN),
        (FAST.format(psi=36), "36 psi at 4500 rpm, where 10 psi for each 1000 rpm asks for"),
        (FAST.format(psi=60), MAY_RUN),
    ],
    ids=[
        "enough at idle only",
        "enough anywhere",
        "speed said",
        "needle moves",
        "needle stuck",
        "fell",
        "about as usual",
        "short at speed",
        "enough at speed",
    ],
)
def test_what_is_enough_at_any_speed_and_read_on_a_needle_that_moves(
    text: str, begins: str
) -> None:
    assert run_verdict(diagnosis(text)).startswith(begins)


def lamp(shows: str, *noise: str) -> Diagnosis:
    reports = [f'shows = "{shows}"\ngauge = "lamp"\nduring = ["idle"]\n']
    reports += [f'shows = "{each}"\n' for each in noise]
    every = (f"[[behaviour]]\nno = {no}\n{text}" for no, text in enumerate(reports, 1))
    return diagnosis("".join(every))


def test_a_lamp_with_a_rattle_is_no_engine_to_drive_home_on() -> None:
    alone, both = lamp("unsteady"), lamp("unsteady", "rattle")
    assert alone.may_run
    assert not both.may_run
    assert any("have it towed" in a.says for a in both.alarms)
    assert not any("have it towed" in a.says for a in alone.alarms)


def test_a_turbo_without_its_feed_does_not_run() -> None:
    text = '[[finding]]\nno = 1\nwhat = "turbo_feed_found_blocked"\nstate = "{}"\n'
    assert [a.severity for a in diagnosis(text.format("present")).alarms] == [Severity.DO_NOT_RUN]
    assert not diagnosis(text.format("absent")).alarms


def test_a_contradiction_names_the_report_that_it_rests_on() -> None:
    """The lamp at speed says that it does not flicker at hot idle only; the other report does not."""
    text = (
        '[[behaviour]]\nno = 1\nshows = "unsteady"\ngauge = "lamp"\nduring = ["at speed"]\n'
        '[[finding]]\nno = 2\nwhat = "flickers_only_at_hot_idle"\nstate = "present"\n'
        '[[behaviour]]\nno = 3\nshows = "ticking"\n'
    )
    (notice,) = contradiction_notices(diagnosis(text))
    assert notice.entries == (1, 2)


@pytest.mark.parametrize(
    ("finding", "severity"),
    [
        ("not_refilled", Severity.DO_NOT_RUN),
        ("gallery_found_blocked", Severity.DO_NOT_RUN),
        ("fuel_gets_in", Severity.CARE),
        ("ran_on_without_pressure", Severity.CARE),
    ],
)
def test_what_forbids_the_next_start_or_asks_for_a_look_first(
    finding: str, severity: Severity
) -> None:
    text = f'[[finding]]\nno = 1\nwhat = "{finding}"\nstate = '
    assert severity in {a.severity for a in diagnosis(f'{text}"present"\n').alarms}
    assert not diagnosis(f'{text}"absent"\n').alarms


def test_oil_that_was_put_in_ends_the_stop() -> None:
    text = '[[finding]]\nno = {}\nwhat = "{}"\nstate = "present"\n'
    both = diagnosis(text.format(1, "not_refilled") + text.format(2, "level_correct"))
    assert both.may_run


def test_under_a_stop_that_forbids_any_start_no_care_lets_it_run() -> None:
    """Metal forbids the start, so no notice says how it may run; what concerns fuel stays."""
    text = (
        '[[reading]]\nno = 1\nrpm = "700 rpm"\noil = "90 C"\npressure = "9 psi"\ngauge = "direct"\n'
        '[[finding]]\nno = 2\nwhat = "fuel_smell"\nstate = "present"\n'
    )
    forbidden = text + '[[finding]]\nno = 3\nwhat = "metal_in_filter"\nstate = "present"\n'
    for notices in (alarm_notices, few_alarm_notices):
        care = [a.says for a in notices(diagnosis(text)) if a.severity is Severity.CARE]
        assert any("run it only for a reading" in says for says in care)
        left = [a.says for a in notices(diagnosis(forbidden)) if a.severity is Severity.CARE]
        assert left == [says for says in care if "smells of fuel" in says]
