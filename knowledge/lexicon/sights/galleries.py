"""Words for galleries, their plugs and the feed through the crankshaft."""

from __future__ import annotations

_SUMP = "sump|pan|oilpan"
_BLOCKED = "blocked|plugged|bunged|clogged|choked|sludged|restricted|obstructed|solid|stopped_up|closed_up|nearly_closed|filled"
_PRIMING = "drill|drilling|priming|primed|prime|pre-lube|prelube|pre-oiler|spun|spinning"
_GALLERY = "gallery|galley|galleries|oilway|oilways"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "crank_feed_seal_reused": (
        "seal .. feeds|feed the? crank|crankshaft end? was|were|is|got? re-used|reused|kept",
        "seal .. feeds|feed the? crank|crankshaft end? was|went|put|used? again|back|back-in",
        "reused|re-used|kept the|its? old|original? crank|crankshaft|timing-cover end? oil? feed? seal",
        "old|original crank|crankshaft end? oil? feed seal was|went|got? reused|re-used|back|again",
    ),
    "gallery_plug_found_missing": (
        "gallery|galley|oilway|passage|oil-gallery|pipe|press-in|threaded plug|plugs was|were|is|had|has|been? left|missing|fell|fallen|gone|popped|blown|forgotten out|off|behind?",
        "gallery|galley|oilway|passage|oil-gallery|press-in|threaded =plug was|is|had|has|been|found? =out",
        "gallery|galley|oilway|passage|oil-gallery|pipe|press-in|threaded plug|plugs was|were|is|had|has|been? never|not been? fitted|in|put|installed|refitted in|back?",
        "forgot|forgotten|omitted|missing|left|lost|no the|a|one|out? oil? gallery|galley|oilway|cup|pipe|press-in|threaded plug|plugs",
        "missing|forgotten gallery|galley|oil|passage|cup plug|plugs",
    ),
    "all_plugs_accounted_for": (
        "gallery|galley|oilway|oil plugs all|are|were|is|was|both? good|tight|there|present|accounted|sealed",
    ),
    "gallery_plug_in_wrong_passage": (
        "plugged|blocked|blanked off|up? the? wrong hole|passage|port|gallery|drilling",
        "plug|plugs in the? =wrong hole|passage|place|gallery|port|drilling",
        "plugged|blanked off? the? oil? feed|supply to|hole|passage?",
    ),
    "gallery_seal_found_bad": (
        "gallery|cover|feed|passage|transfer|cam|front|timing o-ring|oring|seal|o|gasket .. pinched|cut|split|missing|torn|hard|flat|nicked|perished|left",
        "pinched|cut|split|torn|nicked|flattened o-ring|oring at|on|in|under|behind the? gallery|cover|feed|passage|transfer|timing|block",
        "tube|pipe inside|in|into the? oil? gallery with .. o-ring|ring|seal|oring , it|which|that was|is|had perished|hard|cut|split|flat|torn|gone",
        "tube|pipe inside|in|into the? oil? gallery with .. o ring , it|which|that was|is|had perished|hard|cut|split|flat|torn|gone",
    ),
    "oil_wash_at_gallery_seal": (
        "oil spraying|leaking|running|pouring|escaping|blowing|squirting inside|behind|past|internally|at|between the? front|timing|cam|gallery|cover|feed|tube cover|seal|o-ring|gasket|tube|and",
        "internal|inside leak|leaking at|past|between the? cover|o-ring|gasket|feed|seal|timing",
    ),
    "one_bearing_gets_no_oil": (
        "all|every|the mains|rods|bearings|others get|got|have|gets|receive oil|it except|but|bar|save the|number|no? rear|front|@number|last|centre|one",
        "no oil|flow at|to|from|out|reaching|getting|coming of|from|to|at? the? one|number|no|main|rod|cam|front|rear|first|last main|rod|bearing|journal|@number",
        "one|a|single main|rod|cam|bearing|journal =dry|=starved|gets no|=dry oil?",
    ),
    "oil_streams_from_open_hole": (
        "oil? =pours|=gushes|=streams|=jets|=pouring|=gushing|=streaming out? behind|from|at|of behind? the? cam|timing|front|rear|back|camshaft|pump gear|gears|sprocket|chain|plate|drive",
        "oil? =pours|=gushes|=streams|=jets|=pouring|=gushing|=streaming .. open|empty|missing hole|plug|gallery|drilling",
    ),
    "gallery_found_blocked": (
        "=hole|=holes|=drilling|=drillings in|of|through it|the-banjo|banjo|the-bolt|the-union|bolt is|was|were|found|completely? blocked|plugged|bunged|choked|clogged|full",
        "banjo|hollow|union|feed|drilled bolt|union|hole|drilling was|is|were|found|completely|half|partly? blocked|plugged|bunged|choked|clogged|full",
    ),
    "gallery_wall_weeps": (
        "hairline? crack|pinhole|split|fracture found|seen|was|is? in|near|at|into|through|across the? block's|block|main|oil? main|oil? gallery|galleries|oilway",
        "block|casting is|was|has? cracked|split|porous at|near|in|into|through the? main|oil? gallery|galleries|oilway",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "crank_feed_seal_reused": (
        "old_crank_seal|old_seal|same_seal|original_seal|seal|crank_seal|feed_seal + back_in|reused|again|kept|left_in|went_back|not_replaced|put_the_old|not_changed + crank|crank_end|feed|oil_goes_through|feeds|cover|tip|nose - rear|front_main|rear_main|new_one|leak|leaks|valve|head|sump|pump",
        "crank-end|crank_end|crank_feed|crankshaft_feed|crank_tip|crank_nose & seal|o-ring & refitted|reused|orig|original|old|again|same - new|renewed|hard|worn|torn",
        "seal|o-ring|rubber_ring|rubber|oring|oil_seal + crank_end|crank's_tip|crank_tip|crankshaft_nose|crank_nose|feeding_the_crank|feed_seal|end_of_the_crank|crank_feed|crank-end|passes_oil|quill|feeds_the_crank|end-feed & not_renewed|@not_replace|@not_replaced|kept|old_one_back|reused|re-used|refitted|@not_change|original|same_one|went_back|put_back|used_again|@not_renew|old_one|left_the_old|orig|@not_changed|second_hand - new_one|put_a_new|renewed_it|rear_main|leaks|hard|brittle|worn|torn",
        "seal + crank|crankshaft|quill + feeds|feed|end|fed|quill + re-used|reused|used_again|re_used|old_one_back - new|renewed|rear|front|main",
    ),
    "gallery_plug_found_missing": (
        "plug|plugs|cup|closing_screw|stopper & gallery|galley|oilway|oil_passage|behind_the_timing|behind_the_cam|timing_gear|oil_channel & never|not|missing|lost|out|gone|left_off|forgotten|fell|loose|absent - all|every|deep|far|drain|spark|too|none|sump|core|covers|masks|no_plug",
        "plug|plugs|screw|stopper|cup|closing_screw|core_plug|welch_plug|closers|blank + gallery|galley|oilway|oil_channel|oil_tunnel|oil_passage|oil_drilling|oil_rail|main_rail|oilways|galleries|channel + missing|absent|gone|loose|fallen|fell|popped|out|turn_with_fingers|left_out|never_fitted|finger_tight|not_fitted|not_there|wasnt_there|hole_is_empty|dropped|unscrewed|blown|forgotten - too_deep|too_far|all|every|none|not_loose|drain|spark|count|magnetic|driven_past|no_plug_missing|still_in|in_the_sump|lying|never_loose",
        f"plug|plugs + {_GALLERY}|oil_hole|cross_drilling|lifter|front_of_the_block|behind_the_cam|behind_the_timing|rear_of_the_block + missing|gone|never|@not|left_out|no|forgotten|loose|fell|fallen|popped|blown|out|absent|weeping|dropped|omitted|lying - too_deep|too_far|all|every|none|magnetic|spark|new|glow",
        "forgot|forgotten|@not|left_out|never|missing + plug|plugs|gallery_plug|cup_plug + back|behind|gallery|cam|timing|put|fitted|block|hole - remember|recall|sure|counted|checked|spark|drain|glow|sump_plug|all|every|filler|core|plugs_out|turned|cranked|spun|inlet",
    ),
    "gallery_plug_lies_in_sump": (
        "plug|cup|thimble|closer|closers|welch_plug|core_plug|brass_plug|little_cup|metal_cup|small_disc|screw_plug|grub_screw + sump|pan|timing_case|timing_cover|timing_chest|tub|bottom_of_the_engine|front_cover|oil_pan|tray|tub_under_the_engine & loose|lying|dropped|found|fell|rolling|fished|sitting|fallen|rattling|ended_up - drain|spark|glow|magnet|magnetic|no|not|none|nothing|nothing_loose|removed_the|sump_plug|out_of_the_sump",
        f"plug|cup + {_SUMP}|timing_case|timing_chest|timing_cover|timing_chain_case|front_cover|bottom + lying|found|loose|fished|rolling|laying|sitting|fell|dropped - drain|spark|glow|magnet|magnetic|piston|gudgeon|plug_out_of|wrist",
        "gallery_plug|oil_plug|cup_plug|gallery_cup|gallery_plugs + sitting|lying|found|loose|rolling|in_the + timing_case|sump|pan|timing_cover|front_cover|bottom|case - no|not|new",
    ),
    "gallery_plug_found_too_deep": (
        "plug|plugs|screw|cup & so_far|too_far|too_deep|too_deeply|overdriven|deep|past|pushed_in|hammered & covering|covers|masks|close|closes|blocking|blocks|hides|half|feed|hole|channel|shuts - drain|spark|not|never|glow|no",
        "plug|plugs|screw|cup|cup_plug|grub_screw|core_plug|setscrew|stopper|welch_plug|pipe_plug + too_far|too_deep|driven_past|so_far_in|knocked_in|hammered_in|screwed_in_too|too_long|long_screw|past_the|deep|overshot|in_too|sunk|buried|driven_in & masks|masking|hides|half_hides|blanking|blanked|blanks|covers|covering|shut_off|shuts_off|closes|closing|cross-drilling|cross_drilling|side_hole|feed|hole|=drilling|lifters|blocks|blocking|oilway|obstructs|passage|cam - drain|spark|glow|sump|not_too|no|filter_off|unscrewed",
        f"plug|plugs + too_far|too_deep|over-driven|overdriven|deep|in_too + {_GALLERY}|=drilling|feed|hole|passage|covered|masks|masking|blocking|covers|driven|oil|cross - drain|spark|core_plug_out|glow",
    ),
    "gallery_plug_in_wrong_passage": (
        "plug|plugged|blanked|blanked_off|bung|screw|blocked_off & open|supposed|rocker_feed|cam_feed|head_feed|must_be|feed & hole|channel|passage|drilling|feed|supposed|must|meant|ought|off - drain|spark|sump|no|nobody|dirt|silicone|sludge|deep|far|dirty|debris|nothing|depth|covers|restrictor|past|glow|ground|circuit|connector",
        "plug|plugs|screw|plugged|blanked|blocked|bolt|blank|stopper|grubscrew + feed|hole|passage|=drilling|oilway|port|oil_feed|gallery|channel & should_be_open|supposed_to_be_open|ought_to_be_open|meant|supposed|should_be_clear|must_be_open|to_the_head|to_the_cam|needs_to_be_open|where_there_shouldn't|that_feeds|wants_to_be_open|blanked_off_with|meant_for_oil|wrong_hole|wrong_place|left_open|shouldnt - drain|spark|sump|no|not_plugged|nobody|too_deep|too_far|dirt|sludge|swarf|glow|debris|driven|long_screw|none",
        "plug + in_the_hole|wrong_hole|wrong_passage|wrong_place|wrong_gallery|that_feeds|should_be_open|feed_hole|blocking_the_feed - drain|spark|driven|too|deep|far|glow|missing",
    ),
    "gallery_seal_found_bad": (
        "o-ring|oring|o_ring|rubber_ring|seal|gasket|rubber + channel|gallery|oilway|feed_tube|transfer_tube|pipe_that_takes|oil_pipe|oil_tube|oil_passage|feed_pipe|through_the_block|timing_cover_passage|oil_tunnel|front_cover_passage|galley|jumper & cut|cracked|hard|torn|nicked|pinched|flat|perished|left_out|missing|split|blown|gone|leaks_inside|brittle|rolled|squashed|chewed - no|not|new|pickup|gauge|turbo|crank|filter|sender|fine|sound|whole|good|suction|rear_main|drain|porous",
        f"oring|o-ring|o_ring|seal|gasket + {_GALLERY}|transfer|feed_tube|front_cover|cover_feed|oil_passage|cross_tube|jumper_tube|feed_pipe + nipped|cut|hard|torn|missing|left_out|pinched|flat|blown|perished|split|broken|gone|no|leaking - gauge|turbo|pickup|gushing|crank|rear|front_crank|new|drill",
    ),
    "all_plugs_accounted_for": (
        "counted|checked|ticked|inspected|went_round|accounted|tallied|all|every & oil_plugs|gallery_plugs|galley_plugs|oilway_plugs|oil_gallery_plugs|plugs|plug|little_screws & all_in|good|none_missing|in_and|sealed|tight|there|right_depth|all_there|present|in_place - spark|drain|glow|not_all|one_missing|except|but_one|leaking|front_ones|core|fell|dropped|dumped|out_of|front|rear|visible|outside|can_see|could|head|never|no_plug|plugged|wire|sender|connector",
        "plug|plugs|screws|stoppers|oilway_plug|galley_plug|cups|closers + every|all|each|ticked|counted|tally|tallied|none_missing|checked_off|went_round + in|sealed|place|sound|depth|drawing|accounted|missing|belongs|present|there|tight|right|not_too_deep|correct|list|book - fell|out|dumped|popped|leaking|weeping|spark|drain|short|not_all|except|but|front|rear|outer|outside|visible|can_see|one_missing|glow|new_spark|one_short|head_plugs|core_plugs_weep",
        f"plugs + {_GALLERY}|oil|all|every|each + all|every|accounted|counted + in|present|tight|fitted|there|sealed|good|place|accounted - spark|not|missing|one|drain|except|core|dropped|new|glow|fell|out|dumped|front|rear|outer|outside|visible|can_see|could_see|could_get_at|can_reach",
    ),
    "oil_streams_from_open_hole": (
        "drill|priming|primed|prime|pumped|pump|push_oil|pre-oiler|spun|pressure_pot|prelube|cranking|with_the_drill|pre-lubing|preoiler|hand_pump & hole|=drilling|oilway|unplugged|empty|open_gallery|plug_hole|empty_bore|gallery & poured|pouring|pours|shot|stream|streams|streamed|streaming|jet|jets|gushed|gushing|run|runs|ran|fountain|spurting|spurted|spews|squirted|squirts|came|flood|pissing - no|not|nothing|every|all_rods|bearing|rod|rockers|distributor_hole|dizzy_hole|o_ring|oring|gasket|sender|spark|filter_hole|never|none|pushrod|primed_it_through|rocker",
        f"{_PRIMING} & hole|drilling|empty & =pouring|streaming|stream|gushing|gushed|=jet|fountain|out_of_a|running_out|squirting|=pumping_out - =poured|main|lifter|bearing|distributor|filter|cam_bearing|tensioner|sender",
    ),
    "one_bearing_gets_no_oil": (
        "main|rod|bearing|big_end|journal + got_none|gets_none|gets_no|stays_dry|stayed_dry|got_no_oil|starved|dry|got_nothing|no_oil & rest|others|other|while|priming|primed|drill|pumped|flowing - cam|rocker|all|every|lifter|worn|copper|wiped|scored|turbo",
        "primed|priming|drill|pumped|prime|pre-oiler|prelube|turned_the_crank|pressure_pot|pump_oil & rod|main|bearing|big_end|bigend|journal|b/e|rods|mains|bearings & but|except|nil|dry|nothing|none|no_oil|stayed_dry|bar|only|not_a_drop & one|others|number|rest|@number|every|all|nr|the_rear|front|last - every_main_and|cam|rocker|gauge|pressure|lifters|hole|psi",
        f"{_PRIMING} & main|rod|big_end|bearing & no_oil|dry|nothing|no_sign & except|others|only|rest|all|but|one|number|@number - rocker|cam|pressure",
        "all|every|others|rest + main|mains|rods|bearings|journals + except|but|apart_from + rear|front|one|number|no|@number|third|last & oil|dry|prime|priming|drill - wear|worn|clearance|copper|wiped|thou",
    ),
    "oil_wash_at_gallery_seal": (
        "drill|priming|primed|prime|pumped|pre-oiler|when_oil_was_pumped|pressure_pot|spun|hand_pump|prelube|by_hand|pump_oil & o-ring|oring|o_ring|cover_gasket|cover_seal|feed_tube|gallery_seal|pipe_plugs|tube|gasket|joint_of_the_tube|pipe_joins|pipe_goes|behind_the_cover|seal|jumper & sprays|spray|spraying|runs|running|leaks|pouring|gushing|go_out|comes_out|squirting|weeps|jets|pissing|washing|came|blows|escaping|streaming - no|not|dry|rear_main|sender|filter_gasket|nothing|outside|none|rocker_cover|sump_gasket|distributor|head_gasket",
        f"{_PRIMING}|inside & gushing|pouring|running|pissing|blowing|=pumping|squirting & past|out_of|from|at & front_cover|gallery_seal|feed_tube|transfer|o_ring|oring|cover_gasket - rod|sender|crank_seal|leak_outside|block_onto",
        "inside|internally|behind_the_cover|behind_the_timing_cover|behind_the_front_cover|into_the_timing_case|into_the_sump + oil + pouring|pissing|dumping|gushing|spraying|leaking|bleeding|=pumping - no|not|rocker|outside|spray_bar|coolant|water|poured|turbo",
    ),
    "gallery_wall_weeps": (
        "gallery|oil_tunnel|oil_channel|oilway|galley|gallery_wall|casting|oil_passage|metal_round|porous_casting|main_rail & seep|seeps|seeping|weeps|weep|porous|porosity|dye|bubbles|bubble|sweats|sweating|lets_oil|comes_through|hairline|pinhole|oozes|fizzing|crack|through_the_metal & metal|wall|through|air|soap|block|casting|line|dye|spot|cracked|porous|oil|test - sump|pump|gasket|tube|pickup|head_gasket|cylinder|plug|seal|no|not|crank|freely|clear",
        f"{_GALLERY}|casting|wall|web & air|dye|crack|porous|porosity & bubble|bubbles|bubbling|weep|weeps|seeping|came_through|through|leaking - sump|pump|gasket|tube|pickup|head_gasket|cylinder",
    ),
    "gallery_found_blocked": (
        "gallery|galley|galley's|gallery's|oilway|oil_passage|oil_hole|oilways|galleries|oil_drilling|feed_hole|oil_holes & plugged_with|blocked_with|full_of|rtv|gunk|sealant|sealer|silicone|choked|bunged|clogged|plugged_by|plugged_up|packed - no|not|clear|drain|return|sender|gauge|turbo|crank|plug_out|plug_missing|relief|crankshaft|plugs|throws",
        "tunnel|oil_tunnel|channel|oil_channel|oilway|oilways|gallery|galley|galleries|oil_passage|feed_hole|oil_hole|cross-drilling|oil_rail|main_rail|oil_drilling|passage|takes_oil|oil_way + junk|jammed|closed_by|dirt|blocked|plugged|bunged|choked|clogged|stuffed|rag|stopped|sealant|silicone|sludge|crud|solid|packed|furred|wire_wouldnt|wouldnt_pass|couldnt_blow|full_of|caked|gummed|obstructed|muck - no|not_blocked|clear|clean|turbo|sender|drain|return|relief|plug|crank|crankshaft|rocker_arm|dipstick|screen|throw|throws|crank's|shaft|screw|carried|last|gauge|supposed|bolt|plugs",
        f"{_GALLERY}|=drilling|oil_hole|oil_passage|feed_hole|oil_holes|oil_passages|oil_feed|cross_drilling + {_BLOCKED}|swarf|debris|grit|dirt|dirty|silicone|sludge|rag|sand|muck|full - no|not|clear|clean|turbo|gauge|sender|drain|return|relief|plug|rocker_oil",
        "gallery|galleries|oilway|oilways|oil_passage|feed_hole|oil_hole + blocked|plugged|full|packed|solid|bunged|choked + crud|sludge|swarf|solid|with|muck|carbon|dirt|completely|up - no|not|cleaned|clear|plug_out|gallery_plug",
    ),
    "crank_feed_seal_bad": (
        "seal|o-ring|rubber|oring|rubber_ring|lip_seal + crank_end|crank's_tip|crank_tip|crankshaft_nose|crank_nose|oil_enters|oil_goes_in|feeds_the_crank|feed_seal|end_of_the_crank|crank_feed|quill|oil_goes_into|end-feed & hard|old|back_to_front|worn|folded|torn|missing|stiff|brittle|like_wood|inside_out|split|perished|wrong_way|left_out|rolled|cut|loose|nicked|gone_hard|turned_over|lip - rear_main|leaks_outside|front_pulley|new|soft|not_renewed|not_replaced|kept|put|reused|re-used|same_one|refitted|fine|original",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "gallery_found_blocked": (
        f"{_GALLERY}|oil_holes|oil_passages|=drillings|passages + =clear|=clean|unobstructed|blew_through|free - to_clean|plugs_out|not|no_oil|cleaned|i_cleaned|relief|drain|return|crankcase_vent",
    ),
    "gallery_plug_found_missing": (
        "plugs + all|every|each + in|present|tight|fitted|there|sealed|place - spark|not|missing|drain|except|core|dropped|glow|fell|out|dumped|front|rear|outer|outside|visible|can_see|could_see|could_get_at|can_reach",
    ),
    "gallery_plug_found_too_deep": (
        "plug|plugs|screws|cups + not_too_deep|@not_mask|@not_cover|right_depth|proper_depth|correct_depth|clear_of_the|short_of_the|flush|@not_block - too_far|drain|spark|dumped",
    ),
    "gallery_plug_in_wrong_passage": (
        "nobody|no_one|nothing|no|none|never|not + plugged|plug|blanked|blocked_off|blanked_off|plugs & ought_to_be_open|should_be_open|supposed_to_be_open|wrong_passage|wrong_hole|wrong_place|meant_to_be_open|should_be_clear - drain|missing",
    ),
    "gallery_seal_found_bad": (
        "o-ring|orings|o-rings|seal|seals|rubber_rings|gaskets + gallery|galley|feed_tube|oil_channel|oil_passage|oilway|transfer|feed_pipe + fine|whole|good|sound|seated|soft|in_place|intact|undamaged|like_new - not|but|one|except|pickup",
    ),
    "all_plugs_accounted_for": (
        "count|counted|counting & plugs|plug|bungs|screws & short|missing|one_less|lost|not_all|adrift|left_over - spark|none_missing|no",
        "plug|plugs|screws|stoppers|cups + one_short|come_up_short|came_up_short|missing_one|one_missing|don't_tally|@not_tally|@not_add_up|@not_all|one_left_over|short_of|@not_accounted - spark|drain|turn|fuel",
    ),
    "gallery_plug_lies_in_sump": (
        "no|nothing|none|not_a|never + plug|cup|plugs|thimble|loose + sump|pan|timing_case|timing_cover|tub|bottom|chest - drain|oil_leak|metal|debris|filter",
    ),
    "oil_streams_from_open_hole": (
        "primed|priming|drill|pumped|prime|pre-oiler|prelube & no_hole|no_holes|nothing|none|not_one|never|no_jet|no_stream & pouring|poured|pours|gushing|gushed|streaming|running_out|squirting|running|jetting|spurting - bearing|rods|pressure|gauge|rocker|main",
    ),
    "oil_wash_at_gallery_seal": (
        "priming|primed|drill|pumped|prime|prelube & gallery_seals|seals|tubes|o-rings|o-ring|cover_gasket|feed_tube|gasket & dry|no_oil_at|no_leak|no_spray|nothing_comes|tight|not_a_drop|@not_leak - bearing|rod|main|one",
    ),
    "one_bearing_gets_no_oil": (
        "primed|priming|drill|pumped|prime|pre-oiler|prelube & every|all|each & main|mains|rod|rods|bearing|bearings|big_ends|journals & dripped|drips|got_oil|flowed|flow|flows|oil|wet|oiled|dribbled|weeps|running - but|except|one|bar|number|dry|not|no|apart",
    ),
    "gallery_wall_weeps": (
        "gallery|galleries|oilway|oilways|casting|gallery_walls|passages & air|dye|pressure_test|pressure-tested|soap|pressurised & no_bubbles|tight|held|nothing|no_leak|sound|no_weep|no_dye|not_a_bubble - but|plug|bled",
    ),
    "crank_feed_seal_reused": (
        "new|renewed|fresh|replaced|brand_new + seal|o-ring|rubber_ring|rubber|oring + crank_end|crank-end|crank's_tip|crankshaft_nose|crank_nose|feed_seal|crank_feed|end-feed|quill|feeds_the_crank|tip_of_the_crank - not|never|didnt|old|rear_main|without|@not|leaks",
    ),
    "crank_feed_seal_bad": (
        "seal|o-ring|rubber|rubber_ring + crank_end|crank's_tip|crankshaft_nose|crank_nose|feeds_the_crank|feed_seal|crank_feed|quill|end-feed + soft|supple|whole|good|fine|right_way|like_new|pliable|sound - not|old|but|hard|back",
    ),
}
