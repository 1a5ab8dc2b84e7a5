"""Words for what pressure does with speed and heat, where they name a finding."""

from __future__ import annotations

_NO_MATTER = "however|whatever|regardless|no|irrespective|matter"
_P = "pressure|gauge|needle|psi|reading|it"
_REVS = "=revs|=rpm|=revved|=rev|=revving|=speed|=throttle|=gas|=accelerate|=faster"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "falls_as_revs_rise": (
        "drops|falls|loses|sinks|dips|decreases|lower|less|goes pressure|down|off? when|as|with|the i|you|we|it's|is|more|higher|high|it? =revved|=revs|=rev|=rpm|=rpms",
        "the? =higher|=more|=faster .. revs|rev|rpm|it|i .. the? =lower|=less .. pressure|gauge|it|reads|goes",
    ),
    "capped_low": (
        f"{_P} @not =rise|=rises|=climb|=climbs|=increase|=increases|=move|=change|=improve|=respond any|much|far|further|higher|up|at|all|to? with|when|as|if|under|to .. {_REVS}",
        f"{_P} @not go|goes|come|comes|get|gets any? further|higher|better|more|up with|when|as|if|however|no .. {_REVS}",
        f"{_P} stops|stopped|quits =rising|=climbing|=increasing",
        f"{_P} tops|maxes|topped|maxed|peaks|peaked|plateaus|plateaued|levels|levelled|leveled =out|=off =low|=early|=there",
        "tops|maxes|peaks|plateaus|levels out|off =low|=early",
        "@not|wont|will go|come|get|rise above|past|over|beyond a|some certain pressure|point|figure|value|level",
        f"hardly|barely|scarcely =goes|=go|=rises|=rise|=climbs|=any up|higher|higher? when|with|as|if .. {_REVS}",
        f"{_P} stays|stayed|remains|is|was low|down {_NO_MATTER} .. {_REVS}",
        f"no|little =rise|=increase|=more in? pressure? with|when|as .. {_REVS}",
        "wont|doesnt|never|not|refuses-to|will-not go|goes|went|rise|rises|get|gets|climb|climbs|budge a|one|any hair|bit|pound|psi|needle-width over|above|past|more|higher",
        "stays|stuck|sits|levels|tops|flat out|off? at? @pressure|@number no matter what|how above|after|past|from|beyond that|there|then",
        "stays|stuck|sits|levels|tops|flat out|off? at? @pressure|@number from|above|after|past|beyond there|that|then on|however|whatever|no|up?",
        "@not =rise|=rises|=increase|=increases|=climb|=climbs|=change|=changes|=vary|=respond with|to|above|as|when the? engine? speed|revs|rpm|throttle",
        "no =rise|=increase|=change|=response|=gain with|to|above|off|as speed|revs|rpm|throttle|idle",
    ),
    "never_reaches_setting_cold": (
        "@not reach|reaches|get|gets|make|makes|hit|hits|see|come to? relief|full|blow-off pressure|setting .. cold",
        "even|when =cold .. @not reach|reaches|get|gets|make|makes|hit|hits up? to? relief|full|blow-off pressure|setting",
        "never comes|gets up? to full pressure|relief",
    ),
    "climbs_past_setting": (
        "pressure|gauge|needle keeps|kept|continues going|climbing|rising|to? up? with|as|when .. =revs|=rpm|=revved|=rev|=throttle",
        "climbs|rises|shoots past|over|above|beyond the? relief setting|pressure|valve?",
    ),
    "flickers_only_at_speed": (
        "flickers|flutters|unsteady|wavers|bounces|shakes|jumps|jumpy|dances only|just above|over|at|when|past .. revs|rpm|speed|@rpm|3000|2000|revved|high",
        "steady|fine|rock at|up|to|until idle|tickover|about|3000|@rpm but|then|and flickers|flutters|bounces|shakes|jumps|wavers .. =revs|=speed|=above|=over|=that|=revved",
    ),
    "flickers_only_at_hot_idle": (
        "flickers|flutters|unsteady|wavers|bounces|shakes only|just at|on|when hot|warm idle|tickover|idling?",
        "lamp|light flickers|flickering|flicker|glows|glimmers only|just? at|on|when .. =hot|=warm =idle|=tickover|=idling",
        "flickers|flicker|glimmers|glows at|on|when hot|warm|warmed idle|tickover|idling up? .. out|off|away|gone|stops|steady|fine|clears .. throttle|revs|rev|gas|speed|off|blip|touch",
    ),
    "rises_just_off_idle": (
        "fine|good|normal|ok|right|up|jumps|comes just|straight|back|right|quickly|immediately? off|above idle|tickover",
        "comes|jumps|rises|goes|shoots|springs right|straight|up|back|quickly|soon up|as|with|at the? slightest|touch|blip|least|bit|little|smallest|any of|touch|bit? throttle|gas|revs|pedal",
        "touch|blip|bit|tickle of? the? throttle|gas|revs|pedal .. comes|up|right|back|fine|good|jumps|rises",
    ),
    "low_at_all_speeds": (
        f"{_P} is|was|reads|stays|just? =always low|down",
        "low|down everywhere|throughout the? range|revs|board?",
        "low|down at all|any|every speeds|speed|revs|rpm|rpms",
        f"low|down {_NO_MATTER} .. revs|speed|rpm|temperature",
        "low =all =the =time",
        "low =hot =and|=or =cold",
        "low =cold =and|=or =hot",
        "low at|from idle and|or|to at? speed|cruise|cruising|highway|revs",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "falls_as_revs_rise": (
        "lifts|rises|goes_up|climbs|comes_up|more|up|good_till|good_until|builds & speed|throttle|half_throttle|turns|revs|3500|@rpm|fast|faster & less|sinks|down|drops|falls|goes_down|drops_off|sags|lower|dips|tails & open_it|faster|further|more_turns|wind_it|higher|then|above|past|beyond|harder - never|not|idle|no|cold|hot|minutes|tails_off_never|clutch|light|warm|bend",
        "climbs|rises|goes_up|comes_up|peaks|up_to|good_till|good_until|builds|increases|fine_up_to|good_up_to & @rpm|thousand|2800|3000|3500|4000|2500|certain_speed|mid-range & drops|drops_off|dropping|decays|diminishes|falls|sags|tails_off|falls_away|lower|goes_down|dips|fades|droops|sinks|declines|dies|down_again & more|further|above|wind_it_out|every|beyond|higher|then|past|rev|faster|revs|thereafter|over - never|not|no|idle|hot|cold|slowly|minutes|never_tails|hour|light|lamp|clutch|warm",
        "hold|held|keep|rev|revving|sustained|over|above|past & @rpm|4000|4500|5000|5500|6000 & drops|drop|falls|fall|sags|dips|sinks|tails|down_to|fades - stop_light|stop_lights|traffic_lights|traffic_light|stoplight|red_light|"
        "below|idle|under|cold|off_idle|drops_to_idle|when_i_slow|lift_off|back_off",
        "pressure|it|gauge|needle|drops|falls + drops|falls|lower|goes_down|fall|drop|sinks|less + revs_go_up|as_revs|as_the_revs|with_rpm|with_revs|revs_rise|revs_climb|rpm_goes_up|higher_you_rev|more_you_rev|harder_you_rev|higher_the_revs|as_you_rev|as_rpm|the_faster - rises|up_with|after|back_to_idle|drops_back",
        "higher|more|harder|faster & rev|revs|rpm|spin|go & lower|less|drops|falls|worse & pressure|it|gets|lower|needle - no|not|noise|knock",
        "drops|falls|sags|fades|dips|sinks|fell|dropped + above|over|beyond|past & recovers_below|recovered_below|returns_below|back_below|comes_back_below|back_under|recovers_under|comes_back_under|fine_below|normal_below|revs_drop - "
        "idle|cold|hot|minutes|lamp|light|noise|bends|corners|temperature|degrees",
        "falls|drops|fades|sags|tails|fell|dropped|falling|dropping & off|away|back|to|down & limiter|redline|red_line|at_the_top_end|peak_revs|high_revs - idle|hot|cold|warm|minutes|lamp|light|noise|flickers|bends|corners",
    ),
    "capped_low": (
        "tops_out|stops|goes_to|maxes|peaks|stalls|sticks|levels|gets_to|runs_up_to|quits_at|up_to + @number|@pressure|small & all_she|all_it|not_more|no_more|also_with|that's_it|no_further|no_matter|much_gas|and_stays|won't_go|whatever|however|wont_go|constant|and_there_it_stays - drops|high|falls|hot|zero|engine_off|miles",
        "comes_up_to|goes_up_to|rises_to|climbs_to|gets_to|stops_dead|plateau|plateaus|sticks_at|tops_out|maxes_out|levels_off|up_to|stops_at|flattens|ceiling|limit|reaches|wont_go_over|never_over|never_goes_above|peaks_at & no_further|@not_more|will_go_no|stays_the_same|constant|however_fast|whatever|as_wide|any_speed|no_higher|stays_there|and_there_it|no_more|no_matter|wide_open|however_hard|max_rpm|same_however|and_stays|not_a_pound_more|flat_out & @number|@pressure|value|small|there|speed|rpm|revs|throttle|fast|pounds|low - drops|falls|high|past|relief_opens|60|80|hot_only|flickers|cold_only|level|brim|zero|nought",
    ),
    "never_reaches_setting_cold": (
        "cold|stone_cold|first_thing|from_cold|even_cold & zinging|fast|revs|revved|2500|@rpm|two_and_a_half|well_up|high|going & wont_touch|short|@not_come|not_come|doesnt_get|never|falls_short|still|will_not|@not_get|@not_reach|only|under|below|@not_lift & relief|setting|set|valve|blow-off|lift - past|over|beyond|above|stuck|hits|no_bother|through|keeps_going",
        "cold|first_thing|stone_cold|frosty|from_cold|ice_cold|even_cold & revved|@rpm|2500|two_and_a_half|going_fast|high_revs|revs|well_up|fast_idle|throttle|@number|fast & falls_short|@not_lift|@not_reach|never_reaches|still_only|will_not_lift|@not_get_up|only|@not_make|never_gets|not_up_to|short_of|well_below|wont_get & relief|set_to|setting|blow-off|valve_should_open|relief_valve|valve|relief_pressure|set_pressure|rated|supposed_to_open|meant - past|through|beyond|hits|climbs_past|above|stuck_shut|sails|blows_right|no_bother",
    ),
    "climbs_past_setting": (
        "cold|frosty|winter|first_thing|stone_cold & over|past|beyond|through|above|sails|exceeds|up_past|over_the_limit|rising & relief|valve|setting|set|blow-off|limit_of_valve|rv|rv_set & rev|revs|gas|throttle|rpm|keeps|more|rising|going_up|on_up|higher|climbs|faster - not|never|short|low|hits|stops_at|holds|stuck|@not|doesnt",
        "cold|frosty|from_cold|first_thing|cold_start|stone_cold|winter_morning & past|beyond|through|over|right_on_by|sails|blows_right|straight_through|way_over|keeps_climbing|keeps_on|exceeds|shoots_past|above & relief|blow-off|valve_should|setting|set_point|relief_pressure|opening_pressure|relief_valve|set_pressure & rev|revs|throttle|revolutions|climbing|keeps|on_up|going|keeps_going|higher|more|rises|rpm - not|never|short|stops_at|hits_blow-off|holds_at|falls|low|only|oil_past|@not",
    ),
    "flickers_only_at_speed": (
        "light|lamp|needle|gauge|pointer|hand|warning|flicker & dances|flickers|blinks|winks|shakes|trembles|flicker|flutters|blink|bounces & north_of|above|over|past|three_grand|3000|3200|@rpm|motorway|hard|grand|revs_hard|high & quits|only|settles|stops|back_out|slower|below|calms|steadies - idle|hot|tickover|bump|bumps|road|corner|all_rpm|not",
        "trembles|trembling|flicker|flickers|blinks|blink|winks|wink|shakes|wavers|flutters|jitters|quivers|vibrates|twitches|flashes & full_throttle|above|over|high_revs|revs_hard|top_end|past|beyond|@rpm|at_speed|turns|thousand|flat_out|wide_open|low_gear|screaming|racing|high_rpm & steadies|slower|stops|under_is_good|settles|slows|its_out|cruising|below|good|calms|slow_down|lower_revs|goes_away|steady|fine|less|down - idle|tickover|hot|ticking|at_all_revs|bends|corner|idling|traffic|not|bump|bumps|road|wipers|goes_mad",
        "needle|gauge|light|lamp + shaky|shakes|flickers|flicker|bounces|wavers|vibrates|jumps|unsteady|dances + over|above|past|at_high|at_speed|high_rpm|high_revs + @rpm|@number|revs|rpm|speed - idle|bumps|bumpy|bend|corner|wipers|headlights|lights|brake|road|place|hour|@pressure",
    ),
    "flickers_only_at_hot_idle": (
        "light|lamp|needle|flicker|warning|it|gauge|pointer & blinks|blink|winks|wink|flickers|flicker|flashes|twitches|flutters|trembles|flickering & warm|hot|properly_warm|warmed_up|heat|temperature & idle|tickover|ticking_over|traffic_lights|at_the_lights|idling|standstill|in_traffic|red_light|stop_sign|at_rest|junction|neutral & stops|stop|steady|touch|throttle|gas|clears|off_idle|goes_out|only|revs|gone|settles|rev|vanishes - not|never|no|doesnt|even|cold|all_revs|corner|every_speed",
    ),
    "rises_just_off_idle": (
        "low|down|poor|weak|little|lousy|short + idle|tickover|ticking_over|idling & little_gas|crack_the_throttle|touch_of_throttle|bit_of_throttle|slightest|little_more|trifle_more|notch|a_hair|tad|few_more_revs|just_above|1000_turns|bump_the_idle|blip & normal|up|fine|right|good|ok|there|comes|should - no|not|never|cold|light|clutch|still|noise",
        "trifle|touch|hair|shade|whisker|notch|bump_the_idle|bump_idle|little + tickover|idle|throttle|above + all_it_should|right_there|normal|right|comes_up|where_it_should|there|fine|good - no|not|light|out|still|cold|low_at",
        "idle|tickover|ticking_over|650|600|700|750|bump|idling|slow_running|raise|raised|nudge & low|down|weak|poor|little|dips|too_low|1100|1000|900|1200|lift|raise|hardly & right_there|normal|where_it_belongs|already_good|good|fine|comes_right|comes_up|back_up|right|ok|healthy|jumps_up|perfect|springs_up & 1000|900|1100|1200|notch|touch|hair|little_throttle|slightly|few_revs|off_idle|breath|@rpm|bit_of_throttle|hand_throttle|couple_of_hundred|fraction|blip|@number - no_difference|not|never|cold|low_at_all|too|idle_too_fast|oil_level|level|speed_wrong|3000|2500|2000|still_low",
        "rev|revs|revved|revving|blip|throttle & light|lamp|warning & goes_out|went_out|goes_off|put_out|puts_out - no|not|never|on|stays|comes|alarm|buzzer|drops|clutch",
        "=out|gone|off + soon_as|as_soon|when|if|moment|instant|second + touch|blip|rev|tickle|crack|dab|breathe - not|no|never|comes|alarm|flies|falls|drops|clutch|brake",
        "light|lamp|led|buzzer + goes_out|goes_off|out|off + comes_back|back_on|comes_on & idle|idles|idling|tickover|ticks_over - no|not|never|alarm",
        "light|lamp|it|flicker|pressure|gauge|needle|goes|comes|buzzer + goes_out|comes_up|comes_right|up|out|rises|recovers|off|jumps|clears|stops & touch_the_throttle|touch_of_throttle|touch_of_gas|bit_of_throttle|blip|blip_of|rev_of|a_rev|quick_rev|crack_the|tickle_the|touch_the_gas|above_idle|off_idle|some_gas|some_throttle|some_revs|a_bit_of_gas|a_few_revs|little_gas|little_throttle|touch_the_pedal|touch_the_accelerator|dab_of_throttle|dab_the_throttle|rev_it|revs_it|=revved|speed_it_up|raise_the_revs|bring_the_revs|lift_the_revs|more_than_tickover|as_i_rev|when_i_rev|when_revved|press_the_gas|press_the_pedal|on_the_gas|soon_as_i_accelerate|when_i_accelerate|when_accelerating|pull_away|pulls_away|=pulling_away|moving_again|drive_off|get_going|at_1000|by_1000|above_1000|over_1000|past_1000|at_1200|by_1200|above_1200|over_1200|at_1500|by_1500|above_1500|over_1500|slightest|give_it_a|bit_of_gas|few_revs|just_above - up_to|alarm_goes_off|buzzer_goes_off|alarm_went_off|buzzer_went_off|siren_goes_off|drops|falls|no|not|never|goes_off_scale|brake|wont|pops_up|popped_up|pop_up|firing_up|fire_up|fired_up|start_up|starting_up|warmed_up|warms_up|lights_up|light_up|lit_up|just_above_zero|above_zero|hooked_up|set_up",
    ),
    "low_hot_idle_good_speed": (
        "hot_idle|hot_tickover|warm_idle|idling_hot|hot_and_ticking|hot_at_idle|ticking_over_hot|warm_tickover|hot_and_idling & ten|low|pukes|poor|lousy|little|nothing|weak|dies|sags|few|single_figures & cruising|highway|road|at_speed|driving|down_the_road|cruise|motorway|revs|underway & fifty|forty|good|fine|50|45|40|60|normal|healthy|plenty|all_one|@pressure|strong - not|dealer|not_sure|light|flickers",
        "poor|little|low|weak|feeble|nothing_much|hardly|next_to_nothing|barely|down|miserable|pitiful|bad & idle|tickover|ticking_over|at_the_lights|idling|at_rest|at_a_standstill|in_traffic|standing_still|stopped_at & warm|hot|warmed_up|once_hot|heat & good|fine|plenty|cruising|all_one_could|highway|motorway|with_speed|normal|healthy|strong|open_road|at_speed - not_sure|dealer|mechanical|not_good|cold|low_at_all|never|pump|low_there|flickers|flicker|light|lamp|level|but_low|also_low|noise|low_everywhere|blinks|winks",
    ),
    "good_cold_low_hot": (
        "great|good|fine|plenty|high|nice|healthy|strong|super|normal|big|ample|well_up + cold|first|first_thing|start|morning|startup & lousy|low|rubbish|poor|small|nothing|weak|hardly|bad|terrible|drops|pathetic|nearly_nothing|next_to_nothing & hot|warm|warmed|warmed_through|heat|hour|once_the_oil|work|heats - too_high|not_good|level|noise|both|knock|cold_too|weather|day|at_speed|since|idle_speed|sender|flicker|lamp|fan|clutch",
        "cold|first_thing|first_start|from_cold|stone_cold|morning|when_i_first_start|on_start_up|cold_motor|startup|cold_engine|on_start-up & plenty|good|high|has_pressure|fine|up_high|strong|full|normal|healthy|lots|great|perfect|well_up & hot|warm|once_the_oil|an_hour's|heated|warmed|hour|after_a_run|heats_up|@temperature|temperature|half_an_hour|warms_up|gets_hot|@minutes|minutes_later & nothing|low|hardly_lifts|has_not|not|poor|weak|drops|little|barely|hardly|falls|sinks|next_to_nothing|bad|no_pressure|fades - even_cold|low_cold|never|too_high|cold_and_hot|cold_too|hot_and_cold|both|new_build|level|not_good|noise|tappets|knock|quiet|ticks|lamp|light|flickers|since|mechanical|test_gauge|master|post-event|so_its_there|at_speed|@rpm|fine_hot|up_again|sender|test",
    ),
    "low_at_all_speeds": (
        "weak|low|poor|too_small|next_to_nothing|feeble|little|down|bad|under|miserable|pathetic|hardly_anything & any_rpm|any_speed|slow_and_fast|slow_or_fast|across_the_board|whatever_the_revs|all_speeds|all_revs|every_speed|ticking_over_or_flat_out|fast_or_slow|idle_or_flat_out|at_any_revs|regardless_of_revs|whatever_the_speed|idle_and_flat_out|top_to_bottom|throughout_the_range|any_revs|all_through_the & any_temp|cold_and_warm|warm_or_not|morning|hot_or_cold|hot_and_cold|cold_or_hot|whatever_the_temperature|any_temperature|always|all_the_time|evening|alike|cold_and_hot|warm_or_cold|everywhere|board - not_low|no_knock|not_down|high|flicker|fine_at|good|lifters|some_speeds",
    ),
    "low_even_cold": (
        "low|poor|down|weak|lousy|feeble|too_small|few|rubbish|little_pressure + cold_start|even_cold|frosty_morning|ice_cold|even_on_a|stone_cold|when_cold|first_thing|from_cold|warmed_up_at_all|before_it_has_warmed|dead_cold & pressure|number|oil|reading|gauge|gauge_is|at|still|even|already|down|too - idle|smoke|smokes|stalls|hot|good|fine|level|warm_up|not|dipstick|revs|relief|battery|only_when|starter|valve|compression|heater|temperature",
        "ice_cold|stone_cold|stone-cold|cold|before_it_has_warmed|from_cold|cold_start|first_thing|warmed_up_at_all|cold_motor|dead_cold|freezing|motor_is_cold|cold_engine|frosty_morning & still_weak|weak|poor|few|already_too_small|too_small|feeble|next_to_nothing + also|even|still|already|from|at_all|is_poor|before|straight|when - smoke|smokes|idle|stalls|starter|battery|starting|spark|hot|good|fine|plenty|warm_up_then|slow|high|climbs|start_hard|weather|wont_start|slow_to|@rpm|relief|normal|revved|valve|oil_level|dipstick|warm|oil_is_low|never_low|isnt|not_low|noise|light|lamp|setting|going_fast|filter|cooler",
        "low|lousy|poor|only|=down + even + cold|stone_cold|first_thing|start|startup - hot|idle_hot|not|only_when",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "falls_as_revs_rise": (
        "higher|faster|more|harder & rev|revs|rev_it|speed|throttle|you_go & more_it_makes|more_pressure|rises|climbs|never_tails|@not_fall|@not_drop|goes_up|higher_it|keeps_rising|never_drops|never_falls|no_falling - lower|worse|wobble|knock|noise|drops|unsteady|wilder|dance|relief|past|louder|setting",
    ),
    "capped_low": (
        "rises|climbs|goes_up|comes_up|gets + all_the_way|right_up|to_the_relief|to_the_setting|to_full|to_relief|until_the_relief|to_blow-off - not|never|no|past|beyond|doesnt|cold",
    ),
    "never_reaches_setting_cold": (
        "cold & hits|reaches|touches|gets_to|makes|lifts & blow-off|blow-off_pressure|relief|setting|relief_setting|set_pressure - not|never|wont|doesnt|short|past|over|through|beyond",
        "cold|first_thing|stone_cold|from_cold & hits|reaches|gets_to|gets_up_to|lifts|makes|comes_up_to|touches & relief|setting|blow-off|blow-off_pressure|relief_pressure|relief_valve|set_pressure - not|never|@not|past|beyond|short|doesnt|only|will_not|hot",
    ),
    "climbs_past_setting": (
        "cold|from_cold|first_thing & stops|holds|levels_off|stays|never_goes|no_higher|never & at_the_setting|at_the_relief|at_relief|at_blow-off|past_the_relief|above_the_relief|beyond_the_setting|over_the_relief|past_the_setting|set_pressure - short|only|low",
    ),
    "flickers_only_at_speed": (
        "no|never|@not|steady|without + flicker|flickers|blinks|tremble|flickering|winks|shake + high_revs|at_speed|flat_out|full_throttle|with_revs|top_end|revved - idle|until|only",
    ),
    "flickers_only_at_hot_idle": (
        "hot|warm|properly_warm & idle|ticking_over|tickover|idling|at_the_lights & lamp|light|needle|gauge & never|@not|no|steady|doesnt & wink|flicker|blink|twitch|flickers|waver|flash|steady - speed|but|cold",
    ),
    "rises_just_off_idle": (
        "raising|raised|raise|upping|bumping|lifting|increasing|faster + idle|tickover|idle_speed|slow_running & no_difference|doesnt|no_help|@not_help|no_odds|same|nothing|makes_no|no_change|no_better|still_low|@not_come_up - fixed|cured|helps",
    ),
    "low_at_all_speeds": (
        "fine|good|normal|ok|right|healthy + at_some_speeds|some_speeds|at_speed_only|only_at_idle|most_speeds|other_speeds|at_higher_revs - not_fine",
        "not|isnt|@not + low|down|weak + everywhere|at_all_speeds|all_speeds|across_the_board|throughout - but",
    ),
}
