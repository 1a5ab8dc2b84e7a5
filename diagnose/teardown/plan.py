"""A teardown plan in stages: one cover after the other, with everything worth doing behind it.

Imported by ``cli``, ``report`` and tests; turns the planner's tree into what a sheet shows.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from diagnose.consultation import Consultation
from diagnose.planning.access_tree import Pace
from diagnose.planning.choosing import SURE, Chooser
from diagnose.planning.options import Choice, Option
from diagnose.planning.strategy import Branch, Prospect, grow, prospect
from knowledge.access import CROWDED, EXPERIENCE, Opening
from knowledge.vocabulary import Access, Cause, Caution, Finding, Inspection

COSTLY = 60.0  #: minutes of an opening from which the plan says why it comes now, or never
CLOSING = 0.8  #: closing takes this share of opening (judgement)
CHEAP = 10.0  #: minutes of a check that is offered while its place is open


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the person asked of the plan."""

    until: float = SURE
    minutes: float | None = None
    on_stand: bool = False
    closed_up: bool = False  #: the repair can only be proved by running: close up each time
    first_time: bool = False
    crowded: bool = False

    @property
    def pace(self) -> Pace:
        """How long things take then."""
        factor = EXPERIENCE["first_time" if self.first_time else "practised"]
        factor *= CROWDED if self.crowded else 1.0
        return Pace(self.on_stand, factor, CLOSING if self.closed_up else 0.0)


@dataclass(frozen=True, slots=True)
class Meaning:
    """What one outcome of a check would mean, as things stand when the check is reached."""

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
    reach: float  #: chance that the plan comes this far
    meanings: tuple[Meaning, ...]
    evidence: str = ""

    @property
    def inspection(self) -> Inspection:
        """The check itself."""
        return self.option.inspection


@dataclass(frozen=True, slots=True)
class Stage:
    """What is opened together, and what is done behind it."""

    number: int
    way: tuple[Opening, ...]
    minutes: float  #: opening and checks
    opening_minutes: float
    reach: float
    chance: float  #: that the cause is confirmed at this stage
    checks: tuple[Check, ...]
    why: str
    also: tuple[Option, ...] = ()  #: cheap checks while it is open, not needed for the cause

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """Of the openings and checks, each once."""
        every = [c for o in self.way for c in o.cautions]
        every += [c for check in self.checks for c in check.inspection.cautions]
        return tuple(dict.fromkeys(every))


@dataclass(frozen=True, slots=True)
class NotPlanned:
    """An opening the plan does without, and why."""

    opening: Opening
    minutes: float
    chance: float  #: what all checks behind it would add to the chance of naming the cause


@dataclass(frozen=True)
class Plan:
    """The plan of one case under the person's wishes."""

    answer: Consultation
    wishes: Wishes = Wishes()

    @cached_property
    def chooser(self) -> Chooser:
        """What chooses the checks."""
        wishes = self.wishes
        return self.answer.chooser(wishes.pace, wishes.until, wishes.minutes)

    @property
    def settled(self) -> bool:
        """Whether the cause is as good as certain already."""
        return self.answer.ranking[0].probability >= self.wishes.until

    @cached_property
    def root(self) -> Branch:
        """The plan as a tree of outcomes."""
        return grow(self.chooser, self.answer.standing)

    @cached_property
    def prospect(self) -> Prospect:
        """Minutes and chances."""
        return prospect(self.root)

    @cached_property
    def spine(self) -> tuple[Branch, ...]:
        """The checks in order as long as nothing is found."""
        return tuple(b for b in self.root.spine() if b.choice is not None)

    @cached_property
    def stages(self) -> tuple[Stage, ...]:
        """The plan, stage by stage; empty where the cause is settled or nothing tells more."""
        if self.settled:
            return ()
        groups: list[list[Branch]] = []
        for branch in self.spine:
            assert branch.choice is not None
            if not groups or self._opens(branch.choice.option):
                groups.append([])
            groups[-1].append(branch)
        return tuple(self._stage(i, group) for i, group in enumerate(groups, 1))

    def _opens(self, option: Option) -> bool:
        return self.chooser.tree.opening_minutes(option.way) > 0.0

    def _stage(self, number: int, group: Sequence[Branch]) -> Stage:
        first = group[0].choice
        assert first is not None
        checks = tuple(self._check(b, b.choice) for b in group if b.choice)
        opening = self.chooser.tree.opening_minutes(first.option.way)
        done = {c.inspection for c in checks}
        return Stage(
            number,
            first.option.way,
            opening + sum(c.minutes for c in checks),
            opening,
            group[0].reach,
            self._found_at(group),
            checks,
            self._why(group[0], first),
            tuple(self._also(group[-1], first.option, done)),
        )

    def _check(self, branch: Branch, choice: Choice) -> Check:
        meanings = tuple(self._meaning(b, branch.reach) for b in branch.branches)
        return Check(choice.option, choice.option.own, branch.reach, meanings, choice.evidence)

    def _meaning(self, branch: Branch, reach: float) -> Meaning:
        weight = branch.standing.weight
        top = int(np.argmax(weight))
        cause = self.answer.book.causes[self.chooser.outlook.table.causes[top]]
        then = branch.choice.option.inspection if branch.choice else None
        return Meaning(
            branch.seen,
            branch.reach / reach,
            cause,
            float(weight[top]),
            branch.found is not None,
            then,
        )

    def _found_at(self, group: Sequence[Branch]) -> float:
        """Chance that one of the outcomes of these checks settles it, at once or by follow-up."""
        own = [then for branch in group for then in branch.branches[:-1]]
        last = group[-1].branches[-1] if group[-1].branches else None
        found = sum(b.reach for then in own for b in then.walk() if b.found is not None)
        return found + (last.reach if last is not None and last.found is not None else 0.0)

    def _why(self, branch: Branch, choice: Choice) -> str:
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

    def _also(self, branch: Branch, option: Option, done: set[Inspection]) -> Iterator[Option]:
        """Short checks at an open place that would not pay for the cause but cost little now."""
        places = {o.access for o in option.way}
        planned = {b.choice.option.inspection for b in self.spine if b.choice}
        for other in self.chooser.options(branch.standing):
            inspection = other.inspection
            if (
                inspection.access in places
                and inspection not in planned | done
                and not inspection.needs_running
                and other.own <= CHEAP
            ):
                yield other

    @cached_property
    def not_planned(self) -> tuple[NotPlanned, ...]:
        """Costly openings the plan does without."""
        if not self.spine:
            return ()
        last = self.root.spine()[-1].standing
        found = []
        for place in self.chooser.tree.places:
            way = self.chooser.tree.way(place, last.opened) or ()
            minutes = self.chooser.tree.opening_minutes(way)
            if way and minutes >= COSTLY:
                chance = self.chooser.behind(place, self.answer.standing)
                found.append(NotPlanned(way[-1], minutes, chance))
        return tuple(found)

    @cached_property
    def waits(self) -> float:
        """The longest wait of the plan that is not hands-on: a drain, a laboratory."""
        return max(
            (b.choice.option.inspection.waits_minutes for b in self.spine if b.choice), default=0.0
        )


def places_of(plan: Plan) -> tuple[Access, ...]:
    """Every place the plan opens, in order."""
    return tuple(o.access for stage in plan.stages for o in stage.way)
