"""Words for how the engine is oiled: tank, filter, cooler, jets, trays, splash and drip."""

from __future__ import annotations

_FAULT = (
    "blocked|clogged|leak|leaking|leaks|broken|broke|cracked|loose|missing|burst|holed|failed|split"
)
_FILTER = "filter|oil_filter|element|cartridge|can|canister"
#: the finding, by words that stand together when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "dry_sump": (
        "oil|lube + tank|reservoir|container|oil_tank|frame|frame_tube|separate_tank + separate|seperate|behind|frame|other|lives|not_below|seat|boot|trunk|remote|kept|stored|carried|apart|away|in_a_tank|tube|scuttle - fuel|diesel|hydraulic|header|coolant|drained|mix|water|gearbox|steering|day|bulk|waste|container_of|catch",
        "dry-sump|dry_sump|drysump|dry_sumped|tank_lubrication + system|engine|it|has|is|tank|pump|with|setup|lubrication|three|stage - not",
        "three-stage|four-stage|three_stage|four_stage|multi-stage|multistage|scavenge + pump + tank|oil_tank|reservoir - fuel|scavenge_filter|not",
        "oil|oil's + frame_tube|frame|oil_tank|tank_in_the_trunk|in_a_can|tank_in_the_boot + not_under|in|behind - fuel|leak|frame_rail|dirt",
        "three-stage|four-stage|three_stage|dry-sump|scavenge_pump|scavenge & tank|oil_tank|reservoir|tank_in & trunk|boot|behind|seat|race|pump - fuel|water",
    ),
    "tank_tap": (
        "tap|cock|stopcock|shut-off|shutoff|shut_off|non-return|one-way_valve|check_valve|anti-drain|ball_valve|gate_valve|lever_tap|isolator|isolating_valve|anti-sump_valve|valve|petcock|non_return|ball + tank|reservoir|oil_reservoir|oil_tank|wet-sumping|wet_sumping + line|feed|pipe|tube|hose|between|from|out|under|outlet|supply|stop|with|has - fuel|water|diesel|petrol|hydraulic|day|drain_tap|relief|coolant|radiator|bleed|petrol_tap|wrench|breather",
    ),
    "several_scavenge_pumps": (
        "two|twin|three|four|several|more_than_one|pair_of|multiple|second|dual + scavenge|scavenger|return_pump|return_pumps|scavenging|scavenge_stages|scavenge_sections|pump_out|pull_oil_out|sucks_the_pan_dry|scavenge_pumps|suck_it_dry|sections_scavenge - @pressure|psi|times|hours|try|return_lines|worn",
        "scavenge + sections|stages|pumps + @number|two|three|four|several - worn|psi|@pressure|scored|one_scavenge",
        "scavenge|pull_oil_out|return_pumps|scavenges|stage_pump|pump_it_back & sections|stages|three|two|four|stage|several|@number - psi|worn|one_scavenge|filter_stage",
    ),
    "splash_lubricated": (
        "spoon|dipper|scoop|slinger|splasher|paddle|flinger|dippers|finger_on_the_rod|oil_thrower|ladle|splash + throw|fling|slap|splash|rod|con-rod|scoop|conrod|flicks|dips|dipping + oil|all_there_is|only|lube|has|base|about - missing|left_out|broken|pump_fills|trough|trays|off|forgot|fell|pump_only|crank_nose|nose|seal|bent|short|front",
        "splash + lube|lubrication|oiled|lubricated|oiling|feed|fed|system + splash|pumpless|no_pump|only|without_pump|without_a_pump|engine|just|by|it|all|entirely|simple - ring|bores|seal|trough|big_ends_only|tray|water|guard|jets",
        "no_oil_pump|pumpless|has_not_pump|no_pump|without_pump|without_oil_pump|hasnt_got_a_pump + splash|dipper|spoon|slinger|throws|fling|slaps|rod|flicks|scoop|slings|dips|paddle - missing|fuel|water",
        "splash|pumpless|dipper|splash-lubed|scoop & pumpless|no_pump|no_oil_pump|only|lube|lubrication - trough|missing|broken|leak|water",
    ),
    "trough_fed": (
        "pump|oil_pump|low_pressure_pump + fill|keeps_full|full|feed|top_up|supply|topped|keep + trough|troughs|tray|trays|pans|splash_pans|dipper_trays|splash_trays|splash_troughs|little_troughs|dipper_troughs - drain|drip|washer|windage",
        "dippers|dipper|scoops|rods_dip|rod_dippers + trough|troughs|trays|splash_pans - missing|broken|bent",
    ),
    "drip_oiled": (
        "drip|drops_a_minute|drops_per_minute|drips|dripper|sight-feed|sight_feed|drip-feed|drip_feed|total_loss|drip_oiler|drip_oilers|wick + set|oiler|brass|cup|pots|no_pump|lubrication|minute|oilers|feeds|lubricator|glass - pan|leak|leaks|floor|drain_plug|seal|sump|gasket|filter|bilge|under|from_the|driveway|oil_tank",
        "oil_cup|oil_cups|grease_cup|grease_cups|oilers|greaser|oil_pots|brass_pots|lubricators|brass_cups|greasers|oil_cans|grease_caps + lubrication|whole|only|fill|brass|drip|bearings|no_pump|all|hand|turn|instead|no_oil_pump|every|by_hand - distributor|generator|dynamo|water_pump|steering",
    ),
    "oil_burnt_with_fuel": (
        "oil + mix|mixed|premix|pre-mix|with_the_gas|with_the_petrol|with_the_fuel|in_the_fuel|in_the_petrol|in_the_gas|together_with + fuel|gas|petrol|premix|pre-mix|@number|tank & two-stroke|twostroke|two_stroke|takes|burns|runs|mix|outboard|its|ratio|it - smell|smells|diluted|dilution|level|contaminat|water|sump|leak|washing|thin|diesel|injector|contaminated|got|dipstick|like",
        "two-stroke|two_stroke|twostroke|2-stroke|2_stroke|injector_pump_that_doses|doses_it|autolube|oil_injection|oil-injection|oil_injected|injects_oil + oil|injection|premix|mix|petrol|exhaust|oil_pump|burns - four_stroke|diesel|detroit",
        "oil & injector_pump|dosing|doses|metered|metering|metering_pump|dosing_pump & exhaust|burn|burnt|burns|fuel|petrol|crankcase|throttle - diesel|leak|fuel_injector|rotary_injector|high|seal",
        "takes|gets|burns|mixes|has + oil + with_the_gas|in_the_gas|with_the_fuel|in_the_petrol|with_its_fuel|with_the_petrol|together_with_the_petrol - smell|diluted|level|sump|into|leak|blue",
    ),
    "low_oil_shut_off": (
        "switch|safety|safety_switch|sensor|cut-out|cutout|shut-off|shutdown|shut-down|automatic|automatically|auto|solenoid|fuel_solenoid|protection + stop|kill|shut|cut|turn_off|turns_off|trip|drops_out|shuts|earth|ground + own|itself|low_oil|oil_level|oil_goes|oil_low|spark|ignition|automatically|low_on_oil|oil_is_few|low_oil_level|oil_pressure_goes|engine_if|motor_if|if_oil|oil_drops|when_oil|runs_low|gets_low - stopped_by_itself|bypassed|disconnected|faulty|fuel_ran|tripped|stopped|cut_out_at|then|killed|was_shut|cooling|key|out_and",
        "low-oil|low_oil|oil_alert|oil_guard|oil-alert|low_level + switch|shut-off|shutdown|cut-out|cutout|cut-off|sensor|alert|protection + stop|has|fit|kill|cut|shut|engine|it|with|stops - tripped|faulty|replaced|bypassed|stopped|lamp|light",
        "oil_is_few|low_oil|oil_goes_down|oil_runs_low|oil_gets_low|short_of_oil|low_on_oil|oil_level_drops|oil_drops & automatic|automatically|turns_off|cut-out|cuts_out_by_itself|shuts_itself|kills_the_spark|kills_the_engine|stops_the_engine|stops_itself & motor|engine|switch|spark|itself|has - tripped|lamp|light|stopped_because|faulty",
        "automatic_cut-out|safety_switch|oil_switch|auto_shut-off|automatic_shut-off|auto_cut-out|shutdown_switch|automatic_stop|low_oil_cutout + kill|stop|cut|ground|shut + spark|generator|engine|own|itself|ignition|motor - tripped|faulty|neutral|brake|seat",
    ),
    "spin_on_filter": (
        f"{_FILTER}|tin|box|complete_box|whole_tin + spin-on|screw-on|screw_on|spin_on|throwaway|throw-away|disposable|unscrew|screws_on|screwed_on|twist_off|twist-off|twists_off|chuck_it|bin_it|throw_it_away|throw_away|screws_straight_on|spins_on|complete_box + filter|takes|is|modern|ordinary|whole|block|can|canister|tin|uses|has|type|you|one - element_inside|bowl|felt|bolt|loose|wrong|fuel|air|adapter|new|replaced|leak|paper_element|metal|cut|pressure|tested|hoses|housing|nut|cap|cartridge|puck|plate|adaptor",
    ),
    "cartridge_filter": (
        "element|filter|drop-in|drop_in|filter_element|cartridge|paper_element|paper_insert|insert + bowl|pot|long_bolt|through_bolt|centre_bolt|center_bolt|felt_washer|spring_under|plastic_cap|screw_cap|housing|canister|felt|drops_inside|drop-in|canister_with|drops_in|housing_cap|replaceable + element|inside|drop-in|bolt|goes|old|spring|type|cap|takes|has|filter|only|in - fuel|air|sediment|crushed|collapsed|metal|packed|blocked|torn|leak|new|missing|wrong|loose|found|bits|o-ring|removed|pulled|spin-on|spin_on|bypass_valve|media|relief|pressure|water|by-pass",
        "bowl|pot|canister|housing|plastic_cap|long_bolt|centre_bolt & element|filter_drops|drop-in|drops_inside|paper_element|insert|cartridge & filter|element|bolt|drop|cap|felt - fuel|air|collapsed|blocked|metal|torn|leak|sediment|wrong|missing|crushed|new",
    ),
    "filter_adapter": (
        f"adapter|adaptor|sandwich|sandwich_plate|spacer|puck|extra_ring|plate|additional_plate|take-off_plate|takeoff_plate|aluminium_puck|aluminum_puck|intermediate_plate|cooler_plate|block_off|spacer_ring|alloy_block|spacer_block|extra_plate + {_FILTER} + between|under|below|behind|screws_to|ports|hoses|sits|has|there_is|theres|with|sandwiched|beneath|motor - relief|leak|leaks|gearbox|bell|baffle|pump|air|fuel|cap|bolt|element_is|clutch|thrust|pressure_plate|missing|stuck|loose|gasket|rotor|groove|thou|end_plate|cover|lobes",
        "extra_ring|ring|plate|spacer|puck|sandwich|block_of_alloy|adaptor|adapter|intermediate_piece + between_the_can|between_the_filter|between_filter|between_block_and_filter|under_the_filter|behind_the_filter|below_filter|under_the_can|between_the_block_and - gasket|sealing|leak|rubber|o-ring",
    ),
    "remote_filter": (
        f"{_FILTER} + firewall|bulkhead|remote|away|far_from|inner_wing|inner_guard|chassis|fender|hoses|not_on_the_motor|not_on_the_engine|remotely|relocated|moved|off_the_engine|reach|frame_rail|relocation + hoses|tubes|lines|bulkhead|firewall|mounted|on|pipes|relocation|kit|two_hoses - air|fuel|leak|leaks|hose_off|burst|split|thrown|throw|cooler|puck|sandwich|adapter|adaptor|weeping|split|crushed|chuck|screws",
        "moved_it|relocated_it|mounted_it|moved_the_filter + hoses|lines|pipes & filter|reach|block|hoses_run - pump|cooler|sender|gauge|battery",
        "filter|oil_filter|it & two_hoses|hoses_run|connected_by_tubes|hoses_going|on_the_firewall|on_the_bulkhead|far_from_motor|on_the_inner_wing|remote|remotely|lines_going_to_it & filter|reach|bulkhead|firewall|motor|block|moved|hoses|mounted - fuel|air|leak|burst|cooler|puck|adapter|plate|split|weep",
    ),
    "no_oil_filter": (
        "no|without|never|hasnt|not|doesnt|none|never_had|no_place|lacks|lack + filter|filtration|filtered|oil_filter|filter_at_all|full_flow|full-flow + design|old|never|strainer|came|only|screw|ever|these|factory|gauze|mesh|had|at_all|main_flow|screen|engine|motor - air|fuel|changed|replaced|metal|debris|blocked|leak|difference|change|new|bypass_valve|without_filter_change|clean|light|pressure|help|found|cut|matter|adr|removed|valve|renewed|checked|drain|drainback|listed|wrong|right|bits|brand|inspected|took|opened|not_on|firewall|bulkhead|remote|mounted|its_on",
        "only|just|nothing_but + strainer|gauze|mesh|screen|bypass_filter|bypass_canister + no|never|not|without|main_flow|filter_not_fitted|by_design|no_filter & filter|filtered|filtration|fitted - fuel|air|blocked|metal|found|clean",
    ),
    "oil_cooler": (
        "oil|lube|lube_side|sump_oil|o/c + heat_exchanger|cooler|chilled|cooled|stack_of_plates|tube-type|plate-type|plate_type|small_radiator|little_radiator|oil_rad|oil_radiator|intercooled|own_radiator|second_radiator + raw_water|has|fit|side|goes|runs|type|filter|water|there_is|theres|with|cylinder|plates|she|lines - leak|leaks|water_in|blocked|burst|no|cool|cooled_down|cooled_off|suction|air-cooled|not|cracked|bypassed|gearbox|fuel|hydraulic|transmission|hot|too_hot|overheated",
        "oil|o/c|lube|sump_oil + chilled|plate_type|plate-type|stack_plate|tube_type|chills|cools_the_oil|o/c_fitted - too|leak|no",
        "o/c|oc|oil_cooler & fit|plate|tube|air-to-oil|type|rows|row - leak|burst|blocked|bypass|no|not|without|cracked|water_in|removed",
    ),
    "windage_tray": (
        "tray|plate|sheet|sheet_metal|tin|scraper|screen|crank_scraper|baffle_plate|flat_plate|sheet_of_tin|steel_sheet|mesh|pressed_steel|splash_plate + crank|crankshaft|mains|main_caps + under|below|between|beneath|keep|scraper|above_the_oil|out_of_the_oil|windage - loose|broken|hit|hitting|rub|cracked|touches|strike|touching|bolts|bent|drip|end|fell|rod|metal|bits|thrust|pickup|clutch|pressure_plate|damper|sump_off|flywheel|pieces|sensor|trigger|strainer_plate|dipper",
    ),
    "piston_jets": (
        "squirter|squirters|jets|jet|pcj|pcjs|sprayers|oil_sprays|nozzles|spray_nozzles|spray_bars|tiny_bent_pipes|bent_pipes|little_pipes|cooling_jets|undercrown|oil_jets|oil_squirters|spray_jets|cooling_nozzles|spray_tubes + piston|pistons|bore|bores|cylinder|cyl|undercrown|crown|crowns|under_the_pistons + fit|oil|has|each|shoot|spray|cool|squirt|bottom|every|one|under - missing|left_out|blocked|broken|loose|fell|fuel|bent_pipe|injector|carburettor|carb|leak|found|snapped|cracked|idle|main_jet|slow",
        "pcj|pcjs|oil_squirters|squirters|piston_jets|piston_cooling|bent_pipes|undercrown_jets|spray_nozzles & fit|cyl|cylinder|bore|piston|shoot|spray|under - missing|left_out|broken|blocked|fell|loose|snapped",
    ),
    "stressed_sump": (
        "sump|pan|oil_pan|bottom|carter|cast_sump|the_bottom|crankcase_bottom|casting + chassis|frame|structural|front_axle|front_wheels|holds_the_tractor|stressed|load-bearing|load_bearing|split_the_tractor|part_the_tractor|tractor_must_be_split|backbone|holds_it_together|gearbox|carries|axle|bears|front_end - hit|rock|crack|leak|clears|fouls|clear|touch|dent|off_the_frame|crossmember|hits|level|drain|bolts|lifted",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "dry_sump": (
        "wet-sump|wet_sump + engine|ordinary|it|normal|plain|pan|its|standard - wet_sumping|wet-sumping|anti|tank|sumps",
        "oil + lives_in_the_pan|lives_in_the_sump|kept_in_the_sump|carried_in_the_sump|no_separate_tank",
    ),
    "no_oil_filter": (
        "has_a|got_a|it_has|with_a|it's_got|has + full-flow_filter|full_flow_filter|full-flow_oil_filter|proper_oil_filter|full_flow_oil_filter - no|not|without|never|bypass",
    ),
    "oil_cooler": (
        "no|without|never|hasnt|@not_have|doesnt_have + oil_cooler|cooler_for_the_oil|oil_radiator|cooler_on_the_oil - leak|trouble|problem|difference|flow|leaks|damage|blockage|oil_in|issue|bypass|water|@not_checked|fault|sludge|metal",
    ),
    "windage_tray": (
        "no|without|never_had|hasnt + tray|windage_tray|tray_under_the_crank|windage|crank_scraper + crank|pan|windage|fit|on|under|sump|it - drip|bolts|contact|broken|damage|loose",
    ),
    "tank_tap": (
        "nothing|no_valve|no_tap|no_check_valve|plain_hose|no_cock + feed_line|line_from_the_tank|tank|oil_line|feed + tank|oil_tank|reservoir - fuel|blocked|wrong|found|leak",
    ),
    "stressed_sump": (
        "sump|pan|oil_pan + carries_nothing|carries_no_load|not_structural|just_tin|plain_tin|pressed_steel_pan|simple_tin - leak|dent",
    ),
}
