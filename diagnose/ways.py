"""What a message tells a person to do next, in the words of the surface it is shown on.

A command line names commands and options, a page what to tap. Messages are made deep inside, where
nobody knows which of the two it is; ``worded`` says so around the whole of a request.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from enum import Enum, auto


class Way(Enum):
    """One thing to do next, or what a surface calls a thing; in braces what ``to`` fills in."""

    WORD = auto()  #: which word a fault is about; {id}
    NOTE = auto()  #: where a reason goes
    PLACE = auto()  #: what to do with a place that an entry cannot have
    NO_ENTRY = auto()  #: where to write what a case has no entry for
    LOOK_UP = auto()  #: find the right word; {words}
    OTHER_WORDS = auto()  #: say it so that it is understood
    EXAMPLE = auto()  #: something that can be recorded
    LAYOUT = auto()  #: say how the engine is built; {layout}
    OIL = auto()  #: say the oil in it; {grade}
    DIMENSION = auto()  #: say a dimension of the engine; {name} and {value}
    CIRCUIT = auto()  #: say which oil circuit it has
    FIGURES = auto()  #: where the engine's own figures go
    PLACES = auto()  #: enter the same thing of several places
    NAME_CAUSE = auto()  #: name a cause at the end of the job; {cause}
    CAUSE = auto()  #: the field of the cause
    HOW = auto()  #: the field of how it was confirmed
    MINUTES = auto()  #: the field of the minutes
    REASON = auto()  #: the field of the reason
    REPAIRED = auto()  #: the field that says a reading is of the repaired engine
    FITTED = auto()  #: say that a bearing was measured with the new parts in
    READING = auto()  #: put in a gauge reading; {case}
    BUDGET = auto()  #: see what each find costs
    FORECAST = auto()  #: see why a model does not fit
    FIRST_START = auto()  #: see what the first start showed
    BEGIN_CASE = auto()  #: begin a job
    MAKE_SHEET = auto()  #: get a sheet to fill in
    BEGIN_CARD = auto()  #: begin an engine's card
    NAME_CARD = auto()  #: let a job go by a card


COMMANDS: Mapping[Way, str] = {
    Way.WORD: "{id}: ",
    Way.NOTE: "with --note",
    Way.PLACE: "say it with --note",
    Way.NO_ENTRY: "say it with --note",
    Way.LOOK_UP: "Try: diagnose lookup {words}",
    Way.OTHER_WORDS: "say it in other words, or try diagnose lookup",
    Way.EXAMPLE: "needle_flickers=yes",
    Way.LAYOUT: 'write layout = "{layout}" into its [engine]',
    Way.OIL: 'diagnose tell writes it, or grade = "{grade}" under [oil]',
    Way.DIMENSION: 'write {name} = "{value}" into its [engine.dimensions]',
    Way.CIRCUIT: "review, record and signoff judge it by its own figures: enter them on a card "
    "('diagnose card NAME' starts one) or under [engine.limits]",
    Way.FIGURES: "'diagnose card NAME' starts a card, or write them under [engine.limits]",
    Way.PLACES: "use --where, one command each",
    Way.NAME_CAUSE: "with diagnose close --cause. Try: diagnose show {cause}",
    Way.CAUSE: "--cause",
    Way.HOW: 'say how the cause was confirmed: --how "seen with the sump off"',
    Way.MINUTES: "--minutes",
    Way.REASON: ": --reason",
    Way.REPAIRED: "--after-repair",
    Way.FITTED: "record it again with --fitted",
    Way.READING: 'write one down: diagnose record {case} --reading "700 rpm 95 C 8 psi"',
    Way.BUDGET: "diagnose budget shows how much",
    Way.FORECAST: "diagnose forecast says why",
    Way.FIRST_START: "diagnose signoff --start",
    Way.BEGIN_CASE: "'diagnose ask' starts one",
    Way.MAKE_SHEET: "'diagnose teardown CASE --markdown' makes one",
    Way.BEGIN_CARD: "'diagnose card NAME' starts one",
    Way.NAME_CARD: "'diagnose card' shows it, a case names it under [engine]",
}
_words: ContextVar[Mapping[Way, str]] = ContextVar("words", default=COMMANDS)


def to(way: Way, **filled: str) -> str:
    """The words for a way on the surface at hand.

    >>> to(Way.NOTE), to(Way.LOOK_UP, words="needle dances")
    ('with --note', 'Try: diagnose lookup needle dances')
    """
    return _words.get()[way].format(**filled)


@contextmanager
def worded(words: Mapping[Way, str]) -> Iterator[None]:
    """Say every way in these words as long as it lasts, in this context only."""
    token = _words.set(words)
    try:
        yield
    finally:
        _words.reset(token)
