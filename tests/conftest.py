"""Settings of every test run: parallel workers, no time limit for a single test, fuzzing counts."""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

from tests.support.examples import examples
from tests.support.fuzzing import COUNT
from tests.support.shared_diagnoses import own_diagnoses, share

# Commands that tests start share compiled modules, even where the machine keeps none by default.
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
sys.dont_write_bytecode = False

# A busy machine is no fault of the code: no deadline.
settings.register_profile("untimed", deadline=None, max_examples=examples(100))
settings.load_profile("untimed")
share()

#: files that take longest, most first; each file runs in one worker, so they start first
LONGEST = (
    "test_in_a_browser.py",
    "test_pages.py",
    "test_confirmed.py",
    "test_commands_teardown.py",
    "test_check.py",
    "test_commands.py",
    "test_teardown_plan.py",
    "test_interview_asks.py",
    "test_review_folder.py",
    "test_against_library.py",
    "test_survey_in_words.py",
    "test_signatures.py",
    "test_hostile_files.py",
    "test_rule_examples.py",
    "test_readme.py",
    "test_commands_saying.py",
    "test_survey.py",
    "test_reasons_shown.py",
    "test_report.py",
    "test_output_paths.py",
    "test_fixes.py",
    "test_library.py",
)


@pytest.fixture(autouse=True)
def _diagnoses(request: pytest.FixtureRequest) -> Iterator[None]:
    """Infer anew in tests marked ``own_diagnoses``; all others share what equal cases come to."""
    if request.node.get_closest_marker("own_diagnoses"):
        with own_diagnoses():
            yield
    else:
        yield


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_auto_num_workers(config: pytest.Config) -> int:
    """Return one worker per processor for a whole run, none where files or tests are named."""
    root = Path(config.rootpath)
    if all((root / argument).is_dir() for argument in config.args):
        return os.cpu_count() or 1
    return 0


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Put the files that take longest first."""
    place = {name: number for number, name in enumerate(LONGEST)}
    items.sort(key=lambda item: place.get(item.path.name, len(LONGEST)))


@pytest.hookimpl(trylast=True)
def pytest_collection_finish() -> None:
    """Leave what is loaded by now out of the search for cycles: it stays until the end."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 50)


@pytest.hookimpl(trylast=True)
def pytest_sessionfinish(session: pytest.Session) -> None:
    """Hand a worker's count of fuzzed inputs to the main process."""
    output = getattr(session.config, "workeroutput", None)
    if output is not None:
        output["fuzzed"] = dict(COUNT)


@pytest.hookimpl(optionalhook=True)
def pytest_testnodedown(node: object) -> None:
    """Add up what the workers fuzzed."""
    COUNT.update(getattr(node, "workeroutput", {}).get("fuzzed", {}))


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print how many inputs were tried, by kind."""
    if COUNT:
        kinds = ", ".join(f"{kind} {many:,}" for kind, many in sorted(COUNT.items()))
        terminalreporter.write_line(f"fuzzed: {COUNT.total():,} inputs ({kinds})")
