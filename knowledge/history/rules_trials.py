"""Rules on trials without effect: what was seen, or put right, on the way to them."""

from knowledge.model import Cause, Shift, Station
from knowledge.pressure import behaviour
from knowledge.reports.behaviours import MEANT
from knowledge.reports.shapes import TrialKind, TrialMade
from knowledge.reports.words import Result
from knowledge.rule_api import Conclusions, Known, example, is_present, less_common, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.bearings import trials as bearings_trials
from knowledge.stations.delivery import trials as delivery_trials
from knowledge.stations.instrument import trials as instrument_trials
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.pump import trials as pump_trials
from knowledge.stations.relief import trials as relief_trials
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.suction import trials as suction_trials

rule = rules_of(Station.OIL)
suction_rule = rules_of(Station.SUCTION)

IN_VAIN = (Result.NO_DIFFERENCE, Result.WORSE)

#: work that takes the crank's bearings out from below
FROM_BELOW: tuple[TrialKind, ...] = (
    bearings_trials.NEW_BEARINGS,
    bearings_trials.NEW_MAIN_BEARINGS,
    bearings_trials.NEW_ROD_BEARINGS,
    bearings_trials.CRANK_REGROUND,
    bearings_trials.ENGINE_REBUILT,
)
#: work for which the oil is drained and fresh oil filled to the mark
WITH_FRESH_OIL: tuple[TrialKind, ...] = (
    *FROM_BELOW,
    pump_trials.NEW_PUMP,
    pump_trials.PUMP_REBUILT,
    pump_trials.HIGH_VOLUME_PUMP,
    suction_trials.PICKUP_CLEANED,
    suction_trials.NEW_PICKUP,
)
#: parts nobody tries before the dipstick was looked at
AFTER_THE_DIPSTICK: tuple[TrialKind, ...] = (
    delivery_trials.NEW_FILTER,
    delivery_trials.OTHER_FILTER,
    instrument_trials.NEW_SENDER,
    instrument_trials.OTHER_GAUGE,
    relief_trials.RELIEF_CLEANED,
    relief_trials.STIFFER_SPRING,
    relief_trials.NEW_RELIEF_VALVE,
)
NEW_PUMPS = (pump_trials.NEW_PUMP, pump_trials.PUMP_REBUILT, pump_trials.HIGH_VOLUME_PUMP)
NEW_FILTERS = (delivery_trials.NEW_FILTER, delivery_trials.OTHER_FILTER)
OF_THE_OLD_OIL: tuple[Cause, ...] = (
    oil_causes.OIL_LEVEL_HIGH,
    oil_causes_contamination.FUEL_DILUTION,
    oil_causes_condition.OIL_DEGRADED,
)
#: with these, pressure falls only when the level has fallen
LEVEL_GOES_FIRST: tuple[Cause, ...] = (
    leaks_causes.EXTERNAL_LEAK_MAJOR,
    leaks_causes.FILTER_SEAL_LEAK,
    leaks_causes.OIL_LINE_LEAK,
    leaks_causes.DRAIN_PLUG_OUT,
    leaks_causes.SHAFT_SEAL_LEAK,
    leaks_causes_openings.SENDER_LEAK,
    leaks_causes_openings.SUMP_HOLED,
)


def in_vain(known: Known, kinds: tuple[TrialKind, ...]) -> bool:
    """Whether a trial of these kinds was made without effect."""
    return any(t.trial in kinds and t.result in IN_VAIN for t in known.trials())


@rule(
    source=COMMON_PRACTICE,
    matches=[example(trials=[TrialMade(pump_trials.NEW_PUMP, Result.NO_DIFFERENCE)])],
    non_matches=[
        example(trials=[TrialMade(pump_trials.NEW_PUMP, Result.CURED)]),
        example(trials=[TrialMade(instrument_trials.NEW_SENDER, Result.NO_DIFFERENCE)]),
        example(),
    ],
)
def fresh_oil_to_the_mark(known: Known) -> Conclusions:
    """Work that drains the oil ends with a fresh, full fill: not old oil, low oil or a leak."""
    if in_vain(known, WITH_FRESH_OIL):
        yield less_common(oil_causes.OIL_LEVEL_LOW, Shift.STRONG_DOWN)
        for cause in OF_THE_OLD_OIL:
            yield less_common(cause)
        for leak in LEVEL_GOES_FIRST:
            yield less_common(leak, Shift.STRONG_DOWN)


@rule(
    source=JUDGEMENT,
    matches=[example(trials=[TrialMade(instrument_trials.NEW_SENDER, Result.NO_DIFFERENCE)])],
    non_matches=[
        example(trials=[TrialMade(instrument_trials.NEW_SENDER, Result.CURED)]),
        example(trials=[TrialMade(pump_trials.NEW_PUMP, Result.NO_DIFFERENCE)]),
        example(),
    ],
)
def dipstick_first(known: Known) -> Conclusions:
    """Nobody tries new parts before checking dipstick and leaks: both causes are less likely."""
    if in_vain(known, AFTER_THE_DIPSTICK):
        yield less_common(oil_causes.OIL_LEVEL_LOW)
        for leak in LEVEL_GOES_FIRST:
            yield less_common(leak)


@suction_rule(
    source=COMMON_PRACTICE,
    matches=[example(trials=[TrialMade(bearings_trials.NEW_BEARINGS, Result.NO_DIFFERENCE)])],
    non_matches=[
        example(trials=[TrialMade(bearings_trials.NEW_BEARINGS, Result.CURED)]),
        example(trials=[TrialMade(pump_trials.NEW_PUMP, Result.NO_DIFFERENCE)]),
        example(),
    ],
)
def sump_was_off_in_vain(known: Known) -> Conclusions:
    """Whoever renewed bearings from below saw the pickup screen and wiped the sump."""
    if in_vain(known, FROM_BELOW):
        yield less_common(suction_causes.PICKUP_SCREEN_BLOCKED)
        yield less_common(suction_causes_sump.FOREIGN_BODY_IN_SUMP)
        yield less_common(suction_causes_sump.PAN_DENTED)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(trials=[TrialMade(pump_trials.NEW_PUMP, Result.WORSE)]),
        example(trials=[TrialMade(delivery_trials.NEW_FILTER, Result.WORSE)]),
    ],
    non_matches=[
        example(trials=[TrialMade(pump_trials.NEW_PUMP, Result.NO_DIFFERENCE)]),
        example(trials=[TrialMade(bearings_trials.NEW_BEARINGS, Result.WORSE)]),
        example(),
    ],
)
def worse_since_the_new_part(known: Known) -> Conclusions:
    """What is worse since a new part went in began with it: the part, or how it was fitted."""
    worse = {t.trial for t in known.trials() if t.result is Result.WORSE}
    if worse.intersection(NEW_PUMPS):
        yield is_present(behaviour.CHANGED_WITH_NEW_PUMP, MEANT)
    if worse.intersection(NEW_FILTERS):
        yield is_present(behaviour.CHANGED_WITH_OIL_CHANGE, MEANT)
