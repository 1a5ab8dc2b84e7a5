"""``ask``: put the questions of an interview to the person, one line at a time."""

from __future__ import annotations

import sys
from pathlib import Path

from diagnose.case.loading import named
from diagnose.case.schema import LONGEST
from diagnose.cli import printing
from diagnose.cli.printing import remark, remark_lines
from diagnose.entry.in_words import is_story
from diagnose.entry.interview import Interview, new_case_path, outcomes
from diagnose.entry.picking import HELP, NO, YES, Reply, is_dont_know
from diagnose.entry.questions import (
    STORY,
    ChoiceQuestion,
    ConfirmQuestion,
    EngineQuestion,
    FindingQuestion,
    Question,
    TrialQuestion,
    is_safety,
)
from diagnose.output.documents.alarms import alarm_notices
from diagnose.output.documents.interview import (
    TRIAL_ANSWERS,
    BestGuess,
    best_guess,
    question_reason,
)
from diagnose.output.documents.review import review_document
from diagnose.output.documents.tell import AccountDocument, account_document
from diagnose.output.text.alarms import alarm_lines
from diagnose.output.text.interview import STOP_NOW, guess_lines, prompt_text, reason_lines
from diagnose.output.text.review_brief import review_brief
from diagnose.output.text.tell import account_lines, changed_lines
from knowledge.book import the_book
from knowledge.model import Severity

IN_WORDS = "a sentence is read as part of the story"
ENOUGH_NOT_KNOWN = 4  #: answers in a row that nobody knew, before looking is the better way
MOST_MISSES = 20  #: lines in a row that answer nothing, before a pipe is given up


def run_interview(path: Path | None, questions: int, by: str) -> None:
    """Ask until the person stops or no question is left; then print the review."""
    interview = Interview.begin(path or new_case_path(), the_book(), by, questions)
    name = named(interview.path)
    if interview.resumed:
        remark(f"Going on with {name}. {HELP}; {IN_WORDS}.")
        _show_alarms(interview)
    else:
        remark(f"Every answer is saved in {name} as it is given. {HELP}; {IN_WORDS}.")
    if not _ask_all(interview):
        saved = "everything is saved" if interview.saved else "nothing was said, nothing saved"
        remark(f"Stopped here; {saved}.")
    if interview.saved:
        document = review_document(interview.diagnosis(), str(interview.path))
        printing.answer(review_brief(document))


def _ask_all(interview: Interview) -> bool:
    """Put every question; False where the person or the input ended first."""
    misses = not_known = 0
    shown: Question | None = None
    guess: BestGuess | None = None
    account: AccountDocument | None = None
    while (question := interview.next_question()) is not None:
        if isinstance(question, ConfirmQuestion) and question is not shown:
            document = account_document(question.account, interview.book)
            again = isinstance(shown, ConfirmQuestion) and account is not None
            remark_lines(
                *(
                    changed_lines(account, document)
                    if again and account
                    else account_lines(document)
                )
            )
            account = document
        shown = question
        line = _read_line(prompt_text(question))
        if line is None:
            interview.finish()
            return False
        reply = interview.reply(line)
        if reply is Reply.STOP:
            return False
        if reply is None:
            misses = 0
            if interview.taken:
                remark(f"Taken as: {interview.taken}.", 2)
            not_known = not_known + 1 if is_dont_know(line) and line else 0
            guess = _after(interview, question, guess, not_known > 0)
            if not_known == ENOUGH_NOT_KNOWN and guess and guess.first:
                remark(
                    f"{not_known} in a row not known; looking tells more now: {guess.first}. Stop here "
                    f"and go on later with: diagnose ask {named(interview.path)}"
                )
        elif reply is not Reply.BACK and reply is not Reply.CHANGED:
            _explain(interview, question, reply, line)
            misses += 1
            if misses >= MOST_MISSES and not sys.stdin.isatty():
                remark(f"{MOST_MISSES} lines in a row answered no question.")
                return False
    if interview.ended:
        remark(interview.ended)
    return True


def _after(
    interview: Interview, question: Question, before: BestGuess | None, not_known: bool
) -> BestGuess | None:
    """Say what an answer changes: when to stop, and the best guess so far, which is returned.

    ``before``: the guess that was shown last, which is not shown again where nothing was known.
    """
    if is_safety(question) and not_known:
        remark("Then do not run it until you know: read a gauge, listen low on the block.")
        return before
    if is_safety(question):
        if any(a.severity is not Severity.CARE for a in interview.new_alarms()):
            remark(STOP_NOW)
        return before
    half = isinstance(question, EngineQuestion) and question.of is None
    if isinstance(interview.next_question(), ConfirmQuestion):
        return before
    if question is STORY or (half and isinstance(interview.next_question(), EngineQuestion)):
        return before
    _show_alarms(interview)
    guess = best_guess(interview.diagnosis())
    same = before is not None and (before.says, before.first) == (guess.says, guess.first)
    if not (same and not_known):
        remark_lines(*guess_lines(guess, before))
    return guess


def _explain(interview: Interview, question: Question, reply: Reply, line: str) -> None:
    """Say why the question is put again."""
    match reply:
        case Reply.WHY if isinstance(question, FindingQuestion | TrialQuestion):
            finding = question.finding
            names = TRIAL_ANSWERS if isinstance(question, TrialQuestion) else {}
            reason = question_reason(finding, outcomes(interview.diagnosis(), finding), names)
            remark_lines(*reason_lines(reason))
        case Reply.WHY if not isinstance(question, FindingQuestion | TrialQuestion):
            remark(question.why, 2)
        case Reply.FIRST:
            remark("There is no question before this one that can be asked again.", 2)
        case Reply.TOO_LONG:
            remark(f"That is too long: at most {LONGEST:,} characters.", 2)
        case _ if is_safety(question) and line.lower() in YES:
            remark(f"{STOP_NOW} Which: 1 zero, 2 a knock, 3 both?")
        case _ if isinstance(question, ChoiceQuestion) and line.lower() in YES:
            remark(f"Yes to which of them? {question.hint}", 2)
        case _ if isinstance(question, ChoiceQuestion) and line.lower() in NO:
            remark(f"Then which of them? {question.hint}", 2)
        case _ if reply is Reply.UNCLEAR and is_story(line):
            remark(f"Nothing in that was understood. {question.hint}", 2)
        case _:
            remark(question.hint, 2)


def _show_alarms(interview: Interview) -> None:
    """Show the alarms that were not shown before."""
    new = {a.says for a in interview.new_alarms()}
    alarms = alarm_notices(interview.diagnosis())
    remark_lines(*alarm_lines([a for a in alarms if a.says in new]))


def _read_line(prompt: str) -> str | None:
    """One line from the person; None at the end of the input."""
    remark_lines(prompt, end="")
    line = _input_line()
    if line is None or not sys.stdin.isatty():
        remark_lines("")
    return line


def _input_line() -> str | None:
    """The next line, however long, without keeping more of it than is needed; None at the end."""
    kept = ""
    while True:
        try:
            part = sys.stdin.readline(LONGEST)
        except OSError:
            part = ""
        if not part and not kept:
            return None
        if len(kept) <= 2 * LONGEST:
            kept += part
        if not part or part.endswith("\n"):
            return kept.strip()
