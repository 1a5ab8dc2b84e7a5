"""Words that together name findings people describe rather than name, in whatever order they stand."""

from __future__ import annotations

_PART_IN = "bolt|nut|=washer|circlip|clip|pin|spring|piece|=bit|bits|chunk|lump|half|roller|needle_roller|valve_guide|tooth"
_SUMP = "sump|pan|oil_pan|crankcase|bottom_of_the_engine"
_SHELL = "shell|shells|insert|inserts|bearing|bearings|slipper|slippers"
_SAMPLE = "sample|analysis|lab|report|result|results"
#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_PLAIN: dict[str, tuple[str, ...]] = {
    "piece_found_inside": (
        f"{_PART_IN} + lying|found|sitting|rolling|floating|rattling + {_SUMP}|inside|bottom - no|not|drain|plug|oil_pump|relief|pickup|screen|filter|screw_in",
    ),
    "leftover_found": (
        "rag|cloth|socket|spanner|wrench|screwdriver|ratchet|glove|bung|magnet|torch|pen + found|left|discovered|forgotten|inside + engine|sump|pan|valley|inside|timing_case|crankcase|port|in_there - pickup|screen|strainer|no|dipstick|relief",
        "left|forgot|forgotten|leaving + rag|cloth|tool|socket|spanner|wrench|cap|bung|plug|paper_towel|blue_roll|magnet|mask|tape + "
        "valley|inside|in_the|in_it|=in|port|engine|block|sump|head - no|not|dipstick|pump|filler|gallery|radiator|ground|relief|sealed|plugged",
    ),
    "foreign_part_fitted": (
        "part|pump|cam|crank|gears|sender|rods|cover + belongs|off|from|for|@not_belong + different|another|other|wrong & engine|model|motor - gauge|new_pump|swapped|my_other|brother|friend",
    ),
    "damaged_by_debris_only": (
        f"{_SHELL} + =only|just|nothing_but + debris|dirt|grit|scratches|marks + no_heat|@not_heat|cool|@not_burnt|no_sign - screen|filter",
    ),
    "worst_far_from_pump": (
        f"worst|worse|wiped + farthest|furthest|far_end|away_from_the_pump|last_one|end_of_the_line + {_SHELL}|main|mains|rod|rods|journal",
    ),
    "shells_etched": (f"{_SHELL} + dark|black|spongy|etched|stained|acid - no|not|heat|blue|oil",),
    "shell_hole_mismatch": (
        f"hole|holes + {_SHELL} + @not_line|@not_match|misaligned|@not_meet|wrong_place|covered|offset|half_covered|blanks - dowel|bolt|bolt_hole|plug",
    ),
    "wrong_shells_fitted": (
        f"{_SHELL} + wrong|standard|undersize|oversize|@number|10_under|20_under + ground|crank|grind|supplied|sent|fitted & wrong|supplied|sent|instead|gave|but - "
        "new_shells_and|no|right|correct|matched|to_suit",
    ),
    "several_journals_dry": (
        "several|some|three|two|couple + journals|mains|rods|big_ends|bearings + dry|blue|blued|no_oil - none|not",
    ),
    "needle_off_zero_at_rest": (
        "key_off|engine_off|ignition_off|engine_stopped|engine_turned_off|ignition_switched_off + gauge|needle|reads|shows|says|sits|sit|still|even|rests + "
        "@pressure|@number|above|off_the_peg|off_zero|halfway|half_way|mid - light|lamp|minutes|later|suddenly|cold|down|hours|rpm|restart|oil_level|dipstick|before|at_least",
        "needle|gauge & @not_zero|@not_return|@not_drop_to_zero|@not_go_to_zero|above_zero|off_the_pin|@not_rest & stopped|off|parked|switched_off|at_rest - idle|hot|speed|running",
    ),
    "needle_stuck_at_one_value": (
        "gauge|needle|reading|it + same + all_the_time|always|whatever|regardless|no_matter|revs|hot_or_cold|constantly|any_speed - new|sender|mechanical|after|before|as|owner|years|filter|other|oil",
        "needle|gauge|reads|sits|it|stays|says + @pressure|@number|halfway|half_way|mid-scale|middle & all_day|all_the_time|whatever|regardless|no_matter|constantly|@not_move|never_moves|never_changes|permanently|doesnt_matter & "
        "revs|rpm|hot|cold|idle|speed|throttle|key|temperature - then|drops|falls|drop|low|psi_when|max|over|above|hold",
    ),
    "wiggle_moves_needle": (
        "wiggle|wiggling|wriggle|waggle|jiggle|jiggling|touch|push|press|flex|twist + plug|wire|connector|lead|terminal|sender|switch|loom|harness & "
        "light|lamp|needle|gauge|reading|goes|goes_out|moves|jumps|flickers|reads|changes|off - pickup|tube|no_effect|nothing|no_difference|doesnt",
    ),
    "tape_on_sender_thread": (
        "ptfe|teflon|thread_tape|plumbers_tape|=tape|sealant|thread_sealant|sealer + sender|sensor|switch|sending_unit - strainer|seat|screen|sump|relief|pan|no|not",
    ),
    "gauge_port_moved": (
        "sender|gauge|switch|sensor|tapping|takeoff + moved|relocated|different|another|new + port|place|hole|location|spot|tapping - same|no|pump",
    ),
    "sender_not_for_gauge": (
        "sender|sensor|sending_unit + wrong|@not_match|@not_matched|@not_for|mismatched|different_range|other_range|=bar|80_psi|100_psi|incorrect + gauge|range|ohm|ohms|car|type|part_number|dash - wire",
    ),
    "sender_ohms_high": (
        "sender|sensor|sending_unit & open_circuit|=open|infinite|infinity|too_many_ohms|high_ohms|high_resistance|@not_continuity|no_continuity - wire|port|valve",
    ),
    "gauge_supply_wrong": (
        "voltage_stabiliser|voltage_stabilizer|stabiliser|stabilizer|regulator|supply|feed|ignition_feed|voltage_limiter + "
        "gauge|gauges|dash|cluster|instrument & dead|faulty|bad|wrong|unsteady|@not_10|sticking|over|high|low|missing|pulsing - oil_feed|relief|pump",
    ),
    "tachometer_wrong": (
        "tach|tacho|tachometer|rev_counter + reads|out|wrong|optimistic|inaccurate|lies|reads_high + revs|rpm|high|fast|too|out|wrong|than|by|optimistic - zero|stopped|died|same_time|quit|no|not",
    ),
    "idle_below_spec": (
        "idle|idling|idles|tickover|ticks_over + too_low|too_slow|very_slow|very_low|way_down|below|low_idle|slow & "
        "@rpm|spec|book|should|manual|supposed|rpm|revs|specified|@number - pressure|psi|oil_pressure|gauge|hot_idle|bar|needle|lbs|pounds|@pressure|until|at_idle|reads|going",
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
    "filter_misfitted": (
        "two|double|second|doubled|old|previous|extra + gasketed|gasket|gaskets|seals|seal|o_ring|rubber|ring & filter - pump|pan|sump|relief|cover|head|rocker|valve_cover|new_gasket",
        "double_gasketed|double_gasket|doubled_gasket|cross_threaded + filter|it|gasket",
    ),
    "milky_film_in_filter": (
        "filter|element|pleats|paper + milky|white_paste|mayo|mayonnaise|grey_paste|emulsion|creamy|grey_film|white_film - no|not",
    ),
    "gallery_plug_lies_in_sump": (
        "gallery_plug|oil_plug|cup_plug|gallery_cup|gallery_plugs + sitting|lying|found|loose|rolling|in_the + timing_case|sump|pan|timing_cover|front_cover|bottom|case - no|not|new",
    ),
    "oil_wash_at_gallery_seal": (
        "inside|internally|behind_the_cover|behind_the_timing_cover|behind_the_front_cover|into_the_timing_case|into_the_sump + oil + pouring|pissing|dumping|gushing|spraying|leaking|bleeding|pumping - no|not|rocker|outside|spray_bar|coolant|water|poured|turbo",
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
        "tank|dry_sump|oil_tank & drains|empties|siphons|leaks|runs|drained|bleeds|creeps + crankcase|sump|engine|crankcases & stood|standing|sits|sitting|overnight|week|weeks|left|parked|stands|winter - running|at_speed|while_running|under_way",
        "wet_sumps|wet_sumping|wetsumps|wetsumping|wet_sump_after|sumped + tank|overnight|it|bike|engine|standing|after|week|always",
    ),
    "tank_empties_running": (
        "tank|oil_tank + empties|drains|goes_empty|runs_dry|level_drops|drops + running|while_riding|at_speed|while_it_runs|revs|run + crankcase|sump|engine|it - stands|standing|overnight|sits|fuel|petrol",
    ),
    "not_refilled": (
        "only_put|put + half|some|part|most + oil + back|in - up|quart|thicker",
        "forgot|forgotten|@not|never|without + refill|refilled|put_oil_back|put_the_oil_back|fill_it|filled_it|add_oil|put_any_oil|put_oil + oil|it|drained|after|back - light|topped|check",
    ),
    "too_much_poured_in": (
        "poured|put|tipped|added|filled|overfilled|chucked|dumped + too_much|far_too_much|double|twice|extra_gallon|over_the + oil|it|in|mark - thick|drained_it|pressure",
    ),
    "additive_or_flush_in_oil": (
        "can|bottle|tin|dose|some|=tried|poured|added|chucked|put|threw|tipped + stop_leak|oil_treatment|treatment|additive|stop_leak_thickener|engine_flush|stop_smoke|atf|transmission_fluid|hydraulic_oil|"
        "diesel_in_the_oil|snake_oil|two_stroke_oil|2_stroke_oil|gear_oil|sawdust - coolant|radiator|fuel_tank|gearbox|power_steering|injector|no|not|never",
        "wrong|mistake|by_accident|accidentally + 2_stroke|two_stroke|gear_oil|hydraulic_oil|atf|transmission_fluid|diesel|petrol|coolant|water|screenwash|gas + oil|filler|sump|it|engine|in - smell|leak|fuel_tank",
    ),
    "dipstick_not_its_own": (
        "dipstick|stick|dipstick_tube + wrong|different|another|other|@not_original|@not_right|not_its_own + engine|one|car|model|length|from|for|tube - oil_level|grade",
    ),
    "oil_temperature_high": (
        "oil|oil_temp|oil_temperature|oil_temps + @hotoil + up_to|over|above|reaches|reached|hits|gets|got|climbs|past|at|to|high|running - "
        "outside|minus|coolant|water|ambient|start|cold|below|60|70|80|under|thermostat|smoke",
    ),
    "fuel_gets_in": (
        "lift_pump|fuel_pump|injector|float|needle_valve|choke|carb + leaking|split|torn|stuck|dribbling|flooding|perished|stuck_open|flooded + oil|sump|crankcase|petrol|diesel|fuel|gas|into - no|not|outside",
    ),
    "gone_at_the_next_start": (
        "fine|good|normal|ok|pressure|perfect|@pressure|@number + yesterday|last_night|last_time|when_i_parked|when_parked|put_away|when_i_shut|friday|saturday|sunday|day_before & morning|today|next|this_morning|now|next_day & "
        "nothing|none|zero|no_pressure|no_oil_pressure|zilch|nil|dead|gone|light_stays - level|oil_level|dipstick",
    ),
    "began_after_revving_hard": (
        "over-revved|overrevved|over_revved|missed_shift|missed_gear|money_shift|redlined|bounced_off_the_limiter|hit_the_limiter|bouncing_off|buzzed_it|revved_the_nuts|red-lined + "
        "after|since|then|it|and|when|zero|pressure|from|ever|the|on - no|not|never|up_to|before",
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
        "ice|frozen|slush|froze + pickup|screen|strainer|sump|pan|oil_pump - thaw|nothing",
    ),
    "water_in_sump": (
        "water|coolant|antifreeze + sump|pan|bottom + found|lying|came_out|sitting|pint|litre|cup|half - no|not|pump|cooling|leak_outside|bilge",
    ),
    "sump_or_pump_swapped": (
        "different|deeper|another|other|bigger|shallower|wrong|aftermarket|used|new + sump|pan|oil_pan|pump|pickup + fitted|fit|swapped|put|off|from|on|has|installed|bolted - gasket|o_ring|oring|ring|cured|screen|hose|seal|pump_same|old_pump|noise|no_difference|fuel|water|replacement_pump|new_pump|new_oil_pump|help|plug",
    ),
    "pickup_gap_too_large": (
        "pickup|pick-up|strainer|it + off|from|above|clear_of|short_of + bottom|floor|pan|sump + inch|inches|@length|long_way|way|miles|far - fell|touching|no|oil_level|level|dented",
    ),
    "pickup_fixing_loose": (
        "pickup|strainer & bolts|bolt|nuts|bracket & lying|loose|missing|fell|fallen|bottom|undone|backed|sheared|snapped|dropped - tight|new|drain|pump_bolts|removed|took|undid|pump_bolt",
    ),
    "gallery_plug_found_missing": (
        "forgot|forgotten|@not|left_out|never|missing + plug|plugs|gallery_plug|cup_plug + back|behind|gallery|cam|timing|put|fitted|block|hole - spark|drain|glow|sump_plug|all|every|filler|core|plugs_out|turned|cranked|spun|inlet",
    ),
    "oil_grade_as_manual": (
        "oil|grade + right|correct|proper|recommended|specified|manual_says|book_says|manual_calls|as_per + in_it|using|running|manual|handbook|book|is|use - not|too|wrong|thicker|thinner|instead|pressure|amount|level|should|brings|fresh",
        "oil|@grade|grade + recommended|specified|as_per|by_the_book|book_says|manual_says|handbook|as_specified|correct_grade|right_grade|says_to_use|owners_manual|maker - not|too|thicker|thinner|instead|heavier|but|pressure|wrong|should_be|lb_at|never",
    ),
    "oil_grade_too_thin": (
        "@thin|thinner|thin + instead|rather|not_the|should_be|supposed|usual|calls_for|specifies|normally & @thick|@grade|usual|heavier|proper|thicker|recommended|manual|book|spec - thinner_oil_made|no_difference",
    ),
    "oil_grade_too_heavy": (
        "@thick + in|running|using|put|has|got + should|wants|calls_for|instead|supposed|manual|meant|recommended - helped|no_difference|gained|tried|thin",
        "thicker|heavier + oil|grade + than + recommended|manual|book|should|spec|specified|supposed - tried|helped",
        "@thick + instead|rather|not_the|should_be|supposed|usual|calls_for|specifies|normally & @thin|@grade|lighter|thinner|recommended|manual|book|spec - helped|no_difference|gained",
    ),
    "long_unchanged": (
        "always + been_like|been_that|done_it|done_that|has|read|like_that|like_this|the_same + like|that|this|way|it|low|since|been - light|now|until|oil|used_to|dipped|changed|checked|cleaned|no_light|had",
        "same_reading|reads_the_same|same_pressure + since|years|bought|always|got|ever - new|sender|filter|pump|rebuild|changed|after",
        "always + been_like|done_that|done_this|read_like|has_been|been_that|was_like|like_this|like_that|been_the_same|been_that_way + since|we|i|years|got|owned|bought|new|it - rebuild|work|changed|now|until|used|before|good|fine|but_now|no_light|fitted|swapped|last|week|replaced",
        "the_same|like_this|unchanged|no_worse|@not_changed + for_years|decade|decades|@longtime|since_new|for_ages - until|used|stood|oil|barn|now_it|filter|ago|sat|storage|changed|fall|cured",
    ),
    "grows_worse": (
        "worse|lower|longer|sooner + every|each|by_the + day|week|time|run|trip|start|ride|month|drive - better|no|not|any",
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
        "plunger|piston|relief|relief_valve + =stuck|jammed|seized|hung|gummed|=wedged & relief|plug|regulator|bore|prv - filter_bypass|rings|no|not|thermostat|@not_stuck",
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
    "panel_reads_too_low": (
        "mechanical|test_gauge|real|direct|known_good|proper_gauge & dash|panel|stock|factory & @pressure|@number & but|while|whereas|yet|only|against - same|agrees|both",
        "dash|panel|stock|factory|original|electric + gauge|reads|shows|needle|still|=reading + next_to_nothing|nothing|zero|low|lower|way_down|under|less|barely & mechanical|test_gauge|direct|known-good|trusted|real|shop_gauge - also|same|agrees|too|high|both|exactly",
        "bad|lying|duff|useless|faulty|chasing + dash_gauge|panel_gauge|stock_gauge|factory_gauge|gauge + all|whole|was|is|a|summer|along - mechanical_gauge_is|new_gauge|bought|no|not|sender",
    ),
    "other_gauges_also_wrong": (
        "temp|temperature|fuel|amps|volts|speedo|all_the_gauges|other_gauges|every_gauge + gauge|gauges|needle|needles|as_well + died|dead|zero|stopped|quit|failed|wild|pegged|same_time|at_once|together|too - ok|fine|no|not|normal|work|works",
    ),
    "maker_calls_it_normal": (
        "dealer|garage|maker|manual|handbook|book|factory + says|said|told|reckons|calls|claims + normal|fine|acceptable|ok|within|nothing_wrong|not_to_worry|dont_worry - @pressure|@number|should|needs|bearings|pump",
    ),
    "bearing_found_seized": (
        "main|rod|big_end|cam|turbo + bearing|journal|shell + seized|welded|picked_up|locked|stuck + crank|journal|on|to|it|solid - pump|no|not|engine_seized",
    ),
    "iron_high": (
        f"{_SAMPLE} + iron + high|up|elevated|flagged|@number|critical|over|spiked - low|normal|no|not",
    ),
    "silicon_high": (
        f"{_SAMPLE} + silicon + high|up|elevated|flagged|@number|over|spiked - low|normal|no|not|silicone",
    ),
    "chromium_high": (
        f"{_SAMPLE} + chromium|chrome + high|up|elevated|flagged|@number|over - low|normal|no|not",
    ),
    "metals_normal": (
        f"{_SAMPLE} + metals|wear_metals|everything|all + normal|fine|clean|ok|low|within|unremarkable - not|high|fuel",
        f"{_SAMPLE} + no|@not + metal|metals|abnormal|wear",
    ),
    "lab_viscosity_low": (
        f"{_SAMPLE} + viscosity|visc + thin|low|down|dropped|grade|sheared|below - high|thick|normal|over",
        "viscosity + full_grade_thin|grade_thin|too_thin|grade_low|sheared_down|down_a_grade|way_down|low - no|not|new|lower_viscosity",
    ),
    "lab_fuel_high": (
        f"fuel|fuel_dilution|diesel + {_SAMPLE}|@percent|percent|dilution + high|over|@percent|percent|flagged|critical|@number - smell|no|not|level|tank",
    ),
    "level_correct": (
        "oil|stick|dipstick|level|its|sump|it + bang_on|spot_on|between_the_marks|between_marks|on_the_mark|at_the_mark|at_the_max|on_full|its_full|at_max|to_max|is_full|right_level|mid_stick|correct_level + "
        "full|mark|marks|max|level|line|oil|sump|stick|dipstick|quarts|litres - not|over|below|low|idle|timing|pressure|fuel|coolant|tank|grade|temp|load|throttle",
    ),
    "oil_looks_clean": (
        "oil|stick|it + clean_as_a_whistle|nice_and_clean|clean_as|golden|like_honey|looks_new|like_new_oil|looks_clean|still_clean|honey - not|no|filter|screen|pump|pan|runs",
        "=clean + whistle|honey|new_oil - pump|screen|filter|sump|pan|not",
    ),
    "gallery_found_blocked": (
        "gallery|galleries|oilway|oilways|oil_passage|feed_hole|oil_hole + blocked|plugged|full|packed|solid|bunged|choked + crud|sludge|swarf|solid|with|muck|carbon|dirt|completely|up - no|not|cleaned|clear|plug_out|gallery_plug",
    ),
    "dipstick_low": (
        "dipstick|stick + just|barely|only + tip|end|bottom|showing|wet|touching|drop - full|max",
        "@volume|quart_and_a_half|litre_and_a_half|quart|litre|pint + =down|=low|=short - per|every|idle|pressure|pipe|inlet|hole|poured|the|over|coolant|water|pump|to_the|fuel|came",
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
        "oil + @not|hasnt|never|not + changed|been_changed|change + years|ages|miles|months|@longtime|@distance|since - filter_only|gauge|i_have",
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
        "drained|drain|got|came|out + @volume + when_it_holds|holds|should|capacity|should_be & @volume - only|barely|just",
    ),
    "sealer_on_screen": (
        "rtv|silicone|sealant|sealer|gasket_goo|goo|instant_gasket + strainer|pickup|screen|gauze|pick-up - no|not",
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
        "relief|relief_valve|relief_spring|regulator + packed|packed_out|shimmed|bodged|stretched|washers|washer|shims + previous|by_the|someone|somebody|last|owner|po|out|packed|been|had_been|was|already - i|we|tried|no_change|gained|now",
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
    "engine_runs_normally": (
        "purrs|purring|hums|ticks_over_sweetly|runs_mint|sweet_as|smooth_as|like_a_kitten|like_clockwork + kitten|like|nicely|along|nut|it|engine|silk|perfectly|clockwork - used|until|gauge|lifters|tappets|pump",
    ),
    "engine_seized": (
        "stuck_solid|solid|locked_solid|locked_up|seized_solid|wont_turn_at_all|frozen_solid + it|engine|motor|its|crank|up|solid - pump|gauge|bolt|shaft|relief|filter|clogged|packed|blocked|light|rock|steady|bolted|plugged|gummed|coked|sensor|lamp|red|cooler|sludge",
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
        "clearance|clearances|bearings|built|set_up|assembled + never_measured|@not_measured|loose_side|built_loose|on_the_loose|=loose|wide_side|set_up_at|never_checked + built|side|build|assembled|clearance|clearances|when|rebuild|@length - cap|bolts|over|limit|pump",
    ),
    "rod_broken": ("threw|thrown|chucked|slung + rod|conrod|con_rod + a|rod|the - belt|knock",),
    "oil_on_the_ground": (
        "leaves|left|leaving|makes|making + patch|puddle|spot|stain|pool|mess + oil|overnight|drive|floor|under|every|behind - no|not|water|coolant",
    ),
    "drain_plug_found_loose": (
        "plug|drain|bung + finger_tight|loose|hand_tight|undone|backed_out|gone|fell|dropped|vibrated + sump|drain|pan|bottom - gallery|relief|spark|filter|sender|pickup|core|glow|wire|connector|switch|plunger",
    ),
    "rocker_cover_loose": (
        "rocker_cover|valve_cover|cam_cover|tappet_cover + loose|bolts_missing|missing_bolts|screws_missing|undone|@not_tight|hand_tight|bolts_loose - gasket_torn|no|clean",
    ),
    "sender_damaged": (
        "terminal|body|casing|top|tab|spade + broke|broken|snapped|cracked|smashed + sender|sensor|switch|sending_unit|off - wire_off|gauge|battery",
    ),
    "sender_wire_off": (
        "connector|plug|lead|wire|spade + @not_plugged|@not_plugged_in|unplugged|@not_connected|@not_pushed|off|hanging|dangling + in|sender|switch|sensor|properly|off|connected|there - dizzy|spark|drain|stays|still|with_the|i|pulled|took|coil|glow|light_on|light_off|wiggle",
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
        "gauge & mechanical|test|other|second|light|lamp & @not_agree|dont_agree|disagree|contradict|different|miles_apart - sender_to|new",
    ),
    "known_for_model": (
        "they_all|these_all|all_of_them|every_one_of_them|most_of_these + do|do_that|do_it|are_like|suffer|the_same - reads|gauges|senders|dealer|say|said",
    ),
    "history_unknown": (
        "bought|got|came|acquired|inherited + like_this|like_that|as_is|in_this_state|as_seen|as_a_project|sight_unseen - gauge|sender|pump|part|always|filter",
    ),
    "service_neglected": (
        "never|no|@not|hardly|rarely + oil_change|oil_changes|service|serviced|maintenance + had|has|had_an|ever|in|seen|been|done - i|yet|light|noise|before|since_the|no_difference|no_change",
    ),
    "hot_and_thin": (
        "@hotday|heatwave|scorching|boiling_hot|baking|roasting|heat_wave + outside|day|today|weather|ambient|air|summer|out|it_was|temps|degrees - oil_temp|coolant|water|start|psi|engine",
    ),
    "ran_on_without_pressure": (
        "kept|carried_on|drove|continued|ran_it|ran + driving|going|on|running|home|miles|anyway + no_pressure|no_oil_pressure|light_on|lamp_on|zero|with_the_light - stopped|straight_away|immediately|towed|pulled_over|coast|shut|off|no_damage|fine",
    ),
    "declined_over_months": (
        "slowly|gradually|steadily|bit_by_bit|little_by_little + dropped|dropping|fallen|falling|declined|gone_down|lower|getting|down|sunk|worse|less + months|years|weeks|seasons|season|year|time|last_few|miles - run|hour|minutes|trip|drive|mile_run|day",
    ),
    "rises_just_off_idle": (
        "light|lamp|it|flicker|pressure|gauge|needle|goes|comes|buzzer + goes_out|comes_up|comes_right|up|out|rises|recovers|off|jumps|clears|stops & touch_the_throttle|touch_of_throttle|touch_of_gas|bit_of_throttle|blip|blip_of|crack_the|tickle_the|touch_the_gas|above_idle|off_idle|1000|1200|1500|slightest|give_it_a|bit_of_gas|few_revs|just_above - drops|falls|no|not|never|goes_off_scale|brake|wont",
    ),
    "falls_as_revs_rise": (
        "pressure|it|gauge|needle|drops|falls + drops|falls|lower|goes_down|fall|drop|sinks|less + revs_go_up|as_revs|as_the_revs|with_rpm|with_revs|revs_rise|revs_climb|rpm_goes_up|higher_you_rev|more_you_rev|harder_you_rev|higher_the_revs|as_you_rev|as_rpm|the_faster - rises|up_with|after|back_to_idle|drops_back",
        "higher|more|harder|faster & rev|revs|rpm|spin|go & lower|less|drops|falls|worse & pressure|it|gets|lower|needle - no|not|noise|knock",
    ),
    "low_even_cold": (
        "low|lousy|poor|only|=down + even + cold|stone_cold|first_thing|start|startup - hot|idle_hot|not|only_when",
    ),
    "plug_fur_only": (
        "magnetic_plug|drain_plug|sump_plug|magnet|plug + fuzz|fur|hair|paste|fluff + fine|just|only|normal|bit|little|usual|light - flakes|slivers|chunks|no|spark",
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
