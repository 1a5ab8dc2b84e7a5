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
        "filter|element|cartridge for a|another|some|the? different|another|other|wrong engine|motor|model|car|tractor|make",
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
        "filter|spin-on|canister + hold|touch|hand|comfortably|feels + hot|engine|warm|boiling - hot_filter|pressure|air|fuel|tight|loose|easily|as_hot|burn|burnt",
        "filter|spin-on|canister|oil_can|screw-on|filter_can|spinon|cartridge & cold|room_temperature|no_heat|ambient|@not_warm|@not_get_warm|@not_heat|cool|stone_cold|@not_get_hot|never_warms|lukewarm|still_cool|barely_warm & hot|engine|everything|block|running|minutes|motor|degrees|warm|drive|sump|rest - cold_start|weather|air_filter|fuel|pressure|psi|morning|needle|gauge|as_hot|same_as|cold_oil|burst|coffee|spray|beer",
        f"filter + {_ANY_COLD}|never_gets_warm - start|cold_oil|weather|day|air|morning|pressure|psi|gauge|@pressure|blew|burst",
    ),
    "cooler_stays_cold": (
        "cooler|oil_cooler|oil_radiator|heat_exchanger|cooler_matrix|cooler_return|cooler_lines|return_hose|matrix & cold|fridge|first_inch|only_the_first|@not_warm|@not_get_warm|stone_cold|ice|room_temperature|ambient|no_heat|barely_warm|never_warms|cool|only_one_end|half_cold|still_cold & hot|oil|warm|degrees|engine|inch|running|@number|drive - weather|start|morning|air|day|gauge|pressure|psi|water|intercooler|cooler_than|all_through|evenly|throughout",
        f"cooler|cooler_line|cooler_lines|return_line + {_ANY_COLD} - start|weather|air|day|water|morning|oil_is_cold|inter-cooler|intercooler",
    ),
    "filter_drop_high": (
        "pressure_drop|differential|loss|lost|drop & filter|element & big|high|large|huge|psi|bar|thirty|twenty|forty|@pressure|excessive|massive|much - only|no|not|small|little|sudden|oil_loss|leak|level|changed",
        "takes|takes_up|robs|costs|swallows|loses & filter & two_gauges|thirty|twenty|pounds|psi|@pressure - off|quarts|only|wrench|minutes|litres|liters",
        "filter|spin-on|screw-on|element|filter_head|canister + losing|loses|lost|eats|eating|dp|drop|drops|difference|costs|robs|takes|swallows|restriction|differential & @pressure|half|most|gauge|gauges|psi|bar|lot|side|each_side|either_side|two_gauges - only|just|barely|no|not|hardly|small|little|three|changed|oil_level|idle|drain|cold|hour|since|gallery|nothing_across",
        "before|ahead|upstream|in_side|front_side|pump_side|inlet & filter|element|cartridge & after|behind|downstream|out_side|outlet & @pressure|psi|bar|more|less|lower|difference|apart|drop|half - changed|service|same|equal|no_difference|hour|miles",
        "filter & before|ahead|upstream|inlet|pump_side|in_side & after|behind|downstream|outlet|gallery_side|out_side & @number|@pressure|drop|difference - changed|miles|since|month|years|ago|was_changed",
        "filter + drop|difference|differential + across|over + psi|@pressure|high|bar",
        "before|ahead_of|upstream|in_front_of & filter|element & good|fine|high|healthy|normal|strong & behind|after_it|after_the_filter|past|downstream|beyond & poor|low|zero|nothing|weak - "
        "change|changed|miles|service|new|drive|trip",
        "zero|nothing|nil|little & behind_the_filter|after_the_filter|past_the_filter|downstream_of_the_filter|beyond_the_filter & before|ahead|upstream|in_front - changed|new",
    ),
    "filter_empty_after_standing": (
        "filter|spin-on|screw-on|canister|cartridge|filter_bowl|spinon & empty|nothing_in_it|dry|light_as|bone_dry|no_oil|hardly_any|drained_back|drained_down|few_drops|only_a_drop|half_empty|weighed_nothing|not_a_drop|feather & morning|overnight|next_day|stood|standing|night|till_morning|took_it_off|came_off|day_later|days_later|weekend|sitting|took_off|unscrewed|hours_later - full|brim|block|pump|crank|level|sump_was_empty|fuel|air",
        "filter & dry|empty|drained|hardly_any_oil|no_oil & morning|overnight|standing|sitting|parked|stood|inside|unscrewed|spun_off|night - block|leak|crank|cranked|cranking",
    ),
    "anti_drainback_hard": (
        "adb|adb_valve|drainback_valve|anti-drainback_valve|drain-back_valve|antidrain_valve|drainback's|drainback|anti-drainback + hard|hardened|puck|torn|split|stiff|brittle|missing|perished|gone|shot|useless|like_a|set|cooked - no|not|soft|good|holes|hole|lifter|head",
        "non-return|nonreturn|anti-drain|antidrain|drainback|drain-back|anti-drainback|check_flap|rubber_flap|rubber_disc|rubber_disk|rubbery_ring|rubber_membrane|membrane|rubber_skirt|rubber_lip|flap|silicone_flap|little_holes|ring_of_holes & perished|hard|split|stiff|brittle|cracked|torn|missing|doesnt_seal|@not_seal|curled|gone|like_plastic|set|rigid|not_rubbery|ripped|warped|shrunk|tear|absent|lets_the_oil_run - relief|bypass|pcv|breather|pump|no_crack|soft|supple|fuel|valve_stem|reed|carb|crankcase|plugs",
        "flap|valve|rubber|diaphragm + filter|drainback|drain-back|drain_back|non-return|nonreturn|anti-drain|antidrain|check + cardboard|hard|stiff|torn|perished|brittle|plastic|missing|split|curled|shrunk|cracked|gone - relief|bypass|pcv|breather|ring|seal_stuck",
        "anti_drainback|anti_drain|drainback|drain_back|antidrain + no|without|missing|hard|torn|stiff|leaks|@not_have|@not_got|lacks + valve|filter|flap - holes|returns|head|plugged",
    ),
    "filter_collapsed": (
        "paper|element|core|centre_tube|center_tube|pleats|filter|cartridge|folds|inner_tube|perforated_tube|media + squashed|crushed|collapsed|caved|imploded|sucked|flattened|concertinaed|concertina|crumpled|buckled|torn|ripped|split|burst_through|folded|squished|sucked_in|ruptured|mangled|pulled_apart|hole_in|crinkled|bunched - no|not|straight|gasket|seal|flap|anti|valve|can_split|outer|gauge|air|fuel|blotting|cut_open_ok|sump|pickup|tube_cracked|round|bypass|shell|piston",
        f"{_FILTER} + collapsed|crushed|imploded|caved|torn|ripped|core_crushed|squashed|concertina|folded - anti|valve|flap|open|cut|apart|i_tore|gasket|seal|ring",
    ),
    "filter_bypass_stuck_open": (
        "bypass|by-pass|bypass_valve|filter_bypass + stands_open|open|stuck_open|spring's_broke|spring_broken|broken_spring|weak|hanging_open|spring_snapped|seat_dirty|dirty_seat|spring_gone|wont_shut|doesnt_shut|@not_shut|@not_close & filter|head|valve|spring|seat|housing|cooler|clean_side - relief|hose|shut_fine|closes|no|opens|stuck_shut|not_open|wont_open",
        "bypass|by-pass|filter_valve|spring_door|filter_relief|cooler_bypass + held_off|holding|off_its_seat|off_seat|stays_open|stuck_open|dirt_on_its_seat|spring_broken|broken_spring|@not_close|@not_seat|@not_shut|propped|hanging_open|jammed_open|wedged_open|wide_open|open_all|lodged|weak_spring|@not_seal - no|shut|stuck_closed|pump|main_relief|screen|hose|relief_valve|closes",
        "dirt|grit|swarf|bit|chip|muck|sealant|debris + bypass|by-pass|filter_valve + seat|open|holding|lodged|wedged|stuck|propping|jammed|under - relief|no|not",
        "bypass|by-pass + open|off_its_seat|hung + jammed|stuck|jam|propped|held|seized|hung|open - relief|screen|cooler_hose|not|shut|closed|cured|freed",
    ),
    "filter_bypass_stuck_shut": (
        "bypass|by-pass|filter_valve|spring_door|filter_relief_valve|little_door + seized|rusted|stuck|jammed|@not_move|@not_budge|@not_give|@not_open|solid|frozen|gummed|welded|immovable|@not_push|siezed|rigid & shut|closed|push|press|pushed|screwdriver|pressed|at_all|solid|poke|move|open|thumb - relief_valve|stuck_open|hung_open|held_off|stays_open|no|screen|cooler_hose|freely",
        "bypass|by-pass + shut|closed|@not_open + jammed|stuck|seized|held|rusted|@not_open - relief|screen|open_ok",
    ),
    "bypass_valve_misfitted": (
        "bypass|by-pass|filter_valve|valve_in_the_filter|valve_behind_the_filter|filter_bypass|b/p & wrong|reversed|backwards|back_to_front|upside_down|swapped_round|isnt_the_one|wrong_one|not_the_one|assembled|misassembled|other_way|wrong_way|inside_out|wrong_order|different_one|not_the_right|spring_and_ball|another_engine|left_out_the_spring|put_together & wrong|reversed|fitted|in|round|belongs|one|spring|ball|housing|way|order|engine - right|correct|no|stuck_open|relief_valve|filter_fitted|drawing|as_per",
        "bypass|by-pass + wrong|backwards|upside|reversed|wrong_side|wrong_way|left_out|misassembled",
    ),
    "filter_not_listed": (
        "filter|spin-on|spinon|cartridge|element & for_a_different_engine|a_different_engine|different_engine|another_engine|different_motor|not_for_this|other_number|wrong_number|not_listed|isnt_listed|different_car|another_car|other_model|different_model|another_make|doesnt_match|wrong_part|not_the_one|isnt_the_one|tractor_filter|looked_similar|near_enough|similar_one|crosses_to|cross-reference|catalogue_says|catalog_say|catalog_says|for_something_else|belongs_to|not_what - bypass|relief|valve|screen|gasket|stuck|clean|right|correct|matches|element_is_full|dirt",
        "filter|can|cartridge + wrong|@not_list|@not_listed|@not_right|isnt_one|for_another|for_a_different|not_the_right|not_the_one|cheap_copy|no-name|off_a|too_short|too_small|wrong_one - gave|sold|sent|ordered|gasket|bypass|relief|valve|screen|pump|stuck|thread|way",
        "part_number|number + filter|can + @not|wrong|different|isnt",
        "filter + for_a_different|for_another|off_a_different|wrong|different_engine|another_engine + engine|filter|fitted|on|car|one - relief|bypass|went|swapped|changed|brand|make",
    ),
    "filter_packed": (
        "paper|pleats|element|filter|media|folds|cartridge|can + plugged_shut|crud|muck|so_full|packed|caked|black_sludge|solid|full_of_dirt|cant_see|another_spoonful|no_room|clogged|choked|blocked|bunged|sludged|gunged|tarry|rammed|stuffed|treacle|couldnt_see|matted|loaded|plastered|coated_in_muck|slimed_up|blinded|bung_full - no|not_blocked|clean|fuel|air|screen|pickup|gauze|strainer|breather|sump|only_stained|valve|shiny|free|cabin|hole_in",
        f"{_FILTER}|pleat|pleats + gunge|gunk|sludge|black_muck|packed|solid|clogged|choked|blocked|caked|=plugged|tar|full_of|stuffed - no|not|clean|screen|pickup|sender|fuel|air|sump|gauze",
    ),
    "adapter_gasket_displaced": (
        "adapter|adaptor|sandwich|base_plate|filter_base|filter_bracket|filter_holder|filter_housing|filter_head|filter_mount|bracket|filter_screws|lump & gasket|seal|joint|o_ring|oring|flat_seal|rubber & torn|displaced|squeezed|broken|not_in_place|out_of_place|slipped|split|extruded|through|shifted|pinched|rolled|sideways|blown - pump|cylinder_head|head_gasket|new|renewed|bypass|cartridge_seal|double|two_gaskets|screen|relief",
        "filter_head|filter_mount|filter_block + gasket|seal|o_ring|oring + split|torn|blown|cracked|perished|leaking|leaks - pump|cylinder",
        "adapter|adaptor|sandwich|base_plate|mounting_plate|filter_base|filter_housing + gasket|seal|o_ring|oring|ring + slipped|displaced|out_of|moved|broken|pinched|rolled|popped|torn|crooked|hanging|split - pump",
    ),
    "filter_misfitted": (
        "filter|spin-on|spigot|filter_stem|filter_head|stem|filter_housing|canister_bolt|filter_bolt|spinon & double-gasketed|doublegasketed|two_seals|two_gaskets|two_rings|wrong_thread|metric|cross-threaded|crossthreaded|old_gasket|old_seal|wasnt_there|missing|no_o-ring|left_off|stuck_on_the_block|imperial|thread_didnt_match|wrong_stem|old_ring|second_gasket|second_seal|two_o-rings|not_in_its_groove|threads - cut|bypass|drainback|screen|pickup|came_away|came_off_with|fuel|air|pump_o-ring|relief|sump_plug|shot|flap|drain|drainplug|valve",
        "rubber_ring|o-ring|seal|gasket|ring + stem|filter_stem|spigot|center_bolt|centre_bolt|filter_cap|filter_lid|cartridge_cap + missing|wasnt_there|not_there|forgotten|left_off|gone|absent|old_one|twice|two|pinched|wrong_groove|isnt - valve_stem|relief",
        "two|double|second|old|previous|cross + gasket|gaskets|seal|rubber|ring|o_ring|thread|threaded + filter|stuck|left|head|housing|mount - came_off|came_with|came_away|made_sure|pump|cover|rocker|sump_gasket|pan_gasket",
        "two|double|second|doubled|old|previous|extra + gasketed|gasket|gaskets|seals|seal|o_ring|rubber|ring & filter - came_off|came_with|came_away|made_sure|pump|pan|sump|relief|cover|head|rocker|valve_cover|new_gasket",
        "double_gasketed|double_gasket|doubled_gasket|cross_threaded + filter|it|gasket",
        "filter + crooked|cocked|cross_threaded|crossthreaded|skew|not_seated|@not_square|on_wrong|pinched_seal - air|fuel|collapsed|screen",
    ),
    "filter_seat_leaks": (
        "filter|spin-on|screw-on|canister|cartridge|spinon|can & rim|round|where|base|seat|adapter|joint|place|thread|bottom_of|edge|sealing_ring|mounting_face|between & oil_comes|oil_go|oil_going|squirting|squirts|leaks|leaking|weeping|dripping|running|spraying|oil_runs|coming_out|comes_out|seeping|pissing|spewing|dribbling|oozing|spits|escaping - no|not|dry|inside|fuel|none|never|sump|drain|cap|filler|when_i_took|removed|unscrewed|when_i_undid",
        "filter + leak|leaking|weeping|dripping|wet|squirting|spraying|pouring|gushing|running + seat|seal|base|gasket|round|around|joint|ring|housing|head|mount|adapter|rim - no|not|dry|fuel|cut|relief",
    ),
    "filter_burst": (
        "filter|spin-on|canister|screw-on|can_thing|spinon|filter_can|cartridge & burst|popped|split|exploded|ruptured|blew|shot_off|shot_clean|let_go|went_pop|parted|blew_off|flew_off|spat|forced_off|came_apart|bang & oil|off|thread|seam|gasket|seal|everywhere|bilge|ring|open|out|emptied|dumped|lost - no|not|never|bypass|fuel|air|cut|sawed|pump|clean|held|bulged|dust|drip_tray|coke",
        "filter|spin-on|canister + let_go|=blew|=burst|exploded|ruptured|blew_off|blown_off|blew_apart|forced_out|split_open - bypass|fuel|air|sump|gasket_of|seal_of|blew_out|pump|dust",
        "filter + burst|split|blew|blown|popped|exploded|ruptured|let_go + seal|gasket|can|seam|off|open|itself|its|apart|ring|side - not|no|blew_out|cut|pump",
    ),
    "cooler_found_blocked": (
        "hose|line|pipe|lines|hoses + cooler|oil_cooler|oil_radiator + collapsed|kinked|flattened|crushed|blocked|closed_up|swollen_shut|delaminated|pinched|squashed|bunged|no_flow - no|not|suction|outside|fins|water|burst|leak",
        "cooler|oil_radiator|heat_exchanger|cooler_line|cooler_hose|cooler_matrix|oil_cooler_pipe|cooler_pipe|cooler_lines + blocked|bunged|choked|clogged|sludge|plugged|silted|kinked|flattened|collapsed|squashed|packed|couldnt_blow|no_flow|gummed|furred|stopped_up|pinched|full_of_crud|delaminated|crud|muck|restricted|solid|nothing_comes_through - no|not_blocked|clear|clean|air_side|outside|fins|bugs|leaves|chaff|mud|face|flies|cores_outside|grass|bypassed|dust_on",
        "cooler + blocked|plugged|clogged|choked|delaminated|closed|kinked|flattened|solid|restricted|collapsed|bunged|full_of|silted|furred - fins|outside|air|face|dirt|chaff|mud|radiator|no|not|water_side|ok|bypass",
        "cooler|heat_exchanger|cooler_core + packed|full|solid|stuffed|bunged|blocked|choked + swarf|metal|sludge|debris|crud|bearing|gunk|solid|muck|silicone|carbon - outside|fins|no|not|chaff|mud|leaves|air|face",
        "cooler|cooler_lines|heat_exchanger + @not_blow_through|couldnt_blow|jammed|stuffed|bearing_material|full_of|blocked|clogged|plugged|silted - outside|fins|air|bypassed_no|no|not_blocked|mud|bugs|face|front|seed",
    ),
    "oil_fed_device_failed_first": (
        "governor|phaser|phasers|tensioner|clutch|vvt|vanos|variator|gearbox|cam_timing|hydraulic_governor|prop_governor|actuator|jake_brake|engine_brake|thing_that_changes & gave_up|failed|let_go|quit|went_slack|went|fault|stopped_working|packed_up|slipped|died|slack|fell_out|code|error & same_time|same_moment|same_minute|same_instant|along_with_it|exactly_that_time|right_when|just_as|just_when|together|with_it|simultaneously|at_that_moment|same_second|the_moment - new|replaced|rebuilt|rattle|noise_only|clutch_cable|pedal|never|not|carried_on|kept",
        "governor|phaser|tensioner|clutch|vvt|vanos|gearbox|propeller|prop|variator + hunting|hunt|surging|slipping|slip|went|stopped|failed|erratic|surged|overspeed|fine_pitch & pressure|same_time|same_moment|before - rebuilt|new|fitted|rattle|installed|disturbed|seal|floods|slack",
    ),
    "filter_bypass_witness": (
        "clean_side|clean_side_of|outlet_side|inside_of_the_filter|inside_of_the_element|where_it_should_be_clean & contamination|contaminated|dirt|crud|grit|muck|sludge|metal|dirty|debris|swarf - no|not|nothing|spotless|none",
        "clean_side|inner_side|inside_of|inner_face|downstream|after_it's_been_filtered|filtered_side|clean_part|inside_the_core|centre_tube|center_tube|middle_of_the_element|outlet_side|past_the_element|inner_surface & dirt|dirty|muck|gritty|grit|debris|metal|sludge|specks|crud|contaminated|swarf|particles|deposits|glitter & element|filter|paper|pleats|cartridge|unfiltered|boat's|can|core - no|not|nothing|spotless|clean_as|none|pump|valve_cover|crank|bearing",
        "dirt|metal|debris|grit|glitter + clean_side|inside_the_core|downstream_side|centre_tube|wrong_side + filter|element|core|bypass|of",
    ),
    "remote_hoses_crossed": (
        "hoses|lines|pipes & outside_filter|remote_filter|remote_oil_filter|relocated_filter|remote_mount|relocation|remote & changed|wrong_way|in_is_out|crossed|swapped|reversed|transposed|mixed|wrong|other_way|kinked|kink|folded|back_to_front - no|not|correct|right_way|fuel|leak|leaking",
        "feed_and_return|in_and_out|flow_and_return|supply_and_return|inlet_and_outlet|hoses_to_the_filter|relocation_kit|remote_kit|remote_filter|remote_head|remote_mount|bulkhead_filter|filter_plumbing|plumbed + swapped|crossed|backwards|reversed|wrong_way|doubled_over|kinked|folded|mixed_up|transposed|kink|wrong_ports|back_to_front|bent_double|wrong_holes|swapped_over - no|not|fuel|water|gauge|coolant|brake|heater|turbo|sensor|correct|right|rotor|plunger|crank",
        "hose|pipe|line|lines + remote|bulkhead_filter|relocated|filter_kit|remote_filter + kinked|doubled_over|folded|kink|pinched|flattened|crossed|bent_double|swapped - no|not|fuel|water|gauge",
        "hose|hoses|lines|pipes + crossed|swapped|reversed|back_to_front|wrong_way|wrong_ports|mixed_up|round_the_wrong|backwards + remote|filter|cooler|were|kit|fitted|had|on - turned|cranked|by_hand|rotor|radiator|plunger|fuel|heater",
        "hoses|lines|pipes + wrong_ports|wrong_port|crossed|crossed_over|mixed_up|transposed|wrong_way_round - no|not|fuel|water|brake|coolant",
    ),
    "milky_film_in_filter": (
        "filter|element|pleats|paper|media|cartridge|filter_paper + slime|milky|creamy|whitish|white|mayo|mayonnaise|emulsion|grey_film|grey_slime|gray_film|custard|paste|cream|white_goo|snotty|jelly|yoghurt|beige & slime|film|goo|paste|all_over|coat|coated|coating|on_it|stuff|sludge|mayo|layer|emulsion|covered|cream - no|not|none|clean|filler|cap|cover|dipstick|metal|whitemetal|fuel|air",
        "filter|element|pleats|paper + milky|white_paste|mayo|mayonnaise|grey_paste|emulsion|creamy|grey_film|white_film - no|not",
    ),
    "filter_bulged": (
        "filter|can|spin-on|canister|cartridge|spinon|screw-on & bulged|bulge|bulging|swollen|swelled|fat|puffed|ballooned|distended|domed|pregnant|blown_up|inflated|bloated|pushed_outward|rounded_out|extruded - no|not|never|flat|air|tyre|cooler|hose|burst|jerry|element",
    ),
    "sealer_in_filter": (
        "filter|pleats|element|spin-on|paper|cartridge|media + sealer|sealant|silicone|rtv|blue_goo|goo|goop|jointing|jointing_compound|gasket_maker|instant_gasket|hylomar|red_goo|orange_goo|black_goo|compound|liquid_gasket|rubbery + strings|beads|crumbs|bits|worms|blobs|lumps|strands|shreds|caught|in|came_out|full|snakes|curls|stuck|pieces|ribbons - no|not|none|nothing|resealed|threads|thread|never|creamy|white|thread_sealant|base|milky|gasket_face",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_fed_device_failed_first": (
        "governor|phaser|tensioner|clutch|vvt|gearbox|actuator + carried_on|kept|still|never_missed|continued|went_on + working|works|fine|as_before|normally|usual|holding|properly|as_ever - until|then|light|failed",
    ),
    "filter_burst": (
        "filter|spin-on|canister|can + held|stayed_whole|@not_burst|@not_split|@not_blow|whole|in_one_piece|intact + held|fine|whole|piece|intact|throughout|burst|split|blow - but|gasket_blew",
    ),
    "filter_bulged": (
        "filter|can|spin-on|canister + flat_end|straight_sides|kept_its_shape|in_shape|@not_bulged|@not_swollen|no_bulge|no_swelling|good_shape|normal_shape|true_shape|same_shape - but",
    ),
    "filter_not_listed": (
        "filter|spin-on|cartridge & part_number|catalogue|catalog|listed|maker's|genuine|oem + matches|right|correct|agrees|as_listed|listed_for|the_one|checks_out|genuine|same_as - not|wrong|doesnt|other|different|isnt",
    ),
    "remote_hoses_crossed": (
        "hoses|pipes|lines|feed_and_return|in_and_out + remote|filter|bulkhead|relocation + right_way|correct|@not_crossed|right_ports|as_marked|right_round|no_kinks|right_holes|correctly - wrong",
    ),
    "filter_stays_cold": (
        "filter|spin-on|canister|can + as_hot|hot_as|warms|warmed|gets_hot|got_hot|too_hot|warm_as|hot_too|warm_too|hot_to_touch|heats_up|same_temperature|hot_as_the + block|engine|rest|too|everything|with|as|touch|minutes|sump|up|along - not|never|cold|oil_warm|pressure",
    ),
    "cooler_stays_cold": (
        "cooler|oil_radiator|heat_exchanger|cooler_lines + warm|hot|heats|warms + all_over|right_through|evenly|end_to_end|throughout|both_ends|all_through|both_hoses|whole_way|in_and_out|all_the_way - not|only|never|but_not|cold",
    ),
    "filter_drop_high": (
        "only|just|barely|hardly|scarcely|no|not|small|little|next_to_no|same|equal + filter|element + across|over|lost|loss|drop|difference|each_side|either_side|both_sides|differential + psi|pounds|bar|pressure|@pressure|no|nothing|drop|difference|side|sides - oil_leak|dirt",
    ),
    "filter_misfitted": (
        "one_gasket|single_gasket|only_one_gasket|one_seal|right_thread|correct_thread|no_double_gasket|old_gasket_came_off|old_seal_came_off|only_one_seal|one_o-ring + filter|spin-on|there|thread|stem|head|off - two|missing",
    ),
    "filter_empty_after_standing": (
        "filter|spin-on|canister|came_off|took_it_off & full|brim_full|brimful|brim|slopped|poured_out|full_of_oil|still_full|to_the_top|spilled|spilt|still_had_oil & morning|overnight|next_day|stood|standing|night|day_later|hours_later|sitting|weekend - not|empty|dirt|sludge|metal|dipstick|debris",
    ),
    "anti_drainback_hard": (
        "flap|membrane|anti-drainback|antidrain|drainback|non-return|rubber_disc|rubber_valve + soft|supple|whole|flexible|pliable|good|fine|sealing|intact|rubbery|springy|like_new - not|hard|but|relief|no_longer|bypass",
    ),
    "filter_collapsed": (
        "pleats|element|core|paper|centre_tube|center_tube|folds + straight|round|in_shape|standing|upright|even|whole|@not_collapsed|@not_crushed|not_torn|undamaged|good_shape|intact|shape - but|torn_out|squashed|bent",
    ),
    "filter_bypass_witness": (
        "clean_side|inner_side|inner_face|inside_of_the_pleats|inside_of_the_element|filtered_side|inside_of_the_paper|core|downstream & spotless|nothing|clean|no_dirt|no_debris|@not_dirt|not_a_speck|no_metal|no_grit & pleats|element|filter|paper|cartridge|side - but|except|dirty|gritty",
    ),
    "sealer_in_filter": (
        "no|none|nothing|not_a|nil|without + sealer|sealant|silicone|rtv|goo|jointing + filter|pleats|element|paper - but|pan|sump",
    ),
    "filter_bypass_stuck_shut": (
        "bypass|by-pass|filter_valve|filter_bypass + opens|moves|free|pushes|springs|gives + when|push|pushed|freely|back|press|easily|pressed|thumb - not|stuck|relief|wont|only",
    ),
    "bypass_valve_misfitted": (
        "bypass|by-pass|filter_valve + right_one|right_way|correct|correctly|as_drawn|drawing|fitted_right|right_order|properly_fitted|proper_way - not|wrong|isnt|relief",
    ),
    "cooler_found_blocked": (
        "cooler|oil_radiator|heat_exchanger|cooler_lines + clear|free|flows|blew_through|clean_inside|no_restriction|unobstructed|flushed_clear|no_blockage|runs_freely|@not_blocked|oil_runs_through - not_clear|but|outside|half|barely",
    ),
}
