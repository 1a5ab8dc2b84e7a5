"""Quantities of the oil itself, with their limits."""

from knowledge import sources
from knowledge.figures import THERMOMETER
from knowledge.limits import Limit, Printed, Side
from knowledge.model import Quantity
from knowledge.sources import JUDGEMENT

OIL_TEMPERATURE = Quantity(
    id="oil_heat",
    says="oil temperature in the sump or at the filter head",
    dimension="temperature",
    plausible=(223.15, 473.15),
    spread=THERMOMETER,
    source=JUDGEMENT,
)
FUEL_SHARE = Quantity(
    id="fuel_share",
    says="fuel in the oil, by the laboratory",
    short="fuel in the oil",
    dimension="fraction",
    plausible=(0.0, 0.6),
    spread=0.005,
    unit="%",
    source=JUDGEMENT,
)
# The error was 0.4 cSt as measured, 0.2 cSt as set and 2 % in the pressure budget; 0.3 cSt is 2 %
# of a usual hot oil.
VISCOSITY_AT_100C = Quantity(
    id="viscosity_at_100c",
    says="viscosity of the oil at 100 °C",
    dimension="viscosity",
    plausible=(1e-6, 60e-6),
    spread=0.3e-6,
    unit="cSt",
    source=JUDGEMENT,
)
DRAINED_VOLUME = Quantity(
    id="drained_volume",
    says="oil drained, by the jug",
    dimension="volume",
    plausible=(0.0, 0.4),
    spread=0.0002,
    source=JUDGEMENT,
)

MOST_OIL_TEMPERATURE = Limit(
    id="oil_temperature",
    says="highest oil temperature",
    quantities=(OIL_TEMPERATURE,),
    side=Side.MOST,
    typical=394.15,
    source=sources.ARMY_TM_272_TABLE,
    of="stop limit of a truck's stall test; used for every engine by common practice",
)
MOST_FUEL_SHARE = Limit(
    id="fuel_share_limit",
    says="highest share of fuel in the oil",
    quantities=(FUEL_SHARE,),
    side=Side.MOST,
    typical=0.04,
    source=sources.LABORATORY_FUEL,
    of="laboratory: act at once, any engine",
    others=(
        Printed(
            value=0.05,
            of="oil company's warning limit, any engine",
            source=sources.LUBRICANTS_HANDBOOK_2004,
        ),
    ),
)
