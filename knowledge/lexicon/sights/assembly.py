"""Words for what was left out, left over or put in wrongly when the engine was put together."""

from __future__ import annotations

_BUILDER = "machine|engine? shop|builder|machinist|engineers|reconditioner|rebuilder|garage"
_PLUGS = "gallery|galley|oilway|crank|core|oil plugs|plug"
_MEASURED = "measured|measure|miked|mic|plastigaged|plastigauged|checked"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "cap_bolts_slack": (
        "main|rod|cap|through|big-end|crankcase|bearing cap|bearing|end? bolts|nuts|bolt|studs .. loose|slack|under|undertorqued|under-torqued|not|insufficient|finger",
        "loose|slack|under-torqued|undertorqued main|rod|cap|big-end|through bearing|cap|end? bolts|nuts|bolt|caps",
    ),
    "caps_mixed": (
        "=caps|main|rod|bearing =caps? @number|two|three|one and|& @number|four|three|two are|is|were|was|have been|got? swapped|mixed|switched|reversed|"
        "transposed|wrong",
        "numbers|stamps|stampings|marks|numbering on|of|on-the|of-the? caps|cap? were|are|was|dont|didnt|not not|out|all|arent|werent|match|in|line in|of|over|"
        "up? order|sequence|place|match|line|up",
        "caps|cap .. swapped|mixed|backwards|reversed",
        "caps|cap .. wrong|back|other order|way|to-front|hole|place|position",
        "mixed|swapped|reversed .. bearing|main|rod|cam? caps|cap",
    ),
    "crank_plug_found_missing": (
        "crank|crankshaft|journal|sludge-trap|oilway oil? plug|plugs .. missing|left|loose|out|forgotten|fell|came|gone",
        "missing|forgot|loose|forgotten .. crank|crankshaft|journal|sludge-trap plug|plugs",
        "crank|crankshaft|sludge-trap|journal|trap plug|plugs was|were|is? missing|out|gone|left|absent|loose",
        "plug|plugs missing|out|gone|loose from|in|of the? crank|crankshaft|journal|crankpin",
    ),
    "drive_shaft_absent": (
        "forgot|forgotten|left|without|no|missing to|out|the|fit|install|a|refit|put? the|a|in|fit|install|oil? the? oil? pump? drive|intermediate? shaft|driveshaft|drive-rod|drive-shaft .. pump|left|out|at|in?",
        "pump|drive|intermediate drive? shaft|rod .. left|missing|forgotten|absent|never out|fitted|installed?",
    ),
    "fastener_found_loose": (
        "bolt|bolts|nut|nuts|stud|cap-screw|setscrew inside|is|was|were|had|found|in|on? .. =loose|=slack|backed|undone|finger-tight|missing .. inside|engine|out|off|cap|block",
        "loose|slack bolt|bolts|nut|nuts inside|found|on",
    ),
    "foreign_part_fitted": (
        "non|not approved|genuine|standard|original parts|part fitted|used?",
        "non-approved|unapproved|non-genuine|home-made|homemade|pattern|counterfeit|bogus|wrong part|parts|piece|plug|valve|spring",
        "wrong part|parts|pieces fitted|used|installed|number|inside",
        "part|parts from|off|for a? different|another|wrong|other|not engine|model",
    ),
    "leftover_found": (
        "rag|tape|cap|plug|cloth|paper|bung|tool|socket|masking left|forgotten|found .. in|inside|over|on|behind",
        "left a|the|some|my|piece of? rag|tape|cap|plug|cloth|bung|tool|socket|masking in|inside|over|on",
        "shipping|transit|blanking|plastic plug|cap|bung|plugs|caps left|still|found|in",
    ),
    "small_part_left_out": (
        "slinger|spacer|baffle|dowel|ring|thrower|spring|shim|washer .. left|missing|forgotten|omitted out?",
        "forgot|left|omitted|without out? the|a|to? fit|put|install? the? oil? slinger|spacer|baffle|dowel|thrower|ring|seal",
        "forgot|forgotten|omitted|left|missing out? a|the|one? slinger|spacer|thrust-washer|shim|oil-ring|ring|washer|dowel|baffle",
        "slinger|spacer|dowel|shim|washer left|missing|forgotten|not out|refitted|put|fitted|behind|back?",
    ),
    "clearances_built_wide": (
        "built loose|wide",
        "built with .. loose|wide|generous|@length",
        "loose|race|racing|wide|generous bearing? clearances|clearance",
        f"@not|never {_MEASURED} a|any|one thing|single|clearance|bearing|clearances",
        "bolted|stuck|threw|put|slapped in|it|them together|in? without a? measuring|checking|plastigage|plastigauge|measurement",
        "@not plastigage|plastigauge any|a|the? of? them|clearances|bearings|thing",
    ),
    "plugs_fitted_by_others": (
        f"{_BUILDER} fitted|put|refitted|replaced|renewed|installed|drove|returned the|all|new|my|those? gallery|galley|oilway|crank|core|oil plugs back|in?",
        f"{_PLUGS} were|was|had|been|all|back? fitted|refitted|replaced|renewed|put|installed|driven back|in? by the|a|my|our? {_BUILDER}",
        f"{_PLUGS} .. {_BUILDER} fitted|refitted|replaced|renewed|put|installed",
        f"assumed|thought|trusted|supposed the|my|that? {_BUILDER} .. plugs|plug",
    ),
    "plugs_not_counted": (
        f"nobody|noone|no-one|none|no-body|one could|can|couldnt|would|of|us? remember|remembers|remembered|recall|recalls|count|counted|check|checked .. {_PLUGS}",
        "nobody|noone|no-one|none|one could|can? remember|remembers|remembered|recall|recalled putting|fitting|refitting|seeing .. plug|plugs|one",
        f"never|not|didnt count|counted|check|checked the|all|my|any|those? {_PLUGS}",
        f"@not =remember|=recall putting|fitting|installing|refitting that|the|those|any? {_PLUGS}",
        "@not|cant|dont|didnt remember|know|recall|check|sure|certain|count .. gallery|oil|oilway gallery? plugs|plug",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "drive_shaft_absent": (
        "no_drive_shaft|no_driveshaft|no_shaft|no_intermediate + pump|distributor|between|fitted|there|in",
        "intermediate|driveshaft|drive_shaft + pump|pump|distributor + missing|left_out|forgotten|absent|@not_there",
    ),
    "plugs_fitted_by_others": (
        "gallery_plugs|galley_plugs|oil_plugs|crank_plugs|oilway_plugs & builder|machine_shop|engine_shop|machinist|rebuilder|reconditioner|engineers & replaced|refitted|fitted|put_them|renewed|installed|put_those - spark|drain|counted|i_fitted|i_put|i_refitted|myself|checked",
    ),
    "caps_mixed": (
        "=caps|bearing_cap|main_cap|rod_cap + mixed|swapped|wrong_place|wrong_way|reversed|backwards|turned_round|not_matched|wrong_order|out_of_order|@not_match + main|rod|mixed|bearing|@number|big|swapped - filler|radiator|valve|dust|rotor|distributor",
        "cap|caps|main_caps|bearing_caps + swapped|mixed|where|wrong_place|wrong_order|back_to_front|wrong_way|muddled|backwards + main|cap|caps|goes|round|up|order|bearing|turned - filler|oil_cap|distributor|relief|valve_cap|radiator|rotor",
    ),
    "cap_bolts_slack": (
        "cap|caps|through_bolts|crankcase_bolts|main_bolts|rod_nuts|rod_bolts|rod_nut|rod_bolt + loose|slack|finger|@not_tight|hand_tight|below_torque|under_torque|undone|never_torqued|@not_torqued|backed - filter|housing|filler|radiator|relief|rocker|valve|oil_cap|breather",
    ),
    "fastener_found_loose": (
        "bolt|bolts|nut|nuts + loose|slack|finger|undone|backed|@not_tight + inside|internal|internally|in_the_engine|balancer|crankcase - sump_bolts|pan_bolts|rocker_cover|manifold|drain|filter|wheel|valve_cover",
    ),
    "crank_plug_found_missing": (
        "=plug|=plugs + crank|crankshaft + missing|loose|gone|came_out|left_out|fell_out|worked_loose - spark|core|drain|gallery|sump",
    ),
    "clearances_built_wide": (
        "clearance|clearances|built|set_up|plastigage|plastigauge + loose|wide|on_the_loose|race|generous|loosely + bearing|main|rod|bearings|clearances|engine|mains|built|it - tight|pickup|valve|pump|cam",
        "clearance|clearances|bearings|built|set_up|assembled + loose_side|built_loose|on_the_loose|=loose|wide_side|set_up_at + built|side|build|assembled|clearance|clearances|when|rebuild|@length - cap|bolts|over|limit|pump",
        "set_up_loose|set_it_up_loose|built_loose|built_it_loose|loose_build|wide_clearances + clearance|clearances|builder|engine|bearing|bearings|build|when_it|set_it - bolt|nut|valve|tappet|cap",
        "clearance|clearances|bearings|mains + by_design|deliberately|on_purpose|loose_side|built_loose|set_loose|set_wide|for_racing|race_clearance|race_clearances - no|not|tight|lash|valve",
    ),
    "leftover_found": (
        "rag|cloth|socket|spanner|wrench|screwdriver|ratchet|glove|bung|magnet|torch|pen + found|left|discovered|forgotten|inside + engine|sump|pan|valley|inside|timing_case|crankcase|port|in_there - pickup|screen|strainer|no|dipstick|relief",
        "left|forgot|forgotten|leaving + rag|cloth|tool|socket|spanner|wrench|cap|bung|plug|paper_towel|blue_roll|magnet|mask|tape + valley|inside|in_the|in_it|=in|port|engine|block|sump|head - no|not|dipstick|pump|filler|gallery|radiator|ground|relief|sealed|plugged",
    ),
    "foreign_part_fitted": (
        "part|pump|cam|crank|gears|sender|rods|cover + belongs|off|from|for|@not_belong + different|another|other|wrong & engine|model|motor - gauge|new_pump|swapped|my_other|brother|friend",
    ),
}
