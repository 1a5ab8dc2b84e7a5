"""What owners add in a thread of messages, in answer to what others ask."""

from __future__ import annotations

_PER = "a|an|per|every|each|/"
_SPAN = "day|week|month|trip|tank|fill|run|outing|@hours|@days|@distance|@weeks"
_HOSE = "hose|hoses|pipe|line|flexi|flexy|flexible|union"
#: the finding, by what is said when it is there
SIGHTS_ANSWERS: dict[str, tuple[str, ...]] = {
    "needle_off_zero_at_rest": (
        "reads|read|shows|sits|stays|stuck|pegged|pegs|same|at|on|is .. stopped|off or|and running|on",
        "needle|gauge|it reads|same|stays|is|stuck running|on or|and stopped|off|not",
        "engine|motor on or off",
        "key|ignition on even? before|without i|it|starting|cranking|the-engine|running?",
    ),
    "stepped_down_and_stayed": (
        "went|dropped|fell|stepped|gone down? to @pressure|@number and|,|then it|it's|its|has|stayed|been|there|is? been|stayed|is? there|@pressure|@number|that ever? since",
    ),
    "level_correct": (
        "is|its|it's|was|still|right|bang|spot up? to|on the? =mark|=line|=notch",
        "bang|spot|right on the? mark|line|full-mark",
        "half way|halfway|midway|middle|mid between|of the? marks|min-and-max|lines|notches|min",
        "run|keep|kept it on|at|up-to the? top|full|upper|max mark|line?",
    ),
    "no_oil_when_cranked": (
        "oil? filter|inside|housing|outlet|it|still? was|is|still|stayed|bone? dry after .. cranking|cranked|starter",
        "dry after about? @minutes|@seconds|ages|plenty|lots of|on? the|of? cranking|starter",
        "cranked .. not|no a? drop|spot|drip|oil|sign of? oil? out|at|came|in",
    ),
    "gallery_found_blocked": (
        "=hole|=holes|=drilling|=drillings in|of|through it|the-banjo|banjo|the-bolt|the-union|bolt is|was|were|found|completely? blocked|plugged|bunged|choked|clogged|full",
        "banjo|hollow|union|feed|drilled bolt|union|hole|drilling was|is|were|found|completely|half|partly? blocked|plugged|bunged|choked|clogged|full",
    ),
    "sealant_used_freely": (
        "too much|used|plenty|loads|lots too|of|much? silicone|rtv|sealant|sealer|goo|gasket-maker|instant-gasket",
        "silicone|rtv|sealant|sealer|goo .. too|so much|liberally|generously",
        "went mad|overboard|heavy|wild with the? silicone|rtv|sealant|sealer|goo",
        "used too much on the? case|cases|sump|pan|cover|joint",
    ),
    "back_when_slowed": (
        "goes|went|comes|came|is|gone|drops|it|light|lamp|warning out|off|back|normal again? when|as-soon-as|once|if|as the|i|we|he|driver|you|it|engine? driver|i? let|lets|eased|eases|slowed|slows|slow|lifted|lift|backed|dropped|drops|came|come|ease the? revs|speed|throttle|engine|down|off|back|gas",
        "drop|dropped|drops|ease|eased|bring|brought the? revs|speed|throttle down|off|back .. goes|went|comes|came|clears|out|off|back",
    ),
    "oil_used_fast": (
        f"topped|top|topping up|off .. @volume|litre|liter|quart|pint {_PER} {_SPAN}",
        "topped|top|topping|add|adding|adds|put|needs|takes|drinks|burns|loses|using|uses up|off|in? about|around|nearly|over|a|half|at-least? @volume|litre|liter|quart|pint oil|in? @weeks|@days|@months|@hours",
        "@volume of? oil? @weeks|@days|@months",
        f"add|adding|adds|put|needs|takes|drinks|burns|loses|using|uses about|around|nearly|over|a|half|at-least? @volume|litre|liter|quart|pint oil|in? {_PER} {_SPAN}",
        f"@volume|litre|liter|quart|pint of? oil? {_PER} {_SPAN}",
    ),
    "service_neglected": (
        "one|two|few|last|some|a|several service|services|change|changes was|were|got|been? =missed|=skipped|=forgotten|=late|=stretched",
        "one|two|few|last|some|a|several was|were|got|been? =missed|=skipped|=forgotten service|services|change|changes",
        "missed|skipped|forgot|stretched a|one|two|the|last|some|couple|few of? oil? service|services|change|changes",
    ),
    "drained_volume_high": (
        "more came|ran|drained out|than .. went|put|than|poured|should|holds",
        "@volume|quart|litre|liter|pint|half|bit|lot|good more|extra out? than i|we|he|it|went|the-book? put|poured|had|went|filled|holds|takes in?",
    ),
    "sags_as_oil_heats": (
        "goes|went|drops|dropped|creeps|sinks|comes|came|falls|fell|gets down|off|lower? slow|slowly|gradually|steadily as|when it|engine|oil|she|its? got|gets|heats|warms|warmed|getting|heated hot|up|warm|again?",
        "slowly|gradually|steadily drops|falls|sinks|goes|went|dropped|fell|creeps down|off|away? as it|engine|oil|she gets|got|heats|warms|warmed|heated hot|up|warm?",
    ),
    "worked_hard": (
        "towing|hauling|pulling in|during|through the|this|that|all? heat|summer|hot|mountains|alps|day",
        "towing a|the|my|our? caravan|trailer|boat|camper|horsebox|fifth-wheel",
    ),
    "sender_connector_loose": (
        "wire|terminal|plug|connector|connection|spade|lead on|to|at|of|for the? oil? pressure? sender|sensor|switch|sending-unit was|is|were|had|has|looked|all|badly|a|gone|bit|very? green|corroded|furred|furry|crusty|rusty|loose|dirty|black",
        "sender|sensor|switch wire|terminal|plug|connector|connection|spade|contacts|pins was|is|were|had|all|badly|gone|bit|very|found? green|corroded|furred|furry|crusty|rusty|loose|dirty|black",
    ),
    "needle_ignores_lead_test": (
        "grounded|earthed|grounding|earthing .. needle|gauge @not|never|doesnt|didnt move|budge|swing|react|change|flinch",
    ),
    "oil_line_found_broken": (
        f"split|hole|crack|crack|pinhole|burst|tear|rub-hole in the|a|my|one? oil? {_HOSE} to|from|of|for the? remote? oil? filter|cooler|turbo|gauge|head",
        f"split|hole|crack|pinhole|burst|tear in the|a|my|one? oil {_HOSE}",
        f"{_HOSE} to|from|of|for the? remote? oil? filter|cooler|turbo had|has|was|is|got|had-a? split|burst|chafed|cracked|popped|let-go|blown|perished",
    ),
    "oil_in_the_bilge": (
        "engine room|box|bay|space floor|sole|bottom is|was|all|completely? covered|awash|swimming|full|slick in|with|of oil",
    ),
    "gauge_line_sludged": (
        "pipe|line|tube|capillary to|from|for|of it|the-gauge|gauge|that|the-clock|clock is|was|completely|nearly|all? blocked|bunged|choked|plugged|clogged|solid|full up|solid|with|of?",
    ),
    "gauge_line_leaking": (
        "leaks|leaking|weeps|drips where the? =pipe|=line|=tube|=capillary joins|meets|goes|enters|screws",
    ),
    "locked_then_freed": (
        "seized|locked|nipped up|solid|tight? .. freed|free|turned|turns|let|again|off itself|off|again|go|later|after|when|once",
    ),
    "relief_seat_scored": (
        "ball|plunger|piston|valve has|had|with|shows a? ring|groove|line|step|track|ridge worn|round|around|in|on|all",
        "seat is|was|had|has|looks|a|bit? =marked|=ringed|=dented|=pitted|=grooved|mark|dent|groove",
    ),
    "low_from_first_start": (
        "never had|made|seen|got|been|showed|given more|over|above|better than? @pressure|@number .. since|from first|new|it-was|i|the|day|rebuild|build",
        "never had|made|seen|got|been|showed|given more|over|above|better than? @pressure|@number since|from the? first|new|rebuild|build|day-one|beginning",
    ),
    "returns_the_same_way": (
        "next|following|second|third weekend|day|morning|time|week|trip|run|start exactly? the? exactly? same thing|again|story",
    ),
    "panel_reads_too_low": (
        "dash|panel|car|factory|old gauge|clock|one? says|reads|shows @pressure|@number .. new|test|mechanical|master|direct|proper|other|second one|gauge|clock .. says|reads|shows @pressure|@number .. so the|dash|panel|it? dash|panel|is? under|pessimistic|low|reading-low",
    ),
}
#: the finding, by what is said when it is not there
SIGHTS_ANSWERS_ABSENT: dict[str, tuple[str, ...]] = {
    "crank_trap_full": (
        "sludge|crank trap|traps was|were|is|are|has-been|been|all? =cleaned|=cleared|=clean|=empty|=clear out?",
    ),
    "clearances_never_measured": (
        "clearances|bearings|everything|mains|rods were|was|all|got|i|we? =plastigaged|=plastigauged|=miked|=measured|=checked",
        "=plastigaged|=plastigauged|=miked the|all|every|my? bearings|mains|rods|clearances|everything|it",
        "plastigage|plastigauge said|showed|says|gave|was|came",
    ),
    "ran_on_without_pressure": (
        "switched|shut|turned|killed|stopped it|her|the-engine|engine? off|down? quick|quickly|sharpish|straight|right|immediately|at-once|asap|pronto|instantly|fast|smartish away|off?",
        "engine|motor|key|ignition off immediately|instantly|straight|at|right|that away|once|second|moment?",
    ),
    "needle_ignores_lead_test": (
        "earthed|grounded|shorted|grounding|earthing the? wire|lead|it|sender|terminal at|to|on|the|engine|block|sender|,|and|? .. swings|goes|moves|went|pegs|rises full|right|all|up|across|over|max|scale|past",
        "grounded|earthed it|,|and|lead|wire|the|it|gauge|needle goes|swings|shoots|climbs|pegs up|past|full|right|over|hard|all|max past|over|up|the-way|scale|across?",
        "wire|lead|plug off the|it|sender|,|and|it|gauge|needle|then? goes|drops|went|falls|reads to? =zero|=0|=nothing|=bottom",
    ),
}
