"""What is heard of the engine, and how it runs."""

from __future__ import annotations

from knowledge.reports.words import Shows

#: what shows, by what is said
NOISES_SAID: dict[Shows, tuple[str, ...]] = {
    Shows.NO_START: (
        "cranks|turns .. @not start|fire|catch",
        "won't|wont start|fire",
        "@not =start at? all?",
        "will|would|does|did|refuses|refused @not|to re-start|restart|start|fire|catch",
        "cranks .. @not|wont|fails|refuses to? start|starts|fire|fires|started|catch",
        "refuses|refused|failed|fails to start|fire|restart",
    ),
    Shows.LOST_POWER: (
        "down on power",
        "went|goes|gone|into|in|in-to|of into? limp|limp-home|get-you-home|reduced-power mode",
        "became sluggish",
        "limits|limited|limiting itself|speed|revs|rpm to|at|down about? @rpm",
        "engine|motor|it|she|speed|revs|rpm is|gets? limited to about? @rpm",
        "engine|motor|car|she =went flat|sick|sour|dead|weak|woolly",
        "lost|loses|losing|lack|lacks|loss|lacking of|all|some|engine|any|more? power",
        "all? engine? power was|is|all|completely? lost|gone|failed|faded",
        "no|little|without|less more? power",
        "down|short on power",
        "gutless|bogged|bogging|bogs down?",
        "@not =pull|=pulls|accelerate|rev properly|well|hard|at|up|over|past?",
        "came to a halt|stop|standstill",
    ),
    Shows.ROUGH: (
        "runs|running|ran|idles|idling rough|badly|lumpy",
        "misfires|misfiring|misfire",
        "rough idle",
        "engine|it|she|and ran|runs|running|idles|idling very|really|a|bit? rough|lumpy|badly|uneven|unevenly",
        "hunting at idle",
        "running on three|two|five|seven cylinders?",
        "ran rough",
    ),
    Shows.ALARM: (
        "general|engine|master alarm|warning",
        "check engine light|lamp",
        "lamp|light|alarm|warning of|with unknown|no meaning|label",
        "engine|general|master alarm|alarms|warning",
    ),
    Shows.KNOCK: (
        "bottom|lower end noise|rattle",
        "rod|main bearing? knock|noise",
        "big end rattle|noise|knock",
        "=knock|=knocks|=knocking|=nocking|=clunking|=clunks|=thumping|=thump|=thumps|=rumbling|=rumble|=rumbles|=hammering|=hammers|=thud|=thudding|=clonking|=clonk|=clonks|=clunk|=pounding|=banging",
        "=knocked|=hammered|=rumbled|=thumped =before|=until|=till|=yet|=previously",
        "it|she|engine|motor|bottom|now =bangs|=banging",
        "=knocked|=hammered|=rumbled|=thumped loudly|badly|like|from|when|at|hard",
        "bottom|lower|big end noise|noises|knock|knocks|rumble|rattle|going|gone|noisy",
        "heavy|deep|dull metallic? noise|knock|thump|thud|sound|rumble",
        "noise|noises|knocking|sound from|in the? bottom|lower|crankcase|block|sump end?",
        "bearing|bearings noise|noises|rumble|knock|knocking",
    ),
    Shows.TICKING: (
        "lifter|lifters|tappet|tappets|valves|rockers|valvetrain|top-end are|were|is|was|all|really|started|going|go? hammering|hammer|hammered|banging|knocking|"
        "pounding|clacking|clack|chattering|pecking|screaming|going-mad|going-crazy",
        "lifter|lifters|tappet|tappets|hla|hlas|rocker|rockers noise|noisy|ticking|clicking|tick|rattle|rattling|tap|loud|"
        "chatter|chattering|collapsed",
        "noisy|loud lifter|lifters|tappets|tappet|rockers|top-end|valves",
        "top end|valve|valvetrain|valve-train noise|noisy|clatter|rattle|rattling",
        "tapping noise|sound",
        "valve gear|train noise|noisy|clatter",
        "=ticking|=ticks|=tick|=clattering|=clatters|=clatter|=clacking|=clacks|=ticky|=tappety|=tapety|=pecking|=clattery|=tappy|=clackety|=chattering",
        "=clicking|=tapping|=pecking|=chattering noise|sound|from|on|in|when|at|top|lifter|lifters|tappets",
        "like a sewing machine",
        "sounds|sounding|sounded|clatters|rattles like an|a? old? diesel|tractor|taxi",
        "noisy|loud|clattery|rattly|tappety top|upper end",
        "noisy|loud|clattery valve|valves gear|train?",
        "=clattered",
        "=ticked|=tapped|=clattered|=clicked for|like|when|at|since|all|loudly|badly|away|a|on",
        "top|upper|valve end|gear|train starts|started|begins|began|went|gets to|all|very? rattle|rattling|tick|ticking|clatter|tap|tapping|noisy|chatter",
        "the|and|my lifters|tappets|hlas =start|=begin",
        "it|still|she =taps|=tapped|=tapping",
        "lifter|lifters|tappet|tappets|hla|hlas|followers|rocker|rockers|hydraulic-lifters are|is|were|was|get|gets|got|go|went|start|started|very|a|bit|really|to|all? noisy|loud|rattling|rattle|clatter|clattering|tapping|tap|chatter|ticking|clicking|clack|clacking",
        "top|upper|valve end|train|gear is|was|very|gets|got|a|bit? noise|noisy|clatter|clattery|rattle|rattling|clatters|loud|ticking|tapping|chatter",
        "noise|noises|noisy|clatter|racket|rattle|tapping from|in|at|up|on the? top|upper|valve|rocker|rockers|head|valves|valvetrain end?",
        "tappet|tappets|lifter|lifters|valve|rocker|valves noise|noises|clatter|rattle|tick|chatter|racket|clack",
        "top|upper end|half noisy|loud|clattery|clatters|rattles",
        "clatter|clattering|=tapping|ticking",
        "=tac|=tak|=tic|=tick|=tick-tick|=tap|=clac|=clack =tac|=tak|=toc|=tic|=tick|=tock|=tap|=clac|=clack",
    ),
    Shows.RATTLE: (
        "rattle|rattles|rattling|rattled",
        "like a|an? bag|can|bucket|box|tin|sack of spanners|nails|bolts|rocks|marbles|hammers|stones|nuts|gravel",
        "chain rattle|noise|slap|slapping|noisy",
    ),
    Shows.WHINE: (
        "whine|whines|whining|howl|howling|humming|whirring|shriek|shrieks",
        "it|its|it's|turbo|engine|pump|that|a|and|now|started|is|loud =whistling|=whistles|=whistle",
    ),
    Shows.GRINDING: ("grinding|grinds|graunching|growling",),
    Shows.SQUEAK: (
        "squeak|squeaks|squeaking|squeal|squealing|squeals|chirping",
        "=squealed|=chirps|=chirped",
    ),
    Shows.SMOKE: (
        "=smokes|=smoking|=smoked|=smoke|=smokey|=smoky",
        "clouds|puffs|puff|plume|lots|trail of smoke from|out the? exhaust|tailpipe|pipe|back",
        "cloud|clouds|plume|trail of blue|grey|white|black? smoke behind|following",
        "smoke poured|pouring|pours|billowed|billowing|billows from|out|behind",
    ),
}
