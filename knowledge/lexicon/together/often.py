"""Words that together name what people report most often, in whatever order they stand."""

from __future__ import annotations

_IT = "engine|motor|it|she|car|boat|truck|tractor|bike|thing"
_NOT_TAKEN = "pump|pressure|gauge|light|lamp|filter|sender|fuel|water|coolant"
_HER = "it|her|the_engine|engine|the_motor|the_lot|that_one|that_engine|him"
#: what somebody did who saw the warning: "shut it down", "so we cut the engine"
_STOPPED_IT = "|".join(
    (
        *(
            f"{verb}_{her}_{way}"
            for verb in ("shut", "turned", "switched")
            for her in _HER.split("|")
            for way in ("down", "off")
        ),
        *(
            f"{verb}_{her}"
            for verb in ("killed", "cut", "=stopped")
            for her in ("the_engine", "engine", "the_motor")
        ),
    )
)
_SO_STOPPED = "|".join(
    f"so_{who}{verb}"
    for who in ("i_", "we_", "he_", "she_", "they_", "")
    for verb in (
        "shut_down",
        "shut_it",
        "shut_her",
        "stopped_her",
        "stopped_it",
        "shut_the",
        "cut_the",
        "killed_it",
        "killed_the",
        "stopped_the",
        "turned_it_off",
        "turned_her_off",
        "switched_off",
        "switched_it",
        "off_again_at",
    )
)
#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_OFTEN: dict[str, tuple[str, ...]] = {
    "stopped_with_loss_of_power": (
        f"engine|motor|she|prop|propeller + died_on_me|shut_off_at|=stopped_dead|=stopped_turning|surged_then|=stopped_in_flight|failed_in_flight|conked_out|expired|gave_up_the_ghost|=stopped_itself|"
        f"=stopped_without_warning|cut_out|cut_dead|quit_on_me|died_at|died_under|died_in|died_after|died_half|died_with|=died - {_NOT_TAKEN}|down|noise|away|rattle|before|if|until",
        "failed|stopped|failure|quit|died + in_flight|in_cruise|under_way|underway|on_the_road|at_speed|on_the_motorway|at_70|mid-corner|in_the_air|on_the_way_home - "
        "gauge|light|lamp|pump|noise|alternator|oil_pressure|hose|cooler|fitting|filter|bearing|pressure|line|bolt|then_stopped_it",
        "lost_the_engine|lost_an_engine|engine_was_lost|power_was_lost|lost_all_drive|lost_drive|power_went_to_nothing|power_dropped_to_nothing",
        "coughed|spluttered|faltered|hiccuped|surged & stopped|died|quit|dead - gauge_stopped|noise_stopped",
        "died|stopped|quit + restart|restarted|start_again|fire_again|refire + @not|refused|would_not|wouldnt|failed - gauge|light|lamp|alarm|buzzer|warning|pressure|noise|knock",
    ),
    "oil_milky": (
        "oil|sump|stick + tea_with_milk|milky_tea|colour_of_tea|white_coffee|like_coffee|like_milk|caramel|like_custard|butterscotch|mushroom_soup|chocolate_milk - no|not|filler|cap",
    ),
    "engine_runs_normally": (
        f"{_IT} + purrs|purring|runs_great|runs_lovely|runs_fine|runs_well|running_fine|ran_fine_throughout|sounds_fine|sounds_good|sounds_great|sounds_lovely|sounds_okay|sounds_no_different|drives_fine|drives_great|"
        "as_it_always_did|like_it_always_did|sounds_the_same|sounds_as_before|like_a_top|like_a_dream|like_new|happy_as|starts_and_runs|never_sounded|@not_skip|no_different|as_ever|like_silk|as_smooth_as - "
        "until|till|before|then|gauge|pressure|needle|light|sender|bearing|shells|journal|moves|slid|looks|pump|stick|rotor|reads|used_to",
        "everything|all + sounds_right|sounds_good|sounds_well|sounds_fine|sounds_normal|running_well|runs_well|seems_happy|sounds_healthy - until|then",
        "no|not_a + misfire|misfires|bad_noises|funny_noise|strange_sounds|strange_sound|odd_sounds|nasty_noises|weird_noises|weird_noise|clatters_or_knocks|unusual_sound|unusual_sounds - not_yet|until",
    ),
    "oil_loss_fast": (
        "lost|dumped|lose|loses|gone|emptied|out + gallon|gallons|litres|quarts|sumpful|all_the_oil|everything|its_oil|the_oil|its_whole|itself|five_litres|six_quarts + "
        "minute|minutes|mile|miles|road|trip|bay|seconds|stream|everywhere|instantly|hour|yards|hundred - pressure|changed|drained|month|week|per|every|coolant|water|change|dipstick",
        "oil|oil_level + leaving_in_a|in_a_stream|coming_out_in|left_in_a|running_out_as_fast|as_fast_as|out_the_bottom|straight_out|dropped_to_nothing|went_to_nothing|fell_to_nothing - pressure|gauge|needle",
        "five|six|four|three|@volume|litres|quarts|gallon + oil|on_the_road|on_the_floor|on_the_ground|under_it + road|floor|ground|minute|minutes|seconds|drive|garage - pump|cylinder|gear|chain|drained|change|poured|put|every|spilt|spilled|added|holds|took|needs",
    ),
    "declined_over_months": (
        "pressure|gauge|reading|psi + season|summers|years|months|winter|winters|year|weeks|week + come_down|lower|dropped|declined|fallen|lost|gone_down|dropping|crept_down|worse|loses|sagged|drifted - was_changed|stood|sat|ago|"
        "since|used|rebuilt|suddenly|overnight|for_years|last_week|this_week|unused|storage|over_winter|renewed|replaced|fitted",
    ),
    "fuel_smell": (
        "oil|stick|dipstick|it + stank|stunk|smelt|smelled|reeked|stinking + petrol|gas|gasoline|fuel|diesel - exhaust|cabin|bay|burning",
    ),
    "gauge_line_kinked": (
        "gauge_line|gauge_pipe|gauge_tube|capillary|gauge_hose + flat_spot|squashed|flattened|crushed|kink|pinched|trapped|dent|sits_on|bent_double",
    ),
    "maker_calls_it_normal": (
        "dealer|garage|shop|maker|they|mechanic & always_read_low|all_read_low|normal_for|nothing_wrong|perfectly_normal|within_spec|quite_normal|nothing_to_worry|sent_me_home|characteristic - replaced|sounds|found",
    ),
    "no_drive_end_float": (
        "end_float|end_play|endfloat|endplay & pump|pump_shaft|drive_shaft & none|nil|zero|binding|bound - crank|thrust|cam",
    ),
    "cooler_left_off": (
        "cooler + left_off|out_of_the_circuit|from_the_circuit|deleted|taken_out_of|by_previous_owner|lines_looped|not_fitted|blanked_off - trial|made_no|no_difference|pressure|tried|i|we",
    ),
    "dipstick_low": (
        "reads|read|level|oil|shows + low_on_the_stick|low_on_the_dipstick|down_on_the_stick|way_down|very_low|too_low|rather_low|well_low|dangerously_low|below_the_mark|below_low|under_the_mark - pressure|psi|gauge|needle|temperature|idle|coolant|fuel|light|its_way|making|all_the_way|trickle|running|found",
        "took|needed|wanted|required|swallowed|drank|accepted + @volume|litre|litres|quart|quarts|pint|pints + bring|fill|top|full|mark|before|to_get|up - change|every|filter|capacity|day|week|month",
    ),
    "dipstick_dry": (
        "no_oil_registering|no_oil_showing|oil_level_zero|level_zero|nothing_registered_on|came_out_dry|stick_dry|dipstick_dry|stick_was_dry|dry_stick|dry_dipstick|absolutely_no_oil_in|had_no_oil_in|had_no_oil_left|was_out_of_oil|ran_out_of_oil|run_out_of_oil|"
        "no_oil_in_her|no_oil_in_it|not_a_drop_in_it|not_a_drop_of_oil|engine_had_no_oil|no_oil_in_the_pan|no_oil_in_the_crankcase - pressure_out_of_oil",
    ),
    "level_correct": (
        "stick|dipstick|level|oil_level + shows_full|shows_it_full|reads_full|says_full|at_full|on_full|to_the_mark|filled_correctly|dead_on|bang_on|perfect|where_it_should|right_up|good|in_the_middle|mid-way|midway|near_the_top|near_full|just_under_full - "
        "not|coolant|fuel|pressure|water|idle|under_idle|grade|temp|bilge|gearbox|low|over|@not|looking",
        "filled_correctly|filled_to_the_right|correctly_filled|full_of_clean_oil|plenty_in_it|had_plenty_of_oil|has_plenty_of_oil|enough_oil_in|oil_is_full|oil_was_full|oils_full|oil_full|full_oil|full_on_oil|oil_at_full|oil_up_to|oil_to_the - of_oil_to|added|adding|poured|full_of|full_of_metal|light|lamp|gauge",
    ),
    "high_mileage": (
        "@highmiles|@manyhours|huge_miles|huge_mileage|many_thousand|quarter_of_a_million|half_a_million|hundred_thousand|starship + done|clock|on_it|miles|distance|hours|meter|covered|up|original|engine|now|showing - since|change|ago|low|only|every|per|after_only|later|"
        "couple|few|five_thousand|ten_thousand|three_thousand|first|rebuild|rebuilt",
        "worn_out_old|tired_old|very_worn|well_worn|high_mileage|old_worn|clapped_out|on_its_last_legs + engine|motor|unit|lump|it|car|one - bearing|bearings|pump|gears|shell|gear",
    ),
    "raced_or_heeled": (
        "donuts|doughnuts|autotest|autosolo|autograss|gymkhana|slalom|=drifting|hillclimbing|hooning|power_slides|powerslide|burnouts|nurburgring|hot_lap|hot_laps|qualifying|formation_lap|pit_lane|starting_grid|on_the_grid + in|on|at|doing|during|after|while|a|the|day - needle|grid_of|tide|current|channel|boat",
        "hard_over|heeled_over|rail_down|lee_rail|on_its_ear|heeling_hard + heeled|boat|yacht|tack|sailing|on|hard|when|was - rudder|needle|gauge|helm",
    ),
    "worked_hard": (
        "pulling_hard|working_hard|pulled_hard|hammering_down|flat_to_the_boards|flat_to_the_floor|foot_to_the_floor|pedal_to_the_metal|full_noise|=nailed|thrashing_it|caning_it|giving_it_stick|giving_it_large|hard_charging|full_steam + "
        "hill|motorway|hours|miles|up|down|all|for|it|when|the|on|along|mile - noise|gauge|pressure|light|drops",
        "full_load|heavy_load|=loaded|laden|trailer|plough|harrow|baler|mower|dragging|hauled|heavy_trailer|big_load + climbing|hour|hours|dragging|up|hill|all|pulling|long|mountain - loaded_up|loaded_it_up|torque|bearing|only|no|when_not",
    ),
    "engine_banged_or_shook": (
        "bang|bangs|banging|vibration|vibrations|shudder|thump|shake|shaking|shook|judder|clunk|explosion + heard|loud|terrible|awful|massive|severe|like|so_hard|whole|violent|horrible|noise|series|felt - no|not|without|hand|needle|gauge|wire|light|road|"
        "baffle|by_hand|test|rods_by|under_braking|wheel|brakes",
    ),
    "burning_oil_smoke": (
        "smoke|fumes|smell|cloud|haze + vents|bonnet|hood|cabin|cab|cockpit|cowl|cowling|burning|burnt_oil|hot_oil|manifold|engine_bay|engine_compartment|everywhere|inside - no|not|exhaust_pipe|tailpipe|petrol|coolant|sweet|dipstick_smell|stick|filler|smell_of_petrol|fuel",
    ),
    "history_unknown": (
        "just|recently|last_week|last_month|newly + got|bought|acquired|purchased|picked + truck|car|boat|tractor|bike|van|engine|it|one - running|working|going|started|new|gauge|sender|pump|oil|filter|kit|part|hot|switch",
        "bought_it_like|bought_like_that|came_like_that|bought_as_seen|no_history|past_owner|previous_owner|last_owner|seller + like|that|said_nothing|didnt|knew|know|knows|unknown|history|seen|says|owner|told",
    ),
    "ran_on_without_pressure": (
        "drove|driven|=ran|=run|flew|flown|rode|used|kept|carried + like_that|like_this|anyway|regardless|back|home|another|going + week|month|miles|mile|@distance|days|home|base|pressure|light|lamp|zero|hour|hours - flat_out|full_throttle|full_load|hard|no_damage|no_harm|no_problem|fine|well|towed|trailered|ok|pressure_fine|"
        "until_the_light|motorway_run|a_run|the_run|long_run|good|before|low_on|perfect|recovered|happily|normally|came_back|comes_back|truck_home|cold|rebuilt|pressure_kept|alarm_kept|light_kept|lamp_kept|buzzer_kept|needle_kept|gauge_kept|on_and_off|cutting|shutting|tripping|stopping|flickering|dropping|stalling|dying|coming|switching",
        "drove_on|ran_on|run_on|driven_on|flew_on|rode_on|carried_on|kept_on|drove_it_on|ran_it_on + week|month|miles|mile|@distance|days|base|pressure|light|lamp|zero|hour|hours - no_damage|no_harm|no_problem|"
        "fine|well|ok|until_the_light|good|before|perfect|recovered|happily|normally|came_back|comes_back|cold|light_kept|lamp_kept|needle_kept|gauge_kept|on_and_off|coming|switching|one|three|two|cylinder|cylinders",
        "kept_the_revs_up|carried_on_regardless|carried_on_with|put_tape_over|assumed_it_was_the_sender|assumed_the_gauge|thought_it_was_the_gauge|blamed_the_sender|thought_it_was_the_sender + carried|drove|on|and|ran|so|light|sender|gauge - checked|replaced|swapped|changed",
    ),
    "second_instrument_disagrees": (
        "mechanical|test|direct|second|other & gauge & dash|panel|electric|light|lamp & @not_agree|disagree|differ|different_story|contradict|@not_match|nothing_like",
        "light|lamp & gauge|needle & says_no|says_otherwise|says_one_thing|different_story|contradict|disagree|@not_agree|while_the_warning|but_the_light|but_the_lamp|but_light|yet_the_light|though_the_light|but_the_gauge|but_gauge|yet_the_gauge - key",
    ),
    "known_for_model": (
        "known_for|famous_for|notorious_for|prone_to|infamous_for|renowned_for|common_on_these|common_with_these|common_problem|common_fault|known_issue|known_fault|known_problem|tsb|well_known|typical_of_these + model|it|them|these|this|engine|out|on|with|for|type|problem|fault - not|no",
    ),
    "stood_in_frost": (
        "below|minus|under + 10|20|15|25|30|@temperature|@frost|zero + it_was|degrees|outside|morning|night|air|freezing|temperature|weather - pressure|psi|idle|rpm|@pressure|revs|oil_temp|above|gauge|reads|needle|drop|creeping|sinking|dropping|falling|climbing|showing|reading|sitting|dash",
        "left_out|parked_out|stood_out|out_all_night + snow|cold|frost|ice|freezing",
    ),
    "service_neglected": (
        "never|rarely|ignored|@not + changed_the_oil|change_the_oil|been_serviced|serviced|had_a_service|oil_change_light|service_light|looked_after|changed_its_oil + owner|year|years|it|he|ever|been|ages|long|last|previous|for - without_fail|without_miss|yet|i_have|filter|needs",
    ),
    "filler_cap_found_off": (
        "cap + sitting_on|left_on_top|lying_on|found_on|was_on_the + battery|engine|wing|airbox|air_cleaner|slam_panel|bench|manifold|rocker - radiator|distributor|bearing|relief|valve_cap|tight",
        "dipstick|stick|filler|oil_cap + @not_pushed|@not_home|@not_seated|@not_screwed|not_fully_home|not_pushed|half_out|hanging_out|loose - level|nothing",
    ),
    "stood_long": (
        "@not|never|first_time + been_started|been_run|turned_a_wheel|run|started|turned_over|fired_up + since_@year|since_last_year|since_the_war|in_years|for_years|last_autumn|last_summer|last_season|@years|@longtime|decades - come_on|once_the|rough|light|lamp|oil_pressure|gauge|warm|right|properly|on_full|hot|noisy|oil",
        "years|months|decade|winters|seasons|@years|@longtime + in_a_barn|in_barn|in_the_barn|in_a_shed|in_a_garage|in_storage|under_a_tarp|on_axle_stands|on_blocks|in_a_field|on_the_hard|laid_up|lying_idle|sitting - lamp|gauge|used|years_of_daily",
    ),
    "oil_used_fast": (
        "needs|wants|eats|eating|takes|gets_through|swallows|goes_through|going_through + litre|quart|pint|litres|quarts|oil + week|day|tank|@distance|fortnight|month|every|trip - change|fill|to_fill|seconds|capacity|to_bring|service|filter|sump_takes",
        "consumption|usage + shot|up|terrible|high|doubled|heavy|awful|rising|excessive|alarming - fuel|no|not|normal|low|water",
    ),
    "sender_wire_off": (
        "plug|wire|lead|terminal|connector|spade|cable + off|unplugged|hanging|disconnected|@not_connected|adrift|fallen|pulled|loose_end|dangling + switch|sender|gauge|sensor|unit|it|sending|transmitter|back_of_the - drain|unplugged_the|disconnected_the|pulled_the|spark|still|with_the|with_wire|light_went|lamp_went|goes_out|stays|tried|i_pulled|"
        "if_i|when_i|pulled_the|gallery|sump|and_the_light|touched|earthed|grounded|magnetic|oil_came|cranked|engine_off|key_off",
    ),
    "drain_plug_found_loose": (
        "sump_plug|drain_plug|plug + sump|drain|pan + loose|missing|gone|fell|fallen|dropped|vibrated|left_loose|finger|unscrewed|backed|not_tight|weeping|dripping|out - gallery|core|welch|oil_hole|cup|pulled|magnet|spark|i_pulled|when_i|drained|fur|tight|before_the_oil|water|lying|cross|end_of|galley",
        "left|forgot|forgotten + plug|drain_plug|sump_plug + loose|tighten|nip|undone|finger|out - gallery|spark|core|magnet|oilway|days|hours|overnight|drained|refitting",
    ),
    "nothing_warned": (
        "never|no|not_one|without|@not + got_a_warning|get_a_warning|warning_at_all|a_warning|any_warning|warning_whatsoever|prior_warning|warning_of_any|a_flicker_of_warning - going_out|go_out|key|fitted|lit_at|stopped|ignition|bulletin",
    ),
    "engine_seized": (
        f"{_IT}|crank + is_locked|locked|froze_solid|=frozen|@not_turn_over_at_all|@not_turn_at_all|solid_as|rock_solid|tied_up|gone_tight|welded_solid|stuck_solid - pressure|needle|gauge|pump|rotor|diff|brake|relief|valve|thermostat|water|breather|overnight|ice|night|turbo|plunger|bolt|"
        "steady|holds|then_freed|reading",
    ),
    "oil_not_checked_long": (
        "@not|never|unchecked|neglected|forgot|nobody + remember|look|looked|checked|unchecked|check|checking|dipped + oil|dipstick|level|it + last|months|ages|weeks|never|dipstick|since|ever|long|while|@longtime|@months - correct|good|full|fine|yet|pressure|gauge|temperature",
    ),
    "oil_temperature_high": (
        "oil_temp|oil_temperature|oil_temps|oil + pegged|150|140|145|135|130|through_the_roof|way_too_hot|far_too_hot|too_hot|cooking_hot|boiling_hot|red_hot|off_the_clock - below|never|no|not|normal|steady|when|pressure|needle|gauge|light|at_90|at_80|80|90|95|85|100|70|60|hot_oil|coolant|grade|after|w",
    ),
    "needle_steps_at_once": (
        "jumps|jumped|goes|flicks|went|leaps|snaps|flips + straight|blink|instantly|nothing_in_between|instant|snap|bang + zero|0|full|nothing|80|60|max|scale - drill|primed|priming|fired|bumps|switch|road|then_slowly|revs|stays|engine|first_start|start_up|suddenly_dropped|pressure_went",
    ),
    "switch_opens_wrong": (
        "switch|pressure_switch + old_one_bad|was_duff|was_bad|was_the_fault|was_the_culprit|turned_out_bad|turned_out_faulty|proved_faulty|sticking|gone_bad|had_failed - ignition|light_switch|master|dash_switch|starter|battery|think|wiring",
    ),
    "filter_found_loose": (
        "filter + spun_off|unwound|unscrewed_itself|come_unscrewed|spun_itself|unscrewing_itself - air|fuel|i_spun",
        "filter + spin|turn|undo|unscrew|loose + by_hand|hand|fingers|was_loose|came_loose|working_loose|never_tightened|@not_tightened|@not_been_tightened|easily - tight|oil_tight|air|i_could_not|couldnt|screen|hand_tight_and_no|fuel",
    ),
    "level_high": (
        "too_full|way_overfilled|badly_overfilled|over_full|well_overfull|over_the_top_mark|above_the_top_mark|above_full|over_full_mark|past_the_full|above_the_full|over_the_max|above_max|over_max - slightly|little_over|quart_over_for|not|just|trial|hair|touch",
    ),
    "oil_overdue": (
        "@not|never|overdue|long_overdue|past + oil_change|changed_the_oil|change|oil_changed|service + @distance|miles|@longtime|years|20k|15k|overdue|ages|forever|30k|due|long - any_more|no_more|filter_change|yet|tried|made|since_new_pump|no_change|regular|regularly|every|change_in|difference|any_change",
        "oil + years_old|black_and_old|old_and_black|ancient|from_last_year|two_years|three_years - pump|line|hose|leak|seal|gauge|filter",
    ),
    "lamp_dead_with_key_on": (
        "oil_light|oil_lamp|warning_light|pressure_light|lamp|light|bulb|telltale & no|@not|never|dead|fails|dark & switch_on|key_on|turn_the_key|ignition_on|key_turned|bulb_check|self_test|its_test|first_turn_the|before_starting|engine_stopped & oil|warning|lamp|light|bulb|pressure|test - engine_off_the_needle|"
        "still_lit|stays_on|gauge|needle",
    ),
}
#: the same when it is not there
TOGETHER_OFTEN_ABSENT: dict[str, tuple[str, ...]] = {
    "high_mileage": (
        "young_engine|new_from_the|bought_new|months_old|weeks_old|under_a_year|less_than_a_year|first_year|still_under_warranty|in_warranty|nearly_new|only_done_@lowmiles|just_run_in|barely_run_in + engine|car|old|bought|new|it|spring|warranty|year|boat|done|in|only|this - oil|sender|gauge|filter|pump|sensor|hose|"
        "switch|battery|service|change|rebuild|used|two_months_old_sender",
    ),
    "ran_on_without_pressure": (
        f"{_STOPPED_IT} & no_pressure|no_oil_pressure|zero_pressure|no_reading|nothing_on_the_gauge|no_oil_psi - itself|when|until|before|once|if|every|later|eventually|"
        "finally|home|miles|lunch|night|cured|would_not|never|next_start|restart",
        f"{_STOPPED_IT} & alarm|light|lamp|buzzer|beeper|gauge|pressure|needle|warning - itself|when|until|before|after|once|if|every|later|eventually|finally|home|noise|miles|lunch|night|cured|to_check|fuel|alarm_shut|switch_shut|protection|controller|trip|would_not|never|restarted_and",
        "stopped|shut_off|switched_off|shut_down|turned_off|pulled_up & trailered|towed_home|pulled_over|called_for_a_tow|got_a_tow|called_the_recovery|coasted & pressure|light|lamp|alarm|gauge|buzzer|i|we - until|miles|by_itself|itself|drove_on|later|before|not|never",
        f"{_SO_STOPPED} - itself|when|until|before|after|once|if|every|later|eventually|noise|lunch|night|fuel|temp|temperature|hot|water",
        "turned|shut|switched|killed|stopped|pulled|cut|knocked + her_down|it_off|it_down|the_key|the_engine|engine|it + right_then|quick|as_soon|when_i_saw|the_moment|there_and_then|immediately|straight|at_once|the_second|instantly|on_the_spot|within - to_the_second|noise|light_off|lamp|by_itself|itself|never|before_it_could|pump",
    ),
    "oil_overdue": (
        "oil|oil_change|service + just_had|is_new|brand_new|changed_regularly|changed_last|fresh_in|new_oil|changed_recently|freshly_changed|just_had_an|only_just|changed_every|always_changed|was_changed_@distance|changed_@distance - @toofar|pump|sender|gauge|cooler|filter_only|not|never|overdue|pressure|light|leak|problem|began|since|"
        "started|hose|line|now|then|but|low|tried|helped|cured|level|smell|no_change|still|difference",
    ),
    "oil_temperature_high": (
        "oil_temp|oil_temperature|gauge_for_the_oil|oil_temps + normal|steady|fine|ok|85|80|90|green|usual|low|cool - pressure|not|but|until|above|high|rose|climbed|to",
    ),
    "wire_open_or_shorted": (
        "wire|wiring|lead|harness|loom + checked|tested|traced|metered + ok|good|fine|sound|perfect|through - not|no|but|broken",
    ),
    "sender_wrong_on_air": (
        "sender|sensor|transmitter|sending_unit + tested|checked|tests|checks|bench + ok|good|fine|correct|right|perfect|spec - not|no|but|faulty|bad|wrong|temperature|new_one",
    ),
    "metal_in_pan": (
        "no|@not_any|without + metal|swarf|filings|glitter|debris + sump|pan|bottom|oilpan - filter|screen",
    ),
    "engine_ran_hot": (
        "never|@not|no + overheated|overheat|overheating|ran_hot|got_hot|over_heated|boiled - oil|oil_temp|pressure|after|since|back",
    ),
    "coolant_gets_in": (
        "head_gasket|cooler|liner + tested|checked|sound|fine|good|ok - before|until|prior|gauge|pressure|psi|not|no|blown|leak|leaking|bypass|oil_leak|clear",
    ),
    "fuel_smell": (
        "@not_smell|no_smell|no_petrol|no_fuel|no_diesel|without_any_smell + fuel|petrol|oil|dipstick|stick|diesel|gas|in|of|on - run_out|tank|lines|pump",
    ),
    "crank_moves_endwise": (
        "crank|crankshaft|end_float|pulley + no_end_float|no_float|no_end_play|within_spec|within_limits|@not_move|in_spec|no_movement|no_play - turbo|shaft_play|camshaft|pump",
    ),
    "sump_dented": (
        "no|without|not_a|@not + dent|dents|dented|bash|marks + sump|pan|underneath|bottom|it|anywhere",
    ),
    "filter_found_loose": (
        "filter + tight|done_up|secure|firmly|torqued - not|@not|loose|hand|finger|never",
    ),
    "drain_plug_found_loose": (
        "drain_plug|sump_plug|plug + tight|secure|dry|wired|done_up - crank|end_plugs|core_plugs|blower|ran|fell|not|@not|loose|hand|finger|never|gallery|core|spark|found|sender|wire|connector|switch|earth|lead",
    ),
}
