"""Why a question of ``ask`` is put, and what each answer would do."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from diagnose.inference.outcomes import Outcome
from knowledge.model import Finding


@dataclass(frozen=True, kw_only=True)
class QuestionReason:
    """Why a finding matters and what is normal (both may be empty), and what answers would do."""

    why: str
    normal: str
    outcomes: Mapping[str, str]  #: the leading cause after each answer
    source: str


#: what "yes" and "no" mean where the question is what a trial did
TRIAL_ANSWERS = {"yes": "cured", "no": "no difference"}


def question_reason(
    finding: Finding, outcomes: Mapping[str, Outcome], names: Mapping[str, str]
) -> QuestionReason:
    """Build the reason for asking about a finding from the outcome of each answer.

    ``names``: what an answer is called where not by its own name.
    """
    return QuestionReason(
        why=finding.why,
        normal=finding.normal,
        outcomes={
            names.get(
                answer, answer
            ): f"{outcome.leads.says} leads, {100 * outcome.leads_with:.0f} % likely"
            for answer, outcome in outcomes.items()
        },
        source=finding.source.title,
    )
