"""What can only make the gauge wrong ranks last only where the loss was proved otherwise."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.pressure.proof_of_loss import PROOF_OF_LOSS

BOOK = the_book()
HARMLESS = ("sender_faulty", "gauge_faulty", "wiring_ground_fault", "oil_hot_normal")


def answer(*words: str) -> Diagnosis:
    text = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
    for no, word in enumerate(words, 1):
        text += f'[[finding]]\nno = {no}\nwhat = "{word}"\nstate = "present"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


def ranks(of: Diagnosis) -> dict[str, int]:
    return {row.cause.id: rank for rank, row in enumerate(of.ranking)}


def test_a_panel_gauge_alone_demotes_nothing() -> None:
    only_panel = answer("gauge_reads_zero", "low_at_all_speeds", "low_even_cold", "fell_suddenly")
    assert not only_panel.inference.loss_is_real
    probabilities = [row.probability for row in only_panel.ranking]
    assert probabilities == sorted(probabilities, reverse=True)


@pytest.mark.parametrize("proof", ["direct_gauge_low", "lifters_clatter", "bearing_knock"])
def test_proof_sends_a_wrong_gauge_last(proof: str) -> None:
    proved = answer("gauge_reads_low", "low_at_all_speeds", "panel_reads_too_high", proof)
    assert proved.inference.loss_is_real
    order = ranks(proved)
    real = max(r for c, r in order.items() if c not in proved.inference.harmless)
    assert all(order[c] > real for c in HARMLESS if c in order)


def test_every_proof_is_a_finding_of_the_book() -> None:
    assert set(PROOF_OF_LOSS) <= set(BOOK.findings.values())
    assert len(set(PROOF_OF_LOSS)) == len(PROOF_OF_LOSS)


def test_nothing_wrong_never_leads_where_a_trusted_gauge_reads_low() -> None:
    """Also where it is just below its limit, so that the loss is not proved."""
    text = (
        'schema = 1\n[engine]\nlayout = "side_valve"\n[[reading]]\nno = 1\nrpm = "500 rpm"\n'
        'oil = "85 C"\npressure = "4 psi"\n'
    )
    panel = Diagnosis(BOOK, from_text(text, None, BOOK))
    trusted = Diagnosis(BOOK, from_text(text + 'gauge = "direct"\n', None, BOOK))
    assert not trusted.inference.loss_is_real
    assert trusted.ranking[-1].cause.no_fault
    assert not panel.ranking[-1].cause.no_fault
