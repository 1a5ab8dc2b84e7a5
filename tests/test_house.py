"""The plan of the house holds: floors, doors, no circles, no room too long."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import networkx as nx
import pytest

ROOT = Path(__file__).parent.parent
FILES = sorted([*ROOT.glob("diagnose/**/*.py"), *ROOT.glob("knowledge/**/*.py")])
DOORS = {  # one door per package
    "typer": ["diagnose/cli"],
    "pydantic": ["diagnose/casefile/schema.py", "diagnose/casefile/reading.py"],
    "networkx": [
        "diagnose/causegraph.py",
        "diagnose/graphfile.py",
        "diagnose/planning/access_tree.py",
    ],
    "jinja2": ["diagnose/pages/page.py"],
    "matplotlib": ["diagnose/pages/charts.py"],
    "rapidfuzz": ["diagnose/lookup.py"],
    "tomli_w": ["diagnose/casefile/writing.py"],
}
#: who must never import whom: (floor, what it may not know)
NEVER = [
    ("knowledge", "diagnose"),
    ("diagnose/chaining.py", "knowledge.rules"),
    ("diagnose/causegraph.py", "knowledge.rules"),
    ("diagnose/ranking", "knowledge"),
    ("diagnose/planning", "knowledge.rules"),
    ("diagnose/checking", "knowledge.rules"),
    ("diagnose/checking", "diagnose.report"),
    ("diagnose/report", "diagnose.cli"),
    ("diagnose/report", "diagnose.pages"),
    ("diagnose/pages", "diagnose.cli"),
    ("diagnose/consultation.py", "diagnose.cli"),
    ("diagnose/consultation.py", "diagnose.report"),
]


def name(path: Path) -> str:
    return ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__")


def imported(path: Path) -> set[str]:
    """Every module named in an import statement, at the top or inside a function."""
    out: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            out.update(a.name for a in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            out.add(node.module)
            out.update(f"{node.module}.{a.name}" for a in node.names)
    return out


IMPORTS = {p: imported(p) for p in FILES}


def inside(path: Path, place: str) -> bool:
    return str(path.relative_to(ROOT)).startswith(place)


@pytest.mark.parametrize(("floor", "stranger"), NEVER)
def test_imports_go_down(floor: str, stranger: str) -> None:
    """The floors of DEVELOPERS.md."""
    for path, names in IMPORTS.items():
        if inside(path, floor):
            bad = [n for n in names if n == stranger or n.startswith(stranger + ".")]
            assert not bad, f"{path} imports {bad}"


def test_physics_knows_nothing_of_cases() -> None:
    """The oil circuit imports itself, errors and the ground of knowledge, nothing else of ours."""
    for path, names in IMPORTS.items():
        if inside(path, "diagnose/hydraulics"):
            ours = [n for n in names if n.startswith("diagnose.")]
            known = ("diagnose.hydraulics", "diagnose.errors")
            assert not [n for n in ours if not n.startswith(known)], path


def test_rules_never_import_rules() -> None:
    """A rule knows words, not other rules."""
    for path, names in IMPORTS.items():
        if inside(path, "knowledge/rules/") and path.name != "__init__.py":
            assert not [n for n in names if n.startswith("knowledge.rules")], path


@pytest.mark.parametrize("package", DOORS)
def test_one_door_per_package(package: str) -> None:
    """Each outside package is met in one room."""
    for path, names in IMPORTS.items():
        if any(n == package or n.startswith(package + ".") for n in names):
            assert any(inside(path, d) for d in DOORS[package]), f"{path} imports {package}"


def test_no_circle_of_imports() -> None:
    """Imports make no loop."""
    known = {name(p): p for p in FILES}
    graph = nx.DiGraph(
        (name(p), n) for p, names in IMPORTS.items() for n in names if n in known and n != name(p)
    )
    # a package's face names its rooms, and the rooms name no face
    assert nx.is_directed_acyclic_graph(graph), nx.find_cycle(graph)


@pytest.mark.parametrize("path", FILES, ids=lambda p: str(p.relative_to(ROOT)))
def test_rooms_are_small(path: Path) -> None:
    """No file of 500 lines; the gauge is 300."""
    assert len(path.read_text("utf-8").splitlines()) < 500


SAID = re.compile(r"[Ii]mported by (.*?)(?:[.;](?:\s|$))", re.DOTALL)


def fits(place: str, module: str) -> bool:
    """Whether a module is the place named, or in it: ``report``, ``hydraulics.oil``."""
    return set(place.split(".")) <= set(module.split("."))


@pytest.mark.parametrize("path", FILES, ids=lambda p: str(p.relative_to(ROOT)))
def test_a_room_knows_who_imports_it(path: Path) -> None:
    """Each place its docstring names does import it; nobody in another room does unnamed."""
    said = SAID.search(ast.get_docstring(ast.parse(path.read_text("utf-8"))) or "")
    named = re.findall(r"``([\w.]+)``", said[1]) if said else []
    if not named:
        return
    who = [name(p) for p, names in IMPORTS.items() if name(path) in names]
    assert not [n for n in named if not any(fits(n, w) for w in who)]
    room = name(path).rpartition(".")[0]
    others = [w for w in who if room.count(".") == 0 or not w.startswith(room + ".")]
    assert not [w for w in others if not any(fits(n, w) for n in named)]


def test_only_the_edge_prints() -> None:
    """Printing and prompting belong to the commands."""
    for path in FILES:
        if inside(path, "diagnose/cli"):
            continue
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
                assert node.func.id not in {"print", "input"}, path


def test_top_level_is_the_card() -> None:
    """Nothing else stands at the top."""
    allowed = {
        "README.md", "DEVELOPERS.md", "pyproject.toml", "LICENSE",
        "diagnose", "knowledge", "tests", "cases",
    }  # fmt: skip
    found = {p.name for p in ROOT.iterdir() if not p.name.startswith(".")}
    assert found - {"build", "dist"} <= allowed or not (ROOT / ".git").exists()
