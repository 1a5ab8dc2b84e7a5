"""Checks that are always made: what they show is lost afterwards, or says what to open.

Every other entry of precedence binds only where its check is worth its minutes.
"""

from knowledge.stations.bearings import findings_shells as bearings_shells
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.delivery import findings_filter_cut as delivery_filter_cut
from knowledge.stations.leaks import findings_places as leaks_places
from knowledge.stations.oil import findings as oil_findings
from knowledge.stations.pump import findings as pump_findings
from knowledge.stations.pump import findings_bench as pump_bench
from knowledge.stations.pump import findings_mount as pump_mount
from knowledge.stations.relief import findings as relief_findings
from knowledge.stations.suction import findings_pickup as suction_pickup
from knowledge.stations.suction import findings_sump as suction_sump
from knowledge.work import Inspection

#: judgement: short looks at what an opening destroys, and the filter cut before a long one
KEPT: frozenset[Inspection] = frozenset(
    {
        oil_findings.READ_THE_STICK,
        leaks_places.LOOK_AT_THE_DRAIN,
        delivery_filter.LOOK_AT_THE_FILTER,
        delivery_filter.LOOK_WHERE_THE_FILTER_SAT,
        delivery_filter_cut.CUT_THE_FILTER_OPEN,
        pump_findings.SEE_THE_DISTRIBUTOR_SEAT,
        suction_sump.CATCH_SUMP_CONTENTS,
        suction_sump.LOOK_AT_THE_SCREEN,
        suction_pickup.TWIST_THE_PICKUP,
        pump_mount.LOOK_AT_THE_PUMP_JOINT,
        pump_bench.LOOK_INTO_THE_OPENED_PUMP,
        relief_findings.PULL_THE_RELIEF_VALVE,
        bearings_shells.LIFT_ONE_CAP,
    }
)
