"""The web page in headless Chromium: a whole job by taps, with and without scripts, keys, paper.

Skipped where the other browser tests are (``test_in_a_browser.py``).
"""

from __future__ import annotations

import os
from pathlib import Path
from typing import Any

import pytest

from tests.support.browser import in_a_browser, needs_browser
from tests.support.serving import serving
from tests.support.web import jobs_in

pytestmark = needs_browser


@pytest.fixture(scope="module")
def met(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """What was met on the way."""
    folder = jobs_in(tmp_path_factory.mktemp("jobs"), "petrel", "dunlin", "gannet", "turnstone")
    out = Path(os.environ.get("BROWSER_PICTURES") or tmp_path_factory.mktemp("pictures"))
    with serving(folder=folder) as base:
        return in_a_browser("job.mjs", out, base=base)


def test_nothing_on_the_console_and_nothing_outside(met: dict[str, Any]) -> None:
    """A missing page is the only thing a browser remarks on."""
    assert met["outside"] == []
    assert [line for line in met["console"] if "/job/none.toml" not in line] == []


def test_no_barrier_at_level_aa_on_any_screen(met: dict[str, Any]) -> None:
    """axe-core's rules for WCAG 2.1, levels A and AA."""
    assert {name: s["axe"] for name, s in met["screens"].items() if s["axe"]} == {}
    assert len(met["screens"]) > 25
    assert all(s.get("passed", 9) > 5 for s in met["screens"].values())


def test_no_sideways_scroll(met: dict[str, Any]) -> None:
    """A telephone, a tablet, a desk."""
    for name, screen in met["screens"].items():
        for wide, found in screen["wide"].items():
            assert found <= int(wide), (name, wide)


def test_everything_to_tap_is_large_enough(met: dict[str, Any]) -> None:
    """At least 44 px on either side."""
    assert {name: s["small"] for name, s in met["screens"].items() if s["small"]} == {}


@pytest.mark.parametrize("job", ["taps", "without scripts"])
def test_a_whole_job_by_taps(met: dict[str, Any], job: str) -> None:
    """From the story to the closed job; few taps until the first check."""
    found = met["jobs"][job]
    assert found["saved"].startswith("Saved")
    assert "over the limit" in found["verdict"]
    assert "Closed" in found["closed"]
    assert found["until_check"]["taps"] < 25


def test_the_curve_follows_the_slider(met: dict[str, Any]) -> None:
    assert met["jobs"]["taps"]["followed"].endswith("→ 2 thou")


def test_keys_alone_are_enough(met: dict[str, Any]) -> None:
    """Where one is can be seen."""
    assert met["keyboard"] == [True, True, True]


def test_paper(met: dict[str, Any]) -> None:
    """Nothing wider than the sheet, no buttons on it."""
    for path, found in met["paper"].items():
        assert found["wide"] <= 720, path
        assert found["pdf"] > 10_000, path
        assert found["buttons"] == 0, path


def test_a_value_is_judged_as_it_is_typed(met: dict[str, Any]) -> None:
    """Where scripts run; without them it is judged when it is saved."""
    assert met["judged"]["with"].endswith(
        "Over the limit of 3.5 thou by 1 (this engine's own figure)"
    )
    assert met["judged"]["without"] == ""


def test_nothing_is_opened_before_it_is_recorded(met: dict[str, Any]) -> None:
    """The steps show once what must be recorded first is ticked, with and without scripts."""
    assert met["gate"] == {"with": [False, True], "without": [False, True]}
