"""What to watch at the first start, and the limits at which the engine is stopped."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.engines import features
from knowledge.figures import MINUTE, STOPWATCH, TACHOMETER, TRUSTED_GAUGE
from knowledge.pressure import quantities as pressure_quantities
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import quantities as oil_quantities
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.units import PSI
from knowledge.work import Access, Band, Caution, Hold, Phase, Task

FIRST_RUN = (*RUNNING, Caution.FIRE)  #: the first run, with fuel and oil where it may leak
READY_TO_START = Task(
    id="ready_to_start",
    phase=Phase.FIRST_START,
    says="ready: gauge watched by a second person, stop within reach, extinguisher at hand",
    how=(
        "timing set, fuel at the carburettor or pump bled, coolant in, belts guarded: it must "
        "fire at once",
        "agree on the signal to stop; one person does nothing but watch the gauge",
        "vehicle chocked, out of gear; tractor: power take-off off; boat: bilge ventilated",
        "write down the stop limits of this engine before you turn the key",
    ),
    source=COMMON_PRACTICE,
    remedy="wait until all of it is in place",
    guards=(pump_causes_fitted.PUMP_NOT_PRIMED, bearings_causes.BEARING_WIPED),
    cautions=FIRST_RUN,
    also=("before first start", "start up check", "ready to fire"),
)
FIRST_PRESSURE_TIMED = Task(
    id="first_pressure_timed",
    phase=Phase.FIRST_START,
    says="time from first fire until the gauge moves",
    how=(
        "stopwatch from the first fire; the needle should move within 3 to 5 s",
        "no reading by 5 to 10 s: shut down, prime again; do not rev it to help",
        "only a lamp: it must go out just as soon; that does not prove enough pressure",
    ),
    source=sources.OIL_CHANGE_LAMP_TEXT,
    dimension="time",
    bands=(
        Band(
            low=None,
            high=10.0,
            source=sources.OIL_CHANGE_LAMP_TEXT,
            says="new build: shut down at 5 to 10 s without a reading",
        ),
        Band(low=None, high=5.0, source=JUDGEMENT, says="well primed: stop at 5 s"),
        Band(
            low=None,
            high=30.0,
            source=sources.FILTER_MAKER_PRIME,
            says=(
                "printed for starting; here for cranking with the filter slackened only (judgement)"
            ),
        ),
    ),
    spread=STOPWATCH,
    remedy=(
        "shut down; check the level, then prime again; do not restart until priming has shown "
        "pressure"
    ),
    guards=(
        pump_causes_fitted.PUMP_NOT_PRIMED,
        pump_causes_drive.PUMP_DRIVE_BROKEN,
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
        assembly_causes.ASSEMBLY_LUBE_CLOG,
    ),
    cautions=FIRST_RUN,
    also=("how long for oil pressure", "no oil pressure on start up", "first fire"),
)
#: a cam and lifters that stayed in place are run in already
CAM_OR_LIFTERS_OUT = (Access.CAM_OUT, Access.VALLEY_OPEN)
CAM_RUN_IN_SPEED_HELD = Task(
    id="cam_run_in_speed_held",
    phase=Phase.FIRST_START,
    says="flat-tappet camshaft: run-in speed at once after pressure shows, no idling",
    how=(
        "pressure first, then straight up to speed; keep varying it a little",
        "pressure below its limit at any moment: stop, whatever the cam needs",
        "roller followers: does not apply",
    ),
    source=sources.CAM_MAKER_FIRST_START,
    dimension="speed",
    bands=(
        Band(low=1500.0, high=2500.0, source=sources.CAMSHAFT_RULES, says="1500 to 2500 rpm"),
        Band(
            low=1800.0,
            high=2200.0,
            source=sources.CAMSHAFT_RULES,
            says="about 2000 rpm; 10 % either side taken",
        ),
    ),
    spread=TACHOMETER,
    remedy="stop and cure what kept it from running; then begin again",
    why="splash from the crank oils the lobes: at idle there is too little",
    guards=(),
    only_with=(features.PUSHROD_ENGINE,),
    opened=CAM_OR_LIFTERS_OUT,
    cautions=FIRST_RUN,
    also=("cam break-in", "run in the cam", "flat tappet"),
)
CAM_RUN_IN_TIMED = Task(
    id="cam_run_in_timed",
    phase=Phase.FIRST_START,
    says="flat-tappet camshaft: total time at run-in speed",
    how=("stop for any limit below; the time counts on from there",),
    source=sources.CAMSHAFT_RULES,
    dimension="time",
    bands=(
        Band(
            low=20 * MINUTE,
            high=None,
            source=sources.CAMSHAFT_RULES,
            says="20 to 30 minutes; the cam maker's card first",
        ),
    ),
    spread=MINUTE,
    remedy="run the rest of it",
    only_with=(features.PUSHROD_ENGINE,),
    opened=CAM_OR_LIFTERS_OUT,
    cautions=FIRST_RUN,
    also=("cam break-in time", "20 minutes at 2000"),
)
PRESSURE_COLD_WATCHED = Task(
    id="pressure_cold_watched",
    phase=Phase.FIRST_START,
    says="highest pressure with the oil cold, at idle",
    how=(
        "it must stop rising near the relief setting, at most some 10 psi above it",
        "over 80 to 90 psi cold at idle: shut down; do not rev cold oil",
    ),
    source=COMMON_PRACTICE,
    dimension="pressure",
    bands=(
        Band(
            low=None,
            high=80 * PSI,
            source=COMMON_PRACTICE,
            says="shut down from 80 psi cold at idle",
        ),
        Band(low=None, high=90 * PSI, source=COMMON_PRACTICE, says="some let it go to 90 psi"),
    ),
    spread=TRUSTED_GAUGE,
    remedy="relief valve: stuck, reversed, wrong spring; then oil too thick",
    guards=(
        relief_causes.RELIEF_STUCK_CLOSED,
        relief_causes.RELIEF_SPRING_WRONG,
        oil_causes.VISCOSITY_TOO_HIGH,
    ),
    cautions=FIRST_RUN,
    also=("too much oil pressure", "cold oil pressure", "pegs the gauge"),
)
PRESSURE_HOT_AT_2000 = Task(
    id="pressure_hot_at_2000",
    phase=Phase.FIRST_START,
    says="pressure hot, at 2000 rpm or more",
    how=(
        "oil hot, speed steady, direct gauge; write speed, temperature and pressure down together",
        "below the limit at 2000 rpm or more: stop and find out why",
    ),
    source=sources.TEN_PSI_RULE_2009,
    dimension="pressure",
    bands=(
        Band(
            low=20 * PSI,
            high=None,
            source=sources.TEN_PSI_RULE_2009,
            says="rule of thumb, 10 psi for each 1000 rpm: at 2000 rpm",
        ),
        Band(
            low=pressure_quantities.DIESEL_AT_SPEED.value,
            high=None,
            source=sources.DIESEL_CASE_NOTE,
            says="farm diesel at speed: stop below 0.2 MPa (29 psi)",
            only_with=(features.DIESEL,),
        ),
        Band(
            low=250e3,
            high=None,
            source=sources.TRACTOR_WORKSHOP_MANUAL,
            says="small tractor diesel, printed for rated speed, not for 2000 rpm: limit 36 psi",
            shown_only=True,
        ),
        Band(
            low=280e3,
            high=None,
            source=sources.DIESEL_TESTING_MANUAL,
            says="three- and four-cylinder diesel, printed for high idle, not for 2000 rpm: 40 psi",
            shown_only=True,
        ),
        Band(
            low=315e3,
            high=None,
            source=sources.DIESEL_TESTING_MANUAL,
            says="six-cylinder diesel of that make, printed for full speed: 45 psi",
            shown_only=True,
        ),
    ),
    limits=(pressure_quantities.STOP_RUNNING_PRESSURE, None),
    spread=TRUSTED_GAUGE,
    remedy="stop; check relief valve and gauge first, then the circuit",
    guards=(
        relief_causes.RELIEF_DEBRIS,
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
        bearings_causes.BEARING_WRONG_SIZE,
        pump_causes.PUMP_GEAR_WEAR,
    ),
    cautions=FIRST_RUN,
    also=("10 psi per 1000", "hot pressure", "pressure at 2000"),
)
PRESSURE_AT_HOT_IDLE = Task(
    id="pressure_at_hot_idle",
    phase=Phase.FIRST_START,
    says="pressure at hot idle, idle speed right",
    how=(
        "oil hot, idle speed set and measured, direct gauge",
        "below the limit: shut down; quiet lifters prove little on a new build",
    ),
    source=sources.TRACTOR_WORKSHOP_MANUAL,
    dimension="pressure",
    bands=(
        Band(low=10 * PSI, high=None, source=COMMON_PRACTICE, says="usual: 10 psi"),
        Band(
            low=50e3,
            high=None,
            source=sources.TRACTOR_WORKSHOP_MANUAL,
            says="maker, small tractor diesel: worn out below 7 psi, 14 psi when new",
            shown_only=True,
        ),
        Band(
            low=6 * PSI,
            high=None,
            source=sources.ARMY_TM_280_LIMITS,
            says="maker's figure, V8 diesel truck: below 6 psi not fit for use",
            shown_only=True,
        ),
        Band(
            low=15 * PSI,
            high=None,
            source=sources.NEWSPAPER_GAUGE_2010,
            says="many people like 15 to 20 psi",
        ),
    ),
    limits=(pressure_quantities.HOT_IDLE_PRESSURE, None),
    spread=TRUSTED_GAUGE,
    remedy="idle speed, oil temperature and grade first; then relief valve, then clearances",
    why="three views: maker's limit, what people like, quiet lifters; the maker comes first",
    guards=(
        oil_causes.VISCOSITY_TOO_LOW,
        relief_causes.RELIEF_DEBRIS,
        bearings_causes.BEARING_WRONG_SIZE,
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
    ),
    cautions=FIRST_RUN,
    also=("hot idle pressure", "low at idle", "minimum oil pressure"),
)
OIL_HEAT_WATCHED = Task(
    id="oil_heat_watched",
    phase=Phase.FIRST_START,
    says="oil temperature on the first run",
    how=("probe in sump or filter head; reduce the load before it gets there, then stop",),
    source=COMMON_PRACTICE,
    measures=oil_quantities.OIL_TEMPERATURE,
    bands=(
        Band(
            low=None,
            high=394.15,
            source=sources.ARMY_TM_272_TABLE,
            says="stop at 121 °C (250 °F); printed as a stall-test limit of a truck",
        ),
        Band(
            low=353.15, high=378.15, source=COMMON_PRACTICE, says="normal when warm: 80 to 105 °C"
        ),
    ),
    limits=(None, oil_quantities.MOST_OIL_TEMPERATURE),
    remedy="let it cool; check level, cooler, too tight a clearance",
    guards=(oil_causes_condition.OIL_OVERHEATED, bearings_causes.BEARING_WRONG_SIZE),
    cautions=FIRST_RUN,
    also=("oil temperature", "oil too hot"),
)
NO_KNOCK_HEARD = Task(
    id="no_knock_heard",
    phase=Phase.FIRST_START,
    says="no knock, rap or growl",
    how=(
        "listen from the first second; hands and hair clear",
        "any knock, especially with a low or wandering gauge: stop at once",
    ),
    source=sources.CARLEY_1997,
    remedy="do not start again until you have inspected the bearings",
    guards=(bearings_causes.BEARING_WIPED, bearings_causes.BEARING_WRONG_SIZE),
    cautions=FIRST_RUN,
    also=("rod knock", "noise on first start"),
)
NEEDLE_STEADY = Task(
    id="needle_steady",
    phase=Phase.FIRST_START,
    says="needle steady: no flicker, no sudden drop, no foam on the stick",
    how=(
        "a drop of half or more at steady speed, or to nothing: stop at once",
        "flicker that grows with speed: stop, it is drawing air",
        "after the stop: look at the stick for foam",
    ),
    source=sources.TRUCK_DRIVER_MANUAL,
    remedy="suction joint, pickup gap and oil level before anything else",
    guards=(
        suction_causes.SUCTION_JOINT_AIR_LEAK,
        suction_causes_sump.PICKUP_CLEARANCE_TIGHT,
        suction_causes_sump.WINDAGE_AERATION,
        pump_causes_drive.PUMP_DRIVE_BROKEN,
    ),
    cautions=FIRST_RUN,
    also=("gauge flickers", "sudden drop", "foam"),
)
NO_LEAK_RUNNING = Task(
    id="no_leak_running",
    phase=Phase.FIRST_START,
    says="no leak while it runs: no drops that form and fall",
    how=(
        "second person with a light: filter, lines, plugs, seals, turbo, under the bellhousing",
        "oil that drips and falls (class III), or any oil on the exhaust: stop",
    ),
    source=sources.ARMY_TM_304_LEAKAGE,
    remedy="stop, watch for fire, repair it, wipe it, start again",
    guards=(
        leaks_causes.EXTERNAL_LEAK_MAJOR,
        leaks_causes.FILTER_SEAL_LEAK,
        leaks_causes.OIL_LINE_LEAK,
        leaks_causes.SHAFT_SEAL_LEAK,
    ),
    cautions=FIRST_RUN,
    also=("oil leak on start", "class III leak"),
)
WATER_AND_CHARGE_WATCHED = Task(
    id="water_and_charge_watched",
    phase=Phase.FIRST_START,
    says="water temperature and charge lamp normal",
    how=("thermostat opens, top hose warms, fan cuts in; lamp out; never open a hot cap",),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    holds_if_failed=True,
    remedy="stop, bleed the cooling system cold",
    guards=(oil_causes_condition.OIL_OVERHEATED,),
    only_with=(features.WATER_COOLED,),
    cautions=FIRST_RUN,
    also=("overheating", "coolant", "charge light"),
)
TURBO_IDLED = Task(
    id="turbo_idled",
    phase=Phase.FIRST_START,
    says="if turbocharged: idling time after the start and again before the stop",
    how=("no load and no revs meanwhile; at both ends of every run",),
    source=sources.TURBO_MAKER_STARVATION,
    dimension="time",
    bands=(
        Band(
            low=30.0,
            high=None,
            source=sources.TURBO_MAKER_STARVATION,
            says="30 s to 3 min: at least the 30 s",
        ),
        Band(low=3 * MINUTE, high=None, source=COMMON_PRACTICE, says="after hard work the 3 min"),
    ),
    spread=STOPWATCH,
    remedy="idle it for the rest",
    guards=(topend_causes_feeds.TURBO_FEED_RESTRICTED,),
    only_with=(features.TURBOCHARGED,),
    cautions=FIRST_RUN,
    also=("turbo cool down", "idle the turbo"),
)
