"""Words for the state of block, cylinders, pistons and rods, and for marks of parts that met."""

from __future__ import annotations

_BE = "is|are|was|were|had|have|has|been|looked|look|found|all|both|badly|very|quite|completely|totally|really"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "crank_broken": (
        "crank|crankshaft is|was|had|has|broken|snapped|clean|found? =broken|=snapped|=broke|=cracked|=fractured|=sheared in|clean|into?",
        "broken|snapped|cracked|fractured|broke crank|crankshaft",
        "broke|snapped the|its|a crank|crankshaft",
    ),
    "liner_broken": (
        "liner|liners|cylinder|bore|sleeve wall|is|was|had|has? =cracked|=broken|=split|=holed",
        "cracked|broken|split|holed liner|liners|sleeve",
    ),
    "block_cracked": (
        "block|crankcase is|was|had|has|casting|found? =cracked|=crack|=split|=cracks|=porous",
        "crack|hairline|cracks in|across the? block|crankcase|main",
        "cracked block|crankcase",
    ),
    "rod_broken": (
        "rod|conrod|con-rod|rods bolt|bolts|cap|is|was|had|has|found? =broken|=snapped|=broke|=failed|=sheared|=fractured",
        "broken|snapped|failed|broke|bent a|the|conrod? rod|conrod|con-rod bolt|bolts?",
    ),
    "bores_or_pistons_scored": (
        f"bore|bores|piston|pistons|cylinder|cylinders|liner|skirt|skirts {_BE}? {_BE}? scored|scuffed|seized|picked-up|scratched|galled|marked",
        "scored|scuffed|scratched bore|bores|piston|pistons|liner|liners|cylinder",
    ),
    "rod_or_crank_bent": (
        "rod|rods|conrod|crank|crankshaft is|was|are|were|found|slightly|badly? slightly|badly? bent|twisted",
        "bent|twisted rod|rods|conrod|crank|crankshaft",
    ),
    "main_bores_out_of_line": (
        "mains|main|bores|tunnel bores|tunnel|bearing|line? .. out|off of? line|alignment",
        "mains|main|bores|tunnel bores|tunnel|bearing|line? .. misaligned|distorted",
        "block|crankcase .. warped|distorted|twisted",
        "line boring|bored|honing needed|required|out",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "crank_broken": (
        "crank|crankshaft|web|throw|fillet|crankpin|crank_pin|journal|shaft + fracture|fractured|crack|cracked|cracks|snapped|in_two|in_half|broke|broken|sheared|let_go|in_two_pieces|parted - no|not|free|pump|cam|pulley|drive|bolt|sensor|case|seal|distributor|block|rocker|half|whole|cap|sound|intact|nose_bolt|saddle|shell|overlay|lining",
    ),
    "liner_broken": (
        "liner|liners|sleeve|sleeves|cylinder|barrel|barrels|jug|jugs|cylinder_wall|piston_slides|piston_runs|skirt_of_the_bore + cracked|crack|cracks|broken|holed|hole|pin-holed|pinholed|split|piece_missing|lump|chipped|fracture|fractured|windowed|smashed|perforated|cavitation|daylight - no|not|head|block_casting|plug|dowel|bolt|nothing|head_gasket|oil_hole|spray|bearing|idler|cam",
    ),
    "block_cracked": (
        "block|crankcase|engine|motor|casting|lump_of_metal + split|frost_crack|crack|cracked|cracks|fracture|daylight|porous|holed - no|not|head|filter|hose|battery|manifold|gasket|plug|liner|sleeve|tube|pipe|hole_for|journal|cam|shaft|rod|piston|clutch|seal|gallery|case_joint|bearing|gauge|line|switch|sender|overlay|shell|shells|cable|valve|ring|rotor|gear|gears|pump|sound|intact|carbon|oilway|wire|cap|chain|web_of|crank|cover|flap|rocker",
        "block|crankcase|c/case|engine_case|crankcases|casting|case|motor_house|motor_casing|engine_housing + windowed|window|daylight|ventilated|hole_in_the_side|cracked|crack|cracks|fracture|frost_crack|porous|split_open|hole_through - no|not|head|filter|battery|heater|valve_block|plug|sump_window|oil_hole|manifold|pickup|tube|liner|sight|gallery|timing_cover|clutch|intact|sound|dash|joint|fuse|connector|terminal|liners|sleeve|junction|hole_for|dizzy_hole",
    ),
    "rod_broken": (
        "arm|rod|rods|conrod|con-rod + broke|broken|snapped|came_off|off_the_crank|in_two|parted|adrift|let_go|sheared|through_the - no|not|push|pushrod|bearing|knock|throttle|dip|every|all|rocker_arm|rocker|linkage|control|governor|wiper",
        "leg|rod|conrod|con-rod + out_of_bed|through_the_side|through_the_block|out_the_side|let_go|came_adrift|adrift|parted_company|off_the_crank|snapped|broke|broken|in_two|in_half|kicked_out|stuck_its_leg|came_off|out_through - no|not|push|bearing|knock|linkage|throttle|control|dip|dipstick|all|every",
        "piston_arm|rod|rods|conrod|con-rod|connecting_rod|big_end|rod_bolts|b/e_bolts|bigend + bolts|bolt|arm|cap|rod|nuts & sheared|snapped|broke|broken|cap_off|came_off|adrift|parted - no|not|sump|pan|pump|main|drain|extractor|easy|stud_out|filter|pulley|intact|all_still",
        "threw|thrown|throw|put_a|chucked|slung|kicked|lost|stuck + rod|leg|conrod|con-rod - no|not|push|bearing|away|knock|linkage|throttle",
        "rod|conrod|con-rod|con_rod + broken|snapped|broke|broken_in_two|let_go|parted|sheared - no|not|push|dip|linkage|rod_bolt_ok|bolts_broken|bearing|drive|knock",
        "threw|thrown|chucked|slung + rod|conrod|con_rod + a|rod|the - belt|knock",
    ),
    "bores_or_pistons_scored": (
        "bore|bores|cylinder|cylinders|walls|wall|piston|pistons|slug|slugs|liner|liners|barrel|sleeve|skirt|skirts|piston_slides|piston_goes|piston_runs + scratches|scratched|scratch|scored|scoring|score|scuffed|scuffs|scuff|gouged|gouges|grooves|grooved|lines|tramlines|galled|picked_up|smeared|deep_marks|ploughed|streaks|striped - no|not|nothing|relief|valve|pump|smooth|cam|without|lifter|clean|plunger|crank|bearing_bore|journal|shell|shells|oil_lines|hone|cross-hatch|hoses|clutch|brake|unmarked",
    ),
    "rod_or_crank_bent": (
        "rod|rods|conrod|con-rod|crank|crankshaft|metal_arm + @not_straight|not_straight|bent|bend|runout|run-out|twist|twisted|bowed|out_of_true|tweaked|kinked - no_runout|push|pushrod|dip|throttle|zero|nil|within|cam|tie|track",
        "rod|rods|conrod|con-rod|crank|crankshaft + kink|kinked|bent|tweaked|twisted|bowed|alignment_jig|bend|banana|crooked|out_of_straight|warped|curved - no|not|push|pushrod|dip|linkage|straight|throttle|tie|track|gear|selector|tube|pickup",
        "piston + sits|sitting|sat|comes|stops|rides + lower|short|down + than|rest|others|deck|hole|bore - ring|rings|not|new",
        "shaft|crank|crankshaft + vee-blocks|v-blocks|vee_blocks|v_blocks|lathe|centres|centers|dial_gauge|clock|clocked|indicator & ran_out|runout|run-out|run_out|runs_out|wobble|wobbled|out_by|bent - cam|camshaft|pump|no|not|zero|nil|within|turbo",
    ),
    "main_bores_out_of_line": (
        "mains|saddles|tunnel|main_bores|bearing_bores|main_bearings|holes|bearing_housings|block|saddle|main_tunnel + @not_line|@not_meet|@not_align|misaligned|out_of_line|out_of_true|not_in_line|straightedge|straight_edge|straight_row|mandrel|alignment_bar|rocked|moved|line_boring|line_bore|line_bored|line_honing|warped|twisted|off_centre - oil_hole|oil_holes|feed|cam|drain|gasket|bolt|no|gap|fine|good|in_line|straight_as|passed",
    ),
    "witness_marks": (
        "rods|rod|crank|counterweights|counterweight|big_end|big_ends|bolts|bits|parts|something|pistons + hitting|hit|rubbing|rubbed|clipping|touching|catching|clouting|striking|banging|smacking|scraping|clashing & marks|dings|mark|dents|fresh|scrapes|shiny|bright|see_where|polished|bruises|nicks|gouge|pan|inside|crankcase|block|tray - no|not|nothing|pickup|knock_sound|hear|noise|sounds|could",
        "hammer_marks|hammering_marks|fresh_marks|fresh_dings|impact_marks|strike_marks|rub_marks|scuff_marks|dings + inside|crankcase|block|crank|rod|rods|case|pan|engine|baffle|web - no|none|pump|outside|fist",
        "witness_marks|contact_marks|contact_mark|witness_mark|rub_marks|hammer_marks|impact_marks|bright_ring|bright_marks|shiny_marks|shine_marks|bright_spot|fresh_marks|shiny_scrapes|fresh_scrapes|rub_mark|polished_spot|shiny_spot|fresh_dents|peening_marks & inside|crank|counterweight|rod|sump|tray|block|cam|pan|windage|big_end|parts|piston|weight|baffle|crankcase|pickup|each_other - no|not|pickup|bearing|shell|shells|journal|seat|valve|plunger|spring|gear|screen|strainer|hammer_to",
        "counterweight|crank|crank_web|rod|rod_bolt|big_end|rod_cap|weight|con-rod|piston|flywheel + kissing|kissed|hitting|hit|clouting|clouted|touching|touched|clipping|clipped|catching|caught|rubbing|rubbed|striking|struck|smacking|whacking|tapping|slapping|banging|fouling|fouled|hammering + tray|windage|sump|pan|baffle|block|camshaft|cam|inside|head|piston|pickup|wall|case|oil_pipe - no|not|nothing|sensor|oil_hitting|would|could|rod_through",
        "two_parts|parts|something|things|bits + touch|touched|touching|hit|hitting|rub|rubbing|collide|clash|knock + each_other|inside|together - no|not|nothing|new|dash|lamp|never",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "crank_broken": (
        "crank|crankshaft|throws|journals + magnaflux|magnafluxed|crack_tested|dye|crack_test|crack-tested|ultrasound|mpi|crack_detect|crack-detected + clean|fine|no_cracks|nothing|sound|good|passed|ok|clear - not|crack_in|cracked",
    ),
    "liner_broken": (
        "liners|sleeves|cylinders|barrels|bores + whole|one_piece|no_cracks|no_crack|uncracked|sound|intact|@not_cracked|crack_free|dye|not_a_crack - but|except|one_of|found_a|scored",
    ),
    "block_cracked": (
        "block|crankcase|casting + no_cracks|no_crack|uncracked|@not_cracked|pressure_tested|pressure-tested|crack_tested|magnafluxed|whole|not_a_crack|crack_free - but|found|failed|has_a|leak|leaked",
    ),
    "rod_broken": (
        "rods|conrods|con-rods|every_rod|all_the_rods|connecting_rods + one_piece|whole|still_on|bolted|attached|in_place|intact|unbroken|on_their_pins|on_the_crank|on_its_pin - but|except|one|not|missing",
    ),
    "bores_or_pistons_scored": (
        "bores|bore|cylinders|walls|pistons|liners|skirts + smooth|cross-hatch|crosshatch|cross_hatch|unmarked|honing_marks|hone_marks|no_scores|no_scoring|no_scratches|@not_scored|mirror|perfect|like_new|not_a_mark|clean_as|unscored|no_scuffing - but|except|one|pump|not_smooth|number|relief|journal",
    ),
    "rod_or_crank_bent": (
        "rod|rods|conrods|crank|crankshaft + straight|not_bent|true|no_runout|ran_true|runs_true|alignment_jig|v-blocks|vee-blocks + straight|true|passed|fine|good|ok|dead|within|square - not|one|bent|push|but",
    ),
    "main_bores_out_of_line": (
        "alignment_bar|mandrel|straightedge|straight_edge|test_bar|bar|line_bore|tunnel|saddles|main_bores|mains & slid|slides|passed|dropped|went|in_line|straight|true|aligned|good|touched & through|saddles|all|every|fine|line|main|mains|without|along - not|bent|rocked|stuck|out|jammed|moved|one|feed",
    ),
    "witness_marks": (
        "nothing|no|none|without|nowhere|never|@not_any + touching|touched|hitting|hit|rubbing|contact|witness|rub_marks|fouling|collided|clashing|marks_inside|impact & inside|anything|anywhere|parts|marks|crank|each_other|block|rotating - gauge|needle|lamp|sender|jack|sump|bearing|shell|plug|pickup|road|rock|ground|wire|tap",
    ),
}
