"""Which tasks a repair calls for: a phase counts once one of its places was opened.

Imported by ``diagnose.signoff``. A task that guards against the confirmed cause counts always.
"""

from collections.abc import Mapping
from types import MappingProxyType

from knowledge.access.precedence_model import ENDS_RUNNING
from knowledge.reassembly import by_lamp, first_start, run_in
from knowledge.work import Access, Phase, Task

_SUMP = frozenset({Access.SUMP_OFF, Access.PICKUP_OFF})
_PUMP = frozenset({Access.PUMP_OFF, Access.PUMP_COVER_OFF, Access.PUMP_RELIEF_OUT})
#: places of the tree of access that, once open, call for the phase (judgement)
OPENED_FOR: Mapping[Phase, frozenset[Access]] = MappingProxyType(
    {
        Phase.BEARINGS: frozenset(
            {
                Access.CAP_OFF,
                Access.CRANK_OUT,
                Access.CAM_OUT,
                Access.PLUGS_OUT,
                Access.FLYWHEEL_OFF,
            }
        ),
        Phase.PUMP: frozenset({Access.PUMP_COVER_OFF}),
        Phase.RELIEF: frozenset({Access.RELIEF_CAP_OFF, Access.PUMP_RELIEF_OUT}),
        Phase.DRIVE: _PUMP | {Access.DISTRIBUTOR_OUT},
        Phase.TRAY: frozenset({Access.TRAY_OFF}),
        Phase.SUMP: _SUMP,
        Phase.PRIMING: _SUMP
        | _PUMP
        | {
            Access.FRONT_COVER_OFF,
            Access.CAP_OFF,
            Access.PLUGS_OUT,
            Access.VALLEY_OPEN,
        },
    }
)
#: what an oil or filter change opens
SERVICED: frozenset[Access] = frozenset({Access.DRAINED, Access.FILTER_OFF, Access.FILTER_CUT})
#: of the first start and after: what an oil or filter change calls for too (judgement)
AFTER_SERVICE: frozenset[Task] = frozenset(
    {
        by_lamp.LAMP_LIT_WITH_KEY,
        by_lamp.LAMP_OUT_TIMED,
        by_lamp.LAMP_STAYS_OUT_HOT,
        first_start.FIRST_PRESSURE_TIMED,
        first_start.PRESSURE_AT_HOT_IDLE,
        first_start.NO_LEAK_RUNNING,
        run_in.LEVEL_AND_LEAKS_AFTER_FIRST_STOP,
    }
)
#: once more than that was opened, the first start is watched, the job signed off; after a service
#: too the engine is looked at again later
ALWAYS: frozenset[Phase] = frozenset({Phase.FIRST_START, Phase.RUN_IN, Phase.LATER})


def called_for_within(task: Task) -> frozenset[Access]:
    """The places of which one must have been open for a task of a phase that is not ``ALWAYS``."""
    return frozenset(task.opened) or OPENED_FOR.get(task.phase, frozenset())


def called_for_after(task: Task) -> frozenset[Access]:
    """The places of which one must have been open for a task of the phases above."""
    if task.opened:
        return frozenset(task.opened)
    light = task.phase is Phase.LATER or task in AFTER_SERVICE
    return ENDS_RUNNING if light else ENDS_RUNNING - SERVICED
