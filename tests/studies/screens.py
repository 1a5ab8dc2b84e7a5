"""Lines at 80 columns of every command's default output, on the worked and the confirmed cases.

``python -m tests.studies.screens`` prints median, ninth tenth and worst for each command, and the
case of the worst; ``--few`` takes every tenth confirmed case.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable, Sequence
from pathlib import Path

from tests.confirmed.scoring import FURTHER, case_files
from tests.support.command_line import ROOT, call

#: options of each command; a count below is of a case that the command can answer
COMMANDS: dict[str, tuple[str, ...]] = {
    "review": (),
    "review --why": ("--why", "pump_gear_wear"),
    "review --causes 20": ("--causes", "20"),
    "teardown": (),
    "signoff": (),
    "signoff --whole-engine": ("--whole-engine",),
    "signoff --start": ("--start",),
    "signoff --start --whole-engine": ("--start", "--whole-engine"),
    "budget": (),
    "forecast": (),
    "survey": (),
}


def lines_of(command: str, path: Path) -> int | None:
    """Count the lines a command prints of a case; None where it cannot answer it."""
    done = call(command.split()[0], path, *COMMANDS[command])
    return len(done.out.splitlines()) if done.code == 0 else None


def figures(command: str, paths: Iterable[Path]) -> tuple[list[int], str]:
    """Every count of a command, sorted, and the case with most lines."""
    counted = [(n, p.stem) for p in paths if (n := lines_of(command, p)) is not None]
    return sorted(n for n, _ in counted), max(counted, default=(0, ""))[1]


def main(arguments: Sequence[str]) -> None:
    """Print the table."""
    step = 10 if "--few" in arguments else 1
    confirmed = [*case_files(), *case_files(FURTHER)]
    paths = [*sorted((ROOT / "cases").glob("*.toml")), *confirmed[::step]]
    print(f"{'command':32}{'cases':>6}{'median':>8}{'9 in 10':>9}{'worst':>7}  case")
    for command in COMMANDS:
        counts, worst = figures(command, paths)
        if counts:
            middle, ninth = counts[len(counts) // 2], counts[len(counts) * 9 // 10]
            print(f"{command:32}{len(counts):6}{middle:8}{ninth:9}{counts[-1]:7}  {worst}")


if __name__ == "__main__":
    main(sys.argv[1:])
