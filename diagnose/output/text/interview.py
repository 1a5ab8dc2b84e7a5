"""The interview of ``ask`` on a terminal: questions, menus, and why something is asked."""

from __future__ import annotations

from collections.abc import Mapping

from diagnose.entry.questions import FindingQuestion, MenuQuestion, Question
from diagnose.inference.outcomes import Outcome
from diagnose.output.lines import headed, wrapped
from knowledge.model import Finding


def prompt_text(question: Question) -> str:
    """Render what stands before the place where the answer is typed."""
    if isinstance(question, FindingQuestion):
        return "\n".join(wrapped(question.asks)) + "\n  y / n / d: "
    return question.asks


def menu_lines(question: MenuQuestion) -> list[str]:
    """Render the title and the numbered choices of a menu."""
    lines = wrapped(question.title)
    for number, says in enumerate(question.choices, 1):
        lines += headed(f"{number:2}. ", says)
    return lines


def why_lines(finding: Finding, outcomes: Mapping[str, Outcome]) -> list[str]:
    """Render why a finding matters, what is normal, and what each answer would do."""
    lines = wrapped(finding.why, 2) if finding.why else []
    if finding.normal:
        lines += wrapped(f"Normal: {finding.normal}.", 2)
    for answer, outcome in outcomes.items():
        likely = f"{100 * outcome.leads_with:.0f} % likely"
        lines += wrapped(f"if {answer}: {outcome.leads.says} leads, {likely}", 2, 4)
    lines += wrapped(f"Source: {finding.source.title}", 2, 4)
    return lines
