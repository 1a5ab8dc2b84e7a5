"""What the filter shows of other stations, and what it asks for at once."""

from knowledge.causes.oil import COOLANT_IN_OIL
from knowledge.causes.pump import PUMP_GASKET_WRONG, PUMP_MOUNT_LEAK
from knowledge.conditions import (
    DIRT_IN_OIL,
    DRAINS_BACK,
    FLOW_RESTRICTED,
    METAL_SHED,
    OIL_SLUDGED,
    OIL_THICK,
    PRESSURE_GONE,
    RELIEF_HOLDS_HIGH,
)
from knowledge.findings.behaviour import (
    GOOD_AT_PUMP_LOW_IN_GALLERY,
    PORTS_DIFFER,
    SLOW_AFTER_STANDING,
)
from knowledge.findings.delivery import (
    FILTER_BULGED,
    FILTER_BURST,
    FILTER_BYPASS_WITNESS,
    FILTER_COLLAPSED,
    FILTER_DROP_HIGH,
    FILTER_EMPTY_AFTER_STANDING,
    FILTER_PACKED,
    FILTER_SEAT_LEAKS,
    FILTER_STAYS_COLD,
    GASKET_SHREDS_FOUND,
    MILKY_FILM_IN_FILTER,
)
from knowledge.findings.pressure import (
    CLIMBS_PAST_SETTING,
    GAUGE_READS_LOW,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Contradiction,
    Known,
    case_of,
    leads_to,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import CUT, FLV, LCW, TMK, TML
from knowledge.vocabulary import (
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    Severity,
    Station,
)

rule = rules_of(Station.DELIVERY)


@rule(
    source=TMK,
    catches=[case_of(CLIMBS_PAST_SETTING, FILTER_BURST), case_of(FILTER_BULGED)],
    spares=[case_of(lacks=[FILTER_BURST, FILTER_BULGED, CLIMBS_PAST_SETTING])],
)
def filter_swells_or_bursts(known: Known) -> Conclusions:
    """A bulged or burst filter is the mark of a pressure nothing relieved: look at the valve.

    Thick cold oil revved at once does it too. Misleads when the filter was a weak or wrong one.
    """
    yield leads_to(RELIEF_HOLDS_HIGH, FILTER_BULGED, OFTEN)
    yield leads_to(RELIEF_HOLDS_HIGH, FILTER_BURST, SOMETIMES)
    yield leads_to(OIL_THICK, FILTER_BULGED, SOMETIMES)
    yield leads_to(OIL_THICK, FILTER_BURST, SELDOM)
    yield leads_to(OIL_THICK, FILTER_DROP_HIGH, SOMETIMES)
    yield leads_to(OIL_THICK, FILTER_COLLAPSED, SOMETIMES)


@rule(
    source=CUT,
    catches=[case_of(FILTER_PACKED, FILTER_BYPASS_WITNESS)],
    spares=[case_of(lacks=[FILTER_PACKED, FILTER_BYPASS_WITNESS])],
)
def filter_packed_by_what_came_before(known: Known) -> Conclusions:
    """Sludge, shed metal and building dirt end in the filter and load it."""
    yield leads_to(OIL_SLUDGED, FILTER_PACKED, OFTEN)
    yield leads_to(METAL_SHED, FILTER_PACKED, SOMETIMES)
    yield leads_to(METAL_SHED, FILTER_BYPASS_WITNESS, SELDOM)
    yield leads_to(DIRT_IN_OIL, FILTER_PACKED, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(FILTER_STAYS_COLD)],
    spares=[case_of(lacks=[FILTER_STAYS_COLD])],
)
def cold_filter_has_no_flow(known: Known) -> Conclusions:
    """A filter that stays cold on a hot engine has no flow: blocked, wrong, or no oil at all."""
    yield leads_to(FLOW_RESTRICTED, FILTER_STAYS_COLD, SOMETIMES)
    yield leads_to(PRESSURE_GONE, FILTER_STAYS_COLD, OFTEN)


@rule(
    source=FLV,
    catches=[case_of(SLOW_AFTER_STANDING, FILTER_EMPTY_AFTER_STANDING)],
    spares=[case_of(SLOW_AFTER_STANDING, lacks=[FILTER_EMPTY_AFTER_STANDING])],
)
def line_found_empty_after_a_rest(known: Known) -> Conclusions:
    """Where the line runs back while standing, the filter is found empty."""
    yield leads_to(DRAINS_BACK, FILTER_EMPTY_AFTER_STANDING, OFTEN)


@rule(
    source=LCW,
    catches=[case_of(MILKY_FILM_IN_FILTER)],
    spares=[case_of(lacks=[MILKY_FILM_IN_FILTER])],
)
def white_paste_on_the_element(known: Known) -> Conclusions:
    """Water in the oil leaves a milky film on the element, and the emulsion loads the filter."""
    yield leads_to(COOLANT_IN_OIL, MILKY_FILM_IN_FILTER, MOSTLY)
    yield leads_to(COOLANT_IN_OIL, FILTER_PACKED, SOMETIMES)


@rule(
    source=CP,
    catches=[case_of(GAUGE_READS_LOW, GASKET_SHREDS_FOUND)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[GASKET_SHREDS_FOUND])],
)
def gasket_washed_to_shreds(known: Known) -> Conclusions:
    """Shreds of gasket in sump or filter tell that one has blown out on the pressure side."""
    yield leads_to(PUMP_MOUNT_LEAK, GASKET_SHREDS_FOUND, OFTEN)
    yield leads_to(PUMP_GASKET_WRONG, GASKET_SHREDS_FOUND, SOMETIMES)
    yield leads_to(DIRT_IN_OIL, GASKET_SHREDS_FOUND, SOMETIMES)


# ----------------------------------------------------------------- alarms and clashing reports


@rule(
    source=TMK,
    catches=[case_of(FILTER_BURST), case_of(FILTER_SEAT_LEAKS)],
    spares=[case_of(lacks=[FILTER_BURST, FILTER_SEAT_LEAKS])],
)
def oil_thrown_out_at_the_filter(known: Known) -> Conclusions:
    """Oil thrown out at the filter empties the sump in a minute and can burn on the exhaust."""
    if known.has(FILTER_BURST):
        yield Alarm(
            Severity.STOP,
            "Filter burst or off, no leak allowed: shut down at once, watch for fire, and do not "
            "fit another before the relief valve was checked.",
        )
    if known.has(FILTER_SEAT_LEAKS):
        yield Alarm(
            Severity.STOP,
            "Oil runs out at the filter seat, no leak allowed: shut down, reseat, check the level.",
        )


@rule(
    source=CUT,
    catches=[case_of(FILTER_COLLAPSED)],
    spares=[case_of(FILTER_PACKED), case_of(lacks=[FILTER_COLLAPSED])],
)
def pieces_of_element_downstream(known: Known) -> Conclusions:
    """A torn or crushed element may have sent paper and metal into the gallery."""
    if known.has(FILTER_COLLAPSED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Filter element torn or crushed, none may be missing: do not run until its pieces are "
            "accounted for and the gallery is clear.",
        )


@rule(
    source=LCW,
    catches=[case_of(MILKY_FILM_IN_FILTER, GAUGE_READS_LOW)],
    spares=[case_of(MILKY_FILM_IN_FILTER), case_of(GAUGE_READS_LOW)],
)
def watered_oil_and_low_pressure(known: Known) -> Conclusions:
    """Watered oil with low pressure no longer carries the bearings."""
    if known.has(MILKY_FILM_IN_FILTER) and known.has(GAUGE_READS_LOW):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Water in the oil and pressure low, no water allowed: do not run, find where it gets in.",
        )


@rule(
    source=TML,
    catches=[case_of(FILTER_DROP_HIGH, lacks=[PORTS_DIFFER])],
    spares=[case_of(FILTER_DROP_HIGH), case_of(lacks=[PORTS_DIFFER])],
)
def filter_takes_pressure_yet_ports_agree(known: Known) -> Conclusions:
    """The filter cannot take a bar while the ports before and behind it read alike."""
    if known.has(FILTER_DROP_HIGH) and known.lacks(PORTS_DIFFER):
        yield Contradiction(
            (FILTER_DROP_HIGH, PORTS_DIFFER),
            "A loss across the filter was read, yet two ports are said to agree: swap the gauges "
            "and note which ports were used.",
            PORTS_DIFFER,
        )


@rule(
    source=CP,
    catches=[case_of(FILTER_STAYS_COLD, lacks=[GOOD_AT_PUMP_LOW_IN_GALLERY, GAUGE_READS_LOW])],
    spares=[case_of(FILTER_STAYS_COLD, GAUGE_READS_LOW), case_of(lacks=[FILTER_STAYS_COLD])],
)
def cold_filter_with_good_pressure(known: Known) -> Conclusions:
    """Good pressure in the gallery with a cold full-flow filter does not fit together."""
    if (
        known.has(FILTER_STAYS_COLD)
        and known.lacks(GAUGE_READS_LOW)
        and known.lacks(GOOD_AT_PUMP_LOW_IN_GALLERY)
    ):
        yield Contradiction(
            (FILTER_STAYS_COLD, GAUGE_READS_LOW, GOOD_AT_PUMP_LOW_IN_GALLERY),
            "The filter is said to stay cold with good pressure behind it: feel it again hot, and "
            "ask whether it is a part-flow filter.",
            FILTER_STAYS_COLD,
        )


@rule(
    source=CUT,
    catches=[case_of(FILTER_BYPASS_WITNESS, FILTER_PACKED)],
    spares=[case_of(FILTER_BYPASS_WITNESS, lacks=[FILTER_PACKED])],
)
def dirt_past_the_filter_scratches(known: Known) -> Conclusions:
    """Once the bypass has been open, dirt has gone round the filter to the bearings."""
    if known.has(FILTER_BYPASS_WITNESS) and known.has(FILTER_PACKED):
        yield Alarm(
            Severity.CARE,
            "Filter packed and bypassed, clean side must be clean: look at a bearing before long "
            "running.",
        )
