"""How time and memory grow: with the book, and with the number of cases in one run.

More knowledge is made of copies of one case's network under other names, each with the same
evidence. Many cases are the example and confirmed cases repeated in a temporary folder.
"""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Iterator
from pathlib import Path

from diagnose.inference.network import Evidence, Network
from tests.benchmarks.commands import ROOT, Spent, spent
from tests.benchmarks.inference import ranked
from tests.benchmarks.table import Row, seconds
from tests.support.situations import situation

CASES = ("B07", "gannet")
MANY, FEW = (1_000, 10_000), (40, 120)  #: cases in the folders


def copies(network: Network, evidence: Evidence, many: int) -> tuple[Network, Evidence]:
    """So many networks side by side in one."""
    names = [f"__{i}" for i in range(many)]
    prior = {n + s: p for s in names for n, p in network.prior.items()}
    leak = {n + s: p for s in names for n, p in network.leak.items()}
    parents, inhibitors = (
        {
            n + s: {p + s: q for p, q in links.items()}
            for s in names
            for n, links in strengths.items()
        }
        for strengths in (network.parents, network.inhibitors)
    )
    net = Network(prior, leak, parents, inhibitors)
    return net, {n + s: e for s in names for n, e in evidence.items()}


def knowledge(name: str, rounds: int) -> Iterator[Row]:
    """Ranking with twice and four times the knowledge against once."""
    case = situation(name)
    sizes = {many: copies(case.network, case.evidence, many) for many in (1, 2, 4)}
    took: dict[int, list[float]] = {many: [] for many in sizes}
    for turn in range(rounds + 1):
        for many, (network, evidence) in sizes.items():
            second = seconds(lambda n=network, e=evidence: ranked(n, e))  # type: ignore[misc]
            if turn:
                took[many].append(second)
    for many in (2, 4):
        ratios = [a / b for a, b in zip(took[many], took[1], strict=True)]
        links = sum(map(len, sizes[many][0].parents.values()))
        yield Row(
            f"ranking {name} with {many} times the book",
            "the book once",
            ratios,
            note=f"{links:,} links",
        )


def folder(many: int, place: Path) -> Path:
    """A folder of so many cases."""
    cases = sorted((ROOT / "cases").glob("*.toml"))
    cases += sorted((ROOT / "tests" / "confirmed" / "cases").glob("*.toml"))
    here = place / str(many)
    here.mkdir()
    for i in range(many):
        shutil.copyfile(cases[i % len(cases)], here / f"{i:05}.toml")
    return here


def cases(few: bool) -> Iterator[Row]:
    """A folder of cases reviewed by one process and by two, and ten times as many."""
    less, more = FEW if few else MANY
    aim = "" if few else "<= 1.1"  #: so few say little: each new kind of case loads something
    took: dict[tuple[int, int], Spent] = {}
    with tempfile.TemporaryDirectory() as place:
        folders = {many: folder(many, Path(place)) for many in (less, more)}
        for jobs in (1, 2):
            for many, here in folders.items():
                words = ["review", str(here), "--jobs", str(jobs)]
                took[many, jobs] = spent(["-m", "diagnose", *words])
    for jobs in (1, 2):
        a, b = took[more, jobs], took[less, jobs]
        rate, size = f"{more / a.seconds:.1f} cases/s", f"{a.megabytes:.0f} MB"
        what, peer = f"{more:,} cases, --jobs {jobs}", f"{less:,} cases, --jobs {jobs}"
        yield Row(f"time: {what}", peer, [a.seconds / b.seconds], note=rate)
        yield Row(f"peak memory: {what}", peer, [a.megabytes / b.megabytes], aim, size)
    gained = [took[more, 1].seconds / took[more, 2].seconds]
    yield Row(f"{more:,} cases by two processes, faster", "by one", gained)


def rows(rounds: int, few: bool) -> Iterator[Row]:
    """The book's growth, then the cases'."""
    for name in CASES:
        yield from knowledge(name, rounds)
    yield from cases(few)
