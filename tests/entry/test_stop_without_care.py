"""``record`` never lets an engine run with care in the same breath in which it stops it."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.command_line import call

START = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'


@pytest.mark.parametrize(
    ("words", "stops", "cares"),
    [
        (["5 psi hot idle", "12 psi cold at idle"], True, False),
        (["12 psi cold at idle"], False, True),
    ],
    ids=["both", "cold alone"],
)
def test_a_stop_leaves_no_leave_to_run(
    words: list[str], stops: bool, cares: bool, tmp_path: Path
) -> None:
    path = tmp_path / "teal.toml"
    path.write_text(START, "utf-8")
    said = " ".join(call("record", path, *words).out.split())
    assert ("STOP THE ENGINE" in said) is stops
    assert ("run it only to read a gauge" in said) is cares
