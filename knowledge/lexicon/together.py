"""Words that together name a finding: the files of each station, put together.

A group holds sets of words, the most telling first: one of each must stand in the clause of the
first (behind ``+``) or in its sentence (behind ``&``), in whatever order; behind ``-``: words that
must not stand there. ``a_b``: words in a row;
``@not``: a negation, ``@kind``: a figure of a kind; ``=``: in no other form of the word.
"""

from __future__ import annotations

from knowledge.lexicon.together_bearings import TOGETHER_BEARINGS, TOGETHER_BEARINGS_ABSENT
from knowledge.lexicon.together_delivery import TOGETHER_DELIVERY, TOGETHER_DELIVERY_ABSENT
from knowledge.lexicon.together_instrument import (
    TOGETHER_INSTRUMENT,
    TOGETHER_INSTRUMENT_ABSENT,
)
from knowledge.lexicon.together_oil import TOGETHER_OIL, TOGETHER_OIL_ABSENT
from knowledge.lexicon.together_pump import TOGETHER_PUMP, TOGETHER_PUMP_ABSENT

#: the finding, by what is said when it is there
TOGETHER: dict[str, tuple[str, ...]] = {
    **TOGETHER_INSTRUMENT,
    **TOGETHER_PUMP,
    **TOGETHER_DELIVERY,
    **TOGETHER_BEARINGS,
    **TOGETHER_OIL,
}
#: the finding, by what is said when it is not there
TOGETHER_ABSENT: dict[str, tuple[str, ...]] = {
    **TOGETHER_INSTRUMENT_ABSENT,
    **TOGETHER_PUMP_ABSENT,
    **TOGETHER_DELIVERY_ABSENT,
    **TOGETHER_BEARINGS_ABSENT,
    **TOGETHER_OIL_ABSENT,
}
