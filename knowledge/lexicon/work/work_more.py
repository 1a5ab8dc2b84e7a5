"""Further earlier work said in a way of its own: builds, machine shops, what was off; see ``work``."""

from __future__ import annotations

_ENGINE = "engine|motor|it|lump|v8|six|four|flathead|twin|diesel"
_SHOP = "machine|engine? shop|machinist|machinists|machinist's|grinders|reconditioners|engineers"
#: where an engine comes from that another car had
_USED = (
    "used|secondhand|second-hand|junkyard|scrapyard|breakers|breaker's|wrecker|wreckers|donor|salvage|"
    "low-mileage|low-mile"
)
_OTHER = f"new|replacement|crate|different|rebuilt|reconditioned|recon|reman|remanufactured|another|exchange|{_USED}"
_BLASTED = (
    "blasted|beaded|glass-beaded|bead-blasted|tanked|hot-tanked|dipped|acid-dipped|baked|boiled"
)
#: looks like work and is none on this engine just before
NO_WORK = (
    "rebuilt|rebuilding|rebuild|overhauled|restored|restoring the|my|its|a? steering|brakes|suspension|axle|hydraulics|"
    "differential|body|interior|trailer|car|truck|boat|tractor|bike",
    "infrequent|regular|no|earlier|last|next|every|each|previous|overdue|due|needs|between|without|frequent oil? "
    "changes|change|service|services",
    "serviced from|regularly|by|annually|every new|dealer?",
    "always|religiously|regularly|usually changed|change|changes|serviced the|my|its? oil?",
    "oil? changed|changes|serviced every|religiously|regularly|often|always|annually|yearly|each time|schedule?",
    "oil? changed|changes|serviced on|to|bang-on time|schedule",
    "oil changes|services are|were|was|always? always? =done at|every|by|on|to .. intervals|interval|@distance|book|time|schedule",
    "never|not|hasnt|hadnt had|have an? oil? change|service",
    "in service since|for",
    "service|services|servicing|changes is|was|are|were? @time? years|months|miles? late|overdue|skipped|missed|neglected|behind|patchy|irregular|sporadic",
    "off|stopped|stop|parked|pulled|up|over|in|by|got at|into|in|to|as? the|some|motorway? =services",
    "overdue for? an|a|its|the|another? oil? service|change|servicing",
    "bad|lax|lazy|slack|remiss|terrible|hopeless|late|behind about|with|at|on|over the|my|its? oil? changes|changing|servicing|services|service",
    "patchy|irregular|missed|skipped|sporadic|poor|late|lapsed oil? services|servicing|service|changes",
    "quote|quoted|quotes|wants|want|recommend|recommends|recommended|needs|need|needed|price|cost|costs|cheaper|afford|getting|get|buy|due|say|says|"
    "said|reckons|reckon|or for|is|was|me|it|its|a|an|the|that|to? new|replacement|another|recon|reconditioned engine|motor|lump",
    "on the hard shoulder",
    "oil|oils|filter|filters? changed|change|changes|serviced|service the|my|its|her? oil|oils? and? filter|filters? at|to the|my|its? normal|usual|regular|proper|recommended|correct|right|specified .. interval|intervals|mileage|mileages|schedule",
    "service history|station|bulletin|life|interval|intervals|record|manual|light",
)
#: the area, by the words for the work
AREAS_MORE: dict[str, tuple[str, ...]] = {
    "whole_engine": (
        "=rebuilt|=overhauled|=reconditioned @volume|@number|two|three|four|five|one litre|liter",
        "=rebuilt|=overhauled|=reconditioned two-litre|@volume",
        "fresh|freshly|newly stroked|bored|stroker|rebuilt|built? small|big block",
        "fresh v8|six|four|short-block|long-block|smallblock|bigblock",
        "put|bolted|assembled|built together? on|in|at the|my? kitchen|garage|bench|dining|shed|basement table|bench|floor",
        "home|diy|garage|fresh|recent|first|new|own|winter|engine|motor =build|=rebuild",
        "after|since|following|from =build|=reassembly|=rebuilding",
        "after|since|following =assembly",
        "fresh|freshly|new|newly built|rebuilt? small|big block",
        "fresh|freshly built|rebuilt? v8|six|four|lump|flathead|twin|smallblock|bigblock",
        f"put|bolted|screwed|threw the|my|this|old? {_ENGINE} back? together",
        f"i|we|he|they|id|ive|dad|mate just|then|all? assembled|reassembled|rebuilt the|my|this|old? {_ENGINE}",
        f"{_ENGINE} was|is|been|and|all? assembled|reassembled by|at|over|myself|last|in|from|home",
        "rebuilt|overhauled|reconditioned|freshened over|during|through|myself|ourselves|at|from",
        "cases|crankcases|crankcase were|was? split|parted",
        "groundup|ground-up|frame-off|bare-metal|full|total|complete|long|slow =resto|restoration|rebuild|resurrection|overhaul",
        "=resto",
        "i|we|he|they|id|ive|was|got =did|=done|=redid|=doing the|my|this engine|motor",
        "after|since|following a|the|my|its|this? =stripdown|strip-down|=teardown|tear-down|=refresh|=freshening|=freshenup|freshen-up|=recondition|=reconditioning",
        "=built|=assembled this|my|our twincam|twin-cam|bigblock|smallblock|big-block|small-block|straight|slant|boxer|single",
        "inframe|in-frame was|is|been|kit? =done|rebuild|overhaul|job|rebuilt",
        "since|after|following the|an|this|that? inframe|in-frame",
        "=inframe|=in-chassis|=out-of-frame overhaul|rebuild|kit|incl|including|with|ago|@time|@distance|@hours",
        "fresh|recent|new|last|full =inframe|=in-chassis|=out-of-frame",
        "=built|=assembled this|my|our|up? engine|motor|lump|v8|six|four|twin|flathead|smallblock|bigblock",
        "=built|=assembled the|a|an engine|motor|lump|v8|six|four|twin|flathead|smallblock|bigblock over|myself|last|from|this|during|up|ourselves",
        "=new|=fresh|=latest|=second =build gives|gave|has|had|makes|made|shows|showed|reads|is|was|with",
    ),
    "other_engine": (
        "=crate|new|rebuilt|reman|remanufactured|replacement|exchange short|long block|motor|engine",
        "shortblock|longblock|short-block|long-block",
        "short|long motor|block|engine was|has-been? fitted|installed|supplied|from|went|put|by",
        "reconditioned|recon|exchange|reman|remanufactured|replacement .. exchange|unit|engine|motor from|supplied|fitted|by",
        "=repowered|=re-powered|=repower|=re-engined|=reengined",
        f"good|decent|running|clean? {_USED} engine|motor|lump|longblock|unit",
        f"put|fitted|dropped|stuck|swapped|threw|installed in? a|an|another {_OTHER} v8|v6|six|four|diesel in|into?",
        f"put|fitted|dropped|stuck|swapped|threw|installed in? a|an|another {_OTHER} @number in|into",
        "engine|motor|lump was|been|got|had|has|were|just? replaced|exchanged|swapped by|under|with|for|last|at|in|@time?",
        "replaced|swapped|exchanged|changing|changed the|my|this? engine|motor|lump out|for|over|with|under|and|in|last|@time",
        "engine|motor|lump out|from of? a|another? breaker|breakers|donor|scrapped|scrapyard|wrecked|crashed|written-off",
        "had|fitted|put|got|bought a|an|another =new|replacement|recon|reconditioned engine|motor|lump|unit",
    ),
    "bearings": (
        "reshelled|re-shelled|remetalled|re-metalled|rebabbitted|re-babbitted",
        "crank|crankshaft was|is|has|went|been? sent|taken|away|out? out|off|away? for|to a? regrind|regrinding|grind|grinding",
        "crank|crankshaft regrind",
        "white|babbitt metal|bearings|bearing re-poured|repoured|poured|recast|redone|renewed|remetalled",
        "whitemetal|babbitt re-poured|repoured|poured|recast|redone|renewed|remetalled",
        "fresh|new bottom end",
        "fresh|new|the bottom end shells|bearings",
        "caps off|out for|to",
        "crank|crankshaft was|is|went|sent|been? =out|=away|=off for|to|at the? regrind|regrinding|grinding|grind|grinder|grinders|polish|polishing|machining",
        "=shelled|=reshelled|=re-shelled @time|last|in|this|@year|and|with|ago|by",
        "=did|=done|=doing|=redid|=redone the|my|its? bottom end",
    ),
    "oil_change": (
        "had|got|paid for? a|an|the full|major|proper|complete|annual|comprehensive and? regular|comprehensive|annual? service",
        "drained|dropped the|my|out? old|engine? oil .. poured|tipped|dumped|put|filled in|up? with? @volume|five|six|four|fresh|new",
        "new|fresh filter and|&|, .. @volume of? fresh|new? oil",
        "@grade|@thin|@thick oil? in the? it|her|him|sump|engine|crankcase|there? ,|that|which|and|& was|i|we|been? changed|put|fresh it|in? @time|last|this|in|a|only|just|about|at",
        "oil is|was|:? @grade|@thin|@thick , changed it? @time|last|this|in|a|only|just|about|at",
    ),
    "oil_added": (
        "added|adding a|an|some|another|more|about|half|the? bit|drop|quart|pint|litre|liter|@volume|more? of? engine|motor? oil",
        "topped it|her|up up? the|my|its|with? engine? oil? up? last|this|yesterday|recently",
    ),
    "machine_shop": (
        f"block|crank|case|cases|heads was|were|had|been|got|is|is-being|and? {_BLASTED}",
        f"{_BLASTED} the|my|a|an? block|crank|crankshaft|case|cases|heads",
        "hot|acid|caustic tank|tanked|dip|dipped",
        f"back|came|come|home|returned|fresh|straight back? from|off|out the|a|my|our|of? the? {_SHOP}",
        f"{_SHOP} had|ground|bored|cleaned|decked|did|built|line-bored|linished|polished|machined|cut|fitted|drove|put the|my|a|our|new block|crank|crankshaft|cylinders|plugs|mains|case",
        "shop|machinist|grinder ground|bored|reground|cleaned|linished|polished the|my crank|crankshaft|block|journals",
        "block|cylinders|crank bored|ground|blasted and|& bored|honed|ground|polished|balanced|decked",
        f"plugs were|was|had|been|got? pulled|removed|drilled|drawn|taken|fitted|driven|put|knocked|renewed|replaced in|out? by|at|in the|a? {_SHOP}",
        f"{_SHOP} pulled|removed|drilled|drew|took out? all? the|my|our? old? gallery|galley|oil|core? plugs",
        "gallery|galley|oil plugs were|was|out|all|had? out|removed|pulled for|to cleaning|clean|hot-tanking|the-wash",
    ),
    "cam_bearings": (
        "pressed|pressing|drove|driven|knocked|pulled in? the|a|my|set|of? new|full|set|of? cam|camshaft bearings|bushes in?",
        "cam|camshaft bearings|bushes were|was|are|got|had|been? =pressed|=driven|=knocked|=installed in?",
    ),
    "camshaft": (
        "did|set|adjusted|reset|shimmed|doing|setting|done the|my|its? valve|tappet|rocker clearances|clearance|lash|gaps|shims",
    ),
    "cylinder_head": (
        "head|heads came|came-back|back|returned|is|was|straight back? from",
        "had|got|have the|my|both? head|heads =skimmed|=refaced|=decked|=surfaced|=planed|=milled|=pressure-tested",
        "top end? overhaul|rebuild|refresh",
        "head|heads reseated|re-seated|lapped|ground|overhauled",
        "head|heads refitted|rebuilt|reconditioned|exchanged|skimmed|pressure-tested",
        "reconditioned|recon|exchange|rebuilt|refurbished|skimmed|another|new head|heads",
        "since|after refitting|changing|doing|skimming the? head|heads",
    ),
    "pistons": (
        "=sleeved|=resleeved|=re-sleeved|=lined|=relined|=re-ringed|=ringed and|&|, =shelled|=reshelled|bearings",
        "=resleeved|=re-sleeved|=re-ringed|=reringed",
    ),
    "sump": ("sump|pan|oil-pan was|been? resealed|re-sealed|re-gasketed|regasketed",),
    "clutch_or_gearbox": (
        "gearbox|box|transmission|marine-gear =off|=out|dropped for|to",
        "clutch|gearbox|synchro|mainshaft|layshaft|transmission job|repair|rebuild",
        "gearbox|box|transmission is|was|has|had|been? been? apart|stripped|rebuilt|out|split",
    ),
    "oil_cooler_or_lines": (
        "oil? cooler kit was|is|now? =fitted|=added|=installed",
        "filter head|housing|mount|base was|been? resealed|re-sealed|off|renewed|replaced",
        "oil? filter relocated|remoted|moved to|onto|on? a|the? bulkhead|remote|bracket?",
    ),
    "filter_change": ("oil? filter|filters service|serviced|renewal|job",),
    "storage": ("=recommissioned|=re-commissioned|=recommissioning",),
    "accessory": (
        "vacuum|hydraulic|steering pump|starter|governor|magneto|mount|mounts .. replaced|renewed|changed|fitted|removed",
        "new|replaced|changed .. vacuum|hydraulic pump|starter|governor|magneto",
        "accessory was|had|is? changed|replaced|removed|disturbed",
        "vacuum|hydraulic|power-steering|air pump|compressor was|been|put|pad|and? fitted|blanked|blanked-off|put|added|changed|exchanged",
        "fitted|fitting|added|adding|put|installed|mounted|swapped a|an|the|new|another? vacuum|hydraulic|power-steering pump",
        "blanking|blanked plate|pad put|fitted|made|on|after|and|over",
        "cover plate|pad put|fitted|made|on|over",
        "new|exchange|replacement|rebuilt governor|magneto|starter|dynamo|compressor|alternator",
        "governor|magneto|compressor put|fitted|changed|exchanged|back on?",
    ),
    "instrument": (
        "moved|rerouted|shifted|disturbed|unplugged some|the|a|all|few|couple|of? oil|lamp|light? wires|wiring|cables|leads|loom|harness about|around|like|only|just? @days|@weeks|@months|last|yesterday",
        "and moved|rerouted|shifted|disturbed|unplugged some|the|a|all|few|couple? of? wires|wiring|cables|leads|loom|harness",
    ),
    "turbo": (
        "turbo conversion",
        "turbo feed|drain|return .. fitted|renewed|made|changed",
    ),
    "transport_or_fitting": (
        "engine|motor|unit moved|transferred|transplanted|shifted from|to|into another|a|the|different|new|one boat|chassis|hull|truck|tractor|machine",
        "put|dropped|lowered|hoisted|craned|craned-it|got|bolted it|engine|motor|her|the-engine back in|into =my|=the|=its|=our|=a|=place|=situ",
        "put|dropped|lowered|hoisted|craned the|my|our|that? engine|motor|lump .. back? in|into =my|=the|=its|=our|=place car|boat|truck|chassis|frame|hull|bay|tractor|van?",
        "engine|motor|lump =back =in =and|=the|=place|=its|=car|=boat|=now|=with",
    ),
    "fuel_system": (
        "idle|tickover|slow-running was|is|been|speed? turned|wound|set|screwed|backed|adjusted|dropped down|back|lower|off",
        "turned|wound|set|backed|dropped|lowered the|my? idle|tickover down|back|lower|off?",
        "injectors|injector|injection-pump|fuel-pump were|was|had|been|all? serviced|overhauled|tested|calibrated|popped|reset",
        "injection|fuel|hp pump was|been|is? resealed|re-sealed|serviced|overhauled",
        "injection pump was|been|is? exchanged|refitted|changed|replaced|renewed|off|overhauled",
    ),
}
#: "nobody has touched it"
NOTHING_DONE = (
    "nothing|none|nobody .. done|=touched|=changed|worked",
    "@not been? =touched anything|it|the?",
    "@not worked on",
    "@not been apart|opened",
    "never been? apart|opened|=touched|rebuilt",
    "no work done?",
)
