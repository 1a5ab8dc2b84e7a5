"""The web page in headless Chromium: whole jobs by taps and by keys, with and without scripts, paper.

By default one job up to its first check; ``-m long`` has three jobs to their end, on three widths,
without scripts and by keys alone. Skipped where the other browser tests are
(``test_in_a_browser.py``).
"""

from __future__ import annotations

import os
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

import pytest

from tests.support.browser import in_a_browser, needs_browser
from tests.support.examples import one_in
from tests.support.pictures import png
from tests.support.serving import serving
from tests.support.three_jobs import A, B, C, WholeJob
from tests.support.web import jobs_in

pytestmark = needs_browser

PHONE, TABLET, DESK = 390, 768, 1280
SCREENS = {
    "jobs": "/", "new": "/new", "job": "/job/petrel.toml", "ask": "/job/dunlin.toml/ask",
    "phases": "/job/dunlin.toml/signoff", "phase": "/job/dunlin.toml/signoff/2",
    "stage": "/job/petrel.toml/teardown/1", "forecast": "/job/dunlin.toml/forecast?main_clearance=2.5",
    "budget": "/job/dunlin.toml/budget", "survey": "/job/dunlin.toml/survey", "card": "/job/turnstone.toml/card", "figures": "/job/turnstone.toml/card/clearances", "name": "/job/petrel.toml/card",
    "gate": "/job/petrel.toml/teardown/3", "step": "/job/petrel.toml/check/pull_the_relief_valve",
    "album": "/job/petrel.toml/photos",
    "readings": "/job/petrel.toml/readings", "why": "/job/dunlin.toml/why", "start": "/job/dunlin.toml/start",
    "bearings": "/job/dunlin.toml/bearings", "sizes": "/job/dunlin.toml/bearings/sizes", "missing": "/job/none.toml", "code": "/code", "shop": "/shop",
}  # fmt: skip
PAPERS = (
    "/job/dunlin.toml", "/job/dunlin.toml/report", "/job/petrel.toml/teardown/sheet",
    "/job/dunlin.toml/signoff/sheet", "/job/dunlin.toml/signoff/2",
)  # fmt: skip


@dataclass(frozen=True)
class Way:
    """One job worked on in one way."""

    job: WholeJob
    width: int
    scripts: bool = True
    keys: bool = False
    brief: bool = False

    def __str__(self) -> str:
        how = "keys" if self.keys else "taps"
        end = ", to the first check" if self.brief else ""
        return f"{self.job.name}, {self.width}, {how}{'' if self.scripts else ', no scripts'}{end}"


WAYS = (
    Way(A, PHONE, brief=True),
    *(Way(job, PHONE) for job in (A, B, C)),
    *(Way(job, PHONE, scripts=False) for job in (A, B, C)),
    *(Way(job, PHONE, keys=True) for job in (A, B, C)),
    *(Way(job, width) for job in (A, B, C) for width in (TABLET, DESK)),
    *(Way(job, width, scripts=False) for job in (A, B, C) for width in (TABLET, DESK)),
)


@pytest.mark.parametrize("way", one_in(len(WAYS), WAYS), ids=str)
def test_a_whole_job(way: Way, tmp_path: Path) -> None:
    """From the story to the closed job; each screen looked at as it is reached."""
    (tmp_path / "jobs").mkdir()
    photo = tmp_path / "photo.png"
    photo.write_bytes(png())
    with serving(folder=tmp_path / "jobs") as base:
        met = in_a_browser(
            "job.mjs", _pictures(tmp_path), base=base, picture=str(photo), **asdict(way)
        )
    _sound(met)
    assert met["saved"].startswith("Saved")
    assert met["untilCheck"]["taps"] < 25
    assert set(met["rings"]) <= {""}
    assert bool(met["rings"]) == way.keys
    if way.brief:
        return
    assert met["noted"].startswith("Saved")
    assert "22 psi" in met["read"]
    assert met.get("followed", True)
    assert met["photos"] == 1
    assert "Closed" in met["closed"]
    assert len(met["screens"]) > 20


@pytest.fixture(scope="module")
def met(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """Further screens on three widths, and sheets of paper."""
    folder = jobs_in(tmp_path_factory.mktemp("jobs"), "petrel", "dunlin", "gannet", "turnstone")
    out = _pictures(tmp_path_factory.mktemp("pictures"))
    with serving(folder=folder) as base:
        return in_a_browser("screens.mjs", out, base=base, screens=SCREENS, papers=PAPERS)


@pytest.mark.long
def test_further_screens_light_and_dark(met: dict[str, Any]) -> None:
    _sound(met)
    assert set(met["screens"]) == set(SCREENS)
    assert all(set(s["wide"]) == {"390", "768", "1280"} for s in met["screens"].values())


@pytest.mark.long
def test_a_value_is_judged_as_it_is_typed(met: dict[str, Any]) -> None:
    """Where scripts run; without them it is judged when it is saved."""
    assert met["judged"]["with"].endswith(
        "Over the limit of 3.5 thou by 1 (this engine's own figure)"
    )
    assert met["judged"]["without"] == ""


@pytest.mark.long
def test_nothing_is_opened_before_it_is_recorded(met: dict[str, Any]) -> None:
    """The steps show once what must be recorded first is ticked, with and without scripts."""
    assert met["gate"] == {"with": [False, True], "without": [False, True]}


@pytest.mark.long
def test_what_is_typed_is_not_lost_by_a_tap(met: dict[str, Any]) -> None:
    """It stays in its tab until it is saved."""
    assert met["draft"] == {"back": ["2.5", "thou"], "again": "2.5", "saved": ""}


@pytest.mark.long
def test_paper(met: dict[str, Any]) -> None:
    """Nothing wider than the sheet, no buttons on it."""
    for path, found in met["paper"].items():
        assert found["wide"] <= 720, path
        assert found["pdf"] > 10_000, path
        assert found["buttons"] == 0, path


def _pictures(folder: Path) -> Path:
    """Where pictures of the screens are kept."""
    return Path(os.environ.get("BROWSER_PICTURES") or folder)


def _sound(met: dict[str, Any]) -> None:
    """Hold every screen that was reached to what each keeps to.

    axe-core's rules for WCAG 2.1, levels A and AA; no sideways scroll; at least 44 px to tap;
    nothing asked for outside; nothing on the console, where a browser remarks on a missing page
    only.
    """
    assert met["outside"] == []
    assert [line for line in met["console"] if "/job/none.toml" not in line] == []
    for name, screen in met["screens"].items():
        assert screen["axe"] == [], name
        assert screen.get("passed", 9) > 5, name
        assert screen["small"] == [], name
        assert all(found <= int(wide) for wide, found in screen["wide"].items()), name
