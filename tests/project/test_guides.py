"""The guides for developers name only files, modules and commands that are there."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator

import pytest

from tests.conftest import LONGEST
from tests.support.command_line import ROOT
from tests.support.every import every

GUIDES = ("DEVELOPERS.md", "tests/README.md")
FENCED = re.compile(r"```.*?```", re.DOTALL)
SPAN = re.compile(r"`([^`\n]+)`")
FILE = re.compile(r"[\w*./<>-]+\.(?:py|md|toml|csv)|[\w*<>]+/[\w*/<>-]*")
MODULE = re.compile(r"python -m (tests(?:\.[a-z_]+)+)\b(?!\.)")
TESTS = sorted((ROOT / "tests").rglob("test_*.py"))
HOMES = ("", "diagnose/", "knowledge/", "tests/")


def spans(guide: str) -> Iterator[str]:
    """What stands between backticks in a guide, outside blocks of code."""
    yield from SPAN.findall(FENCED.sub("", (ROOT / guide).read_text("utf-8")))


def files(guide: str) -> set[str]:
    """The files and folders that a guide names, as patterns."""
    return {
        re.sub(r"<\w+>|NAME", "*", found)
        for span in spans(guide)
        for found in (
            [span] if FILE.fullmatch(span) else re.findall(r"tests/\w+/test_\w+\.py", span)
        )
    }


def is_there(pattern: str) -> bool:
    """Whether a file fits, from the top, from a package, or by its bare name from anywhere."""
    places = [home + pattern.rstrip("/") for home in HOMES]
    if "/" not in pattern:
        places += [f"{home}**/{pattern}" for home in HOMES[1:]]
    return any(any(ROOT.glob(place)) for place in places)


NAMED = sorted({(guide, pattern) for guide in GUIDES for pattern in files(guide)})
RUN = sorted({name for guide in GUIDES for span in spans(guide) for name in MODULE.findall(span)})


def test_the_guides_name_files_and_commands() -> None:
    """The tests below ask only these."""
    assert len(NAMED) > 100
    assert len(RUN) > 10


@every(NAMED, lambda named: " ".join(named))
def test_a_file_named_is_there(named: tuple[str, str]) -> None:
    assert is_there(named[1])


def test_a_file_that_is_not_there_would_be_noticed() -> None:
    assert not is_there("inference/no_such_file.py")
    assert not is_there("no_such_file*.py")


def test_each_folder_of_tests_is_in_the_table() -> None:
    """Every test stands in a folder that the guide to the tests explains."""
    rows = re.findall(r"(?m)^\| `(\w+)` \| ", (ROOT / "tests/README.md").read_text("utf-8"))
    folders = {path.parent for path in TESTS}
    assert len(folders) > 10
    assert folders <= {ROOT / "tests" / row for row in rows}


def test_the_longest_files_go_by_a_name_of_their_own() -> None:
    names = Counter(path.name for path in TESTS)
    assert all(names[name] == 1 for name in LONGEST)


@pytest.mark.parametrize("name", RUN)
def test_a_module_to_run_is_there(name: str) -> None:
    path = ROOT / name.replace(".", "/")
    assert path.with_suffix(".py").is_file() or (path / "__main__.py").is_file()


@pytest.mark.parametrize("package", ["diagnose", "knowledge"])
def test_the_map_shows_the_top_of_each_package(package: str) -> None:
    """Every module and package at the top of ``diagnose`` and ``knowledge`` is on the map."""
    block = FENCED.findall((ROOT / "DEVELOPERS.md").read_text("utf-8"))[0]
    part = block.partition(f"{package}/\n")[2].partition("\nknowledge/")[0]
    words = set(re.findall(r"\w+", part))
    top = {p.stem for p in (ROOT / package).iterdir() if p.suffix == ".py" or p.is_dir()}
    assert top - words - {"__pycache__", "__init__", "__main__"} == set()
