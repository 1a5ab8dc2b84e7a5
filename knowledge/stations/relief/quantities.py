"""Quantities of the relief valve, with their limits."""

from collections.abc import Callable

from knowledge import sources
from knowledge.engines import features, features_kinds
from knowledge.figures import TRUSTED_GAUGE
from knowledge.limits import Figure, Limit, Printed, Side
from knowledge.model import Quantity
from knowledge.sources import FROM_MEMORY, JUDGEMENT
from knowledge.units import MM, PSI

FAR_TOO_HIGH = 90 * PSI  #: cold pressure past this bursts filters (judgement)
SIZE = (1 * MM, 300 * MM)

# A dimension was allowed 5 to 200 psi, a parameter 2 to 300: a valve found to open next to
# nothing can be entered, and so can one held shut as far as a gauge reads.
RELIEF_SETTING = Quantity(
    id="relief_setting",
    says="pressure at which the relief valve opens",
    dimension="pressure",
    plausible=(2 * PSI, 300 * PSI),
    spread=TRUSTED_GAUGE,
    source=JUDGEMENT,
)
# Makers print 40 to 60 psi and, for one diesel, 0.5 to 0.7 MPa; 55 psi is a choice among them.
USUAL_RELIEF_SETTING = Limit(
    id="relief_setting",
    says="pressure the relief valve holds",
    quantities=(RELIEF_SETTING,),
    side=Side.NOMINAL,
    typical=55 * PSI,
    source=JUDGEMENT,
    of="any engine",
    on_layouts={
        "side_valve": Figure(30 * PSI, "side-valve engines", sources.SIDE_VALVE_HANDBOOK_1936),
        "side_valve_v8": Figure(30 * PSI, "side-valve V8 up to 1948", sources.SIDE_VALVE_V8_PUMPS),
        "rotary_engine": Figure(465e3, "rotary engine 2004", sources.ROTARY_2004),
    },
    others=(
        Printed(
            value=14 * PSI,
            of="low-pressure pump that fills troughs",
            source=FROM_MEMORY,
            only_with=(features_kinds.TROUGH_FED,),
            before_layout=True,
        ),
        Printed(
            value=38 * PSI,
            of="V-twin motorcycles on rollers, the highest printed",
            source=sources.ROLLER_V_TWIN_1958,
            only_with=(features_kinds.ROLLER_BIG_ENDS,),
            not_with=(features.DIESEL,),
            before_layout=True,
        ),
    ),
)


def most_held(limit: Callable[[Limit], float]) -> float:
    """The pressure [Pa] past which an engine's relief valve does not relieve, by its limits."""
    return max(FAR_TOO_HIGH, 1.2 * limit(USUAL_RELIEF_SETTING))


RELIEF_SPRING_LENGTH = Quantity(
    id="relief_spring_length",
    says="relief spring free length",
    dimension="length",
    plausible=(5 * MM, 300 * MM),
    spread=0.2 * MM,
    source=JUDGEMENT,
)
RELIEF_SHIM = Quantity(
    id="relief_shim",
    says="shim under the relief spring",
    dimension="length",
    plausible=(0.0, 15 * MM),
    unit="mm",
    source=JUDGEMENT,
)
RELIEF_SEAT_GAP = Quantity(
    id="relief_seat_gap",
    says="gap under a relief valve that should be on its seat",
    dimension="length",
    plausible=(0.0, 9 * MM),
    spread=0.1 * MM,
    unit="mm",
    source=JUDGEMENT,
)

# dimensions of the circuit
RELIEF_PLUNGER = Quantity(
    id="relief_plunger",
    says="relief valve plunger diameter",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
RELIEF_PORT = Quantity(
    id="relief_port",
    says="width of the port the relief plunger uncovers",
    dimension="length",
    plausible=SIZE,
    source=JUDGEMENT,
)
RELIEF_RATE = Quantity(
    id="relief_rate",
    says="relief spring rate in newtons per metre",
    dimension="count",
    plausible=(100.0, 1e5),
    source=JUDGEMENT,
)
