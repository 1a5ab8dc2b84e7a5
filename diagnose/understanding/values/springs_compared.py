"""What the relief spring's length beside that of another says: "2.1 long, the new one 2.3"."""

from __future__ import annotations

import re
from collections.abc import Iterator

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.values.values_named import Name
from diagnose.understanding.words.facts import Fact
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.values.quantities import NEW_ONE, OLD_ONE

_SPRING = "relief_spring_length"
_SHORT, _ANOTHER = "relief_spring_short_or_broken", "relief_parts_not_standard"
SAID_BY_SPRINGS = frozenset([_SHORT, _ANOTHER])  #: findings that two lengths show
_NEXT, _BEHIND_IT = 10, 6  #: words from one length to another; looked at behind that
_SHORTER = 0.01  #: share by which a spring is shorter than the other (judgement)


def springs_compared(line: Line, names: list[Name]) -> Iterator[Fact]:
    """What the relief spring's length beside that of another says: "2.1 long, the new one 2.3"."""
    for name in names:
        if name.quantity.id != _SPRING or name.alone:
            continue
        behind = range(name.mark.last, min(name.mark.last + _NEXT, len(line.tokens)))
        first = next((k for k in behind if _length(line, k)), None)
        if first is None:
            continue
        then = range(first + 1, min(first + _NEXT, len(line.tokens)))
        other = next((k for k in then if _length(line, k)), None)
        if other is None:
            continue
        said = {line.word(k) for k in (*then[: other - first], *range(other, other + _BEHIND_IT))}
        new_is_other = bool(said & NEW_ONE)
        if new_is_other == bool(said & OLD_ONE):
            continue  # which is which is not said
        what = _SHORT if new_is_other else _ANOTHER
        if _length(line, first) < _length(line, other) * (1.0 - _SHORTER):
            span = line.span([name.mark, Mark(True, first, other + 1)])
            yield Fact("finding", {"what": what, "state": "present"}, span)
            return


def _length(line: Line, at: int) -> float:
    """The figure of a token that may be a length, whatever its unit; 0 where it is none."""
    said = re.match(r"\d*\.?\d+", line.word(at)) if line.tokens[at].is_figure else None
    other = line.tokens[at].kinds - {"number", "length"}
    return float(said[0]) if said and not other else 0.0
