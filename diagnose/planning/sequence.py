"""The plan: the order of checks as long as the cause has not been named, and each outcome's way on.

A finding seldom decides alone, so the line does not suppose that nothing is found: after each
check it goes on with the causes that the check would not have let one name. Same case, same line.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from diagnose.planning.choosing import Chooser
from diagnose.planning.options import Choice, PlanState
from diagnose.planning.single_cause import Array
from knowledge.model import Finding
from knowledge.work import Inspection

LONGEST = 48  #: checks in a row; who has done so many asks again
LEAST_LEFT = 0.01  #: the line ends when the cause is as likely as this not to have been named
DEEP = 0.3  #: as long as so much is left, two steps ahead
WORTH_FOLLOWING = 0.1  #: chance of an outcome from which its way on is worked out


@dataclass(frozen=True, slots=True, eq=False)
class Outcome:
    """What one outcome of a check makes of the beliefs, and what comes next then."""

    finding: Finding | None  #: None: nothing of what was looked for
    chance: float
    weight: Array
    settles: bool
    then: Inspection | None


@dataclass(frozen=True, slots=True, eq=False)
class PlannedCheck:
    """One check of the line."""

    choice: Choice
    plan_state: PlanState  #: before it
    left: float  #: chance that the cause has not been named before
    named: float  #: chance that this check lets one name it
    outcomes: tuple[Outcome, ...]


def planned_sequence(chooser: Chooser, start: PlanState) -> tuple[PlannedCheck, ...]:
    """The checks in order; empty where nothing tells anything."""
    links: list[PlannedCheck] = []
    plan_state, left = start, 1.0
    while len(links) < LONGEST and left >= LEAST_LEFT:
        choice = chooser.choose(plan_state, deep=left >= DEEP)
        if choice is None:
            break
        adds = chooser.shares([choice.option.view], plan_state.weight)[0]
        missed: Array = plan_state.weight * (1.0 - adds)
        share = float(missed.sum())
        after = _done(chooser, plan_state, choice)
        outcomes = tuple(_outcomes(chooser, plan_state, after, choice))
        links.append(PlannedCheck(choice, plan_state, left, left * (1.0 - share), outcomes))
        if share <= 0.0:
            break
        plan_state = replace(after, weight=missed / share)
        left *= share
    return tuple(links)


def _done(chooser: Chooser, was: PlanState, choice: Choice) -> PlanState:
    """The standing once the check is done, beliefs as before."""
    option = choice.option
    return replace(
        was,
        answered=was.answered | set(option.inspection.reveals),
        opened=chooser.tree.after(option.inspection, was.opened),
        done=was.done | {option.inspection},
        minutes=was.minutes + option.minutes,
    )


def _outcomes(
    chooser: Chooser, was: PlanState, after: PlanState, choice: Choice
) -> Iterator[Outcome]:
    """What may come of the check, in the order of its findings; nothing, last."""
    view = choice.option.view
    joint: Array = view.rows * was.weight
    for row, finding in zip(joint, (*view.findings, None), strict=True):
        p = float(row.sum())
        if p <= 0.0:
            continue
        weight = row / p
        settles = float(weight.max()) >= chooser.until
        then = None
        if not settles and p >= WORTH_FOLLOWING:
            following = chooser.choose(replace(after, weight=weight), deep=False)
            then = following.option.inspection if following else None
        yield Outcome(finding, p, weight, settles, then)
