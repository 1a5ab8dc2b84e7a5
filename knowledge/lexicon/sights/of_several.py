"""Findings of parts of which an engine has several: some sound ones do not make all of them sound."""

from __future__ import annotations

_SHELLS = frozenset(
    [
        "shells_wiped",
        "shells_scratched",
        "shells_worn_evenly",
        "shell_spun",
        "shells_found_ruined",
        "shells_flaking",
        "shells_etched",
        "shells_embedded_dirt",
        "one_bearing_wiped",
        "all_bearings_wiped",
    ]
)
_PUMP = frozenset(
    [
        "gears_worn_out",
        "pump_scored_seen",
        "cover_grooved",
        "pump_gear_broken",
        "pump_jammed",
        "pump_found_failed",
        "pump_housing_burst",
    ]
)
#: where one of these was found, they are not denied by what is said of others of the kind
OF_SEVERAL = _SHELLS | {
    "cam_bearing_found_bad",
    "crank_scored",
    "cap_bolts_slack",
    "gallery_plug_found_missing",
    "metal_in_filter",
    "screen_blocked",
    "pump_bolts_loose",
    "cover_screws_loose",
    "pickup_fixing_loose",
}
#: what says that all of a kind are sound, and the findings by which not all of them are
SOUND_ALL = {"shells_look_normal": _SHELLS, "pump_found_sound": _PUMP}
