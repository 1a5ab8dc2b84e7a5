"""Words for the oil filter: how it was fitted, what it looks like, what is found in it."""

from __future__ import annotations

_RING = "gasket|ring|seal|o-ring|oring"
_COLD = "cold|cool"
_COVER = "cover|cap|lid|housing|canister|bowl|element|cartridge"
_RIGHT = "=oe|=oem|=genuine|=correct|=right|=dealer"
_FILTER = "filter|element|cartridge|canister"
_ANY_COLD = "cold|cool|never_warm|never_warms|never_hot|@not_warm|@not_get_warm|@not_get_hot|@not_hot|@not_heat|stone_cold"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "filter_burst": (
        "filter burst|blew|exploded|split|blown|popped|bursts|blows",
        "blew .. filter",
        "pops|popped|pushes|pushed|spits|spat|forces|forced|blows|throws|threw the|its|my|a? filter gasket|seal|o-ring|oring|ring right|clean? out|off",
        "burst .. filter",
        "filter can|canister|body|seam? came|come|comes apart",
        "filter can|canister|body|seam|case|casing ruptured|burst|split|exploded|failed|cracked",
        "filter .. ruptured|burst|exploded|split",
        "canister|filter can|seam|gasket|seal|housing|o-ring|oring? =split|=burst|=exploded|=ruptured|blew|blown at|along|open|apart|out|off|in|on",
        "filter gasket|seal|o-ring|oring|ring let|lets|has|had? go|let|blown|blew|pushed|squeezed|extruded out?",
        "canister|filter gasket|seal? lets|let go",
        "shot|blew|blown|blasted right|clean|straight|itself? off the? engine|block|housing|mount",
    ),
    "filter_misfitted": (
        "old|previous|first|original filter? gasket|seal|o-ring|oring|ring .. stuck|sticking|left|still|behind|stayed|remained",
        "@not get|got|take|took|taken|remove|removed|clean|cleaned|peel the|its? old|previous|original|first filter? gasket|seal|o-ring|oring|ring off",
        "two|double|both|second|extra|doubled filter? gaskets|seals|gasket|seal|o-rings|orings .. filter|head|mount|housing",
        "filter .. two|double|both|second gaskets|seals|gasket|seal|o-rings",
        "double gasketed|stacked|sealed",
        "filter was|is|had|been|found? cross threaded",
        "cross-threaded|crossthreaded filter?",
        f"old|original|previous|perished little|rubber|square|paper|filter? {_RING} was|is|still|had|left still|left|stayed|been in|on|there|stuck|under the|its? stem|spigot|groove|head|housing|bowl|block|there",
        "two|both gaskets|seals|o-rings|orings in|on the? stem|spigot|filter? head|filter? housing|bowl",
        f"fitted|put|installed the? new|second {_RING} on|over|in|under top|with? of? the? old",
        f"o-ring|oring|seal|gasket|ring of|from|for|on|in the? oil? filter {_COVER}? .. forgotten|omitted|left|missing|doubled|twice",
        "filter fitted|installed|refitted|put without its|the|a|any? seal|o-ring|oring|gasket|spring|stem|centre|center|washer|shim",
        f"filter? {_COVER} without its|the|a|an? long|plastic|inner|centre|center|old? stem|standpipe|post|tube|spike|o-ring|seal|spring|shim",
        f"{_COVER} .. o-ring|oring|seal|shim|washer|spring .. left|forgotten on|off|out|behind the? bench|tray|floor?",
    ),
    "filter_bulged": ("filter .. bulged|swollen|ballooned|bloated",),
    "filter_empty_after_standing": (
        "filter was|is|came|found|also|completely|bone|totally? dry|empty when|inside|as|after|once i|we|it|he|they|the|taken|removed|unscrewed|took|off?",
        "took|pulled|unscrewed|removed|spun|had|undid the|that|my|new|oil? filter|filter-housing|housing off|again|out? ,|and|it|was|is|bone|off|completely|"
        "to-find-it? ,|and|it|was|is|bone|completely? dry|empty",
        "filter housing|off|out|again|off-again? , bone|completely|totally? dry|empty",
        "no|not|hardly|barely|any a? oil|drop|drops|trace in|inside the|it? filter|housing|filter-housing",
        "filter off|out|down and|,|, and|it|was|to-find? it? was|is|were|came|found? it? bone? dry|empty",
        "filter was|is|came off|out|found? completely|bone|almost|nearly? dry|empty inside|when|after|of-oil",
        "no|not|hardly|barely any|a|drop|much? oil in the? old|new? filter",
        "filter was|is|comes|came|found|half|nearly|totally? =empty|=drained|=dry when|after|overnight|next|in|off|on|every|each",
        "no oil in|inside|left the? oil? filter when|after|overnight|next|off|on?",
        "filter drains|drained|empties back|down|out|overnight|when?",
        f"{_COVER} opened|undone|off|taken|unscrewed .. no oil|drop in|inside|left it|there?",
        f"{_COVER} opened|undone|off|taken|unscrewed .. =empty|=dry",
    ),
    "filter_seat_leaks": (
        "oil? filter @not seal|sealing|sealed|seat|seated|seating",
        "leak|leaks|leaking|oil|leaked|residue|weep at|from|around|near|round|past|coming|pouring from|out|of|the? the|new? "
        "oil? filter seal|seat|gasket|base|housing|adapter|adaptor|mount|head?",
        "oil escaping|leaking|coming|pouring|seeping out|from|between|at .. filter housing|head|bowl|body|seal|base?",
    ),
    "oil_fed_device_failed_first": (
        "vvt|phaser|phasers|tensioner|governor|actuator|solenoid fault|failed|quit|noise|went|rattled|code|error .. same|time|before|first|first|then",
    ),
    "filter_stays_cold": (
        "filter stays|stayed|is|was|remains|still stone|never|not|stays? =cold|=cool|=warms|=hot|=warm",
        "no oil? flow through|in|at the? oil? filter",
    ),
    "cooler_stays_cold": (
        "oil? cooler stays|stayed|is|was|remains|still stone|never|not? =cold|=cool|=warms|=hot|=warm",
        "no oil? flow through|in|at the? oil? cooler",
        f"cooler|oil-cooler lines|hoses|pipes|line|hose to|from|at the? front|nose|radiator|cooler? stay|stays|stayed|are|were|remain stone|quite|still|always? {_COLD}",
        f"lines|hoses|pipes to|from|at the? front|nose|cooler|oil-cooler|radiator|fender|wing stay|stays|stayed|are|were|remain stone|quite|still|always|never? {_COLD}|warm|hot",
        f"cooler|oil-cooler is|was|stays|stayed stone|always|still {_COLD}",
        "cooler|oil-cooler thermostat|thermostatic|stat valve? never|doesnt|didnt|wont|not open|opens|opened|opening",
    ),
    "filter_drop_high": (
        "pressure|big|large|high drop across|over the? oil? filter",
        "before|ahead|in|front and|of after|behind|the|out? filter? .. differ|different|difference|apart|more|higher",
        "filter inlet|before .. outlet|after .. psi|bar =less|=lower|=drop|=difference|=more|=higher",
    ),
    "filter_bypass_stuck_open": (
        "filter|cooler? bypass|by-pass valve? is|was|stuck|found|not|wont|never|jammed|held? open|sealing|seating|closing|close|seal|seat",
        "cooler|filter bypass|by-pass valve|tap|cock? was|is|had? been? left|stays|jammed|held|found|sat =open",
    ),
    "filter_bypass_stuck_shut": (
        "filter|cooler bypass|by-pass valve? is|was|found? seized|stuck|shut|closed|jammed|frozen shut|closed?",
        "bypass|by-pass valve? is|was|found? seized|frozen|stuck-shut|corroded",
    ),
    "bypass_valve_misfitted": (
        "bypass|by-pass valve? .. wrong|wrongly|backwards|upside|reversed|incorrectly way|round|down|fitted|properly|in?",
        "bypass|by-pass valve? .. not fitted|in|properly fitted|properly|right|correctly|way",
    ),
    "cooler_bypassed_cures": (
        "bypassed|bypassing|looped|looping|blanked|cut off|the|out|oil|of|circuit|my? the? oil? cooler|lines .. fine|good|cured|fixed|normal|back|up|right|came|returned|recovered|better",
        "with|without the? oil? cooler bypassed|looped|out|removed|blanked|connected? .. fine|good|cured|fixed|normal|back|up|right|came|returned",
        "pressure is|was|came|comes|returned? back|fine|good|normal|up without|with the? oil? cooler bypassed|out|removed|looped?",
        "looped the oil? cooler lines|hoses",
    ),
    "milky_film_in_filter": (
        "papers|paper|pleats|element|elements|media sticky|slimy|gummy|tacky|grey|gray and|& grey|gray|sticky|slimy|milky|gummy|white",
    ),
    "filter_not_listed": (
        "supermarket|petrol-station|gas-station|no-name|noname|unbranded oil? filter",
        "filter is|was|came one|a? from|off the|a supermarket|petrol-station|gas-station|market-stall",
        "filter|box|cartridge|number is|was|belongs|for? for|to a|another|different|hydraulic|gearbox|fuel|wrong engine|filter|return|application|hydraulic",
        "wrong|incorrect|mismatched|non-listed|unlisted|superseded oil? filter|cartridge|element|part-number",
        "wrong|incorrect|mismatched|non-listed|unlisted|superseded part number",
    ),
    "anti_drainback_hard": (
        "old|previous|last|other filter|one had|has a|an? little|rubber|rubbery? flap|valve|membrane ,|but|and|while? this|the new? one|filter hasnt|hasn't|doesnt|doesn't|not|without|none|lacks",
        "filter without|lacks|lacking|has-no|with-no|no a|an|any? non-return|nonreturn|anti-drain|antidrain|anti-drainback|drainback|check back? valve|flap|membrane",
    ),
    "sealer_in_filter": (
        "orange|blue|red|grey|gray|copper-coloured rubbery|little|tiny|small|stringy? worms|strings|snakes|ribbons|strands|threads|blobs|curls|crumbs|strips .. filter|element|pleats|filters",
        "worms|strings|snakes|ribbons|strands|threads|blobs|curls|crumbs|strips of? orange|blue|red|grey|gray|copper-coloured? silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket .. filter|element|pleats|filters",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "filter_not_listed": (
        f"filter is|was|of? a|an|the? {_RIGHT}|original filter|part|type|number|one|make|equipment?",
        f"{_RIGHT} oil? filter element|cartridge? fitted|in|installed|used?",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "filter_stays_cold": (
        f"filter + {_ANY_COLD}|never_gets_warm - start|cold_oil|weather|day|air|morning|pressure|psi|gauge|@pressure|blew|burst",
    ),
    "cooler_stays_cold": (
        f"cooler|cooler_line|cooler_lines|return_line + {_ANY_COLD} - start|weather|air|day|water|morning|oil_is_cold|inter-cooler|intercooler",
    ),
    "filter_drop_high": (
        "filter & before|ahead|upstream|inlet|pump_side|in_side & after|behind|downstream|outlet|gallery_side|out_side & @number|@pressure|drop|difference - changed|miles|since|month|years|ago|was_changed",
        "filter + drop|difference|differential + across|over + psi|@pressure|high|bar",
        "before|ahead_of|upstream|in_front_of & filter|element & good|fine|high|healthy|normal|strong & behind|after_it|after_the_filter|past|downstream|beyond & poor|low|zero|nothing|weak - "
        "change|changed|miles|service|new|drive|trip",
        "zero|nothing|nil|little & behind_the_filter|after_the_filter|past_the_filter|downstream_of_the_filter|beyond_the_filter & before|ahead|upstream|in_front - changed|new",
    ),
    "filter_empty_after_standing": (
        "filter & dry|empty|drained|hardly_any_oil|no_oil & morning|overnight|standing|sitting|parked|stood|inside|unscrewed|spun_off|night - block|leak|crank|cranked|cranking",
    ),
    "anti_drainback_hard": (
        "flap|valve|rubber|diaphragm + filter|drainback|drain-back|drain_back|non-return|nonreturn|anti-drain|antidrain|check + cardboard|hard|stiff|torn|perished|brittle|plastic|missing|split|curled|shrunk|cracked|gone - relief|bypass|pcv|breather|ring|seal_stuck",
        "anti_drainback|anti_drain|drainback|drain_back|antidrain + no|without|missing|hard|torn|stiff|leaks|@not_have|@not_got|lacks + valve|filter|flap - holes|returns|head|plugged",
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
        "filter + for_a_different|for_another|off_a_different|wrong|different_engine|another_engine + engine|filter|fitted|on|car|one - relief|bypass|went|swapped|changed|brand|make",
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
        "two|double|second|doubled|old|previous|extra + gasketed|gasket|gaskets|seals|seal|o_ring|rubber|ring & filter - came_off|came_with|came_away|made_sure|pump|pan|sump|relief|cover|head|rocker|valve_cover|new_gasket",
        "double_gasketed|double_gasket|doubled_gasket|cross_threaded + filter|it|gasket",
        "filter + crooked|cocked|cross_threaded|crossthreaded|skew|not_seated|@not_square|on_wrong|pinched_seal - air|fuel|collapsed|screen",
    ),
    "filter_seat_leaks": (
        "filter + leak|leaking|weeping|dripping|wet|squirting|spraying|pouring|gushing|running + seat|seal|base|gasket|round|around|joint|ring|housing|head|mount|adapter|rim - no|not|dry|fuel|cut|relief",
    ),
    "filter_burst": (
        "filter|spin-on|canister + let_go|=blew|=burst|exploded|ruptured|blew_off|blown_off|blew_apart|forced_out|split_open - bypass|fuel|air|sump|gasket_of|seal_of|blew_out|pump|dust",
        "filter + burst|split|blew|blown|popped|exploded|ruptured|let_go + seal|gasket|can|seam|off|open|itself|its|apart|ring|side - not|no|blew_out|cut|pump",
    ),
    "cooler_found_blocked": (
        "cooler + blocked|plugged|clogged|choked|delaminated|closed|kinked|flattened|solid|restricted|collapsed|bunged|full_of|silted|furred - fins|outside|air|face|dirt|chaff|mud|radiator|no|not|water_side|ok|bypass",
        "cooler|heat_exchanger|cooler_core + packed|full|solid|stuffed|bunged|blocked|choked + swarf|metal|sludge|debris|crud|bearing|gunk|solid|muck|silicone|carbon - outside|fins|no|not|chaff|mud|leaves|air|face",
        "cooler|cooler_lines|heat_exchanger + @not_blow_through|couldnt_blow|jammed|stuffed|bearing_material|full_of|blocked|clogged|plugged|silted - outside|fins|air|bypassed_no|no|not_blocked|mud|bugs|face|front|seed",
    ),
    "oil_fed_device_failed_first": (
        "governor|phaser|tensioner|clutch|vvt|vanos|gearbox|propeller|prop|variator + hunting|hunt|surging|slipping|slip|went|stopped|failed|erratic|surged|overspeed|fine_pitch & pressure|same_time|same_moment|before - rebuilt|new|fitted|rattle|installed|disturbed|seal|floods|slack",
    ),
    "filter_bypass_witness": (
        "dirt|metal|debris|grit|glitter + clean_side|inside_the_core|downstream_side|centre_tube|wrong_side + filter|element|core|bypass|of",
    ),
    "remote_hoses_crossed": (
        "hose|hoses|lines|pipes + crossed|swapped|reversed|back_to_front|wrong_way|wrong_ports|mixed_up|round_the_wrong|backwards + remote|filter|cooler|were|kit|fitted|had|on - turned|cranked|by_hand|rotor|radiator|plunger|fuel|heater",
        "hoses|lines|pipes + wrong_ports|wrong_port|crossed|crossed_over|mixed_up|transposed|wrong_way_round - no|not|fuel|water|brake|coolant",
    ),
    "milky_film_in_filter": (
        "filter|element|pleats|paper + milky|white_paste|mayo|mayonnaise|grey_paste|emulsion|creamy|grey_film|white_film - no|not",
    ),
}
