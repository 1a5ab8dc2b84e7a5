"""Answers to a question and results of a task: "yes", "70%", "done"."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from diagnose.errors import UsageError, plain

AnswerState = Literal["present", "absent", "unknown"]
TaskState = Literal["done", "failed", "skipped"]


@dataclass(frozen=True, slots=True)
class Answer:
    """What was seen of a finding."""

    state: AnswerState
    sure: float | None = None  #: probability that the state is right, 0.5 to 1; None: not given


_YES, _NO, _UNKNOWN = Answer("present"), Answer("absent"), Answer("unknown")
ANSWERS: dict[str, Answer] = {
    **dict.fromkeys(("yes", "y", "present", "true", "seen", "1"), _YES),
    **dict.fromkeys(("no", "n", "absent", "false", "none", "0"), _NO),
    **dict.fromkeys(("unknown", "u", "d", "?", "dont_know"), _UNKNOWN),
    "probably": Answer("present", 0.8),
    "maybe": Answer("present", 0.65),
    "probably_not": Answer("absent", 0.8),
}
TASK_STATES: dict[str, TaskState] = {
    **dict.fromkeys(("done", "yes", "y", "ok", "passed"), "done"),
    **dict.fromkeys(("failed", "no", "n"), "failed"),
    "skipped": "skipped",
}
#: a task that this engine does not call for; it needs no further reason
NOT_APPLICABLE = frozenset(["n/a", "na", "n.a.", "not applicable", "does not apply"])
NO_SUCH_THING = "not on this engine"
_PERCENT = re.compile(r"([0-9]{1,3})_?%")


def named_answer(text: str) -> Answer | None:
    """The answer that ``text`` names in words; None where it names none.

    >>> named_answer("Probably not")
    Answer(state='absent', sure=0.8)
    """
    return ANSWERS.get(_key(text))


def parse_answer(text: str) -> Answer:
    """An answer in words or percent.

    >>> parse_answer("don't know")
    Answer(state='unknown', sure=None)
    >>> parse_answer("20 %")
    Answer(state='absent', sure=0.8)

    Raises UsageError.
    """
    answer = named_answer(text)
    if answer is not None:
        return answer
    percent = _PERCENT.fullmatch(_key(text))
    if percent and int(percent[1]) <= 100:
        p = int(percent[1]) / 100
        return Answer("present", p) if p >= 0.5 else Answer("absent", 1 - p)
    raise UsageError(
        f"'{plain(text.strip(), 40)}' is no answer; write yes, no, unknown, probably or 70%"
    )


def parse_task_state(text: str) -> TaskState:
    """Whether a task was done, failed or skipped. Raises UsageError.

    >>> parse_task_state("OK")
    'done'
    """
    state = named_task_state(text)
    if state is None:
        raise UsageError(f"'{plain(text.strip(), 40)}' is no answer; write done, failed or skipped")
    return state


def named_task_state(text: str) -> TaskState | None:
    """The state that ``text`` names; None where it names none.

    >>> named_task_state("n/a")
    'skipped'
    """
    said = text.strip().lower()
    return "skipped" if said in NOT_APPLICABLE else TASK_STATES.get(said)


def _key(text: str) -> str:
    """One spelling: lower case, no apostrophes, underscores for blanks."""
    return "_".join(text.lower().replace("'", "").replace("’", "").split())
