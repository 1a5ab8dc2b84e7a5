"""Screens of one job agree: one unit for lengths, and a figure explained where two differ."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from diagnose.case.loading import from_text
from diagnose.circuit.budget import budget
from diagnose.circuit.deviations import deviations
from diagnose.circuit.forecast import forecast
from diagnose.entry.bearings import parse_words
from diagnose.entry.requests import parse_fixes
from diagnose.errors import UsageError
from diagnose.output.documents.check_sheet import offered_unit
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.documents.other_size import other_size
from diagnose.output.text.forecast_brief import forecast_brief
from diagnose.signoff.start import first_start
from knowledge.units import LENGTH
from tests.circuit.test_one_hot_idle import MAINS, case, job
from tests.support.circuits import BOOK
from tests.support.command_line import call

PLUG = '[[finding]]\nno = 20\nwhat = "gallery_plug_found_missing"\nstate = "present"\n'


def found_in(text: str) -> list[str]:
    made = deviations(from_text(text, None, BOOK), 4, np.random.default_rng(1))
    return [d.found for d in made]


def test_what_was_only_seen_is_shown_in_the_units_of_the_job() -> None:
    [inches] = found_in(job("700 rpm; 9 psi; hot") + PLUG)
    [metric] = found_in(job("700 rpm; 0.6 bar; hot") + PLUG)
    assert inches.endswith(" in")
    assert metric == "4 mm to 9 mm"


def test_a_forecast_shows_lengths_in_one_unit_whatever_was_typed(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(job("700 rpm; 9 psi; hot") + MAINS, "utf-8")
    out = call("forecast", path, "--fix", "mains=0.002").out
    assert MAINS.count("thou") == 1
    assert "thou -> 2 thou" in out
    assert not [line for line in out.splitlines() if line != line.rstrip()]


def test_a_forecast_says_what_the_first_start_predicts_with_all_put_right() -> None:
    known = case("700 rpm; 9 psi; hot", more=PLUG)
    start = first_start(known, BOOK).expected
    idle = next(e for e in start if e.rpm == 700 and e.temperature > 350)
    planned = forecast_document(forecast(known, [], plans=parse_fixes(["plug"], known)))
    assert planned.all_right is not None
    assert abs(planned.all_right.mean - idle.pressure.mean) < 1.0
    shown = " ".join(forecast_brief(planned).split())
    assert "with all faults put right" in shown
    left = planned.all_right.mean - planned.speeds[0].hot_after.mean
    costs = f"all else as it was found, which then costs about {planned.scale.one(left)};"
    assert (costs in shown) is (left > planned.scale.least)
    assert left > planned.scale.least, "one plug does not put everything right here"
    assert forecast_document(forecast(known, [])).all_right is None


def test_the_unit_offered_goes_with_the_pressures_of_the_job() -> None:
    assert offered_unit(LENGTH, "in", case("700 rpm; 0.6 bar; hot")) == "mm"
    assert offered_unit(LENGTH, "in", case("700 rpm; 9 psi; hot")) == "in"


def test_a_figure_without_its_point_is_repeated_as_typed() -> None:
    with pytest.raises(UsageError, match=r"7596 mm cannot be .* Did you mean 75\.96 mm\?"):
        parse_words(["main 1 journal 7596 mm"])


def test_journals_far_larger_than_those_of_the_figures_are_said() -> None:
    """Mains of 76 mm in a workboat whose figures are those of a small diesel."""
    journal = '[[bearing]]\nno = 30\nwhat = "main 1"\njournal = "{}"\n'

    def said(size: str) -> str:
        return other_size(
            case("700 rpm; 0.6 bar; hot", layout="marine_diesel", more=journal.format(size))
        )

    typical = case("700 rpm; 0.6 bar; hot", layout="marine_diesel").profile
    assert typical is not None
    usual = f"{typical.numbers['main_diameter'][0] * 1e3:.1f} mm"
    assert "of a smaller engine" in said("75.95 mm")
    assert usual.split(".")[0] in said("75.95 mm")
    assert not said(usual)
    stated = '[engine.dimensions]\nmain_diameter = "76 mm"\n'
    own = case(
        "700 rpm; 0.6 bar; hot", layout="marine_diesel", more=stated + journal.format("75.95 mm")
    )
    assert not other_size(own)


@pytest.mark.parametrize("command", ["forecast", "budget", "sizing", "bearings"])
@pytest.mark.parametrize("layout", ["", 'layout = "skew_gear_four"\n'])
def test_figures_of_an_unknown_kind_of_engine_say_whose_they_are(
    tmp_path: Path, command: str, layout: str
) -> None:
    path = tmp_path / "teal.toml"
    path.write_text(
        f'schema = 1\n[engine]\n{layout}[[bearing]]\nno = 1\nwhat = "main 1"\nstrip = "2.2 thou"\n',
        "utf-8",
    )
    said = "The kind of engine is not given: these figures are of a classic pushrod four"
    out = " ".join(call(command, path).out.split())
    assert (said in out) is not bool(layout)


def test_budget_and_forecast_have_one_sound_engine() -> None:
    """Nothing found, nothing read: both are asked what the sound engine shows at hot idle."""
    bare = case(more='[[baseline]]\nno = 90\nrpm = "700 rpm"\noil = "90 C"\npressure = "22 psi"\n')
    known = forecast(bare, [])
    shows = float(np.mean(known.hot_pressure(known.before, bare.idle_speed)))
    account = budget(bare).accounts[0]
    assert account.healthy.mean == pytest.approx(shows, rel=0.03)
