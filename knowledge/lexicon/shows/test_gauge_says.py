"""What is said of a trusted gauge that was put on: the same as the panel's, enough, little, nothing."""

from __future__ import annotations

from enum import StrEnum


class Verdict(StrEnum):
    """What such a gauge shows, where no figure says it."""

    ENOUGH = "enough"
    ALIKE = "alike"
    LITTLE = "little"
    NOTHING = "nothing"


_TOO = "too|also|again|still|just|really|actually|even|as"
#: what is said behind the gauge or before "on a test gauge", by what it shows
VERDICTS: dict[Verdict, tuple[str, ...]] = {
    Verdict.ENOUGH: (
        "good|fine|normal|normally|healthy|perfect|ok|okay|plenty|strong|spot-on|excellent|great|solid|lovely|correct|adequate|right",
        "spot on|in",
        "bang on",
        "all good|well|right|fine",
        "no|without any? problem|problems|issue|issues|trouble|fault|concern",
        "in|within|to|up|inside the? spec|specs|specification|limits|range|book",
        "as it should? be?",
        "what|where it|they should be?",
        "checks|checked|works|worked|turns|turned|came out good|fine|ok|right?",
        "loads|heaps|tons|lots|bags|oodles of? it|pressure|oil-pressure?",
        "readings|figures|numbers|values? all? good|normal|fine|ok|right|there",
        "absolutely|perfectly|completely|totally|quite|very fine|good|normal|healthy|happy",
        "nothing wrong with|there",
        "nothing to worry|fret about?",
        "textbook|sweet|spot-on|faultless|flawless|comfortable|comfortably|respectable|a1|brilliant|super|superb",
        "rock solid|steady",
        "happy days",
        "full|proper|decent|ample|plentiful pressure",
        "as good as gold|new|ever",
        "way|well|far|comfortably above|over the? minimum|limit|book|red|spec",
        "in the green|middle|normal|safe",
        "no cause|reason for|to concern|worry|alarm",
        "ten out of ten",
        "pressure? all|is there",
        "more than enough",
        "enough",
        "by the book",
        "never dropped|dipped|fell|sank|faltered",
        "no|without any? complaint|complaints",
        "holds|held|holding steady|firm|well|up",
        "as new|it should|per|expected",
        "better than|what i|the|new|book|expected",
    ),
    Verdict.ALIKE: (
        "same|identical|identically",
        "agrees|agreed|agree|agreeing",
        "matches|matched|match|tallies|tallied|corresponds|concurs",
        "confirms|confirmed|verifies|verified|backs|bears it|that|this|them|up|out|the",
        "=confirms|=confirmed",
        "no different|difference",
        "not any|much? different|difference|better",
        "no|not any? better|improvement",
        "nothing changed|different|better",
        "ditto",
        "came|comes up|out|back with|at? the? same|identical",
        "same answer|outcome|value|level|place|spot|trouble|problem|low|behaviour|behavior",
        "in agreement|line with?",
        "mirrors|mirrored|echoes|echoed|follows|followed|tracks|tracked it|the|dash|panel",
        "bore it|that out",
        "within a|one|two pound|psi|pounds|hair of",
        "that|this|his|it one does|did|is|was|said|reads so|too|likewise|as well?",
        "same old? story|thing|result|reading|readings|figure|numbers|picture|answer|again",
        "just? as bad|low|poor|dead",
        "backs|bears it|the|that|this up|out? dash|panel|gauge|lamp?",
        "exactly|just|pretty much the? same",
        "right|spot with it",
        "tells|gave|gives the? same story|tale",
        "nothing|no gained|change|changed",
        "likewise",
        "says|said|read|reads|shows|showed so|likewise too?",
    ),
    Verdict.LITTLE: (
        f"{_TOO}? low|lower|poor|weak|pathetic|rubbish|terrible|bad|miserable",
        "not|isnt|wasnt|nowhere enough|near enough?",
        "barely|hardly|scarcely|just moves|moved|registers|registered|lifts|lifted|reads|shows|anything|off",
        "way|well|far below|under|down|short",
        "below|under spec|specification|minimum|limits?",
        "next to nothing|nowt",
        "almost|nearly|practically|virtually|about zero|nothing|none|nowt",
        "bugger|sod|naff|diddly|damn all|squat",
        "dismal|woeful|awful|feeble|dreadful|sick|shocking|appalling|worrying|scary|disappointing",
        "in the red|danger",
        "single figures|digits",
        "couple of? psi|pounds|pound",
        "hardly|barely|scarcely any|a pressure|flicker|twitch?",
        "fraction of",
        "no|not great|brilliant|much|good",
        "nothing to write|shout home|about",
        "down|low there|here as-well|too|also",
    ),
    Verdict.NOTHING: (
        "zero|nothing|nowt|none|nil|zilch|nada",
        "no oil? pressure",
        "=0",
        "not move|moved|budge|moving|budged|lift|register|stir at? all?",
        "doesnt|didnt|wont move|budge|lift|register|stir",
        "dead|flat|zip|bupkis",
        "no sign|trace|hint|evidence of? any? pressure|life|oil?",
        "stone|completely|totally dead",
        "flatlined|flat-lined",
        "lies|lay|sits|sat|stayed|stays|stuck|rests on|at its|the|it peg|stop|pin|zero",
        "big fat zero|nothing|nil",
        "not a flicker|twitch|sausage|pound|thing|tremor",
        "never moved|lifted|stirred|left off|the? peg|pin|stop",
        "stays|stayed|sits|sat on|at the? peg|stop|zero",
    ),
}
#: before the gauge, where what it shows stands before it: "same on a test gauge"
SHOWN_ON = frozenset(["on", "with", "by", "using", "off", "at", "via", "per", "from", "through"])
#: small words between these and the gauge, or before what it shows
SMALL = frozenset(
    ["a", "an", "the", "my", "his", "her", "their", "our", "another", "good", "known"]
)
#: nobody's gauge put on for a test: the panel's own one was renewed, or was always of this kind
NOT_FOR_A_TEST = frozenset(
    [
        *("years", "year", "always", "original", "ago", "since", "factory", "panel", "dash"),
        *("yesterday", "last", "previously", "earlier", "before", "once"),
    ]
)
#: between the gauge and a lone figure
LEADS = frozenset(
    [
        *("and", "on", "it", "in", "to", "that", "which", "still", "only", "just", "reads", "read"),
        *("says", "said", "shows", "showed", "showing", "reading", "got", "gave", "gives", "have"),
        *("is", "was", "about", "around", "now", "steady", "at", "i", "had", "he", "there"),
    ]
)
#: nouns for a gauge that is put on an engine
TESTERS = frozenset(["gauge", "gage", "guage", "tester", "manometer", "clock", "kit"])
#: before them: it is not the one spoken of so far
NOT_THE_ONE = frozenset(
    ["a", "an", "another", "his", "her", "their", "our", "my", "spare", "other", "second", "old"]
)
#: what is done with it
PUT_ON = frozenset(
    [
        *(
            "connected",
            "connect",
            "hooked",
            "hook",
            "screwed",
            "fitted",
            "fit",
            "put",
            "used",
            "tried",
        ),
        *("tested", "checked", "measured", "ran", "run", "teed", "plumbed", "borrowed", "lent"),
        *(
            "brought",
            "came",
            "rigged",
            "attached",
            "attach",
            "coupled",
            "threaded",
            "hung",
            "stuck",
        ),
        *("tapped", "verified", "using", "with", "via", "installed", "swapped", "got", "had"),
        *("tap", "measure", "test", "check", "bolted", "clipped", "bunged", "stick", "lashed"),
        *("plugged", "hang", "found", "dug", "fetched", "bought", "made", "proved", "confirmed"),
    ]
)
#: between these and the gauge: it is a new one for the panel, or of something else
OF_THE_CAR = frozenset(
    [
        *("new", "dash", "panel", "fuel", "temp", "temperature", "water", "boost", "vacuum"),
        *(
            "compression",
            "air",
            "tyre",
            "tire",
            "feeler",
            "depth",
            "bore",
            "wire",
            "plug",
            "faulty",
        ),
        *("in-dash", "original", "factory", "stock", "oem", "aftermarket", "thread", "pin", "dial"),
        *("telescopic", "telescoping", "snap", "height", "electric", "gasket", "repair", "seal"),
    ]
)
