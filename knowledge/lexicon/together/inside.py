"""Words that together name findings inside the engine, in whatever order they stand."""

from __future__ import annotations

#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_INSIDE: dict[str, tuple[str, ...]] = {
    "piece_found_inside": (
        "bolt|nut|=washer|circlip|clip|pin|spring|piece|=bit|bits|chunk|lump|half|roller|needle_roller|valve_guide|tooth + lying|found|sitting|rolling|floating|rattling + sump|pan|oil_pan|crankcase|bottom_of_the_engine|inside|bottom - no|not|drain|plug|oil_pump|relief|pickup|screen|filter|screw_in",
    ),
    "leftover_found": (
        "rag|cloth|socket|spanner|wrench|screwdriver|ratchet|glove|bung|magnet|torch|pen + found|left|discovered|forgotten|inside + engine|sump|pan|valley|inside|timing_case|crankcase|port|in_there - pickup|screen|strainer|no|dipstick|relief",
        "left|forgot|forgotten|leaving + rag|cloth|tool|socket|spanner|wrench|cap|bung|plug|paper_towel|blue_roll|magnet|mask|tape + valley|inside|in_the|in_it|=in|port|engine|block|sump|head - no|not|dipstick|pump|filler|gallery|radiator|ground|relief|sealed|plugged",
    ),
    "foreign_part_fitted": (
        "part|pump|cam|crank|gears|sender|rods|cover + belongs|off|from|for|@not_belong + different|another|other|wrong & engine|model|motor - gauge|new_pump|swapped|my_other|brother|friend",
    ),
    "damaged_by_debris_only": (
        "shell|shells|insert|inserts|bearing|bearings|slipper|slippers + =only|just|nothing_but + debris|dirt|grit|scratches|marks + no_heat|@not_heat|cool|@not_burnt|no_sign - screen|filter",
    ),
    "worst_far_from_pump": (
        "worst|worse|wiped + farthest|furthest|far_end|away_from_the_pump|last_one|end_of_the_line + shell|shells|insert|inserts|bearing|bearings|slipper|slippers|main|mains|rod|rods|journal",
    ),
    "shells_etched": (
        "shell|shells|insert|inserts|bearing|bearings|slipper|slippers + dark|black|spongy|etched|stained|acid - no|not|heat|blue|oil",
    ),
    "shell_hole_mismatch": (
        "bearing|bearings|shell|shells|bush + hole|holes|oil_hole + not_lined|@not_line|@not_lined|misaligned|@not_match|@not_meet|out_of_line|@not_aligned|blanked|half_covered - cap|dowel",
        "hole|holes + shell|shells|insert|inserts|bearing|bearings|slipper|slippers + @not_line|@not_match|misaligned|@not_meet|wrong_place|covered|offset|half_covered|blanks - dowel|bolt|bolt_hole|plug",
    ),
    "wrong_shells_fitted": (
        "shell|shells|insert|inserts|bearing|bearings|slipper|slippers + wrong|standard|undersize|oversize|@number|10_under|20_under + ground|crank|grind|supplied|sent|fitted & wrong|supplied|sent|instead|gave|but - new_shells_and|no|right|correct|matched|to_suit",
    ),
    "several_journals_dry": (
        "several|some|three|two|couple + journals|mains|rods|big_ends|bearings + dry|blue|blued|no_oil - none|not",
    ),
    "filter_misfitted": (
        "two|double|second|doubled|old|previous|extra + gasketed|gasket|gaskets|seals|seal|o_ring|rubber|ring & filter - came_off|came_with|came_away|made_sure|pump|pan|sump|relief|cover|head|rocker|valve_cover|new_gasket",
        "double_gasketed|double_gasket|doubled_gasket|cross_threaded + filter|it|gasket",
    ),
    "milky_film_in_filter": (
        "filter|element|pleats|paper + milky|white_paste|mayo|mayonnaise|grey_paste|emulsion|creamy|grey_film|white_film - no|not",
    ),
    "gallery_plug_lies_in_sump": (
        "gallery_plug|oil_plug|cup_plug|gallery_cup|gallery_plugs + sitting|lying|found|loose|rolling|in_the + timing_case|sump|pan|timing_cover|front_cover|bottom|case - no|not|new",
    ),
    "oil_wash_at_gallery_seal": (
        "inside|internally|behind_the_cover|behind_the_timing_cover|behind_the_front_cover|into_the_timing_case|into_the_sump + oil + pouring|pissing|dumping|gushing|spraying|leaking|bleeding|=pumping - no|not|rocker|outside|spray_bar|coolant|water|poured|turbo",
    ),
    "tank_empties_running": (
        "tank|oil_tank|tank_glass|tank_level + goes_down|going_down|sinks|sank|falls|drops + nearly_empty|almost_empty|empty|to_nothing - fuel|petrol|standing|overnight|stands|water|header",
        "tank|oil_tank + empties|drains|goes_empty|runs_dry|level_drops|drops + running|while_riding|at_speed|while_it_runs|revs|run + crankcase|sump|engine|it - stands|standing|overnight|sits|fuel|petrol",
    ),
    "gone_at_the_next_start": (
        "fine|good|normal|ok|pressure|perfect|@pressure|@number + yesterday|last_night|last_time|when_i_parked|when_parked|put_away|when_i_shut|friday|saturday|sunday|day_before & morning|today|next|this_morning|now|next_day & nothing|none|zero|no_pressure|no_oil_pressure|zilch|nil|dead|gone|light_stays - level|oil_level|dipstick",
    ),
    "began_after_revving_hard": (
        "over-revved|overrevved|over_revved|missed_shift|missed_gear|money_shift|redlined|bounced_off_the_limiter|hit_the_limiter|bouncing_off_the_limiter|bouncing_off_the_rev|bouncing_off_the_redline|buzzed_it|revved_the_nuts|red-lined + after|since|then|it|and|when|zero|pressure|from|ever|the|on - no|not|never|up_to|before",
    ),
    "wrong_pump_fitted": (
        "pump + wrong|@not_listed|@not_right|incorrect|different_engine|another_engine|other_engine|for_a_different - new|gasket|fuel|water|replaced|swapped",
    ),
    "piece_in_pump": (
        "stem_seal|valve_seal|bolt|nut|washer|circlip|chunk|piece|bit|stone|clip|lump|silicone|plastic + jammed|wedged|stuck|caught|lodged|trapped|found + pump|gears|rotors|lobes - gasket|block|relief|screen|pickup|filter|spring_in",
    ),
    "pump_found_sound": (
        "pump + measured|checked|opened|stripped|inspected|looked_at & within|in_spec|good|fine|ok|perfect|no_wear|spec|like_new - pressure|not|new|no_good|worn|fuel|water",
    ),
    "air_at_pump_cover": (
        "air + pump_cover|cover|lid|body + sucking|drawing|getting|pulling|lets|leak - rocker|valve|timing|air_filter|intake",
    ),
    "drive_flats_worn": (
        "flats|splines|key|keyway|drive_flats + worn|rounded|chewed|stripped|wallowed + pump|oil_pump|rotor|crank|snout|nose|inner - harmonic|alternator|wheel",
    ),
    "drive_shaft_too_long": (
        "shaft|driveshaft|drive_shaft|intermediate + too_long|longer + pump|distributor|than|oil|it - spring|bolt|crank",
    ),
    "pump_turns_roughly": (
        "pump + tight_spot|rough|notchy|binds|gritty|stiff_spot|lumpy|binding|catches + turn|turning|by_hand|rotate|spin|turned|once - bolted|shaft_binds|noise",
    ),
    "oil_slow_to_return": (
        "stick|dipstick|level + after|straight_after|right_after + run|blast|fast|hard|lap|session + lower|low|less|much_lower|drops & later|minutes|wait|settles|comes_back|ten - pressure|light",
    ),
    "ice_at_screen": (
        "ice|=frozen|slush|froze + pickup|screen|strainer|sump|pan|oil_pump - thaw|nothing",
    ),
    "water_in_sump": (
        "water|coolant|antifreeze + sump|pan|bottom + found|lying|came_out|sitting|pint|litre|cup|half - no|not|pump|cooling|leak_outside|bilge",
    ),
    "sump_or_pump_swapped": (
        "swapped|moved|transferred|used|fitted|put|bolted|reused + pan|sump|pickup|oil_pan|oil_pump & over|from_my_old|off_my_old|from_the_old|off_the_old|"
        "off_the_other|from_the_other|off_another|from_another|off_a|from_a|of_a|from_my_other - gasket|drain|seal|o-ring|sender|removed|dropped|hole",
        "different|deeper|another|other|bigger|shallower|wrong|aftermarket|used|new + sump|pan|oil_pan|pump|pickup + fitted|fit|swapped|put|off|from|on|has|installed|bolted - rtv|silicone|sealer|sealant|gasket|o_ring|oring|ring|cured|screen|hose|seal|pump_same|old_pump|noise|no_difference|fuel|water|replacement_pump|new_pump|new_oil_pump|help|plug",
    ),
    "pickup_gap_too_large": (
        "pickup|pick-up|strainer|it + off|from|above|clear_of|short_of + bottom|floor|pan|sump + inch|inches|@length|long_way|way|miles|far - quarter|quarter_inch|1/4|3/8|clearance|set|correct|fell|touching|no|oil_level|level|dented",
    ),
    "pickup_fixing_loose": (
        "pickup|strainer & bolts|bolt|nuts|bracket & lying|loose|missing|fell|fallen|bottom|undone|backed|sheared|snapped|dropped - tight|new|drain|pump_bolts|removed|took|undid|pump_bolt",
    ),
    "gallery_plug_found_missing": (
        "forgot|forgotten|@not|left_out|never|missing + plug|plugs|gallery_plug|cup_plug + back|behind|gallery|cam|timing|put|fitted|block|hole - remember|recall|sure|counted|checked|spark|drain|glow|sump_plug|all|every|filler|core|plugs_out|turned|cranked|spun|inlet",
    ),
    "drive_shaft_broken": (
        "sheared|snapped|broke|broken|twisted + hex_drive|hex_shaft|drive_shaft|driveshaft|pump_drive|oil_pump_shaft|hex|hex_rod|drive_rod + dizzy|distributor|pump|oil|bottom|off|clean|drive|two - tooth|teeth|rocker|cam_gear|key|woodruff",
    ),
    "cloth_on_screen": (
        "rag|cloth|towel|paper_towel|blue_roll|tissue|sock|glove|lint|shop_towel & pickup|screen|strainer|gauze|inlet|pick-up & wrapped|round|around|over|sucked|against|on|in|stuck|covered|blocking - no|cleaned_with|wiped",
    ),
    "cooler_found_blocked": (
        "cooler|heat_exchanger|cooler_core + packed|full|solid|stuffed|bunged|blocked|choked + swarf|metal|sludge|debris|crud|bearing|gunk|solid|muck|silicone|carbon - outside|fins|no|not|chaff|mud|leaves|air|face",
    ),
    "relief_found_stuck": (
        "plunger|piston|relief|relief_valve + =stuck|jammed|seized|hung|gummed|=wedged & relief|plug|regulator|bore|prv - stuck_between|stuck_under|wedged_between|jammed_between|filter_bypass|rings|no|not|thermostat|@not_stuck",
    ),
    "relief_plunger_sticks": (
        "piston|plunger + hangs|hung|hanging|drags|catches|sticky|stiff + bore|its|up - ring|rings|cylinder|engine|filter",
        "relief_piston|relief_plunger|relief_valve|plunger + hung|hanging|sticky|sticking|=sticks|@not_slide|tight|hung_up|=stuck + bore|its|in|up|by_itself|bit|sometimes - injection|clutch|brake|filter",
    ),
    "lifter_out_of_bore": (
        "lifter|tappet|lifters|follower + popped|jumped|came|spat|fell|out + bore|hole|guide|valley|its + out|of|valley - noise|ticking|no|not|took|pulled|pumped",
    ),
    "main_clearance_too_wide": (
        "mains|main_bearings|main_clearance|main_bearing + over_spec|over_limit|out_of_spec|over_the_limit|too_wide|too_loose|excessive|too_big|past_the_limit - rod|no|not|within",
        "mains|main_bearings|main + thou|@length|plastigauge|plastigaged|plastigage|clearance|clearances + too_much|over_spec|over_the_limit|out_of_spec|excessive|too_wide|over_limit|loose - within|in_spec|no|not|rods",
    ),
    "maker_calls_it_normal": (
        "dealer|garage|maker|manual|handbook|book|factory + says|said|told|reckons|calls|claims + normal|fine|acceptable|ok|within|nothing_wrong|not_to_worry|dont_worry - oil_is|oil_was|oil_looks|level|stick|dipstick|@pressure|@number|should|needs|bearings|pump",
    ),
    "bearing_found_seized": (
        "main|rod|big_end|cam|turbo + bearing|journal|shell + seized|welded|picked_up|locked|stuck + crank|journal|on|to|it|solid - pump|no|not|engine_seized",
    ),
    "gallery_found_blocked": (
        "gallery|galleries|oilway|oilways|oil_passage|feed_hole|oil_hole + blocked|plugged|full|packed|solid|bunged|choked + crud|sludge|swarf|solid|with|muck|carbon|dirt|completely|up - no|not|cleaned|clear|plug_out|gallery_plug",
    ),
    "sealer_on_screen": (
        "rtv|silicone|sealant|sealer|gasket_goo|goo|instant_gasket + strainer|pickup|screen|gauze|pick-up - no|not|black_goo|brown_goo|oily_goo",
    ),
    "returns_blocked": (
        "drainbacks|drainback|drain_backs|oil_returns|returns|drain_holes|return_holes + plugged|blocked|clogged|choked|full|gunged|sludged - no|not|clear|cleared",
    ),
    "pump_noise": (
        "noisy|whining|whiny|howling|groaning|rattly + oil_pump|pump - power|steering|water|fuel|vacuum|no|not|lift|lifters|tappets|up",
    ),
    "pump_jammed": (
        "@not_turn|cant_turn|wont_turn|impossible_to_turn|unable_to_turn + pump|oil_pump + pump|by_hand|oil|at_all - crank|cranked|engine|distributor|drill|water|fuel|vacuum",
    ),
    "pump_gear_broken": (
        "broken|chipped|missing|cracked|snapped|sheared + tooth|teeth|rotor|gear + pump - drive|distributor|dizzy|skew|timing|chain",
    ),
    "pump_found_failed": (
        "pump + died|packed_up|failed|gave_up|kaput|shot|duff|dead|buggered|had_it|given_up + oil_pump|pump|oil - fuel|water|vacuum|lift|power|steering|sender|wasnt|not|no|new",
    ),
    "end_clearance_wide": (
        "end_clearance|end_float|end_play|rotor_to_cover|gear_to_cover + pump|rotor|rotors|gears + too|over|out_of_spec|big|wide|excessive - crank|thrust|cam|shaft|drive",
    ),
    "drive_gear_worn": (
        "knife_edged|knife-edged|sharp|pointed|hooked|razor|worn_to_points + teeth|gear + gear|teeth|dizzy|distributor|drive - pump_gears|timing",
    ),
    "relief_valve_stayed_open": (
        "ball|plunger|relief|relief_valve|poppet + @not_seating|@not_seat|@not_close|@not_closing|@not_closed + relief|ball|properly|fully|valve|plunger - filter|bypass|valve_seats|exhaust",
    ),
    "relief_parts_not_standard": (
        "relief|relief_valve|relief_spring|regulator + packed|packed_out|bodged|washers|washer|=shims + previous|by_the|someone|somebody|last|owner|po|out|packed|been|had_been|was|already - i|we|tried|no_change|gained|now",
    ),
    "filter_not_listed": (
        "filter + for_a_different|for_another|off_a_different|wrong|different_engine|another_engine + engine|filter|fitted|on|car|one - relief|bypass|went|swapped|changed|brand|make",
    ),
    "anti_drainback_hard": (
        "anti_drainback|anti_drain|drainback|drain_back|antidrain + no|without|missing|hard|torn|stiff|leaks|@not_have|@not_got|lacks + valve|filter|flap - holes|returns|head|plugged",
    ),
    "one_bearing_gets_no_oil": (
        "all|every|others|rest + main|mains|rods|bearings|journals + except|but|apart_from + rear|front|one|number|no|@number|third|last & oil|dry|prime|priming|drill - wear|worn|clearance|copper|wiped|thou",
    ),
    "engine_seized": (
        "frozen_solid|locked_solid|seized_solid|stuck_solid & turn|turned|bar|crank|spanner|wrench|starter|engine - pump|bolt|filter|valve|plunger|ice|overnight|water|rotor|gear",
        "stuck_solid|solid|locked_solid|locked_up|seized_solid|wont_turn_at_all|frozen_solid + it|engine|motor|its|crank|up|solid - pump|gauge|bolt|shaft|relief|filter|clogged|packed|blocked|light|rock|steady|bolted|plugged|gummed|coked|sensor|lamp|red|cooler|sludge|on_solid|lit|alarm|buzzer|till|until",
    ),
    "shells_look_normal": (
        "shells|bearings|mains|inserts|bearing + look|looked|looks|were|came_out + like_new|perfect|good|mint|fine|as_new|unmarked|lovely - not|no|cam|wheel|one|except|but|pump|turbo",
    ),
    "rod_clearance_too_wide": (
        "rods|rod_bearings|big_end|big_ends|rod_clearance|rod_bearing + over_spec|over_limit|out_of_spec|over_the_limit|too_wide|too_loose|excessive|too_big + clearance|clearances|rod|rods|big_end|spec - no|not|within",
    ),
    "crank_moves_endwise": (
        "crank|crankshaft|crank_pulley|pulley + see|visible|back_and_forth|in_and_out|fore_and_aft|lever|pry|shove + end_play|end_float|moves|movement|play|slides - pump|distributor",
    ),
    "clearances_built_wide": (
        "clearance|clearances|bearings|built|set_up|assembled + loose_side|built_loose|on_the_loose|=loose|wide_side|set_up_at + built|side|build|assembled|clearance|clearances|when|rebuild|@length - cap|bolts|over|limit|pump",
    ),
    "clearances_never_measured": (
        "clearance|clearances|bearings|built|set_up|assembled + never_measured|@not_measured|never_checked + built|build|assembled|clearance|clearances|when|rebuild - cap|bolts|over|limit|pump",
    ),
    "rod_broken": ("threw|thrown|chucked|slung + rod|conrod|con_rod + a|rod|the - belt|knock",),
    "known_for_model": (
        "they_all|these_all|all_of_them|every_one_of_them|most_of_these + do|do_that|do_it|are_like|suffer|the_same - reads|gauges|senders|dealer|say|said",
    ),
    "history_unknown": (
        "bought|got|came|acquired|inherited + like_this|like_that|as_is|in_this_state|as_seen|as_a_project|sight_unseen - gauge|sender|pump|part|always|filter|been_like|was_like|like_that_since|like_this_since",
    ),
    "service_neglected": (
        "never|no|@not|hardly|rarely + oil_change|oil_changes|service|serviced|maintenance + had|has|had_an|ever|in|seen|been|done - i|yet|shows_no|light|noise|pump|pressure|gauge|wont|after_an|before|since_the|no_difference|no_change",
    ),
    "hot_and_thin": (
        "@hotday|heatwave|scorching|boiling_hot|baking|roasting|heat_wave + outside|day|today|weather|ambient|air|summer|out|it_was|temps|degrees - oil_temp|coolant|water|start|psi|engine",
    ),
    "ran_on_without_pressure": (
        "kept|carried_on|drove|continued|ran_it|ran + driving|going|on|running|home|miles|anyway + no_pressure|no_oil_pressure|light_on|lamp_on|zero|with_the_light - first|trial|stopped|straight_away|immediately|towed|pulled_over|coast|shut|off|no_damage|fine",
    ),
    "plug_fur_only": (
        "magnetic_plug|drain_plug|sump_plug|magnet|plug + fuzz|fur|hair|paste|fluff + fine|just|only|normal|bit|little|usual|light - flakes|slivers|chunks|no|spark",
    ),
}
