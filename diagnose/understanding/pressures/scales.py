"""Figures that stand on a gauge, which no needle needs to show: "the highest mark on it (80 psi)"."""

from __future__ import annotations

from diagnose.understanding.sentences.paragraph import Line
from knowledge.lexicon.words.word_sets import set_of as _set

_CALIBRATED = _set("calibrated graduated")
_HIGHEST = _set("highest top maximum max last biggest")
_MARKS = _set("mark reading figure number graduation marking value")
_ON = _set("on of")
_GAUGES = _set("gauge gage dial scale clock face")
_TESTED = _GAUGES | _set("test oil pressure mechanical master")
_REACH = 6  #: words between the mark and its figure


def is_of_the_scale(line: Line, at: int) -> bool:
    """Whether a figure says what is printed on a gauge, and not what it shows."""
    first = line.clause(at).first
    calibrated = [k for k in range(first, at) if line.word(k) in _CALIBRATED]
    if any(line.word(k + 1) not in _TESTED for k in calibrated):  # not "a calibrated gauge"
        return True
    for k in range(max(0, at - _REACH), at):
        printed = line.word(k) in _MARKS and line.word(k - 1) in _HIGHEST
        named = [n for n in range(k + 1, at) if line.word(n) in _GAUGES]
        if printed and line.word(k + 1) in _ON and named and _only_marks(line, named[-1] + 1, at):
            return True
    return False


def _only_marks(line: Line, first: int, last: int) -> bool:
    """Whether no word stands in some places, as "is" does in "the highest on the gauge is 20"."""
    return all(line.tokens[k].is_mark for k in range(first, last))
