"""Words for what pressure does with speed, heat and load, where they name a finding."""

from __future__ import annotations

_GAUGE = "gauge|gage|guage|needle|pointer"
_LAMP = "light|lamp|buzzer|alarm|warning"
_NOTHING_OR_LOW = "zero|low|nothing|dead|0"
_GOOD = (
    "ok|fine|good|normal|healthy|correct|right|spec|specification|perfect|proper|plenty|adequate"
)
_DEAD = "dead|died|erratic|erratically|crazy|wrong|quit|zero|failed|haywire|jumping|berserk|out|stopped|dimming|dim|wild|fail|swing|swinging"
_OTHERS = "other|all|fuel|temp|temperature|water|amp|volt|speedo|speedometer|both|every|electrical|rest|several"
_METERS = "gauge|gauges|instruments|dials|needles|meters|clocks|instrument|speedometer|speedo|windows|indicators"
_FINE = (
    "fine|well|great|perfect|perfectly|smooth|smoothly|normal|normally|sweet|sweetly|quiet|quietly|strong|strongly|lovely|"
    "healthy|beautifully|nicely|nice|superbly|faultlessly|flawlessly|ok|okay|happily|good"
)
_HOW = "and|perfectly|really|absolutely|as|just|otherwise|very|quite|so|seemed|seems|was|is|still|seemingly|nice|all|always|runs|ran"
_METER = "temp|temperature|fuel|water|volts|voltmeter|speedo|speedometer|tach|tacho|amps"
_ANY_LAMP = "light|lamp|bulb|buzzer|alarm|warning"
_SEEN = "warning|light|lamp|alarm|buzzer"
_IT = "engine|motor|it|she|car|boat|truck|tractor|bike|thing"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "declined_over_months": (
        "loses|lost|losing|drops|dropped|down a|another|few|two|couple|five? few|couple|pound|bit|little|psi|or|of|two? pounds|psi|pound|lbs|bit|bar|little|more every|each|a season|year|summer|winter|month",
    ),
    "second_instrument_disagrees": (
        f"{_LAMP} works|behaves|goes|comes|operates =off|=out|=normally|=normal|=properly|=correctly|=right|=fine|=perfectly .. ,|but|and|while|yet? the|my? oil? pressure? gauge|needle reads|stays|shows|is|sits|at|on|stuck at|on? zero|0|nothing|nil|dead",
        f"{_NOTHING_OR_LOW} .. {_GAUGE} but|and|yet|while .. {_LAMP} is|stays|stayed|remains|firmly? off|out",
        f"{_LAMP} is|stays|stayed|remains|was|firmly|still? firmly? =off|=out|=dark|=unlit .. gauge .. {_NOTHING_OR_LOW}",
        f"{_GAUGE} .. {_NOTHING_OR_LOW} but|yet|and|while|however .. {_LAMP} @not|is|stays|never off|on|out|come|came|lit",
        f"{_GAUGE} .. {_GOOD} but|yet|and|while|though .. {_LAMP} is|stays|comes|came|was|still? on|lit|flickers|flashing",
        f"no {_LAMP} but|though|and|yet .. {_GAUGE}",
        f"{_LAMP} .. =but .. {_GAUGE} .. {_GOOD}|@pressure",
        "gauges|instruments|two disagree|differ|contradict|disagreed",
        "one gauge .. other .. good|normal|fine|zero|nothing|nearly",
        f"upper|one|flybridge|lower {_GAUGE} .. zero|low|nothing|falls .. other|lower|second normal|fine|good|one",
        f"{_LAMP} hardly|rarely|never ever? lit|on|came",
        f"{_LAMP} off|out while|when|although|with .. gauge",
        "light|lamp|alarm|buzzer|warning .. but|yet|though|although|while|even|however .. gauge|gage|needle|dash|pressure .. never|@not below|under|dropped|drops|drop|falls|fell|fall|moved|moves|less",
        "light|lamp|alarm|buzzer|warning .. but|yet|though|although|while|even|however .. gauge|gage|needle|dash|pressure .. @range|@pressure",
        "gauge|gage|needle|dash|pressure .. zero|nothing|low|bottom|0 but|yet|and|though|while|however the|low|oil|red|pressure|warning? light|lamp|alarm|buzzer never|@not|is|stayed come|came|on|lit|sounded|out|off",
        "two|both gauges|instruments|stations|readings @not agree|match|same|tally",
        "upper|lower|top|bottom|upstairs|downstairs|inside|outside|helm|flybridge|bridge|one|first helm|station|gauge? .. @pressure|@number|@range .. flybridge|upper|lower|downstairs|upstairs|bridge|cockpit|wheelhouse|other|second .. @number|@pressure|@range",
    ),
    "other_gauges_also_wrong": (
        "every|each needle|gauge|dial|instrument on|in? the? panel|dash|board|cluster? dropped|fell|died|went|swung|jumped|read|reads",
        "fuel|temp|temperature|rev|tach|tacho|volt|voltmeter|speedo gauge|counter|needle? and oil|pressure gauge|needle? both|all reading|read|reads|went|died|dropped|stopped|full|zero|maximum",
        "voltmeter|rev|tacho|tachometer|temperature|temp|fuel|speedo counter|gauge|needle? died|stopped|quit|went|dropped haywire|dead|mad|crazy? as|too|also well?",
        f"{_OTHERS} of|the|dash|other|my|electrical|engine? of|the|dash|other|engine? {_METERS} .. {_DEAD}",
        f"{_OTHERS} of|the|dash|other|engine? {_METERS} also|too|as|alike|affected",
        f"{_OTHERS} gauge|gauges|needle|readings|instruments jumps|jump|move|moved|do|does|did as|too|also|the",
        f"gauges|instruments all|both .. {_DEAD}",
        f"{_METERS} {_DEAD} .. at the same time",
        f"{_DEAD} =at =the =same =time",
        "all of? the? gauges|instruments|dials did|do|went|go|dropped|drop|dead|same|low|act|acting|play|playing|affected|jump|too",
        "electrical failure|problem|problems|fault|trouble",
        "dead speedometer|speedo|fuel|temp|temperature|tach|ammeter|voltmeter",
        "lost all .. gauges|instruments",
        "other readings move|jump|too",
        "all|every|both|other of|the|my|dash? gauges|instruments|needles|dials|clocks all? jump|jumps|jumped|bounce|bounces|twitch|drop|dropped|drops|move|moved|flick|dance|dip",
        "every|each gauge|instrument|dial|needle on|in the? dash|panel|car|boat|cluster|binnacle .. up|dead|crazy|mad|wrong|out|haywire",
        "speedo|speedometer|tach|tacho|temp|temperature|fuel|ammeter|voltmeter , .. .. all|both dead|out|quit|gone|zilch|wrong|zero",
        "temp|temperature|fuel|water gauge? and|& the? oil pressure? gauge? both|all|each",
        "temp|temperature|fuel|water|volt|amp gauge beside|next|alongside it|to|the? .. @not|dead|nothing",
        "temp|temperature|fuel|tach|tacho|rev gauge|counter? @not read|work|move|register|works|reads|working at? all?",
        "temp|temperature|water-temp|fuel|volt|tach|tacho|amp|boost gauge|needle? also|too? waves|jumps|moves|swings|flickers|drops|wavers|twitches|dances|wanders|follows with|along-with|in-sympathy|in-step|together it|oil|the?",
        "also|and .. temp|temperature|fuel|volt|tach|tacho gauge|needle? does the? same",
        f"so do|does|did|are|is the? {_METER}",
        f"the? same with|for|goes the? {_METER}",
        f"{_METER} and|& {_METER} as well|too|also|likewise",
    ),
    "needle_steps_at_once": (
        f"{_GAUGE}|reading|pressure jumps|jumped|steps|flips|switches|snaps|leaps|swings .. at once|instantly|from|to|between|full|straight",
        f"{_GAUGE}|reading .. either @pressure|@number or zero|@pressure|@number",
        "either @pressure|@number or zero|nothing|@pressure",
        f"{_GAUGE} going|goes|jumping|is? crazy|wild|wildly|haywire|berserk|mad|nuts",
    ),
    "needle_follows_loads": (
        f"{_GAUGE} moves|jumps|follows|changes|drops|swings|dips|twitches .. lights|headlights|indicators|wipers|heater|horn|brake-light|brake-lights|blinkers|switch|fan",
        f"lights|headlights|indicators|wipers|heater|horn|blinkers|switch on|off|turned|makes|make .. {_GAUGE} moves|jumps|move|jump|drops|drop|swing|swings",
        "needle|gauge|it|reading moves|jumps|dips|twitches|flicks|drops|changes|rises|goes up|down|every|each|time|about|when|with|if|as .. lights|headlights|wipers|indicators|indicator|heater|fan|blower|horn|brake-light|brake-lights|lamps|radio|switch",
        "lights|headlights|wipers|indicators|heater|fan|blower|horn moves|move|makes|make|changes|affect|affects .. needle|gauge|reading",
        "needle|gauge moves|jumps|dips|twitches|flicks|drops|changes|rises|goes up|down? when|if|as|whenever|with i|you|we|the turn|switch|put|turning? on? the? lights|headlights|headlamps|wipers|indicators|heater|fan|blower|radio",
        "when|with|if|as|whenever|once|every-time .. headlamps|headlights|=lights|wipers|heater|fan|blower|indicators|radio on? the|my|its? oil? pressure? needle|gauge|reading|pressure moves|drops|drop|jumps|swings|falls|rises|dips|kicks|changes|flicks|goes|twitches",
        "alarm|lamp|light|gauge|needle|fault|reading .. only when|while|with|if the? .. charger|inverter|radio|heater|lights|compressor|thruster|pump is|runs|running|on|starts",
        "=lights|headlights|fridge|wipers|heater|fan|blower|radio|lamps switched? off .. gauge|needle|pressure|reading reads|is|goes|comes|shows|back .. up|higher|normal|right|fine|correct|usual",
    ),
    "engine_runs_normally": (
        f"=runs|=running|=ran|=sounds|=drives|=starts|=idles|=sounded|=drove|=run|=pulls|=pulled|=sounding {_HOW}? {_HOW}? {_FINE}",
        f"engine|motor {_HOW}|sounds|runs|running|ran|sounded? {_HOW}? {_FINE} throughout|otherwise?",
        "engine|motor otherwise|otherwise? normal|fine|smooth",
        "it is|was|runs? =otherwise normal|fine|smooth|ok|good",
        "no|without strange|odd|funny|weird|unusual|abnormal|bad|other|any|mechanical|untoward|nasty|horrible|extra|engine|loud? noise|noises|sounds|sound",
        "sounds|runs|running|ran|sounded|starts|drives and|just? just? as|like|the? always|ever|usual|before|same|new|well|normal|normally",
        "sounds|sounded|still sounds|sweet sweet",
        "ran|runs|running without complaint|problem|problems|trouble|distress|issue|issues|fault",
        "seemed|seems|seem otherwise|perfectly|absolutely? fine|ok|normal otherwise|in|apart?",
        "no change|difference in|to the? sound|running|note",
        "oil|propeller|engine temperature|speed|power and power|temperature|speed normal|steady",
        "runs|ran|running like a charm|dream|champ|clock|train|top",
        "engine|running noise|noises|sound|sounds ,|and|&|/ temperature|temp|temperatures|vibration all|both? normal|ok|okay|fine|good",
        "turns|turning|revs|runs|spins over? freely|sweetly|nicely and|& quiet|quietly|smooth|smoothly|sweetly|well",
        "quiet|sweet|smooth|healthy|good as ever|always|it ever|always was|has|is|did?",
        "@not a|one? rattle|noise|sound|tick|knock or|nor a? rattle|noise|tick|knock",
    ),
    "sank_while_running": (
        "pressure|gauge|needle kept|keeps|continued to? falling|dropping|sinking|fall|drop|sink",
        "pressure|gauge|needle fell|sank|slid|dropped slowly|steadily|gradually during|in|over|while|through",
        "low and falling|dropping|sinking",
        "slid|sank|sagged|slipped from|down from? @pressure to|from",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "engine_runs_normally": (
        "runs|ran|running|sounds|sounded|idles very|really|pretty|a|bit? rough|roughly|badly|terrible|horrible|awful|lumpy|poorly|sick",
        "never|@not sounded|sound|sounds|ran|run|runs right|good|healthy|happy|normal|normally|well",
        "hammered|hammering|clattered loudly|badly|violently|horribly",
        "horrible|terrible|awful|dreadful|nasty|hell noise|noises|racket|clatter",
        "lots|loads of noise|noises",
        "loud|strange|awful|terrible|nasty|funny|odd|heavy|metallic|horrible|weird|bad|dreadful noise|noises|racket|clatter|clattering|banging",
        "very|extremely|really|so|pretty noisy|rough",
        "engine|motor is|was|became|went|got|getting|very|really|a|bit|began|started|to? very|really|a|bit? noisy|rough|sluggish|vibrating|shaking|misfiring|missing|failing|stuttering",
        "engine|motor noise|vibration|roughness|failed|failure|seizure",
        "runs|running|ran|began|started very|really|pretty|running|to? run|running? rough|roughly|badly",
        "began|started|and knocking|vibrating|shaking and|, vibrating|knocking|shaking|banging",
        "vibrating|vibration|shuddering badly|heavily|violently|and|then|through",
    ),
    "lamp_comes_on": (
        "lamp|light|warning|alarm|buzzer stays|stayed|remains|remained|firmly? firmly? =off|=out|=unlit|=dark",
        "no oil|warning|low-pressure|red|oil-pressure pressure? lamp|light|warning|alarm|buzzer seen|lit|on|ever|came",
        "lamp|light|warning|alarm|buzzer =not =lit",
        "lamp|light|warning separate|works|tested|ok|proves|working and? works? and stays|stayed =out|=off|=dark",
        "alarm|buzzer|beeper|siren =never|=not|=didnt|=doesnt|=wont ever? =went|=go|=goes =off",
        "lamp|light|warning|alarm|buzzer =never|=not|=doesnt =came|=come|=comes|=sounded|=sound|=sounds|=lit|=showed|=shows =on|=up?",
        "alarm|buzzer|beeper|siren|lamp|light|warning|it has|is|was|stayed|stays|been|remained|remains|kept stayed? =silent|=quiet|=dark|=unlit",
        "lamp|light|warning|alarm|buzzer =didnt =come|=light|=sound|=illuminate on|up?",
    ),
    "other_gauges_also_wrong": (
        "all|every|both of? the|my? gauges|gauge|instruments|dials|needles|readings is|are|was|were|read|reading|looked|showed|stayed|normal|all? in|where|fine|normal|ok|good|green|right|clear|steady",
        "other|rest|fuel|temp|temperature of? the? gauges|instruments|lamps|lights|dials is|are|all|were|read|work? fine|normal|ok|work|good|working|normally|light",
        "other|rest|fuel|temp|temperature|remaining of? the? gauges|gauge|instruments|dials all|both|still|seem|work|to|read|are|is? all|work|read|perfectly|working|still? fine|normal|normally|ok|correctly|right|good|properly|steady|constant",
        "no|none other|of gauge|gauges|instrument|instruments|the|others|other? .. out|wrong|affected|line|odd|affected",
        "other gauges|instruments @not affected|bothered|move|jump|twitch|change",
    ),
    "second_instrument_disagrees": (
        "both|two|the gauges agree|match|tally",
        "both|two gauges say|show|read|give|are exactly? the? same|alike",
        "lamp|light and gauge|needle agree|match|tally",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "needle_follows_loads": (
        "electrical_load|headlights|headlamps|lights|wipers|heater_fan|heater|indicators|blinkers|blower|pothole|potholes|bumps|bump|horn|fan|radio|indicator|brake_lights|switch_on|put_light_on|rear_screen|fridge|bilge_pump|high_beam|winch & needle|hand|gauge|reading|indication|pointer|dial|it_dips|number & alters|shifts|shift|moves|changes|bobs|jumps|dips|twitches|drops|goes_other|kicks|swings|hops|flicks|other_place|bounces|sways|bob|reacts|different|responds - twitches|every_time|no_notice|not|no|never|ignores|oil_light|warning|at_the_lights|traffic|idle|clutch|fan_belt|engine_speed|brake_fade|hot|revs|temp_gauge|fan_clutch|tap|corner|bend|all_gauges",
        "switch_off|turn_off|switched_off|turned_off|off_the|turning_off|switching_off + lights|headlights|fridge|wipers|heater|blower|radio|inverter|autopilot & normal|back_to_normal|goes_up|go_up|comes_up|come_up|back_up|reads_right|reads_normal|come_right|comes_right|recovers|normal_again - engine|ignition|key|parked|stopped|locked|home",
    ),
    "second_instrument_disagrees": (
        "gauge|needle|dial & zero|nothing|low|bottom|empty|dead|nil & light|lamp|warning|telltale|idiot_light & peachy|fine|ok|okay|happy|out|off|nothing_wrong|good|never_lit|all_well|says_no - key|mechanical|test|both|flickers|comes_on|came_on|went_out_and",
        "two|both|gauges|gauge|dial|clock|light|lamp|one|instruments|dashboard_clock|needle|red_light & same_number|same_figure|one_story|different_stories|agree|says_it_isnt|says_it_isn't|another|different_numbers|contradict|contradicts|match|at_odds|differently|tally|says_otherwise|opposite|argue|conflict|dont_tell|different_things|disagree & light|lamp|two|gauges|other|second|one|both|another|don't|different|instruments - no|agrees|both_agree|tells_the_same|engine_port|ports|tapping|tappings|holes|miles|port|same_to|bank|cylinder|sensors_swapped|filter|cooler|hose|spring",
        f"gauge + zero|0|nothing|low|bottom & {_ANY_LAMP} & out_as|goes_out|went_out|is_out|stays_out|stays_off|off|@not_on|@not_lit|never_came|@not_come - key",
        f"{_SEEN} & @not_light|@not_lit|@not_come|no_light|no_lamp|no_buzzer|no_alarm|no_warning|no_oil_light|out|off|never & gauge|needle & zero|nothing|0|bottom|low - key|ignition|noise|filter|alarmed",
        f"{_SEEN} & on|lit|came|stays & gauge|needle & normal|fine|good|steady|ok|40|50|healthy - key|engine_off|soon|then|and_now|until|before|lights_on|headlight|other|works|back_to|returned",
        "one|upper|lower|cockpit|flybridge|first|second|port_side|helm|station|panel & gauge|gauges|one|set & zero|low|nothing & other|second|upper|lower|test_set|test_gauge|one & normal|fine|good|ok|right|correct - plug|ports|cylinder|valve|bank|"
        "front_gauge|test|sender",
        "mechanical|test|direct|second|other & gauge & dash|panel|electric|light|lamp & @not_agree|disagree|differ|different_story|contradict|@not_match|nothing_like",
        "light|lamp & gauge|needle & says_no|says_otherwise|says_one_thing|different_story|contradict|disagree|@not_agree|while_the_warning|but_the_light|but_the_lamp|but_light|yet_the_light|though_the_light|but_the_gauge|but_gauge|yet_the_gauge - key",
        "two|both|three|different|second|other + gauge|gauges|instruments|sensors + different|disagree|two_different|conflicting|opposite|@not_agree - both_say|both_read|both_show|both_reading|agree|all_say|all_read|on_two|with_two|by_two|so_its|real|confirmed|sender|port|engine|location|same",
        "gauge & mechanical|test|other|second|light|lamp & @not_agree|dont_agree|disagree|contradict|different|miles_apart - sender_to|new|both|same|also",
    ),
    "other_gauges_also_wrong": (
        "temp|temperature|fuel|volts|voltmeter|tacho|speedo|ammeter|rev_counter|other_gauges|other_dials|headlights|whole_dash|all_the_dials|whole_cluster|radio|every_dial + dropped_out|lost|died|dead|went|gone|quit|jumped|dimmed|packed_up|failed|haywire|stopped|fell|cut_out|dark|blank|wrong|crazy + with_it|too|simultaneously|same_time|as_well|together|at_once|all|also|same_moment|same_instant|along_with|in_sympathy - ok|fine|no|not|normal|right|still_read|unaffected|level|hot|high_temperature|oil_temperature|fuel_pump|smell|leak|still",
        "=other|=all|=every|=rest|temp_gauge|fuel_gauge|temperature_gauge + =gauges|dials|instruments|clocks|too|also|as_well + dead|died|wrong|haywire|too|also|same_time|at_once|dropped|quit - test|mechanical|fine|normal|read|ok|good|work|working",
        "=gauges|=clocks|=instruments|=dials|every_gauge|fuel_gauge|temp_gauge|temperature_gauge + temp|temperature|fuel|every|all|dash|reading|speedo|volt|voltmeter|amps + haywire|creek|crazy|wrong|dead|died|funny|duff|nuts|quit - fine|ok|normal|steady|works|working|oil_temp_gauge",
        "temp|temperature|fuel|amps|volts|speedo|all_the_gauges|other_gauges|every_gauge + gauge|gauges|needle|needles|as_well + died|dead|zero|stopped|quit|failed|wild|pegged|same_time|at_once|together|too - ok|fine|no|not|normal|work|works|operating|up_to|off_the_peg|the_peg",
    ),
    "engine_runs_normally": (
        "she|it|engine|motor|tractor|boat|car|thing|truck|van|bike + goes|pulls|runs|sounds|drives|ran|works + as_well_as_ever|just_like_it_always|like_it_always|as_ever|same_as_ever|same_as_always|as_it_always|like_always|as_it_ever|no_differently|sweet_as_ever|as_before|just_as_it_did|as_strong_as|as_good_as_ever|perfectly_happy|like_new|happy_as_larry - not|doesnt|never|until|but_now|used|pump|needle|then|smoke|gauge_reads",
        "engine|motor|sound|note|runs|ran|running|sounded|sounds|drives|drove|pulls|behaves|performs|performed + normal|normally|sweetly|sweet|like_a_watch|"
        "like_a_sewing|perfectly|as_usual|as_always|as_it_should|without_any_complaint|without_complaint|happy|happily|smooth|smoothly|healthy|well|strong|"
        "strongly|its_usual_self|its_old_self|unchanged|as_before|beautifully|as_if_nothing|faultlessly - until|till|before|then|temperature|pressure|gauge|reads|@not|idle_speed|"
        "hours|hour|cold_running|rough|light|lamp|oil|never|to_full|when_cold|but|level|turbo|very_well_used|pump|as_well|worn|well_used|sender|switch|well_before|noise|except|"
        "wiring|well_past|slow|months|weeks|@distance|@time|days|starts|start|knock|tick|rattle|while|once",
        "nothing|no_change|no_difference + unusual|odd|wrong|change|different|difference + sound|sounds|heard|way_it_ran|running|hear|way_it_runs|noise - "
        "gauge|pump|found|level|oil",
        "no|without|@not_any|not_any + loss_of_performance|odd_noise|odd_noises|unusual_noise|unusual_noises|strange_noise|strange_noises|abnormal_noise|"
        "abnormal_noises|funny_noises|untoward_noise|untoward_noises|vibration_or_noise|noise_or_vibration|bad_noises|mechanical_noise|noises_at_all - yet",
        "never|@not + missed_a_beat|miss_a_beat|missed_a_stroke|put_a_foot_wrong",
        "quiet_as_a_mouse|quiet_as_ever|sweet_as_a_nut|like_a_swiss_watch|without_any_complaint|no_change_in_the_way|never_sounded_better",
        f"{_IT} + purrs|purring|runs_great|runs_lovely|runs_fine|runs_well|running_fine|ran_fine_throughout|sounds_fine|sounds_good|sounds_great|sounds_lovely|sounds_okay|sounds_no_different|drives_fine|drives_great|"
        "as_it_always_did|like_it_always_did|sounds_the_same|sounds_as_before|like_a_top|like_a_dream|like_new|happy_as|starts_and_runs|never_sounded|@not_skip|no_different|as_ever|like_silk|as_smooth_as - "
        "until|till|before|then|gauge|pressure|needle|light|sender|bearing|shells|journal|moves|slid|looks|pump|stick|rotor|reads|used_to",
        "everything|all + sounds_right|sounds_good|sounds_well|sounds_fine|sounds_normal|running_well|runs_well|seems_happy|sounds_healthy - until|then",
        "no|not_a + misfire|misfires|bad_noises|funny_noise|strange_sounds|strange_sound|odd_sounds|nasty_noises|weird_noises|weird_noise|clatters_or_knocks|unusual_sound|unusual_sounds - not_yet|until",
        "goes|pulls|runs|running|drives|engine|sounds|it|ran + like_a_train|better_than_ever|like_a_champ|like_new|like_a_watch|beautifully|a_treat|sweet|faultlessly|no_complaints|smooth_as + train|ever|it|champ|well|along|perfectly|silk|engine|treat|otherwise|still|nut|champ|new|watch - until|pump|gauge|used_to|before|then|lifters|needle|reads|pressure|light",
        "purrs|purring|hums|ticks_over_sweetly|runs_mint|sweet_as|smooth_as|like_a_kitten|like_clockwork + kitten|like|nicely|along|nut|it|engine|silk|perfectly|clockwork - used|until|gauge|lifters|tappets|pump",
    ),
    "needle_steps_at_once": (
        "indication|needle|gauge|reading|pointer|hand + steps|jumps|flicks|snaps|hops|flips|leaps + no_lag|light_switch|no_time|one_number|another_number|another_mark|one_figure|without_delay|no_delay|at_once|one_position|instant - past|highest|lights|bumps|wipers|headlights|indicators|load|not|never|rev|road|tap|dash",
        "snaps|snap|leaps|leap|jumps|jump|flips|flip|springs|spring|flicks|hops|skips|teleports|steps|switches|jerks + figure|number|value|from_number|one_figure|position|@number|reading|mark|from_60 + another|instantly|no_travel|zero_time|nothing_between|in_between|no_time|at_once|instant|back|snap|without_passing|like_a_switch|no_lag|blink - road|bump|bumps|lights|wipers|hot_spring|relief|broken|valve|gear|not|never|no_jump|seat|smoothly|teeth|tap",
        "needle|pointer|gauge|hand|reading|it + snaps|leaps|jumps|flips|springs|flicks|hops + instantly|no_travel|zero_time|nothing_between|no_time|instant|in_no_time|without_passing|no_between - bumps|road|lights|wipers|not|never|smoothly|tap|throttle|right_away|follow|follows",
        "gauge|needle|reading|jumps|flicks|snaps|switches|leaps|flips|pointer|it + jumps|flicks|snaps|leaps|flips|jumped|flicked|steps|switches + instantly|at_once|full_scale|and_back|one_value|in_an_instant|no_in_between|suddenly_between|back_again|in_one_go - "
        "over|load|bumps|lights|headlights|wipers|plug|throttle|smoothly|dash_switch|electrical",
        "jumps|flicks|snaps|leaps|flips|switches|steps + instantly|at_once|full_scale|from_one_value|from_zero|and_back|in_one_go - over|load|bumps|lights|headlights|wipers|plug|throttle|smoothly|when|dash|warm|revs|tugging|slowly",
        "jumps|jumped|goes|flicks|went|leaps|snaps|flips + straight|blink|instantly|nothing_in_between|instant|snap|bang + zero|0|full|nothing|80|60|max|scale - drill|primed|priming|fired|bumps|switch|road|then_slowly|revs|stays|engine|first_start|start_up|suddenly_dropped|pressure_went",
        "needle|gauge|it|reading|goes|snaps|jumps + full_to_nothing|nothing_to_full|0_and|zero_and|between|full_scale|and_back + blink|snaps|instantly|instant|flash|snap|bang|split_second|jumps - over_bumps|corners|idle|slowly|bounces",
    ),
    "declined_over_months": (
        "years|months|two_years|ten_years|seasons|winters|over_time|year|@years|@months|season|few_years|decade|since_i_bought|when_i_bought|the_years|summers|@longtime & become_less|less|down_to|step_by_step|lower|crept_down|little_by_little|dwindled|drifted_down|faded|slipped|slowly_dropped|gone_from|gradually|fallen|steadily|sunk|bit_less|dropped_to|declined|eroded|slow_decline & pressure|gauge|now|reading|needle|showed|psi|@number|bar|figure|tractor|it|@pressure|used - hasnt|not|never|no|rebuilt|stood|sat|ago_i_rebuilt|suddenly|overnight|storage|oil_level|dipstick|consumption|changed|sender|same|since_the_rebuild|replaced|years_old|last_week|old_engine",
        "pressure|gauge|reading|psi + season|summers|years|months|winter|winters|year|weeks|week + come_down|lower|dropped|declined|fallen|lost|gone_down|dropping|crept_down|worse|loses|sagged|drifted - was_changed|stood|sat|ago|"
        "since|used|rebuilt|suddenly|overnight|for_years|last_week|this_week|unused|storage|over_winter|renewed|replaced|fitted",
        "lower|less|worse|down|lower_and_lower|a_bit_lower + every|each + year|season|month|summer|winter|service - day|run|trip|start|week|mileage|time|oil|level",
        "slowly|gradually|steadily|bit_by_bit|little_by_little + dropped|dropping|fallen|falling|declined|gone_down|lower|getting|down|sunk|worse|less + months|years|weeks|seasons|season|year|time|last_few|thousand_miles - run|hour|minutes|trip|drive|mile_run|day",
        "slow|gradual|steady|slowly|gradually|steadily + decline|declined|drop|dropped|loss|fall|decrease|sinking|sunk|fallen|down & years|@years|months|@months|seasons|winters|@longtime - "
        "minutes|hours|level|consumption|speed|oil_level|needle_moves",
    ),
    "fell_suddenly": (
        "suddenly|boom|one_glance|in_a_second|split_second|in_a_flash|blink|like_a_stone|all_of_a_sudden|in_an_instant|without_warning|just_like_that|between_one|snap|in_one_go|from_one_moment|abruptly|out_of_nowhere|off_a_cliff|at_a_stroke|plunged|plummeted|nosedived + pressure|needle|gauge|reading + gone|nothing|zero|dropped|fell|went|lost|vanished - mad|crazy|sprays|smoke|not|no|never|slowly|gradually|noise|up|high|max|jumps|from_zero|back_up|filter|level|starts_again|hand_over|climbed|belt|seal|rose|burst|leak|leaking|heard|knocking|seized|rod|cooler|line|bilge|oil_everywhere|hole|smoke|alarm|code|sender|wire|changes|light_came|lamp|drain|key|off",
        "between_one_glance|one_glance_and_the_next|in_the_blink|in_a_heartbeat|from_one_second|in_a_second_flat & gone|nothing|zero|lost|pressure|dropped|fell|went - slowly|up",
        "one_minute|one_second|one_moment + next|then|and + zero|nothing|minute|second|gone|@number|moment",
        "all_at_once|out_of_the_blue|out_of_nowhere|without_warning|in_an_instant|from_one_minute + zero|nothing|dropped|gone|pressure|fell|lost|gauge|went|light - seals|knock|noise|locked|scale|max|pegged|high|maxed|next_to|hardly",
    ),
    "gauge_reads_high": (
        "needle|pointer|gauge|dial|clock|reading|hand|instrument + beyond_the_green|above_the_green|past_the_green|stratosphere|sky_high|too_high|way_high|a_great_deal_more|far_more|much_more_than|well_above|way_above|through_the_roof|too_much|way_up|excessively_high|higher_than_it_should|higher_than_normal|up_in_the|far_too_high|far_higher|way_over_what|higher_than_spec|more_than_the_handbook|more_than_the_book - not|no|isnt|never|low|pegged|engine_off|key_off|test|mechanical|fuel|temp|temperature|master|trusted|known-good|direct",
    ),
    "gauge_reads_zero": (
        "nothing|zero|nil|nought|naught|nowt|zilch|not_a_thing|dead_on_the_peg|on_the_bottom_stop|lying_on_the_peg + on_the_clock|on_the_dial|on_the_instrument|whatever_on|needle_lies|pointer_lies|hand_lies|registers|on_the_meter - key|ignition|fuel|temp|goes_back|returns|engine_off|stopped|shut|test|mechanical|trusted",
    ),
    "needle_flickers": (
        "needle|pointer|gauge|hand|light|lamp|dial + keep_still|wont_stay_still|jittery|trembles|trembling|shivers|quivers|quivering|twitchy|twitches|winks|wags|wagging|jiggles|wobbles|nervous|never_still|restless|@not_still|@not_settle|wanders|jumping_about|all_over_the_place|hunts|shakes - bumpy|headlights|indicators|lights|wipers|steady|not|never|no|bent|loose|valve|float|bearing|fuel|temp|temperature|tach|speedo|test|mechanical|trusted|direct|doesnt_even",
    ),
    "lamp_comes_on": (
        "light|lamp|light's|symbol|picture|telltale|warning|oil_can|red_light|green_light|idiot_light|teapot|genie_lamp|aladdin + is_on|light's_on|comes_on|shows_up|glows|burns|burn|lights_up|pops_up|stays_lit|shines|stays_on|lit_up|appears|flashes_up|glowing|red_on + engine|running|driving|motor|road|idle|while|when|under_way|idiot|going|oil|work|motoring - bay|cabin|dash_lights|interior|not|never|no|out|key|ignition|off|before|engine_off|switched|turned|goes|headlight|bulb|burnt|smell|turn|until",
    ),
    "sank_while_running": (
        "during|kept|whole|all|over|through + one_drive|haul|whole_drive|whole_trip|one_run|same_run|same_trip|run|trip|drive|the_journey|passage + down|sinking|sank|lower|creeping|slid|dropped|falling|ebbed|go_down|fell & never_came_back|stayed|not_come_back|@not_recover|no_recovery|slow|slowly|steadily|gradually|bit_by_bit|kept - months|years|week|level|cooled|up_again",
        "gradual|slow|steady + decay|decline|fall|loss|drop + one_run|single_run|one_trip|the_run|one_session|one_drive - months|years",
        "one_run|single_trip|one_trip|one_journey|one_afternoon's|single_run|the_same_run|course_of_one|in_one_go|one_drive|one_session|single_journey|one_passage|during_one|one_outing|one_flight|an_afternoon's|one_day's|one_outing|one_afternoon|course_of_the_run|during_the_run|whole_trip|over_one & lower_and_lower|creeping_down|ebbed|crept|sank|sinking|decay|gradual|gradually|dwindled|bit_by_bit|little_by_little|slid|went_lower|drooped|steadily|dropping_all|falling_all|fell_and_fell|drifted_down|down_and_down|inch_by_inch|kept_falling|kept_dropping - no|not|never|recovered|level|cooled|months|years|back_up|next_morning|each|every|suddenly",
        "kept|steadily|gradually|slowly|bit_by_bit|little_by_little|inch_by_inch + creeping_down|sinking|falling|dropping|ebbed|ebbing|slid|dwindled|sank|fell|dropped|going_down|dwindling & no_recovery|stayed_there|@not_recover|@not_come_back|never_came_back|without_coming_back|stayed_down|never_recovered|not_recover - months|years|level|weeks|cooled|hot|each|every",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "engine_runs_normally": (
        "sound|sounds|sounded|ran|runs|running|shaking|making|makes|engine|noise|noisy + bag_of_nails|to_bits|three_cylinders|grinding|dreadful|racket|rough|roughly|terrible|awful|horrible|down_on_power|lumpy|like_a_tractor|misfiring|cement_mixer|bucket_of_bolts|"
        "on_three|on_two|very_noisy|sick - no|not|screen|crank|isnt|road|idle_rough_road|water|journal|weather|sea|gauge|grinding_of|after_grinding|crank_ground|bumpy",
    ),
    "lamp_comes_on": (
        "light|lamp|symbol|warning|idiot_light|red_light|telltale + goes_out|went_out|out_on_starting|goes_off + never_shows_again|never_comes_back|stays_off|never_again|stays_out|and_stays|not_again|stays_dark - key|wiper|flicker",
        "light|lamp|warning_light|oil_light|warning_lamp|alarm|buzzer|oil_lamp + @not_come|stayed_out|never_lit|@not_lit|@not_light|stayed_dark|never_came|remained_out|remained_off|off_throughout|stayed_off - flickers|key|ignition|bulb|switch|starting|wire|fuse|any_more|until|starter|startup|test|go_out|till",
        "no_warning_light|no_oil_light|no_warning_lamp|no_low_pressure_light|no_oil_lamp|no_warning_lights|no_red_light - key|ignition|fitted|has|have|switch",
    ),
    "gauge_reads_high": (
        "gauge|dial|needle|reading|pointer|dial's|gauge's + not_too_high|not_showing_too_much|@not_too_high|not_too_much|not_above|isnt_high|not_high|@not_over|nowhere_near_too_high|@not_showing_too_much|not_reading_high|@not_read_high - but|test|mechanical",
    ),
    "gauge_reads_low": (
        "gauge|dial|needle|reading|pointer|clock + not_down|isnt_low|not_low|@not_low|what_it_should|what_it_ought|where_it_should|where_it_belongs|right_figure|not_below|as_it_should|not_reading_low - but|once|until|throttle|notch|if|when|test|mechanical|hot|idle|cold",
    ),
    "second_instrument_disagrees": (
        "both|two|gauges|lamp|light|instruments|dial + agree|agrees|same_story|same_thing|tally|match|bear_each_other_out|in_step|of_one_mind + gauge|lamp|light|instruments|gauges|each|other|dial - not|dont|never|disagree|ports|mechanical|test",
    ),
    "other_gauges_also_wrong": (
        "fuel|temperature|temp|volts|other_gauges|other_dials|rest_of_the_dash|tacho|speedo|ammeter|other_instruments + still_read|fine|right|normal|as_they_should|working|unaffected|ok|behave|steady|all_good|correct|healthy + all|still|other|rest|they - then|before|pressure|not|dead|wrong|oil_temperature|smell|pump|except|jumped|starved|filter|oil_temp",
    ),
    "needle_steps_at_once": (
        "needle|pointer|gauge|hand + never|@not|no|always|doesnt + jumps|leap|leaps|snap|steps|smoothly|smooth|gradual|glides|jump - bumps|tap|wipers|lights|road",
    ),
    "needle_follows_loads": (
        "lights|headlights|wipers|potholes|bumps|switches|heater|indicators|fan|horn|blower|load|loads|pothole + no_notice|ignores|no_effect|@not_move|no_difference|doesnt_move|nothing|@not_affect|unmoved|no_odds|never_moves|steady|@not_react|unaffected - warning|oil_light",
    ),
    "fell_suddenly": (
        "never|no|not|without|@not_any|didnt + sudden_plunge|sudden_drop|sudden_fall|plunge|suddenly_fall|fall_suddenly|drop_suddenly|sudden_loss|suddenly_drop|abrupt_drop|sudden_collapse|drop_all_at_once - but|slow|leak|wait",
    ),
    "sank_while_running": (
        "steady|held|same|constant|never|no|not + sank|sink|sinking|ebb|creep_down|slow_fall|steady_decline|dwindle|steady_sinking|sag|gradual_fall + run|trip|journey|drive|one|whole|during - months|years|level",
    ),
    "declined_over_months": (
        "same|no_different|@not_crept|hasnt_crept|@not_dropped|@not_fallen|held_its|never_dropped|steady|unchanged|no_lower & years_ago|year_ago|two_years|years|months_ago|ten_years|over_the_years|last_year|long_as & figure|pressure|reading|as|same|crept|dropped|lower|number|it_was - until|now_low|but|worse|always_low",
    ),
}
