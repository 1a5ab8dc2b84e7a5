"""The review as printed by default: one screen, the answer first, the next thing to do last."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.review import ReviewDocument, review_document
from diagnose.output.documents.stations import LikelyStation
from diagnose.output.lines import wrapped
from diagnose.output.text.review_brief import review_brief
from diagnose.output.text.screen import MOST
from knowledge.book import the_book
from tests.confirmed.scoring import FURTHER, case_files
from tests.output.test_review_printed import DOCUMENT
from tests.support.command_line import call, in_eighty_columns
from tests.support.examples import one_in

CASES = one_in(2, [*sorted(Path("cases").glob("*.toml")), *case_files(FURTHER)[::25]])


@cache
def document_of(path: Path) -> ReviewDocument:
    """The document of a case's review."""
    return review_document(Diagnosis(the_book(), load(path, the_book())), str(path))


@pytest.mark.parametrize("path", CASES, ids=lambda p: p.stem)
def test_it_fits_one_screen(path: Path) -> None:
    """Only precautions beside the next check may take it beyond the screen."""
    document = document_of(path)
    text = review_brief(document)
    in_eighty_columns(text)
    check = document.next[0] if document.next and not document.closed else None
    keeps = [o.keep for o in check.openings if o.keep] if check else []
    beside = [*check.warnings, check.keep, *keeps] if check else []
    words = sum(len(wrapped(f"caution: {w}", 2, 4)) for w in beside if w)
    assert len(text.splitlines()) <= MOST + words


@pytest.mark.parametrize("path", CASES, ids=lambda p: p.stem)
def test_it_says_what_the_whole_review_says(path: Path) -> None:
    document = document_of(path)
    text = " ".join(review_brief(document).split())
    assert document.causes[0].id in text
    if document.closed:
        assert "STOP" not in text
    elif document.alarms:
        assert " ".join(document.alarms[0].says.split()) in text
    for fault in document.found[:3]:
        assert fault.title in text
    if document.next and not document.closed:
        assert text.rstrip().endswith(f"{document.next[0].findings[0]}=yes")
        for caution in document.next[0].care:
            assert caution in text


def test_the_gravest_notice_stands_first_and_the_others_are_counted() -> None:
    lines = review_brief(replace(DOCUMENT, history=None)).splitlines()
    assert lines[2].startswith("STOP THE ENGINE: no pressure")
    assert "  and 1 more: --full" in lines


def test_a_closed_job_has_no_alarm_and_no_next_check() -> None:
    text = review_brief(replace(DOCUMENT, closed="Closed 2026-06-20: a loose pickup."))
    assert "Closed 2026-06-20: a loose pickup." in text
    assert "STOP" not in text
    assert "Next" not in text


def test_places_are_named_where_no_cause_stands_out() -> None:
    place = LikelyStation(station="pump", says="the pump", probability=0.2, cause="gears worn")
    said = "by place  the pump 20 %"
    roomy = replace(DOCUMENT, found=(), damage=(), contradictions=(), contaminated=(), causes=())
    assert said in review_brief(replace(roomy, stations=(place,)))
    assert "by place" not in review_brief(roomy)


def test_what_can_be_spared_goes_first() -> None:
    many = replace(DOCUMENT, found=DOCUMENT.found * 3, damage=DOCUMENT.damage * 2)
    assert "followed" not in review_brief(many)
    assert "followed" in review_brief(
        replace(DOCUMENT, found=(), contradictions=(), history=None, next=())
    )


def test_as_many_causes_as_asked() -> None:
    done = call("review", "cases/petrel.toml", "--causes", "7")
    rows = [line for line in done.out.splitlines() if "% " in line[:9]]
    assert len(rows) == 7


def test_the_whole_is_one_option_away() -> None:
    brief, full = (call("review", "cases/petrel.toml", *more).out for more in ([], ["--full"]))
    assert "diagnose review cases/petrel.toml --full" in brief
    assert "Explanations as sets of causes" in full
    assert "dB" in full
    assert "dB" not in brief
