"""What is found of parts and trials, as people put it in a few words; see ``sights_short``."""

from __future__ import annotations

_SENDER = "sender|sensor|switch|sending-unit|sending"
_GAUGE = "gauge|needle|dash|panel"
_PUMP = "pump|oil-pump"
_FIXED = "fixed|cured|sorted|solved|did|restored|brought"
_GONE = "missing|absent|forgotten|gone"
_SHOP = "test|shop|master|mechanical|borrowed|second|direct|manual|garage|workshop"
#: the finding, by what is said when it is there
SIGHTS_BRIEF: dict[str, tuple[str, ...]] = {
    "small_part_left_out": (
        "forgot|forgotten|omitted|left|missing out? a|the|one? slinger|spacer|thrust-washer|shim|oil-ring|ring|washer|dowel|baffle",
        "slinger|spacer|dowel|shim|washer left|missing|forgotten|not out|refitted|put|fitted|behind|back?",
    ),
    "crank_plug_found_missing": (
        "crank|crankshaft|sludge-trap|journal|trap plug|plugs was|were|is? missing|out|gone|left|absent|loose",
        "plug|plugs missing|out|gone|loose from|in|of the? crank|crankshaft|journal|crankpin",
    ),
    "engine_seized": (
        "will|would|can|could @not =turn|=rotate at|by|over|with all|hand|bar|a|the?",
        "wont|cant|couldnt =turn|=rotate at|by|over|with all|hand|bar|a|the?",
        "engine|motor|crank is? =locked|=seized =up|=solid|=tight",
    ),
    "hard_to_turn": (
        "engine|crank|it|motor is|was|feels|seems|very|a|bit|really? tight|stiff|binding",
        "tight|stiff|hard|heavy engine|to =turn|=rotate over|by|crank|it?",
        "tight|stiff spot|place when|as .. turn|turning|turned|rotate|rotating",
    ),
    "shell_spun": (
        "tang|tangs|tab|locating sheared|bent|flattened|gone|off",
        "main|rod|big-end bearing|shell had|has|is|was? turned|rotated|spun|walked in|round|around|its?",
    ),
    "shell_backs_shiny": (
        "no crush on|left|in|at? the|shells|bearings?",
        "shell|shells|bearing|bearings backs|back|behind|rear|steel is|are|was|were|polished? shiny|polished|bright|fretted|burnished",
        "backs|back of|on the? shells|shell|bearings shiny|polished|bright|fretted|burnished",
    ),
    "signs_of_starvation": (
        "blued|blue|blueing|burnt|heat-marked|discoloured|discolored journal|journals|crankpin|crankpins|rod|crank|bearing|bearings|caps",
        "journal|journals|crankpin|crankpins|bearing|bearings|shells|crank ran|run|running|starved|bone? dry|of|blue|blued|heat oil?",
        "bearing|bearings|crank|rods|mains|top-end|engine starved of? oil?",
    ),
    "all_bearings_wiped": (
        "all|every|each of? the? bearing|bearings|shells|shell|mains|rods .. burnt|wiped|gone|ruined|shot|scrap|destroyed|copper|trashed|toast|cooked",
        "whole|entire bottom|lot|set|end .. bearings|shells wiped|gone|ruined|shot|burnt",
    ),
    "worst_far_from_pump": (
        "far|furthest|farthest|rear|front|last end|bearing|cylinder|journal .. starved|worst|worse|dry|driest",
        "far|furthest|farthest|rear|front|last main .. starved|worst|worse|driest",
        "worst|worse|driest at|on|towards|toward the? far|furthest|farthest end|from|one? pump?",
        "worse|worst the? further|farther|furthest|more from|away the? pump?",
    ),
    "one_bearing_wiped": (
        "only|just one rod|main|big-end|bearing|shell|journal? bearing|shell|end? .. wiped|gone|bad|burnt|scored|ruined|failed|marked",
        "one rod|main|big|end bearing|shell|end .. others|rest|all .. fine|good|ok|perfect|like|new",
        "only|just number|no|rod|main @number is|was|has|bearing? wiped|gone|bad|burnt|scored|ruined|failed|shot",
    ),
    "shell_edges_worn": (
        "shells|bearing|bearings|shell =worn|wear|marked|wiped|polished on|at|along|down only|the|one? edge|edges|one-side|side|one",
        "edge|edges|one side of the? shells|shell|bearings|bearing =worn|wiped|marked|polished|gone",
    ),
    "mains_worn_unevenly": (
        "centre|center|middle|front|rear|one|thrust main|mains .. worn|worse|gone|worst =most|=more|=worse|=than|=badly|=others|=only",
        "mains|main .. worn|wear unevenly|differently|more|varies|uneven|different",
    ),
    "wrong_shells_fitted": (
        "wrong size|oversize|undersize|standard|part|number|set|ones? bearings|shells|bearing|shell|mains|rods fitted|in|were|had?",
        "bearings|shells|bearing|shell were|was|are|is =wrong|=incorrect size|number|undersize|part|ones|for?",
        "standard|std shells|bearings on|with|in|but a|the? ground|undersize|reground crank|journals",
    ),
    "bearing_clearance_too_tight": (
        "bearing|main|mains|rod|rods|oil? clearance|clearances|bearings is|are|was|were|too|way|a|bit? tight|small|under|below|little",
        "not|insufficient|@not enough bearing|oil|running|main|rod? clearance|clearances",
        "too|very little|small|tight bearing|main|rod|oil? clearance|clearances",
    ),
    "clearances_at_limit": (
        "clearance|clearances|bearings|mains|rods .. at|near|on|close|just|right|under to|the|about? limit|max|maximum|top|edge|wear-limit",
        "clearance|clearances|bearings|mains|rods .. just|barely|only within|inside the? limit|limits|max|maximum|wear-limit",
        "wide|loose|upper end|side|but|of? within|inside|still limits|limit|tolerance|spec",
        "clearance|clearances on|at the? loose|wide|upper|big|generous side|end|high?",
    ),
    "needle_follows_loads": (
        "needle|gauge|it|reading moves|jumps|dips|twitches|flicks|drops|changes|rises|goes up|down|every|each|time|about|when|with|if|as .. lights|headlights|wipers|indicators|indicator|heater|fan|blower|horn|brake-light|brake-lights|lamps|radio|switch",
        "lights|headlights|wipers|indicators|heater|fan|blower|horn moves|move|makes|make|changes|affect|affects .. needle|gauge|reading",
        "needle|gauge moves|jumps|dips|twitches|flicks|drops|changes|rises|goes up|down? when|if|as|whenever|with i|you|we|the turn|switch|put|turning? on? the? lights|headlights|headlamps|wipers|indicators|heater|fan|blower|radio",
    ),
    "direct_gauge_low": (
        f"{_SHOP} gauge reads|shows|says|showed|read|gave|confirmed|confirms|agrees|agreed|also|too|same|as|the|it|is|was? low|lower|poor|bad|same|it",
        f"low|poor|bad on|with|by a|the|my|another|his? {_SHOP} gauge",
        f"{_SHOP} gauge .. same|low|agrees|confirmed|confirms =low|=it|=same|=story|=thing|=reading|=readings|=panel|=dash",
    ),
    "direct_gauge_zero": (
        f"{_SHOP} gauge reads|shows|says|showed|read|also|at|registered|gave|stayed|too? zero|nothing|none|0|nil",
        f"zero|nothing|no on|oil|pressure with|by|on? a|the|my|another|his? {_SHOP} gauge",
    ),
    "ports_differ": (
        "different|differing|other pressure|pressures|reading|readings at|on|from|between two|the|different|each|front|rear places|ports|taps|points|ends|galleries",
        "front|one|rear port|gallery|tapping|end .. rear|other|front .. psi|less|lower|more|higher =than|=less|=lower|=different",
    ),
    "good_at_pump_low_in_gallery": (
        "good|fine|normal|high|strong pressure? at|before|by|off|from the? pump|filter|housing .. low|poor|less|nothing|drops|none at|after|in|on|by the? gallery|back|rear|filter|head|end|sender",
        "pressure|drops|loss|lost across|between|through the? pump|filter and? the? gallery|block|sender?",
    ),
    "idle_below_spec": (
        "set|turned|screwed|wound|dropped|lowered|backed the|my|its? idle|tickover speed? down|lower|back|right? down?",
        "idle|idles|idling|tickover is|was|set|speed|too|about|at|around? =below|=under|=lower the? maker|book|spec|specification|figure|manual|normal",
    ),
    "crank_trap_full": (
        "crank|crankshaft|sludge|crankpin traps|trap|drillings|oilways|ways is|are|was|were|all|completely? full|packed|plugged|blocked|solid|clogged",
        "crank|crankshaft is|was|were|all|full|packed|plugged|blocked =full|=packed|=plugged|=blocked|=with|=of|=solid sludge|muck|dirt|crud|of|with?",
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
    ),
    "filter_drop_high": (
        "pressure|big|large|high drop across|over the? oil? filter",
        "before|ahead|in|front and|of after|behind|the|out? filter? .. differ|different|difference|apart|more|higher",
        "filter inlet|before .. outlet|after .. psi|bar =less|=lower|=drop|=difference|=more|=higher",
    ),
    "filter_empty_after_standing": (
        "filter was|is|comes|came|found|half|nearly|totally? =empty|=drained|=dry when|after|overnight|next|in|off|on|every|each",
        "no oil in|inside|left the? oil? filter when|after|overnight|next|off|on?",
        "filter drains|drained|empties back|down|out|overnight|when?",
    ),
    "filter_bypass_stuck_open": (
        "filter|cooler? bypass|by-pass valve? is|was|stuck|found|not|wont|never|jammed|held? open|sealing|seating|closing|close|seal|seat",
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
    ),
    "oil_wash_at_gallery_seal": (
        "oil spraying|leaking|running|pouring|escaping|blowing|squirting inside|behind|past|internally|at|between the? front|timing|cam|gallery|cover|feed|tube cover|seal|o-ring|gasket|tube|and",
        "internal|inside leak|leaking at|past|between the? cover|o-ring|gasket|feed|seal|timing",
    ),
    "one_bearing_gets_no_oil": (
        "no oil|flow at|to|from|out|reaching|getting|coming of|from|to|at? the? one|number|no|main|rod|cam|front|rear|first|last main|rod|bearing|journal|@number",
        "one|a|single main|rod|cam|bearing|journal =dry|=starved|gets no|=dry oil?",
    ),
    "high_mileage": (
        "engine|motor|it|she is|was|pretty|quite|getting|rather|well? =tired|=worn|=knackered out?",
        "high|mega|many mileage|miles|hours engine|motor|car|on|truck?",
        "tired|worn old|out engine|motor?",
    ),
    "stood_long": (
        "stood|sat|parked|stored|sitting|standing|laid|left|idle|unused|rested up|outside|in|for|out|over|all|a|about|nearly|the|unused|idle? @years|@months|winter|years|decade|decades|long|ages|time|=awhile",
        "been|was|has|had laid|stood|standing|sitting|stored|parked|sat|in|out up|store|storage|use|a|barn|idle for|since|a|long|over|all @years|@months|winter|years|long|while|ages|time",
        "not|hadnt|hasnt|never been? =run|=started|=used|=driven for|in|since|over =@years|@years|@months|years|ages|months|decade",
        "first start|run|startup|outing after|since|in|of a|the|its|long? =winter|@years|@months|storage|lay-up|layup|years|months|season",
    ),
    "earlier_breakage": (
        "broke|snapped|lost|shed|dropped|failed|shattered|let a|an|the|go|its|some? rocker|lifter|valve|spring|tensioner|guide|ring|piston|pushrod|rod|chain|gear|tooth|camshaft|pieces before|earlier|last|ago|then|previously|once|years",
    ),
    "started_unprimed": (
        "no|without|never|not|skipped|forgot any|did|the|to? pre-oiling|preoiling|=priming|pre-lube|prelube|=primed|pre-oiled before|it|the|oil|system|engine?",
        "started|fired it|up|dry? without priming|pre-oiling|prelube|oil|turning",
        "did|was @not|never prime|primed|pre-oil|preoil|prelube|pre-lube|pre-oiled",
    ),
    "maker_calls_it_normal": (
        "builder|dealer|garage|shop|mechanic|maker|they says|said|reckons|tells|told me? ,? that|thats|its|it|is|is? all right|alright",
        "maker|dealer|manufacturer|factory|book|manual|handbook|works|builder says|said|calls|reckons|considers|claims|told|states that's|thats|it|this|that|is|that|me|us? is|it's|its|perfectly|quite|all|as? normal|fine|ok|okay|acceptable|within",
        "normal|within|acceptable|fine according|per|by|says to|the? the? book|manual|dealer|maker|handbook|manufacturer|spec",
    ),
    "ran_long_without_distress": (
        "ran|run|drove|driven|running|been|going for? an|about|over|@distance|@hours|@minutes|hour|hours|miles|weeks|months|years|ages .. light|lamp|warning|like|zero .. no|without|never|fine|happily|harm|damage|noise|problem|trouble|distress|knock",
        "drove|ran|driven|rode home|back|on|it .. fine|happily|sweetly|no|without|quietly|perfectly .. no|damage|harm|noise|pressure|zero|light|knock|trouble",
    ),
    "lamp_slow_to_go_out": (
        "lamp|light =takes|=took|=taking|=stays|=stayed =longer|=slower to|on|each|every|than? go|out|off|every|start|than|before|used",
        "lamp|light slow|slower|late|later|lazy to|going|in|at|going? go|out|off|going|extinguish",
        "slow oil? lamp|light",
    ),
    "needle_stuck_at_one_value": (
        "pulled|took|unplugged|disconnected|with the? wire|lead|plug|connector off? the|from|off? sender|switch|sensor|unit? and|, ,? its|it|is|the|still|"
        "gauge|needle|stays? still|stays|remains|is|just? pegged|the-same|there|stuck|at|pinned|maxed|full|unchanged",
        f"{_GAUGE} .. always|just|constantly|permanently reads|shows|says|sits|stays|stuck|on|at|same .. same|@pressure|@number .. whatever|regardless|matter|no|always|hot|cold|idle",
        f"{_GAUGE}|it reads|shows|says|stays|is|sits|always|never the? same hot|at|all|whatever|no|always|regardless|everywhere",
        f"{_GAUGE}|it always reads|shows|says the? same",
    ),
    "new_sender_made_it_worse": (
        f"new {_SENDER} unit? .. worse|nothing|dead|zero|wilder|now|even|wrong =worse|=nothing|=dead|=zero|=even|=low|=lower|=at|=all",
        f"worse|nothing|dead|zero since|with|after|on i|the|fitting|a|my|putting? new {_SENDER}",
    ),
    "needle_off_zero_at_rest": (
        "as soon as|when|whenever|once|the-moment i|you|we? turn|switch|put the? key|ignition on? ,? engine|motor? running|on|going or|and not|off|stopped",
        "pegs|pegged|pinned|full|max|scale|high|stuck|@pressure|@number ,? ,? whether|with|if|even? the? engine|motor is? running|on|going|runs or not|off|stopped",
        "pegs|pegged|pinned|full|max|scale|high|stuck|@pressure|@number with|whether? the? key|ignition is? on|off or|and|/ on|off",
        "needle|gauge|it sits|rests|stays|reads|shows|is|hangs|stuck|stops|never below|above|off|at|@pressure|@number|returns|goes|on|psi .. zero|stop|peg|off|engine =off|=stopped|=when|=with|=key|=engine|=ignition|=parked|=standing|=turned",
        "=below =zero =when|=with|=engine|=at|=off",
        "needle|gauge @not return|returns|go|goes|come|comes|drop back|down|to|right zero|rest|stop|off|to",
    ),
    "tap_frees_needle": (
        "tap|tapping|tapped|hit|hitting|flick|flicking|bang|banging|thump|thumping|knock|knocking|rap on|the|it|my|at? the? gauge|dash|glass|dial|panel|instrument .. moves|move|jumps|jump|frees|comes|changes|rises|drops|works|up|wakes|goes",
        "needle|gauge .. moves|jumps|frees|changes|rises|wakes|works|comes .. tap|tapped|flick|thump|bang|hit|knock|rap",
    ),
    "no_sender_fitted": (
        f"no|without a|any|an? oil? pressure? {_SENDER} unit? fitted|installed|in",
        f"{_SENDER} unit? was|is|has|been? never|not|removed|missing|left fitted|installed|there|in|out",
    ),
    "sender_wire_off": (
        f"wire|lead|connector|plug|cable .. not|off|disconnected|unplugged|hanging|fallen|adrift|came|dangling =connected|=off|=disconnected|=unplugged|=hanging|=adrift|=loose|=dangling|=plugged|=attached {_SENDER}?",
        f"{_SENDER} unit? was|is|had|not|been|found|left? unplugged|disconnected|unconnected|not =connected|=plugged",
    ),
    "wire_on_wrong_sender": (
        f"gauge|lamp|light|switch wire|lead|wires on|to|connected|plugged|went|into|going the? wrong|lamp|light|switch|other {_SENDER}|terminal|switch|one",
        "wires|leads swapped|crossed|mixed|reversed|muddled up|round|over|at|on?",
    ),
    "ground_strap_bad": (
        "engine|block|motor not|isnt|badly|poorly|never|no|@not =earthed|=grounded|=earth|=ground properly|well|strap?",
        "no|bad|poor|missing|broken|rusty|corroded|loose engine|block|chassis|body|battery? earth|ground|grounding|earthing strap|lead|cable|connection|wire?",
    ),
    "sender_not_for_gauge": (
        f"{_SENDER} unit? @not|doesnt|dont|wrong match|matched|suit|for|compatible|go|range|ohms|ohm|resistance with|the|my|this|for? gauge|dash|instrument?",
        f"wrong|mismatched|incorrect oil? pressure? {_SENDER} unit? for|fitted|range|resistance|to? the|my? gauge?",
        f"two|both|twin|dual gauges|stations on|off|from one|the|a|single same? {_SENDER}",
        "sender|gauge .. 10-180|240-33|0-90|80psi|5|10 ohm|ohms|bar .. gauge|sender .. 10-180|240-33|0-90|5|10 ohm|ohms|bar",
    ),
    "reseating_cured_it": (
        "reseated|refitted|reconnected|cleaned|unplugged|pulled|wiggled|remade|pushed the? connector|connection|connections|plug|spade|terminal|terminals|contacts|wire .. cured|fixed|works|working|fine|normal|right|sorted|ok|good|back|came",
        "=reseated|=remade the? plug|connector|connection|connections|terminal",
    ),
    "wire_open_or_shorted": (
        "wiring|wire|loom|harness|cable tested|tests|test|measured|checked|found|is|was? =bad|=faulty|=open|=shorted|=short|=chafed|=rubbed|=melted|=broken circuit|through|to|out?",
        "short|open|break|fault|chafed|bare in|on|to the? wiring|wire|loom|harness|sender|ground|earth|wire",
    ),
    "sender_ground_poor": (
        f"no|bad|poor|dodgy|weak earth|ground|earthing at|on|for|to the? {_SENDER}",
        f"{_SENDER} body|unit|was|is|has|had|not|badly|bad|poor|no|poorly|@not? earthed|grounded|earth|ground properly|well?",
        f"tape|ptfe|sealant|teflon on|round|around|wrapped .. {_SENDER} threads|thread .. earth|ground|insulated|insulating",
    ),
    "jumper_ground_cures": (
        "extra|temporary|separate|jumper|additional|new|bridging earth|ground|wire|lead|cable wire|lead|cable|to|from|strap? .. fixed|cured|right|normal|good|fine|correct|works|worked|came|sorted",
        "with|ran|added|put|clipped a|an? jumper|extra|temporary|earth|ground wire|lead|cable .. normal|right|fine|good|correct|works|came|fixed|cured",
    ),
    "sender_ohms_high": (
        f"{_SENDER} .. no|infinite|open|very|too|off-scale|high ohms|resistance|circuit",
        f"no|infinite|open|high ohms|resistance|circuit at|across|on|through|from the? {_SENDER}",
    ),
    "sender_ohms_low": (
        f"{_SENDER} .. zero|0|nil|very|too|low|dead|short ohms|resistance|short|circuit",
        f"zero|0|low|dead|very ohms|low|resistance|short at|across|on|through|from|resistance the? {_SENDER}",
    ),
    "gauge_dead_on_known_signal": (
        "gauge|instrument fails|failed|bad|dead|wrong|no|reads|out on|at|with|the|a|its|bench|movement|nothing bench|test|tester|known|substitute|resistor|simulator|signal test|signal|resistor|box?",
    ),
    "other_gauge_reads_right": (
        f"{_SHOP}|another|different|new|replacement gauge .. shows|reads|says|showed|read|is|was|gave good|fine|normal|right|correct|healthy|plenty|ok|perfect",
    ),
    "oil_behind_panel": (
        "oil on|all-over|over|onto|in|into|soaked|down the|my|all? carpet|carpets|footwell|feet|foot|shoe|shoes|trousers|trouser-leg|jeans|leg|dash|dashboard|"
        "floor-mat|kick-panel|passenger|interior|seat",
        "oil dripping|drips|leaking|running|coming|dripped|drip|on on|from|out|behind|under|down|onto the? my|dash|panel|gauge|instrument|feet|foot|carpet|footwell|legs|knees|trousers|shoes",
        "oil behind|under|inside the? gauge|dash|panel|instruments",
    ),
    "gauge_line_kinked": (
        "gauge|capillary|copper line|pipe|tube .. pinched|kinked|crushed|squashed|trapped|flattened|bent",
        "pinched|kinked|crushed|squashed|trapped|flattened gauge|capillary|copper line|pipe|tube",
    ),
    "right_idle_cured_it": (
        "turned|raised|set|put|brought|upped|increased|adjusted the|up|it|idle|speed|tickover? idle|tickover|up .. light|lamp|fine|out|cured|fixed|stays|gone|good|off",
        "higher|faster idle|tickover .. light|lamp|pressure|fine|cured|fixed|gone|good|off|stays",
    ),
    "panel_reads_too_low": (
        f"{_GAUGE} gauge? reads|shows|under|is|consistently|about|always|some @pressure|@number psi|lb|pounds|low|under|less|lower low|under|less|lower|than =low|=under|=less|=lower|=than|=by",
        f"{_GAUGE} gauge? under-reads|underreads|under-reading|reads-low|pessimistic",
    ),
    "panel_off_by_constant": (
        "low|high|out|off|reads .. constant|same amount|difference",
        f"{_GAUGE}|it gauge? always|constantly|consistently|is|reads|shows @pressure|@number|about psi|lb|low|out|high|off =out|=off|=low|=high|=all|=whole|=everywhere all|the|everywhere|throughout|across?",
        "always|constantly|consistently about? @pressure|@number psi|lb|pounds? out|off|low|high|under|over",
    ),
    "no_oil_at_line_end": (
        "cracked|undid|loosened|opened|slackened|disconnected|took the? union|line|fitting|pipe|gauge|nut|hose .. nothing|no|dry|not =came|=oil|=comes|=out|=drop|=flow|=a",
        "no oil at|from|out|reaching|to|of the? end? of? the? line|union|gauge|pipe|capillary end?",
    ),
    "drill_gives_little": (
        "drill =spins|=spun|=turns|=turned|=turning =free|=freely|=easy|=easily|=light",
        "drill never|@not really|even? =load|=loads|=loaded|=bog|=bogged|=bogs|=labour|=labor|=slow|=slowed|=strain up|down?",
        "no|without any|real|much? resistance|load|drag on|to|at|from the? drill|priming",
        "drill .. without|no any|much? load|resistance|drag|effort",
    ),
    "no_oil_at_rockers": (
        "nothing|none =coming|=comes|=came|=come =out|=up|=through at|from|to|of the? rockers|rocker|top|rocker-arms|pushrods arms|end?",
        "rockers|rocker|pushrods arms? are|is|were|stay|stayed|bone? =dry",
        "oil comes|gets|reaches|goes|coming|getting|only to|up|at? to? the? rockers|rocker|head|heads on|of only? one side|bank|end|half",
    ),
    "overfill_steadies_it": (
        "pressure|it|light|gauge|needle|lamp =comes|=came|=is|=goes|=reads|=stays|=behaves|=was right|good|fine|back|up|steady|normal|ok|out|off? if|when|with|once|after .. overfill|overfilled|overfilling|over-full|overfull",
        "overfill|overfilled|overfilling it|her|by .. it|she|pressure|light|lamp|needle|gauge =behaves|=behaved|steady|steadies|fine|good|right|stays|comes|is|goes",
        "fine|good|steady|right|ok|behaves only? when|if|with it's|it|i? overfull|over-full|overfilled|overfill",
    ),
    "debris_seen_before": (
        "fibre|fibres|fluff|bits|pieces|metal|rubber|debris|flakes|plastic|gasket|shreds|silicone .. screen|filter|pan|sump|magnet|strainer at|during|on|in an|the|my|a? earlier|previous|last|past oil? change|service|drain",
        "fibre|fibres|fluff|bits|pieces|metal|rubber|debris|flakes|plastic|gasket|shreds|silicone .. screen|filter|pan|sump|magnet|strainer =last =time",
    ),
    "switch_opens_wrong": (
        "pressure? switch never|@not|always|opens|closes|stays|changes|stuck|wont open|opens|closed|shut|over|at|until|work|works =open|=opens|=closed|=wrong|=late|=early|=works|=over|=at|=until",
        "switch .. wrong|bad|faulty|dead|stuck on|with|under|against known|test|air|compressed|gauge|pressure",
    ),
    "oil_loss_fast": (
        "ran|run|went|runs|emptied|dumped|=pumped|lost|loses|threw|blew|pissed|gushing|poured out|of|itself|its|all|every|the|most|dry|from|nearly? out|of|all|its|the|oil|nearly|itself|drop oil|sump|itself|out|everything =out|=in|=within|=all|=on|=fast|=over|=everywhere|=overnight|=instantly",
        "losing|loses|lost|leaks|leaking|pouring oil|it|out =fast|=quickly|=rapidly|=badly|=everywhere|=litre|=quart|=gallon",
    ),
    "oil_on_bodywork": (
        "oil on|over|down|up|across|all over|down|the|my|up? the? tyre|tire|wheel|tailgate|bumper|windscreen|windshield|side|bonnet|hood|back|boot|transom|hull|belly|fuselage|wing|cowl|arch|boots|leg",
    ),
    "seal_or_gasket_wet": (
        "oil =runs|=running|=leaks|=leaking|=weeping|=seeping|=coming|=drips|=dripping from|out|past|at|of the? main|crank|front|rear|valve|rocker|sump|pan|timing|shaft|cover|head|side|seal|gasket seal|gasket|cover|joint|plate|oil?",
    ),
}
