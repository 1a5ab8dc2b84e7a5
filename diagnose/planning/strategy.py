"""The whole plan as a tree: each check, what may come of it, and where that leads.

The way on where nothing is found comes first, then the likeliest branches; their number is
bounded, so that the time is, and what is cut off is counted at an estimate. Same case, same plan.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from itertools import count

import numpy as np

from diagnose.planning.choosing import Chooser
from diagnose.planning.options import Choice, Outline, Standing
from diagnose.planning.worlds import Array
from knowledge.vocabulary import Access, Finding

MOST_BRANCHES = 150  #: decisions worked out; the rest is counted at an estimate
DEEP = 0.05  #: branches as likely as this are looked two steps ahead
LEAST_REACH = 0.004
LONGEST = 60  #: checks in a row; no engine has more worth doing
#: minutes really spent, to those of an order that learns nothing on the way (from simulated
#: jobs, ``python -m tests.plan_study``)
LEARNING = 0.45


@dataclass(slots=True, eq=False)
class Branch:
    """One point of the plan: how likely it is to get here, and what is done then."""

    standing: Standing
    reach: float
    depth: int = 0
    after: Choice | None = None  #: the check that led here
    seen: Finding | None = None  #: what it showed; None: nothing of what was looked for
    choice: Choice | None = None
    found: int | None = None  #: the cause taken as confirmed here, by its number
    cut: bool = False  #: not followed further
    branches: list[Branch] = field(default_factory=list)

    def walk(self) -> Iterator[Branch]:
        """This branch and all that follow."""
        stack = [self]
        while stack:
            branch = stack.pop()
            yield branch
            stack.extend(reversed(branch.branches))

    def spine(self) -> list[Branch]:
        """The way on as long as nothing is found."""
        line = [self]
        while line[-1].branches:
            line.append(line[-1].branches[-1])
        return line

    @property
    def place(self) -> Access | None:
        """Where the check was done that led here."""
        return self.after.option.inspection.access if self.after else None


def grow(chooser: Chooser, start: Standing, most: int = MOST_BRANCHES) -> Branch:
    """The plan from here on."""
    root = Branch(start, 1.0)
    waiting: list[tuple[float, int, Branch]] = []
    ticket = count()
    worked = 0
    on: Branch | None = root
    while on is not None:
        worked += _decide(chooser, on)
        for branch in on.branches[:-1]:
            heapq.heappush(waiting, (-branch.reach, next(ticket), branch))
        on = on.branches[-1] if on.branches else None
    while waiting:
        _, _, branch = heapq.heappop(waiting)
        if worked >= most:
            branch.cut = not _settled(chooser, branch)
            continue
        worked += _decide(chooser, branch)
        for then in branch.branches:
            heapq.heappush(waiting, (-then.reach, next(ticket), then))
    return root


def _settled(chooser: Chooser, branch: Branch) -> bool:
    top = int(np.argmax(branch.standing.weight))
    if branch.standing.weight[top] >= chooser.until:
        branch.found = top
    return branch.found is not None


def _decide(chooser: Chooser, branch: Branch) -> int:
    """Settle one branch: found, cut, or the next check and what may come of it; decisions made."""
    if _settled(chooser, branch):
        return 0
    if branch.reach < LEAST_REACH or branch.depth >= LONGEST:
        branch.cut = True
        return 0
    branch.choice = chooser.choose(branch.standing, deep=branch.reach >= DEEP)
    if branch.choice is not None:
        branch.branches.extend(_outcomes(chooser, branch, branch.choice))
    return 1


def _outcomes(chooser: Chooser, branch: Branch, choice: Choice) -> Iterator[Branch]:
    """What may come of the check chosen here, in the order of its findings; nothing, last."""
    option, was = choice.option, branch.standing
    after = replace(
        was,
        answered=was.answered | set(option.inspection.reveals),
        opened=chooser.tree.after(option.inspection, was.opened),
        done=was.done | {option.inspection},
        minutes=was.minutes + option.minutes,
    )
    joint: Array = option.view.rows * was.weight
    for row, finding in zip(joint, (*option.findings, None), strict=True):
        p = float(row.sum())
        if p > 0.0:
            then = replace(after, weight=row / p)
            yield Branch(then, branch.reach * p, branch.depth + 1, choice, finding)


@dataclass(frozen=True, slots=True)
class Prospect:
    """What the plan comes to, in minutes and chances."""

    expected: float  #: hands-on minutes until the cause is confirmed or nothing is left to look at
    worst: float  #: the longest way, nothing found until the end
    found: float  #: chance that the plan confirms a cause
    by_place: dict[Access, float]  #: chance that it is confirmed there
    cut: float  #: chance of the branches that were only estimated


def prospect(root: Branch) -> Prospect:
    """Minutes and chances of a plan, counted over its branches."""
    by_place: dict[Access, float] = {}
    expected = cut = worst = 0.0
    begun = root.standing.minutes

    def count_found(place: Access | None, chance: float) -> None:
        if place is not None:
            by_place[place] = by_place.get(place, 0.0) + chance

    for branch in root.walk():
        minutes = branch.standing.minutes - begun
        worst = max(worst, minutes)
        expected += 0.0 if branch.branches else branch.reach * minutes
        if branch.found is not None:
            count_found(branch.place, branch.reach)
        elif branch.cut:
            cut += branch.reach
            for step, left in _ahead(branch):
                expected += branch.reach * left * step.minutes * LEARNING
                count_found(step.place, branch.reach * step.share)
    found = min(sum(by_place.values()), 1.0)
    return Prospect(expected, max(worst, expected), found, by_place, cut)


def _ahead(branch: Branch) -> Iterator[tuple[Outline, float]]:
    """What would come next as things stood one check before, and the chance of getting there."""
    left = 1.0
    for step in branch.after.outline[1:] if branch.after else ():
        yield step, left
        left = max(left - step.share, 0.0)
