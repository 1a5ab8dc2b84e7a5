"""What is looked at again after 1, 10 and 50 hours of running, once the job is closed."""

from dataclasses import replace

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.figures import HOUR, TRUSTED_GAUGE
from knowledge.pressure import quantities as pressure_quantities
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.units import PSI
from knowledge.work import Band, Caution, Hold, Phase, Task

#: share of the pressure of the first start; less than this is looked into (judgement)
LEAST_OF_FIRST_START = 0.8
STOPPED = (Caution.HOT, Caution.USED_OIL)
HOT_IDLE_AFTER_1_H = Task(
    id="hot_idle_after_1_h",
    phase=Phase.LATER,
    due=HOUR,
    says="pressure hot, at idle or at its one speed, after the first hour",
    how=(
        "oil hot, speed measured, same gauge and port as at the first start",
        "compare with the first start: find the reason for a drop of a fifth (judgement)",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    dimension="pressure",
    bands=(Band(low=10 * PSI, high=None, source=COMMON_PRACTICE, says="usual: 10 psi"),),
    limits=(pressure_quantities.HOT_IDLE_PRESSURE, None),
    spread=TRUSTED_GAUGE,
    remedy="stop; cut the filter before it runs again",
    guards=(bearings_causes.BEARING_WIPED, assembly_causes.DIRT_IN_ASSEMBLY),
    cautions=RUNNING,
    also=("pressure after an hour", "hot idle after one hour"),
)
LEVEL_AND_LEAKS_AFTER_1_H = Task(
    id="level_and_leaks_after_1_h",
    phase=Phase.LATER,
    due=HOUR,
    says="oil level and leaks after the first hour",
    how=(
        "on level ground, wait ten minutes, read the stick",
        "light round filter, cover, sump and seals",
    ),
    source=sources.BREAKING_IN_TIP_184,
    hold=Hold.NOTE,
    remedy="top up; stop the leak before the next run",
    guards=(oil_causes.OIL_LEVEL_LOW, leaks_causes.EXTERNAL_LEAK_MAJOR),
    cautions=STOPPED,
    also=("level after an hour", "leaks after the first hour"),
)
HOT_IDLE_AFTER_10_H = replace(
    HOT_IDLE_AFTER_1_H,
    id="hot_idle_after_10_h",
    due=10 * HOUR,
    says="pressure hot, at idle or at its one speed, after 10 hours",
    remedy="stop; cut the filter, check the oil for fuel and water",
    guards=(bearings_causes.BEARING_WIPED, oil_causes_condition.OIL_DEGRADED),
    also=("pressure after ten hours",),
)
OIL_LOOKED_AT_AFTER_10_H = Task(
    id="oil_looked_at_after_10_h",
    phase=Phase.LATER,
    due=10 * HOUR,
    says="oil after 10 hours: level, smell of fuel, water, metal glitter on the stick",
    how=(
        "wipe the stick on white paper in the sun: no glitter, no cream, no smell of fuel",
        "write down how much was added since the first start",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="change oil and filter, cut the filter",
    guards=(
        oil_causes.OIL_LEVEL_LOW,
        bearings_causes.BEARING_WIPED,
        assembly_causes.DIRT_IN_ASSEMBLY,
    ),
    cautions=STOPPED,
    also=("look at the oil after ten hours", "oil used so far"),
)
HOT_IDLE_AFTER_50_H = replace(
    HOT_IDLE_AFTER_1_H,
    id="hot_idle_after_50_h",
    due=50 * HOUR,
    says="pressure hot, at idle or at its one speed, after 50 hours",
    remedy="start a new job while the figures of this one are fresh",
    guards=(bearings_causes.BEARING_WIPED,),
    also=("pressure after fifty hours",),
)
FILTER_CUT_AFTER_50_H = Task(
    id="filter_cut_after_50_h",
    phase=Phase.LATER,
    due=50 * HOUR,
    says="filter changed and cut open after 50 hours: no flakes, no copper, no sealer",
    how=(
        "change oil and filter warm; cut the filter, spread the pleats on white paper",
        "less grey dust than in the first filter; flakes or copper: no further running",
    ),
    source=sources.CUT_FILTER_ANALYSIS_2026,
    hold=Hold.NOTE,
    remedy="do not run it until you have inspected the bearings",
    guards=(
        bearings_causes.BEARING_WIPED,
        assembly_causes.PART_SHEDDING_INSIDE,
        assembly_causes.SEALANT_DEBRIS,
        delivery_causes.FILTER_BLOCKED,
    ),
    cautions=(*STOPPED, Caution.SHARP, Caution.WASTE),
    also=("second filter cut open", "filter after fifty hours"),
)
BOLTS_AND_LINES_AFTER_50_H = Task(
    id="bolts_and_lines_after_50_h",
    phase=Phase.LATER,
    due=50 * HOUR,
    says="sump bolts, oil lines and their clips after 50 hours: tight, dry, not chafed",
    how=("engine cold; tighten only what the maker allows",),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="renew a chafed line before you run it again",
    guards=(leaks_causes.EXTERNAL_LEAK_MAJOR, assembly_causes.FASTENER_LOOSE_INSIDE),
    cautions=STOPPED,
    also=("check bolts after fifty hours", "chafed oil line"),
)
