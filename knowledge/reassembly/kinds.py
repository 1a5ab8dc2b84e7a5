"""Tasks of kinds of engine only: dippers, drip oilers, oil injection, dry sumps, rotary, pre-lube."""

from knowledge import sources
from knowledge.engines import features, features_build, features_kinds
from knowledge.reassembly.first_start import FIRST_RUN
from knowledge.sources import COMMON_PRACTICE, FROM_MEMORY, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_poured
from knowledge.stations.delivery import causes_galleries
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.topend import causes_feeds
from knowledge.work import Caution, Hold, Phase, Task

DIPPERS_SET = Task(
    id="dippers_set",
    phase=Phase.BEARINGS,
    says="dippers or slinger: fast, facing the way they turn, hole into the bearing open",
    how=(
        "scoop to the front as the crank turns; the wrong way round it throws oil away from its hole",
        "wire through each dipper into its bearing; none bent, none loose",
        "turn the crank by hand: each dips as deep as the manual says, and strikes nothing",
    ),
    source=idea_from(sources.TROUGH_FED_SIX_1942),
    remedy="turn it round, straighten or renew it; its height decides what the rod gets",
    guards=(bearings_causes.BEARING_WIPED, assembly_causes.FASTENER_LOOSE_INSIDE),
    only_with=(features_build.SPLASH_LUBRICATED, features_kinds.TROUGH_FED),
    cautions=(Caution.HAND_TURN,),
    also=("oil dippers", "rod scoops", "slinger"),
)
TROUGHS_SET = Task(
    id="troughs_set",
    phase=Phase.SUMP,
    says="troughs level and at their height from the pan flange, nozzles clear and aimed",
    how=(
        "gauge bar on the bare pan flange, no gasket: its rod just clears the trough's sides",
        "wire through each nozzle; aim by the manual's gauge: the stream must meet the dipper",
        "pipes and joints of the pan tight: a leak there takes what the rods should get",
    ),
    source=sources.TROUGH_FED_SIX_1935,
    remedy="bend the trough, clean or re-aim the nozzle, measure again",
    guards=(bearings_causes.BEARING_WIPED,),
    only_with=(features_kinds.TROUGH_FED,),
    cautions=(Caution.EYES,),
    also=("trough height", "oil pan troughs", "oil nozzles"),
)
OIL_SEEN_AT_TROUGHS = Task(
    id="oil_seen_at_troughs",
    phase=Phase.PRIMING,
    says="low-pressure pump primed, troughs full before the first turn",
    how=(
        "pour oil into troughs and valve chamber as well as to the mark: the pump fills them slowly",
        "turn the engine by hand or crank it without ignition until oil runs at troughs or sight glass",
        "the gauge shows a few psi at most: that oil runs is what counts",
    ),
    source=idea_from(sources.SPLASH_DIESEL_OILER),
    remedy="prime the pump through its outlet; look for air at its inlet",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED, suction_causes.SUCTION_JOINT_AIR_LEAK),
    only_with=(features_kinds.TROUGH_FED,),
    cautions=(Caution.HAND_TURN, Caution.ROTATING, Caution.IGNITION, Caution.FIRE),
    also=("fill the troughs", "prime the trough pump"),
)
LEVEL_FOR_SPLASH = Task(
    id="level_for_splash",
    phase=Phase.PRIMING,
    says="splash: oil to the mark with the engine level, bearings and bores oiled by hand",
    how=(
        "engine as it will run, not tilted; dippers must reach the oil and not churn in it",
        "oil into bearing, cam and bore before the first turn: splash comes only with speed",
        "the grade the maker names: thick oil in the cold is not thrown up",
    ),
    source=COMMON_PRACTICE,
    remedy="fill or drain to the mark",
    guards=(oil_causes.OIL_LEVEL_LOW, oil_causes.OIL_LEVEL_HIGH),
    only_with=(features_build.SPLASH_LUBRICATED,),
    cautions=(Caution.USED_OIL,),
    also=("splash level", "fill for splash"),
)
CUPS_AND_DRIPS_FEED = Task(
    id="cups_and_drips_feed",
    phase=Phase.PRIMING,
    says="each oil cup, drip and grease cup feeds its bearing: cleaned, filled, drops counted",
    how=(
        "wash each cup; wire through hole and groove of the bearing until oil runs in",
        "count the drops of each drip in a minute and set them to the manual's figure",
        "grease cups: fill, screw down until grease shows at the bearing, a turn more at each start",
        "cold oil drips slowly: count again when it is warm; shut the drips after each run",
    ),
    source=idea_from(sources.GAS_ENGINE_HANDBOOK),
    remedy="clear the hole or renew the wick or needle; no drop, no start",
    guards=(bearings_causes.BEARING_WIPED, causes_poured.POURED_BEARING_BROKEN_UP),
    only_with=(features_kinds.DRIP_OILED,),
    cautions=(Caution.SOLVENT, Caution.FIRE),
    also=("drip oiler", "grease cups", "oil cups", "drops per minute"),
)
BEARINGS_FELT_BY_HAND = Task(
    id="bearings_felt_by_hand",
    phase=Phase.FIRST_START,
    says="after 1, 5 and 15 minutes: stopped, each bearing cool enough for a hand",
    how=(
        "stop, wait until nothing turns, then feel mains, rod big end and piston skirt",
        "warm is right; too hot to keep a hand on is too little oil or a bearing too tight",
        "an infrared thermometer reads it as well: compare one bearing with the other",
    ),
    source=idea_from(sources.GAS_ENGINE_HANDBOOK),
    remedy="do not go on: clear its feed, ease or shim the cap, oil it and begin again",
    guards=(bearings_causes.BEARING_WIPED,),
    only_with=(
        features_build.SPLASH_LUBRICATED,
        features_kinds.DRIP_OILED,
        features_kinds.TROUGH_FED,
    ),
    cautions=FIRST_RUN,
    also=("hot bearing", "feel the bearings"),
)
INJECTION_OIL_BLED = Task(
    id="injection_oil_bled",
    phase=Phase.PRIMING,
    says="two-stroke: injection pump bled, lines full, lever on its mark, oil filter renewed",
    how=(
        "open the bleed screw of the pump until oil comes without bubbles, shut it",
        "each delivery line full of oil up to its nozzle; check valves let nothing back",
        "throttle shut, or as the manual says: mark of the lever on the mark of the pump",
        "oil system tight: it must hold 3 psi (21 kPa) for 10 minutes; never more",
        "first tank on fuel mixed with oil at the maker's ratio until you have seen oil used",
    ),
    source=sources.TWO_STROKE_OIL_TESTS,
    remedy="no start on plain petrol (gasoline) while air is in a line",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED, suction_causes.SUCTION_JOINT_AIR_LEAK),
    only_with=(features_kinds.OIL_BURNT_WITH_FUEL,),
    cautions=(Caution.PRESSURE, Caution.FIRE, Caution.EYES),
    also=("bleed the oil injection", "autolube", "oil pump cable"),
)
OIL_USE_MEASURED = Task(
    id="oil_use_measured",
    phase=Phase.RUN_IN,
    says="two-stroke: oil used goes with fuel burnt, as the maker's ratio says",
    how=(
        "mark the level of the oil tank; burn a measured amount of fuel, engine level",
        "oil used against fuel burnt: at about 50 to 1, 10 litres of fuel take 0.2 litre of oil",
        "nothing used: stop; premix until the pump's drive and lines are put right",
    ),
    source=sources.TWO_STROKE_OIL_USED,
    remedy="bleed again, set the lever, then look at the drive of the pump",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED,),
    only_with=(features_kinds.OIL_BURNT_WITH_FUEL,),
    also=("oil consumption two stroke", "oil ratio"),
)
RETURN_SEEN_AT_TANK = Task(
    id="return_seen_at_tank",
    phase=Phase.FIRST_START,
    says="dry sump: oil seen to come back at the tank within a minute of the start",
    how=(
        "tank cap off, light on the return: oil comes back in spurts with gaps between",
        "steady at first, while the sump empties, then in spurts: return moves about twice the feed",
        "none within a minute: stop at once; a full tank that stays full means that nothing is fed",
        "it shows feed and return together; what a gauge shows at rollers says little",
    ),
    source=sources.DRY_SUMP_RETURN_VISIBLE,
    remedy="stop; bleed the feed, then look for air on the scavenge side",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED, pump_causes_fitted.SCAVENGE_FAILURE),
    only_with=(features.DRY_SUMP,),
    cautions=FIRST_RUN,
    also=("oil return check", "return at the tank", "scavenge working"),
)
TANK_HOLDS_OVERNIGHT = Task(
    id="tank_holds_overnight",
    phase=Phase.RUN_IN,
    says="dry sump: tank level holds overnight; check valve of the feed seats",
    how=(
        "mark the level warm, after a run; read it again next morning",
        "fallen far: ball or seat of the check valve, or wear of the feed pump, lets it through",
        "never top up a tank that has run down: run it a minute, then read the level",
        "a tap in the feed: wire it so that it cannot start with the tap shut",
    ),
    source=sources.DRY_SUMP_CHECK_VALVE,
    hold=Hold.NOTE,
    remedy="clean and seat the ball, renew its spring; a worn pump stays as it is until it is renewed",
    guards=(oil_causes.OIL_LEVEL_HIGH, oil_causes.OIL_LEVEL_LOW),
    only_with=(features.DRY_SUMP,),
    cautions=(Caution.HOT, Caution.EXHAUST, Caution.ROTATING),
    also=("wet sumping", "anti-drain valve", "check valve in the oil feed"),
)
FRONT_COVER_RING_BACKED = Task(
    id="front_cover_ring_backed",
    phase=Phase.BEARINGS,
    says="rotary: O-ring between front cover and front housing new, with its backing ring",
    how=(
        "counterbore clean; O-ring oiled, in its groove, backing (plastic) ring where the build has one",
        "front upright while the cover goes on, so that the ring cannot fall or shear",
        "cover gasket as thick as the manual says; no sealer in place of the ring",
        "take the cover off once more and look: an even mark all round the ring",
    ),
    source=sources.ROTARY_FRONT_COVER,
    remedy="renew the ring; a housing without a groove for the backing ring needs the thicker ring",
    guards=(causes_galleries.GALLERY_SEAL_LEAK,),
    only_with=(features_kinds.ROTARY_PISTON,),
    also=("front cover o-ring", "front cover oil passage", "rotary front cover"),
)
TWO_RELIEFS_IN_PLACE = Task(
    id="two_reliefs_in_place",
    phase=Phase.RELIEF,
    says="two relief valves: each in its own place with its own spring and plunger",
    how=(
        "photograph both before they come out; lay the parts of each by themselves",
        "rotary: regulator at the rear sets the pressure, the one in the front housing spares the cooler",
        "flat four: control valve at the flywheel end, relief valve near the pump; lengths and springs differ",
        "both plungers drop by their own weight; write down length and load of both springs",
    ),
    source=FROM_MEMORY,
    remedy="sort them by the manual's lengths before either goes in",
    guards=(relief_causes.RELIEF_SPRING_WRONG, relief_causes.RELIEF_PART_MISSING),
    only_with=(features_build.SEVERAL_RELIEFS,),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("dual relief", "second relief valve", "front relief"),
)
FLOATING_SHELLS_MEASURED = Task(
    id="floating_shells_measured",
    phase=Phase.BEARINGS,
    says="floating rod bearings: clearance on the journal and in the rod, both measured",
    how=(
        "shells turn free in the rods: measure inside on the journal and outside in the rod's bore",
        "both gaps leak: what counts for the pressure is the sum, by the manual's figures for each",
        "bore of both rods of a pair round and of one size; side clearance of the pair by feeler",
        "no shells of another kind with tangs: they would lock in one rod",
    ),
    source=FROM_MEMORY,
    remedy="other undersize inside, or rods resized: one without the other does not do",
    guards=(bearings_causes.BEARING_WRONG_SIZE, bearings_causes.BEARING_WEAR_RODS),
    only_with=(features_kinds.FLOATING_ROD_BEARINGS,),
    also=("floating inserts", "full floating bearings", "floating shells"),
)
PRELUBED_BY_ITS_PUMP = Task(
    id="prelubed_by_its_pump",
    phase=Phase.PRIMING,
    says="pre-lube pump: run until oil comes at every bearing, engine turned over meanwhile",
    how=(
        "turning gear or bar: two turns under pre-lube, indicator cocks open, turning gear out again",
        "look at each main and big end with the doors open: oil runs at all of them",
        "turbo on this circuit: no more pressure at rest than its maker allows (at most 2 bar on one)",
        "leave it on while the engine stands by; its own low-pressure alarm is not the engine's",
    ),
    source=sources.PRELUBE_PUMP_GUIDE,
    remedy="no start by the interlock's override: find where the oil goes",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED, bearings_causes.BEARING_WIPED),
    only_with=(features_kinds.PRELUBE_PUMP,),
    cautions=(Caution.HAND_TURN, Caution.ROTATING),
    also=("prelube", "pre-lubrication", "priming pump of the engine"),
)
JET_VALVES_SHUT = Task(
    id="jet_valves_shut",
    phase=Phase.BEARINGS,
    says="piston jets: check ball of each moves, shuts, and opens at its pressure",
    how=(
        "rod into the inlet: the ball moves freely and comes back by its spring",
        "regulated air at the inlet: shut below the manual's figure, open above it",
        "printed: shut below 15 psi (small four), open at 19 to 23 (turbo four) or 55 (2.4 four): use yours",
        "one that stays open costs most pressure at slow speed",
    ),
    source=sources.JET_CHECK_BALLS,
    remedy="renew the jet: it cannot be mended",
    guards=(causes_feeds.PISTON_JET_OPEN,),
    only_with=(features.PISTON_JETS,),
    cautions=(Caution.PRESSURE, Caution.EYES),
    also=("squirter check valve", "oil jet ball", "jet opening pressure"),
)
SPLASH_LEAKS_LOOKED_AT = Task(
    id="splash_leaks_looked_at",
    phase=Phase.RUN_IN,
    says="oil used in the first hours written down; caps and cups looked at again",
    how=(
        "read the level, or what the cups took, after each run of the first five hours",
        "caps: nuts pinned or wired, shims as counted; take up what has bedded in",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="more than before: find where it goes",
    guards=(oil_causes.OIL_LEVEL_LOW, leaks_causes.EXTERNAL_LEAK_MAJOR),
    only_with=(features_build.SPLASH_LUBRICATED, features_kinds.DRIP_OILED),
    also=("oil used", "caps taken up"),
)
