"""Which tasks a repair calls for: a phase counts once one of its places was opened.

Imported by ``diagnose.signoff``. A task that guards against the confirmed cause counts always.
"""

from collections.abc import Mapping
from types import MappingProxyType

from knowledge.work import Access, Phase

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
        Phase.PUMP: _PUMP,
        Phase.RELIEF: frozenset({Access.RELIEF_CAP_OFF, Access.PUMP_RELIEF_OUT}),
        Phase.DRIVE: _PUMP | {Access.DISTRIBUTOR_OUT},
        Phase.TRAY: frozenset({Access.TRAY_OFF}),
        Phase.SUMP: _SUMP,
        Phase.PRIMING: _SUMP
        | _PUMP
        | {
            Access.RELIEF_CAP_OFF,
            Access.FRONT_COVER_OFF,
            Access.CAP_OFF,
            Access.PLUGS_OUT,
            Access.VALLEY_OPEN,
        },
    }
)
#: once anything was opened that ends running, the first start is watched, the job signed off, and
#: the engine looked at again later
ALWAYS: frozenset[Phase] = frozenset({Phase.FIRST_START, Phase.RUN_IN, Phase.LATER})
