"""A cause that is nearly certain, but not seen yet: the next check must bear on it."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.planning.choosing import SURE
from knowledge.book import the_book

BOOK = the_book()
HEAD = 'schema = 1\n[job]\ncomplaint = "V8 boat, falls as it warms"\n[engine]\nlayout = "marine_petrol_v8"\n'
COOLER = '[[finding]]\nno = 1\nwhat = "oil_cooler"\nstate = "present"\n'
PORTS = '[[finding]]\nno = 2\nwhat = "good_at_pump_low_in_gallery"\nstate = "present"\n'
BYPASSED = '[[trial]]\nno = 3\nwhat = "cooler_bypassed"\nresult = "cured"\n'
STOP = '[[reading]]\nno = 4\npressure = "{psi} psi"\nrpm = "idle"\noil = "hot"\ngauge = "direct"\n'


@pytest.mark.parametrize("psi", [4, 8, 20])
def test_what_is_looked_at_next_bears_on_what_leads(psi: int) -> None:
    """Whether or not the engine may run for it."""
    text = HEAD + COOLER + PORTS + BYPASSED + STOP.format(psi=psi)
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    first = answer.ranking[0]
    assert first.cause.id == "oil_cooler_blocked"
    assert first.probability >= SURE
    assert answer.next_check is not None
    check = answer.next_check.inspection
    shown = {f.id for f in check.reveals} & answer.inference.network.parents.keys()
    assert "oil_cooler_blocked" in answer.inference.network.ancestors(shown)
    assert answer.may_run or not check.needs_running
    assert check.id in ("feel_filter_and_cooler", "look_through_the_cooler_lines")
