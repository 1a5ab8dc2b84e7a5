"""What a shop's closed jobs say of how common each cause is there; the book never changes.

The book's rates are taken as if they had been counted over ``BOOK_COUNTS`` jobs. A shop's own
jobs are counted on top. If all jobs were alike this would be the textbook's multinomial with a
Dirichlet prior, and the learned share of a cause its posterior mean, (a + n) / (A + N), with
a = A times the book's share. Jobs are not alike: an engine without a filter cannot have a clogged
one, and one that was just rebuilt has another share of assembly faults. So each job is held
against the book's shares *for that engine and its history*, and the factors are those that make
all counts together likeliest, book counts included; for jobs that are alike they are the
textbook's, to the last digit that counts. Otherwise a shop that rebuilds many engines would count
assembly faults twice: by its history, and by the case in hand.

No bound is put on a factor. A learned share is a weighted mean of the book's share and the shop's
own frequency, so it stays below one, and none becomes nothing, however long it is not found.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import fsum

import numpy as np

from diagnose.history.shop import ClosedJob
from diagnose.inference.causegraph import priors, weights
from diagnose.inference.chaining import Facts, InferenceResult, infer
from knowledge.book import Book

#: How many jobs of one's own weigh as much as the book (judgement, held by simulation). The rates
#: are four classes given by hand to more than a hundred causes, so a shop's own jobs must be able to
#: overrule them; but twenty jobs cannot tell a hundred causes apart. In simulated shops
#: (``python -m tests.studies.history_study``) 50 would do harm wherever a shop is like the book or differs
#: from it by less than twofold; at 200 (not quite two jobs a cause) such shops lose next to nothing, and
#: those that differ much gain nearly as much. One job then makes a cause of middling rate about two
#: thirds commoner.
BOOK_COUNTS = 200.0
#: The same for minutes: jobs of one's own that weigh as much as the plan's figures. One job takes
#: a fifth of the mean and the next five times it, so a few say little: in simulated jobs at the
#: book's own pace, three jobs with a weight of 5 tell more wrong than a plain 1, with 10 no more.
PLAN_COUNTS = 10.0
LEAST_PACE, MOST_PACE = 0.5, 3.0
CLOSE = 1e-13  #: the sum is done when no factor moves by more than this share of itself
MOST_ROUNDS = 2_000


@dataclass(frozen=True, slots=True)
class JobShares:
    """One closed job: its causes, and the book's share of each cause for such an engine."""

    causes: tuple[str, ...]
    shares: Mapping[str, float]


@dataclass(frozen=True, slots=True)
class Learned:
    """What a shop's jobs teach, for each cause of the book."""

    jobs: int
    found: Mapping[str, float]  #: jobs, where one with two causes counts half for each
    expected: Mapping[str, float]  #: jobs, by the book's shares for these engines
    book_share: Mapping[str, float]
    share: Mapping[str, float]  #: learned; sums to one
    factor: Mapping[str, float]  #: learned over the book's; exactly 1 where there are no jobs


def learn(
    book_share: Mapping[str, float], jobs: Iterable[JobShares], counts: float = BOOK_COUNTS
) -> Learned:
    """Learn the shares of the causes; independent of the order of the jobs, to the last bit."""
    causes = tuple(book_share)
    seen = sorted(jobs, key=lambda j: (j.causes, tuple(j.shares.get(c, 0.0) for c in causes)))
    found = {c: fsum(1.0 / len(j.causes) for j in seen if c in j.causes) for c in causes}
    expected = {c: fsum(j.shares.get(c, 0.0) for j in seen) for c in causes}
    if not seen:
        ones = dict.fromkeys(causes, 1.0)
        return Learned(0, found, expected, dict(book_share), dict(book_share), ones)
    base = np.array([book_share[c] for c in causes])
    rows = np.array([[j.shares.get(c, 0.0) for c in causes] for j in seen])
    factor = _likeliest(base, rows, np.array([found[c] for c in causes]), counts)
    share = base * factor
    return Learned(
        jobs=len(seen),
        found=found,
        expected=expected,
        book_share=dict(book_share),
        share=dict(zip(causes, share.tolist(), strict=True)),
        factor=dict(zip(causes, factor.tolist(), strict=True)),
    )


def _likeliest(
    base: np.ndarray[tuple[int], np.dtype[np.float64]],
    rows: np.ndarray[tuple[int, int], np.dtype[np.float64]],
    found: np.ndarray[tuple[int], np.dtype[np.float64]],
    counts: float,
) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """Factors that make counts and book likeliest, their mean over the book's shares one.

    Each job draws its cause with chance proportional to share times factor. Each round cannot
    but rise (Hunter 2004, of such models of choice); the top is one, as the book counts for
    every cause.
    """
    factor = np.ones(len(base))
    for _ in range(MOST_ROUNDS):
        due = counts * base + (rows / (rows @ factor)[:, None]).sum(axis=0)
        new = (counts * base + found) / due
        new = new / (base @ new)
        done = bool(np.all(np.abs(new - factor) <= CLOSE * factor))
        factor = new
        if done:
            break
    return factor


def shares(book: Book, conclusions: InferenceResult) -> dict[str, float]:
    """The book's share of each cause among the jobs that are like this one."""
    weight = weights(book.causes, conclusions)
    total = fsum(weight.values())
    return {c: w / total for c, w in weight.items()}


def observed_job(job: ClosedJob, book: Book) -> JobShares:
    """Return a closed job as learning needs it.

    Where the book says that this engine cannot have the cause it was closed with, the job is
    taken as one of any engine.
    """
    causes = tuple(sorted(c.id for c in job.causes))
    of_job = shares(book, infer(book.statements, job.case.facts()))
    return JobShares(causes, of_job if set(causes) <= of_job.keys() else plain_shares(book))


def plain_shares(book: Book) -> dict[str, float]:
    """The book's share of each cause where nothing is known of the engine."""
    total = fsum(c.rate.value for c in book.causes.values())
    return {c.id: c.rate.value / total for c in book.causes.values()}


def learned_from(jobs: Iterable[ClosedJob], book: Book) -> Learned:
    """Learn from these jobs."""
    return learn(plain_shares(book), [observed_job(j, book) for j in jobs])


@dataclass(frozen=True, slots=True)
class PriorChange:
    """A cause whose prior learning changes, on an engine of which nothing is known."""

    cause: str
    before: float
    after: float


def prior_changes(learned: Learned, book: Book) -> tuple[PriorChange, ...]:
    """Return every cause whose prior changes, largest change first."""
    nothing = infer(book.statements, Facts())
    was, now = priors(book.causes, nothing), priors(book.causes, nothing, learned.factor)
    rows = [PriorChange(c, was[c], now[c]) for c in was if now[c] != was[c]]
    return tuple(sorted(rows, key=lambda m: (-abs(m.after - m.before), m.cause)))


@dataclass(frozen=True)
class ShopPace:
    """Minutes this shop takes beside those its plans estimated.

    Of the totals, not of each job's own ratio: a plan estimates a mean, and one job ends at the
    first check and the next at the last, so ratios lie far apart and their middle far below one
    even where the mean is right. What each inspection takes cannot be learnt from job totals.
    """

    spent: Sequence[float]
    planned: Sequence[float]

    @property
    def jobs(self) -> int:
        """Jobs with both figures."""
        return len(self.spent)

    @cached_property
    def factor(self) -> float:
        """The shop's minutes per minute planned, with ``PLAN_COUNTS`` jobs that went to plan."""
        mean = fsum(self.planned) / len(self.planned) if self.planned else 1.0
        weight = PLAN_COUNTS * mean
        raw = (fsum(self.spent) + weight) / (fsum(self.planned) + weight)
        return min(max(raw, LEAST_PACE), MOST_PACE)


def pace(jobs: Iterable[ClosedJob]) -> ShopPace:
    """The shop's pace from the jobs that have both figures."""
    both = [
        (j.minutes_spent, j.minutes_planned)
        for j in jobs
        if j.minutes_spent is not None and j.minutes_planned
    ]
    return ShopPace([s for s, _ in both], [p for _, p in both])
