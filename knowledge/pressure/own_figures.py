"""Figures of the engine in hand that several rules on readings compare with."""

from knowledge.pressure.gauge import setting_here
from knowledge.rule_api import Known
from knowledge.stations.relief.quantities import USUAL_RELIEF_SETTING


def relief_setting(known: Known) -> float:
    """This engine's relief setting [Pa], or the usual pressure where that is higher."""
    return setting_here(known.limit(USUAL_RELIEF_SETTING), known.readings())
