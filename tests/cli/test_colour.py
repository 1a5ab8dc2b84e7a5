"""Colour helps on a terminal and is never there anywhere else; the words stay the same."""

from __future__ import annotations

import re

import pytest

from diagnose.cli import colour
from tests.support.command_line import ROOT, call

ESCAPE = re.compile(r"\x1b\[[0-9;]*m")
TEXT = """Petrel

STOP THE ENGINE: 6 psi at 650 rpm: shut down,
  check with a trusted gauge
  and 2 more: --full

Found
  caution: hot oil burns: gloves
    and eye protection
  [x] 1.1  sump washed
Next: read the stick"""


def test_the_words_are_the_same_without_it() -> None:
    assert ESCAPE.sub("", colour.painted(TEXT)) == TEXT


@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("STOP THE ENGINE: 6 psi at 650 rpm: shut down,", "31"),
        ("  check with a trusted gauge", "31"),
        ("  caution: hot oil burns: gloves", "33"),
        ("    and eye protection", "33"),
        ("  [x] 1.1  sump washed", "32"),
        ("Next: read the stick", "1"),
        ("Found", ""),
        ("Petrel", ""),
    ],
)
def test_a_line_and_what_goes_on_from_it(line: str, code: str) -> None:
    shown = next(x for x in colour.painted(TEXT).split("\n") if ESCAPE.sub("", x) == line)
    codes = re.findall(r"\x1b\[(\d+)m", shown)
    assert (code in codes) if code else not codes


@pytest.mark.parametrize(
    ("terminal", "environment", "wanted"),
    [
        (True, {}, True),
        (False, {}, False),
        (True, {"NO_COLOR": "1"}, False),
        (True, {"TERM": "dumb"}, False),
    ],
)
def test_where_it_is_wanted(
    monkeypatch: pytest.MonkeyPatch, terminal: bool, environment: dict[str, str], wanted: bool
) -> None:
    monkeypatch.setattr("sys.stdout.isatty", lambda: terminal, raising=False)
    for name in ("NO_COLOR", "TERM"):
        monkeypatch.delenv(name, raising=False)
    for name, value in environment.items():
        monkeypatch.setenv(name, value)
    assert colour.wanted() is wanted


def test_a_pipe_gets_none() -> None:
    assert not ESCAPE.search(call("review", ROOT / "cases" / "petrel.toml").out)
