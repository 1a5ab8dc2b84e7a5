"""The questions of an interview, and what a line typed in answer to one means."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Literal

from diagnose.case.schema import LONGEST
from diagnose.entry.answers import Answer, named_answer
from diagnose.entry.trials import TrialInput, named_result
from knowledge.model import Finding
from knowledge.reports.shapes import TrialKind
from knowledge.reports.words import Result

HELP = "y yes, n no, d don't know, why, back, stop here"
STOP = ("stop", "stop here", "quit", "exit")
BACK = ("back", "b")
WHY = ("why", "why do you ask", "w")
DONT_KNOW = ("", "d", "?", "dont know", "don't know", "don’t know", "unknown", "u")
NONE = (*DONT_KNOW, "none", "no", "n")


class Reply(Enum):
    """What a line was, where it was no answer."""

    STOP = "stop"
    BACK = "back"
    FIRST = "first"  #: 'back' where there is no question before
    WHY = "why"
    UNCLEAR = "unclear"
    TOO_LONG = "too long"


@dataclass(frozen=True, slots=True)
class TextQuestion:
    """A question that is answered in the person's own words."""

    asks: str
    why: str
    hint = f"At most {LONGEST:,} characters."

    def read(self, line: str) -> str | Reply:
        """The person's words; empty where there are none."""
        word = line.lower()
        if word == WHY[0]:
            return Reply.WHY
        if word == BACK[0]:
            return Reply.BACK
        return "" if word in DONT_KNOW else line


@dataclass(frozen=True, slots=True)
class MenuQuestion:
    """A question that is answered by numbers, from 1 on."""

    about: Literal["layout", "history"]
    title: str
    asks: str
    why: str
    ids: tuple[str, ...]
    choices: tuple[str, ...]  #: what each id stands for, in words
    most: int  #: how many may be named

    @property
    def hint(self) -> str:
        """What can be answered."""
        many = "A number" if self.most == 1 else "Numbers"
        return f"{many} from 1 to {len(self.choices)}, or nothing."

    def read(self, line: str) -> tuple[str, ...] | Reply:
        """The ids chosen, each once; empty for none or don't know."""
        word = line.lower()
        if word in WHY:
            return Reply.WHY
        if word in BACK:
            return Reply.BACK
        if word in NONE:
            return ()
        numbers = word.replace(",", " ").split()
        if len(numbers) > self.most or not all(self._has(n) for n in numbers):
            return Reply.UNCLEAR
        return tuple(dict.fromkeys(self.ids[int(n) - 1] for n in numbers))

    def _has(self, number: str) -> bool:
        return number.isdecimal() and len(number) < 5 and 1 <= int(number) <= len(self.ids)


@dataclass(frozen=True, slots=True)
class FindingQuestion:
    """Whether a finding is there."""

    finding: Finding
    left: int | None = None  #: questions left at most, with this one; None: not counted
    hint = f"Please: {HELP}. ('probably' and 'probably not' are answers too.)"

    @property
    def asks(self) -> str:
        """The question in one line."""
        left = f" ({self.left} left at most)" if self.left is not None else ""
        return self.finding.asks + left

    def read(self, line: str) -> Answer | Reply:
        """What was seen of the finding."""
        word = line.lower()
        if word in WHY:
            return Reply.WHY
        if word in BACK:
            return Reply.BACK
        if word in DONT_KNOW:
            return Answer("unknown")
        return named_answer(line) or Reply.UNCLEAR


@dataclass(frozen=True, slots=True)
class TrialQuestion:
    """Whether something was tried, and what it did; "no" means that it was not tried."""

    trial: TrialKind
    left: int | None = None  #: questions left at most, with this one; None: not counted
    hint = (
        "Please: c cured, h helped, f cured for a while, s no difference, w worse, n not tried, "
        "why, back, stop here."
    )

    @property
    def finding(self) -> Finding:
        """The finding that it cured the trouble."""
        return self.trial.cured

    @property
    def asks(self) -> str:
        """The question in one line."""
        left = f" ({self.left} left at most)" if self.left is not None else ""
        return self.trial.asks + left

    def read(self, line: str) -> TrialInput | Reply:
        """What the trial did."""
        word = line.lower()
        if word in ("why", "why do you ask"):
            return Reply.WHY
        if word in BACK:
            return Reply.BACK
        if word in NONE:
            return TrialInput(self.trial, None)
        result = named_result(line)
        if result is None:
            return Reply.UNCLEAR
        return TrialInput(self.trial, result if isinstance(result, Result) else None)


Question = TextQuestion | MenuQuestion | FindingQuestion | TrialQuestion
#: what the answer to a question says
Said = str | tuple[str, ...] | Answer | TrialInput

TITLE = TextQuestion(
    "What is it about? One line (boat, tractor, engine): ",
    "It heads the review, so that you know the case again.",
)
COMPLAINT = TextQuestion(
    "What does it do? In your own words: ",
    "Your words are kept, and what they seem to name is asked next.",
)


def read_line(question: Question, line: str) -> Said | Reply:
    """What a line says in answer to a question: as its ``read``, or 'stop', or too long."""
    if line.lower() in STOP:
        return Reply.STOP
    return Reply.TOO_LONG if len(line) > LONGEST else question.read(line)
