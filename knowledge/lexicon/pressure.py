"""What people say of the pressure, the lamp and the noises: instrument, state, change, noise."""

from __future__ import annotations

from knowledge.reports.words import Shows

#: words that make a bare number a pressure
INSTRUMENT = (
    "gauge|gage|guage|needle",
    "pressure|psi|presure",
    "oil light|lamp",
    "reads|reading|showing|shows",
)
#: a gauge of its own on an oil line, beside the panel's
DIRECT = (
    "mechanical|direct|test|manual|master|trusted|proper gauge",
    "gauge direct|directly",
    "second|another mechanical|test? gauge",
    "t'd|teed in? a? gauge",
    "screwed a gauge",
)

_P = "pressure|gauge|needle|psi|reading|oil-pressure"
_LAMP = "light|lamp|buzzer|alarm"
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
        "gauge|needle dead",
        "never built|builds any? oil? pressure",
        "won't|wont build|make any? oil? pressure",
        "not a thing on the gauge",
        "needle|gauge @not move|moves|budge|lift",
        "@not show|register|read any? oil? pressure",
        "needle|gauge stays on the? peg|stop|pin",
    ),
    Shows.LOW: (
        f"low|poor|weak|bad|marginal|insufficient|lousy|crap oil? {_P}",
        "low on oil? pressure",
        f"{_P} is|are|was|reads|goes|gets|seems|looks|stays|runs|still|reading|sits|quite|very|too|always|"
        "a|bit|really|just|being|went|shows|way|that's|very? quite|very|too|really|a|still|way|down? bit|little? "
        "low|lower|poor|weak|down",
        f"{_P} low|poor|down",
        f"{_P} drops|dropped|falls|drop|fell|dropping|falling|sinks|sank|dips|dipped|goes|went down|off|low|away",
        f"{_P} drops|dropped|falls|drop|fell|dropping|falling|sinks|sank|dips|dipped|sags|sagged|decreases|decreased",
        "@not much|enough|good oil? pressure",
        "barely|hardly any? registers|moves|lifts|pressure",
        "reads|reading|reading|gets|gauge|still|goes|runs|stays low|poor",
        "drops|falls|dropped|fell|sinks low",
        "it|then drops|falls|sinks|sags|dips",
        "it|then goes|went down|low to? almost|nearly? nothing|zero?",
        "drops|falls|fell|dropped|sinks|sank down? to|below about|around|only|just|like|maybe? @number|@pressure|@range",
        "pressure @not come|comes|came|go|goes up",
        "pressure @not what it was",
    ),
    Shows.HIGH: (
        f"high|excessive|too-high oil? {_P}",
        f"{_P} is|was|reads|goes|gets|seems|stays|extremely|too|very|way|really|runs|shows|extremely|too|very|way|really? "
        "high|excessive",
        f"{_P} extremely|too|very|way|really? high",
        f"{_P} pegged|pegs|pinned|off-the-clock",
        "off the clock|scale|dial|top",
        "too much oil? pressure",
        "over pressure|pressured",
        "pressure climbs|climbed|rises|shoots above|past|over",
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
        "buzzer|alarm sounds|sounded|goes|went|sounding|going|screams off?",
        "buzzer|alarm chirps|chirped",
    ),
    Shows.SLOW: (
        "slow to build|come|rise|register|show|go",
        f"{_P} slow|slowly to? builds|build|come|comes|rises|rise up?",
        f"{_P} builds|comes|rises up? slowly|slow",
        "takes|took|taking .. seconds|ages|while|long|minute|forever|sec|time to build|come|get|show|go|register|for",
        f"{_LAMP} slow to go? out|off",
        f"{_LAMP} stays|stayed|is|on on? for? about|around|roughly|a|good? @seconds",
        "takes|took|after about|around|a|good|at|least? @seconds to|before|for",
        "@seconds to build|get|come|show|go|register",
        "delay .. pressure",
        "pressure @not build|come|show up? for|until",
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
    ),
    Shows.FALLING: (
        f"{_P} keeps|kept|is|steadily|slowly|gradually|was steadily|slowly|gradually? dropping|falling|sinking|going|declining down?",
        f"{_P} slowly|gradually|steadily drops|falls|sinks|declines|drop|fell|dropped|sank|fades|decays|creeps down?",
        f"{_P} drops|falls|sinks|fades|bleeds|creeps|fades down? slowly|gradually|steadily|off|away",
    ),
    Shows.NORMAL: (
        f"{_P} is|was|reads|looks|seems|stays|are|comes|goes|returns|came|went|back|to|as|all|shows|back|to|perfectly? "
        "good|fine|normal|ok|okay|great|perfect|healthy|right",
        f"good|normal|great|fine|healthy|decent|perfect|full|proper|plenty oil? {_P}",
        f"{_P} good|fine|normal|ok|okay|great|perfect|healthy",
        "comes|came|goes|come back up? when|as|if|once|with",
        "goes|went|go out|off when|as|if|once|with",
        "plenty of oil? pressure",
        "reads normal|fine|good",
        "its|it's|it|is|was|all|otherwise|but|and|perfectly|runs? fine|ok|okay|good|normal|great",
        "fine|ok|okay|good|great|normal",
    ),
    Shows.TRIPS: (
        "shuts|shut|shutting itself? down|off on? low? oil? pressure",
        "trips|tripped|tripping out? on? low? oil? pressure",
        "low oil pressure? shutdown|trip|cutout",
        "shut itself down|off",
        "shuts itself down|off",
        "safety|protection shuts|shut|trips|tripped",
    ),
    Shows.NO_START: (
        "cranks|turns .. @not start|fire|catch",
        "won't|wont start|fire",
        "@not start at? all?",
    ),
    Shows.LOST_POWER: ("lost|loses|losing|lack|loss of? power", "down on power", "became sluggish"),
    Shows.ROUGH: (
        "runs|running|ran|idles|idling rough|badly|lumpy",
        "misfires|misfiring|misfire",
        "rough idle",
    ),
    Shows.ALARM: ("general|engine|master alarm|warning", "check engine light|lamp"),
    Shows.KNOCK: (
        "knocks|knocking|knock|nocking|clunking|clunks|thumping|rumbling|rumble|hammering|hammers|thud|clonking",
        "bottom|lower end noise|rattle",
        "rod|main bearing? knock|noise",
        "big end rattle|noise|knock",
    ),
    Shows.TICKING: (
        "ticking|ticks|tick|clattering|clatters|clatter|clacking|ticky|tapety",
        "lifter|lifters|tappet|tappets|hla|hlas|rocker|rockers noise|noisy|ticking|clicking|tick|rattle|rattling|tap|loud|are|is|was|were|"
        "chatter|chattering|collapsed ticking|noisy|loud|rattling|clicking|tapping?",
        "noisy|loud lifter|lifters|tappets|tappet|rockers|top-end|valves",
        "top end|valve|valvetrain|valve-train noise|noisy|clatter|rattle|rattling",
        "tapping noise|sound",
        "valve gear|train noise|noisy|clatter",
    ),
    Shows.RATTLE: (
        "rattle|rattles|rattling|rattled",
        "chain rattle|noise|slap|slapping|noisy",
    ),
    Shows.WHINE: ("whine|whines|whining|howl|howling|humming|whirring|shriek|shrieks",),
    Shows.GRINDING: ("grinding|grinds|graunching|growling",),
    Shows.SQUEAK: ("squeak|squeaks|squeaking|squeal|squealing|squeals|chirping",),
    Shows.SMOKE: ("smokes|smoking",),
}
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
