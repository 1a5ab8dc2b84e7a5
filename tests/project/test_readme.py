"""The README shows what its commands print, and the two commands for a fresh machine.

Where only the output has changed: ``python -m tests.studies.refresh_readme``.
"""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from itertools import groupby
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.errors import UserError
from knowledge.book import the_book
from tests.studies.refresh_readme import CUT, README, Block, blocks, output, pieces, prepared
from tests.support.command_line import ROOT

TEXT = README.read_text("utf-8")
LINES = TEXT.split("\n")
BLOCKS = list(blocks(LINES))


@pytest.fixture(scope="module")
def outputs(tmp_path_factory: pytest.TempPathFactory) -> list[list[str]]:
    """Every block's output: run in the README's order, in one folder with copies of the cases."""
    folder = prepared(tmp_path_factory.mktemp("readme"))
    return [output(block, folder) for block in BLOCKS]


def first_difference(shown: Sequence[str], real: Sequence[str]) -> str | None:
    """What is shown and not there; runs of lines between cuts must follow one another."""
    at = 0
    cut = False
    for is_cut, run in groupby(shown, lambda line: line == CUT):
        if is_cut:
            cut = True
            continue
        want = list(run)
        places = range(at, len(real) - len(want) + 1) if cut else [at]
        place = next((p for p in places if [*real[p : p + len(want)]] == want), None)
        if place is None:
            return "\n".join(want)
        at = place + len(want)
        cut = False
    return None if cut or at == len(real) else f"unshown without '{CUT}': {real[at]}"


@pytest.mark.parametrize("number", range(len(BLOCKS)), ids=[b.command[:50] for b in BLOCKS])
def test_block_is_what_the_command_prints(number: int, outputs: list[list[str]]) -> None:
    """Line for line, but for what three dots stand for."""
    real = [line.rstrip() for line in outputs[number]]
    missing = first_difference(BLOCKS[number].shown, real)
    assert missing is None, "\n".join(
        [
            "The README shows other words than the command prints. If the change is meant: "
            "python -m tests.studies.refresh_readme",
            f"shown and not printed: {missing}",
            "printed:",
            *real,
        ]
    )


def test_the_tour_shows_every_command() -> None:
    """Each command has a block of its own."""
    shown = {b.command.split()[1] for b in BLOCKS}
    assert {"ask", "record", "review", "lookup", "show", "graph"} <= shown
    assert any("--json" in b.command for b in BLOCKS)


def test_every_console_block_is_run() -> None:
    """No block with a prompt and no program escapes the test."""
    programs = [b for b in BLOCKS if b.program]
    assert len(programs) == TEXT.count("```python\n") == 2
    assert len(re.findall(r"(?m)^\$ ", TEXT)) == len(BLOCKS) - len(programs)
    assert all(len(b.shown) < 60 for b in BLOCKS)


def test_install_command() -> None:
    """One line installs into a fresh environment and runs the main job on a case that exists."""
    found = re.findall(
        r"(?m)^python3 -m venv \.venv && \.venv/bin/pip install -q \. && "
        r"\.venv/bin/diagnose review (cases/\w+\.toml)$",
        TEXT,
    )
    assert len(found) == 1
    assert (ROOT / found[0]).is_file()


def test_test_command() -> None:
    """One line alone in its fence, marked by a comment directly above."""
    found = re.findall(r"(?m)^<!-- test command -->\n```\w*\n(.*?)\n```$", TEXT, re.DOTALL)
    assert found == ["pip install -q '.[test]' && pytest"]


def test_the_case_file_by_example_is_a_case(tmp_path: Path) -> None:
    """The pieces shown, one after the other, are read without a fault."""
    path = tmp_path / "example.toml"
    shown = (ROOT / "cases" / "README.md").read_text("utf-8")
    path.write_text("\n".join(re.findall(r"(?ms)^```toml\n(.*?)^```$", shown)), "utf-8")
    case = load(path, the_book())
    assert case.last_number == 10
    assert case.closed is not None
    assert [m.value for m in case.measurements] == [pytest.approx(0.13e-3)]


def test_every_exit_code_is_documented() -> None:
    """The table names each code an error can end in, and those that are no error."""
    listed = {int(code) for code in re.findall(r"(?m)^\| (\d+) \|", TEXT)}
    kinds = [UserError]
    for kind in kinds:  # grows while it is read
        kinds += kind.__subclasses__()
    assert listed == {0, 1, 130, *(kind.code for kind in kinds)}


def test_documented_keys_are_in_the_data(outputs: list[list[str]]) -> None:
    """The table of keys holds nothing that the data lack."""
    number = next(i for i, b in enumerate(BLOCKS) if b.command.endswith("--json"))
    data = json.loads("\n".join(outputs[number]))
    rows = re.findall(r"(?m)^\| ((?:`\w+`(?:, )?)+) \|", TEXT)
    listed = {key for row in rows for key in re.findall(r"\w+", row)}
    assert listed
    assert listed <= set(data)


def test_files_and_folders_named_exist() -> None:
    """Links and cases named in the text are there."""
    for name in re.findall(r"\]\(([^)#:]+)\)", TEXT) + re.findall(r"cases/\w+\.toml", TEXT):
        assert (ROOT / name).exists(), name


def test_lines_are_not_too_long() -> None:
    """A hundred columns at most, notes to the refresher apart."""
    assert [x for x in LINES if len(x) > 100 and not x.startswith("<!-- ")] == []


@pytest.mark.parametrize(
    ("shown", "real", "same"),
    [
        (["a", "b"], ["a", "b"], True),
        (["a"], ["a", "b"], False),
        (["a", CUT], ["a", "b"], True),
        ([CUT, "b"], ["a", "b"], True),
        ([CUT, "c", CUT, "b"], ["a", "b", "c"], False),
        (["b"], ["a", "b"], False),
        (["a", CUT, "d"], ["a", "b", "c", "d"], True),
    ],
)
def test_the_comparison_itself(shown: list[str], real: list[str], same: bool) -> None:
    """Cuts may hide lines, not change, swap or drop them silently."""
    assert (first_difference(shown, real) is None) is same


def test_pieces_are_cut_as_asked() -> None:
    """One line, a line and some more, from a line to a line; dots only where something is cut."""
    lines = ["a", "b", "c", "d", "e"]
    assert pieces(lines, "") == lines
    assert pieces(lines, "^a +1 | ^d") == ["a", "b", CUT, "d", CUT]
    assert pieces(lines, "b .. d") == [CUT, "b", "c", "d", CUT]
    with pytest.raises(ValueError, match="no line like"):
        pieces(lines, "^b | ^a")


def test_blocks_are_read_with_their_notes() -> None:
    """Command, shown lines, answers and kept pieces."""
    text = "<!-- answers: n | d -->\n<!-- keep: ^x -->\n```console\n$ diagnose ask a.toml\nx\n```\n"
    block = next(blocks(text.split("\n")))
    assert block == Block("diagnose ask a.toml", ("x",), ("n", "d"), "^x", 4, 5)


def test_programs_are_read_with_their_output() -> None:
    """The program of a Python block, and the lines of the text block after it."""
    text = "```python\nprint(1)\n```\n\nIt prints:\n\n```text\n1\n```\n"
    block = next(blocks(text.split("\n")))
    assert (block.program, block.shown, block.first, block.last) == ("print(1)", ("1",), 7, 8)


def test_readme_is_written_as_text() -> None:
    """British spelling of the words that come up, and no path of one machine."""
    prose = re.sub(r"(?s)```.*?```", "", TEXT)
    assert not re.findall(r"\b(?:color|gray|analyze|meter)\b", prose)
    assert not re.findall(r"/(?:home|root|tmp|work|Users)/", TEXT)
    assert Path(README).stat().st_size < 60_000
