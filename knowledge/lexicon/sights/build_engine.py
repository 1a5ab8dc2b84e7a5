"""Words for how the engine itself is built: cams, crank, timing, fuel, ignition and where it stands."""

from __future__ import annotations

_CAM = "cam|cams|camshaft|camshafts"
_FAULT = "worn|broken|broke|snapped|sheared|missing|loose|failed|noise|noisy|rattle|knock|leak|leaks|stripped|slipped|jumped|stuck|collapsed"
_LIFTERS = (
    "lifter|lifters|tappet|tappets|follower|followers|cam_followers|roller_followers|roller_lifters"
)
#: the finding, by words that stand together when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "chain_tensioners": (
        "chain|chains|timing_chain|cam_chain|cam_chains + tensioner|tensioners|tightener|tighteners|plunger|plungers|adjuster|piston + oil|hydraulic|oil-fed|oil_pressure|gallery|engine_oil|motor_oil|oil_fed & chain|tight|tightener|stretched|hydraulic|oil|cam - slack|rattle|rattles|worn|broken|collapsed|pump_chain|failed|no_oil|pumped|leaking|spring-loaded_only|noise|start|low|jammed|loose|bits|plastic|guide|relief|stuck",
    ),
    "overhead_cam": (
        f"{_CAM}|shaft_with_the_egg-shaped|shaft_with_the_lobes|egg-shaped + head|top|up_top|cylinder_head|above_the_valves|overhead|over_the_valves|top_of_the_engine|under_the_rocker_box|upstairs|above_the_head + sit|is|up|right|on|in|live|inside|has|run - block|block_and|pushrod|pushrods|journals|journal|worn|dry|scored|bearings|bearing|seized|wiped|oil|cover|noise|no_oil|caps|off|pump|took|dropped|sensor|wear|bearing_caps|feed|gets|reach|reaching|rattle|lobe_wiped|tapping|tap|metal|cracked",
        "ohc|sohc|dohc|twin-cam|twin_cam|overhead_cam|overhead_camshaft|overhead_cams|double_overhead + engine|it|motor|job|has|is|design|type|head|head_with|four|with - no|not|isnt",
    ),
    "turbocharged": (
        "puffer|hairdryer|snail|blower|boost|turbo|turbine|exhaust-driven|charger + boost|pounds_of_boost|exhaust_manifold|exhaust|manifold|blown|own_oil_feed|on_the_exhaust|runs|hung|fit|bar_of_boost|psi_of_boost|has|it_has - oil_leak|no|not|never|without|leaf|heater|smoke|drain|replaced|battery|jump|oil_in|starved|supercharged|belt-driven|non|out|boost_pressure_low|noise|whine|seal|leak",
    ),
    "tilts": (
        "engine|motor|it|installed|installation|lump|she|unit + angle|nose_up|slant|slanted|inclined|tilted|laid_back|well_back|leans|canted|tipped|degrees_down|nose-up|slopes|sloping|heels|on_the_slope|bow_up|tail_down|shaft_angle|tips_back|laid_over|down_angle + sit|angle|installation|mounted|is|quite|beds|prop|shaft|degrees|engine|installed|stern|built|laid|in - dead_level|level|not|needle|gauge|timing|throttle|valve|rod|cylinder|cylinders|vee|bank|dwell|six|four|when|corner|hard|twin",
        "laid_well_back|slant_installation|inclined_installation|nose_up|shaft_angle|angled_installation|nose_down|tilted_on_its_beds + beds|prop|shaft|deg|engine|installation|angle|motor|degrees - level|timing",
        "installation|engine|motor & slant|inclined|angled & shaft_angle|deg|degrees|angle - needle|six|four|vee|timing|bank",
    ),
    "hydraulic_lifters": (
        f"{_LIFTERS}|valves|juice-roller|juice_roller|cups|lash_adjusters|hlas + hydraulic|self-adjusting|self_adjusting|oil-filled|oil_filled|set_themselves|juice|no_lash|no_feeler_gauge|adjust_themselves|no_adjustment|zero-lash|zero_lash|pump_up|self-setting|no_clearance_to_set|oil-fed|hydro + tappets|no|valves|lifters|on|it|has|so|set|motor|followers|cups|one|with - not|solid|mechanical|noise|noisy|tick|ticking|ticks|collapsed|rattle|clatter|bled|bleed|worn|clutch|brake|tensioner|wont_pump|stuck|tap|tapping|quiet|relief|wear|rattling|tappy|pressure",
        "no_lash|no_valve_lash|no_tappet_clearance|no_valve_clearance|no_feeler_gauge + set|needed|adjust - found|lost",
    ),
    "pushrod_engine": (
        f"{_CAM}|long_rods|push_rods|pushrods|rods_push|long_thin_rods + below|block|in_the_block|push_the_rockers|down_low|side_of_the_block|beside_the_crank|low_down|rockers|underneath|up_to_the_rockers + rods|rockers|pushrods|block|valves_above|down|sits|is|lives|push|has - no|not|isnt|bent|worn|bearing|bearings|broken|overhead|scored|tapping|sensor|bushes|gear|plug|seized|runs_in|runs_straight|iron|alloy|rod|bores|oil_galleries|journal",
    ),
    "vee_engine": (
        "two_rows|two_banks|both_banks|vee|v_form|form_of_v|in_a_v|vee_of|v-form|v_shape|v-shape|two_heads + cylinders|engine|motor|cylinder|banks|v|heads|form|pots - belt|v-belt|notch|flat|knock|tapping|noise|scored|head_gasket|valve",
    ),
    "in_a_tractor": (
        "mow|bale|plough|plow|row-crop|row_crop|rowcrop|hay|baler|harrow|field|loader_bucket|drawbar|three-point|three_point|pto|topper|farm_machine + grey|motor|it|engine|i|fifties - knotter|twine|lawn|boat|truck|car|car_park|van|ride-on|snow|lawnmower|generator|magnetic|combine|lorry",
    ),
    "in_a_vehicle": (
        "automobile|auto|motorcar|my_ride|daily_driver|daily|camper|motorhome|wagon|hot_rod|hatch|pickup_truck|commuter|family_car + problem|this|in|have|my|engine|motor|its|is - auto_store|station|autobahn|auto_parts|daily_check|checked|tractor|automatic|boat|level|service|oil_check|checks|run",
        "drive_it_to_work|drive_to_work|on_the_road|road_legal|plates|mot|registered_for_the_road + my|drive|it|engine - boat|tractor|test|trouble",
    ),
    "stationary": (
        "stands_in_a_place|stands_in_one_place|fixed_to_a_bed|bolted_to_the_floor|concrete|in_a_shed|on_a_skid|skid-mounted|pump_house|pumphouse|bolted_to_concrete|never_moves|stays_put|doesnt_go_anywhere|plant_room|powerhouse|standby_plant|engine_house|engine_room_floor + winch|engine|motor|drive|turns|pump|runs|lump|it|power|generator|bolted - boat|car|dropped|crane|paint|leak|stand|rebuild|out_of",
        "engine|motor|it|diesel + turns_the_winch|drives_the_winch|drives_a_winch|turns_a_winch|drives_a_saw|runs_a_saw_bench|drives_a_pump|powers_a_pump|turns_the_generator|powers_the_generator|drives_a_generator|runs_a_generator|drives_a_compressor|runs_the_conveyor|winch_engine|drives_the_mill - boat|truck|jeep|car|anchor|tractor",
    ),
    "diesel": (
        "oil_burner|oil-burner|compression-ignition|compression_ignition|no_spark_plugs|gasoil|gas_oil|heavy_oil|glow_plugs|glowplugs|injection_pump|inline_injection|injector_pump|black_pump|red_diesel|derv|heating_oil + it|motor|engine|lump|works|on|takes|with|runs|no|has - petrol_engine|oil_injection|two-stroke|smell|leak|leaks|dilution|faulty|in_the_oil|worn|rotary|mixed|burned|cleaned|poured",
    ),
    "water_cooled": (
        "radiator|antifreeze|coolant|water_jacket|water-cooled|water_cooled|cooled_with_water|cooled_by_water|rad|thermostat|water_pump|header_tank|raw_water|keel_cooled|liquid-cooled|liquid_cooled|freshwater_cooled|heat_exchanger + has|is|with|motor|engine|up_front|round_the_cylinders|got|there_is|theres|around|it|jacket|cooled - leak|leaks|leaking|level|lost|loses|losing|oil_in|in_oil|in_the_oil|hot|boil|boiled|low|down|new|replaced|changed|blocked|mixed|mix|no|not|mayonnaise|white|milky|temp|temperature|dropping|falling|disappear|using|gurgle|topped|top|pressure|overheat|overheated|head_gasket|sludge|stuck|oil|oily|head|never_loses|loss|drained|burst|traces|sodium|glycol",
    ),
    "mechanical_lift_pump": (
        "fuel_pump|lift_pump|petrol_pump|pump|diaphragm|membrane_pump|rubber-diaphragm|diaphragm_pump|fuel_lift_pump|feed_pump + diaphragm|membrane|primer_lever|hand_primer|priming_lever|arm_that_rides|rides_on_the_cam|off_the_cam|rubber-diaphragm|mechanical|worked_by_the_cam|driven_by_the_cam|lever_on_the_cam + block|engine|cam|motor|side|kind|bolted|arm|petrol|fuel|lift|mounted - leak|leaks|leaking|split|torn|ruptured|hole|failed|oil_pump|vacuum|oil_cooler|smell|dilut|thinned|in_the_oil|no_mechanical|burst|perished|new|gauge|seal|weeping|punctured|cracked",
        "lift_pump|fuel_pump|petrol_pump|fuel_lift_pump|no_electric_fuel_pump & diaphragm|rubber-diaphragm|diaphragm_type|mechanical|cam-driven|membrane & block|engine|mounted|bolted|cam|side - leak|split|torn|ruptured|holed|failed|dilut|smell|perished|oil_in",
    ),
    "plastic_timing_gear": (
        "timing_gear|timing_wheel|cam_gear|timing_gears|cam_wheel|cam_sprocket|timing_sprocket|camshaft_gear|gear|wheel|sprocket + plastic|nylon|fibre|fiber|tufnol|resin|resin-bonded|phenolic|celeron|composite|bakelite|cloth|fabric + teeth|tooth|made|has|is|edge|rim|timing|cam|kind - all-steel|not_plastic|bits|pieces|metal_gear|steering|pump_gear|in_the_sump|in_sump|chunks|found|stripped|shed|crumbs|oil_pump|guide|tensioner|distributor",
        "timing_wheel|timing_gear|cam_gear|cam_wheel|timing_gears|camshaft_gear & plastic|nylon|fibre|fiber|resin|cloth|phenolic|tufnol|resin-bonded & teeth|gear|toothed|wheel - bits|pieces|in_the_sump|stripped|shed|chunks|pump|found|steel_teeth|guide",
    ),
    "wet_belt": (
        "belt|cambelt|timing_belt|rubber_belt|rubber_band|toothed_band|rubber_belts|toothed_belt|rubber_toothed_band|timing_drive|bio|rubber_toothed + oil|sump|wet|bathed|oil-bathed|immersed|bio|soaked_by_design|in_the_oil|runs_wet|pan + run|bathed|turn|timing|inside|drive|in|down|bio|one_of|lives|it|wet - leak|oil_leak|shredded|fan|alternator|oil_on|bits|soaked|dry_belt|leaks|dry|drive_belt|pieces|crumbs|blocked|screen|contaminated|degraded|swollen|perished|strands|fibres",
        "bio|belt-in-oil|belt_in_oil|wet_belt|oil-immersed_belt + timing|drive|belt|engine|cam",
        "bio + timing_drive|belt|drive",
    ),
    "cam_runs_in_block": (
        f"{_CAM} + no_bearings|no_cam_bearings|no_bushes|plain_bores|unbushed|no_shells|straight_in_the|directly_in_the|right_in_the|runs_in_the_iron|in_the_iron|cast_iron|bare_metal|alloy|no_inserts|no_bush|just_runs_in|without_bearings|without_bushes|without_shells + run|turn|sit|iron|alloy|block|casting|bores|straight|head|unbushed|metal|rides|no|bores - metal_in|worn|scored|play|gasket|head_cracked|sprocket|cover|cam_bearings_worn|aluminium_cover",
        "cam|camshaft & plain_bores|unbushed|no_bushes|bare_bores|no_bearings|no_inserts|no_shells & cam|camshaft|bores|block|unbushed|head|straight - worn|scored|overhead|play|mains",
    ),
    "wire_lifter_clips": (
        f"{_LIFTERS}|roller_tappets|tappets_with_wheels + wire|wires|clip|clips|link_bar|tie_bar|link_bars|tie_bars|guide_bar|dog_bone|dogbone|retainers|spring-steel|spring_clip|guide_plate|guide_bars|wire_clips|bars + hold|held|tied|keep|retain|turning|twist|stop|square|linked|pair|by|with|guides|has - broken|broke|snapped|came|missing|loose|off|let_go|popped|fell|found|noise|pieces|worn|rocker|bits",
    ),
    "cam_phasers": (
        f"{_CAM}|vvt|vanos|phaser|phasers|cam_timing|valve_timing|timing + adjuster|adjusters|phaser|phasers|variable|vvt|gizmo|hydraulic|vario|variator|oil-worked|moves_it|advance|actuator|varies|shifts + oil|hydraulic|both|end|has|with|cams|oil-fed|cam|solenoid|timing|of - tensioner|chain|tappet|lifter|lifters|code|fault|noise|rattle|stuck|rattles|screen|clogged|bolt|broken|worn|pump|self|distributor|slow|cleaned|unplugged|unplug",
    ),
    "roller_crankshaft": (
        "mains|crank|crankshaft|main_journals|main_bearings|main + roller|rollers|ball|ball_races|needle|needles|ball_bearings|roller_bearings|roller_race|needle_cages|ball_race|races|pressed-up|pressed_up|built-up + race|cages|run|spin|on|in|mains|turns|crank|are|bearings - no_rollers|not|worn|shell|shells|rumble|pitted|broken|big_end|big_ends|rod|rods|noisy|lifter|chain|rocker|thrust|ground|journals_polished|pilot|clutch|pulley|cam|failed|found|floor|lying",
        "mains|main_bearings|crank|crankshaft & roller_race|ball_race|roller|rollers|ball|needle_cages|ball_races & mains|crank|race|crankshaft - rod|worn|failed|noisy|lifter|rocker|plain|broken|shell|cam|big_end|rumble|pitted|no_rollers|followers",
    ),
    "roller_big_ends": (
        "rod|rods|big_end|big_ends|connecting_rod|con_rod|con-rod|conrod|conrods|lower_head + roller|rollers|needle|needles|needle_bearings|caged|cages|steel_pins|pins_that_roll|caged_rollers|roller_big_end|roller_bearings|crowded + instead|no_shells|ring|run|not_shells|not_bushings|with|on|has|turn|rolls|are|no_bushings|big|end|inside|bottom - rocker|lifter|cam|worn|lift|broken|broke|gauge|gone|small_end|gauge_needle|lifters|rumble|main_bearings_only|gudgeon",
        "no_shells|no_inserts|rods|big_ends|rod|con_rod & little_rollers|needle_rollers|needles|rollers|steel_pins|needle_cage|roller_cage & rods|rod|big_ends|instead|connecting_rod|big_end - mains|lifter|rocker|cam|worn|gauge|broken|main",
    ),
    "floating_rod_bearings": (
        "rod|rods|rod_bearing|rod_bearings|big_end|shell|shells|insert|inserts|bearing|bearing_of_rod + float|floating|free_to_turn|not_locked|isnt_locked|=rotates_in_the_rod|loose_by_design|=turns_in_the_rod|spins_by_design|full-floating|full_floating|not_pinned|shared_by_both_rods|shared|serves_both|meant_to_spin|supposed_to_spin|no_tang + rod|rods|both|by_design|journal|in_the_rods|as_well|also|too|pair|two_rods|throw|throws - end_float|pin|gudgeon|crank_float|spun|tang|gone|piston|wrist|small_end|carburettor|play|worn",
        "insert|inserts|shell|shells|rod_bearing|rod_bearings & isnt_locked|not_locked|isn't_locked|floats|float|by_design|free_to_turn|not_fixed|not_keyed|meant_to_turn & rod|rods|design|throw - main|spun|carburettor|pin|piston|wrist|play",
    ),
    "common_rail": (
        "common-rail|common_rail|commonrail|crdi|crd|cdi_diesel|high-pressure_rail|high_pressure_rail|high_pressure_tube|fuel_rail|electric_injectors|piezo_injectors|electronic_injectors|got_a_rail + it|its|diesel|injection|injectors|has|one|rail|bar|from|with|engine|motor|fuel|is|a - petrol|gasoline|not|leak|pressure_sensor|no",
        "rail|common-rail|common_rail + injector_pump|bar|not_the_old|diesel|injection - frame|pan_rail|leak|sump_rail",
        "common-rail|common_rail|crdi & bar|diesel|injectors|its|electric|piezo - sensor|leak",
    ),
    "coil_on_plug": (
        "coil|coils|pencil_coils|coil_pack|coil-on-plug|stick_coils|coil_on_plug|cop|black_thing + plug|plugs|each_plug|every_plug|ignition|per_cylinder|spark_plug|on_top|each_cylinder|per_plug + own|each|on|over|sitting|one|ignition|per|every|straight - one_coil|leads|wires|plug_leads|distributor|drain|single|failed|misfire|dead|new|spring|relief|plug_wires|solenoid|clutch|swapped|heater",
        "cop|coil-on-plug|pencil_coils|stick_coils|coil_packs|individual_coils|plug-top_coils & ignition|cylinder|per_cylinder|each|plug|one_per - distributor|leads|dead|failed",
        "cop + ignition",
    ),
    "balance_shafts": (
        "balance_shaft|balance_shafts|balancer|balancer_unit|balancer_module|balancing_shafts|counterbalance|weighted_shafts|harmonic_balancer_unit|axles_with_weight|lanchester|shafts_with_weights|counter-rotating|counterweighted_shafts|balancer_shafts|eccentric_shafts|two_weighted + has|pan|crank|under|below|vibration|smooth|unit|module|spin|turn|in|with|sump|geared|there_is|theres|two - front_pulley|pulley|worn|broken|noisy|seized|bearing|bearings|chain_broke|no_balance|rotating_assembly|balanced|knock|removed|bolt|damper|snout|nose|keyway|timing_mark|wobble|loose|hub",
        "shafts|axles|two_axles|shaft + weight|weights|weighted|lopsided|off-centre|eccentric_weights + vibration|smooth|shake|balance|steady|less - oil|broken|flywheel|worn|distributor|governor",
    ),
    "auxiliary_shaft": (
        "jackshaft|jack_shaft|auxiliary_shaft|aux_shaft|intermediate_shaft|countershaft|layshaft|accessory_shaft|extra_shaft|second_shaft|idler_shaft|side_shaft|half-speed_shaft + has|bearings|fed|pump|dizzy|distributor|turn|run|spin|drive|accessories|plain|side|there_is|theres|block|bushes|pressure_fed|cambelt - missing|broken|sheared|gearbox|worn|snapped|left_out|forgot|prop|loose|fell|twisted|rounded|steering|primed|hex|drill|transmission|priming|out_of|pin|play|noise",
        "jackshaft|auxiliary_shaft|aux_shaft|intermediate_shaft|jack_shaft & bearings|pressure_fed|pressure-fed|bushes|fed|two_bearings|plain|drives|runs - worn|broken|missing|sheared|left_out|twisted|play|loose|hex|forgot",
    ),
    "idler_gears": (
        "idler|idler_gear|middle_gear|intermediate_gear|intermediate_wheel|intermediate|centre_gear|idle_gear|big_middle_gear|idler_wheel + crank|cam|timing|gear_train|gear|between|stub|geared|turns_everything|timing_gears + between|drives|has|gear|train|wheel|turn|timing|on|there_is|theres|is|with|big - belt|chain|worn|noise|noisy|pulley|whine|bush|shaft_that|bearing_worn|play|loose|broken|plate|pump_idler|pump|reverse|shaft|carburettor|screw|tensioner|missing|distributor|seized",
    ),
    "ignition_distributor": (
        "distributor|dizzy|rotor_arm|rotating_finger|contact_breaker|points|round_thing_with_all_the_spark_wires|spark_wires + ign|ignition|rotor|cap|spark|under_the_cap|under_a_cap|under_a_cover|has|coil|plug_leads|condenser|spark_distributed|distributed|leads|points_and|wires + has|with|ign|is|under|there_is|theres|rotor|on_mine|old|round|arm|it|type|coming - no_distributor|not|drive|pump|shaft|gear|removed|cracked|worn|replaced|timing|new|pulled|drill|changed|out|bad|burnt|misfire|moved|cleaned|without|tuned|seized|gauge|oil_in",
        "ign|ignition|spark & distributor|dizzy|contact_breaker|rotor_arm|points & ign|distributor|dizzy|cap - no|not|coil_on|pencil|drive|pump|gear|worn|replaced|new|changed|out|hole|stub",
        "round_thing|cap_thing + spark_wires|plug_wires|leads|spark_leads - pump",
    ),
    "split_case": (
        "crankcase|case|cases|motor_body|halves|two_halves|clamshells|crankcases|strainer_plate|round_strainer|gauze_plate|plate_with_gauze + split|two_halves|halves|vertically|parted|horizontally|parts_in|opens_in|clamshells|strainer_plate|instead_of_a_pan|no_sump|no_detachable|no_pan|no_carter|gauze + no_sump|halves|no_pan|no_detachable|instead|plate|case|crankcase|underneath|pan|vertically|two|gauze|down_the_middle - pressure|split_open|cracked|hole|broke|broken|leak|leaks|pulled|wrecked|rod|apart_now|again|thrown|shell|shells|bearing|fuel|pressurising|gasket|sealer",
        "strainer_plate|gauze_plate|little_plate_with_gauze|plate_with_gauze|round_plate|sump_plate|round_strainer|strainer_plate_underneath & instead_of_a_pan|clamshells|two_halves|no_sump|underneath|two_big|halves|no_pan|instead_of_a_sump - gasket_leak|rod|blocked|debris|metal|found",
    ),
    "poured_bearings": (
        "bearing|bearings|mains|rods|big_ends|white_metal|whitemetal|babbitt|babbit|tin_bearings|metal|soft_white_metal + poured|pour|cast_in|cast_into|cast_directly|melt_the_metal|re-run|rerun|remetalled|re-metalled|run_in_place|white-metalled|scraped_in|babbitted|line_bored|part_of_the_rod|re-metal + no_shells|bearings|block|rod|inserts|white|babbitt|metal|old|bore|have_to|mains|directly|in_it|are - not_poured|shell_had_run|inserts_fitted|oil_poured|poured_out|poured_in|oil|melted|run_out|modern",
        "no_shells|not_shells|no_inserts & melt|pour|poured|cast|white_metal|babbitt|melted_in|run_in_place & bore|bored|in|it|metal - wiped|rollers|found|needles|needle",
    ),
    "rotary_piston": (
        "rotary|wankel|rotors|rotor|turning_triangle|triangle|apex_seals|eccentric_shaft|twin-rotor|rotary_engine|triangular|peanut + no_pistons|place_of_piston|peanut|housing|engine|wankel|no_crank|no_piston|instead_of_pistons|motor|rotor_housing|apex|without_pistons|place_of_pistons|triangular_rotor - pump|distributor|cap|arm|injection|injector|outer|inner_rotor|brake|valve|lobe|gerotor|hydraulic|clearance|vane",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "overhead_cam": (
        f"{_CAM} + down_in_the_block|in_the_block|low_in_the_block|beside_the_crank|in_the_crankcase|side_of_the_block + pushrods|pushrod|is|sits|down|lives|low - bearing|bearings|bushes|no|not|sensor|runs_in|worn|plug|journal|overhead",
        "not|isnt|no|@not_an|never + overhead_cam|ohc|overhead_camshaft|twin-cam|twin_cam|dohc - and",
    ),
    "pushrod_engine": (
        "no_pushrods|no_push_rods|not_a_pushrod|isnt_a_pushrod|no_pushrod|without_pushrods + overhead|cam|engine|it|ohc|motor|in - bent|broken|missing",
        "no_pushrods|no_push_rods|no_pushrod & overhead_cam|ohc|overhead|twin-cam|dohc|sohc - bent|broken",
    ),
    "tilts": (
        "engine|motor|it|installed|she + dead_level|level_in_the|sits_level|mounted_level|perfectly_level|bolt_upright|sits_flat|upright_and_level + sits|engine|mounted|level|installed|stands|is - oil|oil_level|stopped|when_checked|water|coolant|stick|dipstick|pressure|checked|parked|ground",
    ),
    "in_a_boat": (
        "not_a_marine|isnt_a_marine|not_marine|not_a_boat|isnt_in_a_boat|not_in_a_boat|no_boat + engine|it|truck|car|tractor|motor|lump|land",
    ),
    "mechanical_lift_pump": (
        "electric_fuel_pump|electric_pump|in-tank_pump|electric_lift_pump + fuel|tank|has|got|with|in - no|not|oil|prelube|faulty|dead|priming|isnt",
    ),
    "plastic_timing_gear": (
        "all-steel|all_steel|steel|iron|metal|solid_steel|cast_iron + timing_gears|timing_gear|timing_wheels|cam_gear|timing_sprockets - tooth_missing|worn|bits|broken|plastic|metal_in",
    ),
    "roller_crankshaft": (
        "plain|shell|ordinary|insert|no_rollers|not_rollers + shell_mains|mains|main_bearings|shells_on_the_mains + no_rollers|not_rollers|plain|shell|plain_shells - worn|wiped|cam|found|oval|marked",
    ),
    "coil_on_plug": (
        "one_coil|single_coil|old_coil|one_ignition_coil + leads|plug_leads|wires|plug_wires|ht_leads|distributor|plug",
    ),
    "idler_gears": (
        "chain-driven|chain_driven|belt-driven|belt_driven|timing_chain|chain + no_gears|no_idler|not_gears|no_timing_gears|no_idlers",
        "chain-driven|chain_driven|belt-driven|belt_driven|chain|chain_drive & no_gears|no_idler|not_gears|no_idlers|no_timing_gears|no_gear_train - pump|broken",
    ),
    "poured_bearings": (
        "insert_shells|modern_shells|shell_bearings|insert_bearings|thin-wall|thinwall|shells|inserts + not_poured|modern|thin-wall|instead_of_babbitt|no_babbitt|no_white_metal|converted - wiped|worn|spun|found",
    ),
    "cam_runs_in_block": (
        f"pressed-in|pressed_in|replaceable|renewable|proper|has|separate|steel-backed + cam_bearings|cam_bushes|bearings_for_the_cam|bushes_for_the_{_CAM.split('|')[0]} + has|pressed-in|replaceable|got|it|renewable - worn|new|wiped|moved|turned|cam_bearing_hole|spun|no|without|line",
    ),
}
