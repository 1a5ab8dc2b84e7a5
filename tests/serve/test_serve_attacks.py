"""Attacks on the web page, one row each with what stops it.

``python -m tests.serve.test_serve_attacks`` prints the rows.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support import attacks_contents, attacks_requests
from tests.support.attacked import Attack, Target

ATTACKS: tuple[Attack, ...] = (*attacks_requests.ROWS, *attacks_contents.ROWS)


@pytest.mark.parametrize("row", ATTACKS, ids=[a.name.partition(",")[0] for a in ATTACKS])
def test_it_is_stopped(row: Attack, tmp_path: Path) -> None:
    row.attempt(Target(tmp_path))


if __name__ == "__main__":
    for each in ATTACKS:
        print(f"{each.name}\n    {each.stopped_by}")
