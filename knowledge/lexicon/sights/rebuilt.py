"""What people find while an engine is put together, or taken apart again, in their own words."""

from __future__ import annotations

_SHAFT = "shaft|driveshaft|rod|hex|spindle|intermediate"
_UP = "up|out|off"
_NAIL = "nail|fingernail|thumbnail|finger-nail|thumb-nail"
_LINES = "lines|line|scratches|scratch|scores|scoring|grooves|groove|ridges|ridge"
_RING = "gasket|ring|seal|o-ring|oring"
_OUT = "off|out|down"
_COLD = "cold|cool"
_METER = "temp|temperature|fuel|water|volts|voltmeter|speedo|speedometer|tach|tacho|amps"
_BUILDER = "machine|engine? shop|builder|machinist|engineers|reconditioner|rebuilder|garage"
_PLUGS = "gallery|galley|oilway|crank|core|oil plugs|plug"
_MEASURED = "measured|measure|miked|mic|plastigaged|plastigauged|checked"
#: the finding, by what is said when it is there
SIGHTS_REBUILT: dict[str, tuple[str, ...]] = {
    "plugs_fitted_by_others": (
        f"{_BUILDER} fitted|put|refitted|replaced|renewed|installed|drove|returned the|all|new|my|those? gallery|galley|oilway|crank|core|oil plugs back|in?",
        f"{_PLUGS} were|was|had|been|all|back? fitted|refitted|replaced|renewed|put|installed|driven back|in? by the|a|my|our? {_BUILDER}",
        f"{_PLUGS} .. {_BUILDER} fitted|refitted|replaced|renewed|put|installed",
        f"assumed|thought|trusted|supposed the|my|that? {_BUILDER} .. plugs|plug",
    ),
    "plugs_not_counted": (
        f"nobody|noone|no-one|none|no-body|one could|can|couldnt|would|of|us? remember|remembers|remembered|recall|recalls|count|counted|check|checked .. {_PLUGS}",
        "nobody|noone|no-one|none|one could|can? remember|remembers|remembered|recall|recalled putting|fitting|refitting|seeing .. plug|plugs|one",
        f"never|not|didnt count|counted|check|checked the|all|my|any|those? {_PLUGS}",
        f"@not =remember|=recall putting|fitting|installing|refitting that|the|those|any? {_PLUGS}",
    ),
    "drive_not_engaged": (
        f"{_SHAFT} had|has|was|is|comes|came|come|pulled|lifted|slipped|jumped|popped up|right|clean? {_UP} out? of|from the? oil? pump",
        f"{_SHAFT} not|never|wasnt|isnt|didnt sitting|seated|in|drop|dropped|go|went down|in|into? the? oil? pump",
        f"distributor|dizzy not|never|wasnt|isnt|didnt pick|picking|picked up the? oil? pump? {_SHAFT}",
        "missed the pump shaft|drive|slot",
    ),
    "no_oil_at_open_port": (
        "gauge|sender|test|oil port|hole|tapping|union is|was|left? open|undone|out , bone? dry",
        "gauge|sender|test|oil port|hole|tapping|union is|was|left? open|undone|out , dry|nothing|not as|a|at? bone|drop|dribble",
        f"gauge|sender|switch|sensor {_OUT} , cranked .. not|nothing|no a|oil? drop|dribble|oil|comes|came",
        "not|nothing even? a? drop|dribble|oil came|comes|come out of the? port|hole|block",
    ),
    "filter_misfitted": (
        f"old|original|previous|perished little|rubber|square|paper|filter? {_RING} was|is|still|had|left still|left|stayed|been in|on|there|stuck|under the|its? stem|spigot|groove|head|housing|bowl|block|there",
        "two|both gaskets|seals|o-rings|orings in|on the? stem|spigot|filter? head|filter? housing|bowl",
        f"fitted|put|installed the? new|second {_RING} on|over|in|under top|with? of? the? old",
    ),
    "sealer_in_sump": (
        "silicone|rtv|sealant|sealer|goo|gasket-goo|hylomar hangs|hanging|hung|dangles|dangling inside|down|in|into in|like? curtains|strings|beads|icicles|worms|ribbons|shreds|sump|pan",
        "hangs|hanging|hung inside|down|in? in curtains|strings|beads|icicles|worms|ribbons",
        "curtains|strings|beads|icicles|worms|ribbons|sausages of silicone|rtv|sealant|sealer|goo inside|in|hanging|into|all",
    ),
    "pump_scored_seen": (
        f"oil? pump gears|rotors|body|housing|bore|walls has|have|had|with|got some|deep|fine|several? {_LINES} you|i|we|that|which? can|could|you|i? catch|feel|snag",
        f"{_LINES} you|i|we can|could catch|feel|snag a|my|your? {_NAIL} on|in? in|on the? oil? pump|gears|rotors",
    ),
    "cover_grooved": (
        "pump? plate|cover|end-plate|backing-plate is|was|had|has|been deeply|badly|heavily|well|all? grooved|scored|dished|gouged|hollowed",
        "deep|two|circular grooves|rings|groove in|on|worn|cut into|in? the pump? cover|plate|end-plate|backing-plate",
    ),
    "cooler_stays_cold": (
        f"cooler|oil-cooler lines|hoses|pipes|line|hose to|from|at the? front|nose|radiator|cooler? stay|stays|stayed|are|were|remain stone|quite|still|always? {_COLD}",
        f"lines|hoses|pipes to|from|at the? front|nose|cooler|oil-cooler|radiator|fender|wing stay|stays|stayed|are|were|remain stone|quite|still|always|never? {_COLD}|warm|hot",
        f"cooler|oil-cooler is|was|stays|stayed stone|always|still {_COLD}",
        "cooler|oil-cooler thermostat|thermostatic|stat valve? never|doesnt|didnt|wont|not open|opens|opened|opening",
    ),
    "clearances_built_wide": (
        f"@not|never {_MEASURED} a|any|one thing|single|clearance|bearing|clearances",
        "bolted|stuck|threw|put|slapped in|it|them together|in? without a? measuring|checking|plastigage|plastigauge|measurement",
        "@not plastigage|plastigauge any|a|the? of? them|clearances|bearings|thing",
    ),
    "needle_off_zero_at_rest": (
        "pegs|pegged|pins|swings|jumps|goes|shoots .. @pressure|@number|full|max|top|right .. second|moment|instant|minute|soon|when|with i|you|as|the? i|you|key? turn|switch|turned|on? the? key|ignition? on? ,? before it|the? even|engine? cranks|cranked|starts|started|starter|fires",
    ),
    "other_gauges_also_wrong": (
        f"so do|does|did|are|is the? {_METER}",
        f"the? same with|for|goes the? {_METER}",
        f"{_METER} and|& {_METER} as well|too|also|likewise",
    ),
    "engine_seized": (
        "wont|cant|couldnt|doesnt|will-not|cannot turn|turned|rotate|budge|move over? by|with|at hand|a|the|big|long|breaker? bar|hand|wrench|socket|all",
        "wont|cant|couldnt|doesnt|will-not|cannot turn|be it|the|engine|motor|crank|turned|rotated over? by|with hand|a|the|big|long|breaker? bar|hand|wrench|socket",
        "not|wont|cant|doesnt turn|budge on|with the crank bolt|nut|pulley",
    ),
    "suction_seal_cut_or_missing": (
        f"reused|re-used|used|kept the|its|my? old|original|same {_RING} between|on|for|at|in the? pickup|pick-up|pick|suction",
        f"{_RING} between|on|at the? pickup|pick-up|pickup-tube|suction|strainer tube|pipe? and|to|at? the? pump? was|is|had|came flat|nicked|hard|cut|torn|pinched|rolled|gone|brittle|square",
    ),
    "sender_port_clogged": (
        "screen|gauze|filter under|below|beneath|behind|in the? sender|sensor|switch|sending-unit was|is|looked|full|packed|plugged|clogged|blocked|solid like|with|up|solid|felt|of?",
        "little|tiny|small|mesh screen|gauze looked|was|full|is|like packed|plugged|clogged|blocked|felt|solid|of",
    ),
    "sump_or_pump_swapped": (
        "swap|custom|home-made|homemade|fabricated|cut-down|shortened|aftermarket|shallow|front-sump|rear-sump|kit oil? pan|sump",
        "different|another|later|earlier|other oil? pan|sump and|with its? pickup|on|to|for clear|suit|fit",
    ),
    "capped_low": (
        "wont|doesnt|never|not|refuses-to|will-not go|goes|went|rise|rises|get|gets|climb|climbs|budge a|one|any hair|bit|pound|psi|needle-width over|above|past|more|higher",
        "stays|stuck|sits|levels|tops|flat out|off? at? @pressure|@number no matter what|how above|after|past|from|beyond that|there|then",
        "stays|stuck|sits|levels|tops|flat out|off? at? @pressure|@number from|above|after|past|beyond there|that|then on|however|whatever|no|up?",
    ),
    "rocker_shaft_found_worn": (
        "rocker shaft|shafts since|because|as the? old ones|one|pair were|was|are badly|all? grooved|worn|ridged|stepped",
        "rocker|rockers shaft|shafts|bushes was|were|is|are|had|been? badly|grooved|all|worn|ridged|stepped grooved|like|worn|ridged|stepped|through",
    ),
}
#: the finding, by what is said when it is not there
SIGHTS_REBUILT_ABSENT: dict[str, tuple[str, ...]] = {
    "no_oil_at_rockers": (
        "oil came|comes|up|was|coming|running|flowing up|out|there|showing at|to|on|from|of all|every|each|both|the @number|eight|sixteen|twelve|of|single|my? the? rocker|rockers|pushrod|pushrods|tips",
        "all|every|both|@number|sixteen|twelve|eight of|the? rocker|rockers had|have|has|got|getting|get|were|are oil|oiled|wet|oily",
    ),
    "ran_on_without_pressure": (
        "shut|switched|turned|knocked|killed it|her|engine|the? off|down after|within about|maybe|only|some|roughly|less-than? @seconds|seconds|a-few-seconds",
    ),
}
