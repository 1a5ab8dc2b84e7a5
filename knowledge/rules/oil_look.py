"""What follows from the oil's grade, look and smell."""

from knowledge.causes.oil import (
    COOLANT_IN_OIL,
    FUEL_DILUTION,
    VISCOSITY_TOO_HIGH,
    VISCOSITY_TOO_LOW,
)
from knowledge.conditions import (
    BEARINGS_DAMAGED,
    CLEARANCES_WIDE,
    OIL_AERATED,
    OIL_SLUDGED,
    OIL_THICK,
    OIL_THIN,
    PUMP_SLIP,
)
from knowledge.findings.behaviour import (
    CHANGED_WITH_GRADE,
    CHANGED_WITH_OIL_CHANGE,
)
from knowledge.findings.oil import (
    ADDITIVE_OR_FLUSH_IN_OIL,
    DRAINED_VOLUME_HIGH,
    LEVEL_HIGH,
    LEVEL_RISEN,
    OIL_GRADE_TOO_HEAVY,
    OIL_GRADE_TOO_THIN,
    RIGHT_GRADE_CURES,
    THICKER_OIL_HELPED,
)
from knowledge.findings.oil_heat import (
    BLUE_SMOKE,
    ENGINE_RAN_HOT,
    OIL_TEMPERATURE_HIGH,
    OIL_VERY_COLD,
)
from knowledge.findings.oil_look import (
    COOLANT_LEVEL_FALLING,
    COOLING_SYSTEM_LOSES_PRESSURE,
    CREAM_IN_FILLER_ONLY,
    FUEL_GETS_IN,
    FUEL_SMELL,
    OIL_FILM_IN_COOLANT,
    OIL_MILKY,
    OIL_THICK_ON_STICK,
    OIL_THIN_ON_STICK,
    SWEET_SMELL,
    WATER_AT_THE_DRAIN,
    WHITE_PLUME,
)
from knowledge.findings.pressure import (
    GAUGE_READS_HIGH,
    GAUGE_READS_LOW,
    GOOD_COLD_LOW_HOT,
    LOW_AT_ALL_SPEEDS,
)
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import (
    COL,
    HB01,
    HB02,
    HB14,
    LCF,
    LCW,
)
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.OIL)

# ------------------------------------------------------------------------- thin and thick


@rule(
    source=HB01,
    catches=[
        case_of(OIL_GRADE_TOO_THIN),
        case_of(GOOD_COLD_LOW_HOT, CHANGED_WITH_GRADE, OIL_THIN_ON_STICK),
    ],
    spares=[case_of(GOOD_COLD_LOW_HOT, lacks=[OIL_GRADE_TOO_THIN, CHANGED_WITH_GRADE])],
)
def thinner_than_the_manual_says(known: Known) -> Conclusions:
    """Oil thinner than the manual says is low hot and near normal cold, since it was changed."""
    yield leads_to(VISCOSITY_TOO_LOW, OIL_THIN, ALWAYS)
    yield leads_to(VISCOSITY_TOO_LOW, OIL_GRADE_TOO_THIN, OFTEN)
    yield leads_to(VISCOSITY_TOO_LOW, CHANGED_WITH_GRADE, OFTEN)
    yield leads_to(VISCOSITY_TOO_LOW, CHANGED_WITH_OIL_CHANGE, SOMETIMES)
    yield leads_to(VISCOSITY_TOO_LOW, ADDITIVE_OR_FLUSH_IN_OIL, SELDOM)
    yield leads_to(VISCOSITY_TOO_LOW, OIL_TEMPERATURE_HIGH, SELDOM)
    yield leads_to(VISCOSITY_TOO_LOW, RIGHT_GRADE_CURES, MOSTLY)


@rule(
    source=HB14,
    catches=[
        case_of(GAUGE_READS_HIGH, OIL_GRADE_TOO_HEAVY),
        case_of(OIL_THICK_ON_STICK, OIL_VERY_COLD),
    ],
    spares=[case_of(GAUGE_READS_LOW, lacks=[OIL_GRADE_TOO_HEAVY, OIL_THICK_ON_STICK])],
)
def thicker_than_the_manual_says(known: Known) -> Conclusions:
    """Oil thicker than the manual says reads high, most of all cold, and comes late to far parts."""
    yield leads_to(VISCOSITY_TOO_HIGH, OIL_THICK, ALWAYS)
    yield leads_to(VISCOSITY_TOO_HIGH, OIL_GRADE_TOO_HEAVY, MOSTLY)
    yield leads_to(VISCOSITY_TOO_HIGH, OIL_VERY_COLD, SOMETIMES)
    yield leads_to(VISCOSITY_TOO_HIGH, CHANGED_WITH_GRADE, SOMETIMES)
    yield leads_to(VISCOSITY_TOO_HIGH, RIGHT_GRADE_CURES, MOSTLY)


@rule(
    source=LCF,
    catches=[case_of(OIL_THIN_ON_STICK), case_of(GOOD_COLD_LOW_HOT, OIL_THIN_ON_STICK)],
    spares=[case_of(GOOD_COLD_LOW_HOT, lacks=[OIL_THIN_ON_STICK])],
)
def thin_oil_runs_off_the_stick(known: Known) -> Conclusions:
    """Thin oil runs off the stick like water beside new oil of the same grade.

    Misleads when it is only hotter than the new oil it is held against.
    """
    yield leads_to(OIL_THIN, OIL_THIN_ON_STICK, OFTEN)


@rule(
    source=HB14,
    catches=[case_of(OIL_THICK_ON_STICK)],
    spares=[case_of(GAUGE_READS_HIGH, lacks=[OIL_THICK_ON_STICK])],
)
def thick_oil_hangs_on_the_stick(known: Known) -> Conclusions:
    """Thick oil hangs on the stick like treacle."""
    yield leads_to(OIL_THICK, OIL_THICK_ON_STICK, OFTEN)


@rule(
    source=COL,
    catches=[case_of(THICKER_OIL_HELPED), case_of(GOOD_COLD_LOW_HOT, THICKER_OIL_HELPED)],
    spares=[case_of(LOW_AT_ALL_SPEEDS, lacks=[THICKER_OIL_HELPED])],
)
def better_with_thicker_oil(known: Known) -> Conclusions:
    """Better with thicker oil: the oil was thin, or it runs out through worn clearances."""
    yield leads_to(OIL_THIN, THICKER_OIL_HELPED, OFTEN)
    yield leads_to(CLEARANCES_WIDE, THICKER_OIL_HELPED, OFTEN)
    yield leads_to(PUMP_SLIP, THICKER_OIL_HELPED, SOMETIMES)


# ------------------------------------------------------------------------- fuel and water


@rule(
    source=LCF,
    catches=[
        case_of(FUEL_SMELL),
        case_of(GOOD_COLD_LOW_HOT, LEVEL_RISEN, OIL_THIN_ON_STICK),
        case_of(FUEL_GETS_IN, OIL_THIN_ON_STICK),
    ],
    spares=[
        case_of(GOOD_COLD_LOW_HOT, lacks=[FUEL_SMELL]),
        case_of(OIL_THIN_ON_STICK, lacks=[FUEL_SMELL, LEVEL_RISEN]),
    ],
)
def thin_rising_and_smelling_of_fuel(known: Known) -> Conclusions:
    """Thin, risen on the stick and smelling of fuel: there is fuel in the oil.

    From there it goes on to low hot pressure and worn bores and bearings. Misleads when fuel was
    spilt on the filler, or a few cold short trips left a whiff that a hot run drives off.
    """
    yield leads_to(FUEL_DILUTION, OIL_THIN, ALWAYS)
    yield leads_to(FUEL_DILUTION, FUEL_SMELL, MOSTLY)
    yield leads_to(FUEL_DILUTION, LEVEL_RISEN, OFTEN)
    yield leads_to(FUEL_DILUTION, LEVEL_HIGH, SOMETIMES)
    yield leads_to(FUEL_DILUTION, DRAINED_VOLUME_HIGH, SOMETIMES)
    yield leads_to(FUEL_DILUTION, FUEL_GETS_IN, OFTEN)
    yield leads_to(FUEL_DILUTION, RIGHT_GRADE_CURES, MOSTLY)
    yield leads_to(FUEL_DILUTION, BEARINGS_DAMAGED, SELDOM)


@rule(
    source=HB02,
    catches=[
        case_of(OIL_MILKY),
        case_of(COOLANT_LEVEL_FALLING, SWEET_SMELL, WHITE_PLUME),
        case_of(WATER_AT_THE_DRAIN),
        case_of(OIL_FILM_IN_COOLANT, COOLING_SYSTEM_LOSES_PRESSURE),
    ],
    spares=[
        case_of(CREAM_IN_FILLER_ONLY, lacks=[OIL_MILKY]),
        case_of(COOLANT_LEVEL_FALLING, lacks=[OIL_MILKY, WATER_AT_THE_DRAIN]),
    ],
)
def milk_on_the_stick(known: Known) -> Conclusions:
    """Milky oil, coolant that goes nowhere, oil on the coolant: water is getting into the oil.

    Misleads when cold short trips leave cream in the filler neck and none on the stick.
    """
    yield leads_to(COOLANT_IN_OIL, OIL_MILKY, MOSTLY)
    yield leads_to(COOLANT_IN_OIL, CREAM_IN_FILLER_ONLY, SOMETIMES)
    yield leads_to(COOLANT_IN_OIL, COOLANT_LEVEL_FALLING, MOSTLY)
    yield leads_to(COOLANT_IN_OIL, COOLING_SYSTEM_LOSES_PRESSURE, OFTEN)
    yield leads_to(COOLANT_IN_OIL, OIL_FILM_IN_COOLANT, OFTEN)
    yield leads_to(COOLANT_IN_OIL, WATER_AT_THE_DRAIN, OFTEN)
    yield leads_to(COOLANT_IN_OIL, SWEET_SMELL, OFTEN)
    yield leads_to(COOLANT_IN_OIL, WHITE_PLUME, OFTEN)
    yield leads_to(COOLANT_IN_OIL, ENGINE_RAN_HOT, SOMETIMES)


@rule(
    source=LCW,
    catches=[case_of(LEVEL_RISEN, OIL_MILKY), case_of(LEVEL_HIGH, OIL_MILKY)],
    spares=[case_of(LEVEL_HIGH, lacks=[OIL_MILKY, LEVEL_RISEN])],
)
def water_fills_the_sump_and_spoils_the_oil(known: Known) -> Conclusions:
    """Water raises the level, takes the film away, and with glycol makes sludge and eats lead."""
    yield leads_to(COOLANT_IN_OIL, OIL_THIN, SOMETIMES)
    yield leads_to(COOLANT_IN_OIL, OIL_THICK, SELDOM)
    yield leads_to(COOLANT_IN_OIL, OIL_AERATED, SOMETIMES)
    yield leads_to(COOLANT_IN_OIL, OIL_SLUDGED, OFTEN)
    yield leads_to(COOLANT_IN_OIL, BEARINGS_DAMAGED, SOMETIMES)
    yield leads_to(COOLANT_IN_OIL, LEVEL_RISEN, OFTEN)
    yield leads_to(COOLANT_IN_OIL, LEVEL_HIGH, SOMETIMES)
    yield leads_to(COOLANT_IN_OIL, DRAINED_VOLUME_HIGH, OFTEN)
    yield leads_to(COOLANT_IN_OIL, BLUE_SMOKE, SELDOM)
