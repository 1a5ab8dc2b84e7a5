"""Small words between a part and its state, or between a substance and where it lies."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: beyond one of these, a state is of something else
STOPS = _set(
    "but when if until then though although after before because so while since where whereas except "
    "unlike instead to i we"
)
#: all that may stand between a state and the part named after it: "blocked up oil pickup"
BEFORE_PART = _set(
    "a an the my oil of in on at from around up main out old original steel front rear that both its "
    "under past with engine through by round off this one down lower some some"
)
#: of several parts: not all of them
SOME = _set("one two some last other")
#: before "to be": somebody saw how it is
SEEMING = _set(
    "found seen seems seemed appears appeared proved proven confirmed judged deemed considered shown looks"
)
#: between the parts of a list
JOINS = _set(", and & or nor the my both all oil a an also plus")
#: begin a clause that goes on about the part named last
BACK = _set("it they which that this these both all its theyre is was were and")
#: all that may stand before a state in a clause that names no part
LEADS = _set(
    "it they which that this these was were is are found all and but to be completely still very had has "
    "also been totally badly really looked looks seemed just its both quite found pretty absolutely theyre "
    "came out as got a half of most part some bits one"
)
#: after a state: no thing that it is said of
NO_NOUN = _set(
    "and but or in on at by with from so to up out off as too when where while after before all both badly again "
    "through over of under which that because for like than it i we they since about around away down now right "
    "inside completely solid slightly quite very really only just though although until once if then there here "
    "is was are were had has have been not no enough also half one more most this along across against between "
    "beyond past near into onto round"
)
#: a substance, then its place
INTO = _set(
    "in inside on over under underneath into at across from behind onto throughout beneath around down "
    "along against stuck wedged jammed lodged blocking clogging plugging covering coating holding"
)
#: a place, then the substance
HOLDING = _set(
    "with of had has have having carries carried contains contained containing found showed shows held holding covered coated "
    "revealed full carried was"
)
#: it came out of there
OUT_OF = _set("from out drained drawn")
#: what is wet with oil, not filled with it
WETTED = _set(
    "covered drenched soaked coated smothered plastered wet dripping swimming awash caked splattered sprayed "
    "smeared full running black coming over"
)
#: these make a word before them or after them an action
ACTED = _set("to i we he they ill lets")
#: what somebody does to a part, in words that may say how it was found
DEEDS = _set("blew cut split undid broke bent took put left tore")
#: behind "all fine": some are not
EXCEPT = _set("except apart besides bar excepting save")
#: beside "the pan is dry": it is of the outside
OUTSIDE = _set(
    "leak leaks leaking filter drip drips dripping outside underneath lift ramp seal seals gasket main cover covers"
)
PANS = _set("pan sump")
#: before "the filter loose": somebody undid it
UNDOES = _set("cracked crack broke break got get knocked undid twisted")
ACTORS = _set("and then i we he they she just also")
#: what somebody does with oil
POURS = _set("squirted sprayed pumped poured tipped")
ARTICLES = _set("the a an my this it")
#: a part is not there: "left the o-ring off", "forgot the o-ring"
LEFT = _set("left leaving forgot forgotten omitted")
#: between "forgot" and the part
FORGOT_TO = _set("one two both of the a an his my to fit put in refit back replace")
OFF = _set("off out")
#: the place named last
#: before "dry": the engine ran without oil
RUNS_DRY = frozenset(["ran", "run", "runs", "running", "went", "gone"])
IT = _set("it there them")
NONE = _set("no any not without zero")
#: all that may stand between a part and the word that it is sound
LINKS = _set(
    "is was are were look looks looked seem seems seemed appear appears appeared all both found to be been being "
    "measure mike mikes mic mics miked very in perfectly really pretty quite still also came out checked check checks tested test tests measured "
    "measures proved prove proves proven has have had as and nice just now inspected itself themselves "
    "completely otherwise absolutely dead turned reported got gets too nearly like of a"
)
#: after "sound": it is a verb
SOUNDS_SO = _set(
    "quiet quieter fine ok okay good noisy rough like as normal sweet healthy bad loud dry of from coming"
)
#: after "came out": somebody drew it out and looked at it
DRAWN_OUT = _set(
    "clean dry empty bare black milky white grey gray wet with covered looking full fine ok okay good bone completely "
    "totally like as reading showing smelling hard easy easily easier fairly reasonably without after ok fine"
)
#: after a state: it was so at an earlier time
EARLIER = _set("before previously earlier once ago last already twice")
#: after "cold": it is said of the day or the start, not of a part
STARTS = _set("start starts starting startup morning mornings weather night nights day snap engine")
#: before a part: it was taken out and looked at; and what may then stand for it
TAKEN_OUT = _set(
    "pulled checked took removed inspected examined looked measured opened stripped dropped unscrewed tested"
)
OF_IT = _set("it its they theyre apart out off")
#: between a part and what it is part of: "the valve of the filter head"
PARTS_OF = _set("of in on for")
#: before a substance: how much of it, or how coarse
AMOUNT = _set(
    "fine small large few some lots lot of plenty tiny many much little several big heavy bit bits loads coarse load ton tons heaps full"
)
#: end what was so before
UNTIL = _set("until till")
UNTIL_DONE = UNTIL | {"unless"}  #: before work that ends a trouble
BEFORE = _set("before prior")
#: behind "low before the rebuild": so it is now
ALSO = _set("too also already still well")
#: behind "coke": it is a drink
CANS = _set("can cans bottle tin")
#: in place of the name of one of several parts: "number 3 and 4", "the rear one", "drivers side one"
OF_SEVERAL = _set("numbers nos to the and & , one ones other others both all also last two")
SIDES = _set(
    "front rear back centre center middle left right upper lower top bottom side drivers driver "
    "driver's passenger passengers near far inner outer first second third fourth fifth other"
)
#: said of a part that was taken off or apart: what the next sentence names lay in it
#: somebody took a pipe off, unless words before say that it was found so; families of pipes
UNDONE = _set("disconnected undone")
FOUND_SO = _set("found was were had become came got is been being itself")
PIPES = frozenset(["line", "gauge line"])
#: behind "blown": somebody cleaned it with air
BLOWN = _set("through clear down into up")
OPENED = _set("cut open opened dropped pulled apart drained removed stripped dissected off")
#: before "hole": it belongs there
OPENINGS = _set(
    "plug filter bolt dipstick stick filler sender switch gauge oil drain distributor dizzy feed threaded empty "
    "mounting dowel screw stud port relief adjuster breather"
)
#: before "of silicone": pieces that came off, not what holds a joint
OFF_IT = _set(
    "bit bits string strings worm worms crumb crumbs lump lumps blob blobs shreds piece pieces"
)
#: before a sealer: somebody put a joint together with it
SEALS = frozenset(
    [
        "sealed",
        "resealed",
        "seal",
        "reseal",
        "sealing",
        "fitted",
        "refitted",
        "put",
        "glued",
        "bonded",
        "stuck",
        "smeared",
        "gooped",
        "used",
        "assembled",
    ]
)
#: behind "a good": it is said of what kind a part is
OF_A_KIND = _set("brand make name quality one idea kind type sort choice fit price")
