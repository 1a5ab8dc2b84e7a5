"""The cause that stands for everything not listed, and what it can lead to."""

from knowledge.circuit import conditions
from knowledge.model import OFTEN, SELDOM, SOMETIMES, Cause, Rate, Shifts, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import JUDGEMENT

NOT_IN_THE_BOOK = Cause(
    id="not_in_the_book",
    station=Station.ASSEMBLY,
    says="something that is not in this book",
    mechanism="a cause without a name in this book can lower, lose or unsettle the pressure too",
    rate=Rate.COMMON,
    shifts=Shifts(),
    remedy="follow the oil with gauges from station to station; ask someone who knows this engine",
    source=JUDGEMENT,
    follows="the same as low pressure from any cause",
)
BOOK_IS_NOT_EVERYTHING = LinkGroup(
    id="book_is_not_everything",
    station=Station.ASSEMBLY,
    says="This book is not complete: a cause without a name here can show as any of this.",
    parent=NOT_IN_THE_BOOK,
    effects={
        conditions.PRESSURE_LOW: (OFTEN, JUDGEMENT),
        conditions.PRESSURE_GONE: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_UNSTEADY: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_HIGH: (SELDOM, JUDGEMENT),
        conditions.READING_FALSE: (SELDOM, JUDGEMENT),
        conditions.OIL_ESCAPING: (SELDOM, JUDGEMENT),
        conditions.BEARINGS_DAMAGED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(patterns.GAUGE_READS_LOW), example(patterns.NEEDLE_FLICKERS)],
    non_matches=[example(lacks=[patterns.GAUGE_READS_LOW, patterns.NEEDLE_FLICKERS])],
)
