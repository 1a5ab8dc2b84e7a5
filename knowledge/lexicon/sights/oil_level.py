"""Words for how high the oil stands, and for oil put in."""

from __future__ import annotations

from knowledge.lexicon.words.names import STICK

_LEVEL = "level|levels|dipstick|=stick"
_IS = "is|was|are|were|looks|looked|checks|checked|reads|read|seems|seemed|shows|showed|showing|has|been|stays|and|always"
_MARK = "mark|marks|line|lines"
_FULL = "full|max|maximum|top|upper|high"
_LOW_MARK = "add|min|minimum|low|bottom|lower"
_AS_IT_SHOULD = (
    "good|ok|okay|fine|correct|full|right|normal|perfect|alright|topped|proper|=spot-on|adequate"
)
_GLASS = "sight-glass|sightglass|window|glass|eye"
_STICK = "stick|dipstick"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "level_correct": (
        "dipped it|her|the? oil|sump|engine? , spot|dead|bang on",
        "oils|oil|level right|exactly|just where it should|ought|normally be|is|sits",
        "right|correct|proper|full amount|quantity|measure of oil in|on",
        f"dipstick|stick|dip|{_LEVEL} {_IS}|reads|read|showed|shows|was|looked|looks|says? =correct|=perfect|=fine|=ok|=okay|=spot-on",
        "checked|check|dipped the? =oil|=dipstick and|&|plus|,|then|also water|coolant|belts|everything|fluids|radiator? ,|and|,? "
        "all|no|=fine|=ok|=good|both|found? =issues|=problems|=fine|=ok|=good|=well|=correct",
        "=oil|dip|dipped|level {_IS}|about|roughly|just? in|at|around|about the middle|midpoint|half-way|halfway of|up|on the? dipstick|stick|marks".replace(
            "{_IS}", _IS
        ),
        f"oil? {_LEVEL} {_IS}|remains|always|remained? {_IS}? at|to|on|all|still|perfectly? {_AS_IT_SHOULD}",
        f"oil|{_LEVEL} {_IS}? {_IS}? spot on",
        "level|oil|reads|reading|is|at mid|middle|centre|center|midway|halfway up|on|of? the? dipstick|stick|marks|range|glass|window",
        f"oil|{_LEVEL} {_IS}? at|to|on|up|right? at|to|on|between the? two? {_MARK}",
        f"{_LEVEL} {_IS}|in? between|midway|halfway|half|middle|mid .. {_MARK}",
        "half|halfway|midway|middle|somewhere way? between|of the? marks|max|min|add|full",
        f"between the? two|dipstick|{_FULL}|{_LOW_MARK}? {_MARK}",
        f"{_LEVEL} {_IS}? in|within the? safe|hatched|crosshatch|crosshatched|normal|right|green range|area|zone|limits",
        f"{_LEVEL} .. unchanged|constant|steady|stable",
        f"{_LEVEL} never|not low|dropped|changed|moved|down",
        "plenty|lots|loads of? good? oil",
        "@volume on|showing|shown|shows the? dipstick|stick",
        "oil is|was|right|topped|all? full|topped",
        "oil|level is|was|looks|looked|and|all? clean|fresh|new|good|golden|clear and|& full|up|right|topped",
        "oil is|was|kept? topped|filled? up|right? to the? mark|line|full|max|brim",
        "full on the? dipstick|stick",
        "=oils =on|=at|=to|=up on|to|at? the? mark|marks|line|full",
        "dipstick|stick ok|fine|good|full",
        f"right|correct|proper|full|normal oil? {_LEVEL}",
        "right|correct|proper amount|quantity of oil",
        "sump|pan is|was? =full",
        "sump|pan|its|engine is|was? full|topped|filled of|up|with|to? the? good|fresh|clean? brim|line|mark|oil",
        f"oil|{_LEVEL} {_IS}? right|up|dead|bang|still? at|to|on|up the? full|max|maximum|top|upper {_MARK}?",
        f"oil|{_LEVEL} {_IS}? =full|max",
        "level|oil where it should be",
        "dipstick|stick|level .. and|but its|it|it's|is|was|thats|reads? about|at|just|around|only? halfway|half-way|midway|half|full|good|fine|ok",
        "oil checked|dipped|topped|filled|added|up? and|but its|it|it's|is|was|thats|reads? about|at|just|around|only? halfway|half-way|midway|half|full|good|fine|ok",
        f"{_LEVEL} still? {_IS} {_IS}|still? about|at|around|nearly|over|roughly? @share",
        f"{_LEVEL} .. bit|little|just|touch|hair? below|above|under|over|about half|halfway|midway|middle",
        f"{_LEVEL} {_IS}? about|at|just|over? half|halfway|midway way?",
        f"oil {_LEVEL}? checked|check|checks and|was|is|found? ok|fine|good|full|right|correct|correctly",
        f"{_LEVEL} checked|check|checks and|was|is|found? ok|fine|good|full|right|correct|correctly",
        "adequate|sufficient|enough|ample oil in|on|there?",
        "oil quantity|contents|amount was|is|were|showed|checked? normal|full|adequate|correct|ok|fine|good",
        "oil ok|okay|good|fine and|,|when|.",
        "@volume in|on the? sump|pan|stick|dipstick",
        "checked|check|dipped the|my? oil|level|dipstick and|-|,|: it|was|its|level|all|thats? was|is? fine|ok|good|full|correct|right|normal",
        "oil|level is|was where it should be|was",
        "plenty|lots in the? sump|pan|tank|there",
        "on|at|to|right the? max|full|upper|top mark|line",
        "level|oil is|was|are|were|looks|looked|reads|shows? a? shade|touch|hair|fraction|smidge|smidgen|tad|whisker|gnats|bit|little|just|slightly under|below|off the? full|max|maximum",
        "still|was|is on|at full",
        "dealer|garage|mechanic|seller|shop|owner|they|he|she .. says|said|reckons|told|claims|tells me|us? the|my? oil|level|=it "
        "level? is|was|looked? full|fine|ok|okay|good",
        "plenty in it|her|there|the|sump|tank|engine?",
        "plenty of? oil in|on|there|anyway|though|by|so?",
        "full to|up-to|at the? mark|line|threads|filler",
        "dead|bang|right|spot on|at|to the top|upper|max|full|high line|mark",
        "stick|dipstick shows|reads|says|is|at|on full|max|halfway|middle|plenty",
        "dipstick|stick|dip is|was|reads|shows|says|at|reading? about|around|just|at|to? half|halfway|mid|middle way|scale|stick|up?",
        "dipstick|stick|dip is|was|reads|shows|says|at|reading? about|around|just|at|to? @share up?",
        f"half|halfway|middle|mid way? up|of|on|in the {_GLASS}",
        "half|halfway|middle|mid way? up|of|on|in the sight glass",
        f"oil|level|its|is up|right|bang|spot? to|in|at|on the? middle|centre|center|half|top? of? the? {_GLASS}",
        "oil|level|its|is up|right|bang|spot? to|in|at|on the? middle|centre|center|half|top? of? the? sight glass",
        "level|oil|dipstick|stick|in|mid|half|middle|within of?|the? crosshatch|cross-hatch|hatch|hatching|hatched area?",
        "level|oil mid|half|middle|centre|center|in|within of|way|up? the? crosshatch|cross-hatch|hatch|hatching|hatched",
        "correct|right|proper grade|type|spec|viscosity and|&|,|+ quantity|amount|level",
        "grade|type|spec|viscosity and|&|+ quantity|amount|level both? correct|right|ok|okay|good|checked",
        "oil @grade ,|and full",
        "full|filled of|with clean|fresh|new|good @grade|oil",
        "sump|crankcase|oil|it full to? the|mark|line",
        "sight glass|window half|three-quarters|two-thirds full|way|covered",
        "half|halfway|midway|middle up|of? the? sight? =glass|=window",
        "is|its|it's|was|still|right|bang|spot up? to|on the? =mark|=line|=notch",
        "bang|spot|right on the? mark|line|full-mark",
        "half way|halfway|midway|middle|mid between|of the? marks|min-and-max|lines|notches|min",
        "run|keep|kept it on|at|up-to the? top|full|upper|max mark|line?",
    ),
    "level_slightly_high": (
        f"slightly|bit|touch|just|little|shade|fraction|hair above|over|past|too the? {_FULL}|normal|mark|high {_MARK}?",
        "bit|little|touch too? much oil",
        "slightly overfull|overfilled",
        "level|oil is|was|seemed|looked|looks|seems? slightly|little|bit|touch elevated|raised|high|up",
    ),
    "level_high": (
        "overfull|overfilled|overfilling",
        "over full|filled",
        "far|way? too much oil",
        "too|way|well|very|much|far|rather too? high on|up the? dipstick|stick|gauge-rod|dip-stick",
        f"way|well|far|inch|inches|much|@length|@volume above|over|past the? {_FULL}|{_MARK} {_MARK}?",
        "@volume|quarts|litres|liters too much|many|high",
        "way|far|much too much|many quarts|litres|liters|oil|in|=it|there",
        f"{_LEVEL} {_IS}? way|much|far|too too? high",
        f"above|over|past the? full|max|maximum {_MARK}?",
        f"above|over|past the? top|upper|high {_MARK}",
        "@volume over|overfull|too over? full|mark|high|level?",
        "oil is|was|right|all|comes|stands|came up|way to|in the? neck|brim|filler|top-of-the-tube",
    ),
    "level_risen": (
        "level|stick|dipstick|oil .. inch|half|cm|finger|lot|way|well|quart|litre|bit .. over|above|past .. though|although|but|yet|without|and .. never|not|"
        "nobody|havent|hadnt|without|didnt|nothing|no",
        "level|stick|dipstick|oil .. over|above|past|up|higher|gone-up .. never|not|havent|hadnt|nobody|without|didnt added|add|adding|topped|put|poured",
        "havent|never|not|didnt|nobody|hadnt|have added|put|poured|topped|adding any|a|one|oil|anything|it|in? drop|oil|drops|any|up .. up|over|higher|above|"
        "risen|more",
        "more oil on|in the? stick|dipstick|it|there than|now|each|every|yet",
        "more in|on the? stick|dipstick than|now|each|every|yet",
        "level|oil gone|going|creeping|climbing|come|crept|went|risen|rising up|past|over|above? by|about? inch|cm|quarter|half|finger|an|a? inch|half|finger|"
        "centimetre|quart|litre",
        f"{_LEVEL} has|is|keeps|was|had|still|slowly? rising|risen|rises|rose|climbing|climbs|climbed|increasing|"
        "increased|increases",
        f"{_LEVEL} has|is|keeps|had|was|slowly? going|goes|gone|went|come|came|creeping|crept up",
        f"rise|rising|increase in oil? {_LEVEL}",
        "making|gaining|growing|makes|gains oil",
        "more oil than|on .. put|started|before",
        "sump|tank|stick|level was|is|got fuller|higher than .. before|started|filled",
        "level|oil|it had|has|is? gone|come|crept|went|climbed|risen up? by|about @volume",
        "level kept|keeps creeping|going|coming|rising up?",
        "nobody|none|noone|not|never|without topped|added|filled|topping|adding it|up|oil|anything? .. over|above|past full|mark|max|high",
        "over|above|past the? full|max|mark|upper mark|line? ,|and|but nobody|none|nothing|no|never|not|without oil? topped|added|filled|topping|adding",
        "level is|was|has? up|risen|rising|higher|gone again|up|since|without|overnight",
    ),
    "level_read_wrongly": (
        "checked|checking|read|measured .. on a|the slope|hill|trailer|incline|side",
        "checked|checking|read|measured .. straight|right|immediately|soon|just after|hot|away",
        "checked|dipped|read it? while running|hot",
    ),
    "dipstick_low": (
        "on|at|below|under|just|right-on|touching|down-to the|its? min|minimum|add mark|line|level|dot|notch|hole|one?",
        "on|at|below|under|just|right-on|touching|down-to the|its? low|lower|bottom mark|line|level|dot|notch|hole|one",
        "level|oil|stick|dipstick is|was|on|at|near|below|just|about|down|right|only|well|barely|under|to|the|around? the|its? =min|=minimum",
        "bit|little|touch|shade|tad low|down on|at the? dipstick|stick|mark",
        "oil|level is|was|had|has|went|gone =down a|quite? bit|little|touch|lot|tad",
        "hardly|barely|scarcely|almost|next any|no|to-no|to oil showing|on|at|left|to? on|in|the? the? dipstick|stick",
        f"oil? {_LEVEL} {_IS}|got|gotten|found|getting? a? bit|quite|little|very|way|too|well|rather|really|slightly|"
        "somewhat|only? low|down|short",
        "oil {_IS}|found|getting|running? a|bit|quite|little|very|too|really? low|down".replace(
            "{_IS}", _IS
        ),
        f"low|insufficient|falling|dropping oil {_LEVEL}|quantity",
        "low|short on|of oil",
        "@volume low|down|short|under|shy|light|missing|below",
        "@number of @volume down|low|short|missing|left|gone",
        "down|low|short by|about|over|nearly|almost? @volume",
        f"at|on|near|touching|only|just|barely the? {_LOW_MARK} {_MARK}",
        "barely|hardly|just on|touching|showing|shows|reaching|touches|reaches|wetting|registering on? the? dipstick|"
        "stick|bottom|tip|end",
        "oil lost|=lost",
        "lost|losing|loses a? quite? lot|some|much|half|lots|@volume of? the|its|my? oil",
        "needed|needs|wants topping|filling up?",
        "topped|topping it|the|oil? up|off? with|by|about|nearly|over? @volume",
        "had|have to add|put|pour in? @volume",
        "added|poured|put in|another? @volume .. bring|brought|reach|full|mark",
        f"below|under|off|beneath the? {_LOW_MARK} {_MARK}",
        f"oil|{_LEVEL} {_IS}? below|under|beneath the? add|min|minimum|low {_MARK}?",
        "only|just|barely|about? @volume of|oil? left|remaining|remained",
        f"oil? {_LEVEL} {_IS}? right|way|well down",
        "took|needed|wanted|swallowed|needs|takes|required about|nearly|over|almost|another? @volume of? oil",
        "took|needed|wanted|needs|takes|required about|nearly|over|almost|another? @volume to top|fill|bring|get|reach",
        "just|only|barely a? .. on|at the? bottom|very|end|tip .. dipstick|stick",
        "just|only a drop|smear|touch .. dipstick|stick",
        f"{_LEVEL}|oil {_IS}? well|way|just|far|a|little|inch? below|under the? {_LOW_MARK}|normal? {_MARK}",
        "dipstick|stick just|barely|only|hardly|scarcely showed|shows|showing|registered|touched|wetted|shewed? oil|any|wet",
        "only|just|barely a? trace|drop|touch|smear|bit of oil on|at|in|showing? the? dipstick|stick|bottom|tip",
        "down|dropped to|below|at the? minimum|min|add|low mark|line?",
        "less than|about|only|under half|third|quarter the|of|its? the|its? oil left|remaining|remained|in",
        "half|third|most of? the|its? oil was|had|has|is? gone|lost|missing",
        "oil contents|quantity|supply was|were|is|found|getting? low|down|short",
        "below|under|at minimum|min on the? dipstick|stick",
        "needs|needed|wants|wanted|took|take some|more|bit|a|of? oil",
        "took|needed|needs|wanted @volume",
        "half|quarters @volume short|low|down",
        "only|just @volume|@number|two|three|four in|on|of|came|left|showing|on|oil|quarts|litres .. drained|sump|stick|dipstick",
        "stick|dipstick|level indicated|showed|showing|read only|just? @volume",
        "@volume had|needed|have to be? added|put|make",
        "oil remaining .. less|under",
        "dipstick|stick|level|oil|sump .. half|third|quarter full|empty",
        "below|under|beneath|off the? =add",
        "put|poured|added @volume in|into|before .. showed|registered|appeared|mark",
        "sight-glass|window|glass =empty|=blank",
        "sight glass|window =empty|=blank",
        "below|under the? lower|bottom|min? line|mark of|in|on the? sight|glass|window glass?",
        "level|oil had|has|is|was dropped|fallen|gone|down .. @volume|quart|litre|liter|pint|half-litre|litres|quarts|pints",
    ),
    "dipstick_dry": (
        "dipstick|stick out|up? and it|that was|is|came bone|completely|totally? dry|empty|bare",
        "checked|pulled|dipped|looked the|my|her|oil? dipstick|stick and|, there? was|is|had|nothing|no|none|zero|zilch nothing|none|oil|drop|zilch|nowt|was|"
        "on|at? on|at? it|all?",
        "stick|dipstick .. nothing|nowt|zilch|zero|none|nada on|showing|at it|all?",
        "dipstick|stick came|comes|was|is out|up? as? dry|bare|clean",
        "not|no a|even? sign|hint|trace|drop|smear of oil on the|my|it? dipstick|stick|it",
        "dipped it|her|the? oil|sump|engine? and|, ,? got|found|had|there? was? nothing|none|nowt|zilch",
        "oil? level is|was|stays|stayed|at|reads|read|showed|still at? almost|nearly? zero|nothing|nil",
        "dipstick|stick|sump|crankcase was|is|came|reads|read|showed|completely|totally|up? =empty",
        "=empty of oil",
        "as? good as empty|dry",
        "no|little|any oil left|remaining|whatsoever|inside",
        "out of oil",
        "nothing|dry|=clean|zero|none on|showing|at|registering on|all|at? the? dipstick|stick",
        "no oil at|was|is|showed|shows|even|visible? showing|on|at|all|registering? all|to|on? the? dipstick|stick",
        "@not oil showing|on|at|all? on? the? dipstick|stick",
        "@not even|really|actually? touch|touching|reach|reaching|register|registering|show|showing on|even|the? the? dipstick|stick",
        "dipstick|stick was|is|bone|came|comes|come|reads|read|pulled|out|completely|absolutely? out|up|bone|"
        "completely? dry|=empty",
        "not a drop of? oil? in|on|left|showing|remained it|her|the? engine|sump|dipstick|stick|pan?",
        "dipstick|stick came|comes|come out|up completely|perfectly|absolutely|totally|bone|as? =clean|=empty|=bare",
        "run|ran|running|went|bled completely|itself? dry",
        "run|ran|running|went out of oil",
        "off the? bottom|end of? the? dipstick|stick",
        "checked|check|dipped the? oil|level|dipstick and|-|,|: there? is|was? none|nothing|zero",
        "checked|check|dipped the|my|its? oil|level and|-|,|: it|that? is|was|were? completely|bone|almost|nearly|totally? =empty|dry",
        "none|nothing showing|registering",
        "none|nothing left|there on|at|in the|its? dipstick|stick|sump|pan|engine|glass|it|all",
        "oil|dipstick|stick|sump|pan|engine .. none|nothing left|there",
        "oil had|has|was|is|were? all|completely? gone|disappeared|vanished",
        "all of? the|its|my|her? oil was|is|had|has? gone|lost|out|dumped|disappeared|vanished|drained",
        "sump|pan|tank|crankcase was|is|found|nearly|almost|completely|and|practically|came|as|good? nearly|almost|found|completely|practically|as|up|good? =empty|dry",
        "engine|motor was|is|found|nearly|almost? =empty",
        "no oil left|inside",
        "no oil in|left|inside in|the|it|left|my? it|sump|pan|engine|motor|crankcase|tank|block|car|truck|van|bike|boat|tractor",
        "no oil was|were|is|could|be|to? found|seen|present|be in|on|inside|left",
        "contain|contained|contains|had|holding|held no|little|hardly oil",
        "less|under than? a? @volume left|remained|remaining|in",
        "not|no a? trace|sign|hint|drop of oil on|in the? stick|dipstick|engine|sump",
        "dry|devoid|void|empty|starved of oil",
        "hardly|scarcely|barely|practically|virtually|almost any|no oil left|in|on|inside|at",
        "no measurable|visible|detectable|oil oil? on|in|at the? dipstick|stick|sump|engine",
        "contained|held almost|practically|virtually|hardly? no|any oil",
        "dipstick|stick .. nothing|none on it",
        "cupful|cup|eggcup|pint|drop of? oil was all .. left",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "dipstick_low": (
        "quart|quarts|litre|litres|liter|liters|pint|pints + low|shy|down|short|missing|under|light - thicker|heavier|quieted|high|over|pressure|drained|used|per|every",
        f"{_STICK}|level|oil + below|under|barely|just_touching|bottom|minimum|on_min|below_min|add_mark|add_line|low_mark + min|mark|add|=stick|line|tip|minimum - not|pressure|freezing|no|fuel|coolant|pan|sump|dash",
        "oil|level|sump|it + minimum|under_minimum|below_minimum|far_too_low|too_low|very_low|@not_much_oil_left|low_on_oil|under_min|below_low|quart_low|down_by|well_down|half_empty|"
        "critically_low|dangerously_low - pressure|reads|reading|shows|showing|temperature|coolant|temp|water|fuel|gauge|gas",
        "@volume|quart_and_a_half|litre_and_a_half|half_a_gallon|pint_and_a_half|couple_of_quarts|couple_of_litres + short|low|shy|down|to_fill|to_top|added|needed|required|missing|"
        "to_bring - per|every|over|too_much|coolant|antifreeze|radiator|water|fuel|overfull|a_day|hour|drained|week|miles|tank|too_low_a|used|high|adding|were_left|was_left|remained|thicker|heavier|quieted|calmed|settled|gallery|hole|port|filter_head|down_the|down_a|line|pipe",
        "not_much|@not_much|hardly_any|little|next_to_no + oil_left|oil_in_it|oil_in_the_sump|oil_remained|left_in_it|left_in_the_sump - pressure|rockers",
        "reads|read|level|oil|shows + low_on_the_stick|low_on_the_dipstick|down_on_the_stick|way_down|very_low|too_low|rather_low|well_low|dangerously_low|below_the_mark|below_low|under_the_mark - pressure|psi|gauge|needle|temperature|idle|coolant|fuel|light|its_way|making|all_the_way|trickle|running|found",
        "took|needed|wanted|required|swallowed|drank|accepted + @volume|litre|litres|quart|quarts|pint|pints + bring|fill|top|full|mark|before|to_get|up - change|every|filter|capacity|day|week|month",
        "past_the_low|under_the_hatch|below_the_hatch|past_low|under_min|bottom_of_the_stick|right_at_the_bottom|down_to_the_tip|off_the_bottom + mark|marks|level|oil|stick|had|was|it|dipped - pressure|needle|gauge|temp|knock",
        "needed|swallowed|drank|took + two|three|four|pints|quarts|litres|@volume|half + quarts|pints|litres|stick|showed|full|mark|level|and_a_half - change|hold|holds|filter|every",
        "looked_at_the_oil|checked_the_oil|checked_the_level|dipped_the_oil|dipped_it|oil_level|the_level & it_had_dropped|it_had_gone_down|had_gone_down|had_dropped|it_was_down|it_was_low|it_was_lower - pressure_had|gauge|needle|psi|coolant|fuel",
        "dipstick|stick + just|barely|only + tip|end|bottom|showing|wet|touching|drop - full|max",
        "@volume|quart_and_a_half|litre_and_a_half|quart|litre|pint + =down|=low|=short - thicker|heavier|quieted|calmed|settled|antifreeze|coolant|radiator|per|every|idle|pressure|pipe|inlet|hole|poured|the|over|coolant|water|pump|to_the|fuel|came",
        "low|down + on_level|on_oil_level - pressure|no|not",
        "dipstick|stick|level & down|short|shy & @volume - poured|filled|put|into|sump_plug|took|takes|drained|up|high|over_full|overfull|not|no|topped",
        f"{STICK} & short_of_the_l|well_short|below_the_l|under_the_l|under_the_bottom|shy_of_the_low|beneath_the_low|below_the_lower - above|not|full",
    ),
    "dipstick_dry": (
        "dipped|dipstick|stick|checked_the_oil & bone_dry|as_dry_as_a_bone|totally_empty|completely_empty|no_oil_left|not_a_drop - wiped|outside|engine_bay|pump|rockers|filter|weather|bilge",
        f"{_STICK} + nothing|dry|no_oil|bone|@not_a_drop|not_a_trace|no_trace|not_showing|@not_showing|@not_register - magnet|sticks_to|stick_to|wiped|wipe|not_dry|gauge|foam",
        "no|@not_any|not_a_drop_of|nil|zero|without_any + oil_left|oil_in_the_engine|oil_remained|oil_remaining|measurable_oil|oil_in_it|oil_in_the_sump|oil_whatsoever|oil_on_board|oil_at_all|oil_on_the_stick|"
        "oil_was_left - pressure|rockers|loss|leak",
        "sump|engine|crankcase|tank|dipstick|oil_tank + empty|bone_dry|completely_dry|as_dry|ran_dry|run_dry|had_run_dry|found_dry|totally_dry - gauge|outside|sound|wall|clean|fuel|underneath|"
        "externally|leak|petrol|drained_and|water|scavenge|running|empties|leaks|cowl|block",
        "only|just + cupful|cup|eggcup|pint|spoonful|dribble|half_a_pint|half_a_litre|trace + left|remained|remaining|came_out|drained|sump|of_oil - low|down|fuel|pipe|line|union|bearing|hole|port|pump|gallery",
        "no_oil_registering|no_oil_showing|oil_level_zero|level_zero|nothing_registered_on|came_out_dry|stick_dry|dipstick_dry|stick_was_dry|dry_stick|dry_dipstick|absolutely_no_oil_in|had_no_oil_in|had_no_oil_left|was_out_of_oil|ran_out_of_oil|run_out_of_oil|"
        "no_oil_in_her|no_oil_in_it|not_a_drop_in_it|not_a_drop_of_oil|engine_had_no_oil|no_oil_in_the_pan|no_oil_in_the_crankcase - pressure_out_of_oil",
        "dipstick|stick|level + couldnt_get_a_reading|@not_touch|@not_even_touch|no_reading|wont_register|didnt_register|@not_show|nothing_showing - pressure|gauge|clean|over",
        "level|oil + off_the_stick|off_the_dipstick|off_the_bottom|below_the_stick - runs|ran|drips|drops|dripped|like|pressure|no|not|gauge|wiped|cooled",
        "metal_strip|level_rod|dip_rod|level_stick|metal_rod & nothing|bone_dry|bare|no_oil|not_a_drop|came_out_dry - foam|marks",
    ),
    "level_correct": (
        f"{_STICK}|level|oil_level + full|right|between|correct|spot_on|fine|good|ok|max|top_line|top_mark|upper_mark|halfway + mark|marks|line|full|level|spot|is|was|was_at|on|at|checked|top - not|no|over|above|below|past|under|low|high|pressure|temp|light|lamp|gauge|inch|coolant|fuel|water|empty|filter|isnt|pump|cooler|smell|black|milky|dirty|flow|looks|colour|color|bilge|boot|idle|tank|sump_full|drain|analysis|sample|report",
        "inch|bit|shade|little|hair|touch|just|quarter|third|fraction + below_full|under_full|off_full|below_the_full|short_of_full|below_the_max|under_the_full|shy_of_full|below_max|under_max - well|way|quart|litre|filter|screen",
        "oil|level|oil_level|contents|quantity|sump|it + between_high_and_low|between_the_marks|adequate|to_the_brim|full_of_oil|filled_up|enough_oil|correct|spot_on|normal|up_to_level|to_the_mark|on_the_mark|"
        "halfway_up|up_to_the_mark|in_range|sufficient|ample - analysis|sample|report|normal_place|normal_position|its_normal|went_back|pressure|temperature|temp|not|light|lamp|gauge|@not|if|keeps|restored|grade|cooler|filter|fuel|coolant|viscosity|above|below|slightly_above|pump|low|smell|smells|colour|color|feels|temperature|rub"
        "flow|over_full|overfull|half|to_normal|reads|level_flight|in_level|engine|everything|cap|change|sound|note|grade_of|correct_oil",
        "@number|@range|six|seven|eight|nine + of_@number|out_of_@number|of_8|of_12 + quarts|litres|qt|qts|pints|quart - low|left|down|over|short|gone|lost|used|three|two|one",
        "stick|dipstick|level|oil_level + shows_full|shows_it_full|reads_full|says_full|at_full|on_full|to_the_mark|filled_correctly|dead_on|bang_on|perfect|where_it_should|right_up|good|in_the_middle|mid-way|midway|near_the_top|near_full|just_under_full - "
        "not|coolant|fuel|pressure|water|idle|under_idle|grade|temp|bilge|gearbox|low|over|@not|looking",
        "filled_correctly|filled_to_the_right|correctly_filled|full_of_clean_oil|plenty_in_it|had_plenty_of_oil|has_plenty_of_oil|enough_oil_in|oil_is_full|oil_was_full|oils_full|oil_full|full_oil|full_on_oil|oil_at_full|oil_up_to|oil_to_the - of_oil_to|added|adding|poured|full_of|full_of_metal|light|lamp|gauge",
        "oil|level|stick|dipstick|it|sump + where_it_should|up_to_full|to_the_line|at_max|right_up_to|to_the_top_mark|checked_twice|double_checked|spot_on|just_right + be|full|line|max|level|oil|stick|mark|twice|dipped|topped - not|pressure|temp|coolant|fuel|gauge|needle|rpm|bar|idle|over|psi|tank",
        "oil|stick|dipstick|level|its|sump|it + bang_on|spot_on|between_the_marks|between_marks|on_the_mark|at_the_mark|at_the_max|on_full|its_full|at_max|to_max|is_full|right_level|mid_stick|correct_level + full|mark|marks|max|level|line|oil|sump|stick|dipstick|quarts|litres - not|over|below|low|idle|timing|pressure|fuel|coolant|tank|grade|temp|load|throttle",
        "oil|level|sump + =right|=correct - dent|dented|right_under|right_behind|right_at|right_on|right_boot|right_leg|right_foot|covered|right_hand|pressure|grade|hand|side|now|away|not|ports|up|down|light|lamp|put|used|filter|weight|hot|kind|type|sort|wrong|after|through|over|back|there",
        "level & grade|viscosity & right|correct|fine|ok|as_they_should - not|wrong|pressure|too",
        f"{STICK}|level|dipped|lies|oil & between & low_and_full|the_two_lines|the_lines|the_notches|min_and_max|add_and_full|l_and_f|two_marks - not|@not|pressure|runs|half",
    ),
    "level_high": (
        f"{_STICK}|level|oil + inch|way|well|miles|long_way|far|quart|litre + over|past|above|too_high + full|mark|max|line|top|high - not|under|below|filter|cam|pan_floor|sump_floor|gauge",
        "too_full|way_overfilled|badly_overfilled|over_full|well_overfull|over_the_top_mark|above_the_top_mark|above_full|over_full_mark|past_the_full|above_the_full|over_the_max|above_max|over_max - slightly|little_over|quart_over_for|not|just|trial|hair|touch",
        "level|oil_level + @length|inch|inches + over|above|too_high|over_the_mark - under|below|no|not|pan|floor",
        f"oil|{STICK}|level & two_fingers|fingers|inch|very_too_much|way|far|@length|thumb & more_than_max|above_max|over_max|past_max|above_full|over_full|above_the_full|over_the_max|above_the_top - little|bit|hair|slightly|under|never|mm|not|touch|just",
    ),
    "level_risen": (
        "over|above|past|high|higher|overfull & full|max|mark|line|top & never_added|@not_added|nobody_added|without_adding|@not_topped|never_topped|"
        "@not_put_any|havent_added|hadnt_added|not_added|never_put - pressure|coolant",
        f"{_STICK}|level|oil_level + risen|rising|rises|gone_up|going_up|creeping_up|climbing|higher_than|went_up|increasing|rise|gained - pressure|idle|bilge|temperature|temp|water_level|comes_up_with|coolant",
        "making_oil|makes_oil|growing_oil + engine|it|motor|diesel|instead",
        "sump|level|oil_level + fuller|higher_than_before|keeps_rising|rising|risen|rose|getting_fuller|overfilling_itself|making_oil|creeping_up|gone_up - pressure|temperature|temp|coolant|gauge|needle|lamp|smoke|float|bilge|water|slowly_builds|with_revs",
        "more_in|more_oil|more_on|shows_more|higher|reads_higher + check|stick|it|than|every + every_time|each_time|than_last|added_none|than_before|than_i|month|day|none - pressure|revs|gauge|psi|temp|idle|lower",
        "more_oil|oil_level|level|oil + on_the_stick|than_i_put|than_when|gone_up|going_up|risen|rising|increasing|creeping_up|climbing + itself|than|keeps|stick|without|level|by - pressure|gauge|temp|needle|revs|coolant|idle",
        "level|oil_level + =up|crept_up|gone_up|climbs|climbing|risen|rising - glass|window|halfway|half|half_way|@part|@fraction|share|is_up|topped|to_the|with|brought|made|filled|up_to|no|not|pressure|temperature|fuel|coolant|keep|warmed",
        f"{STICK}|level & goes_up|risen|climbs|rises|grew|creeps|inch_past|higher & all_on_its_own|by_itself|itself|nobody_added|none_in|put_none|added_none|never_added|on_its_own|without_adding - pressure|cap|lifted|seated|four_inches|popped|tank",
    ),
    "level_slightly_high": (
        f"oil|{STICK}|level|it|put_in & barely_passes|bit_over|mm_above|hair_over|just_over|touch_over|slightly_over|shade_over|just_past|bit_above|tad_over|bit_past|slightly_past|just_above|whisker & max|full|notch|mark|line|top - pressure|well|inch|psi|not",
    ),
    "level_read_wrongly": (
        "dipped|checked|read|pulled_the_stick|checked_it|checked_the_bike & side_stand|leaning|on_a_hill|on_a_slope|second_i_shut|seconds_after|immediately_after|right_after_shutting|still_running|listing|@not_level|not_drained_down|on_the_trailer|heeled|nose_down|minute_i_shut|second_it_stopped|sidestand - foam|froth|bubbles|pressure|smell|metal|not_leaning",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "dipstick_dry": (
        "oil|quarts|litres|@volume + was_left|were_left|remained|remaining|still_in_the_sump|left_in_the_engine|left_in_the_sump|oil_on_the_stick - no|not|only|cupful|@not|dry|none|rockers|little|half_a|hardly|without|foam|glitter|water|metal|grease|cap|nothing|few|pressure|never|zero|pint|trace|bubbles|milky|like|thick|thin|sludge|"
        "runs_off|filler|smell|empty|gasket|dipstick_not",
    ),
    "dipstick_low": (
        f"{STICK} & above_the_low|above_the_add|not_low|over_the_low|above_min|above_the_bottom|not_below|not_under|above_the_l - over_the_full",
    ),
    "level_correct": (
        f"{STICK}|level|oil & @not_in_the_safe|not_between|@not_between|outside_the_marks|@not_showing_it_in|not_in_the_zone|safe_zone & not|@not|outside - pressure",
    ),
    "level_risen": (
        f"{STICK}|level & @not_risen|not_gone_up|no_higher|@not_gone_up|not_climbed|@not_rise|@not_climb - pressure|not_lower",
    ),
    "level_read_wrongly": (
        "dipped|checked|read & flat_ground|level_ground|on_the_level|level_floor|flat_floor & quarter|minutes|hour|settled|waiting|overnight|after - pressure|lean|between",
    ),
}
