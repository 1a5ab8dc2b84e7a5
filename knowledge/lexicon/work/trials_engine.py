"""What was tried with the rest of the engine: galleries, bearings, seals, said in a way of its own; other work is an action on a part."""

from __future__ import annotations

_PUT = "fitted|installed|put|replaced|renewed|changed|new|swapped|fitting|replacing|refitted"
_DID = "cleaned|cleared|opened|drilled|unblocked|rodded|cleaning|clearing|cleaned-out"
_TIGHT = "tightened|torqued|retorqued|tightening|nipped|retightened|re-torqued"

#: the trial, by what is said of it
TRIALS: dict[str, tuple[str, ...]] = {
    "idle_raised": (
        "raised|=upped|turned|increased|bumped|lifted|cranked|set|reset|adjusted|brought|put|wound|tweaked .. idle|tickover",
        "idle|tickover was|is? turned|raised|bumped|=upped|set|brought|put|wound up?",
        "idle|tickover up a|by|slightly|to",
        "set|turned|raised|brought|wound it|idle|tickover? up? to|at @rpm",
    ),
    "stripped_and_cleaned": (
        "stripped and cleaned",
        "stripped|tore|pulled the? whole|entire|complete? engine|motor|it|everything down|apart? ,? and? cleaned|washed|scrubbed|boiled",
        "took|pulled|stripped it|everything|engine|the-lot all? apart|down ,? and? washed|cleaned|scrubbed|boiled|flushed",
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
    "gallery_seals_renewed": (
        f"{_PUT} .. feed|transfer|gallery|front-cover|timing-cover tube|tubes|pipe? o-rings|o-ring|seals|gasket",
        f"{_PUT} .. front|timing cover gasket|seal",
    ),
    "drain_plug_tightened": (
        f"{_TIGHT}|replaced|refitted .. drain|sump plug|washer",
        "put|refitted .. filler|oil cap|dipstick back|on",
        "new drain|sump plug|washer",
    ),
    "seals_renewed": (
        "fixed|repaired|mended|fixing the|an|my|its|all|every? external? oil leaks|leak",
        "fixed|repaired|mended|fixing all the|its|my leaks",
        "=resealed|=resealing the|my? oil? sump|pan",
    ),
    "oil_returns_opened": (
        f"{_DID} .. oil returns|drains|drainbacks in|of|from? the? head|heads|valley?",
        f"{_DID} .. drain|return|drainback|drain-back|oil-return holes|passages|back|drains",
    ),
    "piston_jets_renewed": (
        f"{_PUT} .. piston|oil|cooling jet|jets|squirter|squirters|nozzles",
        f"{_PUT} .. squirters|squirter",
    ),
    "cam_phaser_renewed": (f"{_PUT} .. phaser|phasers|vvt|solenoid",),
    "galleries_cleaned": (
        "=blow|=blowing|=blew the|my|all? oil? galleries|gallery|oilways|passages|passageways out|through|clear|down?",
    ),
    "crank_reground": (
        "=crank|=crankshaft was|were|been|is? =ground|=polished|=linished|=turned at|by|down|to|,|and",
        "had|have|having|got the|my? =crank|=crankshaft =ground|=turned|=polished|=machined|=linished",
        "=polished|=linished|=polishing|=linishing the|my? =crank|=crankshaft|=journals",
    ),
    "engine_rebuilt": ("engine|motor gone through|over completely?",),
    "rocker_gear_renewed": ("plugged .. ends|end of|on|in the|a? rocker shaft|shafts",),
    "oil_line_renewed": (
        "made|make|made-up up? a|some? new? flexible|copper|steel? hose|pipe|line",
        f"{_PUT}|{_TIGHT} .. oil line|lines|hose|hoses|union|unions|pipe",
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
}
