"""Runs a script in headless Chromium, and says when there is no browser.

The folder that holds ``node_modules`` is named by ``BROWSER_MODULES`` (``.ci/run`` makes one).
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser")
NODE = shutil.which("node")
MODULES = Path(os.environ.get("BROWSER_MODULES", "/nowhere"))
SCRIPTS = Path(__file__).parents[1] / "browser"


def can_browse() -> bool:
    """Whether a browser and what drives it are here."""
    return bool(CHROMIUM and NODE and (MODULES / "node_modules" / "axe-core").is_dir())


needs_browser = pytest.mark.skipif(
    not can_browse(),
    reason="no browser here, or BROWSER_MODULES names no folder with axe-core and playwright-core",
)


def in_a_browser(script: str, out: Path, **asked: Any) -> dict[str, Any]:
    """Return what a script of ``tests/browser`` met; ``out``: the folder for its files."""
    assert NODE is not None
    task = {
        "modules": str(MODULES),
        "chromium": CHROMIUM,
        "out": str(out),
        "pictures": bool(os.environ.get("BROWSER_PICTURES")),
        **asked,
    }
    done = subprocess.run(
        [NODE, SCRIPTS / script], input=json.dumps(task), capture_output=True, text=True,
        timeout=500, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    found: dict[str, Any] = json.loads(done.stdout)
    return found
