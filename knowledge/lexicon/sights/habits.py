"""Words for how the engine is used, kept and built: racing, hard work, standing, service."""

from __future__ import annotations

_WHO = "supplier|rebuilder|vendor|agent|fitter|reconditioner|manufacturer|oem|distributor|seller"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "stood_long": (
        "sat|stood|parked|left|stored up? in|under|outside a|the|my|his? barn|field|shed|garage|yard|hangar for|over @longtime|years|decades|ages",
        "sat|stood|sitting|parked|stored|standing|laid|unused|unrun|dormant .. @longtime|years",
        "been|was|lived|kept in|inside a|the|my|his? shed|barn|garage|field|yard|lock-up for|about|over? @longtime|@years|years",
        "sat|sits|stood|stands|sitting|parked|stored|laid up|unused|idle? for|over|all|the|since|last|several? winter|months|decade|"
        "decades|ages|years",
        "after|out|from of? long|years|months|decades|winter|several of|in|the|months? storage|standing|layup|lay-up|"
        "sitting|lay",
        "little|hardly|rarely|barely|not used|driven|run|started for|in|over @longtime|years",
        "@not run|started|used|driven|turned for|in|since over? @longtime|years|ages|decades",
        "long|years|months of|in|term? storage|standing",
        "been|was in storage",
        "@not been|run|gone|driven on|down the road|water for|in|since @longtime|years|decades|ages|@year",
        "been|was|came off the road|water for|since|these|about? @longtime|years|decades|ages|@year",
        "first start after|since .. winter|storage|lay|layup|years",
        "@longtime sitting|standing|storage|idle|unused",
        "@longtime in a|the|storage barn|shed|garage|field|storage",
        "off the road for|since|these|over|about|nearly? about|over|nearly|some? @longtime|years|ages|decades|@year",
        "barn find",
        "over the? winter standing|stored|parked|laid",
        "laid up for|over|since|all|last",
        "after|following a? long lay-up|layup|lay|rest|storage|standing|sleep",
        "sat|stood|sitting|parked|stored|standing|unused|laid|idle up|there|here? in|under|out? a|the|my? shed|barn|garage|field|yard|tarp|lockup? since @year",
        "stood|sat|parked|stored|sitting|standing|laid|left|idle|unused|rested up|outside|in|for|out|over|all|a|about|nearly|the|unused|idle? @years|@months|winter|years|decade|decades|long|ages|time|=awhile",
        "been|was|has|had laid|stood|standing|sitting|stored|parked|sat|in|out up|store|storage|use|a|barn|idle for|since|a|long|over|all @years|@months|winter|years|long|while|ages|time",
        "not|hadnt|hasnt|never been? =run|=started|=used|=driven for|in|since|over =@years|@years|@months|years|ages|months|decade",
        "first start|run|startup|outing after|since|in|of a|the|its|long? =winter|@years|@months|storage|lay-up|layup|years|months|season",
    ),
    "service_neglected": (
        "neglected|neglect|unmaintained",
        "bad|lax|lazy|slack|remiss|terrible|hopeless|naughty|useless|sloppy|slow|late about|with|at|on|over the|my|its? oil? "
        "changes|changing|maintenance|servicing|service|services",
        "overdue .. oil|service|change",
        "maintenance|servicing|service|checks|oil-changes was|were|had|is|been|very? not|never|neglected|poor|skipped|"
        "lacking|ignored|deferred|patchy|sporadic done|followed|kept|carried?",
        "never|rarely|seldom changed|checked|serviced|change|changes|check .. oil",
        "never|rarely|seldom|hardly been|ever? serviced|maintained",
        "no|without|few|infrequent|irregular|poor|lack|little|missed|sporadic of? regular? servicing|maintenance|services|service",
        "no|without|few|infrequent|irregular|missed|sporadic|rare|occasional of? regular? oil changes|change",
        "poorly|badly maintained|serviced|looked",
        "@not been? maintained|serviced",
        "skipped|missed|stretched|extended oil? changes|services|service intervals|interval?",
        "long oil? changes|services|service intervals|interval|gaps|gap",
        "abused",
        "been|was|got|had|being|badly|regularly|always|previously thrashed",
        "never|rarely|seldom checks|checked|changes the|his|her|its oil",
        "oil never|not been? changed",
        "@distance between|without oil? changes|change|services",
        "hasnt|hadnt|not|never had an? oil? change|service in|for",
        "one|two|few|last|some|a|several service|services|change|changes was|were|got|been? =missed|=skipped|=forgotten|=late|=stretched",
        "one|two|few|last|some|a|several was|were|got|been? =missed|=skipped|=forgotten service|services|change|changes",
        "missed|skipped|forgot|stretched a|one|two|the|last|some|couple|few of? oil? service|services|change|changes",
    ),
    "raced_or_heeled": (
        "track day|days|session|sessions|use|car|time|event|weekend",
        "hill climb ,|run|event|course|meeting|meet|car|day|practice",
        "of|the the? lap|stint",
        "rally|rallying car|stage|stages|special|tyres|weekend|season|driver|codriver|prep",
        "autocross|autox|rallying|rallied|trackday|trackdays|hillclimb|autocrossed|gymkhana|autotest|karting",
        "racing|=race|=races|=raced weekend|car|season|it|series|circuit|track|meeting|boat|engine|speed|event|last?",
        "drag|circuit|club|vintage|oval|road|end|the|of|stock|ice of? a|car? racing|=race|strip",
        "on|at the|a? track|circuit|dragstrip",
        "@number|ten|few laps",
        "=heeled|=heeling over|hard|under|to|at|on|sailing?",
        "heel over|hard|under|to|sailing",
        "hard cornering",
        "side slopes|slope|hill|hills",
        "aerobatics|aerobatic|inverted",
        "on the? track|circuit|dragstrip",
        "last|first|long|final stint",
        "circuit|track|competition|sprint|race car|bike|boat|use|session|meeting",
        "in|for|during competition|competitions|sprints|hillclimbs",
        "first|second|third|last|next session|moto",
        "on|by|in|at|during|after|last the? @number|last|first|next|final|third|second|fourth|every|each|warmup|warm-up|sighting|out|in|cool-down|parade|flying lap",
        "lap|laps @number",
        "every|each|per lap",
        "a few|couple of? laps",
        "last|club|race|sprint|next|first|sunday|final meeting|meet",
        "on slicks|semi-slicks|r-comps",
        "in|into|to|from|for|back the pits|pit|pitlane|pit-lane|paddock|grid",
        "pit|pits|paddock stop|lane|crew|wall|board",
        "in|during|for|after|at first|second|free|morning|sunday|saturday? qualifying|practice|warmup|scrutineering",
        "second|first|third|fourth|fifth|sixth|opening|last|next|final|forest|tarmac|gravel|special|night|timed stage|stages|heat|feature",
        "stage of|on the rally|event",
        "marshal|marshals|codriver|co-driver|chicane|black-flag|black-flagged|scrutineer",
        "at|in|on|through|round|out|every|each the|tight? hairpin|hairpins",
        "hairpin bend|bends|corner|corners|turn|turns|left|right",
        "the? other driver|drivers radioed|stint|said|came|handed",
        "warm|cool|slow up|down lap|laps",
    ),
    "worked_hard": (
        "towing|=towed|=tows|tow|pulling|hauling|pulls a|the|my|our|with|heavy|up? trailer|caravan|boat|hill|hills|load|camper|car|"
        "loads|horsebox|fifth|grade",
        "flat out",
        "on|under|at full|heavy|high|max? load|power|boost all|for|night|day|hours|most",
        "race speed",
        "worked|working|driven|ran|run|revved|pushed|ridden|thrashed very? hard",
        "redline|redlined|redlining|over-revved|overrevved",
        "@mph for @time|hours|long",
        "full|heavy|max|maximum load|throttle|power for|all|hours|most|long",
        "full|heavy load",
        "long|hard|two|hour|hours|sustained|fast motorway|highway|interstate|freeway|autobahn run|drive|trip|journey|haul|running|cruise|pull?",
        "long|hard haul|pull|climb|passage|slog",
        "hard|heavy work|use|driving|running|worked|ploughing",
        "long|hard|fast|flat-out motorway|highway|interstate|freeway|autobahn trip|run|journey",
        "wide open throttle? for|all|hours|most|down",
        "full throttle runs|run|climb|pulls|for|all",
        "=ploughing|=plowing|=baling|=combining|=discing|=cultivating|=harvesting|=harvest",
        "full|wide|open throttle .. hill|climb|hours|minutes|bank|straight|pass",
        "long fast|hard|hot run|drive|ride",
        "pump|pto|belt|winch|saw|threshing work for|all|half @time|an-hour|hours|day|afternoon|an?",
        "high|full revs|throttle for|all @time|hours|day|an-hour|afternoon|the",
        "towing|hauling|pulling in|during|through the|this|that|all? heat|summer|hot|mountains|alps|day",
        "towing a|the|my|our? caravan|trailer|boat|camper|horsebox|fifth-wheel",
    ),
    "idles_long": (
        "never|rarely|hardly|seldom|doesnt|dont|not gets|get|sees|see|had|has|goes|go|been a|the|any|on|for|given? proper|decent|good|real|long|motorway|"
        "motorways|highway|the? blast|=run|=runs|drive|motorway|motorways|highway|thrash|workout",
        "mostly|only|just|mainly|all|did|does|used-for|do|of? @distance|two|three|four|five|one|mile|short|couple|few|local mile|kilometre|km|of-a-mile|miles|"
        "local|town? trips|runs|journeys|trip|hops|drives|each-way",
        "used|use for|on|to|it? the? school|nursery|shopping|shops|church|station|commute|paper|post run|runs|rounds|round|drop",
        "@distance trips|journeys|runs|hops|commute|each-way",
        "town|city|stop-start|urban|village|shopping|local use|driving|car|work|runs",
        "short|local|little|small|tiny|brief trips|journeys|runs|hops|drives|trip|travels|distances|commute|commutes|errands",
        "never|rarely|hardly|barely|@not gets|get|getting|reaches|reach properly|really|fully|a? chance? to? up? to? "
        "=warm|temperature|temp",
        "idles|idling|idled a|for|long? lot|hours|long|ages|periods",
        "trolls|troll|trolling|trolled for|all|most long|hours|day|days|morning|afternoon|of",
        "never|rarely|hardly|barely ever|really|fully|properly? =warms|=warming|=warmed up",
        "it|she|engine|motor wont|doesnt ever|really|fully|properly? =warm up",
        "thermostat is|was|has|got|been? =stuck|=jammed|=sticks open",
        "no|without|missing|removed|took-out a|the|its? thermostat",
        "long|lots|lot|hours|prolonged of|periods? idling|idle|ticking",
        "parade|procession|carnival",
        "below|at walking pace|speed",
        "school|nursery|station|commuter|shop|shopping run",
        "slow|heavy|crawling|stationary|stop-start|stop-and-go traffic|queue|jam",
        "stop and|start|go? go? traffic",
        "very? slow|crawl driving|drive",
    ),
    "hot_and_thin": (
        "heatwave|heat-wave",
        "heat wave",
        "hot under the? bonnet|hood",
        "in the? heat",
        "thin oil in summer|heat|hot",
        "very|really? hot|hottest|scorching|boiling|baking|sweltering day|weather|climate|summer|afternoon|country|days|ambient|evening",
        "great|desert|summer|intense|extreme|tropical|midday in? heat",
        "@temperature =heat",
        "@hotday heat|outside|day|ambient|weather|out|in|today|yesterday",
        "@number|@temperature degree|deg|f|c? day|heat|afternoon",
    ),
    "stood_in_frost": (
        "below|under freezing|zero",
        "bitterly|extremely|very|deep|unusually|severe|extreme|hard|bitter cold day|morning|night|weather|winter|snap|"
        "spell|temperatures|out",
        "cold-soaked|coldsoaked",
        "cold soaked|soak",
        "cold weather|climate|snap|spell",
        "frost|frosty|=freezing|snow|snowy|subzero|sub-zero|blizzard",
        "frozen in|overnight|in|engine the? morning|night|engine?",
        "minus @number|@temperature",
        "@frost outside|out|morning|night|day|ambient|overnight|cold|this",
        "winter operation|operations|morning|mornings|flying|flight|driving|conditions|start|weather",
        "temperature|temps was|were|about|around? @frost",
        "at @number below",
        "-|minus @temperature",
    ),
    "known_for_model": (
        "well known|documented for|on|issue|problem|that|fault",
        "service|maker|makers|factory|technical|safety|mandatory|critical|manufacturers bulletin|recall|campaign|directive|"
        "letter|bulletins",
        "bulletin|tsb|airworthiness directive?",
        "a|the|under|was|had|factory|dealer|known recall",
        "recall notice|campaign|work|letter|on|for|about|out|applies|issued|exists",
        "these|they engines|motors|senders|switches|cars|all|ones? are|have to|for|a fail|known|weak",
        "these|they engines|motors|senders|switches|cars|all|ones? are|have? known|prone|notorious|infamous to|for",
        "prone|notorious|infamous|famous|renowned to|for",
        "same .. had|has failed before",
        "required|recommended|mandatory|makers|makers|manufacturers|factory|service check|inspection|modification|change|update|mod|bulletin .. .. not|never been|yet? done|made|carried|complied|fitted",
        "knew|knows|known|has|have this|these|that|it .. for this|bad|poor|failing|breaking|that|the",
        "required|recommended|mandatory|mandated|makers|manufacturers check|inspection|modification|change|update|mod .. "
        "not|never|had",
        "known|common|well-known|notorious|classic|recognised|recognized|documented|typical weak|a? problem|fault|issue|weakness|failure|point|spot|complaint weak|with|on|point|spot?",
        "known|notorious|common for|on|with these|this|it|that|the|them",
        "an? ad applies|issued|exists",
        "subject of a? service|an? bulletin|ad|directive|recall",
    ),
    "several_alike": (
        "same|identical on|with|in both|all|other|others|another|several engines|cars|engine|one?",
        "others have|had|report|reporting the? same|similar|this",
        "sister|other|second|twin boat|car|engine|one does|shows|is|has .. same|too|identical|likewise|it",
        "both|all|two|several|many|three|four of? the|my|our|these? engines|motors|cars|boats|bikes|ours .. same|alike|do|show|identical",
        "many|several|all|others alike|identical",
        "all|others|both|several of? them? do|did it|this|that|same",
        "whole fleet",
        "they|these all do|are|run|have|read that|this|it|like|so|the-same|same",
        "they all|do do|did that|it|this",
    ),
    "maker_calls_it_normal": (
        "shop|builder|rebuilder|dealer|garage|mechanic|machinist|seller|they|maker|service|technician told|tell|tells|said|says|reckons|assured|insists|swears|"
        "claims me|us? that|its|it|it-was|that-was|thats|is|was|s|was|perfectly|quite|all? its|it|is|was|s|perfectly|quite|all? fine|normal|ok|okay|good|"
        "acceptable|plenty|enough|within",
        "dealer|garage|mechanic|shop|they|builder|maker told|says|said|reckons .. over|above|more-than @pressure|@number is|was|s fine|normal|ok|okay|good|"
        "acceptable|within|enough",
        "not|nothing to worry about|over he|they|the|dealer|garage|mechanic|shop|builder said|says|told",
        "within|in spec|specification|tolerance according|says|per|dealer",
        "dealer|maker|manufacturer .. calls|considers|called .. normal|acceptable|fine",
        "dealer|maker|manufacturer|mechanic|dealership|garage|factory|makers|main|agent says|said|say|reckons|told|claims|tells|insists|state|states .. normal|fine|ok|acceptable|spec|right|nothing",
        "they all do that",
        "builder|dealer|garage|shop|mechanic|maker|they says|said|reckons|tells|told me? ,? that|thats|its|it|is|is? all right|alright",
        "maker|dealer|manufacturer|factory|book|manual|handbook|works|builder says|said|calls|reckons|considers|claims|told|states that's|thats|it|this|that|is|that|me|us? is|it's|its|perfectly|quite|all|as? normal|fine|ok|okay|acceptable|within",
        "normal|within|acceptable|fine according|per|by|says to|the? the? book|manual|dealer|maker|handbook|manufacturer|spec",
        f"{_WHO} says|said|told|reckons|claims|insists|states|maintains its|it|is|that|it's|all|this? is? ok|okay|fine|normal|acceptable|good|within",
    ),
    "tilts": (
        "engine|motor|it|she is|was|sits|stands? tilted|inclined|angled|raked|sloped at|by|about|over? @number|some|a",
        "@number degree|degrees|deg engine? angle|tilt|rake|slope|inclination",
        "@temperature engine? angle|tilt|rake|slope|inclination",
        "engine|motor|it|she is|was|sits|stands? tilted|inclined|angled|raked|sloped at|by|about|over? @temperature",
    ),
    "balance_shafts": ("with|has|have|got|the? two|twin? balance|balancer|counterbalance shafts",),
    "flooded": (
        "engine|motor|it|shed|barn|boat|bilge|generator|genset|tractor|machine|garage|yard was|got|had|has? been? flooded|submerged|swamped|sunk in|by|during|when|under|with|last|a|the? storm|flood|floods|river|tide|rain|water|winter|spring|summer|autumn|hurricane|sea",
        "flooded|submerged|swamped|sank|sunk in|by|during a|the|last|boatyard? boatyard? storm|flood|floods|river|tide|rain|hurricane|sea",
        "engine|motor|it|generator|genset|tractor|boat|shed was|went|stood|sat|has|had|been? been? under|below water|floodwater",
        "water|floodwater|flood was|came|rose|got|stood? over|above|up-to|past the? engine|motor|generator|genset|flywheel|block",
        "flood|floodwater|flood-water got|came|went|ran into|in|over the? engine|shed|generator",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "service_neglected": (
        "full|complete|good service history|record",
        "fsh",
        "service|maintenance history complete|good|full",
        "serviced from new",
        "serviced|service|maintained|changed every|each year|month|winter|spring|season|@distance|@years|time without fail",
        "regular|regularly|meticulous|religious|careful|yearly|annual oil? maintenance|maintained|serviced|servicing|services|service|changes",
        "well|properly|meticulously|carefully|always|regularly maintained|looked-after|serviced",
        "oil changed|changes every @distance|@time|@lowmiles|season|spring|year|winter",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "worked_hard": (
        "towing|towed|tow|hauling|=pulling|ploughing|plowing|lugging|flat_out|full_throttle|full_load|full_power + caravan|trailer|boat|horsebox|load|summer|hours|hill|hills|mountain|day|miles|all|long|season|grade|pass|race|plough|field|bank - towed_home|towed_in|trailered|never|not|no|tow_truck|recovery|towed_it|got_towed",
        "full_throttle|full_load|full_power|max_continuous|maximum_continuous|high_boost|flat_out|wide_open|full_chat|full_bore|maximum_power|heavy_load|full_speed + hours|hour|all_day|minutes|long|after|under|pulling|pass|"
        "sustained|for|miles|most_of_the - opens|only_at|gauge_at|pressure_at|drops_at|idle|psi|bar|fine_at|runs_to|would_not|never|before_full|couldnt|@not|once_at|first_time_at",
        "=flogged|=thrashed|=caned|hammered_along|driven_hard|hard_driven|hard_pushed|pushed_hard|=ragged|hard_used|worked_hard|hard_worked|ran_hard|run_hard|hauled_hard + along|autobahn|motorway|it|was|all|by|for|had|been|day|track|"
        "engine|up|for_hours|always|life",
        "high_speed|fast|long|steep|sustained|prolonged + run|climb|motorway_trip|motorway_run|high_speed_run|haul|pull|ascent + long|sustained|steep|hours|miles|prolonged|speed - short|gauge|after_a_short|pressure_is|slow|warm-up|"
        "runs_fine|before|trial_run|test_run|ground_run",
        "towing|hauling|towed + mountains|alps|hills|uphill|trailer|caravan|boat|heavy|pass|load|horsebox - towed_in|towed_home|to_garage",
        "pulling_hard|working_hard|pulled_hard|hammering_down|flat_to_the_boards|flat_to_the_floor|foot_to_the_floor|pedal_to_the_metal|full_noise|=nailed|thrashing_it|caning_it|giving_it_stick|giving_it_large|hard_charging|full_steam + "
        "hill|motorway|hours|miles|up|down|all|for|it|when|the|on|along|mile - noise|gauge|pressure|light|drops",
        "full_load|heavy_load|=loaded|laden|trailer|plough|harrow|baler|mower|dragging|hauled|heavy_trailer|big_load + climbing|hour|hours|dragging|up|hill|all|pulling|long|mountain - loaded_up|loaded_it_up|torque|bearing|only|no|when_not",
        "=caned|=thrashed|=flogged|flat_to_the|held_flat|held_wide_open|=wide_=open + motorway|hour|hours|miles|all_the_way|home|minutes|freeway|all_day - nut|bearing|shells|gauge|noise|in_a|noise|plug|needle",
    ),
    "several_alike": (
        "another|other|others|two|both|several|many|all|mates|sister + owner|owners|same|engine|engines|boat|boats|people|cars|forum|models + same|exactly|identical|reading|alike|similar|too|likewise|report - spring|springs|borrowed|feel|feels|gauge|gauges|different|new|not|test|day|time|engine_bay|ports|seals|at_the_same|same_age|same_hours|same_year|only|same_time|same_place|same_as_before|the_same_problem_again|oil|still_the_same",
    ),
    "service_neglected": (
        "never|rarely|seldom|neglected|hardly|skipped|irregular|@not + serviced|maintained|maintenance|looked_after|oil_changes|oil_change|changes_the_oil|changed_the_oil + ever|never|it|properly|regularly|years|the|been|done|him|her|them|owner|was|were|oil|out|few|much - not_yet|gauge|filter_change_cured|before|since|overdue|always",
        "oil|service|services|maintenance|servicing|oil_changes + never_changed|never_been_changed|=missed|skimped|sporadic|sporadically|overdue|neglected|skipped|lapsed|ignored|rarely|stretched|no_record|years_overdue|not_done|never_done|poor - "
        "not_overdue|level|gauge|light|never_missed|pressure|bulletin|filter_not",
        "never|hardly_ever|rarely|seldom + had_its_oil_changed|had_an_oil_change|oil_changed|been_serviced|seen_a_mechanic|saw_a_mechanic|had_a_service|serviced|looked_after - checked",
        "no_service_record|no_service_history|without_a_service|no_record_of_service|no_service_book|without_servicing|no_record_of_any",
        "never|rarely|ignored|@not + changed_the_oil|change_the_oil|been_serviced|serviced|had_a_service|oil_change_light|service_light|looked_after|changed_its_oil + owner|year|years|it|he|ever|been|ages|long|last|previous|for - without_fail|without_miss|yet|i_have|filter|needs",
        "never|no|@not|hardly|rarely + oil_change|oil_changes|service|serviced|maintenance + had|has|had_an|ever|in|seen|been|done - i|yet|shows_no|light|noise|pump|pressure|gauge|wont|after_an|before|since_the|no_difference|no_change",
        "never|@not|nobody|non|nonexistent|non-existent|zero|no|neglected|poor + looked_after|changed_the_oil|maintained|serviced|maintenance|cared_for|service_history + owner|was|last|previous|it|ever|been|engine|its|whatsoever|had - yet|i_have",
        "patchy|irregular|sporadic|missed|skipped|lapsed|late + service|services|servicing|oil_changes|service_book - no|not|never",
        "service|services|servicing + years_late|year_late|way_overdue|long_overdue - no|not",
    ),
    "idles_long": (
        "short|school|to_the_shops|village|stop-start|=idling|=idles|delivery_round|pottering + =trips|=run|hours|=long|mostly|journeys|=rounds|town|traffic|all_day - pressure|light|low|gauge|dropped|rough|fast|needle|warm|hot|cold|flicker|psi|bar|pulling|hard|return",
    ),
    "stood_long": (
        "sat|stood|parked|stored|laid|left|standing|sitting|unused|lying_idle|stood_idle|sat_idle|been_idle + @longtime|years|barn|decade|winters|a_year|eighteen_months|long_time|shed|since_@year - gauge|needle|pressure|light|overnight|at|pump|used_to|reading|on_the_stand",
        "sat|stood|unused|lying_idle|stood_idle|sat_idle|lay_idle|been_idle|left_idle|idle_since|laid_up|lay-up|layup|storage|stored|standing|dormant|@not_run|@not_started|first_start|first_run|mothballed|rested|slept + @longtime|years|decade|decades|winters|two_winters|ages|since_@year|owner_died|long|seasons - hot|fast|at|gauge|"
        "slow|tickover|pressure_at|after_overhaul|driven_daily|rebuild|overhaul|oil_pressure|light|daily|reads|changed|engine_rebuilt|psi|longer|prolonged_idling|low_idle",
        "sat|stood|left|parked|abandoned|dumped|been & since_@year - gauge|needle|pressure",
        "@not|never|first_time + been_started|been_run|turned_a_wheel|run|started|turned_over|fired_up + since_@year|since_last_year|since_the_war|in_years|for_years|last_autumn|last_summer|last_season|@years|@longtime|decades - come_on|once_the|rough|light|lamp|oil_pressure|gauge|warm|right|properly|on_full|hot|noisy|oil",
        "years|months|decade|winters|seasons|@years|@longtime + in_a_barn|in_barn|in_the_barn|in_a_shed|in_a_garage|in_storage|under_a_tarp|on_axle_stands|on_blocks|in_a_field|on_the_hard|laid_up|lying_idle|sitting - lamp|gauge|used|years_of_daily",
        "sitting|sat|stood|parked|left|lying|abandoned|standing|rotting + field|ages|barn|years|hedge|shed|yard|decades|decade|@longtime|orchard - gauge|needle|pressure|light|pump|used|idle|at_idle|morning|overnight|oil_has",
    ),
    "raced_or_heeled": (
        "race|racing|lap|laps|second_heat|first_heat|third_heat|sprint|hillclimb|hill-climb|rally_car|rally_stage|forest_rally|special_stage|rallied|club_meeting|circuit|track_day|trackday|autocross|drag|practice|qualifying|=paddock|motocross|speedway|regatta|=banking|=drifting|drift_day|drift_car|stock_car|"
        "competition|race_meeting|enduro|karting|grand_prix|oval_track|oval_race|oval_racing|dirt_oval|short_oval|on_the_oval|round_the_oval|=ovals + on|in|during|at|while|after|first|second|third|last|final|six|@number|used|car|day|weekend|session|heavy|of - needle_drift|race_bearing|race_clearances|bearing_race|"
        "heat_soak|in_the_heat|desert|idle_race|spinning|meeting_point|heat_of|heat_wave|pilot_bearing|summer_heat|the_heat|great_heat|intense_heat|no_heat|heat_exchanger|track_down|keep_track|stage_of|early_stage|"
        "oil_circuit|gauge_circuit|circuit_of|short_circuit|open_circuit|circuit_traced|race_engine_builder|heat_marks|of_the_circuit|in_practice_this|common_practice|cooling_circuit|last_stage|final_stage|electrical|water_circuit|lapped|lap_of|tide|current|channel|harbour|anchor|drifting_towards|drifting_onto|drifting_to",
        "port_tack|starboard_tack|hard_pressed|well_heeled|rail_under|heeled|close_hauled|aerobatic|aerobatics|inverted|knife_edge + on|boat|yacht|in|during|display|flight|sailing|was|while|hard - teeth|tooth|gear|gears",
        "mowing|working|ploughing|baling|bank_mowing|on_a + steep_bank|side_slope|steep_slope|hillside|sidehill|steep_hillside",
        "donuts|doughnuts|autotest|autosolo|autograss|gymkhana|slalom|=drifting|hillclimbing|hooning|power_slides|powerslide|burnouts|nurburgring|hot_lap|hot_laps|qualifying|formation_lap|pit_lane|starting_grid|on_the_grid + in|on|at|doing|during|after|while|a|the|day - needle|grid_of|tide|current|channel|boat",
        "hard_over|heeled_over|rail_down|lee_rail|on_its_ear|heeling_hard + heeled|boat|yacht|tack|sailing|on|hard|when|was - rudder|needle|gauge|helm",
        "track_day|trackday|drag_strip|racing|raced|sailing_hard|hillclimb|sprint|banger_racing|banger_car|rallycross|rally_car|rally_stage|forest_rally|special_stage|rallied|regatta|beating_to + day|did|at|in|it|hard|strip|on|club|the|session|weekend|wind - tracked|belt|keep_track|sound_track|trace|drive|thrust",
    ),
    "known_for_model": (
        "known|common|typical|well-known|notorious|usual|frequent|classic|recurring + weak|problem|fault|failure|trouble|complaint|weakness|issue|defect + type|model|these|this|engine|engines|them|with|on - @not|unknown|not_known|no_known|made_known",
        "bulletin|recall|safety_notice|service_letter|airworthiness|technical_note|campaign + issued|about|applies|there_is|for|maker|it|on|covers|published|existed|exists",
        "all_of_these|all_of_them|every_one_of_these|these_engines|most_of_these + eventually|do|fail|sooner|suffer|prone|known|notorious|have_this - same_reading|read|gauges|normal|do_that",
        "known_for|famous_for|notorious_for|prone_to|infamous_for|renowned_for|common_on_these|common_with_these|common_problem|common_fault|known_issue|known_fault|known_problem|tsb|well_known|typical_of_these + model|it|them|these|this|engine|out|on|with|for|type|problem|fault - not|no",
        "they_all|these_all|all_of_them|every_one_of_them|most_of_these + do|do_that|do_it|are_like|suffer|the_same - reads|gauges|senders|dealer|say|said",
    ),
    "stood_in_frost": (
        "minus|frost|frosty|freezing|snow|ice|icy|sub-zero|coldest|@frost|arctic|deep_freeze|blizzard|cold_snap + night|day|morning|parked|outside|winter|temperature|deep|hard|weather|start|year|overnight|in|on|a|after|of - freeze_plug|freeze_plugs|frost_plug|ice_cream|ice_at|"
        "screen|pickup|never|no|cold_room|drops_to_minus|gauge|minus_sign|battery_minus|terminal",
        "below|minus|under + 10|20|15|25|30|@temperature|@frost|zero + it_was|degrees|outside|morning|night|air|freezing|temperature|weather - pressure|psi|idle|rpm|@pressure|revs|oil_temp|above|gauge|reads|needle|drop|creeping|sinking|dropping|falling|climbing|showing|reading|sitting|dash",
        "left_out|parked_out|stood_out|out_all_night + snow|cold|frost|ice|freezing",
    ),
    "hot_and_thin": (
        "summer|hot|heat|shade|heatwave|degrees|desert|tropical|sweltering|@hotday + day|heat|shade|weather|afternoon|summer|thin_oil|shade|traffic|outside|climate|ambient|great|extreme|heatwave - idle|engine|oil_hot|hot_oil|restart|start|no|coolant|when_hot|once_hot|"
        "tip|last_summer|hot_idle|its_hot|it_is_hot|gets_hot|traffic_lights|cold|loss|all_summer|over_the_summer|water|shrink|since",
        "@hotday|heatwave|scorching|boiling_hot|baking|roasting|heat_wave + outside|day|today|weather|ambient|air|summer|out|it_was|temps|degrees - oil_temp|coolant|water|start|psi|engine",
        "scorcher|heatwave|heat_wave|boiling_day|hottest_day|blazing|desert|tropical + it|was|day|heat|of|the|in|summer - oil|coolant|engine|start",
    ),
    "maker_calls_it_normal": (
        "dealer|garage|shop|maker|they|mechanic & always_read_low|all_read_low|normal_for|nothing_wrong|perfectly_normal|within_spec|quite_normal|nothing_to_worry|sent_me_home|characteristic - replaced|sounds|found",
        "dealer|garage|maker|manual|handbook|book|factory + says|said|told|reckons|calls|claims + normal|fine|acceptable|ok|within|nothing_wrong|not_to_worry|dont_worry - oil_is|oil_was|oil_looks|level|stick|dipstick|@pressure|@number|should|needs|bearings|pump",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "service_neglected": (
        "oil|serviced|service|changes|changed + every|regularly|religiously|always|full|on_the_dot|without_fail + @distance|miles|months|year|hours|history|regular|record|since_new|dealer|winter|spring|season|stamped|2000|3000|5000|6000 - never|not|time_i|time_we|no|hardly|quart|litre|burns|using|uses|top|litres|used|cures|overdue|leak|lost",
        "regular|regularly|religiously|meticulously|always|well|properly|carefully|full_service_history|on_schedule|correctly|professionally + serviced|maintained|looked_after|cared|service_history|servicing|maintenance|kept|dealer_serviced - @not|never|not|oil_pressure|gauge|lit|no|poorly|been_low|kept_falling|kept_dropping|wells",
        "serviced|maintained|oil_changed|oil_changes + every_@distance|every_year|by_the_book|from_new|since_new|by_the_dealer|on_time|on_schedule|annually|every_@hours|every_3000|every_5000|every_6000|per_the_manual - @not|never|not|no|except",
    ),
    "several_alike": (
        "sister|twin|identical + boat|engine|ship|car & does_not|is_fine|doesnt|never_does",
    ),
}
