"""Choose the next check for a case and predict its outcomes."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property

from diagnose.case.apart import is_out, open_for_bearings
from diagnose.inference.chaining import Observation
from diagnose.inference.network import Evidence
from diagnose.inference.outcomes import Outcome, Supposed, outcomes
from diagnose.planning.access_tree import AccessTree, Pace
from diagnose.planning.choosing import SURE, Chooser
from diagnose.planning.options import Choice, Option, PlanState
from diagnose.planning.outcome_tables import OutcomeTables
from diagnose.planning.precedence import Precedence, over
from diagnose.planning.single_cause import SingleCauseModel, single_cause_model
from diagnose.reasoning.asked_already import (
    asked_already,
    known_of_the_oil,
    senseless,
    shows_nothing,
)
from diagnose.reasoning.case_inference import CaseInference
from diagnose.reasoning.comes_first import what_comes_first
from diagnose.reasoning.seen_on_engine import is_seen, places_to_look, seen_for, taken_together
from diagnose.reasoning.trusted_gauge import needless, with_gauge
from knowledge.access import Opening, openings_for
from knowledge.access.not_there import is_there
from knowledge.model import Finding, Stage, State
from knowledge.stations.instrument.findings_direct_gauge import FIT_A_DIRECT_GAUGE
from knowledge.work import Access, Inspection

SETUP = 5.0  #: minutes of fetching tools and writing down, for every check (judgement)
MANY, MOSTLY = 2, 0.5  #: findings seen of a look inside, and their share, from which it is made
PASSED_OVER = 3  #: checks without effect that are passed over; then nothing is left to look at
RARE = 0.005  #: outcomes below this chance are no reason for a check
A_DAY = 1440.0  #: minutes of waiting; a check that waits so long is none to do next
MOST_EFFORT = 400_000  #: effort above which only one outcome besides "nothing" is computed


@dataclass(frozen=True)
class CheckPlanner:
    """What the planning of checks needs to know of one case, computed when first used."""

    inference: CaseInference
    may_run: bool  #: whether checks may run the engine
    gauge_next: bool = False  #: whether it may be started to read a trusted gauge
    #: the outcomes worked out so far, by findings and how many of them: each takes a sweep of its own
    _supposed: dict[tuple[tuple[Finding, ...], int], tuple[Outcome, ...]] = field(
        default_factory=dict, init=False, repr=False, compare=False
    )

    @cached_property
    def single_cause_model(self) -> SingleCauseModel:
        """What each probable cause alone would show."""
        return single_cause_model(self.inference.network, self.inference.posterior.marginal)

    @cached_property
    def answered(self) -> frozenset[Finding]:
        """Findings observed or derived, which need no check.

        What a person was asked and does not know can still be looked at.
        """
        case = self.inference.case
        answered = case.answered() - case.denied_unseen() - case.only_asked
        return answered | {d.finding for d in self.inference.result.derived}

    @cached_property
    def openings(self) -> Mapping[Access, Opening]:
        """The openings of this layout."""
        features = self.inference.case.known_features
        return openings_for(lambda f: features.get(f) is State.PRESENT)

    @cached_property
    def opened(self) -> frozenset[Access]:
        """What must be open already, given what has been seen and measured inside."""
        measured = open_for_bearings(self.inference.case)
        out = frozenset(a for place in measured for a in self.tree.closure(place))
        if is_out(self.inference.case):
            out |= self.tree.closure(Access.ENGINE_EASED)
        for checks in self._shown_by:
            ways = {i.access for i in checks}
            if len(ways) == 1:
                out |= self.tree.closure(*ways)
        return out

    @cached_property
    def made(self) -> frozenset[Inspection]:
        """What must have been made already, as nothing else shows what was recorded inside."""
        return frozenset(checks[0] for checks in self._shown_by if len(checks) == 1)

    @cached_property
    def _shown_by(self) -> tuple[tuple[Inspection, ...], ...]:
        """For each finding recorded from inside, the checks that can show it."""
        case, checks = self.inference.case, self.inference.book.inspections.values()
        seen = {
            s.finding: None
            for s in case.finding_records
            if s.stage is Stage.OPENED and s.observation
        }
        return tuple(tuple(i for i in checks if finding in i.reveals) for finding in seen)

    @cached_property
    def tree(self) -> AccessTree:
        """The access tree with a practised hand's times, the engine in place or on a stand."""
        return AccessTree(self.openings, Pace(on_stand=is_out(self.inference.case)))

    @cached_property
    def plan_state(self) -> PlanState:
        """The state of the job before the next check."""
        case, book = self.inference.case, self.inference.book
        done = over(self.made) | looked_into(self) | asked_already(case, book.inspections)
        done |= needless(self.inference)
        there = known_there(self.inference)
        done |= shows_nothing(there)
        answered = self.answered | known_of_the_oil(case)
        answered |= senseless(case, book.findings.values(), there)
        return PlanState(self.single_cause_model.weight, answered, self.opened, done)

    def chooser(
        self,
        pace: Pace | None = None,
        until: float = SURE,
        most_minutes: float | None = None,
        to_see: bool = False,
    ) -> Chooser:
        """The chooser of checks for this case; without running checks under a stop alarm.

        ``until``: probability that confirms a cause; ``most_minutes``: hands-on limit;
        ``to_see``: look only for what shows the leading cause itself.
        """
        case, checks = self.inference.case, self.inference.book.inspections.values()
        features = (f for f, state in case.known_features.items() if state is State.PRESENT)
        seen = self.inference.facts.observations
        there = {f for f, observation in seen.items() if observation.state is State.PRESENT}
        return Chooser(
            self._direct_signs if to_see else self.outcome_tables,
            self.tree if pace is None else AccessTree(self.openings, pace),
            tuple(
                i
                for i in checks
                if (
                    self.may_run
                    or not i.needs_running
                    or (self.gauge_next and i is FIT_A_DIRECT_GAUGE)
                )
                and (not i.only_with or there.intersection(i.only_with))
                and is_there(i, case.known_features.get)
            ),
            Precedence(frozenset(features)),
            until,
            most_minutes,
            to_see,
            SETUP,
        )

    @cached_property
    def outcome_tables(self) -> OutcomeTables:
        """What every check would show."""
        return OutcomeTables(self.single_cause_model)

    @cached_property
    def _direct_signs(self) -> OutcomeTables:
        """The tables of only those findings that the leading cause brings about itself.

        Of a cause that sheds pieces: those of the places in which they lodge.
        """
        first, findings = self.inference.ranking[0].cause, self.inference.book.findings
        places = {place.id for place in places_to_look(self.inference)}
        own = places or {first.id, self.inference.node_of(first.id)}
        direct = {
            name: self.single_cause_model.shows[name]
            for name, parents in self.inference.network.parents.items()
            if own.intersection(parents)
            and name in findings
            and findings[name].stage is not Stage.KNOWN
        }
        return (
            OutcomeTables(replace(self.single_cause_model, shows=direct))
            if direct
            else self.outcome_tables
        )

    @cached_property
    def choice(self) -> Choice | None:
        """The best next check; None where no remaining check can change anything."""
        return best_choice(self)

    def outcomes(self, step: Option, how_many: int = 3) -> tuple[Outcome, ...]:
        """The ranking's leader after each of the most likely outcomes of a check."""
        how_many = how_many if self.inference.posterior.effort <= MOST_EFFORT else 1
        key = step.findings, how_many
        if key not in self._supposed:
            shown = [Supposed(f, {f: Observation(State.PRESENT)}) for f in step.findings[:how_many]]
            nothing = Supposed(None, {f: Observation(State.ABSENT) for f in step.findings})
            self._supposed[key] = tuple(self._suppose([*shown, nothing]))
        return self._supposed[key]

    def either_way(self, finding: Finding) -> dict[str, Outcome]:
        """The outcomes "yes" and "no" of one question; empty where the sum is too large."""
        yes = Supposed(finding, {finding: Observation(State.PRESENT)})
        no = Supposed(None, {finding: Observation(State.ABSENT)})
        return dict(zip(("yes", "no"), self._suppose([yes, no]), strict=False))

    def _suppose(self, supposed: list[Supposed]) -> list[Outcome]:
        known = self.inference
        causes = known.book.causes
        named = (causes[c].state for c in known.network.prior)
        states = [s.id for s in named if s and s.id in known.graph]

        def nodes(evidence: Evidence, marginal: Mapping[str, float]) -> dict[str, str]:
            return {c: known.node_of(c, evidence, marginal) for c in known.network.prior}

        return outcomes(
            known.network, known.evidence, known.posterior, supposed, causes, states, nodes
        )


def best_choice(planner: CheckPlanner, without: Collection[str] = ()) -> Choice | None:
    """The best next check; None where no remaining check can change anything.

    Where the answer is nearly certain, a check whose every outcome leaves it as certain is
    passed over; where it was never seen on the engine, what shows it comes next instead, and
    goes before a check that has no bearing on it.

    ``without``: ids of checks that another way makes, as an interview asks its own questions.
    """
    known, plan_state = planner.inference, planner.plan_state
    book = known.book.inspections
    plan_state = replace(plan_state, done=plan_state.done | {book[id_] for id_ in without})
    if one_repair_settles(known):
        return None
    chooser = planner.chooser()
    choice = chooser.choose(plan_state)
    if choice is not None and choice.inspection.waits_minutes >= A_DAY:
        slow = {i for i in book.values() if i.waits_minutes >= A_DAY}
        sooner = replace(plan_state, done=plan_state.done | slow)
        if quick := chooser.choose(sooner):
            choice, plan_state = quick, sooner
    start = plan_state
    passed = 0
    while choice is not None and passed < PASSED_OVER and changes_nothing(planner, choice.option):
        plan_state = replace(plan_state, done=plan_state.done | {choice.inspection})
        choice = chooser.choose(plan_state)
        passed += 1
    first = known.ranking[0]
    to_be_seen = first.probability >= SURE and not (
        seen_for(known, first.cause) and not places_to_look(known)
    )
    if passed == PASSED_OVER or choice is None:
        return planner.chooser(to_see=True).choose(start) if to_be_seen else None
    if to_be_seen:
        to_see = planner.chooser(to_see=True)
        if not to_see.outcome_tables.view(choice.inspection, plan_state.answered):
            choice = to_see.choose(start) or choice
    called_for = planner.gauge_next and not planner.may_run
    options = chooser.options(plan_state) if called_for else ()
    choice = what_comes_first(choice, lambda: chooser.options(plan_state), known)
    return with_gauge(choice, options, known)


def one_repair_settles(known: CaseInference) -> bool:
    """Whether it is one of several causes that one repair puts right, and that was seen."""
    several = len(taken_together(known)) > 1
    return several and is_seen(known, SURE) and not places_to_look(known)


def known_there(known: CaseInference) -> frozenset[Finding]:
    """Findings that were seen, follow, or belong to the engine."""
    seen = {f for f, o in known.facts.observations.items() if o.state is State.PRESENT}
    derived = {d.finding for d in known.result.derived if d.state is State.PRESENT}
    built = {f for f, state in known.case.known_features.items() if state is State.PRESENT}
    return frozenset(seen | derived | built)


def looked_into(planner: CheckPlanner) -> frozenset[Inspection]:
    """Looks inside that are made, or of which most is answered, without those that measure."""
    known = planner.inference
    seen = {
        s.finding for s in known.case.finding_records if s.stage is Stage.OPENED and s.observation
    }
    mostly = (
        i
        for i in known.book.inspections.values()
        if len(seen.intersection(i.reveals)) >= max(MANY, MOSTLY * len(i.reveals))
    )
    return frozenset(i for i in (*planner.made, *mostly) if not i.measures)


def changes_nothing(planner: CheckPlanner, option: Option) -> bool:
    """Whether the leading cause stays nearly certain whatever the check shows."""
    first = planner.inference.ranking[0]
    return first.probability >= SURE and all(
        o.leads is first.cause and o.leads_with >= SURE
        for o in planner.outcomes(option)
        if o.probability >= RARE
    )
