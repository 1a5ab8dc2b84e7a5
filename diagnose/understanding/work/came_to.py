"""What pressure stands straight behind work: "new sender, needle sits at 40", "fitted rotors, 9 psi now"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.case.pressures import pressure_of
from diagnose.understanding.pressures.changes import pressures_at, result_between
from diagnose.understanding.pressures.pressures import value_at
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import Job
from knowledge.lexicon.work.beside_results import (
    CAME_BEFORE,
    CAME_BETWEEN,
    CAME_IF,
    CAME_NOT,
    ELSEWHERE_READ,
    ENOUGH,
    PLENTY,
    WAS,
)
from knowledge.lexicon.work.beside_work import BY_DRILL
from knowledge.reports.words import Result, Shows
from knowledge.units import PSI

PRIMING = frozenset(["pump_primed", "oil_poured_in"])
#: trials of what only shows the pressure: a little more then is no gain
OF_INSTRUMENTS = frozenset(
    ["new_sender", "wiring_repaired", "connector_refitted", "ground_wire_added"]
)
_FAR_BELOW = 1.5  #: times less than the usual pressure is no help (judgement)
_CRANKED = 8  #: words from priming to the pressure it brought
_FAR = 9  #: words from other work to the pressure that came of it
#: words that only say what the pressure is
_MERELY_IS = frozenset(
    [
        "now",
        "is",
        "it",
        "its",
        "oil",
        "pressure",
        "gauge",
        "needle",
        "reads",
        "shows",
        "sits",
        "has",
        "have",
        "got",
        "at",
        "about",
    ]
)
_NEAR = 3  #: words behind a figure that may say that it was read cold or with a drill


def made_pressure(line: Line, job: Job) -> Mark[Result] | None:
    """The pressure that came straight after priming: "packed the pump, cranked it, 50 psi"."""
    if job.trial not in PRIMING or job.line is not line:
        return None
    for k in range(job.last, min(job.last + _CRANKED, len(line.tokens))):
        if "pressure" in line.tokens[k].kinds and max(pressures_at(line, k), default=0.0) > ENOUGH:
            drill = line.words(0, k + 4) & BY_DRILL
            return None if drill - {"priming"} else Mark(Result.CURED, k, k + 1)
    return None


def pressure_after(
    paragraph: Paragraph, line: Line, job: Job, own: Sequence[Job], unit: str
) -> Mark[Result] | None:
    """What the pressure straight behind work says came of it, beside the lowest read before."""
    if job.line is not line or job.begins_it or job.area == "whole_engine" or is_old(job):
        return None
    clause = line.clause(job.first)
    if any(line.word(k) in CAME_IF for k in range(clause.first, job.first)):
        return None  # "if the new pump gives 40 I'll be happy"
    at = _figure_behind(line, job, own, unit, _at_zero(paragraph, line))
    if at is None:
        return None
    now = min(_values(line, range(at, line.clause(at).last), unit, paragraph), default=None)
    now = pressure_of(str(value_at(line, at, unit, True))).value / PSI if now is None else now
    before = [v for each in paragraph.lines[: line.number] for v in _read(each, unit, paragraph)]
    value: Result | None
    if _at_zero(paragraph, line):
        value = Result.CURED if now >= ENOUGH else Result.HELPED if now else Result.NO_DIFFERENCE
    elif not before:
        cold = "cold" in {line.word(k) for k in range(at - 2, at + 3)}
        value = Result.CURED if now >= PLENTY and not cold else None
    else:
        value = result_between(min(before), now)
    instrument = job.trial in OF_INSTRUMENTS and value is Result.HELPED
    if value is None or value is Result.WORSE:
        return None
    return Mark(Result.NO_DIFFERENCE if instrument else value, at, at + 1)


def short_of_usual(line: Line, mark: Mark[Result]) -> bool:
    """Whether what came of work is a figure far below the usual one: "now 0.6 bar, used to be 2"."""
    figures = [k for k, t in enumerate(line.tokens) if "pressure" in t.kinds]
    usual = [v for k in figures if line.usual(Mark("", k, k + 1)) for v in pressures_at(line, k)]
    now = [
        v
        for k in figures
        if k >= mark.first and not line.usual(Mark("", k, k + 1))
        for v in pressures_at(line, k)
    ]
    return bool(usual and now) and min(now) < min(usual) / _FAR_BELOW


def little_and_no_more(paragraph: Paragraph, line: Line, mark: Mark[Result]) -> bool:
    """Whether what came of work is a low figure alone, and none lower stands before it.

    "Changed the oil, now 5 psi" is a complaint, no help.
    """
    here = range(mark.first, mark.last)
    now = [v for k in here for v in pressures_at(line, k)]
    if line.word(mark.last) == "instead":
        return False  # "12 instead of 7"
    words = {line.word(k) for k in here if not line.tokens[k].is_figure}
    if not now or min(now) > ENOUGH or words - _MERELY_IS:
        return False
    before = [
        v
        for each in paragraph.lines[: line.number + 1]
        for k in range(len(each.tokens) if each is not line else mark.first)
        for v in pressures_at(each, k)
    ]
    return not any(v < min(now) for v in before)


def was_and_now(line: Line, job: Job) -> Mark[Result] | None:
    """What two pressures say on both sides of work: "had 20, changed the sender, now I have 5"."""
    if job.line is not line or job.begins_it or is_old(job):
        return None
    places = [k for k in range(len(line.tokens)) if pressures_at(line, k)]
    before = [k for k in places if k < job.first]
    behind = [k for k in places if job.last <= k < job.last + _FAR]
    if not (before and behind) or any(line.stances.of[k] & UNTRUE for k in (before[-1], behind[0])):
        return None
    was = line.words(before[-1] - _NEAR, before[-1])
    now = line.words(job.last, behind[0])
    if not (was & (WAS | {"reading"}) and "now" in now and not now & CAME_NOT):
        return None
    said = {line.word(k) for at in (before[-1], behind[0]) for k in range(at - _NEAR, at + _NEAR)}
    if said & ELSEWHERE_READ:
        return None
    value = result_between(pressures_at(line, before[-1])[-1], pressures_at(line, behind[0])[0])
    return Mark(value, behind[0], behind[0] + 1)


def is_old(job: Job) -> bool:
    """Whether the work was done some time before: what is read now did not come of it at once."""
    before, _ = job.before()
    return bool(before) and before != "straight before"


def _at_zero(paragraph: Paragraph, line: Line) -> bool:
    """Whether the gauge showed nothing before."""
    return any(
        m.value is Shows.NONE and not each.denied(m) and not each.usual(m)
        for each in paragraph.lines[: line.number]
        for m in each.stated(each.lexicon.shows)
    )


def _figure_behind(
    line: Line, job: Job, own: Sequence[Job], unit: str, at_zero: bool
) -> int | None:
    """The place of a pressure behind work, where only "and it reads" and the like stand between."""
    first_clause = True  #: where and by whom it was done may stand up to the first comma
    for k in range(job.last, min(job.last + _FAR, len(line.tokens))):
        token = line.tokens[k]
        if any(o.first <= k < o.last for o in own if o is not job):
            continue
        if token.is_figure:
            if value_at(line, k, unit, True) is None or line.stances.of[k] & (
                UNTRUE | Stance.USUAL
            ):
                return None
            return None if _of_another_run(line, job.last, k, at_zero) else k
        if token.is_mark:
            first_clause = False
        elif token.word in CAME_NOT or not (first_clause or token.word in CAME_BETWEEN):
            return None
    return None


def _of_another_run(line: Line, first: int, at: int, at_zero: bool) -> bool:
    """Whether a pressure was read cold, at speed, or made by a drill; after zero, only by a drill."""
    near = line.words(first, min(at + 1 + _NEAR, line.clause(at).last))
    elsewhere = frozenset() if at_zero else ELSEWHERE_READ
    return bool(near & (elsewhere | BY_DRILL | {"drill"})) or line.word(at - 1) in CAME_BEFORE


def _read(line: Line, unit: str, paragraph: Paragraph) -> Iterator[float]:
    """The pressures of a sentence that were read when the trouble was there, not cold, psi."""
    return _values(line, range(len(line.tokens)), unit, paragraph)


def _values(line: Line, places: range, unit: str, paragraph: Paragraph) -> Iterator[float]:
    for k in places:
        said = value_at(line, k, unit, paragraph.speaks_of_pressure)
        if said is None or not line.tokens[k].is_figure or said[:1] not in "0123456789.":
            continue
        if line.stances.of[k] & (UNTRUE | Stance.USUAL | Stance.DENIED):
            continue
        beside = line.words(max(0, k - 2), k + 1 + _NEAR)
        if not beside & ELSEWHERE_READ:
            yield pressure_of(said).value / PSI
