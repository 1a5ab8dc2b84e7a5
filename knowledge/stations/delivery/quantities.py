"""Quantities of filter, passage and galleries."""

from knowledge.model import Quantity
from knowledge.sources import JUDGEMENT
from knowledge.units import MM, PSI

FILTER_BLOCKED = Quantity(
    id="filter_blocked",
    says="resistance of the filter, as a multiple of a clean one's",
    dimension="count",
    plausible=(0.2, 1000.0),
    source=JUDGEMENT,
)
COOLER_OPEN_SHARE = Quantity(
    id="cooler_open_share",
    says="open share of the oil cooler and its lines",
    dimension="fraction",
    plausible=(0.002, 1.0),
    unit="%",
    source=JUDGEMENT,
)
OPEN_HOLE = Quantity(
    id="open_hole",
    says="bore of a hole that should be plugged",
    dimension="length",
    plausible=(0.0, 30 * MM),
    unit="mm",
    source=JUDGEMENT,
)

# dimensions of the circuit
FILTER_BYPASS = Quantity(
    id="filter_bypass",
    says="filter bypass opens at",
    dimension="pressure",
    plausible=(2 * PSI, 100 * PSI),
    source=JUDGEMENT,
)
FILTER_DROP = Quantity(
    id="filter_drop",
    says="pressure drop of a clean filter at 12 l/min of oil of 12 mPa s",
    dimension="pressure",
    plausible=(0.0, 3e5),
    source=JUDGEMENT,
)
PASSAGE_DIAMETER = Quantity(
    id="passage_diameter",
    says="bore of the passage from pump to gallery",
    dimension="length",
    plausible=(1 * MM, 300 * MM),
    source=JUDGEMENT,
)
PASSAGE_K = Quantity(
    id="passage_k",
    says="loss coefficients of the passage, summed",
    dimension="count",
    plausible=(0.0, 40.0),
    source=JUDGEMENT,
)
OTHER_LEAK = Quantity(
    id="other_leak",
    says="unlisted leaks, in litres per minute at 100 kPa and 12 mPa s",
    dimension="count",
    plausible=(0.0, 60.0),
    source=JUDGEMENT,
)
