"""The planned sequence of checks until the cause is named, and what follows each outcome.

A finding seldom decides alone, so the sequence does not assume that nothing is found: after each
check it continues with the probabilities given that the check did not name the cause.
Deterministic.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from diagnose.planning.choosing import Chooser
from diagnose.planning.options import Choice, PlanState
from diagnose.planning.single_cause import Array
from knowledge.model import Finding
from knowledge.work import Inspection

LONGEST = 48  #: checks in one plan
LEAST_LEFT = 0.01  #: the plan ends at this chance that the cause has not been named
DEEP = 0.3  #: the planner looks two steps ahead while at least this chance is left
WORTH_FOLLOWING = 0.1  #: chance of an outcome from which the next check after it is worked out


@dataclass(frozen=True, slots=True, eq=False)
class Outcome:
    """One outcome of a check: the beliefs after it, and the next check."""

    finding: Finding | None  #: None: nothing of what was looked for
    chance: float
    weight: Array
    settles: bool
    then: Inspection | None


@dataclass(frozen=True, slots=True, eq=False)
class PlannedCheck:
    """One check of the plan."""

    choice: Choice
    plan_state: PlanState  #: before it
    left: float  #: chance that the cause has not been named before
    named: float  #: chance that this check lets one name it
    outcomes: tuple[Outcome, ...]


#: what comes in place of a choice in a state of the job
Steer = Callable[[Choice, PlanState], Choice]


def as_chosen(choice: Choice, _: PlanState) -> Choice:
    """Nothing comes in place of a choice."""
    return choice


def planned_sequence(
    chooser: Chooser, start: PlanState, most: int = LONGEST, steer: Steer = as_chosen
) -> tuple[PlannedCheck, ...]:
    """Return the checks in order, so many at most; empty where no check is informative."""
    planned: list[PlannedCheck] = []
    plan_state, left = start, 1.0
    while len(planned) < most and left >= LEAST_LEFT:
        choice = chooser.choose(plan_state, deep=left >= DEEP)
        if choice is None:
            break
        choice = steer(choice, plan_state)
        adds = chooser.shares([choice.option.view], plan_state.weight)[0]
        missed: Array = plan_state.weight * (1.0 - adds)
        share = float(missed.sum())
        after = _done(chooser, plan_state, choice)
        outcomes = tuple(_outcomes(chooser, plan_state, after, choice))
        planned.append(PlannedCheck(choice, plan_state, left, left * (1.0 - share), outcomes))
        if share <= 0.0:
            break
        plan_state = replace(after, weight=missed / share)
        left *= share
    return tuple(planned)


def _done(chooser: Chooser, was: PlanState, choice: Choice) -> PlanState:
    """The state once the check is done, with unchanged beliefs."""
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
    """The outcomes of the check in the order of its findings; none of them last."""
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
