"""What is done to an engine: actions, work with a name of its own, and what came of it."""

from __future__ import annotations

from knowledge.reports.words import Done, Hands, Result

#: an action, by the words said of it; ``Done`` is what an entry of earlier work calls it
ACTIONS: dict[Done, tuple[str, ...]] = {
    Done.RENEWED: (
        "replaced|replace|replacing|renewed|renewing|swapped|swapping|swap|fitted|installed|installing|fitting",
        "changed|changing|change",
        "put in|on a?",
        "threw a",
        "stuck a new",
        "brand? new|another|different|second|third|fresh|replacement",
        "is|are|was brand? new",
    ),
    Done.REBUILT: (
        "rebuilt|rebuild|rebuilding|overhauled|overhaul|overhauling|reconditioned|restored|refurbished|reground|"
        "recon|refreshed|remanufactured|reman",
    ),
    Done.CLEANED: (
        "cleaned|cleaning|clean|cleared|clearing|washed|flushed|flushing|unblocked|freed|rodded|scrubbed",
        "blew out",
    ),
    Done.ADJUSTED: (
        "shimmed|shimming|stretched|adjusted|adjusting|reset|tightened|tightening|torqued|retorqued|regapped",
        "turned up|in",
        "wound in|up",
        "set up?",
        "topped|topping",
    ),
    Done.REFITTED: (
        "refitted|resealed|reseated|reinstalled|removed|pulled|dropped",
        "taken|took off|out",
    ),
    Done.OPENED: ("opened|inspected|stripped", "took apart", "taken apart", "tore down"),
}


#: trials said in a way of their own
TRIALS: dict[str, tuple[str, ...]] = {
    "thicker_oil": (
        "@thick",
        "thicker|heavier oil|grade",
        "switched|switch|switching|went|going|changed|changing|tried|trying|moved|used|put|run|running|ran .. to? @thick",
        "oil thickener|additive",
        "tried @thick",
    ),
    "thinner_oil": ("thinner|lighter oil|grade", "@thin"),
    "right_oil": (
        "fresh oil",
        "oil and|& filter? change",
        "oil change",
    ),
    "pump_primed": (
        "primed|priming|prime",
        "packed|packing .. vaseline|pump|jelly|grease",
        "prime|primed with a? drill",
    ),
    "oil_poured_in": ("poured|squirted|funnelled oil", "filled the? pump|filter"),
    "topped_up": (
        "topped|topping .. up|oil|off",
        "added|adding|add .. oil|quart|qt|litre|liter|pint|quarts",
        "top up",
        "topped .. oil",
    ),
    "overfilled": ("quart|litre|bit over full",),
    "drained_to_mark": ("drained|sucked|took some? oil? out|down", "let some oil out"),
    "engine_flushed": (
        "engine flush",
        "flush|flushed .. engine|it",
        "ran|run a flush",
        "diesel-flush",
    ),
    "cooler_bypassed": ("bypassed|bypass|looped .. cooler",),
    "stiffer_spring": (
        "shimmed|stretched|shim|stretch .. relief|spring|regulator",
        "stiffer|stronger relief? spring",
    ),
    "ground_wire_added": (
        "ran|added|add|run a? new|extra|good|separate? ground|earth wire|lead|strap?",
    ),
    "wiring_repaired": (
        "fixed|repaired|mended|soldered|cleaned .. wire|wiring|terminal|terminals|ground|earth",
    ),
    "connector_refitted": ("unplugged|reseated|cleaned .. plug|connector",),
    "idle_raised": ("raised|upped|turned|increased .. idle", "idle turned|raised up?"),
    "tank_tap_opened": ("opened the? oil? tap|valve",),
    "other_filter": (
        "different|other|another brand|make of? filter",
        "oem|genuine filter",
        "different filter",
    ),
    "new_sender": ("new sending unit",),
    "high_volume_pump": ("high volume pump",),
    "other_gauge": ("second|another|different|new gauge",),
    "filter_tightened": ("tightened .. filter",),
    "pickup_cleaned": (
        "dropped the? oil? pan|sump .. clean|cleaned",
        "pulled the pan .. clean|cleaned|checked",
    ),
    "stripped_and_cleaned": ("stripped and cleaned",),
}
#: earlier work said in a way of its own
AREAS: dict[str, tuple[str, ...]] = {
    "whole_engine": (
        "rebuild|overhaul|restoration",
        "fresh|freshly|newly engine|motor|rebuilt|built",
        "rebuilt|overhauled|reconditioned engine|motor",
        "it|engine|motor was|got|has|had|been? rebuilt|overhauled|reconditioned",
        "rebuilt|overhauled it|engine|motor?",
    ),
    "oil_change": (
        "oil change|service",
        "oil and|& filter change",
        "changed|changing|change|swapped the? my? oil",
        "serviced|service",
        "new oil",
    ),
    "other_engine": (
        "engine swap",
        "swapped .. engine|motor",
        "new|replacement|crate|used|junkyard|different engine|motor",
    ),
    "cylinder_head": ("head gasket", "head job|work", "valve job"),
    "timing": ("timing chain|belt", "cambelt|cam-belt", "cam swap"),
    "camshaft": ("cam swap|change",),
    "storage": ("storage|layup|winterized", "stored|storing"),
    "transport_or_fitting": ("engine|motor out|pulled|refit", "engine installed"),
    "bearings": ("new bearings|shells", "rings and bearings", "bearing job"),
    "pistons": ("new rings|pistons", "re-ring|re-ringed"),
    "machine_shop": ("hot tanked", "line honed|bored", "bored and|& honed"),
    "conversion": ("dry sump conversion", "stroker kit"),
    "instrument": ("dash out", "new dash|cluster", "aftermarket gauge"),
    "clutch_or_gearbox": ("new clutch", "clutch job"),
    "turbo": ("new turbo",),
    "oil_pump": ("new oil? pump",),
    "oil_cooler_or_lines": ("remote filter kit",),
    "filter_change": ("filter change",),
}
#: "nobody has touched it"
NOTHING_DONE = (
    "nothing|none|nobody .. done|touched|changed|worked",
    "@not been? touched anything|it|the?",
    "@not worked on",
    "@not been apart|opened",
    "never been? apart|opened|touched|rebuilt",
    "no work done?",
)
RESULTS: dict[Result, tuple[str, ...]] = {
    Result.NO_DIFFERENCE: (
        "no|zero|little change|difference|effect|improvement|joy|luck|better|help|good|avail|dice|success|cure",
        "@not help|helped|fix|fixed|change|cure|work|cured|worked|solve|improve|affect anything|it|that|any?",
        "@not make|made|making a|any|the|slightest? difference|change|better",
        "made|makes|did|does|didnt nothing|none|no|jack|squat|bugger|zip difference|change|all?",
        "same|identical reading|readings|result|results|thing|problem|pressure|after?",
        "still|exactly|just|reads|stayed|stays|all|about|is the? same",
        "still low|nothing|none|zero|no|flickers|on|there|@pressure|flickering|reads|drops|bad|does|doing|clatters|knocks",
        "still only|about|just|at|at? @pressure|@number",
        "to no avail",
        "without|no success|improvement|result|effect|change",
        "nothing helped|worked|changed|helps|works|has|have|fixed helped|worked|changed?",
        "none of .. helped|worked|fixed|changed|difference|made",
        "problem|issue|symptom remains|persists|persisted|remained|still there?",
        "same|the same",
        "unchanged",
        "all of? the? same",
    ),
    Result.CURED: (
        "fixed|cured|solved|sorted|resolved it|that|problem|the|issue|everything problem|issue?",
        "problem|issue gone|solved|fixed|cured|went|sorted|disappeared away?",
        "pressure came|is|was|went back",
        "pressure came|comes up",
        "brought the? pressure back",
        "did the trick",
        "sorted it? out?",
        "all good|fine|well now|since",
        "pressure|it came|back|came right back? up|right|to? normal|good",
        "now .. perfect|fine|normal",
        "and? back to normal",
        "brought it|pressure|the back",
    ),
    Result.HELPED: (
        "helped|helps|help|improved|improves|improvement",
        "a|little|bit|slightly|somewhat bit|little? better|higher",
        "brought|raised|bumped|picked it|the|pressure|up pressure? up",
        "gained|gained a? few? @pressure",
        "better",
        "came|went up a? little|bit|few|some",
    ),
    Result.FOR_A_WHILE: (
        "for|lasted about? @time",
        "for|lasted about? a while|bit|time",
        "for awhile",
        "fine|ok|good|better|worked|cured|fixed|helped for @time|a|about",
        "then|but .. came|comes|dropped|started back|again",
        "temporarily|briefly",
        "lasted @time",
    ),
    Result.WORSE: (
        "made it? worse",
        "worse|lower than|now|after before?",
        "even? worse",
        "now|is even? worse",
    ),
}
HANDS: dict[Hands, tuple[str, ...]] = {
    Hands.MACHINE_SHOP: ("machine|machinist shop|did?", "machinist"),
    Hands.SHOP: ("garage|dealer|mechanic|workshop|shop|dealership|yard", "professionally"),
    Hands.OWNER: (
        "i|myself|we did|rebuilt|replaced|changed|fitted|installed|built",
        "did it myself",
    ),
    Hands.EARLIER_OWNER: ("previous|last|prior|former owner", "po"),
}
