"""Where ``diagnose`` begins: stopped while it still loads, it ends in the same one line."""

from __future__ import annotations

import sys
from typing import NoReturn

from diagnose.cli import INTERRUPTED, STOPPED


def main() -> NoReturn:
    """Load the commands and run one."""
    try:
        from diagnose.cli.app import main as run

        run()
    except KeyboardInterrupt:
        sys.stderr.write(f"\n{STOPPED}\n")
        sys.exit(INTERRUPTED)
