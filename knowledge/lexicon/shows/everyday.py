"""Everyday verbs and names of what needle, pressure and lamp do; see ``pressure``."""

from __future__ import annotations

from knowledge.reports.words import Shows

_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"
_GAUGE = "gauge|needle|pointer"
_LAMP = "light|lamp|symbol|icon|telltale|tell-tale"
_OIL = "oil|pressure|red|warning|idiot|can"
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
_ZERO = "zero|nothing|nil|0|nada|bottom|naught|nought|zilch"
_WAY = "way|right|straight|all-the-way|well|clean|almost|nearly|down|back|off|completely|suddenly"
_SLOWLY = "slowly|gradually|steadily|progressively|constantly|continuously"
_CREEPS = (
    "creeps|crept|creep|creeping|drifts|drifted|drift|drifting|eases|eased|edges|edged|slides|slid|bleeds|bled|bleeding|trickles|"
    "drops|dropped|drop|dropping|falls|fell|fall|falling|sinks|sank|sink|sinking|goes|went|going|declines|declined|tails|tailed"
)
_ABOUT = "around|about|all|everywhere|up|back|wildly|madly|like"
_BOUNCES = (
    "bounces|bounced|bounce|bouncing|dances|danced|dance|dancing|jumps|jumped|jump|jumping|wanders|wandered|wander|wandering|swings|"
    "swung|swing|swinging|hunts|hunted|hunting|surges|surged|surging|flutters|fluttered|flutter|fluttering|quivers|quivered|quiver|"
    "quivering|twitches|twitched|twitch|twitching|shakes|shook|shake|shaking|trembles|trembled|tremble|wobbles|wobbled|wobble|"
    "wobbling|waves|waved|waving|wags|wagged|fluctuates|fluctuated|fluctuate|fluctuating|oscillates|oscillated|oscillate|flits|jitters|"
    "jittered|jitter|vibrates|vibrated|vibrate|bobs|bobbed"
)
_BLINKS = (
    "flickers|flickered|flicker|flickering|blinks|blinked|blink|blinking|flashes|flashed|flash|flashing|winks|winked|wink|winking|"
    "twinkles|twinkled|twinkle|pulses|pulsed|pulsing"
)
_LIGHTS = "lights|lit|light|lighting|glows|glowed|glow|glowing|illuminates|illuminated|illuminate|illuminating|shines|shone"
SHOWS_EVERYDAY: dict[Shows, tuple[str, ...]] = {
    Shows.NONE: (
        "nil|nought|naught|zilch oil? pressure|psi|reading",
        f"{_P} lies|lay|lie|lying|rests|resting|parked|sits|sitting|flat on|at|against the? stop|peg|pin|bottom",
        f"{_GAUGE} on the? stop|bottom-stop|bottom-peg",
        "no|zero oil? pressure|reading whatsoever|at-all|of-any-kind",
        "@not|never|couldnt|cant get|got|have|getting a|any? reading|deflection|needle on|from|at|out-of? the|my? gauge|dial|needle?",
        "=neither of? them|the? gauge|gauges|gage|dial|one? shows|showed|show|reads|read|registers|registered|register|gave|moves|moved|move|saw|has|had any? oil? pressure|anything|reading|needle|at-all",
        f"{_P} {_DROPS} {_WAY}? to|at|on|near {_ZERO}",
        f"{_GAUGE} @not|never even? move|moves|moved|moving|budge|budges|budged|lift|register|registers|twitch|stir at? all?",
        "gauge|needle|pressure|it bottoms|bottomed|bottom|bottoming out|completely",
        f"{_P} falls|fell|fall|falling|goes|went|go|going|lies|drops =flat|=dead|=limp",
        "flat|dead|lifeless|limp|bottomed|blank oil? gauge|needle",
        "gauge|needle reads|reading|showing|shows|at|on zero|nothing|nil|naught|zilch",
        "no|zero|without movement|sign|flicker|life|response on|from|in|out-of|of the|my? oil? pressure? gauge|needle",
        f"{_P} shows|showed|show|showing|reads|read|reading no|zero|nil oil? pressure|reading|psi",
    ),
    Shows.NORMAL: (
        "perfect|fine|good|great|ok|okay|normal|spot-on|faultless|strong|solid when|on|at|with|from|if|while? a|an|the|it's|its|is|stone? =cold",
    ),
    Shows.LOW: (
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
    Shows.HIGH: (
        f"{_P} hits|hit|hitting|on|at|against|touches|reaches|reached|finds the? top|upper|right|far|maximum|max peg|stop|pin|end|mark",
        f"{_P} runs|ran|run|running|is|was|being|sits|stays|reads|reading|goes|going way|far|much|a-bit|really|very|too? too? high",
        f"{_P} shoots|shot|shoot|shooting|rockets|rocketed|spikes|spiked|spike|spiking|soars|soared|soar|climbs|climbed|jumps|jumped|goes|went|go up? sky-high|skyhigh|sky|through-the-roof|way-up|off-the-charts high?",
        f"{_P} spikes|spiked|spiking|skyrockets|skyrocketed|soars|soared|rockets|rocketed",
        "spike|spikes|surge in|of oil? pressure",
        f"{_P} goes|went|go|going|gone|shoots|shot|climbs|climbed|is|was|reads|runs right|straight|way|clean? off|past|beyond|over the? scale|dial|clock|chart|charts|top|end",
        f"{_P} pegged|pinned|maxed|maxes|max|maxing|buried|topped|tops|jammed|stuck out|at|on|to|against|over|hard? the? max|maximum|top|high|right|stop|limit|full side|end|peg?",
        "pegged|pinned|maxed|maxed-out|buried|pegging|sky-high|skyhigh|off-the-scale out? oil? gauge|needle|pressure|psi",
        f"{_P} reads|read|reading|is|was|runs|sits|being|showing way|far|much|crazy|insanely|stupidly|abnormally|unusually|ridiculously|too too? high",
        f"{_P} =off the? scale|clock|dial|chart|charts",
    ),
    Shows.UNSTEADY: (
        "flicker|flickers|flickering|blink|blinking|flash of|from|on|in the|my|an? oil|red|warning|pressure pressure|warning? light|lamp",
        f"{_P} swings|swung|swing|swinging|goes|went|moves|moved|jumps|wanders|bounces back and|& forth",
        "unstable|unsteady|erratic|jumpy|fluctuating|wandering oil? pressure? readings|reading|pressure|gauge|needle",
        f"oil? {_P} =up and|& =down",
        f"{_P} {_BOUNCES} {_ABOUT}? over|up|and|down|about|around|the|place|all?",
        f"{_P} {_BOUNCES}",
        f"{_P} is|was|goes|went|jumping? all over the? place|shop|dial|scale|gauge|map?",
        f"{_P} goes|went|going|up up? and down",
        f"{_P} @not|never|wont settle|settles|stay|stays|sit|hold still|steady|down",
        "bouncing|bouncy|dancing|jumpy|jumping|erratic|twitchy|twitching|wandering|swinging|quivering|shaky|shaking|fluctuating|wobbly|wild|unstable|flickering oil? pressure? gauge|needle|reading|readings|pressure",
        f"{_OIL} oil|pressure|warning? {_LAMP} {_BLINKS} at|on? me|and? on? and? off?",
        f"{_BLINKS} oil|red|warning|pressure|oil-pressure pressure|can|warning? {_LAMP}",
        f"{_LAMP} {_BLINKS}",
        "oil|warning|red light|lamp goes|going|comes|keeps-going|keeps-coming on and off",
    ),
    Shows.LAMP: (
        f"{_OIL} oil|pressure|can|warning? {_LAMP} {_LIGHTS} up?",
        f"{_LAMP}|warning flicks|flicked|flick|flicking|kicks|kicked|kick|kicking|clicks|clicked|clicking|blips|blipped|snaps|snapped|pops|popped|pop|popping on|in|up",
        f"{_LAMP} being|be|been on|lit",
        "an|the|a|my oil|oil-pressure|low-oil-pressure pressure? warning|alarm|alert at|on|when|in|after|under|while|during|for",
        f"{_OIL} oil|pressure|can|warning? {_LAMP} comes|came|coming|come|goes|went|pops|popped|flicks|clicks|pops-up on",
        f"{_OIL} oil|pressure|can|warning? {_LAMP}|warning|message pops|popped|pop|popping|shows|showed|appears|appeared|appearing|comes|came up? up? on|in? the|my? dash|dashboard|cluster|screen|display?",
        f"{_OIL} oil|pressure|can|warning? {_LAMP} staying|stays|stayed|stay|still|stuck lit|on|alight|ablaze|illuminated",
        f"{_OIL} oil|pressure|can? {_LAMP} lit|on|illuminated|ablaze|alight|glowing",
    ),
    Shows.SLOW: (
        f"{_P} lags|lagged|lag|lagging behind|badly|a? bit|lot?",
        "oil? pressure lag|delay",
        "lag|lags|delay|delays in|on|of|with oil? pressure",
        f"{_P} @not come|comes|coming|build|builds|rise|register|show|move up? for|until ages|a|several|few|some|@seconds|forever while|seconds|bit|time?",
        f"{_P} comes|came|come|coming|climbs|climbed|climb|climbing|rises|rose|builds|built|creeps|crept|crawls up? very|really|so|too|quite|rather|painfully? slowly|slow up?",
        f"{_P}|engine|it takes|took|taking|take|needs|needed .. time|while|ages|forever|long|seconds|age|eternity to|before .. come|comes|build|builds|show|shows|register|registers|rise|move|appear|pressure|respond|react",
        f"{_P}|engine|it takes|took|taking|take|needs|needed .. time|while|ages|forever|long|seconds|age|eternity to|before get|gets|pump|pumps|go|goes up|there|anywhere|going",
        f"{_LAMP} takes|took|taking|take .. time|while|ages|forever|long|seconds|age|eternity to|before go|goes|it|extinguish|clear",
        "several|a-few|few|many|some seconds|moments|secs before|until|till|to|without|with|for .. pressure|gauge|needle",
        "slow oil? pressure build|build-up|buildup|rise up?",
        f"{_P}|light very|really|so|too|a-bit|rather? slow|late|lazy|delayed|tardy|sluggish to|in|coming|getting|at come|coming|build|building|rise|rising|register|move|go|going|respond|show|up|out? up|out?",
        "delayed|late|lagging|tardy|laggy|sluggish oil? pressure|gauge",
        "engine|motor|car|truck|tractor|boat|it is|was|being|be|very? slow|slower to|at build|make|get|building|making|getting|find oil? pressure",
    ),
    Shows.LOST: (
        "oil? pressure|psi just|simply|suddenly? quits|quit|quitting|dies|died|dying|conks|expires",
        "pressure|psi that|which just|suddenly? quits|dies|disappears|vanishes|goes",
        "vanishing|disappearing oil? pressure|psi|gauge",
        f"{_P} drops|dropped|drop|dropping|cuts|cut|goes|went|conks out completely?",
        f"{_P} packs|packed up",
        f"{_P} vanishes|vanished|vanish|disappears|disappeared|disappear|evaporates|evaporated",
        f"{_P} goes|went|go|going =away",
        "lose|loses|losing|lost|loose|loosing|loss-of|complete-loss-of all|my|the|its|our|of? oil? pressure|psi",
    ),
    Shows.FALLING: (
        f"{_P} {_SLOWLY} {_CREEPS} down|off|away|back|lower?",
        f"{_P} {_CREEPS} {_SLOWLY} down|off|away|back|lower?",
        f"{_P} {_CREEPS} down|off|away|lower =bit|=slowly|=gradually|=steadily by? bit?",
        f"{_SLOWLY} {_CREEPS} oil? {_P}",
        "steadily|slowly|gradually|constantly falling|dropping|sinking|declining|decreasing|dwindling oil? pressure|psi|reading",
        f"{_P} gets|getting|got|goes|going|went lower|weaker and lower|weaker",
    ),
}
#: the same of "it", where gauge, pressure or lamp was named last: "It goes to nothing in bends"
OF_THE_GAUGE: dict[Shows, tuple[str, ...]] = {
    Shows.NONE: (
        f"{_DROPS} {_WAY}? to|at|on {_ZERO}",
        "bottoms|bottomed out",
        "falls|goes|drops =flat|=dead",
        "reads|read|shows|showed|sits|stays|is|says on|at? zero|nothing|nil|dead|no-pressure",
        "@not|never even? move|moves|moved|budge|register|registers|lift|twitch at? all?",
    ),
    Shows.LOW: (
        f"{_SAGS} {_WAY}? down|low|off|away?",
        "reads|read|runs|is|was|sits|goes very|too|so|really|quite|a-bit|way|pretty? =low|=weak",
        f"{_FALLS} {_WAY}? down|off|low|away|back",
        f"{_DROPS} {_WAY}? down? in|into|to|towards|near the? red|danger|bottom zone?",
        f"{_HOVERS} just|only|right? {_NEAR} the? {_BOTTOM}",
        "barely|hardly|scarcely moves|moved|lifts|leaves|registers|shows|gets",
        "=drops|=falls|=dips|=dropped|=fell|=dipped",
    ),
    Shows.HIGH: (
        "pegs|pegged|maxes|maxed|pins|pinned|buries out|itself|at|on|over|to|against",
        "goes|went|shoots|shot|climbs|climbed|is|was|reads right|straight|way? off|past the? scale|dial|clock|chart|charts|top",
        "is|was|reads|read|runs|goes way|far|much|too|really? too? high|pegged|pinned|maxed",
        "shoots|shot|spikes|spiked|rockets|rocketed|soars up|sky-high|high?",
    ),
    Shows.UNSTEADY: (
        f"{_BOUNCES} {_ABOUT} over|up|and|down|the|place|all?",
        f"{_BLINKS} at? me|on? and? off?",
        f"{_BOUNCES}",
    ),
    Shows.LAMP: (
        "lights|lit up",
        "comes|came|goes|pops|flicks|stays|stayed =on|=lit",
        "glows|glowed|illuminates|illuminated|stays-lit",
        "pops|popped|comes|came|shows up on the|my? dash|screen|cluster|display",
    ),
    Shows.LOST: (
        "disappears|disappeared|vanishes|vanished|evaporates",
        "drops|cuts out",
        "goes|went =away",
    ),
    Shows.FALLING: (
        f"{_SLOWLY} {_CREEPS} down|off|away|back?",
        f"{_CREEPS} {_SLOWLY} down|off|away?",
        "creeps|crept|drifts|drifted|edges|eases|slides|bleeds|tails|trickles down|off|away|lower",
    ),
    Shows.SLOW: (
        "takes|took|needs .. ages|forever|while|long|seconds|time|@seconds to|before .. come|build|register|rise|move|show|go|up|out",
        "comes|climbs|rises|builds up? very|really|so|too? slowly|slow",
        "is|was very|really|so|too|a-bit? slow|late|lazy to|coming|in",
    ),
}
