"""What is not in the book can do what the book's causes do."""

from knowledge.causes.unlisted import NOT_IN_THE_BOOK
from knowledge.conditions import (
    BEARINGS_DAMAGED,
    OIL_ESCAPING,
    PRESSURE_GONE,
    PRESSURE_HIGH,
    PRESSURE_LOW,
    PRESSURE_UNSTEADY,
    READING_FALSE,
)
from knowledge.findings.pressure import GAUGE_READS_LOW, NEEDLE_FLICKERS
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import JUDGEMENT
from knowledge.vocabulary import OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.ASSEMBLY)


@rule(
    source=JUDGEMENT,
    catches=[case_of(GAUGE_READS_LOW), case_of(NEEDLE_FLICKERS)],
    spares=[case_of(lacks=[GAUGE_READS_LOW, NEEDLE_FLICKERS])],
)
def book_is_not_everything(known: Known) -> Conclusions:
    """The book is not everything: what it has no name for can show as any of this."""
    yield leads_to(NOT_IN_THE_BOOK, PRESSURE_LOW, OFTEN)
    yield leads_to(NOT_IN_THE_BOOK, PRESSURE_GONE, SOMETIMES)
    yield leads_to(NOT_IN_THE_BOOK, PRESSURE_UNSTEADY, SOMETIMES)
    yield leads_to(NOT_IN_THE_BOOK, PRESSURE_HIGH, SELDOM)
    yield leads_to(NOT_IN_THE_BOOK, READING_FALSE, SELDOM)
    yield leads_to(NOT_IN_THE_BOOK, OIL_ESCAPING, SELDOM)
    yield leads_to(NOT_IN_THE_BOOK, BEARINGS_DAMAGED, SOMETIMES)
