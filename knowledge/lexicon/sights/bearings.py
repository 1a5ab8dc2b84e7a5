"""Words for the state of bearings, journals and crankshaft; ``shells`` for what their shells show."""

from __future__ import annotations

_BRG = (
    "bearing|bearings|shell|shells|mains|big-ends|big-end|inserts|insert|rod-bearings|main-bearings"
)
_BE = "is|are|was|were|had|have|has|been|looked|look|found|all|both|badly|very|quite|completely|totally|really"
_CRANK = "=crank|crankshaft|journal|journals|crankpin|crankpins|pins"
_LIFTERS = "lifters|lifter|tappets|tappet|hlas|hla|followers"
#: the finding, by what is said when it is not there
_IN_SPEC = (
    "within|in|inside|to|mid the? spec|limits|limit|book|tolerance|specification|tolerances|figures"
)
_CLEAR = "measured|remeasured|checked|re-checked|recorded|all|both|were|was|are|is|found|and|,|written|plastigauged"
_ANY_BRG = "bearing|bearings|shell|shells|insert|inserts|mains|big_end|big_ends|big-end|big-ends|rod_bearings"
_JOURNAL = "journal|journals|crankpin|crankpins|crank_pin|crank_pins|crankshaft|crank"
_HER = "it|her|the_engine|engine|the_motor|the_lot|that_one|that_engine|him"
#: what somebody did who saw the warning: "shut it down", "so we cut the engine"
_STOPPED_IT = "|".join(
    (
        *(
            f"{verb}_{her}_{way}"
            for verb in ("shut", "turned", "switched")
            for her in _HER.split("|")
            for way in ("down", "off")
        ),
        *(
            f"{verb}_{her}"
            for verb in ("killed", "cut", "=stopped")
            for her in ("the_engine", "engine", "the_motor")
        ),
    )
)
_SO_STOPPED = "|".join(
    f"so_{who}{verb}"
    for who in ("i_", "we_", "he_", "she_", "they_", "")
    for verb in (
        "shut_down",
        "shut_it",
        "shut_her",
        "stopped_her",
        "stopped_it",
        "shut_the",
        "cut_the",
        "killed_it",
        "killed_the",
        "stopped_the",
        "turned_it_off",
        "turned_her_off",
        "switched_off",
        "switched_it",
        "off_again_at",
    )
)
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "main_clearance_too_wide": (
        "main|mains bearing? clearance|clearances|clearences .. too|excessive|over|wide|out|large|big|loose",
        "excessive|too|wide|loose main bearing? clearance|clearances",
    ),
    "rod_clearance_too_wide": (
        "rod|rods|big-end bearing? clearance|clearances .. too|excessive|over|wide|out|large|big|loose",
        "excessive|too|wide|loose rod|big-end bearing? clearance|clearances",
    ),
    "bearing_clearance_too_tight": (
        "main|rod|bearing bearing? clearance|clearances .. too? tight|small",
        "tight|insufficient bearing|main|rod clearance|clearances",
        "bearing|main|mains|rod|rods|oil? clearance|clearances|bearings is|are|was|were|too|way|a|bit? tight|small|under|below|little",
        "not|insufficient|@not enough bearing|oil|running|main|rod? clearance|clearances",
        "too|very little|small|tight bearing|main|rod|oil? clearance|clearances",
    ),
    "journal_not_true": (
        f"{_CRANK} {_BE}? .. tapered|oval|out-of-round|taper|rough|egg-shaped|bent",
        f"{_CRANK} .. out of|off round",
    ),
    "crank_end_float_over": (
        "crank|crankshaft end play|float|thrust .. excessive|over|too|out|beyond",
        "excessive|too .. end float|play|thrust .. crank?",
    ),
    "crank_moves_endwise": (
        "crank|pulley|crankshaft|damper|flywheel pulley? moves|move|moved|walks|walking|slides|floats|shifts in|fore|back|endwise|forward|end and|to|&|when|forth|with?",
        "crank walk|walking",
        "in and|& out movement|play .. crank|pulley",
        "see|watch .. crank|pulley move|moving",
        "play in|at the? crank|crankshaft pulley?",
    ),
    "clearances_at_limit": (
        "clearances|clearance .. limit|wide-side|loose|upper side|end|at?",
        "clearances|clearance on|at|to the? loose|wide|upper|high side|end|limit",
        "clearance|clearances|bearings|mains|rods .. at|near|on|close|just|right|under to|the|about? limit|max|maximum|top|edge|wear-limit",
        "clearance|clearances|bearings|mains|rods .. just|barely|only within|inside the? limit|limits|max|maximum|wear-limit",
        "wide|loose|upper end|side|but|of? within|inside|still limits|limit|tolerance|spec",
        "clearance|clearances on|at the? loose|wide|upper|big|generous side|end|high?",
    ),
    "bearings_failed_again": (
        f"second|third|another|repeat set|time|bearing of|on|in|failure? {_BRG}",
        "second|third|another|repeat failure|bearing of|on|in|failure?",
        f"{_BRG} failed|went|gone|knocked|spun|again|wiped again|twice|once-more",
        "rebuilt .. failed|went|gone|knocked|spun|knocking again|twice",
        "same bearing|rod|cylinder failed|went|again|spun|gone",
        "failed|went|gone again within|after|in .. new|@distance|@hours|rebuild|miles",
        "second|third failure",
        "it|its|has|just|now|went|gone|let|it-has has|just|now|gone|went|let|failed|done|again|go? gone|went|again|go|it|once? again at|after|in|within|with only|just|about|less-than? @hours|@distance|@time|@number hours|miles?",
        "same|again|failed|gone|went thing|again? again at|after|in|within @hours|@distance|@time",
    ),
    "ran_on_without_pressure": (
        "light|lamp|alarm|buzzer|warning was|stayed|on|lit|going|blaring|flashing on|lit? the|for-the? whole|entire|full time|way|journey|trip|drive|while",
        "drove|driven|ran|run|ran-it|drove-it|rode on|back|home|to? work|school|town|the-shops|it|there? with the? oil|red|warning? light|lamp|buzzer|alarm on|lit|going|flashing|blaring",
        "=carried|=kept|=continued|=drove|=driven|=drive|=limped|=nursed|=pressed|=ridden|=rode|=motored on|home|going|driving|running|for|back|it|another|with|riding|to .. light|lamp|pressure|gauge|warning|anyway|lit|mile|miles|regardless|@distance|@minutes|without|zero",
        "=drove|=driven it|her|him|the car|truck|van|boat? on|back? to my|our house|place|driveway|yard|flat",
        "=limped|=nursed it|her|him|the|my car|truck|van|boat? on|back? to|into my|our|the|a house|place|garage|shop|workshop|yard|driveway|dealer|mechanic|marina|dock",
        "drove|driven|limped|nursed|rode|ridden|carried it|her|the|car|on|@distance|about? car|on|about|back|@distance? home",
        "=ran|=run|=running|=driving|=drove|=driven it|on|for|about|her|another|the|around .. without|no|zero|low oil? pressure|oil",
        "=drove|=driven|=rode|=carried it|on on? to =work|school|town|shops",
        "thought|think nothing|little|no-more of|about it and|so .. drove|carried|kept|continued|went|rode|ran",
        "carried on driving|home|regardless|mowing|working|ploughing|motoring|cruising|cutting|baling|fishing",
        "finished|finish|finishing the|my|that field|row|job|load|round|trip|run|crossing|pad|headland with|on .. light|lamp|alarm|buzzer|zero|pressure",
        "run|ran|motored|took|drove it|her|us|on|in|into .. harbour|harbor|port|marina|home|base|yard with|on no|zero|the|without oil? pressure|light|lamp|alarm",
        "i|we|he|she|they didnt|never stop|stopped|shut down|off|it? , finished|carried|kept|went|drove",
        "ignored the? oil? light|lamp|warning|gauge|alarm",
        "@not notice|noticed|see|spot|stop|spotted the? oil? gauge|light|lamp|pressure|engine|straight|until",
        "before|until i|he|she|we noticed|saw|stopped|realised|realized|spotted",
        "by the time i|he|she|we noticed|saw|realised|realized|spotted|looked",
        "thought|assumed|blamed|put it|the|down|its|it|was|gauge .. gauge|sender|faulty .. drove|driven|carried|on|kept",
        "finished|completed|carried|did|drove|ran|continued|kept .. race|lap|laps|stage|session|rally|heat .. light|lamp|alarm|like|no|zero|anyway|low|without",
        "ran|run|did|done|had|ran-for|running it? for? maybe|about|around|perhaps|at-least|nearly|over|a|for? @minutes|minutes|@distance with|without|on no|none|zero|nothing",
        "oil? light|lamp|buzzer|alarm was|stayed|came? on|lit for about|nearly|over|a|at-least? @distance",
        "light|lamp|warning|alarm|buzzer .. ran|driven|drove|ridden|rode|went|continued another|a|further|for|on? @distance|@minutes",
        "limped|nursed|crawled it|her|the-car|him? back? home|back|in like|with|that|the|no|light",
        "drove|carried|kept|went on|going|driving .. with the|oil|that|no|zero oil|red|pressure|warning? light|lamp|pressure|alarm on|lit|glowing|up?",
    ),
    "deep_knock_under_load": (
        "deep|heavy|low|dull|low-pitched thump|thud|knock|rumble|knocking|thumping|rumbling|pounding metallic? under|on|when|with|pulling|at load|acceleration|power|accelerating|pulling",
        "deep|heavy|dull thump|thud|rumble|pounding|thumping|knock|knocking",
        "main bearing knock|rumble|noise",
        "rumble|rumbles|rumbling from|under|on the? load|acceleration|bottom|power|below|crankcase",
        "knocks|knock|thumps|thuds|knocking when|under|on|with pulling|load|accelerating|hills|acceleration",
        "knocks|knocking|thumps|hammers|thudding|knock when|under|as|once|whenever you|i|we|it-is|its|the|on? load|loaded|pull|pulling|loading|working|labouring|laboring",
    ),
    "rap_dulled_by_cut_out": (
        "knock|noise|rap|rattle|knocking|rapping goes|disappears|stops|quiets|changes|reduces|gone|quietens|dulls .. plug|cylinder|lead|injector|cut|shorted|shorting",
        "rapping|rap|hammering|rattling at|around|when|on @rpm|revs|revved|lift-off|overrun",
        "pull|pulled|pulling|shorting|cracking .. plug|lead|injector .. knock|noise goes|quiets|stops|disappears|gone",
        "knock|rap|noise|it halves|halved|softens|softened|eases|eased|dulls|fades|goes|less|quiet|quietens|drops|disappears|gone|stops when|with|if|once .. plug|injector|lead|pipe|cylinder|line",
        "halves|halved|softens|eases|dulls|quietens|disappears|less when|with|if|once .. plug|injector|lead|pipe|cylinder|line .. pulled|off|cut|cracked|shorted|loosened|slackened|removed|out|undone|disconnected",
    ),
    "clatters_only_at_high_revs": (
        f"{_LIFTERS} pump|=pumped|=pumping up",
        f"{_LIFTERS} noisy|clatter|rattle|tick|noise only? at|above|over high|@rpm revs|rpm?",
        "clatters|clatter|rattles only at|above high|@rpm",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "ran_on_without_pressure": (
        "shut|switched|turned|killed|cut it|her|the-engine|engine|motor|the-motor off|down? after|within|in|inside maybe|about|around|like|only|just|less-than|"
        "no-more-than|perhaps? @seconds",
        "stopped|pulled|shut|off|down over|up|off|down|it-off|it-down|engine? within|inside|in about|less-than|under? a? a|half|quarter|few|couple|@number|"
        "hundred|two|three? of? a? hundred|quarter|few? yards|metres|meters|feet|seconds|mile",
        "stopped|pulled|shut|coasted within|in|inside a? quarter|half of? a? mile",
        "hit|pressed|pulled|punched the|my? stop|kill|emergency stop|button|switch|lever|solenoid",
        "engine|motor off immediately|instantly|straight|at|right away|once",
        "stopped|shut|switched|turned|killed it|her|the|engine? engine|down|off? inside|within|in of|a? few|@seconds",
        "only|just ran|run for? a|about? few|couple|@seconds of? seconds? without|with no? oil? pressure",
        "i|we|he did|didnt not? drive|run|start|use it|her|the? engine|car|boat|tractor? any further|farther|more|again",
        "rather than risk it|her|the|anything? engine? i|we|they? shut|stopped|anchored|sailed",
        "pulled onto|over|into the|a? shoulder|side|verge|layby|lay-by|hard-shoulder and|& shut|switched|turned|stopped|killed",
        "so|and i|we stopped and anchored|drifted|sailed|called|rowed|moored|phoned|rang",
        "stopped|shut|switched it|her|him|the|engine? engine? down|off? on|to the alarm|buzzer|warning|light|lamp",
        "@not dared|dare|risked|risk to? drive|driven|driving|run|running|move|moved|moving|start|started|starting|ride|ridden|use|used",
        "@not driven|ridden|drive|driving|ride|riding|used it|her|the|my? car|van|bike|truck|pickup? since",
        "stopped|shut|switched|turned|killed|pulled it|her|engine|the|off|down|over|and engine|off|down|over? immediately|instantly|straight|at|right away|once",
        "stopped|shut|switched|turned|killed|knocked it|her|engine|the|off|down and? engine|off|down? there and? then",
        "stopped|shut|pulled|switched it|her|engine|the|over|off|down|up? engine|over|off|down? as? quick|fast|quickly|soon as he|she|i|we|they could",
        "stopped|shut|killed|switched immediately|instantly|promptly|straightaway",
        "engine? stopped|killed at once|immediately",
        "stopped|shut|switched|turned|killed off|down? within|in a|few|@seconds|seconds?",
        "i|we|he|she|driver|operator stopped|=shut|switched|turned|killed it|her|the-engine? off|down? as soon as",
        "stopped|shut|switched|turned|killed it|her|the-engine|engine off|down? again? after|in|within only|just|about|less-than? @seconds",
        "pulled|coasted|rolled into|onto|in a|the? layby|lay-by|verge|shoulder|car-park and|& switched|shut|turned|killed|stopped|cut off|it|her|engine|the",
        "driver|rider|owner|i|we|pilot|helmsman|operator|he|she =stopped|=coasted|=declutched|=pulled immediately|over|straight|promptly|off",
        "driver|rider|owner|i|we|pilot|helmsman|operator|he|she =stopped|coasted|declutched|pulled at once",
        "declutched|coasted and|to .. once|immediately|stop|coasted",
        "shut|switched off|down|it .. by the driver|rider|owner at",
        "hit|pressed|pulled|threw|flicked|went|reached|dived the|for the? kill|stop|cut-off|ignition|master|cutoff|battery switch|button|key|knob|lever|cable|switch straight|at|immediately|instantly|as|right?",
        "clutch|dipped in|down|the and|clutch ignition|engine|killed|off|switched|and off|engine|it|ignition|killed?",
        "shut|switched|turned|killed|cut the? ignition|engine|motor|it|her off|down? and coasted|rolled|glided|freewheeled|drifted|called",
        "shut|switched|closed it|her|the|engine? down|off and|& called|rang|waited|anchored|sailed|drifted|coasted|towed|got",
        "engine|ignition off straight|right|immediately|at|instantly",
        "lost oil? pressure and|so|, i|we|he|she? shut|switched|killed|turned|stopped|pulled",
        "pulled|pulling|drove|steered off|over onto|on|into|to the? infield|grass|verge|shoulder|hard-shoulder|escape-road|run-off|layby|lay-by|side",
        "shut|switched|stopped|closed|turned it|her|down|off? down|off|it|her? and|to let? it|her? stand|cool|sit|rest|cooled",
        "shut|switched|turned|knocked|killed it|her|engine|the? off|down after|within about|maybe|only|some|roughly|less-than? @seconds|seconds|a-few-seconds",
        "switched|shut|turned|killed|stopped it|her|the-engine|engine? off|down? quick|quickly|sharpish|straight|right|immediately|at-once|asap|pronto|instantly|fast|smartish away|off?",
        "engine|motor|key|ignition off immediately|instantly|straight|at|right|that away|once|second|moment?",
    ),
    "main_clearance_too_wide": (
        f"main|mains|crank|crankshaft|bearing|bearings bearing? clearance|clearances {_CLEAR}? {_CLEAR}? down? {_CLEAR}? {_IN_SPEC}",
        f"main|mains|crank|crankshaft|bearing|bearings bearing? clearance|clearances {_CLEAR}? {_CLEAR}? down? {_CLEAR}? mid-spec|in-spec",
    ),
    "rod_clearance_too_wide": (
        f"rod|rods|big-end|big-ends|crank|crankshaft|bearing|bearings bearing? clearance|clearances {_CLEAR}? {_CLEAR}? down? {_CLEAR}? {_IN_SPEC}",
        f"big end|ends clearance|clearances {_CLEAR}? {_CLEAR}? {_IN_SPEC}",
        f"rod|rods|big-end|big-ends|crank|crankshaft|bearing|bearings bearing? clearance|clearances {_CLEAR}? {_CLEAR}? down? {_CLEAR}? mid-spec|in-spec",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "journal_not_true": (
        "crank|journals|journal|crankpins|pins|shaft|throws|crankshaft + lumpy|@not_round|not_round|egg|ovality|out_of_shape|no_longer_round|ridged|ridges|pitted|worn_oval|uneven|wavy|worn_unevenly|barrel|lobes|not_parallel - pump|cam|no|gear|seal|bore",
        "throws|throw|pin|pins|journal|journals|crankpin|crankpins|mains_of_the_crank|crank + egg|eggy|egged|oval|egg-shaped|barrelled|barreled|tapered|taper|ovality|out_of_true|lobed|pear-shaped|coned|ridge|ridged|ridges|corrugated|rippled|rough|pitted|rusty|ovalled - no|not|without|cam|gudgeon|wrist|piston|bore|dowel|free|zero",
        f"{_JOURNAL} + taper|tapered|oval|sandpaper|rough|out_of_round|egg|ridged|barrelled|out_of_true|out-of-round|bell-mouthed - no|not|smooth|float|cam|lobe|bore|zero|within",
    ),
    "crank_moves_endwise": (
        "crank|crankshaft & tug|pull|push|pulled|pushed|grabbed|yank|lever|shove & play|movement|slop - no|not|pump_shaft|distributor|rod|rods",
        "crank|pulley|damper|flywheel|crankshaft + in_and_out|back_and_forth|back_and_forwards|fore_and_aft|back_and_fore|endways|endwise|lever|levered|pried|to_and_fro|backwards_and_forwards - not|@not|no",
        "crank|crankshaft|crank_pulley|pulley + see|visible|back_and_forth|in_and_out|fore_and_aft|lever|pry|shove + end_play|end_float|moves|movement|play|slides - pump|distributor",
        "pulley|crank|crankshaft|flywheel|damper + walks|moves|shifts|slides|creeps|levered|moved|pushed|pulls + clutch|endwise|end_to_end|fore|forward|forwards|to_and_fro|in_and_out|mm|thou - "
        "wobble|wobbles|side_to_side|by_hand|no|not|@not|freely|does_not|within",
        "end_float|endfloat|end_play|endplay|thrust_play + huge|big|excessive|large|lots|too_much|far_too|massive|visible|feels|wide - no|not|within|normal|cam",
        "balancer|crank_pulley|pulley|front_pulley|crank|damper|crankshaft|crank_nose|flywheel|harmonic_balancer + in_and_out|back_and_forth|fore_and_aft|forward_when|forwards_when|end_to_end|walks|endwise|endways|lengthways|back_and_forward|end_play_you_can_see|moves_forward|slides_forward|axially|jumps_forward + idle|clutch|moves|pry|lever|while|in|watch|push|press|see|walks|when|you|it|pedal|can|mm - not|no|wobble|eccentric|water|alternator|doesnt|within|cam|runout|out_of_true|spec",
    ),
    "rap_dulled_by_cut_out": (
        "rattle|knock|rap|noise|tap|knocking|rapping & plug|plug_lead|short|shorting|cylinder|injector|lead|cut|coil & quiet|goes|stops|disappears|dulls|softer|changes|fades|vanishes|quieter - no|not|sender|wire|oil_change",
        "cutting_out|cut_out|shorting|shorting_out|disabling|pulling_the_lead & number|cylinder|plug|injector & quietens|quiets|dulls|softens|kills|lessens|stops - no|not|nothing|engine_cut",
        "rap|knock|sharp_knock|hammer|tap|clack|rapping|knocking|hammering|noise|clatter|sharp_sound|double_knock + softens|reduces|dulls|quiet|quietens|silent|softer|less|goes_away|fades|muted|disappears|dies_down|stops|eases|changes|drops|vanishes|halves & lead_off|plug_lead|injector_pipe|cylinder|cyl|short_out|shorted|disconnect|killed|cut_out|crack_the_injector|plug_wire|injector|unplug_the_coil|coil_unplugged|cracked_off|pull_the_lead|shorting|one_plug|number_four|number_two|crack|loosen_the_injector|pull_a_plug - not|no_change|same|didnt|never|warm|oil|pressure|doesnt|thicker",
    ),
    "deep_knock_under_load": (
        "knock|thud|thump|rumble|knocking|thumping + low|deep|bottom|down|heavy|dull|crankcase|down_below & load|pulling|uphill|hill|accelerate|accelerating|power|throttle|climbing - no|not|never",
        "thud|thuds|bassy_clunk|clunk|deep_knock|dull_knock|heavy_knock|deep_thump|thump|thumping|boom|low_knock|dull_thud|knock|knocks|rumble|knocking|bassy|pounding|deep_rumble|heavy_thud|bumping + lugging|load|pull|pulling|trailer|climb|uphill|throttle|accelerate|under_power|pulls|open_her_up|opened_up|hill|towing|lay_into|work|digging_in|labour|labouring + crankcase|deep|low|floor|bottom|block|down|heavy|dull|bassy|crank|thud|main|mains|sump|feel - no|not|exhaust|gearbox|propshaft|diff|quiet|silent|suspension|light_tap|pinking|top_end",
    ),
    "bearings_failed_again": (
        f"second_set|third_set|fourth_set|another_set|second_crank|third_crank|another_crank|second_lot|another_lot|second_failure|second_time|third_time|again|twice|once_more + {_ANY_BRG}|set|=crank|failure - "
        "gauge|sender|cam|pump_again|opinion|test|turbo|owner|hand|filter|measured|checked|torqued|looked|put_back",
        "same_had_happened|happened_before|same_thing_happened & set|shells|bearings|mains|rods - pump|sender",
        "bearings|mains|shells|big_ends + go|went|gone|failed|fail + every_time|each_time|again - no|not",
        "new|renewed|replaced|second_set|fresh|third_set|another_set|again|same_again|twice|second_time + bearings|bearing|shells|big_ends|mains|inserts|set|rod_bearings|rods + again|lasted|destroyed|gone_again|died|went_the_same_way|failed|failed_again|forty_miles|only_lasted|knocking_again|ruined_again|same_way|gone|eaten|knocked_out|wiped|second_time|melted_again|didnt_last|spun_again - cured|fixed|water_pump|wheel|good|pressure_fine|cam|first_time|will|going|gauge|alternator|since_new|no",
        "new|fresh|renewed|second & bearings|mains|big_ends|shells|inserts|rod_bearings|rods & again_they_are|gone_again|destroyed_again|they're_gone_again|again_destroyed|gone_already|ruined_again|and_again|failed_again|done_again - fixed|cured|wheel|cam",
    ),
    "ran_on_without_pressure": (
        "drove|driven|limped|nursed|carried_on|kept_going|ran|rode|continued & home|@distance|another|miles|miles_more|back & like_that|with_the_light|light_on|lamp_on|no_pressure|zero|without|like_this|lit|regardless|anyway - towed|trailered|before|until|since_without|without_a|without_any|without_it|without_damage|recovered|no_damage|no_harm|no_distress|fine|happily|no_ill",
        "ignored|taped_over|took_no_notice + light|lamp|gauge|warning|alarm|buzzer|it",
        "continued|continue|carried_on|drove_on|flew_on|raced_on|kept_driving|kept_going|went_on|pressed_on|sailed_on|=ran_on|nursed|limped|motored_on|rode_on|kept_flying|soldiered_on & "
        "light|lamp|warning|zero|no_pressure|without|miles|minutes|laps|town|exit|alarm|driver|owner|skipper|pilot|@distance|@minutes|home|regardless|anyway|lit|red - no_damage|no_harm|running_as_if|happily|fine|sweetly|normally|"
        "pressure_normal|@not_continue|well|recovered|alarm_kept|light_kept|lamp_kept|buzzer_kept|on_and_off",
        "ignored|disregarded|overlooked|dismissed + warning|light|lamp|alarm|gauge|it|needle|buzzer - bulletin|recall",
        "run|driven|flown|ran|running|drove|flew & without_oil_pressure|without_pressure|no_oil_pressure|zero_pressure|with_the_light_on|with_the_lamp|with_the_alarm|with_the_red|with_no_pressure & minutes|miles|hours|@minutes|@distance|home|laps - cold_start|no_damage|no_harm|distress|without_harm|fine|without_damage",
        "drove|driven|=ran|=run|flew|flown|rode|used|kept|carried + like_that|like_this|anyway|regardless|back|home|another|going + week|month|miles|mile|@distance|days|home|base|pressure|light|lamp|zero|hour|hours - flat_out|full_throttle|full_load|hard|no_damage|no_harm|no_problem|fine|well|towed|trailered|ok|pressure_fine|"
        "until_the_light|motorway_run|a_run|the_run|long_run|good|before|low_on|perfect|recovered|happily|normally|came_back|comes_back|truck_home|cold|rebuilt|pressure_kept|alarm_kept|light_kept|lamp_kept|buzzer_kept|needle_kept|gauge_kept|on_and_off|cutting|shutting|tripping|stopping|flickering|dropping|stalling|dying|coming|switching",
        "drove_on|ran_on|run_on|driven_on|flew_on|rode_on|carried_on|kept_on|drove_it_on|ran_it_on + week|month|miles|mile|@distance|days|base|pressure|light|lamp|zero|hour|hours - no_damage|no_harm|no_problem|"
        "fine|well|ok|until_the_light|good|before|perfect|recovered|happily|normally|came_back|comes_back|cold|light_kept|lamp_kept|needle_kept|gauge_kept|on_and_off|coming|switching|one|three|two|cylinder|cylinders",
        "kept_the_revs_up|carried_on_regardless|carried_on_with|put_tape_over|assumed_it_was_the_sender|assumed_the_gauge|thought_it_was_the_gauge|blamed_the_sender|thought_it_was_the_sender + carried|drove|on|and|ran|so|light|sender|gauge - checked|replaced|swapped|changed",
        "kept|carried_on|drove|continued|ran_it|ran + driving|going|on|running|home|miles|anyway + no_pressure|no_oil_pressure|light_on|lamp_on|zero|with_the_light - first|trial|stopped|straight_away|immediately|towed|pulled_over|coast|shut|off|no_damage|fine",
        "drove|ran|driven|rode|run|used|flew|carried_on|kept + like_that|like_this|in_that_state|that_way|regardless|anyway + week|weeks|days|miles|hour|month|minutes|home|season|year - fine|no_problem|towed|always|been|sat|stood|trouble|reads|unchanged",
        "kept|carried_on|drove|ran|run|continued|went_on|motored|left_it_running|limped|driven|pushed_on|kept_going|ploughed_on|nursed|ignored|finished + buzzer|lamp_on|light_on|no_pressure|no_oil_pressure|warning|zero_pressure|alarm|red_light|gauge_on_zero|gauge_at_zero|without_pressure|without_oil_pressure|lamp_lit|warning_lit|with_the_light|with_the_lamp|on_zero|with_nothing_on_the_gauge|warning_light|buzzer_going - on_and_off|going_on|going_off|coming_on|kept_coming|kept_flashing|kept_sounding|kept_beeping|stopped|shut|down|didnt|not|never|off_at_once|seconds|came_on_when|ran_fine|at_idle|engine_ran_fine|flicker|no_alarm|sender|bulb|off_at|ran_dry|wire|blinking|flickering|always|where_it_should|corners",
    ),
    "bearing_clearance_too_tight": (
        "mains|rods|bearings|shells|big_ends|bearing|main + tight|tight_as|too_close|too_snug|gripping|grip|no_clearance|no_oil_gap|hard_to_turn|zero_clearance|nil_clearance + drum|plastigage|plastigauge|chart|turn|hand|clearance|book|spec|minimum|min|crank|shaft|gap - bolts|bolt|torque|torqued|not|no_play|cap_bolts|right|nuts|good",
        "clearance|gap + min|minimum + under|below|less|short|tighter|smaller|0.0|@length - oil_level|pressure|cam|valve|tappet|end|within",
        "shell|shells|bearing|bearings|mains|main|rod|rods|big_end|cap|caps|insert|inserts|gap|clearance + smaller|less|under|below|tighter|short_of|not_up_to + minimum|min|book|spec|smallest|least|limit|figure - cam|no|not|none|torque|worn|thickness",
        "mains|main|rod|rods|shell|shells|big_end|caps|bearing|bearings + pinch|pinches|squeeze|squeezes|grip|grips|nip|nips|binds|bind|drags|clamps|bite + crank|crankshaft|journal|pin|shaft|it - cam|fan|pump|seal|starter|not|no",
        "torqued|torque|tightened|nipped|bolted|did_up + cap|caps|main|mains|rod & @not_turn|locked|tight|stiff|binds|bind|solid|@not_rotate|@not_move|seized|drags - loose|cam",
        "no_room|no_space|not_enough_room|too_snug|so_snug|too_little_room|hardly_any_room + oil|bearing|rod|rods|mains|big_end|shell|shells|clearance - spanner|pump|sump|pan|bay",
        "shimmed|scraped|shim + snug|tight|hard|close|far - pump|relief|spring|valve|tappet",
        "clearance|clearances + main|rod|bearing|bearings|big_end|mains + tight|too_small|too_little|zero|nil|barely|no - not|cam|valve|pickup|over|end",
    ),
    "main_clearance_too_wide": (
        "mains|main|main_bearings|centre_main|rear_main|front_main + sloppy|loose|slack|wide|floppy|big + spec|limit|book|over|permitted|allowed|tolerance - no|not|rod|rods|end|seal|within|in_spec|tight|cap|bolt|bolts",
        "main|mains|crank_bearing|crankshaft_bearing|centre_bearing|center_bearing|middle_main|rear_main + play|slack|clearance|gap|loose|slop|thou|plastigauge|plastigage|squash_strip|room|sloppy & over_what|more_than|over_the|past_the|out_of|outside|above|beyond|exceeds|too_much|far_outside|allows|limit|max|tolerance|twice - no|not|rod|rods|big|end_float|within|inside|under|endplay",
        "cap|caps|middle_one|main & squash_strip|squash|strip|plastigauge|plastigage|plastic_thread + barely|hardly|not|still|scarcely + flattened|squashed|flat|touched|round|spread - rod|rods|big_end|cam",
        "mains|main_bearings|main_clearance|main_bearing + over_spec|over_limit|out_of_spec|over_the_limit|too_wide|too_loose|excessive|too_big|past_the_limit - rod|no|not|within",
        "mains|main_bearings|main + thou|@length|plastigauge|plastigaged|plastigage|clearance|clearances + too_much|over_spec|over_the_limit|out_of_spec|excessive|too_wide|over_limit|loose - within|in_spec|no|not|rods",
    ),
    "rod_clearance_too_wide": (
        "rod|rods|big_end|big_ends|bigend|bigends|rod_bearing|rod_bearings + gap|space|room|clearance|play|slack + bigger|more|larger|wider|greater|too_much|too_big|over|above|beyond + manual|book|allowed|allows|lets|spec|permitted|limit|should|max|maximum|makers - no|not|main|mains|side|end_float|within|just",
        "rod|rods|big_end|big_ends|bigend|bigends|big-end|big-ends|rod_bearings + play|slack|clearance|gap|loose|slop|sloppy|thou|plastigauge|plastigaged|plastigage|squash_strip|mic|floppy & over_what|more_than|over_the|past_the|out_of|outside|above|beyond|exceeds|too_much|past_spec|out_past|far_outside|allows|limit|max|most|tolerance|twice|double|permitted - no|not|main|mains|side|within|inside|end_float|just|nearly|near|passes|piston|allowed_and|as_much_as",
        "rods|rod_bearings|big_end|big_ends|rod_clearance|rod_bearing + over_spec|over_limit|out_of_spec|over_the_limit|too_wide|too_loose|excessive|too_big + clearance|clearances|rod|rods|big_end|spec - no|not|within",
    ),
    "crank_end_float_over": (
        "crank|crankshaft|pulley|flywheel + forward|back|fore|in_and_out|float|endwise|shifts|end + too_much|limit|beyond|excessive|over|twice|far|out_of_spec|past|more_than|double - no|not|within|clock_in|fine|wobble",
        "crank|crankshaft|shaft|pulley|flywheel|damper + fore_and_aft|endwise|end_to_end|back_and_forth|in_and_out|endplay|end_play|end_float|endfloat|walks|thrust|lengthways|slides & twice|past|over|way_past|more_than|exceeds|outside|limit|too_much|beyond|double|above|a_lot_more|out_of_spec - no|not|within|inside|fine|under|rod|cam",
        "thrust|thrusts|thrust_washers|thrust_bearing + worn|gone|thin|shot & thou|mm|fore|aft|play|float|movement & limit|spec|book|twice|over|too|double - no|not|within|clutch",
    ),
    "clearances_at_limit": (
        "bearings|clearances|clearance|rods|mains|big_ends|rod_clearances + loose|slack|wide|top|edge|limit|range|borderline|marginal|worn + just_inside|only_just|right_at|right_on|edge|top_of_the|barely_inside|still_inside|borderline|marginal|just_within|hanging_on|inside_what - over|past|out_of|beyond|exceed|valve|cam|tight",
        "clearance|clearances|gap|mains|rods|big_ends|big-ends|bearing|bearings|slack|bigends|main|they're|theyre + nearly|just|a_hair|barely|right_at|close_to|right_on|on_the|almost|edge|near|passes|at_the|hair_within|as_much_as + maximum|limit|max|permitted|wear_figure|wear_limit|tolerance|top|allows|allowed|service_limit|just|spec - over|out_of|past|under_minimum|minimum|oil_level|dipstick|valve|cam|exceeds|more_than|cracked|torque",
    ),
    "auxiliary_shaft_bearings_worn": (
        "jackshaft|jack_shaft|auxiliary|aux_shaft|side_shaft|intermediate_shaft|countershaft|half-speed|help_shaft|little_shaft|extra_shaft|second_shaft|secondary_shaft|distributor_shaft_bushes|extra_little_shaft + bush|bushes|bearing|bearings|sleeves|bushing|bushings + worn|turned|gone|slop|wobbly|shot|finished|loose|play|chewed|knackered|scored|spun|wiped|ruined|flops|sloppy|oval|rattles|had_it - no|not|sound|fine|gearbox|propshaft|transmission|good|driveshaft|clutch",
    ),
    "balance_shaft_bearings_worn": (
        "balance_shaft|balancer_shaft|balance_shafts|balancer_shafts|balancer|balancers|counterweight_shaft|silent_shaft|counterbalance + bush|bushes|bearing|bearings|sleeves|bushings|shaft|shafts|holes + worn|turned|gone|slop|wobbly|wobble|shot|finished|loose|play|chewed|knackered|scored|spun|wiped|ruined|flops|sloppy|rattles|rattle|had_it|shake - no|not|sound|fine|harmonic|good|chain|timed|belt|spins_free",
    ),
    "idler_gear_bush_worn": (
        "idler|idler_gear|timing_idler|middle_gear|in-between_gear|intermediate_gear|middle_timing_gear|idler_hub|centre_gear + rock|rocks|rocked|wobbles|wobble|tilt|tilts|play|slop|shake|shakes|sloppy|loose|worn|wallowed|oval|flops|shot|gone|knackered|worn_out - no|not|belt|fan|sound|fine|tensioner|pulley|teeth|like_new|fuel|alternator",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "ran_on_without_pressure": (
        "shut|switched|stopped|killed|turned_it_off|turned_off|shut_off|shut_down + moment|straight|immediately|instantly|at_once|as_soon|the_second|right_away|promptly|the_instant|within_seconds|within_a_minute|within_thirty - to_the_second|by_itself|itself|shuts|i_put|on_load|loaded|under_load|pto|cured|noise|light_went|fine_until|before|the_flicker|never|alarm_stopped",
        "coasted|pulled_over_and_shut|killed_it + side|stop|shoulder|immediately|engine_off|in_neutral|hard_shoulder|verge|and",
        "stopped|shut|switched|killed|cut|pulled|declutched|turned|stop + at_once|straight_away|immediately|right_away|instantly|within_seconds|the_stop|ignition|before_damage|before_any_damage|in_seconds|without_delay|engine_off|promptly|at_the_side|as_soon - =pulls|i_put|on_load|loaded|under_load|pto|itself|by_itself|itself|of_its_own|solenoid|noise|light|leak|"
        "lamp_went|came|restarted|ignition_switch|seized|bolt|knocking|fuse|then_immediately_lost|wire|off_the_sender|hole|dead|pressure_stopped|cranked|cranking|crank",
        f"{_STOPPED_IT} & no_pressure|no_oil_pressure|zero_pressure|no_reading|nothing_on_the_gauge|no_oil_psi - itself|when|until|before|once|if|every|later|eventually|"
        "finally|home|miles|lunch|night|cured|would_not|never|next_start|restart",
        f"{_STOPPED_IT} & alarm|light|lamp|buzzer|beeper|gauge|pressure|needle|warning - itself|when|until|before|after|once|if|every|later|eventually|finally|home|noise|miles|lunch|night|cured|to_check|fuel|alarm_shut|switch_shut|protection|controller|trip|would_not|never|restarted_and",
        "stopped|shut_off|switched_off|shut_down|turned_off|pulled_up & trailered|towed_home|pulled_over|called_for_a_tow|got_a_tow|called_the_recovery|coasted & pressure|light|lamp|alarm|gauge|buzzer|i|we - until|miles|by_itself|itself|drove_on|later|before|not|never",
        f"{_SO_STOPPED} - itself|when|until|before|after|once|if|every|later|eventually|noise|lunch|night|fuel|temp|temperature|hot|water",
        "turned|shut|switched|killed|stopped|pulled|cut|knocked + her_down|it_off|it_down|the_key|the_engine|engine|it + right_then|quick|as_soon|when_i_saw|the_moment|there_and_then|immediately|straight|at_once|the_second|instantly|on_the_spot|within - to_the_second|noise|light_off|lamp|by_itself|itself|never|before_it_could|pump",
    ),
    "bearing_knock": (
        "bottom_end|bottom-end|big_ends|mains + quiet|silent|no_noise|sounds_fine|sounds_good|no_knock - not|top",
    ),
    "crank_moves_endwise": (
        "crank|crankshaft|end_float|pulley + no_end_float|no_float|no_end_play|within_spec|within_limits|@not_move|in_spec|no_movement|no_play - turbo|shaft_play|camshaft|pump",
        "crank_pulley|balancer|pulley|crank + doesnt_move|dont_move|no_movement|no_in_and_out|stays_put|solid_endways|does_not_move|no_endwise + in|end|pry|lever|clutch|forward|movement|back",
    ),
    "rod_clearance_too_wide": (
        "rods|rod_bearings|big_end|big_ends|big-ends|bigends + plastigauge|plastigage|clearance|clearances|measured|gap|play|squash_strip|mic + inside|within|in_limits|in_spec|under_the_limit|to_spec|in_tolerance|spot_on|bang_on|in_book - not|outside|one|but|except|main|never|near|just|barely|nearly|edge|top|hasnt",
        "crank|crankshaft|bearing|bearings + clearances|clearance & mid-spec|within_book|within_spec|within_limits|in_spec|in_limits|to_spec|in_tolerance|within_tolerance|inside_limits - not|no|main|mains|cam|pump|thrust|wide|out|over|top|beyond|just|barely",
    ),
    "main_clearance_too_wide": (
        "main|mains + plastigauge|plastigage|clearance|clearances|measured|gap|play|squash_strip|mic + inside|within|in_limits|in_spec|under_the_limit|to_spec|in_tolerance|inside_the_book|spot_on|bang_on|as_the_book|good|fine|in_book - not|outside|one|but|except|rod|never|near|just|barely|nearly|edge|top|hasnt",
    ),
    "bearing_clearance_too_tight": (
        "none|no|nothing|neither|not_one|nowhere + main|mains|rods|bearing|bearings|big_ends|clearance & under|below|tight|smaller|less_than|tighter + minimum|min|spec|book|limit - pressure|oil_level",
    ),
    "crank_end_float_over": (
        "fore_and_aft|end_float|endfloat|endplay|end_play|endwise|back_and_forth|thrust_clearance & clock|dial|thou|mm|gauge|measured|checked|feeler|indicator|spec & fine|good|within|in_spec|ok|okay|inside|normal|spot_on|acceptable|under_the_limit|in_limits|to_spec|nothing_wrong - not|over|cam|too|out_of|past|rod",
    ),
    "bearings_failed_again": (
        "first|never|no + set_of_bearings|bearing_ever|bearings_before|bearing_failed_before|bearing_trouble_before|bearing_failure_before|bearings_since_new - again|but",
    ),
    "deep_knock_under_load": (
        "no|never|not_a + deep_knock|thud|heavy_knock|dull_knock|thump|clunk + load|pulling|pull|hill|towing|uphill",
    ),
    "rap_dulled_by_cut_out": (
        "rap|knock|noise|tap + same|no_change|unchanged|doesnt_change|makes_no_difference|no_different & lead_off|plug_lead|each_cylinder|injector|shorting|cylinder_cut|cylinder_killed|cylinder_dropped - filter|pressure",
    ),
}
