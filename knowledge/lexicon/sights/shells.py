"""Words for what bearing shells show."""

from __future__ import annotations

_BRG = (
    "bearing|bearings|shell|shells|mains|big-ends|big-end|inserts|insert|rod-bearings|main-bearings"
)
_BE = "is|are|was|were|had|have|has|been|looked|look|found|all|both|badly|very|quite|completely|totally|really"
_CRANK = "=crank|crankshaft|journal|journals|crankpin|crankpins|pins"
_SHELLS = "shell|shells|mains|rods|big-ends|bearings|bearing|inserts"
_ANY_BRG = "bearing|bearings|shell|shells|insert|inserts|mains|big_end|big_ends|big-end|big-ends|rod_bearings"
_JOURNAL = "journal|journals|crankpin|crankpins|crank_pin|crank_pins|crankshaft|crank"
#: the finding, by what is said when it is there
PHRASES: dict[str, tuple[str, ...]] = {
    "shells_found_ruined": (
        f"{_BRG} {_BE}? {_BE}? ruined|shot|gone|destroyed|toast|trashed|knackered|failed|wrecked|hammered|finished|mangled|bad|stuffed|rooted|disintegrated",
        f"ruined|destroyed|trashed|failed|knackered|wrecked|shot|bad {_BRG}",
        f"{_BRG} {_BE}? so|that bad|thin|worn|far i|you|we could|can see|look right|straight? through",
        f"{_BRG} {_BE}? {_BE}? paper|wafer|razor|foil thin",
        f"{_BRG} {_BE}? {_BE}? paper-thin|wafer-thin|razor-thin|see-through",
        f"main|rod|big-end|bottom-end {_BRG} failure|failed|gone|had",
        "big end|ends gone|went|failed|shot|run",
        f"ran|run|knocked|lost a|the|its|number? {_BRG}",
        "bottom end is|was? shot|gone|ruined|toast|destroyed|trashed",
    ),
    "shells_look_normal": (
        f"{_BRG} {_BE}? {_BE}? good|fine|perfect|normal|ok|okay|excellent|like-new|as-new|beautiful|great|serviceable|unmarked",
        f"{_BRG} looked|look|were|are|like|all like|as new",
        f"nothing wrong with the? {_BRG}",
        f"good|perfect {_BRG} when|on|at stripped|strip|strip-down|teardown|inspection",
    ),
    "shells_wiped": (
        f"{_BRG} {_BE}? .. wiped|melted|burnt|blued|smeared|burned|cooked|overheated|fried",
        f"wiped|melted|burnt|blued|smeared|burned|cooked|fried out? the|my|its|all? {_BRG}",
    ),
    "shell_spun": (
        f"{_BRG} {_BE}? {_BE}? spun|turned|spinning|rotated in|its|the?",
        f"=spun|=spinning|=spin a|the|rod|main|number|another|big-end? rod|main|cam|big-end|@number? {_BRG}|rod|main",
        "number|no @number big|main|rod? end|bearing? spun",
        "big|main|rod end|bearing? spun",
        "spun bearing",
        "=spun|=turned in|inside the|its =rod|big-end|cap|=housing",
        "spun|spins|spinning|spin a|one|its|the|another|two bearing|bearings|main|big-end|rod|shell|shells",
        "tang|tangs|tab|locating sheared|bent|flattened|gone|off",
        "main|rod|big-end bearing|shell had|has|is|was? turned|rotated|spun|walked in|round|around|its?",
    ),
    "shell_backs_shiny": (
        f"backs|back of the? {_BRG} {_BE}? .. polished|shiny|fretted|fretting",
        "no crush on|left|in|at? the|shells|bearings?",
        "shell|shells|bearing|bearings backs|back|behind|rear|steel is|are|was|were|polished? shiny|polished|bright|fretted|burnished",
        "backs|back of|on the? shells|shell|bearings shiny|polished|bright|fretted|burnished",
    ),
    "shells_worn_evenly": (
        f"{_BRG} {_BE}? .. worn|down .. evenly|copper",
        f"{_BRG} {_BE}? {_BE}? worn|wore evenly|through|down|to into|to? the? copper|evenly",
        f"{_BRG} {_BE}? {_BE}? worn out?",
        "worn|wear|down|showing|into|through to|through|into|the? the? copper|brass|=backing|babbitt",
        "copper|brass|pink showing",
        f"{_BRG} worn .. no heat|scoring|blueing|damage",
        f"worn out? {_BRG} found|were|was|on|when",
    ),
    "shells_embedded_dirt": (
        f"dirt|specks|grit|particles|swarf|debris|metal embedded|bedded in|into the? {_BRG}",
        f"{_BRG} .. embedded|full with|of? dirt|grit|debris|particles|specks",
    ),
    "shells_scratched": (
        f"{_BRG} {_BE}? {_BE}? scratched|scored|grooved|gouged|scuffed|scratches|scoring",
        f"scratched|scored|grooved|gouged {_BRG}",
        f"scratches|scoring|score|grooves|gouges marks? in|on the? {_BRG}",
    ),
    "shells_etched": (
        f"{_BRG} {_BE}? .. etched|corroded|pitted|spongy|acid",
        f"etched|corroded {_BRG}",
        f"{_SHELLS} look|looks|looked|are|were|was|is|all|had|have|with? .. etched|pitted|eaten|pits|pinholes|corroded",
        f"{_SHELLS} .. grey|gray|dark|black|dull and|& eaten|pitted|spongy|etched",
    ),
    "shells_flaking": (
        f"{_BRG} {_BE}? .. flaking|flaked|cracked|fatigued|peeling|delaminated|delaminating|crumbling|fatigue|lifting|crazed",
        "white-metal|babbitt|lining|overlay|whitemetal .. flaking|flaked|cracked|peeling|breaking|broken|come|lifting of|off|from?",
        f"flaking|cracked|fatigued|peeling {_BRG}|white-metal|babbitt",
    ),
    "crank_scored": (
        f"{_CRANK} {_BE}? {_BE}? scored|grooved|damaged|blued|scratched|gouged|chewed|ruined|galled|scuffed|bruised|rough",
        f"scored|grooved|damaged|blued|scratched|ruined {_CRANK}",
        f"scoring|score|scores|grooves marks? in|on the? main|rod? {_CRANK}",
        "journal|journals|crankpin|crankpins|crank-pin|pin|throw black|blackened|blue|blued|black-and-blue",
        "journal|journals|crankpin|crankpins|pin ,? black and|& blue",
    ),
    "bearing_found_seized": (
        "big|main|rod|number|end|bearing|shell|rod end|bearing|shell|rod|main? is|was|had|been|friction|all? welded|seized|fused|stuck|nipped|locked|picked "
        "itself|solid|up? to|on|onto|solid the|its|my|it|crank|crankpin|journal|solid crank|crankshaft|journal|crankpin|pin|throw?",
        f"{_BRG} {_BE}? seized|welded|picked-up|stuck to|on|onto the? {_CRANK}?",
    ),
    "signs_of_starvation": (
        "oil starvation|starved|starving",
        f"{_BRG}|crank|journal|rods .. starved|starvation|dry|ran of|for? oil?",
        "ran|run|running dry|without oil",
        "signs|evidence|case of of? oil? starvation|lubrication",
        "lack of oil|lubrication",
        "blued|blue|blueing|burnt|heat-marked|discoloured|discolored journal|journals|crankpin|crankpins|rod|crank|bearing|bearings|caps",
        "journal|journals|crankpin|crankpins|bearing|bearings|shells|crank ran|run|running|starved|bone? dry|of|blue|blued|heat oil?",
        "bearing|bearings|crank|rods|mains|top-end|engine starved of? oil?",
    ),
    "damaged_by_debris_only": (f"{_BRG} .. debris damage|scratches|marks only|no",),
    "all_bearings_wiped": (
        f"all|every the? main|rod|of? the? {_BRG} {_BE}? .. wiped|ruined|gone|destroyed|damaged|melted|failed|shot",
        "all|every|each of? the? bearing|bearings|shells|shell|mains|rods .. burnt|wiped|gone|ruined|shot|scrap|destroyed|copper|trashed|toast|cooked",
        "whole|entire bottom|lot|set|end .. bearings|shells wiped|gone|ruined|shot|burnt",
    ),
    "worst_far_from_pump": (
        f"rear|back|farthest|furthest|last|number-five|front {_BRG}|main|cylinder .. worst|worse|most",
        "worst|bad|wiped|worse ,? .. farthest|furthest|far away? from the? oil? pump",
        "farthest|furthest from the? oil? pump .. worst|bad|wiped|gone|worse",
        "far|furthest|farthest|rear|front|last end|bearing|cylinder|journal .. starved|worst|worse|dry|driest",
        "far|furthest|farthest|rear|front|last main .. starved|worst|worse|driest",
        "worst|worse|driest at|on|towards|toward the? far|furthest|farthest end|from|one? pump?",
        "worse|worst the? further|farther|furthest|more from|away the? pump?",
    ),
    "mains_worn_unevenly": (
        f"{_BRG} {_BE}? {_BE}? worn|wear|wore|wearing unevenly|uneven|differently",
        "uneven|unequal wear on|of|in|along|across the? mains|main|crank|bearings",
        "centre|center|middle|front|rear|one|thrust main|mains .. worn|worse|gone|worst =most|=more|=worse|=than|=badly|=others|=only",
        "mains|main .. worn|wear unevenly|differently|more|varies|uneven|different",
    ),
    "one_bearing_wiped": (
        f"one|single|just|only|number|no @number? rod|main|big|end|big-end? {_BRG} {_BE}? {_BE}? wiped|gone|ruined|failed|destroyed|shot|melted",
        f"one|only @number? .. {_BRG} .. others|rest fine|good|perfect|ok",
        "ran|melted|lost|wiped|burnt|burned|cooked|fried|lunched|dropped a|one|number @number? big-end|bearing",
        "ran|melted|lost|wiped|burnt|burned|cooked|fried|lunched a|one|number big|rod end|bearing",
        "only|just one rod|main|big-end|bearing|shell|journal? bearing|shell|end? .. wiped|gone|bad|burnt|scored|ruined|failed|marked",
        "one rod|main|big|end bearing|shell|end .. others|rest|all .. fine|good|ok|perfect|like|new",
        "only|just number|no|rod|main @number is|was|has|bearing? wiped|gone|bad|burnt|scored|ruined|failed|shot",
    ),
    "thrust_face_ploughed": (
        "thrust washer|washers|face|faces|bearing|flange|surface .. worn|ploughed|scored|gone|chewed|fallen|dropped|missing|wiped|destroyed|out",
        "worn|missing|wiped thrust washer|washers|bearing",
    ),
    "main_bearing_shifted": (f"main {_BRG}? .. shifted|moved|walked|migrated",),
    "shell_hole_mismatch": (
        "oil hole|holes .. @not line|lined|align|aligned|match|up",
        f"{_BRG} .. blocking|covering|covers|blocked|misaligned .. oil hole|oilway|hole|feed",
        f"{_BRG} .. hole .. @not line|align|match",
    ),
    "wrong_shells_fitted": (
        f"wrong|incorrect|standard|undersize|oversize size|sized? {_BRG} fitted|installed|were|was|for|on|used|in",
        f"{_BRG} {_BE}? the? wrong|incorrect size|ones|undersize",
        "wrong size|oversize|undersize|standard|part|number|set|ones? bearings|shells|bearing|shell|mains|rods fitted|in|were|had?",
        "bearings|shells|bearing|shell were|was|are|is =wrong|=incorrect size|number|undersize|part|ones|for?",
        "standard|std shells|bearings on|with|in|but a|the? ground|undersize|reground crank|journals",
        "shell|shells|insert|inserts|bearing|bearings back|backs? is|was|were|are? stamped|marked|numbered|etched .. std|standard|oversize|undersize .. others|other|rest|remaining|mixed",
        "one|two|shell|shells|cap .. std|standard .. others|rest|remaining .. undersize|over|under|@number|@length|.25",
        "mixed sizes|sets|shells of? shells|bearings|fitted?",
        *tuple(
            f"crank|journals|crankshaft is|was|ground|reground|to|at|by? {ground} under|undersize|thou ,|and|but? i|we|he|they? used|fitted|put|has|had|got|with .. {shells} under|undersize|thou shells|bearings|bearing|in"
            for ground, shells in (
                ("10|.010", "20|30|40|.020|.030|.040|std|standard"),
                ("20|.020", "10|30|40|.010|.030|.040|std|standard"),
                ("30|.030", "10|20|40|.010|.020|.040|std|standard"),
            )
        ),
    ),
    "shell_edges_worn": (
        "shells|bearing|bearings|shell =worn|wear|marked|wiped|polished on|at|along|down only|the|one? edge|edges|one-side|side|one",
        "edge|edges|one side of the? shells|shell|bearings|bearing =worn|wiped|marked|polished|gone",
    ),
}
#: the finding, by what is said when it is not there
PHRASES_ABSENT: dict[str, tuple[str, ...]] = {
    "crank_scored": (
        "crank|crankshaft|journals|journal is|was|were|are|looked|looks? =smooth|=perfect|=fine|=good|=unmarked|=mint",
    ),
}
#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "shells_look_normal": (
        f"{_ANY_BRG} + like_new|as_new|perfect|even_polish|even_grey|even_gray|nothing_wrong|mint|beautiful|unmarked|look_good|looked_good|look_fine|looked_fine|in_good|normal_wear|are_good|good_condition - not|no_oil|but_the|except|one|pressure|needs|cam|think|worn_through|wheel",
        "shells|bearings|mains|inserts|bearing + look|looked|looks|were|came_out + like_new|perfect|good|mint|fine|as_new|unmarked|lovely - not|no|cam|wheel|one|except|but|pump|turbo",
    ),
    "shells_wiped": (
        f"{_ANY_BRG}|white_metal|whitemetal|babbitt|lining + wiped|smeared|melted|blue|blued|=run_=out|burnt|fried|picked_up|squeezed|polished_away - not|no|cam|pipe|looked|run_in|running_fine|others",
        "shells|babbit|babbitt|white_metal|bearing|mains|rods + smeared|burnt_up|burned_up|burnt|melted|cooked|fried|wiped|toast|running_out|molten|gone_blue - journal_only|no|not|smell|gasket|oil|flakes|wire|valve",
    ),
    "one_bearing_wiped": (
        f"one|only|single|just|number|@number|no + {_ANY_BRG}|rod|main + wiped|run|gone|melted|ruined|black|burnt|blue|blued|heat_marks|picked_up|bad & others|rest|remaining|other_five|other_three & perfect|fine|good|ok|sound|unmarked|like_new|mint|lovely|beautiful|spotless - cam",
    ),
    "all_bearings_wiped": (
        f"all|every + {_ANY_BRG} + wiped|ruined|melted|gone|destroyed|smeared|run - not|cam|oil|running",
    ),
    "shells_worn_evenly": (
        f"{_ANY_BRG} + copper|brass|backing|pink + showing|down|through|all|across|visible|worn|into|to - cam|camshaft|balance|balancer|auxiliary|aux|jackshaft|intermediate|turbo|rocker|not|no|flakes|filter|pan|flake",
    ),
    "shells_embedded_dirt": (
        f"{_ANY_BRG} + dirt|grit|specks|embedded|particles|sand|peppered|debris - no|not|crank_trap|pump|filter",
    ),
    "lower_halves_embedded": (
        f"lower|bottom|loaded + {_ANY_BRG}|halves|half + dirt|grit|embedded|full|peppered|specks - not",
    ),
    "shells_scratched": (
        f"{_ANY_BRG} + scored|scratched|scratches|grooved|grooves|scoring|lines_round|tramlines|gouges - no|not|cam|pump|turbo|without|faint|light|fine_lines",
        "shells|bearings|bearing|inserts + sandpaper|scratched|scored|gouged|scratches|=lines|grooved|sandpapered|scuffed - no|not|ball|seat|journal_only|pump|cam|without|thrust",
    ),
    "shells_flaking": (
        f"{_ANY_BRG}|lining|overlay|white_metal|whitemetal|babbitt + flaking|flaked|sheets|peeling|cracked|crazed|lifting|crumbling|breaking_up|falling_out|come_away|came_away|fatigued|chunks_missing - not|no|screen|filter|pan|sump|cam|of_it_in",
    ),
    "shell_backs_shiny": (
        f"back|backs + {_ANY_BRG} + bright|shiny|polished|fretted|fretting|burnished - pump|cam",
    ),
    "shell_edges_worn": (
        f"edge|edges|one_side|side + {_ANY_BRG} + worn|marked|polished|wear|wiped - upper|lower|all|thrust",
        "only_one_edge|one_edge|just_the_edge|along_one_edge + marked|worn|polished|wear|wiped|touching",
    ),
    "mains_worn_unevenly": (
        "main|mains|centre|center|middle|rear|front + worn|worse|wear + more_than|than_the|lot_more|unevenly|uneven|differently|different|along_the_crank + along_the_crank|ends|others|rest|front|rear|main|mains|centre - cam|rotor|lobe|gear",
    ),
    "wear_at_parting_lines": (
        f"{_ANY_BRG} + parting|split_line|joint_face|joint_line|parting_line + worn|wear|marked|polished|opposite",
    ),
    "shell_hole_mismatch": (
        f"hole|holes|oil_hole + {_ANY_BRG} + @not_line|@not_align|covered|covering|blocked|misaligned|@not_match|mismatch|off_by|half_covered|out_of_line|blanked - plug|lifter|cam_lobe|camshaft_sensor|rod_through|gallery_plug",
        "cam_bearing|cam_bearings|cam_bush|cam_bushes|camshaft_bearings|camshaft_bearing + @not_line|@not_lined|@not_align|@not_aligned|"
        "misaligned|out_of_line|@not_match|@not_meet|half_covered|covers|covering|blanks + feed|oil_feed|gallery|oilway|drilling|passage|hole|holes|oil_hole",
        "bearing|bearings|shell|shells|bush + hole|holes|oil_hole + not_lined|@not_line|@not_lined|misaligned|@not_match|@not_meet|out_of_line|@not_aligned|blanked|half_covered - cap|dowel",
        "hole|holes + shell|shells|insert|inserts|bearing|bearings|slipper|slippers + @not_line|@not_match|misaligned|@not_meet|wrong_place|covered|offset|half_covered|blanks - dowel|bolt|bolt_hole|plug",
    ),
    "wrong_shells_fitted": (
        "shells|bearings|bearing|shell|inserts|slippers|main_shells|half-shells + o/s|u/s|oversize|undersize|ten_over|twenty_over|ten_under|twenty_under|other_size|different_size|wrong_size|another_size|@length + journals|crank|never_been_ground|std|standard|crankshaft|shaft|pins|not_ground|as_new_size - clearance|measured|mic|right|correct|thickness|gap|wear|worn|match|matches",
        "shell|shells|half|halves|bearing|bearings|insert|inserts|mains|half-moon|half-moons|slippers|linings + stamped|printed|marked|says|reads|etched|numbered|labelled & mate|other|others|partner|opposite|top|upper|crank|shaft|journal|journals|crankshaft & std|standard|@number|@length|010|020|030|oversize|undersize - no|not|correct|right|matching|same|match|both|all",
        "std|standard|wrong|incorrect|mismatched|oversize|undersize|mixed|odd + shells|bearings|inserts|slippers|half-shells|mains|linings + reground|ground|undersize|crank|crankshaft|cut|journals|pins|fitted|stuck|put|threw|shaft - no|not|correct|right|to_suit|matched|cam|clutch|turbo",
        f"{_ANY_BRG} + stamped|marked|under|undersize|wrong + crank|journal|journals|ground + under|undersize|std|standard|@number|thou - correct|right|reground_to_suit|measured|clearance|new_bearings_to_suit|ground_10_under_with|polished",
        f"{_ANY_BRG} + std|standard + crank|journal|journals|ground + under|undersize|thou - correct|right|reground_to_suit|measured|clearance|new_bearings_to_suit|ground_10_under_with",
        f"{_ANY_BRG} & std|standard & crank|journals & @number_under|10_under|20_under|@length_under|undersize - correct|right",
        f"wrong_size|wrong_undersize|wrong_bearings|wrong_shells + {_ANY_BRG}|fitted|in|were|size|had|supplied - cam",
        "shell|shells|insert|inserts|bearing|bearings|slipper|slippers + wrong|standard|undersize|oversize|@number|10_under|20_under + ground|crank|grind|supplied|sent|fitted & wrong|supplied|sent|instead|gave|but - new_shells_and|no|right|correct|matched|to_suit",
        "shells|bearings|inserts|shell + sent|supplied|gave|fitted|ordered|are|on & crank|crankshaft|journals & thou|@length|ten|twenty|under|undersize|ground - polished|clearance|new_shells|matched|right|correct|to_suit|and_new|measured|both_standard|both_std",
    ),
    "crank_scored": (
        f"{_JOURNAL} + scored|grooved|gouged|blue|blued|ridges|scratched|scuffed|chewed|picked_up|torn_up|burnt|bruised|galled - no|not|smooth|shaft|cam|seal|sprocket|unmarked|without|isnt|pulley|sensor",
        "crank|crank_pin|crankpin|journal|journals|crankshaft + cut_up|chewed|torn_up|grooved|scored|blue|blued|ruined|scarred|damaged|rough - no|not|fine|good|pulley|seal|smooth|cam|sensor|turbo",
    ),
    "thrust_face_ploughed": (
        "thrust + worn|gone|fell|fallen|dropped|missing|ploughed|scored|chewed|worn_out|disintegrated|copper + washer|washers|bearing|face|flange|halves - not|no|good|within|release|clutch",
    ),
    "damaged_by_debris_only": (
        "shell|shells|insert|inserts|bearing|bearings|slipper|slippers + =only|just|nothing_but + debris|dirt|grit|scratches|marks + no_heat|@not_heat|cool|@not_burnt|no_sign - screen|filter",
    ),
    "worst_far_from_pump": (
        "worst|worse|wiped + farthest|furthest|far_end|away_from_the_pump|last_one|end_of_the_line + shell|shells|insert|inserts|bearing|bearings|slipper|slippers|main|mains|rod|rods|journal",
    ),
    "shells_etched": (
        "shell|shells|insert|inserts|bearing|bearings|slipper|slippers + dark|black|spongy|etched|stained|acid - no|not|heat|blue|oil",
    ),
    "several_journals_dry": (
        "several|some|three|two|couple + journals|mains|rods|big_ends|bearings + dry|blue|blued|no_oil - none|not",
    ),
    "bearing_found_seized": (
        "main|rod|big_end|cam|turbo + bearing|journal|shell + seized|welded|picked_up|locked|stuck + crank|journal|on|to|it|solid - pump|no|not|engine_seized",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "crank_scored": (
        f"{_JOURNAL}|crank + smooth|unmarked|perfect|look_polished|are_polished|mirror|like_glass|like_new|mint|unscored|undamaged|look_good|looks_good|fine|ok - not|but|scored|rough|no_good|pulley|float|turns|one",
    ),
}
