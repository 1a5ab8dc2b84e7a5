"""Words beside a number that say whether it is a pressure, and how it is meant."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: before a pressure: nearly so
ABOUT = _set("about around roughly approximately approx near nearly maybe like")
#: before a pressure: it is more
OVER = _set("over above past more better higher exceeds exceed exceeded exceeding beyond")
#: before a pressure: it is less
UNDER = _set("below under less")
#: after a number: it is a difference
MORE = _set(
    "low high short off out more less lower higher drop difference loss either increase apart range "
    "switch sender gauge gage lamp light warning alarm relief spring pump worth better worse improvement "
    "steps swing variation scale dial"
)
#: shortly before a number: it is a difference
BY = _set("loss difference differ differs lost loses losing shed gained within")
#: straight before a number: it is a difference, as "to" does not follow
CHANGED = _set(
    "drop drops dropped fall falls fell rise rises rose gain gained lost lose loses raised up down "
    "increased decreased another extra plus minus"
)
#: between a number and what it is compared with: it is a difference
BESIDE = _set("above below over under down up")
#: after "above" or "below": what it is compared with
COMPARED = _set(
    "last yesterday before the its my what normal usual spec where that on panel dash factory other"
)
#: straight before a pressure: what is thought of it
SO_MUCH = _set(
    "normal usual healthy steady decent good solid respectable measly mere paltry miserable feeble nice reasonable poor "
    "lowly comfortable"
)
#: after "over the": it is in how long
SPANS = _set(
    "watch day week weekend month hour trip passage course next last night season winter summer few years"
)
#: before "to" or "at" and a number: what a needle does
MOVES = _set(
    "drops drop dropped dropping falls fall fell falling starts started start sits sit sitting stays stay goes go "
    "went going gone gets get getting down up only just used climbs climbed rises rose rise raises brings bring brought "
    "comes come came jumps jumped builds built sinks sank settles settled sags dips dipped back it hovers runs holds "
    "steady right reaches slides slid hovering holding running returns pegs sitting drifts creeps crept picks ends ended "
    "ending stuck idles idling pegged rests resting levels leveled levelled wavers plummets plummeted shoots shot swings "
    "slips slipped bleeds bled hits hit peaks topped settling dropping climbing rising recovers recovered still hangs "
    "hanging remains remained stayed sagged sag sagging faded fades stands stood fallen slumped slid sunk dipped dipping"
)
#: between what a needle does and a number
TOWARDS = _set("to at on around be from towards toward near between")
#: after a number without a unit: it counts nothing
FOLLOWS = _set(
    "at on when while if in with and but or hot cold warm idle idling after before once now then until till max "
    "maximum tops again today most best minimum whatever regardless no even as for from to under over above instead "
    "normally usually only during going doing cruising driving running stopped sitting all both maybe which where "
    "again steady then so since because dropping rising falling down up psi lbs going cranking revved revving tickover "
    "that it the my i it's its"
)
#: beside a number in a sentence with another pressure: it is one as well
RUNNING = _set("running revved steady driving cranking idling moving")
#: turns "above" into a bound
NEVER = _set("never not wont doesnt cant dont no")
#: beside a pressure: it goes no higher
MOST = _set("lucky max maximum most tops maxes peaks peaked maxed topped maxing topping best")
#: after a number: it is no more, it is no less
OR_LESS, OR_MORE = _set("less under below lower"), _set("more better over above higher plus")
#: after "not", before a number: it does not get there
REACHES = _set(
    "even get gets reach reaches make makes hit hits build builds see show shows touch crack hold break"
)
#: straight before a number without a unit: it is what an instrument says
SAYS = _set(
    "says said reads read reading readings shows show showing showed indicates indicating holds hold pressure psi gauge needle otherwise"
)
#: the same, where the sentence names an instrument; words between these and a number
IS = _set(
    "its is was are get gets getting got had has have see seeing saw makes make making made runs running ran"
)
#: of pressure that does not, where it should
RISES = _set("come comes came rise rises rose climb climbs go goes get gets")
#: before a pressure: whoever says so finds it too little
SCANT = _set("only just barely hardly scarcely merely mere measly paltry miserable feeble pathetic")
NEARLY = ABOUT | _set(
    "only just barely hardly scarcely still now a somewhere exactly dead even roughly say"
)
#: between a verb and "to" with a pressure
GRADUALLY = _set("steadily slowly gradually quickly rapidly progressively straight right")
#: before a number that is a clause by itself: "first 50, then 20, now 5"
THEN_NOW = _set("then now later finally eventually only just")
#: before "at" and a number: it is a speed on the road
ROAD = _set(
    "cruising driving cruise riding going travelling traveling speed speeds doing motoring along highway motorway"
)
#: after "60 psi down the": where one drives, not how much less it is
ROADS = _set("road highway motorway freeway interstate autobahn bypass lane track straight drive")
#: in the same clause before "at 75" or "about 60": that is how fast one drove
DRIVES = _set(
    "cruising driving flying pottering tootling trundling barrelling barreling bombing bowling travelling traveling "
    "riding motoring tooling ambling hacking belting going drove rode"
)
#: what lights or sounds below a pressure
LIGHTS = _set("light lamp buzzer alarm warning led beeper")
#: behind a figure: how much it changes each time
EACH = _set("every each per")
#: before a figure: so far the needle goes, wherever it is; behind it the same
WAVERS = _set(
    "fluctuates fluctuated fluctuating fluctuate bounces bounced bouncing bounce swings swinging swung "
    "swing wavers wavered wavering waver varies varied varying vary oscillates oscillating wobbles "
    "wobbling jitters jittering dances dancing twitches twitching quivers shivers pulses pulsing "
    "wanders wandering flutters fluttering moves jumps jumping"
)
BOTH_WAYS = frozenset([("up", "down"), ("back", "forth"), ("down", "up"), ("forwards", "back")])
COUNTED_BY = _set("mile minute hour km lap degree ten twenty few hundred thousand couple")
#: a person, what he does, and what stands before how fast he then goes: "when I get up to 50"
WHO_DRIVES = _set("i we you im were youre")
FASTER = _set(
    "accelerate accelerated accelerating reach reached hit pass passed exceed exceeded top topped do did drive drove"
)
GETS = _set("get gets got getting go goes went going")
FASTER_TO = _set("to past over above beyond at about around")
#: behind it: it was read after all
SHOWN_THEN = _set("cold hot warm at @ idle idling psi lb lbs pounds when")
#: before "from 20 to 35": it is at the second now
RISEN = _set(
    "went rose raised came climbed jumped brought took increased lifted improved got gone risen up taken moved "
    "changed"
)
#: straight before "11 to 19": the same
WENT = _set("went rose climbed jumped improved")
#: straight before a share of the dial
SHARE_AFTER = _set(
    "to at about around on reads read under below above its is shows showing reading only just past over near nearly roughly"
)
#: shortly before "from 0 to 50": it moves over the range and shows none of it
SWINGS = _set(
    "swings swing swinging swung bounces bouncing bounced wavers wavering fluctuates fluctuating jumps jumping dances "
    "flickers varies varying wanders hunts oscillates wags"
)
#: shortly before a number: another instrument shows it
TEMPERATURES = _set("temp temps temperature temperatures")
OTHER_GAUGES = _set(
    "temp temperature water coolant fuel boost amps volts voltmeter ammeter compression cht egt"
)
#: after a number: it counts something else
#: words known for something else ("it went bananas") that are no unit either
NO_UNITS = _set("bananas nuts")
COUNTS = _set(
    "cylinder cylinders cyl liter litre times time ohm ohms gear gears th st nd rd amp volts "
    "volt degrees hp main mains rod rods bearing bearings quart quarts owners engines engine "
    "gauges senders filters pumps v valve valves inch mm plugs bolts percent more different per "
    "new weight grade pot stroke ton speed or deg cc ci cu others seasons season summers winters stations station helms"
)
#: before a number: it is a name or a count
NAMES = _set(
    "number no model mark mk type series part bearing rod main cylinder of the "
    "a lap stage turn corner page grade aged age sae since year in by gear pushrod straight inline"
)
#: before "is at" and a pressure
SHOWN_BY = _set("it pressure gauge needle now idle reading which that and then minutes")
#: before a share: it is the level's
STICK = _set("dipstick stick level glass window")
#: name an instrument whose figures are no pressure, anywhere in a clause
VOLTS = _set("volt volts voltmeter ammeter amps")
#: before "about 11": an hour
PARTS_OF_DAY = _set("morning evening afternoon night noon midnight")
#: behind a drill that turned the pump: from here the engine runs
STARTED = _set("started starts fired running runs")
#: before the size of an engine, and behind it: "my 1.2 supermini", "a 2.0 petrol"
WHOSE = _set("my our his her their a an the old this that with wifes sons dads same me little big")
SIZED = _set(
    "petrol diesel turbo litre liter four six twin straight pushrod ohc engine motor v6 v8 hatch hatchback estate saloon "
    "sedan van coupe wagon suv pickup 4x4 classic roadster convertible supermini auto manual"
)
#: before a figure on the way to what is shown now
STEPS = _set("became then")
#: after a number: what comes is of another time, or of another engine
OPPOSED = _set("where when instead rather not against versus vs compared down up")
#: behind "35 where": what was
IT_WAS = _set("was had ran used read showed held made been")
#: beside a time and a number that are a clause of their own
LATER = _set("later after within by in the next on first one an a about of running work idling and")
#: behind "a 10 bar one", which is a sender or a gauge
ENDS_A_NAME = _set("with instead for fitted not on was is , . ;") | {""}
#: before "then 20": there was none until then
NOTHING = _set("no none nothing zero 0 nil")
#: behind a number and "in", "last": when it was read
WHEN_DATED = _set("in at last during back by this")
DATES = _set(
    "january february march april may june july august september october november december jan feb apr jun jul "
    "aug sept sep oct nov dec spring summer autumn fall winter easter christmas year season month week launch "
    "monday tuesday wednesday thursday friday saturday sunday"
)
#: begin what is said of the present, where what was before is said of another day
TODAY = _set("now today currently nowadays")
#: shortly before a pressure: it came down to it
FALLS = _set("down drops dropped falls fell falling dropping sinks sank sagged sags")
#: in the sentence of figures one after another: they are no pressures
NOT_IN_A_ROW = _set(
    "compression torque torqued tightened nm ft volts amps ohms temp temperature degrees thou mm gap gapped serial cylinders "
    "leakdown jets jet plugs gears litres liters quarts hp bhp kw"
)
#: the same: they were read on several days or runs; within one
ROW_OF_RUNS = _set(
    "day days daily start starts outing outings each every trips runs drives rides next weekend weekends saturday sunday "
    "monday tuesday wednesday thursday friday week tanks races shift shifts session sessions round rounds meeting meetings stint stints flights"
)
ROW_OF_ONE_RUN = _set("minutes minute hour hours afternoon watch while heats warms miles")
#: straight before a figure of the time before, and straight behind it
WAS_AT = _set("was were had ran read showed made held at about around had be")
ONCE = _set("before previously originally formerly beforehand last")
#: behind a number: an instrument shows it
ON_THE = frozenset([("on", "the"), ("on", "my"), ("on", "its")])
DASH = _set("dash panel gauge gage needle dial screen display meter")
#: before "fall": it is the season
WHICH_FALL = _set("last this the in by that each every next late early during since")
#: behind "10 up" and "10 down": it is a difference
UP_AT = _set("at when everywhere on hot cold now since across")
DOWN_EVERYWHERE = _set("everywhere across throughout overall since all")
#: between what a book gives and a figure: what is had instead
I_HAVE = _set(
    "i im ive we mine it its but and get gets getting got have has see seeing am only just is shows reads at"
)
#: behind a pressure and "a": it is by how much it falls in that time
RATES = _set("year month week day season")
#: behind or before "when I slow down": the pressure is there again then
RECOVERS = _set("recovers recovered returns returned clears cleared stops stopped")
