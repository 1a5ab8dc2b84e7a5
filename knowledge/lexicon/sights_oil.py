"""What is seen or known of the oil itself: level, look, smell, heat, use, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_OIL: dict[str, tuple[str, ...]] = {
    "level_correct": (
        "oil? level is|was|looks|checks|reads|seems|at|to|shows|has|been|stays|and|always? "
        "good|ok|okay|fine|correct|full|right|normal|spot|perfect|alright",
        "plenty|full of oil",
        "oil|level|dipstick|stick reads|shows|is|on|at|to|up|right|level|good|and|checked? at|to|on|right|between|is? the|at|to|on? full|mark|marks|max|top mark?",
        "oil is? full",
        "its|it's|is full of oil",
        "oil? level checked|check|checks ok|fine|good|full",
        "dipstick ok|fine|good|full",
        "oil is? topped? up to the? mark|line|full",
        "has plenty of oil",
        "oil topped up",
        "full on the? dipstick|stick",
    ),
    "dipstick_low": (
        "oil? level is|was|a|bit|quite|little? low|down",
        "low on oil",
        "quart|qt|litre|liter|pint|quarts|litres low|down|short|under",
        "@volume low|down|short",
        "below|under the? add|min|minimum|low mark|line?",
        "oil low",
        "dipstick|stick low",
        "oil is|was down|low",
    ),
    "dipstick_dry": (
        "sump|pan|tank was|is|found|nearly|almost|completely|and? nearly|almost|found|completely? empty|dry",
        "no oil left",
        "out of oil",
        "nothing|dry on the? dipstick|stick",
        "@not|no oil showing|on|at|all? on? the? dipstick|stick",
        "dipstick|stick was|is|bone|came|comes|out? dry",
        "ran out of oil",
        "no oil in it|the sump|pan|engine?",
        "sump empty",
    ),
    "level_high": (
        "overfull|overfilled",
        "over full|filled",
        "too much oil",
        "above|over the? full|max|top mark|line",
    ),
    "level_risen": (
        "level has|is|keeps|was? rising|risen|rises|rose",
        "level going|gone|went up",
        "making oil",
        "gaining oil",
    ),
    "oil_looks_clean": ("oil is|looks|was|looked? clean|fresh|good|golden|honey", "clean oil"),
    "oil_milky": (
        "milky|creamy|mayo|mayonnaise|milkshake|emulsified|emulsion",
        "chocolate milk",
        "oil like? coffee",
    ),
    "oil_black_and_gritty": (
        "oil is|was|very|looks? black|gritty|filthy|dirty",
        "dirty|filthy|gritty oil",
    ),
    "oil_thin_on_stick": (
        "oil is|was|looks|seems|very|like|really|feels|too|a|bit? thin|water|runny|watery",
        "watery|runny oil",
    ),
    "sludge_seen": ("sludge|sludged|sludgy", "black jelly|gunk"),
    "glitter_in_oil": (
        "glitter|glittery|sparkle|sparkles|sparkly|shimmer|specks|flakes in|the|with|on? oil|dipstick|stick",
        "metal|metallic|shavings in the? oil",
        "oil .. glitter|glittery|sparkles|metallic|sparkly|metal",
    ),
    "fuel_smell": (
        "smells|smell|smelling|smelled|stinks|reeks of|like|strongly|a|bit|is? of? petrol|gas|fuel|diesel|gasoline",
        "fuel|petrol|gas|diesel smell|in .. oil",
        "fuel|petrol|gas|diesel in the? oil",
    ),
    "oil_smells_burnt": ("oil? smells|smell burnt|burned", "burnt oil? smell"),
    "oil_used_fast": (
        "heavy|high|excessive oil use|consumption|usage",
        "uses|using|burns|burning|drinks|goes|going|consumes|eats through? oil|lot|quart|litre|pint",
        "uses|using|burns|burning|drinks|consumes .. oil|quart|litre|liter|pint",
        "uses|using|burns|burning|drinks|consumes|needs|goes|through? @volume every|per|a|in|each",
        "oil consumption",
        "topping up all|constantly|every|weekly",
    ),
    "blue_smoke": (
        "blue smoke|exhaust|haze",
        "smoke|smokes|smoking blue",
        "puff|puffs|cloud of? blue?  smoke",
    ),
    "white_plume": ("white smoke|steam|exhaust",),
    "burning_oil_smoke": (
        "burning oil smell",
        "smell of? burning|burnt oil",
        "smells|smelled of|like burning|burnt oil",
    ),
    "engine_ran_hot": (
        "overheated|overheating|overheat|boiled|overheats",
        "ran|runs|running|got|gets|getting too|really|very|a|bit? hot",
        "temp|temperature gauge|in|was|is|went|goes high|red|hot|up",
        "boiled over",
    ),
    "oil_temperature_high": (
        "oil temp|temperature|temps is|was|too|very? high|up|red",
        "oil too hot",
    ),
    "oil_overdue": (
        "oil .. overdue|ancient|old",
        "overdue for? an? oil? change",
        "never changed the? oil",
    ),
    "blow_by_high": (
        "blow-by|blowby|chuffing",
        "blow by",
        "smoke|pressure|fumes from|in|out|at|of .. filler|breather|crankcase",
    ),
    "oil_film_in_coolant": ("oil in|on the? coolant|radiator|water|header|expansion",),
    "coolant_level_falling": (
        "losing|loses|lost|using|uses coolant|water|antifreeze",
        "coolant level? dropping|falling|low|disappearing",
    ),
    "oil_grade_too_thin": ("@thin in|it|oil", "too thin .. oil|grade", "wrong oil"),
    "foam_on_stick": ("foam|foamy|froth|frothy|bubbles|foaming|aerated|frothing",),
}
