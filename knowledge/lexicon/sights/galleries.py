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
        "seal + crank|crankshaft|quill + feeds|feed|end|fed|quill + re-used|reused|used_again|re_used|old_one_back - new|renewed|rear|front|main",
    ),
    "gallery_plug_found_missing": (
        f"plug|plugs + {_GALLERY}|oil_hole|cross_drilling|lifter|front_of_the_block|behind_the_cam|behind_the_timing|rear_of_the_block + missing|gone|never|@not|left_out|no|forgotten|loose|fell|fallen|popped|blown|out|absent|weeping|dropped|omitted|lying - too_deep|too_far|all|every|none|magnetic|spark|new|glow",
        "forgot|forgotten|@not|left_out|never|missing + plug|plugs|gallery_plug|cup_plug + back|behind|gallery|cam|timing|put|fitted|block|hole - remember|recall|sure|counted|checked|spark|drain|glow|sump_plug|all|every|filler|core|plugs_out|turned|cranked|spun|inlet",
    ),
    "gallery_plug_lies_in_sump": (
        f"plug|cup + {_SUMP}|timing_case|timing_chest|timing_cover|timing_chain_case|front_cover|bottom + lying|found|loose|fished|rolling|laying|sitting|fell|dropped - drain|spark|glow|magnet|magnetic|piston|gudgeon|plug_out_of|wrist",
        "gallery_plug|oil_plug|cup_plug|gallery_cup|gallery_plugs + sitting|lying|found|loose|rolling|in_the + timing_case|sump|pan|timing_cover|front_cover|bottom|case - no|not|new",
    ),
    "gallery_plug_found_too_deep": (
        f"plug|plugs + too_far|too_deep|over-driven|overdriven|deep|in_too + {_GALLERY}|=drilling|feed|hole|passage|covered|masks|masking|blocking|covers|driven|oil|cross - drain|spark|core_plug_out|glow",
    ),
    "gallery_plug_in_wrong_passage": (
        "plug + in_the_hole|wrong_hole|wrong_passage|wrong_place|wrong_gallery|that_feeds|should_be_open|feed_hole|blocking_the_feed - drain|spark|driven|too|deep|far|glow|missing",
    ),
    "gallery_seal_found_bad": (
        f"oring|o-ring|o_ring|seal|gasket + {_GALLERY}|transfer|feed_tube|front_cover|cover_feed|oil_passage|cross_tube|jumper_tube|feed_pipe + nipped|cut|hard|torn|missing|left_out|pinched|flat|blown|perished|split|broken|gone|no|leaking - gauge|turbo|pickup|gushing|crank|rear|front_crank|new|drill",
    ),
    "all_plugs_accounted_for": (
        f"plugs + {_GALLERY}|oil|all|every|each + all|every|accounted|counted + in|present|tight|fitted|there|sealed|good|place|accounted - spark|not|missing|one|drain|except|core|dropped|new|glow|fell|out|dumped|front|rear|outer|outside|visible|can_see|could_see|could_get_at|can_reach",
    ),
    "oil_streams_from_open_hole": (
        f"{_PRIMING} & hole|drilling|empty & =pouring|streaming|stream|gushing|gushed|=jet|fountain|out_of_a|running_out|squirting|=pumping_out - =poured|main|lifter|bearing|distributor|filter|cam_bearing|tensioner|sender",
    ),
    "one_bearing_gets_no_oil": (
        f"{_PRIMING} & main|rod|big_end|bearing & no_oil|dry|nothing|no_sign & except|others|only|rest|all|but|one|number|@number - rocker|cam|pressure",
        "all|every|others|rest + main|mains|rods|bearings|journals + except|but|apart_from + rear|front|one|number|no|@number|third|last & oil|dry|prime|priming|drill - wear|worn|clearance|copper|wiped|thou",
    ),
    "oil_wash_at_gallery_seal": (
        f"{_PRIMING}|inside & gushing|pouring|running|pissing|blowing|=pumping|squirting & past|out_of|from|at & front_cover|gallery_seal|feed_tube|transfer|o_ring|oring|cover_gasket - rod|sender|crank_seal|leak_outside|block_onto",
        "inside|internally|behind_the_cover|behind_the_timing_cover|behind_the_front_cover|into_the_timing_case|into_the_sump + oil + pouring|pissing|dumping|gushing|spraying|leaking|bleeding|=pumping - no|not|rocker|outside|spray_bar|coolant|water|poured|turbo",
    ),
    "gallery_wall_weeps": (
        f"{_GALLERY}|casting|wall|web & air|dye|crack|porous|porosity & bubble|bubbles|bubbling|weep|weeps|seeping|came_through|through|leaking - sump|pump|gasket|tube|pickup|head_gasket|cylinder",
    ),
    "gallery_found_blocked": (
        f"{_GALLERY}|=drilling|oil_hole|oil_passage|feed_hole|oil_holes|oil_passages|oil_feed|cross_drilling + {_BLOCKED}|swarf|debris|grit|dirt|dirty|silicone|sludge|rag|sand|muck|full - no|not|clear|clean|turbo|gauge|sender|drain|return|relief|plug|rocker_oil",
        "gallery|galleries|oilway|oilways|oil_passage|feed_hole|oil_hole + blocked|plugged|full|packed|solid|bunged|choked + crud|sludge|swarf|solid|with|muck|carbon|dirt|completely|up - no|not|cleaned|clear|plug_out|gallery_plug",
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
}
