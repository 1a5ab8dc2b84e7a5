"""The interview of ``ask`` on a terminal: questions, menus, and why something is asked."""

from __future__ import annotations

from diagnose.entry.questions import FindingQuestion, MenuQuestion, Question, TrialQuestion
from diagnose.output.documents.interview import QuestionReason
from diagnose.output.lines import headed, wrapped


def prompt_text(question: Question) -> str:
    """Render what stands before the place where the answer is typed."""
    if isinstance(question, TrialQuestion):
        return "\n".join(wrapped(question.asks)) + "\n  c / h / f / s / w / n: "
    if isinstance(question, FindingQuestion):
        return "\n".join(wrapped(question.asks)) + "\n  y / n / d: "
    return question.asks


def menu_lines(question: MenuQuestion) -> list[str]:
    """Render the title and the numbered choices of a menu."""
    lines = wrapped(question.title)
    for number, says in enumerate(question.choices, 1):
        lines += headed(f"{number:2}. ", says)
    return lines


def reason_lines(reason: QuestionReason) -> list[str]:
    """Render why a finding matters, what is normal, and what each answer would do."""
    lines = wrapped(reason.why, 2) if reason.why else []
    if reason.normal:
        lines += wrapped(f"Normal: {reason.normal}.", 2)
    for answer, outcome in reason.outcomes.items():
        lines += wrapped(f"if {answer}: {outcome}", 2, 4)
    return [*lines, *wrapped(f"Source: {reason.source}", 2, 4)]
