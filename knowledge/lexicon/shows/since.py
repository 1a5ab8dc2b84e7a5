"""Since when the trouble is there."""

from __future__ import annotations

from knowledge.reports.words import Since

_AFTER = "since|after|following|ever-since"
_DAYS = "monday|tuesday|wednesday|thursday|friday|saturday|sunday"
_MONTHS = "january|february|march|april|june|july|august|september|october|november|december|summer|winter|spring|autumn"
_THINGS_HIT = (
    "limb|limbs|tree|bough|animal|badger|deer|fox|plank|pallet|cone|dog|cat|possum|raccoon|roadkill|blowout|ladder|bucket|pipe|bar|timber|"
    "boulder|rubble|sleeper|cobble|pheasant|hog|pig|turtle|tool-box|toolbox"
)
_OVER = "ran|run|drove|went|go|running|driving|bounced|rode over|across"
_HIT = "hit|hitting|struck|clobbered|walloped|thumped|bashed|clouted|clipped|smacked|scraped|grounded|bottomed|bashing|clipping|striking"
_GRADES = "@grade|@thin|@thick|thinner|thicker|lighter|heavier|synthetic"
_NONE = "gone|no|nothing|zero|none|dead|didnt|wouldnt"
#: said of the time before the trouble
SINCE: dict[Since, tuple[str, ...]] = {
    Since.FIRST_START: (
        "since|from|on|at|after|ever|upon|during the? its|very? first|initial start|startup|start-up|fire-up|firing|run|outing|light-up",
        "first|initial start|startup|start-up|fire|firing|run up? after|since|of|on|with the|a|my? rebuild|overhaul|build|work|engine|new|swap",
        "first|initial start|startup|start-up|fire|firing up?",
        "first|initial fire-up|light-up|light-off|crank-up",
        "fired|started|lit|ran|turned|cranked it|her|him|the? engine|motor|up? up|over? today|yesterday|now|just? for? the|its? very? =first time",
        "first time i|we? fired|started|lit|ran|run|turned|cranked it|her|up? up|over?",
        "since|ever-since ever|when? i|we? bought|got|had|have|owned it|the|this|her|him?",
        "since|from|ever-since day one",
        "since|from|right-from the very? first second|moment|turn|crank|minute|time|go|firing|key",
        "since|when|from i|we|he|the-day-i first|initially lit|fired|started|cranked|ran|run|turned|drove|put it|her|the-engine up|off|over|it?",
        "from|since the beginning|start|word|off|outset go?",
        "right|straight from|after|out a|the? start|off|rebuild|overhaul|build|rebuilding|box",
        "@minutes|@runin|few|first hours|miles|minutes|hour|@distance? on|of|since|after running|driving|the|a? rebuild|overhaul|new|build",
        "fresh|freshly|just|newly rebuilt|built|fitted|overhauled engine|motor .. once|ran|no|zero|low",
        "never had|made|been|built any|good|much|right? oil? pressure|right since",
    ),
    Since.WORK: (
        "put|bolted|got|buttoned|threw it|everything|her|the-engine|the-lot|that all? back? together|up|in and|, now|started|start|fired|when",
        "got|put|had it|her|everything|the-engine all? back? together|in and|, there|its|it|the|no|oil|light .. no|zero|none|nothing|low|on",
    ),
    Since.STANDING: (
        "sat|stood|parked|left|stored up? in|under|outside a|the|my|his? barn|field|shed|garage|yard|hangar for|over @longtime|years|decades|ages",
        f"{_AFTER} it|the|car|a|being|its|has|been? long? =sitting|=standing|=storage|=stood|=sat|=sits|=stored|=layup|=lay-up|=laid|=recommissioning",
        f"{_AFTER}|over|out a|the|its|long|of|several|many|two? years|months|winter|@years|@months|decades of|in? storage|layup|lay-up|standing|sitting|idleness|slumber|hibernation",
        f"{_AFTER} .. winter|storage|layup|lay-up|decades|@years",
        "after|following|for|over about|over|nearly|some|almost? @months in|of|off|without|laid|sat|parked|stood|standing|storage|sitting|unused",
        f"{_AFTER} .. @months standing|sitting|storage|off",
        "sat|stood|sitting|parked|stored|standing|laid|unused|dormant|sat-idle up? for? .. winter|years|months|@years|@months|year|decade|decades",
        "sat|stood|sitting|parked|stored|standing|laid|unused up? for|a|about|over|nearly|the-last|like|maybe? @weeks|weeks|fortnight",
        "first start|startup|run after|since|of .. winter|layup|lay-up|standing|storage|years|season",
        "came|coming|brought|out out? of long? winter? storage|layup|lay-up|hibernation",
        "barn find",
        f"{_AFTER}|when i|we|she|it|the-boat? was|were? =relaunched|=relaunching|=relaunch|=launched|=launching|=launch|=refloated|=recommissioned",
        f"{_AFTER} winter|the-winter|its-winter lay|laid|lay-up|laying up?",
        "recommissioned|recommissioning",
    ),
    Since.OVERHEATING: (
        f"{_AFTER} it|i|engine|the|an|was|being|having|severe? =overheating|=overheated|=boiled|=boiling|=overheat|=cooked|=cooking over?",
        f"{_AFTER} it|i|engine got|getting|ran|running too|very|really|so|red|stupidly|boiling hot",
        f"{_AFTER} it|i|engine ran|running hot",
        "=overheated|=boiled|=cooked .. ever? since|now|then",
    ),
    Since.BLOW: (
        f"{_AFTER} .. rock|stone|kerb|curb|boulder|stump|road-debris|grounding|sump strike|impact|contact|hit",
        f"{_AFTER} .. striking|hitting|clipping|clouting .. rock|stone|kerb|curb|boulder|stump|debris|manhole",
        f"{_AFTER} .. {_HIT} .. rock|rocks|curb|kerb|pan|sump|stump|ground|boulder|pothole|debris|log|out|something",
        f"{_AFTER} a|the? hard? =knock|=bump|=blow|=bang|=bash|=clout|=whack to|on|in|from the|a? oil? sump|pan|oil-pan|underneath|rock",
        f"{_HIT} a|the|my|some? big|large? rock|rocks|kerb|curb|stump|something|debris|log|boulder|manhole|pothole|deer|badger|fox|rabbit|sheep|kangaroo|brick|branch",
        f"{_HIT} .. massive|huge|enormous|nasty|deep|bad|small|great|whopping? pothole|rock|kerb|curb|stump|boulder|log|manhole",
        f"{_AFTER} i|we|he|she? {_HIT} a|the|my|some? kerb|curb|rock|speed-hump|hump|ramp|stump|pothole|something",
        f"{_HIT} the|its|my? oil? sump|pan|oil-pan on|over?",
        f"{_OVER}|hit|struck|clipped .. {_THINGS_HIT}",
        f"{_OVER} over something|debris|rubbish|junk in|on the road|motorway|highway|track|lane",
        "something|rock|stone|brick|branch|debris =hit|=struck|=smacked|=whacked the|my|under|up? underside|underneath|bottom|belly|floor|sump|pan",
        f"{_OVER} .. rock|rocks|boulder|stone|brick|kerb|curb|log|stump|debris|branch|tyre|manhole|=bump|something|ditch",
        "bottomed|grounded out",
        "sump|pan was|got|took|has? been|a|hard? =hit|=bashed|=grounded|=struck|=knock|=dented",
        "off road excursion",
    ),
    Since.REVVING: (
        f"{_AFTER} i|we|he|a|an|accidentally|of|bout? redlining|redlined|redline|over-revving|over-revved|overrevved|overrev|over-rev",
        f"{_AFTER} .. revving|revved|rev hard|high|limiter|redline|@rpm",
        "missed|botched|fluffed a? gear|shift|downshift",
        "money shift",
    ),
    Since.FROST: (
        f"{_AFTER} .. frost|freeze|freezing|frozen|cold-snap|frosts",
        "froze|frozen|freeze|freezing night|up|overnight|last",
        "below|minus|under freezing|@temperature",
        "temperature|temps|outside|weather|air|night|morning .. below zero",
        "below zero outside|out|last|overnight|that|this|in",
    ),
    Since.GRADE: (
        f"changed|switched|went|going|switching|changing|swapped|moved|gone oil|it|over|down|up? oil? from|to|with {_GRADES}|@grade oil|grade?",
        f"{_AFTER}|when|with i|we? changed|changing|switched|switching|going|went|gone|moving|putting|using|put oil|the|in|over? to|a? {_GRADES} oil|grade?",
        f"ever? {_AFTER}|when i|we|he|they? =put|=filled|=poured|=ran|=run|=used|=on|=running it|her|the|in|with|to? the|a? {_GRADES} oil|in?",
        f"{_AFTER}|when going|went|gone|moving to|onto|over {_GRADES}|thin|thick",
        f"{_AFTER} a? different|new|another|wrong oil? grade|weight|viscosity|brand",
        f"{_AFTER} the? change to|of {_GRADES}|grade|viscosity|brand",
    ),
    Since.DATE: (
        f"since|from last|this|yesterday|about|around|early|late? {_DAYS}|{_MONTHS}|week|month|weekend|night|morning|yesterday|@days|@weeks",
        f"started|began|noticed|happened|developed|appeared it|doing|happening|up|this|on|about|just|only|a|in|last|the? yesterday|today|recently|lately|{_DAYS}|{_MONTHS}|@days|@weeks|@months|few|couple|week|month|night",
        f"last|this {_DAYS}|week|weekend|month|night|morning|{_MONTHS} it|the|i|oil|pressure? oil? started|began|noticed|pressure|light|lost|dropped",
        "for no visible|apparent|obvious reason",
    ),
    Since.NEXT_START: (
        f"parked|left|stopped|shut|put|switched .. {_DAYS}|night|last-night|yesterday|evening and|,|then|next|by|this? ,|next|this|by|the? {_DAYS}|morning|today|day",
        "was .. when i|we|it parked|stopped|shut|switched|left|turned",
        f"next|following morning|start|day|time|startup|trip|restart|weekend .. {_NONE}",
        f"started|restarted|fired|start|restart|starting it|her? up? again|next|later|back up? .. {_NONE}",
        f"switched|turned|shut|stopped|parked .. off|it|down|up .. restart|restarted|started|start .. {_NONE}|lamp|light",
        "at|on the? next|following|third|second|restart start|startup|session",
        "lamp|light|pressure .. on|at the? next|restart start",
    ),
    Since.ALWAYS: (
        "since|from new|day-one",
        "always been|has|had|read|run|ran|shown",
        "from|since new",
        "since the day i|we bought|got|had|owned|picked",
        "ever since new|ive",
        "ever since i|we had|have|got|owned|own|bought|knew|can-remember|remember",
        "never been|had|read|shown|seen any|much? better|higher|good|right|different",
    ),
}
#: behind work: what follows is there since it was done
SINCE_THEN = frozenset(
    [
        ("since", "then"),
        ("ever", "since"),
        ("since", "that"),
        ("since", "it"),
        ("from", "then"),
        ("then", "on"),
        ("after", "that"),
        ("afterwards", "only"),
    ]
)
