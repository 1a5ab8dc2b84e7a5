"""Where the plan looks in the real cases; ``python -m tests.studies.plan_confirmed``.

For each confirmed case, given only the complaint: does a check that shows the confirmed cause stand
among the first five of the plan, and how many minutes until it is done, beside the printed tables
(row by row, each row by the check that shows its causes best). In the second run the plan is made
again after each check with what the case records there; what it does not record is unknown.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.planning.access_tree import AccessTree
from diagnose.planning.options import PlanState
from diagnose.planning.sequence import LONGEST, planned_sequence
from diagnose.planning.single_cause import SingleCauseModel
from knowledge.book import the_book
from knowledge.model import Finding, Stage
from knowledge.work import Access, Inspection
from tests.confirmed.scoring import case_files, gold
from tests.studies.handbook_agreement import Table
from tests.studies.plan_study import CHECKS, SHOWS_IT, low_tables

FIRST = 5
SHOWN = 0.2  #: a check shows a cause if such a sign is there so often


def shows(table: SingleCauseModel, check: Inspection, causes: frozenset[str]) -> float:
    """The chance that the check brings a finding that points to one of these causes only."""
    best = 0.0
    for number, cause in enumerate(table.causes):
        if cause not in causes:
            continue
        miss = 1.0
        for finding in check.reveals:
            p = table.shows.get(finding.id)
            if p is None:
                continue
            rest = float(p @ table.weight) - float(p[number] * table.weight[number])
            rest /= max(1.0 - float(table.weight[number]), 1e-9)
            if p[number] >= SHOWS_IT * rest:
                miss *= 1.0 - float(p[number])
        best = max(best, 1.0 - miss)
    return best


@dataclass(frozen=True)
class Complaint:
    """One real case as it stood when only the complaint was known."""

    name: str
    case: Case
    answer: Diagnosis
    causes: frozenset[str]
    right: frozenset[Inspection]  #: checks that show the confirmed cause

    @property
    def known(self) -> frozenset[Finding]:
        """What was answered by then."""
        return frozenset(self.case.facts(Stage.KNOWN).observations)


def complaint_of(path: Path) -> Complaint | None:
    """Return a case; None where it is doubtful or no check of the book shows its cause."""
    label = gold()[path.stem]
    if label.get("doubtful"):
        return None
    case = load(path, the_book())
    answer = Diagnosis(the_book(), case, Stage.KNOWN)
    causes = frozenset(str(a) for a in label["accept"])  # type: ignore[attr-defined]
    right = frozenset(
        c for c in CHECKS if shows(answer.planner.single_cause_model, c, causes) >= SHOWN
    )
    return Complaint(path.stem, case, answer, causes, right) if right else None


def planned(one: Complaint, most: int = LONGEST) -> list[Inspection]:
    """The checks of the plan made from the complaint alone; so many of them."""
    start = PlanState(one.answer.planner.single_cause_model.weight, one.known, frozenset())
    return [
        link.choice.option.inspection
        for link in planned_sequence(one.answer.planner.chooser(), start, most)
    ]


def made_again(one: Complaint, most: int = 40) -> Iterator[Inspection]:
    """The checks, the plan made again after each with what the case records as found."""
    found = one.case.facts(Stage.OPENED).observations
    known, opened, done = set(one.known), frozenset[Access](), frozenset[Inspection]()
    answer = one.answer
    for _ in range(most):
        now = PlanState(answer.planner.single_cause_model.weight, frozenset(known), opened, done)
        choice = answer.planner.chooser().choose(now)
        if choice is None:
            return
        check = choice.option.inspection
        yield check
        known |= set(check.reveals)
        opened = answer.planner.tree.after(check, opened)
        done |= {check}
        if any(f in found for f in check.reveals):
            answer = Diagnosis(the_book(), _as_known(one, frozenset(known)), Stage.OPENED)


def _as_known(one: Complaint, known: frozenset[Finding]) -> Case:
    from dataclasses import replace

    finding_records = tuple(s for s in one.case.finding_records if s.finding in known)
    readings = tuple(r for r in one.case.readings if r.stage is Stage.KNOWN)
    return replace(one.case, finding_records=finding_records, readings=readings, measurements=())


def by_table(one: Complaint, table: Table) -> list[Inspection]:
    """A printed table row by row."""
    done: list[Inspection] = []
    for row in table.rows:
        chance = {
            c: shows(one.answer.planner.single_cause_model, c, frozenset(row.causes))
            for c in CHECKS
        }
        best = max(chance.values())
        if best > 0.05:
            tree = one.answer.planner.tree
            good = [c for c, p in chance.items() if p >= 0.7 * best and c not in done]
            if good:
                done.append(min(good, key=lambda c: (_minutes(tree, [c]), c.id)))
    return done


def _minutes(tree: AccessTree, checks: list[Inspection]) -> float:
    opened, total = frozenset[Access](), 0.0
    for check in checks:
        total += tree.opening_minutes(tree.way(check.access, opened) or ())
        total += tree.check_minutes(check)
        opened = tree.after(check, opened)
    return total


def minutes_to(one: Complaint, checks: list[Inspection], at_most: float) -> float:
    """Minutes until a right check is done; ``at_most`` where the order has none."""
    for i, check in enumerate(checks):
        if check in one.right:
            return min(_minutes(one.answer.planner.tree, checks[: i + 1]), at_most)
    return at_most


def strip_minutes(one: Complaint) -> float:
    """Minutes to open everything and look at everything."""
    tree = one.answer.planner.tree
    return tree.opening_minutes(list(tree.openings.values())) + sum(c.minutes for c in CHECKS)


def main() -> None:
    """Print the figures."""
    cases = [t for t in map(complaint_of, case_files()) if t is not None]
    lines = {t.name: planned(t) for t in cases}
    again = {t.name: list(made_again(t)) for t in cases}
    for title, orders in (("as first planned", lines), ("made again", again)):
        first = [bool(t.right & set(orders[t.name][:FIRST])) for t in cases]
        spent = [minutes_to(t, orders[t.name], strip_minutes(t)) for t in cases]
        print(
            f"{title}: {sum(first)} of {len(cases)} ({np.mean(first):.0%}) have a check that shows "
            f"the cause among the first {FIRST}; minutes to it: mean {np.mean(spent):.0f}, "
            f"median {np.median(spent):.0f}"
        )
    rows = []
    for table in low_tables():
        spent = [minutes_to(t, by_table(t, table), strip_minutes(t)) for t in cases]
        first = [bool(t.right & set(by_table(t, table)[:FIRST])) for t in cases]
        rows.append(
            (float(np.mean(spent)), float(np.median(spent)), float(np.mean(first)), str(table))
        )
    print("printed tables (a case whose cause the table does not lead to costs a full strip):")
    for mean, median, share, name in sorted(rows):
        print(
            f"  {name[:40]:40} mean {mean:6.0f}  median {median:6.0f}  among first five {share:.0%}"
        )


if __name__ == "__main__":
    main()
