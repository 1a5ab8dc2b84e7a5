"""Rules to a fixpoint against CLIPS, which holds the same rules (see ``tests.support.clips_oracle``).

Ours starts from the rules as they stand in the book at every run. CLIPS is timed with its rules
built already (facts in, run, conclusions out), and with building them as well.
"""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.inference.chaining import infer
from knowledge.book import the_book
from tests.benchmarks.table import Row, faster
from tests.support.clips_oracle import Oracle, flat
from tests.support.situations import facts_of_case

CASES = ("B07", "gannet")


def rows(rounds: int, few: bool) -> Iterator[Row]:
    """Without CLIPS's build, then with it."""
    for name in CASES[:1] if few else CASES:
        yield from of_case(name, rounds)


def of_case(name: str, rounds: int) -> Iterator[Row]:
    """Both rows of one case. Raises ValueError where CLIPS concludes something else."""
    rules, facts = list(the_book().statements), facts_of_case(name)
    ready = Oracle(rules)
    ready.readied(facts)

    def ours() -> set[tuple[object, ...]]:
        return flat(infer(rules, facts))

    if ready.run(facts) != ours():
        raise ValueError(f"{name}: CLIPS concludes something else")
    what = f"rules to fixpoint, {name}"
    alone = faster(rounds, ours, lambda: ready.run(facts))
    yield Row(what, "CLIPS, its rules built before", alone, ">= 10")
    built = faster(rounds, ours, lambda: Oracle(rules).concludes(facts))
    yield Row(what, "CLIPS with its build", built, ">= 10")
