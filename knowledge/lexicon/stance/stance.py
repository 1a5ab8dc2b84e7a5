"""How a thing is said: denied, doubtful, asked, planned, guessed, feared, of another engine."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

NEGATION = [
    "no",
    "not",
    "never",
    "without",
    "none",
    "nor",
    "neither",
    "cannot",
    "hardly",
    "dont",
    "doesnt",
    "didnt",
    "isnt",
    "arent",
    "wasnt",
    "werent",
    "hasnt",
    "havent",
    "hadnt",
    "wont",
    "cant",
    "couldnt",
    "wouldnt",
    "shouldnt",
    "aint",
    "zero",
    "nothing",
]
#: after "maybe a": it is of how much
SHARES = frozenset(
    ["half", "quarter", "third", "fifth", "quart", "litre", "liter", "pint", "couple"]
)
#: before a verb: it does not do so
FAILS = frozenset(["fail", "fails", "failed", "failing", "refuses", "refused", "refusing"])
#: "not": of verbs
NOT = (
    "no|not|non|never|without|cannot|dont|doesnt|didnt|isnt|arent|wasnt|werent|hasnt|havent|hadnt|wont|"
    "cant|couldnt|wouldnt|aint|barely"
)
#: they end what may stand inside a phrase, as a negation does
NEITHER = frozenset(["nor", "neither", "none", "nobody"])
#: may begin a result, not only a question or what was not done
RESULT_BEGINS = frozenset(["did", "never", "not", "havent", "hasnt", "didnt", "what"])
#: words that may stand inside a phrase without changing what it says
FILLERS = _set(
    "very really quite rather real mighty awfully pretty extremely completely absolutely "
    "totally actually also just now definitely certainly fairly particularly simply literally "
    "suddenly clearly obviously apparently already always usually has have had been is was are "
    "were being itself right : sometimes occasionally mostly often eventually immediately "
    "quickly instantly momentarily briefly finally soon generally"
)
#: words that look like negation and are none
NO_NEGATION = (
    "not only",
    "no doubt",
    "no clue",
    "no wonder",
    "no problem|problems",
    "no idea",
    "not sure",
    "nothing but",
    "no longer",
    "no @number",
    "no wake",
    "dont know",
    "dont get",
)
#: how far a negation reaches ends here
ENDS_NEGATION = frozenset(
    [
        "but",
        "just",
        "only",
        "except",
        "though",
        "although",
        "however",
        "yet",
        "still",
        "then",
        "after",
        "since",
        "when",
        "while",
        "until",
        "till",
        "before",
        "prior",
        "because",
        "apart",
        "besides",
    ]
)
#: less sure, by how sure that leaves it, 0 to 1 (judgement)
HEDGES: dict[float, tuple[str, ...]] = {
    0.8: (
        "seems|seem|appears|appear|looks-like|apparently|probably|likely|presumably",
        "looks|sounds|feels like",
        "i think",
        "sort|kind of",
        "pretty|fairly sure",
        "reckon|believe",
    ),
    0.7: (
        "maybe|perhaps|possibly|might|may|unsure",
        "not|dont sure|know if?",
        "could be",
        "hard to tell|say",
        "not certain",
    ),
}
_DO = (
    "try|replace|swap|change|fit|check|pull|drop|order|put|rebuild|install|clean|take|get|run|buy|open|look|"
    "do|add|prime|have|send|test|strip|tear|remove|rering|re-ring|hone|bore|regrind|redo|reseal|stick|throw|plastigage|"
    "plastigauge|weld|braze|unbolt|flush|hook|yank"
)
#: work that is only planned, in the plain form of the verb
DO = frozenset(_DO.split("|"))
_WILL_DO = "try|replace|swap|change|fit|pull|rebuild|install|clean|buy|prime|send|strip|tear|remove|order|check"
#: what follows is not so, or not yet: plans and conditions
SUPPOSED = (
    "would|should|shall|unless",
    f"going|gonna|about|planning|plan|intend|want|wanna|need|needs|hoping|hope|tempted|considering|ready to? {_DO}|tow|haul|rally|race|sail",
    "thinking of|about",
    "considering",
    "wondering|whether",
    "see|know|wonder|sure|ask|asking|check if|whether",
    f"ill|well|gonna|id be? {_DO}",
    f"i|we|he|they|mechanic|garage|shop will be? {_DO}",
    f"will be? {_WILL_DO}",
    f"{_DO} it|the|that|this next|tomorrow|soon",
    "next step|thing|job|weekend|week",
    "id|wed|youd|theyd be|love|like|settle|prefer|expect|want happy|pleased|content|satisfied|delighted|thrilled|glad|to|for|with|a|another",
    "on order",
    "=ordered|awaiting|buying|=wait",
    "waiting for|on|to|till|until",
    "could|can|might it|this|that|i|a|the|an|we",
    "might|may tow|haul|race|sail|sell|fit|buy|try",
    "what if",
    "if so|not",
    "in case",
    "havent|hasnt|havnt|not|didnt|yet been|yet|even|actually? "
    "tried|checked|replaced|changed|looked|tested|touched|=pulled|=dropped|=opened|done|had|measured|cut|taken",
    "not yet",
    "wanted|want|wanting|trying|try|make|making|just|be|double to? be? sure|certain",
    "instead|rather of|than",
    "before i|we|you =do|=go|=start|=tear|=strip|=pull|=spend|=buy|=take|=drop|=rip|=rebuild|=order|=open|=commit",
    "told me to",
    "suggested|suggests|advised|recommends",
    "calls|call|called =for",
    "recommended|recommend i|we|that|to|a|replacing|changing|new|trying|pulling|checking|using",
)
#: a clause that begins so asks; what it says is not stated
ASKS = (
    "is|are|will|can engine|pump|gauge|pressure|oil|bearings|motor .. ok|okay|fine|safe|good|normal|alright|ruined|damaged|dead|hurt",
    "would|should|could|can|is|are|do|does|did|will|am|any|anyone|anybody|has|have it|this|that|there|these|i|we|you|"
    "a|the|my|anyone|anybody|ideas|idea|suggestions|thoughts|advice|help|chance|one|an|else|somebody|someone|possible|bad|low|worn",
    "what|which|who|where would|should|could|else|is|are|do|can|to|next|causes|cause|might|s|if|about|now|am|part|has",
    "whats|what",
    "how do|can|much|should|would|to|long|likely|bad|low",
    "or is|should|could|would|do|does|maybe",
    "any ideas|idea|thoughts|suggestions|help|advice",
    "please|thanks|cheers",
)
#: a guess at the cause; what follows is the person's opinion
GUESSED = (
    "suspect|suspecting|suspected|guess|guessing|assume|assuming|blame|blaming|suspicion|theory|diagnosis|presume",
    "i|im|we think|thinking|believe|reckon|bet|figure its|it|the|that|maybe|theres",
    "my|best money guess|bet",
    "put|puts|putting it|this|that|them down to",
    "i|we|he|she|they suppose|imagine|presume|gather|fancy|wonder|supposed|imagined|presumed",
    "could|may|might|must|cant|can|gotta be|have|to|only",
    "has to|gotta",
    "leaning toward|towards",
    "convinced it|its|the|that",
    "probably|maybe|perhaps|possibly|likely just|only? a|an|the|my|its|something|some",
    "dude|seller|bloke|chap|fella|lad|neighbour|neighbor|kid|uncle|dad|brother|trader|salesman|workshop|engineer|fitter|builder|yard|agent|technician|specialist|machinist|club|forum|mechanic|dealer|garage|mate|friend|buddy|guy|someone|they|he|people|shop|everyone thinks|says|said|reckons|"
    "suggests|suspects|blames|told|say|think|thought|saying",
    "another|others|somebody|second|third|next|most|half|one says|say|said|reckons|reckon|swears|blames|suggested|suggests",
    "and|he|she|they|then said|says|reckoned|reckons|thought|thinks|decided|claimed|insisted it|its|the|that|my? "
    "pump|switch|sender|sensor|bearings|bearing|relief|spring|filter|pickup|crank|rings|mains|sending-unit",
    "possible|potential",
    "thinking it|its|the|that|they|maybe|one|perhaps",
    "was|been|im|were|got told that|these|they|this-engine|some|you|its|it|the|my|all|both",
    "read|heard somewhere|online|that|about these|they|it|this",
    "is|are? due to",
    "caused by",
)
#: names a cause; what follows is no sight, unless the sentence says that it was seen
NAMED = (
    "turned|turns|turn out to|that|it|the|its|in|a|be|i",
    "cause|culprit|reason|diagnosis|verdict was|is|being|turned|seems|appears|: a|an|the|that|to|in|worn|due|down|bad|loose|broken|just|my|its?",
    "problem|fault|trouble =was|turned a|an|the|that|to|worn|due|down|bad|loose|broken|just|my",
    "cause|causes|caused|culprit|diagnosis|verdict :|=is|=was|by",
    "diagnosed|condemned|written as|off|with|a",
    "root|main|likely|real cause|reason|culprit",
    "i|id|ill|would|we bet|wager|say|guess|suspect it|its|a|the|that|on|my|your|you",
    "my|best|only guess|bet|theory|suspicion|money|hunch",
)
#: of an instrument or a stick: no question, whatever mark ends the sentence
SAYS_WHAT_IT_READS = _set("says reads shows said showed")
SEEN = _set(
    "found find saw see seen showed shows revealed measured opened pulled stripped inspected "
    "apart looked removed dropped dismantled inspection teardown discovered noticed took taking cut tested"
)
#: feared, hoped or expected, and so not seen
FEARED = (
    "afraid|scared|worried|feared|fear|fearing|worry|paranoid|nervous|dreading|expecting|expected|hoping|hoped|"
    "risk|risking|avoid|prevent|assumed|thought",
    "dont|didnt want",
)
_PERSON = (
    "brother|friend|buddy|dad|father|mate|neighbor|neighbour|cousin|uncle|wife|son|husband|sister|boss|buddies|"
    "colleague"
)
_OF_PERSON = (
    "=brothers|=friends|=buddys|=dads|=fathers|=mates|=neighbors|=neighbours|=cousins|=uncles|=wifes|=sons|=husbands|"
    "=sisters|=bosss|=colleagues"
)
_MACHINE = "engine|motor|truck|car|boat|tractor|bike|van|launch|v8|genset|lorry|one"
_PIECES = "pump|sump|pan|filter|sender|bearings|bearing|crank|cam|oil|pressure"
#: another engine, another owner
OTHER_ENGINE = (
    "on|with|to my|the|an? air? =compressor|=airline|air-line reads|shows|works|read|worked|showed",
    "my last|previous|other|former|earlier|spare|donor|wifes|brothers|friends|dads|mates "
    "one|engine|motor|truck|car|boat|tractor|bike|van|v8",
    "my|the old one",
    "the|its previous|former engine|motor",
    "old|previous|former engine|motor ran|had|made|showed|gave|held @pressure|@number|@range",
    "my old truck|car|boat|tractor|bike|van|engine had|was|used|did|ran|always|would",
    f"my|a|his|her|our|the {_OF_PERSON}",
    f"my|a|his|her|our {_PERSON} has|had|gets|got|lost|having low|no|zero|the|exactly|same|this|that|similar|one|metal|trouble|"
    "problems|bad|worn|his|her|nearly|oil|pressure|all same?",
    f"my|a|his|her|our {_PERSON} has|had|owns|owned|bought|got|runs|ran|drives|drove|with .. {_MACHINE}",
    f"my|a|his|her|our {_PERSON} runs|uses|drives|owns|always|swears",
    f"{_PERSON}|guy|bloke|fella|lad of =mine|=ours with .. {_MACHINE}",
    f"{_PERSON}|guy|bloke|fella|lad of =mine|=ours runs|uses|drives|owns|has|had|bought|got a|an|the? .. {_MACHINE}|@pressure|@number|identical|same",
    f"my|a|his|her|our {_PERSON} =who|=that had|has|owns|owned|bought|got|runs|ran|drives|drove .. {_MACHINE}|one",
    f"my|a|his|her|our {_PERSON} .. in|on|with =his|=hers|=theirs",
    f"my|a|his|her|our {_PERSON} .. his|her|their|hers|theirs own? {_MACHINE}|{_PIECES}",
    "his|theirs|hers had|was|did|has|is|engine|motor|one|shows|reads|runs|sits|makes|gets|holds|showed|always|ran|read|made|held",
    "brothers|friends|dads|mates|neighbors|neighbours|cousins|uncles|buddys|fathers "
    "boat|engine|motor|truck|car|tractor|bike|van|launch|one",
    "neighbor|neighbour|brother|friend|buddy|mate|dad|cousin|uncle says|said|reckons|had|has|told",
    "the|a|that donor|parts|spare|scrap car|engine|motor|truck|boat|block|one",
    "another|someone|somebody|different|other|others guy|else|elses|owner|engine|boat|truck|car|tractor|people|folks|had",
    "guy|guys|bloke|blokes|chap|chaps|fella|fellow|lad on|at|in|who|with|cured|fixed|had",
    "other|plenty|dozens of? big|small? =engines|=motors|=v8s|=builds|=big-blocks|=small-blocks|=blocks",
    "ive|have|i seen|heard|read of|that|about|engines|some|on|others|one|people|where",
    "most|many|these|those|healthy|good engines|motors|people|folks",
    "against|versus|vs @pressure|@number|@range on|in|for|of the other",
    "supposed|meant|ought to",
    "wants|requires|needs|=required|=minimum|=min @pressure|@number|@range",
    "others of|like the|this same|type|model|kind|class .. show|shows|read|reads|make|makes|have|run|give",
    "minimum|min|least oil? pressure|allowed|permitted|acceptable? is|should|at",
    "spec|manual|book|specs|handbook|specification calls|says|is|states|call|specifies|gives|wants|of|for|should",
    "green|normal|permitted|allowed|safe arc|band|range|sector|zone|limits is|are|was|runs|goes|from|:|being",
    "according to",
    "rule of thumb",
)
#: one of two engines; another one where the text speaks of both, or gives only a figure of it
OTHER_SIDE = (
    "port|starboard|stbd engine|motor|main|diesel|one|only|runs|has|is|reads|had|shows|side|used|was|still|oil|gauge|makes|"
    "made|sits|fell|drops|dropped|holds|went|stayed|engine's|flickers|wavers|bounces|swings|goes|comes|came|stays|keeps|lost|loses|"
    "needle|alarm|light|lamp|buzzer|pressure|side's|trips|tripped|knocks|smokes|fine|ok|okay|good|low|normal|perfect|healthy|:",
    "port|starboard|stbd @pressure|@number|@range",
    "the port|starboard|stbd ,",
    "on the? port|starboard|stbd",
    "left|right|left-hand|right-hand engine|motor|main|diesel fine|ok|good|normal?",
    "the left|right one? @pressure|@number|@range|has|reads|shows|only|runs|is",
)
#: a pressure of something else than the oil
OTHER_PRESSURE = (
    "tyre|tyres|tire|tires",
    "compression|boost|vacuum|blood",
    "@pressure|@number|@range is|was|as|are? the|a? expected|specified|required|recommended|minimum|spec|limit",
    "brake|coolant|radiator|fuel|rail|manifold|crankcase|cylinder pressure",
    "cooling|coolant|radiator|rad system? pressure? test|tests|tester|tested|pressurised|pressurized|pumped",
    "cooling|coolant system pressure",
    "cooling|coolant system @not hold|holds|holding|held",
    "oil? pressure|psi =drop|=difference|=differential across|over|through|of|between",
)
#: back to the engine in question
THIS_ENGINE = ("mine", "this one|engine|motor", "but my|this|it", "my own? engine|motor|gauge|oil")
#: of an earlier time, when nothing was wrong
USUALLY = (
    "used to",
    "usually|normally|previously|formerly|originally",
    "always had|was|showed|ran|read|been|at|@pressure|carried|held|made|sat|kept|stood|stayed|pulled|gave|got|hung|settled|lived",
    "since|when i|we first? got|bought|had it|her|the new? .. @pressure|@range",
    "=always =sat|=stood|=stayed|=hovered|=lived at|on|around|near|about|just",
    "instead of its|the|my? usual|normal?",
    "was always",
    "had|made|showed|ran|gave|held|was|were @pressure|@number|@range when|as? =new",
    "in the past",
    "last year|summer|season|spring|autumn|winter|fall it|gauge|pressure|engine was|had|showed|read|ran|made|held|gave",
    "it|gauge|pressure|engine was|had|showed|read|ran|made|held @pressure|@number|@range cold|hot? at? idle|speed? last year|summer|season",
    "@pressure =new ,|;|/",
    "@pressure|@number|@range is|was what i|he|she|we|it|they|you usually|normally|always",
    "@pressure|@number|@range usual|usually|normal|normally|formerly",
    "it|pressure|gauge|idle was|were|used-to-be|had|showed|read @pressure|@number|@range and|/|, @pressure|@number|@range before|previously|originally",
    "normal|usual|correct|expected|specified for|on this|the|my|these|it car|engine|model|boat|tractor|one|engines?",
    "once|formerly|previously|earlier|originally showed|read|had|made|ran|held",
    "had|has|have always|previously|formerly|normally|usually been|run|read|shown|had|held|sat",
    "for years|ages it|was|read|had|showed|at",
    "from|than the|its|a|my? =usual|=normal",
    "from|than the|its|a|my|our? =usual|=normal @pressure|@number|@range",
    "@pressure|@number|@range is|was|as|being the? usual|normal|norm",
    "where|when|whereas @pressure|@number|@range is|was usual|normal",
    "=usual|normal oil? pressure is|was|being? about|around|of? @pressure|@number|@range",
    "=usual|normal|normally|usually is|was|about|around|the? about|around? @pressure|@number|@range",
    "against a|the|its? usual|normal",
    "rather than|instead of the|its|my usual|normal",
    "where it|she|i|we was|had|got|read|ran|made|showed",
    "when it|she was|had|read|ran|made|showed about|around|over|nearly? @pressure|@number|@range",
    "when it|she|engine was new|right|young|fresh|good",
    "@pressure|@number|@range hot|cold|at|on? idle|hot|cold|tickover|speed? when|as =new|=rebuilt",
    "when i|we first? bought|got|had it|her|him|this|mine new|first|originally",
    "when i|we bought|first-bought|first-got|first-had it|her|him|this?",
    "@pressure|@number|@range when i? bought|got|new|first",
    "@pressure|@number|@range when it was new|rebuilt|fresh|right",
    "prior to the|this|that|my",
    "before this|that|then it|gauge|pressure|needle was|read|showed|ran|had|held|sat",
    "before it|this|that was|read|showed|ran|had|held|would|made|always",
    "before|pre =rebuild|=overhaul|=rebuilding|=overhauling|=stripdown|=rebuilt|=reassembly",
    "=prerebuild|=preoverhaul",
    "before the|this|my|that .. rebuild|overhaul|work|change|swap|new|changed|rebuilt|replaced|oil|=stripped|=pulled|=opened",
    "before i|we .. =did|rebuilt|overhauled|changed|swapped|replaced|=stripped|=pulled|=opened|refitted|fitted|touched",
    "was|had|ran @number|@pressure|@range last|before|previously",
    "had|was|ran|showed|held|read|made @number|@pressure|@range all my|its|her|his life|days",
    "@number|@pressure|@range all its|her|his life",
    "had|was|ran|showed|held|read|made @number|@pressure|@range for|all years|ages|these|along",
    "had|was|ran|showed|held|read|made @number|@pressure|@range as|ever long|since",
    "it|she|they|pressure|gauge sat|stood|stayed|hovered at|on|around|near|about|just @number|@pressure|@range for|all years|ages|@years|these",
    "was|were it|always|around|about|at? @number|@pressure|@range before",
    "where|when it|they starts|started out? at|on|with",
    "has|had|have|its|it's had|read|run|made|held|been|got @pressure|@range .. since new|i|the|we|my|day",
)
#: the whole clause is of the time before
UNTIL = (
    "until|till last|recently|yesterday|this|now|about|a|one",
    "years|ages|decades ago",
    "long ago",
)
#: clauses that begin so go on as the one before them was meant
GOES_ON = frozenset(["or", "then", "because", "nor", "for"])
#: begin what is said of any such thing, where the clause goes on with one of ``WOULD_BE``
ANY_ONE = frozenset(["a", "an", "any"])
WOULD_BE = frozenset(
    ["would", "could", "can", "might", "may", "will", "wouldnt", "wont", "usually", "should"]
)
#: begin a condition without "if", where "would have" follows
INVERTED = frozenset(["had", "were", "should"])
WOULD = frozenset(
    ["would", "id", "wed", "itd", "could", "should", "wouldnt", "youd", "theyd", "might"]
)
