"""The sentences of a teardown plan, the same on a terminal, on paper and on a page."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import groupby

from diagnose.case.case import Case
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.budget import still_missing
from diagnose.output.lines import percent
from diagnose.planning.simulation import PlanEstimate
from diagnose.teardown.changes import Changes
from diagnose.teardown.loose_ends import DueTask, LooseEnds
from diagnose.teardown.plan import Check, Meaning, NotPlanned, Plan, Stage
from knowledge.access import Opening
from knowledge.book import the_book
from knowledge.cautions import DEFERS_TO
from knowledge.model import Limit, Measure, Source
from knowledge.units import DIMENSIONS, show

_ADDRESS = re.compile(r"[,;:.]?\s*(?:also\s+)?\(?https?://\S+")
READING_BLANK = '"700 rpm 95 C 8 psi direct"'


def minutes(value: float) -> str:
    """Minutes as a person says them.

    >>> minutes(7.4), minutes(95), minutes(720)
    ('7 min', '95 min', '12 h')
    """
    return f"{value / 60:.0f} h" if value >= 240 and value % 60 == 0 else f"{value:.0f} min"


def pace(plan: Plan) -> str:
    """For whom the minutes hold."""
    request = plan.request
    where = "on a stand" if request.on_stand else "in its place"
    hand = "somebody doing it for the first time" if request.first_time else "a practised hand"
    room = ", little room" if request.crowded else ""
    closing = ", closed up again to test each time" if request.closed_up else ""
    shop = f"; times {request.shop_pace:.2f}, this shop's pace" if request.shop_pace != 1.0 else ""
    return f"Minutes are judgement, for {hand}, the engine {where}{room}{closing}{shop}."


def hands_on(estimate: PlanEstimate) -> str:
    """The plan's hands-on minutes: where it confirms a cause, on average, and all of it."""
    confirms = f"about {estimate.until_confirmed:.0f} min hands-on where this plan confirms a cause"
    return (
        f"{confirms if estimate.found else 'this plan confirms no cause'}; about "
        f"{estimate.expected:.0f} min on average, whether it does or not; {estimate.worst:.0f} min "
        "where all of it is done"
    )


def title(stage: Stage) -> str:
    """What the stage opens."""
    opened = [o.says for o in stage.way if o.minutes_in_place or o.minutes_on_stand]
    return "; then ".join(opened) if opened else "nothing to open"


def destroys(opening: Opening) -> str:
    """What is lost by opening, empty where nothing is."""
    return f"lost by it: {opening.destroys}" if opening.destroys else ""


def meaning(found: Meaning) -> str:
    """What one outcome would mean and what follows."""
    leads = f"{found.leads.says}, {percent(found.leads_with)}"
    chance = percent(found.chance)
    if found.finding is None:
        if found.settles:
            return f"none of these ({chance}): only {leads} is left; stop here"
        return f"none of these ({chance}): go on"
    if found.settles:
        return f"if so ({chance}): {leads}: confirmed, stop here"
    then = f"; then {found.then.id}" if found.then else ""
    return f"if so ({chance}): {leads} likely{then}"


def brief(source: Source) -> str:
    """The title of a source without its address."""
    if source.trust in ("practice", "judgement"):
        return source.title.split(":")[0]
    return _ADDRESS.sub("", source.title).split(" ; ")[0].strip()


def limits_of(measure: Measure, case: Case, unit: str | None = None) -> str:
    """What will do, the engine's own figure first, with its source; in ``unit`` where it is given."""
    low, high = the_book().limits_of(measure.quantity)
    parts = [
        f"{word} {_figure(limit, case, unit)}"
        for word, limit in (("at least", low), ("at most", high))
        if limit
    ]
    return "; ".join(parts) if parts else "limit: the engine maker's"


def _figure(limit: Limit, case: Case, unit: str | None) -> str:
    dimension = DIMENSIONS[limit.dimension]
    if limit in case.limits:
        return f"{show(case.limits[limit], dimension, unit)} (this engine's own figure)"
    return f"{show(limit.typical, dimension, unit)} (typical; {brief(limit.source)})"


def unit_of(measure: Measure) -> str:
    """The units a measure's blank takes."""
    return units(measure.dimension)


def units(dimension: str) -> str:
    """The usual units of a dimension; every figure is written with its own."""
    names = [s.split(" ", 1)[1] for s in DIMENSIONS[dimension].spellings if " " in s]
    return " or ".join(list(dict.fromkeys(names))[:2])


def stop_here(plan: Plan, ends: LooseEnds) -> str:
    """Where looking may end, or nothing more would tell; empty where the plan goes on."""
    top = plan.answer.ranking[0]
    if not plan.settled:
        nothing = "Nothing is left to open or to check that would tell the causes apart; "
        leads = f"{top.cause.says} leads with {percent(top.probability)}."
        return "" if plan.stages else nothing + leads
    named = f"{top.cause.says} ({percent(top.probability)}) [{top.cause.id}]"
    if ends.may_stop:
        closes = " and what was found explains the missing pressure" if ends.pressure_closed else ""
        open_ = ends.pressure_closed is None and bool(plan.answer.case.readings)
        more = " Whether it explains all of the missing pressure is not measured." if open_ else ""
        return f"You may stop here: {named} is confirmed{closes}.{more}"
    if ends.confirmed:
        return f"Confirmed: {named}. Yet some of the missing pressure is not explained."
    return (
        f"Likely enough to stop looking, but not seen yet: {named}. Look at the part itself before "
        "anything is renewed" + (":" if plan.stages else "; no check of the book would show it.")
    )


def pressure(answer: Diagnosis, ends: LooseEnds) -> str:
    """How much of the missing pressure is explained; empty where there is nothing to say yet."""
    if ends.budget is not None:
        return still_missing(ends.budget, answer.case)
    if not ends.confirmed:
        return ""
    if {c.id for c in ends.causes} <= answer.inference.harmless:
        return (
            "this cause takes none away, it only makes the gauge lie; a trusted gauge has to show "
            "what is wanted before the engine goes back to work"
        )
    return (
        "how much of the missing pressure this explains cannot be said: that takes a hot gauge "
        "reading and a measured value that bears on the oil circuit, such as a clearance"
    )


def found_by(ends: LooseEnds) -> Iterator[tuple[str, list[DueTask]]]:
    """What must be followed, by what was found that calls for it, in few words."""
    for because, dues in groupby(ends.follow, lambda d: d.because):
        more = f" and {len(because) - 2} more" if len(because) > 2 else ""
        yield ", ".join(f.says for f in because[:2]) + more, list(dues)


def takes_readings(check: Check) -> bool:
    """Whether a gauge is read in this check."""
    return check.inspection.takes_readings


def never(left: NotPlanned) -> str:
    """Why a costly opening is not in the plan."""
    chance = percent(left.chance)
    return (
        f"{left.opening.says}: {left.minutes:.0f} min of opening would add {chance} to the chance "
        "of naming the cause"
    )


def bench_list(plan: Plan) -> tuple[list[str], list[str]]:
    """Tools and parts to have ready, each once, in the order they are needed."""
    tools: dict[str, None] = {}
    ready: dict[str, None] = {}
    for stage in plan.stages:
        for opening in stage.way:
            tools.update(dict.fromkeys(opening.tools))
            ready.update(dict.fromkeys(opening.ready))
        for check in stage.checks:
            tools.update(dict.fromkeys(check.inspection.tools))
    return list(tools), list(ready)


def chances(plan: Plan) -> Iterator[tuple[int, str, float, float]]:
    """Each stage: its number, what is opened, minutes so far, chance found by then."""
    total = found = 0.0
    for stage in plan.stages:
        total += stage.minutes
        found += stage.chance
        yield stage.number, title(stage), total, found


def deferrals() -> list[str]:
    """What the plan gives way to."""
    return [d.says for d in DEFERS_TO]


def since(changes: Changes) -> str:
    """The heading of what changed."""
    return f"What changed since entry {changes.since}"


def changed(changes: Changes) -> Iterator[str]:
    """What the entries since then told, and did to the ranking and the plan."""
    for sighting in changes.new_findings:
        state = sighting.observation.state.value if sighting.observation else "not known"
        yield f"{sighting.finding.says}: {state} [{sighting.finding.id}]"
    case = changes.after.answer.case
    for taken in case.measurements:
        if taken.entry.no > changes.since:
            yield f"{taken.measure.says}: {taken.entry.value} [{taken.measure.id}]"
    for one in case.readings:
        if one.entry.no > changes.since:
            said = (one.entry.rpm, one.entry.oil, one.entry.pressure)
            yield f"reading: {' '.join(filter(None, said))}"
    for moved in changes.cause_changes[:4]:
        yield f"{percent(moved.before)} before, {percent(moved.after)} now: {moved.cause.says}"
    was, now = changes.before.estimate.expected, changes.after.estimate.expected
    if changes.after.stages and changes.before.stages:
        yield f"minutes still to be expected: {was:.0f} before, {now:.0f} now"
    for label, these in (("no longer needed", changes.dropped), ("new in the plan", changes.added)):
        if these:
            names = "; ".join(i.says for i in these[:5])
            yield f"{label}: {names}" + (f"; and {len(these) - 5} more" if len(these) > 5 else "")
