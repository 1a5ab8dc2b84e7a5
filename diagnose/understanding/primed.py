"""Priming: a step of other work, and the pressure it brought."""

from __future__ import annotations

from diagnose.understanding.changes import pressures_at
from diagnose.understanding.jobs import Job
from diagnose.understanding.paragraph import Line
from diagnose.understanding.phrases import Mark
from knowledge.lexicon.results_words import ENOUGH
from knowledge.lexicon.work_words import BY_DRILL
from knowledge.reports.words import Result

_PRIMING = frozenset(["pump_primed", "oil_poured_in"])
_CRANKED = 8  #: words from priming to the pressure it brought


def is_step(job: Job, own: list[Job]) -> bool:
    """Whether priming is a step of other work named before it: "new pump on, primed it"."""
    others = [j for j in own if j.trial not in _PRIMING and j.last <= job.first]
    others = [j for j in others if not j.begins_it and j.area != "whole_engine"]
    return job.trial in _PRIMING and bool(others) and not job.tried


def made_pressure(line: Line, job: Job) -> Mark[Result] | None:
    """The pressure that came straight after priming: "packed the pump, cranked it, 50 psi"."""
    if job.trial not in _PRIMING or job.line is not line:
        return None
    for k in range(job.last, min(job.last + _CRANKED, len(line.tokens))):
        if "pressure" in line.tokens[k].kinds and max(pressures_at(line, k), default=0.0) > ENOUGH:
            drill = {line.word(i) for i in range(k + 4)} & BY_DRILL
            return None if drill - {"priming"} else Mark(Result.CURED, k, k + 1)
    return None
