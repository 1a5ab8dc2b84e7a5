"""Further everyday words for what is seen on sticks and glasses and when an engine is opened."""

from __future__ import annotations

_GLASS = "sight-glass|sightglass|window|glass|eye"
_ROCKERS = "rockers|rocker|rocker-gear|rocker-shaft|valve-gear|cams|cam|camshaft|head|heads|top-end"
_SHELLS = "shell|shells|mains|rods|big-ends|bearings|bearing|inserts"
_FUZZ = "fuzz|fluff|fur|paste|dust"
_CRUMBS = "crumbs|crumb|bits|pieces|shards|lumps|fragments"
#: the finding, by what is said when it is there
SIGHTS_FOUND: dict[str, tuple[str, ...]] = {
    "level_correct": (
        "dipstick|stick|dip is|was|reads|shows|says|at|reading? about|around|just|at|to? half|halfway|mid|middle way|scale|stick|up?",
        "dipstick|stick|dip is|was|reads|shows|says|at|reading? about|around|just|at|to? @share up?",
        f"half|halfway|middle|mid way? up|of|on|in the {_GLASS}",
        "half|halfway|middle|mid way? up|of|on|in the sight glass",
        f"oil|level|its|is up|right|bang|spot? to|in|at|on the? middle|centre|center|half|top? of? the? {_GLASS}",
        "oil|level|its|is up|right|bang|spot? to|in|at|on the? middle|centre|center|half|top? of? the? sight glass",
    ),
    "no_oil_at_rockers": (
        f"nothing|none|dry|zilch at|up|on|in|to the {_ROCKERS}",
        "nothing|dry up top|there",
        "not a|one drop|sign|trace of? of? oil? up|at|on|in top|there|the",
    ),
    "relief_valve_stayed_shut": (
        "plunger|piston|valve|ball|relief stuck|jammed|seized|frozen|solid solid|hard|fast? at|in|on the? bottom|seat|closed|shut ,? shut|closed|position",
        "stuck|jammed|seized|held|frozen|rusted .. in the shut|closed position",
        "stuck|jammed|seized|frozen solid|fast? at|on|against the? bottom|seat ,? shut|closed",
    ),
    "oil_thin_on_stick": (
        "came|comes|drained|poured out was|is|looked? just? like|as black|dirty|brown? water",
        "oil|it|stuff was|is|looked|came|looks like|as thin? black|dirty|brown? water",
    ),
    "fuel_smell": (
        "stank|stinks|stunk|reeks|reeked|smelt|smelled|smells|stinking|reeking|ponged strongly|really|just? of|like diesel|petrol|gas|fuel|derv|gasoline|raw-fuel",
    ),
    "gauge_line_sludged": (
        "dribble|trickle|nothing|drop|ooze|bead|bubble at|from|out|of|comes|came|through the? gauge end .. block end|squirts|spurts|gushes|plenty|jets",
    ),
    "no_oil_at_line_end": (
        "gauge end .. hardly|barely|scarcely|not|no|only|just|nothing a|even|so? dribble|drop|trickle|much|anything|ooze|bead",
        "hardly|barely|scarcely|only|just a dribble|drop|trickle|ooze|bead at|from|out the? gauge end|line|pipe",
    ),
    "pump_scored_seen": (
        "scratches|scores|grooves|scoring|lines|ridges you|i|we can feel|catch with|on a|your|my? finger? nail|fingernail|thumbnail in|on|across the? pump|cover|cover-plate|gears|body|rotor|rotors|housing",
        "grooves|scratches|scoring|scores in|on the? cover|end plate",
    ),
    "shells_etched": (
        f"{_SHELLS} look|looks|looked|are|were|was|is|all|had|have|with? .. etched|pitted|eaten|pits|pinholes|corroded",
        f"{_SHELLS} .. grey|gray|dark|black|dull and|& eaten|pitted|spongy|etched",
    ),
    "pickup_tube_rocks": (
        "pickup|pick-up|strainer|suction tube|pipe? swings|swinging|flaps|flapping|waves|wags|waggles|flops|moves|moving about|around|freely|loose|side-to-side|on",
        "whole tube|pipe|pickup|thing swings|flaps|waves|waggles|flops|rocks|moves about|around|freely|loose",
    ),
    "pump_chain_broken": (
        "pump chain is|was|had|has|hasnt|wasnt|been? never|not|isnt|wasnt|came|come|jumped|fallen|hanging been? =hooked|=fitted|=put|=on|=off|=refitted|=connected",
        "never|forgot|didnt|forgotten|not to? =hooked|=put|=fitted|=fit|=put|=connected|=hook the? oil? pump chain",
    ),
    "oil_seen_outside": (
        "oil all|everywhere over|round|around|down|up the|my|one|its? belly|bellypan|belly-pan|block|side|engine|frame|chassis|bell-housing|exhaust|footwell|compartment|engine-bay|boot|hull",
        "covered|plastered|swimming|drenched|soaked in|with engine? oil underneath|outside|below|all|down|everywhere",
    ),
    "oil_used_fast": (
        "another|further @volume in|since|already|gone|needed|needs|again",
        "needs|takes|drinks|swallows|gets|wants about|around|nearly|over|a|another? @volume every|each|a|per day|week|shift|trip|run|fill|tank|start|weekend|ride|@hours|hour",
    ),
    "ran_on_without_pressure": (
        "ran|run|did|done|had|ran-for|running it? for? maybe|about|around|perhaps|at-least|nearly|over|a|for? @minutes|minutes|@distance with|without|on no|none|zero|nothing",
        "oil? light|lamp|buzzer|alarm was|stayed|came? on|lit for about|nearly|over|a|at-least? @distance",
    ),
    "drain_plug_found_loose": (
        "drain|sump plug fell|dropped|fallen|came|come|worked|vibrated|blew|backed out|off|undone|loose|itself",
    ),
    "earlier_breakage": (
        f"plastic|nylon|fibre|rubber {_CRUMBS} from|of|off a|an|the? old|cam|chain|timing? tensioner|guide|shoe|chain-guide|blade|slipper",
    ),
    "no_oil_when_cranked": (
        "gallery|banjo|union|feed bolt|union|pipe? .. crank|cranked|cranking|spun|starter .. nothing|dry|not|zilch",
        "loosened|undid|cracked|slackened|opened the? .. banjo|gallery|union|feed .. nothing|not|dry",
    ),
}
#: the finding, by what is said when it is not there
SIGHTS_FOUND_ABSENT: dict[str, tuple[str, ...]] = {
    "metal_in_filter": (
        f"only|just|but|except|than the|a? usual|normal|ordinary bit|amount|touch|little? of? {_FUZZ}",
    ),
    "no_oil_at_rockers": (
        f"good|healthy|strong|nice|decent|plenty squirt|squirts|flow|stream|spurt|jet|gush of? oil? up|at|to|out|from|over|of? the? top|{_ROCKERS}|banjo|there",
    ),
}
