"""Words for oil outside the engine: wet, dripping, sprayed, on the ground."""

from __future__ import annotations

from knowledge.lexicon.words.names import OIL_PIPES, SENDERS

_LEAKS = "leaks|leaking|leak|leaked|leakage|weeping|weeps|seeping|seeps|dripping"
_POURS = (
    "pouring|poured|pours|gushing|gushed|=pumping|=pumped|spewing|spewed|pissing|pissed|flooding|flooded|streaming|"
    "dumping|dumped|running|ran|rushing"
)
_ITS = "all|most|much|half|lots|nearly|loads|@volume|rest|every|whole"
_BIG = "heavy|massive|catastrophic|huge|serious|rapid|severe|large|total|sudden|big|complete"
_WHOLE = "all|whole|most|entire|everything|lot|completely|dry|nearly_all|every_drop"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "oil_seen_outside": (
        "streak|streaks|streaked|run|runs|trickle|line|river of|with oil all? down|under|along|over|on|across the|my|its? block|crossmember|cross|sump|pan|"
        "bellhousing|engine|frame|chassis|side|subframe",
        "=leaks|leaking|=leak|leaked|leakage|leaky some|bit|of|a|an|lot|like|badly? of|bit? oil?",
        "oil all over|down|round|around the? place|engine|block|side|back|front|bay?",
        "oil all along the? block|engine|side|sump|pan|joint",
        "covered|wet|soaked|coated|plastered|drenched|smothered|caked|filthy in|with engine? oil",
        "external|visible|obvious|heavy|massive|major|bad|serious oil? leak|leaks",
        "oil weeping|weeps|seeping|blown|thrown out?",
        "weeping|seeping|dripping oil",
        "=drips|dripping",
        "throws|throwing|blows|blowing|spits|spitting|puking|pukes oil out|everywhere|from",
        "oil streaks|residue|streaming down|on|along|at|near",
        "oily mess",
        "a|real|right|awful mess of oil",
        "back|front|side|bottom|whole|all of the? engine|motor|block is|was|were|all? =soaked|=drenched",
        f"oil {_LEAKS}|everywhere",
        "oil running|ran down|out|from|over|along",
        "oil thrown|blown|blowing|throwing|puking out|from",
        "oily all over|underneath|down|everywhere",
        "engine|bay|motor|underside was|is|all? drenched|soaked|swimming|oily|filthy",
        f"oil {_POURS} from under|underneath|beneath|below",
        "fresh|clean|new? oil was|is? found|seen|noticed|visible around|at|near|on|along|below|under|down",
        "engine|bay|motor|underside|underneath was|is|all? saturated|awash|running|caked|black with|in oil",
        "oil running|dripping|dropping|coming off|from|down|out the? engine|block|back|front|bottom|bellhousing|exhaust|somewhere",
        "oil escaping|escaped|seeping|coming|leaking|dribbling from|past|out|through|at",
        "oil .. underside of the? bonnet|hood|engine|car",
        "engine bay|compartment|side|block|underside|bonnet|hood was|is|were|all|completely|absolutely? all|completely|absolutely? covered|coated|swimming|awash|plastered|soaked|drenched|black|running|running in|with oil",
        "oil .. now|all|is|was|ended|up? on|over|up the? underside|inside of the? bonnet|hood|engine|cover|cowl",
        "oil all|everywhere over|round|around|down|up the|my|one|its? belly|bellypan|belly-pan|block|side|engine|frame|chassis|bell-housing|exhaust|footwell|compartment|engine-bay|boot|hull",
        "covered|plastered|swimming|drenched|soaked in|with engine? oil underneath|outside|below|all|down|everywhere",
    ),
    "oil_on_the_ground": (
        "puddle|puddles|pool|pools|slick|lake of oil",
        "oil on|over|all over? the? garage|shop|hangar|workshop? floor|ground|driveway|drive|road|tarmac|concrete|"
        "street|carpet|cardboard|drip-tray",
        "@volume on|over the? ground|floor|driveway|road",
        "oil ran|running|poured|dripping|drips out? on|onto|over the? ground|floor|drive|driveway|road",
        "puddle|puddles|spots|spot|drips|pool|pools|patch|stains|stain|mess of? oil? on|under|beneath|underneath|from the|my? ground|floor|driveway|car|drive|engine|it|garage|truck|bike|boat|tractor",
        "marking|marks its territory|spot",
        "no oil under|beneath the? engine|car|bike|tractor",
        "left|leaves|leaving|made|found a|big|small|large|huge? big|small|large|huge? puddle|pool|patch|slick",
    ),
    "oil_in_the_bilge": (
        "oil|oily|black|filthy in|into|all|everywhere over|in|the? the? bilge|bilges",
        "bilge|bilges .. oil|oily|black",
        "engine room|box|bay|space floor|sole|bottom is|was|all|completely? covered|awash|swimming|full|slick in|with|of oil",
    ),
    "oil_sprayed": (
        "oil sprays|spraying|sprayed|squirting|squirts|squirted|gushing|gushed|shooting|shot|jetting|spurting|blasting|"
        "fountain|geyser",
        "spraying|squirting|gushing|sprayed|squirted|spurting|spurts|sprays|squirts oil",
        "spray|jet|fountain|geyser|shower|stream of hot? oil",
        "oil all over|everywhere the? engine|under|inside bay|compartment|bonnet|hood|engine",
        "oil =pumping|pouring|spewing out",
        "=spewing|=spewed|=chucking|=hosing|=hosed|=spitting|=puking|=throwing out|a|the? white|milky|black|hot? milky|white? =oil",
        "=spewing|=spewed|=chucking|=hosing|=hosed|=spitting|=puking|=throwing out|a|the|white|milky|black|hot? milky|white? =oil",
        "engine bay|compartment|underside of? the? bonnet|hood? was|is|were|all|of|completely|absolutely? covered|coated|plastered|sprayed|splattered|drenched in|with oil",
        "filled with smoke|steam? and? oil mist|spray",
        "oil mist|spray everywhere|in|inside|all|over|from|under|on",
    ),
    "oil_on_bodywork": (
        "stern|transom|back-end|rear-end|tail|cab|trailer|hull|topsides|deck|back|rear end? is|was|all|were|got? covered|coated|plastered|soaked|streaked in|with oil",
        "oil =down|along the? side|sides|flank of the? cab|trailer|hull|truck|lorry|bus|van|boat|tractor",
        "oil sprayed|thrown|blown|spattered|splattered over|on|onto|across the? canopy|windscreen|windshield|cab|transom|stern|trailer|deck|bonnet",
        "oil|oily on|over|all|along|down|across|under|covering|covered|coating|streaks|streaming|film|residue|everywhere "
        "the|over|on|along|across|down|of|outside|under? the|my|whole|rear|side? .. windshield|windscreen|tyre|tire|transom|"
        "bonnet|hood|boots|cowl|cowling|fuselage|airframe|belly|wheel|tailgate|bumper|wing|underside|canopy|visor|"
        "screen|bodywork|hatch|rear|leg|legs|jeans",
        "windshield|windscreen|tyre|tire|cowl|cowling|fuselage|belly|wheel|transom|hood|bonnet|underside|tailplane .. "
        "covered|coated|wet|soaked|drenched|sprayed|plastered|smothered in|with oil",
        "oil|oily on|over|all|across|onto|sprayed|up the|my|whole|rear|back? of|rear|back? tail|tailplane|back|rear|canopy|jeans|trousers|tyre|tire|window|bumper|car|leg|legs|visor|screen",
        "tail|tailplane|jeans|trousers|legs|canopy|window|rear-window was|were|all|is? covered|soaked|coated|oily|black in|with? oil?",
        "oil all over|down|up the back|rear|side|tail of",
        "oil started|began|coming|streaming|running|came? coming|running|streaming|appeared? up|back|over|down|along|onto the? windshield|windscreen|cowling|fuselage|canopy|bonnet|hood",
        "oil was|is? seen|found|noticed|visible? on|over|along the? nose|canopy|cowling|fuselage|wing|belly|tail|windscreen|windshield|gear",
        "cowling|cowl|fuselage|belly|canopy|nose|van|wing was|is|looked|all? oily",
        "back|rear|side of .. van|car|truck|boat|bike .. covered|plastered|coated|black|soaked|oily",
        "oil on|over|down|up|across|all over|down|the|my|up? the? tyre|tire|wheel|tailgate|bumper|windscreen|windshield|side|bonnet|hood|back|boot|transom|hull|belly|fuselage|wing|cowl|arch|boots|leg",
    ),
    "oil_trail_behind": (
        "black|oily|dark|wet|brown line|streak|stripe|stripes across|down|along|behind|over|all the|me|us|my? lawn|field|road|grass|drive|lane|track|water|tarmac?",
        "trail all? down|along|behind|on the? lane|road|street|me|car|drive|track",
        "laid|laying|dropping|dropped|leaving|left a? trail|oil down? down|on|of|all the|oil|along? road|track|oil?",
        "trail|slick of? oil",
        "streak|line of? oil .. road|drive|driveway|street|lane|behind|tarmac|track",
        "oil trail|slick",
        "oil all? along|down the lane|road|street|track behind|all?",
        "river|stream|line|streak|stripe|swathe|ribbon|slick|strip of engine|my|the? oil behind|down|along|across|all|after|on|from|right|round|back",
        "oil all|right|on over|round|around|on|the|of? the? track|circuit|course|stage|road|carriageway",
        "thin|long|thick|black line|streak|stripe|trail of oil",
        "=oiled|=oiling down? the? track|road|circuit",
    ),
    "oil_loss_fast": (
        f"{_BIG} and? {_BIG}? engine? oil? leak|leakage",
        f"{_BIG} and? {_BIG}? engine? oil loss",
        f"{_BIG} and? {_BIG}? loss of all? the|my|its|engine? oil|lubricant",
        f"leak is|was|got|became|turned very|really|too? {_BIG}",
        f"lost|lose|losing|loses|dumped|dumping|dumps|threw|spat|blew|shed|=pumped|=pumping {_ITS} of|out? the|its|my|her|"
        "of|sump? oil",
        f"{_ITS} of? the|its|my|her? oil is|was|had|has? gone|lost|dumped|drained|out|=pumped|leaked|disappeared|ran|"
        "poured|came|in|on|spewed out|over|the?",
        f"oil {_POURS} out|from|everywhere",
        "@volume|quarts|litres|liters of? oil? gone|lost|vanished|disappeared|went in|within|over? @time|hour|minutes?",
        "loss of all|most|nearly of? the|its? oil",
        "sudden|rapid|massive|catastrophic|total|complete|severe|major oil loss|leak",
        "sudden|rapid|massive|total|complete|severe loss of? engine? oil",
        "losing|lost|loses oil fast|rapidly|quickly|suddenly",
        "emptied|emptying|emptied|=pumped|dumped itself|its|the|out itself|sump|oil|onto|all|pan|on",
        "let|letting all? the|its? oil out",
        "oil =pumped|=pumping overboard|out",
        "sump|pan|crankcase|engine|it drained|emptied itself|completely|out",
        "emptied|emptying|drained|empties the|its|my whole|entire? sump|crankcase|pan|tank",
        "lost nearly|almost|about|practically? all|most|half|the-lot of it|them",
        "lost|dumped|spat every|the|its drop|lot|guts|load|lifeblood|contents",
        "whole|entire|complete|full sump|sumpful|contents|oil|oil-supply .. on|over|onto|down|along|across the? "
        "road|floor|ground|tarmac|track|drive|deck|motorway|street|lane",
        "every drop of? its|the? oil .. gone|lost|out|drained|dumped",
        "engine|motor|it|she|had|has lost|loses|losing|dumped|spat|threw|thrown|shed out? its|her|the? engine? oil",
        "oil|oil-supply exhausted|exhaustion",
        "loss of oil supply|contents|quantity",
        "oil supply|contents was|were? lost|exhausted",
        "oil had|has|was|found|to|have? had|has|was|found|to|have? been? =lost",
        "ran|run|running itself? out of oil within|in|after|inside",
        "dumped|threw|spat|=pumped|blew|lost @volume of? oil? on|onto|over|in|into|out|overboard|within",
        "half|most|all of? the|its? oil was|had|has? gone|lost|missing",
        "dumped|lost|=pumped|puked the lot",
        "drained|emptied|dumped|dropped|=pumped its|all|the-whole-lot|everything all|oil|lot|sump|contents? on|over|onto|into|in|out the|my? floor|road|yard|drive|car-park|ground|bilge|street|carpark|shed",
        "gallon|gallons|litres|quarts of oil? in|on|all-over the? bilge|floor|road|ground|drive|tray",
        "ran|run|went|runs|emptied|dumped|=pumped|lost|loses|threw|blew|pissed|gushing|poured out|of|itself|its|all|every|the|most|dry|from|nearly? out|of|all|its|the|oil|nearly|itself|drop oil|sump|itself|out|everything =out|=in|=within|=all|=on|=fast|=over|=everywhere|=overnight|=instantly",
        "losing|loses|lost|leaks|leaking|pouring oil|it|out =fast|=quickly|=rapidly|=badly|=everywhere|=litre|=quart|=gallon",
    ),
    "oil_caught_fire": (
        "flames|ablaze|alight",
        "burst into flames",
        "on|caught|engine|oil|electrical =fire",
        "=fire in|under the? engine|bonnet|hood|bay|cowling",
        "small|electrical|engine|an|bay|oil =fire",
        "a =fire",
    ),
    "oil_lost_only_in_frost": (
        "loses|lost|losing oil only in|when|at frost|cold|freezing",
        "breather froze",
    ),
    "oil_line_was_disturbed": (
        "disconnected|undid|undone|removed|unbolted|refitted|reconnected|disturbed|loosened the|an|both? oil|cooler "
        "cooler|line|lines|hose|hoses|pipe|pipes",
        "oil|cooler|cooler-line line|lines|hose|hoses|pipe|pipes|mount|mounts|union|unions|bolts was|were|had|been|is? disturbed|undone|disconnected|unbolted|loosened|removed|refitted|reconnected",
        "cooler was|were|had? disturbed|removed|refitted|unbolted",
        "cooler mount|mounts|bracket|bolts|hose|hoses .. renewed|replaced|refitted",
        "cooler mount|mounts|bracket|bolts|hose|hoses was|were|had? taken|took off",
        "oil|cooler|oil-cooler line|lines|hose|hoses|pipe|cooler touched|taken off",
        "oil|cooler line|lines|hose|hoses|pipe was|were? replaced|renewed|changed the? day|just|before|week|@days|hours",
        "fittings|fitting|connections|unions disturbed|undone|loosened during|at|in|for|by",
    ),
    "leaks_only_running": (
        "leak|leaks|leaking|thrown at|when|only full|high|speed|revs|under|load speed|revs|throttle|pressure",
        "stops|stopped leaking|dripping when|after|once|as shut|stopped|off|engine|switched",
        "no|not|never|doesnt|nothing a? leak|leaks|drip|drips|dripping|leaking|oil with|when the? engine|it|motor is? off|stopped|=switched-off|standing",
        "leaks|leaking|leak|drips|sprays|thrown only|just|out? when|while|with|at running|engine|revved|full|driving|speed|pressure running|speed|revs?",
    ),
    "only_small_seeps": (
        "oil|cooler|line|lines|hose|hoses|pipe|union|fitting|banjo|gasket|seal|seals|cover|filter|core is|are|just|only|a? weeps|weep|weeping|seeps|seep|seeping|sweats|sweating",
        "weeping|seeping|sweating oil? cooler|line|hose|pipe|union|fitting|banjo|gasket|seal|cover",
        "small|slight|minor|tiny|few|little|couple|odd|usual|normal oil? of? leak|leaks|drips|weep|weeps|seep|seeps|"
        "leakage|drip|seepage only?",
        "leak|leaks is|are|was|were|only|very? small|minor|slight|tiny|negligible",
        "traces|trace|damp|dampness|misting|sweating of|oil|around|at|near|round",
        "almost|hardly|barely|practically|next no|any|to oil|leak|leaks =at|=near|=from|=around|=outside",
        "almost|practically|next to? nothing =leaks|=leaking|=weeps|=drips|outside|underneath",
        "just|only|bit|little a|bit|of|the|slight? weeps|seeps|weep|seep|weeping|seepage|misting|damp",
        "light|thin|slight|faint film|mist|misting|sheen of? oil",
        "usual|normal|odd old-engine|old|few|little? drips|drip|weeps|seeps|marks",
        "leaks|weeps|drips slightly|a-bit|occasionally",
    ),
    "drops_fall_while_watched": (
        "steady|constant|continuous|regular drip|drips|dripping|dribble",
        "drip drip",
        "dripping steadily|constantly|continuously|fast",
        "drip|drips .. every|per second|few|couple|minute",
        "drop|drops of? oil falling|fall|fell|dripping",
        "drips|dripping oil steadily|constantly|all",
        "drops form|fall",
    ),
    "several_seals_at_once": (
        "all|several|both|every|multiple of? the|its? seal|seals|gasket|gaskets leak|leaking|leaks|blew|started|weeping|"
        "went|failed",
        "leaks|leaking|leaked|oil|coming|blowing from|out|at everywhere|every|several",
        "leaks|leaking|leaked|oil|coming|blowing from|out|at every|several|all of? the? seal|seals|gasket|gaskets|joint|places",
        "blew|blown|blowing all|several|both of? the? seals|gaskets|seal",
    ),
    "oil_overboard": (
        "sheen|rainbow|slick|film on|of|around|oil the? oil|water|boat|behind",
        "oil in|with the? cooling|exhaust water",
        "oil overboard",
    ),
    "oil_from_bellhousing": (
        "oil from|out|at|in|between|dripping|leaking|coming from|out|of|the|in|at|engine? the|and? bellhousing|"
        "bell-housing|clutch|gearbox|flywheel",
        "oil .. bell housing",
        "bellhousing .. oil|dripping|wet|leak|leaking",
        "clutch slipping|slips|contaminated|soaked .. oil",
        "plug|plugs behind|by|at|near the? flywheel|flexplate|bellhousing weeping|weeps|leaking|leaks|seeping|dripping|drips|leaked",
        "rear|back cam|camshaft|gallery core? plug leaks|leaking|weeps|weeping|drips|dripping|leaked",
    ),
    "sump_found_holed": (
        "hole|crack|split|holed|cracked|punctured|torn|rust-hole|gash in|the|through|open|rusted the|my|a|oil? sump|pan|"
        "crankcase|oil-pan|casing",
        "sump|pan|oil-pan|crankcase|casing was|is|had|has|badly? cracked|holed|split|torn|punctured|rusted|broken|ripped "
        "through|open?",
        "=ripped|=tore|=punched .. sump|pan",
        "split the|my|its|his|her? oil? sump|pan",
        "chunk|chunks|lump|lumps|piece|pieces of aluminium|aluminum|alloy|casting|sump|crankcase|oil-pan on|in|under|over the|my? undertray|belly-pan|road|track|ground|floor|tarmac",
    ),
    "cup_plug_found_out": (
        "core|cup|freeze|welch|frost|expansion plug .. out|missing|gone|blew|popped",
        "blew|popped|lost|spat|pushed .. core|cup|freeze|welch|frost plug",
    ),
    "seal_or_gasket_wet": (
        "oil =runs|=running|=leaks|=leaking|=weeping|=seeping|=coming|=drips|=dripping from|out|past|at|of the? main|crank|front|rear|valve|rocker|sump|pan|timing|shaft|cover|head|side|seal|gasket seal|gasket|cover|joint|plate|oil?",
        "drain|sump plug|plug's washer|gasket|seal|thread|threads|o-ring? is|was? weeping|weeps|dripping|drips|seeping|seeps|leaks|leaking|damp",
        "rear|front|main|crank|crankshaft|cam|rms|timing main|crank|crankshaft|oil|end|cover|case? seal|main|rms has|have|just|suddenly? blew|blown|failed|gone|went|popped|burst|split|quit out|up?",
        "rear|front|main|crank|crankshaft|cam main|crank|oil|end|cover|case? seal|main|rms has|have|just? let|gave|given go|up|way|out",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_seen_outside": (
        "engine|motor|block|outside|everything is|was|all|bone|completely|perfectly? =dry outside|externally|underneath|"
        "as|everywhere|all",
        "dry as a bone|chip",
        "bone dry underneath|outside|externally|engine",
        "=dry outside|externally|underneath",
        "no sign|signs|trace of a|any? leak|leaks|oil|leakage outside|anywhere?",
        "oil tight engine",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "oil_seen_outside": (
        "oil + down_the|all_over|running_down|pouring|covered|dripping|coated|leaking|everywhere|weeping|streaming|all_down_the + block|engine|outside|exhaust|back_of_the|crossmember|underneath|engine_bay|bellhousing|starter|subframe|sump_rail|undertray - no|not|bone|dry|inside|bearing|gallery|drill|priming|rocker_shaft|hole_in_the_gallery|distributor|lifter|tensioner|sender|cam|valley|bores|rockers|pressure_out|heads|valve_covers_off|cover_off|poured|filter_boss|trailer|level|let",
        "oil & on_the_underside|over_the_underside|up_the_underside|on_the_inside_of_the & bonnet|hood|cowl|cover|lid - fire|cap|filler|light|no|not|rocker|valve_cover",
        "everything|whole_engine|all_the_engine|all_of_it|engine_bay|engine_room + wet|covered|soaked|oily|filthy|black - inside|rain|washed|dry|no|not|steam|smoke|water|coolant",
        "pours|pouring|poured|gushes|running|runs + oil + head|block|cover|back|side|rear|front - pump|port|inside|rockers|sump_plug|drain|no|not|drill|filter_hole|cranked",
        "block|engine|flank|motor|crankcase|exterior|engines & running_wet|streaming|shiny_wet|wet_streaks|wet_streak|fresh_oil|streaks_of_clean|wet_with_oil|glistening - inside|no|not|dry|water|steam|change|filter|bore",
    ),
    "oil_on_the_ground": (
        "puddle|pool|drips|patch|slick|spots|stain + parked|floor|garage|drive|driveway|under|ground|where_it|road|overnight|concrete - spot_where|spot_on|the_spot|no|not|water|bilge|trailer|coolant|head|sump",
        "oil|leaves|marks|drips|it + spot|puddle|territory|patch|stain|everywhere_i_park|wherever_i + park|parked|territory|stop|ground|drive|goes|i|floor - gauge|no|not",
        "leaves|left|leaving|makes|making + patch|puddle|spot|stain|pool|mess + oil|overnight|drive|floor|under|every|behind - no|not|water|coolant",
        "oil|puddle|pool + underneath|under_it|under_the_car|on_the_tray|drip_tray|bedplate|on_the_drive|on_the_deck|on_the_floor - no|not|nothing|@not|never|dry|not_a_drop",
        "bedplate|drip_tray|tray + flooded|full_of_oil|swimming|awash - no|not|battery",
        "cardboard|snow|sawdust|newspaper|drip_tray|gravel|concrete|paving|sand|slab|mat & under|underneath|beneath|slid & swimming|black|soaked|wet|oily|stained|spotted|sodden|saturated - no|not|clean|dry|water|smoke",
    ),
    "oil_on_bodywork": (
        "oil + bonnet|hood|windscreen|windshield|bumper|tailgate|trailer|wheel|wheels|transom|cowling|cowl|screen|back_of_the_car|rear_of_the_car|tyre|tire|visor|leg|fuselage|wing|caravan|boots + over|on|down|covered|up|coated|sprayed|slick|streaks|thrown|along - no|not|pickup|gauze|strainer|clean|mesh|under_the_bonnet|dry|under_the_hood",
        "transom|fender|fenders|mudguard|wheel|wheels|stern|windscreen|windshield|cab|tailgate|swim_platform|rear_window|numberplate|mudflaps & black_and_greasy|greasy|oily|dirty_with_oil|splattered|speckled|oil_that_fly|filmed_with|sprayed_with|slimy - no|not|clean|dry|wheelhouse|@not",
    ),
    "seal_or_gasket_wet": (
        "seal|rear_main|gasket|timing_cover|rocker_cover|valve_cover|front_cover + weeping|leaking|dripping|wet|oozing|seeping|leak|leaks|weeps|seeps|drips|pouring - no|not|pump|filter|pickup|dry|water|head_gasket|fuel|sender|drill|distributor|inside",
        "joint|gasket|side_cover|lip_seal|tin_cover|flange|cover_on_the_side|seal & oil_go_out|oozing|dribbling|weeping|seeping|paper_is_bad|letting_oil|oil_out|passing_oil|running_oil|wet_with_oil - no|dry|not|pump|sender|filter|@not|water|turbo|blower",
    ),
    "several_seals_at_once": (
        "several|all|three|every_seal|every_gasket|every_one|multiple|both|many + seal|seals|gaskets|gasket + leaking|weeping|leak|started|pushing|blowing|oozing & once|same_time|together|suddenly|at_once|all|started - no|not|new|fitted|replaced",
        "front_and_back|crank_ends|side_plate|three_spots|several_places|three_places|rocker_joint|front|all_over|two_places & dripping|leak|leaking|started|commenced|oil_came|began|weeping|let_go & same_week|one_afternoon|same_day|in_one_day|same_time|overnight|next_week|all_of_a_sudden|in_one_go - no|not|only|just|lost|pressure|filter",
    ),
    "oil_trail_behind": (
        "=trail|=trails|line_of_oil|=stripe|breadcrumbs + behind|lane|road|left|all_the_way|back|drive|up|down|oil - slick_down_the_back|no|trailer|trailing",
        "line|trail|streak + oil + behind|road|lane - no|not|blue|smoke",
        "spots|slick|stripe|trail|streak|dribble|breadcrumbs & on_road|on_the_road|tarmac|astern|wherever|follow_her|follow_me|follow_it|behind_me|behind_us|down_the_road|asphalt|pavement & black|oil|water|vehicle|we|home|customer - smoke|blue|no|not|@not|exhaust",
    ),
    "oil_loss_fast": (
        "emptied|dumped|=lost|pumped_out|pumped_the_lot|=pumped|spewed|drained_itself|puked + all_its_oil|all_the_oil|all_of_its|everything|whole_lot|the_lot|entire|its_oil|sump|@volume|oil_in - foot|drill|primed|pressure|power|no|not|tank|coolant|fuel|i_drained|some|drained_the|bit|little|wheel|prime|never|count|little_oil|shop|only|filled|fresh|tray|bucket|put_in|dumped_in",
        "@volume + lost|gone|disappeared|vanished|dumped + minutes|miles|hour|@time|@distance - every|per|over_a_year",
        f"=lost|=loses|losing|dumped|emptied|drained|=pumped|threw|thrown|blew|blown|spat|ejected|shed|spilled|=leaked + {_WHOLE}|litres|quarts|great_rate|@volume|its|rapidly|fast + "
        f"oil|sump|sumpful|oil_in|road|dry|its_oil|lubricant - pressure|power|i|we|water|coolant|fuel|some|little|bit|drained_the|of_the_oil_was_drained|per|every|"
        "a_month|slowly|cap|filler|tank_empties|seal|dipstick|prime|changed|service|refilled|gauge|stick|each|no|not|used|drill|blew_it_out|cold_air|none",
        "oil_loss|loss_of_oil|oil_quantity|oil_level|oil_contents + rapid|rapidly|minutes|hour|minute|quarts|litres|fell_to_zero|to_zero|fast|seconds|fell_rapidly - pressure|no|not|every",
        "minute|minutes|hour|hours|seconds|mile|miles|@time|@distance & tank|sump|oil|engine & empty|emptied|gone|dry|disappeared|all_gone|vanished|none_left - pressure|changed|ago|change|"
        "since|service|filter|overhaul|next|morning|overnight|standing|rebuild|tank_tap|crank|used|warm|stood|checked|temperature|topped|after_running|every|pump|inside",
        "oil + gushed|gushing|poured_out|pouring_out|streamed_out|=pumping_out|pissing_out|haemorrhaged|hemorrhaged|flooded_out|torrent|cascading - drill|bath|drain|rocker|cover|hole_in|gallery|cranked|crank|"
        "past|port|into_the_timing|prime",
        "lost|dumped|lose|loses|gone|emptied|out + gallon|gallons|litres|quarts|sumpful|all_the_oil|everything|its_oil|the_oil|its_whole|itself|five_litres|six_quarts + "
        "minute|minutes|mile|miles|road|trip|bay|seconds|stream|everywhere|instantly|hour|yards|hundred - pressure|changed|drained|month|week|per|every|coolant|water|change|dipstick",
        "oil|oil_level + leaving_in_a|in_a_stream|coming_out_in|left_in_a|running_out_as_fast|as_fast_as|out_the_bottom|straight_out|dropped_to_nothing|went_to_nothing|fell_to_nothing - pressure|gauge|needle",
        "five|six|four|three|@volume|litres|quarts|gallon + oil|on_the_road|on_the_floor|on_the_ground|under_it + road|floor|ground|minute|minutes|seconds|drive|garage - pump|cylinder|gear|chain|drained|change|poured|put|every|spilt|spilled|added|holds|took|needs",
        "lost|loses|run_out|ran_out|gone|dumped|emptied|drained|pumped & full_fill|whole_fill|it_had_all|all_run|every_drop|entire_fill|sumpful|whole_lot|whole_sump & in_under|within|minutes|hour|by_noon|hours|@time|by_lunch|an_hour|seconds - power|pressure|not|@not|coolant|water|fuel|i_drained|tank",
    ),
    "leaks_only_running": (
        "leak|leaks|drips|drip|weeps|leaking|dribbles & only|just & running|runs|engine_on|revs|revved|revving|under_pressure - no|not|oil_light",
        "squirts|pours|sprays|runs|leaks|drips + while_running|when_running|with_revs|more_with_revs|with_the_revs|engine_running|when_it_runs - fine|well|pressure|light|gauge|stood|standing|smooth|it_runs_well",
        "dry_static|doesnt_drip_parked|bone_dry|nothing_comes|@not_drip|dry_parked|dry_when_stopped|no_drip & running|runs|=runing|rev|revs|rpm|goose|under_way|throttle|underway & leaks|leak|pours|worse|sprays|runs_out - frost|cold|pressure|inside|winter|highway",
        "dry_static|static|dry_at_rest|dry_when_stopped|dry_standing & leak_rate|follows_rpm|follows_the_revs|leaks_with_revs|with_rpm|more_with_revs",
    ),
    "oil_sprayed": (
        "oil + spray|spraying|sprayed|squirting|squirted|jet|fountain|mist|squirts|sprays|spurting|geyser - no|not|hole|drill|priming|rockers|rocker|cover_off|port|crank|cranked|cam|sender|piston|jets|squirter|head|lifter",
        f"shooting|spurting|jetting|hosing|squirting|spurted|spraying|fountain|fountaining & oil|it & out & runs|running|throttle|engine|revs - cranked|crank|starter|{SENDERS}|port|drill|hole|rockers|no|not|@not|water|fuel|gauge|tank",
    ),
    "oil_from_bellhousing": (
        "bellhousing|bell_housing|clutch + oil|dripping|leak|leaking|wet|drips|coming|slips + from|out|on|with|oil|of|hole - no|not|cable|fluid|dry|pressed",
        "weep_hole|between_motor_and|between_engine_and|bell|clutch_housing|flywheel_housing|inspection_hole|bellhousing & gearbox|trans|transmission|hole|motor|clutch|engine|bottom & raining|drops|dripping|oil|weeping|pouring|drips|pissing - dry|no|not|@not|water_pump|gearbox_oil",
    ),
    "only_small_seeps": (
        "slight|minor|small|few|tiny|little|trace + weep|seep|seepage|=drops|misting|damp|dampness|leak|leaks|oil_misting|weepage|drips|sweating - no|pressure|not|large|quickly|it_drops|slowly_drops|next_few|miles|drops_over|massive|play|water|coolant|vacuum|air|lubricant_left",
        "slight_weep|small_weep|bit_damp|slight_sweat|little_damp|one_weep|tiny_weep|slight_seep & thats_the_lot|thats_all|nothing_more|no_more|nothing_else|and_no_more",
    ),
    "oil_line_was_disturbed": (
        "oil_line|oil_pipe|oil_hose|oil_hoses|cooler_line|cooler_lines|cooler_hose|cooler_hoses|hose|hoses|oil_cooler|cooler|lines|line|fitting|union + renewed|refitted|replaced|disconnected|removed|off|changed|disturbed|undone|reconnected|loosened|fitted + day_before|last_week|"
        "days|week|hours|during_the_work|before|yesterday|inspection|service|last_check|recently|at_the_last|just|work|weeks|overhaul|at_it|been_off|flying_hours|ago|previous_day|flight_before|morning - blew|broke|burst|came_off|radiator|fuel|years|no_difference|no_better|made|"
        "gauge|turbo|seasons|year|still|popped|found_off|heater",
        f"{OIL_PIPES}|remote_filter|hoses_to_the_remote & unhooked|split|disconnected|undone|undid|apart|unbolted|pipes_of|hoses_off|pipes_off|lines_off|took_off|of_last|opened_up|broke_into & last_week|last_job|previous_repair|right_before|just_before|yesterday|last_repair|day_before|recent|at_the_last|when_i_did|last_month - burst|popped|leak|found|in_two",
    ),
    "oil_in_the_bilge": (
        "bilge|bilges|engine_tray|drip_tray|tray_under + sumpful|sump_full|sumps_worth|whole_sump|the_lot|all_of_it|lost_most|litres|quarts|gallons|@volume - water|coolant|fuel|diesel|pumped_out|no|dry|clean|gearbox",
        "it_was_oil|was_in_fact_oil|turned_out_to_be_oil|was_oil|realised_it_was_oil & bilge|bilges|engine_bay|engine_space|engine_hole|tray|under_the_boards|floorboards - gearbox|no|not",
        "bilge|bilges|engine_tray|drip_tray|engine_pan_under + oil|oily|full_of_oil|black - no|dry|clean|water|pump_off|gearbox",
        "bottom_of_the_boat|bottom_of_boat|bottom_boards|engine_pan|under_the_boards|engine_tray|floorboards|hull_bottom & oil|swimming_in_it|litres_of_oil|quarts_of_oil - clean|no|not|dry|pump|drop_of_water",
    ),
    "oil_lost_only_in_frost": (
        "only|just + frost|freezing|frosty|below_zero|cold_weather|sub-zero & loses|lost|blows|leaks|dumps|spits + oil - thick|pressure|slow",
        "frost|hard_freeze|freezing|subzero|sub-zero|strong_winter|bitter_cold|deep_cold|below_-15|below_zero|deep_freeze|arctic & loses|pukes|throws|loss|go_away|blows|spits|dumps|lost|pushes|chucks & warm|mild|summer|parked|static|never_drips|nothing|at_rest|thaw|only - as_much|same|pressure",
    ),
    "oil_overboard": (
        "slick|film|sheen|rainbow|oil + overboard|cooling_water|wet_exhaust|behind_the_boat|on_the_water|in_the_water|astern|out_the_exhaust - bilge|no|not|radiator|coolant|header|sump|oil_in_the_water_pump",
        "cooling_outlet|outlet|exhaust_water|sea_water|raw_water|wet_exhaust|discharge|telltale|cooling_water_outlet|hull & oil|colours|sheen|rainbow|film & come_out|floated|bucket|sea|hull|water|around|comes_out|spreads - no|not|@not|bilge|clean|clear|turbo|compressor|radiator",
    ),
    "oil_caught_fire": (
        "oil|engine_box|manifold|exhaust|tractor & started_burning|flared_up|blaze|flames|caught_fire|caught_light|set_alight|ablaze|in_flames|flash_fire|went_up_in & exhaust|manifold|oil|spilled|leaking|turbo|engine_box - smell|smoke_only|no|not|extinguisher|light_up|@not",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_seen_outside": (
        "bone_dry|dry|no_leaks|no_leak|not_a_drop|no_drips|no_sign_of_a_leak|no_oil_leaks|spotless|@not_leaking|leak_free + block|outside|underneath|engine|anywhere|externally|visible|seen|found|under|around|garage_floor - dipstick|stick|coolant|rad|rockers|sump_was|filter|head|water|gauge|cranked|sender|line|port|inside|radiator|fuel",
        "engine|cowling|underneath|outside|block|bay|everything|underside|cowl + dry|clean_and_dry|dry_and_clean|spotless|dry_as|bone_dry|interior_dry - not|but|sump|found_dry|run_dry|ran_dry|stick|dipstick|no_oil_in|of_oil|rockers|pump|filter|clutch|bores|start|cylinder|drysump|weather|inside_dry|oil_left|empty",
        "no|without|not_a|nothing|not_any + trace_of_oil|external_leak|external_leaks|oil_leak|oil_leaks|evidence_of_leakage|leaks|leaking|drip|leak|sign_of_a_leak|signs_of_leaks|sign_of_oil|signs_of_oil|oil_loss|visible_leak|visible_leaks - coolant|water|fuel|filter|sender|rate|pressure|stick|dipstick|cylinder|compression|"
        "relief|gallery|air|no_oil_leak_at|head|rad|radiator|seat|valve",
        "nothing|dry|clean + outside|externally|on_the_outside - inside|pump|gauge|sender",
        "block|heads|outside|crankcase|engine & dry_and_dusty|dusty|dry_all_round|dry_as_dust|bone_dry_all_over|no_wet|dust_all_over & dry|all_round|everywhere|outside - stick|rockers|oil_pump|wet_at",
    ),
    "oil_on_the_ground": (
        "@not|no|never + drip|drips|dripping|leaving|leave|puddle|puddles|spot|spots + anywhere|ground|floor|drive|oil|spot|under|a - coolant|water|anymore|any_more",
        "nothing|not_a_drop|no_oil|no_drips|dry + ground|floor|underneath|drive|tray|deck - amiss|wrong|shaft|gear|inside|gauge|needle|showed|on_a_drive|=drives",
    ),
    "oil_trail_behind": (
        "no_trail|no_spots|no_slick|no_drips|nothing_behind|leaves_nothing|no_line & behind|road|drive|follow|astern|tarmac - light",
    ),
    "oil_loss_fast": (
        "would_last|=would_last_months|takes_months|hardly_loses|barely_loses|loses_slowly|slow_loss|loses_very_little|loses_next_to & oil|sump|months|weeks|drips|it|year - pressure",
    ),
    "oil_caught_fire": (
        "no_fire|nothing_caught|no_flames|never_caught|@not_catch|no_burning & oil|fire|leak|engine|exhaust - fire_up",
    ),
    "oil_lost_only_in_frost": (
        "as_much|just_as_much|same & summer|warm|heat & winter|cold|frost & loses|leaks|lost|loss|uses - pressure",
    ),
    "oil_line_was_disturbed": (
        f"nobody_touched|no_one_touched|never_touched|not_touched|@not_touch|untouched|not_disturbed|@not_disturb|left_alone & {OIL_PIPES}|hoses|lines|cooler|pipes",
    ),
    "oil_in_the_bilge": (
        "bilge|bilges|boards|beneath_the_engine|engine_tray|bottom_of_the_boat & clean|dry|no_oil|not_a_drop|spotless|only_water|just_water|drop_of_water - not|@not|but|black|oily|pump|stick|sump",
    ),
    "oil_on_bodywork": (
        "wheels|transom|bodywork|bonnet|windscreen|fenders|tailgate|stern|paintwork & clean|no_oil|spotless|not_a_spot - not_clean|but|covered",
    ),
    "seal_or_gasket_wet": (
        "every_joint|all_the_seals|every_seal|every_gasket|all_the_joints|all_the_gaskets|seals_and_gaskets|joint_and_lip|joints_and_seals & dry|no_weep|@not_weeping|no_leaks - not_dry|but|wet|pump",
    ),
    "oil_from_bellhousing": (
        "bellhousing|clutch_housing|flywheel_housing|bell_housing & dry|no_oil|clean|not_a_drip - not_dry|but|wet|weep",
    ),
    "several_seals_at_once": (
        "only_the_one|only_one|just_the_one|just_one|one_place|no_more_than_one|single & joint|seal|spot|gasket & drips|leak|leaks|leaking|weeps|wet - lost|cylinder|pressure|was",
    ),
    "cup_plug_found_out": (
        "core_plugs|core_plug|cup_plugs|welch_plugs|frost_plugs|freeze_plugs|outside_plugs|soft_plugs & in_place|dry|all_in|all_there|seated|tight - not|@not|=out|but|wet",
    ),
    "sump_found_holed": (
        "sump|oil_pan|casing|crankcase|pan & no_hole|no_crack|no_cracks|no_holes|not_cracked|no_rust|no_splits|not_holed - but|gasket|leak",
    ),
}
