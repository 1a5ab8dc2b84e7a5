"""The weight of what is not in the book."""

from knowledge.sources import JUDGEMENT
from knowledge.vocabulary import Cause, Rate, Station

NOT_IN_THE_BOOK = Cause(
    "not_in_the_book",
    Station.ASSEMBLY,
    "something that is not in this book",
    "whatever the book has no name for can lower, lose or unsettle the pressure as well",
    Rate.COMMON,
    "0 0 0 0 0",
    "follow the oil with gauges from station to station; ask someone who knows this engine",
    JUDGEMENT,
    follows="whatever low pressure does",
)
