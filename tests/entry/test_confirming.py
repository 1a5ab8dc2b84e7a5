"""The say over what was understood: keep, strike out, correct, add; nothing unseen is written."""

from __future__ import annotations

import io
from collections.abc import Iterator
from pathlib import Path
from unittest.mock import patch

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.cli import app
from diagnose.entry.confirming import confirmed
from diagnose.entry.telling import Account, understand, write
from knowledge.book import the_book

BOOK = the_book()
TOLD = "5 psi at hot idle, 60 cold. lifters ticking, no leaks"


class Person:
    """Types the lines, and keeps what is shown and said to it."""

    def __init__(self, *lines: str) -> None:
        self.lines: Iterator[str] = iter(lines)
        self.shown: list[list[str]] = []
        self.said: list[str] = []

    def over(self, path: Path, words: str = TOLD) -> Account | None:
        """Go through the facts of some words."""
        return confirmed(
            understand(path, words, BOOK),
            BOOK,
            lambda a: self.shown.append([f"{n} {fact.short}" for n, fact in a.kept]),
            self.said.append,
            lambda prompt: next(self.lines, None),
        )


ALL = [
    "1 reading 5 psi hot, idle",
    "2 reading 60 psi cold",
    "3 behaviour ticking",
    "4 finding oil_seen_outside absent",
]


@pytest.mark.parametrize(
    ("lines", "kept"),
    [
        ([""], ALL),
        (["y"], ALL),
        (["2", ""], [ALL[0], ALL[2], ALL[3]]),
        (["2, 4", "1", ""], [ALL[2]]),
        (["1 2 3 4", ""], []),
        (["strike 2", "delete 1 and 4", ""], [ALL[2]]),
        (["remove fact 3", ""], [ALL[0], ALL[1], ALL[3]]),
        (["1 = 12 psi at hot idle", ""], ["1 reading 12 psi hot, idle", *ALL[1:]]),
        (["1: 12 psi", ""], ["1 reading 12 psi hot, idle", *ALL[1:]]),
        (["1 = 12", ""], ["1 reading 12 psi hot, idle", *ALL[1:]]),
        (["1 12 psi cold", ""], ["1 reading 12 psi cold", *ALL[1:]]),
        (["3 no knock", ""], [*ALL[:2], "3 finding bearing_knock absent", ALL[3]]),
        (
            ["3 lifters quiet", ""],
            [*ALL[:2], "3 finding lifters_quiet present", ALL[3]],
        ),
        (["2 = 55 psi cold", "2", ""], [ALL[0], *ALL[2:]]),
        (["oil level is fine", ""], [*ALL, "5 finding level_correct present"]),
        (["4", "no leaks", ""], ALL),
        (["5 psi at hot idle", ""], ALL),
        (
            ["3 = no knock, no smoke", ""],
            [
                *ALL[:2],
                "3 finding bearing_knock absent",
                ALL[3],
                "5 finding blue_smoke absent",
            ],
        ),
    ],
)
def test_what_is_kept(lines: list[str], kept: list[str], tmp_path: Path) -> None:
    """Exactly what was shown last, under numbers that never change."""
    person = Person(*lines)
    account = person.over(tmp_path / "c.toml")
    assert account is not None
    assert [f"{n} {fact.short}" for n, fact in account.kept] == kept
    assert person.shown[-1] == [f"{n} {fact.short}" for n, fact in account.kept]
    assert person.said == []


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("9", "no fact 9 is shown; numbers are 1, 2, 3, 4"),
        ("9 = no leaks", "no fact 9 is shown; numbers are 1, 2, 3, 4"),
        ("1 = wibble wobble", "'wibble wobble' was not understood; 1 stays as it is"),
        ("wibble wobble", "'wibble wobble' was not understood"),
        ("3 = would a pump help?", "'would a pump help?' was not understood; 3 stays as it is"),
        ("--", "'--': numbers with spaces between, or '3 = right words'"),
        ("1 = " + "x" * 20_000, None),
    ],
)
def test_what_cannot_be_done_is_one_line(line: str, said: str | None, tmp_path: Path) -> None:
    """The facts stay as they were."""
    person = Person(line, "")
    account = person.over(tmp_path / "c.toml")
    assert account is not None
    assert [f"{n} {fact.short}" for n, fact in account.kept] == ALL
    assert len(person.said) == 1
    assert "\n" not in person.said[0]
    assert said is None or person.said == [said]


@pytest.mark.parametrize("lines", [["q"], ["no"], [], ["1 = 12 psi", "q"]])
def test_nothing_is_written_after_q_or_the_end(lines: list[str], tmp_path: Path) -> None:
    """Also not what was corrected before."""
    assert Person(*lines).over(tmp_path / "c.toml") is None


def test_what_was_corrected_is_written_with_its_words(tmp_path: Path) -> None:
    """The case holds the new fact, its words, and everything that was said."""
    path = tmp_path / "c.toml"
    account = Person("1 = 12 psi at hot idle", "2", "").over(path)
    assert account is not None
    case = write(account, BOOK)
    assert [r.entry.pressure for r in case.readings] == ["12 psi"]
    assert case.readings[0].entry.note == "12 psi at hot idle"
    assert case.job.complaint == f"{TOLD}\n12 psi at hot idle"


class _Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


def test_on_a_terminal(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """The command shows the facts again after a correction, and writes them after Enter."""
    path = tmp_path / "c.toml"
    with (
        patch("sys.stdin", _Terminal("1 = 12 psi at hot idle\n\n")),
        pytest.raises(SystemExit) as end,
    ):
        app.main(["tell", str(path), TOLD])
    assert end.value.code in (0, None)
    shown = capsys.readouterr().out
    assert shown.index("reading: 5 psi at hot idle") < shown.index("reading: 12 psi at hot idle")
    assert 'pressure = "5 psi"' not in path.read_text("utf-8")


def test_q_on_a_terminal_makes_no_case(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """It ends as a command that did nothing."""
    path = tmp_path / "c.toml"
    with patch("sys.stdin", _Terminal("q\n")), pytest.raises(SystemExit) as end:
        app.main(["tell", str(path), TOLD])
    assert end.value.code == 2
    assert "nothing is written" in capsys.readouterr().err
    assert not path.exists()


LINES = st.one_of(
    st.text(max_size=30),
    st.sampled_from(["1", "2 3", "9", "1 =", "= no leaks", "3 = no knock", "#2: 8", "1 2 3 4"]),
    st.builds("{} = {}".format, st.integers(-2, 12), st.text(max_size=20)),
    st.builds("{} {}".format, st.integers(0, 9), st.sampled_from(["5 psi cold", "mains 4 thou"])),
)


@given(st.lists(LINES, max_size=6))
@settings(max_examples=40, deadline=None)
def test_any_lines(lines: list[str]) -> None:
    """No fault of ours; what is kept was shown last, and every remark is one line."""
    person = Person(*lines, "")
    account = person.over(Path("no such case.toml"))
    assert all("\n" not in said for said in person.said)
    if account is not None:
        assert person.shown[-1] == [f"{n} {fact.short}" for n, fact in account.kept]
        for _, fact in account.kept:
            assert account.understanding.words(fact)


def test_help_says_what_a_line_may_be(tmp_path: Path) -> None:
    """And changes nothing."""
    person = Person("help", "")
    kept = person.over(tmp_path / "x.toml")
    assert kept is not None
    assert len(kept.kept) == len(ALL)
    assert "'delete 4' deletes fact 4" in person.said[0]
