"""Wrong changes made by hand: does a test notice each?

``python -m tests.studies.hand_mutants [WORD ...]`` applies the changes of
``tests/data/hand_mutants.toml`` whose name or group contains a word (all without one), one at a
time, to a copy of the project, runs the tests named for it, and prints killed or survived.
Exit code 1 where one survived; a change whose old text is not found once is an error.
"""

from __future__ import annotations

import shutil
import sys
import tempfile
import tomllib
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from tests.studies.mutation import ROOT, copied, outcome

LIST = ROOT / "tests" / "data" / "hand_mutants.toml"
LIMIT = 600.0  #: seconds for the tests of one change


@dataclass(frozen=True)
class HandMutant:
    """One wrong change: ``old``, which stands once in ``file``, becomes ``new``."""

    group: str
    name: str
    file: str
    old: str
    new: str
    tests: tuple[str, ...]

    def applied(self, text: str) -> str:
        """The text of the file with the change. Raises ValueError where ``old`` is not there once."""
        if (found := text.count(self.old)) != 1:
            raise ValueError(f"{self.name}: {self.old!r} stands {found} times in {self.file}")
        return text.replace(self.old, self.new)


def listed(words: Sequence[str] = ()) -> list[HandMutant]:
    """The changes whose name or group contains one of the words; all where there is none."""
    with LIST.open("rb") as file:
        rows = tomllib.load(file)["mutant"]
    every = [HandMutant(**{**row, "tests": tuple(row["tests"])}) for row in rows]
    return [m for m in every if not words or any(w in f"{m.group} {m.name}" for w in words)]


def tried(chosen: Sequence[HandMutant]) -> Iterator[tuple[HandMutant, str]]:
    """Each change with what became of it: killed, timed out or survived.

    Raises ValueError where a change does not fit, or where the tests fail as the code stands.
    """
    with tempfile.TemporaryDirectory() as name:
        place = Path(name)
        copied(place)
        for tests in {m.tests for m in chosen}:
            if outcome(place, [f"tests/{t}" for t in tests], LIMIT) != "survived":
                raise ValueError(f"{', '.join(tests)}: fail as the code stands")
        for mutant in chosen:
            file = place / mutant.file
            right = file.read_text("utf-8")
            file.write_text(mutant.applied(right), "utf-8")
            shutil.rmtree(file.parent / "__pycache__", ignore_errors=True)
            yield mutant, outcome(place, [f"tests/{t}" for t in mutant.tests], LIMIT)
            file.write_text(right, "utf-8")
            shutil.rmtree(file.parent / "__pycache__", ignore_errors=True)


def main(words: Sequence[str]) -> int:
    """Try them, print each, and say how many survived."""
    survived = 0
    for mutant, fate in tried(listed(words)):
        survived += fate == "survived"
        print(f"{fate:9} {mutant.group}: {mutant.name}", flush=True)
    print(f"{survived} survived")
    return 1 if survived else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
