"""What each question presumes, so that it is not asked before that is known (common practice).

A question of none of these presumes nothing. Findings are named by their id.
"""

from knowledge.questions.shapes import Premise

ZERO = "gauge_reads_zero"
STUCK = "needle_stuck_at_one_value"
LOW = ("gauge_reads_low", "lamp_comes_on", "needle_flickers", "direct_gauge_low")
TROUBLE = (*LOW, ZERO, "pressure_lost", "falls_in_a_manoeuvre", "fell_suddenly")
#: the pressure is never good, so that "good when ..." contradicts it
NEVER_GOOD = (ZERO, "none_from_first_start", "direct_gauge_zero", STUCK)
UNSTEADY = ("needle_flickers", "lamp_comes_on", "direct_gauge_unsteady")
REBUILT = ("freshly_rebuilt", "low_from_first_start", "none_from_first_start")
WORKED_ON = (
    *REBUILT,
    "just_worked_on",
    "changed_after_other_work",
    "sump_or_pump_swapped",
    "changed_with_new_pump",
    "oil_just_changed",
)
LEAK = (
    "oil_seen_outside",
    "oil_on_the_ground",
    "oil_in_the_bilge",
    "oil_sprayed",
    "oil_on_bodywork",
)
DAMAGE = (
    "bearing_knock",
    "engine_seized",
    "rod_through_block",
    "stopped_with_loss_of_power",
    "engine_banged_or_shook",
)
_NOT_HIGH = (ZERO, "gauge_reads_low", "direct_gauge_low", "direct_gauge_zero")
GOOD_AT_TIMES = Premise((LOW,), NEVER_GOOD)
#: low since it was built: there was no run on which it was good
NEVER_RAN_WELL = ("low_from_first_start", "none_from_first_start")
COMES_AND_GOES = Premise((TROUBLE,), (*NEVER_GOOD, *NEVER_RAN_WELL, "long_unchanged"))
#: no oil came under pressure yet, so nothing brought the pressure up and no oil was used
_NEVER_RAN = ("none_from_first_start", "drill_gives_none", "no_oil_when_cranked")
_BROUGHT_UP = Premise((), (*_NEVER_RAN, "gauge_reads_high", "direct_gauge_high"))
_ON_A_NEW_BUILD = Premise((REBUILT,))
_WITH_THE_PLUGS_OUT = Premise((REBUILT,), work=("whole_engine", "machine_shop"))
_ON_THE_SUCTION_SIDE = Premise((("sump_or_pump_swapped", "sump_was_off"),), work=("sump", "pickup"))
_WITH_TWO_INSTRUMENTS = Premise(
    (("second_instrument_disagrees", "gauges_at_two_stations"),), ("lamp_only",)
)
_AFTER_WORK = Premise((WORKED_ON,))
_BY_LEAK = Premise((LEAK,))
_BY_NEEDLE = Premise(unless=("lamp_only",))
_BY_ELECTRIC_NEEDLE = Premise(unless=("lamp_only", "direct_gauge"))
_WITH_TURBO = Premise((("turbocharged",),))
_WITH_DRY_SUMP = Premise((("dry_sump",),))
_WITH_JETS_PERHAPS = Premise((("diesel", "turbocharged"), (*REBUILT, "just_worked_on")))
_ON_THE_ROAD = Premise((("in_a_vehicle",),))
_IN_A_BOAT = Premise((("in_a_boat",),))
_IN_FROST = Premise((("stood_in_frost",),))
_WATER_COOLED = Premise((("water_cooled",),))
_NEVER = Premise(((),))  #: nobody knows it without having looked for it

PREMISES: dict[str, Premise] = {
    "piston_jets": _WITH_JETS_PERHAPS,
    "tank_foams": _WITH_DRY_SUMP,
    "crank_feed_seal_reused": Premise((("dry_sump",), (*REBUILT, "just_worked_on"))),
    "low_hot_idle_good_speed": Premise((LOW,), (*NEVER_GOOD, "low_at_all_speeds")),
    "rises_just_off_idle": Premise((LOW,), (*NEVER_GOOD, "low_at_all_speeds")),
    "good_cold_low_hot": Premise((LOW,), (*NEVER_GOOD, "low_even_cold", "low_at_all_speeds")),
    "low_at_all_speeds": Premise((LOW,), (*NEVER_GOOD, "low_hot_idle_good_speed")),
    "low_even_cold": Premise((LOW,), (*NEVER_GOOD, "good_cold_low_hot")),
    "falls_as_revs_rise": GOOD_AT_TIMES,
    "capped_low": GOOD_AT_TIMES,
    "sags_as_oil_heats": GOOD_AT_TIMES,
    "goes_after_minutes": COMES_AND_GOES,
    "fades_at_speed_back_after_rest": COMES_AND_GOES,
    "loss_is_passing": COMES_AND_GOES,
    "returns_the_same_way": COMES_AND_GOES,
    "back_when_slowed": COMES_AND_GOES,
    "no_pattern_to_it": COMES_AND_GOES,
    "low_only_when_level_low": COMES_AND_GOES,
    "top_up_cures_for_a_while": _BROUGHT_UP,
    "thicker_oil_helped": _BROUGHT_UP,
    "oil_not_checked_long": Premise((), _NEVER_RAN),
    "oil_used_fast": Premise((), _NEVER_RAN),
    "worse_in_the_wet": COMES_AND_GOES,
    "falls_in_a_manoeuvre": Premise((), (*NEVER_GOOD, "stationary")),
    "raced_or_heeled": Premise((), ("stationary",)),
    "level_read_wrongly": Premise((), ("stationary",)),
    "grows_worse": Premise((TROUBLE,), ("long_unchanged", *NEVER_RAN_WELL)),
    "declined_over_months": Premise((TROUBLE,), ("fell_suddenly", *REBUILT)),
    "long_unchanged": Premise((TROUBLE,), ("fell_suddenly", "declined_over_months", *REBUILT)),
    "fell_suddenly": Premise((TROUBLE,), ("declined_over_months", "long_unchanged", *REBUILT)),
    "sank_while_running": Premise((TROUBLE,), ("fell_suddenly", *NEVER_RAN_WELL)),
    "stepped_down_and_stayed": Premise((LOW,), (*NEVER_GOOD, *NEVER_RAN_WELL)),
    "pressure_lost": Premise((TROUBLE,), ("none_from_first_start", "low_from_first_start")),
    "slow_after_standing": Premise((), NEVER_GOOD),
    "ten_seconds_or_more": Premise((), NEVER_GOOD),
    "gone_at_the_next_start": Premise(((ZERO, "direct_gauge_zero"),), ("none_from_first_start",)),
    "flickers_only_at_speed": Premise((UNSTEADY,)),
    "flickers_only_at_hot_idle": Premise((UNSTEADY,)),
    "unsteadier_with_revs": Premise((UNSTEADY,)),
    "gauge_reads_low": Premise((), (ZERO, "gauge_reads_high", "lamp_only")),
    "gauge_reads_high": Premise((), (*_NOT_HIGH, "lamp_only")),
    "climbs_past_setting": Premise((), (*_NOT_HIGH, "lamp_only")),
    "more_than_it_can_make": Premise((), (*_NOT_HIGH, "lamp_only")),
    "high_from_first_start": Premise((REBUILT, ("gauge_reads_high",))),
    "low_first_minutes_then_good": _ON_A_NEW_BUILD,
    "low_from_first_start": Premise((REBUILT, LOW)),
    "none_from_first_start": Premise((WORKED_ON, (ZERO, "direct_gauge_zero"))),
    "clearances_built_wide": _ON_A_NEW_BUILD,
    "clearances_never_measured": _ON_A_NEW_BUILD,
    "bearings_failed_again": Premise((REBUILT, DAMAGE)),
    "something_missed_after_work": _AFTER_WORK,
    "oil_line_was_disturbed": _AFTER_WORK,
    "changed_with_grade": Premise((("oil_just_changed", "changed_with_oil_change"),)),
    "high_volume_pump_fitted": _AFTER_WORK,
    "unbranded_pump": _AFTER_WORK,
    "sealant_used_freely": _AFTER_WORK,
    "started_unprimed": _ON_A_NEW_BUILD,
    "plugs_counted_in": _WITH_THE_PLUGS_OUT,
    "plugs_not_counted": _WITH_THE_PLUGS_OUT,
    "plugs_fitted_by_others": _WITH_THE_PLUGS_OUT,
    "old_seals_reused": _ON_THE_SUCTION_SIDE,
    "gauges_at_two_stations": _WITH_TWO_INSTRUMENTS,
    "one_sender_for_two_gauges": _WITH_TWO_INSTRUMENTS,
    "debris_seen_before": _NEVER,
    "noise_with_pressure_loss": Premise((("bearing_knock", "lifters_clatter", "pump_noise"),)),
    "nothing_warned": Premise((DAMAGE,)),
    "locked_then_freed": Premise((("engine_seized",),)),
    "ran_on_without_pressure": Premise(((ZERO, "lamp_comes_on", "pressure_lost"),)),
    "ran_long_without_distress": Premise(((ZERO, "lamp_comes_on"),)),
    "lifters_quiet": Premise((("hydraulic_lifters",), ("gauge_reads_low",)), ("lifters_clatter",)),
    "lifters_clatter": Premise((), ("overhead_cam", "lifters_quiet")),
    "clatters_only_at_high_revs": Premise((("hydraulic_lifters",),), ("lifters_clatter",)),
    "timing_cover_rattles": Premise((("chain_tensioners", "overhead_cam"),)),
    "turbo_shrieks": _WITH_TURBO,
    "turbo_failed": _WITH_TURBO,
    "wet_sumps": _WITH_DRY_SUMP,
    "no_return_to_tank": _WITH_DRY_SUMP,
    "oil_in_the_bilge": _IN_A_BOAT,
    "oil_overboard": _IN_A_BOAT,
    "oil_on_bodywork": _ON_THE_ROAD,
    "oil_trail_behind": _ON_THE_ROAD,
    "falls_with_clutch": _ON_THE_ROAD,
    "rises_with_clutch": _ON_THE_ROAD,
    "leaks_only_running": _BY_LEAK,
    "several_seals_at_once": _BY_LEAK,
    "oil_caught_fire": _BY_LEAK,
    "oil_lost_only_in_frost": _IN_FROST,
    "pressure_back_after_thaw": _IN_FROST,
    "white_plume": _WATER_COOLED,
    "sweet_smell": _WATER_COOLED,
    "coolant_level_falling": _WATER_COOLED,
    "slow_needle": _BY_NEEDLE,
    STUCK: Premise((), ("lamp_only", ZERO, "needle_flickers")),
    "needle_off_zero_at_rest": Premise((), ("lamp_only", ZERO)),
    "needle_steps_at_once": _BY_ELECTRIC_NEEDLE,
    "needle_follows_loads": _BY_ELECTRIC_NEEDLE,
    "other_gauges_also_wrong": _BY_ELECTRIC_NEEDLE,
    "lamp_slow_to_go_out": Premise((), NEVER_GOOD),
    "engine_runs_normally": Premise((), DAMAGE),
    "will_not_start": Premise((), (*DAMAGE, "engine_runs_normally")),
    "filter_burst": Premise((), ("no_oil_filter",)),
    "filter_not_listed": Premise((), ("no_oil_filter",)),
    "oil_fed_device_failed_first": Premise((DAMAGE,)),
    "maker_calls_it_normal": Premise((TROUBLE,)),
    "known_for_model": Premise((TROUBLE,)),
    "several_alike": Premise((TROUBLE,)),
}
#: trials that a rebuild has made itself, by id: nobody tries them on an engine just built
PART_OF_A_REBUILD = frozenset(
    [
        *("engine_rebuilt", "stripped_and_cleaned", "new_bearings", "new_main_bearings"),
        *("new_rod_bearings", "new_cam_bearings", "crank_reground", "line_bored"),
        *("gallery_plugs_fitted", "galleries_cleaned", "gallery_seals_renewed", "bolts_tightened"),
        *("timing_gear_renewed", "new_lifters", "new_tensioner", "rocker_gear_renewed"),
    ]
)
_CRANK_AND_BEARINGS = frozenset(
    ["new_bearings", "new_main_bearings", "new_rod_bearings", "crank_reground", "line_bored"]
)
#: what was done already where these were worked on before it began, by area: nobody tried it since
DONE_WITH: dict[str, frozenset[str]] = {
    "whole_engine": PART_OF_A_REBUILD,
    **dict.fromkeys(("machine_shop", "bearings"), _CRANK_AND_BEARINGS),
    "oil_pump": frozenset(["new_pump", "pump_rebuilt", "pump_refitted"]),
    "relief_valve": frozenset(["new_relief_valve", "relief_cleaned"]),
    "oil_cooler_or_lines": frozenset(["cooler_cleaned", "oil_line_renewed"]),
    "oil_change": frozenset(["right_oil", "new_filter"]),
    "filter_change": frozenset(["new_filter"]),
    "pickup": frozenset(["new_pickup", "pickup_cleaned"]),
    "sump": frozenset(["pickup_cleaned"]),
}
