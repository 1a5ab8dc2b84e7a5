"""Exact ranking of a case against pyAgrum, a general library for Bayesian networks.

LazyPropagation takes full tables, so it gets as many of the case's causes as it holds in tables of
22 variables; ours is timed on that same part. Whole cases go to its engine for Markov fields, as
signed factors. Both answer every marginal we have; the largest difference is printed.
"""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.inference.elimination import posterior
from diagnose.inference.network import Evidence, Network
from diagnose.inference.ordering import forget_orders
from tests.benchmarks.table import Row, faster
from tests.support.nets import restricted
from tests.support.pyagrum_oracle import (
    as_factors,
    as_much_as_fits,
    as_tables,
    asked,
    asked_of_factors,
)
from tests.support.situations import situation

TABLES = {"A51": 22, "B37": 22, "B12": 22, "tern": 22}  #: case: variables in the largest table
FEW = {"A51": 22, "B12": 22}
WHOLE = ("B07", "petrel")


def ranked(network: Network, evidence: Evidence) -> dict[str, float]:
    """Our marginals, worked out from nothing."""
    forget_orders()
    return posterior(network, evidence).marginal


def rows(rounds: int, few: bool) -> Iterator[Row]:
    """Part cases in full tables, then whole cases."""
    for name, most in (FEW if few else TABLES).items():
        yield in_tables(name, most, rounds)
    for name in WHOLE[:1] if few else WHOLE:
        yield in_factors(name, rounds)


def in_tables(name: str, most: int, rounds: int) -> Row:
    """The case with the causes that fit, against LazyPropagation."""
    case = situation(name)
    belief = posterior(case.network, case.evidence).marginal
    likeliest = sorted(case.network.prior, key=lambda c: -belief[c])
    part, small = as_much_as_fits(case.network, case.evidence, likeliest, most)
    net, ours = as_tables(small), ranked(part, case.evidence)

    def theirs() -> dict[str, float]:
        engine = asked(net, case.evidence)
        return {n: float(engine.posterior(n)[1]) for n in ours}

    ratios = faster(rounds, lambda: ranked(part, case.evidence), theirs)
    whole = len(restricted(case.network, set(case.evidence)).prior)
    what = f"ranking {name}, {len(part.prior)} of {whole} causes"
    return Row(what, "pyAgrum LazyPropagation", ratios, ">= 5", agreement(ours, theirs()))


def in_factors(name: str, rounds: int) -> Row:
    """The whole case, against the Markov-field engine."""
    case = situation(name)
    part = restricted(case.network, set(case.evidence))
    field = as_factors(part, case.evidence)
    ours = {n: p for n, p in ranked(case.network, case.evidence).items() if n in part.order}

    def theirs() -> dict[str, float]:
        engine = asked_of_factors(field)
        return {n: float(engine.posterior(n)[1]) for n in ours}

    ratios = faster(rounds, lambda: ranked(case.network, case.evidence), theirs)
    what = f"ranking {name}, all {len(part.prior)} causes"
    return Row(what, "pyAgrum ShaferShenoyMRF", ratios, ">= 5", agreement(ours, theirs()))


def agreement(ours: dict[str, float], theirs: dict[str, float]) -> str:
    """The largest difference. Raises ValueError where the two do not agree."""
    apart = max(abs(p - theirs[n]) for n, p in ours.items())
    if apart > 1e-9:
        raise ValueError(f"the answers differ by {apart:.1e}")
    return f"differ by {apart:.0e}"
