"""The report of one job for the owner and the file: complaint, evidence, answer, repair, proof."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date, datetime
from itertools import groupby
from typing import Any

from diagnose.case.case import Case, GaugeReading, Measurement, Sighting
from diagnose.case.schema import Entry
from diagnose.diagnosis import Diagnosis
from diagnose.output import signoff_words
from diagnose.output import teardown_words as words
from diagnose.output.documents.cautions import cautions
from diagnose.output.documents.ranking import RankedCause, others, ranked_causes
from diagnose.output.documents.reasons import LEADS, SETTLED, STRONGEST, in_short
from diagnose.output.html import report_figures as figures
from diagnose.output.html.graph_picture import Part, leading, picture
from diagnose.output.html.page import rendered
from diagnose.output.lines import clean, percent
from diagnose.output.scale import scale_of
from diagnose.signoff.judging import Verdict
from diagnose.signoff.sheet import Item, Signoff
from diagnose.teardown.plan import Plan
from knowledge import sources
from knowledge.book import the_book
from knowledge.model import Source, Stage, State, all_in
from knowledge.units import DIMENSIONS, TEMPERATURE, show, unit_in
from knowledge.work import Inspection

SHOWN, MOST_STAGES = 5, 6
HOW = {Stage.KNOWN: "told", Stage.OUTSIDE: "outside", Stage.OPENED: "opened"}
STATES = {"present": "yes", "absent": "no"}


def report_page(plan: Plan, sheet: Signoff, path: str, history: str = "") -> str:
    """The whole page. Every figure has its numbers beside it."""
    answer = plan.answer
    case, book = answer.case, answer.book
    part = leading(answer) if answer.inference.evidence else None
    causes = ranked_causes(answer)
    followed = list(_followed(case, answer))
    done = [i for i in sheet.items if i.judged.verdict is not Verdict.OPEN]
    return rendered(
        "report.html",
        name=clean(case.job.title).strip() or "case without a title",
        case=case,
        opened=day(case.job.opened),
        answer=answer,
        history=history,
        in_short=in_short(answer),
        closed=_closed(case),
        told=[_finding(s) for s in case.sightings if s.observation is not None],
        not_known=sum(s.observation is None for s in case.sightings),
        measured=[_measured(m, case) for m in case.measured],
        read=[_reading(r, case) for r in (*case.readings, *case.started)],
        causes=list(_causes(causes)),
        rest=others(causes, SHOWN, loss_is_real=answer.inference.loss_is_real),
        picture=picture(answer, part) if part else None,
        survey=figures.of_survey(answer),
        budget=figures.of_budget(case, book),
        followed=followed,
        stages=[] if case.closed else list(words.chances(plan))[:MOST_STAGES],
        stop_here="" if case.closed else _stop(plan),
        remedies=_remedies(sheet, answer),
        start=figures.of_start(sheet, book),
        figures=[_work(i, sheet) for i in done if i.task.dimension],
        done=[
            (signoff_words.PHASES[phase], [_work(i, sheet) for i in items])
            for phase, items in groupby(
                (i for i in done if not i.task.dimension), lambda i: i.task.phase
            )
        ],
        still_open=_still_open(sheet),
        sources=_sources(answer, part, sheet),
        cautions=_cautions(answer, followed, sheet),
        deferrals=words.deferrals(),
        path=path,
    )


def _closed(case: Case) -> dict[str, str] | None:
    """The end of the job, where it has one."""
    if case.closed is None:
        return None
    entry = case.closed.entry
    return {
        "causes": " and ".join(c.says for c in case.closed.causes),
        "how": entry.how,
        "remedy": entry.remedy,
        "reason": entry.reason,
        "day": _day(entry),
        "by": entry.by,
        "spent": _minutes(case.closed.minutes),
        "planned": _minutes(case.closed.planned),
    }


def _minutes(value: float | None) -> str:
    return "" if value is None else words.minutes(value)


def _day(entry: Entry) -> str:
    return day(entry.when)


def day(when: date | datetime | None) -> str:
    """A day as the case file writes it; empty where there is none.

    >>> day(datetime(2026, 6, 2, 9, 30)), day(None)
    ('2026-06-02', '')
    """
    if isinstance(when, datetime):
        when = when.date()
    return when.isoformat() if when else ""


def _finding(seen: Sighting) -> dict[str, Any]:
    entry = seen.entry
    said = STATES.get(entry.state or "", entry.value or "")
    sure = "" if entry.sure is None else f" ({entry.sure:.0%} sure)"
    return {
        "day": _day(entry),
        "says": seen.finding.says,
        "said": said + sure,
        "there": seen.observation is not None and seen.observation.state is State.PRESENT,
        "how": HOW[seen.stage],
        "where": entry.where,
        "by": entry.by,
        "note": entry.note,
    }


def _measured(one: Measurement, case: Case) -> dict[str, Any]:
    entry = one.entry
    unit = unit_in(entry.value or "", DIMENSIONS[one.measure.dimension])
    return {
        "day": _day(entry),
        "says": one.measure.says,
        "value": entry.value or show(one.value, DIMENSIONS[one.measure.dimension]),
        "limits": words.limits_of(one.measure, case, unit),
        "where": entry.where,
        "by": entry.by,
        "note": entry.note,
    }


def _reading(read: GaugeReading, case: Case) -> dict[str, Any]:
    reading, entry = read.reading, read.entry
    heat = reading.oil_temperature
    return {
        "day": _day(entry),
        "rpm": f"{reading.rpm:.0f}",
        "heat": show(heat, TEMPERATURE, "C", 3) if heat else "not measured",
        "pressure": entry.pressure or scale_of(case).one(reading.pressure),
        "gauge": reading.gauge,
        "tap": reading.tap,
        "start": entry.at == "start",
    }


def _causes(causes: Sequence[RankedCause]) -> Iterator[dict[str, Any]]:
    for number, cause in enumerate(causes[:SHOWN], 1):
        yield {
            "number": number,
            "cause": cause,
            "chance": percent(cause.probability),
            "width": round(100 * cause.probability),
            "sides": [
                (side, items[:STRONGEST])
                for side, items in (("for", cause.pro), ("against", cause.con))
                if items
            ],
            "chain": cause.chain,
        }


def _followed(case: Case, answer: Diagnosis) -> Iterator[dict[str, Any]]:
    """The checks that were made, in the order of the entries, with what each showed."""
    looked = [s for s in case.sightings if s.stage is not Stage.KNOWN and s.observation is not None]
    wanted = {s.finding for s in looked}
    checks = sorted(
        answer.book.inspections.values(),
        key=lambda i: (-len(wanted.intersection(i.reveals)), i.minutes, i.id),
    )
    made: dict[Inspection, list[Sighting]] = {}
    for seen in sorted(looked, key=lambda s: s.entry.no):
        check = next((c for c in checks if seen.finding in c.reveals), None)
        if check is not None:
            made.setdefault(check, []).append(seen)
    for check, these in made.items():
        yield {
            "check": check,
            "day": _day(these[0].entry),
            "shown": [
                s.finding.says
                for s in these
                if s.observation and s.observation.state is State.PRESENT
            ],
            "not_there": [
                s.finding.stated(there=False)
                for s in these
                if s.observation and s.observation.state is State.ABSENT
            ],
        }


def _stop(plan: Plan) -> str:
    first = plan.answer.ranking[0]
    if first.probability < SETTLED:
        return ""
    seen = "and has been seen on the engine" if plan.confirmed else "but nobody has seen it yet"
    return f"{first.cause.says} is {percent(first.probability)} likely {seen}."


def _remedies(sheet: Signoff, answer: Diagnosis) -> list[dict[str, str]]:
    """What puts each confirmed cause right; before that, the leading one as far as it leads."""
    first = answer.ranking[0]
    leads = [first.cause] if first.probability >= LEADS else []
    return [{"cause": c.says, "remedy": c.remedy, "left": c.follows} for c in sheet.causes or leads]


def _work(item: Item, sheet: Signoff) -> dict[str, Any]:
    return {
        "says": item.task.says,
        "limit": next(signoff_words.limits(item, sheet), ""),
        "verdict": signoff_words.verdict(item),
        "bad": item.judged.verdict in (Verdict.FAILED, Verdict.BORDERLINE),
        "day": _day(item.worked[-1].entry) if item.worked else "",
        "by": item.worked[-1].entry.by if item.worked else "",
    }


def _still_open(sheet: Signoff) -> str:
    return signoff_words.count(sheet) if sheet.items else ""


def _sources(answer: Diagnosis, part: Part | None, sheet: Signoff) -> list[str]:
    """Where the links, limits and tasks shown were read, each once."""
    known: Mapping[str, Source] = {s.key: s for s in all_in(sources.__name__, Source)}
    keys: dict[str, None] = {}
    if part is not None:
        for _, _, link in part.graph.edges(data=True):
            keys[str(link["source"])] = None
    for measured in answer.case.measured:
        low_high = the_book().limits_of(measured.measure.quantity)
        keys.update(dict.fromkeys(limit.source.key for limit in low_high if limit))
    for item in sheet.items:
        if item.judged.verdict is not Verdict.OPEN:
            keys[item.task.source.key] = None
            keys.update(dict.fromkeys(b.source.key for b in item.task.bands))
    return sorted({words.brief(known[k]) for k in keys if k in known})


def _cautions(answer: Diagnosis, followed: list[dict[str, Any]], sheet: Signoff) -> list[str]:
    """Of the checks made and the work done, each once."""
    kinds = [c for f in followed for c in f["check"].cautions]
    kinds += [c for i in sheet.items for c in i.task.cautions]
    return cautions(kinds, answer)
