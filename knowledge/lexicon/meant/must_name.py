"""What a text must name somewhere, so that "it" and "they" of a finding are what it is about."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

_OF_OIL = _set("oil oils oily dipstick stick sump pan")
_OF_SENDERS = _set(
    "sender senders sensor sensors switch unit sending-unit sending transducer transmitter gauge light lamp "
    "oil pressure"
)
_OF_LEVEL = _OF_OIL | _set(
    "level lifters drain drains litre litres liter liters quart quarts pint pints gallon filler filled "
    "@volume overfilled poured miles seconds minutes road ground floor stream drop guts motorway contents sumpful"
)

_OF_SENDERS = _set(
    "sender senders sensor sensors switch unit sending-unit sending transducer transmitter gauge light lamp "
    "oil pressure"
)
_OF_LEVEL = _OF_OIL | _set(
    "level lifters drain drains litre litres liter liters quart quarts pint pints gallon filler filled "
    "@volume overfilled poured miles seconds minutes road ground floor stream drop guts motorway contents sumpful"
)
#: of these one must be named in the text: "it was bad" is of the sender only where one is named
NEEDS: dict[str, frozenset[str]] = {
    "sender_wrong_on_air": _OF_SENDERS,
    "oil_loss_fast": _OF_LEVEL
    | _set("hose line filter cooler plug seal gasket leak leaks leaking"),
    "plugs_not_counted": _set("plug plugs galley gallery"),
    "level_high": _OF_LEVEL,
    "level_risen": _OF_LEVEL,
    "level_slightly_high": _OF_LEVEL,
    "level_falls_standing": _OF_LEVEL,
    "too_much_poured_in": _OF_LEVEL,
    "drained_volume_low": _OF_LEVEL,
    "oil_used_fast": _OF_LEVEL | _set("topping topped top"),
    "no_return_to_tank": _OF_LEVEL | _set("tank return returns returning scavenge"),
    "several_seals_at_once": _OF_LEVEL
    | _set("seal seals gasket gaskets leak leaks leaking leaked"),
    "filter_drop_high": _set("filter filters pressure psi gauge bar"),
    "bearings_failed_again": _set(
        "bearing bearings shell shells journal rod rods main mains big-end ends insert inserts end "
        "crank bottom knock knocking engine motor seized"
    ),
    "one_bearing_wiped": _set(
        "bearing bearings shell shells journal journals rod rods main mains big-end insert inserts end"
    ),
    "other_gauges_also_wrong": _set(
        "gauge gauges instrument instruments dial dials needle needles tach tacho tachometer speedo "
        "speedometer ammeter voltmeter electrical electrics lights lamps clocks meter meters counter "
        "windows indicators cluster reading readings"
    ),
    "oil_slow_to_return": _OF_LEVEL,
    "level_correct": _OF_LEVEL | _set("full topped tank glass window dip mark"),
    "drained_volume_high": _OF_LEVEL | _set("drained"),
    "oil_not_checked_long": _OF_LEVEL | _set("dip dipped checked check bonnet hood"),
    "piece_found_inside": _OF_LEVEL
    | _set(
        "engine motor pump pickup strainer screen filter crankcase cover gallery valve block case rocker "
        "cam crank bearing pipe port"
    ),
}
#: these are of the pressure, or of what somebody does who sees it low: it, or its gauge or lamp, must be
#: named, or one of the words beside
OF_THE_PRESSURE: dict[str, frozenset[str]] = {
    **dict.fromkeys(
        ("ran_on_without_pressure", "ran_long_without_distress"),
        _set("shut killed switched off down engine motor towed dared dare further farther"),
    ),
    "maker_calls_it_normal": _set("dealer dealership maker factory book manual handbook"),
    **dict.fromkeys(
        (
            "long_unchanged",
            "needle_stuck_at_one_value",
            "needle_off_zero_at_rest",
            "several_alike",
            "changed_after_other_work",
            "gone_at_the_next_start",
            "capped_low",
            "falls_as_revs_rise",
            "lamp_slow_to_go_out",
            "low_at_all_speeds",
            "low_first_minutes_then_good",
            "low_only_when_level_low",
            "panel_reads_too_low",
            "right_idle_cured_it",
            "declined_over_months",
            "back_when_slowed",
            "loss_is_passing",
            "returns_the_same_way",
            "fell_suddenly",
            "fades_at_speed_back_after_rest",
            "goes_after_minutes",
            "grows_worse",
            "worse_in_the_wet",
            "ten_seconds_or_more",
            "stepped_down_and_stayed",
        ),
        _set("reads reading readings shows psi dial pegged revs rpm"),
    ),
}
