"""Speed and heat of a reading."""

from __future__ import annotations

from knowledge.reports.words import Circumstance, Heat, Speed

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
        "turning|spinning|spin|spun|turn|turned .. on|with|by the? starter",
    ),
    Speed.FAST_IDLE: (
        "fast|high idle",
        "highidle",
        "on the? choke",
        "at run-up|runup",
        "choke on|out",
    ),
    Speed.OFF_IDLE: ("off|above idle", "touch of throttle", "not at idle|tickover", "not idling"),
    Speed.CRUISE: (
        "cruise|cruising|=driving|underway|highway|motorway|freeway|interstate|road",
        "under way",
        "on|down straights|straight",
        "on the|my =drive home|back|there|in|out",
        "at speed",
        "pto speed|rpm|revs",
        "on a|the? plane",
        "pulling|climbing|grossed a|the? grade|grades|hill|hills|load",
        "planing|planning speed?",
        "@pressure|@number|@range psi|lbs|pounds? =running and|but|,|then",
        "going|doing|running down|along the? road",
        "@mph",
        "when moving|driven",
    ),
    Speed.HALF: ("half throttle|speed|revs|ahead|astern",),
    Speed.FULL: (
        "full|wide throttle|speed|open|chat|revs|power|ahead|astern",
        "=rated|governed|max|maximum speed|rpm|revs|engine-speed",
        "=rated",
        "max|maximum|full no-load|noload speed|rpm|revs?",
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
        "everywhere",
        "across the board",
        "at? idle|tickover or|and|to|through at? flat|wide|full|redline out|open|throttle|chat|revs|power|speed",
        "at? idle|tickover or|and|to at? redline|speed|cruise|cruising",
        "no matter what i|you|we|the do|revs|speed",
        "whatever i|you|we do",
    ),
    Speed.IDLE: (
        "idle|idling|tickover|tick-over",
        "=tick|=ticking|=ticks over",
        "at|on|in a|the stop|standstill|lights|light|junctions|junction",
        "stopped at|in",
        "slow|low running|idle|revs",
        "no-wake speed?",
        "no wake speed?|zone?",
        "trolling speed?",
        "dead slow ahead|astern?",
        "slow ahead|astern",
    ),
}
#: said of any heat
ANY_HEAT = ("hot and|or|& cold", "cold and|or|& hot", "hot or|and|& cold", "any temperature|temp")
