"""Whether a circuit in figures is of an engine of another kind or size."""

from __future__ import annotations

from diagnose.case.bearing_counts import known_profile
from diagnose.case.bearings import journal_sizes
from diagnose.case.case import Case
from diagnose.case.units import units_of
from diagnose.circuit.engine_model import numbers
from diagnose.ways import Way, to
from knowledge.units import LENGTH

OTHER = 1.2  #: times as large, or as small, from where it is another engine (judgement)


def other_size(case: Case) -> str:
    """Say that the figures are of another engine: its kind is not given, or its journals differ.

    Empty where they are of its kind and its journals agree.
    """
    if case.profile is None:
        return ""
    if known_profile(case) is None:
        return (
            f"The kind of engine is not given: these figures are of a {case.profile.says}, good "
            f"for trends only. Say which kind it is: {to(Way.LAYOUT, layout='...')}."
        )
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
