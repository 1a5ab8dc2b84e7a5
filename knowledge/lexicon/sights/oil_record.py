"""Words for the oil's grade, age and additives."""

from __future__ import annotations

_BOOK = "book|manual|handbook|spec|specification|chart|maker|maker's|oem|spec'd|specified"
_AS = "as|to|per|at|by|on"
_PRESCRIBED = "=specified|=prescribed|=recommended|=required|=book|=spec|=handbook|=manual|=standard|=specification"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "oil_overdue": (
        "oil has|had|was|is never|not|hadnt|hasnt been? changed or|and|nor? topped|filter|checked|looked? up|at? for|in a? ages|long|years|while",
        "oil|service .. overdue|ancient",
        "oil|service|it is|was|its =due|=black|=dark , @toofar|@thousands on|in it|her",
        "oil has|with|is @toofar on|old it?",
        "oil is|was|in|it|which|thats|over|about|now? is|was|in|it|over|about? @years old",
        "never changed the|its? oil",
        "oil? never changed since|from|in new|@years|years|ages",
        "oil was|has|had never|not|hadnt|hasnt been? changed .. @years|years|ages|while|long|@distance",
        "@years|@thousands since|on|without last|the|its|an|this|same? last? oil|service change?",
        "old|ancient|original|same oil from|since|still|has been .. @years|years|in",
        "oil of? unknown age",
        "overdue for? an|its? oil? change|service",
        "oil @not been? changed|change|renewed for|in|since over|about|nearly? @distance|@years|@months|years|ages|donkeys|forever",
        "old|black oil .. never changed",
        "hasnt|hadnt|not had an? oil change in|for",
        "last? oil|lubrication|lube and|&? filter? was|been? last? changed|change|changes|serviced|service|renewed|renewal @toofar|@years "
        "ago|before|earlier|back",
        "last? service|services|serviced|oil-change|changed @toofar|@years ago|before|earlier|back",
        "@distance on one|single|the-same|same oil|lot|fill? change|fill|oil",
        "oil was|is|were way|long|well|far past|over|beyond its|the|a change|interval|due|date|time",
        "@not|never|nobody|havent changed|change|renewed .. filter|oil for|in|since @years|@months|years|ages|seasons|three|two|four|several seasons|years|winters?",
    ),
    "oil_grade_as_manual": (
        "@grade|oil as|per|is|which .. manual|handbook|specified|recommended|specifies|book|says|spec",
        "straight 30|thirty",
        "right|correct|recommended|specified|proper|listed|stated oil? grade|weight|stuff|viscosity|oil",
        "oil|grade is|was|as? recommended|specified|correct|right by|in|per|for the? manual|handbook|book|it?",
        "oil as recommended|specified",
        "recommended|correct|specified|right oil",
        f"oil|grade|type|viscosity|weight as|per|to|according the? to? the? {_BOOK}",
        f"@grade as|per|to the? {_BOOK}|recommended|requirement",
        "oil correct|right type|grade|spec|weight|viscosity",
        "right|correct oil? type|grade|spec|viscosity of? oil?",
        "level|full|quantity|amount|fill and|&|+ right|correct type|grade|oil|spec",
        "specified|recommended|correct oil|grade|@grade in|used|fitted|grade? it|use?",
        f"@grade oil? , {_AS} the? {_PRESCRIBED}",
        f"@grade oil? {_AS} the? {_PRESCRIBED}",
        "oil|@grade .. as|what the? book|manual|handbook|maker|factory says|say|asks|wants|specifies|recommends|prescribes|calls",
        "oil of|in|is? the? =specified|=prescribed|=recommended|=correct|=right grade|viscosity|type|specification",
    ),
    "oil_grade_too_heavy": (
        "heavier|thicker grade|oil|weight? than|that spec|specified|recommended|manual|it|the|book|should",
        "too|overly thick|heavy an|a? oil|grade|for|weight",
        "@thick racing|race oil",
        "oil|grade|@thick is|was? too|far|way|much thick|heavy",
        "@thick .. handbook|manual|book|maker|spec says|wants|calls|specifies|requires|: for? @thin",
    ),
    "oil_grade_too_thin": (
        "@thin is|oil|was? in it|there|engine|the",
        "too|overly thin|light an|a? oil|grade|for|weight",
        "thinner|lighter grade|oil|weight? than spec|specified|recommended|manual|it|the|book|should",
        "wrong oil|grade",
        "to|with|of|in|used|got @thin oil? by|in mistake|error|accident",
        "@thin oil? in? by|in mistake|error|accident",
        "mistakenly|wrongly|accidentally .. @thin",
        "thinner .. oil|grade .. than .. book|manual|handbook|should|recommended|specified|supposed",
        "thin|thinner synthetic|oil|stuff|grade .. by mistake|accident|error",
    ),
    "additive_or_flush_in_oil": (
        "additive|additives|stop-leak|stopleak|flush|atf|kerosene|paraffin|detergent|treatment in|to|into the? oil|engine|it",
        "oil additive|additives|treatment|stabilizer|stabiliser|thickener|flush",
        "stop leak",
        "engine flush",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_overdue": (
        "oil and|&|plus? filter? was|had|been|just|last? been|just|last? changed|change|renewed "
        "@days|@weeks|@hours|@months ago|before|earlier|previously|back",
        "oil and|&|plus? filter? changed only? @distance ago|before|earlier|back",
        "@hours|@days|@weeks since|after the? last|an? oil and|&? filter? change",
        "oil changed regularly|religiously|often|annually|yearly|on every",
        "recent|regular|frequent oil changes|change",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "oil_overdue": (
        "oil|oil_change + old|been_in|overdue|age|years|not_changed|never_changed|@not_changed|same_oil|original_oil + @distance|@years|@longtime|years|miles|overdue|late|ages|long|km|in_there - fresh|new|used|filter_only|pressure|every|leak|hose|hoses|pump|line|cooler|burn|per|low",
        "last_oil_change|last_service|last_changed + @years|@longtime|years|ages|unknown|knows - recent",
        "@highmiles|@distance|18000|miles|@longtime|years|long + since_the_last_change|since_last_change|since_the_last_oil|since_its_last|since_an_oil_change|since_the_last_service|since_last_service|on_the_same_oil|on_this_oil|without_a_change|without_an_oil_change - "
        "hundred|500|only|few|200|300|50|100|weeks",
        "oil + two_years_old|three_years_old|years_old|very_old|ancient|old_black|black_and_old|long_past|overdue - not|no|new|leak|pump|seal|filter|hose|gauge|oil_pump|cooler|line|regular",
        "@not|never|overdue|long_overdue|past + oil_change|changed_the_oil|change|oil_changed|service + @distance|miles|@longtime|years|20k|15k|overdue|ages|forever|30k|due|long - any_more|no_more|filter_change|yet|tried|made|since_new_pump|no_change|regular|regularly|every|change_in|difference|any_change",
        "oil + years_old|black_and_old|old_and_black|ancient|from_last_year|two_years|three_years - pump|line|hose|leak|seal|gauge|filter",
        "oil + older_than|ancient|as_old_as|prehistoric|years_old - engine_is|gauge|sender|pump|seal",
        "@not|no_one|nobody|never + oil_change|oil_changed|changed_the_oil + @distance|@number|years|ages|30k|20k|40k|50k|miles|when|say|knows|remember|last - gauge|light|help|difference|helped",
        "oil + @not|hasnt|never|not + changed|been_changed|change + years|ages|miles|months|@longtime|@distance|since - any_more|no_longer|filter_only|gauge|i_have",
        "same_oil|old_oil|original_oil + years|miles|@distance|@longtime|ages|in_it|still - pressure|gauge",
        "no_idea|dont_know|god_knows|who_knows|nobody_knows|heaven_knows|unknown & oil & when|how_old|how_long|last_changed|last_done|age - pump|gauge|low|pressure_is|history",
        "interval|oil_change|changes|service|drain_interval + stretched|extended|doubled|pushed_out|run_over|overrun - relief|spring|cable|chain|no|not",
        "interval_exceeded|service_overdue|long_overdue|past_due|years_not_changed|never_changed|not_been_changed|thousand_miles_on_it|miles_on_it|overdue & oil|oils - not_overdue|filter_never",
    ),
    "oil_grade_too_thin": (
        "@thin & supposed|book|manual|should|recommended|wants|handbook|calls_for|instead_of - same|as_the|per|like|tried|changed|went|switched|put",
        "too_thin|thinner_than|wrong_grade|thinner_grade + oil|manual|book|grade|handbook|viscosity - clearance|stick",
        "@thin + filled|in_it|put|using|running|has|had|had_been|was & should|calls_for|book|manual|supposed|meant|specifies|wants & @thick|@grade - helped",
        "modern|thin|thinner|lightweight + oil + old|vintage|antique|classic|prewar|far_too_thin|too_thin|wrong - smoke|fixed|helped|went",
        "@thin|thinner|thin + instead|rather|not_the|should_be|supposed|usual|calls_for|specifies|normally & @thick|@grade|usual|heavier|proper|thicker|recommended|manual|book|spec - thinner_oil_made|no_difference",
        "filled|used|put_in|poured|uses|gave_it|went_in|running_on|instead + @thin - helped|switched|cleared|right|correct|handbook|book|manual|change|changed|service|serviced|synthetic|quarts|litres|oct|nov|dec|jan|feb|march|april|june|july|sept|yesterday|last|filter|always|takes",
        "thin|thinner + stuff|oil + filled|put|use|used|poured|gave - helped|thicker",
        "lighter|thinner|below_spec|less_thick|too_light|lighter_kind & book|booklet|factory|manual|spec|plate|handbook & oil|viscosity|used|use|kind|put - no|not|@not|thicker|above|lab",
    ),
    "oil_grade_too_heavy": (
        "@thick & supposed|book|manual|should|recommended|wants|handbook|calls_for|instead_of - same|as_the|per|like|tried|changed_to|went|switched|wants_me|wants_us|wants_to|recommended_to",
        "too_thick|thicker_than|heavier_than|too_heavy + oil|manual|book|grade|handbook|viscosity - gasket|cold|stick|black",
        "@thick + running|in_it|using|in|put|has & book|manual|should|calls_for|modern|specifies|supposed|says & @thin|10w30|10w40|modern|engine|5w30|lighter - helped|no_difference|tried|old|gained",
        "@thick + in|running|using|put|has|got + should|wants|calls_for|instead|supposed|manual|meant|recommended - helped|no_difference|gained|tried|thin|wants_me|wants_us|wants_to|recommended_to",
        "thicker|heavier + oil|grade + than + recommended|manual|book|should|spec|specified|supposed - tried|helped",
        "@thick + instead|rather|not_the|should_be|supposed|usual|calls_for|specifies|normally & @thin|@grade|lighter|thinner|recommended|manual|book|spec - helped|no_difference|gained",
        "thicker|heavier|more_thick|straight_fifty|above_spec|too_heavy|straight_50|twenty_fifty & book|factory|manual|handbook|spec|plate|maker & oil|viscosity|use|used|filled|put - no|not|thinner|@not|below",
    ),
    "oil_grade_as_manual": (
        "@grade|@thick|@thin|grade|grade_of_oil + proper|correct|=right|recommended|specified|as_per|like_the_handbook|like_the_manual|handbook_says|manual_says|manual_asks|book_says|per_the_book|per_the_manual|handbook_calls|manual_calls|factory|same_grade|specified_grade - wrong|not|than|thicker|thinner|level|pressure|pump|filter|switched|changed|went|but|tried|cured|put|wants|instead|gauge|sender|temperature|amount|mark",
        "oil|grade + right|correct|proper|recommended|specified|manual_says|book_says|manual_calls|as_per + in_it|using|running|manual|handbook|book|is|use - not|too|wrong|thicker|thinner|instead|pressure|amount|level|should|brings|fresh",
        "oil|@grade|grade + recommended|specified|as_per|by_the_book|book_says|manual_says|handbook|as_specified|correct_grade|right_grade|says_to_use|owners_manual|maker - intervals|interval|@distance|changes|not|too|thicker|thinner|instead|heavier|but|pressure|wrong|should_be|lb_at|never",
        "grade|viscosity|weight & right|correct|as_the_book|as_specified|as_recommended|as_per - wrong|not|thinner|thicker|changed|isnt",
        "oil|grade|viscosity|weight|the_one & book|handbook|manual|booklet|factory|plate & lays_down|factory_say|printed|calls_for|specifies|asks_for|stipulates|recommends|says & bought|is_oil|has|used|filled|exactly|same|right|got|in - not|@not|thick|thicker|thin|heavier|lighter|wrong|than|straight|above|below|no|pressure|psi|filter|isnt",
    ),
    "additive_or_flush_in_oil": (
        "flush|additive|treatment|snake_oil|friction_modifier|detergent|stop-leak|stop_leak|seafoam|sea_foam|cleaner + added|poured|put|ran|can|bottle|tin|dose|in_the_oil|used|with - not|no|coolant|radiator|brake|fuel|cooler|carb|flushed_out|contact|switch",
        "tipped|poured|chucked|put|dumped|added|threw|bunged|had + thickener|stop_smoke|stop_leak|additive|treatment|modifier|kerosene|paraffin|diesel_in|atf|marvel + can|bottle|oil|it|tin|some|in|to_flush|a - coolant|radiator|fuel|tank|no|not|helped|difference|tried|better",
        "can|bottle|tin|dose|some|=tried|poured|added|chucked|put|threw|tipped + stop_leak|oil_treatment|treatment|additive|stop_leak_thickener|engine_flush|stop_smoke|atf|transmission_fluid|hydraulic_oil|diesel_in_the_oil|snake_oil|two_stroke_oil|2_stroke_oil|gear_oil|sawdust - coolant|radiator|fuel_tank|gearbox|power_steering|injector|no|not|never",
        "wrong|mistake|by_accident|accidentally + 2_stroke|two_stroke|gear_oil|gearbox_oil|chain_oil|hydraulic_oil|atf|transmission_fluid|diesel|petrol|coolant|water|screenwash|gas + oil|filler|sump|it|engine|in - smell|leak|fuel_tank",
        "medicine|additive|trans_fluid|transmission_fluid|atf|diesel|flush|thickener|snake_oil|kerosene|paraffin|treatment|stabiliser|oil_conditioner|tonic & put|ran|poured|added|given|tipped|dumped & clean_it|wash_it|wash|special|motor|flush|crankcase|sump|oil - no|never|gearbox|tank|clean_oil|fuel|filter|not|@not|bay",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_overdue": (
        "oil|oil_change + fresh|just_changed|new|recent|recently|changed_in|every_@distance|regularly|religiously|few_hundred|on_time|always_changed|every_5000|every_3000|every_year + changed|change|oil|miles|in|on|always|put|done|serviced - @toofar|overdue|never|not|needed|due|no|pump|gauge|sender|switch|filter_only|hose|leak|bearings|cooler|pressure|line|pan|seal|gasket",
        "oil|service|serviced|oil_change + fresh|month_old|hours_old|weeks_old|recent|new|week_before|week_ago|on_schedule|in_date|days_old|miles_old|recently|days_ago|miles_ago|not_long_ago|just_done|just_changed|month_ago|weeks_ago|newly - @toofar|no|overdue|not|pump|sender|gauge|cooler|line|leak|seal|pressure|light|level|filter_new|smell|"
        "topped|added|new_engine|low|switch|hose|pan|head|gasket|used|bearings|slowly|stick|black|@not|filler|consumption|outside|temperature|dry",
        "@fewhours|@lowmiles|@days|@weeks + since_the_last_change|since_oil_change|since_the_oil|since_change|since_last_oil|since_an_oil - @toofar|overhaul|rebuild",
        "oil|oil_change|service + just_had|is_new|brand_new|changed_regularly|changed_last|fresh_in|new_oil|changed_recently|freshly_changed|just_had_an|only_just|changed_every|always_changed|was_changed_@distance|changed_@distance - @toofar|pump|sender|gauge|cooler|filter_only|not|never|overdue|pressure|light|leak|problem|began|since|"
        "started|hose|line|now|then|but|low|tried|helped|cured|level|smell|no_change|still|difference",
    ),
    "additive_or_flush_in_oil": (
        "nothing_but_oil|no_additive|no_additives|never_added|no_flush|no_treatment|no_snake|straight_oil & oil|engine|sump|crankcase - level|drain|more|any_oil",
    ),
    "oil_grade_too_thin": (
        "no_lighter|not_lighter|no_thinner|not_thinner|@not_thinner|@not_lighter & book|booklet|manual|spec|factory|asks",
    ),
    "oil_grade_too_heavy": (
        "no_heavier|not_heavier|no_thicker|not_thicker|@not_thicker|@not_heavier & book|booklet|manual|spec|factory|asks",
    ),
    "oil_grade_as_manual": (
        "not_the_books|@not_the_books|not_what_the_book|@not_what_the_book|not_what_the_manual|@not_what_the_manual|not_the_grade|@not_the_grade & weight|grade|oil|in_there",
    ),
}
