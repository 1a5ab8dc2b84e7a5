"""What proves a repair of an engine that has a lamp only, and of the wire to a lamp or a sender."""

from knowledge import sources
from knowledge.figures import STOPWATCH
from knowledge.reassembly import first_start, later, run_in
from knowledge.reassembly.first_start import FIRST_RUN
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.work import Band, Caution, Hold, Phase, Task

_INSTRUMENT = (
    instrument_causes.SENDER_FAULTY,
    instrument_causes.SENDER_MISMATCH,
    instrument_causes.SENDER_NOT_FITTED,
    instrument_causes.WIRING_GROUND_FAULT,
)
WIRE_LAID_CLEAR = Task(
    id="wire_laid_clear",
    phase=Phase.FIRST_START,
    says="wire to the sender or switch mended, sleeved, clipped clear of edges, heat and moving parts",
    how=(
        "no bare copper, no twisted joint under tape; terminals clean and tight",
        "follow it from plug to panel: nothing may rub it when the engine rocks",
    ),
    source=COMMON_PRACTICE,
    remedy="lay it another way and sleeve it; a wire that rubbed once rubs again",
    guards=(instrument_causes.WIRING_GROUND_FAULT, instrument_causes.SENDER_NOT_FITTED),
    cautions=(Caution.BATTERY, *FIRST_RUN),
    also=("sleeve the wire", "clip the wire", "wire rubbed through"),
)
LAMP_LIT_WITH_KEY = Task(
    id="lamp_lit_with_key",
    phase=Phase.FIRST_START,
    says="oil lamp lit with the key on and the engine stopped",
    how=(
        "a lamp that stays dark now cannot warn: bulb, fuse, wire, switch",
        "a lamp that lights with its wire pulled off the switch has an earthed (grounded) wire",
    ),
    source=COMMON_PRACTICE,
    remedy="do not run it on a lamp that does not light: mend the lamp first",
    guards=_INSTRUMENT,
    cautions=FIRST_RUN,
    also=("lamp works", "warning light comes on with ignition"),
)
LAMP_OUT_TIMED = Task(
    id="lamp_out_timed",
    phase=Phase.FIRST_START,
    says="time from first fire until the oil lamp goes out",
    how=(
        "key on first: it must be lit, else it proves nothing",
        "still lit after 5 to 10 s: shut down; do not rev it to help",
    ),
    source=sources.OIL_CHANGE_LAMP_TEXT,
    dimension="time",
    like=("2 s", "4 s"),
    bands=(
        Band(
            low=None,
            high=10.0,
            source=sources.OIL_CHANGE_LAMP_TEXT,
            says="out in a few seconds: shut down at 5 to 10 s",
        ),
        Band(low=None, high=5.0, source=JUDGEMENT, says="oilways full: stop at 5 s"),
    ),
    spread=STOPWATCH,
    remedy="shut down; check the level, then find out why the oil comes late",
    why="a lamp goes out at a few psi: it proves that oil comes, not that there is enough",
    guards=(*_INSTRUMENT, delivery_causes.FILTER_DRAINBACK),
    cautions=FIRST_RUN,
    also=("light goes out", "how long the oil light stays on", "lamp out after the start"),
)
LAMP_STAYS_OUT_HOT = Task(
    id="lamp_stays_out_hot",
    phase=Phase.FIRST_START,
    says="oil lamp out at hot idle and up to 2000 rpm, no flicker",
    how=(
        "half an hour of driving or work, then idle for some minutes, then slowly up to 2000 rpm",
        "it flickers or lights: stop the engine, and read the pressure with a test gauge",
    ),
    source=COMMON_PRACTICE,
    remedy="stop; read the pressure with a test gauge before it runs again",
    why="a lamp says only that there are a few psi; a test gauge says how many",
    guards=_INSTRUMENT,
    cautions=FIRST_RUN,
    also=("lamp stays out", "light stays off", "no flicker of the oil light"),
)
STEADY_WHEN_WIRE_MOVES = Task(
    id="steady_when_wire_moves",
    phase=Phase.FIRST_START,
    says="engine running: wire and plug moved by hand, lamp or needle stays as it is",
    how=("hands clear of belt and fan; move it at the plug, at each clip, at the bulkhead",),
    source=COMMON_PRACTICE,
    remedy="the bad place is where it moves: mend it there",
    guards=(instrument_causes.WIRING_GROUND_FAULT,),
    cautions=FIRST_RUN,
    also=("wiggle test", "moved the wire"),
)
FLAP_IN_NEW_FILTER = Task(
    id="flap_in_new_filter",
    phase=Phase.PRIMING,
    says="new filter has an anti-drain-back valve: rubber flap behind its outer ring of holes",
    how=(
        "look through the outer holes: a soft rubber lip lies behind them, whole and in place",
        "number on the list for this engine; a look-alike may have no flap",
    ),
    source=sources.FILTER_MAKER_VALVES,
    remedy="fit the listed filter",
    guards=(delivery_causes.FILTER_DRAINBACK,),
    also=("rubber flap", "filter has a flap", "anti drain back flap"),
)
STARTED_AFTER_A_NIGHT = Task(
    id="started_after_a_night",
    phase=Phase.RUN_IN,
    says="started after a night: pressure or lamp as quick as after a short stop, no rattle",
    how=(
        "eight hours or more after it last ran; note the seconds",
        "late again: take the filter off after the next night and see whether it is empty",
    ),
    source=sources.FILTER_MAKER_VALVES,
    remedy="it still drains back: another filter, or the valve in the filter head",
    why="only a start after standing shows that the oil stayed where it was",
    guards=(delivery_causes.FILTER_DRAINBACK,),
    cautions=(*FIRST_RUN, Caution.USED_OIL, Caution.WASTE),
    also=("cold start after a night", "overnight start", "no rattle in the morning"),
)
_AFTER = {
    later.HOT_IDLE_AFTER_1_H: "after the first hour",
    later.HOT_IDLE_AFTER_10_H: "after 10 hours",
    later.HOT_IDLE_AFTER_50_H: "after 50 hours",
}
LAMP_OUT_AFTER_1_H, LAMP_OUT_AFTER_10_H, LAMP_OUT_AFTER_50_H = (
    Task(
        id=task.id.replace("hot_idle", "lamp_out"),
        phase=Phase.LATER,
        due=task.due,
        says=f"oil lamp out at hot idle, and lit with the key on, {when}",
        how=("oil hot, idle for some minutes; it flickers: stop, read it with a test gauge",),
        source=COMMON_PRACTICE,
        hold=Hold.NOTE,
        remedy=task.remedy,
        guards=task.guards,
        cautions=task.cautions,
        also=(f"oil light {when}",),
    )
    for task, when in _AFTER.items()
)

#: of engines with a lamp only: what is done in the place of what a gauge would show
INSTEAD = {
    first_start.FIRST_PRESSURE_TIMED: LAMP_OUT_TIMED,
    first_start.PRESSURE_AT_HOT_IDLE: LAMP_STAYS_OUT_HOT,
    later.HOT_IDLE_AFTER_1_H: LAMP_OUT_AFTER_1_H,
    later.HOT_IDLE_AFTER_10_H: LAMP_OUT_AFTER_10_H,
    later.HOT_IDLE_AFTER_50_H: LAMP_OUT_AFTER_50_H,
}
#: of engines with a lamp only; what proves the lamp itself, however its pressure is read
OF_A_LAMP = frozenset({*INSTEAD.values(), LAMP_LIT_WITH_KEY})
#: what proves one repair, and is no work of any other
OF_ITS_CAUSE = frozenset(
    {
        *(WIRE_LAID_CLEAR, STEADY_WHEN_WIRE_MOVES),
        *(FLAP_IN_NEW_FILTER, STARTED_AFTER_A_NIGHT),
    }
)
#: of the first start, and done before the engine fires
BEFORE_IT_FIRES = frozenset({first_start.READY_TO_START, WIRE_LAID_CLEAR, LAMP_LIT_WITH_KEY})
#: of engines with a gauge only
OF_A_GAUGE = frozenset({run_in.PANEL_GAUGE_AGREES})
