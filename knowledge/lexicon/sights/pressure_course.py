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
    "loss_is_passing": (
        "good|normal|full? pressure|gauge|needle|it|reading =comes|=came|=recovers|=recovered|=returns|=returned|=goes back|good|to|normal? =by =itself",
        "then|and|it =comes|=came|=recovers|=recovered|=returns|=returned right? back|normal|by|on its|itself|own by|on itself|its own?",
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
        "needle|pointer|gauge|hand|dial|reading|indicator + crawls|crawl|lags|lag|lagging|lingers|linger|dawdles|sluggish|lazy|slow|slowly|slow_to|takes_its_time|drifts|behind|like_treacle|leisurely|delayed|late|hangs_up|stays_up|in_no_hurry + place|up|behind|move|stopped|throttle|revs|respond|react|stopping|switched|shut|off|rise|settle|respond|change|catch|figure|there|after - slowly_drops|slowly_falls|hour|months|years|over_time|start|every|each|idle_slow|minutes|while_driving|ticking|down|hot|zero|back|light|lamp",
        "hand|needle|pointer|gauge + lags|sluggish|lazy|damped|treacle|dozy|lethargic|crawls - at_start|each_start|every_start|no|not",
        f"{_ANY_GAUGE} + lazy|sluggish|lags|takes_its_time|takes_a_while|slow_to + switch_off|shut|stop|stopped|"
        "drop|dropping|respond|react|move",
        f"{_ANY_GAUGE} + creeps|slowly + switch_off|shut|stop|stopped|respond|react|move",
    ),
    "sags_as_oil_heats": (
        "droops|sags|decays|fades|sinks|drops|lower|falls|dwindles|declines|dips|ebbs|crept_down|creeps_down & hot|heats|warms|warms_through|heat|hotter|hour's|hour|hot_oil|half_an_hour|as_she_warms & recovers|restored|fine_again|cool|cools|cooling|cooled|cool_down|back_up|it's_fine|next_morning|up_again - idle|speed|flat_out|light|level|coolant|rev|revs|never|not|cooler|once_hot_only|good_cold|rpm|rated|start|standing|stopped",
        "half_an_hour|an_hour|hour's|hours|@minutes|minutes|gets_hot|gets_warm|warms_up|heats_up|warmed_up|hot_run|while & sinks|sunk|crept_down|creeps_down|droops|sags|drops_away|fades|goes_down|falls_away|slides|drifts_down|dwindles|slips_down|went_down|down_and_down|falls|dropped_off|drops_off & cooled|cools|cold_again|cooled_down|when_it's_cool|next_morning|cold_it's|after_cooling|once_cool|overnight|let_it_cool - level|dipstick|coolant|light_flickers|minutes_at_speed|flat_out",
        "let|left|leave|gave|once|when|after + cool|cool_down|cooled|cooled_off|cooled_down|cool_off & @pressure|@number|fine|normal|pressure & again|back|returned|returns|came_back - coolant|temperature|temp|weather|mornings|cooler",
    ),
    "grows_worse": (
        "worse|more_bad|lower|weaker|less|longer|few_more|poorer|pounds_less|bit_less|deteriorating|further & every|each|day_by_day|run_by_run|week_by_week|with_every|by_the_day|run_to_run|trip_by_trip|day_after_day & trip|run|drive|day|driving|week|outing|time|start|use|journey|ride|job - no|not|never|year|years|month|months|season|light_longer|smoke|leak|longer_to|oil_used|consumption|noise_only",
        "loses|drops|losing|shed|sheds|down & pounds|psi|bit_more|little_more|few_more|more & every|each + trip|run|outing|day|drive|time|journey|week - oil_level|litre|quart|pint|miles|year|revs|rpm|season|oil_every",
        "getting|gets + worse|lower_every - @hours|@minutes|no|not|any|used|it_got|better|than|pan|light|smoke|leak|leaking|leaks|leaked|rust|weather",
        "worse|lower|longer|sooner + every|each|by_the + day|week|time|run|trip|start|ride|month|drive - better|no|not|any",
    ),
    "long_unchanged": (
        "years|decades|ages|always|as_long_as|since_new|ever_since|since_i_bought|since_i_had|@years|donkey's_years|from_new|twenty_years|longer_than & same|no_worse|not_become_worse|never_worse|@not_get_worse|@not_worse|never_changed|like_this|like_that|read_so|that_figure|never_varied|@not_changed|always_been|steady|never_altered & shows|shown|reads|read|figure|pressure|it|same|been|gauge|needle|reading|worse|number|it's - new_sender|until|used_to|now_it|dropped|changed_to|than|runs|ago|starts|smoke|oil_change|filter|before|but_now|crept|fell|now",
        "been_like_that|been_that_way|been_this_way|been_like_this|been_so|was_like_that & years|ages|decades|donkeys|@years|ever_since_i - now|until|two_days|weeks",
        "always + been_like|been_that|done_it|done_that|has|read|like_that|like_this|the_same + like|that|this|way|it|low|since|been - smoke|smoked|smokes|leaked|leaks|burned|used_oil|sounds|sound|runs|quiet|noise|different|light|now|until|oil|used_to|dipped|changed|checked|cleaned|no_light|had",
        "same_reading|reads_the_same|same_pressure + since|years|bought|always|got|ever - new|gauge|mechanical|got_the_same|got_same|sender|filter|pump|rebuild|changed|after",
        "always + been_like|done_that|done_this|read_like|has_been|been_that|was_like|like_this|like_that|been_the_same|been_that_way + since|we|i|years|got|owned|bought|new|it - rebuild|work|changed|now|until|used|before|good|fine|but_now|no_light|fitted|swapped|last|week|replaced",
        "the_same|like_this|unchanged|no_worse|@not_changed + for_years|decade|decades|@longtime|since_new|for_ages - until|used|stood|oil|barn|now_it|filter|ago|sat|storage|changed|fall|cured",
    ),
    "protection_tripped": (
        "protection|shutdown|cut-out|cutout|murphy|trip|oil_shutdown|low-oil_shutdown|safety|failsafe|fail-safe|controller|ecu|low-pressure_switch|oil_guard|engine_guard|limp_mode|pressure_switch & stop|stopped|tripped|shut|cut|killed|shuts|stops|cuts|shut-down|stopping|kills|trips|tripping|halted & engine|generator|genset|itself|set|motor|alone|it|out|off|her|self|oil|machine|plant|down - never|not|no|didnt|failed|doesnt|bypassed|fuse|i_shut|we_shut|i_stopped|breaker|fuel|over-temp|temperature|kept_going|@not",
        "shut_down_by_itself|shut_itself|shuts_down_by_itself|shuts_itself|tripped|trips|stopped_itself|stops_itself + itself|by_itself|alarm|low_oil|controller|protection|own|genset|generator|set|engine|murphy|panel|switch - i|we|fuse|breaker|off_the_key|light|immediately|seized|pulled|turned",
    ),
    "back_when_slowed": (
        "recovers|returns|back|there|restored|comes_back|fine|good|normal + at_idle|at_tickover|go_slow|slow_again|slowing|at_low_revs|eased|ease|easing|throttle_closed|throttled_back|let_off|as_i_slow|when_i_slow|back_to_idle|drop_to_idle|down_to_idle|to_a_tickover - low|not|never|cold|hot|minutes|no|light_back|drops|knock|noise|start|first|brake|braking|brakes|corner|corners|bend|bends",
        "ease_her|eased|slow_her|chop|shut_the_throttle|close_the_throttle|drop_the_revs|throttle & tickover|idle|throttle & returns|pressure_returns|recovers|jumps_back|back_straight|comes_back|restored|jumps_right & at_once|right|immediately|straight|pressure|needle|again - not|never|no|low|light|hot|drops",
        "slow|slows|slowed|slowing|ease|eased|lift_off|let_off|chop|chopped|throttle_back|throttling|throttled|down_to_idle|drops_to_idle|down_to_tickover|back_off|backed_off|shut_the_throttle|close_the_throttle|at_idle|to_idle|off_the_gas|off_the_throttle|drop_the_revs|to_tickover|ease_back & back|returns|comes_back|jumps_right_back|recovers|its_back|fetches|restored|comes_right|right_again|back_up|fine_again|straight_back|comes_good|reappears|back_straight & soon|right|straight|at_once|moment|jumps|away|needle|pressure|immediately - braking|brake|slams|bend|corner|heels|never|not|drops_back|falls_back|back_on|comes_back_on|lamp|light|light_comes|low|drops_when|goes_back_down|back_to_zero|down_to_zero|hot|noise|knock|rattle|steadies|clutch|falls_away|dropped_back|no",
        "drops|falls|sags|fades|dips|sinks|lost + above|over|beyond|past|@rpm & recovers_below|recovered_below|returns_below|back_below|comes_back_below|back_under|recovers_under|comes_back_under|fine_below|normal_below|revs_drop - idle|cold|hot|minutes|lamp|noise|level",
    ),
    "fades_at_speed_back_after_rest": (
        "fades|decays|goes_down|falls|drops|sags|dies_off|sinks|dwindles & speed|rated|fast|hard|flat_out|full_load|motorway|highway|wide_open|rated_speed & recovers|back|good_again|comes_back|returns|right_again|ok_again & rest|pause|stop|stopping|sit|stand|idling_a_while|break|breather|standing|wait|while - not|never|clutch|corner|bend|idle",
        "flat_out|wide_open|full_throttle|at_speed|motorway|highway|fast_run|long_run|hard_run|full_chat|top_speed|racing|hard_running|high_revs|sustained & dies_off|fades|fade|dwindles|dwindle|drops_off|drops_away|sags|dies_away|tails_off|sinks|falls_off|falls_away|goes_away|wilts|ebbs|drains_away|tapers|drops|falls & park_up|let_it_sit|rest|drifting|sit|stand|standing|stopping|pull_over|recovers|idling_a|wait|pause|drifted|sat|stood|parked|breather - no|never|not|fell_suddenly|corner|bend|hill",
    ),
    "ten_seconds_or_more": (
        "pressure|oil|gauge|needle|reading + after|only_after|not_until|not_before|no_sooner + 10_s|12_s|15_s|20_s|long_time|ten_seconds|fifteen_seconds|twelve_seconds|twenty_seconds|a_while|half_a_minute|many_seconds|quarter_minute - drop|drops|fell|lost|cut|shut|stopped|goes|standing|falls|hot|minutes|hour|flicker|fluttered|died|run",
        "handful_of_throttle|plenty_of_throttle|lots_of_revs|high_revs|rev_it|revving_it|give_it_gas|give_it_revs|only_with_gas|needs_revs|boot_it & before|wont_lift|will_it|comes|builds|show|lift|make|come_up|register|wont|builds|anything - idle|lamp|light|clutch",
        "quarter_minute|quarter_of_a_minute|half_a_minute|half_minute|ten_seconds|fifteen_seconds|twenty_seconds|thirty_seconds|minute|full_minute|@seconds|count_to_ten|count_of_ten|ages|eternity|age|forever + takes|took|needs|need|wait|count|before|until|good|taking|needed|till & registers|register|before|build|shows|lift|any_pressure|comes_up|come_up|moves|until|reads|anything|rise|appears|oil|gets_up|wakes|stirs - dropped|drops|fell|light_came|shut|every_start_longer|longer_than|warm|hot|stopped|under|within|in_two|hour|rest|miles|faded",
        "gotta|have_to|need_to|needs|must|only_if_i|wont|until_i|got_to|needed|takes + rev|revs|throttle|handful|revving|blip|revved|gas|gun_it|wind_it_up|few_revs & before|make_any|lift|make|builds|build|show|any_oil|come_up|any_pressure|register|wake|move|moves|anything - idle|clutch|hot|start_the|light_goes|smoke|out|flicker|start_it",
    ),
    "loss_is_passing": (
        "falls|drops|goes|lost|loses|disappears|dips|loss|vanishes|transient & itself|own|bit_later|self-recovering|moment_later|little_later|comes_back|comes_again|again_alone|nothing_done - seized|dropping|speed|idle|clutch|cold|hot|revs|rest|cools|bend|corner|tap|knock|wire|level|slow|top|rpm|turn|light_went|minutes_off|noise",
        "minute_later|moment_later|second_later|seconds_later|comes_back|come_back|right_back|back_where|returns|recovers|come_again|comes_again|by_itself|own_accord|of_itself|restores|corrects & loses|lost|goes|go|disappears|vanishes|drops|falls|away|dips|gone|fades & itself|alone|minute|back|own|later|again|moment|accord|short_while - revs|idle|clutch|cold|hot|morning|corner|bend|slow|slowed|level|top|rest|cool|cools|speed|noise|knock|rattle|standing|throttle|wiggle|tap|rpm|@rpm|miles|overnight|down_to|never|not",
    ),
    "no_pattern_to_it": (
        "no_telling|no_knowing|random|randomly|by_accident|no_pattern|unpredictable|no_rhyme|any_speed|out_of_the_blue|whenever|no_reason|for_no_reason|no_warning_when|anytime|any_time|haphazard|no_logic|pot_luck|no_saying|cant_predict|can't_predict & whatever|any_temperature|any_speed|happen|happens|comes|come|speed|hot|cold|it|road|doing|drops|pleases|feels|time|when|flickers|goes|likes|mood - lamp|began|started|not_random|isnt_random|low|weak|always|no_loss|@not_random|never_random",
    ),
    "goes_after_minutes": (
        "first_few_minutes|opening_few|first_minutes|few_minutes|four_minutes|five_minutes|@minutes|couple_of_minutes|for_a_few|first_mile|first_ten_minutes|ten_minutes|first_@minutes|first_five|first_5|maybe & good|fine|behaves|ok|normal|right|got_oil|got_pressure|well|holds|plenty|has_it|has_pressure & then|and_then|before|after_that & loses|drops_off|goes_away|lost|gone|drops|dies|vanishes|falls|disappears|drops_out|quits|goes & every|any_run|each|run|time|always|starts|trip|fire - new_build|rebuild|back_after_rest|recovers|level|parked|hours|month|speed|flat_out|weeks|never|low",
    ),
    "low_only_when_level_low": (
        "only|just|solely + level|oil|dipstick|level_has_dropped|minimum|short_of_oil|low_on_oil & low|dropped|down|under|minimum|fallen|bottom|below & troubles|trouble|happens|does|comes|fault|when|it|only - not|no|hot|idle|corner|pressure|revs|cold|temperature|light_only|speed|bends|ever|level_checked|rpm|slow|psi",
        "only|just|unless|never_when_full|when|if|let & quart_down|low_dipstick|dipstick_low|level_low|low_level|level_is_down|wants_oil|oil_is_down|bottom_mark|near_the_bottom|minimum|low_on_oil|needs_oil|litre_down|pint_down|half_full|min_mark|short_of_oil|level_drops|needs_topping|level_down|stick_shows|down_a_quart|oil_get_near|oil_gets_low & acts_up|plays_up|fault|happens|comes_on|flickers|light|drops|topped_up|fill_it|gone|it_does_it|trouble|pressure|doesnt|goes_away|fine|cured - level_makes|no_difference|no_matter|whatever|full_too|same_with|regardless|even|cornering|bends",
        "quart_down|litre_down|pint_down|half_down|on_the_min & acts_up|plays_up|happens|flickers|comes_on|drops & fill|top|topped|filled|full & gone|fine|stops|cured|normal|ok|right - even|no_difference",
    ),
    "worse_in_the_wet": (
        "wet|rain|spray|damp|raining|rains|wash|hosing|wet_weather + plays_up|comes_on|only|acts|whenever|no_other_time|when|happens|does|fault|trouble|worse|goes_off - not|no_odds|oil|leak|leaking|clutch|sump|line|hose_burst|gauge_line|wet_sump|switch_wet|soaked|with_oil|oily|seal|sprayed|oil_spray|joint|dripping|gasket|under|cooler|outside|dry_or|plug|drips|wet_round",
        "rain|raining|rains|wet|spray|washed|washing|hose|hosed|hosing|puddle|puddles|damp|ford|splash|downpour|pressure_washed|jet_wash|steam_cleaned|drizzle|fog|monsoon|soaked|storm & acts_up|problem_comes|comes|only|fault|plays_up|happens|every_time|whenever|worse|misreads|goes_wrong|haywire|shows_up|flickers|bay - under_the|trail|floor|drive|lane|puddle_of|dropped|no_odds|no_difference|no_matter|not|never|rain_or_shine|oil|wet_clutch|dry_or_wet|wet_sump|leak|leaking|cooler|line|gauge_line|wet_through|no|spraying|burst|radiator|plug_hole|wet_with|pan",
    ),
    "noise_with_pressure_loss": (
        "knock|knocks|clacking|clatter|rattle|tapping|noise|rattling|clack|ticking|clattering|hammering & drops|loss|loses|falls|goes|needle_drops|pressure_loss|low|dips & ceases|quiet|shuts_up|stops|recovery|hush|silent|quietens|goes_away|dies & up|back|recovery|returns|comes_back|recovers|again|once_it's|rises - clutch|no|not|never|tap|dash|cylinder|plug_lead",
        "tappets|clatter|clacking|rattle|rattling|rattles|knocking|knock|noise|clack|tapping|ticking|knocks|hammering|din|racket|clattering|clatters & drops|goes|falls|away|gone|lost|goes_down|dips|dies|vanishes|sinks|light_comes|disappears & return|returns|recovers|comes_back|again|back|comes_up|restored|picks_up & quiet|stops|hush|silent|quietens|ceases|quiets|goes_away|shuts_up|dies_away|clears|disappears|calm|fades|then - clutch|no_noise|never|not|cylinder|plug|minutes|without|revs",
    ),
    "general_alarm": (
        "buzzer|alarm|siren|beeper|beeping|horn|klaxon|bell|hooter & no_idiot|without_a_light|no_light_to|no_light_with|no_lamp_with|no_message|no_cause|no_reason|what_for|which|not_say|no_light_to_go|displayed|without_any_light|didnt_say|didn't_say|wouldn't_say|no_text - car_alarm|never|test|key|ignition|oil_light",
        "alarm|buzzer|klaxon|siren|beeper|beeping|horn|bell|master_warning|bleeper|hooter|sounder|chime|caution & no_indication|no_cause|doesnt_say|doesn't_say|nothing_told|doesnt_tell|doesn't_tell|no_reason|not_shown|without_saying|no_message|what_for|@not_say|@not_tell|@not_show|unspecified|general|no_code|no_label|not_which|no_explanation|no_clue|not_shown_which|matter|told_why|which_fault|nothing_on_the_panel|common_alarm|why - flicker|lamp|oil_alarm_shows|oil_pressure_alarm|no_alarm|never_sounded|no_idea_why|car_alarm|burglar|no_reason_to",
    ),
    "engine_runs_rough": (
        "engine|motor|tractor|it|she|boat|car|cylinder|idle|runs|running|thing|van|truck|bike + stumbling|stumbles|popping|misfires|misfire|misfiring|missing_on|dead_hole|hunts|coughs|coughing|spluttering|splutters|rough|lumpy|shaking|judders|judder|on_three|on_two|three_cylinders|cylinder_not_working|dead_cylinder|one_cylinder|lurches|bucking|bucks|chuffing|surging|runs_badly|uneven|hesitates|backfires|stutters|skips|dropping_a_cylinder - smooth|not|no|never|without|rough_road|rough_sea|gauge|needle|pointer|light|lamp|bore|journal|cast|pressure_hunts|hand|dash|weather|surface|rough_idea|screen|crank|pulley|shaft|wire|idler|gear|cam|rocker|hub|worn|marks|roughly|scored|compression|piston|crack|cracked|feels_rough_by_hand|liner|skirt|all|stopped|seized|locked|died",
    ),
    "rises_with_clutch": (
        "press|push|pushing|pressing|dip|depress|clutch_in|clutch_down|declutching|clutch_pressed|step & coupling|clutch|pedal|declutching|clutch_depressed & more|up|higher|rises|climbs|increases|goes_more|better & pressure|needle|gauge|reading - not|no|lower|falls|drops|less|down_more|out|bite|slip|dips_to|sags",
        "clutch_in|clutch_down|clutch_pressed|press_the_clutch|push_the_clutch|step_on_the_clutch|on_the_clutch|with_the_clutch|press_clutch|clutch_pedal|tractor's_clutch|declutching|declutch|left_pedal|coupling_pedal|dip_the_clutch|pushing_the_clutch|press_coupling|clutch_depressed|clutch_is + climbs|climb|rises|rise|adds|add|picks_up|goes_up|up|more|gains|gain|higher|lifts|improves|jumps_up|puts_on|better & needle|pressure|reading|gauge|pounds|psi|down|in|step|pressed|several|press|pushed|hand|number - not|doesnt|no|never|falls|drops|lower|bite|slips|hill|go_down|dips|revs_up|replaced|revs|fitted",
    ),
    "slow_after_standing": (
        "overnight|morning|all_night|stood|standing|first_start|sat|cold_start|a_week + delay|seconds|@seconds|few_seconds|count|lag & normal|fine|ok|good|behaves|then|right|after - light_longer|high|too_high|ten|fifteen|twenty|thirty|minutes|never|minute|sump|level|used_to|new",
        "overnight|morning|night|standing|stood|sits|sat|sitting|first_start|parked|cold_start|first_thing|left_it|days|lying|week & count|seconds|@seconds|takes|slow|while|wait|moment|delay|three|four|five|six & come_up|build|builds|rise|register|pressure|reading|lift|get|show|up|shows & fine|normal|rest_of_the_day|then|after_that|afterwards|good|ok - level|minutes|never|longer_than_it|used_to|ten|fifteen|twenty|filter|half_a_minute|not|new_build|rebuild|minute",
    ),
    "pressure_lost": (
        "had|was|used_to_have|used_to|had_pressure|last_week|before & now|none_now|no_more|gone|dont|has_none|nothing|has_not|it_hasnt & couldnt_tell|nobody_saw|dont_know|cannot_say|no_idea|unnoticed|not_noticed|did_not_see|wasnt_looking|rate_unknown|couldn't_tell|cant_say|unknown|can't_say - back|sudden|slowly",
        "used_to_have|had_good|was_pressure|had_pressure|before_was|there_was|was_there|once_had|had_plenty|had_oil_pressure|used_to_be & now|gone|no_more|nothing|none|has_not|hasnt|lost|has_none|disappeared|zero & dont_know|cannot_say|did_not_see|not_sure|no_idea|when_it|how_it|couldnt_say|unknown|cant_tell|no_one_knows|didnt_see|somewhere - came_back|comes_back|returns|suddenly|months|slowly",
    ),
    "falls_with_clutch": (
        "clutch|coupling_pedal|left_pedal|declutch|declutching|de-clutch|clutching + lower|dips|drops|drop|falls|goes_down|sags|less|sinks|down|weaker|fall|loses|droops|plunges + pressure|oil|needle|gauge|reading|number|psi|it - rises|rise|climbs|clutch_fluid|no|not|doesnt|never|gearbox|dropped_the_clutch|changed|new_clutch|replaced|adds|picks_up",
        "clutch|coupling_pedal|left_pedal|declutch|declutching & press|push|pushed|step|pressed|depress|depression|pedal|in|dip|down|each_time|stamp|disengage|pressing|dipping|hold & lower|dips|drops|drop|falls|goes_down|sags|less|sinks|lower|dip|noise_changes|weaker - rises|rise|climbs|no|not|doesnt|never|replaced|new_clutch|adds|picks_up|coast|clutch_drops",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "sags_as_oil_heats": (
        "no|never|@not|without|doesnt + sag|sags|sink|sinks|creep_down|droop|fall_away|fade + hot|heat|heats|warm|warms|hour|hours|temperature - level|but|revs|corner",
    ),
    "fades_at_speed_back_after_rest": (
        "held|kept|ran|drove|run + flat_out|full_throttle|wide_open|at_speed|hard + hour|hours|miles|minutes|all_day & never|no|didnt|steady|without|not & faded|fade|drop|dropped|sag|fell|fall|budged|sagged - until",
        "flat_out|wide_open|full_throttle|at_speed|motorway|full_chat|high_revs|fast + never|no|@not|didnt|without|held_steady|stayed + fade|faded|fades|fall|drop|sag|sink|sagged|fell|dropped|up|fading - until|rest|corner",
    ),
    "slow_needle": (
        "needle|pointer|gauge|hand + jumps|follows|responds|reacts|moves|answers|keeps_up|tracks + right_away|at_once|straight_away|immediately|instantly|no_lag|without_lag|with_the_throttle|promptly|quickly|smartly - between|bumps|zero|lights|wipers|but",
    ),
    "ten_seconds_or_more": (
        "@seconds|two_seconds|one_second|three_seconds|second|couple_of_seconds|few_seconds|instantly|at_once|straight_away|immediately|right_away + builds|pressure|rises|comes_up|registers|is_up|all_there + from_the_key|of_starting|fire_up|pressure's|firing|turning_the_key|from_cold|in|within|of_firing - light|lamp|low|goes|warning|dropped|drops|shut|off|stopped|gone|fell|hot|lost|then|before|until|longer|only|then_gone|drop|slow",
    ),
    "loss_is_passing": (
        "once|when & gone|lost|goes & stays|stayed|never|for_good|doesnt & lost|gone|back|return|comes|recover|away - light|noise|water|coolant|wire",
    ),
    "no_pattern_to_it": (
        "not_random|isnt_random|no_random|never_random|not_at_random|@not_random|follows_the|pattern_to_it|predictable & only|hot|cold|speed|slow|same|every|revs|pattern|always|happens|temperature - un|no_pattern|without|not_predictable|isnt",
    ),
    "long_unchanged": (
        "never|@not|didnt|hasnt & used_to|always|before|new_thing|recent|past + read|like_this|like_that|do_this|did_this|so_low|this_low - years_same|better|worse",
    ),
    "grows_worse": (
        "no|not|never|doesnt|hasnt|isnt + worse|worsening|deteriorating|getting_worse|worsened|declining|lower_each + run|getting|day|week|trip|any|got|gets|become|is|grown|run_to_run|no - years|decades|same|month|always|than",
    ),
    "pressure_lost": (
        "never|@not|hasnt + went_away|gone_away|disappeared|been_lost|left|vanished|go_away & there|throughout|all_along|always|been - light|lamp|noise|leak|flicker|knock|recovered|back",
    ),
    "back_when_slowed": (
        "slowing|slow|idle|easing|throttling|letting_off|backing_off|lifting_off + doesnt|never|no|not|didnt + bring_it_back|come_back|recover|help|return|comes_back|restore|any_difference|brings - light|lamp",
    ),
    "goes_after_minutes": (
        "same|no_different|unchanged|identical + hour|first_minute|minutes|half_hour|ten_minutes & first_minute|first_minutes|at_the_start|from_the_start|from_cold_start|at_first - years|worse|every_time_same|gone|drop|overnight|not",
    ),
    "low_only_when_level_low": (
        "full|topped_up|brim|max|level + same|no_difference|no_odds|just_the_same|makes_no|either_way|regardless & level|topped|half|full - fresh|gauge_same|fuel|tank|years",
    ),
    "worse_in_the_wet": (
        "rain|wet|spray|washing|damp|weather + no_odds|no_difference|makes_no|or_shine|or_dry|@not_matter|same_in|never_affected|no_effect|@not_affect - worse|sump",
    ),
    "noise_with_pressure_loss": (
        "no|never|without|not_a|silent|quiet + noise|knock|rattle|sound|clatter|tap|engine + with|when|as & drops|goes|loss|falls|lost|low|dip|disappears - until|then_noise|noise_free",
    ),
    "protection_tripped": (
        "protection|shutdown|cut-out|cutout|murphy|trip|safety|oil_guard|pressure_switch|controller|failsafe & never|@not|didnt|failed|no & cut|stopped|stop|trip|tripped|shut|operated|act|operate|work|acted|came|worked|kept_going - until|then|false|nuisance|fitted",
    ),
    "general_alarm": (
        "no|never|without|not_a + general_alarm|master_alarm|master_warning|general_warning|klaxon|siren - reason|cause|indication|saying",
    ),
    "falls_with_clutch": (
        "clutch|left_pedal|declutching + no_difference|no_odds|no_effect|doesnt|never|nothing|@not|no_change + pressure|drop|affect|change|difference|needle|reading|happens|fall|alters|dips|gauge - lift|rise|climb|raise|replaced|cable",
    ),
    "rises_with_clutch": (
        "clutch|declutching|left_pedal|coupling_pedal + doesnt|@not|no|never|nothing|without + lift|rise|raise|climb|go_up|add|up|increase|improve - fall|drop|replaced",
    ),
}
