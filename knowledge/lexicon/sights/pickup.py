"""Words for pickup, screen and sump."""

from __future__ import annotations

_RING = "gasket|ring|seal|o-ring|oring"
_SCREEN = "screen|strainer|gauze|mesh|pickup|pick-up|=pick_=up"
_PIPE = "pipe|tube|pickup|pick-up|=pick_=up|suction"
_SUMP = "sump|pan|oilpan"
_BLOCKED = "blocked|plugged|bunged|clogged|choked|sludged|restricted|obstructed|solid|stopped_up|closed_up|nearly_closed|filled"
_HELPS = (
    "cures|cured|hides|stops|stopped|halves|helps|helped|steadies|masks|fixes|fixed|brings|keeps"
)
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "pressure_back_after_thaw": (
        "towed|moved|pushed|put|brought|rolled|left|sat|stood|dragged|parked|into|in .. heated|warm|heated-up|inside|indoors shop|garage|workshop|barn|"
        "building|overnight|all .. starts|started|fired|pressure|fine|good|normal|right|back|came|runs|ran|then",
        "once|after|when|as-soon-as it|engine|the-engine|oil|truck|car had|was|got|is|has|thawed|heated thawed|heated out|up|"
        "through|again? .. pressure|fine|normal|back|good|ok",
        "block|engine|oil|pan heater|heated plugged|overnight|on|up .. fine|normal|good|pressure|ok|back",
        "thawed|thawing|thaw|defrosted",
        "warmed|warming|heated .. through|out|heater|garage|workshop .. pressure|came|back|fine|ok",
    ),
    "screen_blocked": (
        "pickup|screen|strainer|pick-up|gauze screen|was|is|tube|half|completely|totally|partly|partially|found|all|up|nearly? "
        "blocked|clogged|plugged|full|choked|blocked-up|restricted|clogging",
        "half|partly|partially|completely|totally blocked|clogged|plugged|choked with? sludge|gasket|rtv|silicone|debris|crud",
        "clogged|blocked|plugged pickup|screen|strainer|oil",
        "screen|strainer|gauze|mesh|pickup .. covered|choked|blocked|clogged|plugged|matted|caked|smothered with|by|in|up|solid",
        "quarters|half|third|most|all of? the|its? screen|strainer|gauze|mesh|pickup .. blocked|covered|clogged",
    ),
    "sealer_on_screen": (
        "orange|blue|red|grey|gray|copper-coloured rubbery|little|tiny|small|stringy? worms|strings|snakes|ribbons|strands|threads|blobs|curls|crumbs|strips .. screen|strainer|pickup|gauze",
        "worms|strings|snakes|ribbons|strands|threads|blobs|curls|crumbs|strips of? orange|blue|red|grey|gray|copper-coloured? silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket .. screen|strainer|pickup|gauze",
    ),
    "sump_dented": (
        "sump|pan hit|clouted|whacked|bashed|caught|grounded|scraped|bottomed-out|bottomed on|by|a|against|the? kerb|curb|rock|rocks|stump|speed-bump|ramp|"
        "stone|log|debris|road",
        "dent|dented|bashed in|the|a? .. sump|pan|oil-pan",
        "sump|pan .. dented|dent",
        "sump|pan hit|struck|grounded|clouted|whacked|caught a|the|on rock|kerb|curb|stump|ground|stone|something",
        "hit|struck|clouted a|the|something rock|kerb|curb|stump|stone .. sump|pan",
        "jack .. under|on|mark .. sump|pan",
        "=bottomed out on|over|hard",
        "=bottomed|=grounded out|the|it|my? .. sump|pan|car",
    ),
    "tank_still_full": (
        "tank|reservoir is|was|all? still|nearly full",
        "oil tank|reservoir is|was|all? full",
        "oil-tank|oiltank is|was? full",
        "plenty|lots|loads of? oil in the? tank|reservoir",
        "oil not leaving|left|moving the|from? tank",
    ),
    "suction_hose_flattens": (
        "hose|pipe|line|sucked|sucks collapses|collapsed|collapsing|flattens|flattened|flat|sucked flat|shut|in?",
        "sucked-flat|soft|kinked|collapsed|flattened hose|suction",
    ),
    "oil_slow_to_return": (
        "takes|took ages|long|minutes|forever to .. drain|run|come|return back|down",
        "oil stays|held|hung|trapped|stuck|pooled|pools up|in the? top|head|heads|valley|covers",
        "level|stick drops|falls|low|lower right|straight|just after .. run|revving|stopping|driving",
    ),
    "something_missed_after_work": (
        "lost|missing a|one shop? rag|cloth|towel",
        "rag|cloth|towel|bolt|nut|washer|cap|plug|circlip was|were|is never|not found|recovered|accounted",
        "rag|cloth|towel|bolt|nut|washer|circlip went|gone|goes missing|astray|awol",
    ),
    "sealer_squeezed_out": (
        "too much|lots silicone|rtv|sealant|sealer|goop",
        "silicone|rtv|sealant|sealer|goop squeezed|oozing|oozed|everywhere|all out|over?",
        "loads|plenty|lots|gobs|tons|excess of? silicone|rtv|sealant|sealer|goop",
    ),
    "pickup_gap_too_small": (
        "pickup|screen|strainer too close|near|low to|the|tight",
        "pickup|screen|strainer .. touching|touches|hits|hitting|sits|resting|against|rubbing the|on|of? bottom|floor|sump|pan",
        "no clearance|gap|space under|below|between the? pickup|strainer|screen",
        "pan|sump|dent|floor .. against|touching|touches|fouling|onto|hitting the? oil? pickup|strainer|screen",
    ),
    "pickup_gap_too_large": (
        "pickup|screen|strainer too|was|is? too|inch high|far|short",
        "pickup|screen|strainer .. inch|length|inches|far|way off|from|above the? bottom|floor|pan|sump",
    ),
    "pickup_witness_mark": (
        "pickup|screen|strainer|shiny|witness|print .. mark|marks|ring|print|rubbed .. sump|pan|floor|bottom",
        "shiny|rub|witness ring|mark|marks in|on the? sump|pan|floor|bottom",
    ),
    "oil_trapped_in_sump": (
        "oil trapped|stays|sits|stuck|held in|at|behind the? front|rear|baffle|end|corner|well",
        "sump|pan @not drain to|towards the? pickup|back",
    ),
    "foreign_material_on_screen": (
        "something|junk|trash|debris|rubbish|leaves|bits stuck|in|on|across|over|blocking in|the|against? the? oil? pickup|screen|"
        "strainer|gauze",
    ),
    "varnish_on_screen": (
        "varnish|lacquer|brown-coating on|in the? pickup? screen|mesh|strainer|gauze",
    ),
    "metal_past_the_screen": (
        "metal|debris|bits behind|past|inside|through the? mesh|screen|gauze|strainer",
    ),
    "tray_rubbed": (
        "rods|counterweights|crank|rod hit|hits|hitting|rubbed|rubbing|touching|caught the? windage? tray",
        "tray rubbed|rubbing|marks|marked|polished|gouged",
    ),
    "returns_blocked": (
        "drainback|return|drain|returns hole|holes|passages .. blocked|clogged|plugged|sludged|covered",
        "blocked|clogged|plugged|sludged oil? drainback|return|drain hole|holes|passages",
    ),
    "oil_valve_found_shut": (
        "oil|tank|shutoff|shut-off tap|valve|cock .. shut|closed|off",
        "forgot|forgotten|left .. oil|tank tap|valve|cock closed|shut|off?",
    ),
    "suction_seal_cut_or_missing": (
        "pinched|cut|torn|hard|missing|wrong|nicked|flattened o-ring|oring on|at|in .. pickup|suction|tube|pipe",
        "no|without o-ring|oring|gasket|seal on|at|in|fitted the? oil? pickup|pick-up|suction|tube",
        "pickup|suction .. o-ring|oring .. pinched|cut|torn|hard|missing|wrong|nicked|flat|flattened|gone|perished",
        "o ring on|at|in .. pickup .. hard|flat|cut|torn|missing",
        f"reused|re-used|used|kept the|its|my? old|original|same {_RING} between|on|for|at|in the? pickup|pick-up|pick|suction",
        f"{_RING} between|on|at the? pickup|pick-up|pickup-tube|suction|strainer tube|pipe? and|to|at? the? pump? was|is|had|came flat|nicked|hard|cut|torn|pinched|rolled|gone|brittle|square",
    ),
    "pickup_bent": (
        "pickup|pick-up|tube .. bent|twisted|crooked",
        "pickup|pick-up|tube .. pushed up|over|against|aside|flat|sideways|upwards|back",
        "bent|twisted oil? pickup|pick-up",
    ),
    "tray_very_old": (
        "@years|year old windage? tray",
        "original|old windage tray",
    ),
    "bubbles_in_joint_test": (
        "bubbles at|from|in the? joint|tube|braze|pipe",
        "leaks air at|on|from",
    ),
    "pickup_fell_off": (
        "pickup|pick-up|strainer|tube fell|fallen|dropped|came|come|lying|laying|broke|found off|out|down|in|at the|into? bottom|of|"
        "sump|pan?",
        "pickup|pick-up in|lying the? bottom of? the? sump|pan",
    ),
    "overfill_steadies_it": (
        "pressure|it|light|gauge|needle|lamp =comes|=came|=is|=goes|=reads|=stays|=behaves|=was right|good|fine|back|up|steady|normal|ok|out|off? if|when|with|once|after .. overfill|overfilled|overfilling|over-full|overfull",
        "overfill|overfilled|overfilling it|her|by .. it|she|pressure|light|lamp|needle|gauge =behaves|=behaved|steady|steadies|fine|good|right|stays|comes|is|goes",
        "fine|good|steady|right|ok|behaves only? when|if|with it's|it|i? overfull|over-full|overfilled|overfill",
        "better|improves|improved|helps|helped|right|steady|steadies|normal|fine|ok|good|back|higher|cures|cured .. if|when|with|by|once .. overfill|overfilled|overfilling|over-fill|over-filled|over-full|overfull",
        "overfill|overfilled|overfilling|over-fill|over-filled|over-full|overfull .. it|by|she|pressure|helps|makes|brings .. better|improves|improved|helps|helped|right|steady|steadies|normal|fine|ok|good|back|higher|cures|cured",
        "better|improves|improved|helps|helped|right|steady|steadies|normal|fine|ok|good|back|higher|cures|cured .. if|when|with|by|once .. @volume|quart|litre|liter|pint|half-litre extra|over|too|more|above",
        "if|when|with|once|putting|adding .. @volume|quart|litre|liter|pint|half-litre extra|too|over|above .. pressure|gauge|needle|light|lamp|it is|comes|goes|stays|reads|gets|brings|makes|helps better|improves|improved|helps|helped|right|steady|steadies|normal|fine|ok|good|back|higher|cures|cured|up|out",
        "extra @volume|quart|litre|liter|pint|half-litre .. over|above|more|brings|makes|steadies .. better|improves|improved|helps|helped|right|steady|steadies|normal|fine|ok|good|back|higher|cures|cured",
    ),
    "pickup_tube_rocks": (
        "pickup|pick-up|strainer|suction tube|pipe? swings|swinging|flaps|flapping|waves|wags|waggles|flops|moves|moving about|around|freely|loose|side-to-side|on",
        "whole tube|pipe|pickup|thing swings|flaps|waves|waggles|flops|rocks|moves about|around|freely|loose",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "screen_blocked": (
        f"{_SCREEN} + {_BLOCKED}|covered|packed|matted|caked|full_of|half_open|quarter_open|third_open - plug_hole|not|no|@not|clean|wire|fuel|isnt|filter_screen_under|sender",
    ),
    "sludge_on_screen": (
        f"{_SCREEN} + sludge|gunk|tar|jelly|goo|treacle|gunge|black_muck|carbon|crud - no|not|sealer|gasket_goo|red|blue|clean|fuel|silicone",
    ),
    "sealer_on_screen": (
        f"{_SCREEN} & silicone|rtv|sealant|sealer|gasket_goo|instant_gasket|gasket_maker|goop|hylomar|rubber & strings|bits|blobs|worms|lumps|crumbs|full|choked|blocked|clogged|in|covered|plugged|jammed - no|not|hanging",
        "rtv|silicone|sealant|sealer|gasket_goo|goo|instant_gasket + strainer|pickup|screen|gauze|pick-up - no|not|black_goo|brown_goo|oily_goo",
    ),
    "screen_torn": (
        f"{_SCREEN} + hole|torn|ripped|split|holed|perforated|rip|burst|gap - to_pan|to_sump|to_floor|to_the|pan_gap|floor|plug_hole|no|not|pump_hole|block|bolt|braze|pipe|tube|crack",
    ),
    "screen_bypass_open": (f"{_SCREEN} + bypass|by-pass + open|stuck|jammed|sprung|weak",),
    "screen_crushed": (
        f"{_SCREEN} + crushed|flattened|squashed|sucked_flat|caved|imploded|collapsed - oring|gasket|seal|o_ring|pipe_seal",
    ),
    "cloth_on_screen": (
        f"{_SCREEN}|suction|inlet + rag|cloth|towel|paper|tissue|sock|lint - no|not|lost|with_a_rag|with_rags|with_a_cloth|with_a_towel|gasket_paper|filter_paper",
        "rag|cloth|towel|paper_towel|blue_roll|tissue|sock|glove|lint|shop_towel & pickup|screen|strainer|gauze|inlet|pick-up & wrapped|round|around|over|sucked|against|on|in|stuck|covered|blocking - no|with_a_rag|with_rags|with_a_cloth|with_a_towel|cleaned_with|wiped",
    ),
    "plastic_on_screen": (
        f"{_SCREEN}|{_SUMP} + plastic|nylon|timing_gear_teeth|guide|fibre_teeth|cam_gear - hard|brittle|no|not|bag|plastic_pan|plastic_sump|oil_line",
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
        "pickup|strainer & bolts|bolt|nuts|bracket & lying|loose|missing|fell|fallen|bottom|undone|backed|sheared|snapped|dropped - tight|new|drain|pump_bolts|removed|took|undid|pump_bolt",
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
        "pickup|pick-up|strainer|it + off|from|above|clear_of|short_of + bottom|floor|pan|sump + inch|inches|@length|long_way|way|miles|far - quarter|quarter_inch|1/4|3/8|clearance|set|correct|fell|touching|no|oil_level|level|dented",
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
        "drainbacks|drainback|drain_backs|oil_returns|returns|drain_holes|return_holes + plugged|blocked|clogged|choked|full|gunged|sludged - no|not|clear|cleared",
    ),
    "oil_slow_to_return": (
        "oil + stays_up|stays_in_the_head|held_up|hangs_up|trapped_upstairs|pools_in|all_in_the_rocker|stays_up_top|up_in_the_heads|slow_to_drain|slow_to_return|takes_ages_to_drain",
        "stick|dipstick|level + after|straight_after|right_after + run|blast|fast|hard|lap|session + lower|low|less|much_lower|drops & later|minutes|wait|settles|comes_back|ten - pressure|light",
    ),
    "oil_valve_found_shut": (
        "tap|valve|cock|stopcock|isolator + oil|tank + shut|closed|off|forgot|turned_off - relief|bypass|stuck|fuel|water|exhaust|inlet|pcv|drain|check|sea|rocker|shut_off|before|pulling|while|after",
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
        "sump|pan|oil_pan + jacked|jack|whack|whacked|knock|clout|bash|hit|grounded|speed_bump|kerb|rock|curb|pushed|dinged|clouted + sump|pan|it|on|good|the|up|under|a|with - drain|leak|plug|gasket|cleaned|noise",
    ),
    "overfill_steadies_it": (
        "extra|over|above|overfilled|overfilling + quart|litre|liter|pint|half_a|mark|full & held|steady|steadied|cured|pressure_is_back|no_drop|stays_up|comes_right|fine|flicker_gone|better",
        f"overfill|overfilling|overfilled|topping_over_full|over_full|over_the_mark|above_the_mark|above_mark|over_the_line|extra_quart|extra_litre|extra_pint|litre_over|quart_over|pint_over|quarts_over|extra_two_quarts + {_HELPS} - no|not|@not|smoke|foam|froth",
        "unless|until + over_the_mark|over_full|above_the_mark|overfill|over_the_line - no|smoke|foam",
    ),
    "oil_trapped_in_sump": (
        f"oil + trapped|held|stays|sits|pooled|stuck + front|rear|end|corner|wing|behind|away + {_SUMP}|baffle|pickup|front|rear - head|rocker|valley",
    ),
    "metal_past_the_screen": (
        f"metal|debris|swarf|bits|filings + past|beyond|inside|downstream|pump_side|wrong_side + {_SCREEN}",
    ),
    "ice_at_screen": (
        "ice|=frozen|slush|froze + pickup|screen|strainer|sump|pan|oil_pump - thaw|nothing",
    ),
    "pressure_back_after_thaw": (
        "heated|warm|warmed|indoors|inside & shop|garage|workshop|barn|building|all_day|overnight & starts_with|started_with|fired_up_with|came_right_up|"
        "normal|fine|good_pressure|pressure_back|pressure_was_back|started_fine|built_right - not|still|no|hot_idle",
        "heated|thawed|thawed_out|warmed_it|warmed & overnight|hut|garage|shed|barn|workshop|heater|blanket|indoors & fine|normal|returned|back|ok|right|good - not|still|no_better",
    ),
    "sealer_squeezed_out": (
        "silicone|rtv|sealer|sealant|instant_gasket + squeezed|beads|ropes|strings|hanging|oozing|tubes|blobs|thick - no|not|filter|windscreen|strainer|screen|pickup|dropped|mat",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "screen_blocked": (
        f"{_SCREEN} + =clean|=clear|spotless|unobstructed|like_new|@not_blocked|nothing_in|nothing_on|no_debris|spotlessly|free_of - half|cleaned|to_clean",
    ),
    "sump_dented": (
        "no|without|not_a|@not + dent|dents|dented|bash|marks + sump|pan|underneath|bottom|it|anywhere",
    ),
}
