"""The answer to a text names damage that has surely followed, before the cause is known."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.command_line import call

WIPED = "the bearings are wiped, scored or spun"


@pytest.mark.parametrize(
    ("words", "named"),
    [
        ("knock from the bottom end, 8 psi hot, metal glitter in the oil", True),
        ("the oil light flickers at hot idle, no noises", False),
        ("bottom end knocked, new bearings fitted, all quiet since, 40 psi hot idle", False),
    ],
)
def test_damage_is_named_where_it_is_nearly_certain(
    tmp_path: Path, words: str, named: bool
) -> None:
    done = call("tell", tmp_path / "a.toml", "--yes", words)
    assert done.code == 0, done
    damaged = done.out.partition("Damaged by now:")[2].replace("\n  ", " ")
    assert damaged.strip().startswith(WIPED) is named
