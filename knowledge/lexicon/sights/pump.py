"""What is seen or known of the pump and its drive, in phrases of more than the book's own ``also``."""

from __future__ import annotations

_PUMP = "pump|pumps|oil-pump"
_SHAFT = "shaft|driveshaft|drive-shaft|rod|spindle|quill"
_DRIVE = "pump|drive|intermediate|jackshaft|distributor"
_BROKE = "broken|broke|snapped|sheared|twisted-off|fractured|failed|parted"
_WORN = "worn|knackered|shot|scored|scuffed|chewed"
_SEIZED = "seized|jammed|locked|siezed|stuck|solid"
_HIGH_VOLUME = (
    "high-volume|hi-volume|hv|high-capacity|high-pressure|uprated|bigger|big-block|high-output"
)
#: the finding, by what is said when it is there
SIGHTS_PUMP: dict[str, tuple[str, ...]] = {
    "gears_worn_out": (
        f"{_PUMP} is|was|looks|looked|found|gears|rotors|very|badly|quite|totally? badly|all|totally|completely|quite? worn|knackered|shot",
        "worn|knackered out? oil? pump",
        "gears|rotors|gear|rotor is|are|was|were|badly|very|all|found? badly|all|very? worn|knackered|shot|clapped",
        "worn|knackered|clapped pump? gears|rotors",
        f"wear in|on|inside the? oil? {_PUMP}",
        f"inside of|the? {_PUMP} .. {_WORN}",
    ),
    "rotor_still_when_cranked": (
        "rotor|distributor|rotor-arm arm|button? is|was? @not turn|turns|turned|turning|spin|spinning|rotate|rotating|move",
        "rotor|rotor-arm arm? stood|stands|stays still|stationary",
        "dizzy @not turn|turning|spin|spinning|drive|driving",
    ),
    "no_oil_when_cranked": (
        "pump|it wont|cant|cannot|doesnt|didnt|wouldnt|refuses get|to? to|it? prime|self-prime",
        "no oil from|at|out|comes|coming|came|flow|flowing .. filter|pump|housing|outlet|adapter|block",
        "cranked|cranking|spun .. filter off|out .. nothing|no|dry",
        "filter stays|stayed|still|came|remained empty|dry|bone-dry",
        "@not a? .. oil .. out|from of? the? pump|filter",
    ),
    "high_volume_pump_fitted": (
        f"{_HIGH_VOLUME} oil? pump",
        "high|hi volume|vol|capacity|output|pressure oil? pump",
        "stiff|stiffer|stronger|heavier|uprated|heavy|hd relief valve? spring|springs",
        "hv pump",
    ),
    "pump_noise": (
        f"{_PUMP} is|was|makes|sounds|very|whining|getting? noisy|whining|whines|whine|rattles|rattling|howls|howling|grinding|growling|screaming",
        "whine|howl|rattle|noise|whining|howling from|in|at|near the? oil? pump",
        "whine|whining|howl|howling noise? .. rises|follows|increases|with revs|rpm|speed|the?",
    ),
    "original_drive_shaft": (
        f"original|stock|factory|old|first oil? pump? drive? {_SHAFT}",
        f"{_DRIVE} {_SHAFT} is|was? the? original|stock|never",
    ),
    "drive_partner_stopped": (
        "tach|tacho|tachometer|rev-counter|counter .. zero|dead|died|stopped|quit|dropped too|as|also|at|same|with?",
        "tach|tacho|tachometer|rev-counter and|& oil? pressure|gauge both? died|dead|quit|stopped|zero",
        "tach|tacho|tachometer|rev-counter .. read|reads zero|nothing|too",
        "engine|it cut|died|quit|stopped when|as|and|same .. pressure went|gone|dropped|zero",
        "lost spark|ignition and|& oil? pressure",
    ),
    "drill_gives_none": (
        "drove|spun|turned|ran pump|it|shaft with|by a|the|my? drill ,? still|and? nothing|none|nil|no",
        "drill ,? still|and? nothing|none|nil",
        "drill .. no|zero|nothing|@not .. pressure|psi|oil|gauge|build",
        "primed|priming|spun .. drill .. nothing|zero|none",
        "drill @not .. pressure|build|prime|anything",
        "no|zero pressure with|using|by a|the? drill",
    ),
    "drill_gives_little": (
        "drill .. only|just|barely about? @pressure|@number",
        "only|just about? @pressure with|by|using a|the|hand? hand? drill",
        "drill .. low|little|weak|poor pressure",
    ),
    "drill_gives_good": (
        "got|get|gives|gave|made|makes|had|shows? @pressure|@number on|with|from|off the|a? =drill",
        "=drill got|gives|gave|made|makes|had @pressure|@number",
        "@pressure|@number on|with|off the|a? =drill",
        "drill .. gives|gave|got|get|makes|made|shows|reads|good|plenty|builds|built good|plenty|full|of? pressure",
        "drill .. pressure came up|right",
        "drill .. oil|pressure .. rockers|everywhere|good|no problem",
        "good|plenty|full|great|strong pressure with|on|using|from the|a drill",
        "drill .. gauge rose",
    ),
    "pump_jammed": (
        f"{_PUMP} is|was|had|has|found|completely|totally? found|been|completely? {_SEIZED}",
        f"{_SEIZED} up? oil? pump",
        f"{_PUMP} would|will|could? only|just? turn|turns|turned|turning|rotate|rotates|rotated|move|moves|spin|spins .. before|then|and|until|till it? would|then? bind|binds|bound|binding|lock|locks|locked|stop|stops|stopped|jam|jams|jammed up?",
        f"{_PUMP} only|just|barely turn|turns|turned|rotates|rotated|moves|moved .. then|before|and|until it? stop|stops|stopped|bind|binds|lock|locks",
        f"{_PUMP} drive|shaft|rod|spindle|driveshaft|drive-shaft =wont|=wouldnt|=cant|=couldnt turn|rotate|move|spin",
        f"{_PUMP} drive|shaft|rod|spindle|driveshaft|drive-shaft would|will|could not turn|rotate|move|spin",
        f"{_PUMP} drive|shaft|rod|spindle? is|was|had|been|just? been? bound up",
        f"{_PUMP} keeps|kept|would|will? seizing|seizes|freezing|freezes|froze|frozen|locking|locks|jamming|jams|binding|binds up?",
        f"{_PUMP} wont|wouldnt|cannot|cant be? turn|turned|rotate|spin by?",
    ),
    "drive_shaft_broken": (
        f"{_DRIVE} drive? {_SHAFT} .. {_BROKE}",
        f"{_BROKE} oil? {_DRIVE} drive? {_SHAFT}",
        f"{_SHAFT} to|of|for|driving the? oil? {_PUMP} .. {_BROKE}",
        f"{_BROKE} .. {_SHAFT} to|of|driving the? oil? {_PUMP}",
        f"{_PUMP} {_SHAFT} {_BROKE}",
        "drive rod stub? .. broken|snapped|sheared off?",
    ),
    "drive_shaft_rounded": (
        f"{_DRIVE} {_SHAFT}|end|tang|hex|slot .. rounded|rounding|worn|twisting|chewed off?",
        "driveshaft|drive-shaft|quill|intermediate-shaft end|tang|hex|slot? .. rounded|rounding|worn|chewed off?",
        "hex|tang|slot|dog is|was|had|has|end? rounded|worn|chewed off|over|away?",
        f"rounded off? .. {_SHAFT}|hex|tang",
    ),
    "drive_not_engaged": (
        "hex|tang|shaft|slot|dog|tongue|drive|rod barely|hardly|just|only|not|doesnt|didnt|isnt|wasnt|never|wont bites|bite|biting|catches|catch|catching|"
        "engages|engaged|engage|engaging|reaches|reach|reaching|meets|touches|in|into|goes|go|going|seats|seated|drops|dropping the|it|in|into|pump|slot|fully|"
        "far|deep|enough|properly?",
        "distributor|dizzy|dist gear|shaft|is|was|sits|sat|stands|gear? not|isnt|wasnt|never|about|up|too|sits|1/8|a? all|fully|right|properly|high|proud|up|"
        "short down|in|home|seated|of|from|where|off|by",
        "gear is|was|sits|sat about|around? @length|@number|1/8|inch|eighth|mm .. up|high|above|proud|out from|of|where|off?",
        f"{_SHAFT}|drive|tang|distributor|dizzy|pump @not engage|engaged|engaging|mesh|meshing|seated|reach|reaching",
        f"{_SHAFT} .. too short",
        f"{_SHAFT}|drive .. dropped|fell|slipped|come|came out|down|disengaged of?",
        "@not engaged|engaging|engage .. pump|distributor|drive|shaft",
    ),
    "drive_gear_stripped": (
        f"{_DRIVE}|skew|worm drive? gear|gears|pinion|teeth|sprocket .. stripped|missing|broken|sheared|chewed",
        "cam|camshaft|crank drive gear|gears|pinion .. stripped|missing|broken|sheared|chewed",
        f"stripped|broken|missing|sheared .. teeth|gear|pinion .. {_DRIVE}|cam|crank",
        "teeth|tooth .. stripped|missing|sheared|broken .. gear|pinion|drive|pump",
        "stripped the? .. gear|gears|teeth",
    ),
    "drive_coupling_sheared": (
        "coupling|tang|key|woodruff|roll-pin|rollpin|pin|dog|drive-pin|tongue|key-way .. sheared|lost|missing|gone|broken|snapped|fallen",
        "sheared|broken|snapped|lost|missing the|a|its|drive|pump|roll|of? drive|pump|roll|shear? coupling|tang|key|woodruff|roll-pin|rollpin|pin|dog|tongue",
    ),
    "drive_gear_worn": (f"{_DRIVE}|skew|worm drive? gear|gears|teeth .. worn",),
    "no_drive_end_float": (
        "pump|drive|shaft binds|bound|bind .. bolted|tightened|torqued",
        "no end play|float .. drive|shaft|pump|distributor",
    ),
    "pump_housing_burst": (
        f"{_PUMP} housing? .. burst|exploded|split|blown|shattered",
        f"burst|exploded|split|shattered oil? {_PUMP}",
    ),
    "pump_bolts_loose": (
        f"{_PUMP} mounting|mount|retaining|fixing? bolts|bolt|stud|studs|nuts .. loose|missing|backed|fallen|slack|out",
        f"{_PUMP} is|was|had|came|come|has|working|worked? loose|fallen|hanging|dropped",
        f"loose|missing .. bolt|bolts .. {_PUMP}",
        f"{_PUMP} fell off",
    ),
    "pump_seen_standing": (
        f"{_PUMP}|{_SHAFT} was|is|were? @not turning|turn|spinning|rotating|driven|being",
        f"{_PUMP} stood|stands|stays|stayed still|stationary",
    ),
    "pump_chain_broken": (
        "pump chain .. broken|snapped|off|jumped|came",
        "broken|snapped oil? pump chain",
        "pump sprocket .. loose|off|bolt|broken|came|undone|nut|fell",
        "balance-shaft|balancer chain .. broken|snapped",
        "chain .. pump .. broken|snapped|off",
    ),
    "mount_gasket_blown": (
        f"{_PUMP} .. gasket .. blown|torn|split|leaking|washed|cracked|blew",
        f"blown|torn|split gasket .. {_PUMP}",
        f"gasket between .. {_PUMP} .. blown|torn|split",
    ),
    "mount_gasket_missing": (
        f"no|missing|forgot|left gasket|seal|o-ring|oring out|between|under|behind|on the? oil? {_PUMP}",
        f"{_PUMP} .. gasket|seal|o-ring|oring .. missing|left|forgotten",
        f"without a? gasket|o-ring|seal .. {_PUMP}",
    ),
    "mount_face_not_flat": (
        f"{_PUMP} .. face|mounting|mating .. @not flat|warped|burred|burrs|scored|uneven",
    ),
    "wrong_pump_fitted": (
        "wrong|incorrect|different|mismatched oil? pump",
        "pump .. is|was|for|from for|from? a|another|the? wrong|different|other engine|model|one",
        "@not the? right|correct oil? pump",
    ),
    "pump_dry_inside": (
        f"{_PUMP} is|was|found|gone|bone|completely? bone|completely|totally? dry|unprimed|empty",
        f"dry oil? {_PUMP}",
    ),
    "extra_pump_gasket": (
        f"2 gaskets .. {_PUMP} cover?",
        f"two|extra|second|thick|thicker|too|double gaskets|gasket .. {_PUMP} cover?",
        f"{_PUMP} cover? .. gasket too thick",
    ),
    "cover_screws_loose": (
        f"{_PUMP} cover|end-plate|plate|back-plate screws|screw|bolts|bolt .. loose|missing|backed|undone|slack",
        "cover screws|bolts .. loose|missing .. pump",
        f"{_PUMP} cover .. loose",
    ),
    "piece_in_pump": (
        f"piece|bit|chunk|chip|bolt|washer|nut|screw|fragment|pebble|stone|lump|circlip in|inside|jammed|through|stuck|lodged|between in|of|the|between? the? oil? {_PUMP}|gears|rotors",
    ),
    "steel_slivers_in_pump": (
        f"steel|magnetic|metal slivers|shavings|splinters|swarf in|inside the? oil? {_PUMP}",
    ),
    "pump_found_sound": (
        f"{_PUMP} .. is|was|looks|looked|checked|measured|found|tested|ok|within|appears all|to|be|and|looked|perfectly|found? fine|good|ok|okay|perfect|spec|tolerance|limits|sound|serviceable|limit|specification out?",
        f"nothing wrong with the? oil? {_PUMP}",
        f"{_PUMP} clearances|clearance .. fine|good|ok|spec|within|limits",
    ),
    "end_clearance_wide": (
        f"{_PUMP} end play|float|clearance .. excessive|too|over|wide|out|beyond|limit",
        "too much|excessive end play|float|clearance .. pump|gears|rotors",
        "gears|rotors to|and cover clearance .. excessive|over|too|out",
    ),
    "side_clearance_wide": (
        "gear|gears|rotor|outer to body|housing clearance .. excessive|over|too|out|wide",
    ),
    "rotor_tip_wide": ("rotor|tip tip|clearance clearance? .. excessive|over|too|out|wide",),
    "cover_grooved": (
        "worn|rubbed ring|rings and|with a? gap at|in|on|under the? oil? pump cover|plate",
        "cover|plate|end-plate|back-plate|backplate|lid has|had|with|is|shows|was two|a|deep|some|nice|proper? deep|proper|big? rings|ring|grooves|groove|step|"
        "ridge|lip worn|cut|in|you|into",
        "cover|plate|end-plate|back-plate|backplate|wear-plate|lid is|was|has|had|badly|very|heavily|a|some? badly|a|heavily|deep|some? deep? grooved|scored|groove|grooves|worn|gouged|hollowed|ridge|dished|scoring|wear",
        "groove|grooves|wear|scoring|score|gouges marks? worn? in|on into? the? oil? pump? cover|plate|end-plate|backplate",
        "worn|scored|grooved oil? pump? cover|end-plate|backplate",
    ),
    "cover_warped": (
        "pump cover|plate is|was|slightly? warped|bowed|bent|twisted|thin|not",
        "warped|bowed|bent oil? pump cover|plate",
    ),
    "gear_backlash_wide": (
        "excessive|too backlash .. pump|gears",
        "gears .. backlash .. excessive|over|too|wide",
    ),
    "pump_shaft_play": (
        f"{_PUMP} {_SHAFT}|spindle .. play|slop|wobble|loose|worn|rocks",
        f"play|slop|wobble in|on the? oil? {_PUMP} {_SHAFT}?",
        f"{_PUMP} bush|bushing|bushings .. worn|loose|gone",
    ),
    "pump_scored_seen": (
        f"{_PUMP} is|was|body|housing|gears|rotors|bore|inside|walls|were|badly|all? badly|heavily|all|deeply? scored|scratched|gouged|scuffed",
        f"scoring|score|scratches|gouges marks? in|on|inside the? oil? {_PUMP}",
        f"scored oil? {_PUMP}",
    ),
    "pump_gear_broken": (
        f"{_PUMP} gear|gears|rotor|rotors|gerotor|gerotors|vane|vanes is|was|were|had|has? chipped|cracked|broken|shattered|split|smashed|exploded",
        "broken|cracked|chipped|shattered|split oil? pump? gear|gears|rotor|rotors|gerotor|gerotors|vane|vanes",
        "gerotor|gerotors|rotors .. broken|cracked|shattered|exploded",
    ),
    "pump_found_failed": (
        f"{_PUMP} had|has|was|is|found|completely|totally? completely? failed|dead|packed-in",
        f"failed|dead|duff oil? {_PUMP}",
        f"{_PUMP} failure|packed found|confirmed|up|in",
    ),
    "pump_casting_cracked": (
        f"{_PUMP} casting|housing|body is|was|had|has|a|hairline? a|hairline? cracked|crack|broken|porous",
        f"crack|hairline|cracks in|across the? oil? {_PUMP} casting|housing|body?",
        f"cracked oil? {_PUMP}",
    ),
    "gear_slips_on_shaft": (
        f"gear|sprocket|rotor is|was|had|has? slipping|slips|spinning|spins|loose|slipped|spun|turning|turns|moved on|its|the its|the? {_SHAFT}",
    ),
    "scavenge_pump_jammed": (
        "scavenge pump|section|stage .. jammed|seized|blocked|not|failed|locked",
    ),
    "ignition_scatters": (
        "timing|spark is|was|all|jumps|jumping|bounces|wanders|moves|scatters|scatter|scattering|light|mark all? around|about|over|wanders|scatter|scatters|wandering|erratic",
        "spark scatter",
        "timing mark|light jumps|bounces|wanders|dances|moves|all",
    ),
    "distributor_will_not_seat": (
        "distributor|dizzy @not|wont|refused|refuses seat|drop|go|sit|seating|to down|in|home|all|fully|flush|seat?",
        "distributor|dizzy sits|sat|sitting|stands|proud too|a|up|proud? high|proud|gap",
        "gap under the? distributor|dizzy",
    ),
    "tank_foams": (
        "oil? tank was|is|gets|got? all? foaming|foams|foamed|foamy|frothy|frothing|froths",
        "oil|it in the? oil? tank was|is|gets|looks|goes|went? all? foaming|foams|foamed|foamy|frothy|frothing|froths|full-of-foam",
        "oil? tank was|is? full of foam|froth|bubbles",
        "foam|froth in|on|out the|of? oil? tank",
        "tank breather|vent|filler? pukes|puking|puked|spits|spitting|throws|throwing|blows|blowing|spews|spewing|vents|pushes|dumps? oil|foam",
    ),
    "scavenge_side_takes_air": (
        "scavenge|scavenging hose|line|pipe|pickup|side|pump|stage|stages? .. sucking|sucks|sucked|drawing|draws|pulling|pulls|taking|takes|took|getting air",
        "air leak|leaks|getting|gets? in|into|at|on the? scavenge|scavenging hose|line|pipe|side|pickup|pump?",
    ),
    "tank_empties_running": (
        "tank empties|emptying|emptied|drains|goes|runs empty|into|while|when|dry|low|running|the",
        "no|little|poor oil? return|scavenge to|from the? tank|sump",
        "wet sumping while|when running",
        "tank level? goes|went|drops|dropped|drains|falls|fell|sinks|pumps|runs down|low|away|dry|empty|out? while|when|as|whenever|once|after running|revved|riding|run|under-way|racing|it-runs|its-running|at-speed",
        "tank pumps|empties|drains itself? dry|empty|out|down? while|when|as running|riding|it-runs|revved",
    ),
    "pump_belt_off": (
        "pump belt .. off|broken|broke|snapped|slack|stripped|shredded|jumped|threw|thrown|slipped",
        "threw|lost|broken|snapped|stripped .. pump belt",
    ),
    "gone_at_the_next_start": (
        "pressure .. fine|good|normal|@pressure|@number .. stopped|parked|shut|switched .. next|restart|again .. none|nothing|zero|no",
        "good|fine|normal|running when|until|before shut|parked|stopped|switched|before .. none|no|nothing|zero .. start|restart|morning|next",
        "ran|running fine|good|normally|before|well before|yesterday|earlier|to .. none|no|zero|stayed .. start|restart|next",
    ),
    "too_much_drive_float": (
        "distributor|dist|dizzy|pump|drive|oil-pump drive|pump? shaft|gear|drive has|had|with|got|lots|too|loads|a lots|lot|loads|too|much|plenty|tons|a|"
        "excessive of? of? up|end|vertical|axial and|&|play|float|movement|slop down?",
        "distributor|dist|dizzy shaft|gear|drive lifts|moves|move|goes|rattles up and|& down",
    ),
}
