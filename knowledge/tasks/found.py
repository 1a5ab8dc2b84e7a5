"""What was found, in groups that call for the same cleaning, and the cautions of washing.

Imported by the cleaning tasks. Fine dust in the filter and fur on the plug are in none of them.
"""

from knowledge.findings.assembly import LEFTOVER_FOUND, PIECE_FOUND_INSIDE
from knowledge.findings.bearings import (
    ALL_BEARINGS_WIPED,
    LOWER_HALVES_EMBEDDED,
    ONE_BEARING_WIPED,
    SHELL_SPUN,
    SHELLS_EMBEDDED_DIRT,
    SHELLS_FLAKING,
    SHELLS_SCRATCHED,
    SHELLS_WIPED,
)
from knowledge.findings.bearings_bench import (
    BEARING_FOUND_SEIZED,
    DAMAGED_BY_DEBRIS_ONLY,
    PISTON_OR_PIN_BROKEN,
    SHELLS_FOUND_RUINED,
)
from knowledge.findings.debris import (
    BEARING_PIECES_IN_PUMP,
    BRIGHT_SOFT_METAL,
    CARBON_FLAKES,
    COPPER_FLAKES,
    CRANK_TRAP_FULL,
    CRANK_TRAP_METAL,
    GREY_SOFT_FLAKES,
    HARD_CHIPS,
    LINING_STRIP,
    MAGNETIC_METAL,
    METAL_IN_FILTER,
    METAL_IN_PAN,
    METAL_IN_SCREEN,
    METAL_THROUGHOUT,
)
from knowledge.findings.delivery import (
    FILTER_BURST,
    FILTER_BYPASS_WITNESS,
    FILTER_COLLAPSED,
    FILTER_PACKED,
    GASKET_SHREDS_FOUND,
    MILKY_FILM_IN_FILTER,
)
from knowledge.findings.delivery_galleries import GALLERY_FOUND_BLOCKED
from knowledge.findings.oil_analysis import (
    GLYCOL_FOUND,
    LAB_FUEL_HIGH,
    SILICON_HIGH,
    WATER_IN_SAMPLE,
)
from knowledge.findings.oil_look import (
    FUEL_GETS_IN,
    FUEL_SMELL,
    GLITTER_IN_OIL,
    OIL_BLACK_AND_GRITTY,
    OIL_FILM_IN_COOLANT,
    OIL_MILKY,
    SLUDGE_SEEN,
    WATER_AT_THE_DRAIN,
)
from knowledge.findings.pump_bench import PIECE_IN_PUMP, PUMP_GEAR_BROKEN, STEEL_SLIVERS_IN_PUMP
from knowledge.findings.relief import DEBRIS_ON_RELIEF_SEAT
from knowledge.findings.suction_debris import (
    CLOTH_ON_SCREEN,
    DEBRIS_SEEN_BEFORE,
    FOREIGN_MATERIAL_ON_SCREEN,
    GASKET_ON_SCREEN,
    ICE_AT_SCREEN,
    METAL_PAST_THE_SCREEN,
    PASTE_ON_SCREEN,
    PLASTIC_ON_SCREEN,
    SCREEN_BLOCKED,
    SEALER_IN_SUMP,
    SEALER_ON_SCREEN,
    SLUDGE_ON_SCREEN,
    VARNISH_ON_SCREEN,
)
from knowledge.findings.topend import CAM_LOBES_WIPED
from knowledge.vocabulary import Caution

#: where parts are washed, and where they are blown through as well
WASHING = (Caution.SOLVENT, Caution.EYES, Caution.WASTE)
BLOWING = (*WASHING, Caution.PRESSURE)

#: a part of the engine came apart; it has gone wherever the oil goes
METAL = (
    METAL_IN_FILTER,
    METAL_IN_PAN,
    METAL_IN_SCREEN,
    METAL_PAST_THE_SCREEN,
    METAL_THROUGHOUT,
    MAGNETIC_METAL,
    BRIGHT_SOFT_METAL,
    COPPER_FLAKES,
    GREY_SOFT_FLAKES,
    LINING_STRIP,
    BEARING_PIECES_IN_PUMP,
    STEEL_SLIVERS_IN_PUMP,
    PIECE_IN_PUMP,
    PUMP_GEAR_BROKEN,
    CRANK_TRAP_METAL,
    GLITTER_IN_OIL,
    PISTON_OR_PIN_BROKEN,
    CAM_LOBES_WIPED,
    SHELLS_WIPED,
    ALL_BEARINGS_WIPED,
    ONE_BEARING_WIPED,
    SHELL_SPUN,
    SHELLS_FLAKING,
    SHELLS_FOUND_RUINED,
    BEARING_FOUND_SEIZED,
)
#: from the workshop or the road: sand, shot, beads, swarf, dust
GRIT = (
    HARD_CHIPS,
    SILICON_HIGH,
    SHELLS_EMBEDDED_DIRT,
    LOWER_HALVES_EMBEDDED,
    SHELLS_SCRATCHED,
    DAMAGED_BY_DEBRIS_ONLY,
)
#: the filter let it through, so it lies behind the filter too
PAST_THE_FILTER = (FILTER_BURST, FILTER_COLLAPSED, FILTER_BYPASS_WITNESS)
HARD = (*METAL, *GRIT, *PAST_THE_FILTER)

SEALER = (SEALER_ON_SCREEN, SEALER_IN_SUMP, GASKET_ON_SCREEN, GASKET_SHREDS_FOUND)
#: soft pieces that lodge in screen, relief valve and small holes
PIECES = (
    *SEALER,
    PLASTIC_ON_SCREEN,
    CLOTH_ON_SCREEN,
    PASTE_ON_SCREEN,
    FOREIGN_MATERIAL_ON_SCREEN,
    LEFTOVER_FOUND,
    PIECE_FOUND_INSIDE,
    DEBRIS_ON_RELIEF_SEAT,
    DEBRIS_SEEN_BEFORE,
)
#: old oil baked, sludged or burnt
SLUDGE = (
    SLUDGE_ON_SCREEN,
    SLUDGE_SEEN,
    VARNISH_ON_SCREEN,
    OIL_BLACK_AND_GRITTY,
    CARBON_FLAKES,
    FILTER_PACKED,
    GALLERY_FOUND_BLOCKED,
    CRANK_TRAP_FULL,
    SCREEN_BLOCKED,
)
DEBRIS = (*HARD, *PIECES, *SLUDGE)

COOLANT = (
    OIL_MILKY,
    MILKY_FILM_IN_FILTER,
    WATER_AT_THE_DRAIN,
    WATER_IN_SAMPLE,
    GLYCOL_FOUND,
    OIL_FILM_IN_COOLANT,
    ICE_AT_SCREEN,
)
FUEL = (FUEL_SMELL, LAB_FUEL_HIGH, FUEL_GETS_IN)
