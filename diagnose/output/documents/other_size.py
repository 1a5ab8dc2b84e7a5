"""Whether measured journals show that a circuit in figures is of an engine of another size.

Imported by ``output``.
"""

from __future__ import annotations

from diagnose.case.bearings import journal_sizes
from diagnose.case.case import Case
from diagnose.case.units import units_of
from diagnose.circuit.engine_model import numbers
from diagnose.ways import Way, to
from knowledge.units import LENGTH

OTHER = 1.2  #: times as large, or as small, from where it is another engine (judgement)


def other_size(case: Case) -> str:
    """Say that the figures are of a smaller or larger engine; empty where its journals agree."""
    if case.profile is None:
        return ""
    typical, units = numbers(case), units_of(case)
    stated = {quantity.id for quantity in case.dimensions}
    for name, says in (("main_diameter", "main journals"), ("rod_diameter", "crankpins")):
        own = journal_sizes(case.bearings).get(name)
        if own is None or name in stated or 1 / OTHER < own / typical[name] < OTHER:
            continue
        size = "smaller" if own > typical[name] else "larger"
        theirs, here = (units.show(x, LENGTH) for x in (typical[name], own))
        return (
            f"These figures are of a {size} engine ({case.profile.says}): its {says} are "
            f"{theirs}, these {here}. Enter this engine's own pump and sizes; "
            f"{to(Way.BEGIN_CARD)}."
        )
    return ""
