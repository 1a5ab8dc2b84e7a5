"""Words for hot and cold oil and engines, coolers and smoke."""

from __future__ import annotations

from knowledge.lexicon.words.names import STICK

_TEMP = "temp|temps|temperature|temperatures"
_STICK = "stick|dipstick"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "oil_very_cold": (
        "@frost here|out|outside|this|last|overnight|morning|night|today|celsius|degrees|when|weather|in|at|or|and",
        "winter|weather|january|february|december|morning|night|cold|outside|temps|temperature|snow ,|here|about|around|at|was|is|of|and|it? ,|here|about|around|at|was|is|of|and|it? @frost",
        "at|in|it|was|its|about|around|only|down-to|after|morning|night|start|here|outside|started|starting @frost",
        "minus|below ten|fifteen|twenty|thirty|five",
        "below|under freezing",
        "minus @number|@temperature",
        "bitterly|extremely|very|deep|unusually|severe|extreme|bitter cold day|morning|night|weather|winter|snap|oil",
        "cold soaked|soak",
        "cold-soaked|coldsoaked|=freezing|frosty|subzero|sub-zero",
        "cold start in|during winter",
        "below|under|at|in|around|about|to minus|- @number|@temperature",
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
        "oil? temp|temperature|temps of|in|on the? oil? has|have|had|is|was|keeps|went|gone? crept|creeping|climbed|climbing|rising|risen|way|very|too|really|well? up|high|higher",
        "oil temp|temps|temperature has|have|is|was|are|keeps|been? crept|creeping|climbing|climbed|rising|risen|rises|going|gone|up|high",
        "oil is|was|runs|running|gets|getting|ran very|too|really|far|much hot|hotter",
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
        "brought|came|towed|booked|taken|car|truck|pickup|bike|vehicle? in|here|presented|delivered with|for overheating|overheat|boiling",
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
    "cooler_face_blocked": (
        "rad|radiator|cooler|screen|grille|fins|core gets|got|is|was|all|completely? clogged|choked|full|packed|blocked|plugged|matted|caked up|solid? with|of chaff|grass|seed|seeds|dust|dirt|weed|straw|fluff|leaves|mud|bugs",
    ),
    "oil_in_turbo_outlets": (
        "compressor|turbo|turbocharger|intercooler|boost|charge outlet|pipe|pipes|hose|hoses|housing|side|elbow wet|oily|full|pool|pools|pooled|running|dripping|swimming|soaked with|of|in|inside? oil?",
        "oily|oil inside|in the? intercooler|boost|charge|turbo pipe|pipes|hose|hoses|outlet",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
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
        "noise|noises|sound|vibration|smoke ,|and|&|/ temperature|temp|temperatures|temps all|both? normal|ok|okay|fine|good",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "foam_on_stick": (
        f"{_STICK}|oil + foam|froth|bubbles|frothy|foamy|aerated|bubbly|frothing + hard|blast|run|motorway|highway|stick|dipstick|after|stopping|on|up|like - no|not|sign|milky|gallery|air|solvent|test|joint",
        f"{STICK}|rod & suds|head_on_it|froth|bubbles|frothy|foamy|bubbly|like_stout|like_beer|lather|aerated|foam - no|not|@not|wasnt|brown_foam",
    ),
    "blow_by_high": (
        "filler|breather|oil_cap|filler_hole|oil_filler + fumes|smoke|puffing|blow-by|blowby|blow_by|chuffing|steam_train|pressure|smoking|puffs|chugging - no|not|blocked|milky|cream|mayo|sludge|left|case_crack|breathers_blocked",
        "heavy|bad|lots|much|loads|serious + blow-by|blowby|blow_by|fumes|breathing",
        "cap|filler|breather + smoke|puffs|fumes|pressurising|pressurizing|pressurised|steam_engine|chuffs|blows|huffs + out|pull|off|it|from|crankcase|filler|breather|when|like|with - blocked|pcv|seal|dipstick_out|no|not|exhaust|sweet",
        "crankcase_pressure|blow_by|blowby|crank_case_pressure + lots|loads|high|excessive|heavy|bad|plenty|much|a - no|not|little|normal",
        "breather|breathers & oil & pushing_out|pushes_out|pushed_out|comes_out|coming_out|came_out|blows_out|blowing_out|pours_out|pouring_out|pumping_out|spits_out|spitting_out|puking|pukes - no|not|blocked|catch",
        "dipstick|dipstick_tube|filler|oil_filler & gas|gases|fumes|exhaust_gas|exhaust_gases|exhaust_fumes & comes_out|come_out|came_out|coming_out|blows_out|blowing_out|coming_up|comes_up - no|not|petrol|fuel|smell",
        "dipstick|filler_cap|oil_cap|oil_filler|breather & smoke|fumes|steam|smoking & puffing|puffs|blowing|pouring|comes_out|coming_out|out_the_tube|out_of_it|out_the_hole|chuffing - no|not|exhaust",
        "oil_cap|filler|breather|crankcase_tube|filler_hole|oil_lid|vent|crankcase|pull_the_cap|crankcase_breather & chugs|puffs|very_much_gas|much_gas|blowing_hard|chuffing|huffing|gale|gases|fumes|puffing|pumping_out|like_a_steam|like_a_chimney|a_lot_of_gas - no|not|little|radiator|hardly|exhaust|cream",
    ),
    "engine_ran_hot": (
        "needle & at_the_red|in_the_red|into_the_red & boiled|boiled_over|overheated|overheating|steaming|coolant|radiator|temperature|temp - oil|pressure|no|not|never",
        "coolant|water|temp|temperature|engine|motor|it + boiled|boiled_over|overheated|overheating|at_the_red|in_the_red|into_the_red|cooked|boiling_over|ran_hot|runs_hot|running_hot|red_line|steaming|boiling - needle|drops|falls|dips|down|oil_gauge|no|not|never|oil_temp|oil_temperature|pressure|@not|cylinder_head_temp|cold|hasnt",
        "lost_its_water|lost_its_coolant|no_coolant|without_coolant|no_water|without_water|ran_dry_of_water|lost_all_its_water|temperature_went_off|temp_went_off|temp_pegged|temp_needle_pegged + hot|got|ran|engine|it|gauge|overheated|scale|drove - oil_temp|never|no_leak",
    ),
    "oil_temperature_high": (
        "oil_temp|oil_temperature|oil_temps|oil + too_hot|very_hot|sky_high|in_the_red|into_the_red|off_the_clock|off_the_scale|through_the_roof|way_up|cooking - half|glass|window|dipstick|stick|all_the_way|trail|light|lamp|can|message|diesel|no|not|normal|pressure|never|coolant|@not",
        "oil_temp|oil_temperature|oil_temps|oil + pegged|150|140|145|135|130|through_the_roof|way_too_hot|far_too_hot|too_hot|cooking_hot|boiling_hot|red_hot|off_the_clock - below|never|no|not|normal|steady|when|pressure|needle|gauge|light|at_90|at_80|80|90|95|85|100|70|60|hot_oil|coolant|grade|after|w",
        "oil_temp|oil_temps|oil_temperature|oil + @hotoil|pegged|redline|270|280|290|300|off_the_clock|sky_high|through_the_roof + oil_temp|temp|temps|temperature|saw|hit|reached|over - coolant|water|below|idle|normal|cold|@pressure|psi|gauge_pegged",
        "oil|oil_temp|oil_temperature|oil_temps + @hotoil + up_to|over|above|reaches|reached|hits|gets|got|climbs|past|at|to|high|running - outside|minus|coolant|water|ambient|start|cold|below|60|70|80|under|thermostat|smoke",
        "oil_thermometer|oil_temp|oil_temperature|oil_temp_gauge|lubricant|oil_heat & red_line|past_the_red|in_the_red|too_hot|too_much_hot|hundred_and_thirty|hundred_and_forty|hundred_and_fifty|boiling|135|140|145|150|off_the_clock|overheating - coolant|water|not|no|psi|lamp|under|rpm",
        "oil + too_much_hot|too_hot|cooking|boiling|130|135|140|145|150|160 + degree|degrees|centigrade|celsius|hot|much|running - coolant|water|not|no|psi|smell|pressure|pour",
    ),
    "cooler_face_blocked": (
        "radiator|cooler|fins|grille|cooler_fins|matrix + chaff|mud|dirt|leaves|insects|bugs|fluff|seeds|weed|grass|dust|matted|caked|plastered|packed - oil_in|inside|sludge|swarf|metal|bearing|debris|not|clean|pump|hose",
        "fins|face|core|radiator|cooler|matrix & chaff|weed|mud|fluff|leaves|grass|bugs|seeds|dirt|dust|feathers|fur|moths & blocked|packed|choked|full|caked|covered|matted|clogged|between|stuffed - no|not|inside|clean|oil_side",
    ),
    "cooler_left_off": (
        "cooler + left_off|out_of_the_circuit|from_the_circuit|deleted|taken_out_of|by_previous_owner|lines_looped|not_fitted|blanked_off - trial|made_no|no_difference|pressure|tried|i|we",
        "oil_cooler|cooler|oil_heat_exchanger|heat_exchanger & bypassed|looped|taken_out|out_of_the_circuit|left_off|blanked|deleted|not_refitted|short_circuited|never_refitted - thermostat|valve|radiator|no|@not|before|to_test|to_try|test|came_up|for_a_test",
        "looped|loop|bypassed & hose|hoses & cooler|two_ports|between_the_two|cooler_ports - coolant|heater|water|fuel|breather|to_test|to_try|test|came_up|for_a_test",
    ),
    "burning_oil_smoke": (
        "smoke|fumes|smell|cloud|haze + vents|bonnet|hood|cabin|cab|cockpit|cowl|cowling|burning|burnt_oil|hot_oil|manifold|engine_bay|engine_compartment|everywhere|inside - no|not|exhaust_pipe|tailpipe|petrol|coolant|sweet|dipstick_smell|stick|filler|smell_of_petrol|fuel",
        "reek|stink|wisps|stench|whiff|smell|haze|smells & hot_oil|burning_oil|burnt_oil|scorched_oil|frying_oil|oil_burning|cooking_oil & engine|bay|cabin|wheelhouse|round|around|under|bonnet|hood|heater - no|not|stick|dipstick|sample|@not",
    ),
    "blue_smoke": (
        "puff|cloud|haze|trail|plume|burning_oil|smoke + blue|bluish|burning_oil + start|exhaust|behind|back|when|out|every|overrun|pipe|on|at|light - no|not|crank|bearing|shells|journal|cabin",
        "exhaust|tailpipe|tail_end|fumes|stack|tail_pipe|out_the_back|muffler & blue|bluish|blueish|blue-grey|blue-ish - no|not|@not|clear|never|painted|paint|wrapped|coated|chrome|hose|pipe_is_blue",
    ),
    "cooling_duct_amiss": (
        "fan_cowl|shroud|duct|ducting|air_duct|cooling_baffle + off|missing|fell|broken|torn|loose|gone|left_off + fan|air|cooling|cooler|radiator|cylinder|duct|cowl|off - sump|oil_on|windage|pan|filler",
        "tin|tinware|cowling_plates|baffle|shroud|duct|ducting|trunking|plastic_tunnel|air_hose|fan_housing|cooling_tin|air_guide|cowling|cowl|deflector & off_the_engine|missing|torn|wrong_way|left_off|gone|split|fell|cracked|loose|blows_right_past|not_fitted|upside_down|off|back_to_front & engine|air|oil_radiator|cooler|blows|jugs|plates|cylinder|round|barrels - sump|bottom_tin|no|not_torn|in_place|oily|oil_over|covered|sprayed|pickup|sump|bolts|bolt",
    ),
    "bearing_too_hot": (
        "bearing|bearings|big-end|big_end|journal|outboard_main|main_bearing|bush & so_hot|blister|sizzling|burn|burns|too_hot|scorching|smoking_hot|roasting|cant_touch|red_hot|@not_touch & touch|hand|palm|finger|run|stop|stopped|shut|after|fingers - no|alternator|wheel|water|cool|pilot",
        "bearing|bearings|big-end|big_end|journal|main_bearing & @not_touch|@not_hold|@not_keep|@not_bear & hot|hand|finger|fingers|palm - no|alternator|wheel|water|cool|pilot",
    ),
    "oil_very_cold": (
        "read|reading|number|figure & ten_below|hard_frost|january|stone_cold_motor|below_zero|minus|freezing|frozen|frosty|icy|twenty_below|snow|winter_morning - warm|summer|hot|switch|fully",
    ),
    "sweet_smell": (
        "sweet|antifreeze|glycol|sugary|candy|syrupy|maple|toffee|coolant|caramel & smell|smells|scent|whiff|odour|odor|stink|pong|aroma & exhaust|oil_lid|filler|lid|cap|stack|tailpipe|oil - no|not|@not|stick_smells_burnt|never",
    ),
    "white_plume": (
        "steam|vapour|vapor|white_cloud|white_clouds|white_smoke & exhaust|tailpipe|chuffs|stack|out_the_back|tail_pipe|clouds & persistent|all_day|when_hot|even_warm|operating_temp|never_stops|never_clears|constantly|keeps|long_after|warmed_up|once_warm|fully_warm|even_when_warm - no|blue|filler|breather|cap|train|clears_when",
    ),
    "oil_in_turbo_outlets": (
        "turbo|compressor_discharge|blower_seals|turbocharger|pipe_after_turbo|compressor_outlet|charge_pipe|boost_pipe|boot_off_the_turbo & oil|puddle|oily & wet|pooled|ran_out|smoke|smokes|haze|both_sides|inside|boot|pipe|outlet|hose|discharge - no|dry|clean|feed|drain|supply|return|cooler|not",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_temperature_high": (
        "oil_temp|oil_temperature|oil_temperatures|temperatures_all|oil_temps + normal|steady|green|never_above|not_high|@not_high|@not_rise|no_rise|in_the_green|constant|as_usual|fine|ok|within_limits|unchanged|did_not - coolant|water|cylinder|head|but|until|low|@not_normal|above_normal|up_to|at_normal|reaches|"
        "when|to_normal|once|normal_temperature|operating|outside|gauge|air|pressure",
        "oil_never_above|oil_never_over|oil_never_hotter|no_high_oil + temperature|90|100|@temperature|@number|hot",
        "oil_temp|oil_temperature|gauge_for_the_oil|oil_temps + normal|steady|fine|ok|85|80|90|green|usual|low|cool - pressure|not|but|until|above|high|rose|climbed|to",
        "oil_temp|oil_temperature|oil_thermometer & normal|never_above|well_below|cool|in_the_green|not_too_hot|ninety|95|90|100|not_hot - not_normal|but|over|pressure",
    ),
    "engine_ran_hot": (
        "water|coolant|engine|head|cylinder + temperature|temp|gauge|temperatures + normal|steady|fine|ok|never_rose|usual|in_the_green|constant|right - oil|@not|not|above|to_normal|at_normal|reaches|operating|until|pressure|when|once|up_to|sender|other",
        "never|@not|no + overheated|overheat|overheating|ran_hot|got_hot|over_heated|boiled - oil|oil_temp|pressure|after|since|back",
    ),
    "bearing_too_hot": (
        "bearing|bearings|mains|journals & cool|hand_on|lukewarm|barely_warm|can_be_touched|touched|hand_warm & every|all|each|hand|stop - not|@not|too_hot|one",
    ),
    "oil_very_cold": (
        "reading|read|figure|number|gauge & warm_summer|summer_day|mild_day|hot_day|warm_day|shirtsleeves|heatwave|not_cold|not_that_cold|sunny",
    ),
    "cooler_face_blocked": (
        "fins|face|core|radiator|cooler|matrix & daylight|see_through|clean_outside|clear_outside|free_of_dirt|clean_as|blown_clean|hosed_clean - not|blocked|@not",
    ),
    "cooling_duct_amiss": (
        "tin|tinware|baffles|shrouds|shroud|ducts|ducting|cowling & in_place|all_there|all_on|as_they_should|where_it_belongs|where_they_belong|none_missing - not|@not|but|windage|pan",
    ),
    "cooler_left_off": (
        "oil_cooler|oil_coolers & on_and|fitted_and|connected_and|in_use|in_circuit|goes_through|flows_through|gets_warm|in_place_and - not|@not|blocked",
    ),
    "blow_by_high": (
        "oil_cap|filler|breather|crankcase|filler_hole & hardly_any|barely_a_puff|hardly_a_puff|just_a_whiff|little_gas|no_puffing|not_puffing|next_to_no|hardly_breathes|no_gas - oil_on|oil_in",
    ),
    "blue_smoke": (
        "exhaust|tailpipe|stack & clear|no_blue|no_smoke|smoke_free|clean_exhaust|no_haze - not|but|white|black|wasnt_clear",
    ),
    "burning_oil_smoke": (
        "no_smell|no_whiff|no_smoke|nothing_smells|no_reek|no_stink & burning|hot_oil|burnt & oil|engine|cabin|wheelhouse - stick|dipstick",
    ),
    "sweet_smell": (
        "no_antifreeze|no_sweet|nothing_sweet|@not_sweet|no_coolant|no_sugary|not_sweet & smell|scent|whiff|sniff|odour|odor|smells",
    ),
    "white_plume": (
        "no_steam|no_white|steam_clears|steam_gone|stops_steaming|no_vapour & warm|hot|exhaust|tailpipe - blue",
    ),
    "oil_in_turbo_outlets": (
        "turbo|turbocharger|compressor & clean_and_dry|dry|no_oil|clean & outlet|outlets|both_sides|hoses_off|pipes_off|boots_off|housings|hoses - not|feed|drain|supply|return|but",
    ),
    "foam_on_stick": (
        f"{STICK}|dipped & @not_a_bubble|no_bubbles|no_foam|no_froth|no_suds|not_a_bubble|wasnt_a_bubble|not_frothy|no_lather",
    ),
    "oil_smells_burnt": (
        "smells|smell|smelt & @not_cooked|not_cooked|@not_burnt|not_burnt|no_burnt|ordinary_oil|normal_oil|not_scorched - fuel|cabin",
    ),
}
