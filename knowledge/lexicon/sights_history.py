"""What is known of the engine's history and habits."""

from __future__ import annotations

_WORN = "broke|broken|failed|failure|snapped|shattered|blew|dropped|disintegrated|let-go|exploded|scattered|shed"
_SOMETIME = "before|earlier|previously|once|ago|last|already"
#: the finding, by what is said when it is there
SIGHTS_HISTORY: dict[str, tuple[str, ...]] = {
    "high_mileage": (
        "high|higher mileage|miles|hours|kms|hour|milage",
        "@highmiles on|the|it|clock|engine|miles|now?",
        "@manyhours since|smoh|tsmoh|tbo|total|on|tach last|the|new|its? overhaul|engine|rebuild|major|new|clock?",
        "near|past|over|beyond|run|exceeded|approaching its|the|past|recommended|maker|makers? recommended|overhaul|tbo|"
        "its|service|design|useful? tbo|life|overhaul life?",
        "high|lot|lots|plenty of? miles|hours",
        "older high|mileage mileage|engine",
        "never been|had? rebuilt|overhauled|reconditioned",
        "well|getting worn",
        "worn|tired out? old? engine|motor",
        "engine|motor is|was|now|getting? worn|tired out?",
        "lots|lot of? miles|hours",
    ),
    "stood_long": (
        "sat|stood|sitting|parked|stored|standing|idle|laid|unused|unrun|dormant .. @longtime|years",
        "sat|stood|sitting|parked|stored|laid up|unused|idle? for|over|all|the|since|last|several? winter|months|decade|"
        "decades|ages|years",
        "after|out|from of? long|years|months|decades|winter|several of|in|the|months? storage|standing|layup|lay-up|"
        "sitting|lay",
        "little|hardly|rarely|barely|not used|driven|run|started for|in|over @longtime|years",
        "@not run|started|used|driven|turned for|in|since over? @longtime|years|ages|decades",
        "long|years|months of|in|term? storage|standing",
        "been|was in storage",
        "first start after|since .. winter|storage|lay|layup|years",
        "@longtime sitting|standing|storage|idle|unused",
        "@longtime in a|the|storage barn|shed|garage|field|storage",
        "barn find",
        "over the? winter standing|stored|parked|laid",
        "laid up for|over|since|all|last",
    ),
    "history_unknown": (
        "bought|purchased|picked it|the|this|a|up .. used|secondhand|second-hand|recently|weeks|month|months|auction",
        "second|third|fourth|new owner",
        "bought|sold|came used|secondhand|second-hand",
        "used|secondhand|second-hand|junkyard|scrapyard|salvage|wrecker engine|motor",
        "history unknown|unclear",
        "@not know its|the|any|what|how .. history|done|before|past|old",
        "newly|recently|just bought|purchased|acquired",
        "unknown|uncertain service? history|mileage|miles|past|age",
        "dont|no|not know|known|idea|sure of|about? its|the? service? history|mileage|miles|past",
    ),
    "service_neglected": (
        "neglected|neglect|unmaintained",
        "overdue .. oil|service|change",
        "maintenance|servicing|service|checks|oil-changes was|were|had|is|been|very? not|never|neglected|poor|skipped|"
        "lacking|ignored|deferred|patchy|sporadic done|followed|kept|carried?",
        "never|rarely|seldom changed|checked|serviced|change|changes|check .. oil",
        "never|rarely|seldom|hardly been|ever? serviced|maintained",
        "no|without|few|infrequent|irregular|poor|lack|little|missed|sporadic of? regular? servicing|maintenance|services|service",
        "no|without|few|infrequent|irregular|missed|sporadic|rare|occasional of? regular? oil changes|change",
        "poorly|badly maintained|serviced|looked",
        "@not been? maintained|serviced",
        "skipped|missed|stretched|extended|long oil? changes|services|service intervals|interval?",
        "abused|thrashed",
        "never|rarely|seldom checks|checked|changes the|his|her|its oil",
    ),
    "raced_or_heeled": (
        "track day|days|session|sessions|use|car|time|event|weekend",
        "autocross|autox|rallying|rally|trackday|trackdays|hillclimb|autocrossed|gymkhana|autotest|karting",
        "racing|=race|=races|=raced weekend|car|season|it|series|circuit|track|meeting|boat|engine|speed|event|last?",
        "drag|circuit|club|vintage|oval|road|end|the|of|stock|ice of? a|car? racing|=race|strip",
        "on|at the|a? track|circuit|dragstrip",
        "@number|ten|few laps",
        "heeled|heeling|heel over|hard|under|to|at|on|sailing?",
        "hard cornering",
        "side slopes|slope|hill|hills",
        "aerobatics|aerobatic|inverted",
        "on the? track|circuit|dragstrip",
        "last|first|long|final stint",
    ),
    "worked_hard": (
        "towing|=towed|tow|pulling|hauling|pulls a|the|my|our|with|heavy|up? trailer|caravan|boat|hill|hills|load|camper|car|"
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
        "motorway|highway|interstate|freeway|autobahn trip|run|journey",
        "wide open throttle? for|all|hours|most|down",
        "full throttle runs|run|climb|pulls|for|all",
        "ploughing|plowing|baling|combining|discing|cultivating|harvesting",
    ),
    "idles_long": (
        "short|local|little trips|journeys|runs|hops|drives|trip",
        "idles|idling|idled a|for|long? lot|hours|long|ages|periods",
        "long|lots|lot|hours|prolonged of|periods? idling|idle|ticking",
        "parade|procession|carnival",
        "below|at walking pace|speed",
        "school run",
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
    ),
    "stood_in_frost": (
        "below|under freezing|zero",
        "bitterly|extremely|very|deep|unusually|severe|extreme|hard|bitter cold day|morning|night|weather|winter|snap|"
        "spell|temperatures|out",
        "cold-soaked|coldsoaked",
        "cold soaked|soak",
        "cold weather|climate|snap|spell",
        "frost|frosty|=freezing|snow|snowy|subzero|sub-zero|blizzard",
        "frozen in|overnight|solid|in|engine the? morning|night|engine?",
        "minus @number|@temperature",
        "@frost outside|out|morning|night|day|ambient|overnight|cold|this",
        "winter operation|operations|morning|mornings|flying|flight|driving|conditions|start|weather",
    ),
    "oil_very_cold": (
        "below|under freezing|zero",
        "minus @number|@temperature",
        "bitterly|extremely|very|deep|unusually|severe|extreme|bitter cold day|morning|night|weather|winter|snap|oil",
        "cold soaked|soak",
        "cold-soaked|coldsoaked|=freezing|frosty|subzero|sub-zero",
        "cold start in|during winter",
    ),
    "pressure_back_after_thaw": (
        "thawed|thawing|thaw|defrosted",
        "warmed|warming|heated .. up|through|out|heater|garage|workshop .. pressure|came|back|fine|ok",
    ),
    "earlier_breakage": (
        "dropped|dropping a|the valve|part|nut|bolt|washer|cylinder",
        f"rocker|rockers|pushrod|pushrods|ring|rings|piston|rod|lifter|lifters|roller|cam|camshaft|valve|valves|gear|pump|"
        f"bearing|bearings|engine|chain|belt had|has|have|previously|once|already|was|were? {_WORN}|broke {_SOMETIME}|"
        "some|weeks|months|and|last",
        f"previous|earlier|first|last|old|former|original|second engine|pump|motor|block|bearings|rod|failure|crank|"
        f"breakage {_WORN}|spun|threw|seized|ate",
        "previous|earlier|prior|old failure|breakage|failures|blow-up|blowup",
        "after|following|since a|an|the|its|engine|earlier|that failure|breakage|blow-up|dropped|dropping valve|cylinder?",
        f"had|has {_WORN} once|before|earlier|previously|already",
        "failed|broke|broken once|before|earlier|previously before|already?",
        "broke|broken a|the|some|two? rocker|rockers|pushrod|pushrods|ring|rings|piston|rod|lifter|roller",
    ),
    "known_for_model": (
        "well known|documented for|on|issue|problem|that|fault",
        "service|maker|makers|factory|technical|safety|mandatory|critical|manufacturers bulletin|recall|campaign|directive|"
        "letter|bulletins",
        "bulletin|recall|tsb|airworthiness directive?",
        "these|they engines|motors|senders|switches|cars|all|ones? are|have|known|prone|notorious|infamous to|for|a "
        "fail|known|weak?",
        "prone|notorious|infamous|famous|renowned to|for",
        "same .. had|has failed before",
        "required|recommended|mandatory|mandated|makers|manufacturers check|inspection|modification|change|update|mod .. "
        "not|never|had",
        "known|common|well-known|notorious|classic|recognised|recognized|documented|typical weak|a? problem|fault|issue|weakness|failure|point|spot|complaint weak|with|on|point|spot?",
        "known|notorious|common for|on|with these|this|it|that|the|them",
    ),
    "several_alike": (
        "same|identical on|with|in both|all|other|others|another|several engines|cars|engine|one?",
        "others have|had|report|reporting the? same|similar|this",
        "sister|other|second|twin boat|car|engine|one does|shows|is|has .. same|too|identical|likewise|it",
        "both|all|two|several|many|three of|the|my|these? engines|motors|cars|boats|bikes|senders|gauges|ours .. same|alike|do|show|identical",
        "many|several|all|others alike|identical",
        "all|others|both|several of? them? do|did it|this|that|same",
        "whole fleet",
    ),
    "maker_calls_it_normal": (
        "within|in spec|specification|tolerance according|says|per|dealer|manual",
        "dealer|maker|manufacturer .. calls|considers|called .. normal|acceptable|fine",
        "dealer|maker|manufacturer|mechanic|dealership|garage|factory|makers|main|agent says|said|say|reckons|told|claims|tells|insists|state|states .. normal|fine|ok|acceptable|spec|right|nothing",
        "they all do that",
    ),
}
#: the finding, by what is said when it is not there
SIGHTS_HISTORY_ABSENT: dict[str, tuple[str, ...]] = {
    "high_mileage": (
        "low|lowish|few|little|light mileage|miles|hours|use|milage",
        "@lowmiles on|since|from|total|old|only the|it|clock|engine|odometer|new|rebuild|overhaul|speedo|counter|meter",
        "only|just|about|around @lowmiles|@fewhours on|old|total|from|since the|it|clock|engine|new?",
        "nearly|almost|fairly|practically|virtually|relatively new",
        "brand|quite|still|a new car|cars|engine|motor|boat|truck|bike|vehicle|machine|tractor|van",
        "new cars|trucks|vans|boats|engines|machines|tractors|bikes",
        "car|engine|motor|boat|truck|it|its|tractor|bike|machine is|was|are|only? about|only|just|nearly|over? @fewyears old",
        "about|nearly|over|only @fewyears old",
        "@fewyears old car|engine|motor|boat|truck|tractor|bike|machine|van",
        "@fewhours|@lowmiles since the|its|last|total|major? new|overhaul|rebuild",
        "@fewhours total",
        "few|couple|several|two|three thousand|hundred miles|hours|km",
    ),
    "freshly_rebuilt": (
        "@manyhours since|after|smoh|tsmoh|from last|the|its|major? overhaul|rebuild|major",
        "@hundreds|@lowmiles|@highmiles|@years since|after|smoh last|the|its|major? overhaul|rebuild|build",
    ),
    "history_unknown": (
        "owned|had|owner it|the|this|car|boat|from .. since|from? new",
        "one|single|same|original owner from|since?",
    ),
}
