"""A cause that is found ends the search only where it explains what a trusted gauge shows."""

from __future__ import annotations

from diagnose.library import diagnose, parse_case
from diagnose.output.documents.loose_ends import pressure_in_words
from diagnose.teardown.loose_ends import LooseEnds, loose_ends

CASE = """schema = 1
[engine]
layout = "generator_diesel"
[[finding]]
no = 1
what = "{found}"
state = "present"
[[finding]]
no = 2
what = "{also}"
state = "present"
[[reading]]
no = 3
pressure = "{psi} psi"
rpm = "1500 rpm"
oil = "85 C"
gauge = "direct"
"""


def ends(found: str, also: str, psi: float) -> LooseEnds:
    return loose_ends(diagnose(parse_case(CASE.format(found=found, also=also, psi=psi))), 0.9)


def test_water_does_not_explain_a_trusted_gauge_at_nothing() -> None:
    """The search goes on, and names what does; with some pressure it may end."""
    left = ends("water_in_sump", "oil_milky", 0)
    assert left.confirmed
    assert left.of_nothing
    assert not left.may_stop
    assert not ends("water_in_sump", "oil_milky", 20).of_nothing


def test_what_explains_nothing_on_the_gauge_ends_the_search() -> None:
    """Without its oil it shows no pressure at all."""
    left = ends("drain_plug_found_loose", "dipstick_dry", 0)
    assert left.confirmed
    assert not left.of_nothing


def test_nothing_is_missing_where_a_trusted_gauge_shows_enough() -> None:
    """Nobody is sent to measure a bearing."""
    for psi, missing in ((50, False), (12, True)):
        answer = diagnose(parse_case(CASE.format(found="water_in_sump", also="oil_milky", psi=psi)))
        left = loose_ends(answer, 0.9)
        assert left.enough is not missing
        assert bool(pressure_in_words(answer, left)) is missing
