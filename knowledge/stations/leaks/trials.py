"""What is tried at what leaks to the outside, and which causes it cures."""

from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.leaks import causes, causes_openings
from knowledge.stations.suction import causes_sump as suction_causes_sump

SEALS_RENEWED = trial(
    id="seals_renewed",
    station=Station.LEAKS,
    says="seals, gaskets or plugs on the outside were renewed",
    asks="Outside seals, gaskets or plugs renewed? If so, what did it do?",
    cures={
        causes.SHAFT_SEAL_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes_openings.WRONG_GASKET_ON_ACCESSORY: (OFTEN, COMMON_PRACTICE),
        causes_openings.PLUG_EXPELLED_OUTSIDE: (OFTEN, COMMON_PRACTICE),
        causes.EXTERNAL_LEAK_MAJOR: (OFTEN, COMMON_PRACTICE),
        causes_openings.SENDER_LEAK: (SELDOM, JUDGEMENT),
        causes_openings.SUMP_HOLED: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new rear main seal", "new gaskets", "new core plug"),
)
OIL_LINE_RENEWED = trial(
    id="oil_line_renewed",
    station=Station.LEAKS,
    says="an oil line, hose or union was renewed or tightened",
    asks="Oil line, hose or union renewed or tightened? If so, what did it do?",
    cures={
        causes.OIL_LINE_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes.EXTERNAL_LEAK_MAJOR: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.SUCTION_HOSE_COLLAPSED: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new oil hose", "tightened the oil line"),
)
FILTER_TIGHTENED = trial(
    id="filter_tightened",
    station=Station.LEAKS,
    says="the oil filter was tightened or its seal renewed",
    asks="Oil filter tightened or its seal renewed? If so, what did it do?",
    cures={
        causes.FILTER_SEAL_LEAK: (MOSTLY, COMMON_PRACTICE),
        delivery_causes.FILTER_WRONG: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("filter spun tighter", "new filter gasket"),
)
DRAIN_PLUG_TIGHTENED = trial(
    id="drain_plug_tightened",
    station=Station.LEAKS,
    says="the drain plug, filler cap or dipstick was tightened or renewed",
    asks="Drain plug, filler cap or dipstick tightened or renewed? If so, what did it do?",
    cures={
        causes.DRAIN_PLUG_OUT: (MOSTLY, COMMON_PRACTICE),
        causes_openings.FILLER_CAP_OFF: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new drain plug", "new sump washer", "cap put back"),
)
BREATHER_CLEANED = trial(
    id="breather_cleaned",
    station=Station.LEAKS,
    says="the crankcase breather or its valve was cleaned or renewed",
    asks="Crankcase breather cleaned or renewed? If so, what did it do?",
    cures={
        causes_openings.BREATHER_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        causes.SHAFT_SEAL_LEAK: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new PCV valve", "cleaned the PCV", "cleared the breather hose"),
)
