"""What came of work on an engine, and who did it."""

from __future__ import annotations

from knowledge.reports.words import Hands, Result

_ADJ = "real|noticeable|significant|apparent|visible|great|measurable|lasting|appreciable|marked|much|big"
_P = "pressure|gauge|needle|reading|it|idle"
#: what a trial did, by the words for it
RESULTS: dict[Result, tuple[str, ...]] = {
    Result.NO_DIFFERENCE: (
        f"no|zero|little|@not {_ADJ}? {_ADJ}? change|difference|effect|improvement|joy|luck|better|help|good|avail|dice|"
        "success|cure|gain|odds",
        "@not help|helped|fix|fixed|change|cure|work|cured|worked|solve|improve|affect|sort|sorted|touch|alter|budge "
        "anything|it|that|any|matters|things?",
        f"@not make|made|making a|any|the|slightest|one|bit? {_ADJ}? difference|change|better|odds|bit",
        "made|makes|did|does|didnt nothing|none|no|jack|squat|bugger|zip|little|sod difference|change|all|odds|effect|"
        "jot?",
        "same|identical reading|readings|result|results|thing|problem|pressure|after|figures",
        f"little|slight|hardly|barely|much|not|scarcely any? {_ADJ}? difference|change|improvement|effect",
        "it|that|they|which didnt|wasnt|hasnt|havent",
        "still|stays|stayed|remains|remained dead|wild|zero|low|no|nothing|faulty|high|bad|there|on|wrong",
        "reads|read|reading|shows|showed|showing exactly|still|just? the? same|identical",
        "still|exactly|just|reads|stayed|stays|all|about|is|was|remained|remains|much the|about? same|identical|unchanged",
        "still low|nothing|none|zero|nil|nada|no|flickers|on|there|@pressure|flickering|reads|drops|bad|does|doing|clatters|knocks|rose|rises|rising|"
        "happens|comes|get|gets|getting|got|have|has|shows|showing|falls|high|erratic|jumps|goes",
        "still only|about|just|at|at? @pressure|@number",
        "to no avail",
        "without|no any|a|the? success|improvement|result|effect|change|cure",
        "neither|none helped|worked|cured|fixed|made|changed|did .. difference|better|help|change|thing?",
        "neither|none helped|worked|cured|fixed",
        "also|too reads|shows|showed|read|says|showing|reading",
        "reads|shows|showed|read|says|showing @pressure|@number too|also|as",
        "nothing helped|worked|changed|helps|works|has|have|fixed|improved helped|worked|changed?",
        "none of .. helped|worked|fixed|changed|difference|made",
        "problem|issue|symptom|complaint|trouble|fault|condition|symptoms remains|persists|persisted|remained|still|stayed|"
        "continued|continues|unchanged there|same?",
        "pressure|light|noise|gauge|reading|it remains|remained|stayed|stays|is|was just|exactly|still? the? same|unchanged",
        "no|not any|a|the? higher|better|different|wiser|bit|scrap",
        "same",
        "the same",
        "unchanged|unaffected|identical",
        "all|both? no use|good|avail|joy",
        "waste of time|money|effort",
        "still|just|stubbornly hovers|hovering|hangs|hanging|sits|sitting|stuck|flickers|reads|shows|says|at|around|about|near|below "
        "at|around|about|near|on|below|down? @pressure|@number|zero|nothing",
        "as before|bad|low",
        "exactly|just as it? was",
        "hasnt|hadnt|didnt|never|not even? budged|budge|moved|move|altered|alter|shifted|shift|touched|touch",
        "not|no a? bit|scrap|jot|blind|smidgen bit|difference|better|of?",
        "carried|carries|went|goes on just? as|the before|same",
        "nothing gained|changed|altered|doing",
        "fault|trouble|problem|light|lamp|needle is|was|still|came|comes still|straight|back? there|here|back|again|on",
        "all of? the? same",
        "same as before|ever|always",
        "just|exactly|every-bit as bad|low",
    ),
    Result.CURED: (
        "=fixed|=cured|=solved|=sorted|=resolved|=rectified|=fixes|=cures it|that|problem|the|issue|everything|fault|matters problem|issue|fault?",
        "problem|issue|fault|trouble|symptom|light gone|solved|fixed|cured|went|sorted|disappeared|vanished|resolved|stopped "
        "away?",
        "cured|fixed|sorted|solved mine|ours|us|me|things?",
        "light|lamp|it|warning|alarm|buzzer|noise went|goes|stays|stayed|stopped out|off|away",
        f"put|set the|my|his? {_P}? light? =out|=right",
        "came|comes right|good|alive",
        "pressure|gauge|needle|oil rose|jumped|up|shot up|to|straight",
        "full|normal pressure again|now|since",
        "full pressure",
        "works|worked|working|behaves|behaved|behaving|reads|read fine|perfectly|over|properly|again|now|correctly|right|"
        "ok|itself|normal",
        "bam|bingo @pressure",
        "now|and good|solid|steady @pressure",
        "no|not|never more|any|further|come|happened|again trouble|problem|problems|issues|issue|since|again",
        "no trouble|problems|problem|issues since?",
        "hasnt|havent|hasn't happened|done|come|been|flickered|seen|recurred|had on|it|back|any|seen? since|again|trouble?",
        "pressure came|is|was|went|all back",
        "pressure came|comes up",
        "brought the? pressure back",
        "did|that's|thats|that|was the? trick|job|it",
        "sorted it? out?",
        "all|everything|now is|is|was? good|fine|well|ok|normal|right|perfect now|since|again?",
        "pressure|it|gauge|reading came|back|came|is|was|went|right? back|restored|returned up|right|to? normal|good|spec|@pressure|"
        "@number",
        "now .. perfect|fine|normal|steady|healthy|spot",
        "and|now|got|pressure|it|its|it's? back up? to|at|in|on normal|@pressure|@number|spec|full|green|usual",
        "brought it|pressure|the back",
        "restored|regained the? oil? pressure",
        "pressure|reading|gauge returned|restored|recovered",
        f"{_P} is|was|has|been|now|right|all? restored|perfect|right again|now?",
        "as it should be",
        "light|lights|lamp|lamps off|out|gone",
        "it|that|flicker|wagging|swinging =stopped",
        "it|oil|she then|now|and? gushed|flowed|pumped|primed|caught|picked",
        "@pressure|@number straight|right|immediately|instantly|solid|steady away|off|again|now?",
        "@pressure|@number solid|steady|instantly|immediately|again|now",
        "up it came|went|comes",
        f"{_P} is|was|are|has? =back|=returned|=restored|=recovered",
        "gauge|light|lamp|needle|sender|it works|worked|working|behaves|behaving|behaved",
        "lifters|tappets|noise|knock|rattle|tapping|ticking|they|it shut|quietened|quieted|quiet|went|fell|gone up|down|quiet|silent|off|away",
        "no drop|flicker|light|noise|rattle|dip|sag in|on|at|the|bends|all|idle? any|any-more|anymore|since|more|now more?",
        f"{_P} steady|solid|rock|constant|firm at|on|as|steady|now @pressure|@number|a|rock|now",
        "been|behaved|run|ran perfect|perfectly|fine|good|ok|right|trouble-free ever? since",
        "cured|fixed|solved|sorted|rectified",
        "problem solved|gone|over",
        "all|is|was|now well|right|good again",
        "@pressure|full|good|proper pressure in|within|inside seconds|@seconds|moments",
        "stopped|cured|=ended|killed|silenced|cures|stops the|my|that|all? light|lamp|flicker|flickering|problem|noise|ticking|"
        "rattle|leak|alarm|buzzer|trouble|clatter",
        "rattle|noise|tick|ticking|light|flicker|clatter|problem|leak is|was|has|had? gone|stopped|disappeared|vanished|"
        "cured",
        "good as gold|new",
        "all is well",
        "picked|came|comes up straight|right|immediately|instantly away?",
        "happy days",
    ),
    Result.HELPED: (
        "helped|helps|help|improved|improves|improvement",
        "a|little|bit|slightly|somewhat|marginally|fraction|touch|lot|much bit|little? better|higher|improvement",
        "brought|raised|bumped|picked|lifted|boosted|increased it|the|pressure|up|idle|my pressure|up? up|by|to",
        "@pressure better|more|higher|up|improvement",
        f"{_P}? came|went|rose|jumped|up|climbed|increased|risen|gained|improved up? by? about|around|maybe|some|only|nearly? "
        "@pressure|@number",
        "gave|gained|got|added|worth|gains|gives|adds|gain me|us? a|only|another|about|maybe|an|extra? "
        "@pressure|@number psi|more|extra?",
        f"{_P}|its|up|now|is|was|went|came|pressure up to about|around? @pressure|@number",
        f"{_P} is|was|went|came|now? up|down? from @pressure|@number to @pressure|@number",
        "brought|raised|took|lifted|got .. from @pressure|@number up? to @pressure|@number",
        f"{_P} is|was|reads|shows|sits? now @pressure|@number",
        "now reads|shows|sits|makes|has|holds|runs|gets|get|have|at? @pressure|@number",
        "needle|pressure movement|moved|rose|went up|slightly?",
        "gained|gained a? few? @pressure",
        f"{_P}? came|went|is|was|crept|picked up a hair|tad|smidge|whisker|shade|fraction|notch|little|touch|bit",
        "now|and|its|it|im|i'm|am|getting|seeing|got|see|have up? at|to|getting|seeing|up|on|back|around|about to?|at? @pressure|@number",
        "up|gained|gain|plus by? about|around|roughly|a|another? @pressure",
        "better",
        f"{_P}? came|went|is|was|rose|picked|crept up a? little|bit|few|some|slightly|lot|touch|tad",
        "some|slight|small|modest|marginal improvement|increase|gain|rise|difference",
        "made a? bit|little|it|some|small|slight|big? of? a? difference|improvement|better",
    ),
    Result.FOR_A_WHILE: (
        "for|=lasted|=lasts about? @time",
        "for|=lasted|=lasts about? a while|bit|time",
        "for awhile",
        "fine|ok|good|better|worked|cured|fixed|helped for @time|a|about",
        "then|but .. came|comes|dropped|started back|again",
        "came|comes|was|started|dropped back|on|again on|next|day|again|later day|week|again|later",
        "cured|fixed|good|fine|ok for|until @time|a|about|weeks|then",
        "then @pressure|zero|low|flickering again",
        "the? same again",
        "temporarily|briefly",
        "fine|ok|good|up|normal|better|right and|,? then|until .. again|back|returned|recurred|low|zero",
        "then|soon|later|eventually went|gone|going|fell|dropped|started|is|it's|its|gradually|slowly slowly|gradually? "
        "down|away|off|dropping|falling again?",
        "came|come|comes|it's|its|is back after|within|later|again|@time",
        "only|just|not lasted|last|lasts for|long|@time|a|about",
        "problem|fault|it|trouble|light|symptom|symptoms|lamp|noise returned|recurred|reappeared",
        "recurred|reappeared|relapsed",
    ),
    Result.WORSE: (
        "made it|things|matters? even? worse",
        f"{_P}|and|now dropped|fell|lost|down|went|goes|falls|drops down|by|a|another? about|further|even? @pressure|@number|lower",
        "lost another|a|about|some @pressure|@number",
        "worse|lower than|now|after before?",
        "even? worse",
        "now|is even? worse",
    ),
}
#: before a result that is of all other work named
REST = frozenset(["rest", "others", "everything", "else"])
#: straight after "pressure went", "came": it did not get better
DOWNWARD = frozenset(["down", "low", "lower", "away", "off", "worse", "downhill"])
#: words of a result by which the trouble was there before the work
SAYS_STILL = frozenset(
    [
        "still",
        "same",
        "no",
        "not",
        "nothing",
        "none",
        "difference",
        "change",
        "help",
        "helped",
        "didnt",
        "hasnt",
        "wasnt",
        "made",
        "identical",
        "unchanged",
        "cure",
        "cured",
        "fix",
        "fixed",
        "good",
        "zero",
        "little",
        "hardly",
        "barely",
    ]
)
#: results that say so only where a clause ends with them: "same", "it didn't"
LONE_RESULTS = frozenset(
    [
        "the",
        "same",
        "better",
        "worse",
        "help",
        "it",
        "that",
        "they",
        "which",
        "didnt",
        "wasnt",
        "hasnt",
        "havent",
    ]
)
HANDS: dict[Hands, tuple[str, ...]] = {
    Hands.MACHINE_SHOP: ("machine|machinist shop|did?", "machinist"),
    Hands.SHOP: ("garage|dealer|mechanic|workshop|shop|dealership|yard", "professionally"),
    Hands.OWNER: (
        "i|myself|we did|rebuilt|replaced|changed|fitted|installed|built",
        "did it myself",
    ),
    Hands.EARLIER_OWNER: ("previous|last|prior|former owner", "po"),
}
