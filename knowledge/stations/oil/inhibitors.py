"""What the stick and the thermometer rule out: seen only rarely beside it."""

from knowledge.model import ALWAYS, MOSTLY, Station
from knowledge.pressure import patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.oil import causes, causes_condition, findings, findings_heat

TOO_LITTLE_IS_NOT_TOO_MUCH = InhibitorGroup(
    id="too_little_is_not_too_much",
    station=Station.OIL,
    says="A level below the mark rules out too much oil.",
    note="Misleads when the stick is the wrong one, or was read on a slope.",
    child=findings.DIPSTICK_LOW,
    inhibited_by={causes.OIL_LEVEL_HIGH: (ALWAYS, COMMON_PRACTICE)},
    matches=[example(patterns.GAUGE_READS_LOW, findings.DIPSTICK_LOW)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
TOO_MUCH_IS_NOT_TOO_LITTLE = InhibitorGroup(
    id="too_much_is_not_too_little",
    station=Station.OIL,
    says="A level above the mark, or one that rises, rules out too little oil.",
    parent=causes.OIL_LEVEL_LOW,
    inhibits={
        findings.LEVEL_HIGH: (ALWAYS, COMMON_PRACTICE),
        findings.LEVEL_RISEN: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings.LEVEL_HIGH),
        example(patterns.GAUGE_READS_LOW, findings.LEVEL_RISEN),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
THIN_IS_NOT_THICK = InhibitorGroup(
    id="thin_is_not_thick",
    station=Station.OIL,
    says="Oil that runs off the stick like water is not too thick a grade.",
    child=findings.OIL_THIN_ON_STICK,
    inhibited_by={causes.VISCOSITY_TOO_HIGH: (ALWAYS, JUDGEMENT)},
    matches=[example(patterns.GAUGE_READS_HIGH, findings.OIL_THIN_ON_STICK)],
    non_matches=[example(patterns.GAUGE_READS_HIGH)],
)
HOT_IS_NOT_COLD = InhibitorGroup(
    id="hot_is_not_cold",
    station=Station.OIL,
    says="Overheated oil cannot give a cold-oil reading.",
    child=findings_heat.OIL_TEMPERATURE_HIGH,
    inhibited_by={causes_condition.OIL_COLD_NORMAL: (ALWAYS, COMMON_PRACTICE)},
    matches=[example(patterns.GAUGE_READS_HIGH, findings_heat.OIL_TEMPERATURE_HIGH)],
    non_matches=[example(patterns.GAUGE_READS_HIGH)],
)
