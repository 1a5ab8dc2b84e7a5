"""Further ways to say when, or while what, it shows; see ``circumstances``."""

from __future__ import annotations

from knowledge.reports.words import Circumstance

_IT = "it|its|it's|she|engine|oil|level|the-level|the-oil"
#: when it shows, by the words for it
DURING_MORE: dict[Circumstance, tuple[str, ...]] = {
    Circumstance.HOT: (
        "after|once|when|as|soon-as it|engine|oil|motor? gets|got|has|is got|gone? =warm|=hot|=warmed up?",
        "once|when|after|as the? thermostat|stat =opens|=open|=opened",
        "temp|temperature gauge|needle? is|in|reaches|reads|gets|at|sits the? =middle|=normal|=halfway|=centre|=center",
        "after|with|on a|the|it|engine|oil? warmed|warm =up =through?",
    ),
    Circumstance.START: (
        "for|during|in|within the? first few|couple|several of? seconds|moments",
        "as|soon|once|moment|second|when as? i|we|you fire|crank|start|turn the? it|her|the-engine|engine|key over|up|on?",
        "turn|turning of the? key",
    ),
    Circumstance.SLOWING: (
        "=off the? throttle|gas|power|pedal|accelerator",
        "take|taking|took|lift|lifting|lifted my|the|your|a? foot off",
        "revs|rpm|speed|engine =die|=dies|=dying|=dropping|=falling|=settling|=settles down|away|back?",
        "coming|come|pulling|pull|rolling|roll|creeping up|down to a|the my? stop|halt|lights|light|junction|roundabout|gate",
        "back|ease|easing|come|coming off|down from speed|throttle|gas|high",
    ),
    Circumstance.BRAKING: (
        "=hit|=hitting|=slam|=stab|=touch|=press|=jam the? brakes|brake|anchors|pedal",
        "emergency|panic|hard|sudden|heavy stop|stops|braking",
    ),
    Circumstance.BENDS: (
        "skid|wet pan|pad",
        "skidpan|skidpad|skid-pan",
        "long|fast|big|left|right sweeper|sweepers|curve",
        "turning|turn|turns|going|goes|go left|right|round|around a|the? corner|corners|bend|bends|roundabout?",
    ),
    Circumstance.ACCELERATING: (
        "on|under|during|with hard|full|heavy|brisk|strong|any acceleration|launch|launches",
        "launch|launching|launched hard|it|off|from",
        "foot down|to-the-floor",
        "opens|open|opening up the? throttle|taps?",
    ),
    Circumstance.ROUGH_ROAD: (
        "=off road|roading|the-road",
        "off-road|offroad|off-roading|green-laning|greenlaning",
        "hit|hitting|over|through a|the|some|any|every? pothole|potholes|bump|bumps|hump|humps|rut|ruts|kerb|drain",
    ),
    Circumstance.STANDING: (
        "after|when|if|once it|engine|car|she|has|its|had|been|being? =stood|=sat|=left|=parked|=standing|=sitting|=unused all|a|for|over|the week|weekend|while|few|days|night|winter|month",
        "@not used|run|driven|started for|in a? while|bit|time|days|week|weeks",
    ),
    Circumstance.ELECTRICAL: (
        "electrical|heavy|any load|loads is|are|turned|switched on",
        "with|when|while the? wipers|=lights|headlights|heater|blower|fan|fridge|radio are|is|go|turned|switched? on|running",
    ),
    Circumstance.COLD: (
        "until|till|til it|its|it's|engine|she|has|is|gets|the-engine? been|has|is|gets? warm|=warmed|=warms up|through?",
    ),
    Circumstance.IDLE: (
        "parked|stopped|stationary|standing and|with|but|up|still|, the|its? engine|motor? running|ticking|idling over?",
        "car|truck|boat|bike|tractor|vehicle|engine stopped|parked|stationary|sitting|just|only and|with|but? the? engine? running|ticking|idling over?",
        "just|only sitting|sat|standing|parked there|here? idling|running|ticking over?",
        "at a|the =stand",
        "at|in junctions|roundabouts|stop|crossings|standstill",
        "when|while|if i|we stop|pull up|at|for",
    ),
    Circumstance.LOAD: (
        "=loaded",
        "soon|when|whenever|once as? i|we|you? put|throw|give|apply|engage it? on|a|the|any|under? load|pto|blades|mower|work",
        "brush cutting|cutter|hog|hogging",
    ),
    Circumstance.MINUTES: (
        "from about|around|roughly? @minutes on|onwards|onward|in",
        "after the? first @minutes",
        "after about|around|just|only|roughly? @seconds",
        "over|in|within|during the? first half hour|quarter",
        "after about|around|maybe|roughly? a? quarter|half of @hours",
        "after|following|into|in|on a|about|an|just? @minutes drive|ride|run|trip|journey|blast|cruise|commute|warm-up|warmup",
        "@distance down|up|along|into the|my|a? road|motorway|highway|lane|trip|journey|drive",
        "about|some|roughly|maybe? @minutes in|later",
        "about|some|roughly|maybe? five|ten|fifteen|few|couple of? minutes|mins|miles in|later",
        "after|once driving|riding|running|motoring|going for? a bit|while|time",
    ),
    Circumstance.HARD_RUN: (
        "after|following|off|from a|the|any? good|long|fast? motorway|highway|freeway|interstate|autobahn run|trip|drive|journey|ride|stint",
        "after|following a|the|some|any|my? track|race|test|autocross|hillclimb|sprint session|day|outing|run|stint|weekend",
        "after giving|given|i|ive? give|given|gave? it|her some|a|the|real? stick|welly|beans|boot|berries|death|hammer|go",
        "after|following a|some|any? spirited|enthusiastic|hard|brisk|fast|quick|lively drive|run|driving|blast|ride|riding",
        "after a|the? blast|run|thrash down|along|up the? road|motorway|highway|freeway|autobahn|bypass",
    ),
    Circumstance.SPEED: (
        "at|above|past|over|around|about? about? @number revs|rpms",
        "motorway|highway|freeway|cruising|road|driving speed|speeds",
        "when|if|only|as|while? i|you|we|he? rev|revs|revving|revved|blip|blipping it|her|him|the-engine|up? up? in|at|out-of neutral|park",
        "get|getting|got on|onto the? highway|motorway|freeway|interstate|dual-carriageway|main-road",
    ),
    Circumstance.LATE: (
        "after about? @hours|an-hour|hour of|with? topping|cutting|mowing|ploughing|plowing|baling|work|pulling|towing|steaming",
        "the longer|further i|it|you run|runs|drive|ride|go|goes",
        "once|when|after|had? shes|she's|its|it's|it|she|has worked|been|working|run|running|going|on an|about|for? @hours",
        "once|when|after|had? shes|she's|its|it's|it|she|has worked|been|working|run|running|going|on an|a|about|for? couple|few|several|half? of|an? hour|hours",
    ),
    Circumstance.LOW_LEVEL: (
        f"only|just|when|if|once when|if|once? {_IT} is|gets|goes|was|drops? a|half|about|even? a|bit|@volume|litre|liter|quart|pint|low down|low|short|under|near|below",
        "level|oil gets|is|drops|goes|near|close down|near|close|to|towards|below? to|the? bottom|lower|low|add|min|minimum mark|line|mark?",
    ),
    Circumstance.SLOPE: ("across the|a|any? bank|slope|hillside|hill|incline",),
    Circumstance.RANDOM: ("no rhyme|reason|rhyme-or-reason|logic or|to reason|it",),
}
