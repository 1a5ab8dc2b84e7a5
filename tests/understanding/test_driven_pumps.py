"""A pump turned by the gearbox or an auxiliary drive can be said."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book


@pytest.mark.parametrize(
    ("text", "there"),
    [
        ("workboat diesel, oil pump driven from gearbox", True),
        ("the oil pump is driven off the gearbox end", True),
        ("a gearbox-driven oil pump", True),
        ("the gearbox has a pump of its own", False),
        ("the oil pump is driven by the crankshaft", False),
    ],
)
def test_a_pump_on_the_gearbox_is_a_feature(text: str, there: bool) -> None:
    facts = [f.name for f in read(text, the_book()).facts]
    assert ("pump_on_auxiliary_drive" in facts) is there
