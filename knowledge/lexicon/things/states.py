"""States that a part is found in, by the words for them."""

from __future__ import annotations

from knowledge.lexicon.shows.in_order import IN_PLACE, NOTHING_WRONG, PAST_USE, WELL
from knowledge.lexicon.things.thing import State

_NOT = "not|wasnt|isnt|werent|hadnt|hasnt|never"

#: a part in one of these is as it should be
WELL_STATES = frozenset(
    {State.FINE, State.CLEAN, State.FREE, State.TIGHT, State.TRUE, State.IN_PLACE}
)
#: the state, by the words for it
STATES: dict[State, tuple[str, ...]] = {
    State.WIPED: (
        "wiped|smeared|melted|burnt|burned|blued|fried|cooked|overheated|blackened",
        "turned|gone|went blue",
        "run|ran metal",
        "heat marks|marked|marking|discolouration|discoloration|staining",
    ),
    State.COPPER: (
        "worn|down|through|showing|into|to|gone|out to|through|into|down? the? =copper|=brass|=pink|=backing|=steel",
        "copper|brass|pink showing|visible",
        "showing some|a|bit|lots|of? of? =copper|=brass|=pink",
        "see|seen|saw|seeing some|the? =copper|=brass|=pink",
        "through the? =overlay|=babbitt|=whitemetal|=white-metal|=lining",
        "overlay|babbitt|lining|whitemetal worn off|through|away",
    ),
    State.RUINED: (
        "ruined|destroyed|trashed|toast|wrecked|finished|shot|gone|mangled|buggered|rooted|stuffed|=hammered|knackered|"
        "junk|scrap|pounded|beat|stuffed out|up?",
        "done for",
        "had it",
        "chewed|eaten|beaten|torn|beat up",
        "in bits|pieces|shreds|tatters|strips|ribbons",
        "=bad|=failed|=failure",
        "on its|their way|last out|legs?",
    ),
    State.IN_PLACE: (*IN_PLACE,),
    State.SPUN: (
        "spun|spinning|rotated|=turned|=walked|=moved|=shifted|migrated",
        "gone|went|going|turned|spinning|=come|=came|=walked round|around with|in|and?",
        "sliding|slides|slid|slipping|slips on|along|off? its|the? shaft?",
        "spins|turns|turning|spinning free|freely|loose? on the|its =shaft",
        "turned|turning|moving|slipped|slipping|spinning in|on|out of? its|the|their bore|housing|block|shaft|seat|bores",
    ),
    State.OVAL: (
        "oval|ovalled|egg-shaped|tapered|taper|=ridged",
        "out of|off round",
        "worn oval",
    ),
    State.TRUE: (
        "mic|mics|mikes|miked|measured|measures|measure|checked|checks|are|is|was|were|all out|up? perfectly? fine|good|ok? "
        "and|,? round|true|parallel",
        "no|zero|without measurable? taper|ovality|out-of-round|ridge",
        "on size",
        "=round|parallel",
    ),
    State.FLAT: (
        "wiped|=flat|flattened|worn|gone flat|out?",
        "went flat|out",
        "flat|rounded|worn|wiped lobe|lobes|off|away|out",
    ),
    State.ROUNDED: (
        "corners|edges|flats|hex is|are|were|was|all? rounded|gone|worn|chewed|knocked off|over|away?",
        "rounded|worn|chewed corners|edges|flats|hex",
        "rounded|rounding|chewed|worn|wallowed off|round|over|out|away|up?",
        "twisted|twisting off|up?",
    ),
    State.STRIPPED: (
        "stripped|chewed|sheared of? teeth?",
        "missing|lost|broken|no|lacks|lacking|short a|some|several|half|@number|two|three|four|five|six|most? of? its|the? teeth|tooth",
        "teeth|tooth missing|gone|broken|off|sheared|stripped",
    ),
    State.FAULTY: (
        "faulty|defective|duff|dud|kaput|inoperative|u/s|dead|fault",
        "no good",
        *PAST_USE,
        "@not working|work|works|worked|functioning",
        "stopped working",
        "tested|found|proved|turned|was|is|were|tests|proven|confirmed out|to|as? be? =bad|=wrong|=poor",
        "at fault",
    ),
    State.DIRTY: (
        "dirty|corroded|green|crusty|rusty|rusted|oily|oxidised|oxidized|grubby|poor|burnt",
    ),
    State.UNPLUGGED: (
        "unconnected|=hanging|=dangling|adrift",
        "left|was|is|were|found =off|unplugged|disconnected|unhooked",
        "@not connected|attached|hooked|plugged up|in?",
    ),
    State.SHORTED: (
        "=open|=shorted|shorting|open-circuit|earthed|grounded|grounding to|circuit? ground|earth|block|chassis?",
        "open|short circuit|circuited",
        "no continuity",
        "shorting|shorted|rubbing out|on|against|to",
    ),
    State.OVER: (
        "out of|outside|beyond|over|past|exceeds|exceeding|exceeded its|the|wear|maker's? limit|limits|spec|specification|tolerance",
        "out-of-spec|out-of-limits|out-of-tolerance|oversize",
    ),
    State.BLOCKED: (
        "=solid with|of carbon|coke|sludge|muck|crud|gunk|dirt|black|tar|swarf|gum",
        "choked|clogged|blocked|plugged|bunged|packed|caked|coked solid|up|with|full|over|shut",
        "two-thirds|half|mostly|nearly|almost|completely|totally|three-quarters|third covered|blocked|full|gone|choked|shut",
        "partly|partially|half|completely|totally|nearly|almost? "
        "=blocked|=clogged|=plugged|=choked|=restricted|=obstructed|bunged|=gummed|=sludged|=furred|=silted|=fouled up? solid?",
        "full|=packed|=loaded|caked|=choked|=clogged|=plugged|=blocked up? solid? of|with",
        "coked|carboned up?",
        "=packed|=jammed|=bunged|=stuffed up? solid|tight|up",
        "half|completely|totally? full of",
        "masked|covered|blanked over|off",
        "@share =blocked|=covered|=choked|=clogged|=closed|=full|=plugged",
        "blockage|restriction|obstruction",
        "stopped up",
    ),
    State.CLEAN: (
        "=clean|spotless|unobstructed|unblocked",
        "=clean|=clear of? any? debris|sludge|metal?",
        "=clear",
        "free of|from debris|sludge|metal|dirt|blockage|any",
        "@not blocked|clogged|plugged|restricted",
        "flows|runs|passes =freely|=free",
    ),
    State.STUCK: (
        "stuck|sticking|sticks|stick|jammed|jamming|jam|seized|=frozen|=froze|binding|hung up?",
        "@not move|moving|slide|sliding|budge|budging|return|returning freely?",
        "cocked|wedged",
        "=locks|=locked|=binds|=bound up? solid|tight?",
    ),
    State.STUCK_OPEN: (
        "stuck|sticking|jammed|hung|held|hanging|stayed|seized|wedged partly|partially|slightly|half|wide? =open",
        "@not close|closing|seat|seating|seal|sealing fully|properly?",
        "off its|the seat",
        "half|part|partly|partially|slightly|halfway|part-way way? =open",
        "=open all the time",
    ),
    State.STUCK_SHUT: (
        "stuck|sticking|jammed|hung|held|seized|frozen shut|closed",
        "@not open|opening|lift|lifting",
    ),
    State.FREE: (
        "=free|freely",
        "like silk|butter|glass|new",
        "turns|spins|rotates|rotated itself? sweetly|smoothly|nicely|easily|free|freely|by-hand",
        "moves|slides|slid|moved|drops|dropped|works|operates easily|freely|smoothly|nicely|in|out|through|free",
        "moves|slides|slid|moved",
        "=free to move",
        "@not stuck|sticking|jammed|seized|frozen|binding",
        "turns|moves|slides|rotates =freely|=free|=smoothly",
        "falls|drops|slides under|by|of its own weight",
    ),
    State.WORN: (
        "badly|heavily|well|very|completely|visibly? worn out|down|thin|through|away|flat|oval?",
        "past its? best|it",
        "=knife|=razor edge|edges|edged|sharp",
        "worn? to a? point|points|edge",
        "excessive|too|lots|lot|bit|some|much|a much|of? wear|play|slop",
        "has|had|have lots|lot|some|a|bit|too|excessive|much|of? of|much? play|slop|wear",
        "wear|slop|sloppy|knackered|shot|clapped",
    ),
    State.PITTED: (
        "pitted|pitting|pits|pit",
        "rust? pits|pit|pitting",
    ),
    State.SCORED: (
        "scored|scoring|scratched|scratches|grooved|grooves|galled|galling|gouged|pitted|burred|scuffed|burr|"
        "corroded|rusty",
        "flat spot",
        "chewed up",
        "rust? pits|pit|ridge|ridges|ridged|pitting|scores|gouges",
        "has|had|with|is|was a|an|deep|worn|wear|small|slight? a? ring|nick|lip|step",
        "tooth|teeth|witness|score|chatter|wear marks",
    ),
    State.BROKEN: (
        "broken|broke|snapped|sheared|fractured|failed|shattered|=parted|disintegrated",
        "in|into two|half|pieces|bits",
        "=came|=fell|=come|=fallen =apart",
        "=let =go",
        "smashed|exploded|wrecked|burst",
    ),
    State.CRACKED: (
        "cracked|crack|cracks|pinhole|pinholes|split|splits",
        "hairline crack",
    ),
    State.HOLED: (
        "hole|holed|holes|punctured|puncture|perforated",
        "rusted|rotted|chafed|rubbed through|out",
        "worn through",
    ),
    State.LOOSE: (
        "finger? loose|slack|rocking|wobbly|undone",
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
    State.BENT: (
        "bent|twisted|distorted|deformed|pushed over",
        "out of shape",
    ),
    State.CRUSHED: (
        "crushed|collapsed|collapses|collapsing|flattened|flattens|kinked|kink|squashed|imploded|pinched",
        "caved|sucked|pushed|bashed in|flat|up|shut|closed",
        "dented|dent|dinged|bashed|dents",
    ),
    State.LEAKING: (
        "badly|still|slightly? leaking|leaks|leak|leaked|leakage",
        "weeping|weeps|weep|seeping|seeps|seep|seepage|dripping|drips|pouring|pours|gushing|gushes|spraying|"
        "sprays|squirting|squirts|pissing|spewing|=pumping",
        "wet|soaked|oily",
        "escaping|escapes|getting|coming|leaking past|from|out",
        "leak was|is|has|been? been? traced|tracked to|down",
        "oil coming|running|leaking|came|comes from|out of?",
        "blowing|blows|throwing|throws|losing|loses|puking oil out?",
    ),
    State.DRY: (
        "bone? dry",
        "@not leaking|leak|weeping",
        "leak free",
    ),
    State.TORN: (
        "torn|ripped|shredded|damaged|split|chewed|ruptured|holed",
        "broken|broke|perished|flattened",
        "came|come|fell|was out|apart? in two|bits|pieces|half|crumbs",
    ),
    State.CUT: (
        "nick|nicks|cuts",
        "has|had|with|got a|an small|deep? nick|cut|tear|slice",
        "chafed|frayed|severed|melted|bared|cut|nicked|pinched|rolled|twisted",
    ),
    State.HARD: (
        "hard|hardened|brittle|perished|shrunk|shrunken|flat|stiff|old|aged|rotten",
        "gone hard|stiff",
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
    ),
    State.WRONG: (
        "=wrong|incorrect|unsuitable|mismatched",
        "not the right|correct|proper|original|genuine|listed one|part|type|size?",
        "=cheap|no-name|unbranded|aftermarket|pattern|cheapo|budget|offbrand",
    ),
    State.FINE: (
        "to|of|at the? right|correct|proper|specified|standard|original|book|full? =length|=spec|=drawing|=dimension",
        "length|size|rate|tension as|to|per|by book|spec|specification|manual|specified|new|standard",
        "the? right|correct|proper|specified length|size|tension|rate|free-length",
        "length|size|tension is|was|s? right|correct|fine|good|ok|in-spec|to-spec|within",
        "measures|measured|checks|checked right|correct|fine|good|in-spec|to-spec|within",
        "good|ok|okay|fine|perfect|sound|undamaged|serviceable|intact|healthy|alright|excellent",
        "looks|looked|look|seems|seemed|appears|appeared normal",
        "like|as new",
        "in perfect|good|excellent|great|fine condition|order|shape|nick",
        "grey|gray|dull|silver|smooth|even|satin and|,|colour|color|in? and? smooth|even|unmarked|matt|grey|gray|colour|color",
        "as-good-as|like|as brand? new",
        "checked out ok|fine|good?",
        "checked ok|fine|good",
        "within|in|to|up spec|limits|tolerance|scratch|specification|limit",
        "as good as|like new",
        "no signs|sign|trace of a|any? wear|damage|trouble|distress|problem|heat",
        "=checked|=measured|=tested|=proved|=checks|=tests|=proves out|as|to|be? ok|fine|good|okay|right|correct",
        "mint|immaculate|faultless|unworn|unmarked|beautiful|great|spotless",
        *WELL,
        *NOTHING_WRONG,
        "flat|true|smooth ,? and|with? no|not|without any? scratches|scratched|scoring|scored|marks|marked|grooves|grooved|wear",
        "same|equal length|height|as|to? the|a? new one|spring?",
        "closes|opens|seats|shuts|seals =properly|=correctly|=fully|=right|=tight",
    ),
    State.COLD: (
        "stays|stayed|still|stone|never? cold|cool",
        "@not get|getting|gets warm|hot",
    ),
    State.BURST: (
        "burst|bursts|exploded|ruptured|rupture|blew|blown|blows",
        "split|splits open|along|at|itself?",
        "blew|blown|blows|burst|bursts|popped apart|up|off|out|itself|its|gasket|seal|seam?",
    ),
    State.BULGED: ("bulged|bulging|swollen|swelled|ballooned|bloated|expanded",),
    State.EMPTY: (
        "completely|almost|nearly|half? empty",
        "drained back|down|out",
        "bone? dry",
    ),
    State.SHORT: (
        "too? weak|weakened|tired|soft|sagged|compressed|collapsed|short|shorter",
        "lost its tension|temper",
    ),
    State.PUSHED_OUT: (
        "pushed|popped|blown|blew|blowing|pops|walked|squeezed|came|come|spat|displaced|dislodged out of? place?",
        "displaced|dislodged|unseated",
    ),
    State.SHUT: (
        "shut|=closed",
        "turned off|shut",
    ),
}
