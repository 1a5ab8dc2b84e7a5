"""What is tried at the pump and its drive, and which causes it cures."""

from knowledge import sources
from knowledge.model import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.pump import (
    causes,
    causes_drive,
    causes_fitted,
    causes_variable,
    findings_priming,
)
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds

NEW_PUMP = trial(
    id="new_pump",
    station=Station.PUMP,
    says="a new oil pump was fitted",
    asks="New oil pump? If so, what did it do?",
    cures={
        causes.PUMP_GEAR_WEAR: (MOSTLY, COMMON_PRACTICE),
        causes.PUMP_COVER_SCORED: (MOSTLY, COMMON_PRACTICE),
        causes.PUMP_COVER_LOOSE: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_ROTOR_REVERSED: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_BODY_CRACKED: (ALWAYS, COMMON_PRACTICE),
        causes_fitted.PUMP_IDLER_PIN_MIGRATED: (ALWAYS, COMMON_PRACTICE),
        causes_variable.PUMP_ROTOR_SHATTERED: (ALWAYS, COMMON_PRACTICE),
        causes_variable.PUMP_CONTROL_STUCK: (OFTEN, COMMON_PRACTICE),
        causes.PUMP_DEBRIS_LOCK: (OFTEN, COMMON_PRACTICE),
        causes.PUMP_MOUNT_LEAK: (OFTEN, COMMON_PRACTICE),
        causes.PUMP_GASKET_WRONG: (OFTEN, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_SLIP: (SOMETIMES, JUDGEMENT),
        causes_drive.PUMP_DRIVE_BROKEN: (SOMETIMES, JUDGEMENT),
        causes_drive.PUMP_DRIVE_BIND: (SOMETIMES, JUDGEMENT),
        causes_fitted.PUMP_WRONG_PART: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_NOT_PRIMED: (SOMETIMES, JUDGEMENT),
        causes_fitted.PUMP_OVERSIZED: (SOMETIMES, JUDGEMENT),
        causes_fitted.PUMP_CAVITATION: (SELDOM, JUDGEMENT),
        relief_causes.RELIEF_DEBRIS: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_BORE_SCORED: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_SPRING_WEAK_BROKEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_SPRING_WRONG: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_CAP_LOOSE: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_HUNTING: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_CLOSED: (SOMETIMES, JUDGEMENT),
        suction_causes.PICKUP_TUBE_LOOSE: (SOMETIMES, JUDGEMENT),
        suction_causes.SUCTION_JOINT_AIR_LEAK: (SOMETIMES, JUDGEMENT),
        suction_causes.PICKUP_SCREEN_BLOCKED: (SOMETIMES, JUDGEMENT),
        suction_causes.PICKUP_TUBE_CRACKED: (SELDOM, JUDGEMENT),
    },
    source=sources.GALLERY_PLUG_LEFT_OUT,
    retired=("no_better_with_new_pump",),
    also=(
        "new pump didn't help",
        "already replaced the pump",
        "replaced the oil pump",
        "new pump still low",
        "new oil pump no change",
        "second pump fitted",
    ),
)
PUMP_REBUILT = trial(
    id="pump_rebuilt",
    station=Station.PUMP,
    says="the oil pump was taken apart and rebuilt",
    asks="Oil pump taken apart and rebuilt? If so, what did it do?",
    cures={
        causes.PUMP_GEAR_WEAR: (OFTEN, COMMON_PRACTICE),
        # a kit of gears leaves the old cover in place
        causes.PUMP_COVER_SCORED: (OFTEN, COMMON_PRACTICE),
        causes.PUMP_COVER_LOOSE: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_ROTOR_REVERSED: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_IDLER_PIN_MIGRATED: (SOMETIMES, JUDGEMENT),
        causes.PUMP_DEBRIS_LOCK: (OFTEN, COMMON_PRACTICE),
        causes.PUMP_MOUNT_LEAK: (OFTEN, COMMON_PRACTICE),
        causes.PUMP_GASKET_WRONG: (OFTEN, COMMON_PRACTICE),
        relief_causes.RELIEF_DEBRIS: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_CAP_LOOSE: (SOMETIMES, JUDGEMENT),
        suction_causes.PICKUP_SCREEN_BLOCKED: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("lapped the pump cover", "new gears in the pump", "overhauled the oil pump"),
)
HIGH_VOLUME_PUMP = trial(
    id="high_volume_pump",
    station=Station.PUMP,
    says="a pump of higher volume was fitted",
    asks="High-volume pump fitted? If so, what did it do?",
    cures={
        causes.PUMP_GEAR_WEAR: (MOSTLY, COMMON_PRACTICE),
        causes.PUMP_COVER_SCORED: (MOSTLY, COMMON_PRACTICE),
        causes.PUMP_COVER_LOOSE: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_BODY_CRACKED: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_IDLER_PIN_MIGRATED: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_ROTOR_REVERSED: (MOSTLY, COMMON_PRACTICE),
        causes.PUMP_DEBRIS_LOCK: (OFTEN, COMMON_PRACTICE),
        causes.PUMP_MOUNT_LEAK: (OFTEN, COMMON_PRACTICE),
        bearings_causes.BEARING_WEAR_MAINS: (SOMETIMES, JUDGEMENT),
        bearings_causes.BEARING_WEAR_RODS: (SOMETIMES, JUDGEMENT),
        topend_causes.CAM_BEARING_WEAR: (SOMETIMES, JUDGEMENT),
        topend_causes.LIFTER_BORE_LEAK: (SOMETIMES, JUDGEMENT),
        bearings_causes.BEARING_WRONG_SIZE: (SOMETIMES, JUDGEMENT),
        delivery_causes_galleries.GALLERY_PLUG_MISSING: (SELDOM, JUDGEMENT),
        relief_causes.RELIEF_DEBRIS: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_BORE_SCORED: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_SPRING_WEAK_BROKEN: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("high volume oil pump", "bigger pump"),
)
STANDARD_PUMP = trial(
    id="standard_pump",
    station=Station.PUMP,
    says="the pump listed for the engine was fitted in place of another",
    asks="Listed pump fitted in place of another? If so, what did it do?",
    cures={
        causes_fitted.PUMP_OVERSIZED: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.PUMP_WRONG_PART: (ALWAYS, COMMON_PRACTICE),
        causes_fitted.PUMP_CAVITATION: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("back to the stock pump", "correct pump fitted"),
)
PUMP_PRIMED = trial(
    id="pump_primed",
    station=Station.PUMP,
    says="the pump was primed, packed with jelly, or oil forced through",
    asks="Pump primed, packed or oil forced through? If so, what did it do?",
    cures={
        causes_fitted.PUMP_NOT_PRIMED: (MOSTLY, COMMON_PRACTICE),
        suction_causes.SUCTION_JOINT_AIR_LEAK: (SOMETIMES, JUDGEMENT),
        causes.PUMP_GEAR_WEAR: (SELDOM, JUDGEMENT),
        delivery_causes.FILTER_DRAINBACK: (SELDOM, JUDGEMENT),
    },
    source=sources.PUMP_INSTALLATION_1983,
    cured=findings_priming.FORCED_OIL_BROUGHT_PRESSURE,
    retired=("packed_still_none",),
    also=(
        "packed with vaseline still no pressure",
        "primed it twice still nothing",
        "filled pump with oil no pressure",
        "primed the oil pump",
        "packed the pump with vaseline",
        "petroleum jelly in pump",
        "primed with a drill",
        "pressure tank",
    ),
)
OIL_POURED_IN = trial(
    id="oil_poured_in",
    station=Station.PUMP,
    says="oil was poured into pump, line or filter head",
    asks="Oil poured into pump, line or filter head? If so, what did it do?",
    cures={
        causes_fitted.PUMP_NOT_PRIMED: (OFTEN, COMMON_PRACTICE),
    },
    source=sources.FILTER_MAKER_PRIME,
    retired=("oil_poured_in_no_help",),
    also=(
        "funnelled oil in still nothing",
        "filled the filter no change",
        "poured oil in the pump",
        "filled the filter and the line",
        "squirted oil in the port",
    ),
)
PUMP_DRIVE_RENEWED = trial(
    id="pump_drive_renewed",
    station=Station.PUMP,
    says="the pump's drive (shaft, gear, chain or coupling) was renewed",
    asks="Pump drive renewed? If so, what did it do?",
    cures={
        assembly_causes_left_out.PUMP_DRIVE_LEFT_OUT: (MOSTLY, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_BROKEN: (MOSTLY, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_SLIP: (MOSTLY, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_BIND: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new pump drive shaft", "new intermediate shaft", "new pump chain"),
)
DISTRIBUTOR_REFITTED = trial(
    id="distributor_refitted",
    station=Station.PUMP,
    says="the distributor was taken out and refitted, or renewed",
    asks="Distributor refitted or renewed? If so, what did it do?",
    cures={
        causes_drive.PUMP_DRIVE_BROKEN: (SOMETIMES, JUDGEMENT),
        causes_drive.PUMP_DRIVE_BIND: (OFTEN, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_SLIP: (SOMETIMES, JUDGEMENT),
        topend_causes_feeds.DIST_HOUSING_LEAK: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("pulled the distributor", "new distributor", "seated the distributor on the drive"),
)
PUMP_REFITTED = trial(
    id="pump_refitted",
    station=Station.PUMP,
    says="the pump was taken off and refitted with a new gasket or tight bolts",
    asks="Pump refitted with a new gasket or tight bolts? If so, what did it do?",
    cures={
        causes.PUMP_MOUNT_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes.PUMP_GASKET_WRONG: (MOSTLY, COMMON_PRACTICE),
        causes.PUMP_COVER_LOOSE: (OFTEN, COMMON_PRACTICE),
        suction_causes.PICKUP_TUBE_LOOSE: (SOMETIMES, JUDGEMENT),
        suction_causes.SUCTION_JOINT_AIR_LEAK: (SOMETIMES, JUDGEMENT),
        causes_drive.PUMP_DRIVE_BIND: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("tightened the pump bolts", "new pump gasket", "tightened the pump cover"),
)
SCAVENGE_MENDED = trial(
    id="scavenge_mended",
    station=Station.PUMP,
    says="the dry sump's scavenge pump or belt was put right",
    asks="Scavenge pump or its belt put right? If so, what did it do?",
    cures={
        causes_fitted.SCAVENGE_FAILURE: (MOSTLY, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_BROKEN: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new scavenge belt", "primed the scavenge stage"),
)
