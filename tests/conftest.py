"""What every test run begins and ends with: no test is timed; how much was fuzzed."""

from __future__ import annotations

import pytest
from hypothesis import settings

from tests.support.fuzzing import COUNT

settings.register_profile("untimed", deadline=None)  # a busy machine is no fault of the code
settings.load_profile("untimed")


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """How many inputs were tried, by kind."""
    if COUNT:
        kinds = ", ".join(f"{kind} {many:,}" for kind, many in sorted(COUNT.items()))
        terminalreporter.write_line(f"fuzzed: {COUNT.total():,} inputs ({kinds})")
