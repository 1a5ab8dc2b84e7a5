"""Words that together name a finding of oil, leaks, top end or history, in whatever order they stand."""

from __future__ import annotations

_STICK = "stick|dipstick"
_OIL = "oil|it|stuff"
_SAMPLE = "sample|analysis|lab|report|test|oil_analysis|results"
_LIFTER = "lifter|lifters|tappet|tappets|follower|followers|hla|hlas"
TOGETHER_OIL: dict[str, tuple[str, ...]] = {
    "dipstick_low": (
        "quart|quarts|litre|litres|liter|liters|pint|pints + low|shy|down|short|missing|under|light - thicker|heavier|quieted|high|over|pressure|drained|used|per|every",
        f"{_STICK}|level|oil + below|under|barely|just_touching|bottom|minimum|on_min|below_min|add_mark|add_line|low_mark + min|mark|add|=stick|line|tip|minimum - not|pressure|freezing|no|fuel|coolant|pan|sump|dash",
    ),
    "dipstick_dry": (
        "dipped|dipstick|stick|checked_the_oil & bone_dry|as_dry_as_a_bone|totally_empty|completely_empty|no_oil_left|not_a_drop - wiped|outside|engine_bay|pump|rockers|filter|weather|bilge",
        f"{_STICK} + nothing|dry|no_oil|bone|@not_a_drop|not_a_trace|no_trace|not_showing|@not_showing|@not_register - magnet|sticks_to|stick_to|wiped|wipe|not_dry|gauge|foam",
    ),
    "level_correct": (
        f"{_STICK}|level|oil_level + full|right|between|correct|spot_on|fine|good|ok|max|top_line|top_mark|upper_mark|halfway + mark|marks|line|full|level|spot|is|was|was_at|on|at|checked|top - not|no|over|above|below|past|under|low|high|pressure|temp|light|lamp|gauge|inch|coolant|fuel|water|empty|filter|isnt|pump|cooler|smell|black|milky|dirty|flow|looks|colour|color|bilge|boot|idle|tank|sump_full|drain|analysis|sample|report",
    ),
    "level_high": (
        f"{_STICK}|level|oil + inch|way|well|miles|long_way|far|quart|litre + over|past|above|too_high + full|mark|max|line|top|high - not|under|below|filter|cam|pan_floor|sump_floor|gauge",
    ),
    "level_risen": (
        "over|above|past|high|higher|overfull & full|max|mark|line|top & never_added|@not_added|nobody_added|without_adding|@not_topped|never_topped|"
        "@not_put_any|havent_added|hadnt_added|not_added|never_put - pressure|coolant",
        f"{_STICK}|level|oil_level + risen|rising|rises|gone_up|going_up|creeping_up|climbing|higher_than|went_up|increasing|rise|gained - pressure|idle|bilge|temperature|temp|water_level|comes_up_with|coolant",
        "making_oil|makes_oil|growing_oil + engine|it|motor|diesel|instead",
    ),
    "oil_not_checked_long": (
        "never|@not|hasnt|hadnt|havent|nobody + check|checks|checked|dipped|looked_at + oil|level|dipstick|it + year|years|months|ages|long|weeks|ever|since|one|months_on_end|season - not_yet|havent_yet|yet|pressure|gauge",
    ),
    "oil_overdue": (
        "oil|oil_change + old|been_in|overdue|age|years|not_changed|never_changed|@not_changed|same_oil|original_oil + @distance|@years|@longtime|years|miles|overdue|late|ages|long|km|in_there - fresh|new|used|filter_only|pressure|every|leak|hose|hoses|pump|line|cooler|burn|per|low",
        "last_oil_change|last_service|last_changed + @years|@longtime|years|ages|unknown|knows - recent",
    ),
    "foam_on_stick": (
        f"{_STICK}|oil + foam|froth|bubbles|frothy|foamy|aerated|bubbly|frothing + hard|blast|run|motorway|highway|stick|dipstick|after|stopping|on|up|like - no|not|sign|milky|gallery|air|solvent|test|joint",
    ),
    "oil_thin_on_stick": (
        f"{_OIL} + water|thin|runny|watery|paraffin|kerosene + stick|dipstick|like|very|finger|fingers|as|feels - milky|level|grade|in_the|sump|w|mixed|thinner_oil|coolant|pump|cooled|drain|emptied",
    ),
    "oil_thick_on_stick": (
        f"{_OIL} + treacle|tar|molasses|honey|thick|glue|syrup|gloop + stick|dipstick|like|hangs|very|drips|black|as - not|no|pickup|screen|thicker_oil|grade|w|put|sump_bottom|filter|-",
    ),
    "oil_grade_too_thin": (
        "@thin & supposed|book|manual|should|recommended|wants|handbook|calls_for|instead_of - same|as_the|per|like|tried|changed|went|switched|put",
        "too_thin|thinner_than|wrong_grade|thinner_grade + oil|manual|book|grade|handbook|viscosity - clearance|stick",
    ),
    "oil_grade_too_heavy": (
        "@thick & supposed|book|manual|should|recommended|wants|handbook|calls_for|instead_of - same|as_the|per|like|tried|changed_to|went|switched|wants_me|wants_us|wants_to|recommended_to",
        "too_thick|thicker_than|heavier_than|too_heavy + oil|manual|book|grade|handbook|viscosity - gasket|cold|stick|black",
    ),
    "oil_grade_as_manual": (
        "@grade|@thick|@thin|grade|grade_of_oil + proper|correct|=right|recommended|specified|as_per|like_the_handbook|like_the_manual|handbook_says|manual_says|manual_asks|book_says|per_the_book|per_the_manual|handbook_calls|manual_calls|factory|same_grade|specified_grade - wrong|not|than|thicker|thinner|level|pressure|pump|filter|switched|changed|went|but|tried|cured|put|wants|instead|gauge|sender|temperature|amount|mark",
    ),
    "additive_or_flush_in_oil": (
        "flush|additive|treatment|snake_oil|friction_modifier|detergent|stop-leak|stop_leak|seafoam|sea_foam|cleaner + added|poured|put|ran|can|bottle|tin|dose|in_the_oil|used|with - not|no|coolant|radiator|brake|fuel|cooler|carb|flushed_out|contact|switch",
    ),
    "fuel_smell": (
        "smell|smells|stinks|reeks|whiff|pong|stink + petrol|gas|gasoline|fuel|diesel - exhaust|no|not|cabin|coolant|bay|leak|burning|outside",
    ),
    "coolant_level_falling": (
        "rad|radiator|coolant|header_tank|expansion|water + wanting|losing|loses|dropping|topping|drops|using|uses|disappearing|keeps|vanishing|drinking|going_down + no_leak|no_leaks|no_sign|no_drips|no_puddle|keeps|water|level|nowhere|without|slowly|always|constantly - oil_in|oil_film|oil_pressure|pump|sump|temperature|gauge",
    ),
    "oil_film_in_coolant": (
        "oil|oily|scum|mayo|sludge|brown_goo + radiator|rad|coolant|header_tank|expansion|expansion_tank|header|overflow|coolant_bottle + film|skin|slick|floating|in|layer|scum|rainbow|on_top|sludge - no|not|cooler|hose_to",
    ),
    "blow_by_high": (
        "filler|breather|oil_cap|filler_hole|oil_filler + fumes|smoke|puffing|blow-by|blowby|blow_by|chuffing|steam_train|pressure|smoking|puffs|chugging - no|not|blocked|milky|cream|mayo|sludge|left|case_crack|breathers_blocked",
        "heavy|bad|lots|much|loads|serious + blow-by|blowby|blow_by|fumes|breathing",
    ),
    "engine_ran_hot": (
        "needle & at_the_red|in_the_red|into_the_red & boiled|boiled_over|overheated|overheating|steaming|coolant|radiator|temperature|temp - oil|pressure|no|not|never",
        "coolant|water|temp|temperature|engine|motor|it + boiled|boiled_over|overheated|overheating|at_the_red|in_the_red|into_the_red|cooked|boiling_over|ran_hot|runs_hot|running_hot|red_line|steaming|boiling - needle|drops|falls|dips|down|oil_gauge|no|not|never|oil_temp|oil_temperature|pressure|@not|cylinder_head_temp|cold|hasnt",
    ),
    "oil_temperature_high": (
        "oil_temp|oil_temperature|oil_temps|oil + too_hot|very_hot|sky_high|in_the_red|into_the_red|off_the_clock|off_the_scale|through_the_roof|way_up|cooking - half|glass|window|dipstick|stick|all_the_way|trail|light|lamp|can|message|diesel|no|not|normal|pressure|never|coolant|@not",
    ),
    "lab_fuel_high": (
        f"{_SAMPLE} + fuel|dilution + %|percent|high|excess|dilution|found|showed|says - no|not|low|zero|filter|pump",
    ),
    "glycol_found": (
        f"{_SAMPLE} + glycol|sodium|potassium|antifreeze|coolant - no|not|zero|negative|never|without",
    ),
    "iron_high": (f"{_SAMPLE}|iron + iron + high|elevated|up|sky|over|double|way - normal|no|not",),
    "copper_and_lead_high": (
        "copper & lead & high|elevated|up|sky|over|double|way|both|raised - normal|ok_for|fine_for|good_for|ok_on|alone|only|pipe|wire|crimp|washer",
    ),
    "silicon_high": (f"{_SAMPLE}|silicon + silicon + high|elevated|up|sky|over - normal|silicone",),
    "aluminium_high": (
        f"{_SAMPLE}|aluminium|aluminum + aluminium|aluminum + high|elevated|up|sky|over - normal|no",
    ),
    "metals_normal": (
        f"{_SAMPLE} + metals|wear_metals|wear + normal|fine|ok|low|nothing|clean|within|unremarkable - not|but|high|except|pump|bearing",
        f"{_SAMPLE}|analysis + came_back_clean|clean|nothing_unusual|all_normal|all_clear - filter|not",
    ),
    "water_in_sample": (
        f"{_SAMPLE} + water + high|present|found|percent|trace|% - no|not|pump|jacket",
    ),
    "water_at_the_drain": (
        "water|coolant + drain|drained|plug|drain_plug + before|first|ahead|came_out|ran_out|cupful|cup|pint|litre - like|no|not|jacket|radiator|block_drain|pump",
        "water & oil & plug|drain|drained & first|before|ahead - no|pump|radiator",
    ),
    "drained_volume_low": (
        "came_out|drained|got_out|out & expecting|expected|should|holds|takes|instead|supposed & @volume|quarts|litres|pint + only|bit|just|less|barely|half|"
        "little|and_a_bit|maybe|hardly - more|over|nearly|high",
        "drained|came_out|drain|got_out|ran_out + only|just|barely|hardly|less|missing|short|instead + quart|quarts|litre|litres|liter|liters|pint|pints|holds|takes|@volume - water|gallons_of_fuel|coolant|high",
    ),
    "too_much_poured_in": (
        "overfilled|over-filled|over_filled|overfull|poured_in_too|put_in_too|too_much_oil|put_too_much - not|no|rocker|top|heads|intentionally|trial|held|steady|cured|thin|fuel|petrol|gas|diesel|stinks|reeks|reeked|smells",
    ),
    "oil_used_fast": (
        "burns|burning|uses|using|drinks|drinking|guzzles|losing|goes_through|consumes|consuming|consumption|eats + quart|litre|liter|pint|oil|quarts|litres + tank|@distance|miles|every|hour|hours|lot|heavily|week|more|fast|now|day|like - no|not|none|doesnt|water|coolant|fuel|hardly|little|smoke|burning_oil|clutch|smell",
    ),
    "fuel_gets_in": (
        "diaphragm|lift_pump|needle_valve|float|carb|injector|choke|fuel_pump|carburettor|carburetor|fuel_tap|injection_pump + split|stuck|leaking|leaks|flooding|flooded|ruptured|torn|perished|gone|dribbling|holed|sticking|filled|failed|punctured|weeping|passing - not|no|new|crankcase|gauge|replaced|relief|oil_pump|vacuum|main_bearing|joint_on_the_block|gasket_on_the_block|fuse|drips",
    ),
    "coolant_gets_in": (
        "head_gasket|liner_seal|liner_seals|cooler|heat_exchanger|oil_cooler|cylinder_head|liner|block|water_jacket + holed|blown|leaking|cracked|gone|failed|perished|porous|corroded|breached|leak|split|let & water|coolant|sea_water|seawater|antifreeze|milky|emulsion|mayo|mayonnaise - no|not|fins|oil_everywhere",
    ),
    "cooler_face_blocked": (
        "radiator|cooler|fins|grille|cooler_fins|matrix + chaff|mud|dirt|leaves|insects|bugs|fluff|seeds|weed|grass|dust|matted|caked|plastered|packed - oil_in|inside|sludge|swarf|metal|bearing|debris|not|clean|pump|hose",
    ),
    "oil_milky": (
        "oil|sump|dipstick|drained|stick + milky|milkshake|mayonnaise|mayo|coffee|latte|emulsion|emulsified|cream|creamy|white|custard|grey_sludge|chocolate_milk|cappuccino - no|not|filler|cap|breather|@not|under_the|smoke|isnt|metal|wasnt|under",
        "dipstick & milky|creamy|mayonnaise|emulsified|emulsion|milkshake + sludge|gunk|goo|slime|stuff|gloop|mess|on_it - no|not|cap|filler|breather|isnt|wasnt|free",
        "sea_water|seawater|salt_water|water|coolant|antifreeze + in_the_oil|into_the_oil|in_oil|mixed_with_the_oil - no|not|pressure_in",
    ),
    "cream_in_filler_only": (
        "cream|mayo|mayonnaise|gunk|emulsion|milky|white_stuff|goo|yellow_goo + cap|filler|oil_cap|under_the_cap|breather & only|none|but|just|clean|clear|stick_is|not - sump|oil_is_milky",
    ),
    "sludge_seen": (
        "sludge|black_jelly|gunk|tar|black_goo|gloop|gunge|treacle + sump|pan|rocker|valve_cover|covers|filler|head|drain|engine|oil|everywhere|inside|thick|inch - no|not|screen|pickup|strainer|filter|line|trap|traps|gauge|drillings|element|cooler|free|without|pleat|sender|port|holes|bit_of|clean|coolant|radiator|returns",
    ),
    "glitter_in_oil": (
        "oil|drained|stick|dipstick|tray|drain + glitter|glittery|sparkle|sparkles|metallic|shimmer|metal_flake|glistening|sparkly|glittering|silver - no|not|filter|magnet|free|pump|without|tank|clean",
    ),
    "oil_black_and_gritty": (
        "oil|it + gritty|grit|black_and_thick|sticky|like_grinding|abrasive - no|not|filter|pickup|shells|bearings",
    ),
    "oil_looks_clean": (
        "oil + clean|golden|honey|amber|fresh_looking|new_looking|clear + looks|is|was|still|looked|colour|color|nice|like - not|no|but_metal|filter|cleaned|pump|pan|passages|gallery|line|cooler|change|changed|screen|tank|leak|clean_oil_came|hole|port|stick_clean|cap",
    ),
    "oil_seen_outside": (
        "oil + down_the|all_over|running_down|pouring|covered|dripping|coated|leaking|everywhere|weeping|streaming|all_down_the + block|engine|outside|exhaust|back_of_the|crossmember|underneath|engine_bay|bellhousing|starter|subframe|sump_rail|undertray - no|not|bone|dry|inside|bearing|gallery|drill|priming|rocker_shaft|hole_in_the_gallery|distributor|lifter|tensioner|sender|cam|valley|bores|rockers|pressure_out|heads|valve_covers_off|cover_off|poured|filter_boss|trailer|level|let",
        "oil & on_the_underside|over_the_underside|up_the_underside|on_the_inside_of_the & bonnet|hood|cowl|cover|lid - fire|cap|filler|light|no|not|rocker|valve_cover",
    ),
    "oil_on_the_ground": (
        "puddle|pool|drips|patch|slick|spots|stain + parked|floor|garage|drive|driveway|under|ground|where_it|road|overnight|concrete - spot_where|spot_on|the_spot|no|not|water|bilge|trailer|coolant|head|sump",
    ),
    "oil_on_bodywork": (
        "oil + bonnet|hood|windscreen|windshield|bumper|tailgate|trailer|wheel|wheels|transom|cowling|cowl|screen|back_of_the_car|rear_of_the_car|tyre|tire|visor|leg|fuselage|wing|caravan|boots + over|on|down|covered|up|coated|sprayed|slick|streaks|thrown|along - no|not|pickup|gauze|strainer|clean|mesh|under_the_bonnet|dry|under_the_hood",
    ),
    "seal_found_pushed_out": (
        "seal + walked|pushed|popped|blown|spat|come|out + out|cover|bore|place|seat - weep|no|not|leak|pump|valve_stem|filter|sender|gasket|off",
    ),
    "seal_or_gasket_wet": (
        "seal|rear_main|gasket|timing_cover|rocker_cover|valve_cover|front_cover + weeping|leaking|dripping|wet|oozing|seeping|leak|leaks|weeps|seeps|drips|pouring - no|not|pump|filter|pickup|dry|water|head_gasket|fuel|sender|drill|distributor|inside",
    ),
    "several_seals_at_once": (
        "several|all|three|every_seal|every_gasket|every_one|multiple|both|many + seal|seals|gaskets|gasket + leaking|weeping|leak|started|pushing|blowing|oozing & once|same_time|together|suddenly|at_once|all|started - no|not|new|fitted|replaced",
    ),
    "filler_cap_found_off": (
        "filler|filler_cap|oil_cap|oil_filler_cap|dipstick + left|off|forgotten|missing|sitting|not_on|loose|never_put|unseated|not_pushed|@not_replaced|not_back - nothing|low|oil_left|left_on|fell_off|gone|comes|bearing|relief|popped|blew|distributor|rotor|dry|main|radiator|smoke|stick_is_off|runs_off|marks",
    ),
    "dipstick_pushed_out": (
        "dipstick + popped|pushed|blown|blew|spat|jumped|out_of_its_tube|out_of_the_tube|shot|lifted|rose - cap|filler|pulled",
    ),
    "filter_can_holed": (
        "filter|can + =punctured|=rusted|rubbed_through|=pierced|=holed|hole_in_the_side|stone_through|hole_in_it|hole_in_the_filter - screen|hose|bypass|cut_a_hole|no|not|collapsed|gasket",
    ),
    "accessory_pad_wet": (
        "fuel_pump|lift_pump|vacuum_pump|tach_drive|mechanical_fuel|magneto|governor|power_steering_pump|hydraulic_pump|blanking_plate|compressor + leak|leaks|leaking|drips|weeping|wet|oil|dripping|weeps + joint|gasket|pad|base|block|mounting|face|flange|seal|around - no|not|fuel_in|diaphragm|dry|new",
    ),
    "cup_plug_found_out": (
        "core_plug|core_plugs|welch_plug|frost_plug|freeze_plug|cup_plug|soft_plug|expansion_plug|blanking_plug + out|blew|blown|popped|missing|fell|gone|leaking|dropped|pushed|shot|rotted - no|not|new|replaced",
    ),
    "oil_trail_behind": (
        "=trail|=trails|line_of_oil|=stripe|breadcrumbs + behind|lane|road|left|all_the_way|back|drive|up|down|oil - slick_down_the_back|no|trailer|trailing",
    ),
    "oil_loss_fast": (
        "emptied|dumped|=lost|pumped_out|pumped_the_lot|=pumped|spewed|drained_itself|puked + all_its_oil|all_the_oil|all_of_its|everything|whole_lot|the_lot|entire|its_oil|sump|@volume|oil_in - foot|drill|primed|pressure|power|no|not|tank|coolant|fuel|i_drained|some|drained_the|bit|little|wheel|prime|never|count|little_oil",
        "@volume + lost|gone|disappeared|vanished|dumped + minutes|miles|hour|@time|@distance - every|per|over_a_year",
    ),
    "leaks_only_running": (
        "leak|leaks|drips|drip|weeps|leaking|dribbles & only|just & running|runs|engine_on|revs|revved|revving|under_pressure - no|not|oil_light",
    ),
    "oil_sprayed": (
        "oil + spray|spraying|sprayed|squirting|squirted|jet|fountain|mist|squirts|sprays|spurting|geyser - no|not|hole|drill|priming|rockers|rocker|cover_off|port|crank|cranked|cam|sender|piston|jets|squirter|head|lifter",
    ),
    "oil_from_bellhousing": (
        "bellhousing|bell_housing|clutch + oil|dripping|leak|leaking|wet|drips|coming|slips + from|out|on|with|oil|of|hole - no|not|cable|fluid|dry|pressed",
    ),
    "oil_line_found_broken": (
        "oil_line|oil_lines|oil_hose|oil_pipe|cooler_hose|cooler_line|cooler_pipe|feed_pipe|hose_to_the_filter|braided_hose|filter_hose|cooler_hoses + burst|split|chafed|broken|off|popped|cracked|let_go|rubbed_through|fractured|came_off|worn_through|blew|blown|perished|failed|parted|snapped - gauge|no|not|turbo|weeping|fuel|capillary|inside|new|through|blew_out|compressor|airline",
    ),
    "no_oil_at_rockers": (
        "rocker|rockers|valve_gear|head|top_end|rocker_shaft|cam + no_oil|hardly_any|hardly_any_oil|dry|little_oil|@not_any_oil|barely_any|starved|no_flow|not_a_drop|bone|@not_getting|not_reaching|@not_reach|@not_much_oil|just_a_dribble - filter|not_dry|gasket|bearing|dipstick|cylinder|sump|gauge|plenty_of_oil_in_the_rocker",
    ),
    "rockers_flooded": (
        "rocker|rockers|valve_gear|rocker_box|valve_cover|rocker_cover|top_end|heads|head + flooded|flooding|swimming|awash|drowning|full_of_oil|too_much_oil|spraying|spray|squirting|gushing - no|not|gasket|bolts|leaks|outside|leaking|trapped",
    ),
    "lifters_quiet": (
        f"{_LIFTER}|top_end|valve_gear|valvetrain + quiet|silent|dead_quiet|no_noise|no_tick|no_ticking|hush|not_a_sound|whisper|no_clatter - not|noisy|until|after|shut_up|then",
    ),
    "valve_gear_found_dry": (
        "rocker|rockers|tips|cam|followers|valve_stems|rocker_tips|tappets + dry|blue|blued|scored|burnt|galled|no_oil_film + tips|bone|blue|scored|burnt|found|dry|rust|shafts|seized|arms - crank|getting|oil_to|pressure|bearing|no_oil|not|lobe|lobes|little|hardly",
    ),
    "rocker_shaft_found_worn": (
        "rocker_shaft|rocker_shafts|rocker_bush|rocker_bushes|rocker|rockers + ridges|worn|grooved|end_plug|sloppy|steps|loose|wear|plug_missing|ridged - no|not|cover|box|tips|dry|quiet|seal",
    ),
    "cam_lobes_wiped": (
        "lobe|lobes|cam + wiped|flat|rounded|gone|worn|wearing + cam|lobe|lobes|off|two|one|flat - bearing|bearings|journal|thrust|cover|not|no|gear|sensor|chain|timing",
    ),
    "cam_bearing_found_bad": (
        "cam_bearing|cam_bearings|camshaft_bearing|camshaft_bearings|cam_bush|cam_bushes|cam + spun|worn|walked|loose|turned|wiped|out|copper|gone|moved|bad + bearing|bearings|bush|bushes|cam_bearing|cam_bearings - rod|main|not|no|new|ok|think|big|i_think|told",
    ),
    "lifter_out_of_bore": (
        f"{_LIFTER} + jumped|popped|out|come|came|fell|dropped|spat|left|climbed|above + bore|guide|block|hole|out|gallery - noise|noisy|ticking|not|no|worn|pumped|pump|quietens|rattle|clatter|taken|took|pulled|bled",
    ),
    "lifters_loose_in_bores": (
        f"{_LIFTER} + rock|loose|sloppy|wobble|worn|slop + bore|bores|hole - noise|no|not|out_of|come",
    ),
    "lifters_found_drained": (
        f"{_LIFTER} + collapsed|drained|spongy|pumped_down|bled_down|squashed|soft|empty|leaked_down|flat|@not_pumped - noise|no|not|quiet|push",
    ),
    "pushrod_off_or_bent": (
        "pushrod|pushrods|push_rod|push_rods + bent|off|popped|loose|fallen|jumped|out|bowed - tube|seal|straight|no|not|engine|v8|four|six|cover|twin|diesel|petrol|gasoline",
    ),
    "turbo_shaft_loose": (
        "turbo|turbocharger + shaft_play|play|wobble|slop|loose_shaft|touching_the_housing|rocks - banjo|feed|no|not|hose|within|pipe|little",
    ),
    "turbo_shaft_stiff_or_blued": (
        "turbo|turbocharger + stiff|blued|blue|seized|tight|scored|@not_spin - smoke|no|not|pipe|hose|feed|banjo|union|finger|line|drain",
    ),
    "turbo_feed_found_blocked": (
        "turbo|turbocharger + feed|pipe|line|banjo|supply + coked|blocked|kinked|carbon|choked|sealant|plugged|restricted|carboned|solid - no|not|leak|gauge",
    ),
    "turbo_line_leaks": (
        "turbo|turbocharger + feed|pipe|line|banjo|supply|hose + leak|leaking|burst|cracked|split|weeping|off|chafed|broken|loose - no|not|coked|intercooler|air|boost|blocked",
    ),
    "turbo_failed": (
        "turbo|turbocharger|turbos + let_go|failed|blew|blown|died|gone|exploded|went|grenaded|killed|second|seized - not|no|feed|hose|gasket|pipe|line",
    ),
    "turbo_shrieks": (
        "turbo|turbocharger + shriek|howl|whine|scream|screaming|grinding|screech|whistle_loudly|siren - no|not",
    ),
    "tensioner_slack": (
        "tensioner|chain + no_tension|slack|soft|run_out|hanging|flopping|loose|@not_hold|collapsed|fully_extended|flapping - pump|door|seal|gasket|oil_pump|belt|rattle|snapped|guide_bits|wallet",
    ),
    "tensioner_seal_absent": (
        "tensioner + seal|gasket|o_ring|oring|bolt|plug + missing|cut|torn|loose|left_out|no|without|hard|perished|forgotten - new|fitted",
    ),
    "restrictor_absent": (
        "restrictor|restrictors|metering|jet + left_out|missing|absent|forgotten|drilled_out|drilled|removed|not_fitted|@not_there|never_fitted|without|no - piston|carb|main_jet|main_jets|squirter|ski|fitted_a",
    ),
    "distributor_seal_bad": (
        "distributor|dizzy + o_ring|oring|o-ring|seal|ring|body + cut|missing|pieces|two|hard|perished|worn|broken|flat|split|gone|no|wrong - cap|gear|arm|clamp|points|rotor|teeth|stationary",
    ),
    "piston_jet_found_broken": (
        "squirter|squirters|piston_jet|piston_jets|oil_jet|oil_jets|cooling_jet|cooling_jets|spray_jet|jet + broken|missing|snapped|loose|fell|bent|cracked|off|left_out|gone|dropped|stuck_open - carb|no|not|main_jet|idle_jet|ski|boat|fuel|drive",
    ),
    "phaser_leaks": (
        "phaser|phasers|variator|vvt_unit|vvt_gear + rattle|leaks|leaking|play|loose|worn|slop|past - new|replaced|no|not",
    ),
    "jets_run_at_low_pressure": (
        "jets|squirters|jet + running|open|dribbling|squirting|flowing|spray + idle|low_pressure|priming|all_the_time|@pressure|tickover|should_be_shut - ski|carb|no|fuel",
    ),
    "worked_hard": (
        "towing|towed|tow|hauling|=pulling|ploughing|plowing|lugging|flat_out|full_throttle|full_load|full_power + caravan|trailer|boat|horsebox|load|summer|hours|hill|hills|mountain|day|miles|all|long|season|grade|pass|race|plough|field|bank - towed_home|towed_in|trailered|never|not|no|tow_truck|recovery|towed_it|got_towed",
    ),
    "history_unknown": (
        "no_idea|@not_know|second_hand|secondhand|second-hand|auction|scrapyard|breakers|breaker + done|history|motor|engine|past|bought|mileage|miles|came_from|been|what - cluster|gauge_from|dash|sender|pump_from|part|used_to|why|where|how_to|noise|lights|cause|problem|oil_used|used_it|used_the|gauge|used_oil|to_do",
    ),
    "earlier_breakage": (
        "valve|rod|piston|cam|chain|belt|rocker|pushrod|lifter|gear|ring|bearing|engine|motor|spring + dropped|broke|snapped|blew|failed|went|shed|blew_up|blown + ago|while_back|years_back|months_back|weeks_back|earlier|previously|before|last_year|once|last_summer|last_winter|last_season - dropped_the_engine|at_once|alarm|switched|back_in|not|no|just|now|today|then|day|minute|noise|pressure|seconds|minutes|good_before|sump|chain_to",
    ),
    "several_alike": (
        "another|other|others|two|both|several|many|all|mates|sister + owner|owners|same|engine|engines|boat|boats|people|cars|forum|models + same|exactly|identical|reading|alike|similar|too|likewise|report - spring|springs|borrowed|feel|feels|gauge|gauges|different|new|not|test|day|time|engine_bay|ports|seals|at_the_same|same_age|same_hours|same_year|only|same_time|same_place|same_as_before|the_same_problem_again|oil|still_the_same",
    ),
    "service_neglected": (
        "never|rarely|seldom|neglected|hardly|skipped|irregular|@not + serviced|maintained|maintenance|looked_after|oil_changes|oil_change|changes_the_oil|changed_the_oil + ever|never|it|properly|regularly|years|the|been|done|him|her|them|owner|was|were|oil|out|few|much - not_yet|gauge|filter_change_cured|before|since|overdue|always",
    ),
    "idles_long": (
        "short|school|to_the_shops|village|stop-start|=idling|=idles|delivery_round|pottering + =trips|=run|hours|=long|mostly|journeys|=rounds|town|traffic|all_day - pressure|light|low|gauge|dropped|rough|fast|needle|warm|hot|cold|flicker|psi|bar|pulling|hard|return",
    ),
    "stood_long": (
        "sat|stood|parked|stored|laid|left|standing|sitting|unused|lying_idle|stood_idle|sat_idle|been_idle + @longtime|years|barn|decade|winters|a_year|eighteen_months|long_time|shed|since_@year - gauge|needle|pressure|light|overnight|at|pump|used_to|reading|on_the_stand",
    ),
}
TOGETHER_OIL_ABSENT: dict[str, tuple[str, ...]] = {
    "oil_seen_outside": (
        "bone_dry|dry|no_leaks|no_leak|not_a_drop|no_drips|no_sign_of_a_leak|no_oil_leaks|spotless|@not_leaking|leak_free + block|outside|underneath|engine|anywhere|externally|visible|seen|found|under|around|garage_floor - dipstick|stick|coolant|rad|rockers|sump_was|filter|head|water|gauge|cranked|sender|line|port|inside|radiator|fuel",
    ),
    "rockers_flooded": (
        "@not_flooded|not_flooding|@not_excessive|no_flooding + rocker|rockers|valve_gear|top",
    ),
    "oil_milky": (
        "no_water|no_milkiness|not_milky|no_mayo|no_mayonnaise|no_emulsion|no_coolant|@not_milky|no_milky|no_cream + oil|stick|dipstick|cap|drain|sump|in|looks",
    ),
    "fuel_smell": (
        "no|@not|without + smell|smells|whiff + petrol|fuel|gas|gasoline|diesel - exhaust",
    ),
    "no_oil_at_rockers": (
        "plenty|lots|loads|good|healthy|masses|enough + oil + rocker|rockers|top|up_top|valve_gear|head|cam|upstairs - hardly|barely|little|too|pressure|return|trapped",
    ),
    "oil_overdue": (
        "oil|oil_change + fresh|just_changed|new|recent|recently|changed_in|every_@distance|regularly|religiously|few_hundred|on_time|always_changed|every_5000|every_3000|every_year + changed|change|oil|miles|in|on|always|put|done|serviced - @toofar|overdue|never|not|needed|due|no|pump|gauge|sender|switch|filter_only|hose|leak|bearings|cooler|pressure|line|pan|seal|gasket",
    ),
    "service_neglected": (
        "oil|serviced|service|changes|changed + every|regularly|religiously|always|full|on_the_dot|without_fail + @distance|miles|months|year|hours|history|regular|record|since_new|dealer|winter|spring|season|stamped|2000|3000|5000|6000 - never|not|time_i|time_we|no|hardly|quart|litre|burns|using|uses|top|litres|used|cures|overdue|leak|lost",
    ),
}
