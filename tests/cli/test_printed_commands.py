"""A command that is printed can be pasted, however long the path of the case."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from diagnose.output.lines import columns, wrapped
from tests.support.command_line import ROOT, call
from tests.support.complaints import path_of
from tests.support.examples import one_in

COMMAND = re.compile(r"diagnose (?:ask|record|review|teardown|signoff|close|history|graph)\b.*")
LONG = "a-folder-with-a-long-name/" * 6
WORDS = [
    ("review",),
    ("teardown",),
    ("signoff",),
    ("teardown", "--all"),
    ("signoff", "--whole-engine", "--all"),
    ("signoff", "--start"),
    ("survey",),
    ("budget",),
    ("forecast",),
    ("record", "needle_flickers=yes"),
    ("record", "--reading", "700 rpm 90 C 20 psi"),
    ("close", "--cause", "relief_debris", "--how", "chip seen", "--reason", "laid up"),
]


def commands(words: tuple[str, ...], path: Path) -> list[str]:
    """Every command in what is printed of a case, with CASE for its path."""
    name, *options = words
    done = call(name, path, *options)
    return [c.replace(str(path), "CASE").replace("'", "") for c in COMMAND.findall(done.out)]


@pytest.fixture
def case_of(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[[str], tuple[Path, Path]]:
    """Copies one case where the command is run, and into a folder of a very long name."""

    def copies(name: str) -> tuple[Path, Path]:
        source = ROOT / "cases" / f"{name}.toml"
        long = tmp_path / f"a b {LONG}"
        long.mkdir(parents=True)
        for folder in (tmp_path, long):
            shutil.copy(source if source.exists() else path_of(name), folder / "case.toml")
            shutil.copy(ROOT / "cases" / "gannet.toml", folder / "gannet.toml")
        monkeypatch.chdir(tmp_path)
        return Path("case.toml"), long / "case.toml"

    return copies


Copies = Callable[[str], tuple[Path, Path]]


@pytest.mark.parametrize("words", WORDS, ids=" ".join)
@pytest.mark.parametrize("name", one_in(3, ["gannet", "petrel", "heron"]))
def test_a_long_path_changes_no_command(name: str, words: tuple[str, ...], case_of: Copies) -> None:
    short, long = case_of(name)
    assert commands(words, long) == commands(words, short)


@pytest.mark.parametrize("words", [("review",), ("teardown",)])
def test_nor_does_a_long_folder_of_closed_jobs(words: tuple[str, ...], case_of: Copies) -> None:
    short, long = case_of("heron")
    found = commands((*words, "--with-history", "."), short)
    assert found[0] == f"diagnose {words[0]} CASE"
    assert found == commands((*words, "--with-history", str(long.parent)), long)
    out = call(words[0], long, "--with-history", long.parent).out
    assert f"{long.parent};" in out


def test_there_are_commands_to_break(case_of: Copies) -> None:
    short, _ = case_of("heron")
    for words in WORDS[:3]:
        assert any("CASE" in c for c in commands(words, short)), words


def test_what_is_kept_whole_is_on_one_line() -> None:
    command = "diagnose review '" + "x y" * 60 + "'"
    lines = wrapped(
        f"Some words before it and then: {command}; and some more after it", 4, 6, [command]
    )
    assert sum(command in line for line in lines) == 1
    assert all(columns(line) <= 80 for line in lines if command not in line)
    assert " ".join(" ".join(lines).split()) == " ".join(
        f"Some words before it and then: {command}; and some more after it".split()
    )


def test_a_path_kept_whole_does_not_break_the_command_around_it() -> None:
    folder = "/a place/" + "of many words " * 8
    command = f"diagnose review '{folder}/case.toml'"
    lines = wrapped(f"The jobs in {folder}; without them: {command}", 0, 2, [folder, command])
    assert [line.strip() for line in lines if command in line] == [command]


def test_other_long_words_are_still_broken() -> None:
    assert all(columns(line) <= 80 for line in wrapped("x" * 500, 2, 4, ["y" * 500, "", " "]))
