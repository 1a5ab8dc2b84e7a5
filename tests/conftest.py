"""What every test run ends with: how much was fuzzed."""

from __future__ import annotations

import pytest

from tests.fuzzing import COUNT


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """How many inputs were tried, by kind."""
    if COUNT:
        kinds = ", ".join(f"{kind} {many:,}" for kind, many in sorted(COUNT.items()))
        terminalreporter.write_line(f"fuzzed: {COUNT.total():,} inputs ({kinds})")
