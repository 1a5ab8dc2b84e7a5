"""Root cause at bearings poured in place, without shells, and what it leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import MOSTLY, OFTEN, UP, Cause, Rate, Shifts, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.bearings import findings, findings_measured, findings_shells

POURED_BEARING_BROKEN_UP = Cause(
    id="poured_bearing_broken_up",
    station=Station.BEARINGS,
    says="poured bearing metal (babbitt) aged, came off its seat or broke up",
    mechanism=(
        "metal that lost its bond moves and cracks under load until pieces fall out; the gap they "
        "leave lets the oil out"
    ),
    rate=Rate.VERY_RARE,
    shifts=Shifts(high_mileage=UP, stood_long=UP),
    remedy=(
        "pour and bore that bearing again with its seat cleaned and tinned; tap the others: "
        "metal that rings dull has lost its bond"
    ),
    source=sources.POURED_BEARING_THREAD,
    follows="pieces travel with the oil; the journal runs on what is left",
    also=(
        "babbitt fatigue",
        "babbitt broke up",
        "poured bearing came loose",
        "white metal cracked",
        "old babbitt",
    ),
)
METAL_THAT_LEAVES_ITS_SEAT = LinkGroup(
    id="metal_that_leaves_its_seat",
    station=Station.BEARINGS,
    says="Poured metal that has lost its bond cracks, flakes and falls out in pieces.",
    parent=POURED_BEARING_BROKEN_UP,
    effects={
        conditions.CLEARANCES_WIDE: (OFTEN, COMMON_PRACTICE),
        conditions.METAL_SHED: (MOSTLY, sources.POURED_BEARING_THREAD),
        conditions.BEARINGS_DAMAGED: (OFTEN, sources.POURED_BEARING_THREAD),
        findings_shells.SHELLS_FLAKING: (MOSTLY, sources.POURED_BEARING_THREAD),
        findings_shells.SHELLS_FOUND_RUINED: (OFTEN, COMMON_PRACTICE),
        findings_measured.MAIN_CLEARANCE_TOO_WIDE: (OFTEN, COMMON_PRACTICE),
        findings.BEARING_KNOCK: (OFTEN, JUDGEMENT),
    },
    matches=[example(findings_shells.SHELLS_FLAKING)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW, lacks=[findings_shells.SHELLS_FLAKING]),
        example(findings.BEARING_KNOCK, lacks=[findings_shells.SHELLS_FLAKING]),
    ],
)
