"""A plan tried on imagined jobs before it is done on the real one: minutes and chances.

Each job has one cause, drawn with the beliefs, and findings drawn from what that cause alone
would show. The checks are done in the order of the line, whatever is found; making the plan anew
after each finding does better. Seeded: same plan, same figures.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from diagnose.planning.sequence import PlannedCheck
from diagnose.planning.single_cause import Array, SingleCauseModel

JOBS = 500
#: minutes where the plan is made anew after each finding, to those to the letter, in simulated
#: jobs: ``python -m tests.plan_study`` prints it
ANEW = 0.58
SEED = 7


@dataclass(frozen=True, slots=True)
class PlanEstimate:
    """What the line comes to over the imagined jobs, in hands-on minutes and chances."""

    expected: float  #: mean minutes until a cause is as likely as asked, or the line ends
    made_anew: float  #: about the same where the plan is made anew after each finding
    worst: float  #: all of it
    found: float  #: chance that a cause gets as likely as asked
    found_by: tuple[float, ...]  #: the same, by the end of each check
    right: float  #: share of those in which it is the true one


def simulate(
    links: Sequence[PlannedCheck],
    table: SingleCauseModel,
    weight: Array,
    until: float,
    jobs: int = JOBS,
) -> PlanEstimate:
    """The line done on that many imagined jobs."""
    rng = np.random.default_rng(SEED)
    cause = _drawn(weight, jobs, rng)
    log_belief = np.tile(np.log(np.maximum(weight, 1e-12)), (jobs, 1))
    settled_at = np.full(jobs, len(links))
    named = np.full(jobs, -1)
    heard: set[str] = set()
    for i, link in enumerate(links):
        for finding in link.choice.option.findings:
            if finding.id in heard:
                continue
            heard.add(finding.id)
            shows = np.clip(table.shows[finding.id], 1e-9, 1 - 1e-9)
            there = rng.random(jobs) < table.shows[finding.id][cause]
            log_belief += np.where(there[:, None], np.log(shows), np.log1p(-shows))
        best = log_belief.argmax(axis=1)
        top = log_belief.max(axis=1)
        sure = 1.0 / np.exp(log_belief - top[:, None]).sum(axis=1) >= until
        new = sure & (settled_at == len(links))
        settled_at[new] = i
        named[new] = best[new]
    minutes = np.cumsum([link.choice.option.minutes for link in links] or [0.0])
    spent = minutes[np.minimum(settled_at, len(minutes) - 1)]
    found_by = tuple(float((settled_at <= i).mean()) for i in range(len(links)))
    found = settled_at < len(links)
    right = float((named[found] == cause[found]).mean()) if found.any() else 0.0
    return PlanEstimate(
        float(spent.mean()),
        float(spent.mean()) * ANEW,
        float(minutes[-1]),
        float(found.mean()),
        found_by,
        right,
    )


def _drawn(
    weight: Array, jobs: int, rng: np.random.Generator
) -> np.ndarray[tuple[int], np.dtype[np.intp]]:
    """Causes in numbers by their weight, as even as can be: few jobs, little chance in it."""
    at = (np.arange(jobs) + rng.random()) / jobs
    found = np.searchsorted(np.cumsum(weight), at)
    return np.minimum(found, len(weight) - 1)
