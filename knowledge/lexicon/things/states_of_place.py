"""States of a part that is where it belongs, or is not, by the words for them."""

from __future__ import annotations

from knowledge.lexicon.shows.in_order import IN_PLACE
from knowledge.lexicon.things.thing import State

_NOT = "not|wasnt|isnt|werent|hadnt|hasnt|never"

#: the state, by the words for it
STATES_OF_PLACE: dict[State, tuple[str, ...]] = {
    State.IN_PLACE: (*IN_PLACE,),
    State.OUT_OF_LINE: (
        "out|off of? line|alignment|align|true|centre|center",
        "misaligned|miss-aligned|skewed|offset",
        "@not =meet|=align|=line|=lined|=aligned|=aligns|=lines up? any? more?",
        "@not all? in one|a|the|same? straight? line|row|alignment",
    ),
    State.IN_LINE: (
        "all? =in perfect|dead|good? =line|=alignment",
        "aligned|align|aligns|lines|lined|line up? perfectly|correctly|dead|fine|true|right|nicely",
    ),
    State.SHIFTED: ("moved|shifted|sagged|sunk|dropped|settled|warped|distorted|sprung",),
    State.UNPLUGGED: (
        "unconnected|=hanging|=dangling|adrift",
        "left|was|is|were|found =off|unplugged|disconnected|unhooked",
        "@not connected|attached|hooked|plugged up|in?",
    ),
    State.LOOSE: (
        "finger? loose|slack|rocking|wobbly|undone|floppy|wobbling|wonky|rickety|shaky|slop|sloppy|unscrewed",
        "wobbles|wobble|rocks|rock|flops|flop|flopping|waggles|waggle|shakes|shake|tilts|tilt|lurches|jiggles|jiggle|rattles|rattle around|about|sideways|up|back|side|to|in|on|by|under",
        "=rocks|=wobbles|=flops|=waggles|=rattles|=jiggles",
        "not|isnt|arent|wasnt firm|firmly|secure|securely|tight|snug|solid",
        "finger|=only|=just|=barely =hand? tight",
        "half|under|below|low|short the|its|specified|of|in? torque|torqued",
        "=only|=just|=barely|=hardly =nipped|=pinched|=snug|=tight|=finger-tight|=hand-tight up?",
        "=backed|=worked|=backing|=working|=has|=had|=been|=itself out|loose|=loosened|off|itself|free|up",
        "not|wasnt|isnt|werent|hadnt|never been? tight|tightened|torqued|seated|secure|secured|latched up|properly|"
        "home|down|fully?",
        "came|coming|come|vibrated|shaken loose|undone",
        "could|can|i be? wiggle|wiggled|turned|undone|moved|rocked|rock by|it|with? hand|finger|fingers",
        "wobbles|flopping",
        "sloppy|loose|slop|play in|inside its|the bore|hole|housing",
        "rattles|rattling|wobbles|rocks|flops|rattled|rocked in|on its|the? bush|bushing|bore|body|housing|hole",
        f"{_NOT} been? pushed|pressed|driven|tapped|knocked|pulled all|right|fully|quite? the? way? in|home|up|on",
        f"{_NOT} been? fully|properly|quite|right home|engaged|pushed|pressed|seated in|home?",
    ),
    State.TIGHT: (
        "=tight",
        "secure",
        "=torqued correctly|properly|down|up?",
        "not loose",
    ),
    State.ABSENT: (
        "not in it|there|one at? all?",
        "missing|absent|gone|forgotten|omitted",
        "left off|out",
        "not|never|wasnt|isnt|werent been? fitted|installed|there|refitted|replaced|present",
        "fell|fallen|fallen|dropped|popped out",
        "forgot|forgotten to fit|put|install|refit",
        "never|not went|put|gone|go back? in|on|back",
        "@not in place",
        "@not been? fitted|installed|refitted|put|there|present back|in|on?",
        "nowhere to be found|seen",
        "=left =out|=off",
    ),
    State.CAME_OFF: (
        "fell|fallen|came|come|=dropped|popped|slipped|pulled|worked|spun|vibrated|hanging off|free|adrift",
        "detached|disconnected|adrift",
        "lying|laying|lay|loose in the? bottom|sump|pan of? the? sump|pan?",
    ),
    State.PUSHED_OUT: (
        "pushed|popped|blown|blew|blowing|pops|walked|squeezed|came|come|spat|displaced|dislodged out of? place?",
        "displaced|dislodged|unseated|extruded",
        "squeezed|slipped|slid|shifted|moved|crept|pushed|forced sideways|out|across|aside|over",
        "out of place|position",
    ),
    State.REVERSED: (
        "backwards|reversed|backward|crossed",
        "wrong way|hole|place|position|side round|around|up?",
        "upside down",
        "in? back to front",
        "faces|facing|faced|went|put|is|was the wrong|other way|side? up|out|in?",
        "faces|facing|faced in|inwards|inward",
        "faces|facing|faced|went|put|is|was inwards|backwards",
        "in|fitted|installed backwards",
        "swapped over|around|round",
        "mixed|muddled up",
        "wrong way|hand|end|side about|up|first|out|forward",
        "transposed|inverted|interchanged",
    ),
}
