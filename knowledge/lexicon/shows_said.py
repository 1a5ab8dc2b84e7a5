"""Further words for what shows, of lamp, needle and pressure; see ``pressure``."""

from __future__ import annotations

from knowledge.reports.words import Shows

_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"
_LAMP = "light|lamp|buzzer|alarm|warning"
#: what shows, by what is said
SHOWS_SAID: dict[Shows, tuple[str, ...]] = {
    Shows.LAMP: (
        f"{_LAMP} lit|lights|lighted|flashed|sounded|appeared|showed up|on|once|twice|briefly|again|for|as|when|after|at|soon",
        "on|with|despite|ignoring the oil|warning|red? light|lamp",
        "red|oil|warning light|lamp staring|glaring|looking",
        "oil|red|pressure|warning telltale|tell-tale|can|symbol|caption|annunciator|icon|indicator|message lit|on|appeared|came|up|showing|shows|glowed|in",
        "oil|red telltale|can|symbol|caption|icon",
        "low oil pressure caption|message|annunciation|display",
        f"{_LAMP}|hooter|klaxon|siren|chime|horn beeped|bleeped|screeched|screamed|blared|rang|chimed|wailed",
        "hooter|klaxon|siren|chime sounded|went|came|goes|sounds off?",
        f"{_LAMP} glowed|glows|burned|burnt|shone steadily|brightly|bright|solid|red",
        "warned|warns of low? oil? pressure",
        f"{_LAMP} =kept|=keeps coming|going|lighting|flashing|appearing on|up|off?",
        "warning came|comes|popped|flashed|appeared up|on",
        "it|and stayed|stays|stuck =lit",
        f"{_LAMP} off|on and|& on|off",
    ),
    Shows.LOST: (
        f"{_P} collapsed|collapses|crashed|packed|bled away|up|out?",
        f"{_P} fell|dropped|went|gone off|over a|the cliff|edge|table",
        "all|every oil? pressure gone|lost|disappeared|vanished",
    ),
    Shows.NONE: (
        "to zero|nothing|nil =when|=once|=as|=hot|=warm",
        f"{_P} .. refuses|refused|refusing to come|move|rise|budge|lift|register",
        f"{_P} never|@not came|come|left|leave|leaves|lifted|moved|rose off|up|the|from",
        f"{_P} fell|dropped|went|is|was|sits|lies|at|against|to the? bottom|end|pin of|pin|stop|peg the? dial|scale|gauge?",
        f"{_P} flat|down on|at|to its? the? stop|bottom|peg|pin|zero|deck",
        f"{_P} flatlined|flat-lined|flatline",
        f"{_P} lies|lay|laid|lying dead|flat|on",
        "dead|blank|lifeless oil? gauge|needle|pressure",
        "not|@not a|one|single sausage|thing|flicker|glimmer|twitch|psi|pound on|of|from",
    ),
    Shows.LOW: (
        f"{_P} way|well|far|much|miles down|low|below|under",
        f"{_P} lazy|soft|miserable|measly|paltry|thin|puny",
        f"{_P} struggles|struggling|struggled|fails|failed to? get|reach|make|rise|above|past",
        f"{_P} lives|living|lurks|languishes|hovers|hovering in|near|at|on|around|just the|bottom|low|red|zero|above",
        f"{_P} has|had|is|was|been|going|gone|getting|gets|got lower|less|worse|poorer|down",
        "lower and lower",
        "lost|shed|dropped|down about|around|some|roughly|nearly|a? @pressure",
    ),
    Shows.HIGH: (
        f"{_P} hits|hit|hitting|reaches|reached|reads|wraps|wrapped|bangs|buried the|on|at|around|off|against stop|peg|end|top|max|maximum",
        f"{_P} went|goes|shot|shoots|flew up? to the? max|maximum|limit",
        f"{_P} far|much|way too high|much",
        f"{_P} climbs|climbed|climbing and climbs|climbed|climbing",
        f"{_P} keeps|kept on? climbing|rising",
    ),
    Shows.UNSTEADY: (
        f"{_P} .. twitching|dithering|dithers|see-sawing|seesaws|yo-yoing|chattering|trembling|trembles|shimmering|wandering|drunk|hunting",
        f"{_P} never|@not still|sits|sit|steady|settles|settled",
        f"{_P} jumpy|nervous|restless|all-over",
    ),
    Shows.SLOW: (
        f"{_P} .. good|long|fair|quite|little|bit while|time|wait|moment|bit to|before|until come|comes|move|build|rise|off|it|register|show|wake",
        f"{_P} .. wakes|wake|woke up? after|slowly|late",
        f"{_P} .. sleepy|reluctant|tardy|late to|coming|building",
    ),
    Shows.FALLING: (
        f"{_P} went|goes|going|came|drops|dropped|drop|dropping|falls|fell =bit|=little by bit|little",
        f"{_P} drifting|creeping|easing|slipping|sliding|trickling|ebbing|sagging lower|down|away|back|downwards",
    ),
    Shows.NORMAL: (
        f"{_P} .. reads|read|reading|works|worked normally|correctly|properly|right|fine",
        f"{_P} .. =as =before|=ever|=usual|=always",
        f"{_P} bang|spot|dead|right on|where",
        "back to normal",
        "usual oil? pressure",
    ),
    Shows.TRIPS: (
        "alarm|protection|relay|switch|controller|panel|set shut|shuts|cut|cuts|stopped|stops|kills|killed it|her|the|engine|motor|set|itself|down|off",
        "trips|tripped|tripping|cuts|cut out|off on|with|for|from low|oil",
    ),
}
