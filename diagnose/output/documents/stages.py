"""The stages of a teardown plan: what to open, the checks behind it, what each outcome means."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from diagnose.output.as_json import NOT_IN_JSON, only
from diagnose.output.documents.cautions import cautions, short_cautions
from diagnose.output.documents.limits import limits_of, source_title, usual_units
from diagnose.output.documents.named import Named, named
from diagnose.output.lines import duration, percent
from diagnose.teardown.plan import Check, Meaning, Plan, Stage
from knowledge.access import Opening
from knowledge.model import Measure, Station
from knowledge.work import Access

READING_EXAMPLE = '"700 rpm 95 C 8 psi direct"'  #: a gauge reading as it is written on a sheet


@dataclass(frozen=True, kw_only=True)
class StageOpening:
    """A place to open."""

    place: Access
    says: str
    minutes: float  #: 0 where it is open already
    keep: str  #: what to record before it is disturbed; may be empty
    ready: tuple[str, ...]  #: parts and consumables to have ready
    destroys: str  #: what is lost by opening; may be empty
    care: tuple[str, ...] = ()  #: its cautions in a few words each

    @property
    def shown(self) -> bool:
        """Whether there is anything to do or to record."""
        return bool(self.minutes or self.keep)


@dataclass(frozen=True, kw_only=True)
class PlannedOutcome:
    """An outcome of a check: what it would mean when the check is reached, and what follows."""

    finding: str | None  #: None: nothing of what is looked for
    chance: float
    leads: str
    leads_with: float
    stop: bool  #: the cause is confirmed then
    next: str | None  #: id of the next check; None: not worked out, or nothing
    says: str = field(metadata=NOT_IN_JSON)
    meaning: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class MeasureBlank:
    """A value to measure, with its unit and limits."""

    id: str
    says: str
    unit: str
    limits: str


@dataclass(frozen=True, kw_only=True)
class PlannedCheck:
    """A check of a stage; texts may be empty."""

    inspection: str
    minutes: float
    evidence: str  #: why it comes first
    measures: tuple[MeasureBlank, ...] = field(metadata=only("id"))
    outcomes: tuple[PlannedOutcome, ...]
    says: str = field(metadata=NOT_IN_JSON)
    findings: tuple[Named, ...] = field(metadata=NOT_IN_JSON)  #: looked for, not answered yet
    waits: str = field(metadata=NOT_IN_JSON)  #: time that is not hands-on
    tools: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    keep: str = field(metadata=NOT_IN_JSON)  #: what to record first
    steps: tuple[str, ...] = field(metadata=NOT_IN_JSON)
    destroys: str = field(metadata=NOT_IN_JSON)
    takes_readings: bool = field(metadata=NOT_IN_JSON)
    care: tuple[str, ...] = field(metadata=NOT_IN_JSON)  #: its cautions in a few words each
    source: str = field(metadata=NOT_IN_JSON)

    @property
    def blanks(self) -> tuple[tuple[Named, str], ...]:
        """Each finding to answer with the meaning of a yes, which may be empty."""
        meanings = {Named(id=o.finding, says=o.says): o.meaning for o in self.outcomes if o.finding}
        return (*meanings.items(), *((f, "") for f in self.findings if f not in meanings))

    @property
    def otherwise(self) -> str:
        """What it means if nothing of what is looked for is found; may be empty."""
        return next((o.meaning for o in self.outcomes if o.finding is None), "")


@dataclass(frozen=True, kw_only=True)
class SideCheck:
    """A short check that is not needed for the cause, while its place is open."""

    inspection: str
    says: str
    minutes: float


@dataclass(frozen=True, kw_only=True)
class PlannedStage:
    """What is opened together, and what is done behind it; minutes hands-on."""

    opens: tuple[StageOpening, ...] = field(metadata=only("place"))
    minutes: float  #: openings and checks
    opening_minutes: float
    reach: float  #: chance that the cause has not been found before
    found: float  #: chance that it is found here
    why: str  #: why a costly opening comes now; may be empty
    cautions: tuple[str, ...]
    checks: tuple[PlannedCheck, ...]
    while_open: tuple[SideCheck, ...] = field(metadata=only("inspection"))
    number: int = field(metadata=NOT_IN_JSON)
    title: str = field(metadata=NOT_IN_JSON)  #: what is opened
    stations: tuple[Station, ...] = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class StageSummary:
    """A stage in a line: minutes so far, and chance of having found the cause by then."""

    number: int
    says: str
    minutes: float
    chance: float


def planned_stages(plan: Plan) -> tuple[PlannedStage, ...]:
    """Build the stages of a plan."""
    return tuple(_stage(stage, plan) for stage in plan.stages)


def stage_summaries(plan: Plan) -> Iterator[StageSummary]:
    """Yield the stages of a plan in short."""
    minutes = chance = 0.0
    for stage in plan.stages:
        minutes += stage.minutes
        chance += stage.chance
        yield StageSummary(
            number=stage.number,
            says=_opened(stage, plan)[-1],  # the place that is reached
            minutes=minutes,
            chance=chance,
        )


def _title(stage: Stage, plan: Plan) -> str:
    return "; then ".join(_opened(stage, plan))


def _opened(stage: Stage, plan: Plan) -> list[str]:
    """What is opened, outermost first; at least one line."""
    opened = [o.says for o in stage.way if o.minutes_in_place or o.minutes_on_stand]
    lies_open = plan.answer.planner.opened - {Access.OUTSIDE}
    return opened or [f"nothing {'more ' if lies_open else ''}to open"]


def _stage(stage: Stage, plan: Plan) -> PlannedStage:
    return PlannedStage(
        opens=tuple(_opening(o, plan) for o in stage.way),
        minutes=stage.minutes,
        opening_minutes=stage.opening_minutes,
        reach=stage.reach,
        found=stage.chance,
        why=stage.why,
        cautions=tuple(cautions(stage.cautions, plan.answer)),
        checks=tuple(_check(c, plan) for c in stage.checks),
        while_open=tuple(
            SideCheck(inspection=o.inspection.id, says=o.inspection.says, minutes=o.own)
            for o in stage.also
        ),
        number=stage.number,
        title=_title(stage, plan),
        stations=tuple(dict.fromkeys(c.inspection.station for c in stage.checks)),
    )


def _opening(opening: Opening, plan: Plan) -> StageOpening:
    return StageOpening(
        place=opening.access,
        says=opening.says,
        minutes=plan.chooser.tree.minutes(opening.access),
        keep=opening.keep,
        ready=opening.ready,
        destroys=opening.destroys,
        care=tuple(short_cautions(opening.cautions, plan.answer)),
    )


def _check(check: Check, plan: Plan) -> PlannedCheck:
    inspection = check.inspection
    return PlannedCheck(
        inspection=inspection.id,
        minutes=check.minutes,
        evidence=check.evidence,
        measures=tuple(_measure_blank(m, plan) for m in inspection.measures),
        outcomes=tuple(_outcome(m) for m in check.meanings),
        says=inspection.says,
        findings=named(check.option.findings),
        waits=duration(inspection.waits_minutes) if inspection.waits_minutes else "",
        tools=inspection.tools,
        keep=inspection.keep,
        steps=inspection.steps_on(plan.answer.case.has),
        destroys=inspection.destroys,
        takes_readings=inspection.takes_readings,
        care=tuple(short_cautions(inspection.cautions, plan.answer)),
        source=source_title(inspection.source),
    )


def _measure_blank(measure: Measure, plan: Plan) -> MeasureBlank:
    return MeasureBlank(
        id=measure.id,
        says=measure.says,
        unit=usual_units(measure.dimension),
        limits=limits_of(measure, plan.answer.case),
    )


def _outcome(found: Meaning) -> PlannedOutcome:
    return PlannedOutcome(
        finding=found.finding.id if found.finding else None,
        chance=found.chance,
        leads=found.leads.id,
        leads_with=found.leads_with,
        stop=found.settles,
        next=found.then.id if found.then else None,
        says=found.finding.says if found.finding else "none of these",
        meaning=_meaning(found),
    )


def _meaning(found: Meaning) -> str:
    """What the outcome would mean and what follows, in a sentence."""
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
