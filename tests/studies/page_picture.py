"""Make the picture of the page in the README anew: ``python -m tests.studies.page_picture``.

Needs Chromium, Node and ``BROWSER_MODULES``, as the tests in a browser do.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

from tests.support.browser import can_browse
from tests.support.page_picture import PICTURE, make


def main() -> int:
    """Make the picture; 1 where there is no browser."""
    if not can_browse():
        print("no browser here, or BROWSER_MODULES names no folder with playwright-core")
        return 1
    with tempfile.TemporaryDirectory() as folder:
        make(PICTURE, Path(folder))
    print(f"{PICTURE.name}: {PICTURE.stat().st_size:,} bytes")
    return 0


if __name__ == "__main__":
    sys.exit(main())
