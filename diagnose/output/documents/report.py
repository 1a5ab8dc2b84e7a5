"""The document of ``report``: one job for its owner and the file."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import groupby

from diagnose.case.case import Case
from diagnose.circuit.budget import can_be_drawn_up
from diagnose.circuit.survey import survey
from diagnose.diagnosis import Diagnosis
from diagnose.errors import UsageError
from diagnose.output.documents.alarms import AlarmNotice, alarm_notices
from diagnose.output.documents.budget import BudgetDocument, budget_document
from diagnose.output.documents.cause_graph import CauseGraph, leading_causes_graph
from diagnose.output.documents.cautions import cautions, deferrals
from diagnose.output.documents.contradictions import ContradictionNotice, contradiction_notices
from diagnose.output.documents.found import FoundFaultEntry, found_entries, headline, uncosted
from diagnose.output.documents.job_end import ended_of, held_up
from diagnose.output.documents.limits import source_title
from diagnose.output.documents.owners_page import OwnersPage, owners_page
from diagnose.output.documents.photos import PhotoEntry, photo_entries
from diagnose.output.documents.ranking import RankedCause, others, ranked_causes
from diagnose.output.documents.reasons import LEADS, is_settled
from diagnose.output.documents.report_entries import (
    CheckMade,
    Closing,
    ReportFinding,
    ReportMeasurement,
    ReportReading,
    check_made,
    checks_made,
    closing,
    day,
    report_finding,
    report_measurement,
    report_reading,
)
from diagnose.output.documents.reported import reported_sentences
from diagnose.output.documents.review import Damage, damages
from diagnose.output.documents.signoff_items import (
    PHASES,
    count_in_words,
    limit_lines,
    verdict_in_words,
)
from diagnose.output.documents.stages import StageSummary, stage_summaries
from diagnose.output.documents.start_table import StartTable, start_table
from diagnose.output.documents.survey import SurveyDocument, survey_document
from diagnose.output.lines import percent
from diagnose.reasoning.seen_on_engine import chance_together, taken_together
from diagnose.signoff.judging import Verdict
from diagnose.signoff.sheet import Item, Signoff
from diagnose.signoff.start import first_start
from diagnose.teardown.plan import Plan
from knowledge import sources
from knowledge.book import the_book
from knowledge.model import Source, all_in
from knowledge.work import Inspection, Phase

CAUSES, STAGES = 5, 6  #: shown at most


@dataclass(frozen=True, kw_only=True)
class Repair:
    """What puts a cause right, and what follows if it is left."""

    cause: str
    remedy: str
    left: str


@dataclass(frozen=True, kw_only=True)
class WorkDone:
    """A task of the sign-off that was seen to."""

    says: str
    limit: str
    verdict: str
    bad: bool  #: failed or borderline
    day: str
    by: str


@dataclass(frozen=True, kw_only=True)
class WorkPhase:
    """What was seen to in one phase, without a measured value."""

    says: str
    done: tuple[WorkDone, ...]


@dataclass(frozen=True, kw_only=True)
class ReportDocument:
    """Everything ``report`` shows; texts may be empty, figures None where there is no data."""

    owner: OwnersPage
    title: str
    engine: str
    engine_name: str
    opened: str
    by: str
    complaint: str
    note: str
    oil: str
    alarms: tuple[AlarmNotice, ...]
    closed: Closing | None
    ended: str  #: how the job ended, in a sentence; empty while it is open
    in_short: str
    history: str
    contradictions: tuple[ContradictionNotice, ...]
    reported: tuple[str, ...]  #: behaviour, trials and earlier work, a sentence each
    findings: tuple[ReportFinding, ...]
    not_known: int  #: findings asked about and not known
    measured: tuple[ReportMeasurement, ...]
    readings: tuple[ReportReading, ...]
    found: tuple[FoundFaultEntry, ...]  #: faults seen or measured, whatever the root cause is
    causes: tuple[RankedCause, ...]  #: the most probable few
    others: str
    damage: tuple[Damage, ...]
    contaminated: tuple[str, ...]  #: places that debris has reached
    unexplained: tuple[str, ...]
    graph: CauseGraph | None
    survey: SurveyDocument | None
    budget: BudgetDocument | None
    checks: tuple[CheckMade, ...]
    photos: tuple[PhotoEntry, ...]  #: in the order they were taken
    stop_here: str
    stages: tuple[StageSummary, ...]
    repairs: tuple[Repair, ...]
    start: StartTable | None
    measured_work: tuple[WorkDone, ...]
    phases: tuple[WorkPhase, ...]
    signoff: str  #: how far the sign-off is
    cautions: tuple[str, ...]
    sources: tuple[str, ...]
    deferrals: tuple[str, ...]


def report_document(plan: Plan, sheet: Signoff, history: str = "") -> ReportDocument:
    """Build the document of a job; ``history``: the line on the shop's closed jobs."""
    diagnosis = plan.answer
    case, causes = diagnosis.case, ranked_causes(diagnosis)
    end = ended_of(diagnosis)
    graph = leading_causes_graph(diagnosis) if diagnosis.inference.evidence else None
    made = checks_made(case, diagnosis)
    photos = photo_entries(case.path)
    done = [i for i in sheet.items if i.judged.verdict is not Verdict.OPEN]
    return ReportDocument(
        owner=owners_page(diagnosis, sheet, causes, photos),
        title=case.job.title,
        engine=case.layout.says,
        engine_name=case.engine.name,
        opened=day(case.job.opened),
        by=case.job.by,
        complaint=case.job.complaint,
        note=case.job.note,
        oil=case.engine.oil,
        alarms=alarm_notices(diagnosis),
        closed=closing(case),
        ended=end,
        in_short=headline(diagnosis),
        history=history,
        contradictions=contradiction_notices(diagnosis),
        reported=tuple(reported_sentences(case).values()),
        findings=tuple(report_finding(s) for s in case.finding_records if s.observation),
        not_known=sum(s.observation is None for s in case.finding_records),
        measured=tuple(report_measurement(m, case) for m in case.measurements),
        readings=tuple(report_reading(r, case) for r in (*case.readings, *case.start_readings)),
        found=found_entries(diagnosis),
        causes=causes[:CAUSES],
        others=others(causes, CAUSES, loss_is_real=diagnosis.inference.loss_is_real),
        damage=damages(diagnosis),
        contaminated=diagnosis.found.contaminated,
        unexplained=tuple(f.says for f in diagnosis.reasons.unexplained),
        graph=graph,
        survey=_survey(diagnosis),
        budget=_budget(diagnosis),
        checks=tuple(check_made(check, found) for check, found in made.items()),
        photos=photos,
        stop_here="" if end else _stop(plan),
        stages=() if end else tuple(stage_summaries(plan))[:STAGES],
        repairs=_repairs(sheet, diagnosis),
        start=_first_start(sheet),
        measured_work=tuple(_work(i, sheet) for i in done if i.task.dimension),
        phases=_phases(done, sheet),
        signoff=count_in_words(sheet) if sheet.items else "",
        cautions=_cautions(made, sheet, diagnosis),
        sources=_sources(case, graph, sheet),
        deferrals=deferrals(),
    )


def _budget(diagnosis: Diagnosis) -> BudgetDocument | None:
    """What each finding costs; None where the circuit is not in figures."""
    budget, case = diagnosis.found.budget, diagnosis.case
    if not budget or not can_be_drawn_up(case):
        return None
    return budget_document(
        budget, case, held_up=held_up(diagnosis), uncosted=uncosted(diagnosis, budget)
    )


def _phases(done: Iterable[Item], sheet: Signoff) -> tuple[WorkPhase, ...]:
    """The tasks done without a measured value, by phase."""
    by_phase = groupby((i for i in done if not i.task.dimension), lambda i: i.task.phase)
    return tuple(
        WorkPhase(says=PHASES[p], done=tuple(_work(i, sheet) for i in items))
        for p, items in by_phase
    )


def _cautions(made: Iterable[Inspection], sheet: Signoff, diagnosis: Diagnosis) -> tuple[str, ...]:
    """The cautions of the checks that were made and of the tasks called for."""
    of_checks = [c for check in made for c in check.cautions]
    of_tasks = [c for i in sheet.items for c in i.task.cautions]
    return tuple(cautions([*of_checks, *of_tasks], diagnosis))


def _survey(diagnosis: Diagnosis) -> SurveyDocument | None:
    """The readings against the circuit: the survey the diagnosis rests on, where it has one."""
    case = diagnosis.case
    if case.profile is None or not case.readings:
        return None
    try:
        found = diagnosis.inference.survey or survey(case, diagnosis.book)
    except UsageError:
        return None
    return survey_document(found, case, may_run=diagnosis.may_run)


def _stop(plan: Plan) -> str:
    if not is_settled(plan.answer):
        return ""
    known, first = plan.answer.inference, plan.answer.ranking[0]
    together = taken_together(known)
    chance = first.probability if len(together) == 1 else chance_together(known)
    seen = "and has been seen on the engine" if plan.confirmed else "but nobody has seen it yet"
    return f"{'; or '.join(c.says for c in together)} is {percent(chance)} likely {seen}."


def _repairs(sheet: Signoff, diagnosis: Diagnosis) -> tuple[Repair, ...]:
    """What puts each confirmed cause right; before that, the first one as far as it leads."""
    first = diagnosis.ranking[0]
    leads = [first.cause] if first.probability >= LEADS else []
    return tuple(
        Repair(cause=c.says, remedy=c.remedy, left=c.follows) for c in sheet.causes or leads
    )


def _first_start(sheet: Signoff) -> StartTable | None:
    diagnosis = sheet.answer
    if not (diagnosis.case.start_readings or sheet.of([Phase.FIRST_START, Phase.RUN_IN])):
        return None
    try:
        return start_table(first_start(diagnosis.case, diagnosis.book))
    except UsageError:
        return None


def _work(item: Item, sheet: Signoff) -> WorkDone:
    last = item.worked[-1].entry if item.worked else None
    limits = limit_lines(item, sheet.answer.case)
    return WorkDone(
        says=item.task.says,
        limit=limits[0].whole if limits else "",
        verdict=verdict_in_words(item),
        bad=item.judged.verdict in (Verdict.FAILED, Verdict.BORDERLINE),
        day=day(last.when) if last else "",
        by=last.by if last else "",
    )


def _sources(case: Case, graph: CauseGraph | None, sheet: Signoff) -> tuple[str, ...]:
    """The sources of the links, limits and tasks shown, each once."""
    read = all_in(sources.__name__, Source)
    known = {s.key: s for s in (*read, *map(sources.idea_from, read))}
    keys = {link.source for link in graph.links} if graph else set()
    for measured in case.measurements:
        limits = the_book().limits_of(measured.measure.quantity)
        keys |= {limit.source.key for limit in limits if limit}
    for item in sheet.items:
        if item.judged.verdict is not Verdict.OPEN:
            keys |= {item.task.source.key, *(b.source.key for b in item.task.bands)}
    return tuple(sorted({source_title(known[k]) for k in keys if k in known}))
