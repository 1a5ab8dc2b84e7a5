"""Words for what has got into the oil: water, fuel, dirt, sludge."""

from __future__ import annotations

from knowledge.lexicon.words.names import OLD_OIL, STICK, SUMP_BOLT

_LOOKS = "is|was|are|were|looks|looked|seems|seemed|feels|felt|came|came-out|appears|appeared|smells|all|very|really|"
_FUEL = "petrol|gas|fuel|diesel|gasoline"
_HEADER = "header|expansion|surge|degas|coolant|radiator|rad tank|bottle|reservoir"
_FUELS = "diesel|petrol|gasoline|gas|fuel|kerosene|paraffin"
_WATER = "water|coolant|antifreeze|seawater|glycol"
_MUCH = "@volume|litre|litres|quart|quarts|pint|pints|gallon|cupful|lot|loads|lots|half"
_SUMP = "sump|pan|crankcase|drain"
_ANY_SUMP = "sump|pan|oilpan"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "stick_marks_wrong": (
        "dipstick|stick reads|marks|marked|calibrated is|are|out|read? wrong|incorrect|incorrectly|off|inaccurate|wrongly",
        "dipstick|stick @not calibrated|accurate|right",
        "wrong|incorrect marks|calibration on the? dipstick|stick",
        "drained @volume .. stick|dipstick reads|read|shows|showed|said|says full",
    ),
    "drained_volume_low": (
        "expecting|should|expected|holds|takes|supposed|capacity|instead .. @volume .. came|drained|got|out|only|left",
        "@volume|two|three|four|one|half came|ran|drained|dripped|got|comes out|in-the-pan instead|of|not|where|when|and|but|it|should",
        "only|just|barely|got|maybe|about|hardly|less-than @volume|half|a-litre|two-quarts|a-quart|a-pint came|drained|ran|got|out|left|in-the-pan|in-the-bowl "
        "out?",
        "@volume|two|three|four and|or|ish? a? bit|half|little|so|quarter? =drained|=dripped out?",
        "@volume and|or|ish? a? bit|half|little|so|quarter? =came|=ran out?",
        "two|three|four and|or|ish? a? bit|half|little|so|quarter? =came|=ran out",
        "wasnt|not|hardly|barely|never much|a-lot|enough|more-than-a-quart|anything|any-oil|half in|to|came|drained|out it|there|drain|out?",
        "only|just|barely|hardly|got|about|less @volume|any|half|anything of|oil? came|drained|out out?",
        "drained .. got|only|just|barely .. @volume",
        "much|far|way less|oil oil|than|less .. came|drained|out|holds|should",
        "hardly|barely|little any|a? oil|drop came|drained|out out?",
    ),
    "drained_volume_high": (
        "@volume came|drained|got|ran|out|out-of-it out? and|when|but|instead|of|where it|that|the|engine|book|of|they|sump takes|holds|should|only|wants|"
        "capacity|is|needs|supposed",
        "takes|holds|should|capacity|supposed .. @volume|@number .. @volume|@number came|drained|out|ran",
        "way|far|lot|loads|much|quite-a-bit more oil? came|drained|ran|than out? than|it-holds|should|expected|i-put|went",
        "more oil|than .. came|drained out|than|holds|should",
        "drained .. more|over .. than .. holds|should|capacity",
        "got @volume out .. too|over|more|extra",
        "more came|ran|drained out|than .. went|put|than|poured|should|holds",
        "@volume|quart|litre|liter|pint|half|bit|lot|good more|extra out? than i|we|he|it|went|the-book? put|poured|had|went|filled|holds|takes in?",
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
    "oil_black_and_gritty": (
        "black as your|my|the|a hat|tar|soot|coal|ink|night|hell|ace|pitch|boots?",
        "jet|pitch|coal|ink|tar black oil|stuff|out",
        "oil|it|drained|came .. jet|pitch|coal|ink|tar black",
        f"oil {_LOOKS}like|pretty|absolutely|and|very? gritty|filthy|dirty|disgusting|horrible",
        "dirty|filthy|gritty|horrible|disgusting oil",
        "oil .. black|like? as tar|gritty|soot",
        "oil like tar|soot",
        f"oil {_LOOKS}like|pretty|and? black|dark|very? and|&|,? gritty|filthy|sticky|thick|dirty|horrible",
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
        "inside|insides|engine|it|motor is|was|were|looks|looked absolutely|completely|really|very? filthy|sludged-up|gunked-up|full-of-gunk",
        "gunk|gunge|crud|muck|sludge .. filler|rocker|valve|cam|cover|sump|engine|inside",
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
        "stank|stinks|stunk|reeks|reeked|smelt|smelled|smells|stinking|reeking|ponged strongly|really|just? of|like diesel|petrol|gas|fuel|derv|gasoline|raw-fuel",
    ),
    "coolant_level_falling": (
        "losing|loses|lost|using|uses|drinking|drinks|consuming|needs|topping its|some|the|up|a|bit|of|lot? coolant|water|"
        "antifreeze",
        "coolant|water disappears|disappearing|vanishes|loss",
        "coolant|rad|radiator|header|expansion level|tank|bottle|keeps? is|keeps|kept|going|goes|always? dropping|falling|low|disappearing|down|drops|falls|vanishing|empty down?",
        "water level|keeps|is|kept keeps|going|always? dropping|falling|low|down|disappearing",
        "radiator|rad|header keeps? needs|needing topping|filling up?",
        f"{_HEADER} topped|topping|needs|filled|filling|refilled|drops|dropping|dropped|down|empties|emptying|loses|losing|falling|uses|using up?",
        "coolant|water|header tank? topped|topping|added|adding up? every|each|daily|per|@volume",
        "coolant|water use|usage|consumption|loss",
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
        f"{_MUCH} of? clean|rusty|dirty|green|salt|fresh? {_WATER} came|drained|ran|poured|drawn|pumped|sucked out|from|off|of|first",
        f"drained|pumped|sucked|got|drew|emptied about|nearly|over|some|a? {_MUCH} of? clean|rusty|dirty|green|salt|fresh? {_WATER} out|from|off of|from? the|my|its|her? oil? {_SUMP}|engine|bottom",
    ),
    "water_in_sump": (
        "water|coolant|antifreeze in|at|lying|puddle the|bottom|in|of? of|the? the? bottom|sump|pan of? the? sump|pan?",
        "puddle of? water|coolant in|at",
        f"{_SUMP} is|was|had|has|full|half|mostly|nearly .. {_MUCH}|full of {_WATER}",
        f"{_MUCH} of? {_WATER} in|inside the? oil? sump|pan|crankcase",
    ),
    "fuel_at_the_drain": (
        f"{_MUCH} of? pure|neat|straight|clean|raw? {_FUELS} came|drained|ran|poured|drawn|pumped|sucked out|from|off|of .. {_SUMP}",
        f"drained|drain|pumped|sucked|got|drew|took|emptied about|nearly|over|some|a? {_MUCH} of? pure|neat|straight|raw? {_FUELS} out|from|off of|from? the|my|its|her? oil? {_SUMP}|engine|bottom",
        f"{_SUMP} is|was|had|has|full|half|mostly|nearly .. {_MUCH}|full of {_FUELS}",
        f"{_SUMP} full of {_FUELS}",
        f"{_FUELS} came|ran|poured|pours|gushed|runs out of|from|at the? oil? {_SUMP}",
        f"{_FUELS} ran|came|poured|comes|pours out first|before|with the? oil",
        f"{_FUELS} ran|came|poured|comes|pours out when|as|once i|we|he|they pulled|pull|undid|opened|removed|took|drained the|out? {_SUMP}|plug",
        f"{_MUCH} of? {_FUELS} in the? oil? {_SUMP}",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "drained_volume_low": (
        "more than @volume drained|came|out",
        "full amount|quantity drained|came out?",
    ),
    "coolant_level_falling": (
        "coolant|water|antifreeze level? is|was|still|stays? ok|fine|good|full|steady|stable|constant|normal|up",
        "@not|no|without|zero losing|using|lost|lose|loses|drop|use any? water|coolant|antifreeze",
        "no|zero|any loss|drop|use of|in water|coolant|antifreeze",
        "no water|coolant loss|consumption|usage",
    ),
    "fuel_smell": ("no fuel|diesel|petrol smell|dilution in|of|on? oil|it|stick?",),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "water_in_sump": (
        f"water|coolant|antifreeze + {_ANY_SUMP} + bottom|lying|pool|litre|puddle|settled|standing|full|under - no|not|pump|jacket|sample|any|bag|outside|leak|drawn",
        "water|coolant|antifreeze + sump|pan|bottom + found|lying|came_out|sitting|pint|litre|cup|half - no|not|pump|cooling|leak_outside|bilge",
    ),
    "fuel_smell": (
        "smell|smells|stinks|reeks|whiff|pong|stink + petrol|gas|gasoline|fuel|diesel - exhaust|no|not|cabin|coolant|bay|leak|burning|outside",
        "oil|stick|dipstick|it + stank|stunk|smelt|smelled|reeked|stinking + petrol|gas|gasoline|fuel|diesel - exhaust|cabin|bay|burning",
        "stick|dipstick|oil + lit_with_a_match|catch_fire|set_light|light_it - caught",
        f"{OLD_OIL} & reeked|smell|smells|stinks|reeks|stank|whiff|smelled|smelt|stink & paraffin|benzine|petrol|diesel|fuel|gasoline|kerosene|=gas - no|not|exhaust|outside|@not|cabin",
    ),
    "coolant_level_falling": (
        "rad|radiator|coolant|header_tank|expansion|water + wanting|losing|loses|dropping|topping|drops|using|uses|disappearing|keeps|vanishing|drinking|going_down + no_leak|no_leaks|no_sign|no_drips|no_puddle|keeps|water|level|nowhere|without|slowly|always|constantly - oil_in|oil_film|oil_pressure|pump|sump|temperature|gauge",
        "coolant|water|antifreeze + going_somewhere|disappearing|vanishing|being_lost|goes_missing|going_missing|keeps_going|losing|dropping - oil_and|pump|in_the_oil|sump",
        "radiator|rad|header_tank|expansion_tank|coolant|water + topping_up|topping|keeps|drops|losing|disappearing|using|drinking|vanishing|add|adding + week|day|every|always|keeps|constantly|water|no_leak|no_leaks|constantly|up - oil_level|pump|pressure",
        "lost|loses|losing|drinks|uses + coolant|water|antifreeze - pressure|oil|no|not|pump",
        "header_tank|coolant|expansion_tank|radiator|rad|antifreeze|cooling_water & loss|loses|losing|topping|going_down|drops|falling|disappears|vanishes|drinks|uses|low_every & no_external|no_leak|no_leaks|no_drips|no_puddle|nothing_outside|@not_find|dry_outside|nowhere|no_sign - tester|pressure_tested|holds|not_falling|pumped|presure|oil_level",
    ),
    "oil_film_in_coolant": (
        "oil|oily|scum|mayo|sludge|brown_goo + radiator|rad|coolant|header_tank|expansion|expansion_tank|header|overflow|coolant_bottle + film|skin|slick|floating|in|layer|scum|rainbow|on_top|sludge - no|not|cooler|hose_to",
        "slick|rainbow|scum|sheen|film|oily|grease|gunk + radiator|rad|header|coolant|expansion|water_tank - bilge|sea|overboard|fins|outside|front",
        "oily|greasy + coolant|water|antifreeze|radiator|header - bilge|sea|overboard|no|not",
        "cooling_water|expansion_tank|header_tank|radiator|coolant|antifreeze & oil|greasy_skin|greasy|oily|rainbow|sheen|scum|brown_foam|brown_sludge & swim|floating|floats|on_it|on_top|skin|film|in_the_radiator|surface|oil_in_the - no|not|cooler|exhaust|outlet|sea|overboard|sump|stick|oil_radiator|hull|bucket|cooling_water_out|@not|clean",
    ),
    "water_at_the_drain": (
        "water|coolant + drain|drained|plug|drain_plug + before|first|ahead|came_out|ran_out|cupful|cup|pint|litre - like|no|not|jacket|radiator|block_drain|pump",
        "water & oil & plug|drain|drained & first|before|ahead - no|pump|radiator",
        "water|coolant + came_out|came|drained|out_of_the_sump|out_of_the_pan|ran_out + before|first|ahead|load|cupful|drain|lot - like_water|like_black|like_dirty|like|pump|radiator|block|no|not|filter",
        "cup|pint|litre|spoonful|bit|drop|water|lot|glass + water|coolant + out|came + before_the_oil|ahead_of_the_oil|first|drain_plug|drain|plug - no|not|filter",
        "water|coolant|antifreeze|glycol + first|before_the_oil|before_oil|ahead_of_the_oil|then_oil & drained|drain|drain_plug|sump_plug|sump|pan|plug - radiator|block_drain|no|not|system|overflow|first_run|first_start|first_drive|header|dent",
        f"water|coolant|something_clear|clear_liquid|antifreeze|seawater & {SUMP_BOLT}|drain|draining|undid_the_bottom & first|before|ahead|preceded|then_oil|then_the_oil - no|not|hose|radiator|jacket|@not|block_drain",
    ),
    "drained_volume_low": (
        "came_out|drained|got_out|out & expecting|expected|should|holds|takes|instead|supposed & @volume|quarts|litres|pint + only|bit|just|less|barely|half|"
        "little|and_a_bit|maybe|hardly - more|over|nearly|high",
        "drained|came_out|drain|got_out|ran_out + only|just|barely|hardly|less|missing|short|instead + quart|quarts|litre|litres|liter|liters|pint|pints|holds|takes|@volume - water|gallons_of_fuel|coolant|high",
        "barely|hardly|only_half|less_than_half|hardly_anything|scarcely + came|drained|got|out + @volume|oil|litres|quarts|should|anything|half|it - no_pressure|gauge|rockers|pump|crank",
        "only|barely|just + got|came|drained|ran + @volume + out - quarts_low|of_water|add|topped|more",
        "drained|draining|drain|caught_it|jug|motor_come|from_motor & only_little|less_than_half|much_less|far_less|half_of_what|nowhere_near|only_a_third|only_half|very_little|barely_half & should|holds|must_be|supposed|takes|capacity|of_what|what_it - pressure|over|too_much|no|water|more_than",
    ),
    "fuel_gets_in": (
        "diaphragm|lift_pump|needle_valve|float|carb|injector|choke|fuel_pump|carburettor|carburetor|fuel_tap|injection_pump + split|stuck|leaking|leaks|flooding|flooded|ruptured|torn|perished|gone|dribbling|holed|sticking|filled|failed|punctured|weeping|passing - not|no|new|crankcase|gauge|replaced|relief|oil_pump|vacuum|main_bearing|joint_on_the_block|gasket_on_the_block|fuse|drips",
        "lift_pump|fuel_pump|injector|float|needle_valve|choke|carb + leaking|split|torn|stuck|dribbling|flooding|perished|stuck_open|flooded + oil|sump|crankcase|petrol|diesel|fuel|gas|into - no|not|outside",
        "lift_pump|fuel_pump|injection_pump|injector_pump|leak-off|return_line|return_lines|spill_line|injector_line|injector_pipe|jumper_line|jumper_lines|jumper_tube|fuel_jumper|injector_jumper & wet|soaked|dripping|leaking|weeping|cracked|crack|sprays & fuel|diesel|petrol|rocker_cover|valve_cover|sump|into_the_oil - no|not|new|dry|gauge|oil_return",
        "lift_pump|petrol_pump|fuel_pump|strangler|choke|diaphragm|injector|carburettor|carburetor|carb|float|needle_valve|rubber_skin & torn|=tear|perforated|passing|jammed_shut|dribbling|flooding|washing|weeping|split|ruptured|punctured|stuck_on|stuck_open|leaks_inside - no|not|hydraulic|vacuum_pump|oil_pump|relief|breather|valve_stuck|advance",
    ),
    "coolant_gets_in": (
        "head_gasket|liner_seal|liner_seals|cooler|heat_exchanger|oil_cooler|cylinder_head|liner|block|water_jacket + holed|blown|leaking|cracked|gone|failed|perished|porous|corroded|breached|leak|split|let & water|coolant|sea_water|seawater|antifreeze|milky|emulsion|mayo|mayonnaise - no|not|fins|oil_everywhere",
        "pressure_test|pressure_tested|pressurised|pressurized|tested + coolant|water|cooling + sump|oil|crankcase|past|bore|getting|leaking|dripping|into - holds|held|fine|ok|dry|no|not",
        "cracked_head|head_gasket|oil_cooler|cooler_core|liner|liner_seal|water_pump|block|core & perforated|eaten_through|holed|corroded_through|blown|leaking|letting|pinhole|cracked|rotted_through & antifreeze|water|coolant & oil|crankcase|sump|between|into - no|not|fuel|outside|@not|cooler_off",
        "oil_cooler|cooler & tube|core|matrix & eaten_through|perforated|pinholed|corroded_through|rotted_through|holed - no|not|hose|radiator|outside|fins",
    ),
    "oil_milky": (
        "oil|sump|dipstick|drained|stick + milky|milkshake|mayonnaise|mayo|coffee|latte|emulsion|emulsified|cream|creamy|white|custard|grey_sludge|chocolate_milk|cappuccino - no|not|filler|cap|breather|@not|under_the|smoke|isnt|metal|wasnt|under",
        "dipstick & milky|creamy|mayonnaise|emulsified|emulsion|milkshake + sludge|gunk|goo|slime|stuff|gloop|mess|on_it - no|not|cap|filler|breather|isnt|wasnt|free",
        "sea_water|seawater|salt_water|water|coolant|antifreeze + in_the_oil|into_the_oil|in_oil|mixed_with_the_oil - no|not|pressure_in",
        "oil|sump|stick + tea_with_milk|milky_tea|colour_of_tea|white_coffee|like_coffee|like_milk|caramel|like_custard|butterscotch|mushroom_soup|chocolate_milk - no|not|filler|cap",
    ),
    "sludge_seen": (
        "sludge|black_jelly|gunk|tar|black_goo|gloop|gunge|treacle + sump|pan|rocker|valve_cover|covers|filler|head|drain|engine|oil|everywhere|inside|thick|inch - no|not|screen|pickup|strainer|filter|line|trap|traps|gauge|drillings|element|cooler|free|without|pleat|sender|port|holes|bit_of|clean|coolant|radiator|returns",
        "tarry|=tar|peat_bog|goo|sludgy|gloop + deposits|inside|cover|under|valve_cover|cam_cover|looks|sump|engine|pan|rocker|poured - pickup|screen|filter|road",
        "tar|sludge|treacle|jelly|gunk|black_jelly + cap|filler|filler_neck|rocker_cover|valve_cover|cover - no|not|noise|cleaned_and",
        "pan|sump|covers|under_covers|filling_hole|fill_hole|rockers|valley|oil_filling|filler_hole|rocker_box & black_pudding|tarry|tarry_jam|heavy_deposits|tar|treacle|gunk|jelly|thick_black|gunge|crud|toffee & inch|coated|heavy|lined|bottom|everything|thick|layer|caked|full|had - no|clean|pickup|screen|gallery|filter|fill_neck|tan|milky",
    ),
    "oil_black_and_gritty": (
        "oil|it + gritty|grit|black_and_thick|sticky|like_grinding|abrasive - no|not|filter|pickup|shells|bearings",
        "oil|it + jet_black|sandy|gritty|like_sand|filthy|black + black|sandy|gritty|sand|fingers|feels|thick - filter|clean|looks_new|screen|blast",
        "oil|oils + like_tar|thick_black|filthy|black_as|treacle_black|black_and_sticky|like_grease - filter|no|not|clean",
        f"oil|{STICK} & black|dark & abrasive|grainy|gritty|gummy|grit_in|grains|sandpaper|rough & touch|hand|fingers|rub|feel|rubbed|smear|hands - no|not|@not|silky|smooth",
    ),
    "drained_volume_high": (
        "too_much|double|twice|nearly_double|extra|more_than_it_should + came|drained|out|got + out|drained|hold|holds|should|it|gallon - only|barely|in_it|poured",
        "drained|came_out|got|out|drain & takes|holds|capacity|should_be|book_says|supposed & @volume|litres|quarts|more_than + nearly|almost|over|more|about|"
        "@volume - only|barely|just|half|little|less",
        "drained|drain|got|came|out + @volume + when_it_holds|holds|should|capacity|should_be & @volume - only|barely|just",
        "drained|draining|jug|bucket|from_motor|pan|out_of_it|out_of_her & more_than|two_quarts_more|more_oil_than|litre_more|quart_more|quarts_more|ran_over|overflowed|pint_more & holds|should|supposed|must_be|capacity|too_much|takes - no|not|@not|less|bilge|radiator",
    ),
    "cooling_system_loses_pressure": (
        "radiator|rad|cooling_system|radiator_tester & tested|tester|pumped|fifteen_pounds|pressure_test|presure & drops|bleeds|@not_hold|loses|falls|goes_down|bled|leaks_down|sinks & no_drips|no_leak|not_a_drip|@not_find|dry|no_drip|nothing|no_water|nowhere - oil_pressure_drops|holds_fine",
    ),
    "fuel_at_the_drain": (
        f"petrol|diesel|gasoline|fuel|paraffin|kerosene & sump|pan|{SUMP_BOLT}|at_the_bottom|crankcase|pulled_the_plug & neat|pure|ran_out|standing|layer|more|held|pool|stood|poured_out|straight - no|not|smell|tank|reeks|smells|filter|lift|put|flush|rinse|wash|percent|@not|dilution",
    ),
    "stick_marks_wrong": (
        f"correct_liter|correct_litre|book_quantity|exactly|correct_amount|right_amount|book_fill|measured|known_amount & {STICK}|max|mark & disagrees|wrong|shows_low|reads_low|off_max|short|@not_reach|too_high|shows_high|above|below|off - spot_on|right_mark|pickup|clearance|bore|pressure",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_milky": (
        "no_water|no_milkiness|not_milky|no_mayo|no_mayonnaise|no_emulsion|no_coolant|@not_milky|no_milky|no_cream + oil|stick|dipstick|cap|drain|sump|in|looks",
    ),
    "fuel_smell": (
        "no|@not|without + smell|smells|whiff + petrol|fuel|gas|gasoline|diesel - exhaust",
        "@not_smell|no_smell|no_petrol|no_fuel|no_diesel|without_any_smell + fuel|petrol|oil|dipstick|stick|diesel|gas|in|of|on - run_out|tank|lines|pump",
        f"no_smell|no_whiff|@not_smell|no_hint & petrol|fuel|gasoline|diesel|=gas|paraffin & {OLD_OIL} - burnt",
    ),
    "coolant_gets_in": (
        "head_gasket|cooler|liner + tested|checked|sound|fine|good|ok - before|until|prior|gauge|pressure|psi|not|no|blown|leak|leaking|bypass|oil_leak|clear",
    ),
    "fuel_gets_in": (
        "fuel_system|lift_pump|injectors|carb|carburettor|fuel_pump & tight|no_leak|not_leaking|no_leaks|no_flooding|whole|no_weep - not_tight|but|oil_pump",
    ),
    "coolant_level_falling": (
        "coolant|header_tank|expansion_tank|antifreeze & @not_drop|never_drops|not_moved|stays_put|never_topped|no_topping|holds_steady|level_holds|never_needs - oil_level|temperature",
    ),
    "oil_film_in_coolant": (
        "coolant|header_tank|expansion_tank|radiator|antifreeze & no_oil|no_film|no_sheen|no_scum|no_grease|not_oily|no_oil_on|clean_and_clear - exhaust|overboard|sump",
    ),
    "cooling_system_loses_pressure": (
        "radiator|cooling_system|radiator_tester|rad|coolant_system & held|holds|hold & steady|half_an_hour|minutes|hour|pressure|test - not|@not|wont|drops",
    ),
    "water_at_the_drain": (
        f"only_oil|nothing_but_oil|no_water|straight_oil|just_oil|oil_from_the_first & {SUMP_BOLT}|drain|drained|plug - gauge|gallery",
    ),
    "fuel_at_the_drain": (
        f"no_gas|no_fuel|no_petrol|no_diesel|no_gasoline & drained|drain|{SUMP_BOLT}|came_out|sump_drained - sample|lab|tank",
    ),
    "drained_volume_low": (
        "drained|drain|draining|came_out & as_much|full_amount|all_of_it|full_capacity|whole_amount|what_went_in|as_went_in|everything_i_put - not|@not|pressure|more",
    ),
    "drained_volume_high": (
        "drained|drain|draining|came_out & no_more_than|not_more_than|rated_capacity|just_what_it|only_what_it|not_too_much|@not_more - less|half|water",
    ),
    "sludge_seen": (
        "no_sludge|no_deposits|no_gunk|no_tar|no_varnish|spotless|clean_as & under_the_cover|covers|rockers|pan|valley|filler|inside - pickup|screen|filter",
    ),
    "oil_black_and_gritty": (
        "silky|no_grain|no_grit|not_gritty|@not_gritty|smooth & rub|rubbed|feel|fingers|rub_it - idle|runs|valve|shaft|journal|crank|bearing|shell",
    ),
    "stick_marks_wrong": (
        f"measured|exactly|book_quantity|right_amount|correct_amount & {STICK}|mark & right_on|dead_on|reaches|spot_on|bang_on|came_up_to - not|@not|short",
    ),
    "cream_in_filler_only": (
        "no_cream|no_mayo|no_mayonnaise|no_gunk|no_goo|no_custard & lid|cap|filler",
    ),
    "oil_looks_clean": (
        "oil & @not_clean|far_from_clean|filthy|black_as & looks|looked|black_as|filthy - outside|engine_bay|covered",
    ),
    "oil_thin_on_stick": (
        "just_as_thick|no_thinner|as_thick_as|not_thinner|@not_thinner & new|fresh|side_by_side|beside|stick - lab|report|analysis",
    ),
}
