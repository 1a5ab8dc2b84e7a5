"""What shops write of petrol engines in a line: filters, idle, oil as prescribed, what was left out."""

from __future__ import annotations

#: findings that "the crankcase is split" may name, the words for it, and what follows where it broke
CASES = frozenset(["block_cracked", "sump_found_holed"])
CASE_WORDS = frozenset(["crankcase", "crankcases", "case", "cases"])
SPLIT_BY = frozenset(
    ["by", "along", "across", "open", "from", "where", "at", "through", "in", "right"]
)
#: what one drives over: no speed is said by it
OF_A_ROAD = frozenset(["humps", "hump", "bumps", "bump", "potholes", "ruts", "cobbles"])
#: behind "wet": it is of that kind
NOT_THE_WEATHER = frozenset(
    ["clutch", "clutches", "sump", "sumps", "sumped", "sumping", "liner", "liners", "belt", "belts"]
)
_AS = "as|to|per|at|by|on"
_BOOK = "=specified|=prescribed|=recommended|=required|=book|=spec|=handbook|=manual|=standard|=specification"
_COVER = "cover|cap|lid|housing|canister|bowl|element|cartridge"
_RIGHT = "=oe|=oem|=genuine|=correct|=right|=dealer"
_TRIED = "slackened|loosened|cracked|opened|undone|out|off|removed"
_DRY = "=nothing|=dry|=air|=foam|=froth"
#: the finding, by what is said when it is there
SIGHTS_SHOP: dict[str, tuple[str, ...]] = {
    "oil_grade_as_manual": (
        f"@grade oil? , {_AS} the? {_BOOK}",
        f"@grade oil? {_AS} the? {_BOOK}",
        "oil|@grade .. as|what the? book|manual|handbook|maker|factory says|say|asks|wants|specifies|recommends|prescribes|calls",
        "oil of|in|is? the? =specified|=prescribed|=recommended|=correct|=right grade|viscosity|type|specification",
    ),
    "no_oil_at_open_port": (
        "no|none|nothing|not|only|just oil|drop|trace|air|foam|froth? at|from|out|comes|came of|from|at? the? main|oil? gallery|galley|sender|switch plug|port|hole|tapping",
        f"gallery|galley|sender|switch|pressure plug|port|union {_TRIED} ,|:|,? on|with|while|when|and|by? the? starter|cranking|cranked|engine|turning? ,|:|and|,? only|just|but? {_DRY}",
        f"plug of|in the? main|oil? gallery|galley {_TRIED} .. {_DRY}",
        "no|not|nothing any|a? oil|drop? coming|comes|came|flowing|flows|getting|gets out? of|from|at the? sender|switch|gauge|gallery|pressure plug? hole|port|tapping|fitting|opening",
    ),
    "dipstick_low": (
        "sight-glass|window|glass =empty|=blank",
        "sight glass|window =empty|=blank",
        "below|under the? lower|bottom|min? line|mark of|in|on the? sight|glass|window glass?",
    ),
    "level_correct": (
        "sight glass|window half|three-quarters|two-thirds full|way|covered",
        "half|halfway|midway|middle up|of? the? sight? =glass|=window",
    ),
    "rockers_flooded": (
        "cam|rocker|valve cover|covers|box|boxes|cambox awash|flooded|swimming|brimming|brim-full",
        "cam|rocker box|boxes|cover|covers half? full of oil",
    ),
    "relief_found_stuck": (
        "relief|regulator|oil? valve? piston|plunger|valve had to be =driven|=hammered|=knocked|=pressed|=persuaded|=tapped|=pulled out|from|with?",
        "relief|regulator valve? piston|plunger|valve came|come|comes|moved|moves only|out only? by|with|after force|hammer|punch|hammering|pliers|difficulty|effort",
    ),
    "relief_seat_scored": (
        "ball has|with|shows|showed|had a|an? ring|groove|flat|ridge|step|track worn|hammered|beaten|pressed|in|round|around|on",
        "ring|track worn|hammered|beaten|pressed round|around it|the|ball|plunger|seat|piston",
    ),
    "filter_misfitted": (
        f"o-ring|oring|seal|gasket|ring of|from|for|on|in the? oil? filter {_COVER}? .. forgotten|omitted|left|missing|doubled|twice",
        "filter fitted|installed|refitted|put without its|the|a|any? seal|o-ring|oring|gasket|spring|stem|centre|center|washer|shim",
        f"filter? {_COVER} without its|the|a|an? long|plastic|inner|centre|center|old? stem|standpipe|post|tube|spike|o-ring|seal|spring|shim",
        f"{_COVER} .. o-ring|oring|seal|shim|washer|spring .. left|forgotten on|off|out|behind the? bench|tray|floor?",
    ),
    "filter_empty_after_standing": (
        f"{_COVER} opened|undone|off|taken|unscrewed .. no oil|drop in|inside|left it|there?",
        f"{_COVER} opened|undone|off|taken|unscrewed .. =empty|=dry",
    ),
    "ran_on_without_pressure": (
        "light|lamp|warning|alarm|buzzer .. ran|driven|drove|ridden|rode|went|continued another|a|further|for|on? @distance|@minutes",
    ),
    "engine_ran_hot": (
        "brought|came|towed|booked|taken|car|truck|pickup|bike|vehicle? in|here|presented|delivered with|for overheating|overheat|boiling",
    ),
    "fades_at_speed_back_after_rest": (
        "sinks|falls|drops|fades|sags|dwindles .. after|on|in a|the|one? long|hard|sustained|flat-out pull|run|straight|burst|stint .. takes|needs|recovers|comes|back",
    ),
}
#: the same, when it is not there
SIGHTS_SHOP_ABSENT: dict[str, tuple[str, ...]] = {
    "idle_below_spec": (
        f"idle|tickover speed|rpm|revs? is|was|set|adjusted|checked|correct? {_AS} the? {_BOOK}",
        "idle|tickover speed|rpm|revs correct|ok|normal|right|good|within|in",
    ),
    "filter_not_listed": (
        f"filter is|was|of? a|an|the? {_RIGHT}|original filter|part|type|number|one|make|equipment?",
        f"{_RIGHT} oil? filter element|cartridge? fitted|in|installed|used?",
    ),
}
