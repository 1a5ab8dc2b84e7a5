"""Short ways to say what shows: by how much it is less, when it goes, what refuses; see ``pressure``."""

from __future__ import annotations

from knowledge.reports.words import Shows

_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"
_LAMP = "light|lamp|buzzer|alarm|warning"
_SHARE = "half|third|quarter|fraction"
_THEN = "what|usual|normal|the|last|before|it|on|from|than|yesterday"
#: what shows, by what is said
SHOWS_MORE: dict[Shows, tuple[str, ...]] = {
    Shows.LOW: (
        f"{_P} reads|is|runs|sits|shows|now about|around|some|roughly|maybe|by? @number|@pressure lower|less|down",
        f"{_P} lower|less|down by about|around|nearly|over? a? {_SHARE}|bit|lot",
        f"{_SHARE} of? the? oil? pressure =since|=it|=i|=we|=after|=now|=when|=that|=of|=only|=from",
        f"{_SHARE} of? its|the|my usual|normal|old|former oil? pressure?",
        f"{_P} is|was|now|only|just|about|reads|shows|at|to|around|a|barely {_SHARE} of? what|where",
        f"{_P} a? {_SHARE} of? what|where",
        "=pressure =half|=halved",
        f"{_P}? @pressure below|under|less|lower {_THEN}",
        f"{_P} @number|@pressure down from|on the|what|last|usual|normal|yesterday|before",
        "makes|gives|gets|has|have|shows|got|made|gave less|lower oil? pressure",
        f"{_P} lowish|feeble|thin",
        f"{_P} sits|is|was|just|barely|only|now|down|close|right|hovers|hovering just|barely|only|right|close|above|in|near|next|on|touching|almost|into above|in|near|next|to|on|into|at|over|inside? the? red",
        "lowish oil? pressure",
        f"hot|idle|tickover|{_P} =has|=have|=is|=been been? =gone|=going|=come|=coming|=dropped|=fallen|=crept =down",
        "hot idle|tickover is|was|still|now|seems down|poor|weak|feeble|sad",
        "no|without oil? pressure to speak of",
        "no oil? pressure worth the? name|mentioning|having",
        f"{_P} @not|wont|would|will @not? hold|keep|stay up?",
        "too|rather|very low an|a oil? pressure|reading",
        "it|its|been|is|was lower|low|down =ever =since",
        f"@not|cant manage|make|makes|reach|get|hold|build|produce|give|gives|do|pump more|better|over|above|even? than? one|a|about? {_SHARE} of? the|its|what|it? oil? pressure?",
        f"{_P} has|have|had? begun|began|started|beginning|starting to? go|going|come|coming down|lower",
        f"{_P} slowly|gradually|steadily|progressively|slightly? get|gets|getting|got|become|becoming|becomes a? bit|little|lot? lower|less|worse|weaker|poorer|low",
        f"{_P} is|was|a|lot|bit|much|far|way|quite|little? a|lot|bit|much|far|way|quite|little? =lower than|then i|i'd|id|he|she|we|they|you|expected|should|what|last|yesterday|others",
        f"{_P} goes|gets|dips|drops|falls|went|fell|dropped|as low as",
        f"{_P} @not|never come|comes|came|go|goes|gets|get|got|rise|rises|rose up? to|near|anywhere|past|above|over? what|where|normal|usual",
        f"{_P} crept|creeps|creeping|coming|come|drifting|slipped|slipping|sliding down|lower",
        "it|she has|had|is|keeps|been? been? crept|creeping|drifted|drifting|slipped|slipping|sagged|sagging|sunk down|lower",
    ),
    Shows.NONE: (
        "no|zero|nil|without a|any|the-slightest? reaction|response|movement|deflection from|on|in|at the|my? oil? pressure? gauge|needle|dial",
        "registers|registering|registered|indicates|indicated|indicating nothing|none|nil|zero",
        "nothing|none registers|registered|shows|showed|showing|reads|registering on? the|my? oil? pressure? gauge|dial",
        "nothing on the|my? oil|pressure? gauge|dial|needle",
        "refuses|refused|refusing|fails|failed|failing to? build|make|show|register|give|develop|raise any? oil? pressure",
        "@not|wont|would build|make|raise|develop|produce|hold any|a? pressure",
        "never made|had|got|shown|showed|registered any|the-slightest|a|one oil? pressure",
    ),
    Shows.LOST: (
        f"{_P} .. for a|an? brief|short|few? moment|second|seconds|instant|bit .. then|and|before|, then? nothing|zero|dead|nil|gone|none|dropped|fell|died|back",
        "then|and nothing|zero|nil|none|dead after|within about|only? @minutes",
        f"{_P} =goes|=went",
        f"{_P} =goes|=going =away",
        "keeps|kept|keep|starts|started|begins|began|was|is|been dropping|losing|loosing|shedding the|its|all|my? oil? pressure",
        "dumped|dumps|shed|sheds the|its|all|my oil? pressure",
    ),
    Shows.FALLING: (
        f"oil? {_P} sags|slides|drifts|fades|creeps|declines|drops|falls|sinks|sagged|drifted steadily|slowly|gradually|progressively to|away|off|down|from?",
    ),
    Shows.HIGH: (
        f"{_P} shows|showed|reads|gives|gave|registers far|much|way|well? too high|large|great a figure|reading|value",
        "far|much|way too high a figure|reading|pressure",
        f"{_P} is|was|goes|went|got|reads so|that =high",
        f"{_P} well|far|way|much|miles? above|over|past|beyond the? book|spec|manual|handbook|figure|figures|usual",
        f"higher|more oil? {_P} than the? book|spec|manual|normal|usual|before|it",
        f"{_P} too|very much|great|big|strong|large",
        f"{_P} .. over|past|beyond|off|round|around the? top|end of? the? scale|dial|gauge|range",
        f"{_P} is|was|sits|sat|reads|goes|went|runs|hovers|close|nearly|almost|up|right|near|very near|close|up|at|to|on|against the? =top|=maximum|=max|=redline|upper|high of? the|its? scale|dial|gauge|end|limit|maximum|max?",
        f"{_P} is|was|sits|sat|reads|goes|went|runs|close|nearly|almost|up|right|near|up|at|to|on|against the? =end of the|its scale|dial|gauge",
        f"{_P} .. close|near|up|almost to? the? red line|limit|mark at|maximum|max|top|on",
        f"{_P} .. round|over|across to the? stop|end|peg|pin|max|maximum",
        "pegs|pegged|pins|pinned|buries|buried|maxes|maxed the|my oil? pressure? gauge|needle",
        "going|climbing|rising|went|climbed|rose up? past|above|over|beyond @number|@pressure and|until|before|then",
    ),
    Shows.UNSTEADY: (
        f"{_P} goes|gets|went|got|is|was|a|bit|all|very jittery|twitchy|jumpy|shaky|shivery|wobbly|nervous",
        f"{_P} .. =acting|=acts|=acted|=playing|=plays|=played =up",
        f"{_P} .. =going|=goes|=went|=gone =mad|=crazy|=haywire|=nuts|=wild|=berserk",
        f"{_P} .. up and? down dance|jig",
        f"slight|little|bit|small|constant|occasional? =quiver|=flutter|=wobble|=twitch|=tremble|=flicker|=shiver|=tremor of|in|on|from the? oil? {_P}",
        f"{_P} has|got|a|with? got? the? jitters|twitch|shakes|dt's|wobbles|flutter|quiver",
    ),
    Shows.SLOW: (
        f"oil|pressure|warning {_LAMP} for? about? @seconds|@minutes after|at|on|from|every|each",
        f"{_LAMP} is|was? sounds|rings|burns|shows|lit|on|beeps on? for about|around|nearly|a|good|some? @seconds|@minutes after|at|from|on|every|each",
        f"{_P} delayed|late by? about|some|around? @seconds|@minutes",
        f"{_P} reads|shows|says|registers|at|on|stays|sits|is|showed|read nothing|zero|nil|none|dead|low until|till its|it|engine|has|has-been|is been? running|run|ran|warmed .. @minutes|@seconds|minute|minutes|while|seconds|bit",
        "no|zero|nothing oil? pressure? on|showing? the? gauge|needle? until|till its|it|has|is been? running|run|ran for? about|around|over|a|two|three? @minutes|@seconds|minute|minutes|while|seconds|bit",
        f"{_P}|it|and .. takes|took its|their time coming|to come? back|up",
        f"{_P} crawls|crawled|creeps|crept|inches|climbs|climbed|rises up? over|in|within about|some|nearly? half? a|@seconds|@minutes minute?",
        f"{_LAMP} =lingers|=lingered|=lingering|=dawdles on?",
        f"{_LAMP} hangs|hung on|about|around",
        f"{_LAMP} stays|stayed|is|remains on? till|until i|you|its|it rev|revs|revved|blip|give|past|over|up",
    ),
    Shows.LAMP: (
        "oil? pressure? buzzer|chime|gong|beeper|alarm|telltale|warning above|over|past|beyond|below @rpm|@number",
        "buzzer|alarm|beeper|horn and|+|plus|& the? engine|motor|limp|slow|speed|rev|power|limits|cuts",
        f"{_LAMP}|pre-alarm|prealarm comes|came|coming =in",
        "pre-alarm|prealarm|alarm|buzzer =at|=when|=in|=during|=on|=under|=only dead|slow|idle|hot|low|the|tickover|when|at",
        f"low lube|lub|lubricating|lo|engine? oil? pressure? pre-alarm|prealarm|{_LAMP}",
        f"oil|panel? pressure low|too-low {_LAMP}|message|pre-alarm|prealarm",
        "pressure lamp|light on|all|at|in|when|after|suddenly|lit|came",
        f"oil|the|an|low|pressure|this {_LAMP} =only|=always|=mostly|=usually =at|=when|=in|=on|=under|=after|=while|=during|=if|=with",
        f"{_LAMP} =once|=twice =when|=while|=in|=at|=on|=under|=after",
        f"{_LAMP} says|said|saying|shows|reading|for low oil pressure?",
        f"then|and the|an oil? {_LAMP}",
    ),
    Shows.TRIPS: (
        "quits|quit|stops|stopped|dies|cuts|cut|shuts|shut|faults|faulted out|off|down|itself? on|with|for a|the? low oil fault|code|shutdown|alarm|message|trip",
        "shut|shuts|shutting itself? down|off on|for|with|by low oil pressure?",
        "shutdown|shut-down|trip|tripped|stopped|stops|cuts on|for|with|by low oil pressure?",
        "low oil|oil-pressure shutdown|shut-down|shutdowns|trip",
        "trips|tripped|tripping|trip|shuts|shut|shutting|stops|stopped|cuts|cut|dies|died|failed itself|herself|set|engine? out|off|down|itself? on|for|with|by a|the? low? lube|lub|lubricating|engine|lo? oil? pressure|press",
        "trips|tripped|tripping|trip|shuts|shut|shutting|stops|stopped|cuts|cut|dies|died|failed itself|herself|set|engine? out|off|down|itself? on|for|with|by a|the|an? =lop|oil-pressure",
        "=lop|l.o.p trip|trips|tripped|shutdown|shut-down|shutdowns|fault|faults|stop|cutout|cut-out",
        "low lube|lub|lubricating oil pressure? trip|trips|tripped|shutdown|shut-down|shutdowns|fault|stop|cutout|cut-out",
        "stop|run|fuel|shutdown|shut-off|shutoff solenoid drops|dropped|dropping|trips|tripped|kicks|kicked out",
        "keeps|kept killing|cutting|shutting|stopping|tripping it|the|her|out|off|down engine|motor|off|down|out?",
    ),
    Shows.NORMAL: (
        "pressure|pressures ,|:|-|;|and|which|both|all ,|it|they|all? all|which|it|they|readings|readings? is|was|were|are|looked|looks|seemed|came|its|reads? "
        "perfectly|all|quite|pretty|within|in|out|back? good|fine|normal|ok|okay|great|perfect|healthy|spec",
        f"{_P} is|was|stays|stayed|sits|sat|remains|remained|always|right|still|exactly? always|right|still|exactly? where it|i|we|you should|expect|expected|belongs|normally|usually|always|like|want",
        f"{_P} never|didnt|doesnt moved|moves|move|budged|dipped|dip|dropped|drop|flickered|twitched|changed",
    ),
}
#: the same where a clause begins so, in a text that speaks of the pressure
BARE_MORE: dict[Shows, tuple[str, ...]] = {
    Shows.LAMP: (
        "comes|came|come =back =on at|when|after|in|if|again|as|with|once|hot|under|until|every",
        "=and|=but|=only|=light|=lamp =to|=then|=it? comes|came|come =back =on",
    ),
    Shows.NONE: (
        "=stays|=stayed|=sits|=sat|=remains|=remained|=stuck at|on =zero|=nothing|=nil|=nought",
        "=sometimes|=then|=next =nothing|=zero|=nil|=none|=dead",
    ),
    Shows.LOW: (
        "=low|=poor again|everywhere|throughout|all",
        "=down|=low hot|cold and hot|cold",
        "has|is|had|its|been|keeps|was|hes|shes|she|it been? =coming|=creeping|=crept|=going|=dropping|=slipping|=slipped|=drifting|=drifted|=sliding|=sinking|=falling|=easing down|lower|off|away",
    ),
    Shows.FALLING: (
        "sags|sinks|falls|drops|drifts|fades|creeps|declines|sagged|slides steadily|slowly|gradually|progressively to|away|off|down|from?",
    ),
    Shows.UNSTEADY: (
        "flickers|shivers|flutters|trembles|quivers above|over|only|at|when|in|on|up",
    ),
}
