"""Everyday ways to put findings of instrument, oil, leaks and history, word by word in any order."""

from __future__ import annotations

#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_WAYS: dict[str, tuple[str, ...]] = {
    "level_correct": (
        "oil|level|stick|dipstick|it|sump + where_it_should|up_to_full|to_the_line|at_max|right_up_to|to_the_top_mark|checked_twice|double_checked|spot_on|just_right + be|full|line|max|level|oil|stick|mark|twice|dipped|topped - not|pressure|temp|coolant|fuel|gauge|needle|rpm|bar|idle|over|psi|tank",
    ),
    "dipstick_low": (
        "past_the_low|under_the_hatch|below_the_hatch|past_low|under_min|bottom_of_the_stick|right_at_the_bottom|down_to_the_tip|off_the_bottom + mark|marks|level|oil|stick|had|was|it|dipped - pressure|needle|gauge|temp|knock",
        "needed|swallowed|drank|took + two|three|four|pints|quarts|litres|@volume|half + quarts|pints|litres|stick|showed|full|mark|level|and_a_half - change|hold|holds|filter|every",
    ),
    "dipstick_dry": (
        "dipstick|stick|level + couldnt_get_a_reading|@not_touch|@not_even_touch|no_reading|wont_register|didnt_register|@not_show|nothing_showing - pressure|gauge|clean|over",
    ),
    "level_risen": (
        "more_in|more_oil|more_on|shows_more|higher|reads_higher + check|stick|it|than|every + every_time|each_time|than_last|added_none|than_before|than_i|month|day|none - pressure|revs|gauge|psi|temp|idle|lower",
    ),
    "oil_black_and_gritty": (
        "oil|it + treacle|jet_black|sandy|gritty|like_sand|filthy|black + black|sandy|gritty|sand|fingers|feels|thick - filter|clean|looks_new|screen|blast",
    ),
    "sludge_seen": (
        "tarry|=tar|peat_bog|goo|sludgy|gloop + deposits|inside|cover|under|valve_cover|cam_cover|looks|sump|engine|pan|rocker|poured - pickup|screen|filter|road",
    ),
    "glitter_in_oil": (
        "glittery|sparkly|glitters|sparkles|glittering + gold|metal|paint|silver|like|bronze & oil|stick|dipstick|drain - no|not|new",
        "oil + flecks|flakes|swirl|swirling|pearl|glint|glinting|twinkle|metallic|specks|particles + sun|light|gold|silver|swirling|hits|shine|shiny|looks|drain|stick - filter|pleats|no|not|sump|pan",
        "like + pearl_paint|metallic_paint|metal_flake|glitter_paint|christmas - filter",
    ),
    "fuel_smell": ("stick|dipstick|oil + lit_with_a_match|catch_fire|set_light|light_it - caught",),
    "oil_used_fast": (
        "adding|add|put|putting|pour|top|topping|feed + quart|litre|pint|oil + every_week|every_other|every_fill|a_week|every_time|every_tank|every_few|per_tank|a_day|weekly|daily|always|constantly - change|coolant|water|once|radiator|always_put|always_used|always_run|always_had|always_add_a|same_oil",
        "oil_burner|burns_oil|burning_oil|always_topping|forever_topping|constantly_topping + it|up|an|its|oil|engine|out - water|radiator|coolant|no|not|smell|cabin|fuel|never",
    ),
    "oil_overdue": (
        "oil + older_than|ancient|as_old_as|prehistoric|years_old - engine_is|gauge|sender|pump|seal",
        "@not|no_one|nobody|never + oil_change|oil_changed|changed_the_oil + @distance|@number|years|ages|30k|20k|40k|50k|miles|when|say|knows|remember|last - gauge|light|help|difference|helped",
    ),
    "oil_grade_too_thin": (
        "@thin + filled|in_it|put|using|running|has|had|had_been|was & should|calls_for|book|manual|supposed|meant|specifies|wants & @thick|@grade - helped",
        "modern|thin|thinner|lightweight + oil + old|vintage|antique|classic|prewar|far_too_thin|too_thin|wrong - smoke|fixed|helped|went",
    ),
    "oil_grade_too_heavy": (
        "@thick + running|in_it|using|in|put|has & book|manual|should|calls_for|modern|specifies|supposed|says & @thin|10w30|10w40|modern|engine|5w30|lighter - helped|no_difference|tried|old|gained",
    ),
    "additive_or_flush_in_oil": (
        "tipped|poured|chucked|put|dumped|added|threw|bunged|had + thickener|stop_smoke|stop_leak|additive|treatment|modifier|kerosene|paraffin|diesel_in|atf|marvel + can|bottle|oil|it|tin|some|in|to_flush|a - coolant|radiator|fuel|tank|no|not|helped|difference|tried|better",
    ),
    "oil_temperature_high": (
        "oil_temp|oil_temps|oil_temperature|oil + @hotoil|pegged|redline|270|280|290|300|off_the_clock|sky_high|through_the_roof + oil_temp|temp|temps|temperature|saw|hit|reached|over - coolant|water|below|idle|normal|cold|@pressure|psi|gauge_pegged",
    ),
    "engine_ran_hot": (
        "lost_its_water|lost_its_coolant|no_coolant|without_coolant|no_water|without_water|ran_dry_of_water|lost_all_its_water|temperature_went_off|temp_went_off|temp_pegged|temp_needle_pegged + hot|got|ran|engine|it|gauge|overheated|scale|drove - oil_temp|never|no_leak",
    ),
    "blow_by_high": (
        "cap|filler|breather + smoke|puffs|fumes|pressurising|pressurizing|pressurised|steam_engine|chuffs|blows|huffs + out|pull|off|it|from|crankcase|filler|breather|when|like|with - blocked|pcv|seal|dipstick_out|no|not|exhaust|sweet",
    ),
    "blue_smoke": (
        "puff|cloud|haze|trail|plume|burning_oil|smoke + blue|bluish|burning_oil + start|exhaust|behind|back|when|out|every|overrun|pipe|on|at|light - no|not|crank|bearing|shells|journal|cabin",
    ),
    "coolant_level_falling": (
        "coolant|water|antifreeze + going_somewhere|disappearing|vanishing|being_lost|goes_missing|going_missing|keeps_going|losing|dropping - oil_and|pump|in_the_oil|sump",
    ),
    "oil_film_in_coolant": (
        "slick|rainbow|scum|sheen|film|oily|grease|gunk + radiator|rad|header|coolant|expansion|water_tank - bilge|sea|overboard|fins|outside|front",
    ),
    "coolant_gets_in": (
        "pressure_test|pressure_tested|pressurised|pressurized|tested + coolant|water|cooling + sump|oil|crankcase|past|bore|getting|leaking|dripping|into - holds|held|fine|ok|dry|no|not",
    ),
    "water_at_the_drain": (
        "water|coolant + came_out|came|drained|out_of_the_sump|out_of_the_pan|ran_out + before|first|ahead|load|cupful|drain|lot - like_water|like_black|like_dirty|like|pump|radiator|block|no|not|filter",
    ),
    "drained_volume_low": (
        "barely|hardly|only_half|less_than_half|hardly_anything|scarcely + came|drained|got|out + @volume|oil|litres|quarts|should|anything|half|it - no_pressure|gauge|rockers|pump|crank",
    ),
    "drained_volume_high": (
        "too_much|double|twice|nearly_double|extra|more_than_it_should + came|drained|out|got + out|drained|hold|holds|should|it|gallon - only|barely|in_it|poured",
    ),
    "copper_and_lead_high": (
        "copper & lead & sample|analysis|report|lab|roof|@number|high|up|elevated|ppm - low|normal|ok|okay|unchanged|flakes|filter|bearing_metal|iron|=no",
    ),
    "oil_not_checked_long": (
        "never|@not|hadnt|havent|hasnt + thought_to_check|dipped|checked|looked_at|pulled_the_dipstick + oil|it|level|stick|ages|months|since|weeks|spring - gauge|today|yet|pressure|sender|wiring",
    ),
    "cooling_duct_amiss": (
        "fan_cowl|shroud|duct|ducting|air_duct|cooling_baffle + off|missing|fell|broken|torn|loose|gone|left_off + fan|air|cooling|cooler|radiator|cylinder|duct|cowl|off - sump|oil_on|windage|pan|filler",
    ),
    "needle_stuck_at_one_value": (
        "needle|gauge|reads|it|reading|sits|shows|=frozen|stuck + dead_centre|dead_center|in_the_middle|half|halfway|@number|mid|@pressure + whatever|never_moves|all_the_time|engine_on_or_off|on_or_off|since_i_got|since_i_bought|constantly|regardless|=frozen|no_matter - less|port|starboard|since_i_bought_the|idle|hot|drops|cold|above|max|new|then|revs_up|ever_since|low|goes|zero|history",
        "=frozen|=stuck + at|on + @number|@pressure - idle|throttle|minus|thermostat|temp|valve|relief|plunger|below|drops",
    ),
    "needle_off_zero_at_rest": (
        "ignition_off|key_off|engine_off|turn_it_off|turned_off|switch_off|shut_it_off|switched_off|engine_stopped & needle|gauge|points|says|reads|shows|drop|still|it & @number|@pressure|@not_drop|@not_go|@not_return|above|off_zero - at_zero|on_zero|to_zero|light|lamp|flicker|idle|hot|cold|minutes|before|filter",
    ),
    "needle_steps_at_once": (
        "needle|gauge|it|reading|goes|snaps|jumps + full_to_nothing|nothing_to_full|0_and|zero_and|between|full_scale|and_back + blink|snaps|instantly|instant|flash|snap|bang|split_second|jumps - over_bumps|corners|idle|slowly|bounces",
    ),
    "other_gauges_also_wrong": (
        "=gauges|=clocks|=instruments|=dials|every_gauge|fuel_gauge|temp_gauge|temperature_gauge + temp|temperature|fuel|every|all|dash|reading|speedo|volt|voltmeter|amps + haywire|creek|crazy|wrong|dead|died|funny|duff|nuts|quit - fine|ok|normal|steady|works|working|oil_temp_gauge",
    ),
    "wiggle_moves_needle": (
        "push|press|fiddle|touch|move|moving|nudge|knock + plug|wire|connector|lead|terminal|spade & back_to_life|comes_back|works|goes_off|goes_out|jumps|flickers|moves|light|needle|gauge - pushed_out|drain|spark|no_effect|gallery|tapping|port|moved_the_gauge|moved_the_sender",
    ),
    "sender_wire_broken": (
        "wire|lead|insulation|cable|loom|strand|harness + eaten|chewed|gnawed|burnt|burned|melted|chafed|snapped|frayed|broken|rubbed|cut|severed + sender|sensor|switch|gauge|manifold|exhaust|oil|block|through|lead - plug_wire|spark|starter|battery|strap|earth|ground",
    ),
    "sender_connector_loose": (
        "terminal|spade|connector|contacts|connection|pins + furred|furry|corroded|green|dirty|loose|crusty|rusty|bad|oxidised|oxidized|dodgy - battery|good|gallery|galley|earth|ground|spark|drain|filter|rusty_water|good",
    ),
    "sender_damaged": (
        "crimp|terminal|tab|top|body|nose|plastic + came_apart|broke|snapped|cracked|split|broken|smashed|crushed + sender|sensor|switch|sending_unit - wire|gauge|lead|leak",
    ),
    "ground_strap_bad": (
        "earth|ground|strap|earth_strap|ground_strap|ground_cable|earth_lead|braid + strand|thread|hanging|corroded|broken|missing|loose|rotten|rotted|bad|dodgy|off|poor|gone - wrench|filter|cleaned|fitted|added|new|fixed|leak|pump|good|belt|sump|ground_up|crank|journals|up",
    ),
    "gauge_line_kinked": (
        "line|tube|pipe|capillary|nylon_line + trapped|squashed|kinked|kink|pinched|crushed|nipped + gauge|dash|nylon|copper|panel|capillary|behind - cooler|suction|pickup|fuel|brake|turbo",
    ),
    "gauge_line_leaking": (
        "gauge_line|gauge_pipe|gauge_tube|nylon_gauge_line|capillary|plastic_gauge_tube|gauge_hose + melted|split|fractured|burst|leaking|sprayed|spraying|cracked|leaks|chafed|broke|let_go|popped|blew - kink|blocked|clogged|no_oil",
    ),
    "gauge_damaged": (
        "gauge + =knackered|is_shot|=buggered|=broken|=smashed|toast|kaput - line|pipe|pump|bearing|sender|tube",
    ),
    "tap_frees_needle": (
        "tap|tapping|thump|bang|hit|flick|whack|knock + dash|gauge|glass|panel + needle|gauge|reading|going|up|jumps|moves|works|free - no_difference|nothing|sump|noise|sender|engine|bottom|end|rod|knocks|knocking|deep|heavy|loud",
    ),
    "no_oil_at_line_end": (
        "no_oil|nothing|not_a_drop|dry|@not_drip + gauge_line|line|pipe|tube|back_of_the_gauge|gauge_end|at_the_gauge|behind_the_gauge + gauge|back|end|comes|cracked|dry|out|at - kink|sender|filter|crank|block_port|leak|no_leaks|stick|gauge_shows|on_the_gauge|amiss|wrong|untoward",
    ),
    "second_instrument_disagrees": (
        "two|both|three|different|second|other + gauge|gauges|instruments|sensors + different|disagree|two_different|conflicting|opposite|@not_agree - both_say|both_read|both_show|both_reading|agree|all_say|all_read|on_two|with_two|by_two|so_its|real|confirmed|sender|port|engine|location|same",
    ),
    "panel_reads_too_low": (
        "real_pressure|actual_pressure|true_pressure|test_gauge|mechanical & dash|panel & says|reads|shows|lower|only|thinks & @pressure|@number - optimistic|high|over|same|too",
    ),
    "panel_reads_too_high": (
        "optimistic|flattering|generous|over-reads|overreads|reads_high|lies_high + dash|gauge|panel|it - sender|tach|rev|speedo",
        "test_gauge|real|true|actual|mechanical & dash|panel & where|optimistic|only|really & reads|@number|@pressure - says_15|low|lower_than",
    ),
    "idle_below_spec": (
        "idle|idles|tickover|idling + down|dropped|only|slow|low|way_too + @rpm|400|450|500|350|550|=slow + should|spec|supposed|to|at|book|down|set - pressure|psi|gauge|light|bar|at_idle|@pressure|lbs|needle",
    ),
    "lamp_slow_to_go_out": (
        "light|lamp|gauge|needle|pressure + used_to|takes|longer + straight|straight_out|instantly|immediately|couple|longer|few|slower & now|each|every|start|and_longer|these_days - warm|idle|hot",
    ),
    "nothing_warned": (
        "never|no|@not|without + light|warning|lamp|alarm|gauge + before|when|until + bang|seized|went|blew|let_go|knocked|died|locked|failed|threw",
    ),
    "engine_runs_normally": (
        "goes|pulls|runs|running|drives|engine|sounds|it|ran + like_a_train|better_than_ever|like_a_champ|like_new|like_a_watch|beautifully|a_treat|sweet|faultlessly|no_complaints|smooth_as + train|ever|it|champ|well|along|perfectly|silk|engine|treat|otherwise|still|nut|champ|new|watch - until|pump|gauge|used_to|before|then|lifters|needle|reads|pressure|light",
    ),
    "oil_on_the_ground": (
        "oil|leaves|marks|drips|it + spot|puddle|territory|patch|stain|everywhere_i_park|wherever_i + park|parked|territory|stop|ground|drive|goes|i|floor - gauge|no|not",
    ),
    "drain_plug_found_loose": (
        "plug|drain_plug|sump_plug|bung + vibrated|worked_loose|rattled|dropped|fell|came + out|loose|off|road|sump - gallery|relief|spark|sender|connector|filter|core|glow|wire|freeze|cam|timing|welch|plug_lead|sensor",
    ),
    "declined_over_months": (
        "lower|less|worse|down|lower_and_lower|a_bit_lower + every|each + year|season|month|summer|winter|service - day|run|trip|start|week|mileage|time|oil|level",
    ),
    "fell_suddenly": (
        "one_minute|one_second|one_moment + next|then|and + zero|nothing|minute|second|gone|@number|moment",
        "all_at_once|out_of_the_blue|out_of_nowhere|without_warning|in_an_instant|from_one_minute + zero|nothing|dropped|gone|pressure|fell|lost|gauge|went|light - seals|knock|noise|locked|scale|max|pegged|high|maxed|next_to|hardly",
    ),
    "grows_worse": (
        "getting|gets + worse|lower_every - @hours|@minutes|no|not|any|used|it_got|better|than|pan|light|smoke|leak|leaking|leaks|leaked|rust|weather",
    ),
}

#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_WAYS_INSIDE: dict[str, tuple[str, ...]] = {
    "service_neglected": (
        "never|@not|nobody|non|nonexistent|non-existent|zero|no|neglected|poor + looked_after|changed_the_oil|maintained|serviced|maintenance|cared_for|service_history + owner|was|last|previous|it|ever|been|engine|its|whatsoever|had - yet|i_have",
    ),
    "oil_just_changed": (
        "since|after|following|just|yesterday + oil_change|oil_service|changed_the_oil - oil_pump|oil_filter|oil_cooler|oil_pressure|oil_pan|oil_sender|oil_switch|oil_seal|oil_seals|oil_line|oil_lines|oil_pickup|oil_sump|oil_gauge|oil_tank|@hours|40_h| every|never|miles_since|years|ages|overdue|hours_since|months",
    ),
    "hot_and_thin": (
        "scorcher|heatwave|heat_wave|boiling_day|hottest_day|blazing|desert|tropical + it|was|day|heat|of|the|in|summer - oil|coolant|engine|start",
    ),
    "gears_worn_out": (
        "pump|rotors|pump_gears + worn|tired|sloppy|knackered|had_it|past_it|wear + nothing|out|badly|lot|lots|well|is|was|it|very|looks|gears|pumps|totally - distributor|dizzy|skew|cover|plate|drive|sender|belt|cam|not|no|vacuum|water",
    ),
    "cover_grooved": (
        "wear|worn|groove|step|ridge|lip|scoring|score + end_plate|endplate|cover|cover_plate|backplate|pump_plate + feel|pump|nail|fingernail|deep|gear|rotor|it|in - rocker|valve|timing|cam|clutch|shaft|pressure_plate",
    ),
    "pump_scored_seen": (
        "pump|housing + gravel|chewed|gouged|scarred|torn_up|ploughed|scored + inside|pump|housing|body|bore|looked|gravel - plate|cover|water|fuel|screen|shells|bearing",
    ),
    "pump_gear_broken": (
        "tooth|teeth|lobe|corner|chunk + lost|off|missing|broken|broke|snapped|chipped|sheared + pump_gear|pump_gears|rotor|rotors|pump|idler_gear - drive|distributor|dizzy|skew|timing|cam_gear|worm",
    ),
    "pump_noise": (
        "pump + marbles|bag_of|moan|whirr|whirring|howl|whine|graunch|gravel|singing|clatter - power|water|fuel|vacuum|steering|air|no|not|sounds_ok|sounds_good|steel|lift|lifters",
    ),
    "drive_shaft_rounded": (
        "drive|hex|tang|shaft|tongue|corners|slot|flats|blade + rounded|worn_away|rounded_off|worn_off|wallowed|nearly_worn|rounding|mushroomed|twisted_like + pump|drive|shaft|end|hex|itself|corners - gear|rotor|snapped|broken|cam|rocker",
    ),
    "drive_gear_stripped": (
        "gear|skew|pinion + shed|lost|stripped|missing|no|bald|sheared + teeth|tooth|bald + skew|distributor|dizzy|drive|gear|pump_drive|that_drives - timing|plastic|nylon|fibre|fiber|timing_gear|pump_gear_lost|starter|ring|flywheel|rotor",
    ),
    "drive_gear_worn": (
        "dizzy|distributor|drive|skew|cam + gear|teeth + eaten|worn|thin|razor|blades|chewed|points|half_gone|knife - pump_gears|timing|stripped|missing|lobes|rotor",
    ),
    "drive_coupling_sheared": (
        "coupling|pin|key|dog|tang|coupler|tongue|sleeve + let_go|sheared|snapped|broke|gone|split|fell_out|shattered|failed + pump|drive|shaft|distributor - gudgeon|wrist|crank_pin|clutch|prop|water|fuel|not|@not|steering",
    ),
    "drive_not_engaged": (
        "distributor|dizzy|tang|shaft|drive + @not_down|not_down|not_in_the_slot|@not_in_the_slot|@not_engage|@not_engaged|@not_engaging|not_engaging|not_seated|@not_dropped|not_all_the_way|@not_mesh + pump|slot|shaft|pump_shaft|drive|way - seal|cap",
    ),
    "pump_bolts_loose": (
        "pump + hanging|hanging_on|one_bolt|dangling|loose|@not_tight|forgot_to_tighten|forgotten_to_tighten|never_tightened|@not_torqued|finger_tight + bolt|bolts|by|pump|tighten|only|nuts|them|tight - union|pipe|line|hose|water|fuel|vacuum|cover|steering|relief|belt|pickup",
    ),
    "mount_gasket_missing": (
        "no|without|missing|forgot|forgotten|never_put|left_out|@not + gasket|o_ring|oring|o-ring|seal|paper + pump + block|bolts|fitted|between|base|in|mount|mating - fuel|water|vacuum|cover|pickup|leak|new|torn|blown",
    ),
    "piece_in_pump": (
        "bit|piece|chunk|lump|nut|bolt|washer|ring|rag|rtv|circlip|fragment|shard + gone_through|been_through|went_through|found|jammed|in_the_gears|passed_through|chewed|mangled + pump|gears|rotors - gasket|relief|pickup|screen|block|filter",
    ),
    "pump_dry_inside": (
        "pump + not_a_drop|bone_dry|no_oil_in|empty|dry + oil|inside|pump|of|was|in - filter_off|line|gauge|vacuum|fuel|water|primed|stick|seal",
    ),
    "drill_gives_good": (
        "drill|electric_drill & great|plenty|good|strong|@pressure|lots|healthy|loads & pressure|straight|oil|made|gave|psi|it - no|not|nothing|only|all_i|barely|but|hole|zero|little|low|is_all|lifter|main|streaming|pouring|except",
    ),
    "drill_gives_little": (
        "drill & only|is_all|barely|all_i|just|hardly|low|poor|weak|no_more_than & @pressure|pressure|psi|get|gets|makes - hole|drilled|plenty|good|engine_running|when_running|running_it|started|fired|starts",
    ),
    "high_volume_pump_fitted": (
        "big|bigger|hv|high_volume|high_pressure|uprated|heavy_duty|high_capacity + pump + in_it|fitted|put|has|got|already|installed|running - tried|no_difference|now|gained|no_change|helped|water|fuel|air|new|replaced|going",
    ),
    "wrong_pump_fitted": (
        "pump + for_a_different|for_another|off_a_different|wrong|isnt_the|@not_the_right|not_the_right|incorrect + engine|one|model|right|it|fitted|motor - gasket|fuel|water|swapped|going|sender",
    ),
    "stood_long": (
        "sitting|sat|stood|parked|left|lying|abandoned|standing|rotting + field|ages|barn|years|hedge|shed|yard|decades|decade|@longtime|orchard - gauge|needle|pressure|light|pump|used|idle|at_idle|morning|overnight|oil_has",
    ),
    "began_after_revving_hard": (
        "limiter|over-revved|overrevved|over_revved|missed_a_gear|missed_gear|valve_bounce|buzzed + off|bounced|bounced_it|hit|then|after|since|lost|to|it - before|by_the|at_the|near_the|no|never|needle_red|gauge",
    ),
    "relief_spring_short_or_broken": (
        "spring|relief_spring + soft|half_the_length|two_bits|collapsed|shorter|snapped|sagged|weak|tired|broken|settled|bits|short + relief|gone|new_one|length|spring|new|plunger|it|was|had|in - valve_springs|i_stretched|fitted|longer|clutch|governor|made_no|stiffer",
    ),
    "relief_found_stuck": (
        "relief|relief_valve|prv|regulator|pressure_valve + @not_budge|@not_move|wouldnt_budge|wouldnt_move|gummed|seized|solid|stuck_fast|rusted_in|jammed - voltage|filter|fuel|adjuster_nut|cap",
    ),
    "shells_wiped": (
        "shells|babbit|babbitt|white_metal|bearing|mains|rods + smeared|burnt_up|burned_up|burnt|melted|cooked|fried|wiped|toast|running_out|molten|gone_blue - journal_only|no|not|smell|gasket|oil|flakes|wire|valve",
    ),
    "shells_scratched": (
        "shells|bearings|bearing|inserts + sandpaper|scratched|scored|gouged|scratches|=lines|grooved|sandpapered|scuffed - no|not|ball|seat|journal_only|pump|cam|without|thrust",
    ),
    "crank_scored": (
        "crank|crank_pin|crankpin|journal|journals|crankshaft + cut_up|chewed|torn_up|grooved|scored|blue|blued|ruined|scarred|damaged|rough - no|not|fine|good|pulley|seal|smooth|cam|sensor|turbo",
    ),
    "hard_to_turn": (
        "takes|took|needs|needed|need + breaker_bar|two_hands|two_men|big_bar|long_bar|all_my_strength|all_my_weight + turn|turn_it|turn_over|rotate|move|crank|engine|spin - bolt|nut|filter|plug|torque|pump",
    ),
    "engine_seized": (
        "engine|motor|crank|it + engine_stuck|engines_stuck|is_stuck|its_stuck|stuck_tight|wont_budge|locked_tight|@not_move_at_all|@not_budge|wont_move_at_all - valve|needle|gauge|pump|bolt|sump|relief|plunger|light|filter|throttle|float|ring|tensioner|at_@number|lifter|at|needle_valve|thermostat|plug|pressure|reading|on|hot",
    ),
    "freshly_rebuilt": (
        "rebuild|rebuilt|build|built + @distance|@hours|miles|hours|fresh|just|new|first_start|run_in|running_in + on|since|rebuild|it|old|after|into|the|in - @thousands|@hundreds|@manyhours|@lowmiles|@highmiles|@years|to_build|wont_build|build_up|years|years_ago|pump|gearbox|carb|turbo|1000_hours|distributor|before|needs|since_the_rebuild_10|injection",
        "just|fresh|freshly|newly|straight + put_together|assembled|from_the_builder|back_from_the_builder|out_of_the_shop|from_the_machine_shop|from_the_engine_shop - gauge|sender|pump_just|gearbox",
    ),
    "clearances_built_wide": (
        "set_up_loose|set_it_up_loose|built_loose|built_it_loose|loose_build|wide_clearances + clearance|clearances|builder|engine|bearing|bearings|build|when_it|set_it - bolt|nut|valve|tappet|cap",
    ),
    "clearances_never_measured": (
        "never_plastigaged|no_one_measured|never_measured + clearance|clearances|builder|bearing|bearings|build - bolt|nut|valve|tappet|cap|filter",
        "nobody_checked|never_checked|@not_check + clearance|clearances|plastigage|plastigauge - valve|tappet",
    ),
    "wrong_shells_fitted": (
        "shells|bearings|inserts|shell + sent|supplied|gave|fitted|ordered|are|on & crank|crankshaft|journals & thou|@length|ten|twenty|under|undersize|ground - polished|clearance|new_shells|matched|right|correct|to_suit|and_new|measured|both_standard|both_std",
    ),
    "caps_mixed": (
        "cap|caps|main_caps|bearing_caps + swapped|mixed|where|wrong_place|wrong_order|back_to_front|wrong_way|muddled|backwards + main|cap|caps|goes|round|up|order|bearing|turned - filler|oil_cap|distributor|relief|valve_cap|radiator|rotor",
    ),
    "filter_misfitted": (
        "filter + crooked|cocked|cross_threaded|crossthreaded|skew|not_seated|@not_square|on_wrong|pinched_seal - air|fuel|collapsed|screen",
    ),
    "cooler_found_blocked": (
        "cooler|cooler_lines|heat_exchanger + @not_blow_through|couldnt_blow|jammed|stuffed|bearing_material|full_of|blocked|clogged|plugged|silted - outside|fins|air|bypassed_no|no|not_blocked|mud|bugs|face|front|seed",
    ),
    "sump_dented": (
        "sump|pan|oil_pan + jacked|jack|whack|whacked|knock|clout|bash|hit|grounded|speed_bump|kerb|rock|curb|pushed|dinged|clouted + sump|pan|it|on|good|the|up|under|a|with - drain|leak|plug|gasket|cleaned|noise",
    ),
    "turbo_failed": (
        "turbo|turbocharger + snapped|blew|gone|failed|blown|shaft_snapped|died|went|exploded|let_go|grenaded|killed - feed|pipe|hose|line|gasket|not|no|lag|new_turbo_went",
    ),
    "history_unknown": (
        "got_it|bought_it|came_from|inherited|bought + mate|bloke|guy|estate|auction|widow|dealer|friend|uncle|swap_meet + knew_nothing|no_idea|no_history|nothing|didnt_know|dont_know|unknown|who - sender|gauge|filter|pump|oil_from|part",
    ),
    "high_mileage": (
        "lot_of|lots_of|loads_of|galactic|starship|massive|huge|intergalactic|big|mega|serious + miles|mileage|hours|kms|kilometres + on|has|it|engine|clock|done|high|mileage|got - ago|since|low|few|every|change|drive|drove|last",
    ),
    "worked_hard": (
        "=caned|=thrashed|=flogged|flat_to_the|held_flat|held_wide_open|=wide_=open + motorway|hour|hours|miles|all_the_way|home|minutes|freeway|all_day - nut|bearing|shells|gauge|noise|in_a|noise|plug|needle",
    ),
    "raced_or_heeled": (
        "track_day|trackday|drag_strip|racing|raced|sailing_hard|hillclimb|sprint|banger_racing|banger_car|rallycross|rally_car|rally_stage|forest_rally|special_stage|rallied|regatta|beating_to + day|did|at|in|it|hard|strip|on|club|the|session|weekend|wind - tracked|belt|keep_track|sound_track|trace|drive|thrust",
    ),
    "ran_on_without_pressure": (
        "drove|ran|driven|rode|run|used|flew|carried_on|kept + like_that|like_this|in_that_state|that_way|regardless|anyway + week|weeks|days|miles|hour|month|minutes|home|season|year - fine|no_problem|towed|always|been|sat|stood|trouble|reads|unchanged",
    ),
    "relief_plunger_sticks": (
        "relief_piston|relief_plunger|regulator_piston|regulator_plunger|pressure_piston|valve_piston|valve_plunger & sticks|sticky|=sticking|hangs|binds|reluctant|@not_drop|@not_fall|@not_slide|@not_move|needs_a_tap|had_to_tap - rings|cylinder|engine|filter|@not_stick|@not_sticky|@not_sticking|bypass|stick_it",
        "plunger|piston|relief + @not_fall|@not_drop|@not_slide|drag|hangs|sticky|catches|tight + bore|weight|own|freely|oiled|its - rings|cylinder|engine|filter",
    ),
}
