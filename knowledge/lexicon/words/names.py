"""What people call the parts and papers that many findings are said of, as sets for groups of words."""

from __future__ import annotations

#: what measures the pressure at the engine
SENDERS = "sender|sensor|sending_unit|sending-unit|sendor|transmitter|transducer|oil_unit|pressure_unit|oil_sensor|oil_switch|pressure_switch"
#: what shows it to the driver
DIALS = "gauge|dial|needle|pointer|clock|meter|reading|instrument|hand|indicator|readout"
#: the thin line to a gauge that works by oil
CAPILLARY = "capillary|gauge_line|gauge_pipe|gauge_tube|gauge_hose|copper_tube|copper_tubing|copper_pipe|copper_line|nylon_tube|nylon_line|plastic_tube|plastic_line|little_tube|little_pipe|small_pipe|small_tube|thin_pipe|thin_tube|thin_line|feed_tube|capillary_tube"
#: what a laboratory sends back
LAB = "sample|came_back|analysis|analisys|lab|labs|laboratory|report|sheet|oil_test|test_paper|blackstone|spectrometer|results|ppm|printout"
#: that a metal is high in it
FOUND_HIGH = "high|elevated|raised|excessive|abnormal|flagged|flags|=up|over|above|roof|sky|loads|lots|much|plenty|heaps|=red|jumped|climbed|spiked|doubled|tripled|stacks|full|critical|severe|bad|excess|tons|found_lots|off_the_scale|off_the_chart|exceeds|exceeded|increased"
#: that it is not
FOUND_LOW = "normal|=low|fine|ok|okay|no|not|@not|within|nothing|clean|nil|next_to|negligible|zero|little|under|below|none|neither|trace"
#: the stick in the sump
STICK = "stick|dipstick|dip_rod|dip_stick|level_stick|level_rod|oil_stick|dip-rod"
#: the spin-on filter
FILTER = "filter|spin-on|spin_on|canister|the_can|screw-on_can|filter_can|cartridge"
#: what is driven off a pad of the engine
ACCESSORIES = "injection_pump|power_steering_pump|steering_pump|mag_drive|magneto|raw-water_pump|raw_water_pump|vacuum_pump|air_compressor|compressor|hydraulic_pump|fuel_pump|lift_pump|governor|tach_drive|blanking_plate|alternator_drive|little_pump|brake_pump|starter_pad"
#: turned by the starter
CRANKED = "crank|cranked|cranking|spun|spin|starter|turned_over|turn_over|turned_her|turn_the_key|turned_the_key|key|turn_with_starter|turning_over"
#: to say that nothing came
NO_OIL = "no_oil|nothing|not_a_drop|dry|no_drop|only_air|just_air|not_one_drop|@not_a_drop|never_wetted|never_even|zip|zilch|no_flow|not_a_dribble|nil|none"
#: to say that it came well
GUSHED = "shot|squirt|squirted|squirts|gush|gushed|gushes|spurt|spurted|spurts|jet|jetted|poured|pours|sprayed|flooded|fountain|strong_stream"
#: turned by a drill
DRILL = "drill|priming_rod|priming_tool|priming_shaft|priming_drill|brace|speed_brace|electric_drill|priming_bar|cordless"
#: a stick that is not seen, and the oil of which something is said
OLD_OIL = "oil|stick|dipstick|dip_rod|sump_oil|engine_oil|lubricant|lube"
#: the hose that lets the crankcase breathe
BREATHER = "breather|vent_hose|vent_pipe|crankcase_gas|fume_pipe|fume_hose|crankcase_vent|crankcase_hose|crankcase_tube|pcv|vent_tube|breather_pipe|breather_hose"
#: the bolt in the bottom of the sump
SUMP_BOLT = "drain_plug|sump_plug|drain_bolt|sump_bolt|bolt_in_the_bottom|bottom_bolt|bolt_at_the_bottom|oil_bolt|screw_from_below|drain_screw|sump_screw|screw_for_let|screw_for_change|drain_tap|oil_tap|drain_cock|oil_plug|drain_valve"
#: pipes and hoses that carry oil outside
OIL_PIPES = "oil_line|oil_lines|oil_hose|oil_hoses|oil_pipe|oil_pipes|oil_tube|oil_tubes|cooler_pipe|cooler_pipes|cooler_hose|cooler_hoses|cooler_line|cooler_lines|cooler_plumbing|oil_plumbing|cooler_unions|oil_radiator|tube_that_carries_oil|pipe_that_carries_oil|tube_of_oil|pipe_of_oil|oil_cooler"
