"""Every command of the built wheel, in an environment of its own away from the checkout (long)."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path
from urllib.request import urlopen
from zipfile import ZipFile

import pytest

from diagnose.cli.app import app
from tests.studies.refresh_readme import README, blocks
from tests.support.serving import serving

ROOT = Path(__file__).parents[2]
WORDS: dict[str, list[list[str]]] = {
    "tell": [["told.toml", "no leaks, 5 psi at hot idle", "--yes"]],
    "ask": [["skua.toml", "--questions", "2"]],
    "record": [["skua.toml", "needle_flickers=yes", "--reading", "700 rpm 95 C 8 psi direct"]],
    "review": [["skua.toml"], ["cases", "--jobs", "2"]],
    "teardown": [["skua.toml"], ["skua.toml", "--html", "sheet.html"]],
    "survey": [["cases/gannet.toml", "--svg", "curves.svg"]],
    "budget": [["cases/dunlin.toml"]],
    "forecast": [["cases/dunlin.toml", "--set", "oil=20W-50"]],
    "sizing": [["cases/tern.toml", "--relief", "70 psi"]],
    "signoff": [["cases/tern.toml", "--html", "signoff.html"], ["cases/gannet.toml", "--start"]],
    "bearings": [["cases/tern.toml", "main", "3", ".0031", "--html", "bearings.html"]],
    "close": [["skua.toml", "--cause", "relief_debris", "--how", "seen", "--reason", "a trial"]],
    "card": [["petrol_v8", "--layout", "distributor_v8"], ["cases/cards/workboat_v8.toml"]],
    "report": [["cases/gannet.toml", "--out", "report.html"]],
    "history": [["cases"]],
    "lookup": [["metal", "in", "filter"]],
    "show": [["relief_debris"]],
    "check": [[]],
    "graph": [["cases/winch.toml", "--format", "svg", "--out", "graph.svg"]],
}
LINES = [(name, words) for name, every in WORDS.items() for words in every]


def test_every_command_has_its_line() -> None:
    names = {c.name or getattr(c.callback, "__name__", "") for c in app.registered_commands}
    assert names == {*WORDS, "serve"}, "serve runs until it is stopped: below"


@pytest.fixture(scope="module")
def away(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the jobs; beside it an environment that holds the wheel and what it needs."""
    folder = tmp_path_factory.mktemp("bare")
    source = folder / "source"
    shutil.copytree(
        ROOT, source, ignore=shutil.ignore_patterns(".git", "tests", "__pycache__", ".*_cache")
    )
    subprocess.run([sys.executable, "-m", "venv", folder / "env"], check=True)
    pip = [str(folder / "env" / "bin" / "python"), "-m", "pip", "-q"]
    subprocess.run([*pip, "wheel", "--no-deps", "-w", str(folder), str(source)], check=True)
    shutil.rmtree(source)
    subprocess.run([*pip, "install", *map(str, folder.glob("*.whl"))], check=True)
    shutil.copytree(ROOT / "cases", folder / "away" / "cases")
    return folder / "away"


@pytest.mark.long
@pytest.mark.parametrize(("name", "words"), LINES, ids=lambda x: x if isinstance(x, str) else None)
def test_the_wheel_runs(away: Path, name: str, words: list[str]) -> None:
    """In the order of a job: each line ends well and says something."""
    env = {k: v for k, v in os.environ.items() if k != "PYTHONPATH"}
    done = subprocess.run(
        [away.parent / "env" / "bin" / "diagnose", name, *words],
        cwd=away,
        env=env,
        input="Skua\nneedle dances\nn\nn\nn\nn\nn\nn\nstop\n",
        capture_output=True,
        text=True,
        timeout=300,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert done.stdout.strip() or name == "graph"
    for word in words:
        if word.endswith((".html", ".svg")):
            assert (away / word).stat().st_size > 1000


@pytest.mark.long
def test_every_file_of_the_page_is_in_the_wheel(away: Path) -> None:
    """Templates, style sheets, scripts and drawings, not only modules."""
    (wheel,) = away.parent.glob("*.whl")
    held = {n for n in ZipFile(wheel).namelist() if n.startswith("diagnose/")}
    there = {
        p.relative_to(ROOT).as_posix() for p in (ROOT / "diagnose").rglob("*.*") if p.is_file()
    }
    assert {n for n in there if "__pycache__" not in n and not n.endswith(".pyc")} <= held
    assert any(n.startswith("diagnose/serve/templates/") for n in held)


@pytest.mark.long
def test_the_page_in_the_wheel(away: Path) -> None:
    """The first page, a job and the style sheet are served until the server is stopped."""
    env = {k: v for k, v in os.environ.items() if k != "PYTHONPATH"}
    command: list[str | Path] = [away.parent / "env" / "bin" / "diagnose", "serve", "cases"]
    with serving(command, cwd=away, env=env) as address:
        for path in ("/", "/job/petrel.toml", "/static/style.css", "/job/petrel.toml/survey.svg"):
            with urlopen(address + path, timeout=60) as answer:
                assert answer.status == 200
                assert len(answer.read()) > 1000


@pytest.mark.long
def test_the_library_in_the_wheel(away: Path) -> None:
    """The README's program runs with the installed packages, and both carry their types."""
    env = {k: v for k, v in os.environ.items() if k != "PYTHONPATH"}
    (block,) = [b for b in blocks(README.read_text("utf-8").split("\n")) if b.program]
    done = subprocess.run(
        [away.parent / "env" / "bin" / "python", "-c", block.program],
        cwd=away,
        env=env,
        capture_output=True,
        text=True,
        timeout=300,
        check=True,
    )
    assert done.stdout.splitlines() == list(block.shown)
    (site,) = (away.parent / "env").glob("lib/python*/site-packages")
    assert all((site / name / "py.typed").is_file() for name in ("diagnose", "knowledge"))
