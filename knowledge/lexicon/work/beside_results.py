"""Words beside what came of work: which say so alone, join it to the work, or make it another thing."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set
from knowledge.reports.words import Result

#: before a result that is of all other work named
REST = _set("else everything others rest")
#: beside a pressure: it is so from then on
STAYS = _set("stays stayed remains remained sits holds stuck")
#: in what is worse since the work
FELL_SINCE = _set("worse lower less lost even")
#: behind a pressure: it is not what it should be; but not behind "where it", "as it"
SHOULD_BE = _set("should wants want needs ought oughta supposed needed")
AS_IT = _set("where as like what it")
#: straight after "pressure went", "came": it did not get better
DOWNWARD = _set("away down downhill low lower off worse")
#: words of a result by which the trouble was there before the work
SAYS_STILL = _set(
    "barely change cure cured didnt difference fix fixed good hardly hasnt help helped "
    "identical little made no none not nothing same still unchanged wasnt zero "
)
#: may end a clause behind a result: "didn't help at all"
TRAILS = _set(
    "again all any anyway as at bit either far lol much now one really sadly so sorry though "
    "unfortunately whatsoever yet "
)
#: results that are a clause of their own: "cranked it, nothing"
ALONE = _set("gone nada nope nothing zilch zip zippo squat diddly thing sausage not a")
#: before these and "nothing"
BEFORE_ALONE = _set("absolutely again and but so still then yet")
#: after a number that is no pressure then
COUNTED = _set(
    "day days gallons grade grades hour hours liters litres mile miles mm month months notch "
    "notches owners pints quart quarts rpm thou time times turn turns week weeks year years "
)
#: between a pressure as it was and as it is now, up to the second figure
BECAME = (
    "(?:went|gone|came|come|rose|risen|jumped|climbed|moved|turned|shot|up|is now|are now|became|becomes|dropped|fell|down)"
    "(?: up| down| back| straight)? to(?: about| around| nearly| over)?",
    "before(?: it| and|,|and its| now| to)* ?(?:about|around|now|is|after)?",
    "(?:before|to start|at first)(?:,| and)? now",
)
#: between two pressures behind "from", up to the second
FROM_TO = "(?:(?:hot|cold|warm|idle|at|psi|pounds|lb|lbs|bar) )*(?:down |up )?to"
#: say that there was too much pressure, and from which on it is (psi, judgement)
OVER, MUCH = _set("overpressure over high pegged pegging"), 90.0
#: the same, where a word before the first says that it was
IS_NOW = "now(?: it| its| is| at| about| only| just| barely| reads| shows| down| up| to| around)*"
WAS = _set("was were had ran read showed made held")
#: between a pressure as it is now and as it was, up to the second figure
INSTEAD_OF = (
    "(?:instead of|rather than|up from|down from|compared to|compared with|versus|vs|not)(?: the| about| around| old)*",
    "where (?:it|i|there) (?:was|had|used to be|had been)(?: about| only)?",
    "used to be(?: about| around)?",
)
BETTER = (Result.HELPED, Result.CURED, Result.FOR_A_WHILE)
#: between work and what it led to: "new filter, started it up and the gauge never moved"
LEADS_TO_IT = _set("now started start starts starting fired fires cranked")
#: words of a result by which the trouble began then: "oil change, then the light came on"
BEGAN = _set("came comes")
#: between a result and the trial behind it: "light went out as soon as I fitted the switch"
JOINS_AHEAD = _set(
    "after as by despite even following from now once since soon upon using when with"
)
#: a result that ends so names the trial: "what fixed it was a new sender"
IS_NAMED = _set("be being by is needed took was were")
#: say that all is well, and words beside them by which there was a trouble that ended
WELL = _set(
    "fine good ok okay well normal perfect great right happy sweet lovely magic brilliant bliss"
)
ENDED = _set(
    "again back better came comes now cured fixed fix did trick sorted solved problem out off gone away has is went all"
)
#: beside them: it is said of the part that was taken out
OF_THE_PART = _set("it its they is was are were looks looked all and spotless clean mint")
#: before a result that was only hoped for
HOPED = _set("assuming expected expecting figured figuring hoped hoping thinking thought")
#: after "no more" these are no trouble that ended
NOT_ENDED = _set("than pressure psi ideas money time help luck good power")
#: what is gone then is not the trouble with the pressure
NOT_THE_PRESSURE = _set(
    "noise noises rattle rattling tick ticking tapping leak leaks smoke smell puddle puddles drip drips weep"
)
#: behind "a higher", which is then no pressure
OF_HEAT = _set("temp temps temperature temperatures heat revs rpm idle")
#: a pressure after these is a gain
GAINED = _set("about added another by extra gain gained gave got increased plus worth")
#: psi: less does not end a complaint by itself (judgement); enough for any engine at any speed and
#: heat (common practice: 10 psi per 1000 rpm)
ENOUGH, PLENTY = 15.5, 40.0
#: beside a pressure of which nothing else is said: it is what came of the work before it
AT_LAST = _set("now since again steady holds held back retest retested after then")
#: where a pressure may change although idle stays as it was
ELSEWHERE_READ = _set("cold cruise cruising high max revs speed top")
#: verbs of a pressure that "down" may follow
GOING = _set("back came comes goes going gone is moved was went")
#: beside "still": another trouble is not cured
GOES_ON = _set("there low flickers flickering flicker present remains on same")
#: results that say so only where a clause ends with them: "same", "it didn't"
LONE_RESULTS = _set(
    "its everything all thats pressure shes is was fine good ok perfect great right normal sweet "
    "better didnt hasnt havent help it nope nothing same that the they wasnt which worse result"
)
#: after a figure: the pressure is that much less
LESS = _set("less lower down below under worse")
#: the trouble is there again, and what must stand in the clause beside it, or must not
RETURNS = _set("again returned recurred reappeared returns")
IS_BACK = _set("was is its came comes come went")
DID_IT = _set("did does it same thing problem fault trouble alarm light lamp buzzer tripped trips")
RIGHT_AGAIN = _set(
    "good fine normal right perfect ok okay works worked working pressure-back fixed full healthy"
)
#: lead to a trouble that was gone in between: "next morning zero again"
LATER = _set("later morning day week afterwards tomorrow weekend month")
#: before "again": the pressure is gone or low; after "back to", "down to" the same
IS_DOWN = _set(
    "zero nothing dead flat nil low down gone lost on flickering ticking knocking clattering tripping"
)
AS_LOW = _set("zero nothing nil square how low bad")
ABOUT = _set("the about around near nearly almost only just under below a")
NEGATED = _set("never not no didnt hasnt havent doesnt without wont")
#: between these and "perfect", which then is of the oil: "the level is perfect"
OF_THE_OIL = _set("level oil stick dipstick coolant compression wiring earths grounds fuses sound")
IS_RIGHT = _set("is was are were looks looked seems still all also")
#: before a part that is named only with what came of it: "second time the pump, no change"
IN_TURN = _set(
    "1st 2nd 3rd 4th first second third fourth then next finally lastly after also tried last started began"
)
ROW_LEADS = _set("time the a my new was came i we it and so of all attempt go try that with by up")
#: begin a list of what was done, and stand between the parts of a row
LISTS_WORK = _set("replaced changed renewed swapped tried done new")
ROW_JOINS = _set(", and & + plus / then the a my new oil both")
#: between a part and a short answer
SETS_OFF = _set(": ( - – — = ->")
WHERE = _set("of at into onto off from where under behind beside near by in")
CAME_TO = _set("up went gone came raised to it got now about")
ANSWERS = {
    **dict.fromkeys(
        [
            "no",
            "nope",
            "nothing",
            "nada",
            "zip",
            "none",
            "same",
            "no good",
            "no use",
            "not it",
            "nowt",
            "naw",
            "zilch",
            "zero",
            "still zero",
            "still low",
            "still nothing",
            "dead",
            "low",
            "nil",
            "no pressure",
            "n/c",
            "n/d",
            "nil change",
            "no change",
            "wrong",
            "wrong again",
            "not that",
            "not that either",
            "no dice",
            "no joy",
            "still there",
            "still on",
        ],
        Result.NO_DIFFERENCE,
    ),
    **dict.fromkeys(
        ("fixed", "cured", "sorted", "bingo", "that was it", "solved", "fixed it", "cured it"),
        Result.CURED,
    ),
    **dict.fromkeys(
        ("a bit", "a little", "a bit more", "a bit better", "some", "slightly", "slight", "partly"),
        Result.HELPED,
    ),
}
#: before a gauge: it was put on to look
PUT_ON = _set("put hooked screwed stuck teed fitted plumbed connected rigged tapped threaded")
#: behind "still on the": it is the lamp that is on
PANELS = _set("dash dashboard panel gauge cluster display screen whole road way motorway test")
#: in what came of it: it was the first start since
FIRED = _set("fired fires started starts cranked")
#: a sentence of nothing else: the lamp is off
ALL_OFF, OF_A_LAMP = _set("off out gone"), _set("lamp light warning the is now")
#: beside a pressure that is a sentence of its own
BESIDE_A_FIGURE = _set("now still only at idle hot cold again only just and about around or so")
#: behind "for": how long it lasted
SO_LONG = _set("while bit day week month time moment")
#: between work and the pressure that came of it: "new sender, needle sits at 40"
CAME_BETWEEN = _set(
    "and it its now then reads read reading shows showing showed is at about around roughly got get gets getting holds "
    "holding held sits sitting sat comes came come up to gauge needle pressure oil we i have has had makes made making gives "
    "gave went back in on straight away off hot idle warm tickover so only just barely still a the maybe exactly "
    "right again no rattle noise light flicker ticking tick lamp jumped rose climbed pulls she he this time that with"
)
#: straight before a figure: it is not what came of the work
CAME_BEFORE = _set("from was were below under above over nr no every per set by")
#: before "again": the pressure is gone as it was before
WENT_AGAIN = _set("went goes going quit")
#: between work and a pressure: it did not come of the work
CAME_NOT = _set(
    "not never didnt hasnt if when until before was were last ago since next every but while drill cold spec should relief opens "
    "set setting from year month week fuel boost torqued torque measured clearance thou"
)
#: before work: it is not done yet, or not on this engine
CAME_IF = _set(
    "if when once would should hope hopefully unless until till maybe might could told says said reckons thinks"
)
#: behind "on" or "for": what came of work is of another engine
THEIRS = _set("his hers theirs him her them others another someone somebody")
#: in "not cured": behind it "but better" may say that it helped all the same
WHOLLY = _set(
    "cure cured fix fixed solve solved sort sorted gone right perfect completely fully entirely"
)
#: what a part did to one thing, which may not be all: "fixed the delay but not the idle"
CURES_ONE = _set("fixed fixes cured cures sorted solved mended stopped")
#: before a pressure: so much was won by it
WON = frozenset(
    [
        ("gets", "me"),
        ("gave", "me"),
        ("gives", "me"),
        ("got", "me"),
        ("won", "me"),
        ("bought", "me"),
        ("netted", "me"),
    ]
)
#: in "no trouble till then": it was well before the work
TROUBLES = _set("trouble problem problems issue issues")
#: between "no joy" and the trials it came from
FROM_A_LIST = _set("from a an the any either my new or and nor another both")
#: before "for a while": how long it was so, not how long it helped
PASSES_TIME = frozenset(
    [
        "idle",
        "idling",
        "run",
        "running",
        "sit",
        "sitting",
        "stand",
        "standing",
        "wait",
        "cool",
        "rest",
        "drive",
        "driving",
        "over",
        "cranking",
        "spinning",
        "round",
    ]
)
#: before a lamp that goes out: the throttle did it, not the work; not where it was so from then on
BY_THROTTLE = _set("rev revs revved revving blip blipped throttle gas accelerator pedal")
TIMES_OF_DAY = _set("since now then after idle")
#: a part was put in: not among the words for work, as oil is added too
ADDED = _set("added adding")
