"""Root causes in priming, choice and fitting of the pump, and what each leads to."""

from knowledge import sources
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
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS
from knowledge.stations.oil import findings_heat
from knowledge.stations.pump import (
    findings,
    findings_bench,
    findings_drive,
    findings_mount,
    findings_priming,
    findings_scavenge,
    findings_wear,
)

PUMP_NOT_PRIMED = Cause(
    id="pump_not_primed",
    station=Station.PUMP,
    says="pump dry: never primed after work or storage",
    mechanism="a dry pump cannot draw oil: no pressure for many seconds, sometimes never",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, stood_long=STRONG_UP),
    remedy="prime the pump and the galleries before another start",
    source=sources.FILTER_MAKER_PRIME,
    follows="bearings wiped by a dry start",
    also=("lost prime", "pump not primed", "oil pump won't prime", "air locked oil pump"),
)
OPENING_A_PUMP_LOSES_ITS_PRIME = LinkGroup(
    id="opening_a_pump_loses_its_prime",
    station=Station.PUMP,
    says="A pump that was renewed or opened has lost its prime and may not draw oil at all.",
    parent=PUMP_NOT_PRIMED,
    effects={
        behaviour.CHANGED_WITH_NEW_PUMP: (SOMETIMES, sources.PUMP_INSTALLATION_1983),
    },
    matches=[example(behaviour.CHANGED_WITH_NEW_PUMP, behaviour.NONE_FROM_FIRST_START)],
    non_matches=[example(behaviour.NONE_FROM_FIRST_START, lacks=[behaviour.CHANGED_WITH_NEW_PUMP])],
)

PUMP_WRONG_PART = Cause(
    id="pump_wrong_part",
    station=Station.PUMP,
    says="wrong pump: capacity, rotation, height or drive ratio",
    mechanism="a steady, wrong pressure since the day it was fitted",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="fit the pump listed for this engine and this sump",
    source=sources.OVERHAUL_MANUAL_5_101,
    follows="starved bearings or a worn drive",
    also=("wrong oil pump", "oil pump from another engine", "pump turns the wrong way"),
)
PUMP_MEANT_FOR_ANOTHER_ENGINE = LinkGroup(
    id="pump_meant_for_another_engine",
    station=Station.PUMP,
    says=(
        "A pump of the wrong size, height, rotation or ratio gives a steady, wrong pressure from "
        "the first day."
    ),
    parent=PUMP_WRONG_PART,
    effects={
        conditions.DELIVERY_REDUCED: (MOSTLY, sources.OVERHAUL_MANUAL_5_101),
        conditions.PRESSURE_HIGH: (SOMETIMES, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SELDOM, JUDGEMENT),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, sources.OVERHAUL_MANUAL_5_101),
        behaviour.CHANGED_WITH_NEW_PUMP: (OFTEN, COMMON_PRACTICE),
        findings_mount.WRONG_PUMP_FITTED: (MOSTLY, COMMON_PRACTICE),
        findings_priming.NO_OIL_WHEN_CRANKED: (SELDOM, JUDGEMENT),
        behaviour.NONE_FROM_FIRST_START: (SOMETIMES, COMMON_PRACTICE),  # of the other rotation
    },
    matches=[example(behaviour.LOW_FROM_FIRST_START, findings_mount.WRONG_PUMP_FITTED)],
    non_matches=[example(behaviour.LOW_FROM_FIRST_START, lacks=[findings_mount.WRONG_PUMP_FITTED])],
)

PUMP_ROTOR_REVERSED = Cause(
    id="pump_rotor_reversed",
    station=Station.PUMP,
    says="pump rotor fitted the wrong way round or off its marks",
    mechanism="the pump delivers about half: low from its first start",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="refit the rotors with chamfer and marks as in the drawing",
    source=sources.DIESEL_CASE_NOTE,
    follows="bearings short of oil from the first start",
    also=("rotor upside down", "oil pump rotor in backwards", "outer rotor reversed"),
)
ROTOR_TURNED_OVER = LinkGroup(
    id="rotor_turned_over",
    station=Station.PUMP,
    says=(
        "An outer rotor fitted the wrong way round costs about half the flow from the first start."
    ),
    parent=PUMP_ROTOR_REVERSED,
    effects={
        conditions.DELIVERY_REDUCED: (ALWAYS, sources.DIESEL_CASE_NOTE),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, sources.DIESEL_CASE_NOTE),
        behaviour.CHANGED_WITH_NEW_PUMP: (SOMETIMES, COMMON_PRACTICE),
        findings_wear.ROTOR_WRONG_WAY_ROUND: (MOSTLY, sources.DIESEL_CASE_NOTE),
        findings_mount.DRAWS_NOTHING_IN_BATH: (SELDOM, JUDGEMENT),
        behaviour.NONE_FROM_FIRST_START: (SOMETIMES, COMMON_PRACTICE),
        findings_priming.NO_OIL_WHEN_CRANKED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(behaviour.LOW_FROM_FIRST_START, findings_wear.ROTOR_WRONG_WAY_ROUND)],
    non_matches=[
        example(behaviour.LOW_FROM_FIRST_START, lacks=[findings_wear.ROTOR_WRONG_WAY_ROUND])
    ],
)

PUMP_CAVITATION = Cause(
    id="pump_cavitation",
    station=Station.PUMP,
    says="pump inlet too small: thin tube, big pump, high revs",
    mechanism=(
        "the pump cannot fill: pressure climbs, then falls as revs rise; more oil does not help"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=STRONG_UP),
    remedy="fit a larger inlet or a standard pump, or use thinner oil in the cold",
    source=sources.PUMP_CAVITATION_ANSWER,
    follows="eroded gears, and debris from them",
    also=("pump cavitation", "pump cavitating", "pump starving at high rpm"),
)

PUMP_OVERSIZED = Cause(
    id="pump_oversized",
    station=Station.PUMP,
    says="high-volume pump or stiff spring on an ordinary engine",
    mechanism=(
        "the pressure is fine, but drive gear and oil are overloaded and the inlet cannot keep up"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="go back to a standard pump and spring",
    source=sources.ENGINE_BUILDER_2010,
    follows="a worn drive gear; oil overheated at the relief valve",
    also=("high volume oil pump", "HV pump", "big oil pump fitted"),
)
MORE_PUMP_THAN_THE_ENGINE_NEEDS = LinkGroup(
    id="more_pump_than_the_engine_needs",
    station=Station.PUMP,
    says=(
        "A high-volume pump on an ordinary engine overloads its drive, heats the oil and outruns "
        "its inlet."
    ),
    parent=PUMP_OVERSIZED,
    effects={
        findings.HIGH_VOLUME_PUMP_FITTED: (ALWAYS, COMMON_PRACTICE),
        conditions.PRESSURE_HIGH: (SOMETIMES, PHYSICS),
        conditions.PUMP_CAVITATES: (SOMETIMES, sources.ENGINE_BUILDER_2010),
        conditions.PUMP_DRIVE_ERRATIC: (SELDOM, JUDGEMENT),
        conditions.OIL_AERATED: (SELDOM, JUDGEMENT),
        findings_drive.DRIVE_GEAR_WORN: (SOMETIMES, sources.ENGINE_BUILDER_2010),
    },
    matches=[
        example(findings.HIGH_VOLUME_PUMP_FITTED, findings_drive.DRIVE_GEAR_WORN),
        example(findings.HIGH_VOLUME_PUMP_FITTED),
    ],
    non_matches=[example(findings_drive.DRIVE_GEAR_WORN, lacks=[findings.HIGH_VOLUME_PUMP_FITTED])],
)

PUMP_BODY_CRACKED = Cause(
    id="pump_body_cracked",
    station=Station.PUMP,
    says="pump casting cracked or burst",
    mechanism="oil under pressure escapes into the sump, suddenly if the casting lets go",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, stood_long=UP),
    remedy="renew the pump; look for over-tightening, frost damage or a jammed relief valve",
    source=sources.PUMP_INSPECTION_2006,
    follows="total loss of pressure",
    also=("cracked oil pump", "oil pump housing broken", "pump burst"),
)
CASTING_GIVES_WAY = LinkGroup(
    id="casting_gives_way",
    station=Station.PUMP,
    says="A cracked or burst pump casting spills its pressure into the sump.",
    parent=PUMP_BODY_CRACKED,
    effects={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, COMMON_PRACTICE),
        conditions.AIR_IN_SUCTION: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_GONE: (SOMETIMES, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE),
        findings_wear.PUMP_CASTING_CRACKED: (MOSTLY, sources.PUMP_INSPECTION_2006),
        findings_drive.PUMP_HOUSING_BURST: (OFTEN, COMMON_PRACTICE),
        findings_mount.DRAWS_NOTHING_IN_BATH: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(patterns.FELL_SUDDENLY, findings_drive.PUMP_HOUSING_BURST),
        example(findings_wear.PUMP_CASTING_CRACKED),
    ],
    non_matches=[
        example(
            patterns.FELL_SUDDENLY,
            lacks=[findings_drive.PUMP_HOUSING_BURST, findings_wear.PUMP_CASTING_CRACKED],
        )
    ],
)

SCAVENGE_FAILURE = Cause(
    id="scavenge_failure",
    station=Station.PUMP,
    says="dry-sump scavenge side takes air, is air-locked, or its belt is off",
    mechanism="the crankcase fills and the tank empties: flicker first, then a fall",
    rate=Rate.RARE,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=STRONG_UP),
    remedy=(
        "put the scavenge stage, its hoses and its drive right; check the tank level with the engine "
        "running"
    ),
    source=sources.OIL_AERATION_ARTICLE,
    follows="starved bearings",
    also=("scavenge pump not working", "dry sump belt off", "tank runs empty"),
)
TANK_RUNS_EMPTY = LinkGroup(
    id="tank_runs_empty",
    station=Station.PUMP,
    says="If a scavenge stage stops returning oil, the tank empties: flicker first, then a fall.",
    parent=SCAVENGE_FAILURE,
    effects={
        conditions.OIL_SHORT: (MOSTLY, sources.OIL_AERATION_ARTICLE),
        conditions.OIL_AERATED: (OFTEN, COMMON_PRACTICE),
        patterns.SANK_WHILE_RUNNING: (OFTEN, sources.OIL_AERATION_ARTICLE),
        findings.TANK_EMPTIES_RUNNING: (MOSTLY, sources.OIL_AERATION_ARTICLE),
        findings_heat.BLUE_SMOKE: (OFTEN, COMMON_PRACTICE),  # the case fills with oil
        findings.PUMP_BELT_OFF: (SOMETIMES, COMMON_PRACTICE),
        findings_scavenge.SCAVENGE_SIDE_TAKES_AIR: (OFTEN, COMMON_PRACTICE),
        findings_scavenge.TANK_FOAMS: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.SANK_WHILE_RUNNING, findings.TANK_EMPTIES_RUNNING),
        example(findings.PUMP_BELT_OFF),
        example(findings_scavenge.SCAVENGE_SIDE_TAKES_AIR),
        example(patterns.GAUGE_READS_LOW, findings_scavenge.TANK_FOAMS),
    ],
    non_matches=[example(patterns.SANK_WHILE_RUNNING, lacks=[findings.TANK_EMPTIES_RUNNING])],
)

PUMP_IDLER_PIN_MIGRATED = Cause(
    id="pump_idler_pin_migrated",
    station=Station.PUMP,
    says="the pump's pressed-in idler pin has walked out of its bore",
    mechanism="the idler gear tilts, scores the body and leaks oil back, or jams the pump",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="renew the pump; never peen a loose pin back",
    source=COMMON_PRACTICE,
    follows="a scored or jammed pump and a broken drive",
    also=("idler shaft came out", "pump pin walked out", "idler gear pin loose"),
)
PIN_OUT_OF_ITS_BORE = LinkGroup(
    id="pin_out_of_its_bore",
    station=Station.PUMP,
    says=(
        "An idler pin that walks out lets its gear tilt, score the body and leak, or jam the pump."
    ),
    parent=PUMP_IDLER_PIN_MIGRATED,
    effects={
        conditions.PUMP_SLIP: (OFTEN, COMMON_PRACTICE),
        conditions.PUMP_NOT_TURNING: (SOMETIMES, COMMON_PRACTICE),
        conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, JUDGEMENT),
        conditions.OPEN_LEAK_INSIDE: (SOMETIMES, JUDGEMENT),
        patterns.FELL_SUDDENLY: (SOMETIMES, JUDGEMENT),
        findings_bench.IDLER_PIN_OUT: (ALWAYS, COMMON_PRACTICE),
        findings_wear.PUMP_SCORED_SEEN: (OFTEN, COMMON_PRACTICE),
        findings_mount.PUMP_TURNS_ROUGHLY: (OFTEN, COMMON_PRACTICE),
        findings_bench.COVER_GROOVED: (SOMETIMES, COMMON_PRACTICE),
        findings.PUMP_NOISE: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(findings_bench.IDLER_PIN_OUT),
        example(patterns.FELL_SUDDENLY, findings_bench.IDLER_PIN_OUT),
    ],
    non_matches=[example(patterns.FELL_SUDDENLY, lacks=[findings_bench.IDLER_PIN_OUT])],
)
