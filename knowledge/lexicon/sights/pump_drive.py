"""Words for what turns the oil pump, and for its mounting."""

from __future__ import annotations

from knowledge.lexicon.words.names import CRANKED, DRILL, GUSHED

_PUMPS = "pump|pumps|oil-pump"
_DRIVESHAFT = "shaft|driveshaft|drive-shaft|rod|spindle|quill"
_DRIVE = "pump|drive|intermediate|jackshaft|distributor"
_BROKE = "broken|broke|snapped|sheared|twisted-off|fractured|failed|parted"
_SEIZED = "seized|jammed|locked|siezed|stuck|solid"
_SHAFT = "shaft|driveshaft|rod|hex|spindle|intermediate"
_UP_OR_OFF = "up|out|off"
_ANY_SHAFT = "shaft|driveshaft|spindle|quill|rod"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "stepped_down_and_stayed": (
        "dropped|fell|stepped|settled|slid|went|drop by|about|down|clearly|a|to|at .. stayed|stays|remained|remains|settled there|low|lower|that|at",
        "dropped|fell|stepped|went @pressure|@number .. stayed|remained|stays there|at",
        "stepped|settled clearly|down|lower lower|and|low|at?",
        "then|and settled|stayed clearly? lower",
        "went|dropped|fell|stepped|gone down? to @pressure|@number and|,|then it|it's|its|has|stayed|been|there|is? been|stayed|is? there|@pressure|@number|that ever? since",
    ),
    "original_drive_shaft": (
        f"original|stock|factory|old|first oil? pump? drive? {_DRIVESHAFT}",
        f"{_DRIVE} {_DRIVESHAFT} is|was? the? original|stock|never",
    ),
    "pump_jammed": (
        f"{_PUMPS} is|was|had|has|found|completely|totally? found|been|completely? {_SEIZED}",
        f"{_SEIZED} up? oil? pump",
        f"{_PUMPS} would|will|could? only|just? turn|turns|turned|turning|rotate|rotates|rotated|move|moves|spin|spins .. before|then|and|until|till it? would|then? bind|binds|bound|binding|lock|locks|locked|stop|stops|stopped|jam|jams|jammed up?",
        f"{_PUMPS} only|just|barely turn|turns|turned|rotates|rotated|moves|moved .. then|before|and|until it? stop|stops|stopped|bind|binds|lock|locks",
        f"{_PUMPS} drive|shaft|rod|spindle|driveshaft|drive-shaft =wont|=wouldnt|=cant|=couldnt turn|rotate|move|spin",
        f"{_PUMPS} drive|shaft|rod|spindle|driveshaft|drive-shaft would|will|could not turn|rotate|move|spin",
        f"{_PUMPS} drive|shaft|rod|spindle? is|was|had|been|just? been? bound up",
        f"{_PUMPS} keeps|kept|would|will? seizing|seizes|freezing|freezes|froze|frozen|locking|locks|jamming|jams|binding|binds up?",
        f"{_PUMPS} wont|wouldnt|cannot|cant be? turn|turned|rotate|spin by?",
    ),
    "drive_shaft_broken": (
        f"{_DRIVE} drive? {_DRIVESHAFT} .. {_BROKE}",
        f"{_BROKE} oil? {_DRIVE} drive? {_DRIVESHAFT}",
        f"{_DRIVESHAFT} to|of|for|driving the? oil? {_PUMPS} .. {_BROKE}",
        f"{_BROKE} .. {_DRIVESHAFT} to|of|driving the? oil? {_PUMPS}",
        f"{_PUMPS} {_DRIVESHAFT} {_BROKE}",
        "drive rod stub? .. broken|snapped|sheared off?",
    ),
    "drive_shaft_rounded": (
        f"{_DRIVE} {_DRIVESHAFT}|end|tang|hex|slot .. rounded|rounding|worn|twisting|chewed off?",
        "driveshaft|drive-shaft|quill|intermediate-shaft end|tang|hex|slot? .. rounded|rounding|worn|chewed off?",
        "hex|tang|slot|dog is|was|had|has|end? rounded|worn|chewed off|over|away?",
        f"rounded off? .. {_DRIVESHAFT}|hex|tang",
    ),
    "drive_not_engaged": (
        "hex|tang|shaft|slot|dog|tongue|drive|rod barely|hardly|just|only|not|doesnt|didnt|isnt|wasnt|never|wont bites|bite|biting|catches|catch|catching|"
        "engages|engaged|engage|engaging|reaches|reach|reaching|meets|touches|in|into|goes|go|going|seats|seated|drops|dropping the|it|in|into|pump|slot|fully|"
        "far|deep|enough|properly?",
        "distributor|dizzy|dist gear|shaft|is|was|sits|sat|stands|gear? not|isnt|wasnt|never|about|up|too|sits|1/8|a? all|fully|right|properly|high|proud|up|"
        "short down|in|home|seated|of|from|where|off|by",
        "gear is|was|sits|sat about|around? @length|@number|1/8|inch|eighth|mm .. up|high|above|proud|out from|of|where|off?",
        f"{_DRIVESHAFT}|drive|tang|distributor|dizzy|pump @not engage|engaged|engaging|mesh|meshing|seated|reach|reaching",
        f"{_DRIVESHAFT} .. too short",
        f"{_DRIVESHAFT}|drive .. dropped|fell|slipped|come|came out|down|disengaged of?",
        "@not engaged|engaging|engage .. pump|distributor|drive|shaft",
        f"{_SHAFT} had|has|was|is|comes|came|come|pulled|lifted|slipped|jumped|popped up|right|clean? {_UP_OR_OFF} out? of|from the? oil? pump",
        f"{_SHAFT} not|never|wasnt|isnt|didnt sitting|seated|in|drop|dropped|go|went down|in|into? the? oil? pump",
        f"distributor|dizzy not|never|wasnt|isnt|didnt pick|picking|picked up the? oil? pump? {_SHAFT}",
        "missed the pump shaft|drive|slot",
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
    "drive_gear_worn": (
        "drive|intermediate|jackshaft|distributor|skew|worm drive? gear|gears|teeth .. worn",
    ),
    "no_drive_end_float": (
        "pump|drive|shaft binds|bound|bind .. bolted|tightened|torqued",
        "no end play|float .. drive|shaft|pump|distributor",
    ),
    "pump_housing_burst": (
        f"{_PUMPS} housing? .. burst|exploded|split|blown|shattered",
        f"burst|exploded|split|shattered oil? {_PUMPS}",
    ),
    "pump_bolts_loose": (
        f"{_PUMPS} mounting|mount|retaining|fixing? bolts|bolt|stud|studs|nuts .. loose|missing|backed|fallen|slack|out",
        f"{_PUMPS} is|was|had|came|come|has|working|worked? loose|fallen|hanging|dropped",
        f"loose|missing .. bolt|bolts .. {_PUMPS}",
        f"{_PUMPS} fell off",
    ),
    "pump_seen_standing": (
        f"{_PUMPS}|{_DRIVESHAFT} was|is|were? @not turning|turn|spinning|rotating|driven|being",
        f"{_PUMPS} stood|stands|stays|stayed still|stationary",
    ),
    "pump_chain_broken": (
        "pump chain .. broken|snapped|off|jumped|came",
        "broken|snapped oil? pump chain",
        "pump sprocket .. loose|off|bolt|broken|came|undone|nut|fell",
        "balance-shaft|balancer chain .. broken|snapped",
        "chain .. pump .. broken|snapped|off",
        "pump chain is|was|had|has|hasnt|wasnt|been? never|not|isnt|wasnt|came|come|jumped|fallen|hanging been? =hooked|=fitted|=put|=on|=off|=refitted|=connected",
        "never|forgot|didnt|forgotten|not to? =hooked|=put|=fitted|=fit|=put|=connected|=hook the? oil? pump chain",
    ),
    "mount_gasket_blown": (
        f"{_PUMPS} .. gasket .. blown|torn|split|leaking|washed|cracked|blew",
        f"blown|torn|split gasket .. {_PUMPS}",
        f"gasket between .. {_PUMPS} .. blown|torn|split",
    ),
    "mount_gasket_missing": (
        f"no|missing|forgot|left gasket|seal|o-ring|oring out|between|under|behind|on the? oil? {_PUMPS}",
        f"{_PUMPS} .. gasket|seal|o-ring|oring .. missing|left|forgotten",
        f"without a? gasket|o-ring|seal .. {_PUMPS}",
    ),
    "mount_face_not_flat": (
        f"{_PUMPS} .. face|mounting|mating .. @not flat|warped|burred|burrs|scored|uneven",
    ),
    "wrong_pump_fitted": (
        "wrong|incorrect|different|mismatched oil? pump",
        "pump .. is|was|for|from for|from? a|another|the? wrong|different|other engine|model|one",
        "@not the? right|correct oil? pump",
    ),
    "gone_at_the_next_start": (
        "pressure .. fine|good|normal|@pressure|@number .. stopped|parked|shut|switched .. next|restart|again .. none|nothing|zero|no",
        "good|fine|normal|running when|until|before shut|parked|stopped|switched|before .. none|no|nothing|zero .. start|restart|morning|next",
        "ran|running fine|good|normally|before|well before|yesterday|earlier|to .. none|no|zero|stayed .. start|restart|next",
        "good|fine|had|normal|pressure|perfect when .. parked|stopped|off|down|left .. next|morning|now|restart|restarted .. no|none|nothing|zero|nil",
        "no|zero|nil|none oil? pressure on? the? next|following morning|day|time|start",
        "lost|gone|disappeared|vanished it? overnight",
        "pressure|gauge|reading|fine|normal|good|ok|@pressure .. monday|tuesday|wednesday|thursday|friday|saturday|sunday|yesterday|evening|night ,|and|then|but? @pressure|none|nothing|zero|gone|low .. monday|tuesday|wednesday|thursday|friday|saturday|sunday|today|morning|next",
    ),
    "too_much_drive_float": (
        "distributor|dist|dizzy|pump|drive|oil-pump drive|pump? shaft|gear|drive has|had|with|got|lots|too|loads|a lots|lot|loads|too|much|plenty|tons|a|"
        "excessive of? of? up|end|vertical|axial and|&|play|float|movement|slop down?",
        "distributor|dist|dizzy shaft|gear|drive lifts|moves|move|goes|rattles up and|& down",
    ),
    "began_after_revving_hard": (
        "after|since|when .. over-revved|over-revving|overrevved|overrevving|overrev|over-rev|redlined|bounced|redline|missed limiter|gear|shift|it|the?",
        "missed|fluffed a? gear|shift|downshift .. and|then|revved",
        "revved|took|ran to|past|into|over the? limiter|redline|red-line|7000|8000 .. then|since|after|and",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "pump_jammed": (
        "pump + seized|locked|jammed|=solid|=frozen|immovable|@not_turn_by|will_not_turn|wont_turn - bolts|finger|vacuum|water|fuel|injection|steering|noise|relief_valve|cranked",
        "@not_turn|cant_turn|wont_turn|impossible_to_turn|unable_to_turn + pump|oil_pump + pump|by_hand|oil|at_all - crank|cranked|engine|distributor|drill|water|fuel|vacuum",
    ),
    "pump_seen_standing": (
        f"pump|{_ANY_SHAFT} + stands_still|standing_still|@not_turning|@not_rotating|stationary|still + crank|cranked|cranking|engine_turned|turned_over|while|when",
    ),
    "draws_nothing_in_bath": (
        "pump & bowl|bath|bucket|tub|tray|can|pan_of_oil|jar & @not_draw|@not_pump|@not_pick|@not_suck|@not_prime|nothing|@not_lift|no_oil|no_suction",
    ),
    "wrong_pump_fitted": (
        "pump + later|earlier|other|different|another|wrong + engine|model|version|type|one|shorter|longer|body|number + is|was|for|not|from - new|fitted_a|replaced|swapped|gauge|gasket|vacuum|water|fuel",
        "wrong_pump|wrong_oil_pump|incorrect_pump|@not_the_right_pump + fitted|for|was|in|supplied|had|is - gasket",
        "pump + wrong|@not_listed|@not_right|incorrect|different_engine|another_engine|other_engine|for_a_different - new|gasket|fuel|water|replaced|swapped",
        "pump + for_a_different|for_another|off_a_different|wrong|isnt_the|@not_the_right|not_the_right|incorrect + engine|one|model|right|it|fitted|motor - gasket|fuel|water|swapped|going|sender",
    ),
    "drive_coupling_sheared": (
        "key|woodruff|roll_pin|rollpin|tang|coupling|drive_pin|drive_dog|shear_pin|tongue|coupler + sheared|gone|lost|missing|snapped|broken|fallen|fell|dropped_out|stripped|failed - ignition|starter|door|ring|gudgeon|car",
        "coupling|pin|key|dog|tang|coupler|tongue|sleeve + let_go|sheared|snapped|broke|gone|split|fell_out|shattered|failed + pump|drive|shaft|distributor - gudgeon|wrist|crank_pin|clutch|prop|water|fuel|not|@not|steering",
    ),
    "pump_chain_broken": (
        "sprocket|drive_sprocket|pump_sprocket + lost|missing|no|stripped|gone|worn_off|without + teeth|tooth - sensor|distributor|rockers",
        "chain|sprocket + pump + snapped|broken|broke|off|jumped|loose|stripped|failed|come|fell|parted - timing|spins|drives|crank|turns",
    ),
    "drive_not_engaged": (
        f"{_ANY_SHAFT} + too_short|@not_reach|@not_engage|@not_engaged|@not_engaging|not_in_mesh|fell_out|dropped_out|@not_connected|@not_located + pump|drive|slot|distributor|it",
        f"drive|{_ANY_SHAFT} + pump + left_out|forgotten|missing|never_fitted|@not_fitted|not_there|absent",
        "distributor|dizzy|tang|shaft|drive + @not_down|not_down|not_in_the_slot|@not_in_the_slot|@not_engage|@not_engaged|@not_engaging|not_engaging|not_seated|@not_dropped|not_all_the_way|@not_mesh + pump|slot|shaft|pump_shaft|drive|way - seal|cap",
    ),
    "no_drive_end_float": (
        f"{_ANY_SHAFT}|drive|pump + end_float|end_play|endfloat|endplay|float + zero|no|nil|none|@not - crank|thrust",
        f"{_ANY_SHAFT}|drive + binds|bound|binding|nipped|tight + bolted_up|bolted_down|tightened|torqued|done_up - crank|bearing|caps",
        "end_float|end_play|endfloat|endplay & pump|pump_shaft|drive_shaft & none|nil|zero|binding|bound - crank|thrust|cam",
    ),
    "too_much_drive_float": (
        f"{_ANY_SHAFT}|drive|distributor + end_float|end_play|endfloat|endplay|float + too|excessive|much|loads|over - crank|thrust|pump_gears",
    ),
    "drive_gear_worn": (
        "distributor|dizzy|skew|drive|worm|spiral + gear|gears|pinion|teeth + worn|knife|razor|shark|hooked|chewed|wafer|pointed|sharp|thin|half - timing|replaced|new_gear|vacuum|pump_gears|stripped|broken",
        "knife_edged|knife-edged|sharp|pointed|hooked|razor|worn_to_points + teeth|gear + gear|teeth|dizzy|distributor|drive - pump_gears|timing",
        "dizzy|distributor|drive|skew|cam + gear|teeth + eaten|worn|thin|razor|blades|chewed|points|half_gone|knife - pump_gears|timing|stripped|missing|lobes|rotor",
    ),
    "drive_gear_stripped": (
        "distributor|dizzy|skew|drive|worm + gear|gears|pinion|teeth + stripped|gone|missing|sheared|broken|no_teeth|bald|chewed_up - timing|pump_gears",
        "gear|skew|pinion + shed|lost|stripped|missing|no|bald|sheared + teeth|tooth|bald + skew|distributor|dizzy|drive|gear|pump_drive|that_drives - timing|plastic|nylon|fibre|fiber|timing_gear|pump_gear_lost|starter|ring|flywheel|rotor",
    ),
    "drive_shaft_broken": (
        f"{_ANY_SHAFT} + snapped|twisted_off|sheared|broken|broke|twisted_in_two|in_half|in_two|parted + pump|hex|drive|distributor|oil|intermediate - tang|dog|key|rocker|cam|crank|turbo|con|connecting|balance|piston",
        "sheared|snapped|broke|broken|twisted + hex_drive|hex_shaft|drive_shaft|driveshaft|pump_drive|oil_pump_shaft|hex|hex_rod|drive_rod + dizzy|distributor|pump|oil|bottom|off|clean|drive|two - tooth|teeth|rocker|cam_gear|key|woodruff",
    ),
    "drive_shaft_rounded": (
        f"{_ANY_SHAFT}|hex|tang|slot|tongue|drive_end|blade + rounded|round|twisted|corners|wallowed|worn|chewed|barber|candy + pump|drive|distributor|hex|hexagon - rocker|cam_bearing|gear|broken|snapped|turbo|off_in|twisted_off|sheared",
        "drive|hex|tang|shaft|tongue|corners|slot|flats|blade + rounded|worn_away|rounded_off|worn_off|wallowed|nearly_worn|=rounding|mushroomed|twisted_like + pump|drive|shaft|end|hex|itself|corners - gear|rotor|snapped|broken|cam|rocker",
    ),
    "pump_housing_burst": (
        "pump + housing|body|casting|case + burst|exploded|blown|bits|shattered|smashed|broken|half - cracked|gasket|water|fuel",
    ),
    "gasket_masks_port": (
        "gasket|seal + hides|hid|hidden|hiding|covers|covering|masks|masking|blocks|blocking|blanks|blanking|obstructs|overlaps|across + port|hole|passage|outlet|inlet|oilway|feed|drilling - piston|accessory",
    ),
    "mount_gasket_missing": (
        "no_gasket|@not_gasket|without_gasket|gasket_missing|forgot_gasket|gasket_left_out|@not_a_gasket|forgot_the_gasket|without_a_gasket + pump - cover_screws|filter|sump|pan|rocker|head",
        "gasket + pump + missing|left_out|forgotten|never_fitted|omitted|@not_there|@not_fitted - filter|sump_gasket|water|fuel",
        "no|without|missing|forgot|forgotten|never_put|left_out|@not + gasket|o_ring|oring|o-ring|seal|paper + pump + block|bolts|fitted|between|base|in|mount|mating - fuel|water|vacuum|cover|pickup|leak|new|torn|blown",
    ),
    "mount_gasket_blown": (
        "gasket|joint|paper + pump|mount|mounting|flange + blown|torn|split|pushed|missing_piece|washed|gone_one|wash - fuel|water|vacuum|filter|missing|no|head|cover_gasket",
    ),
    "mount_face_not_flat": (
        "face|flange|surface|mating + pump|block|mount + burr|@not_flat|warped|high_spot|rocked|rocks|dinged|uneven|nicked|gouge|dent - journal|cylinder|head|valve|feels",
    ),
    "pump_bolts_loose": (
        "bolts|bolt|studs|nuts + pump + loose|slack|finger|fallen|missing|backed|undone|stretched|hand_tight|bottomed|never_torqued - cover|vacuum|water|fuel|pickup|body",
        "pump + hanging|hanging_on|one_bolt|dangling|loose|@not_tight|forgot_to_tighten|forgotten_to_tighten|never_tightened|@not_torqued|finger_tight + bolt|bolts|by|pump|tighten|only|nuts|them|tight - union|pipe|line|hose|water|fuel|vacuum|cover|steering|relief|belt|pickup",
    ),
    "gone_at_the_next_start": (
        "parked|shut|last_night|stopped|switched|yesterday|good|fine & next_morning|restart|today|next_day|restarted|started_again|next_start & none|nothing|zero|no_pressure|no_oil_pressure|dead|gone|not_a - fuel|battery|noise|warm|hot",
        "fine|good|normal|ok|pressure|perfect|@pressure|@number + yesterday|last_night|last_time|when_i_parked|when_parked|put_away|when_i_shut|friday|saturday|sunday|day_before & morning|today|next|this_morning|now|next_day & nothing|none|zero|no_pressure|no_oil_pressure|zilch|nil|dead|gone|light_stays - level|oil_level|dipstick",
    ),
    "began_after_revving_hard": (
        "over-revved|overrevved|over_revved|missed_shift|missed_gear|money_shift|redlined|bounced_off_the_limiter|hit_the_limiter|bouncing_off_the_limiter|bouncing_off_the_rev|bouncing_off_the_redline|buzzed_it|revved_the_nuts|red-lined + after|since|then|it|and|when|zero|pressure|from|ever|the|on - no|not|never|up_to|before",
        "limiter|over-revved|overrevved|over_revved|missed_a_gear|missed_gear|valve_bounce|buzzed + off|bounced|bounced_it|hit|then|after|since|lost|to|it - before|by_the|at_the|near_the|no|never|needle_red|gauge",
    ),
    "drive_shaft_too_long": (
        "shaft|driveshaft|drive_shaft|intermediate + too_long|longer + pump|distributor|than|oil|it - spring|bolt|crank",
    ),
    "pump_turns_roughly": (
        "pump + tight_spot|rough|notchy|binds|gritty|stiff_spot|lumpy|binding|catches + turn|turning|by_hand|rotate|spin|turned|once - bolted|shaft_binds|noise",
    ),
    "original_drive_shaft": (
        "pump_shaft|driving_rod|drive_rod|pump_drive_shaft|intermediate_shaft|pump_rod|drive_shaft|rod & pump & original|first_one|as_factory|never_renewed|never_replaced|nobody_ever|since_new|ever_renewed|factory|never_changed - new_pump|crank|not_original|bent|worn|broken|big_end",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "draws_nothing_in_bath": (
        "pump & bowl|bath|bucket|tub|tray|pan_of_oil|jar|by_hand|across_the_bench & squirts|squirted|solid_stream|good_stream|moves_oil|moves_plenty|draws|pulled_oil|pulls_oil|shoots|gushes - not|no|@not|nothing|fuel|water|filter|sender|cranked",
    ),
    "pump_jammed": (
        "pump + turns|spins|turned|rotates + freely|smoothly|easily|nicely|free - not|water|fuel",
    ),
    "drive_partner_stopped": (
        "still_spins|still_turns|still_works|still_turning|still_runs|still_going|still_reads & dizzy|tach|tacho|distributor|magneto|injection_pump|rev_counter|ignition - not|but_the_tach",
    ),
    "pump_noise": (
        "pump|oil_pump & quiet|silent|no_noise|no_whine|not_noisy|@not_whine|makes_no - fuel|water|not_quiet|vacuum|steering",
    ),
    "rotor_still_when_cranked": (
        f"rotor|rotor_arm|rotor_button & {CRANKED} & turns|spins_round|goes_round|turned|went_round|spinning|rotates - not|@not|still|fits|jerks|pump",
    ),
    "ignition_scatters": (
        "timing|strobe|timing_mark & rock_steady|steady|dead_steady|no_scatter|rock_solid|@not_scatter - not_steady|pressure|needle|gauge",
    ),
    "distributor_will_not_seat": (
        "distributor|dizzy & dropped|seated|slid|went|drops|seats & home|flush|by_hand|fully|all_the_way|right_down - not|@not|clamp|never|forced",
    ),
    "tank_empties_running": (
        "oil_tank|reservoir & keeps|holds|steady|stays|same & running|runs|run - not|@not|fuel|standing",
    ),
    "no_return_to_tank": (
        "oil & comes_back|coming_back|returns|returning|spurting_back|flowing_back & tank|reservoir - no|not|@not|fuel",
    ),
    "pump_belt_off": (
        "pump_belt|belt|toothed_belt|band & pump & whole|tight|good_tension|on_and_tight|intact - not|water|alternator|fan|@not",
    ),
    "no_oil_when_cranked": (
        f"filter_off|no_filter|filter_removed|filter_out|delivery_pipe|filter_housing|outlet & {CRANKED}|hit_the_starter & {GUSHED}|gushed - no|not|@not|nothing",
    ),
    "drill_gives_little": (
        f"{DRILL} & @not_weak|isnt_weak|not_weak|@not_low|not_low|not_poor|not_feeble|@not_feeble",
    ),
}
