"""Rewrite the README's console blocks in place from the real commands.

``python -m tests.studies.refresh_readme`` after anything that changes what the tool prints; it
changes nothing but the lines between a block's command and its closing fence. HTML comments
directly above a block's fence say what is typed at the prompts, and which pieces of the output
stay:

    <!-- answers: Skua, harbour launch | needle dances | n -->
    <!-- keep: ^Root causes .. \\[relief_debris\\] | ^Look at next +3 -->

A piece is ``START`` (that line) or ``START .. END``, both regular expressions, with ``+N`` behind
for N lines more. What is left out shows as a line of three dots.

A ``python`` block is a program; the ``text`` block after it shows what the program prints.
"""

from __future__ import annotations

import os
import re
import shlex
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterable, Iterator, Sequence
from contextlib import chdir
from dataclasses import dataclass
from pathlib import Path

from tests.support.command_line import ROOT, call

README = ROOT / "README.md"
CUT = "..."


@dataclass(frozen=True)
class Block:
    """One command or program, the lines shown as its output, and where these are."""

    command: str
    shown: tuple[str, ...]
    answers: tuple[str, ...]
    keep: str
    first: int  #: index in the README of the first shown line
    last: int  #: index of the closing fence
    program: str = ""  #: Python source; empty: the command is run


def blocks(lines: Sequence[str]) -> Iterator[Block]:
    """Every fenced block that begins with ``$ diagnose``, and every program with its output."""
    i = 0
    program = ""
    while i < len(lines):
        if not lines[i].startswith("```"):
            i += 1
            continue
        end = next(k for k in range(i + 1, len(lines)) if lines[k].startswith("```"))
        if lines[i + 1].startswith("$ diagnose"):
            notes = _notes(lines, i)
            answers = notes.get("answers")
            yield Block(
                lines[i + 1][2:],
                tuple(lines[i + 2 : end]),
                tuple(a.strip() for a in answers.split("|")) if answers else (),
                notes.get("keep", ""),
                i + 2,
                end,
            )
        elif lines[i] == "```python":
            program = "\n".join(lines[i + 1 : end])
        elif lines[i] == "```text" and program:
            yield Block("python program", tuple(lines[i + 1 : end]), (), "", i + 1, end, program)
            program = ""
        i = end + 1


def _notes(lines: Sequence[str], fence: int) -> dict[str, str]:
    found = {}
    while fence and (note := re.fullmatch(r"<!-- (\w+): (.*) -->", lines[fence - 1])):
        found[note[1]] = note[2]
        fence -= 1
    return found


def prepared(folder: Path) -> Path:
    """A folder to run in: the cases are copies, so that commands may write."""
    shutil.copytree(ROOT / "cases", folder / "cases")
    return folder


def output(block: Block, folder: Path) -> list[str]:
    """What is printed in a terminal of eighty columns, typed answers included."""
    if block.program:
        return _lines(_printed(block.program, folder))
    with chdir(folder):
        done = call(
            *shlex.split(block.command)[1:], answers="".join(f"{a}\n" for a in block.answers)
        )
    if not block.answers:
        return _lines(done.out + done.err)
    return [*_woven(_lines(done.err), block.answers), *_lines(done.out)]


def _printed(program: str, folder: Path) -> str:
    """What a program prints in a process of its own."""
    done = subprocess.run(
        [sys.executable, "-c", program],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT), "COLUMNS": "80", "NO_COLOR": "1"},
        capture_output=True,
        encoding="utf-8",
        timeout=60,
        check=False,
    )
    return done.stdout + done.stderr


def _lines(text: str) -> list[str]:
    return text.rstrip("\n").split("\n") if text else []


def _woven(lines: Iterable[str], answers: Sequence[str]) -> Iterator[str]:
    """Prompts with the answers behind them: a pipe shows no typing, a terminal does."""
    left = iter(answers)
    for line in lines:
        yield (line + next(left, "")).rstrip() if line.endswith(": ") else line


def pieces(lines: Sequence[str], keep: str) -> list[str]:
    """The pieces that stay, three dots between them. Raises ValueError where one is not found."""
    if not keep:
        return list(lines)
    out: list[str] = []
    done = 0
    for piece in keep.split(" | "):
        start, end = _span(lines, piece.strip(), done)
        if start > done:
            out.append(CUT)
        out += lines[start:end]
        done = end
    return out + ([CUT] if done < len(lines) else [])


def _span(lines: Sequence[str], piece: str, after: int) -> tuple[int, int]:
    whole, _, more = piece.partition(" +")
    head, _, tail = whole.partition(" .. ")
    start = _find(lines, head, after)
    end = _find(lines, tail, start) if tail else start
    return start, min(end + int(more or 0) + 1, len(lines))


def _find(lines: Sequence[str], pattern: str, after: int) -> int:
    for i in range(after, len(lines)):
        if re.search(pattern, lines[i]):
            return i
    raise ValueError(f"no line like {pattern!r} after line {after} of:\n" + "\n".join(lines))


def refreshed(text: str, folder: Path) -> str:
    """The README with every block's output as the commands print it now."""
    lines = text.split("\n")
    out: list[str] = []
    done = 0
    for block in blocks(lines):
        out += lines[done : block.first]
        out += (line.rstrip() for line in pieces(output(block, folder), block.keep))
        done = block.last
    return "\n".join([*out, *lines[done:]])


def main() -> None:
    """Rewrite the README where it is not as it should be."""
    old = README.read_text("utf-8")
    with tempfile.TemporaryDirectory() as name:
        new = refreshed(old, prepared(Path(name)))
    if new != old:
        README.write_text(new, "utf-8")
    print("README.md rewritten" if new != old else "README.md is up to date")


if __name__ == "__main__":
    main()
