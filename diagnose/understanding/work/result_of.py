"""Which of the results that a sentence states belongs to a piece of work."""

from __future__ import annotations

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import Job
from knowledge.lexicon.words.joints import UNTIL_DONE
from knowledge.lexicon.work.beside_results import (
    BETTER,
    FELL_SINCE,
    FROM_A_LIST,
    IS_NAMED,
    JOINS_AHEAD,
    LATER,
    SAYS_STILL,
    SETS_OFF,
)
from knowledge.reports.words import Result

#: of several results of one trial these count, else the first
_FIRST = {Result.FOR_A_WHILE: 0, Result.WORSE: 1}
#: may end the words for work and begin those for what came of it: "a tray made no difference"
_BEGIN_BOTH = frozenset(["did", "made", "gave", "helped", "changed", "went", "got", "and", ","])
_BEGIN_BOTH |= {"to", "with", "on", "in", "then", "back", "right", "up", "down"}
_AHEAD = 6  #: words between a result and the trial behind it


def result_of(
    job: Job, results: list[Mark[Result]], line: Line, own: list[Job]
) -> Mark[Result] | None:
    """The result that belongs to a trial: behind it, else just before it."""
    if job.trial == "topped_up":
        results = [r for r in results if not _is_empty_again(line, r)]
    if job.begins_it and job.area == "whole_engine":
        return None  # what follows a rebuild is the trouble, not the result of a trial
    if job.begins_it and job.line is line:
        after = [r for r in results if 0 <= r.first - job.last <= _AHEAD and r.value in BETTER]
        return _counting([*(r for r in results if _ends_at(line, r, job)), *after])
    if job.begins_it:
        return None
    if job.line is not line:
        first = line.sentence.clauses[0]
        early = [r for r in results if r.first < first.last + 4]
        early = [r for r in early if not any(j.first < r.first for j in own)]
        return _after_a_while(line, _counting(early))
    behind = [r for r in results if _is_behind(job, r)]
    named = next((r for r in reversed(results) if _is_from(line, r, job, own)), None)
    if named is not None and not any(_follows(line, r, job) for r in behind):
        return named  # "no joy from a new sender or pump, cleaning the relief did it"
    if behind and not any(r.last == job.first for r in results):
        start = behind[0].first
        later = [j for j in own if j.first >= job.last and j.last <= start]
        gap = [line.word(k) for k in range(job.last, start)]
        if later or len(gap) <= 12:
            clause = line.clause(start)
            return _counting([r for r in behind if r.first < clause.last])
    ahead = [r for r in results if r.last <= job.first and job.first - r.last <= _AHEAD]
    ahead = [
        r
        for r in ahead
        if JOINS_AHEAD & line.words(r.last - 1, job.first + 1)
        or line.word(r.last - 1) in IS_NAMED
        or (line.word(r.last) in SETS_OFF and r.first == 0)
    ]
    return _counting(ahead)


def _is_behind(job: Job, result: Mark[Result]) -> bool:
    """Whether a result follows work, or begins with its last word: "a windage tray made no odds"."""
    joined = job.line.word(job.last - 1) in _BEGIN_BOTH and result.last >= job.last
    return result.first >= job.last or (result.first == job.last - 1 > job.first and joined)


def _is_empty_again(line: Line, result: Mark[Result]) -> bool:
    """Whether it is "dry again", which cures a leak, said of the oil that was filled in."""
    words = line.words(result.first, result.last)
    return result.value is Result.CURED and "dry" in words


def _is_from(line: Line, result: Mark[Result], job: Job, own: list[Job]) -> bool:
    """Whether "from" leads from a result to a trial, or to a list that it stands in."""
    between = range(result.last, job.first)
    if result.last > job.first or line.word(result.last) != "from":
        return False
    rest = [k for k in between if not any(o.first <= k < o.last for o in own)]
    return all(line.word(k) in FROM_A_LIST for k in rest)


def _follows(line: Line, result: Mark[Result], job: Job) -> bool:
    """Whether a result stands in the clause of a trial, behind it."""
    return line.clause(result.first) == line.clause(job.last - 1)


def _after_a_while(line: Line, result: Mark[Result] | None) -> Mark[Result] | None:
    """A result, "cured for a while" where "a week later" leads to the trouble that is back."""
    if result is None or result.value is not Result.NO_DIFFERENCE:
        return result
    lead = [line.word(k) for k in range(result.first)]
    said = {*lead, *(line.word(k) for k in range(result.first, line.clause(result.first).last))}
    timed = any("time" in line.tokens[k].kinds for k in range(result.first))
    timed = timed or any(w in LATER for w in lead)
    if timed and said & {"again", "back"} and not said & SAYS_STILL - {"zero", "nothing", "little"}:
        return Mark(Result.FOR_A_WHILE, result.first, result.last)
    return result


def until(line: Line, job: Job) -> Mark[Result] | None:
    """The "until" between a trouble and what ended it: "no pressure until I primed the pump"."""
    at = next((k for k in job.before_it if line.word(k) in UNTIL_DONE), None)
    if at is None:
        return None
    return Mark(Result.CURED, at, at + 1) if job.ended_it else None


def _ends_at(line: Line, result: Mark[Result], job: Job) -> bool:
    """Whether a result is that of "no change after the new pump", "after a new pump still low"."""
    lead = job.lead[0].first
    if result.first < lead and result.last <= lead + 1:
        return lead - result.last <= 1  # "worse after" ends with the word that leads to it
    between = [line.word(k) for k in range(job.last, result.first)]
    said = line.words(result.first, result.last)
    if result.value is Result.WORSE and said & FELL_SINCE:
        return len(between) <= _AHEAD  # "since I changed it it's even worse"
    if result.value is not Result.NO_DIFFERENCE or len(between) > _AHEAD:
        return False
    return "," not in between or bool(said & SAYS_STILL)  # "after cleaning it, no change"


def _counting(results: list[Mark[Result]]) -> Mark[Result] | None:
    return min(results, key=lambda r: (_FIRST.get(r.value, 2), r.first), default=None)
