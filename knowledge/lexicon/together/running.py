"""Words that together say how the engine ran, stopped, was used and kept, in whatever order they stand."""

from __future__ import annotations

_ENGINE = "engine|motor|it|she|power_plant|powerplant|propeller|prop|car|boat|machine"
_OIL = "oil|sump|sumpful|engine_oil"
_WHOLE = "all|whole|most|entire|everything|lot|completely|dry|nearly_all|every_drop"
_LIT = "lit|appeared|glowed|beeped|came|showed|warned|on|flashed|sounded|illuminated|lighted|popped|lights|glowing|shone"
_SEEN = "warning|light|lamp|alarm|buzzer"
#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_RUNNING: dict[str, tuple[str, ...]] = {
    "sags_as_oil_heats": (
        "let|left|leave|gave|once|when|after + cool|cool_down|cooled|cooled_off|cooled_down|cool_off & @pressure|@number|fine|normal|pressure & again|back|returned|returns|came_back - coolant|temperature|temp|weather|mornings|cooler",
    ),
    "stopped_with_loss_of_power": (
        "engine|motor|power_plant|powerplant|propeller|prop + =stopped|=stops|=died|=dies|=quit|=stalled|=failed|dead|conked|expired|gave_up|packed_up|"
        "cut_out|of_its_own|ceased|went_dead|gave_out|windmilled|windmilling|coughed_and_stopped|faltered - i|we|he|driver|pilot|pressed|switched|shut|with_the_"
        "engine|pump|key|until|before|when_the_engine_is|once|after_the_engine|hot|light|lamp|gauge|needle|injector|noise|stops_it|@not|whenever|every_time|"
        "on_purpose|parked|stopped_and|restarted_and|valve|still|even_with|mount|fan",
        "stalled|died|conked|quit|=stopped + @not_restart|would_not_restart|refused_to_restart|of_its_own_accord|by_itself|itself|and_would_not_turn - gauge|"
        "noise|knocking|light|pressure|leak|oil_stopped",
        "lost|loss|lack|no|faded|without|lacked + =drive|engine_power|all_power|motive_power|thrust|total_power|complete_power - see_on_the|on_the_drive|on_my_drive|leaks|drips|oil_on|battery|electrical|steering|"
        "no_loss|no_power_loss|belt|fan|@not_loss|pump_drive|prime|gauge|pump|drive_to",
        "no_longer|@not|stopped|ceased|unable + producing|produced|produce|develop|developing|make_full + power|thrust - pressure|oil_pump|pump",
        "power + faded|failed|failure|ebbed|died|dropped|loss|gone|decayed|fell|drained - no|not|battery|electrical|steering|supply|feed|gauge|pump|"
        "no_power_loss|without",
        "forced_landing|glided|dead_stick|autorotation|deadstick|ditched + engine|power|after|made|landing|field - precautionary",
        "ran_down|ground|rolled|coasted|drifted|came + and_stopped|to_a_halt|to_a_stop|to_rest|halt|standstill - switched|shut|pulled_over|needle|gauge|"
        "killed|i|driver|valve|traffic|grinding|each|every|when",
    ),
    "engine_runs_normally": (
        "engine|motor|sound|note|runs|ran|running|sounded|sounds|drives|drove|pulls|behaves|performs|performed + normal|normally|sweetly|sweet|like_a_watch|"
        "like_a_sewing|perfectly|as_usual|as_always|as_it_should|without_any_complaint|without_complaint|happy|happily|smooth|smoothly|healthy|well|strong|"
        "strongly|its_usual_self|its_old_self|unchanged|as_before|beautifully|as_if_nothing|faultlessly - until|till|before|then|temperature|pressure|gauge|reads|@not|idle_speed|"
        "hours|hour|cold_running|rough|light|lamp|oil|never|to_full|when_cold|but|level|turbo|very_well_used|pump|as_well|worn|well_used|sender|switch|well_before|noise|except|"
        "wiring|well_past|slow|months|weeks|@distance|@time|days|starts|start|knock|tick|rattle|while|once",
        "nothing|no_change|no_difference + unusual|odd|wrong|change|different|difference + sound|sounds|heard|way_it_ran|running|hear|way_it_runs|noise - "
        "gauge|pump|found|level|oil",
        "no|without|@not_any|not_any + loss_of_performance|odd_noise|odd_noises|unusual_noise|unusual_noises|strange_noise|strange_noises|abnormal_noise|"
        "abnormal_noises|funny_noises|untoward_noise|untoward_noises|vibration_or_noise|noise_or_vibration|bad_noises|mechanical_noise|noises_at_all - yet",
        "never|@not + missed_a_beat|miss_a_beat|missed_a_stroke|put_a_foot_wrong",
        "quiet_as_a_mouse|quiet_as_ever|sweet_as_a_nut|like_a_swiss_watch|without_any_complaint|no_change_in_the_way|never_sounded_better",
    ),
    "engine_banged_or_shook": (
        "loud|series|heavy|sharp|violent|severe|sudden|almighty + report|bang|bangs|clank|crash|crack|shuddering|shudder|vibration|shaking|thud - no|not|without|"
        "knock_of",
        "clank|bang|crash + silence|followed|stopped|dead|smoke - no|not|without",
    ),
    "oil_loss_fast": (
        f"=lost|=loses|losing|dumped|emptied|drained|=pumped|threw|thrown|blew|blown|spat|ejected|shed|spilled|=leaked + {_WHOLE}|litres|quarts|great_rate|@volume|its|rapidly|fast + "
        f"oil|sump|sumpful|oil_in|road|dry|its_oil|lubricant - pressure|power|i|we|water|coolant|fuel|some|little|bit|drained_the|of_the_oil_was_drained|per|every|"
        "a_month|slowly|cap|filler|tank_empties|seal|dipstick|prime|changed|service|refilled|gauge|stick|each|no|not|used|drill|blew_it_out|cold_air|none",
        "oil_loss|loss_of_oil|oil_quantity|oil_level|oil_contents + rapid|rapidly|minutes|hour|minute|quarts|litres|fell_to_zero|to_zero|fast|seconds|fell_rapidly - pressure|no|not|every",
        "minute|minutes|hour|hours|seconds|mile|miles|@time|@distance & tank|sump|oil|engine & empty|emptied|gone|dry|disappeared|all_gone|vanished|none_left - pressure|changed|ago|change|"
        "since|service|filter|overhaul|next|morning|overnight|standing|rebuild|tank_tap|crank|used|warm|stood|checked|temperature|topped|after_running|every|pump|inside",
        "oil + gushed|gushing|poured_out|pouring_out|streamed_out|=pumping_out|pissing_out|haemorrhaged|hemorrhaged|flooded_out|torrent|cascading - drill|bath|drain|rocker|cover|hole_in|gallery|cranked|crank|"
        "past|port|into_the_timing|prime",
    ),
    "dipstick_low": (
        "oil|level|sump|it + minimum|under_minimum|below_minimum|far_too_low|too_low|very_low|@not_much_oil_left|low_on_oil|under_min|below_low|quart_low|down_by|well_down|half_empty|"
        "critically_low|dangerously_low - pressure|reads|reading|shows|showing|temperature|coolant|temp|water|fuel|gauge|gas",
        "@volume|quart_and_a_half|litre_and_a_half|half_a_gallon|pint_and_a_half|couple_of_quarts|couple_of_litres + short|low|shy|down|to_fill|to_top|added|needed|required|missing|"
        "to_bring - per|every|over|too_much|coolant|antifreeze|radiator|water|fuel|overfull|a_day|hour|drained|week|miles|tank|too_low_a|used|high|adding|were_left|was_left|remained|thicker|heavier|quieted|calmed|settled|gallery|hole|port|filter_head|down_the|down_a|line|pipe",
        "not_much|@not_much|hardly_any|little|next_to_no + oil_left|oil_in_it|oil_in_the_sump|oil_remained|left_in_it|left_in_the_sump - pressure|rockers",
    ),
    "dipstick_dry": (
        "no|@not_any|not_a_drop_of|nil|zero|without_any + oil_left|oil_in_the_engine|oil_remained|oil_remaining|measurable_oil|oil_in_it|oil_in_the_sump|oil_whatsoever|oil_on_board|oil_at_all|oil_on_the_stick|"
        "oil_was_left - pressure|rockers|loss|leak",
        "sump|engine|crankcase|tank|dipstick|oil_tank + empty|bone_dry|completely_dry|as_dry|ran_dry|run_dry|had_run_dry|found_dry|totally_dry - gauge|outside|sound|wall|clean|fuel|underneath|"
        "externally|leak|petrol|drained_and|water|scavenge|running|empties|leaks|cowl|block",
        "only|just + cupful|cup|eggcup|pint|spoonful|dribble|half_a_pint|half_a_litre|trace + left|remained|remaining|came_out|drained|sump|of_oil - low|down|fuel|pipe|line|union|bearing|hole|port|pump|gallery",
    ),
    "level_correct": (
        "inch|bit|shade|little|hair|touch|just|quarter|third|fraction + below_full|under_full|off_full|below_the_full|short_of_full|below_the_max|under_the_full|shy_of_full|below_max|under_max - well|way|quart|litre|filter|screen",
        "oil|level|oil_level|contents|quantity|sump|it + between_high_and_low|between_the_marks|adequate|to_the_brim|full_of_oil|filled_up|enough_oil|correct|spot_on|normal|up_to_level|to_the_mark|on_the_mark|"
        "halfway_up|up_to_the_mark|in_range|sufficient|ample - analysis|sample|report|normal_place|normal_position|its_normal|went_back|pressure|temperature|temp|not|light|lamp|gauge|@not|if|keeps|restored|grade|cooler|filter|fuel|coolant|viscosity|above|below|slightly_above|pump|low|"
        "flow|over_full|overfull|half|to_normal|reads|level_flight|in_level|engine|everything|cap|change|sound|note|grade_of|correct_oil",
        "@number|@range|six|seven|eight|nine + of_@number|out_of_@number|of_8|of_12 + quarts|litres|qt|qts|pints|quart - low|left|down|over|short|gone|lost|used|three|two|one",
    ),
    "high_mileage": (
        "@highmiles|@manyhours|enormous|huge|big|very_high|massive|intergalactic|high + odometer|mileage|clock|covered|hours|miles|tbo|overhaul_life|km - low|since_the|oil_change|between|since_its|not|speed|"
        "per|revs|new_engine|rebuilt_engine|only|every|ago|later|change|oil_pressure|pressure|gauge",
        "near|end|past|beyond|over|exceeded + overhaul_life|tbo|service_life|design_life|useful_life|overhaul_limit - not|half|well_within",
        "never|@not_been + apart|overhauled|rebuilt|opened|touched|stripped + years|life|miles|hours|long|@longtime|decades|since_new|thirty|twenty|forty - checked|yet|pump|sender|gauge|relief|filter",
    ),
    "raced_or_heeled": (
        "race|racing|lap|laps|second_heat|first_heat|third_heat|sprint|hillclimb|hill-climb|rally_car|rally_stage|forest_rally|special_stage|rallied|club_meeting|circuit|track_day|trackday|autocross|drag|practice|qualifying|=paddock|motocross|speedway|regatta|=banking|=drifting|drift_day|drift_car|stock_car|"
        "competition|race_meeting|enduro|karting|grand_prix|oval_track|oval_race|oval_racing|dirt_oval|short_oval|on_the_oval|round_the_oval|=ovals + on|in|during|at|while|after|first|second|third|last|final|six|@number|used|car|day|weekend|session|heavy|of - needle_drift|race_bearing|race_clearances|bearing_race|"
        "heat_soak|in_the_heat|desert|idle_race|spinning|meeting_point|heat_of|heat_wave|pilot_bearing|summer_heat|the_heat|great_heat|intense_heat|no_heat|heat_exchanger|track_down|keep_track|stage_of|early_stage|"
        "oil_circuit|gauge_circuit|circuit_of|short_circuit|open_circuit|circuit_traced|race_engine_builder|heat_marks|of_the_circuit|in_practice_this|common_practice|cooling_circuit|last_stage|final_stage|electrical|water_circuit|lapped|lap_of|tide|current|channel|harbour|anchor|drifting_towards|drifting_onto|drifting_to",
        "port_tack|starboard_tack|hard_pressed|well_heeled|rail_under|heeled|close_hauled|aerobatic|aerobatics|inverted|knife_edge + on|boat|yacht|in|during|display|flight|sailing|was|while|hard - teeth|tooth|gear|gears",
        "mowing|working|ploughing|baling|bank_mowing|on_a + steep_bank|side_slope|steep_slope|hillside|sidehill|steep_hillside",
    ),
    "worked_hard": (
        "full_throttle|full_load|full_power|max_continuous|maximum_continuous|high_boost|flat_out|wide_open|full_chat|full_bore|maximum_power|heavy_load|full_speed + hours|hour|all_day|minutes|long|after|under|pulling|pass|"
        "sustained|for|miles|most_of_the - opens|only_at|gauge_at|pressure_at|drops_at|idle|psi|bar|fine_at|runs_to|would_not|never|before_full|couldnt|@not|once_at|first_time_at",
        "=flogged|=thrashed|=caned|hammered_along|driven_hard|hard_driven|hard_pushed|pushed_hard|=ragged|hard_used|worked_hard|hard_worked|ran_hard|run_hard|hauled_hard + along|autobahn|motorway|it|was|all|by|for|had|been|day|track|"
        "engine|up|for_hours|always|life",
        "high_speed|fast|long|steep|sustained|prolonged + run|climb|motorway_trip|motorway_run|high_speed_run|haul|pull|ascent + long|sustained|steep|hours|miles|prolonged|speed - short|gauge|after_a_short|pressure_is|slow|warm-up|"
        "runs_fine|before|trial_run|test_run|ground_run",
        "towing|hauling|towed + mountains|alps|hills|uphill|trailer|caravan|boat|heavy|pass|load|horsebox - towed_in|towed_home|to_garage",
    ),
    "history_unknown": (
        "bought|picked_it_up|picked_up|acquired|purchased|got_it|recently_acquired|imported|inherited + unseen|cheap|second_hand|secondhand|used|farm|auction|last_month|recently|last_week|last_year|private|ebay|dealer|scrapyard|breaker|"
        "off_a|online|weeks_ago|months_ago|non-runner|as_a_project - gauge|sender|filter|pump|oil|switch|new_pump|kit|bearings|when_i_bought|since_i_bought|part|tester|stethoscope|new_engine|parts",
        "unknown_history|history_unknown|no_history|no_papers|no_paperwork|past_unknown|unknown_past|previous_history_not|history_not_known|past_not_known|unknown_provenance",
        "ex-army|ex-military|ex-mod|ex_army|barn_find|breakers_yard|from_a_breaker|from_a_scrapyard|engine_from_a + history|unknown|engine|yard|army|breaker|scrapyard",
        "new_owner|second_owner|third_owner|new_to_me|just_bought|newly_bought|newly_acquired|recently_bought + owner|me|bought|it|acquired|car|boat|tractor|engine|truck - pump|gauge|sender|filter",
    ),
    "freshly_rebuilt": (
        "first|@runin|@fewhours|few_hours|few_miles|maiden + overhaul|rebuild|rebuilt|build|new_engine + since|after|run|start|from|following - @hundreds|ago|month|months|years|manyhours",
        "new_build|freshly_built|newly_built|newly_overhauled|new_rebuild|freshly_rebuilt|fresh_rebuild|just_been_rebuilt|just_rebuilt|fresh_build|still_being_run_in|still_running_in|being_run_in|newly_rebuilt - boat|car_rebuilt|gearbox|pump|carb|turbo|head|injector",
    ),
    "earlier_breakage": (
        "earlier|previous|prior|last|former|past + failure|breakage|blow-up|blow_up|engine_failure|piston_failure|pump_failure|bearing_failure|disaster|explosion + piston|after|followed|engine|pump|bearing|chain|cam|rod|valve|had|of|an|"
        "the - gauge|sender|electrical|switch|battery|warning|fuse|filter",
        "after|following + failure|broke|breakage|let_go|snapped + timing_chain|timing_belt|cambelt|rod|piston|valve|cam|chain|belt|rocker|pushrod - sender|gauge|pressure|minutes|seconds|moments|soon|pump_drive|electrical",
    ),
    "second_instrument_disagrees": (
        f"{_SEEN} & @not_light|@not_lit|@not_come|no_light|no_lamp|no_buzzer|no_alarm|no_warning|no_oil_light|out|off|never & gauge|needle & zero|nothing|0|bottom|low - key|ignition|noise|filter|alarmed",
        f"{_SEEN} & on|lit|came|stays & gauge|needle & normal|fine|good|steady|ok|40|50|healthy - key|engine_off|soon|then|and_now|until|before|lights_on|headlight|other|works|back_to|returned",
        "one|upper|lower|cockpit|flybridge|first|second|port_side|helm|station|panel & gauge|gauges|one|set & zero|low|nothing & other|second|upper|lower|test_set|test_gauge|one & normal|fine|good|ok|right|correct - plug|ports|cylinder|valve|bank|"
        "front_gauge|test|sender",
    ),
    "known_for_model": (
        "known|common|typical|well-known|notorious|usual|frequent|classic|recurring + weak|problem|fault|failure|trouble|complaint|weakness|issue|defect + type|model|these|this|engine|engines|them|with|on - @not|unknown|not_known|no_known|made_known",
        "bulletin|recall|safety_notice|service_letter|airworthiness|technical_note|campaign + issued|about|applies|there_is|for|maker|it|on|covers|published|existed|exists",
        "all_of_these|all_of_them|every_one_of_these|these_engines|most_of_these + eventually|do|fail|sooner|suffer|prone|known|notorious|have_this - same_reading|read|gauges|normal|do_that",
    ),
    "ran_on_without_pressure": (
        "continued|continue|carried_on|drove_on|flew_on|raced_on|kept_driving|kept_going|went_on|pressed_on|sailed_on|=ran_on|nursed|limped|motored_on|rode_on|kept_flying|soldiered_on & "
        "light|lamp|warning|zero|no_pressure|without|miles|minutes|laps|town|exit|alarm|driver|owner|skipper|pilot|@distance|@minutes|home|regardless|anyway|lit|red - no_damage|no_harm|running_as_if|happily|fine|sweetly|normally|"
        "pressure_normal|@not_continue|well|recovered|alarm_kept|light_kept|lamp_kept|buzzer_kept|on_and_off",
        "ignored|disregarded|overlooked|dismissed + warning|light|lamp|alarm|gauge|it|needle|buzzer - bulletin|recall",
        "run|driven|flown|ran|running|drove|flew & without_oil_pressure|without_pressure|no_oil_pressure|zero_pressure|with_the_light_on|with_the_lamp|with_the_alarm|with_the_red|with_no_pressure & minutes|miles|hours|@minutes|@distance|home|laps - cold_start|no_damage|no_harm|distress|without_harm|fine|without_damage",
    ),
    "stood_in_frost": (
        "minus|frost|frosty|freezing|snow|ice|icy|sub-zero|coldest|@frost|arctic|deep_freeze|blizzard|cold_snap + night|day|morning|parked|outside|winter|temperature|deep|hard|weather|start|year|overnight|in|on|a|after|of - freeze_plug|freeze_plugs|frost_plug|ice_cream|ice_at|"
        "screen|pickup|never|no|cold_room|drops_to_minus|gauge|minus_sign|battery_minus|terminal",
    ),
    "service_neglected": (
        "oil|service|services|maintenance|servicing|oil_changes + never_changed|never_been_changed|=missed|skimped|sporadic|sporadically|overdue|neglected|skipped|lapsed|ignored|rarely|stretched|no_record|years_overdue|not_done|never_done|poor - "
        "not_overdue|level|gauge|light|never_missed|pressure|bulletin|filter_not",
        "never|hardly_ever|rarely|seldom + had_its_oil_changed|had_an_oil_change|oil_changed|been_serviced|seen_a_mechanic|saw_a_mechanic|had_a_service|serviced|looked_after - checked",
        "no_service_record|no_service_history|without_a_service|no_record_of_service|no_service_book|without_servicing|no_record_of_any",
    ),
    "filler_cap_found_off": (
        "cap|filler|oil_cap|oil_filler|filler_cap|dipstick + left_off|missing|not_refitted|@not_refitted|@not_secured|@not_seated|@not_on|lying_under|open|@not_replaced|not_fitted|unsecured|forgotten|found_lying - ball|plunger|piston|spring|radiator|main|rod|bearing|relief|"
        "distributor|rotor|valve|fuel|read|water|dust|screws|drain|cover|petrol|reading|@not_on_the_dipstick|runs|dropped|marks|oil_on|wiped|dry|popped|blew|blown|gearbox|hub|take|took|taking|lift|lifted|remove|removed|undo|open_it|with_the|look_in|looked|swimming|puffing|smoke",
    ),
    "stood_long": (
        "sat|stood|unused|lying_idle|stood_idle|sat_idle|lay_idle|been_idle|left_idle|idle_since|laid_up|lay-up|layup|storage|stored|standing|dormant|@not_run|@not_started|first_start|first_run|mothballed|rested|slept + @longtime|years|decade|decades|winters|two_winters|ages|since_@year|owner_died|long|seasons - hot|fast|at|gauge|"
        "slow|tickover|pressure_at|after_overhaul|driven_daily|rebuild|overhaul|oil_pressure|light|daily|reads|changed|engine_rebuilt|psi|longer|prolonged_idling|low_idle",
        "sat|stood|left|parked|abandoned|dumped|been & since_@year - gauge|needle|pressure",
    ),
    "oil_used_fast": (
        "burning|burns|burned|uses|using|consumption|drinking|drinks|consumed|going_through|getting_through + oil|litre|quart|pint|litres|quarts + lot|heavily|heavy|high|every|day|daily|week|weekly|hour|miles|@distance|up|excessive|"
        "constant|constantly|tankful - smell|no|not|never|smoke|fuel|water|coolant|low|clutch|before|last|regular|normal|little|hardly|ago|once|just|yesterday|when",
        "topping_up|topping_it_up|topping|needs_oil|adding_oil + daily|weekly|every_day|every_week|every_trip|constantly|all_the_time|every_other|each_day|every_hour|between_runs - radiator|rad|coolant|water|header|expansion|antifreeze|washer|battery|tyres|fuel",
    ),
    "only_small_seeps": (
        "slight|minor|small|few|tiny|little|trace + weep|seep|seepage|=drops|misting|damp|dampness|leak|leaks|oil_misting|weepage|drips|sweating - no|pressure|not|large|quickly|it_drops|slowly_drops|next_few|miles|drops_over|massive|play|water|coolant|vacuum|air|lubricant_left",
    ),
    "nothing_warned": (
        "no|without|never|nobody|@not_any|not_one + warning|alarm|caution + given|sounded|came|whatsoever|saw|before|of_any_kind|at_all|heard|light_before|was|seen|gave|beforehand - no_evidence|no_sign|alarm_on|lights_up|key|ignition|on_the_road|shut|hazard|reads|gauge_zero|works|horn|"
        "label|stopped_immediately",
        "gauge|needle|pressure|light|lamp + normal_to_the_end|fine_to_the_end|right_to_the_end|up_to_the_end|to_the_last - fell|dropped|drop",
        "gauge|needle|pressure|light|lamp + normal_until|fine_until|never_moved|normal_to_the & seized|knocked|knock|knocking|bang|died|blew|locked|failed|let_go|wrecked|ruined|rod",
        "alarm|buzzer|warning + silent|mute|failed|@not_sound|@not_operate|disconnected_earlier - key|ignition|at_all_times",
    ),
    "gone_at_the_next_start": (
        "parked|shut|last_night|stopped|switched|yesterday|good|fine & next_morning|restart|today|next_day|restarted|started_again|next_start & none|nothing|zero|no_pressure|no_oil_pressure|dead|gone|not_a - fuel|battery|noise|warm|hot",
    ),
    "oil_not_checked_long": (
        "level|oil|dipstick|stick + never|not|@not|nobody|last + looked|checked|dipped|check|looked_at + months|since|weeks|ever|long|years|months_before|purchase|owner|owned|neglected|never|months_ago|ages - yet|correct|good|fine|before_starting|pressure|gauge|gone_up|went_up|risen|higher|since_the_last|since_i_last|"
        "just|grade|i_have_not|i_havent|have_not|havent|leak|temperature",
        "never|nobody|no_one|seldom|@not + checked_the_oil|checked_the_level|dipped_it|dipped_the_oil|checks_the_oil|checking_the_oil|looked_at_the_dipstick|checks_the_level|checked_the_dipstick|checked_the_oil_level + "
        "never|nobody|one|owner|seldom|he|she|they",
        "oil_never|level_never|oil_seldom|level_seldom|@not + checked|dipped + since|purchase|ever|weeks|months|oil_never|level_never|owner|years - yet|i|we|gauge|pressure",
    ),
    "needle_steps_at_once": (
        "gauge|needle|reading|jumps|flicks|snaps|switches|leaps|flips|pointer|it + jumps|flicks|snaps|leaps|flips|jumped|flicked|steps|switches + instantly|at_once|full_scale|and_back|one_value|in_an_instant|no_in_between|suddenly_between|back_again|in_one_go - "
        "over|load|bumps|lights|headlights|wipers|plug|throttle|smoothly|dash_switch|electrical",
        "jumps|flicks|snaps|leaps|flips|switches|steps + instantly|at_once|full_scale|from_one_value|from_zero|and_back|in_one_go - over|load|bumps|lights|headlights|wipers|plug|throttle|smoothly|when|dash|warm|revs|tugging|slowly",
    ),
    "switch_opens_wrong": (
        "pressure_switch|oil_switch|switch + defective|faulty|bad|wrong_pressure|dud|duff|dead|failed|worn_out|at_fault|internally_shorted|stuck|leaky - master|ignition|lights|dash_switch|toggle|starter|battery|fuel|not|good|connector|wire|no",
    ),
    "sender_wrong_on_air": (
        "sender|transmitter|sensor|transducer|sending_unit + defective|faulty|bad|dud|duff|dead|kaput|failed|at_fault|found_bad|worn_out - not|good|wire|connector|no|crank|temperature|coolant|cam|bad_reading|knock|fuel|known|@not|ground|earth|leaked|put_down_to|blamed",
    ),
    "hot_and_thin": (
        "summer|hot|heat|shade|heatwave|degrees|desert|tropical|sweltering|@hotday + day|heat|shade|weather|afternoon|summer|thin_oil|shade|traffic|outside|climate|ambient|great|extreme|heatwave - idle|engine|oil_hot|hot_oil|restart|start|no|coolant|when_hot|once_hot|"
        "tip|last_summer|hot_idle|its_hot|it_is_hot|gets_hot|traffic_lights|cold|loss|all_summer|over_the_summer|water|shrink|since",
    ),
    "oil_line_was_disturbed": (
        "oil_line|oil_pipe|oil_hose|oil_hoses|cooler_line|cooler_lines|cooler_hose|cooler_hoses|hose|hoses|oil_cooler|cooler|lines|line|fitting|union + renewed|refitted|replaced|disconnected|removed|off|changed|disturbed|undone|reconnected|loosened|fitted + day_before|last_week|"
        "days|week|hours|during_the_work|before|yesterday|inspection|service|last_check|recently|at_the_last|just|work|weeks|overhaul|at_it|been_off|flying_hours|ago|previous_day|flight_before|morning - blew|broke|burst|came_off|radiator|fuel|years|no_difference|no_better|made|"
        "gauge|turbo|seasons|year|still|popped|found_off|heater",
    ),
    "oil_overdue": (
        "@highmiles|@distance|18000|miles|@longtime|years|long + since_the_last_change|since_last_change|since_the_last_oil|since_its_last|since_an_oil_change|since_the_last_service|since_last_service|on_the_same_oil|on_this_oil|without_a_change|without_an_oil_change - "
        "hundred|500|only|few|200|300|50|100|weeks",
        "oil + two_years_old|three_years_old|years_old|very_old|ancient|old_black|black_and_old|long_past|overdue - not|no|new|leak|pump|seal|filter|hose|gauge|oil_pump|cooler|line|regular",
    ),
    "changed_with_oil_change": (
        "began|started|since|ever_since|right_after|straight_after|immediately_after|only_after|day_after|come_on_since|happened_after|appeared_after|arose + oil_change|oil_was_changed|last_service|a_service|oil_and_filter|changed_the_oil|changing_the_oil|full_service|filter_change|oil_service|"
        "the_service - oil_pump|oil_filter|oil_cooler|oil_pressure|oil_pan|oil_sender|oil_switch|oil_seal|oil_seals|oil_line|oil_lines|oil_pickup|oil_sump|oil_gauge|oil_tank|any_more|no_longer|cured|miles|hours|overdue|quart|fine|black|two_years|@distance|@hours|no_change|tried|usage|uses|1300|months_since|weeks_since",
    ),
    "oil_in_the_bilge": (
        "bilge|bilges|engine_tray|drip_tray|tray_under + sumpful|sump_full|sumps_worth|whole_sump|the_lot|all_of_it|lost_most|litres|quarts|gallons|@volume - water|coolant|fuel|diesel|pumped_out|no|dry|clean|gearbox",
        "it_was_oil|was_in_fact_oil|turned_out_to_be_oil|was_oil|realised_it_was_oil & bilge|bilges|engine_bay|engine_space|engine_hole|tray|under_the_boards|floorboards - gearbox|no|not",
        "bilge|bilges|engine_tray|drip_tray|engine_pan_under + oil|oily|full_of_oil|black - no|dry|clean|water|pump_off|gearbox",
    ),
    "level_risen": (
        "sump|level|oil_level + fuller|higher_than_before|keeps_rising|rising|risen|rose|getting_fuller|overfilling_itself|making_oil|creeping_up|gone_up - pressure|temperature|temp|coolant|gauge|needle|lamp|smoke|float|bilge|water|slowly_builds|with_revs",
    ),
}
#: the same when it is not there
TOGETHER_RUNNING_ABSENT: dict[str, tuple[str, ...]] = {
    "engine_runs_normally": (
        "sound|sounds|sounded|ran|runs|running|shaking|making|makes|engine|noise|noisy + bag_of_nails|to_bits|three_cylinders|grinding|dreadful|racket|rough|roughly|terrible|awful|horrible|down_on_power|lumpy|like_a_tractor|misfiring|cement_mixer|bucket_of_bolts|"
        "on_three|on_two|very_noisy|sick - no|not|screen|crank|isnt|road|idle_rough_road|water|journal|weather|sea|gauge|grinding_of|after_grinding|crank_ground|bumpy",
    ),
    "stopped_with_loss_of_power": (
        "engine|motor|it|power + kept_running|did_not_stop|@not_stop|continued_to_run|never_stalled|never_stopped|full_power|kept_going|@not_stall|carried_on_running|ran_on_normally|still_ran|did_not_falter|no_power_loss|no_loss_of_power - until|then|before|lost|at_full_power|no_full|under|"
        "dropping|leak|needle|minutes|@not_full|after_hours|maximum|hours|alarm_kept|light_kept|lamp_kept|buzzer_kept|on_and_off",
        "no_power_loss|no_loss_of_power|without_loss_of_power|without_power_loss",
    ),
    "high_mileage": (
        "car|engine|motor|it|unit|boat|truck|machine|bike|tractor|only|less|just|in|built + months_old|built_last_year|a_year_old|delivery_mileage|first_season|low_hour|low-hour|low_time|low-time|weeks_old|nearly_new|brand_new|delivery_miles|this_year|its_first|year_old|new_car|almost_new - gauge|sender|oil|pump|filter|"
        "hose|battery|noticed|rebuilt|serviced|changed|renewed|replaced|bought|fitted|last_year_by|overhauled|years_old|winter|stood|leak|used_engine|pressure|put|@highmiles|belt|began|started|did|high|switch|new_engine|swap",
        "low_hour|low-hour|low_time|low-time|delivery_mileage|low_miles|low_mileage|few_miles|few_hours + engine|only|unit|motor|miles|mileage|hours|on_it|from_new - oil|since|rebuild|overhaul|rebuilt|old_for",
    ),
    "ran_on_without_pressure": (
        "stopped|shut|switched|killed|cut|pulled|declutched|turned|stop + at_once|straight_away|immediately|right_away|instantly|within_seconds|the_stop|ignition|before_damage|before_any_damage|in_seconds|without_delay|engine_off|promptly|at_the_side|as_soon - =pulls|i_put|on_load|loaded|under_load|pto|itself|by_itself|itself|of_its_own|solenoid|noise|light|leak|"
        "lamp_went|came|restarted|ignition_switch|seized|bolt|knocking|fuse|then_immediately_lost|wire|off_the_sender|hole|dead|pressure_stopped|cranked|cranking|crank",
    ),
    "oil_overdue": (
        "oil|service|serviced|oil_change + fresh|month_old|hours_old|weeks_old|recent|new|week_before|week_ago|on_schedule|in_date|days_old|miles_old|recently|days_ago|miles_ago|not_long_ago|just_done|just_changed|month_ago|weeks_ago|newly - @toofar|no|overdue|not|pump|sender|gauge|cooler|line|leak|seal|pressure|light|level|filter_new|smell|"
        "topped|added|new_engine|low|switch|hose|pan|head|gasket|used|bearings|slowly|stick|black|@not|filler|consumption|outside|temperature|dry",
        "@fewhours|@lowmiles|@days|@weeks + since_the_last_change|since_oil_change|since_the_oil|since_change|since_last_oil|since_an_oil - @toofar|overhaul|rebuild",
    ),
    "service_neglected": (
        "regular|regularly|religiously|meticulously|always|well|properly|carefully|full_service_history|on_schedule|correctly|professionally + serviced|maintained|looked_after|cared|service_history|servicing|maintenance|kept|dealer_serviced - @not|never|not|oil_pressure|gauge|lit|no|poorly|been_low|kept_falling|kept_dropping|wells",
        "serviced|maintained|oil_changed|oil_changes + every_@distance|every_year|by_the_book|from_new|since_new|by_the_dealer|on_time|on_schedule|annually|every_@hours|every_3000|every_5000|every_6000|per_the_manual - @not|never|not|no|except",
    ),
    "oil_temperature_high": (
        "oil_temp|oil_temperature|oil_temperatures|temperatures_all|oil_temps + normal|steady|green|never_above|not_high|@not_high|@not_rise|no_rise|in_the_green|constant|as_usual|fine|ok|within_limits|unchanged|did_not - coolant|water|cylinder|head|but|until|low|@not_normal|above_normal|up_to|at_normal|reaches|"
        "when|to_normal|once|normal_temperature|operating|outside|gauge|air|pressure",
        "oil_never_above|oil_never_over|oil_never_hotter|no_high_oil + temperature|90|100|@temperature|@number|hot",
    ),
    "dipstick_dry": (
        "oil|quarts|litres|@volume + was_left|were_left|remained|remaining|still_in_the_sump|left_in_the_engine|left_in_the_sump|oil_on_the_stick - no|not|only|cupful|@not|dry|none|rockers|little|half_a|hardly|without|foam|glitter|water|metal|grease|cap|nothing|few|pressure|never|zero|pint|trace|bubbles|milky|like|thick|thin|sludge|"
        "runs_off|filler|smell|empty|gasket|dipstick_not",
    ),
    "lamp_comes_on": (
        "light|lamp|warning_light|oil_light|warning_lamp|alarm|buzzer|oil_lamp + @not_come|stayed_out|never_lit|@not_lit|@not_light|stayed_dark|never_came|remained_out|remained_off|off_throughout|stayed_off - flickers|key|ignition|bulb|switch|starting|wire|fuse|any_more|until|starter|startup|test|go_out|till",
        "no_warning_light|no_oil_light|no_warning_lamp|no_low_pressure_light|no_oil_lamp|no_warning_lights|no_red_light - key|ignition|fitted|has|have|switch",
    ),
    "oil_seen_outside": (
        "engine|cowling|underneath|outside|block|bay|everything|underside|cowl + dry|clean_and_dry|dry_and_clean|spotless|dry_as|bone_dry|interior_dry - not|but|sump|found_dry|run_dry|ran_dry|stick|dipstick|no_oil_in|of_oil|rockers|pump|filter|clutch|bores|start|cylinder|drysump|weather|inside_dry|oil_left|empty",
        "no|without|not_a|nothing|not_any + trace_of_oil|external_leak|external_leaks|oil_leak|oil_leaks|evidence_of_leakage|leaks|leaking|drip|leak|sign_of_a_leak|signs_of_leaks|sign_of_oil|signs_of_oil|oil_loss|visible_leak|visible_leaks - coolant|water|fuel|filter|sender|rate|pressure|stick|dipstick|cylinder|compression|"
        "relief|gallery|air|no_oil_leak_at|head|rad|radiator|seat|valve",
    ),
    "idle_below_spec": (
        "idle_speed|tickover_speed|idle_rpm|idle_revs + =right|correct|spot_on|in_spec|to_spec|as_per|set_right|set_to_spec - low|@not|pressure|psi|light|lamp|needle|gauge|bar|hot|off_idle|lbs",
    ),
    "fuse_blown": (
        "fuse|fuses + checked|intact|good|ok|fine|no_fuse_blown|@not_blown|sound|unblown|healthy|all_right - blown_again|new_fuse|replaced|no_good",
    ),
    "engine_ran_hot": (
        "water|coolant|engine|head|cylinder + temperature|temp|gauge|temperatures + normal|steady|fine|ok|never_rose|usual|in_the_green|constant|right - oil|@not|not|above|to_normal|at_normal|reaches|operating|until|pressure|when|once|up_to|sender|other",
    ),
}
