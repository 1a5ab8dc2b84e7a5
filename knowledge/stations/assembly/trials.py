"""What is tried at what was put together inside, and which causes it cures."""

from knowledge.model import MOSTLY, OFTEN, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump

BOLTS_TIGHTENED = trial(
    id="bolts_tightened",
    station=Station.ASSEMBLY,
    says="bolts inside were found loose and tightened",
    asks="Bolts inside tightened? If so, what did it do?",
    cures={
        causes.FASTENER_LOOSE_INSIDE: (MOSTLY, COMMON_PRACTICE),
        causes.CAP_SWAPPED: (SOMETIMES, JUDGEMENT),
        pump_causes.PUMP_MOUNT_LEAK: (OFTEN, COMMON_PRACTICE),
        pump_causes.PUMP_COVER_LOOSE: (OFTEN, COMMON_PRACTICE),
        suction_causes.PICKUP_TUBE_LOOSE: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("retorqued everything", "bolts retightened"),
)
TIMING_GEAR_RENEWED = trial(
    id="timing_gear_renewed",
    station=Station.ASSEMBLY,
    says="timing gears, chain or guides were renewed",
    asks="Timing gears, chain or guides renewed? If so, what did it do?",
    cures={
        causes.TIMING_GEAR_SHEDDING: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new timing gear", "new timing chain"),
)
STRIPPED_AND_CLEANED = trial(
    id="stripped_and_cleaned",
    station=Station.ASSEMBLY,
    says="the engine was stripped, cleaned and put together again",
    asks="Engine stripped and cleaned? If so, what did it do?",
    cures={
        causes.DIRT_IN_ASSEMBLY: (MOSTLY, COMMON_PRACTICE),
        causes.SEALANT_DEBRIS: (MOSTLY, COMMON_PRACTICE),
        causes.ASSEMBLY_LUBE_CLOG: (MOSTLY, COMMON_PRACTICE),
        causes.PART_SHEDDING_INSIDE: (OFTEN, COMMON_PRACTICE),
        delivery_causes_galleries.GALLERY_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        relief_causes.RELIEF_DEBRIS: (MOSTLY, COMMON_PRACTICE),
        suction_causes.PICKUP_SCREEN_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: (MOSTLY, COMMON_PRACTICE),
        causes.TIMING_GEAR_SHEDDING: (OFTEN, COMMON_PRACTICE),
        causes.FASTENER_LOOSE_INSIDE: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("cleaned everything",),
)
