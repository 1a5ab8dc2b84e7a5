"""Faults that were seen or measured: found whatever the root cause is, and never lost again."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.bookcheck.fault_proofs import fault_proofs
from diagnose.bookcheck.shapes import Whole
from diagnose.case.loading import from_text
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.found import found_entries
from diagnose.reasoning.found_faults import FoundFault
from knowledge.book import the_book
from knowledge.faults import Fault
from knowledge.model import Finding, Kind, Stage
from knowledge.stations.pump.quantities import PUMP_COVER_HOLLOW
from tests.support.circuits import a_case
from tests.support.examples import examples

BOOK = the_book()
FAULTS = sorted(BOOK.faults.values(), key=lambda f: f.id)
PROOFS = sorted({p.id for f in FAULTS for p in f.proofs})
REPORTS = sorted(
    f.id for f in BOOK.findings.values() if f.kind is Kind.SEEN and f.stage is Stage.KNOWN
)


def found(*words: str, more: str = "", layout: str = "unknown") -> tuple[FoundFault, ...]:
    """The found faults of a case of these findings; a leading minus means looked for and absent."""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{more}\n'
    for i, word in enumerate(words, 1):
        state = "absent" if word.startswith("-") else "present"
        text += f'[[finding]]\nno = {i}\nwhat = "{word.lstrip("-")}"\nstate = "{state}"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK)).found_faults


def ids(faults: tuple[FoundFault, ...]) -> set[str]:
    return {f.fault.id for f in faults}


@pytest.mark.parametrize("fault", FAULTS, ids=lambda f: f.id)
def test_each_proof_alone_proves_its_fault(fault: Fault) -> None:
    for proof in fault.proofs:
        assert fault.id in ids(found(proof.id)), proof.id
        assert fault.id not in ids(found(f"-{proof.id}")), proof.id


@settings(max_examples=25, deadline=None)
@given(words=st.sets(st.sampled_from(REPORTS), max_size=5))
def test_a_complaint_is_no_found_fault(words: set[str]) -> None:
    assert found(*sorted(words)) == ()


@settings(max_examples=examples(25), deadline=None)
@given(
    before=st.sets(st.sampled_from(PROOFS), min_size=1, max_size=3),
    more=st.sets(st.sampled_from([*PROOFS, *REPORTS]), max_size=4),
)
def test_a_found_fault_never_vanishes_when_more_is_recorded(
    before: set[str], more: set[str]
) -> None:
    """But for one whose proof something else that was found explains: a bad valve, a stuck one."""
    recorded = before | more
    after = ids(found(*sorted(recorded)))
    for fault in (f.fault for f in found(*sorted(before)) if f.fault.id not in after):
        for proof in (p for p in fault.proofs if p.id in before):
            assert {f.id for f in fault.explained.get(proof, ())} & recorded, (fault.id, proof.id)


EXPLAINED = [(f, p, e) for f in FAULTS for p, those in f.explained.items() for e in those]


@pytest.mark.parametrize(("fault", "proof", "by"), EXPLAINED, ids=str)
def test_what_is_explained_proves_nothing(fault: Fault, proof: Finding, by: Finding) -> None:
    assert fault.id in ids(found(proof.id))
    assert fault.id not in ids(found(proof.id, by.id))


def test_what_is_doubtful_proves_nothing() -> None:
    doubtful = '[[finding]]\nno = 9\nwhat = "cover_grooved"\nstate = "present"\nsure = {}\n'
    assert ids(found(more=doubtful.format(0.6))) == set()
    assert ids(found(more=doubtful.format(0.9))) == {"pump_cover_leaks"}


def test_a_measured_value_over_its_limit_proves_the_fault() -> None:
    measured = '[[finding]]\nno = 9\nwhat = "pump_end_clearance"\nvalue = "{}"\n'
    assert ids(found(more=measured.format("0.010 in"))) == {"pump_cover_leaks"}
    assert ids(found(more=measured.format("0.002 in"))) == set()


def test_the_shares_of_the_origins_are_probabilities_and_likeliest_first() -> None:
    for fault in found("debris_on_relief_seat", "cover_grooved", "shells_wiped", "dipstick_low"):
        shares = [o.share for o in fault.origins]
        assert shares == sorted(shares, reverse=True)
        assert 0.0 < sum(shares) <= 1.0 + 1e-9


def test_the_form_of_the_metal_moves_its_origin() -> None:
    """Steel slivers speak for pump and drive, a workshop's grit for what was left inside."""

    def share(origin: str, *more: str) -> float:
        faults = found("debris_on_relief_seat", "gears_worn_out", *more)
        (held,) = (f for f in faults if f.fault.id == "relief_valve_held_open")
        return next((o.share for o in held.origins if o.node.id == origin), 0.0)

    assert share("dirt_in_assembly", "hard_chips") > 2 * share("dirt_in_assembly")
    assert share("metal_under_relief", "copper_flakes", "shells_wiped") > share(
        "metal_under_relief"
    )


def test_the_deciding_check_is_named_until_it_was_made() -> None:
    (held,) = found("debris_on_relief_seat")
    assert "magnet" in held.decides
    (held,) = (
        f
        for f in found("debris_on_relief_seat", "-magnetic_metal")
        if f.fault.id == "relief_valve_held_open"
    )
    assert held.decides == ""


def test_costs_name_quantities_of_the_circuit() -> None:
    known = {p.quantity for p in CIRCUIT_PARAMETERS.values()} | {PUMP_COVER_HOLLOW}
    for fault in FAULTS:
        assert set(fault.costs) <= known, fault.id


def test_a_fault_that_costs_nothing_at_idle_says_so() -> None:
    """It is not given a cost of zero."""
    low = ("700 rpm, 95 C, 31 psi", "3500 rpm, 95 C, 12 psi")
    (found,) = found_entries(Diagnosis(BOOK, a_case(readings=low, more="screen_blocked")))
    assert found.title.startswith("the pickup screen is covered: ")
    assert "costs 0" not in found.title
    assert "costs nothing at hot idle" in found.title or "almost nothing" in found.title


def test_no_pressure_is_stated_for_an_engine_nobody_knows() -> None:
    (known,) = found("debris_on_relief_seat", layout="distributor_v8")
    (unknown,) = found("debris_on_relief_seat")
    assert known.cost is not None
    assert known.cost.mean > 0
    assert unknown.cost is None


def test_the_book_of_faults_is_sound() -> None:
    assert fault_proofs(Whole(BOOK)).faults == ()


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        ({"proofs": ()}, "nothing proves it"),
        ({"origins": ()}, "nothing that it can come from"),
        ({"proofs": (BOOK.findings["needle_flickers"],)}, "needle_flickers is a report, no proof"),
        ({"origins": (BOOK.causes["sender_faulty"],)}, "sender_faulty does not lead to it"),
        ({"proofs": (replace(BOOK.findings["cover_grooved"]),)}, "no check reveals cover_grooved"),
        (
            {"proofs": (BOOK.findings["main_clearance_too_wide"],)},
            "clearance_set_wide often shows main_clearance_too_wide, and is no origin",
        ),
    ],
)
def test_a_broken_fault_is_told(changes: dict[str, object], says: str) -> None:
    whole = BOOK.faults["pump_cover_leaks"]
    broken = replace(whole, **changes)  # type: ignore[arg-type]
    book = replace(BOOK, faults={**BOOK.faults, broken.id: broken})
    assert any(says in line for line in fault_proofs(Whole(book)).faults)


def test_faults_share_no_id_with_other_words() -> None:
    others = set(BOOK.findings) | set(BOOK.causes) | set(BOOK.conditions) | set(BOOK.measures)
    assert not others & set(BOOK.faults)


def test_findings_that_prove_are_findings_of_parts() -> None:
    proofs: list[Finding] = [p for f in FAULTS for p in f.proofs]
    assert all(p.kind is Kind.SEEN and p.stage is not Stage.KNOWN for p in proofs)


def test_the_origins_agree_with_the_ranking() -> None:
    """A fault whose likeliest origin is the settled cause names it, and no other as likely."""
    text = (
        'schema = 1\n[engine]\nlayout = "skew_gear_six"\n'
        '[[finding]]\nno = 1\nwhat = "clearances_built_wide"\nstate = "present"\n'
        '[[finding]]\nno = 2\nwhat = "main_clearance_too_wide"\nstate = "present"\n'
        '[[finding]]\nno = 3\nwhat = "freshly_rebuilt"\nstate = "present"\n'
    )
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    [found] = answer.found_faults
    assert answer.ranking[0].cause.id == "clearance_set_wide"
    assert found.origins[0].node is answer.ranking[0].cause
    assert found.origins[0].share > 0.8
