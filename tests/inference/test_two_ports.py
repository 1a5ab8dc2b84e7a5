"""A loss measured between two ports, and a pressure that the engine held before."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "marine_petrol_v8"\n'


def reading(no: int, psi: int, rpm: int, more: str = "", oil: str = "90 C") -> str:
    return (
        f'[[reading]]\nno = {no}\nrpm = "{rpm} rpm"\noil = "{oil}"\npressure = "{psi} psi"\n{more}'
    )


def finding(no: int, what: str, state: str = "present") -> str:
    return f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "{state}"\n'


def usual(psi: int) -> str:
    return f'usual = "{psi} psi"\n'


FALLEN = reading(1, 20, 3000, usual(50)) + reading(2, 8, 700, usual(25))
FALLEN += reading(3, 60, 2000, oil="15 C") + finding(4, "oil_cooler") + finding(5, "grows_worse")
LOST_BETWEEN = finding(6, "good_at_pump_low_in_gallery")
DIRECT = 'gauge = "direct"\n'
BOTH_PORTS = reading(7, 20, 3000, DIRECT) + reading(8, 62, 3000, DIRECT + 'tap = "pump"\n')


def answer(more: str) -> Diagnosis:
    return Diagnosis(BOOK, from_text(HEAD + more, None, BOOK))


def test_a_reported_loss_between_the_ports_takes_the_word_from_the_survey() -> None:
    assert answer(FALLEN).inference.survey is not None
    assert answer(FALLEN + finding(6, "good_at_pump_low_in_gallery", "absent")).inference.survey
    assert answer(FALLEN + LOST_BETWEEN).inference.survey is None


@pytest.mark.parametrize("more", [LOST_BETWEEN, BOTH_PORTS])
def test_with_a_cooler_between_the_ports_it_leads(more: str) -> None:
    assert answer(FALLEN + more).ranking[0].cause.id == "oil_cooler_blocked"


def test_figures_of_both_ports_say_most() -> None:
    assert answer(FALLEN + BOTH_PORTS).ranking[0].probability > 0.4


def test_a_cooler_that_is_there_is_likelier_blocked_than_one_nobody_asked_about() -> None:
    both = [
        answer(m).inference.posterior.marginal["oil_cooler_blocked"]
        for m in ("", finding(1, "oil_cooler"))
    ]
    assert both[1] > 1.5 * both[0]


def test_what_held_more_before_was_not_built_low() -> None:
    """Clearances set wide at a rebuild would have been low ever since."""
    without = FALLEN.replace(usual(50), "").replace(usual(25), "")
    chances = [
        answer(m).inference.posterior.marginal["clearance_set_wide"] for m in (FALLEN, without)
    ]
    assert chances[0] < 0.75 * chances[1]
    assert answer(FALLEN).ranking[0].cause.id != "clearance_set_wide"
