"""Further ways to say when, or while what, it shows; see ``circumstances``."""

from __future__ import annotations

from knowledge.reports.words import Circumstance

_IT = "it|its|it's|she|engine|oil|level|the-level|the-oil"
#: when it shows, by the words for it
DURING_MORE: dict[Circumstance, tuple[str, ...]] = {
    Circumstance.COLD: (
        "until|till|til it|its|it's|engine|she|has|is|gets|the-engine? been|has|is|gets? warm|=warmed|=warms up|through?",
    ),
    Circumstance.IDLE: (
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
    ),
    Circumstance.HARD_RUN: (
        "after|following|off|from a|the|any? good|long|fast? motorway|highway|freeway|interstate|autobahn run|trip|drive|journey|ride|stint",
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
