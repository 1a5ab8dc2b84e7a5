"""Oil put in against the grade the engine wants: thinner is too thin, thicker too heavy, whichever is named first."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

#: with "{a}" put in where "{b}" is wanted
FRAMES = (
    "put {a} in an engine that wants {b}",
    "manual says {b}, it has {a} in it",
    "supposed to run {b}, I put {a}",
    "book calls for {b} and i put {a}",
    "it should have {b} but has {a} in it",
    "running {a} in it though it calls for {b}",
    "it wants {b} and got {a}",
)
NEITHER = (
    "should I put 20w50 in instead of 10w30?",
    "my brother runs 20w50 in his, mine wants 5w30 and has 5w30",
    "has 15w40 in it, supposed to have 15w40",
    "put 5w30 in an engine that wants 10w30",
)


def judged(text: str) -> set[str]:
    facts = read(text, the_book()).facts
    return {f.name for f in facts if f.is_present and f.name.startswith("oil_grade_too")}


@pytest.mark.parametrize("frame", FRAMES)
@pytest.mark.parametrize(("thin", "thick"), [("10w30", "20w50"), ("5w-20", "SAE 30")])
def test_two_grades(frame: str, thin: str, thick: str) -> None:
    assert judged(frame.format(a=thin, b=thick)) == {"oil_grade_too_thin"}
    assert judged(frame.format(a=thick, b=thin)) == {"oil_grade_too_heavy"}


@pytest.mark.parametrize("text", NEITHER)
def test_nothing_to_judge(text: str) -> None:
    assert not judged(text)
