"""Phrases that look like a finding and are none: of an earlier time, of no weight, of another thing."""

from __future__ import annotations

NO_FINDING: tuple[str, ...] = (
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
