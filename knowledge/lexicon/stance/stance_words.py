"""Single words around "would": what was seen again and again, and what refused."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: before "would", and after it: what they did again and again, not what they might do
INSTRUMENTS = frozenset(["gauge", "needle", "pressure", "light", "lamp", "buzzer", "alarm", "gage"])
MOVES_SO = frozenset(
    [
        "drop",
        "fall",
        "go",
        "come",
        "flicker",
        "blink",
        "flash",
        "glow",
        "bounce",
        "jump",
        "swing",
        "waver",
        "light",
        "dip",
        "sink",
        "creep",
        "climb",
        "read",
        "show",
        "rise",
        "stay",
        "sink",
        "climb",
        "jump",
        "bounce",
        "flash",
        "sit",
        "hover",
        "dip",
        "swing",
        "just",
        "slowly",
        "then",
    ]
)


#: before "me" or "to me", and before "from": an engine that is one's own now
GAVE = frozenset(["left", "gave", "given", "sold", "passed", "handed", "willed", "lent", "loaned"])
GOT = frozenset(["bought", "inherited", "got", "acquired", "had", "purchased"])
#: shortly before "the usual 45": it is there again
RETURNED = frozenset(["back", "returns", "returned", "recovers", "recovered", "again"])

#: before "would not", and after it: it refused, "the lamp would not go out"
#: between "would" and a verb: it did so, and no more; and what it did then
TURNS_LITTLE = _set("only just barely hardly")
BINDS = _set("bind lock stop jam seize catch stick bottom")
REFUSING = INSTRUMENTS | _set("it engine motor starter crank lifters tappets pump she he that")
REFUSES = _set(
    "go come drop start turn crank build move rise budge register read show stay hold prime clear "
    "fire lift pump settle light make produce give get pick pull draw suck deliver develop raise"
)
#: name a person, who may own another engine or lend a hand with this one
PERSONS = _set(
    "brother friend buddy dad father mate neighbor neighbour cousin uncle wife son husband sister boss "
    "colleague mechanic machinist daughter girlfriend boyfriend mum mother someone somebody guy bloke chap fella fellow lad customer"
)
#: before such a person: he worked on this engine; behind one: what a helper does
HELPED_BY, HELPED = _set("with by and between plus"), _set("helped helping help")
HELPS = _set(
    "yelled yells shouted shouts noticed notices spotted spots saw sees heard hears helped helps helping came "
    "watched watches watching cranked cranking turned turning held holding and pointed waved called thinks "
    "did rebuilt built fitted assembled overhauled machined smelled smelt looked checked drove drives "
    "driving lent lends loaned borrowed borrows took followed following called rang phoned flagged steering"
)
#: after "had": he lent an eye or an ear
LOOK = frozenset([("a", "look"), ("a", "listen"), ("a", "drive"), ("a", "go")])
#: "on that same engine", "of the port diesel": which engine it is, said in the middle of a statement
ON_ENGINE = _set("on of for in")
WHICH_ENGINE = _set(
    "the that this my our his her same main old other port starboard left right hand inner outer one nr"
)
ENGINES = _set("engine motor diesel genset generator")
#: the sides of two engines, each in one word
SIDES = {
    "port": "port",
    "starboard": "starboard",
    "stbd": "starboard",
    "left": "left",
    "lefthand": "left",
    "right": "right",
    "righthand": "right",
}
OPPOSITE = {"port": "starboard", "starboard": "port", "left": "right", "right": "left"}
#: straight behind a side: its engine is the sound one
IS_FINE = _set("fine ok okay good normal perfect healthy spot")
#: behind "fine": it is so throughout
ENDS_FINE = _set("and but while whereas on though as so")
#: say that the engine of one side is the sound one
GOOD_ONE = _set("mine whereas compared comparison")
#: said of the one of two engines that is in question
IN_TROUBLE = _set("problem trouble culprit bad suspect faulty poorly low zero nothing dead")
#: before "port": it is a hole
HOLES = _set("test gauge sender oil sensor pressure gallery inlet outlet switch front rear tapping")
#: after the figure of this engine: what comes is of the other
AGAINST = _set("against versus vs compared where while whereas")
#: after the part that was worked on: no question goes on so
WORK_ENDS = _set(
    "last this and on about recently yesterday myself before in then but now with only too"
)
#: between "did" and the part that was worked on
WORK_LEADS = _set(
    "a an the my its all both full complete total quick new proper thorough major minor whole"
)
#: before what a question asks whether it follows
MEANS = _set("mean means meaning")
#: a clause that begins with one of these, in a sentence with a question mark, is the question
AUXILIARIES = _set(
    "do does did is are was were can could would should will has have may might shall am"
)
#: behind what was not done: it was not done for so long
FOR_LONG = _set("for in since ages")
#: behind a person: what he says, not what his engine does
SPOKE = _set("said says reckons reckoned told thinks thought suggested swears swore")
#: behind "has": it is asked of them
ANYBODY = _set("anyone anybody someone somebody you i we")
#: begin a sentence that says throughout what was: "before, with the old engine, it showed 25"
BEFORE_ALL = frozenset(
    ["before ,", "before :", "previously ,", "formerly ,", "originally ,", "beforehand ,"]
)
#: whose a machine is, and what it is called: "my dad's old tractor"
OF_PERSONS = _set(
    "brothers friends buddys dads fathers mates neighbors neighbours cousins uncles wifes sons husbands sisters bosss "
    "daughters mums grandads grandfathers nephews in-laws"
)
MACHINES = _set(
    "engine motor truck car boat tractor bike van launch v8 genset lorry digger crawler dozer mower yacht combine "
    "generator pickup loader suv minivan saloon sedan estate hatchback hatch wagon coupe convertible camper jeep "
    "4x4 supermini runabout ute motorhome roadster minibus"
)
#: before "on my wife's car": it is the one in question
LEADS_TO_IT = _set(
    "did done doing changed change changing serviced service fitted replaced problem problems trouble issue issues "
    "light lamp pressure working gauge warning"
)
#: straight behind "never had": the most, or the least, that a gauge showed
HAD_NO_MORE = _set("more over above better less below under much any good enough")
#: before "normally": how it works, not what it showed in the past
WORKS = _set(
    "work works worked working run runs ran running read reads reading start starts started sound sounds sounded idle idles drive drives drove "
    "behave behaves behaved behaving act acts acted operate operates operating build builds built go goes fire fires fired pull pulls"
)
#: behind "where it": it is as it should be
SHOULD_BE = _set("should expect expected expecting")
#: with "or" behind it, what comes of it otherwise is no longer denied
CANNOT = _set("cant cannot can't couldnt couldn't")
WARNED_BY = _set("light lamp alarm buzzer beeper horn siren warning")
#: before "the sender off my other one": the part is on this engine now
BORROWED = _set("tried try borrowed robbed used pinched")
#: begin a list of what was looked at, and end it where all of it was in order
LOOKED_FOR = _set("checked check looked examined inspected searched checking looking went")
IN_VAIN = frozenset(
    (
        ("found", "nothing"),
        ("nothing", "found"),
        ("found", "none"),
        ("nothing", "wrong"),
        ("nothing", "amiss"),
        ("no", "fault"),
        ("finding", "nothing"),
        ("find", "nothing"),
    )
)
#: straight behind "should", "would": it only leads to what is stated
ASIDES = _set("add say mention note explain stress guess imagine")
#: straight behind "worried", "afraid": the reason, which is stated
REASONS = _set("as because since when")
#: behind "I thought it was the gauge": what was done then
DID_THEN = _set(
    "kept carried went drove ran stopped shut pulled turned checked topped put took finished left"
)
#: before "why", by which what follows is stated: "does anyone know why it drops?"
KNOWN_WHY = _set("know tell explain understand idea out figure reason see wonder wondering")
#: ask the cause of what follows: "what would cause it to drop?"
WHAT_ASKS = _set("what whats")
CAUSES = _set("cause causes causing caused make makes making")
#: "is it normal that it drops?" asks only whether that is bad
ASKS_OF = _set("normal ok okay usual right bad safe common expected dangerous serious")
#: behind "does it": what it does, no question
ALL_THE_SAME = _set(
    "every each without all at when only in on hot cold more both mostly sometimes constantly from after "
    "most now even regardless whatever whenever under"
)
#: begin what holds of any such engine, up to "but"
NORMS = _set(
    "supposed meant ought spec manual book specs handbook specification according rule most many healthy good"
)
#: behind "according to (the)", "heard of": no book and no other engine
OWN_SOURCES = _set(
    "my our him her them this it gauge log plotter driver skipper dash owner display screen wife husband crew"
)
#: what other people and boats do for the person: it is of this engine
PASSERS_BY = _set(
    "called came passed towed pulled told gave took went overtook radioed noticed saw shouted waved pointed looked "
    "found checked put said reckoned stopped offered came rang"
)
#: behind "could be turned by": it was done so
HANDS = _set("hand hands finger fingers")
#: behind "what", in a sentence that asks nothing: what was, or what was seen
WHAT_WAS = _set("used was came ran drained poured looked looks dripped fell")
#: behind the "what" that heads a list of what was done: "what I've tried so far: ..."
HAS_DONE = _set("i ive we weve he hes they theyve has was")
#: behind "if", one before the other: it is not known yet, "if a new pump doesn't fix it"
NOT_YET = _set("doesnt dont wont isnt fails")
CURES_IT = _set("fix help cure do work solve change sort make bring get cut show to it the")
#: before one of the auxiliaries: a statement begins
SUBJECTS = _set("it i we she they he")
#: behind "none": what is denied; else it ends what was said
NONE_ARE = _set(
    "of were was is are found left showing leaking visible seen broken missing loose worn in on"
)
#: behind "next": a time that has passed, where one of these tells what came then
WEEKS = _set("week weekend")
CAME_THEN = _set(
    "same again back still tripped dropped came went was were flickered failed died read"
)
#: what people who never saw this engine say of it, to the end of the sentence or to what was done then
HEARSAY = (
    "forum|forums|internet|web|net|online|videos|group|groups say|says|said|reckon|reckons|claim|claims|think|thinks|tell|tells|swear|swears",
    "read|reading|saw|heard on|in the|a? forum|forums|internet|web|net|online that?",
    "some|others|many|lots|most|folks|people people|folks|guys|owners? say|swear|claim|reckon|recommend|suggest|insist",
    "everyone|everybody|people on|in the|a? forum|forums|internet|group|online says|say|said|reckons|think",
)
ENDS_HEARSAY = frozenset(["so", "but", "i", "we", "ive"])
#: how a reading is asked about: "is 15 psi at hot idle too low?"
JUDGES = _set("too ok okay normal low enough bad good alright right fine safe acceptable")
#: behind what a book gives, begin what this engine does: "book wants 3.5 bar, I get 2"
OWN_READING = _set(
    "i im ive we weve mine ours its got getting measured measuring actual actually reads it"
)
#: beside a figure that a book gives
ASKED = _set("wants asks calls min minimum required requires needs book's")
#: behind "recommended": nobody recommends now, it is the oil the book names
OF_OIL = _set("oil grade weight viscosity filter")
#: what one would do; before these it is an opinion, or what had been done
ID = frozenset(["id", "wed"])
THINKS = frozenset(
    [
        "say",
        "guess",
        "think",
        "bet",
        "reckon",
        "swear",
        "assume",
        "suspect",
        "just",
        "had",
        "been",
        "already",
    ]
)
#: behind "normal" these say how warm the engine is; "the good one" is another engine
WARMTH = _set("operating running working temp temps temperature temperatures")
GOOD_ENGINE = _set("one engine motor side")
#: behind "so (that)": what a person wanted to be able to do, unless he saw or heard by it
PERSONS_BY_PRONOUN = _set("i we he she you")
MAY_THEN = _set("could can might")
TO_LEARN = _set("see hear watch check read tell feel smell find not be say")
#: before "like": what follows "when" or "that" is no more than a likeness
SOUNDS_LIKE = _set(
    "sound sounds sounded sounding noise noises kind sort rather bit just clatter rattle rattles rattled rattling "
    "knock knocks knocking tick ticks ticking ran runs running"
)
OF_SUCH = _set("when whenever that which if")
#: before "for": what follows is said of all engines of the kind
KNOWN = _set("known notorious famous infamous renowned")
#: in a question: what follows is asked
MEANS = _set("means mean meaning suggests indicates implies")
#: behind "if you ...": what then awaits anybody: "if you swapped caps you're in for a line hone"
YOU_ARE = frozenset(["youre", "you're", "youll", "you'll"])
