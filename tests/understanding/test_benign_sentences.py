"""Sentences that state no fault of the oil system: no fault is read from them."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from diagnose.understanding import reader
from diagnose.understanding.reader import read
from diagnose.understanding.sights.foreign_parts import without_foreign_parts
from knowledge.book import the_book

DATA = Path(__file__).parents[1] / "data" / "benign_sentences.toml"
BENIGN: dict[str, dict[str, list[str]]] = tomllib.loads(DATA.read_text("utf-8"))
EVERY = {text: may for part in BENIGN.values() for text, may in part.items()}
#: of other parts, and yet the engine's own trouble: these must still be read
STATED = {
    "oil leaks onto the exhaust": "finding oil_seen_outside present",
    "the oil pump is worn out but the fuel pump is fine": "finding gears_worn_out present",
    "radiator hose burst and the engine overheated": "finding engine_ran_hot present",
    "oil smells of petrol, the fuel pump diaphragm was split": "finding fuel_smell present",
    "gauge line melted on the exhaust and sprayed oil": "finding gauge_line_leaking present",
    "light came on and I drove it home": "finding ran_on_without_pressure present",
    "the oil ran out, sump was dry": "finding dipstick_dry present",
    "raced it at the circuit last weekend": "finding raced_or_heeled present",
    "knocked for ten seconds then stopped": "finding stopped_with_loss_of_power present",
    "there is a recall for the oil pump": "finding known_for_model present",
    "it caught fire": "finding oil_caught_fire present",
    "oil tank is full": "finding tank_still_full present",
    "changed the oil and filter": "earlier filter_change renewed",
    "temperature gauge fine, oil gauge needle jumps": "behaviour unsteady",
}


def test_the_list_is_long() -> None:
    """Some of each kind; no sentence stands in two."""
    assert len(EVERY) == sum(len(part) for part in BENIGN.values())
    assert len(BENIGN["benign"]) >= 200
    assert len(BENIGN["near_another_part"]) >= 60
    assert len(BENIGN["short_phrases"]) >= 100


@pytest.mark.parametrize("text", EVERY, ids=lambda t: t[:40])
def test_no_fault_is_read(text: str) -> None:
    """Nothing but what the sentence says."""
    assert not {f.short for f in read(text, the_book()).facts} - set(EVERY[text])


@pytest.mark.parametrize("text", STATED)
def test_faults_beside_other_parts_are_read(text: str) -> None:
    """What is plainly said of the engine, with words of other parts near."""
    assert STATED[text] in {f.short for f in read(text, the_book()).facts}


def test_the_list_catches_a_reader(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without regard to whose part it is, many are misread."""
    others = tuple(c for c in reader.CORRECTIONS if c is not without_foreign_parts)
    monkeypatch.setattr(reader, "CORRECTIONS", others)
    misread = [
        t for t, may in EVERY.items() if {f.short for f in read(t, the_book()).facts} - set(may)
    ]
    assert len(misread) >= 40
