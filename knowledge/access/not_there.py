"""Checks of parts that a kind of engine has not: no filter to cut, no port for a gauge, no caps."""

from __future__ import annotations

from collections.abc import Callable

from knowledge.engines import features_build, features_kinds
from knowledge.model import Finding, State, Station
from knowledge.stations.delivery import findings_filter, findings_filter_cut
from knowledge.stations.instrument import findings as panel
from knowledge.stations.instrument import (
    findings_electrical,
    findings_panel,
    findings_stations,
)
from knowledge.stations.leaks import findings_places
from knowledge.stations.oil import findings as oil
from knowledge.stations.oil import findings_heat, findings_record
from knowledge.stations.pump import findings as pump
from knowledge.stations.relief import findings as relief
from knowledge.stations.suction import findings as suction
from knowledge.stations.topend import findings as topend
from knowledge.work import Access, Inspection

_FILTER = frozenset({Access.FILTER_OFF, Access.FILTER_CUT})
#: places of pump, valve, gallery and gauge
_PRESSURE = _FILTER | {
    Access.GAUGE_PORT,
    Access.RELIEF_CAP_OFF,
    Access.PUMP_RELIEF_OUT,
    Access.PUMP_OFF,
    Access.PUMP_COVER_OFF,
    Access.PICKUP_OFF,
    Access.TRAY_OFF,
    Access.PLUGS_OUT,
    Access.VALLEY_OPEN,
    Access.DISTRIBUTOR_OUT,
}
_SUMP = frozenset({Access.SUMP_OFF, Access.DRAINED, Access.OIL_SAMPLE, Access.TRAY_OFF})
_VALVES = frozenset({Access.VALVE_COVER_OFF, Access.VALLEY_OPEN, Access.CAM_OUT})
#: a feature, and the places that an engine with it has not
PLACES: tuple[tuple[Finding, frozenset[Access]], ...] = (
    (features_build.NO_OIL_FILTER, _FILTER),
    (features_build.SPLASH_LUBRICATED, _PRESSURE),
    (features_kinds.DRIP_OILED, _PRESSURE | _SUMP),
    (features_kinds.OIL_BURNT_WITH_FUEL, _PRESSURE | _SUMP | _VALVES | {Access.CAP_OFF}),
    (features_kinds.ROTARY_PISTON, _VALVES | {Access.CAP_OFF}),
    (features_kinds.ROLLER_BIG_ENDS, frozenset({Access.CAP_OFF})),
)
#: looks from outside at the filter
_AT_THE_FILTER = frozenset(
    {
        findings_filter.LOOK_AT_THE_FILTER,
        findings_filter.FEEL_FILTER_AND_COOLER,
        findings_places.FEEL_THE_FILTER,
    }
)
#: looks from outside at what makes, keeps and shows pressure
_AT_PRESSURE = _AT_THE_FILTER | {
    findings_electrical.SWING_THE_GAUGE_BY_ITS_LEAD,
    findings_electrical.PUT_ANOTHER_GAUGE_IN_ITS_PLACE,
    findings_panel.FOLLOW_THE_GAUGE_LINE,
    findings_panel.COMPARE_TWO_INSTRUMENTS,
    findings_panel.TIME_THE_SHUTDOWN,
    findings_stations.COMPARE_TWO_STATIONS,
    findings_filter_cut.LOOK_THROUGH_THE_COOLER_LINES,
    pump.LISTEN_AT_THE_PUMP,
    pump.WATCH_THE_ROTOR_CRANKED,
    pump.STROBE_THE_TIMING,
    pump.SEE_THE_DISTRIBUTOR_SEAT,
    relief.FEEL_THE_RELIEF_CAP,
}
#: looks from outside at oil that stands in a sump
_AT_A_SUMP = frozenset(
    {
        oil.READ_THE_STICK,
        findings_record.WATCH_THE_LEVEL_STANDING,
        findings_record.COMPARE_STICK_AND_TUBE,
        findings_heat.LOOK_FOR_FOAM,
        suction.READ_LEVEL_TWICE,
        suction.LOOK_UNDER_THE_SUMP,
        suction.THAW_THE_SUMP,
        findings_places.LOOK_AT_THE_DRAIN,
        findings_places.LOOK_AT_FILLER_AND_STICK,
    }
)
#: a feature, and the checks from outside that an engine with it does not allow
CHECKS: tuple[tuple[Finding, frozenset[Inspection]], ...] = (
    (features_build.NO_OIL_FILTER, _AT_THE_FILTER),
    (features_build.SPLASH_LUBRICATED, _AT_PRESSURE),
    (features_kinds.DRIP_OILED, _AT_PRESSURE | _AT_A_SUMP),
    (
        features_kinds.OIL_BURNT_WITH_FUEL,
        _AT_PRESSURE | _AT_A_SUMP | {topend.LISTEN_AT_THE_COVERS},
    ),
    (features_kinds.ROTARY_PISTON, frozenset({topend.LISTEN_AT_THE_COVERS})),
)


def is_there(check: Inspection, state: Callable[[Finding], State | None]) -> bool:
    """Whether the engine whose features ``state`` returns has what a check looks at.

    A pump that fills troughs is one, though dippers splash the oil as well.
    """
    pumped = state(features_kinds.TROUGH_FED) is State.PRESENT
    has = [
        f
        for f in dict.fromkeys(f for f, _ in (*PLACES, *CHECKS))
        if state(f) is State.PRESENT and not (pumped and f in features_kinds.UNPRESSURED)
    ]
    if features_kinds.DRIP_OILED in has and check.station is Station.INSTRUMENT:
        return check is panel.ASK_ITS_HISTORY  # it has no instrument
    return not any(check.access in places for f, places in PLACES if f in has) and not any(
        check in checks for f, checks in CHECKS if f in has
    )
