"""No function is long: what does several things is split, and each piece has a name."""

from __future__ import annotations

import ast
from collections.abc import Iterator

from tests.project.test_house import FILES, name

MOST_LINES = 60  #: of a body, its docstring apart
#: a line for each role of phrases, and nothing is decided
LISTS = {"diagnose.understanding.words.lexicon.__init__"}


def lengths(source: str) -> Iterator[tuple[str, int]]:
    """Yield each function with the number of lines of its body."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            body = node.body[1:] if ast.get_docstring(node) is not None else node.body
            if body:
                yield node.name, (body[-1].end_lineno or 0) - body[0].lineno + 1


def test_no_function_is_long() -> None:
    """Decorators, parameters and docstring do not count."""
    long = {
        f"{name(path)}.{function}": lines
        for path in FILES
        for function, lines in lengths(path.read_text("utf-8"))
        if lines > MOST_LINES
    }
    assert long.keys() == LISTS


def test_the_count_itself() -> None:
    """A docstring and the parameters are left out; a function inside another counts by itself."""
    source = 'def outer(\n    a,\n):\n    """One\n    two."""\n    def inner():\n        pass\n    x = 1\n'
    assert dict(lengths(source)) == {"outer": 3, "inner": 1}
