"""Quantities of gauge, sender, switch and stopwatch, with their limits."""

from knowledge import sources
from knowledge.engines import features_build
from knowledge.figures import STOPWATCH
from knowledge.limits import Limit, Printed, Side
from knowledge.model import Quantity
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.units import PSI

OHMS = (0.0, 1e6)  #: to an open circuit

SENDER_RESISTANCE_AT_REST = Quantity(
    id="sender_resistance_at_rest",
    says="resistance of the sender at no pressure",
    dimension="resistance",
    plausible=OHMS,
    spread=2.0,
    source=JUDGEMENT,
)
SENDER_GROUND_RESISTANCE = Quantity(
    id="sender_ground_resistance",
    says="resistance from the sender's body to battery negative",
    dimension="resistance",
    plausible=OHMS,
    spread=0.2,
    source=JUDGEMENT,
)
SWITCH_PRESSURE = Quantity(
    id="switch_pressure",
    says="pressure at which the switch changes over",
    dimension="pressure",
    plausible=(0.0, 1e6),
    spread=5e3,
    source=JUDGEMENT,
)
PANEL_ERROR = Quantity(
    id="panel_error",
    says="difference between panel and trusted gauge",
    dimension="pressure",
    plausible=(0.0, 300 * PSI),
    source=JUDGEMENT,
)
BUILD_UP_TIME = Quantity(
    id="build_up_time",
    says="time from start until pressure shows",
    dimension="time",
    plausible=(0.0, 600.0),
    spread=STOPWATCH,
    source=JUDGEMENT,
)
DECAY_TIME = Quantity(
    id="decay_time",
    says="time the needle takes to fall to zero after stopping",
    dimension="time",
    plausible=(0.0, 3600.0),
    spread=STOPWATCH,
    source=JUDGEMENT,
)

USUAL_SENDER_OHMS = Limit(
    id="sender_ohms_at_rest",
    says="sender resistance without pressure",
    quantities=(SENDER_RESISTANCE_AT_REST,),
    side=Side.NOMINAL,
    typical=240.0,
    source=sources.GAUGE_MAKER_SENDERS,
    of="a common marine sender; half of it if made for two gauges",
)
MOST_GROUND_OHMS = Limit(
    id="sender_ground_ohms",
    says="greatest resistance from sender to ground",
    quantities=(SENDER_GROUND_RESISTANCE,),
    side=Side.MOST,
    typical=1.0,
    source=COMMON_PRACTICE,
)
# Manuals print about 4.5 and 7 psi for single engines; up to 10 psi is common. Switches that stop
# small air-cooled engines change over at 2 to 5 psi on some, at 7 to 11 psi on others.
SWITCH_OPENS_BY = Limit(
    id="switch_opens_at",
    says="pressure by which the lamp switch opens",
    quantities=(SWITCH_PRESSURE,),
    side=Side.MOST,
    typical=10 * PSI,
    source=JUDGEMENT,
    of="lamp switches of cars, boats and tractors",
    others=(
        Printed(
            value=5 * PSI,
            of="small air-cooled V-twin",
            source=sources.SMALL_ENGINE_SHUT_OFF,
            only_with=(features_build.LOW_OIL_SHUT_OFF,),
        ),
        Printed(
            value=11 * PSI,
            of="small air-cooled V-twin with oil cooler",
            source=sources.SMALL_ENGINE_SHUT_OFF_HIGHER,
            only_with=(features_build.LOW_OIL_SHUT_OFF,),
        ),
    ),
)
MOST_PANEL_ERROR = Limit(
    id="panel_error",
    says="greatest difference between panel and trusted gauge",
    quantities=(PANEL_ERROR,),
    side=Side.MOST,
    typical=5 * PSI,
    source=sources.GAUGE_MAKER_SENDERS,
    of="electric gauge and sender, at mid-scale",
)
