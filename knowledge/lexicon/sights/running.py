"""Words for noises of the engine, and for how it starts and runs."""

from __future__ import annotations

#: the finding, by words that stand together, in whatever order, when it is there
GROUPS: dict[str, tuple[str, ...]] = {
    "grinding_noise": (
        "sounds|sound|noise|noises|engine|motor|makes|like + bucket_of_gravel|gravel|grinding|mincer|coffee|cement_mixer|grinds|graunching|bucket_of_stones|rocks_in_a - like_a_stone|no|not|road|drive|rattle_only|starter|gearbox|brake|wheel|ground|on_the|machine|clutch",
        "grinding|grind|grinds|grating|grates|iron_rubbing|metal_on_metal|coffee_mill|coffee_grinder|millstone|bag_of_gravel|bucket_of_stones|mincer|cement_mixer|crunching|crunches|graunching|graunch|iron_on_iron|metal_rubbing|steel_on_steel|grinder|rock_crusher|meat_grinder & engine|motor|noise|sound|sounds|makes|inside|like|hear|crank|it|started|from|comes - no|not|without|starter|gearbox|gears|brake|brakes|bearing_ground|ground|wheel|clutch|crank_ground|valve_grinding|paste|dust|filter|sump|pan|machine|screen|in_a_cement|road|driveway",
    ),
    "squeaking_noise": (
        "squeak|squeaks|squeaking|squeal|squeals|squealing|shriek|shrieks|screech|screeches|chirp|chirps|chirping|dry_hinge|rusty_gate|rusty_hinge|cry|cries|screams|screaming|whistle|whistles|dry_metal|like_a_mouse|wailing & engine|motor|belt_removed|belts_off|belt_off|like|fan_belt|without_the_belt|belt_is_off|no_belt|hinge|runs|running|noise|sound|makes|dry|idle|metal - clean_as|no|not|brake|brakes|belt_slipping|belt_is_slipping|door|clutch|turbo|buzzer|alarm|tyres|tires|suspension|pump_whistle|loose_belt|wheel|alternator|siren",
    ),
    "will_not_start": (
        "cranks|crank|starter|cranking|turns_over|spins_over|turn_motor|turns_it|winds_over|churns|starter_spins|starter_works|whirrs & no_fire|@not_start|@not_fire|doesnt_come_to_life|@not_come|@not_catch|no_start|motor_not_come|wont_catch|wont_start|no_go|never_fires|@not_run|not_a_cough|@not_go|no_spark_of_life|refuses|nothing_happens|wont_fire|no_life|all_day|to_life - pressure_never|crankshaft|no_pressure|needle|gauge|crank_not|light_goes|shells|pulley|seal|starts|started|without_starting|plugs_out|coil_off|build|prime|noise",
    ),
}
#: the finding, by words that stand together when it is not there
GROUPS_ABSENT: dict[str, tuple[str, ...]] = {
    "grinding_noise": (
        "no|never|not_a|without|isnt_any + grinding|grind|grating|graunching|crunching - starter|paste|crank",
    ),
    "squeaking_noise": (
        "no|never|not_a|without + squeak|squeal|squeaks|squeaking|squealing|chirp|screech - belt_slip|brake|tyre",
    ),
    "engine_runs_rough": (
        "smooth|smoothly|evenly|no_misfire|all_cylinders|on_all_four|on_all_six|turbine|never_misses|without_a_miss|silk|no_roughness + idle|ticks_over|idles|cylinders|firing|hits|idling|all_four|misfire|roughness|misses - not|but|until|shaft|needle|crank|pump|bore|journal|bores|journals|rotor|plunger|valve|gauge|reading|light|warm|turns",
    ),
}
