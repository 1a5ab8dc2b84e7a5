"""Documents of the review: what rests on what, weights at their limits, openings, what is left out."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.inference.explain import Weight
from diagnose.output.documents import next_checks as checks
from diagnose.output.documents import review as review_module
from diagnose.output.documents.contradictions import Behind, behind_it
from diagnose.output.documents.ranking import others
from diagnose.output.documents.reasons import chain_in_words, evidence_items, in_short, is_settled
from diagnose.output.documents.review import review_document
from knowledge.alarm import Contradiction
from knowledge.book import the_book
from knowledge.cautions import CAUTIONS
from knowledge.work import Access, Caution
from tests.output.test_review_shown import FLICKERS, diagnosis_of, document, survey_item
from tests.support.command_line import ROOT
from tests.support.complaints import inferred

BOOK = the_book()


# ------------------------------------------------------------------------ the answer in a sentence


@pytest.mark.parametrize(
    ("first", "begins"), [(0.3, "not clear"), (0.5, "most likely"), (0.95, "almost certainly")]
)
@pytest.mark.parametrize("rest", [0.05, 0.29])
def test_the_first_cause_decides_and_no_other(first: float, begins: str, rest: float) -> None:
    ranking = [
        SimpleNamespace(cause=SimpleNamespace(says=says), probability=p, began=p)
        for says, p in (("the first", first), ("another", rest), ("the last", rest / 2))
    ]
    answer: Any = SimpleNamespace(
        ranking=ranking, inference=inferred(ranking), case=None, alarms=("one",)
    )
    assert in_short(answer).startswith(begins)
    assert "the first" in in_short(answer)
    assert is_settled(answer) is (first >= 0.9)


def test_a_likely_cause_that_another_brought_about_settles_nothing() -> None:
    damage: Any = SimpleNamespace(
        cause=SimpleNamespace(says="the damage"), probability=0.95, began=0.5
    )
    answer: Any = SimpleNamespace(
        ranking=[damage], inference=inferred([damage]), case=None, alarms=("one",)
    )
    assert not is_settled(answer)
    assert (
        in_short(answer)
        == "almost certainly the damage (95 % likely); where that came from is not known yet"
    )


# ------------------------------------------------------------------------ weights


@pytest.mark.parametrize(
    ("absent", "present", "fit", "odds"),
    [(0.5, 0.5, "fit", "1 to 1"), (0.35, 0.65, "fit", "2 to 1"),
     (0.65, 0.35, "do not fit", "2 to 1"), (0.01, 0.5, "fit", "50 to 1"),
     (0.5, 0.01, "do not fit", "50 to 1")],
)  # fmt: skip
def test_the_odds_of_a_survey(absent: float, present: float, fit: str, odds: str) -> None:
    item, condition = survey_item(absent, present)
    assert (
        item.says == f"the readings {fit} a known fault of the circuit ({odds}): {condition.says}"
    )


def denied() -> Diagnosis:
    text = 'schema = 1\n[[finding]]\nno = 1\nwhat = "needle_flickers"\nstate = "absent"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize("decibans", [0.1, 0.9, -0.1, -0.9])
def test_the_slightest_weight_counts_by_its_sign(decibans: float) -> None:
    answer = denied()
    given = [Weight(FLICKERS.id, decibans, ())]
    pro, con = (evidence_items(answer, given, sign) for sign in (1, -1))
    assert (len(pro), len(con)) == ((1, 0) if decibans > 0 else (0, 1))
    (item,) = pro or con
    assert item.says.endswith("(rules out rivals)") is (decibans > 0)
    present = diagnosis_of("plover")
    nodes = tuple(present.inference.graph.nodes)[:2]
    shown = chain_in_words(present, [Weight(FLICKERS.id, decibans, (*nodes, FLICKERS.id))])
    assert bool(shown) is (decibans > 0)
    assert chain_in_words(present, [Weight(FLICKERS.id, 0.0, (*nodes, FLICKERS.id))]) == ""


def test_the_chain_is_of_the_strongest_of_the_four_shown() -> None:
    answer = diagnosis_of("plover")
    nodes = list(answer.inference.graph.nodes)
    short = Weight(FLICKERS.id, 9.0, (nodes[0], FLICKERS.id))
    chains = [(nodes[i], nodes[i + 1], FLICKERS.id) for i in range(3)]
    weak, strong, fifth = (
        Weight(FLICKERS.id, d, chain) for d, chain in zip((2.0, 6.0, 1.0), chains, strict=True)
    )
    says = str(answer.inference.graph.nodes[nodes[1]]["says"])
    assert chain_in_words(answer, [short, strong, weak]).startswith(says)
    assert chain_in_words(answer, [short, weak, strong]).startswith(says)
    assert chain_in_words(answer, [short] * 4 + [fifth]) == "", "the fifth is not shown"
    assert chain_in_words(answer, [short] * 3 + [fifth]) != ""


def test_a_cause_as_likely_as_the_last_one_shown_needs_no_excuse() -> None:
    same = tuple(replace(document().causes[0], probability=p) for p in (0.6, 0.3, 0.3))
    assert "come last" not in others(same, 2, loss_is_real=True)
    worse = (*same[:2], replace(same[2], probability=0.31))
    assert "come last" in others(worse, 2, loss_is_real=True)


def test_evidence_for_and_against_stands_on_its_side() -> None:
    """Of every cause that has any: for with weight above zero, against below."""
    answer = Diagnosis(BOOK, load(ROOT / "cases" / "tern.toml", BOOK))
    found = review_document(answer, "x", for_json=True).causes
    assert any(c.pro for c in found)
    assert any(c.con for c in found)
    for cause in found:
        assert all(item.decibans > 0 for item in cause.pro)
        assert all(item.decibans < 0 for item in cause.con)


# ------------------------------------------------------------------------ what a contradiction rests on


def test_everything_behind_a_contradiction_is_found() -> None:
    """Each finding once, also where two of them rest on the same third."""
    x, y, z, w = (
        BOOK.findings[f] for f in ("oil_milky", "bearing_knock", "needle_flickers", "blue_smoke")
    )
    clearance, gap = BOOK.measures["main_clearance"], BOOK.measures["pickup_gap"]

    def trace(*premises: object, measures: tuple[object, ...] = (), read: bool = False) -> Any:
        return SimpleNamespace(premises=premises, measures=measures, read=read, reported=False)

    # keys need only differ
    keys = [type("Key", (), {"finding": f})() for f in (y, w, x)]
    derived = {
        keys[0]: trace(z, w, measures=(clearance,)),
        keys[1]: trace(z),
        keys[2]: trace(measures=(gap,), read=True),
    }
    result = SimpleNamespace(derived=derived, contradictions={})
    answer: Any = SimpleNamespace(inference=SimpleNamespace(result=result))
    behind = behind_it(answer, Contradiction((x, y), "both", x))
    assert behind == Behind(frozenset({x, y, z, w}), frozenset({clearance, gap}), readings=True)


# ------------------------------------------------------------------------ the way to a check


def test_openings_that_take_time_or_must_be_recorded_are_shown(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """What is open already and leaves nothing to record is passed over, with its cautions."""
    monkeypatch.setattr(checks, "gain", lambda *_: 0.5)
    known = SimpleNamespace(left_of=lambda check: check.says)
    monkeypatch.setattr(checks, "Known", SimpleNamespace(of=lambda _: known))
    minutes = {
        Access.SUMP_OFF: 0.0, Access.DRAINED: 10.0, Access.PICKUP_OFF: 0.0, Access.PUMP_OFF: 5.0,
    }  # fmt: skip
    kept = {Access.PICKUP_OFF: "the mark", Access.PUMP_OFF: "the angle"}
    cautions = {
        Access.SUMP_OFF: (Caution.ASBESTOS,), Access.DRAINED: (Caution.HOT,),
        Access.PICKUP_OFF: (Caution.BATTERY,), Access.PUMP_OFF: (Caution.HOT,),
    }  # fmt: skip
    way = [
        SimpleNamespace(access=a, says=a.value, keep=kept.get(a, ""), cautions=cautions[a])
        for a in minutes
    ]
    tree = SimpleNamespace(minutes=minutes.get, opening_minutes=len)
    model = SimpleNamespace(weight=None)
    answer: Any = SimpleNamespace(
        planner=SimpleNamespace(tree=tree, single_cause_model=model),
        case=SimpleNamespace(known_features={}),
    )
    look = SimpleNamespace(id="look", says="look", keep="", cautions=(Caution.SOLVENT,))
    option: Any = SimpleNamespace(
        inspection=look, way=way, minutes=20.0, findings=(), view=SimpleNamespace(rows=None)
    )
    found = checks._check(answer, option)
    assert [(o.says, o.minutes, o.keep) for o in found.openings] == [
        ("drained", 10.0, ""), ("pickup_off", 0.0, "the mark"), ("pump_off", 5.0, "the angle"),
    ]  # fmt: skip
    assert found.opens == tuple(minutes)
    wanted = [w.says for c in (Caution.HOT, Caution.BATTERY, Caution.SOLVENT) for w in CAUTIONS[c]]
    assert list(found.warnings) == wanted


# ------------------------------------------------------------------------ the document of a review


def test_the_missing_pressure_is_worked_out_for_people_only(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """The data for programs leave it out: it takes the oil circuit."""
    asked: list[object] = []

    def missing(diagnosis: object) -> str:
        asked.append(diagnosis)
        return "3 psi are missing"

    monkeypatch.setattr(review_module, "_still_missing", missing)
    answer = diagnosis_of("plover")
    assert review_document(answer, "x", for_json=True).still_missing == ""
    assert asked == []
    assert review_document(answer, "x").still_missing == "3 psi are missing"
    assert review_document(answer, "x", for_json=False).still_missing == "3 psi are missing"
    assert asked == [answer, answer]


HEAD = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
READ = '[[reading]]\nno = 1\nrpm = "700 rpm"\noil = "95 C"\npressure = "8 psi"\ngauge = "direct"\n'
MEASURED = '[[finding]]\nno = 2\nwhat = "main_clearance"\nvalue = "0.006 in"\n'


@pytest.mark.parametrize(
    ("text", "wanted"),
    [(READ, False), (MEASURED, False), ("", False), (READ + MEASURED, True),
     (READ.replace("700", "1200") + MEASURED, True)],
)  # fmt: skip
def test_pressure_is_missing_only_where_it_was_read_and_something_measured(
    text: str, wanted: bool
) -> None:
    """A reading between idle and speed, where there is no other, is compared at its own speed."""
    answer = Diagnosis(BOOK, from_text(HEAD + text, None, BOOK))
    assert bool(review_document(answer, "x").still_missing) is wanted


def test_a_document_names_its_file_and_its_sets(tmp_path: Path) -> None:
    text = (ROOT / "cases" / "petrel.toml").read_text("utf-8")
    path = tmp_path / "a.toml"
    path.write_text(text, "utf-8")
    named = review_document(Diagnosis(BOOK, load(path, BOOK)), "a.toml", for_json=True)
    assert (named.case, named.path) == (str(path), "a.toml")
    assert review_document(diagnosis_of("plover"), "x").case is not None
    unsaved = Diagnosis(BOOK, from_text(text, None, BOOK))
    assert review_document(unsaved, "x", for_json=True).case is None
    for each in named.explanations:
        says = " and ".join(BOOK.causes[c].says for c in each.causes)
        assert each.says == (says or "some cause further down, none of the first few")
    assert any(each.causes for each in named.explanations)
    rest: Any = SimpleNamespace(causes=(), share=0.1)
    assert review_module._cause_set(unsaved, rest).says.startswith("some cause further down")
