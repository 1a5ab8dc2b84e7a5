"""Wall time and peak memory of whole commands against importing the dependencies alone.

Every run is a fresh interpreter, by turns; bytecode may be written, as where it is installed. The
peer imports the four packages every review needs and does nothing with them: pydantic then keeps
most of itself for later, which is in our time and not in the peer's.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

from tests.benchmarks.table import Row

ROOT = Path(__file__).parent.parent.parent
BARE = "import networkx, numpy, pydantic, typer"
#: the layout whose plan takes longest, with every cause still open
COMPLAINT = """schema = 1
[engine]
layout = "distributor_v8"
[[finding]]
no = 1
what = "gauge_reads_low"
state = "present"
"""


class Spent(NamedTuple):
    """What a process took."""

    seconds: float
    cpu: float  #: seconds of work, which other work on the machine hardly changes
    megabytes: float  #: at most in memory at once; of several processes the largest


def spent(arguments: list[str]) -> Spent:
    """Of a fresh interpreter. Raises CalledProcessError where it failed."""
    installed = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    parent = [sys.executable, "-S", str(Path(__file__).with_name("started.py"))]
    done = subprocess.run(
        [*parent, sys.executable, *arguments],
        cwd=ROOT,
        env=installed,
        capture_output=True,
        check=True,
    )
    wall, cpu, kilobytes = map(float, done.stdout.split())
    return Spent(wall, cpu, kilobytes / 1024)


def rows(rounds: int, few: bool) -> Iterator[Row]:
    """Time and memory of help, review and teardown."""
    real = ROOT / "tests" / "confirmed" / "cases" / "B07.toml"
    largest = max((ROOT / "cases").glob("*.toml"), key=lambda p: p.stat().st_size)
    with tempfile.TemporaryDirectory() as folder:
        complaint = Path(folder) / "complaint.toml"
        complaint.write_text(COMPLAINT, "utf-8")
        runs = {"--help": (["--help"], "<= 1.5")}
        for path in (real, largest) if few else (real, largest, complaint):
            runs[f"review {path.name}"] = (["review", str(path)], "<= 2.5")
            runs[f"teardown {path.name}"] = (["teardown", str(path)], "")
        runs[f"review {largest.name} --json"] = (["review", str(largest), "--json"], "<= 2.5")
        took: dict[str, list[tuple[Spent, Spent]]] = {name: [] for name in runs}
        for turn in range(rounds + 1):  # the first writes the bytecode
            for name, (words, _) in runs.items():
                bare, one = spent(["-c", BARE]), spent(["-m", "diagnose", *words])
                if turn:
                    took[name].append((one, bare))
    for name, pairs in took.items():
        ratios = [a.seconds / b.seconds for a, b in pairs]
        work = f"CPU {statistics.median(a.cpu / b.cpu for a, b in pairs):.2f}x"
        yield Row(f"time: {name}", BARE, ratios, runs[name][1], work)
    for name, pairs in took.items():
        most = f"{max(a.megabytes for a, _ in pairs):.0f} MB"
        ratios = [a.megabytes / b.megabytes for a, b in pairs]
        yield Row(f"peak memory: {name}", "the same imports", ratios, note=most)
