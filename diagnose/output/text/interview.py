"""The interview of ``ask`` on a terminal: questions, choices, the best guess, why it is asked."""

from __future__ import annotations

from diagnose.entry.questions import (
    CheckQuestion,
    ChoiceQuestion,
    EngineQuestion,
    FindingQuestion,
    NumbersQuestion,
    Question,
    TextQuestion,
    TrialQuestion,
    TriedQuestion,
)
from diagnose.output.documents.interview import BestGuess, QuestionReason
from diagnose.output.lines import headed, percent, wrapped

STOP_NOW = "STOP THE ENGINE now. Do not run it again until the cause is found."
IN_ONE_LINE = 28  #: columns of the longest choice that is printed in a line with others


def prompt_text(question: Question) -> str:
    """Render what stands before the place where the answer is typed."""
    lines = wrapped(question.asks)
    match question:
        case TrialQuestion():
            legend = (
                "c cured, h helped, f cured for a while, s no difference, w worse, n not tried:"
            )
            return "\n".join([*lines, *wrapped(legend, 2, 2)]) + " "
        case FindingQuestion():
            return "\n".join(lines) + "\n  y yes, n no, d don't know: "
        case NumbersQuestion() | TextQuestion():
            return "\n".join(lines) + "\n  : "
        case ChoiceQuestion() | EngineQuestion():
            return _with_choices(lines, question.says, "d don't know")
        case TriedQuestion():
            return _with_choices(lines, question.says, "n none, d don't know")
        case CheckQuestion():
            return _with_choices(lines, question.says, "0 none of these, n not done")
    return "\n".join(lines) + " "


def _with_choices(lines: list[str], choices: tuple[str, ...], others: str) -> str:
    """The question with its numbered choices: short ones in a line, long ones below each other."""
    numbered = [f"{number} {says}" for number, says in enumerate(choices, 1)]
    if max(map(len, choices)) <= IN_ONE_LINE:
        return "\n".join([*lines, *wrapped(f"{', '.join(numbered)}, {others}: ", 2, 2)]) + " "
    for number, says in enumerate(choices, 1):
        lines += headed(f"{number:2}. ", says)
    return "\n".join([*lines, f"  {others}: "])


def guess_lines(guess: BestGuess, before: BestGuess | None = None) -> list[str]:
    """Render the best guess and what to do first; ``before``: the guess that was shown last."""
    share = f" ({percent(guess.probability)})" if guess.says else ""
    if before and (before.says, before.first) == (guess.says, guess.first):
        return wrapped(f"Best guess and first step as before{share}.{_moved(guess, before)}", 0, 2)
    likely = guess.says or "nothing stands out yet"
    first = f" First: {guess.first}." if guess.first else ""
    return wrapped(f"Best guess so far: {likely}{share}.{first}", 0, 2)


def _moved(guess: BestGuess, before: BestGuess) -> str:
    """What the answer did all the same: the cause that became likelier or less likely."""
    moved = guess.moved_since(before)
    if moved is None:
        return ""
    says, then, now = moved
    way = "Likelier" if now > then else "Less likely"
    return f" {way} now: {says} ({percent(then)}, now {percent(now)})."


def reason_lines(reason: QuestionReason) -> list[str]:
    """Render why a finding matters, what is normal, and what each answer would do."""
    lines = wrapped(reason.why, 2) if reason.why else []
    if reason.normal:
        lines += wrapped(f"Normal: {reason.normal}.", 2)
    for answer, outcome in reason.outcomes.items():
        lines += wrapped(f"if {answer}: {outcome}", 2, 4)
    return [*lines, *wrapped(f"Source: {reason.source}", 2, 4)]
