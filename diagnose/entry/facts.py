"""Facts as typed: "needle_flickers=yes", "main_clearance=0.1 mm", "sump_washed=done"."""

from __future__ import annotations

import re
from dataclasses import dataclass

from diagnose.case.units import JobUnits
from diagnose.entry.answers import (
    ANSWERS,
    NO_SUCH_THING,
    NOT_APPLICABLE,
    Answer,
    TaskState,
    named_task_state,
    parse_answer,
    parse_task_state,
)
from diagnose.entry.bare_figures import NO_UNITS, with_unit
from diagnose.entry.trials import TrialInput, named_result, trial_input
from diagnose.errors import UsageError, nearest, plain
from diagnose.ids import normal_id
from diagnose.ways import Way, to
from knowledge.book import Book
from knowledge.model import Finding, Measure, Stage
from knowledge.reports.shapes import TrialKind
from knowledge.reports.words import Result
from knowledge.units import DIMENSIONS, UnitError, parse
from knowledge.work import Task

EXAMPLE_ID = "needle_flickers"
EXAMPLE_RESULT = "'no difference' or 'not tried'"


@dataclass(frozen=True, slots=True)
class FindingInput:
    """A finding and what was seen of it."""

    word: Finding
    answer: Answer

    def fields(self) -> dict[str, str | float | None]:
        """As fields of a ``[[finding]]``."""
        return {"state": self.answer.state, "sure": self.answer.sure}


@dataclass(frozen=True, slots=True)
class MeasureInput:
    """A measured value."""

    word: Measure
    text: str  #: in the unit the person used
    value: float  #: in the SI unit of the measure's dimension
    bare: bool = False  #: whether the unit was left out, and taken from the job

    def fields(self) -> dict[str, str | float | None]:
        """As fields of a ``[[finding]]``."""
        return {"value": self.text}


@dataclass(frozen=True, slots=True)
class TaskInput:
    """A task that was seen to: its state, or the value measured for it."""

    word: Task
    state: TaskState | None = None
    text: str | None = None  #: the value in the unit the person used
    value: float | None = None  #: in the SI unit of the task's dimension
    bare: bool = False  #: whether the unit was left out, and taken from the job
    why: str = ""  #: the reason why it was left out, where the answer gives it

    def fields(self) -> dict[str, str | float | None]:
        """As fields of a ``[[work]]``."""
        return {"state": self.state} if self.state else {"value": self.text}


FactInput = FindingInput | MeasureInput | TaskInput | TrialInput


def parse_fact(text: str, book: Book, units: JobUnits = NO_UNITS) -> FactInput:
    """``id=value`` for a finding, a measure, a task or a trial of ``book``.

    The value is an answer ("yes", "70%"), a figure with its unit ("0.0045 in"), the state of a
    task ("done") or the result of a trial ("no difference"). A bare figure is in the unit of the
    job. Whether a figure can be right is checked when it is saved.
    Raises UsageError, with the nearest right id.
    """
    name, equals, value = text.partition("=")
    if not equals or not name.strip():
        blanks = ", without blanks round the '='" if text.strip() in ("=", *ANSWERS) else ""
        like = EXAMPLE_ID if blanks else _as_id(name)
        raise UsageError(f"'{plain(text)}': write it like {like}=yes{blanks}")
    return made_or_not(fact_about(find_word(name, book), value, book, units), book)


def fact_about(
    word: Finding | Measure | Task | TrialKind, text: str, book: Book, units: JobUnits = NO_UNITS
) -> FactInput:
    """What ``text`` says of one finding, measure, task or trial. Raises UsageError."""
    try:
        match word:
            case TrialKind():
                return trial_input(word, text)
            case Finding() if word in book.shown_by_trial and named_result(text) is not None:
                return trial_input(book.shown_by_trial[word], text)
            case Task():
                return _task_input(word, text, units)
            case Measure():
                figure = with_unit(text.strip(), word, units)
                value = parse_value(figure, word)
                return MeasureInput(word, figure, value, bare=figure != text.strip())
            case Finding():
                return FindingInput(word, parse_answer(text))
    except UsageError as fault:
        raise UsageError(f"{to(Way.WORD, id=word.id)}{fault}") from None


def parse_value(text: str, word: Measure | Task) -> float:
    """A figure with its unit, in the SI unit of the word's dimension. Raises UsageError."""
    try:
        return parse(text, DIMENSIONS[word.dimension])
    except UnitError as error:
        raise UsageError(str(error)) from None


def made_or_not(fact: FactInput, book: Book) -> FactInput:
    """The fact; a plain "no" to "it was tried, and cured it" as what it most likely means.

    Of a check that is made with tools it means "no difference", of what a person is asked "not
    tried".
    """
    kind = book.shown_by_trial.get(fact.word) if isinstance(fact, FindingInput) else None
    if kind is None or fact.word is not kind.cured or fact.fields()["state"] != "absent":
        return fact
    made = fact.word.stage is not Stage.KNOWN
    return TrialInput(kind, Result.NO_DIFFERENCE if made else None)


def find_word(name: str, book: Book) -> Finding | Measure | Task | TrialKind:
    """The finding, measure, task or trial of that id. Raises UsageError with the nearest."""
    wanted = normal_id(name)
    word = (
        book.findings.get(wanted)
        or book.measures.get(wanted)
        or book.tasks.get(wanted)
        or book.trials.get(wanted)
    )
    if word is not None:
        return word
    if wanted in book.causes:
        raise UsageError(
            f"'{wanted}' is a cause, no finding: record what was seen of it; a cause is named at "
            f"the end, {to(Way.NAME_CAUSE, cause=wanted)}"
        )
    if wanted in book.retired:
        right = f"{book.retired[wanted].id}={EXAMPLE_RESULT}"
        raise UsageError(f"'{wanted}' is the result of a trial now; write {right}")
    near = nearest(wanted, [*book.findings, *book.measures, *book.tasks, *book.trials])
    raise UsageError(f"no finding '{plain(name.strip())}'.{near}{lookup_hint(name)}")


def lookup_hint(name: str) -> str:
    """' Try: diagnose lookup …' with the words in ``name``; empty where it has none.

    >>> lookup_hint("needle_dances!")
    ' Try: diagnose lookup needle dances'
    """
    words = "".join(c if c.isalnum() else " " for c in name[:60]).split()
    return f" {to(Way.LOOK_UP, words=' '.join(words))}" if words else ""


def _task_input(task: Task, text: str, units: JobUnits) -> TaskInput:
    if named_task_state(text) is None and task.dimension:
        figure = with_unit(text.strip(), task, units)
        value = parse_value(figure, task)
        return TaskInput(task, text=figure, value=value, bare=figure != text.strip())
    why = NO_SUCH_THING if text.strip().lower() in NOT_APPLICABLE else ""
    return TaskInput(task, parse_task_state(text), why=why)


def _as_id(name: str) -> str:
    """The word as an id, if it could be one; else an example."""
    id_ = normal_id(name)
    return id_ if re.fullmatch(r"[a-z0-9_]{1,40}", id_) else EXAMPLE_ID
