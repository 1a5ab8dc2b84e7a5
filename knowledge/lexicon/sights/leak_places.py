"""Words for oil that leaves the engine at a place that is named."""

from __future__ import annotations

from knowledge.lexicon.words.names import (
    ACCESSORIES,
    BREATHER,
    FILTER,
    OIL_PIPES,
    SENDERS,
    STICK,
    SUMP_BOLT,
)

_HOSE = "hose|hoses|pipe|line|flexi|flexy|flexible|union"
_DRAIN_PLUG = "drain_plug|sump_plug|drain_cock|drain_tap|drain_valve"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "filter_found_loose": (
        "loose oil? filter",
        "filter had|has? fallen|come|spun|worked|dropped|vibrated|unscrewed|fell|came off|loose|free|itself|undone",
        "filter .. only|just|barely|still|not|merely finger|hand tight",
        "filter .. finger|hand tight only|still",
        "oil? filter @not tightened|tight|done",
        "oil? filter is|was|found|came|had|not|only|hand|finger|worked|hanging|been|almost? loose|slack|undone|unscrewed",
        "filter could|can be turned|moved|spun|undone by|with hand|finger|fingers",
        "filter only|just|merely hand|finger tight",
        "filter is|was|had|has|just|completely|simply? gone|missing|absent",
        "filter .. shot|flew|dropped|fell off|right",
        "filter has|had|was? vibrated|unwound|backed|undone|unscrewed loose|itself|off|out",
    ),
    "drain_plug_found_loose": (
        "drain|sump plug|valve|cock|tap was|is|had|has|found|body|of|came|come|only|not|missing|dropped|fallen|left|hand|"
        "finger? come|fallen|dropped|vibrated|fell|been|was|left|hand|finger|not? loose|gone|missing|out|off|open|slack|"
        "tight|leaking|dripping|weeping|weeps|drips",
        "loose|missing|leaking|dripping|weeping|stripped drain|sump plug",
        "lost|forgot|stripped|without .. drain|sump plug",
        "drip|leak|oil|drips|leaks|dripping|leaking|weep from|at|round|around|coming|out|past from|of|out|the? the? drain|"
        "sump plug|valve|cock",
        "body of the? drain valve|plug gone",
        "no drain|sump plug in|fitted|at",
        "quick-drain|quickdrain|drain|drain-valve .. open|opened|leaking|unlatched",
        "@not tightened|tighten|done the|my? drain|sump|oil? plug",
        "forgot|forgotten to tighten|do the? drain|sump plug",
        "plug had|has|was? fallen|come|dropped|worked|out|loose out|loose? of|in? the? sump|pan",
        "drain plug|valve|cock|tap .. missing|open|loose|gone|off",
        "drain|sump plug fell|dropped|fallen|came|come|worked|vibrated|blew|backed out|off|undone|loose|itself",
    ),
    "dipstick_pushed_out": (
        "dipstick .. blown|popped|pushed|blew|pops|pushes|pushing|spat|shot|blows out|up|off?",
        "blew|pushed|pushes|popped|blows|spat .. dipstick",
        "oil out|up|from of|the? the? dipstick tube|hole",
    ),
    "filler_cap_found_off": (
        "oil? filler cap|lid|neck|o-ring|seal? was|had|been|is|not|found? off|missing|left|gone|loose|open|unlatched|"
        "unseated|out",
        "oil cap|lid was|had|been|is|not? off|missing|left|gone|loose|on|seated",
        "dipstick|dip-stick was|is|had|been|found|not|came? missing|unlatched|unseated|loose|gone|off",
        "dipstick|dip-stick was|had|been? been? =left out|off|loose|up|half|unlatched",
        "cap|lid|dipstick @not seated|secured|latched|tightened|refitted|screwed|fitted|on|properly|fully|replaced",
        "forgot|left|lost|leaving|forgotten .. oil? filler? cap|lid|dipstick off|out|on?",
        "no oil? filler cap",
        "split|damaged|missing|perished|bad|torn o-ring|seal|gasket on|of|at the? oil? filler? cap|filler",
        "filler|oil cap|lid sitting|lying|left|was|found on|in .. battery|bench|engine|rocker|shelf|bay|wing|manifold",
        "filler|oil cap|lid .. not .. fitted|secured|seated|tight|on|refitted|replaced",
        "dipstick was|is|left|found|half|hanging|sitting? out|unseated|hanging",
        "dipstick @not pushed|pushed|been|seated|fully|right home|in|down|pushed|seated home|in|down?",
    ),
    "breather_found_blocked": (
        "breather|pcv|vent|breathers .. blocked|clogged|plugged|frozen|iced|choked|bunged|kinked|restricted|stuck",
        "blocked|clogged|plugged|frozen|iced|kinked|stuck crankcase? breather|pcv|vent valve|hose?",
        "breather|vent|breathers iced|froze|frozen up|over|solid?",
    ),
    "oil_hoses_aged": (
        "hose|hoses is|are|were|was|over|nearly? .. @years old",
        "hose|hoses .. perished|hardened|aged|rotten|brittle",
        "old|perished|aged|hardened|ageing|original|cracked|rotten oil hose|hoses|lines",
        "perished|hardened|rotten hose|hoses",
    ),
    "oil_line_found_broken": (
        f"split|hole|crack|crack|pinhole|burst|tear|rub-hole in the|a|my|one? oil? {_HOSE} to|from|of|for the? remote? oil? filter|cooler|turbo|gauge|head",
        f"split|hole|crack|pinhole|burst|tear in the|a|my|one? oil {_HOSE}",
        f"{_HOSE} to|from|of|for the? remote? oil? filter|cooler|turbo had|has|was|is|got|had-a? split|burst|chafed|cracked|popped|let-go|blown|perished",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "filter_found_loose": (
        "filter + loose|finger|slack|unscrewed|@not_tight|hand|spun_off + turn|by_hand|loose|tight|half|itself|rattling|vibrated|worked - no|element_off|fuel|isnt_loose",
        "filter + spun_off|unwound|unscrewed_itself|come_unscrewed|spun_itself|unscrewing_itself - air|fuel|i_spun",
        "filter + spin|turn|undo|unscrew|loose + by_hand|hand|fingers|was_loose|came_loose|working_loose|never_tightened|@not_tightened|@not_been_tightened|easily - tight|oil_tight|air|i_could_not|couldnt|screen|hand_tight_and_no|fuel",
        f"{FILTER} & hanging_by_a_thread|cocked|two_fingers|crooked|wobbled|finger_tight|half_unscrewed|not_snug|spin_by_hand|turned_by_hand|undid_by_hand|turn_by_hand|with_my_fingers|rattling - fuel|relief|valve|air|@not_budge|tank|screen|tight_on",
        "the_can|that_can|screw-on_can|canister + off|loose|hanging|cocked|crooked & fingers|seat|thread|hand|gasket - paint|holed",
    ),
    "filler_cap_found_off": (
        "filler|filler_cap|oil_cap|oil_filler_cap|dipstick + left|off|forgotten|missing|sitting|not_on|loose|never_put|unseated|not_pushed|@not_replaced|not_back - nothing|low|oil_left|left_on|fell_off|gone|comes|bearing|relief|popped|blew|distributor|rotor|dry|main|radiator|smoke|stick_is_off|runs_off|marks",
        "cap|filler|oil_cap|oil_filler|filler_cap|dipstick + left_off|missing|not_refitted|@not_refitted|@not_secured|@not_seated|@not_on|lying_under|open|@not_replaced|not_fitted|unsecured|forgotten|found_lying - ball|plunger|piston|spring|radiator|main|rod|bearing|relief|"
        "distributor|rotor|valve|fuel|read|water|dust|screws|drain|cover|petrol|reading|@not_on_the_dipstick|runs|dropped|marks|oil_on|wiped|dry|popped|blew|blown|gearbox|hub|take|took|taking|lift|lifted|remove|removed|undo|open_it|with_the|look_in|looked|swimming|puffing|smoke",
        "cap + sitting_on|left_on_top|lying_on|found_on|was_on_the + battery|engine|wing|airbox|air_cleaner|slam_panel|bench|manifold|rocker - radiator|distributor|bearing|relief|valve_cap|tight",
        "dipstick|stick|filler|oil_cap + @not_pushed|@not_home|@not_seated|@not_screwed|not_fully_home|not_pushed|half_out|hanging_out|loose - level|nothing",
        "fill_lid|filler|filler_lid|cover_for_fill|oil_cap|filler_cap|fill_cap|oil_lid|pour_oil_in|lid_you_take & lying_on|sitting_there_loose|loose|not_on_his|off|missing|gone|left_off|lay_on|not_on|never_put - radiator|comes_off|took|remove|cream|mayonnaise|smell|scent|whiff|underside|pull|look|blow|tight|tank|water",
    ),
    "dipstick_pushed_out": (
        "dipstick + popped|pushed|blown|blew|spat|jumped|out_of_its_tube|out_of_the_tube|shot|lifted|rose - cap|filler|pulled",
        f"{STICK} + jump_out|jumped_out|jumps_out|ejected|popped_up|pushed_up|shot_out|clean_out|lifted|spat_out|blew|kicked_out|risen_out|flew_out - i_pulled|level_rose|cap|oil_rose|seated|@not|head_lifted",
    ),
    "filter_can_holed": (
        "filter|can + =punctured|=rusted|rubbed_through|=pierced|=holed|hole_in_the_side|stone_through|hole_in_it|hole_in_the_filter - screen|hose|bypass|cut_a_hole|no|not|collapsed|gasket",
        f"{FILTER} & shell|through|rusty|wall|side & squirting_through|chafed_through|punctured|rusted_through|holed|pinhole|worn_through|pierced|rubbed_through|screwdriver|squirting - tight|no|not|whole|screen|cut_open|oil_in|filter_hole|squirted_oil|poured",
    ),
    "oil_line_found_broken": (
        "oil_line|oil_lines|oil_hose|oil_pipe|cooler_hose|cooler_line|cooler_pipe|feed_pipe|hose_to_the_filter|braided_hose|filter_hose|cooler_hoses + burst|split|chafed|broken|off|popped|cracked|let_go|rubbed_through|fractured|came_off|worn_through|blew|blown|perished|failed|parted|snapped - gauge|no|not|turbo|weeping|fuel|capillary|inside|new|through|blew_out|compressor|airline",
        f"{OIL_PIPES} & popped_off|hang_free|hanging_free|let_go|broken|snapped|parted|off_its_end|fractured|severed|by_vibration - no|not|@not|gauge|turbo|pickup|whole|sound|thermostat|perforated|core",
    ),
    "drain_plug_found_loose": (
        "sump_plug|drain_plug|plug + sump|drain|pan + loose|missing|gone|fell|fallen|dropped|vibrated|left_loose|finger|unscrewed|backed|not_tight|weeping|dripping|out - gallery|core|welch|oil_hole|cup|pulled|magnet|spark|i_pulled|when_i|drained|fur|tight|before_the_oil|water|lying|cross|end_of|galley",
        "left|forgot|forgotten + plug|drain_plug|sump_plug + loose|tighten|nip|undone|finger|out - gallery|spark|core|magnet|oilway|days|hours|overnight|drained|refitting",
        "plug|drain_plug|sump_plug|bung + vibrated|worked_loose|rattled|dropped|fell|came + out|loose|off|road|sump - gallery|relief|spark|sender|connector|filter|core|glow|wire|freeze|cam|timing|welch|plug_lead|sensor",
        "plug|=drain|bung + finger_tight|loose|hand_tight|undone|backed_out|gone|fell|dropped|vibrated + sump|drain|pan|bottom - gallery|relief|spark|filter|sender|pickup|core|glow|wire|connector|switch|plunger",
        f"{_DRAIN_PLUG} + road|missing|gone|open|half_open|lost|fell|undone|dripping|cracked_open - took|removed|new|opened|fitted|drained|fully|clean",
        "no|missing|without + plug|bung & drain|sump|hole - gallery|spark|glow|core|welch|crank|head",
        f"{SUMP_BOLT} & finger_tight|never_snugged|spun_right_out|was_lost|fell_out|gone|missing|hand_tight|not_tightened|@not_tightened|dropped_out|vibrated|loose|stripped|lost - too_long|wrong|right_one|tight_and|slackened",
        "bolt|screw|plug & bottom|oil_change|lube_place|let_the_oil_out|change_oil|quick-lube & finger_tight|never_snugged|spun_right_out|was_lost|fell_out|hand_tight|@not_tightened|worked_loose - too_long|wrong|bearing|rod|cap|cover|head",
    ),
    "accessory_port_uncovered": (
        "gasket|seal + open|uncovered|exposed|bigger_than|@not_cover + accessory|governor|vacuum_pump|magneto|injection_pump|compressor|hydraulic_pump + port|hole|oil_hole|feed",
        f"{ACCESSORIES}|blanking_plate & gasket|gaskit|paper|joint|paper_thing & oil_hole|oil_passage|feed_hole|oil_port|oilway|oil_way & open|missed|uncovered|outside|no_material|left|@not_cover|wrong|exposed - covers|closes|every",
    ),
    "drain_valve_wrong": (
        "drain_plug|drain_valve|sump_plug|quick_drain + wrong|too_long|different|incorrect - loose|missing|tight|leak",
        f"{SUMP_BOLT} & not_original|too_long|isnt_the_proper|not_the_proper|other_engine|@not_belong|not_the_right|@not_right|wrong|goes_too_far|wrong_thread|not_right_thread|longer_than|@not_the_proper - loose|correct|filter|found_gone",
        "bolt|screw & bottom|let_oil_out|let_the_oil_out & other_engine|some_other|@not_belong|too_long|not_original|wrong|@not_the_proper - loose|correct|bearing|head|cap",
    ),
    "breather_misrouted": (
        "breather|pcv|crankcase_vent|breather_hose|breather_pipe + wrong|misrouted|swapped|connected_to|plumbed|teed|run_to|routed - blocked|clogged|clean|new",
        f"{BREATHER} & wrong_connection|wrong_place|wrong_port|wrong_hole|pressure_rather|where_it_gets_pressure|misrouted|swapped|connected_to_the_wrong|plumbed_into_the_wrong|going_to_wrong|wrongly|teed_into_the - blocked|right|correct",
    ),
    "rocker_cover_loose": (
        "rocker_cover|valve_cover|cam_cover|tappet_cover + loose|bolts_missing|missing_bolts|screws_missing|undone|@not_tight|hand_tight|bolts_loose - gasket_torn|no|clean",
        "rocker_box|top_cover|rocker_cover|valve_cover|cam_cover|tappet_cover|rocker_boxes|valve_covers|rocker_lid & bolts|screws|nuts|bolt|screw & gone|missing|loose|finger|undone|not_tight|left_out|half_the - all_there|no|nipped|tight_and|gasket|took|removed|lifted|tray|i_undid",
    ),
    "drops_fall_while_watched": (
        "drip|drop|drops|bead|beads|driping & watched|wiped|dried|i_look|one_after_another|torch|watching|see_it|before_my_eyes|as_i_lay|i_clean & falls|fall|fell|dropped|grew|come|driping|drip|forms - no|nothing|not|@not|never|pressure",
    ),
    "oil_line_fitting_wet": (
        f"nut|union|unions|fitting|fittings|banjo|connection|screw|coupling|screws_into|olive & {OIL_PIPES} & damp|wet|leaking|lose|loose|not_tight|weeping|drips|dripping|leaks|seeping - no|gauge|dry|turbo|{SENDERS}|remote",
    ),
    "breather_found_blocked": (
        f"{BREATHER} & closed|blocked|no_blow|bunged|choked|clogged|kinked|frozen|plugged|@not_blow|squashed|collapsed|full_of_ice|stopped_up|iced - wrong|not_blocked|no_blockage|freely|clear",
    ),
    "oil_hoses_aged": (
        "oil_tubes|oil_hoses|oil_hose|oil_pipes|rubber_oil|flexible_oil|rubber_of_oil|cooler_hoses & perished|crazed|=hard|cracks|cords|rubbed|brittle|cracked|stiff|ageing|old_and|gone_hard - no|new|supple|fuel|coolant|gauge|heater",
    ),
    "seal_found_pushed_out": (
        "seal + walked|pushed|popped|blown|spat|come|out + out|cover|bore|place|seat - weep|no|not|leak|pump|valve_stem|filter|sender|gasket|off",
        "seal|rubber_ring|lip_seal|shaft_seal & forced_out|half_out|pressed_outside|popped_out|walked_out|spat_out|blown_out|hanging_out|out_of_its_hole|out_of_its_bore|standing_proud|out_of_its_seat|pushed_out - no|not|flush|piston|o-ring|valve_stem|@not|filter",
    ),
    "accessory_pad_wet": (
        "fuel_pump|lift_pump|vacuum_pump|tach_drive|mechanical_fuel|magneto|governor|power_steering_pump|hydraulic_pump|blanking_plate|compressor + leak|leaks|leaking|drips|weeping|wet|oil|dripping|weeps + joint|gasket|pad|base|block|mounting|face|flange|seal|around - no|not|fuel_in|diaphragm|dry|new",
        "oil|leak|leaks|wet|weeps|runs|drips|leaking + pad|pad_joint|accessory_joint|accessory_case|governor|governor_joint|blanking_plate|vacuum_pump|magneto_flange|back_pad - "
        "no|not|filter_pad|brake|level|engine_pad|sprayed_from_the_pump|dry",
        "runs|leaks|weeps|drips & from_that_joint|out_of_that_joint|that_end|that_joint|that_flange & pad|accessory|governor|vacuum_pump|magneto|blanking - no|not",
        f"{ACCESSORIES} & joint|flange|mounting_face|mates|pad|mounting|base|behind|bolts_to|bolts_on|face|drive_flange & oil|wet|leaking|drips|weeping|runs|oozing|seeping|leaks - no|not|dry|@not|port|uncovered|hole|diaphragm|fuel_leak|water_leak",
        f"{ACCESSORIES} & mounting_face|timing_case|joint|flange|mounts & wet_through|soaked|streaming|wet - no|not|dry|@not|hole|water_pump_weep",
    ),
    "cup_plug_found_out": (
        "core_plug|core_plugs|welch_plug|frost_plug|freeze_plug|cup_plug|soft_plug|expansion_plug|blanking_plug + out|blew|blown|popped|missing|fell|gone|leaking|dropped|pushed|shot|rotted - no|not|new|replaced",
        "metal_disc|round_disc|tin_disc|round_plate|steel_cup|dished_plug|round_cover|gallery_end_plug|end_plug|brass_plug|round_metal & block|oil & popped|missing|gone|off|out|pushed|fell|blown|discharging|blew|rusted|rotted - new|no|not|in_place|water|inside",
    ),
    "sump_found_holed": (
        "sump|pan|oil_pan|casing|crankcase|gearbox_casing + hole|holed|cracked|rusted_through|rotted|split|punctured|rust_hole|crack - pickup|screen|no|not|bolt_hole|core|plug_hole|dent|rod",
        "bottom_tin|oil_pan|sump|crankcase|casting|bottom_of_the_engine & rust_hole|split|hole|cracked|holed|gash|punctured|rust|crack & through|along|pencil|finger|oil_coming|weeping|rock|stone - no|not|drain|pickup|rod|filter|screen|cylinder|head|@not|antifreeze|cover",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "filter_found_loose": (
        "filter + tight|done_up|secure|firmly|torqued - not|@not|loose|hand|finger|never",
        f"{FILTER} & @not_budge|on_hard|rock_solid|wouldnt_budge|on_tight|good_and_tight|properly_tight|torqued_up|snug - leaks|wet|loose|stuck",
    ),
    "drain_plug_found_loose": (
        "drain_plug|sump_plug|plug + tight|secure|dry|wired|done_up - crank|end_plugs|core_plugs|blower|ran|fell|not|@not|loose|hand|finger|never|gallery|core|spark|found|sender|wire|connector|switch|earth|lead",
        f"{SUMP_BOLT} & tight_and_dry|snug|nipped_up|torqued|done_up_tight|tight|dry - not|@not|loose|wrong|finger|ran|water",
    ),
    "accessory_pad_wet": (
        f"{ACCESSORIES}|accessory|accessories & joint|flange|pad|pads|mounting|base|face & dry|no_oil|no_leak - not_dry|but|wet",
    ),
    "seal_found_pushed_out": (
        "seal|seals & flush|fully_home|in_its_seat|in_their_seats|fully_seated|square|right_in - not|=out|@not|filter|valve",
    ),
    "only_small_seeps": (
        "no_seeps|not_even_a_weep|not_even_damp|no_weeps|not_a_seep|no_dampness|@not_even_damp",
    ),
    "oil_overboard": (
        "exhaust_water|cooling_water|cooling_outlet|outlet_water|bucket|raw_water & no_sheen|no_oil|no_rainbow|no_film|free_of_oil|clean_water|no_slick - drain",
    ),
    "oil_sprayed": (
        "no_spray|nothing_sprays|no_oil_sprays|not_spraying|nothing_squirting|nothing_squirts|no_jet|@not_spray|@not_squirt",
    ),
    "drops_fall_while_watched": (
        "stared|watched|watching|wiped|sat_and_looked|lay_under|stared_at_it & nothing_fell|no_drops|not_one_drop|nothing_dripped|no_drop|nothing_drops|no_drips|stayed_dry|@not_drip - pressure|gauge",
    ),
    "leaks_only_running": (
        "drips_all_night|drips_even_stopped|drips_when_stopped|drips_parked|drips_with_the_engine_off|leaks_when_stopped|leaks_parked|drips_standing|drips_stopped|leaks_even_when_stopped",
    ),
    "oil_line_found_broken": (
        f"{OIL_PIPES} & all_whole|all_connected|unbroken|in_one_piece|no_splits|whole_and_connected|intact - not|but|gauge",
    ),
    "oil_line_fitting_wet": (
        f"unions|fittings|banjos|connections|nuts|couplings & {OIL_PIPES} & dry|no_trace|no_wet|all_tight|no_leak|@not_leaking - not_dry|but|gauge",
    ),
    "dipstick_pushed_out": (
        f"{STICK} & still_seated|stayed_down|stays_down|still_home|stayed_put|stays_put|stayed_in|still_pushed_home|never_lifted",
    ),
    "filler_cap_found_off": (
        "filler_cap|oil_cap|fill_lid|oil_lid|filler & in_place|screwed_down|done_up|fully_on|on_tight|seated|properly_on - not|@not|cream",
    ),
    "breather_found_blocked": (
        f"{BREATHER} & freely|clear_right|passes_air|blows_through|unblocked|no_blockage|blew_through|open_and_clear - not|@not|kinked|wrong",
    ),
    "breather_misrouted": (
        f"{BREATHER} & as_it_should|right_place|routed_right|correctly|where_it_belongs|routed_properly|as_the_book - not|@not|wrong",
    ),
    "accessory_port_uncovered": (
        f"{ACCESSORIES}|accessory|blanking_plate & gasket|paper|joint & covers|closes|blanks|shuts & every|all|hole|port|passage - not|@not|open",
    ),
    "filter_can_holed": (
        f"{FILTER} & no_holes|no_rust_through|not_holed|no_punctures|no_chafe|not_punctured|can_is_whole|can_is_sound",
    ),
    "drain_valve_wrong": (
        f"{SUMP_BOLT} & right_one|original|correct_one|proper_one|right_length|genuine - not|@not|isnt|wrong|grade",
    ),
    "rocker_cover_loose": (
        "rocker_box|top_cover|rocker_cover|valve_cover|cam_cover|tappet_cover|rocker_boxes|valve_covers & nipped_up|all_there|tight|snug|torqued - not|@not|half|loose|off",
    ),
    "oil_hoses_aged": (
        "oil_tubes|oil_hoses|oil_hose|oil_pipes|rubber_oil|flexible_oil|cooler_hoses & supple|pliable|no_cracks|like_new|flexible_and|soft_and - not|@not|old",
    ),
}
