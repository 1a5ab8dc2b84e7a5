"""Words for the state of the oil pump."""

from __future__ import annotations

from knowledge.lexicon.words.names import CRANKED

_PUMPS = "pump|pumps|oil-pump"
_DRIVESHAFT = "shaft|driveshaft|drive-shaft|rod|spindle|quill"
_WORN = "worn|knackered|shot|scored|scuffed|chewed"
_HIGH_VOLUME = (
    "high-volume|hi-volume|hv|high-capacity|high-pressure|uprated|bigger|big-block|high-output"
)
_NAIL = "nail|fingernail|thumbnail|finger-nail|thumb-nail"
_LINES = "lines|line|scratches|scratch|scores|scoring|grooves|groove|ridges|ridge"
#: the finding, by what is said when it is not there
_IN_SPEC = (
    "within|in|inside|to|mid the? spec|limits|limit|book|tolerance|specification|tolerances|figures"
)
_CLEAR = "measured|remeasured|checked|re-checked|recorded|all|both|were|was|are|is|found|and|,|written|plastigauged"
_SWARF = "swarf|filings|shavings|slivers|turnings"
_SHAFT = "shaft|driveshaft|spindle|quill|rod"
_GEARS = "gear|rotor|gerotor|teeth|impeller|vane"
_WORN_AWAY = "eaten|eroded|pitted|cavitation|etched|cavitated|moth-eaten"
_DIST = "distributor|dizzy|rotor_arm|rotor|dist"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "gears_worn_out": (
        f"{_PUMPS} is|was|looks|looked|found|gears|rotors|very|badly|quite|totally? badly|all|totally|completely|quite? worn|knackered|shot",
        "worn|knackered out? oil? pump",
        "gears|rotors|gear|rotor is|are|was|were|badly|very|all|found? badly|all|very? worn|knackered|shot|clapped",
        "worn|knackered|clapped pump? gears|rotors",
        f"wear in|on|inside the? oil? {_PUMPS}",
        f"inside of|the? {_PUMPS} .. {_WORN}",
    ),
    "rotor_still_when_cranked": (
        "rotor|distributor|rotor-arm arm|button? is|was? @not turn|turns|turned|turning|spin|spinning|rotate|rotating|move",
        "rotor|rotor-arm arm? stood|stands|stays still|stationary",
        "dizzy @not turn|turning|spin|spinning|drive|driving",
    ),
    "high_volume_pump_fitted": (
        f"{_HIGH_VOLUME} oil? pump",
        "high|hi volume|vol|capacity|output|pressure oil? pump",
        "stiff|stiffer|stronger|heavier|uprated|heavy|hd relief valve? spring|springs",
        "hv pump",
    ),
    "pump_noise": (
        f"{_PUMPS} is|was|makes|sounds|very|whining|getting? noisy|whining|whines|whine|rattles|rattling|howls|howling|grinding|growling|screaming",
        "whine|howl|rattle|noise|whining|howling from|in|at|near the? oil? pump",
        "whine|whining|howl|howling noise? .. rises|follows|increases|with revs|rpm|speed|the?",
    ),
    "drive_partner_stopped": (
        "tach|tacho|tachometer|rev-counter|counter .. zero|dead|died|stopped|quit|dropped too|as|also|at|same|with?",
        "tach|tacho|tachometer|rev-counter and|& oil? pressure|gauge both? died|dead|quit|stopped|zero",
        "tach|tacho|tachometer|rev-counter .. read|reads zero|nothing|too",
        "engine|it cut|died|quit|stopped when|as|and|same .. pressure went|gone|dropped|zero",
        "lost spark|ignition and|& oil? pressure",
        "engine|motor|it died|quit|stopped|stalled|cut =when|=as|=with|=same|=and .. pressure .. went|gone|dropped|died|disappeared|lost",
        "rev-counter|tacho|tachometer|ignition|spark|distributor|sparks|mechanical stopped|died|quit|went|dead at|as|when|with|too|also|counter .. time|pressure|too|also|same",
    ),
    "pump_dry_inside": (
        f"{_PUMPS} is|was|found|gone|bone|completely? bone|completely|totally? dry|unprimed|empty",
        f"dry oil? {_PUMPS}",
    ),
    "extra_pump_gasket": (
        f"2 gaskets .. {_PUMPS} cover?",
        f"two|extra|second|thick|thicker|too|double gaskets|gasket .. {_PUMPS} cover?",
        f"{_PUMPS} cover? .. gasket too thick",
    ),
    "cover_screws_loose": (
        f"{_PUMPS} cover|end-plate|plate|back-plate screws|screw|bolts|bolt .. loose|missing|backed|undone|slack",
        "cover screws|bolts .. loose|missing .. pump",
        f"{_PUMPS} cover .. loose",
    ),
    "piece_in_pump": (
        f"piece|bit|chunk|chip|bolt|washer|nut|screw|fragment|pebble|stone|lump|circlip in|inside|jammed|through|stuck|lodged|between in|of|the|between? the? oil? {_PUMPS}|gears|rotors",
    ),
    "steel_slivers_in_pump": (
        f"steel|magnetic|metal slivers|shavings|splinters|swarf in|inside the? oil? {_PUMPS}",
        f"{_SWARF} in|inside|through|between|on|round|around|jammed|wedged|stuck the|in|my? oil? pump teeth|gears|rotors|body|housing?",
        f"{_SWARF} jammed|wedged|stuck in|between|into the? oil? pump",
        f"bit|sprag|lump|piece|curl|string of {_SWARF} in|inside|through|between|on|jammed|wedged the|in? oil? pump",
    ),
    "pump_found_sound": (
        f"{_PUMPS} .. is|was|looks|looked|checked|measured|found|tested|ok|within|appears all|to|be|and|looked|perfectly|found? fine|good|ok|okay|perfect|spec|tolerance|limits|sound|serviceable|limit|specification out?",
        f"nothing wrong with the? oil? {_PUMPS}",
        f"{_PUMPS} clearances|clearance .. fine|good|ok|spec|within|limits",
    ),
    "end_clearance_wide": (
        f"{_PUMPS} end play|float|clearance .. excessive|too|over|wide|out|beyond|limit",
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
        "pump? plate|cover|end-plate|backing-plate is|was|had|has|been deeply|badly|heavily|well|all? grooved|scored|dished|gouged|hollowed",
        "deep|two|circular grooves|rings|groove in|on|worn|cut into|in? the pump? cover|plate|end-plate|backing-plate",
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
        f"{_PUMPS} {_DRIVESHAFT}|spindle .. play|slop|wobble|loose|worn|rocks",
        f"play|slop|wobble in|on the? oil? {_PUMPS} {_DRIVESHAFT}?",
        f"{_PUMPS} bush|bushing|bushings .. worn|loose|gone",
    ),
    "pump_scored_seen": (
        f"{_PUMPS} is|was|body|housing|gears|rotors|bore|inside|walls|were|badly|all? badly|heavily|all|deeply? scored|scratched|gouged|scuffed",
        f"scoring|score|scratches|gouges marks? in|on|inside the? oil? {_PUMPS}",
        f"scored oil? {_PUMPS}",
        "scratches|scores|grooves|scoring|lines|ridges you|i|we can feel|catch with|on a|your|my? finger? nail|fingernail|thumbnail in|on|across the? pump|cover|cover-plate|gears|body|rotor|rotors|housing",
        "grooves|scratches|scoring|scores in|on the? cover|end plate",
        f"oil? pump gears|rotors|body|housing|bore|walls has|have|had|with|got some|deep|fine|several? {_LINES} you|i|we|that|which? can|could|you|i? catch|feel|snag",
        f"{_LINES} you|i|we can|could catch|feel|snag a|my|your? {_NAIL} on|in? in|on the? oil? pump|gears|rotors",
    ),
    "pump_gear_broken": (
        f"{_PUMPS} gear|gears|rotor|rotors|gerotor|gerotors|vane|vanes is|was|were|had|has? chipped|cracked|broken|shattered|split|smashed|exploded",
        "broken|cracked|chipped|shattered|split oil? pump? gear|gears|rotor|rotors|gerotor|gerotors|vane|vanes",
        "gerotor|gerotors|rotors .. broken|cracked|shattered|exploded",
    ),
    "pump_found_failed": (
        f"{_PUMPS} had|has|was|is|found|completely|totally? completely? failed|dead|packed-in",
        f"failed|dead|duff oil? {_PUMPS}",
        f"{_PUMPS} failure|packed found|confirmed|up|in",
    ),
    "pump_casting_cracked": (
        f"{_PUMPS} casting|housing|body is|was|had|has|a|hairline? a|hairline? cracked|crack|broken|porous",
        f"crack|hairline|cracks in|across the? oil? {_PUMPS} casting|housing|body?",
        f"cracked oil? {_PUMPS}",
    ),
    "gear_slips_on_shaft": (
        f"gear|sprocket|rotor is|was|had|has? slipping|slips|spinning|spins|loose|slipped|spun|turning|turns|moved on|its|the its|the? {_DRIVESHAFT}",
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
        "scavenge|return pump|gears|stage? @not =bring|=bringing|=return|=returning|=pull|=pulling|=lift|=lifting|=send|=sending|=pick|=picking|=draw|=drawing|=pump|=pumping",
        "oil|it @not being|getting? =brought|=pumped|=sent|=lifted|=scavenged back? to|into the? tank",
        "oil|it @not being|getting? =brought|=pumped|=sent|=lifted|=scavenged back? from|out .. sump|crankcase|case|pan .. scavenge?",
        "tank is|was|goes|ends|gets|found|being? empty|down|low .. crankcase|sump is|was|fills|filled|has|full",
    ),
    "pump_belt_off": (
        "pump belt .. off|broken|broke|snapped|slack|stripped|shredded|jumped|threw|thrown|slipped",
        "threw|lost|broken|snapped|stripped .. pump belt",
    ),
    "no_return_to_tank": (
        "no|zero|nil oil coming|comming|comes|come|came|returning|returns|returned|return back? to|into|in|at the? oil? tank|bag|return?",
        "oil|it @not being|getting? =coming|=comming|=come|=comes|=returned|=returning|=return|=returns back? to|into|in the? oil? tank|bag",
        "nothing coming|comming|comes|came|returning back? to|into|in|out-of the? oil? tank|bag|return",
        "no|nothing in|at|from|out-of the? oil? return pipe|line|hose",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "rotor_still_when_cranked": (
        "rotor|rotor-arm|dizzy|distributor rotor|arm? kept|keeps|still|was|is|does|did turning|turns|turn|spinning|spins|rotating fine|ok|normally|though?",
    ),
    "tank_empties_running": (
        "oil|scavenge|tank return|returns|returning|return-flow is|seems|looks|all? ok|fine|good|well|steady|strong|normal|normally|healthy",
        "oil returns|returning|returned|comes-back|coming-back to|into the? oil? tank|bag ok|fine|good|well|steadily|normally|nicely",
        "tank level stays|stayed|steady|holds|remains|constant|doesnt put|up|same|steady|constant|full|drop|fall|move|change?",
    ),
    "no_return_to_tank": (
        "see|seen|watch it|the? oil|return? returning|spitting|squirting|pulsing|coming|come back|in|into|to? the? tank|return?",
        "oil|it spitting|squirting|pulsing|returning|returns back|into|in|to|out the|its? return|tank",
    ),
    "end_clearance_wide": (f"pump .. end clearance|float|play {_CLEAR}? {_IN_SPEC}",),
    "gear_backlash_wide": (
        f"pump .. backlash {_CLEAR}? {_IN_SPEC}",
        f"pump .. backlash and|& end? clearance|float|play {_IN_SPEC}",
    ),
    "pump_belt_off": (
        "scavenge|dry-sump|drysump|pump|sump belt is|was|found|checked? tight|ok|good|fine|intact|tensioned|sound",
    ),
    "drive_partner_stopped": (
        "governor|distributor|rotor|tacho|tach|tachometer|injection-pump still|all works|working|turns|turning|runs|drives|ok",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "scavenge_side_takes_air": (
        "scavenge|scavenging + hose|line|pipe|union|fitting + cracked|split|holed|chafed|perished|sucking|sucks|air_leak|takes_air - no|not|whole|sound|new_pump",
    ),
    "pump_shaft_play": (
        f"pump + {_SHAFT} + play|slop|sloppy|wobble|wobbles|rock|rocks|loose_in|worn_bush|side_to_side - end_play|distributor",
        f"pump + bush|bushing|bore + worn|loose|sloppy|play + {_SHAFT} - cam|rocker",
    ),
    "cover_warped": (
        "cover|end-plate|endplate|plate + warped|bowed|bent|distorted|dished|daylight|@not_flat|not_true|gape|gapes|banana "
        "- rocker|valve_cover|timing|clutch|sump|pan|head",
        "cover|plate|end-plate|endplate + gap|gaps + pump "
        "- gear|gears|rotor|rotors|end|side|clearance|feeler|rocker|timing|water|fuel|no|not|without",
    ),
    "cover_grooved": (
        "cover|plate|end-plate|endplate|backplate + groove|grooved|grooves|scored|scoring|worn|step|lip|gouged|ridges|rings_worn|two_rings|witness + pump|gear|rotor|gears|rotors|it|nice",
        "wear|worn|groove|step|ridge|lip|scoring|score + end_plate|endplate|cover|cover_plate|backplate|pump_plate + feel|pump|nail|fingernail|deep|gear|rotor|it|in - rocker|valve|timing|cam|clutch|shaft|pressure_plate",
    ),
    "cover_screws_loose": (
        "cover|plate|lid + screw|screws|bolts + loose|slack|backed|undone|missing|finger|unscrewed|fallen - rocker|valve_cover|timing|bearing",
    ),
    "pump_gear_broken": (
        "gear_tooth|gear_teeth|rotor|pump_gear|pump_gears|drive_tooth|inner_rotor|outer_rotor + chipped|broken|cracked|snapped|split|missing|shattered|gone|pieces - distributor|skew|timing|arm|cap",
        "broken|chipped|missing|cracked|snapped|sheared + tooth|teeth|rotor|gear + pump - drive|distributor|dizzy|skew|timing|chain",
        "tooth|teeth|lobe|corner|chunk + lost|off|missing|broken|broke|snapped|chipped|sheared + pump_gear|pump_gears|rotor|rotors|pump|idler_gear - drive|distributor|dizzy|skew|timing|cam_gear|worm",
    ),
    "piece_in_pump": (
        f"piece|bit|chunk|lump|circlip|washer|nut|chip|fragment|stone|nail|clip|sliver + jammed|wedged|caught|stuck|lodged|trapped|found_in|lying_between + pump|{_GEARS} - block|gasket|relief|filter|screen|pickup|distributor",
        "stem_seal|valve_seal|bolt|nut|washer|circlip|chunk|piece|bit|stone|clip|lump|silicone|plastic + jammed|wedged|stuck|caught|lodged|trapped|found + pump|gears|rotors|lobes - gasket|block|relief|screen|pickup|filter|spring_in",
        "bit|piece|chunk|lump|nut|bolt|washer|ring|rag|rtv|circlip|fragment|shard + gone_through|been_through|went_through|found|jammed|in_the_gears|passed_through|chewed|mangled + pump|gears|rotors - gasket|relief|pickup|screen|block|filter",
    ),
    "cavitation_marks": (f"{_GEARS}|pump + {_WORN_AWAY} - shell|bearing|relief|journal|cylinder",),
    "rotor_wrong_way_round": (
        "rotor|gerotor|outer_ring|annulus + upside|wrong_way|backwards|reversed|wrong_side|marks|chamfer|flipped|dots - arm|cap|distributor|bearing|line_up|the_way_the_book|right_way",
    ),
    "gear_slips_on_shaft": (
        f"gear|pinion|skew|sprocket + loose|slipping|slips|spinning|spins|turning|moved|turns|slipped|spun + {_SHAFT}|camshaft - bearing|play|governor|gear_pump|turned_off|turned_by|turned_from|driven|still_turns",
    ),
    "distributor_will_not_seat": (
        f"{_DIST} & @not_seat|@not_drop|@not_go|stood|proud|@not_sit|@not_seated|@not_home|@not_get & clamp|pulled_down|tightened|home|forced|down|bolt|inch - arm_does",
        "distributor|dizzy|ignition_thing|distributor_body|body & stuck_up|@not_drop|@not_seat|not_seat|not_drop|standing_proud|sat_high|@not_go_home|@not_go_down|wouldnt_drop & clamp|bolt|tightened|pulled_down|forced|home|flat|gap - no_gap|own",
        "body|distributor|dizzy & clamp & forced|pulled_down|drew_it_down|pulled_it_down - not|no",
    ),
    "rotor_still_when_cranked": (
        "rotor_arm|rotor|distributor|dizzy & @not_turn|@not_move|@not_rotate|@not_spin|stationary|still|stays_put & crank|cranked|cranking|starter|turned_over - pump",
        f"cap_off|lid_off|rotor_arm|rotor|rotor_button|distributor|dizzy & {CRANKED} & sat_there|stands_still|nothing_turning|@not_turn|@not_move|never_moved|stood_still|stays_still|stationary|dead_still - jerks|fits|pump_rotor|spins_round",
    ),
    "ignition_scatters": (
        "ignition_timing|ignition|spark|rotor_arm|timing_mark + jumps|scatter|scatters|jumping|wanders|wandering|erratic|all_over|dances|hops|jerks|jerky|drifts - gauge|needle|chain|cover|pressure|light_switch",
        "timing_light|strobe + jumps|jumping|scatter|wanders|all_over|erratic|dances",
        "rotor|rotor_arm|timing_mark|timing|strobe|spark_timing & fits_and_starts|twitches|jerks|jerky|scatters|wanders|dances|jumping_about|jumps_about|jumping_around|all_over|erratic|stutters|hunts|twitching - no|rock_steady|lamp|not|pump_rotor|cover|oil_all_over|gear|gears|teeth|chain|belt|pickup",
    ),
    "pump_noise": (
        "pump + whine|whining|rattle|howl|noise|whirring|moan|groan|growl|screech|hum - power|steering|fuel|water|vacuum|no|lift|quiet|injection",
        "noisy|whining|whiny|howling|groaning|rattly + oil_pump|pump - power|steering|water|fuel|vacuum|no|not|lift|lifters|tappets|up",
        "pump + marbles|bag_of|moan|whirr|whirring|howl|whine|graunch|gravel|singing|clatter - power|water|fuel|vacuum|steering|air|no|not|sounds_ok|sounds_good|steel|lift|lifters",
        "oil_pump|pump_housing|the_pump|pump & whine|whines|howl|clatters|growl|clatter|groan|whirr|scream|moan|loud_sound|rattles|rattle|screech|noise & fast|revs|open_her_up|faster|speed|rpm|rises|throttle|rev - no|quiet|fuel|water|vacuum|steering|not|@not",
    ),
    "idler_pin_out": (
        "idler|idler_gear|idler_shaft|idler_pin|idler_spindle + out|walked|loose|moved|fallen|worked|proud|backed",
    ),
    "pump_casting_cracked": (
        "crack|cracked|hairline|split + pump + casting|body|housing|case|flange|ear|neck - split_the|get_at|get_to|cover_gasket|gasket|vacuum|water|fuel",
    ),
    "pump_stays_low": (
        "solenoid|pump_control|control_valve + unplugged|unplug|unplugging|disconnected|disconnecting|plug_off|wire_off|connector_off + "
        "stays|stayed|no_change|same|no_difference|@not_change|nothing_changes|still_low - vvt|vct|cam|fuel|starter|gearbox|transmission|jets|phaser|glow",
    ),
    "pump_rises_unplugged": (
        "solenoid|pump_control|control_valve + unplugged|unplug|unplugging|disconnected|disconnecting|unhooked|plug_off|"
        "plug_out|wire_off|connector_off|lead_off|pulled + jumps|jumped|rises|rose|shoots|shot|goes_up|went_up|comes_up|"
        "came_up|leaps|leapt|climbs|climbed|comes_back|came_back|doubles|doubled|goes_to|went_to - no|not|nothing|never|vvt|vct|cam|fuel|"
        "starter|gearbox|transmission|jets|phaser|revs|idle_up|stop_solenoid|glow|drops|falls|temperature",
        "solenoid|pump_control|control_valve & unplugged|unplug|unplugging|disconnected|disconnecting|plug_off|wire_off|connector_off & "
        "pressure|gauge|bar|psi & jumps|jumped|rises|rose|shoots|shot|goes_up|went_up|comes_up|came_up|leaps|climbs|climbed|doubles|doubled - "
        "no|not|nothing|never|vvt|vct|cam|fuel|starter|gearbox|transmission|jets|phaser|glow|drops|falls|temperature",
    ),
    "pump_belt_off": (
        "belt + pump|scavenge|drysump + off|shredded|snapped|broken|stripped|slack|jumped|thrown|slipped|walked - fan|alternator|water|power|seat|timing|new",
        "pump_belt|toothed_belt|rubber_band|toothed_strap|drive_band|belt|band|strap & pump & jumped|=torn|slack|stripped|snapped|shredded|flapping|cogs|teeth|slipped|come_off|came_off|thrown|off_its - no|water|alternator|fan|steering|not|filter_strap|chain",
    ),
    "pump_dry_inside": (
        "pump + dry|no_oil_in|empty|drained + inside|bone|found|was|completely|apart|opened|internally|cover - vacuum|fuel|water|filter_off",
        "pump + not_a_drop|bone_dry|no_oil_in|empty|dry + oil|inside|pump|of|was|in - filter_off|line|gauge|vacuum|fuel|water|primed|stick|seal",
    ),
    "extra_pump_gasket": (
        "gasket|gaskets + two|second|extra|double|thick|doubled + pump|cover - filter|head|sump|pan|rocker|intake",
    ),
    "pump_found_sound": (
        "pump & within_limits|within_spec|in_spec|in_tolerance|no_wear|like_new|as_new|looks_new|perfect|nothing_wrong|inside_limits|inside_tolerance|wrong_with_it|in_good|@not_fault|@not_worn|unworn - water|fuel|vacuum|new_pump|replaced|pressure|@not_in_spec|lift|drill",
        "pump + measured|checked|opened|stripped|inspected|looked_at & within|in_spec|good|fine|ok|perfect|no_wear|spec|like_new - pressure|not|new|no_good|worn|fuel|water",
    ),
    "gears_worn_out": (
        "pump + gear|gears|rotor|rotors|internals + worn|shot|knackered|sloppy|clapped|tired|past - distributor|skew|drive|groove|timing|vacuum|not|no|cover",
        "pump|rotors|pump_gears + worn|tired|sloppy|knackered|had_it|past_it|wear + nothing|out|badly|lot|lots|well|is|was|it|very|looks|gears|pumps|totally - distributor|dizzy|skew|cover|plate|drive|sender|belt|cam|not|no|vacuum|water",
    ),
    "pump_scored_seen": (
        "pump + scored|scoring|grooves|gouged|scratched|chewed|galled|scuffed - cover|plate|vacuum|water|fuel|seal|no|not|lid",
        "pump|housing + gravel|chewed|gouged|scarred|torn_up|ploughed|scored + inside|pump|housing|body|bore|looked|gravel - plate|cover|water|fuel|screen|shells|bearing",
    ),
    "steel_slivers_in_pump": (
        "slivers|filings|shavings|swarf + pump + steel|magnetic|magnet|iron - vacuum|filter",
    ),
    "drive_partner_stopped": (
        "tach|tacho|tachometer|rev_counter|ignition|spark|injection_pump|mag|magneto|distributor & same|also|too|shares|together|drive & quit|stopped|died|dead|lost|packed_up|went_dead|failed - gauge_line|temp_gauge|fuel_gauge|ignition_on|ignition_goes|ignition_is|knock",
        "distributor|magneto|tach|tacho|rev_counter|injection_pump|dizzy|fuel_pump|spark & stopped|not_turn|quit|died|@not_turn|went_dead & pump|oil|same_moment|pressure|one_gear|shaft|same_time|same_second - still|fine|spins|engine_stopped|cap|cranked|starter",
    ),
    "tank_empties_running": (
        "tank|oil_tank|tank_glass|tank_level + goes_down|going_down|sinks|sank|falls|drops + nearly_empty|almost_empty|empty|to_nothing - fuel|petrol|standing|overnight|stands|water|header",
        "tank|oil_tank + empties|drains|goes_empty|runs_dry|level_drops|drops + running|while_riding|at_speed|while_it_runs|revs|run + crankcase|sump|engine|it - stands|standing|overnight|sits|fuel|petrol",
        "tank + low|empty|empties|nearly_empty|drops & crankcase|sump|engine + full|fills|flooded|filling - standing|overnight|fuel|morning|header|parked",
        "pumps|empties|moves|drains + its_tank|the_tank|oil_tank + crankcase|sump|engine - standing|overnight|fuel|parked|stood",
        "poor|weak|hardly_any + return + tank - fuel|header|diesel",
        "oil_tank|reservoir|tank & empty|empties|till_theres_none|falls_to_nil|whole_tank|emptying|disappears & run|running|motor_run|minutes|runs & crankcase|bottom_end|engine|sump - fuel|standing|stood|sat|not|week|overnight",
    ),
    "air_at_pump_cover": (
        "air + pump_cover|cover|lid|body + sucking|drawing|getting|pulling|lets|leak - rocker|valve|timing|air_filter|intake",
    ),
    "drive_flats_worn": (
        "flats|splines|key|keyway|drive_flats + worn|rounded|chewed|stripped|wallowed + pump|oil_pump|rotor|crank|snout|nose|inner - harmonic|alternator|wheel",
    ),
    "pump_found_failed": (
        "pump + died|packed_up|failed|gave_up|kaput|shot|duff|dead|buggered|had_it|given_up + oil_pump|pump|oil - fuel|water|vacuum|lift|power|steering|sender|wasnt|not|no|new",
    ),
    "end_clearance_wide": (
        "end_clearance|end_float|end_play|rotor_to_cover|gear_to_cover + pump|rotor|rotors|gears + too|over|out_of_spec|big|wide|excessive - crank|thrust|cam|shaft|drive",
    ),
    "high_volume_pump_fitted": (
        "big|bigger|hv|high_volume|high_pressure|uprated|heavy_duty|high_capacity + pump + in_it|fitted|put|has|got|already|installed|running - tried|no_difference|now|gained|no_change|helped|water|fuel|air|new|replaced|going",
        "big|bigger|performance|uprated|oversize|heavy-duty + pump|oil_pump - bilge|water|fuel|no|not|lift|injection|coolant|problem|noise|screw|trouble|prelube|pre_lube|priming|prelubrication|slow|ship|electric",
    ),
    "no_return_to_tank": (
        "no|@not_any|zero|nil + return + tank|bag - fuel|header|diesel",
        "oil_tank|tank|return_pipe|reservoir|scavenge|scavenging|return & gives_nothing|@not_scavenging|no_return|nothing_back|nothing_comes_back|no_oil_comes|no_oil_back|@not_come_back|comes_back_dry|no_oil_squirted|nothing_returning|not_scavenging - fuel|standing|screen",
    ),
}
