"""What follows from a pump left dry, wrongly fitted, or asked for more than it can take."""

from knowledge.causes.pump import (
    PUMP_CAVITATION,
    PUMP_NOT_PRIMED,
    PUMP_OVERSIZED,
    PUMP_ROTOR_REVERSED,
    PUMP_WRONG_PART,
    SCAVENGE_FAILURE,
)
from knowledge.conditions import (
    DELIVERY_REDUCED,
    OIL_AERATED,
    OIL_SHORT,
    PRESSURE_GONE,
    PRESSURE_HIGH,
    PUMP_CAVITATES,
    PUMP_DRIVE_ERRATIC,
    PUMP_DRY,
)
from knowledge.findings.behaviour import (
    CHANGED_WITH_NEW_PUMP,
    CHANGED_WITH_OIL_CHANGE,
    LOW_FROM_FIRST_START,
    NONE_FROM_FIRST_START,
)
from knowledge.findings.pressure import (
    FALLS_AS_REVS_RISE,
    SANK_WHILE_RUNNING,
)
from knowledge.findings.pump import (
    DRAWS_NOTHING_IN_BATH,
    FORCED_OIL_BROUGHT_PRESSURE,
    HIGH_VOLUME_PUMP_FITTED,
    NO_OIL_WHEN_CRANKED,
    PUMP_BELT_OFF,
    PUMP_DRY_INSIDE,
    PUMP_NOISE,
    TANK_EMPTIES_RUNNING,
    WRONG_PUMP_FITTED,
)
from knowledge.findings.pump_bench import (
    CAVITATION_MARKS,
    ROTOR_WRONG_WAY_ROUND,
)
from knowledge.findings.pump_drive import DRIVE_GEAR_WORN
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import CAV, EB10, HB07, HB19, HPA, PRM
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.PUMP)

# ---------------------------------------------------------------------- dry or wrong pump


@rule(
    source=PRM,
    catches=[
        case_of(NONE_FROM_FIRST_START, PUMP_DRY_INSIDE),
        case_of(FORCED_OIL_BROUGHT_PRESSURE),
        case_of(CHANGED_WITH_OIL_CHANGE, NO_OIL_WHEN_CRANKED),
    ],
    spares=[
        case_of(NONE_FROM_FIRST_START, lacks=[PUMP_DRY_INSIDE, FORCED_OIL_BROUGHT_PRESSURE]),
        case_of(CHANGED_WITH_OIL_CHANGE, lacks=[NO_OIL_WHEN_CRANKED]),
    ],
)
def pump_left_dry(known: Known) -> Conclusions:
    """A pump left dry after work, storage or an oil change does not draw until it is wetted."""
    yield leads_to(PUMP_NOT_PRIMED, PUMP_DRY, ALWAYS)
    yield leads_to(PUMP_NOT_PRIMED, CHANGED_WITH_OIL_CHANGE, SOMETIMES)
    yield leads_to(PUMP_DRY, PUMP_DRY_INSIDE, MOSTLY)
    yield leads_to(PUMP_DRY, FORCED_OIL_BROUGHT_PRESSURE, MOSTLY)
    yield leads_to(PUMP_DRY, NO_OIL_WHEN_CRANKED, MOSTLY)


@rule(
    source=HB07,
    catches=[case_of(LOW_FROM_FIRST_START, WRONG_PUMP_FITTED)],
    spares=[case_of(LOW_FROM_FIRST_START, lacks=[WRONG_PUMP_FITTED])],
)
def pump_meant_for_another_engine(known: Known) -> Conclusions:
    """A pump of the wrong size, height, rotation or ratio is wrong steadily from its first day."""
    yield leads_to(PUMP_WRONG_PART, DELIVERY_REDUCED, MOSTLY)
    yield leads_to(PUMP_WRONG_PART, PRESSURE_HIGH, SELDOM)
    yield leads_to(PUMP_WRONG_PART, PRESSURE_GONE, SELDOM)
    yield leads_to(PUMP_WRONG_PART, LOW_FROM_FIRST_START, OFTEN)
    yield leads_to(PUMP_WRONG_PART, CHANGED_WITH_NEW_PUMP, OFTEN)
    yield leads_to(PUMP_WRONG_PART, WRONG_PUMP_FITTED, MOSTLY)


@rule(
    source=HB19,
    catches=[case_of(LOW_FROM_FIRST_START, ROTOR_WRONG_WAY_ROUND)],
    spares=[case_of(LOW_FROM_FIRST_START, lacks=[ROTOR_WRONG_WAY_ROUND])],
)
def rotor_turned_over(known: Known) -> Conclusions:
    """An outer rotor put in the wrong way round costs about half the flow from the first start."""
    yield leads_to(PUMP_ROTOR_REVERSED, DELIVERY_REDUCED, ALWAYS)
    yield leads_to(PUMP_ROTOR_REVERSED, LOW_FROM_FIRST_START, OFTEN)
    yield leads_to(PUMP_ROTOR_REVERSED, CHANGED_WITH_NEW_PUMP, SOMETIMES)
    yield leads_to(PUMP_ROTOR_REVERSED, ROTOR_WRONG_WAY_ROUND, MOSTLY)
    yield leads_to(PUMP_ROTOR_REVERSED, DRAWS_NOTHING_IN_BATH, SELDOM)


# --------------------------------------------------------------------- more than it can take


@rule(
    source=CAV,
    catches=[case_of(FALLS_AS_REVS_RISE, PUMP_NOISE), case_of(CAVITATION_MARKS)],
    spares=[case_of(FALLS_AS_REVS_RISE, lacks=[PUMP_NOISE, CAVITATION_MARKS])],
)
def whine_and_falling_pressure_with_revs(known: Known) -> Conclusions:
    """A pump that cannot fill whines, and its pressure falls as the revs go on rising.

    Misleads when a part-blocked screen throttles a sound inlet: look there first.
    """
    yield leads_to(PUMP_CAVITATION, PUMP_CAVITATES, ALWAYS)
    yield leads_to(PUMP_CAVITATES, PUMP_NOISE, OFTEN)
    yield leads_to(PUMP_CAVITATES, CAVITATION_MARKS, OFTEN)


@rule(
    source=EB10,
    catches=[case_of(HIGH_VOLUME_PUMP_FITTED, DRIVE_GEAR_WORN), case_of(HIGH_VOLUME_PUMP_FITTED)],
    spares=[case_of(DRIVE_GEAR_WORN, lacks=[HIGH_VOLUME_PUMP_FITTED])],
)
def more_pump_than_the_engine_needs(known: Known) -> Conclusions:
    """A high-volume pump on an ordinary engine loads its drive, heats the oil, starves its inlet."""
    yield leads_to(PUMP_OVERSIZED, HIGH_VOLUME_PUMP_FITTED, ALWAYS)
    yield leads_to(PUMP_OVERSIZED, PRESSURE_HIGH, SOMETIMES)
    yield leads_to(PUMP_OVERSIZED, PUMP_CAVITATES, SOMETIMES)
    yield leads_to(PUMP_OVERSIZED, PUMP_DRIVE_ERRATIC, SELDOM)
    yield leads_to(PUMP_OVERSIZED, OIL_AERATED, SELDOM)
    yield leads_to(PUMP_OVERSIZED, DRIVE_GEAR_WORN, SOMETIMES)


@rule(
    source=HPA,
    catches=[case_of(SANK_WHILE_RUNNING, TANK_EMPTIES_RUNNING), case_of(PUMP_BELT_OFF)],
    spares=[case_of(SANK_WHILE_RUNNING, lacks=[TANK_EMPTIES_RUNNING])],
)
def tank_runs_empty(known: Known) -> Conclusions:
    """A scavenge stage that stops returning oil empties the tank: flicker first, then a fall."""
    yield leads_to(SCAVENGE_FAILURE, OIL_SHORT, MOSTLY)
    yield leads_to(SCAVENGE_FAILURE, OIL_AERATED, OFTEN)
    yield leads_to(SCAVENGE_FAILURE, SANK_WHILE_RUNNING, OFTEN)
    yield leads_to(SCAVENGE_FAILURE, TANK_EMPTIES_RUNNING, MOSTLY)
    yield leads_to(SCAVENGE_FAILURE, PUMP_BELT_OFF, SOMETIMES)
