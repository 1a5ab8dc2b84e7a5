"""An interview over one case file: which question comes next, and what an answer does to the case.

As an expert on the telephone asks: safety first, then the story in the person's own words, then
what is missing of the essentials, then the questions that could still change the next check.
Every answer is saved at once; prompting and printing are the caller's::

    interview = Interview.begin(Path("petrel.toml"), the_book())
    while (question := interview.next_question()) is not None:
        if interview.reply(input(question.asks)) is Reply.STOP:
            break
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from datetime import date
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.disk import ready
from diagnose.case.loading import from_text, load, read_text
from diagnose.case.schema import LONGEST
from diagnose.case.writing import NewEntry, append_by, append_job, start
from diagnose.diagnosis import Diagnosis
from diagnose.entry.agenda import Agenda
from diagnose.entry.answered import Answered, engine_fields, new_entries
from diagnose.entry.answered_by_story import safety_left
from diagnose.entry.confirming import Change, Correct, More, Strike, changed
from diagnose.entry.engine_said import write_fields
from diagnose.entry.in_words import asks_back, heard, is_story, taken_as
from diagnose.entry.numbers import Readings, doubtful
from diagnose.entry.picking import Picked, Reply
from diagnose.entry.questions import (
    ENGINE,
    STORY,
    ChoiceQuestion,
    ConfirmQuestion,
    EngineQuestion,
    FindingQuestion,
    Kept,
    NumbersQuestion,
    Question,
    Said,
    TextQuestion,
    TrialQuestion,
    TriedQuestion,
    is_safety,
    read_line,
    uncounted,
)
from diagnose.entry.telling import Account, read_readings, understand, write
from diagnose.entry.titles import title_of
from diagnose.errors import UsageError, plain
from diagnose.inference.outcomes import Outcome
from diagnose.reasoning.seen_on_engine import is_found
from diagnose.understanding.reader import read
from knowledge.alarm import Alarm
from knowledge.book import Book
from knowledge.model import Finding
from knowledge.questions.engines import ENGINE_KINDS
from knowledge.questions.essentials import SAFETY

MOST_FILES = 999  #: of cases that are named by the day


class Interview:
    """One interview; ``next_question`` is what to ask now, ``reply`` takes the answer."""

    def __init__(self, path: Path, book: Book, by: str = "", most: int = 12) -> None:
        """Prepare an interview; ``most``: questions by value at most. ``begin`` starts one."""
        self.path = path
        self.book = book
        self.by = by
        self.most = most
        self.resumed = os.path.lexists(path)  #: whether the file was there before
        self.taken = ""  #: what the last answer in the person's own words was taken for
        self.ended = ""  #: why no question is left, in a sentence; empty while there may be some
        self._open: list[Question] = []  #: to be asked, the last one first
        self._answered: list[Answered] = []
        self._reopened: list[Answered] = []  #: asked once more by 'back'
        self._agenda = Agenda()
        self._alarms_seen: set[str] = set()
        self._last: tuple[str, Diagnosis] | None = None
        self._plan = self._questions()

    @classmethod
    def begin(cls, path: Path, book: Book, by: str = "", most: int = 12) -> Interview:
        """Start an interview, or go on with the case in ``path``, once it can be written.

        Raises UsageError for a wrong name; CannotWriteError, NoCaseError, BadCaseError.
        """
        if len(by) > LONGEST or by != by.encode("utf-8", "replace").decode("utf-8"):
            raise UsageError(
                f"by: '{plain(by)}' is no name; at most {LONGEST:,} characters of UTF-8"
            )
        interview = cls(path, book, by, most)
        if interview.resumed:
            asked = interview.case.finding_records
            earlier = [about(s.finding, book) for s in asked]
            earlier += [TrialQuestion(t.trial) for t in interview.case.trials]
            if interview.case.has_engine:
                interview._answered.append(Answered(EngineQuestion(ENGINE, ENGINE_KINDS)))
            interview._answered.extend(Answered(q) for q in earlier)
        ready(path)
        return interview

    @property
    def case(self) -> Case:
        """The case as it is on disk."""
        return load(self.path, self.book)

    @property
    def saved(self) -> bool:
        """Whether there is a case file."""
        return os.path.exists(self.path)

    def diagnosis(self) -> Diagnosis:
        """The diagnosis of the case as it is on disk."""
        text = read_text(self.path)
        if self._last is None or self._last[0] != text:
            self._last = text, Diagnosis(self.book, from_text(text, self.path, self.book))
        return self._last[1]

    def new_alarms(self) -> tuple[Alarm, ...]:
        """Alarms that this has not returned before, gravest first."""
        new = tuple(a for a in self.diagnosis().alarms if a.says not in self._alarms_seen)
        self._alarms_seen.update(a.says for a in new)
        return new

    def next_question(self) -> Question | None:
        """What to ask now: the same until it is answered; None at the end."""
        if not self._open:
            self._open.extend(q for q in [next(self._plan, None)] if q is not None)
        return self._open[-1] if self._open else None

    def reply(self, line: str) -> Reply | None:
        """Take a line in answer to ``next_question``; None where it was an answer, now saved.

        'back' asks the question before once more, and then this one again.
        Raises CannotWriteError, UsageError, BadCaseError, NoCaseError where saving fails.
        """
        question = self.next_question()
        if question is None:
            return Reply.STOP
        answer = read_line(question, line)
        self.taken, rest = "", ""
        if answer is Reply.UNCLEAR and asks_back(line):
            return Reply.WHY
        if answer is Reply.UNCLEAR and is_safety(question) and is_story(line):
            self._open.pop()
            self._save_story(line)
            return None
        if answer is Reply.UNCLEAR and not isinstance(question, ConfirmQuestion):
            said = heard(question, line)
            if said.answer is None:
                return self._told(question, line)
            answer, rest = said.answer, said.rest
            self.taken = taken_as(question, said.answer)
        by_letter = not any(c.isdigit() for c in line)
        if isinstance(question, ChoiceQuestion) and isinstance(answer, Picked) and answer.places:
            self.taken = taken_as(question, answer) if by_letter or self.taken else ""
        if answer is Reply.BACK:
            return self._back()
        if isinstance(answer, Reply):
            return answer
        if isinstance(answer, Readings):
            words = doubtful(answer, [r.reading for r in self.case.readings])
            if words and (account := _account(self.path, words, self.book)):
                self._agenda.note(question)
                self._open[-1] = ConfirmQuestion(account)
                return None
        reply = self._save(question, answer)
        if reply is None and rest and (account := _account(self.path, rest, self.book)):
            self._open.append(ConfirmQuestion(account))
        return reply

    def _told(self, question: Question, line: str) -> Reply | None:
        """Take words that answer no choice as a part of the story; UNCLEAR where none is understood.

        The question comes again if they have not answered it.
        """
        readings = read_readings(line, self.book) if isinstance(question, NumbersQuestion) else None
        if readings is not None and not is_story(line):
            return self._save(question, readings)
        account = _account(self.path, line, self.book)
        if account is None:
            return Reply.UNCLEAR
        if readings is not None:
            self._agenda.note(question)
        again = self._reopened and self._reopened[-1].question == question
        if not again and not (isinstance(question, TrialQuestion) and question.made):
            self._open.remove(question)
        self._open.append(ConfirmQuestion(account))
        return None

    def finish(self) -> None:
        """Write what was shown and not objected to; for the end of the input."""
        question = self._open[-1] if self._open else None
        if isinstance(question, ConfirmQuestion):
            self._save(question, Kept(question.account))

    def _questions(self) -> Iterator[Question]:
        """Every question in order; each is made once those before it are answered.

        None of a job that is closed, nor once the cause was found on the engine.
        """
        if self.resumed and (ended := _over(self.diagnosis())):
            self.ended = ended
            return
        if not self.resumed:
            yield ChoiceQuestion(SAFETY, SAFETY.choices)
        while SAFETY.id not in self._agenda.asked and (menu := safety_left(self.diagnosis())):
            yield ChoiceQuestion(menu, menu.choices)
        if not self.case.has_job:
            yield STORY
        while (essential := self._agenda.essentials(self.diagnosis())) is not None:
            yield essential
        for left in range(self.most, 0, -1):
            question = self._agenda.by_value(self.diagnosis(), left)
            if question is None:
                self.ended = "More questions would not change what to check first."
                return
            yield question

    def _back(self) -> Reply:
        now = self._open[-1] if self._open else None
        if isinstance(now, EngineQuestion) and now.of is not None:
            self._open[-1] = now.whole
            return Reply.BACK
        if not self._answered:
            return Reply.FIRST
        earlier = self._answered.pop()
        self._reopened.append(earlier)
        self._open.append(earlier.question)
        return Reply.BACK

    def _save(self, question: Question, answer: Said) -> Reply | None:
        """Save one answer, and leave its question; CHANGED where it is asked once more."""
        match question, answer:
            case TextQuestion(), str():
                self._open.pop()
                self._save_story(answer)
                return None
            case ConfirmQuestion(), Strike() | Correct() | More():
                account = changed_or_none(question.account, answer, self.book)
                if account is None:
                    return Reply.UNCLEAR
                self._open[-1] = ConfirmQuestion(account)
                return Reply.CHANGED
            case ConfirmQuestion(), Kept():
                if answer.account is not None and answer.account.kept:
                    write(answer.account, self.book, self.by, self.case.job.complaint)
            case EngineQuestion(), Picked():
                fields = engine_fields(question, answer)
                self._open.pop()
                if isinstance(fields, EngineQuestion):
                    self._open.append(fields)
                else:
                    if self._reopened and isinstance(self._reopened[-1].question, EngineQuestion):
                        self._reopened.pop()
                    write_fields(self.path, self.book, fields, self.by)
                    self._answered.append(Answered(question.whole))
                return None
            case _:
                self._append(question, answer)
        self._open.remove(question)
        return None

    def _save_story(self, story: str) -> None:
        """Keep the words; what is read out of them is asked to be confirmed next."""
        said = read(story, self.book)
        fields = {
            "title": title_of(story, self.path, said, self.book) if story else None,
            "opened": date.today(),
            "by": self.by or None,
            "complaint": story or None,
        }
        if not self.saved:
            start(self.path, self.book, fields)
        elif not self.case.has_job:
            append_job(self.path, self.book, fields)
        if any(c.isalnum() for c in story):
            account = understand(self.path, story, self.book)
            if account.kept or account.understanding.unread:
                self._open.append(ConfirmQuestion(account))

    def _append(self, question: Question, answer: Said) -> None:
        """Append what one answer says; an earlier answer to the same question no longer counts."""
        earlier = None
        if self._reopened and self._reopened[-1].question == question:
            earlier = self._reopened.pop()

        def made(case: Case) -> list[NewEntry]:
            return new_entries(question, answer, case, self.book, self.by, earlier)

        if not self.saved:
            start(self.path, self.book, None)
        numbers: tuple[int, ...] = ()
        if made(self.case):
            done = append_by(self.path, self.book, made)
            numbers = tuple(range(done.first_number, done.first_number + len(done.entries)))
        self._agenda.note(question)
        self._answered.append(Answered(uncounted(question), numbers))
        if isinstance(question, TriedQuestion) and isinstance(answer, Picked):
            tried = [question.trials[i] for i in answer.places or ()]
            self._open.extend(TrialQuestion(t, made=True) for t in reversed(tried))


def _over(diagnosis: Diagnosis) -> str:
    """Why nothing is left to ask, in a sentence; empty where questions may still help."""
    if diagnosis.case.closed:
        return "This job is closed: nothing is left to ask."
    if is_found(diagnosis.inference):
        return "The cause was found on the engine: nothing is left to ask."
    return ""


def outcomes(diagnosis: Diagnosis, finding: Finding) -> Mapping[str, Outcome]:
    """What 'yes' and 'no' would do to the ranking; empty where that is not computed."""
    known = finding.id in diagnosis.inference.network.leak
    return diagnosis.planner.either_way(finding) if known else {}


def _account(path: Path, words: str, book: Book) -> Account | None:
    """What words at a question say; None where no fact is understood."""
    try:
        account = understand(path, words, book)
    except UsageError:
        return None
    return account if account.kept else None


def changed_or_none(account: Account, change: Change, book: Book) -> Account | None:
    """The account after a change; None where nothing could be made of the words."""
    try:
        return changed(account, change, book)
    except UsageError:
        return None


def about(finding: Finding, book: Book, left: int | None = None) -> FindingQuestion | TrialQuestion:
    """The question about a finding; one that only a trial shows is asked as the trial."""
    trial = book.shown_by_trial.get(finding)
    return FindingQuestion(finding, left) if trial is None else TrialQuestion(trial, left)


def new_case_path(folder: Path = Path()) -> Path:
    """A file name of today that is not taken: ``case-2026-05-01-1.toml``. Raises UsageError."""
    for number in range(1, MOST_FILES + 1):
        path = folder / f"case-{date.today().isoformat()}-{number}.toml"
        if not os.path.lexists(path):
            return path
    raise UsageError("name the case file: diagnose ask petrel.toml")
