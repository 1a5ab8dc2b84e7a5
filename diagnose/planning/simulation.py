"""Minutes and chances of a plan, from simulated jobs.

Each job has one cause, drawn by its probability, and findings drawn from what that cause alone
would show. The checks are done in the planned order, whatever is found. Seeded: the same plan
gives the same figures.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from diagnose.planning.sequence import PlannedCheck
from diagnose.planning.single_cause import Array, SingleCauseModel

JOBS = 500
SEED = 7
LEAST_CHANCE = 1e-9  #: keeps logarithms of chances finite

Integers = NDArray[np.intp]


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanEstimate:
    """Hands-on minutes and chances of a plan over the simulated jobs."""

    #: mean minutes of the jobs in which a cause gets as likely as asked; of all, where none does.
    #: Simulated jobs that plan again after each finding take about the same: the study of plans
    #: under ``tests`` prints the ratio
    until_confirmed: float
    expected: float  #: mean minutes of all jobs: until a cause is as likely as asked, or to the end
    worst: float  #: minutes of the whole plan
    found: float  #: chance that a cause gets as likely as asked
    found_by: tuple[float, ...]  #: the same, by the end of each check
    right: float  #: share of those jobs in which it is the true cause


#: a plan without checks takes no time and confirms nothing
NOTHING_PLANNED = PlanEstimate(
    until_confirmed=0.0, expected=0.0, worst=0.0, found=0.0, found_by=(), right=0.0
)


def simulate(
    planned: Sequence[PlannedCheck],
    table: SingleCauseModel,
    weight: Array,
    until: float,
    jobs: int = JOBS,
) -> PlanEstimate:
    """Work through a plan on that many simulated jobs.

    ``weight``: probability of each cause of ``table``; ``until``: probability that confirms one.
    """
    if not planned:
        return NOTHING_PLANNED
    rng = np.random.default_rng(SEED)
    cause = _drawn_causes(weight, jobs, rng)
    confirmed_at, named = _worked(planned, table, weight, until, cause, rng)
    minutes = np.cumsum([check.choice.option.minutes for check in planned] or [0.0])
    spent = minutes[np.minimum(confirmed_at, len(minutes) - 1)]
    found = confirmed_at < len(planned)
    return PlanEstimate(
        until_confirmed=float(spent[found].mean() if found.any() else spent.mean()),
        expected=float(spent.mean()),
        worst=float(minutes[-1]),
        found=float(found.mean()),
        found_by=tuple(float((confirmed_at <= i).mean()) for i in range(len(planned))),
        right=float((named[found] == cause[found]).mean()) if found.any() else 0.0,
    )


def _worked(
    planned: Sequence[PlannedCheck],
    table: SingleCauseModel,
    weight: Array,
    until: float,
    cause: Integers,
    rng: np.random.Generator,
) -> tuple[Integers, Integers]:
    """For each job the number of the check that confirms a cause, and that cause.

    ``len(planned)`` and -1 where none does.
    """
    jobs = len(cause)
    log_belief = np.tile(np.log(np.maximum(weight, 1e-12)), (jobs, 1))
    confirmed_at = np.full(jobs, len(planned))
    named = np.full(jobs, -1)
    answered: set[str] = set()
    for i, check in enumerate(planned):
        for finding in check.choice.option.findings:
            if finding.id in answered:
                continue
            answered.add(finding.id)
            shows = np.clip(table.shows[finding.id], LEAST_CHANCE, 1 - LEAST_CHANCE)
            there = rng.random(jobs) < table.shows[finding.id][cause]
            log_belief += np.where(there[:, None], np.log(shows), np.log1p(-shows))
        best = log_belief.argmax(axis=1)
        top = log_belief.max(axis=1)
        sure = 1.0 / np.exp(log_belief - top[:, None]).sum(axis=1) >= until
        new = sure & (confirmed_at == len(planned))
        confirmed_at[new] = i
        named[new] = best[new]
    return confirmed_at, named


def _drawn_causes(weight: Array, jobs: int, rng: np.random.Generator) -> Integers:
    """Draw causes, as numbers, by their probability; stratified, for a small sampling error."""
    at = (np.arange(jobs) + rng.random()) / jobs
    found = np.searchsorted(np.cumsum(weight), at)
    return np.minimum(found, len(weight) - 1)
