"""How many minutes this plan takes beside other orders; ``python -m tests.studies.plan_study [JOBS]``.

Imagined jobs (``plan_jobs``), drawn once from the book and once from a book in which every prior,
leak and strength is off by up to a factor of two. Orders: the plan made again after each finding;
each published troubleshooting table row by row (each row by the check that shows its causes best,
then a full strip); cheapest first; likeliest first; full strip from outside in.
"""

from __future__ import annotations

import random
import sys
from collections.abc import Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from functools import lru_cache, partial

import numpy as np

from diagnose.planning.options import PlanState
from diagnose.teardown.plan import Plan
from knowledge.book import the_book
from knowledge.work import Inspection
from tests.studies.handbook_agreement import Table, tables
from tests.studies.plan_jobs import CONFIRMED, ImaginedJob, Mechanic, Order, draw, worked

CHECKS = tuple(the_book().inspections.values())
SHOWS_IT = 8.0  #: a finding shows a cause where it is so many times likelier with it
PLAN, LIKELIEST, CHEAPEST, STRIP = "this plan", "likeliest first", "cheapest first", "full strip"


def planned(person: Mechanic) -> Iterator[Inspection]:
    """The planner's choice, made again after each check."""
    chooser = person.job.answer.planner.chooser(until=CONFIRMED)
    while True:
        plan_state = PlanState(
            person.weight, frozenset(person.answered), person.opened, frozenset(person.done)
        )
        choice = chooser.choose(plan_state)
        if choice is None:
            yield from stripped(person)
            return
        yield choice.option.inspection


def stripped(person: Mechanic) -> Iterator[Inspection]:
    """Everything, the least opening first."""
    while True:
        left = [c for c in CHECKS if person.may(c)]
        if not left:
            return
        yield min(left, key=lambda c: (person.cost(c) - c.minutes, c.minutes, c.id))


def cheapest(person: Mechanic) -> Iterator[Inspection]:
    """Everything, the check of fewest minutes first."""
    while True:
        left = [c for c in CHECKS if person.may(c)]
        if not left:
            return
        yield min(left, key=lambda c: (person.cost(c), c.id))


@lru_cache(4)
def _proofs(job: ImaginedJob) -> dict[Inspection, np.ndarray[tuple[int], np.dtype[np.float64]]]:
    """For each check and cause the chance of a finding that shows the cause."""
    table = job.answer.planner.single_cause_model
    out = {}
    for check in CHECKS:
        miss = np.ones(len(table.causes))
        for finding in check.reveals:
            if finding.id in table.shows and finding not in job.answer.planner.answered:
                p = table.shows[finding.id]
                rest = (float(p @ table.weight) - p * table.weight) / np.maximum(
                    1.0 - table.weight, 1e-9
                )
                miss = miss * np.where(p >= SHOWS_IT * rest, 1.0 - p, 1.0)
        out[check] = 1.0 - miss
    return out


def likeliest(person: Mechanic) -> Iterator[Inspection]:
    """The cause that is likeliest as things stand, by the check that shows it cheapest."""
    proofs = _proofs(person.job)
    while True:
        found = None
        for cause in np.argsort(-person.weight, kind="stable"):
            may = [c for c in CHECKS if proofs[c][cause] > 0.2 and person.may(c)]
            if may:
                found = min(may, key=lambda c: (person.cost(c) / proofs[c][cause], c.id))
                break
        if found is None:
            yield from stripped(person)
            return
        yield found


def by_table(table: Table, person: Mechanic) -> Iterator[Inspection]:
    """A printed table row by row, then a full strip."""
    proofs = _proofs(person.job)
    number = {c: i for i, c in enumerate(person.job.answer.planner.single_cause_model.causes)}
    for row in table.rows:
        causes = [number[c] for c in row.causes if c in number]
        chance = {c: float(proofs[c][causes].sum()) for c in CHECKS if causes and person.may(c)}
        best = max(chance.values(), default=0.0)
        if best > 0.05:
            good = [c for c, p in chance.items() if p >= 0.7 * best]
            yield min(good, key=lambda c: (person.cost(c), c.id))
    yield from stripped(person)


def low_tables() -> Iterator[Table]:
    """Printed tables of low, lost or unsteady pressure."""
    for table in tables():
        if not any(word in table.name for word in ("high", "oil")) and len(table.rows) >= 4:
            yield table


def orders() -> dict[str, Order]:
    """Every order by its name; printed tables of low, lost or unsteady pressure only."""
    found: dict[str, Order] = {
        PLAN: planned,
        LIKELIEST: likeliest,
        CHEAPEST: cheapest,
        STRIP: stripped,
    }
    found |= {str(table): partial(by_table, table) for table in low_tables()}
    return found


@dataclass(frozen=True)
class Result:
    """Minutes of every order on the jobs that a full strip brings to an end."""

    minutes: dict[str, list[float]]
    drawn: int
    expected: list[float]  #: what the printed plan said beforehand
    confirming: list[float]  #: the same of the jobs whose cause it confirms
    estimated: list[float]  #: chance it gave itself

    @property
    def kept(self) -> int:
        """Jobs that a full strip confirms."""
        return len(self.minutes[PLAN])

    def mean(self, name: str) -> float:
        """Mean minutes of an order."""
        return float(np.mean(self.minutes[name]))

    def best_table(self) -> str:
        """The printed table with the fewest mean minutes."""
        return min(
            (n for n in self.minutes if n not in (PLAN, LIKELIEST, CHEAPEST, STRIP)), key=self.mean
        )


def one_lot(jobs: int, factor: float, seed: int, says: bool = True) -> Result:
    """Some jobs, each worked in every order."""
    rng = random.Random(seed)
    every = orders()
    result = Result({name: [] for name in every}, jobs, [], [], [])
    for _ in range(jobs):
        job = draw(rng, factor)
        full = worked(job, stripped)
        if full is None or not full:
            continue
        for name, order in every.items():
            minutes = full if name == STRIP else worked(job, order)
            result.minutes[name].append(full if minutes is None else minutes)
        if says:
            plan = Plan(job.answer)
            result.expected.append(plan.estimate.expected if plan.line else 0.0)
            result.confirming.append(plan.estimate.until_confirmed if plan.line else 0.0)
            result.estimated.append(plan.estimate.found if plan.line else 1.0)
    return result


def study(jobs: int, factor: float, seed: int = 5, workers: int = 2, says: bool = True) -> Result:
    """Many jobs, in lots on all processors; the same whatever their number."""
    lots = [min(50, jobs - i) for i in range(0, jobs, 50)]
    arguments = (lots, [factor] * len(lots), range(seed, seed + len(lots)), [says] * len(lots))
    if workers == 1:
        parts = [one_lot(*a) for a in zip(*arguments, strict=True)]
    else:
        with ProcessPoolExecutor(workers) as pool:
            parts = list(pool.map(one_lot, *arguments))
    minutes = {n: [m for p in parts for m in p.minutes[n]] for n in parts[0].minutes}
    return Result(
        minutes,
        jobs,
        [e for p in parts for e in p.expected],
        [c for p in parts for c in p.confirming],
        [r for p in parts for r in p.estimated],
    )


def lines_of(result: Result) -> Iterator[str]:
    """The table of one study."""
    best = result.best_table()
    yield f"{result.drawn} jobs, {result.kept} of them confirmed by a full strip; minutes hands-on"
    yield f"{'order':42} {'mean':>7} {'median':>7} {'90th':>7} {'mean / best table':>18}"
    ranked = sorted(result.minutes, key=result.mean)
    for name in ranked:
        m = np.array(result.minutes[name])
        yield (
            f"{name[:42]:42} {m.mean():7.0f} {np.median(m):7.0f} {np.percentile(m, 90):7.0f} "
            f"{m.mean() / result.mean(best):18.2f}"
        )
    if result.expected:
        yield (
            f"planned again after each finding the jobs took {result.mean(PLAN):.0f} min on average; "
            f"each plan's estimate beforehand, mean over the jobs whose cause it confirms, was "
            f"{np.mean(result.confirming):.0f} ({result.mean(PLAN) / np.mean(result.confirming):.2f} "
            f"of it), over all its jobs {np.mean(result.expected):.0f} "
            f"({result.mean(PLAN) / np.mean(result.expected):.2f} of it)"
        )


def main(arguments: Sequence[str]) -> None:
    """Print both studies."""
    jobs = int(arguments[0]) if arguments else 2000
    for factor, title in ((1.0, "drawn from the book"), (2.0, "every number off, factor 2")):
        print(f"== {title}")
        for line in lines_of(study(jobs, factor)):
            print(line)


if __name__ == "__main__":
    main(sys.argv[1:])
