"""Words for what was left out, left over or put in wrongly when the engine was put together."""

from __future__ import annotations

_BUILDER = "machine|engine? shop|builder|machinist|engineers|reconditioner|rebuilder|garage"
_PLUGS = "gallery|galley|oilway|crank|core|oil plugs|plug"
_MEASURED = "measured|measure|miked|mic|plastigaged|plastigauged|checked"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "cap_bolts_slack": (
        "main|rod|cap|through|big-end|crankcase|bearing cap|bearing|end? bolts|nuts|bolt|studs .. loose|slack|under|undertorqued|under-torqued|not|insufficient|finger",
        "loose|slack|under-torqued|undertorqued main|rod|cap|big-end|through bearing|cap|end? bolts|nuts|bolt|caps",
    ),
    "caps_mixed": (
        "=caps|main|rod|bearing =caps? @number|two|three|one and|& @number|four|three|two are|is|were|was|have been|got? swapped|mixed|switched|reversed|"
        "transposed|wrong",
        "numbers|stamps|stampings|marks|numbering on|of|on-the|of-the? caps|cap? were|are|was|dont|didnt|not not|out|all|arent|werent|match|in|line in|of|over|"
        "up? order|sequence|place|match|line|up",
        "caps|cap .. swapped|mixed|backwards|reversed",
        "caps|cap .. wrong|back|other order|way|to-front|hole|place|position",
        "mixed|swapped|reversed .. bearing|main|rod|cam? caps|cap",
    ),
    "crank_plug_found_missing": (
        "crank|crankshaft|journal|sludge-trap|oilway oil? plug|plugs .. missing|left|loose|out|forgotten|fell|came|gone",
        "missing|forgot|loose|forgotten .. crank|crankshaft|journal|sludge-trap plug|plugs",
        "crank|crankshaft|sludge-trap|journal|trap plug|plugs was|were|is? missing|out|gone|left|absent|loose",
        "plug|plugs missing|out|gone|loose from|in|of the? crank|crankshaft|journal|crankpin",
    ),
    "drive_shaft_absent": (
        "forgot|forgotten|left|without|no|missing to|out|the|fit|install|a|refit|put? the|a|in|fit|install|oil? the? oil? pump? drive|intermediate? shaft|driveshaft|drive-rod|drive-shaft .. pump|left|out|at|in?",
        "pump|drive|intermediate drive? shaft|rod .. left|missing|forgotten|absent|never out|fitted|installed?",
    ),
    "fastener_found_loose": (
        "bolt|bolts|nut|nuts|stud|cap-screw|setscrew inside|is|was|were|had|found|in|on? .. =loose|=slack|backed|undone|finger-tight|missing .. inside|engine|out|off|cap|block",
        "loose|slack bolt|bolts|nut|nuts inside|found|on",
    ),
    "foreign_part_fitted": (
        "non|not approved|genuine|standard|original parts|part fitted|used?",
        "non-approved|unapproved|non-genuine|home-made|homemade|pattern|counterfeit|bogus|wrong part|parts|piece|plug|valve|spring",
        "wrong part|parts|pieces fitted|used|installed|number|inside",
        "part|parts from|off|for a? different|another|wrong|other|not engine|model",
    ),
    "leftover_found": (
        "rag|tape|cap|plug|cloth|paper|bung|tool|socket|masking left|forgotten|found .. in|inside|over|on|behind",
        "left a|the|some|my|piece of? rag|tape|cap|plug|cloth|bung|tool|socket|masking in|inside|over|on",
        "shipping|transit|blanking|plastic plug|cap|bung|plugs|caps left|still|found|in",
    ),
    "small_part_left_out": (
        "slinger|spacer|baffle|dowel|ring|thrower|spring|shim|washer .. left|missing|forgotten|omitted out?",
        "forgot|left|omitted|without out? the|a|to? fit|put|install? the? oil? slinger|spacer|baffle|dowel|thrower|ring|seal",
        "forgot|forgotten|omitted|left|missing out? a|the|one? slinger|spacer|thrust-washer|shim|oil-ring|ring|washer|dowel|baffle",
        "slinger|spacer|dowel|shim|washer left|missing|forgotten|not out|refitted|put|fitted|behind|back?",
    ),
    "clearances_built_wide": (
        "built loose|wide",
        "built with .. loose|wide|generous|@length",
        "loose|race|racing|wide|generous bearing? clearances|clearance",
        f"@not|never {_MEASURED} a|any|one thing|single|clearance|bearing|clearances",
        "bolted|stuck|threw|put|slapped in|it|them together|in? without a? measuring|checking|plastigage|plastigauge|measurement",
        "@not plastigage|plastigauge any|a|the? of? them|clearances|bearings|thing",
    ),
    "plugs_fitted_by_others": (
        f"{_BUILDER} fitted|put|refitted|replaced|renewed|installed|drove|returned the|all|new|my|those? gallery|galley|oilway|crank|core|oil plugs back|in?",
        f"{_PLUGS} were|was|had|been|all|back? fitted|refitted|replaced|renewed|put|installed|driven back|in? by the|a|my|our? {_BUILDER}",
        f"{_PLUGS} .. {_BUILDER} fitted|refitted|replaced|renewed|put|installed",
        f"assumed|thought|trusted|supposed the|my|that? {_BUILDER} .. plugs|plug",
    ),
    "plugs_not_counted": (
        f"nobody|noone|no-one|none|no-body|one could|can|couldnt|would|of|us? remember|remembers|remembered|recall|recalls|count|counted|check|checked .. {_PLUGS}",
        "nobody|noone|no-one|none|one could|can? remember|remembers|remembered|recall|recalled putting|fitting|refitting|seeing .. plug|plugs|one",
        f"never|not|didnt count|counted|check|checked the|all|my|any|those? {_PLUGS}",
        f"@not =remember|=recall putting|fitting|installing|refitting that|the|those|any? {_PLUGS}",
        "@not|cant|dont|didnt remember|know|recall|check|sure|certain|count .. gallery|oil|oilway gallery? plugs|plug",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "drive_shaft_absent": (
        "no_drive_shaft|no_driveshaft|no_shaft|no_intermediate + pump|distributor|between|fitted|there|in",
        "intermediate|driveshaft|drive_shaft + pump|pump|distributor + missing|left_out|forgotten|absent|@not_there",
        "stick|rod|shaft|axle|drive_rod|hex_rod|quill|quill_shaft|driveshaft|drive_shaft|coupling_shaft|hex_shaft|connecting_shaft|intermediate_shaft|spindle + pump|oil_pump|distributor + lying|bench|isnt_there|is_not_there|forget_it|forgot|forgotten|left_out|left_off|missing|never_fitted|not_fitted|no_axle|not_in|never_went|wasnt_in|still_in_the_box|omitted|absent|on_the_shelf|nothing_between|no_shaft|never_put|no_rod|wasnt_there|gone - wiped|water|fuel|cam_lying|sheared|broken|prop|connecting|conrod|not_sheared|cap",
        "between_gear_and_pump|between_the_pump_and|between_distributor_and_pump|between_gear|between_the_distributor & no|nothing|missing|absent|empty & axle|shaft|nothing|rod|drive - metal|fuel|filter|gasket",
        "stick|rod|shaft|hex_rod|spindle|quill & pump|oil_pump & lying_on_my_workbench|still_on_the_bench|lying_on_the_bench|left_on_the_bench|on_my_workbench|still_in_the_box|never_went_in|never_fitted|isnt_there|not_there|on_the_shelf - fuel|water|connecting|cam|broken|sheared",
    ),
    "plugs_fitted_by_others": (
        "gallery_plugs|galley_plugs|oil_plugs|crank_plugs|oilway_plugs & builder|machine_shop|engine_shop|machinist|rebuilder|reconditioner|engineers & replaced|refitted|fitted|put_them|renewed|installed|put_those - spark|drain|counted|i_fitted|i_put|i_refitted|myself|checked",
        "mate|machine_shop|engine_shop|other_workshop|other_shop|builder|my_brother|machinist|apprentice|lad|friend|engineers|reconditioner|engine_builder|rebuilder|garage|someone_else|somebody_else|shop|other_guy|buddy|helper|workshop + plug|plugs|oil_plugs|stoppers|oil_holes|block_plugs|gallery_plugs|passages|bungs|screws|gallery|oilways & never_looked|didnt_look|took_their_word|not_control|never_checked|didnt_check|nobody_checked|his_word|took_his_word|trusted|assumed|i_thought|supposed_to|meant_to|was_to|must_close|said_he'd|said_theyd|reckoned_they|i_never|without_checking|not_checked|thought|on_trust|left_it_to|left_that_to - spark|drain|glow|i_fitted|i_put|i_counted|wires|counted_them",
        "mate|machine_shop|engine_shop|brother|builder|other_workshop|someone_else|apprentice|shop|engineers|reconditioner & plugs|stoppers|oil_holes|oil_plugs|gallery_plugs|bungs|block_plugs & didnt_look|never_looked|took_their_word|took_his_word|not_control|never_checked|didnt_check|on_trust|looked_behind|their_word|his_word - spark|drain|counted|wires",
    ),
    "caps_mixed": (
        "=caps|bearing_cap|main_cap|rod_cap + mixed|swapped|wrong_place|wrong_way|reversed|backwards|turned_round|not_matched|wrong_order|out_of_order|@not_match + main|rod|mixed|bearing|@number|big|swapped - filler|radiator|valve|dust|rotor|distributor",
        "cap|caps|main_caps|bearing_caps + swapped|mixed|where|wrong_place|wrong_order|back_to_front|wrong_way|muddled|backwards + main|cap|caps|goes|round|up|order|bearing|turned - filler|oil_cap|distributor|relief|valve_cap|radiator|rotor",
        "caps|cap|keeps|keep|main_caps|rod_caps|bearing_caps|end_caps|mains|bearing_cap + jumbled|jumble|exchanged|exchange|mixed_up|muddled|scrambled|wrong_rods|wrong_rod|between_the_rods|wrong_journals|backwards|back_to_front|wrong_way_round|arrow|points_to_the_flywheel|numbers_is_not_same|numbers_dont_match|not_to_their_numbers|shuffled|out_of_order|each_other's|wrong_positions|got_switched|turned_around|wrong_orientation|any_old_order|not_numbered|random_order + main|mains|rod|rods|big|bearing|crank|journals|flywheel|numbers|front|bench|caps|end - filler|radiator|valve|dust|distributor|rotor|shells_swapped|inserts_swapped|oil_cap|shell|shells|play|thou|clearance",
        "caps|bearing_caps|end_caps & exchange|mixed|jumbled|swapped & numbers|between_the_rods|not_same|each_other|journals|rods - filler|radiator|distributor|valve",
    ),
    "cap_bolts_slack": (
        "cap|caps|through_bolts|crankcase_bolts|main_bolts|rod_nuts|rod_bolts|rod_nut|rod_bolt + loose|slack|finger|@not_tight|hand_tight|below_torque|under_torque|undone|never_torqued|@not_torqued|backed - filter|housing|filler|radiator|relief|rocker|valve|oil_cap|breather",
        "main|mains|rod|big_end|big-end|crank|cap|caps|through|crankcase|bearing_cap|keeps|holding_the_crank|main_keeps|conrod|con-rod + bolt|bolts|nut|nuts|studs|keeps|caps + not_tight|not_nearly_as_tight|nipped_up|by_hand|never_taken|not_pulled_down|under_torque|below_torque|low_torque|undertorqued|under-torqued|not_torqued|never_torqued|turned_easy|turned_them_easy|half_torque|finger|slack|loose|hand-tight|hand_tight|not_tightened|only_snugged|snugged|short_of_the_figure|below_the_figure|well_under|moved_before|gave_before|undone|no_torque|backed_off|stretched|easily|without_effort - filter|housing|radiator|relief|rocker|valve|oil_cap|breather|drain|belt|distributor|manifold|exhaust|pump_bolts|none|no_loose|fouled|pulley",
    ),
    "fastener_found_loose": (
        "bolt|bolts|nut|nuts + loose|slack|finger|undone|backed|@not_tight + inside|internal|internally|in_the_engine|balancer|crankcase - sump_bolts|pan_bolts|rocker_cover|manifold|drain|filter|wheel|valve_cover",
        "bolt|bolts|nut|nuts|screw|setscrew|set_screw|capscrew|stud|studs|fastener|fasteners|locktab|lock_tab|lock_wire|lockwire|split_pin|tab_washer|lock_washer|cotter|screws|allen_bolt|fixing + loose|slack|backed_off|backed_out|undone|not_tight|finger_tight|turn_by_hand|by_hand|with_my_fingers|with_fingers|finger|unscrewed|worked_loose|half_out|never_bent|not_locked|unlocked|wasnt_tight|vibrated|came_undone|hand_tight|not_bent_over|rattling|shaken_loose & inside|sump|pan|pump|pickup|internal|cam|chain|balance|flywheel|gear|timing|cap|crankcase|in_the_engine|motor|rod|main|cover_off - filter|drain|rocker|sender|terminal|earth|ground|exhaust|fuel|valve_cover|manifold|wire|alternator|gauge|ignition|battery|sump_bolts|pan_bolts|relief|pulley_bolt|mount|clamp|hose|adapter|centre_bolt|spark|starter|washer_under|wheel_bolt|shaft_loose|slackened|loosened|rolled|no_loose",
    ),
    "crank_plug_found_missing": (
        "=plug|=plugs + crank|crankshaft + missing|loose|gone|came_out|left_out|fell_out|worked_loose - spark|core|drain|gallery|sump",
        "plug|cup_plug|welch_plug|blanking_screw|grub_screw|grub_screws|plugs|core_plug|screw_plug|allen_plug|pipe_plug|sealing_plug|stopper|bung + crank|crankshaft|crankpin|crank_throw|sludge_trap|big-end_journal|journal|throw|crank_pin|pin + missing|gone|out_of|loose|slack|never_put|never_put_back|left_out|fell_out|not_in|absent|wide_open|worked_slack|worked_loose|not_there|isnt_there|no|came_out|dropped_out|backed_out|unscrewed|wasnt_in|forgotten|forgot|flew_out - spark|drain|oil_pan|sump_plug|every|all_in|checked|counted|nobody|remember|sensor|cut|plug_gap",
    ),
    "clearances_built_wide": (
        "clearance|clearances|built|set_up|plastigage|plastigauge + loose|wide|on_the_loose|race|generous|loosely + bearing|main|rod|bearings|clearances|engine|mains|built|it - tight|pickup|valve|pump|cam",
        "clearance|clearances|bearings|built|set_up|assembled + loose_side|built_loose|on_the_loose|=loose|wide_side|set_up_at + built|side|build|assembled|clearance|clearances|when|rebuild|@length - cap|bolts|over|limit|pump",
        "set_up_loose|set_it_up_loose|built_loose|built_it_loose|loose_build|wide_clearances + clearance|clearances|builder|engine|bearing|bearings|build|when_it|set_it - bolt|nut|valve|tappet|cap",
        "clearance|clearances|bearings|mains + by_design|deliberately|on_purpose|loose_side|built_loose|set_loose|set_wide|for_racing|race_clearance|race_clearances - no|not|tight|lash|valve",
        "clearance|clearances|gap|room|space|play|slack|oil_clearance|bearings|fit|running_clearance + too_much|much_space|wide|loose|top_of_spec|top_of_the_spec|over_spec|big|generous|large|high_side|on_the_loose_side|sloppy|undersize|slack_side|top_limit|wide_side + build|built|assembly|new|from_day_one|set_up|set|rebuild|when_they_make|assembled|builder|put_together|ground|machine_shop|rebuilt|plastigauge - plug_gap|valve|tappet|ring_gap|end_float|now|worn|pump|gear|rotor|wiped|piston|points|ring|backlash|steering|tight|not_wide|tappets|hot|spark",
        "plastigauge|plastigage|plastigauged|bearing_clearance|bearing_clearances & top_of_spec|over_spec|wide|loose|too_much|top_of_the_spec|above_spec|big_side|upper_limit|over_the_limit|wider_than|over_top_limit & assembly|build|rebuild|built|builder|assembled|rebuilt|put_together|new - measured_now|worn|after|since|knock|strip|teardown",
    ),
    "leftover_found": (
        "rag|cloth|socket|spanner|wrench|screwdriver|ratchet|glove|bung|magnet|torch|pen + found|left|discovered|forgotten|inside + engine|sump|pan|valley|inside|timing_case|crankcase|port|in_there - pickup|screen|strainer|no|dipstick|relief",
        "left|forgot|forgotten|leaving + rag|cloth|tool|socket|spanner|wrench|cap|bung|plug|paper_towel|blue_roll|magnet|mask|tape + valley|inside|in_the|in_it|=in|port|engine|block|sump|head - no|not|dipstick|pump|filler|gallery|radiator|ground|relief|sealed|plugged",
        "rag|tape|masking_tape|cap|plug|cloth|paper_towel|shop_towel|bung|tool|socket|feeler_gauge|spanner|screwdriver|transit_cap|shipping_plug|shipping_cap|blanking_plug|blanking_cap|tissue|kitchen_roll|foam|sponge|torch|magnet|pen|glove|transit_plug|dust_cap|wrench|cork|plastic_bag|blue_roll|towel|rubber_bung|protective_cap|packing|cardboard|scraper|wipe + left_in|left_inside|still_in|left_behind|lying_in|not_removed|never_removed|never_taken_out|forgotten_in|found_in|stuffed_in|was_lying|still_fitted|left_over_the|was_still|found_inside|fished_out|in_the_sump|in_the_pan|in_the_line|in_the_oilway|in_the_port|in_the_hose|in_the_gallery|in_there|from_the_last_overhaul|from_the_factory|from_shipping|in_the_pickup|over_the_port|in_the_inlet|last_man_left|someone_left|somebody_left - drain_plug|spark|filler_cap|bearing_cap|main_cap|clean|white_rag|wipe_it|gauge|rod_cap|oil_cap|gallery_plug|core_plug|radiator|wiped|rag_in_my|bolt|magnetic|metal|fuzz|no_rag|plugs_in|plug_wires|relief|teeth|packed_in|wheel|nylon",
        "feeler_gauge|spanner|screwdriver|socket|rag|wrench|torch|tool|magnet + lying|left|forgotten|found + bottom|sump|inside|pan|last_overhaul|in_the_engine|crankcase - magnetic|wiped|wipe",
    ),
    "foreign_part_fitted": (
        "part|pump|cam|crank|gears|sender|rods|cover + belongs|off|from|for|@not_belong + different|another|other|wrong & engine|model|motor - gauge|new_pump|swapped|my_other|brother|friend",
        "part|parts|piece|gasket|head_gasket|filter|filter_head|pump|spring|cover|shaft|gear|seal|bolt|plug|valve|sump|crank|cam|rotor|bearing|bearings|element|pickup + later_series|earlier_series|other_motor|different_engine|another_engine|another_model|other_model|wrong_model|not_for_this|doesnt_belong|does_not_belong|wrong_for|not_the_right|from_a_different|different_model|off_another|not_listed_for|not_meant_for|wrong_engine|wrong_application|for_the_application|wrong_one_for|wrong_part_number|wrong_series|belongs_to_a|belongs_on|not_approved|home-made|homemade|home_made|bodged_up|made_up_from|not_the_correct|not_genuine_and|meant_for_a|meant_for_another|intended_for|wrong_year|car_part|superseded_part - sender|gauge|no_idea|not_sure|swap|sump_from|bought|pump_from|pattern_pump|clearances|listed",
    ),
    "small_part_left_out": (
        "slinger|flinger|thrower|oil_thrower|spacer|spacing_washer|distance_collar|distance_piece|collar|baffle|shim|dowel|thrust_washer|spacer_ring|locating_ring|oil_ring|crank_spacer|distance_ring|sleeve|spring_washer|thrust_ring|split_ring|seal_ring|o_ring_spacer|small_spring|little_ring|small_ring|key|snap_ring|circlip + left_out|left_off|missing|forgot|forgotten|omitted|never_put|never_went|not_fitted|never_fitted|without|not_there|absent|never_refitted|not_refitted|didnt_go_back|not_put_back|overlooked|missed_out|never_went_back|never_installed|not_installed - rag|filter|drain|relief|found_in|pickup|piston_ring|loose|gauge|ignition|tensioner|water|washer_missing_from|broken|bolt|distributor_cap|sender|plug|adapter|sandwich|copper",
        "spacing_washer|distance_collar|slinger|flinger|thrower|spacer|baffle|distance_piece|collar|shim & never_went_in|never_put|not_fitted|forgot|left_out|missing|omitted - filter|drain|rag|bolt",
    ),
    "plugs_counted_in": (
        "plug|plugs|screw|gallery_screw|stopper|stoppers|passage_stoppers|bungs|grub_screw|core_plug|oilway_plugs|gallery_plugs|blanking_plugs|welch_plugs + counted|ticked|ticked_off|tally|checked_each|checked_off|list|accounted|photographed|photo|photos|numbered|ticking|count|logged|crossed_off|inventory|listed|signed_off|checklist|laid_out + back|all|every|each|in|twice|teardown|in_and_out|built|went_together|kept|as_we_built|one_back|them_out - nobody|not|never|didnt|spark|drain|no_one|without|hoped|glow|no|none|cant|counter|revolution|plug_wires|dont",
        "every|all|each & gallery_screw|oilway_plugs|gallery_plugs|stoppers|gallery_screws|grub_screw|oil_plugs|passage_stoppers & tally|counted|list|checked_each|ticked|photographed|twice|log|numbered - nobody|not|never|didnt|spark|drain|no_one|oil_level|rear|counted",
    ),
    "plugs_not_counted": (
        "nobody|no_one|didnt|never|not|none_of_us|didn't|no_tally|nobody_ever|hoped|dont_know|no_idea|without + count|tally|check_off|checked_off|ticked|counted|list|tick_off|checked|keep_track|kept_track|kept_a_list|inventory|record|counting|it_was_the_lot|all_in|all_back|if_all + plug|plugs|oilway_screws|stoppers|oil_holes|pipe_plugs|gallery_plugs|gallery|bungs|grub_screws|screws|core_plugs|galley - spark|drain|glow|by_mate|machine_shop|engine_shop|compression|wires",
        "whatever_plugs|hoped_it_was_the_lot|hoped_that_was_all|hoped_it_was_all|lost_count|no_idea_how_many|didnt_count|did_not_count + plug|plugs|gallery|screws|tin|stoppers - spark|glow|drain",
        "nobody|no_one|noone|we_never|didnt & checked_off|tally|count|ticked & oilway_screws|oilway|stoppers|oil_holes|pipe_plugs|gallery_plugs|gallery_screws|oilway_plugs - spark|drain|fitted_by|mate|machine_shop|all_in",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "fastener_found_loose": (
        "every|all|not_one|none|each|no + nut|nuts|bolt|bolts|fastener|fasteners|screw + tight|budged|moved|locked|torque|loose|wire_locked|nipped|torqued & inside|round|torque_wrench|internal|every|everything|all|inside_the_engine - rocker|sump_bolts|drain|cap|pump|main|rod|manifold|except|but|apart|backed",
    ),
    "leftover_found": (
        "no|nothing|all|every|accounted_for + rag|rags|tape|tool|tools|bungs|plugs_left|caps_left|cloth|caps + accounted|left_in|left_inside|left_behind|counted_out|removed|in_there|forgotten - spark|main|rod|gallery|bearing|except|but",
        "tape|bungs|rags|rag|tools|bung|cloths & accounted_for|all_came_out|all_removed|counted_out|nothing_left_in|all_taken_out - except|but|found|not",
    ),
    "cap_bolts_slack": (
        "main|mains|big-end|big_end|rod|through|cap|crankcase + bolt|bolts|nuts|studs|caps + proper_figure|right_figure|clicked|at_their_torque|to_spec|to_torque|correct_torque|full_torque|specified_torque|to_the_figure|at_torque|none_loose|all_tight|torqued_right|torque_ok|tight_to_spec|torqued_up - not|never|except|but|loose|rocker|apart",
    ),
    "caps_mixed": (
        "caps|bearing_caps|main_caps|rod_caps|keeps + right_places|own_rods|numbers_match|in_their_places|right_order|matched|right_way_round|arrows_forward|in_order|own_places|all_matched|arrows_all - not|except|but|never|dont|didnt",
    ),
    "crank_plug_found_missing": (
        "crank|crankshaft|crankpin|sludge_trap + plug|plugs|screws|grub_screws + all_in|tight|in_place|all_there|every|staked|none_missing|present|sound - not|missing|loose|except|but|one|spark",
    ),
    "drive_shaft_absent": (
        "quill_shaft|drive_shaft|pump_shaft|hex_shaft|intermediate_shaft|driveshaft|drive_rod|hex_rod + in_place|is_there|fitted|drops_right|present|engaged|located|engages|in_the_slot|is_in + pump|shaft|slot|oil_pump|distributor - not|sheared|broken|isnt|fuel|no",
        "quill_shaft|pump_drive_shaft|pump_shaft|hex_shaft|pump_driveshaft|pump_rod & in_place|drops_right_into|engages|is_there|fitted|seated|seats & pump|slot|place|tongue|distributor - broken|sheared|not|missing|fuel",
    ),
    "clearances_built_wide": (
        "clearances|clearance|plastigauged|plastigaged|main|rod|mains + in_spec|within_limits|all_two_thou|within_spec|mid_spec|middle_of_spec|two_thou|inside_limits|on_the_money|to_spec|middle_of_the_spec|dead_on + built|build|rebuild|assembled|assembly|plastigauged|put_together|rebuilt - not|over|except|valve|but|wide|wider",
        "plastigauged|plastigaged|plastigage|clearances|bearing_clearances & two_thou|in_spec|within_limits|mid_spec|within_spec|inside_limits|on_spec & built|build|rebuild|assembled|every|rebuilt - not|wide|over|except|valve",
    ),
    "foreign_part_fitted": (
        "all|every + parts|part|bits|components|piece + right_ones|genuine|correct_ones|original|right_part|correct|oem|factory|for_this_engine - not|except|but|pump",
    ),
    "small_part_left_out": (
        "all|every|nothing + slinger|spacers|baffles|washers|spacer|small_parts|dowels|shims|rings|left_out + in_place|back_in|accounted|fitted|left_out|there - except|but|rag",
    ),
    "plugs_fitted_by_others": (
        "i|we|myself|my_own + own_hands|put_every|fitted_every|put_all|fitted_all|fitted_them_myself + gallery_plug|gallery_plugs|plug|plugs|oil_plugs - spark|drain|not|never|drain_plug",
    ),
}
