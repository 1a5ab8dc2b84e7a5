"""Words for pressure that is slow to come or go."""

from __future__ import annotations

from knowledge.reports.words import Shows

_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"
_LAMP_OR_SOUNDER = "light|lamp|buzzer|alarm|beeper|bleeper|sounder|annunciator"
_LAMP = "light|lamp|buzzer|alarm|warning"
_LAMP_OR_SYMBOL = "light|lamp|symbol|icon|telltale|tell-tale"

#: what shows, by what is said
SHOWS: dict[Shows, tuple[str, ...]] = {
    Shows.SLOW: (
        "slow to build|come|rise|register|show|go",
        "climbs|climb|climbed|creeps|crept|builds|built|rises|comes up? slowly|slow|gradually .. @seconds",
        "slowly|gradually climbs|climb|climbed|creeps|crept|builds|built|rises|comes up? .. @seconds",
        f"{_P} sits|stays|stuck|rests|stayed|sat|hangs on|at the? peg|pin|stop|zero|bottom|nothing for about|around|nearly|a|good|at-least? @seconds",
        "no oil? pressure till|until|unless .. crank|cranked|cranking|rev|revved|ages|while|@seconds|minute|spun|turned",
        "no|zero|nil oil? pressure at? all? for about|around|nearly|a|good? @seconds|@minutes ,? then|before|and|until comes|came|come|rose|jumped|rises|it|all",
        f"{_P} .. nothing|zero|0|nil|dead for about|around|nearly|a|good? @seconds .. ,? then|before|and|until comes|came|come|rose|jumped|jumps|rises|climbs|it|springs",
        "every|each|first morning|start|cold-start|time it|this|that|always? takes|needs about|around|some|only? @seconds",
        "longer it|gauge|needle|pressure|light|lamp takes|needs",
        f"{_P} slow|slowly to? builds|build|come|comes|rises|rise up?",
        f"{_P} builds|comes|rises up? slowly|slow",
        "takes|took|taking .. seconds|ages|while|long|minute|forever|sec|time to build|come|get|show|go|register|for",
        f"{_LAMP_OR_SOUNDER} slow to go? out|off",
        f"{_LAMP_OR_SOUNDER} =goes|=went out|off after|in|within|about|only? @seconds",
        f"oil? {_LAMP_OR_SOUNDER} stays|stayed|is|on on? for? about|around|roughly|a|good? @seconds",
        "takes|took|after about|around|a|good|at|least? @seconds to|before|for",
        "@seconds to build|come|show|register",
        "@seconds to get|go pressure|up|any|oil|out|there|going|a",
        "delay .. pressure",
        "pressure @not build|come|show up? for|until",
        "slow|slowly to? build|builds|building|come|comes|rise|rises|rising|register|show|go|pick|get up? oil? pressure",
        "slow pressure|build-up|buildup|build",
        f"{_P} .. slow|slowly|ages|long|forever|while to? build|builds|come|comes|rise|rises|register|registers|show|shows|get|appear",
        f"{_LAMP_OR_SOUNDER} .. slow|long|ages|forever|while|longer to|before|going|and|it? go|goes|going|it|extinguish|clear out|off?",
        f"{_LAMP_OR_SOUNDER} takes|took|taking .. to|before|it? go|goes|clear|out|extinguish out|off?",
        f"{_LAMP_OR_SOUNDER} stays|stayed|remains|remained|is|was|lit|on|lights on? .. longer|long|seconds|@seconds|ages",
        f"{_LAMP_OR_SOUNDER} stays|stayed|remains|remained|is|was|lit|on|lights on? .. a|good|little|short|long while",
        "gauge|pressure|needle|light|lamp takes|took|needs about|around|over|nearly|a-good? @seconds|@minutes",
        "takes|took|taking|needs|needed|about|around|good|at|least|maybe|to? @seconds|@minutes to|before|for|until .. pressure|build|builds|come|comes|go|goes|register|registers|out|show|shows|light|gauge|needle|move|rise",
        "takes|took|taking|needs .. ages|forever|long|longer|while|time|seconds to|before|for|until .. pressure|build|builds|come|comes|go|goes|register|registers|out|show|shows|gauge|needle|move|rise",
        "@seconds to|before|until .. pressure|build|builds|come|comes|register|registers|show|shows|gauge|needle|move|light|lamp",
        "@seconds of|with|without no? .. pressure|oil",
        "no indication|reading|pressure for|in|during the? first @seconds|@minutes|minute|few",
        "no|zero|nil oil? pressure for|until|in about|around|a|the|nearly|almost? good|full|whole|first|long? @seconds|minute|minutes|while|time",
        "no|zero|nil oil? pressure|reading for|until|in about|around|the|roughly|up|to|a|first|at? first? @seconds|few|several|couple seconds|of?",
        "no|zero|nil oil? pressure|reading|movement on the|my? gauge for|until about|around|the|roughly|maybe|a|good? @seconds|@minutes|ages|while",
        "lag|delay before|in|until|of|getting|building .. pressure|oil",
        "delayed oil? pressure",
        "=loses|=lose|=losing|=loosing =prime",
        "delay|lag|pause|wait .. before|until .. pressure|gauge|needle|light|lamp",
        "takes|took|needs .. @seconds .. before|to|for|until .. pressure|gauge|needle|light|moves|build|register",
        "light|lamp|it fades|dims|goes|went|faded out|off|away very|only|quite? slowly|gradually|after|over",
        "light|lamp slowly|gradually|eventually fades|fading|goes|dims out|off|away?",
        f"{_P} .. good|long|fair|quite|little|bit while|time|wait|moment|bit to|before|until come|comes|move|build|rise|off|it|register|show|wake",
        f"{_P} .. wakes|wake|woke up? after|slowly|late",
        f"{_P} .. sleepy|reluctant|tardy|late to|coming|building",
        f"{_P} takes|took|taking its|a|an|some|ages|forever time|age|ages|eternity|while|long-time?",
        f"{_P} creeps|crept|crawls|crawled|inches up real|really|very|so|pretty|quite? slow|slowly",
        f"{_P} takes about? the? same time",
        f"oil|pressure|warning {_LAMP} for? about? @seconds|@minutes after|at|on|from|every|each",
        f"{_LAMP} is|was? sounds|rings|burns|shows|lit|on|beeps on? for about|around|nearly|a|good|some? @seconds|@minutes after|at|from|on|every|each",
        f"{_P} delayed|late by? about|some|around? @seconds|@minutes",
        f"{_P} reads|shows|says|registers|at|on|stays|sits|is|showed|read nothing|zero|nil|none|dead|low until|till its|it|engine|has|has-been|is been? running|run|ran|warmed .. @minutes|@seconds|minute|minutes|while|seconds|bit",
        "no|zero|nothing oil? pressure? on|showing? the? gauge|needle? until|till its|it|has|is been? running|run|ran for? about|around|over|a|two|three? @minutes|@seconds|minute|minutes|while|seconds|bit",
        f"{_P}|it|and .. takes|took its|their time coming|to come? back|up",
        "lazy|sluggish|tardy|reluctant|slow|late|ages|forever to? come|coming|comes|get|getting up|to|going",
        f"{_P} still? lazy|sluggish|tardy|reluctant",
        f"{_P} crawls|crawled|creeps|crept|inches|climbs|climbed|rises up? over|in|within about|some|nearly? half? a|@seconds|@minutes minute?",
        f"{_LAMP} =lingers|=lingered|=lingering|=dawdles on?",
        f"{_LAMP} hangs|hung on|about|around",
        f"{_LAMP} stays|stayed|is|remains on? till|until i|you|its|it rev|revs|revved|blip|give|past|over|up",
        f"{_P} lags|lagged|lag|lagging behind|badly|a? bit|lot?",
        "oil? pressure lag|delay",
        "lag|lags|delay|delays in|on|of|with oil? pressure",
        f"{_P} @not come|comes|coming|build|builds|rise|register|show|move up? for|until ages|a|several|few|some|@seconds|forever while|seconds|bit|time?",
        f"{_P} comes|came|come|coming|climbs|climbed|climb|climbing|rises|rose|builds|built|creeps|crept|crawls up? very|really|so|too|quite|rather|painfully? slowly|slow up?",
        f"{_P}|engine|it takes|took|taking|take|needs|needed .. time|while|ages|forever|long|seconds|age|eternity to|before .. come|comes|build|builds|show|shows|register|registers|rise|move|appear|pressure|respond|react",
        f"{_P}|engine|it takes|took|taking|take|needs|needed .. time|while|ages|forever|long|seconds|age|eternity to|before get|gets|pump|pumps|go|goes up|there|anywhere|going",
        f"{_LAMP_OR_SYMBOL} takes|took|taking|take .. time|while|ages|forever|long|seconds|age|eternity to|before go|goes|it|extinguish|clear",
        "several|a-few|few|many|some seconds|moments|secs before|until|till|to|without|with|for .. pressure|gauge|needle",
        "slow oil? pressure build|build-up|buildup|rise up?",
        f"{_P}|light very|really|so|too|a-bit|rather? slow|late|lazy|delayed|tardy|sluggish to|in|coming|getting|at come|coming|build|building|rise|rising|register|move|go|going|respond|show|up|out? up|out?",
        "delayed|late|lagging|tardy|laggy|sluggish oil? pressure|gauge",
        "engine|motor|car|truck|tractor|boat|it is|was|being|be|very? slow|slower to|at build|make|get|building|making|getting|find oil? pressure",
    ),
}
#: the same of "it", where gauge, pressure or lamp was named last: "It goes to nothing in bends"
OF_THE_GAUGE: dict[Shows, tuple[str, ...]] = {
    Shows.SLOW: (
        "takes|took|needs .. ages|forever|while|long|seconds|time|@seconds to|before .. come|build|register|rise|move|show|go|up|out",
        "comes|climbs|rises|builds up? very|really|so|too? slowly|slow",
        "is|was very|really|so|too|a-bit? slow|late|lazy to|coming|in",
    ),
}
