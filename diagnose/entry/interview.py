"""An interview over one case file: which question comes next, and what an answer does to the case.

First whatever may call for stopping the engine, then the person's own words, layout and history,
then the questions that tell most about the cause. Every answer is saved at once; prompting and
printing are the caller's::

    interview = Interview.begin(Path("petrel.toml"), the_book())
    while (question := interview.next_question()) is not None:
        if interview.reply(input(question.asks)) is Reply.STOP:
            break
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import date
from functools import partial
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.disk import ready
from diagnose.case.loading import from_text, load, read_text
from diagnose.case.schema import LONGEST
from diagnose.case.writing import Fields, NewEntry, append_by, append_engine, start
from diagnose.diagnosis import Diagnosis
from diagnose.entry.answers import Answer
from diagnose.entry.details import Details
from diagnose.entry.questions import (
    COMPLAINT,
    TITLE,
    FindingQuestion,
    MenuQuestion,
    Question,
    Reply,
    Said,
    TextQuestion,
    TrialQuestion,
    read_line,
)
from diagnose.entry.recording import fact_entry
from diagnose.entry.trials import TrialInput
from diagnose.errors import UsageError, plain
from diagnose.inference.outcomes import Outcome
from diagnose.lookup.finder import Finder
from diagnose.planning.questions import best_question
from knowledge.book import Book
from knowledge.model import Finding, Kind, Stage
from knowledge.pressure.patterns import GAUGE_READS_ZERO, LAMP_COMES_ON
from knowledge.rule_api import Alarm
from knowledge.stations.bearings.findings import BEARING_KNOCK

#: what may call for stopping the engine is asked before anything else
URGENT = (GAUGE_READS_ZERO, BEARING_KNOCK, LAMP_COMES_ON)
MOST_HITS = 6  #: findings that are looked up in the person's own words
LEAST_SCORE = 0.45  #: how well a finding must fit the person's own words to be asked for
MOST_FILES = 999  #: of cases that are named by the day
NO_TITLE = "Oil pressure"


class Interview:
    """One interview; ``next_question`` is what to ask now, ``reply`` takes the answer."""

    def __init__(self, path: Path, book: Book, by: str = "", most: int = 12) -> None:
        """Prepare an interview; ``most``: questions by value at most. ``begin`` starts one."""
        self.path = path
        self.book = book
        self.by = by
        self.most = most
        self.resumed = os.path.lexists(path)  #: whether the file was there before
        self.no_useful_question = False  #: it ended because no open question would help
        self._texts: dict[TextQuestion, str] = {}
        self._open: list[Question] = []  #: to be asked, the last one first
        self._answered: list[Question] = []
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
            interview._answered.extend(about(s.finding, book) for s in asked)
            interview._answered.extend(TrialQuestion(t.trial) for t in interview.case.trials)
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
        if answer is Reply.STOP:
            self.stop()
        elif answer is Reply.BACK:
            return self._back()
        elif not isinstance(answer, Reply):
            self._save(question, answer)
            return None
        return answer

    def stop(self) -> None:
        """End the interview; a case with a title and no complaint yet is saved."""
        if not self.resumed and TITLE in self._texts and not self.saved:
            self._start()

    def outcomes(self, finding: Finding) -> Mapping[str, Outcome]:
        """What 'yes' and 'no' would do to the ranking; empty where that is not computed."""
        answer = self.diagnosis()
        known = finding.id in answer.inference.network.leak
        return answer.planner.either_way(finding) if known else {}

    def _questions(self) -> Iterator[Question]:
        """Every question in order; each is made once those before it are answered."""
        if not self.resumed:
            yield TITLE
            yield COMPLAINT
        answered = self.case.answered()
        yield from (FindingQuestion(f) for f in URGENT if f not in answered)
        case = self.case
        if not case.has_engine:
            for finding in _findings_named(case.job.complaint, self.book):
                if finding not in self.case.answered():
                    yield about(finding, self.book)
            yield _layout_menu(self.book)
        if not any(s.finding.kind is Kind.HISTORY for s in case.finding_records):
            yield _history_menu(self.book)
        for left in range(self.most, 0, -1):
            planner = self.diagnosis().planner
            best = best_question(
                self.book.findings.values(),
                planner.single_cause_model,
                planner.answered,
                self.book.shown_by_trial,
            )
            if best is None:
                self.no_useful_question = True
                return
            yield about(best, self.book, left)

    def _back(self) -> Reply:
        if not self._answered:
            return Reply.FIRST
        earlier = self._answered.pop()
        if isinstance(earlier, TextQuestion):
            del self._texts[earlier]
        self._open.append(earlier)
        return Reply.BACK

    def _save(self, question: Question, answer: Said) -> None:
        """Save one answer, and leave its question."""
        match question, answer:
            case TextQuestion(), str():
                self._texts[question] = answer
                self._answered.append(question)
                if question is COMPLAINT:
                    self._start()
            case MenuQuestion(about="layout"), tuple():
                append_engine(self.path, self.book, {"layout": answer[0] if answer else "unknown"})
            case MenuQuestion(), tuple():
                for id_ in answer:
                    self._append(self.book.findings[id_], Answer("present"))
            case FindingQuestion(), Answer():
                self._append(question.finding, answer)
                self._answered.append(replace(question, left=None))
            case TrialQuestion(), TrialInput():
                append_by(self.path, self.book, partial(_trial_entry, answer, self.by))
                self._answered.append(replace(question, left=None))
        self._open.pop()

    def _start(self) -> None:
        """Make the case file; the questions before it cannot be asked again."""
        job: Fields = {
            "title": self._texts.get(TITLE) or NO_TITLE,
            "opened": date.today(),
            "by": self.by or None,
            "complaint": self._texts.get(COMPLAINT) or None,
        }
        start(self.path, self.book, job)
        self._answered.clear()

    def _append(self, finding: Finding, answer: Answer) -> None:
        """Append one answer; it replaces an earlier answer to the same question."""

        def entry(case: Case) -> list[NewEntry]:
            earlier = [s.entry.no for s in case.finding_records if s.finding is finding]
            fields = {
                "what": finding.id,
                "state": answer.state,
                "sure": answer.sure,
                "replaces": earlier[-1] if earlier else None,
                "when": date.today(),
                "by": self.by or None,
            }
            return [NewEntry("finding", fields)]

        append_by(self.path, self.book, entry)


def about(finding: Finding, book: Book, left: int | None = None) -> FindingQuestion | TrialQuestion:
    """The question about a finding; one that only a trial shows is asked as the trial."""
    trial = book.shown_by_trial.get(finding)
    return FindingQuestion(finding, left) if trial is None else TrialQuestion(trial, left)


def _trial_entry(made: TrialInput, by: str, case: Case) -> list[NewEntry]:
    """What a trial did; it replaces an earlier answer to the same question."""
    return [fact_entry(made, case, Details(by=by))]


def new_case_path(folder: Path = Path()) -> Path:
    """A file name of today that is not taken: ``case-2026-05-01-1.toml``. Raises UsageError."""
    for number in range(1, MOST_FILES + 1):
        path = folder / f"case-{date.today().isoformat()}-{number}.toml"
        if not os.path.lexists(path):
            return path
    raise UsageError("name the case file: diagnose ask petrel.toml")


def _findings_named(words: str, book: Book) -> Iterator[Finding]:
    """Findings outside the engine that a person's own words seem to name, the best first."""
    for hit in Finder(book).find(words, (Finding,), MOST_HITS) if words else ():
        word = hit.word
        if hit.score < LEAST_SCORE or not isinstance(word, Finding) or word.kind is not Kind.SEEN:
            continue
        if word.stage is not Stage.OPENED:  # nobody can see it while the engine is closed
            yield word


def _layout_menu(book: Book) -> MenuQuestion:
    return MenuQuestion(
        about="layout",
        title="How is the engine built?",
        asks="Number (empty: don't know): ",
        why="The layout says which parts there are, and so which faults there can be.",
        ids=tuple(layout.id for layout in book.layouts.values()),
        choices=tuple(layout.says for layout in book.layouts.values()),
        most=1,
    )


def _history_menu(book: Book) -> MenuQuestion:
    facts = [f for f in book.findings.values() if f.kind is Kind.HISTORY]
    return MenuQuestion(
        about="history",
        title="What happened to it before? Give the numbers that apply.",
        asks="Numbers, with blanks between (empty: none, or don't know): ",
        why="What happened to an engine makes some faults far more common.",
        ids=tuple(f.id for f in facts),
        choices=tuple(f.says for f in facts),
        most=len(facts),
    )
