"""Places outside, and at oil and pump, that may have been worked on before the trouble began."""

from knowledge.history import findings
from knowledge.model import Station
from knowledge.reports.shapes import WorkArea
from knowledge.sources import JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.causes import strongly_raised_by
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.instrument import causes_line as instrument_causes_line
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.topend import causes_feeds as topend_causes_feeds

OIL_CHANGE = WorkArea(
    id="oil_change",
    station=Station.OIL,
    says="an oil change",
    asks="Oil changed before it began?",
    causes={
        oil_causes.OIL_LEVEL_LOW: 1.0,
        oil_causes.OIL_LEVEL_HIGH: 1.0,
        leaks_causes.DRAIN_PLUG_OUT: 1.0,
        leaks_causes_openings.FILLER_CAP_OFF: 1.0,
        oil_causes.VISCOSITY_TOO_LOW: 1.0,
        oil_causes.VISCOSITY_TOO_HIGH: 1.0,
        oil_causes_condition.OIL_FOAM_PRONE: 1.0,
        delivery_causes.FILTER_WRONG: 1.0,
        leaks_causes.FILTER_SEAL_LEAK: 1.0,
        delivery_causes.FILTER_DRAINBACK: 0.5,
        pump_causes_fitted.PUMP_NOT_PRIMED: 0.5,
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: 0.5,
        oil_causes.DIPSTICK_WRONG: 0.5,
        leaks_causes.EXTERNAL_LEAK_MAJOR: 0.75,
        relief_causes.RELIEF_DEBRIS: 0.5,
        suction_causes.PICKUP_SCREEN_BLOCKED: 0.5,
        relief_causes.RELIEF_STUCK_CLOSED: 0.25,
        suction_causes.SUCTION_JOINT_AIR_LEAK: 0.25,
    },
    renews=(oil_causes_condition.OIL_DEGRADED,),
    source=JUDGEMENT,
    implies=(findings.OIL_JUST_CHANGED,),
    also=("serviced", "oil and filter change", "oil sucked out", "fresh oil"),
)
OIL_ADDED = WorkArea(
    id="oil_added",
    station=Station.OIL,
    says="oil topped up, or filler cap or dipstick opened",
    asks="Oil added, or filler cap or dipstick opened, before it began?",
    causes={
        leaks_causes_openings.FILLER_CAP_OFF: 1.0,
        leaks_causes.EXTERNAL_LEAK_MAJOR: 0.25,
        oil_causes.OIL_LEVEL_HIGH: 0.5,
        oil_causes.VISCOSITY_TOO_LOW: 0.25,
        oil_causes_condition.OIL_FOAM_PRONE: 0.5,
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: 0.25,
    },
    source=JUDGEMENT,
    also=("topped up", "oil added", "level checked", "cap left off"),
)
FILTER_CHANGE = WorkArea(
    id="filter_change",
    station=Station.DELIVERY,
    says="a change of the oil filter",
    asks="Oil filter changed before it began?",
    causes={
        delivery_causes.FILTER_WRONG: 1.0,
        leaks_causes.FILTER_SEAL_LEAK: 1.0,
        delivery_causes.FILTER_DRAINBACK: 0.75,
        pump_causes_fitted.PUMP_NOT_PRIMED: 0.5,
        oil_causes.OIL_LEVEL_LOW: 0.5,
        delivery_causes.FILTER_BYPASS_STUCK: 0.25,
        leaks_causes.EXTERNAL_LEAK_MAJOR: 0.75,
        relief_causes.RELIEF_DEBRIS: 0.25,
    },
    renews=(delivery_causes.FILTER_BLOCKED,),
    source=JUDGEMENT,
    implies=(findings.OIL_JUST_CHANGED,),
    also=("new oil filter", "other filter fitted", "old filter refitted"),
)
OIL_PUMP = WorkArea(
    id="oil_pump",
    station=Station.PUMP,
    says="work on the oil pump",
    asks="Oil pump renewed, opened or taken off before it began?",
    causes={
        assembly_causes_left_out.PUMP_DRIVE_LEFT_OUT: 1.0,
        pump_causes_fitted.PUMP_NOT_PRIMED: 1.0,
        pump_causes.PUMP_MOUNT_LEAK: 1.0,
        pump_causes.PUMP_GASKET_WRONG: 1.0,
        pump_causes_fitted.PUMP_WRONG_PART: 1.0,
        pump_causes_fitted.PUMP_ROTOR_REVERSED: 1.0,
        pump_causes_drive.PUMP_DRIVE_BIND: 1.0,
        pump_causes_drive.PUMP_DRIVE_BROKEN: 0.5,
        pump_causes_drive.PUMP_DRIVE_SLIP: 0.5,
        pump_causes.PUMP_COVER_LOOSE: 1.0,
        pump_causes_fitted.PUMP_OVERSIZED: 0.5,
        pump_causes_fitted.PUMP_CAVITATION: 0.5,
        pump_causes_fitted.PUMP_BODY_CRACKED: 0.25,
        suction_causes.PICKUP_TUBE_LOOSE: 1.0,
        suction_causes.SUCTION_JOINT_AIR_LEAK: 1.0,
        suction_causes_sump.PICKUP_CLEARANCE_TIGHT: 1.0,
        suction_causes_sump.PICKUP_CLEARANCE_WIDE: 1.0,
        relief_causes.RELIEF_SPRING_WRONG: 1.0,
        relief_causes.RELIEF_PART_MISSING: 1.0,
        relief_causes.RELIEF_CAP_LOOSE: 0.75,
        relief_causes.RELIEF_DEBRIS: 0.75,
        relief_causes.RELIEF_STUCK_OPEN: 0.5,
        pump_causes.PUMP_DEBRIS_LOCK: 0.5,
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: 0.5,
        assembly_causes.FASTENER_LOOSE_INSIDE: 0.5,
        suction_causes.PICKUP_TUBE_CRACKED: 0.25,
    },
    renews=(
        pump_causes.PUMP_GEAR_WEAR,
        pump_causes.PUMP_COVER_SCORED,
        pump_causes_fitted.PUMP_IDLER_PIN_MIGRATED,
    ),
    source=JUDGEMENT,
    implies=(findings.SUMP_OR_PUMP_SWAPPED,),
    also=("new oil pump", "pump overhauled", "pump taken off"),
)
PUMP_DRIVE = WorkArea(
    id="pump_drive",
    station=Station.PUMP,
    says="work on the distributor or the pump's drive",
    asks="Distributor or pump drive taken out before it began?",
    causes={
        pump_causes_drive.PUMP_DRIVE_BROKEN: 1.0,
        pump_causes_drive.PUMP_DRIVE_BIND: 1.0,
        pump_causes_drive.PUMP_DRIVE_SLIP: 0.75,
        topend_causes_feeds.DIST_HOUSING_LEAK: 1.0,
        pump_causes_fitted.PUMP_WRONG_PART: 0.25,
        pump_causes.PUMP_DEBRIS_LOCK: 0.25,
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("distributor out", "drive shaft renewed", "ignition timing set", "points changed"),
)
RELIEF_VALVE = WorkArea(
    id="relief_valve",
    station=Station.RELIEF,
    says="work on the relief valve",
    asks="Relief valve worked on before it began?",
    causes={
        relief_causes.RELIEF_SPRING_WRONG: 1.0,
        relief_causes.RELIEF_PART_MISSING: 1.0,
        relief_causes.RELIEF_CAP_LOOSE: 1.0,
        relief_causes.RELIEF_DEBRIS: 1.0,
        relief_causes.RELIEF_STUCK_OPEN: 0.75,
        relief_causes.RELIEF_STUCK_CLOSED: 0.75,
        relief_causes.RELIEF_BORE_SCORED: 0.5,
        relief_causes.RELIEF_HUNTING: 0.5,
        relief_causes.RELIEF_RETURN_PLUGGED: 0.5,
    },
    renews=(
        relief_causes.RELIEF_SPRING_WEAK_BROKEN,
        relief_causes.RELIEF_BORE_SCORED,
    ),
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("relief spring shimmed", "regulator cleaned"),
)
INSTRUMENT = WorkArea(
    id="instrument",
    station=Station.INSTRUMENT,
    says="work on gauge, sender or their wiring",
    asks="Gauge, sender or wiring near it worked on before it began?",
    causes={
        instrument_causes.SENDER_MISMATCH: 1.0,
        instrument_causes.SENDER_FAULTY: 0.5,
        instrument_causes.SENDER_NOT_FITTED: 1.0,
        instrument_causes.WIRING_GROUND_FAULT: 1.0,
        instrument_causes_line.GAUGE_TAP_MOVED: 1.0,
        instrument_causes_line.GAUGE_LINE_LEAK: 1.0,
        instrument_causes_line.GAUGE_LINE_BLOCKED: 0.5,
        leaks_causes_openings.SENDER_LEAK: 1.0,
        instrument_causes.GAUGE_FAULTY: 0.5,
    },
    source=JUDGEMENT,
    also=("new sender", "new gauge", "dash out", "wiring loom", "radio fitted"),
)
OIL_COOLER_OR_LINES = WorkArea(
    id="oil_cooler_or_lines",
    station=Station.DELIVERY,
    says="work on oil cooler, oil lines or a remote filter",
    asks="Oil cooler, oil lines or a remote filter worked on before it began?",
    causes={
        leaks_causes.OIL_LINE_LEAK: 1.0,
        delivery_causes.OIL_COOLER_BLOCKED: 1.0,
        delivery_causes.FILTER_WRONG: 0.75,
        delivery_causes_galleries.GALLERY_SEAL_LEAK: 0.75,
        leaks_causes.FILTER_SEAL_LEAK: 0.75,
        delivery_causes.FILTER_BYPASS_STUCK: 0.5,
        oil_causes.OIL_LEVEL_LOW: 0.75,
        oil_causes_contamination.COOLANT_IN_OIL: 0.5,
        pump_causes_fitted.PUMP_NOT_PRIMED: 0.25,
        relief_causes.RELIEF_DEBRIS: 0.5,
        pump_causes_fitted.PUMP_CAVITATION: 0.25,
        suction_causes_sump.SUCTION_HOSE_COLLAPSED: 0.5,
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("oil cooler fitted", "remote filter kit", "new oil hoses", "cooler left off"),
)
TURBO = WorkArea(
    id="turbo",
    station=Station.TOPEND,
    says="work on the turbocharger or its oil lines",
    asks="Turbo or its oil lines worked on before it began?",
    causes={
        topend_causes_feeds.TURBO_FEED_LEAK: 1.0,
        topend_causes_feeds.TURBO_FEED_RESTRICTED: 1.0,
        leaks_causes.OIL_LINE_LEAK: 0.75,
        topend_causes_feeds.RESTRICTOR_MISSING: 0.5,
        assembly_causes.PART_SHEDDING_INSIDE: 0.25,
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: 0.25,
    },
    renews=(topend_causes_feeds.TURBO_FEED_LEAK,),
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("new turbo", "turbo removed"),
)
FUEL_SYSTEM = WorkArea(
    id="fuel_system",
    station=Station.OIL,
    says="work on fuel pump, injectors, carburettor or fuel pipes",
    asks="Fuel pump, injectors, carburettor or fuel pipes worked on before it began?",
    causes={
        oil_causes_contamination.FUEL_DILUTION: 1.0,
        instrument_causes_line.IDLE_TOO_SLOW: 0.75,
        instrument_causes.WIRING_GROUND_FAULT: 0.5,
        leaks_causes.OIL_LINE_LEAK: 0.25,
        leaks_causes_openings.WRONG_GASKET_ON_ACCESSORY: 0.5,
        pump_causes_drive.PUMP_DRIVE_BROKEN: 0.25,
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=(
        "new lift pump",
        "injectors overhauled",
        "carburettor rebuilt",
        "injection pump refitted",
    ),
)
IGNITION_OR_ELECTRICS = WorkArea(
    id="ignition_or_electrics",
    station=Station.INSTRUMENT,
    says="work on ignition, charging or electrics",
    asks="Ignition, charging or electrics worked on before it began?",
    causes={
        instrument_causes.WIRING_GROUND_FAULT: 1.0,
        instrument_causes.GAUGE_FAULTY: 0.5,
        instrument_causes.SENDER_FAULTY: 0.25,
        leaks_causes_openings.SENDER_LEAK: 0.25,
        instrument_causes_line.IDLE_TOO_SLOW: 0.75,
        instrument_causes.SENDER_NOT_FITTED: 0.5,
        topend_causes_feeds.DIST_HOUSING_LEAK: 0.5,  # the distributor may have been out
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("new battery", "alternator changed", "voltage stabiliser", "plugs changed"),
)
ACCESSORY = WorkArea(
    id="accessory",
    station=Station.LEAKS,
    says="work on something bolted to the engine",
    asks=(
        "Something bolted to the engine (alternator, starter, vacuum or hydraulic pump, bracket) "
        "worked on before it began?"
    ),
    causes={
        leaks_causes_openings.WRONG_GASKET_ON_ACCESSORY: 1.0,
        leaks_causes.OIL_LINE_LEAK: 0.75,
        leaks_causes_openings.SENDER_LEAK: 0.5,
        instrument_causes.WIRING_GROUND_FAULT: 0.75,
        leaks_causes.EXTERNAL_LEAK_MAJOR: 0.5,
        instrument_causes_line.GAUGE_LINE_LEAK: 0.5,
        leaks_causes_openings.PLUG_EXPELLED_OUTSIDE: 0.25,
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("vacuum pump fitted", "governor renewed", "starter changed", "engine mount renewed"),
)
COOLING_SYSTEM = WorkArea(
    id="cooling_system",
    station=Station.OIL,
    says="work on the cooling system",
    asks="Cooling system worked on before it began?",
    causes={
        oil_causes_contamination.COOLANT_IN_OIL: 1.0,
        oil_causes_condition.OIL_OVERHEATED: 0.75,
        leaks_causes.OIL_LINE_LEAK: 0.5,
        instrument_causes.WIRING_GROUND_FAULT: 0.5,
        leaks_causes_openings.SENDER_LEAK: 0.25,
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("radiator renewed", "water pump renewed", "thermostat changed"),
)
STORAGE = WorkArea(
    id="storage",
    station=Station.OIL,
    says="storage, laying up or return to use",
    asks="Laid up, stored, or just back from storage before it began?",
    causes={
        pump_causes_fitted.PUMP_NOT_PRIMED: 1.0,
        instrument_causes.SENDER_FAULTY: 0.5,
        instrument_causes.GAUGE_FAULTY: 0.5,
        instrument_causes.WIRING_GROUND_FAULT: 0.5,
        relief_causes.RELIEF_STUCK_OPEN: 0.75,
        relief_causes.RELIEF_STUCK_CLOSED: 0.75,
        suction_causes.PICKUP_SCREEN_BLOCKED: 0.5,
        oil_causes_condition.OIL_DEGRADED: 0.5,
        delivery_causes.FILTER_DRAINBACK: 0.5,
        instrument_causes_line.GAUGE_LINE_BLOCKED: 0.5,
        oil_causes_contamination.COOLANT_IN_OIL: 0.5,
        suction_causes.SUCTION_JOINT_AIR_LEAK: 0.5,
        bearings_causes.BEARING_WIPED: 0.25,
        oil_causes_contamination.FUEL_DILUTION: 0.5,
        leaks_causes.SHAFT_SEAL_LEAK: 0.5,
        suction_causes_sump.ICE_IN_PICKUP: 0.5,
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: 0.25,
    },
    source=JUDGEMENT,
    also=("stored", "laid up", "inhibited", "recommissioned"),
)
TRANSPORT_OR_FITTING = WorkArea(
    id="transport_or_fitting",
    station=Station.ASSEMBLY,
    says="taking the engine out, moving it, or putting it in",
    asks="Engine taken out, moved or put in before it began?",
    causes={
        suction_causes_sump.PAN_DENTED: 1.0,
        leaks_causes_openings.SENDER_LEAK: 1.0,
        instrument_causes.SENDER_NOT_FITTED: 0.75,
        instrument_causes.WIRING_GROUND_FAULT: 0.75,
        leaks_causes.OIL_LINE_LEAK: 1.0,
        instrument_causes_line.GAUGE_LINE_LEAK: 0.75,
        pump_causes_fitted.PUMP_NOT_PRIMED: 0.75,
        oil_causes.OIL_LEVEL_LOW: 0.75,
        oil_causes.DIPSTICK_WRONG: 0.5,
        suction_causes_sump.ATTITUDE_UNCOVERS_PICKUP: 0.5,
        leaks_causes.DRAIN_PLUG_OUT: 0.5,
        leaks_causes.FILTER_SEAL_LEAK: 0.5,
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("engine out", "engine dropped", "hoisted in", "dyno"),
)
CLUTCH_OR_GEARBOX = WorkArea(
    id="clutch_or_gearbox",
    station=Station.LEAKS,
    says="work on clutch, gearbox or rear main seal",
    asks="Clutch, gearbox or rear main seal worked on before it began?",
    causes={
        leaks_causes.SHAFT_SEAL_LEAK: 1.0,
        leaks_causes_openings.PLUG_EXPELLED_OUTSIDE: 0.5,
        delivery_causes_galleries.GALLERY_PLUG_MISSING: 0.5,
        bearings_causes.THRUST_BEARING_WEAR: 0.75,
        suction_causes_sump.PAN_DENTED: 0.75,
        leaks_causes_openings.SENDER_LEAK: 0.5,
        instrument_causes.WIRING_GROUND_FAULT: 0.75,
        leaks_causes.EXTERNAL_LEAK_MAJOR: 0.5,
    },
    source=JUDGEMENT,
    implies=(findings.JUST_WORKED_ON,),
    also=("new clutch", "rear main seal renewed", "gearbox out"),
)
NOTHING = WorkArea(
    id="nothing",
    station=Station.ASSEMBLY,
    says="nothing at all: nobody had touched the engine",
    asks="Nobody touched the engine before it began?",
    causes=dict.fromkeys(
        (
            *strongly_raised_by(findings.FRESHLY_REBUILT),
            *strongly_raised_by(findings.OIL_JUST_CHANGED),
        ),
        1.0,
    ),
    source=JUDGEMENT,
    also=("nothing was touched", "not worked on", "never apart"),
)
