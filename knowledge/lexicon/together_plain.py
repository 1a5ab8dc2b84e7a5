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
    "shells_etched": (
        f"{_SHELL} + dark|black|spongy|etched|stained|acid - no|not|heat|blue|oil",
    ),
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
        "oil|@grade|grade + recommended|specified|as_per|by_the_book|book_says|manual_says|handbook|as_specified|correct_grade|right_grade|says_to_use|owners_manual|maker - not|too|thicker|thinner|instead|heavier|but|pressure|wrong|should_be|lb_at|never",
    ),
    "oil_grade_too_thin": (
        "@thin|thinner|thin + instead|rather|not_the|should_be|supposed|usual|calls_for|specifies|normally & @thick|@grade|usual|heavier|proper|thicker|recommended|manual|book|spec - thinner_oil_made|no_difference",
    ),
    "oil_grade_too_heavy": (
        "@thick + instead|rather|not_the|should_be|supposed|usual|calls_for|specifies|normally & @thin|@grade|lighter|thinner|recommended|manual|book|spec - helped|no_difference|gained",
    ),
    "long_unchanged": (
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
        "relief_piston|relief_plunger|relief_valve|plunger + hung|hanging|sticky|sticking|=sticks|@not_slide|tight|hung_up|=stuck + bore|its|in|up|by_itself|bit|sometimes - injection|clutch|brake|filter",
    ),
    "lifter_out_of_bore": (
        "lifter|tappet|lifters|follower + popped|jumped|came|spat|fell|out + bore|hole|guide|valley|its + out|of|valley - noise|ticking|no|not|took|pulled|pumped",
    ),
    "main_clearance_too_wide": (
        "mains|main_bearings|main + thou|@length|plastigauge|plastigaged|plastigage|clearance|clearances + too_much|over_spec|over_the_limit|out_of_spec|excessive|too_wide|over_limit|loose - within|in_spec|no|not|rods",
    ),
    "panel_reads_too_low": (
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
