"""The coldest and the hottest oil that a case may hold are computed like any other."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.command_line import call
from tests.support.examples import one_in

COMMANDS = ("survey", "budget", "forecast", "review")
CASE = """schema = 1
[engine]
layout = "distributor_v8"
[[finding]]
no = 1
what = "main_clearance"
value = "0.004 in"
"""


def reading(no: int, rpm: int, oil: str, psi: int) -> str:
    return f'[[reading]]\nno = {no}\nrpm = "{rpm} rpm"\noil = "{oil}"\npressure = "{psi} psi"\n'


@pytest.mark.parametrize("oil", one_in(2, ["-50 C", "-58 F", "200 C"]))
def test_every_command_bears_it(tmp_path: Path, oil: str) -> None:
    """The error of a temperature takes no engine beyond what oil can be."""
    path = tmp_path / "x.toml"
    path.write_text(CASE + reading(2, 700, oil, 20) + reading(3, 2000, oil, 50), "utf-8")
    for command in COMMANDS:
        done = call(command, path)
        assert done.code == 0, (command, done.err)


@pytest.mark.parametrize("oil", ["-50.1 C", "-60 F", "200.1 C"])
def test_beyond_it_is_refused(tmp_path: Path, oil: str) -> None:
    path = tmp_path / "x.toml"
    path.write_text(CASE + reading(2, 700, oil, 20), "utf-8")
    done = call("review", path)
    assert done.code == 65
    assert "cannot be right" in done.err
