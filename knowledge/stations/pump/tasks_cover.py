"""What must be right as the pump is closed on the bench: cover, screws, turning, wetting."""

from knowledge import sources
from knowledge.engines import features, features_build
from knowledge.figures import IN_LB, LB_FT, around
from knowledge.reassembly.places import PUMP_OUT
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.pump import causes, causes_drive, causes_fitted, quantities
from knowledge.units import MM, THOU
from knowledge.work import Band, Phase, SizeRange, Task

ROTORS = (features_build.ROTOR_PUMP,)
PUMP_COVER_FLAT = Task(
    id="pump_cover_flat",
    phase=Phase.PUMP,
    says="pump cover flat and not grooved: widest gap under a straightedge",
    how=(
        "straightedge across the cover in four directions; a 0.001 in feeler must not enter",
        "look at the side the gears run on: a groove that catches a fingernail counts",
        "cover screw threads sound; cover closes all round before the screws go in",
    ),
    source=sources.PUMP_INSTALLATION_1983,
    measures=quantities.PUMP_COVER_HOLLOW,
    bands=(
        Band(
            low=None,
            high=1 * THOU,
            source=sources.PUMP_INSTALLATION_1983,
            says="one V6, gear pump: renew at this",
            not_with=ROTORS,
        ),
        Band(
            low=None,
            high=1.5 * THOU,
            source=sources.VAN_ROTOR_PUMP_1997,
            says="rotor pump of a petrol V6 of 1997; a V8 prints the same",
            only_with=ROTORS,
        ),
        Band(
            low=None,
            high=3 * THOU,
            source=sources.V6_ROTOR_PUMP_1997,
            says="rotor pump of another V6 of 1997; a V10 prints the same",
            only_with=ROTORS,
        ),
    ),
    limits=(None, quantities.MOST_COVER_HOLLOW),
    remedy="lap it on plate glass, or renew it",
    guards=(causes.PUMP_COVER_SCORED, causes.PUMP_COVER_LOOSE),
    also=("cover warped", "lap the cover", "cover flatness"),
)
COVER_JOINT_AS_MADE = Task(
    id="cover_joint_as_made",
    phase=Phase.PUMP,
    says="pump cover joint as made: metal to metal, or one gasket of its own",
    how=(
        "check in the parts list whether there is a gasket, and how thick",
        "no home-made paper gasket under a cover that runs metal to metal; no bead of sealer",
    ),
    source=sources.DIESEL_CASE_NOTE,
    remedy="take it off; then measure the end clearance again",
    why="a paper gasket under such a cover widens the end clearance by its whole thickness",
    guards=(causes.PUMP_GASKET_WRONG,),
    also=("pump cover gasket", "paper gasket"),
)
PUMP_COVER_SCREWS_TORQUED = Task(
    id="pump_cover_screws_torqued",
    phase=Phase.PUMP,
    says="torque of the pump cover screws",
    how=(
        "tighten them evenly, crosswise, in two steps",
        "the maker's manual comes first: write its figure on the engine's card",
        "otherwise by thread, measured: 6 to 10 lb-ft for 1/4 in or M6, which 15 lb-ft strips",
        "a figure in in-lb is set in in-lb: 106 in-lb is not 106 lb-ft",
        "turn the pump between the steps: it must not go tight",
    ),
    source=COMMON_PRACTICE,
    measures=quantities.PUMP_COVER_TORQUE,
    limits=(quantities.USUAL_COVER_TORQUE, quantities.USUAL_COVER_TORQUE),
    bands=(
        Band(
            low=6 * LB_FT,
            high=10 * LB_FT,
            source=COMMON_PRACTICE,
            says="screws of 1/4 in or M6: 6 to 10 lb-ft; for bigger ones see the last one",
            of_size=SizeRange(part=quantities.PUMP_COVER_SCREW, above=5.5 * MM, up_to=6.9 * MM),
        ),
        around(106 * IN_LB, sources.BUILD_ARTICLE_2017, "one V8 build: 106 in-lb", of_one=True),
        around(
            10 * LB_FT,
            sources.PUMP_INSTALLATION_1983,
            "one V6, pump in the timing cover: 10 lb-ft",
            of_one=True,
        ),
        Band(
            low=6 * LB_FT,
            high=9 * LB_FT,
            source=sources.FOUR_PUMP_SERVICE_1988,
            says="one pushrod four: 6 to 9 lb-ft",
            of_one=True,
        ),
        around(
            105 * IN_LB, sources.V6_TORQUES_2009, "one 3.7 V6, front pump: 105 in-lb", of_one=True
        ),
        around(
            89 * IN_LB,
            sources.SIX_FRONT_PUMP_2009,
            "one straight six, front pump: 89 in-lb",
            of_one=True,
        ),
        around(
            15 * LB_FT,
            sources.DIESEL_V8_PUMP_LIMITS,
            "one diesel V8: 21 N·m, 15 lb-ft",
            of_one=True,
        ),
        around(
            15 * LB_FT,
            COMMON_PRACTICE,
            "screws of 5/16 in or M8: 15 lb-ft",
            of_size=SizeRange(part=quantities.PUMP_COVER_SCREW, above=7.5 * MM, up_to=8.5 * MM),
        ),
    ),
    remedy="slacken, inspect thread and cover, tighten again; renew a stretched screw",
    why="a loose cover opens as the pressure rises, and its screws end up in the sump",
    guards=(causes.PUMP_COVER_LOOSE, assembly_causes.FASTENER_LOOSE_INSIDE),
    also=("cover bolts", "pump cover torque", "oil pump cover bolts"),
)
PUMP_COVER_SCREWS_LOCKED = Task(
    id="pump_cover_screws_locked",
    phase=Phase.PUMP,
    says="pump cover screws locked",
    how=(
        "threads of screw and body free of oil",
        "one drop of medium-strength (removable) thread locker on the screw, none in the bore",
        "or the lock washers or tabs the maker fits; not both",
        "the manual comes first: locker wets the thread and changes the clamp load",
    ),
    source=COMMON_PRACTICE,
    remedy="out, clean, lock, torque again",
    guards=(causes.PUMP_COVER_LOOSE, assembly_causes.FASTENER_LOOSE_INSIDE),
    also=("thread locker", "thread lock", "blue thread locker", "lock the cover screws"),
)
PUMP_TURNS_FREELY = Task(
    id="pump_turns_freely",
    phase=Phase.PUMP,
    opened=PUMP_OUT,
    says="pump turns freely by finger, one full turn, cover tight",
    how=(
        "turn the shaft through every tooth: smooth, no tight spot, no grating",
        "again after the pickup is fitted or welded",
    ),
    source=sources.FOUR_PUMP_SERVICE_1988,
    remedy="open it: look for a burr, a chip, end clearance too small, a distorted body",
    guards=(causes.PUMP_DEBRIS_LOCK, causes_drive.PUMP_DRIVE_BIND),
    also=("pump binds", "spin the pump by hand", "tight spot"),
)
PUMP_WETTED = Task(
    id="pump_wetted",
    phase=Phase.PUMP,
    opened=PUMP_OUT,
    says="pump wetted with clean oil before it is fitted",
    how=(
        "fill the cavity with clean engine oil and turn it until oil comes out of the outlet",
        "no chassis grease; petroleum jelly only if the maker says to pack the pump",
    ),
    source=sources.ROTOR_PUMP_SERVICE,
    remedy="wet it again if it has stood for days",
    why=(
        "two views: a vehicle maker says a gear pump in the timing cover may not draw unless "
        "packed with jelly; a parts supplier says jelly and grease block. The maker comes first; "
        "otherwise use only oil"
    ),
    guards=(causes_fitted.PUMP_NOT_PRIMED, assembly_causes.ASSEMBLY_LUBE_CLOG),
    also=("prime the pump on the bench", "oil the pump", "vaseline in the pump"),
)
PUMP_PACKED_WHERE_TOLD = Task(
    id="pump_packed_where_told",
    phase=Phase.PUMP,
    says="gear pump in the front cover: packed with petroleum jelly if its maker asks for it",
    how=(
        "read the manual: some of these pumps must be packed, others must not",
        (
            "if the maker says so: fill every space between the teeth with petroleum jelly, nothing "
            "stiffer"
        ),
        "otherwise: feed oil in at the inlet while you turn the pump",
    ),
    source=sources.PUMP_INSTALLATION_1983,
    remedy="take the cover off, pack it; it can lose its prime whenever the cover is disturbed",
    why="a pump above the oil starts dry; rebuilders fill rotor pumps with oil at the inlet instead",
    guards=(causes_fitted.PUMP_NOT_PRIMED,),
    only_with=(features.PUMP_ON_CRANK_NOSE, features.PUMP_ON_CAM_NOSE),
    also=("pack the pump", "petroleum jelly", "vaseline"),
)
INLET_FED_BEFORE_PICKUP = Task(
    id="inlet_fed_before_pickup",
    phase=Phase.PUMP,
    says=(
        "rotor pump on the crank: oil fed in at its inlet while turned, before the pickup is fitted"
    ),
    how=(
        "clean oil into the pickup passage, turn the pump the way it runs, until it stays full",
        "do not turn it afterwards; fit it soon",
    ),
    source=sources.REBUILDERS_PRIMING,
    remedy="feed it again if it stood for days",
    why="a drill cannot turn this pump later: the oil you put in now is all it starts with",
    guards=(causes_fitted.PUMP_NOT_PRIMED,),
    only_with=(features.PUMP_ON_CRANK_NOSE,),
    also=("fill the gerotor", "prime the front pump", "oil in the inlet"),
)
