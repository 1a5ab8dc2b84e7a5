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
    says="source of the debris found and cured",
    how=(
        "sort it with magnet, by colour and hardness; compare it with every part that could shed "
        "it",
        "name the part it came from; for dirt from outside, find how it got in",
        "renew or cure that first, then clean; write down what the source was",
    ),
    source=sources.V6_CRANKSHAFT_1997,
    remedy="keep looking: an engine cleaned with the source still inside sheds again",
    why="new shells in an engine that still sheds metal last no longer than the old ones",
    guards=(
        assembly_causes.PART_SHEDDING_INSIDE,
        assembly_causes.TIMING_GEAR_SHEDDING,
        bearings_causes.BEARING_WIPED,
    ),
    after=what_was_found.DEBRIS,
    cautions=(Caution.USED_OIL,),
    also=("where did the metal come from", "source of debris", "source of the debris"),
)
DEBRIS_KEPT = Task(
    id="debris_kept",
    phase=Phase.CLEANING,
    says="debris bagged and labelled by place, kept until sign-off",
    how=(
        "one bag for each place: sump, screen, relief valve, pump, filter pleats, each trap",
        (
            "photographs with a scale; also the filter, and first and last half litre (pint) of the "
            "drain"
        ),
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="write down what is missing, and from where",
    why="a laboratory or a guarantee claim depends on what was kept",
    after=what_was_found.DEBRIS,
    cautions=(Caution.USED_OIL, Caution.SHARP),
    also=("keep the metal", "bag the chips"),
)
PIECES_LAID_OUT_WHOLE = Task(
    id="pieces_laid_out_whole",
    phase=Phase.CLEANING,
    says="every piece of what broke or was left inside: found, laid out, complete",
    how=(
        "lay the pieces beside a new part or the packet: teeth, cloth, plug, bolt, ring",
        "look for missing pieces in pickup tube, pump, relief valve, galleries and sump",
        "count until nothing is missing, or until you have opened every place",
    ),
    source=COMMON_PRACTICE,
    remedy="open the places not yet inspected; a missing piece ends up in the pump or relief valve",
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
    says="timing gear, chain and guides that shed plastic: renewed, all old crumbs removed",
    how=(
        "front cover off: count teeth and guide ends against the pieces found",
        "metal-toothed gear if the maker lists one; guides and chain with it",
        "sump off as well: crumbs from an earlier failure stay there for years",
    ),
    source=sources.CLUB_BLOCKED_SCREENS,
    remedy="take the sump off; clear sump, screen and pump of every crumb",
    why="some engines had a new chain years ago and starved on the old teeth left in the sump",
    guards=(assembly_causes.TIMING_GEAR_SHEDDING, suction_causes.PICKUP_SCREEN_BLOCKED),
    after=(suction_sump.PLASTIC_ON_SCREEN,),
    also=("nylon cam gear", "timing chain guides"),
)
OLD_SEALER_STRIPPED = Task(
    id="old_sealer_stripped",
    phase=Phase.CLEANING,
    says="all joints cleaned of old sealer and gasket, inside edges too",
    how=(
        "plastic scraper and gasket remover; no abrasive pads, no wire wheel",
        "feel along every inside edge for beads that still hang there",
        "pick strings out of bolt holes, oilways and pickup tube",
    ),
    source=sources.GASKET_FACE_CLEANING_2000,
    remedy="scrape again; open any oilway a bead could have gone into",
    why="grit from an abrasive pad passes through the filter and wears out bearings",
    guards=(assembly_causes.SEALANT_DEBRIS, assembly_causes.DIRT_IN_ASSEMBLY),
    after=what_was_found.SEALER,
    cautions=(*what_was_found.WASHING, Caution.ASBESTOS),
    also=("scrape off the silicone", "remove rtv"),
)
BLASTED_PARTS_WASHED = Task(
    id="blasted_parts_washed",
    phase=Phase.CLEANING,
    says="every blasted, ground or bored part washed until you feel no grit",
    how=(
        "ask which parts were blasted with beads, sand or shot; look in baffled covers and sump",
        "plugs out; hot soapy water and brush, rinse, blow dry, again and again",
        "wipe with a white oiled cloth and roll it between the fingers: nothing gritty",
    ),
    source=sources.RING_MAKER_CLEANING_MEDIA,
    remedy="wash again; renew or cut open a baffled cover or sump that still sheds beads",
    why="blasting drives beads into every passage, and an engine that runs on them is ruined",
    guards=(assembly_causes.DIRT_IN_ASSEMBLY,),
    after=what_was_found.GRIT,
    cautions=(Caution.EYES, Caution.PRESSURE, Caution.WASTE),
    also=("glass beads", "blasting sand", "machining chips", "hot tank"),
)
SUMP_WASHED = Task(
    id="sump_washed",
    phase=Phase.CLEANING,
    says="sump, baffles, trap doors and windage tray washed inside and out",
    how=(
        "take out bolted baffles; with welded ones, rinse from every side and tip it",
        "wash, rinse and blow dry until a white cloth comes out clean from under each plate",
        "drain plug and its magnet wiped",
    ),
    source=sources.REBUILDERS_GLASS_BEADS,
    reached="sump, baffles and tray",
    remedy="wash again; renew a double-skinned or baffled sump that keeps shedding",
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
        "renew one that was pressed in and pulled out, one with varnish, or one with debris "
        "driven in",
        "to reuse it: soak, rinse against the flow, blow through from the pump end",
        "light through screen and tube: no shadow, no string, bypass flap shut",
    ),
    source=idea_from(sources.TRUCK_SERVICE_1994),
    reached="pickup and screen",
    remedy="fit a new pickup; never enlarge a mesh that will not come clean",
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
        "soft wire and light down each return; catch what comes, let none fall on the crank",
        "wash valve covers behind their baffles; rinse and dry breather, hose and trap",
        "pour in clean oil: it must run away at once",
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
    says="oil pump stripped, washed and inspected for scores",
    how=(
        "mark the mesh; take out gears or rotors and the relief valve",
        "wash body, cover, shaft bush and the passage to the block; blow dry",
        "scored gears, bore or cover: measure them, or fit a new pump",
    ),
    source=COMMON_PRACTICE,
    reached="oil pump",
    remedy="renew the pump if hard pieces went through it and it is outside its limits",
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
        "plunger, spring and cap washed; wiped with a lint-free cloth",
        "bore and return rinsed and blown through both ways, light into the corner below the seat",
        "do a second relief or pressure-regulating valve on the engine as well",
    ),
    source=COMMON_PRACTICE,
    reached="relief valve and its return",
    remedy="wash again; renew a plunger that picks up, and inspect its bore",
    why="one chip under the valve ruins the whole rebuild",
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
    says="new filter; housing washed and its bypass valve tested or renewed",
    how=(
        "cut and keep the old filter; fit a new listed one with its own seal",
        "wash housing, stem and both sides of the head; take a remote head apart",
        "bypass valve: washed, pushed open with a blunt pick, closes on a clean seat",
    ),
    source=idea_from(sources.ARMY_TM_347_CHART_1973),
    reached="filter, its housing and bypass valve",
    remedy="renew the bypass valve, or the head if the valve cannot be taken out",
    why="a bypass held open by a chip lets every later chip past the filter",
    guards=(delivery_causes.FILTER_BLOCKED, delivery_causes.FILTER_BYPASS_STUCK),
    after=(*what_was_found.DEBRIS, *what_was_found.COOLANT),
    cautions=(*what_was_found.WASHING, Caution.SHARP),
    also=("new oil filter", "clean the filter housing", "bypass valve"),
)
COOLER_FLUSHED_AND_PROVED = Task(
    id="cooler_flushed_and_proved",
    phase=Phase.CLEANING,
    says="oil cooler flushed against the flow, its flow and tightness tested",
    how=(
        "solvent against the normal flow, turning the cooler, until a white cloth stays clean",
        "a measured quantity passes in the same time as in a new one, in both directions",
        "air at the maker's test pressure under water: no bubble",
        "dry it, then rinse with clean oil; skip this if you renew the cooler",
    ),
    source=sources.ARMY_TM_254_COOLER,
    reached="oil cooler",
    remedy="renew it: never refit a cooler that you cannot prove clean",
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
        "take the cooler out of the circuit before you flush anything",
        "fit a new element; never refit one that you cannot prove clean",
        "take out its thermostat and bypass valve; wash and test them, or renew them too",
    ),
    source=sources.OIL_COOLER_SERVICE,
    reached="oil cooler",
    remedy="fit a new cooler, or leave it out with the maker's blank until you have one",
    why="chips stay in its fins through any flushing and come out into the new bearings",
    guards=(bearings_causes.BEARING_WIPED, delivery_causes.OIL_COOLER_BLOCKED),
    only_with=(features.OIL_COOLER, features.COOLER_ON_SUCTION),
    after=what_was_found.HARD_PIECES,
    cautions=(
        Caution.HOT,
        Caution.WASTE,
        Caution.SOLVENT,
        Caution.EYES,
    ),
    also=("replace the oil cooler", "clean the oil cooler", "new oil cooler"),
    covers=(COOLER_FLUSHED_AND_PROVED,),
)
OIL_LINES_RINSED = Task(
    id="oil_lines_rinsed",
    phase=Phase.CLEANING,
    says="oil lines and hoses rinsed and inspected inside",
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
    says="oil hoses renewed, rigid lines washed and inspected inside",
    how=(
        "renew hoses to cooler, remote filter and tank after metal or grit",
        "rigid lines: brush or pull-through, solvent, blow dry, light from end to end",
        "take fittings, check valves and adapters apart",
    ),
    source=sources.SERVICE_BULLETIN_22_NA_074,
    reached="oil lines and hoses",
    remedy="renew any line that does not pass light",
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
    says="oil tank opened and washed, every plate, or renewed",
    how=(
        "take out lid, strainer, swirl plates and breather; wash from every side",
        "white cloth over the outlet, rinse: nothing on the cloth, three times running",
        "after a bearing failure renew a tank that cannot be opened",
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
        "screen of every pickup out: the debris shows which end of the engine shed it",
        "each stage of the pump opened; scores measured",
        "scavenge lines like the pressure lines",
    ),
    source=COMMON_PRACTICE,
    reached="scavenge screens and stages",
    remedy="renew a scored stage; debris went through it before it reached any filter",
    guards=(pump_causes_fitted.SCAVENGE_FAILURE, pump_causes.PUMP_DEBRIS_LOCK),
    only_with=(features.DRY_SUMP,),
    after=(*what_was_found.HARD, *what_was_found.PIECES),
    cautions=what_was_found.WASHING,
    also=("scavenge pump", "dry sump screens"),
)
