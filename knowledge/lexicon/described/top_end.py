"""Valve gear, chain, distributor and turbo, put by people who describe the parts."""

from __future__ import annotations

from knowledge.lexicon.described.words import BLOCKED, HEAVY, LOOSE, PRIMING, TOO_MUCH

_LIFTER = "lifter|lifters|tappet|tappets|follower|followers|hla|hlas|little_cylinders|little_cylinder|small_cups|cups|hydraulics|round_things|bucket|buckets"
_CAM_BEARING = "cam_bearing|cam_bearings|cam_bush|cam_bushes|camshaft_bearing|camshaft_bearings|camshaft_bush|cam_shaft_bearing|bush_the_camshaft|bush_the_cam|cam_bushing|cam_bushings|camshaft_bushes"
_CAM = "cam|camshaft|lobed_shaft|valve_shaft|works_the_valves|shaft_that_works_the_valves"
_TOP = "top_lid|top_cover|valve_cover|rocker_cover|cam_cover|rocker_box|rockers|rocker|rocker_arm|rocker_arms|arms|valve_gear|valvetrain"
_NOISE = "clatter|clatters|clattering|tick|ticks|ticking|tap|taps|tapping|rattle|rattles|clack|clacking|racket|noise|noisy|click|clicks|chatter|chattering|din"
_TURBO = "turbo|turbocharger|snail|snail_shaped|snail-shaped|turbos"
_ADVANCE = "phaser|phasers|cam_adjuster|variator|clever_sprocket|changes_timing|cam_gear|vvt_gear|round_device|cam_sprocket|vanos|cam_wheel|vvt_unit|vvt_sprocket|vvt_wheel|vct|timing_adjuster"
_DIST = "distributor|dizzy|spark_cables|spark_distributor|ignition_distributor"
_ARMS = f"{_TOP}|cam_followers|valve_tips|tips|followers|press_the_valves"
_JET = "squirter|squirters|piston_jet|piston_jets|piston_cooling_jet|oil_nozzle|spray_pipe|small_pipes|cooling_jet|cooling_jets|spray_nozzle|oil_jet|oil_jets|undercrown_jet|jet|jets|nozzle|nozzles"
_ELSE = "fuel|water|carb|carburettor|ski|heater|washer|injector|injectors"
#: the finding, by words that stand together when it is there
THERE: dict[str, tuple[str, ...]] = {
    "tensioner_floods": (
        f"tensioner|tensioners|presses_on_the_chain|pressing_on_the_chain|pushes_the_chain & {HEAVY} & {PRIMING}|front_open|front_off|cover_off|timing_cover_off - no|not|hardly|only|weeps|drips|belt",
        f"tensioner|tensioners + {HEAVY} + oil|chain - no|not|hardly|only|weeps|drips|belt|hole|jet|small",
    ),
    "lifter_bore_pours": (
        f"{_LIFTER} & {HEAVY} & {PRIMING}|valley|bore - no|not|hardly|only|weeps|drips|noise|quiet|tensioner",
    ),
    "cam_bearing_pours": (
        f"{_CAM_BEARING} + {HEAVY} - no|not|hardly|only|weeps|drips|worn|wiped",
        f"{_CAM_BEARING} & {HEAVY} & {PRIMING} - no|not|hardly|only|weeps|drips",
    ),
    "distributor_bore_pours": (
        f"{_DIST} & {HEAVY} & {PRIMING}|bore|housing|body|stem - no|not|hardly|only|weeps|drips|removed|pulled|outside|cap",
    ),
    "lifters_quiet": (
        f"hot|warm|hot_idle|low|reads_low|bottom|nothing & {_LIFTER}|{_TOP}|top_end|upstairs|top & nothing_clicks|without_a_tap|@not_make_a_peep|no_peep|not_a_click|silent|quiet|@not_make_a_sound|not_a_sound|@not_make_any_noise|make_no_noise|no_noise|no_racket|@not_tick|@not_clatter|@not_rattle|no_ticking|no_clatter|not_a_tap|dont_make_a_peep|not_a_tick|hush|without_a_sound - but_noisy|gets_noisy|was_quiet|until|then",
    ),
    "lifters_clatter": (
        f"top_end|top_of_the_engine|upstairs|valve_gear|valvetrain|rockers|up_top & hot|warm|warmed & {_NOISE} & tickover|tick_over|idle|idling - no|not|cold|only_cold|revs|start|startup|goes_away|quiet|silent|chain|knock|rod|gone|cured|stopped|no_longer|used_to",
        f"{_LIFTER}|valve_gear|valvetrain|rockers & {_NOISE} & hot|warm|warmed_up|warmed|up_to_temperature|operating_temperature & idle|idling|idles|tickover|tick_over|ticking_over|standing_still|lights - quiet|silent|no|not|never|only|high_revs|stop|stopped|stops|cold",
    ),
    "clatters_only_at_high_revs": (
        f"{_NOISE} & {_LIFTER}|valve_gear|valvetrain|top_end|quiet_at_idle|silent_at_idle|silently|fine_at_idle & high_revs|above|top_end_of_the_tach|after_a_thrash|flat_out|hard_run|redline|over_3000|over_4000|over_5000|over_6000|above_3000|above_4000|above_5000|past_4000|past_5000|high_up|at_speed|revved|revs|high_rpm|rpm|thrash|upper_revs & quiet_at_idle|idle|tick_over|tickover|only|silent|silently|not_at_idle|below|slow - cold|knock|noisy_at_idle|at_idle_too|chain|turbo|always",
    ),
    "timing_cover_rattles": (
        f"chain_in_a_bucket|timing_cover|front_cover|chain_case|front_end|front_of_the_engine|timing_case + {_NOISE}|grumble|slap + first|start|start-up|startup|seconds|moments|idle|when|cold|up|fire|starting|chain - no|not|suspension|bearing|quiet|axle",
    ),
    "turbo_shrieks": (
        f"{_TURBO} + squeal|squeals|police_car|siren|shriek|shrieks|howl|howls|scream|screams|screech|whine_like|grinds|grinding|wails|whistles_loudly|loud_whistle|dentist|dentists_drill|hoots|banshee - no|not|belt|usual",
    ),
    "no_oil_at_rockers": (
        f"{_TOP}|top_lid & no_oil|not_a_drop|bone_dry|nothing_came|no_drop|@not_oil|not_any_oil|no_oil_came & arriving|come|came|up|running|idle|ticking_over|turning|cranking|runs|run|there|off|moved - gasket|level|leak|leaks|pressure|outside|on_the_stick",
    ),
    "rockers_flooded": (
        f"{_TOP} & squirts|shoots|gushes|sprays|flies|squirting|shooting|spraying & everywhere|all_over|over_me|ceiling|hood|bonnet|fountain - no|not|outside|gasket|leak|leaks|smoke|hardly|drill|priming",
        f"{_TOP} + fills|fountain|sprays|flooded|full_of_oil|throws|swimming|floods|jet_of_oil|jets_of_oil|awash|gushes|geyser|drowned|drowns|brim|fills_up|squirts|swamped - no|not|outside|gasket|leak|leaks|smoke|hardly",
        f"{_TOP} & fountain|fills_up_with_oil|swamped|flooded_with_oil|jet_of_oil|geyser & oil|arms|support|stand|runs - no|not|outside|leak",
    ),
    "rocker_shaft_found_worn": (
        "rocker_shaft|rocker_shafts|shaft_the_rockers|rod_the_arms|shaft_the_arms|rocker_bushes|rocker_bush|rocker_spindle + worn|grooved|stepped|steps|hollows|loose|sloppy|plug_gone|plug_missing|eaten|ridges|end_plug|slack|egg|notched|waisted|scalloped - no|not|smooth|snug|cover|in_place",
    ),
    "valve_gear_found_dry": (
        f"{_ARMS} + scuffed|discoloured|blue|blued|burnt|oil-free|oil_free|want_of|starved|dry|galled|seared|rusty|heat_marks|straw_coloured|purple|straw + lubrication|heat|oil|metal|tips|dry|blue|lack|pads|faces|oil-free|bone - no|not|wet|no_oil|crank|pressure|reaching|getting|comes|gasket",
        "arms|rockers|valve_tips|followers & discoloured_by_heat|oil-free|blued|want_of_lubrication|lack_of_oil|for_want_of_oil - no|not|wet|crank",
    ),
    "lifters_found_drained": (
        f"{_LIFTER} & thumb|finger|fingers|squash|squashed|squashy|spongy|soft|sponge & push|press|pushed|easily|empty|down|drained|squash|squashed|under|soft|like - no|@not_push|cant|hard|firm|rock|noise|side_to_side|clutch|brake",
    ),
    "pushrod_off_or_bent": (
        "long_rods|long_rod|push_rods|push_rod|pushrod|pushrods|long_sticks + jumped|jumped_out|popped|popped_out|come_out|came_out|fell|out_of_its_seat|off_its_seat|off_its_rocker|unseated|slipped|slipped_out|out_of_place - no|not|dipstick|engine_is|took|pulled|removed|drew|lifted|conrod",
        "pushrod|pushrods|push_rod|long_stick|thin_rod|long_thin_rod|push_stick|long_rod|thin_rods + bent|crooked|displaced|lying_aside|off|loose|bowed|jumped|fallen|banana|kinked|buckled|out_of_place|dislodged - no|@not_bent|straight|dipstick|engine|clutch|con_rod|conrod|pump|diesel|petrol",
    ),
    "camshaft_broken": (
        "shaft_with_the_lobes|shaft_with_lobes|lobed_shaft|shaft_with_the_cams|works_the_valves|opens_the_valves + two_halves|broken|snapped|in_two|in_half|two_pieces|sheared|cracked_through - not|bearing|belt|rocker",
        f"{_CAM} + fractured|two_pieces|snapped|broken|seized|in_two|in_half|sheared|broke|two_halves|locked_solid - no|not|bearing|belt|sprocket|chain|cover|gear|sensor|follower|drive|cam_cover|lobe|key|pin|bolt|shaft_for_the_pump|pump",
    ),
    "restrictor_absent": (
        "restrictor|metering_jet|small_nozzle|nozzle|orifice|restricting_plug|reducing_nozzle|reducer|metering_plug|small_jet|calibrated|limiter|limiting_jet|jet_that|plug_that|screw_that + head|rocker|turbo|chain|feed|lifter|reduce|reduces|gallery|oil + lost|missing|gone|left_out|drilled|not_there|absent|forgotten|removed|opened_up|bored|@not_fitted|@not_there|not_fitted - piston|carb|no_difference|idle|fuel|present|not_missing",
    ),
    "tensioner_seal_absent": (
        "tensioner|tensioners + seal|gasket|paper_joint|joint|oring|o-ring|paper|washer + without|not_inside|missing|no|left_out|cut|torn|forgotten|never|gone|not_there|perished|absent|pinched - new|belt|in_place|fresh|leaks_at",
    ),
    "tensioner_slack": (
        "chain|tensioner|timing_chain + floppy|slack|hanging|soft|sagging|all_the_way_out|fully_out|end_of_its_travel|run_out_of_travel|loose|droopy|spongy|dangling|maxed|bottomed_out|stretched - pump|belt|seal|gasket|no|not|tight|oil_pump|bicycle|chain_hoist|cover|brake|bolt|bolts",
    ),
    "lifter_out_of_bore": (
        f"{_LIFTER} + left_its_place|out_of_its|out_of_the|popped|jumped|come_out|fallen_out|came_out|spat|dropped_out|climbed_out|sticking_up|completely_out|stands_proud|left_its_hole + place|bore|hole|out|completely|cam|guide|valley|block - noise|no|not|removed|took|pulled|lifted|i_got|oil|came_out_easy",
    ),
    "lifters_loose_in_bores": (
        f"{_LIFTER} + {LOOSE}|rattling_fit|clearance_excessive|too_much_space|too_much_room|sideways|oversize|clearance + hole|holes|bore|bores|fit|block|clearance|side_to_side|seats - noise|ticking|no|not|out_of_its|down_in|pumped|valve_clearance|adjusted|gap|thumb|removed",
    ),
    "cam_lobes_wiped": (
        "nose|noses|lobe|lobes|cam_nose|eccentric|cam_noses|high_points|bumps_on_the_cam|peaks + cam|camshaft|lobe|lobes|valve|exhaust|intake|inlet + eaten|worn|rounded|flat|gone|pitted|wiped|ground_down|lost|chewed|low|shaved|flattened|missing - no|not|sensor|timing|bearing|journal|new|look_like|rotor|pump|gerotor|chain",
    ),
    "cam_bearing_found_bad": (
        "bush|bushing|bearing|shell + camshaft|cam|cam_shaft + turned|spun|moved|walked|loose|worn|worn_through|rotated|shifted|out_of_its|come_out|shot|gone|chewed|flaking - no|not|main|rod|big_end|clearance|measured|distributor|gear|sprocket|follower|tensioner|lobe|end_float|crank|new|fine|good|pours|drips|thrust|gearbox|clutch|by_hand",
        f"{_CAM_BEARING} + loose|come_loose|spun|turned|worn|worn_through|wiped|shot|gone|scored|walked|moved|out_of_place|flaking|copper|delaminated|eaten|chewed - no|not|new|within|pours|fine|clearance|loose_clearance|main_bearing|measured",
    ),
    "cam_clearance_wide": (
        f"{_CAM_BEARING}|cam_journals|valve_shaft|cam_journal|cam_oil_clearance|camshaft_journals + clearance|gap|measured|plastigauge|thou|loose|play|miked|bore_gauge + {TOO_MUCH}|loose - no|not|within|spun|wear_limit_not|inside_the_book|gear|end_float|crank|lifter",
        f"{_CAM_BEARING}|valve_shaft|cam_journals & clearance|gap|measured & {TOO_MUCH}|permitted - no|not|within|spun|inside|end_float|crank|lifter",
    ),
    "cam_journals_worn": (
        "cam_journals|camshaft_journals|cams_journals|cam_journal|journals_of_the_cam|places_where_cam|cam_bearing_surfaces|journals_on_the_cam|camshaft_journal + worn|undersize|under|small|scored|eaten|down_on_size|grooved|galled|picked_up|scratched|ridged|oval|undersized|below|chewed - no|not|fine|within|clearance|measured_good|spec",
        "cam|camshaft + journals|journal|bearing_surfaces + undersize|under|small|down_on_size|worn|scored|scratched|scratches|grooved|picked_up|ridged|galled|undersized - no|not|crank|main|rod|fine|within|clearance",
        "places_where_cam & eaten|worn|scored|scratched - no|not",
    ),
    "jets_run_at_low_pressure": (
        f"{_JET} & piston|pistons|squirter|squirters|cooling & never_shut|@not_shut|never_close|never_closes|always_open|always_on|stuck_open|@not_shut_off|keep_running|run_all_the_time|open_all_the_time & idle|low_pressure|tickover|low|all_the_time|always|15_psi|10_psi - {_ELSE}|stay_closed|broken|missing",
        f"{_JET} & piston|pistons|squirter|squirters|check_valves & leaking|open|opened|running|ran|run|dribble|dribbling|not_seating|@not_seating|@not_close|spray|already|flow & low|small_pressure|below|slowly|idle|under|psi|@pressure|opening_pressure|little_pressure|priming|cranking - {_ELSE}|stay_closed|shut|not_open|broken|fell|missing",
    ),
    "piston_jet_found_broken": (
        f"pipes_that_spray|pipe_that_sprays|jet_that_sprays|jets_that_spray|nozzle_that_sprays|pipes_spraying|sprays_the_piston|spray_the_pistons|squirts_the_piston + piston|pistons|crown|crowns|broken|off + broken|snapped|missing|off|bent|loose|gone|fallen - {_ELSE}|no|not",
        f"{_JET} + piston|squirter|squirters|pistons|spray|cooling + broken|hanging|snapped|bent|missing|backed_out|loose|fallen|cracked|came_off|fell|knocked_off|sheared|dangling|absent|left_out|dropped - {_ELSE}|no|not|all_there|pressure|open|leaking|running|ring",
    ),
    "turbo_failed": (
        f"{_TURBO} & packed_in|packed_up|failed|blew|blown|died|let_go|gave_up|gone|expired|kicked_the_bucket|seized|had_it|grenaded|scrap|cooked|went_bang|go_bang|blow_up|blew_up|pack_up|let_loose|fail|died_on_me|new_turbo|destroyed & old|new|this|last|recently|again|one|spring|second|replaced|weeks|months|year|after|just - no|not|never|feed|line|pipe|hose|gasket|drain|if",
    ),
    "distributor_seal_bad": (
        f"{_DIST} & ring|rubber_ring|oring|o-ring|o_ring|sealing_band|sealing_ring|seal|band|body & missing|wasnt_there|cut|hard|absent|without|worn|wrong|another_block|different|perished|flat|gone|split|no|torn|not_there - cap|points|fresh|correct|new|rotor_arm|pours|stream|gushing|plug_leads|leads",
    ),
    "turbo_shaft_stiff_or_blued": (
        f"{_TURBO} & fan|wheel|shaft|spindle|impeller|compressor & dragged|drags|stiff|tight|wont_spin|@not_spin|seized|blue|blued|catches|hardly_turned|hardly_turn|barely_turn|barely_turns|@not_turn|hard_to_spin|stuck|scored|rough|sticks|hard_to_turn|gritty|straw_coloured|locked - no|@not_stiff|free|freely|feed|line|pipe|banjo",
    ),
    "turbo_shaft_loose": (
        f"{_TURBO} + fan|wheel|shaft|spindle|impeller|compressor_wheel|blades + shakes|loose|wobbles|rocks|play|slop|rattles|touches|touching|scraping|loose_tooth|moves_about|flops|rubs|rubbing|waggles|up_and_down|wiggles - no|not|feed|line|pipe|hose|clamp|within|little|banjo",
    ),
    "turbo_line_leaks": (
        f"{_TURBO} & pipe|line|hose|feed|banjo|tube|union & running_down|oil_running|dripping|weeping|leaking|sprayed|spraying|cracked|split|came_off|wet|squirting|leak|leaks|chafed|pissing - no|not|dry|intercooler|boost|air|inlet|drain|return|bent|kinked|exhaust|coked|wet_inside",
    ),
    "turbo_feed_found_blocked": (
        f"{_TURBO} + pipe|feed|line|tube|hole|port|gasket|banjo|supply + {BLOCKED}|solid|crushed|carbon|sealer|masking|flattened|gummed - no|not|clear|leak|drain|return|intercooler|air",
    ),
    "phaser_leaks": (
        f"{_ADVANCE} & knocks|loose|play|rocks|leaks|leak|rattles|slop|oil_streams|oil_go|oil_runs|oil_past|oil_by|lets|passes|bleeds|clunks|backlash|sloppy|rattle|twist|oil_escapes|let_go & cam|camshaft|oil|twist|timing|valve|hand - no|not|tight|new|oil_pump|distributor|chain|belt|worn_teeth|locked",
    ),
}
#: the finding, by words that stand together when it is not there
ABSENT: dict[str, tuple[str, ...]] = {
    "lifter_bore_pours": (
        f"{_LIFTER} + bore|bores + only_seep|seep|weep|drip|only_weep|hardly - pours|gushes|not",
    ),
    "lifters_clatter": (
        f"no|without|never|@not_any + {_LIFTER}|valve_gear + {_NOISE} - but|until|cold",
    ),
    "turbo_shrieks": (
        "turbo|turbocharger + no_strange_noise|no_noise|sounds_normal|sounds_fine|quiet|sounds_as_usual|no_whine|no_howl - not|but",
    ),
    "valve_gear_found_dry": (
        "rockers|rocker|followers|valve_gear|tips + wet|oily|bright|shiny - not|dry|but|outside|cover|plug",
    ),
    "pushrod_off_or_bent": (
        "pushrod|pushrods|push_rods|push_rod + straight|true|in_place|unbent|seated|fine|good|ok - not|but|bent_one|except|crooked|came|off|engine",
        "pushrods|pushrod|push_rods + straight|in_place|not_bent|all_in - not_straight|but|straight_six|engine",
    ),
    "lifters_loose_in_bores": (
        f"{_LIFTER} + snug|good_fit|no_play|no_slop|no_wobble|close_fit|nice_fit|tight_in|slide_nicely + bore|bores|hole|holes|block - not|but|loose|one|sideways_play",
        f"{_LIFTER} + bore|bores|holes + good_fit|nice_fit|snug|fit_well|close_fit - not|but|no",
    ),
    "piston_jet_found_broken": (
        "jets|jet|squirters|squirter + in_place|all_there|whole|intact|fitted_and - not|but|carb|missing|fuel",
    ),
    "turbo_shaft_stiff_or_blued": (
        "turbo|turbocharger + shaft|wheel|fan|spindle + freely|free|easily|bright - not|but|stiff|play",
    ),
    "phaser_leaks": (
        f"{_ADVANCE} + tight|locked|no_play|no_rattle|solid|no_leak - not|but|rattles|leaks",
    ),
    "tensioner_floods": (
        f"tensioner|tensioners & {PRIMING}|front_off|cover_off & hardly_weeps|only_weeps|only_drips|barely|weeps|drips|no_flood|hardly - floods|pours|belt",
    ),
    "cam_bearing_pours": (
        f"{_CAM_BEARING} + only_drip|only_drips|drip|drips|weep|weeps|seep|seeps|dribble|hardly + only|little|just|hardly|slightly - floods|pours|gushes|streams",
    ),
    "lifters_quiet": (
        f"low|reads_low & hot|idle & {_LIFTER} & tick|clatter|rattle|noisy|like_mad|clattering|ticking|tapping - no|not|quiet|silent|never",
    ),
    "no_oil_at_rockers": (
        "oil + rocker|rockers|rocker_arms + dribbles|dribbling|flows|drips_from|oozes|wells|spilling|nicely|every|steady + every|all|each|nicely|steadily|both|cover - no|not|hardly|never|little|outside|leak|gasket",
    ),
    "rocker_shaft_found_worn": (
        "rocker_shaft|rocker_shafts + smooth|unworn|like_new|snug|perfect|plugs_in|no_wear - not|but|grooved|worn_out",
    ),
    "lifters_found_drained": (
        f"{_LIFTER} + pumped_up|hard|firm|cant_press|solid|full|rock_hard - not|drained|soft|but|hard_run|noise|hard_faces|facing",
    ),
    "camshaft_broken": (
        "cam|camshaft + one_piece|spins_freely|turns_freely|whole|intact|unbroken - not|but|sensor|bearing|seal|sprocket",
    ),
    "tensioner_seal_absent": (
        "tensioner + gasket|seal|oring + in_place|is_there|fitted|tight|present|good - not|missing|no|but|belt|leak",
    ),
    "lifter_out_of_bore": (
        f"{_LIFTER} + down_in|in_their_holes|in_their_bores|all_in|in_place|all_down|where_they_belong - not|but|loose|rock",
    ),
    "cam_lobes_wiped": (
        f"lobes|lobe + {_LIFTER}|cam + like_new|look_new|perfect|unworn|good|shiny|fine|no_wear - not|but|worn|wiped|journals",
    ),
    "cam_clearance_wide": (
        f"{_CAM_BEARING} + inside_the_book|within|in_spec|to_spec|measured_up|in_limits|good_clearance + book|spec|limits|figure|within|good - not|outside|over|out_of|beyond|crank",
    ),
    "jets_run_at_low_pressure": (
        f"{_JET} + stay_closed|stay_shut|stays_shut|closed|shut|dont_open + until|pressure|idle|low|till - not_shut|@not_stay|{_ELSE}|open_all",
    ),
    "distributor_seal_bad": (
        f"{_DIST} + body|oring|o-rings|rings|ring|seal + fresh|correct|right_one|new|good|supple - not|wrong|but|cut|cap",
    ),
    "tensioner_slack": (
        "timing_chain|chain|tensioner + tight|taut|no_slack|plenty_of_travel|good_tension|well_tensioned|tensioned - not|but|pump|bolt|bolts|oil_pump|belt|hoist",
    ),
}
