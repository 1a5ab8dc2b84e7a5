"""The relief valve, put by people who describe it: pressure valve, let-off valve, plunger, slug."""

from __future__ import annotations

from knowledge.lexicon.described.words import BLOCKED, LOOSE, SCORED

_VALVE = (
    "relief|relief_valve|pressure_valve|release_valve|let-off|let_off|let-off_valve|regulator|pressure_regulator|dump_valve|"
    "oil_valve|valve_regulating|lets_off|pressure_piston|oil_release|blow-off|blow_off|prv|regulating_valve|pressure_control_valve|relief_plunger"
)
_SLUG = "plunger|piston|slug|ball|poppet|bullet|pressure_piston|valve_piston|little_piston"
_ELSE = "compressor|boiler|cylinder|crown|ring|rings|engine|injector|injection|brake|clutch|thermostat|exhaust|filter|bypass|cooling|squirter|jet|jets|tensioner|lifter|lifters|fuel|hydraulic"
_BENCH = "bench|rig|rigged|tester|test_bench|off_the_engine|under_test|on_air|out_of_the_engine|test_rig|hand_pump|bench_tested|test"
#: the finding, by words that stand together when it is there
THERE: dict[str, tuple[str, ...]] = {
    "debris_on_relief_seat": (
        f"{_VALVE}|ball|{_SLUG} + grit|swarf|sliver|speck|carbon|chip|crumb|splinter|fleck|scrap|rubbish|dirt|crud|sealant|flake|shaving|bit_of|shred + beneath|under|where_it|below|behind|on_its_seat|on_the_seat|seat|close|holding|propping|keeping|sat|lay|lodged|caught - {_ELSE}|no|not|clean|bearing|race|return|passage|pump_gears",
        f"{_VALVE} & grit|swarf|sliver|speck|carbon|chip|crumb|splinter|fleck|scrap|shaving|flake & where_it|seat|ought_to_close|beneath|under & - {_ELSE}|no|not|clean".replace(
            " & -", " -"
        ),
    ),
    "relief_valve_stayed_open": (
        f"{_SLUG}|relief|{_VALVE} + stayed_up|stuck_back|hung_up|clear_of_the_seat|well_clear|passage_uncovered|off_its_seat|off_the_seat|letting_oil_past|stayed_back|jammed_open|open_position|half_open|remained_up|stuck_up|stuck_open|held_open|stayed_in|cocked_open - {_ELSE}|not|no",
        f"spring & {_SLUG} & came|dropped_out|fell_out|came_out|slid_out & stayed|stuck|remained|hung|left_behind & uncovered|past|back|up|open|hole|bore - {_ELSE}|shut|closed",
    ),
    "relief_valve_stayed_shut": (
        f"{_VALVE}|{_SLUG} + closed|shut|close_position|closed_position|on_its_seat|tight_shut + stuck|seized|gummed|blocked|jammed|rusted|never|wont_open|@not_open|frozen|glued|welded|locked|not_open - {_ELSE}|wont_close|open_position|not_stuck|not_shut",
    ),
    "relief_parts_not_standard": (
        f"washers|shims|washer|shim|spacer|packing_piece|nut|coin|penny|collar|ball_bearing + behind|under|beneath|on_top_of|in_front|inside + relief_spring|pressure_spring|relief_valve_spring|spring_of_the_relief|spring_of_the_pressure|pressure_valve_spring|release_valve_spring - {_ELSE}|no|not|missing|took_out|copper|sealing",
        f"adjuster|adjusting_screw|spring|shims|washers|screw & {_VALVE} & wound_in|screwed_in|past_its_mark|packed|shimmed|stretched|wrong|turned_in|stiffer|heavier|foreign|homemade|not_original|altered|tampered|cranked|cut|longer|upside|doubled - {_ELSE}|not|no|untouched|original_parts|i_wound|i_screwed|tried|new",
    ),
    "relief_part_absent": (
        f"{_SLUG}|spring + {_VALVE}|behind_the_spring|behind|plug + never_put_back|nobody_put|forgot|forgotten|omitted|left_off|never_went_back|missing|no_plunger|no_ball|no_spring|no_piston|nothing_behind|not_there|left_out|never_refitted|was_not_there|gone|absent|nothing_in|empty|left_on_the - {_ELSE}|debris|dirt|not_missing|washer|fell",
    ),
    "relief_found_stuck": (
        f"{_VALVE}|bypass_piston + blocked|stuck|hung|jammed|seized|couldnt_move|@not_move|pinched|gripped|wont_move|frozen|gummed|rusted|nipped|solid|immovable - cylinder|crown|ring|rings|engine|fuel|brake|clutch|thermostat|closed|shut|closed_position|tight_shut|return|passage|hole|open_position|off_its|not_stuck|free|injector|half_open|stayed|dirt",
    ),
    "relief_found_bad": (
        f"{_VALVE} + faulty|bad|wanting|defective|no_good|failed|dud|duff|gone|kaput|broken|not_working|dead|shot|had_it|knackered|condemned|us - {_ELSE}|not_bad|spring|sender|switch|if|maybe|might|could|perhaps|probably|plug|seat|voltage|seal|cap|gauge|pump|suspect",
    ),
    "relief_plunger_sticks": (
        f"{_SLUG} + own_weight|by_itself|on_its_own|under_gravity|unaided|oiled|clean_oil|freely|without_help + @not_fall|@not_drop|wont_drop|@not_slide|stops_partway|helped|pushed|has_to_be|had_to_be|drags|sticks|hangs|wont_fall|binds|stays|needs_a_push|halts|catches - {_ELSE}|never_sticks",
        f"{_SLUG} & own_weight|by_itself|on_its_own|oiled_up|oiled|clean_oil & pushed|helped|wont_drop|@not_drop|@not_fall|has_to_be_pushed|stops_partway|drags|sticks|hangs|needs_a_push - {_ELSE}|never_sticks",
    ),
    "relief_seat_scored": (
        f"little_piston|small_piston|relief_piston|little_plunger|small_plunger|regulator_piston + {SCORED}|pitted|nicked|worn|marked|burr - {_ELSE}|not|no|smooth|squirter|jet|tensioner",
        f"{_VALVE}|{_SLUG}|valve_seat + {SCORED}|eaten|oval|pitted|ring_worn|hammered|worn_oval|lip|nicked|wear_step + piston|hole|seat|bore|plunger|ball|nail|feel|controls|slides - cylinder|crown|rings|engine|injector|brake|clutch|exhaust|not|no|smooth|bright|bearing|crank|pump_body|valve_stem|cam|compression|liner",
    ),
    "relief_return_blocked": (
        f"relief|release_valve|release|relief_valve|spill|regulator|let-off|pressure_valve + spill|bleed-off|bleed_off|bleed|bypass_hole|return|dumps|dump|return_passage|spill_passage|drain|outlet|spills|hole_where + {BLOCKED}|sealant|sealer|gasket - {_ELSE}|no|not|clear|open|tank|scavenge",
    ),
    "relief_spring_short_or_broken": (
        f"spring + {_VALVE}|pressure + less_than_a|less_than_new|under_length|below_length|well_under|below_its|less_than_the_book|shrunken|stubby|no_spring_left|lost_tension|lost_temper|compressed|in_two|two_bits|two_parts|coils_missing|lazy|saggy|slumped|easily_squashed|rusty|corroded|distorted|kinked|shorter|short|sacked|sagged|no_tension|weak|tired|broken|snapped|soft|bent|collapsed|settled|lost_its|pieces|coil|cracked|limp|worn_out|shrunk|fatigued|rusted_through - {_ELSE}|valve_springs|longer|not|no_shorter|new_spring|fitted_a|dripping|holds|coil_bound|bound|washers|washer|shims|shim",
    ),
    "relief_cap_loose_or_leaking": (
        f"cap|plug|nut|dome|dome_nut|big_nut|bolt|hat + {_VALVE}|pressure_spring|relief_spring|holds_the_spring|spring_in|over_the_spring + slackened|weeping|dripping|backed|leaking|loose|oil_all_around|wet|lost|undone|unscrewed|missing|not_wired|unwired|no_pin|oil_round|finger|weeps|leaks|drips|seeping|hand_tight|worked - {_ELSE}|no|not|tight|dry|took|removed|undid|pulled",
        "big_nut|dome_nut|big_plug|cap_nut|domed_nut|hex_plug & pressure_spring|relief|relief_spring|release_valve|let-off & oil_all_around|dripping|weeping|wet|loose|backed_out|leaking|slackened - no|not|tight|dry|took|removed|undid",
    ),
    "relief_bench_opens_low": (
        f"{_VALVE}|valve & {_BENCH} & early|too_soon|low|below|opens_at|cracks_at|pops_at|popped_off|before|under|short_of|soon|instead_of & lift|lifts|opens|opened|cracks|popped|pops|lets_go|blows|bleeds|open|opening - late|later|above|over|high|too_late|beyond|past|exhaust|injector|not|thermostat|until",
    ),
    "relief_bench_opens_high": (
        f"{_VALVE}|valve|it & {_BENCH}|tester & late|later|too_late|well_over|above|far_later|over|high|beyond|past|until|not_until|refused & lift|lifts|open|opens|opened|cracks|let_go|lets_go|pops|popped|blows|moves - early|soon|below|exhaust|injector|@not_hang|thermostat|low|pressure_test|doesnt|head",
    ),
    "relief_piston_loose": (
        f"{_SLUG}|{_VALVE} + {LOOSE}|chatter|chatters|clearance_excessive|too_small_for|excessive_clearance|sideways|clatters + hole|bore|cover|fit|housing|shake|casting|barrel - cylinder|crown|ring|rings|engine|brake|clutch|cap|plug|nut|not|screw|adjuster|spring|freely|down|fluid|lock",
        f"{_SLUG} + bore|hole + clearance|fit|gap + excessive|too|over|loose|sloppy|wide - cylinder|crown|ring|rings|engine|brake|lifter|tappet|jet|pump|skirt|not|liner",
    ),
    "high_from_first_start": (
        "pressure|gauge|excess_pressure|read|needle & rebuild|overhaul|rebuilt|reassembly & high|off_the_top|excess|over_eighty|too_much|pegged|sky_high|too_high|off_the_clock|off_the_scale|over_80|over_90|over_100 & since|ever_since|from_initial|first_start|first_turn|from_the_first|initial_start|always|straight_away|from_day_one - later|weeks|not|before|low|then_it|after_a_while|dropped",
    ),
}
#: the finding, by words that stand together when it is not there
ABSENT: dict[str, tuple[str, ...]] = {
    "relief_part_absent": (
        "relief|relief_valve|regulator|pressure_valve + parts|bits|pieces|plunger_and_spring|spring_and_plunger|ball_and_spring|spring_and_ball|components + all_there|are_there|all_present|present|complete|in_place|all_in_it - not|but|missing|wrong|except",
        f"ball|plunger|spring|piston + {_VALVE} + both_there|all_there|are_there|is_there|present|in_place|was_there - not|no|but|missing",
    ),
    "relief_found_bad": (
        f"nothing_wrong|nothing_the_matter|no_fault|no_problem + {_VALVE} - but|except",
    ),
    "relief_spring_short_or_broken": (
        f"spring + {_VALVE} + to_the_book|right_length|correct_length|book_length|same_length|full_length|in_spec|to_spec|same_as_new|as_new|unbroken|straight|good_tension|within - {_ELSE}|not|but|shorter|wrong|seat|weak",
        f"spring + {_VALVE}|pressure + same_length|same_height|as_long_as|full_length|right_length|good_length - not|but|shorter",
    ),
    "relief_piston_loose": (
        "plunger|piston|slug + bore|hole + nice_fit|good_fit|snug|close_fit|fits_well|perfect_fit - not|no|ring|rings|cylinder|too|but",
    ),
    "relief_valve_stayed_open": (
        f"{_SLUG} + plug|spring + came_right_out|followed|followed_its|slid_out|came_out_behind|dropped_out_with|fell_out_with|behind_its_spring - not|stuck|{_ELSE}|stayed",
    ),
    "relief_parts_not_standard": (
        f"{_VALVE} + original_parts|no_shims|untouched|as_built|standard_parts|all_original|only_its_original|as_made|stock_parts - but|except|not_original|changed",
    ),
    "relief_plunger_sticks": (
        f"{_SLUG} + oiled|own_weight|bore + drops|falls|drops_through|slides_down|fell|dropped|falls_through - not|@not_drop|@not_fall|wont|but|{_ELSE}",
    ),
    "relief_return_blocked": (
        "relief|release|regulator|let-off + dump|return|spill|drain|hole + open|clear|straight_through|unblocked|blew_through - not|but|stuck|tank|blocked",
    ),
    "relief_cap_loose_or_leaking": (
        f"cap|plug|nut + {_VALVE}|relief_spring|pressure_spring + tight|dry|wired|locked|pinned - hand_tight|finger_tight|fingertight|only|barely|hardly|half_tight|not_tight|loose|leaking|not|filter|weeping",
    ),
    "relief_bench_opens_high": (
        f"{_BENCH} & @not_hang|not_late|@not_late|no_later|at_its_figure|on_its_figure|right_on_its|on_the_figure - early|soon|injector",
    ),
    "high_from_first_start": (
        "rebuild|overhaul|rebuilt & normal|fine|right|good & weeks|months|later|at_first|initially & high|high_reading|too_high|off_the_scale & later|only|came|began|started|then - low|never",
    ),
}
