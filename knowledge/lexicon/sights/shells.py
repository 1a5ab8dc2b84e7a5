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
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt + satin|even_polish|nicely_polished|satin_shine|evenly_polished|odd_hairline|faint_lines|no_damage|only_polished|light_polish|as_they_should|matt_grey_and_even|like_new|textbook|lightly_polished|unmarked|perfect + polish|polished|only|no|shine|just|looked|look|came|even|nothing|hairline|grey|out|new - backs|back|not|wiped|scored|wear|copper|journal|cam|clearance|except|but|feel|isnt|lifter|sound|measured",
    ),
    "shells_wiped": (
        f"{_ANY_BRG}|white_metal|whitemetal|babbitt|lining + wiped|smeared|melted|blue|blued|=run_=out|burnt|fried|picked_up|squeezed|polished_away - not|no|cam|pipe|looked|run_in|running_fine|others",
        "shells|babbit|babbitt|white_metal|bearing|mains|rods + smeared|burnt_up|burned_up|burnt|melted|cooked|fried|wiped|toast|running_out|molten|gone_blue - journal_only|no|not|smell|gasket|oil|flakes|wire|valve",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt + run|smeared|melted|flowed|turned_colour|turned_color|blued|wiped|burnt|burned|streaked|cooked|fried|smear|got_so_hot|dragged|puddled|overheated|gone_blue|melt|metal_had_run|ran_like_solder|heat_discoloured|gone_dark_with_heat|run_its_metal|run_their_metal|smudged|ran_out|turned_blue|turned_purple|bluing + metal|hot|insert|inserts|shell|shells|lining|colour|had|were|white|from|with|rods|mains|bearings|all|bearing|rod|main|heat|out|halves - no|not|never|none|isnt|only|oil|water|journal|journals|shaft|cam|dry|poured|melt_the|pour|ran_fine|in_the_mains|nothing|re-run|throw|gauge|run_in|running|run_on|rollers|run_again|hot_oil|ran_low|runs|clearance|engine_ran|without|pump|ran_dry|had_run_dry|run_dry|alternator|stripes|wire|one_bearing|seal|lifter|hours|miles|then",
        "white_metal|whitemetal|babbitt|bearing_metal|lining_metal + had_run|run_out|melted|flowed|ran_out|has_run|had_flowed - poured|re-run|not|no|rotor",
        "inserts|shells|bearings|lining & so_hot|overheated|got_hot & flowed|turned_colour|turned_color|melted|ran|smeared|changed_colour - not|no|only|oil_so_hot",
    ),
    "one_bearing_wiped": (
        f"one|only|single|just|number|@number|no + {_ANY_BRG}|rod|main + wiped|run|gone|melted|ruined|black|burnt|blue|blued|heat_marks|picked_up|bad & others|rest|remaining|other_five|other_three & perfect|fine|good|ok|sound|unmarked|like_new|mint|lovely|beautiful|spotless - cam",
        "only_one|just_one|one_big_end|one_rod|one_main|just_the_one|one_pair|single|only_one_pair|only_number|one_bearing|only_the_one|only_one_bearing|one_shell|one_journal + wiped|run|smeared|toast|gone|melted|burnt|cooked|ruined|spun|fried|blued|bad|failed|knackered|shot|picked_up & rest|others|mates|other|only|all_the|remaining|just|out_of_all - no|not|none|dry|two|new|cap|main_seal|cam|lobe|cylinder|alone|sender|gauge|plug|lifter|filter|pump|oil_on|gasket|time|rocker",
        "out_of_all & only|one|just & wiped|smeared|melted|burnt|gone|run - plugs|lobes|cap|lifters",
        "out_of_all|only_one|just_one|one_big_end's|one_big_end|one_rod|one_main|only_one_pair & smeared|run|toast|melted|gone|cooked|wiped|burnt & rest|others|only|just|its_mates|could_go_back - dry|cap_missing|plug|lobe|cylinder|lifter|two",
    ),
    "all_bearings_wiped": (
        f"all|every + {_ANY_BRG} + wiped|ruined|melted|gone|destroyed|smeared|run - not|cam|oil|running",
        "every|all|whole_set|whole_lot|the_lot|complete_set|each_and_every|all_seven|all_of_the|all_five|entire_set|both_mains_and + bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|them|half|set + melted|burnt|wiped|run|run_its_metal|cooked|fried|smeared|gone_the_same|equally|same|alike|gone|had_run|overheated|toast|to_the_same_degree|burned|blued|shot - not|except|no|none|but|one|fine|good|cam|only|renewed|changed|worn|new|sound|fitted|replaced|clean|measured|tight|in_spec|torque|gauged|scored|out_of|poured|journal|oil_on|same_place|bores",
        "whole_set|whole_lot|entire_set|complete_set & mains|rods|bearings|shells & gone|wiped|burnt|melted|toast|same|ruined|cooked|run - sender|fine|new|except|seals|gasket|sound",
        "whole_set's|whole_set|whole_lot|every_one|all_seven|all_six|all_of_them & gone|melted|burnt|cooked|wiped|run & mains|rods|bearings|shells|equally|same - sender|seal|fine|new|except|renewed|good|plugs",
    ),
    "shells_worn_evenly": (
        f"{_ANY_BRG} + copper|brass|backing|pink + showing|down|through|all|across|visible|worn|into|to - cam|camshaft|balance|balancer|auxiliary|aux|jackshaft|intermediate|turbo|rocker|not|no|flakes|filter|pan|flake",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|grey_layer|overlay|every_half|wear + copper|coppery|reddish|pink|brass|brassy|copper_showing|bronze + even|equal|equally|evenly|all_over|every_half|high-hours|same|uniform|no_heat|not_burned|nothing_blue|underneath|just_wear|just|normal_wear|all_round|both_halves|throughout|everywhere|uniformly - one_edge|scored|patch|patches|not_worn|no_copper|flake|flakes|filings|oil|pan|washer|pipe|line|sample|ppm|differently|cap",
        "grey_layer|overlay|lining|top_layer & rubbed_away|worn_away|worn_off|gone & all_over|even|reddish|copper|pink|bronze|underneath - one_edge|flake|patch|pump|cracks|acid",
        "coppery|copper_sheen|coppery_sheen|copper_showing & every_half|all_over|even|both_halves|all_halves|all_round|everywhere & nothing_blue|no_heat|wear|no_blue|not_burnt|no_burning - pan|oil_pan|filter",
    ),
    "shells_embedded_dirt": (
        f"{_ANY_BRG} + dirt|grit|specks|embedded|particles|sand|peppered|debris - no|not|crank_trap|pump|filter",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|soft_metal|overlay|surface + specks|grit|sand|casting_sand|crumbs|swarf|bits|particles|grains|chips|steel_crumbs|dirt|filings|rubbish|debris|blast_media|glass_beads|muck|splinters|slivers + embedded|pressed|picked_up|stuck|bedded|lodged|buried|imbedded|in_the_lining|pushed|peppered|ground_into|driven_into|trapped|studded|rolled_into|in_them - no|not|nothing|none|pan|filter|strainer|screen|relief|pump|scratched_only|fuel|oilway|gallery",
    ),
    "lower_halves_embedded": (
        f"lower|bottom|loaded + {_ANY_BRG}|halves|half + dirt|grit|embedded|full|peppered|specks - not",
        "lower|cap-side|rod-side|loaded|bottom|cap_side|rod_side|loaded_side|bottom_halves|lower_halves|thrust_side|pressure_side + halves|half|mains|shells|side|inserts|shell|rods|bearings + dirt|swarf|embedded|grit|full_of|pressed|debris|muck|peppered|crud|particles|chips|filings|specks|bits - no|not|pan|clean|sump|chain|cover|gauge|filter|timing|end_of_the|hose",
    ),
    "shells_scratched": (
        f"{_ANY_BRG} + scored|scratched|scratches|grooved|grooves|scoring|lines_round|tramlines|gouges - no|not|cam|pump|turbo|without|faint|light|fine_lines",
        "shells|bearings|bearing|inserts + sandpaper|scratched|scored|gouged|scratches|=lines|grooved|sandpapered|scuffed - no|not|ball|seat|journal_only|pump|cam|without|thrust",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|curved_pieces|half-moons|bearing_surface + lines|grooves|channels|scratches|scratched|scores|scored|scoring|tramlines|tram_lines|gouges|ploughed|rings|furrows|threads|like_a_record|lp_record|ridged|furrowed|grooved + round|around|running|deep|turning_direction|circumference|round_them|all_the_way|circumferential|dirt|by|long|with|in - no|not|none|faint|oil_groove|oil_grooves|journal|hairline|oil_lines|cam|pump|bores|fuel_lines|thrust|crank|only",
    ),
    "shells_flaking": (
        f"{_ANY_BRG}|lining|overlay|white_metal|whitemetal|babbitt + flaking|flaked|sheets|peeling|cracked|crazed|lifting|crumbling|breaking_up|falling_out|come_away|came_away|fatigued|chunks_missing - not|no|screen|filter|pan|sump|cam|of_it_in",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|layer|shiny_layer|overlay + cracks|cracked|crazed|crazing|peeling|flaking|flaked|falls_out|fall_out|spider|spider_cracks|detached|delaminated|lifting_off|fatigue|fatigued|coming_away|chunks_missing|bits_missing|mud_cracks|dropped_out|breaking_up|spalled|pieces|lifting|mosaic + load|lining|layer|away|off|cracks|peeling|out|surface|metal|shiny|loaded|fatigue|like|missing|flake|and - no|not|none|paint|gallery|plug|cam|lobe|seal|gasket|race|journal|thrust|liner|pan|filter|belt",
        "cracks|cracked|fatigue|crazing|spider_cracks & layer|lining|overlay|shells & falls_out|fall_out|pieces|detached|peel|lifting|loaded|dropped_out|flake - pan_cracked|no|plug|paint|block",
    ),
    "shell_backs_shiny": (
        f"back|backs + {_ANY_BRG} + bright|shiny|polished|fretted|fretting|burnished - pump|cam",
        "backs|back|behind|rear_face|reverse|outside_of_the_shells|back_side|backside|where_they_sit + bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|in_the_rod|saddle + shine|shiny|polished|bright|fret|fretted|fretting|mottled|burnished|rubbing|rubbed|fret_marks|moving|glazed|mirror - dull|no|not|back_to|cam|set_back|put_back|rear_main_seal",
        "fret|fretted|fretting|fret_marks|chafe_marks|polished_patches + rod|saddle|bore|housing|bearing_seat|where_they_sit|back|backs|tunnel + sit|seat|shell|shells|bearing|rod|inserts|they - no|not|belt|wire|hose|spline",
        "behind_the_inserts|behind_the_shells|back_of_the_shell|backs_of_the & bright|mottled|shiny|polished|fretted & dull|bright|rubbing|instead|inserts|moving|shells - no|not_polished",
    ),
    "shell_edges_worn": (
        f"edge|edges|one_side|side + {_ANY_BRG} + worn|marked|polished|wear|wiped - upper|lower|all|thrust",
        "only_one_edge|one_edge|just_the_edge|along_one_edge + marked|worn|polished|wear|wiped|touching",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|it + fillet|radius|edge|one_side|edges|crank_cheek|cheek|web|one_edge|radius_ride|outer_edge|fillet_side|side_nearest|one_end|rim|side_next_to|shoulder + worn|chewed|rubbed|wear|cut|bright|ride|riding|polished|eaten|gone|rubbed_away|touching|rubs|fouling|bitten|shaved|hard_contact - no|not|even|both_halves|pitted|journal|piston|parting|joint|cam|seal|gear|rotor|tooth|split|thrust|end_of_it|cap_half|pump|rounded|melted-looking|shaft",
        "radius_ride|fillet_ride|fillet_contact|riding_the_radius|rides_the_fillet|riding_the_fillet & bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|side|edge|chewed|worn|marks|bearing - no|not",
        "rubbed_away|worn|chewed|wear|polished_away & side_nearest|one_edge|nearest_the|one_side_only|fillet|next_to_the_cheek & crank|cheek|web|fillet|insert|shell|radius - no|cap_half|thrust_washer|gear|pump",
    ),
    "mains_worn_unevenly": (
        "main|mains|centre|center|middle|rear|front + worn|worse|wear + more_than|than_the|lot_more|unevenly|uneven|differently|different|along_the_crank + along_the_crank|ends|others|rest|front|rear|main|mains|centre - cam|rotor|lobe|gear",
        "mains|main_bearings|main|crank_bearings|centre_bearings|center_main|centre_main|journal_by_journal|bearings + not_equal|no_two|worse_toward|worse_towards|differently|unevenly|one_more|other_less|not_the_same|varied|each_different|outer_ones_hardly|from_one_to_the_next|uneven|more_than_the_others|all_different|different_amounts|middle_worse|middle_ones|middle_more|worn_more_than|varying + worn|wear|same|middle|rubbed|bearings|less|main|mains|outer|centre|ends|others|different|amounts - no_difference|rod|not_worn|alike|pressure|fuses|wires|bores|cylinders|shafts|gauge",
        "bowed|banana|warped|bent_like|sagged|twisted + block|crankcase|crank_tunnel|crank|line|tunnel & centre_bearings|center_bearings|mains|outer_ones|middle + rubbed|worn|hardly|touching|worse - not",
        "bowed|banana-shaped|warped|twisted & centre_bearings|center_bearings|middle_mains|middle_ones|outer_ones|centre_main & rubbed|hardly|worn|touch|tight|more|outer_ones - no",
    ),
    "wear_at_parting_lines": (
        f"{_ANY_BRG} + parting|split_line|joint_face|joint_line|parting_line + worn|wear|marked|polished|opposite",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|wear|worn|patches|rubbed|bright|cap|marks|shine + parting_line|parting_lines|joint_face|split|cap_joint|near_the_split|next_to_the_joint|beside_the_joint|at_the_joint|parting_face|parting_faces|split_line|joint_line|where_the_halves_meet|split_lines|at_the_split|mating_faces|near_the_joint|edges_where_the + wear|rubbed|bright|worn|polished|patches|opposite|diagonally|diametrically|shiny|rub|touching|rubbing|marked - no|not|nothing|leak|oil|sealant|gasket|case|crankcase|even|sealer|sump|weep|cracks",
        "wear|rubbed|bright_patches|worn|shine|patches|rub_marks & joint|split|cap_joint|parting & opposite|opposed|diagonally|other_side|diametrically|left_above|right_below|other_side_bottom - no|nothing|not|leak|crankcase",
        "wear|bright|rubbed|rub|shine & cap_joint|adj._to_cap|joint|split|parting & opposed|opposite|diagonal|diametrically|diagonally - no|leak|nothing|crankcase|exhaust",
    ),
    "shell_hole_mismatch": (
        f"hole|holes|oil_hole + {_ANY_BRG} + @not_line|@not_align|covered|covering|blocked|misaligned|@not_match|mismatch|off_by|half_covered|out_of_line|blanked - plug|lifter|cam_lobe|camshaft_sensor|rod_through|gallery_plug",
        "cam_bearing|cam_bearings|cam_bush|cam_bushes|camshaft_bearings|camshaft_bearing + @not_line|@not_lined|@not_align|@not_aligned|"
        "misaligned|out_of_line|@not_match|@not_meet|half_covered|covers|covering|blanks + feed|oil_feed|gallery|oilway|drilling|passage|hole|holes|oil_hole",
        "bearing|bearings|shell|shells|bush + hole|holes|oil_hole + not_lined|@not_line|@not_lined|misaligned|@not_match|@not_meet|out_of_line|@not_aligned|blanked|half_covered - cap|dowel",
        "hole|holes + shell|shells|insert|inserts|bearing|bearings|slipper|slippers + @not_line|@not_match|misaligned|@not_meet|wrong_place|covered|offset|half_covered|blanks - dowel|bolt|bolt_hole|plug",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|bush|cam_bush|cam_bearing|cam_bearings|bushing|uppers|uppers_and_lowers|upper|rocker_bush + no_hole|hole's_half_shut|half_shut|swapped|plain_metal|blind|doesnt_line_up|don't_line_up|dont_line_up|not_line_up|misaligned|off_the_hole|covering_the_oil|covers_the_oil|missed_the_oilway|hole_covered|half_covered|doesn't_meet|holes_dont_meet|hole_is_off|not_aligned|turned_so|lower_shell_in_the_top|plain_half|without_hole|blanks_off|out_of_line_with|doesnt_match|offset_from|clocked_wrong + oil|oilway|feed|hole|holes|drilling|block|oil_feed|casting|passage|gallery|top|drillings - line_up_fine|all|journal_dry|caps|gasket|bolt|bolt_holes|cover|no_hole_in_the_block|crankpin_plug|tool|filter|none",
        "no_hole|plain_metal|half_shut|swapped|blind & bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|bush|cam_bush|uppers|uppers_and_lowers & oil_feed|oil_can't|where_the_block|oil_hole|oilway|casting|hole|driven_in|block_has - caps|gasket|rod_out|through_the_block|punched|leads|plug_leads|sender|gauge",
    ),
    "wrong_shells_fitted": (
        "shells|bearings|bearing|shell|inserts|slippers|main_shells|half-shells + o/s|u/s|oversize|undersize|ten_over|twenty_over|ten_under|twenty_under|other_size|different_size|wrong_size|another_size|@length + journals|crank|never_been_ground|std|standard|crankshaft|shaft|pins|not_ground|as_new_size - clearance|measured|mic|right|correct|thickness|gap|wear|worn|match|matches",
        "shell|shells|half|halves|bearing|bearings|insert|inserts|mains|half-moon|half-moons|slippers|linings + stamped|printed|marked|says|reads|etched|numbered|labelled & mate|other|others|partner|opposite|top|upper|crank|shaft|journal|journals|crankshaft & std|standard|@number|@length|010|020|030|oversize|undersize - no|not|correct|right|matching|same|match|both|all",
        "std|standard|wrong|incorrect|mismatched|oversize|undersize|mixed|odd + shells|bearings|inserts|slippers|half-shells|mains|linings + reground|ground|undersize|crank|crankshaft|cut|journals|pins|fitted|stuck|put|threw|shaft - no|not|correct|right|to_suit|matched|cam|clutch|turbo|polished|standard_crank|std_crank|on_a_standard|standard_journals|std_journals",
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
        "journal|journals|crankpin|crankpins|crank_pin|crank_pins|throws|crank + blued|blue|grooved|grooves|scored|picked_up|galled|ridged|scratched|gouged|rough_to_the_nail|catches_a_nail|catch_a_fingernail|deep_lines|wiped|heat_marked|discoloured|discolored|rough|ploughed|chewed_up|scuffed|feel_a_ridge + journal|journals|crank|pin|pins|throws|nail|deep|badly - no|not|smooth|cam|never|none|gear|shell_only|inserts|bearings_had|nose|seal|tooth|snout|pump|dry|oil_on|two|several|others",
    ),
    "thrust_face_ploughed": (
        "thrust + worn|gone|fell|fallen|dropped|missing|ploughed|scored|chewed|worn_out|disintegrated|copper + washer|washers|bearing|face|flange|halves - not|no|good|within|release|clutch",
        "thrust|thrust_washer|thrust_washers|half-moon_washer|half_moon_washer|flanged_insert|flange|flanges|flanged_bearing|thrust_face|thrust_faces|thrust_flange|thrust_bearing|thrust_half|sides_of_the_flanged|half-moon|thrust_ring|thrust_rings + dropped_out|torn|torn_up|lying|fell_out|worn|gone|missing|chewed|scored|ploughed|dark|blued|worn_away|in_the_pan|in_the_bottom|out_of_its_place|galled|gouged|burnt|wiped|down_to_the_steel|eaten|spat_out|worn_out|fallen_out|rubbed_away|half_gone|damaged|shot|knackered|smeared|ripped - no|not|clutch_release|sound|cam_thrust|distributor|exhaust|gasket|release|carb|manifold|pump|pickup_flange|filter|water|measured|left_out|forgot|pipe|leak|one_pair|out_of_all|flywheel",
        "half-moon_washer|thrust_washer|half_moon_washer|thrust_half|half-moon & lying|dropped_out|fell_out|fallen_out|in_the_pan|in_the_bottom|out_of_its_place|in_the_sump & pan|bottom|crank|sump|place - only_one_pair|new",
    ),
    "damaged_by_debris_only": (
        "shell|shells|insert|inserts|bearing|bearings|slipper|slippers + =only|just|nothing_but + debris|dirt|grit|scratches|marks + no_heat|@not_heat|cool|@not_burnt|no_sign - screen|filter",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|grit|muck|trash|junk|dirt|debris|swarf|rubbish|crud|particles + marked|scratched|scored|did_that|went_through|marks|damage|damaged|chewed|scratches|scratching|dirt_damage|caused|cut_up|scuffed + not_burnt|no_bluing|not_want_of_oil|all_that's_wrong|no_heat|nothing_else|only|not_heat|no_blue|no_smearing|no_overheating|not_starvation|not_lack_of_oil|no_wiping|no_melting|no_discolouration|but_not|no_sign_of_heat|just|not_oil_starvation|nothing_blued - not_only|isnt_only|got_hot|gallery|pan|filter|screen|journal|pump|too|gears|teeth|copper",
        "muck|grit|dirt|trash|debris|junk|swarf|rubbish & marked|did_that|went_through|scratched|scored|damage|chewed & not_want_of_oil|all_that's_wrong|no_bluing|theres_no_bluing|no_heat|not_burnt|no_burning|not_lack_of_oil|not_starvation|no_sign_of_heat|not_oil_starvation - isnt_only|too|pump_gears|gears|filter",
    ),
    "worst_far_from_pump": (
        "worst|worse|wiped + farthest|furthest|far_end|away_from_the_pump|last_one|end_of_the_line + shell|shells|insert|inserts|bearing|bearings|slipper|slippers|main|mains|rod|rods|journal",
        "furthest|farthest|last_rod|last_main|rear_main|end_of_the_gallery|end_of_the_line|fed_last|further_down|far_end|last_on_the_feed|last_in_line|last_fed|end_of_the_oil|furthest_from_the_pump|most_remote|rear_ones|back_ones|last_bearing|last_in_the_line|end_of_the_feed|far_bearings|further_along + worst|worse|gone|more_burnt|hit_hardest|poorest|most|burnt|suffered|hardest|first_is|hardly_touched|wiped|cooked|took_the_brunt|wear + bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|feed|line|gallery|pump|oil|first - no_worse|not|rocker|same|seal|leak|leaks|gauge|sender|cylinder|helm|drip|valve|tappet|lifter|pressure|plug",
        "further_down|rear_main|fed_last|last_fed|far_end|furthest|farthest|further_along|last_one & burnt|worse|worst|poorest|most|suffered|gone & oil_line|gallery|fed_last|feed|of_the_lot|pump|more - not|no_worse|leak|seal|helm|sender",
    ),
    "shells_etched": (
        "shell|shells|insert|inserts|bearing|bearings|slipper|slippers + dark|black|spongy|etched|stained|acid - no|not|heat|blue|oil",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt + eaten|acid|etched|corroded|spongy|corrosion|black|porous|pitted_all_over|honeycombed|dissolved|lead_gone|eaten_away|attacked|leached|rotted|chemical|dark + acid|by|oil|surface|and|lining|away|spongy|look|like|water|lead|corroded|sponge|all|were|inserts - no|not|none|oil_black|worm|journal|unloaded|heat|burnt|burned|race|roller|edges|terminal|cap_half|black_oil|metal_in",
    ),
    "several_journals_dry": (
        "several|some|three|two|couple + journals|mains|rods|big_ends|bearings + dry|blue|blued|no_oil - none|not",
        "journal|journals|crankpin|crankpins|throw|throws|mains|rods|bearings|big_ends|rod|main|bearing|crank_pins|shells|two|three|1|2|4|journals_1|some|several + dry|no_oil_on_them|blued|blue|discoloured|discolored|burnt|cooked|starved|blackened|bone_dry|heat_marked|no_oil|no_oil_at_all|straw_coloured|burned & others|rest|neighbours|other_ones|remainder|neighbors|the_others + ok|fine|wet|still_had_oil|oily|good|oiled|all_right|clean|well_oiled|had_oil|bright|normal - no_journals|none|bores|cylinders|plugs|one_bearing|rocker|just_the_one|only_one|one_big|rockers|runner|plug|cylinder|single",
        "two|three|some|several|@number|journals_1|rods & cooked|blued|discoloured|no_oil_on_them|dry|burnt|discolored & neighbours|others_ok|rest_were_wet|others_fine|still_had_oil|rest_were_oily|rest_wet|other_ones_wet|rest_ok - bores|cylinders|plugs|only_one|just_one|shells_only",
    ),
    "bearing_found_seized": (
        "main|rod|big_end|cam|turbo + bearing|journal|shell + seized|welded|picked_up|locked|stuck + crank|journal|on|to|it|solid - pump|no|not|engine_seized",
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|one_main|crankpin|b/e_4|b/e + nipped|picked_up|seized|chisel|welded|stuck_to|stuck_on|gripped|picked_up_solid|bonded|solid_on|galled_to|friction_welded|locked_on|stuck_fast|frozen_to|frozen_on|chiselled|fused|grabbed|prise|had_to_be_cut|lever_off|hammer_off + journal|pin|shaft|crank|crankpin|on|off|solid|throw|journals - no|not|cam|none|water|alternator|picked_up_dirt|pulley|pilot|never|without_pick|casting_sand|fan|turbo|all_turn|free|metal_in|swarf",
    ),
    "shells_found_ruined": (
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt + fell_out_in_my_hand|what_was_left|fell_out_in|destroyed|ruined|shredded|paper_thin|to_foil|hammered_flat|in_bits|scrap|unrecognisable|beaten_thin|wrecked|trashed|mangled|beat_to_death|in_tatters|pounded_out|like_tinfoil|to_pieces|pounded|obliterated|smashed + left|hand|bearing|bearings|shell|shells|out|were|was|in|all|rod|to|big|found|two - no|not|water|wheel|alternator|cam_bearings|washer|relief|fan|idler|thrust",
    ),
    "shells_smooth_light_wear": (
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|wear|worn|ripple + light|lightly|shade|faint|faint_ripple|slight|wavy|undulating|barely|a_touch|minor|slightly|gentle|rippled|ripples + smooth|slick|no_pick-up|no_pickup|cool_looking|no_heat|no_scoring|undulating|wavy|no_smearing|not_burnt|no_sign_of_heat|silky|smooth_to|ripple|without_heat - not_just|copper|deep|edge|heavy|cam|pump|gear|spring|scratch|hairline|polish|needle|idle|runs|commutator",
        "shade_worn|a_touch_worn|slightly_worn|barely_worn|lightly_worn & slick|smooth|silky|no_heat|cool & still|finger|nail|just|touch|feel - copper|cam|pump|gear|edge",
    ),
    "signs_of_starvation": (
        "bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|throw|it|crankpin|journal|cam|lobe|lobes|crank|they + starved|run_dry|starvation|hadn't_seen_a_drop|hadnt_seen_a_drop|ran_dry|no_oil_had|had_no_oil|oil_starved|lack_of_oil|lack_of_lubrication|want_of_oil|dry_running|short_of_oil|been_dry|running_dry|without_oil|not_had_oil|lubrication_failure|no_oil_got|oil_shortage|never_got_oil|dry_and_blue|bone_dry_and|starved_of_oil|run_without_oil|drop_of_oil + oil|dry|drop|bearing|big|starved|starvation|journal|obviously|signs|tell|looks|main|rod|had|from|throw|clearly|end - no|not|pump|sump|level|dipstick|fuel|no_sign|gearbox|pickup|turbo|suction|tank|wont|dont|loses_prime|pan|muck_did",
    ),
    "shells_pitted_unloaded": (
        "unloaded|cap_half|top_mains|upper|lower_rod|side_that_doesnt|doesn't_take_the_push|no_load|slack_side|upper_mains|top_halves|upper_halves|off-load|unloaded_half|rod_cap|cap_halves|side_with_no_load + pits|pitted|craters|holes|eroded|worm-eaten|cavitation|small_holes|pitting|erosion|little_craters|pin_holes|wormholes|worm_holes|pockmarked|pock_marks|pocked|cavitated|spongy_holes - no|not|oil_hole|oil_holes|cam|lobe|piston|lifter|coolant|liner|head|valve|feed|smooth_half",
        "worm-eaten|worm_eaten|cavitation|wormholes|pitted|pits|craters|eroded & unloaded|doesn't_take_the_push|only_on_the_side|no_load|cap_half|upper_half|slack_side & bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|only|half|side|it|shells - no|liner|not|piston|pump|lobe|water",
        "holes|small_holes|pits|craters|pitted|eroded & cap_half|unloaded|upper_half|top_half|off-load & rod|main|shells|half|edges|smooth - oil_hole|oil_holes|liner|no|pump|piston",
    ),
    "main_bearing_shifted": (
        "main|main_bearing|mains|main_brg|main_shell|centre_main|main_shells|rear_main|main_bearings|front_main + displaced|shifted|crept|moved|walked|migrated|creeping|pushed_over|slid|slipped|out_of_position|wandered|moved_sideways|cocked|out_of_place|been_moving|off_centre|crept_sideways|proud_on_one + bore|seat|tunnel|saddle|sideways|housing|notch|place|main|block|over|side|position|case|in - no|not|seal|all_the|square|none|cap|crank|oil_moved|spun|washer|worn|filter|clearance|cam|relief|hasnt|rear_main_leak",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "crank_scored": (
        f"{_JOURNAL}|crank + smooth|unmarked|perfect|look_polished|are_polished|mirror|like_glass|like_new|mint|unscored|undamaged|look_good|looks_good|fine|ok - not|but|scored|rough|no_good|pulley|float|turns|one",
    ),
    "shells_wiped": (
        "no|nothing|none|not_one|not_a + melting|smearing|wiped|smeared|melted|blued|burnt|wiping|bluing + bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt - but|except|debris|scratched|copper|journal|crankpin|worn|crank|muck|trash|scored|marks|others|marked",
    ),
    "shell_backs_shiny": (
        "backs|back_of_the_shells|shell_backs|backs_of_the_shells|behind_the_shells|backs_are + dull|matt|matte|no_rubbing|grey|unmarked|not_polished|no_fretting - shiny|bright|not_dull|but|oil",
    ),
    "shells_embedded_dirt": (
        "nothing|no|none|not + stuck|embedded|bedded|lodged|imbedded + lining|bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt - but|oil_stuck|except|stuck_open|shims",
    ),
    "shells_etched": (
        "no|not|none|nothing + corrosion|etching|etched|acid_attack|corroded|sponginess|pitting + bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt - but|except|terminal|wire",
    ),
    "several_journals_dry": (
        "oil_on_every|oil_on_all|every|all|none|no + crankpin|crankpins|journal|journals|throw + none_burnt|oil_on|wet|oiled|were_dry|had_oil|oily|well_oiled - but|except|several|two|three|some|others",
    ),
    "bearing_found_seized": (
        "all|every|none|no|each + rods|rod|bearing|bearings|big_ends|big_end + swing_freely|swings_freely|free_on_the_crank|free_on_the_journal|seized|free_on_its_journal|turned_freely_on|nipped + crank|journal|pin|crankpin|bearing|on - but|except|one|engine_seized|engine|water|wheel|alternator",
    ),
    "damaged_by_debris_only": (
        "not_only|isnt_only|not_just|more_than|isn't_only|not_only_the + trash|dirt|debris|grit|muck|scratches|dirt_damage & hot|heat|burnt|blued|wiped|too|starved|wiping - pan|filter",
    ),
    "worst_far_from_pump": (
        "furthest|farthest|far_ones|rear_main|last_ones|ones_furthest|end_of_the_gallery|far_bearings + no_worse|same_as|just_as_good|not_worse|no_different|as_good_as - lamp|gauge|but",
    ),
    "one_bearing_wiped": (
        "not_just_one|not_only_one|more_than_one|not_on_one|isnt_just_one + bearing|rod|main|big_end|shell|bearings|wiped|gone|alone - lamp|cylinder|plug|try",
    ),
    "all_bearings_wiped": (
        "not_all|not_every|some_of_the + bearings|bearing|mains|shells|rods + wiped|burnt|gone|run|fine|were|melted|good - new|changed|renewed|worn|measured",
    ),
    "mains_worn_unevenly": (
        "mains|main_bearings + worn_the_same|all_worn_the_same|worn_alike|evenly_worn|same_from_front_to_back|same_from_end_to_end|wear_is_even|wear_alike - not|no|two|@number|melted|wiped|but",
    ),
    "wear_at_parting_lines": (
        "nothing|no|none|not + rubbed|wear|rubbing|bright_patches|contact|polish + cap_joint|parting_line|parting_lines|joint_face|near_the_joint|split_line|parting_faces - but|except|leak|oil",
    ),
    "main_bearing_shifted": (
        "mains|main_bearings|main_shells|main_bearing + sitting_square|where_they_were_put|not_moved|none_moved|not_shifted|havent_moved|in_their_notches|none_shifted|all_seated|not_crept - but|except|one",
    ),
    "thrust_face_ploughed": (
        "thrust|thrust_washers|thrust_faces|thrust_bearing|flanges + unmarked|good|fine|smooth|sound|like_new|perfect|not_worn|undamaged - not_fine|but|except|cam|release|clutch",
    ),
    "shell_hole_mismatch": (
        "every|all|each + oil_hole|oil_holes|holes|hole + line_up|lines_up|meets|match|aligned|lined_up + bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt|oilway|oilways|block|bush|drillings - not|dont|bolt|except|but",
    ),
    "shell_edges_worn": (
        "wear|contact|bearing|bearings|shell|shells|mains|big_ends|big_end|inserts|insert|rod|rods|main|halves|lining|half-moons|brasses|b/e|brg|brgs|white_metal|whitemetal|babbitt + even_across|across_the_full_width|no_edge_wear|no_edge_loading|full_width|even_right_across|even_edge_to_edge - not|but|except",
    ),
}
