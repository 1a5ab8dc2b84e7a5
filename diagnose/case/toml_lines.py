"""Set one entry in the text of a TOML file; what a person wrote beside it stays as it is."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any


def with_entry(text: str, section: str, key: str, value: str | Sequence[str]) -> str:
    """The text with one entry of a table set.

    Over its line, else over its comment, else at the end of the table, else in a new table. All
    other lines stay as they are.

    >>> with_entry('[oil]\\n# grade = "_"', "oil", "grade", "SAE 30").splitlines()
    ['[oil]', 'grade = "SAE 30"']
    """
    lines = text.split("\n")
    start, end = _table(lines, section)
    entry = f"{key} = {quoted(value)}"
    if not end:
        return "\n".join([*lines[: _last(lines)], "", f"[{section}]", entry, ""])
    for pattern in (rf"\s*{key}\s*=", rf"\s*#\s*{key}\s*="):
        for i in range(start + 1, end):
            if re.match(pattern, lines[i]):
                lines[i] = entry
                return "\n".join(lines)
    at = start + 1 + _last(lines[start + 1 : end])
    return "\n".join([*lines[:at], entry, *lines[at:]])


def without_entry(text: str, section: str, key: str) -> str:
    """The text with one entry as a comment, all lines of a list; as it is where it has none."""
    lines = text.split("\n")
    in_list = False
    for i in range(*_table(lines, section)):
        if in_list or re.match(rf"\s*{key}\s*=", lines[i]):
            opens = in_list or re.match(rf"\s*{key}\s*=\s*\[", lines[i]) is not None
            in_list = opens and "]" not in lines[i]
            lines[i] = f"# {lines[i].lstrip()}"
    return "\n".join(lines)


def with_first_entry(text: str, section: str, key: str, value: str | Sequence[str]) -> str:
    """The text with one more entry, the first of its table; all other lines stay as they are.

    >>> with_first_entry('[oil]\\n# grade = "SAE 30"', "oil", "grade", "SAE 40").splitlines()
    ['[oil]', 'grade = "SAE 40"', '# grade = "SAE 30"']
    """
    lines = text.split("\n")
    start, end = _table(lines, section)
    if not end:
        return with_entry(text, section, key, value)
    return "\n".join([*lines[: start + 1], f"{key} = {quoted(value)}", *lines[start + 1 :]])


def with_block(text: str, name: str, place: int, fields: Mapping[str, Any]) -> str:
    """The text with one of its tables ``[[name]]`` replaced; ``place``: 0 the first.

    Behind the last one a new one is added. Without ``fields`` the table becomes a comment.

    >>> with_block('[[baseline]]\\nrpm = "700 rpm"', "baseline", 0, {"rpm": "650 rpm"}).splitlines()
    ['[[baseline]]', 'rpm = "650 rpm"']
    """
    import tomli_w

    lines = text.split("\n")
    heads = [i for i, x in enumerate(lines) if re.match(rf"\s*\[\[\s*{name}\s*\]\]", x)]
    new = [f"[[{name}]]", *tomli_w.dumps(fields).rstrip().split("\n")]
    if place >= len(heads):
        return "\n".join([*lines[: _last(lines)], "", *new, ""])
    start = heads[place]
    after = (i for i in range(start + 1, len(lines)) if re.match(r"\s*\[", lines[i]))
    end = next(after, len(lines))
    while end > start + 1 and (not lines[end - 1].strip() or lines[end - 1].lstrip()[0] == "#"):
        end -= 1
    old = [f"# {x.lstrip()}" for x in lines[start:end] if x.strip()]
    return "\n".join([*lines[:start], *(new if fields else old), *lines[end:]])


def _table(lines: list[str], section: str) -> tuple[int, int]:
    """Where a table begins, with its head, and ends; nothing where there is none."""
    start = next((i for i, x in enumerate(lines) if _is_header(x, section)), None)
    if start is None:
        return 0, 0
    after = (i for i in range(start + 1, len(lines)) if re.match(r"\s*\[", lines[i]))
    return start, next(after, len(lines))


def _is_header(line: str, section: str) -> bool:
    return re.match(rf"\s*\[\s*{section}\s*\]", line) is not None


def _last(lines: list[str]) -> int:
    """How many lines there are without the empty ones at the end."""
    count = len(lines)
    while count and not lines[count - 1].strip():
        count -= 1
    return count


def quoted(value: str | Sequence[str]) -> str:
    """A TOML string, or list of strings, of one line."""
    import tomli_w

    if not isinstance(value, str):
        return f"[{', '.join(map(quoted, value))}]"
    return tomli_w.dumps({"x": " ".join(value.split())}).partition("=")[2].strip()
