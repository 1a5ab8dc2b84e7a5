"""What shops and drivers note in few words: oil and its grade, use, samples, who looked at what."""

from __future__ import annotations

_BOOK = "book|manual|handbook|spec|specification|chart|maker|maker's|oem|spec'd|specified"
_PER = "a|an|per|every|each|/"
_SPAN = "day|week|hour|hr|shift|trip|tank|month|fill|voyage|run|outing|@hours|@days|@distance"
_HEADER = "header|expansion|surge|degas|coolant|radiator|rad tank|bottle|reservoir"
_WHO = "supplier|rebuilder|vendor|agent|fitter|reconditioner|manufacturer|oem|distributor|seller"
_FLAP = "anti-drain|antidrain|anti-drainback|antidrainback|anti-drain-back|drainback|check"
#: the finding, by what is said when it is there
SIGHTS_NOTED: dict[str, tuple[str, ...]] = {
    "oil_streams_from_open_hole": (
        "oil? =pours|=gushes|=streams|=jets|=pouring|=gushing|=streaming out? behind|from|at|of behind? the? cam|timing|front|rear|back|camshaft|pump gear|gears|sprocket|chain|plate|drive",
        "oil? =pours|=gushes|=streams|=jets|=pouring|=gushing|=streaming .. open|empty|missing hole|plug|gallery|drilling",
    ),
    "engine_runs_normally": (
        "engine|running noise|noises|sound|sounds ,|and|&|/ temperature|temp|temperatures|vibration all|both? normal|ok|okay|fine|good",
        "turns|turning|revs|runs|spins over? freely|sweetly|nicely and|& quiet|quietly|smooth|smoothly|sweetly|well",
    ),
    "lamp_on_with_wire_off": (
        "lamp|light|alarm|buzzer|warning is|was? stays|stayed|still|on|lit|persists|persisted|remains|continues|sounding on|lit|sounding? "
        "with|when|even with? the? oil? pressure? switch|sensor|sender|wire|lead|plug wire|lead|plug? =off|disconnected|unplugged|removed|isolated",
        "switch|sensor|sender|switch-wire wire|lead|plug? unplugged|disconnected|isolated ,|and|but|: the? alarm|lamp|light|buzzer|warning persists|persisted|still|stays|stayed|remains|remained|continues",
    ),
    "lamp_dead_with_key_on": ("bulb is|was|has? gone|failed|u/s|duff|dud",),
    "oil_thin_on_stick": (
        "oil drips|runs|pours|drops|comes off|from|out|just? the? stick|dipstick? like|as-thin-as water|paraffin|diesel",
    ),
    "capped_low": (
        "@not =rise|=rises|=increase|=increases|=climb|=climbs|=change|=changes|=vary|=respond with|to|above|as|when the? engine? speed|revs|rpm|throttle",
        "no =rise|=increase|=change|=response|=gain with|to|above|off|as speed|revs|rpm|throttle|idle",
    ),
    "level_risen": (
        "nobody|none|noone|not|never|without topped|added|filled|topping|adding it|up|oil|anything? .. over|above|past full|mark|max|high",
        "over|above|past the? full|max|mark|upper mark|line? ,|and|but nobody|none|nothing|no|never|not|without oil? topped|added|filled|topping|adding",
        "level is|was|has? up|risen|rising|higher|gone again|up|since|without|overnight",
    ),
    "bright_soft_metal": (
        "glitter|flakes|flake|metal|bits|slivers|specks|shavings ,|and|but|, is|are|it? not|non|@not magnetic|magnet|stick|picked|attracted",
    ),
    "level_correct": (
        "level|oil|dipstick|stick|in|mid|half|middle|within of?|the? crosshatch|cross-hatch|hatch|hatching|hatched area?",
        "level|oil mid|half|middle|centre|center|in|within of|way|up? the? crosshatch|cross-hatch|hatch|hatching|hatched",
        "correct|right|proper grade|type|spec|viscosity and|&|,|+ quantity|amount|level",
        "grade|type|spec|viscosity and|&|+ quantity|amount|level both? correct|right|ok|okay|good|checked",
        "oil @grade ,|and full",
        "full|filled of|with clean|fresh|new|good @grade|oil",
        "sump|crankcase|oil|it full to? the|mark|line",
    ),
    "oil_grade_as_manual": (
        f"oil|grade|type|viscosity|weight as|per|to|according the? to? the? {_BOOK}",
        f"@grade as|per|to the? {_BOOK}|recommended|requirement",
        "oil correct|right type|grade|spec|weight|viscosity",
        "right|correct oil? type|grade|spec|viscosity of? oil?",
        "level|full|quantity|amount|fill and|&|+ right|correct type|grade|oil|spec",
        "specified|recommended|correct oil|grade|@grade in|used|fitted|grade? it|use?",
    ),
    "oil_used_fast": (
        f"uses|using|used|burns|burning|drinks|takes|needs|needing|topped|topping|adding|added|consumes|consuming|losing|loses "
        f"about|up|over|nearly|some|roughly? @volume of? oil? {_PER} {_SPAN}",
        "uses|using|used|burns|burning|drinks|takes|needs|consumes|consuming|losing|loses about|up|over|nearly|some|roughly? @volume of? oil? @days|@hours|@time",
        "topped|topping|adding|added|needs|takes up? @volume daily|weekly|nightly|hourly",
        f"@volume of? oil? added|topped|put|used in|up? {_PER} {_SPAN}",
        f"jug|can|drum|tin|bottle|gallon|litre|liter|quart of oil|@grade|engine oil? {_PER} {_SPAN}",
    ),
    "coolant_level_falling": (
        f"{_HEADER} topped|topping|needs|filled|filling|refilled|drops|dropping|dropped|down|empties|emptying|loses|losing|falling|uses|using up?",
        "coolant|water|header tank? topped|topping|added|adding up? every|each|daily|per|@volume",
        "coolant|water use|usage|consumption|loss",
    ),
    "milky_film_in_filter": (
        "papers|paper|pleats|element|elements|media sticky|slimy|gummy|tacky|grey|gray and|& grey|gray|sticky|slimy|milky|gummy|white",
    ),
    "filter_not_listed": (
        "supermarket|petrol-station|gas-station|no-name|noname|unbranded oil? filter",
        "filter is|was|came one|a? from|off the|a supermarket|petrol-station|gas-station|market-stall",
        "filter|box|cartridge|number is|was|belongs|for? for|to a|another|different|hydraulic|gearbox|fuel|wrong engine|filter|return|application|hydraulic",
        "wrong|incorrect|mismatched|non-listed|unlisted|superseded oil? filter|cartridge|element|part-number",
        "wrong|incorrect|mismatched|non-listed|unlisted|superseded part number",
    ),
    "maker_calls_it_normal": (
        f"{_WHO} says|said|told|reckons|claims|insists|states|maintains its|it|is|that|it's|all|this? is? ok|okay|fine|normal|acceptable|good|within",
    ),
    "lab_viscosity_low": (
        "viscosity @number % down|low|under|below|lower|less|off",
        "viscosity down|low|dropped|fallen by? @number %",
        "sheared|thinned down|out of|from grade|@grade",
    ),
    "glycol_found": (
        "sodium|potassium|boron @number ,? and|&? potassium|sodium|boron|silicon @number",
        "sodium and|&|/ potassium up|high|elevated|raised|present|found",
    ),
    "oil_very_cold": ("below|under|at|in|around|about|to minus|- @number|@temperature",),
    "ten_seconds_or_more": (
        "@minutes before|until|for .. pressure|gauge|reads|registers|lamp|light",
    ),
    "locked_then_freed": (
        "seized|locked|stuck solid|tight|up? ,|and|but freed|came|broke|turned off|free|loose|again|later|next|when|after",
        "seized|locked|tightened up|solid|hot? ,? then|and|but turns|turned|turning|free|freed|ran|runs|again|cold .. cold|cool|later|again|day|day|off|up",
    ),
    "rap_dulled_by_cut_out": (
        "knock|rap|noise|it halves|halved|softens|softened|eases|eased|dulls|fades|goes|less|quiet|quietens|drops|disappears|gone|stops when|with|if|once .. plug|injector|lead|pipe|cylinder|line",
        "halves|halved|softens|eases|dulls|quietens|disappears|less when|with|if|once .. plug|injector|lead|pipe|cylinder|line .. pulled|off|cut|cracked|shorted|loosened|slackened|removed|out|undone|disconnected",
    ),
    "turbo_shaft_loose": (
        "turbo|turbocharger|shaft|wheel|compressor|turbine shaft|wheel|radial|axial|rotor? play|float|movement|clearance excessive|too|bad|over|out|big|large|beyond|visible",
        "excessive|too|bad|big|lots|lot|visible much|of|radial|axial? play|float|slop|movement in|of|on the? turbo|turbocharger shaft?",
        "shaft play excessive|beyond|over|out",
    ),
    "oil_in_turbo_outlets": (
        "compressor|turbo|turbocharger|intercooler|boost|charge outlet|pipe|pipes|hose|hoses|housing|side|elbow wet|oily|full|pool|pools|pooled|running|dripping|swimming|soaked with|of|in|inside? oil?",
        "oily|oil inside|in the? intercooler|boost|charge|turbo pipe|pipes|hose|hoses|outlet",
    ),
    "gone_at_the_next_start": (
        "pressure|gauge|reading|fine|normal|good|ok|@pressure .. monday|tuesday|wednesday|thursday|friday|saturday|sunday|yesterday|evening|night ,|and|then|but? @pressure|none|nothing|zero|gone|low .. monday|tuesday|wednesday|thursday|friday|saturday|sunday|today|morning|next",
    ),
    "dipstick_not_its_own": (
        "dipstick|stick|tube looks|is|was|seems|found too? shorter|longer|different than|from|to the? port|starboard|other|original|sister|one",
        "wrong|incorrect|another|different dipstick",
        "wrong|incorrect|another|different stick|tube fitted|in|for|found|from",
    ),
    "stick_marks_wrong": (
        "drained @volume .. stick|dipstick reads|read|shows|showed|said|says full",
    ),
    "needle_follows_loads": (
        "alarm|lamp|light|gauge|needle|fault|reading .. only when|while|with|if the? .. charger|inverter|radio|heater|lights|compressor|thruster|pump is|runs|running|on|starts",
    ),
    "panel_half_or_double": (
        "reads|reading|shows|showing|gauge|exactly exactly|just|about|almost|nearly? half|double|twice of? the|what|that",
    ),
    "sender_not_for_gauge": (
        "on|by|for|of|to the? old scale",
        "sender|sensor|transmitter|sending-unit stamped|marked|labelled|is|for for? single|dual|twin|two|one station|stations",
        "sender|sensor|transmitter .. wrong|different|other range|ohms|curve|resistance|type|scale",
    ),
    "slow_needle": (
        "stays|stayed|hangs|hung|remains|sits up|there long|well|minutes|after|for after|minutes|of|stopping? stopping|shutdown|stop|engine|switching",
    ),
    "wrong_shells_fitted": (
        "shell|shells|insert|inserts|bearing|bearings back|backs? is|was|were|are? stamped|marked|numbered|etched .. std|standard|oversize|undersize .. others|other|rest|remaining|mixed",
        "one|two|shell|shells|cap .. std|standard .. others|rest|remaining .. undersize|over|under|@number|@length|.25",
        "mixed sizes|sets|shells of? shells|bearings|fitted?",
    ),
    "debris_on_relief_seat": (
        "something|speck|sliver|bit|chip|flake shiny|bright|silver|metallic|of? metal|swarf? on|under|across the? seat|ball",
    ),
    "relief_adjuster_no_effect": (
        "adjuster|adjusting-screw|screw|setscrew wound|screwed|turned|run|set fully|right|hard|all-the-way? in|out|down|up|home .. no effect|change|difference|response|alteration|reaction|result",
        "adjuster|adjusting-screw|screw .. no response|reaction|effect|alteration",
    ),
    "oil_grade_too_heavy": (
        "@thick .. handbook|manual|book|maker|spec says|wants|calls|specifies|requires|: for? @thin",
    ),
}
#: the finding, by what is said when it is not there
_IN_SPEC = (
    "within|in|inside|to|mid the? spec|limits|limit|book|tolerance|specification|tolerances|figures"
)
_CLEAR = "measured|remeasured|checked|re-checked|recorded|all|both|were|was|are|is|found|and|,|written|plastigauged"
SIGHTS_NOTED_ABSENT: dict[str, tuple[str, ...]] = {
    "second_instrument_disagrees": (
        "both|two|the gauges agree|match|tally",
        "both|two gauges say|show|read|give|are exactly? the? same|alike",
        "lamp|light and gauge|needle agree|match|tally",
    ),
    "main_clearance_too_wide": (
        f"main|mains|crank|crankshaft|bearing|bearings bearing? clearance|clearances {_CLEAR}? {_CLEAR}? down? {_CLEAR}? {_IN_SPEC}",
        f"main|mains|crank|crankshaft|bearing|bearings bearing? clearance|clearances {_CLEAR}? {_CLEAR}? down? {_CLEAR}? mid-spec|in-spec",
    ),
    "rod_clearance_too_wide": (
        f"rod|rods|big-end|big-ends|crank|crankshaft|bearing|bearings bearing? clearance|clearances {_CLEAR}? {_CLEAR}? down? {_CLEAR}? {_IN_SPEC}",
        f"big end|ends clearance|clearances {_CLEAR}? {_CLEAR}? {_IN_SPEC}",
        f"rod|rods|big-end|big-ends|crank|crankshaft|bearing|bearings bearing? clearance|clearances {_CLEAR}? {_CLEAR}? down? {_CLEAR}? mid-spec|in-spec",
    ),
    "end_clearance_wide": (f"pump .. end clearance|float|play {_CLEAR}? {_IN_SPEC}",),
    "gear_backlash_wide": (
        f"pump .. backlash {_CLEAR}? {_IN_SPEC}",
        f"pump .. backlash and|& end? clearance|float|play {_IN_SPEC}",
    ),
    "turbo_shaft_loose": (
        "turbo|turbocharger shaft? end? play|float|clearance|movement is|was|found? ok|okay|fine|normal|good|within|in|negligible|minimal",
        "turbo|turbocharger checked|inspected|spins ok|fine|good|freely|free",
    ),
    "copper_and_lead_high": (
        "ok|okay|normal|fine|low|good|clear|unchanged for|on|in =lead|=copper and|&|/ =lead|=copper",
        "=lead|=copper and|&|/ =lead|=copper ok|okay|normal|fine|low|good|unchanged|steady",
    ),
    "pump_belt_off": (
        "scavenge|dry-sump|drysump|pump|sump belt is|was|found|checked? tight|ok|good|fine|intact|tensioned|sound",
    ),
    "engine_ran_hot": (
        "noise|noises|sound|vibration|smoke ,|and|&|/ temperature|temp|temperatures|temps all|both? normal|ok|okay|fine|good",
    ),
    "fuel_smell": ("no fuel|diesel|petrol smell|dilution in|of|on? oil|it|stick?",),
    "drive_partner_stopped": (
        "governor|distributor|rotor|tacho|tach|tachometer|injection-pump still|all works|working|turns|turning|runs|drives|ok",
    ),
}
