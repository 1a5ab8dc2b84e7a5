"""A contradiction names the entries it rests on, and the figures in them."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.contradictions import rests_on
from knowledge.book import the_book
from tests.support.command_line import call, in_eighty_columns

BOOK = the_book()
HEAD = 'schema = 1\n[job]\ntitle = "Tern, launch"\n[engine]\nlayout = "distributor_v8"\n'
ASIDE = '[[finding]]\nno = 1\nwhat = "blue_smoke"\nstate = "absent"\n'
CASES = {
    "a measure against what was said": (
        '[[finding]]\nno = 4\nwhat = "main_clearance"\nvalue = "0.0055 in"\n'
        '[[finding]]\nno = 5\nwhat = "main_clearance_too_wide"\nstate = "absent"\n',
        {4: "main_clearance=0.0055 in", 5: "main_clearance_too_wide=no"},
    ),
    "a reading against what was said": (
        '[[finding]]\nno = 2\nwhat = "gauge_reads_low"\nstate = "present"\n'
        '[[reading]]\nno = 6\nrpm = "700 rpm"\noil = "95 C"\npressure = "40 psi"\n',
        {2: "gauge_reads_low=yes", 6: "700 rpm 95 C 40 psi"},
    ),
    "two findings": (
        '[[finding]]\nno = 7\nwhat = "dipstick_low"\nstate = "present"\n'
        '[[finding]]\nno = 9\nwhat = "level_correct"\nstate = "present"\n',
        {7: "dipstick_low=yes", 9: "level_correct=yes"},
    ),
}


@pytest.mark.parametrize(("entries", "behind"), CASES.values(), ids=CASES)
def test_the_entries_behind_it(entries: str, behind: dict[int, str]) -> None:
    """Those and no others: what was said beside them has no part in it."""
    answer = Diagnosis(BOOK, from_text(HEAD + ASIDE + entries, None, BOOK))
    assert behind in [rests_on(answer, c) for c in answer.contradictions]


def test_review_prints_and_hands_them_on(tmp_path: Path) -> None:
    entries, behind = CASES["a measure against what was said"]
    path = tmp_path / "tern.toml"
    path.write_text(HEAD + ASIDE + entries)
    shown = call("review", path).out
    assert "entries: 4 (main_clearance=0.0055 in), 5 (main_clearance_too_wide=no)" in shown
    in_eighty_columns(shown)
    data = json.loads(call("review", path, "--json").out)
    assert sorted(behind) in [c["entries"] for c in data["contradictions"]]


def test_what_was_withdrawn_or_corrected_is_not_named() -> None:
    entries, _ = CASES["a measure against what was said"]
    corrected = '[[finding]]\nno = 8\nwhat = "main_clearance"\nvalue = "0.006 in"\nreplaces = 4\n'
    answer = Diagnosis(BOOK, from_text(HEAD + entries + corrected, None, BOOK))
    assert {5: "main_clearance_too_wide=no", 8: "main_clearance=0.006 in"} in [
        rests_on(answer, c) for c in answer.contradictions
    ]
