"""Lines of sign-off, judging and case that mutants changed without a test noticing."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any, cast

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.signoff import closing
from diagnose.signoff.judging import figures
from knowledge.book import the_book
from knowledge.judging import judged
from knowledge.model import State
from knowledge.sources import JUDGEMENT
from knowledge.units import PSI
from knowledge.work import Band

BOOK = the_book()
OPENS = BOOK.tasks["relief_opens_at"]


@pytest.mark.parametrize(
    ("probability", "state", "sure"),
    [(0.2, State.ABSENT, 0.8), (0.49, State.ABSENT, 0.51), (0.5, State.PRESENT, 0.5),
     (0.9, State.PRESENT, 0.9)],
)  # fmt: skip
def test_likelier_than_not_is_present(probability: float, state: State, sure: float) -> None:
    derived = judged(BOOK.findings["needle_flickers"], probability)
    assert derived.state is state
    assert derived.sure == pytest.approx(sure)


@pytest.mark.parametrize(
    ("low", "high", "words"),
    [(40 * PSI, 60 * PSI, "40 psi to 60 psi"), (40 * PSI, None, "at least 40 psi"),
     (None, 60 * PSI, "at most 60 psi")],
)  # fmt: skip
def test_a_band_may_be_open_at_one_end(low: float | None, high: float | None, words: str) -> None:
    assert figures(Band(low=low, high=high, source=JUDGEMENT), OPENS, "psi") == words


def test_the_engines_own_limit_is_kept() -> None:
    case = from_text('schema = 1\n[engine.limits]\nhot_idle_pressure = "12 psi"\n', None, BOOK)
    assert case.limits == {BOOK.limits["hot_idle_pressure"]: pytest.approx(12 * PSI)}


@pytest.mark.parametrize("below", [False, True])
@pytest.mark.parametrize("stop", [False, True])
def test_either_fault_of_a_first_start_falls_short(
    below: bool, stop: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Less than predicted, or under a stop limit: one is enough."""
    start = SimpleNamespace(compared=[SimpleNamespace(below=below, stop=stop)])
    monkeypatch.setattr("diagnose.signoff.start.first_start", lambda *_: start)
    answer: Any = SimpleNamespace(case=SimpleNamespace(start_readings=(1,)), book=BOOK)
    assert closing._falls_short(cast("Diagnosis", answer)) is (below or stop)
