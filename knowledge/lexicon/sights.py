"""What is seen, smelt or known of an engine, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS: dict[str, tuple[str, ...]] = {
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
    "cup_plug_found_out": (
        "core|cup|freeze|welch|frost|expansion plug .. out|missing|gone|blew|popped",
        "blew|popped|lost|spat .. core|cup|freeze|welch|frost plug",
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
    "oil_seen_outside": (
        "leaks|leaking|leak|leaked some|bit|of|a? oil?",
        "oil leak|leaks|leaking|everywhere",
        "oil all over|down",
        "covered|wet in|with oil",
        "external leak|leaks",
        "oil weeping|weeps|seeping",
        "weeping|seeping|dripping oil",
        "drips",
    ),
    "oil_on_the_ground": (
        "puddle|puddles|spots|drips|pool|oil of? oil? on|under|the? ground|floor|driveway|car|drive|engine|it",
    ),
    "oil_in_the_bilge": ("oil in|the? bilge", "bilge .. oil"),
    "oil_sprayed": (
        "oil sprays|spraying|sprayed|squirting|squirts|gushing|shooting",
        "spraying|squirting|gushing|sprayed oil",
        "spray of oil",
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
    "engine_runs_normally": (
        "runs|running|ran|sounds|drives|starts|engine|idles is|sounds|runs|and|perfectly|really|absolutely|as|just|otherwise|very|runs? "
        "fine|good|well|great|perfect|perfectly|smooth|smoothly|normal|normally|sweet|sweetly|quiet|strong|lovely|healthy|beautifully",
        "no|without strange|odd|funny|weird|unusual|abnormal|bad|other|any? noise|noises|sounds",
        "sounds|runs as always|ever|usual|before",
    ),
    "engine_seized": (
        "seized|siezed|seised|locked up?",
        "won't|wont turn over?",
        "locked solid|up",
    ),
    "engine_banged_or_shook": (
        "bang|banged|vibration|vibrates|vibrating|shook|shakes|shaking",
        "loud bang",
    ),
    "stopped_with_loss_of_power": (
        "power was lost",
        "seized while|under driving|way|running",
        "died|quit|stalled|conked on|out|under|while|when|at? me|the? road|way|motorway|highway?",
        "engine|it|she stalled|died|quit",
        "engine|it|she stopped|cut by|on|dead|out itself|its|me?",
        "cut out",
    ),
    "rod_through_block": (
        "threw|thrown a? rod",
        "rod through|out .. block|side",
        "hole in the? block",
        "windowed .. block",
    ),
    "filter_burst": (
        "filter burst|blew|exploded|split|blown|popped|off|bursts|blows",
        "blew .. filter",
        "burst .. filter",
    ),
    "filter_bulged": ("filter .. bulged|swollen|ballooned|bloated",),
    "metal_in_filter": (
        "cut .. filter .. found|saw|full .. metal|shavings|flakes|glitter|filings|bits",
        "filter .. found|full .. metal|shavings|flakes|glitter|filings",
        "metal|flakes|shavings|glitter|bits|chips|specks|filings|particles|swarf|pieces|stuff in|inside the|my|oil|old|of? oil? filter",
        "filter .. metal|glitter|shavings|flakes|filings|sparkles",
        "cut .. filter .. metal|shavings|flakes|glitter",
    ),
    "metal_in_pan": (
        "metal|flakes|shavings|glitter|bits|chips|filings|bearing|swarf|particles|pieces|slivers in|inside the|oil|bottom|my|material? of? the|oil? oil? sump|pan|drain|oil-pan",
        "pan|sump .. metal|shavings|flakes|filings|swarf",
    ),
    "screen_blocked": (
        "pickup|screen|strainer|pick-up|gauze screen|was|is|tube|half|completely|totally|partly|partially|found|all|up|nearly? "
        "blocked|clogged|plugged|full|choked|blocked-up|restricted|clogging",
        "half|partly|partially|completely|totally blocked|clogged|plugged|choked with? sludge|gasket|rtv|silicone|debris|crud?",
        "clogged|blocked|plugged pickup|screen|strainer|oil",
    ),
    "gears_worn_out": (
        "pump is|was|found|badly|all|totally? badly|all|totally? worn|knackered|shot",
        "worn out? pump",
    ),
    "shells_found_ruined": (
        "bearings|shells|mains|big-ends were|are|was|all|found|completely|totally? all|found|completely|totally? "
        "ruined|shot|gone|destroyed|toast|trashed|knackered",
    ),
    "shells_look_normal": (
        "bearings|shells|mains were|are|looked|look|all? looked|look|all? good|fine|perfect|normal|ok|okay",
        "bearings|shells|mains looked|look|were like new",
    ),
    "shells_wiped": ("shells|bearings|bearing|mains|big-ends .. wiped|melted|burnt",),
    "shell_spun": ("spun|spun a? bearing|shell|rod|main",),
    "crank_scored": ("crank|journals|crankshaft|journal .. scored|grooved|damaged|blued",),
    "debris_on_relief_seat": (
        "dirt|chip|swarf|metal|debris|grit|bit|crud under|in|on|holding .. relief|valve|ball|seat|plunger",
    ),
    "relief_plunger_sticks": (
        "relief|regulator|plunger valve|piston|plunger|was|is|found? stuck|sticking|sticks|jammed|seized",
    ),
    "high_mileage": (
        "high mileage|miles|hours|kms",
        "worn|tired|old out? engine|motor",
        "@highmiles on|the|it|clock|engine|miles|now?",
        "never been? rebuilt",
        "well worn",
    ),
    "stood_long": (
        "barn find",
        "sat|stood|sitting|parked|stored|standing|idle|laid .. @years|years",
        "@years sitting|standing|storage|idle",
        "sat|stood|sitting|parked|stored up? .. winter|months|decade|decades|ages",
    ),
    "history_unknown": (
        "newly bought|purchased|acquired",
        "just|recently bought|got|purchased|acquired",
        "bought|purchased it|the|this .. used|secondhand|second-hand|recently|weeks|month|months",
        "unknown|dont|no know|known|service? history|mileage|miles",
    ),
    "service_neglected": (
        "neglected",
        "never|rarely changed|checked .. oil",
        "no oil changes",
        "overdue .. oil|service|change",
    ),
    "oil_overdue": (
        "oil .. overdue|ancient|old",
        "overdue for? an? oil? change",
        "never changed the? oil",
    ),
    "raced_or_heeled": ("track day|days", "autocross|racing|raced|autox|rallying", "on the? track"),
    "worked_hard": ("towing|towed", "full throttle|load for|all", "long motorway|highway|hard run"),
    "idles_long": ("short trips", "idles|idling a? lot|hours", "long idling"),
    "earlier_breakage": (
        "dropped a|the valve|part|nut|bolt|washer",
        "broke a? rocker|pushrod|ring|piston|rod|lifter",
    ),
    "known_for_model": (
        "known|common|well-known problem|fault|issue|for|on",
        "well known for|on|issue|problem",
    ),
    "several_alike": ("both|all engines|motors|of .. same", "all .. do it|this"),
    "maker_calls_it_normal": (
        "dealer|maker|manufacturer|mechanic says|said|reckons .. normal|fine|ok",
    ),
    "dipstick_pushed_out": ("dipstick .. blown|popped|pushed|out|up|pops",),
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
    "turbo_shrieks": ("turbo whine|whines|whining|howls|screaming|shriek|noisy|screams|howling",),
    "timing_cover_rattles": (
        "chain|timing rattle|rattles|rattling|noise",
        "timing cover|chain rattles|rattle|rattling|noise",
    ),
    "hard_to_turn": ("hard|stiff|tight to turn|crank", "starter drags|struggles|labours|labors"),
    "hot_and_thin": ("thin oil", "heatwave|heat-wave"),
    "oil_grade_too_thin": ("@thin in|it|oil", "too thin .. oil|grade", "wrong oil"),
    "sump_dented": ("dent|dented|bashed in|the|a? .. sump|pan|oil-pan", "sump|pan .. dented|dent"),
    "oil_on_bodywork": (
        "oil on|over|all .. windshield|windscreen|tyre|tire|transom|bonnet|hood|boots",
    ),
    "oil_trail_behind": ("trail|streak|slick of oil", "oil trail|slick"),
    "oil_loss_fast": ("dumped|lost|pumped all of? its|the|my oil",),
    "drain_plug_found_loose": (
        "drain|sump plug .. loose|gone|missing|out|off",
        "loose drain|sump plug",
    ),
    "filter_found_loose": ("filter is|was|found|came|had? loose", "loose oil? filter"),
    "filler_cap_found_off": ("filler|oil cap .. off|missing|left|gone",),
    "foam_on_stick": ("foam|foamy|froth|frothy|bubbles|foaming|aerated|frothing",),
    "rotor_still_when_cranked": ("rotor|distributor @not turn|turns|turning|spin|spinning",),
    "no_oil_at_rockers": (
        "no oil to|at|on|up|reaching|getting|coming .. top|rockers|head|rocker|valve|heads|lifters|cam",
        "rockers|top|head dry|starved",
    ),
    "no_oil_when_cranked": (
        "no oil from|at|out|comes|coming .. filter|port|sender|hole|pump|housing",
    ),
    "idle_below_spec": ("idle|idling|idles too|is|very? low|slow",),
}
