"""What is seen or known of the engine's history and habits, in phrases of more than the book's own ``also``."""

from __future__ import annotations

#: the finding, by what is said when it is there
SIGHTS_HISTORY: dict[str, tuple[str, ...]] = {
    "high_mileage": (
        "high mileage|miles|hours|kms",
        "worn|tired|old out? engine|motor",
        "@highmiles on|the|it|clock|engine|miles|now?",
        "never been? rebuilt",
        "well worn",
    ),
    "stood_long": (
        "barn find",
        "sat|stood|sitting|parked|stored|standing|idle|laid .. @years|years",
        "@years sitting|standing|storage|idle",
        "sat|stood|sitting|parked|stored up? .. winter|months|decade|decades|ages",
    ),
    "history_unknown": (
        "newly bought|purchased|acquired",
        "just|recently bought|got|purchased|acquired",
        "bought|purchased it|the|this .. used|secondhand|second-hand|recently|weeks|month|months",
        "unknown|dont|no know|known|service? history|mileage|miles",
    ),
    "service_neglected": (
        "neglected",
        "never|rarely changed|checked .. oil",
        "no oil changes",
        "overdue .. oil|service|change",
    ),
    "raced_or_heeled": ("track day|days", "autocross|racing|raced|autox|rallying", "on the? track"),
    "worked_hard": ("towing|towed", "full throttle|load for|all", "long motorway|highway|hard run"),
    "idles_long": ("short trips", "idles|idling a? lot|hours", "long idling"),
    "earlier_breakage": (
        "dropped a|the valve|part|nut|bolt|washer",
        "broke a? rocker|pushrod|ring|piston|rod|lifter",
    ),
    "known_for_model": (
        "known|common|well-known problem|fault|issue|for|on",
        "well known for|on|issue|problem",
    ),
    "several_alike": ("both|all engines|motors|of .. same", "all .. do it|this"),
    "maker_calls_it_normal": (
        "dealer|maker|manufacturer|mechanic says|said|reckons .. normal|fine|ok",
    ),
    "hot_and_thin": ("thin oil", "heatwave|heat-wave"),
}
