"""Words that together name a finding of pump, drive or relief valve, in whatever order they stand."""

from __future__ import annotations

_PUMP = "pump"
_SHAFT = "shaft|driveshaft|spindle|quill|rod"
_GEARS = "gear|rotor|gerotor|teeth|impeller|vane"
_DRILL = "=drill|=drilled|drill-primed|electric_drill|pre-oiler|pre-oiling|pre-oiled|priming_tool"
_WORN_AWAY = "eaten|eroded|pitted|cavitation|etched|cavitated|moth-eaten"
_DIST = "distributor|dizzy|rotor_arm|rotor|dist"
_RELIEF = "relief|prv|oprv|regulator|pressure_valve|dump_valve"
_PLUNGER = "plunger|piston|ball|poppet|valve"
_BENCH = "bench|test_rig|rig|hand_pump|spring_tester"
TOGETHER_PUMP: dict[str, tuple[str, ...]] = {
    "scavenge_side_takes_air": (
        "scavenge|scavenging + hose|line|pipe|union|fitting + cracked|split|holed|chafed|perished|sucking|sucks|air_leak|takes_air - no|not|whole|sound|new_pump",
    ),
    "pump_shaft_play": (
        f"pump + {_SHAFT} + play|slop|sloppy|wobble|wobbles|rock|rocks|loose_in|worn_bush|side_to_side - end_play|distributor",
        f"pump + bush|bushing|bore + worn|loose|sloppy|play + {_SHAFT} - cam|rocker",
    ),
    "cover_warped": (
        "cover|end-plate|endplate|plate + warped|bowed|bent|distorted|dished|daylight|@not_flat|not_true|gape|gapes|banana "
        "- rocker|valve_cover|timing|clutch|sump|pan|head",
        "cover|plate|end-plate|endplate + gap|gaps + pump "
        "- gear|gears|rotor|rotors|end|side|clearance|feeler|rocker|timing|water|fuel|no|not|without",
    ),
    "cover_grooved": (
        "cover|plate|end-plate|endplate|backplate + groove|grooved|grooves|scored|scoring|worn|step|lip|gouged|ridges|rings_worn|two_rings|witness + pump|gear|rotor|gears|rotors|it|nice",
    ),
    "cover_screws_loose": (
        "cover|plate|lid + screw|screws|bolts + loose|slack|backed|undone|missing|finger|unscrewed|fallen - rocker|valve_cover|timing|bearing",
    ),
    "pump_gear_broken": (
        "gear_tooth|gear_teeth|rotor|pump_gear|pump_gears|drive_tooth|inner_rotor|outer_rotor + chipped|broken|cracked|snapped|split|missing|shattered|gone|pieces - distributor|skew|timing|arm|cap",
    ),
    "piece_in_pump": (
        f"piece|bit|chunk|lump|circlip|washer|nut|chip|fragment|stone|nail|clip|sliver + jammed|wedged|caught|stuck|lodged|trapped|found_in|lying_between + pump|{_GEARS} - block|gasket|relief|filter|screen|pickup|distributor",
    ),
    "pump_jammed": (
        "pump + seized|locked|jammed|=solid|=frozen|immovable|@not_turn_by|will_not_turn|wont_turn - bolts|finger|vacuum|water|fuel|injection|steering|noise|relief_valve|cranked",
    ),
    "pump_seen_standing": (
        f"pump|{_SHAFT} + stands_still|standing_still|@not_turning|@not_rotating|stationary|still + crank|cranked|cranking|engine_turned|turned_over|while|when",
    ),
    "draws_nothing_in_bath": (
        "pump & bowl|bath|bucket|tub|tray|can|pan_of_oil|jar & @not_draw|@not_pump|@not_pick|@not_suck|@not_prime|nothing|@not_lift|no_oil|no_suction",
    ),
    "wrong_pump_fitted": (
        "pump + later|earlier|other|different|another|wrong + engine|model|version|type|one|shorter|longer|body|number + is|was|for|not|from - new|fitted_a|replaced|swapped|gauge|gasket|vacuum|water|fuel",
        "wrong_pump|wrong_oil_pump|incorrect_pump|@not_the_right_pump + fitted|for|was|in|supplied|had|is - gasket",
    ),
    "cavitation_marks": (f"{_GEARS}|pump + {_WORN_AWAY} - shell|bearing|relief|journal|cylinder",),
    "rotor_wrong_way_round": (
        "rotor|gerotor|outer_ring|annulus + upside|wrong_way|backwards|reversed|wrong_side|marks|chamfer|flipped|dots - arm|cap|distributor|bearing",
    ),
    "drive_coupling_sheared": (
        "key|woodruff|roll_pin|rollpin|tang|coupling|drive_pin|drive_dog|shear_pin|tongue|coupler + sheared|gone|lost|missing|snapped|broken|fallen|fell|dropped_out|stripped|failed - ignition|starter|door|ring|gudgeon|car",
    ),
    "pump_chain_broken": (
        "sprocket|drive_sprocket|pump_sprocket + lost|missing|no|stripped|gone|worn_off|without + teeth|tooth - sensor|distributor|rockers",
        "chain|sprocket + pump + snapped|broken|broke|off|jumped|loose|stripped|failed|come|fell|parted - timing",
    ),
    "drive_not_engaged": (
        f"{_SHAFT} + too_short|@not_reach|@not_engage|@not_engaged|@not_engaging|not_in_mesh|fell_out|dropped_out|@not_connected|@not_located + pump|drive|slot|distributor|it",
        f"drive|{_SHAFT} + pump + left_out|forgotten|missing|never_fitted|@not_fitted|not_there|absent",
    ),
    "drive_shaft_absent": (
        "no_drive_shaft|no_driveshaft|no_shaft|no_intermediate + pump|distributor|between|fitted|there|in",
        "intermediate|driveshaft|drive_shaft + pump|pump|distributor + missing|left_out|forgotten|absent|@not_there",
    ),
    "no_drive_end_float": (
        f"{_SHAFT}|drive|pump + end_float|end_play|endfloat|endplay|float + zero|no|nil|none|@not - crank|thrust",
        f"{_SHAFT}|drive + binds|bound|binding|nipped|tight + bolted_up|bolted_down|tightened|torqued|done_up - crank|bearing|caps",
    ),
    "too_much_drive_float": (
        f"{_SHAFT}|drive|distributor + end_float|end_play|endfloat|endplay|float + too|excessive|much|loads|over - crank|thrust|pump_gears",
    ),
    "gear_slips_on_shaft": (
        f"gear|pinion|skew|sprocket + loose|slipping|slips|spinning|spins|turning|moved|turns|slipped|spun + {_SHAFT}|camshaft - bearing|play|governor|gear_pump|turned_off|turned_by|turned_from|driven|still_turns",
    ),
    "drive_gear_worn": (
        "distributor|dizzy|skew|drive|worm|spiral + gear|gears|pinion|teeth + worn|knife|razor|shark|hooked|chewed|wafer|pointed|sharp|thin|half - timing|replaced|new_gear|vacuum|pump_gears|stripped|broken",
    ),
    "drive_gear_stripped": (
        "distributor|dizzy|skew|drive|worm + gear|gears|pinion|teeth + stripped|gone|missing|sheared|broken|no_teeth|bald|chewed_up - timing|pump_gears",
    ),
    "drive_shaft_broken": (
        f"{_SHAFT} + snapped|twisted_off|sheared|broken|broke|twisted_in_two|in_half|in_two|parted + pump|hex|drive|distributor|oil|intermediate - tang|dog|key|rocker|cam|crank|turbo|con|connecting|balance|piston",
    ),
    "drive_shaft_rounded": (
        f"{_SHAFT}|hex|tang|slot|tongue|drive_end|blade + rounded|round|twisted|corners|wallowed|worn|chewed|barber|candy + pump|drive|distributor|hex|hexagon - rocker|cam_bearing|gear|broken|snapped|turbo|off_in|twisted_off|sheared",
    ),
    "drill_gives_none": (
        f"{_DRILL} & no_pressure|nothing|zero|@not_build|not_a_flicker|no_reading|none - still|hole|bit|out_of|no_problem",
    ),
    "drill_gives_little": (
        f"{_DRILL} & only_@pressure|only_@number|only_make|only_makes|only_gets|barely|little|low|@not_much|struggles|only_5 - hole|hardly_any|engine_running|when_running|running_it|started|fired|starts",
    ),
    "drill_gives_good": (
        f"{_DRILL} & pressure_came_up|pressure_rose|pressure_went_up|gauge_came_up|came_straight_up|plenty|good|fine|every|all_the|full|@pressure|solid|instantly|healthy|loaded|bogged|strong - no_oil|no_pressure|not|nothing|only|except|bit|hole|but_number|dry|low|barely|pouring|streaming|zero|new|rented|bought",
    ),
    "no_oil_when_cranked": (
        "gallery_bolt|gallery_plug|gallery_union|banjo|feed_pipe|feed_union|filter_union|outlet_union & cranked|cranking|spun|starter|turned_over & =nothing|not_a_drop|=dry|no_oil|nowt - gauge|squirt|squirts|came_out|comes_out_fine|good|rockers|seal|washer",
        "cranked|crank|cranking|starter|=spun_it|spun_her|turned_it_over & no_oil|no_sign_of_oil|not_a_drop|not_a_drip - pressure|gauge|needle|leak|leaks|stick|dipstick|drill|sender|port|union|gallery|line|rockers|level|light",
        "crank|cranked|cranking|spun|starter|turned & filter_off|filter_out|pump_outlet|outlet|filter_boss|filter_head|filter_mount|filter_housing & no_oil|nothing|not_a_drop|dry|@not_a_drop|no_flow",
    ),
    "distributor_will_not_seat": (
        f"{_DIST} & @not_seat|@not_drop|@not_go|stood|proud|@not_sit|@not_seated|@not_home|@not_get & clamp|pulled_down|tightened|home|forced|down|bolt|inch - arm_does",
    ),
    "rotor_still_when_cranked": (
        "rotor_arm|rotor|distributor|dizzy & @not_turn|@not_move|@not_rotate|@not_spin|stationary|still|stays_put & crank|cranked|cranking|starter|turned_over - pump",
    ),
    "ignition_scatters": (
        "ignition_timing|ignition|spark|rotor_arm|timing_mark + jumps|scatter|scatters|jumping|wanders|wandering|erratic|all_over|dances|hops|jerks|jerky|drifts - gauge|needle|chain|cover|pressure|light_switch",
        "timing_light|strobe + jumps|jumping|scatter|wanders|all_over|erratic|dances",
    ),
    "pump_noise": (
        "pump + whine|whining|rattle|howl|noise|whirring|moan|groan|growl|screech|hum - power|steering|fuel|water|vacuum|no|lift|quiet|injection",
    ),
    "idler_pin_out": (
        "idler|idler_gear|idler_shaft|idler_pin|idler_spindle + out|walked|loose|moved|fallen|worked|proud|backed",
    ),
    "pump_casting_cracked": (
        "crack|cracked|hairline|split + pump + casting|body|housing|case|flange|ear|neck - split_the|get_at|get_to|cover_gasket|gasket|vacuum|water|fuel",
    ),
    "pump_housing_burst": (
        "pump + housing|body|casting|case + burst|exploded|blown|bits|shattered|smashed|broken|half - cracked|gasket|water|fuel",
    ),
    "pump_stays_low": (
        "solenoid|pump_control|control_valve + unplugged|unplug|unplugging|disconnected|disconnecting|plug_off|wire_off|connector_off + "
        "stays|stayed|no_change|same|no_difference|@not_change|nothing_changes|still_low - vvt|vct|cam|fuel|starter|gearbox|transmission|jets|phaser|glow",
    ),
    "pump_rises_unplugged": (
        "solenoid|pump_control|control_valve + unplugged|unplug|unplugging|disconnected|disconnecting|unhooked|plug_off|"
        "plug_out|wire_off|connector_off|lead_off|pulled + jumps|jumped|rises|rose|shoots|shot|goes_up|went_up|comes_up|"
        "came_up|leaps|leapt|climbs|climbed|comes_back|came_back|doubles|doubled|goes_to|went_to - no|not|nothing|never|vvt|vct|cam|fuel|"
        "starter|gearbox|transmission|jets|phaser|revs|idle_up|stop_solenoid|glow|drops|falls|temperature",
        "solenoid|pump_control|control_valve & unplugged|unplug|unplugging|disconnected|disconnecting|plug_off|wire_off|connector_off & "
        "pressure|gauge|bar|psi & jumps|jumped|rises|rose|shoots|shot|goes_up|went_up|comes_up|came_up|leaps|climbs|climbed|doubles|doubled - "
        "no|not|nothing|never|vvt|vct|cam|fuel|starter|gearbox|transmission|jets|phaser|glow|drops|falls|temperature",
    ),
    "gasket_masks_port": (
        "gasket|seal + hides|hid|hidden|hiding|covers|covering|masks|masking|blocks|blocking|blanks|blanking|obstructs|overlaps|across + port|hole|passage|outlet|inlet|oilway|feed|drilling - piston|accessory",
    ),
    "mount_gasket_missing": (
        "no_gasket|@not_gasket|without_gasket|gasket_missing|forgot_gasket|gasket_left_out|@not_a_gasket|forgot_the_gasket|without_a_gasket + pump - cover_screws|filter|sump|pan|rocker|head",
        "gasket + pump + missing|left_out|forgotten|never_fitted|omitted|@not_there|@not_fitted - filter|sump_gasket|water|fuel",
    ),
    "mount_gasket_blown": (
        "gasket|joint|paper + pump|mount|mounting|flange + blown|torn|split|pushed|missing_piece|washed|gone_one|wash - fuel|water|vacuum|filter|missing|no|head|cover_gasket",
    ),
    "mount_face_not_flat": (
        "face|flange|surface|mating + pump|block|mount + burr|@not_flat|warped|high_spot|rocked|rocks|dinged|uneven|nicked|gouge|dent - journal|cylinder|head|valve|feels",
    ),
    "pump_bolts_loose": (
        "bolts|bolt|studs|nuts + pump + loose|slack|finger|fallen|missing|backed|undone|stretched|hand_tight|bottomed|never_torqued - cover|vacuum|water|fuel|pickup|body",
    ),
    "pump_belt_off": (
        "belt + pump|scavenge|drysump + off|shredded|snapped|broken|stripped|slack|jumped|thrown|slipped|walked - fan|alternator|water|power|seat|timing|new",
    ),
    "pump_dry_inside": (
        "pump + dry|no_oil_in|empty|drained + inside|bone|found|was|completely|apart|opened|internally|cover - vacuum|fuel|water|filter_off",
    ),
    "extra_pump_gasket": (
        "gasket|gaskets + two|second|extra|double|thick|doubled + pump|cover - filter|head|sump|pan|rocker|intake",
    ),
    "pump_found_sound": (
        "pump & within_limits|within_spec|in_spec|in_tolerance|no_wear|like_new|as_new|looks_new|perfect|nothing_wrong|inside_limits|inside_tolerance|wrong_with_it|in_good|@not_fault|@not_worn|unworn - water|fuel|vacuum|new_pump|replaced|pressure|@not_in_spec|lift|drill",
    ),
    "gears_worn_out": (
        "pump + gear|gears|rotor|rotors|internals + worn|shot|knackered|sloppy|clapped|tired|past - distributor|skew|drive|groove|timing|vacuum|not|no|cover",
    ),
    "pump_scored_seen": (
        "pump + scored|scoring|grooves|gouged|scratched|chewed|galled|scuffed - cover|plate|vacuum|water|fuel|seal|no|not|lid",
    ),
    "steel_slivers_in_pump": (
        "slivers|filings|shavings|swarf + pump + steel|magnetic|magnet|iron - vacuum|filter",
    ),
    "forced_oil_brought_pressure": (
        "forced|forcing|pumped|pressure_oiler|grease_gun|garden_sprayer|pressure_pot + oil + pump|gallery|port & came_up|pressure|caught|primed|built - no|not",
    ),
    "drive_partner_stopped": (
        "tach|tacho|tachometer|rev_counter|ignition|spark|injection_pump|mag|magneto|distributor & same|also|too|shares|together|drive & quit|stopped|died|dead|lost|packed_up|went_dead|failed - gauge_line|temp_gauge|fuel_gauge|ignition_on|ignition_goes|ignition_is|knock",
    ),
    "relief_parts_not_standard": (
        "ball|plunger|relief|relief_valve|regulator & washer|shim|spacer|clip|circlip|disc|collar & left_over|leftover|spare|"
        "one_over|left_on_the_bench|extra_one|remaining - bearing|caps|head|pump_cover|no|not|none|turbo|joint",
        f"{_RELIEF} & washer|washers|shims|shim|coin & behind|been_stretched|that_shouldnt - i|we|tried|going|could|gained",
        f"{_RELIEF}|adjuster|spring & longer_spring|stiffer|shim|shims|shimmed|washer|washers|packing|packed_out|wound_right|screwed_right|home-made|homemade|cut_down|stretched|wrong_spring|different_spring|extra_spring|non-standard|nonstandard|not_standard|too_many_washers|coil_bound|ball_bearing_from + in|it|behind|under|been|had|fitted|a|someone|somebody - i|we|tried|going|could|valve_spring|should|now|try",
    ),
    "relief_part_absent": (
        f"{_RELIEF} + ball|plunger|spring|piston|valve + left_out|missing|absent|@not_there|not_in_there|gone|forgotten|@not_fitted|never_fitted|no_ball|no_spring|no_plunger - out_with|came|cap|washer|pin|gasket",
        "left_the_ball|left_the_spring|left_the_plunger|forgot_the_ball|forgot_the_spring|forgot_the_plunger + out|in|when|back",
        f"no_ball|no_plunger|no_spring|@not_ball|@not_plunger + {_RELIEF}|in|behind|there|bore",
    ),
    "relief_cap_loose_or_leaking": (
        f"cap|plug|nut|bolt|dome + {_RELIEF} + loose|lost|stripped|helicoil|helicoiled|unscrewed|slack|undone|weeping|leaking|leaks|backed|missing|fallen|finger|unwired|off|dripping|no_washer - filter|pulled|took|i|removed|undid|drain|came_out_with|with_the_cap_off|cover_off",
    ),
    "relief_piston_loose": (
        f"plunger|piston|{_RELIEF} + rattles|sloppy|slop|loose|wobbles|floppy|tilts|cocks + bore|hole|it|fit|housing - cap|screw|nut|knock|ring|engine",
    ),
    "relief_adjuster_no_effect": (
        "adjuster|adjusting_screw|adjustment|adjusting_nut|adjustor + no_difference|nothing|no_effect|no_change|@not_change|@not_alter|@not_affect|@not_make - idle|chain|tappet|brake|lifter",
        "adjuster|adjusting_screw|adjustment & no_difference|no_effect|no_change|@not_change|@not_alter|makes_no - idle|chain|tappet|brake",
    ),
    "relief_bench_opens_low": (
        f"{_RELIEF} & {_BENCH} & low|supposed|should|instead|only|early|below|weak - high|above|late",
    ),
    "relief_bench_opens_high": (f"{_RELIEF} & {_BENCH} & high|above|late|over - low|early|below",),
    "relief_valve_stayed_shut": (
        f"{_RELIEF}|{_PLUNGER} + shut|closed + jammed|seized|stuck|rusted|=frozen|solid - filter|bypass|thermostat|breather|open|throttle|exhaust|inlet",
    ),
    "relief_valve_stayed_open": (
        f"plunger|piston|{_RELIEF} + stayed|stuck|jammed|hung|remained|held + up_the_bore|back_in|off_its_seat|off_the_seat|open|half_way|halfway|part_way - filter_bypass|rings|engine|throttle|pcv|thermostat",
    ),
    "relief_plunger_sticks": (
        f"plunger|piston|{_RELIEF} + @not_slide|@not_drop|@not_fall|sticky|sticks|=stuck|magnet_to|swearing|drift|tap_out|had_to_pull|pliers|tight_in - stuck_between|stuck_under|often|where|filter_bypass|rings|scuffed",
    ),
    "relief_seat_scored": (
        f"seat|bore|ball|{_RELIEF} + pitted|scored|burr|burred|hammered|grooved|worn|ridge|egg|dented|scuffed|galled|ring_worn + {_RELIEF}|ball|seat|plunger - journal|crank|cylinder|shell|bearing|rocker|cam|good|new_ball|pump_body|wear_in_the_pump|valve_seats|exhaust|spring_is",
    ),
    "debris_on_relief_seat": (
        f"{_RELIEF}|seat|ball|plunger + chip|chunk|swarf|metal|grit|crud|bit|bits|tape|sealant|silicone|carbon|piece|sliver|dirt|debris|speck|flake|curl|fluff|rubber + under|on|in|across|against|behind|holding|jammed|wedged|trapped|stuck|caught|between|stopping - no|screen|filter|pump_gears|valve_seats|spring_in_bits|two_pieces|in_pieces|in_bits|three_pieces|gear",
    ),
    "relief_spring_short_or_broken": (
        f"spring + {_RELIEF} + shorter|broken|snapped|weak|sagged|tired|short|collapsed|two_pieces|bent|pieces|rusted|soft - new|fitted|i|we|stretched|valve_springs|stiffer|no",
    ),
    "relief_return_blocked": (
        f"{_RELIEF} + return|drain|spill|passage|dump_hole|outlet + blocked|plugged|bunged|clogged|choked|covered|restricted - not|no",
    ),
    "relief_found_stuck": (
        f"{_RELIEF} + =stuck|seized|jammed|=sticking|gummed|=frozen - stuck_between|stuck_under|often|where|not|no|filter|bypass|voltage|unstuck|open|shut|closed",
    ),
}
TOGETHER_PUMP_ABSENT: dict[str, tuple[str, ...]] = {
    "draws_nothing_in_bath": (
        "pump & bowl|bath|bucket|tub|tray|pan_of_oil|jar|by_hand|across_the_bench & squirts|squirted|solid_stream|good_stream|moves_oil|moves_plenty|draws|pulled_oil|pulls_oil|shoots|gushes - not|no|@not|nothing|fuel|water|filter|sender|cranked",
    ),
    "relief_seat_scored": (
        f"seat|bore + {_RELIEF}|plunger|ball|valve|spring|seat + good|clean|smooth|unmarked|perfect|bright|fine|shiny - no|not|scored|but",
    ),
    "relief_plunger_sticks": (
        f"plunger|piston|{_RELIEF} + moves|slides|drops|slid|falls|moved + freely|free|easily|own_weight|smoothly|nicely - @not",
        "plunger|relief_piston + =free|freely + in_bore|in_its_bore|in_the_bore - @not|not|half|stuck|injection|freed",
    ),
    "pump_jammed": (
        "pump + turns|spins|turned|rotates + freely|smoothly|easily|nicely|free - not|water|fuel",
    ),
    "relief_found_stuck": (
        f"{_RELIEF} + moves|slides|free|clean|works|drops|slid|freely + free|freely|fine|ok|easily|good|clean|smoothly|perfectly|properly - not|no|seat",
    ),
}
