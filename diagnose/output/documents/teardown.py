"""The document of ``teardown``: the plan in stages, what it costs, when to stop, loose ends."""

from __future__ import annotations

from dataclasses import dataclass, field

from diagnose.output.as_json import IF_GIVEN, NOT_IN_JSON, key
from diagnose.output.documents.alarms import AlarmNotice, alarm_notices
from diagnose.output.documents.cautions import deferrals
from diagnose.output.documents.found import strip_down
from diagnose.output.documents.job_end import ended_of
from diagnose.output.documents.loose_ends import LooseEndsNotice, loose_ends_notice
from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.next_checks import first_step
from diagnose.output.documents.plan_changes import PlanChanges, plan_changes
from diagnose.output.documents.shop_note import ShopNote
from diagnose.output.documents.stages import (
    PlannedStage,
    StageSummary,
    planned_stages,
    stage_summaries,
)
from diagnose.output.lines import duration, percent
from diagnose.planning.simulation import PlanEstimate
from diagnose.reasoning.seen_on_engine import chance_together, taken_together
from diagnose.signoff.nothing_wrong import nothing_wrong
from diagnose.teardown.changes import Changes
from diagnose.teardown.loose_ends import LooseEnds
from diagnose.teardown.plan import NotPlanned, Plan, is_on_stand
from knowledge.work import Access

LIKELY = 3  #: causes named in short


@dataclass(frozen=True, kw_only=True)
class PlanMinutes:
    """Hands-on minutes; the JSON keys are those of schema 1."""

    until_confirmed: float = field(metadata=key("made_anew"))  #: where a cause is confirmed
    on_average: float = field(metadata=key("to_the_letter"))  #: whether one is confirmed or not
    all: float  #: where all of the plan is done


@dataclass(frozen=True, kw_only=True)
class OpeningLeftOut:
    """A costly opening that the plan does without."""

    opens: Access
    minutes: float
    adds: float  #: to the chance of naming the cause
    says: str = field(metadata=NOT_IN_JSON)  #: why, in a sentence


@dataclass(frozen=True, kw_only=True)
class TeardownDocument:
    """Everything ``teardown`` answers."""

    case: str | None  #: path of the case file
    title: str
    layout: str
    alarms: tuple[AlarmNotice, ...]
    may_stop: bool  #: a cause is confirmed, and no pressure is known to be missing
    confirmed: tuple[str, ...]  #: ids of causes
    minutes: PlanMinutes
    found: float  #: chance that the plan confirms a cause
    stages: tuple[PlannedStage, ...]
    not_planned: tuple[OpeningLeftOut, ...]
    loose_ends: LooseEndsNotice
    changed: PlanChanges | None  #: None where no earlier entry was named to compare with
    history: ShopNote | None = field(default=None, metadata=IF_GIVEN)
    strip: str = field(metadata=NOT_IN_JSON)  #: that it must come right down; may be empty
    path: str = field(metadata=NOT_IN_JSON)  #: of the case file, as typed
    closed: str = field(metadata=NOT_IN_JSON)  #: how it ended; empty while not repaired
    engine: str = field(metadata=NOT_IN_JSON)
    stop_here: str = field(metadata=NOT_IN_JSON)  #: why looking may end; empty: the plan goes on
    hands_on: str = field(metadata=NOT_IN_JSON)  #: the minutes in a sentence
    waits: str = field(metadata=NOT_IN_JSON)  #: the longest wait; may be empty
    nothing_wrong: bool = field(default=False, metadata=NOT_IN_JSON)  #: as far as it was read
    first_step: str = field(default="", metadata=NOT_IN_JSON)  #: before any check; may be empty
    likely: str = field(metadata=NOT_IN_JSON)  #: the first few causes
    until: float = field(metadata=NOT_IN_JSON)  #: probability that confirms a cause
    limit: float | None = field(metadata=NOT_IN_JSON)  #: most minutes, where the person set any
    pace: str = field(metadata=NOT_IN_JSON)  #: for whom the minutes hold
    summary: tuple[StageSummary, ...] = field(metadata=NOT_IN_JSON)
    tools: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: in the order they are needed
    ready: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: parts and consumables
    deferrals: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: what takes precedence over it

    @property
    def name(self) -> str:
        """The title, or that there is none."""
        return self.title or UNTITLED


def teardown_document(
    plan: Plan,
    ends: LooseEnds,
    path: str,
    *,
    changes: Changes | None = None,
    history: ShopNote | None = None,
) -> TeardownDocument:
    """Build the document of a plan; ``path``: the case file as typed."""
    answer, estimate = plan.answer, plan.estimate
    case = answer.case
    openings = [o for stage in plan.stages for o in stage.way]
    tools: dict[str, None] = {}
    for stage in plan.stages:
        tools |= dict.fromkeys(t for o in stage.way for t in o.tools)
        tools |= dict.fromkeys(t for c in stage.checks for t in c.inspection.tools)
    return TeardownDocument(
        case=str(case.path) if case.path else None,
        title=case.job.title,
        layout=case.layout.id,
        first_step=first_step(answer),
        alarms=alarm_notices(answer),
        may_stop=ends.may_stop,
        confirmed=tuple(c.id for c in ends.causes) if ends.confirmed else (),
        minutes=PlanMinutes(
            until_confirmed=estimate.until_confirmed,
            on_average=estimate.expected,
            all=estimate.worst,
        ),
        found=estimate.found,
        stages=planned_stages(plan),
        not_planned=tuple(_left_out(each) for each in plan.not_planned),
        loose_ends=loose_ends_notice(answer, ends),
        changed=plan_changes(changes) if changes else None,
        history=history,
        strip=strip_down(answer),
        path=path,
        closed=ended_of(answer),
        engine=case.layout.says,
        stop_here=_stop_here(plan, ends),
        hands_on=hands_on(estimate),
        waits=duration(plan.waits) if plan.waits else "",
        nothing_wrong=nothing_wrong(answer),
        likely="; ".join(
            f"{r.cause.says} {percent(r.probability)}" for r in answer.ranking[:LIKELY]
        ),
        until=plan.request.until,
        limit=plan.request.minutes,
        pace=_pace(plan),
        summary=tuple(stage_summaries(plan)),
        tools=tuple(tools),
        ready=tuple(dict.fromkeys(r for o in openings for r in o.ready)),
        deferrals=deferrals(),
    )


def _left_out(left: NotPlanned) -> OpeningLeftOut:
    says = (
        f"{left.opening.says}: {left.minutes:.0f} min of opening would add "
        f"{percent(left.chance)} to the chance of naming the cause"
    )
    if left.repair:
        because = " and ".join(f.says for f in left.repair)
        says = (
            f"{left.opening.says}: the repair opens it in any case, as {because}: look there then"
        )
    return OpeningLeftOut(
        opens=left.opening.access, minutes=left.minutes, adds=left.chance, says=says
    )


def hands_on(estimate: PlanEstimate) -> str:
    """Return the hands-on minutes of a plan in a sentence."""
    confirms = (
        f"on average {estimate.until_confirmed:.0f} min hands-on where this plan confirms a cause"
    )
    return (
        f"{confirms if estimate.found else 'this plan confirms no cause'}; about "
        f"{estimate.expected:.0f} min on average, whether it does or not; {estimate.worst:.0f} min "
        "where all of it is done"
    )


def _pace(plan: Plan) -> str:
    request = plan.request
    where = "on a stand" if is_on_stand(plan) else "in its place"
    hand = "somebody doing it for the first time" if request.first_time else "a practised hand"
    space = ", little room" if request.crowded else ""
    closing = ", closed up again to test each time" if request.closed_up else ""
    shop = f"; times {request.shop_pace:.2f}, this shop's pace" if request.shop_pace != 1.0 else ""
    return f"Minutes are judgement, for {hand}, the engine {where}{space}{closing}{shop}."


def _leader(plan: Plan) -> str:
    """The likeliest cause, with those that the same found thing shows, and the probability."""
    known = plan.answer.inference
    together = taken_together(known)
    top = plan.answer.ranking[0]
    chance = top.probability if len(together) == 1 else chance_together(known)
    names, ids = (
        join.join(parts)
        for join, parts in (("; or ", [c.says for c in together]), (", ", [c.id for c in together]))
    )
    return f"{names} ({percent(chance)}) [{ids}]"


def _stop_here(plan: Plan, ends: LooseEnds) -> str:
    """Say that looking may end, or that no check tells more; empty where the plan goes on."""
    top = plan.answer.ranking[0]
    if not plan.settled:
        nothing = "No opening or check is left that would tell the causes apart; "
        leads = f"{top.cause.says} leads with {percent(top.probability)}."
        return "" if plan.stages else nothing + leads
    leader = _leader(plan)
    if ends.may_stop:
        closes = " and what was found explains the missing pressure" if ends.pressure_closed else ""
        read = bool(plan.answer.case.readings) and not ends.enough
        open_ = ends.pressure_closed is None and read
        more = " Whether it explains all of the missing pressure is not settled." if open_ else ""
        return f"You may stop here: {leader} is confirmed{closes}.{more}"
    if ends.lodged:
        where = " or ".join(place.says for place in ends.lodged)
        return f"It began with: {leader}. Find where the pieces sit now: {where}."
    if ends.of_nothing:
        others = " or ".join(c.says.partition(":")[0] for c in ends.of_nothing)
        return (
            f"Confirmed: {leader}. Yet a trusted gauge shows nothing, which it seldom brings about: "
            f"look for a second fault before you close up, such as {others}."
        )
    if ends.confirmed:
        return f"Confirmed: {leader}. Yet some of the missing pressure is not explained."
    return (
        f"Likely enough to stop looking, but not seen yet: {leader}. Look at the part itself "
        "before you renew anything"
        + (":" if plan.stages else ("; no check of the book would show it."))
    )
