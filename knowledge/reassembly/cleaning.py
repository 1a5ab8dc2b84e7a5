"""What is cleaned, proved or renewed on the oil's way once debris was found."""

from knowledge import sources
from knowledge.engines import features
from knowledge.reassembly import what_was_found
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import findings as assembly_findings
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import findings_filter_cut as delivery_filter_cut
from knowledge.stations.delivery import findings_galleries as delivery_galleries
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.relief import findings as relief_findings
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.suction import findings_pickup as suction_pickup
from knowledge.stations.suction import findings_sump as suction_sump
from knowledge.work import Caution, Hold, Phase, Task

DEBRIS_SOURCE_CURED = Task(
    id="debris_source_cured",
    phase=Phase.CLEANING,
    says="where the debris came from: found and cured",
    how=(
        "sort it by magnet, colour and hardness; hold it against every part that could shed it",
        "name the part it came from; for what came from outside, the way it got in",
        "renew or cure that first, then clean; write down what was found to be the source",
    ),
    source=sources.V6_CRANKSHAFT_1997,
    remedy="look on: an engine cleaned with its source still inside sheds again",
    why="new shells in an engine that still sheds metal last as long as the old ones did",
    guards=(
        assembly_causes.PART_SHEDDING_INSIDE,
        assembly_causes.TIMING_GEAR_SHEDDING,
        bearings_causes.BEARING_WIPED,
    ),
    after=what_was_found.DEBRIS,
    cautions=(Caution.USED_OIL,),
    also=("where did the metal come from", "source of debris"),
)
DEBRIS_KEPT = Task(
    id="debris_kept",
    phase=Phase.CLEANING,
    says="debris bagged and labelled by place, kept until sign-off",
    how=(
        "one bag for each place: sump, screen, relief valve, pump, filter pleats, each trap",
        "photographs with a scale; filter and first and last half litre of the drain as well",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="write down what is lost, and from which place",
    why="a laboratory or a guarantee can only go by what was kept",
    after=what_was_found.DEBRIS,
    cautions=(Caution.USED_OIL, Caution.SHARP),
    also=("keep the metal", "bag the chips"),
)
PIECES_LAID_OUT_WHOLE = Task(
    id="pieces_laid_out_whole",
    phase=Phase.CLEANING,
    says="every piece of what broke or was left inside: found, laid together, whole",
    how=(
        "lay the pieces out beside a new part or the packet: teeth, cloth, plug, bolt, ring",
        "what is missing is looked for in pickup tube, pump, relief valve, galleries and sump",
        "count until nothing is missing, or until every place was opened",
    ),
    source=COMMON_PRACTICE,
    remedy="open the places not yet seen; a piece at large ends in pump or relief valve",
    guards=(
        pump_causes.PUMP_DEBRIS_LOCK,
        relief_causes.RELIEF_DEBRIS,
        suction_causes_sump.FOREIGN_BODY_IN_SUMP,
    ),
    after=(
        suction_sump.PLASTIC_ON_SCREEN,
        suction_sump.CLOTH_ON_SCREEN,
        assembly_findings.LEFTOVER_FOUND,
        assembly_findings.PIECE_FOUND_INSIDE,
        bearings_findings.PISTON_OR_PIN_BROKEN,
        suction_sump.PICKUP_FELL_OFF,
        delivery_galleries.GALLERY_PLUG_LIES_IN_SUMP,
    ),
    also=("missing pieces", "count the teeth"),
)
TIMING_TEETH_RENEWED = Task(
    id="timing_teeth_renewed",
    phase=Phase.CLEANING,
    says="timing gear, chain and guides that shed plastic: renewed, none of the old crumbs left",
    how=(
        "front cover off: count teeth and guide ends against the pieces found",
        "metal-toothed gear where the maker lists one; guides and chain with it",
        "sump off as well: crumbs of an earlier repair lie there for years",
    ),
    source=sources.CLUB_BLOCKED_SCREENS,
    remedy="take the sump off, clear sump, screen and pump of every crumb",
    why="engines had a new chain years ago and starved on the old teeth left in the sump",
    guards=(assembly_causes.TIMING_GEAR_SHEDDING, suction_causes.PICKUP_SCREEN_BLOCKED),
    after=(suction_sump.PLASTIC_ON_SCREEN,),
    also=("nylon cam gear", "timing chain guides"),
)
OLD_SEALER_STRIPPED = Task(
    id="old_sealer_stripped",
    phase=Phase.CLEANING,
    says="all joints freed of the old sealer and gasket, inside edges too",
    how=(
        "plastic scraper and gasket remover; no abrasive pads, no wire wheel",
        "feel along every inside edge for beads that still hang",
        "strings picked out of bolt holes, oilways and pickup tube",
    ),
    source=sources.GASKET_FACE_CLEANING_2000,
    remedy="scrape again; open any oilway a bead could have gone into",
    why="the grit of an abrasive pad is finer than the filter and wears bearings out",
    guards=(assembly_causes.SEALANT_DEBRIS, assembly_causes.DIRT_IN_ASSEMBLY),
    after=what_was_found.SEALER,
    cautions=(*what_was_found.WASHING, Caution.ASBESTOS),
    also=("scrape off the silicone", "remove rtv"),
)
BLASTED_PARTS_WASHED = Task(
    id="blasted_parts_washed",
    phase=Phase.CLEANING,
    says="every part that was blasted, ground or bored washed until no grit is felt",
    how=(
        "ask which parts were blasted with beads, sand or shot; look into baffled covers and sump",
        "plugs out; hot soapy water and brush, rinse, blow dry, again and again",
        "wipe with a white oiled cloth and roll it between the fingers: nothing gritty",
    ),
    source=sources.RING_MAKER_CLEANING_MEDIA,
    remedy="wash again; a baffled cover or sump that still sheds beads is renewed or cut open",
    why="blasting drives the beads into every passage, and an engine that runs on them is lost",
    guards=(assembly_causes.DIRT_IN_ASSEMBLY,),
    after=what_was_found.GRIT,
    cautions=(Caution.EYES, Caution.PRESSURE, Caution.WASTE),
    also=("glass beads", "blasting sand", "machining chips", "hot tank"),
)
SUMP_WASHED = Task(
    id="sump_washed",
    phase=Phase.CLEANING,
    says="sump, baffles, trap doors and tray washed inside and out",
    how=(
        "baffles out where they unbolt; where they are welded, rinse from every side and tip it",
        "wash, rinse and blow dry until a white cloth comes out clean from under each plate",
        "drain plug and its magnet wiped",
    ),
    source=sources.REBUILDERS_GLASS_BEADS,
    reached="sump, baffles and tray",
    remedy="wash again; a double-skinned or baffled sump that keeps shedding is renewed",
    guards=(
        suction_causes.PICKUP_SCREEN_BLOCKED,
        suction_causes_sump.FOREIGN_BODY_IN_SUMP,
        assembly_causes.DIRT_IN_ASSEMBLY,
    ),
    after=(*what_was_found.DEBRIS, *what_was_found.COOLANT),
    cautions=(*what_was_found.BLOWING, Caution.SHARP),
    also=("clean the oil pan", "wash the pan"),
)
PICKUP_CLEARED = Task(
    id="pickup_cleared",
    phase=Phase.CLEANING,
    says="pickup, tube and screen clean inside and out, or renewed",
    how=(
        "renew one that was pressed in and drawn, one with varnish, or one debris was driven into",
        "one that stays: soak, rinse against the flow, blow through from the pump's end",
        "lamp through mesh and tube: no shadow, no string, bypass flap shut",
    ),
    source=idea_from(sources.TRUCK_SERVICE_1994),
    reached="pickup and screen",
    remedy="fit a new pickup; mesh that will not come clean is never made bigger",
    guards=(suction_causes.PICKUP_SCREEN_BLOCKED, assembly_causes.ASSEMBLY_LUBE_CLOG),
    after=what_was_found.DEBRIS,
    cautions=what_was_found.BLOWING,
    also=("clean the strainer", "new pickup screen"),
)
RETURNS_CLEARED = Task(
    id="returns_cleared",
    phase=Phase.CLEANING,
    says="oil returns of heads, valley and covers open, covers and breather trap washed",
    how=(
        "soft wire and lamp down each return; catch what comes, let none fall on the crank",
        "valve covers washed behind their baffles; breather, hose and trap rinsed and dried",
        "pour clean oil: it must run away at once",
    ),
    source=idea_from(sources.OIL_STARVATION_ARTICLE),
    remedy="open the return from below as well",
    guards=(suction_causes_sump.DRAINBACK_POOR,),
    after=(
        suction_pickup.RETURNS_BLOCKED,
        *what_was_found.SLUDGE,
        *what_was_found.SEALER,
        *what_was_found.GRIT,
    ),
    cautions=what_was_found.BLOWING,
    also=("drain back holes", "clean valve covers", "clean the pcv"),
)
PUMP_STRIPPED = Task(
    id="pump_stripped",
    phase=Phase.CLEANING,
    says="oil pump stripped, washed and looked over for scores",
    how=(
        "mark the mesh, take gears or rotors and the relief valve out",
        "wash body, cover, shaft bush and the passage to the block; blow dry",
        "scored gears, bore or cover: measure them, or fit a new pump",
    ),
    source=COMMON_PRACTICE,
    reached="oil pump",
    remedy="renew the pump where hard pieces went through it and the limits do not hold",
    guards=(pump_causes.PUMP_DEBRIS_LOCK, pump_causes.PUMP_GEAR_WEAR),
    after=(*what_was_found.HARD, *what_was_found.PIECES, *what_was_found.SLUDGE),
    cautions=(*what_was_found.BLOWING, Caution.SPRING),
    also=("take the pump apart", "clean the oil pump"),
)
RELIEF_FREED_OF_DEBRIS = Task(
    id="relief_freed_of_debris",
    phase=Phase.CLEANING,
    says="relief valve out, bore, seat and return passage washed clear",
    how=(
        "plunger, spring and cap washed; wiped with a cloth that sheds no fluff",
        "bore and return rinsed and blown through both ways, lamp into the corner below the seat",
        "a second relief or pressure-regulating valve on the engine is done as well",
    ),
    source=COMMON_PRACTICE,
    reached="relief valve and its return",
    remedy="wash again; a plunger that picks up is renewed with its bore looked at",
    why="one chip under the valve undoes the whole rebuild",
    guards=(
        relief_causes.RELIEF_DEBRIS,
        relief_causes.RELIEF_STUCK_OPEN,
        relief_causes.RELIEF_RETURN_PLUGGED,
    ),
    after=(*what_was_found.DEBRIS, relief_findings.RELIEF_RETURN_BLOCKED),
    cautions=(*what_was_found.BLOWING, Caution.SPRING),
    also=("clean the relief valve", "pressure regulator"),
)
FILTER_AND_BYPASS_RENEWED = Task(
    id="filter_and_bypass_renewed",
    phase=Phase.CLEANING,
    says="new filter; housing washed and its bypass valve proved or renewed",
    how=(
        "old filter cut and kept; a new listed one with its own seal",
        "housing, stem and both sides of the head washed; a remote head taken apart",
        "bypass valve: washed, pressed open with a blunt pick, comes back onto a clean seat",
    ),
    source=idea_from(sources.ARMY_TM_347_CHART_1973),
    reached="filter, its housing and bypass valve",
    remedy="renew the bypass valve, or the head where it cannot be taken out",
    why="a bypass held open by a chip sends every later chip past the filter",
    guards=(delivery_causes.FILTER_BLOCKED, delivery_causes.FILTER_BYPASS_STUCK),
    after=(*what_was_found.DEBRIS, *what_was_found.COOLANT),
    cautions=(*what_was_found.WASHING, Caution.SHARP),
    also=("new oil filter", "clean the filter housing", "bypass valve"),
)
COOLER_FLUSHED_AND_PROVED = Task(
    id="cooler_flushed_and_proved",
    phase=Phase.CLEANING,
    says="oil cooler flushed against the flow, its flow and tightness proved",
    how=(
        "solvent against the normal flow, turning it about, until a white cloth stays clean",
        "measured quantity through it in the time a new one takes, and both ways alike",
        "air at the maker's test pressure under water: no bubble",
        "dry it, then rinse with clean oil; none of this where the cooler is renewed",
    ),
    source=sources.ARMY_TM_254_COOLER,
    reached="oil cooler",
    remedy="renew it: a cooler that cannot be proved clean is not put back",
    guards=(delivery_causes.OIL_COOLER_BLOCKED,),
    only_with=(features.OIL_COOLER, features.COOLER_ON_SUCTION),
    after=(
        delivery_filter_cut.COOLER_FOUND_BLOCKED,
        *what_was_found.PIECES,
        *what_was_found.SLUDGE,
        *what_was_found.COOLANT,
    ),
    cautions=(*what_was_found.BLOWING, Caution.FIRE),
    also=("back flush the oil cooler", "flow test the cooler"),
)
COOLER_RENEWED = Task(
    id="cooler_renewed",
    phase=Phase.CLEANING,
    says="oil cooler renewed after metal or grit",
    how=(
        "take the cooler out of the circuit before anything is flushed",
        "fit a new element; one that cannot be proved clean is not put back",
        "its thermostat and bypass valve taken out, washed and proved, or renewed too",
    ),
    source=sources.OIL_COOLER_SERVICE,
    reached="oil cooler",
    remedy="fit a new cooler, or leave it out with the maker's blank until one is there",
    why="chips lie in its fins through any flushing and come out into the new bearings",
    guards=(bearings_causes.BEARING_WIPED, delivery_causes.OIL_COOLER_BLOCKED),
    only_with=(features.OIL_COOLER, features.COOLER_ON_SUCTION),
    after=what_was_found.HARD_PIECES,
    cautions=(
        Caution.HOT,
        Caution.WASTE,
        Caution.SOLVENT,
        Caution.EYES,
    ),
    also=("replace the oil cooler", "clean the oil cooler"),
    covers=(COOLER_FLUSHED_AND_PROVED,),
)
OIL_LINES_RINSED = Task(
    id="oil_lines_rinsed",
    phase=Phase.CLEANING,
    says="oil lines and hoses rinsed and looked through",
    how=(
        "off at both ends; solvent through, then blow dry",
        "light through each; bend hoses and feel for loose liner",
    ),
    source=COMMON_PRACTICE,
    reached="oil lines and hoses",
    remedy="renew a hose that stays dirty, soft or narrow",
    guards=(delivery_causes.OIL_COOLER_BLOCKED,),
    only_with=(
        features.OIL_COOLER,
        features.COOLER_ON_SUCTION,
        features.REMOTE_FILTER,
        features.DRY_SUMP,
    ),
    after=(*what_was_found.PIECES, *what_was_found.SLUDGE, *what_was_found.COOLANT),
    cautions=what_was_found.BLOWING,
    also=("flush the oil lines",),
)
OIL_HOSES_RENEWED = Task(
    id="oil_hoses_renewed",
    phase=Phase.CLEANING,
    says="oil hoses renewed, rigid lines washed and looked through",
    how=(
        "hoses to cooler, remote filter and tank renewed after metal or grit",
        "rigid lines: brush or pull-through, solvent, blow dry, light from end to end",
        "fittings, check valves and adapters taken apart",
    ),
    source=sources.SERVICE_BULLETIN_22_NA_074,
    reached="oil lines and hoses",
    remedy="renew any line light does not pass through",
    why="a hose liner holds chips in its weave where no flushing reaches",
    guards=(delivery_causes.OIL_COOLER_BLOCKED, suction_causes_sump.SUCTION_HOSE_COLLAPSED),
    only_with=(
        features.OIL_COOLER,
        features.COOLER_ON_SUCTION,
        features.REMOTE_FILTER,
        features.DRY_SUMP,
    ),
    after=what_was_found.HARD,
    cautions=what_was_found.BLOWING,
    also=("replace the oil lines", "cooler hoses"),
    covers=(OIL_LINES_RINSED,),
)
OIL_TANK_CLEANED = Task(
    id="oil_tank_cleaned",
    phase=Phase.CLEANING,
    says="oil tank opened and washed to the last plate, or renewed",
    how=(
        "lid, strainer, swirl plates and breather out; wash from every side",
        "white cloth over the outlet, rinse: nothing on the cloth, three times running",
        "after a bearing failure a tank that cannot be opened is renewed",
    ),
    source=sources.SERVICE_BULLETIN_22_NA_074,
    reached="oil tank",
    remedy="renew the tank, or have it cut open and welded up again",
    guards=(bearings_causes.BEARING_WIPED, pump_causes.PUMP_DEBRIS_LOCK),
    only_with=(features.DRY_SUMP,),
    after=(*what_was_found.DEBRIS, *what_was_found.COOLANT),
    cautions=(*what_was_found.BLOWING, Caution.FIRE),
    also=("dry sump tank", "oil in frame"),
)
SCAVENGE_SIDE_CLEANED = Task(
    id="scavenge_side_cleaned",
    phase=Phase.CLEANING,
    says="scavenge screens and stages opened and cleaned",
    how=(
        "screen of every pickup out: what lies on it tells which end of the engine shed it",
        "each stage of the pump opened; scores measured",
        "scavenge lines as the pressure lines",
    ),
    source=COMMON_PRACTICE,
    reached="scavenge screens and stages",
    remedy="renew a scored stage; debris went through it before any filter",
    guards=(pump_causes_fitted.SCAVENGE_FAILURE, pump_causes.PUMP_DEBRIS_LOCK),
    only_with=(features.DRY_SUMP,),
    after=(*what_was_found.HARD, *what_was_found.PIECES),
    cautions=what_was_found.WASHING,
    also=("scavenge pump", "dry sump screens"),
)
