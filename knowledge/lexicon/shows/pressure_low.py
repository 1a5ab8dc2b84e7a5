"""Words for low or falling pressure."""

from __future__ import annotations

from knowledge.reports.words import Shows

_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"
_SHARE = "half|third|quarter|fraction"
_THEN = "what|usual|normal|the|last|before|it|on|from|than|yesterday"
_GAUGE = "gauge|needle|pointer"
_DROPS = (
    "drops|dropped|drop|dropping|falls|fell|fall|falling|sinks|sank|sink|sinking|slides|slid|slide|sliding|plunges|plunged|plunge|"
    "dives|dived|dove|dive|diving|plummets|plummeted|plummet|tumbles|tumbled|tumble|slumps|slumped|slump|crashes|crashed|crash|"
    "goes|went|go|going|gone|swings|swung|comes|came|nosedives|collapses|collapsed"
)
_FALLS = (
    "drops|dropped|drop|dropping|falls|fell|fall|falling|sinks|sank|sink|sinking|slides|slid|slide|sliding|plunges|plunged|plunge|"
    "dives|dived|dove|plummets|plummeted|plummet|tumbles|tumbled|tumble|slumps|slumped|slump|crashes|crashed|nosedives"
)
_SAGS = "sags|sagged|sag|sagging|dips|dipped|dip|dipping|droops|drooped|droop|slumps|slumped|slump|wilts|flops|flopped"
_NEAR = "near|at|on|by|around|above|off|over|close-to|next-to|just-above|just-off"
_HOVERS = "hovers|hovered|hover|hovering|hangs|hung|hang|lingers|lingered|sits|sat|sit|sitting|stays|stayed|rests|rested|lives|floats"
_BOTTOM = "bottom|peg|pin|stop|zero|floor|deck|lowest-mark|red"
_WAY = "way|right|straight|all-the-way|well|clean|almost|nearly|down|back|off|completely|suddenly"
_SLOWLY = "slowly|gradually|steadily|progressively|constantly|continuously"
_CREEPS = (
    "creeps|crept|creep|creeping|drifts|drifted|drift|drifting|eases|eased|edges|edged|slides|slid|bleeds|bled|bleeding|trickles|"
    "drops|dropped|drop|dropping|falls|fell|fall|falling|sinks|sank|sink|sinking|goes|went|going|declines|declined|tails|tailed"
)

#: what shows, by what is said
SHOWS: dict[Shows, tuple[str, ...]] = {
    Shows.LOW: (
        "low|poor|weak|bad|marginal|insufficient|lousy|crap engine? oil? pressure|psi|reading|readings|indication",
        "low on oil? pressure",
        f"{_P} shows|showed|showing|reads|read|reading|registers|gives|makes|made hardly|barely|scarcely|almost|next anything|any|to",
        f"{_P} is|are|was|reads|goes|gets|seems|looks|stays|runs|still|reading|sits|quite|very|too|always|"
        "a|bit|really|just|being|went|shows|way|that's|very? quite|very|too|really|a|still|way|down? bit|little? "
        "low|lower|poor|weak|down",
        f"{_P} low|poor|down",
        f"{_P} drops|dropped|falls|drop|fell|dropping|falling|sinks|sank|dips|dipped down|off|low|away",
        f"{_P} goes|went|=gone|come|came down|off|low",
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
        f"{_P} in|on|of my|the|our|this .. drops|dropped|falls|fell|sinks|sank|dips|dipped|sags|sagged",
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
        "it|which|needle|gauge|that barely|hardly|scarcely shows|showed|showing|registers|registered|moves|moved|lifts|lifted",
        "starved|starving|starves|starvation|oil-starvation",
        f"{_P} down|off by|about|around|some|@pressure|@number @pressure|@number?",
        f"{_P} is|was|now|about|some|a? down|low|off by? about? @pressure|@number",
        "@pressure less|lower|down .. than|from|on before|it|used|normal|usual|was|what|last|always",
        f"{_P} @pressure|@number down|low|short|off|under|below",
        "drop|fall|decrease|reduction|dip in oil? pressure",
        "oil? pressure =drop|=fall|=dip|=sag",
        f"{_P} suffers|suffered|poor|lousy|terrible|pathetic|feeble|dismal|marginal|borderline|rubbish|awful|dreadful|sad",
        f"{_P} is|was|a|bit|looks|seems terrible|pathetic|feeble|dismal|marginal|borderline|rubbish|awful|dreadful|disappointing|lousy|bad",
        "pressure problem|problems|trouble|issue|issues",
        f"{_P} on the? low|lower|poor side|end",
        f"{_P} .. is|was|seems|looks|reads|sits|runs lower|less|weaker than|then normal|usual|before|it|i|he|what|ever",
        f"{_P} nearly|almost|right|close|just|sits|way|down? on|at|near|by|to|toward|towards the? =l",
        "has|with|got|shows|reads|about|now @pressure less|lower|down than|on before|usual|normal|it|what|previously|used",
        "everything|all|readings|figures|they|pressures is|are|reads|read|all|now|about|around? @number|@pressure lower|less|down",
        "@number|@pressure less|lower|down everywhere|throughout|across|all-round|overall",
        "see|seeing|get|getting|have|got|reads|reading|shows about|around|some|a? good? @number|@pressure less|lower than",
        "oil|pressure gauge|needle|pressure? is|was|sits|reads|goes|drops|down|now? well|right|just|almost|nearly|near? in|into|to|near|the? the? =red",
        "hair|whisker|touch|fraction|bit above|over|off the =red|red-line|red-zone",
        "port|starboard|stbd engine|motor|side|one? is|reads|runs|was|sits|shows? very|a-bit|too? =low",
        "left|right engine|motor is|reads|runs|was|sits|shows? very|a-bit|too? =low",
        f"{_P} way|well|far|much|miles down|low|below|under",
        f"{_P} halves|halved|nosedives|nosedived|plunges|plunged|dives|dived|tanked|wilts|collapses|dwindles|dwindled",
        f"{_P} is|was|has|dropped|drops|fell|falls|about|now|only|down|by|to by|to|about|only? half|third|quarter",
        "lost|loses|losing half|most|much|a-third|some of? my|the|its|our? oil? pressure",
        f"@not any|much|enough|a-lot|real|proper|decent|great|useful of? oil? {_P}",
        "isnt|wasnt|aint great|much|good|brilliant|clever|healthy|wonderful oil? pressure",
        f"{_P} isnt|wasnt|aint|arent great|much|brilliant|clever|wonderful|healthy|good|right",
        f"{_P} is|was|looks pants|rubbish|naff|shocking|dire|lousy|pathetic|dismal|tragic|abysmal",
        f"{_P} hangs|hanging|sits|sitting|stays|lives down? at|near|on|around|by the? bottom|low-end|low",
        "half|halved oil? pressure",
        f"{_P} shows|reads|sits|at|showing|reading|on half since|now|then",
        f"{_P} lazy|soft|miserable|measly|paltry|thin|puny",
        f"{_P} struggles|struggling|struggled|fails|failed to? get|reach|make|rise|above|past",
        f"{_P} lives|living|lurks|languishes|hovers|hovering in|near|at|on|around|just the|bottom|low|red|zero|above",
        f"{_P} has|had|is|was|been|going|gone|getting|gets|got lower|less|worse|poorer|down",
        "lower and lower",
        "lost|shed|dropped|down about|around|some|roughly|nearly|a? @pressure",
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
        f"{_P} only|still drops|drop|dropped|falls|fell|fall|dips|sags|sinks|plummets",
        f"{_P} @not|never|wont go|goes|going|get|gets|come|comes|rise|rises|climb|climbs|make|makes much? past|above|over|beyond|more|than than? a? quarter|third|first|lowest|bottom",
        f"{_P}|it only|just|barely|hardly? show|shows|showed|showing|reads|gives a|one? needle|needles|hair|fraction width|breadth",
        "a? needle|needles width|breadth of oil? pressure",
        f"{_P} @not|isnt|wasnt being|be|looking|too|very|so? great|brilliant|wonderful|healthy|impressive|happy|clever",
        "not so|very|too? great|brilliant|good|healthy|impressive oil? pressure|psi",
        f"lower|less|weaker|poorer than normal|usual|it|before|expected? should|was|used? be|to? be? oil? {_P}",
        f"{_P} {_FALLS} {_WAY}? =like =a",
        f"drop|drops|dip|dips|sag|sags|fall|falls|slump|decrease|dropoff|drop-off in|of|on oil? {_P}",
        f"sagging|dipping|dropping|falling|sinking|drooping|dwindling|flagging|feeble|wimpy|so-so|iffy|dodgy oil? {_P}",
        f"{_P} {_SAGS} {_WAY}? down|low|off|away?",
        f"{_P} {_FALLS} {_WAY}? {_WAY} down|off|low|away|back",
        f"{_P} goes|went|go|going|gone|comes|came right|way|well|straight? down|low",
        f"{_P} {_DROPS} {_WAY}? down? in|into|to|towards|toward|near the? red|danger|bottom|low|yellow zone|end|area|section|part|side?",
        f"{_P} {_HOVERS} just|only|right? {_NEAR} the? {_BOTTOM}",
        f"{_GAUGE} barely|hardly|scarcely|only-just|just-about off|moves|moved|moving|move|lifts|leaves|left|leave|gets|comes|above the? {_BOTTOM}?",
        f"{_GAUGE} barely|hardly|scarcely|only-just|just-about moves|moved|moving|move|lifts|leaves|gets|comes off|away|from? the? {_BOTTOM}",
        f"{_GAUGE} in|into|near|at|towards the? red|bottom|danger",
        f"{_GAUGE} falling|dropping|dipping|sagging off|down|away?",
        "hardly|barely|scarcely|very-little|precious-little|not-a-lot-of|not-enough any? oil? pressure|psi",
        f"{_P} very|so|really|awfully|worryingly|scarily|alarmingly|dangerously|rather|pretty|quite|extremely low|weak|poor|feeble|marginal|soft",
        "alarmingly|worryingly|dangerously|scarily|awfully|extremely|very|really low|weak|poor oil? pressure|psi|reading",
    ),
    Shows.FALLING: (
        f"{_P} keeps|kept|is|steadily|slowly|gradually|was steadily|slowly|gradually? dropping|falling|sinking|going|declining down?",
        f"oil? {_P} slowly|gradually|steadily drops|falls|sinks|declines|drop|fell|dropped|sank|fades|decays|creeps down?",
        f"oil? {_P} drops|falls|sinks|fades|bleeds|creeps|fades|fell|sank down? slowly|gradually|steadily|off|away",
        f"{_P} begins|began|starts|started|beginning|starting to? slowly|gradually|steadily? dropping|falling|sinking|drop|fall|sink|going|sag|fade|decrease|decline down|off?",
        f"{_P} continues|continued|continuing|keeps|kept to? drop|dropping|fall|falling|going|sinking|decreasing|declining|decrease",
        f"{_P} dropping|falling|sinking|decreasing|declining|fading|going|sliding|sagging rapidly|fast|quickly|steadily|slowly|gradually|away|off|down|now|continuously|bit",
        f"{_P} bleeds|bled|tails|tailed|trails|dies|died|fades|faded|ebbs|wanes|creeps|crept|drifts|drifted|edges|eases|sags|inches off|away|down|downwards|back",
        f"{_P} .. faded|fades|fading|ebbed|drained away|off|out",
        f"{_P} fades|fading|faded|wanes|ebbs|decays|decayed|decaying|drains",
        f"{_P} drops|falls|decreases|drop|fall|dropped|fell|goes|sinks|lowers|sags|declines as|when|whenever|with|once|above|over|if .. revs|rpm|rpms|rev|revved|throttle|speed|accelerate|accelerating|faster|load",
        f"{_P} drops|falls|decreases|goes|comes|sinks bit|little|slowly|gradually by|down|steadily bit|little",
        f"{_P} slowly|gradually|steadily|progressively going|goes|went|decreases|decreased|coming|came|comes|dropping|falling down?",
        "slow|gradual|steady drop|fall|decline|loss of|in oil? pressure",
        f"{_P} climbs|builds|rises|comes|goes|gets up? to|at @pressure|@number ,? and|but? then slowly|gradually|steadily? falls|drops|sinks|sags|fades|drifts away|off|back|down?",
        f"{_P} went|goes|going|came|drops|dropped|drop|dropping|falls|fell =bit|=little by bit|little",
        f"{_P} drifting|creeping|easing|slipping|sliding|trickling|ebbing|sagging lower|down|away|back|downwards",
        f"{_P}|it =creeps|=creeping|=drops|=drifts|=dies|=slides|=goes =down|=away|=off the longer|further|hotter|more",
        f"oil? {_P} sags|slides|drifts|fades|creeps|declines|drops|falls|sinks|sagged|drifted steadily|slowly|gradually|progressively to|away|off|down|from?",
        f"{_P} {_SLOWLY} {_CREEPS} down|off|away|back|lower?",
        f"{_P} {_CREEPS} {_SLOWLY} down|off|away|back|lower?",
        f"{_P} {_CREEPS} down|off|away|lower =bit|=slowly|=gradually|=steadily by? bit?",
        f"{_SLOWLY} {_CREEPS} oil? {_P}",
        "steadily|slowly|gradually|constantly falling|dropping|sinking|declining|decreasing|dwindling oil? pressure|psi|reading",
        f"{_P} gets|getting|got|goes|going|went lower|weaker and lower|weaker",
    ),
}
#: the same where a clause begins so, in a text that speaks of the pressure: "drops when hot"
BARE: dict[Shows, tuple[str, ...]] = {
    Shows.LOW: (
        "drops|drop|dropped|dropping|falls|fall|fell|falling|sinks|sank|dips|dipped|sags|sagged|dip off|away|down|back|out|to?",
        "goes|going|went down|low|lower|off",
        "too? =low|=lower|=poor =when|=at|=on|=once|=in|=after|=with|=hot|=only|=during|=under|=since|=from|=ever",
        "reads|runs|sits|stays very|too|a|bit|quite|always? low|lower|poor",
        "not as high|good as",
        "=lower|=weaker|=less than|then =normal|=usual|=before|=it|=ever|=previously",
        "@pressure|@number less|lower|down than|on before|usual|normal|it|what|previously|used",
        "=low|=poor again|everywhere|throughout|all",
        "=down|=low hot|cold and hot|cold",
        "much|far|way|noticeably|considerably|distinctly|a-lot|a-bit =lower|=less|=weaker than|now|since",
        "=nosedives|=nosedived|=plummets|=plummeted|=craters|=cratered|=dives|=slumps|=slumped|=tanks|=tanked",
        "=wont|=doesnt|=cant hold up? above|over|at|past|when|once|hot",
        "has|is|had|its|been|keeps|was|hes|shes|she|it been? =coming|=creeping|=crept|=going|=dropping|=slipping|=slipped|=drifting|=drifted|=sliding|=sinking|=falling|=easing down|lower|off|away",
    ),
    Shows.FALLING: (
        "fades|fading|faded|tails|bleeds|dies|ebbs away|off|down?",
        "drops|falls|drop|fall|dropping|falling off? as|when|with|once|above|past|over the? revs|rpm|rpms|rev|speed",
        "drops|falls|sinks|fall|drop bit by bit",
        "slowly|gradually|steadily drops|falls|sinks|dropping|falling|goes|going down?",
        "=drifts|=creeps|=tails|=fades|=dies =down|=off|=away",
        "sags|sinks|falls|drops|drifts|fades|creeps|declines|sagged|slides steadily|slowly|gradually|progressively to|away|off|down|from?",
    ),
}
#: the same of "it", where gauge, pressure or lamp was named last: "It goes to nothing in bends"
OF_THE_GAUGE: dict[Shows, tuple[str, ...]] = {
    Shows.LOW: (
        f"{_SAGS} {_WAY}? down|low|off|away?",
        "reads|read|runs|is|was|sits|goes very|too|so|really|quite|a-bit|way|pretty? =low|=weak",
        f"{_FALLS} {_WAY}? down|off|low|away|back",
        f"{_DROPS} {_WAY}? down? in|into|to|towards|near the? red|danger|bottom zone?",
        f"{_HOVERS} just|only|right? {_NEAR} the? {_BOTTOM}",
        "barely|hardly|scarcely moves|moved|lifts|leaves|registers|shows|gets",
        "=drops|=falls|=dips|=dropped|=fell|=dipped",
    ),
    Shows.FALLING: (
        f"{_SLOWLY} {_CREEPS} down|off|away|back?",
        f"{_CREEPS} {_SLOWLY} down|off|away?",
        "creeps|crept|drifts|drifted|edges|eases|slides|bleeds|tails|trickles down|off|away|lower",
    ),
}
