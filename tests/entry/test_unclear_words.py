"""Words of ``record`` that are not clear: the others are saved, and sentences are offered."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.entry.candidates import candidates
from diagnose.entry.recording import Input, record
from diagnose.errors import UsageError
from knowledge.book import the_book

BOOK = the_book()
EMPTY = "schema = 1\n"


def test_a_phrase_nothing_was_chosen_of_leaves_the_clear_ones(tmp_path: Path) -> None:
    """They are saved, and the other is named; so is a phrase nobody understands."""
    path = tmp_path / "x.toml"
    path.write_text(EMPTY, "utf-8")
    both = Input(facts=["clearance 4 thou", "oil level ok"], choose=lambda _: None)
    saved = record(path, BOOK, both)
    assert [e.fields["what"] for e in saved.entries] == ["level_correct"]
    assert saved.left_out == ("'clearance 4 thou': none of these; nothing is saved of it",)
    more = Input(facts=["oil looks clean", "wibble frobnicate"], choose=lambda _: None)
    saved = record(path, BOOK, more)
    assert [e.fields["what"] for e in saved.entries] == ["oil_looks_clean"]
    [line] = saved.unclear
    assert line.startswith("'wibble frobnicate': not understood")


def test_nothing_but_unclear_words_saves_nothing(tmp_path: Path) -> None:
    """It says so, and offers sentences; none says that a trial cured what nobody said was cured."""
    path = tmp_path / "x.toml"
    path.write_text(EMPTY, "utf-8")
    with pytest.raises(UsageError) as error:
        record(path, BOOK, Input(facts=["pump joint tight, new gasket", "wibble wobble"]))
    said = str(error.value)
    assert said.endswith("nothing is saved")
    with pytest.raises(UsageError) as alone:
        record(path, BOOK, Input(facts=["pump joint tight, new gasket"]))
    assert "\n" not in str(alone.value), "one phrase, one line"
    assert path.read_text("utf-8") == EMPTY
    assert "[air_at_pump_cover=no]" in said
    assert "cured_it" not in said


@pytest.mark.parametrize(
    ("said", "first"),
    [
        ("bearing caps all numbered and right way round", "caps_mixed=no"),
        ("lifters all stay up in their bores", "lifter_out_of_bore=no"),
        ("tacho reads right", "tachometer_wrong=no"),
        ("relief spring same length as the new one", "relief_spring_short_or_broken=no"),
    ],
)
def test_praise_of_a_part_offers_no_fault(said: str, first: str) -> None:
    """What is right is offered as no fault; a fault in the same words is offered as one."""
    offered = [c.typed for c in candidates(said, BOOK)]
    assert offered[0] == first
    assert all(typed.endswith("=no") for typed in offered)
    faults = [c.typed for c in candidates("tacho reads wrong, bent", BOOK)]
    assert [t for t in faults if t.endswith("=yes")] == faults != []
