"""The interview: one question a screen, answered by buttons; every answer is saved at once."""

from __future__ import annotations

from typing import Any

from diagnose.entry.interview import Interview, outcomes
from diagnose.entry.picking import Reply
from diagnose.entry.questions import (
    CheckQuestion,
    ChoiceQuestion,
    ConfirmQuestion,
    FindingQuestion,
    NumbersQuestion,
    Question,
    TextQuestion,
    TrialQuestion,
    TriedQuestion,
)
from diagnose.output.documents.alarms import few_alarm_notices
from diagnose.output.documents.interview import TRIAL_ANSWERS, best_guess, question_reason
from diagnose.output.documents.tell import account_document
from diagnose.serve.exchange import Answer, Asked, address, go
from diagnose.serve.interviews import key_of
from diagnose.serve.screens.noting import offered
from diagnose.serve.screens.shared import PRESSURES
from diagnose.serve.site import Site, screen

#: answers to a plain question: what is typed for it, and the button
FINDING = (
    ("y", "Yes"),
    ("n", "No"),
    ("d", "Don’t know"),
    ("probably", "Probably"),
    ("probably not", "Probably not"),
)
TRIAL = (
    ("c", "It cured it"),
    ("h", "It helped"),
    ("f", "Cured for a while"),
    ("s", "No difference"),
    ("w", "Worse"),
    ("n", "Not tried"),
)
MOVED = "That question was answered in another place. This is the next one; nothing was lost."


def show(site: Site, asked: Asked) -> Answer:
    """Show the question that comes next; the end where none is left."""
    with site.interviews.of(site.folder.path(asked.job)) as interview:
        return _question(interview, asked)


def save(site: Site, asked: Asked) -> Answer:
    """Save the answer to the question that was shown, and go on to the next."""
    with site.interviews.of(site.folder.path(asked.job)) as interview:
        question = interview.next_question()
        if question is None or asked.text("question") != key_of(question):
            return _question(interview, asked, status=409, notice=MOVED)
        reply = interview.reply(line_of(question, asked))
        if reply is None or reply in (Reply.BACK, Reply.CHANGED):
            return go("job", asked.job, "ask")
        if reply is Reply.STOP:
            return go("job", asked.job)
        if reply is Reply.FIRST:
            fault = "There is no question before this one that can be asked again."
            return _question(interview, asked, status=400, notice=fault)
        if reply is Reply.WHY:
            return go("job", asked.job, "ask", why="1")
        fault = "That answers nothing here. " + _hint(question)
        return _question(interview, asked, status=400, faults=(fault,))


def line_of(question: Question, asked: Asked) -> str:
    """What one would type for the buttons pressed and fields filled in."""
    button = asked.text("answer")
    if button:
        return button
    match question:
        case NumbersQuestion():
            return _numbers(question, asked)
        case ConfirmQuestion():
            return _confirmed(question, asked)
        case TextQuestion():
            return asked.text("words").replace("\n", " ")
    return " ".join(asked.every("pick")) or asked.text("words").replace("\n", " ") or "?!"


def _numbers(question: NumbersQuestion, asked: Asked) -> str:
    """The figures in the order of the slots; what was left empty is not known."""
    words = asked.text("words")
    given = [asked.text(f"at:{slot.id}").replace(" ", "") for slot in question.slots]
    if words or not any(given):
        return words or "d"
    unit = asked.text("unit")
    return f"{' '.join(g.replace(',', '.') or '-' for g in given)} {unit if unit in PRESSURES else 'psi'}"


def _confirmed(question: ConfirmQuestion, asked: Asked) -> str:
    """Nothing where all facts are kept; else the numbers to strike."""
    kept = set(asked.every("pick"))
    return " ".join(str(n) for n, _ in question.account.kept if str(n) not in kept)


def _question(
    interview: Interview,
    asked: Asked,
    *,
    status: int = 200,
    notice: str = "",
    faults: tuple[str, ...] = (),
) -> Answer:
    question = interview.next_question()
    answer = interview.diagnosis()
    common: dict[str, Any] = {
        "back": (address("job", asked.job), "The job so far"),
        "status": status,
        "notice": notice,
        "faults": faults,
        "alarms": few_alarm_notices(answer),
        "guess": best_guess(answer),
    }
    if question is None:
        return screen("asked.html", asked, ended=interview.ended, **common)
    return screen(
        "ask.html",
        asked,
        question=question,
        form=_form(question),
        key=key_of(question),
        title=_title(question),
        left=getattr(question, "left", None),
        why=asked.query.get("why") and _why(interview, question),
        buttons=FINDING if isinstance(question, FindingQuestion) else TRIAL,
        units=PRESSURES,
        usual=offered(answer.case),
        account=account_document(question.account, interview.book)
        if isinstance(question, ConfirmQuestion)
        else None,
        many=_many(question),
        ticks=_ticks(question),
        others=_others(question),
        **common,
    )


def _form(question: Question) -> str:
    """How a question is answered."""
    match question:
        case FindingQuestion() | TrialQuestion():
            return "buttons"
        case NumbersQuestion():
            return "numbers"
        case TextQuestion():
            return "words"
        case ConfirmQuestion():
            return "facts"
    return "choices"


def _many(question: Question) -> bool:
    """Whether several choices may be true at once."""
    if isinstance(question, ChoiceQuestion):
        return question.menu.many
    return isinstance(question, TriedQuestion | CheckQuestion)


def _ticks(question: Question) -> list[tuple[int, str]]:
    """The choices to tick, with the numbers one types; that none is true is a button."""
    match question:
        case ChoiceQuestion():
            there = enumerate(question.choices, 1)
            return [(n, c.says) for n, c in there if c.there or not question.menu.many]
        case TriedQuestion() | CheckQuestion():
            return list(enumerate(question.says, 1))
    return []


def _others(question: Question) -> list[tuple[str, str]]:
    """Buttons besides the choices, where several of these may be true."""
    match question:
        case CheckQuestion():
            return [("0", "None of these"), ("n", "Not done")]
        case TriedQuestion():
            return [("n", "None of these"), ("d", "Don’t know")]
        case ChoiceQuestion() if none := [c.says for c in question.choices if not c.there]:
            return [("n", f"{none[0][:1].upper()}{none[0][1:]}"), ("d", "Don’t know")]
    return [("d", "Don’t know")]


def _title(question: Question) -> str:
    """The question without what it says of typing."""
    match question:
        case TextQuestion():
            return "What is it, and what does it do?"
        case ConfirmQuestion():
            return "Is this right?"
        case NumbersQuestion():
            return "What did the gauge show?"
        case FindingQuestion():
            return question.finding.asks
        case TrialQuestion() if not question.made:
            return question.trial.asks
        case ChoiceQuestion():
            return question.menu.asks
        case CheckQuestion():
            return f"Done already: {question.inspection.says}? If so, what did it show?"
        case TriedQuestion():
            return "Which of these have been tried?"
    return question.asks


def _hint(question: Question) -> str:
    match question:
        case ConfirmQuestion():
            return "Take the tick from what is wrong."
        case NumbersQuestion():
            return "Write figures like 12, or words like: 5 psi at hot idle."
        case _ if _many(question):
            return "Tick what is true, or press one of the buttons below."
    return "Press one of the buttons."


def _why(interview: Interview, question: Question) -> list[str]:
    """Why it is asked, and what each answer would do."""
    if not isinstance(question, FindingQuestion | TrialQuestion):
        return [question.why]
    names = TRIAL_ANSWERS if isinstance(question, TrialQuestion) else {}
    reason = question_reason(
        question.finding, outcomes(interview.diagnosis(), question.finding), names
    )
    lines = [reason.why, f"Normal: {reason.normal}." if reason.normal else ""]
    lines += [f"If {answer}: {outcome}." for answer, outcome in reason.outcomes.items()]
    return [line for line in (*lines, f"Source: {reason.source}") if line]
