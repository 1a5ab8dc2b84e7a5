"""The first page of ``report``: what an engine's owner wants to know, in words without codes."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from diagnose.case.case import Case, Closing
from diagnose.case.mended import mended, works_again
from diagnose.circuit.operating_points import ITS_SPEED, is_certain
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.after_hours import later_looks
from diagnose.output.documents.job_end import ended_of, not_finished
from diagnose.output.documents.owners_stop import when_to_stop
from diagnose.output.documents.photos import PhotoEntry, for_the_owner
from diagnose.output.documents.ranking import RankedCause
from diagnose.output.documents.reported import earlier_sentence
from diagnose.output.lines import percent
from diagnose.output.scale import Scale, scale_of
from diagnose.reasoning.instrument_only import instrument_only, sound_readings
from diagnose.signoff.judging import Verdict
from diagnose.signoff.lamp import has_a_lamp_only, was_never_read
from diagnose.signoff.nothing_wrong import nothing_wrong, of_no_fault
from diagnose.signoff.sheet import Signoff
from diagnose.understanding.repaired import repaired
from knowledge.book import Book
from knowledge.model import Cause, Gauge, Reading
from knowledge.pressure.gauge import PANEL_SPREAD, runs
from knowledge.pressure.patterns import GAUGE_READS_ZERO
from knowledge.pressure.quantities import (
    HOT_IDLE_PRESSURE,
)
from knowledge.reassembly.first_start import PRESSURE_HOT_AT_2000
from knowledge.reassembly.later import LEAST_OF_FIRST_START

NOT_YET = "not measured yet"
UNSAID = 0.3  #: of the speed: a reading known less well was taken at no speed that was said
SEEN, IDLE_RANGE, AT_SPEED, HOT = 5, 1.4, 2.0, 333.15  #: lines; times idle speed; K


@dataclass(frozen=True, kw_only=True)
class BeforeAfter:
    """A pressure before the work and after it, in the units of the job; may be empty."""

    when: str
    before: str
    after: str
    least: str


@dataclass(frozen=True, kw_only=True)
class Watch:
    """What to look at after so many hours."""

    hours: str
    looks: tuple[str, ...]
    least: str  #: hot idle pressure to look for; empty where nothing says


@dataclass(frozen=True, kw_only=True)
class OwnersPage:
    """Everything on the owner's page; each part may be empty."""

    standing: str
    wrong: tuple[str, ...]
    seen: tuple[str, ...]
    done: tuple[str, ...]
    pressures: tuple[BeforeAfter, ...]
    watch: tuple[Watch, ...]
    photos: tuple[PhotoEntry, ...]  #: the few that show most of what was wrong
    stop: str


def owners_page(
    diagnosis: Diagnosis,
    sheet: Signoff,
    causes: Sequence[RankedCause],
    photos: Sequence[PhotoEntry] = (),
) -> OwnersPage:
    """Build the page of a job; ``photos``: all there are."""
    scale = scale_of(diagnosis.case)
    return OwnersPage(
        standing=_standing(sheet, scale),
        wrong=tuple(_wrong(diagnosis)),
        seen=_seen(diagnosis, causes),
        done=tuple(_done(sheet)),
        pressures=tuple(_pressures(diagnosis, scale)),
        watch=_watch(sheet, scale),
        photos=for_the_owner(photos, telling_steps(diagnosis)),
        stop=when_to_stop(diagnosis),
    )


def _sound(diagnosis: Diagnosis, only: Sequence[Cause], scale: Scale) -> str:
    """That the engine is sound and only its instrument was wrong, without a full stop."""
    figures = tuple(dict.fromkeys(scale.one(r.pressure) for r in sound_readings(diagnosis.case)))
    wrong = " and ".join(c.says for c in only)
    return (
        f"The oil pressure is sound, {' and '.join(figures)} on a test gauge: only the warning was "
        f"wrong ({wrong})"
    )


def _standing(sheet: Signoff, scale: Scale) -> str:
    diagnosis, case = sheet.answer, sheet.answer.case
    if case.closed is None and works_again(case):
        return ended_of(diagnosis)
    if nothing_wrong(diagnosis):
        return "No fault found so far; the job is still open."
    if case.closed is None and (only := instrument_only(diagnosis.inference)) and diagnosis.may_run:
        return f"{_sound(diagnosis, only, scale)}."
    if case.closed is None:
        forbidden = not diagnosis.may_run
        return "Not repaired yet: do not run the engine." if forbidden else "Not repaired yet."
    shows, when = mended(case), case.closed.entry.when
    day = f"closed on {when:%Y-%m-%d}" if when else "closed"
    if shows.broken:
        return f"Not in order: {'; '.join(limit.says for limit in shows.broken)}; {day}."
    if of_no_fault(case.closed.causes):
        return f"No fault found; {day}."
    if (only := instrument_only(diagnosis.inference)) and shows.hot_idle is None:
        return f"{_sound(diagnosis, only, scale)}; {day}."
    if left := not_finished(sheet):
        return f"Not finished; {day}. {left}"
    if shows.hot_idle is None and was_never_read(case):
        return f"Repaired; {day}. The lamp is its only instrument: no pressure was read."
    if shows.hot_idle is None:
        return _without_idle(case, scale, day)
    return f"Repaired, {scale.one(shows.hot_idle)} at hot idle; {day}."


def _without_idle(case: Case, scale: Scale, day: str) -> str:
    """That it is repaired, by what was read at another speed than idle where there is such."""
    at_speed = [r.reading for r in case.start_readings if is_certain(r.reading) and runs(r.reading)]
    if not at_speed:
        return f"Repaired; {day}. Hot idle was not read afterward."
    last = at_speed[-1]
    read = f"{scale.one(last.pressure)} at {last.rpm:.0f} rpm"
    return f"Repaired, {read}; {day}. Hot idle was not read afterward."


def _wrong(diagnosis: Diagnosis) -> Iterator[str]:
    """The faults found, each once, then where it began."""
    closed = diagnosis.case.closed
    for found in diagnosis.found_faults:
        yield _sentence(found.fault.says)
    if closed is not None:
        says = " and ".join(c.says for c in closed.causes)
        yield _sentence(says) if of_no_fault(closed.causes) else f"It began with: {says}"
    elif nothing_wrong(diagnosis):
        yield "Nothing, as far as it was read: every reading is within its limits"
    elif diagnosis.inference.evidence:
        first = diagnosis.ranking[0]
        yield f"Most likely it began with: {first.cause.says} ({percent(first.probability)})"


def _seen(diagnosis: Diagnosis, causes: Sequence[RankedCause]) -> tuple[str, ...]:
    """What shows the faults and where it began, the proofs first."""
    closed = diagnosis.case.closed
    began = {c.id for c in closed.causes} if closed else {causes[0].id}
    proofs = [f.says for found in diagnosis.found_faults for f in found.proofs]
    needle = GAUGE_READS_ZERO.id if has_a_lamp_only(diagnosis.case) else ""
    reasons = [r.says for c in causes if c.id in began for r in c.pro if r.finding != needle]
    return tuple(dict.fromkeys(_sentence(says) for says in (*proofs, *reasons)))[:SEEN]


def telling_steps(diagnosis: Diagnosis) -> frozenset[str]:
    """The checks that show a fault that was found, by their ids."""
    proofs = {f for found in diagnosis.found_faults for f in found.proofs}
    checks = diagnosis.book.inspections.values()
    return frozenset(check.id for check in checks if not proofs.isdisjoint(check.reveals))


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


def _done(sheet: Signoff) -> Iterator[str]:
    """The repair, and how far it was checked as it went together."""
    closed = sheet.answer.case.closed
    if closed is not None:
        yield from map(_sentence, _remedies(closed, sheet.answer.case, sheet.answer.book))
    elif not (works_again(sheet.answer.case) or nothing_wrong(sheet.answer)):
        yield from (f"Done: {earlier_sentence(e.work)}" for e in sheet.answer.case.repairs)
        yield from (f"To do: {c.remedy}" for c in sheet.causes)
    count = Counter(i.judged.verdict for i in sheet.items)
    passed = count[Verdict.PASSED]
    besides = ((Verdict.BORDERLINE, "close to the limit"), (Verdict.FAILED, "failed"))
    others = "".join(f", {count[v]} {says}" for v, says in besides if count[v])
    if passed or others:
        yield f"Checked as it went together: {passed} fits, gaps and torques passed{others}"


def _remedies(closed: Closing, case: Case, book: Book) -> list[str]:
    """What was done, as the person said at the end, else beside the readings after the repair.

    Where nobody said anything, that is said, with the book's remedies as what was called for.
    """
    of_the_book = [c.remedy for c in closed.causes]
    called_for = [f"Not written down; called for: {'; '.join(of_the_book)}"] if of_the_book else []
    if closed.entry.remedy not in ("", "; ".join(of_the_book)):
        return [closed.entry.remedy]
    said = [earlier_sentence(e.work) for e in case.repairs]
    for read in case.start_readings:
        note = read.entry.note.strip()
        new = not any(note in before for before in said)
        said += [note] if note and new and repaired(note, book) else []
    return said or called_for


def _pressures(diagnosis: Diagnosis, scale: Scale) -> Iterator[BeforeAfter]:
    """Hot idle, then hot at speed, before and after."""
    case = diagnosis.case
    unread = "the same: no work on the engine" if instrument_only(diagnosis.inference) else NOT_YET
    after = [r.reading for r in case.start_readings]
    idling = 0.0, IDLE_RANGE * case.idle_speed
    running = AT_SPEED * case.idle_speed, float("inf")
    idle = mended(case).hot_idle or _last(after, idling)
    fast = _last_at_speed(case, running)
    least = scale.one(case.limit(HOT_IDLE_PRESSURE))
    rows = [
        *_compared("hot idle", case, idling, idle, scale, unread, least),
        *_compared("hot, at speed", case, running, fast, scale, unread),
    ]
    between = idling[1], running[0]
    yield from rows or _compared(
        f"hot, at {ITS_SPEED}", case, between, _last(after, between), scale, unread
    )


def _last_at_speed(case: Case, speeds: tuple[float, float]) -> float | None:
    """The last hot pressure at speed of the repaired engine [Pa]: signed off, or read later."""
    signed = [w for w in case.task_records if w.task is PRESSURE_HOT_AT_2000 and w.value]
    since = signed[-1].entry.no if signed else 0
    later = [r.reading for r in case.start_readings if r.entry.no > since]
    read = _last(later, speeds)
    return signed[-1].value if signed and read is None else read


def _compared(
    when: str,
    case: Case,
    speeds: tuple[float, float],
    after: float | None,
    scale: Scale,
    unread: str,
    least: str = "",
) -> Iterator[BeforeAfter]:
    """The pressure between two speeds [rpm] before, and ``after`` [Pa]; nothing without either."""
    readings = [r.reading for r in case.readings]
    before = _last(readings, speeds)
    if before is not None or after is not None:
        yield BeforeAfter(
            when=when,
            before=_before(before, readings, speeds, scale),
            after=unread if after is None else scale.one(after),
            least=least,
        )


def _before(
    shown: float | None, before: Sequence[Reading], speeds: tuple[float, float], scale: Scale
) -> str:
    """The pressure before the work; beside a test gauge's what the owner complained of.

    That is the lowest hot pressure on the gauge of the engine, at such a speed or at one not said.
    """
    if shown is None:
        return "not measured"
    panel = [r for r in before if r.gauge is Gauge.PANEL and _is_warm(r)]
    own = [
        r.pressure
        for r in panel
        if speeds[0] <= r.rpm <= speeds[1] or r.rpm_spread > UNSAID * r.rpm
    ]
    tested = any(r.gauge is Gauge.DIRECT and r.pressure == shown for r in before)
    if not tested or not own or abs(min(own) - shown) <= PANEL_SPREAD:
        return scale.one(shown)
    return f"{scale.one(min(own))} on the engine's gauge, {scale.one(shown)} on a test gauge"


def _is_warm(reading: Reading) -> bool:
    return reading.oil_temperature is None or reading.oil_temperature >= HOT


def _last(readings: Sequence[Reading], speeds: tuple[float, float]) -> float | None:
    """The last hot pressure between two speeds [Pa], a direct gauge first; None: there is none."""
    hot = [r for r in readings if speeds[0] <= r.rpm <= speeds[1] and _is_warm(r)]
    direct = [r for r in hot if r.gauge is Gauge.DIRECT]
    return (direct or hot)[-1].pressure if hot else None


def _watch(sheet: Signoff, scale: Scale) -> tuple[Watch, ...]:
    case = sheet.answer.case
    if case.closed is None and not case.start_readings:
        return ()
    first, limit = mended(case).hot_idle, case.limit(HOT_IDLE_PRESSURE)
    least = scale.one(max(limit, LEAST_OF_FIRST_START * first) if first else limit)
    return tuple(
        Watch(
            hours=f"{look.hours:.0f} h",
            looks=tuple(i.says for i in look.items if not i.measured),
            least=f"hot idle not below {least}" if any(i.measured for i in look.items) else "",
        )
        for look in later_looks(sheet)
    )
