"""``python -m tests.review_speed``: wall time of commands against importing the dependencies."""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parent.parent
IMPORTS = ["-c", "import networkx, pydantic, typer, numpy"]


#: the layout whose plan takes longest, with every cause still open
COMPLAINT = """schema = 1
[engine]
layout = "distributor_v8"
[[finding]]
no = 1
what = "gauge_reads_low"
state = "present"
"""


def seconds(arguments: list[str]) -> float:
    """Wall time of one fresh interpreter."""
    installed = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    start = time.perf_counter()
    subprocess.run(
        [sys.executable, *arguments], cwd=ROOT, capture_output=True, check=True, env=installed
    )
    return time.perf_counter() - start


def main(rounds: int = 7) -> None:
    """Medians of alternating runs and their ratio to the bare imports."""
    case = max((ROOT / "cases").glob("*.toml"), key=lambda p: p.stat().st_size)
    real = ROOT / "tests" / "confirmed" / "cases" / "B07.toml"
    complaint = tempfile.NamedTemporaryFile(suffix=".toml", delete=False)  # noqa: SIM115
    complaint.write(COMPLAINT.encode())
    complaint.close()
    runs = {
        "import networkx, pydantic, typer, numpy": IMPORTS,
        "diagnose --help": ["-m", "diagnose", "--help"],
        f"diagnose review {real.name} (a real case)": ["-m", "diagnose", "review", str(real)],
        f"diagnose review {case.name}": ["-m", "diagnose", "review", str(case)],
        f"diagnose review {case.name} --json": ["-m", "diagnose", "review", str(case), "--json"],
        "diagnose review, complaint alone": ["-m", "diagnose", "review", complaint.name],
        "diagnose teardown, complaint alone": ["-m", "diagnose", "teardown", complaint.name],
    }
    times: dict[str, list[float]] = {name: [] for name in runs}
    for _ in range(rounds):
        for name, arguments in runs.items():
            times[name].append(seconds(arguments))
    base = statistics.median(next(iter(times.values())))
    for name, taken in times.items():
        middle = statistics.median(taken)
        spread = max(taken) - min(taken)
        print(f"{name:45} {middle:6.3f} s  ± {spread / 2:.3f}   {middle / base:5.2f} ×")
    plan, review = (statistics.median(t) for t in list(times.values())[:-3:-1])
    print(f"teardown to review of the same case: {plan / review:.2f} ×")


if __name__ == "__main__":
    main()
