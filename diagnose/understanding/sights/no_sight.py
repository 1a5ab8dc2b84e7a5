"""When the words for a sight name another thing: "the filler cap off", "cam bearings look good"."""

from __future__ import annotations

from collections.abc import Callable

from diagnose.understanding.sentences.paragraph import (
    Line,
    over_months,
    reads_a_value,
    what_is_measured,
)
from diagnose.understanding.sights.ages import AGE
from diagnose.understanding.sights.holes import BROKEN_OPEN, known_hole
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.joining import acted, by_hand, opened_case
from knowledge.lexicon.sights.exceptions import (
    AT_ANOTHER_TIME,
    IN_ONE_RUN,
    INSIDE_THE_ENGINE,
    ITS_COVERS,
    LEAVES_THE_ENGINE,
    NOT_INSIDE,
)
from knowledge.lexicon.sights.of_another_part import OF_ANOTHER, OF_NEAR, PRIMING
from knowledge.lexicon.sights.split_crankcase import CASES
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.lexicon.words.joints import EXCEPT

_PLACE = 5  #: words behind in which it is said what oil comes out of
_BEARINGS = frozenset(["bearing", "bearings", "shell", "shells", "journal", "journals", "bushes"])
#: before "bearings": they are not those of the crank
_NOT_OF_THE_CRANK = frozenset(
    ["cam", "camshaft", "wheel", "turbo", "alternator", "balance", "pump"]
)
#: of these only what stands in the same clause may be another thing: "new sender, oil level ok"
_BY_CLAUSE = frozenset([AGE, "level_correct", "dipstick_low"])
_NEGATION = frozenset(NEGATION)


def is_no_sight(line: Line, mark: Mark[str]) -> bool:
    """Whether the words for a sight name another thing in their sentence."""
    return any(case(line, mark) for case in _CASES)


def is_reversed(line: Line, mark: Mark[str]) -> bool:
    """Whether a word among its words makes it another: "reads zero with the key off"."""
    within = line.words(mark.first, mark.last)
    other = NOT_INSIDE.get(mark.value, frozenset())
    return bool(within & other) and not within & _NEGATION - other


def is_no_sight_inside(line: Line, mark: Mark[str]) -> bool:
    """Whether no part is seen now: "all fine except number 6", "spun a bearing two years ago"."""
    if EXCEPT & line.words(mark.last, mark.last + 2):
        return True
    if AT_ANOTHER_TIME & line.words(mark.last, mark.last + 3):
        return True
    first = Mark(True, mark.first, mark.first + 1)
    return acted(line, first, [line.word(mark.first + 1)])  # "stripped the pump: gears good"


def _is_of_another(line: Line, mark: Mark[str]) -> bool:
    """Whether words straight before it make it another thing: "took the filler cap off"."""
    near = mark.first - OF_NEAR
    if mark.value in _BY_CLAUSE:
        near = max(near, line.clause(mark.first).first)  # "the oil is milky, 42,000 miles"
        if line.word(mark.first) in ("it", "its") and near > 0:
            near = line.clause(near - 1).first  # "pulled the filter and it's full of oil"
    return bool(line.words(near, mark.first) & OF_ANOTHER.get(mark.value, frozenset()))


def _is_a_known_hole(line: Line, mark: Mark[str]) -> bool:
    """Whether a hole in the block belongs there."""
    return mark.value in BROKEN_OPEN and known_hole(line, mark)


def _is_of_the_oil(line: Line, mark: Mark[str]) -> bool:
    """Whether "hot" is said of the oil: "oil temp 250", "after a quick run hot 0.5 bar"."""
    if mark.value != "engine_ran_hot":
        return False
    figure = any(t.is_figure for t in line.tokens[mark.last :][:1])
    return line.word(mark.first - 1) == "oil" or (line.word(mark.first) == "run" and figure)


def _is_an_opened_case(line: Line, mark: Mark[str]) -> bool:
    """Whether a case was opened to look: "crankcase split again"."""
    return mark.value in CASES and opened_case(line, mark)


def _is_of_no_crank(line: Line, mark: Mark[str]) -> bool:
    """Whether other bearings than those of the crank are meant: "cam bearings look good"."""
    return line.word(mark.first) in _BEARINGS and line.word(mark.first - 1) in _NOT_OF_THE_CRANK


def _is_of_a_clearance(line: Line, mark: Mark[str]) -> bool:
    """Whether it is said of a clearance, and not of the pressure."""
    return what_is_measured(line, mark.value)


def _is_a_reading(line: Line, mark: Mark[str]) -> bool:
    """Whether the needle stood, not the engine: "it sat at 45 for years"."""
    return mark.value == "stood_long" and reads_a_value(line, mark)


def _is_of_months(line: Line, mark: Mark[str]) -> bool:
    """Whether what is seen in one run came in months: "dropped over the last few months"."""
    return mark.value in IN_ONE_RUN and over_months(line, mark.first)


def _stays_in_the_engine(line: Line, mark: Mark[str]) -> bool:
    """Whether the oil leaves no engine that runs: "oil pouring out of the rockers", primed."""
    if mark.value not in LEAVES_THE_ENGINE:
        return False
    behind = line.words(mark.last, mark.last + _PLACE)
    within = behind & INSIDE_THE_ENGINE and not behind & ITS_COVERS
    return bool(within or PRIMING & {t.word for t in line.tokens})


def _is_sprayed_by_hand(line: Line, mark: Mark[str]) -> bool:
    """Whether a person sprays the oil."""
    return mark.value == "oil_sprayed" and by_hand(line, mark.first)


_CASES: tuple[Callable[[Line, Mark[str]], bool], ...] = (
    _is_of_another,
    _is_a_known_hole,
    _is_of_the_oil,
    _is_an_opened_case,
    _is_of_no_crank,
    _is_of_a_clearance,
    _is_a_reading,
    _is_of_months,
    _stays_in_the_engine,
    _is_sprayed_by_hand,
)
