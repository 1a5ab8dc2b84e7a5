"""Diagnose low, lost or flickering engine oil pressure: the library.

Load or build a case, then ask for what follows from it::

    from diagnose import CaseBuilder, diagnose

    job = CaseBuilder(title="Plover, yard launch", layout="skew_gear_four")
    job.finding("needle_flickers")
    job.reading("650 rpm 85 C 6 psi direct")
    answer = diagnose(job.build())
    answer.ranking[0].cause.says

``import diagnose`` loads nothing else; each name is loaded when it is first used. Every name in
``__all__`` is public. All errors a caller can act on are ``UserError``; its text is one line for
each fault.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING

__version__ = "0.1.0"

__all__ = [
    "Answer",
    "BadCaseError",
    "Bearings",
    "Budget",
    "CannotWriteError",
    "Card",
    "Case",
    "CaseBuilder",
    "Diagnosis",
    "Expected",
    "Forecast",
    "FoundFault",
    "NoCaseError",
    "OutOfScopeError",
    "Plan",
    "ReadingInput",
    "RecordDocument",
    "ReviewDocument",
    "Sizing",
    "Survey",
    "Understanding",
    "UsageError",
    "UserError",
    "__version__",
    "as_json",
    "budget",
    "diagnose",
    "engine_card",
    "expected",
    "find_words",
    "forecast",
    "judge_bearings",
    "learned_factors",
    "load_case",
    "parse_answer",
    "parse_case",
    "parse_reading",
    "parse_value",
    "plan",
    "read_words",
    "record_words",
    "review",
    "sizing",
    "survey",
]

if TYPE_CHECKING:
    from diagnose.bearings.table import Bearings
    from diagnose.case.card import Card
    from diagnose.case.case import Case
    from diagnose.circuit.budget import Budget
    from diagnose.circuit.expected import Expected
    from diagnose.circuit.forecast import Forecast
    from diagnose.circuit.sizing import Sizing
    from diagnose.circuit.survey import Survey
    from diagnose.diagnosis import Diagnosis
    from diagnose.entry.answers import Answer, parse_answer
    from diagnose.entry.case_builder import CaseBuilder
    from diagnose.entry.readings import ReadingInput, parse_reading
    from diagnose.errors import (
        BadCaseError,
        CannotWriteError,
        NoCaseError,
        OutOfScopeError,
        UsageError,
        UserError,
    )
    from diagnose.library import (
        budget,
        diagnose,
        engine_card,
        expected,
        find_words,
        forecast,
        judge_bearings,
        learned_factors,
        load_case,
        parse_case,
        parse_value,
        plan,
        read_words,
        record_words,
        review,
        sizing,
        survey,
    )
    from diagnose.output.as_json import as_json
    from diagnose.output.documents.record import RecordDocument
    from diagnose.output.documents.review import ReviewDocument
    from diagnose.reasoning.found_faults import FoundFault
    from diagnose.teardown.plan import Plan
    from diagnose.understanding.words.facts import Understanding
else:
    _HOMES = {
        "diagnose.bearings.table": ("Bearings",),
        "diagnose.case.card": ("Card",),
        "diagnose.case.case": ("Case",),
        "diagnose.circuit.budget": ("Budget",),
        "diagnose.circuit.expected": ("Expected",),
        "diagnose.circuit.forecast": ("Forecast",),
        "diagnose.circuit.sizing": ("Sizing",),
        "diagnose.circuit.survey": ("Survey",),
        "diagnose.diagnosis": ("Diagnosis",),
        "diagnose.entry.answers": ("Answer", "parse_answer"),
        "diagnose.entry.case_builder": ("CaseBuilder",),
        "diagnose.entry.readings": ("ReadingInput", "parse_reading"),
        "diagnose.errors": (
            "BadCaseError",
            "CannotWriteError",
            "NoCaseError",
            "OutOfScopeError",
            "UsageError",
            "UserError",
        ),
        "diagnose.reasoning.found_faults": ("FoundFault",),
        "diagnose.library": (
            "budget",
            "diagnose",
            "engine_card",
            "expected",
            "find_words",
            "forecast",
            "judge_bearings",
            "learned_factors",
            "load_case",
            "parse_case",
            "parse_value",
            "plan",
            "read_words",
            "record_words",
            "review",
            "sizing",
            "survey",
        ),
        "diagnose.output.as_json": ("as_json",),
        "diagnose.output.documents.record": ("RecordDocument",),
        "diagnose.output.documents.review": ("ReviewDocument",),
        "diagnose.teardown.plan": ("Plan",),
        "diagnose.understanding.words.facts": ("Understanding",),
    }
    _HOME = {name: module for module, names in _HOMES.items() for name in names}

    def __getattr__(name: str) -> object:
        """Load a public name when it is first used."""
        if name not in _HOME:
            raise AttributeError(f"module 'diagnose' has no attribute '{name}'")
        value = getattr(import_module(_HOME[name]), name)
        globals()[name] = value
        return value

    def __dir__() -> list[str]:
        return sorted({*globals(), *__all__})
