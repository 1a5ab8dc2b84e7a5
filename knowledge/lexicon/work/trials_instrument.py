"""What was tried with gauge, sender and wiring, said in a way of its own; other work is an action on a part."""

from __future__ import annotations

#: the trial, by what is said of it
TRIALS: dict[str, tuple[str, ...]] = {
    "wiring_repaired": (
        "fixed|repaired|mended|soldered|cleaned|rewired .. wire|wiring|terminal|terminals|ground|earth|connection",
        "wire|terminal|ground|earth .. repaired|mended|soldered|cleaned|rejoined|joined",
        "ways of connecting .. tried",
        "rewired",
    ),
    "connector_refitted": (
        "unplugged|reseated|=cleaned|=cleaning|pushed|wiggled|jiggled .. plug|connector",
        "plugged|plugging the|my? oil? pressure? sender|sensor|switch =back in|on?",
        "connector|plug .. unplugged|reseated|=cleaned|refitted",
        "unplugged|disconnected|pulled and|& replugged|reconnected|replaced|refitted|cleaned .. sender|sensor|switch|plug",
        "replugged|reconnected the? sender|sensor|switch|plug|connector|wire",
        "plugged|pushed it back in|on?",
        "plugged|pushed|put the? wire|connector|plug|lead|terminal back in|on?",
        "unplugged|unplug|pulled|disconnected|removed it|the|off|and|,|then? .. reseated|reseat|replugged|reconnected|re-plugged|re-seated|plugged the|it|its? back|in|on? oil? pressure? sender|sensor|switch|plug|connector|lead|wire?",
        "reseated|reseat|replugged|re-plugged|re-seated the|its|that? oil? pressure? sender|sensor|switch|plug|connector|lead|wire",
        "pushed|pressed|shoved it|the-plug|the-connector|plug|connector home|tight|on|in properly|home|tight?",
        "crimped|soldered|put|fitted a|an|on? new? =ring|spade|eyelet|terminal|connector|plug on?|in?",
        "sprayed|squirted contact|switch|electrical cleaner",
    ),
    "new_sender": (
        "new sending unit",
        "two|three|four|five|six|several|@number new? oil? pressure? senders|sensors|switches|sending-units",
        "oil? pressure? switch|sender|sensor was|were|has|had|been? changed|replaced|renewed|swapped twice|again?",
        "sender|sensor|switch|sending-unit is|was only|just|barely|about? @time|week|month|weeks|months|a old",
        "sender|sensor|switch|sending-unit is|was brand? new so|and",
        "through @number|two|three|four|several? different? oil? pressure? senders|sensors|switches|sending-units",
        "swapped|switched|exchanged|moved|changed|traded the|both|their|oil|pressure? senders|sensors|sending-units|switches|transducers over|round|around|between|side-to-side|from|across|left|port|starboard",
    ),
    "other_gauge": (
        "second|another|different|new|master|known-good|borrowed oil? pressure? gauge",
        "borrowed|lent|loaned .. gauge",
        "tried|put|hooked|screwed|fitted|connected|plumbed|teed|used|borrowed|swapped up|in|on? a|an|my|the? known|good? "
        "mechanical|direct|test|master|manual|proper|good|liquid|glycerine|glycerin|damped filled? oil? pressure? gauge",
        "gauge for a|an mechanical|direct|new|different|another one?",
        "@number|two|three|four|several|all other|different? gauges",
        "both other|different gauges",
        "hardline|external|screw-in|plug-in|capillary|outside oil? pressure? gauge",
        "put|tried|hooked|swapped both|two|the? gauges on|onto|to one|same|each|the sender|sensor",
        "swapped|switched|exchanged|moved|changed|traded the|both|their|oil|pressure? gauges|dials|instruments over|round|around|between|side-to-side|from|across|left|port|starboard",
    ),
    "gauge_port_changed": (
        "put|moved|screwed|teed|fitted the|my|a? gauge|sender|switch in|into|to|onto|on the|an|a? other|another|different|second|main gallery? port|hole|tapping|plug|gallery",
        "moved|relocated|tried|screwed|connected|teed .. gauge|sender .. other|another|different|head|filter|block|gallery port|tapping|place|hole|take-off",
        "gauge|sender .. in|to|at another|different port|tapping|hole|place",
        "teed|plumbed .. at|into the filter|block|head|gallery",
        "=relocated|=resited|=relocating the? oil? pressure? sender|gauge|switch|sensor",
        "tapped|teed|plumbed the|my|a? oil? pressure? gauge|sender|sensor|switch into|in|off the? main? gallery|block|filter|head",
        "moved|relocated|resited|teed|plumbed|shifted the|my? oil? pressure? sender|gauge|switch|sensor to|into|onto|at|up|down",
    ),
    "gauge_line_renewed": (
        "=bled|=bleeding the? oil? pressure? gauge? line|pipe|capillary",
        "blew|blown|cleaned|cleared|rodded|poked|replaced|renewed out|through? the? .. gauge|sender|capillary line|pipe|port|hole|restrictor",
        "new gauge|capillary|copper line|pipe|tube",
    ),
    "ground_wire_added": (
        "ran|added|add|run|put|fitted|made|rigged|running|adding a|an? new|extra|good|separate? ground|earth wire|lead|strap? to|from|on|off? the? sender|sensor|switch? body|case|casing?",
        "ground|earth wire|lead|strap|cable was|were|been|has? =run|=added|=fitted|=rigged",
        "=grounded|=earthed|=grounding|=earthing the? sender|sensor|switch =body|=case|=casing",
    ),
    "fuse_renewed": (
        "new|another|replaced|changed|renewed|swapped|fresh the|a|ignition|gauge? fuse|fuses|relay",
        "fuse|fuses|relay was|were? renewed|replaced|changed|swapped",
    ),
}
