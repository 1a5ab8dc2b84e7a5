"""More trials, each said in a way of its own."""

from __future__ import annotations

_PUT = "fitted|installed|put|replaced|renewed|changed|new|swapped|fitting|replacing|refitted"
_DID = "cleaned|cleared|opened|drilled|unblocked|rodded|cleaning|clearing|cleaned-out"
_TIGHT = "tightened|torqued|retorqued|tightening|nipped|retightened|re-torqued"
#: the trial, by what is said of it
TRIALS_RARE: dict[str, tuple[str, ...]] = {
    "cooler_bypassed": (
        "took|taken|taking|cut|left the? oil? cooler out of the? circuit|loop|system|line",
        "bypassed|bypass|looped .. cooler",
        "looped|joined|linked|connected the|both|my|two? cooler? hoses|lines|pipes past|around|round|without|together the|my? oil? cooler?",
        "disconnected|disconnecting|eliminated|eliminating|deleted|deleting|unplumbed|isolated the|my? oil? cooler",
        "blocked|blanked|linked|plumbed|cut off|out the|my? oil? cooler",
        "oil? cooler =disconnected|=eliminated|=deleted|=unplumbed|=isolated|=removed altogether|completely|entirely?",
        "oil? cooler hoses|lines|pipes|hose|line was|were|been? =looped|=joined|=linked|=connected together",
        "looping|joining|linking|connecting the|both|my|two? oil? cooler? hoses|lines|pipes together|past|around",
        "cooler =bypassed|=by-passed|=looped|=blanked|=bridged out|off|over?",
    ),
    "new_filter": (
        "changed|switched|swapped|went over to the|its? clean|other|second|fresh|standby side|element|bank|filter|half",
    ),
    "new_relief_valve": (
        "swapped|replaced|changed|renewed|new|another|different the|a|my? relief|steel? =ball|=balls",
    ),
    "stiffer_spring": (
        "relief|regulator valve? spring? was|is? now? =shimmed|=stretched|=packed",
        "=new|=another|=replacement|=different =spring",
    ),
    "bolts_tightened": (
        f"{_TIGHT} the|all|every|a|loose|my? loose? main|mains|rod|bearing|big-end|conrod caps|cap|nuts|bolts",
        "torqued|retorqued|torquing|retorquing the|all? =mains|=rods",
        f"{_TIGHT} .. big end bolts|nuts|caps|cap",
        f"{_TIGHT} .. cap|main|mains|rod|bearing|through|crankcase|internal|inside bolts|bolt|caps|nuts",
        f"{_TIGHT} everything|all up|down|the",
    ),
    "line_bored": (
        "line bored|honed|boring|honing",
        "line-bored|line-honed|align-bored|align-honed",
        "align bored|honed|boring|honing",
        "caps .. put|swapped back in|right|their order|places|place",
    ),
    "block_replaced": (
        "another|different|new|replacement|secondhand|used|exchanged|swapped block|crankcase|cylinder-block",
        "welded|repaired|stitched|brazed|sealed the? cracked|leaking|porous? block|crankcase|gallery|casting",
        "cracked|leaking|porous gallery|block|casting was? welded|repaired|stitched|brazed|sealed",
    ),
    "gauge_port_changed": (
        "put|moved|screwed|teed|fitted the|my|a? gauge|sender|switch in|into|to|onto|on the|an|a? other|another|different|second|main gallery? port|hole|tapping|plug|gallery",
        "moved|relocated|tried|screwed|connected|teed .. gauge|sender .. other|another|different|head|filter|block|gallery port|tapping|place|hole|take-off",
        "gauge|sender .. in|to|at another|different port|tapping|hole|place",
        "teed|plumbed .. at|into the filter|block|head|gallery",
        "=relocated|=resited|=relocating the? oil? pressure? sender|gauge|switch|sensor",
        "tapped|teed|plumbed the|my|a? oil? pressure? gauge|sender|sensor|switch into|in|off the? main? gallery|block|filter|head",
        "moved|relocated|resited|teed|plumbed|shifted the|my? oil? pressure? sender|gauge|switch|sensor to|into|onto|at|up|down",
    ),
    "gallery_seals_renewed": (
        f"{_PUT} .. feed|transfer|gallery|front-cover|timing-cover tube|tubes|pipe? o-rings|o-ring|seals|gasket",
        f"{_PUT} .. front|timing cover gasket|seal",
    ),
    "drain_plug_tightened": (
        f"{_TIGHT}|replaced|refitted .. drain|sump plug|washer",
        "put|refitted .. filler|oil cap|dipstick back|on",
        "new drain|sump plug|washer",
    ),
    "oil_cooling_improved": (
        "fitted|installed|added|put|fitting|installing|adding an|a bigger|larger|second|extra|proper|aftermarket? oil cooler",
        f"{_DID} .. cooler|radiator fins|matrix|core",
        "removed|fixed|refitted|repaired|took .. baffle|baffles|duct|ducting|shroud",
    ),
    "seals_renewed": (
        "fixed|repaired|mended|fixing the|an|my|its|all|every? external? oil leaks|leak",
        "fixed|repaired|mended|fixing all the|its|my leaks",
        "=resealed|=resealing the|my? oil? sump|pan",
    ),
    "relief_cleaned": (
        "got|worked|getting the|my? pressure|oil? relief|regulator valve|plunger|piston moving|free|freed|sliding|working|unstuck again?",
    ),
    "bypass_freed": (
        "blocked|plugged|blanked|tapped|blocking|plugging off|up? the? oil? filter bypass valve|hole?",
    ),
    "fuel_leak_mended": (
        "fixed|stopped|cured|mended|repaired|sorted|fixing the|a|its? fuel|petrol|diesel|gas leak .. changed|oil|new",
        "fixed|repaired|mended|rebuilt|replaced|fixing the|a|its|my? leaking|leaky|dribbling? injector|injectors|carb|float|lift-pump",
    ),
    "coolant_leak_mended": (
        "fixed|stopped|cured|mended|repaired|sorted|fixing the|a|its? coolant|water|antifreeze leak .. changed|oil|new",
        f"{_PUT} .. leaking|leaky liner|coolant|water? seals|seal|o-rings",
        f"{_PUT} .. head gasket|liner|seals|water-pump .. and|with .. oil change|changed|new",
        f"{_PUT} .. cooler .. water in",
        "head gasket was|were|had|been? =replaced|=changed|=renewed|=done and|,|with|plus the? oil|milky|fresh|new|engine",
        "did|done|new|replaced|changed the|a? head gasket ,|and|with .. oil|milky|fresh|flushed",
    ),
    "scavenge_mended": (
        f"{_PUT}|fixed|repaired|primed|rebuilt .. scavenge pump|belt|stage|section",
        "new scavenge|dry-sump|drysump belt|pump",
    ),
    "relief_return_cleared": (
        f"{_DID} .. relief valve? return|drain|bleed passage|hole|line",
        f"{_DID} .. relief return|drain|bleed passage|hole",
    ),
    "pickup_gap_set": (
        "lengthened|extended the|my? pickup|pick-up tube|pipe?",
        "set|adjusted|raised|lowered|bent|shortened|spaced|corrected .. pickup|pick-up|strainer .. height|gap|clearance|depth|up|down|higher|lower",
        "pickup|pick-up height|gap|clearance was? set|adjusted|corrected",
    ),
    "oil_returns_opened": (
        f"{_DID} .. oil returns|drains|drainbacks in|of|from? the? head|heads|valley?",
        f"{_DID} .. drain|return|drainback|drain-back|oil-return holes|passages|back|drains",
    ),
    "restrictor_fitted": (
        f"{_PUT}|added|made .. restrictor|restrictors",
        "restricted the? oil .. head|heads|lifters|top|rockers|turbo|cam",
    ),
    "piston_jets_renewed": (
        f"{_PUT} .. piston|oil|cooling jet|jets|squirter|squirters|nozzles",
        f"{_PUT} .. squirters|squirter",
    ),
    "cam_phaser_renewed": (f"{_PUT} .. phaser|phasers|vvt|solenoid",),
    "pickup_seal_renewed": (
        "o-ring|oring|seal|gasket =replaced|=renewed|=changed|=fitted on|at|of|for|to|in the? pickup|pick-up|suction|strainer tube|pipe?",
        f"{_PUT} .. o-ring|oring|ring|gasket|seal|washer .. on|to|of|for|at|between .. pickup|pick-up|suction|strainer pipe|tube?",
        f"{_PUT} pickup|pick-up|suction|strainer tube|pipe? o-ring|oring|gasket|seal",
        "new o ring|rings .. pickup|pick-up|suction|strainer",
        f"{_TIGHT} .. pickup|pick-up|suction|strainer",
        "sealed|resealed|bedded .. pickup|pick-up|suction tube|pipe|joint|strainer?",
    ),
    "galleries_cleaned": (
        "=blow|=blowing|=blew the|my|all? oil? galleries|gallery|oilways|passages|passageways out|through|clear|down?",
    ),
    "crank_reground": (
        "=crank|=crankshaft was|were|been|is? =ground|=polished|=linished|=turned at|by|down|to|,|and",
        "had|have|having|got the|my? =crank|=crankshaft =ground|=turned|=polished|=machined|=linished",
        "=polished|=linished|=polishing|=linishing the|my? =crank|=crankshaft|=journals",
    ),
    "engine_rebuilt": ("engine|motor gone through|over completely?",),
    "other_sump": (
        "knocked|beat|beaten|hammered|pulled|took .. dent|dents out of|in the? sump|pan",
    ),
    "pickup_cleaned": (
        "cleaned|scraped|dug|cleaning|washed .. sludge|crud|gunk|muck|debris out of|from the? oil? sump|pan|pickup",
    ),
    "rocker_gear_renewed": ("plugged .. ends|end of|on|in the|a? rocker shaft|shafts",),
    "gauge_line_renewed": (
        "=bled|=bleeding the? oil? pressure? gauge? line|pipe|capillary",
        "blew|blown|cleaned|cleared|rodded|poked|replaced|renewed out|through? the? .. gauge|sender|capillary line|pipe|port|hole|restrictor",
        "new gauge|capillary|copper line|pipe|tube",
    ),
    "suction_hose_renewed": (
        f"{_PUT}|{_TIGHT} .. suction|supply|tank|tank-feed hose|pipe|union|clamp|line",
        "new .. hose .. tank|suction|pump",
    ),
    "oil_line_renewed": (
        "made|make|made-up up? a|some? new? flexible|copper|steel? hose|pipe|line",
        f"{_PUT}|{_TIGHT} .. oil line|lines|hose|hoses|union|unions|pipe",
    ),
    "cooler_cleaned": (
        "straightened|unkinked|flushed|cleaned .. cooler line|lines|hose|hoses|pipe|matrix?",
        "cooler line|lines|pipe|hose? kinked .. straightened",
        "flushed|new|cleaned the? oil cooler",
    ),
    "pump_refitted": (
        "bolted|put|screwed|fitted the? pump back? up|on|in|down? back? with|and|on a? new|fresh|another gasket|o-ring|seal",
        f"{_TIGHT} .. pump bolts|cover|mounting|screws|down",
        "new pump gasket|o-ring|seal",
        "oil? pump =off ,? with|and? a? new|fresh|another gasket|o-ring|seal ,? and? back? on? again?",
        f"{_PUT} .. gasket|o-ring|seal .. pump",
        "removed|pulled|took .. pump .. refitted|put|reinstalled back?",
    ),
    "pump_drive_renewed": (
        f"{_PUT} .. pump|intermediate|drive drive? shaft|driveshaft|=gear|chain|coupling|rod",
        f"{_PUT} .. pump drive gears",
        "new skew|drive|pump =gear|shaft",
    ),
    "distributor_refitted": (
        "pulled|removed|took|reseated|refitted|dropped|turned .. distributor|dizzy .. refitted|back|again|in|seated",
        "re-stabbed|restabbed|reseated the? distributor|dizzy",
    ),
    "new_sender": (
        "sender|sensor|switch|sending-unit is|was only|just|barely|about? @time|week|month|weeks|months|a old",
        "sender|sensor|switch|sending-unit is|was brand? new so|and",
        "through @number|two|three|four|several? different? oil? pressure? senders|sensors|switches|sending-units",
        "swapped|switched|exchanged|moved|changed|traded the|both|their|oil|pressure? senders|sensors|sending-units|switches|transducers over|round|around|between|side-to-side|from|across|left|port|starboard",
    ),
    "other_gauge": (
        "swapped|switched|exchanged|moved|changed|traded the|both|their|oil|pressure? gauges|dials|instruments over|round|around|between|side-to-side|from|across|left|port|starboard",
    ),
    "relief_adjusted": (
        "adjusted|adjusting|reset the|my? oil pressure up|down|at|by|on?",
        "turned|wound|screwed|turning|winding up|down? the|my? oil? pressure up|down at|on|with the? relief|regulator|adjuster",
        "turned|turning up the|my? oil pressure",
        "gave|give|giving the? relief|regulator|adjusting|adjuster|pressure valve|screw|nut|bolt? a|an|one|two|half|another extra|full|half? turn|turns",
        "turned|turning|wound|winding|screwed the|my? pressure? relief|regulator valve? in|down|up|out",
        "wound|screwed|turned|cranked|backed|tightened|winding|turning the|my? pressure|oil? relief|regulator|adjusting|adjuster|adjustment valve? screw|adjuster|bolt|nut all the way|fully|right|@number|two|one|a|half turn|turns|in|out|up|down?",
        "wound|screwed|turned|cranked|backed|tightened the|my? pressure|oil? relief|regulator|adjusting|adjuster|adjustment valve? screw|adjuster|bolt|nut right|all|fully? in|out|up|down|home",
    ),
    "filter_tightened": (
        "removed|removing|took|found .. old|second|doubled|double|extra oil? filter? gasket|seal|o-ring",
        "=retightened|=retightening the? oil? filter",
        "filter off|out|back .. with|on|and a? new|fresh|other seal|o-ring|gasket|ring",
    ),
    "thinner_oil": (
        "went|gone|going|changed|switched|dropped back? down? thinner|lighter to|with|for? @thin|@grade|oil?",
    ),
    "idle_raised": (
        "idle|tickover up a|by|slightly|to",
        "set|turned|raised|brought|wound it|idle|tickover? up? to|at @rpm",
    ),
    "overfilled": (
        "put|poured|added|ran|run|with|tried a|an|about|half? half? a|an? quart|litre|liter|pint|@volume extra in?",
        "tried|ran|run|filled it a|about? half|a? a? quart|litre|liter|pint|@volume over the|full|max?",
    ),
    "drained_to_mark": (
        "sucked|drained|syringed|drew|pumped|let the|that|all? extra|excess|surplus oil? out|off|back",
    ),
    "other_filter": (
        "put|fitted the correct|right|proper one on",
        "oe|original-equipment|dealer's|dealers|maker's filter",
        "@number|two|three|four|several|different filters",
        "different|other|another|better make|brand|type of? oil? filter",
    ),
    "thicker_oil": (
        "thick|heavier stuff|oil",
        "tried|ran|put|used|with heavy stuff|oil",
        "went|gone|moved|stepped|going up a|one|two grade|grades|weight",
    ),
    "high_volume_pump": ("bigger|larger|uprated|high-capacity|wider oil? pump",),
    "oil_poured_in": (
        "poured|squirted|tipped|put|got|injected|pumped|poured a|some|about|half? a? @volume|pint|cup|bit|oil of? oil? down|into|in|through the|a? oil? filter housing|head|bowl|canister|hole|boss|port",
        "backfilled|back-filled|filled it|her|the|engine|block? through|via|from the? sender|switch|gauge|filter hole|port|gallery|fitting",
    ),
    "connector_refitted": (
        "unplugged|unplug|pulled|disconnected|removed it|the|off|and|,|then? .. reseated|reseat|replugged|reconnected|re-plugged|re-seated|plugged the|it|its? back|in|on? oil? pressure? sender|sensor|switch|plug|connector|lead|wire?",
        "reseated|reseat|replugged|re-plugged|re-seated the|its|that? oil? pressure? sender|sensor|switch|plug|connector|lead|wire",
        "pushed|pressed|shoved it|the-plug|the-connector|plug|connector home|tight|on|in properly|home|tight?",
        "crimped|soldered|put|fitted a|an|on? new? =ring|spade|eyelet|terminal|connector|plug on?|in?",
        "sprayed|squirted contact|switch|electrical cleaner",
    ),
    "right_oil": (
        "drained|dropped|dumped it|that|the-oil|oil ,|and|& then? put|filled|refilled|poured in|with? @grade|@thin",
        "oil change with|to|using the|a? proper|right|correct|specified|same",
    ),
    "sump_baffled": (
        "fitted|made|added|welded|installed|put .. baffle|baffles|baffled|trapdoor|trap-door|tray in|into|to|for? the? sump|pan?",
        "baffled|baffle sump|pan|tray|plate was? fitted|installed|made|added",
        "baffled the? sump|pan",
    ),
    "gallery_plugs_fitted": (
        "plugged|sealed|fitted .. gallery|galley|oil hole|plug",
        "tapped|threaded|drilled and|& plugged|tapped .. gallery|galley",
        "new|fitted|replaced|renewed gallery|galley|oil plug|plugs",
        "put|fitted|screwed|knocked|hammered|tapped|drove|pressed|loctited|staked .. gallery|galley|oilway plug|plugs|cup",
        "added|fitted|put|refitted|installed|screwed|drove|pressed the|that|a? missing|forgotten|lost pipe|core|cup|threaded|gallery|galley|oilway? plug|plugs back? in?",
        "added|fitted|put|refitted|installed|screwed|drove|pressed the|that|a|new pipe|gallery|galley|oilway plug|plugs back? in?",
        "put|fitted|screwed|knocked|hammered|tapped|drove|pressed|loctited|staked a|an|the|new|missing|correct? new|missing|proper? "
        "gallery|galley|oil? plug|plugs|cup back|in|into|to .. gallery|galley|block|oilway|hole",
    ),
    "ground_wire_added": (
        "ran|added|add|run|put|fitted|made|rigged|running|adding a|an? new|extra|good|separate? ground|earth wire|lead|strap? to|from|on|off? the? sender|sensor|switch? body|case|casing?",
        "ground|earth wire|lead|strap|cable was|were|been|has? =run|=added|=fitted|=rigged",
        "=grounded|=earthed|=grounding|=earthing the? sender|sensor|switch =body|=case|=casing",
    ),
    "tank_tap_opened": (
        "turned|opened|switched the? oil? tank? tap|valve|cock|stopcock on|open?",
        "opened the? oil? tap|valve",
    ),
    "fuse_renewed": (
        "new|another|replaced|changed|renewed|swapped|fresh the|a|ignition|gauge? fuse|fuses|relay",
        "fuse|fuses|relay was|were? renewed|replaced|changed|swapped",
    ),
}
