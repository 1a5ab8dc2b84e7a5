"""A question answered again: the answer that no longer holds is taken back, and said so."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.entry.recording import Input, record
from diagnose.entry.telling import understand, write
from diagnose.understanding.corrected import corrects
from knowledge.book import the_book
from knowledge.model import State
from tests.support.command_line import call

BOOK = the_book()
LEVEL_ANSWERED = """schema = 1

[[finding]]
no = 1
what = "level_high"
state = "present"
when = 2026-05-01

[[finding]]
no = 2
what = "level_correct"
state = "absent"
when = 2026-05-01
"""
LOSS_ANSWERED = """schema = 1

[[finding]]
no = 1
what = "oil_loss_fast"
state = "present"
when = 2026-05-01
"""
SENDERS_ANSWERED = """schema = 1

[[finding]]
no = 1
what = "one_sender_for_two_gauges"
state = "present"
when = 2026-05-01
"""


def standing(path: Path) -> dict[str, State]:
    """The findings that stand in a case file."""
    records = load(path, BOOK).finding_records
    return {r.finding.id: r.observation.state for r in records if r.observation}


@pytest.mark.parametrize(
    ("case", "words", "gone", "there"),
    [
        (LEVEL_ANSWERED, "i read the stick wrong, its right at full mark", True, "level_correct"),
        (LEVEL_ANSWERED, "sorry, my mistake: the level is low", True, "dipstick_low"),
        (LEVEL_ANSWERED, "the oil level is at the full mark", False, "level_correct"),
        (LOSS_ANSWERED, "doesnt lose oil, i answered wrong", True, ""),
        (LOSS_ANSWERED, "it doesnt use oil", False, ""),
        (SENDERS_ANSWERED, "gauges_at_two_stations=yes", True, "gauges_at_two_stations"),
    ],
)
def test_record_takes_back_what_is_answered_again(
    case: str, words: str, gone: bool, there: str, tmp_path: Path
) -> None:
    """Of what may change only what the words say was wrong; of what cannot change always."""
    path = tmp_path / "job.toml"
    path.write_text(case, encoding="utf-8")
    before = next(iter(standing(path)))
    record(path, BOOK, Input(facts=[words]))
    found = standing(path)
    assert (before not in found) == gone
    assert not there or found[there] is State.PRESENT


def test_what_is_called_wrong_is_withdrawn(tmp_path: Path) -> None:
    """Words that strike out a reading or a noise withdraw its entry, and enter nothing again."""
    path = tmp_path / "job.toml"
    path.write_text(
        'schema = 1\n[[reading]]\nno = 1\npressure = "2 psi"\noil = "cold"\n'
        '[[behaviour]]\nno = 2\nshows = "knock"\n[[reading]]\nno = 3\npressure = "40 psi"\n',
        encoding="utf-8",
    )
    assert "entry 1 withdrawn" in call("record", str(path), "the 2 psi cold was wrong").out
    said = "the knock was the air compressor, not the engine"
    assert "entry 2 withdrawn" in call("record", str(path), said).out
    assert list(load(path, BOOK).standing) == [3]
    shown = call("record", str(path), "the 40 psi was a typo, it was 45 psi").out
    assert "reading: 45 psi" in shown
    assert "entry 3 withdrawn" in shown
    assert "Not understood" not in shown
    refused = call("record", str(path), "the 7 psi was wrong")
    assert refused.code
    assert "no entry says what this takes back" in refused.err


def test_tell_takes_it_back_too(tmp_path: Path) -> None:
    """A story put into a job corrects as a sentence recorded does."""
    path = tmp_path / "job.toml"
    path.write_text(LEVEL_ANSWERED, encoding="utf-8")
    write(understand(path, "I misread the dipstick, the oil is at the full mark", BOOK), BOOK)
    found = standing(path)
    assert "level_high" not in found
    assert found["level_correct"] is State.PRESENT


def test_what_is_taken_back_is_named(tmp_path: Path) -> None:
    """The screen says which finding no longer counts, and leaves no word of the correction over."""
    path = tmp_path / "job.toml"
    path.write_text(LEVEL_ANSWERED, encoding="utf-8")
    shown = call("record", str(path), "i read the stick wrong, its right at full mark").out
    assert "level_high: entry 1 withdrawn" in shown
    assert "no longer counts: the oil is well above the full mark" in shown
    assert "Not understood" not in shown


def test_a_withdrawal_is_no_earlier_work(tmp_path: Path) -> None:
    """Taking work back is not announced as work before the trouble."""
    path = tmp_path / "job.toml"
    path.write_text(
        'schema = 1\n[[earlier]]\nno = 1\nwhat = "sump"\n[[reading]]\nno = 2\npressure = "0 psi"\n',
        encoding="utf-8",
    )
    shown = call("record", str(path), "--withdraw", "1").out
    assert "sump: entry 1 withdrawn" in shown
    assert "before the trouble" not in shown


def test_something_wrong_with_a_part_corrects_nothing() -> None:
    """Only what a person said or read can be taken back."""
    for text in ("the wrong filter was fitted", "something is wrong", "the gauge reads wrong"):
        assert corrects(text, BOOK) == ()
