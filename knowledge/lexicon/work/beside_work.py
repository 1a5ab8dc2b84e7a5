"""Single words beside work that was done, and how much an engine runs in a week."""

from __future__ import annotations

from knowledge.lexicon.words.word_sets import set_of as _set

#: miles that a car is driven in a week, about 12,000 in a year (judgement)
MILES_A_WEEK = 250.0
#: hours that a boat, tractor or generator of a small owner runs in a week, about 250 in a year (judgement)
HOURS_A_WEEK = 5.0
#: said of an engine that ran as it should for a time
RAN_WELL = _set(
    "fine good great well ok okay perfect perfectly lovely sweetly faultlessly happy happily "
    "flawlessly beautifully strong ran lasted held worked behaved"
)
#: of a part that went back in after an overhaul
REASSEMBLED = _set("refitted reassembled reinstalled refit")
#: before a part that somebody had off or apart
TAKEN = _set("took taken take taking had pulled")
#: between "for" and how long
ABOUT = _set("about nearly almost over some around roughly the like maybe a at least another good")
#: after a part that begins a statement of its own and goes on no list
SAYS_OF_IT = frozenset(
    [
        "has",
        "now",
        "is",
        "came",
        "comes",
        "reads",
        "read",
        "shows",
        "says",
        "still",
        "stays",
        "goes",
        "went",
        "sits",
        "drops",
        "dropped",
        "works",
        "worked",
        "working",
        "jumped",
        "rose",
        "climbed",
        "moved",
        "sat",
        "stayed",
        "behaves",
        "steadied",
        "showed",
        "said",
        "quit",
    ]
)
#: the pump was turned without the engine
DRILLED = _set("drill drilled priming primed preoiling preoiler preoiled oiler primer")
#: the same, of what turned it just then
BY_DRILL = _set("drill priming preoiling preoiler prelubed prelubing preluber preoiled")
#: before these a part is not meant: "since the swap oil pressure is low", "after switch off"
NAMES_ANOTHER = {
    "oil": _set(
        "pressure light lamp level warning alarm temperature temp buzzer message can pickup pick strainer sump pan seal fitting "
        "pump cooler gallery galleries feed feeds channel channels supply passages jets squirters control drain tank gauge sender sensor switch leak leaks"
    ),
    "switch": _set("off to back over from"),
    "cooler": _set("bypass by-pass"),
    "sump": _set("plug bolt bolts bolted guard washer magnet"),
    "pan": _set("bolt bolts guard washer magnet"),
    "rebuild": _set("kit kits manual shop"),
    "ball": _set("bearing bearings joint joints valve hone race game"),
}
#: after "topped up": it was not the oil
NOT_OIL = _set(
    "coolant water radiator rad antifreeze header expansion fuel petrol diesel screenwash battery"
)
#: shortly before a gauge: it was put on to look, or it is one of several
FOR_A_TEST = _set("test borrowed master loaned lent known two three both several mates friends")
#: straight behind "put it in": the gearbox is meant, and nothing was done to a part
NO_WORK_BEHIND = _set("neutral gear reverse park")
#: before "to the crank": a part was found so
JOINED_TO = _set("welded soldered")
#: what a part was taken off for in the search for the trouble
LOOKS = _set("look looking check checking peek inspection this that it a-look see measuring")
#: behind "the sump off to": it was off for that
MENDS = _set(
    "fix do replace change reseal weld cure stop repair mend renew sort fit swap helicoil retap paint"
)
#: after "second": it says which of several, and not that it is another one
NUMBERED = _set("cam main rod bearing bearings piston cylinder lifter crankpin journal big")
#: behind "not" after a name of work: it was not done
CARRIED_OUT = _set("carried done performed complied incorporated implemented followed")
#: done with a part of the engine before, which says what was built in
REUSED = _set("transferred transferring reused reusing")
#: what tells a gauge or lamp, and words before one that is not of the oil pressure
SENDERS = frozenset(["switch", "switches", "sender", "senders", "sensor", "sensors", "unit"])
OTHER_CIRCUITS = frozenset(
    [
        "headlight",
        "headlamp",
        "dimmer",
        "ignition",
        "starter",
        "kill",
        "brake",
        "wiper",
        "indicator",
        "stop",
        "battery",
        "isolator",
        "toggle",
        "reverse",
        "clutch",
        "neutral",
        "fuel",
        "temp",
        "temperature",
        "coolant",
        "water",
        "crank",
        "cam",
        "map",
        "maf",
        "knock",
        "speed",
        "wheel",
        "tyre",
        "tire",
        "abs",
        "oxygen",
        "o2",
        "lambda",
        "level",
    ]
)
#: before "after" or "with" and work that was in vain: "low even after a new pump"; before "with" only
EVEN = _set("even despite notwithstanding")
THAT_IS = _set("thats this and is")
#: between the parts of a row of new ones
IN_VAIN_JOINS = _set("a an the my new fresh and , with after & + all both both-the oil")
#: behind "nothing was done": something was
APART_FROM = _set("apart except besides other bar save but")
#: behind a part: nothing was done to it; behind "not" the same
UNTOUCHED = _set("untouched unmolested unopened")
DONE_TO = _set(
    "touched done changed renewed replaced looked opened checked apart disturbed measured"
)
#: before a part: all but this; "apart from", "other than"
SAVE = _set("bar except excepting besides barring")
SAVE_FROM = frozenset([("from", "apart"), ("from", "aside"), ("than", "other")])
#: before "fitting": it is a part
FITTINGS = _set("line pipe hose union compression banjo oil cooler gauge tee brass block elbow")
#: between a part and "not touched"
HELPING = _set("was is were are have has been i we ive")
#: before "rebuilt": it is that which was, not the engine
NOT_THE_ENGINE = _set(
    "carb carbs carburettor carburetor gearbox trans transmission tranny diff axle starter alternator dynamo magneto "
    "distributor dizzy injectors turbo clutch brakes radiator heads head caliper calipers steering suspension box pump"
)
#: what a part does by itself, before what shows then: that is no result of work on it
BY_ITSELF = frozenset(
    [
        "bypasses",
        "bypass",
        "opens",
        "lifts",
        "blows",
        "dumps",
        "pops",
        "sticks",
        "jams",
        "leaks",
        "closes",
        "cracks",
        "vents",
        "unseats",
        "gives",
        "trips",
        "clicks",
    ]
)
#: before "filter": it filters no oil of the engine
OTHER_FILTERS = frozenset(
    ["air", "fuel", "diesel", "petrol", "cabin", "pollen", "hydraulic", "gearbox"]
)
#: behind "put a litre of": it is oil
OIL_POURED = frozenset(
    [
        *("oil", "it", "the", "that", "more", "fresh", "new", "clean", "same", "cheap", "good"),
        *("thick", "thicker", "thin", "diesel", "motor", "engine", "straight", "this", "my"),
    ]
)
#: off before "put it back together": no more than these went back
TO_GET_IN = frozenset(["distributor", "dizzy", "sump", "pan", "cover", "housing", "filter", "plug"])
#: behind "after": work that only looked for the cause
TRYING = _set("trying testing checking")
#: in a sentence with both, the work found the cause of a trouble that was there before
FOUND_IT = _set("found discovered traced located identified")
A_CAUSE = _set("problem cause culprit fault reason issue source")
#: before "stuck in": it was found so, nobody put it in
FOUND_SO = frozenset(
    ["was", "is", "were", "are", "got", "been", "be", "found", "being", "still", "jammed"]
)
#: beside a drill on the pump: what it showed, before the engine ran
BY_DRILL_SHOWN = _set("distributor dizzy came rose went climbed")
#: a wire was moved as part of work, where a date stands behind; no test, unless one of the last leads
DISTURBED = _set("moved moving touched shifted")
DATED = _set("ago last yesterday back since")
WHENEVER = _set("when whenever if while every as by")
