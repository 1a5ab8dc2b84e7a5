"""Patterns of pressure: what the gauge or lamp shows, and how it began."""

from knowledge import sources
from knowledge.model import COMMON, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from

GAUGE_READS_LOW = Finding(
    id="gauge_reads_low",
    station=Station.INSTRUMENT,
    says="the gauge reads low",
    asks="Does the gauge read lower than it should?",
    source=sources.TEN_PSI_RULE_2009,
    denies="the gauge does not read low",
    stage=Stage.KNOWN,
    normal="about 10 psi for each 1000 rpm is usual",
    background=OCCASIONAL,
    also=(
        "low oil pressure",
        "oil pressure down",
        "reading low",
        "pressure is low",
    ),
)
GAUGE_READS_ZERO = Finding(
    id="gauge_reads_zero",
    station=Station.INSTRUMENT,
    says="the gauge reads zero",
    asks="Does the gauge read zero, or next to zero?",
    source=sources.OIL_CHANGE_LAMP_TEXT,
    denies="the gauge moves",
    stage=Stage.KNOWN,
    normal="off the stop within seconds of starting",
    background=RARE,
    also=(
        "no oil pressure",
        "gauge dead",
        "needle on the peg",
        "zero pressure",
    ),
)
GAUGE_READS_HIGH = Finding(
    id="gauge_reads_high",
    station=Station.INSTRUMENT,
    says="the gauge reads too high",
    asks="Does the gauge read higher than it should?",
    source=idea_from(sources.PUMP_MAKER_PRESSURE_FLOW),
    denies="the gauge is not too high",
    stage=Stage.KNOWN,
    normal="it stops at the relief setting, usually 40 to 60 psi",
    background=RARE,
    also=(
        "pressure too high",
        "gauge pegged high",
        "over pressure",
    ),
)
NEEDLE_FLICKERS = Finding(
    id="needle_flickers",
    station=Station.INSTRUMENT,
    says="the needle wavers or the lamp flickers",
    asks="Does the needle waver, or the lamp flicker, at any time?",
    source=COMMON_PRACTICE,
    denies="needle and lamp are steady",
    stage=Stage.KNOWN,
    normal="steady within 2 or 3 psi at fixed speed and temperature",
    background=OCCASIONAL,
    also=(
        "needle dances",
        "gauge flickers",
        "bouncing needle",
        "wandering pressure",
        "fluctuating oil pressure",
        "pressure jumps up and down",
        "surging pressure",
    ),
)
LAMP_COMES_ON = Finding(
    id="lamp_comes_on",
    station=Station.INSTRUMENT,
    says="the oil warning lamp or alarm comes on",
    asks="Oil lamp or alarm on while running?",
    source=sources.SMALL_ENGINE_MANUAL,
    denies="lamp and alarm stay off",
    stage=Stage.KNOWN,
    normal="out in a few seconds; switches open at about 4.5 to 7 psi (0.3 to 0.5 bar) on small engines",
    background=OCCASIONAL,
    also=(
        "oil light on",
        "warning light",
        "low pressure alarm",
        "buzzer",
        "red light",
    ),
)
SECOND_INSTRUMENT_DISAGREES = Finding(
    id="second_instrument_disagrees",
    station=Station.INSTRUMENT,
    says="lamp and gauge, or two instruments, disagree",
    asks="Lamp and gauge, or two instruments: do they disagree?",
    source=sources.NAVY_14075_INSTRUMENTS,
    denies="the instruments agree",
    stage=Stage.KNOWN,
    normal="they agree",
    background=VERY_RARE,
    also=(
        "lamp off but gauge zero",
        "light not on",
        "one gauge good one bad",
    ),
)
OTHER_GAUGES_ALSO_WRONG = Finding(
    id="other_gauges_also_wrong",
    station=Station.INSTRUMENT,
    says="other electrical gauges or loads failed at the same time",
    asks="Other electrical gauges or accessories failed, dimmed or jumped at the same time?",
    source=COMMON_PRACTICE,
    denies="the other gauges are right",
    stage=Stage.KNOWN,
    normal="they are right",
    background=VERY_RARE,
    also=(
        "blown fuse",
        "electrical failure",
        "gauges dimming",
        "all gauges dead",
    ),
)
NEEDLE_STEPS_AT_ONCE = Finding(
    id="needle_steps_at_once",
    station=Station.INSTRUMENT,
    says="the needle jumps from value to value at once",
    asks="Does the needle jump instantly between values, with no lag?",
    source=COMMON_PRACTICE,
    denies="the needle never jumps at once",
    stage=Stage.KNOWN,
    normal="real oil pressure cannot step",
    background=RARE,
    also=(
        "needle jumps",
        "gauge goes crazy",
        "all over the place",
    ),
)
NEEDLE_FOLLOWS_LOADS = Finding(
    id="needle_follows_loads",
    station=Station.INSTRUMENT,
    says="the needle follows bumps, lamps, wipers or other switches",
    asks="Does the needle move with bumps, or when lamps or wipers are switched?",
    source=COMMON_PRACTICE,
    denies="the needle ignores switches and bumps",
    stage=Stage.KNOWN,
    normal="no change",
    background=RARE,
    also=(
        "needle moves with indicators",
        "bumps make gauge jump",
    ),
)
ENGINE_RUNS_NORMALLY = Finding(
    id="engine_runs_normally",
    station=Station.INSTRUMENT,
    says="the engine sounds and runs as usual",
    asks="Apart from the reading: does it sound and run as usual?",
    source=COMMON_PRACTICE,
    denies="the engine does not sound or run right",
    stage=Stage.KNOWN,
    normal="as usual",
    background=COMMON,
    also=(
        "runs fine",
        "sounds normal",
        "engine smooth",
        "no noise",
    ),
)
FELL_SUDDENLY = Finding(
    id="fell_suddenly",
    station=Station.INSTRUMENT,
    says="the pressure fell suddenly while running",
    asks="Did the pressure fall suddenly while running?",
    source=sources.TRUCK_DRIVER_MANUAL,
    denies="no sudden fall",
    stage=Stage.KNOWN,
    normal="no step falls",
    background=RARE,
    also=(
        "sudden loss of oil pressure",
        "dropped to zero",
        "all at once",
        "went to zero",
    ),
)
SANK_WHILE_RUNNING = Finding(
    id="sank_while_running",
    station=Station.INSTRUMENT,
    says="the pressure sank steadily during one run",
    asks="Did the pressure sink bit by bit during one run, without coming back?",
    source=COMMON_PRACTICE,
    denies="no steady sinking in a run",
    stage=Stage.KNOWN,
    normal="steady",
    background=RARE,
    also=(
        "pressure kept falling",
        "slid down",
        "pressure decreasing",
        "dropping slowly",
    ),
)
DECLINED_OVER_MONTHS = Finding(
    id="declined_over_months",
    station=Station.INSTRUMENT,
    says="the pressure has fallen slowly over months or years",
    asks="Has it fallen slowly over months or years?",
    source=sources.CARLEY_2000,
    denies="no slow fall",
    stage=Stage.KNOWN,
    normal="steady over the years",
    background=RARE,
    also=(
        "gradually getting lower",
        "slow decline",
        "worse every year",
    ),
)
