"""What is seen or known of the top end, in phrases of more than the book's own ``also``."""

from __future__ import annotations

_LIFTERS = "lifters|lifter|tappets|tappet|hlas|hla|followers"
_ROCKERS = (
    "rockers|rocker|rocker-shaft|rocker-arms|valve-gear|valvegear|heads|head|top|cam|camshaft|upper"
)
_TURBO = "turbo|turbocharger|turbos"
_GONE = "gone|blown|failed|dead|let|blew|exploded|shot|seized|went|died"
#: the finding, by what is said when it is there
SIGHTS_TOPEND: dict[str, tuple[str, ...]] = {
    "turbo_shrieks": (
        f"{_TURBO} is|was|started|has|getting? whine|whines|whining|howls|screaming|shriek|noisy|screams|howling|whistling|shrieks|grinding|screamed|siren",
        f"whine|howl|shriek|scream|screech|screeching|screaming|grinding|whistle|siren noise? from|in the? {_TURBO}",
    ),
    "turbo_failed": (
        f"{_TURBO} has|had|is|was|just|then|screamed|bearings|shaft|seals? then|just|been? {_GONE} go|out|up|again?",
        f"{_GONE} {_TURBO}",
        f"{_TURBO} failure|failures",
        f"second|third|another new? {_TURBO}",
        f"{_TURBO} let go",
        f"lost|killed|ate|eaten the|a|my|its {_TURBO}",
    ),
    "timing_cover_rattles": (
        "chain|timing rattle|rattles|rattling|noise|noisy|slap|clatter|clatters",
        "timing cover|case|chain|chains rattles|rattle|rattling|noise|noisy|slap",
        "rattle|rattling|noise|clatter from|in|at|behind the? timing|chain cover|chain|case|end?",
        "front of the? engine rattles|rattle|rattling",
    ),
    "no_oil_at_rockers": (
        "oil|oiling only? =comes|=coming|=gets|=getting|=to|=up|=only out? on|to|up|from? only? one side|bank|head only?",
        "one side|bank|head gets|has|is|was|stays no|little|bone oil|dry",
        "one side|bank|head is|was|stays|runs dry|starved",
        "rockers|rocker|pushrods|top-end|head|heads on|of one|the|left|right|passenger|drivers side|bank|head? are|is|were|was|stay|dry|get dry|bone|no|starved",
        f"no|little|hardly|barely|without|@not any|much|enough|a|any? oil to|at|on|up|reaching|getting|coming|gets|comes|around|in|flow|makes up|to|it|at? the|to? {_ROCKERS}",
        f"{_ROCKERS} arms|end|gear|shaft|is|are|was|were|all|bone|running|ran|found? is|are|bone|was|completely? dry|starved",
        f"dry {_ROCKERS}",
        f"{_ROCKERS} .. @not getting|receiving|get any? oil",
        f"oil @not reaching|getting|reach|get to? the? {_ROCKERS}",
    ),
    "rockers_flooded": (
        "oil floods|flooding|sprays|spraying|pours|pouring|gushes|pools|everywhere .. rocker|valve|head cover|cover|covers|box|heads",
        "rocker|valve cover|covers|box|boxes full|flooded|flooding|swamped of|with? oil?",
        "too much oil to|at|up|in the? top|rockers|heads|valve",
        "rocker|rockers|rocker-gear|valve-gear|head|top-end .. swimming|drowning|awash|flooded|swamped|pouring|bathed in|with|of? oil?",
        "oil everywhere|flying|flung|thrown|slung|spraying|fountain under|off|from|around|round the? rocker|rockers|valve|filler cover|gear?",
        "too|so much oil up|at|on|reaching top|the-rockers|rockers|head",
    ),
    "lifters_quiet": (
        f"{_LIFTERS}|top-end|valvetrain are|stay|is|remain|all|perfectly|nice|and|very|dead|stayed|were? all|perfectly|very|nice|dead? quiet|silent",
        f"no|@not {_LIFTERS}|valve|top-end|valvetrain noise|tick|ticking|clatter|noises|rattle",
        f"quiet|silent {_LIFTERS}|top-end|valvetrain",
        "top end is? quiet|silent",
        "no ticking|clatter|tapping from|at the? top|lifters",
    ),
    "clatters_only_at_high_revs": (
        f"{_LIFTERS} pump|=pumped|=pumping up",
        f"{_LIFTERS} noisy|clatter|rattle|tick|noise only? at|above|over high|@rpm revs|rpm?",
        "clatters|clatter|rattles only at|above high|@rpm",
    ),
    "lifters_found_drained": (
        f"{_LIFTERS} .. drained|collapsed|bled|empty|flat|deflated|spongy|leaked down?",
        f"collapsed|drained|empty|spongy {_LIFTERS}",
        f"{_LIFTERS} number|no? @number? @not =pumped|=pumping|pump up",
    ),
    "rocker_shaft_found_worn": (
        "rocker shaft|shafts|bushes|bushings|arms is|was|are|were|badly|very|found|all|grooved? badly|very|all|found|quite? worn|grooved|scored|loose",
        "worn|grooved|scored rocker shaft|shafts|bushes|arms|gear",
        "wear in|on the? rocker shaft|shafts|bushes|arms",
        "rocker shaft plug|plugs|end|cap .. missing|out|fell|gone|lost",
    ),
    "valve_gear_found_dry": (
        "rockers|rocker|valve|pushrod tips|gear|tip|ends|train|arms is|are|was|were? blued|galled|burnt|scuffed",
        "cam|followers|valve-gear|valvegear run|ran|found|bone dry",
        "camshaft|cam|cams|lobes|rockers|followers|rocker dry|starved|short and|,|& of? blue|blued|scored|galled|torn|burnt|worn|oil",
        "rocker|follower|tappet|cam face|faces|pads|pad|lobe|lobes torn|galled|burnt|blued|blue",
    ),
    "pushrod_off_or_bent": (
        "rocker|rockers|arm is|was|had|has|one|come|fallen|popped|jumped|slipped|knocked|lying off|out|loose|lying|adrift|on its|the|it|of|in? spot|seat|valve|"
        "stud|pushrod|shaft|lifter|place|valley|head?",
        "rocker|follower|pushrod|finger lying|laying|loose|sat|sitting in|on|under the? valley|head|cover|cam|oil|bottom",
        "rocker|follower popped|jumped|fell|come|came|fallen|spat off|out",
        "pushrod|pushrods|push-rod|push-rods .. bent|off|loose|jumped|out",
        "bent|loose|dropped pushrod|pushrods|push-rod|push-rods",
    ),
    "camshaft_broken": (
        "cam|camshaft is|was|had|has|found? broken|snapped|seized|broke|fractured|siezed|sheared",
        "broken|snapped|seized|broke .. cam|camshaft",
    ),
    "restrictor_absent": (
        "restrictor|restrictors|metering|jet .. missing|left|drilled|removed|absent|not",
        "no|missing|without|forgot|omitted the|a? oil? restrictor|restrictors",
    ),
    "tensioner_seal_absent": (
        "tensioner|tensioners gasket|seal|o-ring|bolt .. missing|cut|left|loose|torn",
        "no|missing|without gasket|seal|o-ring .. tensioner",
    ),
    "tensioner_slack": (
        "tensioner|tensioners is|was|has|run|worn|soft|collapsed|fully|not? soft|run|collapsed|slack|weak|extended|out|worn|gone|failed|broken",
        "timing? chain is|was|had|very|too|really|stretched|quite? slack|loose|stretched|floppy",
        "slack|loose|stretched|floppy timing|cam? chain",
        "collapsed|failed|worn|broken|weak chain? tensioner|tensioners",
    ),
    "lifter_out_of_bore": (
        f"{_LIFTERS} .. out|popped|come|came|jumped of|out|from its|their|the? bore|bores|place",
        f"open|uncovered|empty {_LIFTERS} bore|bores|hole",
    ),
    "lifters_loose_in_bores": (
        f"{_LIFTERS} .. loose|rock|sloppy|wobble|worn in their|the|its bores|bore",
        f"{_LIFTERS} bores|bore .. worn|oversize|loose|wide",
        f"worn|sloppy|loose {_LIFTERS} bores|bore",
    ),
    "cam_lobes_wiped": (
        "cam|camshaft lobes|lobe .. wiped|flat|worn|pitted|gone|rounded|off",
        "lobes|lobe .. wiped|flat|gone|worn off|away|down?",
        "wiped|flat|worn|flattened|wiping out|off|a|the? cam|camshaft lobe|lobes",
        "wiped the|a cam|lobe",
        f"{_LIFTERS} faces|face|bottoms|are|were? pitted|concave|dished|worn|chewed",
    ),
    "cam_bearing_found_bad": (
        "cam|camshaft bearing|bearings|bush|bushes .. worn|turned|spun|loose|shot|gone|out|through|copper|bad|walked|wiped",
        "worn|spun|bad|shot|loose|turned|walked cam|camshaft bearing|bearings|bush|bushes",
    ),
    "cam_journals_worn": (
        "cam|camshaft journals|journal|caps|carriers is|are|were|was|badly|very? worn|scored|grooved|scuffed|galled",
        "scored|worn cam|camshaft journals|journal",
    ),
    "cam_bearing_pours": (
        "oil pouring|pours|pour|gushing|gushes|squirting|pissing|flooding|spraying|shooting|streaming|coming|running out|from|past|down|round|around|by|behind|"
        "at of|from|past|by|behind|around|round|at|behind? the|a|one|that|my|rear|front|middle|back|number? rear|front|back|middle? cam|camshaft bearing|"
        "bearings|journal|journals|plug?",
        "oil pours|pouring|floods|gushes .. cam|camshaft bearing|bearings",
        "oil pours|pouring|floods|flooding|gushes|gushing|streams|streaming|runs|running|rushing|coming out|off? from|past|around|round|at|by|of|off .. cam|camshaft bearing|bearings",
    ),
    "lifter_bore_pours": (
        "oil pouring|pours|pour|gushing|gushes|gushed|squirting|pissing|flooding|spraying|shooting|streaming|coming out|from|past|up|by|around|round of|from|"
        "past|by|around|round? the|a|one|that|my|number? lifter|lifters|tappet|tappets|follower bore|bores|hole|holes|itself|body?",
        f"oil pours|pouring|sheet|gushes|floods .. {_LIFTERS} bore|bores|hole|galleries?",
    ),
    "tensioner_floods": ("oil pours|pouring|floods|gushes|pouring .. tensioner",),
    "distributor_bore_pours": (
        "oil pours|pouring|sheet|gushes|floods .. distributor bore|hole|housing|shaft?",
    ),
    "piston_jet_found_broken": (
        "without|forgot|lacks|lacking|missing|left-out one|a|the|two|of? the? piston? oil? cooling jet|jets|squirter|squirters|nozzle",
        "piston? oil? cooling? jet|jets|squirter|squirters|nozzle|nozzles .. missing|broken|loose|fallen|off|bent",
        "missing|broken|loose piston? oil? cooling? jet|jets|squirter|squirters|nozzle",
    ),
    "distributor_seal_bad": (
        "distributor|dizzy o-ring|oring|seal|ring|body|rings .. cut|missing|worn|wrong|bad|hard|flat",
        "wrong|missing|cut|worn distributor o-ring|oring|seal|ring|body",
    ),
    "turbo_shaft_stiff_or_blued": (
        f"{_TURBO} shaft|bearings|bearing|impeller .. stiff|blued|scored|seized|tight|burnt|blue",
    ),
    "turbo_shaft_loose": (
        f"{_TURBO} shaft|impeller|wheel|bearings .. play|loose|slop|wobble|float|touching",
        f"play|slop|wobble|movement in|on the? {_TURBO}",
    ),
    "turbo_feed_found_blocked": (
        f"{_TURBO} feed|oil|supply feed|pipe|line|supply? pipe|line|hose|banjo? .. blocked|coked|kinked|clogged|restricted|choked|carboned",
        f"blocked|coked|kinked|clogged|restricted .. {_TURBO} oil? feed|supply|line|pipe",
    ),
    "turbo_line_leaks": (
        f"{_TURBO} oil? feed|supply|oil line|pipe|hose? .. leaks|leaking|burst|cracked|split|came|off|broke|blew|weeping|leak",
        f"leak|leaking|burst|cracked|split .. {_TURBO} oil? feed|supply|line|pipe|hose",
    ),
    "phaser_leaks": (
        "phaser|phasers|=vct .. rattles|rattle|leaks|leaking|noisy|worn|loose|knock",
        "vvt solenoid|valve|actuator|unit|sprocket|gear .. rattles|rattle|leaks|leaking|noisy|worn|loose",
    ),
}
