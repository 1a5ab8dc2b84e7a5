"""Words for oil that leaves the engine at a place that is named."""

from __future__ import annotations

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
    ),
    "filler_cap_found_off": (
        "filler|filler_cap|oil_cap|oil_filler_cap|dipstick + left|off|forgotten|missing|sitting|not_on|loose|never_put|unseated|not_pushed|@not_replaced|not_back - nothing|low|oil_left|left_on|fell_off|gone|comes|bearing|relief|popped|blew|distributor|rotor|dry|main|radiator|smoke|stick_is_off|runs_off|marks",
        "cap|filler|oil_cap|oil_filler|filler_cap|dipstick + left_off|missing|not_refitted|@not_refitted|@not_secured|@not_seated|@not_on|lying_under|open|@not_replaced|not_fitted|unsecured|forgotten|found_lying - ball|plunger|piston|spring|radiator|main|rod|bearing|relief|"
        "distributor|rotor|valve|fuel|read|water|dust|screws|drain|cover|petrol|reading|@not_on_the_dipstick|runs|dropped|marks|oil_on|wiped|dry|popped|blew|blown|gearbox|hub|take|took|taking|lift|lifted|remove|removed|undo|open_it|with_the|look_in|looked|swimming|puffing|smoke",
        "cap + sitting_on|left_on_top|lying_on|found_on|was_on_the + battery|engine|wing|airbox|air_cleaner|slam_panel|bench|manifold|rocker - radiator|distributor|bearing|relief|valve_cap|tight",
        "dipstick|stick|filler|oil_cap + @not_pushed|@not_home|@not_seated|@not_screwed|not_fully_home|not_pushed|half_out|hanging_out|loose - level|nothing",
    ),
    "dipstick_pushed_out": (
        "dipstick + popped|pushed|blown|blew|spat|jumped|out_of_its_tube|out_of_the_tube|shot|lifted|rose - cap|filler|pulled",
    ),
    "filter_can_holed": (
        "filter|can + =punctured|=rusted|rubbed_through|=pierced|=holed|hole_in_the_side|stone_through|hole_in_it|hole_in_the_filter - screen|hose|bypass|cut_a_hole|no|not|collapsed|gasket",
    ),
    "oil_line_found_broken": (
        "oil_line|oil_lines|oil_hose|oil_pipe|cooler_hose|cooler_line|cooler_pipe|feed_pipe|hose_to_the_filter|braided_hose|filter_hose|cooler_hoses + burst|split|chafed|broken|off|popped|cracked|let_go|rubbed_through|fractured|came_off|worn_through|blew|blown|perished|failed|parted|snapped - gauge|no|not|turbo|weeping|fuel|capillary|inside|new|through|blew_out|compressor|airline",
    ),
    "drain_plug_found_loose": (
        "sump_plug|drain_plug|plug + sump|drain|pan + loose|missing|gone|fell|fallen|dropped|vibrated|left_loose|finger|unscrewed|backed|not_tight|weeping|dripping|out - gallery|core|welch|oil_hole|cup|pulled|magnet|spark|i_pulled|when_i|drained|fur|tight|before_the_oil|water|lying|cross|end_of|galley",
        "left|forgot|forgotten + plug|drain_plug|sump_plug + loose|tighten|nip|undone|finger|out - gallery|spark|core|magnet|oilway|days|hours|overnight|drained|refitting",
        "plug|drain_plug|sump_plug|bung + vibrated|worked_loose|rattled|dropped|fell|came + out|loose|off|road|sump - gallery|relief|spark|sender|connector|filter|core|glow|wire|freeze|cam|timing|welch|plug_lead|sensor",
        "plug|=drain|bung + finger_tight|loose|hand_tight|undone|backed_out|gone|fell|dropped|vibrated + sump|drain|pan|bottom - gallery|relief|spark|filter|sender|pickup|core|glow|wire|connector|switch|plunger",
        f"{_DRAIN_PLUG} + road|missing|gone|open|half_open|lost|fell|undone|dripping|cracked_open - took|removed|new|opened|fitted|drained|fully|clean",
        "no|missing|without + plug|bung & drain|sump|hole - gallery|spark|glow|core|welch|crank|head",
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
    "rocker_cover_loose": (
        "rocker_cover|valve_cover|cam_cover|tappet_cover + loose|bolts_missing|missing_bolts|screws_missing|undone|@not_tight|hand_tight|bolts_loose - gasket_torn|no|clean",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "filter_found_loose": (
        "filter + tight|done_up|secure|firmly|torqued - not|@not|loose|hand|finger|never",
    ),
    "drain_plug_found_loose": (
        "drain_plug|sump_plug|plug + tight|secure|dry|wired|done_up - crank|end_plugs|core_plugs|blower|ran|fell|not|@not|loose|hand|finger|never|gallery|core|spark|found|sender|wire|connector|switch|earth|lead",
    ),
}
