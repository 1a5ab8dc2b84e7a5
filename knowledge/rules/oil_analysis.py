"""What follows from the laboratory's sheet."""

from knowledge.causes.oil import (
    COOLANT_IN_OIL,
    FUEL_DILUTION,
    OIL_DEGRADED,
    OIL_FOAM_PRONE,
    OIL_LEVEL_LOW,
    VISCOSITY_TOO_HIGH,
    VISCOSITY_TOO_LOW,
)
from knowledge.conditions import (
    BEARINGS_DAMAGED,
    CLEARANCES_WIDE,
    DIRT_IN_OIL,
    METAL_SHED,
    PUMP_DRIVE_ERRATIC,
    PUMP_SCORED,
    PUMP_SLIP,
    VALVE_GEAR_DRY,
)
from knowledge.findings.oil_analysis import (
    ACID_NUMBER_HIGH,
    ALUMINIUM_HIGH,
    CHROMIUM_HIGH,
    COPPER_AND_LEAD_HIGH,
    COPPER_HIGH_ALONE,
    GLYCOL_FOUND,
    IRON_HIGH,
    LAB_FUEL_HIGH,
    LAB_VISCOSITY_HIGH,
    LAB_VISCOSITY_LOW,
    LEAD_HIGH_ALONE,
    METALS_NORMAL,
    SILICON_HIGH,
    TIN_HIGH,
    WATER_IN_SAMPLE,
)
from knowledge.rulebook import (
    Conclusions,
    Contradiction,
    Known,
    case_of,
    is_absent,
    leads_to,
    rules_of,
)
from knowledge.sources import BLK, IOA, LCF, LCW, PCL
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.OIL)


@rule(
    source=PCL,
    catches=[case_of(COPPER_AND_LEAD_HIGH), case_of(COPPER_AND_LEAD_HIGH, TIN_HIGH)],
    spares=[case_of(COPPER_HIGH_ALONE, lacks=[COPPER_AND_LEAD_HIGH, TIN_HIGH])],
)
def copper_with_lead_is_bearing_metal(known: Known) -> Conclusions:
    """Copper with lead, and tin beside them, is bearing metal; copper alone hardly ever is.

    Misleads with leaded fuel, where lead says nothing.
    """
    yield leads_to(BEARINGS_DAMAGED, COPPER_AND_LEAD_HIGH, MOSTLY)
    yield leads_to(BEARINGS_DAMAGED, TIN_HIGH, OFTEN)
    yield leads_to(BEARINGS_DAMAGED, ALUMINIUM_HIGH, SOMETIMES)
    yield leads_to(CLEARANCES_WIDE, COPPER_AND_LEAD_HIGH, SOMETIMES)
    yield leads_to(CLEARANCES_WIDE, TIN_HIGH, SELDOM)


@rule(
    source=PCL,
    catches=[case_of(IRON_HIGH)],
    spares=[case_of(METALS_NORMAL, lacks=[IRON_HIGH])],
)
def iron_from_gears_cams_and_bores(known: Known) -> Conclusions:
    """Iron comes from gears, cams and bores; it accuses no one by itself.

    Misleads in run-in and after long standing, when rust gives the same figure.
    """
    yield leads_to(METAL_SHED, IRON_HIGH, SOMETIMES)
    yield leads_to(PUMP_SCORED, IRON_HIGH, OFTEN)
    yield leads_to(PUMP_SLIP, IRON_HIGH, SELDOM)
    yield leads_to(PUMP_DRIVE_ERRATIC, IRON_HIGH, SOMETIMES)
    yield leads_to(VALVE_GEAR_DRY, IRON_HIGH, SELDOM)
    yield leads_to(METAL_SHED, ALUMINIUM_HIGH, SELDOM)


@rule(
    source=PCL,
    catches=[case_of(SILICON_HIGH), case_of(SILICON_HIGH, ALUMINIUM_HIGH)],
    spares=[case_of(ALUMINIUM_HIGH, lacks=[SILICON_HIGH])],
)
def silicon_is_dirt_or_sealer(known: Known) -> Conclusions:
    """Silicon is dirt, or fresh silicone sealer; with aluminium and iron beside it, it is dirt."""
    yield leads_to(DIRT_IN_OIL, SILICON_HIGH, OFTEN)
    yield leads_to(DIRT_IN_OIL, IRON_HIGH, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, ALUMINIUM_HIGH, SOMETIMES)
    yield leads_to(OIL_FOAM_PRONE, SILICON_HIGH, SELDOM)


@rule(
    source=LCW,
    catches=[case_of(GLYCOL_FOUND), case_of(WATER_IN_SAMPLE)],
    spares=[case_of(COPPER_HIGH_ALONE, lacks=[GLYCOL_FOUND, WATER_IN_SAMPLE])],
)
def coolant_leaves_its_salts(known: Known) -> Conclusions:
    """Coolant leaves glycol and its salts in the oil when the water itself has boiled away."""
    yield leads_to(COOLANT_IN_OIL, GLYCOL_FOUND, MOSTLY)
    yield leads_to(COOLANT_IN_OIL, WATER_IN_SAMPLE, MOSTLY)
    yield leads_to(COOLANT_IN_OIL, LEAD_HIGH_ALONE, SOMETIMES)
    yield leads_to(COOLANT_IN_OIL, COPPER_HIGH_ALONE, SELDOM)


@rule(
    source=LCF,
    catches=[case_of(LAB_FUEL_HIGH), case_of(LAB_FUEL_HIGH, LAB_VISCOSITY_LOW)],
    spares=[case_of(LAB_VISCOSITY_LOW, lacks=[LAB_FUEL_HIGH])],
)
def fuel_found_by_the_laboratory(known: Known) -> Conclusions:
    """Fuel found in the sample and viscosity down with it: the oil is diluted."""
    yield leads_to(FUEL_DILUTION, LAB_FUEL_HIGH, ALWAYS)
    yield leads_to(FUEL_DILUTION, LAB_VISCOSITY_LOW, MOSTLY)


@rule(
    source=PCL,
    catches=[case_of(LAB_VISCOSITY_LOW)],
    spares=[case_of(LAB_FUEL_HIGH, lacks=[LAB_VISCOSITY_LOW])],
)
def thin_without_fuel_is_the_wrong_oil(known: Known) -> Conclusions:
    """Thin without fuel in it: the wrong grade, or a multigrade sheared down."""
    yield leads_to(VISCOSITY_TOO_LOW, LAB_VISCOSITY_LOW, MOSTLY)


@rule(
    source=IOA,
    catches=[case_of(ACID_NUMBER_HIGH, LAB_VISCOSITY_HIGH), case_of(LEAD_HIGH_ALONE)],
    spares=[case_of(IRON_HIGH, lacks=[ACID_NUMBER_HIGH, LEAD_HIGH_ALONE, LAB_VISCOSITY_HIGH])],
)
def acid_oil_thickens_and_eats_lead(known: Known) -> Conclusions:
    """Acid number up, viscosity up, lead up alone: worn-out oil that eats its bearings."""
    yield leads_to(OIL_DEGRADED, ACID_NUMBER_HIGH, MOSTLY)
    yield leads_to(OIL_DEGRADED, LAB_VISCOSITY_HIGH, OFTEN)
    yield leads_to(OIL_DEGRADED, LEAD_HIGH_ALONE, OFTEN)
    yield leads_to(OIL_DEGRADED, IRON_HIGH, SELDOM)
    yield leads_to(VISCOSITY_TOO_HIGH, LAB_VISCOSITY_HIGH, MOSTLY)


@rule(
    source=PCL,
    catches=[case_of(CHROMIUM_HIGH)],
    spares=[case_of(METALS_NORMAL, lacks=[CHROMIUM_HIGH])],
)
def chromium_is_ring_wear(known: Known) -> Conclusions:
    """Chromium is ring wear: it tells where oil is burnt, not where pressure is lost."""
    yield leads_to(OIL_LEVEL_LOW, CHROMIUM_HIGH, SOMETIMES)


@rule(
    source=BLK,
    catches=[case_of(METALS_NORMAL)],
    spares=[case_of(IRON_HIGH), case_of(lacks=[METALS_NORMAL])],
)
def clean_sheet_clears_the_metals(known: Known) -> Conclusions:
    """A clean sheet clears every wear metal; it does not clear the filter.

    Misleads when the oil is fresh, or the flakes are too big to be counted.
    """
    if known.has(METALS_NORMAL):
        for metal in (
            IRON_HIGH,
            COPPER_HIGH_ALONE,
            COPPER_AND_LEAD_HIGH,
            LEAD_HIGH_ALONE,
            TIN_HIGH,
            ALUMINIUM_HIGH,
            CHROMIUM_HIGH,
        ):
            yield is_absent(metal, sure=0.85)


@rule(
    source=BLK,
    catches=[
        case_of(METALS_NORMAL, COPPER_AND_LEAD_HIGH),
        case_of(LAB_VISCOSITY_LOW, LAB_VISCOSITY_HIGH),
    ],
    spares=[
        case_of(METALS_NORMAL, lacks=[COPPER_AND_LEAD_HIGH]),
        case_of(LAB_VISCOSITY_LOW, lacks=[LAB_VISCOSITY_HIGH]),
    ],
)
def sheet_that_contradicts_itself(known: Known) -> Conclusions:
    """A sheet cannot call the metals normal and high, or the oil too thin and too thick."""
    if known.has(METALS_NORMAL) and known.has(COPPER_AND_LEAD_HIGH):
        yield Contradiction(
            (METALS_NORMAL, COPPER_AND_LEAD_HIGH),
            "the metals cannot be normal while copper and lead are high: read the sheet again",
            METALS_NORMAL,
        )
    if known.has(LAB_VISCOSITY_LOW) and known.has(LAB_VISCOSITY_HIGH):
        yield Contradiction(
            (LAB_VISCOSITY_LOW, LAB_VISCOSITY_HIGH),
            "one sample cannot be too thin and too thick: ask which new oil it was held against",
            LAB_VISCOSITY_LOW,
        )
