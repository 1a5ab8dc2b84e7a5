"""Looks that are taken whatever they promise: what they read is gone for good afterwards.

Every other line of this room binds only where its check is worth its minutes.
"""

from knowledge.inspections.bearings import LIFT_ONE_CAP
from knowledge.inspections.delivery import LOOK_AT_THE_FILTER, LOOK_WHERE_THE_FILTER_SAT
from knowledge.inspections.leaks import LOOK_AT_THE_DRAIN
from knowledge.inspections.oil import READ_THE_STICK
from knowledge.inspections.pump import LOOK_AT_THE_PUMP_JOINT, SEE_THE_DISTRIBUTOR_SEAT
from knowledge.inspections.pump_bench import LOOK_INTO_THE_OPENED_PUMP
from knowledge.inspections.relief import PULL_THE_RELIEF_VALVE
from knowledge.inspections.suction import (
    CATCH_SUMP_CONTENTS,
    LOOK_AT_THE_SCREEN,
    TWIST_THE_PICKUP,
)
from knowledge.vocabulary import Inspection

#: judgement: short looks at what an opening destroys
KEPT: frozenset[Inspection] = frozenset(
    {
        READ_THE_STICK,
        LOOK_AT_THE_DRAIN,
        LOOK_AT_THE_FILTER,
        LOOK_WHERE_THE_FILTER_SAT,
        SEE_THE_DISTRIBUTOR_SEAT,
        CATCH_SUMP_CONTENTS,
        LOOK_AT_THE_SCREEN,
        TWIST_THE_PICKUP,
        LOOK_AT_THE_PUMP_JOINT,
        LOOK_INTO_THE_OPENED_PUMP,
        PULL_THE_RELIEF_VALVE,
        LIFT_ONE_CAP,
    }
)
