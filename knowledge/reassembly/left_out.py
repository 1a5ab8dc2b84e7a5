"""Tasks that a kind of engine does not call for, whatever else they are for.

Loaded with the tasks; a review needs none of it.
"""

from __future__ import annotations

from collections.abc import Callable
from types import ModuleType

from knowledge.engines import features_build, features_kinds
from knowledge.model import Finding, State
from knowledge.reassembly import block, first_start, later, priming, run_in
from knowledge.stations.bearings import tasks as bearings
from knowledge.stations.bearings import tasks_build
from knowledge.stations.pump import tasks as pump
from knowledge.stations.pump import tasks_cover, tasks_distributor, tasks_drive, tasks_variable
from knowledge.stations.relief import tasks as relief
from knowledge.stations.suction import tasks_pickup, tasks_sump, tasks_tray
from knowledge.stations.topend import tasks as topend
from knowledge.work import Task


def _all(*modules: ModuleType) -> frozenset[Task]:
    return frozenset(v for m in modules for v in vars(m).values() if isinstance(v, Task))


#: of a filter that all oil goes through
_FILTER = frozenset(
    {
        priming.FILTER_FILLED,
        priming.FILTER_RIGHT_ONE,
        priming.BLED_AT_FILTER,
        run_in.FIRST_FILTER_CUT_OPEN,
        run_in.FILTER_FIND_ACCEPTED,
        later.FILTER_CUT_AFTER_50_H,
    }
)
#: of pressure: making it, keeping it and reading it
_PRESSURE = (
    _all(pump, tasks_cover, tasks_drive, tasks_distributor, tasks_variable, relief)
    | _all(tasks_pickup, tasks_tray, priming)
    | _FILTER
    | {
        block.FRONT_PLUGS_IN,
        block.REAR_PLUGS_IN,
        block.VALLEY_PLUGS_IN,
        block.PLUGS_CLEAR_OF_FEEDS,
        block.BLEEDS_WRITTEN_DOWN,
        block.GALLERY_SEALS_FITTED,
        block.LIFTER_BORES_SOUND,
        block.LIFTER_BORE_TAPER_CHECKED,
        first_start.FIRST_PRESSURE_TIMED,
        first_start.PRESSURE_COLD_WATCHED,
        first_start.PRESSURE_HOT_AT_2000,
        first_start.PRESSURE_AT_HOT_IDLE,
        first_start.NEEDLE_STEADY,
        run_in.PANEL_GAUGE_AGREES,
        run_in.BASELINE_WRITTEN_DOWN,
        later.HOT_IDLE_AFTER_1_H,
        later.HOT_IDLE_AFTER_10_H,
        later.HOT_IDLE_AFTER_50_H,
    }
) - {tasks_tray.RODS_CLEAR_BLOCK_AND_SUMP, priming.OIL_IN}
#: of a sump that holds the oil
_SUMP = _all(tasks_sump) | {
    priming.OIL_IN,
    run_in.FIRST_OIL_CHANGE_DONE,
    run_in.OIL_SAMPLE_SENT,
    run_in.LEVEL_AND_LEAKS_AFTER_FIRST_STOP,
    later.LEVEL_AND_LEAKS_AFTER_1_H,
    later.OIL_LOOKED_AT_AFTER_10_H,
}
#: of shells on the rods
_ROD_SHELLS = frozenset(
    {
        bearings.ROD_CLEARANCE_FITTED,
        bearings.ROD_CAPS_TORQUED,
        bearings.SHELLS_IN_THEIR_PLACES,
        tasks_build.CRANK_TURNING_TORQUE_MEASURED,
    }
)
#: of shells of the crank
_MAIN_SHELLS = frozenset(
    {
        bearings.MAIN_CLEARANCE_FITTED,
        bearings.MAIN_BORES_IN_LINE,
        bearings.NEIGHBOUR_BORES_IN_LINE,
        bearings.CAPS_IN_THEIR_PLACES,
        bearings.CAPS_TORQUED,
    }
)
#: of pistons, rods and valve gear
_PISTONS_AND_VALVES = frozenset(
    {
        bearings.ROD_CAPS_TORQUED,
        bearings.SHELLS_IN_THEIR_PLACES,
        bearings.CAPS_IN_THEIR_PLACES,
        bearings.CAPS_TORQUED,
        bearings.MAIN_BORES_IN_LINE,
        bearings.NEIGHBOUR_BORES_IN_LINE,
        tasks_build.RING_GAPS_FITTED,
        tasks_build.ROD_SIDE_CLEARANCE_FITTED,
        tasks_tray.RODS_CLEAR_BLOCK_AND_SUMP,
        topend.CAM_CLEARANCE_FITTED,
        block.LIFTER_BORES_SOUND,
        block.LIFTER_BORE_TAPER_CHECKED,
        priming.OIL_AT_EVERY_ROCKER,
        first_start.CAM_RUN_IN_SPEED_HELD,
        first_start.CAM_RUN_IN_TIMED,
    }
)
#: of full pressure, which a pump that fills troughs never makes
_FULL_PRESSURE = frozenset({priming.PRIMING_PRESSURE_REACHED, priming.CRANKED_TO_PRESSURE})

#: a feature, and what an engine that has it does not call for
LEFT_OUT: tuple[tuple[Finding, frozenset[Task]], ...] = (
    (features_build.NO_OIL_FILTER, _FILTER),
    (features_build.SPLASH_LUBRICATED, _PRESSURE),
    (features_kinds.DRIP_OILED, _PRESSURE | _SUMP),
    (
        features_kinds.OIL_BURNT_WITH_FUEL,
        _PRESSURE | _SUMP | _ROD_SHELLS | _MAIN_SHELLS | {topend.CAM_CLEARANCE_FITTED},
    ),
    (features_kinds.ROLLER_BIG_ENDS, _ROD_SHELLS),
    (features_build.ROLLER_CRANKSHAFT, _MAIN_SHELLS),
    (features_kinds.ROTARY_PISTON, _PISTONS_AND_VALVES),
    (features_kinds.TROUGH_FED, _FULL_PRESSURE),
)


def is_left_out(task: Task, state: Callable[[Finding], State | None]) -> bool:
    """Whether the engine whose features ``state`` returns has nothing that the task is for.

    A pump that fills troughs is one, though dippers splash the oil as well.
    """
    pumped = state(features_kinds.TROUGH_FED) is State.PRESENT
    return any(
        task in tasks and state(feature) is State.PRESENT
        for feature, tasks in LEFT_OUT
        if not (pumped and feature in features_kinds.UNPRESSURED)
    )
