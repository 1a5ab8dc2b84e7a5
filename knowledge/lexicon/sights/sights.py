"""What is seen, smelt or known of an engine: the files of each station, put together."""

from __future__ import annotations

from knowledge.lexicon.sights.answers import SIGHTS_ANSWERS, SIGHTS_ANSWERS_ABSENT
from knowledge.lexicon.sights.assembly import SIGHTS_ASSEMBLY
from knowledge.lexicon.sights.bearings import SIGHTS_BEARINGS
from knowledge.lexicon.sights.brief import SIGHTS_BRIEF
from knowledge.lexicon.sights.debris import SIGHTS_DEBRIS, SIGHTS_DEBRIS_ABSENT
from knowledge.lexicon.sights.delivery import SIGHTS_DELIVERY
from knowledge.lexicon.sights.denied import SIGHTS_DENIED, SIGHTS_NOTHING
from knowledge.lexicon.sights.found import SIGHTS_FOUND, SIGHTS_FOUND_ABSENT
from knowledge.lexicon.sights.history import SIGHTS_HISTORY, SIGHTS_HISTORY_ABSENT
from knowledge.lexicon.sights.instrument import SIGHTS_INSTRUMENT
from knowledge.lexicon.sights.leaks import SIGHTS_LEAKS, SIGHTS_LEAKS_ABSENT
from knowledge.lexicon.sights.noted import SIGHTS_NOTED, SIGHTS_NOTED_ABSENT
from knowledge.lexicon.sights.oil import SIGHTS_OIL, SIGHTS_OIL_ABSENT
from knowledge.lexicon.sights.oil_look import SIGHTS_OIL_LOOK, SIGHTS_OIL_LOOK_ABSENT
from knowledge.lexicon.sights.pressure import SIGHTS_PRESSURE
from knowledge.lexicon.sights.pump import SIGHTS_PUMP
from knowledge.lexicon.sights.rebuilt import SIGHTS_REBUILT, SIGHTS_REBUILT_ABSENT
from knowledge.lexicon.sights.relief import SIGHTS_RELIEF
from knowledge.lexicon.sights.shop import SIGHTS_SHOP, SIGHTS_SHOP_ABSENT
from knowledge.lexicon.sights.short import SIGHTS_SHORT
from knowledge.lexicon.sights.suction import SIGHTS_SUCTION
from knowledge.lexicon.sights.topend import SIGHTS_TOPEND
from knowledge.lexicon.sights.typed import SIGHTS_TYPED

__all__ = ["SIGHTS", "SIGHTS_ABSENT", "SIGHTS_NOTHING"]
#: one table for each station; an id stands in one of them only
TABLES: tuple[dict[str, tuple[str, ...]], ...] = (
    SIGHTS_ASSEMBLY,
    SIGHTS_BEARINGS,
    SIGHTS_DEBRIS,
    SIGHTS_DELIVERY,
    SIGHTS_HISTORY,
    SIGHTS_INSTRUMENT,
    SIGHTS_LEAKS,
    SIGHTS_OIL,
    SIGHTS_OIL_LOOK,
    SIGHTS_PRESSURE,
    SIGHTS_PUMP,
    SIGHTS_RELIEF,
    SIGHTS_SUCTION,
    SIGHTS_TOPEND,
)
#: the finding, by what is said when it is there
SIGHTS: dict[str, tuple[str, ...]] = {k: v for table in TABLES for k, v in table.items()}
#: further phrases for the same ids
BESIDE: tuple[dict[str, tuple[str, ...]], ...] = (
    SIGHTS_BRIEF,
    SIGHTS_SHORT,
    SIGHTS_FOUND,
    SIGHTS_REBUILT,
    SIGHTS_NOTED,
    SIGHTS_SHOP,
    SIGHTS_ANSWERS,
    SIGHTS_TYPED,
)
for _table in BESIDE:
    for _id, _said in _table.items():
        SIGHTS[_id] = SIGHTS.get(_id, ()) + _said
ABSENT_TABLES: tuple[dict[str, tuple[str, ...]], ...] = (
    SIGHTS_DEBRIS_ABSENT,
    SIGHTS_DENIED,
    SIGHTS_HISTORY_ABSENT,
    SIGHTS_LEAKS_ABSENT,
    SIGHTS_OIL_ABSENT,
    SIGHTS_OIL_LOOK_ABSENT,
)
#: the finding, by what is said when it is not there
SIGHTS_ABSENT: dict[str, tuple[str, ...]] = {
    k: v for table in ABSENT_TABLES for k, v in table.items()
}
#: further phrases for the same ids
BESIDE_ABSENT: tuple[dict[str, tuple[str, ...]], ...] = (
    SIGHTS_FOUND_ABSENT,
    SIGHTS_REBUILT_ABSENT,
    SIGHTS_NOTED_ABSENT,
    SIGHTS_SHOP_ABSENT,
    SIGHTS_ANSWERS_ABSENT,
)
for _table in BESIDE_ABSENT:
    for _id, _said in _table.items():
        SIGHTS_ABSENT[_id] = SIGHTS_ABSENT.get(_id, ()) + _said
