"""What is done in the first hours of running, until the job is signed off."""

from knowledge.causes.assembly import (
    DIRT_IN_ASSEMBLY,
    FASTENER_LOOSE_INSIDE,
    PART_SHEDDING_INSIDE,
    SEALANT_DEBRIS,
)
from knowledge.causes.bearings import BEARING_WIPED
from knowledge.causes.delivery import FILTER_BLOCKED
from knowledge.causes.instrument import GAUGE_FAULTY, SENDER_FAULTY, SENDER_MISMATCH
from knowledge.causes.leaks import EXTERNAL_LEAK_MAJOR, FILTER_SEAL_LEAK
from knowledge.causes.oil import FUEL_DILUTION, OIL_DEGRADED, OIL_LEVEL_LOW
from knowledge.cautions import RUNNING
from knowledge.engines.features import DIESEL
from knowledge.reference.limits import PANEL_ERROR
from knowledge.sources import BIM, CTF, CUT, FOL, NE2, SYN, TDR, TEL, TMK
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.tasks.figures import HOUR, MINUTE, TRUSTED_GAUGE
from knowledge.units import PSI
from knowledge.vocabulary import Band, Caution, Hold, Phase, Task

STOPPED_HOT = (Caution.HOT, Caution.USED_OIL)

LEVEL_AND_LEAKS_AFTER_FIRST_STOP = Task(
    "level_and_leaks_after_first_stop",
    Phase.RUN_IN,
    "oil level and leaks after the first stop",
    (
        "wait ten minutes, read the stick, top up, write down how much",
        "lamp round every joint; look for oil in water and water in oil",
    ),
    FOL,
    remedy="close the leak; find where the oil went",
    guards=(OIL_LEVEL_LOW, EXTERNAL_LEAK_MAJOR, FILTER_SEAL_LEAK),
    cautions=STOPPED_HOT,
    also=("check oil after first run", "first shutdown"),
)
RETORQUED_AFTER_HEAT = Task(
    "retorqued_after_heat",
    Phase.RUN_IN,
    "bolts tightened again after the first heat, where the maker or the gasket sheet says so",
    (
        "only what is stated, hot or cold as it is stated; sump bolts once more from the middle",
        "stretch bolts and bolts with locker are left alone",
        "tick each one off the list",
    ),
    FOL,
    remedy="a bolt that turns far: look at gasket and thread",
    guards=(FASTENER_LOOSE_INSIDE, EXTERNAL_LEAK_MAJOR),
    cautions=STOPPED_HOT,
    also=("re-torque", "retorque the head", "retighten"),
)
HEAT_CYCLES_DONE = Task(
    "heat_cycles_done",
    Phase.RUN_IN,
    "heat cycles before load: run warm at changing speed, cooled right down",
    ("no long idling, no steady speed; watch the gauge through each one",),
    FOL,
    Hold.NOTE,
    "count",
    (Band(2, None, FOL, "two to three"),),
    remedy="do the rest before it is worked hard",
    guards=(BEARING_WIPED,),
    cautions=RUNNING,
    also=("heat cycle", "warm up and cool down"),
)
FIRST_OIL_CHANGE_DONE = Task(
    "first_oil_change_done",
    Phase.RUN_IN,
    "petrol engine: running time at the first change of oil and filter",
    (
        "warm, drained through a cloth; sample first; keep the filter for cutting",
        "run-in oil out, the oil of the manual in",
    ),
    BIM,
    dimension="time",
    bands=(
        Band(
            None,
            1.5 * HOUR,
            BIM,
            "after about the first hour; up to an hour and a half taken as that (judgement)",
        ),
        Band(None, 20 * HOUR, SYN, "a rebuilder: twice in the first 1000 miles; 20 h is judgement"),
    ),
    spread=5 * MINUTE,
    remedy="change it now",
    guards=(DIRT_IN_ASSEMBLY, OIL_DEGRADED, FILTER_BLOCKED),
    not_with=(DIESEL,),
    cautions=(*STOPPED_HOT, Caution.WASTE),
    also=(
        "first oil change",
        "break-in oil change",
        "oil and filter change after running in",
        "when to change the oil first",
    ),
)
FIRST_DIESEL_OIL_CHANGE_DONE = Task(
    "first_diesel_oil_change_done",
    Phase.RUN_IN,
    "diesel: running hours at the first change of oil and filter",
    ("warm, drained through a cloth; sample first; keep the filter for cutting",),
    CP,
    dimension="time",
    bands=(
        Band(None, 50 * HOUR, CP, "within 20 to 50 h"),
        Band(None, 500 * HOUR, FOL, "one rebuilder: run-in oil for the first 200 to 500 h"),
    ),
    spread=HOUR,
    remedy="change it now",
    guards=(DIRT_IN_ASSEMBLY, OIL_DEGRADED, FILTER_BLOCKED),
    only_with=(DIESEL,),
    cautions=(*STOPPED_HOT, Caution.WASTE),
    also=("first oil change diesel", "run-in hours"),
)
FIRST_FILTER_CUT_OPEN = Task(
    "first_filter_cut_open",
    Phase.RUN_IN,
    "first filter cut open and spread",
    (
        "filter cutter, no hacksaw; drain it for some hours first",
        "pleats out, spread on white, magnet under it; photograph with a scale",
        "bag and label pleats with date and hours; keep them until sign-off",
    ),
    CUT,
    remedy="cut it now; a filter thrown away cannot be asked again",
    guards=(BEARING_WIPED, PART_SHEDDING_INSIDE),
    cautions=(Caution.SHARP, Caution.USED_OIL, Caution.WASTE),
    also=("cut the filter", "filter autopsy", "open the oil filter"),
)
FILTER_FIND_ACCEPTED = Task(
    "filter_find_accepted",
    Phase.RUN_IN,
    "what the first filter held accepted: grey dust and a few hairs, no flakes, no copper",
    (
        "fine grey dust that clings to a magnet is run-in",
        "flakes that shine, copper colour, chips with an edge: no further running",
        "shreds of sealer or cloth: look at the pickup screen as well",
    ),
    CTF,
    remedy="do not run it until the bearings have been looked at",
    guards=(BEARING_WIPED, DIRT_IN_ASSEMBLY, SEALANT_DEBRIS, PART_SHEDDING_INSIDE),
    cautions=(Caution.SHARP, Caution.USED_OIL),
    also=("metal in the filter", "glitter", "copper in the filter"),
)
BASELINE_WRITTEN_DOWN = Task(
    "baseline_written_down",
    Phase.RUN_IN,
    "baseline written down: hot pressure at idle, 1500, 2000 and 3000 rpm, oil heat, grade",
    (
        "direct gauge, oil hot and steady, speed counted; same port as the panel's",
        "write down gauge, port, oil and date with each reading; the panel's reading beside it",
        "tractors and plant: the speeds they work at",
    ),
    NE2,
    remedy="take it before the engine leaves",
    why="a later fall is only seen against the engine's own figures",
    guards=(GAUGE_FAULTY,),
    cautions=RUNNING,
    also=("baseline readings", "pressure log", "reference readings"),
)
PANEL_GAUGE_AGREES = Task(
    "panel_gauge_agrees",
    Phase.RUN_IN,
    "difference between panel gauge and direct gauge, at mid-scale",
    ("read both at once at a steady speed; the larger less the smaller",),
    TEL,
    Hold.NOTE,
    "pressure",
    (Band(None, 5 * PSI, TEL, "electric gauge and sender"),),
    (None, PANEL_ERROR),
    TRUSTED_GAUGE,
    remedy="sender, earth and gauge; else write the difference on the panel",
    guards=(GAUGE_FAULTY, SENDER_FAULTY, SENDER_MISMATCH),
    cautions=RUNNING,
    also=("compare gauges", "panel gauge reads low"),
)
OIL_SAMPLE_SENT = Task(
    "oil_sample_sent",
    Phase.RUN_IN,
    "oil sample drawn at the first or second change",
    (
        "warm, mid-stream, before anything is topped up; clean bottle",
        "label: hours on engine and oil, oil, fuel",
        "metals are high in run-in and fall with the next samples: compare, do not judge one",
    ),
    TDR,
    Hold.NOTE,
    remedy="draw one at the next change",
    guards=(BEARING_WIPED, DIRT_IN_ASSEMBLY, FUEL_DILUTION),
    cautions=STOPPED_HOT,
    also=("oil analysis", "used oil sample"),
)
DRY_OVERNIGHT = Task(
    "dry_overnight",
    Phase.RUN_IN,
    "dry when hot, and clean paper under it after 24 h: seepage at most",
    (
        "wipe down hot, paper under the whole engine, look after a day",
        "a film that wets but forms no drop (class I) may stay; drops may not",
    ),
    TMK,
    remedy="close it before the engine leaves",
    guards=(EXTERNAL_LEAK_MAJOR, FILTER_SEAL_LEAK),
    cautions=(Caution.HOT, Caution.WASTE),
    also=("drip test", "leak check hot", "overnight drip"),
)
FASTENER_LIST_CLOSED = Task(
    "fastener_list_closed",
    Phase.RUN_IN,
    "list of bolts to be checked again closed: every line ticked, dated, signed",
    ("every bolt that got torque, locker or paint stands on it",),
    CP,
    remedy="check the open ones",
    guards=(FASTENER_LOOSE_INSIDE,),
    also=("torque sheet", "bolt list"),
)
OLD_PARTS_KEPT = Task(
    "old_parts_kept",
    Phase.RUN_IN,
    "old parts, filter and debris bagged and kept until sign-off",
    ("label by place; no core goes back before the engine has been accepted",),
    CP,
    remedy="fetch back what can be fetched",
    guards=(),
    also=("keep old parts", "core return"),
)
AS_BUILT_WRITTEN_DOWN = Task(
    "as_built_written_down",
    Phase.RUN_IN,
    "as-built record: clearances, pickup gap, shims, plug map, torques, photographs",
    ("one copy with the engine, one kept; what was overridden, by whom and why",),
    CP,
    remedy="fill in what is open",
    also=("build sheet", "as-built file", "build record"),
)
