"""Words that together name a finding: the files of each station, put together.

A group holds sets of words, the most telling first: one of each must stand in the clause of the
first (behind ``+``) or in its sentence (behind ``&``), in whatever order; behind ``-``: words that
must not stand there. ``a_b``: words in a row;
``@not``: a negation, ``@kind``: a figure of a kind; ``=``: in no other form of the word.
"""

from __future__ import annotations

from knowledge.lexicon.together.bearings import TOGETHER_BEARINGS, TOGETHER_BEARINGS_ABSENT
from knowledge.lexicon.together.delivery import TOGETHER_DELIVERY, TOGETHER_DELIVERY_ABSENT
from knowledge.lexicon.together.inside import TOGETHER_INSIDE
from knowledge.lexicon.together.instrument import (
    TOGETHER_INSTRUMENT,
    TOGETHER_INSTRUMENT_ABSENT,
)
from knowledge.lexicon.together.often import TOGETHER_OFTEN, TOGETHER_OFTEN_ABSENT
from knowledge.lexicon.together.oil import TOGETHER_OIL, TOGETHER_OIL_ABSENT
from knowledge.lexicon.together.plain import TOGETHER_PLAIN, TOGETHER_PLAIN_ABSENT
from knowledge.lexicon.together.pump import TOGETHER_PUMP, TOGETHER_PUMP_ABSENT
from knowledge.lexicon.together.running import TOGETHER_RUNNING, TOGETHER_RUNNING_ABSENT
from knowledge.lexicon.together.short import TOGETHER_SHORT, TOGETHER_SHORT_ABSENT
from knowledge.lexicon.together.ways import TOGETHER_WAYS, TOGETHER_WAYS_INSIDE


def _all(*tables: dict[str, tuple[str, ...]]) -> dict[str, tuple[str, ...]]:
    """Tables put together; what several say of a finding holds all the same."""
    ids = dict.fromkeys(id_ for table in tables for id_ in table)
    return {id_: tuple(t for table in tables for t in table.get(id_, ())) for id_ in ids}


#: the finding, by what is said when it is there
TOGETHER: dict[str, tuple[str, ...]] = _all(
    TOGETHER_INSTRUMENT,
    TOGETHER_PUMP,
    TOGETHER_DELIVERY,
    TOGETHER_BEARINGS,
    TOGETHER_OIL,
    TOGETHER_RUNNING,
    TOGETHER_OFTEN,
    TOGETHER_INSIDE,
    TOGETHER_WAYS,
    TOGETHER_WAYS_INSIDE,
    TOGETHER_PLAIN,
    TOGETHER_SHORT,
)
#: the finding, by what is said when it is not there
TOGETHER_ABSENT: dict[str, tuple[str, ...]] = _all(
    TOGETHER_INSTRUMENT_ABSENT,
    TOGETHER_PUMP_ABSENT,
    TOGETHER_DELIVERY_ABSENT,
    TOGETHER_BEARINGS_ABSENT,
    TOGETHER_OIL_ABSENT,
    TOGETHER_RUNNING_ABSENT,
    TOGETHER_OFTEN_ABSENT,
    TOGETHER_PLAIN_ABSENT,
    TOGETHER_SHORT_ABSENT,
)
#: of these, what is said when they are not there stands above; a negation beside them says nothing
SAID_AS_SUCH = frozenset((*TOGETHER_RUNNING, *TOGETHER_OFTEN))
