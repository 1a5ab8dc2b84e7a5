"""When it began: what a rebuild, an oil change, a pump or other work may have put wrong.

The judged strength is how often the fault shows from that moment on and is reported with it.
"""

from knowledge.model import OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly
from knowledge.stations.bearings import causes_geometry as geometry
from knowledge.stations.bearings import causes_shafts as shafts
from knowledge.stations.delivery import causes as delivery
from knowledge.stations.instrument import causes as instruments
from knowledge.stations.instrument import causes_line as instrument_line
from knowledge.stations.instrument import findings as instrument
from knowledge.stations.leaks import causes_openings as openings
from knowledge.stations.oil import causes as oil
from knowledge.stations.pump import causes as pump
from knowledge.stations.pump import causes_drive as pump_drive
from knowledge.stations.pump import causes_fitted as pump_fitted
from knowledge.stations.relief import causes as relief
from knowledge.stations.suction import causes as suction
from knowledge.stations.suction import causes_sump as sump
from knowledge.stations.topend import causes as topend
from knowledge.stations.topend import causes_feeds as feeds

LOW_EVER_SINCE_IT_WAS_BUILT = LinkGroup(
    id="low_ever_since_it_was_built",
    station=Station.ASSEMBLY,
    says="Low ever since it was built: dirt, loose parts and reused parts show at the first start.",
    child=behaviour.LOW_FROM_FIRST_START,
    origins={
        relief.RELIEF_DEBRIS: (SOMETIMES, COMMON_PRACTICE),
        relief.RELIEF_STUCK_OPEN: (SOMETIMES, COMMON_PRACTICE),
        relief.RELIEF_CAP_LOOSE: (SOMETIMES, JUDGEMENT),
        relief.RELIEF_BORE_SCORED: (SOMETIMES, JUDGEMENT),
        relief.RELIEF_PART_MISSING: (OFTEN, COMMON_PRACTICE),
        assembly.CAP_SWAPPED: (SOMETIMES, JUDGEMENT),
        suction.PICKUP_TUBE_LOOSE: (SOMETIMES, COMMON_PRACTICE),
        pump.PUMP_COVER_LOOSE: (SOMETIMES, COMMON_PRACTICE),
        assembly.DIRT_IN_ASSEMBLY: (SOMETIMES, JUDGEMENT),
        geometry.JOURNAL_FINISH: (SOMETIMES, JUDGEMENT),
        geometry.LINE_BORE_MISALIGNED: (SOMETIMES, JUDGEMENT),
        topend.LIFTER_BORE_LEAK: (SOMETIMES, JUDGEMENT),
        topend.CAM_BEARING_WEAR: (SOMETIMES, JUDGEMENT),
        shafts.AUXILIARY_SHAFT_WEAR: (SOMETIMES, JUDGEMENT),
        shafts.BALANCE_SHAFT_WEAR: (SELDOM, JUDGEMENT),
        shafts.IDLER_BUSH_WEAR: (SELDOM, JUDGEMENT),
        topend.ROCKER_SHAFT_LEAK: (SELDOM, JUDGEMENT),
        feeds.PISTON_JET_OPEN: (SOMETIMES, JUDGEMENT),
        openings.WRONG_GASKET_ON_ACCESSORY: (OFTEN, COMMON_PRACTICE),
        pump_drive.PUMP_DRIVE_BIND: (SELDOM, JUDGEMENT),
        pump_fitted.PUMP_BODY_CRACKED: (SELDOM, JUDGEMENT),
        delivery.FILTER_WRONG: (SELDOM, JUDGEMENT),
        oil.VISCOSITY_TOO_LOW: (SELDOM, JUDGEMENT),
        instrument_line.IDLE_TOO_SLOW: (SELDOM, JUDGEMENT),
        instruments.WIRING_GROUND_FAULT: (SELDOM, JUDGEMENT),
        instruments.SENDER_FAULTY: (SELDOM, JUDGEMENT),
    },
    matches=[example(behaviour.LOW_FROM_FIRST_START)],
    non_matches=[example(lacks=[behaviour.LOW_FROM_FIRST_START])],
)
BEGUN_WITH_FRESH_OIL = LinkGroup(
    id="begun_with_fresh_oil",
    station=Station.ASSEMBLY,
    says="Began with fresh oil: a heavier grade, or a rag or cap left in the filler.",
    child=behaviour.CHANGED_WITH_OIL_CHANGE,
    origins={
        oil.VISCOSITY_TOO_HIGH: (SOMETIMES, COMMON_PRACTICE),
        sump.FOREIGN_BODY_IN_SUMP: (SOMETIMES, JUDGEMENT),
        relief.RELIEF_DEBRIS: (SELDOM, JUDGEMENT),
    },
    matches=[example(behaviour.CHANGED_WITH_OIL_CHANGE)],
    non_matches=[example(lacks=[behaviour.CHANGED_WITH_OIL_CHANGE])],
)
BEGUN_WITH_ANOTHER_PUMP = LinkGroup(
    id="begun_with_another_pump",
    station=Station.ASSEMBLY,
    says="Began when the pump was off: its cover and the pickup height were set then.",
    child=behaviour.CHANGED_WITH_NEW_PUMP,
    origins={
        pump.PUMP_COVER_LOOSE: (SOMETIMES, COMMON_PRACTICE),
        sump.PICKUP_CLEARANCE_WIDE: (SOMETIMES, COMMON_PRACTICE),
        relief.RELIEF_PART_MISSING: (SELDOM, COMMON_PRACTICE),
        pump_fitted.PUMP_OVERSIZED: (SOMETIMES, COMMON_PRACTICE),
        relief.RELIEF_DEBRIS: (SELDOM, JUDGEMENT),
    },
    matches=[example(patterns.GAUGE_READS_LOW, behaviour.CHANGED_WITH_NEW_PUMP)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[behaviour.CHANGED_WITH_NEW_PUMP])],
)
BEGUN_WITH_OTHER_WORK = LinkGroup(
    id="begun_with_other_work",
    station=Station.ASSEMBLY,
    says="Began with other work: it may have disturbed a pickup, a wire or the pump's prime.",
    child=behaviour.CHANGED_AFTER_OTHER_WORK,
    origins={
        instruments.SENDER_FAULTY: (SELDOM, COMMON_PRACTICE),
        instruments.SENDER_MISMATCH: (OFTEN, COMMON_PRACTICE),
        suction.PICKUP_TUBE_LOOSE: (SELDOM, COMMON_PRACTICE),
        relief.RELIEF_DEBRIS: (SELDOM, COMMON_PRACTICE),
        pump_fitted.PUMP_NOT_PRIMED: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(behaviour.CHANGED_AFTER_OTHER_WORK)],
    non_matches=[example(lacks=[behaviour.CHANGED_AFTER_OTHER_WORK])],
)
BEGUN_WITH_ANOTHER_GAUGE = LinkGroup(
    id="begun_with_another_gauge",
    station=Station.INSTRUMENT,
    says="Began when gauge or sender was changed: a wire or ground was disturbed with it.",
    child=instrument.INSTRUMENT_JUST_CHANGED,
    origins={instruments.WIRING_GROUND_FAULT: (SOMETIMES, COMMON_PRACTICE)},
    matches=[example(instrument.INSTRUMENT_JUST_CHANGED)],
    non_matches=[example(lacks=[instrument.INSTRUMENT_JUST_CHANGED])],
)
