"""A teardown plan in stages: one cover after the other, with everything worth doing behind it.

Turns the planner's tree into what a sheet shows.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property, partial

import numpy as np

from diagnose.case.apart import is_out
from diagnose.diagnosis import Diagnosis
from diagnose.planning.access_tree import Pace
from diagnose.planning.choosing import SURE, Chooser
from diagnose.planning.options import Choice, Option, PlanState
from diagnose.planning.sequence import Outcome, PlannedCheck, planned_sequence
from diagnose.planning.simulation import PlanEstimate, simulate
from diagnose.reasoning.comes_first import called_for, on_the_way
from diagnose.reasoning.seen_on_engine import is_seen, is_sure
from knowledge.access import CROWDED, EXPERIENCE, Opening
from knowledge.faults import Fault
from knowledge.model import Cause, Finding
from knowledge.work import Caution, Inspection

LEAST_WORTH = 0.02  #: chance of finding the cause for which a plan still opens at great cost
COSTLY = 60.0  #: minutes of an opening from which the plan says why it is in it or not
CLOSING = 0.8  #: closing takes this share of opening (judgement)
MOST_TO_SEE = 4  #: checks offered to see a cause that is nearly certain
CHEAP = 10.0  #: minutes of a check that is offered while its place is open


@dataclass(frozen=True, slots=True)
class PlanRequest:
    """What a person asks of a plan."""

    until: float = SURE
    minutes: float | None = None
    on_stand: bool = False
    closed_up: bool = False  #: the engine is closed and run again after each check
    first_time: bool = False
    crowded: bool = False
    shop_pace: float = 1.0  #: minutes of the shop's closed jobs over the minutes planned

    @property
    def pace(self) -> Pace:
        """The pace of the work."""
        factor = EXPERIENCE["first_time" if self.first_time else "practised"]
        factor *= (CROWDED if self.crowded else 1.0) * self.shop_pace
        return Pace(self.on_stand, factor, CLOSING if self.closed_up else 0.0)


@dataclass(frozen=True, slots=True)
class Meaning:
    """What one outcome of a check would mean when the check is reached."""

    finding: Finding | None  #: None: nothing of what is looked for
    chance: float
    leads: Cause
    leads_with: float
    settles: bool  #: the plan may stop here
    then: Inspection | None  #: what comes next; None: not worked out, or nothing


@dataclass(frozen=True, slots=True)
class Check:
    """One check of a stage."""

    option: Option
    minutes: float
    meanings: tuple[Meaning, ...]
    evidence: str = ""

    @property
    def inspection(self) -> Inspection:
        """The check itself."""
        return self.option.inspection


@dataclass(frozen=True, slots=True)
class Stage:
    """What is opened together, and the checks done behind it."""

    number: int
    way: tuple[Opening, ...]
    minutes: float  #: opening and checks
    opening_minutes: float
    reach: float  #: chance that the cause has not been found before
    chance: float  #: that it is found at this stage
    checks: tuple[Check, ...]
    why: str
    also: tuple[Option, ...] = ()  #: cheap checks while it is open, not needed for the cause

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """Of the openings and checks, each once; the battery first, as it is in the work."""
        every = [c for o in self.way for c in o.cautions]
        first = [c for c in every if c is Caution.BATTERY]
        every += [c for check in self.checks for c in check.inspection.cautions]
        every += [c for option in self.also for c in option.inspection.cautions]
        return tuple(dict.fromkeys([*first, *every]))


@dataclass(frozen=True, slots=True)
class NotPlanned:
    """An opening that is not in the plan, and why."""

    opening: Opening
    minutes: float
    chance: float  #: what all checks behind it would add to the chance of naming the cause
    repair: tuple[Fault, ...] = ()  #: found faults whose repair opens it in any case


@dataclass(frozen=True)
class Plan:
    """The plan of one case for one request."""

    answer: Diagnosis
    request: PlanRequest = PlanRequest()

    @cached_property
    def chooser(self) -> Chooser:
        """The chooser of the checks."""
        request = self.request
        return self.answer.planner.chooser(
            replace(request.pace, on_stand=is_on_stand(self)),
            request.until,
            request.minutes,
            self.settled,
        )

    @property
    def settled(self) -> bool:
        """Whether the cause is as likely as asked already."""
        return is_sure(self.answer.inference, self.request.until)

    @cached_property
    def confirmed(self) -> bool:
        """Whether it has been seen on the engine as well."""
        return is_seen(self.answer.inference, self.request.until)

    @cached_property
    def plan_state(self) -> PlanState:
        """The state of the job; a look that was made inside is not planned again."""
        return self.answer.planner.plan_state

    @cached_property
    def line(self) -> tuple[PlannedCheck, ...]:
        """The checks in order, each with its outcomes; empty where the cause is confirmed.

        Where the cause is as likely as asked but has not been seen, only checks that show it.
        """
        if self.confirmed:
            return ()
        line = planned_sequence(self.chooser, self.plan_state, steer=partial(_steered, self))
        if not self.settled:
            return worth_it(line, self.chooser)
        seen = 0.0
        most: list[PlannedCheck] = []
        for link in line:
            if seen >= self.request.until or len(most) == MOST_TO_SEE:
                break
            most.append(link)
            seen += link.named
        return tuple(most)

    @cached_property
    def estimate(self) -> PlanEstimate:
        """Minutes and chances from simulated jobs."""
        chooser, weight = self.chooser, self.plan_state.weight
        return simulate(self.line, chooser.outcome_tables.table, weight, chooser.until)

    @cached_property
    def stages(self) -> tuple[Stage, ...]:
        """The plan, stage by stage; empty where the cause is confirmed or no check is informative."""
        groups: list[list[PlannedCheck]] = []
        for link in self.line:
            if not groups or self._opens(link.choice.option):
                groups.append([])
            groups[-1].append(link)
        stages, before = [], 0.0
        done = 0
        for number, group in enumerate(groups, 1):
            done += len(group)
            by_then = self.estimate.found_by[done - 1]
            stages.append(self._stage(number, group, before, by_then))
            before = by_then
        return tuple(stages)

    def _opens(self, option: Option) -> bool:
        return self.chooser.tree.opening_minutes(option.way) > 0.0

    def _stage(
        self, number: int, group: Sequence[PlannedCheck], before: float, by_then: float
    ) -> Stage:
        first = group[0].choice
        checks = tuple(self._check(link) for link in group)
        opening = self.chooser.tree.opening_minutes(first.option.way)
        return Stage(
            number=number,
            way=first.option.way,
            minutes=opening + sum(c.minutes for c in checks),
            opening_minutes=opening,
            reach=1.0 - before,
            chance=by_then - before,
            checks=checks,
            why=self._why(first),
            also=tuple(self._also(group[-1].plan_state, first.option)),
        )

    def _check(self, link: PlannedCheck) -> Check:
        meanings = tuple(self._meaning(o) for o in link.outcomes)
        option = link.choice.option
        return Check(option, option.own, meanings, link.choice.evidence)

    def _meaning(self, outcome: Outcome) -> Meaning:
        top = int(np.argmax(outcome.weight))
        cause = self.answer.book.causes[self.chooser.outcome_tables.table.causes[top]]
        chance = float(outcome.weight[top])
        return Meaning(
            outcome.finding, outcome.chance, cause, chance, outcome.settles, outcome.then
        )

    def _why(self, choice: Choice) -> str:
        """Why a costly opening comes now."""
        minutes = self.chooser.tree.opening_minutes(choice.option.way)
        if minutes < COSTLY:
            return ""
        chance, cost = round(100 * choice.chance), round(choice.minutes)
        what = choice.option.way[-1].says
        shown = len(choice.block)
        checks = "one check" if shown == 1 else f"{shown} checks"
        return (
            f"{what}: now, because {checks} behind it add {max(chance, 1)} % to the chance of naming "
            f"the cause for {cost} min, and everything cheaper that tells as much has been looked at"
        )

    def _also(self, plan_state: PlanState, option: Option) -> Iterator[Option]:
        """Short checks at an open place that would not pay for the cause but cost little now."""
        places = {o.access for o in option.way}
        planned = {link.choice.option.inspection for link in self.line}
        for other in self.chooser.options(plan_state):
            inspection = other.inspection
            if (
                inspection.access in places
                and inspection not in planned
                and not inspection.needs_running
                and other.own <= CHEAP
            ):
                yield other

    @cached_property
    def not_planned(self) -> tuple[NotPlanned, ...]:
        """Costly openings the plan does without."""
        if not self.line:
            return ()
        opened = self.line[-1].plan_state.opened
        opened |= self.chooser.tree.closure(self.line[-1].choice.option.inspection.access)
        found = []
        for place in self.chooser.tree.places:
            way = self.chooser.tree.way(place, opened) or ()
            minutes = self.chooser.tree.opening_minutes(way)
            if way and minutes >= COSTLY:
                chance = self.chooser.behind(place, self.plan_state)
                repair = tuple(f.fault for f in self.answer.found_faults if place in f.fault.opens)
                found.append(NotPlanned(way[-1], minutes, chance, repair))
        return tuple(found)

    @cached_property
    def waits(self) -> float:
        """The longest wait of the plan that is not hands-on: a drain, a laboratory."""
        return max((link.choice.option.inspection.waits_minutes for link in self.line), default=0.0)


def _steered(plan: Plan, choice: Choice, plan_state: PlanState) -> Choice:
    """The plan begins with the next check of the review, and goes on to what is called for."""
    options, known = plan.chooser.options(plan_state), plan.answer.inference
    called = called_for(lambda: options, known)
    if called:
        choice = replace(choice, option=called[0], evidence="")
        return on_the_way(choice, options, plan.chooser.precedence)
    first = plan.answer.next_check if plan_state is plan.plan_state else None
    same = next((o for o in options if first and o.inspection is first.inspection), None)
    return replace(choice, option=same, evidence=first.evidence) if first and same else choice


def worth_it(line: tuple[PlannedCheck, ...], chooser: Chooser) -> tuple[PlannedCheck, ...]:
    """Return the sequence without an end of costly openings that together find next to nothing."""
    kept, found = len(line), 0.0
    for number in range(len(line) - 1, 0, -1):
        found += line[number].named
        if found >= LEAST_WORTH:
            break
        if chooser.tree.opening_minutes(line[number].choice.option.way) >= COSTLY:
            kept = number
    return line[:kept]


def is_on_stand(plan: Plan) -> bool:
    """Whether the engine is out of its place, as asked or as the case says."""
    return plan.request.on_stand or is_out(plan.answer.case)
