"""Findings that show a loss of pressure to be real: a direct gauge, clatter, knock or metal.

A panel gauge alone never proves a loss: it is what may be wrong.
"""

from knowledge.debris import findings as debris
from knowledge.model import Finding
from knowledge.pressure import course, direct_gauge
from knowledge.stations.bearings import findings as bearings
from knowledge.stations.bearings import findings_shell_map as shell_map
from knowledge.stations.bearings import findings_shells as shells
from knowledge.stations.oil import findings as oil
from knowledge.stations.topend import findings as topend

#: any one of them, seen, heard or measured (common practice)
PROOF_OF_LOSS: tuple[Finding, ...] = (
    direct_gauge.DIRECT_GAUGE_LOW,
    direct_gauge.DIRECT_GAUGE_ZERO,
    direct_gauge.DIRECT_GAUGE_UNSTEADY,
    direct_gauge.PUMP_PORT_LOW,
    direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY,
    course.NOISE_WITH_PRESSURE_LOSS,
    topend.LIFTERS_CLATTER,
    topend.CLATTERS_ONLY_AT_HIGH_REVS,
    bearings.BEARING_KNOCK,
    bearings.DEEP_KNOCK_UNDER_LOAD,
    bearings.RAP_DULLED_BY_CUT_OUT,
    bearings.ENGINE_SEIZED,
    bearings.ROD_THROUGH_BLOCK,
    shells.SHELLS_WIPED,
    shells.SHELLS_FOUND_RUINED,
    shell_map.ALL_BEARINGS_WIPED,
    shell_map.ONE_BEARING_WIPED,
    debris.METAL_IN_FILTER,
    debris.METAL_IN_PAN,
    debris.METAL_IN_SCREEN,
    debris.METAL_THROUGHOUT,
    debris.MAGNETIC_METAL,
    debris.BRIGHT_SOFT_METAL,
    debris.COPPER_FLAKES,
    debris.GREY_SOFT_FLAKES,
    oil.GLITTER_IN_OIL,
)
