"""What learning from closed jobs is worth; ``python -m tests.studies.history_study [SHOPS [JOBS]]``.

Imagined shops whose causes are commoner or rarer than in the book, each by its own factor, drawn
evenly in its logarithm around one. A shop closes jobs on the book's layouts, some on engines just
rebuilt, with high mileage and so on. After 0 to 80 of them the ranking of fresh jobs of that shop
is scored: the logarithm of the share that the true cause is given (nats, higher is better), and
how often it stands first and among the first three. A shop that is just like the book is the
control: there learning can only do harm.
"""

from __future__ import annotations

import random
import sys
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, fields, replace
from functools import cache
from math import exp, log
from statistics import mean

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.history.learning import JobShares, learn, plain_shares, shares
from diagnose.inference.causegraph import as_network, build
from diagnose.inference.elimination import posterior
from knowledge.book import the_book
from knowledge.model import Finding, Kind, Shifts, Stage

BOOK = the_book()
#: the facts of history that change the rates of causes
MARKED = tuple(BOOK.findings[each.name] for each in fields(Shifts))
NUMBERS = (0, 1, 2, 3, 5, 20, 80)
SPREAD = 1.0  #: of the logarithm of a shop's factors
PAST = 0.5  #: chance that something is known of an engine's past
REPORTED_IF_THERE, REPORTED_IF_NOT = 0.7, 0.1
OUTSIDE = "not_in_the_book"
TRIES = 60
LAYOUTS = sorted(name for name in BOOK.layouts if name != "unknown")
KNOWN = [f for f in BOOK.findings.values() if f.kind is Kind.SEEN and f.stage is Stage.KNOWN]
ABOUT_PRESSURE = frozenset(
    f for f in KNOWN if any(w in f.says + f.asks for w in ("pressure", "gauge", "needle", "lamp"))
)


@dataclass(frozen=True)
class Engine:
    """A layout and what happened to it before."""

    layout: str
    past: tuple[Finding, ...]


@dataclass(frozen=True, eq=False)
class Fresh:
    """A job that has just come in: what was reported, and the true cause."""

    cause: str
    answer: Diagnosis


@dataclass(frozen=True)
class Scored:
    """How the true causes of some jobs fared."""

    log_score: float
    first: float
    among_three: float


def text_of(engine: Engine, reported: Sequence[tuple[Finding, bool]] = ()) -> str:
    """A case of that engine."""
    entries = [*((f, True) for f in engine.past), *reported]
    return f'schema = 1\n[engine]\nlayout = "{engine.layout}"\n' + "".join(
        f'[[finding]]\nno = {i}\nwhat = "{f.id}"\nstate = "{"present" if seen else "absent"}"\n'
        for i, (f, seen) in enumerate(entries, 1)
    )


@cache
def plain(engine: Engine) -> Diagnosis:
    """The engine before anything is known of its pressure."""
    return Diagnosis(BOOK, from_text(text_of(engine), None, BOOK))


@cache
def book_shares(engine: Engine) -> Mapping[str, float]:
    """The book's shares for the engine."""
    return shares(BOOK, plain(engine).inference.result)


def an_engine(rng: random.Random) -> Engine:
    """Any layout; something of its past, or nothing."""
    reported = (rng.choice(MARKED),) if rng.random() < PAST else ()
    return Engine(rng.choice(LAYOUTS), reported)


def a_shop(rng: random.Random, spread: float) -> dict[str, float]:
    """The shop's own factor on the rate of each cause."""
    return {c: exp(rng.gauss(0.0, spread)) for c in BOOK.causes}


def a_cause(shop: Mapping[str, float], engine: Engine, rng: random.Random) -> str:
    """What it was, by the shop's true rates."""
    known = {c: p * shop[c] for c, p in book_shares(engine).items() if c != OUTSIDE}
    return rng.choices(list(known), list(known.values()))[0]


def closed(shop: Mapping[str, float], rng: random.Random) -> JobShares:
    """A closed job of the shop."""
    engine = an_engine(rng)
    return JobShares((a_cause(shop, engine, rng),), book_shares(engine))


def fresh(shop: Mapping[str, float], rng: random.Random) -> Fresh:
    """A job that comes in with a complaint about pressure or its gauge."""
    while True:
        engine = an_engine(rng)
        cause = a_cause(shop, engine, rng)
        for _ in range(TRIES):
            there = _happens(plain(engine), cause, rng)
            reported = [
                (f, there[f.id])
                for f in KNOWN
                if f.id in there
                and f not in engine.past
                and rng.random() < (REPORTED_IF_THERE if there[f.id] else REPORTED_IF_NOT)
            ]
            if any(seen and f in ABOUT_PRESSURE for f, seen in reported):
                break
        else:
            continue
        answer = Diagnosis(BOOK, from_text(text_of(engine, reported), None, BOOK))
        if not answer.inference.left_out:
            return Fresh(cause, answer)


def _happens(answer: Diagnosis, cause: str, rng: random.Random) -> dict[str, bool]:
    """What is there when this cause holds and no other."""
    network = answer.inference.network
    there = {name: name == cause for name in network.prior}
    for node in network.order:
        if node not in there:
            there[node] = rng.random() < network.chance(node, there)
    return there


def ranked(job: Fresh, factor: Mapping[str, float]) -> dict[str, float]:
    """P(cause) for a fresh job with what was learned."""
    answer = job.answer
    if set(factor.values()) == {1.0}:
        return {c: answer.inference.posterior.marginal[c] for c in answer.inference.network.prior}
    network = as_network(build(BOOK.causes, answer.inference.result, factor))
    affordable = answer.inference.network.inhibitors
    kept = {n: by for n, by in network.inhibitors.items() if n in affordable}
    network = replace(network, inhibitors=kept)
    found = posterior(network, answer.inference.evidence).marginal
    return {c: found[c] for c in network.prior}


def scored(jobs: Sequence[Fresh], factor: Mapping[str, float]) -> Scored:
    """The ranking of some jobs."""
    logs, places = [], []
    for job in jobs:
        chance = ranked(job, factor)
        logs.append(log(chance[job.cause] / sum(chance.values())))
        places.append(sum(p > chance[job.cause] for p in chance.values()))
    return Scored(mean(logs), mean(p < 1 for p in places), mean(p < 3 for p in places))


def one_shop(
    rng: random.Random, spread: float, jobs: int, numbers: Sequence[int]
) -> dict[int, Scored]:
    """One shop's fresh jobs after so many closed ones."""
    shop = a_shop(rng, spread)
    seen = [closed(shop, rng) for _ in range(max(numbers))]
    todo = [fresh(shop, rng) for _ in range(jobs)]
    book = plain_shares(BOOK)
    return {n: scored(todo, learn(book, seen[:n]).factor) for n in numbers}


def study(
    shops: int, jobs: int, spread: float, numbers: Sequence[int] = NUMBERS, seed: int = 3
) -> list[dict[int, Scored]]:
    """So many shops; same seed, same figures."""
    rng = random.Random(seed)
    return [one_shop(rng, spread, jobs, numbers) for _ in range(shops)]


def lines_of(rows: Sequence[Mapping[int, Scored]]) -> Iterator[str]:
    """The table."""
    yield "closed jobs   log score   against the book   worst shop   first   first three"
    for n in rows[0]:
        gains = [row[n].log_score - row[0].log_score for row in rows]
        yield (
            f"{n:11}{mean(row[n].log_score for row in rows):12.3f}{mean(gains):+19.3f}"
            f"{min(gains):+13.3f}{mean(row[n].first for row in rows):8.0%}"
            f"{mean(row[n].among_three for row in rows):14.0%}"
        )


def main(arguments: Sequence[str]) -> None:
    """Print the shops that differ from the book, and the control."""
    shops = int(arguments[0]) if arguments else 30
    jobs = int(arguments[1]) if len(arguments) > 1 else 60
    for spread, title in ((SPREAD, "shops of their own"), (0.0, "shops just like the book")):
        print(f"== {title}: {shops} shops, {jobs} fresh jobs each")
        for line in lines_of(study(shops, jobs, spread)):
            print(line)


if __name__ == "__main__":
    main(sys.argv[1:])
