"""Words that together name a finding of bearings, crankshaft or debris, in whatever order they stand."""

from __future__ import annotations

_BRG = "bearing|bearings|shell|shells|insert|inserts|mains|big_end|big_ends|big-end|big-ends|rod_bearings"
_JOURNAL = "journal|journals|crankpin|crankpins|crank_pin|crank_pins|crankshaft|crank"
_ENGINE = "engine|motor|it|crank|she"
TOGETHER_BEARINGS: dict[str, tuple[str, ...]] = {
    "shells_look_normal": (
        f"{_BRG} + like_new|as_new|perfect|even_polish|even_grey|even_gray|nothing_wrong|mint|beautiful|unmarked|look_good|looked_good|look_fine|looked_fine|in_good|normal_wear|are_good|good_condition - not|no_oil|but_the|except|one|pressure|needs|cam|think|worn_through|wheel",
    ),
    "shells_wiped": (
        f"{_BRG}|white_metal|whitemetal|babbitt|lining + wiped|smeared|melted|blue|blued|=run_=out|burnt|fried|picked_up|squeezed|polished_away - not|no|cam|pipe|looked|run_in|running_fine|others",
    ),
    "one_bearing_wiped": (
        f"one|only|single|just|number|@number|no + {_BRG}|rod|main + wiped|run|gone|melted|ruined|black|burnt|blue|blued|heat_marks|picked_up|bad & others|rest|remaining|other_five|other_three & perfect|fine|good|ok|sound|unmarked|like_new|mint|lovely|beautiful|spotless - cam",
    ),
    "all_bearings_wiped": (
        f"all|every + {_BRG} + wiped|ruined|melted|gone|destroyed|smeared|run - not|cam|oil|running",
    ),
    "shells_worn_evenly": (
        f"{_BRG} + copper|brass|backing|pink + showing|down|through|all|across|visible|worn|into|to - cam|camshaft|balance|balancer|auxiliary|aux|jackshaft|intermediate|turbo|rocker|not|no|flakes|filter|pan|flake",
    ),
    "shells_embedded_dirt": (
        f"{_BRG} + dirt|grit|specks|embedded|particles|sand|peppered|debris - no|not|crank_trap|pump|filter",
    ),
    "lower_halves_embedded": (
        f"lower|bottom|loaded + {_BRG}|halves|half + dirt|grit|embedded|full|peppered|specks - not",
    ),
    "shells_scratched": (
        f"{_BRG} + scored|scratched|scratches|grooved|grooves|scoring|lines_round|tramlines|gouges - no|not|cam|pump|turbo|without|faint|light|fine_lines",
    ),
    "shells_flaking": (
        f"{_BRG}|lining|overlay|white_metal|whitemetal|babbitt + flaking|flaked|sheets|peeling|cracked|crazed|lifting|crumbling|breaking_up|falling_out|come_away|came_away|fatigued|chunks_missing - not|no|screen|filter|pan|sump|cam|of_it_in",
    ),
    "shell_backs_shiny": (
        f"back|backs + {_BRG} + bright|shiny|polished|fretted|fretting|burnished - pump|cam",
    ),
    "shell_edges_worn": (
        f"edge|edges|one_side|side + {_BRG} + worn|marked|polished|wear|wiped - upper|lower|all|thrust",
        "only_one_edge|one_edge|just_the_edge|along_one_edge + marked|worn|polished|wear|wiped|touching",
    ),
    "mains_worn_unevenly": (
        "main|mains|centre|center|middle|rear|front + worn|worse|wear + more_than|than_the|lot_more|unevenly|uneven|differently|different|along_the_crank + along_the_crank|ends|others|rest|front|rear|main|mains|centre - cam|rotor|lobe|gear",
    ),
    "wear_at_parting_lines": (
        f"{_BRG} + parting|split_line|joint_face|joint_line|parting_line + worn|wear|marked|polished|opposite",
    ),
    "caps_mixed": (
        "=caps|bearing_cap|main_cap|rod_cap + mixed|swapped|wrong_place|wrong_way|reversed|backwards|turned_round|not_matched|wrong_order|out_of_order|@not_match + main|rod|mixed|bearing|@number|big|swapped - filler|radiator|valve|dust|rotor|distributor",
    ),
    "cap_bolts_slack": (
        "cap|caps|through_bolts|crankcase_bolts|main_bolts|rod_nuts|rod_bolts|rod_nut|rod_bolt + loose|slack|finger|@not_tight|hand_tight|below_torque|under_torque|undone|never_torqued|@not_torqued|backed - filter|housing|filler|radiator|relief|rocker|valve|oil_cap|breather",
    ),
    "shell_hole_mismatch": (
        f"hole|holes|oil_hole + {_BRG} + @not_line|@not_align|covered|covering|blocked|misaligned|@not_match|mismatch|off_by|half_covered|out_of_line|blanked - plug|lifter|cam_lobe|camshaft_sensor|rod_through|gallery_plug",
        "cam_bearing|cam_bearings|cam_bush|cam_bushes|camshaft_bearings|camshaft_bearing + @not_line|@not_lined|@not_align|@not_aligned|"
        "misaligned|out_of_line|@not_match|@not_meet|half_covered|covers|covering|blanks + feed|oil_feed|gallery|oilway|drilling|passage|hole|holes|oil_hole",
    ),
    "wrong_shells_fitted": (
        f"{_BRG} + stamped|marked|under|undersize|wrong + crank|journal|journals|ground + under|undersize|std|standard|@number|thou - correct|right|reground_to_suit|measured|clearance|new_bearings_to_suit|ground_10_under_with|polished",
        f"{_BRG} + std|standard + crank|journal|journals|ground + under|undersize|thou - correct|right|reground_to_suit|measured|clearance|new_bearings_to_suit|ground_10_under_with",
        f"{_BRG} & std|standard & crank|journals & @number_under|10_under|20_under|@length_under|undersize - correct|right",
        f"wrong_size|wrong_undersize|wrong_bearings|wrong_shells + {_BRG}|fitted|in|were|size|had|supplied - cam",
    ),
    "journal_not_true": (
        f"{_JOURNAL} + taper|tapered|oval|sandpaper|rough|out_of_round|egg|ridged|barrelled|out_of_true|out-of-round|bell-mouthed - no|not|smooth|float|cam|lobe|bore|zero|within",
    ),
    "crank_scored": (
        f"{_JOURNAL} + scored|grooved|gouged|blue|blued|ridges|scratched|scuffed|chewed|picked_up|torn_up|burnt|bruised|galled - no|not|smooth|shaft|cam|seal|sprocket|unmarked|without|isnt|pulley|sensor",
    ),
    "crank_moves_endwise": (
        "crank|crankshaft & tug|pull|push|pulled|pushed|grabbed|yank|lever|shove & play|movement|slop - no|not|pump_shaft|distributor|rod|rods",
        "crank|pulley|damper|flywheel|crankshaft + in_and_out|back_and_forth|back_and_forwards|fore_and_aft|back_and_fore|endways|endwise|lever|levered|pried|to_and_fro|backwards_and_forwards - not|@not|no",
    ),
    "thrust_face_ploughed": (
        "thrust + worn|gone|fell|fallen|dropped|missing|ploughed|scored|chewed|worn_out|disintegrated|copper + washer|washers|bearing|face|flange|halves - not|no|good|within|release|clutch",
    ),
    "piece_found_inside": (
        "nut|bolt|washer|washers|clip|circlip|spring|key|stud|piece|screw|dowel|tooth|collet|pin + sump|pan|bottom|valley|crankcase|timing_case|timing_chest|oilpan + lying|found|in|dropped|fallen|loose|fell|floating|rattling - drain|plug|pan_bolts|sump_bolts|gasket|tightened|torqued|dropped_the|no|dropped_the_pan_bolts|piece_of_bearing|plastic|gudgeon",
    ),
    "fastener_found_loose": (
        "bolt|bolts|nut|nuts + loose|slack|finger|undone|backed|@not_tight + inside|internal|internally|in_the_engine|balancer|crankcase - sump_bolts|pan_bolts|rocker_cover|manifold|drain|filter|wheel|valve_cover",
    ),
    "engine_seized": (
        f"{_ENGINE} + seized|locked_solid|locked_up|siezed|tightened_up|nipped_up|frozen_solid|@not_turn_with|stuck_solid - full|drained|traps|trap|blocked|not|no|pump|valve|plunger|relief|bolt|rotor|hasnt|almost|before|wasnt|isnt|chain|thermostat|turbo|bearing_seized|screw|plug|gallery|bunged|packed",
    ),
    "hard_to_turn": (
        "turn|turns|crank|cranks|spin|spins|swing|rotate|turning|starter + hard|stiff|barely|hardly|tight|labours|labors|struggles|heavy|strains|slow|slowly|groans - not|no|smooth|brake|right|left|corner|corners|bend|needle|gauge|screw|pump|easy|oil|light|isnt|cold|light_barely|turbo|compressor|wheel",
    ),
    "locked_then_freed": (
        "seized|locked|solid|siezed|nipped & then|after|later|once|when|cooling|cooled|cold & turn|turned|free|freed|freed_off|let_go|unstuck|came_free|restarted|rotated|spun - pump|relief|valve|plunger|@not_free|bolt|never",
    ),
    "engine_banged_or_shook": (
        f"{_ENGINE}|there_was + bang|hammered|hammering|shook|shaking|shuddered|vibrating|vibration|thumped|clattered_loudly|juddered|banging - bang_on|no|not|needle|gauge|baffle|hand|mount|wire|by_hand",
    ),
    "rod_through_block": (
        "rod|conrod|con-rod|con_rod|leg + block|crankcase|side|through|window|out_of + through|out|hole|window|ventilated|leg|kicked|exit|exited|poking - no|not|push|dip|rodded|gallery|passage|welding|drain|threaded|tie|put_a_rod",
        "threw_a_rod|thrown_a_rod|put_a_leg_out|leg_out_of_bed|ventilated_the_block|window_in_the_block|rod_out_the|threw_a_leg",
    ),
    "rod_broken": (
        "rod|conrod|con-rod|con_rod + broken|snapped|broke|broken_in_two|let_go|parted|sheared - no|not|push|dip|linkage|rod_bolt_ok|bolts_broken|bearing|drive|knock",
    ),
    "rap_dulled_by_cut_out": (
        "rattle|knock|rap|noise|tap|knocking|rapping & plug|plug_lead|short|shorting|cylinder|injector|lead|cut|coil & quiet|goes|stops|disappears|dulls|softer|changes|fades|vanishes|quieter - no|not|sender|wire|oil_change",
    ),
    "deep_knock_under_load": (
        "knock|thud|thump|rumble|knocking|thumping + low|deep|bottom|down|heavy|dull|crankcase|down_below & load|pulling|uphill|hill|accelerate|accelerating|power|throttle|climbing - no|not|never",
    ),
    "magnetic_metal": (
        "magnet|magnetic + slivers|beard|hairy|fuzz_of|covered|filings|shavings|chunks|hedgehog|picked_up|picks_up|chips|bristling|furry|splinters|flakes|stuck_to|sticks_to - no|not|nothing|non|@not|fine_fuzz|thin|clean|light|just|fur|normal|none|plunger",
    ),
    "bright_soft_metal": (
        "flakes|slivers|bits|metal|shavings|flake & magnet & @not|nothing|none|ignored|ignores|leaves|no_interest - clean",
        "aluminium|aluminum|alloy|bright_soft|soft_bright + flakes|bits|slivers|shavings|specks|glitter|metal - no|not|sump|pan_is|head|block",
    ),
    "copper_flakes": (
        "copper + all_through|all_over|everywhere|lots_of|full_of + sump|pan|oil|filter|strainer - no|not|washer|pipe|line",
        "copper|bronze|brass|coppery|gold|golden|bronze_coloured|brass_coloured + grit|flakes|bits|glitter|specks|specs|slivers|shavings|flecks|particles|sparkle|filings|dust|tinge - no|not|washer|down|pipe|line|showing|backing",
    ),
    "lining_strip": (
        "bearing|lining|shell|white_metal|whitemetal|babbitt + strips|foil|slivers|sheets|ribbons|strip|flakes|pieces + filter|pan|sump|screen|pump|oil|found - no|not|cam_bearing_tool",
    ),
    "grey_soft_flakes": (
        "grey|gray|dull + flakes|soft|blobs|beads + soft|melted|metal|flakes|smear - no|not|dust|even",
    ),
    "metal_throughout": (
        "metal|debris|bearing_material|swarf|filings|glitter|shrapnel|bits + throughout|everywhere|all_through|all_over|every_oilway|whole_engine|entire|right_through|whole_oiling|through_the_whole - no|not",
    ),
    "crank_plug_found_missing": (
        "=plug|=plugs + crank|crankshaft + missing|loose|gone|came_out|left_out|fell_out|worked_loose - spark|core|drain|gallery|sump",
    ),
    "crank_trap_full": (
        "trap|traps|sludge_traps|sludge_trap|crank_drillings|crank_plugs + solid|full|packed|choked|blocked|rammed - drain|trap_door|no|not|water",
    ),
    "hard_chips": (
        "=sand|=grit|casting_sand|glass_beads|bead_blast|bristle|shot_blast|steel_shot + filter|sump|pan|oilway|oilways|pump|screen|galleries|engine|found|passages|inside - no|not|sandwich|bead_of|sealant|silicone|sealer|drip|paper",
    ),
    "fine_dust_only": (
        "fine|grey|gray + dust|paste|powder|film|fuzz + only|just|nothing_else|no_flakes|nothing_more|no_chunks|normal",
    ),
    "bearings_failed_again": (
        f"second_set|third_set|fourth_set|another_set|second_crank|third_crank|another_crank|second_lot|another_lot|second_failure|second_time|third_time|again|twice|once_more + {_BRG}|set|=crank|failure - "
        "gauge|sender|cam|pump_again|opinion|test|turbo|owner|hand|filter|measured|checked|torqued|looked|put_back",
    ),
    "ran_on_without_pressure": (
        "drove|driven|limped|nursed|carried_on|kept_going|ran|rode|continued & home|@distance|another|miles|miles_more|back & like_that|with_the_light|light_on|lamp_on|no_pressure|zero|without|like_this|lit|regardless|anyway - towed|trailered|before|until|since_without|without_a|without_any|without_it|without_damage|recovered|no_damage|no_harm|no_distress|fine|happily|no_ill",
        "ignored|taped_over|took_no_notice + light|lamp|gauge|warning|alarm|buzzer|it",
    ),
    "bearing_clearance_too_tight": (
        "clearance|clearances + main|rod|bearing|bearings|big_end|mains + tight|too_small|too_little|zero|nil|barely|no - not|cam|valve|pickup|over|end",
    ),
    "clearances_never_measured": (
        "@not_measure|@not_measured|never_measured|@not_plastigage|@not_check|@not_mic + rods|mains|rod_bearings|main_bearings|big_ends|big-ends - valve|cam|gauge|pressure|voltage|oil",
        "clearance|clearances|plastigage|plastigauge + never|@not_checked|@not_measured + bearing|main|rod|bearings|clearances|engine|mains|built|it - tight|pickup|valve|pump|cam",
    ),
    "clearances_built_wide": (
        "clearance|clearances|built|set_up|plastigage|plastigauge + loose|wide|on_the_loose|race|generous|loosely + bearing|main|rod|bearings|clearances|engine|mains|built|it - tight|pickup|valve|pump|cam",
    ),
}
TOGETHER_BEARINGS_ABSENT: dict[str, tuple[str, ...]] = {
    "crank_scored": (
        f"{_JOURNAL}|crank + smooth|unmarked|perfect|look_polished|are_polished|mirror|like_glass|like_new|mint|unscored|undamaged|look_good|looks_good|fine|ok - not|but|scored|rough|no_good|pulley|float|turns|one",
    ),
    "hard_to_turn": (
        "turn|turns|turned|spins|rotates|cranks|spin|rotate + free|freely|easily|easy|smoothly|nicely|by_hand|fine|normally|hand - lumps|lumpy|notchy|tight|jerks|spot|spots|places|not|no|hard|pump|oil_pump|screw|stiff|barely|@not|wouldnt|solid|until|drill|plunger|distributor|shaft|valve|filter|rotor|handle|bath|pickup|tube|sender|mikes|mics|miked|journal|journals|measures|measured|round|true",
    ),
    "engine_seized": (
        "turn|turns|turned|spins|rotates|cranks + free|freely|easily|easy|by_hand|still_turns|still_turned|over_fine|over_ok|fine|normally|nicely - lumps|lumpy|notchy|tight|jerks|spot|spots|places|not|no|hard|pump|oil_pump|stiff|barely|@not|wouldnt|solid|drill|plunger|distributor|shaft|filter|rotor|screw|relief|valve|until|bath|pickup|tube|sender|mikes|mics|miked|journal|journals|measures|measured|round|true",
    ),
    "magnetic_metal": (
        "magnet + clean|nothing|picked_up_nothing|no_metal|no_interest|ignored|bare|@not_pick|@not_attract|nothing_on|@not_stick|no_filings - fuzz",
    ),
    "ran_on_without_pressure": (
        "shut|switched|stopped|killed|turned_it_off|turned_off|shut_off|shut_down + moment|straight|immediately|instantly|at_once|as_soon|the_second|right_away|promptly|the_instant|within_seconds|within_a_minute|within_thirty - to_the_second|by_itself|itself|shuts|i_put|on_load|loaded|under_load|pto|cured|noise|light_went|fine_until|before|the_flicker|never|alarm_stopped",
        "coasted|pulled_over_and_shut|killed_it + side|stop|shoulder|immediately|engine_off|in_neutral|hard_shoulder|verge|and",
    ),
    "bearing_knock": (
        "bottom_end|bottom-end|big_ends|mains + quiet|silent|no_noise|sounds_fine|sounds_good|no_knock - not|top",
    ),
    "glitter_in_oil": (
        "no_glitter|no_sparkle|no_sparkles|no_shimmer|@not_glitter|@not_sparkle|without_glitter",
        "no_metal|no_specks + oil|drain|stick|dipstick|drained|tray|old_oil",
    ),
}
