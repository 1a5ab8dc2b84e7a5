"""Words that together name a finding of gauge, sender, lamp or wiring, in whatever order they stand."""

from __future__ import annotations

_GAUGE = "gauge|gage|guage|needle|pointer|dial|clock"
_LAMP = "light|lamp|bulb|buzzer|alarm|warning"
_SENDER = "sender|sensor|sending-unit|sending_unit|switch|transmitter|transducer|sendor"
_WIRE = "wire|lead|wiring|cable|loom|harness"
_PLUG = "connector|plug|terminal|connection|spade|contact|push-on"
_TEST = (
    "mechanical|test|direct|master|manual|calibrated|known-good|trusted|second_gauge|mech|capillary"
)
_PANEL = "dash|panel|factory|stock|original|cluster|instrument|electric|electrical|mine"
_OUT = "off|unplugged|disconnected|pulled|removed|hanging|unhooked|detached"
_GROUNDED = "ground|grounded|grounding|earth|earthed|earthing|shorted_to|body|chassis"
_STILL = (
    "nothing|no_movement|stayed|sat|sits|dead|unmoved|no_change|no_response|no_reaction|@not_move|@not_moving|"
    "@not_budge|@not_swing|@not_react|@not_respond|@not_twitch"
)
_SWINGS = "swing|swings|swung|full|max|maximum|pegged|pegs|over|top|off_the_clock|hard_over|to_h|goes_over|right_over|to_full|to_the_stop"
_CRANK = "crank|cranked|cranking|spun|spinning|starter|turned_over|cranks|turned_the_engine|turning_the_engine|turned_it_over"
_NO_OIL = "no_oil|nothing|@not_a_drop|dry|not_a_drop|no_drop|not_a_dribble|not_one_drop|no_flow"
#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_INSTRUMENT: dict[str, tuple[str, ...]] = {
    "lamp_on_with_wire_off": (
        f"{_LAMP} & {_WIRE}|{_SENDER}|{_PLUG} & {_OUT} & still_lit|still_on|stays_on|stayed_on|still_glows|@not_go_out|"
        "remains_on|remained_on|stays_lit|still_burning|still_comes_on|on_all_the_time|is_still - it_went_off|it_went_out|it_goes_out|it_goes_off|went_out|goes_out",
    ),
    "needle_ignores_lead_test": (
        f"{_WIRE}|{_SENDER} & {_GROUNDED} & {_GAUGE} & {_STILL}",
        f"{_WIRE}|{_SENDER} + =grounded|=grounding|=earthed|=earthing|touched_to_ground|to_ground|to_earth & {_STILL} - ohms|pressure",
    ),
    "wire_open_or_shorted": (
        f"{_WIRE} + open_circuit|open-circuit|no_continuity|dead_short|=infinite",
        f"no_continuity|@not_continuity + {_WIRE}|{_SENDER}|{_GAUGE}",
        f"{_SENDER}|lamp|light|alarm & wire|lead & is_grounded|is_earthed|grounded_somewhere|earthed_somewhere|grounding_out|"
        "earthing_out|grounding_somewhere|shorted_to_ground|shorted_to_earth|shorting_to - jumper|i_grounded|when_i|if_i|no|not",
        f"{_WIRE} + broken_inside|break_in|internal_break|shorting_out|shorting_on|rubbed_through - bearing",
    ),
    "sender_ohms_high": (
        f"{_SENDER} + open_circuit|infinite|infinity|off_the_scale|over_limit|too_many - {_WIRE}|engine_off_ok",
        f"{_SENDER} + ohm|ohms|resistance + high|too|way|more|infinite|sky|open",
    ),
    "sender_ohms_low": (
        f"{_SENDER} & dead_short|short_circuit|shorted_inside|shorted_internally|short_to_case|shorted - {_WIRE}",
        f"{_SENDER} + ohm|ohms|resistance + low|zero|nil|no",
    ),
    "gauge_supply_wrong": (
        f"volts|voltage|volt + {_GAUGE}|dials|feed|dash|supply + only|instead|low|no|@not|unsteady|dropping",
        "stabiliser|stabilizer|regulator|instrument_voltage + packed|dead|failed|faulty|bad|stuck|duff|broken|wrong|gone "
        "- oil_pressure|relief|valve|spring|plunger",
        f"no_feed|no_power|no_supply|no_voltage|no_volts + {_GAUGE}|dials|dash|instruments",
    ),
    "gauge_dead_on_known_signal": (
        f"{_GAUGE} & known|resistor|potentiometer|pot|simulator|decade & dead|wrong|nothing|@not_move|no_movement|stuck|"
        "zero|still",
        f"{_GAUGE} + own_terminals|signal_wire|at_its_terminals & nothing|dead|wrong|@not_move",
    ),
    "other_gauge_reads_right": (
        f"{_GAUGE} & another|spare|different|other|swapped & where_mine|where_the_old|reads_right|reads_correctly|"
        "reads_properly|reads_fine|read_fine|read_right|reads_normal|in_its_place|in_place_of - test|mechanical|sender",
    ),
    "gauge_damaged": (
        "gauge|glass|dial|pointer|needle|instrument + misted|fogged|steamed|condensation|cracked_glass|bent|smashed|"
        "full_of_water|dented - sump|pan|valve|line|pipe|float|oil",
    ),
    "panel_off_by_constant": (
        f"{_PANEL} & {_TEST} & all_the_way|throughout|everywhere|constant|consistently|across_the_range|at_every|same_amount|"
        "all_through|right_through|up_the_range|up_the_scale|whatever_the",
    ),
    "panel_half_or_double": (
        f"{_PANEL}|{_GAUGE} & {_TEST} & half|twice|double",
        f"{_PANEL} + {_GAUGE} + exactly_half|half_of|twice_what|double_what|twice_the_real|half_the_real",
    ),
    "panel_reads_too_high": (
        f"{_PANEL} & {_TEST} & optimistic|over_reads|overreads|too_high|flattering|panel_higher|dash_higher|higher_than_the_mechanical|higher_than_the_test|way_higher",
    ),
    "panel_reads_too_low": (
        f"{_PANEL} & {_TEST} & pessimistic|under_reads|underreads|too_low|reads_low|lower_than",
    ),
    "sender_wrong_on_air": (
        f"{_SENDER} & air|hand_pump|compressor|shop_air|bench & nothing|dead|wrong|no_change|no_response|@not_move|"
        "no_reading|all_over|zero - lamp|opens",
    ),
    "switch_opens_wrong": (
        "switch & should|supposed|spec|meant|instead & open|opens|closes|close|operates|switches|makes|trips & @pressure|@number",
        "switch & air|hand_pump|bench|known_pressure|gauge & @not_open|@not_close|@not_switch|never_opens|never_closes|"
        "opens_at|closes_at|stays_closed|stays_open",
        "pressure_switch|oil_switch|pressure-switch + faulty|dud|duff|defective|at_fault|bad|dead|u/s",
    ),
    "no_oil_at_open_port": (
        f"loosened|cracked|undid|slackened|opened|undone & union|banjo|fitting|plug|pipe & {_CRANK}|spun|turned & not_a_drop|nothing|no_oil|dry|zilch - stick|dipstick|gauge_end|leak|leaks",
        f"{_SENDER}|port|tapping & out|removed|open|off|unscrewed & {_CRANK} & {_NO_OIL}",
        f"port|sender_hole|switch_hole|tapping & {_CRANK} & {_NO_OIL}",
    ),
    "gauge_line_sludged": (
        "gauge_end|at_the_gauge|gauge_side|end_of_the_line & dribble|dribbles|trickle|trickles|ooze|oozes|hardly|barely & block_end|block|engine_end|other_end & squirts|gushes|spurts|squirt|gush|plenty|jets - union_leaks|leak|leaks",
    ),
    "no_oil_at_line_end": (
        "line|pipe|tube|capillary + off|undone|disconnected & gauge_end|at_the_gauge & nothing|=no|=not|=dry|dribble|hardly|barely & cranked|cranking|running|block|comes|spun|starter - filter|sender|cooler",
        f"line|pipe|tube & gauge|dash|capillary & {_CRANK} & {_NO_OIL} - sender|filter",
    ),
    "test_gauge_doubtful": (
        "test_gauge|test_gauges|mechanical_gauges|direct_gauges|second_test & @not_agree|disagree|"
        "differ|different|contradict|@not_match - ports",
    ),
    "tachometer_wrong": (
        "tach|tacho|tachometer|rev_counter|rev-counter + wrong|high|more|fast|inaccurate|optimistic|out|over",
    ),
    "sender_not_for_gauge": (
        f"{_SENDER} + wrong_one|wrong_type|wrong_part|wrong_range|off_another|from_another|for_another|different_range|"
        "mismatched|mismatch|wrong_ohm|@not_match|not_the_right|for_a_different|wrong_resistance",
        f"{_SENDER} & its_for|for_a_fuel|for_fuel|for_air|for_a_turbo|for_a_single|dual_station|single_station",
    ),
    "wire_on_wrong_sender": (
        f"{_WIRE} + water_temp|temp|temperature|wrong_sender|wrong_terminal|wrong_switch|other_sender|wrong_unit|fuel + on|to|onto - burnt|melted|fuse",
    ),
    "no_sender_fitted": (
        "no_sender|no_sensor|no_switch|no_sending + port|hole|fitted|in|there|block",
        "port|hole|tapping + blanked|plugged_off|bolt_in|bung + sender|switch|gauge|sending",
    ),
    "needle_off_zero_at_rest": (
        f"{_GAUGE} & pegged|maxed|full_scale|off_the_scale|off_scale|hard_over|full & even + ignition_off|key_off|engine_off|ignition_is_off|key_is_off|engine_is_off|engine_stopped - fuel|temp|temperature|tank",
        f"{_GAUGE} & key_out|key_off|ignition_off|engine_off|engine_stopped|switched_off|not_running|motor_off|shut_off & "
        "still_shows|still_reads|shows_@number|reads_@number|shows_@pressure|reads_@pressure|sits_at|never_drops|stays_at|off_the_stop - sender_out|at_zero|on_zero|to_zero",
    ),
    "slow_needle": (
        f"{_GAUGE} + lazy|sluggish|lags|takes_its_time|takes_a_while|slow_to + switch_off|shut|stop|stopped|"
        "drop|dropping|respond|react|move",
        f"{_GAUGE} + creeps|slowly + switch_off|shut|stop|stopped|respond|react|move",
    ),
    "needle_follows_loads": (
        "switch_off|turn_off|switched_off|turned_off|off_the|turning_off|switching_off + lights|headlights|fridge|wipers|heater|blower|radio|inverter|autopilot & normal|back_to_normal|goes_up|go_up|comes_up|come_up|back_up|reads_right|reads_normal|come_right|comes_right|recovers|normal_again - engine|ignition|key|parked|stopped|locked|home",
    ),
    "ran_long_without_distress": (
        "ran|run|running|driven|drove|used & month|months|season|weeks|year|years|@distance|@hours & light_on|lamp_on|alarm_on|"
        "like_that|like_this|buzzer_on & no_damage|no_harm|no_problem|no_ill|fine|happy|happily|without - before|until",
    ),
    "tap_frees_needle": (
        f"{_GAUGE}|glass|it + tap|tapped|tapping|=flick|flicked|flicking|thump|knock|rap + jump|jumps|moves|springs|comes|comes_up|wakes|drops|frees|works - bottom_end|end_knock|knock_came|knock_comes|came_on|comes_on|bearing|engine",
        "tap|tapped|tapping|=flick|flicked|flicking|thump|thumped|knock|rap|bang + glass|gauge|dash|panel|dashboard|instrument & sprang|springs|jumped|jumps|dropped|drops|came_up|comes_up|came_back|comes_back|wakes|woke|to_life|moves|moved|fell|falls|frees - no|not|nothing|brake|bump|clutch|sender",
    ),
    "gauge_line_leaking": (
        "drip|drips|dripping|leak|leaks|leaking|weeping|weeps & oil_pipe|copper_pipe|pipe|capillary|oil_line & to_the_gauge|to_the_oil_gauge|to_the_oil_pressure_gauge|to_the_pressure_gauge|to_the_dash_gauge - no|not|fuel|water|dry|coolant|sender|turbo",
        "gauge_line|gauge_pipe|gauge_tube|capillary|gauge_hose|gauge_union + leak|leaking|dripping|weeping|split|burst|chafed|cracked|wet|let_go",
    ),
    "sender_port_clogged": (
        f"{_SENDER} + hole|port|orifice|passage|drilling|restrictor|under|behind + sludge|gunk|blocked|plugged|clogged|bunged|choked|carbon",
    ),
    "oil_behind_panel": (
        "oil|oily + carpet|footwell|trousers|trouser_leg|jeans|my_feet|under_the_dash|behind_the_dash|kick_panel|floor_mat|my_shoe|my_shoes - no|not|smoke|fuel",
        "oil & behind|under|carpet|footwell|inside|feet|cabin|cockpit & dash|panel|dashboard|carpet|footwell|feet|instrument - line_to",
    ),
    "sender_leaks_oil": (
        f"oil + all_over|covering|in|inside + plug|connector|spade|terminal & {_SENDER} - hole|port|crank|screwed|no_oil|drain|sump|gallery|spark",
        f"{_SENDER} + oil + leak|leaking|weeping|seeping|dripping|through|out_of|from|inside|soaked|wet|pouring - out_and|hole|port|crank|cranked|screwed|no_oil",
    ),
    "second_instrument_disagrees": (
        f"gauge + zero|0|nothing|low|bottom & {_LAMP} & out_as|goes_out|went_out|is_out|stays_out|stays_off|off|@not_on|@not_lit|never_came|@not_come - key",
    ),
    "other_gauges_also_wrong": (
        "=other|=all|=every|=rest|temp_gauge|fuel_gauge|temperature_gauge + =gauges|dials|instruments|clocks|too|also|as_well + dead|died|wrong|haywire|too|also|same_time|at_once|dropped|quit - test|mechanical|fine|normal|read|ok|good|work|working",
    ),
    "lamp_dead_with_key_on": (
        f"{_LAMP} & key|ignition & @not_light|@not_come_on|@not_lit|@not_glow|@not_work|never_lights|never_comes|no_longer_lights|stays_dark|fails_to - still|go_out",
    ),
    "wiggle_moves_needle": (
        f"wiggle|wiggled|wiggling|waggled|jiggled|tugged & {_WIRE}|{_PLUG} & did_it_again|it_did_it|does_it_again|happened_again|came_back_again|it_came_back|set_it_off|sets_it_off|it_does_it - not|@not|nothing|no",
    ),
}
#: the same when it is not there
TOGETHER_INSTRUMENT_ABSENT: dict[str, tuple[str, ...]] = {
    "wire_open_or_shorted": (
        f"continuity & {_WIRE}|{_SENDER}|{_GAUGE} & good|perfect|fine|ok|right_through|all_the_way - no|@not",
        "wire|wiring|lead + tests|tested|checks|checked|meters|metered|rings_out + good|ok|fine|through",
    ),
    "no_oil_at_open_port": (
        f"{_SENDER}|port & out|removed|open|unscrewed & {_CRANK} & squirt|squirted|spurted|gushed|strong|plenty|good_flow|came_out|shot_out|pumped_out",
    ),
    "needle_ignores_lead_test": (
        f"{_WIRE} & {_GROUNDED}|block|touched & {_GAUGE} & {_SWINGS} - sender_in",
        f"unplug|unplugged|unplugging|disconnected|disconnecting & {_SENDER}|{_WIRE}|{_PLUG} & {_GAUGE}|it & to_zero|drops|dropped|falls|fell|goes_to|went_to|to_full|pegs - @not|never|nothing|still|stays",
    ),
    "gauge_dead_on_known_signal": (
        f"{_WIRE} & {_GROUNDED}|block|touched & gauge|needle & {_SWINGS} - pressure_gauge",
    ),
    "wiggle_moves_needle": (
        "wiggle|wiggled|wiggling|waggled|jiggled|jiggling|moved_the|moving_the|tugged|tugging|flexed|shook & wire|wires|wiring|plug|connector|harness|loom|lead|leads|terminal & no_change|no_difference|no_effect|nothing|@not_change|@not_make|@not_affect|@not_move|no_reaction",
    ),
    "tap_frees_needle": (
        "tap|tapped|tapping|flicked|thumped & glass|gauge|dash|panel|needle & no_change|no_difference|no_effect|nothing|@not_change|@not_make|@not_move|no_reaction - heavily|heavy|loudly|badly|engine|knocks",
    ),
    "lamp_on_with_wire_off": (
        f"{_WIRE}|{_SENDER}|{_PLUG} & wire_off|lead_off|plug_off|connector_off|unplug|unplugged|unplugging|disconnect|disconnected|disconnecting|pull_the|pulled|pulling|removed|took_off & light_went_out|light_goes_out|lamp_went_out|lamp_goes_out|light_out|puts_the_light_out|and_it_went_off|and_it_went_out|and_it_goes_out|and_it_goes_off|stops_the_alarm|stopped_the_alarm|silences|silenced|alarm_stops|alarm_stopped|alarm_went_off_and|buzzer_stops|buzzer_stopped|kills_the_alarm|kills_the_light - not|@not|still|sender_in|new_sender|new_switch",
    ),
}
