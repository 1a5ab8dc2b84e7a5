"""Words that together name findings of instrument, oil, leaks and history, in whatever order they stand."""

from __future__ import annotations

#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_PLAIN: dict[str, tuple[str, ...]] = {
    "needle_off_zero_at_rest": (
        "key_off|engine_off|ignition_off|engine_stopped|engine_turned_off|ignition_switched_off + gauge|needle|reads|shows|says|sits|sit|still|even|rests + @pressure|@number|above|off_the_peg|off_zero|halfway|half_way|mid - at_zero|=zero|nothing|light|lamp|minutes|later|suddenly|cold|down|hours|rpm|restart|oil_level|dipstick|before|at_least",
        "needle|gauge & @not_zero|@not_return|@not_go_back|@not_come_back|@not_drop_to_zero|@not_go_to_zero|above_zero|off_the_pin|@not_rest & stopped|off|parked|switched_off|at_rest - idle|hot|speed|running|off_zero|moved_off|move_off|came_off|come_off|left|leave|leaves",
    ),
    "needle_stuck_at_one_value": (
        "gauge|needle|reading|it + same + all_the_time|always|whatever|regardless|no_matter|revs|hot_or_cold|constantly|any_speed - new|sender|mechanical|after|before|as|owner|years|filter|other|oil",
        "needle|gauge|reads|sits|it|stays|says + @pressure|@number|halfway|half_way|mid-scale|middle & all_day|all_the_time|whatever|regardless|no_matter|constantly|@not_move|never_moves|never_changes|permanently|doesnt_matter & revs|rpm|hot|cold|idle|speed|throttle|key|temperature - then|drops|falls|drop|low|psi_when|max|over|above|hold",
    ),
    "wiggle_moves_needle": (
        "wiggle|wiggling|wriggle|waggle|jiggle|jiggling|touch|push|press|flex|twist + plug|wire|connector|lead|terminal|sender|switch|loom|harness & light|lamp|needle|gauge|reading|goes|goes_out|moves|jumps|flickers|reads|changes|off - pickup|tube|no_effect|nothing|no_difference|doesnt",
    ),
    "tape_on_sender_thread": (
        "ptfe|teflon|thread_tape|plumbers_tape|=tape|sealant|thread_sealant|sealer + sender|sensor|switch|sending_unit - strainer|seat|screen|sump|relief|pan|no|not",
    ),
    "gauge_port_moved": (
        "sender|gauge|switch|sensor|tapping|takeoff + moved|relocated|different|another|new + port|place|hole|location|spot|tapping - same|no|pump|starboard|stbd|engine|engines|swapped",
    ),
    "sender_not_for_gauge": (
        "sender|sensor|sending_unit + wrong|@not_match|@not_matched|@not_for|mismatched|different_range|other_range|=bar|80_psi|100_psi|incorrect + gauge|range|ohm|ohms|car|type|part_number|dash - wire",
    ),
    "sender_ohms_high": (
        "sender|sensor|sending_unit & open_circuit|=open|infinite|infinity|too_many_ohms|high_ohms|high_resistance|@not_continuity|no_continuity - wire|port|valve",
    ),
    "gauge_supply_wrong": (
        "voltage_stabiliser|voltage_stabilizer|stabiliser|stabilizer|regulator|supply|feed|ignition_feed|voltage_limiter + gauge|gauges|dash|cluster|instrument & dead|faulty|bad|wrong|unsteady|@not_10|sticking|over|high|low|missing|pulsing - oil_feed|relief|pump",
    ),
    "tachometer_wrong": (
        "tach|tacho|tachometer|rev_counter + reads|out|wrong|optimistic|inaccurate|lies|reads_high + revs|rpm|high|fast|too|out|wrong|than|by|optimistic - zero|stopped|died|same_time|quit|no|not",
    ),
    "idle_below_spec": (
        "idle|idling|idles|tickover|ticks_over + too_low|too_slow|very_slow|very_low|way_down|below|low_idle|slow & @rpm|spec|book|should|manual|supposed|rpm|revs|specified|@number - pressure|psi|oil_pressure|gauge|hot_idle|bar|needle|lbs|pounds|@pressure|until|at_idle|reads|going",
    ),
    "nothing_warned": (
        "light|lamp|gauge|buzzer|alarm|warning + never|@not|no + warned|came_on|lit|worked|told|flickered|moved & seized|knocked|knock|failed|let_go|died|bang|ruined|damage|wiped|locked",
    ),
    "ran_long_without_distress": (
        "months|years|thousands|miles|hours|weeks + light|lamp|low|zero + no_noise|no_knock|no_damage|no_harm|without_trouble|without_a_problem|no_ill|fine - since",
    ),
    "unsteadier_with_revs": (
        "worse|wilder|more|faster|bigger + revs|rpm|rev|speed|throttle|faster + needle|gauge|bounce|bounces|bouncing|flicker|flickers|shakes|vibrates|wavers|swings|fluctuates - low|drops|pressure_falls|knock|noise",
    ),
    "flickers_only_at_speed": (
        "needle|gauge|light|lamp + shaky|shakes|flickers|flicker|bounces|wavers|vibrates|jumps|unsteady|dances + over|above|past|at_high|at_speed|high_rpm|high_revs + @rpm|@number|revs|rpm|speed - idle|bumps|bumpy|bend|corner|wipers|headlights|lights|brake|road|place|hour|@pressure",
    ),
    "good_at_pump_low_in_gallery": (
        "pump|pump_outlet|filter_housing|filter_head & good|plenty|high|fine|@pressure|@number & gallery|main_gallery|far_end|rear|head|rockers & low|only|little|@pressure|@number|drops - idle|rpm|new_pump|relief|changed",
    ),
    "lamp_slow_to_go_out": (
        "light|lamp|needle|gauge|pressure + longer|slower|ages|forever|lazy|sluggish + every|each|than_it_used|than_before|week|month|these_days|lately|used_to - warm|hot_idle|parking",
    ),
    "oil_lost_only_in_frost": (
        "only|just + frost|freezing|frosty|below_zero|cold_weather|sub-zero & loses|lost|blows|leaks|dumps|spits + oil - thick|pressure|slow",
    ),
    "sump_found_holed": (
        "sump|pan|oil_pan|casing|crankcase|gearbox_casing + hole|holed|cracked|rusted_through|rotted|split|punctured|rust_hole|crack - pickup|screen|no|not|bolt_hole|core|plug_hole|dent|rod",
    ),
    "oil_overboard": (
        "slick|film|sheen|rainbow|oil + overboard|cooling_water|wet_exhaust|behind_the_boat|on_the_water|in_the_water|astern|out_the_exhaust - bilge|no|not|radiator|coolant|header|sump|oil_in_the_water_pump",
    ),
    "accessory_port_uncovered": (
        "gasket|seal + open|uncovered|exposed|bigger_than|@not_cover + accessory|governor|vacuum_pump|magneto|injection_pump|compressor|hydraulic_pump + port|hole|oil_hole|feed",
    ),
    "drain_valve_wrong": (
        "drain_plug|drain_valve|sump_plug|quick_drain + wrong|too_long|different|incorrect - loose|missing|tight|leak",
    ),
    "breather_misrouted": (
        "breather|pcv|crankcase_vent|breather_hose|breather_pipe + wrong|misrouted|swapped|connected_to|plumbed|teed|run_to|routed - blocked|clogged|clean|new",
    ),
    "wet_sumps": (
        "tank|drysump|oil_tank & drains|empties|siphons|leaks|runs|drained|bleeds|creeps + crankcase|sump|engine|crankcases & stood|standing|sits|sitting|overnight|week|weeks|left|parked|stands|winter - running|at_speed|while_running|under_way",
        "wet_sumps|wet_sumping|wetsumps|wetsumping|wet_sump_after|sumped + tank|overnight|it|bike|engine|standing|after|week|always",
    ),
    "not_refilled": (
        "only_put|put + half|some|part|most + oil + back|in - up|quart|thicker",
        "forgot|forgotten|@not|never|without + refill|refilled|put_oil_back|put_the_oil_back|fill_it|filled_it|add_oil|put_any_oil|put_oil + oil|it|drained|after|back - light|topped|check",
    ),
    "too_much_poured_in": (
        "poured|put|tipped|added|filled|overfilled|chucked|dumped + too_much|far_too_much|double|twice|extra_gallon|over_the_mark|over_the_line|over_the_max + oil|it|in|mark - thick|drained_it|pressure",
    ),
    "additive_or_flush_in_oil": (
        "can|bottle|tin|dose|some|=tried|poured|added|chucked|put|threw|tipped + stop_leak|oil_treatment|treatment|additive|stop_leak_thickener|engine_flush|stop_smoke|atf|transmission_fluid|hydraulic_oil|diesel_in_the_oil|snake_oil|two_stroke_oil|2_stroke_oil|gear_oil|sawdust - coolant|radiator|fuel_tank|gearbox|power_steering|injector|no|not|never",
        "wrong|mistake|by_accident|accidentally + 2_stroke|two_stroke|gear_oil|gearbox_oil|chain_oil|hydraulic_oil|atf|transmission_fluid|diesel|petrol|coolant|water|screenwash|gas + oil|filler|sump|it|engine|in - smell|leak|fuel_tank",
    ),
    "dipstick_not_its_own": (
        "dipstick|stick|dipstick_tube + wrong|different|another|other|@not_original|@not_right|not_its_own + engine|one|car|model|length|from|for|tube - oil_level|grade",
    ),
    "oil_temperature_high": (
        "oil|oil_temp|oil_temperature|oil_temps + @hotoil + up_to|over|above|reaches|reached|hits|gets|got|climbs|past|at|to|high|running - outside|minus|coolant|water|ambient|start|cold|below|60|70|80|under|thermostat|smoke",
    ),
    "fuel_gets_in": (
        "lift_pump|fuel_pump|injector|float|needle_valve|choke|carb + leaking|split|torn|stuck|dribbling|flooding|perished|stuck_open|flooded + oil|sump|crankcase|petrol|diesel|fuel|gas|into - no|not|outside",
    ),
    "oil_grade_as_manual": (
        "oil|grade + right|correct|proper|recommended|specified|manual_says|book_says|manual_calls|as_per + in_it|using|running|manual|handbook|book|is|use - not|too|wrong|thicker|thinner|instead|pressure|amount|level|should|brings|fresh",
        "oil|@grade|grade + recommended|specified|as_per|by_the_book|book_says|manual_says|handbook|as_specified|correct_grade|right_grade|says_to_use|owners_manual|maker - intervals|interval|@distance|changes|not|too|thicker|thinner|instead|heavier|but|pressure|wrong|should_be|lb_at|never",
    ),
    "oil_grade_too_thin": (
        "@thin|thinner|thin + instead|rather|not_the|should_be|supposed|usual|calls_for|specifies|normally & @thick|@grade|usual|heavier|proper|thicker|recommended|manual|book|spec - thinner_oil_made|no_difference",
    ),
    "oil_grade_too_heavy": (
        "@thick + in|running|using|put|has|got + should|wants|calls_for|instead|supposed|manual|meant|recommended - helped|no_difference|gained|tried|thin|wants_me|wants_us|wants_to|recommended_to",
        "thicker|heavier + oil|grade + than + recommended|manual|book|should|spec|specified|supposed - tried|helped",
        "@thick + instead|rather|not_the|should_be|supposed|usual|calls_for|specifies|normally & @thin|@grade|lighter|thinner|recommended|manual|book|spec - helped|no_difference|gained",
    ),
    "long_unchanged": (
        "been_like_that|been_that_way|been_this_way|been_like_this|been_so|was_like_that & years|ages|decades|donkeys|@years|ever_since_i - now|until|two_days|weeks",
        "always + been_like|been_that|done_it|done_that|has|read|like_that|like_this|the_same + like|that|this|way|it|low|since|been - smoke|smoked|smokes|leaked|leaks|burned|used_oil|sounds|sound|runs|quiet|noise|different|light|now|until|oil|used_to|dipped|changed|checked|cleaned|no_light|had",
        "same_reading|reads_the_same|same_pressure + since|years|bought|always|got|ever - new|gauge|mechanical|got_the_same|got_same|sender|filter|pump|rebuild|changed|after",
        "always + been_like|done_that|done_this|read_like|has_been|been_that|was_like|like_this|like_that|been_the_same|been_that_way + since|we|i|years|got|owned|bought|new|it - rebuild|work|changed|now|until|used|before|good|fine|but_now|no_light|fitted|swapped|last|week|replaced",
        "the_same|like_this|unchanged|no_worse|@not_changed + for_years|decade|decades|@longtime|since_new|for_ages - until|used|stood|oil|barn|now_it|filter|ago|sat|storage|changed|fall|cured",
    ),
    "grows_worse": (
        "worse|lower|longer|sooner + every|each|by_the + day|week|time|run|trip|start|ride|month|drive - better|no|not|any",
    ),
    "panel_reads_too_low": (
        "mechanical|test_gauge|real|direct|known_good|proper_gauge & dash|panel|stock|factory & @pressure|@number & but|while|whereas|yet|only|against - same|agrees|both",
        "dash|panel|stock|factory|original|electric + gauge|reads|shows|needle|still|=reading + next_to_nothing|nothing|zero|low|lower|way_down|under|less|barely & mechanical|test_gauge|direct|known-good|trusted|real|shop_gauge - also|same|agrees|too|high|both|exactly",
        "bad|lying|duff|useless|faulty|chasing + dash_gauge|panel_gauge|stock_gauge|factory_gauge|gauge + all|whole|was|is|a|summer|along - mechanical_gauge_is|new_gauge|bought|no|not|sender",
    ),
    "other_gauges_also_wrong": (
        "temp|temperature|fuel|amps|volts|speedo|all_the_gauges|other_gauges|every_gauge + gauge|gauges|needle|needles|as_well + died|dead|zero|stopped|quit|failed|wild|pegged|same_time|at_once|together|too - ok|fine|no|not|normal|work|works|operating|up_to|off_the_peg|the_peg",
    ),
    "iron_high": (
        "sample|analysis|lab|report|result|results + iron + high|up|elevated|flagged|@number|critical|over|spiked - low|normal|no|not",
    ),
    "silicon_high": (
        "sample|analysis|lab|report|result|results + silicon + high|up|elevated|flagged|@number|over|spiked - low|normal|no|not|silicone",
    ),
    "chromium_high": (
        "sample|analysis|lab|report|result|results + chromium|chrome + high|up|elevated|flagged|@number|over - low|normal|no|not",
    ),
    "metals_normal": (
        "sample|analysis|lab|report|result|results + metals|wear_metals|everything|all + normal|fine|clean|ok|low|within|unremarkable - not|high|fuel",
        "sample|analysis|lab|report|result|results + no|@not + metal|metals|abnormal|wear",
    ),
    "lab_viscosity_low": (
        "sample|analysis|lab|report|result|results + viscosity|visc + thin|low|down|dropped|grade|sheared|below - high|thick|normal|over",
        "viscosity + full_grade_thin|grade_thin|too_thin|grade_low|sheared_down|down_a_grade|way_down|low - no|not|new|lower_viscosity",
    ),
    "lab_fuel_high": (
        "fuel|fuel_dilution|diesel + sample|analysis|lab|report|result|results|@percent|percent|dilution + high|over|@percent|percent|flagged|critical|@number - less_than|under|below|smell|no|not|level|tank",
    ),
    "level_correct": (
        "oil|stick|dipstick|level|its|sump|it + bang_on|spot_on|between_the_marks|between_marks|on_the_mark|at_the_mark|at_the_max|on_full|its_full|at_max|to_max|is_full|right_level|mid_stick|correct_level + full|mark|marks|max|level|line|oil|sump|stick|dipstick|quarts|litres - not|over|below|low|idle|timing|pressure|fuel|coolant|tank|grade|temp|load|throttle",
    ),
    "oil_looks_clean": (
        "oil|stick|it + clean_as_a_whistle|nice_and_clean|clean_as|golden|like_honey|looks_new|like_new_oil|looks_clean|still_clean|honey - not|no|filter|screen|pump|pan|runs",
        "=clean + whistle|honey|new_oil - pump|screen|filter|sump|pan|not",
    ),
    "dipstick_low": (
        "looked_at_the_oil|checked_the_oil|checked_the_level|dipped_the_oil|dipped_it|oil_level|the_level & it_had_dropped|it_had_gone_down|had_gone_down|had_dropped|it_was_down|it_was_low|it_was_lower - pressure_had|gauge|needle|psi|coolant|fuel",
        "dipstick|stick + just|barely|only + tip|end|bottom|showing|wet|touching|drop - full|max",
        "@volume|quart_and_a_half|litre_and_a_half|quart|litre|pint + =down|=low|=short - thicker|heavier|quieted|calmed|settled|antifreeze|coolant|radiator|per|every|idle|pressure|pipe|inlet|hole|poured|the|over|coolant|water|pump|to_the|fuel|came",
    ),
    "level_risen": (
        "more_oil|oil_level|level|oil + on_the_stick|than_i_put|than_when|gone_up|going_up|risen|rising|increasing|creeping_up|climbing + itself|than|keeps|stick|without|level|by - pressure|gauge|temp|needle|revs|coolant|idle",
    ),
    "oil_black_and_gritty": (
        "oil|oils + like_tar|thick_black|filthy|black_as|treacle_black|black_and_sticky|like_grease - filter|no|not|clean",
    ),
    "glitter_in_oil": (
        "oil + sheen|specks|sparkle|sparkles|glints|metal_flake|flecks|shimmer + silver|silvery|shiny|metallic|gold|metal|bright|drained|oil - water|outside|bilge|no|not|rainbow",
    ),
    "oil_smells_burnt": (
        "smells|smelt|smelled|smell|stinks|stank|reeks + burnt|burned|burning|cooked|scorched & oil|stick|dipstick - exhaust|cabin|smoke|manifold|dripping|thrown|sprayed|everywhere|doors|outside|"
        "leak|drips|cab|bonnet|hood|no|not|fuel|clutch|coolant",
        "burnt|burned|scorched|cooked + smell|smells|smelt|stinks + oil|stick|dipstick - smoke|cabin|clutch|exhaust|bay|petrol",
    ),
    "oil_used_fast": (
        "uses|using|used|eats|burns|drinks|drinking|guzzles + loads|lots|tons|plenty|gallons|like_crazy|heavily|a_fair_bit|too_much + oil - no|not|gauge|new",
        "eats|drinks|guzzles + =oil - no|not",
    ),
    "oil_not_checked_long": (
        "never|hadnt|havent|@not|cant_remember + check|checked|checking|dipped|looked_at + oil|level|stick|dipstick - gauge|pressure|yet|today|i_have|when_i_checked",
    ),
    "oil_overdue": (
        "oil + @not|hasnt|never|not + changed|been_changed|change + years|ages|miles|months|@longtime|@distance|since - any_more|no_longer|filter_only|gauge|i_have",
        "same_oil|old_oil|original_oil + years|miles|@distance|@longtime|ages|in_it|still - pressure|gauge",
        "no_idea|dont_know|god_knows|who_knows|nobody_knows|heaven_knows|unknown & oil & when|how_old|how_long|last_changed|last_done|age - pump|gauge|low|pressure_is|history",
    ),
    "blow_by_high": (
        "crankcase_pressure|blow_by|blowby|crank_case_pressure + lots|loads|high|excessive|heavy|bad|plenty|much|a - no|not|little|normal",
    ),
    "coolant_level_falling": (
        "radiator|rad|header_tank|expansion_tank|coolant|water + topping_up|topping|keeps|drops|losing|disappearing|using|drinking|vanishing|add|adding + week|day|every|always|keeps|constantly|water|no_leak|no_leaks|constantly|up - oil_level|pump|pressure",
    ),
    "oil_film_in_coolant": (
        "oily|greasy + coolant|water|antifreeze|radiator|header - bilge|sea|overboard|no|not",
    ),
    "water_at_the_drain": (
        "cup|pint|litre|spoonful|bit|drop|water|lot|glass + water|coolant + out|came + before_the_oil|ahead_of_the_oil|first|drain_plug|drain|plug - no|not|filter",
    ),
    "drained_volume_low": (
        "only|barely|just + got|came|drained|ran + @volume + out - quarts_low|of_water|add|topped|more",
    ),
    "drained_volume_high": (
        "drained|came_out|got|out|drain & takes|holds|capacity|should_be|book_says|supposed & @volume|litres|quarts|more_than + nearly|almost|over|more|about|"
        "@volume - only|barely|just|half|little|less",
        "drained|drain|got|came|out + @volume + when_it_holds|holds|should|capacity|should_be & @volume - only|barely|just",
    ),
    "engine_runs_normally": (
        "purrs|purring|hums|ticks_over_sweetly|runs_mint|sweet_as|smooth_as|like_a_kitten|like_clockwork + kitten|like|nicely|along|nut|it|engine|silk|perfectly|clockwork - used|until|gauge|lifters|tappets|pump",
    ),
    "oil_on_the_ground": (
        "leaves|left|leaving|makes|making + patch|puddle|spot|stain|pool|mess + oil|overnight|drive|floor|under|every|behind - no|not|water|coolant",
    ),
    "drain_plug_found_loose": (
        "plug|=drain|bung + finger_tight|loose|hand_tight|undone|backed_out|gone|fell|dropped|vibrated + sump|drain|pan|bottom - gallery|relief|spark|filter|sender|pickup|core|glow|wire|connector|switch|plunger",
    ),
    "rocker_cover_loose": (
        "rocker_cover|valve_cover|cam_cover|tappet_cover + loose|bolts_missing|missing_bolts|screws_missing|undone|@not_tight|hand_tight|bolts_loose - gasket_torn|no|clean",
    ),
    "sender_damaged": (
        "terminal|body|casing|top|tab|spade + broke|broken|snapped|cracked|smashed + sender|sensor|switch|sending_unit|off - wire_off|gauge|battery",
    ),
    "sender_wire_off": (
        "connector|plug|lead|wire|spade + @not_plugged|@not_plugged_in|unplugged|@not_connected|@not_pushed|off|hanging|dangling + in|sender|switch|sensor|properly|off|connected|there - dizzy|unplugged_the|disconnected_the|pulled_the|spark|drain|stays|still|with_the|i|pulled|took|coil|glow|light_on|light_off|wiggle",
    ),
    "sender_connector_loose": (
        "green|corroded|corrosion|crusty|dirty|verdigris|furry|loose|oily|crud|rusty + plug|connector|terminal|terminals|contacts|pins|connection|spade + sender|sensor|switch|gauge|sending_unit - filter|oil_filter|drain|relief|earth|ground|battery|filler|sludge",
    ),
    "sender_port_clogged": (
        "port|hole|tapping|fitting|restrictor|orifice|take-off + sender|switch|sensor|gauge|sending_unit|under_it + blocked|clogged|plugged|gunged|full|choked|bunged - no|not|relief|filter|empty",
    ),
    "gauge_damaged": (
        "gauge|needle|glass|bezel + =broken|smashed|bent|fogged|misted|cracked|steamed|full_of_water + gauge|needle|glass|is|all|up|was|been|got - wire|line|sender|pipe|pressure|tube|engine",
    ),
    "second_instrument_disagrees": (
        "gauge & mechanical|test|other|second|light|lamp & @not_agree|dont_agree|disagree|contradict|different|miles_apart - sender_to|new|both|same|also",
    ),
    "declined_over_months": (
        "slowly|gradually|steadily|bit_by_bit|little_by_little + dropped|dropping|fallen|falling|declined|gone_down|lower|getting|down|sunk|worse|less + months|years|weeks|seasons|season|year|time|last_few|thousand_miles - run|hour|minutes|trip|drive|mile_run|day",
    ),
    "rises_just_off_idle": (
        "rev|revs|revved|revving|blip|throttle & light|lamp|warning & goes_out|went_out|goes_off|put_out|puts_out - no|not|never|on|stays|comes|alarm|buzzer|drops|clutch",
        "=out|gone|off + soon_as|as_soon|when|if|moment|instant|second + touch|blip|rev|tickle|crack|dab|breathe - not|no|never|comes|alarm|flies|falls|drops|clutch|brake",
        "light|lamp|led|buzzer + goes_out|goes_off|out|off + comes_back|back_on|comes_on & idle|idles|idling|tickover|ticks_over - no|not|never|alarm",
        "light|lamp|it|flicker|pressure|gauge|needle|goes|comes|buzzer + goes_out|comes_up|comes_right|up|out|rises|recovers|off|jumps|clears|stops & touch_the_throttle|touch_of_throttle|touch_of_gas|bit_of_throttle|blip|blip_of|rev_of|a_rev|quick_rev|crack_the|tickle_the|touch_the_gas|above_idle|off_idle|some_gas|some_throttle|some_revs|a_bit_of_gas|a_few_revs|little_gas|little_throttle|touch_the_pedal|touch_the_accelerator|dab_of_throttle|dab_the_throttle|rev_it|revs_it|=revved|speed_it_up|raise_the_revs|bring_the_revs|lift_the_revs|more_than_tickover|as_i_rev|when_i_rev|when_revved|press_the_gas|press_the_pedal|on_the_gas|soon_as_i_accelerate|when_i_accelerate|when_accelerating|pull_away|pulls_away|=pulling_away|moving_again|drive_off|get_going|at_1000|by_1000|above_1000|over_1000|past_1000|at_1200|by_1200|above_1200|over_1200|at_1500|by_1500|above_1500|over_1500|slightest|give_it_a|bit_of_gas|few_revs|just_above - up_to|alarm_goes_off|buzzer_goes_off|alarm_went_off|buzzer_went_off|siren_goes_off|drops|falls|no|not|never|goes_off_scale|brake|wont|pops_up|popped_up|pop_up|firing_up|fire_up|fired_up|start_up|starting_up|warmed_up|warms_up|lights_up|light_up|lit_up|just_above_zero|above_zero",
    ),
    "falls_as_revs_rise": (
        "hold|held|keep|rev|revving|sustained|over|above|past & @rpm|4000|4500|5000|5500|6000 & drops|drop|falls|fall|sags|dips|sinks|tails|down_to|fades - stop_light|stop_lights|traffic_lights|traffic_light|stoplight|red_light|"
        "below|idle|under|cold|off_idle|drops_to_idle|when_i_slow|lift_off|back_off",
        "pressure|it|gauge|needle|drops|falls + drops|falls|lower|goes_down|fall|drop|sinks|less + revs_go_up|as_revs|as_the_revs|with_rpm|with_revs|revs_rise|revs_climb|rpm_goes_up|higher_you_rev|more_you_rev|harder_you_rev|higher_the_revs|as_you_rev|as_rpm|the_faster - rises|up_with|after|back_to_idle|drops_back",
        "higher|more|harder|faster & rev|revs|rpm|spin|go & lower|less|drops|falls|worse & pressure|it|gets|lower|needle - no|not|noise|knock",
    ),
    "low_even_cold": (
        "low|lousy|poor|only|=down + even + cold|stone_cold|first_thing|start|startup - hot|idle_hot|not|only_when",
    ),
    "protection_tripped": (
        "shut_down_by_itself|shut_itself|shuts_down_by_itself|shuts_itself|tripped|trips|stopped_itself|stops_itself + itself|by_itself|alarm|low_oil|controller|protection|own|genset|generator|set|engine|murphy|panel|switch - i|we|fuse|breaker|off_the_key|light|immediately|seized|pulled|turned",
    ),
    "fuse_blown": ("fuse + blown|gone|popped|blew|burnt_out|dead|=out - no|not|fine|good|ok",),
}
#: the finding, by what is said when it is not there
TOGETHER_PLAIN_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_used_fast": (
        "never|@not|hardly + uses|used|burns|burnt|burned|consumes|loses + oil|drop|any - light|gauge|pressure|the_oil|used_to",
    ),
    "oil_on_the_ground": (
        "@not|no|never + drip|drips|dripping|leaving|leave|puddle|puddles|spot|spots + anywhere|ground|floor|drive|oil|spot|under|a - coolant|water|anymore|any_more",
    ),
}
