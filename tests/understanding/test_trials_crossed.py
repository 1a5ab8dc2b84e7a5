"""What was tried and what came of it: each of many works in each of many ways to say a result.

``data/trials_crossed.toml`` holds the works and the ways, a part of them kept back.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book
from knowledge.reports.words import Result

FILE = Path(__file__).parents[1] / "data" / "trials_crossed.toml"
COMPLAINT = "Low oil pressure at idle."
#: least share read in full, with nothing else: what is reached, to 2 points
LEAST, LEAST_KEPT_BACK = 0.97, 0.85


@cache
def listed() -> dict[str, list[dict[str, Any]]]:
    """The works under "thing", the ways to say a result under "frame"."""
    return tomllib.loads(FILE.read_text("utf-8"))


def of(kind: str, kept_back: bool) -> list[dict[str, Any]]:
    """Those of a kind that are kept back, or that are not."""
    return [each for each in listed()[kind] if bool(each.get("kept_back")) is kept_back]


def crossed(kept_back: bool) -> Iterator[tuple[str, list[tuple[str, str]]]]:
    """Each work in each frame, with the trials and results that the text states."""
    for frame in of("frame", kept_back):
        for thing in of("thing", kept_back):
            forms = {k: v for k, v in thing.items() if isinstance(v, str)}
            forms |= {k.capitalize(): v[:1].upper() + v[1:] for k, v in forms.items()}
            stated = [(thing["trial"], frame["result"])] if "result" in frame else []
            yield f"{COMPLAINT} {frame['text'].format(**forms)}", stated


def trials_in(text: str) -> list[tuple[str, str]]:
    """The trials that are read, each with its result."""
    return [(f.name, f.state) for f in read(text, the_book()).facts if f.table == "trial"]


def test_the_lists_are_of_the_book() -> None:
    """Every trial is of the book, every result a word of reports, and some of each are kept back."""
    assert {t["trial"] for t in listed()["thing"]} <= the_book().trials.keys()
    results = {r.value for r in Result}
    assert {f["result"] for f in listed()["frame"] if "result" in f} == results
    for kind in ("thing", "frame"):
        assert len(of(kind, kept_back=True)) >= len(of(kind, kept_back=False)) / 2


@pytest.mark.parametrize(("kept_back", "least"), [(False, LEAST), (True, LEAST_KEPT_BACK)])
def test_enough_is_read_and_no_opposite(kept_back: bool, least: float) -> None:
    """The trial with its result and no other; what is only planned or asked is no trial."""
    texts = list(crossed(kept_back))
    wrong = [(t, got) for t, stated in texts if (got := trials_in(t)) != stated]
    for text, got in wrong:
        if not kept_back:
            print(text, got)
    print(f"{len(texts) - len(wrong)} of {len(texts)}")
    assert 1 - len(wrong) / len(texts) >= least


SAID = {
    "Replaced the sender, partial fix.": [("new_sender", "helped")],
    "Cleaned the pickup. Not cured but less bad.": [("pickup_cleaned", "helped")],
    "Had 20 psi, changed the filter, now I have 5.": [("new_filter", "worse")],
    "Solved: new pickup tube o-ring.": [("pickup_seal_renewed", "cured")],
    "After cleaning the relief valve, no change.": [("relief_cleaned", "no difference")],
    "Replaced the pump thinking that was it, but no.": [("new_pump", "no difference")],
    "It's the same as it was before we replaced the pump.": [("new_pump", "no difference")],
    "New rotors were put in the oil pump, no change.": [("pump_rebuilt", "no difference")],
    "Baffles were fitted in the sump, it is cured.": [("sump_baffled", "cured")],
    "A new sender only bought me a month.": [("new_sender", "cured for a while")],
    "Cleaned the screen and that seemed to do it but yesterday the light was back.": [
        ("pickup_cleaned", "cured for a while")
    ],
    "If replacing the pump doesn't fix it I'm out of ideas.": [],
    "Replaced the switch, now no light with the key on.": [],
    "Some say replacing the pump helps.": [],
    "Replaced the sender and picked up 10 psi, the light still flickers.": [
        ("new_sender", "helped")
    ],
}


@pytest.mark.parametrize("text", SAID)
def test_what_came_of_it_reaches_the_work(text: str) -> None:
    """Results before the work, behind a comma, beside hope, and of which only a part was reached."""
    assert sorted(trials_in(f"{COMPLAINT} {text}")) == sorted(SAID[text])
