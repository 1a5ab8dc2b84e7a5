"""What is seen or known of the oil's level, quantity and record."""

from __future__ import annotations

_LEVEL = "level|levels|dipstick|stick"
_IS = "is|was|are|were|looks|looked|checks|checked|reads|read|seems|seemed|shows|showed|showing|has|been|stays|and|always"
_MARK = "mark|marks|line|lines"
_FULL = "full|max|maximum|top|upper|high"
_LOW = "add|min|minimum|low|bottom|lower"
_GOOD = (
    "good|ok|okay|fine|correct|full|right|normal|perfect|alright|topped|proper|=spot-on|adequate|up"
)
#: the finding, by what is said when it is there
SIGHTS_OIL: dict[str, tuple[str, ...]] = {
    "level_correct": (
        f"oil? {_LEVEL} {_IS}|remains|always|remained? {_IS}? at|to|on|all|still|perfectly? {_GOOD}",
        f"oil|{_LEVEL} {_IS}? {_IS}? spot on",
        f"oil|{_LEVEL} {_IS}? at|to|on|up|right? at|to|on|between the? two? {_MARK}",
        f"{_LEVEL} {_IS}|in? between|midway|halfway|half|middle|mid .. {_MARK}",
        "half|halfway|midway|middle|somewhere way? between|of the? marks|max|min|add|full",
        f"between the? two|dipstick|{_FULL}|{_LOW}? {_MARK}",
        f"{_LEVEL} {_IS}? in|within the? safe|hatched|crosshatch|crosshatched|normal|right|green range|area|zone|limits",
        f"{_LEVEL} .. unchanged|constant|steady|stable",
        f"{_LEVEL} never|not low|dropped|changed|moved|down",
        "plenty|lots|loads of? good? oil",
        "@volume on|showing|shown|shows the? dipstick|stick",
        "oil is|was|right|topped|all? full|topped",
        "oil is|was|kept? topped|filled? up|right? to the? mark|line|full|max|brim",
        "full on the? dipstick|stick",
        "dipstick|stick ok|fine|good|full",
        f"right|correct|proper|full|normal oil? {_LEVEL}",
        "right|correct|proper amount|quantity of oil",
        "sump|pan is|was? =full",
        "sump|pan|its|engine is|was? full|topped|filled of|up|with|to? the? good|fresh|clean? brim|line|mark|oil",
        f"oil|{_LEVEL} {_IS}? right|up|dead|bang|still? at|to|on|up the? full|max|maximum|top|upper {_MARK}?",
        f"oil|{_LEVEL} {_IS}? =full|max",
        "level|oil where it should be",
        f"{_LEVEL} {_IS}? about|at|just|over? half|halfway|midway way?",
        f"oil {_LEVEL}? checked|check|checks and|was|is|found? ok|fine|good|full|right|correct|correctly",
        f"{_LEVEL} checked|check|checks and|was|is|found? ok|fine|good|full|right|correct|correctly",
        "adequate|sufficient|enough|ample oil in|on|there?",
        "oil quantity|contents|amount was|is|were|showed|checked? normal|full|adequate|correct|ok|fine|good",
        "oil ok|okay|good|fine and|,|when|.",
        "@volume in|on the? sump|pan|stick|dipstick",
    ),
    "level_slightly_high": (
        f"slightly|bit|touch|just|little|shade|fraction|hair above|over|past|too the? {_FULL}|normal|mark|high {_MARK}?",
        "bit|little|touch too? much oil",
        "slightly overfull|overfilled",
    ),
    "level_high": (
        "overfull|overfilled|overfilling",
        "over full|filled",
        "far|way? too much oil",
        f"way|well|far|inch|inches|much|@length|@volume above|over|past|too the? {_FULL}|{_MARK}|much|many|high {_MARK}?",
        f"{_LEVEL} {_IS}? way|much|far|too too? high",
        f"above|over|past the? full|max|maximum {_MARK}?",
        f"above|over|past the? top|upper|high {_MARK}",
        "@volume over|overfull|too over? full|mark|high|level?",
    ),
    "level_risen": (
        f"{_LEVEL} has|is|keeps|was|had|still|slowly? rising|risen|rises|rose|climbing|climbs|climbed|increasing|"
        "increased|increases",
        f"{_LEVEL} has|is|keeps|had|was|slowly? going|goes|gone|went|come|came|creeping|crept up",
        f"rise|rising|increase in oil? {_LEVEL}",
        "making|gaining|growing|makes|gains oil",
        "more oil than|on .. put|started|before",
    ),
    "level_read_wrongly": (
        "checked|checking|read|measured .. on a|the slope|hill|trailer|incline|side",
        "checked|checking|read|measured .. straight|right|immediately|soon|just after|hot|away",
        "checked|dipped|read it? while running|hot",
    ),
    "dipstick_low": (
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
        f"at|on|near|touching|only|just|barely the? {_LOW} {_MARK}",
        "barely|hardly|just on|touching|showing|shows|reaching|touches|reaches|wetting|registering on? the? dipstick|"
        "stick|bottom|tip|end",
        "oil lost|=lost",
        "lost|losing|loses a? quite? lot|some|much|half|lots|@volume of? the|its|my? oil",
        "needed|needs|wants topping|filling up?",
        f"below|under|off|beneath the? {_LOW} {_MARK}",
        f"oil|{_LEVEL} {_IS}? below|under|beneath the? add|min|minimum|low {_MARK}?",
        "only|just|barely|about? @volume of|oil? left|remaining|remained",
        f"oil? {_LEVEL} {_IS}? right|way|well down",
        "took|needed|wanted|swallowed|needs|takes|required about|nearly|over|almost|another? @volume of? oil",
        "took|needed|wanted|needs|takes|required about|nearly|over|almost|another? @volume to top|fill|bring|get|reach",
        "just|only|barely a? .. on|at the? bottom|very|end|tip .. dipstick|stick",
        "just|only a drop|smear|touch .. dipstick|stick",
        f"{_LEVEL}|oil {_IS}? well|way|just|far|a|little|inch? below|under the? {_LOW}|normal? {_MARK}",
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
    ),
    "dipstick_dry": (
        "=empty of oil",
        "as? good as empty|dry",
        "no|little|any oil left|remaining|whatsoever|inside",
        "out of oil",
        "nothing|dry|=clean|zero|none on|showing|at|registering on|all|at? the? dipstick|stick",
        "no oil at|was|is|showed|shows|even|visible? showing|on|at|all|registering? all|to|on? the? dipstick|stick",
        "@not oil showing|on|at|all? on? the? dipstick|stick",
        "@not touch|touching|reach|reaching|register|registering|show|showing on|even|the? the? dipstick|stick",
        "dipstick|stick was|is|bone|came|comes|come|reads|read|pulled|out|completely|absolutely? out|up|bone|"
        "completely? dry",
        "not a drop of? oil?",
        "run|ran|running|went|bled completely|itself? dry",
        "run|ran|running|went out of oil",
        "off the? bottom|end of? the? dipstick|stick",
        "oil had|has|was|is|were? all|completely? gone|disappeared|vanished",
        "all of? the|its|my|her? oil was|is|had|has? gone|lost|out|dumped|disappeared|vanished|drained",
        "sump|pan|tank|crankcase was|is|found|nearly|almost|completely|and|practically|came|as|good? nearly|almost|found|completely|practically|as|up|good? =empty|dry",
        "engine|motor was|is|found|nearly|almost? =empty",
        "no oil left|inside",
        "no oil in|left|inside in|the|it|left? it|sump|pan|engine|motor|crankcase|tank|block",
        "no oil was|were|is|could|be|to? found|seen|present|be in|on|inside|left",
        "contain|contained|contains|had|holding|held no|little|hardly oil",
        "less|under than? a? @volume left|remained|remaining|in",
        "not|no a? trace|sign|hint|drop of oil on|in the? stick|dipstick|engine|sump",
        "dry|devoid|void|empty|starved of oil",
        "hardly|scarcely|barely|practically|virtually|next|almost any|no|to|nothing oil|left left|in|on|inside|at",
        "hardly|scarcely|barely|practically|virtually|next|almost any|no|to|nothing left|inside",
    ),
    "not_refilled": (
        "forgot|forgotten|forgetting|failed|neglected to put|fill|refill|add|pour any|the|it|with|new|fresh? .. oil",
        "@not put|filled|refilled|poured|added any|the|enough? oil back|in",
        "started|ran|run|driven|drove .. without oil",
        "no oil .. put|poured|filled|added in|back",
        "underfilled|under-filled",
        "short filled",
    ),
    "too_much_poured_in": (
        "filled|poured|put|added in|up? .. twice|too much",
        "put|poured|added|adding|filled @volume too|over|extra|above much|many|full?",
        "@volume too much|many",
        "overfilled at|during|by the? .. change|service|dealer|garage|shop",
        "habit|habitually|always of? adding|topping|overfilling",
    ),
    "oil_used_fast": (
        "heavy|high|excessive|massive|terrible|huge|increased oil use|consumption|usage|burning",
        "goes|going|gone|gets|getting through oil|lot|lots|@volume",
        "uses|using|burns|burning|drinks|consumes|needs|goes|drank|used|burned|burnt through|about|around|over|up? "
        "@volume of|oil? of|oil? every|per|a|in|each|for",
        "@volume of? oil? every|per|each @distance|@time|tank|week|hour|trip|fill|month|day",
        "oil consumption has|is|was|gone|went|up|very|quite? high|up|heavy|excessive|bad|increased|rose",
        "topping|topped|top it? up all|constantly|every|weekly|daily|regularly|often|between",
        "half|quart|litre|gone in|within @time|@distance",
        "uses|using|burns|burning|drinks|drinking|consumes|consuming|eats|eating|guzzles|used lots|some|a|plenty|too lot|much|of? of? oil",
        "uses|burns|burning|drinks|consumes|consuming much|far|a|lot|more? more? oil",
        "topping up constantly|all|always|every",
        "always|constantly|forever topping up",
        "uses|using|burns|burning|drinks|used a|about? @volume an|a|every|each|per|in hour|day|week|trip|tank|run|@time|@distance",
        "oil? consumption had|has|was|is? risen|rose|increased|up|excessive|heavy|high|gone",
    ),
    "oil_not_checked_long": (
        "oil|level|dipstick|nobody|never|not|hadnt|havent|didnt had|has|was|were|been|ever? not|never|been? checked|check|"
        "checking|dipped|looked the|its|my? oil|level|dipstick? for|in|since|some @time|ages|while|long|months|weeks|some|"
        "time|a|years",
        "oil @not checked|dipped|topped for|in|since|up|at|before",
        "forgot|forgotten|neglected|failed|never|rarely|seldom to? check|checks|checked|checking the|his|her|their|my? oil "
        "level?",
        "without checking the? oil level?",
        "never|rarely|seldom|not checks|check|checked|checking the|his|her|its? oil level|regularly?",
        "no preflight|check of oil",
    ),
    "oil_overdue": (
        "oil|service .. overdue|ancient",
        "oil is|was|in|it? .. @years old",
        "never changed the|its? oil",
        "oil was|has|had never|not|hadnt|hasnt been? changed .. @years|years|ages|while|long|@distance",
        "@years|@distance since|on|without last|the|its|an|this|same? last? oil|service change?",
        "old|ancient|original|same oil from|since|still|has been .. @years|years|in",
        "oil of? unknown age",
        "overdue for? an|its? oil? change|service",
        "old|black oil .. never changed",
        "hasnt|hadnt|not had an? oil change in|for",
    ),
    "oil_grade_as_manual": (
        "@grade|oil as|per|is|which .. manual|handbook|specified|recommended|specifies|book|says|spec",
        "straight 30|thirty",
        "right|correct|recommended|specified|proper|listed|stated oil? grade|weight|stuff|viscosity|oil",
        "oil|grade is|was|as? recommended|specified|correct|right by|in|per|for the? manual|handbook|book|it?",
        "oil as recommended|specified",
        "recommended|correct|specified|right oil",
    ),
    "oil_grade_too_heavy": (
        "heavier|thicker grade|oil|weight? than|that spec|specified|recommended|manual|it|the|book|should",
        "too|overly thick|heavy an|a? oil|grade|for|weight",
        "@thick racing|race oil",
        "oil|grade|@thick is|was? too|far|way|much thick|heavy",
    ),
    "oil_grade_too_thin": (
        "@thin is|oil|was? in it|there|engine|the",
        "too|overly thin|light an|a? oil|grade|for|weight",
        "thinner|lighter grade|oil|weight? than spec|specified|recommended|manual|it|the|book|should",
        "wrong oil|grade",
    ),
    "additive_or_flush_in_oil": (
        "additive|additives|stop-leak|stopleak|flush|atf|kerosene|paraffin|detergent|treatment in|to|into the? oil|engine|it",
        "oil additive|additives|treatment|stabilizer|stabiliser|thickener|flush",
        "stop leak",
        "engine flush",
    ),
    "level_falls_standing": (
        f"{_LEVEL}|oil drops|falls|drop|dropped|fell|goes|went down? overnight|standing|while stood|parked",
        "loses|lost|losing oil standing|overnight|parked|while",
        "dry|low|empty|down again within|after|in minutes|topping|filling|@minutes|an|no",
    ),
    "dipstick_not_its_own": (
        "dipstick|stick from|off|for a|another|different|wrong other|different|another|car|engine|model?",
        "wrong|aftermarket|different|another|replacement|later|generic dipstick tube?",
    ),
    "stick_marks_wrong": (
        "dipstick|stick reads|marks|marked|calibrated is|are|out|read? wrong|incorrect|incorrectly|off|inaccurate|wrongly",
        "dipstick|stick @not calibrated|accurate|right",
        "wrong|incorrect marks|calibration on the? dipstick|stick",
    ),
    "drained_volume_low": (
        "only|just|barely|hardly|got|about|less @volume|any|half|anything of|oil? came|drained|out|in out?",
        "drained .. got|only|just|barely .. @volume",
        "much|far|way less|oil oil|than|less .. came|drained|out|holds|should",
        "hardly|barely|little any|a? oil|drop came|drained|out out?",
    ),
    "drained_volume_high": (
        "more oil|than .. came|drained out|than|holds|should",
        "drained .. more|over .. than .. holds|should|capacity",
        "got @volume out .. too|over|more|extra",
    ),
    "wet_sumps": (
        "wet sumps|sumping|sumped|sump when|while|after|overnight|standing|badly|again",
        "wet-sumps|wet-sumping|wet-sumped|wetsumps|wetsumping",
        "tank|oil drains|drained|draining|drain|leaks|seeps|runs|ran|emptied|empties down|itself|back? into the? "
        "crankcase|sump|bottom|engine|cases",
        "=sumping|=sumped",
    ),
}
#: the finding, by what is said when it is not there
SIGHTS_OIL_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_overdue": (
        "oil and|&|plus? filter? was|had|been|just|last? been|just|last? changed|change|renewed "
        "@days|@weeks|@hours|@months ago|before|earlier|previously|back",
        "oil and|&|plus? filter? changed only? @distance ago|before|earlier|back",
        "@hours|@days|@weeks since|after the? last|an? oil and|&? filter? change",
        "oil changed regularly|religiously|often|annually|yearly|on every",
        "recent|regular|frequent oil changes|change",
    ),
    "service_neglected": (
        "full|complete|good service history|record",
        "fsh",
        "service|maintenance history complete|good|full",
        "serviced from new",
        "regular|regularly|meticulous|religious|careful|yearly|annual oil? maintenance|maintained|serviced|servicing|services|service|changes",
        "well|properly|meticulously|carefully|always|regularly maintained|looked-after|serviced",
        "oil changed|changes every @distance|@time|@lowmiles|season|spring|year|winter",
    ),
    "oil_not_checked_long": (
        "oil|level was|is|had|been? checked this|that|every|daily|weekly|regularly|yesterday|before|the morning|day|week|"
        "time|each?",
        "check|checks|checked|checking the|my|its? oil|level|dipstick religiously|regularly|weekly|daily|often|every|"
        "this|yesterday|each",
        "topped up @days|@weeks|yesterday|recently|last before|ago|earlier|week?",
        "check|checks|checked|checking the|my|its? oil|level|dipstick that|this|before|every|each|on morning|day|flight|start|the|week|trip|leaving|setting",
    ),
    "drained_volume_low": (
        "more than @volume drained|came|out",
        "full amount|quantity drained|came out?",
    ),
}
