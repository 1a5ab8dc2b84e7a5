"""Findings as owners type them with little care: water and fuel in the sump, borrowed dipsticks, bits."""

from __future__ import annotations

_FUEL = "diesel|petrol|gasoline|gas|fuel|kerosene|paraffin"
_WATER = "water|coolant|antifreeze|seawater|glycol"
_MUCH = "@volume|litre|litres|quart|quarts|pint|pints|gallon|cupful|lot|loads|lots|half"
_SUMP = "sump|pan|crankcase|drain"
_SWARF = "swarf|filings|shavings|slivers|turnings"
_LAMP = "light|lamp|bulb|warning"
_KEY_OFF = "key|ignition|ign|switch is|was|has? been? turned|switched? =off|out|removed"
_UP = "rises|rise|rose|climbs|climbed|increases|jumps|improves"
_PRESSED = "clutch pedal|is|goes|went? in|down|pressed|pushed|depressed|dipped"
_PRESS = "press|pressing|push|pushing|dip|dipping|depress|depressing|declutch|declutching"
#: the finding, by what is said when it is there
SIGHTS_TYPED: dict[str, tuple[str, ...]] = {
    "gauge_supply_wrong": (
        "earth|ground|negative|feed|supply wire|lead|connection|terminal? of|on|at|behind|to the|my? instrument|gauge? panel|dash|dashboard|cluster|gauge is|was|has? worked? loose|green|corroded|off|broken|bad|rotten|undone",
        "instrument? panel|dash|dashboard|cluster|gauge earth|ground wire|lead|connection? is|was|has? worked? loose|green|corroded|off|broken|bad|poor|rotten|undone",
    ),
    "lamp_lit_with_key_off": (
        f"{_LAMP} is|was|stays|stayed|still|glows|burns|remains|remained on|lit|glowing with|when|even|after|though the? {_KEY_OFF}",
        f"{_KEY_OFF} and|but the? oil? {_LAMP} is|was|stays|stayed|still|glows|remains on|lit|glowing",
        f"{_LAMP} glows|burns|lit|on with|when|even|after|though the? {_KEY_OFF}",
        f"{_LAMP} glows|glowing|lit|on dim|dimly|faintly? all|always? the? time? even? =switched|=ignition off",
    ),
    "rises_with_clutch": tuple(
        f"pressure|gauge|needle|reading|psi|it {up} a? bit|little|lot? when|as|with|if|whenever|once i|we|you|he|the? {clutch}"
        for up in (_UP, "goes|comes|went|gone up|higher")
        for clutch in (_PRESSED, f"{_PRESS} the? clutch?")
    ),
    "gallery_seal_found_bad": (
        "tube|pipe inside|in|into the? oil? gallery with .. o-ring|ring|seal|oring , it|which|that was|is|had perished|hard|cut|split|flat|torn|gone",
        "tube|pipe inside|in|into the? oil? gallery with .. o ring , it|which|that was|is|had perished|hard|cut|split|flat|torn|gone",
    ),
    "tilts": (
        "engine|motor|it|she is|was|sits|stands? tilted|inclined|angled|raked|sloped at|by|about|over? @number|some|a",
        "@number degree|degrees|deg engine? angle|tilt|rake|slope|inclination",
        "@temperature engine? angle|tilt|rake|slope|inclination",
        "engine|motor|it|she is|was|sits|stands? tilted|inclined|angled|raked|sloped at|by|about|over? @temperature",
    ),
    "freshly_rebuilt": (
        "new|brand-new|crate|replacement|recon engine|motor is|was|has|, never|not been? run|started|fired",
        "new|brand-new|crate|replacement|recon engine|motor , @pressure|no|nothing|zero|@number psi|oil? pressure? on|at|when|while|during|,? cranking|crank|cranked|first",
    ),
    "oil_grade_too_thin": (
        "to|with|of|in|used|got @thin oil? by|in mistake|error|accident",
        "@thin oil? in? by|in mistake|error|accident",
        "mistakenly|wrongly|accidentally .. @thin",
    ),
    "right_idle_cured_it": (
        "light|lamp flickers|flickering|on|comes|flashes on? , set|raised|turned|wound it|idle? up? to|at @number|@rpm and|, its|it|lamp|light is|goes|went? out|off|gone|fine",
    ),
    "gallery_wall_weeps": (
        "hairline? crack|pinhole|split|fracture found|seen|was|is? in|near|at|into|through|across the? block's|block|main|oil? main|oil? gallery|galleries|oilway",
        "block|casting is|was|has? cracked|split|porous at|near|in|into|through the? main|oil? gallery|galleries|oilway",
    ),
    "balance_shafts": ("with|has|have|got|the? two|twin? balance|balancer|counterbalance shafts",),
    "flooded": (
        "engine|motor|it|shed|barn|boat|bilge|generator|genset|tractor|machine|garage|yard was|got|had|has? been? flooded|submerged|swamped|sunk in|by|during|when|under|with|last|a|the? storm|flood|floods|river|tide|rain|water|winter|spring|summer|autumn|hurricane|sea",
        "flooded|submerged|swamped|sank|sunk in|by|during a|the|last|boatyard? boatyard? storm|flood|floods|river|tide|rain|hurricane|sea",
        "engine|motor|it|generator|genset|tractor|boat|shed was|went|stood|sat|has|had|been? been? under|below water|floodwater",
        "water|floodwater|flood was|came|rose|got|stood? over|above|up-to|past the? engine|motor|generator|genset|flywheel|block",
        "flood|floodwater|flood-water got|came|went|ran into|in|over the? engine|shed|generator",
    ),
    "fuel_at_the_drain": (
        f"{_MUCH} of? pure|neat|straight|clean|raw? {_FUEL} came|drained|ran|poured|drawn|pumped|sucked out|from|off|of .. {_SUMP}",
        f"drained|drain|pumped|sucked|got|drew|took|emptied about|nearly|over|some|a? {_MUCH} of? pure|neat|straight|raw? {_FUEL} out|from|off of|from? the|my|its|her? oil? {_SUMP}|engine|bottom",
        f"{_SUMP} is|was|had|has|full|half|mostly|nearly .. {_MUCH}|full of {_FUEL}",
        f"{_SUMP} full of {_FUEL}",
        f"{_FUEL} came|ran|poured|pours|gushed|runs out of|from|at the? oil? {_SUMP}",
        f"{_FUEL} ran|came|poured|comes|pours out first|before|with the? oil",
        f"{_FUEL} ran|came|poured|comes|pours out when|as|once i|we|he|they pulled|pull|undid|opened|removed|took|drained the|out? {_SUMP}|plug",
        f"{_MUCH} of? {_FUEL} in the? oil? {_SUMP}",
    ),
    "water_at_the_drain": (
        f"{_MUCH} of? clean|rusty|dirty|green|salt|fresh? {_WATER} came|drained|ran|poured|drawn|pumped|sucked out|from|off|of|first",
        f"drained|pumped|sucked|got|drew|emptied about|nearly|over|some|a? {_MUCH} of? clean|rusty|dirty|green|salt|fresh? {_WATER} out|from|off of|from? the|my|its|her? oil? {_SUMP}|engine|bottom",
    ),
    "water_in_sump": (
        f"{_SUMP} is|was|had|has|full|half|mostly|nearly .. {_MUCH}|full of {_WATER}",
        f"{_MUCH} of? {_WATER} in|inside the? oil? sump|pan|crankcase",
    ),
    "dipstick_not_its_own": (
        "@length shorter|longer than the? right|proper|correct|original|book dipstick|stick|one?",
        "dipstick|stick is|was @length too? short|long|shorter|longer",
    ),
    "relief_spring_short_or_broken": (
        "relief|pressure|regulator|bypass valve? spring is|was|were|found|came|in|out .. two|three|2|3|several|half|halves|bits bits|pieces|parts|halves?",
    ),
    "filter_bypass_stuck_open": (
        "cooler|filter bypass|by-pass valve|tap|cock? was|is|had? been? left|stays|jammed|held|found|sat =open",
    ),
    "steel_slivers_in_pump": (
        f"{_SWARF} in|inside|through|between|on|round|around|jammed|wedged|stuck the|in|my? oil? pump teeth|gears|rotors|body|housing?",
        f"{_SWARF} jammed|wedged|stuck in|between|into the? oil? pump",
        f"bit|sprag|lump|piece|curl|string of {_SWARF} in|inside|through|between|on|jammed|wedged the|in? oil? pump",
    ),
    "oil_from_bellhousing": (
        "plug|plugs behind|by|at|near the? flywheel|flexplate|bellhousing weeping|weeps|leaking|leaks|seeping|dripping|drips|leaked",
        "rear|back cam|camshaft|gallery core? plug leaks|leaking|weeps|weeping|drips|dripping|leaked",
    ),
    "seal_or_gasket_wet": (
        "drain|sump plug|plug's washer|gasket|seal|thread|threads|o-ring? is|was? weeping|weeps|dripping|drips|seeping|seeps|leaks|leaking|damp",
    ),
    "sealer_in_sump": (
        "bits|lumps|crumbs|strings|pieces|blobs of? blue|orange|black|red|grey|silver|clear|old? silicone|rtv|sealant|sealer in|inside|at the? drain|drained|old|sump|pan oil|pan?",
    ),
    "anti_drainback_hard": (
        "old|previous|last|other filter|one had|has a|an? little|rubber|rubbery? flap|valve|membrane ,|but|and|while? this|the new? one|filter hasnt|hasn't|doesnt|doesn't|not|without|none|lacks",
        "filter without|lacks|lacking|has-no|with-no|no a|an|any? non-return|nonreturn|anti-drain|antidrain|anti-drainback|drainback|check back? valve|flap|membrane",
    ),
    "wrong_shells_fitted": tuple(
        f"crank|journals|crankshaft is|was|ground|reground|to|at|by? {ground} under|undersize|thou ,|and|but? i|we|he|they? used|fitted|put|has|had|got|with .. {shells} under|undersize|thou shells|bearings|bearing|in"
        for ground, shells in (
            ("10|.010", "20|30|40|.020|.030|.040|std|standard"),
            ("20|.020", "10|30|40|.010|.030|.040|std|standard"),
            ("30|.030", "10|20|40|.010|.020|.040|std|standard"),
        )
    ),
    "needle_follows_loads": (
        "=lights|headlights|fridge|wipers|heater|fan|blower|radio|lamps switched? off .. gauge|needle|pressure|reading reads|is|goes|comes|shows|back .. up|higher|normal|right|fine|correct|usual",
    ),
    "relief_parts_not_standard": (
        "relief|pressure|regulator valve|spring? was|is|has? been? adjusted|shimmed|packed|raised|spaced|set up|out? with|by @number|one|two|three|some|a? washers|washer|shims|shim",
        "@number|one|two|three|some|a washers|washer|shims|shim under|behind the? relief|regulator valve? spring",
    ),
    "level_high": (
        "oil is|was|right|all|comes|stands|came up|way to|in the? neck|brim|filler|top-of-the-tube",
    ),
    "protection_tripped": (
        "oil pressure|press? low? alarm|trip|switch|shutdown|protection|sensor keeps|kept|is|was|always shutting|tripping|stopping|cutting|killing the|it|my|our? generator|genset|engine|set|it|pump",
    ),
}
