"""What is seen of gauge, sender, lamp and wiring, in phrases of more than the book's ``also``."""

from __future__ import annotations

_GAUGE = "gauge|gage|guage|needle|pointer"
_LAMP = "light|lamp|buzzer|alarm|warning"
_SENDER = "sender|sensor|sending-unit|switch|transmitter|transducer|sendor"
_WIRE = "wire|wires|lead|leads|wiring|cable|loom|harness"
_PLUG = "connector|plug|terminal|connection|connections|spade|contacts|push-on"
_TAP = (
    "tap|tapped|tapping|taps|thump|thumped|thumping|hit|bang|banged|flick|flicked|knock|slap|whack"
)
_WIGGLE = (
    "wiggle|wiggling|wiggled|touch|touched|touching|move|moved|moving|jiggle|jiggled|tug|tugging|tugged|waggle|flex|flexing|fiddle|"
    "disturb|pull|press|pressing|wobble"
)
_MOVES = "frees|freed|unsticks|moves|moved|jumps|jumped|jump|works|worked|comes|came|goes|reads|changes|changed|flickers|springs|swings|drops|move|returns|dies|back"
_TEST = "mechanical|test|direct|manual|master|shop|second|proper|trusted|real|capillary|known-good|calibrated|another|borrowed|separate"
_PANEL = "dash|panel|factory|stock|original|cluster|instrument|electric|electrical|indicated"
_LOW = "zero|low|nothing|dead|0"
_GOOD = (
    "ok|fine|good|normal|healthy|correct|right|spec|specification|perfect|proper|plenty|adequate"
)
_BAD = "loose|corroded|dirty|green|bad|poor|broken|crusty|oily|barely-touching|rusty|burnt"
_BROKEN = "broken|chafed|burnt|melted|frayed|cut|snapped|pinched|trapped|severed|corroded-through|bare|rubbed"
_DEAD = "dead|died|erratic|erratically|crazy|wrong|quit|zero|failed|haywire|jumping|berserk|out|stopped|dimming|dim|wild|fail|swing|swinging"
_OTHERS = "other|all|fuel|temp|temperature|water|amp|volt|speedo|speedometer|both|every|electrical|rest|several"
_METERS = "gauge|gauges|instruments|dials|needles|meters|clocks|instrument|speedometer|speedo|windows|indicators"
#: the finding, by what is said when it is there
SIGHTS_INSTRUMENT: dict[str, tuple[str, ...]] = {
    "tap_frees_needle": (
        f"{_GAUGE} .. {_MOVES} .. {_TAP} =it|=the =it|=gauge|=glass|=dash|=panel|=needle|=dashboard|=instrument|=face|=binnacle",
        f"{_GAUGE} .. {_MOVES} .. {_TAP} it|the? =with|=by|=on",
        f"{_TAP} the? {_GAUGE}|dash|glass|panel|dashboard|instrument .. {_MOVES}",
        f"{_TAP} it|with .. finger|and {_GAUGE}|needle|it {_MOVES}",
        f"{_TAP} .. finger .. {_GAUGE}? {_MOVES}|needle",
    ),
    "wiggle_moves_needle": (
        f"{_WIGGLE} .. {_WIRE}|{_PLUG}|bundle|sender|sensor .. {_MOVES}",
        f"{_WIGGLE} .. {_WIRE}|{_PLUG}|bundle .. makes|made|causes|brings|brought {_GAUGE}|reading|it|pressure|all|them",
        f"{_WIRE}|wiring|dash|plug was|is|moved|when? {_WIGGLE} about|around? .. {_MOVES}|all",
        f"{_PLUG}|plug unplugged|reseated and reseated|replugged .. needle|{_MOVES}",
        f"{_GAUGE}|reading|light|it .. {_MOVES}|alive|life|dead|cut|cuts out|to|alive|life|in? when|if|as|by .. {_WIGGLE} .. {_WIRE}|{_PLUG}|sender",
    ),
    "lamp_dead_with_key_on": (
        f"{_LAMP}|bulb @not|never come|light|work|works|comes|lights|lit|glow on|with|when|up|at? .. key|ignition",
        "bulb|lamp|light is|was|has? blown|dead|=burnt|=burned out?",
        f"{_LAMP} @not|never|fails|failed|doesnt|dont|wont to? come|light|comes|lights on? at|when|with|even|before? all|key|ignition|starting",
        f"{_LAMP} silent|dark|dead and dark|silent|dead",
        f"{_LAMP} never|@not worked|working|works",
        f"no oil? pressure? {_LAMP} with|when|at|on the? key|ignition on?",
        f"{_LAMP} is|stays|stayed|remains|was dark|dead|unlit|off with|when|on|at|even the? key|ignition on?",
        f"key|ignition =on .. {_LAMP} @not come|light|work|works|comes|lights|lit",
    ),
    "second_instrument_disagrees": (
        f"{_LOW} .. {_GAUGE} but|and|yet|while .. {_LAMP} is|stays|stayed|remains|firmly? off|out",
        f"{_LAMP} is|stays|stayed|remains|was|firmly|still? firmly? =off|=out|=dark|=unlit .. gauge .. {_LOW}",
        f"{_GAUGE} .. {_LOW} but|yet|and|while|however .. {_LAMP} @not|is|stays|never off|on|out|come|came|lit",
        f"{_GAUGE} .. {_GOOD} but|yet|and|while|though .. {_LAMP} is|stays|comes|came|was|still? on|lit|flickers|flashing",
        f"no {_LAMP} but|though|and|yet .. {_GAUGE}",
        f"{_LAMP} .. =but .. {_GAUGE} .. {_GOOD}|@pressure",
        "gauges|instruments|two disagree|differ|contradict|disagreed",
        "one gauge .. other .. good|normal|fine|zero|nothing|nearly",
        f"upper|one|flybridge|lower {_GAUGE} .. zero|low|nothing|falls .. other|lower|second normal|fine|good|one",
        f"{_LAMP} hardly|rarely|never ever? lit|on|came",
        f"{_LAMP} off|out while|when|although|with .. gauge",
        "light|lamp|alarm|buzzer|warning .. but|yet|though|although|while|even|however .. gauge|gage|needle|dash|pressure .. never|@not below|under|dropped|drops|drop|falls|fell|fall|moved|moves|less",
        "light|lamp|alarm|buzzer|warning .. but|yet|though|although|while|even|however .. gauge|gage|needle|dash|pressure .. @range|@pressure",
        "gauge|gage|needle|dash|pressure .. zero|nothing|low|bottom|0 but|yet|and|though|while|however the|low|oil|red|pressure|warning? light|lamp|alarm|buzzer never|@not|is|stayed come|came|on|lit|sounded|out|off",
        "two|both gauges|instruments|stations|readings @not agree|match|same|tally",
        "upper|lower|top|bottom|upstairs|downstairs|inside|outside|helm|flybridge|bridge|one|first helm|station|gauge? .. @pressure|@number|@range .. flybridge|upper|lower|downstairs|upstairs|bridge|cockpit|wheelhouse|other|second .. @number|@pressure|@range",
    ),
    "other_gauges_also_wrong": (
        "every|each needle|gauge|dial|instrument on|in? the? panel|dash|board|cluster? dropped|fell|died|went|swung|jumped|read|reads",
        "fuel|temp|temperature|rev|tach|tacho|volt|voltmeter|speedo gauge|counter|needle? and oil|pressure gauge|needle? both|all reading|read|reads|went|died|dropped|stopped|full|zero|maximum",
        "voltmeter|rev|tacho|tachometer|temperature|temp|fuel|speedo counter|gauge|needle? died|stopped|quit|went|dropped haywire|dead|mad|crazy? as|too|also well?",
        f"{_OTHERS} of|the|dash|other|my|electrical|engine? of|the|dash|other|engine? {_METERS} .. {_DEAD}",
        f"{_OTHERS} of|the|dash|other|engine? {_METERS} also|too|as|alike|affected",
        f"{_OTHERS} gauge|gauges|needle|readings|instruments jumps|jump|move|moved|do|does|did as|too|also|the",
        f"gauges|instruments all|both .. {_DEAD}",
        f"{_METERS} {_DEAD} .. at the same time",
        f"{_DEAD} =at =the =same =time",
        "all of? the? gauges|instruments|dials did|do|went|go|dropped|drop|dead|same|low|act|acting|play|playing|affected|jump|too",
        "electrical failure|problem|problems|fault|trouble",
        "dead speedometer|speedo|fuel|temp|temperature|tach|ammeter|voltmeter",
        "lost all .. gauges|instruments",
        "other readings move|jump|too",
        "all|every|both|other of|the|my|dash? gauges|instruments|needles|dials|clocks all? jump|jumps|jumped|bounce|bounces|twitch|drop|dropped|drops|move|moved|flick|dance|dip",
        "every|each gauge|instrument|dial|needle on|in the? dash|panel|car|boat|cluster|binnacle .. up|dead|crazy|mad|wrong|out|haywire",
        "speedo|speedometer|tach|tacho|temp|temperature|fuel|ammeter|voltmeter , .. .. all|both dead|out|quit|gone|zilch|wrong|zero",
        "temp|temperature|fuel|water gauge? and|& the? oil pressure? gauge? both|all|each",
        "temp|temperature|fuel|water|volt|amp gauge beside|next|alongside it|to|the? .. @not|dead|nothing",
        "temp|temperature|fuel|tach|tacho|rev gauge|counter? @not read|work|move|register|works|reads|working at? all?",
        "temp|temperature|water-temp|fuel|volt|tach|tacho|amp|boost gauge|needle? also|too? waves|jumps|moves|swings|flickers|drops|wavers|twitches|dances|wanders|follows with|along-with|in-sympathy|in-step|together it|oil|the?",
        "also|and .. temp|temperature|fuel|volt|tach|tacho gauge|needle? does the? same",
    ),
    "needle_stuck_at_one_value": (
        f"{_GAUGE}|pressure stays|sits|reads|shows|stuck at|on .. no|whatever|regardless|irrespective matter|revs|rpm|of|the|what",
        f"{_GAUGE} never|@not moves|move|changes|change|varies|vary .. whatever|matter|regardless|revs|rpm|hot",
        f"{_GAUGE} never|doesnt|dont|does|wont not? moves|move|changes|budges|budge",
        f"{_GAUGE} is|was|seems|appears|sits? stuck|frozen|jammed at|in|on",
        f"{_GAUGE} is|was? =stuck|=frozen|=jammed",
        f"=stuck|=frozen|=jammed {_GAUGE}",
        "always reads|shows|stays|sits the? same|@pressure",
        "stays|stuck|sits at|on the? same|@pressure|mid|middle .. whatever|matter|regardless|hot|revs",
        "pegged at|on zero|max|full|@pressure|@number",
        "stays|sits|stuck|stayed|glued|sticks|sat|fixed|frozen|jammed|reads|reading dead|just|at|on|to? at|on|to|around|right? @pressure|@number|@range no|whatever|regardless|hot|irrespective|however|all the? matter|i|of|or|time|revs|while|day",
        "glued|stuck|frozen|fixed|jammed|welded at|on|to @pressure|@number|@range",
    ),
    "needle_off_zero_at_rest": (
        "pegged|reads|shows|sits|at|reading .. with|when the? key|ignition on|off .. engine|motor? off|stopped|running?",
        "pegged|reads|shows|sits|at|stays .. with|when|after the? engine|motor|ignition is|was|has? =off|=stopped",
        f"{_GAUGE}|reads|shows|sits|reading .. engine|key|ignition|motor|its off|stopped",
        f"{_GAUGE} @not|never return|drop|go|back|goes|returns|rest|rests back|on|to? to? zero",
        f"{_GAUGE} .. below zero|the peg",
        f"{_GAUGE} .. maximum|full|max|right|over|pegged .. whenever|when|once|with|as|soon .. ignition|key",
        "stays up? after .. engine .. stopped|off",
        "pegged|pegs|pinned|pins|over|full|max|maximum|up|hard .. before .. start|started|starts|crank|cranked|cranking|fire|fired|turning",
        "before|without starting|cranking|it|the|i|engine|motor|even|is|even? start|started|starting|starts|crank|cranked|its|it|it's|reads|shows|sits .. @pressure|@number|pegged|full|max",
        "=after|=when|=once|=with i|we|you|it|the|a|is|engine|motor|it|has|have? it|the|engine|motor? shutdown|shut-down|stop|stopped|stopping|off|shut|switch|switched|turn|turned off|down|it|her|engine|the|of? off|down|engine|it|the? .. still|stays|stayed|remains|sits .. @pressure|@number|pegged|up|high|reading|reads",
        "key|ignition on|off|out .. hard|pegged|pins|full|maximum|max|over|pinned .. whether|engine|running|not|before|without",
        "pegged|full|hard over|pins|pinned|max|maximum scale|over|on|with|as|when|soon|the|right? .. key|ignition .. whether|before|not|without|off|stopped|turned|on",
        "pins|pegs|pegged|pinned|jumps|goes|shoots|swings right|straight|hard|over|up|to|all|the|way|full|max|as|full? .. soon|when|moment|once .. ignition|key",
        "stays|stuck|still|remains|sits|reads at|on|reading? @pressure|@number even|when|after|with|once|and i|it|the|engine|key? switch|switched|key|engine|off|shut|turn|turned|take",
        "needle|gauge|pegged|stop|max|full .. before .. touch|touched|hit|turned|pressed|crank|cranked|go|went .. starter|over|it|engine",
    ),
    "needle_steps_at_once": (
        f"{_GAUGE}|reading|pressure jumps|jumped|steps|flips|switches|snaps|leaps|swings .. at once|instantly|from|to|between|full|straight",
        f"{_GAUGE}|reading .. either @pressure|@number or zero|@pressure|@number",
        "either @pressure|@number or zero|nothing|@pressure",
        f"{_GAUGE} going|goes|jumping|is? crazy|wild|wildly|haywire|berserk|mad|nuts",
    ),
    "needle_follows_loads": (
        f"{_GAUGE} moves|jumps|follows|changes|drops|swings|dips|twitches .. lights|headlights|indicators|wipers|heater|horn|brake-light|brake-lights|blinkers|switch|fan",
        f"lights|headlights|indicators|wipers|heater|horn|blinkers|switch on|off|turned|makes|make .. {_GAUGE} moves|jumps|move|jump|drops|drop|swing|swings",
    ),
    "slow_needle": (
        f"{_GAUGE} .. sluggish|lazy|slow|slowly|lags",
        f"sluggish|lazy|slow {_GAUGE}",
    ),
    "ran_long_without_distress": (
        "ran|run|runs|running|driven|drove|done|did|been|went|ridden|has .. @distance|@hours|hour|miles|years|months|week .. like that|this|it|so|light|no|without|zero|alarm|warning|harm|problem|damage|distress",
        "ran|run|runs|running|drove|driven|been|going|used it? all|the|a whole? season|summer|year|day|winter|week|trip|way|rally .. light|lamp|no|without|zero|alarm|harm",
        "@hours|@distance|hour run|running|driving|on? with|like|of the? alarm|light|lamp|zero|that|this|no",
        "no|without|any|suffered sign|signs|ill|damage|harm|distress|effects of? distress|damage|effects|wear|trouble|after",
        "drove|driven|ridden|ran home|back|miles .. no|without problem|change|noise|harm|damage|distress",
        "drives|runs|ran|been fine with|like that|the for|light|gauge|zero|@distance|@years|years",
    ),
    "lamp_slow_to_go_out": (
        "light|lamp .. stays|stayed|takes|took .. used-to|instant|instantly|immediately|straight|before|never|normally",
        "light|lamp|it stays|stayed|is|remains on|lit for? about|around|like|a|good|nearly|maybe|some? @seconds|few-seconds|couple-of-seconds|seconds on|at|"
        "when|after|every|each|from|before start|starting|startup|cold|first|morning|time",
        "used-to|always|normally go|went|goes|be|was|out|off straight|instantly|instant|immediately|right|before",
        f"{_LAMP} .. slow|slower|longer|long to|than|before go|goes|going|out|it",
        f"{_LAMP} takes|took|taking longer|ages|long|@seconds|while to|before",
    ),
    "unsteadier_with_revs": (
        "worse|wilder|jumps as|with|when the? throttle|revs|rpm is|are|go|rise|rises|raised|up|increases",
        "worse|wilder with|as|the? more? throttle|revs|rpm",
    ),
    "gauge_line_leaking": (
        f"{_GAUGE}|capillary|pressure line|pipe|tube|capillary|hose|union|fitting .. leaking|leaks|leak|burst|cracked|broke|split|weeping|blew",
        f"leaking|leak|burst|cracked|split at|in|from|of .. {_GAUGE}|capillary line|pipe|tube|hose|union",
        f"pipe|line|tube up|leading|going? to|for the|my? oil? pressure? {_GAUGE} .. leaking|leaks|burst|cracked|split|broke|leak|dripping|drips|drip|weeps",
        f"leaking|leak|leaks|oil|drip|drips|dripping|weep|weeps at|from|on .. pipe|line|tube up|leading|going? to|for the|my? oil? pressure? {_GAUGE}",
    ),
    "gauge_line_kinked": (
        f"{_GAUGE} line|pipe|tube|hose .. kinked|pinched|flattened|crushed|trapped",
        f"kinked|pinched|flattened|crushed .. {_GAUGE}|capillary line|pipe|tube",
    ),
    "gauge_line_sludged": (
        f"{_GAUGE} line|pipe|tube|hose|restrictor .. blocked|sludged|clogged|plugged|choked",
        f"blocked|sludged|clogged|plugged .. {_GAUGE} line|pipe|tube",
    ),
    "oil_behind_panel": (
        "oil .. behind|under|inside the? dash|panel|dashboard|instrument",
        "oil on|over|all my|the feet|foot|carpet|shoes|boots|footwell",
        "oil in|into the? footwell|cabin|cockpit",
    ),
    "sender_leaks_oil": (
        "leak|leaks|leaking|leaked|weeps|weeping|seeps|pushes|pushing|pumps|=pumping oil through|into|out|up|down of|into|the|its|up? plug|connector|wire|wires|"
        "loom|harness|pins|terminal",
        "wires|wire|wiring|plug|connector|loom|harness|pigtail|terminals is|are|was|were|all? soaked|full|wet|swimming|dripping|oily|saturated|covered in|with|"
        "of? oil?",
        "oil in|inside|all-over|on the? plug|connector|wiring|loom|harness|pigtail|pins|terminals",
        f"{_SENDER}|sending unit|is|was? .. leaks|leaking|weeping|oily|wet|seeping|dripping|sprays|pissing",
        "oil in|inside|at|around|from|out|weeping|leaking|sprays|spraying of|from|through? the? oil? pressure? connector|sender|plug|switch|sensor|sending",
        f"leaking|weeping|seeping oil? pressure? {_SENDER}|sending",
        "connector|plug|boot full|soaked|swimming of|with|in oil",
    ),
    "sender_connector_loose": (
        f"{_BAD} {_PLUG}",
        f"{_PLUG} is|was|had|came|found|were|very|a|looked|on|the|sender|come|worked? a|bit|very|come|come|badly|barely|the? {_BAD}|touching",
        f"{_PLUG} .. barely|hardly|not touching|making|seated|connected|tight",
        f"bad|poor|intermittent|dodgy {_PLUG}|contact at|on|to the? oil? pressure? {_SENDER}",
    ),
    "sender_wire_off": (
        f"{_WIRE} is|was|been|come|came|had|fully|half|right? =off .. {_SENDER}|unit|off|sending?",
        f"{_WIRE} .. fallen|fell|dropped|come|unplugged|disconnected|hanging|dangling|adrift|detached|unhooked .. {_SENDER}|unit|off|sending?",
        f"{_WIRE} =hanging|=dangling|=unplugged|=disconnected",
        f"{_SENDER} plug|connector|wire|was|is|had|found|left? =unplugged|=disconnected|unconnected",
        f"forgot|forgotten|left to|the? connect|reconnect|plug|off|unplugged|plugged in|the? .. {_SENDER}|wire",
        f"terminal|spade|{_WIRE} broken|broke|snapped|fallen|fell off the? {_SENDER}|it|from",
        "traced .. @not connected",
        "wire|lead|cable was|had|has|is|blue|green|white|red|been|come|just|simply? just|come|right|clean|completely|fallen|fell? right|clean|completely|pulled|come? off",
        "unplugged|disconnected at the sender|sensor|switch",
    ),
    "sender_wire_broken": (
        f"{_WIRE} is|was|had|has|found|been|to|the|sender|gauge? is|was|had|been|the|sender|gauge? {_BROKEN} through|off?",
        f"{_BROKEN} oil? sender|gauge|sensor? {_WIRE}",
        f"broken|open|break in|section the? {_WIRE}",
    ),
    "wire_open_or_shorted": (
        f"{_WIRE}|circuit is|was|tested|measured|measures|tests? =open|=shorted|open-circuit|=shorting to|circuit?",
        "no continuity",
        "short|shorted|shorting to ground|earth|block|chassis",
        f"open circuit .. {_WIRE}",
    ),
    "wire_on_wrong_sender": (
        f"{_WIRE} on|to|at the? wrong|other {_SENDER}|terminal|unit|one",
        f"{_WIRE} were|was|got|had|been|found? swapped|crossed|reversed|mixed|interchanged|transposed",
        f"{_WIRE} .. .. interchanged|transposed|swapped|crossed|mixed over|round|up?",
        f"wrong {_WIRE} on|connected",
    ),
    "sender_damaged": (
        f"{_SENDER}|sending unit|body|terminal|was|is|had|has? .. cracked|snapped|dented|smashed|broken",
        f"cracked|smashed|broken|snapped oil? pressure? {_SENDER}|sending",
        "terminal|spade .. broken|snapped|sheared =off",
    ),
    "tape_on_sender_thread": (
        f"ptfe|sealant|sealer|tape|thread-sealant tape? on|round|around|under the? {_SENDER}|thread|threads|sending",
        f"{_SENDER} .. wrapped|sealed|ptfe|tape",
    ),
    "ground_strap_bad": (
        "ground|earth|earthing|grounding strap|cable|wire|lead|connection|straps|is|was|point .. loose|corroded|missing|bad|poor|broken|dirty|off|rusty|disconnected",
        "bad|poor|missing|corroded|loose|broken|no engine? ground|earth|grounding|earthing strap|cable|lead|connection?",
        "ground|earth|earthing|engine-ground strap|cable|lead|wire .. .. =corroded|=broken|=loose|=missing|=rotted|=off",
    ),
    "sender_ground_poor": (f"{_SENDER} .. poor|bad|no|not ground|earth|grounded|earthed",),
    "gauge_port_moved": (
        f"{_SENDER}|gauge|sending|it .. moved|relocated|remote-mounted|remotely|teed|tee'd|extended to|away|off|from|on|at|in|into|mounted? the? head|firewall|bulkhead|block|filter|line|hose",
        f"moved|relocated|remote the? {_SENDER}|gauge|sending",
        f"{_SENDER}|gauge|it is|was|now? taken|mounted|fitted|reading|read|sits at|in|on|off|from .. head|filter|cooler|firewall|remote",
        f"original {_SENDER} position|port|location",
        f"remote|extension|braided hose|line|mount .. {_SENDER}",
    ),
    "sender_not_for_gauge": (
        f"wrong|mismatched|incorrect {_SENDER}|sending for|range|fitted|unit|with|gauge",
        f"{_SENDER}|gauge @not match|matched|matching|compatible|suit",
        f"mismatch|mismatched .. {_SENDER}|gauge",
        f"{_SENDER} .. off|from|for something|another|a|different|other|wrong else|engine|gauge|range|car|ohm",
        f"{_SENDER} .. @range .. gauge .. @range",
        "gauge|sender @range psi|bar? .. in place of|instead|not|where|but",
    ),
    "no_sender_fitted": (
        f"no {_SENDER} fitted|installed|at|in|there",
        f"{_SENDER} hole|port is|was|had|just? plugged|blanked|bunged",
    ),
    "needle_ignores_lead_test": (
        f"grounded|grounding|earthed|earthing|shorted|shorting the? {_WIRE}|it|sender .. ,? nothing|no|@not|still .. move|movement|happens|moves|change|swing|happened|response|swings|reaction",
        f"{_GAUGE} @not|no|longer swing|swings|move|respond .. grounded|earthed|shorted|lead|wire",
        f"no longer swings .. {_GAUGE}",
    ),
    "lamp_on_with_wire_off": (
        f"{_LAMP} stays|stayed|still|remains|is|was on|lit|on with|when|even .. {_WIRE}|{_SENDER}|plug|connector off|unplugged|disconnected|pulled|removed",
        f"unplugged|disconnected|pulled .. {_SENDER}|{_WIRE}|connector .. {_LAMP} stays|stayed|still|remains on|lit|on",
        "pulled|took|unplugged|disconnected|removed|took the? wire|lead|plug|connector off|from|out|at|of? the|its? switch|sender|sensor|it? and|but|, the? light|lamp|alarm|buzzer|it still|stays|stayed|is|was|keeps|carries on|lit|going|sounding|screaming|still|there|goes?",
        "with .. wire|lead|plug|connector off|disconnected|unplugged|pulled .. light|lamp|alarm|buzzer still|stays|stayed on|lit|going|sounding",
    ),
    "gauge_supply_wrong": (
        "voltage stabiliser|stabilizer|regulator|limiter .. faulty|bad|failed|duff|dead|stuck|gone|shot",
        "faulty|bad|failed|dead voltage|instrument stabiliser|stabilizer|regulator|limiter",
        "no|low|wrong voltage|power|feed|supply|current at|to|on the? gauge|gauges|cluster|sensor|sender",
        "sensor|sender|gauge supply .. low|unsteady|missing|wrong",
    ),
    "fuse_blown": (
        "fuse|fuses is|was|had|has|were|for? .. blown|blew|popped|failed|gone",
        "blown|popped|blew a|the|gauge|instrument? fuse|fuses",
    ),
    "sender_ohms_high": (
        f"{_SENDER} .. open|infinite|high ohms|circuit|resistance",
        "infinite|too-high ohms|resistance",
    ),
    "sender_ohms_low": (
        f"{_SENDER} .. zero|no|low ohms|resistance",
        f"{_SENDER} .. shorted internally",
        f"{_SENDER} is|was|measures|measured|found =shorted",
    ),
    "sender_wrong_on_air": (
        f"{_SENDER}|unit|it tested|tests|tested|found|proved|proven|confirmed|diagnosed|was|turned|is out|to|be|at|as? be? bad|faulty|dead|duff|defective|fault|failed|wrong|u/s",
        "faulty|bad|dead|duff|defective|failed|dud|failing oil? pressure? sender|sensor|transducer|transmitter|sending-unit",
        "sending unit was|is|proved|tested? bad|faulty|dead|defective",
        f"{_SENDER} .. air|compressor|bench .. wrong|dead|nothing|fails|failed",
    ),
    "switch_opens_wrong": (
        "oil? pressure? switch tested|tests|tested|found|proved|proven|confirmed|was|is|turned|to|out|at|narrowed|traced? to|be|as|out|at? be? bad|faulty|dead|duff|defective|fault|failed|stuck",
        "faulty|bad|dead|duff|defective|failed|sticking oil? pressure? switch",
        "fault|trouble|problem narrowed|traced|tracked|was|is|down|lay down|in|to? to|with|in? the? oil? pressure? switch",
        "switch opens|closes|switches|trips at @pressure|@number",
    ),
    "gauge_dead_on_known_signal": (
        "gauge tested|tests|found|proved|confirmed|itself|was|is|turned|itself|out|to? was|is|to|be|out? be? bad|faulty|dead|duff|defective|kaput",
        "faulty|bad|dead|duff|defective oil? pressure? gauge|instrument-cluster|cluster",
    ),
    "gauge_damaged": (
        "gauge|glass is|was|has|face|glass|lens? fogged|cracked|smashed|misted up?",
        "fogged|misted|smashed oil? gauge|glass",
        "cracked|broken gauge glass|face|lens",
        "needle is|was|had|has =bent|=loose|=broken|=off",
        "needle had|has =come|=fallen off",
    ),
    "tachometer_wrong": (
        "tach|tacho|tachometer|rev-counter|counter .. off|wrong|inaccurate|out|reads high|reads",
        "on|by|per|says|reads|shows the? tach|tacho|tachometer|rev-counter but|though|and .. optical|photo|laser|strobe|handheld|hand-held",
        "optical|photo|laser|strobe|handheld|hand-held|another|borrowed one|tach|tacho|counter .. says|reads|shows|showed|read|got|its|it's|on .. @rpm|@number",
    ),
    "panel_reads_too_low": (
        f"{_TEST} gauge .. higher|more|{_GOOD} .. than|dash|panel|stock|factory|but|psi?",
        f"{_TEST} gauge .. above .. dash|panel|stock|factory|cluster",
        f"{_PANEL} gauge? .. low|lower|less|below|under .. {_TEST}",
        f"{_TEST} gauge|gauges|oil|it? shows|showed|shows|reads|read|said|gave|confirmed|says {_GOOD} pressure?",
        f"{_TEST} gauge .. cold to hot .. spec|specification|normal",
        f"{_PANEL} reads|shows below|less|lower|under",
    ),
    "panel_off_by_constant": (
        f"{_PANEL}|gage|gauge|it reads|is|shows about|around? @pressure|@number low|lower|high|higher|out|less|more|off .. at|every|than|always|everywhere",
        "@pressure|@number low|lower|high|higher|out|off .. every speed|rpm",
        "constant|same offset|error",
        "constant|same difference|amount low|high|out|off|at|everywhere|throughout|across|below|above|under|over",
    ),
    "panel_half_or_double": (
        f"{_PANEL}|gauge reads|shows about|exactly|only? half|double|twice of|the|what? the|what|real|actual|true",
    ),
    "panel_reads_too_high": (
        f"{_PANEL} gauge? .. high|higher|more|above|optimistic .. {_TEST}|real|actual|true|than",
        f"{_PANEL} gauge shows|reads|says|showed|said {_GOOD} .. {_TEST} .. low|only|zero|@pressure",
        f"{_PANEL} gauge .. always .. mid|middle|midrange|mid-range|normal|centre|center",
        "gauge acts|works|behaves like a|an? lamp|light|idiot|switch",
    ),
    "test_gauge_doubtful": (
        "test|mechanical|cheap|second gauge .. doubtful|suspect|off|inaccurate|wrong|junk|rubbish",
    ),
    "direct_gauge_zero": (
        f"{_TEST} gauge .. zero|nothing|none|0|nil",
        f"{_TEST} gauge on|in|there it|her? now? and|& it|that? says|reads|shows|showed|read|said =zero|=nothing|=none|=0",
        f"{_TEST} gauge both|all|also|still|too says|say|read|reads|show|shows|showed|at|on zero|nothing|none|0|nil",
        f"{_TEST} gauge .. confirmed|confirms|agrees|agreed|verified|proved zero|it|nothing|none|no|that|too",
        f"zero|nothing|none|0|no|nil oil? pressure|psi|reading? on|by|with|at|to|confirmed|verified|using|from a|the|on|with|by? a|the|my? {_TEST}|old|@range gauge",
        "confirmed|verified|measured|proved as|to|at|be|with|by|actual|it|pressure? =zero|=nothing|=none",
        "union undone|cracked|open|opened .. no oil|pressure",
    ),
    "direct_gauge_low": (
        f"{_TEST} gauge on|in|there it|her|engine|block|there? and|& it|its|that|pressure? really|is|was|still|actually|actual|well|way|far? low|lower|below|under|far|bad|poor",
        f"{_TEST} gauge .. the? same as|reading|thing|story|figure|low|again|too",
        f"{_TEST} gauge .. confirms|confirmed|agrees|agreed|low|also|too|verified|lower|matches|matched",
        f"confirmed|verified|measured|proved as|to|at|be|actual|it|pressure|the|reading|really|truly? low|lower|it|that|reading? with|by|on|using|actual? a|the|my|an? {_TEST}|accessory|gauge",
        "actual|true|real oil? pressure measured|was|is|tested|of|about|really|only? low|lower|poor|@pressure",
        "measured|tested|checked|proved actually|really|and|as|to|be|was|found? low",
        f"{_TEST} gauge shows|showed|reads|read|gave|says|said =only|=just|=barely|=mere about|around? @pressure|@number",
    ),
    "direct_gauge_unsteady": (
        f"{_TEST} gauge .. bounces|wavers|flickers|jumps|unsteady|fluctuates|erratic too|also?",
    ),
    "pressure_shown_since": (f"since then|that .. {_TEST} gauge .. {_GOOD}",),
    "ports_differ": (
        "two|different|both ports|taps|places|points .. differ|different|psi|disagree",
        "@pressure at|from .. @pressure at|from .. port|gallery|head|filter|block",
    ),
    "pump_port_low": (
        "low|zero|poor at|from|straight|directly the? from|at|out? the? pump outlet|port|discharge|side?",
    ),
    "good_at_pump_low_in_gallery": (
        "good|full|normal|@pressure at|before the? pump|filter but|and|yet|, .. low|zero|after|gallery|head|@pressure",
        "pressure drop across|over the? filter|cooler",
    ),
    "sender_port_clogged": (
        f"port|hole|restrictor|screen|orifice|drilling|passage under|for|behind|at|of|to|in .. {_SENDER}|gauge|sending .. clogged|blocked|plugged|sludge|full|choked",
        f"clogged|blocked|plugged|choked .. port|hole|restrictor|screen|orifice|passage .. {_SENDER}|gauge|sending",
        f"sludge|dirt|crud|gunk in|blocking the? .. {_SENDER} hole|port|fitting|screen",
    ),
    "no_oil_at_open_port": (
        f"no|zero|without|not|nothing any|a? oil|drop|thing .. {_SENDER}|gauge|union|gallery|port hole|port|fitting|out|connection|union|undone|open",
        f"{_SENDER} out|removed|off .. no oil|nothing|dry",
        f"took|removed|unscrewed|pulled .. {_SENDER} .. no|nothing|dry oil?",
        "union|fitting|port|sender .. undone|open|out|removed .. no oil|pressure|nothing",
        f"no oil out of the? {_SENDER}|sending|port",
        f"{_SENDER}|sending hole|port|unit is|was|bone? bone? dry",
    ),
    "no_oil_at_line_end": (
        "no oil at|reaching|reaches|gets|getting|to the? gauge end|line|itself?",
        "gauge line is|was? dry|empty",
    ),
    "instrument_just_changed": (
        "since|after|when|just|newly|freshly i|the|a|we|fitting|installing|it? .. new|replaced|aftermarket|changed|moved|fitted|installed|swapped|different .. gauge|sender|cluster|sensor|dash|gauges",
        "wrong since .. gauge|sender .. replaced|changed|fitted",
        "gauge|sender|sensor|cluster just|recently|newly been? replaced|moved|fitted|renewed|installed|changed",
        "moved|relocated|replaced|fitted the? sender|gauge|sensor .. days|day|week|yesterday",
        "since it was replaced|moved|fitted",
    ),
}
