"""Documents hold plain values, not results of reasoning, so that a renderer has nothing to compute."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from enum import Enum
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from diagnose.bearings.table import bearings_of
from diagnose.case.loading import load
from diagnose.circuit.budget import budget
from diagnose.circuit.forecast import forecast
from diagnose.circuit.settings import setting
from diagnose.circuit.survey import survey
from diagnose.diagnosis import Diagnosis
from diagnose.history.learning import learned_from
from diagnose.history.shop import read_shop
from diagnose.lookup.finder import KINDS, words_of
from diagnose.output.documents.bearings import bearings_document
from diagnose.output.documents.budget import budget_document
from diagnose.output.documents.cause_graph import leading_causes_graph
from diagnose.output.documents.first_start import first_start_document
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.documents.glance import glance_document
from diagnose.output.documents.history import history_document
from diagnose.output.documents.lookup import list_document, show_document
from diagnose.output.documents.report import report_document
from diagnose.output.documents.review import review_document
from diagnose.output.documents.signoff import signoff_document, start_expected
from diagnose.output.documents.survey import survey_document
from diagnose.output.documents.teardown import teardown_document
from diagnose.planning.choosing import SURE
from diagnose.signoff.parts import parts_list
from diagnose.signoff.sheet import Signoff
from diagnose.signoff.start import first_start
from diagnose.teardown.changes import Changes
from diagnose.teardown.loose_ends import loose_ends
from diagnose.teardown.plan import Plan, PlanRequest
from knowledge.book import the_book
from tests.support.command_line import ROOT
from tests.support.examples import one_in

BOOK = the_book()
PLAIN = {str, int, float, bool, type(None)}
#: plain values from below that documents show as they are
SHARED = {"Band", "Likelihood", "ReliefCost", "RepairWarning"}


def strays(value: Any, where: str) -> Iterator[str]:
    """Return the place and type of all that is no plain value, in a document and below it."""
    if is_dataclass(value):
        kind = type(value)
        if not kind.__module__.startswith("diagnose.output.") and kind.__name__ not in SHARED:
            yield f"{where}: {kind.__name__}"
        for each in fields(value):
            yield from strays(getattr(value, each.name), f"{where}.{each.name}")
    elif isinstance(value, tuple | list):
        for i, each in enumerate(value):
            yield from strays(each, f"{where}[{i}]")
    elif isinstance(value, Mapping):
        for key, each in value.items():
            yield from strays(key, f"{where} key")
            yield from strays(each, f"{where}[{key!r}]")
    elif not isinstance(value, Enum) and type(value) not in PLAIN:
        yield f"{where}: {type(value).__name__}"


@cache
def documents(name: str) -> dict[str, object]:
    """Return the documents of a case that has readings, measured values and an end."""
    path = ROOT / "cases" / f"{name}.toml"
    case, earlier = load(path, BOOK), load(path, BOOK, 3)
    diagnosis = Diagnosis(BOOK, case)
    plan = Plan(diagnosis, PlanRequest(until=SURE))
    changes = Changes(3, Plan(Diagnosis(BOOK, earlier), plan.request), plan)
    sheet = Signoff(diagnosis, SURE, whole=True)
    needed = parts_list(sheet.causes, sheet.places, case.features.get, BOOK)
    shop = read_shop(ROOT / "cases", BOOK)
    repairs = [setting("main_clearance=0.0025 in"), setting("relief_setting=60 psi")]
    return {
        "review": review_document(diagnosis, "case.toml", for_json=True),
        "survey": survey_document(survey(case, BOOK), case),
        "budget": budget_document(budget(case), case),
        "bearings": bearings_document(bearings_of(case), "case.toml"),
        "forecast": forecast_document(forecast(case, repairs)),
        "graph": leading_causes_graph(diagnosis),
        "report": report_document(plan, Signoff(diagnosis, SURE)),
        "teardown": teardown_document(
            plan, loose_ends(diagnosis, SURE), "case.toml", changes=changes
        ),
        "signoff": signoff_document(sheet, needed, "case.toml", start=start_expected(sheet)),
        "first start": first_start_document(first_start(case, BOOK), sheet, "case.toml"),
        "glance": glance_document(diagnosis, ["cause: another"]),
        "history": history_document(shop, learned_from(shop.counted(), BOOK), BOOK),
    }


COMMANDS = [
    "review", "survey", "budget", "bearings", "forecast", "graph", "report",
    "teardown", "signoff", "first start", "glance", "history",
]  # fmt: skip


@pytest.mark.parametrize("command", COMMANDS)
@pytest.mark.parametrize("name", one_in(2, ["gannet", "tern"]))
def test_a_document_holds_plain_values(command: str, name: str) -> None:
    """Strings, numbers, tuples, mappings and nested documents; neither arrays nor results."""
    assert not list(strays(documents(name)[command], command))


@pytest.mark.parametrize("kind", KINDS)
def test_a_document_of_words_holds_plain_values(kind: str) -> None:
    words = words_of(BOOK, kind)
    assert not list(strays(list_document(kind, words), kind))
    assert not list(strays(show_document(words[:3], BOOK), kind))


def test_a_result_in_a_document_is_found() -> None:
    """The walk above sees what it looks for, also below tuples and mappings."""
    diagnosis = Diagnosis(BOOK, load(ROOT / "cases" / "gannet.toml", BOOK))
    assert list(strays((1, {"a": [diagnosis.case.job]}), "top")) != []
    assert list(strays(Path("case.toml"), "top")) == ["top: PosixPath"]
