"""Words that together name a finding of suction, filter, cooler or gallery, in whatever order they stand."""

from __future__ import annotations

_SCREEN = "screen|strainer|gauze|mesh|pickup|pick-up|=pick_=up"
_PIPE = "pipe|tube|pickup|pick-up|=pick_=up|suction"
_SUMP = "sump|pan|oilpan"
_FILTER = "filter|element|cartridge|canister"
_BLOCKED = "blocked|plugged|bunged|clogged|choked|sludged|restricted|obstructed|solid|stopped_up|closed_up|nearly_closed|filled"
_DRILL = "drill|drilling|priming|primed|prime|pre-lube|prelube|pre-oiler|spun|spinning"
_GALLERY = "gallery|galley|galleries|oilway|oilways"
_COLD = "cold|cool|never_warm|never_warms|never_hot|@not_warm|@not_get_warm|@not_get_hot|@not_hot|@not_heat|stone_cold"
TOGETHER_DELIVERY: dict[str, tuple[str, ...]] = {
    "plugs_fitted_by_others": (
        "gallery_plugs|galley_plugs|oil_plugs|crank_plugs|oilway_plugs & builder|machine_shop|engine_shop|machinist|rebuilder|reconditioner|engineers & replaced|refitted|fitted|put_them|renewed|installed|put_those - spark|drain|counted|i_fitted|i_put|i_refitted|myself|checked",
    ),
    "crank_feed_seal_reused": (
        "seal + crank|crankshaft|quill + feeds|feed|end|fed|quill + re-used|reused|used_again|re_used|old_one_back - new|renewed|rear|front|main",
    ),
    "screen_blocked": (
        f"{_SCREEN} + {_BLOCKED}|covered|packed|matted|caked|full_of|half_open|quarter_open|third_open - plug_hole|not|no|@not|clean|wire|fuel|isnt|filter_screen_under|sender",
    ),
    "sludge_on_screen": (
        f"{_SCREEN} + sludge|gunk|tar|jelly|goo|treacle|gunge|black_muck|carbon|crud - no|not|sealer|gasket_goo|red|blue|clean|fuel|silicone",
    ),
    "sealer_on_screen": (
        f"{_SCREEN} & silicone|rtv|sealant|sealer|gasket_goo|instant_gasket|gasket_maker|goop|hylomar|rubber & strings|bits|blobs|worms|lumps|crumbs|full|choked|blocked|clogged|in|covered|plugged|jammed - no|not|hanging",
    ),
    "sealer_in_sump": (
        f"silicone|rtv|sealant|sealer|gasket_goo|gasket_maker|instant_gasket|bead|beads + {_SUMP}|rail|inside|hanging|dangling + hanging|inside|loose|floating|dangling|bits|strings|worms|crumbs|lumps|blobs|shreds - no|not|resealed|sealed|with_silicone|with_rtv|with_sealant|with_sealer|refitted|glass|blast|shot|{_SCREEN}|leak|squeezed_out_outside",
    ),
    "screen_torn": (
        f"{_SCREEN} + hole|torn|ripped|split|holed|perforated|rip|burst|gap - to_pan|to_sump|to_floor|to_the|pan_gap|floor|plug_hole|no|not|pump_hole|block|bolt|braze|pipe|tube|crack",
    ),
    "screen_bypass_open": (f"{_SCREEN} + bypass|by-pass + open|stuck|jammed|sprung|weak",),
    "screen_crushed": (
        f"{_SCREEN} + crushed|flattened|squashed|sucked_flat|caved|imploded|collapsed - oring|gasket|seal|o_ring|pipe_seal",
    ),
    "cloth_on_screen": (
        f"{_SCREEN}|suction|inlet + rag|cloth|towel|paper|tissue|sock|lint - no|not|lost|gasket_paper|filter_paper",
    ),
    "plastic_on_screen": (
        f"{_SCREEN}|{_SUMP} + plastic|nylon|timing_gear_teeth|guide|fibre_teeth|cam_gear - hard|brittle|no|not|bag|plastic_pan|plastic_sump|oil_line",
    ),
    "metal_in_screen": (
        f"{_SCREEN} + metal|swarf|filings|flakes|shavings|slivers|glitter|bronze|brass|aluminium|aluminum - no|not|clean|free|hole",
    ),
    "varnish_on_screen": (
        f"{_SCREEN} + varnish|varnished|lacquer|lacquered|brown_film|brown_coating|amber_film",
    ),
    "foreign_material_on_screen": (
        f"{_SCREEN} + foreign|leaves|feathers|debris|rubbish|trash|junk|stuff|insulation|foam|sponge|cork - no|not|clean|sludge|metal",
    ),
    "paste_on_screen": (
        f"{_SCREEN} + grease|vaseline|jelly|assembly_lube|assembly_paste|lube - black|no|not|pump_packed",
    ),
    "gasket_on_screen": (
        f"{_SCREEN} + gasket|cork|fibre|paper + bits|shreds|pieces|strips|material|scraps|full|blocked|covered|choked - no|not|goo|maker|seal|o_ring|silicone|new|between|fitted",
    ),
    "pickup_tube_rocks": (
        f"{_PIPE} + waggle|wiggle|wobble|wobbles|rock|rocks|turns|rotates|loose|rattles|move_by_hand|twist|swivels - steady|solid|no|not|bolt|bolts|bracket|hose|oring|gauge|needle|wire|solid|fell|gear|distributor|engine|over|by_hand|cranked|cooler",
    ),
    "pickup_fixing_loose": (
        "pickup|pick-up|strainer|=pick_=up + bolt|bolts|bracket|stay|brace|strap|nut|clamp|screw + loose|missing|gone|cracked|broken|snapped|slack|undone|sheared|backed|fallen|finger - no|not|pump_bolts",
    ),
    "pickup_tube_crack_seen": (
        f"{_PIPE} + crack|cracked|pinhole|hairline|split|fractured|hole|=braze|=weld|=solder - bracket|stay_cracked|brace|tack|plug_hole|centre_tube|no|not|any|mesh|gauze|strainer_screen|o_ring|oring|gasket|fresh_weld|bolt|rod",
    ),
    "pickup_bent": (
        f"{_PIPE} + bent|twisted|kinked|out_of_line|cocked|crooked - no|not|bolt|gauge|hose",
    ),
    "pickup_fell_off": (
        f"{_PIPE}|strainer + fell|fallen|dropped|came|come|lying|laying|parted|dropped_off|dropped_out + off|out|bottom|{_SUMP}|floor|loose|away - gauge|pressure|oil_came|bits|pieces|o_ring|oring|cleaned|pulled|we_dropped|i_dropped|filings|debris|silicone",
    ),
    "pickup_witness_mark": (
        f"{_SCREEN}|{_SUMP} + shiny|ring|mark|marks|rubbed|polished|imprint|witness|print + touching|touched|hit|where|floor|bottom|{_SUMP}|{_SCREEN} - dent|pulley|gasket|oil_ring|piston|jack",
    ),
    "pickup_gap_too_small": (
        f"{_SCREEN} + =touching_the|hard_against|tight_against|no_gap|no_clearance|too_close|sitting_on|resting_on|paper_thin|pressed_against|on_the_bottom|on_the_floor - no_cracks|fell|lying|not",
    ),
    "pickup_gap_too_large": (
        f"{_SCREEN} + too_high|too_far|too_short|high_off|way_off|miles_off|long_way + bottom|floor|{_SUMP}|up|off|from - not",
        f"{_SCREEN} + too_high|too_short|@not_extended|@not_lengthened - not|but",
    ),
    "baffle_missing_or_loose": (
        "baffle|trap_door|trapdoor|trap-door|baffles|flap_door|gate + jammed|stuck|missing|loose|broken|bent|gone|left_out|cracked|off|backwards|wrong|fell|fallen|detached - cooling|cooler|cowl|air|no_dents|engine_baffle|inter-cylinder",
    ),
    "tray_broken_or_missing": (
        "windage|tray|scraper + split|cracked|broken|missing|loose|left_out|off|gone|fractured - drip|battery|drain|catch|rubbed|clipped|baking|sand",
    ),
    "tray_rubbed": (
        "tray|windage|scraper + rods|crank|counterweight|counterweights|rod|throws + clip|clipped|clipping|hit|hitting|rub|rubbing|rubbed|touch|touching|caught|marks|polished",
    ),
    "returns_blocked": (
        "drain|drainback|drain-back|return|returns + hole|holes|passage|passages|slots|galleries|oil + bunged|blocked|plugged|clogged|choked|sludged|solid|covered - plug_hole|plug_out|relief|cooler|not|no|fuel|screen|scavenge",
    ),
    "oil_slow_to_return": (
        "oil + stays_up|stays_in_the_head|held_up|hangs_up|trapped_upstairs|pools_in|all_in_the_rocker|stays_up_top|up_in_the_heads|slow_to_drain|slow_to_return|takes_ages_to_drain",
    ),
    "oil_valve_found_shut": (
        "tap|valve|cock|stopcock|isolator + oil|tank + shut|closed|off|forgot|turned_off - relief|bypass|stuck|fuel|water|exhaust|inlet|pcv|drain|check|sea|rocker|shut_off",
    ),
    "suction_union_loose": (
        "suction|inlet|feed|tank + clip|clamp|union|nut|fitting|hose|joint + loose|slack|off|undone|finger|slid|slides|popped - gauge|turbo|fuel|filter|sender|delivery|rocker|cooler_outlet",
    ),
    "suction_hose_flattens": (
        "hose|pipe|line & suction|tank|inlet|feed|pickup & sucking_shut|sucked_shut|sucked_flat|sucking_flat|gone_soft",
        "hose|pipe|line + suction|tank|inlet|feed + flat|collapses|collapsed|sucked|soft|caves|closes|kinked|pinches|flattens - gauge|turbo|fuel|radiator|brake",
    ),
    "suction_seal_cut_or_missing": (
        "oring|o-ring|o_ring|gasket|seal|joint + pickup|pick-up|=pick_=up|suction|inlet_pipe|strainer + pinched|cut|torn|missing|perished|hard|hanging|flat|split|nipped|left_out|no|without|twisted|nicked|shrunk|brittle|squashed|forgotten|cracked|wrong|gone - new|fitted_a|good",
    ),
    "sump_dented": (
        f"{_SUMP} + dent|dented|pushed_up|pushed_in|bashed|stoved|caved|flattened|dinged|creased - no|not|any|screen_dented|without",
    ),
    "overfill_steadies_it": (
        "extra|over|above|overfilled|overfilling + quart|litre|liter|pint|half_a|mark|full & held|steady|steadied|cured|pressure_is_back|no_drop|stays_up|comes_right|fine|flicker_gone|better",
    ),
    "oil_trapped_in_sump": (
        f"oil + trapped|held|stays|sits|pooled|stuck + front|rear|end|corner|wing|behind|away + {_SUMP}|baffle|pickup|front|rear - head|rocker|valley",
    ),
    "metal_past_the_screen": (
        f"metal|debris|swarf|bits|filings + past|beyond|inside|downstream|pump_side|wrong_side + {_SCREEN}",
    ),
    "water_in_sump": (
        f"water|coolant|antifreeze + {_SUMP} + bottom|lying|pool|litre|puddle|settled|standing|full|under - no|not|pump|jacket|sample|any|bag|outside|leak|drawn",
    ),
    "filter_stays_cold": (
        f"filter + {_COLD}|never_gets_warm - start|cold_oil|weather|day|air|morning|pressure|psi|gauge|@pressure|blew|burst",
    ),
    "cooler_stays_cold": (
        f"cooler|cooler_line|cooler_lines|return_line + {_COLD} - start|weather|air|day|water|morning|oil_is_cold|inter-cooler|intercooler",
    ),
    "filter_drop_high": (
        "filter & before|ahead|upstream|inlet|pump_side|in_side & after|behind|downstream|outlet|gallery_side|out_side & @number|@pressure|drop|difference - changed|miles|since|month|years|ago|was_changed",
        "filter + drop|difference|differential + across|over + psi|@pressure|high|bar",
    ),
    "filter_empty_after_standing": (
        "filter & dry|empty|drained|hardly_any_oil|no_oil & morning|overnight|standing|sitting|parked|stood|inside|unscrewed|spun_off|night - block|leak|crank|cranked|cranking",
    ),
    "anti_drainback_hard": (
        "flap|valve|rubber|diaphragm + filter|drainback|drain-back|drain_back|non-return|nonreturn|anti-drain|antidrain|check + cardboard|hard|stiff|torn|perished|brittle|plastic|missing|split|curled|shrunk|cracked|gone - relief|bypass|pcv|breather|ring|seal_stuck",
    ),
    "filter_collapsed": (
        f"{_FILTER} + collapsed|crushed|imploded|caved|torn|ripped|core_crushed|squashed|concertina|folded - anti|valve|flap|open|cut|apart|i_tore|gasket|seal|ring",
    ),
    "filter_bypass_stuck_open": (
        "bypass|by-pass + open|off_its_seat|hung + jammed|stuck|jam|propped|held|seized|hung|open - relief|screen|cooler_hose|not|shut|closed|cured|freed",
    ),
    "filter_bypass_stuck_shut": (
        "bypass|by-pass + shut|closed|@not_open + jammed|stuck|seized|held|rusted|@not_open - relief|screen|open_ok",
    ),
    "bypass_valve_misfitted": (
        "bypass|by-pass + wrong|backwards|upside|reversed|wrong_side|wrong_way|left_out|misassembled",
    ),
    "filter_not_listed": (
        "filter|can|cartridge + wrong|@not_list|@not_listed|@not_right|isnt_one|for_another|for_a_different|not_the_right|not_the_one|cheap_copy|no-name|off_a|too_short|too_small|wrong_one - gave|sold|sent|ordered|gasket|bypass|relief|valve|screen|pump|stuck|thread|way",
        "part_number|number + filter|can + @not|wrong|different|isnt",
    ),
    "filter_packed": (
        f"{_FILTER}|pleat|pleats + gunge|gunk|sludge|black_muck|packed|solid|clogged|choked|blocked|caked|=plugged|tar|full_of|stuffed - no|not|clean|screen|pickup|sender|fuel|air|sump|gauze",
    ),
    "adapter_gasket_displaced": (
        "filter_head|filter_mount|filter_block + gasket|seal|o_ring|oring + split|torn|blown|cracked|perished|leaking|leaks - pump|cylinder",
        "adapter|adaptor|sandwich|base_plate|mounting_plate|filter_base|filter_housing + gasket|seal|o_ring|oring|ring + slipped|displaced|out_of|moved|broken|pinched|rolled|popped|torn|crooked|hanging|split - pump",
    ),
    "filter_misfitted": (
        "two|double|second|old|previous|cross + gasket|gaskets|seal|rubber|ring|o_ring|thread|threaded + filter|stuck|left|head|housing|mount - came_off|came_with|came_away|made_sure|pump|cover|rocker|sump_gasket|pan_gasket",
    ),
    "filter_seat_leaks": (
        "filter + leak|leaking|weeping|dripping|wet|squirting|spraying|pouring|gushing|running + seat|seal|base|gasket|round|around|joint|ring|housing|head|mount|adapter|rim - no|not|dry|fuel|cut|relief",
    ),
    "filter_burst": (
        "filter|spin-on|canister + let_go|=blew|=burst|exploded|ruptured|blew_off|blown_off|blew_apart|forced_out|split_open - bypass|fuel|air|sump|gasket_of|seal_of|blew_out|pump|dust",
        "filter + burst|split|blew|blown|popped|exploded|ruptured|let_go + seal|gasket|can|seam|off|open|itself|its|apart|ring|side - not|no|blew_out|cut|pump",
    ),
    "filter_found_loose": (
        "filter + loose|finger|slack|unscrewed|@not_tight|hand|spun_off + turn|by_hand|loose|tight|half|itself|rattling|vibrated|worked - no|element_off|fuel|isnt_loose",
    ),
    "gallery_plug_found_missing": (
        f"plug|plugs + {_GALLERY}|oil_hole|cross_drilling|lifter|front_of_the_block|behind_the_cam|behind_the_timing|rear_of_the_block + missing|gone|never|@not|left_out|no|forgotten|loose|fell|fallen|popped|blown|out|absent|weeping|dropped|omitted|lying - too_deep|too_far|all|every|none|magnetic|spark|new|glow",
    ),
    "gallery_plug_lies_in_sump": (
        f"plug|cup + {_SUMP}|timing_case|timing_chest|timing_cover|timing_chain_case|front_cover|bottom + lying|found|loose|fished|rolling|laying|sitting|fell|dropped - drain|spark|glow|magnet|magnetic|piston|gudgeon|plug_out_of|wrist",
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
        f"{_DRILL} & hole|drilling|empty & =pouring|streaming|stream|gushing|gushed|=jet|fountain|out_of_a|running_out|squirting|=pumping_out - =poured|main|lifter|bearing|distributor|filter|cam_bearing|tensioner|sender",
    ),
    "one_bearing_gets_no_oil": (
        f"{_DRILL} & main|rod|big_end|bearing & no_oil|dry|nothing|no_sign & except|others|only|rest|all|but|one|number|@number - rocker|cam|pressure",
    ),
    "oil_wash_at_gallery_seal": (
        f"{_DRILL}|inside & gushing|pouring|running|pissing|blowing|=pumping|squirting & past|out_of|from|at & front_cover|gallery_seal|feed_tube|transfer|o_ring|oring|cover_gasket - rod|sender|crank_seal|leak_outside|block_onto",
    ),
    "gallery_wall_weeps": (
        f"{_GALLERY}|casting|wall|web & air|dye|crack|porous|porosity & bubble|bubbles|bubbling|weep|weeps|seeping|came_through|through|leaking - sump|pump|gasket|tube|pickup|head_gasket|cylinder",
    ),
    "gallery_found_blocked": (
        f"{_GALLERY}|=drilling|oil_hole|oil_passage|feed_hole|oil_holes|oil_passages|oil_feed|cross_drilling + {_BLOCKED}|swarf|debris|grit|dirt|dirty|silicone|sludge|rag|sand|muck|full - no|not|clear|clean|turbo|gauge|sender|drain|return|relief|plug|rocker_oil",
    ),
    "cooler_found_blocked": (
        "cooler + blocked|plugged|clogged|choked|delaminated|closed|kinked|flattened|solid|restricted|collapsed|bunged|full_of|silted|furred - fins|outside|air|face|dirt|chaff|mud|radiator|no|not|water_side|ok|bypass",
    ),
    "oil_fed_device_failed_first": (
        "governor|phaser|tensioner|clutch|vvt|vanos|gearbox|propeller|prop|variator + hunting|hunt|surging|slipping|slip|went|stopped|failed|erratic|surged|overspeed|fine_pitch & pressure|same_time|same_moment|before - rebuilt|new|fitted|rattle|installed|disturbed|seal|floods|slack",
    ),
    "filter_bypass_witness": (
        "dirt|metal|debris|grit|glitter + clean_side|inside_the_core|downstream_side|centre_tube|wrong_side + filter|element|core|bypass|of",
    ),
    "remote_hoses_crossed": (
        "hose|hoses|lines|pipes + crossed|swapped|reversed|back_to_front|wrong_way|wrong_ports|mixed_up|round_the_wrong|backwards + remote|filter|cooler|were|kit|fitted|had|on - turned|cranked|by_hand|rotor|radiator|plunger|fuel|heater",
    ),
    "gasket_shreds_found": (
        f"gasket|paper|fibre|cork + shreds|bits|pieces|scraps|strips|fibres + filter|{_SUMP}|element - pickup|strainer|screen|no|not|goo",
    ),
}
TOGETHER_DELIVERY_ABSENT: dict[str, tuple[str, ...]] = {
    "screen_blocked": (
        f"{_SCREEN} + =clean|=clear|spotless|unobstructed|like_new|@not_blocked|nothing_in|nothing_on|no_debris|spotlessly|free_of - half|cleaned|to_clean",
    ),
    "metal_in_pan": (
        f"{_SUMP} + clean|spotless|no_metal|no_glitter|no_shavings|nothing_in|@not_metal|no_filings|no_swarf - cleaned|outside|to_clean|clean_the|dry",
    ),
    "metal_in_filter": (
        "filter|element|cartridge + clean|no_metal|no_glitter|no_shavings|nothing_in|spotless|no_flakes|@not_metal|no_filings|no_swarf|nothing_unusual|free_of_metal - cleaned|air|fuel|new_clean|clean_side|to_clean",
    ),
    "gallery_found_blocked": (
        f"{_GALLERY}|oil_holes|oil_passages|=drillings|passages + =clear|=clean|unobstructed|blew_through|free - to_clean|plugs_out|not|no_oil|cleaned|i_cleaned|relief|drain|return|crankcase_vent",
    ),
    "gallery_plug_found_missing": (
        "plugs + all|every|each + in|present|tight|fitted|there|sealed|place - spark|not|missing|drain|except|core|dropped|glow|fell|out|dumped|front|rear|outer|outside|visible|can_see|could_see|could_get_at|can_reach",
    ),
}
