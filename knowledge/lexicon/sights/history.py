"""Words for what the engine has been through: rebuilds, age, work done to it."""

from __future__ import annotations

_LET_GO = "broke|broken|failed|failure|snapped|shattered|blew|dropped|disintegrated|let-go|exploded|scattered|shed"
_SOMETIME = "before|earlier|previously|once|ago|last|already"
_ENGINE = "engine|motor|lump|block"
_STAND = "stand|bench|workbench"
_CRUMBS = "crumbs|crumb|bits|pieces|shards|lumps|fragments"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "freshly_rebuilt": (
        "@number|ten|twenty|thirty|forty|sixty over|oversize ,? fresh|new|just|all-new",
        "just|only-just|finally|freshly finished|done|completed|built|building|assembled|put the|a|an|my|our|first|up? first|own|full|fresh|engine|motor|"
        "complete? rebuild|build|engine|motor|overhaul|together",
        "my|our|his|first first|very|own? rebuild|build|engine-build",
        "just|freshly|newly|recently|fresh|been|completely been|had? rebuilt|overhauled|built|reconditioned|rebuild",
        "fresh|newly|freshly built|build|rebuild|overhaul|rebuilt",
        "first|few|handful|zero|practically .. hours|miles|starts|flights|start|run|runs|trial .. since|after|on|from|of the? rebuild|overhaul|new|build|rebuilt",
        "straight|right|directly|immediately after|from|since|out the|a|of? rebuild|overhaul|the",
        "first start|starts|run|runs|flight|flights|trial|drive|trip|outing|miles|hours .. rebuild|overhaul|rebuilt|build",
        "first start|starts|run|runs|flight|flights|trial|drive|trip|outing|miles|hours of|on|with|since the|a|my|this|new engine",
        "rebuilt .. first|few|hours|miles|never|starts|not",
        "freshly|newly fitted|installed|rebuilt engine|motor",
        "=running in",
        "=breaking|=break =in it|the|engine|period|oil?",
        "first @number flights|hours|miles|runs|starts",
        "new|brand-new|crate|replacement|recon engine|motor is|was|has|, never|not been? run|started|fired",
        "new|brand-new|crate|replacement|recon engine|motor , @pressure|no|nothing|zero|@number psi|oil? pressure? on|at|when|while|during|,? cranking|crank|cranked|first",
    ),
    "just_worked_on": (
        "day|days|hours|hour|week|straight|soon|shortly|right|just|immediately|minutes|@hours|@days|@minutes|morning after|since|following .. work|service|repair|repairs|inspection|maintenance|job|shop",
        "first flight|run|drive|trip|start|outing .. after|since .. work|service|repair|maintenance|inspection",
        "just|recently|fresh been? in|back|out|from of|from|the? the? garage|shop|service|workshop|dealer",
        "just|recently been? serviced|worked on?",
        "work done|carried|finished out? the? day|yesterday|just|week|before",
    ),
    "clearances_never_measured": (
        "never|didnt|without|not check|checked|measure|measured|measuring|plastigaged|plastigauged|checking the? bearing? clearances|clearance",
        "@not|never plastigaged|plastigauged|plastigage|plastigauge",
        "@not|never measure|measured|mic|miced|plastigage|plastigaged the|any|my? main|rod|big-end|crank? rods|mains|bearings|big-ends|shells",
    ),
    "engine_apart": (
        f"{_ENGINE} is|now|already|=out|sat|sitting|mounted|bolted now|already|out|up|here? on the|a|an|my|its? engine|work? {_STAND}",
        "it|its|shes|she is|now|out|up? on the|an|my engine stand",
        f"{_ENGINE} is|now|already now|already|right? =out of the|my car|boat|van|truck|tractor|frame|chassis|hull|bike",
        f"{_ENGINE}|bottom-end|everything is|are|now|all|lies|completely|currently all|now|completely|partly|half? =apart|=stripped|=dismantled",
        f"{_ENGINE} is|lies|now|all all|now? in pieces|bits",
        "bottom end is|all|now? =apart|=stripped|=dismantled",
        "crank|crankshaft is|now|already? out of|from the|its? block|case|cases|engine",
        "crank|crankshaft is|now|already? out? on the|a|my? bench",
    ),
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
        "high-time|hightime|high-mileage|high-hour engine|motor|unit?",
        "high time engine",
        "engine|motor|it|she is|was|pretty|quite|getting|rather|well? =tired|=worn|=knackered out?",
        "high|mega|many mileage|miles|hours engine|motor|car|on|truck?",
        "tired|worn old|out engine|motor?",
    ),
    "oil_just_changed": (
        "took|taken|been|went|in .. for|to|at|from a|the quick|fast|express-lube|lube lube|oil|service|place|shop?",
        "did|done|doing my|the|a|her|his very? first|own|usual|annual oil|service change?",
    ),
    "started_unprimed": (
        "@not|never|without|didnt prime|primed|priming|pre-oil|pre-oiled|preoil|preoiled|prelube|prelubed it|the|engine|pump|oil|system? before|prior",
        "without priming|pre-oiling|preoiling|prelubing",
        "@not|never|wasnt been? =primed|=pre-oiled|=preoiled|=prelubed",
        "didnt prime|pre-oil|preoil|prelube it|the|engine|pump|oil|system?",
        "did not prime|pre-oil|preoil|prelube it|the|engine|pump|oil|system?",
        "started|fired it|her up? =dry",
        "@not|never|hadnt|havent|didnt pack|packed|fill|filled it|the|my? oil? pump with? oil|vaseline|grease|jelly?",
        "@not|never|hadnt|havent|didnt pack|packed it with? vaseline|grease|jelly|oil?",
        "no|without|never|not|skipped|forgot any|did|the|to? pre-oiling|preoiling|=priming|pre-lube|prelube|=primed|pre-oiled before|it|the|oil|system|engine?",
        "started|fired it|up|dry? without priming|pre-oiling|prelube|oil|turning",
        "did|was @not|never prime|primed|pre-oil|preoil|prelube|pre-lube|pre-oiled",
        "@not|never|nobody|no-one|didnt|without spin|spun|spinning|turn|turned|crank|cranked|drive|drove|run|ran the|my|our|its? oil? pump .. drill|before|beforehand|first|over|up",
        "@not|never|nobody|didnt prelube|pre-lube|prelubed|pre-lubed",
        "@not|never|nobody bothered? to? prime|primed it|the|engine|pump|oil|system|anything?",
    ),
    "sealant_used_freely": (
        "loads|lots|lot|plenty|tons|bags|heaps|dollop|dollops|gobs|bead|beads|thick-bead|half-a-tube|tube|whole-tube of blue|red|black|orange|grey|gray|clear|"
        "copper silicone|rtv|sealant|sealer|goo|goop|instant-gasket",
        "lots|lot|plenty|loads|tons|too|dollops of|much? liquid|of? silicone|sealant|sealer|rtv|goo|gasket-maker|goop",
        "silicone|sealant|sealer|rtv|goop all|on over|every|everywhere|each the? joint|joints|gasket|gaskets|mating|faces?",
        "silicone|sealant|sealer|rtv used? everywhere|freely|generously|liberally|throughout",
        "smothered|plastered|covered|stuck in|with|together? in|with? silicone|sealant|sealer|rtv|goop",
        "too much|used|plenty|loads|lots too|of|much? silicone|rtv|sealant|sealer|goo|gasket-maker|instant-gasket",
        "silicone|rtv|sealant|sealer|goo .. too|so much|liberally|generously",
        "went mad|overboard|heavy|wild with the? silicone|rtv|sealant|sealer|goo",
        "used too much on the? case|cases|sump|pan|cover|joint",
        "sealed|assembled|built|put|stuck|bolted|went|gone|goes|fitted .. everything|everywhere|all|lot|together|up with|using lots|plenty|loads|some|a? of? good|blue|red|black|clear|orange|grey? silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket",
        "silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket on both|either|each|all|every sides|side|faces|face|surfaces",
        "whole|entire|full|half tube|tin|pot of? blue|red|black|clear|orange|grey? silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket",
        "fat|thick|generous|heavy|big|good bead|layer|smear|coat of blue|red|black|clear|orange|grey? silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket",
        "lots|plenty|loads|tons|bags|heaps of blue|red|black|clear|orange|grey? silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket",
        "silicone|rtv|sealant|sealer|goo|goop|instant-gasket|gasket-maker|gasket-goo|liquid-gasket everywhere|all-over",
    ),
    "unbranded_pump": (
        "reproduction|repro|pattern|aftermarket|no-name|unbranded|cheap|budget|cheapo|off-brand new? oil? pump",
        "oil? pump is|was|from a|the|some|an? reproduction|repro|pattern|aftermarket|no-name|unbranded|cheap|budget|cheapo one|part|item|copy?",
    ),
    "history_unknown": (
        "bought|purchased|picked|got|acquired it|the|this|a|up .. used|secondhand|second-hand|recently|auction",
        "bought|purchased|picked|acquired it|the|this|a|an|my|her|him|up .. @days|@weeks|@months ago|back|since?",
        "bought|purchased it|the|this|a|up .. weeks|month|months",
        "bought|purchased|picked .. as|for a|an non|runner|non-runner|nonrunner|project|spares|restoration",
        "bought|purchased .. from|off a|an|the|some? .. member|dealer|auction|man|guy|bloke|chap|seller|someone|friend|"
        "neighbour|neighbor|widow|estate|mate|fella|lady",
        "second|third|fourth|new owner",
        "bought|sold|came used|secondhand|second-hand",
        "used|secondhand|second-hand|junkyard|scrapyard|salvage|wrecker engine|motor",
        "history unknown|unclear",
        "@not know its|the|any|what|how .. history|done|before|past|old",
        "newly|recently|just bought|purchased|acquired it|this|that|her|him|the|my|second-hand|secondhand|@year|from",
        "unknown|uncertain service? history|mileage|miles|past|age",
        "dont|no|not know|known|idea|sure of|about? its|the? service? history|mileage|miles|past",
        "new to me|us|him",
        "previous|past|its|engine? history not|un known|unknown",
        "it|engine|motor|one|pump|gauge came with the? car|boat|truck|tractor|bike",
        "no|without|lost|kept|kept-no|any|didnt|didn't|never keep|kept|have|any|a|with|come|came? with|a|any|no|the|its|much|service? =receipts|=paperwork|=records|=bills|=history|service-book|history-file",
        "seller|owner|previous-owner|dealer|trader called|said|told|claimed|swore|reckoned|insisted|assured",
        "what|as the|a|some? seller|trader|auctioneer|previous-owner called|said|described|told",
        "new to me|us",
        "just|recently got a|an|this|my .. car|truck|van|bike|boat|tractor|pickup|hatchback",
        "picked|bought|acquired|purchased up? a|an|this|my .. car|truck|van|4x4|suv|saloon|sedan|estate|wagon|coupe|pickup|hatch|hatchback|"
        "roadster|convertible|camper|motorhome|minivan|boat|tractor|yacht|bike|jeep|ute",
    ),
    "earlier_breakage": (
        "dropped|dropping a|the valve|part|nut|bolt|washer|cylinder",
        f"rocker|rockers|pushrod|pushrods|ring|rings|piston|rod|lifter|lifters|roller|cam|camshaft|valve|valves|gear|pump|"
        f"bearing|bearings|engine|chain|belt had|has|have|previously|once|already|was|were? {_LET_GO}|broke {_SOMETIME}|"
        "some|weeks|months|and|last",
        f"previous|earlier|first|last|old|former|original|second engine|pump|motor|block|bearings|rod|failure|crank|"
        f"breakage {_LET_GO}|spun|threw|seized|ate",
        "previous|earlier|prior|old failure|breakage|failures|blow-up|blowup",
        "after|following|since a|an|the|its|engine|earlier|that failure|breakage|blow-up|dropped|dropping valve|cylinder?",
        f"had|has {_LET_GO} once|before|earlier|previously|already",
        "failed|broke|broken once|before|earlier|previously before|already?",
        "broke|broken a|the|some|two? rocker|rockers|pushrod|pushrods|ring|rings|piston|rod|lifter|roller",
        "had|has let|blown|blew|failed|broken|snapped|thrown go|up|a? .. before|earlier|previously|ago|last|previous",
        "after a|an|the? piston|rod|valve|cam|camshaft|bearing|rocker|timing|chain|crank|pump failure|breakage|broke|failed|let",
        "lobe|cam|rod|valve|piston|rocker|pushrod|chain had|has failed|broken|let|dropped|snapped .. last|before|earlier|ago|previous|year",
        "broke|snapped|lost|shed|dropped|failed|shattered|let a|an|the|go|its|some? rocker|lifter|valve|spring|tensioner|guide|ring|piston|pushrod|rod|chain|gear|tooth|camshaft|pieces before|earlier|last|ago|then|previously|once|years",
        f"plastic|nylon|fibre|rubber {_CRUMBS} from|of|off a|an|the? old|cam|chain|timing? tensioner|guide|shoe|chain-guide|blade|slipper",
    ),
    "sump_or_pump_swapped": (
        "swap|custom|home-made|homemade|fabricated|cut-down|shortened|aftermarket|shallow|front-sump|rear-sump|kit oil? pan|sump",
        "different|another|later|earlier|other oil? pan|sump and|with its? pickup|on|to|for clear|suit|fit",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "high_mileage": (
        "low|lowish|little|light mileage|miles|hours|use|milage",
        "very|so|with|only|has|done few miles|hours",
        "@lowmiles on|from|total|old|only the|it|clock|engine|odometer|new|rebuild|overhaul|speedo|counter|meter",
        "only|just|about|around @lowmiles|@fewhours on|old|total|from the|it|clock|engine|new?",
        "nearly|almost|fairly|practically|virtually|relatively new",
        "brand|quite|still|a new car|cars|engine|motor|boat|truck|bike|vehicle|machine|tractor|van",
        "new =cars|=trucks|=vans|=boats|=engines|=machines|=tractors|=bikes",
        "car|engine|motor|boat|truck|it|its|tractor|bike|machine is|was|are|only? about|only|just|nearly|over? @fewyears old",
        "about|nearly|over|only @fewyears old",
        "@fewyears old car|engine|motor|boat|truck|tractor|bike|machine|van",
        "@fewhours|@lowmiles since the|its|last|total|major? new|overhaul|rebuild",
        "@fewhours total",
        "few|couple|several|two|three thousand|hundred miles|hours|km",
        "@lowmiles done|covered|only|total|showing|recorded|now|from",
        "has|had|with|done|got|covers|showing|shows only|just @lowmiles",
        "@fewyears old and|,|,|with|engine",
        "low-time|lowtime|low-mileage|low-hour engine|motor|unit?",
        "low time engine",
        "@lowmiles miles",
        "@fewyears-old|year-old car|truck|boat|engine",
    ),
    "freshly_rebuilt": (
        "@manyhours since|after|smoh|tsmoh|from last|the|its|major? overhaul|rebuild|major",
        "@hundreds|@lowmiles|@highmiles|@years since|after|smoh last|the|its|major? overhaul|rebuild|build",
    ),
    "history_unknown": (
        "owned|had|owner it|the|this|car|boat|from .. since|from new",
        "one|single|same|original owner from|since?",
    ),
    "started_unprimed": (
        "primed|pre-oiled|preoiled|prelubed it|the|pump|engine|her|system? with|by|using|off a|the|my? drill|priming-tool|pressure-pot|pot|gun",
        "primed|pre-oiled|preoiled|prelubed it|the|pump|engine|her|system|and? till|until|before|first|fully|properly|well",
        "primed .. till|until oil|pressure|gauge|it",
    ),
    "clearances_never_measured": (
        "clearances|bearings|everything|mains|rods were|was|all|got|i|we? =plastigaged|=plastigauged|=miked|=measured|=checked",
        "=plastigaged|=plastigauged|=miked the|all|every|my? bearings|mains|rods|clearances|everything|it",
        "plastigage|plastigauge said|showed|says|gave|was|came",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "clearances_never_measured": (
        "@not_measure|@not_measured|never_measured|@not_plastigage|@not_check|@not_mic + rods|mains|rod_bearings|main_bearings|big_ends|big-ends - valve|cam|gauge|pressure|voltage|oil",
        "clearance|clearances|plastigage|plastigauge + never|@not_checked|@not_measured + bearing|main|rod|bearings|clearances|engine|mains|built|it - tight|pickup|valve|pump|cam",
        "clearance|clearances|bearings|built|set_up|assembled + never_measured|@not_measured|never_checked + built|build|assembled|clearance|clearances|when|rebuild - cap|bolts|over|limit|pump",
        "never_plastigaged|no_one_measured|never_measured + clearance|clearances|builder|bearing|bearings|build - bolt|nut|valve|tappet|cap|filter",
        "nobody_checked|never_checked|@not_check + clearance|clearances|plastigage|plastigauge - valve|tappet",
        "assembled|built|put_together|build|rebuilt|bolted|assembled_it|threw_it_together|rebuild + without|no + gauging|measuring|checking|plastigauge|plastigage|measurement|measurements|checks|mic|feeler + mains|rods|bearings|clearance|clearances|big_ends|big|bottom|any|the|crank - gauge_on|pressure|priming|oil_level",
        "never|nobody|didnt|no_one|not|none|skipped|didn't|did_not + mic'd|mic|miked|measure|measured|plastigauge|plastigage|plastigauged|gauged|control|checked|check|gauging|micd|supposed_to_check|took_measurements + crank|bearings|gap|play|journals|clearance|clearances|mains|rods|bores|play_of_the_bearings|shells|big_ends|bearing - valve|tappet|plug|points|end_float|pump|backlash|pressure|oil_level|yet|compression|knock|failed|going_to",
        "never_knew|didnt_know|never_thought|nobody_told_me|wasnt_aware & supposed_to|should|had_to|meant_to|need_to & gap|clearance|clearances|play|bearings|plastigauge - valve|oil|plug|tappet",
    ),
    "history_unknown": (
        "no_idea|@not_know|second_hand|secondhand|second-hand|auction|scrapyard|breakers|breaker + done|history|motor|engine|past|bought|mileage|miles|came_from|been|what - cluster|gauge_from|dash|sender|pump_from|part|used_to|why|where|how_to|noise|lights|cause|problem|oil_used|used_it|used_the|gauge|used_oil|to_do",
        "bought|picked_it_up|picked_up|acquired|purchased|got_it|recently_acquired|imported|inherited + unseen|cheap|second_hand|secondhand|used|farm|auction|last_month|recently|last_week|last_year|private|ebay|dealer|scrapyard|breaker|"
        "off_a|online|weeks_ago|months_ago|non-runner|as_a_project - gauge|sender|filter|pump|oil|switch|new_pump|kit|bearings|when_i_bought|since_i_bought|part|tester|stethoscope|new_engine|parts",
        "unknown_history|history_unknown|no_history|no_papers|no_paperwork|past_unknown|unknown_past|previous_history_not|history_not_known|past_not_known|unknown_provenance",
        "ex-army|ex-military|ex-mod|ex_army|barn_find|breakers_yard|from_a_breaker|from_a_scrapyard|engine_from_a + history|unknown|engine|yard|army|breaker|scrapyard",
        "new_owner|second_owner|third_owner|new_to_me|just_bought|newly_bought|newly_acquired|recently_bought + owner|me|bought|it|acquired|car|boat|tractor|engine|truck - pump|gauge|sender|filter",
        "just|recently|last_week|last_month|newly + got|bought|acquired|purchased|picked + truck|car|boat|tractor|bike|van|engine|it|one - running|working|going|started|new|gauge|sender|pump|oil|filter|kit|part|hot|switch",
        "bought_it_like|bought_like_that|came_like_that|bought_as_seen|no_history|past_owner|previous_owner|last_owner|seller + like|that|said_nothing|didnt|knew|know|knows|unknown|history|seen|says|owner|told",
        "bought|got|came|acquired|inherited + like_this|like_that|as_is|in_this_state|as_seen|as_a_project|sight_unseen - gauge|sender|pump|part|always|filter|been_like|was_like|like_that_since|like_this_since",
        "got_it|bought_it|came_from|inherited|bought + mate|bloke|guy|estate|auction|widow|dealer|friend|uncle|swap_meet + knew_nothing|no_idea|no_history|nothing|didnt_know|dont_know|unknown|who - sender|gauge|filter|pump|oil_from|part",
        "previous_man|last_man|seller|previous_owner|last_owner|former_owner|old_owner|dealer|auction|he_sold|person_i_bought + told_nothing|knew_nothing|said_nothing|nothing|no_idea|no_records|no_paperwork|didnt_say|didnt_know|wouldnt_say|dead|died|knows_nothing|never_said|cant_tell|no_history|no_receipts|couldnt_tell - never_once|dipstick|oil_changes|changed",
        "dont_know|no_idea|who_knows|god_knows|nobody_knows|cant_tell|couldnt_tell_you|unknown|mystery|havent_a_clue|not_a_clue|no_clue|anyones_guess|unclear + been_through|whats_been_done|what_was_done|its_past|its_history|how_many_hours|how_many_miles|what_happened_to_it|how_it_was_treated|past_life|whats_been_through|how_old|who_built|what_its_been|what_it_has|its_life|history|its_service|looked_after|before_me|done_to_it - pressure|gauge|wrong|sender",
    ),
    "earlier_breakage": (
        "valve|rod|piston|cam|chain|belt|rocker|pushrod|lifter|gear|ring|bearing|engine|motor|spring + dropped|broke|snapped|blew|failed|went|shed|blew_up|blown + ago|while_back|years_back|months_back|weeks_back|earlier|previously|before|last_year|once|last_summer|last_winter|last_season - dropped_the_engine|at_once|alarm|switched|back_in|not|no|just|now|today|then|day|minute|noise|pressure|seconds|minutes|good_before|sump|chain_to",
        "earlier|previous|prior|last|former|past + failure|breakage|blow-up|blow_up|engine_failure|piston_failure|pump_failure|bearing_failure|disaster|explosion + piston|after|followed|engine|pump|bearing|chain|cam|rod|valve|had|of|an|"
        "the - gauge|sender|electrical|switch|battery|warning|fuse|filter",
        "after|following + failure|broke|breakage|let_go|snapped + timing_chain|timing_belt|cambelt|rod|piston|valve|cam|chain|belt|rocker|pushrod - sender|gauge|pressure|minutes|seconds|moments|soon|pump_drive|electrical",
        "blow_up|blow-up|blowup|blew_up + engine|motor|after|last - gauge|tyre|turbo",
        "last_one|last_engine|old_engine|previous_engine + broke|broke_up|blew|let_go|failed|grenaded - gauge|sender|pump",
        "once|previously + wiped|broke|dropped|lost|snapped + camshaft|cam|valve|piston|rod|chain - pressure|oil",
        "lost|broke|dropped|shed|came_apart|let_go|blew|exploded|snapped|fell_apart|threw|disintegrated|failed|shattered|broken_up|broke_up|grenaded|ate + lobe|cam_lobe|valve|guides|chain_guides|piston|ring|lifter|rod|tensioner|chain|gear|rocker|bearing|turbo|circlip|follower|pump|pushrod|spring|teeth|keeper|collet|tappet & seasons_ago|a_while_back|year_ago|years_ago|last_year|months_ago|last_season|before_i|previously|two_owners|last_summer|last_winter|sent_shavings|went_all_through|went_through|at_some_point|once_before|some_time_ago|earlier_in_its|in_the_past|back_in|previous_owner|before_this|long_ago|a_while_ago|first_time_around|everywhere - fuel|gauge|pressure|today|just_now|oil_pressure|sender|then_the_pressure|new_pump",
    ),
    "high_mileage": (
        "@highmiles|@manyhours|enormous|huge|big|very_high|massive|intergalactic|high + odometer|mileage|clock|covered|hours|miles|tbo|overhaul_life|km - low|since_the|oil_change|between|since_its|not|speed|"
        "per|revs|new_engine|rebuilt_engine|only|every|ago|later|change|oil_pressure|pressure|gauge",
        "near|end|past|beyond|over|exceeded + overhaul_life|tbo|service_life|design_life|useful_life|overhaul_limit - not|half|well_within",
        "never|@not_been + apart|overhauled|rebuilt|opened|touched|stripped + years|life|miles|hours|long|@longtime|decades|since_new|thirty|twenty|forty - checked|yet|pump|sender|gauge|relief|filter",
        "@highmiles|@manyhours|huge_miles|huge_mileage|many_thousand|quarter_of_a_million|half_a_million|hundred_thousand|starship + done|clock|on_it|miles|distance|hours|meter|covered|up|original|engine|now|showing - since|change|ago|low|only|every|per|after_only|later|"
        "couple|few|five_thousand|ten_thousand|three_thousand|first|rebuild|rebuilt",
        "worn_out_old|tired_old|very_worn|well_worn|high_mileage|old_worn|clapped_out|on_its_last_legs + engine|motor|unit|lump|it|car|one - bearing|bearings|pump|gears|shell|gear",
        "lot_of|lots_of|loads_of|galactic|starship|massive|huge|intergalactic|big|mega|serious + miles|mileage|hours|kms|kilometres + on|has|it|engine|clock|done|high|mileage|got - ago|since|low|few|every|change|drive|drove|last",
        "hour_meter|clock|odometer|meter|hourmeter|speedo + round_once|gone_round|been_round|went_round|twice_round|right_round|round_twice|ran_out_of_digits|stopped_at|rolled_over - wall|face_of|clock_gauge",
        "very_many|many|loads_of|hundreds_of_thousands|lot_of|half_a_million|huge_number_of|tens_of_thousands + kilometres|kilometers|km|miles|hours|kms + motor|engine|made|done|it|covered|run|on|her|never - since|ago|after|change|oil|few|per|between|drive|rebuild|cold|idle|idling|without_work|low",
    ),
    "freshly_rebuilt": (
        "first|@runin|@fewhours|few_hours|few_miles|maiden + overhaul|rebuild|rebuilt|build|new_engine + since|after|run|start|from|following - @hundreds|ago|month|months|years|manyhours",
        "priming|prime|primed|pre_lube|prelube|pre_oiling|drill + on_stand|on_the_stand|on_a_stand|on_test_stand|on_the_test_stand|engine_stand|before_first_start|before_first_fire|not_started_yet|never_started|not_fired_yet - no_stand",
        "new_build|freshly_built|newly_built|newly_overhauled|new_rebuild|freshly_rebuilt|fresh_rebuild|just_been_rebuilt|just_rebuilt|fresh_build|still_being_run_in|still_running_in|being_run_in|newly_rebuilt - boat|car_rebuilt|gearbox|pump|carb|turbo|head|injector",
        "rebuild|rebuilt|build|built + @distance|@hours|miles|hours|fresh|just|new|first_start|run_in|running_in + on|since|rebuild|it|old|after|into|the|in - @thousands|@hundreds|@manyhours|@lowmiles|@highmiles|@years|to_build|wont_build|build_up|years|years_ago|pump|gearbox|carb|turbo|1000_hours|distributor|before|needs|since_the_rebuild_10|injection",
        "just|fresh|freshly|newly|straight + put_together|assembled|from_the_builder|back_from_the_builder|out_of_the_shop|from_the_machine_shop|from_the_engine_shop - gauge|sender|pump_just|gearbox",
        "fresh_engine|fresh_motor|new_engine|new_motor|fresh_build|new_build|engine|motor + @distance_on_it|@distance_since_build|@distance_from_new|@distance_since_rebuild|@fewhours_on_it|@fewhours_since_build|@distance & fresh|new|build|rebuild|rebuilt - "
        "@thousands|@highmiles|@toofar|years|not|old",
        "post-overhaul|post_overhaul|post-rebuild|just_overhauled|finished_building|fresh_motor|fresh_engine|newly_assembled|new_rings_and_bearings|just_finished_building|only_its_second_start|second_start|second_start-up|first_fire-up|still_bedding_in|bedding_in|running_it_in|run_in_period|only_just_built|break-in|barely_run_in|not_run_in_yet|first_fire_up|first_startup_after|just_been_through + it|hrs|hours|miles|motor|engine|saturday|start|on|only|the|since|still|oil - years|ago|pump|gauge|oil_change|sender|filter|gearbox|distributor|turbo|injector|camshaft_only",
        "post-overhaul|post_overhaul|post-rebuild|fresh_from_overhaul|just_overhauled & hrs|hours|test_stand|miles|first|stand|run - pump|oil_pump|gearbox",
    ),
    "sump_or_pump_swapped": (
        "swapped|moved|transferred|used|fitted|put|bolted|reused + pan|sump|pickup|oil_pan|oil_pump & over|from_my_old|off_my_old|from_the_old|off_the_old|"
        "off_the_other|from_the_other|off_another|from_another|off_a|from_a|of_a|from_my_other - gasket|drain|seal|o-ring|sender|removed|dropped|hole",
        "different|deeper|another|other|bigger|shallower|wrong|aftermarket|used|new + sump|pan|oil_pan|pump|pickup + fitted|fit|swapped|put|off|from|on|has|installed|bolted - rtv|silicone|sealer|sealant|gasket|o_ring|oring|ring|cured|screen|hose|seal|pump_same|old_pump|noise|no_difference|fuel|water|replacement_pump|new_pump|new_oil_pump|help|plug",
        "aftermarket|low-profile|bigger|chrome|different|another|replacement|shallow + sump|pan|oil_pan - gasket|plug|holed|no|not|drip",
        "pump + parts_store|parts-store|discounter|cheap|catalogue|another_model|other_model|pattern - fuel|water|lift|bilge",
        "put|fit|fitted|swap|swapped|went_with|installed|changed_to|bolted_on|different|bigger|another|converted_to|using|upgraded|replaced_with + rear-bowl|front-bowl|high_volume_pump|high-volume_pump|big_pump|pan|oil_pan|sump|pickup|oil_pump|deep_sump|deep_pan|racing_sump|alloy_sump|other_sump|extended_pickup|rear_sump|front_sump|melling|uprated_pump|bigger_pump|shallow_pan|high_pressure_pump|high-capacity_pump + since|swap|trouble|before|for_the_engine_swap|then|ever|began|started|like_this|for_the|conversion|from_another|off_another|to_clear|after - gasket|plug|seal|drain|no_difference|cured|fixed|same_as_before|original|didnt_help|back_the|didnt_change|ring|rag|sealer|sealant|magnet|dropped",
    ),
    "oil_just_changed": (
        "since|after|following|just|yesterday + oil_change|oil_service|changed_the_oil - oil_pump|oil_filter|oil_cooler|oil_pressure|oil_pan|oil_sender|oil_switch|oil_seal|oil_seals|oil_line|oil_lines|oil_pickup|oil_sump|oil_gauge|oil_tank|@hours|40_h| every|never|miles_since|years|ages|overdue|hours_since|months",
    ),
    "engine_apart": (
        "engine|motor|lump|block|crank|it|everything|bottom_end|tractor + in_bits|in_pieces|all_over_the_bench|dismounted|on_table|on_the_table|on_the_bench|dismantled|block_is_bare|stripped_to_the|stripped_down|split_and|lying_on_the_floor|out_of_the_car|out_of_the_boat|out_of_the_truck|pulled_apart|torn_down|on_the_floor|on_a_stand|on_the_stand|bare_block|in_boxes|out_of_the_tractor|on_the_engine_stand|taken_apart|in_a_thousand_pieces|out_and_apart|bits_everywhere + out|bench|stand|all|floor|bare|bits|table|in|apart|is|got|car|now|lying|pieces|boxes|down - will|going_to|pump|bearing|piston|last_year|when_it_was|came|fell|gauge|ring|shell|filter|ran|run|oil_on|leak|drip|puddle|found|dropped|spots|insert|land|guide|test|after|once|previously|starts|idle|drilled",
        "tractor's_split|split_and|engine_out|crank_out|motor_out & block_is_bare|bare_block|bench|floor|stand|bits|pieces|bare - ran|leak|drip|oil|canister|filter|hose|line",
    ),
    "sealant_used_freely": (
        "rtv|silicone|sealant|sealer|gasket_maker|jointing_compound|goo|goop|instant_gasket|gasket_goo|liquid_gasket|jointing|hylomar|gasket_sealer|gunk_sealer|mastic|compound + buttered|worms|excess|too_much|very_much|on_all|oozing|all_over|everywhere|thick|slathered|smeared|plastered|loads|caked|gobs|lashings|liberally|all_mating|squeezed_out_all|comes_out_all|hanging_off|heaps|generous|ladled|trowelled|dollops|great_dollops|piled|by_the_tube|whole_tube|instead_of_gasket|in_place_of_gasket|in_place_of_a|copious|lots|heavy - not|no|never|without|screen|strainer|pickup|in_the_sump|blocked|found_in|bits|inside|filter",
    ),
    "unbranded_pump": (
        "pump|oil_pump|thing_that_pushes_the_oil|pump_is + copy|imitation|no_name|no-name|white_box|unbranded|cheapest|offshore|repro|reproduction|pattern|knock-off|knockoff|knock_off|chinese|without_mark|no_brand|no_maker's|cheap|aftermarket|budget|bargain|not_the_genuine|not_genuine|non-genuine|online_special|auction_site|internet_special|clone|no_markings|economy|plain_box|unknown_make|unknown_brand|off_brand|replica|generic|counterfeit|fake - fuel|water|bilge|gauge|kit|sender|high_volume|filter|not_a_copy|bearings|genuine_factory|steering",
    ),
    "sump_was_off": (
        "sump|pan|oil_pan|tray|tray_under_engine|carter|strainer|pickup|bottom_cover|bottom_end_cover|filter_net|pickup_tube|screen|oilpan|suction_pipe|sump_pan + removed_&_refitted|removed_and_refitted|was_off|been_off|had_off|take_down|took_down|dropped_and_refitted|had_the|off_to|off_for|resealed|put_back|refitted|just_had|off_and_back|came_off|down_to|removed_to|took_off|taken_off|out_to_clean|out_for_cleaning|changed_the_gasket|down_and & before|prior|just|yesterday|since|last_week|last_month|days_prior|days_ago|began|started|recently|beforehand|ever_since|week_before|then_this|after_that|two_days|day_before|problem - found|metal|dropped_the_pan_and_found|will|going_to|years_ago|blocked|next|clean_as|sludge_in|bits",
    ),
    "old_seals_reused": (
        "reused|re-used|old_one|same_old|original|old_o_ring|old_gasket|old_seal|old_ring|not_changed|not_renewed|not_replaced|wasnt_changed|used_again|put_the_old|old_o-ring|old_oring|same_gasket|same_o-ring|again|didnt_replace|didnt_change|didnt_renew|never_replaced|mount_the_old|second_time|old_rubber + seal|gasket|o_ring|o-ring|oring|rubber_ring|paper_joint|joint|sealing_ring|ring + pickup|pickup_tube|suction|suction_pipe|suction_tube|sump|pan|strainer|oil_pan|pick-up|tube - new_seal|brand_new|renewed_the|new_o-ring|water|leak|drain_plug|piston|no_leaks|fuel|found|torn|cut|drips|weeps|plug",
        "rubber_ring|o-ring|seal|gasket|joint|oring|sealing_ring & suction_pipe|pickup|suction|sump|strainer|pickup_tube & not_changed|old_one|same_one|old_ring|was_not_changed|reused|original_one - leak|new|torn|cut|cracked|renewed",
    ),
    "just_worked_on": (
        "yard|shop|garage|mechanic|dealer|we|i|they|mate|workshop|had|fitter + swapped|replaced|changed|rebuilt|done|off|removed|pulled|fitted|serviced|worked + manifold|manifolds|front_cover|crank_seal|head_gasket|clutch|timing_belt|water_pump|gearbox|starter|alternator|exhaust|head|cam|valve_cover|turbo|injectors|carburettor|rear_main|radiator|mounts|engine_mounts|timing_cover|heads & right_before|just_before|then_this_happened|before_she|the_day_before|then_it_started|ever_since|just_after|straight_after|and_then_this|next_day|since_then|started_after|began_after|last_week|day_after|right_after - years|gauge|sender|no_difference|oil_pump|didnt_help|months|fixed|cured|same|will|oil_filter|pressure_came|bearings",
    ),
    "flooded": (
        "boat|car|engine|motor|she|it|tractor|machine|launch|water|bilge|generator|truck|cellar|shed|lump + sank|sunk|submerged|hurricane|ford|swamped|flood|flooded|underwater|under_water|went_under|over_the_hood|over_the_bonnet|up_to_the_rocker|up_to_rocker_cover|drowned|sat_on_the_bottom|on_the_bottom|over_the_engine|above_the_engine|deep_water|river_rose|covered_by_water|covered_in_water|immersed|under_the_sea|to_the_rocker|past_the_flywheel|filled_up_through|sucked_in_water|went_down_at|in_the_drink|got_swamped|rolled_over_in_the|wading|over_the_block|swallowed_water + water|sank|sunk|under|submerged|flood|flooded|hurricane|days|deep|mooring|bottom|engine|river|over|swamped|ford|intake|drowned|at|in - fuel|petrol|carb|carburettor|choke|not|never|with_oil|pressure_sank|needle|gauge|slowly|bottom_end|pressure|no_water|belt|bathed|in_the_oil|radiator|raw|cooled|strainer|pickup|valve|wet_belt|sank_to|injector|float|spoon|jacket|screen|scoop|sink|sinks|under_the_sink|puddle|raised|rain|hose|washing|washed|bucket",
        "submerged|sank|sunk|underwater|under_water|went_under & engine|mooring|rocker_cover|bottom|days|harbour|water|river|boat|she|berth|storm - fuel|float|carb|pressure|pickup|needle|coolant|oil_level|gauge|never|not|belt|sink|puddle|raised|years_ago",
    ),
    "started_unprimed": (
        "started|fired|lit|cranked & without_filling|without_priming|no_priming|never_primed|@not_prime|without_prelube|no_prelube|without_pre-oiling|galleries_first|unprimed|without_oiling & fresh|new|rebuilt|first|motor|engine|it - hours|primed_it",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "high_mileage": (
        "car|engine|motor|it|unit|boat|truck|machine|bike|tractor|only|less|just|in|built + months_old|built_last_year|a_year_old|delivery_mileage|first_season|low_hour|low-hour|low_time|low-time|weeks_old|nearly_new|brand_new|delivery_miles|this_year|its_first|year_old|new_car|almost_new - gauge|sender|oil|pump|filter|"
        "hose|battery|noticed|rebuilt|serviced|changed|renewed|replaced|bought|fitted|last_year_by|overhauled|years_old|winter|stood|leak|used_engine|pressure|put|@highmiles|belt|began|started|did|high|switch|new_engine|swap",
        "low_hour|low-hour|low_time|low-time|delivery_mileage|low_miles|low_mileage|few_miles|few_hours + engine|only|unit|motor|miles|mileage|hours|on_it|from_new - oil|since|rebuild|overhaul|rebuilt|old_for",
        "young_engine|new_from_the|bought_new|months_old|weeks_old|under_a_year|less_than_a_year|first_year|still_under_warranty|in_warranty|nearly_new|only_done_@lowmiles|just_run_in|barely_run_in + engine|car|old|bought|new|it|spring|warranty|year|boat|done|in|only|this - oil|sender|gauge|filter|pump|sensor|hose|"
        "switch|battery|service|change|rebuild|used|two_months_old_sender",
    ),
    "freshly_rebuilt": (
        "years|decade|decades|long_time|ages + since|ago|after + rebuilt|rebuild|overhaul|overhauled - oil|pump|hours|gauge",
        "ten_years|decade|twenty_years|many_years|decades|ages & rebuilt|rebuild|overhaul|overhauled & since|ago|last|anyone - oil|pump|hours|gauge|just|fresh|first|miles",
    ),
    "flooded": (
        "never|not|no|hasnt|wasnt|nothing + wet|flood|flooded|under_water|water_got_near|sunk|submerged|been_wet|near_the_engine|drowned|swamped + water|flood|flooded|engine|it|boat|been|got|never - carb|carburettor|fuel|belt|oil|leak|leaks|sump",
    ),
    "unbranded_pump": (
        "genuine|original|factory|oem|maker's|proper_make|branded|known_make + pump|oil_pump - not|fuel|water|copy|isnt|instead|since|no_longer|but",
    ),
    "earlier_breakage": (
        "nothing|never|no|nothing's_ever + let_go|broken|broke|failed|shed|come_apart|breakage|broken_up|dropped_a_valve|snapped + engine|inside|before|ever|past|this|life|earlier - leak|pressure|no_longer|except|but",
    ),
    "old_seals_reused": (
        "brand_new|new|fresh|renewed|replaced + o-ring|o_ring|oring|seal|gasket|sealing_ring + pickup|pickup_tube|suction|strainer|pan_gasket|pan|sump - old|reused|to_replace|needs|going|not|leak|will|cured|fixed|cut|front|main|water|drain",
    ),
    "sump_or_pump_swapped": (
        "original|factory|same|standard|never_changed|stock + pan_and_pump|sump_and_pump|pump_and_sump|pan_and_pickup|pump_and_pan|sump_pump_and_pickup|sump_and_pickup - not|different|since|replaced|new",
    ),
    "sealant_used_freely": (
        "no|not|never|without|dry|hardly_any + sealant|silicone|rtv|goo|sealer|smear_of_goo|dry_gaskets|gasket_maker|gasket_goo|goop + gaskets|joint|joints|anywhere|used|throughout|assembly|build - leak|found|in_the_pan|strainer|screen|bits",
    ),
    "clearances_never_measured": (
        "every|all|each + main|mains|rod|rods|bearing|bearings + plastigauged|plastigaged|miked|measured|mic'd|checked_with_plastigauge - not|never|didnt|nobody|without",
    ),
    "history_unknown": (
        "full_history|known_from_new|owned_it_from_new|one_owner|had_it_from_new|full_service_history|had_it_since_new|bought_it_new|mine_since_new|known_its_whole + engine|car|boat|it|have|tractor|with|life|receipt|owner - no|not|without",
    ),
    "started_unprimed": (
        "spun|primed|filled|pre-oiled|prelubed|pumped & before|ahead_of & lighting|starting|starting_it|firing|first_start|firing_it|fire_up|ever - not|@not|never|no_pressure",
    ),
}
