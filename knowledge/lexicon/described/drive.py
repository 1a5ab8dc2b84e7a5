"""What turns the oil pump and how it sits on the block, put by people who describe the parts."""

from __future__ import annotations

from knowledge.lexicon.described.words import BROKEN, OTHER_PUMPS, WORN

_PUMP = "pump|pumps|oil_pump"
_ROD = "shaft|rod|spindle|quill|driveshaft|axle|stem|bar|stick"
_GEAR = "gear|gears|wheel|pinion|sprocket"
_TURNS = "runs|running|run|rotates|turning|turns|turn|drive|drives|driving|works|working|spins|moves|move|for|to|of|operates|powers"
_ELSE = f"{OTHER_PUMPS}|timing|turbo|prop|gearbox|clutch"
_GASKET = "gasket|paper|joint|seal|oring|o_ring|o-ring"
#: the finding, by words that stand together when it is there
THERE: dict[str, tuple[str, ...]] = {
    "drive_shaft_broken": (
        f"{_ROD} + {_PUMP} + {BROKEN}|broken_in_middle|snapped_clean - {_ELSE}|not|crack|pin|key|cover|lid|screen|gear|wheel|bush|bearing|tooth|teeth|casing|body|housing|bits_of|rotor|one_piece|sleeve|coupler|coupling|collar",
        f"half & {_ROD} & {_PUMP} & came|stayed|other_half|left|distributor & half|rest - {_ELSE}|inch|turn|mm|thou",
    ),
    "drive_shaft_rounded": (
        f"{_ROD}|hex + {_PUMP} + {WORN}|mashed|wallowed|boogered|flogged|corners|edges|twist|twisted|twisting|candy_cane|barley_sugar|corkscrew + edges|corner|corners|end|twist|hex|tang|slot|visible|rounded|eaten|slid|slipping|slotted|grips|slot - {_ELSE}|not|no|snapped|two|broken|crisp|gear|wheel|tooth|bush|sharp",
    ),
    "drive_not_engaged": (
        f"{_ROD}|tang|hex|tongue + {_PUMP}|distributor + @not_in_its_slot|@not_in_the_slot|@not_in_place|@not_in_the_pump|out_of_its_slot|out_of_the_slot|popped_out|jumped_out|slipped_out|@not_connected|disconnected|not_joined - {_ELSE}|bolts|pin|pressure|gauge|wire|line",
        f"tang|hex|slot|distributor|dizzy|{_ROD} + never_dropped|never_hooked|never_seated|never_located|never_engaged|never_caught|never_mated|@not_drop|@not_hook|@not_seat|@not_locate|@not_mate|@not_mesh|@not_catch|@not_line_up + {_PUMP} - {_ELSE}|bolts|no_end|oil_seal|pressure",
        f"{_ROD}|hex|drive + {_PUMP} + @not_reach|never_reached|inch_short|too_short|left_on_the_bench|left_out|not_reaching|short_of|not_engaging|forgot|forgotten|on_the_bench|missed|left_behind|fallen_out - {_ELSE}|longer|tall",
        f"nothing + joining|connecting|driving|between|link|linking + engine|cam|distributor + {_PUMP} - {_ELSE}|gasket",
    ),
    "drive_gear_stripped": (
        f"all_the_teeth|every_tooth|half_the_teeth|half_its_teeth|most_of_the_teeth + gone|off|missing|stripped|sheared|broken + {_GEAR} + {_TURNS} - {_ELSE}|inside|not|chain|on_the_pump|pump_gears",
        f"teeth|tooth + {_GEAR} + {_TURNS} + {_PUMP} + gone|lost|missing|off|stripped|smooth|lying|broken|sheared|chewed|torn|bits|few - {_ELSE}|inside|not|no|all_the|pump_gears|chain|one_side|thin|one_flank|on_the_pump|pump_gears|one_of",
        f"{_GEAR} + {_TURNS} + {_PUMP} & teeth|tooth|tooths & lying|lost|gone|smooth|stripped|off|missing|bald - {_ELSE}|not|all_the|one_side|thin|one_flank",
    ),
    "drive_found_failed": (
        f"{_PUMP} + drive|whatever_turns|bit_working|thing_that_turns|thing_that_drives|bit_that_turns|what_turns|thing_driving|part_that_drives + failure|failed|busted|let_go|adrift|come_apart|came_apart|took_a_dump|packed_up|gave_up|gone|broke|broken|given_up|parted|let_loose - {_ELSE}|not|might|maybe|could|shaft|gear|chain|belt|pin|key|rod|coupling|tang|if|intact",
    ),
    "drive_gear_worn": (
        f"teeth|tooth|flank + {_GEAR}|skew|worm|distributor|dizzy + one_side|one_flank|driving_side|one_face|thin|saw|hollowed|knife|hooked|step|shark + {_GEAR}|teeth|tooth|{_PUMP}|worn|side - {_ELSE}|not|crank_gear|missing|gone|chain",
        f"{_GEAR} + {_PUMP} + worn|step|hollowed|thin|eaten|hooked + one_side|one_flank|driving_side|one_face - {_ELSE}|not|cover|lid",
    ),
    "no_drive_end_float": (
        f"{_ROD}|drive|distributor + zero_clearance|no_clearance|no_gap|no_slack|no_lash|hard_against|hard_up|tight_against|zero_float|zero_lash|zero_endfloat|zero_end_float|no_axial|no_endplay + {_PUMP}|distributor|above|drive - crank|side_to_side|cam_thrust|rotor|rotors|cover|tip|chain|rod_bearing|main",
        f"{_PUMP}|{_ROD} & bolted|tighten|tightened|torqued|screwed|bolt_it|done_up|nipped|bolted_home|bolted_up & @not_turn|stiff|jammed|solid|@not_move|wont_turn|locks|locked|binds|no_up_and_down|binding|goes_tight|no_movement|preloaded|nips & {_ROD}|distributor|dizzy|loosen|slacken|up|drive|down|up_and_down|home - {_ELSE}|not_tight|crank|cap|caps|bearing|still_has|gears",
        f"{_ROD}|drive + {_PUMP}|distributor + no_up_and_down|no_float|no_endfloat|no_end_float|no_lift|no_free_play|no_end_play|@not_lift|jammed_between|trapped_between|squeezed_between|pinched_between - {_ELSE}|crank|cam_thrust",
    ),
    "too_much_drive_float": (
        f"{_ROD}|drive|drive_gear|distributor + {_PUMP}|drive|gear|distributor + end_play|endplay|end_float|endfloat|axial|end-float|end-play + too_much|excessive|quarter_inch|eighth|lots|lot|plenty|far_too|massive|huge|way_over - {_ELSE}|no|not|crank|cam_thrust|rotors|gears",
        f"{_ROD}|drive|distributor + {_PUMP}|drive|gear|shaft + up_down|up_and_down|lift|lifts|lifted|rises|end_ways|endways + too|far|good_way|long_way|much|loads|lots|lot|plenty|excessive|heaps|mile|@length|quarter_inch - {_ELSE}|no|not|crank|fitted|refit|took|few_thou|valve|jack",
    ),
    "pump_housing_burst": (
        f"{_PUMP} + housing|body|box|casing|side|case|shell + shattered|fractured|blew|blown|burst|section_missing|exploded|broken_up|smashed|split_open|chunk_out|blown_out|broke_up|cold_oil - {_ELSE}|crack|hairline|gasket|not|seal|one_piece|screen|gear|cover",
    ),
    "pump_bolts_loose": (
        f"{_PUMP} + dangling|hanging_by|hanging_on|held_on_by|held_by|hung_by|flopping + bolt|bolts|stud|screw|nut|block|one_bolt|thread - {_ELSE}|lid|cover|chain|pickup|all_three|securely",
        f"bolts|bolt|nuts|studs|screws|setscrews + {_PUMP} + lying|rolling|rolling_around|in_the_pan|in_the_sump|loose|fallen|fell|dropped|backed|slack|undone|missing|gone|sheared|snapped|only_one|dangling|hanging_by|hanging_on|held_on_by|by_one|finger|unscrewed|stripped|bottomed|bottoming - {_ELSE}|lid|cover|plate|chain|sprocket|pickup|pipe|strainer|screen|sieve|suction|tight|not|removed|took|put_them|took_out|relief|cap|gasket|i_undid|undid|back_of_the_pump|little_screws|gears|distributor",
    ),
    "pump_seen_standing": (
        f"{_PUMP}|{_ROD} & cranked|crank|cranking|bumping|turned_her|turn_her|turned_over|turning_the_engine|turned_the_engine|rolled|barring|spun_the_engine|starter|hit_the_key|bumped|bumped_it|turned_the_key|rotated_the_engine & never_moved|@not_go_round|@not_going_round|never_goes_round|@not_revolve|dead_still|did_not_stir|@not_move|@not_turn|@not_spin|does_not|stood_still|sat_still|stays_put|didnt_budge|motionless|sat_there|just_sat|stayed_put|stands_still|did_nothing|doing_nothing|just_sat|sat_there|stood_there|isnt_turning|not_going_round|@not_go_round|@not_rotate|no_movement|@not_budge|@not_stir|stock_still - {_ELSE}|by_hand|gauge|needle|pressure|rotor_arm|pump_by|moved_freely|bar|clicks|budge|seized|stiff",
        "crank|engine + turns|turn|spins + pump + does_not|doesnt|stays|not|still - water|fuel|pressure|oil_pump_and|easily|over",
    ),
    "pump_chain_broken": (
        f"chain|sprocket|toothed_wheel + {_PUMP} + cut|snapped|broken|broke|off|hanging|parted|cracked|come_off|jumped|dangling|let_go|split|loose|fallen|in_the_sump - {_ELSE}|not|tensioner|tight|new|guide|cover|spins|turns|snout|crank",
    ),
    "drive_shaft_too_long": (
        f"{_ROD} + {_PUMP}|drive|replacement|new|distributor + longer|too_long|too_much|higher|sticks_out|stands_higher|taller|tall_block|sticks_up|protrudes|proud|over_length|wrong_length|too_tall|bottoms_out|bottoming_out|bottoms - {_ELSE}|crank|con|short|shorter|pushrod|conrod|bolt|dipstick|no_longer|any_longer|last",
    ),
    "mount_gasket_blown": (
        f"{_GASKET} + {_PUMP} + {BROKEN}|blown|chunk_missing|torn|washed|ripped|squirting|missing_a_piece|perished|blew|leaking|squeezed|rotten|eaten|damaged|holed - {_ELSE}|lid|cover|plate|not|pickup|pipe|suction|filter|front|new|screen|strainer|sump|head|rear|main|scavenge|tank|cut|opened_for|renewed|just|opened",
    ),
    "mount_gasket_missing": (
        f"nobody|forgot|forgotten|omitted|never|left_out|somebody_forgot|they_forgot|neglected + {_GASKET} + {_PUMP} + under|behind|between|beneath|block|crankcase|outlet - {_ELSE}|lid|cover|pickup|pipe|suction|filter|sump|leaks|leaked|touched|disturbed|blown",
        f"no_{_GASKET.replace('|', '|no_')}|no_joint|no_joint_at_all|without_the_paper|without_paper|bare_iron|bare_metal|dry_joint|metal_to_metal|@not_gasket|without_a_gasket|left_the_gasket|gasket_forgotten|forgot_the_gasket + {_PUMP} + crankcase|block|engine|between|behind|groove|under|mounted|fixed|fitted|goes - {_ELSE}|lid|cover|pickup|pipe|suction|pressure|filter|sump|not_needed|cover_plate|none_called|leak",
        f"{_PUMP} & no_oring|no_o-ring|no_o_ring|no_gasket|no_seal|no_joint & groove|block|crankcase|called_for|belongs|should_be|supposed - {_ELSE}|lid|cover|pickup|pipe|suction|filter|sump",
    ),
    "mount_face_not_flat": (
        f"{_PUMP} & @not_sit_flat|@not_lie_flat|@not_flat|rocks_on|rock_on|@not_square & block|crankcase|face|mounting|engine|flange - {_ELSE}|no|lid|cover|plate|head|filter|relief|glass",
        f"face|surface|metal|place|flange|seat|mating + {_PUMP}|block + mounting|meets|sits|sit|joint|mating|mounts|bolts|bolted + scored|distorted|@not_flat|@not_straight|uneven|burr|burred|burrs|scratch|scratched|rocks|warped|nicked|gouged|high_spot|dinged|twisted - {_ELSE}|no|pump_cover|lid|head|filter|relief|valve|sump|tank",
    ),
    "gasket_masks_port": (
        f"gasket|paper|seal + {_PUMP} + sticks_out|overhang|overhanging|over_the_hole|over_the_port|across_the_hole|across_the_port|into_the_port|into_the_hole|hides|smaller_than - {_ELSE}|no|not|filter|head|lid|blown|leak",
        f"{_GASKET} + port|ports|hole|holes|opening|openings|outlet|inlet|passage + {_PUMP}|partly|half|partially + blocked|blocks|covers|covered|covering|occluding|chokes|choked|masks|hides|hangs|hanging|obstructs|overhangs|overlaps|closes|narrows|restricts|laps - {OTHER_PUMPS}|not|filter|turbo|head|nothing|no|lid|fully_open|@not_line",
        f"{_GASKET} + hanging|hangs|overhangs|overhanging|laps|covers|chokes|masking + {_PUMP}|outlet|inlet - {OTHER_PUMPS}|not|filter|turbo|head|nothing|no|lid|pinched|pickup|suction|half",
        f"{_GASKET} & @not_line_up & covers|blocks|hides|chokes|closes|half & hole|port|opening & {_PUMP} - filter|turbo|head|{OTHER_PUMPS}",
    ),
    "gear_slips_on_shaft": (
        f"hold|held|holding & {_ROD} & turn|spin|rotate|twist & {_PUMP}|gear & wheel|gear|rotor|sprocket|on_it - {_ELSE}|no|not|@not_turn|bolt|bush|cam|alternator|fan|pulley|drill",
        f"{_GEAR}|rotor + {_ROD}|snout + slip|slips|slipping|slipped|turn_round|turns_on|spins_on|turned_on|not_fixed|turn_the_gear|loose_on|creeps|walks|moves_on|round_on_it|round_on|spun_on - {_ELSE}|no|@not_slip|bush|bearing|stub|hub|teeth_slipped|cam|alternator|fan|pulley",
    ),
    "drive_flats_worn": (
        f"flat_sides|flats|splines|key|keyway|straight_faces|flat_faces|faces|two_flats + crank|crankshaft|nose|snout|{_PUMP} + {WORN}|worn_off|rounded_off|rounded_over|knocked_off - {_ELSE}|no|not|sharp|square|valve|follower|thrust|mating|ignition",
    ),
    "scavenge_pump_jammed": (
        "empties_the_crankcase|empties_the_sump|returns_oil|returns_the_oil|sucks_the_crankcase|clears_the_sump|scavenges + pump|stage|section + stuck|jammed|seized|locked|@not_turn|stopped|solid - fuel|water|hose|pipe|line|strainer",
        "scavenge|scavenging|scavenger|return_pump|second_pump|emptying_pump|pump_emptying|suction_stage + pump|stage|section|blocked|one|side + jammed|seized|stuck|blocked|@not_turn|@not_turning|@not_go_round|@not_spin|not_turning|locked|solid|stands_still|broken|stopped_turning - fuel|water|hose|pipe|line|strainer|union|screen",
        "second_pump|return_pump|scavenge_pump & @not_go|does_not_go|doesnt_turn|@not_turn|not_turning|jammed|seized|stuck|stands_still - fuel|water|hose|pipe",
    ),
    "scavenge_side_takes_air": (
        "hose|pipe|line|union|seal|fitting|clip + return_pump|scavenge|scavenging|scavenger|tank_pump|crankcase_to_the|sucks_the_crankcase|empties_the_crankcase + soft|split|broken|chafed|cracked|holed|perished|loose|take_air|takes_air|sucking_air|rubbed|leaks|worn_through - fuel|water|no|not|tight|sound|new",
        "pipe|hose & crankcase_empty|sucks_the_crankcase|empties_the_crankcase|return_pump & soft|split|chafed|cracked|holed|air|perished|loose - no|not|fuel",
    ),
    "tank_foams": (
        "tank|reservoir & oil|drysump|breather|vent & foam|froth|bubbles|aerated|foams|foaming|frothing|cappuccino|whipped|beer|head_like - no|not|fuel|without|header|radiator|never|clear",
        "tank|reservoir + vent|breather|overflow|vent_pipe + oil|puking|blowing|discharge|spits|dumps|throws|pushes|out|mist - fuel|no|not|water|radiator|header|rocker|crankcase_breather|coolant",
    ),
    "pump_stays_low": (
        "pump + ecu|commands|commanded|two_stage|two-stage|variable|two_speeds|two-speed|regulation|controlled|demand|two_step|two_speed & weak_one|low_mode|low_stage|small_stage|stays_low|stuck_in_low|@not_kick|wont_kick|stuck_low|weak|lower_stage|never_switches|never_goes_into|never_goes_high|never_goes_up|@not_go_high|@not_shift|never_shifts|never_changes|@not_step_up|never_steps|never_kicks|@not_switch|@not_change_over|only_low|first_stage - fuel|water|high_like|jumps",
    ),
    "pump_rises_unplugged": (
        "unplugged|unplugging|pull|pulling|pulled|disconnect|disconnecting|disconnected|took|unplug|connector_off|wire_off|unhooked & solenoid|small_electric_plug|plug|wire|gadget|control_valve|connector & pump|pressure|stage|oil_pump & doubled|shot_up|high_stage|full_pressure|jumped|jumps|leapt|rose|climbs|soared|right_up|goes_straight|goes_up|goes_to|shoots|comes_up|went_up|went_straight - sender|switch|not|no|spark|drops|fell|zero|gauge_wire|still|vct|vvt|phaser|cam",
    ),
    "pump_jammed": (
        f"pump|oil_pump & wrench|pliers|spanner|by_hand|vise|vice|grips|vise-grips|socket|screwdriver|stillson|mole_grips|fingers & @not_budge|@not_turn|@not_rotate|@not_spin|@not_move|stuck_fast|stuck_solid|frozen_solid|seized_solid|rusted_solid|locked_solid - {_ELSE}|not_stuck|cranked|cranking|starter|bolted|tightened|torqued|scavenge|engine|bolt|bolts|pickup|relief|plunger|pulley|crank|cover|lid|freely",
    ),
    "drive_coupling_sheared": (
        f"pin|key|half-moon|half_moon + locks|holds|fixes|secures|joins|on|in|of + {_PUMP} + gear|shaft|drive|coupling + {BROKEN}|cut_through|chopped|gone|missing|lost|fallen_out - {_ELSE}|no|not|idler|cover|relief|fine|whole|worn|crankpin|ignition",
        f"sleeve|coupler|coupling|collar|connector|muff|dog|roll_pin|rollpin|woodruff|drive_key|shear_pin|tension_pin|spring_pin|split_pin + {_PUMP}|distributor|dizzy + {BROKEN}|chopped|missing|lost|fell_out|fallen_out|crumbled|melted|shredded|stripped|disintegrated|gone - {_ELSE}|no|not|idler|cover|relief|gasket|dowel|cap|clutch|crank_pulley|rotor_arm|fine|whole",
    ),
}
#: the finding, by words that stand together when it is not there
ABSENT: dict[str, tuple[str, ...]] = {
    "drive_shaft_broken": (
        f"{_ROD} + {_PUMP} + one_piece|whole|unbroken|intact|not_broken|not_snapped|not_sheared|not_twisted|still_together - {_ELSE}|but|candy|twist|gasket|cover|lid|worn|rounded",
        f"{_ROD} + {_PUMP}|drive + one_piece|whole|unbroken|intact|@not_broken|@not_snapped - not_whole|but|housing|gear|body",
    ),
    "drive_coupling_sheared": (
        f"sleeve|coupler|coupling|key|tang|roll_pin|rollpin|pin|dog|woodruff + {_PUMP}|drive|distributor + fine|whole|intact|ok|unbroken|in_place|still_there|sound|undamaged|all_there|both_good - not|but|idler|relief|worn|cap|ignition|sheared",
        "key|pin|tang|coupling|roll_pin + pump|drive + fine|whole|intact|good|sound|in_place|both_there - not|but|ignition|shaft_broke|idler|sheared",
    ),
    "too_much_drive_float": (
        f"drive|{_ROD} + pump|distributor + not_much|hardly_any|no_excess|little + movement|float|play|up_and_down|lift - crank|bush",
    ),
    "pump_chain_broken": (
        f"chain|sprocket + {_PUMP} + on_and_tight|still_on|whole|intact|tight|in_place|unbroken|good_order - not|but|timing_chain|loose|off",
        "chain + pump + still_on|in_place|tight|whole|intact|in_one_piece - not|but|loose|off|cover|bolt",
    ),
    "mount_face_not_flat": (
        "face|surface|flange + pump + flat|true|smooth|level + mounting|block|joint|dead|perfectly|both - not|@not_flat|but|cover|lid|head|burr|scored",
    ),
    "gear_slips_on_shaft": (
        f"{_GEAR} + {_ROD} + tight|fast|solid|firm|secure|fixed - not|but|idler|@not_tight|bush|loose",
    ),
    "drive_shaft_rounded": (
        f"hex|tang|slot|flats + {_ROD}|{_PUMP} + crisp|sharp|no_twist|square|snug|clean|perfect - not|but|rounded|too",
    ),
    "drive_gear_stripped": (
        "all_its_teeth|all_teeth|every_tooth|all_of_its_teeth|all_the_teeth + drive|pump|skew|distributor + gear|pinion|wheel|sprocket - not|but|off|gone|missing|stripped|lost|broken|timing|inside",
        f"teeth + {_GEAR} + {_TURNS} + {_PUMP} + all_the|all_still|still_on|all_there|intact|complete - not_all|missing|but",
    ),
    "drive_found_failed": (
        f"drive + {_PUMP} + intact|whole|sound|all_there|unbroken|wasnt_it|in_one_piece|perfect - not_intact|but|not_whole",
    ),
    "no_drive_end_float": (
        f"{_PUMP}|{_ROD} & bolted|bolted_up|tightened|torqued & few_thou|end_float|up_and_down|float|free_play & still_has|spins_free|has|free|freely|turns - no|not|binds|too|without",
    ),
    "pump_housing_burst": (
        f"{_PUMP} + housing|body|casing|case + one_piece|whole|intact|unbroken - not|but|gasket",
    ),
    "pump_seen_standing": (
        f"{_PUMP}|{_ROD} + go_round|turning|spinning|going_round|turn|turns|spin|goes_round & watched|saw|could_see|can_see & cranked|crank|turned|engine|starter - not|never|water|fuel|by_hand|drill|no",
    ),
    "drive_shaft_too_long": (
        f"{_ROD} + {_PUMP} + exactly_the_length|right_length|same_length|correct_length|length_in_the|as_listed|measures - not|wrong|longer|too|pushrod",
    ),
    "mount_gasket_missing": (
        f"{_GASKET} + {_PUMP} + was_there|right_one|in_place|as_the_book|present|fitted_as|is_there - not|no|torn|but|lid|cover|pickup|suction|never|nothing",
    ),
    "gasket_masks_port": (
        f"{_GASKET} & port|ports|hole|holes|opening & fully_open|all_open|wide_open|line_up|lines_up|clear|uncovered & {_PUMP} - not|@not_line|but|filter|covers|head|sump",
    ),
    "drive_flats_worn": (
        f"flats|key|splines + {_PUMP}|turn|drive + sharp|square|crisp|unworn|perfect - not|but|rounded|ignition",
    ),
    "pump_stays_low": (
        "pump + two_stage|two-stage|variable|two_speed + kicks_up|goes_high|switches_up|changes_up|kicks_to|steps_up - not|never|@not_kick|wont|fuel",
    ),
    "pump_bolts_loose": (
        f"{_PUMP} + firmly_bolted|bolted_tight|firmly_fixed|bolted_up_tight|solidly_mounted|securely_bolted|firmly_mounted|fixed_solid|held_tight|tightly_bolted|bolts_tight|bolts_all_tight - {_ELSE}|not|but|cover|lid",
    ),
}
