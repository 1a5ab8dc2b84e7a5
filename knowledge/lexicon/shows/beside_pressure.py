"""Words beside what shows of the pressure: when it is gone, when it is back, and what denies it."""

from __future__ import annotations

from knowledge.reports.words import Circumstance, Shows

#: deny what shows
#: behind what was not there, where "now it does" follows
BEFORE_NOW = frozenset(["before", "previously", "earlier", "yet"])
IS_SO_NOW = frozenset(["does", "is", "has", "do", "are"])
#: straight behind what showed: it does not show now
NO_MORE = ("not any more", "not anymore", "no longer", "not now", "hasnt since", "not since")
#: an engine came to harm
DAMAGE = frozenset(
    [
        "seized",
        "damage",
        "damaged",
        "ruined",
        "wrecked",
        "wiped",
        "failed",
        "bang",
        "blew",
        "blown",
        "died",
        "destroyed",
        "locked",
        "broke",
        "broken",
        "scored",
        "spun",
        "ran",
        "melted",
        "cooked",
        "toast",
        "dead",
        "let",
    ]
)
DENY = frozenset(["not", "never", "isnt", "doesnt", "dont", "wasnt", "didnt", "no"])
#: what a needle does while one watches, and what is done to the engine then
FALLS = frozenset(
    ["drops", "drop", "dropped", "dropping", "falls", "fall", "fell", "falling", "sinks", "dips"]
)
#: what shows is gone when: "goes away after a minute"
GOES, AWAY = frozenset(["goes", "went", "go"]), frozenset(["away", "out", "off"])
FADES = frozenset(["dies", "died", "fades", "faded", "settles", "calms", "quietens", "quiets"])
STOPS_THEN = frozenset(["disappears", "disappeared", "vanishes", "quiets", "quietens", "clears"])
#: it is well then: "and it was fine"
IT_IS = frozenset(["was", "is", "its", "all", "were"])
HALE = frozenset(
    ["fine", "ok", "okay", "good", "normal", "well", "gone", "out", "off", "alright", "right"]
)
#: behind a noise and its "is": it is not there then
GONE_THEN = frozenset(["gone", "absent", "silent", "inaudible", "stops", "stopped", "quiet"])
NOT_THERE = frozenset([("not", "there"), ("isnt", "there"), ("not", "present"), ("not", "heard")])
BEFORE_GONE = frozenset(
    [
        *(
            "it",
            "its",
            "they",
            "theyre",
            "is",
            "was",
            "are",
            "the",
            "that",
            "noise",
            "sound",
            "all",
            "then",
            "has",
        ),
        *("completely", "totally", "just", "mostly", "almost"),
    ]
)
#: before "back": the pressure is there again; and one word for it
COMES_BACK = frozenset(["comes", "came", "full", "normal", "right", "straight", "goes", "climbs"])
PICKS_UP = frozenset(
    [("picks", "up"), ("picked", "up"), ("comes", "up"), ("came", "up"), ("builds", "up")]
)
STEADIES = frozenset(
    ["recovers", "recovered", "returns", "steadies", "settles", "stops", "stopped"]
)
#: before "for two years": it fell all the time
FALLING = frozenset(
    ["falling", "dropping", "sinking", "declining", "decreasing", "dwindling", "sliding", "getting"]
)
#: after "since I had her": the work, not the day of the purchase
REDONE = frozenset(["rebuilt", "overhauled", "reconditioned", "restored", "serviced", "done"])
#: in "stays at zero": it is so all the time
STAYS = frozenset(["stays", "stayed", "remains"])
#: beside years: it was used so long
IN_USE = frozenset(["driven", "used", "owned", "daily", "drove", "served", "worked", "ridden"])
#: circumstances that are a time that passed, and numbers that are one
PASSED = (Circumstance.MINUTES, Circumstance.LATE)
TIMES = frozenset(["minutes", "seconds"])
#: before "for ten minutes": how long it ran, not how long it showed
RUNS = frozenset(
    [
        *("run", "runs", "ran", "running", "drive", "driving", "drove", "driven", "idle", "idles"),
        *("idling", "idled", "cruising", "working", "worked", "going", "out", "up", "towing"),
        "fine",
    ]
)
WHEN_WORDS = frozenset(["after", "when", "if", "then", "and", "until", "only", "fine", "ok"])
#: behind "same": it is what came of work each time
SHOWN_SAME = frozenset(["reading", "readings", "result", "results", "figure", "figures", "value"])
#: what happened once, before what shows now
HAPPENED = frozenset(
    ["ran", "hit", "broke", "blew", "went", "drove", "overheated", "boiled", "bought"]
)
#: where a needle is that shows enough
HALF_WAY = frozenset(["middle", "halfway", "midway", "mid-scale", "centre", "center", "healthy"])
#: that it is there without delay
AT_ONCE = frozenset(
    [
        *("instant", "instantly", "immediate", "immediately", "straightaway", "straight away"),
        *("right away", "at once", "straight out", "straight up", "no delay"),
    ]
)
#: says that it is so at no other time: "drops above 4000, fine below"
_FINE = "fine|ok|okay|good|normal|right|perfect|alright|steady|healthy"
OTHERWISE = (
    f"{_FINE} below|under|otherwise|elsewhere that|it|this?",
    f"otherwise its|is|all? {_FINE}",
    f"{_FINE} the rest of the time",
    "and|but? nowhere|never else",
    "at|in no other time|times|speed|speeds",
    "@not at|in any other time|times",
    f"{_FINE} at|in|on any|all other times|time|speeds|revs|rpm|gears",
    f"{_FINE} at|on lower|slower revs|rpm|speeds",
)
#: it is there again, whatever was said of it before
#: after no pressure at the start: it comes, by and by
COMES_SLOWLY = (
    "gradually|slowly|eventually|finally|then|but|soon =rises|=rise|=rose|=comes|=came|=climbs|=climbed|=builds|=built|=creeps|=crept|=picks|=goes =up|=back?",
    "then|but|and it|pressure|gauge|needle gradually|slowly|eventually|finally|then? =rises|=rose|=comes|=came|=climbs|=climbed|=builds|=built|=creeps|=crept|=goes =up?",
    "=rises|=rose|=comes|=climbs|=builds|=creeps|=picks =up? gradually|slowly|eventually|by-and-by",
    "takes|took|needs a|some? while|time to come|build|rise|climb|show",
)
CAME_BACK = (
    "pressure|gauge|needle|psi|reading =came|=comes|=went|=shot|=jumped|=climbed|=rose right|straight|slowly? =back|=up again? up?",
    "pressure|gauge|needle|psi|reading =was|=is|=had fine|right|good|normal|all? =back|=returned|=again",
    "pressure|gauge|needle|psi|reading =returned|=recovered|=returns|=recovers",
    "restarted|refired|started it|her|up|again .. pressure =was|=is fine|=good|=normal|=back",
)
REVVED = frozenset(
    [
        "revs",
        "rev",
        "revved",
        "revving",
        "rpm",
        "rpms",
        "rise",
        "rises",
        "raised",
        "rising",
        "increase",
        "increases",
        "increased",
        "throttle",
        "up",
    ]
)
#: a clause that only says so, in a text that speaks of the pressure
NO_PRESSURE = frozenset(["zero", "nothing", "nil", "nought", "0"])
#: begins what says that the starter turned the engine
CRANKED = frozenset(["cranked", "cranking", "cranks", "starter"])
#: all that a clause says where the starter brought no pressure: "cranked it again, still nothing"
NONE_BY_STARTER = NO_PRESSURE | frozenset(["nada", "zip", "zilch", "nope", "none", "nowt"])
BESIDE_NONE = frozenset(["still", "but", "and", "at", "all", "absolutely", "got", "just", "again"])
#: straight after "knock": it is a sensor, a blow or what somebody does
KNOCKED = frozenset(["free", "sensor", "off", "gone", "it", "them", "out", "back", "through"])
#: heads that need a word of an instrument near, because they are said of anything
VAGUE = frozenset({Shows.NORMAL})
#: the finding a noise or lamp is, where it is denied or doubtful
FINDING_OF: dict[Shows, str] = {
    Shows.KNOCK: "bearing_knock",
    Shows.TICKING: "lifters_clatter",
    Shows.RATTLE: "rattle_of_unknown_place",
    Shows.WHINE: "pump_noise",
    Shows.GRINDING: "grinding_noise",
    Shows.SQUEAK: "squeaking_noise",
    Shows.SMOKE: "blue_smoke",
    Shows.LAMP: "lamp_comes_on",
    Shows.UNSTEADY: "needle_flickers",
    Shows.ROUGH: "engine_runs_rough",
    Shows.LOST_POWER: "stopped_with_loss_of_power",
    Shows.NO_START: "will_not_start",
    Shows.HIGH: "gauge_reads_high",
}
#: the same as kinds of figure
LONG_KINDS = frozenset(["weeks", "months", "years"])
#: in these a pressure falls without anybody watching
LONG_TIMES = frozenset(["weeks", "months", "years", "seasons", "summers", "winters", "season"]) | {
    *("easter", "christmas", "january", "february", "april", "june", "july", "august"),
    *("september", "october", "november", "december", "autumn"),
}
#: beside "lost pressure" and months: it went little by little
SLOWLY = frozenset(["slowly", "gradually", "steadily", "progressively", "little", "bit", "gradual"])
#: begin what a machine does by itself: "shuts off after 40 minutes" is no rest
STOPS_ITSELF = frozenset(["shuts", "stops", "switches", "turns", "cuts", "trips"])
#: before when the needle does not waver: "steady at idle"
STEADY = frozenset(["steady", "solid", "still", "stable", "fine", "ok", "good"])
#: behind "first start of the": of a day or a rest, not of an engine
STARTS_OF = frozenset(["day", "morning", "mornings", "standing", "season", "sitting", "overnight"])
#: in "when I first start it": each time
START_NOW = frozenset(["start", "starts", "fire", "fires", "crank", "turn", "run", "light"])
#: behind how long all was well: the trouble comes
THEN_ENDS = frozenset(["then", "before", "until", "till", "but"])
#: end "always been like that"
AS_IT_IS = frozenset(["that", "this", "so", "way", "it"])
#: limit when it shows, and words that only take up what does: "but it only does this when hot"
LIMITS = frozenset(
    [
        *("only", "mostly", "mainly", "usually", "generally", "especially", "always", "just"),
        *(
            "never",
            "not",
            "happens",
            "happening",
            "happen",
            "happened",
            "does",
            "sometimes",
            "often",
        ),
    ]
)
DOES_SO = frozenset(
    [
        *("it", "its", "this", "that", "so", "do", "does", "did", "doing", "happens", "happen"),
        *(
            "happened",
            "happening",
            "comes",
            "shows",
            "seems",
            "to",
            "on",
            "in",
            "at",
            "the",
            "ever",
        ),
        *("is", "was", "and", "then", "there", "really", "up", "a", "when", "if", "once", "engine"),
        *("with", "under", "during", "while", "after", "gets", "has", "by", "my", "i", "hard"),
    ]
)
#: name what shows the pressure; "it" is that where one was named last
GAUGE_WORDS = frozenset(
    ["gauge", "needle", "pressure", "psi", "pointer", "reading", "light", "lamp", "buzzer", "alarm"]
)
#: behind "long": a road or a journey, not how long it takes
WAYS = frozenset(
    [
        *("sweeper", "corner", "bend", "left", "right", "hander", "turn", "curve", "drive", "run"),
        *(
            "trip",
            "hill",
            "climb",
            "pull",
            "motorway",
            "highway",
            "descent",
            "straight",
            "downhill",
        ),
    ]
)
#: behind "it" or "this" at the head of a sentence that adds to the one before: "it only does so hot"
ADDS_TO_IT = frozenset(
    [
        "happens",
        "happened",
        "does",
        "did",
        "doesnt",
        "only",
        "always",
        "mostly",
        "usually",
        "just",
        "is",
        "was",
        "occurs",
        "occurred",
        "starts",
        "started",
        "seems",
        "also",
        "never",
        "may",
        "will",
        "gets",
        "got",
        "comes",
        "stops",
        "stopped",
        "goes-away",
        "all",
    ]
)
#: of an engine that was not used for years
STOOD = frozenset(
    [
        "stood",
        "sat",
        "parked",
        "stored",
        "road",
        "garage",
        "barn",
        "storage",
        "sitting",
        "standing",
        "laid",
        "unused",
        "museum",
    ]
)
