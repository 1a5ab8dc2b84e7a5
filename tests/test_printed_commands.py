"""A command that is printed can be pasted, however long the path of the case."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pytest

from diagnose.output.lines import columns, wrapped
from tests.support.command_line import ROOT, call
from tests.support.complaints import path_of

COMMAND = re.compile(r"diagnose (?:ask|record|review|teardown|signoff|close|history|graph)\b.*")
LONG = "a-folder-with-a-long-name/" * 6
WORDS = [
    ("review",),
    ("teardown",),
    ("signoff",),
    ("signoff", "--whole-engine"),
    ("signoff", "--start"),
    ("survey",),
    ("budget",),
    ("forecast",),
    ("record", "needle_flickers=yes"),
    ("record", "--reading", "700 rpm 90 C 20 psi"),
    ("close", "--cause", "relief_debris", "--how", "chip seen", "--reason", "laid up"),
]


def commands(path: Path, words: tuple[str, ...], folder: str) -> list[str]:
    """Every command in what is printed of a case, its path left out."""
    name, *options = words
    done = call(name, path, *options)
    found = COMMAND.findall(done.out)
    return [c.replace(folder, "FOLDER").replace("'", "") for c in found]


def copies(name: str, tmp_path: Path) -> tuple[tuple[Path, str], tuple[Path, str]]:
    """One case in a folder of a short name and in one of a very long one with a blank."""
    source = ROOT / "cases" / f"{name}.toml"
    made = []
    for folder in (tmp_path / "a b", tmp_path / f"a b {LONG}"):
        folder.mkdir(parents=True, exist_ok=True)
        shutil.copy(source if source.exists() else path_of(name), folder / "case.toml")
        made.append((folder / "case.toml", str(folder)))
    return made[0], made[1]


@pytest.mark.parametrize("words", WORDS, ids=" ".join)
@pytest.mark.parametrize("name", ["heron", "gannet", "petrel"])
def test_a_long_path_changes_no_command(name: str, words: tuple[str, ...], tmp_path: Path) -> None:
    (short, folder), (long, other) = copies(name, tmp_path)
    assert commands(long, words, other) == commands(short, words, folder)


@pytest.mark.parametrize("words", [("review",), ("teardown",)])
def test_nor_does_a_long_folder_of_closed_jobs(words: tuple[str, ...], tmp_path: Path) -> None:
    (short, folder), (long, other) = copies("heron", tmp_path)
    for case in (short, long):
        shutil.copy(ROOT / "cases" / "gannet.toml", case.parent / "gannet.toml")
    found = commands(short, (*words, "--with-history", folder), folder)
    assert found == commands(long, (*words, "--with-history", other), other)
    assert found[0].startswith(f"diagnose {words[0]} FOLDER/case.toml")
    out = call(words[0], long, "--with-history", other).out
    assert f" in {other};" in out


def test_there_are_commands_to_break(tmp_path: Path) -> None:
    (short, folder), _ = copies("heron", tmp_path)
    for words in WORDS[:3]:
        assert any("FOLDER/case.toml" in c for c in commands(short, words, folder)), words


def test_what_is_kept_whole_stands_in_one_line() -> None:
    command = "diagnose review '" + "x y" * 60 + "'"
    lines = wrapped(
        f"Some words before it and then: {command}; and some more after it", 4, 6, [command]
    )
    assert sum(command in line for line in lines) == 1
    assert all(columns(line) <= 80 for line in lines if command not in line)
    assert " ".join(" ".join(lines).split()) == " ".join(
        f"Some words before it and then: {command}; and some more after it".split()
    )


def test_other_long_words_are_still_broken() -> None:
    assert all(columns(line) <= 80 for line in wrapped("x" * 500, 2, 4, ["y" * 500, "", " "]))
