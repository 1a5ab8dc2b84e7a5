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
_P = "pressure|gauge|needle|psi|reading|it"
_REVS = "=revs|=rpm|=revved|=rev|=revving|=speed|=throttle|=gas|=accelerate|=faster"
_NO_MATTER = "however|whatever|regardless|no|irrespective|matter"
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
    "capped_low": (
        f"{_P} @not =rise|=rises|=climb|=climbs|=increase|=increases|=move|=change|=improve|=respond any|much|far|further|higher|up|at|all|to? with|when|as|if|under|to .. {_REVS}",
        f"{_P} @not go|goes|come|comes|get|gets any? further|higher|better|more|up with|when|as|if|however|no .. {_REVS}",
        f"{_P} stops|stopped|quits =rising|=climbing|=increasing",
        f"{_P} tops|maxes|topped|maxed|peaks|peaked|plateaus|plateaued|levels|levelled|leveled =out|=off =low|=early|=there",
        "tops|maxes|peaks|plateaus|levels out|off =low|=early",
        "@not|wont|will go|come|get|rise above|past|over|beyond a|some certain pressure|point|figure|value|level",
        f"hardly|barely|scarcely =goes|=go|=rises|=rise|=climbs|=any up|higher|higher? when|with|as|if .. {_REVS}",
        f"{_P} stays|stayed|remains|is|was low|down {_NO_MATTER} .. {_REVS}",
        f"no|little =rise|=increase|=more in? pressure? with|when|as .. {_REVS}",
        "wont|doesnt|never|not|refuses-to|will-not go|goes|went|rise|rises|get|gets|climb|climbs|budge a|one|any hair|bit|pound|psi|needle-width over|above|past|more|higher",
        "stays|stuck|sits|levels|tops|flat out|off? at? @pressure|@number no matter what|how above|after|past|from|beyond that|there|then",
        "stays|stuck|sits|levels|tops|flat out|off? at? @pressure|@number from|above|after|past|beyond there|that|then on|however|whatever|no|up?",
        "@not =rise|=rises|=increase|=increases|=climb|=climbs|=change|=changes|=vary|=respond with|to|above|as|when the? engine? speed|revs|rpm|throttle",
        "no =rise|=increase|=change|=response|=gain with|to|above|off|as speed|revs|rpm|throttle|idle",
    ),
    "low_at_all_speeds": (
        f"{_P} is|was|reads|stays|just? =always low|down",
        "low|down everywhere|throughout the? range|revs|board?",
        "low|down at all|any|every speeds|speed|revs|rpm|rpms",
        f"low|down {_NO_MATTER} .. revs|speed|rpm|temperature",
        "low =all =the =time",
        "low =hot =and|=or =cold",
        "low =cold =and|=or =hot",
        "low at|from idle and|or|to at? speed|cruise|cruising|highway|revs",
    ),
    "never_reaches_setting_cold": (
        "@not reach|reaches|get|gets|make|makes|hit|hits|see|come to? relief|full|blow-off pressure|setting .. cold",
        "even|when =cold .. @not reach|reaches|get|gets|make|makes|hit|hits up? to? relief|full|blow-off pressure|setting",
        "never comes|gets up? to full pressure|relief",
    ),
    "climbs_past_setting": (
        "pressure|gauge|needle keeps|kept|continues going|climbing|rising|to? up? with|as|when .. =revs|=rpm|=revved|=rev|=throttle",
        "climbs|rises|shoots past|over|above|beyond the? relief setting|pressure|valve?",
    ),
    "flickers_only_at_speed": (
        "flickers|flutters|unsteady|wavers|bounces|shakes|jumps|jumpy|dances only|just above|over|at|when|past .. revs|rpm|speed|@rpm|3000|2000|revved|high",
        "steady|fine|rock at|up|to|until idle|tickover|about|3000|@rpm but|then|and flickers|flutters|bounces|shakes|jumps|wavers .. =revs|=speed|=above|=over|=that|=revved",
    ),
    "flickers_only_at_hot_idle": (
        "flickers|flutters|unsteady|wavers|bounces|shakes only|just at|on|when hot|warm idle|tickover|idling?",
        "lamp|light flickers|flickering|flicker|glows|glimmers only|just? at|on|when .. =hot|=warm =idle|=tickover|=idling",
        "flickers|flicker|glimmers|glows at|on|when hot|warm|warmed idle|tickover|idling up? .. out|off|away|gone|stops|steady|fine|clears .. throttle|revs|rev|gas|speed|off|blip|touch",
    ),
    "rises_just_off_idle": (
        "fine|good|normal|ok|right|up|jumps|comes just|straight|back|right|quickly|immediately? off|above idle|tickover",
        "comes|jumps|rises|goes|shoots|springs right|straight|up|back|quickly|soon up|as|with|at the? slightest|touch|blip|least|bit|little|smallest|any of|touch|bit? throttle|gas|revs|pedal",
        "touch|blip|bit|tickle of? the? throttle|gas|revs|pedal .. comes|up|right|back|fine|good|jumps|rises",
    ),
    "falls_as_revs_rise": (
        "drops|falls|loses|sinks|dips|decreases|lower|less|goes pressure|down|off? when|as|with|the i|you|we|it's|is|more|higher|high|it? =revved|=revs|=rev|=rpm|=rpms",
        "the? =higher|=more|=faster .. revs|rev|rpm|it|i .. the? =lower|=less .. pressure|gauge|it|reads|goes",
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
        "switch_off|turn_off|switched_off|turned_off|off_the|turning_off|switching_off + lights|headlights|fridge|wipers|heater|blower|radio|inverter|autopilot & normal|back_to_normal|goes_up|go_up|comes_up|come_up|back_up|reads_right|reads_normal|come_right|comes_right|recovers|normal_again - engine|ignition|key|parked|stopped|locked|home",
    ),
    "second_instrument_disagrees": (
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
        "=other|=all|=every|=rest|temp_gauge|fuel_gauge|temperature_gauge + =gauges|dials|instruments|clocks|too|also|as_well + dead|died|wrong|haywire|too|also|same_time|at_once|dropped|quit - test|mechanical|fine|normal|read|ok|good|work|working",
        "=gauges|=clocks|=instruments|=dials|every_gauge|fuel_gauge|temp_gauge|temperature_gauge + temp|temperature|fuel|every|all|dash|reading|speedo|volt|voltmeter|amps + haywire|creek|crazy|wrong|dead|died|funny|duff|nuts|quit - fine|ok|normal|steady|works|working|oil_temp_gauge",
        "temp|temperature|fuel|amps|volts|speedo|all_the_gauges|other_gauges|every_gauge + gauge|gauges|needle|needles|as_well + died|dead|zero|stopped|quit|failed|wild|pegged|same_time|at_once|together|too - ok|fine|no|not|normal|work|works|operating|up_to|off_the_peg|the_peg",
    ),
    "engine_runs_normally": (
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
        "gauge|needle|reading|jumps|flicks|snaps|switches|leaps|flips|pointer|it + jumps|flicks|snaps|leaps|flips|jumped|flicked|steps|switches + instantly|at_once|full_scale|and_back|one_value|in_an_instant|no_in_between|suddenly_between|back_again|in_one_go - "
        "over|load|bumps|lights|headlights|wipers|plug|throttle|smoothly|dash_switch|electrical",
        "jumps|flicks|snaps|leaps|flips|switches|steps + instantly|at_once|full_scale|from_one_value|from_zero|and_back|in_one_go - over|load|bumps|lights|headlights|wipers|plug|throttle|smoothly|when|dash|warm|revs|tugging|slowly",
        "jumps|jumped|goes|flicks|went|leaps|snaps|flips + straight|blink|instantly|nothing_in_between|instant|snap|bang + zero|0|full|nothing|80|60|max|scale - drill|primed|priming|fired|bumps|switch|road|then_slowly|revs|stays|engine|first_start|start_up|suddenly_dropped|pressure_went",
        "needle|gauge|it|reading|goes|snaps|jumps + full_to_nothing|nothing_to_full|0_and|zero_and|between|full_scale|and_back + blink|snaps|instantly|instant|flash|snap|bang|split_second|jumps - over_bumps|corners|idle|slowly|bounces",
    ),
    "declined_over_months": (
        "pressure|gauge|reading|psi + season|summers|years|months|winter|winters|year|weeks|week + come_down|lower|dropped|declined|fallen|lost|gone_down|dropping|crept_down|worse|loses|sagged|drifted - was_changed|stood|sat|ago|"
        "since|used|rebuilt|suddenly|overnight|for_years|last_week|this_week|unused|storage|over_winter|renewed|replaced|fitted",
        "lower|less|worse|down|lower_and_lower|a_bit_lower + every|each + year|season|month|summer|winter|service - day|run|trip|start|week|mileage|time|oil|level",
        "slowly|gradually|steadily|bit_by_bit|little_by_little + dropped|dropping|fallen|falling|declined|gone_down|lower|getting|down|sunk|worse|less + months|years|weeks|seasons|season|year|time|last_few|thousand_miles - run|hour|minutes|trip|drive|mile_run|day",
        "slow|gradual|steady|slowly|gradually|steadily + decline|declined|drop|dropped|loss|fall|decrease|sinking|sunk|fallen|down & years|@years|months|@months|seasons|winters|@longtime - "
        "minutes|hours|level|consumption|speed|oil_level|needle_moves",
    ),
    "fell_suddenly": (
        "one_minute|one_second|one_moment + next|then|and + zero|nothing|minute|second|gone|@number|moment",
        "all_at_once|out_of_the_blue|out_of_nowhere|without_warning|in_an_instant|from_one_minute + zero|nothing|dropped|gone|pressure|fell|lost|gauge|went|light - seals|knock|noise|locked|scale|max|pegged|high|maxed|next_to|hardly",
    ),
    "flickers_only_at_speed": (
        "needle|gauge|light|lamp + shaky|shakes|flickers|flicker|bounces|wavers|vibrates|jumps|unsteady|dances + over|above|past|at_high|at_speed|high_rpm|high_revs + @rpm|@number|revs|rpm|speed - idle|bumps|bumpy|bend|corner|wipers|headlights|lights|brake|road|place|hour|@pressure",
    ),
    "rises_just_off_idle": (
        "rev|revs|revved|revving|blip|throttle & light|lamp|warning & goes_out|went_out|goes_off|put_out|puts_out - no|not|never|on|stays|comes|alarm|buzzer|drops|clutch",
        "=out|gone|off + soon_as|as_soon|when|if|moment|instant|second + touch|blip|rev|tickle|crack|dab|breathe - not|no|never|comes|alarm|flies|falls|drops|clutch|brake",
        "light|lamp|led|buzzer + goes_out|goes_off|out|off + comes_back|back_on|comes_on & idle|idles|idling|tickover|ticks_over - no|not|never|alarm",
        "light|lamp|it|flicker|pressure|gauge|needle|goes|comes|buzzer + goes_out|comes_up|comes_right|up|out|rises|recovers|off|jumps|clears|stops & touch_the_throttle|touch_of_throttle|touch_of_gas|bit_of_throttle|blip|blip_of|rev_of|a_rev|quick_rev|crack_the|tickle_the|touch_the_gas|above_idle|off_idle|some_gas|some_throttle|some_revs|a_bit_of_gas|a_few_revs|little_gas|little_throttle|touch_the_pedal|touch_the_accelerator|dab_of_throttle|dab_the_throttle|rev_it|revs_it|=revved|speed_it_up|raise_the_revs|bring_the_revs|lift_the_revs|more_than_tickover|as_i_rev|when_i_rev|when_revved|press_the_gas|press_the_pedal|on_the_gas|soon_as_i_accelerate|when_i_accelerate|when_accelerating|pull_away|pulls_away|=pulling_away|moving_again|drive_off|get_going|at_1000|by_1000|above_1000|over_1000|past_1000|at_1200|by_1200|above_1200|over_1200|at_1500|by_1500|above_1500|over_1500|slightest|give_it_a|bit_of_gas|few_revs|just_above - up_to|alarm_goes_off|buzzer_goes_off|alarm_went_off|buzzer_went_off|siren_goes_off|drops|falls|no|not|never|goes_off_scale|brake|wont|pops_up|popped_up|pop_up|firing_up|fire_up|fired_up|start_up|starting_up|warmed_up|warms_up|lights_up|light_up|lit_up|just_above_zero|above_zero|hooked_up|set_up",
    ),
    "falls_as_revs_rise": (
        "hold|held|keep|rev|revving|sustained|over|above|past & @rpm|4000|4500|5000|5500|6000 & drops|drop|falls|fall|sags|dips|sinks|tails|down_to|fades - stop_light|stop_lights|traffic_lights|traffic_light|stoplight|red_light|"
        "below|idle|under|cold|off_idle|drops_to_idle|when_i_slow|lift_off|back_off",
        "pressure|it|gauge|needle|drops|falls + drops|falls|lower|goes_down|fall|drop|sinks|less + revs_go_up|as_revs|as_the_revs|with_rpm|with_revs|revs_rise|revs_climb|rpm_goes_up|higher_you_rev|more_you_rev|harder_you_rev|higher_the_revs|as_you_rev|as_rpm|the_faster - rises|up_with|after|back_to_idle|drops_back",
        "higher|more|harder|faster & rev|revs|rpm|spin|go & lower|less|drops|falls|worse & pressure|it|gets|lower|needle - no|not|noise|knock",
        "drops|falls|sags|fades|dips|sinks|fell|dropped + above|over|beyond|past & recovers_below|recovered_below|returns_below|back_below|comes_back_below|back_under|recovers_under|comes_back_under|fine_below|normal_below|revs_drop - "
        "idle|cold|hot|minutes|lamp|light|noise|bends|corners|temperature|degrees",
        "falls|drops|fades|sags|tails|fell|dropped|falling|dropping & off|away|back|to|down & limiter|redline|red_line|at_the_top_end|peak_revs|high_revs - idle|hot|cold|warm|minutes|lamp|light|noise|flickers|bends|corners",
    ),
    "low_even_cold": (
        "low|lousy|poor|only|=down + even + cold|stone_cold|first_thing|start|startup - hot|idle_hot|not|only_when",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "engine_runs_normally": (
        "sound|sounds|sounded|ran|runs|running|shaking|making|makes|engine|noise|noisy + bag_of_nails|to_bits|three_cylinders|grinding|dreadful|racket|rough|roughly|terrible|awful|horrible|down_on_power|lumpy|like_a_tractor|misfiring|cement_mixer|bucket_of_bolts|"
        "on_three|on_two|very_noisy|sick - no|not|screen|crank|isnt|road|idle_rough_road|water|journal|weather|sea|gauge|grinding_of|after_grinding|crank_ground|bumpy",
    ),
    "lamp_comes_on": (
        "light|lamp|warning_light|oil_light|warning_lamp|alarm|buzzer|oil_lamp + @not_come|stayed_out|never_lit|@not_lit|@not_light|stayed_dark|never_came|remained_out|remained_off|off_throughout|stayed_off - flickers|key|ignition|bulb|switch|starting|wire|fuse|any_more|until|starter|startup|test|go_out|till",
        "no_warning_light|no_oil_light|no_warning_lamp|no_low_pressure_light|no_oil_lamp|no_warning_lights|no_red_light - key|ignition|fitted|has|have|switch",
    ),
}
