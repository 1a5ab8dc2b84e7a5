"""Words for an engine that seized, is hard to turn, banged, or stopped by itself."""

from __future__ import annotations

_ENGINE_OR_IT = "engine|motor|it|she|boat|car"
_STOPPED = "=stopped|=died|=quit|=stalled|=seized|=siezed|=failed|=locked|=conked"
_ENGINE = "engine|motor|it|crank|she"
_IT = "engine|motor|it|she|car|boat|truck|tractor|bike|thing"
_NOT_TAKEN = "pump|pressure|gauge|light|lamp|filter|sender|fuel|water|coolant"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "engine_seized": (
        "=seized|=siezed|=seised|=seizes",
        "=locked|=locks|=lock =up|=solid",
        "engine|motor =froze|=frozen =up|=solid?",
        "engine seizure",
        "then|finally it|engine|she|motor? =seized|=siezed|=locked",
        f"{_ENGINE_OR_IT}|motor then|suddenly|finally|soon|just? =seized|=siezed|=locked =within|=after|=about|=in|=some|=shortly|=soon|=a|=seconds|@seconds|@minutes",
        "@seconds|@minutes|minutes|seconds then|and|later|after? =seized|=siezed|=locked",
        "=seized|=siezed|=locked @seconds|@minutes later|after",
        "then|and|into|by|a =seizure",
        "seizure",
        f"{_ENGINE_OR_IT} wont|wouldnt|@not =turn =over|=round at? all?",
        "crank wont|wouldnt turn|budge|move at-all|over|by?",
        f"{_ENGINE_OR_IT} nipped|tightened up",
        "will|would|can|could @not =turn|=rotate at|by|over|with all|hand|bar|a|the?",
        "wont|cant|couldnt =turn|=rotate at|by|over|with all|hand|bar|a|the?",
        "engine|motor|crank is? =locked|=seized =up|=solid|=tight",
        "wont|cant|couldnt|doesnt|will-not|cannot turn|turned|rotate|budge|move over? by|with|at hand|a|the|big|long|breaker? bar|hand|wrench|socket|all",
        "wont|cant|couldnt|doesnt|will-not|cannot turn|be it|the|engine|motor|crank|turned|rotated over? by|with hand|a|the|big|long|breaker? bar|hand|wrench|socket",
        "not|wont|cant|doesnt turn|budge on|with the crank bolt|nut|pulley",
    ),
    "engine_banged_or_shook": (
        "huge|terrific|terrible|almighty|great|massive|tremendous clunk|clatter|thump|crunch|rattle|thud|bang",
        "loud clunk|thump|crunch|thud|bang",
        "=bang|=boom|=banged|=vibration|=vibrates|=vibrating|=vibrated|=vibrate|=vibrations|=shook|=shaking|=shudder|=shuddering",
        "loud|big|almighty|sharp|metallic bang|bangs|crack|crash",
        "violent|violently|bad|heavy|severe shaking|shake|shook|vibration",
        "=hammered|=hammering|=banging loudly|badly|violently|away|like",
        "with a|an loud? pop|bang|crash",
        "a|loud pop|clunk .. then|smoke|and",
        "popping|banging and|& clunking|banging|popping",
        "engine|motor|it =let go at|on|in|down|and|with|in",
        "loud|big|almighty|horrible|sickening|huge|dull|terrific|great|massive|heavy|nasty thump|bang|clunk|thud|boom|report|explosion",
        "=boom|=kaboom",
    ),
    "stopped_with_loss_of_power": (
        "engine|all? power was|all? lost|gone|failed",
        "complete|total|sudden|all|marked|partial|lost|full loss|all|engine|of of? all? engine? power",
        "lost|loses|losing|loss of? all|complete? engine? power",
        "seized|siezed while|under|in|at|on driving|way|running|cruise|flight|speed|the|motorway",
        "died|=quit|stalled|conked on|out|under|while|when|at|in me?|the? road|way|motorway|highway|cruise|flight|running?",
        f"{_ENGINE_OR_IT} then? =stalled|=died|=quit|=cut",
        "complete|total|sudden|full engine shutdown|shut-down|stoppage",
        "engine|it|she|motor then|itself|suddenly|just|and? =stopped by|dead|itself|working|running|within itself|its|own?",
        "engine then|itself|suddenly =stopped",
        "engine =failed|=failure",
        "cut|cuts|cutting out",
        "=came|=coasted|ground to a halt|stop|standstill",
        "became|went sluggish|flat .. died|stopped",
        "no|without more|less|any power",
        "would|did not restart",
        "packed|gave up",
        "complete|total|sudden|all|full|partial engine? power loss|failure",
        "power was|went|is|had|then|soon|all|completely? lost|gone",
        "engine power loss|failure",
        f"then|finally it|engine|she|motor? {_STOPPED}",
        f"{_ENGINE_OR_IT}|motor then|suddenly|finally|soon|just? {_STOPPED} =within|=after|=about|=in|=some|=shortly|=soon|=a|=seconds|@seconds|@minutes",
        f"@seconds|@minutes then|and|later|after? {_STOPPED}",
        f"minutes|seconds then|and|later|after {_STOPPED}",
        f"{_STOPPED} @seconds|@minutes later|after",
        "then|and|into|by|a =seizure",
        "no power at|anymore|left|whatsoever",
        "had to be towed|towed",
        "wouldnt|would|not keep running|going",
        "cut|cuts|cutting out by|on|at|when|while|and",
        "spluttered|sputtered|shuddered|juddered|coughed|clattered|stuttered|ground|jerked to|into a? halt|stop|silence|standstill",
        "engine|motor|it|car|she spluttered|sputtered|coughed and|, died|stopped|quit|cut",
        "engine|motor =stopped =dead|=solid",
        "rolled|coasted|drifted to a halt|stop|standstill with|in|engine|on",
    ),
    "rod_through_block": (
        "rod|rods|conrod|con-rod|leg is|has|have|had|was? gone|come|came|went|poked|punched out|straight|clean? through|out|of the|my|a? side? of? the? block|crankcase|side",
        "=threw|=thrown|=throws|=tossed a? rod|conrod|con-rod|leg",
        "rod|conrod|con-rod|leg .. through|out|exited|hanging|poked .. block|side|crankcase|sump|pan",
        "hole in|through the? side? of? the? block|crankcase",
        "windowed|ventilated|holed .. block|crankcase",
        "put a leg|rod out|through .. bed|side|block",
    ),
    "locked_then_freed": (
        "=let go again|itself after|when|once|as? it|engine|a? cooled|cool|hour|while",
        "turned|turns|freed|free|span|started again|over|off|itself? after|once|when it|engine|the-engine? had? cooled|cool",
        "=seized|=locked|=siezed .. freed|restarted|free|turned|then|later|unlocked .. again|later|free|restarted|cooled|cold",
        "locked|seized when hot .. free|turns cold|cool",
        "=seized|=locked|=siezed .. but|then|later .. restarted|freed|free|turned|started",
        "freed itself|up off? when|once|after|again",
        "was|is locked .. later restarted|started|freed",
        "seized|locked|stuck solid|tight|up? ,|and|but freed|came|broke|turned off|free|loose|again|later|next|when|after",
        "seized|locked|tightened up|solid|hot? ,? then|and|but turns|turned|turning|free|freed|ran|runs|again|cold .. cold|cool|later|again|day|day|off|up",
        "seized|locked|nipped up|solid|tight? .. freed|free|turned|turns|let|again|off itself|off|again|go|later|after|when|once",
    ),
    "hard_to_turn": (
        "hard|stiff|tight|difficult|heavy =to turn|crank|rotate over|by|it?",
        "starter|starting drags|struggles|labours|labors|struggled|dragging|laboured|barely|straining|groans",
        "turns|turned|turn|cranks|cranked|cranking over? real|very|really|quite|too|pretty? stiff|stiffly|slow|slowly|hard|tight",
        "tight|stiff spot|spots",
        "stiff engine",
        "engine is|was|feels|felt|very|really|too? very|really|too? tight|stiff",
        "wont|barely|hardly|could turn|turn|crank over|by|it|hand? .. starter|hand|bar",
        "engine|crank|it|motor is|was|feels|seems|very|a|bit|really? tight|stiff|binding",
        "tight|stiff|hard|heavy engine|to =turn|=rotate over|by|crank|it?",
        "tight|stiff spot|place when|as .. turn|turning|turned|rotate|rotating",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "engine_seized": (
        f"{_ENGINE} + seized|locked_solid|locked_up|siezed|tightened_up|nipped_up|frozen_solid|@not_turn_with|stuck_solid - full|drained|traps|trap|blocked|not|no|pump|valve|plunger|relief|bolt|rotor|hasnt|almost|before|wasnt|isnt|chain|thermostat|turbo|bearing_seized|screw|plug|gallery|bunged|packed",
        f"{_IT}|crank + is_locked|locked|froze_solid|=frozen|@not_turn_over_at_all|@not_turn_at_all|solid_as|rock_solid|tied_up|gone_tight|welded_solid|stuck_solid - pressure|needle|gauge|pump|rotor|diff|brake|relief|valve|thermostat|water|breather|overnight|ice|night|turbo|plunger|bolt|"
        "steady|holds|then_freed|reading",
        "frozen_solid|locked_solid|seized_solid|stuck_solid & turn|turned|bar|crank|spanner|wrench|starter|engine - pump|bolt|filter|valve|plunger|ice|overnight|water|rotor|gear",
        "stuck_solid|solid|locked_solid|locked_up|seized_solid|wont_turn_at_all|frozen_solid + it|engine|motor|its|crank|up|solid - pump|gauge|bolt|shaft|relief|filter|clogged|packed|blocked|light|rock|steady|bolted|plugged|gummed|coked|sensor|lamp|red|cooler|sludge|on_solid|lit|alarm|buzzer|till|until",
        "engine|motor|crank|it + engine_stuck|engines_stuck|is_stuck|its_stuck|stuck_tight|wont_budge|locked_tight|@not_move_at_all|@not_budge|wont_move_at_all - valve|needle|gauge|pump|bolt|sump|relief|plunger|light|filter|throttle|float|ring|tensioner|at_@number|lifter|at|needle_valve|thermostat|plug|pressure|reading|on|hot",
        "engine|motor|it|she|boat|car|tractor|truck|lump|machine|bike|her|unit|crank|crankshaft|crank_bolt|breaker_bar + rock_solid|blocked|locked_solid|doesnt_rotate|doesn't_rotate|wont_budge|solid|immovable|seized|locked_up|wont_turn_at_all|welded|tight_as_a_drum_and_wont|not_move|stuck_fast|stuck_solid|will_not_rotate|jammed_solid|wont_bar_over|wont_rotate|tied_up|no_rotation + crank|rotate|engine|motor|turn|bar|solid|budge|up|is|it|over|bolt|wrench - pulley_bolt_is|nut|mount|hose|oil|filter|needle|gauge|relief|bypass|passage|screen|lifters|lifter|free|pump|pipe|line|strainer|not_seized|crud|carbon|rock_solid_pressure|rod|reading|readings|pressure|bolted|solid_in_the",
        "breaker_bar|big_bar|long_bar|socket_on_the_crank|bar_on_the_crank|three_foot_bar & rock_solid|wont_budge|solid|not_move|immovable|didnt_budge|nothing_moves & crank|crank_bolt|bar|it|pulley|engine - free|pickup|filter|nut",
    ),
    "hard_to_turn": (
        "turn|turns|crank|cranks|spin|spins|swing|rotate|turning|starter + hard|stiff|barely|hardly|tight|labours|labors|struggles|heavy|strains|slow|slowly|groans - not|no|smooth|brake|right|left|corner|corners|bend|needle|gauge|screw|pump|easy|oil|light|isnt|cold|light_barely|turbo|compressor|wheel",
        "takes|took|needs|needed|need + breaker_bar|two_hands|two_men|big_bar|long_bar|all_my_strength|all_my_weight + turn|turn_it|turn_over|rotate|move|crank|engine|spin - bolt|nut|filter|plug|torque|pump",
        "turns|turn|turned + in_lumps|lumpy|notchy|in_jerks|hard_spot|tight_spot|stiff_in_places - pump|valve|distributor|key|ignition|adjuster|steering",
        "@not_spin|@not_turn_it|hardly_turn_it|struggles_to_turn|barely_turn_it + starter - pump|drive|battery|solenoid",
        "engine|motor|it|she|boat|car|tractor|truck|lump|machine|bike|her|unit|crank|crankshaft|front_bolt|pulley|starter|crank_torque + turn_very_heavy|very_heavy|hardly_moved|hard_to_turn|stiff|tight_to_turn|tight_spot|tight_spots|barely_turns|labours|labors|struggles|drags|barely_moved|heavy_to_turn|high_by_hand|stiff_to_turn|needs_a_long_bar|grunts|groans|two_men|reluctant|heavy_with_hand|takes_all_my|cranks_slow|turns_slow|slow_to_crank|drag + hand|wrench|turn|bar|crank|over|by|starter|spanner|moved|cranking|rotate|when|breaker|big - battery|free|easily|steering|valve|plunger|pump|nut|bolt_was|clutch|pressure|torque_wrench|filter|not|cables|torqued|gear_lever",
        "big_wrench|breaker_bar|long_bar|big_bar|spanner_on_the_crank|ratchet|crank_torque & hardly_moved|barely_moved|barely_turned|hardly_turned|hard_going|needed_all|high|took_all_my_weight & front_bolt|crank|by_hand|pulley|crank_bolt|engine|it - nut|oil_pump|free|easily",
    ),
    "locked_then_freed": (
        "seized|locked|solid|siezed|nipped & then|after|later|once|when|cooling|cooled|cold & turn|turned|free|freed|freed_off|let_go|unstuck|came_free|restarted|rotated|spun - pump|relief|valve|plunger|@not_free|bolt|never",
        "seized|locked|tightened|nipped & turned_over_again|turned_again|turns_again|turns_over_again|ran_again|turned_freely|turns_freely|came_free|freed_itself - pump|valve|relief|nut|adjuster|filter",
        "stuck|bound|locked|seized|stopped_dead|stuck_tight|jammed|wouldn't_crank|wouldnt_crank|nipped_up|grabbed|froze|wouldnt_turn|tightened_up & broke_loose|released|spun_fine|came_free|freed|turned_again|freed_itself|let_go_again|free_again|turns_again|turned_fine|came_loose|unstuck|started_again|cooled_down_and|turned_over_fine|rocked_it_and|after_it_cooled|spins_again|freed_off - relief|valve|plunger|lifter|needle|gauge|pump|starter_stuck|ring|thermostat|filter|sender|clutch|brake|bolt|nut|stuck_in_gear|never|didnt|shaft",
    ),
    "engine_banged_or_shook": (
        f"{_ENGINE}|there_was + bang|hammered|hammering|shook|shaking|shuddered|vibrating|vibration|thumped|clattered_loudly|juddered|banging - bang_on|no|not|needle|gauge|baffle|hand|mount|wire|by_hand",
        "loud|series|heavy|sharp|violent|severe|sudden|almighty + report|bang|bangs|clank|crash|crack|shuddering|shudder|vibration|shaking|thud - no|not|without|"
        "knock_of",
        "clank|bang|crash + silence|followed|stopped|dead|smoke - no|not|without",
        "bang|bangs|banging|vibration|vibrations|shudder|thump|shake|shaking|shook|judder|clunk|explosion + heard|loud|terrible|awful|massive|severe|like|so_hard|whole|violent|horrible|noise|series|felt - no|not|without|hand|needle|gauge|wire|light|road|"
        "baffle|by_hand|test|rods_by|under_braking|wheel|brakes",
    ),
    "rod_through_block": (
        "rod|conrod|con-rod|con_rod|leg + block|crankcase|side|through|window|out_of + through|out|hole|window|ventilated|leg|kicked|exit|exited|poking - no|not|push|dip|rodded|gallery|passage|welding|drain|threaded|tie|put_a_rod",
        "threw_a_rod|thrown_a_rod|put_a_leg_out|leg_out_of_bed|ventilated_the_block|window_in_the_block|rod_out_the|threw_a_leg",
        "rod|conrod + through|out_of|came_out|poked + case|crankcase|side_of_the_engine|casing - push|pushrod|piston_rod|tie|no|not",
    ),
    "stopped_with_loss_of_power": (
        "engine|motor|power_plant|powerplant|propeller|prop + =stopped|=stops|=died|=dies|=quit|=stalled|=failed|dead|conked|expired|gave_up|packed_up|"
        "cut_out|of_its_own|ceased|went_dead|gave_out|windmilled|windmilling|coughed_and_stopped|faltered - i|we|he|driver|pilot|pressed|switched|shut|with_the_"
        "engine|pump|key|until|before|when_the_engine_is|once|after_the_engine|hot|light|lamp|gauge|needle|injector|noise|stops_it|@not|whenever|every_time|"
        "on_purpose|parked|stopped_and|restarted_and|valve|still|even_with|mount|fan",
        "stalled|died|conked|quit|=stopped + @not_restart|would_not_restart|refused_to_restart|of_its_own_accord|by_itself|itself|and_would_not_turn - gauge|"
        "noise|knocking|light|pressure|leak|oil_stopped",
        "lost|loss|lack|no|faded|without|lacked + =drive|engine_power|all_power|motive_power|thrust|total_power|complete_power - see_on_the|on_the_drive|on_my_drive|leaks|drips|oil_on|battery|electrical|steering|"
        "no_loss|no_power_loss|belt|fan|@not_loss|pump_drive|prime|gauge|pump|drive_to",
        "no_longer|@not|stopped|ceased|unable + producing|produced|produce|develop|developing|make_full + power|thrust - pressure|oil_pump|pump",
        "power + faded|failed|failure|ebbed|died|dropped|loss|gone|decayed|fell|drained - no|not|battery|electrical|steering|supply|feed|gauge|pump|"
        "no_power_loss|without",
        "forced_landing|glided|dead_stick|autorotation|deadstick|ditched + engine|power|after|made|landing|field - precautionary",
        "ran_down|ground|rolled|coasted|drifted|came + and_stopped|to_a_halt|to_a_stop|to_rest|halt|standstill - switched|shut|pulled_over|needle|gauge|"
        "killed|i|driver|valve|traffic|grinding|each|every|when",
        f"engine|motor|she|prop|propeller + died_on_me|shut_off_at|=stopped_dead|=stopped_turning|surged_then|=stopped_in_flight|failed_in_flight|conked_out|expired|gave_up_the_ghost|=stopped_itself|"
        f"=stopped_without_warning|cut_out|cut_dead|quit_on_me|died_at|died_under|died_in|died_after|died_half|died_with|=died - {_NOT_TAKEN}|down|noise|away|rattle|before|if|until",
        "failed|stopped|failure|quit|died + in_flight|in_cruise|under_way|underway|on_the_road|at_speed|on_the_motorway|at_70|mid-corner|in_the_air|on_the_way_home - "
        "gauge|light|lamp|pump|noise|alternator|oil_pressure|hose|cooler|fitting|filter|bearing|pressure|line|bolt|then_stopped_it",
        "lost_the_engine|lost_an_engine|engine_was_lost|power_was_lost|lost_all_drive|lost_drive|power_went_to_nothing|power_dropped_to_nothing",
        "coughed|spluttered|faltered|hiccuped|surged & stopped|died|quit|dead - gauge_stopped|noise_stopped",
        "died|stopped|quit + restart|restarted|start_again|fire_again|refire + @not|refused|would_not|wouldnt|failed - gauge|light|lamp|alarm|buzzer|warning|pressure|noise|knock",
        "=stopped_dead|stopped_stone_dead - pump|needle|gauge|noise|knock|valve|light|flow",
        "engine|motor|it|she|boat|car|tractor|truck|lump|machine|bike|her|unit + fell_on_its_face|died_on_me|shut_down_without|cut_out|conked_out|gave_up|lost_all_power|lost_power|ground_to_a_halt|petered_out|stalled_by_itself|went_dead|quit_on_me|no_power|bogged_down_and|ran_out_of_puff|stopped_on_its_own|stopped_by_itself|died_by_itself|packed_up_and_stopped + key|itself|own|me|without|power|then|stopped|road|middle|it|load|suddenly - gauge|lamp|no_loss|never|not|i_shut|switch|sender|kept|battery|fuel_ran_out",
    ),
    "rattle_of_unknown_place": (
        "rattle|rattles|jangle|jangles|chatter|tinny|clatter|tinkling|jingle|jingling|buzz_and_rattle|rattling|metallic_rattle|noise|something_loose + cant_find|damned_if|no_idea_where|didnt_help|somewhere|cannot_find|cant_place|cant_pin|dont_know_where|stethoscope|unknown|cant_tell_where|can't_locate|nobody_can_find|source_unknown|not_located|cant_trace|mystery|couldnt_find|hard_to_place|cannot_locate|nobody_can_tell|wherever & rattle|rattles|jangle|jangles|chatter|tinny|clatter|rattling|jingling|tinkling|jingle - no_rattle|chain|tensioner|lifter|lifters|exhaust|heat_shield|tappet|valve|bottom_end|knock|leak|oil",
        "jangles|rattle|chatter|tinny|jangle|jingle|rattles|clatter|buzzing & damned_if|can't_find|cant_find|didnt_help|no_idea_where|somewhere|cant_place|can't_place|not_found|cant_pin|nobody_knows_where - chain|lifter|lifters|tappet|bottom_end|exhaust|no_rattle",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "hard_to_turn": (
        "turn|turns|turned|spins|rotates|cranks|spin|rotate + free|freely|easily|easy|smoothly|nicely|by_hand|fine|normally|hand - lumps|lumpy|notchy|tight|jerks|spot|spots|places|not|no|hard|pump|oil_pump|screw|stiff|barely|@not|wouldnt|solid|until|drill|plunger|distributor|shaft|valve|filter|rotor|handle|bath|pickup|tube|sender|mikes|mics|miked|journal|journals|measures|measured|round|true",
    ),
    "engine_seized": (
        "turn|turns|turned|spins|rotates|cranks + free|freely|easily|easy|by_hand|still_turns|still_turned|over_fine|over_ok|fine|normally|nicely - lumps|lumpy|notchy|tight|jerks|spot|spots|places|not|no|hard|pump|oil_pump|stiff|barely|@not|wouldnt|solid|drill|plunger|distributor|shaft|filter|rotor|screw|relief|valve|until|bath|pickup|tube|sender|mikes|mics|miked|journal|journals|measures|measured|round|true",
        "engine|motor|crank|rods|it + turns_over|swings_freely|turns_by_hand|rotates_freely|still_turns|spins_over|bars_over|not_seized|spins_freely|turns_freely - bound|stiff|tight|not_turn|before|pump|wont",
    ),
    "stopped_with_loss_of_power": (
        "engine|motor|it|power + kept_running|did_not_stop|@not_stop|continued_to_run|never_stalled|never_stopped|full_power|kept_going|@not_stall|carried_on_running|ran_on_normally|still_ran|did_not_falter|no_power_loss|no_loss_of_power - until|then|before|lost|at_full_power|no_full|under|"
        "dropping|leak|needle|minutes|@not_full|after_hours|maximum|hours|alarm_kept|light_kept|lamp_kept|buzzer_kept|on_and_off",
        "no_power_loss|no_loss_of_power|without_loss_of_power|without_power_loss",
        "engine|motor|it|she|boat|car|tractor|truck|lump|machine|bike|her|unit + kept_pulling|pulled_well|pulling_like_normal|never_lost_power|full_power|pulled_strong|never_missed_a_beat|kept_its_power|kept_running|pulled_fine|no_loss_of_power|ran_strong|never_faltered + whole|time|throughout|all|always|like|to|the - until|pressure|then|psi|lamp|no_longer|buzzer|without|light|alarm",
    ),
    "rattle_of_unknown_place": (
        "no|not_a|never|isnt + rattle|rattles|jingle|chatter|jangle - lifter|chain|top|tappet|but|except|longer|at_start",
    ),
    "locked_then_freed": (
        "never|didnt|not_once|hasnt|at_no_time + locked|bound|seized|jammed|nipped|tightened_up + engine|motor|it|crank|up - needle|gauge|relief|valve",
    ),
}
