"""Rules on the oil's measured temperature and fuel, against their limits."""

from knowledge import sources
from knowledge.judging import beyond_limit, over, under
from knowledge.model import Station
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import idea_from
from knowledge.stations.oil import findings_analysis, findings_heat, quantities

rule = rules_of(Station.OIL)


@rule(
    source=sources.LABORATORY_FUEL,
    matches=[example(measures={findings_analysis.FUEL_SHARE: 0.08})],
    non_matches=[example()],
)
def share_of_fuel(known: Known) -> Conclusions:
    """More than four per cent of fuel in the oil: act at once."""
    yield from beyond_limit(
        known,
        findings_analysis.LAB_FUEL_HIGH,
        findings_analysis.FUEL_SHARE,
        quantities.MOST_FUEL_SHARE,
    )


@rule(
    source=idea_from(sources.ARMY_TM_272_TABLE),
    matches=[example(measures={findings_heat.OIL_HEAT: 400.0})],
    non_matches=[example()],
)
def heat_of_the_oil(known: Known) -> Conclusions:
    """Oil above about 121 °C is too hot; oil near freezing is thick whatever its grade."""
    hottest, coldest = (
        known.measured(findings_heat.OIL_HEAT),
        known.smallest(findings_heat.OIL_HEAT),
    )
    if hottest is not None and coldest is not None:
        limit = known.limit(quantities.MOST_OIL_TEMPERATURE)
        yield over(findings_heat.OIL_TEMPERATURE_HIGH, findings_heat.OIL_HEAT, hottest, limit)
        yield under(findings_heat.OIL_VERY_COLD, findings_heat.OIL_HEAT, coldest, 278.0)
