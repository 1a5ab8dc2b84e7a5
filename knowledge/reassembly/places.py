"""Places of which one must have been open for a task within its phase (judgement).

Imported by the tasks of several stations.
"""

from knowledge.work import Access

#: the pickup itself came off, not only the sump below it
PICKUP_APART = (Access.PICKUP_OFF, Access.PUMP_OFF)
#: the pump was off, whether or not its cover was
PUMP_OUT = (Access.PUMP_OFF, Access.PUMP_COVER_OFF, Access.PUMP_RELIEF_OUT)
DISTRIBUTOR = (Access.DISTRIBUTOR_OUT,)
#: crank, caps, camshaft or gallery plugs: what a rebuild opens
INSIDE = (
    Access.CAP_OFF,
    Access.CRANK_OUT,
    Access.CAM_OUT,
    Access.PLUGS_OUT,
    Access.FLYWHEEL_OFF,
)
#: where priming with a cover off shows something
FRONT_OR_TOP = (*INSIDE, Access.FRONT_COVER_OFF, Access.VALLEY_OPEN)
#: all that lets the oil run out of pump or galleries, a relief valve reached from outside too
ANY_OIL_SIDE = (
    *FRONT_OR_TOP,
    *PICKUP_APART,
    Access.SUMP_OFF,
    Access.PUMP_COVER_OFF,
    Access.PUMP_RELIEF_OUT,
    Access.RELIEF_CAP_OFF,
)
