"""What must be right about balance shafts, auxiliary shafts and idler gears as they go back."""

from knowledge import sources
from knowledge.engines import features_build
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.bearings import causes_shafts, findings_shafts
from knowledge.stations.bearings import quantities_shafts as quantities
from knowledge.units import MM, THOU
from knowledge.work import Access, Band, Caution, Hold, Phase, Task

BALANCE_SHAFT_CLEARANCE_FITTED = Task(
    id="balance_shaft_clearance_fitted",
    phase=Phase.BEARINGS,
    says="clearance of the balance shaft bearings, and their timing to the crank",
    how=(
        "gauge strip or bore gauge and micrometer in each bearing, caps at torque",
        "new seal in the joint that feeds them, oil holes in line",
        "set the timing marks to the crank, turn two turns and look again",
    ),
    source=sources.BALANCE_SHAFT_FOUR_2009,
    hold=Hold.NOTE,
    holds_if_failed=True,
    measures=quantities.BALANCE_SHAFT_CLEARANCE,
    bands=(
        Band(
            low=0.044 * MM,
            high=0.111 * MM,
            source=sources.BALANCE_SHAFT_FOUR_2002,
            says="petrol four of 2002, shafts in a housing of their own",
            of_one=True,
        ),
        Band(
            low=0.022 * MM,
            high=0.049 * MM,
            source=sources.BALANCE_SHAFT_FOUR_2009,
            says="petrol four of 2009, shafts under the crank",
            of_one=True,
        ),
    ),
    limits=(None, quantities.MOST_BALANCE_SHAFT_CLEARANCE),
    remedy="fit new bearings; then the shaft or the unit",
    guards=(causes_shafts.BALANCE_SHAFT_WEAR,),
    only_with=(features_build.BALANCE_SHAFTS,),
    opened=(Access.SUMP_OFF, Access.CRANK_OUT),
    after=(findings_shafts.BALANCE_SHAFT_BEARINGS_WORN,),
    cautions=(Caution.HEAVY, Caution.HAND_TURN),
    also=("balance shaft clearance", "time the balance shafts"),
)
AUXILIARY_SHAFT_CLEARANCE_FITTED = Task(
    id="auxiliary_shaft_clearance_fitted",
    phase=Phase.BEARINGS,
    says="clearance of the auxiliary (jack) shaft bearings, their oil holes in line",
    how=(
        "bore gauge in each fitted bearing, micrometer on each journal",
        "a rod or lamp through each oil hole: open to its oilway",
        "the shaft turns with two fingers; set its end float and its timing",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    holds_if_failed=True,
    measures=quantities.AUXILIARY_SHAFT_CLEARANCE,
    bands=(
        Band(
            low=0.6 * THOU,
            high=2.6 * THOU,
            source=sources.AUXILIARY_SHAFT_FOUR_1991,
            says="petrol four of 1991",
            of_one=True,
        ),
    ),
    limits=(None, quantities.MOST_AUXILIARY_SHAFT_CLEARANCE),
    remedy="fit new bearings, reamed if not made to size; then the shaft",
    guards=(causes_shafts.AUXILIARY_SHAFT_WEAR,),
    only_with=(features_build.AUXILIARY_SHAFT,),
    opened=(Access.FRONT_COVER_OFF,),
    after=(findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN,),
    also=("jackshaft bearings", "intermediate shaft bearings"),
)
IDLER_BUSH_FITTED = Task(
    id="idler_bush_fitted",
    phase=Phase.BEARINGS,
    says="clearance of the idler gear's bush on its hub, its oil hole open",
    how=(
        "bore gauge in the bush, micrometer on the hub; oil hole of hub and bush in line",
        "end float and backlash by feeler or dial gauge; timing marks together",
    ),
    source=sources.MARINE_IDLER_BUSH,
    hold=Hold.NOTE,
    holds_if_failed=True,
    measures=quantities.IDLER_BUSH_CLEARANCE,
    bands=(
        Band(
            low=0.025 * MM,
            high=0.175 * MM,
            source=sources.MARINE_IDLER_BUSH,
            says="small marine diesel, hub of 45 mm: new to the limit",
            of_one=True,
        ),
        Band(
            low=2.3 * THOU,
            high=4.7 * THOU,
            source=sources.ARMY_TM_379_IDLER,
            says="an army diesel, as fitted",
            of_one=True,
        ),
        Band(
            low=0.020 * MM,
            high=0.20 * MM,
            source=sources.PICKUP_IDLER_BUSH_2021,
            says="pickup diesel of 2021: new to the limit",
            of_one=True,
        ),
    ),
    limits=(None, quantities.MOST_IDLER_BUSH_CLEARANCE),
    remedy="fit a new bush, then a new hub",
    guards=(causes_shafts.IDLER_BUSH_WEAR,),
    only_with=(features_build.IDLER_GEARS,),
    opened=(Access.FRONT_COVER_OFF,),
    after=(findings_shafts.IDLER_GEAR_BUSH_WORN,),
    also=("idler bush clearance", "timing idler bush"),
)
