"""Words for how the oil pump is built, what turns it, and where its relief valve sits."""

from __future__ import annotations

#: what else has a pump of its own
_NO_OIL = "fuel|water|bilge|injection|hydraulic|steering|vacuum|lift|raw|coolant|washer|petrol|diesel_pump|injector"
_PUMP = "oil_pump|pump|oilpump|lube_pump"
_TURNS = "drive|driven|turn|spin|run|rotate|rotation|operate|power|work|carry|movement|motion|take|couple"
_RELIEF = (
    "relief|relief_valve|regulator|regulating_valve|pressure_valve|valve_of_pressure|valve_for_the_pressure|pressure_regulator|blow-off|"
    "blow_off|blowoff|prv|opv|bypass_plunger|bypass_piston|regulating_plunger|pressure_plunger|relief_plunger|relief_spring|dump_valve|"
    "pressure_limiting_valve|overpressure_valve|safety_valve|pressure_control_valve|release_valve"
)
_SITS = (
    "is|sit|live|built|inside|located|mounted|fit|in|part_of|housed|integral|built-in|found|lodged"
)
_FAULT = (
    "stuck|sticks|stick|sticking|jammed|jam|broken|broke|worn|scored|seized|debris|metal|dirt|missing|weak|leaking|leak|crack|"
    "cracked|loose|cleaned|replaced|changed|checked|stripped|sheared|new"
)
#: the finding, by words that stand together when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "pump_on_distributor_shaft": (
        f"distributor|dizzy|dissy|ignition_axle + {_TURNS} + {_PUMP}|pump_shaft - {_NO_OIL}|chain|no_distributor",
        f"stub|dummy|hex_rod|hex_shaft|tang|blade|intermediate_rod|quill|slotted_shaft + distributor|dizzy + {_PUMP} - {_NO_OIL}|broken|sheared|snapped|missing|rounded|gone|not",
        "pull|remove|out|lift|take + distributor|ignition|dizzy & prime|pre-oil|drill & drill|down_the_hole|hole|pump_shaft - pressure|psi|no_pressure|spins_free",
        f"{_PUMP} + end_of_the_distributor|bottom_of_the_distributor|below_the_distributor|under_the_distributor|distributor_shaft|distributor_axle|distributor_drive|dizzy_shaft|off_the_distributor|from_the_distributor - {_NO_OIL}|{_FAULT}|end_play",
        "distributor|dizzy + was|went|used_to_be|hole|place + dummy|stub|dummy_shaft|blanked - sheared|broken|gauge|sender",
    ),
    "pump_on_skew_gear": (
        f"{_PUMP}|pump_shaft|pump's|pump_drive + skew|worm|helical|spiral|bevel|bevelly|screw_gear|slanted + cam|camshaft|off_the_cam - {_NO_OIL}|distributor|dizzy|{_FAULT}",
        f"{_PUMP}|pump_shaft + own_gear|own_pinion|its_own_gear|its_own_drive_gear|own_skew_gear|separate_gear + cam|camshaft - {_NO_OIL}|broken|worn|stripped",
    ),
    "pump_on_crank_nose": (
        f"{_PUMP}|pump_rotor|pump_gear|gerotor|inner_rotor + crank|crankshaft + nose|snout|front_end|front_of_the_crank|goes_through|through_it|round_the_crank|around_the_crank|round_the_front|on_flats|concentric|directly_on|right_on|straight_on|behind_the_pulley|behind_the_damper|front_of_crank|straight_off - {_NO_OIL}|chain|sprocket|{_FAULT}",
        f"{_PUMP}|gerotor + front_cover|front_lid|timing_cover|front_case|front_housing|front_plate|timing_case + mounted|built|in|inside|behind|part_of|houses|lives & crank|crankshaft|built|part_of|is_in|sits_in|lives_in|houses - {_NO_OIL}|{_FAULT}|gasket|outside",
        f"crank|crankshaft + {_TURNS} + {_PUMP}|gerotor + direct|directly|straight|itself|nose|snout - {_NO_OIL}|chain|sprocket|gear_train",
        "pump|oil_pump|gerotor + ring|rotor|gear|flats + front_of_the_crankshaft|front_end_of_the_crank|round_the_crank|crank_nose|crank_snout|front_of_the_crank|right_round_the - fuel|water|bilge|injection|hydraulic|steering|vacuum|raw|coolant|worn|broken|leak",
    ),
    "pump_on_cam_nose": (
        f"cam|camshaft + tongue|tang|blade|slot|slit|tenon|dog|key|groove|notch|slotted|end + {_PUMP}|pump_shaft|pump_tongue - {_NO_OIL}|skew|distributor|chain|{_FAULT}|gear_off|sprocket|rounded|sheared",
        f"{_PUMP} + end_of_the_cam|end_of_camshaft|end_of_the_camshaft|cam_end|nose_of_the_cam|cam_nose|back_of_the_cam|rear_of_the_cam|camshaft_end|off_the_end_of_the_cam - {_NO_OIL}|{_FAULT}",
        "pump|oil_pump|gear_pump|pump_tongue|its_tang & tongue|tang|blade|slit|slot|dog|key|groove & end_of_camshaft|end_of_the_camshaft|cam_end|end_of_the_cam|leaves_the_cam|in_the_cam|camshaft_end|cam|camshaft - fuel|water|bilge|injection|hydraulic|steering|vacuum|raw|coolant|distributor|broken|sheared|worn|chain|skew|rounded|gauge|crank",
    ),
    "pump_outside": (
        f"{_PUMP} + timing_gear|timing_gears|gear_train|front_gears|geartrain|front_gear_train + {_TURNS}|off|hang|from|on|mesh - {_NO_OIL}|{_FAULT}|skew|relief",
        f"{_PUMP} + plain_view|outside_the_engine|outside_of_the_engine|on_the_outside|bolts_to_the_outside|bolted_to_the_side|side_of_the_block|side_of_the_crankcase|external|externally|in_plain_sight|side_of_the_engine|outside_the_block|outside_of_the_block - {_NO_OIL}|scavenge|relief|{_FAULT}|gasket",
        "turned|driven|run|runs|spun|geared + front_gear_train|timing_gears|gear_train|timing_gear_train|front_gears + it|its|pump|oil_pump - fuel|injection|cam|water|distributor|magneto",
    ),
    "pump_on_chain": (
        f"chain|bicycle-type_chain + {_PUMP} + {_TURNS}|drive|own|just_for|separate|small|sprocket|hang|its_own|second - {_NO_OIL}|{_FAULT}|slack|tensioner_slack|off|lost|teeth|tooth|gone|jump|snapped|links|stretch|timing_chain_and",
        f"{_PUMP} + chain_drive|chain-drive|chain-driven|chain_driven|sprocket + chain|own|drive|has|wears|with|off|is|its - {_NO_OIL}|{_FAULT}|slack|snapped|lost|teeth|tooth|came|stretch|nut|bolt",
        "pump|oil_pump & chain_drive|chain-drive|chain_driven|own_chain|small_chain|separate_chain|hangs_on_a_chain|on_a_chain|pump_chain & own|sprocket|drive|separate|crank|tensioner - fuel|water|bilge|injection|hydraulic|steering|vacuum|raw|coolant|broken|snapped|slack|worn|off|lost|teeth|tooth|plastic|jumped|timing_chain_rattle|stretched|rattle",
    ),
    "pump_on_auxiliary_drive": (
        f"auxiliary|aux|accessory|jackshaft|jack_shaft|intermediate_shaft|layshaft|countershaft|gearbox|transmission|pto|clutch_basket|clutch_gear|primary_drive|auxiliary_shaft + {_TURNS}|ex|off + {_PUMP} - {_NO_OIL}|{_FAULT}|distributor_drive|bearing|pan",
    ),
    "gear_pump": (
        f"{_PUMP}|type|inside|op + two_cogs|twin_gears|two_gears|pair_of_gears|pair_of_cogs|two_little_cogs|two-cog|two_cog|twin_gear|two-gear|two_toothed|toothed_wheels|spur_gear|spur_gears|meshing_gears|gears_side_by_side|two_pinions|two_small_gears|two_straight_gears|pair_of_toothed|gear_type|gear-type|twin_spur|two_little_gears|cogs - {_NO_OIL}|{_FAULT}|timing|gearbox|drive_gear|idler",
        "pump|oil_pump|op_type|op + two-cog|twin_spur|twin-cog|two_cog|spur|cog|cogs|geared_wheels - worn|broken|timing|fuel|water|bilge|injection|hydraulic|steering|vacuum|raw|coolant",
    ),
    "rotor_pump": (
        f"{_PUMP}|type|op + gerotor|trochoid|trochoidal|eccentric_rotor|star|lobed_rotor|rotor_type|rotor-type|inner_and_outer|rotor_inside|rotor_in_a_ring|star_inside|star_shaped|star-shaped|four_lobe|five_lobe|lobe_rotor|rotor_and_ring|rotor_style|epicyclic|crescent - {_NO_OIL}|{_FAULT}|clearance|distributor|distributor_rotor|cap",
        "gerotor|trochoid + type|style|design|inner|outer|it|unit|is - hydraulic|fuel|clearance|worn|steering|scored|lip",
        "inner|star + outer|ring + rotor|lobe|spinning|spins|inside|inside_ring - cap|distributor|bearing|race|worn|clearance|circlip|piston|@length|cracked",
        "op|pump_type|oil_pump|pump & eccentric_rotor|rotor|gerotor|lobe|trochoid & lobe|inner|outer|star|4/5|ring|type - worn|distributor|clearance|scored|fuel|water|bilge|injection|hydraulic|steering|vacuum|raw|coolant",
    ),
    "variable_pump": (
        f"{_PUMP}|it|gerotor|vane_pump + solenoid|electric_valve|electronic|electrically|plug_on_the_pump|control_valve|two-stage|two_stage|dual_stage|high_and_low_stage|variable|computer|ecu|duty_cycle|pwm|electronically & deliver|delivery|output|stage|volume|flow|displacement|control|less_or_more|more_or_less|varies|changes_how_much|high_and_low|pressure_mode - {_NO_OIL}|{_FAULT}|fixed|vvt|phaser|unplug|fault|code",
        f"variable|switchable|two-stage|two_stage|map_controlled|demand_controlled|electronically_controlled|computer_controlled + {_PUMP}|vane_pump|displacement_pump|flow_pump - {_NO_OIL}|scavenge|high_volume|timing",
        "pump|oil_pump & changes_how_much|delivers_less_or_more|how_much_it_delivers|delivers_less|changes_its_output|two_outputs|high_and_low_output|varies_its_output - fuel|injection|water",
    ),
    "relief_in_pump": (
        f"{_RELIEF} + pump|oil_pump|pump_cover|pump_body|pump_housing + {_SITS} - {_NO_OIL}|{_FAULT}|block|front_cover|filter|second|another|shim|spring_and|not_in|took|pulled|hangs|open|closed|passages|and_pump|or_pump|after",
        f"{_RELIEF} + dropping_the_pump|taking_the_pump|pump_off|remove_the_pump|pump_out|strip_the_pump|dismantle_the_pump|pump_apart + get|reach|only|by|until|without|without_taking|have_to|need_to|accessible - {_NO_OIL}|{_FAULT}|found",
    ),
    "relief_in_block": (
        f"{_RELIEF} + block|crankcase|front_cover|filter_head|filter_housing|filter_base|timing_cover|filter_mount|side_of_the_block|engine_block|filter_bracket|filter_adapter|filter_pedestal|oil_gallery|cylinder_block + {_SITS}|side - {_FAULT}|vent|both|pump_and|another|second|pump_cover|breather|seat_in|took|pulled|removed|drive",
    ),
    "relief_outside": (
        f"{_RELIEF}|plunger_and_spring|spring_and_plunger|the_spring|plunger|spring_comes_out|spring_pulls + outside|external|exterior|dome_nut|domed_nut|cap_nut|acorn_nut|big_hex|one_big_screw|big_nut|big_plug|big_brass|hex_plug|hex_on_the_side|without_opening|outside_of_the|from_outside|easy_to_get|accessible|big_bolt|big_screw|large_plug|large_nut|threaded_cap|screw_plug|side_plug - {_FAULT}|not|only|leaks|clutch|valve_spring|drain|injector",
        "cap_nut|dome_nut|domed_nut|big_hex|big_nut|big_plug|large_nut|acorn_nut|big_brass_plug|large_hex & plunger|spring|relief & comes_out|pull_out|pull_right_out|pull|undo|unscrew|out|get_at - leak|fuel|broken|stuck|valve_spring|clutch|drain",
    ),
    "several_reliefs": (
        f"two|second|another|more_than_one|twin|pair_of|three|each_end|both_ends|extra|several + {_RELIEF}|pressure_regulators|regulating_plungers|relief_valves|blow-offs|reliefs|valves_which_release - {_FAULT}|test|gauge|time|try|opinion|new|times|fitted_another|shim|shims|springs|notches|fuel|thou|turns",
        f"one|{_RELIEF} + pump|front|cooler|filter + another|second|other|also|as_well & {_RELIEF} - {_FAULT}|test|gauge|engine|try|time|day|new|old",
    ),
    "pressed_pickup": (
        "pickup|pickup_tube|pick-up|suction_pipe|suction_tube|inlet_pipe|inlet_tube|tube|pickup_pipe|suction + pressed|press_fit|press-fit|press_in|driven_in|driven_into|hammered|hammer|tapped|tap|forced|knocked|knock|interference|interference_fit|bash|drive_it|special_driver|driver + pump|hole|body|casting|housing|cover|bolt|without_screw|no_bolt|no_screws|fit - crack|loose|fell|fallen|dropped|off|worked|blocked|bent|leak|pulled|spun|dipstick|seal|o-ring|oring|dent|gauge|coolant|valve|guide|came",
    ),
    "floating_pickup": (
        "pickup|pick-up|strainer|intake|inlet|suction|screen|oil_inlet|suction_net|pickup_tube|inlet_screen|gauze + float|floating|buoyant|swim|hinged|swivel|swivelling|rides_on|floats|pivoting|rise_and_fall|rises_and_falls|bobs|floater + oil|surface|pan|sump|type|top|level|pickup|strainer|intake - carburettor|carb|chamber|needle_valve|fuel|stuck|sunk|sank|holed|air|jammed|punctured|falling_off|debris|bits|dirt|sludge|metal",
    ),
    "cooler_on_suction": (
        f"cooler|oil_cooler|filter|canister|oil_filter|heat_exchanger + suction_side|suction_line|suction_hose|before_the_pump|upstream_of_pump|upstream_of_the_pump|ahead_of_the_pump|intake_line|inlet_side|pump_inlet|pump_intake|pump's_intake|pump's_inlet|pump_suction|between_tank_and_pump|between_the_tank_and_the_pump|on_the_way_in|on_the_way_to_the_pump|sucked_through|suck_through|sucks_through|pull_through|pulls_through|draws_through|draw_through|inlet_line|on_the_inlet|suction - fuel|air|water|raw|not|{_FAULT}|blocked|hose_collapsed|strainer",
        "pump + suck|pull|draw|sucked|drawn + through|via + cooler|canister|oil_cooler|filter|oil_filter|heat_exchanger - fuel|air|water|raw|not|sump|strainer|pickup|screen|fuel_filter",
        "oil + suck|sucked|drawn|pulled + through|via|thru + cooler|canister|filter|oil_filter + pump|before - fuel|air|water|raw|not|strainer|screen",
        "pump|oil_pump & pull_through|suck_through|draw_through|pulls_through|sucks_through|drawn_through|draws_through & canister|cooler|filter|from_the_tank|way_in|before - fuel|air|water|screen",
    ),
    "prelube_pump": (
        "pre-oiler|preoiler|pre_oiler|accumulator|pre-luber|pre_lube_pump|prelube_pump|pre-lube_pump|priming_pump|prelubrication|pre-lubrication|prelube + prime|start|electric|timed|fit|has|pump|first|key|before|hand|system|runs - fuel|forgot|never|not|no|without|lift|diesel|bleed",
        "electric|hand|separate|extra|second|little|small|wing|auxiliary|manual + pump|oil_pump & before_you_start|before_start|before_starting|prior_to_starting|before_the_start|before_cranking|before_it_is_started|prior_of_starting|prior_to_start|ahead_of_starting|before_you_crank|before_firing & oil|fills|run|pump_up|prime|lube|pressure|bearings|you - fuel|diesel|water|bilge|lift|drill|bleed|not",
        "priming_pump|pre-lube|prelube|pre-luber|electric_pump|pre-oiling_pump|prelube_pump|hand_pump|wobble_pump|separate_pump|auxiliary_oil_pump & electric|timed|before_you_start|before_starting|before_start|prior|start_it|before_cranking|run_before|ignition - fuel|diesel|bleed|water|lift|forgot|never|without|bilge|in-tank",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "pump_on_distributor_shaft": (
        f"distributor|dizzy + @not_drive|@not_turn|@not_spin|@not_run|nothing_to_do_with + {_PUMP}",
        f"{_PUMP} + @not_driven_by_the_distributor|@not_off_the_distributor|@not_on_the_distributor|@not_turned_by_the_distributor",
    ),
    "pump_outside": (
        f"{_PUMP} + buried_inside|inside_the_sump|inside_the_pan|internal|hidden_inside|down_in_the_sump|deep_inside - {_NO_OIL}|{_FAULT}|gears|lying|found|metal|scavenge|rag",
    ),
    "variable_pump": (
        f"plain|fixed|fixed_displacement|ordinary|simple|old_fashioned|nothing_electronic|no_solenoid|constant_displacement + {_PUMP}|nothing_electronic_on|fixed_pump + fixed|nothing_electronic|no_solenoid|no_electronics|mechanical|displacement - {_NO_OIL}|now|repair|bearing",
    ),
    "several_reliefs": (
        f"just_the_one|only_one|only_the_one|just_one|single|one_and_only + {_RELIEF} - {_FAULT}|spring|shim|not|notch|washer",
        "just_the_one|only_the_one|only_one|just_one|single + relief|reliefs|relief_valve|pressure_valve|blow-off + on|in|it|there|has|engine|there_is - stuck|spring|worn|shim",
    ),
    "floating_pickup": (
        "pickup|pick-up|strainer|screen|intake|inlet + fixed|rigid|bolted_solid|does_not_float|doesnt_float|@not_float + bottom|pan|sump|pickup|float|it|place|to - loose|off|leak",
    ),
    "cooler_on_suction": (
        "cooler|oil_cooler|filter|heat_exchanger + pressure_side|after_the_pump|delivery_side|downstream_of_the_pump|output_side|outlet_side|behind_the_pump - gauge|sender|low|loss|fuel|leak|burst",
    ),
}
