"""Each reading of two stations keeps its station, and both are of one moment."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.understanding.reader import read
from knowledge.book import the_book

BOOK = the_book()


def readings_of(text: str) -> set[tuple[str, ...]]:
    """The readings of a text: pressure, station, speed, oil."""
    return {
        tuple(str(f.fields.get(k) or "") for k in ("pressure", "station", "rpm", "oil"))
        for f in read(text, BOOK).facts
        if f.table == "reading"
    }


def found(text: str) -> set[str]:
    return {str(f.fields.get("what")) for f in read(text, BOOK).facts}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (
            "upper helm gauge says 10, lower helm says 45",
            {("10 psi", "upper", "", ""), ("45 psi", "lower", "", "")},
        ),
        (
            "downstairs 45, upstairs 10",
            {("45 psi", "downstairs", "", ""), ("10 psi", "upstairs", "", "")},
        ),
        (
            "upper station shows 10 psi lower station 45 psi",
            {("10 psi", "upper", "", ""), ("45 psi", "lower", "", "")},
        ),
        (
            "10 psi at the upper helm and 45 psi at the lower helm, hot idle",
            {("10 psi", "upper", "idle", "hot"), ("45 psi", "lower", "idle", "hot")},
        ),
        (
            "at hot idle downstairs gauge says 45, flybridge gauge says 10",
            {("45 psi", "downstairs", "idle", "hot"), ("10 psi", "flybridge", "idle", "hot")},
        ),
        (
            "helm gauge says 40 psi cold and 12 psi hot",
            {("40 psi", "helm", "", "cold"), ("12 psi", "helm", "", "hot")},
        ),
        ("10 psi lower than it was", set()),
        ("lower oil pressure 10 psi at hot idle", {("10 psi", "", "idle", "hot")}),
        (
            "dash gauge 10 cold, then 45 psi at hot idle",
            {("10 psi", "", "", "cold"), ("45 psi", "", "idle", "hot")},
        ),
    ],
)
def test_each_reading_keeps_its_station(text: str, expected: set[tuple[str, ...]]) -> None:
    assert readings_of(text) == expected


def test_two_stations_far_apart_disagree() -> None:
    both = {"second_instrument_disagrees", "gauges_at_two_stations"}
    assert both <= found("downstairs 45, upstairs 10")
    assert both <= found("10 psi at the upper helm, 45 psi at the lower helm")
    assert found("downstairs 45, upstairs 44") & both == {"gauges_at_two_stations"}


READING = '[[reading]]\nno = {no}\npressure = "{psi} psi"\nrpm = "idle"\noil = "hot"\n'


def case_of(*readings: tuple[int, str]) -> Diagnosis:
    tables = [
        READING.format(no=n, psi=psi) + (f'station = "{at}"\n' if at else "")
        for n, (psi, at) in enumerate(readings, 1)
    ]
    return Diagnosis(BOOK, from_text("\n".join(["schema = 1", *tables]), None, BOOK))


def disagreement(answer: Diagnosis) -> list[float]:
    derived = answer.inference.result.derived
    return [d.sure for d in derived if d.finding.id == "second_instrument_disagrees"]


def test_readings_with_stations_in_a_file_disagree_without_a_word() -> None:
    assert disagreement(case_of((10, "flybridge"), (45, "wheelhouse")))
    assert not disagreement(case_of((44, "flybridge"), (45, "wheelhouse")))
    assert not disagreement(case_of((10, ""), (45, "")))


def test_the_station_stands_in_the_words_of_a_reading() -> None:
    answer = case_of((10, "flybridge"))
    assert answer.case.readings[0].reading.said == "10 psi at hot idle, flybridge gauge"
