"""Which check next: bottom-up P over C on the tree of access, two steps deep where it informs.

The chance of a check is what it adds to the chance of naming the true cause beyond the checks on
the way to it (a cause is drawn by its probability: 1 - sum of squares is the doubt). Evidence that
would be destroyed is looked at first, whatever it costs.
"""

from __future__ import annotations

from collections.abc import Collection, Hashable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from diagnose.planning.access_tree import AccessTree, Cover
from diagnose.planning.covers import Block, Job, blocks
from diagnose.planning.options import Choice, Option, PlanState
from diagnose.planning.outcome_tables import OutcomeTable, OutcomeTables, StackedTables
from diagnose.planning.precedence import Precedence
from diagnose.planning.single_cause import Array
from knowledge.access import Opening
from knowledge.access.always_recorded import KEPT
from knowledge.access.together import SHORT, TOGETHER
from knowledge.model import Finding
from knowledge.work import Access, Inspection

SURE = 0.9  #: a cause is taken as confirmed from here, unless the person asks for more
LEAST_ADDED = 2e-4  #: a check that adds less to the chance of naming the cause is uninformative
SHORTLIST = 4
LIKELY_OUTCOME = 0.02
WANTED = 0.5  #: evidence that would be destroyed comes first if worth this share of the choice

#: a check by its place among the options, or the cover of a place
JobId = int | Access


@dataclass(frozen=True, slots=True)
class _Way:
    """What is still to open on the way to a place, and the minutes that takes."""

    openings: tuple[Opening, ...]
    minutes: float


@dataclass(frozen=True, eq=False)
class Chooser:
    """The inputs that stay the same while one plan is made."""

    outcome_tables: OutcomeTables
    tree: AccessTree
    inspections: tuple[Inspection, ...]
    precedence: Precedence
    until: float = SURE
    most_minutes: float | None = None
    to_see: bool = False  #: the cause is named already: look for what shows it
    setup: float = 0.0  #: minutes that weigh on every check besides its own

    def options(self, plan_state: PlanState) -> list[Option]:
        """Every check that can still show something and may be done in this state."""
        return self._open(plan_state)[0]

    def _open(self, plan_state: PlanState) -> tuple[list[Option], StackedTables | None]:
        """The options with their tables stacked; the same after each outcome of a check."""
        key = plan_state.answered, plan_state.opened, plan_state.done, plan_state.minutes
        if key not in self._last:
            found = self._found(plan_state)
            self._last.clear()
            self._last[key] = found, StackedTables.of([o.view for o in found]) if found else None
        return self._last[key]

    @cached_property
    def _last(self) -> dict[Hashable, tuple[list[Option], StackedTables | None]]:
        return {}

    def _found(self, plan_state: PlanState) -> list[Option]:
        """What may be done now within the minutes there are."""
        ways: dict[Access, _Way | None] = {}
        options = (
            self._option(inspection, plan_state, ways)
            for inspection in self.inspections
            if self._may_be_made(inspection, plan_state)
        )
        return [
            option
            for option in options
            if option is not None
            and (
                self.most_minutes is None
                or plan_state.minutes + option.minutes <= self.most_minutes
            )
        ]

    def _may_be_made(self, inspection: Inspection, plan_state: PlanState) -> bool:
        return (
            inspection not in plan_state.done
            and not self.precedence.too_late(inspection, plan_state.opened)
            and self.tree.may_do(inspection, plan_state.opened)
        )

    def _option(
        self,
        inspection: Inspection,
        plan_state: PlanState,
        ways: dict[Access, _Way | None],
    ) -> Option | None:
        """A check with the way to it; None where there is none, or it shows nothing new.

        ``ways``: those looked up already, by place.
        """
        if inspection.access not in ways:
            openings = self.tree.way(inspection.access, plan_state.opened)
            minutes = self.tree.opening_minutes(openings or ())
            ways[inspection.access] = None if openings is None else _Way(openings, minutes)
        way = ways[inspection.access]
        if way is None:
            return None
        view = self.outcome_tables.view(inspection, plan_state.answered)
        if view is None:
            return None
        own = self.tree.check_minutes(inspection)
        return Option(view, way.openings, way.minutes + own, own)

    def choose(self, plan_state: PlanState, deep: bool = True) -> Choice | None:
        """Return the best check now; None where no check that may be done is informative.

        ``deep``: look two steps ahead.
        """
        options, stack = self._open(plan_state)
        if stack is None:
            return None
        adds = self._rated(stack, plan_state.weight)
        added = adds @ self._doubt(plan_state)
        ranked = blocks(self._jobs(options, adds, added, plan_state))
        short = _shortlist(ranked, added)
        if not short:
            return None
        values = [block.ratio for _, block in short]
        if deep and not self.to_see and len(short) > 1:
            values = [
                self._two_steps(k, options, added, plan_state) or block.ratio for k, block in short
            ]
        best = max(range(len(short)), key=lambda i: (values[i], -i))
        k, block = short[best]
        choice = Choice(
            options[k],
            tuple(options[j].inspection for j in block.jobs if isinstance(j, int)),
            min(block.chance, 1.0),
            block.cost,
            values[best],
            tuple(options[j] for i, (j, _) in enumerate(short) if i != best),
        )
        choice = self._while_open(choice, options, added, plan_state)
        return self._evidence_first(choice, options, added, plan_state)

    def behind(self, place: Access, plan_state: PlanState) -> float:
        """Return what all checks at one place together add to the chance of naming the cause."""
        views = [o.view for o in self.options(plan_state) if o.inspection.access is place]
        if not views:
            return 0.0
        missed = np.prod(1.0 - self.shares(views, plan_state.weight), axis=0)
        return float(self._doubt(plan_state) @ (1.0 - missed))

    def shares(self, views: Sequence[OutcomeTable], weight: Array) -> Array:
        """For each view and cause the chance that the view names the cause, or shows it."""
        return self._rated(StackedTables.of(views), weight)

    def _rated(self, stack: StackedTables, weight: Array) -> Array:
        return stack.shows(weight) if self.to_see else stack.adds(weight)

    def _doubt(self, plan_state: PlanState) -> Array:
        return plan_state.weight if self.to_see else plan_state.doubt

    def _jobs(
        self, options: Sequence[Option], adds: Array, added: Array, plan_state: PlanState
    ) -> list[Job[JobId]]:
        """The checks as jobs behind covers, each with what it adds beyond those on the way to it."""
        doubt = self._doubt(plan_state)
        by_place: dict[Access, list[int]] = {}
        for k in np.flatnonzero(added >= LEAST_ADDED / 2).tolist():  # behind others it adds less
            by_place.setdefault(options[k].inspection.access, []).append(k)
        covers = self.tree.covers(plan_state.opened)
        missed: dict[Access | None, Array] = {None: np.ones_like(doubt)}
        behind: dict[Access, list[Job[JobId]]] = {}
        for place in self.tree.places:
            left = missed[covers[place].place if place in covers else None]
            if place not in by_place:
                missed[place] = left
                continue
            mine = by_place[place]
            own = np.array([options[k].own for k in mine])
            alone = adds[mine] @ (doubt * left)
            cover = place if place in covers else None
            for i in np.argsort(-alone / (own + self.setup), kind="stable"):
                if alone[i] < LEAST_ADDED:  # what it adds to others can only be less
                    continue
                k = mine[i]
                chance = float(adds[k] @ (doubt * left))
                job: Job[JobId] = Job(k, chance, options[k].own + self.setup, cover)
                behind.setdefault(place, []).append(job)
                left = left * (1.0 - adds[k])
            missed[place] = left
        return _with_covers(behind, covers, self.tree.places)

    def _two_steps(
        self, k: int, options: Sequence[Option], added: Array, plan_state: PlanState
    ) -> float | None:
        """Chance per minute with the best follow-up of each outcome counted in.

        None for a check that needs an opening: its block looks ahead already. A follow-up that
        takes longer than the check counts only where its ratio is better: otherwise a short check
        would be charged for the long ones that come after any check.
        """
        first = options[k]
        if first.minutes > first.own:
            return None
        others = [o for j, o in enumerate(options) if j != k]
        chance, minutes = float(added[k]), first.minutes + self.setup
        own = chance / minutes
        if not others:
            return own
        views = StackedTables.of([o.view for o in others])
        costs = np.array([o.minutes + self.setup for o in others])
        for row in first.view.rows * plan_state.weight:
            p = float(row.sum())
            if p < LIKELY_OUTCOME or float(row.max()) >= self.until * p:
                continue
            after = row / p
            more = views.gains(after)
            best = int(np.argmax(more / costs))
            if more[best] < LEAST_ADDED:
                continue
            if costs[best] <= first.minutes + self.setup or more[best] / costs[best] > own:
                chance += p * float(more[best])
                minutes += p * float(costs[best])
        return chance / minutes

    def _while_open(
        self, choice: Choice, options: Sequence[Option], added: Array, plan_state: PlanState
    ) -> Choice:
        """Put what belongs with an open place before any further opening."""
        if choice.option.minutes <= choice.option.own:
            return choice
        place = {o.inspection: k for k, o in enumerate(options)}
        for line in TOGETHER:
            if line.opening not in plan_state.opened:
                continue
            for check in line.checks:
                k = place.get(check)
                if k is None or added[k] < LEAST_ADDED or check is choice.inspection:
                    continue
                if self.tree.opening_minutes(options[k].way) <= SHORT:
                    return replace(choice, option=options[k], evidence=line.why)
        return choice

    def _evidence_first(
        self, choice: Choice, options: Sequence[Option], added: Array, plan_state: PlanState
    ) -> Choice:
        """Put first the evidence that the chosen check, or an opening on its way, would destroy."""
        least = WANTED * choice.chance / choice.minutes
        wanted = {
            o.inspection: k
            for k, o in enumerate(options)
            if o.inspection in KEPT or added[k] >= least * (o.minutes + self.setup)
        }
        answered = plan_state.answered
        return looked_at_first(choice, options, wanted, self.precedence, answered)


def looked_at_first(
    choice: Choice,
    options: Sequence[Option],
    wanted: Mapping[Inspection, int],
    precedence: Precedence,
    answered: Collection[Finding] = (),
) -> Choice:
    """Put first which of the wanted checks the chosen one, or an opening on its way, would spoil.

    ``wanted``: the place of each among the options.
    """
    passed = {choice.option.inspection}
    while True:
        lines = precedence.before(choice.option, answered)
        found = next(((i, w) for i, w in lines if i in wanted and i not in passed), None)
        if found is None:
            return choice
        first, why = found
        passed.add(first)
        choice = replace(choice, option=options[wanted[first]], evidence=why)


def _with_covers(
    behind: Mapping[Access, Sequence[Job[JobId]]],
    covers: Mapping[Access, Cover],
    places: Sequence[Access],
) -> list[Job[JobId]]:
    """The jobs of each place after its cover; covers with nothing behind them are left out."""
    wanted: set[Access] = set()
    for place in behind:
        way: Access | None = place
        while way is not None and way in covers and way not in wanted:
            wanted.add(way)
            way = covers[way].place
    jobs: list[Job[JobId]] = []
    for place in places:
        if place in wanted:
            cover = covers[place]
            jobs.append(Job(place, 0.0, cover.minutes, cover.place))
        jobs.extend(behind.get(place, ()))
    return jobs


def _shortlist(ranked: Sequence[Block[JobId]], added: Array) -> list[tuple[int, Block[JobId]]]:
    """The first informative check of each of the best blocks, with its block."""
    short: list[tuple[int, Block[JobId]]] = []
    for block in ranked:
        checks = (j for j in block.jobs if isinstance(j, int))
        first = next((k for k in checks if added[k] >= LEAST_ADDED), None)
        if first is not None:
            short.append((first, block))
        if len(short) == SHORTLIST:
            break
    return short
