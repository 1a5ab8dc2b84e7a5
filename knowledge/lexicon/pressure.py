"""What people say of the pressure and the lamp: instrument, state, change."""

from __future__ import annotations

from knowledge.reports.words import Circumstance, Shows

#: words that make a bare number a pressure
INSTRUMENT = (
    "gauge|gage|guage|needle|pointer",
    "oil|pressure display|readout|indication|instrument|indicator",
    "pressure|psi|presure",
    "oil light|lamp|press",
    "reads|reading|showing|shows",
)
_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"
_LAMP = "light|lamp|buzzer|alarm|beeper|bleeper|sounder|annunciator"
_OIL_LAMP = "oil|pressure|warning|red|idiot|dash"
#: what shows, by what is said
SHOWS: dict[Shows, tuple[str, ...]] = {
    Shows.NONE: (
        "no|zero oil? pressure",
        f"{_P} near|almost|nearly zero|nothing",
        f"{_P} is|at|reads|shows|was|reading|goes|stays|sits|stayed|went|on|to|fell|dropped|of|and|showed "
        "at|on|to|near? zero|nothing|none|nil|0|nought",
        f"{_P} zero|nil",
        "zero on the? gauge",
        "drops|fell|went|goes|dropped|falls|down|falling|going|gone|sank|dives to zero|nothing|nil|0",
        "read|reads|reading|showing|shows|showed zero|nothing|nil",
        "@not build|make|get|have|getting|making|building any? oil? pressure",
        "@not any oil? pressure",
        "without any? oil? pressure",
        "gauge|needle|display|readout|indicator dead|blank",
        "display|readout|gauge|it shows|shown|showed|showing dashes|blanks",
        "pressure|gauge display|readout blank|dashes|dead|out",
        "never built|builds any? oil? pressure",
        "won't|wont build|make any? oil? pressure",
        "not a thing on the gauge",
        "needle|gauge @not move|moves|budge|lift",
        "@not show|register|read any? oil? pressure",
        "needle|gauge stays on the? peg|stop|pin",
        f"{_P} .. zero|nil|zilch|nought|nada",
        f"{_P} reads|shows|showing|reading|registers|registered|showed|read|reading absolutely|just|precisely|practically|next? to? nothing|none|zilch|nada",
        f"{_P} completely|totally|absolutely|stone? dead|zero|nil",
        f"{_P} stopped reading|working|registering",
        f"{_P} died|quit completely|altogether",
        f"{_P} drops|drop|cuts|goes|went|dropped|cut out completely?",
        f"{_P} pegged|stuck|sitting|sits|rests|resting|lies|lying on|at|against the? bottom|zero|stop|pin|peg|bottom-stop",
        "no|zero|nil reading|indication|sign .. gauge|pressure|all",
        "no reading",
        "no sign|hint|trace|indication of any? oil? pressure",
        "no oil? pressure at all|whatsoever",
        "@not got|have|had|any|seen|see|getting|get|show|showing|showed|registering|register any|a|one oil? pressure|psi",
        f"{_P} @not register|registers|registering|move|moves|moving|budge|lift",
        "0|zero|nil psi|bar|lbs|pounds|oil",
        "=pressure|=gauge .. to|at =nothing",
        "@not a? .. flicker|twitch of|from|on the? needle|gauge",
        "needle|gauge wont|@not come|lift|move|get off|from the? stop|peg|pin|zero|bottom",
    ),
    Shows.LOW: (
        "low|poor|weak|bad|marginal|insufficient|lousy|crap oil? pressure|psi|reading|readings|indication",
        "low on oil? pressure",
        f"{_P} is|are|was|reads|goes|gets|seems|looks|stays|runs|still|reading|sits|quite|very|too|always|"
        "a|bit|really|just|being|went|shows|way|that's|very? quite|very|too|really|a|still|way|down? bit|little? "
        "low|lower|poor|weak|down",
        f"{_P} low|poor|down",
        f"{_P} drops|dropped|falls|drop|fell|dropping|falling|sinks|sank|dips|dipped|goes|went|=gone|come|came down|off|low|away",
        f"{_P} drops|dropped|falls|drop|fell|dropping|falling|sinks|sank|dips|dipped|sags|sagged|decreases|decreased",
        "barely|hardly any? registers|moves|lifts|pressure",
        "reads|reading|reading|gets|gauge|still|goes|runs|stays low|poor",
        "drops|falls|dropped|fell|sinks low",
        "it|then drops|falls|sinks|sags|dips",
        "it|then goes|went down|low to? almost|nearly? nothing|zero?",
        "drops|falls|fell|dropped|sinks|sank down? to|below about|around|only|just|like|maybe? @number|@pressure|@range",
        "pressure @not come|comes|came|go|goes up",
        "pressure @not what it was",
        f"{_P} sagging|decreasing|declined|declining|diminishing|lowered|lowers|slid|slides|tumbles|plummets|plummeted|tanks|tanked|drooped|droops",
        f"{_P} .. =below|=under the? green|minimum|min|normal|spec|limit|limits|specification|red|mark|line|usual",
        f"{_P} .. =below|=under the? first|lowest|bottom|lower|second mark|line|graduation|division|number|notch",
        f"{_P} .. just|barely|only =above|=over|=clear|=off|=out of? the? red|bottom|peg zone|band|arc|mark?",
        f"{_P} .. bottom|low|lower|lowest end|part|edge|side|third|quarter? of the? normal|green|safe|scale|dial|gauge range|zone|band|arc?",
        f"{_P} is|was|sits|stays|runs|reads|goes|drops|falls|down|well|just =in|=into|=near the? red|bottom|warning|danger end|zone|band|arc?",
        "in the red",
        f"{_P} lower than|then normal|usual|before|it|i|ever",
        "lower|less oil? pressure",
        f"{_P} lower|less",
        f"{_P} @not as high|good|strong",
        "@not as high|good as it|before",
        f"@not much|enough|good|great|sufficient|adequate|decent|proper|full|normal|healthy oil? {_P}",
        "little|minimal|scant|next-to-no|hardly-any|insufficient|reduced|diminished|falling|dropping oil? pressure",
        "next to no oil? pressure",
        "next to nothing on|of|in? the? gauge|pressure",
        "next to nothing at|when|once|on|hot hot|warm|idle|tickover|=idling|the? hot|warm|idle|tickover?",
        "lower|less|down than|on|against the|my? good|sound|healthy|other|port|starboard|second|sister|twin one|engine|side|motor",
        f"{_P} shows|reads|reading|showing|registers|showed|read next to nothing",
        f"{_P} barely|hardly|scarcely moves|moved|lifts|registers|registered|off|shows|makes|gets|flickers|rises|comes",
        "barely|hardly|scarcely any? oil? pressure|registers|moves|lifts",
        "bottom|low end of|on the? gauge|scale|dial",
        "bit|little|rather|quite|very|too|pretty|way|far =low|=down on|at|when|hot|for",
        "low|poor when|at|on|once|after hot|idle|tickover|warm|warmed|temperature|speed",
        "starved|starving|starves|starvation|oil-starvation",
        f"{_P} down|off by|about|around|some|@pressure|@number @pressure|@number?",
        f"{_P} is|was|now|about|some|a? down|low|off by? about? @pressure|@number",
        f"{_P} @pressure|@number down|low|short|off|under|below",
        "drop|fall|decrease|reduction|dip in oil? pressure",
        "oil? pressure =drop|=fall|=dip|=sag",
        f"{_P} suffers|suffered|poor|lousy|terrible|pathetic|feeble|dismal|marginal|borderline|rubbish|awful|dreadful|sad",
        f"{_P} is|was|a|bit|looks|seems terrible|pathetic|feeble|dismal|marginal|borderline|rubbish|awful|dreadful|disappointing|lousy|bad",
        "pressure problem|problems|trouble|issue|issues",
        f"{_P} on the? low|lower|poor side|end",
        "has|with|got|shows|reads|about|now @pressure less|lower|down than|on before|usual|normal|it|what|previously|used",
    ),
    Shows.HIGH: (
        f"high|excessive|too-high oil? {_P}",
        f"{_P} is|was|reads|goes|gets|seems|stays|extremely|too|very|way|really|runs|shows|extremely|too|very|way|really? "
        "high|excessive",
        f"{_P} extremely|too|very|way|really? high",
        f"{_P} pegged|pegs|pinned|off-the-clock",
        f"{_P} stays|stayed|sits|is|stands|stood|stuck|reads|goes at|on|to the? maximum|max|top|full",
        "off the clock|scale|dial|top",
        "too much oil? pressure",
        "over pressure|pressured",
        "pressure climbs|climbed|rises|shoots above|past|over",
        f"{_P} climbs|climbed|goes|went|jumps|jumped|shoots|shot|swings|swung|reads|straight|at|to|once|right|all|sits|sat|rises|rose full|top|maximum|max|off|past|beyond|over the? scale|deflection|clock|gauge|end|top|stop|way",
        f"{_P} .. above|over|past|beyond the? green|normal|limit|relief|maximum arc|zone|line|setting?",
        "needle|gauge .. off|past the? scale|clock|end|top|right|stop",
        "full|hard over scale|deflection|right|on",
        f"{_P} through|thru the? roof",
        f"sky|dangerously|abnormally|unusually|ridiculously|stupidly high oil? {_P}",
        "maxed|maxing|pegging|buried out|on|the",
        f"{_P} maxed|maxes|buried|slammed|pegging",
        f"{_P} up|high by|around|at|over about? @pressure|@number|@range",
        f"{_P} hard over|right|against|to|up the? right|top|max hand? stop|side|end|peg?",
        f"{_P} goes|swings|moves|went|jumps|is all the way over|round|right|up|across",
    ),
    Shows.UNSTEADY: (
        f"{_P} .. flickers|flickering|wavers|wavering|bounces|bouncing|dances|dancing|fluctuates|fluctuating|"
        "jumps|jumping|swings|swinging|surges|surging|flutters|fluttering|wanders|wandering|twitches|pulses|"
        "pulsates|unsteady|erratic|jumpy|hunts|hunting|oscillates|quivers|wobbles|vibrates|bobs",
        f"flickers|flickering|flicker|wavers|bounces|bouncing|dancing|fluctuates|fluctuating|jumping|jumpy|surging|"
        f"unsteady|erratic|wandering|pulsating|fluttering|wavering oil? {_P}|{_LAMP}",
        f"{_LAMP} .. flickers|flickering|flicker|flickered|blinks|blinking|blinked|flashes|flashing|flashed|winks|winking",
        f"{_P} jumps|jump|goes|all up and down|over",
        f"{_P} is? all over the place",
        "fluctuating|fluctuates|flickers between|from",
        f"{_P} all over the? place|shop|map|show|dial|scale",
        f"{_P} is|was|goes|going|reading? all over the? place|shop|map|show",
        f"{_P} @not settle|steady|stay|hold still|steady|down?",
        f"{_P} wags|wagging|waggles|hops|hopping|twitchy|skittish|nervous|unstable|up-and-down|swung|shakes|shaking|shivers|jittery|jitters|wiggles|wiggle|flits|flapping|flaps|moving|bobbing|bounced|fluctuated|wavered|varied|varies|varying|oscillating|flickered|jumped",
        f"{_P} gives|gave|has|had|made a? wiggle|twitch|wobble|flicker|kick|shake|flutter",
        f"{_P} goes|going|went|jumps|bounces|moves|up and? down|back-and-forth|to-and-fro like|constantly|a? yoyo|yo-yo|all?",
        f"{_P} up and down",
        f"{_P} dances|bounces|jumps|moves|bouncing|bounced around|about|back|between",
        f"{_P} .. bounces|swings|fluctuates|jumps|varies|wanders|flickers|moves|anywhere between|from|@range",
        f"erratic|unstable|unsteady|fluctuating|jumpy|bouncy|varying|wandering|variable|inconsistent|bouncing|twitchy oil? {_P}",
        f"{_LAMP} is|was|keeps|kept|starts|started|begins|began|to|occasionally|sometimes|just|will|would|did .. flicker|flickers|flickering|blink|blinking|flash|flashing|winking|glimmer|glow",
        f"{_LAMP} glimmers|glows|glowing|twinkles|flutters|stutters|pulses",
        f"flickery|flickering|blinking|flashing|winking oil? {_LAMP}",
        "flickers|flickering|blinks|blinked|flashes|winks|flickered =at|=when|=in|=on|=while|=only|=with|=under|=occasionally|=slightly",
        f"{_P} flicks|flicking|flicked|kicks|kicking|bobs|hops up|back|about|around?",
    ),
    Shows.LAMP: (
        f"{_OIL_LAMP} pressure? {_LAMP} is|was|came|comes|come|on|stays|coming|stayed|lit|lights|goes|went|warning|kept|keeps|now? "
        "on|up|lit|coming",
        f"{_OIL_LAMP} pressure? {_LAMP} on|lit",
        f"{_LAMP} comes|came|come|stays|stayed|is|coming|was|goes|popped|went|popping|pops|lights|lit|keeps coming? on|up",
        f"{_LAMP} on",
        "comes|came|coming on at|when|whenever|while|in|under|only",
        f"low pressure {_LAMP}|warning",
        "oil pressure? warning",
        f"{_LAMP} @not go|goes|went|gone off|out",
        f"{_LAMP} won't|wont go off|out",
        "buzzer|alarm|beeper|bleeper|sounder|siren|horn is|was|started|starts|kept? sounds|sounded|goes|went|sounding|=going|screams|blaring|wailing|shrieking|blared off?",
        "buzzer|alarm chirps|chirped",
        f"low oil? pressure? {_LAMP}|warning|message|indicator|indication|telltale|tell-tale",
        f"low oil {_LAMP}|warning|message",
        f"{_OIL_LAMP} {_LAMP} =at|=when|=in|=under|=after|=every|=each|=whenever|=during|=while|=with|=over|=through|=until",
        f"{_OIL_LAMP} warning|message|buzzer|alarm|indicator .. on|comes|came|appears|appeared|up|sounds|sounded|displayed|showing|shows|flagged",
        "warning|message|alarm comes|came|appears|appeared|popped|pops|keeps|flashed|goes|went up|on|off",
        f"{_LAMP} .. comes|came|coming|come =on|=up",
        f"{_LAMP} comes|came|goes|went =on =at|=in|=when|=if",
        "buzzer|alarm|beeper|siren goes|went =off =at|=in|=when|=if",
        f"{_LAMP} lit|illuminates|illuminated|glowing|burning|burns|shining|shows|showing|ablaze|blazing",
        f"{_LAMP} .. stays|stayed|remains|remained|staying|stuck =on|=lit",
        f"{_LAMP} is|was|stays|still|on =on|=lit all|constantly|permanently|the|steady|solid|continuously",
        f"{_LAMP} is|was|still|now|always|permanently|constantly =on|=lit",
        f"{_LAMP} @not|wont|refuses|refused|fails|failed to? =go|=goes|=extinguish|=turn|=went|=switch =out|=off",
        f"triggers|triggered|tripped|sets|set off? the? oil? pressure? {_LAMP}",
        f"got|get|getting|had|have|with|see|saw|seeing|giving|gives|gave the|a|an|my|me {_OIL_LAMP} pressure? {_LAMP}",
        f"low-pressure {_LAMP}|warning|message",
        f"intermittent|occasional|random|permanent|constant oil|warning pressure? {_LAMP}",
    ),
    Shows.SLOW: (
        "slow to build|come|rise|register|show|go",
        f"{_P} slow|slowly to? builds|build|come|comes|rises|rise up?",
        f"{_P} builds|comes|rises up? slowly|slow",
        "takes|took|taking .. seconds|ages|while|long|minute|forever|sec|time to build|come|get|show|go|register|for",
        f"{_LAMP} slow to go? out|off",
        f"{_LAMP} =goes|=went out|off after|in|within|about|only? @seconds",
        f"{_LAMP} stays|stayed|is|on on? for? about|around|roughly|a|good? @seconds",
        "takes|took|after about|around|a|good|at|least? @seconds to|before|for",
        "@seconds to build|come|show|register",
        "@seconds to get|go pressure|up|any|oil|out|there|going|a",
        "delay .. pressure",
        "pressure @not build|come|show up? for|until",
        "slow|slowly to? build|builds|building|come|comes|rise|rises|rising|register|show|go|pick|get up? oil? pressure",
        "slow pressure|build-up|buildup|build",
        f"{_P} .. slow|slowly|ages|long|forever|while to? build|builds|come|comes|rise|rises|register|registers|show|shows|get|appear",
        f"{_LAMP} .. slow|long|ages|forever|while|longer to|before|going|and|it? go|goes|going|it|extinguish|clear out|off?",
        f"{_LAMP} takes|took|taking .. to|before|it? go|goes|clear|out|extinguish out|off?",
        f"{_LAMP} stays|stayed|remains|remained|is|was|lit|on|lights on? .. longer|long|seconds|@seconds|while|ages",
        "takes|took|taking|needs|needed|about|around|good|at|least|maybe|to? @seconds|@minutes to|before|for|until .. pressure|build|builds|come|comes|go|goes|register|registers|out|show|shows|light|gauge|needle|move|rise",
        "takes|took|taking|needs .. ages|forever|long|longer|while|time|seconds to|before|for|until .. pressure|build|builds|come|comes|go|goes|register|registers|out|show|shows|gauge|needle|move|rise",
        "@seconds to|before|until .. pressure|build|builds|come|comes|register|registers|show|shows|gauge|needle|move|light|lamp",
        "@seconds of|with|without no? .. pressure|oil",
        "no indication|reading|pressure for|in|during the? first @seconds|@minutes|minute|few",
        "no|zero|nil oil? pressure for|until|in about|around|a|the|nearly|almost? good|full|whole|first|long? @seconds|minute|minutes|while|time",
        "no|zero|nil oil? pressure|reading for|until|in about|around|the|roughly|up|to|a|first|at? first? @seconds|few|several|couple seconds|of?",
        "lag|delay before|in|until|of|getting|building .. pressure|oil",
        "delayed oil? pressure",
        "loses|lose|losing|lost|loosing prime",
        "delay|lag|pause|wait .. before|until .. pressure|gauge|needle|light|lamp",
        "takes|took|needs .. @seconds .. before|to|for|until .. pressure|gauge|needle|light|moves|build|register",
    ),
    Shows.LOST: (
        "lost|lose all? my? the? oil? pressure",
        "losing all oil? pressure",
        f"{_P} comes|come and goes|go",
        "sudden? loss of oil? pressure",
        "sudden drop|fall|loss of|in oil? pressure",
        "pressure gone|disappeared|vanished|lost",
        "pressure|gauge quit|died|disappears|disappeared|vanishes|vanished",
        "pressure went|has away|gone",
        "lost|loses|lose|losing|loosing|loose all? of? my|its|the|any? oil? pressure|psi",
        "loss of|in all? engine? oil? pressure",
        "total|complete|sudden|momentary loss|failure of all? engine? oil? pressure",
        "oil? pressure loss|failure",
        f"{_P} =went|=gone|=goes|=has|=had =away|=gone|=out|=completely",
        f"{_P} is|was|had|has|suddenly|completely|then|just|all|totally =lost|=gone|=vanished|=disappeared|=quit|=died",
        f"{_P} disappearing|vanishing|disappear|vanish|dies|dying|cuts",
        "no|without more|longer oil? pressure",
    ),
    Shows.FALLING: (
        f"{_P} keeps|kept|is|steadily|slowly|gradually|was steadily|slowly|gradually? dropping|falling|sinking|going|declining down?",
        f"{_P} slowly|gradually|steadily drops|falls|sinks|declines|drop|fell|dropped|sank|fades|decays|creeps down?",
        f"{_P} drops|falls|sinks|fades|bleeds|creeps|fades down? slowly|gradually|steadily|off|away",
        f"{_P} begins|began|starts|started|beginning|starting to? slowly|gradually|steadily? dropping|falling|sinking|drop|fall|sink|going|sag|fade|decrease|decline down|off?",
        f"{_P} continues|continued|continuing|keeps|kept to? drop|dropping|fall|falling|going|sinking|decreasing|declining|decrease",
        f"{_P} dropping|falling|sinking|decreasing|declining|fading|going|sliding|sagging rapidly|fast|quickly|steadily|slowly|gradually|away|off|down|now|continuously|bit",
        f"{_P} bleeds|bled|tails|tailed|trails|dies|died|fades|faded|ebbs|wanes|creeps|crept|drifts|drifted|edges|eases|sags|inches off|away|down|downwards|back",
        f"{_P} fades|fading|faded|wanes|ebbs|decays|decayed|decaying|drains",
        f"{_P} drops|falls|decreases|drop|fall|dropped|fell|goes|sinks|lowers|sags|declines as|when|whenever|with|once|above|over|if .. revs|rpm|rpms|rev|revved|throttle|speed|accelerate|accelerating|faster|load",
        f"{_P} drops|falls|decreases|goes|comes|sinks bit|little|slowly|gradually by|down|steadily bit|little",
        f"{_P} slowly|gradually|steadily|progressively going|goes|went|decreases|decreased|coming|came|comes|dropping|falling down?",
        "slow|gradual|steady drop|fall|decline|loss of|in oil? pressure",
    ),
    Shows.NORMAL: (
        f"{_P} is|was|reads|looks|seems|stays|are|comes|goes|returns|came|went|back|to|as|all|shows|back|to|perfectly? "
        "good|fine|normal|ok|okay|great|perfect|healthy|right",
        "good|normal|great|fine|healthy|decent|perfect|full|proper|plenty oil? pressure|psi|reading",
        f"{_P} good|fine|normal|ok|okay|great|perfect|healthy",
        "comes|came|goes|come back up? when|as|if|once|with",
        "goes|went|go out|off when|as|if|once|with",
        "plenty of oil? pressure",
        "reads normal|fine|good",
        "its|it's|it|is|was|all|otherwise|but|and|perfectly|runs fine|ok|okay|good|normal|great",
        "fine|ok|okay|good|great|normal",
        f"{_P} picks|picked|comes|came|rises|rose|climbs|climbed|recovers|recovered|increases|returns|builds up|back|right? up? when|as|if|once|with|above|at|on|upon",
        f"{_P} .. holds|held|holding steady|up|well|good|constant|fine|now",
        f"{_P} =now holds",
        f"{_P} is|was|reads|within|inside|in|to|up|well|right|back|where|its|it|should|be|the? spec|limits|specification|specifications|normal|green|range",
        f"{_P} strong|steady|rock-solid|solid|spot-on|excellent|perfectly|perfect|brilliant|healthy|alright|satisfactory|adequate|correct",
        f"{_P} is|was|stays|stayed|remains|remained|remained|holds|held|looks|seems|all|rock|very|perfectly|completely|absolutely|nice|quite strong|steady|solid|excellent|spot|alright|healthy|constant|satisfactory|correct|up",
        "good|normal|great|fine|healthy|decent|perfect|full|proper|plenty|excellent|strong|adequate|steady|correct|satisfactory|nice of? engine? oil? pressure|psi|reading|readings",
        f"{_P} measured|checked|tested|proved|proven|confirmed|verified as|to|be|at? good|normal|right|fine|ok|correct|spec|specification",
        f"{_P} =didnt|=doesnt|=never drop|drops|dropped|fall|falls|waver|wavers|falter|faltered",
        f"{_P} did|does not drop|fall|waver|falter",
        f"{_P} has|have|had never|always? been? good|normal|fine|perfect|ok",
        f"{_LAMP} =goes|=went|=go =out|=off =when|=as|=if|=once|=with|=above|=at|=just|=immediately|=soon",
        f"{_P} jumped|came|shot|went|rose|sprang|climbed|jumps right|straight? back? up? to? normal|full|where|spec|good",
        "up|back|returns|returned|recovers|goes|comes|came to? normal|full pressure?",
    ),
    Shows.TRIPS: (
        "shuts|shut|shutting itself? down|off on? low? oil? pressure",
        "trips|tripped|tripping out? on? low? oil? pressure",
        "low oil pressure? shutdown|trip|cutout",
        "shut|shuts|cut|cuts|switch|switches|switching|turns|turning|kills|killing|stops|stopping itself|themselves|herself down|off|out?",
        "shuts itself down|off",
        "safety|protection shuts|shut|trips|tripped",
        "trips|tripped|tripping|cuts|cut|shuts|shut|shutdown|stops|stopped|kills|killed out|off|down|itself|the|engine|motor? on|with|from|for|due|by low? oil? pressure|protection|switch|shutdown",
        "low|oil pressure? pressure? shutdown|shut-down|trip|trips|tripped|cutout|cut-out|shutdowns",
        "safety|protection|cutout|pressure-switch|guard shuts|shut|trips|tripped|stops|stopped|cut|kills",
        "auto|automatic|automatically shut|shuts|shutdown|shut-down down?",
    ),
}
#: the same where a clause begins so, in a text that speaks of the pressure: "drops when hot"
BARE: dict[Shows, tuple[str, ...]] = {
    Shows.NONE: (
        "=zero|=none|=nothing =when|=at|=on|=again|=until|=within|=once",
        "drops|cuts out completely",
    ),
    Shows.LOW: (
        "drops|drop|dropped|dropping|falls|fall|fell|falling|sinks|sank|dips|dipped|sags|sagged|dip off|away|down|back|out|to?",
        "goes|going|went down|low|lower|off",
        "too? =low|=lower|=poor =when|=at|=on|=once|=in|=after|=with|=hot|=only|=during|=under|=since|=from|=ever",
        "reads|runs|sits|stays very|too|a|bit|quite|always? low|lower|poor",
        "not as high|good as",
        "@pressure|@number less|lower|down than|on before|usual|normal|it|what|previously|used",
    ),
    Shows.FALLING: (
        "fades|fading|faded|tails|bleeds|dies|ebbs away|off|down?",
        "drops|falls|drop|fall|dropping|falling off? as|when|with|once|above|past|over the? revs|rpm|rpms|rev|speed",
        "drops|falls|sinks|fall|drop bit by bit",
        "slowly|gradually|steadily drops|falls|sinks|dropping|falling|goes|going down?",
    ),
    Shows.UNSTEADY: (
        "wavers|wavering|fluctuates|fluctuating|bounces|bouncing|flickers|flickering|flickered|blinks|blinked|flashes|swings|swinging|wags",
    ),
    Shows.LAMP: ("comes|came|coming =on",),
    Shows.LOST: ("disappears|disappeared|vanishes|vanished|dies",),
    Shows.NORMAL: (
        "picks|comes|goes|rises|climbs|shoots|jumps|recovers up|back|right =up|=back? =when|=as|=if|=once|=with|=above|=on|=at",
    ),
}
#: what a needle does while one watches, and what is done to the engine then
FALLS = frozenset(
    ["drops", "drop", "dropped", "dropping", "falls", "fall", "fell", "falling", "sinks", "dips"]
)
#: what shows is gone when: "goes away after a minute"
GOES, AWAY = frozenset(["goes", "went", "go"]), frozenset(["away", "out", "off"])
STOPS_THEN = frozenset(["disappears", "disappeared", "vanishes", "quiets", "quietens", "clears"])
#: before "back": the pressure is there again; and one word for it
COMES_BACK = frozenset(["comes", "came", "full", "normal", "right", "straight", "goes", "climbs"])
STEADIES = frozenset(
    ["recovers", "recovered", "returns", "steadies", "settles", "stops", "stopped"]
)
#: beside years: it was used so long
IN_USE = frozenset(["driven", "used", "owned", "daily", "drove", "served", "worked", "ridden"])
#: circumstances that are a time that passed, and numbers that are one
PASSED = (Circumstance.MINUTES, Circumstance.LATE)
TIMES = frozenset(["minutes", "seconds"])
#: says that it is so at no other time: "drops above 4000, fine below"
_FINE = "fine|ok|okay|good|normal|right|perfect|alright|steady|healthy"
OTHERWISE = (
    f"{_FINE} below|under|otherwise|elsewhere that|it|this?",
    f"otherwise its|is|all? {_FINE}",
    f"{_FINE} the rest of the time",
    f"{_FINE} at|in|on any|all other times|time|speeds|revs|rpm|gears",
    f"{_FINE} at|on lower|slower revs|rpm|speeds",
)
REVVED = frozenset(
    [
        "revs",
        "rev",
        "revved",
        "revving",
        "rpm",
        "rpms",
        "rise",
        "rises",
        "raised",
        "rising",
        "increase",
        "increases",
        "increased",
        "throttle",
        "up",
    ]
)
#: a clause that only says so, in a text that speaks of the pressure
NO_PRESSURE = frozenset(["zero", "nothing", "nil", "nought", "0"])
#: begins what says that the starter turned the engine
CRANKED = frozenset(["cranked", "cranking", "cranks"])
#: all that a clause says where the starter brought no pressure: "cranked it again, still nothing"
NONE_BY_STARTER = NO_PRESSURE | frozenset(["nada", "zip", "zilch", "nope", "none", "nowt"])
BESIDE_NONE = frozenset(["still", "but", "and", "at", "all", "absolutely", "got", "just", "again"])
#: straight after "knock": it is a sensor, a blow or what somebody does
KNOCKED = frozenset(["free", "sensor", "off", "gone", "it", "them", "out", "back", "through"])
#: heads that need a word of an instrument near, because they are said of anything
VAGUE = frozenset({Shows.NORMAL})
#: the finding a noise or lamp is, where it is denied or doubtful
FINDING_OF: dict[Shows, str] = {
    Shows.KNOCK: "bearing_knock",
    Shows.TICKING: "lifters_clatter",
    Shows.RATTLE: "rattle_of_unknown_place",
    Shows.WHINE: "pump_noise",
    Shows.GRINDING: "grinding_noise",
    Shows.SQUEAK: "squeaking_noise",
    Shows.SMOKE: "blue_smoke",
    Shows.LAMP: "lamp_comes_on",
    Shows.UNSTEADY: "needle_flickers",
    Shows.ROUGH: "engine_runs_rough",
    Shows.LOST_POWER: "stopped_with_loss_of_power",
    Shows.NO_START: "will_not_start",
    Shows.HIGH: "gauge_reads_high",
}
#: the same as kinds of figure
LONG_KINDS = frozenset(["weeks", "months", "years"])
#: in these a pressure falls without anybody watching
LONG_TIMES = frozenset(["weeks", "months", "years", "seasons", "summers", "winters", "season"])
