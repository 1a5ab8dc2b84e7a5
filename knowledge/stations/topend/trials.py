"""What is tried at camshaft, valve gear, chain and turbo, and which causes it cures."""

from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.topend import causes, causes_feeds, causes_phasers

NEW_CAM_BEARINGS = trial(
    id="new_cam_bearings",
    station=Station.TOPEND,
    says="new cam bearings were fitted",
    asks="New cam bearings fitted? If so, what did it do?",
    cures={
        causes.CAM_BEARING_WEAR: (MOSTLY, COMMON_PRACTICE),
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("cam bearings renewed", "new camshaft bearings"),
)
NEW_LIFTERS = trial(
    id="new_lifters",
    station=Station.TOPEND,
    says="new lifters were fitted, or one put back in its bore",
    asks="New lifters fitted? If so, what did it do?",
    cures={
        causes.LIFTER_BORE_LEAK: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("replaced the lifters", "new tappets"),
)
NEW_TENSIONER = trial(
    id="new_tensioner",
    station=Station.TOPEND,
    says="a new chain tensioner, or its seal, was fitted",
    asks="New chain tensioner or seal fitted? If so, what did it do?",
    cures={
        causes.TENSIONER_SEAL_LEAK: (MOSTLY, COMMON_PRACTICE),
        assembly_causes.TIMING_GEAR_SHEDDING: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new timing chain tensioner", "tensioner renewed"),
)
ROCKER_GEAR_RENEWED = trial(
    id="rocker_gear_renewed",
    station=Station.TOPEND,
    says="rocker shafts, bushes or end plugs were renewed",
    asks="Rocker shafts, bushes or end plugs renewed? If so, what did it do?",
    cures={
        causes.ROCKER_SHAFT_LEAK: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new rocker shaft", "rocker bushes renewed"),
)
RESTRICTOR_FITTED = trial(
    id="restrictor_fitted",
    station=Station.TOPEND,
    says="a restrictor was fitted in the feed to head, chain or turbo",
    asks="Restrictor fitted in the feed to head, chain or turbo? If so, what did it do?",
    cures={
        causes_feeds.RESTRICTOR_MISSING: (MOSTLY, COMMON_PRACTICE),
        causes.ROCKER_SHAFT_LEAK: (SOMETIMES, JUDGEMENT),
        causes.CAM_BEARING_WEAR: (SOMETIMES, JUDGEMENT),
        causes.LIFTER_BORE_LEAK: (SOMETIMES, JUDGEMENT),
        causes_feeds.TURBO_FEED_LEAK: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("fitted lifter restrictors", "restricted the oil to the heads"),
)
PISTON_JETS_RENEWED = trial(
    id="piston_jets_renewed",
    station=Station.TOPEND,
    says="piston cooling jets were renewed or refitted",
    asks="Piston cooling jets renewed or refitted? If so, what did it do?",
    cures={
        causes_feeds.PISTON_JET_OPEN: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new piston jets", "oil squirters renewed"),
)
NEW_TURBO = trial(
    id="new_turbo",
    station=Station.TOPEND,
    says="a new turbo, or its feed line, was fitted",
    asks="New turbo or feed line fitted? If so, what did it do?",
    cures={
        causes_feeds.TURBO_FEED_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes_feeds.TURBO_FEED_RESTRICTED: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("replaced the turbo", "new turbo oil line"),
)
CAM_PHASER_RENEWED = trial(
    id="cam_phaser_renewed",
    station=Station.TOPEND,
    says="a cam phaser, or its oil control valve, was renewed",
    asks="Cam phaser or its oil control valve renewed? If so, what did it do?",
    cures={causes_phasers.CAM_PHASER_LEAK: (MOSTLY, COMMON_PRACTICE)},
    source=COMMON_PRACTICE,
    also=("new cam phaser", "new variable timing solenoid"),
)
