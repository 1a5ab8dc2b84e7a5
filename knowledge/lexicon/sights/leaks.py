"""What is seen of oil outside the engine, and how it gets out."""

from __future__ import annotations

_OUT = "leaks|leaking|leak|leaked|leakage|weeping|weeps|seeping|seeps|dripping"
_POURS = (
    "pouring|poured|pours|gushing|gushed|=pumping|=pumped|spewing|spewed|pissing|pissed|flooding|flooded|streaming|"
    "dumping|dumped|running|ran|rushing"
)
_ITS = "all|most|much|half|lots|nearly|loads|@volume|rest|every|whole"
_BIG = "heavy|massive|catastrophic|huge|serious|rapid|severe|large|total|sudden|big|complete"
#: the finding, by what is said when it is there
SIGHTS_LEAKS: dict[str, tuple[str, ...]] = {
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
        f"oil {_OUT}|everywhere",
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
    "filter_seat_leaks": (
        "oil? filter @not seal|sealing|sealed|seat|seated|seating",
        "leak|leaks|leaking|oil|leaked|residue|weep at|from|around|near|round|past|coming|pouring from|out|of|the? the|new? "
        "oil? filter seal|seat|gasket|base|housing|adapter|adaptor|mount|head?",
        "oil escaping|leaking|coming|pouring|seeping out|from|between|at .. filter housing|head|bowl|body|seal|base?",
    ),
}
#: the finding, by what is said when it is not there
SIGHTS_LEAKS_ABSENT: dict[str, tuple[str, ...]] = {
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
