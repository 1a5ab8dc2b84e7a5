"""The questions of an interview, and what a line typed in answer to one means."""

from __future__ import annotations

from dataclasses import dataclass, replace

from diagnose.case.schema import LONGEST
from diagnose.entry.answers import Answer, named_answer
from diagnose.entry.confirming import Change, parse_change
from diagnose.entry.numbers import USUAL_UNIT, Readings, Slot, parse_numbers
from diagnose.entry.picking import (
    BACK,
    HELP,
    NO,
    STOP,
    WHY,
    YES,
    Picked,
    Reply,
    aside,
    is_dont_know,
    picked,
)
from diagnose.entry.telling import Account
from diagnose.entry.trials import TrialInput, named_result
from diagnose.errors import UsageError
from knowledge.model import Finding
from knowledge.questions.essentials import SAFETY
from knowledge.questions.shapes import Choice, EngineKind, Menu
from knowledge.reports.shapes import TrialKind
from knowledge.reports.words import Result
from knowledge.work import Inspection

ENGINE = "What kind of engine is it?"


@dataclass(frozen=True, slots=True)
class Kept:
    """The account that is written; None: nothing of it."""

    account: Account | None


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
        return "" if is_dont_know(line) else line


@dataclass(frozen=True, slots=True)
class ConfirmQuestion:
    """Whether what was read out of the person's words is right."""

    account: Account
    why = "What you keep goes into the case as facts; your words are kept in any case."
    hint = (
        "Enter keeps them; a number deletes that fact; '3 = 15 psi at hot idle' corrects fact 3; n "
        "keeps none."
    )

    @property
    def asks(self) -> str:
        """What may be answered: of facts, or where nothing was understood."""
        if not self.account.kept:
            return "Say it in other words, or Enter to go on without it: "
        return "All right? Enter: keep. A number: delete. 3 = words: correct fact 3. Other words: add: "

    def read(self, line: str) -> Kept | Change | Reply:
        """Whether the facts are kept, or what is changed first."""
        word = line.lower()
        if word in WHY:
            return Reply.WHY
        if word in BACK:
            return Reply.FIRST
        if word in YES or not word or is_dont_know(line):
            return Kept(self.account)
        if word in (*NO, "q"):
            return Kept(None)
        try:
            return parse_change(line, self.account)
        except UsageError:
            return Reply.UNCLEAR


@dataclass(frozen=True, slots=True)
class ChoiceQuestion:
    """Related findings asked as one question with numbered choices."""

    menu: Menu
    choices: tuple[Choice, ...]
    left: int | None = None  #: questions left at most, with this one; None: not counted

    @property
    def asks(self) -> str:
        """The question without its choices."""
        return self.menu.asks + _questions_left(self.left)

    @property
    def says(self) -> tuple[str, ...]:
        """The choices in words."""
        return tuple(c.says for c in self.choices)

    @property
    def why(self) -> str:
        """Why it is asked."""
        return self.menu.why

    @property
    def hint(self) -> str:
        """What can be answered."""
        many = "Numbers" if self.menu.many else "A number"
        none = next((c.says for c in self.choices if not c.there), "")
        none = none or next((c.says for c in self.choices if c.plain == "no"), "")
        no = f", n for '{none}'" if none else ""
        return f"{many} from 1 to {len(self.choices)}{no}, or d for don't know."

    def read(self, line: str) -> Picked | Reply:
        """The choices that are true."""
        if line.lower() in NO:
            none = self._plain("no") or tuple(i for i, c in enumerate(self.choices) if not c.there)
            return Picked(none) if none else Reply.UNCLEAR
        real = self._plain("yes") or tuple(i for i, c in enumerate(self.choices) if c.there)
        if line.lower() in YES and len(real) == 1:
            return Picked(real)
        found = picked(line, len(self.choices), self.menu.many)
        places = found.places or () if isinstance(found, Picked) else ()
        none_and_more = len(places) > 1 and not all(self.choices[i].there for i in places)
        return Reply.UNCLEAR if none_and_more else found

    def _plain(self, word: str) -> tuple[int, ...]:
        """The choice that "yes" or "no" alone says."""
        return tuple(i for i, c in enumerate(self.choices) if c.plain == word)


@dataclass(frozen=True, slots=True)
class EngineQuestion:
    """How the engine is built: kinds of engine first, then the layouts of one kind."""

    asks: str
    kinds: tuple[EngineKind, ...]
    of: EngineKind | None = None  #: the kind that was chosen; None: it is asked for
    why = "How it is built says which faults it can have."

    @property
    def whole(self) -> EngineQuestion:
        """The question for its kind, which comes before that for the layout."""
        return replace(self, asks=ENGINE, of=None)

    @property
    def says(self) -> tuple[str, ...]:
        """The choices in words."""
        if self.of is not None:
            return tuple(says for _, says in self.of.layouts)
        return tuple(kind.says for kind in self.kinds)

    @property
    def hint(self) -> str:
        """What can be answered."""
        return f"A number from 1 to {len(self.says)}, or d for don't know."

    def read(self, line: str) -> Picked | Reply:
        """The kind or the layout."""
        return Picked(None) if line.lower() in NO else picked(line, len(self.says), many=False)


@dataclass(frozen=True, slots=True)
class NumbersQuestion:
    """Pressures in figures, at the speeds and temperatures that are still missing."""

    slots: tuple[Slot, ...]
    unit: str = USUAL_UNIT  #: of figures without one
    why = "Hot idle shows clearances, speed shows pump and relief valve, cold shows the pump alone."

    @property
    def asks(self) -> str:
        """The question with an example."""
        when = [s.says for s in self.slots]
        named = when[0] if len(when) == 1 else f"{', '.join(when[:-1])} and {when[-1]}"
        like = f"{self._like} {self.unit}"
        asked = f"What did the gauge show at {named}?"
        if len(when) == 1:
            return f"{asked} Type it like {like}, or d if you don't know."
        order = f"{len(when)} figures in this order, like {like}"
        return f"{asked} Type {order}; - for one you don't know, d for none known."

    @property
    def hint(self) -> str:
        """What can be answered."""
        other = "2.5 bar" if self.unit == USUAL_UNIT else "40 psi"
        like = f"{self._like}, or {other}"
        return f"In this order, like {like}; or in words: 5 psi at hot idle; or d."

    @property
    def _like(self) -> str:
        """A figure for each slot, in the unit."""
        return " ".join(s.example(self.unit) for s in self.slots)

    def read(self, line: str) -> Readings | Reply:
        """The readings; none where nothing is known."""
        word = line.lower()
        if reply := aside(word):
            return reply
        if is_dont_know(word) or word in NO[:3]:
            return Readings(())
        return parse_numbers(line, self.slots, self.unit) or Reply.UNCLEAR


@dataclass(frozen=True, slots=True)
class FindingQuestion:
    """Whether a finding is there."""

    finding: Finding
    left: int | None = None  #: questions left at most, with this one; None: not counted
    hint = f"Please: {HELP}. ('probably' and 'probably not' are answers too.)"

    @property
    def asks(self) -> str:
        """The question in one line."""
        return self.finding.asks + _questions_left(self.left)

    def read(self, line: str) -> Answer | Reply:
        """What was seen of the finding."""
        word = line.lower()
        if reply := aside(word):
            return reply
        if is_dont_know(word):
            return Answer("unknown")
        return named_answer(line) or Reply.UNCLEAR


@dataclass(frozen=True, slots=True)
class TriedQuestion:
    """Which of several things were tried already."""

    trials: tuple[TrialKind, ...]
    left: int | None = None
    why = "A trial that did not help rules out what it would have cured."

    @property
    def asks(self) -> str:
        """The question without its choices."""
        return "Which of these have been tried?" + _questions_left(self.left)

    @property
    def says(self) -> tuple[str, ...]:
        """The choices in words."""
        return tuple(t.says for t in self.trials)

    @property
    def hint(self) -> str:
        """What can be answered."""
        return f"Numbers from 1 to {len(self.trials)}, n for none, d for don't know."

    def read(self, line: str) -> Picked | Reply:
        """The trials that were made."""
        return Picked(()) if line.lower() in NO else picked(line, len(self.trials), many=True)


@dataclass(frozen=True, slots=True)
class TrialQuestion:
    """What a trial did; "no" means that it was not made."""

    trial: TrialKind
    left: int | None = None  #: questions left at most, with this one; None: not counted
    made: bool = False  #: the person said that it was tried
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
        if self.made:
            return f"{self.trial.says[:1].upper()}{self.trial.says[1:]}. What did it do?"
        return self.trial.asks + _questions_left(self.left)

    def read(self, line: str) -> TrialInput | Reply:
        """What the trial did."""
        word = line.lower()
        if word in ("why", "why do you ask"):
            return Reply.WHY
        if word in BACK:
            return Reply.BACK
        if is_dont_know(word) or word in ("none", "no", "n"):
            return TrialInput(self.trial, None)
        result = named_result(line)
        if result is None:
            return Reply.UNCLEAR
        return TrialInput(self.trial, result if isinstance(result, Result) else None)


@dataclass(frozen=True, slots=True)
class CheckQuestion:
    """Whether a check was made already, and what it showed."""

    inspection: Inspection
    findings: tuple[Finding, ...]
    left: int | None = None

    @property
    def asks(self) -> str:
        """The question without its choices."""
        return f"Done already: {self.inspection.says}? If so, what did it show?" + _questions_left(
            self.left
        )

    @property
    def says(self) -> tuple[str, ...]:
        """The choices in words."""
        return tuple(f.says for f in self.findings)

    @property
    def why(self) -> str:
        """Why it is asked."""
        return "If it was done already, nobody needs to do it again."

    @property
    def hint(self) -> str:
        """What can be answered."""
        return f"Numbers from 1 to {len(self.findings)}, 0 none of these showed, n not done."

    def read(self, line: str) -> Picked | Reply:
        """What showed; None where it was not done."""
        word = line.lower()
        if word in ("0", "none"):
            return Picked(())
        return Picked(None) if word in NO else picked(line, len(self.findings), many=True)


Question = (
    TextQuestion
    | ConfirmQuestion
    | ChoiceQuestion
    | EngineQuestion
    | NumbersQuestion
    | FindingQuestion
    | TriedQuestion
    | TrialQuestion
    | CheckQuestion
)
#: what the answer to a question says
Said = str | Kept | Change | Picked | Readings | Answer | TrialInput

STORY = TextQuestion(
    "What is it, and what does it do? In your own words (Enter: skip):",
    "Your words are kept; the engine, readings, noises and work in them are not asked again.",
)


def is_safety(question: Question) -> bool:
    """Whether it asks for zero pressure or a knock, at which the engine must stop."""
    return isinstance(question, ChoiceQuestion) and question.menu.id == SAFETY.id


def read_line(question: Question, line: str) -> Said | Reply:
    """What a line says in answer to a question: as its ``read``, or 'stop', or too long."""
    if line.lower() in STOP:
        return Reply.STOP
    return Reply.TOO_LONG if len(line) > LONGEST else question.read(line)


def uncounted(question: Question) -> Question:
    """The question without the count of those left."""
    match question:
        case (
            ChoiceQuestion()
            | FindingQuestion()
            | TriedQuestion()
            | TrialQuestion()
            | CheckQuestion()
        ):
            return replace(question, left=None)
    return question


def _questions_left(left: int | None) -> str:
    return "" if left is None else f" ({left} left at most)"
