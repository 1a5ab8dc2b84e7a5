"""Rank the confirmed cause of each case at three stages of knowledge."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from hashlib import sha256
from pathlib import Path

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import Stage

HERE = Path(__file__).parent
FIRST, FURTHER, LATER = (HERE / name for name in ("cases", "further", "later"))
STAGES = {
    Stage.KNOWN: "complaint only",
    Stage.OUTSIDE: "with external checks",
    Stage.OPENED: "with teardown findings",
}
UNSAID = "# NOT SAID:"


@dataclass(frozen=True)
class Score:
    """Where the confirmed cause stood, and the probabilities given."""

    case: str
    rank: int
    accepted: frozenset[str]
    marginal: dict[str, float]
    leak: bool
    thin: bool = False  #: next to nothing to go on


@cache
def gold() -> dict[str, dict[str, object]]:
    """Accepted causes by case; ``doubtful`` cases are left out of the figures."""
    data: dict[str, dict[str, object]] = {}
    for name in ("gold.json", "gold_further.json", "gold_later.json"):
        data |= json.loads((HERE / name).read_text("utf-8"))
    return data


def case_files(folder: Path = FIRST) -> list[Path]:
    """Every encoded case of a folder: the first 51, 114 further ones, 126 later ones."""
    return sorted(folder.glob("*.toml"))


def kept_aside(case: str) -> bool:
    """Whether a further or later case is of the half that nothing is developed on: chance, but fixed."""
    return sha256(case.encode()).digest()[0] % 2 == 1


def stage_shown(name: str, up_to: Stage) -> Stage:
    """The stage to rank a case at: where its checks name the cause, they count as findings inside."""
    if up_to is Stage.OUTSIDE and gold()[name].get("checks_state_the_cause"):
        return Stage.KNOWN
    return up_to


def score(path: Path, up_to: Stage) -> Score | None:
    """The score of one case; None for a doubtful one."""
    if gold()[path.stem].get("doubtful"):
        return None
    book = the_book()
    return score_of(path.stem, Diagnosis(book, load(path, book), stage_shown(path.stem, up_to)))


def score_of(name: str, answer: Diagnosis) -> Score:
    """Where the confirmed cause of a case stands in an answer; after all others if ruled out."""
    label = gold()[name]
    accepted = frozenset(str(a) for a in label["accept"])  # type: ignore[attr-defined]
    order = [r.cause.id for r in answer.ranking]
    rank = min((order.index(a) for a in accepted if a in order), default=len(order)) + 1
    marginal = {r.cause.id: r.probability for r in answer.ranking}
    return Score(name, rank, accepted, marginal, bool(label.get("leak")), bool(label.get("thin")))


def scores(up_to: Stage, paths: Iterable[Path] | None = None) -> list[Score]:
    """Every case's score at a stage; of the first 51 cases where no paths are given."""
    found = (score(p, up_to) for p in (case_files() if paths is None else paths))
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


def leading(these: list[Score], bands: Iterable[float]) -> list[tuple[float, float, int]]:
    """Of the leading cause by bands of its probability: mean said, share that was right, count.

    ``bands``: where each begins, 0 to 1, the largest first.
    """
    inside: dict[float, list[tuple[float, bool]]] = {begin: [] for begin in bands}
    for s in these:
        cause, chance = max(s.marginal.items(), key=lambda item: item[1])
        begin = next(b for b in inside if chance >= b)
        inside[begin].append((chance, cause in s.accepted))
    return [
        (sum(p for p, _ in found) / len(found), sum(r for _, r in found) / len(found), len(found))
        for found in inside.values()
        if found
    ]


def coverage(paths: Iterable[Path]) -> tuple[int, int]:
    """How many facts of these cases are said, and how many have no word.

    A fact is one note of an entry, however many entries it takes; what cannot be said stands
    in a comment at the head of the file.
    """
    book = the_book()
    said = unsaid = 0
    for path in paths:
        case = load(path, book)
        notes = {e.note.strip() or f"no {no}" for no, e in case.standing.items()}
        said += len(notes)
        lines = path.read_text("utf-8").splitlines()
        unsaid += sum(line.startswith(UNSAID) for line in lines)
    return said, unsaid
