"""``python -m tests.benchmarks [runs] [--few] [part ...]``: one table of ratios.

``--few`` ends in under two minutes; all of it, with its ten thousand cases, takes about half an
hour. Parts: commands, serving, inference, chaining, circuit, growth. A ratio named *time* or
*memory* is ours over the peer's; any other says how many times faster we are.
"""

from __future__ import annotations

import sys
from importlib import import_module

from tests.benchmarks.table import HEAD, line

PARTS = ("commands", "serving", "growth", "circuit", "chaining", "inference")
RUNS = 5


def main(words: list[str]) -> None:
    """Print each row as soon as it is known."""
    few = "--few" in words
    runs = next((int(w) for w in words if w.isdigit()), RUNS)
    wanted = [w for w in words if w in PARTS] or PARTS
    print(HEAD)
    for part in PARTS:
        if part in wanted:
            for row in import_module(f"tests.benchmarks.{part}").rows(runs, few):
                print(line(row), flush=True)


if __name__ == "__main__":
    main(sys.argv[1:])
