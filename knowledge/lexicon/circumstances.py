"""When it shows, how it came and went on: circumstance, onset, course, since."""

from __future__ import annotations

from knowledge.reports.words import Circumstance, Course, Heat, Onset, Since, Speed

#: circumstances of a behaviour
DURING: dict[Circumstance, tuple[str, ...]] = {
    Circumstance.START: (
        "at|on|when|upon|during|after start|startup|start-up|starting|firing up?",
        "first|when started|start up",
        "on cold start|startup",
        "when i? start|fire it|her|up? up?",
        "first fired|fire up",
        "startup|start-up",
    ),
    Circumstance.IDLE: (
        "at|on|when|while? idle|idling|tickover",
        "tick|ticking|ticks over",
        "at traffic? lights|stops|junctions",
        "at a stop|standstill|light|junction|traffic-light",
        "when stopped|stationary",
        "sitting in traffic",
        "in traffic",
        "when i? come|coming|pull|pulling to|up a|to stop",
    ),
    Circumstance.OFF_IDLE: (
        "off idle",
        "just|slightly above|over|off idle",
        "touch of|the|on? throttle|gas?",
        "blip|blipped",
        "with|give|give it a? little|bit|touch of? throttle|gas|revs",
    ),
    Circumstance.SPEED: (
        "at|above|over high? speed|revs|rpm",
        "high revs|rpm|speed|speeds",
        "driving|cruising|cruise|underway|highway|motorway|freeway|interstate",
        "under|while way|driving|cruising",
        "on the road|highway|motorway|freeway|interstate",
        "when|if|once|as i? rev|revved|revving|moving|driving it|up?",
        "at full|wide throttle|open|chat",
        "flat out",
        "off|above the? idle",
        "under power",
        "with revs|rpm|throttle",
        "above|over rpm",
    ),
    Circumstance.SLOWING: (
        "slowing|slow|coming|come|back|drop|dropping|returning to|down to? idle|stop",
        "slow|slowing|throttle|throttling|backing|back|slowed down|back|off",
        "lift off",
    ),
    Circumstance.COLD: (
        "cold|stone-cold",
        "stone cold",
        "from cold",
        "first thing in? the? morning",
        "when cool",
    ),
    Circumstance.WARMING: (
        "=warming up?",
        "as|while|when it|engine|oil|she|he|things? =warms|=heats|=heating up?",
        "=warms|=heats up?",
        "as|while|when .. comes|coming|gets|getting up to temp|temperature|heat",
        "as|while .. gets|getting|grows hot|hotter|warm|warmer",
        "=warmup|=warm-up",
        "during|on|after the? =warm up",
    ),
    Circumstance.HOT: (
        "hot|hotter|hots",
        "=warm|=warmed|=heated up?|through?",
        "up to temp|temperature",
        "at|operating|running|working operating|temp|temperature",
        "at|normal operating temp|temperature",
        "fully|once|when =warm|=warmed|=heated up?",
        "thoroughly|properly|good|nicely and? hot|=warm|=warmed",
        "gets|got|getting up to temp|temperature|heat",
        "once|when|after it|engine|oil|she|its|has|thats|everything|is? =warms|=heats|=warm|=warmed|=heated up?|through?",
    ),
    Circumstance.MINUTES: (
        "after|about|for .. few|couple|ten|five|@minutes minutes|mins|min",
        "after running? a|some while|bit",
        "after @minutes",
        "after about|around|roughly|only|some|running|driving|of for? @minutes",
        "@minutes after|into|later starting?|start?|run?|drive?",
    ),
    Circumstance.LATE: (
        "after|about|for an|@hours hour|hours",
        "after about? @hours",
        "late in|on",
        "end|near|toward|towards of the? run|trip|drive|lap|session",
        "after|on a? long run|drive|trip|motorway|highway",
    ),
    Circumstance.HARD_RUN: (
        "after|following a? hard|fast run|running|drive|driving|pull|blast|thrash",
    ),
    Circumstance.BENDS: (
        "corner|corners|cornering|bends|bend|curves|curve|roundabout|roundabouts",
        "in|on|during|through a|left|right|long|hard|sweeping|tight|the left|right|long|hard|sweeping|tight? turn|turns|bend|hander|handers",
        "turning left|right|hard",
    ),
    Circumstance.BRAKING: ("braking|brake|brakes|stopping-hard", "hard stop"),
    Circumstance.ACCELERATING: ("accelerating|acceleration|accelerate", "hard launch|pull"),
    Circumstance.SLOPE: (
        "hill|hills|slope|slopes|incline|inclines|gradient|grade|uphill|downhill|hillside|nose-down|nose-up",
        "side slope|hill",
        "climbing|steep",
    ),
    Circumstance.SEAWAY: (
        "heeled|heeling|heel|seaway|swell|waves|rolling|pitching|chop",
        "rough|heavy|big sea|seas|water|weather",
        "under sail",
    ),
    Circumstance.ROUGH_ROAD: (
        "bumps|bump|potholes|pothole|washboard",
        "rough|bumpy road|roads|ground|track",
    ),
    Circumstance.LOAD: (
        "under|with|on load|full-load",
        "towing|tow|pulling|plowing|ploughing|mowing|baling",
    ),
    Circumstance.ELECTRICAL: (
        "headlights|wipers|indicators|blinkers|heater|headlamps|turn-signals on?",
        "with|when lights on?",
    ),
    Circumstance.WET: ("rain|rainy|damp|wet", "after washing", "in|when the? wet|rain"),
    Circumstance.STANDING: (
        "after|when it? sitting|standing|stands|sits|stood|sat|being parked|overnight|night|days|week|all|for? overnight|days?",
        "sitting|standing|parked overnight|night",
        "overnight",
        "after|when sat|sitting a|for while|days|week|weeks",
    ),
    Circumstance.AFTER_REST: (
        "after a|short rest|cooling|stop|break",
        "restart|restarting|restarted",
        "after|when|once|let it|cools|cooled|cooling|cool cools|cool|down|off",
    ),
    Circumstance.LOW_LEVEL: ("when|only|if|once .. low on oil", "when .. quart|pint low|down"),
    Circumstance.CLUTCH: (
        "clutch is|pedal? in|pressed|down|depressed",
        "press|pressing|push|pushing|depress the? clutch",
    ),
    Circumstance.TOUCHED: (
        "wiggle|wiggling|wiggled|jiggle|touch|touching the? wire|plug|connector|sender|wiring|lead",
        "tap|tapping|tapped the? gauge|sender|dash",
    ),
    Circumstance.RANDOM: (
        "random|randomly",
        "no|without pattern|rhyme|reason",
        "for|with no reason|pattern",
        "no apparent|particular|visible|obvious pattern|reason",
        "any time",
    ),
}
#: oil temperature of a reading, by the circumstance that is said
HEAT: dict[Circumstance, Heat] = {
    Circumstance.COLD: Heat.COLD,
    Circumstance.WARMING: Heat.WARMING,
    Circumstance.HOT: Heat.HOT,
}
#: engine speed of a reading
SPEED: dict[Speed, tuple[str, ...]] = {
    Speed.CRANKING: (
        "=cranking|=cranked",
        "=crank it|her|the|them engine|motor?|over?",
        "on the starter",
        "turning|spinning|spin|turn .. on|with the starter",
    ),
    Speed.FAST_IDLE: ("fast|high idle", "on the? choke", "at run-up|runup", "choke on|out"),
    Speed.OFF_IDLE: ("off|above idle", "touch of throttle"),
    Speed.CRUISE: (
        "cruise|cruising|driving|underway|highway|motorway|freeway|interstate|road",
        "under way",
        "at speed",
        "going|doing|running down|along the? road",
        "@mph",
        "when moving|driven",
    ),
    Speed.HALF: ("half throttle|speed|revs",),
    Speed.FULL: (
        "full|wide throttle|speed|open|chat|revs|power",
        "flat out",
        "max|maximum revs|rpm",
        "wot|redline|redlined",
        "at the? redline|governor|governed",
        "foot down|flat",
        "high revs|rpm",
    ),
    Speed.ANY: (
        "all|any|every|whatever|across the? speed|speeds|rpm|rpms|revs|throttle|range",
        "irrespective of revs|rpm|speed",
        "doesnt|not matter .. revs|rpm|speed|fast",
        "no matter .. rpm|revs|speed",
        "regardless of the? rpm|revs|speed",
        "however fast|hard",
        "revved or not",
        "throughout the? range",
    ),
    Speed.IDLE: (
        "idle|idling|tickover|tick-over",
        "=tick|=ticking|=ticks over",
        "at|on|in a|the stop|standstill|lights|light|junctions|junction",
        "stopped at|in",
        "slow|low running|idle|revs",
    ),
}
#: said of any heat
ANY_HEAT = ("hot and|or|& cold", "cold and|or|& hot", "hot or|and|& cold", "any temperature|temp")
ONSET: dict[Onset, tuple[str, ...]] = {
    Onset.SUDDEN: (
        "suddenly|sudden|instantly|abruptly|instantaneous",
        "all of a sudden",
        "all at once",
        "in a|an instant|flash",
        "without|no warning",
        "out of nowhere",
        "out of the blue",
        "just quit|died|dropped|went",
        "one minute|day .. next",
    ),
    Onset.GRADUAL: (
        "gradually|gradual",
        "over|for the? last? past? few|couple|@months|@years|several|of months|years|weeks|time|season",
        "bit by bit",
        "over time",
        "little by little",
        "slowly getting|got|gotten|declined|declining lower|worse?",
        "year by|after year",
        "getting|got|gotten lower and|over lower|time",
    ),
}
COURSE: dict[Course, tuple[str, ...]] = {
    Course.COMES_AND_GOES: (
        "comes|come and goes|go",
        "intermittent|intermittently|sometimes|occasionally|occasional",
        "on and off",
        "off and on",
        "now and then|again",
        "from time to time",
        "every now|so and|often then|again?",
        "once in a while",
        "some days",
        "then|before returns|return|recovers|back to? normal",
    ),
    Course.RECOVERED: (
        "came|comes|went|goes|come back|right up? by|on itself|its|it's|own",
        "recovered|recovers by|on itself|its own?",
        "fixed|cured|healed itself",
        "returned|came to|back normal by itself",
        "then? recovers|recovered",
        "then|it came|comes back up?",
        "back to normal|good",
        "fine|good again",
    ),
    Course.RETURNS: (
        "every|each single? time",
        "whenever",
        "same thing|place|spot every|each time|lap",
        "repeatable|consistently",
        "always happens",
    ),
    Course.WORSENING: (
        "getting|gets|got|gotten|growing|grown|becoming|progressively|steadily worse",
        "more and more",
        "worse and worse",
        "worse every|each day|time|year|run",
        "more often|frequent|frequently",
        "lower and lower",
    ),
    Course.SPREADING: ("at first|initially only? .. now .. always|time|everywhere|even",),
    Course.ONCE: ("just|only|happened|did it? once", "one time|off only?"),
    Course.UNCHANGED: (
        "always been|has|had|read|done like? this|that|it|so?",
        "has always|never been|read|changed|done",
        "for|same years|the same? unchanged",
        "since|from new|day-one",
        "never changed",
    ),
    Course.NOT_REPRODUCED: (
        "@not|cannot|can't|cant reproduce|replicate|duplicate|repeat",
        "@not happen|happened again|since",
    ),
    Course.CONSTANT: (
        "all the time",
        "constant|constantly|permanently",
        "never goes|changes|varies away?",
    ),
}
#: said of the time before the trouble
SINCE: dict[Since, tuple[str, ...]] = {
    Since.FIRST_START: (
        "since|from|on|at|after|ever first|initial|the first|initial? start|startup|start-up|fire-up|firing",
        "first|initial start|startup|start-up|fire|firing up?",
        "since i? bought|got|had it|the|this|her?",
        "since|from day|the one|beginning|start|word",
    ),
    Since.STANDING: (
        "since|after it? sitting|standing|storage|stood|sat|sits|stored|winter|laying|layup",
        "after .. winter|storage|layup|lay-up|years",
        "sat|stood|sitting|parked|stored|standing for? .. winter|years|months|year|decade",
        "barn find",
    ),
    Since.OVERHEATING: ("since|after it? overheating|overheated|boiled|boiling|overheat over?",),
    Since.BLOW: (
        "since|after hitting|hit|grounding|bottomed|bottoming .. rock|curb|kerb|pan|sump|stump|ground|out",
        "hit a? rock|kerb|curb|stump|something|debris|log",
        "bottomed|grounded|bashed|dented out? the? sump|pan|oil-pan|out",
    ),
    Since.REVVING: (
        "since|after redlining|redlined|over-revving|over-revved|overrevved|overrev",
        "missed a? gear|shift",
    ),
    Since.FROST: ("since|after .. frost|freeze|freezing|frozen|cold-snap",),
    Since.GRADE: (
        "changed|switched|went|going|switching|changing oil? from|to @grade",
        "since|after|when changing|changed|switching|switched|going|went to|grade|thinner|thicker @grade|oil|grade",
    ),
    Since.DATE: (
        "since|from|started|began|starting last|yesterday|this|on|monday|tuesday|wednesday|thursday|friday|saturday|"
        "sunday week|month|year|night|morning|january|february|march|april|may|june|july|august|september|october|"
        "november|december|monday|tuesday|wednesday|thursday|friday|saturday|sunday",
        "started|began|since yesterday|today|recently",
    ),
    Since.NEXT_START: ("next|following morning|start|day|startup .. gone|no|nothing",),
    Since.ALWAYS: ("since|from new|day-one", "always been|has|had|read", "from new"),
}
ONLY = ("only|just|solely when|at|on|in|after|if|while|under|hot|cold|once|idle", "only")
#: the pressure is a limit: it goes no higher, no lower
