"""Words for the relief valve, its spring and its seat."""

from __future__ import annotations

_RELIEF = "relief|prv|oprv|regulator|pressure_valve|dump_valve"
_PLUNGER = "plunger|piston|ball|poppet|valve"
_BENCH = "bench|test_rig|rig|hand_pump|spring_tester"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "debris_on_relief_seat": (
        "dirt|chip|swarf|metal|debris|grit|bit|crud under|in|on|holding .. relief|valve|ball|seat|plunger",
        "something|speck|sliver|bit|chip|flake shiny|bright|silver|metallic|of? metal|swarf? on|under|across the? seat|ball",
    ),
    "relief_plunger_sticks": (
        "relief|regulator valve? piston|plunger|valve @not come|drop|slide|move|fall|budge out|in|down|by|freely|its|hand|without",
        "relief|regulator|oil? valve? piston|plunger|valve came|come|comes|moved|moves only|out only? by|with|after force|hammer|punch|hammering|pliers|difficulty|effort",
        "relief|regulator valve? piston|plunger|valve had to be =driven|=hammered|=knocked|=pressed|=persuaded|=tapped|=pulled out|from|with?",
        "plunger|piston|relief|valve was|is|were|came|really|very|a-bit|bit|so|quite|had|needed|had-to-be? tight|stiff|sticky|snug|jammed|gummed|tapped|tap|"
        "drift|driven|drive|hammered|persuade|knocked|prised|pried in|out|up|with|persuading|to its|the? bore|hole|with?",
        "relief|regulator|plunger valve|piston|plunger|was|is|found? stuck|sticking|sticks|jammed|seized",
    ),
    "relief_parts_not_standard": (
        "relief|pressure|valve|regulator spring is|was|looks|@length|much|far|way|lot|bit|a? longer|taller|stiffer|stronger|heavier|thicker than the? old|original|standard|stock|other|one",
        "stiff|stiffer|heavy|heavier|strong|stronger|uprated|racing|competition|longer relief|pressure|oil|valve? spring the? builder|shop|he|they|previous|last|someone|somebody|engine",
        "has|with|got|running|run|using|had a|the|an? stiff|stiffer|heavy|heavier|strong|stronger|uprated|racing|competition|longer relief|pressure|oil|valve? spring",
        "ball|bearing|nut|washer|washers|spacer|penny|coin|bolt|slug|shim|shims|tube =behind|=under|on-top-of the? relief|regulator valve? spring",
        "two|2|second|extra|double|three|both springs|spring|shims|washers in|inside|behind|under|on the? relief|regulator|oil-pressure",
        "relief|regulator valve? has|had|with|got two|2|three|double springs|shims|washers",
        "builder|shop|someone|somebody|they|he|owner put|fitted|fits|installed|used a|the|an? stiff|stiffer|heavy|heavier|strong|stronger|uprated|racing|competition|longer relief|pressure|oil|valve? spring",
        "relief|pressure|regulator valve|spring? was|is|has? been? adjusted|shimmed|packed|raised|spaced|set up|out? with|by @number|one|two|three|some|a? washers|washer|shims|shim",
        "@number|one|two|three|some|a washers|washer|shims|shim under|behind the? relief|regulator valve? spring",
    ),
    "relief_valve_stayed_shut": (
        "plunger|piston|valve|ball|relief stuck|jammed|seized|frozen|solid solid|hard|fast? at|in|on the? bottom|seat|closed|shut ,? shut|closed|position",
        "stuck|jammed|seized|held|frozen|rusted .. in the shut|closed position",
        "stuck|jammed|seized|frozen solid|fast? at|on|against the? bottom|seat ,? shut|closed",
    ),
    "relief_adjuster_no_effect": (
        "adjuster|adjusting-screw|screw|setscrew wound|screwed|turned|run|set fully|right|hard|all-the-way? in|out|down|up|home .. no effect|change|difference|response|alteration|reaction|result",
        "adjuster|adjusting-screw|screw .. no response|reaction|effect|alteration",
    ),
    "relief_found_stuck": (
        "relief|regulator|oil? valve? piston|plunger|valve had to be =driven|=hammered|=knocked|=pressed|=persuaded|=tapped|=pulled out|from|with?",
        "relief|regulator valve? piston|plunger|valve came|come|comes|moved|moves only|out only? by|with|after force|hammer|punch|hammering|pliers|difficulty|effort",
    ),
    "relief_seat_scored": (
        "ball has|with|shows|showed|had a|an? ring|groove|flat|ridge|step|track worn|hammered|beaten|pressed|in|round|around|on",
        "ring|track worn|hammered|beaten|pressed round|around it|the|ball|plunger|seat|piston",
        "ball|plunger|piston|valve has|had|with|shows a? ring|groove|line|step|track|ridge worn|round|around|in|on|all",
        "seat is|was|had|has|looks|a|bit? =marked|=ringed|=dented|=pitted|=grooved|mark|dent|groove",
    ),
    "relief_spring_short_or_broken": (
        "relief|pressure|regulator|bypass valve? spring is|was|were|found|came|in|out .. two|three|2|3|several|half|halves|bits bits|pieces|parts|halves?",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "relief_parts_not_standard": (
        "ball|plunger|relief|relief_valve|regulator & washer|shim|spacer|clip|circlip|disc|collar & left_over|leftover|spare|"
        "one_over|left_on_the_bench|extra_one|remaining - bearing|caps|head|pump_cover|no|not|none|turbo|joint",
        f"{_RELIEF} & washer|washers|shims|shim|coin & behind|been_stretched|that_shouldnt - i|we|tried|going|could|gained",
        f"{_RELIEF}|adjuster|spring & longer_spring|stiffer|shim|shims|shimmed|washer|washers|packing|packed_out|wound_right|screwed_right|home-made|homemade|cut_down|stretched|wrong_spring|different_spring|extra_spring|non-standard|nonstandard|not_standard|too_many_washers|coil_bound|ball_bearing_from + in|it|behind|under|been|had|fitted|a|someone|somebody - i|we|tried|going|could|valve_spring|should|now|try",
        "relief|relief_valve|relief_spring|regulator + packed|packed_out|bodged|washers|washer|=shims + previous|by_the|someone|somebody|last|owner|po|out|packed|been|had_been|was|already - i|we|tried|no_change|gained|now",
    ),
    "relief_part_absent": (
        f"{_RELIEF} + ball|plunger|spring|piston|valve + left_out|missing|absent|@not_there|not_in_there|gone|forgotten|@not_fitted|never_fitted|no_ball|no_spring|no_plunger - out_with|came|cap|washer|pin|gasket",
        "left_the_ball|left_the_spring|left_the_plunger|forgot_the_ball|forgot_the_spring|forgot_the_plunger + out|in|when|back",
        f"no_ball|no_plunger|no_spring|@not_ball|@not_plunger + {_RELIEF}|in|behind|there|bore",
    ),
    "relief_cap_loose_or_leaking": (
        f"cap|plug|nut|bolt|dome + {_RELIEF} + loose|lost|stripped|helicoil|helicoiled|unscrewed|slack|undone|weeping|leaking|leaks|backed|missing|fallen|finger|unwired|off|dripping|no_washer - filter|pulled|took|i|removed|undid|drain|came_out_with|with_the_cap_off|cover_off",
    ),
    "relief_piston_loose": (
        f"plunger|piston|{_RELIEF} + rattles|sloppy|slop|loose|wobbles|floppy|tilts|cocks + bore|hole|it|fit|housing - cap|screw|nut|knock|ring|engine",
    ),
    "relief_adjuster_no_effect": (
        "adjuster|adjusting_screw|adjustment|adjusting_nut|adjustor + no_difference|nothing|no_effect|no_change|@not_change|@not_alter|@not_affect|@not_make - idle|chain|tappet|brake|lifter",
        "adjuster|adjusting_screw|adjustment & no_difference|no_effect|no_change|@not_change|@not_alter|makes_no - idle|chain|tappet|brake",
    ),
    "relief_bench_opens_low": (
        f"{_RELIEF} & {_BENCH} & low|supposed|should|instead|only|early|below|weak - high|above|late",
    ),
    "relief_bench_opens_high": (f"{_RELIEF} & {_BENCH} & high|above|late|over - low|early|below",),
    "relief_valve_stayed_shut": (
        f"{_RELIEF}|{_PLUNGER} + shut|closed + jammed|seized|stuck|rusted|=frozen|solid - filter|bypass|thermostat|breather|open|throttle|exhaust|inlet",
    ),
    "relief_valve_stayed_open": (
        f"plunger|piston|{_RELIEF} + stayed|stuck|jammed|hung|remained|held + up_the_bore|back_in|off_its_seat|off_the_seat|open|half_way|halfway|part_way - filter_bypass|rings|engine|throttle|pcv|thermostat",
        "ball|plunger|relief|relief_valve|poppet + @not_seating|@not_seat|@not_close|@not_closing|@not_closed + relief|ball|properly|fully|valve|plunger - filter|bypass|valve_seats|exhaust",
    ),
    "relief_plunger_sticks": (
        f"plunger|piston|{_RELIEF} + @not_slide|@not_drop|@not_fall|sticky|sticks|=stuck|magnet_to|swearing|drift|tap_out|had_to_pull|pliers|tight_in - stuck_between|stuck_under|often|where|filter_bypass|rings|scuffed",
        "piston|plunger + hangs|hung|hanging|drags|catches|sticky|stiff + bore|its|up - ring|rings|cylinder|engine|filter",
        "relief_piston|relief_plunger|relief_valve|plunger + hung|hanging|sticky|sticking|=sticks|@not_slide|tight|hung_up|=stuck + bore|its|in|up|by_itself|bit|sometimes - injection|clutch|brake|filter",
        "relief_piston|relief_plunger|regulator_piston|regulator_plunger|pressure_piston|valve_piston|valve_plunger & sticks|sticky|=sticking|hangs|binds|reluctant|@not_drop|@not_fall|@not_slide|@not_move|needs_a_tap|had_to_tap - rings|cylinder|engine|filter|@not_stick|@not_sticky|@not_sticking|bypass|stick_it",
        "plunger|piston|relief + @not_fall|@not_drop|@not_slide|drag|hangs|sticky|catches|tight + bore|weight|own|freely|oiled|its - rings|cylinder|engine|filter",
    ),
    "relief_seat_scored": (
        f"seat|bore|ball|{_RELIEF} + pitted|scored|burr|burred|hammered|grooved|worn|ridge|egg|dented|scuffed|galled|ring_worn + {_RELIEF}|ball|seat|plunger - journal|crank|cylinder|shell|bearing|rocker|cam|good|new_ball|pump_body|wear_in_the_pump|valve_seats|exhaust|spring_is",
    ),
    "debris_on_relief_seat": (
        f"{_RELIEF}|seat|ball|plunger + chip|chunk|swarf|metal|grit|crud|bit|bits|tape|sealant|silicone|carbon|piece|sliver|dirt|debris|speck|flake|curl|fluff|rubber + under|on|in|across|against|behind|holding|jammed|wedged|trapped|stuck|caught|between|stopping - no|screen|filter|pump_gears|valve_seats|spring_in_bits|two_pieces|in_pieces|in_bits|three_pieces|gear",
    ),
    "relief_spring_short_or_broken": (
        f"spring + {_RELIEF} + shorter|broken|snapped|weak|sagged|tired|short|collapsed|two_pieces|bent|pieces|rusted|soft - new|fitted|i|we|stretched|valve_springs|stiffer|no",
        "spring|relief_spring + soft|half_the_length|two_bits|collapsed|shorter|snapped|sagged|weak|tired|broken|settled|bits|short + relief|gone|new_one|length|spring|new|plunger|it|was|had|in - valve_springs|i_stretched|fitted|longer|clutch|governor|made_no|stiffer",
    ),
    "relief_return_blocked": (
        f"{_RELIEF} + return|drain|spill|passage|dump_hole|outlet + blocked|plugged|bunged|clogged|choked|covered|restricted - not|no",
    ),
    "relief_found_stuck": (
        f"{_RELIEF} + =stuck|seized|jammed|=sticking|gummed|=frozen - stuck_between|stuck_under|often|where|not|no|filter|bypass|voltage|unstuck|open|shut|closed",
        "plunger|piston|relief|relief_valve + =stuck|jammed|seized|hung|gummed|=wedged & relief|plug|regulator|bore|prv - stuck_between|stuck_under|wedged_between|jammed_between|filter_bypass|rings|no|not|thermostat|@not_stuck",
        "relief|relief_valve|prv|regulator|pressure_valve + @not_budge|@not_move|wouldnt_budge|wouldnt_move|gummed|seized|solid|stuck_fast|rusted_in|jammed - voltage|filter|fuel|adjuster_nut|cap",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "relief_seat_scored": (
        f"seat|bore + {_RELIEF}|plunger|ball|valve|spring|seat + good|clean|smooth|unmarked|perfect|bright|fine|shiny - no|not|scored|but",
    ),
    "relief_plunger_sticks": (
        f"plunger|piston|{_RELIEF} + moves|slides|drops|slid|falls|moved + freely|free|easily|own_weight|smoothly|nicely - @not",
        "plunger|relief_piston + =free|freely + in_bore|in_its_bore|in_the_bore - @not|not|half|stuck|injection|freed",
    ),
    "relief_found_stuck": (
        f"{_RELIEF} + moves|slides|free|clean|works|drops|slid|freely + free|freely|fine|ok|easily|good|clean|smoothly|perfectly|properly - not|no|seat",
    ),
}
