"""What ``review`` shows of a diagnosis, without the command line."""

from __future__ import annotations

from typing import Any

from diagnose.diagnosis import Diagnosis
from diagnose.output.as_json import as_json
from diagnose.output.documents.next_checks import next_checks
from diagnose.output.documents.reasons import is_settled
from diagnose.output.documents.review import review_document
from diagnose.output.text.next_step import next_step_lines
from diagnose.output.text.review import review_text


def next_step(diagnosis: Diagnosis, path: str) -> list[str]:
    """Return the lines of the next check, with the command for this case file."""
    return next_step_lines(next_checks(diagnosis), path, settled=is_settled(diagnosis))


def review(diagnosis: Diagnosis, path: str) -> str:
    """Return the review as printed, with the command for this case file."""
    return review_text(review_document(diagnosis, path))


def review_data(diagnosis: Diagnosis) -> dict[str, Any]:
    """Return the review as the object that ``--json`` prints."""
    return as_json(review_document(diagnosis, "", for_json=True))
