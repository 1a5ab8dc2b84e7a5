"""What was found, in groups that call for the same cleaning, and the cautions of washing.

Imported by the cleaning tasks. Fine dust in the filter and fur on the plug are in none of them.
"""

from knowledge.debris import findings as debris_findings
from knowledge.stations.assembly import findings as assembly_findings
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.bearings import findings_shell_map as bearings_shell_map
from knowledge.stations.bearings import findings_shells as bearings_shells
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.delivery import findings_filter_cut as delivery_filter_cut
from knowledge.stations.delivery import findings_galleries as delivery_galleries
from knowledge.stations.oil import findings as oil_findings
from knowledge.stations.oil import findings_analysis as oil_analysis
from knowledge.stations.oil import findings_contamination as oil_contamination
from knowledge.stations.oil import findings_drained as oil_drained
from knowledge.stations.pump import findings_bench as pump_bench
from knowledge.stations.pump import findings_wear as pump_wear
from knowledge.stations.relief import findings as relief_findings
from knowledge.stations.suction import findings_sump as suction_sump
from knowledge.stations.topend import findings_cam as topend_cam
from knowledge.work import Caution

#: where parts are washed, and where they are blown through as well
WASHING = (Caution.SOLVENT, Caution.EYES, Caution.WASTE)
BLOWING = (*WASHING, Caution.PRESSURE)
#: a part of the engine came apart; it has gone wherever the oil goes
METAL = (
    debris_findings.METAL_IN_FILTER,
    debris_findings.METAL_IN_PAN,
    debris_findings.METAL_IN_SCREEN,
    suction_sump.METAL_PAST_THE_SCREEN,
    debris_findings.METAL_THROUGHOUT,
    debris_findings.MAGNETIC_METAL,
    debris_findings.BRIGHT_SOFT_METAL,
    debris_findings.COPPER_FLAKES,
    debris_findings.GREY_SOFT_FLAKES,
    debris_findings.LINING_STRIP,
    debris_findings.BEARING_PIECES_IN_PUMP,
    pump_bench.STEEL_SLIVERS_IN_PUMP,
    pump_bench.PIECE_IN_PUMP,
    pump_wear.PUMP_GEAR_BROKEN,
    debris_findings.CRANK_TRAP_METAL,
    oil_findings.GLITTER_IN_OIL,
    bearings_findings.PISTON_OR_PIN_BROKEN,
    topend_cam.CAM_LOBES_WIPED,
    bearings_shells.SHELLS_WIPED,
    bearings_shell_map.ALL_BEARINGS_WIPED,
    bearings_shell_map.ONE_BEARING_WIPED,
    bearings_shells.SHELL_SPUN,
    bearings_shells.SHELLS_FLAKING,
    bearings_shells.SHELLS_FOUND_RUINED,
    bearings_shells.BEARING_FOUND_SEIZED,
)
#: from the workshop or the road: sand, shot, beads, swarf, dust
GRIT = (
    debris_findings.HARD_CHIPS,
    oil_analysis.SILICON_HIGH,
    bearings_shells.SHELLS_EMBEDDED_DIRT,
    bearings_shell_map.LOWER_HALVES_EMBEDDED,
    bearings_shells.SHELLS_SCRATCHED,
    bearings_shells.DAMAGED_BY_DEBRIS_ONLY,
)
#: the filter let it through, so it lies behind the filter too
PAST_THE_FILTER = (
    delivery_filter.FILTER_BURST,
    delivery_filter_cut.FILTER_COLLAPSED,
    delivery_filter_cut.FILTER_BYPASS_WITNESS,
)
HARD = (*METAL, *GRIT, *PAST_THE_FILTER)
#: pieces that were seen: silicon in a sample alone may be sealer, dust or an additive
HARD_PIECES = (*METAL, *(f for f in GRIT if f is not oil_analysis.SILICON_HIGH), *PAST_THE_FILTER)
SEALER = (
    suction_sump.SEALER_ON_SCREEN,
    suction_sump.SEALER_IN_SUMP,
    suction_sump.GASKET_ON_SCREEN,
    delivery_filter_cut.GASKET_SHREDS_FOUND,
    delivery_filter_cut.SEALER_IN_FILTER,
)
#: soft pieces that lodge in screen, relief valve and small holes
PIECES = (
    *SEALER,
    suction_sump.PLASTIC_ON_SCREEN,
    suction_sump.CLOTH_ON_SCREEN,
    suction_sump.PASTE_ON_SCREEN,
    suction_sump.FOREIGN_MATERIAL_ON_SCREEN,
    assembly_findings.LEFTOVER_FOUND,
    assembly_findings.PIECE_FOUND_INSIDE,
)
#: what one chip at the valve, or one found at an earlier service, tells: it may be the only one
ONE_PIECE = (relief_findings.DEBRIS_ON_RELIEF_SEAT, suction_sump.DEBRIS_SEEN_BEFORE)
#: old oil baked, sludged or burnt
SLUDGE = (
    suction_sump.SLUDGE_ON_SCREEN,
    oil_findings.SLUDGE_SEEN,
    suction_sump.VARNISH_ON_SCREEN,
    oil_findings.OIL_BLACK_AND_GRITTY,
    debris_findings.CARBON_FLAKES,
    delivery_filter_cut.FILTER_PACKED,
    delivery_galleries.GALLERY_FOUND_BLOCKED,
    debris_findings.CRANK_TRAP_FULL,
    suction_sump.SCREEN_BLOCKED,
)
DEBRIS = (*HARD, *PIECES, *ONE_PIECE, *SLUDGE)
COOLANT = (
    oil_findings.OIL_MILKY,
    delivery_filter_cut.MILKY_FILM_IN_FILTER,
    oil_drained.WATER_AT_THE_DRAIN,
    oil_analysis.WATER_IN_SAMPLE,
    oil_analysis.GLYCOL_FOUND,
    oil_contamination.OIL_FILM_IN_COOLANT,
    suction_sump.ICE_AT_SCREEN,
)
FUEL = (
    oil_findings.FUEL_SMELL,
    oil_drained.FUEL_AT_THE_DRAIN,
    oil_analysis.LAB_FUEL_HIGH,
    oil_contamination.FUEL_GETS_IN,
)
