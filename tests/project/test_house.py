"""Which module may import which, one module per outside package, no cycles, no long file."""

from __future__ import annotations

import ast
import re
import sys
from dataclasses import dataclass, field
from fnmatch import fnmatch
from functools import cache
from pathlib import Path

import networkx as nx
import pytest

import diagnose
from diagnose.cli.app import COMMANDS
from tests.support.every import every

ROOT = Path(__file__).parents[2]
FILES = sorted([*ROOT.glob("diagnose/**/*.py"), *ROOT.glob("knowledge/**/*.py")])
MOST_LINES = 400
MOST_METHODS = 15  #: of one class

#: the only modules that import an outside package (patterns of module names)
DOORS = {
    "typer": ["diagnose.cli.*"],
    "pydantic": ["diagnose.case.schema", "diagnose.case.loading"],
    "networkx": [
        "diagnose.inference.causegraph",
        "diagnose.inference.graph_formats",
        "diagnose.planning.access_tree",
    ],
    "jinja2": ["diagnose.output.html.page"],
    "PIL": ["diagnose.output.html.photos"],
    "matplotlib": ["diagnose.output.html.charts"],
    "rapidfuzz": ["diagnose.lookup.finder", "diagnose.understanding.words.spelling"],
    "tomli_w": ["diagnose.case.writing", "diagnose.case.toml_lines"],
    "segno": ["diagnose.serve.qr"],
    "starlette": ["diagnose.serve.app"],
    "uvicorn": ["diagnose.serve.running"],
}

#: the layers of ``diagnose``, top first: a module imports from its own package and lower layers
LAYERS = [
    ["diagnose.__main__"],
    ["diagnose.cli"],
    ["diagnose.serve"],
    ["diagnose"],
    ["diagnose.library"],
    ["diagnose.output.html"],
    ["diagnose.output"],
    ["diagnose.entry"],
    ["diagnose.expectations", "diagnose.history", "diagnose.signoff", "diagnose.understanding"],
    *([f"diagnose.understanding.{name}"] for name in ("sights", "shows", "work", "pressures")),
    *([f"diagnose.understanding.{name}"] for name in ("values", "sentences", "words")),
    ["diagnose.bearings"],
    ["diagnose.teardown"],
    ["diagnose.diagnosis"],
    *([f"diagnose.reasoning.{name}"] for name in ("check_planner", "found_faults", "reasons")),
    *([f"diagnose.reasoning.{name}"] for name in ("comes_first", "seen_on_engine")),
    *([f"diagnose.reasoning.{n}"] for n in ("asked_already", "instrument_only", "trusted_gauge")),
    ["diagnose.reasoning.case_inference"],
    ["diagnose.bookcheck", "diagnose.circuit", "diagnose.lookup", "diagnose.reasoning"],
    ["diagnose.case", "diagnose.planning"],
    ["diagnose.fits", "diagnose.hydraulics", "diagnose.inference"],
    ["diagnose.errors", "diagnose.ways"],
    ["diagnose.ids"],
]

#: all that these may import of ``knowledge``
KNOWLEDGE_USED = {
    **{name: [] for name in ("diagnose.errors", "diagnose.ways", "diagnose.ids")},
    "diagnose.fits": ["knowledge.stations.bearings.sizes"],
    "diagnose.hydraulics": ["knowledge.units", "knowledge.stations.oil.grades"],
    "diagnose.inference": [
        "knowledge.limits",
        "knowledge.model",
        "knowledge.alarm",
        "knowledge.rule_api",
        "knowledge.reports.shapes",
    ],
    "diagnose.planning": ["knowledge.model", "knowledge.work", "knowledge.access"],
    "diagnose.understanding": [
        "knowledge.book",
        "knowledge.lexicon",
        "knowledge.model",
        "knowledge.reports.words",
        "knowledge.synonyms",
        "knowledge.units",
    ],
    "diagnose.lookup": [
        "knowledge.book",
        "knowledge.faults",
        "knowledge.limits",
        "knowledge.model",
        "knowledge.reports.shapes",
        "knowledge.rule_api",
        "knowledge.synonyms",
        "knowledge.work",
    ],
}
#: pure computation on numbers and names: imports nothing of ``knowledge``
NUMBERS_ONLY = ["cause_sets", "elimination", "network", "ordering", "splitting"]

#: importing file, and the files it must not import (patterns of module names)
NEVER = [
    ("knowledge*", "diagnose*"),
    ("diagnose*", "*.rules*"),
    ("diagnose*", "*.links*"),
    ("diagnose*", "*.inhibitors"),
    ("diagnose*", "tests*"),
    ("knowledge.model", "knowledge*"),
    ("knowledge.reports.words", "knowledge*"),
    ("knowledge.limits", "knowledge.[!m]*"),
    ("knowledge.units", "knowledge*"),
    ("knowledge.stations.*.findings*", "*.causes*"),
    ("knowledge.*.findings*", "*.links*"),
    ("knowledge.*.findings*", "*.inhibitors"),
    ("knowledge.*.findings*", "*.rules*"),
    ("knowledge.pressure.patterns*", "*.causes*"),
    ("knowledge.pressure.patterns*", "*.links*"),
    ("knowledge.pressure.patterns*", "*.rules*"),
    ("knowledge.circuit.conditions", "*.causes*"),
    ("knowledge.circuit.conditions", "*.links*"),
    ("knowledge.circuit.conditions", "*.rules*"),
    ("knowledge.*.causes*", "*.links*"),
    ("knowledge.*.causes*", "*.inhibitors"),
    ("knowledge.*.inhibitors", "*.inhibitors"),
    ("knowledge.*.inhibitors", "*.links*"),
    ("knowledge.*.inhibitors", "*.rules*"),
    ("knowledge.*.causes*", "*.rules*"),
    ("knowledge.*.links*", "*.links*"),
    ("knowledge.*.links*", "*.rules*"),
    ("knowledge.*.rules*", "*.rules*"),
    ("knowledge.*.parts*", "*.rules*"),
    ("knowledge.*.parts*", "*.links*"),
    ("knowledge.*.tasks*", "*.rules*"),
    ("knowledge.*.tasks*", "*.links*"),
    ("knowledge.access*", "*.rules*"),
    ("knowledge.engines*", "*.rules*"),
    ("knowledge.sources*", "knowledge.stations*"),
]

#: what renderers leave to the documents: the results of reasoning
RESULTS = [
    "diagnose.diagnosis",
    "diagnose.reasoning.case_inference",
    "diagnose.reasoning.check_planner",
    "diagnose.reasoning.reasons",
    "diagnose.reasoning.seen_on_engine",
    "diagnose.inference*",
    "diagnose.planning*",
    "diagnose.bearings*",
    "diagnose.circuit*",
    "diagnose.teardown*",
    "diagnose.signoff*",
    "diagnose.history*",
]
RENDERERS = ["text*", "markdown*", "html*"]
NEVER += [(f"diagnose.output.{form}", result) for form in RENDERERS for result in RESULTS]


def name(path: Path) -> str:
    """Return the module's dotted name."""
    return ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__")


MODULES = {name(p): p for p in FILES}


@dataclass
class Looked:
    """What one look through the code of a file finds."""

    imported: set[str] = field(default_factory=set)  #: at the top or inside a function
    called: set[str] = field(default_factory=set)  #: functions called by a bare name
    defined: list[str] = field(default_factory=list)  #: at the top
    used: set[str] = field(default_factory=set)  #: names that are read or imported
    methods: dict[str, int] = field(default_factory=dict)  #: how many each class has


@cache
def looked(path: Path) -> Looked:
    """Return what a file holds; each file is parsed once."""
    found = Looked()
    tree = ast.parse(path.read_text("utf-8"))
    for statement in tree.body:
        found.defined += _defined(statement)
    for node in ast.walk(tree):
        match node:
            case ast.Import(names=names):
                found.imported.update(a.name for a in names)
            case ast.ImportFrom(module=module, names=names):
                found.used.update(each.name for each in names)
                for each in names if module else ():
                    whole = f"{module}.{each.name}"
                    found.imported.add(whole if whole in MODULES else str(module))
            case ast.Name(id=word, ctx=ast.Load()) | ast.Attribute(attr=word):
                found.used.add(word)
            case ast.Call(func=ast.Name(id=word)):
                found.called.add(word)
            case ast.ClassDef():
                count = sum(isinstance(part, ast.FunctionDef) for part in node.body)
                found.methods[node.name] = count
    return found


@cache
def imports() -> dict[str, set[str]]:
    """Return what each module imports, by its dotted name."""
    return {module: looked(path).imported for module, path in MODULES.items()}


def within(module: str, package: str) -> bool:
    """Return whether a module is the package or inside it."""
    return module == package or module.startswith(package + ".")


def layer_of(module: str) -> str:
    """Return the innermost package of LAYERS that holds the module. Raises LookupError."""
    packages = [p for layer in LAYERS for p in layer if p != "diagnose"]
    held = [p for p in packages if within(module, p)]
    if module == "diagnose":
        return module
    if not held:
        raise LookupError(f"add {module} to a layer of LAYERS")
    return max(held, key=len)


DEPTH = {package: depth for depth, layer in enumerate(LAYERS) for package in layer}


@pytest.mark.parametrize("module", [m for m in MODULES if within(m, "diagnose")])
def test_imports_go_down(module: str) -> None:
    """A module imports from its own package and from lower layers only."""
    own = layer_of(module)
    for other in imports()[module]:
        if within(other, "diagnose"):
            package = layer_of(other)
            assert package == own or DEPTH[package] > DEPTH[own], f"{module} imports {other}"


@pytest.mark.parametrize("package", KNOWLEDGE_USED)
def test_computation_imports_only_what_it_needs_of_knowledge(package: str) -> None:
    """Inference, planning, physics and lookup get the book's content as arguments."""
    for module, names in imports().items():
        if within(module, package):
            used = [n for n in names if within(n, "knowledge")]
            allowed = KNOWLEDGE_USED[package]
            assert not [n for n in used if not any(within(n, a) for a in allowed)], module


@pytest.mark.parametrize("module", NUMBERS_ONLY)
def test_exact_inference_imports_no_knowledge(module: str) -> None:
    """The network and its elimination know node names and numbers only."""
    names = imports()[f"diagnose.inference.{module}"]
    assert not [n for n in names if within(n, "knowledge")]


@pytest.mark.parametrize(("importer", "forbidden"), NEVER)
def test_never_imports(importer: str, forbidden: str) -> None:
    """No file that fits the first pattern imports a file that fits the second."""
    importers = [m for m in MODULES if fnmatch(m, importer)]
    assert importers, "the pattern fits no file"
    for module in importers:
        bad = [
            n for n in imports()[module] if fnmatch(n, forbidden) and n in MODULES | {"tests": 0}
        ]
        assert not bad, f"{module} imports {bad}"


@pytest.mark.parametrize("package", DOORS)
def test_one_door_per_package(package: str) -> None:
    """Each outside package is imported in one place."""
    importers = [m for m, names in imports().items() if any(within(n, package) for n in names)]
    assert importers
    for module in importers:
        assert any(fnmatch(module, door) for door in DOORS[package]), f"{module} imports {package}"


def test_every_dependency_has_its_door() -> None:
    """Whatever else is imported is ours, the standard library's or numpy."""
    known = {"diagnose", "knowledge", "numpy", *DOORS, *sys.stdlib_module_names}
    for module, names in imports().items():
        assert not {n.partition(".")[0] for n in names} - known, module


def test_no_import_cycle() -> None:
    """The imports form a directed acyclic graph."""
    graph = nx.DiGraph(
        (m, n) for m, names in imports().items() for n in names if n in MODULES and n != m
    )
    assert nx.is_directed_acyclic_graph(graph), nx.find_cycle(graph)


@every([*FILES, *sorted(ROOT.glob("tests/**/*.py"))], lambda p: str(p.relative_to(ROOT)))
def test_file_is_short(path: Path) -> None:
    """No file is longer than 400 lines."""
    assert len(path.read_text("utf-8").splitlines()) <= MOST_LINES


IMPORTED_BY = re.compile(r"[Ii]mported by (.*?)(?:[.;](?:\s|$))", re.DOTALL)


def fits(place: str, module: str) -> bool:
    """Return whether a module is the place named, or in it: ``report``, ``hydraulics.oil``."""
    return set(place.split(".")) <= set(module.split("."))


def named_importers(path: Path) -> list[str]:
    """Return the importers that a module's docstring names."""
    code = path.read_text("utf-8")
    if not IMPORTED_BY.search(code):
        return []
    text = IMPORTED_BY.search(ast.get_docstring(ast.parse(code)) or "")
    return re.findall(r"``([\w.]+)``", text[1]) if text else []


NAMING = [path for path in FILES if named_importers(path)]


def test_some_docstrings_name_their_importers() -> None:
    """The test below asks only these."""
    assert len(NAMING) >= 5


@pytest.mark.parametrize("path", NAMING, ids=lambda p: str(p.relative_to(ROOT)))
def test_docstring_names_the_importers(path: Path) -> None:
    """Each importer its docstring names imports it; no other package imports it unnamed."""
    named = named_importers(path)
    importers = [m for m, names in imports().items() if name(path) in names]
    assert not [n for n in named if not any(fits(n, m) for m in importers)]
    package = name(path).rpartition(".")[0]
    others = [m for m in importers if package.count(".") == 0 or not m.startswith(package + ".")]
    assert not [m for m in others if not any(fits(n, m) for n in named)]


def test_only_the_command_line_prints() -> None:
    """Only ``diagnose.cli`` prints and prompts."""
    for path in FILES:
        if not within(name(path), "diagnose.cli"):
            assert not looked(path).called & {"print", "input"}, path


def test_each_command_has_the_module_of_its_name() -> None:
    """``forecast`` is in ``cli/commands/forecast.py``; no command imports another."""
    package = "diagnose.cli.commands"
    homes = {f"{package}.{command.__name__}": command.__module__ for command, _ in COMMANDS}
    assert all(home == module for home, module in homes.items())
    assert set(homes) == {m for m in MODULES if m.startswith(f"{package}.")}
    for module in homes:
        assert not [n for n in imports()[module] if within(n, package)], module


def test_what_is_defined_is_used() -> None:
    """Each function, class and constant of ``diagnose`` is named where it is not defined."""
    defined: dict[str, list[str]] = {}
    used = set(diagnose.__all__)
    for path in [*FILES, *ROOT.glob("tests/**/*.py")]:
        if path.is_relative_to(ROOT / "diagnose"):
            for word in looked(path).defined:
                defined.setdefault(word, []).append(name(path))
        used |= looked(path).used
    assert len(defined) > 2000
    assert {word: homes for word, homes in defined.items() if word not in used} == {}


def _defined(node: ast.stmt) -> list[str]:
    """The names that a statement at the top of a module defines."""
    match node:
        case ast.FunctionDef(name=word) | ast.ClassDef(name=word):
            return [word]
        case ast.Assign(targets=targets):
            return [t.id for t in targets if isinstance(t, ast.Name) and not t.id.startswith("__")]
        case ast.AnnAssign(target=ast.Name(id=word)):
            return [word]
    return []


def test_top_level_holds_only_what_is_listed() -> None:
    """Nothing else is at the top of the project."""
    allowed = {
        "README.md", "DEVELOPERS.md", "CHANGELOG.md", "pyproject.toml", "LICENSE",
        "diagnose", "knowledge", "tests", "cases",
    }  # fmt: skip
    found = {p.name for p in ROOT.iterdir() if not p.name.startswith(".")}
    assert found - {"build", "dist"} <= allowed or not (ROOT / ".git").exists()


def test_no_class_has_too_many_methods() -> None:
    """Methods and properties of every class, inherited ones apart."""
    counts = {
        f"{module}.{kind}": many
        for module, path in MODULES.items()
        for kind, many in looked(path).methods.items()
    }
    assert counts["diagnose.diagnosis.Diagnosis"] > 5
    assert {name: n for name, n in counts.items() if n > MOST_METHODS} == {}
