"""What is done to an engine: actions, work with a name of its own, and what came of it."""

from __future__ import annotations

from knowledge.reports.words import Done

#: an action, by the words said of it; ``Done`` is what an entry of earlier work calls it
ACTIONS: dict[Done, tuple[str, ...]] = {
    Done.RENEWED: (
        "replaced|replace|replacing|renewed|renewing|swapped|swapping|swap|=fitted|=fitting|installed|installing|exchanged|exchanging|swopped",
        "changed|changing|change",
        "put in|on a?",
        "threw a",
        "stuck a new",
        "brand? new|another|different|second|third|fresh|replacement|spare|borrowed|reproduction|repro",
        "known good",
        "was|were|been|got|had|all|both|just =done|=redone",
        "=done|=redone",
        "=done last|by|this|about|in|just|recently|professionally|@time",
        "=did|=done|=doing the|my|its|all|both",
        "=added",
        "mounted a|an|the|new",
        "put|stuck|threw|bunged|slapped|popped a|an|the|in|on correct|right|new|different|another|used? one|in|on?",
        "is|are|was brand? new",
        "upgraded|upgrading to|the|my",
        "=done|=tried|=did|=changed|=replaced|=renewed|=swapped|=new already|since|are|is|so-far|so? far? :",
        "hammered|knocked|pressed|tapped|screwed|bolted|spliced|let|soldered|welded in",
    ),
    Done.REBUILT: (
        "rebuilt|rebuild|rebuilding|overhauled|overhaul|overhauling|reconditioned|restored|refurbished|reground|"
        "recon|refreshed|remanufactured|reman",
        "=freshened|=freshening|=freshen =up?",
        "=repaired|=mended|=patched|=brazed|=straightened|=resoldered|=soldered|=welded|=unkinked",
    ),
    Done.CLEANED: (
        "=cleaned|=cleaning|cleared|clearing|washed|flushed|flushing|unblocked|freed|=rodded|scrubbed",
        "blew|blown|blow it|them|that|the? out|through",
        "=blew|=blasted",
        "=lapped|=polished|=dressed|=honed|=linished|=unstuck|=degreased|=decoked|=rinsed|=wiped",
        "=faced|=refaced|=reseated|=recut",
    ),
    Done.ADJUSTED: (
        "shimmed|shimming|stretched|adjusted|adjusting|reset|tightened|tightening|torqued|retorqued|regapped",
        "turned up|in",
        "wound in|up",
        "set up?",
        "=raised|=lowered|=spaced|=backed|=nipped|=retorqued|=torqued",
        "spun|screwed|nipped|did it|them|up|the? up|on|tighter",
        "brought|wound|turned|bumped|raised|set|put|cranked|tweaked|nudged it|them up|to|at|down|in",
        "screwed|wound|backed in|up|down|out",
        "turned in|up|down",  # not "it turned out"
        "=screwed|=wound",
        "topped|topping",
    ),
    Done.REFITTED: (
        "refitted|resealed|reseated|reinstalled|removed|pulled|dropped|=transferred|=transferring|=reused|=reusing",
        "taken|took off|out",
        "re-stabbed|restabbed|restab|unseated",
        "dropped|put|popped it|them back in|on",
    ),
    Done.OPENED: ("opened|inspected|stripped", "took apart", "taken apart", "tore down"),
}


#: trials said in a way of their own
TRIALS: dict[str, tuple[str, ...]] = {
    "thicker_oil": (
        "@thick",
        "bottle|bottles|tin|can|dose of? thickener|additive|treatment",
        "bottle|bottles|tin|can|dose of? .. thickener|additive|treatment",
        "put|threw|chucked|poured|dumped|tipped|tried|added|bunged|stuck|ran in? .. thickener|additive|treatment|honey|stop-smoke",
        "thicker|heavier oil|grade",
        "put|ran|run|tried|poured|threw some|in? thick|heavy oil in?",
        "switched|switch|switching|went|going|changed|changing|tried|trying|moved|stepped|bumped|used|put|run|running|ran .. to? @thick",
        "oil|viscosity|thickening thickener|additive|improver",
        "tried @thick",
        "oil was? changed|changing|swapped|swapping|switched .. to|for @thick",
        "changed|changing|swapped|swapping|switched|switching .. oil to|for @thick",
        "on|with|using @thick",
    ),
    "thinner_oil": ("thinner|lighter oil|grade", "@thin"),
    "right_oil": (
        "@grade changed|swapped|switched to @grade",
        "fresh oil",
        "back to|on @grade|@thick|@thin",
        "oil and|& filter? change",
        "oil change",
    ),
    "pump_primed": (
        "=primed|=priming|=reprimed",
        "prime it|the|pump",
        "packed|packing .. vaseline|pump|jelly|grease",
        "packed|filled|smeared|stuffed|pushed|crammed|coated|loaded|squashed|put .. vaseline|petroleum|jelly",
        "vaseline|jelly|grease in|into|inside|round|on the? pump|vanes|gears|rotors|rotor",
        "prime|primed with a? drill",
        "oil .. spun by|with drill",
        "spun .. drill",
    ),
    "oil_poured_in": (
        "poured|squirted|funnelled|pumped|injected oil|some",
        "poured|squirted|funnelled|pumped|injected|tipped|put|got|syringed some|a|an|the|@volume|bit|of? of|bit? oil? down|into|in|through "
        "the? pump|inlet|filter-head|filter-housing|suction|outlet|gallery|feed|pickup|sender|line|port inlet|hole|port|pipe|head|"
        "housing?",
        "oil was? poured|squirted|funnelled|injected",
        "poured|squirted|funnelled|pumped|injected|tipped|syringed oil|some down|into|in|through|up the|a filter|cooler|gauge|sender|pump|oil|feed|suction pipe|line|hose|union|port|hole|union|housing|fitting",
        "filled the? pump|filter",
    ),
    "topped_up": (
        "topped|topping .. up|oil|off",
        "filled|brought|made it|oil|the|level? up|back? to|up the? mark|full|max|line|top",
        "added|adding|add .. oil|quart|qt|litre|liter|pint|quarts",
        "top up",
        "topped|top it up|off",
        "oil? level checked? and|was? =corrected|=restored|made|brought up?",
        "topped .. oil",
        "@volume of? oil? added",
        "put in half? @volume",
        "put @volume in|of",
        "gave it another|a|an|@volume quart|litre|pint|drop|@volume?",
        "added|adding|poured|chucked|threw|tipped|dumped|stuck|bunged in|another|about|nearly|almost|the|best-part-of? @volume",
        "oil was? added",
    ),
    "overfilled": (
        "quart|litre|bit|@volume|half-a-quart over full|the-mark|max|full-mark",
        "half a quart|litre|pint over full|max",
        "overfill|overfilled|overfilling|over-filled|over-filling it|by?",
        "extra|another|additional two|three|half|a? @volume|quart|quarts|litre|litres|pint|pints over|above|in? full|the-mark|mark?",
        "@volume|quart|quarts|litre|litres|pint|oil over|above the? mark|line|full",
        "overfilled|overfill|overfilling it|by|slightly|the",
        "overfilled|overfill|overfilling it|her|by? about? a|@volume quart|litre|bit|@volume?",
        "ran|run|put|poured|added|kept|carried|fill|filled|used|with|overfill it|in|with|the|oil? an|a? extra|another|additional half|one|a? half? litre|liter|quart|pint|inch|@volume",
        "run|ran|running|keep|kept|carry|put|fill it|her? about? half|quarter|a? a? litre|liter|quart|pint|@volume over",
    ),
    "standard_pump": ("put|fitted|went|gone .. standard|stock|original oil? pump back?",),
    "new_pickup": (
        "brazed|soldered|welded|fixed|mended|repaired .. crack|split|pinhole .. pickup|suction",
    ),
    "drained_to_mark": (
        "drained|sucked some? oil? out|down",
        "took some|oil|the oil? out",
        "drained|sucked|let|ran some|oil|excess|surplus|the oil? down|out|back|off to? full|the? mark|level|full|right?",
        "drained|sucked it|that oil? down|out|back|off to? full|the? mark|level|full|right?",
        "took some|excess|surplus|oil oil? down|out|back|off to? full|the? mark|level|full|right?",
        "let some oil out",
        "drained|draining|sucked|let|ran a|the|half|about? @volume|quart|pint|litre|excess of? oil? out|off|down?",
        "took a|the|half|about? @volume|quart|pint|litre|excess of? oil? =out|=off|=down",
        "drained|draining|sucked|ran it|them|oil|some? down? to|below the|full? mark|level|line",
    ),
    "engine_flushed": (
        "engine flush",
        "flush|flushed .. engine|it",
        "bottle|can|dose|tin|litre|quart of? engine? flush",
        "ran|run a flush",
        "flushed",
        "diesel-flush",
    ),
    "cooler_bypassed": ("bypassed|bypass|looped .. cooler",),
    "stiffer_spring": (
        "shimmed|stretched|shim|stretch .. relief|spring|regulator",
        "put|added|stuck|fitted|placed|popped|slipped a|an|one|two|three|@number|some|couple-of? washer|washers|shim|shims|nut|coin|"
        "packing|spacer behind|under|on|in|to|below the|my? pressure? relief|regulator? valve? spring|relief|regulator",
        "stiffer|stronger relief? spring",
    ),
    "ground_wire_added": (
        "ran|added|add|run a|an? new|extra|good|separate? ground|earth wire|lead|strap?",
    ),
    "wiring_repaired": (
        "fixed|repaired|mended|soldered|cleaned|rewired .. wire|wiring|terminal|terminals|ground|earth|connection",
        "wire|terminal|ground|earth .. repaired|mended|soldered|cleaned|rejoined|joined",
        "ways of connecting .. tried",
        "rewired",
    ),
    "connector_refitted": (
        "unplugged|reseated|cleaned|pushed .. plug|connector",
        "connector|plug .. unplugged|reseated|cleaned|refitted",
        "unplugged|disconnected|pulled and|& replugged|reconnected|replaced|refitted|cleaned .. sender|sensor|switch|plug",
        "replugged|reconnected the? sender|sensor|switch|plug|connector|wire",
        "plugged|pushed it back in|on?",
        "plugged|pushed|put the? wire|connector|plug|lead|terminal back in|on?",
    ),
    "idle_raised": (
        "raised|=upped|turned|increased|bumped|lifted|cranked|set|reset|adjusted|brought|put|wound|tweaked .. idle|tickover",
        "idle|tickover was|is? turned|raised|bumped|upped|set|brought|put|wound up?",
    ),
    "tank_tap_opened": (
        "turned|opened|switched the? oil? tank? tap|valve|cock|stopcock on|open?",
        "opened the? oil? tap|valve",
    ),
    "fuse_renewed": (
        "new|another|replaced|changed|renewed|swapped|fresh the|a|ignition|gauge? fuse|fuses|relay",
        "fuse|fuses|relay was|were? renewed|replaced|changed|swapped",
    ),
    "sump_baffled": (
        "fitted|made|added|welded|installed|put .. baffle|baffles|baffled|trapdoor|trap-door|tray",
        "baffled|baffle sump|pan|tray|plate was? fitted|installed|made|added",
        "baffled the? sump|pan",
    ),
    "other_sump": ("fitted|put .. deeper|bigger|different|another|new|deep sump|pan",),
    "gallery_plugs_fitted": (
        "plugged|sealed|fitted .. gallery|galley|oil hole|plug",
        "new|fitted|replaced|renewed gallery|galley|oil plug|plugs",
        "put|fitted|screwed|knocked|hammered|tapped|drove|pressed|loctited|staked .. gallery|galley|oilway plug|plugs|cup",
        "put|fitted|screwed|knocked|hammered|tapped|drove|pressed|loctited|staked a|an|the|new|missing|correct? new|missing|proper? "
        "gallery|galley|oil? plug|plugs|cup back|in|into|to .. gallery|galley|block|oilway|hole",
    ),
    "fuel_leak_mended": (
        "new|replaced|changed|renewed|rebuilt .. fuel|lift pump|diaphragm|injector|injectors|float",
        "fuel|lift pump was? changed|replaced|renewed|rebuilt again?",
    ),
    "other_filter": (
        "put|fitted|used the|a correct|right|proper one|filter on?",
        "different|other|another brand|make of? filter",
        "oem|genuine filter",
        "went|going|gone|back .. to .. original|genuine|old|oem|previous|proper filter",
        "swapped|changed|switched|went|gone back? to|for a|an|the|my? proper|genuine|oem|original|different|another|better|quality|"
        "decent brand|make|type|kind|of? of? filter?",
        "filter for a|an|the different|another|genuine|proper|better one|brand|make|type",
        "different filter",
    ),
    "new_sender": (
        "new sending unit",
        "two|three|four|five|six|several|@number new? oil? pressure? senders|sensors|switches|sending-units",
        "oil? pressure? switch|sender|sensor was|were|has|had|been? changed|replaced|renewed|swapped twice|again?",
    ),
    "high_volume_pump": ("high volume pump",),
    "other_gauge": (
        "second|another|different|new|master|known-good|borrowed oil? pressure? gauge",
        "borrowed|lent|loaned .. gauge",
        "tried|put|hooked|screwed|fitted|connected|plumbed|teed|used|borrowed|swapped up|in|on? a|an|my|the? known|good? "
        "mechanical|direct|test|master|manual|proper|good oil? pressure? gauge",
        "gauge for a|an mechanical|direct|new|different|another one?",
        "@number|two|three|four|several|both|all other|different? gauges",
        "hardline|external|screw-in|plug-in|capillary|outside oil? pressure? gauge",
    ),
    "filter_tightened": ("tightened .. filter",),
    "pickup_cleaned": (
        "dropped the? oil? pan|sump .. clean|cleaned",
        "pulled the pan .. clean|cleaned|checked",
        "pan|sump off|out .. cleaned",
    ),
    "stripped_and_cleaned": (
        "stripped and cleaned",
        "stripped|tore|pulled the? whole|entire|complete? engine|motor|it|everything down|apart? ,? and? cleaned|washed|scrubbed|boiled",
        "took|pulled|stripped it|everything|engine|the-lot all? apart|down ,? and? washed|cleaned|scrubbed|boiled|flushed",
    ),
}
#: what was opened before something was seen
OPENED_AND_FOUND = (
    "pulled|took|removed|dropped|opened|unscrewed|stripped|undid|drained .. and|to|, found|find|saw|see|discovered",
)
#: earlier work said in a way of its own
AREAS: dict[str, tuple[str, ...]] = {
    "whole_engine": (
        "rebuild|overhaul|restoration",
        "after|since|following|from the|its|my|a|this =build|=assembly|=reassembly",
        "fresh|freshly|newly engine|motor|rebuilt|built",
        "rebuilt|overhauled|reconditioned engine|motor",
        "it|engine|motor was|got|has|had|been? rebuilt|overhauled|reconditioned",
        "rebuilt|overhauled it|mine|this",
        "=rebuilt|=overhauled|=reconditioned .. six|four|v8|v6|flathead|engine|motor|twin|diesel",
        "rebuilt|overhauled|reconditioned since|by|in|last|this|recently|from|with|twice|professionally|about|around|some|"
        "nearly|less|again|years|weeks|months|a|two|three|once|@time|@distance|@year",
        "just|freshly|recently|been|was|got|newly|completely|fully|totally rebuilt|overhauled|reconditioned",
        "rebuilt|overhauled this|the|my engine|motor|lump|block|v8|six|four|diesel",
        "freshly|newly|just|recently rebuilt|built|overhauled engine|motor in|into|for the|my|our|a car|van|truck|boat|tractor|bike",
    ),
    "oil_change": (
        "oil change|service",
        "oil and|& filter change",
        "changed|changing|change|swapped the? my? oil",
        "serviced",
        "after|since|following|at|during|full|last|annual|recent|major a|an|the|its|full|annual|major? service",
        "had|gave|got a full|major|proper? service",
        "new oil",
        "changed oil",
        "drained|dropped the|my|out? old? oil and|&|, .. filter",
        "drained|dropped the|my old? oil .. refilled|refill",
        "changed|switched|went|moved|change over? to cheap|a|full|semi|some? =synthetic|=mineral|@grade|@thick|@thin",
    ),
    "oil_added": (
        "oil was|had|been? added|topped @time|day|before|this|just",
        "topped|added|adding .. @time|days ago|before|earlier",
        "oil top up|off",
        "after|since|following the? topping|top-up|top up?",
    ),
    "other_engine": (
        "engine|motor|block swap",
        "swapped .. engine|motor",
        "new|replacement|crate|used|junkyard|different|rebuilt|reconditioned|another|exchange|secondhand engine|motor|block "
        "was|had|been|and? fitted|installed|put|dropped|went in?",
        "put|fitted|installed|dropped .. new|replacement|crate|used|junkyard|different|rebuilt|reconditioned|another|"
        "secondhand engine|motor|block",
        "replacement|crate|junkyard|exchange engine|motor",
        "new|recon|rebuilt|reconditioned|exchange engine|motor in|into|for the|my|our|a car|van|truck|boat|tractor|bike|lorry|launch|yacht|combine|digger|coach|bus",
        "bought|got|ordered|received|picked a|another|up? new|replacement|rebuilt|reconditioned|recon|exchange|used|secondhand engine|motor|longblock|shortblock",
        "since|with|after|on|has|its|is a|the|this|another =new engine|motor",
    ),
    "cylinder_head": (
        "head gasket",
        "head|top-end job|work|rebuild|overhaul",
        "rebuilt|did|overhauled|redid|refreshed|done the|both? top|heads|head end?",
        "top end job|work|rebuild|overhaul",
        "valve job|grind",
        "heads|valves were|was? reground|ground|skimmed|lapped|decked",
        "decoke|de-coke",
    ),
    "timing": ("new timing chain|belt|gear|gears|kit", "timing job", "cambelt|belt change"),
    "camshaft": ("cam swap|change",),
    "storage": (
        "storage|layup|lay-up|winterized|winterised|mothballed",
        "=stored|=storing =in|=up|=for|=over|=away|=outside|=inside|=since|=the|=it",
        "sat|stood|sitting|left|parked|laid up|standing|idle|unused|in? .. @longtime|years|decades|winter|barn",
        "little|hardly|rarely|not used|run|driven for|in @longtime|years",
        "@longtime of? standing|sitting|storage",
        "months|years of? standing|storage",
    ),
    "transport_or_fitting": (
        "=engine|=engines|=motor|=motors out|pulled|refit",
        "engine installed",
    ),
    "bearings": (
        "new bearings|shells|inserts|mains|big-ends",
        "rings and bearings|rods",
        "bearing job",
        "crank ground|reground|polished",
        "did|done the|my|its|all|both|some|new? new|main|rod? bearings|mains|rods|big-ends",
    ),
    "pistons": (
        "new =rings|pistons",
        "re-ring|re-ringed|reringed",
        "repaired|replaced|renewed|honed .. piston|pistons|=rings|liner|liners",
        "did|done .. =rings",
        "cylinder was|had|has? been? removed|off|replaced|refitted|overhauled|changed",
    ),
    "machine_shop": (
        "hot tanked|tank",
        "line honed|bored",
        "bored and|& honed",
        "crank|block|head|heads was|were|had|been|got? machined|ground|reground|decked|skimmed|bored|polished by|at? an|a|the? "
        "outside|local|machine? shop|machinist?",
        "machine shop did|ground|bored|did|work",
    ),
    "conversion": (
        "dry sump conversion",
        "stroker kit",
        "modified|modded|home-modified|home-made|homemade|custom|shortened|fabricated|deepened pan|sump|pump|pickup",
        "converted to|from",
        "filter was|has|had? been? added",
        "tuned|uprated|bored-out engine|motor",
        "filter|cooler|full-flow conversion",
    ),
    "instrument": (
        "dash out",
        "new dash|cluster|instruments",
        "aftermarket gauge",
        "gauge|sender|sensor|switch is|are|was|about|only|just? @time old",
        "sender|sensor|switch was|has|had|been? moved|relocated|resited",
        "moved|relocated .. sender|sensor|gauge|switch",
        "rewired|rewire|rewiring the|my|whole? dash|car|engine|loom|boat|panel|cluster",
        "gauge|sender|wiring|instrument|instruments added|disturbed|installed|fitted",
    ),
    "clutch_or_gearbox": ("new clutch", "clutch job"),
    "turbo": ("new turbo",),
    "oil_pump": (
        "new|reproduction|aftermarket|rebuilt|uprated|standard|stock|later oil? pump was|base? fitted|installed?",
        "pump|pump-base base|gasket .. fitted|renewed|opened|rebuilt|replaced|overhauled|repaired",
        "at the? oil? pump .. repaired|fixed|cured|mended",
        "opened .. oil? pump",
        "pump|pump-base base fitted",
    ),
    "accessory": (
        "vacuum|hydraulic|steering pump|starter|governor|magneto|mount|mounts .. replaced|renewed|changed|fitted|removed",
        "new|replaced|changed .. vacuum|hydraulic pump|starter|governor|magneto",
        "accessory was|had|is? changed|replaced|removed|disturbed",
    ),
    "oil_cooler_or_lines": (
        "remote filter kit",
        "added|fitted|installed|mounted|put an|a|the|in|on? oil? cooler",
    ),
    "filter_change": ("filter change", "changed|replaced filter|filters", "new filter"),
}
