"""The network against a published-practice table of signatures, row by row and cause by cause.

Checked against: the trade's table of observable signatures, sections A (pressure pattern) to
J (bearings), restated in ``data/signatures.csv``: what raises a cause and what lowers it.
Directions come from the sources whose keys stand in brackets in the notes (titles in
``knowledge.sources``) and from workshop practice; strengths S, M, W and X (practically rules
out) are its compiler's judgement: tested is their order, that what practically rules out has a
likelihood ratio below 0.2, and that what is strong moves the odds by half as much again. What does
not reach that stands in ``data/signature_strengths.toml``, cause by cause, with the reason.

What is computed is the network's own likelihood ratio of a finding for a cause, exactly:
P(finding | cause there, context) / P(finding | cause not there, context). The context is the
bare complaint that makes the question meaningful. A finding that does not hang below a cause
can lower it only by explaining the complaint otherwise. Where the table says "all real causes"
(P26) or "all pump, bearing and relief causes" (P25) they are written out one by one.
"""

from __future__ import annotations

import csv
import re
import tomllib
from dataclasses import dataclass
from functools import cache
from math import exp, log10
from pathlib import Path
from statistics import median
from typing import Any

import pytest

from diagnose.inference import causegraph
from diagnose.inference.chaining import Facts, InferenceResult, Observation, infer
from diagnose.inference.elimination import posterior
from diagnose.inference.evidence import gather
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Evidence, Network
from knowledge import sources
from knowledge.book import the_book
from knowledge.model import Finding, Source, State

TABLE = Path(__file__).parents[1] / "data" / "signatures.csv"
RAISES, LOWERS = 1.001, 0.999  #: a likelihood ratio nearer to 1 than this says nothing
MOST_EXCEPTIONS = 19  #: as many as today

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
        context = "+".join(f for f, _ in self.context)
        return f"{self.row}-{context}-{seen}-{'raises' if self.raises else 'lowers'}-{self.cause}"


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


_CONCLUDED: dict[tuple[tuple[str, State], ...], InferenceResult] = {}


def concluded(observations: dict[Finding, Observation]) -> InferenceResult:
    """What the rules conclude; of the same complaint once for all its rows."""
    key = tuple((f.id, o.state) for f, o in observations.items())
    if key not in _CONCLUDED:
        _CONCLUDED[key] = infer(the_book().statements, Facts(observations))
    return _CONCLUDED[key]


@cache
def network_and_evidence(
    context: Known, finding: str, state: State
) -> tuple[Network, Evidence, Evidence]:
    """Return the network of a case and its evidence with the finding and without."""
    book = the_book()
    before = {book.findings[name]: Observation(reported) for name, reported in context}
    after = {**before, book.findings[finding]: Observation(state)}
    conclusions = concluded(after)
    graph = causegraph.build(book.causes, conclusions)
    return (
        causegraph.as_network(graph),
        gather(after, conclusions, graph),
        gather(before, concluded(before), graph),
    )


@cache
def beliefs(context: Known, finding: str, state: State) -> tuple[Beliefs, Beliefs]:
    """P(cause) for every cause with the finding, and without, in one and the same network."""
    network, after, before = network_and_evidence(context, finding, state)
    return posterior(network, after).marginal, posterior(network, before).marginal


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
    network, after, before = network_and_evidence(
        signature.context, signature.finding, signature.state
    )
    given = {signature.cause: SEEN if there else SEEN_NOT_THERE}
    with_it = posterior(network, {**after, **given}).log_evidence
    return with_it - posterior(network, {**before, **given}).log_evidence


def agrees(signature: Signature) -> bool:
    """Whether the network's ratio has the row's direction."""
    ratio = likelihood_ratio(signature)
    return ratio > RAISES if signature.raises else ratio < LOWERS


def rows_of(section: str, how_many: int) -> set[str]:
    """Every row id of a section: ``P01``, ``P02`` and so on."""
    return {f"{section}{n:02}" for n in range(1, how_many + 1)}


def test_every_row_of_the_published_table_is_here() -> None:
    wanted = set().union(*(rows_of(*section) for section in SECTIONS.items())) - NAMES_NO_CAUSE
    assert {s.row for s in ROWS} == wanted


def test_every_word_is_in_the_book_and_nothing_is_said_twice() -> None:
    book = the_book()
    context = {name for s in ROWS for name, _ in s.context}
    assert {s.finding for s in ROWS} | context <= set(book.findings)
    assert {s.cause for s in ROWS} <= set(book.causes)
    assert {s.strength for s in ROWS} <= set("SMWX")
    assert len({str(s) for s in ROWS}) == len(ROWS)


def test_every_source_named_is_among_the_books_sources() -> None:
    keys = {s.key for s in vars(sources).values() if isinstance(s, Source)}
    named = {
        key
        for s in ROWS
        for group in re.findall(r"\[(.*?)\]", s.note + s.exception)
        for key in group.split(", ")
    }
    assert named <= keys


@pytest.mark.parametrize("signature", RULE, ids=str)
def test_finding_moves_cause_as_the_trade_states(signature: Signature) -> None:
    assert agrees(signature), f"likelihood ratio {likelihood_ratio(signature):.4f}"


@pytest.mark.parametrize("signature", EXCEPTIONS, ids=str)
def test_listed_exception_is_still_one(signature: Signature) -> None:
    """An exception that agrees by now must lose its reason in the table."""
    assert not agrees(signature), f"agrees now: {signature.exception}"
    assert signature.exception.startswith(("book disagrees: ", "open: "))


def test_exceptions_are_few() -> None:
    assert len(EXCEPTIONS) <= MOST_EXCEPTIONS


@pytest.mark.parametrize("signature", RULE[::40], ids=str)
def test_odds_give_the_ratio_of_the_two_chances(signature: Signature) -> None:
    """The quick way by Bayes and the plain way, cause put in as evidence, give one number."""
    plain = exp(log_chance(signature, True) - log_chance(signature, False))
    assert likelihood_ratio(signature) == pytest.approx(plain, rel=1e-6)


# ------------------------------------------------------------------------------ strengths

RULED_OUT = 0.2  #: "practically rules out": a likelihood ratio below this
STRONG = 1.5  #: a strong row moves the odds at least so far, up or down
MOST_WEAK, MOST_MILD = 12, 3  #: rows, as many as today
LISTS = tomllib.loads(
    (Path(__file__).parents[1] / "data" / "signature_strengths.toml").read_text("utf-8")
)
RULES_OUT = [s for s in RULE if s.strength == "X" and not s.raises]
STRONG_ROWS = [s for s in RULE if s.strength == "S"]


def listed(kind: str, signature: Signature) -> list[dict[str, Any]]:
    """The entries of a kind that say why the network falls short of the row's strength."""
    return [w for w in LISTS[kind] if signature.row in w["rows"] and signature.cause in w["causes"]]


def strength_of(signature: Signature) -> float:
    """How far the row moves the odds in its own direction: above one."""
    ratio = max(likelihood_ratio(signature), 1e-9)
    return ratio if signature.raises else 1.0 / ratio


@pytest.mark.parametrize("signature", RULES_OUT, ids=str)
def test_what_practically_rules_out_does_or_says_why_not(signature: Signature) -> None:
    """Below 0.2, or listed with a reason and no weaker than when it was listed."""
    ratio, entries = likelihood_ratio(signature), listed("weak", signature)
    if entries:
        (entry,) = entries
        assert RULED_OUT <= ratio <= entry["most"], "the entry must go, or the ratio has risen"
    else:
        assert ratio < RULED_OUT


@pytest.mark.parametrize("signature", STRONG_ROWS, ids=str)
def test_a_strong_row_moves_the_odds_or_says_why_not(signature: Signature) -> None:
    """By half as much again, or listed with a reason and no milder than when it was listed."""
    moved, entries = strength_of(signature), listed("mild", signature)
    if entries:
        (entry,) = entries
        assert entry["ratio"] - 0.05 <= moved < STRONG, "the entry must go, or the ratio has fallen"
    else:
        assert moved >= STRONG


@pytest.mark.parametrize("kind", ["weak", "mild"])
def test_what_falls_short_is_listed_cause_by_cause_and_is_little(kind: str) -> None:
    """No entry names a row that is not there, and each has a reason and a ceiling close by."""
    rows = RULES_OUT if kind == "weak" else STRONG_ROWS
    named = {(row, cause) for w in LISTS[kind] for row in w["rows"] for cause in w["causes"]}
    assert named == {(s.row, s.cause) for s in rows if listed(kind, s)}
    assert len(named) <= {"weak": MOST_WEAK, "mild": MOST_MILD}[kind]
    for entry in LISTS[kind]:
        mine = [s for s in rows if entry in listed(kind, s)]
        assert len(entry["why"]) > 30
        if kind == "weak":
            assert max(map(likelihood_ratio, mine)) > entry["most"] - 0.05, (
                "the ceiling is too high"
            )


def decibans(raises: bool, strength: str) -> list[float]:
    """How far each row of a strength moves its cause, 10 log10 of the ratio."""
    rows = [s for s in RULE if s.raises is raises and s.strength == strength]
    return [abs(10 * log10(max(likelihood_ratio(s), 1e-9))) for s in rows]


def test_stronger_signatures_move_their_causes_further() -> None:
    """The table's order of strengths is the network's: each moves twice as far as the next."""
    strong, middling, weak = (median(decibans(True, k)) for k in "SMW")
    assert strong > 2 * middling > 4 * weak > 0
    out, against, some, little = (median(decibans(False, k)) for k in "XSMW")
    assert out > 1.5 * against
    assert against > some > little > 0


def test_a_strong_signature_doubles_the_odds() -> None:
    """Nine in ten of the strong ones at least; the weak ones mostly do not."""
    strong, weak = decibans(True, "S"), decibans(True, "W")
    double = 10 * log10(2)
    assert sum(d > double for d in strong) > 0.9 * len(strong)
    assert sum(d > double for d in weak) < 0.25 * len(weak)
