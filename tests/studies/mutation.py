"""Mutants of the code that ranks, plans, judges, warns and prints: does a test notice each?

``python -m tests.studies.mutation [N [SEED [AREA ...]]]`` draws N mutants of cosmic-ray's (150;
always the same for the same code and seed) from the areas named (all without a name), by the size
of their modules, at most one on a line. It runs the area's tests on each in a copy of the project,
and prints per area how many a test killed. ``tests/data/mutants.toml`` explains those that no test
can distinguish from the right code; the score leaves them out. Needs ``pip install cosmic-ray``.
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
from dataclasses import dataclass
from pathlib import Path

from tests.studies.mutants import Mutant, changes_of, mutants

ROOT = Path(__file__).parents[2]
EXAMPLES = 25  #: of a hypothesis test, at most
FACTOR, SPARE = 4, 30  #: time limit: so many times what the right code takes, and seconds besides


@dataclass(frozen=True)
class Area:
    """Modules (files, or folders with all they hold) and the tests that concern them."""

    places: tuple[str, ...]
    tests: tuple[str, ...]  #: quick ones first


_HYDRAULICS = (
    "hydraulics/test_hydraulics_defaults.py",
    *(
        f"hydraulics/test_hydraulics_{name}.py"
        for name in (
            "tables", "published_films", "published_pump", "circuit", "circuit_solvers", "leaks", "oil",
            "laws", "circuit_limits", "reynolds",
        )
    ),
)  # fmt: skip
AREAS = {
    "inference": Area(
        (
            "diagnose/inference",
            "diagnose/reasoning/case_inference.py",
            "diagnose/reasoning/reasons.py",
            "diagnose/diagnosis.py",
        ),
        (
            "inference/test_ranking_when_large.py",
            "inference/test_evidence.py",
            "inference/test_ranking.py",
            "inference/test_ranking_limits.py",
            "inference/test_leaving_out.py",
            "inference/test_chaining.py",
            "output/test_reasons_shown.py",
        ),
    ),
    "planning": Area(
        ("diagnose/planning", "diagnose/reasoning/check_planner.py"),
        (
            "planning/test_planning_by_hand.py",
            "case/test_case_facts.py",
            "planning/test_covers.py",
            "planning/test_planning.py",
            "planning/test_planning_access.py",
        ),
    ),
    "hydraulics": Area(("diagnose/hydraulics",), _HYDRAULICS),
    "alarms": Area(
        (
            "knowledge/pressure/alarms.py",
            "knowledge/pressure/gauge.py",
            "knowledge/stations/leaks/rules_alarms.py",
            "knowledge/stations/pump/rules_alarms.py",
            "knowledge/stations/suction/rules_alarms.py",
        ),
        (
            "safety/test_gauge_limits.py",
            "safety/test_alarms_at_limits.py",
            "safety/test_alarms.py",
            "case/test_case_facts.py",
            "knowledge/test_rule_examples.py",
        ),
    ),
    "judging": Area(
        ("diagnose/signoff", "knowledge/judging.py"),
        (
            "signoff/test_judging_and_closing.py",
            "signoff/test_first_start.py",
            "signoff/test_judging.py",
            "safety/test_gauge_limits.py",
            "case/test_case_facts.py",
            "circuit/test_case_circuit.py",
            "signoff/test_close.py",
            "signoff/test_parts.py",
            "signoff/test_signoff.py",
        ),
    ),
    "cautions": Area(
        (
            "diagnose/output/documents/cautions.py",
            "diagnose/output/documents/alarms.py",
            "knowledge/applying.py",
        ),
        (
            "safety/test_alarms.py",
            "safety/test_cautions_for_engines.py",
            "safety/test_cautions_shown.py",
        ),
    ),
    "case": Area(
        ("diagnose/case",),
        (
            "case/test_case_at_limits.py",
            "entry/test_readings_in_words.py",
            "case/test_entries_at_limits.py",
            "case/test_disk.py",
            "case/test_case_facts.py",
            "case/test_case_faults.py",
            "case/test_casefile.py",
            "case/test_work_entries.py",
            "safety/test_cautions_for_engines.py",
            "inference/test_reported_behaviour.py",
            "knowledge/test_limits_by_size.py",
            "safety/test_out_of_scope.py",
            "case/test_writing.py",
            "case/test_writing_disk.py",
        ),
    ),
    "report": Area(
        (
            *(
                f"diagnose/output/documents/{name}.py"
                for name in (
                    "contradictions",
                    "found",
                    "next_checks",
                    "ranking",
                    "reasons",
                    "review",
                )
            ),
            *(f"diagnose/output/text/{name}.py" for name in ("alarms", "next_step", "review")),
        ),
        (
            "output/test_review_shown.py",
            "output/test_review_printed.py",
            "output/test_review_documents.py",
            "inference/test_found_faults.py",
            "inference/test_contradictions_named.py",
            "safety/test_alarms.py",
            "output/test_reasons_shown.py",
            "safety/test_cautions_shown.py",
        ),
    ),
    "sheets": Area(
        (
            "diagnose/output/documents/signoff.py",
            "diagnose/output/documents/signoff_items.py",
            "diagnose/output/documents/first_start.py",
            "diagnose/output/text/signoff.py",
            "diagnose/output/text/first_start.py",
            "diagnose/output/markdown/signoff.py",
        ),
        ("safety/test_cautions_shown.py", "signoff/test_signoff.py"),
    ),
    "figures": Area(
        (
            *(f"diagnose/output/documents/{n}.py" for n in ("budget", "forecast", "survey")),
            *(f"diagnose/output/text/{n}.py" for n in ("budget", "forecast", "survey")),
        ),
        ("circuit/test_budget.py", "circuit/test_survey.py", "circuit/test_forecast.py"),
    ),
}


def modules(area: str) -> list[str]:
    """The area's modules that hold code."""
    found: list[Path] = []
    for place in AREAS[area].places:
        path = ROOT / place
        found += sorted(path.rglob("*.py")) if path.is_dir() else [path]
    return [p.relative_to(ROOT).as_posix() for p in found if p.name != "__init__.py"]


def concerning(module: str) -> list[str]:
    """The test files that concern a module: of the first area that names it, or holds it."""
    named = [a for a in AREAS.values() if module in a.places]
    holding = [a for name, a in AREAS.items() if module in modules(name)]
    return [f"tests/{name}" for name in (*named, *holding)[0].tests]


def area_of(module: str) -> str:
    """The first area that holds the module."""
    return next(name for name in AREAS if module in modules(name))


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


def drawn(how_many: int, seed: int = 1, areas: Sequence[str] = ()) -> list[Mutant]:
    """So many mutants over the areas, each module its share by lines that can be mutated."""
    every = list(dict.fromkeys(m for area in areas or AREAS for m in modules(area)))
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
    for test in (place / "tests").rglob("test_*.py"):
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
    numbers, areas = sys.argv[1:3], sys.argv[3:]
    if not all(n.isdigit() for n in numbers) or not set(areas) <= set(AREAS):
        print("usage: python -m tests.studies.mutation [N [SEED [AREA ...]]]", file=sys.stderr)
        print(f"areas: {', '.join(AREAS)}", file=sys.stderr)
        return 2
    how_many, seed = [*map(int, numbers), *(150, 1)[len(numbers) :]]
    for mutant, fate in tried(drawn(how_many, seed, areas)):
        reason = why(mutant) if fate == "survived" else None
        fate = "explained" if reason else fate
        count.setdefault(area_of(mutant.module), Counter())[fate] += 1
        if fate in ("survived", "explained"):
            print(f"{fate}: {mutant}" + (f"\n    ({reason})" if reason else ""), flush=True)
    fates = ("killed", "timed out", "explained", "survived")
    print(f"\n{'':22}{'mutants':>10}" + "".join(f"{f:>11}" for f in fates) + f"{'score':>8}")
    for area, row in count.items():
        score = 1 - row["survived"] / max(row.total() - row["explained"], 1)
        print(
            f"{area:22}{row.total():10}" + "".join(f"{row[f]:11}" for f in fates) + f"{score:8.0%}"
        )
    return 0


if __name__ == "__main__":
    sys.exit(main())
