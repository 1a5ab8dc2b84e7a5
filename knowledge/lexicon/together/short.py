"""Words that together name a finding in a short report; see ``together``."""

from __future__ import annotations

_SAMPLE = "lab|sample|samples|oil_report|lab_report|analysis|sent_off"
_PLUG = "drain_plug|sump_plug|drain_cock|drain_tap|drain_valve"
_HELPS = (
    "cures|cured|hides|stops|stopped|halves|helps|helped|steadies|masks|fixes|fixed|brings|keeps"
)
#: the finding, by words that stand in one clause (+) or in one sentence (&) when it is there
TOGETHER_SHORT: dict[str, tuple[str, ...]] = {
    "accessory_pad_wet": (
        "oil|leak|leaks|wet|weeps|runs|drips|leaking + pad|pad_joint|accessory_joint|accessory_case|governor|governor_joint|blanking_plate|vacuum_pump|magneto_flange|back_pad - "
        "no|not|filter_pad|brake|level|engine_pad|sprayed_from_the_pump|dry",
        "runs|leaks|weeps|drips & from_that_joint|out_of_that_joint|that_end|that_joint|that_flange & pad|accessory|governor|vacuum_pump|magneto|blanking - no|not",
    ),
    "tank_empties_running": (
        "tank + low|empty|empties|nearly_empty|drops & crankcase|sump|engine + full|fills|flooded|filling - standing|overnight|fuel|morning|header|parked",
        "pumps|empties|moves|drains + its_tank|the_tank|oil_tank + crankcase|sump|engine - standing|overnight|fuel|parked|stood",
        "poor|weak|hardly_any + return + tank - fuel|header|diesel",
    ),
    "no_return_to_tank": ("no|@not_any|zero|nil + return + tank|bag - fuel|header|diesel",),
    "crank_moves_endwise": (
        "pulley|crank|crankshaft|flywheel|damper + walks|moves|shifts|slides|creeps|levered|moved|pushed|pulls + clutch|endwise|end_to_end|fore|forward|forwards|to_and_fro|in_and_out|mm|thou - "
        "wobble|wobbles|side_to_side|by_hand|no|not|@not|freely|does_not|within",
        "end_float|endfloat|end_play|endplay|thrust_play + huge|big|excessive|large|lots|too_much|far_too|massive|visible|feels|wide - no|not|within|normal|cam",
    ),
    "gauge_port_moved": (
        "sender|sensor|gauge|gauge_feed|gauge_line + moved|went|tees|teed|relocated|shifted|resited + head|behind_the_filter|sandwich|plate|adapter|end_of_the_gallery|back_of_the_head|other_end|side_of_the_block - "
        "no|not|test|mechanical|put_back|wire|bearing|unscrewed|to_zero|to_nothing",
    ),
    "good_at_pump_low_in_gallery": (
        "full|good|fair|fine|plenty|normal|strong & at_the_pump|pump_port|pump_test_port|test_port|port_ahead|pump_outlet|at_pump & gallery|rear_of_the_block|far_end|rear_port & low|poor|weak|nothing|little|@pressure|@number - "
        "new_pump|not_good|before_the_filter",
    ),
    "filter_drop_high": (
        "before|ahead_of|upstream|in_front_of & filter|element & good|fine|high|healthy|normal|strong & behind|after_it|after_the_filter|past|downstream|beyond & poor|low|zero|nothing|weak - "
        "change|changed|miles|service|new|drive|trip",
        "zero|nothing|nil|little & behind_the_filter|after_the_filter|past_the_filter|downstream_of_the_filter|beyond_the_filter & before|ahead|upstream|in_front - changed|new",
    ),
    "rod_through_block": (
        "rod|conrod + through|out_of|came_out|poked + case|crankcase|side_of_the_engine|casing - push|pushrod|piston_rod|tie|no|not",
    ),
    "locked_then_freed": (
        "seized|locked|tightened|nipped & turned_over_again|turned_again|turns_again|turns_over_again|ran_again|turned_freely|turns_freely|came_free|freed_itself - pump|valve|relief|nut|adjuster|filter",
    ),
    "stopped_with_loss_of_power": (
        "=stopped_dead|stopped_stone_dead - pump|needle|gauge|noise|knock|valve|light|flow",
    ),
    "hard_to_turn": (
        "turns|turn|turned + in_lumps|lumpy|notchy|in_jerks|hard_spot|tight_spot|stiff_in_places - pump|valve|distributor|key|ignition|adjuster|steering",
        "@not_spin|@not_turn_it|hardly_turn_it|struggles_to_turn|barely_turn_it + starter - pump|drive|battery|solenoid",
    ),
    "sludge_seen": (
        "tar|sludge|treacle|jelly|gunk|black_jelly + cap|filler|filler_neck|rocker_cover|valve_cover|cover - no|not|noise|cleaned_and",
    ),
    "lead_high_alone": (
        f"{_SAMPLE} & lead + climbing|rising|climbs|rises|up|increasing|doubled|creeping - copper|wire|ignition|cable|plug|test_lead|silicon",
    ),
    "copper_and_lead_high": (
        f"{_SAMPLE}|sent & bearing_metal|bearing_metals|bearing_material|copper_and_lead|lead_and_copper - no|not|unchanged|normal|low|steady|ok|okay|fine|good",
    ),
    "silicon_high": (
        f"{_SAMPLE}|sent & silicon + loads|lots|high|full|up|climbing|heaps|much|and|ppm - no|not|normal|low|sealer|gasket",
    ),
    "glycol_found": (
        f"{_SAMPLE} & sodium|potassium|glycol|antifreeze - no|not|nil|normal|without",
    ),
    "water_in_sample": (f"{_SAMPLE} & water - no|not|nil|without|cooled|water_pump|jacket",),
    "lab_viscosity_low": (
        f"{_SAMPLE} & thinner|sheared|below_grade|under_the_grade|under_grade|out_of_grade|below_its_grade|thinned - thicker|high|no|not|shaft|key",
        "oil + sheared|sheared_down|lost_its_grade|fallen_a_grade - shaft|key|pin|drive|gear|bolt|pump|stud|no|not",
    ),
    "metals_normal": (
        f"{_SAMPLE} & no_metals|no_wear_metals|no_metal|metals_normal|metals_fine|metals_low|metals_ok - filter|pan|sump",
    ),
    "oil_overdue": (
        "interval|oil_change|changes|service|drain_interval + stretched|extended|doubled|pushed_out|run_over|overrun - relief|spring|cable|chain|no|not",
    ),
    "service_neglected": (
        "patchy|irregular|sporadic|missed|skipped|lapsed|late + service|services|servicing|oil_changes|service_book - no|not|never",
        "service|services|servicing + years_late|year_late|way_overdue|long_overdue - no|not",
    ),
    "debris_seen_before": (
        "bits|pieces|chips|plastic|swarf|grit|fragments + filter|sump|strainer|screen|relief|drain + before|last_drain|last_time|old|last|again|each_time|twice|every_time - no|not|new|never|none|replaced",
        "years_ago|year_ago|last_year|months_ago|previous_owner|earlier_service|previous_service & screen|strainer|pickup|gauze|filter & "
        "half_blocked|part_blocked|partly_blocked|blocked|clogged|full_of|debris|crud|coke|sludge|sealant|plastic & then|at_that_time|at_the_time|back_then|cleaned - no|not|clear|now|today",
    ),
    "drain_plug_found_loose": (
        f"{_PLUG} + road|missing|gone|open|half_open|lost|fell|undone|dripping|cracked_open - took|removed|new|opened|fitted|drained|fully|clean",
        "no|missing|without + plug|bung & drain|sump|hole - gallery|spark|glow|core|welch|crank|head",
    ),
    "oil_on_the_ground": (
        "oil|puddle|pool + underneath|under_it|under_the_car|on_the_tray|drip_tray|bedplate|on_the_drive|on_the_deck|on_the_floor - no|not|nothing|@not|never|dry|not_a_drop",
        "bedplate|drip_tray|tray + flooded|full_of_oil|swimming|awash - no|not|battery",
    ),
    "oil_seen_outside": (
        "everything|whole_engine|all_the_engine|all_of_it|engine_bay|engine_room + wet|covered|soaked|oily|filthy|black - inside|rain|washed|dry|no|not|steam|smoke|water|coolant",
        "pours|pouring|poured|gushes|running|runs + oil + head|block|cover|back|side|rear|front - pump|port|inside|rockers|sump_plug|drain|no|not|drill|filter_hole|cranked",
    ),
    "leaks_only_running": (
        "squirts|pours|sprays|runs|leaks|drips + while_running|when_running|with_revs|more_with_revs|with_the_revs|engine_running|when_it_runs - fine|well|pressure|light|gauge|stood|standing|smooth|it_runs_well",
    ),
    "oil_trail_behind": ("line|trail|streak + oil + behind|road|lane - no|not|blue|smoke",),
    "dipstick_dry": (
        "level|oil + off_the_stick|off_the_dipstick|off_the_bottom|below_the_stick - runs|ran|drips|drops|dripped|like|pressure|no|not|gauge|wiped|cooled",
    ),
    "dipstick_low": (
        "low|down + on_level|on_oil_level - pressure|no|not",
        "dipstick|stick|level & down|short|shy & @volume - poured|filled|put|into|sump_plug|took|takes|drained|up|high|over_full|overfull|not|no|topped",
    ),
    "level_risen": (
        "level|oil_level + =up|crept_up|gone_up|climbs|climbing|risen|rising - glass|window|halfway|half|half_way|@part|@fraction|share|is_up|topped|to_the|with|brought|made|filled|up_to|no|not|pressure|temperature|fuel|coolant|keep|warmed",
    ),
    "level_correct": (
        "oil|level|sump + =right|=correct - dent|dented|right_under|right_behind|right_at|right_on|right_boot|right_leg|right_foot|covered|right_hand|pressure|grade|hand|side|now|away|not|ports|up|down|light|lamp|put|used|filter|weight|hot|kind|type|sort|wrong|after|through|over|back|there",
        "level & grade|viscosity & right|correct|fine|ok|as_they_should - not|wrong|pressure|too",
    ),
    "oil_grade_as_manual": (
        "grade|viscosity|weight & right|correct|as_the_book|as_specified|as_recommended|as_per - wrong|not|thinner|thicker|changed|isnt",
    ),
    "overfill_steadies_it": (
        f"overfill|overfilling|overfilled|topping_over_full|over_full|over_the_mark|above_the_mark|above_mark|over_the_line|extra_quart|extra_litre|extra_pint|litre_over|quart_over|pint_over|quarts_over|extra_two_quarts + {_HELPS} - no|not|@not|smoke|foam|froth",
        "unless|until + over_the_mark|over_full|above_the_mark|overfill|over_the_line - no|smoke|foam",
    ),
    "pressure_back_after_thaw": (
        "heated|warm|warmed|indoors|inside & shop|garage|workshop|barn|building|all_day|overnight & starts_with|started_with|fired_up_with|came_right_up|"
        "normal|fine|good_pressure|pressure_back|pressure_was_back|started_fine|built_right - not|still|no|hot_idle",
        "heated|thawed|thawed_out|warmed_it|warmed & overnight|hut|garage|shed|barn|workshop|heater|blanket|indoors & fine|normal|returned|back|ok|right|good - not|still|no_better",
    ),
    "earlier_breakage": (
        "blow_up|blow-up|blowup|blew_up + engine|motor|after|last - gauge|tyre|turbo",
        "last_one|last_engine|old_engine|previous_engine + broke|broke_up|blew|let_go|failed|grenaded - gauge|sender|pump",
        "once|previously + wiped|broke|dropped|lost|snapped + camshaft|cam|valve|piston|rod|chain - pressure|oil",
    ),
    "bearings_failed_again": (
        "same_had_happened|happened_before|same_thing_happened & set|shells|bearings|mains|rods - pump|sender",
        "bearings|mains|shells|big_ends + go|went|gone|failed|fail + every_time|each_time|again - no|not",
    ),
    "sump_or_pump_swapped": (
        "aftermarket|low-profile|bigger|chrome|different|another|replacement|shallow + sump|pan|oil_pan - gasket|plug|holed|no|not|drip",
        "pump + parts_store|parts-store|discounter|cheap|catalogue|another_model|other_model|pattern - fuel|water|lift|bilge",
    ),
    "level_high": (
        "level|oil_level + @length|inch|inches + over|above|too_high|over_the_mark - under|below|no|not|pan|floor",
    ),
    "wet_sumps": (
        "tank + filled|fills|emptied|drained|drains|empties + crankcase|sump|engine & parked|standing|overnight|stood|week|sitting - running|fuel|laps",
        "wet_sumps|wet-sumps + over|overnight|week|badly|standing|days|stood|between|parked",
    ),
    "oil_used_fast": (
        "burns|uses|drinks|eats|takes|consumes|using|burning|drinking + litre|litres|quart|quarts|pint|pints|gallon|@volume + a_day|a_week|every_day|every_week|a_tank|per_tank|a_trip|every_trip|an_hour|per_hour|a_month|every_fill - "
        "fuel|diesel|petrol|coolant|water|no|not|@not|never",
    ),
    "oil_grade_too_thin": (
        "filled|used|put_in|poured|uses|gave_it|went_in|running_on|instead + @thin - helped|switched|cleared|right|correct|handbook|book|manual|change|changed|service|serviced|synthetic|quarts|litres|oct|nov|dec|jan|feb|march|april|june|july|sept|yesterday|last|filter|always|takes",
        "thin|thinner + stuff|oil + filled|put|use|used|poured|gave - helped|thicker",
    ),
    "glitter_in_oil": (
        "oil|stick|dipstick|drain + tinsel|flakes|sparkles|glints|shimmers|specks|silver|metallic - filter|no|not|clean|pan|screen|strainer|pump|copper|gold",
    ),
    "high_volume_pump_fitted": (
        "big|bigger|performance|uprated|oversize|heavy-duty + pump|oil_pump - bilge|water|fuel|no|not|lift|injection|coolant|problem|noise|screw|trouble|prelube|pre_lube|priming|prelubrication|slow|ship|electric",
    ),
    "sealer_squeezed_out": (
        "silicone|rtv|sealer|sealant|instant_gasket + squeezed|beads|ropes|strings|hanging|oozing|tubes|blobs|thick - no|not|filter|windscreen|strainer|screen|pickup|dropped|mat",
    ),
    "turbo_line_leaks": (
        "feed_pipe|feed_line|turbo_feed|feed_hose|oil_feed|turbo_pipe + chafed|burst|split|leaking|cracked|holed|wet|weeping - no|not|fuel|new|water",
    ),
    "remote_hoses_crossed": (
        "hoses|lines|pipes + wrong_ports|wrong_port|crossed|crossed_over|mixed_up|transposed|wrong_way_round - no|not|fuel|water|brake|coolant",
    ),
    "no_sender_fitted": (
        "plug|blank|bung|bolt + where_the_sender|sender_should|where_a_sender|instead_of_the_sender - clogged|unplugged",
    ),
    "panel_half_or_double": (
        "constant|same|fixed + fraction|share|proportion|ratio & panel|gauge|reads|reading|dash|everywhere - no|not",
    ),
    "instrument_just_changed": (
        "set_of|aftermarket|new_set_of|pod_of + gauges|instruments|clocks & fitted|put_in|new|installed|since|swapped|dash - direct|mechanical|test|feeler|two",
    ),
    "rap_dulled_by_cut_out": (
        "cutting_out|cut_out|shorting|shorting_out|disabling|pulling_the_lead & number|cylinder|plug|injector & quietens|quiets|dulls|softens|kills|lessens|stops - no|not|nothing|engine_cut",
    ),
    "coolant_level_falling": (
        "lost|loses|losing|drinks|uses + coolant|water|antifreeze - pressure|oil|no|not|pump",
    ),
    "idle_below_spec": (
        "idle|tickover + too_slow|turned_down|too_low|set_low|very_slow|low_rpm - pressure|hot_idle|no|not",
    ),
    "fuel_gets_in": (
        "lift_pump|fuel_pump|injection_pump|injector_pump|leak-off|return_line|return_lines|spill_line|injector_line|injector_pipe|jumper_line|jumper_lines|jumper_tube|fuel_jumper|injector_jumper & wet|soaked|dripping|leaking|weeping|cracked|crack|sprays & fuel|diesel|petrol|rocker_cover|valve_cover|sump|into_the_oil - no|not|new|dry|gauge|oil_return",
    ),
    "blow_by_high": (
        "breather|breathers & oil & pushing_out|pushes_out|pushed_out|comes_out|coming_out|came_out|blows_out|blowing_out|pours_out|pouring_out|pumping_out|spits_out|spitting_out|puking|pukes - no|not|blocked|catch",
        "dipstick|dipstick_tube|filler|oil_filler & gas|gases|fumes|exhaust_gas|exhaust_gases|exhaust_fumes & comes_out|come_out|came_out|coming_out|blows_out|blowing_out|coming_up|comes_up - no|not|petrol|fuel|smell",
        "dipstick|filler_cap|oil_cap|oil_filler|breather & smoke|fumes|steam|smoking & puffing|puffs|blowing|pouring|comes_out|coming_out|out_the_tube|out_of_it|out_the_hole|chuffing - no|not|exhaust",
    ),
    "declined_over_months": (
        "slow|gradual|steady|slowly|gradually|steadily + decline|declined|drop|dropped|loss|fall|decrease|sinking|sunk|fallen|down & years|@years|months|@months|seasons|winters|@longtime - "
        "minutes|hours|level|consumption|speed|oil_level|needle_moves",
    ),
    "water_at_the_drain": (
        "water|coolant|antifreeze|glycol + first|before_the_oil|before_oil|ahead_of_the_oil|then_oil & drained|drain|drain_plug|sump_plug|sump|pan|plug - radiator|block_drain|no|not|system|overflow|first_run|first_start|first_drive|header|dent",
    ),
    "clearances_built_wide": (
        "clearance|clearances|bearings|mains + by_design|deliberately|on_purpose|loose_side|built_loose|set_loose|set_wide|for_racing|race_clearance|race_clearances - no|not|tight|lash|valve",
    ),
    "freshly_rebuilt": (
        "fresh_engine|fresh_motor|new_engine|new_motor|fresh_build|new_build|engine|motor + @distance_on_it|@distance_since_build|@distance_from_new|@distance_since_rebuild|@fewhours_on_it|@fewhours_since_build|@distance & fresh|new|build|rebuild|rebuilt - "
        "@thousands|@highmiles|@toofar|years|not|old",
    ),
    "back_when_slowed": (
        "drops|falls|sags|fades|dips|sinks|lost + above|over|beyond|past|@rpm & recovers_below|recovered_below|returns_below|back_below|comes_back_below|back_under|recovers_under|comes_back_under|fine_below|normal_below|revs_drop - idle|cold|hot|minutes|lamp|noise|level",
    ),
    "falls_as_revs_rise": (
        "drops|falls|sags|fades|dips|sinks|fell|dropped + above|over|beyond|past & recovers_below|recovered_below|returns_below|back_below|comes_back_below|back_under|recovers_under|comes_back_under|fine_below|normal_below|revs_drop - "
        "idle|cold|hot|minutes|lamp|light|noise|bends|corners|temperature|degrees",
        "falls|drops|fades|sags|tails|fell|dropped|falling|dropping & off|away|back|to|down & limiter|redline|red_line|at_the_top_end|peak_revs|high_revs - idle|hot|cold|warm|minutes|lamp|light|noise|flickers|bends|corners",
    ),
}
#: the same, when it is not there
TOGETHER_SHORT_ABSENT: dict[str, tuple[str, ...]] = {
    "rod_clearance_too_wide": (
        "crank|crankshaft|bearing|bearings + clearances|clearance & mid-spec|within_book|within_spec|within_limits|in_spec|in_limits|to_spec|in_tolerance|within_tolerance|inside_limits - not|no|main|mains|cam|pump|thrust|wide|out|over|top|beyond|just|barely",
    ),
    "oil_on_the_ground": (
        "nothing|not_a_drop|no_oil|no_drips|dry + ground|floor|underneath|drive|tray|deck - amiss|wrong|shaft|gear|inside|gauge|needle|showed|on_a_drive|=drives",
    ),
    "oil_seen_outside": (
        "nothing|dry|clean + outside|externally|on_the_outside - inside|pump|gauge|sender",
    ),
    "lab_fuel_high": (f"{_SAMPLE} & no_fuel|without_fuel|nil_fuel|fuel_nil|no_sign_of_fuel",),
    "water_in_sample": (
        f"{_SAMPLE} & no_water|no_sign_of_water|nil_water|water_nil|water_free|no_fuel_or_water|no_coolant_or_water - pump|stick|cap",
    ),
    "copper_and_lead_high": (
        "=copper|=lead + unchanged|normal|as_before|steady|flat + and|copper|lead - high|up|climbing|not",
    ),
    "several_alike": (
        "sister|twin|identical + boat|engine|ship|car & does_not|is_fine|doesnt|never_does",
    ),
}
