"""The next check of a case as ``review`` prints it, without the rest of the review."""

from __future__ import annotations

from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.next_checks import next_checks
from diagnose.output.documents.reasons import is_settled
from diagnose.output.text.next_step import next_step_lines


def next_step(diagnosis: Diagnosis, path: str) -> list[str]:
    """Return the lines of the next check, with the command for this case file."""
    return next_step_lines(next_checks(diagnosis), path, settled=is_settled(diagnosis))
