"""The sign-off of a small repair: tasks of what was opened or disturbed, none of what was not."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.work import Phase
from tests.support.command_line import call

BOOK = the_book()


def tasks(layout: str, *present: str) -> dict[str, Phase]:
    """The tasks of a job in which these were seen."""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n'
    for no, what in enumerate(present, 1):
        text += f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\n'
    sheet = Signoff(Diagnosis(BOOK, from_text(text, None, BOOK)), SURE)
    return {i.task.id: i.task.phase for i in sheet.items}


@pytest.mark.parametrize(
    ("layout", "seen", "called", "not_called"),
    [
        (
            "skew_gear_four",
            "relief_spring_short_or_broken",
            "relief_plunger_drops relief_cap_torqued oil_in dry_after_priming no_leak_running",
            "pickup_seated primed_by_drill pump_cover_flat heat_cycles_done distributor_back_in",
        ),
        (
            "distributor_v8",
            "relief_spring_short_or_broken",
            "relief_plunger_drops pump_bolts_torqued pump_turns_freely pump_wetted pickup_seated",
            "gear_end_clearance_fitted pump_cover_flat distributor_tried_first covers_off_to_prime",
        ),
        (
            "distributor_v8",
            "sealer_in_sump",
            "sump_bolts_torqued nothing_left_inside primed_by_drill",
            "pickup_seated screen_parallel pump_wetted as_built_written_down oil_sample_sent",
        ),
        (
            "distributor_v8",
            "shells_worn_evenly",
            "caps_torqued heat_cycles_done as_built_written_down covers_off_to_prime primed_by_drill",
            "pump_cover_flat",
        ),
    ],
    ids=["valve from outside", "valve in the pump", "sump alone", "bottom end"],
)
def test_only_what_was_disturbed_is_signed_off(
    layout: str, seen: str, called: str, not_called: str
) -> None:
    found = tasks(layout, seen)
    assert set(called.split()) <= found.keys()
    assert found.keys().isdisjoint(not_called.split())


def test_a_relief_valve_reached_from_outside_is_a_short_sheet() -> None:
    found = tasks("skew_gear_four", "relief_spring_short_or_broken")
    assert len(found) <= 40
    assert Phase.SUMP not in found.values()


def test_the_head_names_what_was_found_where_no_cause_is_confirmed(tmp_path: Path) -> None:
    path = tmp_path / "tern.toml"
    path.write_text(
        'schema = 1\n[engine]\nlayout = "marine_diesel"\n[[finding]]\nno = 1\n'
        'what = "main_clearance"\nvalue = "0.16 mm"\n',
        "utf-8",
    )
    said = " ".join(call("signoff", path).out.split())
    assert "Cause: not confirmed yet; found: main bearing clearance is over the limit" in said
    shown = call("signoff", path, "--all").out
    assert "nothing further until" not in shown


def test_a_mended_wire_calls_for_a_look_at_the_gauge(tmp_path: Path) -> None:
    """Nothing was opened; the gauge is compared with a trusted one all the same."""
    path = tmp_path / "tern.toml"
    path.write_text(
        'schema = 1\n[engine]\nlayout = "marine_diesel"\n[[closed]]\nno = 1\n'
        'causes = ["wiring_ground_fault"]\nhow = "cable corroded"\n',
        "utf-8",
    )
    said = " ".join(call("signoff", path, "--all").out.split())
    assert BOOK.tasks["panel_gauge_agrees"].says in said
