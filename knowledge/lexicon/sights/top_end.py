"""Words for camshaft, lifters, rockers, chain, pistons and turbo."""

from __future__ import annotations

_LIFTERS = "lifters|lifter|tappets|tappet|hlas|hla|followers"
_VALVE_GEAR = (
    "rockers|rocker|rocker-shaft|rocker-arms|valve-gear|valvegear|heads|head|top|cam|camshaft|upper"
)
_TURBO = "turbo|turbocharger|turbos"
_GONE = "gone|blown|failed|dead|let|blew|exploded|shot|seized|went|died"
_ROCKERS = "rockers|rocker|rocker-gear|rocker-shaft|valve-gear|cams|cam|camshaft|head|heads|top-end"
_LIFTER = "lifter|lifters|tappet|tappets|follower|followers|hla|hlas"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "piston_or_pin_broken": (
        "piston|ring|rings|wrist|gudgeon|pin|lands|land pin|crown|skirt|button|is|was|had|has|land? =broken|=broke|=cracked|=holed|=melted|=shattered|=collapsed|=failed",
        "broken|cracked|holed|melted|shattered piston|ring|rings|gudgeon|wrist|pin",
        "hole in|through a|the|number? piston",
    ),
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
        f"no|little|hardly|barely|without|@not any|much|enough|a|any? oil to|at|on|up|reaching|getting|coming|gets|comes|around|in|flow|makes up|to|it|at? the|to? {_VALVE_GEAR}",
        f"{_VALVE_GEAR} arms|end|gear|shaft|is|are|was|were|all|bone|running|ran|found? is|are|bone|was|completely? dry|starved",
        f"dry {_VALVE_GEAR}",
        f"{_VALVE_GEAR} .. @not getting|receiving|get any? oil",
        f"oil @not reaching|getting|reach|get to? the? {_VALVE_GEAR}",
        "nothing|none =coming|=comes|=came|=come =out|=up|=through at|from|to|of the? rockers|rocker|top|rocker-arms|pushrods arms|end?",
        "rockers|rocker|pushrods arms? are|is|were|stay|stayed|bone? =dry",
        "oil comes|gets|reaches|goes|coming|getting|only to|up|at? to? the? rockers|rocker|head|heads on|of only? one side|bank|end|half",
        f"nothing|none|dry|zilch at|up|on|in|to the {_ROCKERS}",
        "nothing|dry up top|there",
        "not a|one drop|sign|trace of? of? oil? up|at|on|in top|there|the",
    ),
    "rockers_flooded": (
        "oil floods|flooding|sprays|spraying|pours|pouring|gushes|pools|everywhere .. rocker|valve|head cover|cover|covers|box|heads",
        "rocker|valve cover|covers|box|boxes full|flooded|flooding|swamped of|with? oil?",
        "too much oil to|at|up|in the? top|rockers|heads|valve",
        "rocker|rockers|rocker-gear|valve-gear|head|top-end .. swimming|drowning|awash|flooded|swamped|pouring|bathed in|with|of? oil?",
        "oil everywhere|flying|flung|thrown|slung|spraying|fountain under|off|from|around|round the? rocker|rockers|valve|filler cover|gear?",
        "too|so much oil up|at|on|reaching top|the-rockers|rockers|head",
        "cam|rocker|valve cover|covers|box|boxes|cambox awash|flooded|swimming|brimming|brim-full",
        "cam|rocker box|boxes|cover|covers half? full of oil",
    ),
    "lifters_quiet": (
        f"{_LIFTERS}|top-end|valvetrain are|stay|is|remain|all|perfectly|nice|and|very|dead|stayed|were? all|perfectly|very|nice|dead? quiet|silent",
        f"no|@not {_LIFTERS}|valve|top-end|valvetrain noise|tick|ticking|clatter|noises|rattle",
        f"quiet|silent {_LIFTERS}|top-end|valvetrain",
        "top end is? quiet|silent",
        "no ticking|clatter|tapping from|at the? top|lifters",
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
        "rocker shaft|shafts since|because|as the? old ones|one|pair were|was|are badly|all? grooved|worn|ridged|stepped",
        "rocker|rockers shaft|shafts|bushes was|were|is|are|had|been? badly|grooved|all|worn|ridged|stepped grooved|like|worn|ridged|stepped|through",
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
        "turbo|turbocharger|shaft|wheel|compressor|turbine shaft|wheel|radial|axial|rotor? play|float|movement|clearance excessive|too|bad|over|out|big|large|beyond|visible",
        "excessive|too|bad|big|lots|lot|visible much|of|radial|axial? play|float|slop|movement in|of|on the? turbo|turbocharger shaft?",
        "shaft play excessive|beyond|over|out",
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
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "no_oil_at_rockers": (
        "plenty|lots|good of? oil at|to|up|in|on the? top|rockers|head|valve|heads|cam",
        "oil at|to|reaching|reaches every|all|the rockers|rocker|heads",
        "oil came|comes|coming|got|gets|is|was|shows|reached|reaches|reaching|running|dripping|flowing up|out|through|to|at|all? up|over|to|at|from|of|the? the? =rockers|rocker-shaft|rocker-gear|top-end",
        "till|until oil .. rockers|top|head",
        "rockers|rocker-gear|rocker|valve-gear are|is|were|was|all|nicely|getting|well|get|got wet|oiled|oil|oily|drenched|soaked|lubricated",
        f"good|healthy|strong|nice|decent|plenty squirt|squirts|flow|stream|spurt|jet|gush of? oil? up|at|to|out|from|over|of? the? top|{_ROCKERS}|banjo|there",
        "oil came|comes|up|was|coming|running|flowing up|out|there|showing at|to|on|from|of all|every|each|both|the @number|eight|sixteen|twelve|of|single|my? the? rocker|rockers|pushrod|pushrods|tips",
        "all|every|both|@number|sixteen|twelve|eight of|the? rocker|rockers had|have|has|got|getting|get|were|are oil|oiled|wet|oily",
    ),
    "restrictor_absent": (
        "restrictor|restrictors|jet in|to|for|of the|my? head|rocker|turbo|cam|lifter? feed|line|pipe|gallery|oil? is|are|still|was there|present|in|fitted|place|right|correct|ok|fine",
        "restrictor|restrictors is|are|still|was there|present|in-place|fitted|ok|fine|right",
    ),
    "turbo_shaft_loose": (
        "turbo|turbocharger shaft? end? play|float|clearance|movement is|was|found? ok|okay|fine|normal|good|within|in|negligible|minimal",
        "turbo|turbocharger checked|inspected|spins ok|fine|good|freely|free",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "no_oil_at_rockers": (
        "rocker|rockers|valve_gear|head|top_end|rocker_shaft|cam + no_oil|hardly_any|hardly_any_oil|dry|little_oil|@not_any_oil|barely_any|starved|no_flow|not_a_drop|bone|@not_getting|not_reaching|@not_reach|@not_much_oil|just_a_dribble - filter|not_dry|gasket|bearing|dipstick|cylinder|sump|gauge|plenty_of_oil_in_the_rocker",
    ),
    "rockers_flooded": (
        "rocker|rockers|valve_gear|rocker_box|valve_cover|rocker_cover|top_end|heads|head + flooded|flooding|swimming|awash|drowning|full_of_oil|too_much_oil|spraying|spray|squirting|gushing - no|not|gasket|bolts|leaks|outside|leaking|trapped",
    ),
    "lifters_quiet": (
        f"{_LIFTER}|top_end|valve_gear|valvetrain + quiet|silent|dead_quiet|no_noise|no_tick|no_ticking|hush|not_a_sound|whisper|no_clatter - not|noisy|until|after|shut_up|then",
    ),
    "valve_gear_found_dry": (
        "rocker|rockers|tips|cam|followers|valve_stems|rocker_tips|tappets + dry|blue|blued|scored|burnt|galled|no_oil_film + tips|bone|blue|scored|burnt|found|dry|rust|shafts|seized|arms - crank|getting|oil_to|pressure|bearing|no_oil|not|lobe|lobes|little|hardly",
    ),
    "rocker_shaft_found_worn": (
        "rocker_shaft|rocker_shafts|rocker_bush|rocker_bushes|rocker|rockers + ridges|worn|grooved|end_plug|sloppy|steps|loose|wear|plug_missing|ridged - no|not|cover|box|tips|dry|quiet|seal",
    ),
    "cam_lobes_wiped": (
        "lobe|lobes|cam + wiped|flat|rounded|gone|worn|wearing + cam|lobe|lobes|off|two|one|flat - bearing|bearings|journal|thrust|cover|not|no|gear|sensor|chain|timing",
    ),
    "cam_bearing_found_bad": (
        "cam_bearing|cam_bearings|camshaft_bearing|camshaft_bearings|cam_bush|cam_bushes|cam + spun|worn|walked|loose|turned|wiped|out|copper|gone|moved|bad + bearing|bearings|bush|bushes|cam_bearing|cam_bearings - rod|main|not|no|new|ok|think|big|i_think|told",
    ),
    "lifter_out_of_bore": (
        f"{_LIFTER} + jumped|popped|out|come|came|fell|dropped|spat|left|climbed|above + bore|guide|block|hole|out|gallery - noise|noisy|ticking|not|no|worn|pumped|pump|quietens|rattle|clatter|taken|took|pulled|bled",
        "lifter|tappet|lifters|follower + popped|jumped|came|spat|fell|out + bore|hole|guide|valley|its + out|of|valley - noise|ticking|no|not|took|pulled|pumped",
    ),
    "lifters_loose_in_bores": (
        f"{_LIFTER} + rock|loose|sloppy|wobble|worn|slop + bore|bores|hole - noise|no|not|out_of|come",
    ),
    "lifters_found_drained": (
        f"{_LIFTER} + collapsed|drained|spongy|pumped_down|bled_down|squashed|soft|empty|leaked_down|flat|@not_pumped - noise|no|not|quiet|push",
    ),
    "pushrod_off_or_bent": (
        "pushrod|pushrods|push_rod|push_rods + bent|off|popped|loose|fallen|jumped|out|bowed - tube|seal|straight|no|not|engine|v8|four|six|cover|twin|diesel|petrol|gasoline",
    ),
    "turbo_shaft_loose": (
        "turbo|turbocharger + shaft_play|play|wobble|slop|loose_shaft|touching_the_housing|rocks - banjo|feed|no|not|hose|within|pipe|little",
    ),
    "turbo_shaft_stiff_or_blued": (
        "turbo|turbocharger + stiff|blued|blue|seized|tight|scored|@not_spin - smoke|no|not|pipe|hose|feed|banjo|union|finger|line|drain",
    ),
    "turbo_feed_found_blocked": (
        "turbo|turbocharger + feed|pipe|line|banjo|supply + coked|blocked|kinked|carbon|choked|sealant|plugged|restricted|carboned|solid - no|not|leak|gauge",
    ),
    "turbo_line_leaks": (
        "turbo|turbocharger + feed|pipe|line|banjo|supply|hose + leak|leaking|burst|cracked|split|weeping|off|chafed|broken|loose - no|not|coked|intercooler|air|boost|blocked",
        "feed_pipe|feed_line|turbo_feed|feed_hose|oil_feed|turbo_pipe + chafed|burst|split|leaking|cracked|holed|wet|weeping - no|not|fuel|new|water",
    ),
    "turbo_failed": (
        "turbo|turbocharger|turbos + let_go|failed|blew|blown|died|gone|exploded|went|grenaded|killed|second|seized - not|no|feed|hose|gasket|pipe|line",
        "turbo|turbocharger + snapped|blew|gone|failed|blown|shaft_snapped|died|went|exploded|let_go|grenaded|killed - feed|pipe|hose|line|gasket|not|no|lag|new_turbo_went",
    ),
    "turbo_shrieks": (
        "turbo|turbocharger + shriek|howl|whine|scream|screaming|grinding|screech|whistle_loudly|siren - no|not",
    ),
    "tensioner_slack": (
        "tensioner|chain + no_tension|slack|soft|run_out|hanging|flopping|loose|@not_hold|collapsed|fully_extended|flapping - pump|door|seal|gasket|oil_pump|belt|rattle|snapped|guide_bits|wallet",
    ),
    "tensioner_seal_absent": (
        "tensioner + seal|gasket|o_ring|oring|bolt|plug + missing|cut|torn|loose|left_out|no|without|hard|perished|forgotten - new|fitted",
    ),
    "restrictor_absent": (
        "restrictor|restrictors|=metering|jet + left_out|missing|absent|forgotten|drilled_out|drilled|removed|not_fitted|@not_there|never_fitted|without|no - piston|carb|main_jet|main_jets|squirter|ski|fitted_a",
    ),
    "distributor_seal_bad": (
        "distributor|dizzy + o_ring|oring|o-ring|seal|ring|body + cut|missing|pieces|two|hard|perished|worn|broken|flat|split|gone|no|wrong - cap|gear|arm|clamp|points|rotor|teeth|stationary",
    ),
    "piston_jet_found_broken": (
        "squirter|squirters|piston_jet|piston_jets|oil_jet|oil_jets|cooling_jet|cooling_jets|spray_jet|jet + broken|missing|snapped|loose|fell|bent|cracked|off|left_out|gone|dropped|stuck_open - carb|no|not|main_jet|idle_jet|ski|boat|fuel|drive",
    ),
    "phaser_leaks": (
        "phaser|phasers|variator|vvt_unit|vvt_gear + rattle|leaks|leaking|play|loose|worn|slop|past - new|replaced|no|not",
    ),
    "jets_run_at_low_pressure": (
        "jets|squirters|jet + running|open|dribbling|squirting|flowing|spray + idle|low_pressure|priming|all_the_time|@pressure|tickover|should_be_shut - ski|carb|no|fuel",
    ),
    "piston_or_pin_broken": (
        "piston|pistons|ring|rings|top_ring|wrist_pin|gudgeon_pin|piston_pin|gudgeon|pin_button|piston_skirt|piston_crown|piston_finger|slug|land|ring_land|circlip_groove|compression_ring|oil_ring|pin_plug|skirt|piston_top|ring_lands|wristpin + bits|snapped|broken|broke|worn_away|cracked|holed|split|burnt_through|shattered|hole_in|melted|missing|collapsed|chipped|crumbled|gone|in_two|disintegrated|torn|burned_through|pieces|smashed|seized_and_broke|failed|fractured - o-ring|oring|o_ring|seal|snap|ring_gear|not|no|never|slinger|sealing|none|circuit|pump|relief|relief_piston|retaining|locating|spacer|rubber|pickup|ring_terminal|filter|cooling|clutch|squirter|shaft_pin|coupling|shear|split_pin|roll_pin|wrist_seal|dowel|sealing_ring|distributor",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "rockers_flooded": (
        "@not_flooded|not_flooding|@not_excessive|no_flooding + rocker|rockers|valve_gear|top",
    ),
    "no_oil_at_rockers": (
        "plenty|lots|loads|good|healthy|masses|enough + oil + rocker|rockers|top|up_top|valve_gear|head|cam|upstairs - hardly|barely|little|too|pressure|return|trapped",
    ),
    "piston_or_pin_broken": (
        "pistons|rings|slugs|pins|piston|wrist_pins|gudgeon_pins + perfect|fine|whole|sound|good|intact|undamaged|unbroken|all_good|unmarked|in_one_piece - not|o-rings|seal|except|but|bore|one",
    ),
}
