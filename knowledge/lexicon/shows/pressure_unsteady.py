"""Words for unsteady pressure."""

from __future__ import annotations

from knowledge.reports.words import Shows

_P = "pressure|gauge|needle|psi|reading|indication|oil-pressure"
_LAMP_OR_SOUNDER = "light|lamp|buzzer|alarm|beeper|bleeper|sounder|annunciator"
_OIL_LAMP = "oil|pressure|warning|red|idiot|dash"
_LAMP_OR_SYMBOL = "light|lamp|symbol|icon|telltale|tell-tale"
_OIL = "oil|pressure|red|warning|idiot|can"
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

#: what shows, by what is said
SHOWS: dict[Shows, tuple[str, ...]] = {
    Shows.UNSTEADY: (
        f"{_OIL_LAMP} pressure? {_LAMP_OR_SOUNDER} just? came|comes|coming on and? flashing|flickering|blinking",
        f"{_P} .. flickers|flickering|wavers|wavering|bounces|bouncing|dances|dancing|fluctuates|fluctuating|"
        "jumps|jumping|swings|swinging|surges|surging|flutters|fluttering|wanders|wandering|twitches|pulses|"
        "pulsates|unsteady|erratic|jumpy|hunts|hunting|oscillates|quivers|wobbles|vibrates|bobs",
        f"flickers|flickering|flicker|wavers|bounces|bouncing|dancing|fluctuates|fluctuating|jumping|jumpy|surging|"
        f"unsteady|erratic|wandering|pulsating|fluttering|wavering oil? {_P}|{_LAMP_OR_SOUNDER}",
        f"{_LAMP_OR_SOUNDER} .. flickers|flickering|flicker|flickered|blinks|blinking|blinked|flashes|flashing|flashed|winks|winking",
        f"{_P} jumps|jump|goes|all up and down|over",
        f"{_P} is? all over the place",
        "fluctuating|fluctuates|flickers between|from",
        "flashing|flickering|blinking|winking|flash|flicker|flashes|flickers|blinks the|its|my|an? oil? pressure|warning? light|lamp",
        f"{_P} all over the? place|shop|map|show|dial|scale",
        f"{_P} is|was|goes|going|reading? all over the? place|shop|map|show",
        f"{_P} @not settle|steady|stay|hold still|steady|down?",
        f"{_P} wags|wagging|waggles|hops|hopping|twitchy|skittish|nervous|unstable|up-and-down|swung|shakes|shaking|shivers|jittery|jitters|wiggles|wiggle|flits|flapping|flaps|moving|bobbing|bounced|fluctuated|wavered|varied|varies|varying|oscillating|flickered|jumped",
        f"{_P} gives|gave|has|had|made a? wiggle|twitch|wobble|flicker|kick|shake|flutter",
        f"{_P} goes|going|went|jumps|bounces|moves|up and? down|back-and-forth|to-and-fro like|constantly|a? yoyo|yo-yo|all?",
        f"{_P} up and down",
        f"{_P} moves|moved|moving|goes|went|going|travels|wanders .. back and forth",
        f"{_P} moves|moved|moving|goes|going|travels .. up and down",
        f"{_P} flicks|flips|switches|alternates|toggles|leaps|darts|flies|cycles constantly|back|randomly|quickly? between|@range",
        f"{_P} flicks|flips|switches|alternates|toggles|leaps|darts|flies|cycles constantly|back|randomly|quickly? between zero|nothing and full|max|maximum|half|normal",
        f"{_P} dances|bounces|jumps|moves|bouncing|bounced around|about|back|between",
        f"{_P} .. bounces|swings|fluctuates|jumps|varies|wanders|flickers|moves|anywhere between|from|@range",
        f"erratic|unstable|unsteady|fluctuating|jumpy|bouncy|varying|wandering|variable|inconsistent|bouncing|twitchy oil? {_P}",
        f"{_LAMP_OR_SOUNDER} is|was|keeps|kept|starts|started|begins|began|to|occasionally|sometimes|just|will|would|did .. flicker|flickers|flickering|blink|blinking|flash|flashing|winking|glimmer|glow",
        "it glows|glowed|glimmers|glimmered|flickers|flickered =faintly|=dimly|=slightly|=briefly|=at|=when|=on|=in",
        f"{_LAMP_OR_SOUNDER} glimmers|glows|glowing|twinkles|flutters|stutters|pulses",
        f"flickery|flickering|blinking|flashing|winking oil? {_LAMP_OR_SOUNDER}",
        "flickers|flickering|blinks|blinked|flashes|winks|flickered =at|=when|=in|=on|=while|=only|=with|=under|=occasionally|=slightly",
        f"{_P} .. waves|waving|waved|quivers|quivering|quivered|trembles|trembling|trembled|shivers|shudders|judders|throbs about|around|up|with|whenever|when|all|a|like|at|and?",
        "it|she|lately quivers|trembles|wavers|quivered|trembled|wavered",
        f"{_P} flicks|flicking|flicked|kicks|kicking|bobs|hops up|back|about|around?",
        "=hunts|=hunting|=wanders|=wandering .. up|by? @number|@pressure ,? and? down @number|@pressure",
        f"{_P}|it hunts|wanders|surges|pulses sort|kind|a|by|between|from|up|at|in|on|when|with",
        f"{_P} .. twitching|dithering|dithers|see-sawing|seesaws|yo-yoing|chattering|trembling|trembles|shimmering|wandering|drunk|hunting",
        f"{_P} never|@not still|sits|sit|steady|settles|settled",
        f"{_P} jumpy|nervous|restless|all-over",
        f"{_P} goes|gets|got|went|is|was|turns|has shaky|nuts|haywire|crazy|mental|wild|bananas|berserk|mad|loopy|the-shakes",
        f"{_P} has|had|gets|got the|a shakes|jitters|wobbles|twitches|dance|flutter",
        f"{_P} goes|gets|went|got|is|was|a|bit|all|very jittery|twitchy|jumpy|shaky|shivery|wobbly|nervous",
        f"{_P} .. =acting|=acts|=acted|=playing|=plays|=played =up",
        f"{_P} .. =going|=goes|=went|=gone =mad|=crazy|=haywire|=nuts|=wild|=berserk",
        f"{_P} .. up and? down dance|jig",
        f"slight|little|bit|small|constant|occasional? =quiver|=flutter|=wobble|=twitch|=tremble|=flicker|=shiver|=tremor of|in|on|from the? oil? {_P}",
        f"{_P} has|got|a|with? got? the? jitters|twitch|shakes|dt's|wobbles|flutter|quiver",
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
        f"{_OIL} oil|pressure|warning? {_LAMP_OR_SYMBOL} {_BLINKS} at|on? me|and? on? and? off?",
        f"{_BLINKS} oil|red|warning|pressure|oil-pressure pressure|can|warning? {_LAMP_OR_SYMBOL}",
        f"{_LAMP_OR_SYMBOL} {_BLINKS}",
        "oil|warning|red light|lamp goes|going|comes|keeps-going|keeps-coming on and off",
    ),
}
#: the same where a clause begins so, in a text that speaks of the pressure: "drops when hot"
BARE: dict[Shows, tuple[str, ...]] = {
    Shows.UNSTEADY: (
        "wavers|wavering|fluctuates|fluctuating|bounces|bouncing|flickers|flickering|flickered|blinks|blinked|flashes|swings|swinging|wags",
        "jumps|jumping|bounces|bouncing|flicks|waves|dances|swings|wags|waggles about|around|all|like|up over|on|mad|the|at|and|when|in?",
        "starts|begins|started|began|starting to? flicker|flickering|bounce|bouncing|waver|wavering|blink|blinking",
        "flickers|shivers|flutters|trembles|quivers above|over|only|at|when|in|on|up",
    ),
}
#: the same of "it", where gauge, pressure or lamp was named last: "It goes to nothing in bends"
OF_THE_GAUGE: dict[Shows, tuple[str, ...]] = {
    Shows.UNSTEADY: (
        f"{_BOUNCES} {_ABOUT} over|up|and|down|the|place|all?",
        f"{_BLINKS} at? me|on? and? off?",
        f"{_BOUNCES}",
    ),
}
