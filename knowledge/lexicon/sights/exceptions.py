"""Findings that their words name only with exceptions; ids of the book's findings."""

from __future__ import annotations

#: findings that follow from readings and behaviour; their phrases are left to those
LEFT_TO_BEHAVIOUR = frozenset(
    [
        "gauge_reads_low",
        "gauge_reads_zero",
        "gauge_reads_high",
        "needle_flickers",
        "lamp_comes_on",
        "sank_while_running",
        "declined_over_months",
        "flickers_only_at_speed",
        "flickers_only_at_hot_idle",
        "low_hot_idle_good_speed",
        "rises_just_off_idle",
        "good_cold_low_hot",
        "low_at_all_speeds",
        "low_even_cold",
        "falls_as_revs_rise",
        "capped_low",
        "never_reaches_setting_cold",
        "climbs_past_setting",
        "sags_as_oil_heats",
        "fades_at_speed_back_after_rest",
        "falls_in_a_manoeuvre",
        "slow_after_standing",
        "ten_seconds_or_more",
        "none_from_first_start",
        "low_from_first_start",
        "low_first_minutes_then_good",
        "changed_with_oil_change",
        "changed_with_grade",
        "changed_after_knock",
        "changed_with_new_pump",
        "changed_after_other_work",
        "loss_is_passing",
        "no_pattern_to_it",
        "returns_the_same_way",
        "long_unchanged",
        "grows_worse",
        "pressure_lost",
        "back_when_slowed",
        "goes_after_minutes",
        "low_only_when_level_low",
        "worse_in_the_wet",
        "noise_with_pressure_loss",
        "grinding_noise",
        "squeaking_noise",
        "protection_tripped",
        "general_alarm",
        "engine_runs_rough",
        "falls_with_clutch",
        "will_not_start",
        "bearing_knock",
        "lifters_clatter",
        "rattle_of_unknown_place",
        "high_from_first_start",
        "instrument_just_changed",
        "just_worked_on",
        "gone_at_the_next_start",
        "began_after_revving_hard",
        "fell_suddenly",
        "right_grade_cures",
        "thicker_oil_helped",
        "top_up_cures_for_a_while",
        "drive_partner_stopped",
        "raced_or_heeled",
        "stood_in_frost",
        "oil_very_cold",
        "hot_and_thin",
        "stepped_down_and_stayed",
        "nothing_warned",
        "more_than_it_can_make",
        "several_journals_dry",
        "history_unknown",
        "freshly_rebuilt",
        "oil_just_changed",
        "sump_or_pump_swapped",
        "worked_hard",
    ]
)
#: findings whose phrases in the book are too short to stand for them in a longer text
NOT_BY_THE_BOOK = LEFT_TO_BEHAVIOUR | frozenset(
    [
        "wet_sumps",
        "shells_scratched",
        "needle_steps_at_once",
        "lamp_slow_to_go_out",
        "gauge_dead_on_known_signal",
        "direct_gauge_low",
        "direct_gauge_high",
        "direct_gauge_zero",
        "gauge_line_sludged",
        "gauge_line_leaking",
        "gauge_line_kinked",
        "high_mileage",
        "oil_temperature_high",
        "several_alike",
        "idles_long",
        "foreign_part_fitted",
        "stood_long",
        "oil_grade_too_heavy",
        "oil_used_fast",
        "dipstick_dry",
        "dipstick_not_its_own",
        "oil_loss_fast",
        "level_high",
        "chromium_high",
    ]
)
#: said of a place that is named, they are findings of that place
VAGUE_SIGHTS = frozenset(
    ["oil_seen_outside", "sludge_seen", "glitter_in_oil", "oil_milky", "shells_worn_evenly"]
)
#: after "oil", these make it a name of something else
COMPOUNDS = frozenset(
    [
        "fire",
        "fault",
        "code",
        "shutdown",
        "cutout",
        "trip",
        "alarm",
        "message",
        "pressure",
        "pressures",
        "filter",
        "pump",
        "light",
        "lamp",
        "gauge",
        "temp",
        "temperature",
        "temperatures",
        "change",
        "cooler",
        "line",
        "lines",
        "pan",
        "level",
        "pick",
        "pickup",
        "sender",
        "sending",
        "switch",
        "sensor",
        "cap",
        "drain",
        "analysis",
        "sump",
        "tank",
        "feed",
        "warning",
        "consumption",
        "leak",
        "leaks",
        "seal",
        "galleries",
        "gallery",
        "ways",
        "passages",
        "return",
        "hole",
        "holes",
    ]
)
#: a denial that says nothing: nobody states that these are absent in this way
NEVER_DENIED = frozenset(
    ["level_correct", "engine_runs_normally", "lifters_quiet", "oil_looks_clean", "high_mileage"]
)
#: these say of a noise or lamp all there is to say; what shows is not read a second time
INSTEAD = frozenset(
    [
        "lifters_quiet",
        "engine_runs_normally",
        "lamp_dead_with_key_on",
        "lamp_lit_with_key_off",
        "rises_with_clutch",
        "needle_off_zero_at_rest",
        "tap_frees_needle",
        "wiggle_moves_needle",
        "needle_stuck_at_one_value",
        "turbo_shrieks",
        "timing_cover_rattles",
        "burning_oil_smoke",
        "level_correct",
        "dipstick_low",
        "dipstick_dry",
        "level_risen",
        "blue_smoke",
        "white_plume",
    ]
)
#: what was not done; "not yet measured" says it, and supposes nothing
NOT_DONE = frozenset(["clearances_never_measured"])
#: said of other engines too, or by the maker: that is what they say
OF_OTHERS = frozenset(
    ["known_for_model", "several_alike", "maker_calls_it_normal", "cooling_system_loses_pressure"]
)
#: seen by a garage or a dealer as well as by anybody: no opinion of the cause
SEEN_BY_ANYBODY = frozenset(["dipstick_low", "dipstick_dry", "level_correct", "level_high"])
#: beside a distance in a list: it was driven since then
OF_SERVICE = frozenset(["service", "change", "changed", "since", "ago", "every", "interval"])
#: how a sight is reported, and words by which it is only possible
REPORTED = frozenset(["said", "says", "told", "found", "tells", "claimed", "claims"])
MAY_BE = frozenset(
    ["might", "may", "could", "must", "probably", "possibly", "maybe", "perhaps", "should", "if"]
)
#: oil that leaves the engine, unless it comes out of these
LEAVES_THE_ENGINE = frozenset(["oil_sprayed", "oil_loss_fast", "oil_seen_outside"])
#: oil that runs out by itself, not what somebody pours in
RUNS_OUT = LEAVES_THE_ENGINE | frozenset(
    [
        "filter_seat_leaks",
        "seal_or_gasket_wet",
        "oil_on_the_ground",
        "oil_on_bodywork",
        "rockers_flooded",
    ]
)
INSIDE_THE_ENGINE = frozenset(
    [
        "rocker",
        "rockers",
        "lifter",
        "lifters",
        "tappet",
        "tappets",
        "cam",
        "camshaft",
        "pushrods",
        "bearing",
        "bearings",
        "mains",
        "rods",
        "journals",
        "tensioner",
    ]
)
#: behind them the oil comes out of the engine all the same
ITS_COVERS = frozenset(["cover", "covers", "gasket", "gaskets", "seal", "seals", "box"])
#: seen within one run, so not over months
IN_ONE_RUN = frozenset(["sank_while_running", "goes_after_minutes", "sags_as_oil_heats"])
#: where these are said not to be so, what else the same words say holds as well
BESIDE = frozenset(["engine_runs_normally"])
#: words inside a phrase that make it no such finding: "reads 0 with the key on"
NOT_INSIDE: dict[str, frozenset[str]] = {
    "needle_off_zero_at_rest": frozenset(
        ["0", "zero", "nothing", "nil", "zero psi", "0 psi", "zero bar", "0 bar"]
    ),
    "needle_stuck_at_one_value": frozenset(["0", "zero", "nothing", "0 psi", "0 bar"]),
    "level_risen": frozenset(["warning", "light", "lamp", "alarm", "sensor", "message"]),
    "oil_film_in_coolant": frozenset(["and"]),
    "needle_steps_at_once": frozenset(["back"]),
}
#: shortly behind a sight inside the engine: it was so at another time
AT_ANOTHER_TIME = frozenset(["ago", "seasons"])
#: groups say of these when they are absent; a negation beside their words says nothing
SAID_AS_SUCH = frozenset(
    [
        "burning_oil_smoke",
        "changed_with_oil_change",
        "cooler_left_off",
        "declined_over_months",
        "dipstick_dry",
        "dipstick_low",
        "drain_plug_found_loose",
        "earlier_breakage",
        "engine_banged_or_shook",
        "engine_runs_normally",
        "engine_seized",
        "filler_cap_found_off",
        "filter_found_loose",
        "freshly_rebuilt",
        "fuel_smell",
        "gauge_line_kinked",
        "gone_at_the_next_start",
        "high_mileage",
        "history_unknown",
        "hot_and_thin",
        "known_for_model",
        "lamp_dead_with_key_on",
        "level_correct",
        "level_high",
        "level_risen",
        "maker_calls_it_normal",
        "needle_steps_at_once",
        "no_drive_end_float",
        "nothing_warned",
        "oil_in_the_bilge",
        "oil_line_was_disturbed",
        "oil_loss_fast",
        "oil_milky",
        "oil_not_checked_long",
        "oil_overdue",
        "oil_temperature_high",
        "oil_used_fast",
        "only_small_seeps",
        "raced_or_heeled",
        "ran_on_without_pressure",
        "sags_as_oil_heats",
        "second_instrument_disagrees",
        "sender_wire_off",
        "sender_wrong_on_air",
        "service_neglected",
        "stood_in_frost",
        "stood_long",
        "stopped_with_loss_of_power",
        "switch_opens_wrong",
        "worked_hard",
    ]
)
