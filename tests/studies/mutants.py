"""Mutants of a module: cosmic-ray's small changes of one line, drawn by chance.

Left alone: type hints and decorators, which change no answer. Left out: changes that do not
compile, arithmetic made bit-fiddling, which fails on any float, and ``==`` for ``is``.
"""

from __future__ import annotations

import ast
import importlib
import random
import re
from dataclasses import dataclass
from typing import Any

_BITS = "BitAnd|BitOr|BitXor|LShift|RShift"
_POINTLESS = re.compile(
    rf"RemoveDecorator|Operator_(?!{_BITS})\w+_({_BITS}|Mod|FloorDiv|Pow)$|_(LShift|RShift)$"
    r"|Operator_(?!Is)[A-Za-z]+_Is(Not)?$|Operator_Is(Not)?_(?!Is)\w+$"
)


@dataclass(frozen=True)
class Mutant:
    """One wrong line."""

    module: str
    number: int
    line: str  #: as it is
    becomes: str
    code: str  #: the whole module with it

    def __str__(self) -> str:
        return f"{self.module}:{self.number}\n    {self.line}\n    {self.becomes}"


def _left_alone(code: str) -> list[tuple[tuple[int, int], tuple[int, int]]]:
    """Where type hints and decorators stand."""
    found: list[ast.expr | None] = []
    tree = ast.parse(code)
    for named in tree.body:  # another name for a type
        if isinstance(named, ast.Assign) and isinstance(named.value, ast.Subscript):
            found.append(named.value)
    for node in ast.walk(tree):
        if isinstance(node, ast.AnnAssign | ast.arg):
            found.append(node.annotation)
        elif isinstance(node, ast.FunctionDef):
            found += [node.returns, *node.decorator_list]
        elif isinstance(node, ast.ClassDef):
            found += node.decorator_list
    return [
        ((e.lineno, e.col_offset - 1), (e.end_lineno or 0, e.end_col_offset or 0))
        for e in found
        if e
    ]


def changes_of(code: str) -> dict[int, list[tuple[Any, int]]]:
    """For each line: every operator of cosmic-ray that may change it, and its how-manieth turn."""
    trees = importlib.import_module("cosmic_ray.ast")
    plugins = importlib.import_module("cosmic_ray.plugins")
    tree, alone = trees.get_ast(code), _left_alone(code)
    found: dict[int, list[tuple[Any, int]]] = {}
    for name in plugins.operator_names():
        kind = plugins.get_operator(name)
        if kind.arguments() or _POINTLESS.search(name):
            continue
        operator = kind()
        spots = (s for n in trees.ast_nodes(tree) for s in operator.mutation_positions(n))
        for turn, (start, end) in enumerate(spots):
            if not any(a <= start and end <= b for a, b in alone):
                found.setdefault(start[0], []).append((operator, turn))
    return found


def mutants(module: str, code: str, how_many: int, seed: int) -> list[Mutant]:
    """So many of a module's mutants, each on another line."""
    changes, dice = changes_of(code), random.Random(f"{seed} {module}")
    visitor = importlib.import_module("cosmic_ray.mutating").MutationVisitor
    found: list[Mutant] = []
    for number in dice.sample(sorted(changes), len(changes)):
        if len(found) == how_many:
            break
        operator, turn = dice.choice(changes[number])
        changed = visitor.mutate_code(code, operator, turn)
        pair = list(zip(code.splitlines(), changed.splitlines(), strict=False))
        at = next(i for i, (one, other) in enumerate(pair) if one != other)
        one, other = (text.strip() for text in pair[at])
        try:
            ast.parse(changed)
        except SyntaxError:
            continue
        found.append(Mutant(module, at + 1, one, other, changed))
    return sorted(found, key=lambda m: m.number)
