"""Mutants of the ranking, planning and hydraulics code: does a test notice each wrong line?

``python -m tests.studies.mutation [N [SEED]]`` draws N mutants of cosmic-ray's (150; always the same for
the same code and seed) from three packages, by the size of their modules, at most one on a line.
It runs the tests of the module on each in a copy of the project, and prints per package how many
a test killed. ``tests/data/mutants.toml`` explains those that no test can tell from the right
code; the score leaves them out. Needs ``pip install cosmic-ray``.
"""

from __future__ import annotations

import importlib
import importlib.util
import os
import re
import shutil
import subprocess
import sys
import tempfile
import tomllib
from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path

from tests.studies.mutants import Mutant, changes_of, mutants

ROOT = Path(__file__).parents[2]
EXAMPLES = 25  #: of a hypothesis test, at most
FACTOR, SPARE = 4, 30  #: time limit: so many times what the right code takes, and seconds besides

_RANKING = [
    "test_survivors_ranking.py",
    "test_ranking.py",
    "test_ranking_limits.py",
    "test_leaving_out.py",
]
_PLANNING = ["test_survivors_planning.py", "test_covers.py", "test_planning.py"]
_HYDRAULICS = ["test_doctests.py", "test_survivors_hydraulics.py"]
_HYDRAULICS += [
    f"test_hydraulics_{name}.py"
    for name in (
        "tables", "published_a", "published_b", "circuit", "circuit_solvers", "leaks",
        "oil", "laws", "circuit_limits",
    )
]  # fmt: skip
#: the tests that concern a module, quick ones first; a package's where the module is not named
TESTS = {
    "diagnose/ranking": _RANKING,
    "diagnose/planning": _PLANNING,
    "diagnose/hydraulics": _HYDRAULICS,
    "diagnose/hydraulics/raimondi_boyd.py": [*_HYDRAULICS, "test_hydraulics_reynolds.py"],
}


def modules(package: str) -> list[str]:
    """The package's modules that hold code."""
    files = sorted((ROOT / package).glob("*.py"))
    return [p.relative_to(ROOT).as_posix() for p in files if p.name != "__init__.py"]


def concerning(module: str) -> list[str]:
    """The test files that concern a module."""
    package = module.rsplit("/", 1)[0]
    return [f"tests/{name}" for name in TESTS.get(module, TESTS[package])]


def explained() -> list[dict[str, str]]:
    """Mutants that no test can kill: module, line, becomes (any change if left out), why."""
    with (ROOT / "tests/data/mutants.toml").open("rb") as file:
        found: list[dict[str, str]] = tomllib.load(file)["mutant"]
    return found


def why(mutant: Mutant) -> str | None:
    """Why no test can kill it, where that is explained."""
    for row in explained():
        here = row["module"] == mutant.module and row["line"] == mutant.line
        if here and row.get("becomes", mutant.becomes) == mutant.becomes:
            return row["why"]
    return None


def drawn(how_many: int, seed: int = 1) -> list[Mutant]:
    """So many mutants over all packages, each module its share by lines that can be mutated."""
    every = [m for package in TESTS if not package.endswith(".py") for m in modules(package)]
    code = {m: (ROOT / m).read_text("utf-8") for m in every}
    size = {m: len(changes_of(text)) for m, text in code.items()}
    total, done, found = sum(size.values()), 0, []
    for i, module in enumerate(every, 1):
        upto = round(how_many * sum(size[m] for m in every[:i]) / total)
        found += mutants(module, code[module], upto - done, seed)
        done = upto
    return found


def copied(place: Path) -> None:
    """The project in another place, its random tests few, quick and always the same."""
    for name in ("diagnose", "knowledge", "tests", "cases", "pyproject.toml", "README.md"):
        source = ROOT / name
        if source.is_file():
            shutil.copy(source, place / name)
        else:
            shutil.copytree(source, place / name, ignore=shutil.ignore_patterns("__pycache__"))
    for test in (place / "tests").glob("test_*.py"):
        few = re.sub(
            r"max_examples=(\d+)",
            lambda m: f"max_examples={min(int(m[1]), EXAMPLES)}",
            test.read_text("utf-8"),
        )
        test.write_text(few, "utf-8")
    with (place / "tests/conftest.py").open("a", encoding="utf-8") as file:
        file.write(
            "\nfrom hypothesis import Phase, settings\n"
            "settings.register_profile('m', derandomize=True, database=None, deadline=None,\n"
            "    phases=[Phase.explicit, Phase.generate])\nsettings.load_profile('m')\n"
        )


def outcome(place: Path, tests: Sequence[str], limit: float | None) -> str:
    """``survived``, ``killed`` or ``timed out``."""
    command = [sys.executable, "-m", "pytest", "-q", "-x", "-p", "no:cacheprovider", *tests]
    env = {**os.environ, "PYTHONPATH": str(place)}
    try:
        done = subprocess.run(command, cwd=place, env=env, capture_output=True, timeout=limit)
    except subprocess.TimeoutExpired:
        return "timed out"
    return "killed" if done.returncode else "survived"


def tried(chosen: Sequence[Mutant]) -> Iterator[tuple[Mutant, str]]:
    """Each mutant with what became of it."""
    with tempfile.TemporaryDirectory() as name:
        place = Path(name)
        copied(place)
        limits: dict[tuple[str, ...], float] = {}
        for mutant in chosen:
            tests = concerning(mutant.module)
            if (key := tuple(tests)) not in limits:
                start = os.times().elapsed
                if outcome(place, tests, None) != "survived":
                    raise SystemExit(f"the tests of {mutant.module} fail as it stands")
                limits[key] = FACTOR * (os.times().elapsed - start) + SPARE
            file = place / mutant.module
            right = file.read_text("utf-8")
            file.write_text(mutant.code, "utf-8")
            shutil.rmtree(
                file.parent / "__pycache__", ignore_errors=True
            )  # it goes by whole seconds
            yield mutant, outcome(place, tests, limits[key])
            file.write_text(right, "utf-8")


def main() -> int:
    """Draws, runs, prints."""
    if importlib.util.find_spec("cosmic_ray") is None:
        print("mutants are cosmic-ray's: pip install cosmic-ray", file=sys.stderr)
        return 2
    count: dict[str, Counter[str]] = {}
    if len(sys.argv) > 3 or not all(a.isdigit() for a in sys.argv[1:]):
        print("usage: python -m tests.studies.mutation [N [SEED]]", file=sys.stderr)
        return 2
    how_many, seed = [*map(int, sys.argv[1:]), *(150, 1)[len(sys.argv) - 1 :]]
    for mutant, fate in tried(drawn(how_many, seed)):
        reason = why(mutant) if fate == "survived" else None
        fate = "explained" if reason else fate
        count.setdefault(mutant.module.rsplit("/", 1)[0], Counter())[fate] += 1
        if fate in ("survived", "explained"):
            print(f"{fate}: {mutant}" + (f"\n    ({reason})" if reason else ""), flush=True)
    fates = ("killed", "timed out", "explained", "survived")
    print(f"\n{'':22}{'mutants':>10}" + "".join(f"{f:>11}" for f in fates) + f"{'score':>8}")
    for package, row in count.items():
        score = 1 - row["survived"] / max(row.total() - row["explained"], 1)
        print(
            f"{package:22}{row.total():10}"
            + "".join(f"{row[f]:11}" for f in fates)
            + f"{score:8.0%}"
        )
    return 0


if __name__ == "__main__":
    sys.exit(main())
