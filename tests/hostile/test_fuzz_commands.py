"""Every command with options and arguments drawn from its own grammar, right and wrong.

The grammar is read off the commands themselves, so a new command or option is tried as well.
"""

from __future__ import annotations

import random
import string
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any, get_args, get_type_hints

import pytest

from diagnose.case.loading import load
from diagnose.cli.app import app
from diagnose.cli.commands.serve import serve
from knowledge.book import the_book
from knowledge.reports.words import Result
from tests.support.command_line import call
from tests.support.complaints import JOBS
from tests.support.fuzzing import CODES, TOKENS, chooser, ended_well, one

BOOK = the_book()
#: commands that add to a case; every other leaves it as it is
WRITERS = {"ask", "tell", "record", "close"}
#: these go over the whole book and take no case: a few times is enough
SELDOM = {"check"}
FILES = [
    *("a.toml", "b.toml", "a.toml", "b.toml", "bad.toml", "gone.toml", "sheet.md", "inner"),
    *("link.toml", "link.html", "pipe.toml", "new.toml", "out.html", "out.svg", "out.json"),
    *("inner/../a.toml", "nowhere/x.html", ".", "-", "", "inner/a.toml", "a.toml/", "/dev/null"),
]
WORDS = [
    *BOOK.findings,
    *BOOK.causes,
    *BOOK.measures,
    *BOOK.tasks,
    *BOOK.layouts,
    *BOOK.rules,
    *BOOK.links,
]
VALUES = """yes no probably unknown 70% 0.0045\u00a0in 8\u00a0psi 700\u00a0rpm done skipped 1 0 -1 7
15W-40 +25% confident=0.9 confident=2 json graphml dot bif cause finding told outside opened
2026-05-01 tomorrow sump_off cap_off 2500\u00a0rpm\u00a040\u00a0psi 25\u00a0psi 140\u00a0min oil
main_clearance=0.0025\u00a0in relief_shim=1\u00a0mm pump_displacement=+25% oil=15W-40 pickup_gap=3\u00a0mm
needle_flickers=yes bearing_knock=no main_clearance=9\u00a0mm needle\u00a0dances metal\u00a0in\u00a0filter
1e309 nan inf 99999999999999999999 0x10 ../../etc $(id) -- -h --json --version html svg"""
PLAIN = [v.replace("\u00a0", " ") for v in VALUES.split()]
READINGS = [
    "700 rpm 95 C 8 psi",
    "2500 rpm 90 C 40 psi direct",
    "700 rpm 95 C",
    "1 rpm 1 psi +-9 psi",
]
READINGS_IN_WORDS = [
    "5 psi at hot idle",
    "a third of the dial",
    "usually 80 psi now 40 psi",
    "under 25 psi cold",
    "0/0 of the dial at idle",
    "under under 5 psi",
]
BEHAVIOURS = [
    "low during hot, idle only gradual",
    "lost during bends never idle sudden comes and goes since oil change lasts 10 s",
    "lamp",
    "knock with pressure gauge direct since work",
    "low during idle never idle",
    "low lasts 10",
    "low low",
    "high " * 300,
]
EARLIER = [
    "oil pump renewed 2 weeks before by workshop",
    "nothing",
    "sump taken off and refitted straight before by owner",
    "oil pump -1 day before",
    "oil pump renewed cleaned",
    "sump " + "x" * 600,
]
#: what belongs in a place of this name
RIGHT = {
    "facts": [
        *(f"{f}={a}" for f in BOOK.findings for a in ("yes", "no", "probably")),
        *("mains 4.5 thou", "oil level ok", "backlash 12 thou", "no 3 main .006", "5 psi hot") * 40,
        *(f"{t}={r}" for t in BOOK.trials for r in (*Result, "not tried", "yes", "same", "no")),
    ],
    "cause": list(BOOK.causes),
    "changes": ["oil=15W-40", "main_clearance=0.0025 in", "relief_shim=1 mm"],
    "opened": ["sump_off", "cap_off", "pump_off"],
    "word": WORDS,
    "words": ["needle dances", "low", "sump", "metal"],
    "kind": ["finding", "cause", "limit"],
    "format": ["json", "graphml", "dot", "bif"],
    "until": ["confident=0.9", "confident=0.5"],
    "when": ["2026-05-01"],
    "learned": ["told", "outside", "opened"],
    "target": ["25 psi", "2500 rpm 40 psi"],
    "focus": list(BOOK.causes),
    "minutes": ["140 min", "90"],
    "html": ["out.html"],
    "svg": ["out.svg"],
    "reading": [*READINGS, *READINGS_IN_WORDS],
    "behaviour": BEHAVIOURS,
    "earlier": EARLIER,
}


@dataclass(frozen=True)
class Place:
    """One argument or option of a command."""

    name: str
    option: str  #: empty for an argument
    sort: str  #: "Path", "int", "float", "bool" or "str"
    many: bool


@cache
def grammar() -> dict[str, list[Place]]:
    """Every command's places, read off the functions themselves; of those that end by themselves."""
    found = {}
    for command in app.registered_commands:
        assert command.callback
        if command.callback is serve:
            continue
        hints = get_type_hints(command.callback, include_extras=True)
        del hints["return"]
        name = command.name or command.callback.__name__
        found[name] = [_place(n, *get_args(hint)) for n, hint in hints.items()]
    return found


def _place(name: str, kind: Any, parameter: Any) -> Place:
    is_option = type(parameter).__name__ == "OptionInfo"
    given = [d for d in parameter.param_decls or () if d.startswith("-")]
    usual = "--" + name.replace("_", "-")
    sort = next(s for s in ("Path", "int", "float", "bool", "str") if s in str(kind))
    return Place(name, (given or [usual])[0] if is_option else "", sort, "list" in str(kind))


def value(place: Place, dice: random.Random) -> str:
    """Something for one place: mostly of its sort."""
    roll = dice.random()
    if roll < 0.08:
        return dice.choice(TOKENS)
    if roll < 0.12:
        return "".join(dice.choices(string.printable + "é漢\u202e", k=dice.randrange(1, 40)))
    if place.name in RIGHT and dice.random() < 0.7:
        return dice.choice(RIGHT[place.name])
    if place.sort == "Path" or place.name == "out":
        return dice.choice(FILES)
    if place.sort in ("int", "float"):
        return dice.choice(("0", "1", "2", "5", "60", "-3", "9999999999999", "1.5", "nan", "x", ""))
    if roll < 0.3:
        word = dice.choice(WORDS)
        return dice.choice((word, f"{word}={dice.choice(PLAIN)}", word.replace("_", " ")))
    return dice.choice(PLAIN)


def line(name: str, dice: random.Random) -> list[str]:
    """A command line: arguments in their places, some options, now and then one too many."""
    words = []
    for place in grammar()[name]:
        for _ in range(dice.choice((1, 1, 2, 3)) if place.many else 1):
            if place.option and dice.random() < 0.15:
                words += [place.option]
                words += [] if place.sort == "bool" else [value(place, dice)]
            elif not place.option and place.name in ("case", "folder") and dice.random() < 0.75:
                words += ["." if place.name == "folder" else dice.choice(("a.toml", "b.toml"))]
            elif not place.option:
                words += [value(place, dice)]
    if dice.random() < 0.05:
        at = dice.randrange(len(words) + 1)
        words.insert(at, dice.choice(("--", "--nope", "-x", "", "extra")))
    return [w.replace("\0", "") for w in words]


def laid_out(folder: Path, dice: random.Random) -> None:
    """Cases good and bad, a sheet, links: afresh for each command."""
    for path in folder.rglob("*"):
        if path.is_file() or path.is_symlink():
            path.unlink()
    (folder / "inner").mkdir(exist_ok=True)
    for name in ("a.toml", "b.toml", "inner/a.toml"):
        (folder / name).write_text(JOBS[dice.choice(list(JOBS))], "utf-8")
    (folder / "bad.toml").write_text("schema = 2\n[job", "utf-8")
    (folder / "sheet.md").write_text("- `fuel_smell`: yes\n- `reading`: 700 rpm 95 C 8 psi\n")
    (folder / "link.toml").symlink_to("a.toml")
    (folder / "link.html").symlink_to("a.toml")


def snapshot(folder: Path) -> dict[str, bytes]:
    return {
        str(p.relative_to(folder)): p.read_bytes()
        for p in folder.rglob("*")
        if p.is_file() and not p.is_symlink()
    }


def tried(folder: Path, name: str, words: list[str], answers: str) -> int:
    """One command line: it ends well, loses nothing, and writes nothing that was not named."""
    outside = snapshot(folder.parent / "outside")
    before = snapshot(folder)
    with one("command lines", (name, words), 20.0):
        done = call(name, *words, answers=answers)
    ended_well(done, (name, words))
    after = snapshot(folder)
    assert snapshot(folder.parent / "outside") == outside
    for file, data in before.items():
        assert file in after, (name, words, file)
        if file.endswith(".toml"):
            assert after[file].startswith(data), (name, words, file)
            assert name in WRITERS or after[file] == data, (name, words, file)
            if after[file] != data:
                load(folder / file, BOOK)
    typed = " ".join(words)
    for file in after.keys() - before.keys():
        made = name == "ask" and file.startswith("case-")
        assert made or Path(file).name in typed, (name, words, file)
    return done.code


def run_lines(folder: Path, first: int, many: int) -> dict[str, set[int]]:
    """The exit codes each command was seen to end in."""
    codes: dict[str, set[int]] = {name: set() for name in grammar()}
    (folder.parent / "outside").mkdir(exist_ok=True)
    (folder.parent / "outside" / "kept.toml").write_text("schema = 1\n")
    names = sorted(grammar())
    for number in range(first, first + many):
        dice = chooser("command", number)
        name = dice.choice(names)
        if name in SELDOM and dice.random() < 0.97:
            name = "show"
        laid_out(folder, dice)
        answers = "\n".join(dice.choice(["y", "n", "d", "why", "3", "stop"]) for _ in range(8))
        codes[name].add(tried(folder, name, line(name, dice), answers))
    return codes


@pytest.fixture
def desk(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder to work in."""
    folder = tmp_path / "desk"
    folder.mkdir()
    monkeypatch.chdir(folder)
    return folder


@pytest.mark.long
def test_some_lines_of_every_command(desk: Path) -> None:
    """Some are right and some are not, or the dice throw at nothing."""
    codes = run_lines(desk, 0, 80)
    assert set(codes) > WRITERS
    seen = set().union(*codes.values())
    assert {0, 2, 66} <= seen <= CODES


@pytest.mark.long
def test_lines_of_every_command_at_length(desk: Path) -> None:
    codes = run_lines(desk, 80, 4_000)
    assert all(0 in codes[name] for name in codes.keys() - SELDOM)
