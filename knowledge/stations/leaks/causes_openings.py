"""Root causes at breather, plugs, caps and covers, and what each leads to."""

from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_DOWN,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.instrument import findings_sender as instrument_sender
from knowledge.stations.leaks import findings, findings_places
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.stations.oil import findings_record as oil_record

BREATHER_BLOCKED = Cause(
    id="breather_blocked",
    station=Station.LEAKS,
    says="crankcase breather blocked, so oil is pushed out past the seals",
    mechanism=(
        "blow-by cannot get out; crankcase pressure lifts the dipstick and the seals and drives "
        "oil out"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, stood_long=UP, raced_or_heeled=UP),
    remedy="clear or renew valve, hose and trap; then see which seals still leak",
    source=COMMON_PRACTICE,
    follows="seals pushed out one after the other, low level",
    also=(
        "pcv stuck",
        "pcv valve clogged",
        "breather iced up",
        "crankcase pressure",
        "dipstick blows out",
    ),
)
LOST_IN_THE_FROST_ONLY = LinkGroup(
    id="lost_in_the_frost_only",
    station=Station.LEAKS,
    says=(
        "Oil lost only in frost, none at rest: ice closes the breather and crankcase pressure "
        "blows the oil out."
    ),
    parent=BREATHER_BLOCKED,
    effects={
        findings.OIL_LOST_ONLY_IN_FROST: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.OIL_LOST_ONLY_IN_FROST)],
    non_matches=[example(findings.OIL_SEEN_OUTSIDE, lacks=[findings.OIL_LOST_ONLY_IN_FROST])],
)
CAP_LEFT_ON_THE_BREATHER = LinkGroup(
    id="cap_left_on_the_breather",
    station=Station.LEAKS,
    says=(
        "Oil thrown out straight after other work: look for a breather capped, kinked or "
        "connected wrongly."
    ),
    parent=BREATHER_BLOCKED,
    effects={
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.OIL_SEEN_OUTSIDE, behaviour.CHANGED_AFTER_OTHER_WORK)],
    non_matches=[example(findings.OIL_SEEN_OUTSIDE, lacks=[behaviour.CHANGED_AFTER_OTHER_WORK])],
)
CRANKCASE_THAT_CANNOT_BREATHE = LinkGroup(
    id="crankcase_that_cannot_breathe",
    station=Station.LEAKS,
    says=(
        "A blocked breather drives oil out wherever it can: several seals at once, dipstick "
        "pushed up."
    ),
    note="Misleads when the rings leak so much that even a clear breather cannot cope.",
    parent=BREATHER_BLOCKED,
    effects={
        conditions.OIL_ESCAPING: (OFTEN, COMMON_PRACTICE),
        findings_places.BREATHER_FOUND_BLOCKED: (ALWAYS, COMMON_PRACTICE),
        oil_heat.BLOW_BY_HIGH: (MOSTLY, COMMON_PRACTICE),
        findings.SEVERAL_SEALS_AT_ONCE: (OFTEN, COMMON_PRACTICE),
        findings.SEAL_OR_GASKET_WET: (MOSTLY, COMMON_PRACTICE),
        findings_places.DIPSTICK_PUSHED_OUT: (OFTEN, COMMON_PRACTICE),
        findings.LEAKS_ONLY_RUNNING: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(findings_places.BREATHER_FOUND_BLOCKED),
        example(findings.SEVERAL_SEALS_AT_ONCE, findings_places.DIPSTICK_PUSHED_OUT),
    ],
    non_matches=[
        example(
            findings.SEAL_OR_GASKET_WET,
            lacks=[findings_places.BREATHER_FOUND_BLOCKED, oil_heat.BLOW_BY_HIGH],
        )
    ],
)

SENDER_LEAK = Cause(
    id="sender_leak",
    station=Station.LEAKS,
    says="oil pressure sender or switch leaks or broke off",
    mechanism=(
        "gallery oil escapes through its small hole: little pressure lost, but much oil in time"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="fit a new sender with the right thread; mount a heavy one on a hose and bracket",
    source=COMMON_PRACTICE,
    follows="false reading, oil on hot parts, sump emptied in an hour or so",
    also=(
        "oil pressure switch leaking",
        "sending unit leaks",
        "sender broke off",
        "oil in the sensor plug",
    ),
)
SENDER_THAT_LEAKS_LIES_TOO = LinkGroup(
    id="sender_that_leaks_lies_too",
    station=Station.LEAKS,
    says="A leaking sender loses gallery oil through a small hole, and often reads wrong as well.",
    parent=SENDER_LEAK,
    effects={
        conditions.OIL_ESCAPING: (MOSTLY, COMMON_PRACTICE),
        conditions.READING_FALSE: (OFTEN, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SELDOM, COMMON_PRACTICE),
        instrument_sender.SENDER_LEAKS_OIL: (ALWAYS, COMMON_PRACTICE),
        findings.LEAKS_ONLY_RUNNING: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(instrument_sender.SENDER_LEAKS_OIL),
        example(instrument_sender.SENDER_LEAKS_OIL, findings.OIL_SEEN_OUTSIDE),
    ],
    non_matches=[example(findings.OIL_SEEN_OUTSIDE, lacks=[instrument_sender.SENDER_LEAKS_OIL])],
)

PLUG_EXPELLED_OUTSIDE = Cause(
    id="plug_expelled_outside",
    station=Station.LEAKS,
    says="core, cup or gallery plug pressed out to the outside",
    mechanism=(
        "the gallery is open: oil shoots out, the pressure falls at once, then the sump empties"
    ),
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy=(
        "clean the bore, fit a new plug with sealer, stake it or fit a threaded one; check the "
        "relief valve"
    ),
    source=COMMON_PRACTICE,
    follows="all oil lost in a minute, fire, wiped bearings",
    also=(
        "oil gallery plug blew out",
        "freeze plug out",
        "welch plug popped",
        "expansion plug came out",
    ),
)
PLUG_SHOT_OUT_OF_THE_BLOCK = LinkGroup(
    id="plug_shot_out_of_the_block",
    station=Station.LEAKS,
    says=(
        "A plug shot out of the block opens the gallery to the outside: pressure and oil go at "
        "once."
    ),
    parent=PLUG_EXPELLED_OUTSIDE,
    effects={
        conditions.OIL_ESCAPING: (ALWAYS, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (MOSTLY, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (MOSTLY, COMMON_PRACTICE),
        findings.CUP_PLUG_FOUND_OUT: (ALWAYS, COMMON_PRACTICE),
        findings.OIL_FROM_BELLHOUSING: (SOMETIMES, COMMON_PRACTICE),
        findings.LEAKS_ONLY_RUNNING: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(findings.CUP_PLUG_FOUND_OUT, patterns.FELL_SUDDENLY),
        example(findings.CUP_PLUG_FOUND_OUT),
    ],
    non_matches=[example(patterns.FELL_SUDDENLY, lacks=[findings.CUP_PLUG_FOUND_OUT])],
)

SUMP_HOLED = Cause(
    id="sump_holed",
    station=Station.LEAKS,
    says="sump or casing holed or cracked",
    mechanism="the sump drains; the pressure holds until the pickup is out of the oil",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(raced_or_heeled=UP),
    remedy="repair or renew the sump, check pickup gap and strainer, fit a guard",
    source=COMMON_PRACTICE,
    follows="dry pickup and wiped bearings if driven on",
    also=(
        "cracked oil pan",
        "hole in the sump",
        "hit a rock and lost oil",
        "cracked block",
        "rusted through oil pan",
    ),
)
HOLE_IN_THE_SUMP = LinkGroup(
    id="hole_in_the_sump",
    station=Station.LEAKS,
    says="A holed sump holds pressure until the pickup is out of the oil, then none is left.",
    parent=SUMP_HOLED,
    effects={
        conditions.OIL_ESCAPING: (ALWAYS, COMMON_PRACTICE),
        findings.SUMP_FOUND_HOLED: (ALWAYS, COMMON_PRACTICE),
        oil_record.LEVEL_FALLS_STANDING: (MOSTLY, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_KNOCK: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.CHANGED_AFTER_KNOCK, findings.SUMP_FOUND_HOLED),
        example(findings.SUMP_FOUND_HOLED),
    ],
    non_matches=[example(behaviour.CHANGED_AFTER_KNOCK, lacks=[findings.SUMP_FOUND_HOLED])],
)

FILLER_CAP_OFF = Cause(
    id="filler_cap_off",
    station=Station.LEAKS,
    says="oil filler cap or dipstick left off or not seated",
    mechanism="oil mist and splash blow out; the level falls as long as it runs",
    rate=Rate.RARE,
    shifts=Shifts(freshly_rebuilt=UP, oil_just_changed=STRONG_UP),
    remedy="refit cap and dipstick, clean down, fill to the mark",
    source=COMMON_PRACTICE,
    follows="oil over the hot engine, low level",
    also=(
        "left the oil cap off",
        "forgot the filler cap",
        "dipstick not pushed in",
        "oil cap gone",
    ),
)
CAP_LEFT_OFF = LinkGroup(
    id="cap_left_off",
    station=Station.LEAKS,
    says="With the filler cap or dipstick off, oil blows out over the engine as long as it runs.",
    parent=FILLER_CAP_OFF,
    effects={
        conditions.OIL_ESCAPING: (OFTEN, COMMON_PRACTICE),
        findings_places.FILLER_CAP_FOUND_OFF: (ALWAYS, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (OFTEN, COMMON_PRACTICE),
        findings.LEAKS_ONLY_RUNNING: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[example(findings_places.FILLER_CAP_FOUND_OFF, behaviour.CHANGED_WITH_OIL_CHANGE)],
    non_matches=[
        example(behaviour.CHANGED_WITH_OIL_CHANGE, lacks=[findings_places.FILLER_CAP_FOUND_OFF])
    ],
)

WRONG_GASKET_ON_ACCESSORY = Cause(
    id="wrong_gasket_on_accessory",
    station=Station.LEAKS,
    says="wrong gasket under a pad-mounted accessory leaves an oil port open",
    mechanism=(
        "a pressure port at the pad empties into the crankcase or outside: low at every speed"
    ),
    rate=Rate.VERY_RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="fit the gasket made for that pad and compare its holes with both faces",
    source=COMMON_PRACTICE,
    follows="starved bearings although every part is new",
    also=(
        "wrong gasket",
        "accessory drive gasket",
        "vacuum pump gasket",
        "tach drive pad leaking",
        "governor mount gasket",
    ),
)
PORT_LEFT_OPEN_UNDER_AN_ACCESSORY = LinkGroup(
    id="port_left_open_under_an_accessory",
    station=Station.LEAKS,
    says=(
        "A wrong gasket under an accessory leaves an oil port open, mostly into the engine, out "
        "of sight."
    ),
    parent=WRONG_GASKET_ON_ACCESSORY,
    effects={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, JUDGEMENT),
        conditions.OIL_ESCAPING: (SOMETIMES, JUDGEMENT),
        findings_places.ACCESSORY_PORT_UNCOVERED: (ALWAYS, COMMON_PRACTICE),
        findings.ACCESSORY_PAD_WET: (SOMETIMES, JUDGEMENT),
        behaviour.CHANGED_AFTER_OTHER_WORK: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(findings_places.ACCESSORY_PORT_UNCOVERED),
        example(behaviour.CHANGED_AFTER_OTHER_WORK, findings.ACCESSORY_PAD_WET),
    ],
    non_matches=[
        example(
            behaviour.CHANGED_AFTER_OTHER_WORK,
            lacks=[findings_places.ACCESSORY_PORT_UNCOVERED, findings.ACCESSORY_PAD_WET],
        )
    ],
)
