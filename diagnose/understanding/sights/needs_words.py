"""Drop findings of what "it" does where the text never names what they are about."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.meant.beside_what_shows import PRESSURES, WARNS
from knowledge.lexicon.meant.must_name import NEEDS, OF_THE_PRESSURE
from knowledge.lexicon.shows.beside_pressure import DAMAGE


def without_unnamed(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, without findings whose "it" or "they" may be anything.

    "drove it home from the seller" and "it always looks the same" are of no pressure.
    """
    words = {t.word for line in paragraph.lines for t in line.tokens}
    words |= {f"@{kind}" for line in paragraph.lines for t in line.tokens for kind in t.kinds}
    shown = any(f.table in ("behaviour", "reading") for f in facts)
    named = shown or bool(words & (PRESSURES | WARNS | DAMAGE | {"@pressure"}))
    return [
        f
        for f in facts
        if (f.name not in NEEDS or words & NEEDS[f.name])
        and (named or f.name not in OF_THE_PRESSURE or words & OF_THE_PRESSURE[f.name])
    ]
