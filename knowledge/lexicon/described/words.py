"""Sets of words that several subjects share: amounts, states, what parts are made of."""

from __future__ import annotations

TOO_MUCH = (
    "too|over|excess|excessive|exceeds|exceed|exceeding|exceeded|beyond|big|huge|large|wide|loads|lots|double|twice|"
    "massive|heaps|more_than|above|out_of|outside|far|way|max|maximum|limit"
)
ROOM = "gap|space|room|clearance|clearances|play|slack|slop|slopping|sloppy|float|feeler|air"
WORN = (
    "worn|eaten|rounded|rounding|hollowed|hollow|thin|thinned|curved|chewed|gone|rubbed|lost|knackered|shot|mangled|"
    "egged|wallowed|blunt|smooth|step|stepped|slipping|slips|slipped|polished_off|wasted"
)
BROKEN = (
    "broken|broke|snapped|sheared|fractured|parted|shattered|two_pieces|in_two|two_halves|in_half|twisted_off|"
    "in_pieces|in_bits|split|smashed|wrung|came_apart|cracked_through"
)
LOOSE = (
    "loose|slack|slackened|rocks|rock|rocked|wobbles|wobble|wobbly|shakes|shook|rattles|rattled|rattling|moves|move|moved|play|"
    "slop|sloppy|floppy|waggles|flops|tilts|unscrewed|undone|by_hand|with_fingers|with_my_fingers|by_fingers|finger"
)
BLOCKED = (
    "blocked|blocks|plugged|clogged|choked|bunged|closed|obstructed|restricted|stopped_up|bent_shut|covered|masked|masking|"
    "kinked|pinched|furred|coked|squashed|occluded|filled"
)
SCORED = (
    "scored|scratch|scratches|scratched|grooves|grooved|furrows|furrowed|ridges|ridged|gouged|gouges|scuffed|galled|ploughed|"
    "scarred|burred|burrs|score"
)
HEAVY = (
    "pours|poured|pouring|pour|streams|streamed|streaming|stream|gushes|gushing|gush|floods|flooding|flood|flooded|dumps|"
    "dumping|tap|hose|sheet|curtain|fountain|torrent|runs_out|ran_out|running_out|pissing|spraying|sprays|squirts|jets|"
    "waterfall|heavy_leak|excessive_leakage|leaks_badly|river|spews|spewing|throws"
)
PRIMING = "priming|prime|primed|primer|drill|pre-lube|prelube|pre_lube|spun_the_pump|spinning_the_pump|pump_turned|turned_the_pump|preoiler|pressure_tank"
OTHER_PUMPS = "water|fuel|vacuum|injection|steering|lift|bilge|power|hydraulic|coolant|bicycle|diesel|petrol|raw"
