"""What is seen, smelt or measured of the oil's state: look, smell, heat, what a laboratory found."""

from __future__ import annotations

_LOOKS = "is|was|are|were|looks|looked|seems|seemed|feels|felt|came|came-out|appears|appeared|smells|all|very|really|"
_FUEL = "petrol|gas|fuel|diesel|gasoline"
_TEMP = "temp|temps|temperature|temperatures"
_HIGH = "high|elevated|raised|up|excessive"
#: the finding, by what is said when it is there
SIGHTS_OIL_LOOK: dict[str, tuple[str, ...]] = {
    "oil_looks_clean": (
        "oil is|looks|was|looked|still|very|nice|and|quite|itself? and|nice|still|very? =clean|fresh|good|golden|honey|amber",
        "nice|nicely? =clean oil",
        "oil|it like new|honey|fresh",
    ),
    "oil_milky": (
        "milky|milkshake|emulsified|emulsion|mayonnaise|mayo|creamy|milkey",
        "chocolate|coffee|milk|latte|cappuccino milk|coloured|colored|shake",
        "oil|dipstick|looks|looked|it|stuff like? coffee|custard|caramel|latte|cappuccino|chocolate",
        "water|coolant|antifreeze|moisture in|into|mixed|mixing|got|getting into|with|the|in? the|my|engine? oil",
        "oil .. water|coolant|antifreeze in it",
        "=oils|=oil =white|=grey|=gray|=milky|=cloudy|=creamy",
        "=grey|=gray|=white|=brown|=tan|=beige|=creamy|=pale|=thick like|as a? =milk|=coffee|=custard|=yoghurt|=yogurt|=cream|=putty|=porridge|=milkshake",
        "oil is|was|looks|looked|had|has|turned|gone|a|went|and? grey|gray|cloudy|opaque|coffee-coloured",
        "white|grey|gray|creamy|brown|beige|tan|yellow foam|sludge|goo|gunk|goop|froth|scum|paste on|in the? oil|"
        "dipstick|stick|engine",
    ),
    "cream_in_filler_only": (
        "mayo|mayonnaise|cream|creamy|emulsion|custard|milky|white|goo|gunk|foam|condensation|water .. under|in|inside|on "
        "the? oil? filler? cap|filler|lid|neck only?",
        "under|underneath|inside|beneath|in|on the|my? oil|filler? filler? cap|lid of? the? oil? is|was|theres|there|a|some|of|bit? a|some? "
        "white|yellow|brown|bit? of? cream|creamy|mayo|mayonnaise|emulsion|custard|milky|white|goo|gunk|foam",
        "filler|oil cap .. mayo|mayonnaise|cream|creamy|emulsion|white|goo|milky",
    ),
    "oil_black_and_gritty": (
        "black as your|my|the|a hat|tar|soot|coal|ink|night|hell|ace|pitch|boots?",
        "jet|pitch|coal|ink|tar black oil|stuff|out",
        "oil|it|drained|came .. jet|pitch|coal|ink|tar black",
        f"oil {_LOOKS}like|pretty|absolutely|and|very? gritty|filthy|dirty|disgusting|horrible",
        "dirty|filthy|gritty|horrible|disgusting oil",
        "oil .. black|like? as tar|gritty|soot|treacle",
        "oil like tar|treacle|soot",
        f"oil {_LOOKS}like|pretty|and? black|dark|very? and|&|,? gritty|filthy|sticky|thick|dirty|horrible",
    ),
    "oil_thin_on_stick": (
        "oil is|was|looks|feels|looked|seems|seemed|felt|s|like .. and|& thin|watery|runny",
        "oil .. thin|watery|runny and black|brown|smelly|smells|dark",
        f"oil {_LOOKS}like|too|bit|a|pretty|quite|almost|so|just? like|a|as|too|bit|very? thin|water|runny|watery",
        "watery|runny|=thinned oil|out",
        "oil|it =thin|=runny|=watery",
        "its|it's|oil|it|stuff|looks|as runny|watery like|as diesel|petrol|paraffin|kerosene|water",
        "oil|it|runs|ran|drips|dripped .. off the? stick|dipstick like|straight|as? water?",
        "thin|thinner as|than|like water|should|it|new|normal",
        "oil .. diluted|thinned",
        "oil gone|turned|went|was|is|had|like|as like|to water|paraffin",
    ),
    "oil_thick_on_stick": (
        "oil|it|stuff like|thick treacle|molasses|jelly|grease|syrup|custard|tar",
        "oil|it thick|thickened like|as|up treacle|molasses|jelly|grease|syrup|tar?",
        f"oil {_LOOKS}? very|really|extremely|so|too thick",
        "oil hangs on",
    ),
    "sludge_seen": (
        "=sludge|sludged|sludgy|sludging",
        "black|brown jelly|gunk|goo|tar|gloop",
        "=gunk|gunked|gloop",
        "coked up|oil",
        "badly|heavily|terribly sludged",
        "oil|it that? came|ran|run|drained|got|was|is|out? out? =dirty|=black|thick|thicker and thick|gritty|grittier|lumpy|lumpier|gooey|gritty",
        "thick|black with|brown black|brown|thick? gunge|goo|sludge|gunk|crud|tar",
        "gunge|gunged",
    ),
    "glitter_in_oil": (
        "glitter|glittery|sparkle|sparkles|sparkly|shimmer|specks|flakes|glints in|the|with|on? oil|dipstick|stick",
        "metal|metallic|shavings|filings|particles|swarf|bits|flakes|copper|brass|gold|silver in|inside the|my|engine|old|"
        "drained? oil",
        "oil .. glitter|glittery|sparkles|metallic|sparkly|metal|shavings|sparkling|glistening|filings|shiny",
        "metallic|glittery|sparkly|silvery|glittering oil",
        "oil like|looked|looks like? metallic|metalflake|paint",
    ),
    "fuel_smell": (
        f"smells|smell|smelling|smelled|smelt|stinks|stinking|reeks|stink of|like|strongly|a|bit|is|faintly|slightly|"
        f"badly? of|like? raw|strong|unburnt|neat? {_FUEL}",
        f"{_FUEL} smell|smells|odour|odor|in .. oil|dipstick|stick",
        f"{_FUEL} in|into|mixed|diluting|getting with|in|into|the? the|my|engine? oil|sump",
        f"oil .. {_FUEL} in it|smell",
        f"oil|dipstick|stick .. smells|smell|smelt|stinks|reeks .. {_FUEL}",
        f"strong|faint|definite smell of? {_FUEL}",
        "diluted|contaminated|mixed|thinned with|by petrol|gas|fuel|diesel|gasoline",
        "oil stank|stinks|stink|reeked|reeks|smelt|smelled .. petrol|diesel|fuel|gas",
    ),
    "oil_smells_burnt": (
        "oil .. smells|smelt|smelled|smell|stinks|stank|reeks|reeked of|like|burnt|really|of-burning|burned? burnt|burned|burning|cooked|scorched",
        "it|oil smells|smelt|smelled|stinks burnt|burned|cooked on|off the? stick|dipstick",
        "oil smells|smell|smelt|smelled burnt|burned|scorched|cooked",
        "oil .. burnt|scorched smell",
    ),
    "foam_on_stick": (
        "foam|foamy|froth|frothy|foaming|aerated|frothing|foamed|frothed|aeration",
        "bubbles|bubbly|airy in|on|oil the? oil|dipstick|stick",
        "oil|dipstick .. bubbles|bubbly|whipped",
        "full of bubbles|froth|foam",
    ),
    "oil_temperature_high": (
        f"oil {_TEMP} is|was|too|very|gauge|got|gets|went|goes|running|runs|rose|reading|climbed|climbing|over|way? "
        "over|too|very|up? high|up|red|hot|limit|excessive|rose|climbing|rising",
        f"high|excessive|rising oil {_TEMP}",
        "oil too|very|over|running|got|gets|way hot|temperature|temp|overheating",
        "oil overheated|overheating|overheats",
        "hot oil|bearing? warning|alarm",
        "oil over @temperature",
        f"oil {_TEMP} .. red|redline|off",
        "oil temp|temperature well|far|way|rose|climbed|went above|over|into|off|beyond|past",
    ),
    "engine_ran_hot": (
        "overheated|overheating|overheat|boiled|overheats",
        f"{_TEMP} gauge? went|climbed|got|crept|shot|rose|hit|was|up? up? to|past|over? =220|=225|=230|=235|=240|=245|=250|=260",
        f"{_TEMP}|temperature gauge|needle|in|was|is|went|goes|climbed|into|to|up|got|ran|running|runs|sky|too|very|the? "
        "the|too|very|up|into|rather? high|red|hot|boiling|overheat",
        "boiled|boiling|boils over|up|dry?",
        "coolant|water loss|lost|gone|out .. overheat|overheated",
        "coolant|water blew|blows|blowing|spewed|spewing|boiled|pushed|gushed|thrown|threw out|out-of|from|over|up|all the? overflow|expansion|header|radiator|reservoir|bottle?",
        "ran|runs|running|got|gets|getting|went|engine|was|be far|a|bit? too|really|very|bit|rather|red|quite|so hot",
        "ran|runs|running|run =hot",
        "cooked|cooking the|my|its engine|motor",
        f"high|excessive|rising cylinder|head|coolant|water|engine {_TEMP}",
        "temperature|temp gauge|needle was|in|went|into|hit|ran? in|into|to|on? the? =red",
        "temperature|temp|coolant needle|gauge|temperature|temp? shot|rocketed|climbed|soared|rose up|rapidly|quickly|fast?",
        "coolant|water boiled|boiling|boils",
    ),
    "blow_by_high": (
        "blow-by|blowby|chuffing|chuffs",
        "blow by",
        "smoke|pressure|fumes|smoking|puffing|chuffs|breathing|oil-mist from|in|out|at|of|heavily|through the|of? "
        "oil? filler|breather|crankcase|breathers|dipstick",
        "crankcase pressure|pressurised|pressurized|pressurising",
        "breathing|breathes heavily|heavy|badly",
        "smoke|fumes|smoking|steam|vapour|vapor|gas puffing|puffs|coming|comes|blowing|blows|pouring|pours|out|rising|chuffing out|up|from|of the? dipstick|filler|breather|oil-cap|dip tube|hole|cap|pipe?",
        "dipstick|filler|breather|oil-cap tube|hole|cap|pipe? smokes|smoking|puffs|puffing|chuffs|chuffing|huffs|huffing|breathes|fumes",
    ),
    "blue_smoke": (
        "blue|bluish|blueish smoke|exhaust|haze|cloud|clouds",
        "smoke|smokes|smoking blue|bluish",
        "puff|puffs|cloud|clouds of blue|oil|oily smoke",
        "smokes|smoking|smoked like|as mad|a|hell chimney|train|anything?",
        "exhaust smokes|smoking|smoky",
        "smoky exhaust",
        "smokes|smoking on|at the? overrun|startup|start-up|start|exhaust|idle|acceleration",
    ),
    "white_plume": (
        "white|grey smoke|steam|exhaust|plume|vapour|vapor",
        "steam|steaming from|out of? the|of? exhaust|tailpipe|pipe",
        "steaming exhaust",
    ),
    "burning_oil_smoke": (
        "smoke|smoking|fumes|smell in|from|under|out|into|inside|came|coming|billowing|pouring|filled|filling of|from|out|"
        "into|under|in|the? of|the|my? the|my|engine? engine|bonnet|hood|cockpit|cabin|bay|rear|back|manifold|exhaust-"
        "manifold|compartment|cowling|wheel-arch|car|underneath|behind|cab|wheelhouse|headers|header|downpipe",
        "oil|dripping|drips burning|smoking|onto|on the|off? exhaust|manifold|turbo|downpipe",
        "engine|motor|bay smoked|smoking",
        "burning|burnt|burned oil? smell|odour|odor|stench",
        "hot oil smell|odour",
        "smell|smelled|smelt|smelling|stink|stench|smells of|like|was|a? of? a? burning|burnt|burned oil?",
        "smell of hot oil",
        "cloud|clouds|plume|screen of? smoke behind|from|in?",
        "smoke cloud|screen",
        "whiff of hot|burning|burnt? oil",
        "smelled|smelt|smelling|smell|smells|whiff hot|burning|burnt|burned oil",
        "smoke|fumes came|coming|pouring|through|entered|filled|in through|from|the|up? the? vents|vent|heater|dash|floor|cabin|bilge|wheelhouse|cowl",
        "acrid|oily smell|smoke",
        "smoke|fumes began|started|was|began|is|kept? coming|pouring|billowing|drifting|rising|out|off|up off|out|from|up|through|of|under .. cowling|cowl|engine|bonnet|hood|exhaust|manifold|bay|dash|louvres|grille",
        "car|cabin|cockpit|cab|bay|boat|wheelhouse|it|engine-room =filled|=full|=filling up? with|of smoke|fumes|blue|haze",
        "smoke =poured|=pouring|=pours|=billowed|=billowing|=billows|=rolling from|out|everywhere|up|under|off|into|behind",
        "trailing|trailed a|huge|big|great|blue|cloud|of|thick? smoke|cloud of? blue? smoke?",
        "smoke|smoking|haze =everywhere|=all =over",
    ),
    "sweet_smell": (
        "sweet|sickly|syrupy smell|smelling|odour",
        "smells sweet|syrupy",
        "smells of coolant|antifreeze|syrup",
    ),
    "coolant_level_falling": (
        "losing|loses|lost|using|uses|drinking|drinks|consuming|needs|topping its|some|the|up|a|bit|of|lot? coolant|water|"
        "antifreeze",
        "coolant|water disappears|disappearing|vanishes|loss",
        "coolant|rad|radiator|header|expansion level|tank|bottle|keeps? is|keeps|kept|going|goes|always? dropping|falling|low|disappearing|down|drops|falls|vanishing|empty down?",
        "water level|keeps|is|kept keeps|going|always? dropping|falling|low|down|disappearing",
        "radiator|rad|header keeps? needs|needing topping|filling up?",
    ),
    "oil_film_in_coolant": (
        "oil|oily|brown|sludge|film|scum|emulsion in|on|film|scum|contaminated of|on|in? the|top? coolant|radiator|rad|"
        "water|header|expansion tank?",
        "coolant|radiator|water .. oily|oil-film|sludge",
        "coolant|radiator|water .. brown sludge|scum|film|mayonnaise|mayo|slime",
        "filled|filling|fills the|my|its|up? radiator|rad|header|expansion|coolant|cooling-system bottle|tank|system? with|full-of oil|sludge",
        "radiator|rad|header|expansion|coolant bottle|tank? is|was|were|looked? full of oil|sludge",
        "oil in|into|all-through the|my|its? radiator|rad|coolant|header|expansion|cooling system|tank|bottle?",
        "chocolate|oily|oil slick|goo|gunk|film|mess in|on the? radiator|rad|coolant|header|expansion",
    ),
    "cooling_system_loses_pressure": (
        "fails|failed|failing a|the|cooling|coolant? pressure test",
        "cooling|coolant system|pressure @not hold|holding|held",
        "coolant|cooling pressure drops|dropping|bleeds|lost",
        "cooling|coolant|radiator|rad system? pressure? test|tested|tester|pressurised|pressurized|pumped up? on|to|the|radiator|@pressure? :|,? drops|dropped|loses|lost|falls|fell|sinks|bleeds|leaks",
        "pressure tester on|at the? radiator|expansion|header|cooling tank|system? :|,? drops|dropped|loses|lost|falls|fell|sinks|bleeds",
        "combustion|exhaust gas|gases in|test the|positive coolant?",
    ),
    "fuel_gets_in": (
        "leaking|leaky|stuck|dripping|bad|faulty|split|holed|failed|torn|sticking injector|injectors|float|"
        "diaphragm|lift-pump|carb fuel|lift|pump|valve?",
        "leaking|leaky|stuck|sticking|worn|bad float|carb|carburettor|carburetor|inlet? needle valve|and",
        "float|carb|carburettor|carburetor needle .. leaking|stuck|sticking|worn|flooding",
        "injector|injectors|float|diaphragm|choke .. leaking|stuck|dripping|split|holed|torn|sticking|flooding|"
        "perished",
        "carb|carburettor|carburetor|choke|carbs flooding|floods|flooded|stuck|overflowing",
        "fuel|lift pump leaks|drips|weeps petrol|gas|fuel|diesel",
        "little? pump with the|a? glass bowl .. drips|leaks|weeps",
        "fuel|lift pump leaking|leaks|weeping|dripping|diaphragm|seal into|split|inside|leaking?",
        "running|runs|ran very|too|rich|well? rich",
        "lift-pump|liftpump|fuel-pump|injection-pump|injector-pump .. wet with fuel|diesel|petrol|gas",
        "lift|fuel|injection|injector pump .. wet|dripping|soaked with fuel|diesel|petrol|gas",
        "injector|leak-off|leakoff|spill|return|fuel line|lines|pipe|pipes|rail under|inside|in|beneath the|a? rocker|valve|cam cover",
        "return|leak-off|leakoff|spill|injector|fuel pipe|line|pipes|lines under|inside|in|beneath .. crack|cracked|leaking|loose|dripping|sprays|split|wet",
        "fuel|diesel|petrol dripping|running|leaking|spraying|weeping under|inside|beneath|into the? rocker|valve|cam|timing cover|case|sump",
        "light|lit|set-fire-to|burn|burns a|to|it|the? rag|stick|paper|match dipped|soaked|with in? it|the|oil?",
    ),
    "coolant_gets_in": (
        "head gasket .. blown|leaking|failed|gone|bad",
        "blown|failed|leaking|bad|popped head gasket|headgasket",
        "liner|sleeve seal|seals|o-rings|o-ring .. leaking|failed|gone",
        "cracked|porous head|block|liner .. water|coolant|leak",
        "oil cooler leaking|leaks|leaked|failed internally|inside|internal|water|coolant|into",
        "water pump seal .. into|oil|leaking",
        "blew|burst|lost|holed|split|failed|perforated|corroded an|the|my|its? oil-cooler|heat-exchanger core|tube|matrix?",
        "blew|burst|holed|split|perforated an|the|my|its? oil cooler core|tube|tubes|matrix",
        "oil? cooler|heat exchanger core|tube|tubes? failed|failure|blew|holed|perforated|leaking water|coolant|internally|into|let|water?",
        "cooler core|tube failed|blew|burst|holed|gone",
    ),
    "water_at_the_drain": (
        "water|coolant came|drained|ran|poured|drawn|out|=pumped out|first|from|before|off out|first|of|from|the? sump|pan|"
        "drain|oil|crankcase|bottom",
        "water|coolant came|ran|drained out first|before",
        "drained .. water|coolant out|from|first|of",
    ),
    "iron_high": (f"iron|fe is|was|very|level|levels? {_HIGH}", f"{_HIGH} iron|fe"),
    "copper_and_lead_high": (
        f"{_HIGH} in|levels? of|in? copper|lead and|& lead|copper",
        f"copper|lead and|& lead|copper are|is|were|both? {_HIGH}",
        f"bearing metals {_HIGH}",
    ),
    "copper_high_alone": (f"copper|cu only|is|was? {_HIGH}", f"{_HIGH} copper|cu only?"),
    "lead_high_alone": (f"lead|pb level|levels {_HIGH}", f"{_HIGH} lead|pb level|levels|only"),
    "aluminium_high": (f"aluminium|aluminum is|was? {_HIGH}", f"{_HIGH} aluminium|aluminum"),
    "silicon_high": (f"silicon is|was|level|levels? {_HIGH}", f"{_HIGH} silicon"),
    "glycol_found": (
        "glycol|sodium|potassium present|positive|found|detected|high|in",
        "high sodium|potassium|glycol",
    ),
    "water_in_sample": (
        "water|moisture in the? oil? sample|report|analysis",
        "sample .. water|moisture",
    ),
    "lab_fuel_high": (
        "fuel dilution|diluted high|over|of|at|@number?",
        "@number percent|pct|% fuel",
        "fuel at|of|is @number percent|%",
        "sample|report|analysis|lab .. fuel",
    ),
    "lab_viscosity_low": (
        "low viscosity",
        "viscosity is|was|had|came|too|back? low|down|dropped|thin",
    ),
    "lab_viscosity_high": (
        "high viscosity",
        "viscosity is|was|had|came|too|back? high|up",
    ),
    "metals_normal": (
        "oil? analysis|report|sample|lab|blackstone came|was|is|back|looks|all|results? back|up|all|was? =clean|normal|"
        "fine|good|ok|unremarkable",
        "wear metals normal|low|fine|ok",
        "=clean|normal|good oil analysis|report|sample",
        "no abnormal|wear|unusual metals in|on the? sample|report|analysis|oil?",
    ),
    "cooler_face_blocked": (
        "rad|radiator|cooler|screen|grille|fins|core gets|got|is|was|all|completely? clogged|choked|full|packed|blocked|plugged|matted|caked up|solid? with|of chaff|grass|seed|seeds|dust|dirt|weed|straw|fluff|leaves|mud|bugs",
    ),
}
#: the finding, by what is said when it is not there
SIGHTS_OIL_LOOK_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_temperature_high": (
        f"oil {_TEMP} is|was|stays|stayed|remained|and|all? steady|normal|fine|ok|good|constant|unchanged|pressure|low|"
        "cool",
        f"no|without rise|increase in oil? {_TEMP}",
        f"normal oil {_TEMP}",
        f"{_TEMP} is|was|all? normal|fine|steady|ok",
        f"{_TEMP} and .. normal",
        f"no change|rise|increase in .. oil {_TEMP}",
    ),
    "engine_ran_hot": (
        f"engine|coolant|water|cylinder|head|heads|the? {_TEMP} gauge|is|was|stays|stayed|remained|all|needle|rock? "
        "steady|normal|fine|ok|good|constant|unchanged",
        f"{_TEMP} normal|fine|steady|ok",
        "temp|temperature gauge|needle never|not|hadnt|didnt moved|move|budged|rose",
    ),
    "coolant_level_falling": (
        "coolant|water|antifreeze level? is|was|still|stays? ok|fine|good|full|steady|stable|constant|normal|up",
        "@not|no|without|zero losing|using|lost|lose|loses|drop|use any? water|coolant|antifreeze",
        "no|zero|any loss|drop|use of|in water|coolant|antifreeze",
        "no water|coolant loss|consumption|usage",
    ),
}
