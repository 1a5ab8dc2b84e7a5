"""Good pressure until work was done, so that the trouble began with it: "fine before the rebuild"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE
from diagnose.understanding.words.facts import Fact
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import Job, jobs
from knowledge.lexicon.words.joints import ALSO, BEFORE
from knowledge.reports.words import LOSSES, Result, Shows

_NEAR = 4  #: words between "before" and the work
_BEHIND = 8  #: words behind the work in which "it was fine" stands
_WRONG = frozenset(s.value for s in (*LOSSES, Shows.UNSTEADY, Shows.SLOW, Shows.HIGH, Shows.TRIPS))


def well_until(job: Job) -> Mark[bool] | None:
    """The words that say all was well until this work; None where nothing says so.

    "fine before I rebuilt it", "before the rebuild it was fine", "rebuilt it; before that, fine".
    """
    line = job.line
    for mark in line.find(line.lexicon.well_until):
        near = range(mark.last, job.first)
        if -1 <= job.first - mark.last <= _NEAR and _is_plain(line, mark, near):
            return mark
    for mark in line.find(line.lexicon.well_before_that):
        if mark.first >= job.last and _is_plain(line, mark, range(0)):
            return mark
    joint = next((k for k in range(job.first - _NEAR, job.first) if line.word(k) in BEFORE), None)
    if joint is None or line.word(joint - 1) in ("day", "week", "the"):
        return None
    for mark in line.find(line.lexicon.was_well):
        if 0 <= mark.first - job.last <= _BEHIND and _is_plain(line, mark, range(0)):
            return Mark(True, mark.first, mark.last)
    return None


def as_low_before(job: Job) -> Mark[Result] | None:
    """The words that say it was as low before this work: "just as low before the new pump"."""
    line = job.line
    for mark in line.find(line.lexicon.as_low_before):
        near = range(mark.last, job.first)
        if -1 <= job.first - mark.last <= _NEAR and _is_plain(line, mark, near):
            return Mark(Result.NO_DIFFERENCE, mark.first, mark.last)
    for mark in line.find(line.lexicon.low_before):
        near = range(mark.last, job.first)
        clause = line.clause(job.last - 1)
        also = any(line.word(k) in ALSO for k in range(job.last, clause.last + 3))
        if also and -1 <= job.first - mark.last <= _NEAR and _is_plain(line, mark, near):
            return Mark(Result.NO_DIFFERENCE, mark.first, mark.last)
    return None


def came_after(job: Job) -> bool:
    """Whether it was done after what is said, or all was well until then."""
    ahead = job.line.word(job.first - 1), job.line.word(job.first - 2)
    if as_low_before(job) is not None:
        return False
    return "before" in ahead or well_until(job) is not None


def _is_plain(line: Line, mark: Mark[bool], near: range) -> bool:
    """Whether it is said of this engine, and of before the work only: no "before and after"."""
    ahead = line.word(mark.first - 1), line.word(mark.first - 2)
    if line.stances.at(mark) & UNTRUE or {
        "not",
        "no",
        "never",
        "as",
        "isnt",
        "wasnt",
        "without",
    } & set(ahead):
        return False
    split = [k for k in near if line.tokens[k].is_mark and k != mark.last]  # none was typed there
    return not split and not any(line.word(k) in ("after", "and") for k in near)


def began_with_work(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, what shows since the work where all was well until then."""
    found = list(facts)
    lines = paragraph.lines
    for line, ahead in zip(lines, (None, *lines), strict=False):
        for job in jobs(line, ahead):
            mark = well_until(job)
            if mark is None or not job.area:
                continue
            spans = line.span([mark, *job.marks])
            found = [_since(f, job, spans) if _is_open(f) else f for f in found]
    return found


def _is_open(fact: Fact) -> bool:
    """Whether it is a trouble of which nothing says since when."""
    return fact.fields.get("shows") in _WRONG and "since" not in fact.fields


def _since(fact: Fact, job: Job, spans: tuple[tuple[int, int], ...]) -> Fact:
    fields = {**fact.fields, "since": job.since.value}
    return replace(fact, fields=fields, spans=(*fact.spans, *spans))
