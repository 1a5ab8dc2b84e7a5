"""What every repair of the oil side uses up."""

from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP

NEW_OIL = Part(
    "new_oil",
    "oil of the grade the engine maker names",
    "the fill, and the new filter's share",
    CP,
    measure_first="the measured fill, and what the filter holds",
    always=True,
)
NEW_FILTER = Part(
    "new_filter",
    "listed oil filter with its seal",
    "1, and 1 more for the first change",
    CP,
    measure_first="thread, seal diameter and the bypass setting against the list",
    always=True,
)
