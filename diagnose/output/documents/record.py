"""The documents of ``record`` and ``close``: what was saved, and what to do next."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.case import Case, Closing, Measurement
from diagnose.case.gauge_looks import in_words, said
from diagnose.case.mended import limits_at
from diagnose.case.reports import AT_ONCE
from diagnose.case.schema import ReadingEntry
from diagnose.case.writing import Appended, Fields, NewEntry
from diagnose.diagnosis import Diagnosis
from diagnose.entry.after_repair import START
from diagnose.entry.engine_said import EngineChange
from diagnose.entry.repair_work import REPAIR
from diagnose.output.documents.alarms import AlarmNotice, few_alarm_notices
from diagnose.output.documents.contradictions import rests_on, stated_contradictions
from diagnose.output.documents.facts import engine_sentence
from diagnose.output.documents.reported import reported_sentences
from diagnose.output.documents.verdicts import verdicts
from diagnose.output.lines import percent
from diagnose.output.scale import scale_of
from diagnose.signoff.measured import measured_bounds
from knowledge.book import Book
from knowledge.model import Severity, Stage
from knowledge.pressure.quantities import STOP_IDLE_PRESSURE, STOP_RUNNING_PRESSURE

WITHDRAWN = "withdrawn"  #: the state of an entry that takes another back
REPORTS = ("behaviour", "trial", "earlier")  #: tables of what was reported
_READING_FIELDS = ("rpm", "oil", "pressure", "gauge")
STOP_LIMITS = (STOP_IDLE_PRESSURE, STOP_RUNNING_PRESSURE)
_SAID = ("rpm", "oil", "pressure", "coolant", "during", "usual")


@dataclass(frozen=True, kw_only=True)
class RecordDocument:
    """The entries that were saved, and the alarms that are new with them."""

    path: str
    entries: dict[int, str]  #: by number
    meanings: Mapping[int, str]  #: of what was given in words, by the number of the entry
    verdicts: Mapping[int, str]  #: on values and readings, by the number of the entry
    units_taken: tuple[int, ...]  #: entries whose value was typed without its unit
    stood: int  #: lines of a sheet that stood in the case already
    refused: int  #: lines of a sheet that are wrong, and not saved
    unclear: int  #: phrases that nothing could be recorded of
    not_read: tuple[str, ...]  #: of words, what nothing was made of; it stays in the note
    alarms: tuple[AlarmNotice, ...]
    repaired: tuple[int, ...]  #: readings kept as those of the repaired engine
    before_it: tuple[int, ...]  #: entries of work taken as before the trouble, by its age unknown
    of_repair: tuple[int, ...]  #: entries of work taken as part of this repair
    in_place_of_found: Mapping[
        int, str
    ]  #: values within limits, for ones beyond; as one types these
    unfitting: Mapping[int, str]  #: earlier findings that do not fit the new ones, by number
    beside_found: tuple[int, ...]  #: values of the repaired engine of what was found otherwise
    engine: str  #: what takes the place of the engine the case had; empty where it stays
    last_number: int  #: of the entries in the case
    plan_since: int | None  #: the entry after which the plan may have changed


@dataclass(frozen=True, kw_only=True)
class CloseDocument:
    """The end of a job."""

    path: str
    causes: tuple[str, ...]
    reason: str  #: why it was closed with something open; may be empty
    before: str  #: the end it had before, where it was closed already; else empty


def record_document(saved: Appended, book: Book, path: Path) -> RecordDocument:
    """Build the document of the entries one command saved."""
    before, was = saved.before.last_number, saved.engine_was
    findings = any(entry.kind in ("finding", *REPORTS) for entry in saved.entries)
    sentences = reported_sentences(saved.after)
    return RecordDocument(
        path=str(path),
        entries={
            number: f"{_kind(entry)}: {sentences[number]}"
            if number in sentences
            else entry_text(entry.kind, entry.fields)
            for number, entry in enumerate(saved.entries, saved.first_number)
        },
        meanings={
            number: _meaning(entry, book)
            for number, entry in enumerate(saved.entries, saved.first_number)
            if entry.said or entry.fields.get("state") == WITHDRAWN
        },
        verdicts=verdicts(saved, book),
        units_taken=tuple(
            number for number, entry in enumerate(saved.entries, saved.first_number) if entry.bare
        ),
        stood=saved.stood,
        refused=len(saved.refused),
        unclear=len(saved.unclear),
        not_read=saved.not_read,
        alarms=_new_alarms(saved, book),
        repaired=tuple(
            number
            for number, entry in enumerate(saved.entries, saved.first_number)
            if entry.fields.get("at") == START
        ),
        before_it=_work_before(saved, book),
        of_repair=tuple(
            number
            for number, entry in enumerate(saved.entries, saved.first_number)
            if entry.fields.get("at") == REPAIR
        ),
        in_place_of_found=_in_place_of_found(saved, book),
        unfitting=_unfitting(saved, book) if findings else {},
        beside_found=tuple(
            work.entry.no
            for work in saved.after.task_records
            if work.entry.no >= saved.first_number
            and work.value is not None
            and any(m.measure.quantity is work.task.measures for m in saved.after.measurements)
        ),
        engine="" if was is None else engine_sentence(EngineChange(was, saved.after.layout)),
        last_number=saved.after.last_number,
        plan_since=before if before and findings else None,
    )


def _work_before(saved: Appended, book: Book) -> tuple[int, ...]:
    """Entries of work of no stated age in a job with readings: it may as well be the repair."""
    numbered = [
        (number, entry)
        for number, entry in enumerate(saved.entries, saved.first_number)
        if entry.fields.get("state") != WITHDRAWN
    ]
    work = [n for n, e in numbered if _kind(e) == "earlier" and _may_be_new(e.fields.get("before"))]
    if not work or not saved.before.readings:
        return ()
    phrases = {e.said for n, e in numbered if n in work}
    said = [
        n
        for n, e in numbered
        if e.kind == "finding"
        and e.said
        and any(e.said in p or p in e.said for p in phrases)
        and (finding := book.findings.get(str(e.fields.get("what")))) is not None
        and finding.stage is Stage.KNOWN
    ]
    return tuple(sorted({*work, *said}))


def _new_alarms(saved: Appended, book: Book) -> tuple[AlarmNotice, ...]:
    """The alarms that are new; of the repaired engine alone those of its own readings."""
    if all(e.kind == "work" or e.fields.get("at") in (START, REPAIR) for e in saved.entries):
        return tuple(_too_low_after(saved))
    shown = {a.says for a in Diagnosis(book, saved.before).alarms}
    return tuple(a for a in few_alarm_notices(Diagnosis(book, saved.after)) if a.says not in shown)


def _too_low_after(saved: Appended) -> Iterator[AlarmNotice]:
    """A stop for each new reading of the repaired engine below its stop limit."""
    case, scale = saved.after, scale_of(saved.after)
    for read in case.start_readings:
        for limit in limits_at(read.reading, case):
            least = case.limit(limit)
            if read.entry.no < saved.first_number or limit not in STOP_LIMITS:
                continue
            if read.reading.pressure < least:
                yield AlarmNotice(
                    severity=Severity.STOP,
                    says=f"{scale.one(read.reading.pressure)} after the repair, limit "
                    f"{scale.one(least)}: shut down, do not run it until you find the cause",
                )


def _unfitting(saved: Appended, book: Book) -> Mapping[int, str]:
    """Earlier findings of which a new entry says the opposite, directly or by a rule."""
    before = {c.says for c in stated_contradictions(Diagnosis(book, saved.before))}
    after = Diagnosis(book, saved.after)
    return {
        number: text
        for contradiction in stated_contradictions(after)
        if contradiction.says not in before
        for number, text in rests_on(after, contradiction).items()
        if number < saved.first_number and "=" in text
    }


def _in_place_of_found(saved: Appended, book: Book) -> Mapping[int, str]:
    """New values that break no limit, in place of ones that broke one: perhaps after the repair."""
    before = {m.entry.no: m for m in saved.before.measurements}
    found = {}
    for new in saved.after.measurements:
        old = before.get(new.entry.replaces or 0)
        if new.entry.no < saved.first_number or old is None:
            continue
        if _breaks(old, saved.after, book) and not _breaks(new, saved.after, book):
            where = f" --where '{old.entry.where}'" if old.entry.where else ""
            found[new.entry.no] = f"{old.measure.id}='{old.entry.value}'{where}"
    return found


def _breaks(measured: Measurement, case: Case, book: Book) -> bool:
    every = measured_bounds(measured.measure, measured.value, case, book)
    return any(bounds[0].broken for bounds in every)


def _kind(entry: NewEntry) -> str:
    """The kind of an entry: work of this repair is none of before the trouble."""
    return "done" if entry.fields.get("at") == REPAIR else entry.kind


def _may_be_new(before: object) -> bool:
    """Whether the age of work that was said fits a repair of today."""
    return before is None or before in AT_ONCE


def _meaning(entry: NewEntry, book: Book) -> str:
    """What a finding or task given in words is, in the book's words; empty of anything else."""
    task = book.tasks.get(str(entry.fields.get("what")))
    if entry.kind == "work" and task is not None and entry.fields.get("state"):
        return f"sign-off, {task.says}: {entry.fields['state']}"
    finding = book.findings.get(str(entry.fields.get("what")))
    if entry.kind != "finding" or finding is None:
        return ""
    if entry.fields.get("state") == WITHDRAWN:
        return f"no longer counts: {finding.says}"
    absent = entry.fields.get("state") == "absent"
    return (finding.denies or f"not: {finding.says}") if absent else finding.says


def entry_text(kind: str, fields: Fields) -> str:
    """Return one entry in words, without its number.

    >>> entry_text("finding", {"what": "fuel_smell", "state": "present", "sure": 0.8})
    'fuel_smell: present, 80 % sure'
    """
    what = fields.get("what") or kind
    if fields.get("state") == WITHDRAWN:
        return f"{what}: entry {fields['replaces']} withdrawn"
    if kind in ("reading", "baseline"):
        value = _reading(fields)
        value += ", first start" if fields.get("at") == "start" else ""
    elif fields.get("count"):
        value = f"{fields['count']} in this engine"
    else:
        value = str(fields.get("value") or fields.get("result") or fields.get("state"))
    sure = fields.get("sure")
    sureness = f", {percent(float(str(sure)))} sure" if sure is not None else ""
    replaced = f", replaces {fields['replaces']}" if fields.get("replaces") else ""
    place = f", {fields['where']}" if fields.get("where") else ""
    return f"{what}{place}: {value}{sureness}{replaced}"


def _reading(fields: Fields) -> str:
    """Return a reading as it was given: figures, or the person's words."""
    entry = ReadingEntry.model_validate(
        {"no": 1, **{k: v for k, v in fields.items() if k in _SAID and v is not None}}
    )
    if not in_words(entry):
        return ", ".join(str(fields[k]) for k in _READING_FIELDS if fields.get(k) is not None)
    return ", ".join(filter(None, (said(entry), str(fields.get("gauge") or ""))))


def close_document(case: Case, path: Path, before: Closing | None = None) -> CloseDocument:
    """Build the document of a closed case; ``before``: the end it had already.

    Raises ValueError for an open one.
    """
    closed = case.closed
    if closed is None:
        raise ValueError("the case is not closed")
    causes = tuple(c.says for c in closed.causes)
    return CloseDocument(
        path=str(path),
        causes=causes,
        reason=closed.entry.reason,
        before="" if before is None else _end_before(before),
    )


def _end_before(closing: Closing) -> str:
    """The end that no longer counts, with its number and its reason."""
    causes = " and ".join(c.says for c in closing.causes)
    reason = f", reason: {closing.entry.reason}" if closing.entry.reason else ""
    return f"entry {closing.entry.no}, {causes}{reason}"
