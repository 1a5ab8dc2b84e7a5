"""A second gauge beside panel or lamp: enough ends the stop and points to the instrument, little does not."""

from __future__ import annotations

import random
import tomllib
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from diagnose.case.loading import from_tables
from diagnose.diagnosis import Diagnosis
from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.model import Severity, Station
from tests.support.case_texts import as_case
from tests.support.readers import by_tell

BOOK = the_book()
DATA = Path(__file__).parents[1] / "data" / "gauges_put_on.toml"
JOINTS = (", ", ". ", " and ", " - ")
STOPS = frozenset({Severity.STOP, Severity.DO_NOT_RUN})
#: how many of the crossed sentences are tried, and the least share that comes out right (reached)
DRAWN, LEAST, LEAST_KEPT = 150, 0.95, 0.85


@cache
def lists(which: str) -> dict[str, list[str]]:
    found: dict[str, list[str]] = tomllib.loads(DATA.read_text("utf-8"))[which]
    return found


def crossed(which: str, drawn: int) -> Iterator[tuple[str, bool]]:
    """Sentences, and whether there is pressure."""
    lot, parts = random.Random(which), lists(which)
    for n in range(drawn):
        shows = lot.choice(parts["enough" if n % 2 else "little"])
        said = lot.choice(parts["complaint"]) + lot.choice(JOINTS) + lot.choice(parts["put_on"])
        yield said + lot.choice((*JOINTS, ": ")) + shows, bool(n % 2)


def comes_out(text: str, there: bool) -> bool:
    """No stop and an instrument first where there is pressure; else a stop, and no instrument."""
    answer = Diagnosis(BOOK, from_tables(as_case(by_tell(text)), None, BOOK))
    stopped = bool(STOPS & {a.severity for a in answer.alarms})
    instrument = answer.ranking[0].cause.station is Station.INSTRUMENT
    return instrument and not stopped if there else stopped and not instrument


@pytest.mark.parametrize(("which", "least"), [("developed", LEAST), ("kept_back", LEAST_KEPT)])
def test_what_it_shows_decides(which: str, least: float) -> None:
    each = list(crossed(which, DRAWN))
    wrong = [text for text, there in each if not comes_out(text, there)]
    print(f"{which}: {len(each) - len(wrong)} of {len(each)}", *wrong, sep="\n")
    assert 1 - len(wrong) / len(each) >= least


@pytest.mark.parametrize(
    ("words", "wanted", "unwanted"),
    [
        (
            "oil light stays on, hooked up a direct gauge, perfect pressure on it",
            "finding second_instrument_disagrees present",
            "finding direct_gauge_low present",
        ),
        (
            "the lamp came on, checked with a master gauge, 20 at hot idle and 55 at 2500",
            "reading 20 psi hot, idle",
            "finding direct_gauge_low present",
        ),
        (
            "gauge shows nothing. used an external gauge, same story",
            "finding direct_gauge_zero present",
            "finding second_instrument_disagrees present",
        ),
        (
            "low oil pressure. fitted a capillary gauge, also low",
            "finding direct_gauge_low present",
            "earlier instrument renewed",
        ),
        (
            "low oil pressure. put a mechanical gauge on it and got the same reading",
            "finding direct_gauge_low present",
            "finding second_instrument_disagrees present",
        ),
        (
            "dash gauge shows zero. hooked up a test gauge, same thing",
            "finding direct_gauge_zero present",
            "finding second_instrument_disagrees present",
        ),
        (
            "8 psi at hot idle. fitted a master gauge, it reads the same as the dash",
            "finding direct_gauge_low present",
            "finding direct_gauge_zero present",
        ),
        (
            "low oil pressure. put a mechanical gauge on it and got 50",
            "finding second_instrument_disagrees present",
            "finding direct_gauge_low present",
        ),
        (
            "gauge is pegged. put a mechanical gauge on it, same thing",
            "finding direct_gauge_high present",
            "finding direct_gauge_low present",
        ),
        (
            "gauge at zero at hot idle. put a mechanical gauge on, 55 at 3000 rpm",
            "reading 55 psi 3000 rpm",
            "finding pressure_shown_since present",
        ),
        (
            "low at hot idle. put a mechanical gauge on, 60 psi cold",
            "reading 60 psi cold",
            "finding second_instrument_disagrees present",
        ),
        (
            "gauge at zero at hot idle. put a mechanical gauge on, it is fine at 3000 rpm",
            "behaviour normal at speed",
            "finding pressure_shown_since present",
        ),
        (
            "oil light on at idle. put a mechanical gauge on, perfect pressure when cold",
            "behaviour normal cold",
            "finding second_instrument_disagrees present",
        ),
        (
            "low oil pressure. fitted a new dash gauge, same thing",
            "trial other_gauge no difference",
            "finding direct_gauge_low present",
        ),
        (
            "oil light on. with a calibrated gauge 45 psi at idle",
            "reading 45 psi idle",
            "finding direct_gauge_low present",
        ),
    ],
)
def test_facts(words: str, wanted: str, unwanted: str) -> None:
    found = {fact.short for fact in read(words, BOOK).facts}
    assert wanted in found
    assert unwanted not in found


@pytest.mark.parametrize(
    "words",
    [
        "low oil pressure. would a mechanical gauge show the same?",
        "low oil pressure. would a mechanical gauge read the same?",
        "low oil pressure. I will put a mechanical gauge on, it may be fine",
        "gauge reads zero. last week a mechanical gauge showed 50",
        "gauge reads zero. put a new gauge in the dash, reads fine",
        "gauge reads zero. my feeler gauge is fine",
    ],
)
def test_what_no_trusted_gauge_shows_now(words: str) -> None:
    """Asked, planned, of an earlier time, of the panel's new gauge, of another tool."""
    facts = read(words, BOOK).facts
    assert not [f for f in facts if f.fields.get("shows") == "normal" and "gauge" in f.fields]
    assert not [f for f in facts if f.name.startswith("direct_gauge_")]
