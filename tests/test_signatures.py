"""The network against a published-practice table of signatures, row by row and cause by cause.

Checked against: the trade's table of observable signatures, sections A (pressure pattern) to
J (bearings), restated in ``data/signatures.csv``: what raises a cause and what lowers it.
Directions come from the sources whose keys stand in brackets in the notes (titles in
``knowledge.sources``) and from workshop practice; strengths S, M, W and X (practically rules
out) are its compiler's judgement, kept for the reader and not tested.

What is computed is the network's own likelihood ratio of a finding for a cause, exactly:
P(finding | cause there, context) / P(finding | cause not there, context). The context is the
bare complaint that makes the question meaningful. A finding that does not hang below a cause
can lower it only by explaining the complaint otherwise.
"""

from __future__ import annotations

import csv
import re
from dataclasses import dataclass
from functools import cache
from math import exp
from pathlib import Path

import pytest

from diagnose import causegraph
from diagnose.chaining import Facts, Report, infer
from diagnose.evidence import gather
from diagnose.ranking.elimination import posterior
from diagnose.ranking.network import SEEN, SEEN_NOT_THERE, Evidence, Network
from knowledge import sources
from knowledge.book import the_book
from knowledge.vocabulary import Source, State

TABLE = Path(__file__).parent / "data" / "signatures.csv"
RAISES, LOWERS = 1.001, 0.999  #: a likelihood ratio nearer to 1 than this says nothing
MOST_EXCEPTIONS = 0.15

SECTIONS = {"P": 37, "N": 14, "O": 15, "D": 17, "A": 14, "U": 15, "G": 21, "R": 8, "V": 13, "B": 20}
NAMES_NO_CAUSE = {"A12"}  #: chromium: ring wear, context only

Known = tuple[tuple[str, State], ...]
Beliefs = dict[str, float]


@dataclass(frozen=True, slots=True)
class Signature:
    """One cause of one row of the table."""

    row: str
    finding: str
    state: State
    context: Known
    cause: str
    raises: bool
    strength: str
    exception: str
    note: str

    def __str__(self) -> str:
        seen = self.finding if self.state is State.PRESENT else f"no_{self.finding}"
        told = "+".join(f for f, _ in self.context)
        return f"{self.row}-{told}-{seen}-{'raises' if self.raises else 'lowers'}-{self.cause}"


def known(words: str) -> Known:
    """``gauge_reads_low low_even_cold=absent`` as findings with their states."""
    pairs = (word.partition("=") for word in words.split())
    return tuple((name, State(state or "present")) for name, _, state in pairs)


def signatures() -> list[Signature]:
    """The table, one entry per row and cause."""
    with TABLE.open(encoding="utf-8", newline="") as lines:
        return [
            Signature(
                row["row"],
                row["finding"],
                State(row["state"]),
                known(row["context"]),
                row["cause"],
                {"raises": True, "lowers": False}[row["direction"]],
                row["strength"],
                row["exception"],
                row["note"],
            )
            for row in csv.DictReader(lines)
        ]


ROWS = signatures()
RULE = [s for s in ROWS if not s.exception]
EXCEPTIONS = [s for s in ROWS if s.exception]


@cache
def heard(context: Known, finding: str, state: State) -> tuple[Network, Evidence, Evidence]:
    """The network of a case; what speaks in it with the finding, and without."""
    book = the_book()
    before = {book.findings[name]: Report(told) for name, told in context}
    after = {**before, book.findings[finding]: Report(state)}
    rules = book.rules.values()
    conclusions = infer(rules, Facts(after))
    graph = causegraph.build(book.causes, conclusions)
    return (
        causegraph.as_network(graph),
        gather(after, conclusions, graph),
        gather(before, infer(rules, Facts(before)), graph),
    )


@cache
def beliefs(context: Known, finding: str, state: State) -> tuple[Beliefs, Beliefs]:
    """P(cause) for every cause with the finding, and without, in one and the same network."""
    network, after, before = heard(context, finding, state)
    return tuple(posterior(network, told).marginal for told in (after, before))


def odds(chance: float) -> float:
    """Chance for over chance against."""
    return chance / (1.0 - chance)


def likelihood_ratio(signature: Signature) -> float:
    """How much likelier the finding is with the cause than without, by Bayes from the odds.

    0 where the finding excludes the cause.
    """
    after, before = beliefs(signature.context, signature.finding, signature.state)
    if signature.cause not in before:
        return 0.0
    return odds(after[signature.cause]) / odds(before[signature.cause])


def log_chance(signature: Signature, there: bool) -> float:
    """ln P(finding | context, cause there or not), with the cause itself put in as evidence."""
    network, after, before = heard(signature.context, signature.finding, signature.state)
    given = {signature.cause: SEEN if there else SEEN_NOT_THERE}
    with_it, without = (posterior(network, {**told, **given}) for told in (after, before))
    return with_it.log_evidence - without.log_evidence


def agrees(signature: Signature) -> bool:
    """Whether the network's ratio has the row's direction."""
    ratio = likelihood_ratio(signature)
    return ratio > RAISES if signature.raises else ratio < LOWERS
