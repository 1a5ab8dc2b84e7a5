"""Root causes that put fuel, water or coolant in the oil, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.oil import (
    findings,
    findings_analysis,
    findings_contamination,
    findings_drained,
    findings_heat,
)

FUEL_DILUTION = Cause(
    id="fuel_dilution",
    station=Station.OIL,
    says="petrol or diesel fuel in the oil",
    mechanism=(
        "a few per cent of fuel thins the oil by a whole grade: low when hot, while the level "
        "may rise"
    ),
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, stood_long=UP),
    remedy=(
        "find where it gets in (lift pump, float, injector, long idling), then change oil and "
        "filter"
    ),
    source=sources.LABORATORY_FUEL,
    follows="thin oil, low hot pressure, bore and bearing wear, risk of fire and explosion",
    also=("fuel in oil", "gas in the oil", "diesel in the oil", "oil smells of petrol"),
)
FUEL_FOUND_BY_THE_LABORATORY = LinkGroup(
    id="fuel_found_by_the_laboratory",
    station=Station.OIL,
    says="Fuel in the sample and low viscosity: the oil is diluted.",
    parent=FUEL_DILUTION,
    effects={
        findings_analysis.LAB_FUEL_HIGH: (ALWAYS, sources.LABORATORY_FUEL),
        findings_analysis.LAB_VISCOSITY_LOW: (MOSTLY, sources.LABORATORY_FUEL),
    },
    matches=[
        example(findings_analysis.LAB_FUEL_HIGH),
        example(findings_analysis.LAB_FUEL_HIGH, findings_analysis.LAB_VISCOSITY_LOW),
    ],
    non_matches=[
        example(findings_analysis.LAB_VISCOSITY_LOW, lacks=[findings_analysis.LAB_FUEL_HIGH])
    ],
)
THIN_RISING_AND_SMELLING_OF_FUEL = LinkGroup(
    id="thin_rising_and_smelling_of_fuel",
    station=Station.OIL,
    says="Thin, risen on the stick and smelling of fuel: there is fuel in the oil.",
    note=(
        "It leads to low hot pressure and worn bores and bearings. Misleads when fuel was spilt "
        "on the filler, or a few short cold trips left a smell that a hot run drives off."
    ),
    parent=FUEL_DILUTION,
    effects={
        conditions.OIL_THIN: (ALWAYS, sources.LABORATORY_FUEL),
        findings.FUEL_SMELL: (MOSTLY, COMMON_PRACTICE),
        findings.LEVEL_RISEN: (OFTEN, COMMON_PRACTICE),
        findings.LEVEL_HIGH: (SOMETIMES, COMMON_PRACTICE),
        findings_drained.DRAINED_VOLUME_HIGH: (SOMETIMES, COMMON_PRACTICE),
        findings_drained.FUEL_AT_THE_DRAIN: (SOMETIMES, COMMON_PRACTICE),
        findings_contamination.FUEL_GETS_IN: (OFTEN, sources.ARMY_TM_272_TABLE),
        conditions.BEARINGS_DAMAGED: (SELDOM, sources.LABORATORY_FUEL),
    },
    matches=[
        example(findings.FUEL_SMELL),
        example(findings_drained.FUEL_AT_THE_DRAIN),
        example(patterns_speed.GOOD_COLD_LOW_HOT, findings.LEVEL_RISEN, findings.OIL_THIN_ON_STICK),
        example(findings_contamination.FUEL_GETS_IN, findings.OIL_THIN_ON_STICK),
    ],
    non_matches=[
        example(patterns_speed.GOOD_COLD_LOW_HOT, lacks=[findings.FUEL_SMELL]),
        example(findings.OIL_THIN_ON_STICK, lacks=[findings.FUEL_SMELL, findings.LEVEL_RISEN]),
    ],
)

COOLANT_IN_OIL = Cause(
    id="coolant_in_oil",
    station=Station.OIL,
    says="water or coolant in the oil",
    mechanism=(
        "the oil turns milky and loses its film; glycol sludge can block screen and filter, so "
        "pressure may fall or rise"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),
    remedy=(
        "stop using it; find where it gets in (gasket, crack, cooler, sea water), flush, change "
        "oil twice"
    ),
    source=sources.ARMY_TM_272_TABLE,
    follows="corroded bearing lead, sludge, a blocked filter in bypass, wiped bearings",
    also=("water in oil", "milky oil", "blown head gasket", "antifreeze in oil", "chocolate milk"),
)
COOLANT_LEAVES_ITS_SALTS = LinkGroup(
    id="coolant_leaves_its_salts",
    station=Station.OIL,
    says="Coolant leaves glycol and its salts in the oil even after the water has boiled away.",
    parent=COOLANT_IN_OIL,
    effects={
        findings_analysis.GLYCOL_FOUND: (MOSTLY, sources.LABORATORY_COOLANT),
        findings_analysis.WATER_IN_SAMPLE: (MOSTLY, sources.LABORATORY_COOLANT),
        findings_analysis.LEAD_HIGH_ALONE: (SOMETIMES, idea_from(sources.LABORATORY_COOLANT)),
        findings_analysis.COPPER_HIGH_ALONE: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_analysis.GLYCOL_FOUND), example(findings_analysis.WATER_IN_SAMPLE)],
    non_matches=[
        example(
            findings_analysis.COPPER_HIGH_ALONE,
            lacks=[findings_analysis.GLYCOL_FOUND, findings_analysis.WATER_IN_SAMPLE],
        )
    ],
)
MILK_ON_THE_STICK = LinkGroup(
    id="milk_on_the_stick",
    station=Station.OIL,
    says=(
        "Milky oil, coolant lost without a leak, oil on the coolant: water is getting into the oil."
    ),
    note="Misleads when short cold trips leave cream in the filler neck and none on the stick.",
    parent=COOLANT_IN_OIL,
    effects={
        findings.OIL_MILKY: (MOSTLY, sources.MOTORCYCLE_MANUAL),
        findings.CREAM_IN_FILLER_ONLY: (SOMETIMES, JUDGEMENT),
        findings_contamination.COOLANT_LEVEL_FALLING: (MOSTLY, COMMON_PRACTICE),
        findings_contamination.COOLING_SYSTEM_LOSES_PRESSURE: (OFTEN, COMMON_PRACTICE),
        findings_contamination.OIL_FILM_IN_COOLANT: (OFTEN, sources.ARMY_TM_272_TABLE),
        findings_contamination.COOLANT_GETS_IN: (MOSTLY, sources.ARMY_TM_272_TABLE),
        findings_drained.WATER_AT_THE_DRAIN: (OFTEN, COMMON_PRACTICE),
        findings_heat.SWEET_SMELL: (OFTEN, COMMON_PRACTICE),
        findings_heat.WHITE_PLUME: (OFTEN, COMMON_PRACTICE),
        findings_heat.ENGINE_RAN_HOT: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings.OIL_MILKY),
        example(
            findings_contamination.COOLANT_LEVEL_FALLING,
            findings_heat.SWEET_SMELL,
            findings_heat.WHITE_PLUME,
        ),
        example(findings_drained.WATER_AT_THE_DRAIN),
        example(
            findings_contamination.OIL_FILM_IN_COOLANT,
            findings_contamination.COOLING_SYSTEM_LOSES_PRESSURE,
        ),
    ],
    non_matches=[
        example(findings.CREAM_IN_FILLER_ONLY, lacks=[findings.OIL_MILKY]),
        example(
            findings_contamination.COOLANT_LEVEL_FALLING,
            lacks=[findings.OIL_MILKY, findings_drained.WATER_AT_THE_DRAIN],
        ),
    ],
)
WATER_FILLS_THE_SUMP_AND_SPOILS_THE_OIL = LinkGroup(
    id="water_fills_the_sump_and_spoils_the_oil",
    station=Station.OIL,
    says=(
        "Water raises the level and destroys the film; with glycol it makes sludge and corrodes "
        "lead."
    ),
    parent=COOLANT_IN_OIL,
    effects={
        conditions.OIL_THIN: (SOMETIMES, JUDGEMENT),
        conditions.OIL_THICK: (SELDOM, COMMON_PRACTICE),
        conditions.OIL_AERATED: (SOMETIMES, sources.AERATION_ARTICLE_2016),
        conditions.OIL_SLUDGED: (OFTEN, sources.LABORATORY_COOLANT),
        conditions.BEARINGS_DAMAGED: (SOMETIMES, sources.LABORATORY_COOLANT),
        findings.LEVEL_RISEN: (OFTEN, COMMON_PRACTICE),
        findings.LEVEL_HIGH: (SOMETIMES, COMMON_PRACTICE),
        findings_drained.DRAINED_VOLUME_HIGH: (OFTEN, COMMON_PRACTICE),
        findings_heat.BLUE_SMOKE: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(findings.LEVEL_RISEN, findings.OIL_MILKY),
        example(findings.LEVEL_HIGH, findings.OIL_MILKY),
    ],
    non_matches=[example(findings.LEVEL_HIGH, lacks=[findings.OIL_MILKY, findings.LEVEL_RISEN])],
)
