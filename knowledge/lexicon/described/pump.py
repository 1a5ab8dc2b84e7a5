"""What was seen inside the oil pump, put by people who describe its parts."""

from __future__ import annotations

from knowledge.lexicon.described.words import (
    BROKEN,
    OTHER_PUMPS,
    ROOM,
    SCORED,
    TOO_MUCH,
)

_PUMP = "pump|pumps|oil_pump"
_WHEELS = "gear|gears|wheel|wheels|rotor|rotors|pinion|pinions|teeth|gerotor|impeller"
_LID = "lid|cover|plate|end_plate|endplate|backplate|back_plate|wear_plate|end_cover|faceplate"
_WALL = "wall|walls|body|housing|casing|case|side|sides|barrel|pocket|chamber"
_ELSE = f"{OTHER_PUMPS}|timing|distributor|rocker|valve_cover|sump|clutch|head"
_NOT_WIDE = "within|inside_the|in_spec|no|not|little|hardly|barely|book_says_fine|ok|fine"
#: the finding, by words that stand together when it is there
THERE: dict[str, tuple[str, ...]] = {
    "end_clearance_wide": (
        f"straightedge|straight_edge|ruler|steel_rule|straight-edge & {_WHEELS} & under|beneath|deep|sink|sunk|below|over|{ROOM} & {TOO_MUCH}|thick|thou|@length|went|passes|fat - {_ELSE}|{_NOT_WIDE}|gears|gear|rotor|rotors|thou",
        f"rotors|wheels|gears|gear + sit|sits|sat|sunk|recessed|stand|stood + deep|lower|below|low|down|under|sunken + {_PUMP}|body|rim|face|straightedge|straight_edge|housing - {_ELSE}|{_NOT_WIDE}",
        f"{ROOM} + {_LID}|top|end + {_WHEELS} + {TOO_MUCH} - {_ELSE}|{_NOT_WIDE}|tip|tips|wall|lobe",
    ),
    "side_clearance_wide": (
        f"{ROOM} + {_WALL} + {_WHEELS}|outer|ring + {TOO_MUCH} - {_ELSE}|{_NOT_WIDE}|{_LID}|tip|tips|rattle",
        f"{_WALL} + {_WHEELS}|outer|ring + slopping|sloppy|loose_fit|rattles|measure_too_much|too_loose|exceeds|swims - {_ELSE}|{_NOT_WIDE}|{_LID}|shaft|spindle|bush",
    ),
    "rotor_tip_wide": (
        f"tip|tips|lobe|lobes|star|points|peaks|four_pointed|inner_and_outer|inner/outer|inner + rotor|rotors|ring|outer|lobe|lobes|gerotor|five_hollowed + {ROOM}|thou|@length|apart + {TOO_MUCH}|wide|thou|@length - {_ELSE}|{_NOT_WIDE}|cam|{_WALL}",
        f"star|four_pointed|inner_wheel + ring|outer|five_hollowed|hollowed & {ROOM} & {TOO_MUCH}|service_limit - {_ELSE}|{_NOT_WIDE}",
    ),
    "gear_backlash_wide": (
        f"slop|backlash|lash|slack|play|space|room|gap|free_play|empty_space|clearance + teeth|tooth|mesh|meshing|meet|each_other|one_another|two_gears|both_gears + {_PUMP}|gears|wheels & {TOO_MUCH}|much|sloppy|lot - {_ELSE}|{_NOT_WIDE}|lid|cover|wall|body|tip",
        f"backlash|lash + {_WHEELS} + {TOO_MUCH}|plenty|much|thou - {_ELSE}|{_NOT_WIDE}|drive|skew|crank|cam",
        f"{_WHEELS} + {_PUMP} + knock|rock|clack|rattle|chatter|loose + back_and_forth|each_other|one_another|to_and_fro|between_teeth|in_mesh - {_ELSE}|noise",
        f"{_PUMP} + wheel|gear & other|second & turned|moved|rotated|rocks|turns|moves & before|until|till & tooth|teeth|touching|meets|bites - {_ELSE}|stops",
    ),
    "cover_grooved": (
        f"{_LID} + {_PUMP} + ring|rings|circles|circle|groove|grooves|hollow|hollows|dished|dish|step|tracks|track|eaten|furrow|furrows|ridge|gouged|rubbed_away|worn_into|cut_into|dug|scalloped|half_moons|crescents - {_ELSE}|no|not|gasket|o_ring|oring|seal",
        f"{_LID} + {_WHEELS} + ring|rings|circles|hollow|hollows|dished|tracks|eaten|furrow|rubbed_away|worn_into|cut_into|dug|crescents + worn|rubbed|{_WHEELS} - {_ELSE}|no|not|gasket|o_ring|oring|seal",
        f"{_LID} + nail|fingernail|thumbnail|thumb_nail|finger_nail + groove|ridge|ring|rings|step|catches|catch|feel|circles - {_ELSE}|no|not|smooth",
    ),
    "cover_warped": (
        f"{_LID} + {_PUMP} + daylight|light|rocks|rocked|=gapes|=gaped|=gaping|bowed|bow|banana|sprung|buckled|curved|twisted|too_thin|flexes|flimsy|saucer|humped|crowned|potato_chip - {_ELSE}|no|not",
        f"{_LID} & {_PUMP} & glass|surface_plate|flat_table|flat_stone & rocks|rocked|rock|gap|teeters|see_saws|wobbles - {_ELSE}|no|not",
    ),
    "pump_shaft_play": (
        f"{_PUMP} + shaft|spindle|axle|stem + shook|shakes|wobbles|wobbled|rock|rocked|rocks|sideways|side_to_side|left_and_right|waggles|waggle|slop|slack|oval|loose_in|egg|egged|wallowed|rattles|flops|wiggles|wiggle|jiggles + about|around|all_ways|every_way|any_direction|by_hand|hole|bush|bushing|body|bore|casing|sideways|bearing|housing|left|side - {_ELSE}|no|not|end|up_and_down|drive|gear|wheel",
    ),
    "gears_worn_out": (
        f"{_PUMP} + insides|innards|internals|guts|wheels|gears|rotors|works + worn|eaten|finished|finish|shot|had_it|rubbed|knackered|tired|past|clapped|scrap|done|gone|thin|wasted|loose_fit - {_ELSE}|{_LID}|no|not|flank|drive|broken|teeth_gone|driving|between|among|stuck_between",
    ),
    "pump_scored_seen": (
        f"{_PUMP} + {SCORED}|sand|lines|rutted|scraped|torn_up|ploughed_field|plowed_field|like_a_record + inside|walls|wall|body|housing|bore|insides|internals|gears|rotors|everywhere|looked|chamber|grit - {_ELSE}|{_LID}|no|not|mounting|face|joint|flange|block|relief|piston|plunger|crank",
    ),
    "pump_gear_broken": (
        f"star|star_wheel|inner_star|ring|annulus|vane|vanes + {_PUMP} + {BROKEN}|crack|cracked|chipped|burst - {OTHER_PUMPS}|{_LID}|rubber|seal|o_ring|oring|not|no|drive|piston|snap_ring|shaft|pickup|suction",
        f"pump_gears|pump_gear|gears_in_the_pump|pump_rotor|pump_rotors|cogs_in_the_pump|gears_inside|oil_pump_gears|pump_cogs + tooth|teeth|corner|lobe|chunk|lump + knocked|missing|gone|off|snapped|broken|lost|out_of - {OTHER_PUMPS}|drive|drives|driving|turns|not|no|between|worn",
        f"{_PUMP} + wheel|gear|rotor|star|star_shaped_wheel|impeller|vane|gerotor|tooth|teeth + {BROKEN}|crack|cracked|chip|chipped|chips|missing_a_corner|fail|exploded|burst - {_ELSE}|{_LID}|bit_of|piece_of|wedged|circlip|washer|lodged|housing|body|box|not|drive|drives|driving|spins|turns|worm|skew|skew_gear|outside|shaft|spindle|casing|side|chain|sprocket|between|among|drive_gear|failed|in_gear|miles",
    ),
    "cavitation_marks": (
        f"{_PUMP} + craters|pits|pitted|pitting|eroded|erosion|moth_eaten|moth-eaten|frosted|holes|eaten|honeycomb|honeycombed|sponge|pock|pocked|pockmarked|cavitation|worm_holes|spongy|sandblasted|sand_blasted|sand-blasted|bead_blasted|nibbled|etched + teeth|tooth|flank|flanks|back|backs|behind|inlet|suction|trailing|rear - {_ELSE}|{_LID}|no|not|bolt|screw|gasket|paper",
    ),
    "rotor_wrong_way_round": (
        "rotor|outer|ring|annulus|outer_rotor|outer_wheel + chamfer|bevel|bevelled|mark|dot|dots|marks|edge + wrong|outward|outwards|other_side|opposite|up_instead|out_instead|instead|not_match|upside|reversed|facing_out|facing_you - seal|piston|oil_ring|arm|distributor|faces_the_way|compression|timing",
        f"rotor|outer_wheel|outer_ring|annulus|gerotor|inner_rotor + {_PUMP}|chamfer|drawing|picture|manual|diagram + back_to_front|upside_down|wrong_way|reversed|inside_out|backwards|turned_wrong|flipped - seal|piston|arm|distributor|fan|not",
    ),
    "pump_found_failed": (
        f"diagnosed|condemned|pronounced|declared|called|found|traced|confirmed + dead_oil_pump|bad_oil_pump|failed_oil_pump|faulty_oil_pump|broken_oil_pump|oil_pump_dead|oil_pump_junk|oil_pump_was_junk|oil_pump_bad|oil_pump_failure|defective_oil_pump|dud_oil_pump - {OTHER_PUMPS}|not|no|might|maybe|could|if|self_diagnosed|wrongly",
        f"{_PUMP} + dead|broken|broke|had_it|kaput|gone|finished|stuffed|rooted|knackered|cactus|toast|shot|packed_in|packed_up|given_up|failed|bad|no_good|scrap|us + garage|mechanic|shop|dealer|he_says|says|say|said|reckon|reckons|found|fitter|yard|engineer - {_ELSE}|maybe|might|could|if|not|gear|gears|rotor|shaft|drive|gasket|bolt|bolts|cover|sender|chain|test|tested|perhaps|probably|suspect|suspects|thinks|think|relief|valve|reckon|reckons",
    ),
    "piece_through_pump_cover": (
        f"{_LID}|side|body|casing|housing + {_PUMP}|spindle|idler_pin|pin|gear + through|punched|forced|hole|out_of|bursting|came_out|poked|straight_out|spat|spit|knocked_out + {_LID}|side|pin|something|spindle|lump|tooth|piece|shaft|bolt - {_ELSE}|screw_hole|drain|plug|dowel|hole_for|bolt_hole|no_hole|looked|look|outer|gasket|groove|see|oil_coming|oil_through|worn|crack|distributor_hole|down",
    ),
    "pump_casting_cracked": (
        f"dye|penetrant|crack_test|solvent|magnaflux|dye_check & {_PUMP}|casting|port & crack|cracked|fracture|seeping|seeps|line|split - {_ELSE}|no|not|pickup|tube|crank|block|rod",
    ),
    "air_at_pump_cover": (
        f"{_LID} + {_PUMP}|joint|seam|flange|inlet + air|wind|bubbles|soap_bubbles + in|inside|ingress|drawing|draws|drew|sucking|sucks|enters|pulled|leaks|leak|gets|getting|gulping - {_ELSE}|filter|box|intake_manifold|air_cleaner|pickup_tube",
    ),
    "pump_dry_inside": (
        f"{_PUMP} & took|apart|opened|inside|stripped|cover_off & wasnt_any_oil|no_oil_in_it|not_any_oil|@not_any_oil|no_oil_in|without_oil|no_oil_inside - {OTHER_PUMPS}|gauge|line|filter|stick|sump|rockers|pan|engine|leak",
        f"{_PUMP} & @not_trace|@not_drop|@not_smear|not_a_trace|no_trace|not_a_drop|no_lubricant|no_oil_in_there|no_oil_inside|dry_as|bone_dry|white_handkerchief|completely_dry|not_a_smear|no_film|dust_dry|powder_dry & {_LID}|opened|inside|stripped|gears|rotors|popped|undid|took|apart - {_ELSE}|gauge|line|filter|rockers|stick",
    ),
    "draws_nothing_in_bath": (
        "bowl|bucket|pan_of|tray_of|bath|tub|basin|can_of|pail|clean_oil & cranked_it_by|turned_it|turned_by_hand|by_hand|spun|wound & brings_up_nothing|nothing_comes|nothing_came|picks_up_nothing|sucks_nothing|draws_nothing|@not_suck|@not_draw|pumps_nothing - fuel|water|engine|gauge|coolant",
        f"{_PUMP} & bowl|bucket|pan_of|tray_of|bath|tub|basin|dish|jar|can_of|tin_of|pail|dunked|submerged|immersed|sat_it_in|clean_oil & nothing|@not_suck|@not_pick_up|@not_draw|@not_pump|@not_push|@not_deliver|no_suction|@not_prime|no_oil_came|only_air|just_air|hardly_anything|barely_a_dribble - {OTHER_PUMPS}|nothing_wrong|pickup_tube|solvent|gauge|strongly|well",
        f"{_PUMP} & bucket|bowl|bath|tin|tray|can|tub|basin|dish|pan_of_oil|pot|jar|bench_dip|dunked|in_oil|submerged|pickup_in_oil & not_a_drop|nothing|no_oil|no_suction|no_delivery|@not_prime|@not_draw|@not_suck|@not_lift|@not_squirt|wouldnt_prime|wont_prime|@not_deliver|@not_push|@not_pick|dead - {OTHER_PUMPS}|pressure_test|drained|filter",
        "bench_dip|dip_test|bench_test|bucket|oil_bath|bowl_of_oil|tin_of_oil|bucket_of_oil & no_suction|no_delivery|nothing_came|@not_prime|wouldnt_prime|not_a_drop|@not_squirt|@not_draw|@not_suck|nothing_out - relief|valve|stuck|injector|fuel|water",
    ),
    "pump_turns_roughly": (
        f"{_PUMP} & spin|spun|turn|turned|turning|wind|wound|twist|rotated|roll|rolled & gravel|grinds|catches|tight_spot|tight_spots|gritty|lumpy|notchy|notch|rough|roughly|sticks_once|snags|snag|graunches|crunchy|once_per|every_rev|once_a_turn|stiff_place|sandpaper - {OTHER_PUMPS}|no|not|without|noise|alternator",
        "turned|turns|spins|rotates|spun|rotated & easily|free|freely|smoothly|smooth & one_place|one_spot|same_place|same_spot|one_point|a_spot & stuck|tight|binds|catches|stiff|sticks|stops|jams|hard - crank|engine|crankshaft|cam|wheel_nut|turbo|alternator",
    ),
    "wrong_pump_fitted": (
        f"{_PUMP} + turned|turns|rotates|runs|spins + other_way|opposite_way|wrong_way|backwards|wrong_direction|opposite_direction - {OTHER_PUMPS}|drill|not|seized|can_be",
        f"pump_for_the_diesel|pump_for_the_petrol|pump_for_another|pump_for_a_different|pump_off_a_different|pump_from_a_different|pump_meant_for|pump_off_another|pump_from_another|pump_for_the_smaller|pump_for_the_bigger|pump_for_the_other + mine|ours|sold|fitted|engine|model|sent|gave|version|motor - {OTHER_PUMPS}|not_a|donor|swap|borrowed|tried|test",
        f"{_PUMP} + for_the|off_a|from_a|from_the|meant_for|made_for|belongs_to|off_the|out_of_a + later|earlier|other|bigger|smaller|different|previous|newer|older|petrol_version|diesel_version|six + engine|model|type|version|one|series|motor - {OTHER_PUMPS}|not|same|shaft|rod|gasket|gear|chain|until",
        f"{_PUMP} + number|numbers|part_number|casting_number|stamp + @not_match|doesnt_match|different|wrong|another|other|not_ours|not_listed|belongs - {OTHER_PUMPS}|serial",
        f"{_PUMP} & opposite_rotation|wrong_rotation|left_hand_rotation|reverse_rotation|another_sump|different_sump|other_engine|different_engine|shallower|smaller_model|for_the_six|for_another|lower_capacity|other_sump|wrong_height|wrong_capacity|wrong_ratio - {OTHER_PUMPS}|not|to_fit|shaft|rod",
    ),
    "extra_pump_gasket": (
        f"paper|gasket|gaskets|shim|joint|packing + {_PUMP} + {_LID} + thick|thicker|thickness|two|second|double|doubled|extra|both|another|three_times|home_made|cereal|cardboard - {_ELSE}|not|blown|torn|filter",
    ),
    "cover_screws_loose": (
        f"screws|screw|bolts|setscrews|nuts|fixings + {_LID}|behind|back_of|back + {_PUMP} + {BROKEN}|loose|free|slack|missing|undone|backed|unscrewed|fingers|finger|shaken|gone|fallen|fell|dropped|worked - {_ELSE}|no|not|tight|pulled|removed|took|undid|mounting",
        f"{_LID} + {_PUMP} + fingers|by_hand|finger_tight|hand_tight + undo|undid|unscrew|turn|loose|tight|remove|off - {_ELSE}|not|spindle|shaft",
    ),
    "piece_in_pump": (
        f"{_PUMP} + piece|lump|chunk|nut|washer|ball|bolt|pin|chip|stone|bead|spring_clip|retainer|circlip|screw|rivet|splinter|pebble + between|among|in_the_middle|in_middle|sitting|wedged|stuck|jammed|lodged|trapped|lying|fell_out|dropped_out|went_in|went_through|gone_through|ended_up|found_its_way|got_into|ingested|swallowed|sucked + teeth|{_WHEELS}|{_PUMP} - {_ELSE}|no|not|sump|drive|mounting|cover|lid|idler|relief|gasket|screen|strainer|bearing|lead|copper|housing|picked|magnet",
    ),
    "idler_pin_out": (
        f"pin|peg|stub|post|spindle|shaft + second_gear|idler|driven_gear|idle_gear|loose_gear|following_gear|free_gear|second_wheel|other_gear|idling_gear + out|loose|slack|walked|slid|moved|fingers|proud|backed|worked|slid_out|fallen|rattles|drifted - {_ELSE}|no|not|drive_gear|pulley|gearbox|hard_press",
    ),
    "steel_slivers_in_pump": (
        f"{_PUMP} & magnet|magnetic|ferrous|steel|iron & slivers|splinters|needles|chips|shavings|filings|whiskers|curls|hairs|swarf|bits|particles|fragments - {_ELSE}|no|not_stick|nothing|screen|strainer|filter|pan|drain|lead|copper",
    ),
    "pump_found_sound": (
        f"{_PUMP} & dismantled|measured|opened|open|stripped|taken_to_bits|apart|taken_apart|checked|inspected|gauged & within|all_ok|as_the_book|in_limits|to_spec|in_spec|all_good|dimension_ok|inside_the_book|all_within|nothing_wrong|nothing_worn|book_figures|all_fine - {_ELSE}|not|out_of|outside|but|except|isnt|way|pressure|new_pump|drill",
    ),
}
#: the finding, by words that stand together when it is not there
ABSENT: dict[str, tuple[str, ...]] = {
    "wrong_pump_fitted": (
        f"{_PUMP} + number|part_number|casting_number + matches|match|agrees|correct|right|same - not|@not_match|wrong|but|{OTHER_PUMPS}",
    ),
    "extra_pump_gasket": (
        f"only_one|just_one|single|one_thin + gasket|paper + {_PUMP} + {_LID} - not|two|thick|{_ELSE}",
    ),
    "piece_in_pump": (
        f"nothing|no_piece|no_pieces|no_bits|no_debris|no_chunks|no_foreign + {_PUMP} + stuck|caught|jammed|lodged|trapped|between|wedged - {OTHER_PUMPS}|but|wrong|except|pickup|relief",
        f"nothing|no_pieces|no_bits + {_PUMP}|gears|rotors + stuck|wedged|jammed|between|lodged|caught - but|{_ELSE}|screen|wrong",
    ),
    "steel_slivers_in_pump": (
        f"magnet + {_PUMP} + nothing|no_slivers|came_out_clean - but|filter|screen|pan",
    ),
    "rotor_tip_wide": (
        "tip|tips|lobes + rotor|rotors + within|in_spec|inside_the_book|to_spec|in_limits - not|out|over|but|cam",
    ),
    "cover_warped": (
        f"{_LID} + {_PUMP} + flat|true|straight|closes|stiff + all_round|flat|closes|glass|ruler|dead|no_light|perfectly - not|@not_flat|but|{_ELSE}|grooves|bowed",
    ),
    "pump_found_sound": (
        f"{_PUMP} + way_outside|outside|out_of|over|beyond|past + book|figures|limits|limit|spec|tolerance|service_limit - {_ELSE}|not|within|measure_of",
    ),
    "side_clearance_wide": (
        f"{_WALL} + {_WHEELS} + close|within|inside_the_book|in_spec|to_spec|snug|in_limits - {_ELSE}|not|over|outside|too",
    ),
    "end_clearance_wide": (
        f"straightedge|straight_edge|feeler + {_WHEELS} + within|inside_the_book|in_spec|to_spec|in_limits - {_ELSE}|not|over|outside|too|wall|body|teeth|tip",
    ),
    "gear_backlash_wide": (
        f"slop|backlash|lash|play + teeth|gears|mesh|{_PUMP} + little|within|inside_the_book|in_spec|hardly|barely|next_to_no|minimal - {_ELSE}|not|over|outside|too|shaft",
    ),
    "cover_grooved": (
        f"{_LID} + {_PUMP} + smooth|flat|unmarked|no_light|like_glass|no_grooves|no_wear|no_ridge|polished - {_ELSE}|@not_smooth|@not_flat|not|but|mounting",
    ),
    "pump_turns_roughly": (
        f"{_PUMP} + turns|spins|turned|spun|rotates|rolls + silk|butter|smooth|smoothly|sweetly|no_tight_spots|no_tight - {OTHER_PUMPS}|not|but|then|engine",
    ),
    "idler_pin_out": (
        "idler|idler_pin|idler_spindle + press_fit|hasnt_moved|tight|fast|firm|solid|not_moved|secure - pulley|not_tight|belt|loose",
    ),
    "rotor_wrong_way_round": (
        "rotor|outer|annulus + chamfer|bevel|dots|marks|mark + way_the_book|line_up|as_drawn|right_way|correct|matches|match|as_the_book|as_shown - not|@not_line|@not_match|wrong|distributor|timing|arm",
    ),
    "piece_through_pump_cover": (
        f"no_hole|no_holes|nothing + {_PUMP}|{_LID} + punched|broke|broken_out|through|burst|come_through|came_through - filter|head",
    ),
    "pump_gear_broken": (
        f"gears|gear|rotors|rotor|teeth + {_PUMP} + one_piece|no_chips|all_there|whole|intact|unbroken|complete|uncracked - drive|drives|driving|not|but|{_ELSE}",
    ),
    "gears_worn_out": (
        f"gears|gear|rotors|internals|insides + {_PUMP} + nearly_new|like_new|as_new|hardly_worn|little_wear|barely_worn|no_wear|unworn - drive|drives|driving|not|but|{_ELSE}",
    ),
    "draws_nothing_in_bath": (
        f"{_PUMP} & bowl|bucket|pan_of|tray_of|bath|tub|basin|dish|jar|can_of|tin_of|pail|dunked|submerged|immersed & strongly|gushed|gushes|squirted|squirts|shot_out|strong|strong_stream|good_stream|pumps_well|pumped_well|sucks_well|plenty|draws_well|fountain|hard_push - {OTHER_PUMPS}|not|no|nothing|solvent|but|pickup_tube|hardly|weak|drill",
    ),
    "pump_found_failed": (
        f"nothing_wrong|nothing_amiss|no_fault_found|no_fault + {_PUMP} - {OTHER_PUMPS}|but|except|apart|drive|sender|solenoid",
    ),
}
