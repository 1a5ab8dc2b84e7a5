"""What the debris says, and what it does not."""

from knowledge.causes.delivery import GALLERY_BLOCKED
from knowledge.causes.oil import OIL_DEGRADED
from knowledge.causes.pump import PUMP_DEBRIS_LOCK, PUMP_GEAR_WEAR
from knowledge.causes.topend import CAM_BEARING_WEAR
from knowledge.conditions import (
    BEARINGS_DAMAGED,
    DIRT_IN_OIL,
    METAL_SHED,
    OIL_SLUDGED,
    PUMP_DRIVE_ERRATIC,
)
from knowledge.findings.debris import (
    BEARING_PIECES_IN_PUMP,
    BRIGHT_SOFT_METAL,
    CARBON_FLAKES,
    COPPER_FLAKES,
    CRANK_TRAP_FULL,
    CRANK_TRAP_METAL,
    FINE_DUST_ONLY,
    GREY_SOFT_FLAKES,
    HARD_CHIPS,
    LINING_STRIP,
    MAGNETIC_METAL,
    METAL_IN_FILTER,
    METAL_IN_PAN,
    METAL_IN_SCREEN,
    METAL_THROUGHOUT,
    PLUG_FUR_ONLY,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Contradiction,
    Known,
    case_of,
    is_absent,
    is_present,
    leads_to,
    rules_of,
)
from knowledge.sources import CEB2, CTF, CUT, MIF
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import MOSTLY, OFTEN, SELDOM, SOMETIMES, Severity, Station

rule = rules_of(Station.BEARINGS)

BEARING_METAL = (COPPER_FLAKES, GREY_SOFT_FLAKES, LINING_STRIP)


@rule(
    source=MIF,
    catches=[case_of(METAL_IN_FILTER), case_of(METAL_THROUGHOUT)],
    spares=[case_of(lacks=[METAL_IN_FILTER])],
)
def metal_goes_to_the_filter(known: Known) -> Conclusions:
    """Metal that is shed goes to the filter, to every trap and, at last, everywhere.

    Misleads when metal is taken for the root: it says that something came apart, not why.
    """
    yield leads_to(METAL_SHED, METAL_IN_FILTER, MOSTLY)
    yield leads_to(METAL_SHED, METAL_IN_PAN, MOSTLY)
    yield leads_to(METAL_SHED, METAL_THROUGHOUT, OFTEN)
    yield leads_to(METAL_SHED, BEARING_PIECES_IN_PUMP, SOMETIMES)
    yield leads_to(METAL_SHED, CRANK_TRAP_METAL, SOMETIMES)
    yield leads_to(METAL_SHED, MAGNETIC_METAL, SOMETIMES)
    yield leads_to(BEARINGS_DAMAGED, BRIGHT_SOFT_METAL, SOMETIMES)


@rule(
    source=CTF,
    catches=[case_of(MAGNETIC_METAL)],
    spares=[case_of(METAL_IN_FILTER, lacks=[MAGNETIC_METAL])],
)
def what_the_magnet_picks_up(known: Known) -> Conclusions:
    """What the magnet picks up is steel: gears, shafts, drives, not bearing lining."""
    yield leads_to(PUMP_GEAR_WEAR, MAGNETIC_METAL, SELDOM)
    yield leads_to(PUMP_DEBRIS_LOCK, MAGNETIC_METAL, SOMETIMES)
    yield leads_to(PUMP_DRIVE_ERRATIC, MAGNETIC_METAL, OFTEN)


@rule(
    source=CUT,
    catches=[case_of(COPPER_FLAKES)],
    spares=[case_of(lacks=[COPPER_FLAKES])],
)
def copper_need_not_be_the_crank(known: Known) -> Conclusions:
    """Copper or grey flakes need not be the crank's: cam bearings are made of the same."""
    yield leads_to(CAM_BEARING_WEAR, COPPER_FLAKES, SOMETIMES)
    yield leads_to(CAM_BEARING_WEAR, GREY_SOFT_FLAKES, SELDOM)


@rule(
    source=CEB2,
    catches=[case_of(HARD_CHIPS), case_of(CRANK_TRAP_METAL, HARD_CHIPS)],
    spares=[case_of(lacks=[HARD_CHIPS])],
)
def grit_from_the_workshop(known: Known) -> Conclusions:
    """Sand, shot, swarf and bristle come from a workshop and travel with the oil."""
    yield leads_to(DIRT_IN_OIL, HARD_CHIPS, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, CRANK_TRAP_METAL, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, METAL_IN_FILTER, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, METAL_IN_SCREEN, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(CARBON_FLAKES), case_of(CARBON_FLAKES, CRANK_TRAP_FULL)],
    spares=[case_of(lacks=[CRANK_TRAP_FULL, CARBON_FLAKES])],
)
def what_old_oil_lays_down(known: Known) -> Conclusions:
    """Old oil lays down hard carbon, and sludge in the crank's traps."""
    yield leads_to(OIL_SLUDGED, CRANK_TRAP_FULL, SOMETIMES)
    yield leads_to(OIL_SLUDGED, CARBON_FLAKES, SOMETIMES)
    yield leads_to(OIL_DEGRADED, CARBON_FLAKES, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(CRANK_TRAP_FULL)],
    spares=[case_of(lacks=[CRANK_TRAP_FULL])],
)
def drilling_packed_full(known: Known) -> Conclusions:
    """A crank drilling packed full is a blocked oilway like any other: the rods behind it go dry."""
    yield leads_to(GALLERY_BLOCKED, CRANK_TRAP_FULL, SOMETIMES)


# ------------------------------------------------------------- what follows with certainty


@rule(
    source=CUT,
    catches=[case_of(FINE_DUST_ONLY)],
    spares=[case_of(METAL_IN_FILTER)],
)
def fine_dust_is_no_damage(known: Known) -> Conclusions:
    """Fine dust without flakes is running in, not damage."""
    if known.has(FINE_DUST_ONLY):
        yield is_absent(METAL_IN_FILTER, sure=0.9)
        for metal in BEARING_METAL:
            yield is_absent(metal, sure=0.8)


@rule(
    source=CP,
    catches=[case_of(lacks=[METAL_IN_FILTER, METAL_IN_PAN])],
    spares=[case_of(lacks=[METAL_IN_FILTER])],
)
def clean_filter_and_clean_sump(known: Known) -> Conclusions:
    """A filter and a sump both clean: no bearing has come apart yet.

    Misleads when both were changed or washed just before.
    """
    if known.lacks(METAL_IN_FILTER) and known.lacks(METAL_IN_PAN):
        yield is_absent(METAL_THROUGHOUT)
        for metal in BEARING_METAL:
            yield is_absent(metal, sure=0.9)


@rule(
    source=CP,
    catches=[case_of(METAL_THROUGHOUT)],
    spares=[case_of(METAL_IN_FILTER)],
)
def everywhere_includes_filter_and_sump(known: Known) -> Conclusions:
    """Metal all through the engine is in filter and sump as well."""
    if known.has(METAL_THROUGHOUT):
        yield is_present(METAL_IN_FILTER, sure=0.9)
        yield is_present(METAL_IN_PAN, sure=0.9)


@rule(
    source=CP,
    catches=[case_of(PLUG_FUR_ONLY)],
    spares=[case_of(lacks=[PLUG_FUR_ONLY])],
)
def fur_on_the_plug_is_normal(known: Known) -> Conclusions:
    """Thin fur alone on the drain plug is normal: no steel slivers, and little metal at all.

    Misleads as to bearing lining, which no magnet holds.
    """
    if known.has(PLUG_FUR_ONLY):
        yield is_absent(MAGNETIC_METAL, sure=0.8)
        yield is_absent(METAL_IN_PAN, sure=0.7)


# ------------------------------------------------------------- contradictions and alarms


@rule(
    source=CUT,
    catches=[case_of(FINE_DUST_ONLY, METAL_IN_FILTER)],
    spares=[case_of(FINE_DUST_ONLY, lacks=[METAL_IN_FILTER])],
)
def dust_only_and_metal_do_not_fit(known: Known) -> Conclusions:
    """Only fine dust and metal flakes in one filter cannot both be right."""
    if known.has(FINE_DUST_ONLY) and known.has(METAL_IN_FILTER):
        yield Contradiction(
            (FINE_DUST_ONLY, METAL_IN_FILTER),
            "the filter holds either fine dust only or metal: spread the pleats and look again",
            METAL_IN_FILTER,
        )


@rule(
    source=MIF,
    catches=[case_of(METAL_IN_FILTER), case_of(COPPER_FLAKES)],
    spares=[case_of(FINE_DUST_ONLY)],
)
def flakes_or_copper_found(known: Known) -> Conclusions:
    """Metal flakes or copper found: do not run until the bearings have been seen."""
    if known.has(METAL_IN_FILTER) or any(known.has(metal) for metal in BEARING_METAL):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Metal flakes found; fine grey dust is the limit: do not run until the bearings "
            "have been seen.",
        )
