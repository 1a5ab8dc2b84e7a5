"""Why a question of ``ask`` is put, and what each answer would do."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from diagnose.diagnosis import Diagnosis
from diagnose.entry.known import Known, next_check
from diagnose.inference.outcomes import Outcome
from diagnose.output.documents.stations import stands_out
from knowledge.model import Finding

MOVED = 0.02  #: least change of a probability that is worth a word


@dataclass(frozen=True, kw_only=True)
class QuestionReason:
    """Why a finding matters and what is normal (both may be empty), and what answers would do."""

    why: str
    normal: str
    outcomes: Mapping[str, str]  #: the leading cause after each answer
    source: str


@dataclass(frozen=True, kw_only=True)
class BestGuess:
    """Where it probably is, in short, and what to do first."""

    says: str  #: the likeliest cause; empty where none stands out
    probability: float
    first: str  #: empty where nothing is left to check
    shares: Mapping[str, float]  #: probability of each cause, by its words in short

    def moved_since(self, before: BestGuess) -> tuple[str, float, float] | None:
        """The cause whose probability an answer moved most, then and now; None for hardly any."""
        shifts = {says: (before.shares.get(says, 0.0), now) for says, now in self.shares.items()}
        says, (then, now) = max(shifts.items(), key=lambda s: abs(s[1][1] - s[1][0]))
        return (says, then, now) if abs(now - then) >= MOVED else None


def best_guess(diagnosis: Diagnosis) -> BestGuess:
    """Build the best guess so far."""
    known, choice, likeliest = Known.of(diagnosis), next_check(diagnosis), None
    step = known.first_step
    if stands_out(diagnosis):
        likeliest = diagnosis.ranking[0]
    first = step.says if step else known.left_of(choice.inspection) if choice else ""
    if not diagnosis.may_run:
        first = f"engine off; then {first}" if first else "engine off"
    return BestGuess(
        says=likeliest.cause.says.partition(":")[0] if likeliest else "",
        probability=likeliest.probability if likeliest else 0.0,
        first=first,
        shares={r.cause.says.partition(":")[0]: r.probability for r in diagnosis.ranking},
    )


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
