"""What is cleaned in block, crank, top end and all the oil feeds once debris was found."""

from knowledge import sources
from knowledge.engines import features
from knowledge.reassembly import what_was_found
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.delivery import findings_galleries as delivery_galleries
from knowledge.stations.instrument import causes_line as instrument_causes_line
from knowledge.stations.instrument import findings_port as instrument_port
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.stations.topend import findings_feeds as topend_feeds
from knowledge.work import Caution, Hold, Phase, Task

GALLERIES_CLEARED = Task(
    id="galleries_cleared",
    phase=Phase.CLEANING,
    says="every gallery brushed with all plugs out",
    how=(
        "take all plugs, jets, drilled dowels and oil-fed fittings out of the block",
        "brush just wider than the passage, with solvent, from both ends and at every crossing",
        "rinse, blow dry, light or wire through to each bearing; white rag stays white",
    ),
    source=sources.OIL_PASSAGE_CLEANING,
    reached="galleries",
    remedy="brush again; pressure washing alone leaves dirt at the crossings",
    guards=(
        delivery_causes_galleries.GALLERY_BLOCKED,
        assembly_causes.DIRT_IN_ASSEMBLY,
        bearings_causes.BEARING_WIPED,
    ),
    after=(*what_was_found.HARD, *what_was_found.SEALER, delivery_galleries.GALLERY_FOUND_BLOCKED),
    cautions=what_was_found.BLOWING,
    also=("clean the galleries", "rifle brush", "all plugs out"),
)
CRANK_TRAPS_CLEARED = Task(
    id="crank_traps_cleared",
    phase=Phase.CLEANING,
    says="crank drillings and sludge traps opened, brushed and plugged again",
    how=(
        "plugs out of the webs; catch on white paper what comes out",
        "brush each drilling from both ends, rinse, blow dry, wire from main to pin",
        "new plugs, sealed and staked as the maker does",
    ),
    source=sources.OIL_PASSAGE_CLEANING,
    reached="crank drillings and sludge traps",
    remedy="brush again; a crank is not clean until its traps have been opened",
    why=(
        "as the crank spins, chips pack into the traps; fresh oil later washes them into the new "
        "shells"
    ),
    guards=(
        delivery_causes_galleries.GALLERY_BLOCKED,
        bearings_causes.BEARING_WIPED,
        assembly_causes.DIRT_IN_ASSEMBLY,
    ),
    after=(*what_was_found.HARD, *what_was_found.SLUDGE),
    cautions=(*what_was_found.BLOWING, Caution.HEAVY),
    also=("sludge traps", "crank drillings", "crank plugs"),
)
LIFTERS_CLEANED = Task(
    id="lifters_cleaned",
    phase=Phase.CLEANING,
    says="hydraulic lifters stripped and washed, one by one, or renewed",
    how=(
        "one at a time; the parts are matched and go back into their own bore",
        "wash; inspect plunger, check ball and face; oil, and check that it leaks down slowly",
        "after metal or with a worn face: new lifters, and inspect every lobe",
    ),
    source=sources.LIFTER_OVERHAUL_ARTICLE,
    reached="hydraulic lifters",
    remedy="renew the lifter; never a new one on a wiped lobe",
    guards=(topend_causes.LIFTER_BORE_LEAK,),
    only_with=(features.HYDRAULIC_LIFTERS,),
    after=(*what_was_found.HARD, *what_was_found.SEALER, *what_was_found.SLUDGE),
    cautions=(*what_was_found.WASHING, Caution.SPRING),
    also=("clean the lifters", "tappets"),
)
ROCKER_GEAR_CLEANED = Task(
    id="rocker_gear_cleaned",
    phase=Phase.CLEANING,
    says="rocker shafts, cam oilways and head feeds rinsed, end plugs out",
    how=(
        "keep rockers and pushrods in order; end plugs out of the shafts, rod and rinse",
        "hollow pushrods and spray bars blown through, light through each",
        "restrictors out, washed, refitted, their size written down",
    ),
    source=COMMON_PRACTICE,
    reached="rocker shafts and cam oilways",
    remedy="rinse again until each feed hole shows light",
    guards=(topend_causes.ROCKER_SHAFT_LEAK, delivery_causes_galleries.GALLERY_BLOCKED),
    after=(*what_was_found.HARD, *what_was_found.SEALER, *what_was_found.SLUDGE),
    cautions=what_was_found.BLOWING,
    also=("rocker shaft", "pushrods", "top end oil feed"),
)
PISTON_JETS_CLEARED = Task(
    id="piston_jets_cleared",
    phase=Phase.CLEANING,
    says="piston cooling jets out, washed, free, aimed again",
    how=(
        "take each jet out, noting its place; rinse, blow through, wire of the jet's size",
        "ball or spring valve: seats and moves",
        "refit with new seals, aimed as the maker does",
    ),
    source=sources.OIL_PASSAGE_CLEANING,
    reached="piston jets",
    remedy="renew a jet that is not clear or does not shut",
    guards=(topend_causes_feeds.PISTON_JET_OPEN,),
    only_with=(features.PISTON_JETS,),
    after=(*what_was_found.HARD, *what_was_found.SEALER, *what_was_found.SLUDGE),
    cautions=what_was_found.BLOWING,
    also=("oil squirters", "piston squirters"),
)
CHAIN_TENSIONERS_CLEARED = Task(
    id="chain_tensioners_cleared",
    phase=Phase.CLEANING,
    says="chain tensioners and chain jets washed and free, or renewed",
    how=(
        "pin the plunger back, take the tensioner off; rinse, work it in clean oil",
        "its screen, feed hole and check valve clear; chain jet clear",
        "new gasket or ring behind it",
    ),
    source=COMMON_PRACTICE,
    reached="chain tensioners",
    remedy="renew the tensioner if the plunger sticks or will not hold",
    guards=(topend_causes.TENSIONER_SEAL_LEAK,),
    only_with=(features.CHAIN_TENSIONERS,),
    after=(*what_was_found.HARD, *what_was_found.SEALER, *what_was_found.SLUDGE),
    cautions=(*what_was_found.WASHING, Caution.SPRING),
    also=("timing chain tensioner", "tensioner screen"),
)
TURBO_LINES_CLEANED = Task(
    id="turbo_lines_cleaned",
    phase=Phase.CLEANING,
    says="turbo feed renewed or clean to bright metal, its drain clear",
    how=(
        "feed, banjo bolts and any screen off: renew a coked pipe, wash a clean one",
        "drain pipe rinsed, no kink, no sealer at its flange",
        "crank into a can before you connect the turbo: a full stream; then oil into the turbo",
    ),
    source=sources.TURBO_MAKER_CONTAMINATION,
    reached="turbo feed and drain",
    remedy="fit a new feed pipe",
    guards=(topend_causes_feeds.TURBO_FEED_RESTRICTED,),
    only_with=(features.TURBOCHARGED,),
    after=(*what_was_found.DEBRIS, *what_was_found.COOLANT, topend_feeds.TURBO_FEED_FOUND_BLOCKED),
    cautions=(
        *what_was_found.BLOWING,
        Caution.HOT,
        Caution.ROTATING,
        Caution.FIRE,
    ),
    also=("turbo oil feed", "turbo oil line"),
)
OIL_FED_FITTINGS_CLEANED = Task(
    id="oil_fed_fittings_cleaned",
    phase=Phase.CLEANING,
    says="everything else that engine oil runs through: opened and rinsed",
    how=(
        "list it: compressor, vacuum pump, injection pump, governor, cam phasers, hydraulic drive",
        "take each off; rinse feed, screen and drain; strip or renew one with bearings",
    ),
    source=sources.OIL_PASSAGE_CLEANING,
    remedy="open what was left out: it sends its chips back to the engine",
    guards=(assembly_causes.DIRT_IN_ASSEMBLY,),
    after=what_was_found.METAL,
    cautions=(*what_was_found.WASHING, Caution.INJECTION),
    also=("air compressor oil feed", "vacuum pump", "cam phaser"),
)
SENDER_PORT_CLEARED = Task(
    id="sender_port_cleared",
    phase=Phase.CLEANING,
    says="sender port, its restrictor and the gauge line clear",
    how=(
        "sender out; soft wire and syringe, drawing outward, never pushing in",
        "gauge line blown through into a rag at low pressure, then filled with clean oil",
        "test the sender itself with a known pressure",
    ),
    source=idea_from(sources.ARMY_TM_347_CHART_1973),
    reached="sender port and gauge line",
    remedy="renew a line or sender that stays slow",
    guards=(instrument_causes_line.GAUGE_LINE_BLOCKED,),
    after=(
        *what_was_found.HARD,
        *what_was_found.SLUDGE,
        *what_was_found.SEALER,
        instrument_port.SENDER_PORT_CLOGGED,
        instrument_port.GAUGE_LINE_SLUDGED,
    ),
    cautions=(
        Caution.EYES,
        Caution.PRESSURE,
        Caution.BATTERY,
    ),
    also=("oil pressure sender port", "gauge line"),
)
SEALER_PICKED_FROM_FEEDS = Task(
    id="sealer_picked_from_feeds",
    phase=Phase.CLEANING,
    says="every narrow place checked for sealer and shreds",
    how=(
        "pickup tube, relief bore, filter bypass, restrictors, lifter feeds, jets",
        "light and soft wire; no washing dissolves set sealer",
    ),
    source=sources.CLUB_SEALANT_STRAINER,
    remedy="pick it out by hand; renew what you cannot see through",
    guards=(
        assembly_causes.SEALANT_DEBRIS,
        relief_causes.RELIEF_DEBRIS,
        delivery_causes_galleries.GALLERY_BLOCKED,
    ),
    after=what_was_found.SEALER,
    cautions=(Caution.EYES,),
    also=("silicone in the oilways",),
)
FILTER_CUT_AGAIN = Task(
    id="filter_cut_again",
    phase=Phase.CLEANING,
    says="date set to cut the first filter: after about an hour's running",
    how=(
        "write into the job: first filter off after an hour, cut open and spread on white paper",
        "flakes or copper in it: stop, the source is still there or something was left dirty",
        "only dust: next filter at the usual time",
    ),
    source=idea_from(sources.CUT_FILTER_ANALYSIS_2026),
    hold=Hold.NOTE,
    remedy="set the date before you hand the engine over",
    guards=(assembly_causes.DIRT_IN_ASSEMBLY, assembly_causes.PART_SHEDDING_INSIDE),
    after=(*what_was_found.HARD, *what_was_found.PIECES),
    cautions=(
        Caution.SHARP,
        Caution.USED_OIL,
        Caution.WASTE,
    ),
    also=("cut the filter after first run",),
)
