"""Oil like a milkshake full of bubbles holds air; like a milkshake alone, it holds water."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.understanding.facts import Fact
from diagnose.understanding.paragraph import Line, Paragraph
from knowledge.lexicon.word_sets import set_of as _set

_MILKY = "oil_milky"
#: drinks that froth: likened to them, oil with bubbles in it need hold no water
_DRINKS = _set("milkshake shake cappuccino latte coffee beer cola soda lemonade champagne shandy")
_FROTH = _set(
    "foam foams foamy foaming foamed froth froths frothy frothing frothed bubbles bubble bubbly "
    "bubbling aerated aeration air airy whipped fizzy"
)
#: say so of water itself
_WET = _set("milky water watery coolant antifreeze emulsion emulsified mayo mayonnaise")


def without_frothy_drinks(facts: Iterable[Fact], paragraph: Paragraph) -> list[Fact]:
    """Without water in oil that is only likened to a drink, where the same sentence names bubbles."""
    frothy = [line for line in paragraph.lines if _only_froths(line)]
    return [
        f
        for f in facts
        if f.name != _MILKY or not f.is_present or not any(_in(line, f) for line in frothy)
    ]


def _only_froths(line: Line) -> bool:
    words = {t.word for t in line.tokens}
    return bool(words & _DRINKS and words & _FROTH) and not words & _WET


def _in(line: Line, fact: Fact) -> bool:
    first, last = line.tokens[0].start, line.tokens[-1].end
    return all(first <= a and b <= last for a, b in fact.spans)
