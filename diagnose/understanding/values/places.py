"""Where on the engine a value was measured: "no 3 main", "front .011", "rear one"."""

from __future__ import annotations

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.values.numbered_values import glued_number, is_except, is_pronoun
from diagnose.understanding.values.values_named import NUMBER_WORDS, Name
from diagnose.understanding.words.amounts import Amount
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.values.quantities import ORDINALS, PLACES

#: how a place on the engine is called, by quantity
PART_OF = {"main_clearance": "main", "rod_clearance": "rod", "cam_bearing_clearance": "cam bearing"}
_MOST_PLACES = 16  #: the highest number of a bearing or cylinder
_TO = frozenset(["to", "and"])
#: before "back": somebody or something returns
_RETURNS = frozenset(
    ["comes", "came", "come", "coming", "goes", "went", "put", "gets", "is", "was"]
)
#: behind "the first", which is then a reading or a time, no place
_TIMES = frozenset(["was", "were", "time", "reading", "measurement", "figure", "value", "try"])
_PLACE_OF = {word: word for word in PLACES}


def place_of(
    line: Line, name: Name, amount: Amount, every: list[Amount]
) -> tuple[str, list[Mark[object]]]:
    """Where on the engine it was measured, and the words for it; empty where that is not said."""
    taken = {k for a in every for k in range(a.first, a.last)}
    near = [amount.first - 1, *range(amount.last, amount.last + 4)]
    if line.clause(amount.first) == line.clause(name.mark.first):
        behind = range(name.mark.last, min(name.mark.last + 3, amount.first))
        near = [*_named_before(line, amount), name.mark.first - 1, *behind, *near]
    for k in near:
        if not 0 <= k < len(line.tokens) or k in taken:
            continue
        if k > amount.last and any(is_except(line, i) for i in range(amount.last, k)):
            continue  # "all .0022 except number 5 .0041"
        if (
            _both_ways(line, k)
            or is_pronoun(line, k)
            or (line.word(k) == "back" and line.word(k - 1) in _RETURNS)
            or (line.word(k) in ORDINALS and line.word(k + 1) in _TIMES)
        ):
            continue
        token = line.tokens[k]
        label = _PLACE_OF.get(token.word) or ORDINALS.get(token.word) or glued_number(token.word)
        if token.kinds == {"number"} and token.value.isdecimal():
            label = token.value if 1 <= int(token.value) <= _MOST_PLACES else ""
            beside = line.word(k - 1) in NUMBER_WORDS or line.word(k - 1) in ("on", "at", "in")
            if k >= amount.last and not beside:
                label = ""
        if not label:
            continue
        first = k - 1 if line.word(k - 1) in NUMBER_WORDS else k
        part = PART_OF.get(name.quantity.id, "no" if label.isdecimal() else "")
        where = f"{part} {label}" if label.isdecimal() else f"{label} {part}".strip()
        return where, [Mark(True, first, k + 1)]
    return "", []


def _named_before(line: Line, amount: Amount) -> list[int]:
    """The word straight before a figure, where it is a place: "front .011 center .003"."""
    at = amount.first - 1
    return [at] if line.word(at) in PLACES or line.word(at) in ORDINALS else []


def _both_ways(line: Line, at: int) -> bool:
    """Whether a word for a place is of "front to back", "back and forth"."""
    words = [line.word(k) for k in range(at - 2, at + 3)]
    ways = PLACES | {"forth"}
    return (words[3] in _TO and words[4] in ways) or (words[1] in _TO and words[0] in ways)
