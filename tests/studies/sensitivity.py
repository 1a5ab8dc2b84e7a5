"""``python -m tests.studies.sensitivity``: what one wrong guess would do to the confirmed cases.

Each link's strength, each cause's rate and each leak is moved one step of its scale up and down,
one at a time, and the confirmed cases are ranked again at all three stages. Nothing is estimated:
a move of a link is brought in as evidence beside the case's own, which changes the probabilities
exactly as the move does, so that many moves share one sweep.
"""

from __future__ import annotations

import multiprocessing
import time
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import NamedTuple, TypeVar

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.inference import causegraph
from diagnose.inference.elimination import Posterior, posteriors
from diagnose.inference.network import Likelihood, Network
from diagnose.reasoning.case_inference import Solution
from knowledge.book import the_book
from knowledge.model import Background, Rate, Stage, Strength
from tests.confirmed.scoring import STAGES, brier, case_files, gold, score_of

STRENGTHS = sorted(s.value for s in Strength)
BACKGROUNDS = sorted(b.value for b in Background)
RATES = sorted(r.value for r in Rate)
LEAK_STEP = 3.0  #: of a condition's leak, which has no scale; backgrounds step by about as much
TOGETHER = 64  #: moves in one sweep, where the case is small
NUMBERS = 4_000_000  #: in one sweep of all its moves
SHOWN = 12  #: lines of each table


class Move(NamedTuple):
    """One guess moved one step: 'link', 'rate' or 'leak'; up or down."""

    sort: str
    parent: str  #: of a link; empty otherwise
    name: str
    up: bool

    def __str__(self) -> str:
        way = "up" if self.up else "down"
        return f"{self.parent} -> {self.name} {way}" if self.parent else f"{self.name} {way}"


@dataclass(frozen=True)
class Moved:
    """What a move makes of one case at one stage."""

    rank: int
    off: float  #: the case's part of the Brier score


Key = tuple[str, Stage]  #: a case and a stage


def steps(value: float, scale: Sequence[float]) -> Iterator[tuple[bool, float]]:
    """The next value of the scale above and the next below; nothing beyond its ends."""
    above = [s for s in scale if s > value * 1.001]
    below = [s for s in scale if s < value * 0.999]
    if above:
        yield True, above[0]
    if below:
        yield False, below[-1]


# ----------------------------------------------------------------- one case, all its moves


def link_moves(answer: Diagnosis) -> Iterator[tuple[Move, float, float]]:
    """Moves of the links that bear on the case's evidence: strength as it is and as it would be."""
    network = answer.inference.network
    for child in sorted(network.ancestors(set(answer.inference.evidence))):
        for parent, strength in network.parents.get(child, {}).items():
            for up, other in steps(strength, STRENGTHS):
                yield Move("link", parent, child, up), strength, other


def rate_moves(
    answer: Diagnosis, causes: Iterable[str] | None = None
) -> Iterator[tuple[Move, Network]]:
    """Moves of the rates of these causes, by default of all, with the network after the move.

    A rate moved is the same as a shop's factor on the cause.
    """
    for id_ in answer.inference.network.prior if causes is None else causes:
        rate = answer.book.causes[id_].rate.value
        for up, other in steps(rate, RATES):
            factor = {id_: other / rate}
            graph = causegraph.build(answer.book.causes, answer.inference.result, factor)
            yield Move("rate", "", id_, up), causegraph.as_network(graph)


def leak_moves(answer: Diagnosis) -> Iterator[tuple[Move, Network]]:
    """Moves of the leaks that bear on the evidence, with the network after the move."""
    network = answer.inference.network
    for name in sorted(network.ancestors(set(answer.inference.evidence))):
        if name in network.leak:
            leak = network.leak[name]
            found = name in answer.book.findings
            scale = BACKGROUNDS if found else [leak / LEAK_STEP, leak, leak * LEAK_STEP]
            for up, other in steps(leak, scale):
                moved = replace(network, leak={**network.leak, name: other})
                yield Move("leak", "", name, up), moved


def posteriors_of_links(
    answer: Diagnosis, moves: Sequence[tuple[Move, float, float]]
) -> list[Posterior]:
    """The posterior after each move of a link, all in one sweep.

    Between parent and child a node is set that the parent brings about with the strength and
    that always brings the child about. Evidence on it and on the parent then turns the strength
    q into r: (1 - r)/(1 - q) where it is absent, r/q where present, and (1 - q)/(1 - r) where the
    parent is absent, which leaves everything else as it was.
    """
    network = answer.inference.network
    leak, parents = dict(network.leak), {n: dict(p) for n, p in network.parents.items()}
    variants = []
    for move, q, r in moves:
        between = f"{move.parent} > {move.name}"
        leak[between] = 0.0
        parents[between] = {move.parent: q}
        parents[move.name].pop(move.parent, None)
        parents[move.name][between] = 1.0
        own = answer.inference.evidence.get(move.parent, Likelihood(1.0, 1.0))
        variants.append(
            {
                **answer.inference.evidence,
                between: Likelihood((1.0 - r) / (1.0 - q), r / q),
                move.parent: Likelihood(own.if_absent * (1.0 - q) / (1.0 - r), own.if_present),
            }
        )
    return posteriors(replace(network, leak=leak, parents=parents), variants)


def again(answer: Diagnosis, network: Network, found: Posterior) -> Diagnosis:
    """The same case where the moved network gave this posterior."""
    old, inference = answer.inference, replace(answer.inference)
    vars(inference).update(
        result=old.result,
        graph=old.graph,
        survey=old.survey,
        network=network,
        _solution=Solution(old.evidence, found, old.left_out),
        harmless=old.harmless,
    )
    moved = replace(answer)
    vars(moved)["inference"] = inference
    return moved


def all_moved(answer: Diagnosis) -> Iterator[tuple[Move, Diagnosis]]:
    """The case ranked again after every move that bears on it."""
    together = max(2, min(TOGETHER, NUMBERS // max(answer.inference.posterior.effort, 1)))
    links = list(link_moves(answer))
    for part in parts(links, together):
        for (move, _, _), found in zip(part, posteriors_of_links(answer, part), strict=True):
            yield move, again(answer, answer.inference.network, found)
    for move, network in (*rate_moves(answer), *leak_moves(answer)):
        yield move, again(answer, network, posteriors(network, [answer.inference.evidence])[0])


Any_ = TypeVar("Any_")


def parts(things: Sequence[Any_], size: int) -> Iterator[Sequence[Any_]]:
    """The things in groups of a size."""
    yield from (things[i : i + size] for i in range(0, len(things), size))


def standing(name: str, answer: Diagnosis) -> Moved:
    """Where the confirmed cause stands, and the case's part of the Brier score."""
    score = score_of(name, answer)
    return Moved(score.rank, brier([score]))


def moved(task: tuple[Path, Stage]) -> tuple[Key, Moved, dict[Move, Moved]]:
    """One case at one stage: as it stands, and after every move that changes anything."""
    path, stage = task
    book = the_book()
    answer = Diagnosis(book, load(path, book), stage)
    now = standing(path.stem, answer)
    changed = {}
    for move, after in all_moved(answer):
        then = standing(path.stem, after)
        if then.rank != now.rank or abs(then.off - now.off) > 1e-9:
            changed[move] = then
    return (path.stem, stage), now, changed


# ------------------------------------------------------------------------ all cases together


@dataclass(frozen=True)
class Rates:
    """Hit rates and Brier score of one stage."""

    first: float
    three: float
    five: float
    brier: float

    @staticmethod
    def of(these: Sequence[Moved]) -> Rates:
        """Of these cases."""
        many = len(these)
        first, three, five = (sum(m.rank <= n for m in these) / many for n in (1, 3, 5))
        return Rates(first, three, five, sum(m.off for m in these) / many)


@dataclass(frozen=True)
class Found:
    """Every case as it stands, and what every move makes of those it touches."""

    now: Mapping[Key, Moved]
    after: Mapping[Move, Mapping[Key, Moved]]

    def rates(self, stage: Stage, move: Move | None = None) -> Rates:
        """The rates of a stage, after a move if one is named."""
        then = {**self.now, **self.after[move]} if move else self.now
        return Rates.of([m for (_, s), m in then.items() if s is stage])

    def change(self, move: Move) -> tuple[float, float, float, float]:
        """Largest change over the stages: first, top 3, top 5 (share of cases), Brier; signed."""
        pairs = [(self.rates(s, move), self.rates(s)) for s in STAGES]
        return (
            max((a.first - b.first for a, b in pairs), key=abs),
            max((a.three - b.three for a, b in pairs), key=abs),
            max((a.five - b.five for a, b in pairs), key=abs),
            max((a.brier - b.brier for a, b in pairs), key=abs),
        )


def study(tasks: Sequence[tuple[Path, Stage]], processes: int = 2) -> Found:
    """Every move on every case and stage."""
    now: dict[Key, Moved] = {}
    after: dict[Move, dict[Key, Moved]] = {}
    with multiprocessing.Pool(processes) as pool:
        for key, standing_, changed in pool.imap_unordered(moved, tasks):
            now[key] = standing_
            for move, then in changed.items():
                after.setdefault(move, {})[key] = then
    return Found(now, after)


def tasks_of(paths: Sequence[Path]) -> list[tuple[Path, Stage]]:
    """The cases that count, at each stage."""
    return [(p, s) for s in reversed(STAGES) for p in paths if not gold()[p.stem].get("doubtful")]


def report(found: Found) -> Iterator[str]:
    """The tables and what they come to."""
    cases = len({name for name, _ in found.now})
    yield f"{cases} cases; one of them is {100 / cases:.1f} points"
    yield f"{'':22}  first   top 3   top 5   Brier"
    for stage, label in STAGES.items():
        r = found.rates(stage)
        yield f"{label:22} {r.first:6.1%}  {r.three:6.1%}  {r.five:6.1%}   {r.brier:.3f}"
    for sort in ("link", "rate", "leak"):
        moves = [m for m in found.after if m.sort == sort]
        changes = {m: found.change(m) for m in moves}
        largest = sorted(moves, key=lambda m: (-abs(changes[m][0]), -abs(changes[m][3]), m))
        yield ""
        yield f"{sort}s: largest movers, points of the stage moved most"
        yield f"{'':66} first top 3 top 5  Brier"
        for move in largest[:SHOWN]:
            first, three, five, off = changes[move]
            row = f"{100 * first:+5.1f} {100 * three:+5.1f} {100 * five:+5.1f} {off:+.3f}"
            yield f"{move!s:66.66} {row}"
        still = sum(1 for m in moves if not changes[m][0])
        most = [max((abs(changes[m][i]) for m in moves), default=0.0) for i in range(4)]
        yield (
            f"{len(moves):,} moves change something; {still:,} of them no first place. No single "
            f"one moves the first-hit rate by more than {100 * most[0]:.1f} points, top 3 by "
            f"{100 * most[1]:.1f}, top 5 by {100 * most[2]:.1f}, Brier by {most[3]:.3f}."
        )


def main() -> None:
    """Print the tables."""
    begun = time.perf_counter()
    found = study(tasks_of(case_files()))
    print("\n".join(report(found)))
    print(f"\n{(time.perf_counter() - begun) / 60:.1f} minutes")


if __name__ == "__main__":
    main()
