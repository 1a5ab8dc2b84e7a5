"""Priming as a step of other work: "new pump on, primed it"."""

from __future__ import annotations

from diagnose.understanding.came_to import PRIMING
from diagnose.understanding.jobs import Job


def is_step(job: Job, own: list[Job]) -> bool:
    """Whether priming is a step of other work named before it: "new pump on, primed it"."""
    others = [j for j in own if j.trial not in PRIMING and j.last <= job.first]
    others = [j for j in others if not j.begins_it and j.area != "whole_engine"]
    return job.trial in PRIMING and bool(others) and not job.tried
