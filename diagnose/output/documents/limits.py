"""Limits, units and sources in words, as every document shows them."""

from __future__ import annotations

import re

from diagnose.case.case import Case
from diagnose.signoff.judging import NO_FIGURE
from knowledge.book import the_book
from knowledge.limits import Limit
from knowledge.model import Measure, Source
from knowledge.units import DIMENSIONS, show

_ADDRESS = re.compile(r"[,;:.]?\s*(?:also\s+)?\(?https?://\S+")


def source_title(source: Source) -> str:
    """Return the title of a source without its web address."""
    if source.trust in ("practice", "judgement"):
        return source.title.split(":")[0]
    return _ADDRESS.sub("", source.title).split(" ; ")[0].strip()


def limits_of(measure: Measure, case: Case, unit: str | None = None) -> str:
    """Return what is accepted with its source, in ``unit`` where it is given.

    The engine's own figure, where the case has one, takes the place of the typical one.
    """
    unit = unit or case.unit(measure.dimension, measure.quantity.id)
    low, high = the_book().limits_of(measure.quantity)
    if not (low or high):
        return "limit: the engine maker's"
    parts = [
        f"{word} {figure}"
        for word, limit in (("at least", low), ("at most", high))
        if limit and (figure := _figure(limit, case, unit))
    ]
    return "; ".join(parts) if parts else NO_FIGURE


def _figure(limit: Limit, case: Case, unit: str | None) -> str:
    """A limit and its source; empty where only figures of other engines are printed."""
    dimension = DIMENSIONS[limit.dimension]
    if limit in case.limits:
        return f"{show(case.limits[limit], dimension, unit)} (this engine's own figure)"
    if usual := case.usual_limits.get(limit):
        said = f"{usual.says}; {source_title(usual.source)}"
        return f"{show(usual.value, dimension, unit)} (typical {said})"
    if not (printed := limit.printed(case.has)):
        return ""
    each = [
        f"{show(p.value, dimension, unit)} ({p.of or 'typical'}; {source_title(p.source)})"
        for p in printed
    ]
    return f"{' or '.join(each)}, none of this engine's own"


def usual_units(dimension: str) -> str:
    """Return the usual units of a dimension, at most two."""
    names = [s.split(" ", 1)[1] for s in DIMENSIONS[dimension].spellings if " " in s]
    return " or ".join(list(dict.fromkeys(names))[:2])
