"""What is done in the first hours of running, until the job is signed off."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.engines import features
from knowledge.figures import HOUR, MINUTE, TRUSTED_GAUGE
from knowledge.reassembly.places import INSIDE
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.instrument import quantities as instrument_quantities
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.units import PSI
from knowledge.work import Band, Caution, Hold, Phase, Task

LEAST_RUN = 20 * MINUTE  #: before it, oil has flushed nothing yet (judgement)
STOPPED_HOT = (Caution.HOT, Caution.USED_OIL)
LEVEL_AND_LEAKS_AFTER_FIRST_STOP = Task(
    id="level_and_leaks_after_first_stop",
    phase=Phase.RUN_IN,
    says="oil level and leaks after the first stop",
    how=(
        "wait ten minutes, read the stick, top up, write down how much",
        "light round every joint; look for oil in water and water in oil",
    ),
    source=sources.BREAKING_IN_TIP_184,
    remedy="repair the leak; find where the oil went",
    guards=(
        oil_causes.OIL_LEVEL_LOW,
        leaks_causes.EXTERNAL_LEAK_MAJOR,
        leaks_causes.FILTER_SEAL_LEAK,
    ),
    cautions=STOPPED_HOT,
    also=("check oil after first run", "first shutdown"),
)
RETORQUED_AFTER_HEAT = Task(
    id="retorqued_after_heat",
    phase=Phase.RUN_IN,
    opened=INSIDE,
    says="bolts retightened after the first heat, if the maker or the gasket sheet says so",
    how=(
        "only what is stated, hot or cold as stated; sump bolts once more from the middle",
        "leave stretch bolts and bolts with locker alone",
        "tick each one off the list",
    ),
    source=sources.BREAKING_IN_TIP_184,
    remedy="a bolt that turns far: inspect gasket and thread",
    guards=(assembly_causes.FASTENER_LOOSE_INSIDE, leaks_causes.EXTERNAL_LEAK_MAJOR),
    cautions=STOPPED_HOT,
    also=("re-torque", "retorque the head", "retighten"),
)
HEAT_CYCLES_DONE = Task(
    id="heat_cycles_done",
    phase=Phase.RUN_IN,
    opened=INSIDE,
    says="heat cycles before load: run warm at varying speed, cooled right down",
    how=("no long idling, no steady speed; watch the gauge through each one",),
    source=sources.BREAKING_IN_TIP_184,
    hold=Hold.NOTE,
    dimension="count",
    bands=(Band(low=2, high=None, source=sources.BREAKING_IN_TIP_184, says="two to three"),),
    remedy="do the rest before you work it hard",
    guards=(bearings_causes.BEARING_WIPED,),
    cautions=RUNNING,
    also=("heat cycle", "warm up and cool down"),
)
FIRST_OIL_CHANGE_DONE = Task(
    id="first_oil_change_done",
    phase=Phase.RUN_IN,
    says="petrol engine: running time at the first change of oil and filter",
    how=(
        "warm, drained through a cloth; sample first; keep the filter for cutting",
        "run-in oil out, the manual's oil in",
    ),
    source=sources.BREAK_IN_OIL_NOTE,
    dimension="time",
    bands=(
        Band(
            low=LEAST_RUN,
            high=1.5 * HOUR,
            source=sources.BREAK_IN_OIL_NOTE,
            says="after about the first hour; 20 min to an hour and a half accepted (judgement)",
        ),
        Band(
            low=None,
            high=20 * HOUR,
            source=sources.REBUILDER_OIL_CHANGES,
            says="a rebuilder: twice in the first 1000 miles; 20 h is judgement",
        ),
    ),
    spread=5 * MINUTE,
    remedy="change it now",
    guards=(
        assembly_causes.DIRT_IN_ASSEMBLY,
        oil_causes_condition.OIL_DEGRADED,
        delivery_causes.FILTER_BLOCKED,
    ),
    not_with=(features.DIESEL,),
    cautions=(*STOPPED_HOT, Caution.WASTE),
    also=(
        "first oil change",
        "break-in oil change",
        "oil and filter change after running in",
        "when to change the oil first",
    ),
)
FIRST_DIESEL_OIL_CHANGE_DONE = Task(
    id="first_diesel_oil_change_done",
    phase=Phase.RUN_IN,
    says="diesel: running hours at the first change of oil and filter",
    how=("warm, drained through a cloth; sample first; keep the filter for cutting",),
    source=COMMON_PRACTICE,
    dimension="time",
    bands=(
        Band(
            low=LEAST_RUN,
            high=50 * HOUR,
            source=COMMON_PRACTICE,
            says="within 20 to 50 h; sooner does no harm",
        ),
        Band(
            low=None,
            high=500 * HOUR,
            source=sources.BREAKING_IN_TIP_184,
            says="one rebuilder: run-in oil for the first 200 to 500 h",
        ),
    ),
    spread=HOUR,
    remedy="change it now",
    guards=(
        assembly_causes.DIRT_IN_ASSEMBLY,
        oil_causes_condition.OIL_DEGRADED,
        delivery_causes.FILTER_BLOCKED,
    ),
    only_with=(features.DIESEL,),
    cautions=(*STOPPED_HOT, Caution.WASTE),
    also=("first oil change diesel", "run-in hours"),
)
FIRST_FILTER_CUT_OPEN = Task(
    id="first_filter_cut_open",
    phase=Phase.RUN_IN,
    says="first filter cut open and spread",
    how=(
        "filter cutter, no hacksaw; drain it for some hours first",
        "pleats out, spread on white, magnet under it; photograph with a scale",
        "bag and label pleats with date and hours; keep them until sign-off",
    ),
    source=sources.CUT_FILTER_ANALYSIS_2026,
    remedy="cut it now; once thrown away, it cannot tell you anything",
    guards=(bearings_causes.BEARING_WIPED, assembly_causes.PART_SHEDDING_INSIDE),
    cautions=(Caution.SHARP, Caution.USED_OIL, Caution.WASTE),
    also=("cut the filter", "filter autopsy", "open the oil filter"),
)
FILTER_FIND_ACCEPTED = Task(
    id="filter_find_accepted",
    phase=Phase.RUN_IN,
    says="first filter accepted: grey dust and a few hairs, no flakes, no copper",
    how=(
        "fine grey dust that clings to a magnet is normal run-in wear",
        "flakes that shine, copper colour, chips with an edge: no further running",
        "shreds of sealer or cloth: inspect the pickup screen as well",
    ),
    source=sources.READING_THE_FILTER,
    remedy="do not run it until you have inspected the bearings",
    guards=(
        bearings_causes.BEARING_WIPED,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.SEALANT_DEBRIS,
        assembly_causes.PART_SHEDDING_INSIDE,
    ),
    cautions=(Caution.SHARP, Caution.USED_OIL),
    also=("metal in the filter", "glitter", "copper in the filter"),
)
BASELINE_WRITTEN_DOWN = Task(
    id="baseline_written_down",
    phase=Phase.RUN_IN,
    says=(
        "baseline written down: hot pressure at idle, 1500, 2000 and 3000 rpm, oil temperature, "
        "grade"
    ),
    how=(
        "direct gauge, oil hot and steady, speed measured; same port as the panel's",
        "write down gauge, port, oil and date with each reading; the panel's reading beside it",
        "tractors and plant: at their working speeds",
    ),
    source=sources.NAVY_14075_INSTRUMENTS,
    remedy="take it before the engine leaves",
    why="only the engine's own figures show a later fall",
    guards=(instrument_causes.GAUGE_FAULTY,),
    cautions=RUNNING,
    also=("baseline readings", "pressure log", "reference readings"),
)
PANEL_GAUGE_AGREES = Task(
    id="panel_gauge_agrees",
    phase=Phase.RUN_IN,
    says="difference between panel gauge and direct gauge, at mid-scale",
    how=("read both at once at a steady speed; subtract the smaller from the larger",),
    source=sources.GAUGE_MAKER_SENDERS,
    hold=Hold.NOTE,
    dimension="pressure",
    value="a difference",
    like=("3 psi", "0.2 bar"),
    bands=(
        Band(
            low=None,
            high=5 * PSI,
            source=sources.GAUGE_MAKER_SENDERS,
            says="electric gauge and sender",
        ),
    ),
    limits=(None, instrument_quantities.MOST_PANEL_ERROR),
    spread=TRUSTED_GAUGE,
    remedy="check sender, earth (ground) and gauge; otherwise write the difference on the panel",
    guards=(
        instrument_causes.GAUGE_FAULTY,
        instrument_causes.SENDER_FAULTY,
        instrument_causes.SENDER_MISMATCH,
        instrument_causes.WIRING_GROUND_FAULT,
    ),
    cautions=RUNNING,
    also=("compare gauges", "panel gauge reads low"),
)
OIL_SAMPLE_SENT = Task(
    id="oil_sample_sent",
    phase=Phase.RUN_IN,
    opened=INSIDE,
    says="oil sample drawn at the first or second change",
    how=(
        "warm, mid-stream, before you top up anything; clean bottle",
        "label: hours on engine and oil, oil, fuel",
        "metals are high in run-in and fall in later samples: compare, do not judge a single one",
    ),
    source=sources.USED_OIL_ELEMENTS,
    hold=Hold.NOTE,
    remedy="draw one at the next change",
    guards=(
        bearings_causes.BEARING_WIPED,
        assembly_causes.DIRT_IN_ASSEMBLY,
        oil_causes_contamination.FUEL_DILUTION,
    ),
    cautions=STOPPED_HOT,
    also=("oil analysis", "used oil sample"),
)
DRY_OVERNIGHT = Task(
    id="dry_overnight",
    phase=Phase.RUN_IN,
    says="dry when hot, and clean paper under it after 24 h: seepage at most",
    how=(
        "wipe down hot, paper under the whole engine, look after a day",
        "a film that wets but forms no drop (class I) may stay; drops may not",
    ),
    source=sources.ARMY_TM_304_LEAKAGE,
    remedy="repair it before the engine leaves",
    guards=(leaks_causes.EXTERNAL_LEAK_MAJOR, leaks_causes.FILTER_SEAL_LEAK),
    cautions=(Caution.HOT, Caution.WASTE),
    also=("drip test", "leak check hot", "overnight drip"),
)
FASTENER_LIST_CLOSED = Task(
    id="fastener_list_closed",
    phase=Phase.RUN_IN,
    says="list of bolts to recheck complete: every line ticked, dated, signed",
    how=("every bolt with torque, locker or paint is on it",),
    source=COMMON_PRACTICE,
    remedy="check the open ones",
    guards=(assembly_causes.FASTENER_LOOSE_INSIDE,),
    also=("torque sheet", "bolt list"),
)
OLD_PARTS_KEPT = Task(
    id="old_parts_kept",
    phase=Phase.RUN_IN,
    says="old parts, filter and debris bagged and kept until sign-off",
    how=("label by position; return no core before the engine has been accepted",),
    source=COMMON_PRACTICE,
    remedy="get back what you can",
    guards=(),
    also=("keep old parts", "core return"),
)
AS_BUILT_WRITTEN_DOWN = Task(
    id="as_built_written_down",
    phase=Phase.RUN_IN,
    opened=INSIDE,
    says="as-built record: clearances, pickup gap, shims, plug map, torques, photographs",
    how=("one copy with the engine, one kept; note what was overridden, by whom and why",),
    source=COMMON_PRACTICE,
    remedy="fill in what is missing",
    also=("build sheet", "as-built file", "build record"),
)
