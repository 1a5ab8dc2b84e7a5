"""A whole text with the marks of every role and the stance of every word."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import pairwise
from typing import TypeVar

from diagnose.understanding.sentences.others import is_of_person
from diagnose.understanding.sentences.sides import this_side
from diagnose.understanding.sentences.stance import Stance, Stances, stances
from diagnose.understanding.words.answers import answered
from diagnose.understanding.words.facts import Fact, Span
from diagnose.understanding.words.lexicon import Lexicon
from diagnose.understanding.words.phrases import Mark, Phrases
from diagnose.understanding.words.text import Clause, Sentence, Token, sentences, stemmed
from knowledge.lexicon.engine.traits import GOVERNED
from knowledge.lexicon.shows.beside_pressure import CRANKED, LONG_KINDS, LONG_TIMES, STOPS_ITSELF
from knowledge.lexicon.shows.speeds import HEAT
from knowledge.lexicon.shows.when_moving import NOT_THE_WEATHER, OF_A_ROAD
from knowledge.lexicon.stance.stance_words import ASKED, LEADS_TO_IT, MACHINES, NORMS, OF_PERSONS
from knowledge.lexicon.words.joints import UNTIL
from knowledge.lexicon.work.beside_work import DATED, DISTURBED, SENDERS, WHENEVER
from knowledge.reports.words import Circumstance

Value = TypeVar("Value")
_COMMA, _BREAK = 3, 8  #: how much farther a word is beyond a comma, beyond "and", "but"


#: what may be low or fall as well as the pressure
_OTHERS = frozenset(
    stemmed(w)
    for w in (
        "level",
        "stick",
        "dipstick",
        "oil",
        "fuel",
        "coolant",
        "water",
        "compression",
        "battery",
        "voltage",
        "boost",
        "power",
        "temperature",
        "speed",
        "idle",
        "grade",
        "sound",
    )
)
LAMPS = frozenset(["light", "lamp", "alarm", "buzzer", "beeper", "warning"])
_FEWEST, _EARLY = 2, 3  #: sentences of such a text, and words before the machine
_TAKEN_OFF = frozenset(["off", "from", "like", "than", "with"])
_ARTICLES = frozenset(["the", "its", "our", "my", "very"])
_FIRST = frozenset(["first", "initial"])
_SINCE = frozenset(["since", "from"])
#: these say how hot it is inside a longer phrase as well
_HEAT_WORDS = {"cold": Circumstance.COLD, "hot": Circumstance.HOT, "warm": Circumstance.HOT}
_IDLE_WORDS = dict.fromkeys(("idle", "idling", "tickover"), Circumstance.IDLE)  # in "hot idle"
_HEAT = (Circumstance.COLD, Circumstance.HOT)
_NO_HEAT = (Circumstance.WARMING, Circumstance.AFTER_REST, Circumstance.HARD_RUN)


_FASTEST_IDLE = 1000.0  #: rpm: slower is an idle (judgement)
_TURNED = 4  #: so far behind "cranked" stands how long
_ABOVE = frozenset(["above", "over", "past", "beyond"])


@dataclass(frozen=True, eq=False)
class Line:
    """One sentence, its number, and how each word is meant."""

    number: int
    sentence: Sentence
    stances: Stances
    lexicon: Lexicon
    _found: dict[int, list[Mark[object]]] = field(default_factory=dict, repr=False)

    @property
    def tokens(self) -> tuple[Token, ...]:
        """Its tokens."""
        return self.sentence.tokens

    def find(self, phrases: Phrases[Value]) -> list[Mark[Value]]:
        """The phrases of one role in it."""
        key = id(phrases)
        if key not in self._found:
            self._found[key] = list(phrases.find(self.tokens))
        return self._found[key]  # type: ignore[return-value]

    def find_alike(self, phrases: Phrases[Value]) -> list[Mark[Value]]:
        """The phrases of one role in it, every meaning of the same words."""
        key = -id(phrases)
        if key not in self._found:
            self._found[key] = list(phrases.find_alike(self.tokens))
        return self._found[key]  # type: ignore[return-value]

    def stated(self, phrases: Phrases[Value]) -> list[Mark[Value]]:
        """The phrases of one role that are stated of this engine, denied or not."""
        return [m for m in self.find(phrases) if self.is_stated(m)]

    def is_stated(self, mark: Mark[object]) -> bool:
        """Whether a phrase is said of this engine, and not supposed."""
        return not self.stances.at(mark) & (Stance.SUPPOSED | Stance.ELSEWHERE)

    @cached_property
    def circumstances(self) -> tuple[Mark[Circumstance], ...]:
        """When it shows; "cold start" is both cold and a start."""
        found: list[Mark[Circumstance]] = []
        every = self.find(self.lexicon.during)
        idles = [m for m in every if m.value is Circumstance.IDLE]
        for mark in every:
            if mark.value is Circumstance.STANDING and any(
                m.overlaps(mark) and m.last > mark.last for m in idles
            ):
                continue  # "when sitting in traffic"
            if mark.value is Circumstance.START and self._since_first(mark):
                continue
            far = any("farther" in self.tokens[k].kinds for k in range(mark.first, mark.last))
            if far and mark.value in (Circumstance.MINUTES, Circumstance.LATE):
                continue  # "the fourth engine in 2,000 miles"
            turned = range(max(0, mark.first - _TURNED), mark.last)
            if mark.value is Circumstance.MINUTES and any(self.word(k) in CRANKED for k in turned):
                continue  # "cranked it for two minutes"
            if mark.value is Circumstance.TOUCHED and _was_work(self, mark):
                continue  # "I moved the wires 3 weeks ago"
            inside = self.words(mark.first, mark.last)
            if mark.value is Circumstance.AFTER_REST and "itself" in inside:
                continue  # "switches itself off after a few minutes"
            if mark.value is Circumstance.AFTER_REST and self.word(mark.first) in STOPS_ITSELF:
                if "after" not in inside:
                    continue
                mark = Mark(Circumstance.MINUTES, mark.first, mark.last)  # "shuts off after 40 min"
            if self.word(mark.first) in ("below", "under") and _is_fast(self, mark):
                continue  # "under 3000 rpm"
            if mark.value is Circumstance.WET and self.word(mark.last) in NOT_THE_WEATHER:
                continue  # "wet clutch"
            if mark.value is Circumstance.SPEED and OF_A_ROAD & {
                self.word(mark.last + (self.word(mark.last) == "over"))
            }:
                continue  # "when I drive over bumps", "speed humps"
            if mark.value is Circumstance.SPEED and _idles(self, mark):
                mark = Mark(Circumstance.IDLE, mark.first, mark.last)
            if "pedal" in inside and any(t.word == "clutch" for t in self.tokens):
                mark = Mark(Circumstance.CLUTCH, mark.first, mark.last)
            found.append(mark)
            words = _HEAT_WORDS if mark.value not in _HEAT else _HEAT_WORDS | _IDLE_WORDS
            for k in range(mark.first, mark.last):
                also = words.get(self.word(k))
                if also not in (None, mark.value) and len(mark) > 1 and mark.value not in _NO_HEAT:
                    found.append(Mark(words[self.word(k)], k, k + 1))
        return tuple(found)

    def _since_first(self, mark: Mark[Circumstance]) -> bool:
        """Whether it says since when, not when: "since the first start"."""
        before = mark.first - 1
        while self.word(before) in _ARTICLES:
            before -= 1
        first = any(self.word(k) in _FIRST for k in range(mark.first, mark.last))
        return first and self.word(before) in _SINCE

    def denied(self, mark: Mark[object]) -> bool:
        """Whether the phrase is denied."""
        return bool(self.stances.at(mark) & Stance.DENIED)

    def guessed(self, mark: Mark[object]) -> bool:
        """Whether it is the person's guess."""
        return bool(self.stances.at(mark) & Stance.GUESSED)

    def usual(self, mark: Mark[object]) -> bool:
        """Whether it is said of the time before."""
        return bool(self.stances.at(mark) & Stance.USUAL)

    def span(self, marks: Iterable[Mark[object]]) -> tuple[Span, ...]:
        """Where the marks stand in the text; neighbours are joined."""
        spans = sorted((m.first, m.last) for m in marks if m.last > m.first)
        joined: list[list[int]] = []
        for first, last in spans:
            between = self.tokens[joined[-1][1] : first] if joined else ()
            if joined and first <= joined[-1][1] + 2 and not any(t.is_mark for t in between):
                joined[-1][1] = max(joined[-1][1], last)
            else:
                joined.append([first, last])
        return tuple((self.tokens[a].start, self.tokens[b - 1].end) for a, b in joined)

    def clause(self, at: int) -> Clause:
        """The clause of a token."""
        return next(c for c in self.sentence.clauses if c.first <= at < c.last)

    def distance(self, a: Mark[object], b: Mark[object]) -> int:
        """How far apart two phrases are, in words; commas and joints count more."""
        if a.overlaps(b):
            return 0
        first, last = (a.last, b.first) if a.first < b.first else (b.last, a.first)
        far = last - first
        for token in self.tokens[first:last]:
            if token.word in ("@", "="):
                continue
            if token.is_mark:
                far += _COMMA
            elif token.word in ("and", "then"):
                far += _COMMA - 1
            elif token.word in ("but", "however", "though", "although"):
                far += _BREAK
        return far

    def word(self, at: int) -> str:
        """The word at a place; empty outside the sentence."""
        return self.tokens[at].word if 0 <= at < len(self.tokens) else ""

    def words(self, first: int, last: int) -> set[str]:
        """The words from one place to before another; an empty one for what is outside."""
        return {self.word(k) for k in range(first, last)}


def places_of(fact: Fact, line: Line) -> list[int]:
    """The places of the words of a fact in a sentence; none where they stand in another."""
    return [k for k, t in enumerate(line.tokens) if any(a <= t.start < b for a, b in fact.spans)]


def heat_at(line: Line, mark: Mark[object], at: int = 0) -> str:
    """How hot a word for heat says the oil was at token ``at``: cold at "60 psi until it gets hot"."""
    near = range(mark.first - 4, mark.first + 1)
    until = next((k for k in near if line.word(k) in UNTIL), 0)
    was_cold = at < mark.last and any(
        line.tokens[k].is_figure for k in range(max(0, until - 2), until)
    )
    value = Circumstance.COLD if was_cold else mark.value
    return HEAT[value].value if isinstance(value, Circumstance) else ""


def over_months(line: Line, at: int) -> bool:
    """Whether the clause of a token speaks of weeks or longer, which nobody watches."""
    clause = line.clause(at)
    said = line.tokens[clause.first : clause.last]
    return any(t.word in LONG_TIMES or t.kinds & LONG_KINDS for t in said)


def _is_theirs(cut: Sequence[Sentence], lexicon: Lexicon) -> bool:
    """Whether a text begins with another person's machine and names no other: it is of that one."""
    if len(cut) < _FEWEST:
        return False
    tokens = cut[0].tokens
    marks = [m for m in lexicon.other.find(tokens) if is_of_person(tokens, m)]
    taken_off = any(t.word in _TAKEN_OFF for t in tokens[:_EARLY])
    begins = any(m.first <= _EARLY for m in marks) and not taken_off
    if not (begins or any(_leads_to_it(tokens[: m.first]) for m in marks)):
        return False
    return not any(lexicon.this.find(s.tokens) or _names_own(s.tokens) for s in cut)


def _of_a_norm(sentence: Sentence) -> bool:
    """Whether a sentence ends with what a book asks for: "book wants 3.5"."""
    last = sentence.clauses[-1]
    return any(t.word in NORMS | ASKED for t in sentence.tokens[last.first : last.last])


def _leads_to_it(lead: Sequence[Token]) -> bool:
    """Whether work or trouble leads to a machine: "did an oil change on the wife's suv"."""
    words = [t.word for t in lead]
    near = words[-1:] in (["on"], ["in"], ["with"], ["to"])
    return near and "same" not in words and bool(LEADS_TO_IT & set(words))


def _names_own(tokens: Sequence[Token]) -> bool:
    """Whether a machine is called the person's own: "my boat"."""
    own = [k for k, t in enumerate(tokens) if t.word in ("my", "our")]
    near = ([t.word for t in tokens[k + 1 : k + 1 + _EARLY]] for k in own)
    return any(MACHINES & set(words) and not OF_PERSONS & set(words) for words in near)


def reads_a_value(line: Line, mark: Mark[object]) -> bool:
    """Whether a number that is no time stands in a phrase: "it sat at 45 for years"."""
    inside = line.tokens[mark.first : mark.last]
    return any(t.kinds & {"number", "pressure", "range"} and "time" not in t.kinds for t in inside)


def what_is_measured(line: Line, finding: str) -> bool:
    """Whether the book's word on a reading is in truth on a clearance: "mains .003, within spec"."""
    sizes = any("length" in t.kinds or t.word.startswith((".0", "0.0")) for t in line.tokens)
    return finding == "maker_calls_it_normal" and sizes


def new_now(line: Line, first: int, last: int) -> bool:
    """Whether a clause says of its tokens that it never was so before, as it is now."""
    clause = line.clause(first)
    never = any(line.word(k) == "never" for k in range(clause.first, first))
    return never and any(line.word(k) == "before" for k in range(last, clause.last))


@dataclass(frozen=True)
class Paragraph:
    """A text, cut into sentences."""

    text: str
    lexicon: Lexicon

    @cached_property
    def lines(self) -> tuple[Line, ...]:
        """Its sentences in order."""
        found: list[Line] = []
        elsewhere = False
        cut = answered(sentences(self.text, self.lexicon.spelling))
        side = this_side(cut, self.lexicon)
        theirs = _is_theirs(cut, self.lexicon)
        for number, sentence in enumerate(cut):
            meant = stances(sentence, self.lexicon, elsewhere, side, theirs)
            elsewhere = any(s & Stance.ELSEWHERE for s in meant.of[-1:]) and not _of_a_norm(
                sentence
            )
            found.append(Line(number, sentence, meant, self.lexicon))
        return tuple(found)

    @cached_property
    def names_no_other(self) -> bool:
        """Whether nothing but the pressure is named that may be low or fall: no level, no fuel."""
        said = {t.stem for line in self.lines for t in line.tokens}
        return not said & _OTHERS

    @cached_property
    def names_lamp(self) -> bool:
        """Whether a lamp or an alarm is named, which "goes off" as it goes out."""
        return any(t.word in LAMPS for line in self.lines for t in line.tokens)

    @cached_property
    def is_governed(self) -> bool:
        """Whether it is of an engine whose governor holds a high and a low idle."""
        return any(
            any(m.value in GOVERNED for m in line.lexicon.traits.find_each(line.tokens))
            or any((a.word, b.word) == ("low", "idle") for a, b in pairwise(line.tokens))
            for line in self.lines
        )

    @cached_property
    def speaks_of_pressure(self) -> bool:
        """Whether an instrument or a pressure is named anywhere."""
        return any(
            line.find(self.lexicon.instrument) or any("pressure" in t.kinds for t in line.tokens)
            for line in self.lines
        )


def _was_work(line: Line, mark: Mark[Circumstance]) -> bool:
    """Whether wires were moved at another time, or the sender itself to another place."""
    if line.word(mark.first) not in DISTURBED:
        return False
    clause = line.clause(mark.first)
    behind = range(mark.last, clause.last)
    dated = any("time" in line.tokens[k].kinds or line.word(k) in DATED for k in behind)
    led = line.words(clause.first, mark.first) & WHENEVER
    sender = line.word(mark.last - 1) in SENDERS and line.word(mark.first) == "moved"
    return (dated or sender) and not led


def _is_fast(line: Line, mark: Mark[Circumstance]) -> bool:
    """Whether a speed in figures is more than that of any idle."""
    said = line.tokens[mark.first : mark.last]
    speeds = [float(t.value.split()[0]) for t in said if "rpm" in t.kinds]
    return bool(speeds) and max(speeds) > _FASTEST_IDLE


def _idles(line: Line, mark: Mark[Circumstance]) -> bool:
    """Whether a speed is given in figures that are those of an idle: "at 750 rpm"."""
    said = line.tokens[mark.first : mark.last]
    speeds = [float(t.value.split()[0]) for t in said if "rpm" in t.kinds]
    above = {t.word for t in said} & _ABOVE
    return bool(speeds) and max(speeds) < _FASTEST_IDLE and not above
