"""What is tried at the relief valve, and which causes it cures."""

from knowledge import sources
from knowledge.model import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.relief import causes, findings

RELIEF_CLEANED = trial(
    id="relief_cleaned",
    station=Station.RELIEF,
    says="the relief valve was taken out, cleaned or freed",
    asks="Relief valve taken out and cleaned? If so, what did it do?",
    cures={
        causes.RELIEF_DEBRIS: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_STUCK_OPEN: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_STUCK_CLOSED: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_CAP_LOOSE: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_PART_MISSING: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_HUNTING: (SELDOM, JUDGEMENT),
        # until debris sticks there again
        causes.RELIEF_BORE_SCORED: (SOMETIMES, JUDGEMENT),
        causes.RELIEF_SPRING_WRONG: (SELDOM, JUDGEMENT),
        causes.RELIEF_RETURN_PLUGGED: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=(
        "relief valve cleaned no change",
        "freed the relief plunger",
        "cleaned the pressure regulator",
    ),
)
STIFFER_SPRING = trial(
    id="stiffer_spring",
    station=Station.RELIEF,
    says="the relief spring was shimmed, stretched, or a stiffer one fitted",
    asks="Relief spring shimmed, stretched or replaced by a stiffer one? If so, what did it do?",
    cures={
        causes.RELIEF_SPRING_WEAK_BROKEN: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_SPRING_WRONG: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_BORE_SCORED: (SOMETIMES, JUDGEMENT),
        causes.RELIEF_HUNTING: (SOMETIMES, JUDGEMENT),
        causes.RELIEF_DEBRIS: (SELDOM, JUDGEMENT),
        causes.RELIEF_STUCK_OPEN: (SELDOM, JUDGEMENT),
    },
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    retired=("stiffer_spring_no_better",),
    also=(
        "shimmed the relief no change",
        "new relief spring didn't help",
        "shimmed the relief spring",
        "stretched the spring",
        "stiffer relief spring no change",
        "new relief spring",
    ),
)
NEW_RELIEF_VALVE = trial(
    id="new_relief_valve",
    station=Station.RELIEF,
    says="a new relief valve with its spring was fitted",
    asks="New relief valve? If so, what did it do?",
    cures={
        causes.RELIEF_DEBRIS: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_STUCK_OPEN: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_STUCK_CLOSED: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_SPRING_WEAK_BROKEN: (ALWAYS, COMMON_PRACTICE),
        causes.RELIEF_SPRING_WRONG: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_CAP_LOOSE: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_PART_MISSING: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_HUNTING: (MOSTLY, COMMON_PRACTICE),
        causes.RELIEF_BORE_SCORED: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("replaced the relief valve", "new pressure relief valve", "new oil pressure regulator"),
)
RELIEF_ADJUSTED = trial(
    id="relief_adjusted",
    station=Station.RELIEF,
    says="the relief adjuster was turned",
    asks="Relief adjuster turned? If so, what did it do?",
    cures={
        causes.RELIEF_SPRING_WEAK_BROKEN: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_SPRING_WRONG: (OFTEN, COMMON_PRACTICE),
        causes.RELIEF_CAP_LOOSE: (SELDOM, JUDGEMENT),
    },
    still=findings.RELIEF_ADJUSTER_NO_EFFECT,
    source=COMMON_PRACTICE,
    also=("screwed the adjuster in", "turned the relief screw"),
)
RELIEF_RETURN_CLEARED = trial(
    id="relief_return_cleared",
    station=Station.RELIEF,
    says="the relief return passage was cleared",
    asks="Relief return passage cleared? If so, what did it do?",
    cures={
        causes.RELIEF_RETURN_PLUGGED: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("opened the relief return",),
)
