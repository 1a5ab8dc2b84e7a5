"""Words by which a new statement is known where a text has no punctuation."""

from __future__ import annotations


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


#: after these a person who does something belongs to the statement
HOLDING = _words(
    "a an the my our your his her their its this that these those each every any some another "
    "and or but nor so as than like of to in at by for from with without into onto about around "
    "between during through under over near until till if when while where because whether which "
    "who what how is are was were be been being am has have had having do does did will would "
    "can could should may might must not no very too quite rather pretty just only even still "
    "almost nearly already never always also both all i we you they he she when once since after "
    "hardly barely maybe perhaps new old fresh second other wrong right same bad good great "
    "used engine oil fuel water coolant main big little top front rear back left hydraulic electric "
    "mechanical electrical warning relief high low first last next whole bit lot said says think "
    "thought suspect suspected reckon know knew guess figured hope reads read reading shows showed "
    "showing showed makes made making gives gave giving sits stays stayed goes going went gets "
    "getting got holds held drops dropped falls fell rises rose climbs climbed runs running ran "
    "sees saw seen found fitted changed replaced renewed swapped put puts took takes pulled checked "
    "cleaned measured tried installed bought rebuilt removed dropped drained poured filled topped "
    "primed cranked opened noticed heard saw refitted spun shimmed assume assumed believe reports reported reporting claims swears because"
)
#: people who say or do something; a statement begins with them
PERSONS = _words("i we they he she")
#: likewise, but joining two statements
JOINING = _words(
    "when while before after until till if that because as so since once where which what how time "
    "than and but or though although unless whenever said says think thought know hope guess like "
    "all day did do does was were is have had should could would can will dont didnt last first now then"
)
#: heats, of the words that say when
HEATS = _words("hot cold warm")
#: begin a statement unless a verb or a little word stands before them
DENYING = _words("no none nothing never nobody neither")
#: what they deny may stand behind these
BEFORE_DENYING = _words(
    "has have had is are was were shows showed showing reads read reading made makes making make "
    "with there theres got gets get getting see saw seen found find heard hear did does do but and or almost "
    "virtually practically absolutely at still to a i we it they he she you engine gauge pressure oil light "
    "lamp needle that which gives gave be been being of in by of from for just then so where when if now "
    "or nearly needed needs need pump sender thats its pumps pumping take takes took come came "
    "registers registered indicates indicated registering showing basically for say says said"
)
#: a noun of the trade that a statement may begin with
SUBJECTS = _words(
    "oil engine motor pressure gauge gage needle light lamp alarm buzzer level dipstick stick sender switch filter pump "
    "lifters tappets lifter valve spring plunger pickup strainer screen sump pan bearings mains rods "
    "shells crank crankshaft cam temperature temp water coolant mileage noise knock wire panel sensor bilge "
    "compression smoke clearance clearances rockers rocker cooler drain rings pistons plugs relief mech mechanical "
    "chain turbo gauze message dealer garage shop mechanic builder dizzy distributor"
)
#: with a noun of the trade behind them they begin its name
MODIFIERS = _words(
    "new old oil engine hydraulic relief warning low main big second mechanical electric panel dash "
    "front rear fresh other both all the my our valve cam crank hv high water pressure different master test pickup a another "
    "replacement genuine cheap spare borrowed mech"
)
#: a statement's verb, or what stands in its place, behind its noun
STATING = _words(
    "is are was were isnt wasnt arent has had hasnt have reads read shows showed showing drops dropped drop falls fell "
    "fall goes went going comes came coming stays stayed sits runs ran running sounds looks looked makes made gives gave "
    "ok okay fine good normal full low high right correct clean new old ticking tick ticks knocking knocks rattling "
    "clattering noisy quiet leaking flickers flickered flickering flicker bounces bounced bouncing jumps jumped jumping swings wavers wavering "
    "steady dead stuck starts started stopped died seized holds held climbs climbed rises rose rising falling dropping feels felt "
    "moves moved needs needed does doesnt did didnt wont will cant checked changed replaced rebuilt renewed cleaned swapped "
    "measured worn scored cracked broken loose tight blocked black thin thick milky dirty empty between at on off out up down never still "
    "only all hot cold turns turned seems seemed began works worked came not lost varies hovers hovering pegged pegs builds took takes about around "
    "over under same no stands stood sank sinks hung found smells stinks blinks blinked whistles weeps "
    "leaks cured put"
)
#: verbs of a statement that is whole with its noun, whatever stands before it
FINITE = _words(
    "is are was were isnt wasnt arent has had hasnt reads read shows showed drops dropped falls fell goes went comes "
    "came stays stayed sits sat looks looked makes made gives gave flickers flickered bounces bounced jumps jumped "
    "holds held climbs climbed rises rose feels felt moves moved doesnt didnt wont smells smelt smelled stinks stank "
    "hovers hovered varies turned seized died started stopped uses used now"
)
#: of what somebody says, thinks or feels: what is behind them is no statement of its own
OF_A_MIND = _words(
    "sure worried afraid told tell tells convinced hope hopes hoping think thinks thinking thought wonder wondering "
    "wondered suppose supposed guess guessing says say saying said reckon reckons swear swears swore claim claims "
    "believe believes suspect suspects suspected doubt doubts mean means meant bet know knows knew certain positive "
    "assume assumes assumed suggest suggests suggested insists insisted asked asks pretty fear fears like if whether"
)
#: lead to what is said behind them: "when I stopped it was at zero", "with it cold the gauge holds 45"
LEADING_IN = _words("when while if once as until till with whenever because")
#: belong to the noun behind them, or to who does it: "pump end clearance", "the only thing I did"
OF_NEXT = _words("end bottom top side thing things one ones everything anything first whose")
#: what persons do, with which a new statement begins
DEEDS = _words(
    "have had did dont didnt cant can could am was were changed replaced renewed swapped fitted installed rebuilt cleaned "
    "checked measured tried pulled put took drained topped poured primed cranked opened dropped removed found bought "
    "noticed heard saw added stopped drove ran started shut filled looked cut"
)
#: begin a statement where something done stands behind them
DOING = _words(
    "changed replaced renewed swapped fitted installed rebuilt cleaned checked measured tried pulled put took "
    "drained topped poured primed cranked spun opened dropped removed stripped found bought refitted shimmed stretched ground "
    "reground honed added unplugged disconnected connected hooked screwed bolted tested ran started drove lost "
    "noticed heard stopped shut parked filled refilled fired dipped squirted sucked wiggled towed overheated"
)
#: straight behind what is done: its object follows
WITH_OBJECT = _words("the a an my new another both it all")
#: before what is done: it is of the words before, "no one changed it", "nothing but changed oil"
LEADS_TO_DONE = _words(
    "one body i we he she they who or nor and but to has have had been was were be since after when until before ever "
    "yet mechanic garage owner shop dealer yard that just in no without not never even"
)
#: may stand between what is done and its object
OBJECTS = _words(
    "the a an my new old it in out up off on oil another different thicker thinner both all some with at to this them over pump sender filter bearings rings"
)
#: begin a statement with a verb behind them
POINTING = _words("it its there theres this that thats everything")
#: begin a statement by themselves
ADDING = _words("now then still also currently recently yesterday today")
#: nouns that the noun behind them belongs to: "oil pressure", "pump cover"
COMPOUNDS = _words(
    "oil pressure engine filter pump relief sump pan crank bearing valve lifter tappet knock zero dipstick cap cover"
)
#: when a reading was taken, in one word
WHEN = _words(
    "idle idling tickover cold hot warm cruise cruising driving highway motorway startup revving moving freeway "
    "interstate"
)
#: the same behind "on the"
ON_THE = _words("road move")
#: may stand before the words for when, and before a pressure
LEADING = _words(
    "at when on once its it is only about around maybe and then in the a just or hot cold warm stone fully"
)
#: may stand within one reading
AROUND = LEADING | _words("idle idling speed rpm oil pressure psi engine start")
#: with one of these behind them, such words do begin a statement
BEGINNING = PERSONS | SUBJECTS | MODIFIERS | POINTING | DOING | DENYING | STATING
#: people who do something: "my mate changed the filter"
DOERS = _words(
    "it mate mechanic garage owner dad father brother friend shop dealer yard neighbour neighbor builder he she they who "
    "guy man bloke someone somebody wife husband son uncle boss previous engineer fitter driver"
)
#: end a statement more often than not
ENDING = _words(
    "idle cold hot warm warmed start startup fine normal again cruise rebuild rpm change done ok okay good before "
    "off out down on difference better worse now ago noises noise leaks leak full mark long though yet either neither too "
    "together revs speed revving road motorway highway warmup quickly slowly away right well too properly "
    "steady constantly sometimes time today yesterday week month year years weeks months days miles km hours minutes seconds "
    "thou clearance rings bearings bearing pump sender gauge filter oil engine pressure knock knocking ticking tick rattle sump "
    "pan light lamp switch needle tappets lifters lifter zero nothing limits spec book manual tight loose clean worn scored "
    "same help helped anything everything crank plugs gears housing cover mods original stock standard quiet smoke "
    "driving drive stops lights throttle load gear traffic rest standstill overnight morning afternoon night "
    "weekend weekends holiday home work school winter summer spring monday tuesday wednesday thursday friday saturday "
    "sunday street house yard garage shop store car truck van wagon estate minivan suv saloon receipts lol tho mate "
    "underneath everywhere outside dry level sound smoothly sweetly cap stick dipstick me them it thing apart build built broken cracked plastic rebuilt"
)
#: begin what only says when or where; the statement comes behind it
FRONTING = _words(
    "years year months weeks days when while after before once since until if on at in with during for within from "
    "next last one every as by and but then so about almost just only over"
)
#: before "idle at 20": it is what the engine does
IDLES_AFTER = _words("to it would will she always does now")
#: before an "on" that ends a statement: "the light came on"
BEFORE_ON = _words(
    "come comes came coming go goes went is was be been stay stays stayed staying still light lights lamp "
    "key ignition back turned switched put bolted kept keeps always not right buzzer alarm carried later"
)
#: between these and a noun they are of the noun: "had full oil pressure", "got good pressure"
HAVING = _words(
    "had has have having got get gets getting makes made gives gave with saw see of a building but"
)
PRAISING = _words("good full normal fine steady ok okay better zero right proper clean")
#: behind "light" these are of the lamp: "oil light switch"
OF_A_LAMP = _words("switch sender sensor bulb wire fuse unit")
#: between "a" and a noun they are of the noun: "a broken wire"
DESCRIBING = _words(
    "broken loose worn cracked dirty tight clean better good cold hot standard stock original plastic"
)
#: before a number: the number is that of a part
NUMBERED = _words("main mains rod bearing journal cap cylinder lifter bore nr")
