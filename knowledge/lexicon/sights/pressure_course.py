"""Words for how the trouble came and went on, where they name a finding."""

from __future__ import annotations

_GAUGE = "gauge|gage|guage|needle|pointer"
_P = "pressure|gauge|needle|psi|reading|it"
_BACK = "came|comes|returned|returns|recovered|recovers"
_CUTS = "=backed|=eased|=lifted|=slowed|=throttled|=throttle|=slow|=slowing|=easing|=lift|=ease"
_RISES = "rises|rise|rose|climbs|climbed|increases|jumps|improves"
_PRESSED = "clutch pedal|is|goes|went? in|down|pressed|pushed|depressed|dipped"
_PRESS = "press|pressing|push|pushing|dip|dipping|depress|depressing|declutch|declutching"
_ANY_GAUGE = "gauge|gage|guage|needle|pointer|dial|clock"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "changed_after_knock": (
        "since|after|when|ever-since i|we|he|she|it? hit|hitting|clipped|clipping|caught|struck|bottomed|grounded|ran-over|jumped the|a|an|my|some|on|out|off? big|large|tree|speed? rock|kerb|curb|stump|log|stone|pothole|bump|boulder|rut|ledge|ramp",
        "hit|clipped|caught|struck|bottomed|grounded|jumped .. rock|kerb|curb|stump|log|stone|pothole|boulder|ledge|trail|ramp .. since|now|then|after|afterwards",
    ),
    "changed_after_other_work": (
        "first|soon|day|straight|shortly|just|right|hours|minutes|next|trouble|began|started .. after|since|following the? repair|service|overhaul",
        "first|soon|day|straight|shortly|just|right|hours|minutes|next|trouble|began .. after|since|following the? work|service|repair|repairs|job|inspection|maintenance|accessory|installation",
        "work|accessory|pump|instruments|part .. done|changed|installed|replaced|fitted|renewed the? day|hours|morning before",
        "since the? work|repair|job|service|garage|shop|mechanic|other",
    ),
    "changed_with_grade": (
        "started|began|since|after|when|ever-since i|we|they|he went|switched|changed|moved|swapped to a|the|some? thinner|thicker|lighter|heavier|different|synthetic|other oil|grade|weight",
        "only thing i|we|thats|that|he? changed|different|new was|is the? oil? grade|weight|viscosity|brand",
    ),
    "changed_with_oil_change": (
        "since|after|following|ever-since|from a|the|that|its|my|their|his? quick-lube|quick|lube|fast-lube|drive-in|express lube|oil|place|shop|service? place|shop|garage|service|visit|job? had|did|changed|touched|serviced? it?",
    ),
    "slow_needle": (
        f"{_GAUGE} .. sluggish|lazy|slow|slowly|lags",
        f"sluggish|lazy|slow {_GAUGE}",
        "stays|stayed|hangs|hung|remains|sits up|there long|well|minutes|after|for after|minutes|of|stopping? stopping|shutdown|stop|engine|switching",
    ),
    "general_alarm": (
        "general|master|unspecified engine? alarm|warning|caution",
        "check engine light|lamp|alarm|message",
        "dash whistle|buzzer|whistle",
        "alarm|warning|light of|with unknown|no|without label|meaning|name",
    ),
    "back_when_slowed": (
        "pressure|it|needle|gauge came|comes|come|went|goes|was|is|climbed right|straight|all|up|slowly? back|up|right|normal to? .. when|as|once|after|if|soon i|we|he|she|you|it|the|as slowed|slow|slows|lifted|lift|eased|ease|backed|back|throttled|let",
        "back|returned|recovered to|at? normal .. when|as|once|soon .. slowed|slow|lifted|lift|eased|backed|throttled",
        "slowed|slow|lifted|eased|backed|throttled down|off|up|back .. and|, .. pressure|gauge|needle came|comes|returned|back|went|recovered",
        f"{_P} {_BACK} back? up? again? at|on|in|with idle|tickover",
        f"{_P}? {_BACK} back? up? again? when|as|once|if|after|by .. {_CUTS}",
        f"{_P} is|was|goes|went fine|good|normal|ok|okay|back|right again? when|as|once|if|after .. {_CUTS}",
        "goes|went|comes|came|is|gone|drops|it|light|lamp|warning out|off|back|normal again? when|as-soon-as|once|if|as the|i|we|he|driver|you|it|engine? driver|i? let|lets|eased|eases|slowed|slows|slow|lifted|lift|backed|dropped|drops|came|come|ease the? revs|speed|throttle|engine|down|off|back|gas",
        "drop|dropped|drops|ease|eased|bring|brought the? revs|speed|throttle down|off|back .. goes|went|comes|came|clears|out|off|back",
    ),
    "fades_at_speed_back_after_rest": (
        "stop|stopped|rest|wait|waited|pause|park|pull-over for? @minutes|minutes|a-while|while|bit|hour|@time and|then|, it|its|pressure|all? is|its|was|comes|came|goes? good|fine|back|normal|ok|okay|up|right",
        f"{_P} {_BACK} back? again? after|once|if|when .. =stopping|=stop|=stopped|=rest|=shutdown|=parked",
        "fades|drops|falls|sags|goes .. after .. minutes|miles at speed|flat|wide|full .. back|fine|good after .. rest|stop|stopping",
        "sinks|falls|drops|fades|sags|dwindles .. after|on|in a|the|one? long|hard|sustained|flat-out pull|run|straight|burst|stint .. takes|needs|recovers|comes|back",
    ),
    "sags_as_oil_heats": (
        "pressure|gauge|needle|it sags|drops|falls|sinks|goes|fades .. as|once|when the? oil heats|gets|warms|temperature =heats|=hot|=up|=rises|=climbs",
        f"{_P} {_BACK} back? again? after|once|when .. =cooled|=cools|=cooling|=cool",
        "goes|went|drops|dropped|creeps|sinks|comes|came|falls|fell|gets down|off|lower? slow|slowly|gradually|steadily as|when it|engine|oil|she|its? got|gets|heats|warms|warmed|getting|heated hot|up|warm|again?",
        "slowly|gradually|steadily drops|falls|sinks|goes|went|dropped|fell|creeps down|off|away? as it|engine|oil|she gets|got|heats|warms|warmed|heated hot|up|warm?",
    ),
    "no_pattern_to_it": (
        "at random|randomly",
        "no|without|@not any|a|much|real|clear|set? pattern|rhyme|logic to|or|in? it?",
        "no rhyme or reason",
        "unpredictable|unpredictably",
        "comes|happens|flickers|does|drops|it whenever it? likes|wants|feels",
        "hot or cold|idle|fast .. no|makes difference",
        "random|randomly times|drops|moments|intervals|occasions|flickers",
    ),
    "engine_runs_rough": (
        "engine|motor|it =shakes|=stumbles|=hunts|=misses|=bucks|=coughs|=surges|=splutters|=sputters|=judders",
        "=shakes|=stumbles|=shaking|=stumbling|=splutters at|on|under idle|tickover|load|acceleration|speed",
    ),
    "goes_after_minutes": (
        "=fine|=good|=ok|=okay|=normal|=great|=right|=perfect for the|about|around? =first|@minutes few|couple|ten|five|twenty|half? miles|minutes|kilometres|hour|kms? .. then|after|and|until",
        "=fine|=good|=ok|=okay|=normal|=great for the first few|couple|ten|five|twenty|half|@minutes? miles|minutes|hour|kilometres",
        "after|every|each|within =about|=some|=a? =ten|=few|=couple|=@minutes minutes? .. =every|=each =time|=run|=trip",
    ),
    "ten_seconds_or_more": (
        "takes|took|taking|needs ages|forever|eternity|yonks|minute|ten|fifteen|twenty|thirty|ages|age seconds? to|before|till|until|for .. build|come|make|rise|get|show|oil|pressure",
        "long|big|scary|worrying delay|wait|pause|time before|until|till|to the? oil? pressure|gauge|it|lamp|light|anything",
        "@minutes before|until|for .. pressure|gauge|reads|registers|lamp|light",
    ),
    "worse_in_the_wet": (
        "worse|only|happens|does|comes|goes|plays|acts|always|flickers|drops it? up|mostly|mainly? in|when|after|on the|it|it's|wet|damp|rainy? =rain|=wet|=damp|=raining|=rains|=rained|=drizzle|=weather|=days",
        "after|since|when|following washing|pressure|hosing|steam|jet =washing|=the|=down|=cleaning|=wash .. engine|bay|motor|car|tractor|boat",
    ),
    "noise_with_pressure_loss": (
        "noise|rattle|knock|clatter|tapping|ticking|grinding|clattering =stops|=goes|=disappears|=quietens|=ceases|=vanishes|=quiets away|down|off? as|when|once|with .. pressure|light .. back|returns|up|comes|rises|out|off",
        "noise|rattle|knock|clatter|tapping|ticking|grinding|clattering =starts|=comes|=begins|=sets in|on|up? as|when|once|with|whenever .. pressure|light|needle .. drops|goes|falls|on|low|comes|down",
        "noise|rattle|knock|clatter|tapping|ticking|grinding and|plus|with light|lamp|needle|gauge come|comes|drop|go|together|at|always? together|same",
        "rattles|clatters|knocks|taps|ticks|grinds until|till .. pressure .. up|back|builds|comes|returns",
    ),
    "long_unchanged": (
        f"{_P} has|is|was|always|read|been|ever =always|=ever read|reads|been|shown|showed|done like? so|that|this|the|there same?",
        "always|ever been|was|read|done like? that|this|so since|from|same|low?",
        "been like that|this for|since|as|ever @years|years|ages|long|i|we|new",
        "never|not been? any different|higher|better|more since|as|in|than? .. had|owned|bought|have|years",
    ),
    "grows_worse": (
        "progressively|steadily|gradually|noticeably|rapidly =worse",
        "getting|gets|got|becoming|growing worse|lower|weaker each|every|by|with|all =time|=run|=trip|=day|=week|=outing|=start",
        "at? first only|just|it hot|at|when|was|flickered .. now all|always|constantly|every|everywhere|cold|at",
        "worse|lower every|each time|run|trip|day|week|outing",
    ),
    "low_only_when_level_low": (
        "only|just when|if|once it's|it|is|the|level|oil|gets|a|about? quart|litre|liter|pint|bit|down|low .. low|down",
        "light|lamp|flicker|flickers|gauge|pressure only|just? when|if .. quart|litre|liter|pint|level|oil low|down",
        "fine|ok|good|normal|never with|when|as|if .. sump|level|oil|stick =full|=right|=up|=topped",
    ),
    "low_first_minutes_then_good": (
        "low|poor|slow|nothing at|for the|a first|start|few|couple minutes|minute|bit|then|but|and fine|good|normal|came|up|ok",
        "came|comes|built|rose|went up after|in|within a|few|couple|some|several|two|three minutes of|after the? first|running|start",
    ),
    "loss_is_passing": (
        "good|normal|full? pressure|gauge|needle|it|reading =comes|=came|=recovers|=recovered|=returns|=returned|=goes back|good|to|normal? =by =itself",
        "then|and|it =comes|=came|=recovers|=recovered|=returns|=returned right? back|normal|by|on its|itself|own by|on itself|its own?",
    ),
    "low_from_first_start": (
        "never had|made|seen|got|been|showed|given more|over|above|better than? @pressure|@number .. since|from first|new|it-was|i|the|day|rebuild|build",
        "never had|made|seen|got|been|showed|given more|over|above|better than? @pressure|@number since|from the? first|new|rebuild|build|day-one|beginning",
    ),
    "returns_the_same_way": (
        "next|following|second|third weekend|day|morning|time|week|trip|run|start exactly? the? exactly? same thing|again|story",
    ),
    "rises_with_clutch": (
        *tuple(
            f"pressure|gauge|needle|reading|psi|it {up} a? bit|little|lot? when|as|with|if|whenever|once i|we|you|he|the? {clutch}"
            for up in (_RISES, "goes|comes|went|gone up|higher")
            for clutch in (_PRESSED, f"{_PRESS} the? clutch?")
        ),
    ),
    "protection_tripped": (
        "oil pressure|press? low? alarm|trip|switch|shutdown|protection|sensor keeps|kept|is|was|always shutting|tripping|stopping|cutting|killing the|it|my|our? generator|genset|engine|set|it|pump",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "protection_tripped": (
        "low? pressure? trip|shutdown|cutout|protection did|didnt|never|failed|@not not? work|trip|operate|cut|shut|act",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "slow_needle": (
        f"{_ANY_GAUGE} + lazy|sluggish|lags|takes_its_time|takes_a_while|slow_to + switch_off|shut|stop|stopped|"
        "drop|dropping|respond|react|move",
        f"{_ANY_GAUGE} + creeps|slowly + switch_off|shut|stop|stopped|respond|react|move",
    ),
    "sags_as_oil_heats": (
        "let|left|leave|gave|once|when|after + cool|cool_down|cooled|cooled_off|cooled_down|cool_off & @pressure|@number|fine|normal|pressure & again|back|returned|returns|came_back - coolant|temperature|temp|weather|mornings|cooler",
    ),
    "changed_with_oil_change": (
        "began|started|since|ever_since|right_after|straight_after|immediately_after|only_after|day_after|come_on_since|happened_after|appeared_after|arose + oil_change|oil_was_changed|last_service|a_service|oil_and_filter|changed_the_oil|changing_the_oil|full_service|filter_change|oil_service|"
        "the_service - oil_pump|oil_filter|oil_cooler|oil_pressure|oil_pan|oil_sender|oil_switch|oil_seal|oil_seals|oil_line|oil_lines|oil_pickup|oil_sump|oil_gauge|oil_tank|any_more|no_longer|cured|miles|hours|overdue|quart|fine|black|two_years|@distance|@hours|no_change|tried|usage|uses|1300|months_since|weeks_since",
    ),
    "grows_worse": (
        "getting|gets + worse|lower_every - @hours|@minutes|no|not|any|used|it_got|better|than|pan|light|smoke|leak|leaking|leaks|leaked|rust|weather",
        "worse|lower|longer|sooner + every|each|by_the + day|week|time|run|trip|start|ride|month|drive - better|no|not|any",
    ),
    "long_unchanged": (
        "been_like_that|been_that_way|been_this_way|been_like_this|been_so|was_like_that & years|ages|decades|donkeys|@years|ever_since_i - now|until|two_days|weeks",
        "always + been_like|been_that|done_it|done_that|has|read|like_that|like_this|the_same + like|that|this|way|it|low|since|been - smoke|smoked|smokes|leaked|leaks|burned|used_oil|sounds|sound|runs|quiet|noise|different|light|now|until|oil|used_to|dipped|changed|checked|cleaned|no_light|had",
        "same_reading|reads_the_same|same_pressure + since|years|bought|always|got|ever - new|gauge|mechanical|got_the_same|got_same|sender|filter|pump|rebuild|changed|after",
        "always + been_like|done_that|done_this|read_like|has_been|been_that|was_like|like_this|like_that|been_the_same|been_that_way + since|we|i|years|got|owned|bought|new|it - rebuild|work|changed|now|until|used|before|good|fine|but_now|no_light|fitted|swapped|last|week|replaced",
        "the_same|like_this|unchanged|no_worse|@not_changed + for_years|decade|decades|@longtime|since_new|for_ages - until|used|stood|oil|barn|now_it|filter|ago|sat|storage|changed|fall|cured",
    ),
    "protection_tripped": (
        "shut_down_by_itself|shut_itself|shuts_down_by_itself|shuts_itself|tripped|trips|stopped_itself|stops_itself + itself|by_itself|alarm|low_oil|controller|protection|own|genset|generator|set|engine|murphy|panel|switch - i|we|fuse|breaker|off_the_key|light|immediately|seized|pulled|turned",
    ),
    "back_when_slowed": (
        "drops|falls|sags|fades|dips|sinks|lost + above|over|beyond|past|@rpm & recovers_below|recovered_below|returns_below|back_below|comes_back_below|back_under|recovers_under|comes_back_under|fine_below|normal_below|revs_drop - idle|cold|hot|minutes|lamp|noise|level",
    ),
}
