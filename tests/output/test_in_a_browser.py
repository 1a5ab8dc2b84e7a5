"""The pages in headless Chromium: quiet, self-contained, nothing cut or overflowing, accessible.

Skipped where Chromium, Node or the npm packages playwright-core and axe-core are missing; the
folder that holds ``node_modules`` is named by ``BROWSER_MODULES`` (``.ci/run`` makes one).
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from tests.output.test_pages import HOSTILE, OPEN, case_with, stands_alone
from tests.support.browser import in_a_browser, needs_browser
from tests.support.command_line import call
from tests.support.complaints import CASES, path_of

pytestmark = needs_browser

REPORTS = ("gannet", "tern", "dunlin", "whimbrel")
NAMES = (
    *(f"report-{c}" for c in REPORTS),
    "report-hostile",
    "report-empty",
    "teardown-winch",
    "teardown-hostile",
    "signoff-tern",
    "signoff-gannet",
    "signoff-hostile",
    "bearings-tern",
    "bearings-hostile",
)


@pytest.fixture(scope="module")
def seen(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """Every page opened once."""
    folder = tmp_path_factory.mktemp("pages")
    (folder / "empty.toml").write_text("schema = 1\n", "utf-8")
    hostile = case_with(folder, " ".join(text[:900] for text in HOSTILE), *OPEN)
    made: dict[str, tuple[str | Path, ...]] = {
        f"report-{c}": ("report", CASES / f"{c}.toml", "--out") for c in REPORTS
    }
    made |= {
        "report-hostile": ("report", hostile, "--out"),
        "report-empty": ("report", folder / "empty.toml", "--out"),
        "teardown-winch": ("teardown", path_of("winch_begun"), "--html"),
        "teardown-hostile": ("teardown", hostile, "--html"),
        "bearings-tern": ("bearings", CASES / "tern.toml", "--html"),
        "bearings-hostile": ("bearings", hostile, "--mains", "3", "--rods", "2", "--html"),
        "signoff-tern": ("signoff", CASES / "tern.toml", "--html"),
        "signoff-gannet": ("signoff", CASES / "gannet.toml", "--html"),
        "signoff-hostile": ("signoff", hostile, "--html"),
    }
    pages = []
    for name, words in made.items():
        page = folder / f"{name}.html"
        assert call(*words, page).code == 0
        stands_alone(page.read_text("utf-8"))
        pages.append(str(page))
    return in_a_browser("look.mjs", folder, pages=pages)


@pytest.mark.parametrize("name", NAMES)
def test_a_page_logs_nothing_and_requests_nothing(seen: dict[str, Any], name: str) -> None:
    """No line on the console, no request but for the page itself."""
    assert seen[name]["console"] == []
    assert seen[name]["requests"] == []


@pytest.mark.parametrize("name", NAMES)
def test_no_sideways_scroll(seen: dict[str, Any], name: str) -> None:
    """A small telephone, a tablet, a desk."""
    for wide, found in seen[name]["widths"].items():
        assert found <= int(wide), wide


@pytest.mark.parametrize("paper", ["A4", "Letter"])
@pytest.mark.parametrize("name", [n for n in NAMES if "hostile" not in n])
def test_nothing_is_cut_on_paper(seen: dict[str, Any], name: str, paper: str) -> None:
    """Every row, blank, caution and figure may not be broken and is lower than a sheet.

    A note longer than a sheet has to go over it; the hostile case has such.
    """
    assert seen[name]["cut"][paper] == []
    assert seen[name]["pdf"][paper] > 10_000


@pytest.mark.parametrize("name", NAMES)
def test_no_barrier_at_level_aa(seen: dict[str, Any], name: str) -> None:
    """axe-core's rules for WCAG 2.1, levels A and AA."""
    assert seen[name]["axe"] == []
    assert seen[name]["axe_passed"] > 5, "the rules did run"
