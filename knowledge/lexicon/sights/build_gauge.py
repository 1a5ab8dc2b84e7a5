"""Words for the instruments an engine has and where they take their pressure."""

from __future__ import annotations

_GAUGE = "gauge|dial|clock|needle|instrument|meter|manometer|dash_gauge|oil_gauge"
_FAULT = "faulty|bad|broken|dead|leak|leaks|leaking|kinked|kink|blocked|broke|new|replaced|swapped|changed|borrowed|temporary|test|shop|tested|corroded|chafed|disconnected|unplugged|pulled|off"
_SENDER = "sender|sensor|transmitter|sending_unit|sender_unit|transducer|switch|sender_port|pressure_switch|gauge_takeoff|take-off|takeoff|tapping|gauge|pickup_point|pressure_tap|tee"
#: the finding, by words that stand together when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "electric_gauge": (
        f"{_GAUGE} & wire|sender|sensor|sending_unit|sender_unit|transmitter|electric|elec|electrical & block|engine|works|off|one_wire|sender_unit|has|no_pipe|going|wire_to|is|w/|type - {_FAULT}|mechanical|copper|capillary|pipe_to|tube|reads|read|zero|temperature|fuel|loose|earth|wires_off|grounded|ground|shorted|wire_off|wrong|no_wires|says|agrees|confirms|both|two|not_electric|low|showing|shows|idiot|another|psi|mismatched|match|same",
        "gauge|instrument|dash_instrument|needle|dial|op_gauge + works_off|sender_unit|sending_unit|transmitter|w/_sender|electric|elec|driven_by_a_sender - mechanical|faulty|bad|new|dead|replaced|fuel|reads|zero|not",
    ),
    "direct_gauge": (
        f"copper|nylon|capillary|small_bore|thin_pipe|thin_line|little_hose|thin_tube|plastic_line|copper_line|nylon_tube|copper_pipe|oil_line|real_oil|tiny_pipe|small_pipe|pipe|little_pipe|narrow_tube + {_GAUGE}|dash|dashboard|panel + up|right|straight|feed|goes|runs|going|no_wires|to_the_dial|behind|fed|real_oil - {_FAULT}|sump|pan|turbo|filter|head|wire_to|temperature|burst|wet|dripping|no_pipe|sender_on|fuel|sludge|air|put",
        f"{_GAUGE} + mechanical|direct|bourdon|direct_reading|direct-reading + old|has|is|type|sort|capillary|fed|tube|real - {_FAULT}|reads|shows|says|psi|put|fit|fitted|screwed|confirmed|with_a|on_it|hung|check|read|agrees|sender",
    ),
    "lamp_only": (
        "only|just|all|nothing_but|all_ive_got|nothing_else|apart_from + idiot_light|warning_light|red_lamp|warning_lamp|idiot_lamp|oil_light|red_light|oil_lamp|buzzer|lamp|light|telltale|tell-tale + dash|no_gauge|no_instrument|only|got|just|have|nothing_to_read|there_is|it_has|has|fit|instrument - at_idle|flickers|flicker|came|comes|come|goes|on_at|hot|when|when_hot|start|go|load|rumble|knock|flash|glow|lit|seconds|stays|low|on_when|coolant|check_engine|bulb|switch|sender|blew|flickering",
        "no_gauge|no_instrument|no_dial|nothing_to_read|without_gauge|hasnt_got_a_gauge|no_needle|not_a_gauge & lamp|light|idiot|buzzer|warning_light|telltale - sender|mechanical|on_it|hooked",
    ),
    "gauges_at_two_stations": (
        f"two_helms|both_helms|both_stations|two_stations|dual_helm|dual_station|dual-station|two_steering|each_helm|twin_helm|upper_and_lower|flybridge|fly_bridge|topsides|pilothouse|wheelhouse|upper_helm|lower_helm|flying_bridge|upper_station|bridge + {_GAUGE}|own_oil|gauges|has_one|got_one|one_in + each|both|another|as_well|also|inside|below|own|two|second|one_up|and - agree|disagree|reads|read|shows|psi|differ|sender|same_wire|higher|lower_than|share|@pressure|jumped",
        "two_steering_places|two_helms|dual_helm|two_stations|two_wheels|both_helms|twin_stations|inside_and_outside_helm|upper_helm & gauge|instrument|meter|oil_meter|dial|gauges|each - same_sender|one_sender|same_wire|share|reads|psi",
    ),
    "one_sender_for_two_gauges": (
        "gauges|needles|dials|manometers|both_gauges|two_gauges|both_helms|dial|upper_and_lower|both_stations|helm_gauges|instruments + same|share|one|single|common|same_wire|jumped_off|same_sender|one_sender|dual_station|daisy|parallel + sender|sensor|transmitter|wire|sending_unit|sender_unit|dual-station - own|each_has|fuel|temperature|one_wire|test|swapped|shorted|loose|psi|reading|same_reading|both_read|broken|new|same_on_both",
        "one|single|same|common|dual-station|dual_station + sender|sensor|transmitter|sending_unit + both|two|upper|lower|helm|flybridge|stations|manometers|two_gauges - own|each|fuel|test|swapped|two_senders|psi|engines|pins|terminals|wires",
    ),
    "gauge_like_a_lamp": (
        f"{_GAUGE}|it|factory_gauge|stock_gauge + dummy|pseudo|fake|yes_or_no|switch_driven|resistor|on-off|on_or_off|glorified|dumb|not_a_real_gauge|idiot_gauge|simulated|switch-driven|isnt_real|not_real|fools|normalised|resistor_on_a_switch|dead_centre_whatever|middle_whatever|just_goes_to_the_middle|always_in_the_middle|half_whatever|buffered|works_like_a_light|acts_like_a_light|on/off + gauge|switch|middle|driven|factory|so|needle|centre|real|dash|only|just|light - mechanical|mechanical_gauge_on|earth|ballast|stuck|test_light|sender_resistor|temperature|fuel",
        "gauge|oe_gauge|factory_gauge & pseudo|dummy|switch_driven|switch-driven|fake|on-off|on/off|only_two_positions - mechanical|stuck|faulty|test",
    ),
    "sender_before_filter": (
        f"{_SENDER}|it + before_the_filter|before_filter|ahead_of_the_filter|upstream_of_the_filter|unfiltered_side|dirty_side|between_the_pump_and_the_filter|between_pump_and_filter|between_the_pump_and_the_element|before_the_oil_filter|before_the_element|pump_side_of_the_filter|inlet_side_of_the_filter|in_front_of_the_filter|oil_arrives_to_filter|upstream_of_filter|before_oil_arrives|before_it_gets_to_the_filter|before_the_oil_gets_to_the_filter - not|after|second|both|fuel|psi|high|reads|read|shows|@pressure|and_after|put|moved|gauge_before|mechanical_gauge",
        "sender_port|sender|switch|gauge_port|tapping|pickup_point|pressure_port|takeoff & unfiltered|unfiltered_side|pump_side|before_filter|between_the_pump_and_the_element|pre-filter|between_pump_and - both|psi|not|after",
    ),
    "sender_behind_filter": (
        f"{_SENDER}|needle + main_gallery|after_the_filter|past_the_filter|downstream_of_the_filter|clean_side|filtered_side|behind_the_filter|in_the_gallery|on_the_gallery|oil_gallery|passage_that_feeds_the_bearings|feeds_the_bearings|been_through_the_element|been_through_the_filter|through_the_filter|after_the_element|after_filter|been_filtered|main_oil_gallery|outlet_side_of_the_filter|post-filter|post_filter + screw|is|located|reads_off|off|take|sit|port|tap|in|shows_whats_left|tee - not|before|second|both|fuel|psi|low|@pressure|plug|plugs|put|moved|mechanical|zero|blocked|teed_a|test|checked|head|dropped|loss|drop",
        "sender_port|sender|gauge_port|tapping|pressure_port|switch_port & main_gallery|filtered_side|gallery|post-filter|after_filter|clean_side - both|psi|not|before|leak|plug|blocked|swapped|moved|mechanical|test|gauge_at|new|faulty",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "electric_gauge": (
        f"{_GAUGE} & no_wiring|no_wire|no_wires|not_electric|isnt_electric|no_sender|@not_electric & pipe|tube|gauge|line|fed|mechanical|dial - reads|zero|psi|power|earth|loose|test|broken|off",
    ),
    "lamp_only": (
        "proper|real|actual|full|good + dial|gauge|oil_gauge|pressure_gauge|clock + dash|there_is|theres|has|got|have|fit - pressure|psi|no|not|low|put|reads|zero|mechanical|connected|test|borrowed|screwed|hooked|shows|need|light_on|@pressure",
    ),
    "one_sender_for_two_gauges": (
        "each|every|both|two|separate|own + gauge|helm|station|dial|helm_gauge + own_sender|its_own_sender|separate_sender|separate_senders|own_transmitter|own_sensor|two_senders|their_own_senders|own_sending_unit - psi|faulty|replaced|new",
    ),
    "sender_behind_filter": (
        "teed|tee|sender|gauge|switch|sensor|it|tap + ahead_of_the_filter|before_the_filter|upstream_of_the_filter|before_the_oil_filter - not|both|psi|reads|shows|@pressure|second|mechanical|fuel",
    ),
    "gauges_at_two_stations": (
        "only_one|one_helm|single_helm|just_the_one|one_station + gauge|helm|station|oil_gauge - reads|works|dead|of",
    ),
}
