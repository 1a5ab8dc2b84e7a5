"""Rank the confirmed cause of each case at three stages of knowledge."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import Stage

HERE = Path(__file__).parent
STAGES = {
    Stage.KNOWN: "complaint only",
    Stage.OUTSIDE: "with external checks",
    Stage.OPENED: "with teardown findings",
}


@dataclass(frozen=True)
class Score:
    """Where the confirmed cause stood, and the probabilities given."""

    case: str
    rank: int
    accepted: frozenset[str]
    marginal: dict[str, float]
    leak: bool


@cache
def gold() -> dict[str, dict[str, object]]:
    """Accepted causes by case; ``doubtful`` cases are left out of the figures."""
    data: dict[str, dict[str, object]] = json.loads((HERE / "gold.json").read_text("utf-8"))
    return data


def case_files() -> list[Path]:
    """Every encoded case."""
    return sorted((HERE / "cases").glob("*.toml"))


def score(path: Path, up_to: Stage) -> Score | None:
    """The score of one case; None for a doubtful one."""
    if gold()[path.stem].get("doubtful"):
        return None
    book = the_book()
    return score_of(path.stem, Diagnosis(book, load(path, book), up_to))


def score_of(name: str, answer: Diagnosis) -> Score:
    """Where the confirmed cause of a case stands in an answer."""
    label = gold()[name]
    accepted = frozenset(str(a) for a in label["accept"])  # type: ignore[attr-defined]
    order = [r.cause.id for r in answer.ranking]
    rank = min(order.index(a) for a in accepted if a in order) + 1
    marginal = {r.cause.id: r.probability for r in answer.ranking}
    return Score(name, rank, accepted, marginal, bool(label.get("leak")))


def scores(up_to: Stage, paths: Iterable[Path] | None = None) -> list[Score]:
    """Every case's score at a stage."""
    found = (score(p, up_to) for p in (paths or case_files()))
    return [s for s in found if s is not None]


def hit(these: list[Score], many: int) -> float:
    """Share of cases whose confirmed cause stands among the first ``many``."""
    return sum(s.rank <= many for s in these) / max(len(these), 1)


def brier(these: list[Score]) -> float:
    """Mean over cases of the summed squared error over causes (0 is perfect)."""
    total = 0.0
    for s in these:
        best = max(s.accepted, key=lambda a: s.marginal.get(a, 0.0))
        total += sum((p - (c == best)) ** 2 for c, p in s.marginal.items())
    return total / max(len(these), 1)


def reliability(these: list[Score]) -> list[tuple[float, float, int]]:
    """By tenths: mean probability said, share that was true, count."""
    rows = []
    for tenth in range(10):
        inside = [
            (p, c in s.accepted)
            for s in these
            for c, p in s.marginal.items()
            if tenth / 10 <= p < (tenth + 1) / 10 or (tenth == 9 and p == 1.0)
        ]
        if inside:
            said = sum(p for p, _ in inside) / len(inside)
            true = sum(t for _, t in inside) / len(inside)
            rows.append((said, true, len(inside)))
    return rows
