"""The list of every file of knowledge but tasks and parts; a new file is added here.

Imported by ``book``; ``contents_work`` lists files of tasks and parts, which load when needed.
"""

from knowledge import unlisted
from knowledge.circuit import conditions as circuit_conditions
from knowledge.circuit import links as circuit_links
from knowledge.circuit import links_damage as circuit_links_damage
from knowledge.contents_engines import ENGINES
from knowledge.debris import findings as debris_findings
from knowledge.debris import links as debris_links
from knowledge.debris import rules as debris_rules
from knowledge.history import areas as history_areas
from knowledge.history import areas_cam as history_areas_cam
from knowledge.history import areas_inside as history_areas_inside
from knowledge.history import circumstances as history_circumstances
from knowledge.history import findings as history_findings
from knowledge.history import findings_apart as history_findings_apart
from knowledge.history import findings_habits as history_findings_habits
from knowledge.history import findings_put_back as history_findings_put_back
from knowledge.history import links_began as history_links_began
from knowledge.history import links_habits as history_links_habits
from knowledge.history import links_wear as history_links_wear
from knowledge.history import rules as history_rules
from knowledge.history import rules_builds as history_rules_builds
from knowledge.history import rules_put_back as history_rules_put_back
from knowledge.history import rules_trials as history_rules_trials
from knowledge.history import rules_work as history_rules_work
from knowledge.pressure import alarms as pressure_alarms
from knowledge.pressure import alarms_care
from knowledge.pressure import behaviour as pressure_behaviour
from knowledge.pressure import course as pressure_course
from knowledge.pressure import direct_gauge as pressure_direct_gauge
from knowledge.pressure import inhibitors as pressure_inhibitors
from knowledge.pressure import links_course as pressure_links_course
from knowledge.pressure import links_in_time as pressure_links_in_time
from knowledge.pressure import links_steady as pressure_links_steady
from knowledge.pressure import patterns as pressure_patterns
from knowledge.pressure import patterns_speed as pressure_patterns_speed
from knowledge.pressure import quantities as pressure_quantities
from knowledge.pressure import rules_contradictions as pressure_rules_contradictions
from knowledge.pressure import rules_patterns as pressure_rules_patterns
from knowledge.pressure import rules_readings as pressure_rules_readings
from knowledge.pressure import rules_stations as pressure_rules_stations
from knowledge.pressure import rules_usual as pressure_rules_usual
from knowledge.reports import rules_alarms as reports_rules_alarms
from knowledge.reports import rules_course as reports_rules_course
from knowledge.reports import rules_pressure as reports_rules_pressure
from knowledge.reports import rules_time as reports_rules_time
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.assembly import findings as assembly_findings
from knowledge.stations.assembly import findings_left_out as assembly_findings_left_out
from knowledge.stations.assembly import links as assembly_links
from knowledge.stations.assembly import rules as assembly_rules
from knowledge.stations.assembly import trials as assembly_trials
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_geometry as bearings_causes_geometry
from knowledge.stations.bearings import causes_poured as bearings_causes_poured
from knowledge.stations.bearings import causes_shafts as bearings_causes_shafts
from knowledge.stations.bearings import faults as bearings_faults
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.bearings import findings_measured as bearings_findings_measured
from knowledge.stations.bearings import findings_shafts as bearings_findings_shafts
from knowledge.stations.bearings import findings_shell_map as bearings_findings_shell_map
from knowledge.stations.bearings import findings_shells as bearings_findings_shells
from knowledge.stations.bearings import findings_sights as bearings_findings_sights
from knowledge.stations.bearings import inhibitors as bearings_inhibitors
from knowledge.stations.bearings import links as bearings_links
from knowledge.stations.bearings import links_sights as bearings_links_sights
from knowledge.stations.bearings import quantities as bearings_quantities
from knowledge.stations.bearings import quantities_build as bearings_quantities_build
from knowledge.stations.bearings import quantities_shafts as bearings_quantities_shafts
from knowledge.stations.bearings import rules as bearings_rules
from knowledge.stations.bearings import rules_alarms as bearings_rules_alarms
from knowledge.stations.bearings import rules_measured as bearings_rules_measured
from knowledge.stations.bearings import rules_poured as bearings_rules_poured
from knowledge.stations.bearings import rules_shafts as bearings_rules_shafts
from knowledge.stations.bearings import trials as bearings_trials
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_crank_feed as delivery_causes_crank_feed
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.delivery import faults as delivery_faults
from knowledge.stations.delivery import findings_crank_feed as delivery_findings_crank_feed
from knowledge.stations.delivery import findings_filter as delivery_findings_filter
from knowledge.stations.delivery import findings_filter_cut as delivery_findings_filter_cut
from knowledge.stations.delivery import findings_galleries as delivery_findings_galleries
from knowledge.stations.delivery import inhibitors as delivery_inhibitors
from knowledge.stations.delivery import links as delivery_links
from knowledge.stations.delivery import quantities as delivery_quantities
from knowledge.stations.delivery import rules as delivery_rules
from knowledge.stations.delivery import rules_galleries as delivery_rules_galleries
from knowledge.stations.delivery import trials as delivery_trials
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.instrument import causes_line as instrument_causes_line
from knowledge.stations.instrument import faults as instrument_faults
from knowledge.stations.instrument import findings as instrument_findings
from knowledge.stations.instrument import findings_direct_gauge as instrument_findings_direct_gauge
from knowledge.stations.instrument import findings_electrical as instrument_findings_electrical
from knowledge.stations.instrument import findings_panel as instrument_findings_panel
from knowledge.stations.instrument import findings_port as instrument_findings_port
from knowledge.stations.instrument import findings_sender as instrument_findings_sender
from knowledge.stations.instrument import findings_stations as instrument_findings_stations
from knowledge.stations.instrument import links as instrument_links
from knowledge.stations.instrument import quantities as instrument_quantities
from knowledge.stations.instrument import rules_layout as instrument_rules_layout
from knowledge.stations.instrument import rules_measured as instrument_rules_measured
from knowledge.stations.instrument import rules_proof as instrument_rules_proof
from knowledge.stations.instrument import trials as instrument_trials
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.leaks import faults as leaks_faults
from knowledge.stations.leaks import findings as leaks_findings
from knowledge.stations.leaks import findings_places as leaks_findings_places
from knowledge.stations.leaks import findings_sights as leaks_findings_sights
from knowledge.stations.leaks import inhibitors as leaks_inhibitors
from knowledge.stations.leaks import links as leaks_links
from knowledge.stations.leaks import links_sights as leaks_links_sights
from knowledge.stations.leaks import rules as leaks_rules
from knowledge.stations.leaks import rules_alarms as leaks_rules_alarms
from knowledge.stations.leaks import trials as leaks_trials
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.oil import faults as oil_faults
from knowledge.stations.oil import findings as oil_findings
from knowledge.stations.oil import findings_analysis as oil_findings_analysis
from knowledge.stations.oil import findings_contamination as oil_findings_contamination
from knowledge.stations.oil import findings_drained as oil_findings_drained
from knowledge.stations.oil import findings_heat as oil_findings_heat
from knowledge.stations.oil import findings_record as oil_findings_record
from knowledge.stations.oil import inhibitors as oil_inhibitors
from knowledge.stations.oil import links as oil_links
from knowledge.stations.oil import quantities as oil_quantities
from knowledge.stations.oil import rules_alarms as oil_rules_alarms
from knowledge.stations.oil import rules_facts as oil_rules_facts
from knowledge.stations.oil import rules_measured as oil_rules_measured
from knowledge.stations.oil import rules_odds as oil_rules_odds
from knowledge.stations.oil import trials as oil_trials
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.pump import causes_variable as pump_causes_variable
from knowledge.stations.pump import faults as pump_faults
from knowledge.stations.pump import findings as pump_findings
from knowledge.stations.pump import findings_bench as pump_findings_bench
from knowledge.stations.pump import findings_drive as pump_findings_drive
from knowledge.stations.pump import findings_mount as pump_findings_mount
from knowledge.stations.pump import findings_priming as pump_findings_priming
from knowledge.stations.pump import findings_scavenge as pump_findings_scavenge
from knowledge.stations.pump import findings_sights as pump_findings_sights
from knowledge.stations.pump import findings_variable as pump_findings_variable
from knowledge.stations.pump import findings_wear as pump_findings_wear
from knowledge.stations.pump import inhibitors as pump_inhibitors
from knowledge.stations.pump import links as pump_links
from knowledge.stations.pump import links_follow as pump_links_follow
from knowledge.stations.pump import links_sights as pump_links_sights
from knowledge.stations.pump import quantities as pump_quantities
from knowledge.stations.pump import rules_alarms as pump_rules_alarms
from knowledge.stations.pump import rules_engine as pump_rules_engine
from knowledge.stations.pump import rules_measured as pump_rules_measured
from knowledge.stations.pump import trials as pump_trials
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.relief import faults as relief_faults
from knowledge.stations.relief import findings as relief_findings
from knowledge.stations.relief import findings_sights as relief_findings_sights
from knowledge.stations.relief import links as relief_links
from knowledge.stations.relief import quantities as relief_quantities
from knowledge.stations.relief import rules as relief_rules
from knowledge.stations.relief import trials as relief_trials
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.suction import causes_tap as suction_causes_tap
from knowledge.stations.suction import faults as suction_faults
from knowledge.stations.suction import findings as suction_findings
from knowledge.stations.suction import findings_pickup as suction_findings_pickup
from knowledge.stations.suction import findings_sights as suction_findings_sights
from knowledge.stations.suction import findings_sump as suction_findings_sump
from knowledge.stations.suction import inhibitors as suction_inhibitors
from knowledge.stations.suction import links as suction_links
from knowledge.stations.suction import links_sights as suction_links_sights
from knowledge.stations.suction import quantities as suction_quantities
from knowledge.stations.suction import rules as suction_rules
from knowledge.stations.suction import rules_alarms as suction_rules_alarms
from knowledge.stations.suction import trials as suction_trials
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.stations.topend import causes_phasers as topend_causes_phasers
from knowledge.stations.topend import faults as topend_faults
from knowledge.stations.topend import findings as topend_findings
from knowledge.stations.topend import findings_cam as topend_findings_cam
from knowledge.stations.topend import findings_feeds as topend_findings_feeds
from knowledge.stations.topend import findings_phasers as topend_findings_phasers
from knowledge.stations.topend import links as topend_links
from knowledge.stations.topend import quantities as topend_quantities
from knowledge.stations.topend import rules as topend_rules
from knowledge.stations.topend import rules_feeds as topend_rules_feeds
from knowledge.stations.topend import rules_valve_gear as topend_rules_valve_gear
from knowledge.stations.topend import trials as topend_trials

#: quantities and limits, causes, conditions, findings, checks, links, rules and layouts
MODULES = (
    assembly_findings,
    assembly_findings_left_out,
    assembly_causes,
    assembly_causes_left_out,
    assembly_links,
    assembly_rules,
    assembly_trials,
    bearings_quantities,
    bearings_quantities_shafts,
    bearings_quantities_build,
    bearings_findings,
    bearings_findings_shells,
    bearings_findings_shell_map,
    bearings_findings_measured,
    bearings_findings_sights,
    bearings_findings_shafts,
    bearings_causes,
    bearings_causes_geometry,
    bearings_causes_poured,
    bearings_causes_shafts,
    bearings_links,
    bearings_inhibitors,
    bearings_links_sights,
    bearings_faults,
    bearings_rules,
    bearings_rules_alarms,
    bearings_rules_measured,
    bearings_rules_poured,
    bearings_rules_shafts,
    bearings_trials,
    pressure_quantities,
    pressure_links_in_time,
    pressure_links_steady,
    pressure_links_course,
    pressure_inhibitors,
    pressure_rules_contradictions,
    pressure_rules_patterns,
    pressure_rules_readings,
    pressure_rules_stations,
    pressure_rules_usual,
    pressure_alarms,
    alarms_care,
    pressure_behaviour,
    pressure_course,
    pressure_patterns,
    pressure_direct_gauge,
    pressure_patterns_speed,
    circuit_links,
    circuit_links_damage,
    circuit_conditions,
    debris_findings,
    debris_links,
    debris_rules,
    delivery_quantities,
    delivery_findings_filter,
    delivery_findings_filter_cut,
    delivery_findings_galleries,
    delivery_findings_crank_feed,
    delivery_causes,
    delivery_causes_galleries,
    delivery_causes_crank_feed,
    delivery_links,
    delivery_inhibitors,
    delivery_faults,
    delivery_rules,
    delivery_rules_galleries,
    delivery_trials,
    history_findings,
    history_links_began,
    history_findings_habits,
    history_findings_put_back,
    history_findings_apart,
    history_links_habits,
    history_links_wear,
    history_rules,
    history_rules_builds,
    history_rules_put_back,
    history_rules_trials,
    history_rules_work,
    history_circumstances,
    history_areas_inside,
    history_areas_cam,
    history_areas,
    instrument_quantities,
    instrument_findings,
    instrument_findings_sender,
    instrument_findings_electrical,
    instrument_findings_panel,
    instrument_findings_direct_gauge,
    instrument_findings_port,
    instrument_findings_stations,
    instrument_causes,
    instrument_causes_line,
    instrument_links,
    instrument_faults,
    instrument_rules_layout,
    instrument_rules_measured,
    instrument_rules_proof,
    instrument_trials,
    leaks_findings,
    leaks_findings_places,
    leaks_findings_sights,
    leaks_causes,
    leaks_causes_openings,
    leaks_links,
    leaks_links_sights,
    leaks_inhibitors,
    leaks_faults,
    leaks_rules,
    leaks_rules_alarms,
    leaks_trials,
    oil_quantities,
    oil_findings,
    oil_findings_record,
    oil_findings_heat,
    oil_findings_contamination,
    oil_findings_analysis,
    oil_findings_drained,
    oil_causes,
    oil_causes_contamination,
    oil_causes_condition,
    oil_links,
    oil_inhibitors,
    oil_faults,
    oil_rules_alarms,
    oil_rules_facts,
    oil_rules_measured,
    oil_rules_odds,
    oil_trials,
    pump_quantities,
    pump_findings,
    pump_findings_priming,
    pump_findings_drive,
    pump_findings_mount,
    pump_findings_bench,
    pump_findings_wear,
    pump_findings_sights,
    pump_findings_scavenge,
    pump_findings_variable,
    pump_causes,
    pump_causes_drive,
    pump_causes_fitted,
    pump_causes_variable,
    pump_links,
    pump_inhibitors,
    pump_links_sights,
    pump_links_follow,
    pump_faults,
    pump_rules_alarms,
    pump_rules_engine,
    pump_rules_measured,
    pump_trials,
    relief_quantities,
    relief_findings,
    relief_findings_sights,
    relief_causes,
    relief_links,
    relief_faults,
    relief_rules,
    relief_trials,
    suction_quantities,
    suction_findings,
    suction_findings_sump,
    suction_findings_pickup,
    suction_findings_sights,
    suction_causes,
    suction_causes_sump,
    suction_causes_tap,
    suction_links,
    suction_inhibitors,
    suction_links_sights,
    suction_faults,
    suction_rules,
    suction_rules_alarms,
    suction_trials,
    topend_quantities,
    topend_findings,
    topend_findings_cam,
    topend_findings_feeds,
    topend_findings_phasers,
    topend_causes,
    topend_causes_feeds,
    topend_causes_phasers,
    topend_links,
    topend_faults,
    topend_rules,
    topend_rules_feeds,
    topend_rules_valve_gear,
    topend_trials,
    *ENGINES,
    reports_rules_alarms,
    reports_rules_course,
    reports_rules_pressure,
    reports_rules_time,
    unlisted,
)
