"""Words that say a finding is not there without denying it: "nearly new" is no high mileage."""

from __future__ import annotations

_GOOD = "good|fine|ok|okay|sound|tested|perfect|clean|tight|intact|alright|right|checked-out"
_CHECKED = "check|checks|checked|tests|tested|test|proved|proves|proven|look|looks|looked|is|are|was|were|all|out|found|seem|seems|verified|confirmed"
#: look like a sight and are none: of an earlier time, of no weight, of another thing
SIGHTS_NOTHING: tuple[str, ...] = (
    "high|hi pressure oil? pump was|is|got|has|and|,? been? replaced|changed|renewed|injectors|icp|leaking|rebuilt",
    "at|on|to|of the engine : normal|fine|good|ok",
    "oil down|up the|my|its|one|both back|side|sides|road|front|block|hill|drain|tube|leg|boss|filter|plug|holes|bore|bores|feed|neck|filler|gallery",
    "ran|run|running|runs|was|drove very|perfectly|really|absolutely? well|fine|good|great|ok|okay|normally|perfectly|perfect|flawlessly|lovely|sweet|strong|beautifully ,? for|until|till|then|before|up|and",
    "just|freshly|recently? rebuilt|rebuilding|overhauled|reconditioned|refurbished the|my|a|its|both? turbo|turbocharger|head|heads|carb|carbs|carburettor|carburetor|gearbox|transmission|alternator|starter|brakes|clutch|diff|axle|suspension|injectors",
    "steam train|engine|loco|locomotive",
    "engine|motor is|was? fine|good|ok|okay|normal until|till|cold|except|below|up|at|when",
    "=bang =on the? line|mark|max|full|level|money|top|spec|nail|half|right|correct",
    "ran|run|running|runs|was|drove very|perfectly|really? well|fine|good|great|ok|okay|normally|perfectly , then|until|when|suddenly",
    "ran|running|been well|fine|good|great|ok|normally to|since|after|all",
    "no noise|noises|engine .. mentioned|reported|recorded|told",
    "not said|told|stated|mentioned|given|known|recorded",
    "full throttle|speed|load|power|revs|scale|bore|flow|rebuild|overhaul|range|pressure|service",
    "good condition|order|while|bit|job|idea|reason|chance|deal|news|luck",
    "before|until the oil|engine ran|runs out|dry",
    "run|ran|running dry sump",
    "dry sump|deck|cell",
    "quote|quoted|needs|need|needed|wants|want|buy|sell|selling|price|cost|costs|for|me|is|to|is|at|into or? a|an|another? new engine|motor|car|van|truck",
    "a new engine|motor is|costs|cost|would|will|at|for",
    "one|single|previous owner|owners before|prior",
    "limp|limp-home|get-you-home home? mode",
    "limp home",
    "broke|break|broken|breaking in|-in the? new? cam|camshaft|engine|motor|rings",
    "ran|run|running|runs|start|started a|the|my|our|its? main|mains engine|engines|diesel|motor|generator|supply|power",
    "low mileage|hours|compression|gear|range|speed|idle|revs|voltage|battery|tension",
)
#: the finding, by what is said when it is not there
SIGHTS_DENIED: dict[str, tuple[str, ...]] = {
    "engine_runs_normally": (
        "runs|ran|running|sounds|sounded|idles very|really|pretty|a|bit? rough|roughly|badly|terrible|horrible|awful|lumpy|poorly|sick",
        "never|@not sounded|sound|sounds|ran|run|runs right|good|healthy|happy|normal|normally|well",
        "hammered|hammering|clattered loudly|badly|violently|horribly",
        "horrible|terrible|awful|dreadful|nasty|hell noise|noises|racket|clatter",
        "lots|loads of noise|noises",
        "loud|strange|awful|terrible|nasty|funny|odd|heavy|metallic|horrible|weird|bad|dreadful noise|noises|racket|clatter|clattering|banging",
        "very|extremely|really|so|pretty noisy|rough",
        "engine|motor is|was|became|went|got|getting|very|really|a|bit|began|started|to? very|really|a|bit? noisy|rough|sluggish|vibrating|shaking|misfiring|missing|failing|stuttering",
        "engine|motor noise|vibration|roughness|failed|failure|seizure",
        "runs|running|ran|began|started very|really|pretty|running|to? run|running? rough|roughly|badly",
        "began|started|and knocking|vibrating|shaking and|, vibrating|knocking|shaking|banging",
        "vibrating|vibration|shuddering badly|heavily|violently|and|then|through",
    ),
    "ran_on_without_pressure": (
        "shut|switched|turned|killed|cut it|her|the-engine|engine|motor|the-motor off|down? after|within|in|inside maybe|about|around|like|only|just|less-than|"
        "no-more-than|perhaps? @seconds",
        "stopped|pulled|shut|off|down over|up|off|down|it-off|it-down|engine? within|inside|in about|less-than|under? a? a|half|quarter|few|couple|@number|"
        "hundred|two|three? of? a? hundred|quarter|few? yards|metres|meters|feet|seconds|mile",
        "stopped|pulled|shut|coasted within|in|inside a? quarter|half of? a? mile",
        "hit|pressed|pulled|punched the|my? stop|kill|emergency stop|button|switch|lever|solenoid",
        "engine|motor off immediately|instantly|straight|at|right away|once",
        "stopped|shut|switched|turned|killed it|her|the|engine? engine|down|off? inside|within|in of|a? few|@seconds",
        "only|just ran|run for? a|about? few|couple|@seconds of? seconds? without|with no? oil? pressure",
        "i|we|he did|didnt not? drive|run|start|use it|her|the? engine|car|boat|tractor? any further|farther|more|again",
        "rather than risk it|her|the|anything? engine? i|we|they? shut|stopped|anchored|sailed",
        "pulled onto|over|into the|a? shoulder|side|verge|layby|lay-by|hard-shoulder and|& shut|switched|turned|stopped|killed",
        "so|and i|we stopped and anchored|drifted|sailed|called|rowed|moored|phoned|rang",
        "stopped|shut|switched it|her|him|the|engine? engine? down|off? on|to the alarm|buzzer|warning|light|lamp",
        "@not dared|dare|risked|risk to? drive|driven|driving|run|running|move|moved|moving|start|started|starting|ride|ridden|use|used",
        "@not driven|ridden|drive|driving|ride|riding|used it|her|the|my? car|van|bike|truck|pickup? since",
        "stopped|shut|switched|turned|killed|pulled it|her|engine|the|off|down|over|and engine|off|down|over? immediately|instantly|straight|at|right away|once",
        "stopped|shut|switched|turned|killed|knocked it|her|engine|the|off|down and? engine|off|down? there and? then",
        "stopped|shut|pulled|switched it|her|engine|the|over|off|down|up? engine|over|off|down? as? quick|fast|quickly|soon as he|she|i|we|they could",
        "stopped|shut|killed|switched immediately|instantly|promptly|straightaway",
        "engine? stopped|killed at once|immediately",
        "stopped|shut|switched|turned|killed off|down? as soon as|within|in a|few|@seconds|seconds?",
        "stopped|shut|switched|turned|killed it|her|the-engine|engine off|down? again? after|in|within only|just|about|less-than? @seconds",
        "pulled|coasted|rolled into|onto|in a|the? layby|lay-by|verge|shoulder|car-park and|& switched|shut|turned|killed|stopped|cut off|it|her|engine|the",
        "driver|rider|owner|i|we|pilot|helmsman|operator|he|she =stopped|=coasted|=declutched|=pulled immediately|over|straight|promptly|off",
        "driver|rider|owner|i|we|pilot|helmsman|operator|he|she =stopped|coasted|declutched|pulled at once",
        "declutched|coasted and|to .. once|immediately|stop|coasted",
        "shut|switched off|down|it .. by the driver|rider|owner at",
        "hit|pressed|pulled|threw|flicked|went|reached|dived the|for the? kill|stop|cut-off|ignition|master|cutoff|battery switch|button|key|knob|lever|cable|switch straight|at|immediately|instantly|as|right?",
        "clutch|dipped in|down|the and|clutch ignition|engine|killed|off|switched|and off|engine|it|ignition|killed?",
        "shut|switched|turned|killed|cut the? ignition|engine|motor|it|her off|down? and coasted|rolled|glided|freewheeled|drifted|called",
        "shut|switched|closed it|her|the|engine? down|off and|& called|rang|waited|anchored|sailed|drifted|coasted|towed|got",
        "engine|ignition off straight|right|immediately|at|instantly",
        "lost oil? pressure and|so|, i|we|he|she? shut|switched|killed|turned|stopped|pulled",
        "pulled|pulling|drove|steered off|over onto|on|into|to the? infield|grass|verge|shoulder|hard-shoulder|escape-road|run-off|layby|lay-by|side",
        "shut|switched|stopped|closed|turned it|her|down|off? down|off|it|her? and|to let? it|her? stand|cool|sit|rest|cooled",
    ),
    "rotor_still_when_cranked": (
        "rotor|rotor-arm|dizzy|distributor rotor|arm? kept|keeps|still|was|is|does|did turning|turns|turn|spinning|spins|rotating fine|ok|normally|though?",
    ),
    "fuse_blown": (
        f"fuse|fuses {_CHECKED}? {_CHECKED}? {_GOOD}",
        "all fuses good|fine|ok|intact",
        "new|another|replaced|fresh|changed the? fuse|relay .. no|same|still|@not change|difference|made",
    ),
    "lamp_comes_on": (
        "lamp|light|warning|alarm|buzzer stays|stayed|remains|remained|firmly? firmly? =off|=out|=unlit|=dark",
        "no oil|warning|low-pressure|red|oil-pressure pressure? lamp|light|warning|alarm|buzzer seen|lit|on|ever|came",
        "lamp|light|warning|alarm|buzzer =not =lit",
        "lamp|light|warning separate|works|tested|ok|proves|working and? works? and stays|stayed =out|=off|=dark",
        "lamp|light|warning|alarm|buzzer =didnt =come|=light|=sound|=illuminate on|up?",
    ),
    "sender_connector_loose": (
        f"connections|connection|connectors|connector|terminals|terminal|wiring {_CHECKED}? {_CHECKED}? {_GOOD}",
        f"sender|sensor|switch|electrical|wiring|gauge|pin plug {_CHECKED}? {_CHECKED}? {_GOOD}",
        "gauge connections checked",
        "cleaned|checked all? the? connections|connectors|terminals",
    ),
    "gauge_dead_on_known_signal": (
        f"gauge|cluster|instrument cluster|itself|panel? {_CHECKED}? {_CHECKED} {_GOOD}",
    ),
    "switch_opens_wrong": (
        f"oil? pressure? switch|pressure-switch {_CHECKED}? {_CHECKED} {_GOOD}",
    ),
    "needle_ignores_lead_test": (
        "grounded|grounding|earthed|earthing|shorted|shorting .. wire|lead|terminal .. needle|gauge .. swings|went|swung|moves|moved|pegs|full|pegged",
        "needle|gauge swings|goes|pegs|went|moves|swung full|over|across|to .. grounded|earthed|shorted|grounding|earthing",
    ),
    "lamp_dead_with_key_on": (
        "lamp|light|alarm|bulb|buzzer works|comes|lights|working|sounds|work|come fully|fine|on|ok|properly|normally? with|at|when .. key|ignition",
        "lamp|light|alarm|bulb .. works|comes|lights .. key|ignition",
        "lamp|light|alarm|bulb is|was? =lit|on|glows with|at|when|before .. key|ignition|starting",
    ),
    "other_gauges_also_wrong": (
        "all|every|both of? the|my? gauges|gauge|instruments|dials|needles|readings is|are|was|were|read|reading|looked|showed|stayed|normal|all? in|where|fine|normal|ok|good|green|right|clear|steady",
        "other|rest|fuel|temp|temperature of? the? gauges|instruments|lamps|lights|dials is|are|all|were|read|work? fine|normal|ok|work|good|working|normally|light",
        "other|rest|fuel|temp|temperature|remaining of? the? gauges|gauge|instruments|dials all|both|still|seem|work|to|read|are|is? all|work|read|perfectly|working|still? fine|normal|normally|ok|correctly|right|good|properly|steady|constant",
        "no|none other|of gauge|gauges|instrument|instruments|the|others|other? .. out|wrong|affected|line|odd|affected",
        "other gauges|instruments @not affected|bothered|move|jump|twitch|change",
    ),
    "ground_strap_bad": (
        f"ground|grounds|earth|earths|earthing|grounding|strap and|straps|strap|all? {_CHECKED}? {_GOOD}",
        f"fuses and|& earths|grounds {_CHECKED}? {_GOOD}",
        f"ground|grounds|earth|earths|earthing|grounding at|on|to|from the? engine|block|battery|chassis|body|frame is|was|are|both|all? {_GOOD}",
        "checked|cleaned|tightened|remade|redone|did|refreshed all? the|my|every|both? engine|battery? ground|grounds|earth|earths|earthing|grounding straps|strap|points|connections|connection?",
    ),
    "crank_scored": (
        "crank|crankshaft|journals|journal is|was|were|are|looked|looks? =smooth|=perfect|=fine|=good|=unmarked|=mint",
    ),
    "no_oil_at_rockers": (
        "plenty|lots|good of? oil at|to|up|in|on the? top|rockers|head|valve|heads|cam",
        "oil at|to|reaching|reaches every|all|the rockers|rocker|heads",
        "oil came|comes|coming|got|gets|is|was|shows|reached|reaches|reaching|running|dripping|flowing up|out|through|to|at|all? up|over|to|at|from|of|the? the? =rockers|rocker-shaft|rocker-gear|top-end",
        "till|until oil .. rockers|top|head",
        "rockers|rocker-gear|rocker|valve-gear are|is|were|was|all|nicely|getting|well|get|got wet|oiled|oil|oily|drenched|soaked|lubricated",
    ),
    "protection_tripped": (
        "low? pressure? trip|shutdown|cutout|protection did|didnt|never|failed|@not not? work|trip|operate|cut|shut|act",
    ),
    "wiggle_moves_needle": (
        "wiggled|wiggling|moving|moved|tugged .. wire|wires|wiring|plug|connector .. no|nothing|@not|made change|difference|happened|moved",
    ),
    "needle_off_zero_at_rest": (
        "needle|gauge|pointer|it returns|return|drops|falls|goes|went|sits|rests|back|reads|read|is|settles back|on|at|to|straight|right|down? to|on|at|back? zero|0|nothing|stop|peg .. switch|off|stopped|stop|shut|key|turn|ignition",
        "key|ignition on|off .. engine|motor off|stopped|running .. reads|shows|sits|at|on|is|rests at|on|is? zero|0|nothing",
        "switch|switched|turn|turned|shut|stop|stopped .. off|down|it|engine .. needle|gauge|pointer|it drops|returns|falls|goes|went|dropped|fell|sinks|back straight|back|right|down? to|on zero|0|nothing|stop|peg",
    ),
    "sender_wire_broken": (
        "wiring|wires|harness|loom|wire looks|look|looked|is|are|seems|seem|appears|checks|checked|all? all|out|to|be|perfectly|still? ok|fine|good|sound|intact|okay|undamaged|perfect",
    ),
    "oil_used_fast": (
        "@not use|burn|drink|consume|using|burning|need any|a|drop|much? oil|topping",
        "uses|burns|drinks|needs|consumes no|none|zero|nothing oil?",
        "@not use|burn|drink|consume any",
        "no|zero =oil consumption|use|usage|burning",
        "consumption|usage not|hasnt|has-not|@not|is|same|unchanged|normal changed|gone|risen|same|normal|unchanged|as|up?",
        "uses|used|burns|loses|using|burning|takes nothing|none|no-oil|hardly-any|zero|naff-all|zilch|not-a-drop|little between|from .. changes|services|"
        "change|service",
        "uses|burns|loses|using|consumes no|zero|hardly-any|little|next-to-no oil|drop",
        "no|zero|nil =oil consumption|usage|use between|at|that|to?",
        "level never|hardly|doesnt moves|move|drops|drop|changes|change between|from",
    ),
    "tank_empties_running": (
        "oil|scavenge|tank return|returns|returning|return-flow is|seems|looks|all? ok|fine|good|well|steady|strong|normal|normally|healthy",
        "oil returns|returning|returned|comes-back|coming-back to|into the? oil? tank|bag ok|fine|good|well|steadily|normally|nicely",
        "tank level stays|stayed|steady|holds|remains|constant|doesnt put|up|same|steady|constant|full|drop|fall|move|change?",
        "see|seen|watch it|the? oil|return? returning|spitting|squirting|pulsing|coming|come back|in|into|to? the? tank|return?",
        "oil|it spitting|squirting|pulsing|returning|returns back|into|in|to|out the|its? return|tank",
    ),
    "no_oil_at_open_port": (
        "good|decent|healthy|strong|nice|big|great|plenty|lots squirt|spurt|jet|flow|stream|gush|oil of? oil? from|out|at|of|there|comes|came the|that|of? the? port|hole|sender|union|line|pipe|fitting|it?",
        "oil squirts|squirted|spurts|pours|poured|gushes|shoots|shot|comes|came out|from|of the|its? hole|port|gallery when|with cranked|cranking|i",
    ),
    "restrictor_absent": (
        "restrictor|restrictors|jet in|to|for|of the|my? head|rocker|turbo|cam|lifter? feed|line|pipe|gallery|oil? is|are|still|was there|present|in|fitted|place|right|correct|ok|fine",
        "restrictor|restrictors is|are|still|was there|present|in-place|fitted|ok|fine|right",
    ),
}
