"""Files that nest, repeat or never end: each is refused in one line, and soon."""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.schema import MOST_NUMBERED
from diagnose.case.writing import append
from diagnose.errors import UsageError
from knowledge.book import the_book
from tests.support.command_line import call
from tests.support.fuzzing import one

BOOK = the_book()
HEAD = "schema = 1\n"
READING = '[[reading]]\nno = {}\nrpm = "700 rpm"\noil = "95 C"\npressure = "8 psi"\n'
BEHAVIOUR = '[[behaviour]]\nno = {}\nshows = "low"\nduring = ["idle"]\n'
FINDING = '[[finding]]\nno = {}\nwhat = "bearing_knock"\nstate = "present"\n'

TEXTS: dict[str, Callable[[], str]] = {
    "arrays in arrays": lambda: HEAD + "a = " + "[" * 900_000 + "]" * 900_000,
    "arrays that never close": lambda: HEAD + "a = " + "[" * 1_900_000,
    "tables in tables": lambda: HEAD + "a = " + "{a=" * 600_000,
    "a key of many parts": lambda: HEAD + "a." * 900_000 + "b = 1",
    "a header of many parts": lambda: HEAD + "[" + "a." * 900_000 + "b]",
    "a list of many words": lambda: (
        HEAD + '[engine]\nhas = ["diesel"' + ',"diesel"' * 180_000 + "]"
    ),
    "many figures": lambda: HEAD + "[engine]\nhas = [" + "1," * 300_000 + "]",
    "many empty entries": lambda: HEAD + "[[finding]]\n" * 160_000,
    "many findings": lambda: HEAD + "".join(FINDING.format(n) for n in range(1, 30_000)),
    "many readings": lambda: HEAD + "".join(READING.format(n) for n in range(1, 27_000)),
    "many behaviours": lambda: HEAD + "".join(BEHAVIOUR.format(n) for n in range(1, 30_000)),
    "a list of many circumstances": lambda: (
        HEAD + '[[behaviour]]\nno = 1\nshows = "low"\nduring = ["idle"' + ',"idle"' * 200_000 + "]"
    ),
    "a pressure of many bounds": lambda: (
        HEAD + '[[reading]]\nno = 1\npressure = "' + "under " * 1_600 + '5 psi"'
    ),
    "a long text": lambda: f'{HEAD}[job]\ntitle = "{"x" * 1_900_000}"',
    "a long number": lambda: "schema = " + "1" * 1_900_000,
    "a long power": lambda: "schema = 1e" + "1" * 1_900_000,
    "a long key": lambda: HEAD + "k" * 1_900_000 + " = 1",
    "open quotes": lambda: HEAD + 'a = """' + '""\\\n' * 470_000,
    "only marks of byte order": lambda: "\ufeff" * 600_000 + HEAD,
    "only zero bytes": lambda: "\0" * 1_900_000,
    "a hundred million bytes": lambda: f'{HEAD}[job]\ntitle = "{"x" * 100_000_000}"',
    "a million entries": lambda: HEAD + "".join(FINDING.format(n) for n in range(1_000_000)),
}


#: take a second or so for each command: one command in the default suite, another for each
SLOW = (
    "a list of many words",
    "many figures",
    "many empty entries",
    "many findings",
    "many readings",
    "many behaviours",
    "a list of many circumstances",
    "open quotes",
)
COMMANDS = (["record", "needle_flickers=yes"], ["signoff"], ["ask"])
ALL = (*COMMANDS, ["review"])


def refused(case: Path, code: int, commands: Sequence[list[str]] = ALL) -> str:
    """One line, whichever of the commands was given the file."""
    for words in commands:
        with one("hostile files", (words, case)):
            done = call(words[0], case, *words[1:], answers="y\n" * 30)
        assert done.code == code, (words, done)
        assert len(done.err.splitlines()) == 1, (words, done)
        assert len(done.err) < 500 + len(str(case))
    return done.err


def refused_whole(case: Path, name: str, commands: Sequence[list[str]]) -> None:
    case.write_text(TEXTS[name](), "utf-8")
    size = case.stat().st_size
    refused(case, 65, commands)
    assert case.stat().st_size == size


@pytest.mark.parametrize("name", TEXTS)
def test_a_file_without_end_is_refused_at_once(tmp_path: Path, name: str) -> None:
    """By every command; where reading takes long, by one of them, each in its turn."""
    turn = SLOW.index(name) % len(ALL) if name in SLOW else None
    refused_whole(tmp_path / "x.toml", name, ALL if turn is None else [ALL[turn]])


@pytest.mark.long
@pytest.mark.parametrize("name", SLOW)
def test_every_command_refuses_what_takes_long_to_read(tmp_path: Path, name: str) -> None:
    refused_whole(tmp_path / "x.toml", name, ALL)


def test_a_path_that_is_no_file_is_refused_at_once(tmp_path: Path) -> None:
    """Nobody waits for a pipe to say something, nor reads a device to its end."""
    pipe = tmp_path / "pipe.toml"
    os.mkfifo(pipe)
    assert "is no ordinary file" in refused(pipe, 66)
    assert "is no ordinary file" in refused(Path("/dev/zero"), 66)
    assert "is a folder" in refused(tmp_path, 66, COMMANDS)  # review takes a folder


def test_the_most_entries_can_be_read_and_one_more_is_not_saved(tmp_path: Path) -> None:
    """The limit holds for what is added as for what is read; nothing that was there is lost."""
    case = tmp_path / "x.toml"
    text = HEAD + "".join(READING.format(n) for n in range(1, MOST_NUMBERED + 1))
    case.write_text(text, "utf-8")
    assert len(load(case, BOOK).readings) == MOST_NUMBERED
    fields = {"rpm": "700 rpm", "pressure": "8 psi"}
    with pytest.raises(UsageError, match=r"not saved: reading: 2,001 entries; at most 2,000"):
        append(case, BOOK, [("reading", fields)])
    assert case.read_text("utf-8") == text
    append(case, BOOK, [("finding", {"what": "bearing_knock", "state": "present"})])
